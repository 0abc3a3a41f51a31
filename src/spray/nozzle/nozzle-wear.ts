import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  fail,
  numberIn,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { type Carrier, carried, inSystemOf, positive, type Share, share, type Time } from "../inputs.js";

/** One nozzle against its rated flow. */
export interface NozzleWear<S extends string> {
  readonly type: "nozzle-wear";
  readonly version: 1;
  readonly flow: Quantity<"volume/time", S>;
  /** How far it lies above the rated flow; negative where below. */
  readonly fromRated: Share;
  readonly verdict: "keep" | "clean" | "replace";
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/**
 * One nozzle against its rated flow: more than `aboveRated` over it is worn, more than `belowRated` under it is plugged
 * or at less pressure. For a whole boom use {@link nozzleCheck}, which also sees uneven ones.
 *
 * @param input - `caught`, above zero, in `time`; `rated` flow at the pressure of the test, of the same carrier;
 * `aboveRated`, 10 % where left out (Ohio State University Extension); `belowRated`, 10 % where left out (common
 * practice, no source)
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: Ohio State University Extension, see {@link nozzleLimits}; teaching slides on nozzles and pumps (replace
 * where the flow is more than 10 % above that of a new one).
 *
 * @example
 * ```ts
 * import { nozzleWear, quantity } from "ratewright";
 * const one = nozzleWear({
 *   caught: quantity(58, "fl oz", "water"),
 *   time: quantity(1, "min"),
 *   rated: quantity(0.4, "gal/min", "water"),
 * });
 * Number(one.fromRated.in("%").toFixed(1)); // => 13.3
 * one.verdict; // => "replace"
 * ```
 */
export const nozzleWear = <S extends Carrier>(input: {
  readonly caught: Quantity<"volume", S>;
  readonly time: Time;
  readonly rated: Quantity<"volume/time", NoInfer<S>>;
  readonly aboveRated?: Share;
  readonly belowRated?: Share;
}): NozzleWear<S> => {
  const given = expectFields(input, ["caught", "time", "rated", "aboveRated", "belowRated"]);
  const limit = (name: "aboveRated" | "belowRated"): number =>
    given[name] === undefined ? 10 : share(given[name], name, 1).in("%");
  const { caught, time, rated, aboveRated, belowRated } = allOf({
    caught: () => carried(input.caught, "caught", "volume"),
    time: () => positive(given.time, "time", "time"),
    rated: () => carried(input.rated as Quantity<"volume/time", S>, "rated", "volume/time"),
    aboveRated: () => limit("aboveRated"),
    belowRated: () => limit("belowRated"),
  });
  if (rated.of !== caught.of)
    fail("substance/mismatch", "rated", rated, `a flow of ${caught.of}, as was caught`);
  const perMinute = caught.in("L") / time.in("min");
  const flow = inSystemOf(quantityOf<"volume/time", S>(perMinute, "L/min", caught.of, "caught"), caught);
  const fromRated = 100 * (numberIn(flow, rated.unit) / rated.value - 1);
  return {
    type: "nozzle-wear",
    version: 1,
    flow,
    fromRated: quantity(fromRated, "%"),
    verdict: exceeds(fromRated, aboveRated) ? "replace" : exceeds(-fromRated, belowRated) ? "clean" : "keep",
    checked: ["the flow against the rated flow"],
    notChecked: ["the shape of the fan, which a catch does not show", "the pressure at the nozzle"],
  };
};
