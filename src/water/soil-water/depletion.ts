import { exceeds } from "../../numeric/index.js";
import { likeQuantity, outOfRange } from "../../quantity/index.js";
import {
  depth,
  depthOrNone,
  isMetric,
  type Length,
  made,
  number,
  percent,
  type Rate,
  rate,
  rateOrNone,
  readRecord,
  type Share,
  type Time,
  useOf,
} from "../read.js";

const share = percent({ above: 0, max: 100 }, 1);

/**
 * The water that may be used up before the next watering, `RAW = AW p / 100`: the managed depletion of the trade.
 *
 * - `available` `AW`, see {@link availableWater}; `depletion` `p` in percent. 50 % is the figure of most manuals
 *
 * In the unit of the available water.
 *
 * @throws RatewrightError `range`, `missing`, `type` for a bare number, `unit/mismatch`
 *
 * Source: "Teaching organic farming and gardening", unit 2.1, example 1 (5.0 in at 50 %: 2.5 in).
 *
 * @example
 * ```ts
 * import { quantity, readilyAvailableWater } from "ratewright";
 * readilyAvailableWater({ available: quantity(5, "in"), depletion: quantity(50, "%") }).in("in"); // => 2.5
 * ```
 */
export const readilyAvailableWater = (input: {
  readonly available: Length;
  readonly depletion: Share;
}): Length => {
  const q = readRecord(
    input,
    { available: depth, depletion: share },
    "a record with available and depletion",
  );
  return likeQuantity(q.available, (q.available.value * q.depletion) / 100);
};

/**
 * How long the water in the root zone lasts, `I = d / ETc`, in days: the interval between two waterings without rain.
 *
 * - `water` `d` that may be used up, see {@link readilyAvailableWater}; `use` `ETc` of the turf, see {@link turfUse}
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: the checkbook method; common practice, no source.
 *
 * @example
 * ```ts
 * import { irrigationInterval, quantity } from "ratewright";
 * irrigationInterval({ water: quantity(0.75, "in"), use: quantity(0.25, "in/d") }).in("d"); // => 3
 * ```
 */
export const irrigationInterval = (input: { readonly water: Length; readonly use: Rate }): Time => {
  const q = readRecord(input, { water: depth, use: useOf(rate, "mm/d") }, "a record with water and use");
  return isMetric(q.use.unit)
    ? made(q.water.in("mm") / q.use.in("mm/d"), "d", "time")
    : made(q.water.in("in") / q.use.in("in/d"), "d", "time");
};

/**
 * The depletion at which grass begins to suffer, adjusted to the day: `p = p0 + 0.04 (5 - ETc)`, with `ETc` in mm/d; on a hot
 * day sooner, on a cool one later.
 *
 * - `table` `p0` at 5 mm/d, percent; 40 % for cool-season and 50 % for warm-season turf are the paper's
 * - `use` `ETc` of the turf
 *
 * The formula holds from 10 to 80 %: what falls outside is refused, for the source bounds it there.
 *
 * @throws RatewrightError `range` for a result outside 10 to 80 %; `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, table 22 as a public program carries it; the adjustment and its bounds as
 * another has them ("p162 and table 22").
 *
 * @example
 * ```ts
 * import { depletionFraction, quantity } from "ratewright";
 * depletionFraction({ table: quantity(40, "%"), use: quantity(7.5, "mm/d") }).in("%"); // => 30
 * ```
 */
export const depletionFraction = (input: { readonly table: Share; readonly use: Rate }): Share => {
  const q = readRecord(
    input,
    { table: percent({ min: 10, max: 80 }), use: rateOrNone },
    "a record with table and use",
  );
  const adjusted = q.table + 4 * (5 - q.use.in("mm/d"));
  return made(number({ min: 10, max: 80 })(adjusted, "use"), "%", "1");
};

/** Takes a depletion: not more than the root zone holds, but for rounding. */
export const expectDepletion = (depleted: number, total: number, path: string): number => {
  if (exceeds(depleted, total)) {
    return outOfRange(path, depleted, { max: total }, "{}, which the root zone holds");
  }
  return Math.min(depleted, total);
};

/** The share of its full use that turf manages with a depletion, 0 to 1. */
export const stressAt = (depleted: number, total: number, fraction: number): number => {
  const ready = fraction * total;
  return depleted <= ready ? 1 : (total - depleted) / (total - ready);
};

/**
 * The water stress coefficient, `Ks = (TAW - D) / ((1 - p) TAW)`, and 1 as long as `D` is not above `p TAW`: how much of its
 * full use the turf still manages.
 *
 * - `available` `TAW`; `depleted` `D`, zero to `TAW`; `depletion` `p` in percent, below 100
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: FAO Irrigation and Drainage Paper 56, equation 84, as a public program has it; the shape as
 * a geological survey restates it.
 *
 * @example
 * ```ts
 * import { quantity, waterStress } from "ratewright";
 * const zone = { available: quantity(60, "mm"), depletion: quantity(50, "%") };
 * waterStress({ ...zone, depleted: quantity(45, "mm") }).in("%"); // => 50
 * waterStress({ ...zone, depleted: quantity(20, "mm") }).in("%"); // => 100
 * ```
 */
export const waterStress = (input: {
  readonly available: Length;
  readonly depleted: Length;
  readonly depletion: Share;
}): Share => {
  const q = readRecord(
    input,
    { available: depth, depleted: depthOrNone, depletion: percent({ min: 0, below: 100 }, 1) },
    "a record with available, depleted and depletion",
  );
  const total = q.available.value;
  const depleted = q.depleted.in(q.available.unit as "mm");
  const found = expectDepletion(depleted, total, "depleted");
  return made(100 * stressAt(found, total, q.depletion / 100), "%", "1");
};
