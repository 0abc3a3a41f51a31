import { isSubstance, type PlainSubstance, substances } from "./substances.js";

/**
 * What people call a substance. "Available phosphate" and "soluble potash" are the words that a
 * fertilizer guarantee uses for P2O5 and K2O; phosphorus and potassium are the elements.
 */
const names: Readonly<Record<string, string>> = {
  N: "nitrogen|total nitrogen|actual n|total n|actual nitrogen",
  "N:quick":
    "n:soluble|readily available nitrogen|quick nitrogen|quick n|soluble nitrogen|water soluble nitrogen|soluble n|quick release nitrogen|quick release n",
  "N:slow": "slow nitrogen|slow n|slow release nitrogen|slow release n|controlled release nitrogen",
  NO3: "nitrate",
  "NO3-N": "nitrate nitrogen|nitrate n",
  "NH4-N": "ammonium nitrogen|ammonium n|ammoniacal nitrogen",
  P: "phosphorus|elemental phosphorus",
  P2O5: "phosphate|available phosphate|phosphoric acid equivalent",
  K: "potassium|elemental potassium",
  K2O: "potash|soluble potash",
  Ca: "calcium",
  CaO: "calcium oxide",
  Mg: "magnesium",
  MgO: "magnesium oxide|magnesia",
  S: "sulfur|sulphur|sulfate sulfur|sulfate s|so4-s|sulphate sulphur|sulphate s",
  SO4: "sulfate|sulphate",
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
  spray: "spray mix|spray solution|finished spray|solution",
  seed: "seeds",
  "pure live seed": "pls|pure live seeds",
};

let table: Map<string, string> | undefined;

/** Every name of a substance in small letters; symbols of one or two letters keep their capitals. */
export const substanceNames = (): ReadonlyMap<string, string> => {
  if (table === undefined) {
    table = new Map();
    for (const token of substances) if (token.length > 2) table.set(token.toLowerCase(), token);
    for (const [token, list] of Object.entries(names)) {
      for (const name of list.split("|")) table.set(name, token);
    }
  }
  return table;
};

/** The substance that a text names, or `undefined`: `N`, `potash`, `a.i.`, `N/product`, `product:feed-a`. */
export const readSubstance = (text: string): string | undefined => {
  const name = text.trim();
  if (isSubstance(name)) return name;
  const [top = "", bottom, more] = name.split("/");
  if (more !== undefined) return undefined;
  const part = (word: string): string | undefined => {
    const trimmed = word.trim();
    if (isSubstance(trimmed)) return trimmed;
    if (trimmed === "AI" || trimmed === "AE") return trimmed.toLowerCase();
    return substanceNames().get(trimmed.toLowerCase());
  };
  const above = part(top);
  if (bottom === undefined || above === undefined) return above;
  const below = part(bottom);
  const pair = `${above}/${below}`;
  return below !== undefined && isSubstance(pair) ? pair : undefined;
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
  substances
    .filter((substance) => !neutral.includes(substance))
    .map((substance) => ({ substance, name: names[substance]?.split("|")[0] ?? substance }));

const neutral: readonly string[] = ["none", "treated", "gross", "plan"];
