import { addDays, type CivilDate, daysBetween } from "../../calendar/index.js";
import { described } from "../../quantity/house.js";
import { checks, fail, outOfRange } from "../../quantity/index.js";
import { type DailyDepths, dailyDepths } from "../daily-depths.js";
import {
  depth,
  depthOrNone,
  type Length,
  mostUse,
  optional,
  percent,
  type Read,
  readRecord,
  word,
} from "../read.js";

const weekdays: Read<readonly number[]> = (input, path) => {
  if (!Array.isArray(input) || input.length === 0 || input.length > 7)
    return fail("type", path, input, "a list of one to seven days, 1 for Monday to 7 for Sunday");
  const problems = checks();
  input.forEach((day: unknown, i) => {
    if (!([1, 2, 3, 4, 5, 6, 7] as readonly unknown[]).includes(day))
      problems.run(() =>
        outOfRange(`${path}[${i}]`, day, { step: 1, min: 1, max: 7 }, "{}: 1 for Monday, 7 for Sunday"),
      );
  });
  problems.done();
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
    { at: percent({ above: 0, max: 100 }, 1), depth: optional(depth), days: optional(weekdays) },
    "a record with at, depth and days",
    path,
  );

/** Longest season: a century of days. */
export const longestSeason = 36_525;

/** The days of a column from a date on; a day before its start or after its end is refused. */
export const daysOf = (
  series: DailyDepths,
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
      described(`days from ${series.start}`),
      `every day from ${start} to ${end}, as use has them`,
    );
  }
  return series.mm.slice(offset, offset + days);
};

/** Refuses a day without a figure. */
export const filled = (
  values: readonly (number | null)[],
  path: string,
  next = "; gapsOf names the days without one",
): readonly number[] => {
  const gap = values.indexOf(null);
  return gap < 0
    ? (values as readonly number[]).map((value) => value + 0)
    : fail(
        "missing",
        `${path}.values[${gap}]`,
        described(`null on day ${gap + 1}`),
        `a figure for every day of the season${next}`,
      );
};

/** What turf uses day by day. */
const dailyUses: Read<DailyDepths> = (input, path) => {
  const series = dailyDepths(input, path);
  const at = series.mm.findIndex((mm) => mm !== null && mm > mostUse);
  return at < 0
    ? series
    : outOfRange(
        `${path}.values[${at}]`,
        series.mm[at],
        { max: mostUse, unit: "mm" },
        "a use of {}: no sun evaporates more in a day",
      );
};

/** The readers of the balance. */
export const balanceReaders: {
  readonly available: Read<Length>;
  readonly depletion: Read<number>;
  readonly before: Read<Length>;
  readonly use: Read<DailyDepths>;
  readonly rain: Read<DailyDepths>;
  readonly missingRain: Read<"refuse" | "dry">;
  readonly effective: Read<"all" | "Texas, day">;
  readonly irrigation: Read<DailyDepths | undefined>;
  readonly plan: Read<PlanRead | undefined>;
} = {
  available: depth,
  depletion: percent({ min: 0, below: 100 }, 1),
  before: depthOrNone,
  use: dailyUses,
  rain: dailyDepths,
  missingRain: word(["refuse", "dry"], "refuse"),
  effective: word(["all", "Texas, day"], "all"),
  irrigation: optional(dailyDepths),
  plan: optional(plan),
};
