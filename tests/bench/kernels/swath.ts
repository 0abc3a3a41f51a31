// The swath search (pans times swaths) beside a loop written by hand that does the same checks.
import { type Driving, swathCvPercent } from "ratewright";
import type { KernelRow } from "../compare/rows.js";

const pans = 1000;
const swaths = 200;
const middle = (pans - 1) / 2;
const depositsKgPerM2 = Float64Array.from({ length: pans }, (_, i) =>
  Math.exp(-(((i - middle - 20) / 180) ** 2)),
);
const spacingM = 0.1;
const firstPanM = -middle * spacingM;
const swathsM = Float64Array.from({ length: swaths }, (_, i) => (i + 2) * spacingM);
const byKernel = new Float64Array(swaths);
const byHand = new Float64Array(swaths);

/** What a careful programmer writes who knows the driving beforehand: one sum per position, then two passes. */
const oneDirection = (): void => {
  let total = 0;
  for (let i = 0; i < pans; i++) {
    const p = depositsKgPerM2[i] as number;
    if (!Number.isFinite(p) || p < 0) throw new Error(`pan ${i}`);
    total += p;
  }
  if (!(total > 0) || !Number.isFinite(total)) throw new Error("no deposit");
  const sums = new Float64Array(swaths + 2);
  for (let s = 0; s < swaths; s++) {
    const w = swathsM[s] as number;
    const k = Math.round(w / spacingM);
    if (!(k >= 1) || Math.abs(w - k * spacingM) > 1e-9 * w) throw new Error(`swath ${s}`);
    for (let j = 0; j < k; j++) {
      let sum = 0;
      for (let i = j; i < pans; i += k) sum += depositsKgPerM2[i] as number;
      sums[j] = sum;
    }
    const mean = total / k;
    let squares = 0;
    for (let j = 0; j < k; j++) {
      const off = (sums[j] as number) - mean;
      squares += off * off;
    }
    byHand[s] = (100 * Math.sqrt(squares / k)) / mean;
  }
};

const backAndForth = (): void => {
  let total = 0;
  for (let i = 0; i < pans; i++) {
    const p = depositsKgPerM2[i] as number;
    if (!Number.isFinite(p) || p < 0) throw new Error(`pan ${i}`);
    total += p;
  }
  if (!(total > 0) || !Number.isFinite(total)) throw new Error("no deposit");
  const sums = new Float64Array(2 * (swaths + 2));
  for (let s = 0; s < swaths; s++) {
    const w = swathsM[s] as number;
    const k = Math.round(w / spacingM);
    if (!(k >= 1) || Math.abs(w - k * spacingM) > 1e-9 * w) throw new Error(`swath ${s}`);
    const period = 2 * k;
    sums.fill(0, 0, period);
    // The mirrored pass stands k pans on: pan i falls where pan (pans - 1 - i) + k would.
    for (let i = 0, j = 0, m = (k + pans - 1) % period; i < pans; i++) {
      const p = depositsKgPerM2[i] as number;
      sums[j] = (sums[j] as number) + p;
      sums[m] = (sums[m] as number) + p;
      j = j + 1 === period ? 0 : j + 1;
      m = m === 0 ? period - 1 : m - 1;
    }
    const mean = total / k;
    let squares = 0;
    for (let j = 0; j < period; j++) {
      const off = (sums[j] as number) - mean;
      squares += off * off;
    }
    byHand[s] = (100 * Math.sqrt(squares / period)) / mean;
  }
};

const kernel = (driving: Driving) => (): void => {
  swathCvPercent({
    depositsKgPerM2,
    spacingM,
    firstPanM,
    swathsM,
    driving,
    divisor: "n",
    outPercent: byKernel,
  });
};

/** The swath search, driven either way. */
export const swathRows: readonly KernelRow[] = (
  [
    ["one direction", oneDirection],
    ["back and forth", backAndForth],
  ] as const
).map(([driving, hand]) => ({
  name: `swathCvPercent, ${driving}`,
  of: "swath of 1,000 pans",
  items: swaths,
  hand,
  own: kernel(driving),
  results: [
    () => {
      hand();
      return byHand[99] as number;
    },
    () => {
      kernel(driving)();
      return byKernel[99] as number;
    },
  ],
}));
