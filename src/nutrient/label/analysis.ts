import { described } from "../../quantity/house.js";
import {
  type DecimalSign,
  expectFields,
  expectOneOf,
  expectRecord,
  fail,
  type Problem,
  RatewrightError,
  shown,
} from "../../quantity/index.js";
import { expectPath } from "./expect-source.js";
import { type GradeReading, readGrade } from "./grade.js";
import { labelFields } from "./label-fields.js";
import { type Analysis, isNutrient, labelByVolume, type Nutrient, type StatedBy } from "./nutrient.js";
import { oxideFactor } from "./oxide-factor.js";

export type { Analysis, Nutrient } from "./nutrient.js";

export const bases = ["oxide", "element"] as const;
export const decimals = [".", ","] as const;

/**
 * Reads the grade printed on a bag: `24-0-11` is 24 % N, 0 % P2O5 and 11 % K2O, and so is `24:0:11`; further
 * nutrients follow with their symbol, as in `12-0-0-26S`, `21-0-0 (24% S)`, `12-0-0 + 6% Fe` or `20-20-20+TE`. An
 * {@link Analysis} record is read like a label, and a copy of it comes back.
 *
 * @param input - the text of the grade, or an analysis record
 * @param basis - whether the second and third figures are oxides (the default, as on United States
 *   labels) or elements, and which sign goes before decimals (`{ decimal: "," }` reads `24,5-0-11`); ignored for a
 *   record, which states its own
 * @param path - named in errors
 * @throws RatewrightError `text` with the place in the text; `type` for another basis; `range` for a percentage under 0 or
 *   a total over 100; `conflict` where one nutrient is stated twice, or a record's basis contradicts its nutrients
 *
 * @example
 * ```ts
 * import { analysis } from "ratewright";
 * analysis("24-0-11").percent; // => { N: 24, P2O5: 0, K2O: 11 }
 * analysis("12-0-0-26S").percent.S; // => 26
 * analysis("21-4-15 + 7.5 SO3").percent.SO3; // => 7.5
 * analysis("18-4-10", "element").percent; // => { N: 18, P: 4, K: 10 }
 * analysis("24,5-0-11", { decimal: "," }).percent.N; // => 24.5
 * analysis("20-20-20+TE").traceElements; // => true
 * analysis("24-x-11"); // => throws text
 * ```
 */
export const analysis = <const G extends string | Analysis, const B extends "oxide" | "element" = "oxide">(
  input: G,
  basis: B | { readonly basis?: B; readonly decimal?: DecimalSign } = "oxide" as B,
  path = "analysis",
): Analysis<StatedBy<G, B>> =>
  // What the type of a grade states is what its text is read to state; a record states its own basis.
  readAnalysis(input, readingOf(typeof input === "string" ? basis : bases[0]), path) as Analysis<
    StatedBy<G, B>
  >;

/** How a text is to be read, by what a caller says of it. */
const readingOf = (basis: unknown): GradeReading => {
  const how = typeof basis === "string" ? { basis } : expectFields(basis, ["basis", "decimal"], "basis");
  const { decimal } = how as { readonly decimal?: unknown };
  return {
    basis: how.basis === undefined ? bases[0] : expectOneOf(how.basis, bases, "basis"),
    decimal: decimal === undefined ? decimals[0] : expectOneOf(decimal, decimals, "decimal"),
  };
};

/** Reads a text in a way that is known to be one, or a record, which states its own. */
export const readAnalysis = (input: string | Analysis, reading: GradeReading, path: string): Analysis => {
  expectPath(path);
  if (typeof input === "string") {
    const { percent, traceElements } = readGrade(input, reading, path);
    return checked(reading.basis, percent, traceElements, path);
  }
  refuseBareNutrients(input, path);
  const given = labelFields(
    input,
    ["type", "version", "basis", "percent", "traceElements"],
    path,
    'a grade such as "24-0-11", or { basis, percent }',
  );
  const basis = expectOneOf(given.basis, bases, `${path}.basis`);
  return checked(basis, expectRecord(given.percent, `${path}.percent`), given.traceElements, path);
};

/** `{ N: 24 }` without its percent, or `{ N: quantity(3, "lb/gal", "N") }`: the form that is read is named. */
const refuseBareNutrients = (input: unknown, path: string): void => {
  const [key, value] = Object.entries(Object(input)).find(([name]) => isNutrient(name)) ?? [];
  if (key === undefined) return;
  const way = typeof value === "number" ? `{ basis: "oxide", percent: { ${key}: ${value} } }` : labelByVolume;
  fail("type", `${path}.${key}`, value, `a grade such as "24-0-11", or { basis, percent }; ${way}`);
};

/** Far more than any label states: a record with more fields is none. */
const mostNutrients = 40;

