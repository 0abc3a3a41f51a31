import type { Formulation } from "../formulation/formulation.js";
import type { ProductSubstance } from "../rate/rate.js";
import type { MixIngredient } from "./mix-rules.js";

/** A product that goes into the tank. */
export interface MixProduct {
  readonly id: string;
  readonly name?: string;
  readonly formulation: Formulation;
  /** What goes into this load; repeated in the step. */
  readonly amount?: MixAmount;
  /** Ids of products that the label of this one puts after it. */
  readonly addBefore?: readonly string[];
  /** Ids of products that the label of this one puts before it. */
  readonly addAfter?: readonly string[];
  /** What the label says about mixing; repeated in the step. */
  readonly labelNote?: string;
  /** Used at so small an amount that it is stirred into water first. */
  readonly lowRate?: boolean;
  /** What it contains of the things that published mixing rules speak of. */
  readonly contains?: readonly MixIngredient[];
  /** Groups of its active ingredients, such as `"ALS"` or `"anticholinesterase"`. */
  readonly groups?: readonly string[];
  /** Products (ids) or groups that its label says not to mix it with. */
  readonly labelProhibits?: readonly string[];
  /** Ids of products that its label names as mixing partners. */
  readonly labelNames?: readonly string[];
}

/** A mass or volume of product, as a quantity or what JSON left of one. */
export interface MixAmount {
  readonly value: number;
  readonly unit: string;
  readonly of: ProductSubstance | (string & {});
  readonly dimension?: "mass" | "volume";
}

/** Finished spray of one load, as a quantity or what JSON left of one. */
export interface LoadVolume {
  readonly value: number;
  readonly unit: string;
  readonly of: "spray";
}
