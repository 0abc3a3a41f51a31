import { type ChemicalElement, formulaWeight } from "../../nutrient/index.js";
import { hasOwn } from "../../quantity/house.js";
import { expectOneOf, frozen } from "../../quantity/index.js";

interface IonFacts {
  readonly charge: number;
  readonly formula: Readonly<Partial<Record<ChemicalElement, number>>>;
}

/** An ion of a report, as a substance; `CaCO3 equivalent` for what is stated as calcium carbonate. */
export type Ion =
  | "Ca"
  | "Mg"
  | "K"
  | "Na"
  | "Al"
  | "NH4-N"
  | "Cl"
  | "SO4"
  | "HCO3"
  | "CO3"
  | "NO3"
  | "NO3-N"
  | "CaCO3 equivalent";

/** Charge and formula of what a soil or a water report states. Nitrogen stands for the ion that carries it. */
const facts: Readonly<Record<Ion, IonFacts>> = {
  Ca: { charge: 2, formula: { Ca: 1 } },
  Mg: { charge: 2, formula: { Mg: 1 } },
  K: { charge: 1, formula: { K: 1 } },
  Na: { charge: 1, formula: { Na: 1 } },
  Al: { charge: 3, formula: { Al: 1 } },
  "NH4-N": { charge: 1, formula: { N: 1 } },
  Cl: { charge: -1, formula: { Cl: 1 } },
  SO4: { charge: -2, formula: { S: 1, O: 4 } },
  HCO3: { charge: -1, formula: { H: 1, C: 1, O: 3 } },
  CO3: { charge: -2, formula: { C: 1, O: 3 } },
  NO3: { charge: -1, formula: { N: 1, O: 3 } },
  "NO3-N": { charge: -1, formula: { N: 1 } },
  "CaCO3 equivalent": { charge: 2, formula: { Ca: 1, C: 1, O: 3 } },
};

const ions = /* @__PURE__ */ Object.keys(facts) as readonly Ion[];

/** The charge of each ion, with its sign; calcium carbonate counts for the two that it neutralizes. */
export const ionCharges: Readonly<Record<Ion, number>> = /* @__PURE__ */ frozen(
  Object.fromEntries(ions.map((ion) => [ion, facts[ion].charge])) as Record<Ion, number>,
);

/** How the weight of a charge is taken. */
export type EquivalentWeights = "atomic weights" | "whole numbers";

/** Weights of one charge as laboratories round them: K 391, Mg 120, Ca 200, Na 230 ppm a meq/100 g. */
const rounded: Readonly<Partial<Record<Ion, number>>> = { Ca: 20, Mg: 12, K: 39.1, Na: 23, Al: 9 };

/**
 * The weight of one equivalent of an ion, `w = M / |z|`, in grams a mole of charge, which is mg per meq.
 *
 * - `M` weight of the formula, g/mol; `z` its charge. For `NO3-N` and `NH4-N` it is nitrogen alone that weighs,
 *   for `CaCO3 equivalent` calcium carbonate, which neutralizes two.
 *
 * @param weights - `"atomic weights"` where it is left out; `"whole numbers"` are the divisors of many
 *   laboratories: Ca 20, Mg 12, K 39.1, Na 23, Al 9. The two differ by up to 1.3 % (magnesium)
 * @throws RatewrightError `type`, `missing`; `type` where no rounded weight is in use
 *
 * Source: atomic weights of IUPAC (2021); the rounded ones as in "CEC calculations", Clemson University
 * Agricultural Service Laboratory, and university course notes on soil units.
 *
 * @example
 * ```ts
 * import { equivalentWeight } from "ratewright/soil";
 * equivalentWeight("Ca"); // => 20.039
 * equivalentWeight("Ca", "whole numbers"); // => 20
 * Number(equivalentWeight("HCO3").toFixed(2)); // => 61.02
 * ```
 */
export const equivalentWeight = (ion: Ion, weights: EquivalentWeights = "atomic weights"): number => {
  const name = expectOneOf(ion, ions, "ion");
  if (expectOneOf(weights, ["atomic weights", "whole numbers"], "weights") === "whole numbers") {
    const known = Object.keys(rounded) as readonly Ion[];
    return rounded[expectOneOf(name, known, "ion")] as number;
  }
  const { charge, formula } = facts[name];
  return formulaWeight(formula) / Math.abs(charge);
};

/** Whether a text names an ion of the table. */
export const isIon = (text: string): text is Ion => hasOwn(facts, text);
