import {
  allOf,
  expectFields,
  expectQuantity,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
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
 * Source: rule of sample adequacy, `n = (t s / (margin * mean))²`, Mississippi Administrative Code, title 11,
 * part 8, chapter 2, addendum J. It keeps the `t` of the readings already taken; here `t` is that of the
 * readings to take, by which its example needs 30 where it says 33.
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
  const given = expectFields(input, ["coefficientOfVariation", "margin", "confidence"]);
  const share = { dimension: "1", of: "none" } as const;
  const { spread, margin, confidence } = allOf({
    spread: () =>
      expectQuantity(
        given.coefficientOfVariation,
        { ...share, bound: "non-negative" },
        "coefficientOfVariation",
      ),
    margin: () => expectQuantity(given.margin, { ...share, bound: "positive" }, "margin"),
    confidence: () => {
      const stated = expectQuantity(given.confidence ?? quantity(95, "%"), share, "confidence");
      coverageFactor(stated);
      return stated;
    },
  });
  const cv = spread.in("1");
  const enough = (n: number): boolean =>
    coverageFactor(confidence, n - 1) * cv <= margin.in("1") * Math.sqrt(n) * (1 + 1e-9);
  if (!enough(most))
    outOfRange(
      "margin",
      margin,
      { min: (coverageFactor(confidence, most - 1) * cv * 100) / Math.sqrt(most), unit: "%" },
      `{}, which ${most} readings can reach`,
    );
  let high = 2;
  while (!enough(high)) high *= 2;
  let low = high / 2;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (enough(middle)) high = middle;
    else low = middle;
  }
  return high;
};
