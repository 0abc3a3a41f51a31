import { allOf, expectFields, fail, quantity } from "../../quantity/index.js";
import { type GridInMm, gridFields, gridOf, type PlantingGrid } from "../planting/grid.js";
import { isMetric, type Length, lengthAt, percentAt, type Share } from "../read.js";

/**
 * Twice the area of the segment of a disc that lies beyond a straight line at a distance `h` from its
 * center: zero where the disc does not reach the line.
 */
const twoSegments = (r: number, h: number): number => {
  if (r <= h) return 0;
  return 2 * (r * r * Math.acos(h / r) - h * Math.sqrt((r - h) * (r + h)));
};

/** The radius at which the discs of a grid cover all of the ground, in the unit of the grid. */
export const fullRadius = ({ pattern, spacing, rows }: GridInMm): number =>
  pattern === "triangular" ? spacing / Math.sqrt(3) : Math.sqrt(spacing * spacing + rows * rows) / 2;

/**
 * Share of the ground, 0 to 1, under discs of radius `r` on every point of a grid.
 *
 * The ground that lies nearest to a point is its cell: a rectangle, or a hexagon of a triangular pattern.
 * Ground in a cell that any disc covers is covered by the disc of that cell, so the cover is the part of
 * the cell that its own disc reaches: the disc, less a segment beyond each side. The segments do not meet
 * before the corners are reached, and then all is covered.
 */
export const coverOfRadius = (grid: GridInMm, r: number): number => {
  const { pattern, spacing, rows } = grid;
  if (r >= fullRadius(grid)) return 1;
  const beyond =
    pattern === "triangular"
      ? 3 * twoSegments(r, spacing / 2)
      : twoSegments(r, spacing / 2) + twoSegments(r, rows / 2);
  // The rounding of the last digit must not pass for more than all.
  return Math.min(1, (Math.PI * r * r - beyond) / (spacing * rows));
};

/** The radius at which discs cover a share of the ground, by halving; the way back from {@link coverOfRadius}. */
export const radiusOfCover = (grid: GridInMm, cover: number): number => {
  let low = 0;
  let high = fullRadius(grid);
  if (cover >= 1) return high;
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (coverOfRadius(grid, middle) < cover) low = middle;
    else high = middle;
  }
  return high;
};

/**
 * The share of the ground that round patches cover which stand in an even pattern: the union of discs, in
 * closed form until the ground is full.
 *
 * - square, `x = r / s`: `pi x^2` up to `x = 1/2`, then `pi x^2 - 4 x^2 acos(1 / (2 x)) + sqrt(4 x^2 - 1)`,
 *   full at `x = 1 / sqrt(2)`
 * - triangular: `pi x^2 / a`, then `(pi x^2 - 6 x^2 acos(1 / (2 x)) + 3/2 sqrt(4 x^2 - 1)) / a`, with
 *   `a = sqrt(3) / 2`; full at `x = 1 / sqrt(3)`
 * - rectangular: the disc less a segment beyond each side of its cell
 *
 * `r` is half the diameter of a patch, `s` the spacing. Ground much larger than the spacing: edges are not
 * in it.
 *
 * @param input.diameter - of each patch, zero or more
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `type`; all that are found
 * Source: plane geometry. Patches that just touch cover 78.54 % (square) and 90.69 % (triangular), the
 * packing densities of circles.
 *
 * @example
 * ```ts
 * import { coverOfPatches, quantity } from "ratewright";
 * const grid = { pattern: "square", spacing: quantity(12, "in") } as const;
 * Number(coverOfPatches({ ...grid, diameter: quantity(12, "in") }).in("%").toFixed(2)); // => 78.54
 * coverOfPatches({ ...grid, diameter: quantity(17, "in") }).in("%"); // => 100
 * ```
 */
export const coverOfPatches = (input: PlantingGrid & { readonly diameter: Length }): Share => {
  const record = expectFields(input, [...gridFields, "diameter"]);
  const { grid, diameter } = allOf({
    grid: () => gridOf(record),
    diameter: () => lengthAt(record.diameter, "diameter", "non-negative"),
  });
  return quantity(100 * coverOfRadius(grid, diameter.in("mm") / 2), "%");
};

/**
 * How wide the patches of an even pattern have to grow for a share of the ground: the way back from
 * {@link coverOfPatches}. At 100 % it is `sqrt(2)` times the spacing of a square pattern and `2 / sqrt(3)`
 * times that of a triangular one.
 *
 * @param input.cover - above 0 to 100 %
 * @returns the diameter, in inches, or in cm for a spacing in metric units
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `type`; all that are found
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { diameterForCover, quantity } from "ratewright";
 * const wide = diameterForCover({
 *   pattern: "triangular", spacing: quantity(12, "in"), cover: quantity(100, "%"),
 * });
 * Number(wide.in("in").toFixed(2)); // => 13.86
 * ```
 */
export const diameterForCover = (input: PlantingGrid & { readonly cover: Share }): Length => {
  const record = expectFields(input, [...gridFields, "cover"]);
  const { grid, cover } = allOf({
    grid: () => gridOf(record),
    cover: () => percentAt(record.cover, "cover", { above: 0, max: 100 }),
  });
  const mm = 2 * radiusOfCover(grid, cover / 100);
  if (!(mm > 0)) fail("range", "cover", cover, "a cover that a patch of some width makes");
  return isMetric(grid.unit) ? quantity(mm / 10, "cm") : quantity(mm / 25.4, "in");
};
