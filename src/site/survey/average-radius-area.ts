import { allOf, checks, expectOneOf } from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthList, unitSet } from "../lengths.js";
import { recordWith } from "../records.js";

/** How radii are joined to an area, see {@link averageRadiusArea}. */
export type RadiusRule = "mean radius" | "mean square";

/**
 * The area of a rounded shape, such as a green, from distances measured from a point inside to its edge at
 * equal angles all round.
 *
 * - `"mean radius"` (default): `A = pi * (mean of r)^2`, the rule of the handbooks. Exact for a circle seen
 *   from its middle, and too low for all else: the mean of squares is never less than the square of the mean.
 * - `"mean square"`: `A = pi * mean of r^2`, the sum of equal sectors. Closer for elongated shapes.
 *
 * In the square of the unit of the first radius. At least 3 radii above zero; 36 (every 10 degrees) is
 * common in print. The whole edge must be in view from the point: an edge that is hidden behind a bend is
 * not measured.
 *
 * @throws RatewrightError `range` for fewer than 3 radii or one that is not above zero; `type` for an unknown
 * rule; `missing`, `unit/mismatch`, `not-finite`; every radius that is not right is reported
 *
 * Source: the mean radius: Western Australian Department of Education, "Calculating area"; the mean square:
 * plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { averageRadiusArea } from "ratewright/site";
 * const radii = [12, 16, 20, 16, 12, 16, 20, 16].map((feet) => quantity(feet, "ft"));
 * Math.round(averageRadiusArea({ radii }).in("ft2")); // => 804
 * Math.round(averageRadiusArea({ radii, rule: "mean square" }).in("ft2")); // => 829
 * ```
 */
export const averageRadiusArea = (green: {
  readonly radii: readonly Length[];
  readonly rule?: RadiusRule;
}): Area => {
  const problems = checks();
  const record = recordWith(green, ["radii", "rule"], problems);
  const { rule: stated = "mean radius" } = record;
  const read = problems.run(() =>
    allOf({
      rule: () => expectOneOf(stated, ["mean radius", "mean square"], "rule"),
      lengths: () => lengthList(record.radii, "radii", 3, "positive"),
    }),
  );
  problems.done();
  const { rule, lengths } = read as NonNullable<typeof read>;
  const units = unitSet((lengths[0] as Length).unit);
  const radii = lengths.map((radius) => radius.in(units.length));
  const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b) / values.length;
  const square = rule === "mean square" ? mean(radii.map((r) => r * r)) : mean(radii) ** 2;
  return areaIn(Math.PI * square, units);
};
