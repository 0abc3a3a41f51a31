export { accumulateDegreeDaysC, runningDegreeDaysC } from "./accumulate.js";
export {
  type AccumulatedDegreeDays,
  accumulatedDegreeDays,
  type DegreeDayRow,
} from "./accumulated-degree-days.js";
export { applicationDates } from "./application-dates.js";
export { type ApplicationsLeft, applicationsLeft, fewestApplications } from "./applications-left.js";
export type { AppliedInput } from "./applied.js";
export { type CalendarAgainstHeat, calendarAgainstHeat } from "./calendar-against-heat.js";
export type { AvoidedDays, ClosedTime } from "./closed-time.js";
export { type DateReached, dateReached } from "./date-reached.js";
export type { DayBasis, MissingDays } from "./days-of-heat.js";
export {
  fractionRemaining,
  type HalfLifeAtTemperature,
  halfLifeAt,
  persistenceClass,
  type RepeatedDose,
  repeatedDose,
  timeUntilRemaining,
} from "./decay.js";
export type { DegreeDayId, IdParts, WholeCelsius } from "./degree-day-id.js";
export {
  type BaseTemperature,
  type DegreeDayModel,
  type DegreeDayModelInput,
  type DegreeDaysOf,
  degreeDayModel,
} from "./degree-day-model.js";
export { degreeDayAmount, degreeDays } from "./degree-days.js";
export {
  type EntryCategories,
  type EntryInterval,
  type EntryStatement,
  earlyEntryObjections,
  entryInterval,
  interimEntryHours,
  type ToxicityCategory,
} from "./entry-interval.js";
export {
  type EventWindow,
  eventWindows,
  eventWindowsFor,
  type SoilTemperatureThreshold,
  soilTemperaturesFor,
  soilTemperatureThresholds,
} from "./event-windows.js";
export { earliestByGaps, type GapDate, type GapRule, type TurfEvent } from "./gap-rule.js";
export { type GrassSeason, growthClass, growthPotential, nitrogenForGrowth } from "./growth-potential.js";
export {
  type LowHigh,
  type RegulatorInterval,
  type ReplacementHalfLife,
  regulatorIntervals,
  replacementHalfLives,
} from "./growth-regulators.js";
export type { HeatBasis, HeatSources } from "./heat-chain.js";
export type { DegreeDayMethod, UpperCutoff } from "./heat-of-day.js";
export { type HeatSchedule, type HeatVisit, heatSchedule } from "./heat-schedule.js";
export {
  type HourlyColumn,
  type HourlyWeather,
  hourlyWeather,
  type WeatherFigure,
} from "./hourly-weather.js";
export type { IntervalRemark } from "./interval-remark.js";
export {
  type CountingPeriod,
  type IntervalRule,
  intervalRule,
  type PeriodAmount,
  type PeriodCount,
} from "./interval-rule.js";
export { type NextDates, nextDates } from "./next-dates.js";
export type { IntervalFinding } from "./past-findings.js";
export { rainfastFrom, type WateringInState, wateringInState } from "./rain-windows.js";
export {
  type CountableInterval,
  meetsReboundCondition,
  regulatorInterval,
  regulatorIntervalsFor,
} from "./regulator-interval.js";
export { replacementDose } from "./replacement-dose.js";
export { type SignalWord, signalWord } from "./signal-word.js";
export { type SplitApplication, splitApplication } from "./split-application.js";
export type { SprayHour, SprayObjection } from "./spray-hour.js";
export { publishedSprayRules, type SprayRules, type StatedBounds, type SunTimes } from "./spray-rules.js";
export { type SprayWindow, sprayWindow } from "./spray-window.js";
export { type TurfHalfLife, turfHalfLives, turfHalfLivesOf } from "./turf-half-lives.js";
export { type AirState, type DeltaT, deltaT, type WetBulb, wetBulb } from "./wet-bulb.js";
export { annualBluegrassFlowering, firstRun, heatWindowState } from "./window-state.js";
