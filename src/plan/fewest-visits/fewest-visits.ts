import { addDays, type CivilDate, daysBetween } from "../../calendar/index.js";
import { described } from "../../quantity/house.js";
import { allOf, expectFields, expectNumber, type Finding, outOfRange } from "../../quantity/index.js";
import { schedule } from "../season/schedule.js";
import { openBook, place, scheduleOf } from "../season/schedule-book.js";
import { dueNext, type State } from "../season/schedule-due.js";
import type { Schedule, SeasonPlan } from "../season/schedule-types.js";
import { loadSolver } from "./integer-program.js";
import { type Bounds, searched, wholeVisits } from "./search.js";
import { type PlainDays, visitDays } from "./visit-days.js";

/** A season with the fewest visits, and how far the plain schedule lies from it. */
export interface FewestVisitsFound {
  readonly type: "fewest-visits";
  readonly version: 1;
  readonly outcome: "found";
  readonly schedule: Schedule;
  readonly visits: number;
  /** No schedule of these applications has fewer visits than this; `visits` where `proven`. */
  readonly atLeast: number;
  readonly proven: boolean;
  /** The visits of {@link schedule}, which takes the applications in the order in which they come due. */
  readonly visitsOfPlainSchedule: number;
  readonly findings: readonly Finding[];
}

/** The search ended before it found a season, or that there is none: neither is known. */
export interface FewestVisitsNotSettled {
  readonly type: "fewest-visits";
  readonly version: 1;
  readonly outcome: "not settled";
  readonly schedule: null;
  readonly visits: null;
  /** If there is a schedule of these applications, it has no fewer visits than this. */
  readonly atLeast: number;
  readonly proven: false;
  /** The visits of {@link schedule}, which may come late, where this one may not. */
  readonly visitsOfPlainSchedule: number;
  /** Which bound ended the search, and what to try next. */
  readonly findings: readonly Finding[];
}

/** What {@link fewestVisits} gives: a season, or the word that the search did not settle it. */
export type FewestVisits = FewestVisitsFound | FewestVisitsNotSettled;

/** The most days of a season. */
const mostDays = 400;

/** What ended the search, and what to try next. */
const notSettled = (ended: keyof Bounds, bounds: Bounds): Finding => {
  const most = bounds[ended];
  const what =
    ended === "nodes"
      ? `no schedule in ${most} search nodes`
      : `after ${most} ${most === 1 ? "round" : "rounds"} the limits still ruled out every schedule found`;
  return {
    code: "fewest-visits/not-settled",
    severity: "caution",
    path: `options.${ended}`,
    params: { ended, most },
    text: `Not settled: ${what}. Whether one exists is not known. Raise options.${ended}, or plan a shorter season or fewer treatments at a time; schedule(plan) places what it can and says what is late.`,
  };
};

const readBounds = (options: Partial<Bounds>): Bounds => {
  const given = expectFields(options, ["nodes", "rounds"], "options");
  const bound = (name: keyof Bounds, otherwise: number, max: number): number =>
    given[name] === undefined
      ? otherwise
      : Math.ceil(expectNumber(given[name], `options.${name}`, { min: 1, max }));
  return allOf({
    nodes: () => bound("nodes", 20_000, 1e8),
    rounds: () => bound("rounds", 500, 1e5),
  });
};

const plainDays = (plain: Schedule, id: string): PlainDays => {
  const dates = plain.visits
    .filter(({ applications }) => applications.some(({ treatment }) => treatment === id))
    .map(({ date }) => date);
  const leftOut = plain.notPlaced.some(({ treatment }) => treatment === id);
  return { first: dates[0], placed: dates.length, leftOut };
};

