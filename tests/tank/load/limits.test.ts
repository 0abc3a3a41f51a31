import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { loadAmounts, tankLoads } from "../../../src/tank/index.js";
import { problemsOf } from "../../errors.js";

// What happens exactly at a limit of the loads, and what is told of those beyond one.

const gallons = (value: number) => quantity(value, "gal", "spray");
const job = {
  area: quantity(10, "acre"),
  applicationVolume: quantity(20, "gal/acre", "spray"),
  capacity: gallons(50),
};
const loads = () => tankLoads(job);
const powder = { id: "a", form: "dry", rate: quantity(2, "lb/acre", "product:a") } as const;

describe("at the limits", () => {
  test("the least tank that a refusal names is taken, and its ten thousand loads are measured out", () => {
    // 400 ha at 1.5 gal per 1,000 ft2 are 64,583.4625 gal: 6.45834625 gal is the least, and 6.458346 would be refused again.
    const large = { area: quantity(400, "ha"), applicationVolume: quantity(1.5, "gal/1000 ft2", "spray") };
    const named = (() => {
      try {
        tankLoads({ ...large, capacity: gallons(4) });
      } catch (error) {
        return /expected (\S+) gal or more/.exec((error as Error).message)?.[1];
      }
      return undefined;
    })();
    expect(named).toBe("6.458347");
    const plan = tankLoads({ ...large, capacity: gallons(Number(named)) });
    expect(plan.count).toBe(10_000);
    expect(loadAmounts({ loads: plan, products: [powder] }).products[0]?.loads).toHaveLength(10_000);
  });

  test("ten thousand loads are taken, of a size or of full tanks", () => {
    expect(tankLoads({ ...job, area: quantity(25_000, "acre") }).count).toBe(10_000);
    expect(
      tankLoads({ ...job, area: quantity(1000, "acre"), loadSplit: "fixed size", loadSize: gallons(2) })
        .count,
    ).toBe(10_000);
  });

  test("a recipe that just fills the tank, and a tank that just has room", () => {
    expect(tankLoads({ ...job, loadSplit: "fixed size", loadSize: gallons(50) }).count).toBe(4);
    expect(
      tankLoads({ ...job, loadSplit: "fixed size", loadSize: gallons(45), residualVolume: gallons(5) }).count,
    ).toBe(5);
    expect(
      problemsOf(() => tankLoads({ ...job, residualVolume: gallons(5), plumbingVolume: gallons(44) })),
    ).toEqual([]);
  });

  test("a least load that the last two loads just hold", () => {
    // 105 gal in a tank of 50: 50, 50 and 5; 27.5 is half of the last two.
    const volumes = tankLoads({ ...job, area: quantity(5.25, "acre"), leastLoad: gallons(27.5) }).loads;
    expect(volumes.map(({ volume }) => volume.in("gal"))).toEqual([50, 27.5, 27.5]);
    expect(tankLoads({ ...job, leastLoad: gallons(50) }).loads.map(({ volume }) => volume.in("gal"))).toEqual(
      [50, 50, 50, 50],
    );
  });

  test("the least of a product that a full tank just takes is taken", () => {
    const { findings } = loadAmounts({
      loads: loads(),
      products: [{ ...powder, least: { value: 5, unit: "lb" } }],
    });
    expect(findings).toEqual([]);
  });

  test("a load of a tenth of the tank is not small, and one just below is", () => {
    const codes = (acres: number) =>
      tankLoads({ ...job, area: quantity(acres, "acre") }).findings.map(({ code }) => code);
    expect(codes(0.25)).toEqual([]);
    expect(codes(0.249)).toEqual(["load/small"]);
    // 55 gal: 50 and 5; 54.9: 50 and 4.9.
    expect(codes(2.75)).toEqual([]);
    expect(codes(2.745)).toEqual(["load/small-last"]);
    expect(tankLoads({ ...job, area: quantity(2.745, "acre"), loadSplit: "even" }).findings).toEqual([]);
  });
});

