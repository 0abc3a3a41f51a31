import { described } from "../../quantity/house.js";
import {
  checks,
  expectFields,
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  outOfRange,
  type UnitHint,
} from "../../quantity/index.js";
import { type Area, areaIn } from "../areas.js";
import { type Length, lengthOf, type UnitSet, unitSet } from "../lengths.js";
import type { Point } from "./crossings.js";
import { mostCorners, refuseHoles, ringOf, shoelace } from "./rings.js";

/** A point of an outline, by its distances along two lines at right angles. */
export interface PlanePoint {
  readonly x: Length;
  readonly y: Length;
}

/**
 * The area inside an outline, from the coordinates of its corners in a plane, less what is cut out of it.
 *
 * `A = |sum of (x[i] * y[i+1] - x[i+1] * y[i])| / 2` over all corners, the last joined to the first. The
 * coordinates are taken from the first corner, so that large ones (grid eastings and northings) cost no
 * digits. In the square of the unit of the first coordinate, or of `unit`.
 *
 * The corners stand in order around the edge, either way round; the first may be repeated as the last.
 * Coordinates may be negative. Which of the two is called x does not matter. `holes` are outlines of the same
 * kind, each inside of the first and clear of the others; they may touch.
 *
 * Only for a plane: latitude and longitude are no lengths, and an outline of degrees that is passed as meters
 * or feet is refused by its size. `geodesicArea` of `ratewright/site/geodesic` takes degrees.
 *
 * Corners out of order make the outline cross itself, and the formula would then give a wrong area
 * without a sign of it; so an outline whose edges cross, touch or double back is refused, and the edges
 * are named by the points that they join.
 *
 * @param points - corners as `{ x, y }` with quantities, or as pairs of numbers
 * `unit`: the unit of length of the numbers, where the corners are pairs of numbers
 * `options.holes`: what is cut out, each a list of corners of the same form
 * @throws RatewrightError `conflict` where edges cross, or a hole is outside or over another; `range` for fewer
 * than 3 points, more than 20 000, or an outline of degrees; `duplicate` for a point that occurs twice;
 * `missing`, `type`, `unit/unknown`, `unit/mismatch`, `not-finite`; every point that is not right is reported
 *
 * Source: area by coordinates, as in courses of surveying.
 *
 * @example
 * ```ts
 * import { polygonArea } from "ratewright/site";
 * polygonArea([[0, 0], [60, 0], [60, 30], [20, 50]], "ft").in("ft2"); // => 2100
 * const bed = [[30, 10], [40, 10], [40, 20], [30, 20]] as const;
 * polygonArea([[0, 0], [60, 0], [60, 30], [20, 50]], "ft", { holes: [bed] }).in("ft2"); // => 2000
 * ```
 */
export function polygonArea(
  points: readonly PlanePoint[],
  options?: { readonly holes?: readonly (readonly PlanePoint[])[] },
): Area;
export function polygonArea(
  points: readonly Point[],
  unit: UnitHint<"length">,
  options?: { readonly holes?: readonly (readonly Point[])[] },
): Area;
export function polygonArea(points: unknown, unit?: unknown, options?: unknown): Area {
  const { outline, holes, units } = polygonOf(points, unit, options);
  return areaIn(shoelace(outline) - holes.reduce((sum, hole) => sum + shoelace(hole), 0), units);
}

/** An outline that closes and does not cross itself, with its cut-outs, as numbers of a unit. */
export interface Polygon {
  readonly outline: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
  readonly units: UnitSet;
}

/** More cut-outs than these are no site. */
const mostHoles = 500;

/** Reads an outline and its cut-outs, in quantities or in numbers of a unit. */
export const polygonOf = (points: unknown, unit: unknown, options: unknown): Polygon => {
  const numbers = typeof unit === "string";
  const more = numbers || options !== undefined ? options : unit;
  const read = numbers ? readerOfNumbers(unit) : readerOfQuantities();
  const given = read.corners(points, "points");
  const problems = checks();
  const record: { readonly holes?: unknown } =
    (more === undefined ? undefined : problems.run(() => expectFields(more, ["holes"], "options"))) ?? {};
  const lists = record.holes === undefined ? [] : record.holes;
  if (!Array.isArray(lists)) return fail("type", "holes", lists, "a list of outlines");
  if (lists.length > mostHoles)
    return outOfRange("holes", described(`${lists.length} cut-outs`), { max: mostHoles, count: "cut-outs" });
  const outline = problems.run(() => ringOf(given, "points"));
  if (outline !== undefined) problems.run(() => refuseDegrees(outline, read.units()));
  const holes = Array.from(lists, (hole: unknown, i) =>
    problems.run(() => ringOf(read.corners(hole, `holes[${i}]`), `holes[${i}]`)),
  );
  problems.done();
  const polygon = { outline: outline as readonly Point[], holes: holes as readonly (readonly Point[])[] };
  refuseHoles(polygon.outline, polygon.holes, (i) => `holes[${i}]`);
  return { ...polygon, units: read.units() };
};

