import { checks, expectFields, fail, isUnit, type Quantity, quantityOf } from "../../quantity/index.js";
import { above, fieldsOf, type Speed } from "../inputs.js";

/**
 * What drives the metering. `"power-driven"` and `"gravity gate"` let the same amount out per time at any
 * ground speed; a `"ground-driven"` meter follows the wheel.
 */
export type Feed = "power-driven" | "gravity gate" | "ground-driven";

/** Takes a feed that lets the same amount out per time at any speed, or throws. */
export const feedOf = (feed: unknown): void => {
  if (feed === "power-driven" || feed === "gravity gate") return;
  if (feed === undefined) fail("missing", "feed", feed, "power-driven, gravity gate or ground-driven");
  if (feed === "ground-driven") {
    fail(
      "infeasible",
      "feed",
      feed,
      "a feed that does not follow the wheel: calibrate again at the new speed",
    );
  }
  fail("type", "feed", feed, "power-driven, gravity gate or ground-driven");
};

/** The dimension that a rate is read in: volume per area where its unit says so, else mass per area. */
export const rateDimension = (rate: unknown): "mass/area" | "volume/area" => {
  const unit = (rate as { readonly unit?: unknown } | null | undefined)?.unit;
  return typeof unit === "string" && isUnit(unit, "volume/area") ? "volume/area" : "mass/area";
};

/**
 * The rate at another ground speed, where the discharge stays the same.
 *
 * `R2 = R1 v1 / v2`
 *
 * - `R1` the rate measured at the speed `v1`, `from`: mass or volume per area, of anything
 * - `R2` the rate at the speed `v2`, `to`; in the unit of `R1`
 *
 * Range: a power-driven or gravity gate at the same opening, and the same swath. A ground-driven meter is
 * refused, for its rate does not follow this law. On a rotary spreader the swath changes with the speed
 * where the wheel also drives the disc; then measure again.
 *
 * The speed for a wanted rate is {@link speedForRate}.
 *
 * @throws RatewrightError `infeasible` for a ground-driven meter; `missing` where `feed` is not said; `range`,
 * `unit/mismatch`, `substance/mismatch`, `type`, `not-finite`
 *
 * Source: NC State Extension, "The Calibration of Turfgrass Boom Sprayers and Spreaders" (20 gal/acre at
 * 3 mph is 10 at 6 mph).
 *
 * @example
 * ```ts
 * import { quantity, rateAtSpeed } from "ratewright";
 * const rate = quantity(4, "lb/1000 ft2", "product");
 * const run = { rate, from: quantity(3, "mi/h"), to: quantity(2.5, "mi/h") };
 * Number(rateAtSpeed({ ...run, feed: "gravity gate" }).in("lb/1000 ft2").toFixed(6)); // => 4.8
 * rateAtSpeed({ ...run, feed: "ground-driven" }); // => throws infeasible
 * ```
 */
export const rateAtSpeed = <D extends "mass/area" | "volume/area", S extends string>(input: {
  readonly rate: Quantity<D, S>;
  readonly from: Speed;
  readonly to: Speed;
  readonly feed: Feed;
}): Quantity<D, S> => {
  const record = expectFields(
    input,
    ["rate", "from", "to", "feed"],
    "run",
    "a record with rate, from, to, feed",
  );
  const dimension = rateDimension(record.rate);
  const problems = checks();
  problems.run(() => feedOf(record.feed));
  const found = problems.run(() =>
    fieldsOf(record, {
      rate: { dimension },
      from: { dimension: "length/time" },
      to: { dimension: "length/time" },
    }),
  );
  problems.done();
  const { rate, from, to } = found as NonNullable<typeof found>;
  const value = (rate.value * from.value) / to.in(from.unit as "mi/h");
  return quantityOf<D, S>(above(value, "rate"), rate.unit, rate.of, "rate");
};
