import { expectFields, expectNumber, likeQuantity, outOfRange, type Quantity } from "../../quantity/index.js";
import { mean } from "../number/mean.js";
import { standardDeviation } from "../number/standard-deviation.js";
import { type Estimate, estimateFrom } from "./estimate.js";
import { expectReadings } from "./readings.js";

/**
 * The mean of repeated readings with its standard error, `s / sqrt(n)`, where `s` is the standard
 * deviation by `n - 1`. The readings have to be independent: three catches of one nozzle, four runs
 * over the course.
 *
 * Where the readings are drawn without repeats from a known number of things (9 of the 12 nozzles of a
 * boom), that number goes into `outOf`: the error is then `s sqrt((1 - n/N) / n)`, and none where all
 * were read, for their mean is no guess any more. What the jug and the stop-watch may be off is another
 * error; `estimateOfProduct` adds it.
 *
 * @param readings - at least two, in any unit of their dimension; the result is in the unit of the first
 * @param options.outOf - how many there are to read, at least as many as were read
 * @throws RatewrightError with every bad reading by its index: `missing`, `type`, `unit/mismatch`,
 * `substance/mismatch`, `not-finite`; `missing` for fewer than two readings; `range` for `outOf`
 * Source: JCGM 100:2008 (GUM), 4.2.3; for the finite number the correction `sqrt((N - n)/(N - 1))` of
 * teaching texts, which is meant for the deviation of all `N`: with that of the readings it is this one.
 *
 * @example
 * ```ts
 * import { meanEstimate, quantity } from "ratewright";
 * const caught = [30, 32, 31].map((value) => quantity(value, "fl oz", "water"));
 * const each = meanEstimate(caught);
 * each.value.in("fl oz"); // => 31
 * Number(each.standardError.in("fl oz").toFixed(3)); // => 0.577
 * each.degreesOfFreedom; // => 2
 * meanEstimate(caught, { outOf: 3 }).standardError.in("fl oz"); // => 0
 * ```
 */
export const meanEstimate = <D extends string, S extends string>(
  readings: readonly Quantity<D, S>[],
  options: { readonly outOf?: number } = {},
): Estimate<D, S> => {
  const list = expectReadings(readings, "readings", 2);
  const { outOf } = expectFields(options, ["outOf"], "options", "a record of options");
  const n = list.length;
  const numbers = list.map((q) => q.value);
  const all = outOf === undefined ? undefined : expectNumber(outOf, "outOf", { min: n });
  if (all !== undefined && !Number.isInteger(all)) outOfRange("outOf", all, { step: 1 });
  const drawn = all === undefined ? 1 : 1 - n / all;
  const s = standardDeviation(numbers, { divisor: "n-1" });
  const value = likeQuantity(list[0] as Quantity<D, S>, mean(numbers));
  return estimateFrom(value, s * Math.sqrt(drawn / n), n - 1);
};
