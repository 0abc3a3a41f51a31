import { expect, it } from "vitest";
import { expectNumber, quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

it("a quantity where a bare number is due is told how to give the number", () => {
  for (const given of [quantity(92, "%"), { value: 92, unit: "%" }])
    expect(problemsOf(() => expectNumber(given, "purity"))).toMatchObject([
      {
        code: "not-finite",
        path: "purity",
        expected: 'a bare number here: amount.in("...") gives it in the unit that the field is in',
      },
    ]);
});

it("bounds are those of the record itself, whatever another script adds to all objects", () => {
  Object.defineProperty(Object.prototype, "added", { value: 1, enumerable: true, configurable: true });
  let read: number | undefined;
  try {
    read = expectNumber(0.8, "efficiency", { above: 0, max: 1 });
  } finally {
    Reflect.deleteProperty(Object.prototype, "added");
  }
  expect(read).toBe(0.8);
});
