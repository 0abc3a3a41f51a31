import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectAmount,
  expectFields,
  expectQuantity,
  fail,
  numberIn,
  perOf,
  Quantity,
  timesOf,
} from "../../quantity/index.js";
import { percentOf } from "../label/analysis.js";
import { expectFertilizer, isOtherRecordOf } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { formFactor } from "../label/forms.js";
import { isNutrient, type Nutrient, nutrients } from "../label/nutrient.js";
import { eachOf, listOf } from "../label/under-path.js";
import { productRate } from "../rate/product-rate.js";
import { expectTarget, type RateTarget } from "../rate/rate-target.js";
import { type ProductPrice, priceOf, pricePerMass } from "./product-price.js";

/** What one unit of other nutrients is worth, by nutrient. */
export type NutrientWorth<C extends string> = {
  readonly [S in Nutrient]?: Quantity<`money:${C}/mass`, `none/${S}`>;
};

/**
 * What a unit of a nutrient costs in a product; with the worth of its other nutrients taken off, where
 * that is given.
 *
 * Equation: `c = (p - sum over others of w_j * a_j / 100) * 100 / a`
 *
 * - `c` money per mass of the nutrient
 * - `p` price, money per mass of product; a price per volume is divided by the density
 * - `a` percent of the nutrient in the product, by weight; `a_j` of the others
 * - `w_j` worth of another nutrient, money per mass of it, in the form in which it is named
 *
 * Without `worth` the whole price falls on the one nutrient, which is right for a material that has no other.
 *
 * Range: prices of zero or more, one currency. What the spreading costs and how long a source lasts is not in it.
 *
 * @throws RatewrightError `infeasible` where the product has none of the nutrient; `conflict` where the
 *   others are worth more than the price, or where one nutrient is valued twice; `unit/mismatch` for another
 *   currency; `missing` where a price per volume has no density; `substance/unknown` for a worth that is no
 *   nutrient of an analysis; `range`, `substance/mismatch`
 *
 * Source: urea (46 % N) at 700 USD per ton is 0.76 USD per lb of N (University of Wisconsin Extension, "Time
 * for some fertilizer math"); subtraction, Purdue University Agronomy, "Fertilizer reckoning".
 *
 * @example
 * ```ts
 * import { fertilizer, money, nutrientCost, quantity } from "ratewright";
 * const urea = fertilizer({ id: "urea", analysis: "46-0-0" });
 * const price = money(700, "USD").per(quantity(1, "US ton"));
 * const cost = nutrientCost({ product: urea, price, nutrient: "N" });
 * Number(cost.in("money:USD/lb").toFixed(2)); // => 0.76
 * const dap = fertilizer({ id: "dap", analysis: "18-46-0" });
 * const phosphate = nutrientCost({
 *   product: dap,
 *   price: money(0.3, "USD").per(quantity(1, "lb")),
 *   nutrient: "P2O5",
 *   worth: { N: money(0.5, "USD").per(quantity(1, "lb", "N")) },
 * });
 * Number(phosphate.in("money:USD/lb").toFixed(4)); // => 0.4565
 * ```
 */
export const nutrientCost = <const C extends string, S extends Nutrient>(input: {
  readonly product: Fertilizer;
  readonly price: ProductPrice<C>;
  readonly nutrient: S;
  readonly worth?: NutrientWorth<NoInfer<C>>;
}): Quantity<`money:${C}/mass`, `none/${S}`> => {
  expectFields(input, ["product", "price", "nutrient", "worth"], "input");
  const { product, nutrient, worth } = allOf({
    product: () => expectFertilizer(input.product, "product"),
    nutrient: () =>
      isNutrient(input.nutrient)
        ? input.nutrient
        : fail("type", "nutrient", input.nutrient, "a nutrient, such as N or P2O5"),
    price: () => priceOf(input.price, "price"),
    worth: () => readWorth(input.worth, input.nutrient, currencyOf(input.price)),
  });
  const price = pricePerMass(input.price, product, "price");
  const percent = percentOf(product.analysis, nutrient);
  if (!(percent > 0)) fail("infeasible", "nutrient", nutrient, `a nutrient of ${product.id}`);
  const rest = worth.reduce(
    (left, [other, each]) => left - (numberIn(each, price.unit) * percentOf(product.analysis, other)) / 100,
    price.value,
  );
  if (rest < -1e-9 * price.value) {
    const text = `other nutrients worth at most the price; they exceed it by ${Number((-rest).toPrecision(4))} ${price.unit}`;
    fail("conflict", "worth", input.worth, text);
  }
  return new Quantity((Math.max(0, rest) * 100) / percent, price.unit, `none/${nutrient}`, price.dimension);
};

/** The currency of a price that may be none. */
const currencyOf = (price: unknown): string | undefined => {
  const unit: unknown = Object(price).unit;
  return typeof unit === "string" ? /^money:[A-Z]{3}/.exec(unit)?.[0] : undefined;
};

/** The worth of other nutrients, each once, in the currency of the price where that can be read. */
const readWorth = (
  worth: unknown,
  nutrient: string,
  currency: string | undefined,
): readonly (readonly [Nutrient, Quantity<string, `none/${Nutrient}`>])[] => {
  if (worth === undefined) return [];
  const wanted = 'worth by nutrient, such as { N: money(0.5, "USD").per(quantity(1, "lb", "N")) }';
  const record = expectFields(worth, nutrients, "worth", wanted);
  const valued: string[] = [nutrient];
  const stated = nutrients.filter((other) => record[other] !== undefined);
  return eachOf(
    stated,
    "worth",
    (other) => {
      const each = record[other];
      if (valued.some((form) => isNutrient(form) && formFactor(form, other) !== undefined)) {
        fail("conflict", "", other, "another nutrient than the one asked for, each once");
      }
      valued.push(other);
      const dimension = `${currency ?? currencyOf(each) ?? "money:USD"}/mass`;
      return [
        other,
        expectQuantity(each, { dimension, of: `none/${other}`, bound: "non-negative" }, ""),
      ] as const;
    },
    (other) => `worth.${other}`,
  );
};

/**
 * What a rate of a product costs per area.
 *
 * Equation: `k = R * p`
 *
 * - `k` money per area; `R` product rate, mass or volume per area; `p` price, money per mass or per volume.
 *   Where one is by weight and the other by volume the density of the product stands between.
 *
 * @throws RatewrightError `missing` where the density is needed and not there; `substance/mismatch` where
 *   the rate is of another product; `range`, `unit/mismatch`
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
  const cheapest = sources[0] ?? fail("infeasible", "sources", without, `a product with ${target.of}`);
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
              `an id of its own: sources[${twin}] has another product under it`,
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
