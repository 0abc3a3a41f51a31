import { counted } from "../../quantity/house.js";
import type { LimitPeriod } from "./limit.js";

/** How a period reads in a sentence. */
export const periodText = (per: LimitPeriod): string => {
  if (per === "application") return "in one application";
  if (per === "calendar year") return "in a calendar year";
  if ("days" in per) return `in ${counted(per.days, "day")}`;
  if ("months" in per) return `in ${counted(per.months, "month")}`;
  return `from ${per.from} to ${per.to}`;
};
