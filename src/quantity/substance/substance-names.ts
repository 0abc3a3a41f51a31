import { isSubstance, type PlainSubstance, substanceTokens } from "./substances.js";

/**
 * What people call a substance. "Available phosphate" and "soluble potash" are the words that a
 * fertilizer guarantee uses for P2O5 and K2O; phosphorus and potassium are the elements.
 */
const names: Readonly<Record<string, string>> = {
  N: "nitrogen|total nitrogen|actual n|total n|actual nitrogen",
  "N:quick":
    "n:soluble|readily available nitrogen|quick nitrogen|quick n|soluble nitrogen|water soluble nitrogen|soluble n|quick release nitrogen|quick release n",
  "N:slow":
    "slow nitrogen|slow n|slow release nitrogen|slow release n|controlled release nitrogen|controlled release n",
  // Alone, nitrate and sulfate are read only where the caller says which is meant: see two-forms.ts.
  NO3: "nitrate ion|nitrate as no3|nitrate|nitrates",
  "NO3-N": "nitrate nitrogen|nitrate n|no3 n|nitrate as n|nitrate as nitrogen|no3 as n|n as nitrate",
  "NH4-N":
    "ammonium nitrogen|ammonium n|ammoniacal nitrogen|ammoniacal n|nh4 n|ammonium as n|nh4 as n|n as ammonium",
  P: "phosphorus|elemental phosphorus|phosphorus as p|phosphate p|phosphate as p|po4 p|po4 as p",
  P2O5: "phosphate|phosphates|available phosphate|phosphoric acid equivalent|phosphate as p2o5|phosphorus as p2o5",
  K: "potassium|elemental potassium|potassium as k",
  K2O: "potash|soluble potash|potash as k2o|potassium as k2o",
  Ca: "calcium",
  CaO: "calcium oxide",
  Mg: "magnesium",
  MgO: "magnesium oxide|magnesia",
  S: "sulfur|sulphur|sulfate sulfur|sulfate s|so4 s|so4 as s|sulfate as s|sulfate as sulfur|sulphate sulphur|sulphate s|sulphate as s",
  SO4: "sulfate ion|sulphate ion|sulfate as so4|sulphate as so4|sulfate|sulphate|sulfates|sulphates",
  Fe: "iron",
  Mn: "manganese",
  Zn: "zinc",
  Cu: "copper",
  B: "boron",
  Mo: "molybdenum",
  Cl: "chloride|chlorine",
  Na: "sodium",
  Ni: "nickel",
  Si: "silicon",
  SiO2: "silica",
  Al: "aluminum|aluminium",
  HCO3: "bicarbonate",
  CO3: "carbonate",
  "hardness as CaCO3": "hardness",
  "CaCO3 equivalent": "calcium carbonate equivalent|cce",
  product: "material|formulated product|formulation|prod",
  ai: "a.i.|active ingredient|active",
  ae: "a.e.|acid equivalent",
  water: "water|h2o",
  spray: "spray mix|spray solution|finished spray|solution",
  seed: "seeds",
  "pure live seed": "pls|pure live seeds",
};

let table: ReadonlyMap<string, string> | undefined;

/** The table of names, made anew. */
export const madeNames = (): ReadonlyMap<string, string> => {
  const all = new Map<string, string>();
  for (const token of substanceTokens) if (token.length > 2) all.set(token.toLowerCase(), token);
  for (const [token, list] of Object.entries(names)) {
    for (const name of list.split("|")) all.set(name, token);
  }
  return all;
};

/** Every name of a substance in small letters; symbols of one or two letters keep their capitals. */
export const substanceNames = (): ReadonlyMap<string, string> => {
  table ??= madeNames();
  return table;
};

const partOf = (word: string): string | undefined => {
  if (isSubstance(word)) return word;
  if (word === "AI" || word === "AE") return word.toLowerCase();
  const name = word.toLowerCase();
  // slow-release N, nitrate-N, nitrate (as N)
  return substanceNames().get(name) ?? substanceNames().get(name.replace(/[()]/g, "").replace(/-/g, " "));
};

/** The substance that a text names, or `undefined`: `N`, `potash`, `a.i.`, `N/product`, `product:feed-a`. */
export const readSubstance = (text: string): string | undefined => {
  // A part that is none leaves nothing beside its slash, and that is no substance.
  const whole = text
    .split("/")
    .map((word) => partOf(word.trim()))
    .join("/");
  return isSubstance(whole) ? whole : undefined;
};

/** One line of a list of substances to choose from. */
export interface SubstanceChoice {
  /** The substance itself, as `quantity` takes it. */
  readonly substance: PlainSubstance;
  /** In the words of the trade: "available phosphate" would be P2O5, and "phosphorus" is the element. */
  readonly name: string;
}

/**
 * The substances without an id, each with its name, for a select box. What an id names (`product:feed-a`) an app adds
 * from its own list of products.
 *
 * @example
 * ```ts
 * import { substanceChoices } from "ratewright";
 * substanceChoices().find(({ substance }) => substance === "K2O")?.name; // => "potash"
 * substanceChoices().map(({ substance }) => substance).includes("none"); // => false
 * ```
 */
export const substanceChoices = (): readonly SubstanceChoice[] =>
  substanceTokens
    .filter((substance) => !neutral.includes(substance))
    .map((substance) => ({ substance, name: names[substance]?.split("|")[0] ?? substance }));

const neutral: readonly string[] = ["none", "treated", "gross", "plan"];
