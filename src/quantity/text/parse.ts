import { fail, type Problem, RatewrightError, shown } from "../errors/errors.js";
import { type CheckedSubstance, isSubstance, type SubstanceHint } from "../substance/substances.js";
import type { Dimension } from "../unit/dimensions.js";
import { exampleUnit } from "../unit/near-units.js";
import { unitDimension } from "../unit/unit-facts.js";
import { expectDimension } from "../unit/units-of.js";
import { Quantity } from "../value/quantity.js";
import { currencies } from "./aliases.js";
import { cleanText, textLimit } from "./clean-text.js";
import { type KeptReadings, keptReadings } from "./kept-readings.js";
import { type DecimalSign, scanNumber } from "./number-text.js";
import { suggestSubstance, suggestUnit } from "./suggest.js";
import { twoAmounts } from "./two-amounts.js";
import { readRest } from "./unit-reading.js";

/** What a text is expected to say. */
export interface ParseOptions {
  /** The dimension that is wanted. It also settles `oz` (weight) and `°F` (a temperature or a difference). */
  readonly dimension?: Dimension;
  /** The substance that is wanted; taken where the text names none. */
  readonly of?: string;
  /** The sign before the decimals; the other one groups thousands. `"."` where left out. */
  readonly decimal?: DecimalSign;
}

/** What was read of a text, and all that was wrong with it. */
export interface TextReading {
  readonly value?: number;
  readonly unit?: string;
  readonly of?: string;
  readonly problems: readonly Problem[];
}

const dollars = ["USD", "CAD", "AUD", "NZD", "MXN", "SGD", "HKD"];
const signs: Readonly<Record<string, readonly string[]>> = {
  $: dollars,
  US$: ["USD"],
  CA$: ["CAD"],
  A$: ["AUD"],
  NZ$: ["NZD"],
  MX$: ["MXN"],
  "€": ["EUR"],
  "£": ["GBP"],
  "¥": ["JPY", "CNY"],
};

const rangeSign = /^ ?(?:-|to |through |\.\.+ ?|… ?|\+-|±)/i;
const laterNumber = /(?: - ?| to | through |…)[+-]?[\d.]/i;

/** Takes a text apart; never throws. */
export const readText = (input: unknown, options: ParseOptions, path: string): TextReading => {
  const stop = (problem: Omit<Problem, "path">): TextReading => ({ problems: [{ ...problem, path }] });
  if (typeof input !== "string") {
    return stop({
      code: "type",
      got: input === null ? "null" : typeof input,
      expected: "a text, such as 3 lb/1000 ft2",
    });
  }
  if (input.length > textLimit) {
    return stop({
      code: "text",
      got: `${input.length} characters`,
      expected: `at most ${textLimit} characters`,
    });
  }
  const end = options.decimal === "," ? 0 : plainEnd(input);
  const quick = end === 0 ? undefined : readPlain(input, end, options);
  if (quick !== undefined) return quick;
  const reading = readFully(input, options, path);
  if (end > 0) keepPlain(restFrom(input, end), options, reading);
  return reading;
};

/** `12,400.5 ` before a unit. */
const grouped = /^[+-]?[1-9]\d{0,2}(?:,\d{3}){1,4}(?:\.\d{0,9})?/;

/**
 * Where a number in plain digits ends, if a letter, `%`, `°` or `#` follows it, perhaps behind a space: what stands there
 * is read alike for every number. 0 where the text has another form.
 */
const plainEnd = (text: string): number => {
  let at = text[0] === "-" || text[0] === "+" ? 1 : 0;
  let digits = 0;
  let dots = 0;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) digits += 1;
    else if (code === 46 && dots === 0) dots = 1;
    else if (code === 44 && dots === 0) {
      at = grouped.exec(text)?.[0].length ?? 0;
      digits = at;
      break;
    } else break;
  }
  if (digits === 0 || digits > 20) return 0;
  const code = text.charCodeAt(text[at] === " " ? at + 1 : at);
  // not 1e5, which is a number
  const letter = ((code >= 65 && code <= 90) || (code >= 97 && code <= 122)) && code !== 69 && code !== 101;
  return letter || code === 35 || code === 37 || code === 176 ? at : 0;
};

interface PlainReading {
  readonly unit: string;
  readonly of: string;
  readonly divisor: number;
}
const kept: KeptReadings<PlainReading> = /* @__PURE__ */ keptReadings();

const restFrom = (input: string, end: number): string => input.slice(input[end] === " " ? end + 1 : end);

/** The plain form, `3 lb/1000 ft2`, where the same was read before behind another number. */
const readPlain = (input: string, end: number, { dimension, of }: ParseOptions): TextReading | undefined => {
  const seen = kept.get(restFrom(input, end), dimension, of);
  if (seen === undefined) return undefined;
  const digits = input.slice(0, end);
  const value = Number(digits.includes(",") ? digits.replace(/,/g, "") : digits);
  return { value: value / seen.divisor, unit: seen.unit, of: seen.of, problems: [] };
};

