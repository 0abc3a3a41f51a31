import { isUnit, type Problem, shown, suggestUnit } from "../../quantity/index.js";

/** What the dimensions that a job asks for are called outdoors. */
const plainWords: readonly (readonly [string, string])[] = [
  ["a quantity of mass/area", "a weight per area, such as lb/1000 ft2 or kg/ha"],
  ["a quantity of volume/area", "a volume per area, such as gal/1000 ft2 or L/ha"],
  ["a quantity of mass/volume", "a weight per volume, such as lb/gal or kg/L"],
  ["a quantity of mass", "a weight, such as lb or kg"],
  ["a quantity of mass/mass", "percent by weight of the PRODUCT, as labels print it, in % w/w"],
  ["a quantity of N:slow/product", "percent of the PRODUCT that is slow nitrogen, of N:slow/product"],
  ["a quantity of length", "a length, such as ft or m"],
  ["a quantity of area", "an area, such as ft2 or m2"],
  ["a quantity of volume", "a volume, such as gal or L"],
  ["a quantity of length/time", "a length per time, such as mi/h or mm/h"],
  ["a quantity of pressure", "a pressure, such as psi or bar"],
  ["a quantity of time", "a time, such as h or min"],
];

const record = (value: number, unit: string): string => `{ "value": ${value}, "unit": "${unit}" }`;

/** A number that somebody wrote with commas between the thousands, or between quotes. */
const numberIn = (text: string): number | undefined => {
  const plain = /^\s*\d{1,3}(,\d{3})+(\.\d+)?\s*$/.test(text) ? text.replaceAll(",", "") : text;
  const value = Number(plain);
  return plain.trim() === "" || !Number.isFinite(value) ? undefined : value;
};

/** `10 gal` as the record that a job asks for. */
const recordIn = (text: string): string | undefined => {
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
const valueAt = (input: unknown, path: string): unknown => {
  let value = input;
  for (const [, name = ""] of path.matchAll(/([^.[\]]+)/g)) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, name)) return undefined;
    value = (value as Record<string, unknown>)[name];
  }
  return value;
};

const needsMeasure =
  /^(a quantity( of [a-z/]+)?(: quantity\(.*|, as .*)?|a volume|a rate of product|what one package holds|a unit, such as lb\/acre)$/;

/** A measure that lacks its unit or its number: said at the place, with what to write. */
const ofMeasure = (told: Problem, found: unknown): Problem => {
  // A job file is JSON: it makes no calls.
  const problem = { ...told, expected: told.expected.replace(/(: quantity\(|, as ).*/, "") };
  const { path, expected } = problem;
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

/**
 * A problem of a job in the words of people who work outdoors: a measure is asked for as it is written in the
 * file, and nothing is called undefined.
 */
export const plainProblem = (found: Problem, input: unknown): Problem => {
  // The suggestion stands beside it: nobody has to call for it.
  const problem = { ...found, expected: found.expected.replace(/ \(suggest\w+ names the nearest\)$/, "") };
  const told = needsMeasure.test(problem.expected)
    ? ofMeasure(problem, valueAt(input, problem.path))
    : problem;
  const [, words = told.expected] = plainWords.find(([dimension]) => dimension === told.expected) ?? [];
  const again =
    told.expected === "a finite number" && /^".*"$/.test(told.got)
      ? suggesting(told, numberIn(told.got.slice(1, -1))?.toString())
      : told;
  return { ...again, expected: withRecords(words), got: told.got === "undefined" ? "nothing" : told.got };
};
