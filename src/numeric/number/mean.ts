import { sumOf } from "./accurate-sum.js";
import { finite, type Numbers } from "./numbers.js";

/**
 * The arithmetic mean: the sum divided by the number of values.
 *
 * @throws RatewrightError `missing` for an empty list; `not-finite` with the index; `type`; `range`
 *
 * Source: definition.
 *
 * @example
 * ```ts
 * import { mean } from "ratewright";
 * mean([4, 36, 45, 50, 75]); // => 42
 * ```
 */
export const mean = (values: Numbers): number => {
  const { list, sum } = sumOf(values, 1);
  return finite(sum, "values", values) / list.length;
};
