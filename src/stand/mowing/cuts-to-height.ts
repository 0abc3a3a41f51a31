import { allOf, expectFields, expectNumber, fail, type Quantity, quantity } from "../../quantity/index.js";
import { given, type Length, lengthAt, optional } from "../read.js";
import { cutAt } from "./cut-at.js";

/**
 * The cuts that bring grass down that has grown too tall, none taking more than the share of the leaf:
 * `H, H (1 - s), H (1 - s)^2, ...` down to the height of cut. One height of cut for each mowing; let the
 * grass recover some days in between.
 *
 * @param input.standing - `H`, how high the grass stands; where it is not above the cut there are no cuts
 * @param input.cut - height to come down to, more than zero
 * @param input.share - `s`, above 0, below 1; one third where it is left out
 * @returns the heights, in the unit of the standing grass, at most 60
 * @throws RatewrightError `missing`, `range`, also where more than 60 cuts would be needed, `unit/mismatch`,
 * `not-finite`, `type`; all that are found
 * Source: the one-third rule as in `mowAtHeight`, taken again and again.
 *
 * @example
 * ```ts
 * import { cutsToHeight, quantity } from "ratewright";
 * const heights = cutsToHeight({ standing: quantity(9, "in"), cut: quantity(3, "in") });
 * heights.map((height) => Number(height.in("in").toFixed(1))); // => [6, 4, 3]
 * ```
 */
export const cutsToHeight = (input: {
  readonly standing: Length;
  readonly cut: Length;
  readonly share?: number;
}): Length[] => {
  const record = expectFields(input, ["standing", "cut", "share"]);
  const { standing, cut, share } = allOf({
    standing: () => lengthAt(record.standing, "standing"),
    cut: () => cutAt(record.cut),
    share: () => optional(record.share, (value) => expectNumber(value, "share", { above: 0, below: 1 })),
  });
  const low = cut.in(standing.unit as "in");
  // What is left of three thirds is two of them, without the rounding of 1/3.
  const next = (height: number): number => (share === undefined ? (height * 2) / 3 : height * (1 - share));
  const heights: number[] = [];
  let height = standing.value;
  while (height > low * (1 + 1e-9)) {
    if (heights.length === 60) {
      return fail("range", "share", record.share, "a share that gets it down in 60 cuts");
    }
    height = next(height);
    heights.push(height > low * (1 + 1e-9) ? height : low);
  }
  return heights.map((value) => quantity(value, standing.unit as "in"));
};

/**
 * How fast the grass grows, from its height after a mowing and before the next: `r = (H - h) / t`.
 * `mowingInterval` takes it as `growth`.
 *
 * @param input.cut - `h`, height right after mowing
 * @param input.standing - `H`, height `time` later, not less
 * @returns in mm a day for metric heights, else in inches a day
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `type`; all that are found
 * Source: arithmetic.
 *
 * @example
 * ```ts
 * import { mowingInterval, quantity, shootGrowth } from "ratewright";
 * const cut = quantity(3, "in");
 * const growth = shootGrowth({ cut, standing: quantity(4.5, "in"), time: quantity(5, "d") });
 * growth.in("in/d"); // => 0.3
 * mowingInterval({ cut, growth }).in("d"); // => 5
 * ```
 */
export const shootGrowth = (input: {
  readonly cut: Length;
  readonly standing: Length;
  readonly time: Quantity<"time", "none">;
}): Quantity<"length/time", "none"> => {
  const record = expectFields(input, ["cut", "standing", "time"]);
  const { cut, standing, days } = allOf({
    cut: () => cutAt(record.cut),
    standing: () => lengthAt(record.standing, "standing"),
    days: () => given(record.time, "time", "time", "none").in("d"),
  });
  const metric = /m$/.test(cut.unit);
  const grown = metric ? standing.in("mm") - cut.in("mm") : standing.in("in") - cut.in("in");
  if (grown < 0) fail("conflict", "standing", record.standing, "no less than the cut");
  return quantity(grown / days, metric ? "mm/d" : "in/d");
};
