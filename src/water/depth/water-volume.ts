import {
  type Area,
  area,
  depth,
  isMetric,
  type Length,
  made,
  readRecord,
  type Volume,
  volume,
} from "../read.js";

/**
 * The volume of a depth of water on an area, `V = d A`.
 *
 * - `d` the depth, more than zero; `A` the area, more than zero
 * - `V` in liters for an area in metric units, else in US gallons: one inch on one square foot is 144/231 gal
 *
 * Turn it back with {@link waterDepth}. For a rate per area use `volumePerAreaOf`.
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * Source: 231 in3 to the gallon, NIST Handbook 44, appendix C; "Supplemental water requirements" (plant introduction
 * program) prints 0.623 gal to the inch and square foot.
 *
 * @example
 * ```ts
 * import { quantity, waterVolume } from "ratewright";
 * const lawn = quantity(1000, "ft2");
 * Number(waterVolume({ depth: quantity(1, "in"), area: lawn }).in("gal").toFixed(1)); // => 623.4
 * waterVolume({ depth: quantity(6, "mm"), area: quantity(250, "m2") }).in("L"); // => 1500
 * ```
 */
export const waterVolume = (input: { readonly depth: Length; readonly area: Area }): Volume => {
  const { depth: d, area: a } = readRecord(input, { depth, area }, "a record with depth and area");
  return isMetric(a.unit)
    ? made(d.in("mm") * a.in("m2"), "L", "volume", "water")
    : made((d.in("in") * a.in("ft2") * 144) / 231, "gal", "volume", "water");
};

/**
 * The depth of a volume of water on an area, `d = V / A`.
 *
 * - `V` the volume of water, more than zero; `A` the area, more than zero
 * - `d` in mm for an area in metric units, else in inches: one gallon on one square foot is 231/144 in
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * Source: as {@link waterVolume}.
 *
 * @example
 * ```ts
 * import { quantity, waterDepth } from "ratewright";
 * const meter = quantity(3000, "gal", "water");
 * Number(waterDepth({ volume: meter, area: quantity(5000, "ft2") }).in("in").toFixed(2)); // => 0.96
 * ```
 */
export const waterDepth = (input: { readonly volume: Volume; readonly area: Area }): Length => {
  const { volume: v, area: a } = readRecord(input, { volume, area }, "a record with volume and area");
  return isMetric(a.unit)
    ? made(v.in("L") / a.in("m2"), "mm", "length")
    : made((v.in("gal") * 231) / 144 / a.in("ft2"), "in", "length");
};
