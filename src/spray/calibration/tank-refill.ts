import { mean } from "../../numeric/index.js";
import { allOf, expectFields, likeQuantity, type Quantity } from "../../quantity/index.js";
import type { Carrier } from "../inputs.js";
import {
  calibrated,
  errorsOf,
  groundOf,
  rateOver,
  readingSet,
  type SprayCalibration,
  type SprayedGround,
  type StatedErrors,
  volumesOf,
} from "./spray-calibration.js";

/**
 * Calibration by refilling: the volume that it takes to fill the tank up again after a known area, on the
 * same level spot. `V = u / A`, with `u` the mean of the refills and `A` the ground of each run.
 *
 * A course of 660 ft makes it `gal * 66 / swath in ft`; that constant is 43 560 / 660, and follows from the
 * units. For a hand gun or a backpack the area is the plot that was sprayed, such as 1000 ft2 or 250 ft2.
 *
 * @param input.refills - one for every run, above zero
 * @param input.errors - stated errors of the jug and of the measures of the ground
 * @throws RatewrightError with every problem: `missing`, `range`, `conflict`, `unit/mismatch`,
 * `substance/mismatch`, `type`, `not-finite`
 * Source: Mesa County Weed and Pest, refill method (4 gal on 1/10 acre is 40 gal/acre).
 *
 * @example
 * ```ts
 * import { calibrationByRefill, quantity } from "ratewright";
 * const measured = calibrationByRefill({
 *   refills: [quantity(7.5, "gal", "water")],
 *   course: quantity(690, "ft"),
 *   width: quantity(30, "ft"),
 * });
 * Number(measured.rate.in("gal/acre").toFixed(2)); // => 15.78
 * measured.notChecked[0]; // => "the spread of the refills: there is one"
 * ```
 */
export const calibrationByRefill = <S extends Carrier>(
  input: SprayedGround & {
    readonly refills: readonly Quantity<"volume", S>[];
    readonly errors?: Omit<StatedErrors, "time">;
  },
): SprayCalibration<S> => {
  expectFields(input, ["area", "course", "width", "refills", "errors"]);
  const { refills, area, errors } = allOf({
    refills: () => volumesOf(input.refills, "refills"),
    area: () => groundOf(input),
    errors: () => errorsOf(input.errors, ["volume", "area"]),
  });
  const first = refills[0] as Quantity<"volume", S>;
  const used = likeQuantity(first, mean(refills.map((each) => each.value)));
  return calibrated("refill", rateOver(used, area), [readingSet("refills", refills)], errors, [
    "volume",
    "area",
  ]);
};
