import {
  addDays,
  type CivilDate,
  civilDate,
  compareDates,
  daysBetween,
  isWithinWindow,
} from "../../calendar/index.js";
import { counted } from "../../quantity/house.js";
import { allOf, expectFields, expectText, fail, type QuantityJson } from "../../quantity/index.js";
import { type Applied, type AppliedInput, readApplied } from "./applied.js";
import { type AvoidedDays, checkedAvoided } from "./blackout-period.js";
import { type Move, type Question, stepsOf } from "./date-steps.js";
import type { IntervalRemark } from "./interval-remark.js";
import { expectPerArea, type IntervalRule, intervalRule, limitList } from "./interval-rule.js";
import { type IntervalFinding, pastFindings } from "./past-findings.js";

/** What a rule says of the next application. It does not authorize an application: see `notChecked`. */
export interface NextDates {
  readonly type: "next-dates";
  readonly version: 1;
  /** The first date that no stated part of the rule rules out, and that the caller does not avoid. */
  readonly earliestByStatedRules: CivilDate;
  /** The date by which to reapply: up to then the last application lasts by the rule; `null` where nothing is stated. */
  readonly reapplyBy: CivilDate | null;
  /** What moved `earliestByStatedRules`, in the order in which it did, and what set `reapplyBy`. */
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
 * and on to the opening of the window; `reapplyBy = last + maximumDays`. Intervals count between
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
 * Source: the rule with its own source; counting of days.
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
 * next.reapplyBy; // => "2026-05-29"
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
  const given = expectFields(input, ["applied", "rule", "from", "amount", "area", "avoid"]);
  const read = allOf({
    rule: () => checkedRule(given.rule),
    area: () =>
      given.area === undefined ? undefined : expectText(given.area, "area", "the name of an area"),
    avoid: () => checkedAvoided(given.avoid as AvoidedDays | undefined, "avoid"),
    from: () => (given.from === undefined ? {} : { from: civilDate(given.from as CivilDate, "from") }),
    amount: () => (given.amount === undefined ? {} : { amount: expectPerArea(given.amount, "amount") }),
  });
  const { rule, avoid } = read;
  const applied = readApplied(given.applied, read.area);
  const { earliest, reasons } = earliestDate({ applied, rule, avoid, ...read.from, ...read.amount });
  const decidedBy = reasons[reasons.length - 1] ?? null;
  const findings = pastFindings(applied, rule);
  const latest = applied[applied.length - 1];
  const { maximumDays, source } = rule;
  let reapplyBy: CivilDate | null = null;
  if (latest !== undefined && maximumDays !== undefined) {
    const last = latest.date;
    reapplyBy = addDays(last, maximumDays);
    const params = { maximumDays, last, date: reapplyBy };
    const text = `The application of ${last} lasts up to ${counted(maximumDays, "day")} (${source}): reapply by ${reapplyBy}.`;
    reasons.push({ code: "interval/maximum", params, text, source });
    if (compareDates(reapplyBy, earliest) < 0) {
      findings.push({
        code: "interval/gap",
        severity: "caution",
        path: latest.path,
        params: { reapplyBy, earliest, days: daysBetween(reapplyBy, earliest) },
        text: `The last application lasts until ${reapplyBy} (${source}); the earliest date for the next is ${earliest}.`,
        source,
      });
    }
  }
  const { checked, notChecked } = whatWasChecked(rule, applied, earliest, read.amount.amount?.of);
  return {
    type: "next-dates",
    version: 1,
    earliestByStatedRules: earliest,
    reapplyBy,
    reasons,
    decidedBy,
    findings,
    checked,
    notChecked,
  };
};

/** Takes an interval rule that may come from JSON: made anew, so that a limit without a substance is one of "none". */
const checkedRule = (input: unknown): IntervalRule =>
  (Object(input) as { readonly type?: unknown }).type === "interval-rule"
    ? intervalRule(input as IntervalRule)
    : fail("type", "rule", input, "an interval rule: intervalRule({ minimumDays, source })");

const earliestDate = (question: Question): { earliest: CivilDate; reasons: IntervalRemark[] } => {
  const { applied, rule, from } = question;
  const { minimumDays, source } = rule;
  const last = applied[applied.length - 1]?.date;
  const reasons: IntervalRemark[] = [];
  let earliest =
    last ?? from ?? fail("missing", "from", undefined, "a date, because there is no application yet");
  const moveTo = ({ date, code, params, text, stated = true }: Move): void => {
    if (compareDates(date, earliest) <= 0) return;
    earliest = date;
    const told = { ...params, date };
    reasons.push(stated ? { code, params: told, text, source } : { code, params: told, text });
  };
  if (last !== undefined && minimumDays !== undefined) {
    const text = `${counted(minimumDays, "day")} or more after the application of ${last}.`;
    moveTo({
      date: addDays(last, minimumDays),
      code: "interval/minimum",
      params: { minimumDays, last },
      text,
    });
  }
  if (from !== undefined) {
    moveTo({
      date: from,
      code: "interval/from",
      params: { from },
      text: `Not wanted before ${from}.`,
      stated: false,
    });
  }
  const start = earliest;
  const steps = stepsOf(question);
  // Each step moves the date on or leaves it, and a move can make another step move it again.
  for (let before: CivilDate | undefined; before !== earliest; ) {
    before = earliest;
    if (daysBetween(start, earliest) > horizon) {
      fail("infeasible", "rule", rule, "a rule and days to avoid that leave a date within 40 years");
    }
    for (const step of steps) {
      const move = step(earliest);
      if (move !== undefined) moveTo(move);
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
    add("unknown-amounts", `Applied on ${dates}: amount of what is limited not recorded; counted as zero.`, {
      dates,
    });
  }
  for (const [field, words] of unstated) {
    if (rule[field] !== undefined) continue;
    add(`unstated/${field}`, `${words.slice(0, 1).toUpperCase()}${words.slice(1)}: the rule states none.`);
  }
  add("beyond-the-rule", "Growth stage, weather, re-entry, local codes and everything else on the label.");
  return {
    checked: [...unstated.map(([field]) => field), "blackout" as const].filter(
      (field) =>
        rule[field] !== undefined &&
        (field !== "maximumAmount" || amounts.some(({ amount }) => amount.of === of)),
    ),
    notChecked,
  };
};
