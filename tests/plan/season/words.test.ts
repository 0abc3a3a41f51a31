// Why a date of a season is what it is, what is told of it, and what is refused: each at its limit, in the words of the schedule.
import { describe, expect, test } from "vitest";
import { dailyNormals } from "../../../src/calendar/index.js";
import { ledger } from "../../../src/ledger/index.js";
import { type SeasonPlan, type SeasonTreatment, schedule } from "../../../src/plan/index.js";
import { problemsOf } from "../../errors.js";

const season = { from: "2026-04-01", to: "2026-09-30" } as const;
const label = "label (invented)";
const plan = (treatments: readonly SeasonTreatment[], more: Partial<SeasonPlan> = {}) =>
  schedule({ season, treatments, ...more });
const reasonsOf = (result: ReturnType<typeof schedule>, visit: number, application = 0) =>
  result.visits[visit]?.applications[application]?.reasons.map(({ code, text }) => `${code}: ${text}`);
const every = (
  minimumDays: number,
  maximumDays: number,
  more: Partial<SeasonTreatment> = {},
): SeasonTreatment => ({
  id: "a",
  interval: { minimumDays, maximumDays, source: label },
  ...more,
});

describe("why a day", () => {
  test("a first application is wanted from the first day on; a repeat has its rule", () => {
    const result = plan([every(14, 60)]);
    expect(reasonsOf(result, 0)?.[0]).toBe("schedule/within: Wanted from 2026-04-01 to 2026-09-30.");
    expect(reasonsOf(result, 1)?.join()).not.toContain("schedule/within");
    expect(result.visits[1]?.applications[0]).toMatchObject({
      treatment: "a",
      number: 2,
      parts: [],
      earliestByStatedRules: "2026-04-15",
      reapplyBy: "2026-05-31",
    });
    expect(result.visits[0]?.applications[0]).toMatchObject({ number: 1, reapplyBy: null });
    expect([result.type, result.version, result.season]).toEqual(["schedule", 1, season]);
  });

  test("a treatment without a rule goes on the day after the last time, and says within what it is wanted", () => {
    const result = plan([
      { id: "core", applied: ["2026-05-10"], within: { from: "2026-05-01", to: "2026-06-30" } },
    ]);
    expect(result.visits[0]?.date).toBe("2026-05-11");
    expect(reasonsOf(result, 0)?.[0]).toBe("schedule/within: Wanted from 2026-05-01 to 2026-06-30.");
  });

  test("a shared visit, as many days away as the caller says and no further", () => {
    const two = [every(20, 30, { count: 2 }), { ...every(20, 33, { count: 2 }), id: "b" }];
    expect(reasonsOf(plan(two, { shareWithinDays: 3 }), 1, 1)?.at(-1)).toBe(
      "schedule/shared: Shares the visit of 2026-05-01; the target was 2026-05-04.",
    );
    expect(plan(two, { shareWithinDays: 2 }).visits.length).toBe(3);
  });

  test("a day that is avoided: the last one before it, with the reason", () => {
    const avoid = { times: [{ from: "2026-05-01", to: "2026-05-03", why: "tournament" }] } as const;
    const result = plan([every(20, 30, { count: 2 })], { avoid });
    // 1 April and 30 days is 1 May.
    expect(result.visits[1]?.date).toBe("2026-04-30");
    expect(reasonsOf(result, 1)?.at(-1)).toBe(
      "schedule/moved: Moved from 2026-05-01 to the last day before it.",
    );
    expect(reasonsOf(result, 1)?.join()).toContain("tournament");
    expect(reasonsOf(plan([every(20, 30, { count: 2 })]), 1)?.join()).not.toContain("schedule/moved");
  });

  test("late by a day, or by more", () => {
    const late = (to: string) =>
      plan([every(28, 30, { count: 2 })], {
        avoid: { times: [{ from: "2026-04-20", to, why: "tournament" }] },
      } as never).findings;
    expect(late("2026-05-01")).toEqual([
      {
        code: "schedule/late",
        severity: "caution",
        path: "treatments[0]",
        params: { treatment: "a", number: 2, date: "2026-05-02", reapplyBy: "2026-05-01", days: 1 },
        text: "a: 2026-05-02 is 1 day after 2026-05-01, the reapply-by date.",
      },
    ]);
    expect(late("2026-05-02")[0]?.text).toContain("2026-05-03 is 2 days after");
    expect(late("2026-04-30")).toEqual([]);
  });

  test("by growing degree days, with who says so", () => {
    const flat = (value: number) => Array<number>(366).fill(value);
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
      source: "abstract, 2009",
    } as const;
    const result = plan([{ id: "regulate", degreeDays, count: 2 }], { normals });
    expect(reasonsOf(result, 1)?.at(-1)).toBe(
      "schedule/degree-days: By growing degree days, the application of 2026-04-01 lasts until 2026-04-11.",
    );
    expect(result.checked).toContain("degree-days against the growing-degree-day intervals");
    // With a rule in days beside it, the earlier of the two counts.
    const both = (maximumDays: number) =>
      plan(
        [{ id: "regulate", degreeDays, count: 2, interval: { minimumDays: 5, maximumDays, source: label } }],
        { normals },
      ).visits[1]?.date;
    expect([both(8), both(20)]).toEqual(["2026-04-09", "2026-04-11"]);
  });
});

