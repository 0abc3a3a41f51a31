import type { Citation, DimensionOf, Quantity } from "../../quantity/index.js";

/** Units of a variable: US customary, metric. */
type UnitPair = readonly [US: string, metric: string];

/**
 * An input, written short: name, symbol, what it is, of what substance, the usual units, the sensible range in the usual
 * US unit, the units of the equation where they are others than the usual ones, and what the number is for each of, where
 * the unit does not say it: a share of the tank in a minute is `%`, for each `min`.
 */
export type InputSpec = readonly [
  name: string,
  symbol: string,
  label: string,
  of: string,
  units: UnitPair,
  sensible: readonly [min: number, max: number],
  equationUnits?: UnitPair,
  per?: string,
];

/** The output, written short: symbol, what it is, of what substance, the usual units, those of the equation. */
export type OutputSpec = readonly [
  symbol: string,
  label: string,
  of: string,
  units: UnitPair,
  equationUnits?: UnitPair,
];

/** What a formula gives: a quantity, or a bare number. */
export type FormulaResult =
  | number
  | { readonly value: number; readonly unit: string; readonly of: string; readonly dimension: string };

/**
 * What an equation rests on: what its terms mean, plane and solid geometry, arithmetic on what is printed, a source that
 * prints it; or nothing that was read.
 */
export type EquationBasis =
  | "definition"
  | "geometry"
  | "derived"
  | "published"
  | "common practice, no source"
  | "from memory";

/** A formula of the library, written short. */
export interface FormulaSpec {
  readonly id: string;
  /** The exported function. */
  readonly name: string;
  readonly title: string;
  readonly inputs: readonly InputSpec[];
  readonly output: OutputSpec;
  readonly equation: string;
  /** The symbols of the units of numbers in the equation that are amounts: `{ 43560: "ft²" }`. */
  readonly constantUnits?: Readonly<Record<number, string>>;
  /** The exported function on the inputs; what they are is known to {@link formula}, and read by who calls it. */
  readonly run: (given: never) => FormulaResult;
  readonly traps: readonly string[];
  readonly basis: EquationBasis;
  readonly sources: readonly Citation[];
}

/** The inputs by name, as the function takes them. */
type GivenOf<V extends readonly InputSpec[]> = {
  readonly [I in V[number] as I[0]]: Quantity<DimensionOf<I[4][0]>, I[3]>;
};

/** A formula, with its inputs typed by their units and substances, so that what runs is what the rooms export. */
export const formula = <const V extends readonly InputSpec[]>(
  spec: Omit<FormulaSpec, "inputs" | "run"> & {
    readonly inputs: V;
    readonly run: (given: GivenOf<V>) => FormulaResult;
  },
): FormulaSpec => spec;
