import {
  allOf,
  expectAmount,
  expectFields,
  expectQuantity,
  fail,
  perOf,
  Quantity,
  timesOf,
} from "../../quantity/index.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { type ProductPrice, priceOf } from "./product-price.js";

/**
 * What a rate of a product costs per area.
 *
 * Equation: `k = R * p`
 *
 * - `k` money per area; `R` product rate, mass or volume per area; `p` price, money per mass or per volume.
 *   Where one is by weight and the other by volume the density of the product stands between.
 *
 * @throws RatewrightError `missing` where the density is needed and not there; `substance/mismatch` where the rate is
 *   of another product; `range`, `unit/mismatch`; what `fertilizer` throws for the record of a product
 *
 * Source: arithmetic.
 *
 * @example
 * ```ts
 * import { costPerArea, fertilizer, money, quantity } from "ratewright";
 * const feed = fertilizer({ id: "feed-a", analysis: "24-0-11" });
 * const cost = costPerArea({
 *   product: feed,
 *   rate: quantity(3.75, "lb/1000 ft2", "product:feed-a"),
 *   price: money(28, "USD").per(quantity(50, "lb")),
 * });
 * Number(cost.in("money:USD/acre").toFixed(2)); // => 91.48
 * ```
 */
export const costPerArea = <const C extends string, Id extends string>(input: {
  readonly product: Fertilizer<Id>;
  readonly rate: Quantity<"mass/area", `product:${Id}`> | Quantity<"volume/area", `product:${Id}`>;
  readonly price: ProductPrice<C>;
}): Quantity<`money:${C}/area`, "none"> => {
  expectFields(input, ["product", "rate", "price"], "input");
  const { product, rate, price } = allOf({
    product: () => expectFertilizer(input.product, "product"),
    rate: () =>
      expectAmount(input.rate, { dimensions: ["mass/area", "volume/area"], bound: "non-negative" }, "rate"),
    price: () => priceOf(input.price, "price"),
  });
  if (rate.of !== `product:${product.id}`) {
    fail("substance/mismatch", "rate", rate, `a quantity of product:${product.id}`);
  }
  const [rated, priced] = [rate.dimension === "volume/area", price.dimension.endsWith("/volume")];
  const untagged = new Quantity(rate.value, rate.unit, "none", rate.dimension);
  const through = (): Quantity<"mass/volume", "none"> =>
    product.density ??
    fail(
      "missing",
      "product.density",
      undefined,
      `a density: the rate is by ${rated ? "volume" : "weight"}, the price by ${priced ? "volume" : "weight"}`,
    );
  const cost =
    rated === priced
      ? timesOf(untagged, price)
      : rated
        ? timesOf(timesOf(untagged, through()), price)
        : timesOf(untagged, perOf(price, through()));
  const currency = price.dimension.split("/")[0] as `money:${C}`;
  return expectQuantity(cost, { dimension: `${currency}/area`, of: "none" }, "cost");
};
