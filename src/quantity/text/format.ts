import { fail } from "../errors/errors.js";
import { expectFields } from "../errors/expect-fields.js";
import { isOfStuff, splitUnit } from "../unit/unit-facts.js";
import { unitName, unitSymbol } from "../unit/unit-names.js";
import type { CheckedUnitOf, Unit, UnitHint } from "../unit/unit-text.js";
import { converted } from "../value/converted.js";
import { operand, type Quantity } from "../value/quantity.js";

/** How a quantity is written. */
export interface FormatOptions {
  /** A BCP 47 language tag for the digits, such as `"de"`; `"en-US"` where left out. Words stay English. */
  readonly locale?: string;
  /** Decimals at most. Rounding is for display only. */
  readonly maximumFractionDigits?: number;
  /** Significant digits at most; wins over `maximumFractionDigits`. */
  readonly significantDigits?: number;
  /** `"symbol"` (`lb/1,000 ft²`, where left out), `"name"` (`pounds per 1,000 square feet`) or `"unit"` (`lb/1000 ft2`). */
  readonly unitDisplay?: "symbol" | "name" | "unit";
  /** Whether the substance is written; it is where left out. */
  readonly substance?: boolean;
}

const optionNames = [
  "unit",
  "locale",
  "maximumFractionDigits",
  "significantDigits",
  "unitDisplay",
  "substance",
] as const;

type Style = "symbol" | "name" | "unit";

/** Three decimals, or four digits for what is smaller than 1: enough to read, and 0.0004 does not read 0. */
const digitsFor = (value: number, options: FormatOptions): Intl.NumberFormatOptions => {
  if (options.significantDigits !== undefined) return { maximumSignificantDigits: options.significantDigits };
  if (options.maximumFractionDigits !== undefined) {
    return { minimumFractionDigits: 0, maximumFractionDigits: options.maximumFractionDigits };
  }
  // the three decimals of Intl itself
  return Math.abs(value) < 1 ? { maximumSignificantDigits: 4 } : {};
};

/** A price per unit keeps three digits that say something: $0.0034/ft² is not $0.00. */
const priceDigits = (value: number, currency: string, locale: string): Intl.NumberFormatOptions => {
  const { maximumFractionDigits: usual = 2 } = intlFor(locale, {
    style: "currency",
    currency,
  }).resolvedOptions();
  const needed = 2 - Math.floor(Math.log10(Math.abs(value)));
  return { minimumFractionDigits: usual, maximumFractionDigits: Math.min(Math.max(usual, needed), 20) };
};

/** So many number formats are kept: one costs a hundred times what it costs to use. */
const most = 100;
const kept = /* @__PURE__ */ new Map<string, Intl.NumberFormat>();

/** The same for the same options, whoever asks: a language and digits say all of it. */
const intlFor = (locale: string, options: Intl.NumberFormatOptions): Intl.NumberFormat => {
  const { currency, minimumFractionDigits: least, maximumFractionDigits, maximumSignificantDigits } = options;
  try {
    const key = `${locale} ${currency} ${least} ${maximumFractionDigits} ${maximumSignificantDigits}`;
    const known = kept.get(key);
    if (known !== undefined) return known;
    const made = new Intl.NumberFormat(locale, options);
    if (kept.size >= most) kept.clear();
    kept.set(key, made);
    return made;
  } catch (error) {
    return fail("range", "options", String(error), "a language tag and a number of digits that Intl knows");
  }
};

/** Up to six digits: `123456` as `123,456`. */
const grouped = (digits: string): string =>
  digits.length > 3 ? `${digits.slice(0, -3)},${digits.slice(-3)}` : digits;

/**
 * The digits of an everyday number as `Intl` writes them for `en-US`, without its cost: three decimals, or four digits
 * below 1. `undefined` where that takes more care: very large or small, or next to a half of the last place, which
 * `Intl` rounds by the decimal digits of the number and not by the number itself.
 */
export const everydayText = (value: number): string | undefined => {
  const size = Math.abs(value);
  if (!(size >= 0.001 && size < 999_999)) return undefined;
  const scale = size >= 1 ? 1e3 : size >= 0.1 ? 1e4 : size >= 0.01 ? 1e5 : 1e6;
  const scaled = size * scale;
  const whole = Math.round(scaled);
  if (Math.abs(Math.abs(scaled - whole) - 0.5) < 1e-5) return undefined;
  const text = String(whole / scale);
  const point = text.indexOf(".");
  const [top, rest] = point === -1 ? [text, ""] : [text.slice(0, point), text.slice(point)];
  return `${value < 0 ? "-" : ""}${grouped(top)}${rest}`;
};

const numberText = (value: number, locale: string, options: Intl.NumberFormatOptions): string => {
  const format = intlFor(locale, options);
  const text = format.format(value);
  // a remainder of -0.0001 that rounds to nothing is written 0, not -0
  return value < 0 && text === format.format(-0) ? format.format(0) : text;
};

const written = (unit: string, style: Style, one: boolean, locale: string): string => {
  if (style === "unit") return unit;
  const text = style === "name" ? unitName(unit, one ? 1 : 2) : unitSymbol(unit);
  return text.replace("1,000", () => numberText(1000, locale, {}));
};

