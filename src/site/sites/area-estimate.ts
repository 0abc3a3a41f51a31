import { type ErrorMeaning, type Estimate, statedEstimate } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  checks,
  expectFields,
  expectList,
  expectOneOf,
  expectQuantity,
  expectRecord,
  fail,
  isUnit,
  likeQuantity,
  numberIn,
  outOfRange,
  type Quantity,
  RatewrightError,
} from "../../quantity/index.js";
import type { Area } from "../areas.js";
import { type Length, lengthOf } from "../lengths.js";
import { type Polygon, polygonOf } from "../survey/polygon-area.js";
import { shoelace } from "../survey/rings.js";
import { readShape } from "./area-of-shape.js";
import { type SiteDescription, siteArea } from "./site-area.js";
import type { SiteShape } from "./site-shape.js";

/** How far a tape or a wheel may be off. */
export interface TapeError {
  /** Of each measure, whatever its length: reading, sag, where the edge is. Independent from measure to measure. */
  readonly reading?: Length;
  /** Of the tape itself, as a share of the length: stretch, a worn wheel. The same in every measure. */
  readonly scale?: Quantity<"1", "none">;
  /** What the errors are: one standard error, or limits that are not passed (then divided by the root of 3). */
  readonly meaning: ErrorMeaning;
}

type Fields = Readonly<Record<string, unknown>>;

/**
 * The area of one shape with its standard error, from the error of the tape.
 *
 * `u(A)^2 = sum of (dA/dL * reading)^2 + (2 * A * scale)^2` over all measures `L` of the shape. The reading error of
 * each measure is its own; the error of the tape itself is in all of them, so that 1 % of length is 2 % of area. The
 * derivatives are found by changing each measure a little; for polygons in closed form. Angles count as exact.
 *
 * A rule, the line from which offsets are taken, and an edge that is no clear line add errors of their own.
 *
 * Range: errors small against the measures; up to 500 measures, or 20 000 corners.
 *
 * @throws RatewrightError `range` for a shape that is `"measured"`: `statedEstimate` takes an area with its own error;
 * `missing` where neither reading nor scale is given; and what {@link areaOfShape} throws
 *
 * Source: JCGM 100:2008 (GUM), 5.1.2 and 5.2.2; surveying texts for the rectangle.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { areaEstimate } from "ratewright/site";
 * const lawn = { shape: "rectangle", length: quantity(60, "m"), width: quantity(20, "m") } as const;
 * const estimate = areaEstimate(lawn, { reading: quantity(1, "cm"), meaning: "standard error" });
 * estimate.value.in("m2"); // => 1200
 * Number(estimate.standardError.in("m2").toFixed(3)); // => 0.632
 * ```
 */
export const areaEstimate = (shape: SiteShape, tape: TapeError): Estimate<"area", "none"> => {
  const problems = checks();
  const error = problems.run(() => tapeOf(tape));
  const read = problems.run(() => withSlopes(shape, "shape"));
  problems.done();
  const { area, squares } = read as Varied;
  const { reading, scale } = error as ReadTape;
  return estimateOf(area, area.value, squares * reading ** 2, scale);
};

/**
 * The net area of a site with its standard error, from the error of the tape.
 *
 * As {@link areaEstimate}: the reading errors of all parts and cut-outs add as squares, the error of the tape itself
 * counts for the net area, `2 * net * scale`, for one tape measured all.
 *
 * @throws RatewrightError as {@link siteArea} and {@link areaEstimate}, each problem with its place
 *
 * Source: JCGM 100:2008 (GUM), 5.1.2 and 5.2.2.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { siteAreaEstimate } from "ratewright/site";
 * const site = {
 *   parts: [{ shape: "rectangle", length: quantity(120, "ft"), width: quantity(90, "ft") }],
 *   cutOuts: [{ shape: "circle", diameter: quantity(20, "ft") }],
 * } as const;
 * const net = siteAreaEstimate(site, {
 *   reading: quantity(3, "in"),
 *   scale: quantity(0.5, "%"),
 *   meaning: "limits",
 * });
 * Math.round(net.value.in("ft2")); // => 10486
 * Math.round(net.standardError.in("ft2")); // => 64
 * ```
 */
