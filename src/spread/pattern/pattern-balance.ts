import { type Quantity, quantity } from "../../quantity/index.js";
import type { Length } from "../inputs.js";
import { patternOf, profileOf, sumLeftOf } from "./profile.js";
import type { SpreadPattern } from "./spread-pattern.js";

/** How a pattern lies about the line of travel. */
export interface PatternBalance {
  readonly type: "pattern-balance";
  readonly version: 1;
  /** What falls left and right of the line of travel, as shares of the whole. */
  readonly left: Quantity<"1", "none">;
  readonly right: Quantity<"1", "none">;
  /** Where the middle of the mass lies from the line of travel; right is positive. */
  readonly center: Length;
}

/**
 * The skew of a pattern: how much falls on either side of the line of travel, and where the middle of the
 * mass lies.
 *
 * `left = 100 sum(p left of 0) / sum(p)`, `center = sum(x p) / sum(p)`, as areas below the straight lines between
 * the pans; a pan on the line counts half to each side.
 *
 * - `p` catch at the offset `x`, in the unit of the offsets
 *
 * No limit is compared: no source that was read prints one. Skew raises the CV over the whole range of swaths,
 * most where passes go back and forth.
 *
 * @throws RatewrightError `type`, `not-finite`, `range`, `unit/mismatch`, `conflict`
 *
 * Source: moments of a distribution; the effect of skew: "Spread Pattern Analysis Tool (SPAT): I", abstract.
 *
 * @example
 * ```ts
 * import { patternBalance, quantity, spreadPattern } from "ratewright";
 * const pattern = spreadPattern({
 *   catches: [0, 3, 6, 2, 0], unit: "g", pans: { spacing: quantity(1, "m"), left: 2 },
 * });
 * const balance = patternBalance(pattern);
 * Number(balance.center.in("m").toFixed(4)); // => -0.0909
 * ```
 */
export const patternBalance = (pattern: SpreadPattern): PatternBalance => {
  const row = patternOf(pattern);
  const profile = profileOf(row);
  const { x, y, total } = profile;
  let moment = 0;
  for (let i = 1; i < x.length; i++) {
    const [x0, x1, y0, y1] = [x[i - 1], x[i], y[i - 1], y[i]] as [number, number, number, number];
    moment += ((x1 - x0) * (x0 * (2 * y0 + y1) + x1 * (y0 + 2 * y1))) / 6;
  }
  const left = sumLeftOf(profile, 0);
  const center = moment / total;
  // What floating point leaves of a pattern that is balanced is no place.
  const reach = Math.max(...[x[0], x[x.length - 1]].map((end) => Math.abs(end as number)));
  return {
    type: "pattern-balance",
    version: 1,
    left: quantity((100 * left) / total, "%"),
    right: quantity((100 * (total - left)) / total, "%"),
    center: quantity(Math.abs(center) <= 1e-12 * reach ? 0 : center, row.offsetUnit as "ft"),
  };
};
