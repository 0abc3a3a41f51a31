import { allOf, expectFields, fail, type Quantity } from "../../quantity/index.js";
import { type GridInMm, gridFields, gridOf, type PlantingGrid } from "../planting/grid.js";
import { type Plug, plugAt } from "../planting/plugs.js";
import { given, isMetric, type Length, percentAt, type Share } from "../read.js";
import { coverOfRadius, fullRadius, radiusOfCover } from "./lattice-cover.js";
import { type PatchMap, patchDistances } from "./patch-map.js";

/** Plants at random places, as broadcast sprigs, stolons or creeping seedlings. */
export interface ScatteredPlants {
  readonly pattern: "random";
  readonly plantsPerArea: Quantity<"count/area", "none">;
}

/**
 * What the ground looks like on the first day: plugs in a pattern (`plug`), or patches in a pattern that
 * cover a share already (`cover`), or a map of patches of any shape (`patches`).
 */
export type CoverStart =
  | ((PlantingGrid | ScatteredPlants) & { readonly plug: Plug })
  | ((PlantingGrid | ScatteredPlants) & { readonly cover: Share })
  | { readonly patches: PatchMap };

/** How the cover grows with the way that the edge of every patch has moved outwards, in mm. */
export interface CoverCurve {
  /** Share of the ground, 0 to 1, once the edges have moved by `way`. */
  readonly at: (way: number) => number;
  /** The way to a share of the ground; 0 where it is there already, infinite where it is never reached. */
  readonly wayTo: (cover: number) => number;
  readonly kind: "pattern" | "random" | "map";
  /** The unit of the spacing or of the cells, for the units of an answer. */
  readonly metric: boolean;
}

const gridCurve = (grid: GridInMm, start: number): CoverCurve => ({
  at: (way) => coverOfRadius(grid, start + way),
  wayTo: (cover) => Math.max(0, (cover >= 1 ? fullRadius(grid) : radiusOfCover(grid, cover)) - start),
  kind: "pattern",
  metric: isMetric(grid.unit),
});

/**
 * Discs at independent random places, `n` to the mm2: a point is bare where none of the discs lies within
 * `r` of it, so the cover is `1 - exp(-n pi r^2)`. Full cover is approached and never reached.
 */
const randomCurve = (perMm2: number, start: number, metric: boolean): CoverCurve => ({
  at: (way) => -Math.expm1(-perMm2 * Math.PI * (start + way) ** 2),
  wayTo: (cover) => Math.max(0, randomRadius(perMm2, cover) - start),
  kind: "random",
  metric,
});

const randomRadius = (perMm2: number, cover: number): number =>
  cover >= 1 ? Infinity : Math.sqrt(-Math.log1p(-cover) / (perMm2 * Math.PI));

const mapCurve = (distances: Float64Array, metric: boolean): CoverCurve => {
  const n = distances.length;
  return {
    at: (way) => {
      // The edge has reached a cell once its way is not less than the distance, last digits aside.
      const reach = way * (1 + 1e-12);
      let [low, high] = [0, n];
      while (low < high) {
        const middle = (low + high) >> 1;
        if ((distances[middle] as number) <= reach) low = middle + 1;
        else high = middle;
      }
      return low / n;
    },
    wayTo: (cover) => distances[Math.max(0, Math.ceil(cover * n * (1 - 1e-12)) - 1)] as number,
    kind: "map",
    metric,
  };
};

/** Reads what the ground looks like on the first day. */
export const curveOf = (input: unknown, path: string): CoverCurve => {
  const record = expectFields(
    input,
    [...gridFields, "plantsPerArea", "plug", "cover", "patches"],
    path,
    "a start with plug and spacing, cover and spacing, or patches",
  );
  const { plug, cover, patches } = record;
  const stated = [plug, cover, patches].filter((one) => one !== undefined).length;
  if (stated !== 1) {
    return fail(stated === 0 ? "missing" : "conflict", path, input, "one of plug, cover and patches");
  }
  if (patches !== undefined) {
    expectFields(input, ["patches"], path);
    const cell = (patches as { cell?: Length } | null)?.cell;
    return mapCurve(patchDistances(patches, `${path}.patches`), isMetric(cell?.unit ?? ""));
  }
  const random = record.pattern === "random";
  const { ground, start } = allOf({
    ground: () => (random ? scatteredAt(record, path) : gridAt(record, path)),
    start: () =>
      plug === undefined
        ? { cover: percentAt(cover, `${path}.cover`, { above: 0, below: 100 }) / 100 }
        : { radius: Math.sqrt(plugAt(plug, `${path}.plug`).area / Math.PI) },
  });
  if (ground.kind === "random") {
    const radius = "radius" in start ? start.radius : randomRadius(ground.perMm2, start.cover);
    return randomCurve(ground.perMm2, radius as number, ground.metric);
  }
  const radius = "radius" in start ? (start.radius as number) : radiusOfCover(ground.grid, start.cover);
  return gridCurve(ground.grid, radius);
};

type Ground =
  | { readonly kind: "random"; readonly perMm2: number; readonly metric: boolean }
  | { readonly kind: "grid"; readonly grid: GridInMm };

type Fields = { readonly [K in (typeof gridFields)[number] | "plantsPerArea"]?: unknown };

const scatteredAt = (record: Fields, path: string): Ground => {
  if (record.spacing !== undefined) {
    return fail("conflict", `${path}.spacing`, record.spacing, "plantsPerArea for a random pattern");
  }
  const density = given(record.plantsPerArea, `${path}.plantsPerArea`, "count/area", "none");
  const metric = isMetric(density.unit.slice(density.unit.indexOf("/") + 1));
  return { kind: "random", perMm2: density.in("count/m2") / 1e6, metric };
};

const gridAt = (record: Fields, path: string): Ground => {
  if (record.plantsPerArea !== undefined) {
    return fail(
      "conflict",
      `${path}.plantsPerArea`,
      record.plantsPerArea,
      'spacing for an even pattern (spacingFor gives it), or pattern "random"',
    );
  }
  return { kind: "grid", grid: gridOf(record, `${path}.`) };
};
