import { allOf, expectAmount, fail, Quantity } from "../../quantity/index.js";
import { percentOf } from "../label/analysis.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { isNutrient, type Nutrient } from "../label/nutrient.js";
import { statesNone } from "../label/states-none.js";

/**
 * How much product holds an amount of one nutrient: the 5 lb of N that a part needs, not a rate.
 *
 * Equation: `M = m * 100 / a`
 *
 * - `M` product, mass; `m` nutrient, mass, zero or more
 * - `a` percent of that nutrient in the product, by weight
 *
 * For a rate per area use {@link productRate}; for what an amount of product holds, {@link nutrientsSupplied}.
 *
 * @throws RatewrightError `infeasible` where the product contains none of the nutrient; `substance/mismatch`,
 *   `unit/mismatch`, `range`, `type`; what `fertilizer` throws for the record of a product
 *
 * Source: 5 lb of N from 35 % N take 14.3 lb ("Four steps in fertilizer calculations", turf management lecture).
 *
 * @example
 * ```ts
 * import { fertilizer, productMass, quantity } from "ratewright";
 * const feed = fertilizer({ id: "feed-a", analysis: "25-0-10" });
 * productMass(quantity(5, "lb", "N"), feed).in("lb"); // => 20
 * ```
 */
export const productMass = <S extends Nutrient, Id extends string>(
  nutrient: Quantity<"mass", S>,
  product: Fertilizer<Id>,
): Quantity<"mass", `product:${Id}`> => {
  const { wanted, label } = allOf({
    wanted: () => readMass(nutrient),
    label: () => expectFertilizer(product, "product"),
  });
  const of: string = wanted.of;
  if (!isNutrient(of))
    return fail("substance/mismatch", "nutrient", wanted, "a mass of a nutrient, such as N");
  const percent = percentOf(label.analysis, of);
  return percent > 0
    ? new Quantity((wanted.value * 100) / percent, wanted.unit, `product:${label.id}`, "mass")
    : statesNone(label, of);
};

/** A rate per area is another question: its function is named. */
const readMass = (nutrient: unknown): Quantity<"mass" | "mass/area", string> => {
  const given = expectAmount(
    nutrient,
    { dimensions: ["mass", "mass/area"], bound: "non-negative" },
    "nutrient",
  );
  return given.dimension === "mass"
    ? given
    : fail("unit/mismatch", "nutrient", given, "a mass; productRate(target, product) takes a rate per area");
};
