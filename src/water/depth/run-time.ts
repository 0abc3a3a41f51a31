import { exceeds } from "../../numeric/index.js";
import { fail } from "../../quantity/index.js";
import {
  depth,
  isMetric,
  type Length,
  made,
  number,
  percent,
  type Rate,
  rate,
  readRecord,
  type Share,
  type Time,
  word,
} from "../read.js";

/** Ways to lengthen a run for the uneven fall of water. Sources use them side by side: say which. */
export type MultiplierMethod =
  | "none"
  | "distribution uniformity"
  | "lower half from lower quarter"
  | "scheduling coefficient";

const methods = [
  "none",
  "distribution uniformity",
  "lower half from lower quarter",
  "scheduling coefficient",
] as const;

/**
 * By how much a run is lengthened because water falls unevenly.
 *
 * | method | multiplier | takes |
 * | --- | --- | --- |
 * | `"none"` | 1 | nothing |
 * | `"distribution uniformity"` | `100 / DU` | `uniformity`, lower quarter or lower half |
 * | `"lower half from lower quarter"` | `1 / (0.4 + 0.6 DU / 100)` | `uniformity` of the lower quarter |
 * | `"scheduling coefficient"` | the coefficient | `coefficient`, 1 or more |
 *
 * They differ: a lower quarter of 60 % gives 1.67 by the second and 1.32 by the third. The second waters the driest
 * quarter in full and the rest too much; the third is the compromise of the irrigation trade.
 *
 * @throws RatewrightError `missing` for what the method needs and `conflict` for what it does not take; `range`,
 *   `type`, `unit/mismatch`
 *
 * Where the catch is at hand, the lower half need not be guessed: give `distributionUniformity` of it with `part: "lower
 * half"` to the second method.
 *
 * Source: the division by uniformity: University of Minnesota Extension, "Auditing home lawn irrigation systems". The
 * third: the figures 0.4 and 0.6 from memory; in a normal spread the lower half is `0.372 + 0.628 DU / 100` (derived), less
 * than 0.02 from them for 40 % and more. A pattern lies further off on either side: R. D. von Bernuth and B. Mecham,
 * "Defining the run time multiplier", example 1, has a lower quarter of 0.772 and a lower half of 0.810, where this gives
 * 0.863; the 15 cans of `distributionUniformity` have 0.496 and 0.716, where it gives 0.698. That the trade goes by
 * something close to the lower half: B. Mecham, "Audit based landscape irrigation scheduling", ASABE paper IRR10-10040,
 * 2010 (abstract).
 *
 * @example
 * ```ts
 * import { quantity, runTimeMultiplier } from "ratewright";
 * const uniformity = quantity(60, "%");
 * Number(runTimeMultiplier({ method: "distribution uniformity", uniformity }).toFixed(2)); // => 1.67
 * Number(runTimeMultiplier({ method: "lower half from lower quarter", uniformity }).toFixed(2)); // => 1.32
 * ```
 */
export const runTimeMultiplier = (input: {
  readonly method: MultiplierMethod;
  readonly uniformity?: Share;
  readonly coefficient?: number;
}): number => {
  const method = readMethod(input);
  const wanted =
    method === "none" ? undefined : method === "scheduling coefficient" ? "coefficient" : "uniformity";
  const only =
    <T>(name: string, read: (value: unknown, path: string) => T) =>
    (value: unknown, path: string) => {
      if (name === wanted) return read(value, path);
      return value === undefined
        ? undefined
        : fail("conflict", path, value, `nothing: "${method}" takes no ${name}`);
    };
  const q = readRecord(
    input,
    {
      method: word(methods),
      // Below one percent nothing falls evenly enough to run longer for.
      uniformity: only("uniformity", percent({ min: 1, max: 100 })),
      coefficient: only("coefficient", number({ min: 1, max: 100 })),
    },
    "a record with method, and uniformity or coefficient",
  );
  if (method === "distribution uniformity") return 100 / (q.uniformity as number);
  if (method === "lower half from lower quarter") return 1 / (0.4 + 0.6 * ((q.uniformity as number) / 100));
  return method === "none" ? 1 : (q.coefficient as number);
};

const readMethod = (input: unknown): MultiplierMethod => {
  const method: unknown = Object(input).method;
  return methods.find((one) => one === method) ?? "none";
};

/**
 * How long a zone runs for a depth: `t = d m / PR`.
 *
 * - `d` the depth to put down, gross or net as the caller means it (see {@link grossDepth})
 * - `PR` the precipitation rate of the zone, best from catch cans
 * - `m` the multiplier for uneven fall, 1 or more; 1 where left out. See {@link runTimeMultiplier}
 * - `t` in minutes
 *
 * Correct for losses once: either by efficiency or by a multiplier, or by both only where the efficiency leaves out
 * unevenness.
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `not-finite`
 *
 * Source: horticulture course page, "Design considerations: scheduling coefficient" (9 mm a day at 12 mm/h and 1.7:
 * 1.3 h).
 *
 * @example
 * ```ts
 * import { quantity, runTime } from "ratewright";
 * const day = { depth: quantity(0.2, "in"), rate: quantity(0.8, "in/h") };
 * runTime(day).in("min"); // => 15
 * runTime({ ...day, multiplier: 1.25 }).in("min"); // => 18.75
 * ```
 */
export const runTime = (input: {
  readonly depth: Length;
  readonly rate: Rate;
  readonly multiplier?: number;
}): Time => {
  const q = readRecord(
    input,
    {
      depth,
      rate,
      multiplier: (value, path) => (value === undefined ? 1 : number({ min: 1, max: 100 })(value, path)),
    },
    "a record with depth, rate and multiplier",
  );
  return made(minutesFor(q.depth, q.rate, q.multiplier), "min", "time");
};

/** Minutes for a depth at a rate, each in the units of the other's system so that whole figures stay whole. */
export const minutesFor = (d: Length, pr: Rate, multiplier: number): number => {
  const [deep, fast] = isMetric(pr.unit) ? [d.in("mm"), pr.in("mm/h")] : [d.in("in"), pr.in("in/h")];
  return (60 * deep * multiplier) / fast;
};

/** Whether a rate is above an intake, beyond rounding. */
export const runsOff = (pr: Rate, intake: Rate): boolean => exceeds(pr.in("mm/h"), intake.in("mm/h"));
