import { describe, expect, test } from "vitest";
import {
  calendarAgainstDegreeDays,
  degreeDaySchedule,
  meetsReboundCondition,
  regulatorInterval,
  regulatorIntervals,
  regulatorIntervalsFor,
} from "../../../src/interval/index.js";
import { problemsOf } from "../../errors.js";
import { model, observed, sum } from "./warm-days.js";

// What happens exactly at the end of an interval in degree-days, and the published intervals a second time.

const row = (id: string) =>
  regulatorIntervals.find((one) => one.id === id) as (typeof regulatorIntervals)[number];
const bent = () => row("trinexapac-ethyl, bentgrass green, 2009");
const auburn = () => row("trinexapac-ethyl, ultradwarf bermudagrass green, Auburn");
const countable =
  (record: unknown, supplied: object = {}) =>
  () =>
    regulatorInterval(record as never, { sensor: "air", ...supplied } as never);
describe("at the end of an interval", () => {
  const dates = (interval: number, count = 1) =>
    degreeDaySchedule({
      model: model(),
      from: "2026-05-01",
      interval: sum(interval),
      observed: observed() as never,
      count,
    } as never).visits.map(({ from, date }) => [from, date]);

  test("the day counts on which the sum is just reached, and the day of the application does not", () => {
    // 20 a day from 2 May on: 100 at the end of 6 May.
    expect(dates(100)).toEqual([["2026-05-01", "2026-05-06"]]);
    expect(dates(100.1)).toEqual([["2026-05-01", "2026-05-07"]]);
    expect(dates(20)).toEqual([["2026-05-01", "2026-05-02"]]);
  });

  test("the next interval begins at zero on the day on which the first ends", () => {
    expect(dates(80, 3)).toEqual([
      ["2026-05-01", "2026-05-05"],
      ["2026-05-05", "2026-05-09"],
      ["2026-05-09", null],
    ]);
    expect(dates(180)).toEqual([["2026-05-01", "2026-05-10"]]);
    expect(dates(180.1)).toEqual([["2026-05-01", null]]);
  });

  test("days of the calendar are late or early by whole days, with the sum that is then there", () => {
    const at = (intervalDays: number) =>
      calendarAgainstDegreeDays({
        model: model(),
        starts: ["2026-05-01"],
        intervalDays,
        interval: sum(100),
        observed: observed() as never,
      })[0];
    expect(at(5)).toMatchObject({
      byCalendar: "2026-05-06",
      byDegreeDays: "2026-05-06",
      daysLate: 0,
      intervalsAtCalendar: 1,
    });
    expect(at(8)?.daysLate).toBe(3);
    expect(at(8)?.atCalendar?.in("°C d")).toBeCloseTo(160, 9);
    expect(at(3)?.daysLate).toBe(-2);
    expect(at(9)?.intervalsAtCalendar).toBeCloseTo(1.8, 12);
    expect(at(10)).toMatchObject({ atCalendar: null, intervalsAtCalendar: null, daysLate: 5 });
  });

  test("what is left open is said where it is left open", () => {
    const open = (interval: number) =>
      degreeDaySchedule({
        model: model(),
        from: "2026-05-01",
        interval: sum(interval),
        observed: observed() as never,
      } as never).notChecked;
    expect(open(100)).toEqual([
      "Errors of the forecast, and rates, cut, water and stress that move the interval.",
    ]);
    expect(open(1000).at(-1)).toBe(
      "Dates beyond the temperatures that are given, or more than 400 days after an application.",
    );
  });
});

describe("rebound", () => {
  test("is beyond 350 and beyond 21 a day in the mean, and not at either", () => {
    const meets = (sinceApplication: number, tenDayMean: number) =>
      meetsReboundCondition({ sinceApplication, tenDayMean });
    expect([meets(350.1, 21.1), meets(350, 21.1), meets(350.1, 21), meets(0, 0)]).toEqual([
      true,
      false,
      false,
      false,
    ]);
    expect(
      meetsReboundCondition({ sinceApplication: 11, tenDayMean: 6, rule: { interval: 10, perDay: 5 } }),
    ).toBe(true);
    expect(
      meetsReboundCondition({ sinceApplication: 10, tenDayMean: 6, rule: { interval: 10, perDay: 5 } }),
    ).toBe(false);
  });
});

describe("the table of intervals", () => {
  test("what the caller has to supply is named, and what the source states is taken", () => {
    expect(regulatorInterval(bent(), { sensor: "air" }).assumed).toEqual(["sensor"]);
    expect(
      regulatorInterval(auburn(), {
        sensor: "air",
        method: "simple average",
        base: { value: 10, unit: "°C" },
      }).assumed,
    ).toEqual(["method", "base", "sensor"]);
    // 32 °F is 0 °C: the same base in another unit is no conflict.
    expect(
      problemsOf(countable(bent(), { base: { value: 32, unit: "°F" }, method: "simple average" })),
    ).toEqual([]);
    const found = regulatorInterval(bent(), { sensor: "air" });
    expect([found.from.in("°C d"), found.to.in("°C d")]).toEqual([200, 200]);
    expect(found.model.source).toContain("schedule trinexapac-ethyl applications");
  });

  test("is looked up by the active ingredient and by a word of the turf, in either case", () => {
    const ids = (active: string, turf?: string) => regulatorIntervalsFor(active, turf).map(({ id }) => id);
    expect(ids(" Trinexapac-Ethyl ", "Ultradwarf")).toEqual([
      "trinexapac-ethyl, ultradwarf bermudagrass green, Auburn",
      "trinexapac-ethyl, ultradwarf bermudagrass green, Mississippi",
    ]);
    expect(ids("trinexapac-ethyl")).toHaveLength(4);
    expect(ids("paclobutrazol")).toEqual(["paclobutrazol, cool-season green, table"]);
    expect(ids("water")).toEqual([]);
  });

  test("by the table of a supplier: interval, duration and suppression of four regulators", () => {
    // As the table by active ingredient prints them for cool-season greens.
    const printed = {
      "trinexapac-ethyl": [
        [230, 230],
        [800, 800],
        [20, 20],
      ],
      paclobutrazol: [
        [280, 310],
        [850, 950],
        [30, 50],
      ],
      flurprimidol: [
        [210, 270],
        [600, 800],
        [20, 30],
      ],
      "prohexadione-calcium": [
        [280, 280],
        [840, 840],
        [25, 25],
      ],
    };
    for (const [active, figures] of Object.entries(printed)) {
      const found = row(`${active}, cool-season green, table`);
      expect([found.interval, found.duration, found.suppressionPercent]).toEqual(figures);
      expect(found).toMatchObject({
        active,
        method: null,
        base: { value: 0, unit: "°C" },
        rate: null,
        peak: null,
        rebound: null,
      });
    }
  });

  test("each row has words, a turf and a source, and its figures are in order", () => {
    expect(new Set(regulatorIntervals.map(({ id }) => id)).size).toBe(regulatorIntervals.length);
    for (const {
      active,
      turf,
      note,
      source,
      interval,
      peak,
      rebound: back,
      duration,
    } of regulatorIntervals) {
      for (const text of [active, turf, note, source.title, source.publisher]) expect(text).toMatch(/\w{3}/);
      for (const range of [interval, peak, back, duration])
        if (range !== null) expect(range[0]).toBeLessThanOrEqual(range[1]);
    }
  });
});
