import { expectLooseDensity } from "../../numeric/house.js";
import { expectFields, fail, type Quantity, quantity, quantityOf } from "../../quantity/index.js";
import { type Area, above, fieldsOf, isMetric, type Length } from "../inputs.js";

/**
 * The loose bulk density of a material, from a bucket that is filled, struck off and weighed.
 *
 * `d = W / V`, in lb/ft3 for a volume in US customary units, else in kg/m3.
 *
 * - `W` net weight: the full bucket less the empty one
 * - `V` volume of the bucket
 *
 * Not the density of the granules: they are about 1.6 times as dense as the heap (urea: 48-52 lb/ft3 loose,
 * 76-82 lb/ft3 as granules), and sources mix the two up.
 *
 * Sources disagree: pounds in a 5 gal bucket times 1.5 is printed for lb/ft3; it is 1.496.
 *
 * @param bucket - `amount` `W` and `volume` `V`
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`
 *
 * Source: NC State University soil science, animal waste operator manual, slide 5b-35.
 *
 * @example
 * ```ts
 * import { bulkDensity, quantity } from "ratewright";
 * const density = bulkDensity({ amount: quantity(35, "lb", "product"), volume: quantity(5, "gal") });
 * Number(density.in("lb/ft3").toFixed(2)); // => 52.36
 * ```
 */
export const bulkDensity = <S extends string>(bucket: {
  readonly amount: Quantity<"mass", S>;
  readonly volume: Quantity<"volume", "none">;
}): Quantity<"mass/volume", "none"> => {
  const { amount, volume } = fieldsOf(
    expectFields(bucket, ["amount", "volume"], "bucket", "a record with amount, volume"),
    {
      amount: { dimension: "mass" },
      volume: { dimension: "volume" },
    },
  );
  return isMetric(volume.unit)
    ? quantity(above(amount.in("kg") / volume.in("m3"), "amount"), "kg/m3")
    : quantity(above(amount.in("lb") / volume.in("ft3"), "amount"), "lb/ft3");
};

/**
 * How much material a hopper, a bin or a heap holds.
 *
 * `W = V d`, in lb for a volume in US customary units, else in kg.
 *
 * - `V` volume that is filled, of the material: `quantity(3, "ft3", "product")`
 * - `d` loose bulk density, see {@link bulkDensity}
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`
 *
 * Source: definition; dry sand at 100 lb/ft3 is 1.35 US ton/yd3: topdressing guides.
 *
 * @example
 * ```ts
 * import { hopperLoad, quantity } from "ratewright";
 * const load = hopperLoad({ volume: quantity(1, "yd3", "product"), bulkDensity: quantity(100, "lb/ft3") });
 * load.in("US ton"); // => 1.35
 * ```
 */
export const hopperLoad = <S extends string>(hopper: {
  readonly volume: Quantity<"volume", S>;
  readonly bulkDensity: Quantity<"mass/volume", "none">;
}): Quantity<"mass", S> => {
  const found = fieldsOf(
    expectFields(hopper, ["volume", "bulkDensity"], "hopper", "a record with volume, bulkDensity"),
    {
      volume: { dimension: "volume" },
      bulkDensity: { dimension: "mass/volume" },
    },
  );
  const { volume } = found;
  const density = expectLooseDensity(found.bulkDensity, "bulkDensity");
  const metric = isMetric(volume.unit);
  const value = metric ? volume.in("m3") * density.in("kg/m3") : volume.in("ft3") * density.in("lb/ft3");
  return quantityOf<"mass", S>(above(value, "volume"), metric ? "kg" : "lb", volume.of, "volume");
};

/**
 * How much room a weight of material takes in a hopper, a bin or a truck: the way back from {@link hopperLoad}.
 *
 * `V = W / d`, in ft3 for a weight in US customary units, else in m3.
 *
 * @param input - `load` `W` and its loose `bulkDensity` `d`
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`
 *
 * Source: as {@link hopperLoad}.
 *
 * @example
 * ```ts
 * import { hopperVolume, quantity } from "ratewright";
 * const room = hopperVolume({ load: quantity(1.35, "US ton", "product"), bulkDensity: quantity(100, "lb/ft3") });
 * Number(room.in("yd3").toFixed(6)); // => 1
 * ```
 */
export const hopperVolume = <S extends string>(input: {
  readonly load: Quantity<"mass", S>;
  readonly bulkDensity: Quantity<"mass/volume", "none">;
}): Quantity<"volume", S> => {
  const found = fieldsOf(
    expectFields(input, ["load", "bulkDensity"], "input", "a record with load, bulkDensity"),
    {
      load: { dimension: "mass" },
      bulkDensity: { dimension: "mass/volume" },
    },
  );
  const { load } = found;
  const density = expectLooseDensity(found.bulkDensity, "bulkDensity");
  const metric = /^(ug|mg|g|kg|t)$/.test(load.unit);
  const value = metric ? load.in("kg") / density.in("kg/m3") : load.in("lb") / density.in("lb/ft3");
  return quantityOf<"volume", S>(above(value, "load"), metric ? "m3" : "ft3", load.of, "load");
};

/** What one load covers. */
export interface LoadCoverage {
  readonly type: "load-coverage";
  readonly version: 1;
  readonly area: Area;
  /** How far the spreader goes on one load. */
  readonly distance: Length;
}

/**
 * What one load of a spreader covers at a rate.
 *
 * `A = W / R`, `L = A / w`; in ft2 and ft for a swath in US customary units, else in m2 and m.
 *
 * - `W` the load, `R` the rate of the same material
 * - `w` width of one pass, `swath`
 *
 * The hopper runs unevenly before it is empty: keep a part of the load out of the reckoning.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`
 *
 * Source: Washington Administrative Code 173-308-270, equation 4 (there for liquids).
 *
 * @example
 * ```ts
 * import { loadCoverage, quantity } from "ratewright";
 * const one = loadCoverage({
 *   load: quantity(50, "lb", "product"), rate: quantity(4, "lb/1000 ft2", "product"), swath: quantity(10, "ft"),
 * });
 * one.area.in("ft2"); // => 12500
 * one.distance.in("ft"); // => 1250
 * ```
 */
export const loadCoverage = <S extends string>(input: {
  readonly load: Quantity<"mass", S>;
  readonly rate: Quantity<"mass/area", NoInfer<S>>;
  readonly swath: Length;
}): LoadCoverage => {
  const record = expectFields(input, ["load", "rate", "swath"], "input", "a record with load, rate, swath");
  const { load, rate, swath } = fieldsOf(record, {
    load: { dimension: "mass" },
    rate: { dimension: "mass/area" },
    swath: { dimension: "length" },
  });
  if (load.of !== rate.of) fail("substance/mismatch", "rate", rate, `a rate of ${load.of}, as the load`);
  if (isMetric(swath.unit)) {
    const area = above((load.in("kg") * 10_000) / rate.in("kg/ha"), "load");
    return {
      type: "load-coverage",
      version: 1,
      area: quantity(area, "m2"),
      distance: quantity(above(area / swath.in("m"), "load"), "m"),
    };
  }
  const area = above((load.in("lb") * 1000) / rate.in("lb/1000 ft2"), "load");
  return {
    type: "load-coverage",
    version: 1,
    area: quantity(area, "ft2"),
    distance: quantity(above(area / swath.in("ft"), "load"), "ft"),
  };
};
