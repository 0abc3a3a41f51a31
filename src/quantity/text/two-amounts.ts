import { unitDimension } from "../unit/unit-facts.js";
import { ratioOf } from "../unit/units.js";
import { readRest } from "./unit-reading.js";

/**
 * What `5 ft 6 in`, `5' 6"` or `2 lb 3 oz` is in its first unit, as text, from the first number and what follows it;
 * `undefined` where the text is not two amounts of one dimension.
 */
export const twoAmounts = (value: number, rest: string): string | undefined => {
  const [, one = "", digits = "", two = ""] =
    /^([a-z][a-z .]{0,20}?|') ?(\d{1,6}(?:\.\d{1,6})?) ?([a-z][a-z0-9 .]{0,20}|")$/i.exec(rest) ?? [];
  // "fl oz per 100 gal" is a rate
  if (digits === "" || / (?:per|to|in|on|for|an?|each|every|of)$/i.test(one)) return undefined;
  // "40 ft by 60 ft" are two sides, not a sum
  const first = readRest(one.replace(/ and$/i, ""));
  if (first.problems.length > 0) return undefined;
  const dimension = first.unit === undefined ? undefined : unitDimension(first.unit);
  if (first.unit === undefined || dimension === undefined || dimension === "temperature") return undefined;
  // beside pounds an ounce is one of weight
  const second = readRest(two, dimension);
  if (second.unit === undefined || unitDimension(second.unit) !== dimension) return undefined;
  const { top, bottom } = ratioOf(second.unit, first.unit, "text");
  const more = (Number(digits) * top) / bottom / second.divisor;
  const sum = value / first.divisor + Math.sign(value || 1) * more;
  const of = second.of ?? first.of;
  return `${Number(sum.toPrecision(12))} ${first.unit}${of === undefined ? "" : ` of ${of}`}`;
};
