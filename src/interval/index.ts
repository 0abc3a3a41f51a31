export { accumulateDegreeDaysC, runningDegreeDaysC } from "./accumulate.js";
export {
  type AccumulatedDegreeDays,
  accumulatedDegreeDays,
  type DegreeDayRow,
} from "./accumulated-degree-days.js";
export { applicationDates } from "./application-dates.js";
export { type ApplicationsLeft, applicationsLeft, fewestApplications } from "./applications-left.js";
export type { AppliedInput } from "./applied.js";
export type { AvoidedDays, ClosedTime } from "./closed-time.js";
export { type DateReached, dateReached } from "./date-reached.js";
export type { DayBasis, MissingDays } from "./days-of-heat.js";
export type { DegreeDayId, IdParts, WholeCelsius } from "./degree-day-id.js";
export {
  type BaseTemperature,
  type DegreeDayModel,
  type DegreeDayModelInput,
  type DegreeDaysOf,
  degreeDayModel,
} from "./degree-day-model.js";
export { degreeDayAmount, degreeDays } from "./degree-days.js";
export type { DegreeDayMethod, UpperCutoff } from "./heat-of-day.js";
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
