import { describe, expect, it } from "vitest";
import {
  addDays,
  type CivilDate,
  dailySeries,
  dayRuns,
  daysBetween,
  frostChance,
  frostDates,
  joinedDays,
  type MonthDay,
  quantity,
  runningMean,
} from "../../../src/index.js";
import { complaint } from "../../errors.js";

const series = (values: readonly (number | null)[], start: CivilDate = "2026-04-01", unit = "°C") =>
  dailySeries({ start, unit, what: "lowest", source: "invented", values });

/** Minima from a day to another, 10 °C but for the days that are listed. */
const record = (from: CivilDate, to: CivilDate, cold: Readonly<Record<string, number | null>>) =>
  series(
    Array.from({ length: daysBetween(from, to) + 1 }, (_, i) => {
      const told = cold[addDays(from, i)];
      return told === undefined ? 10 : told;
    }),
    from,
  );
const frostsOf = (days: readonly string[]) => Object.fromEntries(days.map((day) => [day, -1]));

describe("first and last frost, by hand", () => {
  // Ten winters from July 2000 on. First frosts on 1 to 10 October, last ones from 10 down to 1 April: the winter with the
  // earliest first frost has the latest last one.
  const cold = Array.from({ length: 10 }, (_, i) => [
    `${2000 + i}-10-${String(i + 1).padStart(2, "0")}`,
    `${2001 + i}-04-${String(10 - i).padStart(2, "0")}`,
  ]).flat();
  const minima = record("2000-07-24", "2010-07-23", frostsOf(cold));

  it("one winter of ten is later than 9 April, and one of ten earlier than 2 October", () => {
    const dates = frostDates({ minima });
    expect(dates.winters.map(({ from }) => from)).toEqual(
      Array.from({ length: 10 }, (_, i) => `${2000 + i}-07-24`),
    );
    expect(dates.last).toEqual({
      winters: 10,
      withoutFrost: 0,
      odds: [
        { percent: 10, date: "04-09" },
        { percent: 50, date: "04-05" },
        { percent: 90, date: "04-01" },
      ],
    });
    expect(dates.first.odds).toEqual([
      { percent: 10, date: "10-02" },
      { percent: 50, date: "10-06" },
      { percent: 90, date: "10-10" },
    ]);
  });

  it("where half of the winters have a frost, the earliest has the chance of half and no date a higher one", () => {
    const half = record("2000-07-24", "2010-07-23", frostsOf(cold.slice(0, 10)));
    const { last, first } = frostDates({ minima: half, percents: [40, 50, 51] });
    expect(last.withoutFrost).toBe(5);
    expect(last.odds.map(({ date }) => date)).toEqual(["04-06", "04-06", null]);
    expect(first.odds.map(({ date }) => date)).toEqual(["10-05", "10-05", null]);
  });

  it("a third of three winters is a third, whatever the last digit", () => {
    const three = record("2000-07-24", "2003-07-23", frostsOf(cold.slice(0, 6)));
    const { last } = frostDates({ minima: three, percents: [33.3333333333, 66.6666666667] });
    expect(last.odds.map(({ date }) => date)).toEqual(["04-09", "04-08"]);
  });

  it("a frost at the threshold counts, in either scale", () => {
    const first = (value: number, threshold: number, unit: "°F" | "°C") =>
      frostDates({
        minima: record("2000-07-24", "2001-07-23", { "2000-11-05": value }),
        threshold: quantity(threshold, unit),
      }).winters[0]?.firstFrost;
    expect(first(0, 32, "°F")).toBe("2000-11-05");
    expect(first(-2, 28.4, "°F")).toBe("2000-11-05");
    expect(first(0.1, 0, "°C")).toBe(null);
  });

  it("nine missing days before a frost are borne where none is stated, ten are not", () => {
    const state = (gaps: number, missingDays?: number) => {
      const missing = Array.from({ length: gaps }, (_, i) => [addDays("2000-09-01", i), null]);
      const minima = record("2000-07-24", "2001-07-23", {
        ...Object.fromEntries(missing),
        "2000-10-05": -1,
      });
      return frostDates({ minima, ...(missingDays === undefined ? {} : { missingDays }) }).winters[0];
    };
    expect(state(9)).toMatchObject({ firstState: "frost", firstFrost: "2000-10-05" });
    expect(state(10)).toMatchObject({ firstState: "not known", firstFrost: null, lastState: "frost" });
    expect(state(1, 0)).toMatchObject({ firstState: "not known" });
    expect(state(0, 0)).toMatchObject({ firstState: "frost" });
  });

  it("a winter without a frost needs a whole record too", () => {
    const state = (gaps: number) => {
      const missing = Array.from({ length: gaps }, (_, i) => [addDays("2000-09-01", i), null]);
      return frostDates({ minima: record("2000-07-24", "2001-07-23", Object.fromEntries(missing)) })
        .winters[0];
    };
    expect(state(9)).toMatchObject({ firstState: "no frost", lastState: "no frost" });
    expect(state(10)).toMatchObject({ firstState: "not known", lastState: "not known" });
  });

  it("by the calendar, also in a leap year, whose 10 March is a day more after July than that of other years", () => {
    const frosts = frostsOf(["2001-03-11", "2002-03-11", "2003-03-10", "2004-03-10"]);
    const dates = frostDates({ minima: record("2000-07-24", "2004-07-23", frosts), percents: [49, 50, 51] });
    expect(dates.last.odds.map(({ date }) => date)).toEqual(["03-11", "03-10", "03-10"]);
    expect(frostChance({ dates, date: "03-10", side: "after" }).in("%")).toBe(50);
    const mixed = frostsOf(["2001-03-11", "2002-03-12", "2003-03-13", "2004-03-10"]);
    const fourth = frostDates({ minima: record("2000-07-24", "2004-07-23", mixed), percents: [50, 75] });
    expect(fourth.last.odds.map(({ date }) => date)).toEqual(["03-11", "03-10"]);
  });

  it("lists the winters of which the record has a day", () => {
    const froms = (start: CivilDate, values: number[]) =>
      frostDates({ minima: series(values, start) }).winters.map(({ from }) => from);
    expect(froms("2026-07-24", [5])).toEqual(["2026-07-24"]);
    expect(froms("2026-07-23", [5, 5])).toEqual(["2025-07-24", "2026-07-24"]);
    expect(froms("2026-08-01", [5])).toEqual(["2026-07-24"]);
  });

  it("a series that ends on the dividing day begins one more winter, and the first year has one", () => {
    const froms = (minima: ReturnType<typeof series>) =>
      frostDates({ minima }).winters.map(({ from }) => from);
    expect(froms(series([5], "2026-07-24"))).toEqual(["2026-07-24"]);
    expect(froms(series([5, 5], "2026-07-23"))).toEqual(["2025-07-24", "2026-07-24"]);
    expect(froms(series([5], "2026-07-23"))).toEqual(["2025-07-24"]);
    expect(froms(series([5], "0001-08-01"))).toEqual(["0001-07-24"]);
  });

  it("a side that no winter tells has no odds", () => {
    expect(frostDates({ minima: series([5], "2026-07-23") }).last).toEqual({
      winters: 0,
      withoutFrost: 0,
      odds: [],
    });
  });
});

