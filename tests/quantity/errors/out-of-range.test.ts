import { describe, expect, it, test } from "vitest";
import {
  outOfRange,
  type Problem,
  type RangeBounds,
  RatewrightError,
  rangeProblem,
} from "../../../src/index.js";

const problemOf = (work: () => unknown): Problem | undefined => {
  try {
    work();
  } catch (error) {
    if (error instanceof RatewrightError) return error.problems[0];
    throw error;
  }
  return undefined;
};

describe("a value out of range", () => {
  const told: readonly (readonly [bounds: RangeBounds, text: string])[] = [
    [{ min: 0 }, "zero or more"],
    [{ above: 0 }, "more than zero"],
    [{ min: 0, unit: "%" }, "0 % or more"],
    [{ max: 100, unit: "%" }, "100 % or less"],
    [{ below: 100, unit: "%" }, "less than 100 %"],
    [{ min: 0, max: 100, unit: "%" }, "0 to 100 %"],
    [{ above: 0, max: 360, unit: "deg" }, "more than 0 deg and at most 360 deg"],
    [{ above: 0, below: 1 }, "more than zero and less than 1"],
    [{ max: 50, count: "characters" }, "50 characters or fewer"],
    [{ min: 3, max: 10_000, count: "corners" }, "3 to 10000 corners"],
    [{ min: 1, max: 1 }, "1"],
    [{ step: 1 }, "a whole number"],
    [{ step: 1, count: "days" }, "a whole number of days"],
    [{ step: 1, min: 1, max: 4 }, "a whole number, 1 to 4"],
    [{ step: 4, count: "cans" }, "a whole number of cans that divides by 4"],
    [{ min: "0001-01-01", max: "9999-12-31" }, "0001-01-01 to 9999-12-31"],
    [{ max: "2036-05-18" }, "2036-05-18 or earlier"],
    [{ min: "2026-05-18" }, "2026-05-18 or later"],
    [{ max: 12.345678901, unit: "ft" }, "12.34567 ft or less"],
  ];

  test.each(told)("%o is told as %s", (bounds, text) => {
    expect(rangeProblem("x", "9", bounds)).toEqual({
      code: "range",
      path: "x",
      got: "9",
      expected: text,
      params: bounds,
    });
  });

  it("is told in the words around the bounds, with what was received and the bounds as they are", () => {
    const problem = problemOf(() =>
      outOfRange("depth", 3, { max: 12.345678901, unit: "ft" }, "{}, the height"),
    );
    expect(problem).toEqual({
      code: "range",
      path: "depth",
      got: "3",
      expected: "12.34567 ft or less, the height",
      params: { max: 12.345678901, unit: "ft" },
    });
  });

  it("has bounds of known names alone", () => {
    const most = { most: 3 } as RangeBounds;
    expect(problemOf(() => outOfRange("x", 4, most))).toMatchObject({ code: "type", path: "bounds.most" });
    expect(problemOf(() => outOfRange("x", 4, null as never))).toMatchObject({
      code: "type",
      path: "bounds",
    });
  });
});
