import {
  addDays,
  type CivilDate,
  civilDate,
  compareDates,
  daysBetween,
  firstDateWithin,
  isWithinWindow,
} from "../../calendar/index.js";
import { expectRecord, fail, type Quantity, type QuantityJson } from "../../quantity/index.js";
import { type Applied, type AppliedInput, readApplied } from "./applied.js";
import { type AvoidedDays, checkedAvoided, spanAround, whyAvoided } from "./closed-time.js";
import type { IntervalRemark } from "./interval-remark.js";
import { expectPerArea, type IntervalRule, intervalRule, limitList } from "./interval-rule.js";
import { type IntervalFinding, pastFindings } from "./past-findings.js";
import { amountIn, countIn, freeAfter, isTooMuch, periodAround, periodText } from "./period-use.js";

/** What a rule says of the next application. It is no leave to apply: see `notChecked`. */
export interface NextDates {
  readonly type: "next-dates";
  readonly version: 1;
  /** The first date that no stated part of the rule rules out, and that the caller does not avoid. */
  readonly earliestByStatedRules: CivilDate;
  /** The date up to which the last application is said to last; `null` where nothing is stated. */
  readonly latestUseful: CivilDate | null;
  /** What moved `earliestByStatedRules`, in the order in which it did, and what set `latestUseful`. */
  readonly reasons: readonly IntervalRemark[];
  /** The last of the reasons that moved `earliestByStatedRules`: the one that decides. `null` where nothing did. */
  readonly decidedBy: IntervalRemark | null;
  /** Where the applications so far, or the two dates, do not fit the rule. Empty does not mean approved. */
  readonly findings: readonly IntervalFinding[];
  /** The parts of the rule that were looked at. */
  readonly checked: readonly string[];
  readonly notChecked: readonly IntervalRemark[];
}

const unstated: readonly (readonly [keyof IntervalRule, string])[] = [
  ["minimumDays", "a least number of days between applications"],
  ["maximumDays", "how long an application lasts"],
  ["maximumApplications", "a number of applications per year or season"],
  ["maximumAmount", "an amount per year or season"],
  ["window", "a part of the year"],
];

/** After so many days of looking there is no date: windows of a single leap day come round in eight years. */
const horizon = 40 * 366;

/**
 * When the next application comes, by what a rule states: the first date that keeps the least interval,
 * the number of applications and the amount per period, the part of the year and the closed times, and
 * that the caller does not avoid; and the last date on which the one before still works.
 *
 * `earliest = last + minimumDays`, moved on behind a counting period that is full, out of a closed time
 * and on to the opening of the window; `latestUseful = last + maximumDays`. Intervals count between
 * application dates: `n` applications have `n - 1`. Amounts compare with a relative guard of 1e-9.
 *
 * The result says what was not checked. The label, which is the law, and local codes come first.
 *
 * @param input.applied - the applications so far on this area, in any order: dates, or records with the
 * amount per area, and the area where there are several
 * @param input.amount - how much would be applied next, per area, in the substance of the limits
 * @param input.area - the area that is asked about; an application on another one does not count
 * @param input.avoid - what the caller avoids: days of the week, events
 * @param input.from - a date before which none is wanted; needed where there was none so far
 * @throws RatewrightError `date`; `missing` where neither an application nor `from` is given; `infeasible`
 * where no date keeps all parts, such as an amount above the limit of a whole period; `type`,
 * `unit/mismatch`; what {@link intervalRule} throws for the rule; `range` past the year 9999
 *
 * @example
 * ```ts
 * import { intervalRule, nextDates, quantity } from "ratewright";
 * const rule = intervalRule({
 *   minimumDays: 21, maximumDays: 28, maximumApplications: { count: 3, per: "calendar year" },
 *   window: { from: "03-01", to: "11-15" }, source: "label, turf section",
 * });
 * const next = nextDates({ applied: ["2026-05-01"], rule });
 * next.earliestByStatedRules; // => "2026-05-22"
 * next.latestUseful; // => "2026-05-29"
 * nextDates({ applied: ["2026-05-01", "2026-05-22", "2026-06-12"], rule })
 *   .earliestByStatedRules; // => "2027-03-01"
 * const season = intervalRule({
 *   maximumAmount: { amount: quantity(2, "lb/acre", "ai:flurprimidol"), per: "12 rolling months" },
 *   source: "label, bentgrass greens",
 * });
 * const dose = quantity(1.25, "lb/acre", "ai:flurprimidol");
 * nextDates({ applied: [{ date: "2026-05-01", amount: dose }], amount: dose, rule: season })
 *   .earliestByStatedRules; // => "2027-05-01"
 * ```
 */
