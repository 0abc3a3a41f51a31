import { expectNumber, expectQuantity, expectRecord, type Quantity, quantity } from "../quantity/index.js";
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
 * @throws RatewrightError `range`, also where nothing grows and so no time can be given; `unit/mismatch`, `type`
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
  readonly potential?: Quantity<"1", "none">;
  readonly suppression?: Quantity<"1", "none">;
  readonly share?: number;
}): Quantity<"time", "none"> => {
  expectRecord(input, "input");
  const { growth: room, unit } = growthFor(input);
  const wanted = { dimension: "length/time", of: "none", bound: "positive" } as const;
  const perDay = expectQuantity(input.growth, wanted, "growth").in("mm/d");
  const percent = (
    given: unknown,
    path: string,
    bound: "positive" | "non-negative",
    fallback: number,
  ): number =>
    given === undefined
      ? fallback
      : expectQuantity(given, { dimension: "1", of: "none", bound }, path).in("%");
  const potential = checked(percent(input.potential, "potential", "positive", 100), "potential", 100);
  const suppression = percent(input.suppression, "suppression", "non-negative", 0);
  const left = 100 - checked(suppression, "suppression", 99.999);
  const mm = quantity(room, unit as "mm").in("mm");
  return quantity((mm * 1e4) / (perDay * potential * left), "d");
};

const checked = (percent: number, path: string, most: number): number =>
  expectNumber(percent, path, { max: most });
