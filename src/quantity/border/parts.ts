import { type Problem, shown } from "../errors/errors.js";
import { nearSpelling } from "../errors/near-name.js";
import { currentSubstance, isSubstance } from "../substance/substances.js";
import { cleanText, textLimit } from "../text/clean-text.js";
import { type DecimalSign, scanNumber } from "../text/number-text.js";
import { unitInWords } from "../unit/dimension-words.js";
import type { Dimension } from "../unit/dimensions.js";
import { siblingUnit } from "../unit/near-units.js";
import { unitDimension } from "../unit/unit-facts.js";

// The parts of a record `{ value, unit, of }`, each read by itself: what it is, or what is wrong with it.

/** A problem with its path inside the input: `""` for the whole. */
export type PartProblem = Problem;

export const problem = (
  code: Problem["code"],
  path: string,
  got: string,
  expected: string,
  suggestion?: string,
): PartProblem => ({ code, path, got, expected, ...(suggestion !== undefined && { suggestion }) });

/** What an empty field of a form leaves: nothing, or nothing but spaces. */
export const isBlank = (input: unknown): input is undefined | null | string =>
  input === undefined ||
  input === null ||
  (typeof input === "string" && input.length <= textLimit && input.trim() === "");

/** Digits that read alike whatever stands before the decimals: three times as fast, and nearly every number is such a one. */
const plainDigits = /^-?\d{1,15}$/;
const plainDecimals = /^-?\d{1,15}\.\d{1,15}$/;

export const readValue = (value: unknown, decimal: DecimalSign): number | PartProblem => {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  if (isBlank(value)) return problem("missing", "value", told(value), "a number");
  if (typeof value !== "string" || value.length > textLimit) {
    return problem("not-finite", "value", told(value), "a finite number");
  }
  if (plainDigits.test(value) || (decimal === "." && plainDecimals.test(value))) return Number(value);
  const text = cleanText(value);
  const number = scanNumber(text, decimal);
  if (number?.problem !== undefined) return { ...number.problem, path: "value" };
  if (number === undefined || number.end !== text.length) {
    return problem("not-finite", "value", shown(value), "a number alone, such as 12.5 or 1 1/2");
  }
  return number.value;
};

/** What reads words where no exact name stands; left out by a reader that takes exact names alone. */
export interface Words {
  /** What is wrong with a text that is no exact name of a unit, with the choices and suggestions of a typed text. */
  readonly unit: (unit: string, dimension: Dimension | undefined, expected: string) => PartProblem;
  /** The substance that a text most likely means. */
  readonly substance: (of: string) => string | undefined;
  /** The substances that a word may mean, where it may mean several. */
  readonly substances: (of: string) => readonly string[] | undefined;
}

export const readUnit = (
  unit: unknown,
  dimension: Dimension | undefined,
  words: Words | undefined,
): string | PartProblem => {
  const measured = typeof unit === "string" ? unitDimension(unit) : undefined;
  if (measured !== undefined && (dimension === undefined || measured === dimension)) return unit as string;
  const expected = dimension === undefined ? "a unit, such as lb or kg/ha" : unitInWords(dimension);
  if (isBlank(unit)) return problem("missing", "unit", told(unit), expected);
  if (typeof unit !== "string") return problem("type", "unit", told(unit), expected);
  if (measured !== undefined) {
    return problem("unit/mismatch", "unit", shown(unit), expected, siblingUnit(unit, dimension as string));
  }
  return (
    words?.unit(unit, dimension, expected) ??
    problem("unit/unknown", "unit", shown(unit), `${expected}, by its exact name; readQuantity reads words`)
  );
};

export const readOf = (
  written: unknown,
  wanted: string | undefined,
  words: Words | undefined,
): string | PartProblem => {
  const of = typeof written === "string" ? currentSubstance(written) : written;
  const expected = wanted === undefined ? "a substance, such as N or product" : wanted;
  if (isBlank(of)) {
    return (wanted ?? "none") === "none" ? "none" : problem("missing", "of", "nothing", expected);
  }
  if (typeof of !== "string") return problem("type", "of", told(of), expected);
  const several = isSubstance(of) ? undefined : words?.substances(of);
  if (several !== undefined)
    return { ...problem("substance/ambiguous", "of", shown(of), expected), choices: several };
  if (!isSubstance(of)) return problem("substance/unknown", "of", shown(of), expected, words?.substance(of));
  return wanted === undefined || of === wanted
    ? of
    : problem("substance/mismatch", "of", shown(of), expected);
};

const otherNames: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ["fo", "of"],
  ["substance", "of"],
  ["number", "value"],
  ["amount", "value"],
]);
const known: readonly string[] = ["value", "unit", "of", "dimension"];

/** Fields that a record has beside its parts: a misspelt `of` would be passed over, and its substance with it. */
export const strangeFields = (input: object): readonly PartProblem[] =>
  Object.keys(input)
    .filter((name) => !known.includes(name))
    .slice(0, 8)
    .map((name) =>
      problem(
        "type",
        name.slice(0, 60),
        `a field ${shown(name)}`,
        "value, unit and of alone",
        otherNames.get(name) ?? nearSpelling(name, known.slice(0, 3)),
      ),
    );

/** Shows a part without looking into it: a stranger's object may throw when touched. */
export const told = (value: unknown): string =>
  typeof value === "object" && value !== null ? (isList(value) ? "a list" : "a record") : shown(value);

const isList = (value: object): boolean => {
  try {
    return Array.isArray(value);
  } catch {
    return false;
  }
};
