import type { Point } from "../survey/crossings.js";

/** A line or an arc over a stretch of the first axis. */
export interface Curve {
  readonly from: number;
  readonly to: number;
  readonly at: (x: number) => number;
  /** Area under the curve from `a` to `b`. */
  readonly under: (a: number, b: number) => number;
}

/** A straight line between two points; `undefined` where it stands upright and bounds nothing. */
export const lineCurve = (a: Point, b: Point): Curve | undefined => {
  const [[x1, y1], [x2, y2]] = a[0] <= b[0] ? [a, b] : [b, a];
  if (x1 === x2) return undefined;
  const slope = (y2 - y1) / (x2 - x1);
  const at = (x: number): number => y1 + slope * (x - x1);
  return { from: x1, to: x2, at, under: (p, q) => ((at(p) + at(q)) / 2) * (q - p) };
};

/** The upper or the lower half of a circle. */
export const arcCurve = ([cx, cy]: Point, radius: number, sign: 1 | -1): Curve => {
  const rise = (u: number): number => Math.sqrt(Math.max(0, radius * radius - u * u));
  const primitive = (u: number): number =>
    (u * rise(u) + radius * radius * Math.asin(Math.min(1, Math.max(-1, u / radius)))) / 2;
  return {
    from: cx - radius,
    to: cx + radius,
    at: (x) => cy + sign * rise(x - cx),
    under: (p, q) => cy * (q - p) + sign * (primitive(q - cx) - primitive(p - cx)),
  };
};

/** All within a distance of a straight edge: two lines beside it, a circle around each end. */
export interface Zone {
  readonly lines: readonly (readonly [Point, Point])[];
  readonly circles: readonly Point[];
  readonly radius: number;
  readonly curves: readonly Curve[];
}

export const zoneOf = (a: Point, b: Point, radius: number): Zone => {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [nx, ny] = [(-(b[1] - a[1]) / length) * radius, ((b[0] - a[0]) / length) * radius];
  const beside = (sign: 1 | -1): readonly [Point, Point] => [
    [a[0] + sign * nx, a[1] + sign * ny],
    [b[0] + sign * nx, b[1] + sign * ny],
  ];
  const lines = [beside(1), beside(-1)];
  const curves = [
    ...lines.flatMap(([p, q]) => lineCurve(p, q) ?? []),
    ...[a, b].flatMap((end) => [arcCurve(end, radius, 1), arcCurve(end, radius, -1)]),
  ];
  return { lines, circles: [a, b], radius, curves };
};

type Segment = readonly [Point, Point];

/** Where two straight lines cross, on the first axis. */
const lineLine = ([a, b]: Segment, [c, d]: Segment): readonly number[] => {
  const [rx, ry] = [b[0] - a[0], b[1] - a[1]];
  const [sx, sy] = [d[0] - c[0], d[1] - c[1]];
  const cross = rx * sy - ry * sx;
  if (cross === 0) return [];
  const t = ((c[0] - a[0]) * sy - (c[1] - a[1]) * sx) / cross;
  const u = ((c[0] - a[0]) * ry - (c[1] - a[1]) * rx) / cross;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? [a[0] + t * rx] : [];
};

const lineCircle = ([a, b]: Segment, [cx, cy]: Point, radius: number): readonly number[] => {
  const [rx, ry] = [b[0] - a[0], b[1] - a[1]];
  const [px, py] = [a[0] - cx, a[1] - cy];
  const square = rx * rx + ry * ry;
  const half = px * rx + py * ry;
  const inner = half * half - square * (px * px + py * py - radius * radius);
  if (inner < 0) return [];
  const root = Math.sqrt(inner);
  return [(-half - root) / square, (-half + root) / square]
    .filter((t) => t >= 0 && t <= 1)
    .map((t) => a[0] + t * rx);
};

const circleCircle = (c1: Point, r1: number, c2: Point, r2: number): readonly number[] => {
  const [dx, dy] = [c2[0] - c1[0], c2[1] - c1[1]];
  const d2 = dx * dx + dy * dy;
  if (d2 === 0) return [];
  const along = (d2 + r1 * r1 - r2 * r2) / (2 * d2);
  const across2 = (r1 * r1) / d2 - along * along;
  if (across2 < 0) return [];
  const across = Math.sqrt(across2);
  return [c1[0] + along * dx - across * dy, c1[0] + along * dx + across * dy];
};

