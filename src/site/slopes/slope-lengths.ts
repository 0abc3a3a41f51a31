import { allOf, likeQuantity } from "../../quantity/index.js";
import { type Length, lengthOf } from "../lengths.js";
import { gradeOf, type Slope } from "./read-slope.js";

/**
 * The length along sloping ground from the length on a plan.
 *
 * `L = plan / cos(slope)`, in the unit of the plan length, for a line straight up or down the slope; a line
 * along the contour is as long on the ground as on the plan.
 *
 * @param planLength - the length as a map shows it
 * @param slope - an angle, a grade or a text such as `"3:1"`, see {@link slopeOf}
 * @throws RatewrightError `missing`, `type`, `text`, `unit/ambiguous`, `unit/mismatch`, `not-finite`, `range`; both
 * are reported
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { groundLength } from "ratewright/site";
 * groundLength(quantity(40, "ft"), quantity(75, "% grade")).in("ft"); // => 50
 * ```
 */
export const groundLength = (planLength: Length, slope: Slope): Length => {
  const { length, grade } = allOf({
    length: () => lengthOf(planLength, "planLength"),
    grade: () => gradeOf(slope, "slope"),
  });
  return likeQuantity(length, length.value * Math.hypot(1, grade));
};

/**
 * The length on a plan from a length that was taped or wheeled straight up or down a slope.
 *
 * `plan = L * cos(slope)`, in the unit of the length.
 *
 * @param length - the length along the ground
 * @param slope - an angle, a grade or a text such as `"3:1"`, see {@link slopeOf}
 * @throws RatewrightError `missing`, `type`, `text`, `unit/ambiguous`, `unit/mismatch`, `not-finite`, `range`; both
 * are reported
 *
 * Source: plane geometry; courses of surveying call it the horizontal distance.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { planLength } from "ratewright/site";
 * planLength(quantity(50, "ft"), quantity(75, "% grade")).in("ft"); // => 40
 * Number(planLength(quantity(25, "m"), quantity(9, "deg")).in("m").toFixed(2)); // => 24.69
 * ```
 */
export const planLength = (length: Length, slope: Slope): Length => {
  const read = allOf({ length: () => lengthOf(length, "length"), grade: () => gradeOf(slope, "slope") });
  return likeQuantity(read.length, read.length.value / Math.hypot(1, read.grade));
};
