import { addDays, addMonths, type CivilDate, compareDates, windowAround } from "../../calendar/index.js";
import type { LimitPeriod } from "../limit/limit.js";

/** A stretch of dates, both ends included. */
export interface Span {
  readonly from: CivilDate;
  readonly to: CivilDate;
}

/** What went down day by day, in the order of the days; each day once. */
export interface DayAmounts {
  readonly dates: readonly CivilDate[];
  readonly amounts: readonly number[];
}

type RollingPeriod = Extract<LimitPeriod, { days: number } | { months: number }>;

/** Whether a period rolls on with the day. */
export const isRolling = (per: LimitPeriod): per is RollingPeriod =>
  typeof per === "object" && ("days" in per || "months" in per);

const yearOf = (date: CivilDate): Span => ({
  from: `${date.slice(0, 4)}-01-01` as CivilDate,
  to: `${date.slice(0, 4)}-12-31` as CivilDate,
});

/** The first day of the rolling stretch that ends on a date. */
const rollingStart = (end: CivilDate, per: RollingPeriod): CivilDate =>
  "days" in per ? addDays(end, 1 - per.days) : addDays(addMonths(end, -per.months), 1);

/** The last day on which a rolling stretch that holds a date can end. */
const rollingEnd = (date: CivilDate, per: RollingPeriod): CivilDate => {
  if ("days" in per) return addDays(date, per.days - 1);
  // Months differ in length: from a day too early on to the last end whose stretch still holds the date.
  let end = addDays(addMonths(date, per.months), -1);
  while (compareDates(rollingStart(addDays(end, 1), per), date) <= 0) end = addDays(end, 1);
  return end;
};

/** The stretch that a limit adds up for one day: the fixed one around it, or the rolling one that ends on it. */
export const spanOf = (date: CivilDate, per: LimitPeriod): Span | undefined => {
  if (per === "application") return { from: date, to: date };
  if (per === "calendar year") return yearOf(date);
  if (isRolling(per)) return { from: rollingStart(date, per), to: date };
  return windowAround(date, per);
};

/** All days whose amounts can matter for an application on a date or later. */
export const reachBack = (date: CivilDate, per: LimitPeriod): CivilDate => spanOf(date, per)?.from ?? date;

// ISO dates of four-digit years sort as text.
const before = (a: CivilDate, b: CivilDate): boolean => a < b;

const sumWithin = (days: DayAmounts, { from, to }: Span): number => {
  let [low, high] = [0, days.dates.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (before(days.dates[middle] as CivilDate, from)) low = middle + 1;
    else high = middle;
  }
  let total = 0;
  for (let i = low; i < days.dates.length && !before(to, days.dates[i] as CivilDate); i++) {
    total += days.amounts[i] as number;
  }
  return total;
};

/**
 * What counts beside an application on a date: the amounts of its year or season, or the fullest rolling
 * stretch that holds the day. `undefined` where the limit says nothing of that day.
 */
export const usedBeside = (
  date: CivilDate,
  per: LimitPeriod,
  days: DayAmounts,
): { readonly used: number; readonly span: Span } | undefined => {
  if (per === "application") return { used: 0, span: { from: date, to: date } };
  if (!isRolling(per)) {
    const span = spanOf(date, per);
    return span && { used: sumWithin(days, span), span };
  }
  const last = rollingEnd(date, per);
  let best = { used: -1, span: { from: date, to: date } };
  const ends = days.dates.filter((day) => before(date, day) && !before(last, day));
  for (const end of [date, ...ends]) {
    const span = { from: rollingStart(end, per), to: end };
    const used = sumWithin(days, span);
    if (used > best.used) best = { used, span };
  }
  return best;
};

/** The day after a fixed period, or the day on which a rolling one has lost an application. */
const leaves = (day: CivilDate, per: LimitPeriod): CivilDate | undefined => {
  if (per === "application") return undefined;
  if (isRolling(per)) return addDays(rollingEnd(day, per), 1);
  const span = spanOf(day, per);
  return span && addDays(span.to, 1);
};

/** Dates are not looked for beyond this year. */
export const lastYear = "9990";

/** Whether what goes down on a day counts beside an application on a date: whether one stretch holds both. */
export const countsBeside = (day: CivilDate, date: CivilDate, per: LimitPeriod): boolean => {
  if (per === "application") return false;
  const [first, last] = before(day, date) ? [day, date] : [date, day];
  const span = isRolling(per) ? { from: rollingStart(last, per), to: last } : spanOf(date, per);
  return span !== undefined && !before(first, span.from) && !before(span.to, last);
};

/**
 * The first day after which something within the stretch that was added up no longer counts: the turn of the
 * year, the end of the season, or the day on which the oldest application leaves a rolling stretch. `null`
 * where nothing counts. The days are those on which something went down, in their order.
 */
export const freesUpAfter = (span: Span, per: LimitPeriod, dates: readonly CivilDate[]): CivilDate | null => {
  if (per === "application" || span.to > lastYear) return null;
  const oldest = dates.find((day) => !before(day, span.from) && !before(span.to, day));
  return oldest === undefined ? null : (leaves(oldest, per) ?? null);
};

/**
 * The first day, from a date on, on which an amount fits beside what has gone down; `null` where none is
 * found. A day outside a season fits, for its limit says nothing there.
 */
export const fitsFrom = (
  date: CivilDate,
  per: LimitPeriod,
  days: DayAmounts,
  fits: (used: number) => boolean,
): CivilDate | null => {
  const on = (day: CivilDate): boolean => {
    const beside = usedBeside(day, per, days);
    return beside === undefined || fits(beside.used);
  };
  if (on(date)) return date;
  if (per === "application" || date > lastYear || (isRolling(per) && !fits(0))) return null;
  // Only these days can change the answer: a period ends, or an application leaves it.
  const tries = new Set<CivilDate>();
  for (const day of days.dates) {
    const next = leaves(day, per);
    if (next !== undefined && before(date, next)) tries.add(next);
  }
  const end = leaves(date, per);
  if (end !== undefined && before(date, end)) tries.add(end);
  return [...tries].sort().find(on) ?? null;
};
