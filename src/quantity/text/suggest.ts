import { readSubstance, substanceNames } from "../substance/substance-names.js";
import { substanceTokens } from "../substance/substances.js";
import type { Dimension } from "../unit/dimensions.js";
import { siblingUnit } from "../unit/near-units.js";
import { unitDimension } from "../unit/unit-facts.js";
import { cleanText } from "./clean-text.js";
import { formsOf } from "./two-forms.js";
import { unitNames } from "./unit-names-written.js";
import { readRest } from "./unit-reading.js";
import { readSegment, segmentsOf } from "./unit-segment.js";

/** Longer than any unit and any substance name. */
const longest = 60;

/** Letters to change, add, drop or swap with the next to get from one word to the other; `Infinity` for more than `most`. */
const distance = (a: string, b: string, most: number): number => {
  if (a === b) return 0;
  if (most === 0) return Number.POSITIVE_INFINITY;
  const [restA, restB] = [a.slice(1), b.slice(1)];
  if (a[0] === b[0]) return distance(restA, restB, most);
  const less = most - 1;
  const ways = [distance(restA, restB, less), distance(restA, b, less), distance(a, restB, less)];
  if (a[0] === b[1] && a[1] === b[0]) ways.push(distance(a.slice(2), b.slice(2), less));
  return 1 + Math.min(...ways);
};

/**
 * Words that are no slips: units and substances that are not in the tables, and whose nearest neighbor
 * there is another thing or another size.
 */
const strangers =
  /^(?:mcg|mcl|mol|moles?|mills?|mils|mist|mho|mgd|manganate|manures|rem|rods?|rai|rps|gray|daa|dam|dabs?|degk|degr|barn|bags?|bushes|btu|tonnage|tubs|tabs|caps?|cal|can|clo|calcite|copperas|cadmium|caesium|carbamate|chlor(?:ate|ites?)|points?|pass|pod|pood|psia|psf|pinches|pitches|produce|poundal|potassa|phosphoric|phosph(?:i[td]e|ine|onate)s?|ksi|lots?|lbf|liners?|quarters?|us tonnes?|sulfonate|sul(?:f|ph)uric|sul(?:f|ph)i[td]es?|silicate|silicone|soluble|sprayer|alumina|ammonium|nitri[td]es?|hay|ip[a-z])$/;
const prefixes = /^(?:kilo|mega|giga|centi|deci|hecto|deca|milli|micro|nano|[kmcdhunµ])/;
const bare = (text: string): string => text.replace(/[^a-z\d]/g, "");

/** Whether a word may be a slip of the pen: a known name behind a prefix is another size of it. */
const maySlip = (word: string, vocabulary: ReadonlyMap<string, string>): boolean =>
  !strangers.test(word) && !/-\d/.test(word) && !vocabulary.has(word.replace(prefixes, ""));

/** What the nearest words stand for; nothing where two that are equally near differ. */
const nearest = (text: string, vocabulary: ReadonlyMap<string, string>): string | undefined => {
  const word = text.toLowerCase();
  if (!maySlip(word, vocabulary)) return undefined;
  const formula = /\d/.test(word);
  let least = word.length < 3 ? 0 : word.length < 7 ? 1 : 2;
  let found = new Set<string>();
  for (const [name, token] of vocabulary) {
    // 1.000 may stand for 1000 and never for 100, and one letter makes m2 of mi2 and NO3 of NH3; the first letter makes another
    // word: mound, zone
    if (name[0] !== word[0] || (formula && bare(name) !== bare(word))) continue;
    const steps = distance(word, name, least);
    if (steps > least) continue;
    if (steps < least) found = new Set();
    least = steps;
    found.add(token);
  }
  return found.size === 1 ? [...found][0] : undefined;
};

/** The unit that one side of a slash most likely means; none where its name is known and may mean several, or many of one. */
const unitNear = (part: string, top: string | undefined): string | undefined => {
  const { reads, choices, sure, divisor, unknownOf } = readSegment(part, top);
  if (reads.length + choices.length === 0) return nearest(part, unitNames());
  return divisor === 1 && unknownOf === undefined ? sure : undefined;
};

/**
 * The unit that a text most likely means, as a unit that `quantity` takes, or `undefined` where none is
 * near or several are. The first letter must be right: another one makes another word. For a message or a button;
 * nothing is converted without the user.
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
  const units: string[] = [];
  for (const part of segmentsOf(clean)) {
    const near = unitNear(part, units[0]);
    if (near === undefined) return undefined;
    units.push(near);
  }
  const unit = units.join("/");
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
  return substanceTokens.find((token) => token.toLowerCase() === small) ?? nearest(clean, substanceNames());
};