export const siteAreaEstimate = (site: SiteDescription, tape: TapeError): Estimate<"area", "none"> => {
  const problems = checks();
  const error = problems.run(() => tapeOf(tape));
  const whole = problems.run(() => siteArea(site));
  problems.done();
  const { net } = whole as ReturnType<typeof siteArea>;
  const { reading, scale } = error as ReadTape;
  const { parts, cutOuts } = expectRecord(site, "site") as {
    readonly parts?: unknown;
    readonly cutOuts?: unknown;
  };
  const shapes = [
    ...expectList(parts, "parts", "shape").map((shape, i) => [shape, `parts[${i}]`] as const),
    ...(cutOuts === undefined || (Array.isArray(cutOuts) && cutOuts.length === 0)
      ? []
      : expectList(cutOuts, "cutOuts", "shape")
    ).map((shape, i) => [shape, `cutOuts[${i}]`] as const),
  ];
  let variance = 0;
  for (const [shape, path] of shapes) {
    const varied = problems.run(() => withSlopes(shape, path));
    // each part has its own unit: its derivative goes to that of the net area
    if (varied !== undefined) {
      const factor = numberIn(likeQuantity(varied.area, 1), net.unit);
      variance += varied.squares * (reading * factor) ** 2;
    }
  }
  problems.done();
  return estimateOf(net, net.value, variance, scale);
};

const estimateOf = (area: Area, value: number, variance: number, scale: number): Estimate<"area", "none"> =>
  statedEstimate({
    value: area,
    error: likeQuantity(area, Math.sqrt(variance + (2 * value * scale) ** 2)),
    meaning: "standard error",
  });

interface ReadTape {
  /** Standard error of a reading, in m. */
  readonly reading: number;
  readonly scale: number;
}

const tapeOf = (input: unknown): ReadTape => {
  const record = expectFields(input, ["reading", "scale", "meaning"], "tape");
  const problems = checks();
  const meaning = problems.run(() =>
    expectOneOf(record.meaning, ["standard error", "limits"], "tape.meaning"),
  );
  const reading =
    record.reading === undefined
      ? 0
      : problems.run(() => lengthOf(record.reading, "tape.reading", "non-negative").in("m"));
  const scale =
    record.scale === undefined
      ? 0
      : problems.run(() =>
          expectQuantity(
            record.scale,
            { dimension: "1", of: "none", bound: "non-negative" },
            "tape.scale",
          ).in("1"),
        );
  if (record.reading === undefined && record.scale === undefined) {
    problems.run(() => fail("missing", "tape.reading", undefined, "a reading error, a scale error, or both"));
  }
  if (scale !== undefined && scale > 0.2) {
    problems.run(() =>
      outOfRange("tape.scale", record.scale, { max: 20, unit: "%" }, "{}: the errors have to be small"),
    );
  }
  problems.done();
  const by = meaning === "limits" ? Math.sqrt(3) : 1;
  return { reading: (reading as number) / by, scale: (scale as number) / by };
};

interface Varied {
  readonly area: Area;
  /** Sum of the squares of `dA/dL`, in the unit of the area per metre. */
  readonly squares: number;
}

