import { fail } from "../quantity/index.js";

/**
 * The heat of one day by the simple average: the mean less the base, floored at 0. All three on one
 * temperature scale; the result is in degree-days of that scale.
 */
export const dayHeat = (max: number, min: number, base: number): number => {
  const heat = (max + min) / 2 - base;
  return Math.max(heat, 0);
};

const reject = (max: number, min: number, i: number, names: readonly [string, string]): never => {
  if (!Number.isFinite(max)) fail("not-finite", `${names[0]}[${i}]`, max, "a finite number");
  if (!Number.isFinite(min)) fail("not-finite", `${names[1]}[${i}]`, min, "a finite number");
  if (min > max)
    fail("conflict", `${names[1]}[${i}]`, min, `not more than ${names[0]}[${i}], which is ${max}`);
  return fail("range", `${names[0]}[${i}]`, max, "temperatures whose sum is a finite number");
};

/** Writes the running totals of {@link dayHeat}; the names are for the errors. */
export const accumulate = (
  max: Float64Array,
  min: Float64Array,
  base: number,
  out: Float64Array,
  names: readonly [string, string],
): Float64Array => {
  let total = 0;
  for (let i = 0; i < max.length; i++) {
    const high = max[i] as number;
    const low = min[i] as number;
    const range = high - low;
    // One comparison finds NaN, infinity and a minimum above its maximum.
    if (!(range >= 0 && range < Number.POSITIVE_INFINITY)) reject(high, low, i, names);
    total += dayHeat(high, low, base);
    out[i] = total;
  }
  if (!(total < Number.POSITIVE_INFINITY)) {
    const i = out.findIndex((sum) => !Number.isFinite(sum));
    fail("range", `${names[0]}[${i}]`, total, "temperatures whose sum is a finite number");
  }
  return out;
};

/**
 * Running degree-day totals of many days by the simple average with a floor on the mean,
 * `D_i = D_(i-1) + max(0, (Tx_i + Tn_i) / 2 - b)`: for years of stations, without a quantity per day.
 *
 * @param maxC - highest temperature of each day, `Tx`, °C
 * @param minC - lowest temperature of each day, `Tn`, °C, as many as `maxC`
 * @param baseC - base temperature, `b`, °C
 * @param outCDays - where the running totals go, °C d; made where it is left out. It may be one of the
 * inputs, which is then overwritten
 * @returns `outCDays`
 * @throws RatewrightError `not-finite` and `conflict` (minimum above maximum) with the index, such as
 * `minC[41]`; `conflict` for lists of different length; `type`
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
): Float64Array => {
  const inputs = { maxC, minC, ...(outCDays === undefined ? {} : { outCDays }) };
  for (const [name, array] of Object.entries(inputs)) {
    if (!(array instanceof Float64Array)) fail("type", name, array, "a Float64Array");
    if (array.length !== maxC.length) {
      fail("conflict", name, `${array.length} days`, `as many days as maxC has, which is ${maxC.length}`);
    }
  }
  if (!Number.isFinite(baseC)) fail("not-finite", "baseC", baseC, "a finite number");
  return accumulate(maxC, minC, baseC, outCDays ?? new Float64Array(maxC.length), ["maxC", "minC"]);
};
