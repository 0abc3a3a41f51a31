import type { Point } from "../survey/crossings.js";
import { shoelace } from "../survey/rings.js";
import { around, type ReadOutline } from "./outlines.js";

/** The line at a distance inside of an outline: its length, and the area that it holds; nothing where none is left. */
export interface Inset {
  readonly length: number;
  readonly area: number;
}

/** Whether every corner turns the same way. */
export const isConvex = (corners: readonly Point[]): boolean => {
  const turns = corners.map(([x, y], i) => {
    const [u, v] = corners[(i + 1) % corners.length] as Point;
    const [p, q] = corners[(i + 2) % corners.length] as Point;
    return (u - x) * (q - v) - (v - y) * (p - u);
  });
  return turns.every((turn) => turn >= 0) || turns.every((turn) => turn <= 0);
};

/** What is left of corners on the inner side of each edge, moved in by a distance: for convex outlines. */
const clipped = (corners: readonly Point[], distance: number): readonly Point[] => {
  let twice = 0;
  corners.forEach(([x, y], i) => {
    const [u, v] = corners[(i + 1) % corners.length] as Point;
    twice += x * v - u * y;
  });
  // the inner side is on the left where the corners run counterclockwise
  const side = twice > 0 ? 1 : -1;
  let kept: readonly Point[] = corners;
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length] as Point;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const depth = ([x, y]: Point): number =>
      (side * ((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]))) / length - distance;
    const next: Point[] = [];
    kept.forEach((one, j) => {
      const other = kept[(j + 1) % kept.length] as Point;
      const [here, there] = [depth(one), depth(other)];
      if (here >= 0) next.push(one);
      if (here > 0 !== there > 0 && here !== there) {
        const share = here / (here - there);
        if (share > 0 && share < 1) {
          next.push([one[0] + share * (other[0] - one[0]), one[1] + share * (other[1] - one[1])]);
        }
      }
    });
    kept = next;
  });
  return kept;
};

/** The line at a distance inside of an outline; `undefined` where nothing is left there. */
export const insetOf = (outline: ReadOutline, distance: number): Inset | undefined => {
  if (outline.kind === "corners") {
    const left = distance === 0 ? outline.corners : clipped(outline.corners, distance);
    const area = left.length < 3 ? 0 : shoelace(left);
    const whole = shoelace(outline.corners);
    return area > 1e-12 * whole ? { length: around(left), area } : undefined;
  }
  const { straight, radius } = outline;
  const inner = radius - distance;
  if (inner <= 1e-12 * radius) return undefined;
  return {
    length: 2 * (Math.PI * inner + straight),
    area: Math.PI * inner * inner + 2 * straight * inner,
  };
};
