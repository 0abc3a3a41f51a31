import { addDays, type CivilDate, type DailySeries, dailySeries, daysBetween } from "../../calendar/index.js";
import { checks, fail, numberIn, quantityOf, toldAt } from "../../quantity/index.js";
import { depth, depthOrNone, type Length, optional, percent, type Read, readRecord, word } from "../read.js";

/** A daily series of depths, in mm. */
export interface Column {
  readonly start: CivilDate;
  readonly mm: readonly (number | null)[];
}

/** Takes a daily series of depths, zero or more. */
const column: Read<Column> = (input, path) => {
  if (Object(input).type !== "daily-series")
    return fail(
      input === undefined ? "missing" : "type",
      path,
      input,
      "a daily series of depths, as dailySeries makes it",
    );
  const series = toldAt(path, "series", () => dailySeries(input as DailySeries));
  const one = quantityOf(1, series.unit, "none", `${path}.unit`);
  if (one.dimension !== "length")
    fail("unit/mismatch", `${path}.unit`, series.unit, "a unit of length, such as mm or in");
  const factor = numberIn(one, "mm");
  const below = series.values.findIndex((value) => value !== null && value < 0);
  if (below >= 0) fail("range", `${path}.values[${below}]`, series.values[below], "zero or more");
  return { start: series.start, mm: series.values.map((value) => (value === null ? null : value * factor)) };
};

const weekdays: Read<readonly number[]> = (input, path) => {
  if (!Array.isArray(input) || input.length === 0 || input.length > 7)
    return fail("type", path, input, "a list of one to seven days, 1 for Monday to 7 for Sunday");
  const door = checks();
  input.forEach((day: unknown, i) => {
    if (!([1, 2, 3, 4, 5, 6, 7] as readonly unknown[]).includes(day))
      door.run(() => fail("range", `${path}[${i}]`, day, "1 for Monday to 7 for Sunday"));
  });
  door.done();
  return input as readonly number[];
};

/** A plan, read. */
export interface PlanRead {
  readonly at: number;
  readonly depth: Length | undefined;
  readonly days: readonly number[] | undefined;
}

const plan: Read<PlanRead> = (input, path) =>
  readRecord(
    input,
    { at: percent({ above: 0, max: 100 }), depth: optional(depth), days: optional(weekdays) },
    "a record with at, depth and days",
    path,
  );

/** Longest season: a century of days. */
export const longestSeason = 36_525;

/** The days of a column from a date on; a day before its start or after its end is refused. */
export const daysOf = (
  series: Column,
  start: CivilDate,
  days: number,
  path: string,
): readonly (number | null)[] => {
  const offset = daysBetween(series.start, start);
  if (offset < 0 || offset + days > series.mm.length) {
    const end = addDays(start, days - 1);
    return fail(
      "missing",
      path,
      `days from ${series.start}`,
      `every day from ${start} to ${end}, as use has them`,
    );
  }
  return series.mm.slice(offset, offset + days);
};

/** Refuses a day without a figure. */
export const filled = (values: readonly (number | null)[], path: string): readonly number[] => {
  const gap = values.indexOf(null);
  return gap < 0
    ? (values as readonly number[])
    : fail("missing", `${path}.values`, `null on day ${gap + 1}`, "a figure for every day of the season");
};

/** The readers of the balance. */
export const balanceReaders: {
  readonly available: Read<Length>;
  readonly depletion: Read<number>;
  readonly before: Read<Length>;
  readonly use: Read<Column>;
  readonly rain: Read<Column>;
  readonly missingRain: Read<"refuse" | "dry">;
  readonly effective: Read<"all" | "Texas, day">;
  readonly irrigation: Read<Column | undefined>;
  readonly plan: Read<PlanRead | undefined>;
} = {
  available: depth,
  depletion: percent({ min: 0, below: 100 }),
  before: depthOrNone,
  use: column,
  rain: column,
  missingRain: word(["refuse", "dry"], "refuse"),
  effective: word(["all", "Texas, day"], "all"),
  irrigation: optional(column),
  plan: optional(plan),
};
