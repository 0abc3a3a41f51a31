import { exceeds } from "../../numeric/index.js";
import { allOf, expectFields, fail, numberIn, Quantity } from "../../quantity/index.js";
import { type Nutrient, percentOf } from "../label/analysis.js";
import { expectFertilizer, isOtherRecordOf } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { eachOf, listOf } from "../label/under-path.js";
import { productRate } from "../rate/product-rate.js";
import { expectTarget, type RateTarget } from "../rate/rate-target.js";
import { costPerArea } from "./cost-per-area.js";
import { nutrientCost } from "./nutrient-cost.js";
import { type ProductPrice, priceOf, pricePerMass } from "./product-price.js";

/** A product on offer. */
export interface PricedProduct<C extends string> {
  readonly product: Fertilizer;
  readonly price: ProductPrice<C>;
}

/** A source of a nutrient with its rate and cost for a target. */
export interface SourceCost<C extends string> {
  readonly product: string;
  readonly rate: Quantity<"mass/area", `product:${string}`>;
  readonly cost: Quantity<`money:${C}/area`, "none">;
  readonly perNutrient: Quantity<`money:${C}/mass`, string>;
}

/** Sources by rising cost, and those that cannot supply the nutrient. */
export interface CheapestSource<C extends string> {
  readonly type: "cheapest-source";
  readonly version: 1;
  readonly cheapest: SourceCost<C>;
  /** All sources that have the nutrient, cheapest first; equal ones, at a relative 1e-9, in the order given. */
  readonly sources: readonly SourceCost<C>[];
  /** Products without the nutrient. */
  readonly without: readonly string[];
}

/**
 * Sources of one nutrient for a target, cheapest first.
 *
 * Equation: `k = T * 100 / a * p`
 *
 * - `k` money per area; `T` target of the nutrient, mass per area
 * - `a` percent of the nutrient in the product, by weight; `p` price, money per mass
 *
 * The whole price falls on this one nutrient; where a source brings others that are wanted too, look at
 * {@link nutrientCost} with their worth. Labor and how long the response lasts are not in it.
 *
 * @throws RatewrightError `infeasible` where no product has the nutrient; `unit/mismatch` where two currencies meet;
 *   `duplicate` where two products have one id; `missing`, `range`
 *
 * Source: 46-0-0 at 412 USD, 34-0-0 at 370 USD and 27-0-0 at 330 USD per ton rank in this order ("Fertilizer -
 * buy the numbers", agricultural research foundation newsletter, Oklahoma).
 *
 * @example
 * ```ts
 * import { cheapestSource, fertilizer, money, quantity } from "ratewright";
 * const perTon = (amount: number) => money(amount, "USD").per(quantity(1, "US ton"));
 * const found = cheapestSource({
 *   target: quantity(1, "lb/1000 ft2", "N"),
 *   sources: [
 *     { product: fertilizer({ id: "nitrate", analysis: "34-0-0" }), price: perTon(370) },
 *     { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(412) },
 *     { product: fertilizer({ id: "potash", analysis: "0-0-60" }), price: perTon(400) },
 *   ],
 * });
 * found.sources.map(({ product }) => product); // => ["urea", "nitrate"]
 * Number(found.cheapest.cost.in("money:USD/acre").toFixed(2)); // => 19.51
 * found.without; // => ["potash"]
 * ```
 */
export const cheapestSource = <const C extends string>(input: {
  readonly target: RateTarget;
  readonly sources: readonly PricedProduct<C>[];
}): CheapestSource<C> => {
  expectFields(input, ["target", "sources"], "input");
  const { target, offers } = allOf({
    target: () => expectTarget(input.target, "target"),
    offers: () => readOffers<C>(input.sources),
  });
  const has = ({ product }: Offer<C>): boolean => percentOf(product.analysis, target.of) > 0;
  const without = offers.filter((offer) => !has(offer)).map(({ product }) => product.id);
  const sources = offers.filter(has).map(({ product, price }): SourceCost<C> => {
    const rate = productRate(target, product);
    const each = nutrientCost<C, Nutrient>({ product, price, nutrient: target.of });
    return {
      product: product.id,
      rate,
      cost: costPerArea<C, string>({ product, rate, price }),
      perNutrient: new Quantity<`money:${C}/mass`, string>(each.value, each.unit, each.of, each.dimension),
    };
  });
  const unit = sources[0]?.cost.unit as string;
  const cost = (source: SourceCost<C>): number => numberIn(source.cost, unit);
  // One price stated by the pound and by the ton is one price, whatever the last digit says.
  sources.sort((a, b) => Number(exceeds(cost(a), cost(b))) - Number(exceeds(cost(b), cost(a))));
  const cheapest =
    sources[0] ??
    fail(
      "infeasible",
      "sources",
      without.slice(0, 12).join(", "),
      `a product that states ${target.of}: none of these does`,
    );
  return { type: "cheapest-source", version: 1, cheapest, sources, without };
};

/** A product on offer, its price per weight. */
interface Offer<C extends string> {
  readonly product: Fertilizer;
  readonly price: Quantity<`money:${C}/mass`, "none">;
}

const mostOffers = 200;

const readOffers = <C extends string>(input: unknown): readonly Offer<C>[] => {
  const list = listOf(input, "sources", "{ product, price }", mostOffers);
  const seen: Fertilizer[] = [];
  let currency: string | undefined;
  return eachOf(list, "sources", (item): Offer<C> => {
    const offer = expectFields(item, ["product", "price"], "", "{ product, price }");
    const { product } = allOf({
      product: () => {
        const made = expectFertilizer(offer.product as Fertilizer, "product");
        const twin = seen.findIndex((one) => isOtherRecordOf(one, made));
        seen.push(made);
        return twin < 0
          ? made
          : fail(
              "duplicate",
              "product.id",
              made.id,
              `a different id: sources[${twin}] has it for another product`,
            );
      },
      price: () => {
        const [money] = priceOf(offer.price, "price").dimension.split("/");
        currency ??= money;
        return money === currency || fail("unit/mismatch", "price", offer.price, `a price in ${currency}`);
      },
    });
    return { product, price: pricePerMass(offer.price as ProductPrice<C>, product, "price") };
  });
};
