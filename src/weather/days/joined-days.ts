import {
  addDays,
  type CivilDate,
  compareDates,
  type DailySeries,
  dailySeries,
  daysBetween,
  seriesEnd,
} from "../../calendar/index.js";
import { described, dimensionNoun } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectText,
  fail,
  numberIn,
  outOfRange,
  quantityOf,
} from "../../quantity/index.js";
import { checkedSeries } from "./checked-series.js";

/** Where the figure of a day comes from. */
export type DayFigureBasis = "observed" | "forecast" | "normal";

/** One series of observed, forecast and normal days, with where each figure comes from. */
export interface JoinedDays {
  readonly type: "joined-days";
  readonly version: 1;
  readonly series: DailySeries;
  /** For each day of the series; `null` where none of them has a figure. */
  readonly basis: readonly (DayFigureBasis | null)[];
}

const order: readonly DayFigureBasis[] = ["observed", "forecast", "normal"];
/** The longest series that is made: 50 years. */
const longest = 18_300;

/**
 * Joins what was observed, what is forecast and what is normal into one series: each day takes the first of the three
 * that has a figure, in that order, in the unit of the first series given. What each figure is stays beside it.
 *
 * @param input.observed - measured days
 * @param input.forecast - days to come
 * @param input.normal - what is usual on these dates, as a series of the same dates
 * @param input.what - what the joined figures are, for a reader
 * @throws RatewrightError `missing` where none of the three is given; `unit/mismatch` between them; `range` for more than
 * 50 years; what `dailySeries` throws
 *
 * Source: the order is of this library.
 *
 * @example
 * ```ts
 * import { dailySeries, joinedDays } from "ratewright";
 * const day = { unit: "°F", what: "soil at 1 in", source: "probe and weather service" };
 * const joined = joinedDays({
 *   observed: dailySeries({ ...day, start: "2026-04-01", values: [51, null] }),
 *   forecast: dailySeries({ ...day, start: "2026-04-02", values: [52, 54] }),
 *   what: "soil at 1 in",
 * });
 * joined.series.values; // => [51, 52, 54]
 * joined.basis; // => ["observed", "forecast", "forecast"]
 * ```
 */
export const joinedDays = (input: {
  readonly observed?: DailySeries;
  readonly forecast?: DailySeries;
  readonly normal?: DailySeries;
  readonly what: string;
}): JoinedDays => {
  const fields = expectFields(input, ["observed", "forecast", "normal", "what"]);
  const one = (name: DayFigureBasis) => () =>
    fields[name] === undefined ? undefined : checkedSeries(fields[name], name);
  const { what, ...read } = allOf({
    observed: one("observed"),
    forecast: one("forecast"),
    normal: one("normal"),
    what: () => expectText(fields.what, "what", "what the figures are"),
  });
  const parts = order.flatMap((basis) => {
    const series = read[basis];
    return series === undefined ? [] : [{ basis, series }];
  });
  const first = parts[0];
  if (first === undefined) {
    return fail("missing", "observed", undefined, "at least one of observed, forecast and normal");
  }
  const { unit } = first.series;
  const like = quantityOf(0, unit, "none", "unit").dimension;
  for (const { basis, series } of parts) {
    if (quantityOf(0, series.unit, "none", `${basis}.unit`).dimension !== like) {
      fail(
        "unit/mismatch",
        `${basis}.unit`,
        series.unit,
        `a unit for ${dimensionNoun(like)}, as ${first.basis} has`,
      );
    }
  }
  const [start, days] = span(parts.map(({ series }) => series));
  const figures = Array.from({ length: days }, (_, i) => figureOf(parts, addDays(start, i), unit));
  return {
    type: "joined-days",
    version: 1,
    series: dailySeries({
      start,
      unit,
      what,
      source: parts.map(({ basis, series }) => `${basis}: ${series.source}`).join("; "),
      values: figures.map(({ value }) => value),
    }),
    basis: figures.map(({ basis }) => basis),
  };
};

const span = (list: readonly DailySeries[]): readonly [CivilDate, number] => {
  const starts = list.map(({ start }) => start).sort(compareDates);
  const ends = list.map((series) => seriesEnd(series)).sort(compareDates);
  const start = starts[0] as CivilDate;
  const days = daysBetween(start, ends[ends.length - 1] as CivilDate) + 1;
  return days > longest
    ? outOfRange("observed", described(`${days} days`), { max: longest, count: "days" }, "{} in all")
    : [start, days];
};

const figureOf = (
  parts: readonly { readonly basis: DayFigureBasis; readonly series: DailySeries }[],
  date: CivilDate,
  unit: string,
): { readonly value: number | null; readonly basis: DayFigureBasis | null } => {
  for (const { basis, series } of parts) {
    const value = series.values[daysBetween(series.start, date)];
    if (typeof value === "number") {
      const same =
        series.unit === unit ? value : numberIn(quantityOf(value, series.unit, "none", basis), unit);
      return { value: same, basis };
    }
  }
  return { value: null, basis: null };
};
