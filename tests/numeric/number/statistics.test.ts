import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { accurateSum, coefficientOfVariation, mean, standardDeviation } from "../../../src/numeric/index.js";
import { complaint } from "../../errors.js";

/**
 * National Institute of Standards and Technology, Statistical Reference Datasets, univariate summary
 * statistics: NumAcc1 to NumAcc4, with the certified mean and standard deviation (divisor n-1).
 */
const numAcc = (middle: number, low: number, high: number): number[] => [
  middle,
  ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high)),
];
const datasets: readonly (readonly [string, number[], number, number])[] = [
  ["NumAcc1", [10000001, 10000003, 10000002], 10000002, 1],
  ["NumAcc2", numAcc(1.2, 1.1, 1.3), 1.2, 0.1],
  ["NumAcc3", numAcc(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1],
  ["NumAcc4", numAcc(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1],
];

describe("NIST reference datasets", () => {
  test.each(datasets)("%s", (_name, values, average, spread) => {
    // To the last binary digit.
    expect(Math.abs(mean(values) / average - 1)).toBeLessThanOrEqual(Number.EPSILON);
    // 10000000.1 is not a binary number: rounding the data alone costs about 1e-9 of the spread 0.1.
    expect(Math.abs(standardDeviation(values, { divisor: "n-1" }) / spread - 1)).toBeLessThan(2e-8);
  });
});

describe("accurateSum", () => {
  test("keeps what plain addition loses", () => {
    expect(accurateSum([1, 1e100, 1, -1e100])).toBe(2);
    expect(accurateSum(Array(10).fill(0.1))).toBe(1);
    expect(accurateSum([])).toBe(0);
    expect(Object.is(accurateSum([-0]), 0)).toBe(true);
  });

  test("is the exact sum, where that is known from whole numbers", () => {
    const whole = fc.array(fc.bigInt({ min: -(2n ** 52n), max: 2n ** 52n }), { maxLength: 60 });
    fc.assert(
      fc.property(whole, (list) => {
        const scaled = list.map((n) => Number(n) / 1024);
        expect(accurateSum(scaled)).toBe(Number(list.reduce((a, b) => a + b, 0n)) / 1024);
      }),
    );
  });

  test("names the number that is none", () => {
    expect(complaint(() => accurateSum([1, Number.NaN]))).toBe("not-finite values[1]");
    expect(complaint(() => accurateSum(Float64Array.of(Number.POSITIVE_INFINITY)))).toBe(
      "not-finite values[0]",
    );
    expect(complaint(() => accurateSum([1e308, 1e308]))).toBe("range values");
    expect(complaint(() => accurateSum("12" as never))).toBe("type values");
  });
});

describe("standardDeviation", () => {
  test("divides as it is told", () => {
    // 2642 is the sum of squares of a published teaching example (mean 42, variance 660.5 by n-1).
    const values = [4, 36, 45, 50, 75];
    expect(standardDeviation(values, { divisor: "n-1" }) ** 2).toBeCloseTo(660.5, 10);
    expect(standardDeviation(values, { divisor: "n" }) ** 2).toBeCloseTo(2642 / 5, 10);
  });

  test("has no default, and needs enough values", () => {
    expect(complaint(() => standardDeviation([1, 2], {} as never))).toBe("missing divisor");
    expect(complaint(() => standardDeviation([1], { divisor: "n-1" }))).toBe("missing values");
    expect(standardDeviation([1], { divisor: "n" })).toBe(0);
    expect(complaint(() => standardDeviation([], { divisor: "n" }))).toBe("missing values");
    expect(complaint(() => standardDeviation([1e200, -1e200], { divisor: "n" }))).toBe("range values");
  });

  // Thousandths: spreads below 1e-150 would square to nothing.
  const values = fc.array(
    fc.integer({ min: -1e9, max: 1e9 }).map((n) => n / 1000),
    { minLength: 2, maxLength: 30 },
  );
  test("does not change with a shift, and goes with the scale", () => {
    fc.assert(
      fc.property(values, (list) => {
        const s = standardDeviation(list, { divisor: "n" });
        expect(
          standardDeviation(
            list.map((x) => x + 512),
            { divisor: "n" },
          ),
        ).toBeCloseTo(s, 6);
        expect(
          standardDeviation(
            list.map((x) => x * -4),
            { divisor: "n" },
          ),
        ).toBe(4 * s);
        expect(standardDeviation(list, { divisor: "n-1" })).toBeGreaterThanOrEqual(s);
      }),
    );
  });
});

describe("coefficientOfVariation", () => {
  test("is a percent of the mean, by the divisor that is named", () => {
    // The teaching example above, recomputed: 25.7002 / 42 and 22.987 / 42.
    const values = [4, 36, 45, 50, 75];
    expect(coefficientOfVariation(values, { divisor: "n-1" }).in("%")).toBeCloseTo(61.19, 2);
    expect(coefficientOfVariation(values, { divisor: "n" }).in("%")).toBeCloseTo(54.73, 2);
  });
  test("needs a mean above zero", () => {
    expect(complaint(() => coefficientOfVariation([-1, 1], { divisor: "n" }))).toBe("range values");
  });
});
