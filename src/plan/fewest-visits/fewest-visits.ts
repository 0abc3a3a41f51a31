import { addDays, type CivilDate, daysBetween } from "../../calendar/index.js";
import { expectFields, expectNumber, fail, outOfRange } from "../../quantity/index.js";
import { schedule } from "../season/schedule.js";
import { openBook, place, scheduleOf } from "../season/schedule-book.js";
import { dueNext, type State } from "../season/schedule-due.js";
import type { Schedule, SeasonPlan } from "../season/schedule-types.js";
import { type IntegerAnswer, loadSolver } from "./integer-program.js";
import type { Trial, TrialOf } from "./limit-cuts.js";
import { cutsOf } from "./visit-cuts.js";
import { type PlainDays, visitDays } from "./visit-days.js";
import { type Columns, columnsOf, type PlanRow, visitProgram } from "./visit-program.js";

/** A season with the fewest visits, and how far the plain schedule lies from it. */
export interface FewestVisits {
  readonly type: "fewest-visits";
  readonly version: 1;
  readonly schedule: Schedule;
  readonly visits: number;
  /** No schedule of these applications has fewer visits than this; `visits` where `proven`. */
  readonly atLeast: number;
  readonly proven: boolean;
  /** The visits of {@link schedule}, which takes the applications in the order in which they come due. */
  readonly visitsOfPlainSchedule: number;
}

/** The most days of a season, and the most rounds of limits that are found violated and put in. */
const mostDays = 400;
const mostRounds = 60;

const trialOf = (x: readonly number[], columns: Columns): readonly Trial[] =>
  columns.application
    .flatMap((map, treatment) =>
      [...map].flatMap(([day, column]) => ((x[column] as number) > 0.5 ? [{ treatment, day }] : [])),
    )
    .sort((a, b) => a.day - b.day || a.treatment - b.treatment);

/** Whether every application came out whole. */
const isWhole = (x: readonly number[], columns: Columns): boolean =>
  columns.application.every((map) =>
    [...map.values()].every((column) => Math.min(x[column] as number, 1 - (x[column] as number)) < 1e-6),
  );

/** Solves, holds the answer against rules and limits, puts in what they say, and solves again. */
const solved = async (
  of: TrialOf,
  nodes: number,
): Promise<{ readonly trial: readonly Trial[]; readonly answer: IntegerAnswer }> => {
  const solve = await loadSolver();
  const columns = columnsOf(of.all);
  const cuts: PlanRow[] = [];
  for (let round = 0; round < mostRounds; round++) {
    const free = solve(visitProgram(of.all, columns, cuts, { nodes, free: true }));
    const answer =
      free.status === "found" && !isWhole(free.x, columns)
        ? solve(visitProgram(of.all, columns, cuts, { nodes, free: false }))
        : free;
    if (answer.status !== "found") {
      if (answer.status === "infeasible") break;
      return fail("infeasible", "options.nodes", nodes, "more nodes: none of these gave a schedule");
    }
    const trial = trialOf(answer.x, columns);
    const found = cutsOf(of, trial);
    if (found.length === 0) return { trial, answer };
    cuts.push(...found);
  }
  return fail(
    "infeasible",
    "treatments",
    "rules, limits and days",
    "days on which every interval is kept up with; schedule(plan) places what it can and says what comes late",
  );
};

const plainDays = (plain: Schedule, id: string): PlainDays => {
  const dates = plain.visits
    .filter(({ applications }) => applications.some(({ treatment }) => treatment === id))
    .map(({ date }) => date);
  return { first: dates[0], placed: dates.length };
};

/**
 * A season with the fewest visits: the same applications that {@link schedule} places, on days that share visits as
 * far as the stated rules let them. Found by integer programming: a day is a visit where at least one application lies
 * on it; each treatment keeps its least interval, comes again no later than its rule and its growing degree days say,
 * stays within its window, its numbers and all stated limits, and off the days that the caller avoids. A treatment with
 * a stated number of times is applied as often as `schedule` places it; one that repeats as long as the season lasts, at
 * most as often.
 *
 * It differs from {@link schedule} in this: a treatment that is done a stated number of times may lie anywhere within
 * its dates; one whose rule states a longest interval, in days or in growing degree days, begins no later than there, or
 * than `shareWithinDays` after its first day; and no application is ever late. `schedule` looks only at the next
 * application and lets it move by `shareWithinDays`.
 *
 * Needs the package `highs` (a solver of linear and integer programs in WebAssembly) beside this library. It is
 * loaded at the first call.
 *
 * @param plan - as for {@link schedule}, at most 400 days long
 * @param options.nodes - the most nodes of the search, 20,000 where it is left out. Where they do not suffice, the
 *   best schedule found is returned, with `proven` false and the bound in `atLeast`
 * @throws RatewrightError with every problem of the plan; `infeasible` where no days keep every interval; `range`
 *   for a season of more days; `missing` with the path `highs` where the solver is not installed
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
 * [found.visits, found.visitsOfPlainSchedule]; // => [4, 5]
 * ```
 */
export const fewestVisits = async (
  plan: SeasonPlan,
  options: { readonly nodes?: number } = {},
): Promise<FewestVisits> => {
  const { nodes = 20_000 } = expectFields(options, ["nodes"], "options");
  const most = Math.ceil(expectNumber(nodes, "options.nodes", { min: 1, max: 1e8 }));
  const plain = schedule(plan);
  const { from, to } = plain.season;
  if (daysBetween(from, to) >= mostDays)
    outOfRange("season", `${from} to ${to}`, { max: mostDays, count: "days" });
  const { book, states } = openBook(plan);
  const all = book.season.treatments.map((treatment, i) =>
    visitDays(book, treatment, states[i] as State, plainDays(plain, treatment.id)),
  );
  const { trial, answer } = await solved({ book, states, all }, most);
  for (const { treatment, day } of trial) {
    const one = book.season.treatments[treatment] as (typeof book.season.treatments)[number];
    const state = states[treatment] as State;
    const date: CivilDate = addDays(from, day);
    const why = [
      { code: "schedule/fewest-visits", text: `${date} is of the schedule with the fewest visits.` },
    ];
    place(dueNext(one, state, plan, book.notChecked), date, why, state, book);
  }
  const found = scheduleOf(book, plain.notPlaced);
  const visits = found.visits.length;
  const bound = Math.ceil(answer.bound - 1e-6);
  return {
    type: "fewest-visits",
    version: 1,
    schedule: found,
    visits,
    atLeast: answer.proven ? visits : Math.max(0, Math.min(visits, bound)),
    proven: answer.proven,
    visitsOfPlainSchedule: plain.visits.length,
  };
};
