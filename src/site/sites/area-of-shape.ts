import {
  checks,
  expectFields,
  expectName,
  expectOneOf,
  expectRecord,
  fail,
  nearName,
  Quantity,
} from "../../quantity/index.js";
import { type Area, areaOf } from "../areas.js";
import { annulusArea } from "../shapes/annulus-area.js";
import { circleArea, sectorArea } from "../shapes/circle-area.js";
import { ellipseArea } from "../shapes/ellipse-area.js";
import { quadrilateralArea } from "../shapes/quadrilateral-area.js";
import { rectangleArea } from "../shapes/rectangle-area.js";
import { segmentArea } from "../shapes/segment-area.js";
import { parallelogramArea, squareArea } from "../shapes/square-area.js";
import { stadiumArea } from "../shapes/stadium-area.js";
import { trapezoidArea } from "../shapes/trapezoid-area.js";
import { triangleArea, triangleAreaFromSides } from "../shapes/triangle-area.js";
import { gradeOf } from "../slopes/read-slope.js";
import { averageRadiusArea } from "../survey/average-radius-area.js";
import { offsetArea } from "../survey/offset-area.js";
import { polygonArea } from "../survey/polygon-area.js";
import { radialArea } from "../survey/radial-area.js";
import type { SiteShape } from "./site-shape.js";

type Fields = Readonly<Record<string, unknown>>;

interface Known {
  readonly fields: readonly string[];
  readonly area: (fields: Fields) => Area;
}

/**
 * A shape by its formula. The formulas read what they are given and believe nothing, so the fields of a record
 * out of a file are handed on as they are: their types say what a caller should write, not what may come.
 */
const by = <I>(formula: (input: I) => Area, ...fields: readonly string[]): Known => ({
  fields,
  area: (given) => formula(given as I),
});

const shapes: Readonly<Record<SiteShape["shape"], Known>> = {
  measured: {
    fields: ["area"],
    area: ({ area }) => areaOf(area, "area", ["treated", "gross"]),
  },
  square: by(squareArea, "side"),
  rectangle: by(rectangleArea, "length", "width"),
  parallelogram: by(parallelogramArea, "base", "height"),
  triangle: by(triangleArea, "base", "height"),
  "triangle from sides": by(triangleAreaFromSides, "a", "b", "c"),
  trapezoid: by(trapezoidArea, "a", "b", "height"),
  quadrilateral: by(quadrilateralArea, "diagonal", "height1", "height2", "a", "b", "c", "d"),
  circle: by(circleArea, "radius", "diameter", "circumference"),
  ellipse: by(ellipseArea, "length", "width"),
  stadium: by(stadiumArea, "width", "length", "straight"),
  sector: by(sectorArea, "radius", "angle"),
  segment: by(segmentArea, "chord", "height", "radius", "angle"),
  annulus: by(annulusArea, "outerRadius", "innerRadius", "outerDiameter", "innerDiameter", "width"),
  polygon: {
    fields: ["points", "unit", "holes"],
    area: ({ points, unit, holes }) => polygonFrom(points, unit, holes),
  },
  offsets: by(offsetArea, "spacing", "widths", "left", "right", "rule"),
  "average radius": by(averageRadiusArea, "radii", "rule"),
  radial: by(radialArea, "rays"),
};

const names = Object.keys(shapes) as readonly SiteShape["shape"][];

/** The corners of a shape are numbers, which need their unit beside them. */
const polygonFrom = (points: unknown, unit: unknown, holes: unknown): Area => {
  if (unit === undefined) return fail("missing", "unit", unit, "the unit of length of the points");
  if (typeof unit !== "string") return fail("type", "unit", unit, 'a unit for a length, such as "ft"');
  const options = holes === undefined ? {} : { holes };
  // the formula reads its arguments: see `by`
  return (polygonArea as (points: unknown, unit: string, options: unknown) => Area)(points, unit, options);
};

const described = ["shape", "name", "slope", "measured"] as const;

/** A shape that was read: the area along the ground, and the plan area where a slope was given. */
export interface ReadShape {
  readonly name?: string;
  readonly area: Area;
  readonly plan?: Quantity<"area", "plan">;
}

/**
 * The area of one shape that is described as plain JSON.
 *
 * Each shape is worked out by the formula of its name, see {@link SiteShape}; a `"measured"` one gives its
 * area back. A field that the shape does not have is an error, for a measure that nobody reads is a mistake.
 * With a `slope`, measures of a plan are brought to the ground, `A = plan * sqrt(1 + grade^2)`.
 *
 * @throws RatewrightError with every problem of the shape, such as `width`: `type` for an unknown shape or field,
 *   `missing` at `measured` for a slope without a word where the measures were taken, and what the formula throws;
 *   `range`, `text`
 *
 * Source: as the formula of each shape.
 *
 * @example
 * ```ts
 * import { areaOfShape } from "ratewright/site";
 * const green = { shape: "rectangle", length: { value: 40, unit: "yd" }, width: { value: 40, unit: "yd" } } as const;
 * areaOfShape(green).in("yd2"); // => 1600
 * areaOfShape({ shape: "measured", area: { value: 12400, unit: "ft2" } }).in("ft2"); // => 12400
 * const bank = { shape: "measured", area: { value: 9000, unit: "ft2", of: "plan" }, slope: "3:1" } as const;
 * Math.round(areaOfShape(bank).in("ft2")); // => 9487
 * ```
 */
