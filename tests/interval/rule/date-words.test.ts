import { describe, expect, test } from "vitest";
import {
  type IntervalRule,
  intervalRule,
  type NextDates,
  nextDates,
  splitApplication,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";

// Why a next date is what it is, word for word, and what happens exactly at the end of an interval, a period or a window.

const source = "the label";
const stated = (rule: Omit<IntervalRule, "type" | "version" | "source">) => intervalRule({ ...rule, source });
const rate = (value: number) => quantity(value, "lb/acre", "ai");
const reasons = ({ reasons: list }: NextDates) => list.map(({ code, text }) => `${code}: ${text}`);
const findings = ({ findings: list }: NextDates) => list.map(({ code, text }) => `${code}: ${text}`);
const open = ({ notChecked }: NextDates) => notChecked.map(({ code, text }) => `${code}: ${text}`);

describe("the end of an interval", () => {
  const rule = stated({ minimumDays: 14, maximumDays: 28 });

  test("is the day on which the days are over, and the reapplication the last of the longest", () => {
    const found = nextDates({ applied: ["2026-05-01"], rule });
    expect([found.earliestByStatedRules, found.reapplyBy]).toEqual(["2026-05-15", "2026-05-29"]);
    expect(reasons(found)).toEqual([
      "interval/minimum: 14 days or more after the application of 2026-05-01.",
      "interval/maximum: The application of 2026-05-01 lasts up to 28 days (the label): reapply by 2026-05-29.",
    ]);
    expect(found.decidedBy).toMatchObject({
      code: "interval/minimum",
      params: { minimumDays: 14, last: "2026-05-01", date: "2026-05-15" },
      source,
    });
    expect(found.findings).toEqual([]);
  });

  test("counts from the latest application, in whatever order they were written", () => {
    const found = nextDates({ applied: ["2026-06-01", "2026-05-01"], rule });
    expect([found.earliestByStatedRules, found.reapplyBy]).toEqual(["2026-06-15", "2026-06-29"]);
  });

  test("is no end where the caller asks for a later day, and that is no stated rule", () => {
    const found = nextDates({ applied: ["2026-05-01"], rule, from: "2026-05-20" });
    expect(found.earliestByStatedRules).toBe("2026-05-20");
    expect(found.decidedBy).toMatchObject({ code: "interval/from", text: "Not wanted before 2026-05-20." });
    expect(found.decidedBy).not.toHaveProperty("source");
    expect(nextDates({ applied: ["2026-05-01"], rule, from: "2026-05-15" }).decidedBy?.code).toBe(
      "interval/minimum",
    );
  });

  test("that lies behind the day by which to reapply is a gap, on that day it is none", () => {
    const gap = (from: "2026-05-29" | "2026-05-30") =>
      findings(nextDates({ applied: ["2026-05-01"], rule, from }));
    expect(gap("2026-05-29")).toEqual([]);
    expect(gap("2026-05-30")).toEqual([
      "interval/gap: The last application lasts until 2026-05-29 (the label); the earliest date for the next is 2026-05-30.",
    ]);
    expect(nextDates({ applied: ["2026-05-01"], rule, from: "2026-06-03" }).findings[0]).toMatchObject({
      severity: "caution",
      path: "applied[0]",
      params: { reapplyBy: "2026-05-29", earliest: "2026-06-03", days: 5 },
      source,
    });
  });

  test("without a longest interval there is no day by which to reapply", () => {
    expect(nextDates({ applied: ["2026-05-01"], rule: stated({ minimumDays: 14 }) }).reapplyBy).toBeNull();
    expect(nextDates({ applied: [], rule, from: "2026-05-01" }).reapplyBy).toBeNull();
  });
});

describe("what came before", () => {
  test("at the stated interval is as stated, a day sooner is told", () => {
    const rule = stated({ minimumDays: 14 });
    expect(nextDates({ applied: ["2026-05-01", "2026-05-15"], rule }).findings).toEqual([]);
    const soon = nextDates({ applied: ["2026-05-01", "2026-05-14"], rule });
    expect(findings(soon)).toEqual([
      "interval/shorter-than-stated: 2026-05-14 is 13 days after 2026-05-01; the rule states 14 or more.",
    ]);
    expect(soon.findings[0]).toMatchObject({
      severity: "caution",
      path: "applied[1]",
      params: { date: "2026-05-14", days: 13, minimumDays: 14 },
      source,
    });
  });

  test("on the first and last day of a window is within it, a day beyond is told", () => {
    const rule = stated({ window: { from: "04-01", to: "10-31" } });
    const on = (date: "2026-03-31" | "2026-04-01" | "2026-10-31" | "2026-11-01") =>
      findings(nextDates({ applied: [date], rule }));
    expect([...on("2026-04-01"), ...on("2026-10-31")]).toEqual([]);
    for (const date of ["2026-03-31", "2026-11-01"] as const)
      expect(on(date)).toEqual([
        `interval/outside-stated-window: ${date} is outside 04-01 to 10-31, the only dates the rule names.`,
      ]);
  });

  test("on the first and last day of a blackout is in it, a day beyond is not", () => {
    const rule = stated({ blackout: [{ from: "2026-07-01", to: "2026-07-05", why: "a tournament" }] });
    const on = (date: "2026-06-30" | "2026-07-01" | "2026-07-05" | "2026-07-06") =>
      findings(nextDates({ applied: [date], rule }));
    expect([...on("2026-06-30"), ...on("2026-07-06")]).toEqual([]);
    for (const date of ["2026-07-01", "2026-07-05"] as const)
      expect(on(date)).toEqual([
        `interval/in-blackout: ${date} is in the blackout period 2026-07-01 to 2026-07-05.`,
      ]);
    const next = nextDates({ applied: ["2026-06-30"], rule, from: "2026-07-01" });
    expect(next.earliestByStatedRules).toBe("2026-07-06");
    expect(reasons(next)).toContain(
      "interval/blackout: No applications from 2026-07-01 to 2026-07-05: a tournament.",
    );
  });

  test("that just reaches a count or an amount is as stated, one more is told", () => {
    const counted = stated({ maximumApplications: { count: 2, per: "calendar year" } });
    expect(nextDates({ applied: ["2026-05-01", "2026-06-01"], rule: counted }).findings).toEqual([]);
    const third = nextDates({ applied: ["2026-05-01", "2026-06-01", "2026-07-01"], rule: counted });
    expect(third.findings[0]).toMatchObject({
      code: "interval/more-than-stated",
      path: "applied[2]",
      params: { date: "2026-07-01", count: 3, maximum: 2 },
    });
    const amounts = stated({ maximumAmount: { amount: rate(2), per: "calendar year" } });
    const applied = (...values: readonly number[]) =>
      nextDates({
        applied: values.map((value, i) => ({
          date: `2026-05-0${i + 1}` as const,
          amount: rate(value),
        })) as never,
        rule: amounts,
      }).findings;
    expect(applied(1, 1)).toEqual([]);
    expect(applied(1, 1.1)).toHaveLength(1);
    expect(applied(1, 1.1)[0]?.path).toBe("applied[1]");
  });
});

describe("what moves a date on", () => {
  test("a window: to its first day, with its words", () => {
    const rule = stated({ window: { from: "04-01", to: "10-31" } });
    const found = nextDates({ applied: ["2026-10-31"], rule, from: "2026-11-01" });
    expect(found.earliestByStatedRules).toBe("2027-04-01");
    expect(reasons(found).at(-1)).toBe("interval/window: Applications only from 04-01 to 10-31.");
  });

  test("a full year: to the first day of the next, with what was counted", () => {
    const rule = stated({ maximumApplications: { count: 2, per: "calendar year" } });
    const found = nextDates({ applied: ["2026-05-01", "2026-06-01"], rule });
    expect(found.earliestByStatedRules).toBe("2027-01-01");
    expect(found.decidedBy).toMatchObject({
      code: "interval/maximum-applications",
      params: { count: 2, maximum: 2, date: "2027-01-01" },
    });
    expect(found.decidedBy?.text).toMatch(/^2 applications .*; the rule states 2 at most\.$/);
    expect(nextDates({ applied: ["2026-05-01"], rule }).earliestByStatedRules).toBe("2026-05-01");
  });

  test("an amount that no longer fits: to the next year, one that just fits stays", () => {
    const rule = stated({ maximumAmount: { amount: rate(2), per: "calendar year" } });
    const ask = (value: number) =>
      nextDates({ applied: [{ date: "2026-05-01", amount: rate(1) }], rule, amount: rate(value) });
    expect(ask(1).earliestByStatedRules).toBe("2026-05-01");
    expect(ask(1.01).earliestByStatedRules).toBe("2027-01-01");
    expect(ask(1.01).decidedBy?.text).toMatch(/^1 lb\/acre .*; the rule states 2 lb\/acre at most\.$/);
    expect(ask(1.01).decidedBy?.params).toMatchObject({ used: 1, maximum: 2, unit: "lb/acre", of: "ai" });
  });

  test("a weekday to avoid: to the day after, by its name, and no rule states it", () => {
    // 2026-05-15 is a Friday.
    const rule = stated({ minimumDays: 14 });
    const names = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
    names.forEach((name, i) => {
      const day = String(11 + i).padStart(2, "0");
      const next = String(12 + i).padStart(2, "0");
      const found = nextDates({
        applied: ["2026-04-01"],
        rule,
        from: `2026-05-${day}` as never,
        avoid: { weekdays: [i + 1] },
      });
      expect(found.earliestByStatedRules).toBe(`2026-05-${next}`);
      expect(found.decidedBy?.text).toBe(`2026-05-${day} is avoided: a ${name}.`);
      expect(found.decidedBy).not.toHaveProperty("source");
    });
  });

  test("days to avoid, with why and without", () => {
    const rule = stated({ minimumDays: 14 });
    const ask = (why?: string) =>
      nextDates({
        applied: ["2026-05-01"],
        rule,
        avoid: { times: [{ from: "2026-05-15", to: "2026-05-16", ...(why && { why }) }] },
      });
    expect(ask("a match").earliestByStatedRules).toBe("2026-05-17");
    expect(ask("a match").decidedBy?.text).toBe("2026-05-15 is avoided: a match.");
    expect(ask().decidedBy?.text).toBe("2026-05-15 is avoided: 2026-05-15 to 2026-05-16.");
  });
});

describe("what is left open", () => {
  test("is each part that the rule does not state, and what lies beyond it", () => {
    const found = nextDates({ applied: ["2026-05-01"], rule: stated({ minimumDays: 14 }) });
    expect(open(found)).toEqual([
      "interval/unstated/maximumDays: How long an application lasts: the rule states none.",
      "interval/unstated/maximumApplications: A number of applications per year or season: the rule states none.",
      "interval/unstated/maximumAmount: An amount per year or season: the rule states none.",
      "interval/unstated/window: A part of the year: the rule states none.",
      "interval/beyond-the-rule: Growth stage, weather, re-entry, local codes and everything else on the label.",
    ]);
    expect(found.checked).toEqual(["minimumDays"]);
    expect(open(nextDates({ applied: ["2026-05-01"], rule: stated({ maximumDays: 14 }) }))[0]).toBe(
      "interval/unstated/minimumDays: A least number of days between applications: the rule states none.",
    );
  });

  test("an amount that is not given, of another substance, or not recorded", () => {
    const rule = stated({ maximumAmount: { amount: rate(2), per: "calendar year" } });
    const recorded = [{ date: "2026-05-01", amount: rate(1) }] as const;
    expect(open(nextDates({ applied: recorded, rule }))).toContain(
      "interval/no-amount: The amount per period: how much would be applied next is not given.",
    );
    expect(nextDates({ applied: recorded, rule }).checked).toEqual([]);
    expect(nextDates({ applied: recorded, rule, amount: rate(1) }).checked).toEqual(["maximumAmount"]);
    const other = nextDates({ applied: recorded, rule, amount: quantity(1, "lb/acre", "N") });
    expect(open(other)).toContain(
      "interval/other-substance: The limit of 2 lb/acre of ai: what would be applied is given as N.",
    );
    expect(other.notChecked.find(({ code }) => code === "interval/other-substance")?.params).toEqual({
      limit: "ai",
      given: "N",
    });
    expect(open(nextDates({ applied: ["2026-05-01", "2026-06-01"], rule, amount: rate(1) }))).toContain(
      "interval/unknown-amounts: Applied on 2026-05-01, 2026-06-01: amount of what is limited not recorded; counted as zero.",
    );
  });

  test("days outside of the part of the year in which is counted", () => {
    const per = { from: "04-01", to: "06-30" } as const;
    const rule = stated({
      maximumApplications: { count: 2, per },
      maximumAmount: { amount: rate(2), per },
    });
    const at = (from: "2026-06-30" | "2026-07-01") =>
      open(nextDates({ applied: [], rule, from, amount: rate(1) }));
    expect(at("2026-07-01")).toContain(
      "interval/outside-counting-period: The number of applications outside 04-01 to 06-30: the rule states none.",
    );
    expect(at("2026-07-01")).toContain(
      "interval/outside-counting-period: The amount outside 04-01 to 06-30: the rule states none.",
    );
    expect(at("2026-06-30").join("; ")).not.toContain("outside");
  });
});

test("what rounding leaves of a split application is nothing", () => {
  const split = (amount: number, maximum: number) =>
    splitApplication({
      first: "2026-04-01",
      amount: rate(amount),
      maximum: rate(maximum),
      afterDays: { min: 14, max: 28 },
    });
  expect(split(0.1 + 0.2, 0.3).largestSecond.value).toBe(0);
  expect(split(0.3, 0.3).largestSecond.value).toBe(0);
  expect(split(1, 1.5).largestSecond.in("lb/acre")).toBe(0.5);
  expect(split(1, 1.5).second).toEqual({ from: "2026-04-15", to: "2026-04-29" });
});
