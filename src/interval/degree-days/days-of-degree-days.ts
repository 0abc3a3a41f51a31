import {
  addDays,
  type CivilDate,
  civilDate,
  type DailyTemperatures,
  dailyTemperatures,
  daysBetween,
} from "../../calendar/index.js";
import {
  expectFields,
  expectNumber,
  fail,
  outOfRange,
  RatewrightError,
  shown,
} from "../../quantity/index.js";
import type { DegreeDayMethod } from "./degree-day-method.js";
import type { DegreeDayModel } from "./degree-day-model.js";
import { needsNextDay } from "./degree-days-of-day.js";

/**
 * What happens to a day that lacks its highest or lowest temperature.
 *
 * - `"refuse"`, the default everywhere: the call throws `missing` with the dates.
 * - `"leave out"`: the day counts 0, so that the total is a lower bound and a date comes late.
 * - `{ interpolateUpToDays: n }`: a gap of at most `n` days between two days with figures takes what is
 *   missing from the straight line between them; a longer gap, and one at an end of the series, is refused, and
 *   so is a day whose highest temperature would come out below its lowest.
 *
 * The last two are common practice, no source; a result names the days that they touched.
 */
export type MissingDays = "refuse" | "leave out" | { readonly interpolateUpToDays: number };

/** How a day came by its figure. */
export type DayBasis = "measured" | "interpolated" | "left out";

/** One day, on the scale of its series; without temperatures where the policy has none for it. */
export interface HeatDay {
  readonly date: CivilDate;
  readonly max: number;
  readonly min: number;
  /** The lowest temperature of the next day; that of this one where the method does not ask for it. */
  readonly nextMin: number;
  /** `"missing"` where the day has to be refused, `"crossed"` where a filled highest lies below the lowest. */
  readonly basis: DayBasis | "missing" | "crossed";
}

const checkedPolicy = (missing: MissingDays): MissingDays => {
  if (missing === "refuse" || missing === "leave out") return missing;
  if (typeof missing !== "object" || missing === null) {
    return fail("type", "missing", missing, '"refuse", "leave out" or { interpolateUpToDays }');
  }
  expectFields(missing, ["interpolateUpToDays"], "missing");
  const days = expectNumber(missing.interpolateUpToDays, "missing.interpolateUpToDays", { min: 1 });
  if (!Number.isInteger(days)) outOfRange("missing.interpolateUpToDays", days, { step: 1, count: "days" });
  return missing;
};

/** The value at `at` on the line over a gap, or `undefined` where the policy does not reach. */
const bridged = (list: readonly (number | null)[], at: number, longest: number): number | undefined => {
  let [before, after] = [at, at];
  while (before >= 0 && typeof list[before] !== "number") before--;
  while (after < list.length && typeof list[after] !== "number") after++;
  if (before < 0 || after >= list.length || after - before - 1 > longest) return undefined;
  const [a, b] = [list[before] as number, list[after] as number];
  return before === after ? a : a + ((b - a) * (at - before)) / (after - before);
};

/** Takes a series that may come from JSON, and tells that it fits the model. */
export const checkedSeries = (
  input: DailyTemperatures,
  model: DegreeDayModel,
  path = "series",
): DailyTemperatures => {
  if (input?.type !== "daily-temperatures") return fail("type", path, input, "daily temperatures");
  let series = input;
  try {
    series = dailyTemperatures(input);
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(error.problems.map((p) => ({ ...p, path: `${path}.${p.path}` })));
  }
  if (series.sensor !== model.sensor) {
    fail("conflict", `${path}.sensor`, series.sensor, `the sensor of the model, which is ${model.sensor}`);
  }
  return series;
};

/** A sum goes over a century at most: what is longer is a year that was mistyped. */
const mostDays = 36_525;

/** The days of a series from one date to another, filled as the policy says. */
export const daysOfHeat = (
  series: DailyTemperatures,
  from: CivilDate,
  to: CivilDate,
  missing: MissingDays,
  method: DegreeDayMethod = "simple average",
): HeatDay[] => {
  const policy = checkedPolicy(missing);
  const first = daysBetween(series.start, from);
  const count = daysBetween(from, to) + 1;
  if (count > mostDays)
    outOfRange("from", from, { max: mostDays, count: "days" }, `{}, a century, up to ${to}`);
  return Array.from({ length: count }, (_, i): HeatDay => {
    const at = first + i;
    const date = addDays(from, i);
    const [max, min] = [series.max[at], series.min[at]];
    const nextMin = needsNextDay(method) ? series.min[at + 1] : min;
    if (typeof max === "number" && typeof min === "number" && typeof nextMin === "number") {
      return { date, max, min, nextMin, basis: "measured" };
    }
    const none = { date, max: 0, min: 0, nextMin: 0 } as const;
    if (policy === "leave out") return { ...none, basis: "left out" };
    if (policy !== "refuse" && at >= 0 && at < series.max.length) {
      const longest = policy.interpolateUpToDays;
      const high = bridged(series.max, at, longest);
      const low = bridged(series.min, at, longest);
      const next = needsNextDay(method) ? bridged(series.min, at + 1, longest) : low;
      if (high !== undefined && low !== undefined && next !== undefined) {
        // A filled value may cross a measured one: then there is no line to trust.
        return low > high
          ? { ...none, basis: "crossed" }
          : { date, max: high, min: low, nextMin: next, basis: "interpolated" };
      }
    }
    return { ...none, basis: "missing" };
  });
};

/** Throws `missing` with every date that has to be refused. */
export const refuseMissing = (
  days: readonly HeatDay[],
  series: DailyTemperatures,
  method: DegreeDayMethod = "simple average",
): void => {
  const also = needsNextDay(method) ? ", the lowest of the next day" : "";
  const problems = days
    .filter(({ basis }) => basis === "missing" || basis === "crossed")
    .map(({ date, basis }) => {
      const at = daysBetween(series.start, date);
      const inside = at >= 0 && at < series.max.length;
      return {
        code: "missing",
        path: `series.${date}`,
        got: inside
          ? `min ${shown(series.min[at])}, max ${shown(series.max[at])}${also && `, next min ${shown(series.min[at + 1])}`}`
          : "a day outside the series",
        expected:
          basis === "crossed"
            ? `a lowest and a highest temperature${also}: on the line over the gap the highest is below the lowest`
            : `a lowest and a highest temperature${also}, or a policy for missing days that covers it`,
      } as const;
    });
  if (problems.length > 0) throw new RatewrightError(problems);
};

/** Takes the first day of a sum; it has to be the start of the model where that states one. */
export const checkedFrom = (input: CivilDate, model: DegreeDayModel): CivilDate => {
  const from = civilDate(input, "from");
  if (model.start !== undefined && from.slice(5) !== model.start) {
    fail("conflict", "from", from, `the day from which the model counts, which is ${model.start}`);
  }
  return from;
};
