import { type Area, areaIn } from "../areas.js";
import { type Length, lengthsOf } from "../lengths.js";

/**
 * The area of a rectangle.
 *
 * `A = length * width`, in the square of the unit of `length` (ft gives ft2, yd gives yd2, m gives m2).
 * Both sides above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `range`; every side that is
 * not right is reported
 *
 * Source: Grounds Maintenance, "Calculate areas".
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { rectangleArea } from "ratewright/site";
 * rectangleArea({ length: quantity(90, "ft"), width: quantity(50, "ft") }).in("ft2"); // => 4500
 * rectangleArea({ length: quantity(100, "yd"), width: quantity(180, "ft") }).in("yd2"); // => 6000
 * ```
 */
export const rectangleArea = (sides: { readonly length: Length; readonly width: Length }): Area => {
  const { of, units } = lengthsOf(sides, ["length", "width"]);
  return areaIn(of.length * of.width, units);
};
