import { type CivilDate, type DailySeries, dailySeries } from "../calendar/index.js";
import { fail, numberIn, outOfRange, quantityOf, toldAt } from "../quantity/index.js";
import type { Read } from "./read.js";

/** A daily series of depths, in mm. */
export interface DailyDepths {
  readonly start: CivilDate;
  readonly mm: readonly (number | null)[];
}

/** Takes a daily series of depths, zero or more. */
export const dailyDepths: Read<DailyDepths> = (input, path) => {
  if (Object(input).type !== "daily-series")
    return fail("type", path, input, "a daily series of depths, as dailySeries makes it");
  const series = toldAt(path, "series", () => dailySeries(input as DailySeries));
  const one = quantityOf(1, series.unit, "none", `${path}.unit`);
  if (one.dimension !== "length")
    fail("unit/mismatch", `${path}.unit`, series.unit, "a unit for a length, such as in or mm");
  const factor = numberIn(one, "mm");
  const below = series.values.findIndex((value) => value !== null && value < 0);
  if (below >= 0) outOfRange(`${path}.values[${below}]`, series.values[below], { min: 0 });
  return { start: series.start, mm: series.values.map((value) => (value === null ? null : value * factor)) };
};
