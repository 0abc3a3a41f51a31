import { wholeUnitsFor } from "../../numeric/index.js";
import { allOf, expectFields, expectQuantity, fail, type Quantity, quantity } from "../../quantity/index.js";
import { effectiveFieldCapacity } from "../../spread/index.js";
import { type Area, ground, type Length, positive, type Share, type Speed, type Time } from "../inputs.js";

/** How long a job of spraying takes. */
export interface SprayTime {
  readonly type: "spray-time";
  readonly version: 1;
  /** Ground covered per time while spraying, turns and overlaps counted. */
  readonly workRate: Quantity<"area/time", "none">;
  readonly spraying: Time;
  /** Fillings of the tank, the first one counted. */
  readonly fills: number;
  /** Ways back to the fill during the job: one less than the fillings. */
  readonly refillTrips: number;
  /** What the trips take together. */
  readonly refilling: Time;
  readonly total: Time;
}

/**
 * How long an area takes to spray, with the trips to refill the tank.
 *
 * - spraying time `= area / (v w e)`, the work rate by `effectiveFieldCapacity`
 * - fills `= ceil(V area / tank)`, trips one less, each `refill` long
 *
 * - `v` speed, `w` swath, `e` field efficiency, `V` application volume
 *
 * Printed efficiencies often count filling in (sprayers 50 to 80 %, from memory). Here they must not:
 * `efficiency` is for turns and overlaps, and the filling comes on top by `refill`, so it would count twice.
 *
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`
 * Source: Iowa State University Extension A3-24 (PM 696), field capacity; the trips are arithmetic.
 *
 * @example
 * ```ts
 * import { quantity, sprayTime } from "ratewright";
 * const job = sprayTime({
 *   area: quantity(10, "acre"),
 *   speed: quantity(4, "mi/h"),
 *   swath: quantity(20, "ft"),
 *   efficiency: quantity(75, "%"),
 *   applicationVolume: quantity(40, "gal/acre", "spray"),
 *   capacity: quantity(150, "gal", "spray"),
 *   refill: quantity(20, "min"),
 * });
 * job.refillTrips; // => 2
 * Number(job.spraying.in("min").toFixed(1)); // => 82.5
 * Number(job.total.in("min").toFixed(1)); // => 122.5
 * ```
 */
export const sprayTime = (input: {
  readonly area: Area | Quantity<"area", "treated">;
  readonly speed: Speed;
  readonly swath: Length;
  readonly efficiency: Share;
  readonly applicationVolume: Quantity<"volume/area", "spray">;
  readonly capacity: Quantity<"volume", "spray">;
  /** One trip to the fill and back, filling included; zero or more. */
  readonly refill: Time;
}): SprayTime => {
  expectFields(input, ["area", "speed", "swath", "efficiency", "applicationVolume", "capacity", "refill"]);
  const { area, workRate, volume, capacity, refill } = allOf({
    area: () => ground(input.area, "area"),
    workRate: () =>
      effectiveFieldCapacity({ speed: input.speed, swath: input.swath, efficiency: input.efficiency }),
    volume: () => positive(input.applicationVolume, "applicationVolume", "volume/area", "spray"),
    capacity: () => positive(input.capacity, "capacity", "volume", "spray"),
    refill: () =>
      input.refill === undefined
        ? fail(
            "missing",
            "refill",
            input.refill,
            "how long a trip to the fill takes, 0 min where it takes none",
          )
        : expectQuantity(input.refill, { dimension: "time", of: "none", bound: "non-negative" }, "refill"),
  });
  const fills = wholeUnitsFor(volume.times(area).in("L"), capacity.in("L"));
  const spraying = area.per(workRate).in("min");
  const refilling = refill.in("min") * (fills - 1);
  return {
    type: "spray-time",
    version: 1,
    workRate,
    spraying: quantity(spraying, "min"),
    fills,
    refillTrips: fills - 1,
    refilling: quantity(refilling, "min"),
    total: quantity(spraying + refilling, "min"),
  };
};
