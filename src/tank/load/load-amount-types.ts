import type { Finding, Quantity } from "../../quantity/index.js";
import type { ProductForm } from "../formulation/formulation.js";
import type { RateOf } from "../rate/rate.js";

/** The smallest graduation of a jug or a scale: whole multiples of `step` in `unit`. */
export interface MeasuringIncrement {
  readonly unit: string;
  readonly step: number;
}

/** A product that goes into every load. */
export interface LoadProduct {
  readonly id: string;
  /** What findings call it; the id where it is left out. */
  readonly name?: string;
  readonly rate: RateOf;
  readonly form: ProductForm;
  readonly density?: Quantity<"mass/volume", "none">;
  /** What this product is measured with; wins over the increment for its form. */
  readonly increment?: MeasuringIncrement;
  /** The least of it that can go into one load, such as one whole packet. */
  readonly least?: { readonly value: number; readonly unit: string };
  /** The weakest and the strongest spray that its label names, per volume of spray, and who says so. */
  readonly concentration?: {
    readonly min?: RateOf;
    readonly max?: RateOf;
    readonly source: string;
  };
}

/** A mass or a volume of a product. */
export type ProductAmount = Quantity<"mass", string> | Quantity<"volume", string>;

/** What of a product goes into one load. */
export interface LoadShare {
  readonly number: number;
  /** Where a measuring increment is given, a whole multiple of it. */
  readonly amount: ProductAmount;
  /** The computed amount, before it was rounded to the increment. */
  readonly exact: ProductAmount;
  /** How many steps the amount is, where a measuring increment is given. */
  readonly steps?: number;
}

/** What of a product goes into each load. */
export interface ProductLoads {
  readonly id: string;
  readonly form: ProductForm;
  /** The computed amount for the whole job. */
  readonly total: ProductAmount;
  /** The job in whole measuring increments, where one is given. */
  readonly measured?: {
    readonly unit: string;
    readonly step: number;
    readonly steps: number;
    /** What the measured amounts add up to. */
    readonly total: ProductAmount;
    /** Measured total less computed total. */
    readonly residue: ProductAmount;
  };
  readonly loads: readonly LoadShare[];
}

/** The amounts of every product in every load. */
export interface LoadAmounts {
  readonly type: "load-amounts";
  readonly version: 1;
  readonly products: readonly ProductLoads[];
  readonly findings: readonly Finding[];
}
