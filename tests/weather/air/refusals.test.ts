import { describe } from "vitest";
import {
  dewPoint,
  heatIndex,
  humidityFromDewPoint,
  inversionReading,
  leafWetness,
  windAtHeight,
  windReading,
} from "../../../src/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { tellsEach } from "../../tells.js";

const c = (value: number) => quantity(value, "°C");
const percent = (value: number) => quantity(value, "%");
const m = (value: number) => quantity(value, "m");
const mild = { temperature: c(20), humidity: percent(50) };
const column = (unit: string, ...values: unknown[]) => ({ unit, values });
const low = { temperature: c(10), height: quantity(9, "in") };
const high = { temperature: c(12), height: quantity(9, "ft") };
/** Calls as plain JavaScript makes them. */
const [dew, back, heat, wet, inversion, wind, reading] = [
  dewPoint,
  humidityFromDewPoint,
  heatIndex,
  leafWetness,
  inversionReading,
  windAtHeight,
  windReading,
] as unknown as readonly ((input: unknown) => unknown)[] as readonly [
  (input: unknown) => unknown,
  (input: unknown) => unknown,
  (input: unknown) => unknown,
  (input: unknown) => unknown,
  (input: unknown) => unknown,
  (input: unknown) => unknown,
  (input: unknown) => unknown,
];

describe("moist air", () => {
  tellsEach([
    [
      () => dew({}),
      "missing temperature: expected an air temperature, got undefined",
      "missing humidity: expected a relative humidity, got undefined",
    ],
    [() => dew({ ...mild, temperature: c(61) }), "range temperature: expected -30 to 60 °C, got 61 °C"],
    [() => dew({ ...mild, temperature: c(-31) }), "range temperature: expected -30 to 60 °C, got -31 °C"],
    [
      () => dew({ ...mild, humidity: quantity(80, "1") }),
      "range humidity: expected 100 % or less: a humidity of 80 is 80 %, not a share of 80, got 80 1",
    ],
    [
      () => dew({ ...mild, humidity: percent(0.6) }),
      'range humidity: expected 1 % or more: for 65 % write quantity(65, "%"), got 0.6 %',
    ],
    [
      () => back({ temperature: c(20), dewPoint: c(21) }),
      "conflict dewPoint: expected not more than the temperature, which is 20 °C, got 21 °C",
    ],
    [() => back({ temperature: c(20) }), "missing dewPoint: expected an air temperature, got undefined"],
    [
      () => back({ temperature: c(20), dewPoint: c(-81) }),
      "range dewPoint: expected -80 to 60 °C, got -81 °C",
    ],
    [() => heat({ ...mild, temperature: c(-41) }), "range temperature: expected -40 to 60 °C, got -41 °C"],
    [
      () => heat({ temperature: c(20), dewPoint: c(12) }),
      "type dewPoint: expected humidity: humidityFromDewPoint gives it, got 12 °C",
    ],
    [
      () => heat({ ...mild, table: "from 100 °F" }),
      'type table: expected one of "from 103 and 125 °F", "from 105 and 130 °F", got "from 100 °F"',
    ],
  ]);
});

describe("thermometers", () => {
  tellsEach([
    [
      () => inversion({}),
      "missing lower: expected a record with temperature and height, got undefined",
      "missing upper: expected a record with temperature and height, got undefined",
    ],
    [
      () => inversion({ lower: { temperature: c(-61) }, upper: high }),
      "range lower.temperature: expected -60 to 60 °C, got -61 °C",
      "missing lower.height: expected the height above the ground or turf, got undefined",
    ],
    [
      () => inversion({ lower: low, upper: { ...high, height: m(0) } }),
      "range upper.height: expected more than zero, got 0 m",
    ],
    [
      () => inversion({ lower: { ...low, height: m(2) }, upper: { ...high, height: m(2) } }),
      "conflict upper.height: expected more than lower.height, which is 2 m, got 2 m",
    ],
    [
      () => inversion({ lower: low, upper: high, accuracy: c(0.5) }),
      'unit/mismatch accuracy: expected a difference: quantity(0.5, "°C diff"), got 0.5 °C',
    ],
    [
      () => inversion({ lower: low, upper: high, accuracy: quantity(1, "°F") }),
      'unit/mismatch accuracy: expected a difference: quantity(1, "°F diff"), got 1 °F',
    ],
  ]);
});

describe("wet leaves", () => {
  const humidity = column("%", 80, 95);
  tellsEach([
    [() => wet({}), "missing humidity: expected a column with unit and values, each a share, got undefined"],
    [
      () => wet({ humidity: column("%") }),
      "missing humidity.values: expected at least one figure, got an empty list",
    ],
    [
      () => wet({ humidity: { unit: "%", values: Array(200_001).fill(80) } }),
      "range humidity.values: expected at most 200000 items, got a list of 200001",
    ],
    [() => wet({ humidity: column("%", -1) }), "range humidity.values[0]: expected 0 to 100 %, got -1"],
    [
      () => wet({ humidity, temperature: column("°C", 20, -81) }),
      "range temperature.values[1]: expected -80 to 60 °C, got -81",
    ],
    [
      () => wet({ humidity, rain: column("mm", 501, 0) }),
      "range rain.values[0]: expected 0 to 500 mm, got 501",
    ],
    [
      () => wet({ humidity, rain: column("mm", 1) }),
      "conflict rain.values: expected as many as humidity has, which is 2, got 1 hour",
    ],
    [
      () => wet({ humidity, temperature: column("°C", 20) }),
      "conflict temperature.values: expected as many as humidity has, which is 2, got 1 hour",
    ],
    [
      () => wet({ humidity, humidityAtOrAbove: percent(0.9) }),
      'range humidityAtOrAbove: expected 1 % or more: for 65 % write quantity(65, "%"), got 0.9 %',
    ],
    [
      () =>
        wet({ humidity, temperature: column("°C", 20, 20), depressionAtOrBelow: quantity(-1, "°C diff") }),
      "range depressionAtOrBelow: expected zero or more, got -1 °C diff",
    ],
    [
      () => wet({ humidity, depressionAtOrBelow: quantity(2, "°C diff") }),
      "missing temperature: expected air temperatures, from which the dew point is computed, got undefined",
    ],
  ]);
});

describe("wind", () => {
  const speed = quantity(3, "m/s");
  tellsEach([
    [
      () => wind({ from: m(0.2), to: m(31) }),
      "missing wind: expected a wind speed, got undefined",
      "range from: expected a height above the ground of 0.3 to 30 m: weather stations and forecasts state 10 m, got 0.2 m",
      "range to: expected a height above the ground of 0.3 to 30 m: weather stations and forecasts state 10 m, got 31 m",
    ],
    [
      () => reading({ speed }),
      "missing height: expected a height above the ground: weather stations and forecasts state 10 m, got undefined",
    ],
  ]);
});
