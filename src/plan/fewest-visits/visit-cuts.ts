import { addDays, type CivilDate, compareDates, daysBetween } from "../../calendar/index.js";
import { limitsOn } from "../../limits/house.js";
import type { LimitTest, LimitUse } from "../../limits/index.js";
import { asked, type Book, openFrom } from "../season/schedule-day.js";
import { dueNext, type State } from "../season/schedule-due.js";
import { stateWith, type VisitDays } from "./visit-days.js";
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

const dateOf = ({ book }: TrialOf, day: number): CivilDate => addDays(book.season.season.from, day);

/** The limits of one application beside others. */
const outcomes = (
  of: TrialOf,
  { treatment, day }: Trial,
  beside: readonly Trial[],
): readonly (LimitUse | LimitTest)[] => {
  const rows = beside.flatMap((other) => {
    const one = (of.all[other.treatment] as VisitDays).treatment;
    if (one.proposal === undefined) return [];
    const date = dateOf(of, other.day);
    return [{ ...one.proposal.row, date, from: `${one.id} on ${date}`, parts: one.parts }];
  });
  const book: Book = { ...of.book, rows };
  const input = asked(book, (of.all[treatment] as VisitDays).treatment, dateOf(of, day));
  if (input === undefined) return [];
  const { uses, tests } = limitsOn(input);
  return [...uses, ...tests];
};

/** What one application of each treatment adds to a limit on a part, in the unit of the limit. */
const addsOf = (of: TrialOf, use: LimitUse): readonly number[] =>
  of.all.map(({ open }, treatment) => {
    for (const day of open) {
      const alone = outcomes(of, { treatment, day }, []).find(
        (one): one is LimitUse => "adds" in one && one.path === use.path && one.part === use.part,
      );
      if (alone !== undefined) return alone.adds.value;
    }
    return 0;
  });

/** No stretch as long as the one that a limit added up holds more than the limit. */
const amountCuts = (of: TrialOf, use: LimitUse, trial: readonly Trial[]): readonly PlanRow[] => {
  if (use.from === null || use.to === null) return [];
  const { from: start, to: end } = of.book.season.season;
  const [first, last] = [daysBetween(start, use.from), daysBetween(start, use.to)];
  const adds = addsOf(of, use);
  const planned = trial
    .filter(({ day }) => day >= first && day <= last)
    .reduce((total, { treatment }) => total + (adds[treatment] as number), 0);
  const limit = use.limit.amount.value;
  const ledger = Math.max(0, use.after.value - planned);
  const within = (a: number, b: number): PlanRow["terms"] =>
    of.all.flatMap(({ open }, treatment) => {
      const times = adds[treatment] as number;
      return times > 0
        ? open.filter((day) => day >= a && day <= b).map((day) => ({ treatment, day, times }))
        : [];
    });
  const guard = Math.abs(limit) * 1e-9;
  const cuts: PlanRow[] = [{ terms: within(first, last), atMost: limit - ledger + guard }];
  const { per } = use.limit;
  if (typeof per === "object" && ("days" in per || "months" in per)) {
    // Months differ in length: no stretch of them is shorter than this.
    const length = "days" in per ? per.days : Math.floor(per.months * 30.4) - 3;
    for (let b = length - 1; b <= daysBetween(start, end); b++) {
      cuts.push({ terms: within(b - length + 1, b), atMost: limit + guard });
    }
  }
  return cuts;
};

/** Two applications that object to each other object as well wherever they lie as near or nearer. */
const pairCuts = (of: TrialOf, a: Trial, b: Trial): readonly PlanRow[] => {
  const gap = Math.abs(a.day - b.day);
  const days = daysBetween(of.book.season.season.from, of.book.season.season.to);
  const cuts: PlanRow[] = [];
  for (let day = 0; day <= days; day++) {
    for (let apart = -gap; apart <= gap; apart++) {
      if (apart === 0) continue;
      cuts.push({
        terms: [
          { treatment: a.treatment, day, times: 1 },
          { treatment: b.treatment, day: day + apart, times: 1 },
        ],
        atMost: 1,
      });
    }
  }
  return cuts;
};

/** Not these together. */
const notAll = (trial: readonly Trial[]): PlanRow => ({
  terms: trial.map((one) => ({ ...one, times: 1 })),
  atMost: trial.length - 1,
});

const limitCuts = (of: TrialOf, one: Trial, others: readonly Trial[]): readonly PlanRow[] => {
  const violated = outcomes(of, one, others).filter((outcome) => outcome.violated === true);
  const cuts = violated.flatMap((outcome): readonly PlanRow[] => {
    if ("adds" in outcome) return amountCuts(of, outcome, [...others, one]);
    const culprit = others.find((other) =>
      outcomes(of, one, [other]).some(({ path, violated: still }) => still === true && path === outcome.path),
    );
    return culprit === undefined ? [] : pairCuts(of, one, culprit);
  });
  return violated.length > 0 ? [...cuts, notAll([one, ...others])] : [];
};

/** What the rule of a treatment says against its days, taken together. */
const ruleCuts = (of: TrialOf, treatment: number, days: readonly number[]): readonly PlanRow[] => {
  const one = (of.all[treatment] as VisitDays).treatment;
  for (const [k, day] of days.entries()) {
    const before = days.slice(0, k).map((earlier) => dateOf(of, earlier));
    const due = dueNext(one, stateWith(of.states[treatment] as State, before), of.book.plan, []);
    const date = dateOf(of, day);
    const open = openFrom(date, due, of.book.plan.avoid).date === date;
    if (!open || compareDates(due.earliest, date) > 0) {
      return [notAll(days.slice(0, k + 1).map((earlier) => ({ treatment, day: earlier })))];
    }
  }
  return [];
};

/** What stated rules and limits say against a trial, as rows that rule it out; an empty list where they say nothing. */
export const cutsOf = (of: TrialOf, trial: readonly Trial[]): readonly PlanRow[] => [
  ...of.all.flatMap((_, treatment) =>
    ruleCuts(
      of,
      treatment,
      trial.filter((one) => one.treatment === treatment).map(({ day }) => day),
    ),
  ),
  ...trial.flatMap((one) =>
    limitCuts(
      of,
      one,
      trial.filter((other) => other !== one),
    ),
  ),
];
