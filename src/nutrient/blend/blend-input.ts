import type { Quantity } from "../../quantity/index.js";
import type { Nutrient } from "../label/analysis.js";
import type { Fertilizer } from "../label/fertilizer.js";

/** A salt index by weight, sodium nitrate = 100: the scale that adds up by weight. */
export interface SaltIndexByWeight {
  readonly scale: "by weight";
  readonly value: number;
}

/** A material on offer for a blend. */
export interface BlendMaterial<C extends string> {
  readonly product: Fertilizer;
  readonly price: Quantity<`money:${C}/mass`, "none">;
  /** The most that may go into the batch: what is in stock. */
  readonly most?: Quantity<"mass", "none">;
  /** The least that has to go into the batch. */
  readonly least?: Quantity<"mass", "none">;
  /** Needed where the salt index is limited. */
  readonly saltIndex?: SaltIndexByWeight;
  /** Needed where the acidity is limited: CaCO3 that one product uses up, negative for a basic one. */
  readonly acidity?: Quantity<"mass/mass", "CaCO3 equivalent/product">;
}

/** The least and most of one nutrient in the batch: `{ least: quantity(20, "% w/w", "N/product") }`. */
export type BlendNutrientLimit = {
  readonly [S in Nutrient]: {
    readonly least?: Quantity<"mass/mass", `${S}/product`>;
    readonly most?: Quantity<"mass/mass", `${S}/product`>;
  };
}[Nutrient];

/** What a blend has to keep to. */
export interface BlendLimits {
  readonly nutrients?: readonly BlendNutrientLimit[];
  /** Slow nitrogen, percent of the NITROGEN. */
  readonly leastSlowShare?: Quantity<"mass/mass", "N:slow/N">;
  readonly mostSlowShare?: Quantity<"mass/mass", "N:slow/N">;
  readonly mostSaltIndex?: SaltIndexByWeight;
  readonly leastAcidity?: Quantity<"mass/mass", "CaCO3 equivalent/product">;
  readonly mostAcidity?: Quantity<"mass/mass", "CaCO3 equivalent/product">;
}

/** What {@link leastCostBlend} is told. */
export interface LeastCostBlendInput<C extends string> {
  readonly batch: Quantity<"mass", "none">;
  readonly materials: readonly BlendMaterial<C>[];
  /** The price of inert filler; without it the materials have to make up the whole batch. */
  readonly filler?: Quantity<`money:${NoInfer<C>}/mass`, "none">;
  readonly limits: BlendLimits;
}
