import { type Length, lengthsOf } from "../lengths.js";
import { type Volume, volumeIn } from "../volumes.js";

/**
 * The volume of a box: a square-built tank, a trench, a trailer filled level.
 *
 * `V = length * width * depth`, in the cube of the unit of `length` (ft gives ft3, yd gives yd3, m gives m3, cm
 * gives mL). All above zero, measured inside.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `range`; every length that is not
 * right is reported
 *
 * Source: solid geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { cuboidVolume } from "ratewright/site";
 * const tank = cuboidVolume({ length: quantity(6, "ft"), width: quantity(3, "ft"), depth: quantity(4, "ft") });
 * tank.in("ft3"); // => 72
 * Number(tank.in("gal").toFixed(1)); // => 538.6
 * ```
 */
export const cuboidVolume = (box: {
  readonly length: Length;
  readonly width: Length;
  readonly depth: Length;
}): Volume => {
  const { of, units } = lengthsOf(box, ["length", "width", "depth"]);
  return volumeIn(of.length * of.width * of.depth, units);
};
