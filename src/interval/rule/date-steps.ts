import { addDays, type CivilDate, firstDateWithin } from "../../calendar/index.js";
import { counted } from "../../quantity/house.js";
import { fail } from "../../quantity/index.js";
import type { Applied } from "./applied.js";
import { type AvoidedDays, type BlackoutPeriod, spanAround, whyAvoided } from "./blackout-period.js";
import type { IntervalRemark } from "./interval-remark.js";
import {
  type IntervalRule,
  limitList,
  type PerArea,
  type PeriodAmount,
  type PeriodCount,
} from "./interval-rule.js";
import { amountIn, countIn, freeAfter, isTooMuch, periodAround, periodText } from "./period-use.js";

/** What a date is asked for. */
export interface Question {
  readonly applied: readonly Applied[];
  readonly rule: IntervalRule;
  readonly from?: CivilDate;
  readonly amount?: PerArea;
  readonly avoid: AvoidedDays;
}

/** A later date, and why. */
export interface Move {
  readonly date: CivilDate;
  readonly code: string;
  readonly params: IntervalRemark["params"];
  readonly text: string;
  /** False for what the caller wants and no rule states. */
  readonly stated?: boolean;
}

/** Where one part of a rule, or the caller, moves a date to; nothing where it leaves the date. */
export type Step = (date: CivilDate) => Move | undefined;

const windowStep =
  ({ window }: IntervalRule): Step =>
  (date) =>
    window && {
      date: firstDateWithin(date, window),
      code: "interval/window",
      params: { ...window },
      text: `Applications only from ${window.from} to ${window.to}.`,
    };

const blackoutStep =
  (time: BlackoutPeriod): Step =>
  (date) => {
    const span = spanAround(date, time);
    return (
      span && {
        date: addDays(span.to, 1),
        code: "interval/blackout",
        params: { ...span },
        text: `No applications from ${span.from} to ${span.to}${time.why ? `: ${time.why}` : ""}.`,
      }
    );
  };

const countStep =
  (limit: PeriodCount, applied: readonly Applied[]): Step =>
  (date) => {
    const period = periodAround(date, limit.per);
    const count = period === undefined ? 0 : countIn(applied, period);
    return period === undefined || count < limit.count
      ? undefined
      : {
          date: freeAfter(date, limit.per, period, applied),
          code: "interval/maximum-applications",
          params: { count, maximum: limit.count, ...period },
          text: `${counted(count, "application")} ${periodText(period, limit.per)}; the rule states ${limit.count} at most.`,
        };
  };

const amountStep =
  (limit: PeriodAmount, amount: PerArea, applied: readonly Applied[]): Step =>
  (date) => {
    const period = periodAround(date, limit.per);
    if (period === undefined || limit.amount.of !== amount.of) return undefined;
    const { value: maximum, unit, of } = limit.amount;
    if (isTooMuch(0, amount, limit)) {
      const most = `${maximum} ${unit} of ${of} at most`;
      fail("infeasible", "amount", amount, `${most}, which is what the rule states for a whole period`);
    }
    const used = amountIn(applied, period, limit);
    return isTooMuch(used, amount, limit)
      ? {
          date: freeAfter(date, limit.per, period, applied),
          code: "interval/maximum-amount",
          params: { used, maximum, unit, of: of ?? "none", ...period },
          text: `${Number(used.toPrecision(6))} ${unit} ${periodText(period, limit.per)}; the rule states ${maximum} ${unit} at most.`,
        }
      : undefined;
  };

const avoidedStep =
  (avoid: AvoidedDays): Step =>
  (date) => {
    const avoided = whyAvoided(date, avoid);
    return (
      avoided && {
        date: avoided.next,
        code: "interval/avoided",
        params: { avoided: date, why: avoided.why },
        text: `${date} is avoided: ${avoided.why}.`,
        stated: false,
      }
    );
  };

/** What moves a date, in the order in which it is asked. */
export const stepsOf = ({ rule, applied, amount, avoid }: Question): readonly Step[] => [
  windowStep(rule),
  ...(rule.blackout ?? []).map(blackoutStep),
  ...limitList(rule.maximumApplications).map((limit) => countStep(limit, applied)),
  ...(amount === undefined
    ? []
    : limitList(rule.maximumAmount).map((limit) => amountStep(limit, amount, applied))),
  avoidedStep(avoid),
];
