import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  likeQuantity,
  numberIn,
  type Quantity,
} from "../../quantity/index.js";
import { type Carrier, carried } from "../inputs.js";

/**
 * What was used between two readings of a sight gauge, `before - after`. It goes into `calibrationByRefill` as one of
 * its `refills`, and into `asApplied` as what was used. Read both on the same level spot.
 *
 * @param input - `before` and `after`, of the same; `after` zero or more and less than `before`
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`;
 *   `conflict` where nothing was used
 * Source: definition.
 *
 * @example
 * ```ts
 * import { quantity, usedBySightGauge } from "ratewright";
 * usedBySightGauge({ before: quantity(60, "gal", "water"), after: quantity(52.5, "gal", "water") }).in("gal"); // => 7.5
 * ```
 */
export const usedBySightGauge = <S extends Carrier>(input: {
  readonly before: Quantity<"volume", S>;
  readonly after: Quantity<"volume", NoInfer<S>>;
}): Quantity<"volume", S> => {
  const given = expectFields(input, ["before", "after"]);
  const { before, after } = allOf({
    before: () => carried(input.before, "before", "volume"),
    after: () =>
      given.after === undefined || given.after === null
        ? fail("missing", "after", given.after, "the reading after the run")
        : expectQuantity(given.after, { dimension: "volume", bound: "non-negative" }, "after"),
  });
  if (after.of !== before.of) fail("substance/mismatch", "after", after, `a volume of ${before.of}`);
  const used = before.value - numberIn(after, before.unit);
  return used > 0
    ? likeQuantity(before, used)
    : fail("conflict", "after", after, "less than before: nothing was used, or the readings are swapped");
};
