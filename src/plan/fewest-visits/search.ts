import { described } from "../../quantity/house.js";
import { fail } from "../../quantity/index.js";
import type { IntegerAnswer, IntegerProgram, NoAnswer } from "./integer-program.js";
import type { Trial, TrialOf } from "./trial.js";
import { cutsOf } from "./visit-cuts.js";
import { type Columns, columnsOf, type PlanRow, visitProgram } from "./visit-program.js";

/** How far the search may go. */
export interface Bounds {
  readonly nodes: number;
  readonly rounds: number;
}

/** A choice of days that rules and limits have nothing against, or the bound that ended the search before one. */
export type Searched =
  | { readonly trial: readonly Trial[]; readonly answer: IntegerAnswer }
  | { readonly ended: keyof Bounds; readonly atLeast: number };

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

/** What a row says, whichever way it was found: of two applications, or of two parts, most say the same. */
const saying = ({ terms, atMost }: PlanRow): string =>
  `${atMost}: ${terms
    .map(({ treatment, day, times }) => `${treatment} ${day} ${times}`)
    .sort()
    .join()}`;

/** The least whole number of visits by a bound of the solver. */
export const wholeVisits = (bound: number): number => Math.max(0, Math.ceil(bound - 1e-6));

/**
 * Solves, holds the answer against rules and limits, puts in what they say, and solves again. Each round rules out at
 * least the choice of days that it found, so that it would come to an end without a bound as well.
 */
export const searched = (
  of: TrialOf,
  solve: (program: IntegerProgram) => IntegerAnswer | NoAnswer,
  { nodes, rounds }: Bounds,
): Searched => {
  const columns = columnsOf(of.all);
  // Nothing that could be placed: there is nothing to solve.
  if (columns.count === 0) return { trial: [], answer: { status: "found", x: [], bound: 0, proven: true } };
  const cuts = new Map<string, PlanRow>();
  let atLeast = 0;
  for (let round = 0; round < rounds; round++) {
    const rows = [...cuts.values()];
    const free = solve(visitProgram(of.all, columns, rows, { nodes, free: true }));
    const answer =
      free.status === "found" && !isWhole(free.x, columns)
        ? solve(visitProgram(of.all, columns, rows, { nodes, free: false }))
        : free;
    if (answer.status !== "found") {
      if (answer.status === "not found") return { ended: "nodes", atLeast };
      return fail(
        "infeasible",
        "treatments",
        described("none under these rules, limits and days"),
        "days that keep every interval; schedule(plan) places what it can and says what is late",
      );
    }
    const trial = trialOf(answer.x, columns);
    const found = cutsOf(of, trial);
    if (found.length === 0) return { trial, answer };
    atLeast = Math.max(atLeast, wholeVisits(answer.bound));
    for (const row of found) cuts.set(saying(row), row);
  }
  return { ended: "rounds", atLeast };
};
