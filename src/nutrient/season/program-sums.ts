import { numberIn } from "../../quantity/index.js";
import type { NitrogenRelease } from "../release/nitrogen-release.js";
import { nitrogenRate } from "./nitrogen-caps.js";

/** The release of one application, and the day on which it begins. */
export interface Run {
  readonly start: number;
  readonly release: NitrogenRelease;
}

/** An amount of nitrogen in another unit. */
export const inUnit = (value: number, from: string, to: string): number =>
  numberIn(nitrogenRate(value, from), to);

/** What is out by the end of each day, all applications together. */
export const added = (
  releases: readonly Run[],
  bound: "low" | "mid" | "high",
  days: number,
  unit: string,
): Float64Array => {
  const total = new Float64Array(days);
  for (const { start, release } of releases) {
    const factor = inUnit(1, release.unit, unit);
    const list = release.cumulative[bound];
    for (const [i, out] of list.entries()) total[start + i] = (total[start + i] as number) + factor * out;
  }
  return total;
};

/** The largest sum of seven days in a row, and the first of them that brings something. */
export const peak = (cumulative: Float64Array): { load: number; day: number } => {
  let best = { load: 0, day: 0 };
  const at = (day: number): number => (day < 0 ? 0 : (cumulative[day] as number));
  for (const last of cumulative.keys()) {
    const load = at(last) - at(last - 7);
    if (load > best.load * (1 + 1e-12)) best = { load, day: Math.max(0, last - 6) };
  }
  // Seven days from the first day with release hold as much as seven that begin before it.
  let { day } = best;
  while (best.load > 0 && at(day) === at(day - 1)) day++;
  return { load: best.load, day };
};
