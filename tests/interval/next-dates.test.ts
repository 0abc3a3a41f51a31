import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, type CivilDate, dateRange, daysBetween, isWithinWindow } from "../../src/calendar/index.js";
import { applicationDates, type IntervalRule, intervalRule, nextDates } from "../../src/interval/index.js";
import { RatewrightError } from "../../src/quantity/index.js";

const problems = (run: () => unknown): string[] => {
  try {
    run();
  } catch (error) {
    if (error instanceof RatewrightError) return error.problems.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
};
const source = "label, turf section";

describe("applicationDates", () => {
  test("n applications have n - 1 intervals", () => {
    const dates = applicationDates({ first: "2026-05-01", intervalDays: 21, count: 3 });
    expect(daysBetween("2026-05-01", dates[2] as CivilDate)).toBe(42);
    expect(applicationDates({ first: "2026-05-01", intervalDays: 21, count: 1 })).toEqual(["2026-05-01"]);
  });
  test("refuses what cannot be counted", () => {
    const of = (intervalDays: number, count: number) =>
      problems(() => applicationDates({ first: "2026-05-01", intervalDays, count }));
    expect(of(0, 3)).toEqual(["range intervalDays"]);
    expect(of(1.5, 3)).toEqual(["range intervalDays"]);
    expect(of(1, 0)).toEqual(["range count"]);
    expect(of(1, 2.5)).toEqual(["range count"]);
  });
});

describe("intervalRule", () => {
  test("reports everything that is wrong at once", () => {
    const wrong = {
      minimumDays: 28,
      maximumDays: 21,
      maximumApplications: { count: 0, per: { from: "13-01", to: "02-30" } },
      window: 3,
      source: "",
    };
    expect(problems(() => intervalRule(wrong as never))).toEqual([
      "range rule.maximumApplications.count",
      "date rule.maximumApplications.per.from",
      "date rule.maximumApplications.per.to",
      "type rule.window",
      "conflict rule.minimumDays",
      "missing rule.source",
    ]);
    expect(problems(() => intervalRule({ minimumDays: 1.5, source }))).toEqual(["range rule.minimumDays"]);
    expect(problems(() => intervalRule({ maximumApplications: {} as never, source }))).toEqual([
      "missing rule.maximumApplications.count",
      "type rule.maximumApplications.per",
    ]);
  });
});

describe("nextDates", () => {
  test("minimum, maximum and what was not stated", () => {
    const rule = intervalRule({ minimumDays: 21, maximumDays: 28, source });
    const next = nextDates({ applied: ["2026-05-22", "2026-05-01"], rule });
    expect(next).toMatchObject({
      earliestByStatedRules: "2026-06-12",
      latestUseful: "2026-06-19",
      findings: [],
    });
    expect(next.reasons.map(({ code }) => code)).toEqual(["interval/minimum", "interval/maximum"]);
    expect(next.checked).toEqual(["minimumDays", "maximumDays"]);
    expect(next.notChecked.map(({ code }) => code)).toEqual([
      "interval/unstated/maximumApplications",
      "interval/unstated/window",
      "interval/beyond-the-rule",
    ]);
  });

  test("a rule that states all still says what it does not reach", () => {
    const rule = intervalRule({
      minimumDays: 1,
      maximumDays: 2,
      maximumApplications: { count: 1, per: "calendar year" },
      window: { from: "01-01", to: "12-31" },
      source,
    });
    expect(nextDates({ applied: [], rule, from: "2026-05-01" }).notChecked.map(({ code }) => code)).toEqual([
      "interval/beyond-the-rule",
    ]);
  });

  test("without an application so far, a first date is needed", () => {
    const rule = intervalRule({ minimumDays: 21, window: { from: "03-01", to: "11-15" }, source });
    expect(problems(() => nextDates({ applied: [], rule }))).toEqual(["missing from"]);
    expect(nextDates({ applied: [], rule, from: "2026-01-10" })).toMatchObject({
      earliestByStatedRules: "2026-03-01",
      latestUseful: null,
    });
  });

  test("a full calendar year, then the window of the next", () => {
    const rule = intervalRule({
      minimumDays: 21,
      maximumApplications: { count: 2, per: "calendar year" },
      window: { from: "03-01", to: "11-15" },
      source,
    });
    const next = nextDates({ applied: ["2026-09-20", "2026-11-01"], rule });
    expect(next.earliestByStatedRules).toBe("2027-03-01");
    expect(next.reasons.map(({ code }) => code)).toEqual(["interval/minimum", "interval/window"]);
    const early = nextDates({ applied: ["2026-04-01", "2026-05-01"], rule });
    expect(early.reasons.map(({ code }) => code)).toEqual([
      "interval/minimum",
      "interval/maximum-applications",
      "interval/window",
    ]);
    expect(early.earliestByStatedRules).toBe("2027-03-01");
  });

  test("a season that runs over the turn of the year counts as one", () => {
    const rule = intervalRule({
      maximumApplications: { count: 2, per: { from: "10-01", to: "04-30" } },
      source,
    });
    const next = nextDates({ applied: ["2025-11-01", "2026-02-01"], rule });
    expect(next.earliestByStatedRules).toBe("2026-05-01");
    expect(next.notChecked.map(({ code }) => code)).toContain("interval/outside-counting-period");
  });

  test("names what was unusual before, by its place in the list that was given", () => {
    const rule = intervalRule({
      minimumDays: 21,
      maximumDays: 28,
      maximumApplications: { count: 2, per: "calendar year" },
      window: { from: "03-01", to: "11-15" },
      source,
    });
    const next = nextDates({ applied: ["2026-05-10", "2026-05-01", "2026-02-20"], rule });
    expect(next.findings.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "interval/outside-stated-window applied[2]",
      "interval/shorter-than-stated applied[0]",
      "interval/more-than-stated applied[0]",
      "interval/gap applied[0]",
    ]);
  });

  test("goes through JSON", () => {
    const rule = intervalRule({ minimumDays: 21, source });
    const next = nextDates({ applied: ["2026-05-01"], rule: JSON.parse(JSON.stringify(rule)) });
    expect(JSON.parse(JSON.stringify(next))).toEqual(next);
  });

  test("refuses what is no rule and no date", () => {
    const rule = intervalRule({ minimumDays: 21, source });
    expect(problems(() => nextDates({ applied: [], rule: { minimumDays: 21, source } as never }))).toEqual([
      "type rule",
    ]);
    expect(problems(() => nextDates({ applied: ["2026-05-01", "x" as never], rule }))).toEqual([
      "date applied[1]",
    ]);
    expect(problems(() => nextDates({ applied: "2026-05-01" as never, rule }))).toEqual(["type applied"]);
    expect(problems(() => nextDates({ applied: [], rule: { ...rule, minimumDays: -1 } }))).toEqual([
      "range rule.minimumDays",
    ]);
  });

  const windows = fc
    .tuple(fc.integer({ min: 0, max: 364 }), fc.integer({ min: 0, max: 364 }))
    .map((ends) => ends.map((n) => addDays("2026-01-01", n).slice(5)))
    .map(([from, to]) => ({ from, to }) as NonNullable<IntervalRule["window"]>);
  const rules = fc.record(
    {
      minimumDays: fc.integer({ min: 0, max: 90 }),
      maximumApplications: fc.record({
        count: fc.integer({ min: 1, max: 4 }),
        per: fc.oneof(fc.constant("calendar year" as const), windows),
      }),
      window: windows,
    },
    { requiredKeys: [] },
  );

  /** By hand: whether one date keeps each stated part, with nothing shared with the function but `isWithinWindow`. */
  const keeps = (date: CivilDate, applied: readonly CivilDate[], rule: IntervalRule): boolean => {
    const last = [...applied].sort().pop();
    if (last !== undefined && (date < last || daysBetween(last, date) < (rule.minimumDays ?? 0)))
      return false;
    if (rule.window !== undefined && !isWithinWindow(date, rule.window)) return false;
    const limit = rule.maximumApplications;
    if (limit === undefined) return true;
    if (limit.per === "calendar year")
      return applied.filter((a) => a.slice(0, 4) === date.slice(0, 4)).length < limit.count;
    if (!isWithinWindow(date, limit.per)) return true;
    // Walk back to the opening of this season: applications behind it are in the same one.
    const { per } = limit;
    let opening = date;
    while (opening.slice(5) !== per.from) opening = addDays(opening, -1);
    return applied.filter((a) => a >= opening && a <= date && isWithinWindow(a, per)).length < limit.count;
  };

  test("is the first date that keeps every stated part, looked for day by day", () => {
    const applied = fc.array(
      fc.integer({ min: 0, max: 700 }).map((n) => addDays("2026-01-01", n)),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(rules, applied, (parts, dates) => {
        const rule = intervalRule({ ...parts, source });
        const last = [...dates].sort().pop() as CivilDate;
        const found = nextDates({ applied: dates, rule }).earliestByStatedRules;
        expect(found).toBe(dateRange(last, addDays(last, 1500)).find((date) => keeps(date, dates, rule)));
      }),
      { numRuns: 150 },
    );
  });
});
