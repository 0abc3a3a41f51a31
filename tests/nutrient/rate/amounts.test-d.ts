import { expectTypeOf, test } from "vitest";
import {
  type Fertilizer,
  highestProductRate,
  liquidProductRate,
  nutrientCost,
  nutrientPerVolume,
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
