import { fail, outOfRange } from "../quantity/index.js";
import {
  type CivilDate,
  dateFields,
  dateOfNumber,
  dateText,
  dayNumberOf,
  wholeNumber,
} from "./civil-date.js";
import { daysOfMonth, firstDay, lastDay } from "./day-number.js";

/**
 * The date that lies a number of days later, or earlier for a negative number.
 *
 * @param days - a whole number
 * @throws RatewrightError `date`; `range` for a part of a day or a year outside 0001 to 9999; `not-finite`
 *
 * @example
 * ```ts
 * import { addDays } from "ratewright";
 * addDays("2024-02-20", 60); // => "2024-04-20"
 * addDays("2026-01-01", -1); // => "2025-12-31"
 * ```
 */
export const addDays = (date: CivilDate, days: number): CivilDate => {
  const number = dayNumberOf(date, "date") + wholeNumber(days, "days");
  return number >= firstDay && number <= lastDay
    ? dateOfNumber(number, "days")
    : outOfRange(
        "days",
        days,
        { min: firstDay - number + days, max: lastDay - number + days, unit: "d" },
        "{}: the years 0001 to 9999",
      );
};

/**
 * The number of days from one date to another: `b - a`, negative where `b` is the earlier one. Both
 * ends are not counted: from a day to the next is 1.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { daysBetween } from "ratewright";
 * daysBetween("2026-05-01", "2026-05-22"); // => 21
 * daysBetween("2026-05-22", "2026-05-01"); // => -21
 * ```
 */
export const daysBetween = (a: CivilDate, b: CivilDate): number => dayNumberOf(b, "b") - dayNumberOf(a, "a");

/**
 * -1, 0 or 1 as `a` is earlier than, the same as or later than `b`; it fits `Array.prototype.sort`.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { compareDates } from "ratewright";
 * compareDates("2026-05-01", "2026-04-30"); // => 1
 * ```
 */
export const compareDates = (a: CivilDate, b: CivilDate): -1 | 0 | 1 => {
  const days = daysBetween(a, b);
  return days > 0 ? -1 : days < 0 ? 1 : 0;
};

/**
 * The date that lies a number of months later, or earlier for a negative number. Where the month has
 * no such day it is the last day of the month, so adding and taking away a month does not always lead
 * back: 31 January and one month is 28 February, and a month before that is 28 January.
 *
 * @param months - a whole number
 * @throws RatewrightError `date`; `range` for a part of a month or a year outside 0001 to 9999; `not-finite`
 *
 * @example
 * ```ts
 * import { addMonths } from "ratewright";
 * addMonths("2026-01-31", 1); // => "2026-02-28"
 * addMonths("2024-02-29", 12); // => "2025-02-28"
 * ```
 */
export const addMonths = (date: CivilDate, months: number): CivilDate => {
  const { year, month, day } = dateFields(date, "date");
  const count = year * 12 + month - 1 + wholeNumber(months, "months");
  const toYear = Math.floor(count / 12);
  if (!(toYear >= 1 && toYear <= 9999)) {
    outOfRange(
      "months",
      months,
      { min: 12 - count + months, max: 119_999 - count + months },
      "{}: the years 0001 to 9999",
    );
  }
  const toMonth = count - toYear * 12 + 1;
  return dateText({ year: toYear, month: toMonth, day: Math.min(day, daysOfMonth(toYear, toMonth)) });
};

/**
 * Every date from one to another, both ends included.
 *
 * @throws RatewrightError `date`, also where `to` is earlier than `from`
 *
 * @example
 * ```ts
 * import { dateRange } from "ratewright";
 * dateRange("2024-02-28", "2024-03-01"); // => ["2024-02-28", "2024-02-29", "2024-03-01"]
 * ```
 */
export const dateRange = (from: CivilDate, to: CivilDate): CivilDate[] => {
  const first = dayNumberOf(from, "from");
  const last = dayNumberOf(to, "to");
  if (last < first) fail("date", "to", to, `a date not earlier than ${from}`);
  return Array.from({ length: last - first + 1 }, (_, i) => dateOfNumber(first + i, "to"));
};
