import { readSubstance, substanceNames } from "../substance/substance-names.js";
import { substances } from "../substance/substances.js";
import type { Dimension } from "../unit/dimensions.js";
import { siblingUnit } from "../unit/near-units.js";
import { unitDimension } from "../unit/unit-facts.js";
import { cleanText } from "./clean-text.js";
import { formsOf } from "./two-forms.js";
import { unitNames } from "./unit-names-written.js";
import { readRest } from "./unit-reading.js";

/** Longer than any unit and any substance name. */
const longest = 60;

/** Letters to change, add, drop or swap to get from one word to the other. */
const distance = (a: string, b: string): number => {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      }
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] as number;
};

/**
 * Words that are no slips: units and substances that are not in the tables, and whose nearest neighbour
 * there is another thing or another size.
 */
const strangers =
  /^(?:mcg|slugs?|squares?|mills?|rem|gray|mach|daa|barn|tonnage|caps?|points?|calcite|copperas|silicates?|alumina|oils?|phosphoric|(?:per)?manganates?|produce|mgd|kip|cwt|dam|dag|hm|dm|ksi|psf|bbls?|barrels?|bags?|rods?|chains?|links?|drams?|dr|peck|gill|pinch|k?cal|lbf|kgf|degk|degr|us tonne|phosphite|phosphide|phosphine|sul(?:f|ph)ite|sul(?:f|ph)ide|nitrite|nitride|chlorate|chlorite|carbide|silicone|ammoni(?:a|um)|bromide|iodide|[mun]?mol|moles?|kmol|[km]?j|joules?|[km]?w|watts?|hp|btu|lux|kn|newtons?|volts?|amps?|hertz|hz|daltons?)$/;
const prefixes = /^(?:kilo|mega|giga|centi|deci|hecto|deca|milli|micro|nano|[kmcdhunµ])(?=(.+))/;
const bare = (text: string): string => text.replace(/[^a-z\d]/g, "");

/** Whether a word may be a slip of the pen: a known name behind a prefix is another size of it. */
const maySlip = (word: string, vocabulary: ReadonlyMap<string, string>): boolean =>
  !strangers.test(word) && !/-\d/.test(word) && !vocabulary.has(prefixes.exec(word)?.[1] ?? "");

/** What the nearest words stand for; nothing where two that are equally near differ. */
const nearest = (
  text: string,
  vocabulary: ReadonlyMap<string, string>,
  fits: (token: string) => boolean,
): string | undefined => {
  const word = text.toLowerCase();
  if (!maySlip(word, vocabulary)) return undefined;
  const formula = /\d/.test(word);
  const limit = word.length < 3 ? 0 : word.length < 7 ? 1 : 2;
  let least = limit + 1;
  let found = new Set<string>();
  for (const [name, token] of vocabulary) {
    // 1.000 may stand for 1000 and never for 100, and one letter makes m2 of mi2 and NO3 of NH3
    if (
      name.length < 2 ||
      Math.abs(name.length - word.length) > limit ||
      (formula && bare(name) !== bare(word)) ||
      !fits(token)
    )
      continue;
    const steps = distance(word, name);
    if (steps > limit || steps > least) continue;
    if (steps < least) found = new Set();
    least = steps;
    found.add(token);
  }
  return found.size === 1 ? [...found][0] : undefined;
};

/**
 * The unit that a text most likely means, as a unit that `quantity` takes, or `undefined` where none is
 * near or several are. For a message or a button; nothing is converted without the user.
 *
 * @param text - what was typed, such as `lbs`, `sqft` or `lb/M`
 * @param dimension - where given, only a unit of this dimension is suggested
 *
 * @example
 * ```ts
 * import { suggestUnit } from "ratewright";
 * suggestUnit("lbs/sqft"); // => "lb/ft2"
 * suggestUnit("galon"); // => "gal"
 * suggestUnit("oz", "volume"); // => "fl oz"
 * suggestUnit("stone"); // => undefined
 * ```
 */
export const suggestUnit = (text: string, dimension?: Dimension): string | undefined => {
  if (typeof text !== "string" || text.length > longest) return undefined;
  if (dimension !== undefined && typeof dimension !== "string") return undefined;
  const fits = (unit: string): boolean => {
    const measured = unitDimension(unit);
    return measured !== undefined && (dimension === undefined || measured === dimension);
  };
  if (fits(text)) return text;
  const clean = cleanText(text);
  const read = readRest(clean, dimension);
  if (read.unit !== undefined)
    return read.problems.length === 0 && read.divisor === 1 ? read.unit : undefined;
  const told = read.problems[0];
  if (told?.code === "unit/mismatch") return told.suggestion;
  if (told?.code !== "unit/unknown") return undefined;
  const names = unitNames();
  const known = (name: string): string | undefined =>
    readRest(name).unit ?? nearest(name, names, (unit) => unitDimension(unit) !== undefined);
  const parts = clean.replace(/(^| )per /gi, "/").split("/");
  const tokens = parts.map((part, index) =>
    index > 0 && /^[MA]$/.test(part) ? { M: "1000 ft2", A: "acre" }[part] : known(part.trim()),
  );
  if (tokens.some((token) => token === undefined)) return undefined;
  const unit = tokens.join("/");
  if (fits(unit)) return unit;
  return dimension === undefined ? undefined : siblingUnit(unit, dimension);
};

/**
 * The substance that a text most likely means, or `undefined` where none is near or several are.
 *
 * @example
 * ```ts
 * import { suggestSubstance } from "ratewright";
 * suggestSubstance("nitrogen"); // => "N"
 * suggestSubstance("phosphate"); // => "P2O5"
 * suggestSubstance("nitrate"); // => undefined
 * suggestSubstance("phosphorus"); // => "P"
 * suggestSubstance("potasium"); // => "K"
 * ```
 */
export const suggestSubstance = (text: string): string | undefined => {
  if (typeof text !== "string" || text.length > longest) return undefined;
  const clean = cleanText(text);
  if (formsOf(clean) !== undefined) return undefined;
  const read = readSubstance(clean);
  if (read !== undefined) return read;
  // a zero for the letter O
  const small = clean.toLowerCase().replace(/0/g, "o");
  return (
    substances.find((token) => token.toLowerCase() === small) ?? nearest(clean, substanceNames(), () => true)
  );
};
