import { likeQuantity, outOfRange } from "../../quantity/index.js";
import { number, optional, type Rate, rateOrNone, readRecord, useOf } from "../read.js";

/**
 * What turf uses: `ETc = Kc Kmc ETo`, in the unit of the reference.
 *
 * - `reference` `ETo`, zero or more, such as `day.value` of {@link dailyReferenceEvapotranspiration}, or a figure of a
 *   weather network in in/d
 * - `coefficient` `Kc` of the turf, see {@link turfCoefficient}; more than 0, at most 3
 * - `microclimate` `Kmc` of the place, 1 where left out: below in shade and shelter, above beside paving and in wind
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: University of Arizona, AZMET, "Phoenix area turf water use report", 18 March 2024 (0.30 in at 0.70: 0.21 in); the
 * microclimate: "A guide to estimating irrigation water needs of landscape plantings".
 *
 * @example
 * ```ts
 * import { quantity, turfUse } from "ratewright";
 * turfUse({ reference: quantity(0.3, "in/d"), coefficient: 0.7 }).in("in/d").toFixed(2); // => "0.21"
 * ```
 */
export const turfUse = (input: {
  readonly reference: Rate;
  readonly coefficient: number;
  readonly microclimate?: number;
}): Rate => {
  const q = readRecord(
    input,
    {
      reference: (value, path) => {
        const figure: unknown = Object(value).value;
        if (typeof figure === "number" && figure < 0)
          outOfRange(path, value, { min: 0 }, "{}: below zero is dew, and such a day counts as 0");
        return useOf(rateOrNone, "mm/d")(value, path);
      },
      coefficient: number({ above: 0, max: 3 }),
      microclimate: optional(number({ above: 0, max: 3 })),
    },
    "a record with reference and coefficient",
  );
  return likeQuantity(q.reference, q.reference.value * q.coefficient * (q.microclimate ?? 1));
};
