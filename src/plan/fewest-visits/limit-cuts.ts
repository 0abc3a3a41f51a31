import { addDays, type CivilDate, daysBetween } from "../../calendar/index.js";
import { ledgerHistory, wholeSite } from "../../ledger/house.js";
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

type Outcome = LimitUse | LimitTest;
type Terms = PlanRow["terms"];

/** The date of a day of the season. */
export const dateOf = ({ book }: TrialOf, day: number): CivilDate => addDays(book.season.season.from, day);

const same =
  (one: Outcome) =>
  (other: Outcome): boolean =>
    one.path === other.path && one.part === other.part;

/** What the limits say of one application beside others, on every part that a treatment or the ledger names. */
const outcomes = (
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
const meantFor = (of: TrialOf, like: Outcome): ((trial: Trial) => boolean) => {
  const known = new Map<string, boolean>();
  return (trial) => {
    const key = `${trial.treatment} ${trial.day}`;
    const meant = known.get(key) ?? outcomes(of, trial).some(same(like));
    known.set(key, meant);
    return meant;
  };
};

/** What one application of each treatment counts for a limit: what is used on a day with it, less what is without. */
const countsOf = (of: TrialOf, use: LimitUse, at: Trial): readonly number[] => {
  const used = (beside: readonly Trial[]): number => {
    const found = outcomes(of, at, beside).find(same(use));
    return found !== undefined && "before" in found ? found.before.value : 0;
  };
  const alone = used([]);
  return of.all.map((_, treatment) => used([{ treatment, day: at.day }]) - alone);
};

/** Not these together. */
export const notAll = (trial: readonly Trial[]): PlanRow => ({
  terms: trial.map((one) => ({ ...one, times: 1 })),
  atMost: trial.length - 1,
});

const lastOf = ({ book }: TrialOf): number => daysBetween(book.season.season.from, book.season.season.to);

/** Whether a period rolls on with the day, so that what holds for one stretch holds for every other. */
const rolls = (per: LimitPeriod): per is { readonly days: number } | { readonly months: number } =>
  typeof per === "object" && ("days" in per || "months" in per);

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

/** As few of the others as a rotation still objects to. */
const neededOf = (others: readonly Trial[], objects: (beside: readonly Trial[]) => boolean) =>
  others.reduce((needed, other) => {
    const fewer = needed.filter((one) => one !== other);
    return objects(fewer) ? fewer : needed;
  }, others);

/**
 * What a rotation objects to has something between that ends the run, here and in every stretch as long. What the ledger
 * holds stays where it is, and so does a year: where they are part of it, it is ruled out only where it lies.
 */
const runCuts = (of: TrialOf, test: LimitTest, at: Trial, others: readonly Trial[]): readonly PlanRow[] => {
  const objects = (beside: readonly Trial[], to = of): boolean =>
    outcomes(to, at, beside).some((one) => same(test)(one) && one.violated === true);
  const needed = neededOf(others, objects);
  const run = [at, ...needed];
  const season = Array.from({ length: lastOf(of) + 1 }, (_, day) => day);
  const ends = (treatment: number): boolean =>
    season.some((day) => !objects([...needed, { treatment, day }]));
  const enders = of.all.flatMap((_, treatment) =>
    run.some((one) => one.treatment === treatment) || !ends(treatment) ? [] : [treatment],
  );
  const cut = (days: readonly Trial[], between: readonly number[]): PlanRow => ({
    terms: [
      ...days.map((one) => ({ ...one, times: 1 })),
      ...enders.flatMap((treatment) => between.map((day) => ({ treatment, day, times: -run.length }))),
    ],
    atMost: needed.length,
  });
  const limit = of.book.season.limits.find(({ path }) => path === test.path);
  const moves = limit?.kind === "rotation" && (limit.per === undefined || rolls(limit.per));
  const empty = ledgerHistory({ type: "ledger", version: 1, entries: [] }, "ledger");
  const everywhere = moves && objects(needed, { ...of, book: { ...of.book, ledger: empty } });
  const [first, last] = [Math.min(...run.map(({ day }) => day)), Math.max(...run.map(({ day }) => day))];
  const inside = everywhere ? season.slice(first + 1, last) : season;
  // Something on a day of the run itself does not end it.
  const here = cut(
    run,
    inside.filter((day) => run.every((one) => one.day !== day)),
  );
  if (!everywhere) return [here];
  const meant = meantFor(of, test);
  const length = last - first;
  const stretches = season.slice(0, season.length - length).map((from) => {
    const days = season.slice(from, from + length + 1).map((day) => ({
      treatment: (run.find((one) => one.day - first === day - from) ?? at).treatment,
      day,
    }));
    return cut(days.filter(meant), season.slice(from + 1, from + length));
  });
  return [here, ...stretches];
};

/** What the limits say against one application of a trial, as rows that rule it out. */
export const limitCuts = (of: TrialOf, one: Trial, others: readonly Trial[]): readonly PlanRow[] =>
  outcomes(of, one, others).flatMap((outcome): readonly PlanRow[] => {
    if (outcome.violated !== true) return [];
    if ("adds" in outcome) return amountCuts(of, outcome, one, others);
    if (outcome.limit.kind === "rotation") return runCuts(of, outcome, one, others);
    const near = others.filter((other) =>
      outcomes(of, one, [other]).some((alone) => same(outcome)(alone) && alone.violated === true),
    );
    return near.flatMap((other) => pairCuts(of, outcome, one, other));
  });
