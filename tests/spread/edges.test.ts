import { describe, expect, test } from "vitest";
import { loadCoverage, quantity, swathCvPercent } from "../../src/index.js";

describe("swathCvPercent of pans that stand apart", () => {
  const cv = (swath: number, divisor: "n" | "n-1") =>
    swathCvPercent({
      depositsKgPerM2: Float64Array.of(1, 3, 1),
      spacingM: 2,
      swathsM: Float64Array.of(swath),
      driving: "one direction",
      divisor,
    })[0];

  test("by hand: pans 2 m apart, passes 4 m apart", () => {
    // Positions take 1 + 1 and 3: mean 2.5, each 0.5 from it; 0.5 / 2.5 = 20 %, with n - 1 the square root of 2 more.
    expect(cv(4, "n")).toBeCloseTo(20, 12);
    expect(cv(4, "n-1")).toBeCloseTo(20 * Math.SQRT2, 12);
  });

  test("one position to a swath is even with the divisor n", () => {
    expect(cv(2, "n")).toBe(0);
    expect(() => cv(2, "n-1")).toThrow(/two positions/);
  });
});

describe("loadCoverage", () => {
  test("comes in the units of the swath", () => {
    const of = (unit: "m" | "ft") => {
      const { area, distance } = loadCoverage({
        load: quantity(50, "kg", "product"),
        rate: quantity(200, "kg/ha", "product"),
        swath: quantity(10, unit),
      });
      return [area.unit, distance.unit];
    };
    expect([of("m"), of("ft")]).toEqual([
      ["m2", "m"],
      ["ft2", "ft"],
    ]);
  });
});