/** An outline across fewer units than this, at a place away from zero, is one of degrees. */
const degreesAcross = 0.05;

/** Refuses corners that can only be latitude and longitude: 0.05 m is no site, 0.05 degrees are 5 km. */
const refuseDegrees = (corners: readonly Point[], units: UnitSet): void => {
  if (units.length === "in" || units.length === "cm") return;
  const across = (axis: 0 | 1): { readonly size: number; readonly least: number; readonly most: number } => {
    const values = corners.map((corner) => corner[axis]);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    return { size: high - low, least: Math.min(Math.abs(low), Math.abs(high)), most: Math.max(-low, high) };
  };
  const [x, y] = [across(0), across(1)];
  const small = x.size < degreesAcross && y.size < degreesAcross;
  if (small && x.least > 1 && y.least > 1 && x.most <= 180 && y.most <= 180) {
    fail(
      "range",
      "points",
      described(`an outline ${Math.max(x.size, y.size).toPrecision(2)} ${units.length} across`),
      "distances of a plane: geodesicArea of ratewright/site/geodesic takes longitude and latitude",
    );
  }
};

/** How corners of one form are read. */
interface CornerReader {
  readonly corners: (input: unknown, path: string) => readonly Point[];
  /** Known once the first corners were read. */
  readonly units: () => UnitSet;
}

const listOf = (points: unknown, path: string): readonly unknown[] => {
  if (!Array.isArray(points)) return fail("type", path, points, "a list of points");
  return points.length > mostCorners + 1
    ? outOfRange(path, described(`${points.length} corners`), { min: 3, max: mostCorners, count: "corners" })
    : Array.from(points);
};

const readerOfNumbers = (unit: string): CornerReader => {
  const one = expectQuantity({ value: 1, unit }, { dimension: "length" }, "unit");
  const units = unitSet(unit);
  const scale = one.in(units.length);
  const corners = (input: unknown, path: string): readonly Point[] => {
    const problems = checks();
    const found: Point[] = [];
    listOf(input, path).forEach((point, i) => {
      if (!Array.isArray(point) || point.length !== 2) {
        problems.run(() => fail("type", `${path}[${i}]`, point, "a pair of numbers, [x, y]"));
        return;
      }
      const x = problems.run(() => expectNumber(point[0], `${path}[${i}][0]`));
      const y = problems.run(() => expectNumber(point[1], `${path}[${i}][1]`));
      if (x !== undefined && y !== undefined) found.push([x * scale, y * scale]);
    });
    problems.done();
    return found;
  };
  return { corners, units: () => units };
};

const readerOfQuantities = (): CornerReader => {
  let units: UnitSet | undefined;
  const corners = (input: unknown, path: string): readonly Point[] => {
    const problems = checks();
    const pairs: [Length, Length][] = [];
    listOf(input, path).forEach((item, i) => {
      const at = `${path}[${i}]`;
      const expected = 'a record with x, y; pairs of numbers need a unit: polygonArea(points, "ft")';
      const point = problems.run(() => expectRecord(item, at, expected));
      if (point === undefined) return;
      problems.run(() => expectFields(point, ["x", "y"], at));
      const x = problems.run(() => lengthOf(point.x, `${at}.x`, "any"));
      const y = problems.run(() => lengthOf(point.y, `${at}.y`, "any"));
      if (x !== undefined && y !== undefined) pairs.push([x, y]);
    });
    problems.done();
    const set = units ?? unitSet(pairs[0]?.[0].unit ?? "m");
    units = set;
    return pairs.map(([x, y]) => [x.in(set.length), y.in(set.length)] as const);
  };
  return { corners, units: () => units ?? unitSet("m") };
};
