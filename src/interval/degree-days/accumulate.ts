import { expectFloat64Array } from "../../numeric/house.js";
import { counted, described } from "../../quantity/house.js";
import { expectFields, fail, outOfRange } from "../../quantity/index.js";
import { highestCelsius, lowestCelsius } from "../expect-temperature.js";
import { type DegreeDayMethod, type HeatRule, meanAbove, type UpperCutoff } from "./degree-day-method.js";
import { checkedThresholds } from "./degree-day-model.js";
import {
  cappedAverageHeat,
  clampedHeat,
  doubleHeat,
  metOfficeHeat,
  needsNextDay,
} from "./degree-days-of-day.js";
import { sineAbove, sineHeat } from "./single-sine.js";
import { triangleAbove, triangleHeat, triangleLoss, triangleTip } from "./single-triangle.js";

const ofAirAndSoil = { min: lowestCelsius, max: highestCelsius, unit: "°C" } as const;

const reject = (max: number, min: number, i: number): never => {
  if (!Number.isFinite(max)) fail("not-finite", `maxC[${i}]`, max, "a finite number");
  if (!Number.isFinite(min)) fail("not-finite", `minC[${i}]`, min, "a finite number");
  if (min > max) fail("conflict", `minC[${i}]`, min, `not more than maxC[${i}], which is ${max}`);
  const [path, t] = min < lowestCelsius ? [`minC[${i}]`, min] : [`maxC[${i}]`, max];
  return outOfRange(path, t, ofAirAndSoil, "{}, as air and soil have");
};

/**
 * One chain of comparisons that finds NaN, infinity, a minimum above its maximum and a code for "no figure"
 * such as -9999. The figures stand here once more, for a name of another file costs a third of the loop.
 */
const areExtremes = (high: number, low: number): boolean => low >= -90 && high >= low && high <= 75;

type Days = { readonly max: Float64Array; readonly min: Float64Array; readonly next: number };

// One loop for each method, so that none asks on every day which method it is, and none calls a function
// that it was handed, which costs several times the arithmetic. `return reject` and not `reject` alone: a loop that could
// go on after the call is half as fast again, for the machine must look at the arrays anew on every day.

const average = ({ max, min }: Days, { base }: HeatRule, out: Float64Array): number => {
  let total = 0;
  for (let i = 0; i < max.length; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    if (!areExtremes(high, low)) return reject(high, low, i);
    const heat = meanAbove(high, low, base);
    if (heat > 0) total += heat;
    out[i] = total;
  }
  return total;
};

const cappedAverage = ({ max, min }: Days, { base, upper }: HeatRule, out: Float64Array): number => {
  let total = 0;
  for (let i = 0; i < max.length; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    if (!areExtremes(high, low)) return reject(high, low, i);
    total += cappedAverageHeat(high, low, base, upper);
    out[i] = total;
  }
  return total;
};

const clamped = ({ max, min }: Days, { base, upper }: HeatRule, out: Float64Array): number => {
  let total = 0;
  for (let i = 0; i < max.length; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    if (!areExtremes(high, low)) return reject(high, low, i);
    total += clampedHeat(high, low, base, upper);
    out[i] = total;
  }
  return total;
};

const metOffice = ({ max, min }: Days, { base }: HeatRule, out: Float64Array): number => {
  let total = 0;
  for (let i = 0; i < max.length; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    if (!areExtremes(high, low)) return reject(high, low, i);
    total += metOfficeHeat(high, low, base);
    out[i] = total;
  }
  return total;
};

const sine = ({ max, min }: Days, rule: HeatRule, out: Float64Array): number => {
  let total = 0;
  for (let i = 0; i < max.length; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    if (!areExtremes(high, low)) return reject(high, low, i);
    total += sineHeat(high, low, rule);
    out[i] = total;
  }
  return total;
};

