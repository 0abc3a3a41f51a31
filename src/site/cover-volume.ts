import { checks, expectRecord, type Quantity, quantity } from "../quantity/index.js";
import { type Area, areaOf, type Length, lengthOf } from "./lengths.js";

/**
 * The volume of material that covers an area to a depth: sand, topsoil, compost, mulch.
 *
 * `V = area * depth`. For an area in US customary units the result is in yd3, as loose material is sold
 * (`yd3 = ft2 * in / 324`), for a metric one in m3. Both above zero.
 *
 * The volume is that of the layer as it lies; what is lost and what settles is not in it.
 *
 * Sources disagree: a printed factor of 0.0031 yd3 per ft2 and inch is 0.44 % more than 1/324.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`; both
 * are reported
 *
 * Source: solid geometry; 1 yd3 covers 324 ft2 to 1 in: landscape contractors' information sheets.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { coverVolume } from "ratewright/site";
 * coverVolume({ area: quantity(324, "ft2"), depth: quantity(1, "in") }).in("yd3"); // => 1
 * coverVolume({ area: quantity(2, "ha"), depth: quantity(5, "mm") }).in("m3"); // => 100
 * ```
 */
export const coverVolume = (cover: {
  readonly area: Area;
  readonly depth: Length;
}): Quantity<"volume", "none"> => {
  const record = expectRecord(cover, "cover", "a record with area, depth");
  const door = checks();
  const area = door.run(() => areaOf(record.area, "area"));
  const depth = door.run(() => lengthOf(record.depth, "depth"));
  door.done();
  const [ground, layer] = [area as Area, depth as Length];
  return /m2$|^ha$/.test(ground.unit)
    ? quantity((ground.in("m2") * layer.in("mm")) / 1000, "m3")
    : quantity((ground.in("ft2") * layer.in("in")) / 324, "yd3");
};
