import { addDays, type CivilDate, civilDate } from "../../calendar/index.js";
import { expectFields, expectNumber, outOfRange } from "../../quantity/index.js";

/**
 * The dates of applications that follow one another at an interval of days: `n` applications have
 * `n - 1` intervals, so three at 21 days end 42 days after the first.
 *
 * @param input.first - the date of the first application
 * @param input.intervalDays - from each to the next, a whole number, 1 or more
 * @param input.count - how many applications, 1 to 366
 * @throws RatewrightError `date`, `range`, `not-finite`
 *
 * Source: counting of days.
 *
 * @example
 * ```ts
 * import { applicationDates } from "ratewright";
 * applicationDates({ first: "2026-05-01", intervalDays: 21, count: 3 });
 * // => ["2026-05-01", "2026-05-22", "2026-06-12"]
 * ```
 */
export const applicationDates = (input: {
  readonly first: CivilDate;
  readonly intervalDays: number;
  readonly count: number;
}): CivilDate[] => {
  expectFields(input, ["first", "intervalDays", "count"]);
  const first = civilDate(input.first, "first");
  const days = expectNumber(input.intervalDays, "intervalDays", { min: 1 });
  const count = expectNumber(input.count, "count", { min: 1, max: 366 });
  if (!Number.isInteger(days)) outOfRange("intervalDays", days, { step: 1, count: "days" });
  if (!Number.isInteger(count)) outOfRange("count", count, { step: 1, count: "applications" });
  return Array.from({ length: count }, (_, i) => addDays(first, i * days));
};
