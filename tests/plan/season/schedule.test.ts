import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dailyNormals, daysBetween, weekday } from "../../../src/calendar/index.js";
import { ledger } from "../../../src/ledger/index.js";
import { checkLimits } from "../../../src/limits/index.js";
import { type SeasonPlan, type SeasonTreatment, schedule } from "../../../src/plan/index.js";
import type { RatewrightError } from "../../../src/quantity/index.js";
import { runs } from "../../properties.js";

const season = { from: "2026-04-01", to: "2026-09-30" } as const;
const plan = (treatments: readonly SeasonTreatment[], more: Partial<SeasonPlan> = {}) =>
  schedule({ season, treatments, ...more });
const rows = (result: ReturnType<typeof schedule>): readonly string[] =>
  result.visits.map(({ date, applications }) => `${date} ${applications.map((a) => a.treatment).join("+")}`);
const datesOf = (result: ReturnType<typeof schedule>, id: string) =>
  result.visits
    .filter(({ applications }) => applications.some((a) => a.treatment === id))
    .map(({ date }) => date);
const flat = (value: number) => Array<number>(366).fill(value);
const label = "label (invented)";

describe("schedule", () => {
  test("once where nothing says how often", () => {
    expect(rows(plan([{ id: "core" }]))).toEqual(["2026-04-01 core"]);
    expect(rows(plan([{ id: "feed", interval: { minimumDays: 42, source: label } }]))).toEqual([
      "2026-04-01 feed",
    ]);
  });

  test("n applications have n - 1 intervals: three at 21 days end on day 42", () => {
    const result = plan([{ id: "a", count: 3, interval: { minimumDays: 21, source: label } }]);
    expect(datesOf(result, "a")).toEqual(["2026-04-01", "2026-04-22", "2026-05-13"]);
    expect(daysBetween("2026-04-01", "2026-05-13")).toBe(42);
  });

  test("a repeat is made on the last day on which the one before works", () => {
    const result = plan([{ id: "a", interval: { minimumDays: 14, maximumDays: 60, source: label } }]);
    // 1 April + 60 = 31 May, + 60 = 30 July, + 60 = 28 September.
    expect(datesOf(result, "a")).toEqual(["2026-04-01", "2026-05-31", "2026-07-30", "2026-09-28"]);
    expect(result.notPlaced).toEqual([]);
  });

  test("by growing degree days: 200 degree-days at 20 a day are ten days", () => {
    const normals = dailyNormals({
      unit: "°C",
      sensor: "air",
      source: "depot",
      min: flat(15),
      max: flat(25),
    });
    const degreeDays = {
      method: "simple average",
      base: { value: 0, unit: "°C" },
      interval: { value: 200, unit: "°C d" },
      source: "meetings abstract, 2009",
    } as const;
    const result = plan([{ id: "regulate", degreeDays, count: 4 }], { normals });
    expect(datesOf(result, "regulate")).toEqual(["2026-04-01", "2026-04-11", "2026-04-21", "2026-05-01"]);
    const reasons = result.visits[1]?.applications[0]?.reasons.map(({ code }) => code);
    expect(reasons).toContain("schedule/degree-days");
    // Without temperatures the calendar goes on alone, and it is said.
    const blind = plan([
      { id: "regulate", degreeDays, count: 2, interval: { minimumDays: 7, source: label } },
    ]);
    expect(datesOf(blind, "regulate")).toEqual(["2026-04-01", "2026-04-08"]);
    expect(blind.notChecked.join()).toMatch(/regulate: the growing-degree-day interval since 2026-04-01/);
  });

  test("treatments share a visit only as far as the caller says", () => {
    const treatments: SeasonTreatment[] = [
      { id: "a", count: 2, interval: { minimumDays: 20, maximumDays: 30, source: label } },
      { id: "b", count: 2, interval: { minimumDays: 20, maximumDays: 33, source: label } },
    ];
    expect(rows(plan(treatments))).toEqual(["2026-04-01 a+b", "2026-05-01 a", "2026-05-04 b"]);
    expect(rows(plan(treatments, { shareWithinDays: 3 }))).toEqual(["2026-04-01 a+b", "2026-05-01 a+b"]);
    const shared = plan(treatments, { shareWithinDays: 3 }).visits[1]?.applications[1];
    expect(shared?.reasons.at(-1)?.code).toBe("schedule/shared");
  });

  test("days that the caller avoids stay free, before the last useful day where there is one", () => {
    const result = plan([{ id: "a", interval: { minimumDays: 20, maximumDays: 30, source: label } }], {
      avoid: { weekdays: [6, 7], times: [{ from: "2026-04-28", to: "2026-05-10", why: "tournament" }] },
    });
    for (const date of datesOf(result, "a")) expect(weekday(date)).toBeLessThan(6);
    // 1 May is avoided; the last day before the tournament on which somebody comes is Monday, 27 April.
    expect(datesOf(result, "a")[1]).toBe("2026-04-27");
    expect(result.findings).toEqual([]);
  });

  test("where no day is left before, the first after is late and a finding", () => {
    const result = plan(
      [{ id: "a", count: 2, interval: { minimumDays: 28, maximumDays: 30, source: label } }],
      {
        avoid: { times: [{ from: "2026-04-20", to: "2026-05-10", why: "tournament" }] },
      },
    );
    expect(datesOf(result, "a")).toEqual(["2026-04-01", "2026-05-11"]);
    expect(result.findings.map(({ code, params }) => [code, params.days])).toEqual([["schedule/late", 10]]);
  });

  test("what went before counts, from the ledger and from the caller", () => {
    const before = ledger([{ id: "x", date: "2026-03-20", treatment: "a" }]);
    const treatment = { id: "a", interval: { minimumDays: 21, source: label } };
    expect(datesOf(plan([treatment], { ledger: before }), "a")).toEqual(["2026-04-10"]);
    expect(datesOf(plan([{ ...treatment, applied: ["2026-03-25"] }], { ledger: before }), "a")).toEqual([
      "2026-04-15",
    ]);
  });

  test("limits move an application, or leave it out with the reason", () => {
    const puts = { supplies: [{ value: 0.8, unit: "lb/1000 ft2", of: "N" }] };
    const limits = [
      { id: "thirty", amount: { value: 1, unit: "lb/1000 ft2", of: "N" }, per: { days: 30 }, source: "plan" },
      {
        id: "year",
        amount: { value: 2, unit: "lb/1000 ft2", of: "N" },
        per: "calendar year",
        source: "plan",
      },
    ] as const;
    const result = plan([{ id: "feed", count: 3, puts, interval: { minimumDays: 14, source: label } }], {
      limits,
    });
    expect(datesOf(result, "feed")).toEqual(["2026-04-01", "2026-05-01"]);
    expect(result.visits[1]?.applications[0]?.reasons.some(({ text }) => text.includes("thirty"))).toBe(true);
    expect(result.notPlaced.map(({ treatment, number }) => [treatment, number])).toEqual([["feed", 3]]);
    expect(result.notPlaced[0]?.reasons.at(-1)?.text).toMatch(/2027-01-01, is after 2026-09-30/);
  });

  test("an application that no day fits is told", () => {
    const result = plan([
      {
        id: "late",
        within: { from: "2026-09-01", to: "2026-12-01" },
        interval: { window: { from: "03-01", to: "05-31" }, source: label },
      },
    ]);
    expect(result.visits).toEqual([]);
    expect(result.notPlaced[0]?.reasons.map(({ code }) => code)).toContain("schedule/after-end");
  });

  test("conflicts with the turf are findings of the schedule", () => {
    const result = plan([{ id: "crabgrass", use: "pre-emergent herbicide" }], {
      turf: { from: "sprigs", established: false, stress: [] },
    });
    expect(result.findings.map(({ code }) => code)).toEqual(["grow-in/pre-emergent-stops-rooting"]);
  });

  test("tells everything that is wrong at once", () => {
    const call = () =>
      schedule({
        season: { from: "2026-09-30", to: "2026-04-01" },
        treatments: [
          { id: "a", count: 0, interval: { minimumDays: -1, source: "" }, parts: [] },
          { id: "a", degreeDays: {}, applied: ["soon"], fuss: 1 },
          { id: "b", use: "herbicide", label: { minimumMowings: "ten" } },
        ],
        turf: { stress: "heat" },
        shareWithinDays: 1.5,
      } as never);
    try {
      call();
      expect.unreachable();
    } catch (error) {
      expect((error as RatewrightError).problems.map(({ path }) => path)).toEqual(
        expect.arrayContaining([
          "season.to",
          "shareWithinDays",
          "treatments[0].count",
          "treatments[0].interval.minimumDays",
          "treatments[0].interval.source",
          "treatments[0].parts",
          "treatments[1].fuss",
          "treatments[2].use",
          "treatments[2].label.minimumMowings",
          "treatments[2].label.source",
          "turf.stress",
        ]),
      );
    }
  });

  test("whatever the rules, dates keep the least interval, the season, and the limits", () => {
    const arbitrary = fc.record({
      minimumDays: fc.integer({ min: 1, max: 30 }),
      more: fc.integer({ min: 0, max: 30 }),
      count: fc.integer({ min: 1, max: 6 }),
      pounds: fc.double({ min: 0.1, max: 1, noNaN: true }),
    });
    const limits = [
      { amount: { value: 1, unit: "lb/1000 ft2", of: "N" }, per: { days: 30 }, source: "plan" },
    ] as const;
    fc.assert(
      fc.property(
        fc.array(arbitrary, { minLength: 1, maxLength: 3 }),
        fc.integer({ min: 0, max: 10 }),
        (list, share) => {
          const treatments = list.map(
            ({ minimumDays, more, count, pounds }, i): SeasonTreatment => ({
              id: `t${i}`,
              count,
              interval: { minimumDays, maximumDays: minimumDays + more, source: label },
              puts: { supplies: [{ value: pounds, unit: "lb/1000 ft2", of: "N" }] },
            }),
          );
          const result = plan(treatments, { shareWithinDays: share, limits, avoid: { weekdays: [7] } });
          const entries = result.visits.flatMap(({ date, applications }) =>
            applications.map((a) => ({
              id: `${a.treatment} ${a.number}`,
              date,
              supplies: treatments.find(({ id }) => id === a.treatment)?.puts?.supplies ?? [],
            })),
          );
          for (const [i, { minimumDays, count }] of list.entries()) {
            const dates = datesOf(result, `t${i}`);
            const placed = result.notPlaced.some(({ treatment }) => treatment === `t${i}`)
              ? dates.length + 1
              : dates.length;
            expect(placed).toBeLessThanOrEqual(count);
            if (!result.notPlaced.some(({ treatment }) => treatment === `t${i}`))
              expect(dates).toHaveLength(count);
            for (const [k, date] of dates.entries()) {
              expect(date >= season.from && date <= season.to && weekday(date) !== 7).toBe(true);
              const last = dates[k - 1];
              if (last !== undefined) expect(daysBetween(last, date)).toBeGreaterThanOrEqual(minimumDays);
            }
          }
          for (const entry of entries) {
            const { id: _, ...proposal } = entry;
            const rest = ledger(entries.filter(({ id }) => id !== entry.id));
            expect(
              checkLimits({ ledger: rest, proposal, limits }).uses.every(({ violated }) => !violated),
            ).toBe(true);
          }
        },
      ),
      runs(40),
    );
  }, 60_000);
});
