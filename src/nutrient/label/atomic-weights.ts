import { checks, expectNumber, expectRecord, fail } from "../../quantity/index.js";
import { nutrientWeights } from "./nutrient-weights.js";

/**
 * Atomic weights, abridged to five significant figures: IUPAC Commission on Isotopic Abundances and
 * Atomic Weights, Prohaska et al., "Standard atomic weights of the elements 2021", Pure and Applied
 * Chemistry 94 (2022) 573-600, table 2.
 */
export const atomicWeights: typeof nutrientWeights &
  Readonly<Record<"H" | "C" | "F" | "Na" | "Al" | "Cl" | "Fe", number>> = {
  ...nutrientWeights,
  H: 1.008,
  C: 12.011,
  F: 18.998,
  Na: 22.99,
  Al: 26.982,
  Cl: 35.45,
  Fe: 55.845,
};

/** An element of which the table holds the weight. */
export type ChemicalElement = keyof typeof atomicWeights;

/**
 * Adds up the weight of a formula, given as element and count, in g/mol.
 *
 * @throws RatewrightError `substance/unknown` for an element that is not in {@link atomicWeights};
 * `not-finite`, `type`, `missing`
 *
 * Source: atomic weights of IUPAC, see {@link atomicWeights}.
 *
 * @example
 * ```ts
 * import { formulaWeight } from "ratewright";
 * Number(formulaWeight({ Ca: 1, C: 1, O: 3 }).toFixed(3)); // => 100.086
 * ```
 */
export const formulaWeight = (formula: Readonly<Partial<Record<ChemicalElement, number>>>): number => {
  expectRecord(formula, "formula");
  let weight = 0;
  const door = checks();
  for (const [element, count] of Object.entries(formula)) {
    door.run(() => {
      const path = `formula.${element}`;
      if (!Object.hasOwn(atomicWeights, element)) {
        fail("substance/unknown", path, element, Object.keys(atomicWeights).join(", "));
      }
      weight += atomicWeights[element as ChemicalElement] * expectNumber(count, path);
    });
  }
  door.done();
  return weight;
};
