import { addHours, type Instant } from "../../calendar/index.js";
import type { HourlyWeather } from "../../interval/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  type Finding,
  frozen,
  outOfRange,
} from "../../quantity/index.js";
import { type HourlyColumns, hourlyColumns } from "./hourly.js";
import { noDiagnosis } from "./outlook.js";

/** The end of the tenth humid hour in a row, with what the hours before it say. */
export interface BrownPatchSpell {
  readonly tenthHourEnds: Instant;
  /** `null` where figures are missing that could turn it. */
  readonly favorable: boolean | null;
  /** Criteria that are not met. */
  readonly notMet: readonly BrownPatchCriterion[];
  /** Criteria that cannot be told. */
  readonly notKnown: readonly BrownPatchCriterion[];
}

/** What the hours before a humid spell have to be. */
export type BrownPatchCriterion = "soil mean" | "soil minimum" | "air mean" | "air minimum" | "rain";

/** Humid spells that favor brown patch. Favorable weather is not a diagnosis. */
export interface BrownPatchSpells {
  readonly type: "brown-patch-spells";
  readonly version: 1;
  readonly spells: readonly BrownPatchSpell[];
  /** Hours without a figure of humidity: each ends a spell, though it may have gone on. */
  readonly unknownHours: number;
  readonly findings: readonly Finding[];
  readonly source: Citation;
}

const kentucky: Citation = /* @__PURE__ */ frozen({
  title: "Predictive models for turf grass diseases",
  publisher: "University of Kentucky, agricultural weather center",
  where: "brown patch model 2",
  url: "http://weather.uky.edu/turf_forecasting.htm",
});

const mean = (list: readonly number[]): number => list.reduce((sum, value) => sum + value, 0) / list.length;

/** The last `count` hours up to `end`, or `undefined` where the record does not hold them all. */
const window = (
  list: readonly (number | null)[] | undefined,
  end: number,
  count: number,
): readonly number[] | undefined => {
  if (list === undefined || end - count + 1 < 0) return undefined;
  const part = list.slice(end - count + 1, end + 1);
  return part.every((value): value is number => value !== null) ? part : undefined;
};

const spellAt = (columns: HourlyColumns, tenth: number): BrownPatchSpell => {
  const soil = window(columns.soilTemperature, tenth, 24);
  const air = window(columns.temperature, tenth, 24);
  const rain = window(columns.rain, tenth, 36);
  const wet = rain === undefined ? undefined : rain.reduce((sum, value) => sum + value, 0) >= 3 - 1e-9;
  const tests: Readonly<Record<BrownPatchCriterion, boolean | undefined>> = {
    "soil mean": soil && mean(soil) > 21,
    "soil minimum": soil && Math.min(...soil) > 18,
    "air mean": air && mean(air) > 20,
    "air minimum": air && Math.min(...air) > 15,
    rain: wet,
  };
  const names = Object.keys(tests) as BrownPatchCriterion[];
  const notMet = names.filter((name) => tests[name] === false);
  const notKnown = names.filter((name) => tests[name] === undefined);
  return {
    tenthHourEnds: addHours(columns.start, tenth + 1),
    favorable: notMet.length > 0 ? false : notKnown.length > 0 ? null : true,
    notMet,
    notKnown,
  };
};

/**
 * Humid spells that favor brown patch on cool-season grass: ten hours in a row above 95 % of relative humidity, when over
 * the 24 hours up to the tenth the soil was above 21 °C on average and above 18 °C throughout, the air above 20 °C on
 * average and above 15 °C throughout, and 3 mm of rain or irrigation fell in the 36 hours up to it.
 *
 * Each spell is told once, at its tenth hour. Soil temperature or rain that the record lacks leaves it open. Enter
 * irrigation into the rain column. The page that was read gives 3 mm beside 0.1 in (2.54 mm); the larger is used.
 *
 * @param input.weather - an hourly record with temperature and humidity, and better with soil temperature and rain
 * @throws RatewrightError `missing`; what `hourlyWeather` throws
 * Source: University of Kentucky, predictive models for turfgrass diseases, brown patch model 2.
 *
 * @example
 * ```ts
 * import { brownPatchSpells, hourlyWeather } from "ratewright";
 * const all = (value: number) => Array<number>(48).fill(value);
 * const weather = hourlyWeather({
 *   start: "2026-07-14T00:00-05:00", source: "station at the depot, observed",
 *   temperature: { unit: "°C", values: all(23) },
 *   soilTemperature: { unit: "°C", values: all(22) },
 *   humidity: { unit: "%", values: all(70).map((low, i) => (i >= 34 && i < 46 ? 97 : low)) },
 *   rain: { unit: "mm", values: all(0).map((none, i) => (i === 20 ? 4 : none)) },
 * });
 * brownPatchSpells({ weather }).spells.map(({ tenthHourEnds, favorable }) => [tenthHourEnds, favorable]);
 * // => [["2026-07-15T20:00-05:00", true]]
 * ```
 */
export const brownPatchSpells = (input: { readonly weather: HourlyWeather }): BrownPatchSpells => {
  const fields = expectFields(input, ["weather"]);
  const { columns } = allOf({ columns: () => hourlyColumns(fields.weather, "weather") });
  if (columns.hours < 10)
    outOfRange("weather", described(`${columns.hours} hours`), { min: 10, count: "hours" });
  const spells: BrownPatchSpell[] = [];
  let run = 0;
  columns.humidity.forEach((percent, hour) => {
    run = percent !== null && percent > 95 ? run + 1 : 0;
    if (run === 10) spells.push(spellAt(columns, hour));
  });
  return {
    type: "brown-patch-spells",
    version: 1,
    spells,
    unknownHours: columns.humidity.filter((percent) => percent === null).length,
    findings: [noDiagnosis("brown patch")],
    source: { ...kentucky },
  };
};
