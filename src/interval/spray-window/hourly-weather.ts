import { addHours, type Instant, instant } from "../../calendar/index.js";
import { notShares } from "../../numeric/house.js";
import { counted, described, unitInWords } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectList,
  expectQuantity,
  expectText,
  fail,
  isUnit,
  numberIn,
  outOfRange,
  type Problem,
  type Quantity,
  type QuantityJson,
  quantityOf,
  RatewrightError,
  suggestUnit,
} from "../../quantity/index.js";
import { highestAirCelsius, highestCelsius, lowestCelsius } from "../expect-temperature.js";

/** One figure for each hour in one unit; `null` where there is none. */
export interface HourlyColumn {
  readonly unit: string;
  readonly values: readonly (number | null)[];
  /** Of wind and gusts: the height above the ground. Stations and forecasts mostly state 10 m. */
  readonly height?: QuantityJson;
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
  temperature: ["°C", lowestCelsius, highestAirCelsius],
  humidity: ["%", 0, 100],
  // A mean of 84 m/s and a gust of 113 m/s were measured, and 305 mm of rain within the hour (from memory)
  wind: ["m/s", 0, 85],
  gust: ["m/s", 0, 120],
  rain: ["mm", 0, 500],
  cloud: ["%", 0, 100],
  soilTemperature: ["°C", lowestCelsius, highestCelsius],
  soilMoisture: ["% v/v", 0, 100],
};

/** How many hours a record has. */
export const hoursOf = (weather: HourlyWeather): number =>
  Math.max(0, ...weatherFigures.map((name) => weather[name]?.values.length ?? 0));

/** The most hours of a record: a century. */
const mostHours = 876_600;

/**
 * Makes an hourly record, and reports everything that is wrong with it at once: a unit of another
 * dimension, columns of different length, a value that is no number or cannot be. Nothing is filled in.
 *
 * Wind and gusts state the height at which they are measured or forecast; without it no rule on wind can be checked.
 *
 * @throws RatewrightError `date`, `missing`, `type`, `unit/unknown`, `unit/mismatch`, `conflict`,
 * `not-finite`, `range`, with paths such as `wind.values[3]`
 *
 * @example
 * ```ts
 * import { hourlyWeather } from "ratewright";
 * const weather = hourlyWeather({
 *   start: "2026-06-03T06:00-05:00", source: "forecast of the weather service",
 *   wind: { unit: "mi/h", height: { value: 10, unit: "m", of: "none" }, values: [2, 5, null] },
 * });
 * weather.wind?.values.length; // => 3
 * ```
 */
export const hourlyWeather = (input: Omit<HourlyWeather, "type" | "version">): HourlyWeather => {
  const fields = ["type", "version", "start", "source", ...weatherFigures] as const;
  const { start, source, ...record } = expectFields(input, fields, "weather");
  const given = weatherFigures.filter((name) => record[name] !== undefined);
  const columns: Partial<Record<WeatherFigure, HourlyColumn>> = {};
  const read = allOf({
    start: () => instant(start as Instant, "start"),
    source: () => expectText(source, "source", "who gives the figures"),
    columns: () => {
      const refused = checks();
      for (const name of given) {
        const column = refused.run(() => columnOf(record[name], name));
        if (column !== undefined) columns[name] = column;
      }
      refused.done();
      if (given.length === 0) fail("missing", "wind", described("nothing"), "at least one column");
      sameLength(columns);
    },
  });
  return { type: "hourly-weather", version: 1, start: read.start, source: read.source, ...columns };
};

const sameLength = (columns: Readonly<Partial<Record<WeatherFigure, HourlyColumn>>>): void => {
  const lengths = Object.entries(columns).map(([name, { values }]) => [name, values.length] as const);
  const [, length] = lengths[0] as readonly [string, number];
  const problems = lengths
    .filter(([, own]) => own !== length)
    .map(([name, own]): Problem => {
      const expected = `as many hours as the others, which is ${length}`;
      return { code: "conflict", path: `${name}.values`, got: counted(own, "hour"), expected };
    });
  if (problems.length > 0) throw new RatewrightError(problems);
};

const unitOf = (input: unknown, name: WeatherFigure): string => {
  const dimension = dimensions[name];
  const at = `${name}.unit`;
  if (typeof input !== "string") return fail("unit/unknown", at, input, unitInWords(dimension));
  if (!isUnit(input)) {
    const like = suggestUnit(input, dimension);
    return fail("unit/unknown", at, input, unitInWords(dimension), like ? { suggestion: like } : {});
  }
  return isUnit(input, dimension) ? input : fail("unit/mismatch", at, input, unitInWords(dimension));
};

/** Takes one column, or throws all that is wrong with it. */
const columnOf = (input: unknown, name: WeatherFigure): HourlyColumn => {
  const moves = name === "wind" || name === "gust";
  const known = ["unit", "values", ...(moves ? (["height"] as const) : [])] as const;
  const column = expectFields(input, known, name, "a record with unit and values");
  const read = allOf({
    unit: () => unitOf(column.unit, name),
    values: () => hoursAt(column.values, `${name}.values`),
    height: () => ("height" in column ? heightAt(column.height, `${name}.height`) : undefined),
  });
  const refused = checks();
  const [common, min, max] = bounds[name];
  const percents: number[] = [];
  for (const [i, value] of read.values.entries()) {
    if (value === null) continue;
    const figure = quantityOf(value, read.unit, "none", `${name}.values[${i}]`);
    const same = numberIn(figure, common);
    percents.push(same);
    if (same >= min - 1e-9 && same <= max + 1e-9) continue;
    refused.run(() =>
      outOfRange(
        `${name}.values[${i}]`,
        figure,
        Number.isFinite(max) ? { min, max, unit: common } : { min, unit: common },
      ),
    );
  }
  // hours of 0.65 where 65 % was meant
  if (name === "humidity") refused.run(() => notShares(percents, "humidity.values"));
  refused.done();
  return { unit: read.unit, values: read.values, ...(read.height && { height: read.height }) };
};

/** Takes the figures of the hours, or throws. */
const hoursAt = (input: unknown, path: string): readonly (number | null)[] => {
  if (!Array.isArray(input)) return fail("type", path, input, "a list of numbers and null");
  if (input.length > mostHours) return outOfRange(path, input, { max: mostHours, count: "hours" });
  const list = expectList(input, path, "hour");
  const refused = checks();
  const values = list.map((value, i): number | null => {
    if (value === null) return null;
    const read = refused.run(() =>
      typeof value === "number" && Number.isFinite(value)
        ? value + 0
        : fail("not-finite", `${path}[${i}]`, value, "a number, or null"),
    );
    return read ?? null;
  });
  refused.done();
  return values;
};

/** Takes a height above the ground as plain JSON, or throws; nothing where none is stated. */
export const heightAt = (input: unknown, path: string): QuantityJson | undefined =>
  input === undefined
    ? undefined
    : expectQuantity(input, { dimension: "length", of: "none", bound: "positive" }, path).toJSON();

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
