import { addDays, type CivilDate, isWithinWindow, windowAround } from "../calendar/index.js";
import { exceeds } from "../numeric/index.js";
import { type FactSource, type Quantity, quantityOf } from "../quantity/index.js";
import type { History, HistoryRow } from "./history.js";
import type { LimitPeriod } from "./limit.js";
import { type Answer, conditionText, holds, type Known, reaches } from "./limit-condition.js";
import { amountOf, isStated, slowShareOf } from "./nutrient-rates.js";
import { type DayAmounts, fitsFrom, freesUpAfter, reachBack, usedBeside } from "./period-use.js";
import type { ReadAmountLimit, ReadCountLimit, ReadLimit } from "./read-limit.js";

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
  /** What is left of the limit afterwards; below zero where it is passed. */
  readonly remainingUnderStatedLimits: Quantity<string, string>;
  readonly passed: boolean;
  /** The first day, from this one on, on which what is added stays within this limit; `null` where none is found. */
  readonly earliestByStatedLimit: CivilDate | null;
  /** The first later day on which something that counts now no longer does; `null` where nothing counts. */
  readonly freesUpOn: CivilDate | null;
  /** What must also be so for the limit to be meant, where it was not stated whether it is. */
  readonly meantIf: readonly string[];
}

/** What a limit that does not add up says of an application: slow share, content, interval, dates, distance, ground. */
export interface LimitTest {
  readonly part: string;
  readonly limit: {
    readonly id?: string;
    readonly kind: "interval" | "slow share" | "content" | "closed dates" | "setback" | "ground";
    readonly of: string;
    /** What it states, in words: `"at least 20 % of N"`. */
    readonly states: string;
    readonly source: FactSource;
  };
  readonly path: string;
  /** What was found, in words; `null` where it is not known. */
  readonly found: string | null;
  /** `null` where it could not be told. */
  readonly passed: boolean | null;
  readonly earliestByStatedLimit: CivilDate | null;
  readonly meantIf: readonly string[];
}

/** What is put to the limits: one application, or all of a visit, on one part of the site. */
export interface Proposed {
  readonly date: CivilDate;
  readonly part: string;
  readonly row: HistoryRow;
  readonly known: Known;
  /** What went down on this part before, and after where that is known. */
  readonly history: History;
  /** Percent by weight of a nutrient in the products, the highest of them; `undefined` where it is not known. */
  readonly content: (of: string) => number | undefined;
  readonly kept: CountedDays;
}

/** What a limit gives for a proposal: a use, a test, or why it was not compared. */
export type LimitOutcome =
  | { readonly use: LimitUse; readonly notCounted: readonly string[] }
  | { readonly test: LimitTest }
  | { readonly outside: string };

/** What each limit adds up on each part, kept while one proposal is moved from day to day. */
export type CountedDays = Map<string, Counted>;

interface Counted {
  readonly from: CivilDate;
  readonly days: DayAmounts;
  readonly notCounted: readonly string[];
}

/** How much of what a limit is about a row holds; `undefined` where the row does not tell. */
const amountIn = (row: HistoryRow, of: string, unit: string, dimension: string): number | undefined => {
  if (of.startsWith("product:")) {
    if (!row.products.includes(of.slice(8))) return 0;
    const q = row.productRates.find((rate) => rate.of === of && rate.dimension === dimension);
    return q === undefined ? undefined : amountOf({ [of]: q as never }, of, unit);
  }
  return row.rates === undefined ? undefined : amountOf(row.rates, of, unit);
};

/** Whether a row is an application of something; `undefined` where the row does not tell. */
const isOf = (row: HistoryRow, of: string): boolean | undefined => {
  if (of.startsWith("product:")) return row.products.includes(of.slice(8));
  if (row.rates === undefined) return undefined;
  const stated = row.rates[of];
  if (stated !== undefined) return stated.value > 0;
  return isStated(row.rates, of) && amountOf(row.rates, of, "lb/acre") > 0;
};

/** From when on a limit counts, and what of a row; nothing for a limit that does not add up. */
const counterOf = (
  limit: ReadLimit,
  date: CivilDate,
): { readonly from: CivilDate; readonly counted: (row: HistoryRow) => number | undefined } | undefined => {
  if (limit.kind === "amount") {
    const { unit, dimension } = limit.amount;
    return { from: reachBack(date, limit.per), counted: (row) => amountIn(row, limit.of, unit, dimension) };
  }
  if (limit.kind !== "count" && limit.kind !== "interval") return undefined;
  const from = limit.kind === "count" ? reachBack(date, limit.per) : addDays(date, 1 - limit.atLeastDays);
  return {
    from,
    counted: (row) => {
      const answer = isOf(row, limit.of);
      return answer === undefined ? undefined : answer ? 1 : 0;
    },
  };
};

