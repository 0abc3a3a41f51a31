import { addDays, type CivilDate, compareDates, daysBetween } from "../calendar/index.js";
import { type AvoidedDays, heatSchedule, intervalRule, nextDates } from "../interval/index.js";
import { type Finding, problemText, RatewrightError } from "../quantity/index.js";
import { earliestWithin, limitsOn } from "./check-limits.js";
import { turfConflicts } from "./grow-in.js";
import { type History, type HistoryRow, wholeSite } from "./history.js";
import { joinedHistory, ledgerHistory } from "./ledger.js";
import { type ReadSeason, type ReadSeasonTreatment, readSeason } from "./read-season.js";
import type { DateReason, NotPlaced, Schedule, ScheduledApplication, SeasonPlan } from "./schedule-types.js";

/** When the next application of a treatment is due. */
interface Due {
  readonly treatment: ReadSeasonTreatment;
  readonly earliest: CivilDate;
  readonly latest: CivilDate | null;
  /** The day that is aimed at: the last useful one of a repeat, the earliest of a first application. */
  readonly target: CivilDate;
  readonly reasons: readonly DateReason[];
}

interface State {
  readonly applied: CivilDate[];
  placed: number;
  done: boolean;
}

const later = (a: CivilDate, b: CivilDate): CivilDate => (compareDates(a, b) >= 0 ? a : b);
const earlier = (a: CivilDate, b: CivilDate): CivilDate => (compareDates(a, b) <= 0 ? a : b);

const anyDay = /* @__PURE__ */ intervalRule({ source: "the days that the caller names" });

/** The first day, from a date on, on which the caller does not rule out to come, and why it moved. */
const openFrom = (
  from: CivilDate,
  avoid: AvoidedDays | undefined,
): { date: CivilDate; why: readonly DateReason[] } => {
  const next = nextDates({ applied: [], rule: anyDay, from, ...(avoid && { avoid }) });
  return {
    date: next.earliestByStatedRules,
    why: next.reasons
      .filter(({ code }) => code !== "interval/from")
      .map(({ code, text }) => ({ code, text })),
  };
};

/** The last day up to a date, and not before another, on which the caller does not rule out to come. */
const openBefore = (
  last: CivilDate,
  first: CivilDate,
  avoid: AvoidedDays | undefined,
): CivilDate | undefined => {
  for (let day = last; compareDates(day, first) >= 0; day = addDays(day, -1)) {
    if (openFrom(day, avoid).date === day) return day;
  }
  return undefined;
};

const heatEnd = (treatment: ReadSeasonTreatment, last: CivilDate, plan: SeasonPlan, notChecked: string[]) => {
  const { heat, id } = treatment;
  if (heat === undefined) return undefined;
  try {
    const { observed, forecast, normals, gaps } = plan;
    const [visit] = heatSchedule({
      model: heat.model,
      interval: heat.interval,
      from: last,
      ...(observed && { observed }),
      ...(forecast && { forecast }),
      ...(normals && { normals }),
      ...(gaps && { gaps }),
    }).visits;
    if (visit?.date) return { date: visit.date, source: heat.source };
    notChecked.push(`${id}: the interval by heat since ${last}, for the temperatures end before it does.`);
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    notChecked.push(
      `${id}: the interval by heat since ${last}. ${error.problems.map(problemText).join("; ")}.`,
    );
  }
  return undefined;
};

const dueNext = (
  treatment: ReadSeasonTreatment,
  state: State,
  plan: SeasonPlan,
  notChecked: string[],
): Due => {
  const { rule, within, id } = treatment;
  const last = state.applied[state.applied.length - 1];
  const reasons: DateReason[] = [];
  let earliest = within.from;
  let latest: CivilDate | null = null;
  if (rule !== undefined) {
    const next = nextDates({
      applied: state.applied,
      rule,
      from: within.from,
      ...(plan.avoid && { avoid: plan.avoid }),
    });
    earliest = next.earliestByStatedRules;
    latest = next.latestUseful;
    reasons.push(...next.reasons.map(({ code, text, source }) => ({ code, text, source })));
    notChecked.push(...next.notChecked.map(({ text }) => `${id}: ${text}`));
  } else if (last !== undefined) earliest = later(earliest, addDays(last, 1));
  if (last === undefined || rule === undefined)
    reasons.unshift({ code: "schedule/within", text: `Wanted from ${within.from} to ${within.to}.` });
  if (last !== undefined) {
    const heat = heatEnd(treatment, last, plan, notChecked);
    if (heat !== undefined) {
      latest = latest === null ? heat.date : earlier(latest, heat.date);
      reasons.push({
        code: "schedule/heat",
        text: `By heat, the application of ${last} lasts until ${heat.date}.`,
        source: heat.source,
      });
    }
  }
  const repeat = last !== undefined && latest !== null;
  return {
    treatment,
    earliest,
    latest: last === undefined ? null : latest,
    target: repeat ? later(earliest, latest as CivilDate) : earliest,
    reasons,
  };
};

