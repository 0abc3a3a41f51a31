import { expectNumbers, finite, type Numbers } from "./numbers.js";

/** Neumaier's sum of `term(0)` to `term(length - 1)`. */
export const compensatedSum = (length: number, term: (i: number) => number): number => {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < length; i++) {
    const x = term(i);
    const next = sum + x;
    lost += Math.abs(sum) >= Math.abs(x) ? sum - next + x : x - next + sum;
    sum = next;
  }
  return sum + lost;
};

/**
 * The sum of a list, with the digits that plain addition loses carried along and added at the end. The
 * sum of no numbers is 0.
 *
 * @throws RatewrightError `not-finite` with the index; `type`; `range` where the sum is too large
 * Source: A. Neumaier, "Rundungsfehleranalyse einiger Verfahren zur Summation endlicher Summen",
 * Zeitschrift für Angewandte Mathematik und Mechanik 54 (1974), 39-51.
 *
 * @example
 * ```ts
 * import { accurateSum } from "ratewright";
 * accurateSum([0.1, 0.2, 0.3]); // => 0.6
 * accurateSum([1, 1e100, 1, -1e100]); // => 2
 * ```
 */
export const accurateSum = (values: Numbers): number => {
  const list = expectNumbers(values, "values", 0);
  const sum = compensatedSum(list.length, (i) => list[i] as number);
  return finite(sum, "values", values);
};
