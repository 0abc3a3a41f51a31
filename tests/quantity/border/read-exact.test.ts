import { describe, expect, test } from "vitest";
import { quantity, readExact, readQuantity, unitsOf } from "../../../src/quantity/index.js";

const rate = { dimension: "mass/area", of: "N", path: "rate" } as const;

describe("readExact", () => {
  test.each<readonly [unknown, number]>([
    [quantity(3, "lb/1000 ft2", "N"), 3],
    [{ value: 3, unit: "lb/1000 ft2", of: "N" }, 3],
    [{ value: " 1,250.5 ", unit: "lb/1000 ft2", of: "N" }, 1250.5],
    [{ value: "1½", unit: "lb/1000 ft2", of: "N" }, 1.5],
  ])("reads %s", (input, value) => {
    expect(readExact(input, rate)).toEqual({ value: quantity(value, "lb/1000 ft2", "N"), problems: [] });
  });

  test("every unit of a select box is read", () => {
    for (const dimension of ["mass/area", "volume/area", "length/time", "temperature"] as const) {
      for (const { unit } of unitsOf(dimension)) {
        expect(readExact({ value: "2", unit }, { dimension }).value?.unit).toBe(unit);
      }
    }
  });

  test("what it refuses, readQuantity refuses with the same code and path, or reads as words", () => {
    const inputs: readonly unknown[] = [
      {},
      { value: "", unit: "", of: "" },
      { value: "x", unit: "lb", of: "P2O5" },
      { value: -1, unit: "lb/acre", of: "N" },
      { value: 3, unit: "lb/acre", fo: "N" },
      { value: 3, unit: 4, of: 5 },
      null,
      7,
      [],
    ];
    for (const input of inputs) {
      const codes = (problems: readonly { readonly code: string; readonly path: string }[]): unknown =>
        problems.map(({ code, path }) => [code, path]);
      const wanted = { ...rate, bound: "positive" } as const;
      const exact = readExact(input, wanted);
      expect(exact.value).toBeNull();
      expect(codes(exact.problems)).toEqual(codes(readQuantity(input, wanted).problems));
    }
  });

  test("words and whole texts are refused by naming what reads them", () => {
    for (const input of ["3 lb/acre", { value: 3, unit: "lbs/acre", of: "N" }]) {
      const [problem] = readExact(input, rate).problems;
      expect(problem?.expected).toContain("readQuantity");
      expect(readQuantity({ value: 3, unit: "lbs/acre", of: "N" }, rate).problems[0]?.suggestion).toBe(
        "lb/acre",
      );
    }
    expect(readQuantity("3 lb/acre", rate).value?.value).toBe(3);
  });

  test("a value out of bounds is told with its bound", () => {
    const below = { ...rate, bound: "non-negative" } as const;
    const [problem] = readExact({ value: -1, unit: "lb/acre", of: "N" }, below).problems;
    expect(problem?.params).toEqual({ min: 0 });
  });

  test.each([
    [{ dimension: "weight" }, /expected.dimension/],
    [{ dimension: "mass", of: "nitrogen" }, /expected.of/],
    [{ dimension: "mass", bound: "above" }, /expected.bound/],
    [{ dimension: "mass", dicimal: "," }, /did you mean decimal/],
    [undefined, /expected/],
  ])("an expectation that nothing could meet is refused: %j", (expected, message) => {
    expect(() => readExact({}, expected as typeof rate)).toThrow(message);
  });
});
