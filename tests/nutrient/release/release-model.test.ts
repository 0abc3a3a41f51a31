import { describe, expect, test } from "vitest";
import { productRate, quantity, releaseModel, seasonProgram } from "../../../src/index.js";
import { problemsOf } from "../../errors.js";

// What a release model and a season keep of what they were given, and what they refuse.

const one = (value: number) => ({ low: value, high: value });
const model = (input: object = {}) =>
  releaseModel({
    name: "m",
    placement: "either",
    curve: { kind: "duration", days: one(100) },
    temperature: { kind: "none" },
    assumptions: [],
    source: "made up",
    ...input,
  } as Parameters<typeof releaseModel>[0]);
const first = (input: object) => problemsOf(() => model(input))[0];

describe("a range of a release", () => {
  test("has its middle between its ends; halfway where none is stated", () => {
    for (const mid of [59, 121]) {
      const problem = first({ curve: { kind: "duration", days: { low: 60, mid, high: 120 } } });
      expect([problem?.code, problem?.path]).toEqual(["conflict", "model.curve.days.mid"]);
      expect(problem?.expected).toBe("a figure from 60 to 120");
    }
    const curve = model({ curve: { kind: "duration", days: { low: 60, high: 120 } } }).curve;
    expect(curve).toMatchObject({ days: { low: 60, mid: 90, high: 120 } });
    for (const mid of [60, 120])
      expect(model({ curve: { kind: "duration", days: { low: 60, mid, high: 120 } } }).curve).toMatchObject({
        days: { mid },
      });
  });

  test("has its low end first, and names the field of a lag", () => {
    expect(first({ curve: { kind: "duration", days: { low: 120, high: 60 } } })).toMatchObject({
      code: "conflict",
      path: "model.curve.days.low",
    });
    expect(first({ curve: { kind: "first order", ratePerDay: one(0.1), lagDays: one(-1) } })?.path).toBe(
      "model.curve.lagDays.low",
    );
    expect(first({ curve: { kind: "first order", ratePerDay: one(0) } })?.path).toBe(
      "model.curve.ratePerDay.low",
    );
  });
});

describe("a model", () => {
  test("has an error of its fit only where one was stated", () => {
    expect(Object.keys(model())).not.toContain("fitErrorPercent");
    expect(model({ fitErrorPercent: 2 }).fitErrorPercent).toBe(2);
    expect(first({ fitErrorPercent: 101 })?.path).toBe("model.fitErrorPercent");
  });
});

describe("a season", () => {
  const month = { month: "2026-05" } as const;
  test("takes no weight below zero, and zero", () => {
    const run = (weight: number) => () =>
      seasonProgram({
        months: [
          { ...month, weight },
          { month: "2026-06", weight: 1 },
        ],
        total: quantity(2, "lb/1000 ft2", "N"),
        plan: { kind: "growth curve" },
        caps: {},
      });
    expect(problemsOf(run(-0.5))[0]).toMatchObject({ code: "range", path: "months[0].weight" });
    expect(problemsOf(run(0))).toEqual([]);
  });

  test("keeps the usual interval where the applications leave as many days, and says where they leave fewer", () => {
    const run = (applications: number) =>
      seasonProgram({
        months: [{ month: "2026-05" }, { month: "2026-06" }],
        total: quantity(2, "lb/1000 ft2", "N"),
        plan: { kind: "even split", applications },
        caps: {},
      });
    const told = (applications: number) =>
      run(applications).findings.find(({ code }) => code === "program/interval-shortened");
    expect(told(2)).toBeUndefined();
    expect(told(6)).toMatchObject({
      severity: "warning",
      path: "plan.applications",
      params: { applications: 6 },
    });
    expect(Number(told(6)?.params.days)).toBeLessThan(Number(told(6)?.params.practice));
  });
});

test("only nitrate, ammonium and organic nitrogen are told to count as N", () => {
  const feed = { analysis: "20-0-0", id: "f" } as never;
  const expected = (of: string) =>
    problemsOf(() => productRate(quantity(1, "lb/1000 ft2", of as "N"), feed))[0]?.expected ?? "";
  expect(expected("Zn")).not.toContain("nitrogenOf");
});
