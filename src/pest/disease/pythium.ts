import { addHours, type CivilDate, dateOfInstant } from "../../calendar/index.js";
import type { HourlyWeather } from "../../interval/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectQuantity,
  expectText,
  type FactSource,
  type Finding,
  fail,
  frozen,
  outOfRange,
  type Quantity,
  type QuantityJson,
} from "../../quantity/index.js";
import { firstNoon, type HourlyColumns, hourlyColumns } from "./hourly.js";
import { expectPercent, noDiagnosis } from "./outlook.js";

/** When the weather favors Pythium blight, as a source states it. Plain JSON. */
export interface PythiumCriteria {
  readonly id: string;
  /** The day has to get hotter than this. */
  readonly maximumAbove: QuantityJson;
  /** And to stay warmer than this. */
  readonly minimumAbove: QuantityJson;
  /** So many hours, after the heat, */
  readonly hours: number;
  /** more humid than this. `null` where the page that was read does not say. */
  readonly humidityAbove: QuantityJson | null;
  readonly source: FactSource;
}

const pennsylvania: Citation = /* @__PURE__ */ frozen({
  title: "Disease forecasting system for warm weather Pythium blight of turfgrass",
  publisher: "Plant Disease 67, 1126-1128 (Nutter, Cole and Schein)",
  year: 1983,
  where: "abstract",
  url: "https://www.apsnet.org/publications/plantdisease/backissues/Documents/1983Abstracts/PD_67_1126.htm",
});
const kentucky: Citation = /* @__PURE__ */ frozen({
  title: "Turf grass diseases evaluation",
  publisher: "University of Kentucky, agricultural weather center",
  where: "Pythium model 1",
  url: "http://weather.uky.edu/cgi-bin/kyc_grass_PCB1.pl",
});

/** Published criteria. The first is the default. */
export const pythiumCriteria: readonly PythiumCriteria[] = /* @__PURE__ */ frozen([
  {
    id: "Pennsylvania, 1983",
    maximumAbove: { value: 30, unit: "°C", of: "none" },
    minimumAbove: { value: 20, unit: "°C", of: "none" },
    hours: 14,
    humidityAbove: { value: 90, unit: "%", of: "none" },
    source: pennsylvania,
  },
  {
    id: "Kentucky, model 1",
    maximumAbove: { value: 82, unit: "°F", of: "none" },
    minimumAbove: { value: 68, unit: "°F", of: "none" },
    hours: 9,
    humidityAbove: null,
    source: kentucky,
  },
]);

/** A day from noon to noon. */
export interface PythiumDay {
  /** The date on which it begins, at noon. */
  readonly from: CivilDate;
  /** Highest and lowest temperature of the hours that have one, °C; `null` where none has. */
  readonly maximumC: number | null;
  readonly minimumC: number | null;
  /** Humid hours after the first hot one, of the hours that have a figure. */
  readonly humidHours: number;
  readonly hoursWithoutFigure: number;
  /** `null` where the missing figures could turn it either way. */
  readonly favorable: boolean | null;
}

/** Days on which the weather favored Pythium blight. Favorable weather is not a diagnosis. */
export interface PythiumOutlook {
  readonly type: "pythium-outlook";
  readonly version: 1;
  readonly criteria: PythiumCriteria;
  /** The bound of humidity that was used, percent. */
  readonly humidityAbovePercent: number;
  readonly days: readonly PythiumDay[];
  readonly findings: readonly Finding[];
}

interface Bounds {
  readonly criteria: PythiumCriteria;
  readonly maximum: number;
  readonly minimum: number;
  readonly hours: number;
  readonly humidity: number | null;
}

const criteriaFields = ["id", "maximumAbove", "minimumAbove", "hours", "humidityAbove", "source"] as const;

const boundsOf = (input: unknown): Bounds => {
  const given = input === undefined ? pythiumCriteria[0] : input;
  const fields = expectFields(given, criteriaFields, "criteria");
  const degrees = (name: "maximumAbove" | "minimumAbove"): number =>
    expectQuantity(fields[name], { dimension: "temperature", of: "none" }, `criteria.${name}`).in("°C");
  const read = allOf({
    id: () => expectText(fields.id, "criteria.id", "a name for the criteria"),
    source: () =>
      fields.source === undefined || fields.source === ""
        ? fail("missing", "criteria.source", fields.source, "where the criteria are stated")
        : (fields.source as FactSource),
    maximum: () => degrees("maximumAbove"),
    minimum: () => degrees("minimumAbove"),
    hours: () => expectNumber(fields.hours, "criteria.hours", { min: 1, max: 24 }),
    humidity: () =>
      fields.humidityAbove === null ? null : expectPercent(fields.humidityAbove, "criteria.humidityAbove"),
  });
  return { ...read, criteria: given as PythiumCriteria };
};

/** True, false, or not known: some of `list` is so, none is, or a missing one could be. */
const some = (list: readonly (number | null)[], test: (value: number) => boolean): boolean | null =>
  list.some((value) => value !== null && test(value)) ? true : list.includes(null) ? null : false;

const and = (list: readonly (boolean | null)[]): boolean | null =>
  list.includes(false) ? false : list.includes(null) ? null : true;

