import { allOf, expectFields, type Quantity, quantity } from "../../quantity/index.js";
import { given, percentAt, type Share } from "../read.js";
import { growthFor } from "./mowing-height.js";

/**
 * The longest time between two mowings by the one-third rule, `d = G / (r g (1 - p))`: the growth that
 * the rule leaves, `G` (see {@link growthBetweenMowings}), by what grows in a day.
 *
 * @param input.cut - height of cut, more than zero
 * @param input.growth - `r`, how fast the grass grows at its best, length per time, more than zero
 * @param input.potential - `g`, growth potential, as `growthPotential` gives it; 100 % where it is left out
 * @param input.suppression - `p`, by how much a growth regulator slows it, as its source states it in
 * clippings (which are not height: an estimate); none where it is left out. Below 100 %
 * @param input.share - the share of the leaf; one third where it is left out
 * @returns days
 * @throws RatewrightError `range`, also where nothing grows and so no time can be given; `unit/mismatch`,
 * `substance/mismatch`, `not-finite`, `type`; all that are found
 * Source: the one-third rule as in {@link mowAtHeight}, divided by the rate of growth.
 *
 * @example
 * ```ts
 * import { mowingInterval, quantity } from "ratewright";
 * const growth = quantity(0.3, "in/d");
 * mowingInterval({ cut: quantity(3, "in"), growth }).in("d"); // => 5
 * mowingInterval({ cut: quantity(3, "in"), growth, suppression: quantity(25, "%") })
 *   .in("d"); // => 6.666666666666667
 * ```
 */
export const mowingInterval = (input: {
  readonly cut: Quantity<"length", "none">;
  readonly growth: Quantity<"length/time", "none">;
  readonly potential?: Share;
  readonly suppression?: Share;
  readonly share?: number;
}): Quantity<"time", "none"> => {
  const record = expectFields(input, ["cut", "growth", "potential", "suppression", "share"]);
  const { most, rate, potential, suppression } = allOf({
    most: () => growthFor(record),
    rate: () => given(record.growth, "growth", "length/time", "none").in("mm/d"),
    potential: () => percentAt(record.potential, "potential", { above: 0, max: 100 }, 100),
    suppression: () => percentAt(record.suppression, "suppression", { min: 0, below: 100, share: 1 }, 0),
  });
  const mm = quantity(most.growth, most.cut.unit as "mm").in("mm");
  return quantity((mm * 1e4) / (rate * potential * (100 - suppression)), "d");
};
