import { type Area, areaIn } from "../areas.js";
import { type Length, lengthsOf } from "../lengths.js";

/**
 * The area of an ellipse, for oval greens and beds.
 *
 * `A = pi / 4 * length * width`, with the full axes: the longest line through the middle and the one
 * square to it. In the square of the unit of `length`. Both above zero.
 *
 * Sources disagree: a rule of the trade writes `0.8 * length * width`, which is 1.86 % more for every
 * ellipse. This function takes pi / 4.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `range`; every length that is
 * not right is reported
 *
 * Source: plane geometry; the rule with 0.8 in Grounds Maintenance, "Calculate areas".
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { ellipseArea } from "ratewright/site";
 * const oval = ellipseArea({ length: quantity(60, "ft"), width: quantity(40, "ft") });
 * Math.round(oval.in("ft2")); // => 1885
 * ```
 */
export const ellipseArea = (axes: { readonly length: Length; readonly width: Length }): Area => {
  const { of, units } = lengthsOf(axes, ["length", "width"]);
  return areaIn((Math.PI / 4) * of.length * of.width, units);
};
