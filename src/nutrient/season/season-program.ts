import { type CivilDate, civilDate, isWithinWindow } from "../../calendar/index.js";
import type { Finding, Quantity } from "../../quantity/index.js";
import {
  type CapName,
  capNames,
  capText,
  type DatedNitrogen,
  type DayAmount,
  dayCount,
  nitrogenRate,
  usedAround,
} from "./nitrogen-caps.js";
import { type ProgramPlan, plannedParts, type SeasonProgramInput, seasonDays } from "./program-parts.js";
import { readProgram } from "./read-program.js";

/** What a month gets, beside its target. */
export interface MonthBalance {
  readonly month: string;
  /** `null` where the plan has none for the month. */
  readonly target: Quantity<"mass/area", "N"> | null;
  readonly planned: Quantity<"mass/area", "N">;
}

/** Applications by date. A plan to be checked against label and local rules, never a leave to apply. */
export interface SeasonProgram {
  readonly type: "season-program";
  readonly version: 1;
  readonly plan: ProgramPlan;
  readonly applications: readonly DatedNitrogen[];
  readonly months: readonly MonthBalance[];
  readonly target: Quantity<"mass/area", "N">;
  readonly planned: Quantity<"mass/area", "N">;
  /** What the stated caps and closed seasons leave no room for. */
  readonly shortfall: Quantity<"mass/area", "N">;
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** Room below which a rest counts as placed, as a share of the season. */
const guard = 1e-9;

/**
 * The applications of a season by date: a target split into applications so that no stated cap is exceeded.
 *
 * - `"fewest applications"`: with a target for every month, each month gets `ceil(target / cap)` equal
 *   applications; with a total only, the season gets `ceil(total / cap)`. `cap` is the one per application.
 * - `"even split"`: the total in equal applications: as many as stated, or one on the first day of each month.
 * - `"growth curve"`: the total shared by the weights of the months (growth potential, clippings of past
 *   years); each month is then split as for fewest applications.
 *
 * The season is the days of the listed months: nothing is planned in a month that is left out between two of
 * them. Other applications lie evenly in their month or season, the first on its first day. One that would
 * pass a cap, or that falls into a closed season or on a day that has an application already, moves to the first
 * later day of its month (of the season for a total and an even split) that takes it whole; where none does, it goes
 * down in parts on the days with some room, in order, and the rest is reported as a shortfall, never squeezed in.
 * Fixed entries of `applied` count against the caps. Amounts compare at a relative 1e-9.
 *
 * @throws RatewrightError `missing` (a target, a weight, a total, a cap's source), `conflict` (caps that
 *   contradict, months out of order, total beside targets), `range`, `type`, `date`
 *
 * Source: monthly rates that add up to the yearly maximum, University of Maryland Extension, "Lawn
 * fertilizer schedule table", 2023; a yearly need in applications of at most 1 lb N per 1000 ft2,
 * Michigan State University Extension, "Benefits of using lawn fertilizers containing slow release
 * nitrogen". Even spacing is common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity, seasonProgram } from "ratewright";
 * const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
 * const program = seasonProgram({
 *   months: [{ month: "2026-05", target: n(0.9) }, { month: "2026-09", target: n(1.2) }],
 *   plan: { kind: "fewest applications" },
 *   caps: { perApplication: { amount: n(0.9), source: "state code" } },
 * });
 * program.applications.map(({ date }) => date); // => ["2026-05-01", "2026-09-01", "2026-09-16"]
 * program.applications.map(({ nitrogen }) => nitrogen.in("lb/1000 ft2")); // => [0.9, 0.6, 0.6]
 * program.shortfall.in("lb/1000 ft2"); // => 0
 * ```
 */
export const seasonProgram = (input: SeasonProgramInput): SeasonProgram => {
  const { months, unit, caps, applied, closed, total, plan } = readProgram(input);
  const log: DayAmount[] = [...applied];
  const placed: DayAmount[] = [];
  const findings: Finding[] = [];
  const parts = plannedParts({ months, plan, total, most: caps.perApplication });
  const open = seasonDays(months)
    .filter((date) => !closed.some(({ window }) => isWithinWindow(date, window)))
    .map((date) => ({ date, day: dayCount(date) }));
  // Two on one day would be one application; an entry without nitrogen is none.
  const taken = new Set(log.filter(({ amount }) => amount > 0).map(({ day }) => day));
  const room = (date: CivilDate, day: number): number => {
    let least = taken.has(day) ? 0 : Number.POSITIVE_INFINITY;
    for (const name of capNames) {
      const cap = caps[name];
      if (cap !== undefined && least > 0) least = Math.min(least, cap - usedAround(name, log, date, day));
    }
    return least;
  };
  const small = guard * total;
  const place = (date: CivilDate, day: number, amount: number): void => {
    const entry = { date, day, amount };
    log.push(entry);
    placed.push(entry);
    taken.add(day);
  };
  let short = 0;
  for (const part of parts) {
    let rest = part.amount;
    const [from, to] = [dayCount(part.date), dayCount(part.last)];
    const days = open.filter(({ day }) => day >= from && day <= to);
    // First a day that takes it whole, then the days with some room, in order.
    const whole = days.find(({ date, day }) => room(date, day) >= rest - small);
    if (whole !== undefined) {
      place(whole.date, whole.day, rest);
      rest = 0;
    }
    for (const { date, day } of days) {
      if (rest <= small) break;
      const space = Math.min(rest, room(date, day));
      if (space <= small) continue;
      place(date, day, space);
      rest -= space;
    }
    if (rest > small) {
      short += rest;
      findings.push({
        code: "program/shortfall",
        severity: "warning",
        path: part.path,
        params: { amount: rest, unit, from: part.date, to: part.last },
        text: `${Number(rest.toPrecision(4))} ${unit} of nitrogen planned from ${part.date} on has no room by ${part.last} under the stated caps and closed seasons.`,
      });
    } else if (placed.at(-1)?.date !== part.date) {
      findings.push({
        code: "program/moved",
        severity: "note",
        path: part.path,
        params: { from: part.date, to: placed.at(-1)?.date ?? part.date },
        text: `An application planned for ${part.date} moved to ${placed.at(-1)?.date}, or was split, for want of room before.`,
      });
    }
  }
  placed.sort((a, b) => a.day - b.day);
  const planned = placed.reduce((sum, { amount }) => sum + amount, 0);
  return {
    type: "season-program",
    version: 1,
    plan: input.plan,
    applications: placed.map(({ date, amount }) => ({
      date: civilDate(date),
      nitrogen: nitrogenRate(amount, unit),
    })),
    months: months.map(({ month, target }) => ({
      month,
      target: target === undefined ? null : nitrogenRate(target, unit),
      planned: nitrogenRate(
        placed.reduce((sum, { date, amount }) => (date.startsWith(month) ? sum + amount : sum), 0),
        unit,
      ),
    })),
    target: nitrogenRate(total, unit),
    planned: nitrogenRate(planned, unit),
    shortfall: nitrogenRate(short, unit),
    findings,
    checked: [
      ...capNames.filter((name) => caps[name] !== undefined).map((name) => `the stated cap ${capText[name]}`),
      ...closed.map(({ window }) => `closed from ${window.from} to ${window.to}`),
    ],
    notChecked: [
      ...capNames
        .filter((name: CapName) => caps[name] === undefined)
        .map((name) => `a cap ${capText[name]}: none was stated`),
      "soluble nitrogen, phosphorus, weather, soil and all other rules",
    ],
  };
};
