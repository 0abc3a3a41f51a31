import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dailyTemperatures } from "../../../src/calendar/index.js";
import {
  accumulateEquivalentDaysC,
  controlledReleaseTest,
  firstOrderRate,
  naturalOrganic,
  polymerCoatedInSoil,
  polymerCoatedOnSurface,
  quickRelease,
  type ReleaseCurve,
  releaseByWeek,
  releasedNitrogen,
  releasedShares,
  releaseModel,
  slowPolymerCoatedInSoil,
  statedDuration,
  type TemperatureResponse,
  ureaFormaldehyde,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { errorOf } from "../../errors.js";
import { runs } from "../../properties.js";

const one = (x: number) => ({ low: x, high: x });
const range = (from: number, to: number) =>
  fc
    .tuple(fc.double({ min: from, max: to, noNaN: true }), fc.double({ min: from, max: to, noNaN: true }))
    .map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) }));

const curves: fc.Arbitrary<ReleaseCurve> = fc.oneof(
  fc.constant<ReleaseCurve>({ kind: "at once" }),
  range(1, 300).map((days): ReleaseCurve => ({ kind: "duration", days })),
  fc.tuple(range(0.001, 1), range(0, 40), range(1, 100)).map(
    ([ratePerDay, lagDays, mostPercent]): ReleaseCurve => ({
      kind: "first order",
      ratePerDay,
      lagDays,
      mostPercent,
    }),
  ),
  fc.tuple(fc.double({ min: 0, max: 6, noNaN: true }), range(0.001, 1), range(0, 200), range(1, 100)).map(
    ([shape, ratePerDay, inflectionDays, mostPercent]): ReleaseCurve => ({
      kind: "Richards",
      shape,
      ratePerDay,
      inflectionDays,
      mostPercent,
    }),
  ),
);
const responses: fc.Arbitrary<TemperatureResponse> = fc.oneof(
  fc.constant<TemperatureResponse>({ kind: "none" }),
  range(0.5, 5).map((q10): TemperatureResponse => ({ kind: "Q10", q10, referenceC: 25 })),
  range(0, 150).map(
    (activationEnergy): TemperatureResponse => ({
      kind: "Arrhenius",
      activationEnergy,
      referenceC: 25,
    }),
  ),
);
const days = fc.array(
  fc.tuple(fc.double({ min: -10, max: 35, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true })),
  { minLength: 1, maxLength: 40 },
);

const series = (list: readonly (readonly [number, number])[]) =>
  dailyTemperatures({
    start: "2026-05-01",
    unit: "°C",
    sensor: "soil at 5 cm",
    source: "made up",
    min: list.map(([low]) => low),
    max: list.map(([low, swing]) => low + swing),
  });

const base = {
  applied: "2026-05-01",
  placement: "incorporated",
  temperature: { mean: quantity(25, "°C") },
} as const;

