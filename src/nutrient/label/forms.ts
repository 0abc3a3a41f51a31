import { fail, frozen } from "../../quantity/index.js";
import { atomicWeights } from "./atomic-weights.js";
import { oxideFactor } from "./oxide-factor.js";

/** The forms in which a nutrient is stated: element, oxide or ion. */
export const nutrientForms: {
  readonly N: readonly ["N", "NO3", "NO3-N", "NH4-N"];
  readonly P: readonly ["P", "P2O5"];
  readonly K: readonly ["K", "K2O"];
  readonly Ca: readonly ["Ca", "CaO"];
  readonly Mg: readonly ["Mg", "MgO"];
  readonly S: readonly ["S", "SO3", "SO4"];
  readonly Si: readonly ["Si", "SiO2"];
} = /* @__PURE__ */ frozen({
  N: ["N", "NO3", "NO3-N", "NH4-N"],
  P: ["P", "P2O5"],
  K: ["K", "K2O"],
  Ca: ["Ca", "CaO"],
  Mg: ["Mg", "MgO"],
  S: ["S", "SO3", "SO4"],
  Si: ["Si", "SiO2"],
});

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
 * @throws RatewrightError `type` for anything but a text
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
  if (typeof from !== "string" || typeof to !== "string") {
    return fail(
      "type",
      typeof from === "string" ? "to" : "from",
      typeof from === "string" ? to : from,
      "a form of a nutrient, such as P2O5",
    );
  }
  return nitrates.has(from) && nitrates.has(to)
    ? (nitrates.get(from) as number) / (nitrates.get(to) as number)
    : oxideFactor(from, to);
};

/** Total N is more than its nitrate, and nitrate-N and ammonium-N are different nitrogen: only nitrate converts. */
const nitrates: ReadonlyMap<string, number> = /* @__PURE__ */ new Map([
  ["NO3-N", 1],
  ["NO3", atomicWeights.N / (atomicWeights.N + 3 * atomicWeights.O)],
]);
