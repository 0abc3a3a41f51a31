import { formsOf } from "../../quantity/house.js";
import { type Problem, suggestSubstance, suggestUnit } from "../../quantity/index.js";
import { plainProblem, recordRead, valueAt } from "./measure-problems.js";

const nearest: Readonly<Partial<Record<Problem["code"], (text: string) => string | undefined>>> = {
  "unit/unknown": (text) => suggestUnit(text),
  "substance/unknown": suggestSubstance,
};

/** A record whose unit has a number in it, `2` of `pt/100 gal`, with the number worked in. */
const wholeAt = (input: unknown, path: string): string | undefined => {
  const { value, unit, of } = Object(valueAt(input, path)) as Readonly<Record<string, unknown>>;
  return typeof value === "number" && typeof unit === "string"
    ? recordRead(`${value} ${unit}`, of)
    : undefined;
};

/**
 * The problems of a job with the likely correction of each unit and substance that is not known. The core does
 * not carry the names that people use, so that small bundles stay small; a job may.
 */
export const withSuggestions = (problems: readonly Problem[], input: unknown): readonly Problem[] =>
  problems.map((told) => {
    const problem = plainProblem(told, input);
    const { code, got, suggestion, choices } = problem;
    if (suggestion !== undefined || choices !== undefined || !/^".*"$/.test(got)) return problem;
    const word: string = JSON.parse(got);
    const several = code === "substance/unknown" ? formsOf(word) : undefined;
    if (several !== undefined) return { ...problem, code: "substance/ambiguous", choices: several };
    const near =
      nearest[code]?.(word) ?? (code === "unit/unknown" ? wholeAt(input, problem.path) : undefined);
    // A unit that is known, but not here, is its own nearest.
    return near === undefined || got === JSON.stringify(near) ? problem : { ...problem, suggestion: near };
  });
