import {
  addDays,
  type CivilDate,
  type DailySeries,
  dayOfMonth,
  daysBetween,
  type MonthDay,
  monthDay,
  monthOf,
  seriesEnd,
  yearOf,
} from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import { counted } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  numberIn,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { checkedTemperatureSeries, expectDays } from "./checked-series.js";
import {
  type FrostDates,
  type FrostOdds,
  type FrostSide,
  type FrostState,
  type FrostWinter,
  type Known,
  knownOf,
} from "./frost-winters.js";
import { summerFrosts } from "./summer-frosts.js";

const utah = /* @__PURE__ */ frozen({
  title: "Freeze dates: reading the table",
  publisher: "Utah Climate Center",
  where: "July 24 and January 24 as the days that separate spring and fall; standard of ten missing days",
  url: "https://climate.usu.edu/help/freezeTable.php",
} as const);

interface Side {
  readonly date: CivilDate | null;
  readonly state: FrostState;
}

/** The first day at or below the threshold, walking one way; not known where too many days before it are missing. */
const firstBelow = (
  days: readonly { readonly date: CivilDate; readonly value: number | null }[],
  limit: number,
  missing: number,
): Side => {
  let gaps = 0;
  for (const { date, value } of days) {
    if (value === null) gaps += 1;
    else if (value <= limit)
      return gaps > missing ? { date: null, state: "not known" } : { date, state: "frost" };
  }
  return { date: null, state: gaps > missing ? "not known" : "no frost" };
};

/** Where a date stands in its winter by the calendar, the same in every year: by days, a leap year would shift it by one. */
const placeOf = (from: CivilDate, date: CivilDate): number => {
  const [start, day] = [from, date].map((one) => 100 * monthOf(one) + dayOfMonth(one)) as [number, number];
  return day < start ? day + 1300 : day;
};

/** The date that `percent` of the winters passed with a frost beyond it, or that no date has this chance. */
const oddsOf = (known: Known, side: "first" | "last", percent: number): FrostOdds => {
  const sign = side === "last" ? 1 : -1;
  const dated = known
    .flatMap(({ winter }) => {
      const date = winter[`${side}Frost`];
      return date === null ? [] : [{ date, place: placeOf(winter.from, date) }];
    })
    .sort((a, b) => sign * (a.place - b.place));
  // Of n winters, as many as come after place i have a frost beyond it; winters without one have none.
  const found = dated.find((_, i) => !exceeds(((dated.length - 1 - i) * 100) / known.length, percent));
  // Where fewer winters than that had any frost, already the earliest date is beyond the chance that was asked for.
  const possible = !exceeds(percent, (dated.length * 100) / known.length);
  if (found === undefined || !possible) return { percent, date: null };
  return { percent, date: monthDay(found.date.slice(5)) };
};

const sideOf = (
  winters: readonly FrostWinter[],
  side: "first" | "last",
  percents: readonly number[],
): FrostSide => {
  const known = knownOf(winters, side);
  return {
    winters: known.length,
    withoutFrost: known.filter(({ day }) => day === null).length,
    odds: known.length === 0 ? [] : percents.map((percent) => oddsOf(known, side, percent)),
  };
};

const winterOf = (series: DailySeries, from: CivilDate, limit: number, missing: number): FrostWinter => {
  const next = `${String(yearOf(from) + 1).padStart(4, "0")}${from.slice(4)}` as CivilDate;
  const days = Array.from({ length: daysBetween(from, next) }, (_, i) => {
    const date = addDays(from, i);
    return { date, value: series.values[daysBetween(series.start, date)] ?? null };
  });
  const first = firstBelow(days, limit, missing);
  const last = firstBelow([...days].reverse(), limit, missing);
  return {
    from,
    firstFrost: first.date,
    lastFrost: last.date,
    firstState: first.state,
    lastState: last.state,
  };
};

/** The dividing days of the winters that the series has a day of. */
const dividesOf = (series: DailySeries, divide: MonthDay): CivilDate[] => {
  const end = seriesEnd(series);
  const dates: CivilDate[] = [];
  // There is no year 0.
  for (let year = Math.max(1, yearOf(series.start) - 1); year <= yearOf(end); year += 1) {
    dates.push(`${String(year).padStart(4, "0")}-${divide}` as CivilDate);
  }
  const last = dates.filter((date) => daysBetween(date, end) >= 0);
  return last.filter((_, i) => {
    const next = last[i + 1];
    return next === undefined || daysBetween(series.start, next) > 0;
  });
};

