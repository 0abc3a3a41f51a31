import { expectFields, expectOneOf } from "../../quantity/index.js";
import { compensatedSum, sumOf } from "./accurate-sum.js";
import { finite, type Numbers } from "./numbers.js";

/**
 * By what the sum of squared deviations is divided: `"n-1"` where the values are a sample of what could
 * have been measured, `"n"` where they are all there is. Sources of the trade often do not say which
 * they mean, so there is no default.
 */
export type Divisor = "n" | "n-1";

/**
 * The standard deviation, `s = sqrt(sum((x - m)^2) / d)`, with `m` the mean of the `n` values and `d`
 * the divisor that is named. Computed in two passes, so that a large mean costs no digits.
 *
 * @throws RatewrightError `missing` for an empty list, and for fewer than two values with `"n-1"`;
 * `not-finite` with the index; `type`; `range`
 * Source: the definition; worked examples by n-1 stand among the published checks.
 *
 * @example
 * ```ts
 * import { standardDeviation } from "ratewright";
 * standardDeviation([10000001, 10000003, 10000002], { divisor: "n-1" }); // => 1
 * standardDeviation([2, 4], { divisor: "n" }); // => 1
 * ```
 */
export const standardDeviation = (values: Numbers, options: { readonly divisor: Divisor }): number => {
  const given = expectFields(options, ["divisor"], "options");
  const divisor = expectOneOf(given.divisor, ["n", "n-1"], "divisor");
  const { list, sum } = sumOf(values, divisor === "n" ? 1 : 2);
  const n = list.length;
  const m = finite(sum, "values", values) / n;
  const squares = compensatedSum(list, m, 2);
  // What the rounding of the mean adds to the squares is taken off again.
  const rest = compensatedSum(list, m);
  const variance = Math.max(0, squares - rest ** 2 / n) / (divisor === "n" ? n : n - 1);
  return finite(Math.sqrt(variance), "values", values);
};
