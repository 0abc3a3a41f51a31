import { type MonthDayWindow, monthDay } from "../calendar/index.js";
import { fail, type Problem, RatewrightError, shown } from "../quantity/index.js";

/** In what the applications of a limit are counted: a calendar year, or one occurrence of a season. */
export type CountingPeriod = "calendar year" | MonthDayWindow;

/**
 * What a source states on how often something is applied. Plain JSON. What it does not state is left
 * out, and is then named as not checked.
 */
export interface IntervalRule {
  readonly type: "interval-rule";
  readonly version: 1;
  /** The least number of days from one application to the next: with 21, day 0 and then day 21. */
  readonly minimumDays?: number;
  /** The number of days after which the effect is said to be gone. */
  readonly maximumDays?: number;
  readonly maximumApplications?: { readonly count: number; readonly per: CountingPeriod };
  /** The part of the year to which the source confines the application. */
  readonly window?: MonthDayWindow;
  /** Where it is stated: the label and its section, or the publication. */
  readonly source: string;
}

const days = (value: unknown, path: string, least: number): Problem[] =>
  value === undefined || (Number.isSafeInteger(value) && (value as number) >= least)
    ? []
    : [{ code: "range", path, got: shown(value), expected: `a whole number, ${least} or more` }];

const windowProblems = (window: unknown, path: string): Problem[] => {
  const ends = window as Partial<MonthDayWindow> | null;
  if (typeof ends !== "object" || ends === null) {
    return [{ code: "type", path, got: shown(window), expected: "a window with from and to" }];
  }
  return (["from", "to"] as const).flatMap((end) => {
    try {
      monthDay(ends[end], `${path}.${end}`);
      return [];
    } catch (error) {
      if (error instanceof RatewrightError) return [...error.problems];
      throw error;
    }
  });
};

const limitProblems = (limit: IntervalRule["maximumApplications"], path: string): Problem[] => {
  if (limit === undefined) return [];
  if (typeof limit !== "object" || limit === null) {
    return [{ code: "type", path, got: shown(limit), expected: "a count per period" }];
  }
  const problems =
    limit.count === undefined
      ? [{ code: "missing", path: `${path}.count`, got: "nothing", expected: "a whole number" } as const]
      : days(limit.count, `${path}.count`, 1);
  return limit.per === "calendar year"
    ? problems
    : [...problems, ...windowProblems(limit.per, `${path}.per`)];
};

/** Everything that is wrong with a rule. */
export const ruleProblems = (rule: Omit<IntervalRule, "type" | "version">, path: string): Problem[] => {
  const at = (field: string): string => `${path}.${field}`;
  const { minimumDays, maximumDays, maximumApplications, window, source } = rule;
  const problems = [
    ...days(minimumDays, at("minimumDays"), 0),
    ...days(maximumDays, at("maximumDays"), 1),
    ...limitProblems(maximumApplications, at("maximumApplications")),
    ...(window === undefined ? [] : windowProblems(window, at("window"))),
  ];
  if (minimumDays !== undefined && maximumDays !== undefined && minimumDays > maximumDays) {
    problems.push({
      code: "conflict",
      path: at("minimumDays"),
      got: shown(minimumDays),
      expected: `not more than maximumDays, which is ${maximumDays}`,
    });
  }
  if (typeof source !== "string" || source.trim() === "") {
    problems.push({
      code: "missing",
      path: at("source"),
      got: shown(source),
      expected: "where the rule is stated",
    });
  }
  return problems;
};

/**
 * Makes an interval rule, and reports everything that is wrong with it at once.
 *
 * @throws RatewrightError `range`, `conflict` where the minimum lies above the maximum, `date`, `type`, `missing`
 *
 * @example
 * ```ts
 * import { intervalRule } from "ratewright";
 * const rule = intervalRule({
 *   minimumDays: 21, maximumApplications: { count: 4, per: "calendar year" }, source: "label, turf section",
 * });
 * rule.minimumDays; // => 21
 * ```
 */
export const intervalRule = (input: Omit<IntervalRule, "type" | "version">): IntervalRule => {
  if (typeof input !== "object" || input === null) return fail("type", "rule", input, "a record");
  const problems = ruleProblems(input, "rule");
  if (problems.length > 0) throw new RatewrightError(problems);
  const { minimumDays, maximumDays, maximumApplications, window, source } = input;
  return {
    type: "interval-rule",
    version: 1,
    ...(minimumDays === undefined ? {} : { minimumDays }),
    ...(maximumDays === undefined ? {} : { maximumDays }),
    ...(maximumApplications === undefined ? {} : { maximumApplications }),
    ...(window === undefined ? {} : { window }),
    source,
  };
};
