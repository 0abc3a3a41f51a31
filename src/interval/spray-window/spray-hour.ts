import { addHours, compareInstants, hoursBetween, type Instant } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import { checks, type FactSource, type Quantity, quantityOf } from "../../quantity/index.js";
import { figureAt, type HourlyWeather, hourStart } from "./hourly-weather.js";
import type { SprayRules, StatedBounds, SunTimes } from "./spray-rules.js";
import { deltaT } from "./wet-bulb.js";

/** Why a stated rule objects to an hour. */
export interface SprayObjection {
  /** Stable: `spray/wind-above`, `spray/rain`, ... */
  readonly code: string;
  readonly params: Readonly<Record<string, string | number>>;
  readonly text: string;
  readonly source: FactSource;
}

/** One hour against the stated rules. */
export interface SprayHour {
  readonly from: Instant;
  readonly to: Instant;
  readonly statement:
    | "a stated rule objects"
    | "no stated rule objects"
    | "no stated rule objects, but not all could be checked";
  readonly objections: readonly SprayObjection[];
  readonly notChecked: readonly string[];
}

/** What one rule says of one hour: an objection, what could not be checked, or nothing. */
type Say = (objection: Omit<SprayObjection, "source">) => void;
type Miss = (what: string) => void;

const words: Readonly<Record<string, string>> = {
  wind: "Wind",
  gust: "Gusts",
  temperature: "Air temperature",
  humidity: "Relative humidity",
  deltaT: "Delta T",
  soilMoisture: "Soil moisture",
};

const readLimit = (limit: NonNullable<StatedBounds["min"]>): Quantity<string, string> =>
  quantityOf(limit.value, limit.unit, limit.of ?? "none", "rules");
const inUnit = (q: Quantity<string, string>, unit: string): number =>
  (q as unknown as Quantity<"length", "none">).in(unit as "m");
const round = (x: number): number => Number(x.toPrecision(4));

/** Compares a figure, or the band in which it lies, with stated bounds. */
const compare = (
  name: string,
  band: { low: Quantity<string, string>; high: Quantity<string, string> } | undefined,
  bounds: StatedBounds | undefined,
  say: Say,
  miss: Miss,
): void => {
  if (bounds === undefined) return;
  const word = words[name] ?? name;
  if (band === undefined) {
    const reason = name === "deltaT" ? ", or its formula does not reach so far" : "";
    miss(`${word}: the record does not tell it${reason}.`);
    return;
  }
  for (const side of ["min", "max"] as const) {
    const limit = bounds[side];
    if (limit === undefined) continue;
    const { value: bound, unit } = readLimit(limit);
    const [low, high] = [inUnit(band.low, unit), inUnit(band.high, unit)];
    // Wholly outside, or only with a part of the band.
    const [outside, partly] =
      side === "min"
        ? [exceeds(bound, high), exceeds(bound, low)]
        : [exceeds(low, bound), exceeds(high, bound)];
    const where = side === "min" ? "below" : "above";
    const figure = low === high ? `${round(low)}` : `${round(low)} to ${round(high)}`;
    const text = `${word} of ${figure} ${unit} is ${where} the stated ${bound} ${unit}.`;
    if (outside) say({ code: `spray/${name}-${where}`, params: { low, high, bound, unit }, text });
    else if (partly) miss(`${word}: ${figure} ${unit} is too near the stated ${bound} ${unit} to tell.`);
  }
};

const deltaBand = (weather: HourlyWeather, hour: number): ReturnType<typeof deltaT> | undefined => {
  const temperature = figureAt(weather, "temperature", hour);
  const humidity = figureAt(weather, "humidity", hour);
  if (temperature === undefined || humidity === undefined) return undefined;
  const door = checks();
  return door.run(() => deltaT({ temperature, humidity } as unknown as Parameters<typeof deltaT>[0]));
};

const rain = (rules: SprayRules, weather: HourlyWeather, hour: number, say: Say, miss: Miss): void => {
  if (rules.rainfast === undefined) return;
  const { hours, moreThan } = rules.rainfast;
  const least = moreThan === undefined ? 0 : inUnit(readLimit(moreThan), "mm");
  const unknown: number[] = [];
  // The spraying may end at the end of this hour: the stated hours begin then.
  for (let i = hour; i <= hour + Math.ceil(hours); i++) {
    const depth = figureAt(weather, "rain", i);
    if (depth === undefined) unknown.push(i);
    else if (exceeds(inUnit(depth, "mm"), least)) {
      const from = hourStart(weather, i);
      const text = `${round(depth.value)} ${depth.unit} of rain in the hour from ${from}, within the ${hours} hours that are stated.`;
      say({ code: "spray/rain", params: { from, depth: depth.value, unit: depth.unit, hours }, text });
      return;
    }
  }
  if (unknown.length > 0)
    miss(`Rain: the record does not tell it for ${unknown.length} of the stated hours.`);
};

