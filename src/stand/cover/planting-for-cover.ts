import type { CivilDate } from "../../calendar/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectOneOf,
  type Finding,
  fail,
  plainCopy,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Plug, plugAt } from "../planting/plugs.js";
import { isMetric, type Length, percentAt, type Share } from "../read.js";
import type { GrowInConditions } from "./cover-over-time.js";
import { after, dateAt, neverChecked, rootingDays, rootingUnknown, spanOf } from "./cover-span.js";
import { type CoverStart, curveOf } from "./cover-start.js";
import { type GrowthOfDays, growthAt, growthSource } from "./growth-days.js";
import { radiusOfCover } from "./lattice-cover.js";
import { type RestsOn, spreadAt } from "./spread.js";

/** A spacing, and the plants per area that it takes. */
export interface SpacingChoice {
  readonly spacing: Length;
  readonly plantsPerArea: Quantity<"count/area", "none">;
}

/** The widest spacing that reaches a cover by a date, by the low, the mid and the high rate of spread. */
export interface SpacingForCover {
  readonly type: "spacing-for-cover";
  readonly version: 1;
  readonly pattern: "square" | "triangular";
  /** By the low rate: plant this close to be on the sure side of the range. */
  readonly low: SpacingChoice;
  readonly mid: SpacingChoice;
  readonly high: SpacingChoice;
  readonly findings: readonly Finding[];
  /** Who states the rate, the factors and the temperatures. */
  readonly restsOn: readonly RestsOn[];
  readonly notChecked: readonly string[];
}

const conditions = ["spread", "factors", "growth", "rooting"] as const;

/**
 * The widest spacing of plugs that reaches a cover by a date: {@link coverOverTime} turned round. With `r`
 * the radius that a plug grows to by then, `s = r / x`, where `x` is the radius for that cover at a spacing
 * of 1.
 *
 * @param input.plug - side of a square plug, or diameter of a round one
 * @param input.pattern - `"square"` or `"triangular"`
 * @param input.from - day of planting
 * @param input.by - the day at whose end the cover is to be there, up to 1100 days later
 * @param input.cover - above 0 to 100 %
 * @returns spacing in inches, or in cm for a plug in metric units
 * @throws RatewrightError `missing`, `range`, `conflict`, `date`, `unit/mismatch`, `type`; all that are found
 * Source: as {@link coverOverTime}.
 *
 * @example
 * ```ts
 * import { quantity, spacingForCover } from "ratewright";
 * const wide = spacingForCover({
 *   plug: { diameter: quantity(2, "in") }, pattern: "square", cover: quantity(100, "%"),
 *   from: "2026-06-01", by: "2026-08-10",
 *   spread: {
 *     low: quantity(0.4, "in/week"), mid: quantity(0.6, "in/week"), high: quantity(0.8, "in/week"),
 *     source: "the park's own trial strip, 2025",
 *   },
 *   growth: { potential: quantity(100, "%"), source: "a warm summer, assumed" },
 * });
 * Number(wide.mid.spacing.in("in").toFixed(2)); // => 9.9
 * ```
 */
export const spacingForCover = (
  input: GrowInConditions & {
    readonly plug: Plug;
    readonly pattern: "square" | "triangular";
    readonly from: CivilDate;
    readonly by: CivilDate;
    readonly cover: Share;
  },
): SpacingForCover => {
  const record = plainCopy(expectFields(input, ["plug", "pattern", "from", "by", "cover", ...conditions]));
  const { plug, pattern, when, cover, spread, growth, rooting } = allOf({
    plug: () => plugAt(record.plug, "plug"),
    pattern: () => expectOneOf(record.pattern, ["square", "triangular"], "pattern"),
    when: () => {
      const { from, by } = allOf({
        from: () => dateAt(record.from, "from"),
        by: () => dateAt(record.by, "by"),
      });
      return { from, count: spanOf(from, by, "by") };
    },
    cover: () => percentAt(record.cover, "cover", { above: 0, max: 100, share: 1 }),
    spread: () => spreadAt(record.spread, record.factors),
    growth: () => growthAt(record.growth),
    rooting: () => rootingDays(record.rooting),
  });
  const days = growth(after(when.from, 1), when.count);
  const sum = days.slice(rooting).reduce((all, { potential }) => all + potential, 0);
  const rows = pattern === "triangular" ? Math.sqrt(3) / 2 : 1;
  const reach = radiusOfCover({ pattern, spacing: 1, rows, unit: "mm" }, cover / 100);
  const start = Math.sqrt(plug.area / Math.PI);
  const metric = isMetric(plug.unit);
  const choice = (perDay: number): SpacingChoice => {
    const mm = (start + perDay * sum) / reach;
    const perMm2 = 1 / (mm * mm * rows);
    return metric
      ? { spacing: quantity(mm / 10, "cm"), plantsPerArea: quantity(perMm2 * 1e6, "count/m2") }
      : {
          spacing: quantity(mm / 25.4, "in"),
          plantsPerArea: quantity(perMm2 * 304.8 * 304.8, "count/ft2"),
        };
  };
  return {
    type: "spacing-for-cover",
    version: 1,
    pattern,
    low: choice(spread.perDay.low),
    mid: choice(spread.perDay.mid),
    high: choice(spread.perDay.high),
    findings: spread.findings,
    restsOn: [...spread.restsOn, { what: "growth", source: growthSource(record.growth as GrowthOfDays) }],
    notChecked: notChecked(spread.notChecked, record.rooting),
  };
};

