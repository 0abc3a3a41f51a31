import { addDays, type CivilDate, compareDates, daysBetween } from "../../calendar/index.js";
import { type AvoidedDays, intervalRule, nextDates } from "../../interval/index.js";
import { type History, type HistoryRow, joinedHistory, wholeSite } from "../../ledger/house.js";
import { earliestWithin, limitsOn } from "../../limits/house.js";
import type { LimitTest, LimitUse } from "../../limits/index.js";
import type { Finding } from "../../quantity/index.js";
import type { ReadSeason, ReadSeasonTreatment } from "./read-season.js";
import { type Due, earlier } from "./schedule-due.js";
import type { DateReason, ScheduledApplication, SeasonPlan } from "./schedule-types.js";

const anyDay = /* @__PURE__ */ intervalRule({ source: "the stated days to avoid" });

/**
 * The first day, from a date on, that neither the rule of a treatment nor the caller rules out, and why it
 * moved.
 */
export const openFrom = (
  from: CivilDate,
  due: Due,
  avoid: AvoidedDays | undefined,
): { date: CivilDate; why: readonly DateReason[] } => {
  const { treatment, applied, reasons } = due;
  const next = nextDates({
    applied: treatment.rule === undefined ? [] : applied,
    rule: treatment.rule ?? anyDay,
    from,
    ...(avoid && { avoid }),
  });
  return {
    date: next.earliestByStatedRules,
    why: next.reasons
      .filter(({ code, text }) => code !== "interval/from" && !reasons.some((known) => known.text === text))
      .map(({ code, text }) => ({ code, text })),
  };
};

/** The last such day up to a date, and not before another. */
const openBefore = (
  last: CivilDate,
  first: CivilDate,
  due: Due,
  avoid: AvoidedDays | undefined,
): CivilDate | undefined => {
  for (let day = last; compareDates(day, first) >= 0; day = addDays(day, -1)) {
    if (openFrom(day, due, avoid).date === day) return day;
  }
  return undefined;
};

/** The book of a schedule while it is made. */
export interface Book {
  readonly plan: SeasonPlan;
  readonly season: ReadSeason;
  readonly ledger: History & {
    readonly parts: () => readonly string[];
    readonly dates: readonly CivilDate[];
  };
  readonly rows: HistoryRow[];
  readonly visits: Map<CivilDate, ScheduledApplication[]>;
  readonly findings: Finding[];
  readonly notChecked: string[];
}

/** Every part that the ledger or this schedule names, and what lies in none of them. */
const everyPart = (book: Book): readonly string[] => [
  ...new Set([...book.ledger.parts(), ...book.rows.flatMap(({ parts }) => parts), wholeSite]),
];

/** The limits of one application on a day, beside all that has gone down and all that is placed. */
export const asked = (
  book: Book,
  treatment: ReadSeasonTreatment,
  date: CivilDate,
): Parameters<typeof limitsOn>[0] | undefined =>
  treatment.proposal === undefined || book.season.limits.length === 0
    ? undefined
    : {
        proposal: treatment.proposal,
        date,
        parts: treatment.parts.length > 0 ? treatment.parts : everyPart(book),
        history: joinedHistory(book.ledger, book.rows),
        limits: book.season.limits,
        kept: new Map(),
      };

/** Violated limits, and where each is kept again by itself. */
type Over = readonly (LimitUse | LimitTest)[];

/** Whether the violated limits that name no later day are limits on runs: what is of another group may end those. */
const isRun = (over: Over): boolean => {
  const stuck = over.filter(({ earliestByStatedLimit }) => earliestByStatedLimit === null);
  return stuck.length > 0 && stuck.every(({ limit }) => limit.kind === "rotation");
};

/** The day after the next one, from a date on, on which something goes down: that may be of another group, and end a run. */
const afterNextOn = (date: CivilDate, book: Book): CivilDate | undefined => {
  const [next] = [...book.ledger.dates, ...book.rows.map((row) => row.date)]
    .filter((day) => compareDates(day, date) >= 0)
    .sort(compareDates);
  return next && addDays(next, 1);
};

/** The day on which each of the violated limits is kept again by itself; nothing where one of them names none. */
const keptFrom = (over: Over): CivilDate | undefined => {
  const days = over.flatMap(({ earliestByStatedLimit }) => earliestByStatedLimit ?? []);
  return days.length === over.length ? days.sort(compareDates)[days.length - 1] : undefined;
};

/** The most days that are tried for one application. */
const mostSteps = 400;

/** Why there is no day as things stand, and whether it waits for what ends a run. */
interface NoDay {
  readonly date?: undefined;
  readonly why: DateReason[];
  readonly waits: boolean;
}

