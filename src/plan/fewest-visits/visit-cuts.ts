import { compareDates } from "../../calendar/index.js";
import { openFrom } from "../season/schedule-day.js";
import { dueNext, type State } from "../season/schedule-due.js";
import { limitCuts } from "./limit-cuts.js";
import { dateOf, notAll, type Trial, type TrialOf } from "./trial.js";
import { stateWith, type VisitDays } from "./visit-days.js";
import type { PlanRow } from "./visit-program.js";

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
