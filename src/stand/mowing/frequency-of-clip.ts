import { expectTravelSpeed } from "../../numeric/house.js";
import {
  allOf,
  expectFields,
  outOfRange,
  type Quantity,
  quantity,
  type Speed,
} from "../../quantity/index.js";
import { given, type Length, lengthAt, wholeAt } from "../read.js";

type Turning = Quantity<"1/time", "none">;

const metricSpeed = (unit: string): boolean => /^(mm|cm|m|km)\//.test(unit);
const speedAt = (input: unknown): Speed =>
  expectTravelSpeed(given(input, "speed", "length/time", "none"), "speed");
const turningAt = (input: unknown): Turning => given(input, "reelSpeed", "1/time", "none");

const mostBlades = 60;
const bladesAt = (input: unknown): number => {
  const blades = wholeAt(input, "blades");
  return blades <= mostBlades ? blades : outOfRange("blades", blades, { max: mostBlades, count: "blades" });
};

/**
 * The frequency of clip of a reel: how far the mower goes from one cut to the next, `c = v / (b n)`.
 *
 * - `v` speed over the ground; `b` blades of the reel; `n` turns of the reel per time
 *
 * A smaller figure is a tighter clip. As a rule of the trade it lies near the height of cut (common
 * practice, no source).
 *
 * @param input.reelSpeed - `n`, `quantity(2200, "1/min")` for 2200 turns a minute
 * @returns in mm for a metric speed, else in inches
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`; all that are found
 * Source: Canadian groundskeeper's trade note 2013, "How is frequency of clip calculated?", which prints an
 * answer without its formula.
 *
 * @example
 * ```ts
 * import { frequencyOfClip, quantity } from "ratewright";
 * const clip = frequencyOfClip({
 *   speed: quantity(6, "km/h"), blades: 15, reelSpeed: quantity(2000, "1/min"),
 * });
 * Number(clip.in("mm").toFixed(2)); // => 3.33
 * ```
 */
export const frequencyOfClip = (input: {
  readonly speed: Speed;
  readonly blades: number;
  readonly reelSpeed: Turning;
}): Length => {
  const record = expectFields(input, ["speed", "blades", "reelSpeed"]);
  const { speed, blades, turns } = allOf({
    speed: () => speedAt(record.speed),
    blades: () => bladesAt(record.blades),
    turns: () => turningAt(record.reelSpeed),
  });
  const cuts = blades * turns.in("1/min");
  return metricSpeed(speed.unit)
    ? quantity(speed.in("mm/min") / cuts, "mm")
    : quantity(speed.in("in/min") / cuts, "in");
};

/**
 * The turns of a reel for a wanted clip: {@link frequencyOfClip} turned round, `n = v / (b c)`.
 *
 * @param input.clip - `c`, distance from cut to cut
 * @param input.speed - `v`, over the ground
 * @param input.blades - `b`, of the reel
 * @returns turns a minute
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`; all that are found
 * Source: as {@link frequencyOfClip}.
 *
 * @example
 * ```ts
 * import { quantity, reelSpeedFor } from "ratewright";
 * reelSpeedFor({ speed: quantity(6, "km/h"), blades: 10, clip: quantity(5, "mm") }).in("1/min"); // => 2000
 * ```
 */
export const reelSpeedFor = (input: {
  readonly speed: Speed;
  readonly blades: number;
  readonly clip: Length;
}): Turning => {
  const record = expectFields(input, ["speed", "blades", "clip"]);
  const { speed, blades, clip } = allOf({
    speed: () => speedAt(record.speed),
    blades: () => bladesAt(record.blades),
    clip: () => lengthAt(record.clip, "clip"),
  });
  return quantity(speed.in("mm/min") / (blades * clip.in("mm")), "1/min");
};

/**
 * The mowing speed for a wanted clip: {@link frequencyOfClip} turned round, `v = b n c`.
 *
 * @param input.clip - `c`, distance from cut to cut
 * @param input.reelSpeed - `n`
 * @param input.blades - `b`, of the reel
 * @returns in km/h for a metric clip, else in mi/h
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`; all that are found
 * Source: as {@link frequencyOfClip}.
 *
 * @example
 * ```ts
 * import { mowingSpeedFor, quantity } from "ratewright";
 * const speed = mowingSpeedFor({
 *   reelSpeed: quantity(2000, "1/min"), blades: 10, clip: quantity(5, "mm"),
 * });
 * speed.in("km/h"); // => 6
 * ```
 */
export const mowingSpeedFor = (input: {
  readonly reelSpeed: Turning;
  readonly blades: number;
  readonly clip: Length;
}): Speed => {
  const record = expectFields(input, ["reelSpeed", "blades", "clip"]);
  const { turns, blades, clip } = allOf({
    turns: () => turningAt(record.reelSpeed),
    blades: () => bladesAt(record.blades),
    clip: () => lengthAt(record.clip, "clip"),
  });
  const perHour = blades * turns.in("1/h");
  return metricSpeed(`${clip.unit}/h`)
    ? quantity((perHour * clip.in("mm")) / 1e6, "km/h")
    : quantity((perHour * clip.in("in")) / 63_360, "mi/h");
};
