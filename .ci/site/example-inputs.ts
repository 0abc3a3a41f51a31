// Figures to try a formula with: from the range of a practice problem, rounded, in the usual unit.
import { numberIn, quantityOf } from "../../src/quantity/index.js";
import type { CatalogueEntry, CatalogueInput } from "../../src/teach/index.js";

/** A figure and its unit, as they are typed. */
export interface ExampleAmount {
  readonly value: string;
  readonly unit: string;
}

/** The figures of an example, by the names of the inputs. */
export type ExampleInputs = Readonly<Record<string, ExampleAmount>>;

/** Where in the range each input lies: not all in the middle, so that no ratio of two is one. */
const shares = [0.5, 0.35, 0.65, 0.25, 0.75];

/** With as few digits as keep it in the range, two at least. */
const roundedWithin = (value: number, min: number, max: number): number => {
  for (let digits = 2; digits < 7; digits++) {
    const rounded = Number(value.toPrecision(digits));
    if (rounded >= min && rounded <= max) return rounded;
  }
  return value;
};

const amountOf = (input: CatalogueInput, n: number, system: "US" | "metric"): ExampleAmount => {
  const { dimension, sensible, of, usualUnits } = input;
  const unit = usualUnits[system];
  const inSystem = (value: number): number =>
    numberIn(quantityOf(value, sensible.unit, of, input.name), unit);
  const [min, max] = [inSystem(sensible.min), inSystem(sensible.max)];
  const middle = min + (max - min) * (shares[n % shares.length] as number);
  const value = dimension === "count" ? Math.round(middle) : roundedWithin(middle, min, max);
  return { value: String(value), unit };
};

/** An example of a formula in US customary or in metric units. */
export const exampleInputs = (entry: CatalogueEntry, system: "US" | "metric"): ExampleInputs =>
  Object.fromEntries(entry.inputs.map((input, n) => [input.name, amountOf(input, n, system)]));