describe("released nitrogen", () => {
  test("adds up, never falls, and keeps its low, middle and high end in order", () => {
    fc.assert(
      fc.property(
        curves,
        responses,
        days,
        fc.double({ min: 0, max: 10, noNaN: true }),
        (curve, response, list, n) => {
          const model = releaseModel({
            name: "m",
            placement: "either",
            curve,
            temperature: response,
            fitErrorPercent: 1.6,
            assumptions: [],
            source: "made up",
          });
          const release = releasedNitrogen({
            ...base,
            days: list.length,
            temperature: series(list),
            portions: [
              { name: "a", nitrogen: quantity(n, "lb/1000 ft2", "N:slow"), model },
              { name: "b", nitrogen: quantity(1, "kg/ha", "N:quick"), model: quickRelease },
            ],
          });
          const { low, mid, high } = release.cumulative;
          const near = 1e-9 * Math.max(1, release.applied);
          for (let i = 0; i < list.length; i++) {
            const [a, b, c] = [low[i], mid[i], high[i]] as [number, number, number];
            expect(a).toBeLessThanOrEqual(b + near);
            expect(b).toBeLessThanOrEqual(c + near);
            expect(c).toBeLessThanOrEqual(release.applied + near);
            expect(a).toBeGreaterThanOrEqual(-near);
            for (const end of [low, mid, high]) {
              expect(end[i] as number).toBeGreaterThanOrEqual((end[i - 1] ?? 0) - near);
            }
          }
          const last = mid.at(-1) as number;
          expect(last + release.remaining.mid).toBeCloseTo(release.applied, 9);
          expect(release.perDay.reduce((sum, x) => sum + x, 0)).toBeCloseTo(last, 9);
          const parts = release.portions.reduce(
            (sum, part) => sum + (part.cumulative.mid.at(-1) as number),
            0,
          );
          expect(parts).toBeCloseTo(last, 9);
          const weeks = releaseByWeek(release).reduce((sum, week) => sum + week.released.value, 0);
          expect(weeks).toBeCloseTo(last, 9);
        },
      ),
      runs(150),
    );
  });

  test("needs a placement, and says so", () => {
    const portions = [{ name: "N", nitrogen: quantity(1, "lb/1000 ft2", "N"), model: quickRelease }];
    const without = { ...base, placement: undefined as never, days: 3, portions };
    expect(errorOf(() => releasedNitrogen(without))).toMatchObject({ code: "missing", path: "placement" });
  });

  test("takes both surface trials into the band of polymer-coated granules there", () => {
    const model = statedDuration({ days: { low: 120, high: 120 }, coating: "polymer", source: "label" });
    const run = (placement: "surface or thatch" | "incorporated") =>
      releasedNitrogen({
        ...base,
        placement,
        days: 35,
        portions: [{ name: "N", nitrogen: quantity(100, "lb/acre", "N"), model }],
      });
    const [surface, soil] = [run("surface or thatch"), run("incorporated")];
    // Half in 150 days, where the label of 120 days says more.
    expect(surface.cumulative.low[34]).toBeCloseTo(100 * (1 - 0.5 ** (35 / 150)), 9);
    expect(soil.cumulative.high[34]).toBeCloseTo((100 * 35) / 120, 9);
    expect(surface.cumulative.mid[34]).toBeGreaterThanOrEqual(80);
    expect(surface.cumulative.high[0]).toBeGreaterThan(99.9);
    expect(surface.assumptions.some((text) => text.startsWith("on the surface: "))).toBe(true);
    expect(surface.findings.map(({ code }) => code)).toContain("release/placement");
    expect(soil.findings.map(({ code }) => code)).not.toContain("release/placement");
  });

  test("takes the wait of wax-sealed granules and broken coatings into the band of sulfur coatings on the surface", () => {
    for (const coating of ["sulfur", "polymer and sulfur"] as const) {
      const model = statedDuration({ days: { low: 80, high: 120 }, coating, source: "label" });
      const { cumulative, findings } = releasedNitrogen({
        ...base,
        placement: "surface or thatch",
        days: 40,
        portions: [{ name: "N", nitrogen: quantity(1, "lb/acre", "N"), model }],
      });
      // After 25 days 1 % of the nitrogen a day at first, 63 % in all.
      expect(cumulative.low[24]).toBe(0);
      expect(cumulative.low[39]).toBeCloseTo(0.63 * (1 - Math.exp((-15 * 0.01) / 0.63)), 12);
      expect(cumulative.mid[39]).toBeCloseTo(40 / 100, 12);
      expect(cumulative.high.every((out) => out === 1)).toBe(true);
      expect(findings.find(({ code }) => code === "release/placement")?.text).toContain("sulfur");
    }
  });

  test("widens the ends, not the middle, by the error of the fit, within none and all", () => {
    const model = releaseModel({
      name: "fitted",
      placement: "either",
      curve: { kind: "duration", days: one(100) },
      temperature: { kind: "none" },
      fitErrorPercent: 5,
      assumptions: [],
      source: "made up",
    });
    const { cumulative } = releasedNitrogen({
      ...base,
      days: 100,
      portions: [{ name: "N", nitrogen: quantity(10, "kg/ha", "N"), model }],
    });
    // 5 percentage points of 10 kg are 0.5 kg.
    const on = (day: number) => [cumulative.low[day], cumulative.mid[day], cumulative.high[day]];
    for (const [day, wanted] of [
      [0, [0, 0.1, 0.6]],
      [49, [4.5, 5, 5.5]],
      [99, [9.5, 10, 10]],
    ] as const) {
      wanted.forEach((value, i) => {
        expect(on(day)[i]).toBeCloseTo(value, 12);
      });
    }
  });

  test("refuses a surface model for granules in the soil", () => {
    const portions = [{ name: "N", nitrogen: quantity(1, "lb/acre", "N"), model: polymerCoatedOnSurface }];
    expect(errorOf(() => releasedNitrogen({ ...base, days: 3, portions }))).toMatchObject({
      code: "conflict",
      path: "portions[0].model.placement",
    });
  });

  test("names every day without a temperature", () => {
    const gap = dailyTemperatures({
      start: "2026-05-01",
      unit: "°F",
      sensor: "air",
      source: "made up",
      min: [50, null],
      max: [70, 72],
    });
    const portions = [{ name: "N", nitrogen: quantity(1, "lb/acre", "N"), model: polymerCoatedInSoil }];
    const error = errorOf(() => releasedNitrogen({ ...base, days: 3, temperature: gap, portions }));
    expect(error.problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
      "missing temperature.2026-05-02",
      "missing temperature.2026-05-03",
    ]);
  });

  test("reads daily temperatures from the day of the application on, in either unit, and counts frost below 0 °C", () => {
    const model = releaseModel({
      name: "doubling",
      placement: "either",
      curve: { kind: "first order", ratePerDay: one(0.1) },
      temperature: { kind: "Q10", q10: one(2), referenceC: 20 },
      assumptions: [],
      source: "made up",
    });
    const run = (unit: "°C" | "°F", list: readonly number[]) =>
      releasedNitrogen({
        ...base,
        days: 3,
        temperature: dailyTemperatures({
          start: "2026-04-29",
          unit,
          sensor: "soil at 5 cm",
          source: "made up",
          min: [...list],
          max: [...list],
        }),
        portions: [{ name: "N", nitrogen: quantity(1, "lb/acre", "N"), model }],
      });
    // The two days before the application do not count; 20, 30 and 10 °C count 1, 2 and 1/2 days.
    const metric = run("°C", [-40, -40, 20, 30, 10]);
    const customary = run("°F", [-40, -40, 68, 86, 50]);
    [1, 3, 3.5].forEach((days, i) => {
      expect(metric.cumulative.mid[i]).toBeCloseTo(1 - Math.exp(-0.1 * days), 12);
      expect(customary.cumulative.mid[i]).toBeCloseTo(1 - Math.exp(-0.1 * days), 12);
    });
    const frost = (list: readonly number[]) =>
      run("°C", [9, 9, ...list]).findings.find(({ code }) => code === "release/frost")?.params.days;
    expect([frost([0, 0.5, 1]), frost([-0.1, 0, -3])]).toEqual([undefined, 2]);
  });

  test("reports all that is wrong, and takes what JSON leaves of a right input", () => {
    const bad = errorOf(() =>
      releasedNitrogen({
        ...base,
        applied: "2026-02-30",
        days: 1.5,
        portions: [
          { name: "", nitrogen: quantity(1, "lb/acre", "N"), model: quickRelease },
          { name: "P", nitrogen: quantity(1, "lb/acre", "P2O5") as never, model: quickRelease },
          { name: "minus", nitrogen: quantity(-1, "lb/acre", "N"), model: quickRelease },
        ],
      }),
    );
    expect(bad.problems.map(({ path }) => path)).toEqual([
      "applied",
      "days",
      "portions[0].name",
      "portions[1].nitrogen",
      "portions[2].nitrogen",
    ]);
    const input = {
      ...base,
      days: 10,
      portions: [
        { name: "N", nitrogen: quantity(1, "lb/acre", "N"), model: polymerCoatedInSoil },
        { name: "o", nitrogen: quantity(1, "lb/acre", "N:slow"), model: naturalOrganic },
        { name: "u", nitrogen: quantity(1, "lb/acre", "N:slow"), model: ureaFormaldehyde },
      ],
    };
    const again = releasedNitrogen(JSON.parse(JSON.stringify(input)));
    expect(again.cumulative).toEqual(releasedNitrogen(input).cumulative);
    expect(JSON.parse(JSON.stringify(again))).toEqual(JSON.parse(JSON.stringify(releasedNitrogen(input))));
  });

  test("refuses amounts whose sum is no number", () => {
    const huge = { name: "N", nitrogen: quantity(1e308, "lb/acre", "N"), model: quickRelease };
    expect(errorOf(() => releasedNitrogen({ ...base, days: 1, portions: [huge, huge] }))).toMatchObject({
      code: "range",
      path: "portions",
    });
  });

  test("does not depend on the unit", () => {
    const run = (nitrogen: ReturnType<typeof quantity<"lb/acre", "N">>) =>
      releasedNitrogen({
        ...base,
        days: 20,
        portions: [{ name: "N", nitrogen, model: slowPolymerCoatedInSoil }],
      });
    const us = run(quantity(43.56, "lb/acre", "N"));
    const other = run(quantity(1, "lb/1000 ft2", "N") as never);
    expect(us.cumulative.mid[19] as number).toBeCloseTo(43.56 * (other.cumulative.mid[19] as number), 9);
  });
});

