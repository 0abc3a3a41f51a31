// Small seasons in whole, as JSON has them: every field, and nothing beside.
import { describe, expect, test } from "vitest";
import { type SeasonPlan, schedule } from "../../../src/plan/index.js";
import { problemsOf } from "../../errors.js";

const season = { from: "2026-04-01", to: "2026-04-20" } as const;
const source = "label (invented)";
const whole = (plan: Partial<SeasonPlan>) =>
  JSON.parse(JSON.stringify(schedule({ season, treatments: [{ id: "a" }], ...plan })));
const always = "Weather on the day, and everything else on the labels and in local codes.";
const wanted = (to: string = season.to) => ({
  code: "schedule/within",
  text: `Wanted from 2026-04-01 to ${to}.`,
});
const shares = { code: "schedule/shared", text: "Shares the visit of 2026-04-01." };
const first = (more: object = {}) => ({
  treatment: "a",
  number: 1,
  parts: [],
  earliestByStatedRules: "2026-04-01",
  reapplyBy: null,
  reasons: [wanted()],
  ...more,
});

describe("a season in whole", () => {
  test("one treatment, once, on the first day", () => {
    expect(whole({})).toEqual({
      type: "schedule",
      version: 1,
      season,
      visits: [{ date: "2026-04-01", applications: [first()] }],
      notPlaced: [],
      findings: [],
      checked: ["dates against the stated intervals"],
      notChecked: ["Limits: none stated.", always],
    });
  });

  test("two a day, with limits that one of them is not told for", () => {
    const found = whole({
      treatments: [
        { id: "a", parts: ["lawn"], puts: { supplies: [{ value: 0.5, unit: "lb/acre", of: "N" }] } },
        { id: "b" },
      ],
      limits: [{ amount: { value: 1, unit: "lb/acre", of: "N" }, per: "calendar year", source }],
    });
    expect(found.visits).toEqual([
      {
        date: "2026-04-01",
        applications: [first({ parts: ["lawn"] }), first({ treatment: "b", reasons: [wanted(), shares] })],
      },
    ]);
    expect(found.checked).toEqual([
      "dates against the stated intervals",
      "amounts against the stated limits",
    ]);
    expect(found.notChecked).toEqual(["b: the limits, because its amounts are not stated.", always]);
  });
});

describe("repeats of a season in whole", () => {
  test("a repeat: ten days later, by the last useful day", () => {
    const { visits, notPlaced } = whole({
      treatments: [{ id: "a", interval: { minimumDays: 7, maximumDays: 10, source } }],
    });
    expect(visits.map(({ date }: { date: string }) => date)).toEqual(["2026-04-01", "2026-04-11"]);
    expect(visits[1].applications[0]).toMatchObject({
      number: 2,
      earliestByStatedRules: "2026-04-08",
      reapplyBy: "2026-04-11",
    });
    // The next would be due on the 21st: the season is over for it, and that is no failure.
    expect(notPlaced).toEqual([]);
  });
});

describe("the end of a season", () => {
  test("a third that does not fit into the season is told with its number", () => {
    const { notPlaced } = whole({
      treatments: [{ id: "a", count: 3, interval: { minimumDays: 10, source } }],
    });
    expect(notPlaced).toEqual([
      {
        treatment: "a",
        number: 3,
        reasons: expect.arrayContaining([
          {
            code: "schedule/after-end",
            text: "The first day by the stated rules, 2026-04-21, is after 2026-04-20.",
          },
        ]),
      },
    ]);
  });
  test("exactly on the last day it fits", () => {
    const { visits } = whole({ treatments: [{ id: "a", count: 2, interval: { minimumDays: 19, source } }] });
    expect(visits.map(({ date }: { date: string }) => date)).toEqual(["2026-04-01", "2026-04-20"]);
  });
});

describe("young turf and temperatures", () => {
  test("what a label says of young turf is held against what is known of it", () => {
    const label = { minimumMowings: 4, source };
    const told = (treatment: object, turf: object) => {
      const { findings, checked } = whole({ treatments: [{ id: "a", ...treatment }], turf } as never);
      return [findings.map(({ params }: { params: object }) => params), checked.length];
    };
    const use = "post-emergent herbicide";
    expect(told({ use, label }, { established: true, mowings: 9 })[0]).toEqual([]);
    expect(JSON.stringify(told({ use, label }, { mowings: 3 })[0])).toContain('"treatment":"a"');
    expect(told({ use }, { established: true })[1]).toBe(2);
    expect(told({}, { established: true })[1]).toBe(1);
  });

  test("degree-days whose temperatures end before them are told of, and those that do not are used", () => {
    const days = (count: number) => ({
      type: "daily-temperatures" as const,
      version: 1 as const,
      start: "2026-04-01" as const,
      unit: "°C" as const,
      sensor: "air" as const,
      min: Array<number>(count).fill(15),
      max: Array<number>(count).fill(25),
      source: "station",
    });
    const degreeDays = {
      method: "simple average",
      base: { value: 0, unit: "°C" },
      interval: { value: 100, unit: "°C d" },
      source: "abstract",
    } as const;
    const plan = (count: number) =>
      whole({ treatments: [{ id: "a", count: 2, degreeDays }], observed: days(count) });
    // 20 a day: five days after the first.
    expect(plan(20).visits.map(({ date }: { date: string }) => date)).toEqual(["2026-04-01", "2026-04-06"]);
    expect(plan(20).notChecked.filter((text: string) => text.startsWith("a:"))).toEqual([]);
    const short = plan(3);
    expect(short.visits).toHaveLength(1);
    expect(short.notPlaced.map(({ number }: { number: number }) => number)).toEqual([2]);
    expect(short.notChecked.filter((text: string) => text.startsWith("a:"))).toEqual([
      expect.stringMatching(/^a: the growing-degree-day interval since 2026-04-01/),
    ]);
  });
});

