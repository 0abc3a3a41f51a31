import { allOf, expectFields, type Quantity } from "../../quantity/index.js";
import { applicationVolumeOf, type SprayPerArea, sprayOf } from "../inputs.js";

/**
 * The area that one filling of the tank covers, `A = tank / application volume`. It is not the other
 * way round: application volume over tank is tanks per area.
 *
 * @param input - `capacity` of the tank, as far as it is filled; `applicationVolume`, volume of spray per area, or a
 *   calibration, also with water; `density` of the spray for that, which is as heavy as water where left out; all more
 *   than zero. {@link tankLoads} tells what was taken, and gives the error of an estimate
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: University of Missouri Extension method (G1272), acres per tank = tank / GPA.
 *
 * @example
 * ```ts
 * import { areaPerTank, quantity } from "ratewright";
 * areaPerTank({
 *   capacity: quantity(25, "gal", "spray"),
 *   applicationVolume: quantity(150, "gal/acre", "spray"),
 * }).in("ft2"); // => 7260
 * ```
 */
export const areaPerTank = (input: {
  readonly capacity: Quantity<"volume", "spray">;
  readonly applicationVolume: SprayPerArea;
  readonly density?: Quantity<"mass/volume", "none">;
}): Quantity<"area", "none"> => {
  const given = expectFields(input, ["capacity", "applicationVolume", "density"]);
  const { capacity, spray } = allOf({
    capacity: () => sprayOf(given.capacity, "capacity"),
    spray: () => applicationVolumeOf(given.applicationVolume, given.density),
  });
  return capacity.per(spray.value);
};
