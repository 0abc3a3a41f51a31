import { expectFloat64Array } from "../../numeric/house.js";
import { counted, described, hasOwn } from "../../quantity/house.js";
import { expectFields, expectNumber, fail, outOfRange } from "../../quantity/index.js";
import { type Bound3, checkedRange, type ReleaseRange } from "./release-range.js";

/**
 * How much of the nitrogen of a source is out after `t` equivalent days: days at the reference temperature of
 * the model. The lag `l` and the day `i` are equivalent days too, so warmth shortens them as it quickens the
 * rate. Of four coated ureas in paddy soil (Ishibashi et al. 1992, abstract) the lag, or a part of it, did not
 * change with temperature, and the rest had a response of its own: there the lag of this curve is too short
 * in warm soil.
 *
 * - `"at once"`: all of it, from the first day.
 * - `"duration"`: evenly, until all is out after `days`. That it comes evenly is an assumption: published
 *   durations say how long, not how.
 * - `"first order"`: `F = A (1 - exp(-k (t - l)))` after a lag of `l` days, 0 before it.
 * - `"Richards"`: `F = A (1 + (d - 1) exp(-k (t - i)))^(1 / (1 - d))`; `d` = 1 is the limit
 *   `A exp(-exp(-k (t - i)))`, `d` = 2 the logistic curve. It starts above zero for `d` of 1 and more,
 *   and for less where `(1 - d) exp(k i)` is below 1; that first share is out on the first day.
 */
export type ReleaseCurve =
  | { readonly kind: "at once" }
  | { readonly kind: "duration"; readonly days: ReleaseRange }
  | {
      readonly kind: "first order";
      /** `k`, share of what is still inside, per day. */
      readonly ratePerDay: ReleaseRange;
      /** `l`; 0 where it is left out. */
      readonly lagDays?: ReleaseRange;
      /** `A`, percent of the nitrogen; 100 where it is left out. */
      readonly mostPercent?: ReleaseRange;
    }
  | {
      readonly kind: "Richards";
      /** `d`, 0 or more; it does not change with temperature. */
      readonly shape: number;
      /** `k`, per day. */
      readonly ratePerDay: ReleaseRange;
      /** `i`, the day on which the curve is steepest. */
      readonly inflectionDays: ReleaseRange;
      /** `A`, percent of the nitrogen; 100 where it is left out. */
      readonly mostPercent?: ReleaseRange;
    };

const all: ReleaseRange = { low: 100, high: 100 };
const none: ReleaseRange = { low: 0, high: 0 };
const percent = { above: 0, max: 100 } as const;

/** The parameters of each curve. */
const curveFields: Readonly<Record<ReleaseCurve["kind"], readonly string[]>> = {
  "at once": [],
  duration: ["days"],
  "first order": ["ratePerDay", "lagDays", "mostPercent"],
  Richards: ["shape", "ratePerDay", "inflectionDays", "mostPercent"],
};

/** Takes a curve with all ranges filled in, or throws with its path. */
export const checkedCurve = (input: ReleaseCurve, path: string): ReleaseCurve => {
  const kind: unknown = input?.kind;
  if (typeof kind === "string" && hasOwn(curveFields, kind)) {
    expectFields(input, ["kind", ...curveFields[kind as ReleaseCurve["kind"]]], path);
  }
  switch (input?.kind) {
    case "at once":
      return { kind: "at once" };
    case "duration":
      return { kind: "duration", days: checkedRange(input.days, `${path}.days`, { above: 0 }) };
    case "first order":
      return {
        kind: "first order",
        ratePerDay: checkedRange(input.ratePerDay, `${path}.ratePerDay`, { above: 0 }),
        lagDays: checkedRange(input.lagDays ?? none, `${path}.lagDays`, { min: 0 }),
        mostPercent: checkedRange(input.mostPercent ?? all, `${path}.mostPercent`, percent),
      };
    case "Richards":
      return {
        kind: "Richards",
        shape: expectNumber(input.shape, `${path}.shape`, { min: 0, max: 100 }),
        ratePerDay: checkedRange(input.ratePerDay, `${path}.ratePerDay`, { above: 0 }),
        inflectionDays: checkedRange(input.inflectionDays, `${path}.inflectionDays`, { min: 0 }),
        mostPercent: checkedRange(input.mostPercent ?? all, `${path}.mostPercent`, percent),
      };
    default:
      return fail(
        "type",
        `${path}.kind`,
        (input as { kind?: unknown } | null | undefined)?.kind,
        "at once, duration, first order or Richards",
      );
  }
};

const richards = (t: number, d: number, k: number, i: number): number => {
  const e = Math.exp(-k * (t - i));
  if (d === 1) return Math.exp(-e);
  // Where the bracket is not above zero the curve has not begun (only for a shape below 1).
  const inside = (d - 1) * e;
  return inside <= -1 ? 0 : Math.exp(Math.log1p(inside) / (1 - d));
};

