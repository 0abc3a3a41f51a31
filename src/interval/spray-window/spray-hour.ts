import { addHours, compareInstants, hoursBetween, type Instant } from "../../calendar/index.js";
import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { counted } from "../../quantity/house.js";
import {
  checks,
  expectQuantity,
  type FactSource,
  numberIn,
  type Quantity,
  type QuantityJson,
  quantityOf,
} from "../../quantity/index.js";
import { figureAt, hourStart } from "./hourly-weather.js";
import type { SprayRules, StatedBounds, StatedWind } from "./spray-rules.js";
import { type At, type Band, type SprayContext, windFor } from "./spray-wind.js";
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

/** What one rule says of one hour: objections, and what could not be checked. */
interface Said {
  readonly objections: readonly Omit<SprayObjection, "source">[];
  readonly missed: readonly string[];
}

const nothing: Said = { objections: [], missed: [] };
const missed = (what: string): Said => ({ objections: [], missed: [what] });
const objects = (objection: Omit<SprayObjection, "source">): Said => ({
  objections: [objection],
  missed: [],
});
const together = (parts: readonly Said[]): Said => ({
  objections: parts.flatMap((part) => part.objections),
  missed: parts.flatMap((part) => part.missed),
});

const words: Readonly<Record<string, string>> = {
  wind: "Wind",
  gust: "Gusts",
  temperature: "Air temperature",
  humidity: "Relative humidity",
  deltaT: "Delta T",
  soilMoisture: "Soil moisture",
};

const readLimit = ({ value, unit, of }: QuantityJson): Quantity<string, string> =>
  quantityOf(value, unit, of ?? "none", "rules");
const round = (x: number): number => Number(x.toPrecision(4));

/** Compares a band with stated bounds. */
const compare = (name: string, { low, high, how = "" }: Band, bounds: StatedBounds): Said => {
  const word = words[name] ?? name;
  return together(
    (["min", "max"] as const).map((side): Said => {
      const limit = bounds[side];
      if (limit === undefined) return nothing;
      const { value: bound, unit } = readLimit(limit);
      const [least, most] = [numberIn(low, unit), numberIn(high, unit)];
      // Wholly outside, or only with a part of the band.
      const [outside, partly] =
        side === "min"
          ? [exceeds(bound, most), exceeds(bound, least)]
          : [exceeds(least, bound), exceeds(most, bound)];
      const where = side === "min" ? "below" : "above";
      const told = roundedApart(side === "min" ? most : least, bound);
      const figure = least === most ? `${told(least)}` : `${told(least)} to ${told(most)}`;
      const params = { low: least, high: most, bound, unit };
      const text = `${word} of ${figure} ${unit}${how} ${name === "gust" ? "are" : "is"} ${where} the stated ${bound} ${unit}.`;
      if (outside) return objects({ code: `spray/${name}-${where}`, params, text });
      return partly
        ? missed(`${word}: ${figure} ${unit} is too near the stated ${bound} ${unit} to tell.`)
        : nothing;
    }),
  );
};

const plainFigure = (name: "temperature" | "humidity" | "soilMoisture", rule: SprayRules, at: At): Said => {
  const bounds = rule[name];
  if (bounds === undefined) return nothing;
  const figure = figureAt(at.weather, name, at.hour);
  return figure === undefined
    ? missed(`${words[name]}: not in the record.`)
    : compare(name, { low: figure, high: figure }, bounds);
};

const windFigure = (name: "wind" | "gust", rule: SprayRules, at: At): Said => {
  const bounds: StatedWind | undefined = rule[name];
  if (bounds === undefined) return nothing;
  const found = windFor(name, bounds.height, at);
  return "why" in found ? missed(`${words[name]}: ${found.why}.`) : compare(name, found.band, bounds);
};

const dryness = ({ deltaT: bounds }: SprayRules, { weather, hour }: At): Said => {
  if (bounds === undefined) return nothing;
  const problems = checks();
  const temperature = figureAt(weather, "temperature", hour);
  const humidity = figureAt(weather, "humidity", hour);
  const band = problems.run(() =>
    deltaT({
      temperature: expectQuantity(temperature, { dimension: "temperature", of: "none" }, "temperature"),
      humidity: expectQuantity(humidity, { dimension: "1", of: "none" }, "humidity"),
    }),
  );
  return band === undefined
    ? missed("Delta T: not in the record, or outside the range of its formula.")
    : compare("deltaT", band, bounds);
};