const triangle = ({ max, min }: Days, { base }: HeatRule, out: Float64Array): number => {
  let total = 0;
  for (let i = 0; i < max.length; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    if (!areExtremes(high, low)) return reject(high, low, i);
    if (low >= base) total += meanAbove(high, low, base);
    else if (high > base) total += triangleTip(high, low, base);
    out[i] = total;
  }
  return total;
};

const cutTriangle = ({ max, min }: Days, rule: HeatRule, out: Float64Array): number => {
  const { base, upper } = rule;
  let total = 0;
  for (let i = 0; i < max.length; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    if (!areExtremes(high, low)) return reject(high, low, i);
    if (low >= base) total += meanAbove(high, low, base);
    else if (high > base) total += triangleTip(high, low, base);
    if (high > upper) total -= triangleLoss(high, low, rule);
    out[i] = total;
  }
  return total;
};

// A day after this one is looked at in its own turn, before anything is returned.

const doubleSine = ({ max, min, next }: Days, rule: HeatRule, out: Float64Array): number => {
  const { base, upper } = rule;
  const last = max.length - 1;
  let total = 0;
  for (let i = 0; i <= last; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    if (!areExtremes(high, low)) return reject(high, low, i);
    const after = i < last ? (min[i + 1] as number) : next;
    if (high > upper || after > upper) total += doubleHeat(sineHeat, high, low, after, rule);
    else {
      const second = after > high ? sineAbove(after, high, base) : sineAbove(high, after, base);
      total += (sineAbove(high, low, base) + second) / 2;
    }
    out[i] = total;
  }
  return total;
};

const doubleTriangle = ({ max, min, next }: Days, rule: HeatRule, out: Float64Array): number => {
  const { base, upper } = rule;
  const last = max.length - 1;
  let total = 0;
  for (let i = 0; i <= last; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    if (!areExtremes(high, low)) return reject(high, low, i);
    const after = i < last ? (min[i + 1] as number) : next;
    if (high > upper || after > upper) total += doubleHeat(triangleHeat, high, low, after, rule);
    else {
      const second = after > high ? triangleAbove(after, high, base) : triangleAbove(high, after, base);
      total += (triangleAbove(high, low, base) + second) / 2;
    }
    out[i] = total;
  }
  return total;
};

const loops: Readonly<Record<DegreeDayMethod, (days: Days, rule: HeatRule, out: Float64Array) => number>> = {
  "simple average": (days, rule, out) =>
    (rule.upper === Number.POSITIVE_INFINITY ? average : cappedAverage)(days, rule, out),
  substitution: clamped,
  "clamped average": clamped,
  "met office cases": metOffice,
  "single sine": sine,
  "single triangle": (days, rule, out) =>
    (rule.upper === Number.POSITIVE_INFINITY ? triangle : cutTriangle)(days, rule, out),
  "double sine": doubleSine,
  "double triangle": doubleTriangle,
};

const checkArrays = (arrays: Readonly<Record<string, unknown>>, length: unknown): void => {
  for (const [name, array] of Object.entries(arrays)) {
    const days = expectFloat64Array(array, name).length;
    if (days !== length)
      fail("conflict", name, described(counted(days, "day")), `as many days as maxC has, which is ${length}`);
  }
};

/**
 * Running degree-day totals of many days by the simple average with a floor on the mean,
 * `D_i = D_(i-1) + max(0, (Tx_i + Tn_i) / 2 - b)`: for years of stations, without a quantity per day.
 * {@link runningDegreeDaysC} has the other methods.
 *
 * @param maxC - highest temperature of each day, `Tx`, °C
 * @param minC - lowest temperature of each day, `Tn`, °C, as many as `maxC`
 * @param baseC - base temperature, `b`, °C
 * @param outCDays - where the running totals go, °C d; made where it is left out. It may be one of the
 * inputs, which is then overwritten
 * @returns `outCDays`
 * @throws RatewrightError `not-finite`, `conflict` (minimum above maximum) and `range` (below -90 °C or
 * above 75 °C: a code for "no figure", or °F) with the index, such as `minC[41]`; `conflict` for lists of
 * different length; `type`
 *
 * Source: as for {@link degreeDays}.
 *
 * @example
 * ```ts
 * import { accumulateDegreeDaysC } from "ratewright";
 * const totals = accumulateDegreeDaysC(Float64Array.of(20, 4, 26), Float64Array.of(8, -6, 14), 10);
 * Array.from(totals); // => [4, 4, 14]
 * ```
 */
