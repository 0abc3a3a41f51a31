import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { gateSetting, hopperVolume, speedForRate, testArea } from "../../../src/spread/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { ft, perThousand } from "../helpers.js";

// A calibration where one case hands over to the next.

describe("a gate", () => {
  const trials = (...rates: readonly number[]) =>
    rates.map((rate, i) => ({ setting: 2 ** i, rate: perThousand(rate) }));
  const between = (target: number, ...rates: readonly number[]) =>
    gateSetting({ target: perThousand(target), trials: trials(...rates), beyond: "extrapolate" }).between;

  test("a target that a trial met stands at the end of the first line that comes to it", () => {
    expect(between(3, 1, 3, 4).map(({ setting }) => setting)).toEqual([1, 2]);
    expect(between(4, 1, 3, 4).map(({ setting }) => setting)).toEqual([2, 4]);
  });

  test("beyond the trials the two nearest to the target draw the line", () => {
    expect(between(2.9, 3, 3.5, 4).map(({ setting }) => setting)).toEqual([1, 2]);
    expect(between(4.1, 3, 3.5, 4).map(({ setting }) => setting)).toEqual([2, 4]);
  });

  test("the rate at a trial is that of the trial, to the last digit", () => {
    // 0.1 + (0.3 - 0.1) is 0.30000000000000004 in floating point, less 0.1 or not.
    expect(between(0.2, 0.1, 0.3).map(({ rate }) => rate.value)).toEqual([0.1, 0.3]);
    expect(between(0.5, 0.1, 0.7).map(({ rate }) => rate.value)).toEqual([0.1, 0.7]);
  });

  test("a setting that was tried twice is told of the later trial", () => {
    const twice = [...trials(1, 2), { setting: 1, rate: perThousand(1.5) }];
    const [problem] = problemsOf(() => gateSetting({ target: perThousand(1.2), trials: twice }));
    expect([problem?.code, problem?.path, problem?.expected]).toEqual([
      "conflict",
      "trials[2].setting",
      "another setting than trials[0]; give repeated runs of one setting as their mean",
    ]);
  });
});

test("room for a load comes in cubic feet for every weight in US customary units", () => {
  const unit = (of: "cwt" | "grain" | "oz" | "US ton" | "kg" | "t" | "g") =>
    hopperVolume({ load: quantity(1, of, "product"), bulkDensity: quantity(50, "lb/ft3") }).unit;
  expect((["grain", "oz", "US ton"] as const).map(unit)).toEqual(["ft3", "ft3", "ft3"]);
  expect((["kg", "t", "g"] as const).map(unit)).toEqual(["m3", "m3", "m3"]);
});

describe("words of a refusal", () => {
  test("a rate of water for a wanted rate of another thing is sent nowhere", () => {
    const [problem] = problemsOf(() =>
      speedForRate({
        rate: quantity(20, "gal/acre", "water"),
        from: quantity(3, "mi/h"),
        target: quantity(10, "gal/acre", "product"),
        feed: "power-driven",
      } as never),
    );
    expect([problem?.path, problem?.expected]).toEqual(["target", "a rate of water, as measured"]);
  });

  test("a ground names the field that is missing of the nearest form, the shorter one first", () => {
    const of = (ground: object) => complaints(() => testArea(ground as never));
    expect(of({})).toEqual(["missing area"]);
    expect(of({ swath: ft(10) })).toEqual(["missing distance"]);
    expect(of({ width: ft(10) })).toEqual(["missing length"]);
    expect(of({ swath: ft(10), turns: 3 })).toEqual(["missing circumference"]);
    expect(of({ area: null, length: ft(10), width: ft(3) })).toEqual([]);
  });
});
