import { type Area, areaIn } from "../areas.js";
import { type Length, lengthsOf } from "../lengths.js";

/**
 * The area of a trapezoid: a four-sided shape with two parallel sides.
 *
 * `A = (a + b) / 2 * height`, with `a` and `b` the two parallel sides and `height` the distance between
 * them, measured square to both. In the square of the unit of `a`. All above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `range`; every length that is
 * not right is reported
 *
 * Source: Grounds Maintenance, "Calculate areas".
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { trapezoidArea } from "ratewright/site";
 * trapezoidArea({ a: quantity(50, "ft"), b: quantity(70, "ft"), height: quantity(30, "ft") }).in("ft2"); // => 1800
 * ```
 */
export const trapezoidArea = (trapezoid: {
  readonly a: Length;
  readonly b: Length;
  readonly height: Length;
}): Area => {
  const { of, units } = lengthsOf(trapezoid, ["a", "b", "height"]);
  return areaIn(((of.a + of.b) * of.height) / 2, units);
};
