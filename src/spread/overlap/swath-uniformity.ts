import type { Divisor } from "../../numeric/index.js";
import { allOf, expectFields, type Finding, fail, type Quantity, quantity } from "../../quantity/index.js";
import type { Length } from "../inputs.js";
import type { SpreadPattern } from "../pattern/spread-pattern.js";
import { overlapDeposits, type Positions } from "./overlap-deposits.js";
import { cvPercentOf, type Driving, expectDivisor } from "./overlap-kernel.js";

/** How even the ground is covered at one swath. */
export interface SwathUniformity {
  readonly type: "swath-uniformity";
  readonly version: 1;
  readonly swath: Length;
  readonly driving: Driving;
  readonly cv: Quantity<"1", "none">;
  readonly divisor: Divisor;
  /** How many positions the CV is of. */
  readonly positions: number;
  /** The least and the most that any position gets, as a share of the mean. */
  readonly lowest: Quantity<"1", "none">;
  readonly highest: Quantity<"1", "none">;
  readonly findings: readonly Finding[];
}

/** What decides a CV besides the pattern and the swath; none of it has a default, for sources differ. */
export interface UniformityOptions {
  readonly driving: Driving;
  readonly positions: Positions;
  /** Most sources do not say by what they divide; n-1 for spreaders is known from memory only. */
  readonly divisor: Divisor;
}

/**
 * The coefficient of variation of the deposit after overlap, at one swath.
 *
 * `CV = 100 s / m`, `s = sqrt(sum((D_j - m)^2) / d)`
 *
 * - `D_j` deposit at position `j`, `m` their mean by mass balance: see `overlapDeposits`
 * - `d` the number of positions, or one less: `divisor`
 *
 * With the divisor `n-1` the number of positions matters: a triangle of 6 at a swath of 8 pans has 16.8 % by
 * the 8 positions of one swath and 16.2 % by the 16 of two. With `n` it does not, and a symmetric pattern
 * has the same CV in both ways of driving.
 *
 * Range: as for `overlapDeposits`. The pattern of a test says less than the field: field CVs of 33 and 43 %
 * were measured where perfect driving would have given 25 and 24 % (Lawrence and Yule 2007).
 *
 * @throws RatewrightError as `overlapDeposits`; `missing`, `type` for the divisor; `range` where the divisor
 * `n-1` meets one position
 *
 * Source: CV: common to all spreader tests; the two ways of driving: Fertilizer Australia, test-scheme graphs.
 *
 * @example
 * ```ts
 * import { quantity, spreadPattern, swathUniformity } from "ratewright";
 * const pattern = spreadPattern({
 *   catches: [0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1, 0], unit: "g",
 *   pans: { spacing: quantity(1, "ft"), left: 6 },
 * });
 * const at = swathUniformity(pattern, {
 *   swath: quantity(8, "ft"), driving: "one direction", positions: "pans", divisor: "n",
 * });
 * Number(at.cv.in("%").toFixed(3)); // => 15.713
 * at.positions; // => 8
 * ```
 */
export const swathUniformity = (
  pattern: SpreadPattern,
  options: UniformityOptions & { readonly swath: Length },
): SwathUniformity => {
  const record = expectFields(
    options,
    ["driving", "positions", "divisor", "swath"],
    "options",
    "a record with swath, driving, positions, divisor",
  );
  const { divisor: _, ...placed } = record as UniformityOptions & { readonly swath: Length };
  const { overlap, divisor } = allOf({
    overlap: () => overlapDeposits(pattern, placed),
    divisor: () => expectDivisor(record.divisor),
  });
  const { swath, driving, deposits, mean, findings } = overlap;
  const count = deposits.length;
  if (count < 2 && divisor === "n-1") {
    fail("range", "swath", swath, "two positions or more for the divisor n-1");
  }
  const cv = cvPercentOf(Float64Array.from(deposits), count, mean, divisor);
  const share = (one: number): Quantity<"1", "none"> => quantity((100 * one) / mean, "%");
  return {
    type: "swath-uniformity",
    version: 1,
    swath,
    driving,
    cv: quantity(cv, "%"),
    divisor,
    positions: count,
    lowest: share(deposits.reduce((a, b) => Math.min(a, b))),
    highest: share(deposits.reduce((a, b) => Math.max(a, b))),
    findings,
  };
};
