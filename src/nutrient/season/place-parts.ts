import type { CivilDate } from "../../calendar/index.js";
import { type CapAmounts, capNames, type DayAmount, dayCount, usedAround } from "./nitrogen-caps.js";
import type { PlannedPart } from "./program-parts.js";

/** A day on which something may go down. */
export interface OpenDay {
  readonly date: CivilDate;
  readonly day: number;
}

/** Why a part of a plan found no room: every day is closed, another application is too near, or a cap is used up. */
export type ShortReason = "closed season" | "interval" | "caps";

/** A part of a plan and what became of it. */
export interface PlacedPart {
  readonly part: PlannedPart;
  /** The day of its last application; absent where nothing of it was placed. */
  readonly to?: CivilDate;
  /** What has no room. */
  readonly rest: number;
  /** Why, where there is a rest. */
  readonly reason?: ShortReason;
}

/** What the placing of parts gives. */
export interface Placing {
  readonly placed: readonly DayAmount[];
  readonly parts: readonly PlacedPart[];
}

/**
 * Puts the parts of a plan on open days: each whole on the first day from its own on that is far enough from every
 * other application and has room under all caps; else in amounts of at least `least`, on the days with some room.
 */
export const placeParts = (input: {
  readonly parts: readonly PlannedPart[];
  readonly open: readonly OpenDay[];
  readonly caps: CapAmounts;
  readonly applied: readonly DayAmount[];
  readonly intervalDays: number;
  readonly least: number;
  readonly small: number;
}): Placing => {
  const { open, caps, intervalDays, least, small } = input;
  const log: DayAmount[] = [...input.applied];
  const placed: DayAmount[] = [];
  const near = new Set<number>();
  const block = (day: number): void => {
    // Two on one day would be one application.
    const gap = Math.max(1, intervalDays);
    for (let other = day + 1 - gap; other < day + gap; other++) near.add(other);
  };
  for (const { day, amount } of log) if (amount > 0) block(day);
  const headroomOn = ({ date, day }: OpenDay): number =>
    capNames.reduce((smallest, name) => {
      const cap = caps[name];
      return cap === undefined ? smallest : Math.min(smallest, cap - usedAround(name, log, date, day));
    }, Number.POSITIVE_INFINITY);
  const place = ({ date, day }: OpenDay, amount: number): void => {
    log.push({ date, day, amount });
    placed.push({ date, day, amount });
    block(day);
  };
  const parts = input.parts.map((part): PlacedPart => {
    const [from, to] = [dayCount(part.date), dayCount(part.last)];
    const days = open.filter(({ day }) => day >= from && day <= to);
    const whole = days.find((one) => !near.has(one.day) && headroomOn(one) >= part.amount - small);
    if (whole !== undefined) {
      place(whole, part.amount);
      return { part, to: whole.date, rest: 0 };
    }
    let rest = part.amount;
    let last: CivilDate | undefined;
    for (const one of days) {
      if (near.has(one.day)) continue;
      const space = Math.min(rest, headroomOn(one));
      // Nobody spreads a dribble: less than the least amount waits, and counts as not placed.
      if (space <= small || space < least - small) continue;
      place(one, space);
      rest -= space;
      last = one.date;
    }
    const at = last === undefined ? {} : { to: last };
    if (rest <= small) return { part, ...at, rest: 0 };
    const kept = days.some(
      (one) => near.has(one.day) && headroomOn(one) >= Math.max(small, Math.min(least, rest)),
    );
    return { part, ...at, rest, reason: days.length === 0 ? "closed season" : kept ? "interval" : "caps" };
  });
  return { placed: [...placed].sort((a, b) => a.day - b.day), parts };
};
