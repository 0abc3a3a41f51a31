import { described } from "../../quantity/house.js";
import { allOf, expectFields, fail, outOfRange, shown } from "../../quantity/index.js";
import { type Length, lengthAt, wholeAt } from "../read.js";

/** A map of square cells, row by row: what is covered today. */
export interface PatchMap {
  /** One figure a cell, row by row from one corner: 1 for covered, 0 for bare. */
  readonly covered: ArrayLike<number>;
  /** Cells in a row. */
  readonly columns: number;
  /** Side of a cell. */
  readonly cell: Length;
}

/** The most cells of a map. */
export const mostCells = 4_000_000;

/**
 * Squared distance of each place of a row to the nearest source, where source `i` starts with `f[i]`
 * (infinite where there is none): the lower envelope of parabolas, in one pass forth and one back.
 */
const envelope = (
  f: Float64Array,
  n: number,
  out: Float64Array,
  at: Int32Array,
  from: Float64Array,
): void => {
  let last = -1;
  for (let q = 0; q < n; q++) {
    const fq = f[q] as number;
    if (fq === Infinity) continue;
    let start = -Infinity;
    while (last >= 0) {
      const p = at[last] as number;
      start = (fq + q * q - ((f[p] as number) + p * p)) / (2 * (q - p));
      if (start > (from[last] as number)) break;
      last--;
      start = -Infinity;
    }
    last++;
    at[last] = q;
    from[last] = start;
  }
  if (last < 0) {
    out.fill(Infinity, 0, n);
    return;
  }
  for (let q = 0, k = 0; q < n; q++) {
    while (k < last && (from[k + 1] as number) <= q) k++;
    const p = at[k] as number;
    out[q] = (q - p) * (q - p) + (f[p] as number);
  }
};

/**
 * How far each cell of a map is from the nearest covered cell, from center to center, counted in cells:
 * 0 for a covered cell. Exact, and linear in the number of cells.
 *
 * @param covered - 1 or 0 a cell, row by row
 * @param columns - cells in a row; divides the number of cells
 * @throws RatewrightError `missing`, `type`, `range`; `range` with the index of a cell that is neither 0 nor 1, and
 *   where no cell is covered: from there is no distance
 * Source: distance transform by lower envelopes of parabolas (P. Felzenszwalb and D. Huttenlocher 2012, from
 * memory); the tests compare it with every pair of cells.
 *
 * @example
 * ```ts
 * import { cellsToCover } from "ratewright";
 * [...cellsToCover([1, 0, 0, 0, 0, 0], 3)].map((d) => Number(d.toFixed(3)));
 * // => [0, 1, 2, 1, 1.414, 2.236]
 * ```
 */
export const cellsToCover = (covered: ArrayLike<number>, columns: number): Float64Array => {
  const cells = someCovered(cellsOf(covered, "covered"), "covered");
  const wide = wholeAt(columns, "columns");
  if (cells.length % wide !== 0) {
    fail("range", "columns", columns, `a number of columns that divides ${cells.length} cells`);
  }
  const high = cells.length / wide;
  const longest = Math.max(wide, high);
  const [line, out, from] = [0, 0, 0].map(() => new Float64Array(longest)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const at = new Int32Array(longest);
  const square = new Float64Array(cells.length);
  for (let x = 0; x < wide; x++) {
    for (let y = 0; y < high; y++) line[y] = cells[y * wide + x] === 1 ? 0 : Infinity;
    envelope(line, high, out, at, from);
    for (let y = 0; y < high; y++) square[y * wide + x] = out[y] as number;
  }
  for (let y = 0; y < high; y++) {
    line.set(square.subarray(y * wide, (y + 1) * wide));
    envelope(line, wide, out, at, from);
    for (let x = 0; x < wide; x++) square[y * wide + x] = Math.sqrt(out[x] as number);
  }
  return square;
};

/** Takes a map in which something is covered, or throws: nothing has a distance to what is not there. */
const someCovered = (cells: ArrayLike<number>, path: string): ArrayLike<number> =>
  Array.prototype.includes.call(cells, 1)
    ? cells
    : outOfRange(path, described("no cell that is covered"), { min: 1 }, "cells that are covered, {}");

const cellsOf = (input: unknown, path: string): ArrayLike<number> => {
  if (input === undefined) return fail("missing", path, input, "one figure a cell, 1 or 0");
  if (!Array.isArray(input) && !ArrayBuffer.isView(input)) {
    return fail("type", path, input, "a list of figures, 1 for covered, 0 for bare");
  }
  const cells = input as ArrayLike<unknown>;
  if (!(cells.length > 0 && cells.length <= mostCells)) {
    return outOfRange(path, described(`${shown(cells.length)} cells`), {
      min: 1,
      max: mostCells,
      count: "cells",
    });
  }
  for (let i = 0; i < cells.length; i++) {
    if (cells[i] !== 0 && cells[i] !== 1)
      outOfRange(`${path}[${i}]`, cells[i], { step: 1, min: 0, max: 1 }, "{}: 1 for covered, 0 for bare");
  }
  return cells as ArrayLike<number>;
};

/** Distances of the cells of a map to what is covered, in mm, from near to far. */
export const patchDistances = (input: unknown, path: string): Float64Array => {
  const record = expectFields(input, ["covered", "columns", "cell"], path);
  const { cells, columns, cell } = allOf({
    cells: () => cellsOf(record.covered, `${path}.covered`),
    columns: () => wholeAt(record.columns, `${path}.columns`),
    cell: () => lengthAt(record.cell, `${path}.cell`),
  });
  if (cells.length % columns !== 0) {
    fail("range", `${path}.columns`, columns, `a number of columns that divides ${cells.length} cells`);
  }
  const distances = cellsToCover(someCovered(cells, `${path}.covered`), columns);
  const side = cell.in("mm");
  for (let i = 0; i < distances.length; i++) distances[i] = (distances[i] as number) * side;
  distances.sort();
  return distances;
};
