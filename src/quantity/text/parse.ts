import { fail, RatewrightError } from "../errors/errors.js";
import type { CheckedSubstance, SubstanceHint } from "../substance/substances.js";
import type { Dimension } from "../unit/dimensions.js";
import { unitDimension } from "../unit/unit-facts.js";
import { Quantity } from "../value/quantity.js";
import { cleanText, textLimit } from "./clean-text.js";
import { checkExpectation } from "./expectation.js";
import { type DecimalSign, scanNumber } from "./number-text.js";
import { coinAhead, laterSign, rangeSign, readText } from "./read-text.js";
import type { Measures, ParseOptions } from "./text-reading.js";

const optionNames = ["dimension", "of", "decimal", "measures"] as const;

const checkedOptions = (options: unknown = {}): ParseOptions => {
  // A record of its own: what was checked field by field is what is used.
  const own =
    typeof options === "object" && options !== null && !Array.isArray(options) ? { ...options } : options;
  checkExpectation(own, "options", optionNames);
  return own as ParseOptions;
};

const parsed = (text: unknown, options: ParseOptions): Quantity<string, string> => {
  const { value, unit, of, problems } = readText(text, options, "text");
  if (problems.length > 0) throw new RatewrightError(problems);
  return new Quantity(value as number, unit as string, of as string, unitDimension(unit as string) as string);
};

/**
 * Reads what people type as a quantity: `3 lb/1000 ft2`, `1 1/2 pt/acre`, `0.9 lb N per 1,000 sq ft`,
 * `40 gpa`, `72 °F`.
 *
 * How it reads:
 * - `12,400` is twelve thousand four hundred, as `12 400` and `12'400` are; `1,5` is refused with the choices unless `decimal: ","`.
 * - `1/2`, `½` and `1 1/2` are fractions; `11/2` is refused, for it may be 1 1/2. `1.5-2 pt` is a range,
 *   which {@link parseRange} reads.
 * - `M` is 1000 ft2, and `A` an acre, only as a capital below the slash: `lb/M`, `gal/A`.
 * - Bare `oz` is refused unless `dimension` is given; then it is weight. `fl oz` is always volume.
 * - `ton`, `T`, `gr`, `ppm`, `%` of a substance and the like are refused with the choices.
 * - Measures are US customary unless the text says imperial, or `measures: "imperial"`. `cwt` is refused with the choices
 *   unless `measures` is given; `imp pt` reads as eighths of an `imp gal`, `stone` as 14 lb.
 * - `to the acre`, `an acre`, `for each gallon` are `per`; `kgN/ha` and `lb-N` are a weight of N. Two sides, `50 x 100 ft`, are
 *   refused with their area.
 * - `lb/1000`, `lb/K`, `per thousand` are per 1000 ft2 only where `dimension` says so; else refused with the choices.
 * - A substance follows the unit above the slash, or stands at the end after `of`. Nothing else says it:
 *   where the text names none it is `options.of`, or `none`. `2 fl oz per 100 lb of seed` is refused, for the
 *   seed may be what is dosed or what it is dosed on.
 * - `nitrate` and `sulfate` alone are refused with the choices, `NO3-N` or `NO3` and `S` or `SO4`, unless `of` is the ion:
 *   reports print both. `nitrate-N`, `sulfate as S` and the symbols are plain. `phosphate` is P2O5, but refused in mg and ppm.
 * - `$`, `€`, `£` and the better known currency codes stand before or behind an amount; another code is known
 *   where `dimension` names it.
 *
 * @throws RatewrightError `text`, `unit/unknown`, `unit/ambiguous`, `unit/mismatch`, `substance/unknown`,
 * `substance/ambiguous`, `substance/mismatch`, `conflict`, `missing`, `not-finite`, `type`; with all that is wrong in `problems`
 *
 * @example
 * ```ts
 * import { parseQuantity } from "ratewright";
 * parseQuantity("3 lb of N per 1,000 sq ft").toJSON(); // => { value: 3, unit: "lb/1000 ft2", of: "N" }
 * parseQuantity("1½ fl. oz./M", { dimension: "volume/area", of: "product" }).in("fl oz/1000 ft2"); // => 1.5
 * parseQuantity("12,400 ft²", { dimension: "area" }).value; // => 12400
 * parseQuantity("40 gpa").unit; // => "gal/acre"
 * ```
 */
export function parseQuantity<const D extends Dimension, const S extends SubstanceHint>(
  text: string,
  options: {
    readonly dimension: D;
    readonly of: CheckedSubstance<S>;
    readonly decimal?: DecimalSign;
    readonly measures?: Measures;
  },
): Quantity<D, S>;
export function parseQuantity<const D extends Dimension>(
  text: string,
  options: {
    readonly dimension: D;
    readonly of?: undefined;
    readonly decimal?: DecimalSign;
    readonly measures?: Measures;
  },
): Quantity<D, string>;
export function parseQuantity<const S extends SubstanceHint>(
  text: string,
  options: {
    readonly dimension?: undefined;
    readonly of: CheckedSubstance<S>;
    readonly decimal?: DecimalSign;
    readonly measures?: Measures;
  },
): Quantity<string, S>;
export function parseQuantity(
  text: string,
  options?: {
    readonly dimension?: undefined;
    readonly of?: undefined;
    readonly decimal?: DecimalSign;
    readonly measures?: Measures;
  },
): Quantity<string, string>;
export function parseQuantity(text: unknown, options?: unknown): unknown {
  return parsed(text, checkedOptions(options));
}

