// Changes of tank mixes that no test can notice; see equivalent-list.ts.
import type { Equivalent } from "./equivalent-list.js";

/** The list, by file. */
export const equivalentsInTank: readonly Equivalent[] = [
  {
    file: "src/tank/order/loading-order.ts",
    was: "consensusPlace(kind) <= own",
    is: "consensusPlace(kind) < own",
    why: "a kind of the same place is a like, and an order that names one has been asked for it before",
  },
  {
    file: "src/tank/order/arranged.ts",
    was: "a < b",
    is: "a <= b",
    why: "no two ids are the same",
  },
  {
    file: "src/tank/order/order-findings.ts",
    was: '"no published order decides; the ids are in alphabetical order"',
    is: '""',
    why: "of two kinds of one place no order puts one ahead, so that none is told to disagree",
  },
  {
    file: "src/tank/published-orders/mixing-order-table.ts",
    was: "a === b",
    is: "false",
    why: "no order adds a kind ahead of itself",
  },
  {
    file: "src/tank/order/order-findings.ts",
    was: "counts.against > counts.for",
    is: "counts.against >= counts.for",
    why: "a firm pair has five times as many one way as the other, and never as many",
  },
  {
    file: "src/tank/order/product-steps.ts",
    was: "afterStep === step",
    is: "true",
    why: "every published order that prints a wait prints it once, after its powders and granules",
  },
];
