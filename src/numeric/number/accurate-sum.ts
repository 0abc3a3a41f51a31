import { expectNumbers, finite, type Numbers } from "./numbers.js";

/** Neumaier's sum of `(x - from)` to the power of 1 or 2, over a list of numbers. */
export const compensatedSum = (list: Numbers, from = 0, power: 1 | 2 = 1): number => {
  let sum = 0;
  let lost = 0;
  for (let i = 0; i < list.length; i++) {
    const off = (list[i] as number) - from;
    const x = power === 1 ? off : off * off;
    const next = sum + x;
    lost += Math.abs(sum) >= Math.abs(x) ? sum - next + x : x - next + sum;
    sum = next;
  }
  return sum + lost;
};

/**
 * The sum of the numbers of a list that is taken as {@link expectNumbers} takes it. Of a typed array a finite sum says
 * that all of them are finite, and spares a look at each.
 */
export const sumOf = (values: unknown, least: number): { readonly list: Numbers; readonly sum: number } => {
  if (values instanceof Float64Array && values.length >= least) {
    const sum = compensatedSum(values);
    if (Number.isFinite(sum)) return { list: values, sum };
  }
  const list = expectNumbers(values, "values", least);
  return { list, sum: compensatedSum(list) };
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
export const accurateSum = (values: Numbers): number => finite(sumOf(values, 0).sum, "values", values);
