import { type Quantity, quantity } from "../../quantity/index.js";
import { gradeOf, type Slope } from "./read-slope.js";

/** A slope in the three ways in which it is told. */
export interface SlopeFigures {
  readonly type: "slope";
  readonly version: 1;
  /** Rise over run, in percent. */
  readonly grade: Quantity<"length/length", "none">;
  readonly angle: Quantity<"angle", "none">;
  /** Run for 1 of rise, the 3 of `3:1`; missing for level ground. */
  readonly run?: number;
  /** Length along the ground for 1 of plan. */
  readonly stretch: number;
}

/**
 * A slope as percent grade, as an angle and as a ratio, from any of them.
 *
 * `grade = rise / run = tan(angle)`, `stretch = sqrt(1 + grade^2) = 1 / cos(angle)`. A text is read as the trade
 * writes it: `"3:1"` and `"3:1 H:V"` are 3 of run to 1 of rise, `"1:3 V:H"` and `"1 in 3"` the same; `"12 %"`,
 * `"7 deg"`, `"level"`. A bare ratio with the smaller number first, such as `"1:3"`, is written for both orders
 * and is refused with the choice.
 *
 * Range: 0 or more, less than upright.
 *
 * @throws RatewrightError `missing`, `type`, `text`, `unit/ambiguous`, `unit/mismatch`, `range`
 *
 * Source: plane geometry; run to rise: Ohio State University Extension, Bulletin 813 (3:1, run:rise). Another page
 * of the same bulletin calls it rise:run, and others put the rise first.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { slopeOf } from "ratewright/site";
 * const bank = slopeOf("3:1");
 * Number(bank.grade.in("% grade").toFixed(1)); // => 33.3
 * Number(bank.angle.in("deg").toFixed(1)); // => 18.4
 * slopeOf(quantity(25, "% grade")).run; // => 4
 * slopeOf("1:3"); // => throws unit/ambiguous
 * ```
 */
export const slopeOf = (slope: Slope): SlopeFigures => {
  const grade = gradeOf(slope, "slope");
  return {
    type: "slope",
    version: 1,
    grade: quantity(grade * 100, "% grade"),
    angle: quantity((Math.atan(grade) * 180) / Math.PI, "deg"),
    ...(grade > 0 ? { run: 1 / grade } : {}),
    stretch: Math.hypot(1, grade),
  };
};