const keyOf = (limit: ReadLimit, part: string): string => `${limit.path} ${part}`;

/** Counts for every limit what has gone down on a part, reading each row of the history once. */
export const countDays = (
  limits: readonly ReadLimit[],
  { history, part, date, kept }: Pick<Proposed, "history" | "part" | "date" | "kept">,
): void => {
  const open = limits.flatMap((limit) => {
    const counter = counterOf(limit, date);
    const known = kept.get(keyOf(limit, part));
    if (counter === undefined || (known !== undefined && known.from <= counter.from)) return [];
    const [dates, amounts, notCounted]: [CivilDate[], number[], string[]] = [[], [], []];
    kept.set(keyOf(limit, part), { from: counter.from, days: { dates, amounts }, notCounted });
    return [{ ...counter, dates, amounts, notCounted }];
  });
  if (open.length === 0) return;
  const [first] = open.map(({ from }) => from).sort() as [CivilDate];
  history.visit(part, first, (row) => {
    for (const { from, counted, dates, amounts, notCounted } of open) {
      if (row.date < from) continue;
      const amount = counted(row);
      if (amount === undefined) notCounted.push(row.from);
      if (amount === undefined || amount === 0) continue;
      const last = dates.length - 1;
      if (dates[last] === row.date) amounts[last] = (amounts[last] as number) + amount;
      else {
        dates.push(row.date);
        amounts.push(amount);
      }
    }
  });
};

/** What went down day by day, from a date on or from before it. */
const dayAmounts = (limit: ReadLimit, proposed: Proposed): Counted => {
  countDays([limit], proposed);
  return proposed.kept.get(keyOf(limit, proposed.part)) as Counted;
};

const isOfAny = (row: HistoryRow, of: "any" | readonly string[]): boolean | undefined => {
  if (of === "any") return true;
  const answers = of.map((one) => isOf(row, one));
  return answers.includes(true) ? true : answers.includes(undefined) ? undefined : false;
};

const idOf = (limit: ReadLimit): { readonly id?: string } => (limit.id === undefined ? {} : { id: limit.id });

const useOf = (limit: ReadAmountLimit | ReadCountLimit, proposed: Proposed, meantIf: readonly string[]) => {
  const { date, part, row } = proposed;
  const { per, of, path } = limit;
  const counts = limit.kind === "count";
  const { unit, value } = limit.amount;
  const { days, notCounted } = dayAmounts(limit, proposed);
  const beside = usedBeside(date, per, days);
  if (beside === undefined) return undefined;
  const adds = counterOf(limit, date)?.counted(row);
  const { used, span } = beside;
  const q = (x: number): Quantity<string, string> => quantityOf(x, unit, counts ? "none" : of, path);
  const after = used + (adds ?? 0);
  const single = per === "application";
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
    passed: exceeds(after, value),
    earliestByStatedLimit: fitsFrom(date, per, days, (there) => !exceeds(there + (adds ?? 0), value)),
    freesUpOn: freesUpAfter(date, per, withToday(days, date, adds ?? 0)),
    meantIf,
  };
  return { use, notCounted: adds === undefined ? [...notCounted, row.from] : notCounted };
};

const withToday = ({ dates, amounts }: DayAmounts, date: CivilDate, adds: number): DayAmounts => {
  if (adds === 0) return { dates, amounts };
  const at = dates.findIndex((day) => day >= date);
  const i = at < 0 ? dates.length : at;
  return {
    dates: [...dates.slice(0, i), date, ...dates.slice(i)],
    amounts: [...amounts.slice(0, i), adds, ...amounts.slice(i)],
  };
};

const ofText = (of: "any" | readonly string[]): string => (of === "any" ? "any product" : of.join(" or "));

const shownPercent = (percent: number): string => `${Number(percent.toPrecision(4))} %`;

type Tested = Pick<LimitTest, "found" | "passed" | "earliestByStatedLimit"> & {
  readonly of: string;
  readonly states: string;
};

