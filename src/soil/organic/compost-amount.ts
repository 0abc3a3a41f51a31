import { expectLooseDensity } from "../../numeric/house.js";
import { allOf, expectFields, expectQuantity, type Quantity, quantity } from "../../quantity/index.js";
import { coverVolume } from "../../site/index.js";
import { moistureOf } from "./moisture.js";

/** A layer of compost over an area. */
export interface CompostAmount {
  readonly type: "compost-amount";
  readonly version: 1;
  readonly volume: Quantity<"volume", "product">;
  /** As delivered. */
  readonly weight: Quantity<"mass", "product">;
  /** Without its water. */
  readonly dryWeight: Quantity<"mass", "product">;
  /** Dry weight per area: what a content on the dry basis is multiplied by. */
  readonly dryRate: Quantity<"mass/area", "product">;
}

/**
 * The compost for a layer over an area: its volume, its weight as delivered and its dry weight.
 *
 * - volume `V = A d`, as `coverVolume` of the site has it: `yd3 = ft2 in / 324`
 * - weight `V rho`, with `rho` the bulk density as delivered; dry weight `V rho (100 - m) / 100`
 *
 * A quarter of an inch on 1,000 ft2 is 0.77 yd3. One depth has one volume: a page that prints the same figure for two
 * depths has a slip.
 *
 * @param input.moisture - percent of the material as delivered
 * @throws RatewrightError `range`, `missing`, `not-finite`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: definition; see `coverVolume`.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { compostAmount } from "ratewright/soil";
 * const compost = compostAmount({
 *   area: quantity(32400, "ft2"), depth: quantity(0.25, "in"),
 *   bulkDensity: quantity(1000, "lb/yd3", "product"), moisture: 40,
 * });
 * compost.volume.in("yd3"); // => 25
 * compost.weight.in("US ton"); // => 12.5
 * compost.dryWeight.in("US ton"); // => 7.5
 * ```
 */
export const compostAmount = (input: {
  readonly area: Quantity<"area", "none">;
  readonly depth: Quantity<"length", "none">;
  readonly bulkDensity: Quantity<"mass/volume", "product">;
  readonly moisture: number;
}): CompostAmount => {
  const record = expectFields(input, ["area", "depth", "bulkDensity", "moisture"], "input");
  const read = allOf({
    area: () => expectQuantity(record.area, { dimension: "area", of: "none", bound: "positive" }, "area"),
    depth: () =>
      expectQuantity(record.depth, { dimension: "length", of: "none", bound: "positive" }, "depth"),
    density: () =>
      expectLooseDensity(
        expectQuantity(
          record.bulkDensity,
          { dimension: "mass/volume", of: "product", bound: "positive" },
          "bulkDensity",
        ),
        "bulkDensity",
      ),
    moisture: () => moistureOf(record.moisture),
  });
  const volume = coverVolume({ area: read.area, depth: read.depth });
  const us = volume.unit === "yd3";
  const weight = us
    ? quantity(volume.in("yd3") * read.density.in("lb/yd3"), "lb", "product")
    : quantity(volume.in("m3") * read.density.in("kg/m3"), "kg", "product");
  const dryWeight = weight.times(100 - read.moisture).dividedBy(100);
  return {
    type: "compost-amount",
    version: 1,
    volume: quantity(volume.value, us ? "yd3" : "m3", "product"),
    weight,
    dryWeight,
    dryRate: us
      ? quantity((dryWeight.value * 1000) / read.area.in("ft2"), "lb/1000 ft2", "product")
      : quantity((dryWeight.value * 10_000) / read.area.in("m2"), "kg/ha", "product"),
  };
};
