import {
  expectFields,
  expectNumber,
  type Finding,
  fail,
  outOfRange,
  quantity,
} from "../../quantity/index.js";
import type { Length } from "../inputs.js";
import { patternOf } from "./profile.js";
import type { SpreadPattern } from "./spread-pattern.js";

/** A published rule for the effective swath, by the level at which it cuts the pattern: see {@link effectiveSwath}. */
export type SwathRule = "half of peak" | "half of center mean" | "half of center pan";

/** An effective swath by one rule. */
export interface EffectiveSwath {
  readonly type: "effective-swath";
  readonly version: 1;
  readonly rule: SwathRule;
  readonly swath: Length;
  /** From the line of travel to where the pattern comes down to the level; below zero where that lies past the line. */
  readonly left: Length;
  readonly right: Length;
  /** The catch at which the pattern is cut, in the unit of the catches. */
  readonly level: number;
  readonly unit: string;
  readonly findings: readonly Finding[];
}

/**
 * The effective swath by one of the published half rules.
 *
 * `w = l + r`: the distances left and right of the line of travel at which the pattern comes down to a level,
 * on straight lines between the pans. The level is half of
 * - `"half of peak"`: the largest catch (Alberta: left and right taken apart)
 * - `"half of center mean"`: the mean of the pans nearest to the line of travel, `centerPans` of them
 *   (Ohio: the first three to four; `w = 2 l` for a symmetric pattern)
 * - `"half of center pan"`: the pan on the line of travel (trade press after Penn State)
 *
 * The rules disagree: a triangle of height 6 over 12 ft has 6 ft by its peak and 6.67 ft by its center mean.
 * They hold for a symmetric pattern with one hump. For M- and W-shaped or skewed ones use `swathSearch`.
 *
 * Where a pattern crosses the level more than once on a side, the outermost crossing counts and a finding
 * says so.
 *
 * @param options.centerPans - for `"half of center mean"`; where left out 3 with a pan on the line of travel,
 * 4 with the line half-way between two
 * @throws RatewrightError `infeasible` where the pattern does not come down to the level inside of the row, where
 *   there is no pan on the line of travel, and for a center that caught nothing; `conflict` for a number of center
 *   pans that would take one of two equally near ones; `type`, `missing`, `range`, `unit/mismatch`
 *
 * Source: Ohio State University Extension, bulletin 817, figure 20; Alberta Agriculture guide, p. 195; Penn
 * State as quoted in the trade press.
 *
 * @example
 * ```ts
 * import { effectiveSwath, quantity, spreadPattern } from "ratewright";
 * const pattern = spreadPattern({
 *   catches: [0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1, 0], unit: "g",
 *   pans: { spacing: quantity(1, "ft"), left: 6 },
 * });
 * effectiveSwath(pattern, { rule: "half of peak" }).swath.in("ft"); // => 6
 * const mean = effectiveSwath(pattern, { rule: "half of center mean", centerPans: 3 });
 * Number(mean.swath.in("ft").toFixed(3)); // => 6.667
 * ```
 */
export const effectiveSwath = (
  pattern: SpreadPattern,
  options: { readonly rule: SwathRule; readonly centerPans?: number },
): EffectiveSwath => {
  const row = patternOf(pattern);
  const { rule, centerPans } = expectFields(options, ["rule", "centerPans"], "options", "a record with rule");
  if (rule === undefined) fail("missing", "rule", rule, rules.join(", "));
  if (!rules.includes(rule as SwathRule)) fail("type", "rule", rule, rules.join(", "));
  if (centerPans !== undefined && rule !== "half of center mean") {
    fail("conflict", "centerPans", centerPans, "the rule half of center mean");
  }
  const level = levelOf(row, rule as SwathRule, centerPans) / 2;
  if (!(level > 0)) fail("infeasible", "pattern", level, "a center that caught something");
  const crossings = crossingsOf(row, level);
  const { offsets, catches } = row;
  const last = offsets.length - 1;
  const at = (side: "left" | "right"): number => {
    const end = side === "left" ? 0 : last;
    if ((catches[end] as number) > level) {
      fail(
        "infeasible",
        `pattern.catches[${end}]`,
        catches[end],
        `a row long enough for the pattern to come down to ${level} on the ${side}`,
      );
    }
    return (side === "left" ? crossings[0] : crossings[crossings.length - 1]) as number;
  };
  const [left, right] = [at("left"), at("right")];
  const length = (value: number): Length => quantity(value, row.offsetUnit as "ft");
  return {
    type: "effective-swath",
    version: 1,
    rule: rule as SwathRule,
    swath: length(right - left),
    left: length(-left),
    right: length(right),
    level,
    unit: row.unit,
    findings: [...row.findings, ...(crossings.length > 2 ? [several(crossings, row.offsetUnit)] : [])],
  };
};

const rules: readonly SwathRule[] = ["half of peak", "half of center mean", "half of center pan"];

/** The catch of which a rule takes the half. */
const levelOf = (row: SpreadPattern, rule: SwathRule, centerPans: unknown): number => {
  const { catches, offsets } = row;
  if (rule === "half of peak") return catches.reduce((a, b) => Math.max(a, b));
  const scale = Math.max(-(offsets[0] as number), offsets[offsets.length - 1] as number);
  const near = offsets.map((x, i) => ({ x: Math.abs(x), i })).sort((a, b) => a.x - b.x);
  const [first] = near as [{ x: number; i: number }];
  const onLine = first.x <= 1e-9 * scale;
  if (rule === "half of center pan") {
    return onLine
      ? (catches[first.i] as number)
      : fail("infeasible", "rule", rule, "a pan on the line of travel, or the rule half of center mean");
  }
  const count =
    centerPans === undefined
      ? Math.min(onLine ? 3 : 4, catches.length)
      : expectNumber(centerPans, "centerPans", { min: 1, max: catches.length });
  if (!Number.isInteger(count)) outOfRange("centerPans", count, { step: 1 });
  const [inside, outside] = [near[count - 1]?.x as number, near[count]?.x];
  if (outside !== undefined && outside - inside <= 1e-9 * scale) {
    fail("conflict", "centerPans", count, "a number that takes both of two pans that are equally near");
  }
  return near.slice(0, count).reduce((sum, { i }) => sum + (catches[i] as number), 0) / count;
};

/** Where the pattern passes through a level, from left to right; a pan just at the level counts once, also at an end. */
const crossingsOf = ({ offsets, catches }: SpreadPattern, level: number): readonly number[] => {
  const last = offsets.length - 1;
  const reached = (i: number): readonly number[] =>
    (catches[i] as number) >= level ? [offsets[i] as number] : [];
  const found = [...reached(0)];
  for (let i = 1; i <= last; i++) {
    const [x0, x1, y0, y1] = [offsets[i - 1], offsets[i], catches[i - 1], catches[i]] as [
      number,
      number,
      number,
      number,
    ];
    if (y0 >= level !== y1 >= level) found.push(x0 + ((x1 - x0) * (level - y0)) / (y1 - y0));
  }
  return [...found, ...reached(last)];
};

const several = (crossings: readonly number[], unit: string): Finding => ({
  code: "pattern/several-crossings",
  severity: "caution",
  params: { crossings: crossings.length, unit },
  text: `The pattern crosses the level ${crossings.length} times, not twice: the outermost crossings count. The half rules are made for one hump; look at the CV over all swaths instead.`,
  source: "common practice, no source",
});
