import fc from "fast-check";
import { expect, test } from "vitest";
import { convertedNumbers, quantityOf, RatewrightError } from "../../../src/quantity/index.js";
import { runs } from "../../properties.js";

const pairs = [
  ["lb/1000 ft2", "kg/ha"],
  ["°F", "°C"],
  ["gal", "L"],
  ["% w/w", "ppm w/w"],
] as const;

test("a column is what each number is alone", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...pairs),
      fc.array(fc.double({ min: -1e9, max: 1e9, noNaN: true }), { maxLength: 20 }),
      ([from, to], numbers) => {
        const column = [...convertedNumbers({ numbers, from: from as "lb", to: to as "kg" })];
        expect(column).toEqual(
          numbers.map((number) => quantityOf(number, from, "none", "q").in(to as never) + 0),
        );
      },
    ),
    runs(300),
  );
});

test("typed arrays are taken, and nothing is changed", () => {
  const numbers = Float32Array.of(1, 2);
  expect([...convertedNumbers({ numbers, from: "ft", to: "in" })]).toEqual([12, 24]);
  expect([...numbers]).toEqual([1, 2]);
  expect(convertedNumbers({ numbers: [], from: "ft", to: "in" })).toHaveLength(0);
});

test.each([
  [{ numbers: [1, "2"], from: "ft", to: "in" }, "not-finite", "numbers[1]"],
  // a hole is a number that is not there
  [{ numbers: new Array(2), from: "ft", to: "in" }, "missing", "numbers[0]"],
  [{ numbers: [1e308], from: "mi", to: "um" }, "not-finite", "numbers[0]"],
  [{ numbers: [1], from: "ft", to: "lb" }, "unit/mismatch", "to"],
  [{ numbers: [1], from: "feet", to: "in" }, "unit/unknown", "from"],
  [{ numbers: [1], from: "ft", to: "feet" }, "unit/unknown", "to"],
  [{ numbers: "12", from: "ft", to: "in" }, "type", "numbers"],
  [{ numbers: new DataView(new ArrayBuffer(8)), from: "ft", to: "in" }, "type", "numbers"],
  [{ from: "ft", to: "in" }, "missing", "numbers"],
  [{ numbers: [1], from: 3, to: "in" }, "type", "from"],
  [{ numbers: [1], from: "ft", to: null }, "type", "to"],
  [{ numbers: [1], from: "ft", to: "in", form: "ft" }, "type", "input.form"],
  [null, "type", "input"],
])("refuses %j", (input, code, path) => {
  try {
    convertedNumbers(input as never);
    expect.unreachable();
  } catch (error) {
    expect(error).toBeInstanceOf(RatewrightError);
    expect([(error as RatewrightError).code, (error as RatewrightError).path]).toEqual([code, path]);
  }
});
