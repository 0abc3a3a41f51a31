import type { Instant } from "../../calendar/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectList,
  expectNumber,
  expectQuantity,
  type FactSource,
  fail,
  frozen,
  numberIn,
  type QuantityJson,
} from "../../quantity/index.js";
import { expectSource } from "../expect-source.js";
import { heightAt } from "./hourly-weather.js";

/** From and up to, both included; a `Quantity` fits. */
export interface StatedBounds {
  readonly min?: QuantityJson;
  readonly max?: QuantityJson;
}

/** Bounds of a wind, with the height above the ground that they mean: the boom's, 2 m, 10 m. */
export interface StatedWind extends StatedBounds {
  /** Where it is left out, `windHeight` of {@link sprayWindow} stands for it; without either nothing is compared. */
  readonly height?: QuantityJson;
}

/**
 * What a label, a rule or the caller states on the weather for a spraying. Plain JSON. Several may hold at
 * once; what none of them states is not looked at.
 */
export interface SprayRules {
  /** Where it is stated. */
  readonly source: FactSource;
  readonly wind?: StatedWind;
  readonly gust?: StatedWind;
  readonly temperature?: StatedBounds;
  readonly humidity?: StatedBounds;
  /** In °C diff or °F diff; computed from temperature and humidity with the band of its error. */
  readonly deltaT?: StatedBounds;
  readonly soilMoisture?: StatedBounds;
  /** Rain within the hour and so many hours after it: the rainfast time of the label. */
  readonly rainfast?: {
    readonly hours: number;
    /** The depth that counts as rain; any above 0 where it is left out. */
    readonly moreThan?: QuantityJson;
  };
  /** Frost: air at or below this temperature. */
  readonly frostAt?: QuantityJson;
  /** Dormant turf: soil below this temperature. */
  readonly dormantBelow?: QuantityJson;
  /** Signs of an inversion. Each that is stated objects on its own. */
  readonly inversion?: {
    /** Calm: wind below this speed. */
    readonly calmBelow?: QuantityJson;
    /** The height above the ground that `calmBelow` means. */
    readonly height?: QuantityJson;
    /** Not before so many hours after sunrise, and not later than so many before sunset. */
    readonly afterSunrise?: number;
    readonly beforeSunset?: number;
  };
}

/** When the sun rises and sets on a day at the site; from an almanac or a weather service. */
export interface SunTimes {
  readonly sunrise: Instant;
  readonly sunset: Instant;
}

/** The stated bounds and the dimension of what they bound. */
export const boundedFigures = {
  wind: "length/time",
  gust: "length/time",
  temperature: "temperature",
  humidity: "1",
  deltaT: "temperature difference",
  soilMoisture: "volume/volume",
} as const;

/** What a rule can state. */
export const ruleParts: readonly Exclude<keyof SprayRules, "source">[] = [
  ...(Object.keys(boundedFigures) as (keyof typeof boundedFigures)[]),
  "rainfast",
  "frostAt",
  "dormantBelow",
  "inversion",
];
const inversionSigns = ["calmBelow", "afterSunrise", "beforeSunset"] as const;

/** Takes rules that may come from JSON and gives own copies of them, or throws all that is wrong with them. */
export const checkedRules = (input: unknown, path: string): readonly SprayRules[] => {
  const problems = checks();
  const rules = expectList(input, path, "rule").map((one, i) =>
    problems.run(() => readRule(one, `${path}[${i}]`)),
  );
  problems.done();
  return rules.flatMap((one) => one ?? []);
};

const readRule = (input: unknown, path: string): SprayRules => {
  const rule = expectFields(input, ["source", ...ruleParts], path, "a record of rules");
  const problems = checks();
  const source = problems.run(() => expectSource(rule.source, `${path}.source`));
  if (ruleParts.every((part) => rule[part] === undefined)) {
    problems.run(() => fail("missing", path, described("nothing"), "at least one rule besides the source"));
  }
  const read: Record<string, unknown> = {};
  const take = (name: (typeof ruleParts)[number], reader: (value: unknown, at: string) => unknown): void => {
    const value = rule[name];
    if (value !== undefined) read[name] = problems.run(() => reader(value, `${path}.${name}`));
  };
  for (const [name, dimension] of Object.entries(boundedFigures)) {
    take(name as keyof typeof boundedFigures, (value, at) => readBounds(value, dimension, at));
  }
  take("rainfast", readRainfast);
  take("frostAt", (value, at) => plain(value, "temperature", at));
  take("dormantBelow", (value, at) => plain(value, "temperature", at));
  take("inversion", readInversion);
  problems.done();
  return { ...(read as Omit<SprayRules, "source">), source: source as FactSource };
};