export const nextDates = (input: {
  readonly applied: readonly AppliedInput[];
  readonly rule: IntervalRule;
  readonly from?: CivilDate;
  readonly amount?: QuantityJson;
  readonly area?: string;
  readonly avoid?: AvoidedDays;
}): NextDates => {
  expectRecord(input, "input");
  if (input.rule?.type !== "interval-rule") fail("type", "rule", input.rule, "an interval rule");
  // Made anew, so that a limit from JSON without a substance is one of "none" and meets its amounts.
  const rule = intervalRule(input.rule);
  const applied = readApplied(input.applied, input.area);
  const avoid = checkedAvoided(input.avoid, "avoid");
  const amount = input.amount === undefined ? undefined : expectPerArea(input.amount, "amount");
  const { earliest, reasons } = earliestDate({
    applied,
    rule,
    avoid,
    ...(input.from === undefined ? {} : { from: civilDate(input.from, "from") }),
    ...(amount === undefined ? {} : { amount: amount as unknown as Quantity<string, string> }),
  });
  const decidedBy = reasons[reasons.length - 1] ?? null;
  const findings = pastFindings(applied, rule);
  const latest = applied[applied.length - 1];
  const { maximumDays, source } = rule;
  let latestUseful: CivilDate | null = null;
  if (latest !== undefined && maximumDays !== undefined) {
    const last = latest.date;
    latestUseful = addDays(last, maximumDays);
    const params = { maximumDays, last, date: latestUseful };
    const text = `The application of ${last} is said to last ${maximumDays} days.`;
    reasons.push({ code: "interval/maximum", params, text, source });
    if (compareDates(latestUseful, earliest) < 0) {
      findings.push({
        code: "interval/gap",
        severity: "caution",
        path: latest.path,
        params: { latestUseful, earliest, days: daysBetween(latestUseful, earliest) },
        text: `The last application is said to end on ${latestUseful}, before ${earliest}.`,
        source,
      });
    }
  }
  const { checked, notChecked } = whatWasChecked(rule, applied, earliest, amount?.of);
  return {
    type: "next-dates",
    version: 1,
    earliestByStatedRules: earliest,
    latestUseful,
    reasons,
    decidedBy,
    findings,
    checked,
    notChecked,
  };
};

interface Question {
  readonly applied: readonly Applied[];
  readonly rule: IntervalRule;
  readonly from?: CivilDate;
  readonly amount?: Quantity<string, string>;
  readonly avoid: AvoidedDays;
}

