// The swath search (pans times swaths) beside a loop written by hand that does the same checks.
import { type Driving, swathCvPercent } from "../../src/spread/index.js";

const pans = 1000;
const swaths = 1000;
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

/** The best of several rounds of both in turn, in milliseconds. */
const race = (one: () => void, other: () => void): readonly [number, number] => {
  let [first, second] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const timed = (run: () => void): number => {
    const start = performance.now();
    run();
    return performance.now() - start;
  };
  for (let round = 0; round < 60; round++) {
    first = Math.min(first, timed(one));
    second = Math.min(second, timed(other));
  }
  return [first, second];
};

for (const [driving, hand] of [
  ["one direction", oneDirection],
  ["back and forth", backAndForth],
] as const) {
  const [mine, theirs] = race(kernel(driving), hand);
  const apart = byKernel.reduce((most, cv, i) => Math.max(most, Math.abs(cv - (byHand[i] as number))), 0);
  console.log(`${driving}: ${pans} pans x ${swaths} swaths, CVs at most ${apart.toExponential(1)} % apart`);
  console.log(`  by hand         ${theirs.toFixed(2)} ms`);
  console.log(`  swathCvPercent  ${mine.toFixed(2)} ms, ${(mine / theirs).toFixed(2)} times`);
}
