import { expectNumber, outOfRange } from "../quantity/index.js";
import { type CivilDate, dateFields, dayNumberOf } from "./civil-date.js";
import { dayNumber, isLeap } from "./day-number.js";

/**
 * The year of a date.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { yearOf } from "ratewright";
 * yearOf("2026-05-01"); // => 2026
 * ```
 */
export const yearOf = (date: CivilDate): number => dateFields(date, "date").year;

/**
 * The month of a date, 1 for January to 12 for December.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { monthOf } from "ratewright";
 * monthOf("2026-05-01"); // => 5
 * ```
 */
export const monthOf = (date: CivilDate): number => dateFields(date, "date").month;

/**
 * The day of the month of a date, 1 to 31.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { dayOfMonth } from "ratewright";
 * dayOfMonth("2026-05-01"); // => 1
 * ```
 */
export const dayOfMonth = (date: CivilDate): number => dateFields(date, "date").day;

/**
 * The day of the year, 1 for 1 January to 365 or 366 for 31 December: the ordinal date of ISO 8601,
 * which weather services and evapotranspiration formulas call day of year.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { dayOfYear } from "ratewright";
 * dayOfYear("2026-12-31"); // => 365
 * dayOfYear("2024-12-31"); // => 366
 * ```
 */
export const dayOfYear = (date: CivilDate): number => {
  const fields = dateFields(date, "date");
  return dayNumber(fields) - dayNumber({ year: fields.year, month: 1, day: 1 }) + 1;
};

/**
 * The day of the week as ISO 8601 numbers it: 1 for Monday to 7 for Sunday.
 *
 * @throws RatewrightError `date`
 *
 * @example
 * ```ts
 * import { weekday } from "ratewright";
 * weekday("2026-05-01"); // => 5
 * ```
 */
export const weekday = (date: CivilDate): 1 | 2 | 3 | 4 | 5 | 6 | 7 => {
  // 1970-01-01, day number 0, was a Thursday.
  const days = (dayNumberOf(date, "date") + 3) % 7;
  return (((days + 7) % 7) + 1) as 1 | 2 | 3 | 4 | 5 | 6 | 7;
};

/**
 * Whether a year has a 29 February: every fourth year, but of the full centuries only every fourth.
 *
 * @param year - 1 to 9999
 * @throws RatewrightError `range`, `not-finite`
 *
 * @example
 * ```ts
 * import { isLeapYear } from "ratewright";
 * isLeapYear(2000); // => true
 * isLeapYear(2100); // => false
 * ```
 */
export const isLeapYear = (year: number): boolean => {
  const checked = expectNumber(year, "year", { min: 1, max: 9999 });
  if (!Number.isInteger(checked)) outOfRange("year", year, { step: 1 });
  return isLeap(checked);
};
