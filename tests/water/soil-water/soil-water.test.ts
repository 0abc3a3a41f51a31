import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, type CivilDate, dailySeries, dailyTemperatures } from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import {
  availableWater,
  depletionFraction,
  effectiveRain,
  hargreavesSeries,
  irrigationInterval,
  readilyAvailableWater,
  soilWaterBalance,
  soilWaterDay,
  waterHolding,
  waterStress,
} from "../../../src/water/index.js";
import { complaints } from "../../errors.js";
import { close, inch, mm, percent, untyped } from "../helpers.js";

const series = (values: readonly (number | null)[], start: CivilDate = "2026-06-01", unit = "mm") =>
  dailySeries({ start, unit, what: "water", source: "test", values: [...values] });

describe("what the root zone holds", () => {
  const layers = [
    { thickness: inch(8), capacity: quantity(1.5, "in/ft") },
    { thickness: inch(12), capacity: quantity(1.9, "in/ft") },
    { thickness: inch(28), capacity: quantity(0.9, "in/ft") },
  ];
  test("layers add up, and a layer cut in two holds the same", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 47.9, noNaN: true }), (deep) => {
        const whole = availableWater({ layers, rootDepth: inch(deep) }).total.in("in");
        const cut = layers.flatMap((l) => [
          { ...l, thickness: inch(l.thickness.in("in") / 3) },
          { ...l, thickness: inch((2 * l.thickness.in("in")) / 3) },
        ]);
        close(availableWater({ layers: cut, rootDepth: inch(deep) }).total.in("in"), whole, 1e-9);
        const deeper = availableWater({ layers, rootDepth: inch(deep + 0.1) }).total.in("in");
        expect(deeper).toBeGreaterThan(whole);
      }),
    );
  });
  test("capacity by depth and by volume are one figure", () => {
    const of = (capacity: never) =>
      availableWater({ layers: [{ thickness: mm(300), capacity }] }).total.in("mm");
    close(of(quantity(125, "mm/m") as never), 37.5);
    close(of(quantity(12.5, "% v/v") as never), 37.5);
    close(of(quantity(1.5, "in/ft") as never), 37.5);
  });
  test("bad layers", () => {
    expect(complaints(() => availableWater({ layers, rootDepth: inch(49) }))).toEqual(["range rootDepth"]);
    expect(
      complaints(
        untyped(availableWater, {
          layers: [
            { thickness: inch(0), capacity: 0.1 },
            { thickness: inch(3), capacity: quantity(12, "in/ft") },
          ],
        }),
      ),
    ).toEqual(["range layers[0].thickness", "type layers[0].capacity", "range layers[1].capacity"]);
    expect(complaints(untyped(availableWater, { layers: [] }))).toEqual(["missing layers"]);
    expect(complaints(untyped(waterHolding, { texture: "loam" }))).toEqual(["type texture"]);
  });
  test("how long it lasts", () => {
    const ready = readilyAvailableWater({ available: inch(1.5), depletion: percent(50) });
    expect(irrigationInterval({ water: ready, use: quantity(0.25, "in/d") }).in("d")).toBe(3);
    close(irrigationInterval({ water: ready, use: quantity(6.35, "mm/d") }).in("d"), 3);
    expect(depletionFraction({ table: percent(50), use: quantity(5, "mm/d") }).in("%")).toBe(50);
    expect(complaints(() => depletionFraction({ table: percent(20), use: quantity(9, "mm/d") }))).toEqual([
      "range use",
    ]);
    expect(complaints(untyped(readilyAvailableWater, { available: inch(1), depletion: 0.5 }))).toEqual([
      "type depletion",
    ]);
  });
  test("stress runs from full use to none", () => {
    const of = (d: number) =>
      waterStress({ available: mm(60), depleted: mm(d), depletion: percent(40) }).in("%");
    expect([of(0), of(24), of(60)]).toEqual([100, 100, 0]);
    expect(of(42)).toBeCloseTo(50, 12);
    expect(
      complaints(() => waterStress({ available: mm(60), depleted: mm(61), depletion: percent(40) })),
    ).toEqual(["range depleted"]);
  });
});

