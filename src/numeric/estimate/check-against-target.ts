import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  likeQuantity,
  numberIn,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { exceeds } from "../number/exceeds.js";
import { type ConfidenceInterval, confidenceInterval } from "./confidence-interval.js";
import { coverageFactor } from "./coverage-factor.js";
import { anyQuantity, type Estimate, expectEstimate } from "./estimate.js";

/** What a calibration says of a wanted rate. */
export type TargetVerdict = "within tolerance" | "adjust" | "measure again";

/** A measured rate held against the wanted one. */
export interface TargetCheck<D extends string, S extends string> {
  readonly type: "target-check";
  readonly version: 1;
  readonly verdict: TargetVerdict;
  readonly measured: Quantity<D, S>;
  readonly target: Quantity<D, S>;
  /** How far the measured rate lies above the target; negative where below. */
  readonly deviation: Quantity<"1", "none">;
  /** By how much the output has to change to come to the target; positive for more. It is not minus the deviation. */
  readonly change: Quantity<"1", "none">;
  /** What the tolerance leaves around the target. */
  readonly band: { readonly low: Quantity<D, S>; readonly high: Quantity<D, S> };
  /** Where the truth lies; left out where only a value and no spread was given. */
  readonly interval?: ConfidenceInterval<D, S>;
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
  /** The answer in English; the other fields say the same. */
  readonly text: string;
}

const toleranceOf = (input: unknown): Quantity<"1", "none"> => {
  const expected = { dimension: "1", of: "none", bound: "positive" } as const;
  const tolerance = expectQuantity(input, expected, "tolerance");
  return tolerance.in("1") < 1 ? tolerance : outOfRange("tolerance", tolerance, { below: 100, unit: "%" });
};

/** Reads what is to be compared, or throws all that is wrong with it. */
const readTarget = <D extends string, S extends string>(input: unknown) => {
  const given = expectFields(input, ["measured", "target", "tolerance", "confidence"]);
  const { measured: told } = given;
  if (told === undefined || told === null) fail("missing", "measured", told, "a measured rate");
  const isEstimate = (told as { readonly type?: unknown }).type === "estimate";
  const estimate = isEstimate ? expectEstimate(told as Estimate<D, S>, "measured") : undefined;
  const measured = estimate?.value ?? anyQuantity<D, S>(told, "measured");
  if (measured.value < 0) outOfRange(isEstimate ? "measured.value" : "measured", measured, { min: 0 });
  const { dimension, of } = measured;
  const read = allOf({
    target: () => {
      const { of: wanted } = Object(given.target) as { readonly of?: unknown };
      if ((of as string) === "water" && wanted === "spray") {
        const expected =
          "a target of water, as measured; asFinishedSpray(measured).estimate is the measured one as spray";
        fail("substance/mismatch", "target", given.target, expected);
      }
      if ((of as string) === "product" && typeof wanted === "string" && wanted.startsWith("product:")) {
        const expected = `a target of product, as measured; or the catch stated as "${wanted}"`;
        fail("substance/mismatch", "target", given.target, expected);
      }
      return expectQuantity<D, S>(given.target, { dimension, of, bound: "positive" }, "target");
    },
    confidence: () => {
      const { confidence = quantity(95, "%") } = given;
      const stated = expectQuantity(confidence, { dimension: "1", of: "none" }, "confidence");
      coverageFactor(stated);
      return stated;
    },
    tolerance: () => toleranceOf(given.tolerance),
  });
  return { estimate, measured, ...read };
};

const short = (value: number): string => String(Number(value.toPrecision(4)));