/** The book of a schedule while it is made. */
interface Book {
  readonly plan: SeasonPlan;
  readonly season: ReadSeason;
  readonly ledger: History & { readonly parts: () => readonly string[] };
  readonly rows: HistoryRow[];
  readonly visits: Map<CivilDate, ScheduledApplication[]>;
  readonly findings: Finding[];
  readonly notChecked: string[];
}

/** The limits of one application on a day, beside all that has gone down and all that is placed. */
const asked = (
  book: Book,
  treatment: ReadSeasonTreatment,
  date: CivilDate,
): Parameters<typeof limitsOn>[0] | undefined =>
  treatment.proposal === undefined || book.season.limits.length === 0
    ? undefined
    : {
        proposal: treatment.proposal,
        date,
        parts: treatment.parts.length > 0 ? treatment.parts : [...book.ledger.parts(), wholeSite],
        history: joinedHistory(book.ledger, book.rows),
        limits: book.season.limits,
        kept: new Map(),
      };

const passes = (input: Parameters<typeof limitsOn>[0]): boolean => {
  const { uses, tests } = limitsOn(input);
  return [...uses, ...tests].some(({ passed }) => passed === true);
};

/** A day for an application, with why; or why there is none. */
const dayFor = (due: Due, book: Book): { date?: CivilDate; why: DateReason[] } => {
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
    .sort(
      (a, b) => Math.abs(daysBetween(a, target)) - Math.abs(daysBetween(b, target)) || compareDates(a, b),
    );
  let date: CivilDate | undefined = shared[0];
  if (date !== undefined)
    why.push({ code: "schedule/shared", text: `Shares the visit of ${date}; ${target} was aimed at.` });
  else if (latest !== null) {
    date = openBefore(goal, earliest, avoid);
    if (date !== undefined && date !== goal)
      why.push(...openFrom(goal, avoid).why, {
        code: "schedule/moved",
        text: `Moved from ${goal} to the last day before it.`,
      });
  }
  if (date === undefined) {
    const open = openFrom(latest === null ? earliest : goal, avoid);
    date = open.date;
    why.push(...open.why);
  }
  for (let step = 0; step < 100; step++) {
    const input = asked(book, treatment, date);
    if (input === undefined || !passes(input)) break;
    const free = earliestWithin(input);
    const names = [...limitsOn(input).uses, ...limitsOn(input).tests].filter(({ passed }) => passed === true);
    const text = `On ${date} it would pass ${names.map(({ limit, path }) => limit.id ?? path).join(", ")}; the first day within all stated limits is ${free ?? "not to be found"}.`;
    why.push({ code: "schedule/limit", text, source: names[0]?.limit.source });
    if (free === null) return { why };
    date = openFrom(free, avoid).date;
  }
  if (compareDates(date, end) > 0) {
    why.push({ code: "schedule/after-end", text: `The first day that is left, ${date}, is after ${end}.` });
    return { why };
  }
  return { date, why };
};

const place = (due: Due, date: CivilDate, why: readonly DateReason[], state: State, book: Book): void => {
  const { treatment, earliest, latest } = due;
  const { id, parts, proposal, input } = treatment;
  state.applied.push(date);
  state.applied.sort(compareDates);
  state.placed++;
  const number = state.placed;
  const applications = book.visits.get(date) ?? [];
  applications.push({
    treatment: id,
    number,
    parts,
    earliestByStatedRules: earliest,
    latestUseful: latest,
    reasons: [...due.reasons, ...why],
  });
  book.visits.set(date, applications);
  if (latest !== null && compareDates(date, latest) > 0) {
    book.findings.push({
      code: "schedule/late",
      severity: "caution",
      path: treatment.path,
      params: { treatment: id, number, date, latestUseful: latest, days: daysBetween(latest, date) },
      text: `${id}: ${date} is ${daysBetween(latest, date)} days after ${latest}, up to which the application before is said to last.`,
    });
  }
  const limits = asked(book, treatment, date);
  if (limits !== undefined)
    book.notChecked.push(...limitsOn(limits).notChecked.map((text) => `${id}: ${text}`));
  if (proposal !== undefined) book.rows.push({ ...proposal.row, date, from: `${id} on ${date}`, parts });
  if (input.use !== undefined) {
    const { use, activeIngredient, label } = input;
    const conflicts = turfConflicts({
      date,
      treatment: { id, use, ...(activeIngredient && { activeIngredient }), ...(label && { label }) },
      turf: book.plan.turf ?? {},
    });
    book.findings.push(...conflicts.findings);
    book.notChecked.push(...conflicts.notChecked);
  }
};

