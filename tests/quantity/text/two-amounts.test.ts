import { expect, test } from "vitest";
import { readQuantity } from "../../../src/quantity/index.js";

test.each([
  ["5 ft 6 in", "length", "5.5 ft"],
  ["-5 ft 6 in", "length", "-5.5 ft"],
  [`5' 6"`, "length", "5.5 ft"],
  [`5'6"`, "length", "5.5 ft"],
  ["5’ 6”", "length", "5.5 ft"],
  [`12' 4.5"`, "length", "12.375 ft"],
  ["2 lb 3 oz", "mass", "2.1875 lb"],
  ["2 lb 3 oz of N", "mass", "2.1875 lb of N"],
  ["1 gal 2 qt", "volume", "1.5 gal"],
  ["1 h 30 min", "time", "1.5 h"],
  ["3 m 20 cm", "length", "3.2 m"],
] as const)("two amounts in one, %s as %s, are refused with their sum", (text, dimension, sum) => {
  const { value, problems } = readQuantity(text, { dimension });
  expect(value).toBeNull();
  expect(problems.map(({ code, suggestion }) => [code, suggestion])).toEqual([["text", sum]]);
  // what is suggested can be typed
  expect(readQuantity(sum, { dimension }).problems).toEqual([]);
});

test.each([
  ["3 lb 1000 ft2", "mass/area"],
  ["3 m 20 min", "length"],
  ["3 lb 1000", "mass"],
  ["2 gal per 100 gal of water", "volume"],
] as const)("what is not two amounts of one kind has no sum: %s", (text, dimension) => {
  const { problems } = readQuantity(text, { dimension });
  expect(problems.length).toBeGreaterThan(0);
  expect(problems.every(({ suggestion }) => suggestion === undefined)).toBe(true);
});
