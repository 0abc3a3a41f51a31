import { describe, expect, test } from "vitest";
import {
  accumulateEquivalentDaysC,
  activityIndex,
  controlledReleaseTest,
  isobutylideneDiurea,
  releasedNitrogen,
  releasedShares,
  releaseModel,
  ureaform,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { job, released, right } from "./coating.js";

// What happens exactly at a limit of the release of nitrogen.

const model = (change: object) => () => releaseModel({ ...right, ...change } as never);
const curve = (input: unknown) => model({ curve: input });
const warmth = (input: unknown) => model({ temperature: input });
const mm = (low: number, high: number) => () =>
  isobutylideneDiurea({ particleSize: { low: quantity(low, "mm"), high: quantity(high, "mm") } });
const percent = (value: number) => quantity(value, "% w/w", "other:WIN/N");
const tested = (change: object) => () =>
  controlledReleaseTest({
    percentAt24Hours: 10,
    percentAt28Days: 50,
    percentAtStatedTime: 80,
    statedDays: 90,
    temperatureC: 25,
    ...change,
  } as never);

describe("at the limits", () => {
  test("the ends of each range are read", () => {
    for (const call of [
      model({ fitErrorPercent: 0 }),
      model({ fitErrorPercent: 100 }),
      model({ observed: { days: 36_600, fromC: -60, toC: 100 } }),
      model({ observed: { fromC: 10, toC: 10 } }),
      curve({ kind: "duration", days: { low: 7, high: 7 } }),
      curve({ ...right.curve, mostPercent: { low: 100, high: 100 } }),
      warmth({ kind: "Q10", q10: { low: 1, high: 10 }, referenceC: 50, restsBelowC: 50 }),
      warmth({ kind: "Arrhenius", activationEnergy: { low: 0, high: 300 }, referenceC: 0, restsBelowC: -60 }),
      released({ days: 1 }),
      released({ days: 3660 }),
      mm(0.4, 3),
      mm(1, 1),
      tested({ percentAt28Days: 10, percentAtStatedTime: 10 }),
      () => accumulateEquivalentDaysC(Float64Array.of(100), Float64Array.of(-60), right.temperature),
      () => ureaform({ waterInsolubleShare: percent(60), activityIndex: quantity(100, "%") }),
      () => activityIndex({ coldInsoluble: percent(100), hotInsoluble: percent(100) }),
    ])
      expect(problemsOf(call)).toEqual([]);
  });

  test("an index of 40 is not low, one below is", () => {
    const findings = (hot: number) =>
      activityIndex({ coldInsoluble: percent(100), hotInsoluble: percent(hot) }).findings;
    expect(findings(60)).toEqual([]);
    expect(findings(60.1)[0]).toMatchObject({ code: "nitrogen/activity-index-low", severity: "caution" });
  });

  test("a day below 0 °C is counted as frost, one at 0 °C is not", () => {
    const codes = (celsius: number) =>
      releasedNitrogen({ ...job, temperature: { mean: quantity(celsius, "°C") } }).findings.map(
        ({ code }) => code,
      );
    expect(codes(0)).not.toContain("release/frost");
    expect(codes(-0.1)).toContain("release/frost");
  });

  test("the last day and the coldest and warmest temperature that were measured are not beyond them", () => {
    const reach = releaseModel({ ...right, observed: { days: 3, fromC: 10, toC: 20 } } as never);
    const codes = (days: number, celsius: number) =>
      releasedNitrogen({
        ...job,
        days,
        temperature: { mean: quantity(celsius, "°C") },
        portions: [{ ...job.portions[0], model: reach }],
      }).findings.map(({ code }) => code);
    expect(codes(3, 10)).toEqual(["release/steady-temperature"]);
    expect(codes(3, 20)).toEqual(["release/steady-temperature"]);
    expect(codes(4, 15)).toContain("release/beyond-observed-days");
    expect(codes(3, 9.9)).toContain("release/beyond-observed-temperature");
    expect(codes(3, 20.1)).toContain("release/beyond-observed-temperature");
  });

  test("below the temperature at which it rests the low end takes no release, at it some", () => {
    const response = { kind: "Q10", q10: { low: 2, high: 2 }, referenceC: 20, restsBelowC: 10 } as const;
    const day = (celsius: number, bound: "low" | "mid") =>
      accumulateEquivalentDaysC(Float64Array.of(celsius), Float64Array.of(celsius), response, bound)[0];
    // Ten degrees below the reference: half a day.
    expect(day(10, "low")).toBeCloseTo(0.5, 12);
    expect(day(9.9, "low")).toBe(0);
    expect(day(9.9, "mid")).toBeGreaterThan(0.49);
  });

  test("a lag ends on its day, and release begins behind it", () => {
    const lagging = {
      kind: "first order",
      ratePerDay: { low: 1, high: 1 },
      lagDays: { low: 5, high: 5 },
    } as const;
    const shares = releasedShares(Float64Array.of(5, 6), lagging, "mid");
    expect(shares[0]).toBe(0);
    expect(shares[1]).toBeCloseTo(1 - Math.exp(-1), 12);
  });
});