const percentsOf = (input: unknown): readonly number[] => {
  if (input === undefined) return [10, 50, 90];
  if (!Array.isArray(input) || input.length === 0 || input.length > 20) {
    return fail("type", "percents", input, "a list of one to twenty percents");
  }
  return input.map((one, i) => expectNumber(one, `percents[${i}]`, { above: 0, below: 100 }));
};

/**
 * First and last frosts from years of daily lowest temperatures, and the dates that go with stated chances: by how many of
 * the winters had a frost on a later date (last frost), or on an earlier one (first frost).
 *
 * A winter goes from one dividing day to the next: 24 July in the north, 24 January in the south. A frost is a day at or
 * below the threshold. The date of a chance is one of the record: the earliest last frost that at most `percent` of the
 * winters passed with a later frost; for the first frost the other way round. Winters without a frost count, as winters
 * without a later or earlier one. With thirty winters a chance of 10 % rests on three of them.
 *
 * More than `missingDays` days without a figure between the dividing day and the frost, and that side of the winter is not
 * known: so the winters at both ends of a record count with the side that they have.
 *
 * @param input.minima - lowest temperature of each day, over years
 * @param input.threshold - 0 °C where it is left out; 28 °F is a hard freeze to many
 * @param input.percents - 10, 50 and 90 where they are left out
 * @param input.divide - 07-24 where it is left out; 01-24 south of the equator. Frosts close to it are a finding
 * @param input.missingDays - 9 where it is left out
 * @throws RatewrightError `missing`, `unit/mismatch`, `range`, `date`, `type`; what `dailySeries` throws
 * Source: National Centers for Environmental Information, last freeze/frost probability (a chance of 90 % on 1 March is
 * that nine years of ten have as cold a day later; years without a freeze counted apart); Utah Climate Center, freeze
 * dates (dividing days, ten missing days). The choice of a date of the record, without a curve through it, is ours.
 *
 * @example
 * ```ts
 * import { dailySeries, frostDates } from "ratewright";
 * // Three winters of 20 °C days with frosts on chosen dates.
 * const frosts = ["2023-10-20", "2024-04-10", "2024-10-05", "2025-04-28", "2025-10-12", "2026-05-03"];
 * const days = Array.from({ length: 1096 }, (_, i) => new Date(Date.UTC(2023, 6, 24 + i)).toISOString().slice(0, 10));
 * const record = dailySeries({
 *   start: "2023-07-24", unit: "°C", what: "lowest air temperature", source: "invented",
 *   values: days.map((day) => (frosts.includes(day) ? -1 : 20)),
 * });
 * const dates = frostDates({ minima: record, percents: [50] });
 * dates.last.odds; // => [{ percent: 50, date: "04-28" }]
 * dates.first.odds; // => [{ percent: 50, date: "10-12" }]
 * ```
 */
export const frostDates = (input: {
  readonly minima: DailySeries;
  readonly threshold?: Quantity<"temperature", "none">;
  readonly percents?: readonly number[];
  readonly divide?: MonthDay;
  readonly missingDays?: number;
}): FrostDates => {
  const fields = expectFields(input, ["minima", "threshold", "percents", "divide", "missingDays"]);
  const { minima, threshold, percents, divide, missing } = allOf({
    minima: () => checkedTemperatureSeries(fields.minima, "minima"),
    threshold: () =>
      fields.threshold === undefined
        ? quantity(0, "°C")
        : expectQuantity(fields.threshold, { dimension: "temperature", of: "none" }, "threshold"),
    percents: () => percentsOf(fields.percents),
    divide: () => (fields.divide === undefined ? "07-24" : monthDay(fields.divide, "divide")),
    missing: () =>
      fields.missingDays === undefined ? 9 : expectDays(fields.missingDays, "missingDays", 0, 100),
  });
  if (divide === "02-29") fail("date", "divide", divide, "a day that every year has");
  const limit = numberIn(threshold, minima.unit) + 1e-9;
  const winters = dividesOf(minima, divide).map((from) => winterOf(minima, from, limit, missing));
  const [last, first] = [sideOf(winters, "last", percents), sideOf(winters, "first", percents)];
  return {
    type: "frost-dates",
    version: 1,
    threshold,
    winters,
    last,
    first,
    findings: [
      ...findingsOf(Math.min(last.winters, first.winters)),
      ...summerFrosts(minima, dividesOf(minima, divide), limit),
    ],
  };
};

const findingsOf = (winters: number): Finding[] =>
  winters >= 30
    ? []
    : [
        {
          code: "frost/few-winters",
          severity: "caution",
          params: { winters },
          text: `${counted(winters, "winter")}: a chance of 10 or 90 % rests on very few of them. Climate normals take 30 years.`,
          source: utah,
        },
      ];
