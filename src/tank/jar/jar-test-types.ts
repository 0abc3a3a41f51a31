import type { Finding, Quantity } from "../../quantity/index.js";
import type { TankCaution } from "../cautions.js";
import type { Formulation, ProductForm } from "../formulation/formulation.js";
import type { MixProduct } from "../partners/mix-product.js";
import type { RateOf } from "../rate/rate.js";
import type { JarReading, JarSign } from "./jar-facts.js";

/** A product of a jar test. */
export interface JarProduct
  extends Pick<MixProduct, "addBefore" | "addAfter" | "labelNote" | "contains" | "groups"> {
  readonly id: string;
  readonly name?: string;
  readonly formulation: Formulation;
  /** Rate per area or per volume of spray. */
  readonly rate: RateOf;
  /** Weighed or poured; what its kind is by itself where left out. */
  readonly form?: ProductForm;
  /** Mass per volume; needed where the rate is not in the measure of the form. */
  readonly density?: Quantity<"mass/volume", "none">;
}

/** What goes into the jar of one product. */
export interface JarAmount {
  readonly id: string;
  readonly formulation: Formulation;
  /** In grams where it is weighed, in milliliters where it is poured. */
  readonly amount: Quantity<"mass", string> | Quantity<"volume", string>;
}

/** One step of a jar test. */
export interface JarStep {
  readonly number: number;
  readonly text: string;
  readonly minutes?: number;
}

/** A jar test: amounts, steps, how to read it and what it cannot show. */
export interface JarTest {
  readonly type: "jar-test";
  readonly version: 1;
  /** Finished spray that the jar stands for. */
  readonly jar: Quantity<"volume", "spray">;
  /** In the order in which they go in. */
  readonly amounts: readonly JarAmount[];
  readonly steps: readonly JarStep[];
  readonly failures: readonly JarSign[];
  readonly cannotShow: readonly string[];
  readonly readings: readonly JarReading[];
  /** What there is to say of the mix and its order: the jar is filled in it. */
  readonly findings: readonly Finding[];
  readonly cautions: readonly TankCaution[];
  readonly source: string;
}
