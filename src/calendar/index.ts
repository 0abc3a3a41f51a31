// Calendar dates without a clock or a time zone, windows of the year, daily series with their gaps.

export { type CivilDate, civilDate, isCivilDate, type PlainDateLike } from "./civil-date.js";
export { type DailyNormals, dailyNormals, type NormalDay, normalDay } from "./daily-normals.js";
export { type DailySeries, type DailyValues, dailySeries } from "./daily-series.js";
export {
  type DailyTemperatures,
  dailyTemperatures,
  isSensor,
  type TemperatureSensor,
} from "./daily-temperatures.js";
export { addDays, addMonths, compareDates, dateRange, daysBetween } from "./date-arithmetic.js";
export { dayOfMonth, dayOfYear, isLeapYear, monthOf, weekday, yearOf } from "./date-parts.js";
export {
  addHours,
  compareInstants,
  dateOfInstant,
  hoursBetween,
  type Instant,
  type InstantLike,
  instant,
  isInstant,
} from "./instant.js";
export { type DayTemperatures, type Gap, gapsOf, seriesDay, seriesEnd } from "./series-days.js";
export {
  type DateSpan,
  firstDateWithin,
  isWithinWindow,
  type MonthDay,
  type MonthDayWindow,
  monthDay,
  windowAround,
} from "./window.js";
