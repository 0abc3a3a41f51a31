import { described } from "../../quantity/house.js";
import { checks, fail, outOfRange, RatewrightError } from "../../quantity/index.js";
import { crossingOf, crossings, onEdge, type Point, placeOf } from "./crossings.js";

/** As many corners as one outline may have: more is a track that should be thinned out first. */
export const mostCorners = 20_000;

/** How many crossings an error names; a scrambled outline has thousands. */
const named = 5;

/**
 * The corners of a closed outline, without the repeated first one at the end; refuses one with fewer than 3
 * corners, with a corner twice, or whose edges cross, touch or double back.
 */
export const ringOf = (given: readonly Point[], path: string, next = "another point"): readonly Point[] => {
  const [first] = given;
  const last = given[given.length - 1];
  const closed = given.length > 1 && first?.[0] === last?.[0] && first?.[1] === last?.[1];
  const count = closed ? given.length - 1 : given.length;
  if (count < 3 || count > mostCorners) {
    return outOfRange(path, described(`${count} corners`), { min: 3, max: mostCorners, count: "corners" });
  }
  const corners = given.slice(0, count);
  refuseRepeats(corners, path, next);
  refuseCrossings(corners, path);
  return corners;
};

const refuseRepeats = (corners: readonly Point[], path: string, next: string): void => {
  const seen = new Map<string, number>();
  const problems = checks();
  corners.forEach((corner, i) => {
    const key = corner.map((c) => c + 0).join(" ");
    const before = seen.get(key);
    if (before === undefined) seen.set(key, i);
    else
      problems.run(() =>
        fail("duplicate", `${path}[${i}]`, described(`the point of ${path}[${before}]`), next),
      );
  });
  problems.done();
};

const refuseCrossings = (corners: readonly Point[], path: string): void => {
  const found = crossings(corners);
  if (found.length === 0) return;
  const edge = (i: number): string => `${i}-${(i + 1) % corners.length}`;
  const pairs = found.slice(0, named).map(([i, j]) => `edge ${edge(i)} meets edge ${edge(j)}`);
  const more = found.length > named ? `, and ${found.length - named} more` : "";
  throw new RatewrightError({
    code: "conflict",
    path,
    got: pairs.join(", ") + more,
    expected: "points in order around the edge, so that no two edges cross or touch",
  });
};

type Leaving =
  | { readonly corner: number }
  | { readonly edges: readonly [number, number] }
  | { readonly edge: number };

/** Where an outline leaves another: at a corner, across an edge, or from edge to edge; nothing where it is inside. */
const leaves = (outline: readonly Point[], hole: readonly Point[]): Leaving | undefined => {
  const corner = hole.findIndex((one) => placeOf(outline, one) === "outside");
  if (corner >= 0) return { corner };
  const edges = crossingOf(hole, outline);
  if (edges !== undefined) return { edges };
  const edge = hole.findIndex((a, i) => bridges(outline, a, hole[(i + 1) % hole.length] as Point));
  return edge < 0 ? undefined : { edge };
};

/**
 * Whether a line that crosses no edge runs outside somewhere, between two places where it touches the outline. Along an
 * edge it is not outside, whatever the rounding of the point half-way says.
 */
const bridges = (outline: readonly Point[], a: Point, b: Point): boolean => {
  const far = ([x, y]: Point): number => Math.abs(x - a[0]) + Math.abs(y - a[1]);
  const touching = [a, b, ...outline.filter((corner) => onEdge(a, b, corner))].sort(
    (one, other) => far(one) - far(other),
  );
  return touching.some((to, i) => {
    const from = touching[i - 1];
    if (from === undefined || far(from) === far(to)) return false;
    const along = outline.some((p, k) => {
      const q = outline[(k + 1) % outline.length] as Point;
      return onEdge(p, q, from) && onEdge(p, q, to);
    });
    const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    return !along && placeOf(outline, middle) === "outside";
  });
};

