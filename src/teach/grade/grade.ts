import { described } from "../../quantity/house.js";
import { allOf, fail, outOfRange, quantityFrom, toldBy } from "../../quantity/index.js";
import type { NameOfMistake } from "../topics/mistakes.js";
import type { QuizMistake, QuizProblem } from "../topics/quiz-problem.js";
import { quizAt } from "../topics/read-quiz.js";
import { otherUnitsOf, type ReadAnswer, readAnswer } from "./read-answer.js";
import { isStuffAsked } from "./stuff.js";
import { saidOf } from "./words.js";

/** How one part of an answer is: the number, its unit, what it is of. */
export type PartVerdict = "right" | "wrong" | "not given";

/** What came out of reading a learner's answer. */
export interface QuizGrade {
  readonly type: "quiz-grade";
  readonly version: 1;
  /** `"close"` is a number off by what rounding on the way makes; `"unread"` a text without an answer in it. */
  readonly verdict: "right" | "close" | "wrong" | "unread";
  readonly number: PartVerdict;
  readonly unit: PartVerdict;
  readonly of: PartVerdict;
  /** The mistake that leads to the number, where one is known. */
  readonly mistake?: NameOfMistake;
  /** What was read, in the unit of the question. */
  readonly read?: number;
  /** What to tell the learner. It does not give the answer away. */
  readonly says: string;
}

const longestText = 300;

/** How far the number may lie from the answer: as asked, or as fine as the learner's own unit was written, at most 1 percent. */
const reachOf = ({ answer }: QuizProblem, { unit, number, inUnit }: ReadAnswer): number => {
  const own =
    unit === "another" && number !== undefined && inUnit !== undefined && answer.noun === undefined
      ? Math.abs(inUnit(number.halfPlace) - inUnit(0))
      : 0;
  return (
    Math.max(answer.tolerance, Math.min(own, 0.01 * Math.abs(answer.value))) + 1e-9 * Math.abs(answer.value)
  );
};

const near = (value: number, mistake: QuizMistake, { answer }: QuizProblem): boolean =>
  Math.abs(value - mistake.value) <= 0.5 * 10 ** -answer.decimals + 1e-3 * Math.abs(mistake.value);

/** Whether a number is the answer with a decimal less than was asked for: 1.7 for 1.67. */
const isShort = (value: number, { number, unit }: ReadAnswer, { answer }: QuizProblem): boolean =>
  answer.decimals > 0 &&
  number !== undefined &&
  unit !== "another" &&
  Math.abs(number.halfPlace / (5 * 10 ** -answer.decimals) - 1) < 1e-6 &&
  Math.abs(value - answer.value) <= 5 * 10 ** -answer.decimals * (1 + 1e-9);

/** Whether a number is the answer, to the places asked for. */
const isAnswer = (value: number, { answer }: QuizProblem): boolean =>
  Math.abs(value - answer.value) <= answer.tolerance + 1e-9 * Math.abs(answer.value);

/** Whether a number is the answer with its decimal point elsewhere. */
const isShifted = (value: number, problem: QuizProblem): boolean =>
  [0.001, 0.01, 0.1, 10, 100, 1000].some((factor) => isAnswer(value / factor, problem));

/** Mistakes that are a unit left as it was: the unit in which the number is right says more than their names. */
const leftInUnits: readonly NameOfMistake[] = [
  "forgot to convert",
  "acre for 1,000 sq ft",
  "hectare for 100 m²",
  "cubic feet for cubic yards",
  "yards for feet",
];

/** The unit in which a number without a unit, or with the wrong one, would be the answer. */
const unitMeant = (value: number, problem: QuizProblem): string | undefined =>
  otherUnitsOf(problem).find((unit) => {
    const { answer } = problem;
    if (unit === answer.unit) return false;
    const read = { value: answer.value, unit: answer.unit, of: "none" };
    const there = toldBy({ quantity: "problem.answer" }, () => quantityFrom(read)).in(unit as never);
    return Math.abs(value - there) <= 0.005 * Math.abs(there);
  });

type Found = Omit<QuizGrade, "type" | "version" | "says">;

const letterFound = (letter: string, problem: QuizProblem): Found => {
  const choice = problem.choices.find((each) => each.letter === letter);
  const part = choice === undefined ? "not given" : letter === problem.letter ? "right" : "wrong";
  return {
    verdict: choice === undefined ? "unread" : part === "right" ? "right" : "wrong",
    number: part,
    unit: part === "wrong" ? "not given" : part,
    of: part === "wrong" ? "not given" : part,
    ...(choice?.mistake !== undefined && { mistake: choice.mistake }),
  };
};

/** The verdict on a number in the unit of the question. */
const numberFound = (
  value: number,
  read: ReadAnswer,
  problem: QuizProblem,
): Pick<Found, "verdict" | "number" | "mistake"> => {
  const { answer } = problem;
  const off = Math.abs(value - answer.value);
  if (off <= reachOf(problem, read)) return { verdict: "right", number: "right" };
  const slip = problem.mistakes.find((each) => near(value, each, problem));
  if (slip !== undefined) return { verdict: "wrong", number: "wrong", mistake: slip.mistake };
  const place = 10 ** -answer.decimals;
  const size = Math.abs(answer.value);
  // Three places of a small number are no rounding: 17 is not close to 20.
  const rounding = Math.max(place, Math.min(3 * place, 0.05 * size), 0.01 * size);
  if (answer.noun === undefined && (off <= rounding * (1 + 1e-9) || isShort(value, read, problem)))
    return { verdict: "close", number: "wrong" };
  if (isShifted(value, problem))
    return { verdict: "wrong", number: "wrong", mistake: "decimal point one place off" };
  return { verdict: "wrong", number: "wrong" };
};

