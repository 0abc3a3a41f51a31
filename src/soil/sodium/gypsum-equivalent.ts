import { type ChemicalElement, formulaWeight } from "../../nutrient/index.js";
import { expectOneOf, frozen } from "../../quantity/index.js";

/** What a material is made of, and the calcium that it brings. */
export interface CalciumSource {
  readonly formula: Readonly<Partial<Record<ChemicalElement, number>>>;
  /** Moles of calcium that a mole brings, or sets free from lime. */
  readonly calcium: number;
  /** Whether it works only on lime that is in the soil. */
  readonly needsFreeLime: boolean;
}

/** A material that brings calcium to a sodic soil, or sets it free. */
export type SodicAmendment =
  | "gypsum"
  | "anhydrite"
  | "calcium chloride dihydrate"
  | "sulfur"
  | "sulfuric acid"
  | "ferrous sulfate heptahydrate"
  | "aluminum sulfate octadecahydrate";

/** Formula of each material and whether it works only where the soil holds lime. */
export const sodicAmendments: Readonly<Record<SodicAmendment, CalciumSource>> = /* @__PURE__ */ frozen({
  gypsum: { formula: { Ca: 1, S: 1, O: 6, H: 4 }, calcium: 1, needsFreeLime: false },
  anhydrite: { formula: { Ca: 1, S: 1, O: 4 }, calcium: 1, needsFreeLime: false },
  "calcium chloride dihydrate": {
    formula: { Ca: 1, Cl: 2, O: 2, H: 4 },
    calcium: 1,
    needsFreeLime: false,
  },
  sulfur: { formula: { S: 1 }, calcium: 1, needsFreeLime: true },
  "sulfuric acid": { formula: { H: 2, S: 1, O: 4 }, calcium: 1, needsFreeLime: true },
  "ferrous sulfate heptahydrate": {
    formula: { Fe: 1, S: 1, O: 11, H: 14 },
    calcium: 1,
    needsFreeLime: true,
  },
  "aluminum sulfate octadecahydrate": {
    formula: { Al: 2, S: 3, O: 30, H: 36 },
    calcium: 3,
    needsFreeLime: true,
  },
});

const names = /* @__PURE__ */ Object.keys(sodicAmendments) as readonly SodicAmendment[];

/** The weight of a mole of gypsum, CaSO4 2 H2O, in grams. */
export const gypsumWeight = (): number => formulaWeight(sodicAmendments.gypsum.formula);

/**
 * The weight of a pure material that does what one weight of pure gypsum does for a sodic soil:
 * `w = M / (n 172.16)`, `n` moles of calcium that a mole of it brings or sets free, `M` its weight.
 *
 * Sulfur (0.186), sulfuric acid and the sulfates of iron and aluminum bring no calcium: they work only where the soil
 * holds free lime to dissolve (`sodicAmendments` says so), and sulfur only after it is oxidized.
 *
 * @throws RatewrightError `type`, `missing`
 *
 * Source: formulas and atomic weights of IUPAC.
 *
 * @example
 * ```ts
 * import { gypsumEquivalent } from "ratewright/soil";
 * Number(gypsumEquivalent("sulfur").toFixed(3)); // => 0.186
 * Number(gypsumEquivalent("sulfuric acid").toFixed(2)); // => 0.57
 * ```
 */
export const gypsumEquivalent = (material: SodicAmendment): number => {
  const { formula, calcium } = sodicAmendments[expectOneOf(material, names, "material")];
  return formulaWeight(formula) / (calcium * gypsumWeight());
};
