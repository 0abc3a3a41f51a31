import { describe, expect, test } from "vitest";
import {
  type DailySeries,
  dailyNormals,
  dailySeries,
  dailyTemperatures,
  gapsOf,
  normalDay,
  seriesDay,
  seriesEnd,
} from "../../src/calendar/index.js";
import { complaints, problemsOf } from "../errors.js";
import { expectRefusals } from "../refusals.js";

const rain = {
  start: "2026-05-01",
  unit: "mm",
  what: "rain",
  source: "gauge",
  values: [1, null, 3],
} as const;
const series = (change: object) => () => dailySeries({ ...rain, ...change } as never);
const air = {
  start: "2026-05-01",
  unit: "°C",
  sensor: "air",
  source: "depot",
  min: [5, 6],
  max: [15, 16],
} as const;
const temperatures = (change: object) => () => dailyTemperatures({ ...air, ...change } as never);
const flat = (value: number) => Array<number>(366).fill(value);
const usual = {
  unit: "°C",
  sensor: "air",
  source: "depot, 1991-2020",
  min: flat(10),
  max: flat(20),
} as const;
const normals = (change: object) => () => dailyNormals({ ...usual, ...change } as never);
const days = 3_652_058;

test("a daily series says what it should be", () => {
  expectRefusals([
    [() => dailySeries(3 as never), "type", "series", /./],
    [series({ fuss: 1 }), "type", "series.fuss", /./],
    [series({ start: "soon" }), "date", "start", /./],
    [series({ unit: "inch" }), "unit/unknown", "unit", /^a unit/],
    [series({ unit: 3 }), "unit/unknown", "unit", /^a unit/],
    [series({ what: " " }), "missing", "what", /^a text that is not empty/],
    [series({ source: 3 }), "missing", "source", /^a text that is not empty/],
    [series({ values: 3 }), "type", "values", /^a list of numbers and null/],
    [series({ values: [] }), "missing", "values", /^at least one day/],
    [
      series({ values: Array(days + 1) }),
      "range",
      "values",
      /the years 0001 to 9999.*"max":3652058,"count":"days"/,
    ],
    [
      series({ values: [1, undefined] }),
      "missing",
      "values[1]",
      /^a finite number, or null for a day without one/,
    ],
    [series({ values: [1, "2", Number.NaN] }), "not-finite", "values[2]", /^a finite number/],
    [
      series({ start: "9999-12-30", values: [1, 2, 3] }),
      "range",
      "values",
      /before the end of 9999.*"max":2,"count":"days"/,
    ],
  ]);
  expect(series({ start: "9999-12-30", values: [1, 2] })).not.toThrow();
  expect(problemsOf(series({ values: [] }))[0]?.got).toBe("an empty list");
  expect(complaints(series({ start: 3, values: [Number.NaN], what: "", unit: "x" }))).toEqual([
    "date start",
    "not-finite values[0]",
    "missing what",
    "unit/unknown unit",
  ]);
});

describe("daily temperatures", () => {
  test("say what they should be", () => {
    const sensor = /^air, or soil at a depth such as soil at 2\.5 cm or soil at 4 in/;
    expectRefusals([
      [() => dailyTemperatures(3 as never), "type", "series", /./],
      [temperatures({ start: "soon" }), "date", "start", /./],
      [temperatures({ unit: "K" }), "unit/unknown", "unit", /^°C or °F/],
      [temperatures({ source: "" }), "missing", "source", /^a text that is not empty/],
      [temperatures({ min: 3 }), "type", "min", /^a list of numbers and null/],
      [temperatures({ max: [] }), "missing", "max", /^at least one day/],
      [temperatures({ max: [15] }), "conflict", "max", /^as many days as min has, which is 2/],
      [temperatures({ min: [5, 16.1] }), "conflict", "min[1]", /^not more than max\[1\], which is 16/],
      [temperatures({ min: [-90.2, 6] }), "range", "min[0]", /"min":-90,"max":60,"unit":"°C"/],
      [temperatures({ max: [15, 60.1] }), "range", "max[1]", /60/],
      [temperatures({ unit: "°F", min: [-130.1, 6] }), "range", "min[0]", /"min":-130,"max":140,"unit":"°F"/],
      [temperatures({ unit: "°F", max: [15, 140.1] }), "range", "max[1]", /140/],
      ...[
        "ground",
        "soil at 0 cm",
        "soil at -2 cm",
        "soil at 2 ft",
        "soil at 02 cm",
        "soil at 1e1 cm",
        "xsoil at 2 cm",
        "soil at 2 cmx",
        3,
      ].map((text) => [temperatures({ sensor: text }), "type", "sensor", sensor] as const),
    ]);
    for (const good of ["soil at 2.5 cm", "soil at 4 in"])
      expect(temperatures({ sensor: good })().sensor).toBe(good);
    expect(temperatures({ min: [16, -90], max: [16, 60] })).not.toThrow();
    expect(temperatures({ unit: "°F", min: [-130, null], max: [140, null] })).not.toThrow();
    expect(complaints(temperatures({ min: [5, 20, 21], max: [15, 16] }))).toEqual([
      "conflict max",
      "conflict min[1]",
    ]);
  });
});

