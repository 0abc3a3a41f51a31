import { parseQuantity, RatewrightError } from "../../quantity/index.js";
import type { QuizProblem } from "../topics/quiz-problem.js";
import { plainUnits } from "./plain-units.js";

/** Words and symbols that stand before a number and read as units: `put in 3`, `they are 3`, `A = 3`, `#3`. */
const noUnit = /^(?:(?:in|min|are|an?)\b|[a-z#]$)/i;

const isUnitText = (text: string, problem: QuizProblem): boolean => {
  if (noUnit.test(text)) return false;
  if (problem.answer.noun?.includes(text.toLowerCase()) === true) return true;
  // money in words: "1 dollars" is not read
  if (/^(?:dollars?|euros?)$/i.test(text)) return true;
  try {
    return parseQuantity(`1 ${plainUnits(text, problem)}`).unit !== "1";
  } catch (error) {
    // oz alone may be either ounce, and is a unit
    return error instanceof RatewrightError && error.code === "unit/ambiguous";
  }
};

/** The unit that stands before a number, `kg 12.2` or `lb per acre: 3`, where there is one: as many words as make a unit. */
export const unitAhead = (before: string, problem: QuizProblem): string | undefined => {
  const words = before
    .replace(/[\s:,;()–-]+$/, "")
    .replace(/\s(?:are|of)$/i, "")
    .split(/\s+/)
    .slice(-6);
  return words.map((_, from) => words.slice(from).join(" ")).find((text) => isUnitText(text, problem));
};
