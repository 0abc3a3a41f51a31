import { degreeDayText, type RepeatPlan } from "../visit/repeat.js";
import { dayText, spokenDates } from "./day-text.js";

/** When a treatment comes round again, by what the job states. */
export const nextText = ({ treatment, calendar, degreeDaysAfter }: RepeatPlan, metric: boolean): string => {
  const dates =
    calendar === null
      ? []
      : [
          // Where nothing moved the date it is the day of the visit itself, which no rule states.
          ...(calendar.decidedBy === null
            ? []
            : [`not before ${dayText(calendar.earliestByStatedRules, metric)} by the stated rule`]),
          ...(calendar.reapplyBy === null ? [] : [`reapply by ${dayText(calendar.reapplyBy, metric)}`]),
        ];
  const degreeDays = degreeDaysAfter === null ? [] : [spokenDates(degreeDayText(degreeDaysAfter), metric)];
  const text = [dates.join(", "), ...degreeDays].filter((part) => part !== "").join(". ");
  const none = calendar === null ? "no interval is stated" : "the stated rule sets no date";
  return `${treatment}: ${text === "" ? none : text}`;
};
