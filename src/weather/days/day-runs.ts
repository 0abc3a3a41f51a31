import { addDays, type CivilDate, type DailySeries } from "../../calendar/index.js";
import { dimensionDue } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectOneOf,
  expectQuantity,
  fail,
  numberIn,
  plainCopy,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { checkedSeries, expectDays } from "./checked-series.js";
import type { DayFigureBasis, JoinedDays } from "./joined-days.js";

/** Days in a row on one side of a threshold. */
export interface DayRun {
  readonly from: CivilDate;
  readonly to: CivilDate;
  readonly days: number;
  /** The day on which the run was as long as asked for. */
  readonly complete: CivilDate;
  /** Whether the series ends with the run: it may go on. */
  readonly open: boolean;
  /** The weakest basis of the days up to `complete`; `null` where the series does not say. */
  readonly basis: DayFigureBasis | null;
}

/** All runs of days on one side of a threshold that are long enough. */
export interface DayRuns {
  readonly type: "day-runs";
  readonly version: 1;
  readonly runs: readonly DayRun[];
  /** Days without a figure: each ends a run, though it may have gone on. */
  readonly unknownDays: number;
}

const weakest = (list: readonly (DayFigureBasis | null)[]): DayFigureBasis | null =>
  list.includes("normal") ? "normal" : list.includes("forecast") ? "forecast" : (list[0] ?? null);

const read = (input: unknown): { readonly series: DailySeries; readonly basis?: JoinedDays["basis"] } => {
  const joined = plainCopy(input) as JoinedDays | undefined;
  if (joined?.type !== "joined-days") return { series: checkedSeries(joined, "series") };
  const fields = expectFields(joined, ["type", "version", "series", "basis"], "series");
  const series = checkedSeries(fields.series, "series.series");
  if (!Array.isArray(fields.basis) || fields.basis.length !== series.values.length) {
    return fail("conflict", "series.basis", fields.basis, "as many entries as the series has days");
  }
  const basis = Array.from(fields.basis, (one: unknown, i) =>
    one === null ? null : expectOneOf(one, ["observed", "forecast", "normal"], `series.basis[${i}]`),
  );
  return { series, basis };
};

/**
 * Every run of days at or above, or at or below, a threshold that lasts `days` days or more: "soil at 1 in at or above
 * 54 °F for 7 days", "nights at or below 50 °F". A day without a figure ends a run. For the first run alone there is
 * `firstRun` of the interval room.
 *
 * Given joined days ({@link joinedDays}), each run says on which basis it was complete: observed, or only by forecast or by
 * what is normal.
 *
 * @param input.series - a daily series, or joined days
 * @param input.threshold - of the dimension of the series; equal counts on both sides
 * @param input.side - `"at or above"` unless stated
 * @param input.days - how many in a row, 1 to 366
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`, `conflict`; what `dailySeries` throws, with `series`
 * before the path
 *
 * Source: counting of days.
 *
 * @example
 * ```ts
 * import { dailySeries, dayRuns, quantity } from "ratewright";
 * const soil = dailySeries({
 *   start: "2026-04-10", unit: "°F", what: "soil at 1 in", source: "probe at the depot",
 *   values: [53, 54, 55, 56, 52, 55, 57, 58, 59],
 * });
 * const { runs } = dayRuns({ series: soil, threshold: quantity(54, "°F"), days: 3 });
 * runs.map(({ complete, days, open }) => [complete, days, open]);
 * // => [["2026-04-13", 3, false], ["2026-04-17", 4, true]]
 * ```
 */
export const dayRuns = <D extends string>(input: {
  readonly series: DailySeries | JoinedDays;
  readonly threshold: Quantity<D, "none">;
  readonly side?: "at or above" | "at or below";
  readonly days: number;
}): DayRuns => {
  const fields = expectFields(input, ["series", "threshold", "side", "days"]);
  const { from, side, days } = allOf({
    from: () => read(fields.series),
    side: () =>
      fields.side === undefined
        ? "at or above"
        : expectOneOf(fields.side, ["at or above", "at or below"], "side"),
    days: () => expectDays(fields.days, "days", 1, 366),
  });
  const { series, basis } = from;
  const { dimension } = quantityOf(0, series.unit, "none", "series.unit");
  if (fields.threshold === undefined) dimensionDue("missing", "threshold", undefined, dimension);
  const limit = numberIn(
    expectQuantity(fields.threshold, { dimension, of: "none" }, "threshold"),
    series.unit,
  );
  const guard = 1e-9 * Math.max(1, Math.abs(limit));
  const counts = series.values.map((value) =>
    value === null ? null : side === "at or above" ? value >= limit - guard : value <= limit + guard,
  );
  const runs: DayRun[] = [];
  for (let i = 0; i < counts.length; i++) {
    const first = i;
    while (counts[i] === true) i++;
    if (i - first < days) continue;
    runs.push({
      from: addDays(series.start, first),
      to: addDays(series.start, i - 1),
      days: i - first,
      complete: addDays(series.start, first + days - 1),
      open: i === counts.length,
      basis: basis === undefined ? null : weakest(basis.slice(first, first + days)),
    });
  }
  return {
    type: "day-runs",
    version: 1,
    runs,
    unknownDays: counts.filter((one) => one === null).length,
  };
};
