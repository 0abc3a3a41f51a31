import { allOf, expectQuantity, fail, Quantity } from "../../quantity/index.js";
import { percentOf } from "../label/analysis.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { isNutrient, type Nutrient } from "../label/nutrient.js";
import { statesNone } from "../label/states-none.js";

/**
 * The product that brings a volume of water to a concentration of one nutrient. In water that is this
 * thin, parts per million are milligrams per liter.
 *
 * Equation: `P = c * 100 / a`
 *
 * - `P` product per volume of solution, mass per volume
 * - `c` concentration of the nutrient, mass per volume (mg/L), zero or more
 * - `a` percent of that nutrient in the product
 *
 * In customary units `oz per 100 gal = ppm / (74.89 a / 100)`; handbooks round the constant to 75. The
 * volume is that of the final solution; fill up to it, for the salt takes a
 * little room too. Phosphate and potash are oxides: 100 ppm of P2O5 are 43.6 ppm of P.
 *
 * @param concentration - of the nutrient in the solution: `quantity(200, "mg/L", "N")`
 * @throws RatewrightError `infeasible` where the product contains none of the nutrient; `range`, `unit/mismatch`,
 *   `substance/mismatch`; what `fertilizer` throws for the record of a product
 *
 * Source: University of Massachusetts Extension, "Fertilizer calculations for greenhouse crops":
 * 200 ppm N takes 13.5 oz of 20-20-20 per 100 gal (a rounded label figure; 13.35 by the equation).
 *
 * @example
 * ```ts
 * import { fertilizer, productForConcentration, quantity } from "ratewright";
 * const salt = fertilizer({ id: "salt", analysis: "20-20-20" });
 * const product = productForConcentration(quantity(200, "mg/L", "N"), salt);
 * Number((100 * product.in("oz/gal")).toFixed(2)); // => 13.35
 * ```
 */
export const productForConcentration = <S extends Nutrient, Id extends string>(
  concentration: Quantity<"mass/volume", S>,
  product: Fertilizer<Id>,
): Quantity<"mass/volume", `product:${Id}`> => {
  const { wanted, label } = allOf({
    wanted: () =>
      expectQuantity(concentration, { dimension: "mass/volume", bound: "non-negative" }, "concentration"),
    label: () => expectFertilizer(product, "product"),
  });
  const of: string = wanted.of;
  if (!isNutrient(of))
    return fail("substance/mismatch", "concentration", wanted, "a concentration of a nutrient, such as N");
  const percent = percentOf(label.analysis, of);
  if (!(percent > 0)) statesNone(label, of);
  return new Quantity((wanted.value * 100) / percent, wanted.unit, `product:${label.id}`, "mass/volume");
};

/**
 * The concentration of one nutrient in a solution of so much product per volume: the way back from
 * {@link productForConcentration}.
 *
 * Equation: `c = P * a / 100`
 *
 * - `P` product per volume of final solution, zero or more
 * - `a` percent of the nutrient in the product; one that the label does not state counts 0
 *
 * @param amount - product per volume of final solution, of this very product
 * @param nutrient - in any form: elemental P from P2O5 is converted by atomic weights
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: as {@link productForConcentration}.
 *
 * @example
 * ```ts
 * import { concentrationOf, fertilizer, quantity } from "ratewright";
 * const salt = fertilizer({ id: "salt", analysis: "20-20-20" });
 * const water = concentrationOf(quantity(1, "g/L", "product:salt"), salt, "N");
 * water.in("mg/L"); // => 200
 * ```
 */
export const concentrationOf = <const S extends Nutrient, Id extends string>(
  amount: Quantity<"mass/volume", `product:${Id}`>,
  product: Fertilizer<Id>,
  nutrient: S,
): Quantity<"mass/volume", S> => {
  const label = expectFertilizer(product, "product");
  const { given } = allOf({
    given: () =>
      expectQuantity(
        amount,
        { dimension: "mass/volume", of: `product:${label.id}`, bound: "non-negative" },
        "amount",
      ),
    nutrient: () =>
      isNutrient(nutrient) || fail("type", "nutrient", nutrient, "a nutrient, such as N or P2O5"),
  });
  const percent = percentOf(label.analysis, nutrient);
  return new Quantity((given.value * percent) / 100, given.unit, nutrient, "mass/volume");
};
