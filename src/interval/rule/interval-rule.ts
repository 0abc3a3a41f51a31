import { type MonthDayWindow, monthDay } from "../../calendar/index.js";
import {
  checks,
  expectAmount,
  expectFields,
  outOfRange,
  type Problem,
  plainCopy,
  type Quantity,
  type QuantityJson,
  RatewrightError,
  rangeProblem,
  shown,
} from "../../quantity/index.js";
import { type BlackoutPeriod, checkedSpan } from "./blackout-period.js";

/**
 * In what the applications of a limit are counted: a calendar year, one occurrence of a season, or the
 * twelve months that end on the day of the application. An application of 1 May counts in those up to
 * 30 April of the next year, and no longer on 1 May; one of 29 February up to 28 February, and no longer on 1 March.
 */
export type CountingPeriod = "calendar year" | "12 rolling months" | MonthDayWindow;

/** A number of applications per period. */
export interface PeriodCount {
  readonly count: number;
  readonly per: CountingPeriod;
}

/** A largest amount per area and period, such as 2 lb/acre of an active ingredient. */
export interface PeriodAmount {
  /** Mass or volume per area, of what the source limits; a `Quantity` fits, and is kept as plain JSON. */
  readonly amount: QuantityJson;
  readonly per: CountingPeriod;
}

/** One limit or several, as a list. */
export const limitList = <T extends object>(limits: T | readonly T[] | undefined): readonly T[] =>
  limits === undefined ? [] : Array.isArray(limits) ? limits : [limits as T];

/**
 * What a source states on how often something is applied. Plain JSON. What it does not state is left
 * out, and is then named as not checked.
 */
export interface IntervalRule {
  readonly type: "interval-rule";
  readonly version: 1;
  /** The least number of days from one application to the next: with 21, day 0 and then day 21. */
  readonly minimumDays?: number;
  /** The number of days that an application lasts: reapply by then. */
  readonly maximumDays?: number;
  /** One limit, or several that all hold. */
  readonly maximumApplications?: PeriodCount | readonly PeriodCount[];
  /** One limit, or several that all hold; none of them is converted into another substance. */
  readonly maximumAmount?: PeriodAmount | readonly PeriodAmount[];
  /** The part of the year to which the source confines the application. */
  readonly window?: MonthDayWindow;
  /** Blackout periods, in which the source rules it out; both ends included. */
  readonly blackout?: readonly BlackoutPeriod[];
  /** Where it is stated: the label and its section, or the publication. */
  readonly source: string;
}

const days = (value: unknown, path: string, least: number): Problem[] =>
  value === undefined || (Number.isSafeInteger(value) && (value as number) >= least)
    ? []
    : [rangeProblem(path, shown(value), { step: 1, min: least })];

