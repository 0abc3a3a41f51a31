import { describe, expect, test } from "vitest";
import {
  checkAgainstTarget,
  coverageFactor,
  errorOfProduct,
  statedEstimate,
} from "../../../src/numeric/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const percent = (value: number) => quantity(value, "%");
const gpa = (value: number) => quantity(value, "gal/acre", "spray");
const rate = (value: number, error: number) =>
  statedEstimate({ value: gpa(value), error: gpa(error), meaning: "standard error" });
const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected }) => `${code} | ${path} | ${expected}`);

describe("Student's t where it has a closed form", () => {
  // One degree of freedom: t = tan(pi c / 2). Two: t = c sqrt(2 / (1 - c^2)). Four: c = s (1.5 - s^2 / 2) with s = t / sqrt(t^2 + 4).
  test.each([10, 50, 80, 90, 95, 99])("at %s %%", (confidence) => {
    const c = confidence / 100;
    const one = Math.tan((Math.PI * c) / 2);
    const two = c * Math.sqrt(2 / (1 - c ** 2));
    expect(Math.abs(coverageFactor(percent(confidence), 1) / one - 1)).toBeLessThan(3e-13);
    expect(Math.abs(coverageFactor(percent(confidence), 2) / two - 1)).toBeLessThan(3e-13);
    const four = coverageFactor(percent(confidence), 4);
    const s = four / Math.sqrt(four ** 2 + 4);
    expect(Math.abs(s * (1.5 - s ** 2 / 2) - c)).toBeLessThan(3e-13);
  });

  test("from 1 % to 99.99 %, both counted", () => {
    const range = "range | confidence | 1 to 99.99 %";
    expect(coverageFactor(percent(1), 2)).toBeCloseTo(0.01 * Math.sqrt(2 / (1 - 1e-4)), 12);
    expect(coverageFactor(percent(99.99), 2)).toBeCloseTo(0.9999 * Math.sqrt(2 / (1 - 0.9999 ** 2)), 6);
    expect(told(() => coverageFactor(percent(0.999), 2))).toEqual([range]);
    expect(told(() => coverageFactor(percent(99.991), 2))).toEqual([range]);
  });
});

describe("a rate beside its target", () => {
  const check = (measured: Parameters<typeof checkAgainstTarget<"volume/area", "spray">>[0]["measured"]) =>
    checkAgainstTarget({ measured, target: gpa(20), tolerance: percent(5) });

  test("a noisy reading of nothing: measured again, and no change is named", () => {
    const noisy = check(rate(0, 30));
    expect(noisy.verdict).toBe("measure again");
    expect(noisy.change.in("%")).toBe(0);
    expect(told(() => check(rate(0, 0.1)))).toEqual([
      "range | measured.value | more than zero: no setting scales an output of nothing to a target",
    ]);
    expect(told(() => check(gpa(0)))).toEqual([
      "range | measured | more than zero: no setting scales an output of nothing to a target",
    ]);
  });

  test("the sentence names the rate, how far off it is, the band, and where the truth lies", () => {
    // 1.96 standard errors on each side
    expect(check(rate(20, 0.1)).text).toBe(
      "20 gal/acre is at the target of 20, within 5 %; the true value is from 19.8 to 20.2 at 95 %.",
    );
    expect(check(rate(25, 0.5)).text).toBe(
      "25 gal/acre is 25 % above the target of 20, not within 5 %; the true value is from 24.02 to 25.98 at 95 %. Adjust the output by -20 % and measure again.",
    );
    expect(check(gpa(16)).text).toBe(
      "16 gal/acre is 20 % below the target of 20, not within 5 %. Adjust the output by 25 % and measure again.",
    );
    expect(check(gpa(20.5)).text).toBe("20.5 gal/acre is 2.5 % above the target of 20, within 5 %.");
    expect(check(rate(19, 1)).text).toBe(
      "19 gal/acre is 5 % below the target of 20, but the true value is from 17.04 to 20.96 at 95 %: the spread is too large to tell whether that is within 5 %. Measure again, with more readings.",
    );
  });

  test("water beside a target of spray is pointed to the way, and beside anything else is another substance", () => {
    const water = quantity(20, "gal/acre", "water");
    const beside = (target: unknown) =>
      told(() => checkAgainstTarget({ measured: water, target: target as never, tolerance: percent(5) }));
    expect(beside(gpa(20))).toEqual([
      "substance/mismatch | target | a target of water, as measured; asFinishedSpray(measured).estimate is the measured one as spray",
    ]);
    expect(beside(quantity(20, "gal/acre", "product"))).toEqual([
      "substance/mismatch | target | a quantity of water",
    ]);
    expect(beside(quantity(20, "gal/acre"))).toEqual([
      'substance/mismatch | target | a quantity of water, such as quantity(20, "gal/acre", "water")',
    ]);
  });
});

describe("a product of measured values", () => {
  test("a root of a positive and a square of a negative number have one", () => {
    const root = errorOfProduct([{ value: 4, error: 0.4, power: 0.5 }]);
    expect([root.value, root.error]).toEqual([2, 0.1]);
    const square = errorOfProduct([{ value: -3, error: 0.3, power: 2 }]);
    expect(square.value).toBe(9);
    expect(square.error).toBeCloseTo(1.8, 12);
    expect(told(() => errorOfProduct([{ value: -4, error: 0.4, power: 0.5 }]))).toEqual([
      "range | factors[0].value | more than zero for power 0.5",
    ]);
  });

  test("a divisor is divided by, and not multiplied by its rounded inverse", () => {
    for (const [top, bottom] of [
      [5, 49],
      [3, 49],
      [15, 11],
      [7, 25],
      [9, 55],
    ] as const) {
      const factors = [
        { value: top, error: 0 },
        { value: bottom, error: 0, power: -1 },
      ];
      expect(errorOfProduct(factors).value).toBe(top / bottom);
    }
  });

  test("a product that is too large is told at the factors", () => {
    expect(told(() => errorOfProduct([{ value: 1e200, error: 0, power: 2 }]))).toEqual([
      "range | factors | numbers whose result is a finite number",
    ]);
  });
});
