import { checks, expectQuantity, expectRecord, fail, type Quantity } from "../quantity/index.js";
import { type Area, areaIn, type Length, lengthOf, lengthsOf, unitSet } from "./lengths.js";

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
  const record = expectRecord(circle, "shape", "a record with radius, diameter or circumference");
  const given = measures.filter((key) => record[key] !== undefined);
  const [key] = given;
  if (key === undefined)
    return fail("missing", "radius", undefined, "a radius, a diameter or a circumference");
  if (given.length > 1)
    return fail("conflict", key, given.join(" and "), "one of radius, diameter and circumference");
  const length = lengthOf(record[key], key);
  const units = unitSet(length.unit);
  const size = length.in(units.length);
  if (key === "radius") return areaIn(Math.PI * size * size, units);
  return areaIn(key === "diameter" ? (Math.PI * size * size) / 4 : (size * size) / (4 * Math.PI), units);
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
  const record = expectRecord(sector, "shape", "a record with radius, angle");
  const door = checks();
  const radius = door.run(() => lengthOf(record.radius, "radius"));
  const angle = door.run(() => angleOf(record.angle));
  door.done();
  const units = unitSet((radius as Length).unit);
  const size = (radius as Length).in(units.length);
  return areaIn((Math.PI * size * size * (angle as number)) / 360, units);
};

const angleOf = (input: unknown): number => {
  if (input === undefined) fail("missing", "angle", input, "an angle");
  const angle = expectQuantity(input, { dimension: "angle", of: "none", bound: "positive" }, "angle");
  // a full turn in radians converts to 360 but for the last digit
  const degrees = angle.in("deg");
  return degrees <= 360 * (1 + 1e-12) ? degrees : fail("range", "angle", input, "360 deg or less");
};

/**
 * The area of a ring: a circle without the smaller circle inside it, such as the collar of a green.
 *
 * `A = pi * (outerRadius^2 - innerRadius^2)`, worked out as `pi * (outer - inner) * (outer + inner)`, in
 * the square of the unit of `outerRadius`. Both above zero, the inner one smaller. The circles need not
 * share their middle.
 *
 * @throws RatewrightError `range` where the inner radius is not the smaller one; `missing`, `type`,
 * `unit/mismatch`, `not-finite`; every length that is not right is reported
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { annulusArea } from "ratewright/site";
 * const collar = annulusArea({ outerRadius: quantity(44, "ft"), innerRadius: quantity(40, "ft") });
 * Math.round(collar.in("ft2")); // => 1056
 * ```
 */
export const annulusArea = (ring: { readonly outerRadius: Length; readonly innerRadius: Length }): Area => {
  const { of, units } = lengthsOf(ring, ["outerRadius", "innerRadius"]);
  if (of.innerRadius >= of.outerRadius) {
    fail(
      "range",
      "innerRadius",
      ring.innerRadius,
      `less than the outer radius, ${of.outerRadius} ${units.length}`,
    );
  }
  return areaIn(Math.PI * (of.outerRadius - of.innerRadius) * (of.outerRadius + of.innerRadius), units);
};
