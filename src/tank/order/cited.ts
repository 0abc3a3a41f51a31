import type { Citation } from "../../quantity/index.js";
import { mixingOrderOf } from "../published-orders/mixing-orders.js";

/** The sources of published mixing orders, by their ids. */
export const cited = (...ids: readonly string[]): readonly Citation[] =>
  ids.flatMap((id) => {
    const mixingOrder = mixingOrderOf(id);
    return mixingOrder === undefined ? [] : [mixingOrder.source];
  });