const cold = (rules: SprayRules, weather: HourlyWeather, hour: number, say: Say, miss: Miss): void => {
  const at = (
    name: "temperature" | "soilTemperature",
    limit: SprayRules["frostAt"],
    code: string,
    what: string,
    hits: (t: number, bound: number) => boolean,
  ): void => {
    if (limit === undefined) return;
    const figure = figureAt(weather, name, hour);
    if (figure === undefined) {
      miss(`${what}: the record does not tell the temperature.`);
      return;
    }
    const { value: bound, unit } = readLimit(limit);
    const t = inUnit(figure, unit);
    if (!hits(t, bound)) return;
    say({
      code: `spray/${code}`,
      params: { temperature: t, bound, unit },
      text: `${what}: ${round(t)} ${unit} against the stated ${bound} ${unit}.`,
    });
  };
  at("temperature", rules.frostAt, "frost", "Frost", (t, bound) => t <= bound + 1e-9);
  at("soilTemperature", rules.dormantBelow, "dormant", "Dormant turf", (t, bound) => t < bound - 1e-9);
};

const inversion = (
  { inversion: stated }: SprayRules,
  weather: HourlyWeather,
  hour: number,
  sun: readonly SunTimes[],
  say: Say,
  miss: Miss,
): void => {
  if (stated === undefined) return;
  if (stated.calmBelow !== undefined) {
    const wind = figureAt(weather, "wind", hour);
    const { value: bound, unit } = readLimit(stated.calmBelow);
    if (wind === undefined) miss("Calm as a sign of inversion: the record does not tell the wind.");
    else if (exceeds(bound, inUnit(wind, unit))) {
      const now = round(inUnit(wind, unit));
      const text = `Wind of ${now} ${unit} is calm, which may mean an inversion.`;
      say({ code: "spray/inversion-calm", params: { wind: now, bound, unit }, text });
    }
  }
  const { afterSunrise, beforeSunset } = stated;
  if (afterSunrise === undefined && beforeSunset === undefined) return;
  const from = hourStart(weather, hour);
  const to = addHours(from, 1);
  // The day whose noon is nearest: the two may be written with different offsets.
  const day = sun.find(({ sunrise, sunset }) => {
    const fromNoon = hoursBetween(sunrise, from) - hoursBetween(sunrise, sunset) / 2;
    return fromNoon >= -12 && fromNoon < 12;
  });
  if (day === undefined) {
    miss("Sunrise and sunset of the day are not given.");
    return;
  }
  if (afterSunrise !== undefined && compareInstants(from, addHours(day.sunrise, afterSunrise)) < 0) {
    const text = `Before ${afterSunrise} hours after sunrise, when an inversion may still lie.`;
    say({ code: "spray/inversion-morning", params: { sunrise: day.sunrise, hours: afterSunrise }, text });
  }
  if (beforeSunset !== undefined && compareInstants(to, addHours(day.sunset, -beforeSunset)) > 0) {
    const text = `Later than ${beforeSunset} hours before sunset, when an inversion may form.`;
    say({ code: "spray/inversion-evening", params: { sunset: day.sunset, hours: beforeSunset }, text });
  }
};

/** Holds one hour of a record against checked rules. */
export const sprayHour = (
  weather: HourlyWeather,
  rules: readonly SprayRules[],
  sun: readonly SunTimes[],
  hour: number,
): SprayHour => {
  const objections: SprayObjection[] = [];
  const notChecked = new Set<string>();
  const miss: Miss = (what) => void notChecked.add(what);
  for (const rule of rules) {
    const say: Say = (objection) => void objections.push({ ...objection, source: rule.source });
    for (const name of ["wind", "gust", "temperature", "humidity", "soilMoisture"] as const) {
      const figure = rule[name] === undefined ? undefined : figureAt(weather, name, hour);
      compare(name, figure && { low: figure, high: figure }, rule[name], say, miss);
    }
    const band = rule.deltaT === undefined ? undefined : deltaBand(weather, hour);
    compare("deltaT", band as Parameters<typeof compare>[1], rule.deltaT, say, miss);
    rain(rule, weather, hour, say, miss);
    cold(rule, weather, hour, say, miss);
    inversion(rule, weather, hour, sun, say, miss);
  }
  const from = hourStart(weather, hour);
  return {
    from,
    to: addHours(from, 1),
    statement:
      objections.length > 0
        ? "a stated rule objects"
        : notChecked.size > 0
          ? "no stated rule objects, but not all could be checked"
          : "no stated rule objects",
    objections,
    notChecked: [...notChecked],
  };
};
