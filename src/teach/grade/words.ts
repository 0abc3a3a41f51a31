import { unitWords } from "../topics/figures.js";
import { mistakes } from "../topics/mistakes.js";
import type { QuizProblem } from "../topics/quiz-problem.js";
import type { ReadAnswer } from "./read-answer.js";

interface Parts {
  readonly verdict: "right" | "close" | "wrong" | "unread";
  readonly number: string;
  readonly unit: string;
  readonly of: string;
  readonly mistake?: keyof typeof mistakes;
  /** The unit in which the number would be right. */
  readonly meant?: string;
}

const stuffWords: Readonly<Record<string, string>> = {
  N: "nitrogen",
  P2O5: "phosphate (P2O5)",
  P: "phosphorus (P)",
  K2O: "potash (K2O)",
  K: "potassium (K)",
  ai: "active ingredient",
};

const isBare = (unit: string): boolean => unit === "1" || unit.startsWith("count/");

const askedUnit = ({ answer }: QuizProblem): string =>
  answer.noun?.[1] ??
  (answer.unit === "%" ? "percent" : isBare(answer.unit) ? "the number alone" : unitWords(answer.unit));

const unreadWords: Readonly<Record<NonNullable<ReadAnswer["unread"]>, string>> = {
  "no number": "There is no number in your answer. Write a number and its unit, or the letter of a choice.",
  "two numbers": "There is more than one number in your answer. Write the one that you mean, with its unit.",
  "decimal comma": "Write a decimal point, not a comma: 3.5, not 3,5.",
  "no amount": "Say how much it is, not what it is more or less than.",
  "not worked out": "Work it out to one number: 3.14 for π will do.",
};

const unitWord = (parts: Parts, { unit, unitText, slip }: ReadAnswer, problem: QuizProblem): string => {
  if (unit === "bare ounces") {
    return "Write fl oz for a volume. Ounces alone are weight: 16 to the pound, where a gallon has 128 fluid ounces.";
  }
  if (parts.meant === "1") {
    return `That is the share as a decimal. The question asks for ${askedUnit(problem)}: multiply by 100.`;
  }
  if (parts.meant !== undefined) {
    return `Your number is right in ${unitWords(parts.meant)}. The question asks for ${askedUnit(problem)}: convert it, or write your unit.`;
  }
  if (slip !== undefined)
    return `No unit is written "${unitText}". Did you mean ${unitWords(slip)}? Write the unit again.`;
  return `The unit does not fit: you wrote "${unitText}", and the question asks for ${askedUnit(problem)}.`;
};

const ofWord = ({ stuff = "none" }: ReadAnswer, { answer }: QuizProblem): string =>
  `You wrote ${stuffWords[stuff] ?? stuff}. The question asks for ${stuffWords[answer.of] ?? answer.of}.`;

const rightWords = ({ unit }: Parts, { slip, unitText }: ReadAnswer, problem: QuizProblem): string =>
  slip !== undefined
    ? `Right. "${unitText}" was read as ${askedUnit(problem)}.`
    : unit === "not given" && problem.answer.noun === undefined && !isBare(problem.answer.unit)
      ? `Right. Write the unit, too, so that nobody has to guess: ${askedUnit(problem)}.`
      : "Right.";

/** Whether a number is the answer to fewer decimals than were asked for: 27 for 26.8. */
const isRoundedShort = ({ number, unit }: ReadAnswer, { answer }: QuizProblem): boolean =>
  number !== undefined &&
  unit !== "another" &&
  number.halfPlace > 0.5 * 10 ** -answer.decimals * (1 + 1e-9) &&
  number.values.some((each) => Math.abs(each - answer.value) <= number.halfPlace * (1 + 1e-9));

/** What to tell a learner. */
export const saidOf = (parts: Parts, read: ReadAnswer, problem: QuizProblem): string => {
  const { answer } = problem;
  if (read.unread !== undefined) return unreadWords[read.unread];
  if (parts.verdict === "unread") return `There is no choice ${read.letter}. The choices are A to D.`;
  if (parts.verdict === "right") return rightWords(parts, read, problem);
  const wrongUnit = parts.unit === "wrong" ? unitWord(parts, read, problem) : undefined;
  const wrongStuff = parts.of === "wrong" ? ofWord(read, problem) : undefined;
  const more = [wrongUnit, wrongStuff].filter((each) => each !== undefined);
  if (parts.number === "right") {
    return ["The number is right.", ...more].filter((_, i) => i > 0 || parts.meant === undefined).join(" ");
  }
  const mistake = problem.mistakes.find((each) => each.mistake === parts.mistake)?.says;
  // A number that is close has its unit and its substance right, or it is wrong altogether.
  if (parts.verdict === "close")
    return isRoundedShort(read, problem)
      ? "Very close, but rounded too far. See how many decimals the question asks for."
      : "Very close. Keep all digits on the way, and round once, at the end.";
  const isNegative = answer.value > 0 && (read.number?.values[0] ?? 0) < 0;
  if (isNegative)
    return [
      "Not yet. The answer is not less than zero. Check the sign, and which figure you subtracted from which.",
      ...more,
    ].join(" ");
  const known = mistake ?? (parts.mistake === undefined ? undefined : mistakes[parts.mistake]);
  const number =
    known === undefined
      ? "Not yet. Write down what is given, with units, and see what the question asks for."
      : `Not yet. ${known}`;
  return [number, ...more].join(" ");
};
