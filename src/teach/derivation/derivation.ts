import type { Quantity } from "../../quantity/index.js";

/** A quantity of any kind, as a step of a derivation names it. */
export type DerivedQuantity = Quantity<string, string>;

/** The units of a derivation: US customary or metric. */
export type DerivationUnits = "US" | "metric";

/**
 * What a step does:
 *
 * - `"given"`: names an input, with its symbol
 * - `"equation"`: the equation, in symbols
 * - `"crossing"`: one unit into another
 * - `"substitution"`: the equation with the numbers in it
 * - `"result"`: what the equation comes to, in the units of the equation
 * - `"rounding"`: the result as it is written down, and how it was rounded
 */
export type DerivationStepKind = "given" | "equation" | "crossing" | "substitution" | "result" | "rounding";

/** One line of the working. */
export interface DerivationStep {
  readonly kind: DerivationStepKind;
  /** The line as it is written: `0.9 lb N/1,000 ft² × 43.56 = 39.204 lb N/acre`. */
  readonly text: string;
  /** The equation of an `"equation"` step as TeX. */
  readonly tex?: string;
  /** The quantities that the line names, in the order in which it does, not rounded. */
  readonly quantities: readonly DerivedQuantity[];
  /** Which part of a chain or of a work order the line belongs to. */
  readonly part?: string;
}

/** The working of one formula, of a chain of them, or of a sheet: line by line. */
export interface Derivation {
  readonly type: "derivation";
  readonly version: 1;
  readonly title: string;
  readonly units: DerivationUnits;
  readonly steps: readonly DerivationStep[];
  /** What the formula gives, not rounded, in the unit of the result. */
  readonly exact: DerivedQuantity;
  /** The result as the last line writes it. */
  readonly result: DerivedQuantity;
}
