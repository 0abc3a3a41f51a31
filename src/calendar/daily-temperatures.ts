import {
  expectFields,
  type Problem,
  plainCopy,
  RatewrightError,
  rangeProblem,
  shown,
} from "../quantity/index.js";
import { type CivilDate, civilDate } from "./civil-date.js";
import { type DailyValues, dailyProblems, textProblems } from "./daily-series.js";
import { firstDay, lastDay } from "./day-number.js";

/**
 * Where a temperature is measured: in the air, or in the soil at a depth. A figure found with one is
 * not a figure for the other. The depth is written as its source states it, `soil at 2.5 cm`.
 */
export type TemperatureSensor = "air" | `soil at ${number} cm` | `soil at ${number} in`;

/**
 * The lowest and highest temperature of each day, from a date on. Plain JSON; a day without a figure
 * is `null` and stays visible.
 */
export interface DailyTemperatures {
  readonly type: "daily-temperatures";
  readonly version: 1;
  /** The date of the first day. */
  readonly start: CivilDate;
  /** The scale of all figures. */
  readonly unit: "°C" | "°F";
  readonly min: DailyValues;
  readonly max: DailyValues;
  readonly sensor: TemperatureSensor;
  /** Who measured it: the station, and whether it is observed, forecast or a normal. */
  readonly source: string;
}

/**
 * Whether a text names a sensor, with the depth written in its shortest form.
 *
 * @example
 * ```ts
 * import { isSensor } from "ratewright";
 * isSensor("soil at 4 in"); // => true
 * isSensor("soil"); // => false
 * ```
 */
export const isSensor = (text: unknown): text is TemperatureSensor => {
  if (text === "air") return true;
  const [, depth] = (typeof text === "string" ? /^soil at (\S+) (?:cm|in)$/.exec(text) : null) ?? [];
  return (
    depth !== undefined && Number(depth) > 0 && /^[\d.]+$/.test(depth) && String(Number(depth)) === depth
  );
};

/**
 * Beyond what air and soil were ever measured at: -89.2 °C at Vostok, 56.7 °C in Death Valley, and some 70 °C in bare soil a
 * finger deep (from memory). A figure beyond is a slip of the hand, the other scale, or a code for "no figure".
 */
const ends = {
  air: { "°C": [-90, 60], "°F": [-130, 140] },
  soil: { "°C": [-90, 75], "°F": [-130, 167] },
} as const;

/** Tells every temperature of a list that the air, or the soil, cannot have. */
export const extremeProblems = (path: string, list: unknown, unit: unknown, sensor: unknown): Problem[] => {
  if (!Array.isArray(list) || (unit !== "°C" && unit !== "°F")) return [];
  if (list.length > lastDay - firstDay) return [];
  const [lowest, highest] = ends[sensor === "air" ? "air" : "soil"][unit];
  return list.flatMap((t: unknown, i): Problem[] =>
    typeof t === "number" && Number.isFinite(t) && (t < lowest || t > highest)
      ? [rangeProblem(`${path}[${i}]`, shown(t), { min: lowest, max: highest, unit })]
      : [],
  );
};

const pairProblems = (min: unknown, max: unknown, unit: unknown, sensor: unknown): Problem[] => {
  if (!Array.isArray(min) || !Array.isArray(max)) return [];
  if (Math.max(min.length, max.length) > lastDay - firstDay) return [];
  const problems: Problem[] = [];
  if (min.length !== max.length) {
    problems.push({
      code: "conflict",
      path: "max",
      got: shown(max),
      expected: `as many days as min has, which is ${min.length}`,
    });
  }
  problems.push(...extremeProblems("min", min, unit, sensor), ...extremeProblems("max", max, unit, sensor));
  for (let i = 0; i < Math.min(min.length, max.length); i++) {
    const [low, high]: [unknown, unknown] = [min[i], max[i]];
    if (typeof low === "number" && Number.isFinite(low) && Number.isFinite(high) && low > (high as number)) {
      problems.push({
        code: "conflict",
        path: `min[${i}]`,
        got: shown(low),
        expected: `not more than max[${i}], which is ${high}`,
      });
    }
  }
  return problems;
};

/**
 * Makes a record of daily temperatures, and reports everything that is wrong with it at once: a
 * minimum above its maximum, lists of different length, a value that is no number, a temperature that air or soil never
 * had (of the other scale, or of a station that writes -999 or 999.9 for "no figure"): -90 to 60 °C in the air, to 75 °C in
 * the soil.
 * Nothing is filled in.
 *
 * @throws RatewrightError `date`, `type`, `missing`, `not-finite`, `range`, `conflict`
 *
 * @example
 * ```ts
 * import { dailyTemperatures, RatewrightError } from "ratewright";
 * const week = dailyTemperatures({
 *   start: "2026-05-01", unit: "°F", sensor: "air", source: "station at the depot, observed",
 *   min: [52, 48, null], max: [74, 70, 71],
 * });
 * week.min.length; // => 3
 * try {
 *   dailyTemperatures({ ...week, min: [75, 48, null] });
 * } catch (error) {
 *   if (error instanceof RatewrightError) error.path; // => "min[0]"
 * }
 * ```
 */
export const dailyTemperatures = (input: Omit<DailyTemperatures, "type" | "version">): DailyTemperatures => {
  const fields = ["type", "version", "start", "unit", "min", "max", "sensor", "source"] as const;
  const { start, unit, min, max, sensor, source } = expectFields(
    plainCopy(input),
    fields,
    "series",
  ) as DailyTemperatures;
  const problems = dailyProblems(start, [
    ["min", min],
    ["max", max],
  ]);
  if (unit !== "°C" && unit !== "°F") {
    problems.push({ code: "unit/unknown", path: "unit", got: shown(unit), expected: "°C or °F" });
  }
  if (!isSensor(sensor)) {
    const expected = "air, or soil at a depth such as soil at 2.5 cm or soil at 4 in";
    problems.push({ code: "type", path: "sensor", got: shown(sensor), expected });
  }
  problems.push(...textProblems({ source }), ...pairProblems(min, max, unit, sensor));
  if (problems.length > 0) throw new RatewrightError(problems);
  return {
    type: "daily-temperatures",
    version: 1,
    start: civilDate(start, "start"),
    unit,
    min: [...min],
    max: [...max],
    sensor,
    source,
  };
};
