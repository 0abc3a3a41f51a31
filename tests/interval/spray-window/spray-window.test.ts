import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  deltaT,
  type HourlyWeather,
  hourlyWeather,
  publishedSprayRules,
  type SprayRules,
  wetBulb,
  sprayWindow as windowOf,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const start = "2026-06-03T06:00-05:00" as const;
const source = "forecast of the weather service";
const mph = (value: number) => ({ value, unit: "mi/h", of: "none" });
const record = (columns: Partial<HourlyWeather>) => hourlyWeather({ start, source, ...columns });
const height = { value: 2, unit: "m", of: "none" };
const wind = (...values: (number | null)[]) => ({ unit: "mi/h", height, values });
/** The height of the wind has a test of its own: here record and rules mean the same. */
const sprayWindow: typeof windowOf = (input) => windowOf({ windHeight: quantity(2, "m"), ...input });
const codes = (weather: HourlyWeather, rules: Omit<SprayRules, "source">, more: object = {}) =>
  sprayWindow({ weather, rules: [{ source: "label", ...rules }], ...more }).hours.map(({ objections }) =>
    objections.map(({ code }) => code),
  );

/**
 * Wet bulb by the psychrometric equation at sea level, e = es(Tw) - 0.00066 (1 + 0.00115 Tw) P (T - Tw), solved
 * by halving: shares nothing with the fit.
 */
const psychrometer = (t: number, rh: number): number => {
  const saturated = (x: number) => 0.61094 * Math.exp((17.625 * x) / (x + 243.04));
  const e = (saturated(t) * rh) / 100;
  let [low, high] = [t - 40, t];
  for (let i = 0; i < 80; i++) {
    const tw = (low + high) / 2;
    if (saturated(tw) - 0.00066 * (1 + 0.00115 * tw) * 101.325 * (t - tw) < e) low = tw;
    else high = tw;
  }
  return (low + high) / 2;
};

describe("wet bulb", () => {
  test("lies within its stated band of the psychrometric equation", () => {
    for (let t = 5; t <= 45; t += 2.5) {
      for (let rh = 15; rh <= 95; rh += 5) {
        const air = { temperature: quantity(t, "°C"), humidity: quantity(rh, "%") };
        const { low, high } = wetBulb(air);
        const right = psychrometer(t, rh);
        // A tenth of a degree for the constants of saturation and psychrometer, on which sources differ.
        expect(right, `${t} °C, ${rh} %`).toBeGreaterThan(low.in("°C") - 0.1);
        expect(right, `${t} °C, ${rh} %`).toBeLessThan(high.in("°C") + 0.1);
        const dt = deltaT(air);
        expect(dt.low.value).toBeLessThanOrEqual(Math.max(0, dt.value.value));
        expect(dt.high.value).toBeGreaterThanOrEqual(dt.value.value);
      }
    }
  });
  test("takes what JSON left of quantities, and other units", () => {
    const air = { temperature: quantity(20, "°C"), humidity: quantity(50, "%") };
    expect(deltaT(JSON.parse(JSON.stringify(air)))).toEqual(deltaT(air));
    const other = deltaT({ temperature: quantity(68, "°F"), humidity: quantity(0.5, "1") });
    expect(other.value.in("°F diff")).toBeCloseTo(deltaT(air).value.in("°F diff"), 9);
    // Printed for this state of the air by the source of the formula: 13.7 °C.
    expect(wetBulb(air).value.in("°C")).toBeCloseTo(13.7, 1);
  });
  test("is the printed formula, worked apart from this library, and its band the printed error", () => {
    for (const [t, rh, tw] of [
      [20, 50, 13.6993],
      [40, 90, 38.4694],
      [0, 20, -4.5298],
      [-10, 70, -11.6687],
    ] as const) {
      const air = { temperature: quantity(t, "°C"), humidity: quantity(rh, "%") };
      expect(wetBulb(air).value.in("°C")).toBeCloseTo(tw, 4);
      // An error from -1 to +0.65 °C: the true figure lies from 0.65 below to 1 above what is computed.
      expect(wetBulb(air).low.in("°C")).toBeCloseTo(tw - 0.65, 4);
      expect(wetBulb(air).high.in("°C")).toBeCloseTo(tw + 1, 4);
      const { low, high } = deltaT(air);
      expect(low.in("°C diff")).toBeCloseTo(t - tw - 1, 4);
      expect(high.in("°C diff")).toBeCloseTo(t - tw + 0.65, 4);
    }
  });
  test("no band of Delta T reaches below 0", () => {
    const { value, low, high } = deltaT({ temperature: quantity(50, "°C"), humidity: quantity(99, "%") });
    expect([low.value, value.value > 0, high.value > value.value]).toEqual([0, true, true]);
  });
  test("is refused outside its range", () => {
    const air = (t: number, rh: number) => ({ temperature: quantity(t, "°C"), humidity: quantity(rh, "%") });
    expect(complaints(() => wetBulb(air(20, 4)))).toEqual(["range humidity"]);
    expect(complaints(() => wetBulb(air(20, 100)))).toEqual(["range humidity"]);
    expect(complaints(() => wetBulb(air(51, 50)))).toEqual(["range temperature"]);
    expect(complaints(() => wetBulb({ ...air(20, 50), humidity: quantity(50, "% v/v") as never }))).toEqual([
      "unit/mismatch humidity",
    ]);
  });
});

