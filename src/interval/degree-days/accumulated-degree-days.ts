import { type CivilDate, civilDate, compareDates, type DailyTemperatures } from "../../calendar/index.js";
import { expectFields, fail, type Quantity } from "../../quantity/index.js";
import {
  checkedFrom,
  checkedSeries,
  type DayBasis,
  daysOfHeat,
  type MissingDays,
  refuseMissing,
} from "./days-of-degree-days.js";
import { checkedModel, type DegreeDayModel, type DegreeDaysOf } from "./degree-day-model.js";
import { heatOf, ruleOn } from "./degree-days.js";
import { heatOfDay } from "./degree-days-of-day.js";

/** One day of a sum. */
export interface DegreeDayRow<Id extends string = string> {
  readonly date: CivilDate;
  /** What the day adds. */
  readonly degreeDays: Quantity<"degree-days", DegreeDaysOf<Id>>;
  /** The total at the end of the day. */
  readonly total: Quantity<"degree-days", DegreeDaysOf<Id>>;
  readonly basis: DayBasis;
}

/** A sum of degree-days, with the days that it is made of. */
export interface AccumulatedDegreeDays<Id extends string = string> {
  readonly type: "accumulated-degree-days";
  readonly version: 1;
  readonly model: DegreeDayModel<Id>;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly total: Quantity<"degree-days", DegreeDaysOf<Id>>;
  readonly daily: readonly DegreeDayRow<Id>[];
  /** Days without a measured figure that were interpolated. */
  readonly filled: readonly CivilDate[];
  /** Days without a measured figure that count 0: with any of them the total is a lower bound. */
  readonly leftOut: readonly CivilDate[];
}

/**
 * The degree-days of a stretch of days, both ends included, with the running total. The stretch may be
 * split: the parts add up to the whole.
 *
 * A day without figures, also one outside the series, is refused unless a policy for it is named; the
 * result lists the days that the policy touched.
 *
 * @param input.series - in the scale in which the result is wanted; its sensor must be that of the model
 * @param input.from - the first day that counts; where the model states a start, that day of a year
 * @param input.missing - see {@link MissingDays}
 * @throws RatewrightError `missing` with one problem for each date; `conflict` for another sensor or
 * another start; `date`, also where `to` is earlier than `from`; `type`; what the records throw
 * Source: as for {@link degreeDays}.
 *
 * @example
 * ```ts
 * import { accumulatedDegreeDays, dailyTemperatures, degreeDayModel } from "ratewright";
 * const model = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
 * const series = dailyTemperatures({
 *   start: "2026-05-01", unit: "°C", sensor: "air", source: "station at the depot",
 *   min: [8, null, 11], max: [19, 21, 22],
 * });
 * const sum = accumulatedDegreeDays({
 *   series, model, from: "2026-05-01", to: "2026-05-03", missing: { interpolateUpToDays: 1 },
 * });
 * sum.total.in("°C d"); // => 45.25
 * sum.filled; // => ["2026-05-02"]
 * ```
 */
export const accumulatedDegreeDays = <Id extends string>(input: {
  readonly series: DailyTemperatures;
  readonly model: DegreeDayModel<Id>;
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly missing?: MissingDays;
}): AccumulatedDegreeDays<Id> => {
  expectFields(input, ["series", "model", "from", "to", "missing"]);
  const model = checkedModel(input.model, "model");
  const series = checkedSeries(input.series, model);
  const from = checkedFrom(input.from, model);
  const to = civilDate(input.to, "to");
  if (compareDates(from, to) > 0) fail("date", "to", to, `a date not earlier than ${from}`);
  const days = daysOfHeat(series, from, to, input.missing ?? "refuse", model.method);
  refuseMissing(days, series, model.method);

  const rule = ruleOn(model, series.unit);
  const heat = (value: number): Quantity<"degree-days", DegreeDaysOf<Id>> =>
    heatOf(value, series.unit, model.id);
  let total = 0;
  const daily = days.map(({ date, basis, max, min, nextMin }) => {
    const added = basis === "left out" ? 0 : heatOfDay(rule, max, min, nextMin);
    total += added;
    return { date, degreeDays: heat(added), total: heat(total), basis: basis as DayBasis };
  });
  const dates = (basis: DayBasis): CivilDate[] =>
    days.filter((day) => day.basis === basis).map(({ date }) => date);
  return {
    type: "accumulated-degree-days",
    version: 1,
    model,
    from,
    to,
    total: heat(total),
    daily,
    filled: dates("interpolated"),
    leftOut: dates("left out"),
  };
};