describe("findings of the amounts", () => {
  const amounts = (rate: number, rule: object) =>
    loadAmounts({
      loads: tankLoads({ ...job, area: quantity(5.25, "acre") }),
      products: [{ ...powder, rate: quantity(rate, "lb/acre", "product:a"), ...rule }] as never,
    }).findings;
  const limit = (pounds: number) => quantity(pounds, "lb/gal", "product:a/spray");

  test("a spray at its highest or lowest stated strength is within it, one beyond is told with both figures", () => {
    // 2 lb/acre in 20 gal/acre are 0.1 lb/gal.
    const rule = (min: number, max: number) => ({
      concentration: { min: limit(min), max: limit(max), source: "the label of a" },
    });
    expect(amounts(2, rule(0.1, 0.1))).toEqual([]);
    const strong = amounts(2, rule(0.01, 0.08));
    expect(strong.map(({ code }) => code)).toEqual(Array(3).fill("load/concentration-above-maximum"));
    expect(strong[0]).toMatchObject({
      severity: "warning",
      path: "products[0].concentration",
      params: { product: "a", load: 1, amount: 5, limit: 4, unit: "lb" },
      source: "the label of a",
    });
    expect(strong[0]?.text).toBe(
      "Load 1 has 5 lb of a, stronger than the highest stated concentration (4 lb in this volume).",
    );
    const weak = amounts(2, rule(0.2, 0.3));
    expect(weak.map(({ code }) => code)).toEqual(Array(3).fill("load/concentration-below-minimum"));
    expect(weak[2]?.text).toBe(
      "Load 3 has 0.5 lb of a, weaker than the lowest stated concentration (1 lb in this volume).",
    );
  });

  test("a load that takes less than the least is told, with even loads where these would hold it", () => {
    // 50, 50 and 5 gal take 5, 5 and 0.5 lb; a third of all is 3.5 lb.
    const least = (value: number) => amounts(2, { least: { value, unit: "lb" } });
    expect(least(0.5)).toEqual([]);
    expect(least(3.5)[0]?.text).toBe(
      "Load 3 takes 0.5 lb of a, less than the minimum (3.5 lb). Use even loads.",
    );
    expect(least(3.6)[0]?.text).toBe("Load 3 takes 0.5 lb of a, less than the minimum (3.6 lb).");
    expect(least(3.5)[0]).toMatchObject({
      code: "load/below-least",
      severity: "warning",
      path: "products[0].least",
      params: { product: "a", load: 3, amount: 0.5, least: 3.5, unit: "lb" },
    });
  });

  test("much powder is told from beyond 0.25 kg in a liter, by the rate that made it", () => {
    const loads1 = tankLoads({
      area: quantity(1, "ha"),
      applicationVolume: quantity(100, "L/ha", "spray"),
      capacity: quantity(100, "L", "spray"),
    });
    const told = (rate: unknown) =>
      loadAmounts({ loads: loads1, products: [{ id: "a", form: "dry", rate }] as never }).findings;
    expect(told(quantity(25, "kg/ha", "product:a"))).toEqual([]);
    const [byArea] = told(quantity(26, "kg/ha", "product:a"));
    expect(byArea).toMatchObject({
      code: "load/much-dry-product",
      severity: "warning",
      path: "products[0].rate",
      params: { product: "a", amount: 26, unit: "kg", load: 100, loadUnit: "L" },
    });
    // 26 kg in 100 L; the same rate in pounds and gallons is 57.3 lb in 26.4 gal.
    expect(byArea?.text).toBe(
      "Load 1 takes 26 kg of a in 100 L of spray: 260 g per L, more than most dry products dissolve or stay suspended at. Is its rate per hectare, and not per 100 m2, and is the volume of spray per area right?",
    );
    const [byAcre] = told(quantity(26 / 0.45359237 / 2.4710538, "lb/acre", "product:a"));
    expect(byAcre?.text).toMatch(
      /: 2\.17 lb per gallon, more than .* Is its rate per acre, and not per 1000 ft2, and/,
    );
    const [byVolume] = told(quantity(0.26, "kg/L", "product:a/spray"));
    expect(byVolume?.text).toMatch(/stay suspended at\. Is its rate per 100 L, and not per L\?$/);
    const [byGallon] = told(quantity(2.2, "lb/gal", "product:a/spray"));
    expect(byGallon?.text).toMatch(/stay suspended at\. Is its rate per 100 gal, and not per gal\?$/);
  });

  test("more liquid than water is told from beyond half", () => {
    const told = (percent: number) =>
      loadAmounts({
        loads: loads(),
        products: [{ id: "b", form: "liquid", rate: quantity(percent, "% v/v", "product:b/spray") }],
      }).findings;
    expect(told(50)).toEqual([]);
    expect(told(51)[0]?.code).toBe("load/more-product-than-water");
    expect(told(51)[0]?.text).toBe(
      "Load 1 takes 25.5 gal of b in 50 gal of spray: more product than water. Is its rate per 100 gal, and not per gal?",
    );
    expect(problemsOf(() => told(100))).toEqual([]);
  });
});
