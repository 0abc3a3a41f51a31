import { describe, expect, test } from "vitest";
import {
  annualBluegrassFlowering,
  degreeDayAmount,
  degreeDayModel,
  degreeDayWindowState,
  eventWindows,
  eventWindowsFor,
  firstRun,
  growthClass,
  growthPotential,
  nitrogenForGrowth,
  soilTemperaturesFor,
  soilTemperatureThresholds,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of growth and of events by degree-days, what happens exactly at a limit, and the tables a second time.

const share = (value: number) => quantity(value, "%");
const growth = (change: object) => () =>
  growthPotential({ mean: quantity(20, "°C"), season: "cool-season", ...change } as never);
const model = () =>
  degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
const sum = (value: number) => degreeDayAmount({ value, unit: "°C d", model: model() });
const state = (total: number, from: number, to?: number) => () =>
  degreeDayWindowState({ total: sum(total), from: sum(from), ...(to !== undefined && { to: sum(to) }) });
const series = (values: readonly (number | null)[]) => ({
  type: "daily-series",
  version: 1,
  start: "2026-05-01",
  unit: "°C",
  source: "depot",
  what: "soil at 4 in",
  values,
});
const run =
  (values: readonly (number | null)[], change: object = {}) =>
  () =>
    firstRun({ series: series(values), threshold: quantity(20, "°C"), days: 2, ...change } as never);
const nitrogen = (change: object) => () =>
  nitrogenForGrowth({ maximum: quantity(1, "lb/1000 ft2", "N"), potential: share(50), ...change } as never);

const rows: readonly Refused[] = [
  [growth({ mean: quantity(1, "ft") }), "unit/mismatch", "mean", "a temperature"],
  [growth({ mean: quantity(76, "°C") }), "range", "mean", "75 °C"],
  [growth({ season: "cool" }), "type", "season", '"cool-season" or "warm-season"'],
  [growth({ constants: "K" }), "type", "constants", '"°C" or "°F"'],
  [growth({ aboveOptimum: "rising" }), "type", "aboveOptimum", '"held" or "falling"'],
  [growth({ optimum: quantity(1, "ft") }), "unit/mismatch", "optimum", "a temperature"],
  [() => growthClass(share(-1)), "range", "potential", "zero or more"],
  [() => growthClass(share(101)), "range", "potential", "100 % or less"],
  [nitrogen({ maximum: quantity(1, "lb/1000 ft2", "P2O5") }), "substance/mismatch", "maximum", "N"],
  [nitrogen({ maximum: quantity(-1, "lb/1000 ft2", "N") }), "range", "maximum", "zero or more"],
  [nitrogen({ potential: share(101) }), "range", "potential", "100 % or less"],
  [nitrogen({ mean: 1 }), "type", "input.mean", "potential"],
  [state(1, 3, 2), "conflict", "from", "not more than to, which is 2 °C d"],
  [
    () => degreeDayWindowState({ total: quantity(1, "d") as never, from: sum(1) as never }),
    "unit/mismatch",
    "total",
    "a sum of degree-days",
  ],
  [
    () =>
      degreeDayWindowState({
        total: sum(1),
        from: quantity(1, "°C d", "degree-days:other" as never) as never,
      }),
    "substance/mismatch",
    "from",
    "degree-days",
  ],
  [
    () => degreeDayWindowState({ total: sum(1), from: sum(1), to: quantity(1, "d") as never }),
    "unit/mismatch",
    "to",
    "a sum of degree-days",
  ],
  [run([20], { threshold: quantity(1, "ft") }), "unit/mismatch", "threshold", "a temperature"],
  [run([20], { days: 0 }), "range", "days", "1 or more"],
  [run([20], { days: 1.5 }), "range", "days", "days"],
  [run([20], { series: { ...series([20]), unit: "mm" } }), "unit/mismatch", "series", "a temperature"],
  [() => annualBluegrassFlowering(-1), "range", "degreeDays", "0 or more"],
  [() => annualBluegrassFlowering(1e6 + 1), "range", "degreeDays", "1000000 or less"],
  [() => eventWindowsFor(7 as never), "type", "word", "a word of the event"],
  [() => soilTemperaturesFor(7 as never), "type", "word", "a word of the event"],
];

describeRefused("what is refused of growth and events", rows);

describe("growth", () => {
  test("is whole at the optimum of each season and set of constants, and falls by e^-0.5 a width away", () => {
    const at = (mean: number, unit: "°C" | "°F", season: string, aboveOptimum = "held") =>
      growth({ mean: quantity(mean, unit), season, constants: unit, aboveOptimum })().in("%");
    for (const [season, unit, optimum, width] of [
      ["cool-season", "°C", 20, 5.5],
      ["cool-season", "°F", 68, 10],
      ["warm-season", "°C", 31, 7],
      ["warm-season", "°F", 88, 12],
    ] as const) {
      expect(at(optimum, unit, season)).toBeCloseTo(100, 9);
      expect(at(optimum - width, unit, season)).toBeCloseTo(100 * Math.exp(-0.5), 9);
      expect(at(optimum + width, unit, season, "falling")).toBeCloseTo(100 * Math.exp(-0.5), 9);
    }
    expect(at(38, "°C", "warm-season")).toBe(100);
    expect(at(25.5, "°C", "cool-season")).toBeCloseTo(100 * Math.exp(-0.5), 9);
    expect(growth({ mean: quantity(18, "°C"), optimum: quantity(18, "°C") })().in("%")).toBeCloseTo(100, 9);
  });

  test("is good from 50 % on, extremely limited down from 10 %", () => {
    expect([50, 49.9, 10.1, 10, 100, 0].map((value) => growthClass(share(value)))).toEqual([
      "good",
      "stressed",
      "stressed",
      "extremely limited",
      "good",
      "extremely limited",
    ]);
    expect(nitrogen({})().in("lb/1000 ft2")).toBe(0.5);
  });
});

describe("windows and runs", () => {
  test("at either end of a window is within it; without an end it stays within", () => {
    expect(state(1, 1, 2)()).toBe("within");
    expect(state(2, 1, 2)()).toBe("within");
    expect(state(0.9, 1, 2)()).toBe("before");
    expect(state(2.1, 1, 2)()).toBe("after");
    expect(state(1000, 1)()).toBe("within");
    expect(state(1, 1, 1)()).toBe("within");
  });

  test("a day just at the threshold counts, and a day without a figure breaks the run", () => {
    expect(run([20, 20])()).toBe("2026-05-02");
    expect(run([20, 19.9, 20, 20])()).toBe("2026-05-04");
    expect(run([20, null, 20, 20])()).toBe("2026-05-04");
    expect(run([20, 19])()).toBeNull();
    expect(run([20], { days: 1 })()).toBe("2026-05-01");
  });

  test("flowering of annual bluegrass is none where its parabola lies below zero", () => {
    expect(annualBluegrassFlowering(0)).toBe(0);
    // -3.331599e-6 g^2 + 6.968782e-3 g - 2.841894 at 1000.
    expect(annualBluegrassFlowering(1000)).toBeCloseTo(0.795289, 6);
    expect(annualBluegrassFlowering(2000)).toBe(0);
  });
});

describe("the tables", () => {
  test("of soil temperatures, as the list at 4 inches prints them", () => {
    expect(soilTemperatureThresholds.map(({ event, temperature }) => [event, ...temperature])).toEqual([
      ["crabgrass germination", 53, 58],
      ["goosegrass and spurge germination", 60, 65],
      ["overseeding bermudagrass with ryegrass, planting warm-season grass", 74, 74],
      ["spring root decline of warm-season grass", 64, 64],
      ["dormancy of warm-season grass begins", 50, 50],
    ]);
    for (const { unit, sensor, source } of soilTemperatureThresholds) {
      expect([unit, sensor]).toEqual(["°F", "soil at 4 in"]);
      expect(source.publisher).toMatch(/\w/);
    }
    expect(soilTemperaturesFor(" Crabgrass ")).toHaveLength(1);
  });

  test("of events: figures, scales, bases and starts as the sources print them", () => {
    const printed = [
      ["smooth crabgrass, first emergence", 42, 78, "°C d", 12, null],
      ["smooth crabgrass, major emergence", 140, 230, "°C d", 12, null],
      ["crabgrass, Virginia", 70, 140, "°F d", 50, null],
      ["crabgrass, pre-emergence application", 250, 500, "°F d", 32, "02-15"],
      ["smooth crabgrass, Ohio", 155, null, null, undefined, null],
      ["large crabgrass, Ohio", 211, null, null, undefined, null],
      ["annual bluegrass, seedhead suppression", 200, 500, "°F d", 32, "02-15"],
      ["Kentucky bluegrass, seedhead suppression", 25, 125, null, undefined, null],
      ["dandelion, ester", 145, null, "°F d", 50, null],
      ["dandelion, amine", 180, null, "°F d", 50, null],
    ];
    expect(
      eventWindows.map(({ id, from, to, unit, base, start }) => [id, from, to, unit, base?.value, start]),
    ).toEqual(printed);
    for (const { event, note, source, base, unit, sensor } of eventWindows) {
      for (const text of [event, note, source.title, source.publisher]) expect(text).toMatch(/\w{3}/);
      expect(base?.unit).toBe(unit === null ? undefined : unit.slice(0, 2));
      expect(sensor).toBe(unit === null ? null : unit === "°C d" ? "soil at 2.5 cm" : "air");
    }
    expect(eventWindowsFor("DANDELION")).toHaveLength(2);
    expect(eventWindowsFor("seedheads").map(({ id }) => id)).toEqual([
      "annual bluegrass, seedhead suppression",
      "Kentucky bluegrass, seedhead suppression",
    ]);
  });
});
