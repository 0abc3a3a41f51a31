import {
  addDays,
  type CivilDate,
  civilDate,
  compareDates,
  type DateSpan,
  daysBetween,
  firstDateWithin,
  isWithinWindow,
  windowAround,
} from "../calendar/index.js";
import { fail, RatewrightError } from "../quantity/index.js";
import { type CountingPeriod, type IntervalRule, ruleProblems } from "./interval-rule.js";

/** Why a date is what it is, what was unusual, or what was not checked. */
export interface IntervalRemark {
  /** Stable: a program may branch on it. */
  readonly code: string;
  readonly params: Readonly<Record<string, string | number>>;
  /** English for a person. */
  readonly text: string;
  readonly source?: string;
}

/** Something unusual in what was done before. */
export interface IntervalFinding extends IntervalRemark {
  readonly severity: "caution";
  /** Which application: `applied[2]`. */
  readonly path: string;
}

/** What a rule says of the next application. It is no leave to apply: see `notChecked`. */
export interface NextDates {
  /** The first date that no stated part of the rule rules out. */
  readonly earliestByStatedRules: CivilDate;
  /** The date up to which the last application is said to last; `null` where nothing is stated. */
  readonly latestUseful: CivilDate | null;
  /** What moved `earliestByStatedRules`, in the order in which it did, and what set `latestUseful`. */
  readonly reasons: readonly IntervalRemark[];
  /** Where the applications so far, or the two dates, do not fit the rule. Empty does not mean approved. */
  readonly findings: readonly IntervalFinding[];
  /** The parts of the rule that were looked at. */
  readonly checked: readonly string[];
  readonly notChecked: readonly IntervalRemark[];
}

const periodAround = (date: CivilDate, per: CountingPeriod): DateSpan | undefined => {
  if (per !== "calendar year") return windowAround(date, per);
  const year = date.slice(0, 4);
  return { from: `${year}-01-01` as CivilDate, to: `${year}-12-31` as CivilDate };
};

const isIn = (date: CivilDate, { from, to }: DateSpan): boolean =>
  compareDates(date, from) >= 0 && compareDates(date, to) <= 0;

/** An application with its place in the list that was given. */
interface Applied {
  readonly date: CivilDate;
  readonly path: string;
}

const pastFindings = (applied: readonly Applied[], rule: IntervalRule): IntervalFinding[] => {
  const findings: IntervalFinding[] = [];
  const { minimumDays, maximumApplications: limit, window, source } = rule;
  for (const [i, { date, path }] of applied.entries()) {
    const add = (code: string, params: IntervalFinding["params"], text: string): void => {
      findings.push({ code, severity: "caution", path, params, text, source });
    };
    const before = applied[i - 1]?.date;
    const days = before === undefined ? undefined : daysBetween(before, date);
    if (days !== undefined && minimumDays !== undefined && days < minimumDays) {
      const text = `${date} is ${days} days after ${before}; the rule states ${minimumDays} or more.`;
      add("interval/shorter-than-stated", { date, days, minimumDays }, text);
    }
    if (window !== undefined && !isWithinWindow(date, window)) {
      const text = `${date} lies outside ${window.from} to ${window.to}, to which the rule confines it.`;
      add("interval/outside-stated-window", { date, from: window.from, to: window.to }, text);
    }
    const period = limit === undefined ? undefined : periodAround(date, limit.per);
    if (limit === undefined || period === undefined) continue;
    const count = applied.slice(0, i + 1).filter((other) => isIn(other.date, period)).length;
    if (count > limit.count) {
      const text = `${date} is application ${count} from ${period.from} to ${period.to}; the rule states ${limit.count} at most.`;
      add("interval/more-than-stated", { date, count, maximum: limit.count, ...period }, text);
    }
  }
  return findings;
};

const unstated: readonly (readonly [keyof IntervalRule, string])[] = [
  ["minimumDays", "a least number of days between applications"],
  ["maximumDays", "how long an application lasts"],
  ["maximumApplications", "a number of applications per year or season"],
  ["window", "a part of the year"],
];

/**
 * When the next application comes, by what a rule states: the first date that keeps the least interval,
 * the number of applications per period and the part of the year; and the last date on which the one
 * before still works.
 *
 * `earliest = last + minimumDays`, moved behind a counting period that is full, and on to the opening of
 * the window; `latestUseful = last + maximumDays`. Intervals count between application dates: `n`
 * applications have `n - 1`.
 *
 * The result says what was not checked. The label, which is the law, and local codes come first.
 *
 * @param input.applied - the dates of the applications so far on this area, in any order
 * @param input.from - a date before which none is wanted; needed where there was none so far
 * @throws RatewrightError `date`; `missing` where neither an application nor `from` is given; `type` and
 * what {@link intervalRule} throws for the rule; `range` past the year 9999
 *
 * @example
 * ```ts
 * import { intervalRule, nextDates } from "ratewright";
 * const rule = intervalRule({
 *   minimumDays: 21, maximumDays: 28, maximumApplications: { count: 3, per: "calendar year" },
 *   window: { from: "03-01", to: "11-15" }, source: "label, turf section",
 * });
 * const next = nextDates({ applied: ["2026-05-01"], rule });
 * next.earliestByStatedRules; // => "2026-05-22"
 * next.latestUseful; // => "2026-05-29"
 * nextDates({ applied: ["2026-05-01", "2026-05-22", "2026-06-12"], rule })
 *   .earliestByStatedRules; // => "2027-03-01"
 * ```
 */
