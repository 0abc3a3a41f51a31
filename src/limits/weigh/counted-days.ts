import { addDays, type CivilDate } from "../../calendar/index.js";
import {
  amountOf,
  applicationCounter,
  type Content,
  type History,
  type HistoryRow,
  inUnit,
  isStated,
  rowText,
  slowShareOf,
} from "../../ledger/house.js";
import { formFactor } from "../../nutrient/index.js";
import type { Known } from "../limit/limit-condition.js";
import type { ReadLimit } from "../limit/read-types.js";
import { type DayAmounts, reachBack } from "./period-use.js";

/** What is put to the limits: one application, or all of a visit, on one part of the site. */
export interface Proposed {
  readonly date: CivilDate;
  readonly part: string;
  readonly row: HistoryRow;
  readonly known: Known;
  /** What went down on this part before, and after where that is known. */
  readonly history: History;
  readonly content: Content;
  readonly kept: CountedDays;
}

/** What each limit adds up on each part, kept while one proposal is moved from day to day. */
export type CountedDays = Map<string, Counted>;

export interface Counted {
  readonly from: CivilDate;
  readonly days: DayAmounts;
  readonly notCounted: readonly string[];
  /** The days of what was not counted. */
  readonly notCountedOn: readonly CivilDate[];
  /** Days on which it did go down, in an amount that is not known. */
  readonly unknownOn: readonly CivilDate[];
}

const namesProduct = ({ products }: HistoryRow, of: string): boolean => products.includes(of.slice(8));

/** Whether a row names its products; one that puts nothing down has none to name. */
const tellsProducts = ({ products, rates, unweighed = [] }: HistoryRow): boolean =>
  products.length > 0 || (rates !== undefined && Object.keys(rates).length === 0 && unweighed.length === 0);

/** How much of what a limit is about a row is known to hold; `undefined` where the row does not tell. */
const amountIn = (row: HistoryRow, of: string, unit: string, dimension: string): number | undefined => {
  if (of.startsWith("product:")) {
    if (!namesProduct(row, of)) return tellsProducts(row) ? 0 : undefined;
    const q = row.productRates.find((rate) => rate.of === of && rate.dimension === dimension);
    return q === undefined ? undefined : inUnit(q, unit);
  }
  return row.rates === undefined ? undefined : amountOf(row.rates, of, unit);
};

/** Whether an active ingredient that an entry names in words is the one of a limit, as ingredient or as acid equivalent. */
const isNamed = (held: string, of: string): boolean =>
  /^a[ie]:/.test(of) && held.startsWith("ai:") && held.slice(3) === of.slice(3).toLowerCase();

/** Whether a row holds something in an amount that could not be weighed. */
const isUnweighed = ({ unweighed }: HistoryRow, of: string): boolean =>
  unweighed?.some((held) => held === of || formFactor(held, of) !== undefined || isNamed(held, of)) === true;

/** The share of the nitrogen of a row that is slow, in percent; `undefined` where it is not known. */
export const slowShareOfRow = (row: HistoryRow): number | undefined =>
  row.rates === undefined || isUnweighed(row, "N") ? undefined : slowShareOf(row.rates);

/** Whether a row is an application of something; `undefined` where the row does not tell. */
export const isOf = (row: HistoryRow, of: string): boolean | undefined => {
  if (of.startsWith("product:")) return tellsProducts(row) ? namesProduct(row, of) : undefined;
  if (isUnweighed(row, of)) return true;
  if (row.rates === undefined) return undefined;
  const stated = row.rates[of];
  if (stated !== undefined) return stated.value > 0;
  return isStated(row.rates, of) && amountOf(row.rates, of, "lb/acre") > 0;
};

/** What a limit counts of a row. */
interface Counter {
  /** `undefined` where the row does not tell. */
  readonly counted: (row: HistoryRow) => number | undefined;
  /** Whether the row holds more than is counted, in an amount that is not known. */
  readonly more: (row: HistoryRow) => boolean;
}

/** What a limit counts of a row; nothing for a limit that does not add up. */
export const counterOf = (limit: ReadLimit): Counter | undefined => {
  if (limit.kind === "amount") {
    const { of } = limit;
    const { unit, dimension } = limit.amount;
    const counted = (row: HistoryRow): number | undefined => amountIn(row, of, unit, dimension);
    return of.startsWith("product:")
      ? { counted, more: (row) => namesProduct(row, of) && counted(row) === undefined }
      : { counted, more: (row) => isUnweighed(row, of) };
  }
  if (limit.kind !== "count" && limit.kind !== "interval") return undefined;
  const counted = (row: HistoryRow): number | undefined => {
    const answers = (row.together ?? [row]).map((one) => isOf(one, limit.of));
    const sure = answers.filter((answer) => answer === true).length;
    return sure === 0 && answers.includes(undefined) ? undefined : sure;
  };
  return { counted, more: () => false };
};