/** Unit and substance together: `lb N/1,000 ft²`, `pounds of N per acre`, `lb/acre of product:feed-a`. */
const withSubstance = (unit: string, of: string, style: Style, one: boolean, locale: string): string => {
  const say = (part: string, single: boolean): string => written(part, style, single, locale);
  const [stuff, below] = of.split("/") as [string, string?];
  const sides = splitUnit(unit);
  const link = style === "name" ? " of " : " ";
  if (of === "none") return say(unit, one);
  // "pounds per gallon of X" could be said of the gallon
  const inside = style === "name" && sides !== undefined && sides.top !== "1" && !/ per /i.test(of);
  if (stuff.includes(":") && !inside) return `${say(unit, one)} of ${of}`;
  if (sides === undefined) return `${say(unit, one)}${below === undefined ? link : " of "}${of}`;
  const per = style === "name" ? " per " : "/";
  const bottom = say(sides.bottom, true);
  if (below === undefined) return `${say(sides.top, one)}${link}${of}${per}${bottom}`;
  if (!isOfStuff(sides.bottom) || of.includes(":") || stuff === "none") return `${say(unit, one)} of ${of}`;
  return `${say(sides.top, one)}${link}${stuff}${per}${bottom}${link}${below}`;
};

interface Words {
  readonly unit: string;
  readonly of: string;
  readonly style: Style;
  readonly one: boolean;
  readonly text: string;
}
/** What stood behind the last number: a list says the same unit again and again. */
let lastWords: Words | undefined;

const words = (unit: string, of: string, style: Style, one: boolean, locale: string): string => {
  if (locale !== "en-US") return withSubstance(unit, of, style, one, locale);
  const known = lastWords;
  if (known?.unit === unit && known.of === of && known.style === style && known.one === one)
    return known.text;
  const text = withSubstance(unit, of, style, one, locale);
  lastWords = { unit, of, style, one, text };
  return text;
};

const moneyText = (
  q: Quantity<string, string>,
  options: FormatOptions,
  style: Style,
  locale: string,
): string => {
  // money:USD/lb
  const [currency, rest] = [q.unit.slice(6, 9), q.unit.slice(9)];
  const digits =
    options.significantDigits === undefined && options.maximumFractionDigits === undefined
      ? rest === ""
        ? {}
        : priceDigits(q.value, currency, locale)
      : digitsFor(q.value, options);
  const amount = numberText(q.value, locale, { style: "currency", currency, ...digits });
  const [stuff, below] = q.of.split("/");
  const tail =
    rest === "" ? "" : `${style === "name" ? " per " : "/"}${written(rest.slice(1), style, true, locale)}`;
  if (q.of === "none") return `${amount}${tail}`;
  // "$40/acre of N" would be a cost, "$0.60/lb of N" is a price
  return isOfStuff(rest.slice(1)) && stuff === "none" && below !== undefined && !below.includes(":")
    ? `${amount}${tail}${style === "name" ? " of " : " "}${below}`
    : `${amount}${tail} of ${q.of}`;
};

/**
 * A quantity as text for people, in the unit that it has or in `unit`.
 *
 * Digits and currencies are written by `Intl.NumberFormat`, with `en-US` where no language is given and never
 * with the machine's own. Unit symbols and words are ours, so that nothing depends on which units `Intl` knows.
 * A price per unit has the decimals of its currency, and more where they are needed for three digits.
 *
 * `parseQuantity` with the dimension reads back what is written for `en-US` without rounding. It does not read
 * a bare number of a substance (`2.5 N`) or `lb/in2` by its name, which is a pressure; an id with the word
 * "per" in it needs `of`, too.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `unit/unknown`; `range` for a language or digits that
 * Intl refuses
 *
 * @example
 * ```ts
 * import { format, quantity } from "ratewright";
 * format(quantity(3, "lb/1000 ft2", "N")); // => "3 lb N/1,000 ft²"
 * format(quantity(1, "acre"), { unit: "ft2" }); // => "43,560 ft²"
 * format(quantity(2.5, "gal/acre"), { unitDisplay: "name" }); // => "2.5 gallons per acre"
 * format(quantity(10.5, "kg/ha"), { locale: "de" }); // => "10,5 kg/ha"
 * ```
 */
export const format = <D extends string, S extends string, U extends UnitHint<D> | (string & {})>(
  q: Quantity<D, S>,
  options: FormatOptions & { readonly unit?: CheckedUnitOf<U, D> | Unit<NoInfer<D>> } = {},
): string => {
  const given = operand(q, "quantity");
  expectFields(options, optionNames, "options", "a record of options");
  const unit = (options.unit as string | undefined) ?? given.unit;
  const value = unit === given.unit ? given.value : converted(given.value, given.unit, unit);
  const locale = options.locale ?? "en-US";
  const style = options.unitDisplay ?? "symbol";
  if (style !== "symbol" && style !== "name" && style !== "unit") {
    return fail("type", "options.unitDisplay", style, '"symbol", "name" or "unit"');
  }
  const of = options.substance === false ? "none" : given.of;
  if (unit.startsWith("money:")) {
    return moneyText({ ...given, value, unit, of } as Quantity<string, string>, options, style, locale);
  }
  const plain =
    locale === "en-US" &&
    options.significantDigits === undefined &&
    options.maximumFractionDigits === undefined;
  const amount =
    (plain ? everydayText(value) : undefined) ?? numberText(value, locale, digitsFor(value, options));
  // "3 1,000 ft²" would read as one number
  const count = /^\d/.test(unit) && unit.length > 1 && !unit.startsWith("1/") ? " ×" : "";
  const rest = words(unit, of, style, amount === "1", locale);
  // "3/d", but "3 per day"
  const gap = rest.startsWith("per ") ? " " : "";
  if (style !== "unit" && (unit === "1" || unit.startsWith("1/"))) return `${amount}${gap}${rest}`;
  return `${amount}${count} ${rest}`;
};
