import { hoursBetween, type Instant } from "../../calendar/index.js";
import { type HourlyWeather, hourlyWeather } from "../../interval/index.js";
import { checks, expectRecord, fail, numberIn, quantityOf } from "../../quantity/index.js";

/** Columns of an hourly record in fixed units: °C, percent, mm. */
export interface HourlyColumns {
  readonly start: Instant;
  readonly hours: number;
  readonly temperature: readonly (number | null)[];
  readonly humidity: readonly (number | null)[];
  readonly soilTemperature: readonly (number | null)[] | undefined;
  readonly rain: readonly (number | null)[] | undefined;
}

type Column = "temperature" | "humidity" | "soilTemperature" | "rain";
const units: Readonly<Record<Column, string>> = {
  temperature: "°C",
  humidity: "%",
  soilTemperature: "°C",
  rain: "mm",
};

const column = (weather: HourlyWeather, name: Column): (number | null)[] | undefined => {
  const found = weather[name];
  return found?.values.map((value, i) =>
    value === null
      ? null
      : numberIn(quantityOf(value, found.unit, "none", `${name}.values[${i}]`), units[name]),
  );
};

/** Takes an hourly record with at least temperature and humidity. */
export const hourlyColumns = (input: unknown, path: string): HourlyColumns => {
  if (input === undefined) return fail("missing", path, input, "an hourly record, made by hourlyWeather");
  if (expectRecord(input, path).type !== "hourly-weather") {
    return fail("type", path, input, "an hourly record, made by hourlyWeather");
  }
  const problems = checks();
  const read = problems.run(() => hourlyWeather(input as HourlyWeather), path);
  problems.done();
  const weather = read ?? fail("type", path, input, "an hourly record");
  const need = (name: Column): (number | null)[] =>
    column(weather, name) ?? fail("missing", `${path}.${name}`, undefined, "a column of the hourly record");
  const temperature = need("temperature");
  return {
    start: weather.start,
    hours: temperature.length,
    temperature,
    humidity: need("humidity"),
    soilTemperature: column(weather, "soilTemperature"),
    rain: column(weather, "rain"),
  };
};

/** The first hour of the record that begins at noon or later on a clock, counted from its start. */
export const firstNoon = (start: Instant): number => {
  const midnight = `${start.slice(0, 10)}T00:00${/(Z|[+-]\d\d:\d\d)$/.exec(start)?.[0] ?? "Z"}` as Instant;
  const hour = hoursBetween(midnight, start);
  return hour <= 12 ? Math.ceil(12 - hour) : Math.ceil(36 - hour);
};