/** The bounds of a percentage, in words and as data: every page that reads a grade ships these, and no writer of bounds. */
export const anyPercentage = "0 to 100 %";
export const percentBounds = { min: 0, max: 100, unit: "%" } as const;

/** What is wrong with one line of an analysis. */
const lineProblems = (
  basis: Analysis["basis"],
  key: string,
  value: unknown,
  keys: readonly string[],
  at: string,
): Problem[] => {
  const problems: Problem[] = [];
  const add = (
    code: Problem["code"],
    got: string,
    expected: string,
    more?: Pick<Problem, "params">,
  ): void => {
    problems.push({ code, path: at, got, expected, ...more });
  };
  if (!isNutrient(key)) add("substance/unknown", key.slice(0, 40), "a nutrient, such as N, P2O5 or Fe");
  else if (!Number.isFinite(value)) add("not-finite", shown(value), "a percentage");
  else if ((value as number) < 0 || (value as number) > 100)
    add("range", shown(value), anyPercentage, { params: percentBounds });
  const [wrong, right] = basis === "oxide" ? [["P", "K"], "P2O5 and K2O"] : [["P2O5", "K2O"], "P and K"];
  if (wrong.includes(key)) add("conflict", key, `${right}, as the basis says, or the other basis`);
  const twin = keys.find((other) => other > key && isNutrient(other) && oxideFactor(key, other));
  if (twin !== undefined) add("conflict", `${key} and ${twin}`, "one form of each nutrient");
  return problems;
};

/** Oxide and element of one nutrient must not both be stated: which one would count? */
const checked = (
  basis: Analysis["basis"],
  percent: Readonly<Record<string, unknown>>,
  traceElements: unknown,
  path: string,
): Analysis => {
  const keys = Object.keys(percent);
  if (keys.length === 0)
    fail("missing", `${path}.percent`, described("no nutrient"), "at least one nutrient");
  if (keys.length > mostNutrients)
    fail("range", `${path}.percent`, keys, `${mostNutrients} nutrients or fewer`, {
      params: { max: mostNutrients, count: "nutrients" },
    });
  if (traceElements !== undefined && traceElements !== true) {
    fail("type", `${path}.traceElements`, traceElements, "true, or nothing");
  }
  const problems = keys.flatMap((key) =>
    lineProblems(basis, key, percent[key], keys, `${path}.percent.${key.slice(0, 40)}`),
  );
  if (problems.length > 0) throw new RatewrightError(problems);
  const total = keys.reduce((sum, key) => sum + (percent[key] as number), 0);
  if (total > 100 + 1e-9) {
    const sum = described(`${Number(total.toPrecision(12))} % in all`);
    fail("range", path, sum, "100 % or less in all", { params: { max: 100, unit: "%" } });
  }
  const own: Analysis["percent"] = Object.fromEntries(keys.map((key) => [key, (percent[key] as number) + 0]));
  return traceElements === true ? { basis, percent: own, traceElements } : { basis, percent: own };
};

/**
 * Percent by weight that an analysis states of a nutrient, in the form asked for: 20 % P2O5 is 8.7 % P.
 * A nutrient that the analysis does not state is not guaranteed, so it counts as 0.
 *
 * @param nutrient - any form of the nutrient
 *
 * Source: atomic weights of IUPAC, see {@link atomicWeights}.
 *
 * @throws RatewrightError `type` for anything but an analysis; `range`
 *
 * @example
 * ```ts
 * import { analysis, percentOf } from "ratewright";
 * percentOf(analysis("10-20-5"), "P2O5"); // => 20
 * Number(percentOf(analysis("10-20-5"), "P").toFixed(2)); // => 8.73
 * percentOf(analysis("24-0-11"), "Fe"); // => 0
 * ```
 */
export const percentOf = (given: Analysis, nutrient: Nutrient): number =>
  percentAt(given, nutrient, "analysis");

/** {@link percentOf}, told at a path. */
export const percentAt = (given: Analysis, nutrient: Nutrient, path: string): number => {
  const percents = given?.percent;
  if (Object(percents) !== percents || typeof nutrient !== "string") {
    const at = Object(given) === given && typeof nutrient === "string" ? `${path}.percent` : path;
    return fail("type", at, given, "fertilizer(...)");
  }
  let percent: unknown = percents[nutrient];
  let factor = 1;
  if (percent === undefined) {
    percent = 0;
    for (const form in percents) {
      const found = oxideFactor(form, nutrient);
      if (found) {
        percent = percents[form as Nutrient];
        factor = found;
      }
    }
  }
  // A record made by hand is read like a label.
  return typeof percent === "number" && percent >= 0 && percent <= 100
    ? percent * factor + 0
    : fail("range", `${path}.percent.${nutrient}`, percent, anyPercentage, { params: percentBounds });
};