/** An area, and how much it changes with its measures. */
const withSlopes = (shape: unknown, path: string): Varied => {
  const fields = expectRecord(shape, path, "a record that names its shape");
  const problems = checks();
  const read = problems.run(() => readShape(fields), path);
  problems.done();
  const { area } = read as NonNullable<typeof read>;
  if (fields.shape === "measured") {
    return fail(
      "range",
      path,
      described("an area that is known already"),
      "a shape with its measures: the error of a known area is stated, statedEstimate takes it",
    );
  }
  if (fields.shape === "polygon") return { area, squares: polygonSquares(fields, area) };
  const leaves = lengthLeaves(fields);
  if (leaves.length > mostMeasures)
    outOfRange(path, described(`${leaves.length} measures`), { max: mostMeasures });
  const size = Math.sqrt(area.in("m2"));
  const squares = leaves.reduce((sum, leaf) => sum + derivative(fields, leaf, area, size) ** 2, 0);
  return { area, squares };
};

const mostMeasures = 500;

/** Where the measures of length stand in a shape: keys and indexes, one after another. */
type Leaf = readonly (string | number)[];

const lengthLeaves = (value: unknown, at: Leaf = []): readonly Leaf[] => {
  if (Array.isArray(value)) return value.flatMap((item, i) => lengthLeaves(item, [...at, i]));
  if (typeof value !== "object" || value === null) return [];
  const { unit } = value as { readonly unit?: unknown };
  if (typeof unit === "string") return isUnit(unit, "length") && at[0] !== "slope" ? [at] : [];
  return Object.entries(value).flatMap(([key, item]) => lengthLeaves(item, [...at, key]));
};

/** A shape with one measure changed by a length in m. */
const changed = (value: unknown, leaf: Leaf, by: number): unknown => {
  const [key, ...rest] = leaf;
  if (key === undefined) {
    const length = lengthOf(value, "measure", "any");
    return likeQuantity(length, length.value + by * numberIn({ value: 1, unit: "m" }, length.unit));
  }
  if (Array.isArray(value)) return value.map((item, i) => (i === key ? changed(item, rest, by) : item));
  return { ...(value as Fields), [key]: changed((value as Fields)[key], rest, by) };
};

/** `dA/dL` per metre: to both sides where the shape lets it, else to one. */
const derivative = (shape: Fields, leaf: Leaf, area: Area, size: number): number => {
  const step = 1e-5 * size;
  const at = (by: number): number | undefined => {
    try {
      return readShape(changed(shape, leaf, by)).area.in(area.unit as "m2");
    } catch (error) {
      if (error instanceof RatewrightError) return undefined;
      throw error;
    }
  };
  const [up, down] = [at(step), at(-step)];
  if (up !== undefined && down !== undefined) return (up - down) / (2 * step);
  if (up !== undefined) return (up - area.value) / step;
  if (down !== undefined) return (area.value - down) / step;
  return fail(
    "range",
    String(leaf[0]),
    described("a measure that cannot change"),
    "measures that leave room for an error",
  );
};

/** A corner moves the area by half the line between its neighbors, in either coordinate. */
const polygonSquares = ({ points, unit, holes }: Fields, area: Area): number => {
  const {
    outline,
    holes: cut,
    units,
  }: Polygon = polygonOf(points, unit, holes === undefined ? undefined : { holes });
  const ofRing = (ring: Polygon["outline"]): number =>
    ring.reduce((sum, _, i) => {
      const [x1, y1] = ring[(i + ring.length - 1) % ring.length] as readonly [number, number];
      const [x2, y2] = ring[(i + 1) % ring.length] as readonly [number, number];
      return sum + ((x2 - x1) ** 2 + (y2 - y1) ** 2) / 4;
    }, 0);
  const sides = cut.reduce((sum, ring) => sum + ofRing(ring), ofRing(outline));
  // dA/dx has the unit of a length; per meter of change, in the unit of the area
  const unitInMeters = numberIn({ value: 1, unit: units.length }, "m");
  const flat = cut.reduce((sum, ring) => sum - shoelace(ring), shoelace(outline));
  // more than 1 where a slope brought the area to the ground
  const stretch = area.in(units.area) / flat;
  return sides * (unitInMeters * numberIn({ value: 1, unit: "m2" }, area.unit) * stretch) ** 2;
};