describe("the temperature kernel", () => {
  const q = (q10: number): TemperatureResponse => ({ kind: "Q10", q10: one(q10), referenceC: 25 });
  const dayOf = (max: number, min: number, response: TemperatureResponse): number =>
    accumulateEquivalentDaysC(Float64Array.of(max), Float64Array.of(min), response)[0] as number;

  test("is 1 at the reference and follows the two laws away from it", () => {
    const arrhenius: TemperatureResponse = { kind: "Arrhenius", activationEnergy: one(80), referenceC: 25 };
    expect(dayOf(25, 25, arrhenius)).toBeCloseTo(1, 12);
    expect(dayOf(35, 35, arrhenius)).toBeCloseTo(
      Math.exp((80_000 / 8.314462618) * (1 / 298.15 - 1 / 308.15)),
      10,
    );
    expect(dayOf(5, 5, q(3))).toBeCloseTo(1 / 9, 12);
  });

  test("averages a cosine day as a fine sum does", () => {
    for (const [max, min, q10] of [
      [35, -5, 3],
      [30, 10, 2],
      [40, 0, 2.5],
    ] as const) {
      let sum = 0;
      const steps = 20_000;
      for (let i = 0; i < steps; i++) {
        const t = (max + min) / 2 + ((max - min) / 2) * Math.cos((2 * Math.PI * (i + 0.5)) / steps);
        sum += q10 ** ((t - 25) / 10);
      }
      expect(dayOf(max, min, q(q10)) / (sum / steps)).toBeCloseTo(1, 4);
      expect(dayOf(max, min, q(q10))).toBeGreaterThan(dayOf((max + min) / 2, (max + min) / 2, q(q10)));
    }
  });

  test("names the day of a bad figure", () => {
    const run = (max: readonly number[], min: readonly number[]) =>
      errorOf(() => accumulateEquivalentDaysC(Float64Array.from(max), Float64Array.from(min), q(2)));
    expect(run([20, Number.NaN], [10, 10])).toMatchObject({ code: "not-finite", path: "maxC[1]" });
    expect(run([20], [21])).toMatchObject({ code: "conflict", path: "minC[0]" });
    expect(run([20], [-999])).toMatchObject({ code: "range", path: "minC[0]" });
    expect(run([20, 20], [10])).toMatchObject({ code: "conflict", path: "minC" });
  });

  test("is steeper for coated urea in soil than a leaching study of another coating, as its comment says", () => {
    // Brown, Luebs and Pratt 1966, Agronomy Journal 58:175-178 (abstract): 25 and 67 % in 28 days at 5 and 35 °C.
    const percent = (celsius: number, end: "low" | "high"): number => {
      const all = new Float64Array(28).fill(celsius);
      const equivalent = accumulateEquivalentDaysC(all, all, polymerCoatedInSoil.temperature, end);
      return 100 * (releasedShares(equivalent, polymerCoatedInSoil.curve, end)[27] as number);
    };
    // By hand from the printed ranges: k exp(E / R (1 / 298.15 - 1 / T)) for 28 days.
    const byHand = (celsius: number, k: number, kilojoules: number): number =>
      100 *
      (1 -
        Math.exp(-28 * k * Math.exp((kilojoules / 0.008314462618) * (1 / 298.15 - 1 / (celsius + 273.15)))));
    expect(percent(5, "low")).toBeCloseTo(byHand(5, 0.0177, 98), 9);
    expect(percent(5, "high")).toBeCloseTo(byHand(5, 0.0326, 69.9), 9);
    expect(percent(35, "low")).toBeCloseTo(byHand(35, 0.0177, 69.9), 9);
    expect(percent(35, "high")).toBeCloseTo(byHand(35, 0.0326, 98), 9);
    expect(
      [percent(5, "low"), percent(5, "high"), percent(35, "low"), percent(35, "high")].map(Math.round),
    ).toEqual([3, 11, 71, 96]);
  });

  test("averages a day as exactly as its comment says", () => {
    const fine = (f: (t: number) => number, mean: number, half: number): number => {
      let sum = 0;
      const steps = 20_000;
      for (let i = 0; i < steps; i++) sum += f(mean + half * Math.cos((Math.PI * (2 * i + 1)) / (2 * steps)));
      return sum / steps;
    };
    const arrhenius = (above: number, below: number) => (t: number) => {
      const x = 1 / 298.15 - 1 / (t + 273.15);
      return Math.exp(((x > 0 ? above : below) / 0.008314462618) * x);
    };
    const response = (low: number, high = low): TemperatureResponse => ({
      kind: "Arrhenius",
      activationEnergy: { low, high },
      referenceC: 25,
    });
    const worst = (
      given: TemperatureResponse,
      f: (t: number) => number,
      end: "low" | "mid" | "high" = "mid",
    ): number =>
      Math.max(
        ...[5, 12, 19, 25, 29, 35].map((mean) => {
          const [max, min] = [Float64Array.of(mean + 20), Float64Array.of(mean - 20)];
          const got = accumulateEquivalentDaysC(max, min, given, end)[0] as number;
          return Math.abs(got / fine(f, mean, 20) - 1);
        }),
      );
    expect(worst(q(3), (t) => 3 ** ((t - 25) / 10))).toBeLessThan(1e-4);
    expect(worst(q(10), (t) => 10 ** ((t - 25) / 10))).toBeLessThan(4e-3);
    expect(worst(response(98), arrhenius(98, 98))).toBeLessThan(1e-4);
    expect(worst(response(300), arrhenius(300, 300))).toBeLessThan(5e-2);
    expect(worst(response(69.9, 98), arrhenius(69.9, 98), "low")).toBeLessThan(1.5e-2);
    expect(worst(response(69.9, 98), arrhenius(98, 69.9), "high")).toBeLessThan(1.5e-2);
  });
});

