import { describe, expect, test } from "vitest";
import {
  areaCovered,
  cheapestSource,
  costPerArea,
  fertilizer,
  nutrientCost,
  packageContents,
  packageCoverage,
  packagesFor,
} from "../../../src/nutrient/index.js";
import { money, quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of prices and packages, where the refusal points, and what happens exactly at a limit.

const feed = fertilizer({ id: "feed", analysis: "20-5-10", package: quantity(50, "lb") });
const urea = fertilizer({ id: "urea", analysis: "46-0-0" });
const potash = fertilizer({ id: "potash", analysis: "0-0-50" });
const jug = fertilizer({ id: "jug", form: "liquid", analysis: "20-0-0", package: quantity(2.5, "gal") });
const dense = fertilizer({
  id: "dense",
  form: "liquid",
  analysis: "20-0-0",
  density: quantity(10, "lb/gal"),
  package: quantity(2.5, "gal"),
});
const perTon = money(500, "USD").per(quantity(1, "US ton"));
const perGallon = money(10, "USD").per(quantity(1, "gal"));
const n = quantity(1, "lb/1000 ft2", "N");
const rate = quantity(5, "lb/1000 ft2", "product:feed");
const cheap = (change: object) => () =>
  cheapestSource({ target: n, sources: [{ product: feed, price: perTon }], ...change } as never);
const offer = (change: object) => cheap({ sources: [{ product: feed, price: perTon, ...change }] });
const area = (change: object) => () =>
  costPerArea({ product: feed, rate, price: perTon, ...change } as never);
const nutrient = (change: object) => () =>
  nutrientCost({ product: feed, price: perTon, nutrient: "N", ...change } as never);
const worth = (value: number, of: string) => money(value, "USD").per(quantity(1, "lb", of as "N"));
const wanted = 'a price per weight or volume: money(28.5, "USD").per(quantity(50, "lb"))';

const rows: readonly Refused[] = [
  [cheap({ target: quantity(1, "lb", "N") }), "unit/mismatch", "target", "a weight over an area"],
  [cheap({ sources: [] }), "missing", "sources", "{ product, price }"],
  [cheap({ sources: [7] }), "type", "sources[0]", "{ product, price }"],
  [
    cheap({ sources: [{ product: potash, price: perTon }] }),
    "infeasible",
    "sources",
    "a product that states N: none of these does",
  ],
  [offer({ product: 7 }), "type", "sources[0].product", "fertilizer"],
  [offer({ price: 7 }), "type", "sources[0].price", wanted],
  [offer({ price: quantity(1, "lb") }), "unit/mismatch", "sources[0].price", wanted],
  [offer({ price: money(-1, "USD").per(quantity(1, "lb")) }), "range", "sources[0].price", "zero or more"],
  [offer({ bag: 1 }), "type", "sources[0].bag", "price"],
  [
    cheap({
      sources: [
        { product: feed, price: perTon },
        { product: { ...urea, id: "feed" }, price: perTon },
      ],
    }),
    "duplicate",
    "sources[1].product.id",
    "sources[0] has it for another product",
  ],
  [
    cheap({
      sources: [
        { product: feed, price: perTon },
        { product: urea, price: money(1, "EUR").per(quantity(1, "kg")) },
      ],
    }),
    "unit/mismatch",
    "sources[1].price",
    "a price in money:USD",
  ],
  [
    cheap({ sources: [{ product: jug, price: perGallon }] }),
    "missing",
    "sources[0].product.density",
    "the density of the liquid, since the price is per volume",
  ],
  [area({ rate: quantity(5, "lb", "product:feed") }), "unit/mismatch", "rate", "a weight over an area"],
  [area({ rate: quantity(-5, "lb/acre", "product:feed") }), "range", "rate", "zero or more"],
  [
    area({ rate: quantity(5, "lb/acre", "product:b") }),
    "substance/mismatch",
    "rate",
    "a quantity of product:feed",
  ],
  [
    area({ rate: quantity(5, "gal/acre", "product:feed") }),
    "missing",
    "product.density",
    "the rate is by volume, the price by weight",
  ],
  [area({ price: perGallon }), "missing", "product.density", "the rate is by weight, the price by volume"],
  [area({ price: 7 }), "type", "price", wanted],
  [area({ product: 7 }), "type", "product", "fertilizer"],
  [area({ area: 1 }), "type", "input.area", "rate"],
  [nutrient({ nutrient: "Zz" }), "type", "nutrient", "a nutrient, such as N or P2O5"],
  [nutrient({ product: potash }), "infeasible", "product.analysis", "some N, of which potash states none"],
  [nutrient({ price: 7 }), "type", "price", wanted],
  [
    nutrient({ product: jug, price: perGallon }),
    "missing",
    "product.density",
    "since the price is per volume",
  ],
  [nutrient({ worth: 7 }), "type", "worth", "worth by nutrient, such as { N: money(0.5"],
  [
    nutrient({ worth: { N: worth(1, "N") } }),
    "conflict",
    "worth.N",
    "another nutrient than the one asked for, each once",
  ],
  [
    nutrient({ worth: { P2O5: worth(1, "P2O5"), P: worth(1, "P") } }),
    "conflict",
    "worth.P",
    "another nutrient than the one asked for, each once",
  ],
  [nutrient({ worth: { K2O: worth(1, "P2O5") } }), "substance/mismatch", "worth.K2O", "K2O"],
  [nutrient({ worth: { K2O: worth(-1, "K2O") } }), "range", "worth.K2O", "zero or more"],
  [
    nutrient({ worth: { K2O: worth(100, "K2O") } }),
    "conflict",
    "worth",
    "other nutrients worth at most the price; they exceed it by",
  ],
  [
    () => packagesFor(quantity(1, "lb", "product:b") as never, feed),
    "substance/mismatch",
    "need",
    "product:feed",
  ],
  [() => packagesFor(quantity(-1, "lb", "product:feed"), feed), "range", "need", "zero or more"],
  [() => packagesFor(rate as never, feed), "unit/mismatch", "need", "rate.times(area) makes one of a rate"],
  [
    () => packagesFor(quantity(1, "gal", "product:feed") as never, feed),
    "unit/mismatch",
    "need",
    "a mass, as the package has; a product density converts one to the other",
  ],
  [
    () => packagesFor(quantity(1, "lb", "product:urea"), urea),
    "missing",
    "product.package",
    "what one package holds",
  ],
  [
    () => packagesFor(quantity(1, "lb", "product:a"), { id: "", package: quantity(1, "lb") } as never),
    "missing",
    "product.id",
    "the id of the product",
  ],
  [
    () => packagesFor(quantity(1, "lb", "product:a"), { id: "a/b", package: quantity(1, "lb") } as never),
    "type",
    "product.id",
    "an id without slash or colon",
  ],
  [
    () => packagesFor(quantity(1, "lb", "product:a"), { id: "a", package: quantity(0, "lb") }),
    "range",
    "product.package",
    "more than zero",
  ],
  [
    () =>
      packagesFor(quantity(1, "lb", "product:a"), {
        id: "a",
        package: quantity(1, "gal"),
        density: quantity(0, "lb/gal"),
      }),
    "range",
    "product.density",
    "more than zero",
  ],
  [() => packagesFor(quantity(1, "lb", "product:a"), 7 as never), "type", "product", "record"],
  [() => areaCovered(quantity(-1, "lb", "product:feed"), rate), "range", "amount", "zero or more"],
  [
    () => areaCovered(quantity(1, "lb", "product:feed"), quantity(0, "lb/acre", "product:feed")),
    "range",
    "rate",
    "more than zero",
  ],
  [
    () => areaCovered(quantity(1, "lb", "product:feed"), quantity(1, "gal/acre", "product:feed") as never),
    "unit/mismatch",
    "rate",
    "a weight over an area",
  ],
  [
    () => packageCoverage(feed, quantity(1, "gal/acre", "product:feed")),
    "unit/mismatch",
    "rate",
    "a weight over an area",
  ],
  [
    () => packageCoverage(feed, quantity(1, "lb/acre", "product:b") as never),
    "substance/mismatch",
    "rate",
    "product:feed",
  ],
  [() => packageCoverage(feed, quantity(0, "lb/acre", "product:feed")), "range", "rate", "more than zero"],
  [
    () => packageContents(jug),
    "unit/mismatch",
    "product.package",
    'a package by mass; packageContents(product, "volume") gives what it holds',
  ],
  [() => packageContents(feed, "volume"), "unit/mismatch", "product.package", "a package by volume"],
  [() => packageContents(feed, "area" as never), "type", "kind", '"volume"'],
];

describeRefused("what is refused of prices and packages", rows);

describe("at the limits", () => {
  test("a need of whole packages leaves nothing over, a little more opens another", () => {
    const open = (pounds: number) => {
      const found = packagesFor(quantity(pounds, "lb", "product:feed"), feed);
      return [found.count, found.total.in("lb"), found.leftOver.in("lb")];
    };
    expect(open(0)).toEqual([0, 0, 0]);
    expect(open(50)).toEqual([1, 50, 0]);
    expect(open(100)).toEqual([2, 100, 0]);
    expect(open(101)).toEqual([3, 150, 49]);
    expect(open(0.1)).toEqual([1, 50, 49.9]);
  });

  test("a liquid that is needed by weight is opened by volume through its density, and back", () => {
    // 2.5 gal weigh 25 lb.
    const byWeight = packagesFor(quantity(26, "lb", "product:dense"), dense);
    expect([byWeight.count, byWeight.total.in("lb"), byWeight.leftOver.in("lb")]).toEqual([2, 50, 24]);
    const bag = { id: "dense", package: quantity(25, "lb"), density: quantity(10, "lb/gal") } as const;
    const byVolume = packagesFor(quantity(3, "gal", "product:dense"), bag);
    expect([byVolume.count, byVolume.total.in("gal"), byVolume.leftOver.in("gal")]).toEqual([2, 5, 2]);
  });

  test("what a package covers, by hand", () => {
    expect(packageCoverage(feed, rate).in("ft2")).toBeCloseTo(10_000, 6);
    expect(areaCovered(quantity(0, "lb", "product:feed"), rate).value).toBe(0);
    expect(packageContents(jug, "volume").toString()).toBe("2.5 gal of product:jug");
    expect(packageContents(feed).toString()).toBe("50 lb of product:feed");
  });

  test("other nutrients may be worth the whole price, and then this one costs nothing", () => {
    // 0.25 USD a pound; 10 % of K2O at 2.5 USD a pound is all of it.
    const cost = (value: number) =>
      nutrientCost({
        product: feed,
        price: perTon,
        nutrient: "N",
        worth: { K2O: worth(value, "K2O") as never },
      });
    expect(cost(2.5).value).toBe(0);
    // 0.25 - 0.1 x 1 = 0.15 USD for 0.2 lb of N.
    expect(cost(1).in("money:USD/lb" as never)).toBeCloseTo(0.75, 12);
    expect(problemsOf(nutrient({ worth: { K2O: worth(2.51, "K2O") } }))[0]?.code).toBe("conflict");
  });

  test("a rate by volume is priced by volume as it is, and through the density by weight", () => {
    const cost = (price: unknown, amount: unknown) =>
      costPerArea({ product: dense, price, rate: amount } as never).in("money:USD/acre" as never);
    const gallons = quantity(2, "gal/acre", "product:dense");
    expect(cost(perGallon, gallons)).toBeCloseTo(20, 12);
    // 2 gal weigh 20 lb, at 0.25 USD a pound.
    expect(cost(perTon, gallons)).toBeCloseTo(5, 12);
    // 20 lb are 2 gal, at 10 USD a gallon.
    expect(cost(perGallon, quantity(20, "lb/acre", "product:dense"))).toBeCloseTo(20, 12);
  });

  test("the cheapest comes first, equal ones as they were given, and those without are named", () => {
    const found = cheapestSource({
      target: n,
      sources: [
        { product: potash, price: perTon },
        { product: feed, price: perTon },
        { product: urea, price: perTon },
        { product: { ...urea, id: "other" }, price: perTon },
      ],
    });
    expect(found.sources.map(({ product }) => product)).toEqual(["urea", "other", "feed"]);
    expect(found.cheapest.product).toBe("urea");
    expect(found.without).toEqual(["potash"]);
    // 1 lb of N is 5 lb of feed, at 0.25 USD: 1.25 for 1000 ft2, and so for a pound of N.
    expect(found.sources[2]?.cost.in("money:USD/1000 ft2" as never)).toBeCloseTo(1.25, 12);
    expect(found.sources[2]?.perNutrient.in("money:USD/lb" as never)).toBeCloseTo(1.25, 12);
  });
});
