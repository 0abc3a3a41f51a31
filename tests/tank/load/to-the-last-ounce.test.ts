import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { loadAmounts, mixToFinish, tankLoads } from "../../../src/tank/index.js";
import { wholeShares } from "../../../src/tank/load/whole-shares.js";
import { problemsOf } from "../../errors.js";

// What goes into the loads, at the joints of the rules: hand-reckoned.

const gallons = (value: number) => quantity(value, "gal", "spray");
const acres = (value: number) => quantity(value, "acre");
const job = (area: number) => ({
  area: acres(area),
  applicationVolume: quantity(10, "gal/acre", "spray"),
  capacity: gallons(50),
});
const powder = (rate: number, id = "powder") => ({
  id,
  form: "dry" as const,
  rate: quantity(rate, "oz/acre", `product:${id}`),
});
const perGallon = (id: string, rate: number, form: "dry" | "liquid") => ({
  id,
  form,
  rate: quantity(rate, form === "dry" ? "lb/gal" : "gal/gal", `product:${id}/spray`),
});

describe("whole steps of a measure", () => {
  test("add up to the rounded total where the sum of the parts lies a hair below a half", () => {
    // 0.3 + 1.9 + 0.3 is 2.4999999999999996 in floating point; the total is two steps and a half, three steps.
    expect(wholeShares([0.3, 1.9, 0.3], 2.5)).toEqual([0, 2, 1]);
    expect(wholeShares([0.5, 0.5], 1)).toEqual([1, 0]);
  });
});

describe("where nothing is held back", () => {
  test.each(["full then partial", "even"] as const)("nothing is left, to the last digit: %s", (loadSplit) => {
    for (const area of [3.7, 5.1, 7.3, 11.9, 0.7]) {
      const plan = tankLoads({
        area: quantity(area, "ha"),
        applicationVolume: quantity(13.3, "gal/acre", "spray"),
        capacity: quantity(187, "L", "spray"),
        loadSplit,
      });
      expect(plan.leftOver.volume.value).toBe(0);
      expect(plan.mixedFor.value).toBe(area);
      expect(plan.smallestMix.value).toBe(plan.volume.value);
      for (const load of plan.loads) expect(load.mixedFor.value).toBe(load.area.value);
      if (loadSplit === "even") expect(plan.loads[0]?.area.value).toBe(area / plan.count);
      else if (plan.count > 1) expect(plan.loads[0]?.area.value).toBe(plan.areaPerTank.value);
    }
  });

  test("full tanks alone share the area evenly, and each is full", () => {
    const { loads } = tankLoads(job(15));
    expect(loads.map(({ area, full }) => [area.in("acre"), full])).toEqual([
      [5, true],
      [5, true],
      [5, true],
    ]);
  });
});

describe("a tank that keeps some", () => {
  test("is full when it stands at its capacity: the first load of a recipe leaves room, a later one does not", () => {
    const { loads } = tankLoads({
      ...job(13),
      loadSplit: "fixed size",
      loadSize: gallons(45),
      residualVolume: gallons(5),
    });
    expect(loads.map(({ full }) => full)).toEqual([false, true, true]);
  });

  test("too small a rest of it is named, not the tank that would do by itself", () => {
    // 9,999.5 gal and the half that stays are 10,000 tanks of 1 gal, and 20,000 fillings of half a gallon.
    const [problem] = problemsOf(() =>
      tankLoads({
        area: acres(9999.5),
        applicationVolume: quantity(1, "gal/acre", "spray"),
        capacity: gallons(1),
        residualVolume: gallons(0.5),
      }),
    );
    expect([problem?.code, problem?.path, problem?.got]).toEqual([
      "range",
      "residualVolume",
      expect.stringContaining("0.5"),
    ]);
    expect(problem?.expected).toContain("with less per load the job takes more than 10000 loads");
  });
});

describe("a least load that cannot be", () => {
  const refused = (area: number, least: number) => {
    const [problem] = problemsOf(() => tankLoads({ ...job(area), leastLoad: gallons(least) }));
    return [problem?.code, problem?.path, problem?.got, problem?.expected];
  };

  test("of just what even loads have is sent to even loads", () => {
    // 120 gal: 50, 50 and 20, the last two 70 together; even loads are 40, and two of 40 are 80.
    expect(refused(12, 40)).toEqual([
      "infeasible",
      "leastLoad",
      expect.stringContaining("40"),
      'less than the last two loads hold together; even loads (loadSplit "even") are 40 gal each',
    ]);
  });

  test("of more than even loads have is told what the job is", () => {
    expect(refused(12, 41)[3]).toBe(
      '40 gal or less, the job in even loads; the loadSplit "fixed size" mixes more and leaves some over',
    );
    expect(refused(2, 25)[3]).toMatch(/^20 gal or less, the job in even loads/);
  });
});

