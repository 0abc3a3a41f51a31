import { describe, expect, it } from "vitest";
import { addDays, daysBetween } from "../../../src/calendar/index.js";
import { ledger } from "../../../src/ledger/index.js";
import { checkLimits } from "../../../src/limits/index.js";
import { fewestVisits } from "../../../src/plan/fewest-visits/index.js";
import type { Schedule, SeasonPlan, SeasonTreatment } from "../../../src/plan/index.js";
import { found as foundVisits } from "./found.js";

const label = "label (invented)";
const datesOf = ({ visits }: Schedule, id: string) =>
  visits
    .filter(({ applications }) => applications.some(({ treatment }) => treatment === id))
    .map(({ date }) => date);
const gapsOf = (found: Schedule, id: string): readonly number[] => {
  const dates = datesOf(found, id);
  return dates.slice(1).map((date, i) => daysBetween(dates[i] as (typeof dates)[number], date));
};

/** A short season, small enough to try every choice of days. */
const days = 14;
const small = (pairs: readonly (readonly [number, number])[]): SeasonPlan => ({
  season: { from: "2026-05-01", to: addDays("2026-05-01", days - 1) },
  treatments: pairs.map(([minimumDays, maximumDays], i) => ({
    id: `t${i}`,
    interval: { minimumDays, maximumDays, source: label },
  })),
});
/** Every list of days of one treatment that begins on the first day and keeps its interval to the end. */
const courses = (min: number, max: number): readonly (readonly number[])[] => {
  const grown = (course: readonly number[]): readonly (readonly number[])[] => {
    const last = course[course.length - 1] as number;
    const done = last + max > days - 1 ? [course] : [];
    const next = Array.from({ length: max - min + 1 }, (_, i) => last + min + i).filter((day) => day < days);
    return [...done, ...next.flatMap((day) => grown([...course, day]))];
  };
  return grown([0]);
};
const triedOut = (pairs: readonly (readonly [number, number])[]): number => {
  const lists = pairs.map(([min, max]) => {
    const all = courses(min, max);
    const least = Math.ceil((days - max) / max) + 1;
    return all.filter(({ length }) => length <= least);
  });
  const unions = lists.reduce<readonly (readonly number[])[]>(
    (sets, list) => sets.flatMap((set) => list.map((course) => [...new Set([...set, ...course])])),
    [[]],
  );
  return Math.min(...unions.map(({ length }) => length));
};

describe("the fewest visits of a season", () => {
  it.each([
    [[[3, 5]]],
    [
      [
        [3, 5],
        [4, 6],
      ],
    ],
    [
      [
        [2, 4],
        [3, 7],
      ],
    ],
    [
      [
        [4, 5],
        [3, 6],
        [6, 7],
      ],
    ],
  ] as const)("are those of trying every choice of days: %j", async (pairs) => {
    const found = await foundVisits(small(pairs));
    expect(found.proven).toBe(true);
    expect(found.visits).toBe(triedOut(pairs));
    expect(found.atLeast).toBe(found.visits);
    expect(found.visits).toBeLessThanOrEqual(found.visitsOfPlainSchedule);
  });

  it("keep every interval, come late nowhere, and stay off the days that are avoided", async () => {
    const found = await foundVisits({
      season: { from: "2026-04-01", to: "2026-06-30" },
      treatments: [
        { id: "feed", interval: { minimumDays: 28, maximumDays: 45, source: label } },
        { id: "wetter", interval: { minimumDays: 21, maximumDays: 30, source: label } },
        { id: "core", within: { from: "2026-05-01", to: "2026-06-15" } },
      ],
      avoid: { weekdays: [6, 7] },
    });
    for (const gap of gapsOf(found.schedule, "feed")) expect(gap >= 28 && gap <= 45).toBe(true);
    for (const gap of gapsOf(found.schedule, "wetter")) expect(gap >= 21 && gap <= 30).toBe(true);
    expect(found.schedule.findings).toEqual([]);
    expect(found.schedule.visits.map(({ date }) => new Date(date).getUTCDay() % 6 === 0)).not.toContain(true);
    // Coring joins a visit instead of being one of its own.
    expect(
      found.schedule.visits.find(({ date }) => date === datesOf(found.schedule, "core")[0])?.applications,
    ).not.toHaveLength(1);
    expect(found.visits).toBeLessThan(found.visitsOfPlainSchedule);
  });

  it("stay within limits that add up over treatments", async () => {
    const puts = { supplies: [{ value: 0.6, unit: "lb/1000 ft2", of: "N" }] };
    const treatments: SeasonTreatment[] = [
      { id: "a", count: 2, puts, interval: { minimumDays: 5, source: label } },
      { id: "b", count: 1, puts },
    ];
    const limits = [
      { id: "ten", amount: { value: 1, unit: "lb/1000 ft2", of: "N" }, per: { days: 10 }, source: "plan" },
    ] as const;
    const found = await foundVisits({
      season: { from: "2026-05-01", to: "2026-06-10" },
      treatments,
      limits,
    });
    // No two fit into ten days: three visits, though the rules alone would take two.
    expect(found.visits).toBe(3);
    const entries = found.schedule.visits.map(({ date }, i) => ({ id: `e${i}`, date, ...puts }));
    for (const [i, entry] of entries.entries()) {
      const beside = ledger(entries.filter((_, k) => k !== i));
      const { uses } = checkLimits({ ledger: beside, limits, proposal: { date: entry.date, ...puts } });
      expect(uses.map(({ violated }) => violated)).toEqual([false]);
    }
  });

  it("count what went before", async () => {
    const found = await foundVisits({
      season: { from: "2026-05-01", to: "2026-05-31" },
      ledger: ledger([{ id: "x", date: "2026-04-20", treatment: "a" }]),
      treatments: [{ id: "a", interval: { minimumDays: 14, maximumDays: 20, source: label } }],
    });
    expect((datesOf(found.schedule, "a")[0] as string) >= "2026-05-04").toBe(true);
    expect((datesOf(found.schedule, "a")[0] as string) <= "2026-05-10").toBe(true);
  });

  it("are refused with the way on where no days keep every interval", async () => {
    const call = fewestVisits({
      season: { from: "2026-05-01", to: "2026-06-30" },
      treatments: [{ id: "a", count: 2, interval: { minimumDays: 28, maximumDays: 30, source: label } }],
      avoid: { times: [{ from: "2026-05-02", to: "2026-06-10", why: "tournament" }] },
    });
    await expect(call).rejects.toThrow(/schedule\(plan\) places what it can/);
  });

  it("are refused for a season of more than 400 days", async () => {
    const call = fewestVisits({
      season: { from: "2026-01-01", to: "2027-12-31" },
      treatments: [{ id: "a" }],
    });
    await expect(call).rejects.toThrow(/400 days or fewer/);
  });

  it("refuse an option that is not known", async () => {
    await expect(fewestVisits(small([[3, 5]]), { node: 5 } as never)).rejects.toThrow(/did you mean nodes/);
  });
});
