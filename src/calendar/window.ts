import { expectFields, outOfRange, type Problem, RatewrightError, shown } from "../quantity/index.js";
import { type CivilDate, dateFields, dateText } from "./civil-date.js";
import { monthDaysMeant } from "./date-readings.js";
import { type DateFields, daysOfMonth, isLeap } from "./day-number.js";

/** A day of any year, as `MM-DD`: `"03-01"`. */
export type MonthDay = `${number}-${number}`;

/**
 * A part of every year, both ends included. Where `from` is later in the year than `to` it runs over
 * the turn of the year: `{ from: "11-15", to: "03-01" }` is winter.
 *
 * 29 February: as an end it stands for the last day of February in every year; as a beginning it is
 * 1 March in a year without one. A window that ends on `02-28` does not have 29 February in it.
 */
export interface MonthDayWindow {
  readonly from: MonthDay;
  readonly to: MonthDay;
}

/** A stretch of dates, both ends included. */
export interface DateSpan {
  readonly from: CivilDate;
  readonly to: CivilDate;
}

const pattern = /^(\d{2})-(\d{2})$/;

/** Reads a month and day as `month * 100 + day`, or says what is wrong. */
const readMonthDay = (input: unknown, path: string): number | Problem => {
  const [, m, d] = (typeof input === "string" ? pattern.exec(input) : null) ?? [];
  const [month, day] = [Number(m ?? 0), Number(d ?? 0)];
  // 2000 is a leap year, so 02-29 is a day of some year.
  if (month >= 1 && month <= 12 && day >= 1 && day <= daysOfMonth(2000, month)) return month * 100 + day;
  const meant = typeof input === "string" ? monthDaysMeant(input) : [];
  const [only] = meant;
  return {
    code: typeof input === "string" && input.trim() === "" ? "missing" : "date",
    path,
    got: shown(input),
    expected: "a day of the year written MM-DD, such as 03-01",
    ...(meant.length > 1 ? { choices: meant } : only !== undefined && { suggestion: only }),
  };
};

/**
 * Takes a text as a day of the year, 29 February included.
 *
 * @param path - how an error names the argument
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { monthDay } from "ratewright";
 * monthDay("02-29"); // => "02-29"
 * monthDay("2-29"); // => throws date
 * ```
 */
export const monthDay = (input: unknown, path = "monthDay"): MonthDay => {
  const read = readMonthDay(input, path);
  if (typeof read !== "number") throw new RatewrightError(read);
  return input as MonthDay;
};

/** The two ends of a window as `month * 100 + day`; throws all that is wrong. */
export const windowEnds = (window: MonthDayWindow, path: string): { from: number; to: number } => {
  const ends = expectFields(window, ["from", "to"], path, "a record with from and to");
  const from = readMonthDay(ends.from, `${path}.from`);
  const to = readMonthDay(ends.to, `${path}.to`);
  const problems = [from, to].filter((end): end is Problem => typeof end !== "number");
  if (problems.length > 0) throw new RatewrightError(problems);
  return { from: from as number, to: to as number };
};

const within = ({ month, day }: DateFields, { from, to }: { from: number; to: number }): boolean => {
  const at = month * 100 + day;
  return from <= to ? at >= from && at <= to : at >= from || at <= to;
};

/**
 * Whether a date lies in a part of the year, both ends included; see {@link MonthDayWindow} for the
 * turn of the year and for 29 February.
 *
 * @throws RatewrightError `date` for the date or an end of the window, `type`
 *
 * @example
 * ```ts
 * import { isWithinWindow } from "ratewright";
 * isWithinWindow("2026-11-15", { from: "03-01", to: "11-15" }); // => true
 * isWithinWindow("2026-01-10", { from: "11-15", to: "03-01" }); // => true
 * isWithinWindow("2024-02-29", { from: "11-15", to: "02-28" }); // => false
 * ```
 */
export const isWithinWindow = (date: CivilDate, window: MonthDayWindow): boolean =>
  within(dateFields(date, "date"), windowEnds(window, "window"));

const opening = (year: number, from: number): DateFields =>
  from === 229 && !isLeap(year)
    ? { year, month: 3, day: 1 }
    : { year, month: Math.floor(from / 100), day: from % 100 };

const closing = (year: number, to: number): DateFields => {
  const month = Math.floor(to / 100);
  return { year, month, day: Math.min(to % 100, daysOfMonth(year, month)) };
};

/**
 * The one occurrence of a part of the year in which a date lies, or `undefined` where it lies in none.
 *
 * @param window - a part of the year, from one day to another
 * @throws RatewrightError `date`, `type`; `range` where the occurrence leaves the years 0001 to 9999
 *
 * @example
 * ```ts
 * import { windowAround } from "ratewright";
 * windowAround("2026-01-10", { from: "11-15", to: "03-01" }); // => { from: "2025-11-15", to: "2026-03-01" }
 * windowAround("2026-06-10", { from: "11-15", to: "03-01" }); // => undefined
 * ```
 */
export const windowAround = (date: CivilDate, window: MonthDayWindow): DateSpan | undefined => {
  const fields = dateFields(date, "date");
  const ends = windowEnds(window, "window");
  if (!within(fields, ends)) return undefined;
  const wraps = ends.from > ends.to;
  const before = wraps && fields.month * 100 + fields.day <= ends.to;
  const year = before ? fields.year - 1 : fields.year;
  if (year < 1 || (wraps && year > 9998))
    outOfRange("date", date, { min: "0001-01-01", max: "9999-12-31" }, "a window within {}");
  return {
    from: dateText(opening(year, ends.from)),
    to: dateText(closing(wraps ? year + 1 : year, ends.to)),
  };
};

/**
 * The first date, from the given one on, that lies in a part of the year: the date itself where it
 * already does.
 *
 * @param window - a part of the year, from one day to another
 * @throws RatewrightError `date`, `type`; `range` where there is none before the end of 9999
 *
 * @example
 * ```ts
 * import { firstDateWithin } from "ratewright";
 * firstDateWithin("2026-12-24", { from: "03-01", to: "11-15" }); // => "2027-03-01"
 * ```
 */
export const firstDateWithin = (date: CivilDate, window: MonthDayWindow): CivilDate => {
  const fields = dateFields(date, "date");
  const ends = windowEnds(window, "window");
  if (within(fields, ends)) return dateText(fields);
  // A window of 29 February alone opens once in up to eight years.
  for (let year = fields.year; year <= Math.min(fields.year + 8, 9999); year++) {
    const open = opening(year, ends.from);
    const later = year > fields.year || open.month * 100 + open.day > fields.month * 100 + fields.day;
    if (later && within(open, ends)) return dateText(open);
  }
  return outOfRange("date", date, { max: "9999-12-31" }, "a window that opens at {}");
};
