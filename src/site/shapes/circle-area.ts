import { described } from "../../quantity/house.js";
import { allOf, checks, expectQuantity, fail, outOfRange, type Quantity } from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthOf, unitSet } from "../lengths.js";
import { recordWith } from "../records.js";

/** A circle by one of its measures: exactly one. */
export type Circle =
  | { readonly radius: Length; readonly diameter?: never; readonly circumference?: never }
  | { readonly diameter: Length; readonly radius?: never; readonly circumference?: never }
  | { readonly circumference: Length; readonly radius?: never; readonly diameter?: never };

const measures = ["radius", "diameter", "circumference"] as const;

/**
 * The area of a circle from its radius, its diameter or its circumference.
 *
 * `A = pi * radius^2 = pi / 4 * diameter^2 = circumference^2 / (4 pi)`, in the square of the unit given.
 * Exactly one of the three is given, above zero.
 *
 * Sources disagree: a rule of the trade writes `0.8 * diameter^2`, 1.86 % more for every circle, and many
 * worked examples take pi as 3.14, 0.05 % less. This function takes neither.
 *
 * @throws RatewrightError `missing` where none of the three is given, `conflict` where more than one is;
 * `type`, `unit/mismatch`, `not-finite`, `range`
 *
 * Source: plane geometry; from the circumference: Ohio State University Extension, "Pond Measurements";
 * the rule with 0.8: Grounds Maintenance, "Calculate areas".
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { circleArea } from "ratewright/site";
 * Math.round(circleArea({ radius: quantity(44, "ft") }).in("ft2")); // => 6082
 * Number(circleArea({ circumference: quantity(520, "ft") }).in("acre").toFixed(5)); // => 0.49398
 * ```
 */
export const circleArea = (circle: Circle): Area => {
  const { radius, units } = circleOf(circle);
  return areaIn(Math.PI * radius * radius, units);
};

/** The radius of a circle that is told by one of its measures, as a number of a unit. */
export const circleOf = (
  input: unknown,
): { readonly radius: number; readonly units: ReturnType<typeof unitSet> } => {
  const problems = checks();
  const record = recordWith(input, measures, problems);
  const given = measures.filter((key) => record[key] !== undefined);
  const [key] = given;
  if (key === undefined) {
    problems.run(() => fail("missing", "radius", undefined, "a radius, a diameter or a circumference"));
  } else if (given.length > 1) {
    problems.run(() =>
      fail("conflict", key, described(given.join(" and ")), "one of radius, diameter and circumference"),
    );
  }
  const length = key === undefined ? undefined : problems.run(() => lengthOf(record[key], key));
  problems.done();
  const one = length as Length;
  const units = unitSet(one.unit);
  const size = one.in(units.length);
  return { radius: key === "radius" ? size : size / (key === "diameter" ? 2 : 2 * Math.PI), units };
};

/**
 * The area of a sector of a circle, such as the ground that a part-circle sprinkler wets.
 *
 * `A = pi * radius^2 * angle / 360 deg`, in the square of the unit of `radius`. The radius is above zero,
 * the angle above 0 and no more than 360 degrees.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `not-finite`, `range`; both are reported
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { sectorArea } from "ratewright/site";
 * const quarter = sectorArea({ radius: quantity(40, "ft"), angle: quantity(90, "deg") });
 * Number(quarter.in("ft2").toFixed(2)); // => 1256.64
 * ```
 */
export const sectorArea = (sector: {
  readonly radius: Length;
  readonly angle: Quantity<"angle", "none">;
}): Area => {
  const problems = checks();
  const record = recordWith(sector, ["radius", "angle"], problems);
  const read = problems.run(() =>
    allOf({ radius: () => lengthOf(record.radius, "radius"), angle: () => degreesOf(record.angle, "angle") }),
  );
  problems.done();
  const { radius, angle } = read as NonNullable<typeof read>;
  const units = unitSet(radius.unit);
  const size = radius.in(units.length);
  return areaIn((Math.PI * size * size * angle) / 360, units);
};

/** Takes an angle of more than 0 and up to a full turn, in degrees. */
export const degreesOf = (input: unknown, path: string): number => {
  if (input === undefined) return fail("missing", path, input, 'an angle, such as quantity(90, "deg")');
  if (typeof input === "number") {
    return fail("type", path, input, 'an angle, such as quantity(90, "deg"): a number has no unit');
  }
  const angle = expectQuantity(input, { dimension: "angle", of: "none", bound: "positive" }, path);
  // a full turn in radians converts to 360 but for the last digit
  const degrees = angle.in("deg");
  return degrees <= 360 * (1 + 1e-12)
    ? Math.min(360, degrees)
    : outOfRange(path, input, { max: 360, unit: "deg" });
};
