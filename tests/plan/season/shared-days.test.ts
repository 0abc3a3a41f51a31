// On which visit a treatment comes along: the nearest to the day that was aimed at. Every date counted on a calendar.
import { describe, expect, test } from "vitest";
import { type SeasonPlan, schedule } from "../../../src/plan/index.js";

const source = "label (invented)";
const season = { from: "2026-05-01", to: "2026-05-31" } as const;
/** A visit on 8 May that is placed first: its nitrogen is ruled out before. */
const late = (day: string) => ({
  treatment: {
    id: "late",
    puts: { supplies: [{ value: 0.5, unit: "lb/1000 ft2", of: "N" }] },
  },
  limits: [{ kind: "blackout dates", of: ["N"], blackout: { from: "05-01", to: day }, source }],
});
/** `c` was done on 26 April and works ten days: 6 May is aimed at. */
const placed = (
  visits: readonly string[],
  rule: { readonly minimumDays: number; readonly within?: object },
  shareWithinDays: number,
  lateDay = "05-07",
) => {
  const { treatment, limits } = late(lateDay);
  const { within, ...stated } = rule;
  const plan = {
    season,
    shareWithinDays,
    limits,
    treatments: [
      treatment,
      ...visits.map((date, i) => ({ id: `v${i}`, within: { from: date, to: date } })),
      {
        id: "c",
        count: 1,
        applied: ["2026-04-26"],
        interval: { ...stated, maximumDays: 10, source },
        ...(within && { within }),
      },
    ],
  } as SeasonPlan;
  return schedule(plan).visits.flatMap(({ date, applications }) =>
    applications.flatMap(({ treatment: id, reasons }) =>
      id === "c" ? [[date, reasons.find(({ code }) => code === "schedule/shared")?.text]] : [],
    ),
  );
};
const shared = (date: string) => [date, `Shares the visit of ${date}; the target was 2026-05-06.`];

describe("a visit to share", () => {
  test("of two that are as near, the earlier one", () => {
    expect(placed(["2026-05-04"], { minimumDays: 5 }, 3)).toEqual([shared("2026-05-04")]);
  });

  test("the nearer one, earlier or later", () => {
    expect(placed(["2026-05-03"], { minimumDays: 5 }, 3)).toEqual([shared("2026-05-08")]);
    expect(placed(["2026-05-05"], { minimumDays: 5 }, 3)).toEqual([shared("2026-05-05")]);
  });

  test("up to the days that it may move, and no further", () => {
    expect(placed(["2026-05-04"], { minimumDays: 5 }, 2)).toEqual([shared("2026-05-04")]);
    expect(placed(["2026-05-04"], { minimumDays: 5 }, 1)).toEqual([["2026-05-06", undefined]]);
    expect(placed(["2026-05-03"], { minimumDays: 5 }, 2)).toEqual([shared("2026-05-08")]);
  });

  test("from its first day by the rule: nine days after 26 April are 5 May", () => {
    expect(placed(["2026-05-04"], { minimumDays: 9 }, 2, "05-09")).toEqual([["2026-05-06", undefined]]);
    expect(placed(["2026-05-04"], { minimumDays: 8 }, 2, "05-09")).toEqual([shared("2026-05-04")]);
  });

  test("not on a day that its own label closes", () => {
    const closed = (blackout: object) =>
      ({ minimumDays: 5, blackout: [blackout] }) as { minimumDays: number };
    expect(placed(["2026-05-05"], closed({ from: "05-05", to: "05-05" }), 3, "05-12")).toEqual([
      ["2026-05-06", undefined],
    ]);
    expect(placed(["2026-05-05"], closed({ from: "05-04", to: "05-04" }), 3, "05-12")).toEqual([
      shared("2026-05-05"),
    ]);
  });

  test("to its last wanted day", () => {
    const until = (to: string) => ({ minimumDays: 5, within: { from: "2026-05-01", to } });
    expect(placed(["2026-05-03"], until("2026-05-07"), 3)).toEqual([shared("2026-05-03")]);
    expect(placed(["2026-05-03"], until("2026-05-08"), 3)).toEqual([shared("2026-05-08")]);
  });
});

