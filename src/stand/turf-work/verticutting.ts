import { allOf, expectFields, fail, type Quantity, quantity } from "../../quantity/index.js";
import { type Area, areaAt, isMetric, type Length, lengthAt, optional, type Share } from "../read.js";

/** What one pass of a verticutter does. */
export interface VerticuttingImpact {
  readonly type: "verticutting-impact";
  readonly version: 1;
  /** Share of the surface that the blades cut. */
  readonly share: Share;
  /** Volume of the grooves per area, and the sand to fill them; `null` where no depth was given. */
  readonly volumePerArea: Quantity<"volume/area", "none"> | null;
  readonly volume: Quantity<"volume", "none"> | null;
}

/**
 * What one pass of verticutting or scarifying does: `share = t / s`, `volume = share * depth`.
 *
 * - `t` thickness of a blade, with its tip; `s` spacing from blade to blade, more than `t`
 *
 * @param input.depth - of the grooves in the ground, not below the tips of the grass
 * @param input.area - the ground
 * @throws RatewrightError `missing`, `range`, `conflict` for blades that touch, `unit/mismatch`, `type`
 * Source: plane geometry. No published worked example was found.
 *
 * @example
 * ```ts
 * import { quantity, verticuttingImpact } from "ratewright";
 * const pass = verticuttingImpact({
 *   blade: quantity(3, "mm"), spacing: quantity(25, "mm"), depth: quantity(20, "mm"),
 *   area: quantity(500, "m2"),
 * });
 * pass.share.in("%"); // => 12
 * pass.volume?.in("m3"); // => 1.2
 * ```
 */
export const verticuttingImpact = (input: {
  readonly blade: Length;
  readonly spacing: Length;
  readonly depth?: Length;
  readonly area?: Area;
}): VerticuttingImpact => {
  const record = expectFields(input, ["blade", "spacing", "depth", "area"]);
  const { blade, spacing, depth, area } = allOf({
    blade: () => lengthAt(record.blade, "blade"),
    spacing: () => lengthAt(record.spacing, "spacing"),
    depth: () => optional(record.depth, (value) => lengthAt(value, "depth")),
    area: () => optional(record.area, (value) => areaAt(value, "area")),
  });
  const [thick, apart] = [blade.in("mm"), spacing.in("mm")];
  if (thick >= apart) fail("conflict", "blade", record.blade, "less than the spacing of the blades");
  const metric = isMetric(area?.unit ?? blade.unit);
  const layer = depth === undefined ? null : quantity((depth.in("mm") * thick) / apart, "L/m2");
  return {
    type: "verticutting-impact",
    version: 1,
    share: quantity((100 * thick) / apart, "%"),
    volumePerArea: layer === null || metric ? layer : quantity(layer.in("ft3/1000 ft2"), "ft3/1000 ft2"),
    volume:
      layer === null || area === undefined
        ? null
        : metric
          ? quantity(area.times(layer).in("m3"), "m3")
          : quantity(area.times(layer).in("ft3"), "ft3"),
  };
};
