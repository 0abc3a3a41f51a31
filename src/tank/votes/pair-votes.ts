import { expectFormulation } from "../formulation/expect-formulation.js";
import type { Formulation } from "../formulation/formulation.js";
import { type LadderId, stepIn } from "./ladder.js";
import { ladders } from "./ladders.js";

/**
 * How firmly the ladders order a pair.
 * - `firm`: at least four put it this way, and at least five for each one against
 * - `unopposed`: fewer than four put it this way, and none the other way
 * - `open`: sources disagree
 * - `unsaid`: no source orders the two
 *
 * The limits of `firm` are a rule of this library; no source grades the pairs.
 */
export type Standing = "firm" | "unopposed" | "open" | "unsaid";

/** Which published ladders put a kind before another. */
export interface PairVotes {
  readonly type: "pair-votes";
  readonly version: 1;
  readonly first: Formulation;
  readonly second: Formulation;
  readonly standing: Standing;
  /** Ladders that add `first` before `second`. */
  readonly for: readonly LadderId[];
  /** Ladders that add `second` before `first`. */
  readonly against: readonly LadderId[];
  /** Ladders that name both at the same step. */
  readonly same: readonly LadderId[];
}

/**
 * Which published ladders add one kind of product before another, which after, and which at the same
 * step: `votes = |{L : step(first) < step(second)}|` over the ladders L that name both.
 *
 * Ladders are not independent of one another, so the count says how many print it, not how sure it is.
 *
 * @param first - the kind whose precedence is asked
 * @param second - the other kind
 * @throws RatewrightError `type` for an unknown kind
 *
 * Source: the ladders in `ladders`, each with its citation.
 *
 * @example
 * ```ts
 * import { pairVotes } from "ratewright/tank";
 * const votes = pairVotes("SL", "EC");
 * votes.for.length; // => 5
 * votes.against.length; // => 6
 * votes.standing; // => "open"
 * pairVotes("WP", "SC").standing; // => "firm"
 * ```
 */
export const pairVotes = (first: Formulation, second: Formulation): PairVotes => {
  expectFormulation(first, "first");
  expectFormulation(second, "second");
  const before: LadderId[] = [];
  const after: LadderId[] = [];
  const same: LadderId[] = [];
  for (const ladder of ladders) {
    const [a, b] = [stepIn(ladder, first), stepIn(ladder, second)];
    if (a === undefined || b === undefined) continue;
    (a < b ? before : a > b ? after : same).push(ladder.id);
  }
  return {
    type: "pair-votes",
    version: 1,
    first,
    second,
    standing: standingOf(before.length, after.length),
    for: before,
    against: after,
    same,
  };
};

const firm = (votes: number, against: number): boolean => votes >= 4 && votes >= 5 * against;

const standingOf = (votes: number, against: number): Standing => {
  if (votes + against === 0) return "unsaid";
  if (firm(votes, against) || firm(against, votes)) return "firm";
  return votes === 0 || against === 0 ? "unopposed" : "open";
};
