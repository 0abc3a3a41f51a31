import { expectFormulation } from "../formulation/expect-formulation.js";
import type { Formulation } from "../formulation/formulation.js";
import { type MixingOrderId, stepIn } from "./mixing-order.js";
import { mixingOrders } from "./mixing-orders.js";

/**
 * How firmly the mixing orders order a pair.
 * - `firm`: at least four put it this way, and at least five for each one against
 * - `unopposed`: fewer than four put it this way, and none the other way
 * - `open`: sources disagree
 * - `unsaid`: no source orders the two
 *
 * The limits of `firm` are a rule of this library; no source grades the pairs.
 */
export type Standing = "firm" | "unopposed" | "open" | "unsaid";

/** Which published mixing orders put a kind before another. */
export interface PairOrder {
  readonly type: "pair-order";
  readonly version: 1;
  readonly first: Formulation;
  readonly second: Formulation;
  readonly standing: Standing;
  /** Mixing orders that add `first` before `second`. */
  readonly for: readonly MixingOrderId[];
  /** Mixing orders that add `second` before `first`. */
  readonly against: readonly MixingOrderId[];
  /** Mixing orders that name both at the same step. */
  readonly same: readonly MixingOrderId[];
}

/**
 * Which published mixing orders add one kind of product before another, which after, and which at the same
 * step: `counts = |{L : step(first) < step(second)}|` over the mixing orders L that name both.
 *
 * Mixing orders are not independent of one another, so the count says how many print it, not how sure it is.
 *
 * @param first - the kind whose precedence is asked
 * @param second - the other kind
 * @throws RatewrightError `type` for an unknown kind
 *
 * Source: the mixing orders in `mixingOrders`, each with its citation.
 *
 * @example
 * ```ts
 * import { pairOrder } from "ratewright/tank";
 * const counts = pairOrder("SL", "EC");
 * counts.for.length; // => 5
 * counts.against.length; // => 6
 * counts.standing; // => "open"
 * pairOrder("WP", "SC").standing; // => "firm"
 * ```
 */
export const pairOrder = (first: Formulation, second: Formulation): PairOrder => {
  expectFormulation(first, "first");
  expectFormulation(second, "second");
  const before: MixingOrderId[] = [];
  const after: MixingOrderId[] = [];
  const same: MixingOrderId[] = [];
  for (const mixingOrder of mixingOrders) {
    const [a, b] = [stepIn(mixingOrder, first), stepIn(mixingOrder, second)];
    if (a === undefined || b === undefined) continue;
    (a < b ? before : a > b ? after : same).push(mixingOrder.id);
  }
  return {
    type: "pair-order",
    version: 1,
    first,
    second,
    standing: standingOf(before.length, after.length),
    for: before,
    against: after,
    same,
  };
};

const firm = (counts: number, against: number): boolean => counts >= 4 && counts >= 5 * against;

const standingOf = (counts: number, against: number): Standing => {
  if (counts + against === 0) return "unsaid";
  if (firm(counts, against) || firm(against, counts)) return "firm";
  return counts === 0 || against === 0 ? "unopposed" : "open";
};
