import {
  addDays,
  type CivilDate,
  firstDateWithin,
  isWithinWindow,
  windowAround,
} from "../../calendar/index.js";
import { rowText } from "../../ledger/house.js";
import { exceeds } from "../../numeric/index.js";
import { type FactSource, type Quantity, quantityOf } from "../../quantity/index.js";
import type { LimitPeriod } from "../limit/limit.js";
import { type Answer, conditionText, holds } from "../limit/limit-condition.js";
import type { ReadAmountLimit, ReadCountLimit, ReadLimit } from "../limit/read-types.js";
import { counterOf, dayAmounts, type Proposed } from "./counted-days.js";
import { type LimitTest, testOf } from "./limit-test.js";
import { countsBeside, fitsFrom, freesUpAfter, lastYear, usedBeside } from "./period-use.js";

/** How far a limit on an amount, or on a number of applications, is used up on one part of the site. */
export interface LimitUse {
  readonly part: string;
  /** The limit, as it is stated. */
  readonly limit: {
    readonly id?: string;
    readonly kind: "amount" | "count";
    readonly of: string;
    readonly amount: Quantity<string, string>;
    readonly per: LimitPeriod;
    readonly source: FactSource;
  };
  readonly path: string;
  /** From when to when it was added up; `null` at both ends for one application. */
  readonly from: CivilDate | null;
  readonly to: CivilDate | null;
  readonly before: Quantity<string, string>;
  readonly adds: Quantity<string, string>;
  readonly after: Quantity<string, string>;
  /** What is left of the limit afterwards; below zero where it is violated. */
  readonly remainingUnderStatedLimits: Quantity<string, string>;
  /**
   * `true` where the application violates the limit: used and added together are more than it states. `null` where it
   * could not be told: some of it went down, or goes down now, in an amount that is not known, and counts as 0 above.
   * `false` where the application adds none of it, however much was used before.
   */
  readonly violated: boolean | null;
  /**
   * The first day, from this one on, on which what is added stays within this limit, or on which the limit is
   * no longer meant; `null` where none is found, and where amounts are not known.
   */
  readonly earliestByStatedLimit: CivilDate | null;
  /**
   * The first later day on which something in the stretch that was added up, what is added included, no longer
   * counts; `null` where nothing does.
   */
  readonly moreCanBeAppliedFrom: CivilDate | null;
  /** What must also be so for the limit to be meant, where it was not stated whether it is. */
  readonly appliesIf: readonly string[];
}

/** What a limit gives for a proposal: a use, a test, or why it was not compared. */
export type LimitOutcome =
  | { readonly use: LimitUse; readonly notCounted: readonly string[] }
  | { readonly test: LimitTest }
  | { readonly outside: string };

const idOf = (limit: ReadLimit): { readonly id?: string } => (limit.id === undefined ? {} : { id: limit.id });

const useOf = (limit: ReadAmountLimit | ReadCountLimit, proposed: Proposed, appliesIf: readonly string[]) => {
  const { date, part, row } = proposed;
  const { per, of, path } = limit;
  const counts = limit.kind === "count";
  const { unit, value } = limit.amount;
  const { days, notCounted, unknownOn } = dayAmounts(limit, proposed);
  const beside = usedBeside(date, per, days);
  if (beside === undefined) return undefined;
  const counter = counterOf(limit);
  const adds = counter?.counted(row);
  const untold = adds === undefined || counter?.more(row) === true;
  const { used, span } = beside;
  const q = (x: number): Quantity<string, string> => quantityOf(x, unit, counts ? "none" : of, path);
  const after = used + (adds ?? 0);
  const single = per === "application";
  // What adds nothing violates nothing, however much has gone down.
  const none = adds === 0 && !untold;
  const over = !none && exceeds(after, value);
  // Not only in the fullest stretch: another one that holds the day may be fuller by what is not known.
  const unknownBeside = (there: CivilDate): boolean => unknownOn.some((day) => countsBeside(day, there, per));
  const unknown = !none && (untold || unknownBeside(date));
  const fits = (there: number): boolean => !exceeds(there + (adds ?? 0), value);
  const fitting = none ? date : unknown ? null : fitsFrom(date, per, days, fits);
  const use: LimitUse = {
    part,
    limit: { ...idOf(limit), kind: limit.kind, of, amount: limit.amount, per, source: limit.source },
    path,
    from: single ? null : span.from,
    to: single ? null : span.to,
    before: q(used),
    adds: q(adds ?? 0),
    after: q(after),
    remainingUnderStatedLimits: q(value - after),
    violated: over || (unknown ? null : false),
    earliestByStatedLimit: none || fitting === null || !unknownBeside(fitting) ? fitting : null,
    moreCanBeAppliedFrom: freesUpAfter(span, per, withToday(days.dates, date, adds ?? 0)),
    appliesIf,
  };
  return { use, notCounted: untold ? [...notCounted, rowText(row)] : notCounted };
};

