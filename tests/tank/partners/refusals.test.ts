import { expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { incompatibilities, type MixProduct } from "../../../src/tank/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of the products of a mix.

const product: MixProduct = { id: "a", formulation: "SC" };
const one = (change: object) => () =>
  incompatibilities({
    products: [
      { ...product, ...change },
      { id: "b", formulation: "SL" },
    ],
  } as never);

const rows: readonly Refused[] = [
  [() => incompatibilities({ products: [] }), "missing", "products", "product"],
  [() => incompatibilities({ products: 7 as never }), "type", "products", "list"],
  [() => incompatibilities({ products: [7 as never] }), "type", "products[0]", "a product"],
  [
    () => incompatibilities({ products: [product], country: "US" as never }),
    "type",
    "country",
    '"UK", or none',
  ],
  [
    () => incompatibilities({ products: [product], mixingOrder: "x" } as never),
    "type",
    "input.mixingOrder",
    "country",
  ],
  [
    () =>
      incompatibilities({ products: Array.from({ length: 51 }, (_, i) => ({ ...product, id: `p${i}` })) }),
    "range",
    "products",
    "50 products or fewer in one tank",
  ],
  [one({ id: "" }), "missing", "products[0].id", "an id of the product"],
  [one({ id: "b" }), "duplicate", "products[1].id", "an id that no other product has"],
  [one({ formulation: "QQ" }), "type", "products[0].formulation", "formulationOf reads codes"],
  [one({ name: 7 }), "type", "products[0].name", "a text"],
  [one({ name: "x".repeat(201) }), "range", "products[0].name", "200 characters or fewer"],
  [one({ amount: quantity(1, "acre") }), "unit/mismatch", "products[0].amount", "a weight"],
  [one({ amount: quantity(-1, "lb", "product:a") }), "range", "products[0].amount", "zero or more"],
  [
    one({ amount: quantity(1, "lb", "product:b") }),
    "substance/mismatch",
    "products[0].amount",
    "an amount or a rate of product:a",
  ],
  [one({ addBefore: "b" }), "type", "products[0].addBefore", "a list of product ids"],
  [one({ addBefore: ["c"] }), "missing", "products[0].addBefore[0]", "the id of a product of this mix"],
  [one({ addAfter: ["b", "c"] }), "missing", "products[0].addAfter[1]", "the id of a product of this mix"],
  [one({ addAfter: 7 }), "type", "products[0].addAfter", "a list of product ids"],
  [one({ labelNames: ["c"] }), "missing", "products[0].labelNames[0]", "the id of a product of this mix"],
  [one({ labelNames: 7 }), "type", "products[0].labelNames", "a list of product ids"],
  [one({ labelNote: 7 }), "type", "products[0].labelNote", "a text"],
  [one({ labelNote: "x".repeat(2001) }), "range", "products[0].labelNote", "2000 characters or fewer"],
  [one({ lowRate: "yes" }), "type", "products[0].lowRate", "true"],
  [one({ contains: "iron" }), "type", "products[0].contains", "a list of ingredients"],
  [one({ contains: ["iron"] }), "type", "products[0].contains[0]", '"iron sulfate"'],
  [one({ groups: "ALS" }), "type", "products[0].groups", "a list of names"],
  [one({ groups: [7] }), "type", "products[0].groups[0]", "a name"],
  [one({ labelProhibits: "b" }), "type", "products[0].labelProhibits", "a list of names"],
  [one({ labelProhibits: [""] }), "missing", "products[0].labelProhibits[0]", "a name"],
  [one({ rate: 1 }), "type", "products[0].rate", "formulation"],
];

describeRefused("what is refused of the products of a mix", rows);

test("lists of a product may be empty, and its longest texts are taken", () => {
  const most = {
    name: "x".repeat(200),
    labelNote: "x".repeat(2000),
    addBefore: [],
    addAfter: [],
    contains: [],
    groups: [],
    labelProhibits: [],
    labelNames: [],
  };
  expect(problemsOf(one(most))).toEqual([]);
  const fifty = Array.from({ length: 50 }, (_, i) => ({ ...product, id: `p${i}` }));
  expect(problemsOf(() => incompatibilities({ products: fifty }))).toEqual([]);
});
