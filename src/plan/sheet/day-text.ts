import { type CivilDate, daysBetween, type Instant, isCivilDate } from "../../calendar/index.js";

const weekdays = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];
const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A date as people say it: `Mon Jun 8, 2015`; day first on a metric sheet: `Mon 8 Jun 2015`. */
export const dayText = (date: CivilDate, metric: boolean): string => {
  const [year = "", month = "", day = ""] = date.split("-");
  // 1 January of the year 1 was a Monday in the calendar that the dates are written in.
  const weekday = weekdays[((daysBetween("0001-01-01", date) % 7) + 7) % 7] ?? "";
  const name = months[Number(month) - 1] ?? "";
  return metric ? `${weekday} ${Number(day)} ${name} ${year}` : `${weekday} ${name} ${Number(day)}, ${year}`;
};

/**
 * A moment by the clock that it was written with: `Mon Jun 8, 4:30 pm`; on a metric sheet `Mon 8 Jun, 16:30`. Midnight says
 * which end of the day it is. A moment of UTC, as programs write it, says so: few crews have its clock on the wall.
 */
export const momentText = (at: Instant, metric: boolean): string =>
  `${clockText(at, metric)}${at.endsWith("Z") ? " UTC" : ""}`;

const clockText = (at: Instant, metric: boolean): string => {
  const day = dayText(at.slice(0, 10) as CivilDate, metric).replace(/,? \d{4}$/, "");
  const [hour, minute] = [Number(at.slice(11, 13)), at.slice(14, 16)];
  if (minute === "00" && hour % 12 === 0 && !metric)
    return hour === 0 ? `midnight at the start of ${day}` : `${day}, noon`;
  return metric
    ? `${day}, ${at.slice(11, 16)}`
    : `${day}, ${hour % 12 === 0 ? 12 : hour % 12}:${minute} ${hour < 12 ? "am" : "pm"}`;
};

/** A text of a finding with its dates as people say them: `expired Sun Jun 7, 2015`. */
export const spokenDates = (text: string, metric: boolean): string =>
  text.replace(
    /(^|[^\w-])(\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\d|3[01]))(?![\w-])/g,
    (_, before: string, date: string) => before + (isCivilDate(date) ? dayText(date, metric) : date),
  );
