import type { CivilDate } from "../../calendar/index.js";
import { roundTo } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectList,
  type Finding,
  plainCopy,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { percentAt, type Share } from "../read.js";
import { after, dateAt, neverChecked, rootingDays, rootingUnknown, spanOf } from "./cover-span.js";
import { type CoverCurve, type CoverStart, curveOf } from "./cover-start.js";
import {
  type GrowthBasis,
  type GrowthDay,
  type GrowthOfDays,
  growthAt,
  growthSource,
} from "./growth-days.js";
import { type ReadSpread, type RestsOn, type SpreadFactors, type SpreadRate, spreadAt } from "./spread.js";

/** Cover at the end of one day. */
export interface CoverDay {
  readonly date: CivilDate;
  readonly low: Share;
  readonly mid: Share;
  readonly high: Share;
  /** Growth potential of the day. */
  readonly potential: Share;
  readonly basis: GrowthBasis;
}

/** When a cover is reached, by the high, the mid and the low rate; `null` where not within the days. */
export interface CoverReached {
  readonly cover: Share;
  readonly earliest: CivilDate | null;
  readonly mid: CivilDate | null;
  readonly latest: CivilDate | null;
}

/** A grow-in from day to day. */
export interface CoverOverTime {
  readonly type: "cover-over-time";
  readonly version: 1;
  /** Cover on the day of planting, or on the day that the map shows. */
  readonly start: Share;
  readonly days: readonly CoverDay[];
  readonly reached: readonly CoverReached[];
  readonly findings: readonly Finding[];
  /** Who states the rate, the factors and the temperatures. */
  readonly restsOn: readonly RestsOn[];
  readonly notChecked: readonly string[];
}

/** What a grow-in depends on, but for where it starts and when. */
export interface GrowInConditions {
  readonly spread: SpreadRate;
  readonly factors?: SpreadFactors;
  readonly growth: GrowthOfDays;
  /** Whole days from planting until plants spread. */
  readonly rooting?: Quantity<"time", "none">;
}

const fields = ["start", "from", "to", "spread", "factors", "growth", "rooting", "targets"] as const;
const percent = (share: number): Share => quantity(100 * share, "%");

/**
 * Cover over time: how much of the ground the grass covers on each day of a grow-in, when it covers 50, 90
 * and 95 %, and between what that lies.
 *
 * The edge of every patch moves outwards by `U GP f` a day: `U` the stated rate of spread (low, mid, high),
 * `GP` the growth potential of the day by its mean air temperature, `f` the product of the stated factors.
 * The cover is the union of the patches: discs in an even pattern in closed form through the stage where
 * they overlap (see `coverOfPatches`), `1 - exp(-n pi r^2)` for plants at random places, the cells within
 * reach on a map. A square plug counts as a disc of its area. The day of planting itself adds nothing.
 *
 * It is an estimate that lives off its rate: a rate measured on the same ground, as `spreadRateFromCover`
 * gives it, is worth more than any table. `notChecked` says what it does not know.
 *
 * @param input.start - plugs, a present cover, or a map of patches; see {@link CoverStart}
 * @param input.from - day of planting, or of the present cover
 * @param input.to - last day, up to 1100 days later
 * @param input.spread - how fast an edge moves outwards at its best, with its range and source
 * @param input.factors - nitrogen, water, shade, regulator: shares of that rate, each with its source
 * @param input.growth - temperatures and season, or a stated growth potential
 * @param input.rooting - whole days before plants spread; none where it is left out, which `notChecked` says
 * @param input.targets - covers to find the day of, above 0 to 100 %; 50, 90 and 95 % where left out
 * @throws RatewrightError `missing`, `range`, `conflict`, `date`, `unit/mismatch`, `type`; all that are found
 * Source: plane geometry; growth potential as in `growthPotential`. No published worked example of cover by
 * date from a rate of spread was found: the geometry is checked, the sum over days is arithmetic.
 *
 * @example
 * ```ts
 * import { coverOverTime, quantity } from "ratewright";
 * const growIn = coverOverTime({
 *   start: { plug: { diameter: quantity(2, "in") }, pattern: "square", spacing: quantity(12, "in") },
 *   from: "2026-06-01", to: "2026-08-31",
 *   spread: {
 *     low: quantity(0.4, "in/week"), mid: quantity(0.6, "in/week"), high: quantity(0.8, "in/week"),
 *     source: "the park's own trial strip, 2025",
 *   },
 *   growth: { potential: quantity(100, "%"), source: "a warm summer, assumed" },
 * });
 * growIn.reached.map(({ cover, mid }) => [cover.in("%"), mid]);
 * // => [[50, "2026-07-16"], [90, "2026-08-07"], [95, "2026-08-13"]]
 * ```
 */
