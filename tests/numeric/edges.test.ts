import { describe, expect, test } from "vitest";
import {
  checkAgainstTarget,
  confidenceInterval,
  interpolate,
  mean,
  meanEstimate,
  readingsFor,
  standardDeviation,
  wholeUnitsWithin,
} from "../../src/numeric/index.js";
import { quantity } from "../../src/quantity/index.js";
import { problemsOf } from "../errors.js";

const kg = (value: number) => quantity(value, "kg");
const percent = (value: number) => quantity(value, "%");
const held = (measured: Parameters<typeof checkAgainstTarget>[0]["measured"]) =>
  checkAgainstTarget({ measured, target: kg(10), tolerance: percent(5) } as never);

describe("a check against a target, word for word", () => {
  test.each([
    [
      9,
      "9 kg is 10 % below the target of 10, not within 5 %. Adjust the output by 11.11 % and measure again.",
    ],
    [10, "10 kg is at the target of 10, within 5 %."],
    [10.3, "10.3 kg is 3 % above the target of 10, within 5 %."],
  ] as const)("%s kg", (value, text) => {
    expect(held(kg(value) as never).text).toBe(text);
  });

  test("with an estimate the interval is told, and a wide one asks for more readings", () => {
    // Two readings, t = 12.706 at 95 %: 10 is known to 12.706 x 0.01 = 0.127, and to 1.27 from readings ten times as far apart.
    const narrow = held(meanEstimate([9.99, 10.01].map(kg)) as never);
    expect(narrow.text).toBe(
      "10 kg is at the target of 10, within 5 %; the true value is from 9.873 to 10.13 at 95 %.",
    );
    const wide = held(meanEstimate([9.9, 10.1].map(kg)) as never);
    expect(wide.text).toBe(
      "10 kg is at the target of 10, but the true value is from 8.729 to 11.27 at 95 %: the spread is too large to tell whether that is within 5 %. Measure again, with more readings.",
    );
  });
});

describe("a refusal names what was wrong, and what would be right", () => {
  const few = { coefficientOfVariation: percent(50), margin: percent(0.001) };
  test("a margin that no number of readings reaches: t of 1.9602 by 50 % over the root of ten thousand", () => {
    const [problem] = problemsOf(() => readingsFor(few));
    expect(problem?.path).toBe("margin");
    expect(Number(problem?.params?.min)).toBeCloseTo((1.9602 * 50) / 100, 4);
  });

  test.each([
    ["a negative measurement", () => held(kg(-1) as never), "measured"],
    ["a negative amount", () => wholeUnitsWithin(-1, 1), "amount"],
    [
      "a confidence above all",
      () => confidenceInterval(meanEstimate([1, 2].map(kg)), percent(120)),
      "confidence",
    ],
  ] as const)("%s", (_, call, path) => {
    expect(problemsOf(call).map((one) => one.path)).toEqual([path]);
  });

  test("how many numbers are wanted", () => {
    expect(problemsOf(() => mean([]))[0]?.expected).toBe("at least one number");
    expect(problemsOf(() => standardDeviation([1], { divisor: "n-1" }))[0]?.expected).toBe(
      "at least 2 numbers",
    );
  });
});

test("the rounding of a large mean does not widen the spread: 0, 2 and 2 above 1e16", () => {
  expect(standardDeviation([1e16, 1e16 + 2, 1e16 + 2], { divisor: "n" })).toBeCloseTo(Math.sqrt(8 / 9), 12);
});

test("one point holds on both sides", () => {
  const at = (x: number) => interpolate({ xs: [1], ys: [5], x, outside: "hold" });
  expect([at(0), at(1), at(2)]).toEqual([5, 5, 5]);
});
