import { addDays, type CivilDate, type DailySeries, weekday } from "../../calendar/index.js";
import { accurateSum, exceeds } from "../../numeric/index.js";
import { checks, expectRecord, type Finding, fail, outOfRange } from "../../quantity/index.js";
import type { DailyDepths } from "../daily-depths.js";
import { type Length, made, readRecord, type Share } from "../read.js";
import { balanceReaders, daysOf, filled, longestSeason, type PlanRead } from "./balance-input.js";
import { expectDepletion } from "./depletion.js";
import { type EffectiveRainMethod, effectiveOf } from "./effective-rain.js";
import { dayOf, type SeasonDay } from "./water-day.js";

/** When the balance waters by itself, and how much. */
export interface WateringPlan {
  /** The depletion at which it waters, percent of what the root zone holds, at the start of the day. */
  readonly at: Share;
  /** Net depth of a watering; what is missing to field capacity where left out. */
  readonly depth?: Length;
  /** Days of the week on which it may water, 1 for Monday; every day where left out. */
  readonly days?: readonly (1 | 2 | 3 | 4 | 5 | 6 | 7)[];
}

/** A season of the water in the root zone, day by day, in mm. */
export interface SoilWaterBalance {
  readonly type: "soil-water-balance";
  readonly version: 1;
  readonly start: CivilDate;
  readonly days: number;
  /** What is missing to field capacity at the end of each day. */
  readonly depleted: readonly number[];
  readonly used: readonly number[];
  readonly drained: readonly number[];
  readonly irrigation: readonly number[];
  /** The share of its full use that the turf managed, 0 to 1. */
  readonly stress: readonly number[];
  readonly totals: {
    readonly rain: Length;
    readonly effectiveRain: Length;
    readonly irrigation: Length;
    readonly used: Length;
    readonly drained: Length;
    /** By how much the water in the root zone grew from start to end; below zero where it shrank. */
    readonly stored: Length;
    readonly waterings: number;
    /** Days on which the turf could not use all it would. */
    readonly stressedDays: number;
  };
  /** Days without a figure of rain that counted as dry, because the caller said so. */
  readonly rainAssumedDry: readonly CivilDate[];
  readonly findings: readonly Finding[];
}

/**
 * The water in the root zone over a season, day by day: rain and irrigation in, use and drainage out.
 *
 * - `available` `TAW` and `depletion` `p` as in {@link soilWaterDay}; `before` the depletion at the start
 * - `use` daily series of the turf's full use, such as {@link hargreavesSeries} times the turf coefficient: its days are the
 *   days of the balance. `rain` daily series that has all of them. Units of length
 * - `missingRain`: a day without a figure of rain is refused, the default, or counts as `"dry"`, and is listed
 * - `effective`: all rain enters the soil, the default, or the part by `"Texas, day"` ({@link effectiveRain}); what the soil
 *   cannot hold drains either way
 * - `irrigation` a daily series of net depths, or `plan`, which waters at the start of a day on which the depletion has reached
 *   `at`; not both. Without either it does not water
 *
 * Water in is water out and what is stored: `effective rain + irrigation = used + drained + stored`. No runoff, no rise from
 * below, one root depth.
 *
 * @throws RatewrightError `missing` for a day that a series lacks; `conflict` for irrigation beside a plan; `range`, `date`,
 * `unit/mismatch`, `type`; all that are found
 *
 * Source: FAO Irrigation and Drainage Paper 56, equations 84 to 88, as a public program has them; the checkbook of an irrigation guide:
 * "Irrigation management practices to protect ground water" (EM4885), chapter 4.
 *
 * @example
 * ```ts
 * import { dailySeries, quantity, soilWaterBalance } from "ratewright";
 * const series = (what: string, values: (number | null)[]) =>
 *   dailySeries({ start: "2026-06-01", unit: "mm", what, source: "station at the depot", values });
 * const week = soilWaterBalance({
 *   available: quantity(40, "mm"), depletion: quantity(50, "%"), before: quantity(10, "mm"),
 *   use: series("use", [5, 5, 5, 5]), rain: series("rain", [0, 0, 25, 0]), plan: { at: quantity(50, "%") },
 * });
 * week.depleted; // => [15, 20, 0, 5]
 * week.irrigation; // => [0, 0, 20, 0]
 * week.totals.drained.in("mm"); // => 20
 * ```
 */
