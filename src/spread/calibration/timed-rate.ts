import { expectFields, type Quantity, quantityOf } from "../../quantity/index.js";
import { above, fieldsOf, isMetric, type Length, type Speed, type Time } from "../inputs.js";

const run = { swath: { dimension: "length" }, speed: { dimension: "length/time" } } as const;

/**
 * The rate of a spreader from what it discharges in a measured time, standing or moving.
 *
 * `R = W / (t w v)`
 *
 * - `R` rate, mass per area: in lb/1000 ft2 for a swath in US customary units, else in kg/ha
 * - `W` what came out in the time `t`
 * - `w` width of one pass, `swath`
 * - `v` speed at work
 *
 * In the units of the trade `lb/acre = lb/min * 495 / (ft * mph)` and `kg/ha = kg/min * 600 / (m * km/h)`;
 * 495 is 43 560 / 88, and follows from the units.
 *
 * Range: a discharge that does not depend on the ground speed (a power-driven or gravity gate). Where a
 * ground wheel drives the metering, turn the wheel and use `spreadRate` with `turns`.
 *
 * @param input.amount - `W`
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range` (a time, swath or
 * speed of zero), `not-finite`; every problem is reported
 *
 * Source: University of Florida aquatic plants manual (rate is mass per time over area per time); the
 * constants 495 and 600: operator's manual of a slurry tanker, 2016, for gallons and liters alike.
 *
 * @example
 * ```ts
 * import { quantity, timedRate } from "ratewright";
 * const rate = timedRate({
 *   amount: quantity(5, "kg", "product"), time: quantity(1, "min"),
 *   swath: quantity(6, "m"), speed: quantity(5, "km/h"),
 * });
 * Number(rate.in("kg/ha").toFixed(6)); // => 100
 * ```
 */
export const timedRate = <S extends string>(input: {
  readonly amount: Quantity<"mass", S>;
  readonly time: Time;
  readonly swath: Length;
  readonly speed: Speed;
}): Quantity<"mass/area", S> => {
  const record = expectFields(
    input,
    ["amount", "time", "swath", "speed"],
    "run",
    "a record with amount, time, swath, speed",
  );
  const { amount, time, swath, speed } = fieldsOf(record, {
    amount: { dimension: "mass" },
    time: { dimension: "time" },
    ...run,
  });
  const metric = isMetric(swath.unit);
  const value = metric
    ? (amount.in("kg") * 10_000) / (time.in("min") * swath.in("m") * speed.in("m/min"))
    : (amount.in("lb") * 1000) / (time.in("min") * swath.in("ft") * speed.in("ft/min"));
  const unit = metric ? "kg/ha" : "lb/1000 ft2";
  return quantityOf<"mass/area", S>(above(value, "amount"), unit, amount.of, "amount");
};

/**
 * What a spreader has to discharge per time for a rate: the figure to catch with a stop-watch.
 *
 * `q = R w v`, in lb/min for a swath in US customary units, else in kg/min; symbols and range as for
 * {@link timedRate}. Multiply by a time for the catch: `q.times(quantity(30, "s"))`.
 *
 * @param input.speed - `v`, at work
 * @throws RatewrightError as {@link timedRate}
 *
 * Source: as {@link timedRate}.
 *
 * @example
 * ```ts
 * import { quantity, targetDischarge } from "ratewright";
 * const discharge = targetDischarge({
 *   rate: quantity(99, "lb/acre", "product"), swath: quantity(10, "ft"), speed: quantity(3, "mi/h"),
 * });
 * Number(discharge.in("lb/min").toFixed(6)); // => 6
 * Number(discharge.times(quantity(30, "s")).in("lb").toFixed(6)); // => 3
 * ```
 */
export const targetDischarge = <S extends string>(input: {
  readonly rate: Quantity<"mass/area", S>;
  readonly swath: Length;
  readonly speed: Speed;
}): Quantity<"mass/time", S> => {
  const record = expectFields(input, ["rate", "swath", "speed"], "run", "a record with rate, swath, speed");
  const { rate, swath, speed } = fieldsOf(record, { rate: { dimension: "mass/area" }, ...run });
  const metric = isMetric(swath.unit);
  const value = metric
    ? (rate.in("kg/ha") * swath.in("m") * speed.in("m/min")) / 10_000
    : (rate.in("lb/1000 ft2") * swath.in("ft") * speed.in("ft/min")) / 1000;
  const unit = metric ? "kg/min" : "lb/min";
  return quantityOf<"mass/time", S>(above(value, "rate"), unit, rate.of, "rate");
};
