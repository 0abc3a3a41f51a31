import {
  type Area,
  allOf,
  expectFields,
  expectQuantity,
  fail,
  inUnit,
  type Length,
  plainCopy,
  type Quantity,
  quantity,
  type Speed,
  unitSystem,
} from "../../quantity/index.js";
import { effectiveFieldCapacity } from "../../spread/index.js";
import { expectHours, expectShare, type Share, type Time } from "../cash.js";

/** How a machine spends its time over one load, and the efficiency that it comes to. */
export interface FieldEfficiency {
  readonly type: "field-efficiency";
  readonly version: 1;
  /** Ground covered per time, all told: in ha/h for a swath in metric units, else in acre/h. */
  readonly workRate: Quantity<"area/time", "none">;
  /** Of the full swath and speed: goes into `effectiveFieldCapacity`, `laborHours`. */
  readonly efficiency: Share;
  /** Shares of the whole time. */
  readonly working: Share;
  readonly turning: Share;
  readonly standing: Share;
}

/**
 * The field efficiency of a machine from its turns and fills.
 *
 * Over an area `A`: working `A / (w v)` with the effective swath `w = swath (1 - overlap)`; turning `turn` for each run of the
 * length `L`, `A / (w L)` of them; standing `fill` for each load, `A / load` of them. Efficiency is `A / (swath v)` by all of it.
 *
 * Runs and loads are counted in parts, as over a long day; the last load of a small site is not rounded up.
 *
 * @param input.overlap - share of the swath; 0 % where there is none. No default
 * @param input.load - the area that one load covers; left out where nothing is filled
 * @param input.fill - a trip to fill and back
 * @param input.speed - `v`, at work
 * @param input.runLength - `L`
 * @throws RatewrightError `missing` for a load without the time to fill it, or the other way round; `range`,
 * `unit/mismatch`, `type`
 * Source: definition of field efficiency (Iowa State University Extension PM 696); the sum is arithmetic.
 *
 * @example
 * ```ts
 * import { fieldEfficiency, quantity } from "ratewright";
 * const sprayer = fieldEfficiency({
 *   swath: quantity(20, "ft"), speed: quantity(4, "mi/h"), overlap: quantity(0, "%"),
 *   runLength: quantity(352, "ft"), turn: quantity(15, "s"),
 *   load: quantity(4, "acre"), fill: quantity(20, "min"),
 * });
 * Number(sprayer.efficiency.in("%").toFixed(1)); // => 48.6
 * ```
 */
export const fieldEfficiency = (input: {
  readonly swath: Length;
  readonly speed: Speed;
  readonly overlap: Share;
  readonly runLength: Length;
  readonly turn: Time;
  readonly load?: Area;
  readonly fill?: Time;
}): FieldEfficiency => {
  const known = ["swath", "speed", "overlap", "runLength", "turn", "load", "fill"] as const;
  const fields = plainCopy(expectFields(input, known));
  const length = (name: "swath" | "runLength") => () =>
    fields[name] === undefined
      ? fail("missing", name, undefined, "a length")
      : expectQuantity(fields[name], { dimension: "length", of: "none", bound: "positive" }, name).in("m");
  const { swath, run, speed, overlap, turn, load, fill } = allOf({
    swath: length("swath"),
    run: length("runLength"),
    speed: () =>
      fields.speed === undefined
        ? fail("missing", "speed", undefined, "a speed")
        : expectQuantity(
            fields.speed,
            { dimension: "length/time", of: "none", bound: "positive" },
            "speed",
          ).in("m/h"),
    overlap: () => expectShare(fields.overlap, "overlap", "the overlap as a share of the swath", 100),
    turn: () =>
      expectHours(fields.turn, "turn", "the time of one turn, 0 s where there is none", "non-negative"),
    load: () =>
      fields.load === undefined
        ? undefined
        : expectQuantity(fields.load, { dimension: "area", bound: "positive" }, "load").in("m2"),
    fill: () =>
      fields.fill === undefined
        ? undefined
        : expectHours(fields.fill, "fill", "the time to fill", "non-negative"),
  });
  if (load === undefined && fill !== undefined)
    fail("missing", "load", load, "the area that one load covers");
  if (load !== undefined && fill === undefined) fail("missing", "fill", fill, "the time that a fill takes");
  const width = (swath * (100 - overlap)) / 100;
  // Hours for one square meter.
  const working = 1 / (width * speed);
  const turning = turn / (width * run);
  const standing = load === undefined || fill === undefined ? 0 : fill / load;
  const all = working + turning + standing;
  const share = (part: number): Share => quantity((100 * part) / all, "%");
  const metric = unitSystem((fields.swath as Length).unit) === "metric";
  return {
    type: "field-efficiency",
    version: 1,
    workRate: inUnit(quantity(1 / all, "m2/h"), metric ? "ha/h" : "acre/h"),
    efficiency: share(1 / (swath * speed)),
    working: share(working),
    turning: share(turning),
    standing: share(standing),
  };
};

/**
 * Ground covered per time from the shares of the day that go to standing and turning: `w v (1 - standing) (1 - turning)`.
 *
 * @param input.standing - share of the whole time that the machine stands, to fill or to clear
 * @param input.turning - share of the driving time that goes to turns
 * @param input.swath - `w`
 * @param input.speed - `v`, at work
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: The Western Producer, June 2015 (a sprayer that stands 37 % of the day and turns 15 % of the driving).
 *
 * @example
 * ```ts
 * import { quantity, workRate } from "ratewright";
 * const sprayer = { swath: quantity(90, "ft"), speed: quantity(14, "mi/h") };
 * const rate = workRate({ ...sprayer, standing: quantity(37, "%"), turning: quantity(15, "%") });
 * Number(rate.in("acre/h").toFixed(1)); // => 81.8
 * ```
 */
export const workRate = (input: {
  readonly swath: Length;
  readonly speed: Speed;
  readonly standing: Share;
  readonly turning: Share;
}): Quantity<"area/time", "none"> => {
  const fields = expectFields(input, ["swath", "speed", "standing", "turning"]);
  const { left } = allOf({
    left: () => {
      const { standing, turning } = allOf({
        standing: () =>
          expectShare(fields.standing, "standing", "the share of the time that the machine is stopped", 100),
        turning: () =>
          expectShare(fields.turning, "turning", "the share of the driving that is turning", 100),
      });
      return ((100 - standing) * (100 - turning)) / 100;
    },
  });
  return effectiveFieldCapacity({
    swath: fields.swath as Length,
    speed: fields.speed as Speed,
    efficiency: quantity(left, "%"),
  });
};