export const accumulateDegreeDaysC = (
  maxC: Float64Array,
  minC: Float64Array,
  baseC: number,
  outCDays?: Float64Array,
): Float64Array =>
  runningDegreeDaysC({
    method: "simple average",
    maxC,
    minC,
    baseC,
    ...(outCDays === undefined ? {} : { outCDays }),
  });

/**
 * Running degree-day totals of many days by any method, for years of stations: one pass, no memory but
 * the list of totals, which may be given and used again for the next station.
 *
 * @param input.maxC - highest temperature of each day, °C
 * @param input.minC - lowest temperature of each day, °C, as many as `maxC`
 * @param input.nextMinC - lowest temperature of the day after the last, °C: needed by the double methods
 * @param input.baseC - base temperature, °C
 * @param input.upperC - upper threshold, °C, with `cutoff` as in {@link degreeDayModel}
 * @param input.outCDays - where the running totals go, °C d; made where it is left out. It may be one of
 * the inputs, which is then overwritten
 * @returns `outCDays`
 * @throws RatewrightError `not-finite`, `conflict` and `range` (below -90 or above 75 °C) with the
 * index, such as `minC[41]`; `conflict` for lists of different length; `missing`, `range`, `type`; what
 * {@link degreeDayModel} throws for thresholds
 *
 * Source: as for {@link degreeDays}.
 *
 * @example
 * ```ts
 * import { runningDegreeDaysC } from "ratewright";
 * const totals = runningDegreeDaysC({
 *   method: "clamped average", baseC: 10, upperC: 30,
 *   maxC: Float64Array.of(35, 20, 9), minC: Float64Array.of(15, 5, 2),
 * });
 * Array.from(totals); // => [12.5, 17.5, 17.5]
 * ```
 */
export const runningDegreeDaysC = (input: {
  readonly method: DegreeDayMethod;
  readonly maxC: Float64Array;
  readonly minC: Float64Array;
  readonly baseC: number;
  readonly upperC?: number;
  readonly cutoff?: UpperCutoff;
  readonly nextMinC?: number;
  readonly outCDays?: Float64Array;
}): Float64Array => {
  expectFields(input, ["method", "maxC", "minC", "baseC", "upperC", "cutoff", "nextMinC", "outCDays"]);
  const { method, maxC, minC, baseC, upperC, cutoff, nextMinC, outCDays } = input;
  checkArrays({ maxC, minC, ...(outCDays === undefined ? {} : { outCDays }) }, maxC?.length);
  if (!Number.isFinite(baseC)) fail("not-finite", "baseC", baseC, "a finite number");
  if (baseC < lowestCelsius || baseC > highestCelsius)
    outOfRange("baseC", baseC, ofAirAndSoil, "{}, as air and soil have");
  const rule = checkedThresholds({ method, base: baseC, upper: upperC, cutoff }, ["baseC", "upperC"]);
  const next = needsNextDay(method) ? nextMinC : 0;
  if (next === undefined) {
    return fail("missing", "nextMinC", next, "the lowest temperature of the day after the last");
  }
  if (!Number.isFinite(next)) fail("not-finite", "nextMinC", next, "a finite number");
  if (next < lowestCelsius || next > highestCelsius)
    outOfRange("nextMinC", next, ofAirAndSoil, "{}, as air and soil have");
  const out = outCDays ?? new Float64Array(maxC.length);
  loops[method]({ max: maxC, min: minC, next }, rule, out);
  return out;
};
