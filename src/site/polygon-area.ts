import {
  checks,
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  RatewrightError,
  type UnitHint,
} from "../quantity/index.js";
import { crossings, type Point } from "./crossings.js";
import { type Area, areaIn, type Length, lengthOf, type UnitSet, unitSet } from "./lengths.js";

/** A point of an outline, by its distances along two lines at right angles. */
export interface PlanePoint {
  readonly x: Length;
  readonly y: Length;
}

/**
 * The area inside an outline, from the coordinates of its corners in a plane.
 *
 * `A = |sum of (x[i] * y[i+1] - x[i+1] * y[i])| / 2` over all corners, the last joined to the first. The
 * coordinates are taken from the first corner, so that large ones (grid eastings and northings) cost no
 * digits. In the square of the unit of the first coordinate, or of `unit`.
 *
 * The corners stand in order around the edge, either way round; the first may be repeated as the last.
 * Coordinates may be negative. Which of the two is called x does not matter. Only for a plane: latitude
 * and longitude are no lengths.
 *
 * Corners out of order make the outline cross itself, and the formula would then give a wrong area
 * without a sign of it; so an outline whose edges cross, touch or double back is refused, and the edges
 * are named by the points that they join. All pairs of edges are compared: thousands of corners take
 * seconds.
 *
 * @param points - corners as `{ x, y }` with quantities, or as pairs of numbers
 * `unit`: the unit of length of the numbers, where the corners are pairs of numbers
 * @throws RatewrightError `conflict` where edges cross; `range` for fewer than 3 points; `duplicate` for a
 * point that occurs twice; `missing`, `type`, `unit/unknown`, `unit/mismatch`, `not-finite`; every point
 * that is not right is reported
 *
 * Source: area by coordinates, as in courses of surveying.
 *
 * @example
 * ```ts
 * import { polygonArea } from "ratewright/site";
 * polygonArea([[0, 0], [60, 0], [60, 30], [20, 50]], "ft").in("ft2"); // => 2100
 * ```
 */
export function polygonArea(points: readonly PlanePoint[]): Area;
export function polygonArea(points: readonly Point[], unit: UnitHint<"length">): Area;
export function polygonArea(points: readonly (PlanePoint | Point)[], unit?: string): Area {
  if (points === undefined) return fail("missing", "points", points, "a list of points");
  if (!Array.isArray(points)) return fail("type", "points", points, "a list of points");
  const { corners, units } = unit === undefined ? fromQuantities(points) : fromNumbers(points, unit);
  return areaIn(insideOf(corners), units);
}

interface Corners {
  readonly corners: readonly Point[];
  readonly units: UnitSet;
}

const fromNumbers = (points: readonly unknown[], unit: string): Corners => {
  const door = checks();
  door.run(() => expectQuantity({ value: 0, unit }, { dimension: "length" }, "unit"));
  const corners: Point[] = [];
  for (let i = 0; i < points.length; i++) {
    const point = points[i];
    if (!Array.isArray(point) || point.length !== 2) {
      door.run(() => fail("type", `points[${i}]`, point, "a pair of numbers, [x, y]"));
      continue;
    }
    const x = door.run(() => expectNumber(point[0], `points[${i}][0]`));
    const y = door.run(() => expectNumber(point[1], `points[${i}][1]`));
    if (x !== undefined && y !== undefined) corners.push([x, y]);
  }
  door.done();
  const units = unitSet(unit);
  const scale = expectQuantity({ value: 1, unit }, { dimension: "length" }, "unit").in(units.length);
  return { corners: corners.map(([x, y]) => [x * scale, y * scale] as const), units };
};

const fromQuantities = (points: readonly unknown[]): Corners => {
  const door = checks();
  const pairs: [Length, Length][] = [];
  for (let i = 0; i < points.length; i++) {
    const at = `points[${i}]`;
    const expected = "a record with x, y; pairs of numbers need a unit beside them";
    const point = door.run(() => expectRecord(points[i], at, expected));
    if (point === undefined) continue;
    const x = door.run(() => lengthOf(point.x, `${at}.x`, "any"));
    const y = door.run(() => lengthOf(point.y, `${at}.y`, "any"));
    if (x !== undefined && y !== undefined) pairs.push([x, y]);
  }
  door.done();
  const units = unitSet(pairs[0]?.[0].unit ?? "m");
  return { corners: pairs.map(([x, y]) => [x.in(units.length), y.in(units.length)] as const), units };
};

const insideOf = (given: readonly Point[]): number => {
  const [first] = given;
  const last = given[given.length - 1];
  const closed = given.length > 1 && first?.[0] === last?.[0] && first?.[1] === last?.[1];
  const count = closed ? given.length - 1 : given.length;
  if (first === undefined || count < 3)
    return fail("range", "points", `${count} corners`, "3 corners or more");
  // as seen from the first corner: what remains is as large as the site, not as the grid
  const corners = given.slice(0, count).map(([x, y]) => [x - first[0], y - first[1]] as const);
  refuseRepeats(corners);
  refuseCrossings(corners);
  let twice = 0;
  corners.forEach(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % count] as Point;
    twice += x * nextY - nextX * y;
  });
  return Math.abs(twice) / 2;
};

const refuseRepeats = (corners: readonly Point[]): void => {
  const seen = new Map<string, number>();
  const door = checks();
  corners.forEach((corner, i) => {
    const key = corner.map((c) => c + 0).join(" ");
    const before = seen.get(key);
    if (before === undefined) seen.set(key, i);
    else door.run(() => fail("duplicate", `points[${i}]`, `the point of points[${before}]`, "another point"));
  });
  door.done();
};

/** How many crossings an error names; a scrambled outline has thousands. */
const named = 5;

const refuseCrossings = (corners: readonly Point[]): void => {
  const found = crossings(corners);
  if (found.length === 0) return;
  const edge = (i: number): string => `${i}-${(i + 1) % corners.length}`;
  const pairs = found.slice(0, named).map(([i, j]) => `edge ${edge(i)} meets edge ${edge(j)}`);
  const more = found.length > named ? `, and ${found.length - named} more` : "";
  throw new RatewrightError({
    code: "conflict",
    path: "points",
    got: pairs.join(", ") + more,
    expected: "points in order around the edge, so that no two edges cross or touch",
  });
};
