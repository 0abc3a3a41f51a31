import type { Instant } from "../../calendar/index.js";
import {
  checks,
  expectNumber,
  expectQuantity,
  expectRecord,
  type FactSource,
  fail,
  type QuantityJson,
} from "../../quantity/index.js";

/** From and up to, both included; a `Quantity` fits. */
export interface StatedBounds {
  readonly min?: QuantityJson;
  readonly max?: QuantityJson;
}

/**
 * What a label, a rule or the caller states on the weather for a spraying. Plain JSON. Several may hold at
 * once; what none of them states is not looked at.
 */
export interface SprayRules {
  /** Where it is stated. */
  readonly source: FactSource;
  readonly wind?: StatedBounds;
  readonly gust?: StatedBounds;
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

/** Takes rules that may come from JSON, or throws all that is wrong with them. */
export const checkedRules = (input: readonly SprayRules[], path: string): readonly SprayRules[] => {
  if (!Array.isArray(input)) return fail("type", path, input, "a list of rules");
  if (input.length === 0) fail("missing", path, "an empty list", "at least one rule");
  const door = checks();
  (input as readonly SprayRules[]).forEach((rules, i) => {
    const at = `${path}[${i}]`;
    if (typeof rules !== "object" || rules === null) {
      door.run(() => fail("type", at, rules, "a record of rules"));
      return;
    }
    const one = (value: QuantityJson | undefined, dimension: string, where: string): void => {
      if (value !== undefined) door.run(() => expectQuantity(value, { dimension }, `${at}.${where}`));
    };
    const missing = (where: string, expected: string): void =>
      door.add({ code: "missing", path: `${at}${where}`, got: "nothing", expected });
    for (const [name, dimension] of Object.entries(boundedFigures)) {
      const bounds = record<StatedBounds>(rules[name as keyof typeof boundedFigures], `${at}.${name}`, door);
      if (bounds === undefined) continue;
      // A bound that is written otherwise would be looked for and never found.
      if (bounds.min === undefined && bounds.max === undefined) missing(`.${name}`, "min, max or both");
      if (bounds.min === undefined || bounds.max === undefined) {
        one(bounds.min, dimension, `${name}.min`);
        one(bounds.max, dimension, `${name}.max`);
        continue;
      }
      const { min, max } = bounds;
      door.run(() => {
        const low = expectQuantity(min, { dimension: dimension as "length" }, `${at}.${name}.min`);
        const high = expectQuantity(max, { dimension: dimension as "length" }, `${at}.${name}.max`);
        if (low.in(high.unit as "m") > high.value) {
          fail("conflict", `${at}.${name}.min`, low, `not more than max, which is ${high}`);
        }
      });
    }
    one(rules.frostAt, "temperature", "frostAt");
    one(rules.dormantBelow, "temperature", "dormantBelow");
    const rainfast = record<SprayRules["rainfast"] & object>(rules.rainfast, `${at}.rainfast`, door);
    const inversion = record<SprayRules["inversion"] & object>(rules.inversion, `${at}.inversion`, door);
    one(rainfast?.moreThan, "length", "rainfast.moreThan");
    one(inversion?.calmBelow, "length/time", "inversion.calmBelow");
    const hours = {
      "rainfast.hours": rainfast?.hours,
      "inversion.afterSunrise": inversion?.afterSunrise,
      "inversion.beforeSunset": inversion?.beforeSunset,
    };
    for (const [where, value] of Object.entries(hours)) {
      if (value !== undefined) door.run(() => expectNumber(value, `${at}.${where}`, { min: 0, max: 240 }));
    }
    if (rainfast !== undefined && rainfast.hours === undefined) {
      missing(".rainfast.hours", "the hours of the label");
    }
    if (inversion !== undefined && inversionSigns.every((sign) => inversion[sign] === undefined)) {
      missing(".inversion", "calmBelow, afterSunrise or beforeSunset");
    }
    if (ruleParts.every((part) => rules[part] === undefined))
      missing("", "at least one rule beside the source");
    if (rules.source === undefined || rules.source === "") {
      door.add({
        code: "missing",
        path: `${at}.source`,
        got: "nothing",
        expected: "where the rules are stated",
      });
    }
  });
  door.done();
  return input;
};

/** A part of a rule that has to be a record, or `undefined` where it is left out or was refused. */
const record = <T extends object>(
  input: T | undefined,
  path: string,
  door: ReturnType<typeof checks>,
): T | undefined =>
  input === undefined
    ? undefined
    : door.run(() => expectRecord(input, path, "a record of what is stated") as unknown as T);

const mph = (value: number): QuantityJson => ({ value, unit: "mi/h", of: "none" });
const degrees = (value: number): QuantityJson => ({ value, unit: "°C diff", of: "none" });

/**
 * Published figures for when a label states none. They differ between sources: another names 10 mph as
 * the most. That wind below 3 mph counts as calm is our reading: the source says that no wind may mean an
 * inversion, and that below 3 mph it turns. A label's own figure comes first.
 */
export const publishedSprayRules: readonly SprayRules[] = [
  {
    wind: { min: mph(3), max: mph(8) },
    inversion: { calmBelow: mph(3) },
    source: {
      title: "Evaluate the weather",
      publisher: "Pesticide environmental stewardship program (university consortium)",
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
];