describe("what a schedule tells", () => {
  test("why an application without an interval is not on its first day: 2 May 2026 is a Saturday", () => {
    const { visits } = schedule({
      season: { ...season, from: "2026-05-02" },
      avoid: { weekdays: [6, 7] },
      treatments: [{ id: "a" }],
    });
    const told = visits.flatMap(({ date, applications }) =>
      applications.map(({ reasons }) => [date, ...reasons.map(({ text }) => text)]),
    );
    expect(told).toEqual([
      [
        "2026-05-04",
        "Wanted from 2026-05-02 to 2026-05-31.",
        "2026-05-02 is avoided: a Saturday.",
        "2026-05-03 is avoided: a Sunday.",
      ],
    ]);
  });

  test("no day where one of two limits is never kept, though the other is later", () => {
    const plan: SeasonPlan = {
      season,
      limits: [
        {
          id: "dose",
          kind: "amount",
          amount: { value: 0.7, unit: "lb/1000 ft2", of: "N" },
          per: "application",
          source,
        },
        { id: "early", kind: "blackout dates", of: ["N"], blackout: { from: "05-01", to: "05-10" }, source },
      ],
      treatments: [{ id: "a", puts: { supplies: [{ value: 0.9, unit: "lb/1000 ft2", of: "N" }] } }],
    } as never;
    const { visits, notPlaced } = schedule(plan);
    expect(visits).toEqual([]);
    const reasons = notPlaced.flatMap((one) => one.reasons);
    expect(reasons.filter(({ code }) => code === "schedule/limit").map(({ text }) => text)).toEqual([
      "On 2026-05-01 it would violate dose, early; no day found is within all stated limits.",
    ]);
  });

  test("each reason once", () => {
    const { visits } = schedule({
      season,
      treatments: [{ id: "a", applied: ["2026-04-25"], interval: { minimumDays: 14, source } }],
      avoid: { weekdays: [6, 7] },
    });
    // 14 days after 25 April is Saturday, 9 May; the Monday is the 11th.
    expect(visits.map(({ date }) => date)).toEqual(["2026-05-11"]);
    const texts = visits[0]?.applications[0]?.reasons.map(({ text }) => text) ?? [];
    expect(new Set(texts).size).toBe(texts.length);
    expect(texts.filter((text) => text.includes("2026-04-25")).length).toBeGreaterThan(0);
  });

  test("every limit that a day would violate, by its name or its place", () => {
    const puts = { supplies: [{ value: 2, unit: "lb/1000 ft2", of: "N" }] };
    const amount = {
      amount: { value: 1, unit: "lb/1000 ft2", of: "N" },
      per: "application",
      source,
    } as const;
    const { notPlaced } = schedule({
      season,
      treatments: [{ id: "a", puts }],
      limits: [{ id: "one", ...amount }, amount],
    });
    expect(notPlaced[0]?.reasons.at(-1)?.text).toBe(
      "On 2026-05-01 it would violate one, limits[1]; no day found is within all stated limits.",
    );
  });

  test("what was checked, where one of two treatments asks for it", () => {
    const checked = (more: object) =>
      schedule({ season, treatments: [{ id: "a", ...more }, { id: "b" }] }).checked;
    const degreeDays = {
      method: "simple average",
      base: { value: 0, unit: "°C" },
      interval: { value: 200, unit: "°C d" },
      source,
    };
    const heat = "degree-days against the growing-degree-day intervals";
    expect(checked({ degreeDays })).toContain(heat);
    expect(checked({})).toEqual(["dates against the stated intervals"]);
    expect(checked({ use: "fertilizer" })).toContain("treatments against the turf, as far as it is known");
  });
});
