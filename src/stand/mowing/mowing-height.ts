import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectNumber,
  likeQuantity,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Length, lengthAt, optional } from "../read.js";
import { cutAt } from "./cut-at.js";

/** A height of cut, and the growth that the rule leaves between two mowings, in the unit of the height. */
export interface CutAndGrowth {
  readonly cut: Length;
  readonly growth: number;
}

/** Reads a height of cut and a share out of a record whose fields are known already. */
export const growthFor = (record: { readonly cut?: unknown; readonly share?: unknown }): CutAndGrowth => {
  const { cut, share } = allOf({
    cut: () => cutAt(record.cut),
    share: () => optional(record.share, (value) => expectNumber(value, "share", { above: 0, below: 1 })),
  });
  // A share of one third is half the height, without the rounding of 1/3.
  return { cut, growth: share === undefined ? cut.value / 2 : (cut.value * share) / (1 - share) };
};

/**
 * The height at which to mow so that no more than a third of the leaf comes off:
 * `H = h / (1 - s)`, with `h` the height of cut and `s` the share, one third: `H = 1.5 h`.
 *
 * A misprint to beware of: grass that has grown a third ABOVE its height of cut loses only a quarter.
 *
 * @param input.cut - `h`, height of cut, more than zero
 * @param input.share - `s`, between 0 and 1; one third where it is left out
 * @throws RatewrightError `range`, `unit/mismatch`, `not-finite`, `type`
 * Source: Iowa State University Extension, "How often should I mow my lawn?" (3 in: 4 1/2 in).
 *
 * @example
 * ```ts
 * import { mowAtHeight, quantity } from "ratewright";
 * mowAtHeight({ cut: quantity(3, "in") }).in("in"); // => 4.5
 * ```
 */
export const mowAtHeight = (input: { readonly cut: Length; readonly share?: number }): Length => {
  const { cut, growth } = growthFor(expectFields(input, ["cut", "share"]));
  return likeQuantity(cut, cut.value + growth);
};

/**
 * How much the grass may grow between two mowings by the one-third rule, `G = h s / (1 - s)`: half the
 * height of cut. Low cuts have to be mown more often: at twice the height there is twice the time.
 *
 * @param input.cut - `h`, height of cut, more than zero
 * @param input.share - `s`, between 0 and 1; one third where it is left out
 * @throws RatewrightError `range`, `unit/mismatch`, `not-finite`, `type`
 * Source: Cornell University, "The one-third rule" (1 1/2 in: 3/4 in; 3 in: 1 1/2 in).
 *
 * @example
 * ```ts
 * import { growthBetweenMowings, quantity } from "ratewright";
 * growthBetweenMowings({ cut: quantity(1.5, "in") }).in("in"); // => 0.75
 * ```
 */
export const growthBetweenMowings = (input: { readonly cut: Length; readonly share?: number }): Length => {
  const { cut, growth } = growthFor(expectFields(input, ["cut", "share"]));
  return likeQuantity(cut, growth);
};

/**
 * The share of the leaf that a mowing takes, `s = (H - h) / H`.
 *
 * @param input.standing - `H`, how high the grass stands; not less than the height of cut
 * @param input.cut - `h`, height of cut, more than zero
 * @returns percent
 * @throws RatewrightError `range` where the grass is lower than the cut; `unit/mismatch`, `type`
 *
 * Source: definition.
 *
 * @example
 * ```ts
 * import { leafRemoved, quantity } from "ratewright";
 * leafRemoved({ standing: quantity(4, "in"), cut: quantity(3, "in") }).in("%"); // => 25
 * ```
 */
export const leafRemoved = (input: {
  readonly standing: Length;
  readonly cut: Length;
}): Quantity<"1", "none"> => {
  const record = expectFields(input, ["standing", "cut"]);
  const { standing: tall, cut: low } = allOf({
    standing: () => lengthAt(record.standing, "standing"),
    cut: () => lengthAt(record.cut, "cut"),
  });
  const standing = tall.value;
  const cut = low.in(tall.unit as "in");
  // 7.62 cm and 3 in are one height, whatever the last digit says
  if (exceeds(cut, standing))
    outOfRange("standing", tall, { min: low.value, unit: low.unit }, "{}, which is the cut");
  return quantity((100 * Math.max(0, standing - cut)) / standing, "%");
};
