import { dimensionDue } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  fail,
  likeQuantity,
  numberIn,
  plainCopy,
  type Quantity,
} from "../../quantity/index.js";
import { type Carrier, carriedOf, type Pressure, positive } from "../inputs.js";

/** What the pressure changes: the flow of a nozzle, or the volume per area at one speed. */
export type Output = "volume/time" | "volume/area";

/** An output or a pressure by the square-root rule, and what the rule cannot tell. */
export interface ByPressure<Q> {
  readonly type: "output-at-pressure";
  readonly version: 1;
  readonly value: Q;
  readonly notChecked: readonly string[];
}

const unchecked = (): readonly string[] => [
  "whether the tip is rated for this pressure: no range was given (flowAtPressure takes one)",
  "the droplet size, which the pressure changes",
];

/**
 * What comes out at another pressure by the square-root rule, `q2 = q1 sqrt(P2 / P1)`: of one nozzle, or of a whole
 * sprayer as a volume per area at the same speed. No range of pressures is asked for, and none is checked; the result
 * says so. Where the range of the tip is known, {@link flowAtPressure} holds it.
 *
 * @param input - `output` at `from`, wanted at `to`; all more than zero
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: Iowa State University Extension, Crop News 844; teaching slides on nozzles and pumps (4 times the pressure
 * for twice the flow).
 *
 * @example
 * ```ts
 * import { outputAtPressure, quantity } from "ratewright";
 * const more = outputAtPressure({
 *   output: quantity(20, "gal/acre", "spray"),
 *   from: quantity(40, "psi"),
 *   to: quantity(62.5, "psi"),
 * });
 * more.value.in("gal/acre"); // => 25
 * ```
 */
export const outputAtPressure = <D extends Output, S extends Carrier>(input: {
  readonly output: Quantity<D, S>;
  readonly from: Pressure;
  readonly to: Pressure;
}): ByPressure<Quantity<D, S>> => {
  const given = plainCopy(input);
  expectFields(given, ["output", "from", "to"]);
  const { from, to } = allOf({
    output: () => carriedOf(given.output, "output"),
    from: () => positive(given.from, "from", "pressure"),
    to: () => positive(given.to, "to", "pressure"),
  });
  return {
    type: "output-at-pressure",
    version: 1,
    value: likeQuantity(given.output, given.output.value * Math.sqrt(to.in("kPa") / from.in("kPa"))),
    notChecked: unchecked(),
  };
};

/**
 * The pressure for another output by the square-root rule, `P2 = P1 (q2 / q1)^2`: the way back from
 * {@link outputAtPressure}, for a flow or for a volume per area at the same speed. No range is checked.
 *
 * @param input - `output` at `from`; `wanted`, of the same kind; all more than zero
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: as {@link outputAtPressure}.
 *
 * @example
 * ```ts
 * import { pressureForOutput, quantity } from "ratewright";
 * pressureForOutput({
 *   output: quantity(20, "gal/acre", "spray"),
 *   from: quantity(40, "psi"),
 *   wanted: quantity(25, "gal/acre", "spray"),
 * }).value.in("psi"); // => 62.5
 * ```
 */
export const pressureForOutput = <D extends Output, S extends Carrier>(input: {
  readonly output: Quantity<D, S>;
  readonly from: Pressure;
  readonly wanted: Quantity<NoInfer<D>, NoInfer<S>>;
}): ByPressure<Pressure> => {
  const given = expectFields(input, ["output", "from", "wanted"]);
  const { output, from, wanted } = allOf({
    output: () => carriedOf(given.output, "output"),
    from: () => positive(given.from, "from", "pressure"),
    wanted: () => carriedOf(given.wanted, "wanted"),
  });
  if (wanted.of !== output.of) fail("substance/mismatch", "wanted", wanted, `an output of ${output.of}`);
  if (wanted.dimension !== output.dimension)
    dimensionDue("unit/mismatch", "wanted", wanted, output.dimension, ", as the output is");
  const ratio = numberIn(wanted, output.unit) / output.value;
  return {
    type: "output-at-pressure",
    version: 1,
    value: likeQuantity(from, from.value * ratio ** 2),
    notChecked: unchecked(),
  };
};