export const areaOfShape = (shape: SiteShape): Area => readShape(shape).area;

/** Reads a shape of a site: its name, its area along the ground, and its plan area where a slope is given. */
export const readShape = (input: unknown): ReadShape => {
  const record = expectRecord(input, "shape", "a record that names its shape");
  const kind = shapeOf(record);
  if (kind === "triangle" && ["a", "b", "c", "sides"].some((side) => record[side] !== undefined))
    return fail(
      "type",
      "shape",
      kind,
      'a triangle by base and height; by its sides a, b and c it is shape: "triangle from sides"',
    );
  const one = shapes[kind];
  const problems = checks();
  problems.run(() => expectFields(record, [...one.fields, ...described], ""));
  const name = problems.run(() => nameOf(record, ""));
  const slope = problems.run(() => slopeOfShape(record, kind));
  const measures: Record<string, unknown> = {};
  for (const key of one.fields) if (record[key] !== undefined) measures[key] = record[key];
  const area = problems.run(() => {
    if (isPlanArea(record, kind)) measures.area = withoutTag(measures.area);
    return one.area(measures);
  });
  problems.done();
  return { ...name, ...broughtDown(area as Area, slope) };
};

const shapeOf = ({ shape: kind, area }: Fields): SiteShape["shape"] => {
  const known = names.find((name) => name === kind);
  if (known !== undefined) return known;
  const expected = `one of ${names.join(", ")}`;
  if (kind === undefined)
    return fail("missing", "shape", kind, expected, area === undefined ? {} : { suggestion: "measured" });
  const near = typeof kind === "string" ? nearName(kind, names) : undefined;
  return fail("type", "shape", kind, expected, near === undefined ? {} : { suggestion: near });
};

interface ShapeSlope {
  readonly grade: number;
  readonly measured: "ground" | "plan";
}

/** Whether the area of a part is tagged as one of a plan. */
const isPlanArea = (record: Fields, kind: SiteShape["shape"]): boolean =>
  kind === "measured" && Object(record.area).of === "plan";

const slopeOfShape = (record: Fields, kind: SiteShape["shape"]): ShapeSlope | undefined => {
  const untag = isPlanArea(record, kind);
  const { slope, measured } = record;
  if (slope === undefined && measured === undefined && !untag) return undefined;
  const problems = checks();
  const grade =
    slope === undefined && measured === "ground" && !untag
      ? 0
      : problems.run(() =>
          slope === undefined
            ? fail(
                "missing",
                "slope",
                slope,
                'the slope of the ground under a plan area, "level" where there is none',
              )
            : gradeOf(slope, "slope"),
        );
  const where = problems.run(() =>
    measured === undefined && untag ? "plan" : expectOneOf(measured, ["ground", "plan"], "measured"),
  );
  if (untag && where === "ground") {
    problems.run(() => fail("conflict", "measured", measured, "plan: the area is tagged as a plan area"));
  }
  problems.done();
  if (slope === undefined && !untag) return undefined;
  return { grade: grade as number, measured: where as "ground" | "plan" };
};

const withoutTag = (area: unknown): unknown => {
  const { value, unit } = expectFields(area, ["value", "unit", "of", "dimension"], "area");
  return { value, unit };
};

/** Both areas of a shape on a slope. */
const broughtDown = (area: Area, slope: ShapeSlope | undefined): ReadShape => {
  if (slope === undefined) return { area };
  const stretch = Math.hypot(1, slope.grade);
  const onPlan = slope.measured === "plan";
  const plan = new Quantity(onPlan ? area.value : area.value / stretch, area.unit, "plan", "area");
  return { area: onPlan ? new Quantity(area.value * stretch, area.unit, "none", "area") : area, plan };
};

/** The name of a part, where it has one. */
export const nameOf = (record: Fields, at: string): { readonly name?: string } => {
  const { name } = record;
  if (name === undefined) return {};
  const path = at === "" ? "name" : `${at}.name`;
  if (typeof name !== "string" || name.length > mostName)
    return fail("type", path, name, `a text of at most ${mostName} characters; ${orNone}`);
  if (name.trim() === "") return fail("missing", path, name, `the name of a part; ${orNone}`);
  return { name: expectName(name, path, "the name of a part") };
};

const orNone = "leave the field out where it has no name";

/** What people on the site call a part fits on a line. */
const mostName = 200;
