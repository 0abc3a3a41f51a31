import {
  addDays,
  type CivilDate,
  compareDates,
  type DailyNormals,
  type DailyTemperatures,
  dailyNormals,
  daysBetween,
  normalDay,
  seriesDay,
  seriesEnd,
} from "../../calendar/index.js";
import { described } from "../../quantity/house.js";
import { allOf, checks, expectOneOf, fail, quantity, RatewrightError } from "../../quantity/index.js";
import { checkedSeries } from "../degree-days/days-of-degree-days.js";
import type { DegreeDayModel } from "../degree-days/degree-day-model.js";
import { ruleOn } from "../degree-days/degree-days.js";
import { heatOfDay, needsNextDay } from "../degree-days/degree-days-of-day.js";

/** Where the temperatures of a day come from. */
export type DegreeDayBasis = "observed" | "forecast" | "normal";

/** Temperatures in the order in which they are trusted. */
export interface TemperatureSources {
  /** What a station measured. */
  readonly observed?: DailyTemperatures;
  /** What is forecast, where nothing was measured. */
  readonly forecast?: DailyTemperatures;
  /** What is usual, where nothing is forecast. */
  readonly normals?: DailyNormals;
  /**
   * What happens to a day within the observed ones that lacks a figure: `"refuse"`, the default, or the
   * `"next source"`, which the result then names.
   */
  readonly gaps?: "refuse" | "next source";
}

/** One day of a chain: what it adds in a usual, a warm and a cool year. */
export interface ChainDay {
  readonly date: CivilDate;
  readonly basis: DegreeDayBasis | "missing";
  /** The date whose figures lack: of a double method it may be the next one. */
  readonly lacking: CivilDate;
  readonly heat: number;
  readonly warm: number;
  readonly cool: number;
  /** Whether it lies within the observed days and had to be taken from another source. */
  readonly filled: boolean;
}

/** The days of a chain, one after another, and the scale of its figures. */
export interface HeatChain {
  readonly scale: "°C" | "°F";
  /** The day of a date; `undefined` where no source reaches it. */
  readonly at: (date: CivilDate) => ChainDay | undefined;
  readonly hasSpread: boolean;
}

type Extremes = { readonly min: number; readonly max: number };
interface Found {
  readonly day: Extremes;
  readonly basis: DegreeDayBasis | "missing";
  readonly spread: number;
  readonly filled: boolean;
}

/** The sources of a chain, read. */
interface Sources {
  readonly observed: DailyTemperatures | undefined;
  readonly forecast: DailyTemperatures | undefined;
  readonly normals: DailyNormals | undefined;
  readonly gaps: "refuse" | "next source";
}

/** Takes the sources, all by the sensor of the model, or throws all that is wrong with them. */
const readSources = (sources: TemperatureSources, model: DegreeDayModel): Sources => {
  const series = (name: "observed" | "forecast"): DailyTemperatures | undefined => {
    const input = sources[name];
    return input === undefined ? undefined : checkedSeries(input, model, name);
  };
  return allOf({
    gaps: () => expectOneOf(sources.gaps ?? "refuse", ["refuse", "next source"], "gaps"),
    observed: () => series("observed"),
    forecast: () => series("forecast"),
    normals: () => (sources.normals === undefined ? undefined : checkedNormals(sources.normals, model)),
  });
};

const checkedNormals = (input: DailyNormals, model: DegreeDayModel): DailyNormals => {
  if ((Object(input) as { readonly type?: unknown }).type !== "daily-normals") {
    return fail("type", "normals", input, "daily normals, as dailyNormals gives");
  }
  const problems = checks();
  const normals = problems.run(() => dailyNormals(input), "normals");
  problems.done();
  return normals !== undefined && normals.sensor === model.sensor
    ? normals
    : fail("conflict", "normals.sensor", input.sensor, `the sensor of the model, which is ${model.sensor}`);
};

