import { describe, expect, test } from "vitest";
import {
  fertilizer,
  highestProductRate,
  liquidFertilizer,
  productRate,
  productRates,
  slowShareNeeded,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of rates of product, where the refusal points, and what it says would have been right.

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
const rate =
  (target: unknown, product: unknown = feed) =>
  () =>
    productRate(target as never, product as never);
const several = (input: object) => () =>
  productRates({ steps: [{ target: n, product: feed }], ...input } as never);
const highest = (input: object) => () =>
  highestProductRate({ product: feed, caps: [{ limit: n }], ...input } as never);
const cap = (change: object) => highest({ caps: [{ limit: n, ...change }] });
const rows: readonly Refused[] = [
  // One product for one target
  [rate(n, jug), "missing", "product.density", "liquidProductRate(target, product) is by volume"],
  [rate(n, bare), "missing", "product.density", "the density of a liquid"],
  [rate(n, null), "type", "product", "a record made by fertilizer(...)"],
  [rate(n, { ...feed, id: 7 }), "type", "product.id", "the id of a fertilizer"],
  [rate(n, { ...feed, id: undefined }), "missing", "product.id", "the id of a fertilizer"],
  [rate(n, potash), "infeasible", "product.analysis", "some N, of which potash states none"],
  [
    rate(quantity(1, "lb/1000 ft2", "Fe")),
    "infeasible",
    "product.analysis",
    "some Fe, of which feed states none",
  ],
  [
    rate(quantity(1, "lb/1000 ft2")),
    "substance/mismatch",
    "target",
    "a rate of a nutrient, such as N or P2O5",
  ],
  [
    rate(quantity(1, "lb/1000 ft2", "product")),
    "infeasible",
    "target",
    "a rate of a nutrient, such as N or P2O5",
  ],
  [rate(quantity(1, "lb/1000 ft2", "N:slow")), "infeasible", "target", "nitrogenOf(amount) counts it as N"],
  [rate(quantity(1, "lb/1000 ft2", "NO3")), "infeasible", "target", "nitrogenOf(amount) counts it as N"],
  [rate(quantity(1, "lb/1000 ft2", "NH4-N")), "infeasible", "target", "nitrogenOf(amount) counts it as N"],
  [rate(quantity(-1, "lb/1000 ft2", "N")), "range", "target", "zero or more"],
  [rate(quantity(1, "lb", "N")), "unit/mismatch", "target", "a weight over an area"],
  [rate(7), "type", "target", "quantity"],
  // Several
  [several({ order: "any" }), "type", "order", '"as given"'],
  [several({ steps: 7 }), "type", "steps", "list"],
  [several({ steps: [7] }), "type", "steps[0]", "target"],
  [several({ steps: [{ target: n }] }), "missing", "steps[0].product", "fertilizer"],
  [several({ steps: [{ target: n, product: feed, rate: 1 }] }), "type", "steps[0].rate", "target"],
  [
    several({ steps: [{ target: quantity(1, "lb", "N"), product: feed }] }),
    "unit/mismatch",
    "steps[0].target",
    "a weight over an area",
  ],
  [several({ targets: [] }), "type", "input.targets", "steps"],
  // Under caps
  [highest({ caps: [] }), "missing", "caps", "cap"],
  [highest({ caps: 7 }), "type", "caps", "list"],
  [highest({ caps: [7] }), "type", "caps[0]", "a cap: { limit }"],
  [highest({ product: undefined }), "missing", "product", "fertilizer"],
  [highest({ product: bare }), "missing", "product.density", "density"],
  [highest({ leastSlowShare: share(101) }), "range", "leastSlowShare", "100 % or less of the nitrogen"],
  [highest({ leastSlowShare: 20 }), "type", "leastSlowShare", "quantity"],
  [highest({ most: 1 }), "type", "input.most", "caps"],
  [cap({ limit: quantity(1, "lb", "N") }), "unit/mismatch", "caps[0].limit", "a weight over an area"],
  [
    cap({ limit: quantity(1, "lb/1000 ft2", "product") }),
    "substance/mismatch",
    "caps[0].limit",
    "a nutrient, N:quick or N:slow",
  ],
  [cap({ fromSlowShare: share(101) }), "range", "caps[0].fromSlowShare", "100 % or less of the nitrogen"],
  [cap({ belowSlowShare: share(-1) }), "range", "caps[0].belowSlowShare", "zero or more"],
  [
    cap({ fromSlowShare: share(50), belowSlowShare: share(50) }),
    "conflict",
    "caps[0].belowSlowShare",
    "more than 50 %: no product is both",
  ],
  [cap({ id: "" }), "missing", "caps[0].id", "a name of the cap"],
  [cap({ source: 7 }), "type", "caps[0].source", "source"],
  [cap({ rate: 1 }), "type", "caps[0].rate", "limit"],
  [
    highest({ caps: [{ limit: n }, { limit: n }] }),
    "duplicate",
    "caps[1].id",
    "a name of its own for each cap",
  ],
  // The slow share that both caps leave
  [
    () =>
      slowShareNeeded({
        total: quantity(0, "lb/1000 ft2", "N"),
        quickCap: quantity(1, "lb/1000 ft2", "N:quick"),
      }),
    "range",
    "total",
    "more than zero",
  ],
  [() => slowShareNeeded({ total: n, quickCap: n as never }), "substance/mismatch", "quickCap", "N:quick"],
  [
    () => slowShareNeeded({ total: n, quickCap: quantity(-1, "lb/1000 ft2", "N:quick") }),
    "range",
    "quickCap",
    "zero or more",
  ],
];

describeRefused("what is refused of rates", rows);

describe("what the refusal of a target does not say", () => {
  test("nitrogenOf is named for parts of nitrogen only", () => {
    for (const of of ["none", "product", "other:NO", "Na"] as const)
      expect(problemsOf(rate(quantity(1, "lb/1000 ft2", of)))[0]?.expected).not.toContain("nitrogenOf");
  });
});

describe("at the limits", () => {
  test("a rate of none is none, and a liquid with a density is weighed", () => {
    expect(productRate(quantity(0, "lb/1000 ft2", "N"), feed).value).toBe(0);
    const weighed = fertilizer({
      id: "w",
      form: "liquid",
      analysis: "20-0-0",
      density: quantity(10, "lb/gal"),
    });
    expect(productRate(n, weighed).in("lb/1000 ft2")).toBe(5);
  });
});
