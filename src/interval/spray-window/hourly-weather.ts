import { addHours, type Instant, instant } from "../../calendar/index.js";
import { checks, fail, isUnit, type Quantity, quantityOf, suggestUnit } from "../../quantity/index.js";
import { highestCelsius, lowestCelsius } from "../expect-temperature.js";

/** One figure for each hour in one unit; `null` where there is none. */
export interface HourlyColumn {
  readonly unit: string;
  readonly values: readonly (number | null)[];
}

const dimensions = {
  temperature: "temperature",
  humidity: "1",
  wind: "length/time",
  gust: "length/time",
  rain: "length",
  cloud: "1",
  soilTemperature: "temperature",
  soilMoisture: "volume/volume",
} as const;

/** What a forecast says hour by hour. */
export type WeatherFigure = keyof typeof dimensions;

/** The figures of an hourly record, in its order. */
export const weatherFigures = Object.keys(dimensions) as readonly WeatherFigure[];

/**
 * An hourly forecast or record. Plain JSON; columns that a service does not give are left out, and are
 * then named as not checked. `rain` is the depth that falls within the hour.
 */
export type HourlyWeather = {
  readonly type: "hourly-weather";
  readonly version: 1;
  /** When the first hour begins. */
  readonly start: Instant;
  /** Who gives it, and whether it is observed or forecast. */
  readonly source: string;
} & { readonly [F in WeatherFigure]?: HourlyColumn };

/** What a figure can be, in one unit: beyond it is a slip of the hand, or a code for "no figure" such as -999. */
const bounds: Readonly<Record<WeatherFigure, readonly [unit: string, min: number, max: number]>> = {
  temperature: ["°C", lowestCelsius, highestCelsius],
  humidity: ["%", 0, 100],
  wind: ["m/s", 0, Number.POSITIVE_INFINITY],
  gust: ["m/s", 0, Number.POSITIVE_INFINITY],
  rain: ["mm", 0, Number.POSITIVE_INFINITY],
  cloud: ["%", 0, 100],
  soilTemperature: ["°C", lowestCelsius, highestCelsius],
  soilMoisture: ["% v/v", 0, 100],
};

/** How many hours a record has. */
export const hoursOf = (weather: HourlyWeather): number =>
  Math.max(0, ...weatherFigures.map((name) => weather[name]?.values.length ?? 0));

/**
 * Makes an hourly record, and reports everything that is wrong with it at once: a unit of another
 * dimension, columns of different length, a value that is no number or cannot be. Nothing is filled in.
 *
 * @throws RatewrightError `date`, `missing`, `type`, `unit/unknown`, `unit/mismatch`, `conflict`,
 * `not-finite`, `range`, with paths such as `wind.values[3]`
 *
 * @example
 * ```ts
 * import { hourlyWeather } from "ratewright";
 * const weather = hourlyWeather({
 *   start: "2026-06-03T06:00-05:00", source: "forecast of the weather service",
 *   wind: { unit: "mi/h", values: [2, 5, null] },
 * });
 * weather.wind?.values.length; // => 3
 * ```
 */
export const hourlyWeather = (input: Omit<HourlyWeather, "type" | "version">): HourlyWeather => {
  if (typeof input !== "object" || input === null) return fail("type", "weather", input, "a record");
  const door = checks();
  const start = door.run(() => instant(input.start, "start"));
  const { source } = input;
  if (typeof source !== "string" || source.trim() === "") {
    door.add({ code: "missing", path: "source", got: String(source), expected: "who gives the figures" });
  }
  const columns: Partial<Record<WeatherFigure, HourlyColumn>> = {};
  let length: number | undefined;
  for (const name of weatherFigures) {
    const column: unknown = input[name];
    if (column === undefined) continue;
    door.run(() => {
      const { unit, values } = expectColumn(column, name);
      const at = `${name}.unit`;
      const like = suggestUnit(unit, dimensions[name]);
      if (!isUnit(unit))
        fail("unit/unknown", at, unit, `a unit of ${dimensions[name]}`, like ? { suggestion: like } : {});
      const { dimension } = quantityOf(0, unit, "none", at);
      if (dimension !== dimensions[name]) fail("unit/mismatch", at, unit, `a unit of ${dimensions[name]}`);
      if (length !== undefined && values.length !== length) {
        fail(
          "conflict",
          `${name}.values`,
          `${values.length} hours`,
          `as many hours as the others, which is ${length}`,
        );
      }
      length ??= values.length;
      if (values.length === 0) fail("missing", `${name}.values`, "an empty list", "at least one hour");
      const [common, min, max] = bounds[name];
      for (const [i, value] of values.entries()) {
        if (value === null) continue;
        const hour = `${name}.values[${i}]`;
        if (typeof value !== "number" || !Number.isFinite(value)) {
          door.run(() => fail("not-finite", hour, value, "a number, or null"));
          continue;
        }
        const figure = quantityOf(value, unit, "none", hour) as unknown as Quantity<"length", "none">;
        const same = figure.in(common as "m");
        if (same < min - 1e-9 || same > max + 1e-9) {
          const wanted = `${min} to ${max} ${common}`.replace(/ to Infinity.*/, " or more");
          door.run(() => fail("range", hour, figure, wanted));
        }
      }
      columns[name] = { unit, values: [...values] };
    });
  }
  if (length === undefined && door.count() === 0) {
    door.add({ code: "missing", path: "wind", got: "nothing", expected: "at least one column" });
  }
  door.done();
  return { type: "hourly-weather", version: 1, start: start as Instant, source, ...columns };
};

const expectColumn = (input: unknown, path: string): HourlyColumn => {
  const { unit, values } = Object(input) as Partial<HourlyColumn>;
  if (typeof unit !== "string") return fail("unit/unknown", `${path}.unit`, unit, "a unit");
  if (!Array.isArray(values)) return fail("type", `${path}.values`, values, "a list of numbers and null");
  return { unit, values };
};

/** One figure of one hour, or `undefined` where the record has none. */
export const figureAt = (
  weather: HourlyWeather,
  name: WeatherFigure,
  hour: number,
): Quantity<string, string> | undefined => {
  const column = weather[name];
  const value = column?.values[hour];
  return column === undefined || typeof value !== "number"
    ? undefined
    : quantityOf(value, column.unit, "none", `${name}.values[${hour}]`);
};

/** When an hour of a record begins. */
export const hourStart = (weather: HourlyWeather, hour: number): Instant => addHours(weather.start, hour);
