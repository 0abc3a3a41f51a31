// What the plain schedule cannot place is left out here too, and the rest of the season stands. Dates counted on a calendar.
import { describe, expect, it } from "vitest";
import { daysBetween } from "../../../src/calendar/index.js";
import type { Limit } from "../../../src/limits/index.js";
import { type SeasonPlan, schedule } from "../../../src/plan/index.js";
import { found } from "./found.js";

const source = "label (invented)";
const puts = { supplies: [{ value: 0.8, unit: "lb/1000 ft2", of: "N" }] };
const season = { from: "2026-04-01", to: "2026-08-31" } as const;
const limited = (atMost: number): SeasonPlan => {
  const limit: Limit = { kind: "count", of: "N", atMost, per: "calendar year", source };
  return {
    season,
    limits: [limit],
    treatments: [
      { id: "feed", interval: { minimumDays: 28, maximumDays: 35, source }, puts },
      { id: "wetter", interval: { minimumDays: 21, maximumDays: 30, source } },
    ],
  };
};
const feeds = (visits: Awaited<ReturnType<typeof found>>["schedule"]["visits"]) =>
  visits.filter(({ applications }) => applications.some(({ treatment }) => treatment === "feed"));

describe("a feed every 28 to 35 days, and a limit that ends it before the season does", () => {
  it.each([1, 2, 3])(
    "%i a year: so many, within their interval, and the next is told as not placed",
    async (atMost) => {
      const { schedule: best, visits, proven } = await found(limited(atMost));
      const days = feeds(best.visits).map(({ date }) => date);
      expect(days).toHaveLength(atMost);
      for (const [k, day] of days.slice(1).entries()) {
        const gap = daysBetween(days[k] as typeof day, day);
        expect(gap).toBeGreaterThanOrEqual(28);
        expect(gap).toBeLessThanOrEqual(35);
      }
      expect(best.notPlaced.map(({ treatment, number }) => [treatment, number])).toEqual([
        ["feed", atMost + 1],
      ]);
      // The wetting agent alone takes six: 152 days at 30 days each, the first of them on 1 April.
      expect([visits, proven]).toEqual([6, true]);
    },
  );

  it("a number of the rule that is used up is told as well, by both", async () => {
    const interval = {
      minimumDays: 28,
      maximumDays: 35,
      maximumApplications: { count: 2, per: "calendar year" },
      source,
    } as const;
    const plan: SeasonPlan = { season, treatments: [{ id: "feed", interval }] };
    const plain = schedule(plan);
    expect(plain.notPlaced.map(({ treatment, number }) => [treatment, number])).toEqual([["feed", 3]]);
    expect(plain.notPlaced[0]?.reasons.at(-1)?.text).toBe(
      "The first day by the stated rules, 2027-01-01, is after 2026-08-31.",
    );
    const { visits, schedule: best } = await found(plan);
    expect([visits, best.notPlaced.length]).toEqual([2, 1]);
  });
});

it("nothing that can be placed is a season without visits", async () => {
  const blackout: Limit = {
    kind: "blackout dates",
    of: ["N"],
    blackout: { from: "03-15", to: "09-15" },
    source,
  };
  const {
    visits,
    atLeast,
    proven,
    schedule: none,
  } = await found({
    season,
    limits: [blackout],
    treatments: [{ id: "feed", puts }],
  });
  expect([visits, atLeast, proven, none.visits, none.notPlaced.length]).toEqual([0, 0, true, [], 1]);
});
