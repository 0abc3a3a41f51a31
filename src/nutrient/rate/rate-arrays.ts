import { expectFloat64Array } from "../../numeric/house.js";
import { expectFields, expectList, fail, outOfRange } from "../../quantity/index.js";

/** A cap for many areas at once, and what a product has of the capped substance. */
export interface CapArray {
  /** Cap for each area. */
  readonly limitKgPerHa: Float64Array;
  /** Percent of the capped substance in the product, by weight; 0 where it has none. */
  readonly percent: number;
}

const expectPercent = (percent: number, path: string, least: "positive" | "zero or more"): void => {
  if (!Number.isFinite(percent)) fail("not-finite", path, percent, "a percentage");
  if (percent > 100 || percent < 0) outOfRange(path, percent, { min: 0, max: 100, unit: "%" });
  if (least === "positive" && percent === 0)
    fail("infeasible", path, percent, "a product with some of the nutrient");
};

const outFor = (given: Float64Array | undefined, length: number): Float64Array => {
  const out = given === undefined ? new Float64Array(length) : expectFloat64Array(given, "out");
  return out.length === length
    ? out
    : fail("conflict", "out", out.length, `${length} places, one for each area`);
};

const refuse = (path: string, i: number, value: number): never =>
  Number.isFinite(value)
    ? value < 0
      ? outOfRange(`${path}[${i}]`, value, { min: 0 })
      : fail("range", `${path}[${i}]`, value, "an amount whose result is a finite number")
    : fail("not-finite", `${path}[${i}]`, value, "a finite number");

/**
 * Product rates for many areas at once, `R = T * 100 / a`: the array form of `productRate`.
 *
 * - `targetKgPerHa` target of the nutrient for each area, zero or more
 * - `percent` of the nutrient in the product, by weight
 * - `out` takes the rates, in kg/ha of product; a new array where left out
 *
 * @throws RatewrightError `not-finite` and `range` with the index of the first bad target; `infeasible` where
 *   `percent` is 0; `conflict` where `out` has another length; `type` or `missing` for anything but a Float64Array
 *
 * Source: as `productRate`.
 *
 * @example
 * ```ts
 * import { productRatesKgPerHa } from "ratewright";
 * Array.from(productRatesKgPerHa(Float64Array.of(48, 24), 24)); // => [200, 100]
 * ```
 */
export const productRatesKgPerHa = (
  targetKgPerHa: Float64Array,
  percent: number,
  out?: Float64Array,
): Float64Array => {
  expectFloat64Array(targetKgPerHa, "targetKgPerHa");
  expectPercent(percent, "percent", "positive");
  const rates = outFor(out, targetKgPerHa.length);
  for (let i = 0; i < targetKgPerHa.length; i++) {
    const target = targetKgPerHa[i] as number;
    // Adding zero turns a negative zero into zero.
    const rate = (target * 100) / percent + 0;
    if (!(target >= 0 && rate < Number.POSITIVE_INFINITY)) return refuse("targetKgPerHa", i, target);
    rates[i] = rate;
  }
  return rates;
};

/**
 * The nutrient that a product rate brings to each of many areas, `m = R * A * a / 10^6`, in kg.
 *
 * - `rateKgPerHa` product rate on each area, zero or more; `areaM2` its size in square meters, zero or more
 * - `percent` of the nutrient in the product, by weight
 * - `out` takes the nutrient in kg; a new array where left out
 *
 * @throws RatewrightError `not-finite`, `range` with the index; `conflict` where lengths differ; `type`, `missing`
 *
 * Source: as `nutrientsSupplied`.
 *
 * @example
 * ```ts
 * import { nutrientsSuppliedKg } from "ratewright";
 * const rateKgPerHa = Float64Array.of(200, 100);
 * const areaM2 = Float64Array.of(5000, 10_000);
 * Array.from(nutrientsSuppliedKg({ rateKgPerHa, areaM2, percent: 24 })); // => [24, 24]
 * ```
 */
