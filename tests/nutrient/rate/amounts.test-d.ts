import { expectTypeOf, test } from "vitest";
import {
  type Fertilizer,
  fertilizer,
  highestProductRate,
  liquidFertilizer,
  liquidProductRate,
  nitrogenOf,
  nutrientCost,
  nutrientPerVolume,
  nutrientsSupplied,
  productRate,
  productRates,
  slowShareRates,
} from "../../../src/nutrient/index.js";
import { money, type Quantity, quantity } from "../../../src/quantity/index.js";

declare const feed: Fertilizer<"feed-a">;
const n = quantity(1, "lb/1000 ft2", "N");

test("results carry their dimension and their product", () => {
  expectTypeOf(liquidProductRate(n, feed)).toEqualTypeOf<Quantity<"volume/area", "product:feed-a">>();
  expectTypeOf(nutrientPerVolume(feed, "P2O5")).toEqualTypeOf<Quantity<"mass/volume", "P2O5">>();
  const highest = highestProductRate({ product: feed, caps: [{ limit: n }] });
  expectTypeOf(highest.rate).toEqualTypeOf<Quantity<"mass/area", "product:feed-a"> | undefined>();
  const price = money(9, "USD").per(quantity(50, "lb"));
  const cost = nutrientCost({ product: feed, price, nutrient: "N" });
  expectTypeOf(cost).toEqualTypeOf<Quantity<"money:USD/mass", "none/N">>();
});

test("percent of product is not taken for a share of the nitrogen", () => {
  const products = [feed, feed] as const;
  slowShareRates({ target: n, slowShare: quantity(50, "% w/w", "N:slow/N"), products });
  // @ts-expect-error a label figure is a share of the product
  slowShareRates({ target: n, slowShare: quantity(50, "% w/w", "N:slow/product"), products });
  // @ts-expect-error a share of the product is no requirement on the nitrogen
  highestProductRate({ product: feed, caps: [], leastSlowShare: quantity(4, "% w/w", "N:slow/product") });
});

test("a target is a rate by weight of a nutrient", () => {
  productRates({ steps: [{ target: n, product: feed }] });
  // @ts-expect-error a volume per area is no nutrient rate
  productRates({ steps: [{ target: quantity(1, "fl oz/1000 ft2", "N"), product: feed }] });
  // @ts-expect-error product is no nutrient
  productRates({ steps: [{ target: quantity(1, "lb/1000 ft2", "product"), product: feed }] });
});

test("two currencies never meet", () => {
  const price = money(9, "USD").per(quantity(50, "lb"));
  const worth = { P2O5: money(1, "EUR").per(quantity(1, "lb", "P2O5")) };
  // @ts-expect-error euros are not dollars
  nutrientCost({ product: feed, price, nutrient: "N", worth });
});

test("a grade written out is known to state its nutrients", () => {
  const bag = fertilizer({ id: "bag", analysis: "24-0-11", package: quantity(50, "lb") });
  const supplied = nutrientsSupplied(quantity(50, "lb", "product:bag"), bag);
  expectTypeOf(supplied.N).toEqualTypeOf<Quantity<"mass", "N">>();
  expectTypeOf(supplied.K).toEqualTypeOf<Quantity<"mass", "K">>();
  expectTypeOf(supplied.Fe).toEqualTypeOf<Quantity<"mass", "Fe"> | undefined>();
  expectTypeOf(bag.analysis.percent.N).toEqualTypeOf<number>();
  const elements = fertilizer({ id: "bag", analysis: "18-4-10", basis: "element" });
  expectTypeOf(elements.analysis.percent.P).toEqualTypeOf<number>();
  expectTypeOf(elements.analysis.percent.P2O5).toEqualTypeOf<number | undefined>();
  // A grade that a person typed states nothing that the compiler knows.
  const typed = fertilizer({ id: "bag", analysis: "24-0-11" as string });
  expectTypeOf(nutrientsSupplied(quantity(50, "lb", "product:bag"), typed).N).toEqualTypeOf<
    Quantity<"mass", "N"> | undefined
  >();
  expectTypeOf(bag).toExtend<Fertilizer<"bag">>();
  const stored: Fertilizer<"bag"> = bag;
  expectTypeOf(nutrientsSupplied(quantity(1, "lb", "product:bag"), stored).N).toEqualTypeOf<
    Quantity<"mass", "N"> | undefined
  >();
  expectTypeOf(productRate(n, bag)).toEqualTypeOf<Quantity<"mass/area", "product:bag">>();
  expectTypeOf(nutrientsSupplied(productRate(n, bag), bag).N).toEqualTypeOf<Quantity<"mass/area", "N">>();
});

test("a label by volume has rates by volume and nutrients by weight", () => {
  const jug = liquidFertilizer({ id: "jug", perVolume: { N: quantity(3, "lb/gal", "N") } });
  const rate = liquidProductRate(n, jug);
  expectTypeOf(rate).toEqualTypeOf<Quantity<"volume/area", "product:jug">>();
  expectTypeOf(nutrientsSupplied(rate, jug).N).toEqualTypeOf<Quantity<"mass/area", "N">>();
  // @ts-expect-error it has no rate by weight
  productRate(n, jug);
  expectTypeOf(nitrogenOf(quantity(27, "lb/acre", "NO3-N"))).toEqualTypeOf<Quantity<"mass/area", "N">>();
});