export const soilWaterBalance = (input: {
  readonly available: Length;
  readonly depletion: Share;
  readonly before: Length;
  readonly use: DailySeries;
  readonly rain: DailySeries;
  readonly missingRain?: "refuse" | "dry";
  readonly effective?: "all" | Extract<EffectiveRainMethod, "Texas, day">;
  readonly irrigation?: DailySeries;
  readonly plan?: WateringPlan;
}): SoilWaterBalance => {
  const record = expectRecord(input, "input", "a record with available, depletion, before, use and rain");
  const q = readRecord(
    input,
    {
      ...balanceReaders,
      plan: (value, path) => {
        if (value !== undefined && record.irrigation !== undefined)
          fail("conflict", path, value, "either irrigation or plan, not both");
        return balanceReaders.plan(value, path);
      },
    },
    "a record with available, depletion, before, use and rain",
  );
  const { start } = q.use;
  const days = q.use.mm.length;
  if (days > longestSeason) outOfRange("use.values", days, { max: longestSeason, count: "days" });
  const problems = checks();
  const demand = problems.run(() => filled(q.use.mm, "use")) ?? [];
  const fallen = problems.run(() => daysOf(q.rain, start, days, "rain")) ?? [];
  const rain =
    q.missingRain === "dry"
      ? fallen.map((mm) => mm ?? 0)
      : (problems.run(() => filled(fallen, "rain", ', or missingRain: "dry"')) ?? []);
  const given =
    q.irrigation === undefined
      ? undefined
      : problems.run(() =>
          filled(daysOf(q.irrigation as DailyDepths, start, days, "irrigation"), "irrigation"),
        );
  const total = q.available.in("mm");
  const before = problems.run(() => expectDepletion(q.before.in("mm"), total, "before")) ?? 0;
  problems.done();
  return balance({
    start,
    total,
    fraction: q.depletion / 100,
    before,
    demand,
    rain,
    effective: q.effective === "all" ? rain : rain.map((mm) => effectiveOf("Texas, day", mm)),
    given,
    plan: q.plan,
    dry: fallen.flatMap((mm, i) => (mm === null ? [addDays(start, i)] : [])),
  });
};

interface Season {
  readonly start: CivilDate;
  readonly total: number;
  readonly fraction: number;
  readonly before: number;
  readonly demand: readonly number[];
  readonly rain: readonly number[];
  readonly effective: readonly number[];
  readonly given: readonly number[] | undefined;
  readonly plan: PlanRead | undefined;
  readonly dry: readonly CivilDate[];
}

/** What the plan puts down at the start of a day, mm. */
const planned = (season: Season, depleted: number, day: number): number => {
  const { plan: own, total } = season;
  if (own === undefined || (own.days !== undefined && !own.days.includes(day))) return 0;
  return exceeds((own.at / 100) * total, depleted) ? 0 : (own.depth?.in("mm") ?? depleted);
};

const balance = (season: Season): SoilWaterBalance => {
  const { start, total, fraction, demand, effective } = season;
  const first = weekday(start);
  const days: (SeasonDay & { readonly irrigation: number })[] = [];
  let now = season.before;
  demand.forEach((mm, i) => {
    const irrigation = season.given?.[i] ?? planned(season, now, ((first - 1 + i) % 7) + 1);
    const day = dayOf({ total, fraction, before: now, rain: effective[i] as number, irrigation, demand: mm });
    now = day.depleted;
    days.push({ ...day, irrigation });
  });
  const mm = (values: readonly number[]): Length => made(accurateSum(values), "mm", "length");
  const stressed = days.filter(({ stress }) => exceeds(1, stress)).length;
  return {
    type: "soil-water-balance",
    version: 1,
    start,
    days: days.length,
    depleted: days.map(({ depleted }) => depleted),
    used: days.map(({ used }) => used),
    drained: days.map(({ drained }) => drained),
    irrigation: days.map(({ irrigation }) => irrigation),
    stress: days.map(({ stress }) => stress),
    totals: {
      rain: mm(season.rain),
      effectiveRain: mm(effective),
      irrigation: mm(days.map(({ irrigation }) => irrigation)),
      used: mm(days.map(({ used }) => used)),
      drained: mm(days.map(({ drained }) => drained)),
      stored: made(season.before - now, "mm", "length"),
      waterings: days.filter(({ irrigation }) => irrigation > 0).length,
      stressedDays: stressed,
    },
    rainAssumedDry: season.dry,
    findings: season.dry.length === 0 ? [] : [dryDays(season.dry)],
  };
};

const dryDays = (dates: readonly CivilDate[]): Finding => ({
  code: "water/rain-assumed-dry",
  severity: "caution",
  path: "rain",
  params: { days: dates.length, first: dates[0] as string },
  text:
    dates.length === 1
      ? `A day without a figure of rain counted as dry: ${dates[0]}.`
      : `${dates.length} days without a figure of rain counted as dry, the first on ${dates[0]}.`,
});
