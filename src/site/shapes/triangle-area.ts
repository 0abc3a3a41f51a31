import { described } from "../../quantity/house.js";
import { fail } from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthsOf } from "../lengths.js";

/**
 * The area of a triangle from its base and height.
 *
 * `A = base * height / 2`, in the square of the unit of `base`. The height is measured square to the
 * base, not along a side. Both above zero.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `range`; every length that is
 * not right is reported
 *
 * Source: Grounds Maintenance, "Calculate areas".
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { triangleArea } from "ratewright/site";
 * triangleArea({ base: quantity(200, "ft"), height: quantity(40, "ft") }).in("ft2"); // => 4000
 * ```
 */
export const triangleArea = (triangle: { readonly base: Length; readonly height: Length }): Area => {
  const { of, units } = lengthsOf(triangle, ["base", "height"]);
  return areaIn((of.base * of.height) / 2, units);
};

/**
 * The area of a triangle from its three sides: what a tape alone can measure.
 *
 * With `a >= b >= c`, `A = sqrt((a + (b + c)) (c - (a - b)) (c + (a - b)) (a + (b - c))) / 4`, which is
 * Heron's formula with its brackets set so that a long thin triangle keeps its digits. The result is in
 * the square of the unit of `a`; the order in which the sides are given does not matter.
 *
 * Every side is above zero and shorter than the other two together.
 *
 * @throws RatewrightError `infeasible` where the longest side is as long as the other two or longer: such
 * sides do not close; `missing`, `type`, `unit/mismatch`, `not-finite`, `range`, every side reported
 *
 * Source: Heron's formula; the brackets by W. Kahan, "Miscalculating area and angles of a needle-like triangle", 2014, as
 * programs of geometry cite it.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { triangleAreaFromSides } from "ratewright/site";
 * triangleAreaFromSides({ a: quantity(3, "m"), b: quantity(4, "m"), c: quantity(5, "m") }).in("m2"); // => 6
 * ```
 */
export const triangleAreaFromSides = (sides: {
  readonly a: Length;
  readonly b: Length;
  readonly c: Length;
}): Area => {
  const { of, units } = lengthsOf(sides, ["a", "b", "c"]);
  return areaIn(heron(of, units.length), units);
};

/** The area of a triangle from its three sides, by name; sides that do not close are refused at the longest. */
export const heron = (sides: Readonly<Record<string, number>>, unit: string): number => {
  type Side = readonly [name: string, length: number];
  const [[longest, a], [, b], [, c]] = Object.entries(sides).sort(
    ([, one], [, other]) => other - one,
  ) as unknown as readonly [Side, Side, Side]; // there are three
  // 0.1, 0.2 and 0.3 lie in one line, whatever the last digit says
  if (c - (a - b) <= 4 * Number.EPSILON * a) {
    fail(
      "infeasible",
      longest,
      described(`${a} ${unit}`),
      `less than the other two sides together, ${Number((b + c).toPrecision(12))} ${unit}: measure the three again`,
    );
  }
  return Math.sqrt((a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c))) / 4;
};
