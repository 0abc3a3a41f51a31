import {
  addDays,
  type CivilDate,
  compareDates,
  type DailyTemperatures,
  daysBetween,
  seriesEnd,
} from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import { expectFields, expectQuantity, fail, type Quantity } from "../../quantity/index.js";
import {
  checkedFrom,
  checkedSeries,
  daysOfHeat,
  type MissingDays,
  refuseMissing,
} from "./days-of-degree-days.js";
import { checkedModel, type DegreeDayModel, type DegreeDaysOf } from "./degree-day-model.js";
import { heatOf, ruleOn } from "./degree-days.js";
import { heatOfDay } from "./degree-days-of-day.js";

/** When a total is reached, or that it is not. */
export type DateReached<Id extends string = string> = {
  /** The total at the end of `date`, or of the last day of the series where it is not reached. */
  readonly total: Quantity<"degree-days", DegreeDaysOf<Id>>;
  readonly filled: readonly CivilDate[];
  /** Days that count 0 for want of a figure: with any of them the date may be too late. */
  readonly leftOut: readonly CivilDate[];
} & (
  | {
      readonly reached: true;
      /** The first day at whose end the total is at or above the threshold. */
      readonly date: CivilDate;
      /** Days from `from` to `date`. */
      readonly days: number;
    }
  | {
      readonly reached: false;
      /** The last day that was counted; `null` where none was. */
      readonly countedTo: CivilDate | null;
      /** What is still to come. */
      readonly remaining: Quantity<"degree-days", DegreeDaysOf<Id>>;
    }
);

/**
 * The first day at whose end the running total of degree-days is at or above a threshold, compared with
 * a relative guard of 1e-9; or the total so far where the series ends before.
 *
 * `fromDay` says whether the day from which is counted adds its own heat. `"counted"` is the default:
 * it is how degree-day pages describe a start or biofix date (University of Wisconsin, Department of
 * Entomology, "Degree days": beginning on 1 January or the biofix date; Virginia Cooperative Extension,
 * tree fruit pest notes 2018: starting on the biofix date). For the day of an application no source was
 * found that says it. Where one interval follows another, from each application to the next, say
 * `"not counted"`: otherwise the heat of an application day is counted in both.
 *
 * @param input.threshold - more than zero, degree-days of the same model
 * @param input.from - where the model states a start, that day of a year
 * @param input.missing - see {@link MissingDays}; a gap behind the day that is found does no harm
 * @throws RatewrightError `missing` with the dates; `substance/mismatch` for degree-days of another
 * model; `range` for a threshold of zero or less; `conflict`, `date`, `unit/mismatch`, `type`
 *
 * @example
 * ```ts
 * import { dailyTemperatures, dateReached, degreeDayAmount, degreeDayModel } from "ratewright";
 * const model = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
 * const series = dailyTemperatures({
 *   start: "2026-06-01", unit: "°C", sensor: "air", source: "station at the depot",
 *   min: Array(20).fill(15), max: Array(20).fill(25),
 * });
 * const when = dateReached({
 *   series, model, from: "2026-06-01", fromDay: "not counted",
 *   threshold: degreeDayAmount({ value: 200, unit: "°C d", model }),
 * });
 * when.reached ? when.date : null; // => "2026-06-11"
 * ```
 */
export const dateReached = <Id extends string>(input: {
  readonly series: DailyTemperatures;
  readonly model: DegreeDayModel<Id>;
  readonly from: CivilDate;
  readonly threshold: Quantity<"degree-days", DegreeDaysOf<NoInfer<Id>>>;
  readonly fromDay?: "counted" | "not counted";
  readonly missing?: MissingDays;
}): DateReached<Id> => {
  expectFields(input, ["series", "model", "from", "threshold", "fromDay", "missing"]);
  const model = checkedModel(input.model, "model");
  const series = checkedSeries(input.series, model);
  const from = checkedFrom(input.from, model);
  const of = `degree-days:${model.id}`;
  const expected = { dimension: "degree-days", of, bound: "positive" } as const;
  const threshold = expectQuantity(input.threshold, expected, "threshold").in(`${series.unit} d`);
  const fromDay = input.fromDay ?? "counted";
  if (fromDay !== "counted" && fromDay !== "not counted") {
    fail("type", "fromDay", fromDay, 'the choice "counted" or "not counted"');
  }

  const first = fromDay === "counted" ? from : addDays(from, 1);
  const last = seriesEnd(series);
  const days =
    compareDates(first, last) > 0
      ? []
      : daysOfHeat(series, first, last, input.missing ?? "refuse", model.method);
  const rule = ruleOn(model, series.unit);
  let total = 0;
  let count = 0;
  while (count < days.length && exceeds(threshold, total)) {
    const day = days[count++] as (typeof days)[number];
    if (day.basis === "measured" || day.basis === "interpolated") {
      total += heatOfDay(rule, day.max, day.min, day.nextMin);
    }
  }
  // Only the days that were needed can be at fault: a gap behind the day that is found does no harm.
  const used = days.slice(0, count);
  refuseMissing(used, series, model.method);

  const reached = !exceeds(threshold, total);
  const dates = (basis: string): CivilDate[] =>
    used.filter((day) => day.basis === basis).map(({ date }) => date);
  const common = {
    total: heatOf(total, series.unit, model.id),
    filled: dates("interpolated"),
    leftOut: dates("left out"),
  };
  const date = used[count - 1]?.date;
  return reached && date !== undefined
    ? { ...common, reached: true, date, days: daysBetween(from, date) }
    : {
        ...common,
        reached: false,
        countedTo: date ?? null,
        remaining: heatOf(threshold - total, series.unit, model.id),
      };
};
