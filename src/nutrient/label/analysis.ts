import { fail, type Problem, RatewrightError } from "../../quantity/index.js";
import { formFactor } from "./forms.js";

/**
 * The guaranteed analysis of a fertilizer: percent of product by weight, as printed on the label.
 *
 * `basis` says how the second and third figure of a grade were read: as the oxides P2O5 and K2O (the
 * United States and most of the world), or as the elements P and K (Australia, New Zealand and some
 * research).
 */
export interface Analysis {
  readonly basis: "oxide" | "element";
  /** Percent by weight of the product, keyed by nutrient: `{ N: 24, P2O5: 0, K2O: 11 }`. */
  readonly percent: Readonly<Partial<Record<Nutrient, number>>>;
}

/** What an analysis can state, and what a rate can be a rate of. */
export type Nutrient =
  | "N"
  | "P2O5"
  | "K2O"
  | "P"
  | "K"
  | "Ca"
  | "CaO"
  | "Mg"
  | "MgO"
  | "S"
  | "SO3"
  | "SO4"
  | "Fe"
  | "Mn"
  | "Zn"
  | "Cu"
  | "B"
  | "Mo"
  | "Cl"
  | "Ni"
  | "Si"
  | "SiO2";

const named = /^(N|P2O5|K2O|P|K|Ca|CaO|Mg|MgO|S|SO3|SO4|Fe|Mn|Zn|Cu|B|Mo|Cl|Ni|Si|SiO2)$/;

/** Whether a text names a nutrient in a form that labels state. */
export const isNutrient = (text: string): text is Nutrient => named.test(text);

const number = /^\d{1,3}(\.\d{1,4})?$/;

/**
 * Reads the grade printed on a bag: `24-0-11` is 24 % N, 0 % P2O5 and 11 % K2O; further nutrients
 * follow with their symbol, as in `12-0-0-26S` or `21-4-15 + 7.5 SO3`. An {@link Analysis} record passes through, checked.
 *
 * @param input - the text of the grade, or an analysis record
 * @param basis - whether the second and third figures are oxides (the default, as on United States
 *   labels) or elements; ignored for a record, which states its own
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
 * analysis("24-x-11"); // => throws text
 * ```
 */
export const analysis = (
  input: string | Analysis,
  basis: "oxide" | "element" = "oxide",
  path = "analysis",
): Analysis => {
  if (typeof input === "string") {
    checkBasis(basis, "basis");
    return checked({ basis, percent: readGrade(input, basis, path) }, path);
  }
  if (
    typeof input !== "object" ||
    input === null ||
    typeof input.percent !== "object" ||
    input.percent === null
  ) {
    return fail("type", path, input, 'a grade such as "24-0-11", or { basis, percent }');
  }
  checkBasis(input.basis, `${path}.basis`);
  return checked(input, path);
};

/** Any other word would be read as one of the two, and phosphate as phosphorus. */
const checkBasis = (basis: unknown, path: string): void => {
  if (basis !== "oxide" && basis !== "element") fail("type", path, basis, '"oxide" or "element"');
};

