import {
  type CivilDate,
  civilDate,
  daysBetween,
  isLeapYear,
  type MonthDay,
  monthDay,
  yearOf,
} from "../../calendar/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectList,
  expectOneOf,
  expectRecord,
  fail,
  plainCopy,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type FrostDates, type FrostState, type FrostWinter, knownOf } from "./frost-winters.js";

/**
 * The share of the known winters with a frost after a date (spring) or before it (fall), in percent.
 *
 * @param input.date - a day of the year, or a date
 * @param input.dates - what {@link frostDates} gave
 * @param input.side - `"after"` the date, for the last frost of spring, or `"before"` it, for the first of fall
 * @throws RatewrightError `missing` where no winter of the record is known; `date`, `type`
 * Source: as for `frostDates`.
 *
 * @example
 * ```ts
 * import { dailySeries, frostDates, frostChance } from "ratewright";
 * const record = dailySeries({
 *   start: "2024-07-24", unit: "°C", what: "lowest air temperature", source: "invented",
 *   values: Array.from({ length: 365 }, (_, i) => (i === 100 || i === 270 ? -2 : 12)),
 * });
 * const dates = frostDates({ minima: record });
 * dates.winters[0]?.lastFrost; // => "2025-04-20"
 * frostChance({ dates, date: "04-19", side: "after" }).in("%"); // => 100
 * frostChance({ dates, date: "04-20", side: "after" }).in("%"); // => 0
 * ```
 */
export const frostChance = (input: {
  readonly dates: FrostDates;
  readonly date: MonthDay;
  readonly side: "after" | "before";
}): Quantity<"1", "none"> => {
  const fields = expectFields(input, ["dates", "date", "side"]);
  const { date, side } = allOf({
    date: () => monthDay(fields.date, "date"),
    side: () => expectOneOf(fields.side, ["after", "before"], "side"),
  });
  const dates = plainCopy(fields.dates) as FrostDates | undefined;
  if (dates?.type !== "frost-dates") return fail("type", "dates", dates, "frost dates, made by frostDates");
  const { winters } = dates as { readonly winters?: unknown };
  if (!Array.isArray(winters)) {
    const code = winters === undefined ? "missing" : "type";
    return fail(code, "dates.winters", winters, "a list of winters, as frostDates makes it");
  }
  const known = knownOf(readWinters(winters), side === "after" ? "last" : "first");
  if (known.length === 0)
    return fail("missing", "dates.winters", described("no winter that is known"), "at least one");
  const beyond = known.filter(({ winter, day }) => {
    if (day === null) return false;
    const asked = daysFrom(winter.from, date);
    return side === "after" ? day > asked : day < asked;
  });
  return quantity((100 * beyond.length) / known.length, "%");
};

/** Winters that may come from JSON. */
const readWinters = (winters: readonly unknown[]): FrostWinter[] => {
  const problems = checks();
  const read = expectList(winters, "dates.winters", "winter", 10_000).flatMap((one, i) => {
    const at = `dates.winters[${i}]`;
    const dateOrNone = (input: unknown, path: string): CivilDate | null =>
      input === null || input === undefined ? null : civilDate(input as CivilDate, path);
    const stateOf = (input: unknown, path: string): FrostState =>
      input === undefined ? "not known" : expectOneOf(input, ["frost", "no frost", "not known"], path);
    return (
      problems.run(() => {
        const record = expectRecord(one, at);
        return allOf({
          from: () => civilDate(record.from as CivilDate, `${at}.from`),
          firstFrost: () => dateOrNone(record.firstFrost, `${at}.firstFrost`),
          lastFrost: () => dateOrNone(record.lastFrost, `${at}.lastFrost`),
          firstState: () => stateOf(record.firstState, `${at}.firstState`),
          lastState: () => stateOf(record.lastState, `${at}.lastState`),
        });
      }) ?? []
    );
  });
  problems.done();
  return read;
};

/** Days from a dividing day to the next day of that name; 29 February counts as 1 March in common years. */
const daysFrom = (from: CivilDate, date: MonthDay): number => {
  const daysTo = (year: number): number => {
    const day = date === "02-29" && !isLeapYear(year) ? "03-01" : date;
    return daysBetween(from, `${String(year).padStart(4, "0")}-${day}` as CivilDate);
  };
  const days = daysTo(yearOf(from));
  return days >= 0 ? days : daysTo(yearOf(from) + 1);
};
