import {
  addDays,
  addHours,
  type CivilDate,
  civilDate,
  type DailySeries,
  dateRange,
  type Instant,
  instant,
  seriesDay,
} from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import {
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { checkedDaily } from "../checked-daily.js";

/**
 * Until when rain would wash a spray off: the end of the application and the hours that its label states.
 * There is no table of such hours here: none could be read, and products of one active differ.
 *
 * @param input.end - when the application ended, with its offset
 * @param input.label - the rainfast time of the label
 * @throws RatewrightError `date`, `range`, `unit/mismatch`, `type`
 *
 * @example
 * ```ts
 * import { quantity, rainfastFrom } from "ratewright";
 * rainfastFrom({ end: "2026-06-03T15:30-05:00", label: quantity(6, "h") }); // => "2026-06-03T21:30-05:00"
 * ```
 */
export const rainfastFrom = (input: {
  readonly end: Instant;
  readonly label: Quantity<"time", "none">;
}): Instant => {
  expectFields(input, ["end", "label"]);
  const wanted = { dimension: "time", of: "none", bound: "non-negative" } as const;
  return addHours(instant(input.end, "end"), expectQuantity(input.label, wanted, "label").in("h"));
};

/** How far a product that has to be watered in has been, by the rain that fell. */
export interface WateringInState {
  readonly type: "watering-in-state";
  readonly version: 1;
  /** The last day of the window. */
  readonly by: CivilDate;
  /** What fell in the window on the days with a figure. */
  readonly rain: Quantity<"length", "none">;
  /** What is still missing, to be watered; 0 where the rain was enough. */
  readonly remaining: Quantity<"length", "none">;
  /** Days of the window without a figure: they count as dry. */
  readonly notCounted: readonly CivilDate[];
}

/**
 * How much water is still missing for a product that has to be watered in within some days, after the
 * rain so far. The days count from the day after the application; rain on its own day may have fallen
 * before it and is left out.
 *
 * @param input.depth - what the label or source asks for
 * @param input.withinDays - the days in which it asks for it
 * @param input.rain - a daily series of rain in a unit of length
 * @throws RatewrightError `date`, `range`, `unit/mismatch`, `type`; what `dailySeries` throws, with `rain`
 * before the path
 *
 * @example
 * ```ts
 * import { dailySeries, quantity, wateringInState } from "ratewright";
 * const rain = dailySeries({
 *   start: "2026-03-02", unit: "mm", what: "rain", source: "gauge at the depot", values: [0, 5, 2.5],
 * });
 * const state = wateringInState({
 *   applied: "2026-03-01", depth: quantity(12.5, "mm"), withinDays: 7, rain,
 * });
 * state.by; // => "2026-03-08"
 * state.remaining.in("mm"); // => 5
 * ```
 */
export const wateringInState = (input: {
  readonly applied: CivilDate;
  readonly depth: Quantity<"length", "none">;
  readonly withinDays: number;
  readonly rain: DailySeries;
}): WateringInState => {
  expectFields(input, ["applied", "depth", "withinDays", "rain"]);
  const applied = civilDate(input.applied, "applied");
  const wanted = { dimension: "length", of: "none", bound: "positive" } as const;
  const depth = expectQuantity(input.depth, wanted, "depth");
  const days = expectNumber(input.withinDays, "withinDays", { min: 1, max: 366 });
  if (!Number.isInteger(days)) fail("range", "withinDays", days, "a whole number of days");
  const by = addDays(applied, days);
  const rain = checkedDaily(input.rain, "rain");
  const { unit } = rain;
  let fallen = 0;
  const notCounted: CivilDate[] = [];
  for (const date of dateRange(addDays(applied, 1), by)) {
    const value = seriesDay(rain, date);
    if (typeof value !== "number") notCounted.push(date);
    else {
      const day = expectQuantity({ value, unit }, { ...wanted, bound: "non-negative" }, `rain.${date}`);
      fallen += day.in("mm");
    }
  }
  const as = (mm: number): Quantity<"length", "none"> =>
    quantity(quantity(mm, "mm").in(depth.unit as "in"), depth.unit as "in");
  const asked = depth.in("mm");
  // What rounding leaves over is nothing.
  const remaining = exceeds(asked, fallen) ? asked - fallen : 0;
  return {
    type: "watering-in-state",
    version: 1,
    by,
    rain: as(fallen),
    remaining: as(remaining),
    notCounted,
  };
};
