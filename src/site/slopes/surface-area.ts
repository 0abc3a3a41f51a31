import { allOf, expectQuantity, fail, Quantity } from "../../quantity/index.js";
import type { Area } from "../areas.js";
import { gradeOf, type Slope } from "./read-slope.js";

/**
 * The area of sloping ground from its plan area, the area that a map or an aerial image shows.
 *
 * `A = plan / cos(slope)`; for a grade (rise over run) the same as `plan * sqrt(1 + grade^2)`. In the unit of
 * the plan area. The slope is an angle of 0 or more and less than 90 degrees, a grade of 0 or more, or a text such
 * as `"3:1"`, the same over the whole area.
 *
 * The plan area is tagged `plan` or `none`; the result carries `none`. An area measured with a tape along the
 * ground is the surface already. The difference is small: 0.5 % at a grade of 10 %, 2.0 % at 20 %, 11.8 % at
 * 50 %.
 *
 * Sources disagree: the manual of a clinometer prints that a plan length is 2.3 % less than the length along ground of
 * 9 degrees; it is 1.2 % less. Its 18 % less at 35 degrees is right.
 *
 * @param planArea - the area as seen from above
 * @param slope - an angle (`deg`, `rad`), a grade (`% grade`, `ft/ft`) or a text, see {@link slopeOf}
 * @throws RatewrightError `range` for a slope below 0 or of 90 degrees and more, or an area not above zero;
 * `missing`, `type`, `text`, `unit/ambiguous`, `unit/mismatch`, `substance/mismatch`, `not-finite`; both are
 * reported
 *
 * Source: plane geometry; a hectare at 30 degrees is 11 547 m2: a guide to forest measurement.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { surfaceArea } from "ratewright/site";
 * const bank = surfaceArea(quantity(1000, "ft2", "plan"), quantity(33, "% grade"));
 * Math.round(bank.in("ft2")); // => 1053
 * Math.round(surfaceArea(quantity(1000, "ft2", "plan"), "3:1").in("ft2")); // => 1054
 * ```
 */
export const surfaceArea = (planArea: Quantity<"area", "plan"> | Area, slope: Slope): Area => {
  const { plan, grade } = allOf({
    plan: () => areaAt(planArea, "planArea", ["none", "plan"], "a plan area"),
    grade: () => gradeOf(slope, "slope"),
  });
  return new Quantity(plan.value * Math.hypot(1, grade), plan.unit, "none", "area");
};

/**
 * The plan area of sloping ground, as a map shows it, from the area along the ground.
 *
 * `plan = A * cos(slope)`, the inverse of {@link surfaceArea}. In the unit of the area; the result is tagged
 * `plan`. The area carries no tag, `treated` or `gross`.
 *
 * @param area - the area along the ground, as a tape or a wheel measures it
 * @param slope - as for {@link surfaceArea}
 * @throws RatewrightError `substance/mismatch` for what is a plan area already; `range`, `missing`, `type`, `text`,
 * `unit/ambiguous`, `unit/mismatch`, `not-finite`; both are reported
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { planArea } from "ratewright/site";
 * const plan = planArea(quantity(11547, "m2"), quantity(30, "deg"));
 * Math.round(plan.in("m2")); // => 10000
 * plan.of; // => "plan"
 * ```
 */
export const planArea = (
  area: Area | Quantity<"area", "treated"> | Quantity<"area", "gross">,
  slope: Slope,
): Quantity<"area", "plan"> => {
  const { ground, grade } = allOf({
    ground: () => areaAt(area, "area", ["none", "treated", "gross"], "an area along the ground"),
    grade: () => gradeOf(slope, "slope"),
  });
  return new Quantity(ground.value / Math.hypot(1, grade), ground.unit, "plan", "area");
};

const areaAt = (
  input: unknown,
  path: string,
  tags: readonly string[],
  expected: string,
): Quantity<"area", string> => {
  if (input === undefined) return fail("missing", path, input, expected);
  const area = expectQuantity(input, { dimension: "area", bound: "positive" }, path);
  return tags.includes(area.of) ? area : fail("substance/mismatch", path, input, expected);
};
