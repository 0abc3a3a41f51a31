import type { CivilDate } from "../../calendar/index.js";
import { ledgerHistory } from "../../ledger/house.js";
import type { LimitTest } from "../../limits/index.js";
import { enders, type RotationLimit } from "./run-enders.js";
import { dayOf, lastOf, meantFor, outcomes, rolls, same, type Trial, type TrialOf } from "./trial.js";
import type { VisitDays } from "./visit-days.js";
import type { PlanRow } from "./visit-program.js";

/** Whether a rotation objects to an application beside others. */
type Objects = (at: Trial, beside: readonly Trial[], to?: TrialOf) => boolean;

/** As few of the others as a rotation still objects to; what may end a run is left out first. */
const neededOf = (
  others: readonly Trial[],
  may: readonly number[],
  objects: (beside: readonly Trial[]) => boolean,
): readonly Trial[] => {
  const ends = ({ treatment }: Trial): boolean => may.includes(treatment);
  return [...others.filter(ends), ...others.filter((one) => !ends(one))].reduce<readonly Trial[]>(
    (needed, other) => {
      const fewer = needed.filter((one) => one !== other);
      return objects(fewer) ? fewer : needed;
    },
    others,
  );
};

/** How many at the head of a list hold; those behind the first that does not are taken not to. */
const leading = (days: readonly number[], holds: (day: number) => boolean): number => {
  let [low, high] = [0, days.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(days[middle] as number)) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** Applications of which each alone ends what a rotation objects to, and the others that might have. */
const endsOf = (
  of: TrialOf,
  run: readonly Trial[],
  may: readonly number[],
  objects: (beside: readonly Trial[]) => boolean,
): { readonly ends: readonly Trial[]; readonly idle: readonly Trial[] } => {
  const at = (run[0] as Trial).day;
  const held = new Set(of.book.ledger.dates.map((date) => dayOf(of, date)));
  const ends: Trial[] = [];
  const idle: Trial[] = [];
  for (const treatment of may) {
    const ended = (day: number): boolean => !objects([{ treatment, day }]);
    // What lies on a day of the run itself ends nothing.
    const days = (of.all[treatment] as VisitDays).open.filter((day) => run.every((one) => one.day !== day));
    const [logged, free] = [days.filter((day) => held.has(day)), days.filter((day) => !held.has(day))];
    const sure = new Set(logged.filter(ended));
    // The nearer it lies, the more of the run it cuts off.
    for (const side of [free.filter((day) => day < at).reverse(), free.filter((day) => day > at)])
      for (const day of side.slice(0, leading(side, ended))) sure.add(day);
    for (const day of days) (sure.has(day) ? ends : idle).push({ treatment, day });
  }
  return { ends, idle };
};

/** Fewer of the days than make a run, or so many more for each that ends one. */
const fewer = (run: number, days: readonly Trial[], ends: readonly Trial[]): PlanRow => ({
  terms: [...days.map((one) => ({ ...one, times: 1 })), ...ends.map((one) => ({ ...one, times: -run }))],
  atMost: run - 1,
});

/**
 * What a rotation objects to has something between that ends the run, here and in every stretch as long. What the ledger
 * holds stays where it is, and so does a year: where they are part of it, it is ruled out only where it lies. Where the
 * ledger alone makes the run, each day of the treatment waits for what ends it.
 */
export const runCuts = (
  of: TrialOf,
  { limit, test }: { readonly limit: RotationLimit; readonly test: LimitTest },
  at: Trial,
  others: readonly Trial[],
): readonly PlanRow[] => {
  const objects: Objects = (one, beside, to = of) =>
    outcomes(to, one, beside).some((outcome) => same(test)(outcome) && outcome.violated === true);
  const may = enders(
    limit,
    of.all.map(({ treatment }) => treatment),
  );
  const needed = neededOf(others, may, (beside) => objects(at, beside));
  const season = Array.from({ length: lastOf(of) + 1 }, (_, day) => day);
  const { dates } = of.book.ledger;
  const lastLogged = dates.length === 0 ? -1 : dayOf(of, dates[dates.length - 1] as CivilDate);
  const here = (run: readonly Trial[]): { readonly row: PlanRow; readonly ends: readonly Trial[] } => {
    const [first, ...rest] = run as [Trial, ...Trial[]];
    const { ends, idle } = endsOf(of, run, may, (beside) => objects(first, [...rest, ...beside]));
    // Between what the ledger holds before and behind, two may end together what neither ends alone.
    const together = rest.length === 0 && lastLogged > first.day && !objects(first, idle);
    return { row: fewer(run.length, run, together ? [...ends, ...idle] : ends), ends };
  };
  if (needed.length === 0) {
    const { treatment } = at;
    return (of.all[treatment] as VisitDays).open
      .filter((day) => objects({ treatment, day }, []))
      .map((day) => here([{ treatment, day }]).row);
  }
  const run = [at, ...needed];
  const { row, ends } = here(run);
  const moves = limit.per === undefined || rolls(limit.per);
  const empty = ledgerHistory({ type: "ledger", version: 1, entries: [] }, "ledger");
  if (!moves || !objects(at, needed, { ...of, book: { ...of.book, ledger: empty } })) return [row];
  const [first, last] = [Math.min(...run.map(({ day }) => day)), Math.max(...run.map(({ day }) => day))];
  const meant = meantFor(of, test);
  const length = last - first;
  const ending = may.filter((treatment) => ends.some((one) => one.treatment === treatment));
  const stretches = season.slice(0, season.length - length).map((from) => {
    const days = season.slice(from, from + length + 1).map((day) => ({
      treatment: (run.find((one) => one.day - first === day - from) ?? at).treatment,
      day,
    }));
    const inside = season.slice(from + 1, from + length);
    return fewer(
      run.length,
      days.filter(meant),
      ending.flatMap((treatment) => inside.map((day) => ({ treatment, day }))),
    );
  });
  return [row, ...stretches];
};
