import { nutrientWeights } from "./nutrient-weights.js";

/** The forms in which a nutrient is stated: element, oxide or ion. */
export const nutrientForms = {
  N: ["N", "NO3", "NO3-N", "NH4-N"],
  P: ["P", "P2O5"],
  K: ["K", "K2O"],
  Ca: ["Ca", "CaO"],
  Mg: ["Mg", "MgO"],
  S: ["S", "SO3", "SO4"],
  Si: ["Si", "SiO2"],
} as const;

/** A substance that states the same nutrient as `S` in another form. */
export type FormOf<S extends string> = S extends "NO3" | "NO3-N"
  ? "NO3" | "NO3-N"
  : {
      [E in Exclude<keyof typeof nutrientForms, "N">]: S extends (typeof nutrientForms)[E][number]
        ? (typeof nutrientForms)[E][number]
        : never;
    }[Exclude<keyof typeof nutrientForms, "N">];

/**
 * How much of one form of a nutrient is in one part of another, by mass: `formFactor("P2O5", "P")`.
 *
 * Equation: `f = w(from) / w(to)`, with `w(x) = n * A / M`: `n` atoms of atomic weight `A` in a formula
 * of weight `M`. `undefined` where the two are not forms of one nutrient.
 *
 * Source: atomic weights of IUPAC/CIAAW 2021.
 *
 * @example
 * ```ts
 * import { formFactor } from "ratewright";
 * Number(formFactor("P2O5", "P")?.toFixed(5)); // => 0.43643
 * Number(formFactor("K2O", "K")?.toFixed(5)); // => 0.83015
 * formFactor("P2O5", "K"); // => undefined
 * ```
 */
export const formFactor = (from: string, to: string): number | undefined => {
  if (from === to) return 1;
  const [a, b] = [shareOf(from), shareOf(to)];
  return a && b && a[0] === b[0] ? a[1] / b[1] : undefined;
};

/**
 * The element that a form states and its share of the form by mass, from the formula: `P2O5`, `SO4`.
 * Total N is more than its nitrate, and nitrate-N and ammonium-N are different nitrogen: of the nitrogen
 * forms only nitrate converts.
 */
const shareOf = (form: string): readonly [string, number] | undefined => {
  if (form === "NO3-N") return ["N", 1];
  const [, element = "N", count, oxygen, oxygens] = /^([A-Z][a-z]?)(\d?)(O(\d?))?$/.exec(form) ?? [];
  const weight = Number(count || 1) * nutrientWeights[element as keyof typeof nutrientWeights];
  if ((element === "N" && form !== "NO3") || !weight) return undefined;
  return [element, weight / (weight + (oxygen ? Number(oxygens || 1) * nutrientWeights.O : 0))];
};
