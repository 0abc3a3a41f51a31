/** A point in a plane, as two numbers of one unit. */
export type Point = readonly [x: number, y: number];

/** Twice the signed area of the triangle: above zero where `c` lies left of the line from `a` to `b`. */
const turn = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** Whether `p`, known to lie on the line through `a` and `b`, lies between them. */
const between = (a: Point, b: Point, p: Point): boolean =>
  Math.min(a[0], b[0]) <= p[0] &&
  p[0] <= Math.max(a[0], b[0]) &&
  Math.min(a[1], b[1]) <= p[1] &&
  p[1] <= Math.max(a[1], b[1]);

/** Whether a point lies on the edge from `a` to `b`. */
export const onEdge = (a: Point, b: Point, p: Point): boolean => turn(a, b, p) === 0 && between(a, b, p);

const apart = (a: Point, b: Point, c: Point, d: Point): boolean =>
  Math.max(a[1], b[1]) < Math.min(c[1], d[1]) || Math.max(c[1], d[1]) < Math.min(a[1], b[1]);

/** Not `p * q < 0`: the product of two small numbers is zero. */
const opposite = (p: number, q: number): boolean => (p < 0 && q > 0) || (p > 0 && q < 0);

/** Whether two edges cross: each has the ends of the other on both sides. */
const cross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  opposite(turn(a, b, c), turn(a, b, d)) && opposite(turn(c, d, a), turn(c, d, b));

/** Whether two edges cross or touch. */
const meet = (a: Point, b: Point, c: Point, d: Point): boolean =>
  cross(a, b, c, d) || onEdge(a, b, c) || onEdge(a, b, d) || onEdge(c, d, a) || onEdge(c, d, b);

/** Whether the edge from `b` to `c` runs back over the edge from `a` to `b`. */
const doublesBack = (a: Point, b: Point, c: Point): boolean =>
  turn(a, b, c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;

interface Edge {
  readonly ring: number;
  readonly at: number;
  readonly a: Point;
  readonly b: Point;
  readonly left: number;
  readonly right: number;
}

const edgesOf = (points: readonly Point[], ring: number): readonly Edge[] =>
  points.map((a, at) => {
    const b = points[(at + 1) % points.length] as Point;
    return { ring, at, a, b, left: Math.min(a[0], b[0]), right: Math.max(a[0], b[0]) };
  });

/** More pairs than these are not looked for: a scrambled outline has as many as it has points, squared. */
const mostPairs = 1000;

/**
 * The pairs of edges for which `meeting` holds, among those that share a part of the first axis: the edges are
 * taken from left to right, so that an outline of thousands of points is no square of them.
 */
const pairsOf = (
  edges: readonly Edge[],
  meeting: (one: Edge, other: Edge) => boolean,
): readonly (readonly [Edge, Edge])[] => {
  const sorted = [...edges].sort((one, other) => one.left - other.left);
  const found: [Edge, Edge][] = [];
  let open: Edge[] = [];
  for (const edge of sorted) {
    open = open.filter(({ right }) => right >= edge.left);
    for (const other of open) {
      if (apart(edge.a, edge.b, other.a, other.b) || !meeting(edge, other)) continue;
      found.push([edge, other]);
      if (found.length >= mostPairs) return found;
    }
    open.push(edge);
  }
  return found;
};

/**
 * The pairs of edges of a closed outline that cross, touch or double back, up to a thousand of them; edge `i`
 * runs from point `i` to the next.
 */
export const crossings = (points: readonly Point[]): readonly (readonly [number, number])[] => {
  const n = points.length;
  const at = (i: number): Point => points[i % n] as Point;
  const found: (readonly [number, number])[] = [];
  for (let i = 0; i < n; i++) {
    if (doublesBack(at(i), at(i + 1), at(i + 2))) found.push([i, (i + 1) % n]);
  }
  const neighbors = (one: Edge, other: Edge): boolean =>
    (one.at + 1) % n === other.at || (other.at + 1) % n === one.at;
  for (const [one, other] of pairsOf(
    edgesOf(points, 0),
    (a, b) => !neighbors(a, b) && meet(a.a, a.b, b.a, b.b),
  )) {
    found.push([Math.min(one.at, other.at), Math.max(one.at, other.at)]);
  }
  return found.sort(([a, b], [c, d]) => a - c || b - d);
};

/** The first edge of one outline that crosses an edge of another, as their two numbers; touching is no crossing. */
export const crossingOf = (
  one: readonly Point[],
  other: readonly Point[],
): readonly [number, number] | undefined => {
  const [pair] = pairsOf(
    [...edgesOf(one, 0), ...edgesOf(other, 1)],
    (a, b) => a.ring !== b.ring && cross(a.a, a.b, b.a, b.b),
  );
  if (pair === undefined) return undefined;
  const [a, b] = pair[0].ring === 0 ? pair : [pair[1], pair[0]];
  return [a.at, b.at];
};

/** Where a point lies: inside of a closed outline, on its edge, or outside. */
export const placeOf = (points: readonly Point[], p: Point): "inside" | "edge" | "outside" => {
  let inside = false;
  for (let i = 0, j = points.length - 1; i < points.length; j = i++) {
    const [a, b] = [points[j] as Point, points[i] as Point];
    if (onEdge(a, b, p)) return "edge";
    if (a[1] > p[1] !== b[1] > p[1] && opposite(turn(a, b, p), a[1] - b[1])) inside = !inside;
  }
  return inside ? "inside" : "outside";
};
