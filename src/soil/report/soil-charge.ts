import { expectQuantity, fail, Quantity } from "../../quantity/index.js";
import { type EquivalentWeights, equivalentWeight, type Ion, isIon } from "./equivalent-weight.js";
import { substanceInSoil } from "./soil-content.js";

const ionOf = (of: string, path: string): Ion => {
  const name = substanceInSoil(of, path);
  return isIon(name)
    ? name
    : fail("substance/mismatch", path, of, "an ion, such as K/soil: an oxide goes through elementOf first");
};

/**
 * The charge of an exchangeable ion from its content by weight: `q = c / (10 w)`, in meq/100 g, which is cmolc/kg.
 *
 * - `c` content, mg/kg, of `Ca/soil`, `Mg/soil`, `K/soil`, `Na/soil`, `Al/soil`; zero or more
 * - `w` equivalent weight, mg/meq, see `equivalentWeight`
 *
 * @param weights - as in {@link equivalentWeight}
 * @throws RatewrightError `range`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: definition; "Soil unit conversions", university course notes.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { exchangeableCharge } from "ratewright/soil";
 * const calcium = exchangeableCharge(quantity(800, "mg/kg", "Ca/soil"), "whole numbers");
 * calcium.in("meq/100 g"); // => 4
 * ```
 */
export const exchangeableCharge = <E extends Ion>(
  content: Quantity<"mass/mass", `${E}/soil`>,
  weights: EquivalentWeights = "atomic weights",
): Quantity<"exchange capacity", `${E}/soil`> => {
  const q = expectQuantity(content, { dimension: "mass/mass", bound: "non-negative" }, "content");
  const weight = equivalentWeight(ionOf(q.of, "content"), weights);
  const value = q.in("ppm w/w") / (10 * weight);
  return new Quantity(value, "meq/100 g", q.of as `${E}/soil`, "exchange capacity");
};

/**
 * The content by weight of an exchangeable ion from its charge: `c = 10 w q`. The inverse of
 * {@link exchangeableCharge}.
 *
 * @param weights - as in {@link equivalentWeight}
 * @throws RatewrightError `range`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: definition; "Soil unit conversions", university course notes: 2 cmolc of aluminum a kilogram are 180 ppm.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { contentOfCharge } from "ratewright/soil";
 * contentOfCharge(quantity(2, "cmolc/kg", "Al/soil"), "whole numbers").in("mg/kg"); // => 180
 * ```
 */
export const contentOfCharge = <E extends Ion>(
  charge: Quantity<"exchange capacity", `${E}/soil`>,
  weights: EquivalentWeights = "atomic weights",
): Quantity<"mass/mass", `${E}/soil`> => {
  const q = expectQuantity(charge, { dimension: "exchange capacity", bound: "non-negative" }, "charge");
  const weight = equivalentWeight(ionOf(q.of, "charge"), weights);
  return new Quantity(q.in("meq/100 g") * 10 * weight, "ppm w/w", q.of as `${E}/soil`, "mass/mass");
};
