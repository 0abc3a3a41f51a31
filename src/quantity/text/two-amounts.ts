import { unitDimension } from "../unit/unit-facts.js";
import { converted } from "../value/converted.js";
import { type ScannedNumber, scanNumber } from "./number-text.js";
import { readRest } from "./unit-reading.js";

/** `ft 6 in`, `lb and 8 oz N`, `'-6 1/2 "`, with what stands below a slash. */
const pair =
  /^([a-z][a-z .]{0,20}?|[#'])(?:,? and|,| ?\+|-)? ?((?:\d{1,6} )?\d{1,3}\/\d{1,2}|\d{1,6}(?:\.\d{1,6})?) ?([a-z][a-z0-9 .]{0,20}?|")((?:\/| per ).+)?$/i;

/** A number behind a unit, with the next smaller one left out: `ft 6`, `lb 8`, `h 30`. */
const bare: Readonly<Record<string, readonly [form: RegExp, unit: string, most: number]>> = {
  length: [/^(?:'|(?:ft|foot|feet)\.?) ?(\d{1,2}(?:\.\d{1,3})?)$/i, '"', 100],
  mass: [/^(?:#|(?:lbs?|pounds?)\.?) ?(\d{1,2})$/i, " oz", 16],
  time: [/^h(?:(?:ou)?rs?)?\.? ?(\d{1,2})$/i, " min", 60],
};

/**
 * What `5 ft 6 in`, `5' 6"` or `2 lb 3 oz` is in its first unit, as text, from the first number and what follows it;
 * `undefined` where the text is not two amounts of one dimension.
 */
export const twoAmounts = (value: number, rest: string, wanted?: string): string | undefined => {
  // 5' 6 has inches behind its feet in any field
  const [form, smaller, most] = bare[rest[0] === "'" ? "length" : `${wanted}`] ?? [/$^/, "", 0];
  const found = pair.exec(Number(form.exec(rest)?.[1]) < most ? rest + smaller : rest);
  if (found === null) return undefined;
  const [one, digits, two, below = ""] = found.slice(1) as [string, string, string, string?];
  // "40 ft by 60 ft" are two sides, "fl oz per 100 gal" is a rate
  const first = readRest(one === "#" ? "lb" : one);
  if (first.unit === undefined || first.problems.length > 0) return undefined;
  const dimension = unitDimension(first.unit);
  // 1'30" in the field of a time is no foot and a half
  if (dimension === "temperature" || (below === "" && (wanted ?? dimension) !== dimension)) return undefined;
  // beside pounds an ounce is one of weight
  const second = readRest(two, dimension);
  // 2l0 l is a slip for 20 l, and no 2 l and nothing
  if (second.unit === undefined || (second.unit === first.unit && second.divisor === first.divisor))
    return undefined;
  const { value: number, problem } = scanNumber(digits, ".") as ScannedNumber;
  if (problem !== undefined) return undefined;
  const more = converted(number, second.unit, first.unit) / second.divisor;
  const sum = value / first.divisor + Math.sign(value || 1) * more;
  const of = second.of ?? first.of;
  return `${Number(sum.toPrecision(12))} ${first.unit}${of === undefined ? "" : ` of ${of}`}${below}`;
};

/** `x 100 ft`, `ft x 100 ft`, `' by 100'`: the second side; one of the two has the unit. */
const sides = /^(?:([a-z]{1,8}|')\.? ?)?(?:x|by|\*) ?(\d{1,6}(?:\.\d{1,6})?)(?: ?([a-z]{1,8}|')\.?)?$/i;

/** The area of two sides, `50 x 100 ft`, as text; `undefined` where the text is not two lengths in one unit. */
export const twoSides = (value: number, rest: string): string | undefined => {
  const [, one, digits, two = one ?? ""] = sides.exec(rest) ?? [];
  const unit = digits === undefined ? undefined : readRest(two, "length").unit;
  const same = one === undefined || readRest(one, "length").unit === unit;
  return unit !== undefined && same && /^(?:ft|yd|m)$/.test(unit)
    ? `${Number((value * Number(digits)).toPrecision(12))} ${unit}2`
    : undefined;
};
