import {
  addDays,
  type CivilDate,
  civilDate,
  compareDates,
  type DateSpan,
  isWithinWindow,
  type MonthDayWindow,
  monthDay,
  weekday,
  windowAround,
} from "../../calendar/index.js";
import { fail } from "../../quantity/index.js";

/** A time in which the source rules an application out: of every year, or once. */
export type ClosedTime = (MonthDayWindow | { readonly from: CivilDate; readonly to: CivilDate }) & {
  /** Why, for a reader: "seedlings on the practice pitch". */
  readonly why?: string;
};

/** Days on which the caller does not want to work, for reasons that no rule states. */
export interface AvoidedDays {
  /** Days of the week, 1 for Monday to 7 for Sunday. */
  readonly weekdays?: readonly number[];
  /** Events and closures: of every year, or once; both ends included. */
  readonly times?: readonly ClosedTime[];
}

const isYearly = (time: ClosedTime): boolean => /^\d{2}-\d{2}$/.test(String(time.from));

/** Takes a closed time that may come from JSON, or throws with the path. */
export const checkedSpan = (time: ClosedTime, path: string): ClosedTime => {
  if (typeof time !== "object" || time === null) fail("type", path, time, "a time with from and to");
  if (isYearly(time)) {
    monthDay(time.from, `${path}.from`);
    monthDay(time.to, `${path}.to`);
    return time;
  }
  const from = civilDate(time.from as CivilDate, `${path}.from`);
  const to = civilDate(time.to as CivilDate, `${path}.to`);
  if (compareDates(from, to) > 0) fail("date", `${path}.to`, to, `a date not earlier than ${from}`);
  return time;
};

/** Takes what the caller avoids, or throws with the path. */
export const checkedAvoided = (input: AvoidedDays | undefined, path: string): AvoidedDays => {
  if (input === undefined) return {};
  if (typeof input !== "object" || input === null) return fail("type", path, input, "a record");
  const { weekdays = [], times = [] } = input;
  if (!Array.isArray(weekdays)) fail("type", `${path}.weekdays`, weekdays, "a list of days, 1 to 7");
  for (const [i, day] of weekdays.entries()) {
    if (!(Number.isInteger(day) && day >= 1 && day <= 7)) {
      fail("range", `${path}.weekdays[${i}]`, day, "1 for Monday to 7 for Sunday");
    }
  }
  if (new Set(weekdays).size === 7) fail("infeasible", `${path}.weekdays`, weekdays, "at least one day left");
  if (!Array.isArray(times)) fail("type", `${path}.times`, times, "a list of times");
  times.forEach((time, i) => {
    checkedSpan(time, `${path}.times[${i}]`);
  });
  return { weekdays, times };
};

/** The stretch of a closed time in which a date lies, or `undefined`. */
export const spanAround = (date: CivilDate, time: ClosedTime): DateSpan | undefined => {
  if (isYearly(time)) {
    const window = { from: time.from, to: time.to } as MonthDayWindow;
    return isWithinWindow(date, window) ? windowAround(date, window) : undefined;
  }
  const { from, to } = time as DateSpan;
  return compareDates(date, from) >= 0 && compareDates(date, to) <= 0 ? { from, to } : undefined;
};

const weekdayNames = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

/** Why the caller does not want a date, with the first day after that; `undefined` where nothing speaks against it. */
export const whyAvoided = (
  date: CivilDate,
  avoid: AvoidedDays,
): { readonly next: CivilDate; readonly why: string } | undefined => {
  for (const time of avoid.times ?? []) {
    const span = spanAround(date, time);
    if (span !== undefined) {
      return { next: addDays(span.to, 1), why: time.why ?? `${span.from} to ${span.to}` };
    }
  }
  const day = weekday(date);
  return avoid.weekdays?.includes(day)
    ? { next: addDays(date, 1), why: `a ${weekdayNames[day - 1]}` }
    : undefined;
};
