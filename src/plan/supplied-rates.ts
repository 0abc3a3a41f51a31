import { type Fertilizer, nutrientsSupplied } from "../nutrient/index.js";
import { type Quantity, quantityOf } from "../quantity/index.js";
import { addRates, type NutrientRates } from "./nutrient-rates.js";

type Any = Quantity<string, string>;

/** Product per area, by weight and by volume, as far as either is known. */
export interface AreaRates {
  readonly byMass?: Any;
  readonly byVolume?: Any;
}

/** A rate per area both ways, where the density is known; a dry product has no volume. */
export const areaRatesOf = (
  rate: Any | undefined,
  density: Quantity<"mass/volume", "none"> | undefined,
): AreaRates => {
  if (rate === undefined) return {};
  if (rate.dimension === "mass/area") {
    return density === undefined
      ? { byMass: rate }
      : { byMass: rate, byVolume: (rate as Quantity<"mass/area", "product">).per(density) as unknown as Any };
  }
  return density === undefined
    ? { byVolume: rate }
    : {
        byVolume: rate,
        byMass: (rate as Quantity<"volume/area", "product">).times(density) as unknown as Any,
      };
};

/**
 * What a rate of product supplies per area: its nutrients by the analysis, and what else it is stated to
 * hold. `undefined` where nothing is stated of what it holds, or where it cannot be weighed.
 */
export const suppliedRates = (
  label: {
    readonly fertilizer?: Fertilizer | undefined;
    /** Each of `.../product`. */
    readonly contents?: readonly Any[] | undefined;
  },
  rates: AreaRates,
): NutrientRates | undefined => {
  const { fertilizer, contents = [] } = label;
  if (fertilizer === undefined && contents.length === 0) return undefined;
  const parts: NutrientRates[] = [];
  if (fertilizer !== undefined) {
    if (rates.byMass === undefined) return undefined;
    const { value, unit } = rates.byMass;
    const mass = quantityOf(value, unit, `product:${fertilizer.id}`, "rate");
    parts.push(
      nutrientsSupplied(mass as Quantity<"mass/area", `product:${string}`>, fertilizer) as NutrientRates,
    );
  }
  for (const share of contents) {
    const rate = share.dimension === "mass/mass" ? rates.byMass : rates.byVolume;
    if (rate === undefined) return undefined;
    const product = quantityOf(rate.value, rate.unit, "product", "rate") as Quantity<"mass/area", "product">;
    const held = product.times(
      share as unknown as Quantity<"mass/mass", "ai/product">,
    ) as unknown as Quantity<"mass/area", string>;
    parts.push({ [held.of]: held });
  }
  return addRates(parts);
};