/** Every place on the first axis where the order of the curves can change, from left to right. */
export const breaksOf = (edges: readonly Segment[], zones: readonly Zone[]): readonly number[] => {
  const breaks = edges.map(([a]) => a[0]);
  zones.forEach(({ lines, circles, radius }, i) => {
    for (const line of lines) for (const [x] of line) breaks.push(x);
    for (const [x] of circles) breaks.push(x - radius, x + radius);
    for (const edge of edges) {
      for (const line of lines) breaks.push(...lineLine(edge, line));
      for (const center of circles) breaks.push(...lineCircle(edge, center, radius));
    }
    for (const other of zones.slice(0, i)) {
      for (const line of lines) {
        for (const one of other.lines) breaks.push(...lineLine(line, one));
        for (const center of other.circles) breaks.push(...lineCircle(line, center, other.radius));
      }
      for (const center of circles) {
        for (const one of other.lines) breaks.push(...lineCircle(one, center, radius));
        for (const one of other.circles) breaks.push(...circleCircle(center, radius, one, other.radius));
      }
    }
  });
  return breaks.sort((a, b) => a - b);
};

/** A stretch of an upright line, with the curves that bound it. */
interface Stretch {
  readonly low: number;
  readonly high: number;
  readonly bottom: Curve;
  readonly top: Curve;
}

const pieces = (curves: readonly Curve[], x: number): readonly Stretch[] => {
  const cut = curves
    .filter(({ from, to }) => from < x && x < to)
    .map((curve) => ({ y: curve.at(x), curve }))
    .sort((a, b) => a.y - b.y);
  const found: Stretch[] = [];
  for (let i = 0; i + 1 < cut.length; i += 2) {
    const [low, high] = [cut[i], cut[i + 1]] as [{ y: number; curve: Curve }, { y: number; curve: Curve }];
    found.push({ low: low.y, high: high.y, bottom: low.curve, top: high.curve });
  }
  return found;
};

/** The zones on an upright line, joined where they overlap; each of them is one stretch, for it has no dents. */
const joined = (zones: readonly Zone[], x: number): readonly Stretch[] => {
  const each = zones.flatMap(({ curves }): readonly Stretch[] => {
    const cut = curves
      .filter(({ from, to }) => from < x && x < to)
      .map((curve) => ({ y: curve.at(x), curve }))
      .sort((a, b) => a.y - b.y);
    const [first, last] = [cut[0], cut[cut.length - 1]];
    return first === undefined || last === undefined
      ? []
      : [{ low: first.y, high: last.y, bottom: first.curve, top: last.curve }];
  });
  const found: Stretch[] = [];
  for (const one of [...each].sort((a, b) => a.low - b.low)) {
    const before = found[found.length - 1];
    if (before === undefined || one.low > before.high) found.push(one);
    else if (one.high > before.high) found[found.length - 1] = { ...before, high: one.high, top: one.top };
  }
  return found;
};

/** The area of an outline, given by its edges, that lies in any of the zones. */
export const coveredArea = (edges: readonly Segment[], zones: readonly Zone[]): number => {
  const outline = edges.flatMap(([a, b]) => lineCurve(a, b) ?? []);
  const breaks = breaksOf(edges, zones);
  let area = 0;
  for (let i = 0; i + 1 < breaks.length; i++) {
    const [from, to] = [breaks[i] as number, breaks[i + 1] as number];
    const x = (from + to) / 2;
    if (!(from < x && x < to)) continue;
    const zone = joined(zones, x);
    for (const inside of pieces(outline, x)) {
      for (const one of zone) {
        const bottom = one.low > inside.low ? one : inside;
        const top = one.high < inside.high ? one : inside;
        if (top.high <= bottom.low) continue;
        area += top.top.under(from, to) - bottom.bottom.under(from, to);
      }
    }
  }
  return area;
};
