import type { DerivedQuantity } from "../derivation/derivation.js";
import type { FormulaSpec } from "../entry/formula.js";
import type { NameOfMistake } from "./mistakes.js";

/** How hard a problem is: 1 one step, 2 a step more or a change of units, 3 the whole chain. */
export type Level = 1 | 2 | 3;

/** Whose units a problem is told in. */
export type ProblemUnits = "US" | "metric";

/** Where a topic takes its figures from: whole numbers, steps, and picks from a list, each as likely as the next. */
export interface Draw {
  /** A whole number from `low` to `high`, both included. */
  int(low: number, high: number): number;
  /** A number from `low` to `high` in steps of `step`, such as 0.5 to 1 in steps of 0.1. */
  step(low: number, high: number, step: number): number;
  pick<T>(list: readonly T[]): T;
}

/** What an answer is of, as a learner names it; `"none"` where there is nothing to name. */
export type AnswerSubstance =
  | "none"
  | "product"
  | "N"
  | "P2O5"
  | "P"
  | "K2O"
  | "K"
  | "ai"
  | "spray"
  | "water"
  | "seed"
  | "pure live seed";

/** What a problem asks for. */
export interface Ask {
  readonly question: string;
  readonly unit: string;
  readonly of: AnswerSubstance;
  /** Decimals of the answer. */
  readonly decimals: number;
  /** The word for what is counted, where the answer is a whole number of things: `["bag", "bags"]`. */
  readonly noun?: readonly [one: string, many: string];
  /** How much a constant that a problem or a book prints may shift the answer, as a share of it: π as 3.14 is 0.0006. */
  readonly slack?: number;
}

/** A step of a working: a formula with its inputs, or an amount that is told in another unit. */
export type WorkingStep =
  | {
      readonly spec: FormulaSpec;
      readonly inputs: Readonly<Record<string, unknown>>;
      /** The unit of the result, where it is not the usual one. */
      readonly unit: string | undefined;
      /** Whether the numbers stand in the equation without their units. */
      readonly bare?: boolean;
    }
  | {
      readonly spec?: undefined;
      readonly title: string;
      readonly from: DerivedQuantity;
      readonly unit: string;
    };

/** What somebody gets who makes a mistake, in the unit of the question. */
export interface PosedMistake {
  readonly mistake: NameOfMistake;
  readonly value: number;
}

/** A problem as a topic poses it, before it gets its choices. */
export interface Posed {
  readonly text: string;
  readonly ask: Ask;
  /** The exact answer in the unit of the question, from the functions of the library. */
  readonly answer: number;
  /** What answers it, step by step. */
  readonly working: readonly WorkingStep[];
  readonly mistakes: readonly PosedMistake[];
  /** What the answer has to lie within to be a figure of the trade; figures are drawn again where it does not. */
  readonly within?: readonly [low: number, high: number];
}

/** What a topic is told. */
export interface PoseInput {
  readonly draw: Draw;
  readonly level: Level;
  readonly units: ProblemUnits;
  /** Whether the units are US customary: the same as `units`, shorter to ask. */
  readonly us: boolean;
}

/** A kind of problem. */
export interface Topic {
  /** Room and subject: `nutrient/product-rate`. */
  readonly id: string;
  readonly title: string;
  readonly levels: readonly Level[];
  readonly pose: (input: PoseInput) => Posed;
}
