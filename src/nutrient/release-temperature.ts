import { expectNumber, fail } from "../quantity/index.js";
import { type Bound3, checkedRange, type ReleaseRange } from "./release-range.js";

/**
 * How a release rate changes with temperature, as a multiple of the rate at the reference temperature.
 *
 * - `"none"`: the source of the figures states no response; the calendar alone counts.
 * - `"Q10"`: `f = q ^ ((T - Tr) / 10)`; the rate is `q` times as high for 10 °C more.
 * - `"Arrhenius"`: `f = exp(E / R * (1 / Tr - 1 / T))` with kelvins and `R` = 8.314462618 J/(mol K).
 */
export type TemperatureResponse =
  | { readonly kind: "none" }
  | { readonly kind: "Q10"; readonly q10: ReleaseRange; readonly referenceC: number }
  | {
      readonly kind: "Arrhenius";
      /** kJ/mol. */
      readonly activationEnergy: ReleaseRange;
      readonly referenceC: number;
    };

/** Molar gas constant, J/(mol K): CODATA 2018 (exact, SI of 2019). */
const gasConstant = 8.314462618;
const zeroC = 273.15;
/** Outside these no source has measured a release. */
const [coldest, hottest] = [-60, 100];
/** Where a day is looked at: cosines of odd sixteenths of a turn, the exact mean of any cubic in its swing and more. */
const points: readonly number[] = /* @__PURE__ */ [1, 3, 5, 7].map((odd) => Math.cos((odd * Math.PI) / 8));

/** Takes a response, or throws with its path. */
export const checkedResponse = (input: TemperatureResponse, path: string): TemperatureResponse => {
  if (input?.kind === "none") return { kind: "none" };
  if (input?.kind === "Q10" || input?.kind === "Arrhenius") {
    const referenceC = expectNumber(input.referenceC, `${path}.referenceC`, { min: 0, max: 50 });
    return input.kind === "Q10"
      ? { kind: "Q10", q10: checkedRange(input.q10, `${path}.q10`, { above: 0, max: 10 }), referenceC }
      : {
          kind: "Arrhenius",
          activationEnergy: checkedRange(input.activationEnergy, `${path}.activationEnergy`, {
            min: 0,
            max: 300,
          }),
          referenceC,
        };
  }
  return fail("type", `${path}.kind`, (input as { kind?: unknown } | null)?.kind, "none, Q10 or Arrhenius");
};

/** `f = exp(c * x(T))`: the logarithm of the response for one unit of its parameter, and the parameter's range. */
const exponentOf = (
  response: Exclude<TemperatureResponse, { kind: "none" }>,
): { readonly x: (celsius: number) => number; readonly c: Required<ReleaseRange> } => {
  const { referenceC } = response;
  if (response.kind === "Q10") {
    const { low, mid, high } = checkedRange(response.q10, "response.q10", { above: 0, max: 10 });
    const c = { low: Math.log(low), mid: Math.log(mid), high: Math.log(high) };
    return { c, x: (t) => (t - referenceC) / 10 };
  }
  const { low, mid, high } = checkedRange(response.activationEnergy, "response.activationEnergy", { min: 0 });
  const scale = 1000 / gasConstant;
  return {
    c: { low: low * scale, mid: mid * scale, high: high * scale },
    x: (t) => 1 / (referenceC + zeroC) - 1 / (t + zeroC),
  };
};

const wrongDay = (max: number, min: number, i: number): never => {
  if (!Number.isFinite(max)) fail("not-finite", `maxC[${i}]`, max, "a finite number");
  if (!Number.isFinite(min)) fail("not-finite", `minC[${i}]`, min, "a finite number");
  if (min > max) fail("conflict", `minC[${i}]`, min, `not more than maxC[${i}], which is ${max}`);
  return min < coldest
    ? fail("range", `minC[${i}]`, min, `${coldest} °C or more`)
    : fail("range", `maxC[${i}]`, max, `${hottest} °C or less`);
};

/**
 * Running totals of equivalent days: how many days at the reference temperature bring as much release
 * as the days that were. A day at the reference counts 1, a warmer one more.
 *
 * Equation: `e_i = e_(i-1) + mean of f(T) over day i`, where `T` follows a cosine between the lowest
 * and the highest temperature of the day (assumption); `f` is the {@link TemperatureResponse}. Since `f`
 * is curved, a day that swings counts more than a steady day of the same mean. The mean is taken at four
 * points of the cosine (Gauss-Chebyshev), which is exact to better than 1e-4 for a swing of 40 °C.
 *
 * Range: -60 to 100 °C. No source gives release in frozen ground; the equation is not cut off there.
 *
 * @param maxC - highest temperature of each day, °C
 * @param minC - lowest temperature of each day, °C, as many as `maxC`
 * @param bound - `"low"` and `"high"` take, on each side of the reference, the end of the parameter's
 *   range that gives the slower or the faster release
 * @param outDays - where the totals go; made where it is left out
 * @throws RatewrightError `not-finite`, `range`, `conflict` with the index, such as `minC[41]`; `type`
 *
 * Source of the form: Arrhenius rate with a reference of 25 °C for coated urea, "Estimation of nitrogen
 * release from coated urea using the Richards function", Soil Science and Plant Nutrition, 2000
 * (abstract). The cosine day is common practice, no source.
 *
 * @example
 * ```ts
 * import { accumulateEquivalentDaysC } from "ratewright";
 * const q10 = { kind: "Q10", q10: { low: 2, high: 2 }, referenceC: 25 } as const;
 * const steady = accumulateEquivalentDaysC(Float64Array.of(25, 35, 15), Float64Array.of(25, 35, 15), q10);
 * Array.from(steady); // => [1, 3, 3.5]
 * ```
 */
export const accumulateEquivalentDaysC = (
  maxC: Float64Array,
  minC: Float64Array,
  response: TemperatureResponse,
  bound: Bound3 = "mid",
  outDays?: Float64Array,
): Float64Array => {
  const out = outDays ?? new Float64Array(maxC?.length ?? 0);
  for (const [name, array] of Object.entries({ maxC, minC, outDays: out })) {
    if (!(array instanceof Float64Array)) fail("type", name, array, "a Float64Array");
    if (array.length !== maxC.length) {
      fail("conflict", name, `${array.length} days`, `as many days as maxC has, which is ${maxC.length}`);
    }
  }
  const checked = checkedResponse(response, "response");
  if (bound !== "low" && bound !== "mid" && bound !== "high") {
    fail("type", "bound", bound, '"low", "mid" or "high"');
  }
  const form = checked.kind === "none" ? undefined : exponentOf(checked);
  let total = 0;
  for (let i = 0; i < maxC.length; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    if (!(low >= coldest && high <= hottest && low <= high)) wrongDay(high, low, i);
    if (form === undefined) total += 1;
    else {
      const [mean, half] = [(high + low) / 2, (high - low) / 2];
      let sum = 0;
      for (const point of points) {
        const x = form.x(mean + half * point);
        const [one, other] = [form.c.low * x, form.c.high * x];
        sum += Math.exp(
          bound === "mid" ? form.c.mid * x : bound === "low" ? Math.min(one, other) : Math.max(one, other),
        );
        if (half === 0) {
          sum *= points.length;
          break;
        }
      }
      total += sum / points.length;
    }
    out[i] = total;
  }
  return out;
};
