import { addDays, type CivilDate, compareDates, daysBetween } from "../../calendar/index.js";
import { type AvoidedDays, intervalRule, nextDates } from "../../interval/index.js";
import { type History, type HistoryRow, joinedHistory, wholeSite } from "../../ledger/house.js";
import { earliestWithin, limitsOn } from "../../limits/house.js";
import type { Finding } from "../../quantity/index.js";
import type { ReadSeason, ReadSeasonTreatment } from "./read-season.js";
import { type Due, earlier } from "./schedule-due.js";
import type { DateReason, ScheduledApplication, SeasonPlan } from "./schedule-types.js";

const anyDay = /* @__PURE__ */ intervalRule({ source: "the days that the caller names" });

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

/** A day for an application, with why; or why there is none. */
export const dayFor = (due: Due, book: Book): { date?: CivilDate; why: DateReason[] } => {
  const { treatment, earliest, latest, target } = due;
  const { avoid } = book.plan;
  const end = treatment.within.to;
  const why: DateReason[] = [];
  if (compareDates(earliest, end) > 0) {
    why.push({
      code: "schedule/after-end",
      text: `The first day by the stated rules, ${earliest}, is after ${end}.`,
    });
    return { why };
  }
  const goal = earlier(target, end);
  const shared = [...book.visits.keys()]
    .filter((day) => compareDates(day, earliest) >= 0 && compareDates(day, end) <= 0)
    .filter((day) => Math.abs(daysBetween(day, target)) <= book.season.shareWithinDays)
    .filter((day) => openFrom(day, due, avoid).date === day)
    .sort(
      (a, b) => Math.abs(daysBetween(a, target)) - Math.abs(daysBetween(b, target)) || compareDates(a, b),
    );
  let date: CivilDate | undefined = shared[0];
  if (date !== undefined)
    why.push({
      code: "schedule/shared",
      text: `Shares the visit of ${date}${date === target ? "" : `; ${target} was aimed at`}.`,
    });
  else if (latest !== null) {
    date = openBefore(goal, earliest, due, avoid);
    if (date !== undefined && date !== goal)
      why.push(...openFrom(goal, due, avoid).why, {
        code: "schedule/moved",
        text: `Moved from ${goal} to the last day before it.`,
      });
  }
  if (date === undefined) {
    const open = openFrom(latest === null ? earliest : goal, due, avoid);
    date = open.date;
    why.push(...open.why);
  }
  // Each step goes to a later day; a schedule that needs more of them than this has no day.
  for (let step = 0; ; step++) {
    const input = asked(book, treatment, date);
    if (input === undefined) break;
    const { uses, tests } = limitsOn(input);
    const over = [...uses, ...tests].filter(({ violated }) => violated === true);
    if (over.length === 0) break;
    const free = step < 100 ? earliestWithin(input) : null;
    const names = over.map(({ limit, path }) => limit.id ?? path).join(", ");
    const text = `On ${date} it would violate ${names}; the first day within all stated limits is ${free ?? "not to be found"}.`;
    why.push({ code: "schedule/limit", text, source: over[0]?.limit.source });
    if (free === null) return { why };
    date = openFrom(free, due, avoid).date;
  }
  if (compareDates(date, end) > 0) {
    why.push({ code: "schedule/after-end", text: `The first day that is left, ${date}, is after ${end}.` });
    return { why };
  }
  return { date, why };
};
