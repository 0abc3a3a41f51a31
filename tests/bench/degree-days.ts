// The degree-day kernel beside a loop written by hand that does the same checks.
import { accumulateDegreeDaysC } from "../../src/interval/index.js";

const days = 365_000;
const minC = Float64Array.from({ length: days }, (_, i) => 10 * Math.sin(i / 58) + 5);
const maxC = minC.map((t) => t + 10);
const out = new Float64Array(days);

const byHand = (): void => {
  let total = 0;
  for (let i = 0; i < days; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    if (!Number.isFinite(high) || !Number.isFinite(low) || low > high) throw new Error(`day ${i}`);
    const heat = (high + low) / 2 - 10;
    if (heat > 0) total += heat;
    out[i] = total;
  }
};

/** The best of several runs, in nanoseconds per day. */
const measured = (run: () => void): string => {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 40; round++) {
    const start = performance.now();
    run();
    best = Math.min(best, performance.now() - start);
  }
  return ((best * 1e6) / days).toFixed(1);
};

console.log(`by hand                ${measured(byHand)} ns/day`);
console.log(`accumulateDegreeDaysC  ${measured(() => accumulateDegreeDaysC(maxC, minC, 10, out))} ns/day`);
