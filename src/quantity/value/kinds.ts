import type { NeutralSubstance } from "../substance/substances.js";
import type { PerDimension } from "../unit/dimensions.js";

/** What may be added to a quantity: a difference to a temperature, the same kind to all else. */
export type Addend<D extends string> = D extends "temperature" ? "temperature difference" : D;

/** The kind of a quotient: the same stuff divided by itself is a pure number; different stuff by weight or by volume is a share of one in the other. */
export type PerKind<D extends string, S extends string, D2 extends string, S2 extends string> = [
  D,
  S,
] extends [D2, S2]
  ? [D2, S2] extends [D, S]
    ? "1"
    : PerDimension<D, D2>
  : [S, S2] extends [NeutralSubstance, NeutralSubstance]
    ? D extends D2
      ? "1"
      : PerDimension<D, D2>
    : PerDimension<D, D2>;

/** What the arithmetic takes of a quantity: kinds are invariant to the compiler, and checked as it runs. */
export interface Plain {
  readonly value: number;
  readonly unit: string;
  readonly of: string;
  readonly dimension: string;
}