describe("normals", () => {
  test("say what they should be", () => {
    const odd = (at: number, value: unknown) => flat(15).map((one, i) => (i === at ? value : one));
    expectRefusals([
      [() => dailyNormals(3 as never), "type", "normals", /./],
      [normals({ unit: "K" }), "unit/unknown", "unit", /^°C or °F/],
      [normals({ sensor: "ground" }), "type", "sensor", /^air, or soil at a depth such as soil at 4 in/],
      [normals({ source: "" }), "missing", "source", /^a text that is not empty/],
      [normals({ min: 3 }), "type", "min", /^a list of 366 numbers/],
      [
        normals({ max: flat(20).slice(1) }),
        "range",
        "max",
        /with one for 29 February.*"min":366,"max":366,"count":"figures"/,
      ],
      [normals({ min: odd(3, null) }), "not-finite", "min[3]", /^a number/],
      [normals({ max: odd(3, 9.9) }), "conflict", "min[3]", /^not more than max\[3\], which is 9\.9/],
      [normals({ max: odd(3, 101) }), "range", "max[3]", /60/],
      [normals({ spread: odd(3, -0.1) }), "range", "spread[3]", /"min":0/],
      [normals({ spread: 3 }), "type", "spread", /^a list of 366 numbers/],
      [normals({ spread: odd(365, "2") }), "not-finite", "spread[365]", /^a number/],
    ]);
    expect(problemsOf(normals({ max: flat(20).slice(1) }))[0]?.got).toMatch(/365 figures/);
    // A spread is no temperature: it may be as large as it is, and zero
    expect(normals({ spread: odd(0, 0), max: odd(0, 10) })).not.toThrow();
    expect(normals({})()).not.toHaveProperty("spread");
  });

  test("of a day stand at its place in a leap year, with 29 February between", () => {
    const counted = dailyNormals({
      ...usual,
      min: flat(0).map((_, i) => i / 10),
      max: flat(0).map((_, i) => i / 10 + 1),
      spread: flat(0).map((_, i) => i),
    });
    const at = (date: string) => normalDay(counted, date as "2026-01-01").spread;
    expect(["2026-01-01", "2026-02-28", "2026-03-01", "2026-12-31"].map(at)).toEqual([0, 58, 60, 365]);
    expect(["2028-02-28", "2028-02-29", "2028-03-01", "2028-12-31"].map(at)).toEqual([58, 59, 60, 365]);
    expect(normalDay(counted, "2026-01-02")).toEqual({ min: 0.1, max: 1.1, spread: 1 });
    expect(normalDay(dailyNormals(usual), "2026-01-02").spread).toBeNull();
  });

  test("that come back from a store are read again", () => {
    const stored = (change: object): never => ({ ...dailyNormals(usual), ...change }) as never;
    expectRefusals([
      [() => normalDay(undefined as never, "2026-01-01"), "missing", "normals", /^daily normals/],
      [() => normalDay({} as never, "2026-01-01"), "type", "normals", /^daily normals/],
      [() => normalDay(stored({}), "soon" as never), "date", "date", /./],
      [() => normalDay(stored({ min: [] }), "2026-01-01"), "missing", "normals.min[0]", /^a number/],
      [() => normalDay(stored({ min: 3 }), "2026-01-01"), "missing", "normals.min[0]", /^a number/],
      [() => normalDay(stored({ max: ["x"] }), "2026-01-01"), "not-finite", "normals.max[0]", /^a number/],
      [
        () => normalDay(stored({ spread: [Number.NaN] }), "2026-01-01"),
        "not-finite",
        "normals.spread[0]",
        /^a number/,
      ],
    ]);
  });
});