export const nextDates = (input: {
  readonly applied: readonly CivilDate[];
  readonly rule: IntervalRule;
  readonly from?: CivilDate;
}): NextDates => {
  const { rule } = input;
  if (rule?.type !== "interval-rule") fail("type", "rule", rule, "an interval rule");
  const problems = ruleProblems(rule, "rule");
  if (problems.length > 0) throw new RatewrightError(problems);
  if (!Array.isArray(input.applied)) fail("type", "applied", input.applied, "a list of dates");
  const applied = input.applied
    .map((date, i): Applied => ({ date: civilDate(date, `applied[${i}]`), path: `applied[${i}]` }))
    .sort((a, b) => compareDates(a.date, b.date));
  const from = input.from === undefined ? undefined : civilDate(input.from, "from");
  const latest = applied[applied.length - 1];
  const last = latest?.date;
  const { minimumDays, maximumDays, maximumApplications: limit, window, source } = rule;
  const reasons: IntervalRemark[] = [];
  const notChecked: IntervalRemark[] = [];

  let earliest =
    last ?? from ?? fail("missing", "from", undefined, "a date, for there is no application yet");
  const moveTo = (date: CivilDate, code: string, params: IntervalRemark["params"], text: string): void => {
    if (compareDates(date, earliest) <= 0) return;
    earliest = date;
    reasons.push({ code, params: { ...params, date }, text, source });
  };
  if (last !== undefined && minimumDays !== undefined) {
    const text = `${minimumDays} days or more after the application of ${last}.`;
    moveTo(addDays(last, minimumDays), "interval/minimum", { minimumDays, last }, text);
  }
  if (from !== undefined) moveTo(from, "interval/from", { from }, `Not wanted before ${from}.`);

  // Each step moves the date on or leaves it, and a move can make the other step move it again.
  for (let before: CivilDate | undefined; before !== earliest; ) {
    before = earliest;
    if (window !== undefined) {
      const text = `The rule confines it to ${window.from} to ${window.to}.`;
      moveTo(firstDateWithin(earliest, window), "interval/window", { ...window }, text);
    }
    const period = limit === undefined ? undefined : periodAround(earliest, limit.per);
    if (limit === undefined || period === undefined) continue;
    const count = applied.filter(({ date }) => isIn(date, period)).length;
    if (count < limit.count) continue;
    const text = `${count} applications from ${period.from} to ${period.to}; the rule states ${limit.count} at most.`;
    moveTo(
      addDays(period.to, 1),
      "interval/maximum-applications",
      { count, maximum: limit.count, ...period },
      text,
    );
  }
  if (limit !== undefined && limit.per !== "calendar year" && !isWithinWindow(earliest, limit.per)) {
    notChecked.push({
      code: "interval/outside-counting-period",
      params: { from: limit.per.from, to: limit.per.to },
      text: `The number of applications outside ${limit.per.from} to ${limit.per.to}: the rule states none.`,
    });
  }

  const findings = pastFindings(applied, rule);
  let latestUseful: CivilDate | null = null;
  if (last !== undefined && maximumDays !== undefined) {
    latestUseful = addDays(last, maximumDays);
    const params = { maximumDays, last, date: latestUseful };
    const text = `The application of ${last} is said to last ${maximumDays} days.`;
    reasons.push({ code: "interval/maximum", params, text, source });
    if (compareDates(latestUseful, earliest) < 0) {
      findings.push({
        code: "interval/gap",
        severity: "caution",
        path: latest?.path ?? "applied",
        params: { latestUseful, earliest, days: daysBetween(latestUseful, earliest) },
        text: `The last application is said to end on ${latestUseful}, before ${earliest}.`,
        source,
      });
    }
  }

  for (const [field, words] of unstated) {
    if (rule[field] !== undefined) continue;
    notChecked.push({
      code: `interval/unstated/${field}`,
      params: {},
      text: `${words.slice(0, 1).toUpperCase()}${words.slice(1)}: the rule states none.`,
    });
  }
  notChecked.push({
    code: "interval/beyond-the-rule",
    params: {},
    text: "Amounts per period, growth stage, weather, re-entry, local codes and all else that the label says.",
  });
  return {
    earliestByStatedRules: earliest,
    latestUseful,
    reasons,
    findings,
    checked: unstated.filter(([field]) => rule[field] !== undefined).map(([field]) => field),
    notChecked,
  };
};
