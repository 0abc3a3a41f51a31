import {
  allOf,
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  type Quantity,
} from "../../quantity/index.js";
import { expectShortText } from "../label/expect-source.js";
import { eachOf, listOf } from "../label/under-path.js";
import { longestRelease, type NitrogenRelease } from "./nitrogen-release.js";

/** What came out in one week, and what is out by its end. */
export interface ReleaseWeek {
  /** From 1. */
  readonly week: number;
  readonly released: Quantity<"mass/area", "N">;
  readonly outByThen: {
    readonly low: Quantity<"mass/area", "N">;
    readonly mid: Quantity<"mass/area", "N">;
    readonly high: Quantity<"mass/area", "N">;
  };
}

/**
 * The release week by week: what comes out in each by the middle estimate, and what is out by its end
 * with low and high. The last week may be shorter than seven days.
 *
 * @param release - as {@link releasedNitrogen} gives it, or what JSON left of it
 * @throws RatewrightError `type`; `conflict` where the ends have other numbers of days; `not-finite`, `unit/unknown`
 *
 * Source: as {@link releasedNitrogen}.
 *
 * @example
 * ```ts
 * import { quantity, quickRelease, releaseByWeek, releasedNitrogen } from "ratewright";
 * const release = releasedNitrogen({
 *   applied: "2026-05-01", days: 14, placement: "surface or thatch",
 *   temperature: { mean: quantity(68, "°F") },
 *   portions: [{ name: "urea", nitrogen: quantity(0.7, "lb/1000 ft2", "N"), model: quickRelease }],
 * });
 * releaseByWeek(release).map(({ released }) => released.in("lb/1000 ft2")); // => [0.7, 0]
 * ```
 */
export const releaseByWeek = (release: NitrogenRelease): ReleaseWeek[] => {
  if (Object(release).type !== "nitrogen-release") {
    return fail("type", "release", release, "a nitrogen release");
  }
  const { low, mid, high } = expectRecord(release.cumulative, "release.cumulative", "{ low, mid, high }");
  const list = (given: unknown, end: string): readonly number[] => {
    const path = `release.cumulative.${end}`;
    const days = listOf(given, path, "day", longestRelease);
    return eachOf(days, path, (value) => expectNumber(value, ""));
  };
  const { unit, ends } = allOf({
    unit: () => expectShortText(release.unit, "release.unit", "a unit, such as lb/1000 ft2"),
    ends: () =>
      allOf({ low: () => list(low, "low"), mid: () => list(mid, "mid"), high: () => list(high, "high") }),
  });
  const count = ends.mid.length;
  for (const end of ["low", "high"] as const) {
    if (ends[end].length === count) continue;
    const text = `as many days as the middle, which is ${count}`;
    fail("conflict", `release.cumulative.${end}`, ends[end].length, text);
  }
  const rate = (value: number): Quantity<"mass/area", "N"> =>
    expectQuantity({ value, unit, of: "N" }, { dimension: "mass/area", of: "N" }, "release.unit");
  return Array.from({ length: Math.ceil(count / 7) }, (_, w) => {
    const last = Math.min(7 * w + 6, count - 1);
    const at = (list: readonly number[]): number => list[last] as number;
    const before = w === 0 ? 0 : (ends.mid[7 * w - 1] as number);
    return {
      week: w + 1,
      released: rate(at(ends.mid) - before),
      outByThen: {
        low: rate(at(ends.low)),
        mid: rate(at(ends.mid)),
        high: rate(at(ends.high)),
      },
    };
  });
};
