import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  fail,
  numberIn,
  outOfRange,
  type Quantity,
  quantityOf,
  type RangeBounds,
} from "../../quantity/index.js";
import { type Carrier, carried, type Pressure, positive, type Speed } from "../inputs.js";

/** The pressures between which a tip works as rated. */
export interface PressureRange {
  /** Below it the fan collapses. */
  readonly lowest: Pressure;
  /** Above it the tip makes fines and wears. */
  readonly highest: Pressure;
}

/** What a tip is rated for: a flow at a pressure, and the pressures between which it holds. */
export interface RatedTip<S extends string> extends PressureRange {
  /** At `pressure`; ratings are of water. */
  readonly flow: Quantity<"volume/time", S>;
  readonly pressure: Pressure;
}

/** The readers of a pressure range at a path: for `allOf`. */
export const rangeReaders = (
  input: { readonly lowest?: unknown; readonly highest?: unknown },
  at: string,
): { readonly lowest: () => Pressure; readonly highest: () => Pressure } => ({
  lowest: () => positive(input.lowest, `${at}lowest`, "pressure"),
  highest: () => positive(input.highest, `${at}highest`, "pressure"),
});

/** Refuses a range that ends below its beginning. */
export const expectRising = ({ lowest, highest }: PressureRange, at: string): void => {
  if (exceeds(lowest.in("kPa"), highest.in("kPa"))) {
    fail("conflict", `${at}highest`, highest, `no less than the lowest pressure, ${lowest}`);
  }
};

/** Takes a rated tip, or throws with every problem. */
export const expectTip = <S extends Carrier>(input: RatedTip<S>, path: string): RatedTip<S> => {
  if (typeof input !== "object" || input === null) {
    fail("type", path, input, "a rated tip");
  }
  // A size with its rating, as ratedFlow gives it, is a rated tip too.
  const size = ["code", "color", "nominal", "reached"];
  expectFields(input, ["flow", "pressure", "lowest", "highest", ...size], path);
  if (input.lowest === undefined && input.highest === undefined) {
    const range = "the pressures between which the tip is rated, as its chart prints them";
    fail("missing", `${path}.lowest`, undefined, `${range}; outputAtPressure goes without them, and says so`);
  }
  const tip = allOf({
    flow: () => carried(input.flow, `${path}.flow`, "volume/time"),
    pressure: () => positive(input.pressure, `${path}.pressure`, "pressure"),
    ...rangeReaders(input, `${path}.`),
  });
  expectRising(tip, `${path}.`);
  return tip;
};

/** How far, as a share, a pressure may lie outside a limit and still count as on it. */
const guard = 1e-9;

/** Whether a pressure lies within what the tip is rated for. */
export const inRange = (tip: PressureRange, pressure: number): boolean =>
  pressure >= tip.lowest.in("kPa") * (1 - guard) && pressure <= tip.highest.in("kPa") * (1 + guard);

const ratedRange = ({ lowest, highest }: PressureRange): RangeBounds => ({
  min: lowest.value,
  max: numberIn(highest, lowest.unit),
  unit: lowest.unit,
});
const ratedWords = "{}, the range the tip is rated for";

/**
 * The flow of a tip at another pressure, `q2 = q1 sqrt(P2 / P1)`, in the unit of the rated flow. To double
 * the flow takes four times the pressure.
 *
 * It holds for an orifice in turbulent flow, within the pressures that the tip is rated for: a pressure
 * outside is an error. The pressure is that at the nozzle, not at the pump.
 *
 * @throws RatewrightError `range` outside the rated pressure; `missing`, `conflict`, `unit/mismatch`,
 * `substance/mismatch`, `type`
 * Source: Iowa State University Extension, Crop News 844; teaching slides on nozzles and pumps (4 times the
 * pressure for twice the flow).
 *
 * @example
 * ```ts
 * import { flowAtPressure, quantity } from "ratewright";
 * const tip = {
 *   flow: quantity(0.4, "gal/min", "water"),
 *   pressure: quantity(40, "psi"),
 *   lowest: quantity(15, "psi"),
 *   highest: quantity(60, "psi"),
 * };
 * Number(flowAtPressure(tip, quantity(22.5, "psi")).in("gal/min").toFixed(4)); // => 0.3
 * flowAtPressure(tip, quantity(90, "psi")); // => throws range
 * ```
 */
export const flowAtPressure = <S extends Carrier>(
  tip: RatedTip<S>,
  pressure: Pressure,
): Quantity<"volume/time", S> => {
  const { rated, p } = allOf({
    rated: () => expectTip(tip, "tip"),
    p: () => positive(pressure, "pressure", "pressure"),
  });
  if (!inRange(rated, p.in("kPa"))) outOfRange("pressure", p, ratedRange(rated), ratedWords);
  return scaled(rated.flow, Math.sqrt(p.in("kPa") / rated.pressure.in("kPa")), "pressure");
};

