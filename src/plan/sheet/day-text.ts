import { type CivilDate, daysBetween } from "../../calendar/index.js";

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
