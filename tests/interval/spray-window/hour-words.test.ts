import { describe, expect, test } from "vitest";
import { hourlyWeather, type SprayRules, sprayWindow } from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";

// What is told of an hour, word for word, and what happens exactly at a stated bound.

const start = "2026-06-03T06:00-05:00";
const source = "the label";
const column = (unit: string, ...values: readonly (number | null)[]) => ({ unit, values });
const all = (weather: object, rule: Omit<SprayRules, "source">, more: object = {}) =>
  sprayWindow({
    weather: hourlyWeather({ start, source: "a forecast", ...weather } as never),
    rules: [{ ...rule, source }],
    ...more,
  } as never);
const hour = (weather: object, rule: Omit<SprayRules, "source">, more: object = {}) =>
  all(weather, rule, more).hours[0] as NonNullable<ReturnType<typeof all>["hours"][number]>;
const texts = (weather: object, rule: Omit<SprayRules, "source">, more: object = {}) =>
  hour(weather, rule, more).objections.map(({ code, text }) => `${code}: ${text}`);
const open = (weather: object, rule: Omit<SprayRules, "source">, more: object = {}) =>
  hour(weather, rule, more).notChecked;
const height = quantity(2, "m");
const wind = (...values: readonly number[]) => ({ wind: { ...column("mi/h", ...values), height } });
const mph = (value: number) => quantity(value, "mi/h");

describe("figures against stated bounds", () => {
  test("on a bound are within it, beyond it are objected to with figure, bound and source", () => {
    const rule = { wind: { min: mph(3), max: mph(10), height } };
    expect([...texts(wind(3), rule), ...texts(wind(10), rule)]).toEqual([]);
    expect(texts(wind(2.9), rule)).toEqual([
      "spray/wind-below: Wind of 2.9 mi/h is below the stated 3 mi/h.",
    ]);
    expect(texts(wind(10.1), rule)).toEqual([
      "spray/wind-above: Wind of 10.1 mi/h is above the stated 10 mi/h.",
    ]);
    expect(hour(wind(10.1), rule).objections[0]).toMatchObject({
      params: { low: 10.1, high: 10.1, bound: 10, unit: "mi/h" },
      source,
    });
    expect(hour(wind(5), rule).statement).toBe("no stated rule objects");
    expect(hour(wind(11), rule).statement).toBe("a stated rule objects");
    expect([hour(wind(5), rule).from, hour(wind(5), rule).to]).toEqual([start, "2026-06-03T07:00-05:00"]);
  });

  test.each([
    ["temperature", "°C", 30, "Air temperature"],
    ["humidity", "%", 50, "Relative humidity"],
    ["soilMoisture", "% v/v", 20, "Soil moisture"],
  ] as const)("%s by its name", (name, unit, bound, words) => {
    const rule = { [name]: { max: quantity(bound, unit) } };
    const at = (value: number) => ({ [name]: column(unit, value) });
    expect(texts(at(bound), rule)).toEqual([]);
    expect(texts(at(bound + 1), rule)).toEqual([
      `spray/${name}-above: ${words} of ${bound + 1} ${unit} is above the stated ${bound} ${unit}.`,
    ]);
    expect(open({ rain: column("mm", 0) }, rule)).toEqual([`${words}: not in the record.`]);
  });

  test("gusts", () => {
    const rule = { gust: { max: mph(15), height } };
    const gust = (value: number) => ({ gust: { ...column("mi/h", value), height } });
    expect(texts(gust(15), rule)).toEqual([]);
    expect(texts(gust(16), rule)).toEqual([
      "spray/gust-above: Gusts of 16 mi/h are above the stated 15 mi/h.",
    ]);
  });

  test("without a record of it, and without both figures of Delta T, is not checked", () => {
    const rain = { rain: column("mm", 0) };
    expect(open(rain, { wind: { max: mph(10) } })).toEqual(["Wind: not in the record."]);
    expect(open({ temperature: column("°C", 20) }, { deltaT: { max: quantity(8, "°C diff") } })).toEqual([
      "Delta T: not in the record, or outside the range of its formula.",
    ]);
    expect(open({ humidity: column("%", 20) }, { deltaT: { max: quantity(8, "°C diff") } })).toHaveLength(1);
    expect(hour(rain, { wind: { max: mph(10) } }).statement).toBe(
      "no stated rule objects, but not all could be checked",
    );
  });
});

