import { expectFloat64Array } from "../../numeric/house.js";
import type { Divisor } from "../../numeric/index.js";
import { counted, described } from "../../quantity/house.js";
import { expectFields, expectNumber, fail, outOfRange } from "../../quantity/index.js";

/**
 * How the ground is driven: all passes in one direction (round and round, the right side falls on the left
 * side of the pass before), or back and forth (each side falls on itself).
 */
export type Driving = "one direction" | "back and forth";

export const expectDriving = (input: unknown): Driving =>
  input === "one direction" || input === "back and forth"
    ? input
    : fail("type", "driving", input, "the choice one direction or back and forth");

export const expectDivisor = (input: unknown): Divisor =>
  input === "n" || input === "n-1" ? input : fail("type", "divisor", input, "the choice n or n-1");

/** A remainder that is never negative. */
const mod = (a: number, n: number): number => ((a % n) + n) % n;

/**
 * Adds what all passes put down, `k` pans apart, into `bins`: position 0 is that of the first pan.
 * `mirror` is twice the place of the first pan in pans from the line of travel, for driving back and forth,
 * in which every other pass lies mirrored; `undefined` for one direction. Gives the number of positions.
 */
export const overlapInto = (
  bins: Float64Array,
  catches: Float64Array,
  k: number,
  mirror: number | undefined,
): number => {
  const period = mirror === undefined ? k : 2 * k;
  const n = catches.length;
  const first = Math.min(n, period);
  for (let j = 0; j < first; j++) {
    let sum = catches[j] as number;
    for (let i = j + period; i < n; i += period) sum += catches[i] as number;
    bins[j] = sum;
  }
  bins.fill(0, first, period);
  if (mirror === undefined) return period;
  // The mirrored passes put down at j what the others put down at its mirror image: both get the sum.
  const image = mod(k - mirror, period);
  fold(bins, 0, image);
  fold(bins, image + 1, period - 1);
  return period;
};

/** Gives each two places that lie mirrored in a stretch the sum of both. */
const fold = (bins: Float64Array, first: number, last: number): void => {
  for (let i = first, j = last; i <= j; i++, j--) {
    const sum = (bins[i] as number) + (bins[j] as number);
    bins[i] = sum;
    bins[j] = sum;
  }
};

/** The CV of `count` positions in percent, about a mean that is known from the mass balance. */
export const cvPercentOf = (bins: Float64Array, count: number, mean: number, divisor: Divisor): number => {
  const share = 1 / mean;
  let squares = 0;
  for (let i = 0; i < count; i++) {
    const off = (bins[i] as number) * share - 1;
    squares += off * off;
  }
  return 100 * Math.sqrt(squares / (divisor === "n" ? count : count - 1));
};

/** The sum of the catches, with every one checked. */
const checkedTotal = (catches: Float64Array, name: string): number => {
  let total = 0;
  for (let i = 0; i < catches.length; i++) {
    const one = catches[i] as number;
    // One comparison finds NaN and anything below zero.
    if (!(one >= 0)) {
      if (Number.isNaN(one)) fail("not-finite", `${name}[${i}]`, one, "a finite number");
      outOfRange(`${name}[${i}]`, one, { min: 0 });
    }
    total += one;
  }
  if (total === Number.POSITIVE_INFINITY) {
    const i = catches.indexOf(Number.POSITIVE_INFINITY);
    if (i >= 0) fail("not-finite", `${name}[${i}]`, catches[i], "a finite number");
    fail("range", name, total, "catches with a finite sum");
  }
  // Below this the reciprocal of a mean is no number any more.
  if (!(total > 1e-300)) outOfRange(name, total, { above: 1e-300 }, "catches of {} in all");
  return total;
};

/** Refuses a swath of a single position, of which the divisor n-1 makes nothing: two pans and more are wanted. */
export const refuseOnePosition = (path: string, swath: number, spacing: number, unit?: "m"): never => {
  const two = 2 * spacing;
  return outOfRange(
    path,
    swath,
    { min: two, ...(unit && { unit }) },
    "{}, two positions, for the divisor n-1",
  );
};

