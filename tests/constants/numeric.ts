// Statistics and crossings between kinds of quantity, by hand from exact figures.
import {
  checkAgainstTarget,
  estimateOfProduct,
  interpolate,
  meanEstimate,
  roundTo,
  statedEstimate,
} from "../../src/numeric/index.js";
import { depthOf, parseQuantity, quantity, weightFractionOf } from "../../src/quantity/index.js";
import { type ConstantCheck, cells, edge } from "./check.js";

const number = (value: unknown): number => (typeof value === "number" ? value : Number.NaN);
const gpa = (value: number) => quantity(value, "gal/acre", "spray");
const off = () => checkAgainstTarget({ measured: gpa(9), target: gpa(10), tolerance: quantity(5, "%") });
/** A mean of 100 whose standard error is so many percent of it, from so many readings. */
const known = (percent: number, readings: number) => ({
  ...statedEstimate({ value: gpa(100), error: gpa(percent), meaning: "standard error" }),
  degreesOfFreedom: readings - 1,
});

/** Figures of the rooms numeric and quantity, by hand. */
export const numericConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room: "numeric",
      reached: "derived",
      within: 1e-9,
      source:
        "9 for 10 is 10 % short, and a ninth more makes 10; limits of a rectangle over the root of 3; Welch and Satterthwaite, 5^4 / (3^4 / 2 + 4^4 / 3); three quarters of the way; a half is rounded up",
    },
    [
      ["9 for 10, %", -10, () => off().deviation.in("%")],
      ["more by, %", 100 / 9, () => off().change.in("%")],
      [
        "standard error of limits of 1",
        1 / Math.sqrt(3),
        () => statedEstimate({ value: gpa(9), error: gpa(1), meaning: "limits" }).standardError.value,
      ],
      [
        "degrees of freedom of 3 % from 2 and 4 % from 3",
        625 / (81 / 2 + 256 / 3),
        () =>
          number(
            estimateOfProduct(gpa(1), [{ estimate: known(3, 3) }, { estimate: known(4, 4) }])
              .degreesOfFreedom,
          ),
      ],
      [
        "between points too far apart to be subtracted",
        7.5,
        () => interpolate({ xs: [-1.6e308, 1.6e308], ys: [0, 10], x: 0.8e308 }),
      ],
      ["the half at which a number is rounded up", 0.5, () => edge((at) => roundTo(at, 1) === 0, 0.1, 0.9)],
      ["mean error of 9 and 11", 1, () => meanEstimate([gpa(9), gpa(11)]).standardError.value],
    ],
  ),
  ...cells(
    {
      room: "quantity",
      reached: "derived",
      within: 1e-9,
      source: "a foot is 12 inches; 2.8 of 10 is 28 %; a thousand square feet in words are 1000 ft2",
    },
    [
      ["a foot deep, in", 12, () => depthOf(quantity(1, "ft3/ft2")).in("in")],
      [
        "2.8 of 10 lb/gal, % w/w",
        28,
        () => weightFractionOf(quantity(2.8, "lb/gal", "N"), quantity(10, "lb/gal", "product")).in("% w/w"),
      ],
      [
        "3 lb per thousand square feet",
        3,
        () => parseQuantity("3 lb per thousand square feet", { dimension: "mass/area" }).in("lb/1000 ft2"),
      ],
    ],
  ),
];
