import { type CivilDate, compareDates, daysBetween } from "../../calendar/index.js";
import { ledgerHistory } from "../../ledger/house.js";
import { limitsOn } from "../../limits/house.js";
import { turfConflicts } from "../grow-in/grow-in.js";
import { readSeason } from "./read-season.js";
import { asked, type Book, dayFor } from "./schedule-day.js";
import { type Due, dueNext, type State } from "./schedule-due.js";
import type { DateReason, NotPlaced, Schedule, SeasonPlan } from "./schedule-types.js";

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