const rain = ({ rainfast }: SprayRules, { weather, hour }: At): Said => {
  if (rainfast === undefined) return nothing;
  const { hours, moreThan } = rainfast;
  const least = moreThan === undefined ? 0 : numberIn(readLimit(moreThan), "mm");
  const unknown: number[] = [];
  // The spraying may end at the end of this hour: the stated hours begin then.
  for (let i = hour; i <= hour + Math.ceil(hours); i++) {
    const depth = figureAt(weather, "rain", i);
    if (depth === undefined) unknown.push(i);
    else if (exceeds(numberIn(depth, "mm"), least)) {
      const from = hourStart(weather, i);
      const after = hours === 1 ? "the hour that is stated" : `the ${hours} hours that are stated`;
      const text = `${round(depth.value)} ${depth.unit} of rain in the hour from ${from}${i === hour ? "" : `, within ${after}`}.`;
      return objects({
        code: "spray/rain",
        params: { from, depth: depth.value, unit: depth.unit, hours },
        text,
      });
    }
  }
  return unknown.length === 0
    ? nothing
    : missed(`Rain: not in the record for ${unknown.length} of the stated hours.`);
};

const cold = (rule: SprayRules, { weather, hour }: At): Said => {
  const at = (
    name: "temperature" | "soilTemperature",
    limit: QuantityJson | undefined,
    code: string,
    what: string,
    hits: (t: number, bound: number) => boolean,
  ): Said => {
    if (limit === undefined) return nothing;
    const figure = figureAt(weather, name, hour);
    if (figure === undefined) return missed(`${what}: no temperature in the record.`);
    const { value: bound, unit } = readLimit(limit);
    const t = numberIn(figure, unit);
    return hits(t, bound)
      ? objects({
          code: `spray/${code}`,
          params: { temperature: t, bound, unit },
          text: `${what}: ${round(t)} ${unit} against the stated ${bound} ${unit}.`,
        })
      : nothing;
  };
  return together([
    at("temperature", rule.frostAt, "frost", "Frost", (t, bound) => t <= bound + 1e-9),
    at("soilTemperature", rule.dormantBelow, "dormant", "Dormant turf", (t, bound) => t < bound - 1e-9),
  ]);
};

const calm = ({ inversion: stated }: SprayRules, at: At): Said => {
  if (stated?.calmBelow === undefined) return nothing;
  const found = windFor("wind", stated.height, at);
  if ("why" in found) return missed(`Calm as a sign of inversion: wind ${found.why}.`);
  const { value: bound, unit } = readLimit(stated.calmBelow);
  const now = numberIn(found.band.low, unit);
  if (!exceeds(bound, now)) return nothing;
  const text = `Wind of ${round(now)} ${unit}${found.band.how ?? ""} is calm, which may mean an inversion.`;
  return objects({ code: "spray/inversion-calm", params: { wind: round(now), bound, unit }, text });
};

const sunlight = ({ inversion: stated }: SprayRules, { weather, sun, hour }: At): Said => {
  const { afterSunrise, beforeSunset } = stated ?? {};
  if (afterSunrise === undefined && beforeSunset === undefined) return nothing;
  const from = hourStart(weather, hour);
  const to = addHours(from, 1);
  // The day whose noon is nearest: the two may be written with different offsets.
  const day = sun.find(({ sunrise, sunset }) => {
    const fromNoon = hoursBetween(sunrise, from) - hoursBetween(sunrise, sunset) / 2;
    return fromNoon >= -12 && fromNoon < 12;
  });
  if (day === undefined) return missed("Sunrise and sunset of the day are not given.");
  const early = afterSunrise !== undefined && compareInstants(from, addHours(day.sunrise, afterSunrise)) < 0;
  const late = beforeSunset !== undefined && compareInstants(to, addHours(day.sunset, -beforeSunset)) > 0;
  return together([
    early
      ? objects({
          code: "spray/inversion-morning",
          params: { sunrise: day.sunrise, hours: afterSunrise },
          text: `Earlier than ${counted(afterSunrise, "hour")} after sunrise: an inversion may still be in place.`,
        })
      : nothing,
    late
      ? objects({
          code: "spray/inversion-evening",
          params: { sunset: day.sunset, hours: beforeSunset },
          text: `Later than ${counted(beforeSunset, "hour")} before sunset: an inversion may form.`,
        })
      : nothing,
  ]);
};

const saidOf = (rule: SprayRules, at: At): Said =>
  together([
    windFigure("wind", rule, at),
    windFigure("gust", rule, at),
    plainFigure("temperature", rule, at),
    plainFigure("humidity", rule, at),
    plainFigure("soilMoisture", rule, at),
    dryness(rule, at),
    rain(rule, at),
    cold(rule, at),
    calm(rule, at),
    sunlight(rule, at),
  ]);

/** Holds one hour of a record against checked rules. */
export const sprayHour = (rules: readonly SprayRules[], context: SprayContext, hour: number): SprayHour => {
  const at = { ...context, hour };
  const said = rules.map((rule) => ({ ...saidOf(rule, at), source: rule.source }));
  const objections = said.flatMap((one) =>
    one.objections.map((objection) => ({ ...objection, source: one.source })),
  );
  const notChecked = [...new Set(said.flatMap((one) => one.missed))];
  const from = hourStart(context.weather, hour);
  return {
    from,
    to: addHours(from, 1),
    statement:
      objections.length > 0
        ? "a stated rule objects"
        : notChecked.length > 0
          ? "no stated rule objects, but not all could be checked"
          : "no stated rule objects",
    objections,
    notChecked,
  };
};