describe("weeks of a release", () => {
  // 10 kg a day for ten weeks at the middle, 8 at the low and 14 at the high end.
  const model = statedDuration({ days: { low: 50, mid: 70, high: 87.5 }, source: "made up" });
  const portions = [{ name: "slow", nitrogen: quantity(700, "kg/ha", "N"), model }];
  const release = () => releasedNitrogen({ ...base, days: 16, portions });

  test("hold seven days each, the first beginning on the day of the application, the last the rest", () => {
    const weeks = releaseByWeek(release());
    expect(weeks.map(({ week }) => week)).toEqual([1, 2, 3]);
    [7, 7, 2].forEach((days, w) => {
      expect(weeks[w]?.released.value).toBeCloseTo(10 * days, 9);
    });
    expect(weeks[2]?.outByThen.mid.value).toBeCloseTo(160, 9);
    expect(weeks[2]?.outByThen.low.value).toBeCloseTo(128, 9);
    expect(weeks[2]?.outByThen.high.value).toBeCloseTo(224, 9);
  });

  test("leave inside what is not out: the least by the fastest curve", () => {
    expect(release().remaining.low).toBeCloseTo(700 - 224, 9);
    expect(release().remaining.mid).toBeCloseTo(700 - 160, 9);
    expect(release().remaining.high).toBeCloseTo(700 - 128, 9);
  });

  test("refuse a record that is none, with its path", () => {
    const broken = (cumulative: unknown) =>
      errorOf(() => releaseByWeek({ ...release(), cumulative } as never)).path;
    expect(broken(undefined)).toBe("release.cumulative");
    expect(broken({ low: [1], mid: [1, 2], high: [1, 2] })).toBe("release.cumulative.low");
    expect(broken({ low: [1, 2], mid: [1, 2], high: [1, null] })).toBe("release.cumulative.high[1]");
    expect(releaseByWeek(JSON.parse(JSON.stringify(release())))).toEqual(releaseByWeek(release()));
  });

  test("say which models do not respond to temperature, and no quick ones", () => {
    const more = [
      ...portions,
      { name: "urea", nitrogen: quantity(1, "lb/1000 ft2", "N"), model: quickRelease },
      { name: "coated", nitrogen: quantity(1, "lb/1000 ft2", "N"), model: polymerCoatedInSoil },
    ] as const;
    const { notChecked } = releasedNitrogen({ ...base, days: 3, portions: more });
    expect(notChecked.filter((text) => text.startsWith("temperature: "))).toEqual([
      "temperature: the model of slow does not respond to it",
    ]);
  });
});

