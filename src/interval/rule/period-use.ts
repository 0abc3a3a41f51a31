import {
  addDays,
  addMonths,
  type CivilDate,
  compareDates,
  type DateSpan,
  windowAround,
} from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import { expectQuantity, numberIn, quantityOf } from "../../quantity/index.js";
import type { Applied } from "./applied.js";
import type { CountingPeriod, PerArea, PeriodAmount } from "./interval-rule.js";

/** The dates of the counting period in which a date lies; `undefined` outside a season. */
export const periodAround = (date: CivilDate, per: CountingPeriod): DateSpan | undefined => {
  if (per === "12 rolling months") return { from: rollingStart(date), to: date };
  if (per !== "calendar year") return windowAround(date, per);
  const year = date.slice(0, 4);
  return { from: `${year}-01-01` as CivilDate, to: `${year}-12-31` as CivilDate };
};

/** The first day whose application still counts: the day after the same day of the year before. */
const rollingStart = (date: CivilDate): CivilDate => addDays(addMonths(date, -12), 1);

const within = (date: CivilDate, { from, to }: DateSpan): boolean =>
  compareDates(date, from) >= 0 && compareDates(date, to) <= 0;

/** How many applications lie in a period. */
export const countIn = (applied: readonly Applied[], period: DateSpan): number =>
  applied.filter(({ date }) => within(date, period)).length;

/** How much of what is limited was applied in a period, in the unit of the limit. */
export const amountIn = (applied: readonly Applied[], period: DateSpan, { amount }: PeriodAmount): number =>
  applied.reduce(
    (sum, { date, amount: used, path }) =>
      used?.of === amount.of && within(date, period) ? sum + numberOf(used, amount, `${path}.amount`) : sum,
    0,
  );

const numberOf = (q: PerArea, limit: PeriodAmount["amount"], path: string): number => {
  const { dimension, unit } = quantityOf(limit.value, limit.unit, limit.of, "amount");
  return numberIn(expectQuantity(q, { dimension }, path), unit);
};

/** Whether an amount on top of what was used goes beyond a limit. */
export const isTooMuch = (used: number, more: PerArea, { amount }: PeriodAmount): boolean =>
  exceeds(used + numberOf(more, amount, "amount"), amount.value);

/** The first date on which something that counts in a period no longer does. */
export const freeAfter = (
  date: CivilDate,
  per: CountingPeriod,
  period: DateSpan,
  applied: readonly Applied[],
): CivilDate => {
  if (per !== "12 rolling months") return addDays(period.to, 1);
  const oldest = applied.find((one) => within(one.date, period))?.date ?? date;
  // An application of 29 February is free again on 1 March: of the days that could be meant, the later one.
  const same = addMonths(oldest, 12);
  return compareDates(rollingStart(same), oldest) > 0 ? same : addDays(same, 1);
};

/** A period in words. */
export const periodText = ({ from, to }: DateSpan, per: CountingPeriod): string =>
  per === "12 rolling months" ? `in the twelve months from ${from} to ${to}` : `from ${from} to ${to}`;