describe("effective rain", () => {
  test("never more than fell, and more rain never counts less", () => {
    const methods = ["Texas, day", "USDA-SCS, month", "FAO, month"] as const;
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.constantFrom(...methods),
        (rain, method) => {
          const of = (p: number) => effectiveRain({ rain: mm(p), method }).in("mm");
          expect(of(rain)).toBeLessThanOrEqual(rain + 1e-9);
          expect(of(rain)).toBeGreaterThanOrEqual(0);
          expect(of(rain + 1)).toBeGreaterThanOrEqual(of(rain) - 1e-9);
          close(effectiveRain({ rain: inch(rain / 25.4), method }).in("mm") + 1, of(rain) + 1, 1e-9);
        },
      ),
    );
  });
  test("the ends of the Texas rule", () => {
    const of = (p: number) => effectiveRain({ rain: inch(p), method: "Texas, day" }).in("in");
    expect(of(0.1)).toBe(0);
    close(of(1), 0.9);
    close(of(2), 0.9 + 2 / 3);
    close(of(5), of(2));
  });
  test("the share belongs to its method", () => {
    expect(effectiveRain({ rain: mm(10), method: "fixed share", share: percent(80) }).in("mm")).toBe(8);
    expect(complaints(untyped(effectiveRain, { rain: mm(10), method: "fixed share" }))).toEqual([
      "missing share",
    ]);
    expect(
      complaints(untyped(effectiveRain, { rain: mm(-1), method: "FAO, month", share: percent(80) })),
    ).toEqual(["range rain", "conflict share"]);
  });
});

describe("the balance", () => {
  const numbers = fc.array(
    fc.record({
      rain: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 60, noNaN: true })),
      use: fc.double({ min: 0, max: 12, noNaN: true }),
    }),
    { minLength: 1, maxLength: 60 },
  );
  test("water in is water out and what is stored; the root zone is never below empty nor above full", () => {
    fc.assert(
      fc.property(
        numbers,
        fc.double({ min: 5, max: 120, noNaN: true }),
        fc.double({ min: 0.011, max: 0.99, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.boolean(),
        (days, total, p, before, watered) => {
          const season = soilWaterBalance({
            available: mm(total),
            depletion: percent(100 * p),
            before: mm(before * total),
            use: series(days.map(({ use }) => use)),
            rain: series(days.map(({ rain }) => rain)),
            effective: "Texas, day",
            ...(watered ? { plan: { at: percent(60), days: [1, 4] as const } } : {}),
          });
          const { totals } = season;
          const into = totals.effectiveRain.in("mm") + totals.irrigation.in("mm");
          const out = totals.used.in("mm") + totals.drained.in("mm") + totals.stored.in("mm");
          expect(Math.abs(into - out)).toBeLessThan(1e-9 * (1 + into));
          for (const d of season.depleted) {
            expect(d).toBeGreaterThanOrEqual(0);
            expect(d).toBeLessThanOrEqual(total * (1 + 1e-12));
          }
          season.used.forEach((used, i) => {
            expect(used).toBeLessThanOrEqual((days[i] as { use: number }).use + 1e-12);
            expect(used).toBeGreaterThanOrEqual(-1e-12);
          });
        },
      ),
    );
  });

  test("the season is its days one by one", () => {
    const rain = [0, 3, 0, 45, 0, 0, 1];
    const use = [4, 5, 6, 2, 5, 6, 6];
    const season = soilWaterBalance({
      available: mm(30),
      depletion: percent(40),
      before: mm(20),
      use: series(use),
      rain: series(rain),
    });
    let before = mm(20);
    rain.forEach((_, i) => {
      const day = soilWaterDay({
        available: mm(30),
        depletion: percent(40),
        before,
        rain: mm(rain[i] as number),
        use: mm(use[i] as number),
      });
      close(season.depleted[i] as number, day.depleted.in("mm"), 1e-12);
      close(season.used[i] as number, day.used.in("mm"), 1e-12);
      close(season.drained[i] as number, day.drained.in("mm"), 1e-12);
      before = day.depleted;
    });
    expect(season.totals.stressedDays).toBeGreaterThan(0);
  });

  test("a plan waters on its days and at its depletion only", () => {
    // 2026-06-01 is a Monday
    const season = soilWaterBalance({
      available: mm(40),
      depletion: percent(50),
      before: mm(0),
      use: series(Array(14).fill(6)),
      rain: series(Array(14).fill(0)),
      plan: { at: percent(40), days: [3, 6] },
    });
    expect(season.irrigation.flatMap((water, i) => (water > 0 ? [i] : []))).toEqual([5, 9, 12]);
    expect(season.totals.waterings).toBe(3);
    const fixed = soilWaterBalance({
      available: mm(40),
      depletion: percent(50),
      before: mm(20),
      use: series([0]),
      rain: series([0]),
      plan: { at: percent(50), depth: mm(8) },
    });
    expect(fixed.depleted).toEqual([12]);
  });

  test("units, starts and gaps", () => {
    const base = { available: inch(1), depletion: percent(50), before: inch(0) };
    const season = soilWaterBalance({
      ...base,
      use: series([0.2, 0.2], "2026-06-02", "in"),
      rain: series([9, 0, 5.08], "2026-06-01"),
    });
    close(season.depleted[0] as number, 5.08, 1e-12);
    close(season.depleted[1] as number, 5.08, 1e-12);
    const bad = (more: object) =>
      complaints(untyped(soilWaterBalance, { ...base, use: series([5, 5]), rain: series([0, 0]), ...more }));
    expect(bad({ rain: series([0]) })).toEqual(["missing rain"]);
    expect(bad({ rain: series([0, 0], "2026-06-02") })).toEqual(["missing rain"]);
    expect(bad({ rain: series([0, null]), use: series([null, 3]) })).toEqual([
      "missing use.values[0]",
      "missing rain.values[1]",
    ]);
    expect(bad({ rain: series([0, -2]) })).toEqual(["range rain.values[1]"]);
    expect(bad({ rain: series([0, 2], "2026-06-01", "°C") })).toEqual(["unit/mismatch rain.unit"]);
    expect(bad({ before: inch(1.2) })).toEqual(["range before"]);
    expect(bad({ plan: { at: percent(50) }, irrigation: series([0, 0]) })).toEqual(["conflict plan"]);
    expect(bad({ plan: { at: percent(50), days: [1, 8] } })).toEqual(["range plan.days[1]"]);
    expect(bad({ rain: undefined })).toEqual(["missing rain"]);
    const dry = soilWaterBalance({
      ...base,
      use: series([5, 5]),
      rain: series([0, null]),
      missingRain: "dry",
    });
    expect(dry.rainAssumedDry).toEqual(["2026-06-02"]);
    expect(dry.findings.map(({ code }) => code)).toEqual(["water/rain-assumed-dry"]);
  });
});

