import {
  allOf,
  checks,
  expectFields,
  expectRecord,
  fail,
  nearName,
  outOfRange,
} from "../../quantity/index.js";
import { type Length, lengthOf, type UnitSet, unitSet } from "../lengths.js";
import { segmentOfCircle } from "../shapes/segment-area.js";
import type { Measure } from "../sites/site-shape.js";

type Side = Length | Measure;

/** A tank by its shape, as plain JSON, measured inside; the ends are flat, the tank is level. */
export type Tank =
  | { readonly shape: "box"; readonly length: Side; readonly width: Side; readonly height: Side }
  | { readonly shape: "upright cylinder"; readonly diameter: Side; readonly height: Side }
  | { readonly shape: "lying cylinder"; readonly diameter: Side; readonly length: Side }
  /** `width` and `height` are the full axes of the ellipse. */
  | { readonly shape: "lying ellipse"; readonly width: Side; readonly height: Side; readonly length: Side }
  /** `height` of the straight side above the cone; `outlet`, the diameter at the bottom, is 0 where left out. */
  | {
      readonly shape: "cone bottom";
      readonly diameter: Side;
      readonly coneHeight: Side;
      readonly height: Side;
      readonly outlet?: Side;
    };

/** A tank that was read: its inside height, and the volume up to a depth, in numbers of one unit. */
export interface ReadTank {
  readonly units: UnitSet;
  readonly height: number;
  readonly volumeTo: (depth: number) => number;
}

type Sides = Readonly<Record<string, number>>;

interface TankShape {
  readonly sides: readonly string[];
  readonly height: (sides: Sides) => number;
  readonly volumeTo: (sides: Sides, depth: number) => number;
}

/** Share of an ellipse under a level line at a share `t` of its height, as an area of an ellipse of axes 1. */
const segmentShare = (t: number): number =>
  t <= 0.5 ? segmentOfCircle(0.5, 4 * Math.asin(Math.sqrt(t))) : Math.PI / 4 - segmentShare(1 - t);

const of = (sides: Sides, name: string): number => sides[name] ?? 0;

/** Volume of a cone that widens from `bottom` to `top` over `height`, up to `depth`. */
const coneTo = (bottom: number, top: number, height: number, depth: number): number => {
  const level = bottom + ((top - bottom) * depth) / height;
  return ((Math.PI * depth) / 12) * (bottom * bottom + bottom * level + level * level);
};

const tankShapes: Readonly<Record<Tank["shape"], TankShape>> = {
  box: {
    sides: ["length", "width", "height"],
    height: (s) => of(s, "height"),
    volumeTo: (s, depth) => of(s, "length") * of(s, "width") * depth,
  },
  "upright cylinder": {
    sides: ["diameter", "height"],
    height: (s) => of(s, "height"),
    volumeTo: (s, depth) => (Math.PI / 4) * of(s, "diameter") ** 2 * depth,
  },
  "lying cylinder": {
    sides: ["diameter", "length"],
    height: (s) => of(s, "diameter"),
    volumeTo: (s, depth) =>
      of(s, "diameter") ** 2 * segmentShare(depth / of(s, "diameter")) * of(s, "length"),
  },
  "lying ellipse": {
    sides: ["width", "height", "length"],
    height: (s) => of(s, "height"),
    volumeTo: (s, depth) =>
      of(s, "width") * of(s, "height") * segmentShare(depth / of(s, "height")) * of(s, "length"),
  },
  "cone bottom": {
    sides: ["diameter", "coneHeight", "height"],
    height: (s) => of(s, "coneHeight") + of(s, "height"),
    volumeTo: (s, depth) => {
      const [cone, top] = [of(s, "coneHeight"), of(s, "diameter")];
      const straight = Math.max(0, depth - cone);
      return coneTo(of(s, "outlet"), top, cone, Math.min(depth, cone)) + (Math.PI / 4) * top * top * straight;
    },
  },
};

const names = Object.keys(tankShapes) as readonly Tank["shape"][];

/** Reads a tank: its shape, and every measure of it. */
export const readTank = (input: unknown, path = "tank"): ReadTank => {
  const record = expectRecord(input, path, "a record that names the shape of the tank");
  const expected = `one of ${names.join(", ")}`;
  const name = names.find((known) => known === record.shape);
  if (name === undefined) {
    const near = typeof record.shape === "string" ? nearName(record.shape, names) : undefined;
    const code = record.shape === undefined ? "missing" : "type";
    return fail(
      code,
      `${path}.shape`,
      record.shape,
      expected,
      near === undefined ? {} : { suggestion: near },
    );
  }
  const { sides, height, volumeTo } = tankShapes[name];
  const problems = checks();
  const optional = name === "cone bottom" ? ["outlet"] : [];
  problems.run(() => expectFields(record, ["shape", ...sides, ...optional], path));
  const lengths = problems.run(
    () => allOf(Object.fromEntries(sides.map((side) => [side, () => lengthOf(record[side], side)]))),
    path,
  );
  const outlet =
    name === "cone bottom" && record.outlet !== undefined
      ? problems.run(() => lengthOf(record.outlet, "outlet", "non-negative"), path)
      : undefined;
  problems.done();
  const read = lengths as Readonly<Record<string, Length>>;
  const units = unitSet((read[sides[0] as string] as Length).unit);
  const numbers: Record<string, number> = { outlet: outlet?.in(units.length) ?? 0 };
  for (const side of sides) numbers[side] = (read[side] as Length).in(units.length);
  if (name === "cone bottom" && of(numbers, "outlet") >= of(numbers, "diameter")) {
    outOfRange(
      `${path}.outlet`,
      record.outlet,
      { below: of(numbers, "diameter"), unit: units.length },
      "{}, which is the diameter",
    );
  }
  return { units, height: height(numbers), volumeTo: (depth) => volumeTo(numbers, depth) };
};
