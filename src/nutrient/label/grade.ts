import { type DecimalSign, fail } from "../../quantity/index.js";
import { type Analysis, isNutrient, labelByVolume, type Nutrient } from "./nutrient.js";

/** How a grade in text is read. */
export interface GradeReading {
  /** Whether the second and third figures are oxides or elements. */
  readonly basis: Analysis["basis"];
  /** The sign before the decimals: `"."`, or `","` as in `24,5-0-11`. */
  readonly decimal: DecimalSign;
}

const longest = 120;
const wanted = "three percentages with hyphens between, such as 24-0-11 or 12-0-0-26S";
/** A figure with its percent sign, and the signs that stand between figures: hyphens, dashes, minus signs, colons. */
const figure = /\s*(\d{1,3}(?:[.,]\d{1,4})?)\s*%?/y;
const between = /\s*[-:\u2010-\u2013\u2212]/y;
/** What goes before a further nutrient: `-26S`, `+ 7.5 SO3`, `(24% S)`, `, 2% Fe`, `with 6% Fe`, `plus 2 Fe`. */
const before = /\s*(?:[-+,;(:\u2010-\u2013\u2212]|with\b|plus\b|and\b)?\s*/iy;
const further =
  /(?:(\d{1,3}(?:[.,]\d{1,4})?)\s*%?\s*([A-Za-z][A-Za-z0-9]*)|([A-Z][A-Za-z0-9]*)\s+(\d{1,3}(?:[.,]\d{1,4})?)\s*%?)\s*\)?/y;
/** Trace elements without amounts: `20-20-20+TE`. */
const traces = /(?:TE|ME|trace elements|micronutrients)\b\s*\)?/iy;

/** What only a label by volume says: `3 lb/gal`, `18 % w/v`, `180 g/L`. */
const byVolume = /w\/v|(?:\/|\bper)\s*(?:us\s+)?(?:gal|L\b|liter|litre|m3|qt|pt)/i;

/** Reads the text of a grade. */
export const readGrade = (
  text: string,
  { basis, decimal }: GradeReading,
  path: string,
): Pick<Analysis, "percent" | "traceElements"> => {
  if (text.length > longest) fail("text", path, text, wanted);
  const keys = basis === "oxide" ? (["N", "P2O5", "K2O"] as const) : (["N", "P", "K"] as const);
  const percent: Partial<Record<Nutrient, number>> = {};
  const end = text.trimEnd().length;
  let [at, traceElements] = [0, false];
  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found !== null) at = pattern.lastIndex;
    return found;
  };
  const wrong = (place: number, what: string): never => {
    const rest = text.slice(place).trim();
    const signs = /^[-+,;(:\u2010-\u2013\u2212\s]*/.exec(text.slice(place))?.[0].length ?? 0;
    const [shown = rest] = /^[^-+,;(:\s]+/.exec(text.slice(place + signs)) ?? [];
    const part = rest === "" ? "it ends" : `at character ${place + signs + 1}, "${shown.slice(0, 20)}"`;
    const way = byVolume.test(text) ? `; ${labelByVolume}` : "";
    return fail(
      "text",
      path,
      text,
      `${wanted}; ${part} ${rest === "" ? `before ${what}` : `is not ${what}`}${way}`,
    );
  };
  const numberOf = (digits: string, place: number): number => {
    const sign = /[.,]/.exec(digits)?.[0] ?? decimal;
    if (sign !== decimal) {
      const way =
        sign === ","
          ? 'a decimal point, or { decimal: "," } for a comma'
          : "a decimal comma, as was asked for";
      wrong(place, `a percentage with ${way}`);
    }
    return Number(digits.replace(",", "."));
  };
  keys.forEach((key, i) => {
    const start = at;
    if (i > 0 && take(between) === null) wrong(start, "a hyphen and the next percentage");
    const place = at;
    const digits = take(figure)?.[1] ?? wrong(place, "a percentage");
    percent[key] = numberOf(digits, place);
  });
  while (at < end) {
    const start = at;
    take(before);
    if (take(traces) !== null) {
      traceElements = true;
      continue;
    }
    const [, digits, symbol, named, stated] =
      take(further) ?? wrong(start, "a percentage with its nutrient, such as 26S or + TE");
    const key = symbol ?? named ?? "";
    if (!isNutrient(key)) wrong(start, "a percentage with its nutrient, such as 26S");
    if (Object.hasOwn(percent, key)) {
      fail("conflict", path, text, `each nutrient once; ${key} stands again at character ${start + 1}`);
    }
    percent[key as Nutrient] = numberOf(digits ?? stated ?? "", start);
  }
  return traceElements ? { percent, traceElements } : { percent };
};
