import { daysBetween, isWithinWindow } from "../../calendar/index.js";
import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { counted } from "../../quantity/house.js";
import type { Applied } from "./applied.js";
import { spanAround } from "./blackout-period.js";
import type { IntervalRemark } from "./interval-remark.js";
import { type IntervalRule, limitList } from "./interval-rule.js";
import { amountIn, countIn, periodAround, periodText } from "./period-use.js";

/** Something unusual in what was done before. */
export interface IntervalFinding extends IntervalRemark {
  readonly severity: "caution";
  /** Which application: `applied[2]`. */
  readonly path: string;
}

/** Where the applications so far do not fit a rule. */
export const pastFindings = (applied: readonly Applied[], rule: IntervalRule): IntervalFinding[] => {
  const findings: IntervalFinding[] = [];
  const { minimumDays, window, source } = rule;
  for (const [i, { date, path }] of applied.entries()) {
    const add = (code: string, params: IntervalFinding["params"], text: string): void => {
      findings.push({ code: `interval/${code}`, severity: "caution", path, params, text, source });
    };
    const before = applied[i - 1]?.date;
    const days = before === undefined ? undefined : daysBetween(before, date);
    if (days !== undefined && minimumDays !== undefined && days < minimumDays) {
      const text = `${date} is ${counted(days, "day")} after ${before}; the rule states ${minimumDays} or more.`;
      add("shorter-than-stated", { date, days, minimumDays }, text);
    }
    if (window !== undefined && !isWithinWindow(date, window)) {
      const text = `${date} is outside ${window.from} to ${window.to}, the only dates the rule names.`;
      add("outside-stated-window", { date, from: window.from, to: window.to }, text);
    }
    for (const time of rule.blackout ?? []) {
      const span = spanAround(date, time);
      if (span === undefined) continue;
      add("in-blackout", { date, ...span }, `${date} is in the blackout period ${span.from} to ${span.to}.`);
    }
    const soFar = applied.slice(0, i + 1);
    for (const limit of limitList(rule.maximumApplications)) {
      const period = periodAround(date, limit.per);
      const count = period === undefined ? 0 : countIn(soFar, period);
      if (period === undefined || count <= limit.count) continue;
      const text = `${date} is application ${count} ${periodText(period, limit.per)}; the rule states ${limit.count} at most.`;
      add("more-than-stated", { date, count, maximum: limit.count, ...period }, text);
    }
    for (const limit of limitList(rule.maximumAmount)) {
      const period = periodAround(date, limit.per);
      const used = period === undefined ? 0 : amountIn(soFar, period, limit);
      const { value: maximum, unit, of } = limit.amount;
      if (period === undefined || !exceeds(used, maximum)) continue;
      const text = `With ${date} it is ${roundedApart(used, maximum, 6)(used)} ${unit} of ${of} ${periodText(period, limit.per)}; the rule states ${maximum} ${unit} at most.`;
      add("more-amount-than-stated", { date, used, maximum, unit, of, ...period }, text);
    }
  }
  return findings;
};