const readGrade = (text: string, basis: Analysis["basis"], path: string): Analysis["percent"] => {
  const wanted = "three percentages with hyphens between, such as 24-0-11 or 12-0-0-26S";
  if (text.length > 80) fail("text", path, text, wanted);
  // Some sheets print the further nutrients after a plus, and word processors turn hyphens into dashes or minus signs.
  const parts = text.trim().split(/\s*[-\u2010-\u2013\u2212]\s*|\s*\+\s*(?=[\d.]+\s*[A-Za-z])/);
  const keys = basis === "oxide" ? (["N", "P2O5", "K2O"] as const) : (["N", "P", "K"] as const);
  const percent: Partial<Record<Nutrient, number>> = {};
  if (parts.length < 3) fail("text", path, text, `${wanted}; it ends after ${parts.length} of them`);
  let place = 0;
  parts.forEach((part, i) => {
    const column = text.indexOf(part, place) + 1;
    place = column - 1 + part.length;
    const [, digits = "", symbol = ""] = /^([\d.]*)\s*([A-Za-z]\w*)?$/.exec(part) ?? [];
    const key = i < 3 ? keys[i] : symbol;
    if (!number.test(digits) || (i < 3 && symbol !== "") || key === undefined || !named.test(key)) {
      fail(
        "text",
        path,
        text,
        `${wanted}; at character ${column}, "${part}" is not ${i < 3 ? "a percentage" : "a percentage with its nutrient, such as 26S"}`,
      );
    }
    if (Object.hasOwn(percent, key as string)) {
      fail("conflict", path, text, `each nutrient once; ${key} stands again at character ${column}`);
    }
    percent[key as Nutrient] = Number(digits);
  });
  return percent;
};

/** Oxide and element of one nutrient must not both be stated: which one would count? */
const checked = (given: Analysis, path: string): Analysis => {
  const problems: Problem[] = [];
  let total = 0;
  const keys = Object.keys(given.percent);
  for (const key of keys) {
    const value: unknown = given.percent[key as Nutrient];
    const at = `${path}.percent.${key}`;
    if (!named.test(key)) {
      problems.push({
        code: "substance/unknown",
        path: at,
        got: key,
        expected: "a nutrient, such as N, P2O5 or Fe",
      });
    } else if (typeof value !== "number" || !Number.isFinite(value)) {
      problems.push({ code: "not-finite", path: at, got: String(value), expected: "a percentage" });
    } else if (value < 0 || value > 100) {
      problems.push({ code: "range", path: at, got: String(value), expected: "a percentage from 0 to 100" });
    } else total += value;
    if (key === (given.basis === "oxide" ? "P" : "P2O5") || key === (given.basis === "oxide" ? "K" : "K2O")) {
      problems.push({
        code: "conflict",
        path: at,
        got: key,
        expected: `${given.basis === "oxide" ? "P2O5 and K2O" : "P and K"}, as the basis says, or the other basis`,
      });
    }
    const twin = keys.find((other) => other !== key && other > key && formFactor(key, other) !== undefined);
    if (twin !== undefined) {
      problems.push({
        code: "conflict",
        path: at,
        got: `${key} and ${twin}`,
        expected: "one form of each nutrient",
      });
    }
  }
  if (keys.length === 0) {
    problems.push({
      code: "missing",
      path: `${path}.percent`,
      got: "no nutrient",
      expected: "at least one nutrient",
    });
  }
  if (problems.length === 0 && total > 100 + 1e-9) {
    problems.push({
      code: "range",
      path,
      got: `${total} % in all`,
      expected: "percentages that add up to 100 or less",
    });
  }
  if (problems.length > 0) throw new RatewrightError(problems);
  return given;
};

/**
 * Percent by weight that an analysis states of a nutrient, in the form asked for: 20 % P2O5 is 8.7 % P.
 * A nutrient that the analysis does not state is not guaranteed, so it counts as 0.
 *
 * @param nutrient - any form of the nutrient
 *
 * @example
 * ```ts
 * import { analysis, percentOf } from "ratewright";
 * percentOf(analysis("10-20-5"), "P2O5"); // => 20
 * Number(percentOf(analysis("10-20-5"), "P").toFixed(2)); // => 8.73
 * percentOf(analysis("24-0-11"), "Fe"); // => 0
 * ```
 */
export const percentOf = (given: Analysis, nutrient: Nutrient): number => {
  if (!given?.percent) fail("type", "analysis", given, "an analysis()");
  const stated = given.percent[nutrient];
  if (stated !== undefined) return stated;
  for (const [form, percent] of Object.entries(given.percent)) {
    const factor = formFactor(form, nutrient);
    if (factor) return percent * factor;
  }
  return 0;
};
