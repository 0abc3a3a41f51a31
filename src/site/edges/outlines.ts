import { checks, expectFields, expectOneOf, expectRecord, fail, nearName } from "../../quantity/index.js";
import { type Length, lengthsOf, type UnitSet } from "../lengths.js";
import { annulusOf } from "../shapes/annulus-area.js";
import { circleOf } from "../shapes/circle-area.js";
import { stadiumOf } from "../shapes/stadium-area.js";
import { heron } from "../shapes/triangle-area.js";
import type { Measure } from "../sites/site-shape.js";
import type { Point } from "../survey/crossings.js";
import { polygonOf } from "../survey/polygon-area.js";

type Side = Length | Measure;

/** A shape whose edge is known, as plain JSON. */
export type Outline =
  | { readonly shape: "square"; readonly side: Side }
  | { readonly shape: "rectangle"; readonly length: Side; readonly width: Side }
  | { readonly shape: "triangle from sides"; readonly a: Side; readonly b: Side; readonly c: Side }
  | {
      readonly shape: "circle";
      readonly radius?: Side;
      readonly diameter?: Side;
      readonly circumference?: Side;
    }
  | {
      readonly shape: "stadium";
      readonly width: Side;
      readonly length?: Side;
      readonly straight?: Side;
    }
  | { readonly shape: "polygon"; readonly points: readonly Point[]; readonly unit: string };

/** A shape of which only the edge is asked. */
export type EdgeShape =
  | Outline
  | { readonly shape: "ellipse"; readonly length: Side; readonly width: Side }
  | {
      readonly shape: "annulus";
      readonly outerRadius?: Side;
      readonly innerRadius?: Side;
      readonly outerDiameter?: Side;
      readonly innerDiameter?: Side;
      readonly width?: Side;
    };

/** An outline that was read: straight edges, or two half circles on a straight. */
export type ReadOutline =
  | { readonly kind: "corners"; readonly corners: readonly Point[]; readonly units: UnitSet }
  /** A circle has no straight. */
  | { readonly kind: "stadium"; readonly straight: number; readonly radius: number; readonly units: UnitSet };

/** A shape without its name and the name of its shape: what the formulas read. */
export const measuresOf = (
  input: unknown,
  path: string,
): { readonly shape: unknown; readonly measures: unknown } => {
  const { shape, name: _, ...measures } = expectRecord(input, path, "a record that names its shape");
  return { shape, measures };
};

const outlines = ["square", "rectangle", "triangle from sides", "circle", "stadium", "polygon"] as const;
const edgeShapes = [...outlines, "ellipse", "annulus"] as const;

const shapeNamed = <const T extends string>(shape: unknown, names: readonly T[], path: string): T => {
  const known = names.find((name) => name === shape);
  if (known !== undefined) return known;
  const near = typeof shape === "string" ? nearName(shape, names) : undefined;
  return fail(
    "type",
    `${path}.shape`,
    shape,
    `a shape whose edge is known: ${names.join(", ")}; corners of any other go into a polygon`,
    near === undefined ? {} : { suggestion: near },
  );
};

/** Reads an outline: corners in order, or a stadium. */
export const readOutline = (input: unknown, path = "outline"): ReadOutline => {
  const { shape, measures } = measuresOf(input, path);
  const kind = shapeNamed(shape, outlines, path);
  const problems = checks();
  const read = problems.run(() => outlineOf(kind, measures), path);
  problems.done();
  return read as ReadOutline;
};

const outlineOf = (kind: (typeof outlines)[number], measures: unknown): ReadOutline => {
  if (kind === "square") {
    const { of, units } = lengthsOf(measures, ["side"]);
    return { kind: "corners", corners: box(of.side, of.side), units };
  }
  if (kind === "rectangle") {
    const { of, units } = lengthsOf(measures, ["length", "width"]);
    return { kind: "corners", corners: box(of.length, of.width), units };
  }
  if (kind === "triangle from sides") {
    const { of, units } = lengthsOf(measures, ["a", "b", "c"]);
    // side a along the axis; the corner opposite of it by its height
    const height = (2 * heron(of, units.length)) / of.a;
    const along = (of.a * of.a + of.c * of.c - of.b * of.b) / (2 * of.a);
    return {
      kind: "corners",
      corners: [
        [0, 0],
        [of.a, 0],
        [along, height],
      ],
      units,
    };
  }
  if (kind === "circle") {
    const { radius, units } = circleOf(measures);
    return { kind: "stadium", straight: 0, radius, units };
  }
  if (kind === "stadium") {
    const { straight, width, units } = stadiumOf(measures);
    return { kind: "stadium", straight, radius: width / 2, units };
  }
  const { points, unit } = expectFields(measures, ["points", "unit"], "");
  if (typeof unit !== "string") return fail("type", "unit", unit, 'a unit for a length, such as "ft"');
  const { outline, units } = polygonOf(points, unit, undefined);
  return { kind: "corners", corners: outline, units };
};

const box = (length: number, width: number): readonly Point[] => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];

/** Length of a closed line through corners. */
export const around = (corners: readonly Point[]): number =>
  corners.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = corners[(i + 1) % corners.length] as Point;
    return sum + Math.hypot(nextX - x, nextY - y);
  }, 0);

/**
 * Circumference of an ellipse with half axes `a` and `b`, by the arithmetic-geometric mean:
 * `2 pi / M(a, b) * (a^2 - sum of 2^(n-1) c[n]^2)`. Each step doubles the digits.
 */
const ellipseAround = (a: number, b: number): number => {
  let [big, small] = [Math.max(a, b), Math.min(a, b)];
  const most = big;
  let sum = (big * big - small * small) / 2;
  for (let weight = 1; big - small > 1e-16 * most && weight < 2 ** 40; weight *= 2) {
    const half = (big - small) / 2;
    [big, small] = [(big + small) / 2, Math.sqrt(big * small)];
    sum += weight * half * half;
  }
  return ((2 * Math.PI) / big) * (most * most - sum);
};

/** The length of the edge of a shape, as a number of a unit. */
export const edgeOf = (
  input: unknown,
  path = "shape",
): { readonly length: number; readonly units: UnitSet } => {
  const { shape, measures } = measuresOf(input, path);
  const kind = shapeNamed(shape, edgeShapes, path);
  const problems = checks();
  const read = problems.run(() => {
    if (kind === "ellipse") {
      const { of, units } = lengthsOf(measures, ["length", "width"]);
      return { length: ellipseAround(of.length / 2, of.width / 2), units };
    }
    if (kind === "annulus") {
      const { outer, inner, units } = annulusOf(measures);
      return { length: 2 * Math.PI * (outer + inner), units };
    }
    const outline = outlineOf(expectOneOf(kind, outlines, "shape"), measures);
    return outline.kind === "corners"
      ? { length: around(outline.corners), units: outline.units }
      : { length: 2 * (Math.PI * outline.radius + outline.straight), units: outline.units };
  }, path);
  problems.done();
  return read as NonNullable<typeof read>;
};
