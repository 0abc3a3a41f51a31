import {
  type Area,
  area,
  depth,
  type Flow,
  flow,
  isMetric,
  type Length,
  made,
  readRecord,
  type Time,
  time,
} from "../read.js";

/**
 * How long a flow takes to put a depth on an area, `T = A d / Q`.
 *
 * - `Q` the flow of water, `A` the area, `d` the depth; each more than zero
 * - `T` in hours
 *
 * In gal/min, acres and inches it is `Q T = 452.57 A d` exactly; tables print 449, 450 or 452 for the constant.
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * Source: University of California, Davis, "Irrigation water management made simple", Drought Tip 92-29, 1992 (the
 * relation; its constant 449 is 0.8 % low).
 *
 * @example
 * ```ts
 * import { irrigationTime, quantity } from "ratewright";
 * const run = { flow: quantity(50, "L/min", "water"), area: quantity(500, "m2"), depth: quantity(6, "mm") };
 * irrigationTime(run).in("h"); // => 1
 * ```
 */
export const irrigationTime = (input: {
  readonly flow: Flow;
  readonly area: Area;
  readonly depth: Length;
}): Time => {
  const q = readRecord(input, { flow, area, depth }, "a record with flow, area and depth");
  return made((q.depth.in("mm") * q.area.in("m2")) / q.flow.in("L/h"), "h", "time");
};

/**
 * The depth that a flow puts on an area in a time, `d = Q T / A`; in mm for an area in metric units, else in inches.
 *
 * - `Q` the flow of water, `T` the time, `A` the area; each more than zero
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * Source: as {@link irrigationTime}.
 *
 * @example
 * ```ts
 * import { depthFromFlow, quantity } from "ratewright";
 * const area = quantity(500, "m2");
 * depthFromFlow({ flow: quantity(50, "L/min", "water"), time: quantity(30, "min"), area }).in("mm"); // => 3
 * ```
 */
export const depthFromFlow = (input: {
  readonly flow: Flow;
  readonly time: Time;
  readonly area: Area;
}): Length => {
  const q = readRecord(input, { flow, time, area }, "a record with flow, time and area");
  return isMetric(q.area.unit)
    ? made((q.flow.in("L/h") * q.time.in("h")) / q.area.in("m2"), "mm", "length")
    : made((q.flow.in("gal/h") * q.time.in("h") * 231) / 144 / q.area.in("ft2"), "in", "length");
};

/**
 * The flow that puts a depth on an area in a time, `Q = A d / T`; in L/min for an area in metric units, else in
 * gal/min.
 *
 * - `A` the area, `d` the depth, `T` the time; each more than zero
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * Source: as {@link irrigationTime}.
 *
 * @example
 * ```ts
 * import { flowForDepth, quantity } from "ratewright";
 * const night = { area: quantity(2, "acre"), depth: quantity(0.5, "in"), time: quantity(8, "h") };
 * Number(flowForDepth(night).in("gal/min").toFixed(1)); // => 56.6
 * ```
 */
export const flowForDepth = (input: {
  readonly area: Area;
  readonly depth: Length;
  readonly time: Time;
}): Flow => {
  const q = readRecord(input, { area, depth, time }, "a record with area, depth and time");
  return isMetric(q.area.unit)
    ? made((q.depth.in("mm") * q.area.in("m2")) / q.time.in("min"), "L/min", "volume/time", "water")
    : made(
        (q.depth.in("in") * q.area.in("ft2") * 144) / 231 / q.time.in("min"),
        "gal/min",
        "volume/time",
        "water",
      );
};

/**
 * The area that a flow covers with a depth in a time, `A = Q T / d`; in m2 for a depth in metric units, else in ft2.
 *
 * - `Q` the flow of water, `T` the time, `d` the depth; each more than zero
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * Source: as {@link irrigationTime}.
 *
 * @example
 * ```ts
 * import { areaForFlow, quantity } from "ratewright";
 * const depth = quantity(6, "mm");
 * areaForFlow({ flow: quantity(50, "L/min", "water"), time: quantity(1, "h"), depth }).in("m2"); // => 500
 * ```
 */
export const areaForFlow = (input: {
  readonly flow: Flow;
  readonly time: Time;
  readonly depth: Length;
}): Area => {
  const q = readRecord(input, { flow, time, depth }, "a record with flow, time and depth");
  return isMetric(q.depth.unit)
    ? made((q.flow.in("L/h") * q.time.in("h")) / q.depth.in("mm"), "m2", "area")
    : made((q.flow.in("gal/h") * q.time.in("h") * 231) / 144 / q.depth.in("in"), "ft2", "area");
};