/**
 * The visits of a season: each treatment is repeated by its stated rule, by heat and within the stated
 * limits, days that the caller avoids stay free, and treatments that may wait or come early by
 * `shareWithinDays` share a visit. Every date has its reasons, and what found no day says why.
 *
 * A first application aims at its earliest day, a repeat at the last day on which the one before is said
 * to work, so that a season takes no more applications than the rules ask for. The treatment whose day
 * comes first is placed first; this is a plain order of work and not an optimum. Limits whose conditions
 * are not known count as meant.
 *
 * @param plan - the season, what is to be done, temperatures or normals for intervals by heat, limits and
 *   ledger; everything that is wrong with it is told at once
 * @throws RatewrightError with every problem of the plan, each with its path
 *
 * Source: the rules stand with the dates; the order of work is of this library (no source).
 *
 * @example
 * ```ts
 * import { schedule } from "ratewright";
 * const { visits } = schedule({
 *   season: { from: "2026-04-01", to: "2026-06-30" },
 *   treatments: [
 *     { id: "feed", interval: { minimumDays: 42, maximumDays: 60, source: "plan of the park" } },
 *     { id: "wetter", interval: { minimumDays: 25, maximumDays: 30, source: "label" } },
 *   ],
 *   avoid: { weekdays: [6, 7] },
 *   shareWithinDays: 3,
 * });
 * visits.map(({ date, applications }) => [date, applications.map(({ treatment }) => treatment).join()]);
 * // => [["2026-04-01", "feed,wetter"], ["2026-05-01", "wetter"], ["2026-05-29", "feed,wetter"], ["2026-06-26", "wetter"]]
 * ```
 */
export const schedule = (plan: SeasonPlan): Schedule => {
  const season = readSeason(plan);
  const ledger = ledgerHistory(plan.ledger ?? { type: "ledger", version: 1, entries: [] }, "ledger");
  const book: Book = { plan, season, ledger, rows: [], visits: new Map(), findings: [], notChecked: [] };
  const notPlaced: NotPlaced[] = [];
  const states = season.treatments.map((treatment): State => {
    const logged = ledger.dates.filter((_, i) => ledger.entry(i).treatment === treatment.id);
    return {
      applied: [...new Set([...treatment.applied, ...logged])].sort(compareDates),
      placed: 0,
      done: false,
    };
  });
  // Bounded by the days of the season: every round places an application or ends a treatment.
  for (;;) {
    const open = season.treatments.flatMap((treatment, i) => {
      const state = states[i] as State;
      if (state.done || state.placed >= treatment.count) return [];
      return [{ due: dueNext(treatment, state, plan, book.notChecked), state }];
    });
    const [first] = open.sort((a, b) => compareDates(a.due.target, b.due.target));
    if (first === undefined) break;
    const { due, state } = first;
    // A repeat whose time comes after the season is no failure: the season is over for it.
    const over = state.placed > 0 && due.treatment.input.count === undefined;
    const { date, why } =
      over && compareDates(due.target, due.treatment.within.to) > 0
        ? { date: undefined, why: [] }
        : dayFor(due, book);
    if (date !== undefined) {
      place(due, date, why, state, book);
      continue;
    }
    state.done = true;
    if (why.length > 0)
      notPlaced.push({
        treatment: due.treatment.id,
        number: state.placed + 1,
        reasons: [...due.reasons, ...why],
      });
  }
  const dates = [...book.visits.keys()].sort(compareDates);
  return {
    type: "schedule",
    version: 1,
    season: season.season,
    visits: dates.map((date) => ({ date, applications: book.visits.get(date) ?? [] })),
    notPlaced,
    findings: book.findings,
    checked: [
      "dates against the stated intervals",
      ...(season.limits.length > 0 ? ["amounts against the stated limits"] : []),
      ...(season.treatments.some(({ heat }) => heat) ? ["degree-days against the intervals by heat"] : []),
      ...(season.treatments.some(({ input }) => input.use)
        ? ["treatments against the turf, as far as it is known"]
        : []),
    ],
    notChecked: [
      ...new Set(book.notChecked),
      ...(season.limits.length === 0 ? ["Limits: none are stated."] : []),
      ...season.treatments
        .filter(({ proposal }) => proposal === undefined && season.limits.length > 0)
        .map(({ id }) => `${id}: the limits, for what it puts down is not stated.`),
      "The weather of the day, and what else labels and local codes ask for.",
    ],
  };
};
