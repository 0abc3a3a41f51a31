import { addDays, type CivilDate, daysBetween } from "../../calendar/index.js";
import { wholeSite } from "../../ledger/house.js";
import { limitsOn } from "../../limits/house.js";
import type { LimitPeriod, LimitTest, LimitUse } from "../../limits/index.js";
import { asked, type Book } from "../season/schedule-day.js";
import type { State } from "../season/schedule-due.js";
import type { VisitDays } from "./visit-days.js";
import type { PlanRow } from "./visit-program.js";

/** One application of a trial: a treatment by its place in the list, and a day of the season. */
export interface Trial {
  readonly treatment: number;
  readonly day: number;
}

/** What a trial is held against. */
export interface TrialOf {
  readonly book: Book;
  readonly states: readonly State[];
  readonly all: readonly VisitDays[];
}

/** What a limit says of one application. */
export type Outcome = LimitUse | LimitTest;

/** The date of a day of the season. */
export const dateOf = ({ book }: TrialOf, day: number): CivilDate => addDays(book.season.season.from, day);

/** The day of the season on a date. */
export const dayOf = ({ book }: TrialOf, date: CivilDate): number =>
  daysBetween(book.season.season.from, date);

/** Whether another outcome is of the same limit on the same part. */
export const same =
  (one: Outcome) =>
  (other: Outcome): boolean =>
    one.path === other.path && one.part === other.part;

/** What the limits say of one application beside others, on every part that a treatment or the ledger names. */
export const outcomes = (
  of: TrialOf,
  { treatment, day }: Trial,
  beside: readonly Trial[] = [],
): readonly Outcome[] => {
  const rows = beside.flatMap((other) => {
    const one = (of.all[other.treatment] as VisitDays).treatment;
    if (one.proposal === undefined) return [];
    const date = dateOf(of, other.day);
    return [{ ...one.proposal.row, date, from: `${one.id} on ${date}`, parts: one.parts }];
  });
  const one = (of.all[treatment] as VisitDays).treatment;
  const input = asked({ ...of.book, rows }, one, dateOf(of, day));
  if (input === undefined) return [];
  const named = of.all.flatMap((other) => other.treatment.parts);
  const every = [...new Set([...of.book.ledger.parts(), ...named, wholeSite])];
  const { uses, tests } = limitsOn({ ...input, parts: one.parts.length > 0 ? one.parts : every });
  return [...uses, ...tests];
};

/** Whether a limit is meant for an application on its day: a part of the year may be left out of it. */
export const meantFor = (of: TrialOf, like: Outcome): ((trial: Trial) => boolean) => {
  const known = new Map<string, boolean>();
  return (trial) => {
    const key = `${trial.treatment} ${trial.day}`;
    const meant = known.get(key) ?? outcomes(of, trial).some(same(like));
    known.set(key, meant);
    return meant;
  };
};

/** Not these together. */
export const notAll = (trial: readonly Trial[]): PlanRow => ({
  terms: trial.map((one) => ({ ...one, times: 1 })),
  atMost: trial.length - 1,
});

/** The last day of the season. */
export const lastOf = (of: TrialOf): number => dayOf(of, of.book.season.season.to);

/** Whether a period rolls on with the day, so that what holds for one stretch holds for every other. */
export const rolls = (per: LimitPeriod): per is { readonly days: number } | { readonly months: number } =>
  typeof per === "object" && ("days" in per || "months" in per);

/** Whether rows leave no room for these applications. */
export const ruledOut = (rows: readonly PlanRow[], trial: readonly Trial[]): boolean =>
  rows.some(({ terms, atMost }) => {
    const held = terms.filter((one) =>
      trial.some(({ treatment, day }) => treatment === one.treatment && day === one.day),
    );
    return held.reduce((total, { times }) => total + times, 0) > atMost + 1e-3;
  });

/** Any choice of days but this one. */
export const anyBut = ({ all }: Pick<TrialOf, "all">, trial: readonly Trial[]): PlanRow => {
  const held = (treatment: number, day: number): boolean =>
    trial.some((one) => one.treatment === treatment && one.day === day);
  return {
    terms: all.flatMap(({ open }, treatment) =>
      open.map((day) => ({ treatment, day, times: held(treatment, day) ? 1 : -1 })),
    ),
    atMost: trial.length - 1,
  };
};
