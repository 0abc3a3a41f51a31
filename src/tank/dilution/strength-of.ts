import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  fail,
  inUnit,
  ofKind,
  type Quantity,
  quantityOf,
  unitSystem,
} from "../../quantity/index.js";
import { sprayOf } from "../inputs.js";
import type { ProductSubstance } from "../rate/rate.js";
import { expectConcentrate, expectStrength } from "./dilution-strength.js";

/** How the spray of a concentrate of this measure is measured: by weight per volume, or by volume. */
type MadeOf<C extends string> = C extends "volume/volume" ? "volume/volume" : "mass/volume";

/**
 * The strength of a finished spray into which an amount of concentrate went, `C2 = C1 V1 / V2`: as a
 * weight per volume (`lb/gal`, `kg/L`) where the strength of the concentrate is by weight, by volume
 * where it is by volume. It is `concentrateFor` read the other way.
 *
 * @param input - `product` that went in, a mass for a concentration by weight and a volume for the
 *   others, zero or more; `concentration` of it; `finished`, the volume of spray made
 * @throws RatewrightError `infeasible` where the product is more than the spray; `missing`, `range`,
 *   `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: Virginia Department of Wildlife Resources, Formulas for determining application rates (1 % is
 * 10 g/L, 38 g/gal).
 *
 * @example
 * ```ts
 * import { quantity, strengthOf } from "ratewright";
 * const made = strengthOf({
 *   product: quantity(1, "oz", "product"),
 *   concentration: quantity(33, "% w/w", "N/product"),
 *   finished: quantity(100, "gal", "spray"),
 * });
 * Number(made.in("mg/L").toFixed(2)); // => 24.71
 * ```
 */
export const strengthOf = <
  const A extends string,
  const P extends ProductSubstance,
  C extends "mass/mass" | "mass/volume" | "volume/volume",
>(input: {
  readonly product: Quantity<C extends "mass/mass" ? "mass" : "volume", P>;
  readonly concentration: Quantity<C, `${A}/${NoInfer<P>}`>;
  readonly finished: Quantity<"volume", "spray">;
}): Quantity<MadeOf<C>, `${A}/spray`> => {
  expectFields(input, ["product", "concentration", "finished"]);
  const inProduct = expectStrength(input.concentration, "concentration", "product");
  const { product, finished } = allOf({
    product: () => expectConcentrate(input.product, inProduct),
    finished: () =>
      input.finished === undefined
        ? fail("missing", "finished", undefined, "a volume of spray")
        : sprayOf(input.finished, "finished"),
  });
  const { amount, measure, given } = product;
  const liters = finished.in("L");
  if (measure === "volume" && exceeds(amount, liters)) {
    fail("infeasible", "product", given, "no more than the spray that it went into");
  }
  const value = (amount * inProduct.value) / liters;
  const of = `${inProduct.top}/spray`;
  if (inProduct.dimension === "volume/volume") {
    return ofKind<MadeOf<C>, `${A}/spray`>(quantityOf(value * 100, "% v/v", of, "strength"));
  }
  const weight = quantityOf(value, "kg/L", of, "strength");
  return ofKind<MadeOf<C>, `${A}/spray`>(
    unitSystem(finished.unit) === "metric" ? weight : inUnit(weight, "lb/gal"),
  );
};