const dayOf = (columns: HourlyColumns, at: number, bounds: Bounds, humidity: number): PythiumDay => {
  const temperature = columns.temperature.slice(at, at + 24);
  const humid = columns.humidity.slice(at, at + 24);
  const known = temperature.filter((value): value is number => value !== null);
  const hot = some(temperature, (value) => value > bounds.maximum);
  const cold = some(temperature, (value) => value <= bounds.minimum);
  const first = temperature.findIndex((value) => value !== null && value > bounds.maximum);
  const gap = temperature.indexOf(null);
  // A missing hour may have been the first hot one: the most hours count from it, the fewest from the first known one.
  const earliest = gap >= 0 && (first < 0 || gap < first) ? gap : first;
  const after = (hour: number): readonly (number | null)[] => (hour < 0 ? [] : humid.slice(hour + 1));
  const humidHours = after(first < 0 ? earliest : first).filter(
    (value) => value !== null && value > humidity,
  ).length;
  const most = after(earliest).filter((value) => value === null || value > humidity).length;
  const longEnough = humidHours >= bounds.hours ? true : most < bounds.hours ? false : null;
  return {
    from: dateOfInstant(addHours(columns.start, at)),
    maximumC: known.length === 0 ? null : Math.max(...known),
    minimumC: known.length === 0 ? null : Math.min(...known),
    humidHours,
    hoursWithoutFigure: temperature.filter((value, i) => value === null || humid[i] === null).length,
    favorable: and([hot, cold === null ? null : !cold, longEnough]),
  };
};

/**
 * The days, from noon to noon, whose weather favors Pythium blight: hotter than a stated maximum, then for a stated number
 * of hours more humid than a stated bound, and never cooler than a stated minimum.
 *
 * By default the criteria of Pennsylvania: above 30 °C, then at least 14 hours above 90 % of humidity, with a minimum above
 * 20 °C. The hours need not follow one another; they count from the first hour above the maximum on. Only whole days from
 * noon to noon are judged. The canopy is moister than the air at a station: Kentucky advises a lower bound of humidity
 * where outbreaks were missed. Favorable weather is not a diagnosis.
 *
 * @param input.weather - an hourly record with temperature and humidity
 * @param input.criteria - one of {@link pythiumCriteria} or your own, with its source
 * @param input.humidityAbove - another bound of humidity than that of the criteria
 * @throws RatewrightError `missing` for criteria without a bound of humidity where none is given; `range` for a record of
 * less than a day from noon to noon; what `hourlyWeather` throws
 * Source: F. W. Nutter, H. Cole and R. D. Schein, Plant Disease 67 (1983), 1126-1128, abstract; University of Kentucky.
 *
 * @example
 * ```ts
 * import { hourlyWeather, pythiumOutlook } from "ratewright";
 * const hours = Array.from({ length: 24 }, (_, i) => i);
 * const weather = hourlyWeather({
 *   start: "2026-07-14T12:00-05:00", source: "station at the depot, observed",
 *   temperature: { unit: "°C", values: hours.map((hour) => (hour < 6 ? 32 : 23)) },
 *   humidity: { unit: "%", values: hours.map((hour) => (hour < 7 ? 60 : 95)) },
 * });
 * pythiumOutlook({ weather }).days.map(({ from, humidHours, favorable }) => [from, humidHours, favorable]);
 * // => [["2026-07-14", 17, true]]
 * ```
 */
export const pythiumOutlook = (input: {
  readonly weather: HourlyWeather;
  readonly criteria?: PythiumCriteria;
  readonly humidityAbove?: Quantity<"1", "none">;
}): PythiumOutlook => {
  const fields = expectFields(input, ["weather", "criteria", "humidityAbove"]);
  const { columns, bounds, stated } = allOf({
    columns: () => hourlyColumns(fields.weather, "weather"),
    bounds: () => boundsOf(fields.criteria),
    stated: () =>
      fields.humidityAbove === undefined ? undefined : expectPercent(fields.humidityAbove, "humidityAbove"),
  });
  const humidity =
    stated ??
    bounds.humidity ??
    fail("missing", "humidityAbove", undefined, "a bound of humidity: the criteria do not state one");
  const noon = firstNoon(columns.start);
  const count = Math.floor((columns.hours - noon) / 24);
  if (count < 1) {
    outOfRange(
      "weather",
      described(`${columns.hours} hours from ${columns.start}`),
      { min: 24 + noon, count: "hours" },
      "{}: one whole day from noon to noon",
    );
  }
  return {
    type: "pythium-outlook",
    version: 1,
    criteria: structuredCopy(bounds.criteria),
    humidityAbovePercent: humidity,
    days: Array.from({ length: count }, (_, i) => dayOf(columns, noon + 24 * i, bounds, humidity)),
    findings: [noDiagnosis("Pythium blight")],
  };
};

/** Criteria of their own for the result. */
const structuredCopy = (criteria: PythiumCriteria): PythiumCriteria => ({
  ...criteria,
  maximumAbove: { ...criteria.maximumAbove },
  minimumAbove: { ...criteria.minimumAbove },
  humidityAbove: criteria.humidityAbove === null ? null : { ...criteria.humidityAbove },
});
