import fc from "fast-check";
import { expect, test } from "vitest";
import { parseQuantity } from "../../../src/quantity/index.js";
import { runs } from "../../properties.js";

const result = (text: string, options: object): unknown => {
  try {
    return parseQuantity(text, options as { dimension: "mass" }).toJSON();
  } catch (error) {
    return (error as Error).message;
  }
};
// what stands behind the number, as texts that were read before and as texts that were not
const rests = [
  "lb",
  " lb",
  " lb/acre",
  " lbs N per 1,000 sq ft",
  "oz",
  " pt per 100 gal",
  "k ft2",
  " lb 3 oz",
  "% ",
  " to 5 lb",
  "e3 lb",
  "°F",
  " x",
  "#/M",
];
const numbers = [
  "3",
  "-3",
  "+.5",
  "3.",
  ".",
  "1e3",
  "12,400",
  "12,40",
  "0,400",
  "1,234,567.5",
  "1.2.3",
  "1/2",
  "1 1/2",
  "12 400",
  "9".repeat(30),
];
const options = [
  {},
  { dimension: "mass" },
  { of: "N" },
  { dimension: "mass/area", of: "N" },
  { decimal: "," },
];

test("what was read before changes no reading", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...numbers),
      fc.constantFrom(...rests),
      fc.constantFrom(...options),
      fc.constantFrom(...options),
      (number, rest, wanted, before) => {
        result(`7${rest}`, before);
        const again = result(`${number}${rest}`, wanted);
        // two spaces take the long way, and mean the same
        const long = result(`${number}${rest}`.replace(/^/, "  "), wanted);
        const tidy = (of: unknown): unknown =>
          typeof of === "string" ? of.replace(/got "\s*/, 'got "') : of;
        expect(tidy(again)).toEqual(tidy(long));
      },
    ),
    runs(1500),
  );
});

test("a list of strangers neither fills the memory nor stops it", () => {
  for (let i = 0; i < 3000; i++) parseQuantity(`1 lb of product:feed-${i}`);
  expect(parseQuantity("2 lb of product:feed-0").toJSON()).toEqual({
    value: 2,
    unit: "lb",
    of: "product:feed-0",
  });
});
