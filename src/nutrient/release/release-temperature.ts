import { expectFloat64Array } from "../../numeric/house.js";
import { counted, described } from "../../quantity/house.js";
import { expectFields, expectNumber, fail, outOfRange } from "../../quantity/index.js";
import { type Bound3, checkedRange, type ReleaseRange } from "./release-range.js";

/**
 * How a release rate changes with temperature, as a multiple of the rate at the reference temperature.
 *
 * - `"none"`: the source of the figures states no response; the calendar alone counts.
 * - `"Q10"`: `f = q ^ ((T - Tr) / 10)`; the rate is `q` times as high for 10 °C more.
 * - `"Arrhenius"`: `f = exp(E / R * (1 / Tr - 1 / T))` with kelvins and `R` = 8.314462618 J/(mol K).
 *
 * `restsBelowC` is the coldest temperature at which release was measured, for nitrogen that microbes set free:
 * below it the low end counts no release at all, for nobody measured any.
 */
export type TemperatureResponse =
  | { readonly kind: "none" }
  | {
      readonly kind: "Q10";
      readonly q10: ReleaseRange;
      readonly referenceC: number;
      readonly restsBelowC?: number;
    }
  | {
      readonly kind: "Arrhenius";
      /** kJ/mol. */
      readonly activationEnergy: ReleaseRange;
      readonly referenceC: number;
      readonly restsBelowC?: number;
    };

/** Molar gas constant, J/(mol K): CODATA 2018 (exact, SI of 2019). */
const gasConstant = 8.314462618;
const zeroC = 273.15;
/** Wide enough for any field and for release tests in hot water. */
const [coldest, hottest] = [-60, 100];
/** Where a day is looked at: four points of the cosine, two of each sign. */
const outerPoint: number = /* @__PURE__ */ Math.cos(Math.PI / 8);
const innerPoint: number = /* @__PURE__ */ Math.cos((3 * Math.PI) / 8);

/** Takes a response, or throws with its path. */
export const checkedResponse = (input: TemperatureResponse, path: string): TemperatureResponse => {
  if (input?.kind === "none") {
    expectFields(input, ["kind"], path);
    return { kind: "none" };
  }
  if (input?.kind === "Q10" || input?.kind === "Arrhenius") {
    const scale = input.kind === "Q10" ? "q10" : "activationEnergy";
    expectFields(input, ["kind", scale, "referenceC", "restsBelowC"], path);
    const referenceC = expectNumber(input.referenceC, `${path}.referenceC`, { min: 0, max: 50 });
    const rests =
      input.restsBelowC === undefined
        ? {}
        : {
            restsBelowC: expectNumber(input.restsBelowC, `${path}.restsBelowC`, {
              min: coldest,
              max: referenceC,
            }),
          };
    return input.kind === "Q10"
      ? {
          kind: "Q10",
          q10: checkedRange(input.q10, `${path}.q10`, { above: 0, max: 10 }),
          referenceC,
          ...rests,
        }
      : {
          kind: "Arrhenius",
          activationEnergy: checkedRange(input.activationEnergy, `${path}.activationEnergy`, {
            min: 0,
            max: 300,
          }),
          referenceC,
          ...rests,
        };
  }
  return fail("type", `${path}.kind`, (input as { kind?: unknown } | null)?.kind, "none, Q10 or Arrhenius");
};

/** `f = exp(c x(T))`, with one `c` above the reference, where `x` is above zero, and one below it. */
interface Exponent {
  readonly above: number;
  readonly below: number;
  /** Kelvin of the reference for Arrhenius, where `x = 1 / Tr - 1 / T`; else `x = T - Tr` in °C. */
  readonly kelvin: boolean;
  readonly reference: number;
  /** °C below which nothing is released; only the low end has one. */
  readonly rests: number;
}

