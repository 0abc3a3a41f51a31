import { addDays, type CivilDate, type DailySeries, seriesDay } from "../../calendar/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectQuantity,
  fail,
  frozen,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { runningMean } from "../../weather/index.js";
import {
  airRule,
  type DiseaseOutlook,
  expectPercent,
  humidityRule,
  noDiagnosis,
  weatherSeries,
} from "./outlook.js";

const paper: Citation = /* @__PURE__ */ frozen({
  title:
    "Development and validation of a weather-based warning system to advise fungicide applications to control dollar spot on turfgrass",
  publisher: "D. L. Smith, J. P. Kerns et al., PLOS ONE 13(3), e0194216",
  year: 2018,
  where: "abstract (five-day means, 20 %); equation as a public notebook repeats it from the paper",
  url: "https://journals.plos.org/plosone/article?id=10.1371/journal.pone.0194216",
});

/** How many days the means of the model go over. */
const meanDays = 5;

const percentOf = (celsius: number, humidity: number): number =>
  100 / (1 + Math.exp(-(-11.4041 + 0.0894 * humidity + 0.1932 * celsius)));

/**
 * The probability of dollar spot by the weather of five days: `p = 1 / (1 + exp(-L))`,
 * `L = -11.4041 + 0.0894 RH + 0.1932 T`.
 *
 * - `RH` mean relative humidity of the five days in percent, `T` mean air temperature of the five days in °C, both means of
 *   daily means
 *
 * Found in Wisconsin and Oklahoma and tried on creeping bentgrass in six states. It knows nothing of dew removal, nitrogen,
 * grass or earlier fungicides. Favorable weather is not a diagnosis. The line goes on beyond any weather it was tried in: a mean
 * near freezing or above 35 °C asks for your own judgment.
 *
 * @param input.meanTemperature - `T`
 * @param input.meanHumidity - `RH`
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: D. L. Smith, J. P. Kerns et al., PLOS ONE 13(3), 2018, e0194216; the coefficients as a public notebook repeats them.
 *
 * @example
 * ```ts
 * import { dollarSpotProbability, quantity } from "ratewright";
 * const days = { meanTemperature: quantity(20, "°C"), meanHumidity: quantity(80, "%") };
 * Number(dollarSpotProbability(days).in("%").toFixed(1)); // => 40.4
 * ```
 */
export const dollarSpotProbability = (input: {
  readonly meanTemperature: Quantity<"temperature", "none">;
  readonly meanHumidity: Quantity<"1", "none">;
}): Quantity<"1", "none"> => {
  const fields = expectFields(input, ["meanTemperature", "meanHumidity"]);
  const { celsius, humidity } = allOf({
    celsius: () => {
      if (fields.meanTemperature === undefined) {
        return fail("missing", "meanTemperature", undefined, "the mean air temperature of five days");
      }
      const t = expectQuantity(
        fields.meanTemperature,
        { dimension: "temperature", of: "none" },
        "meanTemperature",
      );
      const c = t.in("°C");
      return c >= airRule.min && c <= airRule.max
        ? c
        : outOfRange("meanTemperature", t, { min: airRule.min, max: airRule.max, unit: "°C" });
    },
    humidity: () =>
      fields.meanHumidity === undefined
        ? fail("missing", "meanHumidity", undefined, "the mean relative humidity of five days")
        : expectPercent(fields.meanHumidity, "meanHumidity"),
  });
  return quantity(percentOf(celsius, humidity), "%");
};

/**
 * The probability of dollar spot for each day of a record, from the means of that day and the four before it
 * ({@link dollarSpotProbability}), against an action level. The first four days, and every day with a gap in its five, have
 * none.
 *
 * @param input.temperature - mean air temperature of each day
 * @param input.humidity - mean relative humidity of each day
 * @param input.action - 20 % where it is left out: the highest level that did as well as sprays by the calendar over all
 * sites of the study. 30 and 40 % have been tried since
 * @throws RatewrightError what `dailySeries` throws, `unit/mismatch`, `range` with paths such as `humidity.values[3]`
 * Source: as for {@link dollarSpotProbability}.
 *
 * @example
 * ```ts
 * import { dailySeries, dollarSpotOutlook } from "ratewright";
 * const day = { start: "2026-06-01", source: "station at the depot" } as const;
 * const outlook = dollarSpotOutlook({
 *   temperature: dailySeries({ ...day, unit: "°F", what: "mean air temperature", values: [64, 66, 68, 70, 72, 75] }),
 *   humidity: dailySeries({ ...day, unit: "%", what: "mean relative humidity", values: [70, 72, 75, 80, 78, 85] }),
 * });
 * outlook.days.map(({ value }) => value && Number(value.toFixed(1))); // => [null, null, null, null, 30.3, 41.8]
 * outlook.days[5]?.atOrAboveAction; // => true
 * outlook.findings[0]?.code; // => "disease/no-diagnosis"
 * ```
 */
export const dollarSpotOutlook = (input: {
  readonly temperature: DailySeries;
  readonly humidity: DailySeries;
  readonly action?: Quantity<"1", "none">;
}): DiseaseOutlook => {
  const fields = expectFields(input, ["temperature", "humidity", "action"]);
  const { temperature, humidity, action } = allOf({
    temperature: () => weatherSeries(fields.temperature, "temperature", airRule),
    humidity: () => weatherSeries(fields.humidity, "humidity", humidityRule),
    action: () => (fields.action === undefined ? 20 : expectPercent(fields.action, "action")),
  });
  const warm = runningMean({ series: temperature, days: meanDays });
  const humid = runningMean({ series: humidity, days: meanDays });
  const days = warm.values.map((celsius, i) => {
    const date: CivilDate = addDays(warm.start, i);
    const percent = seriesDay(humid, date) ?? null;
    const value = celsius === null || percent === null ? null : percentOf(celsius, percent);
    return { date, value, atOrAboveAction: value === null ? null : value >= action - 1e-9 };
  });
  return {
    type: "disease-outlook",
    version: 1,
    disease: "dollar spot",
    measure: "probability in percent",
    action,
    days,
    unknownDays: days.filter(({ value }) => value === null).length,
    findings: [noDiagnosis("dollar spot")],
    source: { ...paper },
  };
};