/**
 * The CV after overlap for many swaths at once, for the pans of one row.
 *
 * `CV = 100 sqrt(sum((D_j / m - 1)^2) / d)`, with `D_j` the sum of what all passes put down at position `j`,
 * `m = sum(p) dx / w` the mean by mass balance, and `d` the number of positions or one less. The positions
 * are those of the pans: `w / dx` of them for one direction, `2 w / dx` for back and forth.
 *
 * @param input.depositsKgPerM2 - deposit at each pan from left to right, `p`, kg/m2, zero or more; any other
 * unit gives the same CV
 * @param input.spacingM - distance from pan to pan, `dx`, m
 * @param input.firstPanM - place of the first pan from the line of travel, m; needed for back and forth, for
 * which the line runs through a pan or half-way between two
 * @param input.swathsM - the swaths, `w`, m: each a whole multiple of `spacingM`
 * @param input.outPercent - where the CVs go, one for each swath; made where it is left out
 * @param input.driving - `"one direction"` or `"back and forth"`
 * @returns `outPercent`
 * @throws RatewrightError `not-finite` and `range` with the index, such as `depositsKgPerM2[41]`; `conflict`
 * for a swath that is no multiple of the spacing, at `swathsM[3]`; `missing`, `type`; `range` where divisor
 * `n-1` meets one position
 *
 * Source: as {@link swathUniformity}.
 *
 * @example
 * ```ts
 * import { swathCvPercent } from "ratewright";
 * const cv = swathCvPercent({
 *   depositsKgPerM2: Float64Array.of(0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1, 0), spacingM: 1,
 *   swathsM: Float64Array.of(6, 8, 9), driving: "one direction", divisor: "n",
 * });
 * Array.from(cv, (one) => Number(one.toFixed(3))); // => [0, 15.713, 26.352]
 * ```
 */
export const swathCvPercent = (input: {
  readonly depositsKgPerM2: Float64Array;
  readonly spacingM: number;
  readonly firstPanM?: number;
  readonly swathsM: Float64Array;
  readonly driving: Driving;
  readonly divisor: Divisor;
  readonly outPercent?: Float64Array;
}): Float64Array => {
  expectFields(input, [
    "depositsKgPerM2",
    "spacingM",
    "firstPanM",
    "swathsM",
    "driving",
    "divisor",
    "outPercent",
  ]);
  const { depositsKgPerM2: catches, swathsM, driving, divisor } = input;
  for (const name of ["depositsKgPerM2", "swathsM", "outPercent"] as const) {
    const array = input[name];
    if (name === "outPercent" && array === undefined) continue;
    expectFloat64Array(array, name);
  }
  const spacing = expectNumber(input.spacingM, "spacingM", { above: 0 });
  const backAndForth = expectDriving(driving) === "back and forth";
  expectDivisor(divisor);
  const out = input.outPercent ?? new Float64Array(swathsM.length);
  if (out.length !== swathsM.length) {
    fail(
      "conflict",
      "outPercent",
      described(counted(out.length, "place")),
      `as many as swathsM has, which is ${swathsM.length}`,
    );
  }
  if (out === catches || out === swathsM) {
    fail("conflict", "outPercent", described("an input"), "a separate list: no memory shared with inputs");
  }
  const mirror = backAndForth ? mirrorOf(input.firstPanM, spacing) : undefined;
  const total = checkedTotal(catches, "depositsKgPerM2");
  let widest = 0;
  for (let s = 0; s < swathsM.length; s++) {
    const k = pansPer(swathsM[s] as number, spacing, `swathsM[${s}]`);
    if (k > widest) widest = k;
  }
  const bins = new Float64Array(backAndForth ? 2 * widest : widest);
  for (let s = 0; s < swathsM.length; s++) {
    const k = Math.round((swathsM[s] as number) / spacing);
    const count = overlapInto(bins, catches, k, mirror);
    if (count < 2 && divisor === "n-1") {
      refuseOnePosition(`swathsM[${s}]`, swathsM[s] as number, spacing, "m");
    }
    out[s] = cvPercentOf(bins, count, total / k, divisor);
  }
  return out;
};

/** More pans to a swath than this are taken for a slip of units. */
export const mostPans: number = 1e6;

/** How many pans make a swath, or throws. */
export const pansPer = (swath: number, spacing: number, path: string): number => {
  const w = expectNumber(swath, path, { above: 0 });
  const k = Math.round(w / spacing);
  if (k > mostPans)
    outOfRange(path, w, { max: mostPans * spacing }, `{}, ${mostPans} times the distance of the pans`);
  return Math.abs(w - k * spacing) <= 1e-9 * w
    ? k
    : fail("conflict", path, w, `a whole multiple of the distance of the pans, which is ${spacing}`);
};

/** Twice the place of the first pan in pans, a whole number, or throws. */
const mirrorOf = (first: number | undefined, spacing: number): number => {
  if (first === undefined)
    fail("missing", "firstPanM", first, "the place of the first pan, for back and forth");
  const twice = (2 * expectNumber(first, "firstPanM")) / spacing;
  const whole = Math.round(twice);
  return Math.abs(twice - whole) <= 1e-6
    ? whole
    : fail("conflict", "firstPanM", first, "a line of travel through a pan or half-way between two");
};
