import {
  addDays,
  type CivilDate,
  type DailyTemperatures,
  dailyTemperatures,
  daysBetween,
} from "../../calendar/index.js";
import {
  expectFields,
  expectQuantity,
  expectRecord,
  type Finding,
  outOfRange,
  type Problem,
  type Quantity,
  RatewrightError,
  shown,
} from "../../quantity/index.js";
import { under } from "../label/under-path.js";

/** One mean temperature for all days. */
export interface MeanTemperature {
  readonly mean: Quantity<"temperature", "none">;
}

/** The lowest and highest temperature of each day, °C, with what has to be said of them. */
export interface ReleaseWeather {
  readonly maxC: Float64Array;
  readonly minC: Float64Array;
  readonly assumptions: readonly string[];
  readonly findings: readonly Finding[];
}

/** Takes daily temperatures, which have to cover every day, or one mean. */
export const releaseWeather = (
  input: DailyTemperatures | MeanTemperature,
  start: CivilDate,
  days: number,
): ReleaseWeather => {
  expectRecord(input, "temperature", "daily temperatures, or { mean }");
  const weather = "mean" in input ? steady(input, days) : daily(input, start, days);
  const frozen = weather.minC.reduce((count, min) => count + (min < 0 ? 1 : 0), 0);
  if (frozen === 0) return weather;
  const frost: Finding = {
    code: "release/frost",
    severity: "caution",
    path: "temperature",
    params: { days: frozen },
    text: `${frozen === 1 ? "1 day goes" : `${frozen} days go`} below 0 °C, where no source gives a release; the curve is extrapolated there.`,
  };
  return { ...weather, findings: [...weather.findings, frost] };
};

const steady = (input: MeanTemperature, days: number): ReleaseWeather => {
  expectFields(input, ["mean"], "temperature");
  const mean = expectQuantity(input.mean, { dimension: "temperature", of: "none" }, "temperature.mean").in(
    "°C",
  );
  if (mean < -60 || mean > 100)
    outOfRange("temperature.mean", input.mean, { min: -60, max: 100, unit: "°C" });
  const finding: Finding = {
    code: "release/steady-temperature",
    severity: "note",
    path: "temperature.mean",
    params: { mean },
    text: "One mean temperature is used for all days; days that swing release more than steady ones.",
  };
  const all = new Float64Array(days).fill(mean);
  const assumptions = [`every day at ${Number(mean.toFixed(2))} °C`];
  return { maxC: all, minC: all, assumptions, findings: [finding] };
};

const daily = (input: DailyTemperatures, start: CivilDate, days: number): ReleaseWeather => {
  const { min, max, unit, sensor, start: first } = under("temperature", () => dailyTemperatures(input));
  const [maxC, minC] = [new Float64Array(days), new Float64Array(days)];
  const offset = daysBetween(first, start);
  const problems: Problem[] = [];
  const celsius = (t: number): number => (unit === "°C" ? t : ((t - 32) * 5) / 9);
  for (let i = 0; i < days; i++) {
    const [low, high] = [min[offset + i], max[offset + i]];
    if (typeof low === "number" && typeof high === "number") {
      minC[i] = celsius(low);
      maxC[i] = celsius(high);
    } else {
      problems.push({
        code: "missing",
        path: `temperature.${addDays(start, i)}`,
        got: low === undefined ? "a day outside the series" : `min ${shown(low)}, max ${shown(high)}`,
        expected: "a lowest and a highest temperature",
      });
    }
  }
  if (problems.length > 0) throw new RatewrightError(problems);
  const finding: Finding = {
    code: "release/air-temperature",
    severity: "note",
    path: "temperature.sensor",
    params: { sensor },
    text: "Air temperature is used for the granule; soil and thatch swing less and lag behind.",
  };
  return {
    maxC,
    minC,
    assumptions: [`temperatures: ${sensor}; each day follows a cosine between its lowest and highest`],
    findings: sensor === "air" ? [finding] : [],
  };
};
