import { exceeds } from "../../numeric/index.js";
import { fail, outOfRange } from "../../quantity/index.js";
import { type Rate, rate, readRecord } from "../read.js";

/**
 * The scheduling coefficient: how much longer a zone runs so that its driest place gets enough, `SC = mean / driest`.
 *
 * - `mean` the mean precipitation rate of the zone, `driest` that of its driest place; the driest not above the mean
 *
 * The driest single can makes it large and chancy; catalogs take the driest 1, 5 or 10 % of the ground. Say which.
 *
 * @throws RatewrightError `range` where the driest place is wetter than the mean; `missing`, `unit/mismatch`, `type`
 *
 * Source: horticulture course page, "Design considerations: scheduling coefficient" (12 and 7 mm/h: 1.7).
 *
 * @example
 * ```ts
 * import { quantity, schedulingCoefficient } from "ratewright";
 * schedulingCoefficient({ mean: quantity(12, "mm/h"), driest: quantity(7, "mm/h") }).toFixed(2); // => "1.71"
 * ```
 */
export const schedulingCoefficient = (input: { readonly mean: Rate; readonly driest: Rate }): number => {
  const { mean, driest } = readRecord(input, { mean: rate, driest: rate }, "a record with mean and driest");
  const [all, low] = [mean.value, driest.in(mean.unit as "mm/h")];
  if (exceeds(low, all))
    outOfRange("driest", driest, { max: mean.value, unit: mean.unit }, "{}, the mean rate");
  const coefficient = Math.max(1, all / low);
  return Number.isFinite(coefficient)
    ? coefficient
    : fail(
        "range",
        "driest",
        driest,
        "a rate with a finite ratio to the mean; a dry spot has no coefficient",
      );
};
