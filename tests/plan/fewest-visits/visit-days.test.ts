// The days that a rule, the caller and the limits leave to one treatment.
import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/index.js";
import { ledger } from "../../../src/ledger/index.js";
import type { Limit } from "../../../src/limits/index.js";
import { type VisitDays, visitDays } from "../../../src/plan/fewest-visits/visit-days.js";
import type { SeasonPlan, SeasonTreatment } from "../../../src/plan/index.js";
import { openBook } from "../../../src/plan/season/schedule-book.js";

const source = "label (invented)";

/** The days of the first treatment of a plan; the plain schedule placed so many, the first of them on that day. */
const read = (plan: SeasonPlan, placed: number, firstDay?: number, leftOut = false): VisitDays => {
  const { book, states } = openBook(plan);
  const [treatment] = book.season.treatments;
  const [state] = states;
  if (treatment === undefined || state === undefined) throw new Error("no treatment");
  const first = firstDay === undefined ? undefined : addDays(plan.season.from, firstDay);
  return visitDays(book, treatment, state, { first, placed, leftOut });
};
const range = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => from + i);

describe("the days of one treatment", () => {
  // 40 days: 1 December is day 0, 31 December is day 30, 9 January is day 39.
  const season = { from: "2026-12-01", to: "2027-01-09" } as const;

  it("counted in a calendar year: what was done in it counts, and the next year begins anew", () => {
    const { counted, open } = read(
      {
        season,
        treatments: [
          {
            id: "a",
            count: 2,
            applied: ["2026-05-01", "2026-08-01"],
            interval: { maximumApplications: { count: 3, per: "calendar year" }, source },
          },
        ],
      },
      2,
    );
    expect(open).toEqual(range(0, 39));
    expect(counted).toEqual([
      { days: range(0, 30), left: 1 },
      { days: range(31, 39), left: 3 },
    ]);
  });

  it("counted in a window: days outside of it are not", () => {
    const within = { from: "12-05", to: "12-20" } as const;
    const at = (applied: readonly `${number}-${number}-${number}`[], count: number) =>
      read(
        {
          season,
          treatments: [
            { id: "a", applied, interval: { maximumApplications: { count, per: within }, source } },
          ],
        },
        1,
      ).counted;
    // 5 December is day 4, 20 December day 19; done on day 5, it is open from the day after on.
    expect(at(["2026-12-06"], 2)).toEqual([{ days: range(6, 19), left: 1 }]);
    expect(at(["2026-11-30"], 2)).toEqual([{ days: range(4, 19), left: 2 }]);
  });

  it("counted in several ways, and not at all in twelve months that roll, which the rule itself is asked", () => {
    const maximumApplications = [
      { count: 4, per: "calendar year" },
      { count: 5, per: "12 rolling months" },
    ] as const;
    const { counted } = read(
      { season, treatments: [{ id: "a", interval: { maximumApplications, source } }] },
      1,
    );
    expect(counted.map(({ left, days }) => [left, days.length])).toEqual([
      [4, 31],
      [4, 9],
    ]);
  });

  it("open from the earliest day by the rule to the last wanted one, but for what is avoided", () => {
    const plan: SeasonPlan = {
      season,
      avoid: { times: [{ from: "2026-12-20", to: "2026-12-24", why: "holidays" }] },
      treatments: [
        {
          id: "a",
          applied: ["2026-11-28"],
          within: { from: "2026-12-03", to: "2026-12-28" },
          interval: { minimumDays: 10, maximumDays: 15, source },
        },
      ],
    };
    const days = read(plan, 2, 12);
    // 28 November and ten days are 8 December, day 7; and fifteen days are 13 December, day 12.
    expect(days.open).toEqual([...range(7, 18), ...range(24, 27)]);
    expect(days.firstBy).toBe(12);
    // Ten days after 8 December; after 18 December the ten days end on 28 December.
    expect([days.next.get(7), days.next.get(17), days.next.get(24)]).toEqual([17, 27, 34]);
    // Fifteen days after; nothing has to follow where they end after the last wanted day, day 27.
    expect([days.keepUp.get(7), days.keepUp.get(12), days.keepUp.get(13)]).toEqual([22, 27, undefined]);
    // It repeats as long as it is wanted: once at least, and no more than the plain schedule placed.
    expect([days.least, days.most]).toEqual([1, 2]);
  });

  it("begun anew by its first day and what it may move, or by the day of the plain schedule where that is later", () => {
    const repeat = { id: "a", interval: { minimumDays: 10, maximumDays: 15, source } };
    const plan: SeasonPlan = { season, shareWithinDays: 4, treatments: [repeat] };
    expect(read(plan, 2, 0).firstBy).toBe(4);
    expect(read(plan, 2, 6).firstBy).toBe(6);
    expect(read(plan, 0).least).toBe(0);
    // Done once, or without a longest interval, on any wanted day; a stated number of times is kept.
    const once = read(
      { season, treatments: [{ id: "a", within: { from: "2026-12-03", to: "2026-12-28" } }] },
      1,
      2,
    );
    expect([once.firstBy, once.least, once.most, once.keepUp.size]).toEqual([27, 1, 1, 0]);
    const twice = read({ season, treatments: [{ ...repeat, count: 2 }] }, 2, 0);
    expect([twice.firstBy, twice.least, twice.most]).toEqual([0, 2, 2]);
    // What the plain schedule left out stays out: as often as it placed, and none has to follow.
    const some = [false, true].map((leftOut) => read(plan, 2, 0, leftOut));
    expect(some.map(({ set, least, most }) => [set, least, most])).toEqual([
      [false, 1, 2],
      [true, 2, 2],
    ]);
  });

  it("a day that a limit rules out by itself is not open", () => {
    const puts = { supplies: [{ value: 0.8, unit: "lb/1000 ft2", of: "N" }] };
    const blackout = { from: "12-10", to: "01-05" } as const;
    const { open } = read(
      {
        season,
        treatments: [{ id: "a", puts }],
        limits: [{ kind: "blackout dates", of: ["N"], blackout, source }],
      },
      1,
    );
    expect(open).toEqual([...range(0, 8), ...range(36, 39)]);
  });

  describe("a mode of action that the ledger has used up", () => {
    const active = (name: string) => ({ supplies: [{ value: 0.1, unit: "lb/acre", of: `ai:${name}` }] });
    const used = ledger([
      { id: "x", date: "2026-11-10", ...active("propiconazole") },
      { id: "y", date: "2026-11-20", ...active("propiconazole") },
    ]);
    const group = { kind: "rotation", group: "3", of: ["ai:propiconazole"], source } as const;
    const open = (limit: Limit, second?: SeasonTreatment["puts"]) =>
      read(
        {
          season,
          ledger: used,
          treatments: [
            { id: "a", puts: active("propiconazole") },
            { id: "b", ...(second && { puts: second }) },
          ],
          limits: [limit],
        },
        1,
      ).open;

    it("twice in a row, of two at most: open where the season has another, closed where it has none", () => {
      const limit = { ...group, atMostInARow: 2 };
      expect(open(limit, active("azoxystrobin"))).toEqual(range(0, 39));
      // The same again, and what puts nothing down, end no run.
      expect(open(limit, active("propiconazole"))).toEqual([]);
      expect(open(limit)).toEqual([]);
      expect(open({ ...group, atMostInARow: 3 })).toEqual(range(0, 39));
    });

    it("twice in a year, of two at most: closed to the end of the year, whatever comes between", () => {
      const limit = { ...group, atMost: 2, per: "calendar year" } as const;
      expect(open(limit, active("azoxystrobin"))).toEqual(range(31, 39));
    });
  });
});
