import { exceeds } from "../../numeric/index.js";
import {
  type Checks,
  checks,
  expectAmount,
  expectQuantity,
  expectRecord,
  fail,
  Quantity,
} from "../../quantity/index.js";
import { isNutrient, type Nutrient, percentOf } from "../label/analysis.js";
import { expectFertilizer, refuseTwin } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { formFactor } from "../label/forms.js";
import { productRate } from "../rate/product-rate.js";
import { expectTarget, type RateTarget } from "../rate/rate-target.js";
import { type Priced, type ProductPrice, priceOf, pricePerMass } from "./product-price.js";

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
  expectRecord(input, "input");
  const { nutrient } = input;
  const door = checks();
  const made = door.run(() => expectFertilizer(input.product, "product"));
  door.run(() => {
    if (!isNutrient(nutrient)) fail("type", "nutrient", nutrient, "a nutrient, such as N or P2O5");
  });
  const asked = door.run(() =>
    made === undefined ? priceOf(input.price, "price") : pricePerMass(input.price, made, "price"),
  );
  const worths = readWorth(input.worth, nutrient, asked?.dimension.split("/")[0], door);
  door.done();
  const [product, price] = [made as Fertilizer, asked as Quantity<`money:${C}/mass`, "none">];
  const percent = percentOf(product.analysis, nutrient);
  if (!(percent > 0)) fail("infeasible", "nutrient", nutrient, `a nutrient of ${product.id}`);
  let rest = price.value;
  for (const [other, each] of worths) {
    rest -= (each.in(price.unit as never) * percentOf(product.analysis, other)) / 100;
  }
  if (rest < -1e-9 * price.value) {
    const text = `other nutrients worth at most the price; they exceed it by ${Number((-rest).toPrecision(4))} ${price.unit}`;
    fail("conflict", "worth", input.worth, text);
  }
  return new Quantity((Math.max(0, rest) * 100) / percent, price.unit, `none/${nutrient}`, price.dimension);
};

/** The worth of other nutrients, each once, in the currency of the price where that can be read. */
const readWorth = (
  worth: unknown,
  nutrient: string,
  currency: string | undefined,
  door: Checks,
): (readonly [Nutrient, Quantity<string, string>])[] => {
  if (worth === undefined) return [];
  const wanted = 'worth by nutrient, such as { N: money(0.5, "USD").per(quantity(1, "lb", "N")) }';
  const record = door.run(() => expectRecord(worth, "worth", wanted)) ?? {};
  const valued = [nutrient];
  const found: (readonly [Nutrient, Quantity<string, string>])[] = [];
  for (const [other, each] of Object.entries(record)) {
    const path = `worth.${other}`;
    door.run(() => {
      if (!isNutrient(other)) return fail("substance/unknown", path, other, "a nutrient, such as N or P2O5");
      if (valued.some((form) => formFactor(form, other) !== undefined)) {
        fail("conflict", path, other, "another nutrient than the one asked for, each once");
      }
      valued.push(other);
      const of = `none/${other}`;
      if (currency === undefined) return;
      const dimension = `${currency}/mass`;
      found.push([other, expectQuantity(each, { dimension, of, bound: "non-negative" }, path)]);
    });
  }
  return found;
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
  expectRecord(input, "input");
  const door = checks();
  const made = door.run(() => expectFertilizer(input.product, "product"));
  const given = door.run(() => {
    const dimensions = ["mass/area", "volume/area"] as const;
    const rate = expectAmount(input.rate, { dimensions, bound: "non-negative" }, "rate");
    if (made !== undefined && rate.of !== `product:${made.id}`) {
      fail("substance/mismatch", "rate", rate, `a quantity of product:${made.id}`);
    }
    return rate;
  });
  const asked = door.run(() => priceOf(input.price, "price"));
  const byVolume = [given?.dimension === "volume/area", asked?.dimension.endsWith("/volume")];
  const density =
    made === undefined || given === undefined || asked === undefined || byVolume[0] === byVolume[1]
      ? undefined
      : (made.density ??
        door.run(() => {
          const why = `a density: the rate is by ${byVolume[0] ? "volume" : "weight"}, the price by ${byVolume[1] ? "volume" : "weight"}`;
          return fail("missing", "product.density", undefined, why);
        }));
  door.done();
  const [rate, price] = [given as Quantity<"mass/area" | "volume/area", string>, asked as Priced];
  const untagged = new Quantity(rate.value, rate.unit, "none", rate.dimension);
  if (density === undefined) return untagged.times(price as never) as never;
  return byVolume[0]
    ? ((untagged.times(density as never) as unknown as Priced).times(price as never) as never)
    : (untagged.times(price.per(density as never) as never) as never);
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
  expectRecord(input, "input");
  const door = checks();
  const asked = door.run(() => expectTarget(input.target, "target"));
  if (!Array.isArray(input.sources) || input.sources.length === 0) {
    door.run(() => fail("missing", "sources", input.sources, "at least one { product, price }"));
    door.done();
  }
  let currency: string | undefined;
  const offers = (input.sources as readonly (PricedProduct<C> | null | undefined)[]).map((offer, i) => {
    const product = door.run(() => expectFertilizer(offer?.product as Fertilizer, `sources[${i}].product`));
    if (product !== undefined) door.run(() => refuseTwin(input.sources, i, "sources"));
    const price = door.run(() => {
      if (!offer) return undefined;
      const path = `sources[${i}].price`;
      const each =
        product === undefined
          ? priceOf(offer.price, path)
          : pricePerMass(offer.price as ProductPrice<C>, product, path);
      const money = each.dimension.split("/")[0];
      currency ??= money;
      return money === currency ? each : fail("unit/mismatch", path, offer.price, `a price in ${currency}`);
    });
    return { product: product as Fertilizer, price: price as Quantity<`money:${C}/mass`, "none"> };
  });
  door.done();
  const target = asked as ReturnType<typeof expectTarget>;
  const without: string[] = [];
  const sources: SourceCost<C>[] = [];
  for (const { product, price } of offers) {
    if (!(percentOf(product.analysis, target.of) > 0)) {
      without.push(product.id);
      continue;
    }
    const rate = productRate(target, product);
    sources.push({
      product: product.id,
      rate,
      cost: costPerArea({ product, rate, price }) as Quantity<`money:${C}/area`, "none">,
      perNutrient: nutrientCost({ product, price, nutrient: target.of }) as never,
    });
  }
  const unit = sources[0]?.cost.unit as string;
  const cost = (source: SourceCost<C>): number => source.cost.in(unit as never);
  // One price stated by the pound and by the ton is one price, whatever the last digit says.
  sources.sort((a, b) => Number(exceeds(cost(a), cost(b))) - Number(exceeds(cost(b), cost(a))));
  const cheapest = sources[0] ?? fail("infeasible", "sources", without, `a product with ${target.of}`);
  return { type: "cheapest-source", version: 1, cheapest, sources, without };
};
