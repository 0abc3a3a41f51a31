import { expect, test } from "vitest";
import {
  estimateOfProduct,
  mean,
  meanEstimate,
  readingsFor,
  roundTo,
  wholeUnitsFor,
} from "../../../src/numeric/index.js";
import { expectFloat64Array } from "../../../src/numeric/number/typed-array.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected }) => `${code} | ${path} | ${expected}`);
const percent = (value: number) => quantity(value, "%");

test("the most whole units are those that a number counts one by one: 2^53 - 1 by the size", () => {
  expect(told(() => wholeUnitsFor(1e300, 2))).toEqual([
    "range | need | an amount of 18014398509481982 or less",
  ]);
  expect(wholeUnitsFor(18014398509481982, 2)).toBe(9007199254740991);
});

test("a list has a million items at most", () => {
  const list: unknown[] = [];
  list.length = 1_000_001;
  expect(told(() => meanEstimate(list as never))).toEqual(["range | readings | 1000000 or less"]);
});

test("the margin that ten thousand readings reach is told in percent", () => {
  const few = { coefficientOfVariation: percent(50), margin: percent(0.001) };
  expect(told(() => readingsFor(few))[0]).toMatch(
    /^range \| margin \| 0\.980\d* % or more, which 10000 readings can reach$/,
  );
});

test("beyond 2^52 steps a value stays as it is, and a sum of steps beyond all numbers is refused", () => {
  expect(roundTo(2 ** 53 + 2, 1)).toBe(2 ** 53 + 2);
  expect(told(() => roundTo(1.7e308, 1.5e308))).toEqual([]);
  expect(told(() => roundTo(1.7e308, 1.1e308))).toEqual([
    "range | value | numbers whose result is a finite number",
  ]);
});

test("a typed array that JSON or a list has become names what makes one", () => {
  const list = "a Float64Array; Float64Array.from(list) makes one of a list";
  expect(told(() => expectFloat64Array(undefined, "rates"))).toEqual([`missing | rates | ${list}`]);
  expect(told(() => expectFloat64Array([1], "rates"))).toEqual([`type | rates | ${list}`]);
  expect(told(() => expectFloat64Array({ 0: 1 }, "rates"))).toEqual([
    `type | rates | ${list}, Object.values(record) a list of what JSON leaves of one`,
  ]);
  const own = Float64Array.of(1);
  expect(expectFloat64Array(own, "rates")).toBe(own);
});

test("typed arrays are read as lists are", () => {
  expect(mean(Float64Array.of(1, 2, 3))).toBe(2);
  expect(told(() => mean(Float64Array.of()))).toEqual(["missing | values | at least one number"]);
  expect(told(() => mean(Float64Array.of(1, Number.NaN)))).toEqual([
    "not-finite | values[1] | a finite number",
  ]);
});

test("a factor without an error lends no degrees of freedom", () => {
  const gal = (value: number) => quantity(value, "gal", "spray");
  const sure = meanEstimate([gal(10), gal(10)]);
  const spread = meanEstimate([gal(9), gal(10), gal(11)]);
  const product = estimateOfProduct(gal(1), [{ estimate: sure }, { estimate: spread }]);
  expect(product.degreesOfFreedom).toBeCloseTo(2, 12);
  expect(estimateOfProduct(gal(1), [{ estimate: sure }]).degreesOfFreedom).toBeUndefined();
});