/** Whether an outline lies inside of another; it may touch. */
export const isInside = (ring: readonly Point[], outline: readonly Point[]): boolean =>
  leaves(outline, ring) === undefined;

/** Refuses a cut-out that does not lie inside its outline, and names the corner or the edge that is outside. */
const refuseOutside = (outline: readonly Point[], hole: readonly Point[], path: string): void => {
  const expected = "a cut-out inside of its outline";
  const place = leaves(outline, hole);
  if (place === undefined) return;
  if ("corner" in place)
    fail("conflict", `${path}[${place.corner}]`, described("a corner outside of the outline"), expected);
  else if ("edge" in place)
    fail("conflict", path, described(`edge ${place.edge} outside of the outline`), expected);
  else
    fail(
      "conflict",
      path,
      described(`edge ${place.edges[0]} across edge ${place.edges[1]} of the outline`),
      expected,
    );
};

/** Refuses cut-outs outside of their outline or over one another; `path` names the place of each. */
export const refuseHoles = (
  outline: readonly Point[],
  holes: readonly (readonly Point[])[],
  path: (hole: number) => string,
): void => {
  const problems = checks();
  holes.forEach((hole, i) => {
    problems.run(() => refuseOutside(outline, hole, path(i)));
    holes.slice(0, i).forEach((other, j) => {
      if (overlap(hole, other)) {
        problems.run(() =>
          fail("conflict", path(i), described(`a cut-out over ${path(j)}`), "cut-outs apart"),
        );
      }
    });
  });
  problems.done();
};

/** From where to where an outline reaches. */
const boxOf = (ring: readonly Point[]): readonly [number, number, number, number] => {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of ring) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    low = Math.min(low, y);
    high = Math.max(high, y);
  }
  return [left, right, low, high];
};

const areApart = (one: readonly Point[], other: readonly Point[]): boolean => {
  const [left, right, low, high] = boxOf(one);
  const [otherLeft, otherRight, otherLow, otherHigh] = boxOf(other);
  return right < otherLeft || otherRight < left || high < otherLow || otherHigh < low;
};

/** Whether two outlines overlap: their edges cross, or one has a corner or its middle inside of the other. */
export const overlap = (one: readonly Point[], other: readonly Point[]): boolean =>
  !areApart(one, other) &&
  (crossingOf(one, other) !== undefined ||
    one.some((corner) => placeOf(other, corner) === "inside") ||
    other.some((corner) => placeOf(one, corner) === "inside") ||
    placeOf(other, insidePoint(one)) === "inside");

/** A point inside of an outline: the middle of the longest run of a line across it. */
const insidePoint = (ring: readonly Point[]): Point => {
  const heights = [...new Set(ring.map(([, y]) => y))].sort((a, b) => a - b);
  const [low = 0, next = 0] = heights;
  const y = (low + next) / 2;
  const xs: number[] = [];
  ring.forEach(([x1, y1], i) => {
    const [x2, y2] = ring[(i + 1) % ring.length] as Point;
    if (y1 > y !== y2 > y) xs.push(x1 + ((y - y1) / (y2 - y1)) * (x2 - x1));
  });
  xs.sort((a, b) => a - b);
  let [best, width] = [0, -1];
  for (let i = 0; i + 1 < xs.length; i += 2) {
    const [from, to] = [xs[i] as number, xs[i + 1] as number];
    if (to - from > width) [best, width] = [(from + to) / 2, to - from];
  }
  return [best, y];
};

/** The area inside of corners, from the first of them: what remains is as large as the site, not as the grid. */
export const shoelace = (corners: readonly Point[]): number => {
  const [originX, originY] = corners[0] as Point;
  let twice = 0;
  corners.forEach(([x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length] as Point;
    twice += (x - originX) * (nextY - originY) - (nextX - originX) * (y - originY);
  });
  return Math.abs(twice) / 2;
};
