import { fail, outOfRange, type Problem, RatewrightError, shown } from "../quantity/index.js";
import { dateExists, dateMeant, dateOf, dateText } from "./date-readings.js";
import { type DateFields, dayNumber, daysOfMonth, fieldsOf } from "./day-number.js";

export { dateText };

/**
 * A calendar date without time of day or time zone, as ISO 8601 writes it: `"2026-05-01"`. It is plain
 * text, so that it goes through JSON as it is. The compiler sees the pattern only; every function that
 * takes one checks that the day exists.
 */
export type CivilDate = `${number}-${number}-${number}`;

/** A date object whose text is an ISO 8601 date, such as a `Temporal.PlainDate`. A `Date` is none. */
export interface PlainDateLike {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  /** The date as ISO 8601 writes it. */
  toString(): string;
}

const pattern = /^(\d{4})-(\d{2})-(\d{2})$/;
const wanted = "a calendar date written YYYY-MM-DD, of the years 0001 to 9999";
/** The number that some digits of a text write; not a number where one of them is none. */
export const numberAt = (text: string, from: number, to: number): number => {
  let number = 0;
  for (let at = from; at < to; at++) {
    const digit = text.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) return Number.NaN;
    number = number * 10 + digit;
  }
  return number;
};

/** The fields of a text that is written as it should be and exists; `undefined` of all others, which are looked at more closely. */
export const soundFields = (text: string): DateFields | undefined => {
  if (text.length !== 10 || text[4] !== "-" || text[7] !== "-") return undefined;
  const parts = { year: numberAt(text, 0, 4), month: numberAt(text, 5, 7), day: numberAt(text, 8, 10) };
  return dateExists(parts) ? parts : undefined;
};

/** The text that an object writes of itself; nothing where it writes none. A list is no date. */
export const writtenText = (input: object): string | undefined => {
  if (Array.isArray(input)) return undefined;
  try {
    return String(input);
  } catch {
    return undefined;
  }
};

const isDate = (input: unknown): boolean => Object.prototype.toString.call(input) === "[object Date]";

/** What is wrong with a text or object as a date, or its fields. */
export const readDate = (input: unknown, path: string): DateFields | Problem =>
  (typeof input === "string" ? soundFields(input) : undefined) ?? readClosely(input, path);

const readClosely = (input: unknown, path: string): DateFields | Problem => {
  const problem = (expected: string, more: object = {}): Problem => ({
    code: "date",
    path,
    got: isDate(input) ? "a Date" : shown(input),
    expected,
    ...more,
  });
  if (isDate(input)) {
    return problem("a calendar date: a Date is an instant, and its day depends on the time zone", {
      suggestion: "the day as text, YYYY-MM-DD",
    });
  }
  const text = typeof input === "object" && input !== null ? writtenText(input) : input;
  if (typeof text !== "string") return problem(wanted);
  const [, y, m, d] = pattern.exec(text) ?? [];
  if (y === undefined) {
    // an empty field
    if (text.trim() === "") return problem(wanted, { code: "missing" });
    const { meant, expected = wanted } = dateMeant(text);
    const [only] = meant;
    return problem(expected, meant.length > 1 ? { choices: meant } : only ? { suggestion: only } : {});
  }
  const parts = dateOf(y, m as string, d as string);
  if (dateExists(parts)) return parts;
  const { year, month } = parts;
  return problem(
    year >= 1 && month >= 1 && month <= 12
      ? `a day that exists: ${y}-${m} has ${daysOfMonth(year, month)} days`
      : wanted,
  );
};

/** The fields of a date, or throws `date` with the path. */
export const dateFields = (input: unknown, path: string): DateFields => {
  const read = readDate(input, path);
  if ("code" in read) throw new RatewrightError(read);
  return read;
};

/** The day number of a date, or throws `date` with the path. */
export const dayNumberOf = (input: unknown, path: string): number => dayNumber(dateFields(input, path));

/** The date of a day number, or throws `range` with the path. */
export const dateOfNumber = (number: number, path: string): CivilDate => dateText(fieldsOf(number, path));

/**
 * Takes a text or a date object as a calendar date.
 *
 * A `Date` is refused: it is an instant, and the day on which it falls depends on a time zone that it
 * does not carry. Other notations (`5/1/2026`) are refused with the readings that they may have.
 *
 * @param input - `"2026-05-01"`, or an object whose text is that, such as a `Temporal.PlainDate`
 * @param path - how an error names the argument
 * @throws RatewrightError `date`
 * Source of the notation: ISO 8601-1:2019, calendar date in extended format.
 *
 * @example
 * ```ts
 * import { civilDate, RatewrightError } from "ratewright";
 * civilDate("2026-05-01"); // => "2026-05-01"
 * try {
 *   civilDate("5/1/2026", "visits[0].date");
 * } catch (error) {
 *   if (error instanceof RatewrightError) {
 *     error.path; // => "visits[0].date"
 *     error.problems[0]?.choices; // => ["2026-05-01", "2026-01-05"]
 *   }
 * }
 * ```
 */
export const civilDate = (input: string | PlainDateLike, path = "date"): CivilDate =>
  dateText(dateFields(input, path));

/**
 * Whether a value is a calendar date as text, of a day that exists.
 *
 * @example
 * ```ts
 * import { isCivilDate } from "ratewright";
 * isCivilDate("2024-02-29"); // => true
 * isCivilDate("2026-02-29"); // => false
 * ```
 */
export const isCivilDate = (input: unknown): input is CivilDate =>
  typeof input === "string" && !("code" in readDate(input, "date"));

/** Takes a whole number, or throws with its path. */
export const wholeNumber = (input: unknown, path: string): number =>
  Number.isSafeInteger(input)
    ? (input as number) + 0
    : typeof input === "number" && Number.isFinite(input)
      ? outOfRange(path, input, { step: 1 })
      : fail("not-finite", path, input, "a whole number");
