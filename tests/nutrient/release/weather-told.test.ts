import { describe, expect, test } from "vitest";
import { dailyTemperatures } from "../../../src/calendar/index.js";
import {
  accumulateEquivalentDaysC,
  polymerCoatedInSoil,
  polymerCoatedOnSurface,
  quickRelease,
  releasedNitrogen,
  releaseModel,
  statedDuration,
  sulfurCoatedUrea,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

// What a release tells of the weather it was given, of the placement, and of what was never measured.

const right = {
  name: "a coating",
  placement: "either",
  curve: { kind: "first order", ratePerDay: { low: 0.01, high: 0.02 } },
  temperature: { kind: "none" },
  assumptions: ["made up"],
  source: "a bulletin",
} as const;
const series = (sensor: "air" | "soil at 5 cm", min: readonly (number | null)[], max: readonly number[]) =>
  dailyTemperatures({ start: "2026-05-01", unit: "°C", sensor, source: "made up", min, max } as never);
const released = (change: object, model: unknown = quickRelease) =>
  releasedNitrogen({
    applied: "2026-05-01",
    days: 3,
    placement: "incorporated",
    temperature: { mean: quantity(20, "°C") },
    portions: [{ name: "N", nitrogen: quantity(100, "kg/ha", "N"), model }],
    ...change,
  } as never);
const mean = (value: number, unit: "°C" | "°F" = "°C") => ({ temperature: { mean: quantity(value, unit) } });

describe("a release tells of its weather", () => {
  test("that one mean stands for all days, in °C", () => {
    const { findings, assumptions } = released(mean(68, "°F"));
    expect(findings).toEqual([
      {
        code: "release/steady-temperature",
        severity: "note",
        path: "temperature.mean",
        params: { mean: expect.closeTo(20, 9) },
        text: "One mean temperature is used for all days; days that swing release more than steady ones.",
      },
    ]);
    expect(assumptions[0]).toBe("every day at 20 °C");
  });

  test("that air stands for soil, and how many days are frost; soil stands for itself", () => {
    const air = released({ temperature: series("air", [-1, 0, -0.5], [9, 9, 9]) });
    expect(air.findings).toEqual([
      {
        code: "release/air-temperature",
        severity: "note",
        path: "temperature.sensor",
        params: { sensor: "air" },
        text: "Air temperature is used for the granule; soil and thatch swing less and lag behind.",
      },
      {
        code: "release/frost",
        severity: "caution",
        path: "temperature",
        params: { days: 2 },
        text: "2 days go below 0 °C, where no source gives a release; the curve is extrapolated there.",
      },
    ]);
    expect(air.assumptions[0]).toBe(
      "temperatures: air; each day follows a cosine between its lowest and highest",
    );
    const soil = released({ temperature: series("soil at 5 cm", [1, 1, 1], [9, 9, 9]) });
    expect(soil.findings).toEqual([]);
    expect(soil.assumptions[0]).toBe(
      "temperatures: soil at 5 cm; each day follows a cosine between its lowest and highest",
    );
  });

  test("which days have no temperature, and what they have", () => {
    const [gap] = problemsOf(() => released({ temperature: series("air", [1, null, 1], [9, 9, 9]) }));
    expect([gap?.path, gap?.got, gap?.expected]).toEqual([
      "temperature.2026-05-02",
      "min null, max 9",
      "a lowest and a highest temperature",
    ]);
    const [late] = problemsOf(() => released({ days: 4, temperature: series("air", [1, 1, 1], [9, 9, 9]) }));
    expect([late?.code, late?.path, late?.got]).toEqual([
      "missing",
      "temperature.2026-05-04",
      "a day outside the series",
    ]);
  });

  test("between what a mean may lie, and that it may be no other record", () => {
    for (const value of [-61, 101]) {
      const [problem] = problemsOf(() => released(mean(value)));
      expect([problem?.code, problem?.path, problem?.params]).toEqual([
        "range",
        "temperature.mean",
        { min: -60, max: 100, unit: "°C" },
      ]);
    }
    expect(
      problemsOf(() => released({ temperature: { mean: quantity(20, "°C"), sensor: "air" } }))[0]?.path,
    ).toBe("temperature.sensor");
  });

  test("what comes out on each day, of each portion and in all", () => {
    // Evenly over 50 days, 2 kg a day of 100.
    const even = statedDuration({ days: { low: 50, high: 50 }, source: "made up" });
    const found = released({}, even);
    for (const { perDay, cumulative } of [found, ...found.portions]) {
      for (const [i, day] of perDay.entries()) {
        expect(day).toBeCloseTo(2, 12);
        expect(cumulative.mid[i]).toBeCloseTo(2 * (i + 1), 12);
      }
      expect(perDay).toHaveLength(3);
    }
  });

  test("the coldest and the warmest days that may be", () => {
    const q10 = { kind: "Q10", q10: { low: 2, high: 2 }, referenceC: 20 } as const;
    const days = (min: number, max: number) => () =>
      accumulateEquivalentDaysC(Float64Array.of(max), Float64Array.of(min), q10);
    expect(problemsOf(days(-60, 100))).toEqual([]);
    expect(problemsOf(days(-60.1, 20)).map(({ path }) => path)).toEqual(["minC[0]"]);
    expect(problemsOf(days(-60, 100.1)).map(({ path }) => path)).toEqual(["maxC[0]"]);
  });

  test("what was checked and what was not", () => {
    const { checked, notChecked } = released(mean(20), polymerCoatedInSoil);
    expect(checked).toEqual([
      "placement against that of each model",
      "that every day has a temperature",
      "days and temperatures against what was measured, where a model states it",
    ]);
    expect(notChecked).toEqual([
      "soil moisture, rain and irrigation",
      "broken coatings, and particle size except for isobutylidene diurea",
      "losses to air and water, and uptake: released is not taken up",
    ]);
    expect(released(mean(20), releaseModel(right)).notChecked[0]).toBe(
      "temperature: the model of N does not respond to it",
    );
  });
});

describe("a release tells where it goes beyond what was measured", () => {
  const beyond = (observed: object, celsius: number, more: object = {}) =>
    released(mean(celsius), releaseModel({ ...right, ...more, observed } as never)).findings.slice(1);

  test("in days", () => {
    expect(beyond({ days: 2 }, 20)).toEqual([
      {
        code: "release/beyond-observed-days",
        severity: "caution",
        path: "portions[0].model",
        source: "a bulletin",
        params: { model: "a coating", observedDays: 2, days: 3 },
        text: "The figures for a coating end on day 2; from there to day 3 it is extrapolated.",
      },
    ]);
  });

  test("in temperatures, from either end or from one alone", () => {
    const text = (observed: object, celsius: number, more: object = {}) =>
      beyond(observed, celsius, more)[0]?.text;
    const head = "3 of 3 days lie outside the temperatures at which a coating was measured,";
    expect(text({ fromC: 10, toC: 25 }, 30)).toBe(`${head} from 10 to 25 °C.`);
    expect(text({ fromC: 25, toC: 25 }, 20)).toBe(`${head} at 25 °C.`);
    expect(text({ fromC: 10 }, 5)).toBe(`${head} from 10 to any °C.`);
    expect(text({ toC: 25 }, 30)).toBe(`${head} from any to 25 °C.`);
    const response = { kind: "Q10", q10: { low: 2, high: 2 }, referenceC: 20, restsBelowC: 10 };
    expect(text({ fromC: 10, toC: 25 }, 5, { temperature: response })).toBe(
      `${head} from 10 to 25 °C; below 10 °C the low end takes no release.`,
    );
    expect(beyond({ toC: 25 }, 30)[0]).toMatchObject({
      code: "release/beyond-observed-temperature",
      severity: "caution",
      path: "portions[0].model",
      params: { model: "a coating", days: 3, toC: 25 },
    });
    expect(beyond({ toC: 25 }, 30)[0]?.params).not.toHaveProperty("fromC");
    expect(beyond({ fromC: 10 }, 5)[0]?.params).not.toHaveProperty("toC");
  });
});

describe("coated urea on the surface by a model for the soil", () => {
  const surface = { placement: "surface or thatch", ...mean(20) };
  const first = (model: unknown) =>
    released(surface, model).findings.find(({ code }) => code === "release/placement");

  test("is told in words of its coating, with the trial it rests on", () => {
    expect(first(polymerCoatedInSoil)).toEqual({
      code: "release/placement",
      severity: "caution",
      path: "portions[0].model",
      params: { model: polymerCoatedInSoil.name, placement: "surface or thatch", coating: "polymer" },
      text: "The model is for granules in the soil. On the surface or in thatch one trial found 80 % or more out by day 35 whatever the label said, another only half within a cool season: the range covers both, the middle follows the first.",
      source: polymerCoatedOnSurface.source,
    });
    const sulfur = sulfurCoatedUrea({
      sevenDayDissolution: quantity(25, "%"),
      sealed: true,
      source: "a sheet",
    });
    expect(first(sulfur)?.text).toBe(
      "The model is for granules in the soil. On the surface or in thatch the sulfur-coated ureas of one trial were no slower than uncoated urea, and wax-sealed granules of another waited 25 days: the range runs from one to the other.",
    );
    expect(released(surface, sulfur).cumulative.high).toEqual([100, 100, 100]);
    expect(
      released(surface, polymerCoatedInSoil).assumptions.filter((text) =>
        text.startsWith("on the surface: "),
      ),
    ).toHaveLength(polymerCoatedOnSurface.assumptions.length);
  });

  test("and the other way round there is no model", () => {
    const [problem] = problemsOf(() => released(mean(20), polymerCoatedOnSurface));
    expect([problem?.code, problem?.path, problem?.expected]).toEqual([
      "conflict",
      "portions[0].model.placement",
      "a model for incorporated",
    ]);
  });
});