describe("release curves", () => {
  const at = (curve: ReleaseCurve, t: number): number =>
    releasedShares(Float64Array.of(t), curve)[0] as number;
  const richards = (shape: number): ReleaseCurve => ({
    kind: "Richards",
    shape,
    ratePerDay: one(0.05),
    inflectionDays: one(40),
  });

  test("of Richards hold its three known cases", () => {
    for (const t of [0, 10, 40, 100, 1000]) {
      expect(at(richards(2), t)).toBeCloseTo(1 / (1 + Math.exp(-0.05 * (t - 40))), 12);
      expect(at(richards(1), t)).toBeCloseTo(Math.exp(-Math.exp(-0.05 * (t - 40))), 12);
      expect(at(richards(1 + 1e-9), t)).toBeCloseTo(at(richards(1), t), 6);
      expect(at(richards(1 - 1e-9), t)).toBeCloseTo(at(richards(1), t), 6);
      expect(at(richards(0), t)).toBeCloseTo(Math.max(0, 1 - Math.exp(-0.05 * (t - 40))), 12);
    }
  });

  test("of Richards start above zero also below a shape of 1, where (1 - d) exp(k i) is below 1", () => {
    // d = 0.5, k i = 0.5: (1 - 0.5 exp(0.5))^2 = 0.0309 is out at once; with k i = 2 nothing is.
    const at0 = (inflection: number): number =>
      at({ kind: "Richards", shape: 0.5, ratePerDay: one(0.05), inflectionDays: one(inflection) }, 0);
    expect(at0(10)).toBeCloseTo((1 - 0.5 * Math.exp(0.5)) ** 2, 12);
    expect(at0(40)).toBe(0);
  });

  test("of first order wait for the lag and end at the most", () => {
    const curve: ReleaseCurve = {
      kind: "first order",
      ratePerDay: one(0.1),
      lagDays: one(5),
      mostPercent: one(90),
    };
    expect(at(curve, 5)).toBe(0);
    expect(at(curve, 15)).toBeCloseTo(0.9 * (1 - Math.exp(-1)), 12);
    expect(at(curve, 1e6)).toBeCloseTo(0.9, 12);
  });

  test("take at each end the parameters that give the least or the most", () => {
    const shares = (curve: ReleaseCurve, t: number) =>
      (["low", "mid", "high"] as const).map((end) => releasedShares(Float64Array.of(t), curve, end)[0]);
    const lagged: ReleaseCurve = {
      kind: "first order",
      ratePerDay: { low: 0.02, high: 0.04 },
      lagDays: { low: 4, high: 8 },
      mostPercent: { low: 80, high: 100 },
    };
    const wanted = [
      0.8 * (1 - Math.exp(-0.02 * 2)),
      0.9 * (1 - Math.exp(-0.03 * 4)),
      1 - Math.exp(-0.04 * 6),
    ];
    shares(lagged, 10).forEach((share, i) => {
      expect(share).toBeCloseTo(wanted[i] as number, 12);
    });
    expect(shares({ kind: "duration", days: { low: 50, mid: 80, high: 100 } }, 40)).toEqual([0.4, 0.5, 0.8]);
    // Logistic, steepest on day 40 to 60: before it the higher rate is the slower one.
    const steep: ReleaseCurve = {
      kind: "Richards",
      shape: 2,
      ratePerDay: { low: 0.05, high: 0.1 },
      inflectionDays: { low: 40, high: 60 },
    };
    const logistic = (k: number, t: number) => 1 / (1 + Math.exp(-k * t));
    const ends = [logistic(0.1, -40), logistic(0.075, -30), logistic(0.05, -20)];
    shares(steep, 20).forEach((share, i) => {
      expect(share).toBeCloseTo(ends[i] as number, 12);
    });
  });

  test("refuse parameters that are none, with their path", () => {
    const bad = (curve: unknown) => errorOf(() => releasedShares(Float64Array.of(1), curve as ReleaseCurve));
    expect(bad({ kind: "first order", ratePerDay: { low: 2, high: 1 } })).toMatchObject({
      code: "conflict",
      path: "curve.ratePerDay.low",
    });
    expect(bad({ kind: "duration", days: one(0) })).toMatchObject({ code: "range", path: "curve.days.low" });
    expect(bad({ kind: "sudden" })).toMatchObject({ code: "type", path: "curve.kind" });
    expect(errorOf(() => releasedShares(Float64Array.of(1, -1), { kind: "at once" }))).toMatchObject({
      code: "range",
      path: "equivalentDays[1]",
    });
  });

  test("of one published point go through it", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 99.9, noNaN: true }),
        fc.double({ min: 1, max: 400, noNaN: true }),
        (percent, t) => {
          const curve: ReleaseCurve = {
            kind: "first order",
            ratePerDay: one(firstOrderRate({ percent, days: t })),
          };
          expect(100 * at(curve, t)).toBeCloseTo(percent, 8);
        },
      ),
    );
  });
});

describe("the test for controlled release", () => {
  const right = {
    percentAt24Hours: 15,
    percentAt28Days: 75,
    percentAtStatedTime: 75,
    statedDays: 90,
    temperatureC: 25,
  };

  test("counts a limit that is met exactly as met", () => {
    expect(controlledReleaseTest(right).qualifies).toBe(true);
    expect(controlledReleaseTest({ ...right, percentAt24Hours: 15.1 }).limits.map(({ met }) => met)).toEqual([
      false,
      true,
      true,
    ]);
    expect(
      controlledReleaseTest({ ...right, percentAt28Days: 74, percentAtStatedTime: 74.9 }).qualifies,
    ).toBe(false);
  });

  test("refuses another temperature, a falling release and a stated time inside the 28 days", () => {
    expect(errorOf(() => controlledReleaseTest({ ...right, temperatureC: 21 })).path).toBe("temperatureC");
    expect(errorOf(() => controlledReleaseTest({ ...right, percentAtStatedTime: 60 })).code).toBe("conflict");
    expect(errorOf(() => controlledReleaseTest({ ...right, statedDays: 20 })).path).toBe("statedDays");
  });
});
