import { formsOf } from "../../quantity/house.js";
import { type Problem, suggestSubstance, suggestUnit } from "../../quantity/index.js";
import { plainProblem } from "./measure-problems.js";

const nearest: Readonly<Partial<Record<Problem["code"], (text: string) => string | undefined>>> = {
  "unit/unknown": (text) => suggestUnit(text),
  "substance/unknown": suggestSubstance,
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
    const near = nearest[code]?.(word);
    // A unit that is known, but not here, is its own nearest.
    return near === undefined || got === JSON.stringify(near) ? problem : { ...problem, suggestion: near };
  });
