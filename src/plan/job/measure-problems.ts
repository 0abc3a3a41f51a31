import { amountInWords, dimensionNoun, hasOwn } from "../../quantity/house.js";
import {
  isUnit,
  type Problem,
  parseQuantity,
  RatewrightError,
  shown,
  suggestUnit,
} from "../../quantity/index.js";

/** What a job asks for in words of its own: labels print these two as percents of the product. */
const labelWords = (expected: string): string =>
  expected === amountInWords("mass/mass")
    ? "percent by weight of the PRODUCT, as labels print it, in % w/w"
    : expected === "a quantity of N:slow/product"
      ? "percent of the PRODUCT that is slow nitrogen, of N:slow/product"
      : expected;

const record = (value: number, unit: string, of = "none"): string =>
  `{ "value": ${value}, "unit": "${unit}"${of === "none" ? "" : `, "of": "${of}"`} }`;

/** A number that somebody wrote with commas between the thousands, or between quotes. */
const numberIn = (text: string): number | undefined => {
  const plain = /^\s*\d{1,3}(,\d{3})+(\.\d+)?\s*$/.test(text) ? text.replace(/,/g, "") : text;
  const value = Number(plain);
  return plain.trim() === "" || !Number.isFinite(value) ? undefined : value;
};

/** `2 pt/100 gal` and `0.9 lb N/1000 ft2` as the record that a job asks for; nothing where the text is not plain. */
export const recordRead = (text: string, stated?: unknown): string | undefined => {
  try {
    const { value, unit, of } = parseQuantity(text);
    return record(Number(value.toPrecision(12)), unit, typeof stated === "string" ? stated : of);
  } catch (error) {
    if (error instanceof RatewrightError) return undefined;
    throw error;
  }
};

/** The same of what only the job's own words tell: `10 gals`. */
const recordIn = (text: string): string | undefined => {
  const read = recordRead(text);
  if (read !== undefined) return read;
  const [, figure = "", name = ""] = /^\s*([\d.,]+)\s*(\D.*?)\s*$/.exec(text) ?? [];
  const value = numberIn(figure);
  const unit = isUnit(name) ? name : suggestUnit(name);
  return value === undefined || unit === undefined ? undefined : record(value, unit);
};

const suggesting = (problem: Problem, suggestion: string | undefined): Problem =>
  suggestion === undefined ? problem : { ...problem, suggestion };

/** A call that makes a quantity, as the record that a job file has in its place. */
const withRecords = (expected: string): string =>
  expected.replace(
    /\bquantity\((-?[\d.e+-]+), ("[^"]+")(?:, ("[^"]+"))?\)/g,
    (_, value: string, unit: string, of: string | undefined) =>
      `{ "value": ${value}, "unit": ${unit}${of === undefined ? "" : `, "of": ${of}`} }`,
  );

/** What stands at a path of a job. */
export const valueAt = (input: unknown, path: string): unknown => {
  let value = input;
  for (const [, name = ""] of path.matchAll(/([^.[\]]+)/g)) {
    if (typeof value !== "object" || value === null || !hasOwn(value, name)) return undefined;
    value = (value as Record<string, unknown>)[name];
  }
  return value;
};

const measures =
  /^(a quantity( of [a-z/]+)?(, as .*)?|a volume|a rate of product|what one package holds|a unit, such as lb\/acre)$/;

const needsMeasure = ({ expected, params }: Problem): boolean =>
  typeof params?.dimension === "string" || measures.test(expected);

/** A measure that lacks its unit or its number: said at the place, with what to write. */
const ofMeasure = (told: Problem, found: unknown): Problem => {
  // The text is a unit by itself, not a measure.
  if (told.code === "unit/unknown" && typeof found === "string") return told;
  // A job file is JSON: it makes no calls.
  const problem = { ...told, expected: told.expected.replace(/(, as |, made by |; parseQuantity ).*/, "") };
  const { path, params } = problem;
  const expected = typeof params?.dimension === "string" ? dimensionNoun(params.dimension) : problem.expected;
  if (typeof found === "number" || (found === undefined && expected === "a quantity"))
    return {
      ...problem,
      expected: `${expected} with its unit, such as ${record(Number.isFinite(found) ? Number(found) : 10, "...")}`,
    };
  if (typeof found === "string")
    return suggesting(
      { ...problem, expected: `${expected} as a record, such as ${record(10, "...")}` },
      recordIn(found),
    );
  if (typeof found !== "object" || found === null) return problem;
  const { value, unit } = found as { value?: unknown; unit?: unknown };
  if (typeof value !== "number") {
    const told = {
      code: value === undefined ? "missing" : "type",
      path: `${path}.value`,
      got: shown(value),
      expected: "a number",
    } as const;
    const number = typeof value === "string" ? numberIn(value) : undefined;
    return suggesting(told, number === undefined ? undefined : String(number));
  }
  if (typeof unit !== "string") {
    const code = unit === undefined ? "missing" : "type";
    return { code, path: `${path}.unit`, got: shown(unit), expected: "the unit of the number" };
  }
  return problem;
};

/** A number between quotes in a measure: a job file is JSON, and no one reads text for it. */
const quotedNumber = (problem: Problem): Problem | undefined =>
  problem.path.endsWith(".value") && /^a finite number; parseQuantity/.test(problem.expected)
    ? suggesting(
        { ...problem, code: "type", expected: "a number" },
        numberIn(problem.got.replace(/^"|"$/g, ""))?.toString(),
      )
    : undefined;

/**
 * A problem of a job in the words of people who work outdoors: a measure is asked for as it is written in the
 * file, and nothing is called undefined.
 */
export const plainProblem = (found: Problem, input: unknown): Problem => {
  // The suggestion stands beside it: nobody has to call for it.
  const problem = { ...found, expected: found.expected.replace(/ \(suggest\w+ names the nearest\)$/, "") };
  const told =
    quotedNumber(problem) ??
    (needsMeasure(problem) ? ofMeasure(problem, valueAt(input, problem.path)) : problem);
  const again =
    told.expected === "a finite number" && /^".*"$/.test(told.got)
      ? suggesting(told, numberIn(told.got.slice(1, -1))?.toString())
      : told;
  return {
    ...again,
    expected: withRecords(labelWords(told.expected)),
    got: told.got === "undefined" ? "nothing" : told.got,
  };
};
