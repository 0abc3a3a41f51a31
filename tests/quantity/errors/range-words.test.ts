import { describe, expect, test } from "vitest";
import { rangeProblem } from "../../../src/quantity/index.js";

describe("a value out of range, in words", () => {
  test.each([
    [{ min: 0, unit: "ft" }, "0 ft or more"],
    [{ above: 0, unit: "ft" }, "more than 0 ft"],
    [{ below: 0 }, "less than zero"],
    [{ max: 0 }, "zero or less"],
    [{ min: 0, max: 0 }, "zero"],
    [{ min: 5, max: 5, unit: "ft" }, "5 ft"],
    [{ min: 1, below: 5 }, "1 or more and less than 5"],
    [{ above: 1, max: 5, unit: "ft" }, "more than 1 ft and at most 5 ft"],
    [{ above: "2026-05-18", max: "2026-06-01" }, "more than 2026-05-18 and at most 2026-06-01"],
    [{ min: 1.23456789 }, "1.234568 or more"],
    [{ min: 12345678 }, "12345678 or more"],
    [{ step: 5 }, "a whole number that divides by 5"],
    [{ step: 1, count: "days", min: 2 }, "a whole number of days, 2 or more"],
    [{ min: Number.NEGATIVE_INFINITY, max: 5 }, "5 or less"],
    [{ max: 1, count: "cans" }, "1 can or fewer"],
    [{ min: 1, count: "cans" }, "1 can or more"],
    [{ min: 1, max: 1, count: "cans" }, "1 can"],
    [{ min: 1, max: 4, count: "cans" }, "1 to 4 cans"],
    [{ min: 0, max: 1, count: "cans" }, "0 to 1 cans"],
    [{ below: 1, count: "cans" }, "less than 1 can"],
    [{ max: 11, count: "cans" }, "11 cans or fewer"],
    [{ max: 1, count: "entries" }, "1 entry or fewer"],
    [{ max: 1, count: "passes" }, "1 pass or fewer"],
    [{ max: 1, count: "blades" }, "1 blade or fewer"],
    [{ step: 1, max: 4, count: "cans" }, "a whole number of cans, 4 or fewer"],
  ] as const)("%o", (bounds, text) => {
    expect(rangeProblem("x", "9", bounds).expected).toBe(text);
  });

  test("whoever asks", () => {
    expect(rangeProblem(3 as never, 4 as never, { min: 5 }, 6 as never)).toEqual({
      code: "range",
      path: "3",
      got: "4",
      expected: "6",
      params: { min: 5 },
    });
    const bounds = { min: 5 };
    expect(rangeProblem("x", "4", bounds).params).not.toBe(bounds);
    expect(rangeProblem("x", "4", { min: 5, max: Number.NaN }).params).toEqual({ min: 5 });
  });
});

test.each([
  [{ min: 6.45834625 }, "6.458347 or more"],
  [{ max: 509.18280930909896 }, "509.1828 or less"],
  [{ max: 509.18288 }, "509.1828 or less"],
  [{ above: 0.12345671, below: 0.98765438 }, "more than 0.1234568 and less than 0.9876543"],
  [{ min: -2.00000049, max: -1.00000051 }, "-2 to -1.000001"],
  // the noise of computing is none
  [{ min: 15.000000000000002 }, "15 or more"],
  [{ max: 17.999999999999996, unit: "psi" }, "18 psi or less"],
])("a bound is told so that it is taken: %o", (bounds, text) => {
  expect(rangeProblem("x", "0", bounds).expected).toBe(text);
});
