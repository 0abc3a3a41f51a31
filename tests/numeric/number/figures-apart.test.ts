import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { figuresApart, roundedApart } from "../../../src/numeric/house.js";
import { exceeds } from "../../../src/numeric/index.js";

describe("two numbers in a sentence that says that they differ", () => {
  test.each([
    [1.2, 1, 4, "1.2", "1"],
    [1.0004, 1, 4, "1.0004", "1"],
    [1.00003, 1, 4, "1.00003", "1"],
    [200.4, 200, 3, "200.4", "200"],
    [19.9996, 20, 4, "19.9996", "20"],
    [2 + 4e-9, 2, 4, "2.000000004", "2"],
  ])("%d and %d in %d figures or more", (one, other, least, told, bound) => {
    const say = roundedApart(one, other, least);
    expect([`${say(one)}`, `${say(other)}`]).toEqual([told, bound]);
  });

  test("no more figures than it takes, and those that were asked for where the two are one", () => {
    expect(figuresApart(1.5, 1, 4)).toBe(4);
    expect(figuresApart(1.0004, 1, 4)).toBe(5);
    expect(figuresApart(1, 1, 4)).toBe(4);
    expect(roundedApart(1.23456, 9)(1.23456)).toBe(1.235);
  });

  test("whatever exceeds reads as more", () => {
    const positive = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(positive, fc.double({ min: 1e-12, max: 1e-3, noNaN: true }), (bound, share) => {
        const value = bound * (1 + share);
        const say = roundedApart(value, bound);
        return !exceeds(value, bound) || say(value) > say(bound);
      }),
    );
  });
});
