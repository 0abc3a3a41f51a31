// The degree-day kernels beside loops written by hand that do the same checks: 40 years of days at ten stations.
import { accumulateDegreeDaysC, runningDegreeDaysC } from "ratewright";
import type { KernelRow } from "../compare/rows.js";

const days = 14_610;
const stations = 10;
const baseC = 10;
const upperC = 30;

const min = Array.from({ length: stations }, (_, s) =>
  Float64Array.from({ length: days }, (_, i) => 12 * Math.sin(i / 58 + s) + 4 * Math.sin(i * 1.7 + s) + 5),
);
const max = min.map((list, s) => list.map((t, i) => t + 8 + 5 * Math.sin(i * 0.9 + s)));
const outCDays = new Float64Array(days);

/** What the kernels ask of a day: numbers, in order, that air or soil can have. */
const check = (high: number, low: number, i: number): void => {
  if (!(low >= -273.15 && high >= low && high <= 100)) throw new Error(`day ${i}`);
};

const averageByHand = (
  maxC: Float64Array,
  minC: Float64Array,
  base: number,
  _upper: number,
  out: Float64Array,
): void => {
  let total = 0;
  for (let i = 0; i < maxC.length; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    if (!(low >= -273.15 && high >= low && high <= 100)) throw new Error(`day ${i}`);
    const heat = (high + low) / 2 - base;
    if (heat > 0) total += heat;
    out[i] = total;
  }
};

const clampedByHand = (
  maxC: Float64Array,
  minC: Float64Array,
  base: number,
  upper: number,
  out: Float64Array,
): void => {
  let total = 0;
  for (let i = 0; i < maxC.length; i++) {
    let high = maxC[i] as number;
    let low = minC[i] as number;
    if (!(low >= -273.15 && high >= low && high <= 100)) throw new Error(`day ${i}`);
    if (high > upper) high = upper;
    if (high < base) high = base;
    if (low > upper) low = upper;
    if (low < base) low = base;
    total += (high + low) / 2 - base;
    out[i] = total;
  }
};

const sineByHand = (
  maxC: Float64Array,
  minC: Float64Array,
  base: number,
  _upper: number,
  out: Float64Array,
): void => {
  let total = 0;
  for (let i = 0; i < maxC.length; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    check(high, low, i);
    const mean = (high + low) / 2;
    if (low >= base) total += mean - base;
    else if (high > base) {
      const a = (high - low) / 2;
      const t = Math.asin((base - mean) / a);
      total += ((mean - base) * (Math.PI / 2 - t) + a * Math.cos(t)) / Math.PI;
    }
    out[i] = total;
  }
};

const triangleByHand = (
  maxC: Float64Array,
  minC: Float64Array,
  base: number,
  _upper: number,
  out: Float64Array,
): void => {
  let total = 0;
  for (let i = 0; i < maxC.length; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    check(high, low, i);
    if (low >= base) total += (high + low) / 2 - base;
    else if (high > base) total += (high - base) ** 2 / (2 * (high - low));
    out[i] = total;
  }
};

const metOfficeByHand = (
  maxC: Float64Array,
  minC: Float64Array,
  base: number,
  _upper: number,
  out: Float64Array,
): void => {
  let total = 0;
  for (let i = 0; i < maxC.length; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    check(high, low, i);
    const mean = (high + low) / 2;
    if (low >= base) total += mean - base;
    else if (high > base) {
      total += mean >= base ? (high - base) / 2 - (base - low) / 4 : (high - base) / 4;
    }
    out[i] = total;
  }
};

const underSine = (high: number, low: number, base: number): number => {
  const mean = (high + low) / 2;
  if (low >= base) return mean - base;
  if (high <= base) return 0;
  const a = (high - low) / 2;
  const t = Math.asin((base - mean) / a);
  return ((mean - base) * (Math.PI / 2 - t) + a * Math.cos(t)) / Math.PI;
};

const underTriangle = (high: number, low: number, base: number): number => {
  if (low >= base) return (high + low) / 2 - base;
  return high > base ? (high - base) ** 2 / (2 * (high - low)) : 0;
};

const nextMinC = 8;

// Written once for each shape, as one would by hand: a shape that is handed over is not inlined.
const doubleSineByHand = (
  maxC: Float64Array,
  minC: Float64Array,
  base: number,
  _upper: number,
  out: Float64Array,
): void => {
  let total = 0;
  for (let i = 0; i < maxC.length; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    check(high, low, i);
    const next = i + 1 < minC.length ? (minC[i + 1] as number) : nextMinC;
    const second = next > high ? underSine(next, high, base) : underSine(high, next, base);
    total += (underSine(high, low, base) + second) / 2;
    out[i] = total;
  }
};

const doubleTriangleByHand = (
  maxC: Float64Array,
  minC: Float64Array,
  base: number,
  _upper: number,
  out: Float64Array,
): void => {
  let total = 0;
  for (let i = 0; i < maxC.length; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    check(high, low, i);
    const next = i + 1 < minC.length ? (minC[i + 1] as number) : nextMinC;
    const second = next > high ? underTriangle(next, high, base) : underTriangle(high, next, base);
    total += (underTriangle(high, low, base) + second) / 2;
    out[i] = total;
  }
};

type Run = typeof averageByHand;
type Input = Parameters<typeof runningDegreeDaysC>[0];
const kernel =
  (more: Pick<Input, "method"> & Partial<Input>): Run =>
  (maxC, minC) => {
    runningDegreeDaysC({ maxC, minC, baseC, outCDays, ...more });
  };

const pairs: readonly (readonly [string, Run, Run])[] = [
  ["simple average", averageByHand, kernel({ method: "simple average" })],
  ["clamped average", clampedByHand, kernel({ method: "clamped average", upperC })],
  ["single triangle", triangleByHand, kernel({ method: "single triangle" })],
  ["single sine", sineByHand, kernel({ method: "single sine" })],
  ["met office cases", metOfficeByHand, kernel({ method: "met office cases" })],
  ["double triangle", doubleTriangleByHand, kernel({ method: "double triangle", nextMinC })],
  ["double sine", doubleSineByHand, kernel({ method: "double sine", nextMinC })],
];

const overStations = (run: Run): void => {
  for (let s = 0; s < stations; s++)
    run(max[s] as Float64Array, min[s] as Float64Array, baseC, upperC, outCDays);
};
const total = (run: Run) => (): number => {
  run(max[0] as Float64Array, min[0] as Float64Array, baseC, upperC, outCDays);
  return outCDays[days - 1] as number;
};

/** One row a method. */
export const degreeDayRows: readonly KernelRow[] = [
  ...pairs.map(([name, hand, own]) => ({ name: `runningDegreeDaysC, ${name}`, hand, own })),
  {
    name: "accumulateDegreeDaysC",
    hand: averageByHand,
    own: ((maxC, minC) => {
      accumulateDegreeDaysC(maxC, minC, baseC, outCDays);
    }) satisfies Run as Run,
  },
].map(({ name, hand, own }) => ({
  name,
  of: "day",
  items: stations * days,
  hand: () => overStations(hand),
  own: () => overStations(own),
  results: [total(hand), total(own)],
}));