describe("rain", () => {
  const rain = (...values: readonly (number | null)[]) => ({ rain: column("mm", ...values) });
  test("counts in the hour itself and in so many hours behind it, and no more", () => {
    const rule = { rainfast: { hours: 2 } };
    expect(texts(rain(0, 0, 0, 5), rule)).toEqual([]);
    expect(texts(rain(0, 0, 5, 5), rule)).toEqual([
      "spray/rain: 5 mm of rain in the hour from 2026-06-03T08:00-05:00, within the 2 hours that are stated.",
    ]);
    expect(texts(rain(1, 0, 0), rule)).toEqual([
      "spray/rain: 1 mm of rain in the hour from 2026-06-03T06:00-05:00.",
    ]);
    expect(texts(rain(0, 1), { rainfast: { hours: 1 } })).toEqual([
      "spray/rain: 1 mm of rain in the hour from 2026-06-03T07:00-05:00, within the hour that is stated.",
    ]);
    expect(texts(rain(0, 0, 1, 0), { rainfast: { hours: 1.5 } })).toHaveLength(1);
    expect(texts(rain(0, 1), { rainfast: { hours: 0 } })).toEqual([]);
    expect(hour(rain(0, 0, 5, 5), rule).objections[0]?.params).toEqual({
      from: "2026-06-03T08:00-05:00",
      depth: 5,
      unit: "mm",
      hours: 2,
    });
  });

  test("of the depth that counts is none, of more it is", () => {
    const rule = { rainfast: { hours: 1, moreThan: quantity(0.5, "mm") } };
    expect(texts(rain(0.5, 0.5), rule)).toEqual([]);
    expect(texts(rain(0.5, 0.6), rule)).toHaveLength(1);
  });

  test("that the record does not reach is told with the number of hours", () => {
    expect(open(rain(0), { rainfast: { hours: 2 } })).toEqual([
      "Rain: not in the record for 2 of the stated hours.",
    ]);
    expect(open(rain(0, null, 0), { rainfast: { hours: 2 } })).toEqual([
      "Rain: not in the record for 1 of the stated hours.",
    ]);
  });
});

describe("frost and dormancy", () => {
  const air = (value: number) => ({ temperature: column("°C", value) });
  const soil = (value: number) => ({ soilTemperature: column("°C", value) });
  test("frost is at the stated temperature and below, dormancy below it only", () => {
    const frost = { frostAt: quantity(0, "°C") };
    expect(texts(air(0.1), frost)).toEqual([]);
    expect(texts(air(0), frost)).toEqual(["spray/frost: Frost: 0 °C against the stated 0 °C."]);
    const dormant = { dormantBelow: quantity(10, "°C") };
    expect(texts(soil(10), dormant)).toEqual([]);
    expect(texts(soil(9.9), dormant)).toEqual([
      "spray/dormant: Dormant turf: 9.9 °C against the stated 10 °C.",
    ]);
    expect(hour(soil(9), dormant).objections[0]?.params).toEqual({ temperature: 9, bound: 10, unit: "°C" });
  });

  test("without a temperature are not checked", () => {
    const rain = { rain: column("mm", 0) };
    expect(open(rain, { frostAt: quantity(0, "°C"), dormantBelow: quantity(10, "°C") })).toEqual([
      "Frost: no temperature in the record.",
      "Dormant turf: no temperature in the record.",
    ]);
  });
});

