import { describe, expect, test } from "vitest";
import { gateSetting } from "../../../src/spread/index.js";
import { perThousand } from "../helpers.js";

// Worked by hand, in whole numbers.

describe("a gate", () => {
  const trials = [
    { setting: 3, rate: perThousand(2) },
    { setting: 5, rate: perThousand(5) },
    { setting: 7, rate: perThousand(9) },
  ];
  test("half-way between two trials", () => {
    const found = gateSetting({ target: perThousand(3.5), trials, step: 0.75 });
    expect(found).toMatchObject({
      type: "gate-setting",
      version: 1,
      setting: 4,
      extrapolated: false,
      findings: [],
    });
    expect(found.between.map(({ setting, rate }) => `${setting}: ${rate}`)).toEqual([
      "3: 2 lb/1000 ft2 of product",
      "5: 5 lb/1000 ft2 of product",
    ]);
    // marks of 0.75 beside 4 are 3.75 and 4.5
    expect(found.steps.map(({ setting, rate }) => [setting, rate.in("lb/1000 ft2")])).toEqual([
      [3.75, expect.closeTo(3.125, 12)],
      [4.5, expect.closeTo(4.25, 12)],
    ]);
    expect(found.checked).toEqual(["the rates of 3 trials rise with the setting"]);
    expect(found.notChecked).toEqual([
      "how uncertain the setting is: a trial came without its error",
      "the new setting itself: make a run with it",
    ]);
    expect("settingError" in found).toBe(false);
    const tens = gateSetting({ target: perThousand(7), trials, step: 10 });
    expect([tens.setting, tens.steps]).toEqual([6, []]);
    expect(
      gateSetting({ target: perThousand(5), trials, step: 1 }).steps.map(({ setting }) => setting),
    ).toEqual([5]);
    expect(
      gateSetting({ target: perThousand(2), trials, step: 2 }).steps.map(({ setting }) => setting),
    ).toEqual([4]);
  });
  test("a scale that closes", () => {
    const falling = trials.map(({ setting, rate }) => ({ setting: 10 - setting, rate }));
    const found = gateSetting({ target: perThousand(3.5), trials: falling, scale: "lower opens" });
    expect([found.setting, found.checked[0]]).toEqual([6, "the rates of 3 trials fall with the setting"]);
  });
  test("drawn on from the two trials that are nearest", () => {
    const above = gateSetting({ target: perThousand(11), trials, beyond: "extrapolate" });
    expect([above.setting, above.extrapolated, above.between.map(({ setting }) => setting)]).toEqual([
      8,
      true,
      [5, 7],
    ]);
    const below = gateSetting({ target: perThousand(0.5), trials, beyond: "extrapolate" });
    expect([below.setting, below.between.map(({ setting }) => setting)]).toEqual([2, [3, 5]]);
    expect(below.findings[0]).toMatchObject({
      code: "setting/extrapolated",
      severity: "warning",
      path: "target",
      params: { first: 3, second: 5, setting: 2 },
    });
  });
  test("with errors", () => {
    const known = (rate: number, error: number) => ({
      type: "estimate" as const,
      version: 1 as const,
      value: perThousand(rate),
      standardError: perThousand(error),
    });
    // half of 0.3 and half of 0.4 in the square, by the slope of two settings in three pounds
    const found = gateSetting({
      target: perThousand(3.5),
      trials: [
        { setting: 3, rate: known(2, 0.3) },
        { setting: 5, rate: known(5, 0.4) },
      ],
      step: 4,
    });
    expect(found.settingError).toBeCloseTo(0.25 * (2 / 3), 12);
    expect(found.between.map(({ standardError }) => standardError?.in("lb/1000 ft2"))).toEqual([0.3, 0.4]);
    expect(found.steps[0]?.standardError?.in("lb/1000 ft2")).toBeCloseTo(0.25, 12);
    expect(found.checked).toEqual([
      "the rates of 2 trials rise with the setting",
      "whether the two trials differ by more than their errors",
    ]);
    expect(found.notChecked).toEqual(["the new setting itself: make a run with it"]);
    // 3 and 4 make 5 by Pythagoras: a difference of ten is told apart, one of less is not
    const apart = (more: number) =>
      gateSetting({
        target: perThousand(100.5),
        trials: [
          { setting: 3, rate: known(100, 3) },
          { setting: 5, rate: known(100 + more, 4) },
        ],
      }).findings;
    expect(apart(10)).toEqual([]);
    expect(apart(9)[0]).toMatchObject({
      code: "trials/not-told-apart",
      severity: "warning",
      path: "trials[1]",
      params: { first: 3, second: 5, difference: 9, standardError: 5 },
      source: "common practice, no source",
    });
  });
});
