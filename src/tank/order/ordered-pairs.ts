import type { MixProduct } from "../partners/mix-product.js";
import { consensusPlace } from "../published-orders/consensus-order.js";
import { mixingOrderOf } from "../published-orders/mixing-orders.js";
import { pairOrder } from "../published-orders/pair-order.js";
import type { OrderedPair, ResolvedBy } from "./loading-order-types.js";

const names = (ids: readonly string[]): readonly string[] => ids.map((id) => mixingOrderOf(id)?.name ?? id);

/** Whether the label of one product or of the other puts the first before the second. */
const labelPuts = (first: MixProduct, second: MixProduct): boolean =>
  first.addBefore?.includes(second.id) === true || second.addAfter?.includes(first.id) === true;

/** Whether labels, directly or through others, put one product before another. */
const labelsOrder = (products: readonly MixProduct[], first: MixProduct, second: MixProduct): boolean => {
  const reached = new Set([first]);
  // A set grows while it is walked, and the walk takes in what was added.
  for (const one of reached) for (const other of products) if (labelPuts(one, other)) reached.add(other);
  return reached.has(second);
};

/** Every pair of an order, with what the published mixing orders say of it. */
export const orderedPairs = (
  products: readonly MixProduct[],
  placeOf: (product: MixProduct) => number,
  byOrder: (product: MixProduct) => boolean,
): readonly OrderedPair[] =>
  products.flatMap((first, i) =>
    products.slice(i + 1).map((second): OrderedPair => {
      const counts = pairOrder(first.formulation, second.formulation);
      const [a, b] = [placeOf(first), placeOf(second)];
      const resolvedBy: ResolvedBy =
        a > b || labelsOrder(products, first, second)
          ? "label"
          : Math.floor(a) < Math.floor(b) && byOrder(first) && byOrder(second)
            ? "chosen order"
            : consensusPlace(first.formulation) === consensusPlace(second.formulation)
              ? "id"
              : counts.for.length > counts.against.length
                ? "majority"
                : "consensus";
      return {
        first: first.id,
        second: second.id,
        standing: counts.standing,
        counts: { for: counts.for.length, against: counts.against.length, same: counts.same.length },
        says: { for: names(counts.for), against: names(counts.against), same: names(counts.same) },
        resolvedBy,
      };
    }),
  );