const keepPlain = (rest: string, { dimension, of }: ParseOptions, reading: FullReading): void => {
  if (reading.problems.length > 0 || reading.unit === undefined || reading.of === undefined) return;
  kept.keep(rest, dimension, of, { unit: reading.unit, of: reading.of, divisor: reading.divisor ?? 1 });
};

/** What was read, with what the number was divided by. */
interface FullReading extends TextReading {
  readonly divisor?: number;
}

const readFully = (input: string, options: ParseOptions, path: string): FullReading => {
  const stop = (problem: Omit<Problem, "path">): TextReading => ({ problems: [{ ...problem, path }] });
  const text = cleanText(input);
  const dimension = options.dimension;
  const example = (): string => `3 ${exampleUnit(dimension ?? "mass/area")}`;
  const problems: Problem[] = [];
  const prefix = /^[\d.]/.test(text)
    ? null
    : /^([+-]?) ?((?:US|CA|A|NZ|MX)?\$|[€£¥]|[A-Z]{3} ?(?=[\d.]))? ?/.exec(text);
  const wantedCode = /^money:([A-Z]{3})/.exec(dimension ?? "")?.[1];
  const sign = prefix?.[2]?.trim();
  // LBS 5 has the form of a currency and an amount
  const coined =
    sign === undefined || Object.hasOwn(signs, sign) || currencies.test(sign) || sign === wantedCode;
  const symbol = coined ? sign : undefined;
  const body = symbol === undefined ? text : `${prefix?.[1] ?? ""}${text.slice(prefix?.[0].length ?? 0)}`;
  // $28/50 lb is a price for 50 lb and no fraction of a dollar
  const amount = symbol === undefined ? body : (/^[+-]?[\d.,]+(?=\/)/.exec(body)?.[0] ?? body);
  const number = scanNumber(amount, 0, options.decimal ?? ".");
  if (number === undefined) {
    return stop({ code: "text", got: shown(input), expected: `a number and a unit, such as ${example()}` });
  }
  if (number.problem !== undefined) problems.push({ ...number.problem, path });
  let rest = body.slice(number.end);
  if (
    number.problem === undefined &&
    ((rangeSign.test(rest) && /^\D{1,10}\d/.test(rest)) || laterNumber.test(rest))
  ) {
    return stop({ code: "text", got: shown(input), expected: "one amount; parseRange reads a range" });
  }
  rest = rest.trim();
  const digits = /\d/.test(rest);
  if (digits && /^x ?1?[\d,]+/.test(rest)) rest = rest.slice(1).trim();
  if (/^k(?: |$)/i.test(rest) && !/^K$/.test(rest) && number.problem === undefined) {
    const full = `${Number((number.value * 1000).toPrecision(15))} ${rest.slice(1).trim()}`.trim();
    return stop({ code: "text", got: shown(input), expected: "the number in full", suggestion: full });
  }
  const together = digits && number.problem === undefined ? twoAmounts(number.value, rest) : undefined;
  if (together !== undefined) {
    const expected = "one number and one unit";
    return stop({ code: "text", got: shown(input), expected, suggestion: together });
  }
  if (symbol !== undefined) {
    const codes = signs[symbol] ?? [symbol];
    const code = codes.length === 1 ? codes[0] : codes.find((one) => one === wantedCode);
    if (code === undefined) {
      return stop({ code: "unit/ambiguous", got: shown(input), expected: "a currency", choices: codes });
    }
    rest = `money:${code}${rest === "" || rest.startsWith("/") ? "" : " "}${rest}`;
  }
  if (rest === "" && (dimension === "1" || dimension === "count")) rest = dimension;
  if (rest === "") {
    const expected = `a unit after the number, such as ${example()}`;
    return {
      value: number.value,
      problems: [...problems, { code: "missing", path, got: shown(input), expected }],
    };
  }
  const read = readRest(rest, dimension, options.of);
  for (const { raw, ...problem } of read.problems) {
    const near =
      raw === undefined
        ? undefined
        : problem.code === "substance/unknown"
          ? suggestSubstance(raw)
          : suggestUnit(raw, dimension);
    problems.push({ ...problem, path, ...(near !== undefined && { suggestion: near }) });
  }
  const of = settled(read.of, options.of);
  if (of === undefined) {
    problems.push({
      code: "substance/mismatch",
      path,
      got: shown(read.of),
      expected: `a quantity of ${options.of}`,
    });
  }
  return {
    value: number.value / read.divisor,
    divisor: read.divisor,
    ...(read.unit !== undefined && { unit: read.unit }),
    ...(of !== undefined && { of }),
    problems,
  };
};

