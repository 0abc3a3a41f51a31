import { type ChemicalElement, formulaWeight } from "../../nutrient/index.js";
import { expectOneOf } from "../../quantity/index.js";

/** A pure liming compound. */
export type LimingCompound =
  | "CaCO3"
  | "CaMg(CO3)2"
  | "MgCO3"
  | "Ca(OH)2"
  | "CaO"
  | "Mg(OH)2"
  | "MgO"
  | "CaSiO3";

interface CompoundFacts {
  readonly formula: Readonly<Partial<Record<ChemicalElement, number>>>;
  /** Acid that a mole neutralizes. */
  readonly acid: number;
}

const compounds: Readonly<Record<LimingCompound, CompoundFacts>> = {
  CaCO3: { formula: { Ca: 1, C: 1, O: 3 }, acid: 2 },
  "CaMg(CO3)2": { formula: { Ca: 1, Mg: 1, C: 2, O: 6 }, acid: 4 },
  MgCO3: { formula: { Mg: 1, C: 1, O: 3 }, acid: 2 },
  "Ca(OH)2": { formula: { Ca: 1, O: 2, H: 2 }, acid: 2 },
  CaO: { formula: { Ca: 1, O: 1 }, acid: 2 },
  "Mg(OH)2": { formula: { Mg: 1, O: 2, H: 2 }, acid: 2 },
  MgO: { formula: { Mg: 1, O: 1 }, acid: 2 },
  CaSiO3: { formula: { Ca: 1, Si: 1, O: 3 }, acid: 2 },
};

const names = /* @__PURE__ */ Object.keys(compounds) as readonly LimingCompound[];

/**
 * The calcium carbonate equivalent of a pure compound, percent by weight: `CCE = 100 (n / M) (M0 / 2)`.
 *
 * - `n` acid that a mole neutralizes, `M` its weight, `M0` that of CaCO3
 *
 * Above 100 is right: hydrated lime 135, dolomite 108.6, magnesium carbonate 118.7. A laboratory note that prints 108.5
 * for magnesium carbonate has the figure of dolomite. What is sold is never pure: its label has the CCE.
 *
 * @throws RatewrightError `type`, `missing`
 *
 * Source: atomic weights of IUPAC; 135 % for Ca(OH)2 in "Liming terminology and analysis", University of
 * Wisconsin-Madison.
 *
 * @example
 * ```ts
 * import { carbonateEquivalent } from "ratewright/soil";
 * Number(carbonateEquivalent("Ca(OH)2").toFixed(1)); // => 135.1
 * Number(carbonateEquivalent("CaMg(CO3)2").toFixed(1)); // => 108.6
 * ```
 */
export const carbonateEquivalent = (compound: LimingCompound): number => {
  const { formula, acid } = compounds[expectOneOf(compound, names, "compound")];
  const carbonate = formulaWeight({ Ca: 1, C: 1, O: 3 }) / 2;
  return (100 * acid * carbonate) / formulaWeight(formula);
};