const windowProblems = (window: unknown, path: string): Problem[] => {
  const ends = window as Partial<MonthDayWindow> | null;
  if (typeof ends !== "object" || ends === null) {
    return [{ code: "type", path, got: shown(window), expected: "a window with from and to" }];
  }
  const strange = Object.keys(ends).find((name) => name !== "from" && name !== "to");
  if (strange !== undefined) {
    return [
      { code: "type", path: `${path}.${strange}`, got: `a field "${strange}"`, expected: "from and to" },
    ];
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

const periodProblems = (per: unknown, path: string): Problem[] =>
  per === "calendar year" || per === "12 rolling months" ? [] : windowProblems(per, path);

/** Mass or volume per area. */
export type PerArea = Quantity<"mass/area", string> | Quantity<"volume/area", string>;

/** Takes an amount per area; anything else limits something else. */
export const expectPerArea = (input: unknown, path: string): PerArea => {
  const amount = expectAmount(input, { dimensions: ["mass/area", "volume/area"], bound: "positive" }, path);
  // One of the two dimensions, as was just read; a quantity is of one kind, not of either.
  return amount as PerArea;
};

const problemsIn = (refused: ReturnType<typeof checks>): readonly Problem[] => {
  try {
    refused.done();
    return [];
  } catch (error) {
    if (error instanceof RatewrightError) return error.problems;
    throw error;
  }
};

const limitProblems = (limits: unknown, path: string, kind: "count" | "amount"): Problem[] => {
  if (limits === undefined) return [];
  const several = Array.isArray(limits);
  const wanted = kind === "amount" ? "an amount per period" : "a count per period";
  if (several && limits.length > 1000) {
    return [rangeProblem(path, shown(limits), { max: 1000, count: "limits" })];
  }
  const list: readonly unknown[] = several ? Array.from(limits) : [limits];
  if (list.length === 0) {
    return [{ code: "missing", path, got: "an empty list", expected: `at least one ${kind} per period` }];
  }
  return list.flatMap((limit, i) => {
    const at = several ? `${path}[${i}]` : path;
    if (typeof limit !== "object" || limit === null) {
      return [{ code: "type", path: at, got: shown(limit), expected: wanted } as const];
    }
    const { count, amount, per } = limit as Partial<PeriodCount & PeriodAmount>;
    const refused = checks();
    refused.run(() => expectFields(limit, [kind, "per"], at, wanted));
    if (kind === "amount") refused.run(() => expectPerArea(amount, `${at}.amount`));
    else if (count === undefined) {
      refused.add({ code: "missing", path: `${at}.count`, got: "nothing", expected: "a whole number" });
    } else for (const problem of days(count, `${at}.count`, 1)) refused.add(problem);
    for (const problem of periodProblems(per, `${at}.per`)) refused.add(problem);
    return problemsIn(refused);
  });
};

/** What a rule can state. */
const ruleFields = [
  "minimumDays",
  "maximumDays",
  "maximumApplications",
  "maximumAmount",
  "window",
  "blackout",
  "source",
] as const;

/** Everything that is wrong with a rule. */
export const ruleProblems = (rule: Omit<IntervalRule, "type" | "version">, path: string): Problem[] => {
  const at = (field: string): string => `${path}.${field}`;
  const { minimumDays, maximumDays, maximumApplications, maximumAmount, window, blackout, source } = rule;
  const problems = [
    ...days(minimumDays, at("minimumDays"), 0),
    ...days(maximumDays, at("maximumDays"), 1),
    ...limitProblems(maximumApplications, at("maximumApplications"), "count"),
    ...limitProblems(maximumAmount, at("maximumAmount"), "amount"),
    ...(window === undefined ? [] : windowProblems(window, at("window"))),
  ];
  if (blackout !== undefined && !Array.isArray(blackout)) {
    problems.push({ code: "type", path: at("blackout"), got: shown(blackout), expected: "a list of times" });
  } else {
    const refused = checks();
    const list = blackout ?? [];
    refused.run(() => {
      if (list.length > 1000) outOfRange(at("blackout"), list, { max: 1000, count: "times" });
      for (const [i, time] of Array.from(list).entries())
        refused.run(() => checkedSpan(time, at(`blackout[${i}]`)));
    });
    problems.push(...problemsIn(refused));
  }
  if (typeof minimumDays === "number" && typeof maximumDays === "number" && minimumDays > maximumDays) {
    problems.push({
      code: "conflict",
      path: at("minimumDays"),
      got: shown(minimumDays),
      expected: `not more than maximumDays, which is ${shown(maximumDays)}`,
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
 * @throws RatewrightError `range`, `conflict` where the minimum lies above the maximum, `date`, `type`, `missing`;
 * `unit/mismatch` for an amount that is not per area
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
  const given = plainCopy(input);
  expectFields(given, ["type", "version", ...ruleFields], "rule", "a record with what is stated");
  const problems = ruleProblems(given, "rule");
  if (problems.length > 0) throw new RatewrightError(problems);
  const { minimumDays, maximumDays, maximumApplications, maximumAmount, window, blackout, source } = given;
  const own = (per: CountingPeriod): CountingPeriod => (typeof per === "object" ? { ...per } : per);
  const plain = ({ amount, per }: PeriodAmount): PeriodAmount => {
    const { value, unit, of } = amount;
    return { amount: { value, unit, of: of ?? "none" }, per: own(per) };
  };
  const counted = ({ count, per }: PeriodCount): PeriodCount => ({ count, per: own(per) });
  return {
    type: "interval-rule",
    version: 1,
    ...(minimumDays === undefined ? {} : { minimumDays }),
    ...(maximumDays === undefined ? {} : { maximumDays }),
    ...(maximumApplications === undefined
      ? {}
      : {
          maximumApplications: Array.isArray(maximumApplications)
            ? maximumApplications.map(counted)
            : counted(maximumApplications as PeriodCount),
        }),
    ...(maximumAmount === undefined
      ? {}
      : {
          maximumAmount: Array.isArray(maximumAmount)
            ? maximumAmount.map(plain)
            : plain(maximumAmount as PeriodAmount),
        }),
    ...(window === undefined ? {} : { window: { ...window } }),
    ...(blackout === undefined ? {} : { blackout: blackout.map((time) => ({ ...time })) }),
    source,
  };
};