/** The day for an application before any limit is asked: a visit to share, the last useful day, or the first. */
const aimedDay = (due: Due, book: Book): { date: CivilDate; why: DateReason[] } => {
  const { treatment, earliest, latest, target } = due;
  const { avoid } = book.plan;
  const end = treatment.within.to;
  const goal = earlier(target, end);
  const shared = [...book.visits.keys()]
    .filter((day) => compareDates(day, earliest) >= 0 && compareDates(day, end) <= 0)
    .filter((day) => Math.abs(daysBetween(day, target)) <= book.season.shareWithinDays)
    .filter((day) => openFrom(day, due, avoid).date === day)
    .sort(
      (a, b) => Math.abs(daysBetween(a, target)) - Math.abs(daysBetween(b, target)) || compareDates(a, b),
    );
  const [visit] = shared;
  if (visit !== undefined) {
    const text = `Shares the visit of ${visit}${visit === target ? "" : `; the target was ${target}`}.`;
    return { date: visit, why: [{ code: "schedule/shared", text }] };
  }
  const last = latest === null ? undefined : openBefore(goal, earliest, due, avoid);
  if (last !== undefined) {
    const text = `Moved from ${goal} to the last day before it.`;
    const why = last === goal ? [] : [...openFrom(goal, due, avoid).why, { code: "schedule/moved", text }];
    return { date: last, why };
  }
  const open = openFrom(latest === null ? earliest : goal, due, avoid);
  return { date: open.date, why: [...open.why] };
};

/** What stands against a day, each limit once for all parts, and where that leads. */
const limitReason = (date: CivilDate, over: Over, next: string): DateReason => ({
  code: "schedule/limit",
  text: `On ${date} it would violate ${[...new Set(over.map(({ limit, path }) => limit.id ?? path))].join(", ")}; ${next}.`,
  source: over[0]?.limit.source,
});

/** The next day to try after one on which limits are violated, if there is one, and why. */
const onwardFrom = (
  date: CivilDate,
  over: Over,
  free: CivilDate | null,
  book: Book,
): { readonly date: CivilDate | undefined; readonly why: DateReason } => {
  const each = keptFrom(over);
  const next =
    free !== null
      ? `${free} is the first day within all stated limits`
      : each !== undefined
        ? `${each} is the first day that keeps each of them alone`
        : isRun(over)
          ? "apply another group first"
          : "no day found is within all stated limits";
  return {
    date: free ?? each ?? (isRun(over) ? afterNextOn(date, book) : undefined),
    why: limitReason(date, over, next),
  };
};

/** The limits that an application on a day would violate, and what they were asked; nothing where none is stated. */
const overOn = (
  date: CivilDate,
  treatment: ReadSeasonTreatment,
  book: Book,
): { readonly over: Over; readonly input: Parameters<typeof limitsOn>[0] } | undefined => {
  const input = asked(book, treatment, date);
  if (input === undefined) return undefined;
  const { uses, tests } = limitsOn(input);
  const over = [...uses, ...tests].filter(({ violated }) => violated === true);
  return over.length === 0 ? undefined : { over, input };
};

/** The last day up to the one by which to reapply on which no limit is violated: better early than late. */
const keptBefore = (due: Due, book: Book): CivilDate | undefined => {
  const { treatment, earliest, latest, target } = due;
  const { avoid } = book.plan;
  const goal = earlier(target, treatment.within.to);
  if (latest === null) return undefined;
  for (let day = openBefore(goal, earliest, due, avoid); day !== undefined; ) {
    if (overOn(day, treatment, book) === undefined) return day;
    day = openBefore(addDays(day, -1), earliest, due, avoid);
  }
  return undefined;
};

/** A day for an application, with why; or why there is none. */
export const dayFor = (
  due: Due,
  book: Book,
): { readonly date: CivilDate; readonly why: DateReason[] } | NoDay => {
  const { treatment, earliest } = due;
  const end = treatment.within.to;
  if (compareDates(earliest, end) > 0) {
    const text = `The first day by the stated rules, ${earliest}, is after ${end}.`;
    return { why: [{ code: "schedule/after-end", text }], waits: false };
  }
  let { date, why } = aimedDay(due, book);
  let waits = false;
  // Each step goes to a later day; a schedule that needs more of them than this has no day.
  for (let step = 0; ; step++) {
    const found = overOn(date, treatment, book);
    if (found === undefined) break;
    const { over, input } = found;
    const kept = step === 0 ? keptBefore(due, book) : undefined;
    if (kept !== undefined) {
      const next = `${kept} is the last day by ${earlier(due.target, end)} within all stated limits`;
      return { date: kept, why: [...why, limitReason(date, over, next)] };
    }
    const onward = onwardFrom(date, over, earliestWithin(input), book);
    why = [...why, onward.why];
    waits ||= isRun(over);
    if (onward.date === undefined || compareDates(onward.date, date) <= 0 || step >= mostSteps)
      return { why, waits };
    date = openFrom(onward.date, due, book.plan.avoid).date;
  }
  if (compareDates(date, end) > 0) {
    const text = `The first open day, ${date}, is after ${end}.`;
    return { why: [...why, { code: "schedule/after-end", text }], waits };
  }
  return { date, why };
};
