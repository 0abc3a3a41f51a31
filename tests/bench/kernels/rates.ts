// The rate kernels beside loops written by hand that do the same checks.
import { highestProductRatesKgPerHa, nutrientsSuppliedKg, productRatesKgPerHa } from "ratewright";
import type { KernelRow } from "../compare/rows.js";

const areas = 100_000;
const target = Float64Array.from({ length: areas }, (_, i) => 20 + 10 * Math.sin(i / 50));
const soluble = target.map((rate) => rate * 0.7);
const areaM2 = target.map((_, i) => 1000 + (i % 5000));
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

const suppliedByHand = (
  rates: Float64Array,
  sizes: Float64Array,
  percent: number,
  kg: Float64Array,
): void => {
  for (let i = 0; i < rates.length; i++) {
    const [rate, size] = [rates[i] as number, sizes[i] as number];
    if (!Number.isFinite(rate) || rate < 0 || !Number.isFinite(size) || size < 0)
      throw new Error(`area ${i}`);
    kg[i] = (rate * size * percent) / 1e6;
  }
};

const caps = [
  { limitKgPerHa: target, percent: 24 },
  { limitKgPerHa: soluble, percent: 19 },
];
const row = (name: string, hand: () => void, own: () => void): KernelRow => ({
  name,
  of: "area",
  items: areas,
  hand,
  own,
  results: [hand, own].map((run) => () => {
    run();
    return out[777] as number;
  }),
});

/** The rate kernels. */
export const rateRows: readonly KernelRow[] = [
  row(
    "productRatesKgPerHa",
    () => ratesByHand(target, 24, out),
    () => productRatesKgPerHa(target, 24, out),
  ),
  row(
    "nutrientsSuppliedKg",
    () => suppliedByHand(target, areaM2, 24, out),
    () => nutrientsSuppliedKg({ rateKgPerHa: target, areaM2, percent: 24, out }),
  ),
  row("highestProductRatesKgPerHa, two caps", capsByHand, () => highestProductRatesKgPerHa(caps, out)),
];
