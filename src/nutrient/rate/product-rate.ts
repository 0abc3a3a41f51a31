import { expectQuantity, fail, Quantity } from "../../quantity/index.js";
import { type Nutrient, percentAt } from "../label/analysis.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { isNutrient } from "../label/nutrient.js";
import { statesNone } from "../label/states-none.js";

/**
 * How much product to put down per area for a target rate of one nutrient.
 *
 * Equation: `R = T * 100 / a`
 *
 * - `R` product rate, mass per area
 * - `T` target rate of the nutrient, mass per area, zero or more
 * - `a` percent of that nutrient in the product, by weight, as the label prints it
 *
 * The nutrient of the target decides which percentage counts. A target in elemental P against a label
 * in P2O5 is converted by atomic weights, and so is K against K2O.
 *
 * Range: any target of zero or more; a product whose analysis states some of the nutrient. The rate is by weight; of a
 * liquid {@link liquidProductRate} gives it by volume, and takes a label by volume too.
 *
 * @param target - rate of the nutrient: `quantity(0.9, "lb/1000 ft2", "N")`
 * @param product - a record made by {@link fertilizer}
 * @throws RatewrightError `infeasible` at the analysis where the product states none of the nutrient, and at the target where
 *   that is of something that no analysis states; `missing` for a liquid without a density, which nobody can weigh out;
 *   `substance/mismatch` where the target is of nothing; `unit/mismatch`, `range`, `type`
 *
 * Source: University of Nebraska-Lincoln Extension, "Lawn fertilizer calculations": 1 lb N per
 * 1000 ft2 from 28-3-6 takes 3.57 lb per 1000 ft2.
 *
 * @example
 * ```ts
 * import { fertilizer, productRate, quantity } from "ratewright";
 * const feed = fertilizer({ id: "feed-a", analysis: "24-0-11" });
 * const rate = productRate(quantity(0.9, "lb/1000 ft2", "N"), feed);
 * rate.in("lb/1000 ft2"); // => 3.75
 * rate.of; // => "product:feed-a"
 * productRate(quantity(0.9, "lb/1000 ft2", "P2O5"), feed); // => throws infeasible
 * ```
 */
export const productRate = <S extends Nutrient, Id extends string>(
  target: Quantity<"mass/area", S>,
  product: Fertilizer<Id>,
): Quantity<"mass/area", `product:${Id}`> => {
  const { value, unit, of } = expectQuantity(target, nonNegativeRate, "target");
  if (
    product?.form === "liquid"
      ? !product.density
      : (product as { type?: string })?.type === "liquid-fertilizer"
  ) {
    fail(
      "missing",
      "product.density",
      undefined,
      "the density of a liquid; liquidProductRate(target, product) is by volume",
    );
  }
  if (Object(product) !== product) fail("type", "product", product, "a record made by fertilizer(...)");
  const percent = percentAt(product.analysis, of as Nutrient, "product.analysis");
  const { id } = product;
  if (typeof id !== "string") fail("type", "product.id", id, "the id of a fertilizer");
  if (!(percent > 0)) {
    if (isNutrient(of)) statesNone(product, of);
    fail(
      (of as string) === "none" ? "substance/mismatch" : "infeasible",
      "target",
      target,
      `a rate of a nutrient${/^N[:HO]/.test(of) ? "; nitrogenOf(amount) counts it as N" : ", such as N or P2O5"}`,
    );
  }
  return new Quantity((value * 100) / percent, unit, `product:${id}`, "mass/area");
};

const nonNegativeRate = { dimension: "mass/area", bound: "non-negative" } as const;