const tested = (limit: Exclude<ReadLimit, ReadAmountLimit | ReadCountLimit>, proposed: Proposed): Tested => {
  const { date, row, known, content } = proposed;
  const none = { found: null, passed: null, earliestByStatedLimit: null };
  const judge = (of: string, states: string, found: string, passed: boolean, later?: CivilDate): Tested => ({
    of,
    states,
    found,
    passed,
    earliestByStatedLimit: passed ? (later ?? null) : date,
  });
  switch (limit.kind) {
    case "slow share": {
      const states = `at least ${limit.atLeastPercentOfN} % of N slow`;
      const nitrogen = isOf(row, "N");
      if (nitrogen === false) return judge("N:slow", states, "no N", false);
      const share = row.rates && slowShareOf(row.rates);
      return share === undefined
        ? { of: "N:slow", states, ...none }
        : judge("N:slow", states, `${shownPercent(share)} of N`, exceeds(limit.atLeastPercentOfN, share));
    }
    case "content": {
      const states = `at most ${limit.atMostPercent} % of ${limit.of} in the product`;
      const percent = content(limit.of);
      return percent === undefined
        ? { of: limit.of, states, ...none }
        : judge(limit.of, states, shownPercent(percent), exceeds(percent, limit.atMostPercent));
    }
    case "interval": {
      const { of, atLeastDays } = limit;
      const states = `at least ${atLeastDays} days between applications`;
      const mine = isOf(row, of);
      if (mine === false) return judge(of, states, `no ${of}`, false);
      const { days, notCounted } = dayAmounts(limit, proposed);
      const [before, after] = [addDays(date, -atLeastDays), addDays(date, atLeastDays)];
      const near = days.dates.filter((day) => day > before && day < after);
      if (mine === undefined || (near.length === 0 && notCounted.length > 0)) return { of, states, ...none };
      if (near.length === 0) return judge(of, states, "none within that time", false);
      // On and on, until no application lies too near on either side.
      let free = date;
      for (const day of days.dates) {
        if (day > addDays(free, -atLeastDays) && day < addDays(free, atLeastDays))
          free = addDays(day, atLeastDays);
      }
      return judge(of, states, `applied on ${near.join(", ")}`, true, free);
    }
    case "closed dates": {
      const { from, to } = limit.closed;
      const of = ofText(limit.of);
      const states = `none from ${from} to ${to}`;
      const mine = isOfAny(row, limit.of);
      if (mine === undefined) return { of, states, ...none };
      const closed = mine && isWithinWindow(date, limit.closed);
      const end = closed ? windowAround(date, limit.closed)?.to : undefined;
      return judge(of, states, mine ? `the day ${date}` : `no ${of}`, closed, end && addDays(end, 1));
    }
    case "setback": {
      const of = ofText(limit.of);
      const states = `at least ${limit.atLeast.value} ${limit.atLeast.unit} from water`;
      const mine = isOfAny(row, limit.of);
      if (mine === false) return judge(of, states, `no ${of}`, false);
      const { toWater } = known.facts;
      if (mine === undefined || toWater === undefined) return { of, states, ...none };
      return judge(of, states, `${toWater.value} ${toWater.unit}`, !reaches(toWater, limit.atLeast));
    }
    case "ground": {
      const of = ofText(limit.of);
      const states = `none on ${limit.not.join(" or ")} ground`;
      const mine = isOfAny(row, limit.of);
      if (mine === false) return judge(of, states, `no ${of}`, false);
      const { ground } = known.facts;
      if (mine === undefined || ground === undefined) return { of, states, ...none };
      const bad = ground.filter((state) => limit.not.includes(state));
      return judge(of, states, bad.length > 0 ? bad.join(", ") : "none of these", bad.length > 0);
    }
  }
};

/** Puts one limit to a proposal. */
export const limitOutcome = (limit: ReadLimit, proposed: Proposed): LimitOutcome => {
  const { known, part } = proposed;
  const meant: Answer = limit.scope === undefined ? "yes" : holds(limit.scope, known);
  if (meant === "no") return { outside: `it is stated for where ${conditionText(limit.scope ?? {})}` };
  const lifted = (limit.unless ?? []).find((condition) => holds(condition, known) === "yes");
  if (lifted !== undefined) return { outside: `it is lifted where ${conditionText(lifted)}` };
  const meantIf = meant === "not known" ? [conditionText(limit.scope ?? {})] : [];
  if (limit.kind === "amount" || limit.kind === "count") {
    return useOf(limit, proposed, meantIf) ?? { outside: `${proposed.date} lies outside its season` };
  }
  const { of, states, ...result } = tested(limit, proposed);
  return {
    test: {
      part,
      limit: { ...idOf(limit), kind: limit.kind, of, states, source: limit.source },
      path: limit.path,
      ...result,
      meantIf,
    },
  };
};
