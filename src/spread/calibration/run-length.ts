import { expectFields, quantity } from "../../quantity/index.js";
import { type Area, above, fieldsOf, isMetric, type Length } from "../inputs.js";

/**
 * How far to run so that one pass covers an area.
 *
 * `L = A / w`, in ft for a swath in US customary units, else in m.
 *
 * - `A` the area: 1000 ft2, 100 m2, 1/128 acre
 * - `w` the width of one pass, `swath`: see `spreadWidth`
 *
 * For 1/128 acre, on which each ounce by weight is 8 lb/acre, `L = 340.3125 ft2 / w`; sources round the
 * figure to 340.3 or to 340.
 *
 * Range: both above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`
 *
 * Source: lawn-care handbook and training slides (83 ft 4 in at 12 ft for 1000 ft2); 1/128 acre:
 * University of Georgia, Special Bulletin 16, 2002.
 *
 * @example
 * ```ts
 * import { quantity, runLength } from "ratewright";
 * Number(runLength({ area: quantity(1000, "ft2"), swath: quantity(12, "ft") }).in("in").toFixed(6)); // => 1000
 * const plot = quantity(1, "acre").dividedBy(128);
 * Number(runLength({ area: plot, swath: quantity(13, "in") }).in("ft").toFixed(1)); // => 314.1
 * ```
 */
export const runLength = (run: { readonly area: Area; readonly swath: Length }): Length => {
  const { area, swath } = fieldsOf(expectFields(run, ["area", "swath"], "run", "a record with area, swath"), {
    area: { dimension: "area" },
    swath: { dimension: "length" },
  });
  return isMetric(swath.unit)
    ? quantity(above(area.in("m2") / swath.in("m"), "area"), "m")
    : quantity(above(area.in("ft2") / swath.in("ft"), "area"), "ft");
};
