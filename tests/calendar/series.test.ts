import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addDays,
  type DailyTemperatures,
  dailySeries,
  dailyTemperatures,
  gapsOf,
  isSensor,
  seriesDay,
  seriesEnd,
} from "../../src/calendar/index.js";
import { complaints } from "../errors.js";

const week = dailyTemperatures({
  start: "2026-04-28",
  unit: "°C",
  sensor: "air",
  source: "station at the depot",
  min: [8, null, 9, 7, null],
  max: [19, 21, null, 20, null],
});

describe("dailyTemperatures", () => {
  test("is plain JSON", () => {
    expect(JSON.parse(JSON.stringify(week))).toEqual(week);
  });

  test("does not hold on to the lists that it was given", () => {
    const min = [1];
    const made = dailyTemperatures({ ...week, min, max: [2] });
    min[0] = 99;
    expect(made.min).toEqual([1]);
  });

  test("reports everything that is wrong at once, with paths", () => {
    const wrong = {
      start: "2026-02-30",
      unit: "K",
      sensor: "soil",
      source: " ",
      min: [5, 12, Number.NaN, undefined],
      max: [4, "15", 20],
    } as unknown as DailyTemperatures;
    expect(complaints(() => dailyTemperatures(wrong))).toEqual([
      "date start",
      "not-finite min[2]",
      "missing min[3]",
      "not-finite max[1]",
      "unit/unknown unit",
      "type sensor",
      "missing source",
      "conflict max",
      "conflict min[0]",
    ]);
  });

  test("takes a code for no figure as the error it is", () => {
    expect(complaints(() => dailyTemperatures({ ...week, min: [-999], max: [20] }))).toEqual([
      "range min[0]",
    ]);
    expect(complaints(() => dailyTemperatures({ ...week, unit: "°F", min: [-128.5], max: [20] }))).toEqual(
      [],
    );
    expect(complaints(() => dailyTemperatures({ ...week, min: [4], max: [999.9] }))).toEqual([
      "range max[0]",
    ]);
    expect(complaints(() => dailyTemperatures({ ...week, unit: "°F", min: [4], max: [134] }))).toEqual([]);
    const soil = { ...week, sensor: "soil at 2.5 cm" } as const;
    expect(complaints(() => dailyTemperatures({ ...soil, min: [4], max: [70] }))).toEqual([]);
    expect(complaints(() => dailyTemperatures({ ...soil, min: [4], max: [77] }))).toEqual(["range max[0]"]);
    // 68 °F in a list of °C.
    expect(complaints(() => dailyTemperatures({ ...week, min: [4], max: [68] }))).toEqual(["range max[0]"]);
  });

  test("refuses no days, no lists, and a hole in a list", () => {
    expect(complaints(() => dailyTemperatures({ ...week, min: [], max: [] }))).toEqual([
      "missing min",
      "missing max",
    ]);
    expect(complaints(() => dailyTemperatures({ ...week, min: 3 as never }))).toEqual(["type min"]);
    expect(complaints(() => dailyTemperatures({ ...week, min: new Array(1), max: [2] }))).toEqual([
      "missing min[0]",
    ]);
    expect(complaints(() => dailyTemperatures(null as never))).toEqual(["type series"]);
  });

  test("a day with equal extremes is no error", () => {
    expect(complaints(() => dailyTemperatures({ ...week, min: [4], max: [4] }))).toEqual([]);
  });

  test("may not run past the year 9999", () => {
    expect(
      complaints(() => dailyTemperatures({ ...week, start: "9999-12-31", min: [1, 1], max: [2, 2] })),
    ).toEqual(["range min", "range max"]);
  });
});

test("isSensor", () => {
  expect(["air", "soil at 2.5 cm", "soil at 4 in"].every(isSensor)).toBe(true);
  expect(
    ["soil", "soil at cm", "soil at 0 cm", "soil at 2.50 cm", "soil at -4 in", "soil at 4 ft", 4].some(
      isSensor,
    ),
  ).toBe(false);
});

describe("dailySeries", () => {
  const rain = {
    start: "2026-05-01",
    unit: "mm",
    what: "rain",
    source: "gauge",
    values: [0, null, 4.5],
  } as const;
  test("reports everything that is wrong at once", () => {
    const wrong = { ...rain, start: "x" as never, unit: "mmm", what: "", values: [Number.POSITIVE_INFINITY] };
    expect(complaints(() => dailySeries(wrong))).toEqual([
      "date start",
      "not-finite values[0]",
      "missing what",
      "unit/unknown unit",
    ]);
  });
  test("tells a gap from a day outside", () => {
    const series = dailySeries(rain);
    expect(seriesDay(series, "2026-05-02")).toBeNull();
    expect(seriesDay(series, "2026-05-03")).toBe(4.5);
    expect(seriesDay(series, "2026-05-04")).toBeUndefined();
    expect(seriesDay(series, "2026-04-30")).toBeUndefined();
    expect(seriesEnd(series)).toBe("2026-05-03");
  });
});

describe("gapsOf", () => {
  test("joins days and names what is missing", () => {
    expect(gapsOf(week)).toEqual([
      { from: "2026-04-29", to: "2026-04-30", days: 2, missing: ["min", "max"] },
      { from: "2026-05-02", to: "2026-05-02", days: 1, missing: ["min", "max"] },
    ]);
  });

  test("finds each day without a value once, and no other", () => {
    const values = fc.array(fc.option(fc.integer({ min: 0, max: 40 })), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(values, (list) => {
        const series = dailySeries({
          start: "2026-12-20",
          unit: "mm",
          what: "rain",
          source: "gauge",
          values: list,
        });
        const gaps = gapsOf(series);
        const inGap = list.map((_, i) => {
          const date = addDays(series.start, i);
          return gaps.filter(({ from, to }) => date >= from && date <= to).length;
        });
        expect(inGap).toEqual(list.map((value) => (value === null ? 1 : 0)));
        expect(gaps.reduce((sum, { days }) => sum + days, 0)).toBe(
          list.filter((value) => value === null).length,
        );
      }),
    );
  });

  test("refuses another record", () => {
    expect(complaints(() => gapsOf({ type: "x" } as never))).toEqual(["type series"]);
  });
});
