import { addDays, type CivilDate, civilDate, type DailySeries, daysBetween } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import { fail, numberIn } from "../../quantity/index.js";
import { dailyDepths } from "../daily-depths.js";
import { depth, type Length, made, type Read, readRecord, whole } from "../read.js";

/** How far a product that has to be watered in has been, by the rain that fell. */
export interface WateringInState {
  readonly type: "watering-in-state";
  readonly version: 1;
  /** The last day of the window. */
  readonly by: CivilDate;
  /** What fell in the window on the days with a figure. */
  readonly rain: Length;
  /** What is still missing, to be watered; 0 where the rain was enough. */
  readonly remaining: Length;
  /** Days of the window without a figure: they count as dry. */
  readonly notCounted: readonly CivilDate[];
}

const day: Read<CivilDate> = (input, path) =>
  input === undefined ? fail("missing", path, input, "a date") : civilDate(input as CivilDate, path);

/**
 * How much water is still missing for a product that has to be watered in within some days, after the rain of a daily
 * series. The days count from the day after the application; rain on its own day may have fallen before it and is left out.
 * Where the moments of rain and irrigation are known, {@link wateringIn} weighs them by the hour.
 *
 * @param input.applied - the day of the application
 * @param input.depth - what the label or source asks for
 * @param input.withinDays - the days in which it asks for it
 * @param input.rain - a daily series of rain in a unit of length
 * @throws RatewrightError `date`, `missing`, `range`, `unit/mismatch`, `type`; what `dailySeries` throws, with `rain`
 * before the path; all that are found
 *
 * Source: the rule is the caller's; addition.
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
  readonly depth: Length;
  readonly withinDays: number;
  readonly rain: DailySeries;
}): WateringInState => {
  const q = readRecord(
    input,
    { applied: day, depth, withinDays: whole({ min: 1, max: 366 }), rain: dailyDepths },
    "a record with applied, depth, withinDays and rain",
  );
  const { unit } = q.depth;
  let fallen = 0;
  const notCounted: CivilDate[] = [];
  for (let i = 1; i <= q.withinDays; i++) {
    const date = addDays(q.applied, i);
    const mm = q.rain.mm[daysBetween(q.rain.start, date)];
    if (mm === undefined || mm === null) notCounted.push(date);
    else fallen += mm;
  }
  const asked = numberIn(q.depth, "mm");
  const as = (mm: number): Length =>
    made(numberIn({ value: mm, unit: "mm", of: "none" }, unit), unit, "length");
  return {
    type: "watering-in-state",
    version: 1,
    by: addDays(q.applied, q.withinDays),
    rain: as(fallen),
    // What rounding leaves over is nothing.
    remaining: as(exceeds(asked, fallen) ? asked - fallen : 0),
    notCounted,
  };
};
