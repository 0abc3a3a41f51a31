import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectQuantity,
  type Finding,
  fail,
  numberIn,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Carrier, carried, type Share, share } from "../inputs.js";

/** A rate controller against what was measured. */
export interface RateControllerCheck {
  readonly type: "rate-controller-check";
  readonly version: 1;
  /** How far the display lies above what was measured; negative where below. */
  readonly error: Share;
  readonly withinTolerance: boolean;
  /** The corrected number of the flow meter, in pulses per volume, where the present one was given. */
  readonly meterNumber?: number;
  readonly findings: readonly Finding[];
}

/**
 * A rate controller or flow meter against a measured volume: `error = displayed / measured - 1`. A meter that counts
 * pulses per volume is corrected by `n2 = n1 displayed / measured`: it counted `n1 displayed` pulses while `measured`
 * went through. A display that is right says nothing of the nozzles: catch them too.
 *
 * @param input - `displayed` and `measured` volume of one run, of the same, more than zero; `tolerance`, 5 % where left
 *   out (common practice, no source); `meterNumber`, the present pulses per volume
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `type`
 * Source: derived from the count of pulses; the tolerance: common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity, rateControllerCheck } from "ratewright";
 * const check = rateControllerCheck({
 *   displayed: quantity(52, "gal", "water"),
 *   measured: quantity(50, "gal", "water"),
 *   meterNumber: 650,
 * });
 * check.error.in("%"); // => 4
 * check.withinTolerance; // => true
 * check.meterNumber; // => 676
 * ```
 */
export const rateControllerCheck = <S extends Carrier>(input: {
  readonly displayed: Quantity<"volume", S>;
  readonly measured: Quantity<"volume", NoInfer<S>>;
  readonly tolerance?: Share;
  readonly meterNumber?: number;
}): RateControllerCheck => {
  const given = expectFields(input, ["displayed", "measured", "tolerance", "meterNumber"]);
  const { displayed, measured, tolerance, meterNumber } = allOf({
    displayed: () => carried(input.displayed, "displayed", "volume"),
    measured: () =>
      given.measured === undefined || given.measured === null
        ? fail("missing", "measured", given.measured, "a measured volume")
        : expectQuantity(given.measured, { dimension: "volume", bound: "positive" }, "measured"),
    tolerance: () => (given.tolerance === undefined ? 5 : share(given.tolerance, "tolerance", 1).in("%")),
    meterNumber: () =>
      given.meterNumber === undefined
        ? undefined
        : expectNumber(given.meterNumber, "meterNumber", { above: 0 }),
  });
  if (measured.of !== displayed.of)
    fail("substance/mismatch", "measured", measured, `a volume of ${displayed.of}, as displayed`);
  const ratio = displayed.value / numberIn(measured, displayed.unit);
  // Fifteen digits: 52 over 50 less one is 4 %, and not 4.0000000000000036.
  const error = Number((100 * (ratio - 1)).toPrecision(12));
  const within = !exceeds(Math.abs(error), tolerance);
  const told = roundedApart(Math.abs(error), tolerance, 3);
  return {
    type: "rate-controller-check",
    version: 1,
    error: quantity(error, "%"),
    withinTolerance: within,
    ...(meterNumber === undefined ? {} : { meterNumber: Number((meterNumber * ratio).toPrecision(12)) }),
    findings: within
      ? []
      : [
          {
            code: "controller/off",
            severity: "warning",
            params: { percent: error, tolerance },
            text: `The display shows ${told(Math.abs(error))} % ${error > 0 ? "more" : "less"} than was measured, beyond ${told(tolerance)} %: the controller ${error > 0 ? "puts on less" : "puts on more"} than it is set to. Correct the meter number and check again.`,
            source: "common practice, no source",
          },
        ],
  };
};