/**
 * Holds a calibrated rate against the wanted one and answers in the trade's words:
 *
 * - `"within tolerance"`: the whole interval lies inside the band around the target
 * - `"adjust"`: the whole interval lies outside; `change` says by how much
 * - `"measure again"`: the interval crosses an edge of the band, so the spread is too large to tell
 *
 * The band is `target * (1 - tolerance)` to `target * (1 + tolerance)`; equal is within, at a relative
 * 1e-9. A bare quantity has no spread: then the value alone decides, and `notChecked` says so.
 *
 * How wide the band is, sources differ on: within 5 % of the required rate for sprayers (Pesticide
 * Environmental Stewardship, spray gun; a forestry contract rate) and for spreaders (University of
 * Massachusetts), within 10 % for granule bands (Pesticide Environmental Stewardship). So there is no
 * default.
 *
 * @param input - `measured` as an {@link Estimate} or a bare quantity, zero or more; `target`, more than
 * zero; `tolerance`, a share of the target above 0 and below 100 %; `confidence`, 95 % where left out
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`, `not-finite`
 *
 * Source: the widths of the band as named; the reading of the interval is of this library.
 *
 * @example
 * ```ts
 * import { checkAgainstTarget, meanEstimate, quantity } from "ratewright";
 * const target = quantity(12, "gal/acre", "spray");
 * const runs = [12.9, 13.1, 13].map((value) => quantity(value, "gal/acre", "spray"));
 * const check = checkAgainstTarget({
 *   measured: meanEstimate(runs),
 *   target,
 *   tolerance: quantity(5, "%"),
 * });
 * check.verdict; // => "adjust"
 * Number(check.change.in("%").toFixed(2)); // => -7.69
 * const noisy = meanEstimate([11, 13.5, 12].map((value) => quantity(value, "gal/acre", "spray")));
 * checkAgainstTarget({ measured: noisy, target, tolerance: quantity(5, "%") }).verdict; // => "measure again"
 * ```
 */
export const checkAgainstTarget = <D extends string, S extends string>(input: {
  readonly measured: Estimate<D, S> | Quantity<D, S>;
  readonly target: Quantity<NoInfer<D>, NoInfer<S>>;
  readonly tolerance: Quantity<"1", "none">;
  readonly confidence?: Quantity<"1", "none">;
}): TargetCheck<D, S> => {
  const { estimate, measured, target, tolerance, confidence } = readTarget<D, S>(input);
  const share = tolerance.in("1");
  const wanted = numberIn(target, measured.unit);
  const [low, high] = [wanted * (1 - share), wanted * (1 + share)];
  const interval = estimate && confidenceInterval(estimate, confidence);
  const from = interval?.low.value ?? measured.value;
  const to = interval?.high.value ?? measured.value;
  const inside = !exceeds(low, from) && !exceeds(to, high);
  const outside = exceeds(low, to) || exceeds(from, high);
  const verdict: TargetVerdict = inside ? "within tolerance" : outside ? "adjust" : "measure again";
  if (measured.value === 0 && verdict === "adjust") {
    outOfRange(
      estimate === undefined ? "measured" : "measured.value",
      measured,
      { above: 0 },
      "{}: no setting scales an output of nothing to a target",
    );
  }
  const deviation = (100 * (measured.value - wanted)) / wanted;
  // A noisy mean may be zero, too, and then no change is worth naming.
  const change = measured.value === 0 ? 0 : (100 * (wanted - measured.value)) / measured.value;
  const off = deviation === 0 ? "at" : `${short(Math.abs(deviation))} % ${deviation < 0 ? "below" : "above"}`;
  const where = `${short(measured.value)} ${measured.unit} is ${off} the target of ${short(wanted)}`;
  const band = `within ${short(tolerance.in("%"))} %`;
  const span =
    interval &&
    `the true value is from ${short(from)} to ${short(to)} at ${short(interval.confidence.in("%"))} %`;
  const text = {
    "within tolerance": `${where}, ${band}${span ? `; ${span}` : ""}.`,
    adjust: `${where}, not ${band}${span ? `; ${span}` : ""}. Adjust the output by ${short(change)} % and measure again.`,
    "measure again": `${where}, but ${span}: the spread is too large to tell whether that is ${band}. Measure again, with more readings.`,
  }[verdict];
  return {
    type: "target-check",
    version: 1,
    verdict,
    measured,
    target,
    deviation: quantity(deviation, "%"),
    change: quantity(change, "%"),
    band: { low: likeQuantity(measured, low), high: likeQuantity(measured, high) },
    ...(interval === undefined ? {} : { interval }),
    checked: interval ? ["the rate", "the spread of the readings and the stated errors"] : ["the rate"],
    notChecked: interval ? [] : ["the spread of the readings: a single value was given"],
    text,
  };
};
