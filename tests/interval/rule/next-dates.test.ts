import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addDays,
  addMonths,
  type CivilDate,
  dateRange,
  daysBetween,
  isWithinWindow,
} from "../../../src/calendar/index.js";
import { applicationDates, type IntervalRule, intervalRule, nextDates } from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";
import { runs } from "../../properties.js";

const source = "label, turf section";

describe("applicationDates", () => {
  test("n applications have n - 1 intervals", () => {
    const dates = applicationDates({ first: "2026-05-01", intervalDays: 21, count: 3 });
    expect(daysBetween("2026-05-01", dates[2] as CivilDate)).toBe(42);
    expect(applicationDates({ first: "2026-05-01", intervalDays: 21, count: 1 })).toEqual(["2026-05-01"]);
  });
  test("refuses what cannot be counted", () => {
    const of = (intervalDays: number, count: number) =>
      complaints(() => applicationDates({ first: "2026-05-01", intervalDays, count }));
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
    expect(complaints(() => intervalRule(wrong as never))).toEqual([
      "range rule.maximumApplications.count",
      "date rule.maximumApplications.per.from",
      "date rule.maximumApplications.per.to",
      "type rule.window",
      "conflict rule.minimumDays",
      "missing rule.source",
    ]);
    expect(complaints(() => intervalRule({ minimumDays: 1.5, source }))).toEqual(["range rule.minimumDays"]);
    expect(complaints(() => intervalRule({ maximumApplications: {} as never, source }))).toEqual([
      "missing rule.maximumApplications.count",
      "missing rule.maximumApplications.per",
    ]);
  });
});