const found = (read: ReadAnswer, problem: QuizProblem): Found & { readonly meant?: string } => {
  const { answer } = problem;
  const { number, stuff } = read;
  if (number === undefined)
    return { verdict: "unread", number: "not given", unit: "not given", of: "not given" };
  const of = stuff === undefined ? "not given" : isStuffAsked(stuff, answer.of) ? "right" : "wrong";
  // A unit that does not fit: the number is looked at as if the right one stood there.
  const inUnit = read.inUnit ?? ((value: number): number => value);
  const all = number.values.map((value) => ({
    value: inUnit(value),
    ...numberFound(inUnit(value), read, problem),
  }));
  // Of two readings, thousands and decimals, the second counts where it is right; that of a comma only where the question
  // asks for so many decimals. Only in its own unit: 3,700 L are not the 3,700 mL asked for, nor 3.825 g the 3,825 g of 3.825 kg.
  const bothCount = read.unit !== "another" && (number.commaMayBeDecimal !== true || answer.decimals > 2);
  const tried = bothCount ? all : all.slice(0, 1);
  const best = tried.find(({ verdict }) => verdict === "right") ?? (all[0] as (typeof all)[number]);
  const unit = {
    "as asked": "right",
    another: "right",
    "not given": "not given",
    wrong: "wrong",
    "bare ounces": "wrong",
  } as const;
  // beside a unit of the same kind that is not the one asked for: 26.8 oz where it is 26.8 lb
  if (
    best.number === "wrong" &&
    read.unit === "another" &&
    number.values.some((each) => isAnswer(each, problem))
  )
    return { verdict: "wrong", number: "right", unit: "wrong", of, read: best.value };
  const named = problem.mistakes.find(({ mistake }) => mistake === best.mistake);
  const maybeUnit = named === undefined || leftInUnits.includes(named.mistake);
  const meant =
    best.number === "wrong" && read.unit === "not given" && maybeUnit
      ? unitMeant(best.value, problem)
      : undefined;
  if (meant !== undefined)
    return { verdict: "wrong", number: "right", unit: "wrong", of, read: best.value, meant };
  const parts = { number: best.number, unit: unit[read.unit], of } as const;
  const good = best.verdict === "right" || best.verdict === "close";
  const spoiled = good && (parts.unit === "wrong" || of === "wrong");
  return {
    verdict: spoiled ? "wrong" : best.verdict,
    ...parts,
    ...(best.mistake !== undefined && { mistake: best.mistake }),
    read: best.value,
  };
};

/**
 * Reads what a learner wrote and says which part is right: the number, its unit, and what it is of. It names the mistake
 * where the number is one that a known mistake leads to, and does not give the answer away.
 *
 * How it reads: words such as about and it takes are passed over; fractions (`3 1/2`, `½`) and amounts in two units
 * (`3 lb 8 oz`) count; a unit may be left out where the question names one; any unit of the same kind is taken
 * (`57.6 oz` for pounds), but `oz` alone is weight; a comma may stand before decimals where the problem is metric; before three
 * digits it stands between thousands, but where three decimals are asked for. A letter alone is one of the choices.
 *
 * @param problem - as `problem` of `ratewright/teach/problems` makes it, also after JSON
 * @param answer - what the learner wrote, at most 300 characters
 * @throws RatewrightError `type`, `missing`, `range` for anything but a problem or a text; never for what a learner
 *   writes; `duplicate`
 *
 * @example
 * ```ts
 * import { grade } from "ratewright/teach";
 * import { problem } from "ratewright/teach/problems";
 * const asked = problem({ topic: "spray/speed", level: 1, seed: 4, units: "US" });
 * grade(asked, `about ${asked.answer.text}`).verdict; // => "right"
 * grade(asked, asked.letter).verdict; // => "right"
 * grade(asked, `${asked.mistakes[0]?.value} mph`).mistake === asked.mistakes[0]?.mistake; // => true
 * grade(asked, "no idea").verdict; // => "unread"
 * ```
 */
export const grade = (problem: QuizProblem, answer: string): QuizGrade => {
  const { quiz, text } = allOf({
    quiz: () => quizAt(problem, "problem"),
    text: () => {
      if (typeof answer !== "string") return fail("type", "answer", answer, "a text");
      return answer.length <= longestText
        ? answer
        : outOfRange("answer", described(`${answer.length} characters`), {
            max: longestText,
            count: "characters",
          });
    },
  });
  const read = readAnswer(text, quiz);
  const { meant, ...parts }: Found & { readonly meant?: string } =
    read.letter === undefined ? found(read, quiz) : letterFound(read.letter, quiz);
  return {
    type: "quiz-grade",
    version: 1,
    ...parts,
    says: saidOf({ ...parts, ...(meant !== undefined && { meant }) }, read, quiz),
  };
};