describe("limits", () => {
  const puts = { supplies: [{ value: 0.8, unit: "lb/1000 ft2", of: "N" }] };
  const limit = (more: object = {}) => ({
    amount: { value: 1, unit: "lb/1000 ft2", of: "N" },
    per: { days: 30 },
    source: "plan",
    ...more,
  });
  test("an application moves to the first day within all of them, by name or by place", () => {
    const on = (one: object) => plan([{ ...every(14, 14, { count: 2 }), puts }], { limits: [one] } as never);
    expect(on(limit({ id: "thirty" })).visits[1]?.date).toBe("2026-05-01");
    expect(reasonsOf(on(limit({ id: "thirty" })), 1)?.at(-1)).toBe(
      "schedule/limit: On 2026-04-15 it would violate thirty; 2026-05-01 is the first day within all stated limits.",
    );
    expect(reasonsOf(on(limit()), 1)?.at(-1)).toContain("it would violate limits[0];");
    expect(on(limit()).checked).toContain("amounts against the stated limits");
  });
  test("what never fits is not placed, and says why", () => {
    const never = plan([{ ...every(14, 14, { count: 1 }), puts }], {
      limits: [limit({ amount: { value: 0.5, unit: "lb/1000 ft2", of: "N" } })],
    } as never);
    expect(never.visits).toEqual([]);
    expect(never.notPlaced).toMatchObject([{ treatment: "a", number: 1 }]);
    expect(never.notPlaced[0]?.reasons.at(-1)?.text).toBe(
      "On 2026-04-01 it would violate limits[0]; no day found is within all stated limits.",
    );
  });
  test("a day that is left comes after the end", () => {
    const short = plan(
      [{ ...every(14, 14, { count: 2 }), puts, within: { from: "2026-04-01", to: "2026-04-30" } }],
      {
        limits: [limit()],
      } as never,
    );
    expect(short.notPlaced[0]?.reasons.at(-1)).toMatchObject({
      code: "schedule/after-end",
      text: "The first open day, 2026-05-01, is after 2026-04-30.",
    });
    const rule = plan([
      {
        id: "a",
        count: 2,
        interval: { minimumDays: 40, source: label },
        within: { from: "2026-04-01", to: "2026-04-30" },
      },
    ]);
    expect(rule.notPlaced[0]?.reasons.at(-1)).toMatchObject({
      code: "schedule/after-end",
      text: "The first day by the stated rules, 2026-05-11, is after 2026-04-30.",
    });
  });
  test("what was checked and what was not", () => {
    const bare = plan([every(14, 60)]);
    expect(bare.checked).toEqual(["dates against the stated intervals"]);
    expect(bare.notChecked).toContain("Limits: none stated.");
    expect(bare.notChecked.at(-1)).toBe(
      "Weather on the day, and everything else on the labels and in local codes.",
    );
    const unstated = plan([every(14, 60)], { limits: [limit()] } as never);
    expect(unstated.notChecked).toContain("a: the limits, because its amounts are not stated.");
    expect(unstated.notChecked).not.toContain("Limits: none stated.");
    const stated = plan([{ ...every(14, 60), puts }], { limits: [limit()] } as never);
    expect(stated.notChecked).not.toContain("a: the limits, because its amounts are not stated.");
    expect(bare.notChecked).not.toContain("a: the limits, because its amounts are not stated.");
    expect(plan([every(14, 60, { use: "growth regulator" })]).checked).toContain(
      "treatments against the turf, as far as it is known",
    );
  });
  test("what the ledger has of a treatment counts as a time that it was done, and of another does not", () => {
    const book = (treatment: string) => ledger([{ id: "x", date: "2026-03-25", treatment }]);
    expect(
      plan([every(14, 60, { count: 1 })], { ledger: book("a") }).visits[0]?.applications[0]
        ?.earliestByStatedRules,
    ).toBe("2026-04-08");
    expect(
      plan([every(14, 60, { count: 1 })], { ledger: book("b") }).visits[0]?.applications[0]
        ?.earliestByStatedRules,
    ).toBe("2026-04-01");
  });
});