/** Finds the day of a date in the first source that has it, on one scale. */
const finderOf = ({ observed, forecast, normals, gaps }: Sources, scale: "°C" | "°F") => {
  const on = (t: number, unit: "°C" | "°F"): number => (unit === scale ? t : quantity(t, unit).in(scale));
  const extremesOn = (source: DailyTemperatures | undefined, date: CivilDate): Extremes | undefined => {
    const day = source === undefined ? undefined : seriesDay(source, date);
    if (source === undefined || typeof day?.min !== "number" || typeof day.max !== "number") return undefined;
    return { min: on(day.min, source.unit), max: on(day.max, source.unit) };
  };
  const lastObserved = observed === undefined ? undefined : seriesEnd(observed);
  return (date: CivilDate): Found | undefined => {
    const measured = extremesOn(observed, date);
    if (measured !== undefined) return { day: measured, basis: "observed", spread: 0, filled: false };
    const inside =
      observed !== undefined &&
      lastObserved !== undefined &&
      compareDates(date, observed.start) >= 0 &&
      compareDates(date, lastObserved) <= 0;
    if (inside && gaps === "refuse") {
      return { day: { min: 0, max: 0 }, basis: "missing", spread: 0, filled: false };
    }
    const coming = extremesOn(forecast, date);
    if (coming !== undefined) return { day: coming, basis: "forecast", spread: 0, filled: inside };
    if (normals === undefined) return undefined;
    const { min, max, spread } = normalDay(normals, date);
    const degrees = (spread ?? 0) * (normals.unit === scale ? 1 : scale === "°F" ? 1.8 : 1 / 1.8);
    const day = { min: on(min, normals.unit), max: on(max, normals.unit) };
    return { day, basis: "normal", spread: degrees, filled: inside };
  };
};

/** The days of all sources, one after the other, with what each counts. */
export const heatChain = (given: TemperatureSources, model: DegreeDayModel): HeatChain => {
  const sources = readSources(given, model);
  const { observed, forecast, normals } = sources;
  const scale = (observed ?? forecast ?? normals)?.unit;
  if (scale === undefined) {
    return fail(
      "missing",
      "observed",
      described("nothing"),
      "observed or forecast temperatures, or daily normals",
    );
  }
  const find = finderOf(sources, scale);
  const rule = ruleOn(model, scale);
  const days = new Map<CivilDate, ChainDay | undefined>();
  const at = (date: CivilDate): ChainDay | undefined => {
    const found = find(date);
    if (found === undefined) return undefined;
    const after = addDays(date, 1);
    const next = needsNextDay(model.method) ? find(after) : found;
    if (next === undefined) return undefined;
    const heat = (sign: number): number => {
      const [here, there] = [found.spread * sign, next.spread * sign];
      return heatOfDay(rule, found.day.max + here, found.day.min + here, next.day.min + there);
    };
    const basis = next.basis === "missing" ? "missing" : found.basis;
    const lacking = found.basis === "missing" ? date : after;
    return { date, basis, lacking, heat: heat(0), warm: heat(1), cool: heat(-1), filled: found.filled };
  };
  return {
    scale,
    hasSpread: normals?.spread !== undefined,
    at: (date) => {
      if (!days.has(date)) days.set(date, at(date));
      return days.get(date);
    },
  };
};

/** How far ahead is looked for a date: longer than a winter in which nothing adds up. */
export const horizon = 400;

/** The day on which a total is reached, and what it was made of. */
export interface ChainReach {
  readonly date: CivilDate | null;
  readonly total: number;
  readonly used: readonly ChainDay[];
}

/** Adds up from the day after `from` until it is enough. */
export const reachAlong = (
  chain: HeatChain,
  from: CivilDate,
  kind: "heat" | "warm" | "cool",
  enough: (total: number) => boolean,
): ChainReach => {
  const used: ChainDay[] = [];
  let total = 0;
  for (let date = addDays(from, 1); daysBetween(from, date) <= horizon; date = addDays(date, 1)) {
    const day = chain.at(date);
    if (day === undefined) break;
    used.push(day);
    total += day[kind];
    if (enough(total)) return { date, total, used };
  }
  return { date: null, total, used };
};

/** Throws `missing` with every date within the observed days that lacks a figure. */
export const refuseGaps = (used: readonly ChainDay[]): void => {
  const dates = new Set(used.filter(({ basis }) => basis === "missing").map(({ lacking }) => lacking));
  if (dates.size === 0) return;
  throw new RatewrightError(
    [...dates].map((date) => ({
      code: "missing" as const,
      path: `observed.${date}`,
      got: "a day without a lowest or a highest temperature",
      expected: 'both, or gaps: "next source"',
    })),
  );
};