describe("nextDates", () => {
  test("minimum, maximum and what was not stated", () => {
    const rule = intervalRule({ minimumDays: 21, maximumDays: 28, source });
    const next = nextDates({ applied: ["2026-05-22", "2026-05-01"], rule });
    expect(next).toMatchObject({
      earliestByStatedRules: "2026-06-12",
      reapplyBy: "2026-06-19",
      findings: [],
    });
    expect(next.reasons.map(({ code }) => code)).toEqual(["interval/minimum", "interval/maximum"]);
    expect(next.checked).toEqual(["minimumDays", "maximumDays"]);
    expect(next.notChecked.map(({ code }) => code)).toEqual([
      "interval/unstated/maximumApplications",
      "interval/unstated/maximumAmount",
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
    const amount = quantity(1, "lb/acre", "ai");
    const full = intervalRule({ ...rule, maximumAmount: { amount, per: "calendar year" } });
    const next = nextDates({ applied: [], rule: full, from: "2026-05-01", amount });
    expect(next.notChecked.map(({ code }) => code)).toEqual(["interval/beyond-the-rule"]);
    expect(next.checked).toContain("maximumAmount");
  });

  test("without an application so far, a first date is needed", () => {
    const rule = intervalRule({ minimumDays: 21, window: { from: "03-01", to: "11-15" }, source });
    expect(complaints(() => nextDates({ applied: [], rule }))).toEqual(["missing from"]);
    expect(nextDates({ applied: [], rule, from: "2026-01-10" })).toMatchObject({
      earliestByStatedRules: "2026-03-01",
      reapplyBy: null,
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
    expect(complaints(() => nextDates({ applied: [], rule: { minimumDays: 21, source } as never }))).toEqual([
      "type rule",
    ]);
    expect(complaints(() => nextDates({ applied: ["2026-05-01", "x" as never], rule }))).toEqual([
      "date applied[1]",
    ]);
    expect(complaints(() => nextDates({ applied: "2026-05-01" as never, rule }))).toEqual(["type applied"]);
    expect(complaints(() => nextDates({ applied: [], rule: { ...rule, minimumDays: -1 } }))).toEqual([
      "range rule.minimumDays",
    ]);
  });

  const ai = (value: number) => quantity(value, "lb/acre", "ai:flurprimidol");
  const yearly = intervalRule({
    minimumDays: 21,
    maximumAmount: { amount: ai(2), per: "calendar year" },
    source,
  });

  test("amounts: eight at 0.25 of 2, and the ninth in the next year; rounding noise moves nothing", () => {
    const done = (count: number) =>
      Array.from({ length: count }, (_, i) => ({ date: addDays("2026-01-05", 21 * i), amount: ai(0.25) }));
    const ask = (count: number, amount = ai(0.25)) =>
      nextDates({ applied: done(count), rule: yearly, amount });
    expect(ask(7).decidedBy?.code).toBe("interval/minimum");
    expect(ask(8).earliestByStatedRules).toBe("2027-01-01");
    expect(ask(8).decidedBy).toMatchObject({
      code: "interval/maximum-amount",
      params: { used: 2, maximum: 2, unit: "lb/acre" },
    });
    const tenths = Array.from({ length: 9 }, (_, i) => ({
      date: addDays("2026-01-05", 21 * i),
      amount: ai(7.3),
    }));
    const rule = intervalRule({ maximumAmount: { amount: ai(73), per: "calendar year" }, source });
    expect(nextDates({ applied: tenths, rule, amount: ai(7.3) }).reasons).toEqual([]);
    // The same dose in another unit.
    expect(ask(7, quantity(0.28021, "kg/ha", "ai:flurprimidol")).decidedBy?.code).toBe("interval/minimum");
    expect(ask(7, quantity(0.281, "kg/ha", "ai:flurprimidol")).decidedBy?.code).toBe(
      "interval/maximum-amount",
    );
  });

  test("names an application with which an amount went over the limit, and none that just reached it", () => {
    const done = (...amounts: number[]) =>
      nextDates({
        applied: amounts.map((n, i) => ({ date: addDays("2026-05-01", 30 * i), amount: ai(n) })),
        rule: yearly,
      }).findings;
    expect(done(1.25, 0.75)).toEqual([]);
    expect(done(1.25, 1.25, 0.1)).toMatchObject([
      {
        code: "interval/more-amount-than-stated",
        path: "applied[1]",
        params: { used: 2.5, maximum: 2, unit: "lb/acre", of: "ai:flurprimidol" },
      },
      { code: "interval/more-amount-than-stated", path: "applied[2]", params: { used: 2.6 } },
    ]);
  });

  test("an amount that no period holds, one of another stuff, and none at all", () => {
    expect(
      complaints(() => nextDates({ applied: [], from: "2026-05-01", rule: yearly, amount: ai(2.1) })),
    ).toEqual(["infeasible amount"]);
    const product = quantity(4, "lb/acre", "product");
    const other = nextDates({
      applied: [{ date: "2026-05-01", amount: product }],
      rule: yearly,
      amount: product,
    });
    expect(other.notChecked.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["interval/other-substance", "interval/unknown-amounts"]),
    );
    expect(other.checked).toEqual(["minimumDays"]);
    const none = nextDates({ applied: ["2026-05-01"], rule: yearly });
    expect(none.notChecked.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["interval/no-amount", "interval/unknown-amounts"]),
    );
    const volume = quantity(1, "fl oz/acre", "ai:flurprimidol");
    expect(
      complaints(() => nextDates({ applied: [], from: "2026-05-01", rule: yearly, amount: volume })),
    ).toEqual(["unit/mismatch amount"]);
    expect(
      complaints(() =>
        intervalRule({ maximumAmount: { amount: quantity(1, "lb"), per: "calendar year" } as never, source }),
      ),
    ).toEqual(["unit/mismatch rule.maximumAmount.amount"]);
  });

  test("twelve rolling months: free again on the same day of the next year", () => {
    const rule = intervalRule({ maximumApplications: { count: 2, per: "12 rolling months" }, source });
    const ask = (...applied: CivilDate[]) => nextDates({ applied, rule }).earliestByStatedRules;
    expect(ask("2026-05-01", "2026-10-15")).toBe("2027-05-01");
    expect(ask("2024-02-28", "2024-10-15")).toBe("2025-02-28");
    // Of the days that could be meant, the later one.
    expect(ask("2024-02-29", "2024-10-15")).toBe("2025-03-01");
    expect(ask("2023-03-01", "2023-10-15")).toBe("2024-03-01");
    expect(ask("2026-05-01", "2027-05-01")).toBe("2027-05-01");
    expect(ask("2026-05-01", "2027-04-30")).toBe("2027-05-01");
    expect(
      nextDates({ applied: ["2026-05-01", "2026-10-15", "2027-04-30"], rule }).findings.map(
        ({ code }) => code,
      ),
    ).toEqual(["interval/more-than-stated"]);
  });

  test("closed times, weekdays and events move it on, each with its reason", () => {
    const rule = intervalRule({
      minimumDays: 14,
      blackout: [
        { from: "06-15", to: "08-15", why: "heat" },
        { from: "2026-08-16", to: "2026-08-18" },
      ],
      source,
    });
    const next = nextDates({
      applied: ["2026-06-05"],
      rule,
      avoid: { weekdays: [6, 7], times: [{ from: "2026-08-19", to: "2026-08-21", why: "tournament" }] },
    });
    expect(next.earliestByStatedRules).toBe("2026-08-24");
    expect(next.reasons.map(({ code }) => code)).toEqual([
      "interval/minimum",
      "interval/blackout",
      "interval/blackout",
      "interval/avoided",
      "interval/avoided",
      "interval/avoided",
    ]);
    expect(next.decidedBy?.source).toBeUndefined();
    expect(nextDates({ applied: ["2026-07-01"], rule }).findings[0]?.code).toBe("interval/in-blackout");
    const bad = { weekdays: [0], times: [] };
    expect(complaints(() => nextDates({ applied: ["2026-06-05"], rule, avoid: bad }))).toEqual([
      "range avoid.weekdays[0]",
    ]);
    expect(
      complaints(() =>
        nextDates({ applied: ["2026-06-05"], rule, avoid: { weekdays: [1, 2, 3, 4, 5, 6, 7] } }),
      ),
    ).toEqual(["infeasible avoid.weekdays"]);
    const never = intervalRule({
      window: { from: "06-20", to: "06-30" },
      blackout: [{ from: "06-15", to: "08-15" }],
      source,
    });
    expect(complaints(() => nextDates({ applied: ["2026-06-05"], rule: never }))).toEqual([
      "infeasible rule",
    ]);
    expect(
      complaints(() => intervalRule({ blackout: [{ from: "2026-06-05", to: "2026-06-01" }], source })),
    ).toEqual(["date rule.blackout[0].to"]);
  });

  test("a limit that JSON carries without a substance still holds", () => {
    const plain = (value: number) => ({ value, unit: "lb/acre" }) as never;
    const next = nextDates({
      applied: [{ date: "2026-05-01", amount: plain(1) }],
      amount: plain(1),
      rule: {
        type: "interval-rule",
        version: 1,
        maximumAmount: { amount: plain(1.5), per: "calendar year" },
        source,
      },
    });
    // 1 of 1.5 is used: another 1 waits for the next year.
    expect(next.earliestByStatedRules).toBe("2027-01-01");
    expect(next.checked).toContain("maximumAmount");
  });

  test("an empty list of limits is none", () => {
    expect(complaints(() => intervalRule({ maximumApplications: [], maximumAmount: [], source }))).toEqual([
      "missing rule.maximumApplications",
      "missing rule.maximumAmount",
    ]);
  });

  test("another area does not count", () => {
    const rule = intervalRule({ minimumDays: 21, source });
    const applied = [
      { date: "2026-05-01", area: "pitch" },
      { date: "2026-05-15", area: "lawn" },
    ] as const;
    expect(nextDates({ applied, area: "pitch", rule }).earliestByStatedRules).toBe("2026-05-22");
    expect(nextDates({ applied, rule }).earliestByStatedRules).toBe("2026-06-05");
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
        per: fc.oneof(fc.constantFrom("calendar year" as const, "12 rolling months" as const), windows),
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
    if (limit === undefined || !("per" in limit)) return true;
    if (limit.per === "12 rolling months")
      return applied.filter((a) => addMonths(a, 12) > date && a <= date).length < limit.count;
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
      runs(150),
    );
  });
});
