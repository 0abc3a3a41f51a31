import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  numberIn,
  Quantity,
  shown,
} from "../../quantity/index.js";
import { percentOf } from "../label/analysis.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { formFactor } from "../label/forms.js";
import { isNutrient, type Nutrient, nutrients } from "../label/nutrient.js";
import { statesNone } from "../label/states-none.js";
import { eachOf } from "../label/under-path.js";
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
 * @throws RatewrightError `infeasible` where the product has none of the nutrient; `conflict` where the others are
 *   worth more than the price, or where one nutrient is valued twice; `unit/mismatch` for another currency; `missing`
 *   where a price per volume has no density; `substance/unknown` for a worth that is no nutrient of an analysis;
 *   `range`, `substance/mismatch`; what `fertilizer` throws for the record of a product
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
  if (!(percent > 0)) statesNone(product, nutrient);
  const rest = worth.reduce(
    (left, [other, each]) => left - (numberIn(each, price.unit) * percentOf(product.analysis, other)) / 100,
    price.value,
  );
  if (rest < -1e-9 * price.value) {
    const text = `other nutrients worth at most the price; they exceed it by ${shown(Number((-rest).toPrecision(4)))} ${price.unit}`;
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
    (other) => `worth.${other}`,
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
  );
};
