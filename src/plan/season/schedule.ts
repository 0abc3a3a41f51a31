import { compareDates } from "../../calendar/index.js";
import { openBook, place, scheduleOf } from "./schedule-book.js";
import { dayFor } from "./schedule-day.js";
import { type Due, dueNext, type State } from "./schedule-due.js";
import type { NotPlaced, Schedule, SeasonPlan } from "./schedule-types.js";

/**
 * Whether a treatment comes back by growing degree days, and they do not tell when: the temperatures end before. A stated
 * number of times, each a least interval after the one before, tells it.
 */
const isUntold = ({ treatment, applied, latest }: Due): boolean =>
  treatment.degreeDays !== undefined &&
  applied.length > 0 &&
  latest === null &&
  (treatment.input.count === undefined || !treatment.rule?.minimumDays);

const untold = (): ReturnType<typeof dayFor> => ({
  why: [
    {
      code: "schedule/not-known",
      text: "When it is due again is not known: the temperatures end before its growing-degree-day interval does. State temperatures or normals that reach further.",
    },
  ],
  waits: false,
});

/**
 * The visits of a season: each treatment is repeated by its stated rule, by growing degree days and within the stated
 * limits, days that the caller avoids stay free, and treatments that may wait or come early by
 * `shareWithinDays` share a visit. Every date has its reasons, and what found no day says why.
 *
 * A first application aims at its earliest day, a repeat at the day by which to reapply,
 * so that a season takes no more applications than the rules ask for. Where limits stand against that day, a repeat takes
 * the last one before it that they leave, and a later one only where there is none. The treatment whose day
 * comes first is placed first; this is a plain order of work and not an optimum. Where a mode of action has come too often
 * in a row, the next application waits for one of another group that ends the run. One that comes back by growing degree
 * days is not placed where the temperatures end before its interval does. Limits whose conditions are not known count
 * as meant.
 *
 * @param plan - the season, what is to be done, temperatures or normals for growing-degree-day intervals, limits and
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
  const { book, states } = openBook(plan);
  const { season } = book;
  const notPlaced: NotPlaced[] = [];
  // What may follow once another application has ended a run.
  const waiting = new Map<State, NotPlaced>();
  // Bounded by the days of the season: every round places an application, ends a treatment or lets it wait for the next.
  for (;;) {
    const open = season.treatments.flatMap((treatment, i) => {
      const state = states[i] as State;
      if (state.done || waiting.has(state) || state.placed >= treatment.count) return [];
      return [{ due: dueNext(treatment, state, plan, book.notChecked), state }];
    });
    const [first] = open.sort((a, b) => compareDates(a.due.target, b.due.target));
    if (first === undefined) break;
    const { due, state } = first;
    // A repeat whose time comes after the season is no failure: the season is over for it.
    const over = state.placed > 0 && due.treatment.input.count === undefined;
    if (over && compareDates(due.latest ?? due.target, due.treatment.within.to) > 0) {
      state.done = true;
      continue;
    }
    const day = isUntold(due) ? untold() : dayFor(due, book);
    if (day.date !== undefined) {
      place(due, day.date, day.why, state, book);
      if (due.treatment.proposal !== undefined) waiting.clear();
      continue;
    }
    const none = {
      treatment: due.treatment.id,
      number: state.placed + 1,
      reasons: [...due.reasons, ...day.why],
    };
    if (day.waits) waiting.set(state, none);
    else {
      state.done = true;
      notPlaced.push(none);
    }
  }
  return scheduleOf(book, [...notPlaced, ...waiting.values()]);
};
