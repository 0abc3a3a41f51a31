// Compiled as calculation.mts and as calculation.cts, against the packed types.
import {
  type Dimension,
  fertilizer,
  productRate,
  type Quantity,
  quantity,
  type Unit,
  unitsOf,
} from "ratewright";
import type { Quantity as SameQuantity } from "ratewright/quantity";

const target = quantity(0.9, "lb/1000 ft2", "N");
const feed = fertilizer({
  id: "feed-a",
  analysis: "24-0-11",
  slowNitrogen: quantity(12, "% w/w", "N:slow/product"),
  package: quantity(50, "lb"),
});

const productOnTurf = productRate(target, feed);
export const rate: number = productOnTurf.in("lb/1000 ft2");

const area: Quantity<"area", "none"> = quantity(12_400, "ft2");
const same: SameQuantity<"area", "none"> = area;
const need: number = productOnTurf.times(same).in("lb");
if (!(Math.abs(need - 46.5) < 1e-9)) throw new Error(String(need));

/** A helper of an app, which knows neither the dimension nor the substance. */
const inEveryUnit = <D extends Dimension, S extends string>(amount: Quantity<D, S>): readonly number[] =>
  unitsOf(amount.dimension).map(({ unit }) => amount.in(unit));
if (inEveryUnit(target)[0] !== 0.9) throw new Error(String(inEveryUnit(target)));

export const refused = (volumePerArea: Unit<"volume/area">): void => {
  // @ts-expect-error a unit out of a select box for another dimension
  target.in(volumePerArea);
  // @ts-expect-error a volume of nitrogen is not a mass of it
  productRate(quantity(0.9, "fl oz/1000 ft2", "N"), feed);
  // @ts-expect-error an ounce by weight is not a fluid ounce
  quantity(1, "oz").plus(quantity(1, "fl oz"));
  // @ts-expect-error phosphorus is not phosphate
  quantity(1, "lb", "P").plus(quantity(1, "lb", "P2O5"));
  // @ts-expect-error not a unit for a weight, such as lb or kg per area
  productOnTurf.in("gal/acre");
};
