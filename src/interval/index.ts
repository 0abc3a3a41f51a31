// When again: intervals, degree-days, growth regulators, re-entry and weather to spray in.

// rule: intervals by the calendar: next dates, what is left of a season, gaps before seeding.
export { applicationDates } from "./rule/application-dates.js";
export { type ApplicationsLeft, applicationsLeft, fewestApplications } from "./rule/applications-left.js";
export type { AppliedInput } from "./rule/applied.js";
export type { AvoidedDays, BlackoutPeriod } from "./rule/blackout-period.js";
export {
  earliestBySeedingIntervals,
  type SeedingIntervalDate,
  type SeedingInterval,
  type TurfEvent,
} from "./rule/seeding-interval.js";
export type { IntervalRemark } from "./rule/interval-remark.js";
export {
  type CountingPeriod,
  type IntervalRule,
  intervalRule,
  type PeriodAmount,
  type PeriodCount,
} from "./rule/interval-rule.js";
export { type NextDates, nextDates } from "./rule/next-dates.js";
export type { IntervalFinding } from "./rule/past-findings.js";
export { type SplitApplication, splitApplication } from "./rule/split-application.js";

// degree-days: degree-days by method: of a day, of a season, and the date that a sum is reached.
export { accumulateDegreeDaysC, runningDegreeDaysC } from "./degree-days/accumulate.js";
export {
  type AccumulatedDegreeDays,
  accumulatedDegreeDays,
  type DegreeDayRow,
} from "./degree-days/accumulated-degree-days.js";
export { type DateReached, dateReached } from "./degree-days/date-reached.js";
export type { DayBasis, MissingDays } from "./degree-days/days-of-degree-days.js";
export type { DegreeDayId, IdParts, WholeCelsius } from "./degree-days/degree-day-id.js";
export {
  type BaseTemperature,
  type DegreeDayModel,
  type DegreeDayModelInput,
  type DegreeDaysOf,
  degreeDayModel,
} from "./degree-days/degree-day-model.js";
export { degreeDayAmount, degreeDays } from "./degree-days/degree-days.js";
export type { DegreeDayMethod, UpperCutoff } from "./degree-days/degree-day-method.js";

// regulator: when a growth regulator comes round again, by degree-days.
export {
  type CalendarAgainstDegreeDays,
  calendarAgainstDegreeDays,
} from "./regulator/calendar-against-degree-days.js";
export {
  type LowHigh,
  type RegulatorInterval,
  type ReplacementHalfLife,
  regulatorIntervals,
  replacementHalfLives,
} from "./regulator/growth-regulators.js";
export type { DegreeDayBasis, TemperatureSources } from "./regulator/degree-day-chain.js";
export {
  type DegreeDaySchedule,
  type DegreeDayVisit,
  degreeDaySchedule,
} from "./regulator/degree-day-schedule.js";
export {
  type CountableInterval,
  meetsReboundCondition,
  regulatorInterval,
  regulatorIntervalsFor,
} from "./regulator/regulator-interval.js";
export { replacementDose } from "./regulator/replacement-dose.js";

// growth: how fast turf grows, and what flowers, hatches or germinates now.
export {
  type EventWindow,
  eventWindows,
  eventWindowsFor,
  type SoilTemperatureThreshold,
  soilTemperaturesFor,
  soilTemperatureThresholds,
} from "./growth/event-windows.js";
export {
  type GrassSeason,
  growthClass,
  growthPotential,
  nitrogenForGrowth,
} from "./growth/growth-potential.js";
export { annualBluegrassFlowering, firstRun, degreeDayWindowState } from "./growth/window-state.js";

// entry: when people may enter again, and what the signal word says.
export { earlyEntryObjections } from "./entry/early-entry.js";
export {
  type EntryCategories,
  type RestrictedEntryInterval,
  type EntryStatement,
  restrictedEntryInterval,
  interimRestrictedEntryHours,
  type ToxicityCategory,
} from "./entry/restricted-entry-interval.js";
export { type SignalWord, signalWord } from "./entry/signal-word.js";

// spray-window: the hours to spray in: wind, delta T, rain and rules.
export {
  type HourlyColumn,
  type HourlyWeather,
  hourlyWeather,
  type WeatherFigure,
} from "./spray-window/hourly-weather.js";
export { rainfastFrom } from "./spray-window/rainfast-from.js";
export type { SprayHour, SprayObjection } from "./spray-window/spray-hour.js";
export {
  publishedSprayRules,
  type SprayRules,
  type StatedBounds,
  type StatedWind,
  type SunTimes,
} from "./spray-window/spray-rules.js";
export { type SprayWindow, sprayWindow } from "./spray-window/spray-window.js";
export {
  type AirState,
  type DeltaT,
  deltaT,
  type WetBulb,
  type WetBulbMethod,
  wetBulb,
} from "./spray-window/wet-bulb.js";

// decay: half-lives and what is left of a dose.
export {
  fractionRemaining,
  type HalfLifeAtTemperature,
  halfLifeAt,
  persistenceClass,
  type RepeatedDose,
  repeatedDose,
  timeUntilRemaining,
} from "./decay/decay.js";
export { type TurfHalfLife, turfHalfLives, turfHalfLivesOf } from "./decay/turf-half-lives.js";