/** The share of the nitrogen, 0 to 1, that one set of parameters has let out after `t` days. */
/** The constants of a first-order curve at one of its bounds. */
const firstOrderOf = (
  curve: Extract<ReleaseCurve, { readonly kind: "first order" }>,
  bound: Bound3,
): { readonly k: number; readonly lag: number; readonly most: number } => ({
  k: curve.ratePerDay[bound] as number,
  lag: (curve.lagDays ?? none)[bound === "high" ? "low" : bound === "low" ? "high" : "mid"] as number,
  most: ((curve.mostPercent ?? all)[bound] as number) / 100,
});

/** The other curves by a function of the days. */
const shareFunction = (
  curve: Exclude<ReleaseCurve, { readonly kind: "first order" }>,
  bound: Bound3,
): ((t: number) => number) => {
  const slow = bound === "high" ? "low" : bound === "low" ? "high" : "mid";
  const of = (range: ReleaseRange, end: Bound3): number => range[end] as number;
  switch (curve.kind) {
    case "at once":
      return () => 1;
    case "duration": {
      const days = of(curve.days, slow);
      return (t) => Math.min(1, t / days);
    }
    case "Richards": {
      const most = of(curve.mostPercent ?? all, bound) / 100;
      const at = of(curve.inflectionDays, slow);
      const { low, mid, high } = curve.ratePerDay as Required<ReleaseRange>;
      const d = curve.shape;
      if (bound === "mid") return (t) => most * richards(t, d, mid, at);
      // A higher rate is slower before the steepest day and faster after it.
      const pick = bound === "low" ? Math.min : Math.max;
      return (t) => most * pick(richards(t, d, low, at), richards(t, d, high, at));
    }
  }
};

const refuseDay = (t: number, i: number): never => {
  const path = `equivalentDays[${i}]`;
  return Number.isFinite(t)
    ? outOfRange(path, t, { min: 0, unit: "d" })
    : fail("not-finite", path, t, "a finite number");
};

/**
 * The share of a source's nitrogen that is out, for many days: 0 to 1 for each number of equivalent days.
 *
 * Equation: see {@link ReleaseCurve}. `bound` takes the parameters at the end of their ranges that gives
 * the least or the most release; `"mid"` takes the middle.
 *
 * @param equivalentDays - days at the reference temperature since the application, 0 or more, as
 *   {@link accumulateEquivalentDaysC} gives them
 * @param outShares - where the shares go; made where it is left out
 * @param curve - of the model: what share is out after so many equivalent days
 * @throws RatewrightError `not-finite`, `range` with the index; `conflict`, `type`
 *
 * Source: first order with lag, Ishibashi, Konno and Kimoto, "Estimation of the nitrogen liquation of
 * coated urea by kinetic method", Japanese Journal of Soil Science and Plant Nutrition 63 (1992) 664-668
 * (abstract); Richards function for coated urea, Soil Science and Plant Nutrition, 2000 (abstract; the
 * algebraic form is from memory).
 *
 * @example
 * ```ts
 * import { releasedShares } from "ratewright";
 * const one = (x: number) => ({ low: x, high: x });
 * const curve = { kind: "Richards", shape: 2, ratePerDay: one(0.05), inflectionDays: one(60) } as const;
 * const shares = releasedShares(Float64Array.of(30, 60, 90), curve);
 * Array.from(shares, (share) => Number((100 * share).toFixed(3))); // => [18.243, 50, 81.757]
 * ```
 */
export const releasedShares = (
  equivalentDays: Float64Array,
  curve: ReleaseCurve,
  bound: Bound3 = "mid",
  outShares?: Float64Array,
): Float64Array => {
  expectFloat64Array(equivalentDays, "equivalentDays");
  const out = expectFloat64Array(outShares ?? new Float64Array(equivalentDays.length), "outShares");
  if (out.length !== equivalentDays.length) {
    fail("conflict", "outShares", described(counted(out.length, "day")), `${equivalentDays.length} days`);
  }
  if (bound !== "low" && bound !== "mid" && bound !== "high") {
    fail("type", "bound", bound, '"low", "mid" or "high"');
  }
  const checked = checkedCurve(curve, "curve");
  if (checked.kind === "first order") {
    // The commonest curve by itself: a function that is handed over costs a third of the loop.
    const { k, lag, most } = firstOrderOf(checked, bound);
    for (let i = 0; i < out.length; i++) {
      const t = equivalentDays[i] as number;
      if (!(t >= 0 && t < Number.POSITIVE_INFINITY)) return refuseDay(t, i);
      out[i] = (t <= lag ? 0 : -most * Math.expm1(-k * (t - lag))) + 0;
    }
    return out;
  }
  const share = shareFunction(checked, bound);
  for (let i = 0; i < out.length; i++) {
    const t = equivalentDays[i] as number;
    if (!(t >= 0 && t < Number.POSITIVE_INFINITY)) return refuseDay(t, i);
    out[i] = share(t) + 0;
  }
  return out;
};
