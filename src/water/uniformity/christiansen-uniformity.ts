import { accurateSum } from "../../numeric/index.js";
import { made, percent, readRecord, type Share } from "../read.js";
import { type Catches, readCatches, type SortedCatches } from "./catches.js";

/** Christiansen's coefficient of catches that were read, in percent. */
export const coefficientOf = ({ sorted, mean }: SortedCatches): number => {
  const away = accurateSum(sorted.map((each) => Math.abs(each - mean))) / sorted.length;
  return 100 * (1 - away / mean);
};

/**
 * Christiansen's coefficient of uniformity, `CU = 100 (1 - sum |x - m| / (n m))`.
 *
 * - `x` what each of the `n` cans caught, `m` their mean; depths, rates, or volumes from cans of one opening, at least 4
 *
 * Too wet counts like too dry. It lies below zero where most cans are empty. For a normal spread it is close to the
 * uniformity of the lower half.
 *
 * @param input.catches - `x`
 * @throws RatewrightError as {@link distributionUniformity}
 *
 * Source: J. Christiansen, "Irrigation by sprinkling", California Agricultural Experiment Station Bulletin 670, 1942;
 * reference page of North Carolina State University for 15 cans: 69.14 %.
 *
 * @example
 * ```ts
 * import { christiansenUniformity, quantity } from "ratewright";
 * const cans = [47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12, 12];
 * const catches = cans.map((value) => quantity(value, "mL", "water"));
 * christiansenUniformity({ catches }).in("%").toFixed(2); // => "69.14"
 * ```
 */
export const christiansenUniformity = (input: { readonly catches: Catches }): Share => {
  const { catches } = readRecord(input, { catches: readCatches(4) }, "a record with catches");
  return made(coefficientOf(catches), "%", "1");
};

const uniformity = percent({ above: 0, max: 100 });

/**
 * Christiansen's coefficient from the uniformity of the lower quarter, for a normal spread: `CU = 100 - 0.63 (100 - DU)`.
 *
 * A rule of thumb for a report that gives one of the two: real zones are not normal, and it has been seen to miss by 5
 * points. Take {@link christiansenUniformity} where the catches are at hand.
 *
 * - `DU` percent, more than 0 and at most 100
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`
 *
 * Source: derived: in a normal spread the mean deviation is `sqrt(2 / pi)` = 0.798 and the mean of the lowest quarter lies
 * 1.271 below the mean, in standard deviations; 0.798 / 1.271 = 0.628, rounded as sprinkler handbooks have it.
 *
 * @example
 * ```ts
 * import { christiansenFromLowerQuarter, quantity } from "ratewright";
 * christiansenFromLowerQuarter({ lowerQuarter: quantity(60, "%") }).in("%"); // => 74.8
 * ```
 */
export const christiansenFromLowerQuarter = (input: { readonly lowerQuarter: Share }): Share => {
  const { lowerQuarter } = readRecord(input, { lowerQuarter: uniformity }, "a record with lowerQuarter");
  return made(100 - 0.63 * (100 - lowerQuarter), "%", "1");
};