/** Two ends of a range, of one dimension and one substance; equal where the text gave one amount. */
export interface QuantityRange<D extends string, S extends string> {
  readonly min: Quantity<D, S>;
  readonly max: Quantity<D, S>;
}

/**
 * Reads a range as labels print it: `1.5-2 pt/acre`, `1 to 1 1/2 lb`, `1 pt to 1 qt per acre`, `€3-€5/kg`. One amount is a
 * range from itself to itself; `up to 2 pt` is refused with `0-2 pt`. Each end is read as {@link parseQuantity} reads it.
 *
 * @param options - `dimension`, `of`, `decimal` and `measures`, as in {@link parseQuantity}
 * @throws RatewrightError as parseQuantity does, and `range` where the first end is more than the second; `text`
 *
 * @example
 * ```ts
 * import { parseRange } from "ratewright";
 * const range = parseRange("1.5-2 pt/acre", { dimension: "volume/area", of: "product" });
 * range.min.in("pt/acre"); // => 1.5
 * range.max.in("fl oz/acre"); // => 32
 * ```
 */
export function parseRange<const D extends Dimension, const S extends SubstanceHint>(
  text: string,
  options: {
    readonly dimension: D;
    readonly of: CheckedSubstance<S>;
    readonly decimal?: DecimalSign;
    readonly measures?: Measures;
  },
): QuantityRange<D, S>;
export function parseRange<const D extends Dimension>(
  text: string,
  options: {
    readonly dimension: D;
    readonly of?: undefined;
    readonly decimal?: DecimalSign;
    readonly measures?: Measures;
  },
): QuantityRange<D, string>;
export function parseRange(
  text: string,
  options?: {
    readonly dimension?: undefined;
    readonly of?: undefined;
    readonly decimal?: DecimalSign;
    readonly measures?: Measures;
  },
): QuantityRange<string, string>;
export function parseRange(text: unknown, options?: unknown): unknown {
  const checked = checkedOptions(options);
  if (typeof text !== "string" || text.length > textLimit) return parsed(text, checked);
  const clean = cleanText(text);
  const [from, to] = ends(spoken(clean) ?? clean, checked.decimal ?? ".");
  if (to === undefined) refuseOneEnd(text, clean, checked);
  const min = parsed(from, checked);
  const max = to === undefined ? min : parsed(to, checked);
  if (min.dimension !== max.dimension) fail("unit/mismatch", "text", text, "two amounts of one dimension");
  if (min.of !== max.of) fail("conflict", "text", text, "two amounts of one substance");
  if (min.compare(max) > 0) fail("range", "text", text, "the smaller amount first");
  return { min, max };
}

/** `from 1 to 2 pt` and `between 1 and 2 pt` as they are written without words. */
const spoken = (text: string): string | undefined =>
  /^from (?=[\d.])(.+)/i.exec(text)?.[1] ??
  /^between (.+? and .+)/i.exec(text)?.[1]?.replace(" and ", " to ");

/** `up to 2 pt`, `at least 2 pt`: read as `2-2 pt` it would say of 1 pt that it is under the label. */
const oneEnd =
  /^(?:(up to|max(?:imum)?\b|at most|no(?:t| more) (?:more than|to exceed|than)|<=?|≤)|min(?:imum)?\b|at least|no less than|not less than|>=?|≥)[.:]? ?(?=\D?\d)/i;

const refuseOneEnd = (text: string, clean: string, options: ParseOptions): void => {
  const found = oneEnd.exec(clean);
  if (found === null) return;
  const whole = `0-${clean.slice(found[0].length)}`;
  const reads =
    found[1] !== undefined && ends(whole, options.decimal ?? ".").every((end) => !refused(end, options));
  fail("text", "text", text, "a range with both of its ends", reads ? { suggestion: whole } : {});
};

const refused = (text = "", options: ParseOptions): boolean =>
  readText(text, options, "text").problems.length > 0;

/** The two amounts in a text, the first with the unit of the second where it has none of its own. */
const ends = (text: string, decimal: DecimalSign): readonly [string, string?] => {
  // $3-5/lb and $3-$5/lb: the sign is said of both
  const coin = coinAhead.exec(text)?.[0];
  if (coin !== undefined) {
    const [from, to] = ends(text.slice(coin.length).replace(coin, ""), decimal);
    return to === undefined ? [text] : [coin + from, coin + to];
  }
  const first = scanNumber(text, decimal);
  if (first === undefined) return [text];
  const rest = text.slice(first.end);
  const sign = rangeSign.exec(rest);
  if (sign !== null) {
    const second = rest.slice(sign[0].length);
    const end = scanNumber(second, decimal)?.end;
    return [text.slice(0, first.end) + second.slice(end), second];
  }
  const later = laterSign.exec(rest);
  if (later === null) return [text];
  const [from, to] = [rest.slice(0, later.index), rest.slice(later.index + later[0].length)];
  // "1 pt to 1 qt per acre" has both per acre
  const below = /\/|\bper\b/;
  const unit = to.slice(scanNumber(to, decimal)?.end);
  const said = below.test(from) ? -1 : unit.search(below);
  return [text.slice(0, first.end) + from + (said < 0 ? "" : ` ${unit.slice(said)}`), to];
};