/**
 * A season with the fewest visits: the same applications that {@link schedule} places, on days that share visits as
 * far as the stated rules let them. Found by integer programming: a day is a visit where at least one application lies
 * on it; each treatment keeps its least interval, comes again no later than its rule and its growing degree days say,
 * stays within its window, its numbers and all stated limits, and off the days that the caller avoids. A treatment with
 * a stated number of times is applied as often as `schedule` places it, and so is one of which `schedule` left out a further
 * application; one that repeats as long as the season lasts, at most as often.
 *
 * It differs from {@link schedule} in this: a treatment that is done a stated number of times may lie anywhere within
 * its dates; one whose rule states a longest interval, in days or in growing degree days, begins no later than there, or
 * than `shareWithinDays` after its first day; and no application is ever late. `schedule` looks only at the next
 * application and lets it move by `shareWithinDays`.
 *
 * Needs the package `highs` (a solver of linear and integer programs in WebAssembly) beside this library. It is
 * loaded at the first call.
 *
 * The limits that look at several applications are put in as they are found violated, round by round. Each round rules out
 * the choice of days that it found, of which there are finitely many. Where `rounds` or `nodes` end the search before a
 * schedule is found, `outcome` is `"not settled"`, with the bound that ended it in `findings`: that is not to say that
 * there is none, which is told as `infeasible`.
 *
 * @param plan - as for {@link schedule}, at most 400 days long
 * @param options.nodes - the most nodes of each search, 20,000 where it is left out. Where they do not suffice, the
 *   best schedule found is returned, with `proven` false and the bound in `atLeast`
 * @param options.rounds - the most rounds, 500 where it is left out
 * @throws RatewrightError with every problem of the plan; `infeasible` where no days keep every interval; `range` for
 *   a season of more days; `missing` with the path `highs` where the solver is not installed; `date`, `duplicate`,
 *   `type`
 *
 * Source: the rules stand with the dates; the program is of this library (no source).
 *
 * @example
 * ```ts
 * import { fewestVisits } from "ratewright/plan/fewest-visits";
 * const found = await fewestVisits({
 *   season: { from: "2026-04-01", to: "2026-06-30" },
 *   treatments: [
 *     { id: "feed", interval: { minimumDays: 28, maximumDays: 45, source: "plan of the park" } },
 *     { id: "wetter", interval: { minimumDays: 21, maximumDays: 30, source: "label" } },
 *   ],
 * });
 * [found.outcome, found.visits, found.visitsOfPlainSchedule]; // => ["found", 4, 5]
 * ```
 */
export const fewestVisits = async (
  plan: SeasonPlan,
  options: { readonly nodes?: number; readonly rounds?: number } = {},
): Promise<FewestVisits> => {
  const bounds = readBounds(options);
  const plain = schedule(plan);
  const { from, to } = plain.season;
  if (daysBetween(from, to) >= mostDays)
    outOfRange("season", described(`${from} to ${to}`), { max: mostDays, count: "days" });
  const { book, states } = openBook(plan);
  const all = book.season.treatments.map((treatment, i) =>
    visitDays(book, treatment, states[i] as State, plainDays(plain, treatment.id)),
  );
  const search = searched({ book, states, all }, await loadSolver(), bounds);
  const visitsOfPlainSchedule = plain.visits.length;
  if ("ended" in search) {
    const { ended, atLeast } = search;
    return {
      type: "fewest-visits",
      version: 1,
      outcome: "not settled",
      schedule: null,
      visits: null,
      atLeast,
      proven: false,
      visitsOfPlainSchedule,
      findings: [notSettled(ended, bounds)],
    };
  }
  const { trial, answer } = search;
  for (const { treatment, day } of trial) {
    const one = book.season.treatments[treatment] as (typeof book.season.treatments)[number];
    const state = states[treatment] as State;
    const date: CivilDate = addDays(from, day);
    const why = [
      { code: "schedule/fewest-visits", text: `${date} is from the schedule with the fewest visits.` },
    ];
    place(dueNext(one, state, plan, book.notChecked), date, why, state, book);
  }
  const found = scheduleOf(book, plain.notPlaced);
  const visits = found.visits.length;
  return {
    type: "fewest-visits",
    version: 1,
    outcome: "found",
    schedule: found,
    visits,
    atLeast: answer.proven ? visits : Math.min(visits, wholeVisits(answer.bound)),
    proven: answer.proven,
    visitsOfPlainSchedule,
    findings: [],
  };
};