describe("sprayWindow", () => {
  test("wind: from, up to, gusts; on the bound is within", () => {
    const weather = record({
      wind: wind(2.9, 3, 8, 8.1),
      gust: { height, unit: "km/h", values: [5, 5, 30, 5] },
    });
    expect(codes(weather, { wind: { min: mph(3), max: mph(8) }, gust: { max: mph(15) } })).toEqual([
      ["spray/wind-below"],
      [],
      ["spray/gust-above"],
      ["spray/wind-above"],
    ]);
  });

  test("rain within the rainfast time, in the hour itself, and at the end of the record", () => {
    const weather = record({ rain: { unit: "mm", values: [0, 0, 0, 0.4, 0, 0, 0] } });
    const found = sprayWindow({ weather, rules: [{ rainfast: { hours: 2 }, source: "label" }] });
    expect(found.hours.map(({ statement }) => statement)).toEqual([
      "no stated rule objects",
      "a stated rule objects",
      "a stated rule objects",
      "a stated rule objects",
      "no stated rule objects",
      "no stated rule objects, but not all could be checked",
      "no stated rule objects, but not all could be checked",
    ]);
    expect(found.runs).toEqual([
      { from: start, to: "2026-06-03T07:00-05:00", hours: 1 },
      { from: "2026-06-03T10:00-05:00", to: "2026-06-03T11:00-05:00", hours: 1 },
    ]);
    expect(
      codes(weather, { rainfast: { hours: 2, moreThan: { value: 0.5, unit: "mm", of: "none" } } }).flat(),
    ).toEqual([]);
  });

  test("Delta T is a band: only what lies wholly outside is objected to", () => {
    // By the fit 6.3, 12.5 and 2.5 °C; the last lies from 1.5 to 3.1.
    const weather = record({
      temperature: { unit: "°C", values: [20, 25, 20, null] },
      humidity: { unit: "%", values: [50, 20, 80, 50] },
    });
    const rules = publishedSprayRules.filter(({ deltaT: stated }) => stated !== undefined);
    const { hours } = sprayWindow({ weather, rules });
    expect(hours.map(({ objections }) => objections.map(({ code }) => code))).toEqual([
      [],
      ["spray/deltaT-above"],
      [],
      [],
    ]);
    expect(hours.map(({ notChecked }) => notChecked.length)).toEqual([0, 0, 1, 1]);
  });

  test("signs of inversion, frost and dormancy", () => {
    const weather = record({
      wind: wind(2, 6, 6, 6),
      temperature: { unit: "°F", values: [32, 33, 40, 50] },
      soilTemperature: { unit: "°F", values: [49, 50, 51, null] },
    });
    const rules = {
      inversion: { calmBelow: mph(3), afterSunrise: 1, beforeSunset: 2 },
      frostAt: { value: 0, unit: "°C", of: "none" },
      dormantBelow: { value: 50, unit: "°F", of: "none" },
    };
    const sun = [{ sunrise: "2026-06-03T05:30-05:00", sunset: "2026-06-03T11:30-05:00" }];
    expect(codes(weather, rules, { sun })).toEqual([
      ["spray/frost", "spray/dormant", "spray/inversion-calm", "spray/inversion-morning"],
      [],
      [],
      ["spray/inversion-evening"],
    ]);
    const zulu = [{ sunrise: "2026-06-03T10:30Z", sunset: "2026-06-03T16:30Z" }];
    expect(codes(weather, rules, { sun: zulu })).toEqual(codes(weather, rules, { sun }));
    const east = sprayWindow({
      weather: hourlyWeather({ start: "2026-06-03T06:00+10:00", source, wind: wind(5) }),
      sun: [{ sunrise: "2026-06-02T20:30Z", sunset: "2026-06-03T07:00Z" }],
      rules: [{ inversion: { afterSunrise: 1 }, source: "label" }],
    });
    expect(east.hours[0]?.objections[0]?.code).toBe("spray/inversion-morning");
    const { hours } = sprayWindow({ weather, rules: [{ ...rules, source: "label" }] });
    expect(hours[1]?.notChecked).toEqual(["Sunrise and sunset of the day are not given."]);
    expect(hours[3]?.notChecked).toContain("Dormant turf: no temperature in the record.");
  });

  test("what is missing is named, never passed", () => {
    const { hours, runs, checked, notChecked } = sprayWindow({
      weather: record({ wind: wind(5, null) }),
      rules: [{ wind: { max: mph(8) }, gust: { max: mph(10) }, source: "label" }],
    });
    expect(hours.map(({ statement }) => statement)).toEqual(
      Array(2).fill("no stated rule objects, but not all could be checked"),
    );
    expect(hours.map(({ notChecked: list }) => list.length)).toEqual([1, 2]);
    expect(runs).toEqual([]);
    expect(checked).toEqual(["wind", "gust"]);
    expect(notChecked.length).toBeGreaterThan(7);
  });

  test("several rules hold at once, and each objection carries its source", () => {
    const { hours } = sprayWindow({
      weather: record({ wind: wind(9) }),
      rules: [
        { wind: { max: mph(10) }, source: "label" },
        { wind: { max: mph(8) }, source: "house rule" },
      ],
    });
    expect(hours[0]?.objections.map((one) => one.source)).toEqual(["house rule"]);
  });

  test("a tighter rule never objects to fewer hours", () => {
    const columns = fc.array(fc.option(fc.integer({ min: 0, max: 30 })), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(
        columns,
        fc.integer({ min: 0, max: 30 }),
        fc.integer({ min: 0, max: 10 }),
        (values, max, less) => {
          const weather = record({ wind: wind(...values) });
          const count = (bound: number) => codes(weather, { wind: { max: mph(bound) } }).flat().length;
          expect(count(Math.max(0, max - less))).toBeGreaterThanOrEqual(count(max));
        },
      ),
    );
  });

  test("goes through JSON, and bad input is named with its path", () => {
    const weather = record({ wind: wind(5, 9) });
    const rules = [{ wind: { max: quantity(8, "mi/h") }, source: "label" }];
    const found = sprayWindow({ weather, rules });
    expect(sprayWindow(JSON.parse(JSON.stringify({ weather, rules })))).toEqual(found);
    expect(JSON.parse(JSON.stringify(found))).toEqual(found);
    expect(
      complaints(() =>
        sprayWindow({ weather: { ...weather, wind: { unit: "mph", values: [5] } }, rules: [] }),
      ),
    ).toEqual(["unit/unknown weather.wind.unit", "missing rules"]);
    expect(complaints(() => record({ wind: { unit: "mm", values: [1] } }))).toEqual([
      "unit/mismatch wind.unit",
    ]);
    expect(complaints(() => record({ wind: wind(1, 2), gust: wind(1) }))).toEqual(["conflict gust.values"]);
    expect(complaints(() => record({ wind: wind(1, -2) }))).toEqual(["range wind.values[1]"]);
    expect(complaints(() => codes(weather, { wind: { min: mph(8), max: mph(3) } }))).toEqual([
      "conflict rules[0].wind.min",
    ]);
    expect(complaints(() => record({}))).toEqual(["missing wind"]);
    expect(
      complaints(() =>
        sprayWindow({
          weather,
          rules: [{ wind: { max: { value: 8, unit: "mm", of: "none" } }, rainfast: {} as never, source: "" }],
        }),
      ),
    ).toEqual([
      "missing rules[0].source",
      "unit/mismatch rules[0].wind.max",
      "missing rules[0].rainfast.hours",
    ]);
  });

  test("a rule that states nothing is refused: an hour of 55 mi/h must not pass for want of a bound", () => {
    const weather = record({ wind: wind(55) });
    const of = (rule: object) =>
      complaints(() => sprayWindow({ weather, rules: [{ source: "label", ...rule } as SprayRules] }));
    expect(of({})).toEqual(["missing rules[0]"]);
    expect(of({ wind: {} })).toEqual(["missing rules[0].wind"]);
    expect(of({ wind: { maximum: mph(8) } })).toEqual(["type rules[0].wind.maximum"]);
    expect(of({ wind: 8 })).toEqual(["type rules[0].wind"]);
    expect(of({ wind: null, rainfast: null, inversion: null })).toEqual([
      "type rules[0].wind",
      "type rules[0].rainfast",
      "type rules[0].inversion",
    ]);
    expect(of({ inversion: {} })).toEqual(["missing rules[0].inversion"]);
    expect(of({ inversion: { calm: mph(3) }, gust: {} })).toEqual([
      "missing rules[0].gust",
      "type rules[0].inversion.calm",
    ]);
  });

  test("a figure that cannot be is refused, in every unit of it", () => {
    const one = (name: string, unit: string, value: number) =>
      complaints(() => record({ [name]: { unit, values: [value] } }));
    // 55 of 1 is 5500 %: a percentage with the wrong unit.
    expect(one("humidity", "1", 55)).toEqual(["range humidity.values[0]"]);
    expect(one("humidity", "1", 1)).toEqual([]);
    expect(one("cloud", "%", 101)).toEqual(["range cloud.values[0]"]);
    expect(one("soilMoisture", "% v/v", 101)).toEqual(["range soilMoisture.values[0]"]);
    // -999 and 999.9 stand for "no figure" at weather stations.
    for (const name of ["temperature", "soilTemperature"]) {
      expect(one(name, "°C", -999)).toEqual([`range ${name}.values[0]`]);
      expect(one(name, "°F", 999.9)).toEqual([`range ${name}.values[0]`]);
      expect(one(name, "°F", -40)).toEqual([]);
      expect(one(name, "K", 310)).toEqual([]);
    }
    expect(complaints(() => record({ wind: wind() }))).toEqual(["missing wind.values"]);
  });

  test("says nothing of leave", () => {
    const text = JSON.stringify(
      sprayWindow({ weather: record({ wind: wind(5) }), rules: publishedSprayRules }),
    );
    expect(text).not.toMatch(/allowed|permitted|safe|legal/i);
  });
});
