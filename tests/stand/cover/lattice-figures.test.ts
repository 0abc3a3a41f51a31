import { describe, expect, test } from "vitest";
import { dailyNormals, dailyTemperatures } from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import {
  coverOfPatches,
  coverOverTime,
  diameterForCover,
  observedSpread,
  plantingDateForCover,
  spacingForCover,
  spreadRateFromCover,
  spreadRateFromPatch,
} from "../../../src/stand/index.js";
import { growth, mm, never, noFactor, noRooting, percent, rate, rowOfFive, source } from "./row-of-five.js";

describe("plants at random places", () => {
  // half of the ground is bare where exp(-100 pi r2) is a half; at twice the radius a sixteenth is
  const radius = 1000 * Math.sqrt(Math.LN2 / (100 * Math.PI));
  const spread = rate(radius / 20, radius / 10, radius / 5);
  const start = { pattern: "random", plantsPerArea: quantity(100, "count/m2"), cover: percent(50) } as const;
  test("grow together by chance, and never meet in full", () => {
    const {
      days,
      reached,
      start: first,
    } = coverOverTime({
      start,
      from: "2026-05-01",
      to: "2026-05-11",
      spread,
      growth,
      targets: [percent(50), percent(93.7), percent(93.8), percent(100)],
    });
    expect(first.in("%")).toBeCloseTo(50, 10);
    expect(days.at(-1)?.mid.in("%")).toBeCloseTo(93.75, 9);
    expect(reached.map(({ earliest, mid, latest }) => [earliest, mid, latest])).toEqual([
      ["2026-05-01", "2026-05-01", "2026-05-01"],
      ["2026-05-06", "2026-05-11", null],
      ["2026-05-07", null, null],
      [null, null, null],
    ]);
  });
  test("by plants to a thousand square feet, too", () => {
    const us = { ...start, plantsPerArea: quantity(100 * 92.90304, "count/1000 ft2") };
    const { days } = coverOverTime({ start: us, from: "2026-05-01", to: "2026-05-11", spread, growth });
    expect(days.at(-1)?.mid.in("%")).toBeCloseTo(93.75, 9);
  });
});

describe("growth by temperature", () => {
  const mean = (
    value: number,
    unit: "°C" | "°F",
    more: object = {},
    forecast?: readonly (number | null)[],
  ) => {
    const series = (values: readonly (number | null)[]) =>
      dailyTemperatures({
        start: "2026-05-02",
        unit,
        sensor: "air",
        source,
        min: values.map((one) => (one === null ? null : one - 4)),
        max: values.map((one) => (one === null ? null : one + 4)),
      });
    const { days } = coverOverTime({
      start: rowOfFive,
      from: "2026-05-01",
      to: "2026-05-02",
      spread: rate(1, 2, 4),
      growth: {
        season: "warm-season",
        ...(forecast === undefined ? { observed: series([value]) } : { forecast: series(forecast) }),
        ...more,
      },
    });
    return Number(days[0]?.potential.in("%").toFixed(6));
  };
  /** One width of the curve away from the optimum. */
  const oneWidth = Number((100 * Math.exp(-0.5)).toFixed(6));
  test("by the constants that are asked for", () => {
    expect([mean(24, "°C"), mean(76, "°F", { constants: "°F" })]).toEqual([oneWidth, oneWidth]);
    expect([
      mean(38, "°C"),
      mean(38, "°C", { aboveOptimum: "held" }),
      mean(38, "°C", { aboveOptimum: "falling" }),
    ]).toEqual([100, 100, oneWidth]);
    expect(mean(20, "°C", { optimum: quantity(27, "°C") })).toBe(oneWidth);
  });
  test("a gap in a forecast is filled from the normals, without a word", () => {
    const flat = (value: number) => Array<number>(366).fill(value);
    const normals = dailyNormals({ unit: "°C", sensor: "air", source, min: flat(20), max: flat(28) });
    expect(mean(0, "°C", { normals }, [null])).toBe(oneWidth);
  });
});

