import { quantity } from "../../quantity/index.js";
import { type Area, areaOf, type GroundArea, isMetricArea } from "../areas.js";
import { type Length, lengthOf } from "../lengths.js";
import { pairOf } from "../records.js";
import { type Volume, volumeOf } from "../volumes.js";

const treated = (input: unknown, path: string): Area => areaOf(input, path, ["treated"]);

/**
 * The volume of material that covers an area to a depth: sand, topsoil, compost, mulch.
 *
 * `V = area * depth`. For an area in US customary units the result is in yd3, as loose material is sold
 * (`yd3 = ft2 * in / 324`), for a metric one in m3. Both above zero. The area is of nothing or treated; the net
 * area of a site, not the gross one.
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
export const coverVolume = (cover: { readonly area: GroundArea; readonly depth: Length }): Volume => {
  const [area, depth] = pairOf(cover, ["area", treated], ["depth", lengthOf]);
  return layerVolume(area, depth);
};

/** The volume of a layer from an area and a depth that were read. */
export const layerVolume = (area: Area, depth: Length): Volume =>
  isMetricArea(area.unit)
    ? quantity((area.in("m2") * depth.in("mm")) / 1000, "m3")
    : quantity((area.in("ft2") * depth.in("in")) / 324, "yd3");

/**
 * The depth to which a volume of material covers an area.
 *
 * `depth = V / area`, in inches for an area in US customary units (`in = yd3 * 324 / ft2`), else in mm. Both above
 * zero. The inverse of {@link coverVolume}.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`; both
 * are reported
 *
 * Source: solid geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { coverDepth } from "ratewright/site";
 * coverDepth({ volume: quantity(3, "yd3"), area: quantity(3888, "ft2") }).in("in"); // => 0.25
 * coverDepth({ volume: quantity(12, "m3"), area: quantity(2000, "m2") }).in("mm"); // => 6
 * ```
 */
export const coverDepth = (cover: { readonly volume: Volume; readonly area: GroundArea }): Length => {
  const [volume, area] = pairOf(cover, ["volume", volumeOf], ["area", treated]);
  return isMetricArea(area.unit)
    ? quantity((volume.in("m3") * 1000) / area.in("m2"), "mm")
    : quantity((volume.in("yd3") * 324) / area.in("ft2"), "in");
};

/**
 * The area that a volume of material covers to a depth: how far a load goes.
 *
 * `area = V / depth`, in ft2 for a depth in inches, feet or yards (`ft2 = yd3 * 324 / in`), else in m2. Both above
 * zero. The inverse of {@link coverVolume}.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`; both
 * are reported
 *
 * Source: solid geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { coverArea } from "ratewright/site";
 * coverArea({ volume: quantity(1, "yd3"), depth: quantity(3, "in") }).in("ft2"); // => 108
 * coverArea({ volume: quantity(3, "m3"), depth: quantity(6, "mm") }).in("m2"); // => 500
 * ```
 */
export const coverArea = (cover: { readonly volume: Volume; readonly depth: Length }): Area => {
  const [volume, depth] = pairOf(cover, ["volume", volumeOf], ["depth", lengthOf]);
  return /m$/.test(depth.unit)
    ? quantity((volume.in("m3") * 1000) / depth.in("mm"), "m2")
    : quantity((volume.in("yd3") * 324) / depth.in("in"), "ft2");
};