describe("what is told of loads", () => {
  test("a recipe of small loads is small by choice", () => {
    const { findings } = tankLoads({ ...job(1), loadSplit: "fixed size", loadSize: gallons(2) });
    expect(findings.map(({ code }) => code)).not.toContain("load/small-last");
  });

  test("a small job and a small last load carry their figures, and are common practice", () => {
    expect(tankLoads(job(0.2)).findings).toMatchObject([
      {
        code: "load/small",
        severity: "caution",
        params: { volume: 2, capacity: 50, unit: "gal" },
        source: "common practice, no source",
      },
    ]);
    expect(tankLoads(job(5.1)).findings).toMatchObject([
      {
        code: "load/small-last",
        severity: "caution",
        params: { load: 2, volume: 1, even: 25.5, unit: "gal" },
        source: "common practice, no source",
      },
    ]);
  });

  test("loads are numbered from 1, with or without a measure", () => {
    const plan = tankLoads(job(10));
    const numbers = (increments: object) =>
      loadAmounts({ loads: plan, products: [powder(8)], ...increments }).products[0]?.loads.map(
        ({ number }) => number,
      );
    expect(numbers({})).toEqual([1, 2]);
    expect(numbers({ increments: { dry: { unit: "oz", step: 1 } } })).toEqual([1, 2]);
  });

  test("a coarse measure is told in its unit, not in steps", () => {
    const measured = (ounces: number, step: number) =>
      loadAmounts({
        loads: tankLoads(job(1)),
        products: [powder(ounces)],
        increments: { dry: { unit: "oz", step } },
      }).findings.map(({ text, source, severity }) => [text, source, severity]);
    expect(measured(5, 4)).toEqual([
      [
        "Load 1 gets 4 oz by weight of powder where 5 oz by weight is computed, 20 % less: a measuring increment of 4 oz by weight is too coarse for what it needs.",
        "common practice, no source",
        "warning",
      ],
    ]);
    expect(measured(1, 4)).toEqual([
      [
        "Load 1 gets no powder: a measuring increment of 4 oz by weight is too coarse for what it needs.",
        undefined,
        "warning",
      ],
    ]);
  });

  test("even loads are no advice where the loads are even, and the measure takes one below the least", () => {
    // 2 acre in two tanks of 1 acre, 10.2 oz each; in steps of 4 oz that is 12 and 8, and 8 is below 10.
    const below = (loadSplit: "even" | "full then partial") =>
      loadAmounts({
        loads: tankLoads({ ...job(2), capacity: gallons(10), loadSplit }),
        products: [{ ...powder(10.2), least: { value: 10, unit: "oz" }, increment: { unit: "oz", step: 4 } }],
      }).findings.filter(({ code }) => code === "load/below-least");
    expect(below("even").map(({ params, text }) => [params.load, params.amount, text])).toEqual([
      [2, 8, "Load 2 takes 8 oz by weight of powder, less than the minimum (10 oz by weight)."],
    ]);
  });
});

describe("more than a tank holds", () => {
  const loads = tankLoads(job(1));
  const refused = (...products: readonly ReturnType<typeof perGallon>[]) =>
    problemsOf(() => loadAmounts({ loads, products })).map(({ code, path, expected }) => [
      code,
      path,
      expected,
    ]);

  test("liquids are added up without the powders, and the one that takes most is named", () => {
    expect(
      refused(perGallon("a", 0.5, "liquid"), perGallon("b", 0.7, "liquid"), perGallon("c", 4, "dry")),
    ).toEqual([
      [
        "infeasible",
        "products[1].rate",
        "less product than load 1 holds: the liquids together are 120 % of it",
      ],
    ]);
  });

  test("of two that take as much the first is named", () => {
    expect(refused(perGallon("a", 0.6, "liquid"), perGallon("b", 0.6, "liquid"))[0]?.[1]).toBe(
      "products[0].rate",
    );
  });

  test("what is absurd and can be is common practice, and says so", () => {
    const { findings } = loadAmounts({ loads, products: [perGallon("c", 3, "dry")] });
    expect(findings).toMatchObject([
      { code: "load/much-dry-product", path: "products[0].rate", source: "common practice, no source" },
    ]);
    expect(findings[0]?.text).toContain("Is its rate per 100 gal, and not per gal?");
  });
});

test("an area whose spray no number holds is refused at the area", () => {
  const vast = { area: acres(1e200), applicationVolume: quantity(1e200, "gal/acre", "spray") };
  for (const call of [() => mixToFinish(vast), () => tankLoads({ ...vast, capacity: gallons(50) })])
    expect(problemsOf(call).map(({ code, path }) => [code, path])).toEqual([["not-finite", "area"]]);
});