/** From when on a limit counts; nothing for a limit that does not add up. */
const countsFrom = (limit: ReadLimit, date: CivilDate): CivilDate | undefined =>
  limit.kind === "amount" || limit.kind === "count"
    ? reachBack(date, limit.per)
    : limit.kind === "interval"
      ? addDays(date, 1 - limit.atLeastDays)
      : undefined;

const keyOf = (limit: ReadLimit, part: string): string => `${limit.path} ${part}`;

/** What a limit counts, by the place of each day in a list of days. */
interface Tally extends Counter {
  readonly limit: ReadLimit;
  /** From when on. */
  readonly from: CivilDate;
  /** Whether the limit counts on the day. */
  readonly within: boolean[];
  /** Not a number where nothing was counted. */
  readonly amounts: number[];
  readonly notCounted: (string[] | undefined)[];
  readonly unknown: boolean[];
  /** Whether a row is an application that has not been counted, where applications are. */
  readonly isNext: ReturnType<typeof applicationCounter> | undefined;
}

const tally = (one: Tally, row: HistoryRow, at: number): void => {
  const amount = one.counted(row);
  const moreThan = one.more(row);
  if (moreThan) one.unknown[at] = true;
  if (amount === undefined || moreThan) {
    const told = one.notCounted[at] ?? [];
    told.push(rowText(row));
    one.notCounted[at] = told;
  }
  if (amount === undefined || amount === 0 || one.isNext?.(row.date, row.treatment) === false) return;
  const before = one.amounts[at] as number;
  one.amounts[at] = Number.isNaN(before) ? amount : before + amount;
};

/** What was counted, in the order of the days. */
const countedBy = (one: Tally, days: readonly CivilDate[], inOrder: readonly number[]): Counted => {
  const counted = inOrder.filter((at) => !Number.isNaN(one.amounts[at] as number));
  return {
    from: one.from,
    days: {
      dates: counted.map((at) => days[at] as CivilDate),
      amounts: counted.map((at) => one.amounts[at] as number),
    },
    notCounted: inOrder.flatMap((at) => one.notCounted[at] ?? []),
    notCountedOn: inOrder.filter((at) => one.notCounted[at]).map((at) => days[at] as CivilDate),
    unknownOn: inOrder.filter((at) => one.unknown[at]).map((at) => days[at] as CivilDate),
  };
};

/** Counts for every limit what has gone down on a part, reading each row of the history once. */
export const countDays = (
  limits: readonly ReadLimit[],
  { history, part, date, kept }: Pick<Proposed, "history" | "part" | "date" | "kept">,
): void => {
  const open: Tally[] = [];
  let first: CivilDate | undefined;
  for (const limit of limits) {
    const from = countsFrom(limit, date);
    if (from === undefined) continue;
    const known = kept.get(keyOf(limit, part));
    if (known !== undefined && known.from <= from) continue;
    const { counted, more } = counterOf(limit) as Counter;
    const isNext = limit.kind === "count" ? applicationCounter() : undefined;
    open.push({ from, counted, more, limit, isNext, within: [], amounts: [], notCounted: [], unknown: [] });
    if (first === undefined || from < first) first = from;
  }
  if (open.length === 0) return;
  const days: CivilDate[] = [];
  const places = new Map<CivilDate, number>();
  const placeOf = (day: CivilDate): number => {
    const known = places.get(day);
    if (known !== undefined) return known;
    places.set(day, days.length);
    for (const one of open) {
      one.within.push(day >= one.from);
      one.amounts.push(Number.NaN);
    }
    return days.push(day) - 1;
  };
  const visit = history.visitAsWritten ?? history.visit;
  visit(part, first as CivilDate, (row) => {
    const at = placeOf(row.date);
    for (const one of open) if (one.within[at]) tally(one, row, at);
  });
  const inOrder = days
    .map((_, at) => at)
    .sort((a, b) => ((days[a] as CivilDate) < (days[b] as CivilDate) ? -1 : 1));
  for (const one of open) kept.set(keyOf(one.limit, part), countedBy(one, days, inOrder));
};

/** What went down day by day, from a date on or from before it. */
export const dayAmounts = (limit: ReadLimit, proposed: Proposed): Counted => {
  countDays([limit], proposed);
  return proposed.kept.get(keyOf(limit, proposed.part)) as Counted;
};
