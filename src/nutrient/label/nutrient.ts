import { hasOwn } from "../../quantity/house.js";
import { frozen, type PlainSubstance } from "../../quantity/index.js";

/** What labels state, in the order of labels: the one list, of substances that a quantity can be of. */
const stated = [
  "N",
  "P2O5",
  "K2O",
  "P",
  "K",
  "Ca",
  "CaO",
  "Mg",
  "MgO",
  "S",
  "SO3",
  "SO4",
  "Fe",
  "Mn",
  "Zn",
  "Cu",
  "B",
  "Mo",
  "Cl",
  "Ni",
  "Si",
  "SiO2",
] as const;

/** What an analysis can state, and what a rate can be a rate of. */
export type Nutrient = (typeof stated)[number];

/**
 * The guaranteed analysis of a fertilizer: percent of product by weight, as printed on the label.
 *
 * `basis` says how the second and third figure of a grade were read: as the oxides P2O5 and K2O (the
 * United States and most of the world), or as the elements P and K (Australia, New Zealand and some
 * research). `Stated` are the nutrients that the type is known to state, as of a grade written out in the code.
 */
export interface Analysis<Stated extends Nutrient = never> {
  readonly basis: "oxide" | "element";
  /** Percent by weight of the product, keyed by nutrient: `{ N: 24, P2O5: 0, K2O: 11 }`. */
  readonly percent: Readonly<Partial<Record<Nutrient, number>>> & { readonly [S in Stated]: number };
  /** The label says that trace elements are in it, without amounts: `20-20-20+TE`. */
  readonly traceElements?: true;
}

/** The nutrients that a grade written out states, as far as its type tells: all three of `24-0-11`. */
export type StatedBy<G, B = "oxide"> =
  G extends Analysis<infer S>
    ? S
    : G extends `${number}-${number}-${number}${string}` | `${number}:${number}:${number}${string}`
      ? "N" | (B extends "element" ? "P" | "K" : B extends "oxide" ? "P2O5" | "K2O" : never)
      : never;

/** The way for a label in pounds per gallon or percent weight by volume, as refusals name it. */
export const labelByVolume: string =
  "a label in lb per gallon or % w/v is liquidFertilizer({ id, perVolume }), or with its density analysis: analysisByWeight({ perVolume, density })";

/**
 * Whether something is a nutrient in a form that labels state: a guard for what a select box or a file gives.
 *
 * @example
 * ```ts
 * import { isNutrient } from "ratewright";
 * isNutrient("P2O5"); // => true
 * isNutrient("phosphate"); // => false
 * ```
 */
export const isNutrient = (text: unknown): text is Nutrient => stated.some((one) => one === text);

/** Words for elements on labels. */
const elements: Readonly<Record<string, Nutrient>> = {
  iron: "Fe",
  manganese: "Mn",
  zinc: "Zn",
  copper: "Cu",
  boron: "B",
  sulfur: "S",
  sulphur: "S",
  magnesium: "Mg",
  calcium: "Ca",
};

/** The nutrient of a symbol in any letters, or of the name of an element. */
export const nutrientNamed = (text: string): Nutrient | undefined => {
  const small = text.toLowerCase();
  return hasOwn(elements, small) ? elements[small] : stated.find((one) => one.toLowerCase() === small);
};

/**
 * The nutrients that labels state, in the order of labels: for a select box.
 *
 * @example
 * ```ts
 * import { nutrients } from "ratewright";
 * nutrients.slice(0, 3); // => ["N", "P2O5", "K2O"]
 * ```
 */
export const nutrients: readonly Nutrient[] = /* @__PURE__ */ frozen([...stated] satisfies PlainSubstance[]);
