// What the weather decides: wind, moist air, heat, runs of days, frost, sun and light.

// air: the wind where the label means it, and what moist or still air does to the spray, the leaf and the crew.
export { dewPoint, humidityFromDewPoint } from "./air/dew-point.js";
export type { AirColumn } from "./air/expect-air.js";
export {
  type HeatCategory,
  type HeatIndex,
  type HeatTable,
  type HeatTableName,
  heatIndex,
  heatTables,
} from "./air/heat-index.js";
export { type InversionReading, inversionReading, type ThermometerReading } from "./air/inversion.js";
export { type LeafWetness, leafWetness } from "./air/leaf-wetness.js";
export { type WindReading, windAtHeight, windReading, windReadingAt } from "./air/wind-at-height.js";

// days: what a series of days says: its running mean, its runs on one side of a bound, its first and last frost.
export { type DayRun, type DayRuns, dayRuns } from "./days/day-runs.js";
export { frostChance } from "./days/frost-chance.js";
export { frostDates } from "./days/frost-dates.js";
export type { FrostDates, FrostOdds, FrostSide, FrostState, FrostWinter } from "./days/frost-winters.js";
export { type DayFigureBasis, type JoinedDays, joinedDays } from "./days/joined-days.js";
export { dailyMeans, runningMean } from "./days/running-mean.js";

// sun: when it rises and sets, how long the day is, and how much light the grass gets.
export { type DailyLight, dailyLightIntegral, lightFromRadiation } from "./sun/daily-light.js";
export { type DayLengthMethod, dayLength } from "./sun/day-length.js";
export { type SunDay, sunTimes } from "./sun/sun-times.js";
