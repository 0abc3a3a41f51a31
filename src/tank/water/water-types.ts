import type { Finding, Quantity } from "../../quantity/index.js";
import type { MixIngredient } from "../partners/mix-rules.js";
import type { RateOf } from "../rate/rate.js";
import type { AmmoniumSulfateMinimum, AmmoniumSulfateRate, WaterIons } from "./ammonium-sulfate.js";
import type { HardnessSchemeId } from "./hardness.js";
import type { AlkalineHydrolysis } from "./hydrolysis.js";
import type { InWater } from "./in-water.js";

/** A test of the water that goes into the tank; what is left out was not tested. */
export interface WaterTest extends WaterIons {
  readonly pH?: number;
  readonly hardness?: InWater<"hardness as CaCO3">;
  readonly HCO3?: InWater<"HCO3">;
}

/** A product of the mix, as far as water matters to it. */
export interface WaterProduct {
  readonly id: string;
  readonly name?: string;
  /** ISO common name of its active ingredient. */
  readonly active?: string;
  readonly contains?: readonly MixIngredient[];
  /** pH of the spray that its label asks for. */
  readonly labelPH?: { readonly min?: number; readonly max?: number };
}

/** What `waterReport` takes. */
export interface WaterReportInput {
  readonly test: WaterTest;
  readonly products?: readonly WaterProduct[];
  /** From mixing until the tank is empty. */
  readonly timeToEmpty?: Quantity<"time", "none">;
  /** Ammonium sulfate in the mix, per volume of spray. */
  readonly ammoniumSulfate?: RateOf;
}

/** What a water test means for a mix. */
export interface WaterReport {
  readonly type: "water-report";
  readonly version: 1;
  readonly hardness?: Quantity<"mass/volume", "hardness as CaCO3">;
  readonly classes?: Readonly<Record<HardnessSchemeId, string>>;
  /** By the cations tested; left out where the hardness says more than they do. */
  readonly ammoniumSulfate?: AmmoniumSulfateMinimum;
  /**
   * Where the hardness is known, and calcium and magnesium are not both: all of it magnesium, all of it
   * calcium, with the potassium, sodium and iron that were tested on top.
   */
  readonly ammoniumSulfateFromHardness?: {
    readonly min: AmmoniumSulfateRate;
    readonly max: AmmoniumSulfateRate;
  };
  readonly hydrolysis: readonly (AlkalineHydrolysis & { readonly product: string })[];
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}
