import { type Flow, isMetric, made, readRecord, type Time, time, type Volume, volume } from "../read.js";

/**
 * The flow of a supply by bucket and stopwatch or by the meter, `Q = V / t`; in the units of the volume, a minute.
 *
 * - `volume` of water that ran in the `time`; each more than zero
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: the definition of a flow.
 *
 * @example
 * ```ts
 * import { measuredFlow, quantity } from "ratewright";
 * measuredFlow({ volume: quantity(5, "gal", "water"), time: quantity(25, "s") }).in("gal/min"); // => 12
 * ```
 */
export const measuredFlow = (input: { readonly volume: Volume; readonly time: Time }): Flow => {
  const q = readRecord(input, { volume, time }, "a record with volume and time");
  return isMetric(q.volume.unit)
    ? made((q.volume.in("L") * 60) / q.time.in("s"), "L/min", "volume/time", "water")
    : made((q.volume.in("gal") * 60) / q.time.in("s"), "gal/min", "volume/time", "water");
};
