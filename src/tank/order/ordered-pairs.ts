import type { MixProduct } from "../partners/mix-product.js";
import { consensusPlace } from "../votes/consensus-order.js";
import { ladderOf } from "../votes/ladders.js";
import { pairVotes } from "../votes/pair-votes.js";
import type { OrderedPair } from "./loading-order-types.js";

const names = (ids: readonly string[]): readonly string[] => ids.map((id) => ladderOf(id)?.name ?? id);

/** Whether labels, directly or through others, put one product before another. */
export const labelOrders = (products: readonly MixProduct[], first: string, second: string): boolean => {
  const reached = new Set([first]);
  // A set grows while it is walked, and the walk takes in what was added.
  for (const id of reached) {
    for (const product of products) {
      if (product.id === id) for (const other of product.labelBefore ?? []) reached.add(other);
      if (product.labelAfter?.includes(id) === true) reached.add(product.id);
    }
  }
  return first !== second && reached.has(second);
};

/** Every pair of an order, with what the published ladders say of it. */
export const orderedPairs = (
  products: readonly MixProduct[],
  placeOf: (product: MixProduct) => number,
  byLadder: (product: MixProduct) => boolean,
): readonly OrderedPair[] =>
  products.flatMap((first, i) =>
    products.slice(i + 1).map((second): OrderedPair => {
      const votes = pairVotes(first.formulation, second.formulation);
      const [a, b] = [placeOf(first), placeOf(second)];
      const sameByLadder = byLadder(first) && byLadder(second);
      const resolvedBy =
        a > b || labelOrders(products, first.id, second.id)
          ? "label"
          : Math.floor(a) < Math.floor(b) && sameByLadder
            ? "ladder"
            : consensusPlace(first.formulation) === consensusPlace(second.formulation)
              ? "id"
              : "consensus";
      return {
        first: first.id,
        second: second.id,
        standing: votes.standing,
        votes: { for: votes.for.length, against: votes.against.length, same: votes.same.length },
        says: { for: names(votes.for), against: names(votes.against), same: names(votes.same) },
        resolvedBy,
      };
    }),
  );
