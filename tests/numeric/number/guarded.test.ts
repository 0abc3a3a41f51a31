import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  errorOfProduct,
  exceeds,
  roundTo,
  wholeUnitsFor,
  wholeUnitsWithin,
} from "../../../src/numeric/index.js";
import type { RatewrightError } from "../../../src/quantity/index.js";
import { complaint } from "../../errors.js";

describe("wholeUnitsFor", () => {
  test.each([
    // 39 600 lb in 50 lb bags, come to by way of a rate: float noise must not add a bag.
    [792 * 50 * (1 + Number.EPSILON), 50, 792],
    [0.3, 0.1, 3],
    [1e-9, 50, 1],
    [5e-324, 50, 1],
    [50, 50, 1],
    [50.001, 50, 2],
    [0, 50, 0],
  ])("%d in units of %d is %i", (need, size, count) => {
    expect(wholeUnitsFor(need, size)).toBe(count);
  });

  test("is the ceiling of the exact quotient of two decimals", () => {
    const cents = fc.integer({ min: 1, max: 1_000_000 });
    fc.assert(
      fc.property(cents, cents, (a, b) => {
        expect(wholeUnitsFor(a / 100, b / 100)).toBe(Math.floor((a + b - 1) / b));
        expect(wholeUnitsWithin(a / 100, b / 100)).toBe(Math.floor(a / b));
      }),
    );
  });

  test("refuses what it cannot count", () => {
    expect(complaint(() => wholeUnitsFor(-1, 50))).toBe("range need");
    expect(complaint(() => wholeUnitsFor(1, 0))).toBe("range size");
    expect(complaint(() => wholeUnitsFor(1e300, 1e-300))).toBe("range need");
    expect(complaint(() => wholeUnitsWithin(Number.NaN, 1))).toBe("not-finite amount");
  });
});

test("wholeUnitsWithin: applications left under a limit", () => {
  expect(wholeUnitsWithin(73, 7.3)).toBe(10);
  expect(wholeUnitsWithin(2.0, 0.25)).toBe(8);
  expect(wholeUnitsWithin(0.24, 0.25)).toBe(0);
});

describe("exceeds", () => {
  test("equal is within, to a relative 1e-9", () => {
    expect(exceeds(0.1 + 0.2, 0.3)).toBe(false);
    expect(exceeds(1 + 0.9e-9, 1)).toBe(false);
    expect(exceeds(1 + 1.1e-9, 1)).toBe(true);
    expect(exceeds(1e-300, 0)).toBe(true);
    expect(exceeds(0, 0)).toBe(false);
    expect(exceeds(-1, -2)).toBe(true);
    expect(complaint(() => exceeds(1, Number.NaN))).toBe("not-finite limit");
  });
});

describe("roundTo", () => {
  test.each([
    [1.005, 0.01, 1.01],
    [1.004, 0.01, 1],
    [0.125, 0.05, 0.15],
    [2.5, 1, 3],
    [-2.5, 1, -3],
    [0.3, 0.1, 0.3],
    [1234, 500, 1000],
    [1e20, 1, 1e20],
    [1e15 + 1, 1, 1e15 + 1],
    [2 ** 51, 1, 2 ** 51],
    [2 ** 50 + 0.5, 0.5, 2 ** 50 + 0.5],
    [123456789012.345, 0.01, 123456789012.35],
    [1e-10, 1, 0],
  ])("%d to %d is %d", (value, step, rounded) => {
    expect(roundTo(value, step)).toBe(rounded);
  });

  test("has no -0", () => {
    expect(Object.is(roundTo(-0.1, 1), 0)).toBe(true);
  });

  test("is the decimal rounding of whole numbers of thousandths, and rounds once", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (n) => {
        const sign = n < 0 ? -1 : 1;
        const hundredths = Math.floor((Math.abs(n) + 5) / 10) * sign;
        const rounded = roundTo(n / 1000, 0.01);
        expect(rounded).toBe(hundredths / 100 + 0);
        expect(roundTo(rounded, 0.01)).toBe(rounded);
      }),
    );
  });

  test("refuses a step that is none", () => {
    expect(complaint(() => roundTo(1, 0))).toBe("range step");
  });
});

describe("errorOfProduct", () => {
  test("published example: momentum and energy of a body", () => {
    // UCLA Physics 4AL, notebook on propagation of error (2023): m = 3.0 +- 0.5 kg, v = 30.0 +- 5.0 m/s;
    // printed: momentum 90 kg m/s, error 21.21.
    const m = { value: 3, error: 0.5 };
    const v = { value: 30, error: 5 };
    expect(errorOfProduct([m, v]).value).toBe(90);
    expect(errorOfProduct([m, v]).error).toBeCloseTo(21.21, 2);
  });

  test("3-4-5: relative errors of 3 % and 4 % make 5 %, in a quotient as in a product", () => {
    const a = { value: 200, error: 6 };
    const b = { value: 50, error: 2 };
    expect(errorOfProduct([a, b])).toEqual({ value: 10000, error: 500 });
    const ratio = errorOfProduct([a, { ...b, power: -1 }]);
    expect(ratio.value).toBe(4);
    expect(ratio.error).toBeCloseTo(0.2, 14);
  });

  test("tells every factor that is not right", () => {
    const factors = [{ value: 0, error: 1 }, { value: -2, error: -1, power: 0.5 }, null];
    try {
      errorOfProduct(factors as never);
      expect.fail("it did not throw");
    } catch (error) {
      expect((error as RatewrightError).problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
        "range factors[0].value",
        "range factors[1].error",
        "range factors[1].value",
        "type factors[2]",
      ]);
    }
  });

  test("a square counts its error twice, a negative value has a positive error", () => {
    expect(errorOfProduct([{ value: 10, error: 0.1, power: 2 }]).error).toBeCloseTo(2, 12);
    expect(errorOfProduct([{ value: -10, error: 1 }])).toEqual({ value: -10, error: 1 });
  });

  test("refuses what has no relative error", () => {
    expect(complaint(() => errorOfProduct([{ value: 0, error: 1 }]))).toBe("range factors[0].value");
    expect(complaint(() => errorOfProduct([{ value: 1, error: -1 }]))).toBe("range factors[0].error");
    expect(complaint(() => errorOfProduct([{ value: -1, error: 1, power: 0.5 }]))).toBe(
      "range factors[0].value",
    );
    expect(complaint(() => errorOfProduct([]))).toBe("missing factors");
    expect(
      complaint(() =>
        errorOfProduct([
          { value: 1e300, error: 0 },
          { value: 1e300, error: 0 },
        ]),
      ),
    ).toBe("range factors");
  });
});
