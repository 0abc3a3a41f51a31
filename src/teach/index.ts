// The formulas as data for a lesson: the catalogue, and the working line by line.

// derivation: what the working of a formula is made of, and how it is written.
export type {
  Derivation,
  DerivationStep,
  DerivationStepKind,
  DerivationUnits,
  DerivedQuantity,
} from "./derivation/derivation.js";

// topics: what a problem for a learner is; ratewright/teach/problems poses them, from a seed.
export type { NameOfMistake } from "./topics/mistakes.js";
export type { QuizAnswer, QuizChoice, QuizMistake, QuizProblem, Worksheet } from "./topics/quiz-problem.js";
export type { AnswerSubstance, Level, ProblemUnits } from "./topics/topic.js";
