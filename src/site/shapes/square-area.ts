import { type Area, areaIn } from "../areas.js";
import { type Length, lengthsOf } from "../lengths.js";

/**
 * The area of a square.
 *
 * `A = side^2`, in the square of the unit of `side`, which is above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `range`
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { squareArea } from "ratewright/site";
 * squareArea({ side: quantity(120, "ft") }).in("ft2"); // => 14400
 * ```
 */
export const squareArea = (square: { readonly side: Length }): Area => {
  const { of, units } = lengthsOf(square, ["side"]);
  return areaIn(of.side * of.side, units);
};

/**
 * The area of a parallelogram: a four-sided shape with opposite sides parallel.
 *
 * `A = base * height`, with `height` measured square to `base`, not along the slanting side. In the square of
 * the unit of `base`. Both above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `range`; both are reported
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { parallelogramArea } from "ratewright/site";
 * parallelogramArea({ base: quantity(80, "ft"), height: quantity(35, "ft") }).in("ft2"); // => 2800
 * ```
 */
export const parallelogramArea = (shape: { readonly base: Length; readonly height: Length }): Area => {
  const { of, units } = lengthsOf(shape, ["base", "height"]);
  return areaIn(of.base * of.height, units);
};