describe("a season that is refused", () => {
  const told = (more: object): readonly string[] =>
    problemsOf(() => schedule({ season, treatments: [every(14, 60)], ...more } as never)).map(
      ({ code, path, expected }) => `${code} ${path}: ${expected}`,
    );
  test.each<readonly [string, object]>([
    ["missing season: dates from and to", { season: undefined }],
    [
      "date season.to: a date not earlier than 2026-04-01",
      { season: { from: "2026-04-01", to: "2026-03-31" } },
    ],
    [
      "range season.to: 2036-04-01 or earlier: at most ten years; plan a longer time in parts",
      { season: { from: "2026-04-01", to: "2036-04-02" } },
    ],
    ["range shareWithinDays: 0 or more", { shareWithinDays: -1 }],
    ["range shareWithinDays: 366 or less", { shareWithinDays: 367 }],
    ["type treatments[0]: a treatment", { treatments: [5] }],
    ["missing treatments[0].id: a name for this treatment", { treatments: [{}] }],
    [
      "duplicate treatments[1].id: an id that no other treatment has",
      { treatments: [{ id: "a" }, { id: "a" }] },
    ],
    ["type treatments[0].parts[0]: the name of a part", { treatments: [{ id: "a", parts: [5] }] }],
    ["type treatments[0].applied: a list of dates", { treatments: [{ id: "a", applied: "2026-04-01" }] }],
    ["range treatments[0].count: 1 or more", { treatments: [{ id: "a", count: 0 }] }],
    ["range treatments[0].count: 366 or less", { treatments: [{ id: "a", count: 367 }] }],
    ["type treatments[0].within: dates from and to", { treatments: [{ id: "a", within: 5 }] }],
    ["type treatments[0].activeIngredient: a name", { treatments: [{ id: "a", activeIngredient: 5 }] }],
    [
      "type treatments[0].degreeDays: a growing-degree-day interval",
      { treatments: [{ id: "a", degreeDays: 5 }] },
    ],
    ["type treatments[0].label: what the label says about the turf", { treatments: [{ id: "a", label: 5 }] }],
    ["type turf: what is known about the turf", { turf: 5 }],
  ])("%s", (expected, more) => expect(told(more)).toContain(expected));

  test("at the limits it is taken", () => {
    expect(told({ season: { from: "2026-04-01", to: "2036-04-01" }, treatments: [{ id: "a" }] })).toEqual([]);
    expect(told({ season: { from: "2026-04-01", to: "2026-04-01" }, shareWithinDays: 366 })).toEqual([]);
    expect(told({ treatments: [{ id: "a", count: 366 }], shareWithinDays: 0 })).toEqual([]);
    expect(problemsOf(() => schedule(5 as never))[0]?.expected).toBe("a season");
  });
});
