import { expect, test } from "vitest";
import { deltaT, hourlyWeather, rainfastFrom, sprayWindow, wetBulb } from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of hourly weather and of the rules that it is held against.

const start = "2026-06-03T06:00-05:00";
const mph = (value: number) => quantity(value, "mi/h");
const record = (change: object) => () =>
  hourlyWeather({ start, source: "a forecast", rain: { unit: "mm", values: [0, 0] }, ...change } as never);
const window0 = (change: object) => () =>
  sprayWindow({
    weather: record({})(),
    rules: [{ rainfast: { hours: 1 }, source: "the label" }],
    ...change,
  } as never);
const rule = (change: object) => window0({ rules: [{ source: "the label", ...change }] });
const sun = (change: object) =>
  window0({ sun: [{ sunrise: "2026-06-03T05:30-05:00", sunset: "2026-06-03T20:30-05:00", ...change }] });

const figures = {
  temperature: ["°C", "a temperature", 101],
  humidity: ["%", "a share", 101],
  wind: ["m/s", "a speed or a depth per time", -1],
  gust: ["m/s", "a speed or a depth per time", -1],
  rain: ["mm", "a length", -1],
  cloud: ["%", "a share", -1],
  soilTemperature: ["°C", "a temperature", -300],
  soilMoisture: ["% v/v", "a share by volume", 101],
} as const;

const columns = Object.entries(figures).flatMap(([name, [unit, dimension, wrong]]): readonly Refused[] => [
  [record({ [name]: { unit, values: [wrong, wrong] } }), "range", `${name}.values[0]`, unit],
  [
    record({ [name]: { unit: "acre", values: [1, 1] } }),
    "unit/mismatch",
    `${name}.unit`,
    `a unit for ${dimension}, such as `,
  ],
  [
    record({ [name]: { unit: "furlongs", values: [1, 1] } }),
    "unit/unknown",
    `${name}.unit`,
    `a unit for ${dimension}, such as `,
  ],
  [
    record({ [name]: { unit: 7, values: [1, 1] } }),
    "unit/unknown",
    `${name}.unit`,
    `a unit for ${dimension}, such as `,
  ],
  [record({ [name]: { unit, values: 7 } }), "type", `${name}.values`, "a list of numbers and null"],
  [record({ [name]: { unit, values: [1, "x"] } }), "not-finite", `${name}.values[1]`, "a number, or null"],
  [record({ [name]: 7 }), "type", name, "a record with unit and values"],
]);