/**
 * The pressure at which a tip gives a flow, `P2 = P1 (q2 / q1)^2`, in the unit of the rated pressure.
 *
 * @throws RatewrightError `range` for a flow that the tip gives only outside its rated pressure; `missing`,
 * `conflict`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: as {@link flowAtPressure}.
 *
 * @example
 * ```ts
 * import { pressureForFlow, quantity } from "ratewright";
 * const tip = {
 *   flow: quantity(0.4, "gal/min", "water"),
 *   pressure: quantity(40, "psi"),
 *   lowest: quantity(15, "psi"),
 *   highest: quantity(60, "psi"),
 * };
 * Number(pressureForFlow(tip, quantity(0.3, "gal/min", "water")).in("psi").toFixed(4)); // => 22.5
 * ```
 */
export const pressureForFlow = <S extends Carrier>(
  tip: RatedTip<S>,
  flow: Quantity<"volume/time", NoInfer<S>>,
): Pressure => {
  const { rated } = allOf({
    rated: () => expectTip(tip, "tip"),
    flow: () => carried(flow, "flow", "volume/time"),
  });
  const wanted = positive(flow, "flow", "volume/time", rated.flow.of as Carrier);
  const ratio = numberIn(wanted, rated.flow.unit) / rated.flow.value;
  const pressure = scaled(rated.pressure, ratio ** 2, "flow");
  if (!inRange(rated, pressure.in("kPa"))) {
    const at = (limit: Pressure): number =>
      rated.flow.value * Math.sqrt(limit.in("kPa") / rated.pressure.in("kPa"));
    outOfRange(
      "flow",
      wanted,
      { min: at(rated.lowest), max: at(rated.highest), unit: rated.flow.unit },
      "{}, at the pressures for which the tip is rated",
    );
  }
  return pressure;
};

/**
 * The pressure that keeps the volume per area when the ground speed changes, `P2 = P1 (v2 / v1)^2`: a
 * quarter more speed takes 56 % more pressure. For more than a trim, change the tip.
 *
 * @param input - `pressure` at `from`, wanted at `to`; `lowest` and `highest` of the tip
 * @throws RatewrightError `range` outside the rated pressure; `conflict` where `highest` lies below `lowest`;
 * `missing`, `unit/mismatch`
 * Source: Iowa State University Extension, Crop News 844 (12 to 15 mph takes 40 to 63 psi).
 *
 * @example
 * ```ts
 * import { pressureForSpeed, quantity } from "ratewright";
 * pressureForSpeed({
 *   pressure: quantity(40, "psi"),
 *   from: quantity(12, "mi/h"),
 *   to: quantity(15, "mi/h"),
 *   lowest: quantity(15, "psi"),
 *   highest: quantity(90, "psi"),
 * }).in("psi"); // => 62.5
 * ```
 */
export const pressureForSpeed = (input: {
  readonly pressure: Pressure;
  readonly from: Speed;
  readonly to: Speed;
  readonly lowest: Pressure;
  readonly highest: Pressure;
}): Pressure => {
  expectFields(input, ["pressure", "from", "to", "lowest", "highest"]);
  const { pressure, from, to, lowest, highest } = allOf({
    pressure: () => positive(input.pressure, "pressure", "pressure"),
    from: () => positive(input.from, "from", "length/time"),
    to: () => positive(input.to, "to", "length/time"),
    ...rangeReaders(input, ""),
  });
  const tip = { lowest, highest };
  expectRising(tip, "");
  if (!inRange(tip, pressure.in("kPa"))) outOfRange("pressure", pressure, ratedRange(tip), ratedWords);
  const changed = scaled(pressure, (numberIn(to, from.unit) / from.value) ** 2, "to");
  if (!inRange(tip, changed.in("kPa"))) {
    const at = (limit: Pressure): number =>
      to.value * Math.sqrt(numberIn(limit, changed.unit) / changed.value);
    outOfRange(
      "to",
      to,
      { min: at(tip.lowest), max: at(tip.highest), unit: to.unit },
      `{}: the tip is rated from ${tip.lowest} to ${tip.highest}; this speed takes ${changed}`,
    );
  }
  return changed;
};

const scaled = <D extends string, S extends string>(
  q: Quantity<D, S>,
  by: number,
  path: string,
): Quantity<D, S> => quantityOf<D, S>(q.value * by, q.unit, q.of, path);
