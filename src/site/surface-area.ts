import { checks, expectQuantity, expectRecord, fail, type Quantity, quantity } from "../quantity/index.js";
import type { Area } from "./lengths.js";

/**
 * The area of sloping ground from its plan area, the area that a map or an aerial image shows.
 *
 * `A = plan / cos(slope)`; for a grade (rise over run) the same as `plan * sqrt(1 + grade^2)`. In the unit of
 * the plan area. The slope is an angle of 0 or more and less than 90 degrees, or a grade of 0 or more, the
 * same over the whole area.
 *
 * The plan area is tagged `plan` or `none`; the result carries `none`. An area measured with a tape along the
 * ground is the surface already. The difference is small: 0.5 % at a grade of 10 %, 2.0 % at 20 %, 11.8 % at
 * 50 %.
 *
 * Sources disagree: the manual of a clinometer prints a correction of 2.3 % for 9 degrees; it is 1.2 %. Its
 * 18 % for 35 degrees is right.
 *
 * @param planArea - the area as seen from above
 * @param slope - an angle (`deg`, `rad`) or a grade (`% grade`, `ft/ft`)
 * @throws RatewrightError `range` for a slope below 0 or of 90 degrees and more, or an area not above zero;
 * `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`; both are reported
 *
 * Source: plane geometry; a hectare at 30 degrees is 11 547 m2: a guide to forest measurement.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { surfaceArea } from "ratewright/site";
 * const bank = surfaceArea(quantity(1000, "ft2", "plan"), quantity(33, "% grade"));
 * Math.round(bank.in("ft2")); // => 1053
 * ```
 */
export const surfaceArea = (
  planArea: Quantity<"area", "plan"> | Area,
  slope: Quantity<"angle", "none"> | Quantity<"length/length", "none">,
): Area => {
  const door = checks();
  const plan = door.run(() => planOf(planArea));
  const stretch = door.run(() => stretchOf(slope));
  door.done();
  const area = plan as Quantity<"area", string>;
  return quantity(area.value * (stretch as number), area.unit as "m2");
};

const planOf = (input: unknown): Quantity<"area", string> => {
  if (input === undefined) fail("missing", "planArea", input, "an area");
  const area = expectQuantity(input, { dimension: "area", bound: "positive" }, "planArea");
  return area.of === "plan" || area.of === "none"
    ? area
    : fail("substance/mismatch", "planArea", input, "a plan area");
};

const stretchOf = (input: unknown): number => {
  if (input === undefined) fail("missing", "slope", input, "an angle or a grade");
  const { unit } = expectRecord(input, "slope", "an angle or a grade");
  const bound = "non-negative";
  if (unit !== "deg" && unit !== "rad") {
    const grade = expectQuantity(input, { dimension: "length/length", of: "none", bound }, "slope");
    return Math.hypot(1, grade.in("m/m"));
  }
  const degrees = expectQuantity(input, { dimension: "angle", of: "none", bound }, "slope").in("deg");
  return degrees < 90
    ? 1 / Math.cos((degrees * Math.PI) / 180)
    : fail("range", "slope", input, "less than 90 deg");
};