const rows: readonly Refused[] = [
  [record({ start: "today" }), "date", "start", "-"],
  [record({ source: "" }), "missing", "source", "who gives the figures"],
  [record({ rain: undefined }), "missing", "wind", "at least one column"],
  [
    record({ wind: { unit: "m/s", values: [1] } }),
    "conflict",
    "rain.values",
    "as many hours as the others, which is 1",
  ],
  [record({ rain: { unit: "mm", values: [] } }), "missing", "rain.values", "hour"],
  [record({ rain: { unit: "mm", values: [0, 0], height: quantity(2, "m") } }), "type", "rain.height", "unit"],
  [
    record({ wind: { unit: "m/s", values: [0, 0], height: quantity(0, "m") } }),
    "range",
    "wind.height",
    "more than zero",
  ],
  [record({ gust: { unit: "m/s", values: [0, 0], height: 2 } }), "type", "gust.height", "quantity"],
  [record({ snow: 1 }), "type", "weather.snow", "rain"],
  [window0({ weather: 7 }), "type", "weather", "an hourly record, as hourlyWeather gives"],
  [window0({ weather: { ...record({})(), start: "today" } }), "date", "weather.start", "-"],
  [window0({ rules: [] }), "missing", "rules", "rule"],
  [window0({ rules: [7] }), "type", "rules[0]", "a record of rules"],
  [window0({ windHeight: quantity(0, "m") }), "range", "windHeight", "more than zero"],
  [window0({ windHeight: quantity(1, "h") }), "unit/mismatch", "windHeight", "a length"],
  [window0({ sun: 7 }), "type", "sun", "a list of days with sunrise and sunset"],
  [window0({ sun: [7] }), "type", "sun[0]", "record"],
  [window0({ sun: Array(40_001).fill({}) }), "range", "sun", "40000 days or fewer"],
  [sun({ sunrise: "dawn" }), "date", "sun[0].sunrise", "-"],
  [sun({ sunset: "dusk" }), "date", "sun[0].sunset", "-"],
  [sun({ sunset: "2026-06-03T05:30-05:00" }), "date", "sun[0].sunset", "a time after sunrise"],
  [sun({ moon: 1 }), "type", "sun[0].moon", "sunset"],
  [rule({}), "missing", "rules[0]", "at least one rule besides the source"],
  [rule({ source: "", rainfast: { hours: 1 } }), "missing", "rules[0].source", "where it is stated"],
  [rule({ snow: 1 }), "type", "rules[0].snow", "rainfast"],
  ...(["wind", "gust", "temperature", "humidity", "deltaT", "soilMoisture"] as const).flatMap(
    (name): readonly Refused[] => [
      [rule({ [name]: 7 }), "type", `rules[0].${name}`, "a record of what is stated"],
      [rule({ [name]: {} }), "missing", `rules[0].${name}`, "min, max or both"],
      [rule({ [name]: { min: quantity(1, "lb") } }), "unit/mismatch", `rules[0].${name}.min`, ""],
      [rule({ [name]: { max: quantity(1, "lb") } }), "unit/mismatch", `rules[0].${name}.max`, ""],
      [rule({ [name]: { least: 1 } }), "type", `rules[0].${name}.least`, "min"],
    ],
  ),
  [
    rule({ wind: { min: mph(8), max: mph(3) } }),
    "conflict",
    "rules[0].wind.min",
    "not more than max, which is 3 mi/h",
  ],
  [
    rule({ wind: { max: mph(3), height: quantity(0, "m") } }),
    "range",
    "rules[0].wind.height",
    "more than zero",
  ],
  [
    rule({ temperature: { max: quantity(30, "°C"), height: quantity(2, "m") } }),
    "type",
    "rules[0].temperature.height",
    "max",
  ],
  [rule({ rainfast: 7 }), "type", "rules[0].rainfast", "a record of what is stated"],
  [rule({ rainfast: {} }), "missing", "rules[0].rainfast.hours", "the hours of the label"],
  [rule({ rainfast: { hours: 241 } }), "range", "rules[0].rainfast.hours", "240 or less"],
  [rule({ rainfast: { hours: -1 } }), "range", "rules[0].rainfast.hours", "0 or more"],
  [
    rule({ rainfast: { hours: 1, moreThan: quantity(1, "h") } }),
    "unit/mismatch",
    "rules[0].rainfast.moreThan",
    "a length",
  ],
  [rule({ frostAt: quantity(1, "h") }), "unit/mismatch", "rules[0].frostAt", "a temperature"],
  [rule({ dormantBelow: quantity(1, "h") }), "unit/mismatch", "rules[0].dormantBelow", "a temperature"],
  [rule({ inversion: 7 }), "type", "rules[0].inversion", "a record of what is stated"],
  [rule({ inversion: {} }), "missing", "rules[0].inversion", "calmBelow, afterSunrise or beforeSunset"],
  [
    rule({ inversion: { height: quantity(2, "m") } }),
    "missing",
    "rules[0].inversion",
    "calmBelow, afterSunrise or beforeSunset",
  ],
  [
    rule({ inversion: { calmBelow: quantity(1, "h") } }),
    "unit/mismatch",
    "rules[0].inversion.calmBelow",
    "a speed or a depth per time",
  ],
  [rule({ inversion: { afterSunrise: -1 } }), "range", "rules[0].inversion.afterSunrise", "0 or more"],
  [rule({ inversion: { beforeSunset: 241 } }), "range", "rules[0].inversion.beforeSunset", "240 or less"],
  [
    rule({ inversion: { calmBelow: mph(3), height: quantity(0, "m") } }),
    "range",
    "rules[0].inversion.height",
    "more than zero",
  ],
  [() => rainfastFrom({ end: "today" as never, label: quantity(6, "h") }), "date", "end", "-"],
  [() => rainfastFrom({ end: start, label: quantity(-1, "h") }), "range", "label", "zero or more"],
  [
    () => deltaT({ temperature: quantity(1, "h") as never, humidity: quantity(50, "%") }),
    "unit/mismatch",
    "temperature",
    "a temperature",
  ],
  [() => deltaT({ temperature: quantity(20, "°C"), humidity: quantity(101, "%") }), "range", "humidity", "%"],
  [
    () => wetBulb({ temperature: quantity(51, "°C"), humidity: quantity(50, "%") }),
    "range",
    "temperature",
    "°C",
  ],
  [
    () => wetBulb({ temperature: quantity(-21, "°C"), humidity: quantity(50, "%") }),
    "range",
    "temperature",
    "°C",
  ],
];

describeRefused("what is refused of the columns of hourly weather", columns);
describeRefused("what is refused of weather and rules", rows);

test("the ends of each range are read", () => {
  for (const call of [
    record({ temperature: { unit: "°C", values: [60, -90] } }),
    record({ humidity: { unit: "%", values: [0, 100] } }),
    record({ cloud: { unit: "%", values: [100, null] } }),
    record({ soilMoisture: { unit: "% v/v", values: [0, 100] } }),
    record({ wind: { unit: "m/s", values: [0, null] } }),
    rule({ rainfast: { hours: 0 } }),
    rule({ rainfast: { hours: 240 } }),
    rule({ wind: { min: mph(3), max: mph(3) } }),
    rule({ inversion: { afterSunrise: 0, beforeSunset: 240 } }),
    window0({ sun: [] }),
  ])
    expect(problemsOf(call)).toEqual([]);
});