const earliestDate = (input: Question): { earliest: CivilDate; reasons: IntervalRemark[] } => {
  const { applied, rule, amount, avoid, from } = input;
  const { minimumDays, window, source } = rule;
  const last = applied[applied.length - 1]?.date;
  const reasons: IntervalRemark[] = [];
  let earliest =
    last ?? from ?? fail("missing", "from", undefined, "a date, for there is no application yet");
  const moveTo = (
    date: CivilDate,
    code: string,
    params: IntervalRemark["params"],
    text: string,
    stated = true,
  ): void => {
    if (compareDates(date, earliest) <= 0) return;
    earliest = date;
    reasons.push({ code, params: { ...params, date }, text, ...(stated && { source }) });
  };
  if (last !== undefined && minimumDays !== undefined) {
    const text = `${minimumDays} days or more after the application of ${last}.`;
    moveTo(addDays(last, minimumDays), "interval/minimum", { minimumDays, last }, text);
  }
  if (from !== undefined) {
    moveTo(from, "interval/from", { from }, `Not wanted before ${from}.`, false);
  }
  const start = earliest;
  // Each step moves the date on or leaves it, and a move can make another step move it again.
  for (let before: CivilDate | undefined; before !== earliest; ) {
    before = earliest;
    if (daysBetween(start, earliest) > horizon) {
      fail("infeasible", "rule", rule, "a rule and days to avoid that leave a date within 40 years");
    }
    if (window !== undefined) {
      const text = `The rule confines it to ${window.from} to ${window.to}.`;
      moveTo(firstDateWithin(earliest, window), "interval/window", { ...window }, text);
    }
    for (const time of rule.closed ?? []) {
      const span = spanAround(earliest, time);
      if (span === undefined) continue;
      const text = `The rule closes ${span.from} to ${span.to}${time.why ? `: ${time.why}` : ""}.`;
      moveTo(addDays(span.to, 1), "interval/closed", { ...span }, text);
    }
    for (const limit of limitList(rule.maximumApplications)) {
      const period = periodAround(earliest, limit.per);
      if (period === undefined) continue;
      const count = countIn(applied, period);
      if (count < limit.count) continue;
      const text = `${count} applications ${periodText(period, limit.per)}; the rule states ${limit.count} at most.`;
      const params = { count, maximum: limit.count, ...period };
      const free = freeAfter(earliest, limit.per, period, applied);
      moveTo(free, "interval/maximum-applications", params, text);
    }
    for (const limit of amount === undefined ? [] : limitList(rule.maximumAmount)) {
      const period = periodAround(earliest, limit.per);
      if (period === undefined || amount === undefined || limit.amount.of !== amount.of) continue;
      const used = amountIn(applied, period, limit);
      if (isTooMuch(0, amount, limit)) {
        const most = `${limit.amount.value} ${limit.amount.unit} of ${limit.amount.of} at most`;
        fail("infeasible", "amount", amount, `${most}, which is what the rule states for a whole period`);
      }
      if (!isTooMuch(used, amount, limit)) continue;
      const { value: maximum, unit } = limit.amount;
      const text = `${Number(used.toPrecision(6))} ${unit} ${periodText(period, limit.per)}; the rule states ${maximum} ${unit} at most.`;
      const params = { used, maximum, unit, of: limit.amount.of, ...period };
      moveTo(freeAfter(earliest, limit.per, period, applied), "interval/maximum-amount", params, text);
    }
    const avoided = whyAvoided(earliest, avoid);
    if (avoided !== undefined) {
      const text = `${earliest} is avoided: ${avoided.why}.`;
      moveTo(avoided.next, "interval/avoided", { avoided: earliest, why: avoided.why }, text, false);
    }
  }
  return { earliest, reasons };
};

const whatWasChecked = (
  rule: IntervalRule,
  applied: readonly Applied[],
  earliest: CivilDate,
  of: string | undefined,
): { checked: string[]; notChecked: IntervalRemark[] } => {
  const notChecked: IntervalRemark[] = [];
  const add = (code: string, text: string, params: IntervalRemark["params"] = {}): void => {
    notChecked.push({ code: `interval/${code}`, params, text });
  };
  const outside = (per: { from: string; to: string }, what: string): void =>
    add("outside-counting-period", `The ${what} outside ${per.from} to ${per.to}: the rule states none.`, {
      from: per.from,
      to: per.to,
    });
  for (const { per } of limitList(rule.maximumApplications)) {
    if (typeof per === "object" && !isWithinWindow(earliest, per)) outside(per, "number of applications");
  }
  const amounts = limitList(rule.maximumAmount);
  for (const { per } of amounts) {
    if (typeof per === "object" && !isWithinWindow(earliest, per)) outside(per, "amount");
  }
  if (amounts.length > 0 && of === undefined) {
    add("no-amount", "The amount per period: how much would be applied next is not given.");
  }
  for (const { amount } of of === undefined ? [] : amounts.filter((limit) => limit.amount.of !== of)) {
    const text = `The limit of ${amount.value} ${amount.unit} of ${amount.of}: what would be applied is given as ${of}.`;
    add("other-substance", text, { limit: amount.of, given: of ?? "" });
  }
  const unknown = applied.filter(({ amount: used }) => amounts.some(({ amount }) => amount.of !== used?.of));
  if (amounts.length > 0 && unknown.length > 0) {
    const dates = unknown.map(({ date }) => date).join(", ");
    add(
      "unknown-amounts",
      `What was applied on ${dates}: no amount of what is limited is given, and it counts as nothing.`,
      {
        dates,
      },
    );
  }
  for (const [field, words] of unstated) {
    if (rule[field] !== undefined) continue;
    add(`unstated/${field}`, `${words.slice(0, 1).toUpperCase()}${words.slice(1)}: the rule states none.`);
  }
  add("beyond-the-rule", "Growth stage, weather, re-entry, local codes and all else that the label says.");
  return {
    checked: [...unstated.map(([field]) => field), "closed" as const].filter(
      (field) =>
        rule[field] !== undefined &&
        (field !== "maximumAmount" || amounts.some(({ amount }) => amount.of === of)),
    ),
    notChecked,
  };
};
