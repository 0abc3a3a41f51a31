import { addDays, type DailySeries, seriesDay } from "../../calendar/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  frozen,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import {
  airRule,
  type DiseaseOutlook,
  expectPercent,
  humidityRule,
  noDiagnosis,
  weatherSeries,
} from "./outlook.js";

const paper: Citation = /* @__PURE__ */ frozen({
  title: "Development and field validation of a brown patch warning model for perennial ryegrass turf",
  publisher: "Phytopathology 86(4), 385-390 (Fidanza, Dernoeden and Grybauskas)",
  year: 1996,
  where: "abstract, model E2",
});

const indexOf = (humidity: number, celsius: number): number =>
  -21.5 + 0.15 * humidity + 1.4 * celsius - 0.033 * celsius * celsius;

/**
 * How much the weather of a day favors brown patch: `E = -21.5 + 0.15 RH + 1.4 T - 0.033 T^2`, a warning from 6 on.
 *
 * - `RH` mean relative humidity of the day in percent, `T` lowest air temperature of the day in °C
 *
 * Found for perennial ryegrass in Maryland, where it foretold outbreaks with 85 % accuracy over three years. Kentucky fits
 * better with a warning from 5 on. A parabola in `T`: it falls again above 21.2 °C. Favorable weather is not a diagnosis.
 *
 * @param input.meanHumidity - `RH`
 * @param input.minimumTemperature - `T`
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: M. A. Fidanza, P. H. Dernoeden and A. P. Grybauskas, Phytopathology 86 (1996), 385-390, abstract; University of
 * Kentucky, predictive models for turfgrass diseases (the same equation; 5). One catalog prints the first plus as plus-minus.
 *
 * @example
 * ```ts
 * import { brownPatchIndex, quantity } from "ratewright";
 * const night = { meanHumidity: quantity(90, "%"), minimumTemperature: quantity(20, "°C") };
 * Number(brownPatchIndex(night).toFixed(1)); // => 6.8
 * ```
 */
export const brownPatchIndex = (input: {
  readonly meanHumidity: Quantity<"1", "none">;
  readonly minimumTemperature: Quantity<"temperature", "none">;
}): number => {
  const fields = expectFields(input, ["meanHumidity", "minimumTemperature"]);
  const { humidity, celsius } = allOf({
    humidity: () =>
      fields.meanHumidity === undefined
        ? fail("missing", "meanHumidity", undefined, "the mean relative humidity of the day")
        : expectPercent(fields.meanHumidity, "meanHumidity"),
    celsius: () => {
      if (fields.minimumTemperature === undefined) {
        return fail("missing", "minimumTemperature", undefined, "the lowest air temperature of the day");
      }
      const kind = { dimension: "temperature", of: "none" } as const;
      const t = expectQuantity(fields.minimumTemperature, kind, "minimumTemperature");
      const c = t.in("°C");
      return c >= airRule.min && c <= airRule.max
        ? c
        : outOfRange("minimumTemperature", t, { min: airRule.min, max: airRule.max, unit: "°C" });
    },
  });
  return indexOf(humidity, celsius) + 0;
};

/**
 * The brown patch index of each day of a record ({@link brownPatchIndex}) against a warning level.
 *
 * @param input.humidity - mean relative humidity of each day
 * @param input.minimum - lowest air temperature of each day
 * @param input.action - 6 where it is left out, as published; 5 for Kentucky
 * @throws RatewrightError what `dailySeries` throws, `unit/mismatch`, `range` with paths such as `humidity.values[3]`
 * Source: as for {@link brownPatchIndex}.
 *
 * @example
 * ```ts
 * import { brownPatchOutlook, dailySeries } from "ratewright";
 * const day = { start: "2026-07-01", source: "station at the depot" } as const;
 * const outlook = brownPatchOutlook({
 *   humidity: dailySeries({ ...day, unit: "%", what: "mean relative humidity", values: [72, 85, null] }),
 *   minimum: dailySeries({ ...day, unit: "°F", what: "lowest air temperature", values: [60, 70, 71] }),
 * });
 * outlook.days.map(({ atOrAboveAction }) => atOrAboveAction); // => [false, true, null]
 * ```
 */
export const brownPatchOutlook = (input: {
  readonly humidity: DailySeries;
  readonly minimum: DailySeries;
  readonly action?: number;
}): DiseaseOutlook => {
  const fields = expectFields(input, ["humidity", "minimum", "action"]);
  const { humidity, minimum, action } = allOf({
    humidity: () => weatherSeries(fields.humidity, "humidity", humidityRule),
    minimum: () => weatherSeries(fields.minimum, "minimum", airRule),
    action: () =>
      fields.action === undefined ? 6 : expectNumber(fields.action, "action", { min: 0, max: 9 }),
  });
  const days = minimum.values.map((celsius, i) => {
    const date = addDays(minimum.start, i);
    const percent = seriesDay(humidity, date) ?? null;
    const value = celsius === null || percent === null ? null : indexOf(percent, celsius) + 0;
    return { date, value, atOrAboveAction: value === null ? null : value >= action - 1e-9 };
  });
  return {
    type: "disease-outlook",
    version: 1,
    disease: "brown patch",
    measure: "index",
    action,
    days,
    unknownDays: days.filter(({ value }) => value === null).length,
    findings: [noDiagnosis("brown patch")],
    source: { ...paper },
  };
};
