import { exceeds } from "../../numeric/index.js";
import { expectRecord, fail, outOfRange } from "../../quantity/index.js";
import {
  type Angle,
  type Area,
  angle,
  area,
  type Flow,
  flow,
  isMetric,
  type Length,
  length,
  made,
  optional,
  type Rate,
  readRecord,
  word,
} from "../read.js";

/** A flow over an area as a depth per hour: mm/h for a metric area, else in/h (`96.25 = 60 * 231 / 144`). */
export const rateOf = (q: Flow, squareMeters: number, metric: boolean): Rate =>
  metric
    ? made(q.in("L/h") / squareMeters, "mm/h", "length/time")
    : made((q.in("gal/min") * 96.25) / made(squareMeters, "m2", "area").in("ft2"), "in/h", "length/time");

/**
 * The precipitation rate of a zone from its flow and the area it wets, `PR = Q / A`.
 *
 * - `Q` the flow of all heads together, water; `A` the wetted area; each more than zero
 * - `PR` in mm/h for an area in metric units, else in in/h: `PR = 96.25 Q / A` with gal/min and ft2, exact; 96.3 is
 *   a rounding
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * Source: public utility district, "Determine your sprinkler system's precipitation rate" (10 gal/min on 1000 ft2).
 *
 * @example
 * ```ts
 * import { precipitationRate, quantity } from "ratewright";
 * const zone = { flow: quantity(10, "gal/min", "water"), area: quantity(1000, "ft2") };
 * precipitationRate(zone).in("in/h"); // => 0.9625
 * ```
 */
export const precipitationRate = (input: { readonly flow: Flow; readonly area: Area }): Rate => {
  const q = readRecord(input, { flow, area }, "a record with flow and area");
  return isMetric(q.area.unit)
    ? rateOf(q.flow, q.area.in("m2"), true)
    : made((q.flow.in("gal/min") * 96.25) / q.area.in("ft2"), "in/h", "length/time");
};

/**
 * The precipitation rate of heads of one kind from their spacing: each head waters the ground that belongs to it.
 *
 * `PR = Q / (S L) * 360 / arc`
 *
 * - `Q` the flow of one head; `S` the spacing of the heads along a row; `L` the distance between the rows
 * - `arc` the part of a circle that the head turns through, 360 degrees where left out
 * - `pattern` in place of `L`: `"square"` is `L = S`, `"triangular"` is `L = S sqrt(3) / 2` (heads at the corners of
 *   equal-sided triangles). Where the distance between the rows is known it is used as it is: taking 0.866 of it as well
 *   is a slip that some worksheets make, and reads 15 % too high
 *
 * The rate is that of the inside of a field of such heads, without losses to wind.
 *
 * @throws RatewrightError `conflict` or `missing` unless exactly one of `rowSpacing` and `pattern` is given; `range`,
 * `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: geometry; the arc form, 34,650 = 96.25 * 360, as irrigation handbooks print it.
 *
 * @example
 * ```ts
 * import { quantity, spacingPrecipitationRate } from "ratewright";
 * const head = { flow: quantity(4, "gal/min", "water"), spacing: quantity(30, "ft") };
 * Number(spacingPrecipitationRate({ ...head, pattern: "square" }).in("in/h").toFixed(3)); // => 0.428
 * Number(spacingPrecipitationRate({ ...head, pattern: "triangular" }).in("in/h").toFixed(3)); // => 0.494
 * ```
 */
export const spacingPrecipitationRate = (input: {
  readonly flow: Flow;
  readonly spacing: Length;
  readonly rowSpacing?: Length;
  readonly pattern?: "square" | "triangular";
  readonly arc?: Angle;
}): Rate => {
  const q = readRecord(
    input,
    {
      flow,
      spacing: length,
      rowSpacing: (value, path) => {
        const { pattern } = expectRecord(input);
        if (value === undefined && pattern === undefined)
          fail("missing", path, value, 'the distance between the rows, or pattern: "square" or "triangular"');
        if (value !== undefined && pattern !== undefined)
          fail("conflict", path, value, "either rowSpacing or pattern, not both");
        return optional(length)(value, path);
      },
      pattern: optional(word(["square", "triangular"])),
      arc: optional(arcOf),
    },
    "a record with flow, spacing and rowSpacing or pattern",
  );
  const spacing = q.spacing.in("m");
  const rows = q.rowSpacing?.in("m") ?? (q.pattern === "triangular" ? (spacing * Math.sqrt(3)) / 2 : spacing);
  const turn = (q.arc?.in("deg") ?? 360) / 360;
  return rateOf(q.flow, spacing * rows * turn, isMetric(q.spacing.unit));
};

/** The arc of a head: more than nothing, a full turn at most. */
export const arcOf = (input: unknown, path: string): Angle => {
  const turn = angle(input, path);
  const degrees = turn.in("deg");
  return !(degrees > 0) || exceeds(degrees, 360)
    ? outOfRange(path, turn, { above: 0, max: 360, unit: "deg" }, "an arc of {}")
    : turn;
};
