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

const apart = (a: Point, b: Point, c: Point, d: Point, axis: 0 | 1): boolean =>
  Math.max(a[axis], b[axis]) < Math.min(c[axis], d[axis]) ||
  Math.max(c[axis], d[axis]) < Math.min(a[axis], b[axis]);

/** Not `p * q < 0`: the product of two small numbers is zero. */
const opposite = (p: number, q: number): boolean => (p < 0 && q > 0) || (p > 0 && q < 0);

/** Whether two edges cross or touch. */
const meet = (a: Point, b: Point, c: Point, d: Point): boolean => {
  if (apart(a, b, c, d, 0) || apart(a, b, c, d, 1)) return false;
  const [c1, d1, a1, b1] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  if (opposite(c1, d1) && opposite(a1, b1)) return true;
  return (
    (c1 === 0 && between(a, b, c)) ||
    (d1 === 0 && between(a, b, d)) ||
    (a1 === 0 && between(c, d, a)) ||
    (b1 === 0 && between(c, d, b))
  );
};

/** Whether the edge from `b` to `c` runs back over the edge from `a` to `b`. */
const doublesBack = (a: Point, b: Point, c: Point): boolean =>
  turn(a, b, c) === 0 && (b[0] - a[0]) * (c[0] - b[0]) + (b[1] - a[1]) * (c[1] - b[1]) < 0;

/**
 * The pairs of edges of a closed outline that cross, touch or double back; edge `i` runs from point `i`
 * to the next. Compares every pair, so the work grows with the square of the number of points.
 */
export const crossings = (points: readonly Point[]): readonly (readonly [number, number])[] => {
  const n = points.length;
  const at = (i: number): Point => points[i % n] as Point;
  const found: [number, number][] = [];
  for (let i = 0; i < n; i++) {
    if (doublesBack(at(i), at(i + 1), at(i + 2))) found.push([i, (i + 1) % n]);
    // the last edge shares a point with the first
    for (let j = i + 2; j < (i === 0 ? n - 1 : n); j++) {
      if (meet(at(i), at(i + 1), at(j), at(j + 1))) found.push([i, j]);
    }
  }
  return found;
};
