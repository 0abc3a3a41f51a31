import {
  expectFields,
  expectNumber,
  fail,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { expectTemperature } from "../expect-temperature.js";
import type { HeatRule } from "./degree-day-method.js";
import {
  type BaseTemperature,
  checkedModel,
  type DegreeDayModel,
  type DegreeDaysOf,
} from "./degree-day-model.js";
import { heatOfDay, needsNextDay } from "./degree-days-of-day.js";

const on = (threshold: BaseTemperature, scale: "°C" | "°F"): number =>
  quantity(threshold.value, threshold.unit).in(scale);

/** The rule of a model that has been checked, on a scale. */
export const ruleOn = (model: DegreeDayModel, scale: "°C" | "°F"): HeatRule => ({
  method: model.method,
  base: on(model.base, scale),
  upper: model.upper === undefined ? Number.POSITIVE_INFINITY : on(model.upper, scale),
  cutoff: model.cutoff ?? "horizontal",
});

/** Degree-days of a model, from a number on one scale. */
export const heatOf = <Id extends string>(
  value: number,
  scale: "°C" | "°F",
  id: Id,
): Quantity<"degree-days", DegreeDaysOf<Id>> =>
  quantityOf<"degree-days", DegreeDaysOf<Id>>(value, `${scale} d`, `degree-days:${id}`, "degreeDays");

/**
 * The degree-days of one day by the method of a model. `Tx` and `Tn` are the highest and lowest
 * temperature of the day, `m = (Tx + Tn) / 2` its mean, `b` the base, `U` the upper threshold; all in
 * °C or all in °F, and the result in °C d or °F d.
 *
 * - simple average: `max(0, m - b)`; with an upper threshold `max(0, min(m, U) - b)`
 * - substitution: `(max(Tx, b) + max(Tn, b)) / 2 - b`
 * - clamped average: both temperatures held between `b` and `U`, then the mean less `b`
 * - Met Office cases: `m - b` where `Tn >= b`; 0 where `Tx <= b`; else `(Tx - b) / 2 - (b - Tn) / 4`
 *   where `m >= b` and `(Tx - b) / 4` where not
 * - single sine: `S(b) = m - b` where `Tn >= b`, 0 where `Tx <= b`, else
 *   `((m - b) (π/2 - t) + a cos t) / π` with `a = (Tx - Tn) / 2` and `t = asin((b - m) / a)`
 * - single triangle: the same cases, between them `S(b) = (Tx - b)² / (2 (Tx - Tn))`
 * - double sine and double triangle: the mean of that for `Tn, Tx` and for `Tx` with the lowest
 *   temperature of the next day
 *
 * Above `U` a sine or triangle counts `S(b) - S(U)` with the horizontal cutoff, `S(b) - 2 S(U)` with the
 * intermediate one, and `S(b) - S(U) - (U - b) f` with the vertical one, `f` being the part of the day
 * above `U`. With the intermediate cutoff a hot day may count less than 0 unless it is floored; a double
 * method floors each half.
 *
 * For one day without an upper threshold, simple average <= triangle <= sine <= substitution, whatever
 * the day: of curves with one mean, the one that is longer near its extremes has more above any level.
 * Upper thresholds break the order.
 *
 * The result is in °F d where the maximum is given in °F, else in °C d; a degree-day difference has no
 * offset, 1 °C d = 1.8 °F d. Its substance is the model.
 *
 * @param input.nextMin - the lowest temperature of the next day, which the double methods need
 * @throws RatewrightError `unit/mismatch`, `conflict` where the minimum lies above the maximum; `missing`
 * where the method needs `nextMin`; `range` for a temperature that neither air nor soil can have, such as a
 * code of -999; `type`, `not-finite`; what {@link degreeDayModel} throws for the model
 * Source: G. S. McMaster and W. W. Wilhelm, "Growing degree-days: one equation, two interpretations",
 * Agricultural and Forest Meteorology 87 (1997), 291-300 (simple average is Method 1, substitution
 * Method 2); Iowa State University, Agronomy 541, lesson 2b (clamped); Met Éireann, degree-day
 * definitions (cases); University of California statewide IPM program, glossary of degree-day terms (what
 * sine, triangle, halves and cutoffs are). Closed forms: F. G. Zalom et al., "Degree-days: the calculation
 * and use of heat units in pest management", University of California 1983, tables 3 to 6, as they stand in
 * a public implementation of them (horizontal cutoff); checked for three cutoffs against figures of the
 * University of California and against numerical integration.
 *
 * @example
 * ```ts
 * import { degreeDayModel, degreeDays, quantity } from "ratewright";
 * const day = { max: quantity(75, "°F"), min: quantity(27, "°F") };
 * const base = { value: 50, unit: "°F" } as const;
 * const simple = degreeDayModel({ method: "simple average", base, sensor: "air" });
 * degreeDays({ ...day, model: simple }).in("°F d"); // => 1
 * const substitution = degreeDayModel({ method: "substitution", base, sensor: "air" });
 * degreeDays({ ...day, model: substitution }).in("°F d"); // => 12.5
 * const sine = degreeDayModel({ method: "single sine", base, sensor: "air" });
 * Number(degreeDays({ ...day, model: sine }).in("°F d").toFixed(3)); // => 8.146
 * ```
 */
export const degreeDays = <Id extends string>(input: {
  readonly max: Quantity<"temperature", "none">;
  readonly min: Quantity<"temperature", "none">;
  readonly nextMin?: Quantity<"temperature", "none">;
  readonly model: DegreeDayModel<Id>;
}): Quantity<"degree-days", DegreeDaysOf<Id>> => {
  expectFields(input, ["max", "min", "nextMin", "model"]);
  const max = expectTemperature(input.max, "max");
  const min = expectTemperature(input.min, "min");
  const model = checkedModel(input.model, "model");
  const scale = max.unit === "°F" ? "°F" : "°C";
  const [high, low] = [max.in(scale), min.in(scale)];
  if (low > high) fail("conflict", "min", min, `not more than max, which is ${max}`);
  let next = low;
  if (needsNextDay(model.method)) {
    if (input.nextMin === undefined) {
      fail(
        "missing",
        "nextMin",
        input.nextMin,
        `the lowest temperature of the next day, for ${model.method}`,
      );
    }
    next = expectTemperature(input.nextMin, "nextMin").in(scale);
  }
  return heatOf(heatOfDay(ruleOn(model, scale), high, low, next), scale, model.id);
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
  expectFields(input, ["value", "unit", "model"]);
  const value = expectNumber(input.value, "value", { min: 0 });
  if (input.unit !== "°C d" && input.unit !== "°F d")
    fail("unit/unknown", "unit", input.unit, "°C d or °F d");
  return heatOf(value, input.unit === "°F d" ? "°F" : "°C", checkedModel(input.model, "model").id);
};