export const nutrientsSuppliedKg = (input: {
  readonly rateKgPerHa: Float64Array;
  readonly areaM2: Float64Array;
  readonly percent: number;
  readonly out?: Float64Array;
}): Float64Array => {
  expectFields(input, ["rateKgPerHa", "areaM2", "percent", "out"]);
  const { rateKgPerHa, areaM2, percent } = input;
  expectFloat64Array(rateKgPerHa, "rateKgPerHa");
  expectFloat64Array(areaM2, "areaM2");
  expectPercent(percent, "percent", "zero or more");
  if (areaM2.length !== rateKgPerHa.length) {
    fail("conflict", "areaM2", areaM2.length, `${rateKgPerHa.length} areas, one for each rate`);
  }
  const out = outFor(input.out, rateKgPerHa.length);
  for (let i = 0; i < out.length; i++) {
    const rate = rateKgPerHa[i] as number;
    const area = areaM2[i] as number;
    if (!(rate >= 0 && rate < Number.POSITIVE_INFINITY)) return refuse("rateKgPerHa", i, rate);
    const mass = (rate * area * percent) / 1e6 + 0;
    if (!(area >= 0 && mass < Number.POSITIVE_INFINITY)) return refuse("areaM2", i, area);
    out[i] = mass;
  }
  return out;
};

/**
 * The highest product rate on each of many areas under caps that differ from area to area:
 * `R = min over caps of C * 100 / a`, the array form of `highestProductRate`.
 *
 * - a limit of zero or less, as where a cap is used up, gives a rate of zero
 * - `caps` at least one of which the product has some of; caps with `percent` 0 do not bound the rate
 * - `out` takes the rates, in kg/ha of product; a new array where left out
 *
 * @throws RatewrightError `infeasible` where no cap bounds the product; `not-finite`, `range` with the index;
 *   `conflict` where lengths differ; `type`, `missing`
 *
 * Source: as `highestProductRate`.
 *
 * @example
 * ```ts
 * import { highestProductRatesKgPerHa } from "ratewright";
 * const caps = [
 *   { limitKgPerHa: Float64Array.of(45, 20), percent: 20 },
 *   { limitKgPerHa: Float64Array.of(35, 35), percent: 16 },
 * ];
 * Array.from(highestProductRatesKgPerHa(caps)); // => [218.75, 100]
 * ```
 */
export const highestProductRatesKgPerHa = (caps: readonly CapArray[], out?: Float64Array): Float64Array => {
  const list = expectList(caps, "caps", "cap", 1000).map((item, k) => {
    const { limitKgPerHa, percent } = expectFields(item, ["limitKgPerHa", "percent"], `caps[${k}]`);
    return {
      limitKgPerHa: expectFloat64Array(limitKgPerHa, `caps[${k}].limitKgPerHa`),
      percent: percent as number,
    };
  });
  const areas = list[0]?.limitKgPerHa.length ?? 0;
  const rates = outFor(out, areas).fill(Number.POSITIVE_INFINITY);
  list.forEach(({ limitKgPerHa, percent }, k) => {
    expectPercent(percent, `caps[${k}].percent`, "zero or more");
    if (limitKgPerHa.length !== areas) {
      fail("conflict", `caps[${k}].limitKgPerHa`, limitKgPerHa.length, `${areas} areas, as in the first cap`);
    }
    for (let i = 0; i < areas; i++) {
      const limit = limitKgPerHa[i] as number;
      if (!Number.isFinite(limit)) refuse(`caps[${k}].limitKgPerHa`, i, limit);
      if (percent === 0) continue;
      const rate = (Math.max(0, limit) * 100) / percent;
      if (rate === Number.POSITIVE_INFINITY) refuse(`caps[${k}].limitKgPerHa`, i, limit);
      if (rate < (rates[i] as number)) rates[i] = rate;
    }
  });
  if (!list.some(({ percent }) => percent > 0))
    fail("infeasible", "caps", list.length, "a cap on something that the product contains");
  return rates;
};
