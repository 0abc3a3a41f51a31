import { expect, test } from "vitest";
import {
  accurateSum,
  coefficientOfVariation,
  exceeds,
  interpolate,
  mean,
  roundTo,
  standardDeviation,
  wholeUnitsFor,
  wholeUnitsWithin,
} from "../../../src/numeric/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const told = (call: () => unknown): readonly string[] =>
  problemsOf(call).map(({ code, path, expected, got }) => `${code} | ${path} | ${expected} | ${got}`);

const _percent = (value: number) => quantity(value, "%");
const gpa = (value: number) => quantity(value, "gal/acre", "spray");

type Row = readonly [name: string, call: () => unknown, ...problems: readonly string[]];
const refused = (rows: readonly Row[]): void => {
  for (const [name, call, ...problems] of rows) expect([name, ...told(call)]).toEqual([name, ...problems]);
};

const bare =
  "a bare number; quantities go into meanEstimate, which gives their mean and its error, or into sum";
const listRows: readonly Row[] = [
  ["text", () => mean("12" as never), 'type | values | a list of numbers | "12"'],
  ["none", () => mean([]), "missing | values | at least one number | a list of 0"],
  [
    "one of two",
    () => standardDeviation([1], { divisor: "n-1" }),
    "missing | values | at least 2 numbers | a list of 1",
  ],
  ["a hole", () => mean(new Array(2)), "missing | values[0] | a finite number | undefined"],
  ["text among them", () => mean([1, "2"] as never), 'not-finite | values[1] | a finite number | "2"'],
  [
    "quantities",
    () => accurateSum([gpa(1)] as never),
    `not-finite | values[0] | ${bare} | 1 gal/acre of spray`,
  ],
  [
    "a sum that is too large",
    () => accurateSum([1e308, 1e308]),
    "range | values | numbers whose result is a finite number | a list of 2",
  ],
  [
    "a spread that is too large",
    () => standardDeviation([1e200, -1e200], { divisor: "n" }),
    "range | values | numbers whose result is a finite number | a list of 2",
  ],
  [
    "a mean that is too large",
    () => mean([1e308, 1e308]),
    "range | values | numbers whose result is a finite number | a list of 2",
  ],
  [
    "no divisor",
    () => standardDeviation([1, 2], {} as never),
    'missing | divisor | one of "n", "n-1" | undefined',
  ],
  [
    "another divisor",
    () => standardDeviation([1, 2], { divisor: "N" as never }),
    'type | divisor | one of "n", "n-1" | "N"',
  ],
  [
    "no options",
    () => standardDeviation([1, 2], undefined as never),
    "missing | options | a record with divisor | undefined",
  ],
  [
    "a mean of nothing",
    () => coefficientOfVariation([-1, 1], { divisor: "n" }),
    "range | values | a mean of more than zero | a mean of 0",
  ],
];

test("lists of numbers", () => {
  refused(listRows);
});

const numberRows: readonly Row[] = [
  ["a value", () => exceeds("1" as never, 1), 'not-finite | value | a finite number | "1"'],
  ["a limit", () => exceeds(1, Number.NaN), "not-finite | limit | a finite number | not a number"],
  ["a step", () => roundTo(1, 0), "range | step | more than 0 | 0"],
  ["a value to round", () => roundTo(Number.NaN, 1), "not-finite | value | a finite number | not a number"],
  ["a need", () => wholeUnitsFor(-1, 50), "range | need | 0 or more | -1"],
  ["a size", () => wholeUnitsFor(1, 0), "range | size | more than 0 | 0"],
  [
    "too many",
    () => wholeUnitsFor(1e300, 1),
    "range | need | an amount of 9007199254740991 or less | 1e+300",
  ],
  ["an amount", () => wholeUnitsWithin(-1, 50), "range | amount | 0 or more | -1"],
  ["a size within", () => wholeUnitsWithin(1, 0), "range | size | more than 0 | 0"],
  [
    "too many within",
    () => wholeUnitsWithin(1e300, 1),
    "range | amount | an amount of 9007199254740991 or less | 1e+300",
  ],
];

test("numbers", () => {
  refused(numberRows);
});

const tableRows: readonly Row[] = [
  [
    "no abscissas",
    () => interpolate({ ys: [1], x: 1 } as never),
    "missing | xs | a list of numbers | undefined",
  ],
  [
    "no points",
    () => interpolate({ xs: [], ys: [], x: 1 }),
    "missing | xs | at least one number | a list of 0",
    "missing | ys | at least one number | a list of 0",
  ],
  [
    "two of one",
    () => interpolate({ xs: [1, 2], ys: [1], x: 1 }),
    "conflict | ys | as many numbers as xs has, which is 2 | a list of 1",
  ],
  [
    "not rising",
    () => interpolate({ xs: [1, 1], ys: [1, 2], x: 1 }),
    "conflict | xs[1] | more than xs[0], which is 1 | 1",
  ],
  [
    "falling",
    () => interpolate({ xs: [1, 3, 2], ys: [1, 2, 3], x: 1 }),
    "conflict | xs[2] | more than xs[1], which is 3 | 2",
  ],
  ["below", () => interpolate({ xs: [1, 2], ys: [1, 2], x: 0.5 }), "range | x | 1 to 2 | 0.5"],
  ["beyond", () => interpolate({ xs: [1, 2], ys: [1, 2], x: 2.5 }), "range | x | 1 to 2 | 2.5"],
  [
    "no place",
    () => interpolate({ xs: [1, 2], ys: [1, 2], x: "1" as never }),
    'not-finite | x | a finite number | "1"',
  ],
  [
    "another word",
    () => interpolate({ xs: [1, 2], ys: [1, 2], x: 1, outside: "clamp" as never }),
    'type | outside | one of "refuse", "hold" | "clamp"',
  ],
];

test("tables", () => {
  refused(tableRows);
  expect(interpolate({ xs: [1, 2], ys: [1, 2], x: 1 })).toBe(1);
  expect(interpolate({ xs: [1, 2], ys: [1, 2], x: 2 })).toBe(2);
  expect(interpolate({ xs: [1, 2, 4, 8], ys: [10, 20, 40, 0], x: 6 })).toBe(20);
  expect(interpolate({ xs: [1, 2, 4, 8], ys: [10, 20, 40, 0], x: 4 })).toBe(40);
  expect(interpolate({ xs: [1, 2], ys: [1, 2], x: 9, outside: "hold" })).toBe(2);
  expect(interpolate({ xs: [-1.7e308, 1.7e308], ys: [0, 10], x: 0 })).toBe(5);
  expect(interpolate({ xs: [0, 1], ys: [-1.7e308, 1.7e308], x: 0.5 })).toBe(0);
});
