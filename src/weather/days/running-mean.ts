import {
  type DailySeries,
  type DailyTemperatures,
  dailySeries,
  dailyTemperatures,
} from "../../calendar/index.js";
import { allOf, expectFields, fail } from "../../quantity/index.js";
import { checkedSeries, expectDays } from "./checked-series.js";

/**
 * The mean temperature of each day as half of the lowest and the highest: `(min + max) / 2`. A day that lacks one of the
 * two has none. The mean of hourly figures differs; a model that was fitted to one of them should get that one.
 *
 * @throws RatewrightError what `dailyTemperatures` throws, `type`
 * Source: common practice, no source.
 *
 * @example
 * ```ts
 * import { dailyMeans, dailyTemperatures } from "ratewright";
 * const week = dailyTemperatures({
 *   start: "2026-05-01", unit: "°F", sensor: "soil at 2 in", source: "probe at the depot", min: [52, 48, null], max: [60, 58, 61],
 * });
 * dailyMeans(week).values; // => [56, 53, null]
 * ```
 */
export const dailyMeans = (temperatures: DailyTemperatures): DailySeries => {
  const known = ["type", "version", "start", "unit", "min", "max", "sensor", "source"] as const;
  expectFields(temperatures, known, "temperatures");
  if (temperatures.type !== "daily-temperatures") {
    return fail("type", "temperatures", temperatures, "daily temperatures, made by dailyTemperatures");
  }
  const { start, unit, min, max, sensor, source } = dailyTemperatures(temperatures);
  return dailySeries({
    start,
    unit,
    what: `mean of lowest and highest temperature, ${sensor}`,
    source,
    values: min.map((low, i) => {
      const high = max[i];
      return typeof low === "number" && typeof high === "number" ? (low + high) / 2 : null;
    }),
  });
};

/**
 * The mean of each day and the days before it: a running mean over `days` days, as a series of the same days. The first
 * `days - 1` have none. A gap leaves every mean without a figure that it touches, unless `missing` says how many days of
 * each mean may lack one; then the mean is that of the days that are there.
 *
 * @param input.days - 1 to 366
 * @param input.missing - days of each mean that may lack a figure, fewer than `days`; 0 where it is left out
 * @throws RatewrightError `missing`, `range`, `type`; what `dailySeries` throws, with `series` before the path
 * Source: definition of the running (trailing) mean.
 *
 * @example
 * ```ts
 * import { dailySeries, runningMean } from "ratewright";
 * const soil = dailySeries({
 *   start: "2026-04-01", unit: "°F", what: "soil at 1 in", source: "probe at the depot", values: [50, 53, 56, null, 60, 61],
 * });
 * runningMean({ series: soil, days: 3 }).values; // => [null, null, 53, null, null, null]
 * runningMean({ series: soil, days: 3, missing: 1 }).values; // => [null, null, 53, 54.5, 58, 60.5]
 * ```
 */
export const runningMean = (input: {
  readonly series: DailySeries;
  readonly days: number;
  readonly missing?: number;
}): DailySeries => {
  const fields = expectFields(input, ["series", "days", "missing"]);
  const { series, days, missing } = allOf({
    series: () => checkedSeries(fields.series, "series"),
    days: () => expectDays(fields.days, "days", 1, 366),
    missing: () => (fields.missing === undefined ? 0 : expectDays(fields.missing, "missing", 0, 365)),
  });
  if (missing >= days) fail("conflict", "missing", missing, `fewer than days, which is ${days}`);
  return dailySeries({
    start: series.start,
    unit: series.unit,
    what: `${days}-day mean of ${series.what}`,
    source: series.source,
    values: runningMeanValues(series.values, days, missing),
  });
};

/** Running means of a list. Each is summed afresh: a running sum would carry its rounding along. */
const runningMeanValues = (
  values: readonly (number | null)[],
  days: number,
  missing: number,
): (number | null)[] =>
  values.map((_, end) => {
    if (end < days - 1) return null;
    const there = values.slice(end - days + 1, end + 1).filter((value): value is number => value !== null);
    return there.length < days - missing
      ? null
      : there.reduce((sum, value) => sum + value, 0) / there.length + 0;
  });
