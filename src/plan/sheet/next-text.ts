import { heatText, type RepeatPlan } from "../visit/repeat.js";
import { dayText } from "./day-text.js";

/** When a treatment comes round again, by what the job states. */
export const nextText = ({ treatment, calendar, heatAfter }: RepeatPlan, metric: boolean): string => {
  const dates =
    calendar === null
      ? []
      : [
          `not before ${dayText(calendar.earliestByStatedRules, metric)} by the stated rule`,
          ...(calendar.reapplyBy === null ? [] : [`reapply by ${dayText(calendar.reapplyBy, metric)}`]),
        ];
  const heat = heatAfter === null ? [] : [heatText(heatAfter)];
  const text = [dates.join(", "), ...heat].filter((part) => part !== "").join(". ");
  return `${treatment}: ${text === "" ? "no interval is stated" : text}`;
};