/** The substance that text and caller agree on; a caller's `product:feed-a` may be written as `product`. */
const settled = (said: string | undefined, wanted: string | undefined): string | undefined => {
  if (said === undefined) return wanted ?? "none";
  if (wanted === undefined || said === wanted || cleanText(wanted) === said) return wanted ?? said;
  return /^(?:product|ai|ae)$/.test(said) && wanted.startsWith(`${said}:`) ? wanted : undefined;
};

const checkedOptions = (options: unknown): ParseOptions => {
  if (options === undefined) return {};
  if (typeof options !== "object" || options === null) {
    return fail("type", "options", typeof options, "a record of options");
  }
  const { dimension, of, decimal } = options as { dimension?: unknown; of?: unknown; decimal?: unknown };
  if (dimension !== undefined) expectDimension(dimension, "options.dimension");
  if (of !== undefined && (typeof of !== "string" || (of !== "none" && !isSubstance(of)))) {
    fail("substance/unknown", "options.of", of, "a substance, such as N or product");
  }
  if (decimal !== undefined && decimal !== "." && decimal !== ",") {
    fail("type", "options.decimal", decimal, '"." or ","');
  }
  return options as ParseOptions;
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
 * - Measures are US customary unless the text says imperial.
 * - A substance follows the unit above the slash, or stands at the end after `of`. Nothing else says it:
 *   where the text names none it is `options.of`, or `none`. `2 fl oz per 100 lb of seed` is refused, for the
 *   seed may be what is dosed or what it is dosed on.
 * - `$`, `€`, `£` and the better known currency codes stand before or behind an amount; another code is known
 *   where `dimension` names it.
 *
 * @throws RatewrightError `text`, `unit/unknown`, `unit/ambiguous`, `unit/mismatch`, `substance/unknown`,
 * `substance/mismatch`, `conflict`, `missing`, `not-finite`, `type`; with all that is wrong in `problems`
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
  options: { readonly dimension: D; readonly of: CheckedSubstance<S>; readonly decimal?: DecimalSign },
): Quantity<D, S>;
export function parseQuantity<const D extends Dimension>(
  text: string,
  options: { readonly dimension: D; readonly of?: undefined; readonly decimal?: DecimalSign },
): Quantity<D, string>;
export function parseQuantity<const S extends SubstanceHint>(
  text: string,
  options: {
    readonly dimension?: undefined;
    readonly of: CheckedSubstance<S>;
    readonly decimal?: DecimalSign;
  },
): Quantity<string, S>;
export function parseQuantity(
  text: string,
  options?: { readonly dimension?: undefined; readonly of?: undefined; readonly decimal?: DecimalSign },
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
 * Reads a range as labels print it: `1.5-2 pt/acre`, `1 to 1 1/2 lb`, `16 fl oz - 1 qt`. One amount is a
 * range from itself to itself. Each end is read as {@link parseQuantity} reads it.
 *
 * @throws RatewrightError as parseQuantity does, and `range` where the first end is more than the second
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
  options: { readonly dimension: D; readonly of: CheckedSubstance<S>; readonly decimal?: DecimalSign },
): QuantityRange<D, S>;
export function parseRange<const D extends Dimension>(
  text: string,
  options: { readonly dimension: D; readonly of?: undefined; readonly decimal?: DecimalSign },
): QuantityRange<D, string>;
export function parseRange(
  text: string,
  options?: { readonly dimension?: undefined; readonly of?: undefined; readonly decimal?: DecimalSign },
): QuantityRange<string, string>;
export function parseRange(text: unknown, options?: unknown): unknown {
  const checked = checkedOptions(options);
  if (typeof text !== "string" || text.length > textLimit) return parsed(text, checked);
  const [from, to] = ends(cleanText(text), checked.decimal ?? ".");
  const min = parsed(from, checked);
  const max = to === undefined ? min : parsed(to, checked);
  if (min.dimension !== max.dimension) fail("unit/mismatch", "text", text, "two amounts of one dimension");
  if (min.of !== max.of) fail("conflict", "text", text, "two amounts of one substance");
  if (min.compare(max) > 0) fail("range", "text", text, "the smaller amount first");
  return { min, max };
}

/** The two amounts in a text, the first with the unit of the second where it has none of its own. */
const ends = (text: string, decimal: DecimalSign): readonly [string, string?] => {
  const first = scanNumber(text, 0, decimal);
  if (first === undefined || first.problem !== undefined) return [text];
  const rest = text.slice(first.end);
  const sign = /^ ?(?:-|to |through |\.\.+|…) ?(?=[+-]?[\d.,])/i.exec(rest);
  if (sign !== null) {
    const second = rest.slice(sign[0].length);
    const end = scanNumber(second, 0, decimal)?.end ?? 0;
    return [`${text.slice(0, first.end)} ${second.slice(end).trim()}`, second];
  }
  const later = /(?: - ?| to | through |…)(?=[+-]?[\d.])/i.exec(rest);
  if (later === null) return [text];
  return [text.slice(0, first.end + later.index), rest.slice(later.index + later[0].length)];
};
