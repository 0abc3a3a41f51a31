import { type CivilDate, daysBetween } from "../../calendar/index.js";
import type { LimitTest, LimitUse } from "../../limits/index.js";
import { runCuts } from "./run-cuts.js";
import {
  anyBut,
  lastOf,
  meantFor,
  notAll,
  type Outcome,
  outcomes,
  rolls,
  ruledOut,
  same,
  type Trial,
  type TrialOf,
} from "./trial.js";
import type { VisitDays } from "./visit-days.js";
import type { PlanRow } from "./visit-program.js";

type Terms = PlanRow["terms"];

/** What one application of each treatment counts for a limit: what is used on a day with it, less what is without. */
const countsOf = (of: TrialOf, use: LimitUse, at: Trial): readonly number[] => {
  const used = (beside: readonly Trial[]): number => {
    const found = outcomes(of, at, beside).find(same(use));
    return found !== undefined && "before" in found ? found.before.value : 0;
  };
  const alone = used([]);
  return of.all.map((_, treatment) => used([{ treatment, day: at.day }]) - alone);
};

/**
 * No stretch as long as the one that a limit added up holds more than the limit. Where the limit is meant on some days
 * only, it binds a stretch as soon as one of the applications in it lies on such a day.
 */
const amountCuts = (of: TrialOf, use: LimitUse, at: Trial, others: readonly Trial[]): readonly PlanRow[] => {
  const start = of.book.season.season.from;
  const dayOf = (date: CivilDate | null): number => (date === null ? at.day : daysBetween(start, date));
  const [first, last] = [dayOf(use.from), dayOf(use.to)];
  const counts = countsOf(of, use, at);
  const meant = meantFor(of, use);
  const within = (a: number, b: number): Terms =>
    of.all.flatMap(({ open }, treatment) => {
      const times = counts[treatment] as number;
      return times > 0
        ? open.filter((day) => day >= a && day <= b).map((day) => ({ treatment, day, times }))
        : [];
    });
  const inIt = [at, ...others].filter(
    ({ treatment, day }) => (counts[treatment] as number) > 0 && day >= first && day <= last,
  );
  const planned = inIt.reduce((total, { treatment }) => total + (counts[treatment] as number), 0);
  const limit = use.limit.amount.value;
  const before = Math.max(0, use.after.value - planned);
  const guard = Math.abs(limit) * 1e-9;
  /** What a stretch may hold; or, where the limit is not meant on all of its days, what it may hold beside each that is. */
  const held = (a: number, b: number, atMost: number): readonly PlanRow[] => {
    const terms = within(a, b);
    const bound = terms.filter(meant);
    if (bound.length === terms.length) return [{ terms, atMost }];
    const all = terms.reduce((total, { times }) => total + times, 0);
    return bound.map((one) => ({ terms: [...terms, { ...one, times: all }], atMost: atMost + all }));
  };
  const cuts = [...held(first, last, limit - before + guard), notAll(inIt)];
  const { per } = use.limit;
  if (rolls(per)) {
    // Months differ in length: no stretch of them is shorter than this.
    const length = "days" in per ? per.days : Math.floor(per.months * 30.4) - 3;
    for (let b = length - 1; b <= lastOf(of); b++) cuts.push(...held(b - length + 1, b, limit + guard));
  }
  return cuts;
};

/** Two applications that lie too near to each other do so as well wherever they lie as near or nearer. */
const pairCuts = (of: TrialOf, test: LimitTest, a: Trial, b: Trial): readonly PlanRow[] => {
  const gap = Math.abs(a.day - b.day);
  const meant = meantFor(of, test);
  return (of.all[a.treatment] as VisitDays).open.flatMap((day) => {
    const one = { treatment: a.treatment, day };
    if (!meant(one)) return [];
    return Array.from({ length: 2 * gap + 1 }, (_, i) => ({ treatment: b.treatment, day: day + i - gap }))
      .filter((other) => other.day !== day || other.treatment !== one.treatment)
      .map((other) => notAll([one, other]));
  });
};

/** What one limit says against one application of a trial. */
const rowsOf = (of: TrialOf, outcome: Outcome, one: Trial, others: readonly Trial[]): readonly PlanRow[] => {
  if ("adds" in outcome) return amountCuts(of, outcome, one, others);
  const limit = of.book.season.limits.find(({ path }) => path === outcome.path);
  if (limit?.kind === "rotation") return runCuts(of, { limit, test: outcome }, one, others);
  const near = others.filter((other) =>
    outcomes(of, one, [other]).some((alone) => same(outcome)(alone) && alone.violated === true),
  );
  return near.flatMap((other) => pairCuts(of, outcome, one, other));
};

/**
 * What the limits say against one application of a trial, as rows that rule it out. Where none of them does, the trial
 * itself is ruled out: each round leaves fewer choices of days.
 */
export const limitCuts = (of: TrialOf, one: Trial, others: readonly Trial[]): readonly PlanRow[] =>
  outcomes(of, one, others).flatMap((outcome): readonly PlanRow[] => {
    if (outcome.violated !== true) return [];
    const trial = [one, ...others];
    const rows = rowsOf(of, outcome, one, others);
    return ruledOut(rows, trial) ? rows : [...rows, anyBut(of, trial)];
  });
