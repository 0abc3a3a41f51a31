import { hasOwn } from "../../quantity/house.js";
import { expectNumber, expectRecord, fail, frozen, outOfRange } from "../../quantity/index.js";
import {
  calciumWeight,
  magnesiumWeight,
  oxygenWeight,
  phosphorusWeight,
  potassiumWeight,
  siliconWeight,
  sulfurWeight,
} from "./oxide-factor.js";
import { eachOf } from "./under-path.js";

/**
 * Atomic weights, abridged to five significant figures: IUPAC Commission on Isotopic Abundances and
 * Atomic Weights, Prohaska et al., "Standard atomic weights of the elements 2021", Pure and Applied
 * Chemistry 94 (2022) 573-600, table 2.
 */
export const atomicWeights: Readonly<
  Record<
    "H" | "C" | "N" | "O" | "F" | "Na" | "Mg" | "Al" | "Si" | "P" | "S" | "Cl" | "K" | "Ca" | "Fe",
    number
  >
> = /* @__PURE__ */ frozen({
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: oxygenWeight,
  F: 18.998,
  Na: 22.99,
  Mg: magnesiumWeight,
  Al: 26.982,
  Si: siliconWeight,
  P: phosphorusWeight,
  S: sulfurWeight,
  Cl: 35.45,
  K: potassiumWeight,
  Ca: calciumWeight,
  Fe: 55.845,
});

/** An element of which the table holds the weight. */
export type ChemicalElement = keyof typeof atomicWeights;

/**
 * Adds up the weight of a formula, given as element and count, in g/mol.
 *
 * Range: a sum above zero; a count below zero takes atoms out, as of the hydrogen of an acid in its salt.
 *
 * @throws RatewrightError `substance/unknown` for an element that is not in {@link atomicWeights};
 * `not-finite`, `range` (nothing left to weigh), `type`, `missing`
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
  const parts = eachOf(
    Object.keys(formula).slice(0, mostElements),
    (element) => `formula.${element.slice(0, 40)}`,
    (element) => {
      if (!isElement(element)) {
        return fail("substance/unknown", "", element, Object.keys(atomicWeights).join(", "));
      }
      return atomicWeights[element] * expectNumber(formula[element], "", { min: -mostAtoms, max: mostAtoms });
    },
  );
  const weight = parts.reduce((sum, part) => sum + part, 0);
  return weight > 0 ? weight : outOfRange("formula", weight, { min: 1 }, "atoms, {}");
};

/** Far more atoms of one element than any formula has, and more elements than the table holds. */
const [mostAtoms, mostElements] = [1e6, 200] as const;

const isElement = (name: string): name is ChemicalElement => hasOwn(atomicWeights, name);
