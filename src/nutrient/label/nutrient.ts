import { frozen } from "../../quantity/index.js";

/** What an analysis can state, and what a rate can be a rate of. */
export type Nutrient =
  | "N"
  | "P2O5"
  | "K2O"
  | "P"
  | "K"
  | "Ca"
  | "CaO"
  | "Mg"
  | "MgO"
  | "S"
  | "SO3"
  | "SO4"
  | "Fe"
  | "Mn"
  | "Zn"
  | "Cu"
  | "B"
  | "Mo"
  | "Cl"
  | "Ni"
  | "Si"
  | "SiO2";

const named = /^(N|P2O5|K2O|P|K|Ca|CaO|Mg|MgO|S|SO3|SO4|Fe|Mn|Zn|Cu|B|Mo|Cl|Ni|Si|SiO2)$/;

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
export const isNutrient = (text: unknown): text is Nutrient => typeof text === "string" && named.test(text);

/**
 * The nutrients that labels state, in the order of labels: for a select box.
 *
 * @example
 * ```ts
 * import { nutrients } from "ratewright";
 * nutrients.slice(0, 3); // => ["N", "P2O5", "K2O"]
 * ```
 */
export const nutrients: readonly Nutrient[] = /* @__PURE__ */ frozen([
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
]);
