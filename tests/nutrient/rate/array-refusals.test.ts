import { describe, expect, test } from "vitest";
import {
  highestProductRatesKgPerHa,
  nutrientsSuppliedKg,
  productRatesKgPerHa,
} from "../../../src/nutrient/index.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of many areas at once, with the place in the array, and what happens at a limit.

const kg = Float64Array.of(1, 2);

const rows: readonly Refused[] = [
  [() => productRatesKgPerHa([1] as never, 20), "type", "targetKgPerHa", "Float64Array"],
  [() => productRatesKgPerHa(kg, 0), "infeasible", "percent", "a product with some of the nutrient"],
  [() => productRatesKgPerHa(kg, 101), "range", "percent", "0 to 100 %"],
  [() => productRatesKgPerHa(kg, -1), "range", "percent", "0 to 100 %"],
  [() => productRatesKgPerHa(kg, Number.NaN), "not-finite", "percent", "a percentage"],
  [() => productRatesKgPerHa(kg, 20, new Float64Array(3)), "conflict", "out", "2 places, one for each area"],
  [() => productRatesKgPerHa(kg, 20, [] as never), "type", "out", "Float64Array"],
  [() => productRatesKgPerHa(Float64Array.of(1, -1), 20), "range", "targetKgPerHa[1]", "zero or more"],
  [
    () => productRatesKgPerHa(Float64Array.of(1, Number.NaN), 20),
    "not-finite",
    "targetKgPerHa[1]",
    "a finite number",
  ],
  [
    () => productRatesKgPerHa(Float64Array.of(1e308), 20),
    "range",
    "targetKgPerHa[0]",
    "an amount whose result is a finite number",
  ],
  [
    () => nutrientsSuppliedKg({ rateKgPerHa: kg, areaM2: Float64Array.of(1), percent: 20 }),
    "conflict",
    "areaM2",
    "2 areas, one for each rate",
  ],
  [
    () => nutrientsSuppliedKg({ rateKgPerHa: [1] as never, areaM2: kg, percent: 20 }),
    "type",
    "rateKgPerHa",
    "Float64Array",
  ],
  [
    () => nutrientsSuppliedKg({ rateKgPerHa: kg, areaM2: [1] as never, percent: 20 }),
    "type",
    "areaM2",
    "Float64Array",
  ],
  [
    () => nutrientsSuppliedKg({ rateKgPerHa: kg, areaM2: kg, percent: 101 }),
    "range",
    "percent",
    "0 to 100 %",
  ],
  [
    () => nutrientsSuppliedKg({ rateKgPerHa: Float64Array.of(1, -1), areaM2: kg, percent: 20 }),
    "range",
    "rateKgPerHa[1]",
    "zero or more",
  ],
  [
    () =>
      nutrientsSuppliedKg({
        rateKgPerHa: Float64Array.of(1, Number.POSITIVE_INFINITY),
        areaM2: kg,
        percent: 20,
      }),
    "not-finite",
    "rateKgPerHa[1]",
    "a finite number",
  ],
  [
    () => nutrientsSuppliedKg({ rateKgPerHa: kg, areaM2: Float64Array.of(1, -1), percent: 20 }),
    "range",
    "areaM2[1]",
    "zero or more",
  ],
  [
    () =>
      nutrientsSuppliedKg({
        rateKgPerHa: Float64Array.of(1e308),
        areaM2: Float64Array.of(1e308),
        percent: 20,
      }),
    "range",
    "areaM2[0]",
    "an amount whose result is a finite number",
  ],
  [() => highestProductRatesKgPerHa([]), "missing", "caps", "cap"],
  [
    () => highestProductRatesKgPerHa([{ limitKgPerHa: kg, percent: 0 }]),
    "infeasible",
    "caps",
    "a cap on something that the product contains",
  ],
  [
    () => highestProductRatesKgPerHa([{ limitKgPerHa: kg, percent: 101 }]),
    "range",
    "caps[0].percent",
    "0 to 100 %",
  ],
  [
    () => highestProductRatesKgPerHa([{ limitKgPerHa: [1] as never, percent: 1 }]),
    "type",
    "caps[0].limitKgPerHa",
    "Float64Array",
  ],
  [
    () =>
      highestProductRatesKgPerHa([
        { limitKgPerHa: kg, percent: 1 },
        { limitKgPerHa: Float64Array.of(1), percent: 1 },
      ]),
    "conflict",
    "caps[1].limitKgPerHa",
    "2 areas, as in the first cap",
  ],
  [
    () => highestProductRatesKgPerHa([{ limitKgPerHa: Float64Array.of(1, Number.NaN), percent: 0 }]),
    "not-finite",
    "caps[0].limitKgPerHa[1]",
    "a finite number",
  ],
  [
    () => highestProductRatesKgPerHa([{ limitKgPerHa: Float64Array.of(1e308), percent: 1 }]),
    "range",
    "caps[0].limitKgPerHa[0]",
    "an amount whose result is a finite number",
  ],
  [
    () => highestProductRatesKgPerHa([{ limitKgPerHa: kg, percent: 1, of: "N" } as never]),
    "type",
    "caps[0].of",
    "percent",
  ],
];

describeRefused("what is refused of arrays", rows);

describe("arrays at the limits", () => {
  test("arrays of no place, of nothing and of all", () => {
    expect(productRatesKgPerHa(new Float64Array(0), 20)).toHaveLength(0);
    expect([...productRatesKgPerHa(Float64Array.of(-0, 40), 100)]).toEqual([0, 40]);
    expect([
      ...nutrientsSuppliedKg({
        rateKgPerHa: Float64Array.of(200, 0),
        areaM2: Float64Array.of(5000, 1),
        percent: 100,
      }),
    ]).toEqual([100, 0]);
    expect([...nutrientsSuppliedKg({ rateKgPerHa: kg, areaM2: kg, percent: 0 })]).toEqual([0, 0]);
  });

  test("the array that is handed in is the one that comes back", () => {
    const out = new Float64Array(2);
    expect(productRatesKgPerHa(kg, 20, out)).toBe(out);
    expect([...out]).toEqual([5, 10]);
    expect(nutrientsSuppliedKg({ rateKgPerHa: kg, areaM2: kg, percent: 20, out })).toBe(out);
    expect(highestProductRatesKgPerHa([{ limitKgPerHa: kg, percent: 50 }], out)).toBe(out);
    expect([...out]).toEqual([2, 4]);
  });
});
