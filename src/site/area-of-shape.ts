import { checks, expectRecord, fail } from "../quantity/index.js";
import { averageRadiusArea } from "./average-radius-area.js";
import { annulusArea, circleArea, sectorArea } from "./circle-area.js";
import { ellipseArea } from "./ellipse-area.js";
import { type Area, areaOf } from "./lengths.js";
import { nameOf } from "./net-area.js";
import { offsetArea } from "./offset-area.js";
import { polygonArea } from "./polygon-area.js";
import { rectangleArea } from "./rectangle-area.js";
import type { SiteShape } from "./site-shape.js";
import { trapezoidArea } from "./trapezoid-area.js";
import { triangleArea, triangleAreaFromSides } from "./triangle-area.js";

type Fields = Readonly<Record<string, unknown>>;

/** The fields of each shape and its formula, which checks what it is given: a JSON file may hold anything. */
const shapes: Readonly<
  Record<SiteShape["shape"], { readonly fields: readonly string[]; readonly area: (fields: Fields) => Area }>
> = {
  measured: { fields: ["area"], area: (f) => areaOf(f.area, "area") },
  rectangle: { fields: ["length", "width"], area: (f) => rectangleArea(f as never) },
  triangle: { fields: ["base", "height"], area: (f) => triangleArea(f as never) },
  "triangle from sides": { fields: ["a", "b", "c"], area: (f) => triangleAreaFromSides(f as never) },
  trapezoid: { fields: ["a", "b", "height"], area: (f) => trapezoidArea(f as never) },
  circle: { fields: ["radius", "diameter", "circumference"], area: (f) => circleArea(f as never) },
  ellipse: { fields: ["length", "width"], area: (f) => ellipseArea(f as never) },
  sector: { fields: ["radius", "angle"], area: (f) => sectorArea(f as never) },
  annulus: { fields: ["outerRadius", "innerRadius"], area: (f) => annulusArea(f as never) },
  polygon: { fields: ["points", "unit"], area: (f) => polygonOf(f) },
  offsets: { fields: ["spacing", "widths", "left", "right", "rule"], area: (f) => offsetArea(f as never) },
  "average radius": { fields: ["radii", "rule"], area: (f) => averageRadiusArea(f as never) },
};

const polygonOf = (fields: Fields): Area =>
  fields.unit === undefined
    ? fail("missing", "unit", undefined, "the unit of length of the points")
    : polygonArea(fields.points as never, fields.unit as never);

/**
 * The area of one shape that is described as plain JSON.
 *
 * Each shape is worked out by the formula of its name, see {@link SiteShape}; a `"measured"` one gives its
 * area back. A field that the shape does not have is an error, for a measure that nobody reads is a mistake.
 *
 * @throws RatewrightError with every problem of the shape, such as `width`: `type` for an unknown shape or
 * field, and what the formula throws
 *
 * @example
 * ```ts
 * import { areaOfShape } from "ratewright/site";
 * const green = { shape: "rectangle", length: { value: 40, unit: "yd" }, width: { value: 40, unit: "yd" } } as const;
 * areaOfShape(green).in("yd2"); // => 1600
 * areaOfShape({ shape: "measured", area: { value: 12400, unit: "ft2" } }).in("ft2"); // => 12400
 * ```
 */
export const areaOfShape = (shape: SiteShape): Area => {
  const fields = expectRecord(shape, "shape", "a record that names its shape");
  const kind = fields.shape;
  if (kind === undefined) return fail("missing", "shape", kind, `one of ${Object.keys(shapes).join(", ")}`);
  if (typeof kind !== "string" || !Object.hasOwn(shapes, kind)) {
    return fail("type", "shape", kind, `one of ${Object.keys(shapes).join(", ")}`);
  }
  const one = shapes[kind as SiteShape["shape"]];
  const door = checks();
  for (const key of Object.keys(fields)) {
    if (key !== "shape" && key !== "name" && !one.fields.includes(key)) {
      door.run(() => fail("type", key, fields[key], `no such field: a ${kind} has ${one.fields.join(", ")}`));
    }
  }
  door.run(() => nameOf(fields, ""));
  const area = door.run(() => one.area(fields));
  door.done();
  return area as Area;
};