describe("how many winters", () => {
  const years = (n: number) => record("1990-07-24", `${1990 + n}-07-23` as CivilDate, {});
  const codes = (minima: ReturnType<typeof series>) =>
    frostDates({ minima }).findings.map(({ code, params, source }) => [code, params, source]);
  it("thirty are enough for the odds, 29 are few", () => {
    expect(codes(years(30))).toEqual([]);
    expect(codes(years(29))).toEqual([
      ["frost/few-winters", { winters: 29 }, expect.objectContaining({ publisher: "Utah Climate Center" })],
    ]);
  });

  it("the side with fewer winters is the one that counts", () => {
    // Thirty winters, of which the last one is cut: its last frost cannot be told, its first one can.
    const cold = frostsOf(["2019-10-01"]);
    const minima = record("1990-07-24", "2020-03-01", cold);
    const dates = frostDates({ minima });
    expect([dates.first.winters, dates.last.winters]).toEqual([30, 29]);
    expect(dates.findings[0]?.params).toEqual({ winters: 29 });
  });

  it("thirty days on either side of the dividing day belong to it", () => {
    const near = (day: string) =>
      frostDates({ minima: record("2000-01-01", "2000-12-31", { [day]: 0 }) }).findings.filter(
        ({ code }) => code === "frost/near-dividing-day",
      );
    expect(near("2000-06-23")).toEqual([]);
    expect(near("2000-06-24")).toHaveLength(1);
    expect(near("2000-08-23")[0]).toMatchObject({
      path: "divide",
      params: { divide: "07-24", days: 30, winters: 1 },
    });
    expect(near("2000-08-24")).toEqual([]);
  });
});

