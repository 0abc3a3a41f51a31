import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { daysBetween, isWithinWindow } from "../../../src/calendar/index.js";
import { type NitrogenCaps, seasonProgram } from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { runs } from "../../properties.js";

const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
const cap = (pounds: number) => ({ amount: n(pounds), source: "made up" });
const months = [
  "2026-03",
  "2026-04",
  "2026-05",
  "2026-06",
  "2026-07",
  "2026-08",
  "2026-09",
  "2026-10",
  "2026-11",
];
const pounds = fc.integer({ min: 0, max: 300 }).map((x) => x / 100);

/** Nothing that the scheduler uses: every pair of days is looked at. */
const fullest = (list: readonly { date: string; amount: number }[]): number =>
  Math.max(
    0,
    ...list.map(({ date }) =>
      list
        .filter((other) => {
          const gap = daysBetween(date as "2026-01-01", other.date as "2026-01-01");
          return gap >= 0 && gap <= 29;
        })
        .reduce((sum, { amount }) => sum + amount, 0),
    ),
  );

const capsDrawn = fc
  .tuple(
    fc.option(fc.integer({ min: 10, max: 100 }), { nil: undefined }),
    fc.option(fc.integer({ min: 0, max: 100 }), { nil: undefined }),
    fc.option(fc.integer({ min: 0, max: 300 }), { nil: undefined }),
  )
  .map(([application, month, year]): NitrogenCaps => {
    const base = application ?? 10;
    const per30 = month === undefined ? undefined : base + month;
    const perYear = year === undefined ? undefined : (per30 ?? base) + year;
    return {
      ...(application === undefined ? {} : { perApplication: cap(application / 100) }),
      ...(per30 === undefined ? {} : { per30Days: cap(per30 / 100) }),
      ...(perYear === undefined ? {} : { perYear: cap(perYear / 100) }),
    };
  });
const appliedDrawn = fc.array(
  fc.record({
    date: fc
      .integer({ min: 1, max: 28 })
      .map((day) => `2026-05-${String(day).padStart(2, "0")}` as "2026-05-01"),
    nitrogen: fc.integer({ min: 0, max: 10 }).map((x) => n(x / 100)),
  }),
  { maxLength: 1 },
);
const planDrawn = fc.constantFrom(
  { kind: "fewest applications" } as const,
  { kind: "even split" } as const,
  { kind: "even split", applications: 5 } as const,
  { kind: "growth curve" } as const,
);
const closed = [{ window: { from: "07-10", to: "08-05" }, source: "made up" }] as const;
const near = 1e-6;

/** A program with what it was drawn from: its own applications, and all of the year. */
const programDrawn = fc
  .tuple(fc.array(pounds, { minLength: 9, maxLength: 9 }), capsDrawn, planDrawn, appliedDrawn)
  .map(([targets, caps, plan, applied]) => {
    const program = seasonProgram({
      months: months.map((month, i) =>
        plan.kind === "growth curve"
          ? { month, weight: 1 + (targets[i] as number) }
          : { month, target: n(targets[i] as number) },
      ),
      ...(plan.kind === "growth curve" ? { total: n(4) } : {}),
      plan,
      caps,
      closed,
      applied,
    });
    const rows = program.applications.map(({ date, nitrogen }) => ({
      date,
      amount: nitrogen.in("lb/1000 ft2"),
    }));
    const year = [...rows, ...applied.map(({ date, nitrogen }) => ({ date, amount: nitrogen.value }))];
    const most = (name: "perApplication" | "per30Days" | "perYear"): number =>
      (caps[name]?.amount.value ?? Number.POSITIVE_INFINITY) + near;
    return { program, rows, year, most };
  });
type Drawn = typeof programDrawn extends fc.Arbitrary<infer T> ? T : never;

const sumOf = (list: readonly { readonly amount: number }[]): number =>
  list.reduce((sum, { amount }) => sum + amount, 0);

describe("a season program, whatever its targets, caps, plan and log", () => {
  test.each<readonly [law: string, holds: (drawn: Drawn) => void]>([
    [
      "what is planned is the sum of its applications",
      ({ program, rows }) => expect(program.planned.in("lb/1000 ft2")).toBeCloseTo(sumOf(rows), 9),
    ],
    [
      "the applications and the shortfall are the target",
      ({ program, rows }) => {
        const whole = sumOf(rows) + program.shortfall.in("lb/1000 ft2");
        expect(Math.abs(whole - program.target.in("lb/1000 ft2"))).toBeLessThan(near);
      },
    ],
    [
      "no application is above its cap",
      ({ rows, most }) => {
        for (const { amount } of rows) expect(amount).toBeLessThanOrEqual(most("perApplication"));
      },
    ],
    [
      "no application is of nothing",
      ({ rows }) => {
        for (const { amount } of rows) expect(amount).toBeGreaterThan(0);
      },
    ],
    [
      "no application lies in a closed season",
      ({ rows }) => {
        for (const { date } of rows) expect(isWithinWindow(date, closed[0].window)).toBe(false);
      },
    ],
    [
      "no thirty days hold more than their cap, with what went down before",
      ({ year, most }) => expect(fullest(year)).toBeLessThanOrEqual(most("per30Days")),
    ],
    [
      "the year holds no more than its cap, with what went down before",
      ({ year, most }) => expect(sumOf(year)).toBeLessThanOrEqual(most("perYear")),
    ],
    [
      "no day has two applications",
      ({ rows }) => expect(new Set(rows.map(({ date }) => date)).size).toBe(rows.length),
    ],
    [
      "the applications stand in order of their dates",
      ({ rows }) => expect(rows.map(({ date }) => date)).toEqual(rows.map(({ date }) => date).sort()),
    ],
  ])("%s", (_law, holds) => {
    fc.assert(
      fc.property(programDrawn, (drawn) => {
        holds(drawn);
      }),
      runs(120),
    );
  });
});
