// The release kernels beside loops written by hand that do the same checks.
import {
  accumulateEquivalentDaysC,
  type ReleaseCurve,
  releasedShares,
  type TemperatureResponse,
} from "../../src/nutrient/index.js";

const days = 36_500;
const minC = Float64Array.from({ length: days }, (_, i) => 10 * Math.sin(i / 58) + 5);
const maxC = minC.map((t) => t + 10);
const out = new Float64Array(days);
const shares = new Float64Array(days);
const one = (x: number) => ({ low: x, high: x });
const response: TemperatureResponse = { kind: "Arrhenius", activationEnergy: one(80), referenceC: 25 };
const curve: ReleaseCurve = { kind: "first order", ratePerDay: one(0.02) };
const cosines = [1, 3, 5, 7].map((odd) => Math.cos((odd * Math.PI) / 8));

const daysByHand = (): void => {
  const c = 80_000 / 8.314462618;
  let total = 0;
  for (let i = 0; i < days; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    if (!(low >= -60 && high <= 100 && low <= high)) throw new Error(`day ${i}`);
    let sum = 0;
    for (const point of cosines) {
      const t = (high + low) / 2 + ((high - low) / 2) * point;
      sum += Math.exp(c * (1 / 298.15 - 1 / (t + 273.15)));
    }
    total += sum / 4;
    out[i] = total;
  }
};
const sharesByHand = (): void => {
  for (let i = 0; i < days; i++) {
    const t = out[i] as number;
    if (!(t >= 0 && t < Number.POSITIVE_INFINITY)) throw new Error(`day ${i}`);
    shares[i] = -Math.expm1(-0.02 * t);
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

console.log(`equivalent days by hand     ${measured(daysByHand)} ns/day`);
console.log(
  `accumulateEquivalentDaysC   ${measured(() => accumulateEquivalentDaysC(maxC, minC, response, "mid", out))} ns/day`,
);
console.log(`shares by hand              ${measured(sharesByHand)} ns/day`);
console.log(
  `releasedShares              ${measured(() => releasedShares(out, curve, "mid", shares))} ns/day`,
);
