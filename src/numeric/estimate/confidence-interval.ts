import { expectQuantity, likeQuantity, type Quantity, quantity } from "../../quantity/index.js";
import { coverageFactor } from "./coverage-factor.js";
import { type Estimate, expectEstimate } from "./estimate.js";

/** Between what a measured quantity lies, as surely as `confidence` says. */
export interface ConfidenceInterval<D extends string, S extends string> {
  readonly type: "confidence-interval";
  readonly version: 1;
  readonly low: Quantity<D, S>;
  readonly high: Quantity<D, S>;
  /** Half the width. */
  readonly margin: Quantity<D, S>;
  readonly confidence: Quantity<"1", "none">;
  /** By what the standard error was multiplied. */
  readonly factor: number;
}

/**
 * The interval in which a measured quantity lies, `value - k u` to `value + k u`, with `u` the standard
 * error and `k` of {@link coverageFactor}. Few readings make a wide one: with two catches `k` is 12.7,
 * with five 2.8.
 *
 * It takes the readings as independent and about normally spread. Its lower end may lie below zero
 * where the readings are too few or too noisy to tell; nothing is cut off.
 *
 * @param confidence - 95 % where it is left out
 * @throws RatewrightError `range`, `type`, `unit/mismatch`
 * Source: JCGM 100:2008 (GUM), 6.2 and G.3.
 *
 * @example
 * ```ts
 * import { confidenceInterval, meanEstimate, quantity } from "ratewright";
 * const caught = [30, 32, 31].map((value) => quantity(value, "fl oz", "water"));
 * const between = confidenceInterval(meanEstimate(caught));
 * Number(between.low.in("fl oz").toFixed(2)); // => 28.52
 * Number(between.high.in("fl oz").toFixed(2)); // => 33.48
 * ```
 */
export const confidenceInterval = <D extends string, S extends string>(
  estimate: Estimate<D, S>,
  confidence: Quantity<"1", "none"> = quantity(95, "%"),
): ConfidenceInterval<D, S> => {
  const { value, standardError, degreesOfFreedom } = expectEstimate(estimate, "estimate");
  const stated = expectQuantity(confidence, { dimension: "1", of: "none" }, "confidence");
  const factor = coverageFactor(stated, degreesOfFreedom);
  const margin = factor * standardError.value;
  return {
    type: "confidence-interval",
    version: 1,
    low: likeQuantity(value, value.value - margin),
    high: likeQuantity(value, value.value + margin),
    margin: likeQuantity(value, margin),
    confidence: stated,
    factor,
  };
};