/** A stated quantity as plain JSON. */
const plain = (input: unknown, dimension: string, path: string): QuantityJson =>
  expectQuantity(input, { dimension, of: "none" }, path).toJSON();

const readBounds = (input: unknown, dimension: string, path: string): StatedWind => {
  const moves = dimension === "length/time";
  const known = ["min", "max", ...(moves ? (["height"] as const) : [])] as const;
  const { min, max, ...more } = expectFields(input, known, path, "a record of what is stated");
  // A bound that is written otherwise would be looked for and never found.
  if (min === undefined && max === undefined) fail("missing", path, described("nothing"), "min, max or both");
  const one = (value: unknown, name: string): QuantityJson | undefined =>
    value === undefined ? undefined : plain(value, dimension, `${path}.${name}`);
  const read = allOf({
    min: () => one(min, "min"),
    max: () => one(max, "max"),
    height: () => ("height" in more ? heightAt(more.height, `${path}.height`) : undefined),
  });
  if (read.min && read.max && numberIn(read.min, read.max.unit) > read.max.value) {
    fail(
      "conflict",
      `${path}.min`,
      read.min,
      `not more than max, which is ${read.max.value} ${read.max.unit}`,
    );
  }
  return {
    ...(read.min && { min: read.min }),
    ...(read.max && { max: read.max }),
    ...(read.height && { height: read.height }),
  };
};

const hoursAt = (input: unknown, path: string): number => expectNumber(input, path, { min: 0, max: 240 });

const readRainfast = (input: unknown, path: string): NonNullable<SprayRules["rainfast"]> => {
  const { hours, moreThan } = expectFields(input, ["hours", "moreThan"], path, "a record of what is stated");
  const read = allOf({
    hours: () =>
      hours === undefined
        ? fail("missing", `${path}.hours`, described("nothing"), "the hours of the label")
        : hoursAt(hours, `${path}.hours`),
    moreThan: () => (moreThan === undefined ? undefined : plain(moreThan, "length", `${path}.moreThan`)),
  });
  return { hours: read.hours, ...(read.moreThan && { moreThan: read.moreThan }) };
};

const readInversion = (input: unknown, path: string): NonNullable<SprayRules["inversion"]> => {
  const stated = expectFields(input, [...inversionSigns, "height"], path, "a record of what is stated");
  if (inversionSigns.every((sign) => stated[sign] === undefined)) {
    fail("missing", path, described("nothing"), "calmBelow, afterSunrise or beforeSunset");
  }
  const hours = (name: "afterSunrise" | "beforeSunset"): { readonly [N in typeof name]?: number } =>
    stated[name] === undefined ? {} : { [name]: hoursAt(stated[name], `${path}.${name}`) };
  const read = allOf({
    calmBelow: () =>
      stated.calmBelow === undefined
        ? undefined
        : plain(stated.calmBelow, "length/time", `${path}.calmBelow`),
    height: () => heightAt(stated.height, `${path}.height`),
    sunrise: () => hours("afterSunrise"),
    sunset: () => hours("beforeSunset"),
  });
  return {
    ...(read.calmBelow && { calmBelow: read.calmBelow }),
    ...(read.height && { height: read.height }),
    ...read.sunrise,
    ...read.sunset,
  };
};

const mph = (value: number): QuantityJson => ({ value, unit: "mi/h", of: "none" });
const degrees = (value: number): QuantityJson => ({ value, unit: "°C diff", of: "none" });

/**
 * Published figures for when a label states none. They differ between sources: another names 10 mph as
 * the most. That wind below 3 mph counts as calm is our reading: the source says that no wind may mean an
 * inversion, and that below 3 mph it turns. The source states no height of the wind: give `windHeight`. A label's own
 * figure comes first.
 */
export const publishedSprayRules: readonly SprayRules[] = /* @__PURE__ */ frozen([
  {
    wind: { min: mph(3), max: mph(8) },
    inversion: { calmBelow: mph(3) },
    source: {
      title: "Evaluate the Weather",
      publisher: "Pesticide Environmental Stewardship",
      where: "Wind",
      url: "http://pesticidestewardship.org/drift/Pages/EvaluatetheWeatherConditions.aspx",
    },
  },
  {
    deltaT: { min: degrees(2), max: degrees(8) },
    source: {
      title: "Delta T, wet bulb depression",
      publisher: "Canadian farm press, after Australian guidance",
      where: "2 to 8 as the better range, caution below 2, not above 10",
    },
  },
]);
