import type { NameOfMistake } from "./mistakes.js";
import type { AnswerSubstance, Level, ProblemUnits } from "./topic.js";

/** The answer to a problem: a plain record, which `quantityFrom` reads where it is of a unit. */
export interface QuizAnswer {
  /** The exact value, not rounded. */
  readonly value: number;
  /** The unit that the question asks for; `"count"` for a whole number of things. */
  readonly unit: string;
  readonly of: AnswerSubstance;
  /** Decimals that the question asks for. */
  readonly decimals: number;
  /**
   * Half of the last place asked for, in the unit, and what a printed constant such as 3.14 shifts; a whole number of things
   * has to be right.
   */
  readonly tolerance: number;
  /** As the key prints it: `3.75 lb per 1,000 sq ft`. */
  readonly text: string;
  /** The word for what is counted, where the answer is a whole number of things. */
  readonly noun?: readonly [one: string, many: string];
}

/** A wrong answer that a named mistake leads to. */
export interface QuizMistake {
  readonly mistake: NameOfMistake;
  /** In the unit of the answer. */
  readonly value: number;
  readonly text: string;
  /** What to tell the learner who made it; where others lead to the same answer, what each of them is, with `Or:` between. */
  readonly says: string;
  /** Other mistakes that lead to the same answer, if any. */
  readonly also?: readonly NameOfMistake[];
}

/** One of the four answers to choose from. */
export interface QuizChoice {
  readonly letter: string;
  readonly text: string;
  /** The mistake that leads to it; left out for the right answer. */
  readonly mistake?: NameOfMistake;
}

/** A problem with its key. */
export interface QuizProblem {
  readonly type: "quiz-problem";
  readonly version: 1;
  readonly topic: string;
  readonly title: string;
  readonly level: Level;
  readonly seed: number;
  readonly units: ProblemUnits;
  /** What is told and asked, and how to write the answer. */
  readonly text: string;
  readonly answer: QuizAnswer;
  /** The working, one line a step. */
  readonly steps: readonly string[];
  readonly choices: readonly QuizChoice[];
  /** The letter of the right choice. */
  readonly letter: string;
  /** Every mistake that gives an answer of its own, those among the choices first. */
  readonly mistakes: readonly QuizMistake[];
}

/** Problems for one sheet. */
export interface Worksheet {
  readonly type: "worksheet";
  readonly version: 1;
  readonly seed: number;
  readonly units: ProblemUnits;
  readonly problems: readonly QuizProblem[];
}