describe("four years of weather in Seattle", () => {
  const file = new URL("../../../node_modules/vega-datasets/data/seattle-weather.csv", import.meta.url);
  const rows = readFileSync(file, "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(","));
  const column = (i: number) => rows.map((row) => Number(row[i]));
  const start = "2012-01-01";
  const temperatures = dailyTemperatures({
    start,
    unit: "°C",
    sensor: "air",
    source: "open data set of daily weather in Seattle",
    min: column(3),
    max: column(2),
  });
  const et = hargreavesSeries({ temperatures, latitude: quantity(47.6, "deg") });
  const use = { ...et, values: et.values.map((value) => (value === null ? null : 0.8 * value)) };
  const rain = dailySeries({ start, unit: "mm", what: "rain", source: "the same", values: column(1) });
  const zone = { available: mm(45), depletion: percent(50), before: mm(0), use, rain };

  test("the data are days without a gap", () => {
    expect(rows.length).toBe(1461);
    rows.forEach((row, i) => {
      expect(row[0]).toBe(addDays(start, i));
    });
  });

  test("water in is water out and what is stored, with the rain of the data to the last drop", () => {
    const season = soilWaterBalance({ ...zone, plan: { at: percent(50), days: [2, 5, 7] } });
    const { totals } = season;
    close(
      totals.rain.in("mm"),
      column(1).reduce((a, b) => a + b, 0),
      1e-12,
    );
    const out = totals.used.in("mm") + totals.drained.in("mm") + totals.stored.in("mm");
    close(totals.rain.in("mm") + totals.irrigation.in("mm"), out, 1e-12);
    expect(totals.waterings).toBeGreaterThan(0);
    // it rains in winter and waters in summer
    season.irrigation.forEach((water, i) => {
      const month = Number((rows[i]?.[0] ?? "").slice(5, 7));
      if (water > 0) expect(month >= 4 && month <= 10, `${rows[i]?.[0]}`).toBe(true);
    });
  });

  test("watered turf uses more and suffers less than turf that is not", () => {
    const dry = soilWaterBalance(zone).totals;
    const watered = soilWaterBalance({ ...zone, plan: { at: percent(40) } }).totals;
    expect(watered.used.in("mm")).toBeGreaterThan(dry.used.in("mm"));
    expect(watered.stressedDays).toBe(0);
    expect(dry.stressedDays).toBeGreaterThan(100);
    expect(dry.irrigation.in("mm")).toBe(0);
  });
});