describe("turned round", () => {
  const common = { from: "2026-05-01", by: "2026-06-20", cover: percent(100), growth } as const;
  test("the spacing of a square: its corners lie half a diagonal away", () => {
    // 50 days at 2 mm on a radius of 30: 130 mm, by half a diagonal of 0.7071
    const found = spacingForCover({
      ...common,
      plug: { diameter: mm(60) },
      pattern: "square",
      spread: rate(1, 2, 3),
    });
    expect(found).toMatchObject({ type: "spacing-for-cover", version: 1, pattern: "square", findings: [] });
    expect(
      [found.low, found.mid, found.high].map(({ spacing }) => [
        spacing.unit,
        Number(spacing.value.toFixed(6)),
      ]),
    ).toEqual([
      ["cm", Number((8 * Math.SQRT2).toFixed(6))],
      ["cm", Number((13 * Math.SQRT2).toFixed(6))],
      ["cm", Number((18 * Math.SQRT2).toFixed(6))],
    ]);
    // 130 mm by root 2 squared is 338 cm2
    expect(found.mid.plantsPerArea.unit).toBe("count/m2");
    expect(found.mid.plantsPerArea.in("count/m2")).toBeCloseTo(10_000 / 338, 8);
    expect(found.restsOn).toEqual([
      { what: "spread", source: "the crew" },
      { what: "growth", source },
    ]);
    expect(found.notChecked).toEqual([
      ...["nitrogen", "water", "shade", "regulator"].map(noFactor),
      noRooting,
      ...never,
    ]);
  });
  test("and of a triangle, in inches, with time to root", () => {
    const found = spacingForCover({
      ...common,
      plug: { diameter: quantity(2, "in") },
      pattern: "triangular",
      spread: rate(0.1, 0.1, 0.1, "in/d"),
      rooting: quantity(10, "d"),
    });
    // 40 days at a tenth of an inch on an inch: 5 in, and the middle of a triangle lies 1 / root 3 away
    expect(found.mid.spacing.unit).toBe("in");
    expect(found.mid.spacing.value).toBeCloseTo(5 * Math.sqrt(3), 8);
    // a plant has a root of 3 by 2 of the square of its spacing, 75 in2
    expect(found.mid.plantsPerArea.unit).toBe("count/ft2");
    expect(found.mid.plantsPerArea.value).toBeCloseTo(144 / (75 * (Math.sqrt(3) / 2)), 8);
    expect(found.notChecked).not.toContain(noRooting);
  });
  test("the latest day of planting", () => {
    const of = (more: object = {}) =>
      plantingDateForCover({
        start: rowOfFive,
        earliest: "2026-05-01",
        by: "2026-05-31",
        cover: percent(100),
        spread: rate(1, 2, 4),
        growth,
        ...more,
      } as Parameters<typeof plantingDateForCover>[0]);
    const dates = (more: object = {}) => {
      const { low, mid, high } = of(more);
      return [low, mid, high];
    };
    // 40 mm take 40, 20 and 10 days of the 30 that there are
    expect(dates()).toEqual([null, "2026-05-11", "2026-05-21"]);
    expect(dates({ rooting: quantity(3, "d") })).toEqual([null, "2026-05-08", "2026-05-18"]);
    // thirty days are just enough, and leave no day to root
    const even = rate(40 / 30, 40 / 30, 40 / 29);
    expect(dates({ spread: even })).toEqual(["2026-05-01", "2026-05-01", "2026-05-02"]);
    expect(dates({ spread: even, rooting: quantity(1, "d") })).toEqual([null, null, "2026-05-01"]);
    // what is there already may be planted to the last day
    expect(dates({ cover: percent(20) })).toEqual(["2026-05-31", "2026-05-31", "2026-05-31"]);
    expect(of()).toMatchObject({
      type: "planting-date-for-cover",
      version: 1,
      findings: [],
      restsOn: [
        { what: "spread", source: "the crew" },
        { what: "growth", source },
      ],
    });
    expect(of().notChecked.slice(-6)).toEqual([noRooting, ...never]);
    expect(of({ rooting: quantity(0, "d") }).notChecked.slice(4)).toEqual(never);
  });
});