/** Days on which something counts, and this one among them where something is added on it. */
const withToday = (dates: readonly CivilDate[], date: CivilDate, adds: number): readonly CivilDate[] =>
  adds === 0 ? dates : [...dates, date].sort();

/**
 * The first later day on which the part of the year in a condition says that the limit is not meant, or that it
 * is lifted; nothing where no condition names one.
 */
const lapsesOn = ({ scope, exemptIf = [] }: ReadLimit, { date, known }: Proposed): CivilDate | undefined => {
  if (date > lastYear) return undefined;
  const days: CivilDate[] = [];
  const season = scope?.season && windowAround(date, scope.season);
  const after = season && addDays(season.to, 1);
  if (after && scope?.season && !isWithinWindow(after, scope.season)) days.push(after);
  for (const condition of exemptIf) {
    if (condition.season === undefined) continue;
    const opens = firstDateWithin(date, condition.season);
    if (holds(condition, { ...known, date: opens }) === "yes") days.push(opens);
  }
  return days.sort()[0];
};

/** The earlier of the day on which a limit is kept, and of that on which it lapses. */
const earliestOf = (
  one: { readonly violated: boolean | null; readonly earliestByStatedLimit: CivilDate | null },
  lapses: CivilDate | undefined,
): { readonly earliestByStatedLimit: CivilDate | null } => {
  const { violated, earliestByStatedLimit: kept } = one;
  return {
    earliestByStatedLimit:
      violated === true && lapses !== undefined && (kept === null || lapses < kept) ? lapses : kept,
  };
};

/** Puts one limit to a proposal. */
export const limitOutcome = (limit: ReadLimit, proposed: Proposed): LimitOutcome => {
  const { known, part } = proposed;
  const meant: Answer = limit.scope === undefined ? "yes" : holds(limit.scope, known);
  if (meant === "no") return { outside: `it applies only where ${conditionText(limit.scope ?? {})}` };
  const lifted = (limit.exemptIf ?? []).find((condition) => holds(condition, known) === "yes");
  if (lifted !== undefined) return { outside: `it is lifted where ${conditionText(lifted)}` };
  const lapses = lapsesOn(limit, proposed);
  const appliesIf = meant === "not known" ? [conditionText(limit.scope ?? {})] : [];
  if (limit.kind === "amount" || limit.kind === "count") {
    const outcome = useOf(limit, proposed, appliesIf);
    if (outcome === undefined) return { outside: `${proposed.date} is outside its season` };
    return { ...outcome, use: { ...outcome.use, ...earliestOf(outcome.use, lapses) } };
  }
  const { of, states, ...result } = testOf(limit, proposed);
  return {
    test: {
      part,
      limit: { ...idOf(limit), kind: limit.kind, of, states, source: limit.source },
      path: limit.path,
      ...result,
      ...earliestOf(result, lapses),
      appliesIf,
    },
  };
};
