import { addDays, type CivilDate, civilDate, daysBetween } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import {
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { checkedModel, type DegreeDayModel, type DegreeDaysOf } from "../degree-days/degree-day-model.js";
import { heatOf } from "../degree-days/degree-days.js";
import { heatChain, horizon, reachAlong, refuseGaps, type TemperatureSources } from "./degree-day-chain.js";

/** An interval of days beside an interval in degree-days, from one application. */
export interface CalendarAgainstDegreeDays<Id extends string = string> {
  readonly from: CivilDate;
  /** Where the interval of days ends. */
  readonly byCalendar: CivilDate;
  /** Where the interval in degree-days ends; `null` where the temperatures do not reach so far. */
  readonly byDegreeDays: CivilDate | null;
  /** Days that the calendar comes late; less than 0 where it comes early. */
  readonly daysLate: number | null;
  /** What has added up when the calendar comes round; `null` where the temperatures do not reach so far. */
  readonly atCalendar: Quantity<"degree-days", DegreeDaysOf<Id>> | null;
  /** That as a multiple of the interval in degree-days: 3 means that two applications were missed. */
  readonly intervalsAtCalendar: number | null;
}

/** What adds up after a day up to another; `null` where the temperatures do not reach so far. */
const heatBetween = (chain: ReturnType<typeof heatChain>, from: CivilDate, to: CivilDate): number | null => {
  let total = 0;
  for (let date = addDays(from, 1); daysBetween(date, to) >= 0; date = addDays(date, 1)) {
    const day = chain.at(date);
    if (day === undefined) return null;
    refuseGaps([day]);
    total += day.heat;
  }
  return total;
};

/**
 * How far an interval of days lies from an interval in degree-days, for applications at several times of the
 * year: four weeks that fit in April are far too long in July, when the same heat comes in far fewer days.
 *
 * @param input.starts - dates of applications to compare at
 * @param input.intervalDays - the interval on the calendar, a whole number
 * @param input.interval - the interval in degree-days, degree-days of the model
 * @throws RatewrightError `missing` with the dates that lack a figure, or where there is no source;
 *   `substance/mismatch`, `conflict`, `range`, `date`, `type`, `unit/mismatch`
 *
 * @example
 * ```ts
 * import { calendarAgainstDegreeDays, dailyNormals, degreeDayAmount, degreeDayModel } from "ratewright";
 * const year = (mean: number) => Array.from({ length: 366 }, (_, i) => (i < 130 ? mean : mean + 14));
 * const normals = dailyNormals({
 *   unit: "°C", sensor: "air", source: "depot, 1991-2020", min: year(5), max: year(15),
 * });
 * const model = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
 * const rows = calendarAgainstDegreeDays({
 *   normals, model, starts: ["2026-04-01", "2026-07-01"], intervalDays: 28,
 *   interval: degreeDayAmount({ value: 200, unit: "°C d", model }),
 * });
 * rows.map(({ daysLate }) => daysLate); // => [8, 19]
 * rows.map(({ intervalsAtCalendar }) => intervalsAtCalendar); // => [1.4, 3.36]
 * ```
 */
export const calendarAgainstDegreeDays = <Id extends string>(
  input: TemperatureSources & {
    readonly model: DegreeDayModel<Id>;
    readonly starts: readonly CivilDate[];
    readonly intervalDays: number;
    readonly interval: Quantity<"degree-days", DegreeDaysOf<NoInfer<Id>>>;
  },
): CalendarAgainstDegreeDays<Id>[] => {
  expectFields(input, [
    "model",
    "starts",
    "intervalDays",
    "interval",
    "observed",
    "forecast",
    "normals",
    "gaps",
  ]);
  const model = checkedModel(input.model, "model");
  const expected = { dimension: "degree-days", of: `degree-days:${model.id}`, bound: "positive" } as const;
  const asked = expectQuantity(input.interval, expected, "interval");
  const days = expectNumber(input.intervalDays, "intervalDays", { min: 1, max: horizon });
  if (!Number.isInteger(days)) outOfRange("intervalDays", days, { step: 1, count: "days" });
  const { starts } = input as { readonly starts: unknown };
  if (!Array.isArray(starts)) return fail("type", "starts", starts, "a list of dates");
  if (starts.length > 10_000) return outOfRange("starts", starts, { max: 10000, count: "dates" });
  const chain = heatChain(input, model);
  const interval = asked.in(`${chain.scale} d`);
  return Array.from(starts as readonly CivilDate[], (start, i) => {
    const from = civilDate(start, `starts[${i}]`);
    const byCalendar = addDays(from, days);
    const reach = reachAlong(chain, from, "heat", (total) => !exceeds(interval, total));
    refuseGaps(reach.used);
    const byDegreeDays = reach.date;
    const total = heatBetween(chain, from, byCalendar);
    const times = total === null ? null : total / interval;
    if (times !== null && !Number.isFinite(times)) {
      fail(
        "range",
        "interval",
        asked,
        "an interval that goes into the degree-days of the days a finite number of times",
      );
    }
    return {
      from,
      byCalendar,
      byDegreeDays,
      daysLate: byDegreeDays === null ? null : daysBetween(byDegreeDays, byCalendar),
      atCalendar: total === null ? null : heatOf(total, chain.scale, model.id),
      intervalsAtCalendar: times,
    };
  });
};
