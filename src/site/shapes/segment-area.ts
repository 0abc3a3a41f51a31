import { described } from "../../quantity/house.js";
import { checks, fail, outOfRange, type Quantity } from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthOf, type UnitSet, unitSet } from "../lengths.js";
import { recordWith } from "../records.js";
import { degreesOf } from "./circle-area.js";

/** A segment of a circle: by chord and height, as a tape measures it, or by radius and angle. */
export type Segment =
  | { readonly chord: Length; readonly height: Length }
  | { readonly radius: Length; readonly angle: Quantity<"angle", "none"> };

/**
 * The area of a segment of a circle: what lies between a straight line and the arc over it, as a bed or a bay
 * along a path.
 *
 * `A = r^2 / 2 * (a - sin a)`, with `a` the angle of the arc in radians and `r` its radius. From the `chord`
 * `c`, the straight line from end to end, and the `height` `h`, from the middle of the chord to the arc:
 * `r = (c^2 / 4 + h^2) / (2 h)` and `a = 4 atan(2 h / c)`; a height of more than half the chord makes more
 * than half a circle. In the square of the unit of the first measure. All above zero, the angle less than 360
 * degrees.
 *
 * The short cut `2/3 * chord * height` holds for flat arcs only: it is 4.6 % too low where the height is a quarter
 * of the chord, and 15 % for a half circle.
 *
 * @throws RatewrightError `missing` and `conflict` for other than one of the two pairs; `type`,
 * `unit/mismatch`, `not-finite`, `range`; both measures are reported
 *
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { segmentArea } from "ratewright/site";
 * const bay = segmentArea({ chord: quantity(40, "ft"), height: quantity(10, "ft") });
 * Number(bay.in("ft2").toFixed(1)); // => 279.6
 * ```
 */
export const segmentArea = (segment: Segment): Area => {
  const { radius, angle, units } = segmentOf(segment);
  return areaIn(segmentOfCircle(radius, angle), units);
};

/** Area of the segment under an arc of `angle` radians; the difference is a series where it would lose digits. */
export const segmentOfCircle = (radius: number, angle: number): number =>
  ((radius * radius) / 2) * arcExcess(angle);

/** `a - sin a`. */
const arcExcess = (a: number): number => {
  if (a > 0.3) return a - Math.sin(a);
  const square = a * a;
  return (
    ((a * square) / 6) *
    (1 -
      (square / 20) * (1 - (square / 42) * (1 - (square / 72) * (1 - (square / 110) * (1 - square / 156)))))
  );
};

const pairs = ["chord", "height", "radius", "angle"] as const;

/** The radius and the angle, in radians, of a segment. */
export const segmentOf = (
  input: unknown,
): { readonly radius: number; readonly angle: number; readonly units: UnitSet } => {
  const problems = checks();
  const record = recordWith(input, pairs, problems);
  const byTape = record.chord !== undefined || record.height !== undefined;
  const expected = "chord and height, or radius and angle";
  if (byTape && (record.radius !== undefined || record.angle !== undefined)) {
    problems.run(() => fail("conflict", "chord", described("measures of both pairs"), expected));
  }
  const given = pairs.some((key) => record[key] !== undefined);
  if (!given) problems.run(() => fail("missing", "chord", undefined, expected));
  const [first, second] = byTape ? (["chord", "height"] as const) : (["radius", "angle"] as const);
  const one = given ? problems.run(() => lengthOf(record[first], first)) : undefined;
  const height = given && byTape ? problems.run(() => lengthOf(record[second], second)) : undefined;
  const degrees = given && !byTape ? problems.run(() => degreesOf(record.angle, "angle")) : undefined;
  if (degrees === 360) problems.run(() => outOfRange("angle", record.angle, { below: 360, unit: "deg" }));
  problems.done();
  const length = one as Length;
  const units = unitSet(length.unit);
  const size = length.in(units.length);
  if (!byTape) return { radius: size, angle: ((degrees as number) * Math.PI) / 180, units };
  const h = (height as Length).in(units.length);
  return { radius: ((size * size) / 4 + h * h) / (2 * h), angle: 4 * Math.atan2(2 * h, size), units };
};