describe("signs of an inversion", () => {
  const sun = [{ sunrise: "2026-06-03T05:30-05:00", sunset: "2026-06-03T20:30-05:00" }];
  const at = (from: string, rule: NonNullable<SprayRules["inversion"]>, days: unknown = sun) =>
    hour({ start: from, ...wind(5) }, { inversion: rule }, { sun: days });
  const codes = (from: string, rule: NonNullable<SprayRules["inversion"]>) =>
    at(from, rule).objections.map(({ code, text }) => `${code}: ${text}`);

  test("calm is below the stated speed, not at it", () => {
    const rule = { inversion: { calmBelow: mph(3), height } };
    expect(texts(wind(3), rule)).toEqual([]);
    expect(texts(wind(2.9), rule)).toEqual([
      "spray/inversion-calm: Wind of 2.9 mi/h is calm, which may mean an inversion.",
    ]);
    expect(hour(wind(2.9), rule).objections[0]?.params).toEqual({ wind: 2.9, bound: 3, unit: "mi/h" });
    expect(open({ rain: column("mm", 0) }, rule)).toEqual([
      "Calm as a sign of inversion: wind not in the record.",
    ]);
  });

  test("the morning ends so many hours after sunrise, the evening begins so many before sunset", () => {
    const morning = { afterSunrise: 2 };
    expect(codes("2026-06-03T07:30-05:00", morning)).toEqual([]);
    expect(codes("2026-06-03T07:29-05:00", morning)).toEqual([
      "spray/inversion-morning: Earlier than 2 hours after sunrise: an inversion may still be in place.",
    ]);
    const evening = { beforeSunset: 2 };
    expect(codes("2026-06-03T17:30-05:00", evening)).toEqual([]);
    expect(codes("2026-06-03T17:31-05:00", evening)).toEqual([
      "spray/inversion-evening: Later than 2 hours before sunset: an inversion may form.",
    ]);
    expect(at("2026-06-03T07:00-05:00", morning).objections[0]?.params).toEqual({
      sunrise: "2026-06-03T05:30-05:00",
      hours: 2,
    });
    expect(at("2026-06-03T18:00-05:00", evening).objections[0]?.params).toEqual({
      sunset: "2026-06-03T20:30-05:00",
      hours: 2,
    });
  });

  test("the day is that whose noon is nearest; without it nothing is said of the sun", () => {
    const morning = { afterSunrise: 2 };
    const left = "Sunrise and sunset of the day are not given.";
    // Noon is 13:00: half a day before and behind it.
    expect(at("2026-06-03T01:00-05:00", morning).objections).toHaveLength(1);
    expect(at("2026-06-03T00:59-05:00", morning).notChecked).toEqual([left]);
    expect(at("2026-06-04T00:59-05:00", morning).notChecked).toEqual([]);
    expect(at("2026-06-04T01:00-05:00", morning).notChecked).toEqual([left]);
    expect(at("2026-06-03T12:00-05:00", morning, []).notChecked).toEqual([left]);
  });
});

describe("a window", () => {
  test("runs over the hours to which nothing objects and of which all could be checked", () => {
    const rule = { wind: { max: mph(10), height } };
    const found = all(wind(5, 5, 11, 5), rule);
    expect(found.runs.map(({ from, to, hours }) => [from, to, hours])).toEqual([
      [start, "2026-06-03T08:00-05:00", 2],
      ["2026-06-03T09:00-05:00", "2026-06-03T10:00-05:00", 1],
    ]);
    expect(found.checked).toEqual(["wind"]);
    expect(found.assumed).toEqual([]);
    for (const part of [
      "gust",
      "temperature",
      "humidity",
      "deltaT",
      "soilMoisture",
      "rainfast",
      "frostAt",
      "dormantBelow",
      "inversion",
    ])
      expect(found.notChecked).toContain(`${part}: no rule states it.`);
    expect(found.notChecked.at(-1)).toContain("everything else on the label");
    expect(found.notChecked.join(" ")).not.toContain("wind: no rule");
  });

  test("a height that is stated once for all rules is told", () => {
    const found = all(wind(5), { wind: { max: mph(10) } }, { windHeight: height });
    expect(found.assumed).toEqual(["Wind rules with no stated height are taken at 2 m above the ground."]);
    expect(found.hours[0]?.statement).toBe("no stated rule objects");
  });
});
