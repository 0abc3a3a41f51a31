import {
  expectFields,
  isUnit,
  type Problem,
  plainCopy,
  RatewrightError,
  rangeProblem,
  shown,
  suggestUnit,
} from "../quantity/index.js";
import { type CivilDate, civilDate, readDate } from "./civil-date.js";
import { dayNumber, firstDay, lastDay } from "./day-number.js";

/** A number for each day, or `null` where there is none: a gap is part of the record. */
export type DailyValues = readonly (number | null)[];

/**
 * One value per day, from a date on, in one unit: rain, evapotranspiration, soil temperature. Plain
 * JSON; gaps are `null` and stay visible.
 */
export interface DailySeries {
  readonly type: "daily-series";
  readonly version: 1;
  /** The date of the first value. */
  readonly start: CivilDate;
  /** The unit of all values, such as `"mm"`. */
  readonly unit: string;
  /** What is measured, for a reader: `"rain at the bowling green"`. */
  readonly what: string;
  /** Who measured it, and how. */
  readonly source: string;
  readonly values: DailyValues;
}

/** Collects what is wrong with the start of a series and a list of daily values. */
export const dailyProblems = (
  start: unknown,
  lists: readonly (readonly [path: string, list: unknown])[],
): Problem[] => {
  const problems: Problem[] = [];
  const read = readDate(start, "start");
  if ("code" in read) problems.push(read);
  for (const [path, list] of lists) {
    if (!Array.isArray(list)) {
      problems.push({ code: "type", path, got: shown(list), expected: "a list of numbers and null" });
      continue;
    }
    // Longer than all days that there are: nothing in it is looked at.
    if (list.length > lastDay - firstDay) {
      const most = { max: lastDay - firstDay, count: "days" };
      problems.push(rangeProblem(path, shown(list), most, "{}: the years 0001 to 9999"));
      continue;
    }
    if (list.length === 0) {
      problems.push({ code: "missing", path, got: "an empty list", expected: "at least one day" });
    }
    if (!("code" in read) && dayNumber(read) + list.length - 1 > lastDay) {
      const left = { max: lastDay - dayNumber(read) + 1, count: "days" };
      problems.push(rangeProblem(path, shown(list), left, "{} before the end of 9999"));
    }
    for (const [i, value] of Array.from(list as unknown[]).entries()) {
      if (value === null || (typeof value === "number" && Number.isFinite(value))) continue;
      problems.push({
        code: "not-finite",
        path: `${path}[${i}]`,
        got: shown(value),
        expected: "a finite number, or null for a day without one",
      });
    }
  }
  return problems;
};

/** A field of text that must not be empty. */
export const textProblems = (record: Readonly<Record<string, unknown>>): Problem[] =>
  Object.entries(record)
    .filter(([, text]) => typeof text !== "string" || text.trim() === "")
    .map(([path, text]) => ({
      code: "missing",
      path,
      got: shown(text),
      expected: "a text that is not empty",
    }));

/**
 * Makes a daily series, and reports everything that is wrong with it at once. Nothing is filled in.
 *
 * @throws RatewrightError `date`, `unit/unknown`, `type`, `missing`, `not-finite` with paths such as `values[3]`
 *
 * @example
 * ```ts
 * import { dailySeries, gapsOf, seriesDay } from "ratewright";
 * const rain = dailySeries({
 *   start: "2026-05-01", unit: "mm", what: "rain", source: "gauge at the depot", values: [0, 4.5, null],
 * });
 * seriesDay(rain, "2026-05-02"); // => 4.5
 * gapsOf(rain); // => [{ from: "2026-05-03", to: "2026-05-03", days: 1, missing: ["values"] }]
 * ```
 */
export const dailySeries = (input: Omit<DailySeries, "type" | "version">): DailySeries => {
  const fields = ["type", "version", "start", "unit", "what", "source", "values"] as const;
  const { start, unit, what, source, values } = expectFields(
    plainCopy(input),
    fields,
    "series",
  ) as DailySeries;
  const problems = [...dailyProblems(start, [["values", values]]), ...textProblems({ what, source })];
  if (!isUnit(unit)) {
    const near = typeof unit === "string" ? suggestUnit(unit) : undefined;
    const more = near === undefined ? {} : { suggestion: near };
    problems.push({ code: "unit/unknown", path: "unit", got: shown(unit), expected: "a unit", ...more });
  }
  if (problems.length > 0) throw new RatewrightError(problems);
  const date = civilDate(start, "start");
  return { type: "daily-series", version: 1, start: date, unit, what, source, values: [...values] };
};
