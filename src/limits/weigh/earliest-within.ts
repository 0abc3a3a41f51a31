import { type CivilDate, compareDates } from "../../calendar/index.js";
import type { CountedDays } from "./counted-days.js";
import { type Question, violatedOn } from "./limits-on.js";

/** The first day, from a date on, on which none of the limits is violated. */
export const earliestWithin = (input: Question): CivilDate | null => {
  let date: CivilDate | null = input.date;
  const kept: CountedDays = input.kept ?? new Map();
  // Every step goes to a later day that one limit asks for; a year of steps is more than any set of limits needs.
  for (let step = 0; step < 400 && date !== null; step++) {
    const violated = violatedOn({ ...input, date, kept });
    if (violated.length === 0) return date;
    let next: CivilDate | null = null;
    for (const { earliestByStatedLimit: day } of violated) {
      if (day === null) return null;
      if (next === null || compareDates(day, next) > 0) next = day;
    }
    date = next !== null && compareDates(next, date) > 0 ? next : null;
  }
  return null;
};
