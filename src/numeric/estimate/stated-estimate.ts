import {
  allOf,
  expectFields,
  expectOneOf,
  expectQuantity,
  numberIn,
  type Quantity,
} from "../../quantity/index.js";
import { anyQuantity, type Estimate, estimateFrom } from "./estimate.js";

/** What a stated "plus or minus" means: one standard error, or limits between which the truth surely lies. */
export type ErrorMeaning = "standard error" | "limits";

/**
 * A quantity with an error that is stated and not estimated from readings: a course taped to the foot,
 * a jug read to the half-ounce line. Limits that are sure become a standard error by `a / sqrt(3)`,
 * every place between them being as likely.
 *
 * @param input - `value`; `error`, zero or more, of the same kind; `meaning` of the error
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`
 * Source: JCGM 100:2008 (GUM), 4.3.7.
 *
 * @example
 * ```ts
 * import { quantity, statedEstimate } from "ratewright";
 * const course = statedEstimate({
 *   value: quantity(204, "ft"),
 *   error: quantity(6, "in"),
 *   meaning: "limits",
 * });
 * Number(course.standardError.in("ft").toFixed(3)); // => 0.289
 * ```
 */
export const statedEstimate = <D extends string, S extends string>(input: {
  readonly value: Quantity<D, S>;
  readonly error: Quantity<D, S>;
  readonly meaning: ErrorMeaning;
}): Estimate<D, S> => {
  const given = expectFields(input, ["value", "error", "meaning"]);
  const value = anyQuantity<D, S>(given.value, "value");
  const { error, meaning } = allOf({
    error: () =>
      expectQuantity(
        given.error,
        { dimension: value.dimension, of: value.of, bound: "non-negative" },
        "error",
      ),
    meaning: () => expectOneOf(given.meaning, ["standard error", "limits"], "meaning"),
  });
  const half = numberIn(error, value.unit);
  return estimateFrom(value, meaning === "limits" ? half / Math.sqrt(3) : half);
};
