import { hasOwn } from "../../quantity/house.js";
import { type DecimalSign, fail } from "../../quantity/index.js";
import { type Analysis, labelByVolume, type Nutrient, nutrientNamed } from "./nutrient.js";

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
const between = /\s*[-:\u2010-\u2014\u2212]/y;
/** What goes before a further nutrient: `-26S`, `+ 7.5 SO3`, `(24% S)`, `, 2% Fe`, `with 6% Fe`, `w/ 6% Fe`, `& 2 Fe`. */
const before = /\s*[-+,;(:&\u2010-\u2014\u2212]?\s*(?:with\b|w\/|plus\b|and\b)?\s*/iy;
const further =
  /(?:(\d{1,3}(?:[.,]\d{1,4})?|[.,]\d{1,4})\s*%?\s*([A-Za-z][A-Za-z0-9]*)|([A-Z][A-Za-z0-9]*)\s+(\d{1,3}(?:[.,]\d{1,4})?)\s*%?)\s*\)?/y;
/** Trace elements without amounts: `20-20-20+TE`. */
const traces = /(?:TE|ME|trace elements|micronutrients)\b\s*\)?/iy;

/** The signs between figures, and what follows them up to the next. */
const signsAndWord = /^([-+,;(:&\u2010-\u2014\u2212\s]*)([^-+,;(:\s]*)/;

/** What only a label by volume says: `3 lb/gal`, `18 % w/v`, `180 g/L`. */
const byVolume = /w\/v|(?:\/|\bper)\s*(?:us\s+)?(?:gal|L\b|liter|litre|m3|qt|pt)/i;

const slowElsewhere = "; slow nitrogen goes into slowNitrogen, in percent of the product";

/** Labels may state Na and Co as well (Washington Administrative Code 16-200-711), and what chelates a nutrient. */
const leftOut = "; leave out what has no symbol here, such as sodium or EDTA";

/** The grade that a text with other signs between its figures most likely is: `24/0/11`, `NPK 24-0-11`, `24-O-11`. */
const hyphened = (text: string): string =>
  text
    .trim()
    .replace(/^n-?p-?k:? | ?npk$/gi, "")
    .replace(/-o(?=-)/gi, "-0")
    .replace(/^(\d{1,2}) ?([-/,.+ ]) ?(\d{1,2}) ?\2 ?(\d{1,2})(?![\d/,.])/, "$1-$3-$4");

/** A text that is read from left to right. */
interface Reading extends GradeReading {
  readonly text: string;
  readonly path: string;
  at: number;
}

/** What a pattern finds where the reading stands, which then moves on. */
const take = (reading: Reading, pattern: RegExp): RegExpExecArray | null => {
  pattern.lastIndex = reading.at;
  const found = pattern.exec(reading.text);
  if (found !== null) reading.at = pattern.lastIndex;
  return found;
};

/** Refuses a grade with the place at which something else was wanted. */
const wrong = (reading: Reading, place: number, what: string): never => {
  const { text, path } = reading;
  const rest = text.slice(place);
  const [, signs = "", word = ""] = signsAndWord.exec(rest) ?? [];
  const shown = (word || rest.trim()).slice(0, 20);
  const slow = /slow|srn|[ps]cu|release|coat/i.test(rest);
  const way = byVolume.test(text) ? `; ${labelByVolume}` : slow ? slowElsewhere : "";
  const wrongHere = shown ? `at character ${place + signs.length + 1}, "${shown}" is not` : "it ends before";
  const meant = hyphened(text);
  const reads = meant !== text && isGrade(meant, reading);
  return fail(text.trim() === "" ? "missing" : "text", path, text, `${wanted}; ${wrongHere} ${what}${way}`, {
    ...(reads && { suggestion: meant }),
  });
};

/** A percentage by the decimal sign that is asked for. */
const numberOf = (reading: Reading, digits: string, place: number): number => {
  const sign = /[.,]/.exec(digits)?.[0] ?? reading.decimal;
  if (sign !== reading.decimal) {
    const way =
      sign === "," ? 'a decimal point, or { decimal: "," } for a comma' : "a decimal comma, as was asked for";
    wrong(reading, place, `a percentage with ${way}`);
  }
  return Number(digits.replace(",", "."));
};

/** Reads the text of a grade. */
export const readGrade = (
  text: string,
  { basis, decimal }: GradeReading,
  path: string,
): Pick<Analysis, "percent" | "traceElements"> => {
  if (text.length > longest) fail("text", path, text, wanted);
  const reading: Reading = { basis, decimal, text, path, at: 0 };
  const keys = basis === "oxide" ? (["N", "P2O5", "K2O"] as const) : (["N", "P", "K"] as const);
  const percent: Partial<Record<Nutrient, number>> = {};
  keys.forEach((key, i) => {
    if (i > 0 && take(reading, between) === null) {
      wrong(reading, reading.at, "a hyphen and the next percentage");
    }
    const place = reading.at;
    const digits = take(reading, figure)?.[1] ?? wrong(reading, place, "a percentage");
    percent[key] = numberOf(reading, digits, place);
  });
  const end = text.trimEnd().length;
  let traceElements = false;
  while (reading.at < end) {
    if (readFurther(reading, percent) === "trace elements") traceElements = true;
  }
  return traceElements ? { percent, traceElements } : { percent };
};

/** Whether a text is a grade of a hundred percent or less. */
const isGrade = (text: string, how: GradeReading): boolean => {
  try {
    const { N = 0, P2O5 = 0, P = 0, K2O = 0, K = 0 } = readGrade(text, how, "").percent;
    return N + P2O5 + P + K2O + K <= 100;
  } catch {
    return false;
  }
};

/** Reads one further nutrient into the percentages, or that there are trace elements without amounts. */
const readFurther = (
  reading: Reading,
  percent: Partial<Record<Nutrient, number>>,
): Nutrient | "trace elements" => {
  const start = reading.at;
  take(reading, before);
  if (take(reading, traces) !== null) return "trace elements";
  const [, digits, symbol, named, stated] =
    take(reading, further) ??
    wrong(reading, start, `a percentage with its nutrient, such as 26S or + TE${leftOut}`);
  const typed = symbol ?? named ?? "";
  const key = nutrientNamed(typed);
  if (key === undefined) {
    const place = start + reading.text.slice(start, reading.at).indexOf(typed);
    return wrong(reading, place, `the symbol of a nutrient that is read here, such as S or Fe${leftOut}`);
  }
  if (hasOwn(percent, key)) {
    const expected = `each nutrient once; ${key} appears again at character ${start + 1}`;
    fail("conflict", reading.path, reading.text, expected);
  }
  percent[key] = numberOf(reading, digits ?? stated ?? "", start);
  return key;
};
