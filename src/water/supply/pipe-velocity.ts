import { fixedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import type { Finding } from "../../quantity/index.js";
import { numberIn } from "../../quantity/index.js";
import {
  type Flow,
  flow,
  isMetric,
  type Length,
  length,
  made,
  type Rate,
  rate,
  readRecord,
} from "../read.js";

/** Meters a second of a flow in a pipe. */
const speedOf = (q: Flow, diameter: Length): number =>
  q.in("m3/h") / 3600 / ((Math.PI / 4) * diameter.in("m") ** 2);

/** How fast water runs in a pipe, with what is said of that. */
export interface PipeVelocity {
  readonly type: "pipe-velocity";
  readonly version: 1;
  readonly value: Rate;
  /** A caution above 5 ft/s. */
  readonly findings: readonly Finding[];
}

/**
 * How fast water runs in a full pipe, `v = Q / (pi / 4 d²)`; in m/s for a diameter in metric units, else in ft/s:
 * `v = 0.4085 Q / d²` with gal/min and inches.
 *
 * - `flow` `Q` of water; `diameter` `d` inside, not the nominal size of the pipe
 *
 * Above 5 ft/s (1.5 m/s) it is a caution: valves that close then hammer.
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: geometry; 5 ft/s: common practice, no source.
 *
 * @example
 * ```ts
 * import { pipeVelocity, quantity } from "ratewright";
 * const pipe = pipeVelocity({ flow: quantity(10, "gal/min", "water"), diameter: quantity(1, "in") });
 * pipe.value.in("ft/s").toFixed(2); // => "4.08"
 * ```
 */
export const pipeVelocity = (input: { readonly flow: Flow; readonly diameter: Length }): PipeVelocity => {
  const q = readRecord(input, { flow, diameter: length }, "a record with flow and diameter");
  const speed = made(speedOf(q.flow, q.diameter), "m/s", "length/time");
  const [feet, metric] = [speed.in("ft/s"), isMetric(q.diameter.unit)];
  const [told, unit] = metric ? ([speed.value, "m/s"] as const) : ([feet, "ft/s"] as const);
  const usual = metric ? numberIn({ value: 5, unit: "ft/s" }, "m/s") : 5;
  const shown = fixedApart(told, usual, 1);
  return {
    type: "pipe-velocity",
    version: 1,
    value: metric ? speed : made(feet, "ft/s", "length/time"),
    findings: exceeds(feet, 5)
      ? [
          {
            code: "water/fast-in-pipe",
            severity: "caution",
            path: "flow",
            params: { feetPerSecond: feet, usual: 5 },
            text: `Water runs at ${shown(told)} ${unit}: above ${metric ? shown(usual) : usual} ${unit}, closing valves cause water hammer.`,
            source: "common practice, no source",
          },
        ]
      : [],
  };
};

/**
 * The flow that a pipe carries at a velocity, `Q = v pi / 4 d²`; in L/min for a diameter in metric units, else in gal/min.
 *
 * - `velocity` `v`, such as 5 ft/s; `diameter` `d` inside
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: geometry.
 *
 * @example
 * ```ts
 * import { pipeFlow, quantity } from "ratewright";
 * const most = pipeFlow({ velocity: quantity(5, "ft/s"), diameter: quantity(1, "in") });
 * most.in("gal/min").toFixed(1); // => "12.2"
 * ```
 */
export const pipeFlow = (input: { readonly velocity: Rate; readonly diameter: Length }): Flow => {
  const q = readRecord(input, { velocity: rate, diameter: length }, "a record with velocity and diameter");
  const cubicMeters = q.velocity.in("m/s") * 3600 * (Math.PI / 4) * q.diameter.in("m") ** 2;
  const own = made(cubicMeters, "m3/h", "volume/time", "water");
  return isMetric(q.diameter.unit)
    ? made(own.in("L/min"), "L/min", "volume/time", "water")
    : made(own.in("gal/min"), "gal/min", "volume/time", "water");
};
