import { type CivilDate, type DailySeries, dateRange, seriesDay, seriesEnd } from "../../calendar/index.js";
import { exceeds } from "../../numeric/index.js";
import {
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantityOf,
  shown,
} from "../../quantity/index.js";
import { checkedDaily } from "../checked-daily.js";

/**
 * Where a total of degree-days lies beside a window, both ends included: `"before"`, `"within"` or
 * `"after"`. The window and the total are of one model: the substance says so. To be within a window is no
 * proof that it is the right day: applications within one have failed (Michigan State University, 2018).
 *
 * @param input.to - left out where a source gives a beginning only
 * @throws RatewrightError `substance/mismatch` for degree-days of another model, `conflict` where `from`
 * lies above `to`, `unit/mismatch`, `range`
 *
 * Source: that of the window.
 *
 * @example
 * ```ts
 * import { degreeDayAmount, degreeDayModel, degreeDayWindowState } from "ratewright";
 * const model = degreeDayModel({
 *   method: "simple average", base: { value: 32, unit: "°F" }, sensor: "air", start: "02-15",
 * });
 * const heat = (value: number) => degreeDayAmount({ value, unit: "°F d", model });
 * degreeDayWindowState({ total: heat(249), from: heat(250), to: heat(500) }); // => "before"
 * degreeDayWindowState({ total: heat(500), from: heat(250), to: heat(500) }); // => "within"
 * ```
 */
export const degreeDayWindowState = <M extends string>(input: {
  readonly total: Quantity<"degree-days", M>;
  readonly from: Quantity<"degree-days", NoInfer<M>>;
  readonly to?: Quantity<"degree-days", NoInfer<M>>;
}): "before" | "within" | "after" => {
  expectFields(input, ["total", "from", "to"]);
  const total = expectQuantity(input.total, { dimension: "degree-days" }, "total");
  const wanted = { dimension: "degree-days", of: total.of } as const;
  const from = expectQuantity(input.from, { ...wanted, bound: "non-negative" }, "from").in("°C d");
  const to = input.to === undefined ? undefined : expectQuantity(input.to, wanted, "to").in("°C d");
  if (to !== undefined && exceeds(from, to))
    fail("conflict", "from", input.from, `not more than to, which is ${shown(input.to)}`);
  const now = total.in("°C d");
  if (exceeds(from, now)) return "before";
  return to !== undefined && exceeds(now, to) ? "after" : "within";
};

/**
 * The last day of the first run of days whose value is at or above a threshold: "three nights in a row
 * above 50 °F" is a run of 3 in a series of lowest soil temperatures. A day without a figure ends a run.
 *
 * @param input.days - how many in a row, a whole number
 * @returns the date on which the run is complete, or `null` where there is none
 * @throws RatewrightError `unit/mismatch` where the series has no temperatures, `range`, `type`, `date`; what
 * `dailySeries` throws, with `series` before the path
 *
 * Source: counting of days.
 *
 * @example
 * ```ts
 * import { dailySeries, firstRun, quantity } from "ratewright";
 * const nights = dailySeries({
 *   start: "2026-04-01", unit: "°F", what: "lowest soil temperature at 1 in", source: "probe at the depot",
 *   values: [49, 51, 52, null, 51, 52, 53],
 * });
 * firstRun({ series: nights, threshold: quantity(50, "°F"), days: 3 }); // => "2026-04-07"
 * ```
 */
export const firstRun = (input: {
  readonly series: DailySeries;
  readonly threshold: Quantity<"temperature", "none">;
  readonly days: number;
}): CivilDate | null => {
  expectFields(input, ["series", "threshold", "days"]);
  const series = checkedDaily(input.series, "series");
  const wanted = { dimension: "temperature", of: "none" } as const;
  const threshold = expectQuantity(input.threshold, wanted, "threshold").in("°C");
  const days = expectNumber(input.days, "days", { min: 1 });
  if (!Number.isInteger(days)) outOfRange("days", days, { step: 1, count: "days" });
  const degrees = (value: number): number =>
    expectQuantity(quantityOf(value, series.unit, "none", "series.unit"), wanted, "series").in("°C");
  degrees(0);
  let run = 0;
  for (const date of dateRange(series.start, seriesEnd(series))) {
    const value = seriesDay(series, date);
    const warm = typeof value === "number" && degrees(value) >= threshold - 1e-9;
    run = warm ? run + 1 : 0;
    if (run === days) return date;
  }
  return null;
};

/**
 * The share of annual bluegrass that flowers on a fairway, by degree-days above -5 °C:
 * `-3.331599e-6 g² + 6.968782e-3 g - 2.841894`, and 0 where that is negative, below about 555 and above
 * about 1537. The fit explains 64 % of what was seen; the unit, a share of 1, and the scale, °C d, are our
 * reading of the abstract.
 *
 * @param degreeDays - `g`, above -5 °C, as the source counts them; zero or more
 * @throws RatewrightError `range`, `not-finite`
 * Source: Calhoun et al. 2021, International Turfgrass Society Research Journal 14, 462-469, abstract.
 *
 * @example
 * ```ts
 * import { annualBluegrassFlowering } from "ratewright";
 * Number(annualBluegrassFlowering(1000).toFixed(3)); // => 0.795
 * annualBluegrassFlowering(500); // => 0
 * ```
 */
export const annualBluegrassFlowering = (degreeDays: number): number => {
  const g = expectNumber(degreeDays, "degreeDays", { min: 0, max: 1e6 });
  return Math.max(0, (-3.331599e-6 * g + 6.968782e-3) * g - 2.841894);
};
