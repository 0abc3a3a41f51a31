import { fail, outOfRange, shown } from "../quantity/index.js";
import { type CivilDate, dateOfNumber, dayNumberOf } from "./civil-date.js";
import type { DailySeries, DailyValues } from "./daily-series.js";
import type { DailyTemperatures } from "./daily-temperatures.js";
import { firstDay, lastDay } from "./day-number.js";

type Lists = readonly (readonly [name: string, list: DailyValues])[];

/** The lists of values of a series, by name; read again, for a series may come back from a store. */
const listsOf = (series: unknown): Lists => {
  const { type, values, min, max } = Object(series) as Readonly<Record<string, unknown>>;
  const lists =
    type === "daily-series"
      ? [["values", values] as const]
      : type === "daily-temperatures"
        ? [["min", min] as const, ["max", max] as const]
        : fail("type", "series", series, "a daily series or daily temperatures, as dailySeries gives");
  return lists.map(([name, list]) => {
    const path = `series.${name}`;
    if (!Array.isArray(list)) return fail("type", path, list, "a list of numbers and null");
    return list.length > lastDay - firstDay
      ? outOfRange(path, list, { max: lastDay - firstDay, count: "days" }, "{}: the years 0001 to 9999")
      : ([name, list as DailyValues] as const);
  });
};

/** The figure of a day; `null` for a gap. */
const figureOf = (list: DailyValues, at: number, name: string): number | null => {
  const value: unknown = list[at];
  if (value === null || value === undefined) return null;
  return typeof value === "number" && Number.isFinite(value)
    ? value + 0
    : fail("not-finite", `series.${name}[${at}]`, shown(value), "a number, or null for a day without one");
};

const lengthOf = (lists: Lists): number => Math.max(...lists.map(([, list]) => list.length));

/**
 * The date of the last day of a series.
 *
 * @throws RatewrightError `date`, `type`; `not-finite` for a figure of a stored series that is no number
 *
 * @example
 * ```ts
 * import { dailySeries, seriesEnd } from "ratewright";
 * seriesEnd(
 *   dailySeries({ start: "2026-05-31", unit: "mm", what: "rain", source: "depot", values: [0, 3] }),
 * ); // => "2026-06-01"
 * ```
 */
export const seriesEnd = (series: DailySeries | DailyTemperatures): CivilDate =>
  dateOfNumber(lengthOf(listsOf(series)) - 1 + dayNumberOf(series.start, "series.start"), "series");

/** The temperatures of one day; `null` where the series has a gap. */
export interface DayTemperatures {
  readonly min: number | null;
  readonly max: number | null;
}

/**
 * What a series says of one day, in the unit of the series: `null` where it has a gap, `undefined`
 * where the day lies before its start or after its end.
 *
 * @throws RatewrightError `date`, `type`; `not-finite` for a figure of a stored series that is no number
 *
 * @example
 * ```ts
 * import { dailyTemperatures, seriesDay } from "ratewright";
 * const days = dailyTemperatures({
 *   start: "2026-05-01", unit: "°F", sensor: "air", source: "depot", min: [52, null], max: [74, 70],
 * });
 * seriesDay(days, "2026-05-02"); // => { min: null, max: 70 }
 * seriesDay(days, "2026-05-03"); // => undefined
 * ```
 */
export function seriesDay(series: DailySeries, date: CivilDate): number | null | undefined;
export function seriesDay(series: DailyTemperatures, date: CivilDate): DayTemperatures | undefined;
export function seriesDay(
  series: DailySeries | DailyTemperatures,
  date: CivilDate,
): number | null | undefined | DayTemperatures {
  const at = dayNumberOf(date, "date") - dayNumberOf(series?.start, "series.start");
  const lists = listsOf(series);
  if (at < 0 || at >= lengthOf(lists)) return undefined;
  const [first, second] = lists.map(([name, list]) => figureOf(list, at, name));
  return second === undefined ? first : { min: first as number | null, max: second };
}

/** Days that follow one another and lack a value. */
export interface Gap {
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly days: number;
  /** Which lists lack a value on one of these days: `values`, or `min` and `max`. */
  readonly missing: readonly string[];
}

/**
 * The gaps of a series, in order. What lies before its start and after its end is no gap of it.
 *
 * @throws RatewrightError `date`, `type`; `not-finite` for a figure of a stored series that is no number
 *
 * @example
 * ```ts
 * import { dailyTemperatures, gapsOf } from "ratewright";
 * const days = dailyTemperatures({
 *   start: "2026-05-01", unit: "°C", sensor: "air", source: "depot",
 *   min: [8, null, 9, 7], max: [19, 21, null, 20],
 * });
 * gapsOf(days); // => [{ from: "2026-05-02", to: "2026-05-03", days: 2, missing: ["min", "max"] }]
 * ```
 */
export const gapsOf = (series: DailySeries | DailyTemperatures): Gap[] => {
  const lists = listsOf(series);
  const start = dayNumberOf(series.start, "series.start");
  const lackingAt = (i: number): string[] =>
    lists.filter(([name, list]) => figureOf(list, i, name) === null).map(([name]) => name);
  const gaps: Gap[] = [];
  const length = lengthOf(lists);
  for (let i = 0; i < length; i++) {
    const first = i;
    const lacking = new Set<string>();
    for (let now = lackingAt(i); now.length > 0 && i < length; now = lackingAt(++i)) {
      for (const name of now) lacking.add(name);
    }
    if (i === first) continue;
    gaps.push({
      from: dateOfNumber(start + first, "series"),
      to: dateOfNumber(start + i - 1, "series"),
      days: i - first,
      missing: lists.map(([name]) => name).filter((name) => lacking.has(name)),
    });
  }
  return gaps;
};
