import {
  allOf,
  expectFields,
  expectOneOf,
  expectRecord,
  fail,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { given, isMetric, type Length, lengthAt } from "../read.js";

/** How plants stand to one another. */
export type PlantingPattern = "square" | "triangular" | "rectangular";

/** Plants at even distances. */
export interface PlantingGrid {
  /**
   * `"square"`: rows as far apart as the plants in them, side by side. `"triangular"`: staggered rows, every
   * plant as far from its six neighbors. `"rectangular"`: rows at `rowSpacing`, side by side.
   */
  readonly pattern: PlantingPattern;
  /** From plant to plant in the row, center to center. */
  readonly spacing: Length;
  /** From row to row, of a rectangular pattern only. */
  readonly rowSpacing?: Length;
}

/** Fields of a grid, for a function that takes them beside its own. */
export const gridFields = ["pattern", "spacing", "rowSpacing"] as const;

/** A grid in millimetres: plant to plant, and row to row. */
export interface GridInMm {
  readonly pattern: PlantingPattern;
  readonly spacing: number;
  readonly rows: number;
  readonly unit: string;
}

const half = Math.sqrt(3) / 2;

/** Takes the pattern alone. */
export const patternAt = (input: unknown, path: string): PlantingPattern =>
  expectOneOf(input, ["square", "triangular", "rectangular"], path);

/** Reads a grid out of a record whose fields are known already; `at` stands before the paths. */
export const gridOf = (
  record: { readonly [K in (typeof gridFields)[number]]?: unknown },
  at = "",
): GridInMm => {
  const { pattern, spacing, rows } = allOf({
    pattern: () => patternAt(record.pattern, `${at}pattern`),
    spacing: () => lengthAt(record.spacing, `${at}spacing`),
    rows: () =>
      record.pattern === "rectangular"
        ? lengthAt(record.rowSpacing, `${at}rowSpacing`)
        : record.rowSpacing === undefined
          ? undefined
          : fail(
              "conflict",
              `${at}rowSpacing`,
              record.rowSpacing,
              `none for a ${String(record.pattern)} pattern, which sets it itself; or pattern "rectangular"`,
            ),
  });
  const s = spacing.in("mm");
  const apart = rows?.in("mm") ?? (pattern === "triangular" ? s * half : s);
  return { pattern, spacing: s, rows: apart, unit: spacing.unit };
};

const perArea = (grid: GridInMm): Quantity<"count/area", "none"> => {
  const perMm2 = 1 / (grid.spacing * grid.rows);
  return isMetric(grid.unit)
    ? quantity(1e6 * perMm2, "count/m2")
    : quantity(304.8 * 304.8 * perMm2, "count/ft2");
};

/**
 * Plants or plugs per area by spacing and pattern. Square `1 / s^2`, rectangular `1 / (s r)`, triangular
 * `2 / (sqrt(3) s^2)`, which is 15.5 % more than a square one at the same spacing.
 *
 * - `s` spacing from plant to plant, `r` from row to row, both above zero
 *
 * It counts ground that is much larger than the spacing; what a row more or less along an edge makes is not
 * in it. In plants per m2 for a spacing in metric units, else per ft2.
 *
 * @throws RatewrightError `missing`, `range`, `conflict` for a spacing of rows that the pattern sets itself,
 * `unit/mismatch`, `type`
 * Source: plane geometry; nursery spacing charts print the square figures (4 per ft2 at 6 in).
 *
 * @example
 * ```ts
 * import { plantsPerArea, quantity } from "ratewright";
 * plantsPerArea({ pattern: "square", spacing: quantity(6, "in") }).in("count/ft2"); // => 4
 * const staggered = plantsPerArea({ pattern: "triangular", spacing: quantity(6, "in") });
 * Number(staggered.in("count/ft2").toFixed(2)); // => 4.62
 * ```
 */
export const plantsPerArea = (grid: PlantingGrid): Quantity<"count/area", "none"> =>
  perArea(gridOf(expectFields(expectRecord(grid, "grid", "a record with pattern, spacing"), gridFields, "")));

/**
 * How far apart the rows of a triangular pattern are: `s sqrt(3) / 2`, so that every plant is as far from
 * all six neighbors. The next row is shifted by half the spacing.
 *
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity, staggeredRowSpacing } from "ratewright";
 * Number(staggeredRowSpacing(quantity(18, "in")).in("in").toFixed(1)); // => 15.6
 * ```
 */
export const staggeredRowSpacing = (spacing: Length): Length => {
  const s = lengthAt(spacing, "spacing");
  return quantity(s.value * half, s.unit as "in");
};

/**
 * The spacing at which plants that you have come to a number per area: the way back from
 * {@link plantsPerArea}, `s = 1 / sqrt(n)`, triangular `s = sqrt(2 / (sqrt(3) n))`.
 *
 * @param input.plantsPerArea - `n`, more than zero
 * @param input.pattern - `"square"` or `"triangular"`
 * @returns in cm for a count per metric area, else in inches
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity, spacingFor } from "ratewright";
 * spacingFor({ pattern: "square", plantsPerArea: quantity(4, "count/ft2") }).in("in"); // => 6
 * ```
 */
export const spacingFor = (input: {
  readonly pattern: "square" | "triangular";
  readonly plantsPerArea: Quantity<"count/area", "none">;
}): Length => {
  const record = expectFields(input, ["pattern", "plantsPerArea"]);
  const { pattern, density } = allOf({
    pattern: () => expectOneOf(record.pattern, ["square", "triangular"], "pattern"),
    density: () => given(record.plantsPerArea, "plantsPerArea", "count/area", "none"),
  });
  const metric = isMetric(density.unit.slice(density.unit.indexOf("/") + 1));
  const cell = metric ? 1e4 / density.in("count/m2") : 144 / density.in("count/ft2");
  return quantity(Math.sqrt(pattern === "triangular" ? cell / half : cell), metric ? "cm" : "in");
};
