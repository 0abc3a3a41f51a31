import { described } from "../../quantity/house.js";
import { outOfRange, type Quantity, quantity } from "../../quantity/index.js";
import { mean } from "./mean.js";
import type { Numbers } from "./numbers.js";
import { type Divisor, standardDeviation } from "./standard-deviation.js";

/**
 * The coefficient of variation, `CV = 100 s / m` in percent: the standard deviation `s`, by the divisor
 * that is named, as a share of the mean `m`. It holds for measurements with a true zero and a mean
 * above zero (catches, weights), not for temperatures.
 *
 * @throws RatewrightError `range` where the mean is not above zero; `missing`, `not-finite`, `type` as
 * for the standard deviation
 *
 * Source: definition.
 *
 * @example
 * ```ts
 * import { coefficientOfVariation } from "ratewright";
 * coefficientOfVariation([9, 10, 11], { divisor: "n-1" }).in("%"); // => 10
 * ```
 */
export const coefficientOfVariation = (
  values: Numbers,
  options: { readonly divisor: Divisor },
): Quantity<"1", "none"> => {
  const s = standardDeviation(values, options);
  const m = mean(values);
  if (m <= 0) outOfRange("values", described(`a mean of ${m}`), { above: 0 }, "a mean of {}");
  return quantity((100 * s) / m, "%");
};
