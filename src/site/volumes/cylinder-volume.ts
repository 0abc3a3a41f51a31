import { type Length, lengthsOf } from "../lengths.js";
import { type Volume, volumeIn } from "../volumes.js";

/**
 * The volume of an upright cylinder: a round tank with a flat floor, filled to `depth`.
 *
 * `V = pi / 4 * diameter^2 * depth`, in the cube of the unit of `diameter`. Both above zero, measured inside.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `range`; every length that is not
 * right is reported
 *
 * Source: solid geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { cylinderVolume } from "ratewright/site";
 * const tank = cylinderVolume({ diameter: quantity(4, "ft"), depth: quantity(3, "ft") });
 * Number(tank.in("imp gal").toFixed(2)); // => 234.82
 * ```
 */
export const cylinderVolume = (tank: { readonly diameter: Length; readonly depth: Length }): Volume => {
  const { of, units } = lengthsOf(tank, ["diameter", "depth"]);
  return volumeIn((Math.PI / 4) * of.diameter * of.diameter * of.depth, units);
};
