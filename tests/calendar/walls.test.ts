import { describe, expect, it } from "vitest";
import * as calendar from "../../src/calendar/index.js";
import { answerOf } from "../errors.js";

const {
  civilDate,
  dailyNormals,
  dailySeries,
  dailyTemperatures,
  gapsOf,
  instant,
  normalDay,
  seriesDay,
  seriesEnd,
} = calendar;
const days = {
  start: "2026-05-01",
  unit: "°C",
  sensor: "air",
  source: "depot",
  min: [8, 9],
  max: [19, 20],
} as const;
const rain = { start: "2026-05-01", unit: "mm", what: "rain", source: "depot", values: [0, 3] } as const;
const normals = {
  unit: "°C",
  sensor: "air",
  source: "depot",
  min: Array<number>(366).fill(5),
  max: Array<number>(366).fill(15),
} as const;
const strange = {
  "no text": Object.create(null) as object,
  "a text that throws": {
    toString: () => {
      throw new Error("no");
    },
  },
  "a text that is none": { toString: 1 },
  "a list": ["2026-05-01"],
  "a symbol": Symbol("x"),
  "a function": () => "2026-05-01",
};

describe("a date or moment that is none is refused as ours", () => {
  it.each(Object.entries(strange))("%s", (_, value) => {
    expect(answerOf(() => civilDate(value as never))).toBe("date date");
    expect(answerOf(() => instant(value as never))).toBe("date instant");
  });
});

describe("a series that comes back from a store is read again", () => {
  it("a figure that is no number is refused with its place, where it gave NaN", () => {
    const stored = { ...dailyTemperatures(days), min: [8, Number.NaN] };
    expect(answerOf(() => seriesDay(stored, "2026-05-02"))).toBe("not-finite series.min[1]");
    expect(answerOf(() => gapsOf(stored))).toBe("not-finite series.min[1]");
    const text = { ...dailySeries(rain), values: [0, "3"] } as never;
    expect(answerOf(() => seriesDay(text, "2026-05-02"))).toBe("not-finite series.values[1]");
  });
  it("a list that is not there is refused", () => {
    const { min, ...stored } = dailyTemperatures(days);
    expect(min).toEqual([8, 9]);
    expect(answerOf(() => seriesDay(stored as never, "2026-05-02"))).toBe("missing series.min");
    expect(answerOf(() => gapsOf(stored as never))).toBe("missing series.min");
    expect(answerOf(() => seriesEnd({ ...dailySeries(rain), values: undefined } as never))).toBe(
      "missing series.values",
    );
  });
  it("normals with NaN are refused with the place", () => {
    const stored = { ...dailyNormals(normals), min: [Number.NaN, ...normals.min.slice(1)] };
    expect(answerOf(() => normalDay(stored, "2026-01-01"))).toBe("not-finite normals.min[0]");
  });
});

describe("fields that are not known are refused", () => {
  it.each([
    ["dailySeries", () => dailySeries({ ...rain, vlaues: [] } as never), "type series.vlaues"],
    ["dailyTemperatures", () => dailyTemperatures({ ...days, units: "K" } as never), "type series.units"],
    ["dailyNormals", () => dailyNormals({ ...normals, spred: [] } as never), "type normals.spred"],
    [
      "isWithinWindow",
      () => calendar.isWithinWindow("2026-05-01", { from: "03-01", to: "05-31", until: "06-01" } as never),
      "type window.until",
    ],
  ] as const)("%s", (_, call, expected) => {
    expect(answerOf(call)).toBe(expected);
  });
  it("results go in again as they are", () => {
    expect(dailyTemperatures(dailyTemperatures(days))).toEqual(dailyTemperatures(days));
    expect(dailySeries(dailySeries(rain))).toEqual(dailySeries(rain));
    expect(dailyNormals(dailyNormals(normals))).toEqual(dailyNormals(normals));
  });
});

describe("a list with holes of a thousand million places does not run away", () => {
  const sparse = new Array(1e9) as number[];
  it.each([
    ["dailySeries", () => dailySeries({ ...rain, values: sparse })],
    ["dailyTemperatures", () => dailyTemperatures({ ...days, min: sparse, max: sparse })],
    ["dailyNormals", () => dailyNormals({ ...normals, min: sparse })],
    ["gapsOf", () => gapsOf({ ...dailySeries(rain), values: sparse })],
  ] as const)("%s", (_, call) => {
    const start = performance.now();
    expect(answerOf(call)).toMatch(/^range /);
    expect(performance.now() - start).toBeLessThan(500);
  });
});

it("a result keeps no list of the caller", () => {
  const values = [0, 3];
  const series = dailySeries({ ...rain, values });
  values[0] = 99;
  expect(series.values).toEqual([0, 3]);
});

it("a date object in a series is kept as text", () => {
  const start = { year: 2026, month: 5, day: 1, toString: () => "2026-05-01" };
  expect(dailySeries({ ...rain, start: start as never }).start).toBe("2026-05-01");
});