const exponentOf = (response: Exclude<TemperatureResponse, { kind: "none" }>, bound: Bound3): Exponent => {
  const kelvin = response.kind === "Arrhenius";
  const given = (kelvin ? response.activationEnergy : response.q10) as Required<ReleaseRange>;
  const c = (end: Bound3): number => (kelvin ? (given[end] * 1000) / gasConstant : Math.log(given[end]) / 10);
  // The end of the range that is slower above the reference is the faster one below it.
  const below = bound === "low" ? "high" : bound === "high" ? "low" : "mid";
  const reference = kelvin ? response.referenceC + zeroC : response.referenceC;
  const rests = bound === "low" ? (response.restsBelowC ?? coldest) : coldest;
  return { above: c(bound), below: c(below), kelvin, reference, rests };
};

const factorAt = ({ above, below, kelvin, reference, rests }: Exponent, celsius: number): number => {
  if (celsius < rests) return 0;
  const x = kelvin ? 1 / reference - 1 / (celsius + zeroC) : celsius - reference;
  return Math.exp((x > 0 ? above : below) * x);
};

/** The mean response of a day whose temperature follows a cosine. */
const dayFactor = (form: Exponent, mean: number, half: number): number => {
  if (half === 0) return factorAt(form, mean);
  const outer = half * outerPoint;
  const inner = half * innerPoint;
  return (
    (factorAt(form, mean + outer) +
      factorAt(form, mean + inner) +
      factorAt(form, mean - inner) +
      factorAt(form, mean - outer)) /
    4
  );
};

const wrongDay = (max: number, min: number, i: number): never => {
  if (!Number.isFinite(max)) fail("not-finite", `maxC[${i}]`, max, "a finite number");
  if (!Number.isFinite(min)) fail("not-finite", `minC[${i}]`, min, "a finite number");
  if (min > max) fail("conflict", `minC[${i}]`, min, `not more than maxC[${i}], which is ${max}`);
  return min < coldest
    ? outOfRange(`minC[${i}]`, min, { min: coldest, max: hottest, unit: "°C" })
    : outOfRange(`maxC[${i}]`, max, { min: coldest, max: hottest, unit: "°C" });
};

/**
 * Running totals of equivalent days: how many days at the reference temperature bring as much release
 * as the days that were. A day at the reference counts 1, a warmer one more.
 *
 * Equation: `e_i = e_(i-1) + mean of f(T) over day i`, where `T` follows a cosine between the lowest
 * and the highest temperature of the day (assumption); `f` is the {@link TemperatureResponse}. Since `f`
 * is curved, a day that swings counts more than a steady day of the same mean. The mean is taken at four
 * points of the cosine (Gauss-Chebyshev). For a swing of 40 °C that is exact to better than 1e-4 up to a Q10 of
 * 3 or 98 kJ/mol, to 4e-3 at a Q10 of 10 and to 5 % at 300 kJ/mol; the low and the high end, whose curve has
 * a kink at the reference, are exact to 1.5 % for 69.9 to 98 kJ/mol.
 *
 * Range: -60 to 100 °C. No source gives release in frozen ground; the equation is not cut off there.
 *
 * @param maxC - highest temperature of each day, °C
 * @param minC - lowest temperature of each day, °C, as many as `maxC`
 * @param bound - `"low"` and `"high"` take, on each side of the reference, the end of the parameter's
 *   range that gives the slower or the faster release
 * @param outDays - where the totals go; made where it is left out
 * @param response - how the release follows the temperature
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
  const out = outDays ?? new Float64Array(expectFloat64Array(maxC, "maxC").length);
  for (const [name, array] of Object.entries({ maxC, minC, outDays: out })) {
    if (expectFloat64Array(array, name).length !== maxC.length) {
      fail(
        "conflict",
        name,
        described(counted(array.length, "day")),
        `as many days as maxC has, which is ${maxC.length}`,
      );
    }
  }
  const checked = checkedResponse(response, "response");
  if (bound !== "low" && bound !== "mid" && bound !== "high") {
    fail("type", "bound", bound, '"low", "mid" or "high"');
  }
  const form = checked.kind === "none" ? undefined : exponentOf(checked, bound);
  let total = 0;
  for (let i = 0; i < maxC.length; i++) {
    const high = maxC[i] as number;
    const low = minC[i] as number;
    if (!(low >= coldest && high <= hottest && low <= high)) return wrongDay(high, low, i);
    total += form === undefined ? 1 : dayFactor(form, (high + low) / 2, (high - low) / 2);
    out[i] = total;
  }
  return out;
};
