import { describe, expect, test } from "vitest";
import { dailyTemperatures } from "../../../src/calendar/index.js";
import {
  naturalOrganic,
  polymerCoatedOnSurface,
  programComparison,
  programFindings,
  quickRelease,
  releaseModel,
  statedDuration,
} from "../../../src/nutrient/index.js";
import { money, quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");
const common = {
  from: "2026-05-01",
  weeks: 10,
  placement: "surface or thatch",
  temperature: { mean: quantity(20, "°C") },
} as const;
const urea = (date: string, more: object = {}) => ({
  date: date as "2026-05-01",
  portions: [{ name: "urea", nitrogen: n(1), model: quickRelease }],
  ...more,
});
const compare = (programs: readonly unknown[], more: object = {}) =>
  programComparison({ ...common, programs, ...more } as never);

describe("the peak of a program", () => {
  test("begins on a day on which nitrogen comes out", () => {
    const late = compare([{ name: "late", applications: [urea("2026-05-21"), urea("2026-07-01")] }]);
    expect(late.programs[0]?.peakFrom).toBe("2026-05-21");
    expect(late.programs[0]?.peakSolubleLoad.mid.value).toBe(1);
    const last = compare([{ name: "last", applications: [urea("2026-07-09")] }]);
    expect(last.programs[0]?.peakFrom).toBe("2026-07-09");
    const none = { portions: [{ name: "none", nitrogen: n(0), model: quickRelease }] };
    expect(compare([{ name: "none", applications: [urea("2026-05-21", none)] }]).programs[0]).toMatchObject({
      peakFrom: "2026-05-01",
      peakSolubleLoad: { mid: { value: 0 } },
    });
  });

  test("has its ends in order where the slower curve peaks higher, in warmer days", () => {
    const lagged = releaseModel({
      name: "lagged",
      placement: "either",
      curve: { kind: "first order", ratePerDay: { low: 0.05, high: 0.05 }, lagDays: { low: 0, high: 21 } },
      temperature: { kind: "Q10", q10: { low: 3, high: 3 }, referenceC: 25 },
      assumptions: [],
      source: "made up",
    });
    const days = 70;
    const cold = 42;
    const of = (i: number) => (i < cold ? 5 : 35);
    const series = Array.from({ length: days }, (_, i) => of(i));
    const temperature = dailyTemperatures({
      start: "2026-05-01",
      unit: "°C",
      sensor: "soil at 5 cm",
      source: "made up",
      min: series,
      max: series,
    });
    const found = compare(
      [
        {
          name: "a",
          applications: [urea("2026-05-01", { portions: [{ name: "N", nitrogen: n(1), model: lagged }] })],
        },
      ],
      { temperature },
    ).programs[0]?.peakSolubleLoad;
    // By hand: a day at 5 °C counts 1/9, one at 35 °C 3; each week's release, lag 0 and lag 21.
    const peakOf = (lag: number): number => {
      const out = series.map((_, i) => {
        const e = i < cold ? (i + 1) / 9 : cold / 9 + 3 * (i + 1 - cold);
        return e <= lag ? 0 : 1 - Math.exp(-0.05 * (e - lag));
      });
      return Math.max(...out.map((sum, i) => sum - (out[i - 7] ?? 0)));
    };
    expect(peakOf(21)).toBeGreaterThan(peakOf(0));
    // With whole days even the middle lag peaks higher than both ends.
    const peaks = [peakOf(0), peakOf(10.5), peakOf(21)];
    expect(found?.low.value).toBeCloseTo(Math.min(...peaks), 9);
    expect(found?.mid.value).toBeCloseTo(peakOf(10.5), 9);
    expect(found?.high.value).toBeCloseTo(Math.max(...peaks), 9);
  });
});

describe("a comparison", () => {
  test("refuses two currencies between programs, beside all else that is wrong", () => {
    const paid = (currency: "USD" | "EUR") => ({
      name: currency,
      applications: [urea("2026-05-01", { cost: money(1, currency).per(quantity(1, "acre")) })],
    });
    expect(complaints(() => compare([paid("USD"), paid("EUR")]))).toEqual([
      "unit/mismatch programs[1].applications[0].cost",
    ]);
    expect(
      complaints(() => compare([paid("USD"), { name: "", applications: [urea("2026-05-01", { cost: 3 })] }])),
    ).toEqual(["missing programs[1].name", "unit/mismatch programs[1].applications[0].cost"]);
    expect(complaints(() => compare([], { from: "2026-02-30", weeks: 0, placement: "air" }))).toEqual([
      "date from",
      "range weeks",
      "type placement",
      "missing programs",
    ]);
  });

  test("tells a fault of the temperatures once, as the fault of the temperatures", () => {
    const programs = [{ name: "a", applications: [urea("2026-05-21"), urea("2026-06-01")] }];
    expect(complaints(() => compare(programs, { temperature: undefined }))).toEqual(["missing temperature"]);
    expect(complaints(() => compare(programs, { temperature: { mean: quantity(200, "°C") } }))).toEqual([
      "range temperature.mean",
    ]);
    const short = dailyTemperatures({
      start: "2026-05-21",
      unit: "°F",
      sensor: "air",
      source: "made up",
      min: Array.from({ length: 49 }, () => 50),
      max: Array.from({ length: 49 }, () => 70),
    });
    expect(complaints(() => compare(programs, { temperature: short }))).toEqual([
      "missing temperature.2026-07-09",
    ]);
  });

  test("counts days of frost from the first application of all, and names every model once", () => {
    const min = Array.from({ length: 70 }, (_, i) => (i < 20 ? -1 : 5));
    const temperature = dailyTemperatures({
      start: "2026-05-01",
      unit: "°C",
      sensor: "soil at 5 cm",
      source: "made up",
      min,
      max: min.map((t) => t + 10),
    });
    const coated = (coating: "polymer" | "sulfur") => ({
      name: coating,
      nitrogen: n(1),
      model: statedDuration({ days: { low: 60, high: 60 }, coating, source: "label" }),
    });
    const { findings, notChecked } = compare(
      [
        { name: "late", applications: [urea("2026-05-15")] },
        {
          name: "early",
          applications: [urea("2026-05-05", { portions: [coated("polymer"), coated("sulfur")] })],
        },
      ],
      { temperature },
    );
    // 20 cold days from May 1 on; the first application lies on May 5.
    expect(findings.find(({ code }) => code === "release/frost")?.params.days).toBe(16);
    expect(findings.filter(({ code }) => code === "release/placement").map(({ path }) => path)).toEqual([
      "programs[1].applications[0].portions[0].model",
      "programs[1].applications[0].portions[1].model",
    ]);
    expect(notChecked.filter((text) => text.startsWith("temperature: "))).toEqual([
      "temperature: the model of polymer does not respond to it",
      "temperature: the model of sulfur does not respond to it",
    ]);
  });
});

describe("findings about programs", () => {
  test("tell every fault of a portion with its path", () => {
    const programs = [
      { name: "a", applications: [{ portions: [null, { name: "N", nitrogen: n(1) }] }, {}] },
      {
        name: "b",
        applications: [
          {
            portions: [
              { name: "", nitrogen: quantity(1, "lb/acre", "P2O5"), model: quickRelease },
              { name: "N", nitrogen: n(-1), model: quickRelease },
            ],
          },
        ],
      },
    ];
    expect(complaints(() => programFindings(programs as never))).toEqual([
      "type programs[0].applications[0].portions[0]",
      "missing programs[0].applications[0].portions[1].model",
      "missing programs[0].applications[1].portions",
      "missing programs[1].applications[0].portions[0].name",
      "substance/mismatch programs[1].applications[0].portions[0].nitrogen",
      "range programs[1].applications[0].portions[1].nitrogen",
    ]);
  });

  test("speak of no program whose slow nitrogen is not all polymer-coated", () => {
    const portion = (model: unknown) => ({ name: "N", nitrogen: n(1), model });
    const codes = (...models: unknown[]) =>
      programFindings([{ name: "once", applications: [{ portions: models.map(portion) }] }] as never).map(
        ({ code }) => code,
      );
    expect(codes(polymerCoatedOnSurface, quickRelease)).toEqual(["program/coated-once"]);
    expect(codes(polymerCoatedOnSurface, naturalOrganic)).toEqual([]);
    expect(codes(quickRelease)).toEqual([]);
  });

  test("count the applications of coated urea, and not those of quick nitrogen beside them", () => {
    const one = (model: unknown) => ({ portions: [{ name: "N", nitrogen: n(1), model }] });
    const codes = (...models: unknown[]) =>
      programFindings([{ name: "mixed", applications: models.map(one) }] as never).map(({ code }) => code);
    const coated = polymerCoatedOnSurface;
    expect(codes(coated, quickRelease, quickRelease, quickRelease)).toEqual(["program/coated-once"]);
    expect(codes(coated, quickRelease, coated)).toEqual([]);
    expect(codes(coated, coated, quickRelease, coated)).toEqual(["program/coated-often"]);
  });

  test("compare nitrogen in one unit, and three quarters exactly are not short", () => {
    const program = (name: string, nitrogen: unknown, model: unknown, times: number) => ({
      name,
      applications: Array.from({ length: times }, () => ({ portions: [{ name: "N", nitrogen, model }] })),
    });
    const codes = (kgPerHa: number) =>
      programFindings([
        program("urea", quantity(43.56, "lb/acre", "N"), quickRelease, 4),
        program("coated", quantity(kgPerHa, "kg/ha", "N"), polymerCoatedOnSurface, 2),
      ] as never).map(({ code }) => code);
    // 4 lb/1000 ft2 are 195.297 kg/ha; three quarters in two parts are 73.236 kg/ha each.
    expect(codes(73.237)).toEqual([]);
    expect(codes(73.23)).toEqual(["program/coated-short"]);
  });
});
