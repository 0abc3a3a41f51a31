import { type Fertilizer, nutrientsSupplied } from "../../nutrient/index.js";
import { ofKind, perOf, Quantity, quantityOf, timesOf } from "../../quantity/index.js";
import { addRates, mostUnchecked, type NutrientRates, type Wanted } from "./nutrient-rates.js";

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
    return density === undefined ? { byMass: rate } : { byMass: rate, byVolume: perOf(rate, density) };
  }
  return density === undefined
    ? { byVolume: rate }
    : {
        byVolume: rate,
        byMass: timesOf(rate, density),
      };
};

/** What 100 units of a product supply, by product and unit: found once for many rates of it. */
export type Shares = Map<Fertilizer, Map<string, NutrientRates>>;

const sharesOf = (fertilizer: Fertilizer, unit: string, shares: Shares): NutrientRates => {
  let byUnit = shares.get(fertilizer);
  if (byUnit === undefined) {
    byUnit = new Map();
    shares.set(fertilizer, byUnit);
  }
  const known = byUnit.get(unit);
  if (known !== undefined) return known;
  const hundred = quantityOf(100, unit, `product:${fertilizer.id}`, "rate");
  const found = nutrientsSupplied(
    hundred as Quantity<"mass/area", `product:${string}`>,
    fertilizer,
  ) as NutrientRates;
  byUnit.set(unit, found);
  return found;
};

/** Supplies are proportional to the rate: `rate * share / 100`, as in `nutrientsSupplied`. */
const atRate = ({ value, unit }: Any, shares: NutrientRates, telling?: Wanted): NutrientRates => {
  const rates: Record<string, Quantity<"mass/area", string>> = {};
  const asked = value > mostUnchecked ? undefined : telling;
  for (const of in shares) {
    if (asked?.has(of) === false) continue;
    const percent = (shares[of] as Any).value;
    rates[of] = new Quantity((value * percent) / 100, unit, of, "mass/area");
  }
  return rates;
};

/**
 * What a rate of product supplies per area: its nutrients by the analysis, and what else it is stated to
 * hold. `undefined` where nothing is stated of what it holds, or where it cannot be weighed.
 *
 * @param telling - no nutrient but these, where only they are asked for
 */
export const suppliedRates = (
  label: {
    readonly fertilizer?: Fertilizer | undefined;
    /** Each of `.../product`. */
    readonly contents?: readonly Any[] | undefined;
  },
  rates: AreaRates,
  shares: Shares = new Map(),
  telling?: Wanted,
): NutrientRates | undefined => {
  const { fertilizer, contents = [] } = label;
  if (fertilizer === undefined && contents.length === 0) return undefined;
  const parts: NutrientRates[] = [];
  if (fertilizer !== undefined) {
    if (rates.byMass === undefined) return undefined;
    parts.push(atRate(rates.byMass, sharesOf(fertilizer, rates.byMass.unit, shares), telling));
  }
  for (const share of contents) {
    const rate = share.dimension === "mass/mass" ? rates.byMass : rates.byVolume;
    if (rate === undefined) return undefined;
    const product = quantityOf(rate.value, rate.unit, "product", "rate");
    const held = ofKind<"mass/area", string>(timesOf(product, share));
    parts.push({ [held.of]: held });
  }
  return addRates(parts);
};