describe("the chance of a frost by the day", () => {
  const minima = record("2000-07-24", "2001-07-23", frostsOf(["2000-10-05", "2001-03-01"]));
  const dates = frostDates({ minima });
  const chance = (date: string, side: "after" | "before") =>
    frostChance({ dates, date: date as MonthDay, side }).in("%");

  it("all of the winter lies after the dividing day, and none before it", () => {
    expect([chance("07-24", "after"), chance("07-24", "before")]).toEqual([100, 0]);
    expect([chance("07-23", "after"), chance("07-23", "before")]).toEqual([0, 100]);
  });

  it("29 February is 1 March in a common year and itself in a leap year", () => {
    expect([chance("02-29", "after"), chance("02-28", "after")]).toEqual([0, 100]);
    const leap = frostDates({ minima: record("2003-07-24", "2004-07-23", frostsOf(["2004-03-01"])) });
    expect(frostChance({ dates: leap, date: "02-29", side: "after" }).in("%")).toBe(100);
  });

  it("takes ten thousand winters", () => {
    const winter = dates.winters[0];
    const many = { ...dates, winters: Array(10_000).fill(winter) };
    expect(frostChance({ dates: many, date: "01-01", side: "after" }).in("%")).toBe(100);
  });
});

describe("runs at the threshold", () => {
  const runs = (values: readonly (number | null)[], side?: "at or above" | "at or below", limit = 5000) =>
    dayRuns({
      series: series(values, "2026-04-01", "mm"),
      threshold: quantity(limit, "mm"),
      days: 1,
      ...(side === undefined ? {} : { side }),
    }).runs.map(({ from, days }) => [from.slice(8), days]);

  it("a day at the threshold counts on either side, and rounding takes none away", () => {
    expect(runs([4999, 5000, 5001])).toEqual([["02", 2]]);
    expect(runs([4999, 5000, 5001], "at or below")).toEqual([["01", 2]]);
    // A millionth of a millimeter in five meters is rounding.
    expect(runs([4999.999999])).toEqual([["01", 1]]);
    expect(runs([5000.000001], "at or below")).toEqual([["01", 1]]);
    expect(runs([4999.9], "at or above")).toEqual([]);
    expect(runs([0.09], "at or above", 0.1)).toEqual([]);
    expect(runs([0.0999999995], "at or above", 0.1)).toEqual([["01", 1]]);
  });

  it("a run to the last day is open", () => {
    const found = dayRuns({ series: series([6, 7, 1, 8, 9]), threshold: quantity(5, "°C"), days: 2 });
    expect(found.runs.map(({ to, complete, open }) => [to, complete, open])).toEqual([
      ["2026-04-02", "2026-04-02", false],
      ["2026-04-05", "2026-04-05", true],
    ]);
  });

  it("a stored series may say of a day that nothing is known of its basis", () => {
    const joined = joinedDays({ observed: series([6, null, 7]), what: "soil" });
    expect(joined.basis).toEqual(["observed", null, "observed"]);
    const found = dayRuns({ series: joined, threshold: quantity(5, "°C"), days: 1 });
    expect(found.runs.map(({ basis }) => basis)).toEqual(["observed", "observed"]);
  });
});

describe("joined days", () => {
  it("names each source with what it gave, and takes fifty years", () => {
    const joined = joinedDays({
      observed: series([1], "1950-01-01"),
      normal: series([2], "2000-02-07"),
      what: "soil at 1 in",
    });
    expect(joined.series.source).toBe("observed: invented; normal: invented");
    expect(joined.series.values).toHaveLength(18_300);
  });
});

describe("running means", () => {
  it("begin on the day on which the window is full", () => {
    expect(runningMean({ series: series([1, 2, 3, 4]), days: 3 }).values).toEqual([null, null, 2, 3]);
    expect(runningMean({ series: series([1, null, 3, 4]), days: 3, missing: 1 }).values).toEqual([
      null,
      null,
      2,
      3.5,
    ]);
  });

  it("are no zero below zero", () => {
    const [, mean] = runningMean({ series: series([-5e-324, 0]), days: 2 }).values;
    expect(Object.is(mean, 0)).toBe(true);
  });

  it("take a year of days", () => {
    expect(complaint(() => runningMean({ series: series([1]), days: 366, missing: 365 }))).toBe(
      "nothing thrown",
    );
  });
});
