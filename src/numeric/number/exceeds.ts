import { expectNumber } from "../../quantity/index.js";

/** By how much, as a share of the limit, a value may lie above it and still count as equal. */
const guard = 1e-9;

/**
 * Whether a value lies above a limit. Equal is within, and a value above the limit by no more than
 * 1e-9 of it counts as equal, so that rounding noise exceeds nothing.
 *
 * @throws RatewrightError `not-finite`
 *
 * @example
 * ```ts
 * import { exceeds } from "ratewright";
 * exceeds(0.1 + 0.2, 0.3); // => false
 * exceeds(0.301, 0.3); // => true
 * ```
 */
export const exceeds = (value: number, limit: number): boolean => {
  const bound = expectNumber(limit, "limit");
  return expectNumber(value, "value") - bound > guard * Math.abs(bound);
};
