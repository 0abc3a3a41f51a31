import { expectQuantity, fail, type Quantity, quantity } from "../quantity/index.js";
import { coverageFactor } from "./coverage-factor.js";

/** More readings than this nobody takes. */
const most = 10_000;

/**
 * How many readings bring the interval of their mean down to a margin: the smallest `n` with
 * `t(n - 1) * CV / sqrt(n) <= margin`, both as shares of the mean. At least two.
 *
 * @param input - `coefficientOfVariation` of single readings (divisor n-1), zero or more; `margin` that is
 * wanted, more than zero; `confidence`, 95 % where left out
 * @throws RatewrightError `range`, also where more than 10 000 readings would be needed; `unit/mismatch`
 * Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.2 (from memory).
 *
 * @example
 * ```ts
 * import { quantity, readingsFor } from "ratewright";
 * readingsFor({ coefficientOfVariation: quantity(4, "%"), margin: quantity(5, "%") }); // => 5
 * ```
 */
export const readingsFor = (input: {
  readonly coefficientOfVariation: Quantity<"1", "none">;
  readonly margin: Quantity<"1", "none">;
  readonly confidence?: Quantity<"1", "none">;
}): number => {
  if (typeof input !== "object" || input === null)
    fail("type", "input", input, "a record of named arguments");
  const cv = expectQuantity(
    input.coefficientOfVariation,
    { dimension: "1", of: "none", bound: "non-negative" },
    "coefficientOfVariation",
  ).in("1");
  const margin = expectQuantity(input.margin, { dimension: "1", of: "none", bound: "positive" }, "margin");
  const confidence = input.confidence ?? quantity(95, "%");
  const enough = (n: number): boolean =>
    coverageFactor(confidence, n - 1) * cv <= margin.in("1") * Math.sqrt(n) * (1 + 1e-9);
  let high = 2;
  while (!enough(high)) {
    if (high > most) fail("range", "margin", margin, `a margin that ${most} readings or fewer can reach`);
    high *= 2;
  }
  let low = high / 2;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
};
