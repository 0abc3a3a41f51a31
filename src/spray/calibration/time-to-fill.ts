import { allOf, expectFields, fail, type Quantity, quantity } from "../../quantity/index.js";
import { type Carrier, carried, type Time } from "../inputs.js";

/**
 * How long it takes to fill a jug at a flow, `t = V / q`: the time to watch for on the stop-watch when the wanted flow is
 * known. The way back is `volume.per(time)`.
 *
 * @param input - `volume` of the jug and `flow`, of the same, both more than zero
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: definition.
 *
 * @example
 * ```ts
 * import { quantity, timeToFill } from "ratewright";
 * timeToFill({ volume: quantity(1, "qt", "water"), flow: quantity(0.5, "gal/min", "water") }).in("s"); // => 30
 * ```
 */
export const timeToFill = <S extends Carrier>(input: {
  readonly volume: Quantity<"volume", S>;
  readonly flow: Quantity<"volume/time", NoInfer<S>>;
}): Time => {
  const given = expectFields(input, ["volume", "flow"]);
  const { volume, flow } = allOf({
    volume: () => carried(input.volume, "volume", "volume"),
    flow: () => carried(given.flow as Quantity<"volume/time", S>, "flow", "volume/time"),
  });
  if (volume.of !== flow.of)
    fail("substance/mismatch", "flow", flow, `a flow of ${volume.of}, as the jug holds`);
  return quantity((volume.in("L") / flow.in("L/min")) * 60, "s");
};
