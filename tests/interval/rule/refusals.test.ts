import { expect, test } from "vitest";
import {
  applicationDates,
  applicationsLeft,
  earliestBySeedingIntervals,
  fewestApplications,
  intervalRule,
  nextDates,
  splitApplication,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of intervals by the calendar, where the refusal points, and what it says would have been right.

const rate = (value: number) => quantity(value, "lb/acre", "ai");
const rule = (change: object) => () => intervalRule({ source: "the label", ...change } as never);
const ask = (change: object) => () =>
  nextDates({
    applied: ["2026-05-01"],
    rule: intervalRule({ minimumDays: 14, source: "the label" }),
    ...change,
  } as never);
const dates = (change: object) => () =>
  applicationDates({ first: "2026-05-01", intervalDays: 14, count: 2, ...change } as never);
const left = (change: object) => () =>
  applicationsLeft({ maximum: rate(2), rate: rate(1), ...change } as never);
const split = (change: object) => () =>
  splitApplication({
    first: "2026-04-01",
    amount: rate(1),
    maximum: rate(1.5),
    afterDays: { min: 14, max: 28 },
    ...change,
  } as never);
const gap = { from: "spray", to: "seeding", minimumDays: 30, about: "mesotrione", source: "the label" };
const seeding = (change: object) => () =>
  earliestBySeedingIntervals({ rules: [gap], happened: [], next: "seeding", ...change } as never);
const seedingRule = (change: object) => seeding({ rules: [{ ...gap, ...change }] });
const happened = (change: object) =>
  seeding({ happened: [{ event: "spray", date: "2026-05-01", ...change }] });

const rows: readonly Refused[] = [
  // Dates one after another
  [dates({ first: "May" }), "date", "first", "written YYYY-MM-DD"],
  [dates({ intervalDays: 0 }), "range", "intervalDays", "1 or more"],
  [dates({ intervalDays: 1.5 }), "range", "intervalDays", "days"],
  [dates({ count: 0 }), "range", "count", "1 or more"],
  [dates({ count: 367 }), "range", "count", "366 or less"],
  [dates({ count: 1.5 }), "range", "count", "applications"],
  // What is left
  [left({ maximum: quantity(2, "acre") }), "unit/mismatch", "maximum", "a weight over an area"],
  [left({ maximum: rate(-1) }), "range", "maximum", "zero or more"],
  [left({ rate: rate(0) }), "range", "rate", "more than zero"],
  [left({ rate: quantity(1, "lb/acre", "N") }), "substance/mismatch", "rate", "ai"],
  [left({ used: rate(-1) }), "range", "used", "zero or more"],
  [left({ used: quantity(1, "lb", "ai") }), "unit/mismatch", "used", "a weight over an area"],
  [left({ rate: rate(1e-300) }), "range", "rate", "which goes into the maximum 2^53 times"],
  [() => fewestApplications({ total: rate(-1), perApplication: rate(1) }), "range", "total", "zero or more"],
  [
    () => fewestApplications({ total: rate(1), perApplication: rate(0) }),
    "range",
    "perApplication",
    "more than zero",
  ],
  [
    () => fewestApplications({ total: rate(1), perApplication: quantity(1, "lb/acre", "N") as never }),
    "substance/mismatch",
    "perApplication",
    "ai",
  ],
  // A rule
  [rule({ source: "" }), "missing", "rule.source", "where the rule is stated"],
  [rule({ source: 7 }), "missing", "rule.source", "where the rule is stated"],
  [rule({ minimumDays: -1 }), "range", "rule.minimumDays", "zero or more"],
  [rule({ minimumDays: 1.5 }), "range", "rule.minimumDays", "whole"],
  [rule({ maximumDays: 0 }), "range", "rule.maximumDays", "1 or more"],
  [
    rule({ minimumDays: 15, maximumDays: 14 }),
    "conflict",
    "rule.minimumDays",
    "not more than maximumDays, which is 14",
  ],
  [rule({ window: 7 }), "type", "rule.window", "a window with from and to"],
  [rule({ window: { from: "04-01", until: "05-01" } }), "type", "rule.window.until", "from and to"],
  [
    rule({ window: { from: "13-01", to: "05-01" } }),
    "date",
    "rule.window.from",
    "a day of the year written MM-DD",
  ],
  [rule({ window: { from: "04-01" } }), "missing", "rule.window.to", "a day of the year written MM-DD"],
  [rule({ blackout: 7 }), "type", "rule.blackout", "a list of times"],
  [rule({ blackout: [7] }), "type", "rule.blackout[0]", "a time with from and to"],
  [
    rule({ blackout: [{ from: "2026-05-02", to: "2026-05-01" }] }),
    "date",
    "rule.blackout[0].to",
    "a date not earlier than 2026-05-02",
  ],
  [
    rule({ blackout: [{ from: "05-02", to: "2026-05-01" }] }),
    "date",
    "rule.blackout[0].to",
    "a day of the year written MM-DD",
  ],
  [
    rule({ blackout: [{ from: "05-02", to: "05-04", why: 7 }] }),
    "type",
    "rule.blackout[0].why",
    "why, as text",
  ],
  [
    rule({ blackout: Array(1001).fill({ from: "05-02", to: "05-04" }) }),
    "range",
    "rule.blackout",
    "1000 times or fewer",
  ],
  [rule({ maximumApplications: 7 }), "type", "rule.maximumApplications", "a count per period"],
  [rule({ maximumApplications: [] }), "missing", "rule.maximumApplications", "at least one count per period"],
  [
    rule({ maximumApplications: Array(1001).fill({ count: 1, per: "calendar year" }) }),
    "range",
    "rule.maximumApplications",
    "1000 limits or fewer",
  ],
  [
    rule({ maximumApplications: { per: "calendar year" } }),
    "missing",
    "rule.maximumApplications.count",
    "a whole number",
  ],
  [
    rule({ maximumApplications: { count: 0, per: "calendar year" } }),
    "range",
    "rule.maximumApplications.count",
    "1 or more",
  ],
  [
    rule({ maximumApplications: { count: 1, per: "year" } }),
    "type",
    "rule.maximumApplications.per",
    "a window with from and to",
  ],
  [
    rule({ maximumApplications: [{ count: 1, per: { from: "04-01", to: "x" } }] }),
    "date",
    "rule.maximumApplications[0].per.to",
    "a day of the year written MM-DD",
  ],
  [
    rule({ maximumApplications: { count: 1, per: "calendar year", each: 1 } }),
    "type",
    "rule.maximumApplications.each",
    "count",
  ],
  [rule({ maximumAmount: 7 }), "type", "rule.maximumAmount", "an amount per period"],
  [rule({ maximumAmount: [] }), "missing", "rule.maximumAmount", "at least one amount per period"],
  [
    rule({ maximumAmount: { amount: rate(0), per: "calendar year" } }),
    "range",
    "rule.maximumAmount.amount",
    "more than zero",
  ],
  [
    rule({ maximumAmount: { amount: quantity(1, "lb"), per: "calendar year" } }),
    "unit/mismatch",
    "rule.maximumAmount.amount",
    "a weight over an area",
  ],
  [rule({ days: 7 }), "type", "rule.days", "minimumDays"],
  [() => intervalRule(7 as never), "type", "rule", "a record with what is stated"],
  // The next date
  [ask({ rule: {} }), "type", "rule", "an interval rule: intervalRule({ minimumDays, source })"],
  [ask({ applied: 7 }), "type", "applied", "a list of dates"],
  [ask({ applied: ["May"] }), "date", "applied[0]", "written YYYY-MM-DD"],
  [ask({ applied: [{ date: "May" }] }), "date", "applied[0].date", "written YYYY-MM-DD"],
  [
    ask({ applied: [{ date: "2026-05-01", amount: quantity(1, "lb") }] }),
    "unit/mismatch",
    "applied[0].amount",
    "a weight over an area",
  ],
  [ask({ applied: [{ date: "2026-05-01", area: 7 }] }), "type", "applied[0].area", "the name of an area"],
  [ask({ applied: [{ date: "2026-05-01", site: 7 }] }), "type", "applied[0].site", "area"],
  [ask({ applied: Array(100_001).fill("2026-05-01") }), "range", "applied", "100000 applications or fewer"],
  [ask({ applied: [] }), "missing", "from", "a date, because there is no application yet"],
  [ask({ from: "May" }), "date", "from", "written YYYY-MM-DD"],
  [ask({ area: 7 }), "type", "area", "the name of an area"],
  [ask({ amount: rate(0) }), "range", "amount", "more than zero"],
  [ask({ avoid: 7 }), "type", "avoid", "record"],
  [ask({ avoid: { weekdays: 7 } }), "type", "avoid.weekdays", "a list of days, 1 to 7"],
  [ask({ avoid: { weekdays: [0] } }), "range", "avoid.weekdays[0]", "1 for Monday, 7 for Sunday"],
  [ask({ avoid: { weekdays: [8] } }), "range", "avoid.weekdays[0]", "1 for Monday, 7 for Sunday"],
  [ask({ avoid: { weekdays: [1.5] } }), "range", "avoid.weekdays[0]", "1 for Monday, 7 for Sunday"],
  [
    ask({ avoid: { weekdays: [1, 2, 3, 4, 5, 6, 7] } }),
    "infeasible",
    "avoid.weekdays",
    "at least one day left",
  ],
  [
    ask({ avoid: { weekdays: [1, 1, 1, 1, 1, 1, 1, 1] } }),
    "range",
    "avoid.weekdays",
    "7 days of the week or fewer",
  ],
  [ask({ avoid: { times: 7 } }), "type", "avoid.times", "a list of times"],
  [ask({ avoid: { times: [7] } }), "type", "avoid.times[0]", "a time with from and to"],
  [
    ask({ avoid: { times: Array(10_001).fill({ from: "05-02", to: "05-04" }) } }),
    "range",
    "avoid.times",
    "10000 times or fewer",
  ],
  [ask({ avoid: { days: [] } }), "type", "avoid.days", "weekdays"],
  [
    ask({
      amount: rate(3),
      rule: intervalRule({ maximumAmount: { amount: rate(2), per: "calendar year" }, source: "s" }),
    }),
    "infeasible",
    "amount",
    "2 lb/acre of ai at most, which is what the rule states for a whole period",
  ],
  [
    ask({ rule: intervalRule({ blackout: [{ from: "01-01", to: "12-31" }], source: "s" }) }),
    "infeasible",
    "rule",
    "a rule and days to avoid that leave a date within 40 years",
  ],
  // A split
  [split({ first: "May" }), "date", "first", "written YYYY-MM-DD"],
  [split({ amount: rate(0) }), "range", "amount", "more than zero"],
  [split({ amount: rate(2) }), "conflict", "amount", "not more than the maximum, which is 1.5 lb/acre of ai"],
  [split({ maximum: rate(0) }), "range", "maximum", "more than zero"],
  [split({ maximum: quantity(2, "lb/acre", "N") }), "substance/mismatch", "maximum", "ai"],
  [split({ afterDays: { min: 0, max: 1 } }), "range", "afterDays.min", "1 or more"],
  [split({ afterDays: { min: 1, max: 1.5 } }), "range", "afterDays.max", "days"],
  [
    split({ afterDays: { min: 3, max: 2 } }),
    "conflict",
    "afterDays.min",
    "not more than afterDays.max, which is 2",
  ],
  [split({ afterDays: 7 }), "type", "afterDays", "record"],
  // Before seeding
  [seeding({ next: "raking" }), "type", "next", '"seeding"'],
  [seeding({ rules: 7 }), "type", "rules", "a list"],
  [seeding({ rules: [7] }), "type", "rules[0]", "a rule"],
  [seeding({ happened: 7 }), "type", "happened", "a list"],
  [seeding({ happened: [7] }), "type", "happened[0]", "an event with its date"],
  [seedingRule({ from: "raking" }), "type", "rules[0].from", '"spray"'],
  [seedingRule({ to: "raking" }), "type", "rules[0].to", '"sodding"'],
  [seedingRule({ minimumDays: -1 }), "range", "rules[0].minimumDays", "days"],
  [seedingRule({ minimumDays: 1.5 }), "range", "rules[0].minimumDays", "days"],
  [seedingRule({ about: " " }), "missing", "rules[0].about", "the name of an active ingredient or a species"],
  [seedingRule({ source: "" }), "missing", "rules[0].source", "where it is stated"],
  [seedingRule({ days: 1 }), "type", "rules[0].days", "minimumDays"],
  [happened({ event: "raking" }), "type", "happened[0].event", '"spray"'],
  [happened({ date: "May" }), "date", "happened[0].date", "written YYYY-MM-DD"],
  [happened({ about: 7 }), "missing", "happened[0].about", "the name of an active ingredient or a species"],
  [happened({ day: 1 }), "type", "happened[0].day", "date"],
];

describeRefused("what is refused of intervals by the calendar", rows);

test("the ends of each range are read", () => {
  for (const call of [
    dates({ intervalDays: 1, count: 1 }),
    dates({ count: 366 }),
    left({ maximum: rate(0), used: rate(0) }),
    rule({ minimumDays: 0, maximumDays: 1 }),
    rule({ minimumDays: 14, maximumDays: 14 }),
    rule({ blackout: [{ from: "2026-05-02", to: "2026-05-02" }] }),
    rule({ blackout: [] }),
    rule({ maximumApplications: { count: 1, per: "12 rolling months" } }),
    ask({ avoid: { weekdays: [1, 2, 3, 4, 5, 6] } }),
    ask({ avoid: { weekdays: [1, 1, 1, 1, 1, 1, 7] } }),
    split({ amount: rate(1.5), afterDays: { min: 1, max: 1 } }),
    seedingRule({ minimumDays: 0 }),
  ])
    expect(problemsOf(call)).toEqual([]);
});