describe("a series that comes back from a store", () => {
  const stored = (change: object): DailySeries => ({ ...dailySeries(rain), ...change }) as never;

  test("is read again", () => {
    const wanted = /^a daily series or daily temperatures, as dailySeries gives/;
    for (const of of [seriesEnd, gapsOf, (one: DailySeries) => seriesDay(one, "2026-05-01")])
      expectRefusals([
        [() => of(stored({ type: "series" })), "type", "series", wanted],
        [() => of(stored({ values: 3 })), "type", "series.values", /^a list of numbers and null/],
        [
          () => of(stored({ values: Array(days + 1) })),
          "range",
          "series.values",
          /the years 0001 to 9999.*"max":3652058,"count":"days"/,
        ],
        [() => of(stored({ start: "soon" })), "date", "series.start", /./],
      ]);
    expectRefusals([
      [() => seriesEnd(undefined as never), "missing", "series", wanted],
      [() => gapsOf(undefined as never), "missing", "series", wanted],
      [() => seriesDay(stored({}), "soon" as never), "date", "date", /./],
      [
        () => seriesDay(stored({ values: ["1"] }), "2026-05-01"),
        "not-finite",
        "series.values[0]",
        /^a number, or null for a day without one/,
      ],
      [
        () => gapsOf(stored({ values: [1, Number.NaN] })),
        "not-finite",
        "series.values[1]",
        /^a number, or null/,
      ],
      [() => seriesEnd(stored({ start: "9999-12-31" })), "range", "series", /the years 0001 to 9999/],
    ]);
  });

  test("has its figures on their days, and none before or after", () => {
    const one = dailySeries({ ...rain, values: [1, null, -0] });
    const on = (date: string) => seriesDay(one, date as "2026-05-01");
    expect(["2026-04-30", "2026-05-01", "2026-05-02", "2026-05-04"].map(on)).toEqual([
      undefined,
      1,
      null,
      undefined,
    ]);
    expect(Object.is(on("2026-05-03"), 0)).toBe(true);
    expect(seriesEnd(one)).toBe("2026-05-03");
    const both = dailyTemperatures({ ...air, min: [5, null], max: [15, 16] });
    expect(seriesDay(both, "2026-05-02")).toEqual({ min: null, max: 16 });
    expect(seriesDay(both, "2026-05-03")).toBeUndefined();
    // A list that lost its end lacks those days
    expect(seriesDay({ ...both, min: [5] }, "2026-05-02")).toEqual({ min: null, max: 16 });
    expect(seriesEnd({ ...both, min: [5] })).toBe("2026-05-02");
  });

  test("has gaps from their first day to their last, at its start and its end too", () => {
    const gaps = (values: readonly (number | null)[]) =>
      gapsOf(dailySeries({ ...rain, values })).map(({ from, to, days: count }) => [from, to, count]);
    expect(gaps([1, 2])).toEqual([]);
    expect(gaps([null, 2, null, null, 5, null])).toEqual([
      ["2026-05-01", "2026-05-01", 1],
      ["2026-05-03", "2026-05-04", 2],
      ["2026-05-06", "2026-05-06", 1],
    ]);
    expect(gapsOf(dailyTemperatures({ ...air, min: [null, 1, 2, null], max: [10, null, 12, null] }))).toEqual(
      [
        { from: "2026-05-01", to: "2026-05-02", days: 2, missing: ["min", "max"] },
        { from: "2026-05-04", to: "2026-05-04", days: 1, missing: ["min", "max"] },
      ],
    );
    expect(gapsOf(dailyTemperatures({ ...air, min: [1, 2], max: [10, null] }))[0]?.missing).toEqual(["max"]);
  });
});
