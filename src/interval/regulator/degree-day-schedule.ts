import { type CivilDate, civilDate, compareDates } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import {
  expectFields,
  expectNumber,
  expectQuantity,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { checkedFrom } from "../degree-days/days-of-degree-days.js";
import { checkedModel, type DegreeDayModel, type DegreeDaysOf } from "../degree-days/degree-day-model.js";
import { heatOf } from "../degree-days/degree-days.js";
import {
  type ChainDay,
  type DegreeDayBasis,
  heatChain,
  horizon,
  reachAlong,
  refuseGaps,
  type TemperatureSources,
} from "./degree-day-chain.js";

/** One interval of a schedule by degree-days. */
export interface DegreeDayVisit<Id extends string = string> {
  /** The application from which it counts; the sum is zero on that day. */
  readonly from: CivilDate;
  /** The first day at whose end the interval has run out; `null` where the temperatures end before. */
  readonly date: CivilDate | null;
  /** The same in a warm and in a cool year, all the way from the first application; `null` where it is not known. */
  readonly early: CivilDate | null;
  readonly late: CivilDate | null;
  /** The total on `date`, or of all days that there are. */
  readonly total: Quantity<"degree-days", DegreeDaysOf<Id>>;
  /** How many days of it come from where. */
  readonly days: Readonly<Record<DegreeDayBasis, number>>;
  /** Days within the observed ones that lack a figure and were taken from the next source. */
  readonly filled: readonly CivilDate[];
}

/** When an interval in degree-days runs out, again and again. */
export interface DegreeDaySchedule<Id extends string = string> {
  readonly type: "degree-day-schedule";
  readonly version: 1;
  readonly model: DegreeDayModel<Id>;
  readonly interval: Quantity<"degree-days", DegreeDaysOf<Id>>;
  readonly visits: readonly DegreeDayVisit<Id>[];
  readonly notChecked: readonly string[];
}

/**
 * The dates on which an interval in degree-days runs out, by observed temperatures, then the forecast,
 * then the normals of each day; each application sets the sum back to zero, and the day of the application
 * is not counted, so that the heat of a day is in one interval only.
 *
 * The early and the late date move every normal day by its spread, up all the way and down all the way: a
 * warm and a cool season, wider than days that vary on their own (common practice, no source). Errors of
 * the forecast are in neither.
 *
 * @param input.from - the first application
 * @param input.interval - degree-days of the model, more than zero
 * @param input.count - how many intervals, 1 to 100; 1 where it is left out
 * @throws RatewrightError `missing` with the dates that lack a figure, or where there is no source;
 *   `substance/mismatch` for degree-days of another model; `conflict` for another sensor; `range`, `date`, `type`,
 *   `unit/mismatch`
 * Source of the order: Oregon State University, Integrated Plant Protection Center, 1998 (forecast, then
 * historical normals); of the reset: Use of a growing degree model to schedule trinexapac-ethyl
 * applications, ASA-CSSA-SSSA abstract, 2009.
 *
 * @example
 * ```ts
 * import { dailyNormals, degreeDayAmount, degreeDayModel, degreeDaySchedule } from "ratewright";
 * const flat = (value: number) => Array<number>(366).fill(value);
 * const normals = dailyNormals({
 *   unit: "°C", sensor: "air", source: "depot, 1991-2020", min: flat(15), max: flat(25), spread: flat(2),
 * });
 * const model = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
 * const interval = degreeDayAmount({ value: 200, unit: "°C d", model });
 * const { visits } = degreeDaySchedule({ normals, model, from: "2026-06-01", interval, count: 2 });
 * visits.map(({ date }) => date); // => ["2026-06-11", "2026-06-21"]
 * visits[0]?.early; // => "2026-06-11"
 * visits[0]?.late; // => "2026-06-13"
 * ```
 */
export const degreeDaySchedule = <Id extends string>(
  input: TemperatureSources & {
    readonly model: DegreeDayModel<Id>;
    readonly from: CivilDate;
    readonly interval: Quantity<"degree-days", DegreeDaysOf<NoInfer<Id>>>;
    readonly count?: number;
  },
): DegreeDaySchedule<Id> => {
  expectFields(input, ["model", "from", "interval", "count", "observed", "forecast", "normals", "gaps"]);
  const model = checkedModel(input.model, "model");
  const first = checkedFrom(civilDate(input.from, "from"), model);
  const expected = { dimension: "degree-days", of: `degree-days:${model.id}`, bound: "positive" } as const;
  const asked = expectQuantity(input.interval, expected, "interval");
  const count = expectNumber(input.count ?? 1, "count", { min: 1, max: 100 });
  if (!Number.isInteger(count)) outOfRange("count", count, { step: 1 });
  const chain = heatChain(input, model);
  const threshold = asked.in(`${chain.scale} d`);
  const enough = (total: number): boolean => !exceeds(threshold, total);
  /** The dates along one kind of year. */
  const along = (kind: "warm" | "cool"): (CivilDate | null)[] => {
    const dates: (CivilDate | null)[] = [];
    let from: CivilDate | null = first;
    while (dates.length < count && from !== null) {
      from = reachAlong(chain, from, kind, enough).date;
      dates.push(from);
    }
    return dates;
  };
  const [warm, cool] = [along("warm"), along("cool")];
  const visits: DegreeDayVisit<Id>[] = [];
  // A normal day without a spread leaves open all dates that come after it.
  let onlyKnown = true;
  let from: CivilDate | null = first;
  while (visits.length < count && from !== null) {
    const { date, total, used } = reachAlong(chain, from, "heat", enough);
    refuseGaps(used);
    onlyKnown &&= used.every(({ basis }) => basis !== "normal");
    const others = [warm[visits.length] ?? null, cool[visits.length] ?? null, date];
    const known = others.filter((one): one is CivilDate => one !== null).sort(compareDates);
    const spread = chain.hasSpread || onlyKnown;
    visits.push({
      from,
      date,
      early: spread ? (known[0] ?? null) : null,
      late: spread && known.length === 3 ? (known[2] as CivilDate) : null,
      total: heatOf(total, chain.scale, model.id),
      days: countBasis(used),
      filled: used.filter(({ filled }) => filled).map(({ date: day }) => day),
    });
    from = date;
  }
  return {
    type: "degree-day-schedule",
    version: 1,
    model,
    interval: heatOf(threshold, chain.scale, model.id),
    visits,
    notChecked: leftOpen(visits, chain.hasSpread),
  };
};

/** What a schedule leaves open. */
const leftOpen = (
  visits: readonly Pick<DegreeDayVisit, "date" | "early">[],
  hasSpread: boolean,
): readonly string[] => [
  "Errors of the forecast, and rates, cut, water and stress that move the interval.",
  ...(!hasSpread && visits.some(({ early }) => early === null)
    ? ["An early and a late date: no normals with a spread are given."]
    : []),
  ...(visits.some(({ date }) => date === null)
    ? [`Dates beyond the temperatures that are given, or more than ${horizon} days after an application.`]
    : []),
];

const countBasis = (used: readonly ChainDay[]): Record<DegreeDayBasis, number> => {
  const count = (wanted: DegreeDayBasis): number => used.filter(({ basis }) => basis === wanted).length;
  return { observed: count("observed"), forecast: count("forecast"), normal: count("normal") };
};