export const coverOverTime = (
  input: GrowInConditions & {
    readonly start: CoverStart;
    readonly from: CivilDate;
    readonly to: CivilDate;
    readonly targets?: readonly Share[];
  },
): CoverOverTime => {
  const record = plainCopy(expectFields(input, fields));
  const { curve, when, spread, growth, rooting, targets } = allOf({
    curve: () => curveOf(record.start, "start"),
    when: () => {
      const { from, to } = allOf({
        from: () => dateAt(record.from, "from"),
        to: () => dateAt(record.to, "to"),
      });
      return { from, count: spanOf(from, to, "to") };
    },
    spread: () => spreadAt(record.spread, record.factors),
    growth: () => growthAt(record.growth),
    rooting: () => rootingDays(record.rooting),
    targets: () => targetsOf(record.targets),
  });
  const days = growth(after(when.from, 1), when.count);
  const ways = waysOf(days, spread, rooting);
  const reached = targets.map((target) => reachedBy(target, curve, days, ways, when.from));
  return {
    type: "cover-over-time",
    version: 1,
    start: percent(curve.at(0)),
    days: days.map((day, i) => ({
      date: day.date,
      low: percent(curve.at(ways.low[i] as number)),
      mid: percent(curve.at(ways.mid[i] as number)),
      high: percent(curve.at(ways.high[i] as number)),
      potential: percent(day.potential),
      basis: day.basis,
    })),
    reached,
    findings: [...spread.findings, ...findingsOf(reached, days)],
    restsOn: [...spread.restsOn, { what: "growth", source: growthSource(record.growth as GrowthOfDays) }],
    notChecked: [
      ...spread.notChecked,
      ...(record.rooting === undefined ? [rootingUnknown] : []),
      ...(days.some(({ basis }) => basis === "normal")
        ? ["a warmer or cooler year than normal: the range is that of the rate of spread alone"]
        : []),
      ...neverChecked,
    ],
  };
};

const targetsOf = (input: unknown): readonly number[] => {
  if (input === undefined) return [50, 90, 95];
  const list = expectList(input, "targets", "cover", 50);
  const read = allOf(
    Object.fromEntries(
      list.map((one, i) => [`${i}`, () => percentAt(one, `targets[${i}]`, { above: 0, max: 100, share: 1 })]),
    ),
  );
  return list.map((_, i) => read[`${i}`] as number);
};

/** How far the edges have moved at the end of each day, in mm. */
interface Ways {
  readonly low: Float64Array;
  readonly mid: Float64Array;
  readonly high: Float64Array;
}

const waysOf = (days: readonly GrowthDay[], { perDay }: ReadSpread, rooting: number): Ways => {
  const summed = (rate: number): Float64Array => {
    const way = new Float64Array(days.length);
    let sum = 0;
    days.forEach(({ potential }, i) => {
      if (i >= rooting) sum += potential;
      way[i] = rate * sum;
    });
    return way;
  };
  return { low: summed(perDay.low), mid: summed(perDay.mid), high: summed(perDay.high) };
};

const reachedBy = (
  target: number,
  curve: CoverCurve,
  days: readonly GrowthDay[],
  ways: Ways,
  from: CivilDate,
): CoverReached => {
  const needed = curve.wayTo(target / 100);
  const first = (way: Float64Array): CivilDate | null => {
    if (needed === 0) return from;
    // The last digits of a sum of days do not put a day on.
    const at = way.findIndex((moved) => moved >= needed * (1 - 1e-12));
    return at < 0 ? null : (days[at] as GrowthDay).date;
  };
  return {
    cover: quantity(target, "%"),
    earliest: first(ways.high),
    mid: first(ways.mid),
    latest: first(ways.low),
  };
};

const findingsOf = (reached: readonly CoverReached[], days: readonly GrowthDay[]): Finding[] => {
  const findings: Finding[] = [];
  const late = reached.filter(({ latest }) => latest === null);
  if (late.length > 0) {
    const covers = late.map(({ cover }) => `${roundTo(cover.in("%"), 0.01)} %`);
    findings.push({
      code: "cover/not-reached",
      severity: late.some(({ mid }) => mid === null) ? "caution" : "note",
      params: { covers, last: (days[days.length - 1] as GrowthDay).date },
      text: `Not reached by ${(days[days.length - 1] as GrowthDay).date} at the low rate: ${covers.join(", ")}.`,
    });
  }
  const still = days.filter(({ potential }) => potential <= 0.1).length;
  if (still > 0) {
    findings.push({
      code: "cover/growth-standing",
      severity: "note",
      params: { days: still, of: days.length },
      text: `Growth potential is 10 % or less on ${still} of ${days.length} days: too cold or too hot to spread.`,
      source: "Turf growth potentials: a tool with many uses, turfgrass information center",
    });
  }
  return findings;
};
