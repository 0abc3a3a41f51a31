import { accurateSum } from "./accurate-sum.js";
import { expectNumbers, type Numbers } from "./numbers.js";

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
  const list = expectNumbers(values, "values", 1);
  return accurateSum(list) / list.length;
};
