import {
  allOf,
  checks,
  expectFields,
  expectList,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthOf, unitSet } from "../lengths.js";
import { recordWith } from "../records.js";
import type { Point } from "./crossings.js";
import { mostCorners, ringOf, shoelace } from "./rings.js";

/** A corner as seen from one point: its direction, and how far it is. */
export interface Ray {
  /** Direction, from any one line and always the same way round: a compass bearing will do. */
  readonly angle: Quantity<"angle", "none">;
  readonly distance: Length;
}

/**
 * The area of a shape with straight edges from one point: the direction and the distance of each corner, by
 * compass and tape (surveying by radiation).
 *
 * `A = |sum of d[i] * d[i+1] * sin(angle[i+1] - angle[i])| / 2` over all corners, the last joined to the first:
 * triangles from the point. In the square of the unit of the first distance. The corners stand in order around
 * the edge, either way round; the point may lie inside or outside. Distances are zero or more: the point itself
 * may be a corner.
 *
 * For a round shape take {@link averageRadiusArea}: straight edges cut off what bulges between them, 0.5 % with
 * 36 rays to a circle, 2.6 % with 16 and 10 % with 8.
 *
 * @throws RatewrightError `conflict` where the edges cross; `range` for fewer than 3 rays; `duplicate`, `missing`,
 * `type`, `unit/mismatch`, `not-finite`; every ray that is not right is reported
 *
 * Source: plane geometry; the method of radiation in courses of surveying.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { radialArea } from "ratewright/site";
 * const rays = [0, 90, 180, 270].map((angle) => ({
 *   angle: quantity(angle, "deg"),
 *   distance: quantity(50, "ft"),
 * }));
 * Math.round(radialArea({ rays }).in("ft2")); // => 5000
 * ```
 */
export const radialArea = (shape: { readonly rays: readonly Ray[] }): Area => {
  const problems = checks();
  const record = recordWith(shape, ["rays"], problems);
  const list = problems.run(() => expectList(record.rays, "rays", "ray"));
  if (list !== undefined && list.length > mostCorners) {
    problems.run(() => outOfRange("rays", list, { max: mostCorners, count: "rays" }));
    problems.done();
  }
  const rays = (list ?? []).map((item, i) => problems.run(() => rayOf(item, `rays[${i}]`)));
  problems.done();
  const read = rays as readonly Ray[];
  const units = unitSet((read[0] as Ray).distance.unit);
  const corners = read.map(({ angle, distance }): Point => {
    const [radians, far] = [(angle.in("deg") * Math.PI) / 180, distance.in(units.length)];
    return [far * Math.cos(radians), far * Math.sin(radians)];
  });
  return areaIn(shoelace(ringOf(corners, "rays")), units);
};

const rayOf = (input: unknown, path: string): Ray => {
  const ray = expectFields(input, ["angle", "distance"], path);
  return allOf({
    angle: () =>
      ray.angle === undefined
        ? fail("missing", `${path}.angle`, undefined, 'an angle, such as quantity(90, "deg")')
        : expectQuantity(ray.angle, { dimension: "angle", of: "none" }, `${path}.angle`),
    distance: () => lengthOf(ray.distance, `${path}.distance`, "non-negative"),
  });
};
