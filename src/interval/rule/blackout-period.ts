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
import { allOf, checks, expectFields, expectText, fail, outOfRange } from "../../quantity/index.js";

/** A blackout period, in which the source rules an application out: of every year, or once. */
export type BlackoutPeriod = (MonthDayWindow | { readonly from: CivilDate; readonly to: CivilDate }) & {
  /** Why, for a reader: "seedlings on the practice pitch". */
  readonly why?: string;
};

/** Days on which the caller does not want to work, for reasons that no rule states. */
export interface AvoidedDays {
  /** Days of the week, 1 for Monday to 7 for Sunday. */
  readonly weekdays?: readonly number[];
  /** Events and closures: of every year, or once; both ends included. */
  readonly times?: readonly BlackoutPeriod[];
}

const isYearly = ({ from }: { readonly from?: unknown }): boolean =>
  typeof from === "string" && /^\d{2}-\d{2}$/.test(from);

/** Takes a blackout period that may come from JSON and gives an own copy, or throws with the path. */
export const checkedSpan = (input: unknown, path: string): BlackoutPeriod => {
  const { from, to, why } = expectFields(input, ["from", "to", "why"], path, "a time with from and to");
  const read = allOf({
    why: () => (why === undefined ? {} : { why: expectText(why, `${path}.why`, "why, as text") }),
    span: (): DateSpan | MonthDayWindow => {
      if (isYearly({ from })) return { from: monthDay(from, `${path}.from`), to: monthDay(to, `${path}.to`) };
      const span = {
        from: civilDate(from as CivilDate, `${path}.from`),
        to: civilDate(to as CivilDate, `${path}.to`),
      };
      return compareDates(span.from, span.to) > 0
        ? fail("date", `${path}.to`, span.to, `a date not earlier than ${span.from}`)
        : span;
    },
  });
  return { ...read.span, ...read.why } as BlackoutPeriod;
};

/** The most blackout periods of one list. */
const mostTimes = 10_000;

/** Takes what the caller avoids and gives an own copy, or throws with the path. */
export const checkedAvoided = (input: AvoidedDays | undefined, path: string): AvoidedDays => {
  if (input === undefined) return {};
  const { weekdays = [], times = [] } = expectFields(input, ["weekdays", "times"], path);
  return allOf({
    weekdays: () => readWeekdays(weekdays, `${path}.weekdays`),
    times: () => {
      if (!Array.isArray(times)) return fail("type", `${path}.times`, times, "a list of times");
      if (times.length > mostTimes)
        return outOfRange(`${path}.times`, times, { max: mostTimes, count: "times" });
      const problems = checks();
      const read = Array.from(times as readonly unknown[], (time, i) =>
        problems.run(() => checkedSpan(time, `${path}.times[${i}]`)),
      );
      problems.done();
      return read.flatMap((time) => time ?? []);
    },
  });
};

const readWeekdays = (input: unknown, path: string): readonly number[] => {
  if (!Array.isArray(input)) return fail("type", path, input, "a list of days, 1 to 7");
  if (input.length > 7) return outOfRange(path, input, { max: 7, count: "days of the week" });
  const days = Array.from(input as readonly unknown[], (day, i): number =>
    typeof day === "number" && Number.isInteger(day) && day >= 1 && day <= 7
      ? day
      : outOfRange(`${path}[${i}]`, day, { step: 1, min: 1, max: 7 }, "{}: 1 for Monday, 7 for Sunday"),
  );
  return new Set(days).size === 7 ? fail("infeasible", path, input, "at least one day left") : days;
};

/** The stretch of a blackout period in which a date lies, or `undefined`. */
export const spanAround = (date: CivilDate, time: BlackoutPeriod): DateSpan | undefined => {
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
