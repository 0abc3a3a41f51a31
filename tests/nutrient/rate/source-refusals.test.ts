import { describe, expect, test } from "vitest";
import {
  analysisOfMix,
  fertilizer,
  liquidFertilizer,
  nutrientsSupplied,
  productMass,
  ratesBySource,
  slowShareRates,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of a target that several sources share, of amounts and of mixes.

const feed = fertilizer({
  id: "feed",
  analysis: "20-5-10",
  slowNitrogen: quantity(4, "% w/w", "N:slow/product"),
});
const potash = fertilizer({ id: "potash", analysis: "0-0-50" });
const jug = liquidFertilizer({ id: "jug", perVolume: { N: quantity(3, "lb/gal", "N") } });
const bare = fertilizer({ id: "bare", form: "liquid", analysis: "20-0-0" });
const n = quantity(1, "lb/1000 ft2", "N");
const share = (percent: number) => quantity(percent, "% w/w", "N:slow/N");
const split = (input: object) => () =>
  ratesBySource({ target: n, parts: [{ product: feed, share: quantity(100, "%") }], ...input } as never);
const slower = fertilizer({
  id: "slower",
  analysis: "40-0-0",
  slowNitrogen: quantity(20, "% w/w", "N:slow/product"),
});
const pair = [feed, fertilizer({ id: "urea", analysis: "46-0-0" })] as const;
const bySlow = (input: object) => () =>
  slowShareRates({ target: n, slowShare: share(10), products: pair, ...input } as never);
const mix =
  (parts: unknown, more: object = {}) =>
  () =>
    analysisOfMix({ parts, ...more } as never);

const rows: readonly Refused[] = [
  // By source
  [split({ target: quantity(1, "lb", "N") }), "unit/mismatch", "target", "a weight over an area"],
  [
    split({ parts: [{ product: feed, share: quantity(90, "%") }] }),
    "conflict",
    "parts",
    "shares that add up to 100 %",
    "90 % in all",
  ],
  [
    split({ parts: [{ product: feed, share: quantity(-1, "%") }] }),
    "range",
    "parts[0].share",
    "zero or more",
  ],
  [
    split({ parts: [{ product: potash, share: quantity(100, "%") }] }),
    "infeasible",
    "parts[0].product.analysis",
    "some N, of which potash states none",
  ],
  [split({ part: 1 }), "type", "input.part", "parts"],
  // By slow share
  [
    bySlow({ slowShare: share(21) }),
    "infeasible",
    "slowShare",
    "a share from 0 to 20 %, which these two span",
    "21 %",
  ],
  [
    bySlow({ slowShare: share(10), products: [feed, slower] }),
    "infeasible",
    "slowShare",
    "a share from 20 to 50 %, which these two span",
    "10 %",
  ],
  [
    bySlow({ slowShare: share(20 - 1e-7), products: [feed, slower] }),
    "infeasible",
    "slowShare",
    "a share from 20 to 50 %",
  ],
  [bySlow({ slowShare: share(20 + 1e-7) }), "infeasible", "slowShare", "a share from 0 to 20 %"],
  [bySlow({ products: [feed] }), "type", "products", "two products"],
  [bySlow({ products: 7 }), "type", "products", "two products"],
  [
    bySlow({ products: [feed, potash] }),
    "infeasible",
    "products[1].analysis",
    "some N, of which potash states none",
  ],
  [
    bySlow({ products: [feed, { ...pair[1], id: "feed" }] }),
    "duplicate",
    "products[1].id",
    "products[0] has it for another product",
  ],
  [bySlow({ target: quantity(1, "lb/1000 ft2", "P2O5") }), "substance/mismatch", "target", "N"],
  // What an amount supplies
  [() => nutrientsSupplied(quantity(1, "acre") as never, feed), "unit/mismatch", "amount", "a weight"],
  [() => nutrientsSupplied(quantity(-1, "lb", "product:feed"), feed), "range", "amount", "zero or more"],
  [
    () => nutrientsSupplied(quantity(1, "lb", "product:b") as never, feed),
    "substance/mismatch",
    "amount",
    "a quantity of product:feed",
  ],
  [
    () => nutrientsSupplied(quantity(1, "lb") as never, feed),
    "substance/mismatch",
    "amount",
    "packageContents(product) is one of its package",
  ],
  [
    () => nutrientsSupplied(quantity(1, "gal", "product:bare"), bare),
    "missing",
    "product.density",
    "as liquidFertilizer({ id, perVolume }) takes it",
  ],
  [
    () => nutrientsSupplied(quantity(1, "lb", "product:jug") as never, jug),
    "unit/mismatch",
    "amount",
    "a volume",
  ],
  [
    () => nutrientsSupplied(quantity(1, "gal", "product:jug"), { ...jug, package: 7 } as never),
    "type",
    "product.package",
    "quantity",
  ],
  [
    () => nutrientsSupplied(quantity(1e307, "lb", "product:feed"), feed),
    "not-finite",
    "amount",
    "a finite number",
  ],
  // A mass of nutrient
  [
    () => productMass(quantity(1, "lb/acre", "N") as never, feed),
    "unit/mismatch",
    "nutrient",
    "productRate(target, product) takes a rate per area",
  ],
  [
    () => productMass(quantity(1, "lb") as never, feed),
    "substance/mismatch",
    "nutrient",
    "a mass of a nutrient, such as N",
  ],
  [() => productMass(quantity(-1, "lb", "N"), feed), "range", "nutrient", "zero or more"],
  [() => productMass(quantity(1, "lb", "N"), 7 as never), "type", "product", "fertilizer"],
  // A mix
  [mix([]), "missing", "parts", "{ product, amount }"],
  [mix([7]), "type", "parts[0]", "{ product, amount }"],
  [mix([{ product: feed, amount: quantity(0, "lb") }]), "range", "parts", "a mix that weighs more than zero"],
  [mix([{ product: feed, amount: quantity(1, "gal") }]), "unit/mismatch", "parts[0].amount", "a weight"],
  [
    mix([{ product: feed, amount: quantity(1, "lb", "product:b") }]),
    "substance/mismatch",
    "parts[0].amount",
    "product:feed",
  ],
  [mix([{ product: 7, amount: quantity(1, "lb") }]), "type", "parts[0].product", "fertilizer"],
  [
    mix([{ product: feed, amount: quantity(1, "lb") }], { filler: quantity(-1, "lb") }),
    "range",
    "filler",
    "zero or more",
  ],
  [mix([{ product: feed, amount: quantity(1, "lb") }], { sand: 1 }), "type", "input.sand", "filler"],
  [
    // As oxides 40 % P are 91.7 % P2O5 and 20 % K are 24.1 % K2O.
    mix([
      { product: fertilizer({ id: "e", analysis: "0-40-20", basis: "element" }), amount: quantity(1, "lb") },
    ]),
    "range",
    "mix",
    "100 % or less in all",
  ],
];

describeRefused("what is refused of sources", rows);

describe("at the limits", () => {
  test("an amount of another product is not sent to its package", () => {
    const [problem] = problemsOf(() => nutrientsSupplied(quantity(1, "lb", "product:b") as never, feed));
    expect(problem?.expected).toBe("a quantity of product:feed");
  });

  test("a slow share at either end of what two products span", () => {
    // 20 % slow of the nitrogen in the one, none in the other.
    const parts = (percent: number) =>
      slowShareRates({ target: n, slowShare: share(percent), products: pair }).map(({ part }) =>
        part.in("lb/1000 ft2"),
      );
    expect(parts(20)).toEqual([1, 0]);
    expect(parts(0)).toEqual([0, 1]);
    expect(parts(5)).toEqual([0.25, 0.75]);
  });
});
