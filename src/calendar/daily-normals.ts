import {
  expectFields,
  fail,
  type Problem,
  plainCopy,
  RatewrightError,
  rangeProblem,
  shown,
} from "../quantity/index.js";
import type { CivilDate } from "./civil-date.js";
import { textProblems } from "./daily-series.js";
import { extremeProblems, isSensor, type TemperatureSensor } from "./daily-temperatures.js";
import { dayOfYear, isLeapYear, yearOf } from "./date-parts.js";

/**
 * What the temperatures of each day of the year are on average: 366 figures from 1 January to
 * 31 December, 29 February included. Plain JSON.
 */
export interface DailyNormals {
  readonly type: "daily-normals";
  readonly version: 1;
  readonly unit: "°C" | "°F";
  readonly min: readonly number[];
  readonly max: readonly number[];
  /**
   * By how much a warm or a cool year departs from the normal on each day, in degrees of the unit, as its
   * source states it: one standard deviation between years, say.
   */
  readonly spread?: readonly number[];
  readonly sensor: TemperatureSensor;
  /** The station and the years. */
  readonly source: string;
}

/**
 * Makes a record of daily normals, and reports everything that is wrong with it at once.
 *
 * @throws RatewrightError `type`, `range` for another number than 366, a negative spread or a temperature that
 * neither air nor soil can have, `not-finite`, `conflict` for a minimum above its maximum, `unit/unknown`, `missing`
 *
 * @example
 * ```ts
 * import { dailyNormals, normalDay } from "ratewright";
 * const normals = dailyNormals({
 *   unit: "°C", sensor: "air", source: "station at the depot, 1991-2020",
 *   min: Array.from({ length: 366 }, (_, i) => 5 - 10 * Math.cos((i * Math.PI) / 183)),
 *   max: Array.from({ length: 366 }, (_, i) => 15 - 10 * Math.cos((i * Math.PI) / 183)),
 * });
 * normalDay(normals, "2026-01-01"); // => { min: -5, max: 5, spread: null }
 * ```
 */
export const dailyNormals = (input: Omit<DailyNormals, "type" | "version">): DailyNormals => {
  const fields = ["type", "version", "unit", "min", "max", "spread", "sensor", "source"] as const;
  const { unit, min, max, spread, sensor, source } = expectFields(
    plainCopy(input),
    fields,
    "normals",
  ) as DailyNormals;
  const problems: Problem[] = textProblems({ source });
  if (unit !== "°C" && unit !== "°F") {
    problems.push({ code: "unit/unknown", path: "unit", got: shown(unit), expected: "°C or °F" });
  }
  if (!isSensor(sensor)) {
    const expected = "air, or soil at a depth such as soil at 4 in";
    problems.push({ code: "type", path: "sensor", got: shown(sensor), expected });
  }
  const lists = { min, max, ...(spread === undefined ? {} : { spread }) };
  for (const [path, list] of Object.entries(lists) as [string, unknown][]) {
    if (!Array.isArray(list)) {
      problems.push({ code: "type", path, got: shown(list), expected: "a list of 366 numbers" });
      continue;
    }
    if (list.length !== 366) {
      const year = { min: 366, max: 366, count: "figures" };
      problems.push(rangeProblem(path, `${list.length} figures`, year, "{}, with one for 29 February"));
      continue;
    }
    // A hole in the list is a day without a figure, which forEach would leave out.
    Array.from(list as readonly unknown[]).forEach((value, i) => {
      if (typeof value !== "number" || !Number.isFinite(value)) {
        problems.push({ code: "not-finite", path: `${path}[${i}]`, got: shown(value), expected: "a number" });
      } else if (path === "spread" && value < 0) {
        problems.push(rangeProblem(`${path}[${i}]`, shown(value), { min: 0 }));
      } else if (path === "max" && Array.isArray(min) && typeof min[i] === "number" && value < min[i]) {
        const expected = `not more than max[${i}], which is ${value}`;
        problems.push({ code: "conflict", path: `min[${i}]`, got: shown(min[i]), expected });
      }
    });
    if (path !== "spread") problems.push(...extremeProblems(path, list, unit, sensor));
  }
  if (problems.length > 0) throw new RatewrightError(problems);
  return {
    type: "daily-normals",
    version: 1,
    unit,
    min: [...min],
    max: [...max],
    ...(spread === undefined ? {} : { spread: [...spread] }),
    sensor,
    source,
  };
};

/** What normals say of one day. */
export interface NormalDay {
  readonly min: number;
  readonly max: number;
  readonly spread: number | null;
}

/**
 * The normal temperatures of a date, in the unit of the normals.
 *
 * @throws RatewrightError `date`, `type`; `missing` where a record from JSON has no figure for the day
 *
 * @example
 * ```ts
 * import { dailyNormals, normalDay } from "ratewright";
 * const flat = (value: number) => Array<number>(366).fill(value);
 * const normals = dailyNormals({
 *   unit: "°C", sensor: "air", source: "depot, 1991-2020", min: flat(10), max: flat(20), spread: flat(2),
 * });
 * normalDay(normals, "2024-02-29"); // => { min: 10, max: 20, spread: 2 }
 * ```
 */
export const normalDay = (normals: DailyNormals, date: CivilDate): NormalDay => {
  if (normals?.type !== "daily-normals") return fail("type", "normals", normals, "daily normals");
  const day = dayOfYear(date);
  // In a common year every day from 1 March on stands one place further on.
  const at = day > 59 && !isLeapYear(yearOf(date)) ? day : day - 1;
  const figure = (list: unknown, path: string): number => {
    const value: unknown = Array.isArray(list) ? list[at] : undefined;
    if (typeof value === "number" && Number.isFinite(value)) return value + 0;
    return fail(value === undefined ? "missing" : "not-finite", `normals.${path}[${at}]`, value, "a number");
  };
  return {
    min: figure(normals.min, "min"),
    max: figure(normals.max, "max"),
    spread: normals.spread === undefined ? null : figure(normals.spread, "spread"),
  };
};
