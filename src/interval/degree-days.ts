import {
  expectNumber,
  expectQuantity,
  fail,
  type Quantity,
  quantity,
  quantityOf,
} from "../quantity/index.js";
import { dayHeat } from "./accumulate.js";
import {
  type BaseTemperature,
  checkedModel,
  type DegreeDayModel,
  type DegreeDaysOf,
} from "./degree-day-model.js";

/** The base of a model on a scale. */
export const baseOn = (base: BaseTemperature, scale: "°C" | "°F"): number =>
  quantity(base.value, base.unit).in(scale);

/** Degree-days of a model, from a number on one scale. */
export const heatOf = <Id extends string>(
  value: number,
  scale: "°C" | "°F",
  id: Id,
): Quantity<"degree-days", DegreeDaysOf<Id>> =>
  quantityOf(value, `${scale} d`, `degree-days:${id}`, "degreeDays") as unknown as Quantity<
    "degree-days",
    DegreeDaysOf<Id>
  >;

/**
 * The degree-days of one day by the simple average, `D = max(0, (Tx + Tn) / 2 - b)`, where `Tx` and
 * `Tn` are the highest and lowest temperature of the day and `b` the base of the model. The floor is on
 * the mean: a day whose mean lies below the base counts 0, though it may have been above it for hours.
 *
 * The result is in °F d where the maximum is given in °F, else in °C d; a degree-day difference has no
 * offset, 1 °C d = 1.8 °F d. Its substance is the model.
 *
 * @throws RatewrightError `unit/mismatch`, `conflict` where the minimum lies above the maximum; `type`,
 * `not-finite`; what {@link degreeDayModel} throws for the model
 * Source: G. S. McMaster and W. W. Wilhelm, "Growing degree-days: one equation, two interpretations",
 * Agricultural and Forest Meteorology 87 (1997), 291-300, Method 1.
 *
 * @example
 * ```ts
 * import { degreeDayModel, degreeDays, quantity } from "ratewright";
 * const model = degreeDayModel({ method: "simple average", base: { value: 50, unit: "°F" }, sensor: "air" });
 * degreeDays({ max: quantity(74, "°F"), min: quantity(52, "°F"), model }).in("°F d"); // => 13
 * degreeDays({ max: quantity(60, "°F"), min: quantity(35, "°F"), model }).in("°F d"); // => 0
 * ```
 */
export const degreeDays = <Id extends string>(input: {
  readonly max: Quantity<"temperature", "none">;
  readonly min: Quantity<"temperature", "none">;
  readonly model: DegreeDayModel<Id>;
}): Quantity<"degree-days", DegreeDaysOf<Id>> => {
  const max = expectQuantity(input.max, { dimension: "temperature", of: "none" }, "max");
  const min = expectQuantity(input.min, { dimension: "temperature", of: "none" }, "min");
  const model = checkedModel(input.model, "model");
  const scale = max.unit === "°F" ? "°F" : "°C";
  const [high, low] = [max.in(scale), min.in(scale)];
  if (low > high) fail("conflict", "min", min, `not more than max, which is ${max}`);
  return heatOf(dayHeat(high, low, baseOn(model.base, scale)), scale, model.id);
};

/**
 * A number of degree-days of a model, as a source prints it: an interval or a threshold.
 *
 * @param input.value - zero or more
 * @throws RatewrightError `range`, `not-finite`, `unit/unknown`; what {@link degreeDayModel} throws
 *
 * @example
 * ```ts
 * import { degreeDayAmount, degreeDayModel } from "ratewright";
 * const model = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
 * degreeDayAmount({ value: 200, unit: "°C d", model }).in("°F d"); // => 360
 * ```
 */
export const degreeDayAmount = <Id extends string>(input: {
  readonly value: number;
  readonly unit: "°C d" | "°F d";
  readonly model: DegreeDayModel<Id>;
}): Quantity<"degree-days", DegreeDaysOf<Id>> => {
  const value = expectNumber(input.value, "value", { min: 0 });
  if (input.unit !== "°C d" && input.unit !== "°F d")
    fail("unit/unknown", "unit", input.unit, "°C d or °F d");
  return heatOf(value, input.unit === "°F d" ? "°F" : "°C", checkedModel(input.model, "model").id);
};
