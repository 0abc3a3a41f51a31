import { outOfRange } from "../quantity/index.js";

/** A date taken apart: whole numbers, month 1 to 12. */
export interface DateFields {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** Days of 400 Gregorian years, after which the calendar repeats. */
const cycle = 146097;
/** The day number of 0000-03-01, counted from 1970-01-01. */
const shift = 719468;

/** The smallest and largest day number that is handled: 0001-01-01 and 9999-12-31. */
export const firstDay = -719162;
export const lastDay = 2932896;

/**
 * Days from 1970-01-01 to a date of the proleptic Gregorian calendar.
 *
 * Years are counted from 1 March, so that the leap day is the last day of its year.
 * Source: H. Hinnant, "chrono-Compatible Low-Level Date Algorithms", 2013, `days_from_civil`.
 */
export const dayNumber = ({ year, month, day }: DateFields): number => {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfMarchYear = Math.floor((153 * (month > 2 ? month - 3 : month + 9) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfMarchYear;
  return era * cycle + dayOfEra - shift;
};

/** The date of a day number; `civil_from_days` of the same source. Throws `range` outside 0001 to 9999. */
export const fieldsOf = (number: number, path: string): DateFields => {
  if (!(number >= firstDay && number <= lastDay)) {
    outOfRange(path, number, { min: firstDay, max: lastDay }, "a day number of {}: the years 0001 to 9999");
  }
  const z = number + shift;
  const era = Math.floor(z / cycle);
  const dayOfEra = z - era * cycle;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36524) -
      Math.floor(dayOfEra / (cycle - 1))) /
      365,
  );
  const dayOfMarchYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const m = Math.floor((5 * dayOfMarchYear + 2) / 153);
  const month = m < 10 ? m + 3 : m - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return { year, month, day: dayOfMarchYear - Math.floor((153 * m + 2) / 5) + 1 };
};

/** Whether a year of the Gregorian calendar has a 29 February. */
export const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** The number of days of a month. */
export const daysOfMonth = (year: number, month: number): number =>
  month === 2 && isLeap(year) ? 29 : (lengths[month - 1] as number);