const told = (plan: unknown): readonly string[] =>
  problemsOf(() => schedule(plan as SeasonPlan)).map(
    ({ code, path, expected }) => `${code} ${path}: ${expected}`,
  );

const faulty = {
  season: { from: "2026-04-31", to: "2026-04-20", until: 1 },
  shareWithinDays: 1.5,
  facts: 5,
  turf: {
    mowings: 1.5,
    species: 5,
    stress: ["cold"],
    from: "air",
    established: "no",
    since: "x",
    colour: 1,
  },
  limits: 5,
  avoid: {},
  treatments: [
    5,
    {},
    {
      id: "b",
      count: 1.5,
      parts: "lawn",
      within: { from: "2026-04-20", to: "2026-04-01" },
      applied: "x",
    },
    {
      id: "b",
      count: 367,
      parts: [],
      within: 5,
      applied: ["x"],
      interval: 5,
      degreeDays: 5,
      colour: 1,
    },
    {
      id: "c",
      count: 0,
      parts: [""],
      use: "food",
      activeIngredient: 5,
      label: { minimumMowings: 1.5 },
    },
    { id: "d", interval: { minimumDays: 9, maximumDays: 3, source }, label: 5 },
  ],
};

describe("a season that is wrong in many places", () => {
  test("all of it, each at its place", () => {
    expect(told(faulty)).toEqual([
      "type season.until: one of the fields from, to",
      "range shareWithinDays: a whole number of days, 0 to 366",
      "type facts: facts of the application",
      "type turf.colour: one of the fields species, from, since, established, mowings, seedingOn, stress, maximumTemperature",
      "type limits: a list of limits",
      "type treatments[0]: a treatment",
      "missing treatments[1].id: a name for this treatment",
      "type treatments[2].parts: a list with at least one name of a part",
      "date treatments[2].within.to: a date not earlier than 2026-04-20",
      "type treatments[2].applied: a list of dates",
      "range treatments[2].count: a whole number of applications, 1 to 366",
      "type treatments[3].colour: one of the fields id, parts, interval, within, count, degreeDays, applied, puts, use, activeIngredient, label",
      "missing treatments[4].parts[0]: the name of a part",
      'type treatments[4].use: one of "pre-emergent herbicide", "post-emergent herbicide", "growth regulator", "fertilizer", "fungicide", "insecticide", "other"',
      "range treatments[4].label.minimumMowings: a whole number",
      "missing treatments[4].label.source: where it is stated, and when that was read",
      "type treatments[4].activeIngredient: a name",
      "range treatments[4].count: 1 or more",
      "conflict treatments[5].interval.minimumDays: not more than maximumDays, which is 3",
      "type treatments[5].label: what the label says about the turf",
    ]);
  });
});

describe("a season at its limits", () => {
  test("no plan, an empty one, and a season that is too long", () => {
    expect(told(5)).toEqual(["type plan: a season"]);
    expect(told({})).toEqual([
      "missing season: dates from and to",
      "missing treatments: a list with at least one treatment",
    ]);
    const treatments = [{ id: "a" }];
    expect(told({ season: { from: "2026-04-01", to: "2036-04-02" }, treatments })).toEqual([
      "range season.to: 2036-04-01 or earlier: at most ten years; plan a longer time in parts",
    ]);
    expect(told({ season: { from: "2026-04-01", to: "2036-04-01" }, treatments })).toEqual([]);
    expect(told({ season: { from: "2026-04-02", to: "2026-04-01" }, treatments })).toEqual([
      "date season.to: a date not earlier than 2026-04-02",
    ]);
    expect(
      told({ season: { from: "2026-04-01", to: "2026-04-01" }, treatments, shareWithinDays: 366 }),
    ).toEqual([]);
    expect(told({ season, treatments, shareWithinDays: 367 })).toEqual([
      "range shareWithinDays: 366 or less",
    ]);
  });
});
