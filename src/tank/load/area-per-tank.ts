import { allOf, expectRecord, type Quantity } from "../../quantity/index.js";
import { sprayOf, sprayRateOf } from "../inputs.js";

/**
 * The area that one filling of the tank covers, `A = tank / application volume`. It is not the other
 * way round: application volume over tank is tanks per area.
 *
 * @param input - `capacity` of the tank, as far as it is filled; `sprayRate`, volume of spray per area;
 *   both more than zero
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: University of Missouri Extension method (G1272), acres per tank = tank / GPA.
 *
 * @example
 * ```ts
 * import { areaPerTank, quantity } from "ratewright";
 * areaPerTank({
 *   capacity: quantity(25, "gal", "spray"),
 *   sprayRate: quantity(150, "gal/acre", "spray"),
 * }).in("ft2"); // => 7260
 * ```
 */
export const areaPerTank = (input: {
  readonly capacity: Quantity<"volume", "spray">;
  readonly sprayRate: Quantity<"volume/area", "spray">;
}): Quantity<"area", "none"> => {
  expectRecord(input, "input");
  const { capacity, sprayRate } = allOf({
    capacity: () => sprayOf(input.capacity, "capacity"),
    sprayRate: () => sprayRateOf(input.sprayRate),
  });
  return capacity.per(sprayRate);
};
