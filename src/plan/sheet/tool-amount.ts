import { numberIn, unitSymbol } from "../../quantity/index.js";
import type { Measure } from "../visit/measure.js";
import { type FirstUnits, plainNumber } from "./sheet-units.js";

/** What a product is measured with, and in which steps: one unit for its loads, its total and its store. */
export interface Tool {
  readonly name: "SCALE" | "JUG";
  readonly unit: string;
  readonly step: number;
}

/** A step that is 1 % of the smallest amount or finer, as a power of ten of the unit, and 1 at most. */
const stepFor = (smallest: number): number =>
  smallest > 0 ? Math.min(1, 10 ** Math.max(-6, Math.floor(Math.log10(smallest / 100)))) : 1;

/** The unit by size: what a scale or a jug of that size reads. */
const unitBySize = (largest: Measure, first: FirstUnits): string => {
  if (largest.dimension === "mass") {
    if (first === "US") return numberIn(largest, "lb") >= 20 ? "lb" : "oz";
    return numberIn(largest, "kg") >= 5 ? "kg" : "g";
  }
  if (first === "US") return numberIn(largest, "gal") >= 2 ? "gal" : "fl oz";
  return numberIn(largest, "L") >= 5 ? "L" : "mL";
};

/** The tool for amounts of one product: by the increments of the job where it states them. */
export const toolFor = (
  amounts: readonly Measure[],
  first: FirstUnits,
  increment?: { readonly unit: string; readonly step: number },
): Tool => {
  const largest = amounts.reduce((a, b) => (numberIn(b, a.unit) > a.value ? b : a));
  const name = largest.dimension === "mass" ? "SCALE" : "JUG";
  if (increment !== undefined) return { name, ...increment };
  const unit = unitBySize(largest, first);
  const values = amounts.map((amount) => numberIn(amount, unit)).filter((value) => value > 0);
  return { name, unit, step: stepFor(Math.min(...values, Number.MAX_VALUE)) };
};

/** How many steps of the tool an amount is. */
export const stepsOf = (amount: Measure, { unit, step }: Tool): number =>
  Math.round(numberIn(amount, unit) / step);

const decimalsOf = (step: number): number => {
  for (let decimals = 0; decimals < 9; decimals++)
    if (Math.abs(step * 10 ** decimals - Math.round(step * 10 ** decimals)) < 1e-9) return decimals;
  return 9;
};

const ouncesPerPound = /* @__PURE__ */ numberIn({ value: 1, unit: "lb" }, "oz");

/** So many steps in words: `37 mL`, `2 lb 3.2 oz`, `15.5 oz`; ounces of a scale are ounces by weight. */
export const stepsText = (steps: number, { unit, step }: Tool): string => {
  const decimals = decimalsOf(step);
  const value = steps * step;
  const fixed = (number: number): string => plainNumber(number, decimals, true);
  if (unit !== "oz") return `${fixed(value)} ${unitSymbol(unit)}`;
  const perPound = Math.round(ouncesPerPound / step);
  if (Math.abs(perPound * step - ouncesPerPound) > 1e-9 || steps < perPound) return `${fixed(value)} oz wt`;
  const ounces = (steps % perPound) * step;
  const pounds = `${plainNumber(Math.floor(steps / perPound), 0)} lb`;
  return ounces === 0 ? pounds : `${pounds} ${fixed(ounces)} oz`;
};