describe("a rate that was seen", () => {
  test("of a patch from a radius of 10 to one of 24 cm in two weeks", () => {
    const area = (radius: number) => quantity(Math.PI * radius ** 2, "cm2");
    const seen = { before: area(10), after: area(24), time: quantity(14, "d") };
    const speed = spreadRateFromPatch(seen);
    expect(speed.unit).toBe("mm/week");
    expect(speed.value).toBeCloseTo(70, 9);
    expect(spreadRateFromPatch({ ...seen, potential: percent(50) }).value).toBeCloseTo(140, 9);
    const us = spreadRateFromPatch({
      before: quantity(Math.PI, "in2"),
      after: quantity(9 * Math.PI, "in2"),
      time: quantity(2, "week"),
    });
    expect(us.unit).toBe("in/week");
    expect(us.value).toBeCloseTo(1, 9);
  });
  test("of a square from the cover of a radius of a quarter to that of a half, in a week", () => {
    const grid = { pattern: "square", spacing: quantity(8, "in") } as const;
    const speed = spreadRateFromCover({
      ...grid,
      before: percent((100 * Math.PI) / 16),
      after: percent((100 * Math.PI) / 4),
      time: quantity(7, "d"),
    });
    expect(speed.unit).toBe("in/week");
    expect(speed.value).toBeCloseTo(2, 6);
    const same = { ...grid, before: percent(30), after: percent(30), time: quantity(7, "d") };
    expect(spreadRateFromCover(same).value).toBe(0);
  });
  test("trials keep what they printed", () => {
    expect(
      observedSpread.map(({ species, cover, plug, time, stolons }) =>
        [species, cover.low, cover.mean, cover.high, plug, time, stolons.low, stolons.high].map(String),
      ),
    ).toEqual([
      ["Zoysia japonica", "0.11 m2", "0.25 m2", "0.49 m2", "64 cm2", "91 d", "1.7 mm/d", "15.5 mm/d"],
      ["Zoysia matrella", "0.04 m2", "0.14 m2", "0.23 m2", "64 cm2", "91 d", "1.7 mm/d", "15.5 mm/d"],
    ]);
  });
});

describe("patches", () => {
  test("that just meet, in the units of the grid", () => {
    expect(coverOfPatches({ pattern: "square", spacing: mm(100), diameter: mm(100) }).in("%")).toBeCloseTo(
      25 * Math.PI,
      10,
    );
    expect(
      coverOfPatches({ pattern: "triangular", spacing: mm(100), diameter: mm(100) }).in("%"),
    ).toBeCloseTo((50 * Math.PI) / Math.sqrt(3), 10);
    expect(coverOfPatches({ pattern: "square", spacing: mm(100), diameter: mm(0) }).value).toBe(0);
    expect(
      coverOfPatches({ pattern: "square", spacing: mm(100), diameter: mm(100 * Math.SQRT2) }).value,
    ).toBe(100);
    const wide = diameterForCover({
      pattern: "square",
      spacing: quantity(10, "in"),
      cover: percent(25 * Math.PI),
    });
    expect([wide.unit, Number(wide.value.toFixed(8))]).toEqual(["in", 10]);
    const full = diameterForCover({
      pattern: "triangular",
      spacing: quantity(30, "cm"),
      cover: percent(100),
    });
    expect([full.unit, Number(full.value.toFixed(8))]).toEqual([
      "cm",
      Number((60 / Math.sqrt(3)).toFixed(8)),
    ]);
  });
});
