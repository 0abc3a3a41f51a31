// What is due while a mode of action has come too often in a row, and what comes twice. Each date counted on a calendar.
import { describe, expect, test } from "vitest";
import { ledger } from "../../../src/ledger/index.js";
import { checkLimits, type Limit } from "../../../src/limits/index.js";
import { type SeasonPlan, type SeasonTreatment, schedule } from "../../../src/plan/index.js";

const source = "label (invented)";
const season = { from: "2026-06-01", to: "2026-07-31" } as const;
const active = (name: string) => ({ supplies: [{ value: 0.1, unit: "lb/acre", of: `ai:${name}` }] });
const run = (atMostInARow: number): Limit => ({
  kind: "rotation",
  group: "FRAC 11",
  of: ["ai:azoxystrobin"],
  atMostInARow,
  source,
});
const strobilurin: SeasonTreatment = { id: "strobilurin", puts: active("azoxystrobin") };
const other = (from: `${number}-${number}-${number}`): SeasonTreatment => ({
  id: "other",
  within: { from, to: season.to },
  puts: active("propiconazole"),
});
const before = ledger([{ id: "a", date: "2026-05-20", ...active("azoxystrobin") }]);
const made = (plan: Partial<SeasonPlan>) =>
  schedule({ season, ledger: before, limits: [run(1)], treatments: [], ...plan });
const days = (plan: Partial<SeasonPlan>) =>
  made(plan).visits.map(({ date, applications }) => [
    date,
    ...applications.map(({ treatment }) => treatment),
  ]);

describe("a treatment that would make a run too long", () => {
  test("waits for the one that ends it, and comes the day after", () => {
    expect(days({ treatments: [strobilurin, other("2026-06-05")] })).toEqual([
      ["2026-06-05", "other"],
      ["2026-06-06", "strobilurin"],
    ]);
  });

  test("says why it comes so late", () => {
    const { visits, notPlaced } = made({ treatments: [strobilurin, other("2026-06-05")] });
    expect(notPlaced).toEqual([]);
    expect(visits[1]?.applications[0]?.reasons.map(({ text }) => text)).toContain(
      "On 2026-06-01 it would violate limits[0]; apply another group first.",
    );
  });

  test("comes on the first day after it that is not avoided, and within its own dates only", () => {
    const treatments = [strobilurin, other("2026-06-05")];
    // 5 June 2026 is a Friday.
    expect(days({ treatments, avoid: { weekdays: [6, 7] } })[1]).toEqual(["2026-06-08", "strobilurin"]);
    const closed = { ...strobilurin, within: { from: "2026-06-01", to: "2026-06-05" } } as const;
    const { notPlaced } = made({ treatments: [closed, other("2026-06-05")] });
    expect(notPlaced.map(({ treatment }) => treatment)).toEqual(["strobilurin"]);
  });

  test("one of the ledger that comes later ends the run as well", () => {
    const later = ledger([...before.entries, { id: "b", date: "2026-06-10", ...active("propiconazole") }]);
    expect(days({ ledger: later, treatments: [strobilurin] })).toEqual([["2026-06-11", "strobilurin"]]);
  });

  test("alternates through a season: every one of them keeps the limit beside all others", () => {
    const every = (id: string, name: string, maximumDays: number): SeasonTreatment => ({
      id,
      interval: { minimumDays: 7, maximumDays, source },
      puts: active(name),
    });
    const { visits, notPlaced } = made({
      treatments: [every("strobilurin", "azoxystrobin", 10), every("other", "propiconazole", 14)],
    });
    expect(notPlaced).toEqual([]);
    const done = visits.flatMap(({ date, applications }) =>
      applications.map(({ treatment }, i) => ({
        id: `${date} ${i}`,
        date,
        ...active(treatment === "other" ? "propiconazole" : "azoxystrobin"),
      })),
    );
    expect(done.length).toBeGreaterThan(6);
    for (const { id, ...proposal } of done) {
      const others = ledger([...before.entries, ...done.filter((one) => one.id !== id)]);
      const { tests } = checkLimits({ ledger: others, limits: [run(1)], proposal });
      expect(tests.map(({ violated }) => violated)).toEqual([false]);
    }
  });

  test("is not placed where the season has none that ends the run", () => {
    const { visits, notPlaced } = made({ treatments: [strobilurin, { id: "aeration" }] });
    expect(visits.map(({ date }) => date)).toEqual(["2026-06-01"]);
    expect(notPlaced.map(({ treatment, number }) => [treatment, number])).toEqual([["strobilurin", 1]]);
  });

  test("is not placed where it is the number of the year that is used up", () => {
    const year: Limit = {
      kind: "rotation",
      group: "FRAC 11",
      of: ["ai:azoxystrobin"],
      atMost: 1,
      per: "calendar year",
      source,
    };
    const { notPlaced } = made({ limits: [year], treatments: [strobilurin, other("2026-06-05")] });
    expect(notPlaced[0]?.reasons.map(({ text }) => text)).toContain(
      "On 2026-06-01 it would violate limits[0]; 2027-01-01 is the first day within all stated limits.",
    );
  });
});

describe("no treatment comes twice on one day", () => {
  test("where its rule states no least interval", () => {
    const plan: Partial<SeasonPlan> = {
      season: { from: "2026-06-01", to: "2026-06-05" },
      limits: [],
      treatments: [{ id: "a", count: 3, interval: { maximumDays: 4, source } }],
    };
    // 1 June + 4 days is 5 June, the last day; nothing follows it.
    expect(days(plan)).toEqual([
      ["2026-06-01", "a"],
      ["2026-06-05", "a"],
    ]);
    expect(made(plan).notPlaced.map(({ number }) => number)).toEqual([3]);
  });

  test("where it was done on the first day of the season already", () => {
    const interval = { maximumApplications: { count: 9, per: "calendar year" }, source } as const;
    expect(days({ limits: [], treatments: [{ id: "a", interval, applied: [season.from] }] })).toEqual([
      ["2026-06-02", "a"],
    ]);
  });
});
