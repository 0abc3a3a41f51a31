import type { Instant } from "../../../src/calendar/index.js";
import { dailySeries, hourlyWeather, quantity } from "../../../src/index.js";

export const percent = (value: number) => quantity(value, "%");
export const celsius = (value: number) => quantity(value, "°C");
export const daily = (values: readonly (number | null)[], unit: string) =>
  dailySeries({ start: "2026-06-01", unit, what: "weather", source: "station", values });
export const many = (length: number, value: number) => Array.from({ length }, () => value);
export const hourly = (length: number, more: object = {}) =>
  hourlyWeather({
    start: "2026-07-14T12:00-05:00" as Instant,
    source: "station, observed",
    temperature: { unit: "°C", values: many(length, 23) },
    humidity: { unit: "%", values: many(length, 70) },
    ...more,
  });
