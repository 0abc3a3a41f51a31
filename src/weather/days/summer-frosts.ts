import { type CivilDate, type DailySeries, daysBetween } from "../../calendar/index.js";
import type { Finding } from "../../quantity/index.js";

/** Days on either side of the dividing day that should lie in summer. */
const summerDays = 30;

/** Frosts close to the dividing day: it may lie in winter, as 24 July does south of the equator. */
export const summerFrosts = (
  minima: DailySeries,
  divides: readonly CivilDate[],
  limit: number,
): Finding[] => {
  const dates = divides.filter((day) => {
    const at = daysBetween(minima.start, day);
    const near = minima.values.slice(Math.max(0, at - summerDays), Math.max(0, at + summerDays + 1));
    return near.some((value) => value !== null && value <= limit);
  });
  const divide = dates[0]?.slice(5);
  return divide === undefined
    ? []
    : [
        {
          code: "frost/near-dividing-day",
          severity: "warning",
          path: "divide",
          params: { divide, days: summerDays, winters: dates.length },
          text: `Frosts fall within ${summerDays} days of the dividing day, ${divide}, in ${dates.length} of the years: first and last frosts may be mixed up. South of the equator give divide "01-24".`,
          source: "common practice, no source",
        },
      ];
};
