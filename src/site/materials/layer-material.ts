import { wholeUnitsFor } from "../../numeric/index.js";
import {
  checks,
  expectQuantity,
  inUnit,
  likeQuantity,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { type Area, areaOf, type GroundArea, isMetricArea } from "../areas.js";
import { type Length, lengthOf } from "../lengths.js";
import { recordWith } from "../records.js";
import { type Volume, volumeOf } from "../volumes.js";
import { type BulkDensity, densityOf } from "./bulk-density.js";
import { layerVolume } from "./cover-volume.js";

/** The material for a layer: topdressing, mulch, topsoil. */
export interface LayerMaterial {
  readonly type: "layer-material";
  readonly version: 1;
  /** The layer as it lies. */
  readonly volume: Volume;
  /** What to order: with the extra for settling and loss. */
  readonly order: Volume;
  /** Weight of the order, where a bulk density was given. */
  readonly weight?: Quantity<"mass", "none">;
  /** Bags for the order, rounded up, where the size of a bag was given. */
  readonly bags?: number;
  /** Weight of the layer per area, without the extra, where a bulk density was given. */
  readonly weightPerArea?: Quantity<"mass/area", "none">;
}

/**
 * The material for a layer over an area: topdressing sand, mulch, compost, topsoil; by volume, by weight and in bags.
 *
 * `volume = area * depth`, `order = volume * (1 + extra)`, `weight = order * bulkDensity`, bags rounded up from
 * `order / bag`, and `weightPerArea = depth * bulkDensity`, without the extra. The bulk density is that of the material
 * as it is delivered, moist as it is ({@link moistBulkDensity}); `extra` is 0 where it is left out. In yd3 and US tons for an area in US customary units, in m3 and
 * t for a metric one; the weight per area in lb/1000 ft2 or kg/m2, as a spreader or topdresser is set.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`; everything
 * that is not right is reported
 *
 * Source: solid geometry; 10 to 20 % extra for compaction and waste when filling: a sand supplier's technical page,
 * "Sand math".
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { layerMaterial } from "ratewright/site";
 * const green = layerMaterial({
 *   area: quantity(5184, "ft2"),
 *   depth: quantity(0.125, "in"),
 *   bulkDensity: quantity(2700, "lb/yd3"),
 * });
 * green.volume.in("yd3"); // => 2
 * Number(green.weight?.in("US ton").toFixed(3)); // => 2.7
 * Math.round(green.weightPerArea?.in("lb/1000 ft2") ?? 0); // => 1042
 * ```
 */
export const layerMaterial = (input: {
  readonly area: GroundArea;
  readonly depth: Length;
  readonly bulkDensity?: BulkDensity;
  /** Share added for settling and loss. */
  readonly extra?: Quantity<"1", "none">;
  /** What one bag holds. */
  readonly bag?: Volume;
}): LayerMaterial => {
  const problems = checks();
  const record = recordWith(input, ["area", "depth", "bulkDensity", "extra", "bag"], problems, "input");
  const area = problems.run(() => areaOf(record.area, "area", ["treated"]));
  const depth = problems.run(() => lengthOf(record.depth, "depth"));
  const density =
    record.bulkDensity === undefined
      ? undefined
      : problems.run(() => densityOf(record.bulkDensity, "bulkDensity"));
  const extra = record.extra === undefined ? 0 : problems.run(() => extraOf(record.extra));
  const bag = record.bag === undefined ? undefined : problems.run(() => volumeOf(record.bag, "bag"));
  problems.done();
  const ground = area as Area;
  const metric = isMetricArea(ground.unit);
  const volume = layerVolume(ground, depth as Length);
  const order = likeQuantity(volume, volume.value * (1 + (extra as number)));
  return {
    type: "layer-material",
    version: 1,
    volume,
    order,
    ...(density === undefined
      ? {}
      : {
          weight: inUnit(density.times(order), metric ? "t" : "US ton"),
          weightPerArea: inUnit(density.times(volume).per(ground), metric ? "kg/m2" : "lb/1000 ft2"),
        }),
    ...(bag === undefined ? {} : { bags: wholeUnitsFor(order.in("L"), bag.in("L")) }),
  };
};

/** An extra of more than the layer itself is a slip of the decimal point. */
const extraOf = (input: unknown): number => {
  const extra = expectQuantity(input, { dimension: "1", of: "none", bound: "non-negative" }, "extra").in("1");
  return extra <= 1 ? extra : outOfRange("extra", input, { max: 100, unit: "%" }, "{} of the layer");
};
