import {
  addDays,
  type CivilDate,
  type DailyNormals,
  type DailyTemperatures,
  dailyNormals,
  dailyTemperatures,
  normalDay,
  seriesDay,
} from "../../calendar/index.js";
import { type GrassSeason, growthPotential } from "../../interval/index.js";
import { counted, described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectOneOf,
  expectQuantity,
  fail,
  type Quantity,
  quantity,
  toldAt,
  toldBy,
} from "../../quantity/index.js";
import { optional, percentAt, type Share, sourceAt } from "../read.js";

/**
 * How well the grass grows from day to day: by air temperatures, in the order in which they are trusted
 * (observed, forecast, normal), or as one share for all days, with who states it.
 */
export type GrowthOfDays =
  | {
      readonly season: GrassSeason;
      readonly observed?: DailyTemperatures;
      readonly forecast?: DailyTemperatures;
      readonly normals?: DailyNormals;
      /** What happens to an observed day that lacks a figure: refused, the default, or the next source. */
      readonly gaps?: "refuse" | "next source";
      readonly constants?: "°C" | "°F";
      readonly aboveOptimum?: "held" | "falling";
      readonly optimum?: Quantity<"temperature", "none">;
    }
  | { readonly potential: Share; readonly source: string };

/** What a day's growth potential rests on. */
export type GrowthBasis = "observed" | "forecast" | "normal" | "stated";

/** The growth potential of one day. */
export interface GrowthDay {
  readonly date: CivilDate;
  /** 0 to 1. */
  readonly potential: number;
  readonly basis: GrowthBasis;
}

const stateFields = ["potential", "source"] as const;
const seasonFields = [
  "season",
  "observed",
  "forecast",
  "normals",
  "gaps",
  "constants",
  "aboveOptimum",
  "optimum",
] as const;

/** The potential of each of `count` days from a first one on; refuses a day without temperatures. */
export type GrowthFrom = (first: CivilDate, count: number) => readonly GrowthDay[];

/** Reads growth, of whatever days. */
export const growthAt = (input: unknown): GrowthFrom => {
  const datesOf = (first: CivilDate, count: number): readonly CivilDate[] =>
    Array.from({ length: count }, (_, i) => addDays(first, i));
  if (typeof input === "object" && input !== null && ("potential" in input || "source" in input)) {
    const record = expectFields(input, stateFields, "growth");
    const { percent } = allOf({
      percent: () => percentAt(record.potential, "growth.potential"),
      source: () => sourceAt(record.source, "growth.source"),
    });
    return (first, count) =>
      datesOf(first, count).map((date) => ({ date, potential: percent / 100, basis: "stated" }));
  }
  const from = sourcesOf(input);
  return (first, count) => {
    const dates = datesOf(first, count);
    const found = dates.map((date) => dayFrom(from, date));
    const missing = found.flatMap((day, i) => (day === undefined ? [dates[i] as CivilDate] : []));
    if (missing.length > 0) {
      fail(
        "missing",
        "growth",
        described(`no temperatures on ${counted(missing.length, "day")}, the first on ${missing[0]}`),
        'observed, forecast or normals for every day; gaps: "next source" skips a gap in the observed ones',
      );
    }
    return found as GrowthDay[];
  };
};

/** What the growth potential rests on, in one line, of a growth that was read already. */
export const growthSource = (input: GrowthOfDays): string =>
  "potential" in input
    ? input.source
    : [input.observed, input.forecast, input.normals].flatMap((each) => each?.source ?? []).join("; ");

interface Sources {
  readonly observed: DailyTemperatures | undefined;
  readonly forecast: DailyTemperatures | undefined;
  readonly normals: DailyNormals | undefined;
  readonly gaps: "refuse" | "next source";
  readonly potentialAt: (mean: number, unit: "°C" | "°F") => number;
}

const sourcesOf = (input: unknown): Sources => {
  const record = expectFields(
    input,
    seasonFields,
    "growth",
    "growth with season and temperatures, or with potential and source",
  );
  const series = (name: "observed" | "forecast") => (): DailyTemperatures | undefined =>
    optional(record[name], (value) => {
      if ((value as { type?: unknown } | null)?.type !== "daily-temperatures") {
        return fail("type", `growth.${name}`, value, "daily temperatures, as dailyTemperatures makes them");
      }
      const at = `growth.${name}`;
      return inAir(
        toldAt(at, "series", () => dailyTemperatures(value as DailyTemperatures)),
        at,
      );
    });
  const read = allOf({
    season: () => expectOneOf(record.season, ["cool-season", "warm-season"], "growth.season"),
    observed: series("observed"),
    forecast: series("forecast"),
    normals: () =>
      optional(record.normals, (value) => {
        if ((value as { type?: unknown } | null)?.type !== "daily-normals") {
          return fail("type", "growth.normals", value, "daily normals, as dailyNormals makes them");
        }
        const at = "growth.normals";
        return inAir(
          toldAt(at, "normals", () => dailyNormals(value as DailyNormals)),
          at,
        );
      }),
    gaps: () => expectOneOf(record.gaps ?? "refuse", ["refuse", "next source"], "growth.gaps"),
    constants: () => optional(record.constants, (v) => expectOneOf(v, ["°C", "°F"], "growth.constants")),
    aboveOptimum: () =>
      optional(record.aboveOptimum, (v) => expectOneOf(v, ["held", "falling"], "growth.aboveOptimum")),
    optimum: () => optional(record.optimum, optimumAt),
  });
  const { season, constants, aboveOptimum, optimum } = read;
  const potentialAt = (mean: number, unit: "°C" | "°F"): number =>
    growthPotential({
      mean: quantity(mean, unit),
      season,
      ...(constants === undefined ? {} : { constants }),
      ...(aboveOptimum === undefined ? {} : { aboveOptimum }),
      ...(optimum === undefined ? {} : { optimum }),
    }).in("1");
  return {
    observed: read.observed,
    forecast: read.forecast,
    normals: read.normals,
    gaps: read.gaps,
    potentialAt,
  };
};

/** Takes another optimum; the model itself says which temperatures can be one. */
const optimumAt = (input: unknown): Quantity<"temperature", "none"> =>
  toldBy({ optimum: "growth.optimum" }, () => {
    const optimum = expectQuantity(input, { dimension: "temperature", of: "none" }, "optimum");
    growthPotential({ mean: quantity(20, "°C"), season: "cool-season", optimum });
    return optimum;
  });

const inAir = <T extends { readonly sensor: string }>(series: T, path: string): T =>
  series.sensor === "air"
    ? series
    : fail(
        "conflict",
        `${path}.sensor`,
        series.sensor,
        "air: growth potential is a model of air temperature",
      );

/** One day from the first source that has it; `undefined` where none has. */
const dayFrom = (from: Sources, date: CivilDate): GrowthDay | undefined => {
  for (const [basis, series] of [
    ["observed", from.observed],
    ["forecast", from.forecast],
  ] as const) {
    const day = series === undefined ? undefined : seriesDay(series, date);
    if (series === undefined || day === undefined) continue;
    if (day.min !== null && day.max !== null) {
      return { date, potential: from.potentialAt((day.min + day.max) / 2, series.unit), basis };
    }
    if (basis === "observed" && from.gaps === "refuse") return undefined;
  }
  if (from.normals === undefined) return undefined;
  const { min, max } = normalDay(from.normals, date);
  return { date, potential: from.potentialAt((min + max) / 2, from.normals.unit), basis: "normal" };
};
