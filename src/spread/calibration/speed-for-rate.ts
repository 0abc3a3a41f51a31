import { allOf, expectFields, fail, numberIn, type Quantity, quantity } from "../../quantity/index.js";
import { above, fieldsOf, type Speed } from "../inputs.js";
import { type Feed, feedOf, rateDimension } from "./rate-at-speed.js";

/**
 * The ground speed at which the same discharge gives a wanted rate: the way back from `rateAtSpeed`.
 *
 * `v2 = v1 R1 / R2`
 *
 * - `R1` the rate measured at the speed `v1`, `from`: mass or volume per area, of anything
 * - `R2` the wanted rate, `target`, of the same; a lower rate needs a HIGHER speed
 * - `v2` in the unit of `from`
 *
 * Range: as for `rateAtSpeed`. Whether a speed can be driven, and whether the swath holds at it, is not judged:
 * change the gate rather than the speed where they differ much, and check with a run.
 *
 * Sources disagree: the manual of a slurry tanker takes `v1 R2 / R1`, which drives slower for a lower rate and
 * puts on more.
 *
 * @throws RatewrightError `infeasible` for a ground-driven meter; `missing` where `feed` is not said; `range`,
 * `unit/mismatch`, `substance/mismatch`, `type`, `not-finite`; every problem is reported
 *
 * Source: the rate and the speed of NC State Extension, "The Calibration of Turfgrass Boom Sprayers and
 * Spreaders" (20 gal/acre at 3 mph is 10 at 6 mph), read the other way.
 *
 * @example
 * ```ts
 * import { quantity, speedForRate } from "ratewright";
 * const run = { rate: quantity(20, "gal/acre", "spray"), from: quantity(3, "mi/h") };
 * const target = quantity(10, "gal/acre", "spray");
 * speedForRate({ ...run, target, feed: "power-driven" }).in("mi/h"); // => 6
 * ```
 */
export const speedForRate = <D extends "mass/area" | "volume/area", S extends string>(input: {
  readonly rate: Quantity<D, S>;
  readonly from: Speed;
  readonly target: Quantity<NoInfer<D>, NoInfer<S>>;
  readonly feed: Feed;
}): Speed => {
  const record = expectFields(
    input,
    ["rate", "from", "target", "feed"],
    "run",
    "a record with rate, from, target, feed",
  );
  const dimension = rateDimension(record.rate);
  const { found } = allOf({
    feed: () => feedOf(record.feed),
    found: () =>
      fieldsOf(record, {
        rate: { dimension },
        from: { dimension: "length/time" },
        target: { dimension },
      }),
  });
  const { rate, from, target } = found;
  if (rate.of !== target.of) {
    const [measured, wanted]: readonly [string, string] = [rate.of, target.of];
    const bridge =
      measured === "water" && wanted === "spray"
        ? "; asFinishedSpray(rate).value is what was measured with water as spray"
        : "";
    fail("substance/mismatch", "target", target, `a rate of ${rate.of}, as measured${bridge}`);
  }
  const speed = (from.value * rate.value) / numberIn(target, rate.unit);
  return quantity(above(speed, "target"), from.unit as "mi/h");
};
