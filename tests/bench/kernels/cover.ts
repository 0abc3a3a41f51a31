// The distance of every cell of a map to what is covered, beside a loop written by hand that does the same checks.
import { cellsToCover } from "ratewright";
import type { KernelRow } from "../compare/rows.js";

const columns = 400;
const rows = 300;
const covered = Uint8Array.from({ length: columns * rows }, (_, i) => ((i * 7919) % 97 === 0 ? 1 : 0));
let byHand: Float64Array = new Float64Array();
let byKernel: Float64Array = new Float64Array();

/** The lower envelope of the parabolas over one line, as a careful programmer has it from the paper (Felzenszwalb and Huttenlocher). */
const line = (f: Float64Array, n: number, v: Int32Array, z: Float64Array, d: Float64Array): void => {
  let k = -1;
  for (let q = 0; q < n; q++) {
    if (f[q] === Number.POSITIVE_INFINITY) continue;
    let s = Number.NEGATIVE_INFINITY;
    while (k >= 0) {
      const p = v[k] as number;
      s = ((f[q] as number) + q * q - (f[p] as number) - p * p) / (2 * q - 2 * p);
      if (s > (z[k] as number)) break;
      k--;
      s = Number.NEGATIVE_INFINITY;
    }
    k++;
    v[k] = q;
    z[k] = s;
  }
  if (k < 0) {
    for (let q = 0; q < n; q++) d[q] = Number.POSITIVE_INFINITY;
    return;
  }
  for (let q = 0, j = 0; q < n; q++) {
    while (j < k && (z[j + 1] as number) <= q) j++;
    const p = v[j] as number;
    d[q] = (q - p) * (q - p) + (f[p] as number);
  }
};

const distancesByHand = (cells: Uint8Array, wide: number): Float64Array => {
  const high = cells.length / wide;
  let some = false;
  for (let i = 0; i < cells.length; i++) {
    if (cells[i] !== 0 && cells[i] !== 1) throw new Error(`cell ${i}`);
    if (cells[i] === 1) some = true;
  }
  if (!some || !Number.isInteger(high)) throw new Error("no cell is covered");
  const n = Math.max(wide, high);
  const [f, d, z] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)];
  const v = new Int32Array(n);
  const out = new Float64Array(cells.length);
  for (let x = 0; x < wide; x++) {
    for (let y = 0; y < high; y++) f[y] = cells[y * wide + x] === 1 ? 0 : Number.POSITIVE_INFINITY;
    line(f, high, v, z, d);
    for (let y = 0; y < high; y++) out[y * wide + x] = d[y] as number;
  }
  for (let y = 0; y < high; y++) {
    for (let x = 0; x < wide; x++) f[x] = out[y * wide + x] as number;
    line(f, wide, v, z, d);
    for (let x = 0; x < wide; x++) out[y * wide + x] = Math.sqrt(d[x] as number);
  }
  return out;
};

const hand = (): void => {
  byHand = distancesByHand(covered, columns);
};
const own = (): void => {
  byKernel = cellsToCover(covered, columns);
};
const somewhere = 211 * columns + 133;

/** The map of cover. */
export const coverRows: readonly KernelRow[] = [
  {
    name: "cellsToCover, 400 by 300",
    of: "cell",
    items: columns * rows,
    hand,
    own,
    results: [
      () => {
        hand();
        return byHand[somewhere] as number;
      },
      () => {
        own();
        return byKernel[somewhere] as number;
      },
    ],
  },
];
