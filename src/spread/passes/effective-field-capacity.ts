import { notShare } from "../../numeric/house.js";
import {
  checks,
  expectFields,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { above, fieldsOf, isMetric, type Length, type Speed } from "../inputs.js";

/**
 * How much ground a machine covers per time.
 *
 * `C = w v e`, in acre/h for a swath in US customary units, else in ha/h
 *
 * - `w` effective swath, `v` speed, `e` field efficiency: what is left after turns, fills and overlap
 *
 * In the units of the trade `acre/h = mph * ft * e / 8.25`; 8.25 is 43 560 / 5280, and follows from the units.
 *
 * Printed field efficiencies: 70 % for fertilizer spreaders of 40 ft, 60 to 63 % for manure spreaders
 * (Iowa State University). There is no default: 100 % is the theoretical capacity.
 *
 * Range: all above zero; an efficiency of 100 % or less.
 *
 * @throws RatewrightError with every problem: `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range`,
 * `not-finite`
 *
 * Source: University of Kentucky AEN-73, 1991; Iowa State University Extension PM 696, 2001.
 *
 * @example
 * ```ts
 * import { effectiveFieldCapacity, quantity } from "ratewright";
 * const run = { swath: quantity(40, "ft"), speed: quantity(6, "mi/h"), efficiency: quantity(70, "%") };
 * Number(effectiveFieldCapacity(run).in("acre/h").toFixed(1)); // => 20.4
 * ```
 */
export const effectiveFieldCapacity = (input: {
  readonly swath: Length;
  readonly speed: Speed;
  readonly efficiency: Quantity<"1", "none">;
}): Quantity<"area/time", "none"> => {
  const record = expectFields(
    input,
    ["swath", "speed", "efficiency"],
    "input",
    "a record with swath, speed, efficiency",
  );
  const problems = checks();
  const found = problems.run(() =>
    fieldsOf(record, { swath: { dimension: "length" }, speed: { dimension: "length/time" } }),
  );
  const efficiency = problems.run(() => efficiencyOf(record.efficiency));
  problems.done();
  const { swath, speed } = found as NonNullable<typeof found>;
  const share = efficiency as Quantity<"1", "none">;
  return isMetric(swath.unit)
    ? quantity(above((swath.in("m") * speed.in("m/h") * share.in("%")) / 1e6, "swath"), "ha/h")
    : quantity(above((swath.in("ft") * speed.in("ft/h") * share.in("%")) / 4_356_000, "swath"), "acre/h");
};

const efficiencyOf = (input: unknown): Quantity<"1", "none"> => {
  if (input === undefined || input === null) {
    return fail("missing", "efficiency", input, "a share, 100 % for the theory");
  }
  const share = expectQuantity(input, { dimension: "1", of: "none", bound: "positive" }, "efficiency");
  if (share.in("%") > 100) return outOfRange("efficiency", share, { max: 100, unit: "%" });
  notShare(share.in("%"), "efficiency");
  return share;
};