const notChecked = (more: readonly string[], rooting: unknown): readonly string[] => [
  ...more,
  ...(rooting === undefined ? [rootingUnknown] : []),
  ...neverChecked,
];

/** The latest day of planting that reaches a cover by a date. */
export interface PlantingDateForCover {
  readonly type: "planting-date-for-cover";
  readonly version: 1;
  /** By the low rate: plant by then to be on the sure side of the range; `null` where even `earliest` is too late. */
  readonly low: CivilDate | null;
  readonly mid: CivilDate | null;
  readonly high: CivilDate | null;
  readonly findings: readonly Finding[];
  /** Who states the rate, the factors and the temperatures. */
  readonly restsOn: readonly RestsOn[];
  readonly notChecked: readonly string[];
}

/**
 * The latest day of planting from which a cover is reached by a date: {@link coverOverTime} turned round.
 * The days are summed backwards from `by` until the edges have moved far enough.
 *
 * @param input.start - plugs or plants, as {@link coverOverTime} takes them
 * @param input.earliest - the first day on which planting is possible, up to 1100 days before `by`
 * @param input.by - the day at whose end the cover is to be there
 * @param input.cover - above 0 to 100 %
 * @throws RatewrightError `missing`, `range`, `conflict`, `date`, `unit/mismatch`, `type`; all that are found
 * Source: as {@link coverOverTime}.
 *
 * @example
 * ```ts
 * import { plantingDateForCover, quantity } from "ratewright";
 * const latest = plantingDateForCover({
 *   start: { plug: { diameter: quantity(2, "in") }, pattern: "square", spacing: quantity(12, "in") },
 *   cover: quantity(90, "%"), earliest: "2026-05-01", by: "2026-09-15",
 *   spread: {
 *     low: quantity(0.4, "in/week"), mid: quantity(0.6, "in/week"), high: quantity(0.8, "in/week"),
 *     source: "the park's own trial strip, 2025",
 *   },
 *   growth: { potential: quantity(100, "%"), source: "a warm summer, assumed" },
 * });
 * [latest.low, latest.mid, latest.high]; // => ["2026-06-07", "2026-07-10", "2026-07-27"]
 * ```
 */
export const plantingDateForCover = (
  input: GrowInConditions & {
    readonly start: CoverStart;
    readonly earliest: CivilDate;
    readonly by: CivilDate;
    readonly cover: Share;
  },
): PlantingDateForCover => {
  const record = plainCopy(expectFields(input, ["start", "earliest", "by", "cover", ...conditions]));
  const { curve, when, cover, spread, growth, rooting } = allOf({
    curve: () => curveOf(record.start, "start"),
    when: () => {
      const { earliest, by } = allOf({
        earliest: () => dateAt(record.earliest, "earliest"),
        by: () => dateAt(record.by, "by"),
      });
      return { earliest, count: spanOf(earliest, by, "by") };
    },
    cover: () => percentAt(record.cover, "cover", { above: 0, max: 100, share: 1 }),
    spread: () => spreadAt(record.spread, record.factors),
    growth: () => growthAt(record.growth),
    rooting: () => rootingDays(record.rooting),
  });
  const days = growth(after(when.earliest, 1), when.count);
  const needed = curve.wayTo(cover / 100);
  if (needed === Infinity) {
    fail(
      "infeasible",
      "cover",
      described(`${cover} %`),
      "less than 100 %: plants at random places never reach it",
    );
  }
  const latest = (perDay: number): CivilDate | null => {
    // What is covered on the day of planting has no need to root and spread.
    if (needed === 0) return after(when.earliest, days.length);
    let sum = 0;
    let at = days.length;
    while (at > 0 && perDay * sum < needed * (1 - 1e-12)) sum += days[--at]?.potential ?? 0;
    // Day `at` is the first that has to count; the planting lies a day and the rooting before it.
    return perDay * sum >= needed * (1 - 1e-12) && at - rooting >= 0
      ? after(when.earliest, at - rooting)
      : null;
  };
  return {
    type: "planting-date-for-cover",
    version: 1,
    low: latest(spread.perDay.low),
    mid: latest(spread.perDay.mid),
    high: latest(spread.perDay.high),
    findings: spread.findings,
    restsOn: [...spread.restsOn, { what: "growth", source: growthSource(record.growth as GrowthOfDays) }],
    notChecked: notChecked(spread.notChecked, record.rooting),
  };
};
