import {
  allOf,
  type Citation,
  expectFields,
  fail,
  frozen,
  type Quantity,
  quantity,
  type Speed,
} from "../../quantity/index.js";
import { gridFields, gridOf, type PlantingGrid } from "../planting/grid.js";
import { type Area, areaAt, given, isMetric, percentAt, type Share } from "../read.js";
import { radiusOfCover } from "./lattice-cover.js";
import { perWeek } from "./spread.js";

const moved = (before: number, after: number, days: number, potential: number, metric: boolean): Speed =>
  perWeek(((after - before) * 100) / (days * potential), metric);

const timeAt = (input: unknown): number => given(input, "time", "time", "none").in("d");
const potentialAt = (input: unknown): number => percentAt(input, "potential", { above: 0, max: 100 }, 100);

/**
 * The rate of spread that a cover seen twice tells of: how fast the edges of the patches moved outwards,
 * `U = (r2 - r1) / (t GP)`, with `r` the radius for each cover in the pattern. Take it from the ground
 * itself, some weeks after planting, and {@link coverOverTime} has a rate of its own.
 *
 * @param input.before - cover at the first look, above 0, below 100 %
 * @param input.after - cover at the second, not less; below 100 %, for full ground hides how far the edges went
 * @param input.time - from the one to the other, more than zero
 * @param input.potential - mean growth potential over that time; 100 % where it is left out, and the rate
 * is then that of those very days
 * @returns in inches a week, or mm a week for a spacing in metric units
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `type`; all that are found
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity, spreadRateFromCover } from "ratewright";
 * const rate = spreadRateFromCover({
 *   pattern: "square", spacing: quantity(30, "cm"),
 *   before: quantity(3, "%"), after: quantity(40, "%"), time: quantity(6, "week"),
 * });
 * Number(rate.in("mm/d").toFixed(2)); // => 1.85
 * ```
 */
export const spreadRateFromCover = (
  input: PlantingGrid & {
    readonly before: Share;
    readonly after: Share;
    readonly time: Quantity<"time", "none">;
    readonly potential?: Share;
  },
): Speed => {
  const record = expectFields(input, [...gridFields, "before", "after", "time", "potential"]);
  const { grid, before, after, days, potential } = allOf({
    grid: () => gridOf(record),
    before: () => percentAt(record.before, "before", { above: 0, below: 100 }),
    after: () => percentAt(record.after, "after", { above: 0, below: 100 }),
    days: () => timeAt(record.time),
    potential: () => potentialAt(record.potential),
  });
  if (after < before) fail("conflict", "after", record.after, "no less than before");
  const [r1, r2] = [radiusOfCover(grid, before / 100), radiusOfCover(grid, after / 100)];
  return moved(r1, r2, days, potential, isMetric(grid.unit));
};

/**
 * The rate of spread that one patch of its own tells of: `U = (sqrt(A2 / pi) - sqrt(A1 / pi)) / (t GP)`.
 *
 * @param input.before - area of the patch at the first look, more than zero
 * @param input.after - its area at the second, not less
 * @param input.time - from the one to the other, more than zero
 * @param input.potential - mean growth potential over that time; 100 % where it is left out
 * @returns in inches a week, or mm a week for an area in metric units
 * @throws RatewrightError `missing`, `range`, `conflict`, `unit/mismatch`, `type`; all that are found
 * Source: plane geometry.
 *
 * @example
 * ```ts
 * import { quantity, spreadRateFromPatch } from "ratewright";
 * const rate = spreadRateFromPatch({
 *   before: quantity(64, "cm2"), after: quantity(2500, "cm2"), time: quantity(91, "d"),
 * });
 * Number(rate.in("mm/d").toFixed(2)); // => 2.6
 * ```
 */
export const spreadRateFromPatch = (input: {
  readonly before: Area;
  readonly after: Area;
  readonly time: Quantity<"time", "none">;
  readonly potential?: Share;
}): Speed => {
  const record = expectFields(input, ["before", "after", "time", "potential"]);
  const { before, after, days, potential } = allOf({
    before: () => areaAt(record.before, "before"),
    after: () => areaAt(record.after, "after"),
    days: () => timeAt(record.time),
    potential: () => potentialAt(record.potential),
  });
  const radius = (area: Area): number => 1000 * Math.sqrt(area.in("m2") / Math.PI);
  const [r1, r2] = [radius(before), radius(after)];
  if (r2 < r1 * (1 - 1e-12)) fail("conflict", "after", record.after, "no less than before");
  return moved(r1, Math.max(r1, r2), days, potential, isMetric(before.unit));
};

/** What a trial saw of single plugs in the field, and the rate of spread that follows from it. */
export interface ObservedSpread {
  readonly species: string;
  /** Cover of one plug at the end: the slowest variety, the mean, the fastest. */
  readonly cover: { readonly low: Area; readonly mean: Area; readonly high: Area };
  readonly plug: Area;
  readonly time: Quantity<"time", "none">;
  /** How fast the stolons grew, of all varieties of the trial. */
  readonly stolons: { readonly low: Speed; readonly high: Speed };
  readonly source: Citation;
}

const purdue: Citation = /* @__PURE__ */ frozen({
  title: "Differences in establishment rate among zoysiagrass cultivars",
  publisher: "ASA-CSSA-SSSA International Annual Meetings, abstract",
  year: 2005,
  url: "https://crops.confex.com/crops/2005am/techprogram/P4371.HTM",
});
const observed = (species: string, low: number, mean: number, high: number): ObservedSpread => ({
  species,
  cover: { low: quantity(low, "m2"), mean: quantity(mean, "m2"), high: quantity(high, "m2") },
  plug: quantity(64, "cm2"),
  time: quantity(91, "d"),
  stolons: { low: quantity(1.7, "mm/d"), high: quantity(15.5, "mm/d") },
  source: purdue,
});

/**
 * Single plugs of zoysiagrass in an Indiana field, from June on: 30 varieties of *Zoysia japonica* and 9 of
 * *Zoysia matrella*. {@link spreadRateFromPatch} makes a rate of each: 1.6 to 3.8 mm and 0.7 to 2.5 mm a
 * day, a third or so of what the stolons grew. The weather of those days is in it and was not printed, so at
 * a growth potential of 100 % the rates are too low rather than too high.
 */
export const observedSpread: readonly ObservedSpread[] = /* @__PURE__ */ frozen([
  /* @__PURE__ */ observed("Zoysia japonica", 0.11, 0.25, 0.49),
  /* @__PURE__ */ observed("Zoysia matrella", 0.04, 0.14, 0.23),
]);
