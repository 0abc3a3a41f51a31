// The rate kernels beside loops written by hand that do the same checks.
import { highestProductRatesKgPerHa, productRatesKgPerHa } from "../../src/nutrient/index.js";

const areas = 200_000;
const target = Float64Array.from({ length: areas }, (_, i) => 20 + 10 * Math.sin(i / 50));
const soluble = target.map((rate) => rate * 0.7);
const out = new Float64Array(areas);

// By parameters, as the kernel gets them: constants of the module would be folded in.
const ratesByHand = (wanted: Float64Array, percent: number, rates: Float64Array): void => {
  for (let i = 0; i < wanted.length; i++) {
    const rate = wanted[i] as number;
    if (!Number.isFinite(rate) || rate < 0) throw new Error(`area ${i}`);
    rates[i] = (rate * 100) / percent;
  }
};

const capsByHand = (): void => {
  for (let i = 0; i < areas; i++) {
    const [total, quick] = [target[i] as number, soluble[i] as number];
    if (!Number.isFinite(total) || total < 0 || !Number.isFinite(quick) || quick < 0)
      throw new Error(`area ${i}`);
    out[i] = Math.min((total * 100) / 24, (quick * 100) / 19);
  }
};

/** The best of several runs, in nanoseconds per area. */
const measured = (run: () => void): string => {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 40; round++) {
    const start = performance.now();
    run();
    best = Math.min(best, performance.now() - start);
  }
  return ((best * 1e6) / areas).toFixed(2);
};

const caps = [
  { limitKgPerHa: target, percent: 24 },
  { limitKgPerHa: soluble, percent: 19 },
];
console.log(`rates by hand               ${measured(() => ratesByHand(target, 24, out))} ns/area`);
console.log(`productRatesKgPerHa         ${measured(() => productRatesKgPerHa(target, 24, out))} ns/area`);
console.log(`two caps by hand            ${measured(capsByHand)} ns/area`);
console.log(`highestProductRatesKgPerHa  ${measured(() => highestProductRatesKgPerHa(caps, out))} ns/area`);
