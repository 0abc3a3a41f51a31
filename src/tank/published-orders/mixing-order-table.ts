import { frozen } from "../../quantity/index.js";
import type { Formulation } from "../formulation/formulation.js";
import { bestOrders } from "./best-orders.js";
import { consensusOrder } from "./consensus-order.js";
import { pairOrder } from "./pair-order.js";

const comparedKindsTable = [
  "conditioner",
  "water-soluble packet",
  "SG",
  "WP",
  "WG",
  "SC",
  "CS",
  "SE",
  "EW",
  "EC",
  "OD",
  "SL",
  "oil adjuvant",
  "surfactant",
] as const;

/** The fourteen kinds of which the published orders say enough to be put in line by their rankings. */
export const comparedKinds: typeof comparedKindsTable = /* @__PURE__ */ frozen(comparedKindsTable);

/** The rankings of the published orders on every pair of fourteen kinds, and the order that keeps most of them. */
export interface MixingOrderTable {
  readonly type: "mixing-order-table";
  readonly version: 1;
  readonly kinds: readonly Formulation[];
  /** `counts[i][j]`: how many published orders add `kinds[i]` before `kinds[j]`. Ties are not counted. */
  readonly counts: readonly (readonly number[])[];
  /** All rankings of the table. */
  readonly total: number;
  /** The consensus on these kinds. */
  readonly order: readonly Formulation[];
  /** How many of the rankings `order` keeps. */
  readonly kept: number;
  /** The most that any of the 14! orders keeps, by exhaustive search. */
  readonly best: number;
  /** How many orders keep as many: they differ in pairs on which the sources say nothing or are even. */
  readonly bestCount: number;
  /** An order of the next lower score. */
  readonly runnerUp: { readonly order: readonly Formulation[]; readonly kept: number };
  /** Pairs of `order` against which at least one source stands, the closest first. */
  readonly contested: readonly {
    readonly first: Formulation;
    readonly second: Formulation;
    readonly for: number;
    readonly against: number;
  }[];
}

/**
 * The table behind the consensus order: how many of the twelve published orders add one kind before
 * another, for every pair of fourteen kinds, and the linear order that keeps the most of these rankings.
 *
 * `kept = sum over i before j of counts[i][j]`, and the order is the one of all 14! that has the largest
 * (the linear-ordering or Kemeny problem). It is found by exact search over the sets of kinds. A count
 * of orders is no weight of evidence: several descend from one acronym.
 *
 * The figures rest on how the words of each source were read (`mixingOrders`, `readings`). Two of them matter:
 * read as an oil too, Utah State's "adjuvant" adds 8 rankings, and with CS, SE, EW and OD among what
 * "needs dispersing or emulsifying" CropLife Latin America adds 12: then 438 of 468 are kept, by the same order.
 *
 * Source: derived from the orders in `mixingOrders`, each with its citation; published by nobody.
 *
 * @example
 * ```ts
 * import { mixingOrderTable } from "ratewright/tank";
 * const table = mixingOrderTable();
 * [table.kept, table.best, table.total]; // => [422, 422, 448]
 * table.runnerUp.kept; // => 421
 * table.order.join(" > "); // => "conditioner > water-soluble packet > SG > WP > WG > SC > CS > SE > EW > EC > OD > SL > oil adjuvant > surfactant"
 * table.contested.find(({ first }) => first === "EC"); // => { first: "EC", second: "SL", for: 6, against: 5 }
 * ```
 */
export const mixingOrderTable = (): MixingOrderTable => {
  const kinds: readonly Formulation[] = comparedKinds;
  const counts = kinds.map((a) => kinds.map((b) => (a === b ? 0 : pairOrder(a, b).for.length)));
  const at = (a: Formulation, b: Formulation): number => counts[kinds.indexOf(a)]?.[kinds.indexOf(b)] ?? 0;
  const order = consensusOrder.filter((kind) => kinds.includes(kind));
  const pairs = order.flatMap((first, i) =>
    order
      .slice(i + 1)
      .map((second) => ({ first, second, for: at(first, second), against: at(second, first) })),
  );
  const { best, count, next } = bestOrders(counts);
  return {
    type: "mixing-order-table",
    version: 1,
    kinds,
    counts,
    total: counts.flat().reduce((sum, count) => sum + count, 0),
    order,
    kept: pairs.reduce((sum, pair) => sum + pair.for, 0),
    best,
    bestCount: count,
    runnerUp: {
      order: (next?.order ?? []).map((i) => kinds[i] as Formulation),
      kept: next?.kept ?? 0,
    },
    contested: pairs
      .filter((pair) => pair.against > 0)
      .sort((a, b) => a.for - a.against - (b.for - b.against)),
  };
};
