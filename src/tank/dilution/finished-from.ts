import { exceeds } from "../../numeric/index.js";
import { expectFields, fail, ofKind, type Quantity, unitSystem } from "../../quantity/index.js";
import type { ProductSubstance } from "../rate/rate.js";
import {
  amountOf,
  densityOf,
  expectConcentrate,
  expectStrengths,
  expectWeaker,
} from "./dilution-strength.js";

/**
 * How much finished spray of a wanted strength an amount of concentrate makes, `V2 = C1 V1 / C2`. It is
 * `concentrateFor` read the other way.
 *
 * @param input - `product`, a mass for a concentration by weight and a volume for the others, zero or
 *   more; `concentration` of it; `strength` of the spray; `density` of the finished spray where its
 *   strength is by weight in weight
 * @throws RatewrightError `infeasible` where the spray would be stronger than the concentrate; `missing`,
 *   `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: the equation of `concentrateFor`.
 *
 * @example
 * ```ts
 * import { finishedFrom, quantity } from "ratewright";
 * finishedFrom({
 *   product: quantity(2, "L", "product"),
 *   concentration: quantity(360, "g/L", "ai/product"),
 *   strength: quantity(7.2, "g/L", "ai/spray"),
 * }).in("L"); // => 100
 * ```
 */
export const finishedFrom = <
  const A extends string,
  const P extends ProductSubstance,
  C extends "mass/mass" | "mass/volume" | "volume/volume",
>(input: {
  readonly product: Quantity<C extends "mass/mass" ? "mass" : "volume", P>;
  readonly concentration: Quantity<C, `${A}/${NoInfer<P>}`>;
  readonly strength:
    | Quantity<"mass/mass", `${NoInfer<A>}/spray`>
    | Quantity<"mass/volume", `${NoInfer<A>}/spray`>
    | Quantity<"volume/volume", `${NoInfer<A>}/spray`>;
  readonly density?: Quantity<"mass/volume", "none">;
}): Quantity<"volume", "spray"> => {
  expectFields(input, ["product", "concentration", "strength", "density"]);
  const { inSpray, inProduct } = expectStrengths(input.strength, input.concentration);
  expectWeaker(inSpray, inProduct, input.strength);
  const { amount, measure, given } = expectConcentrate(input.product, inProduct);
  const made = (amount * inProduct.value) / inSpray.value;
  const liters = inSpray.dimension === "mass/mass" ? made / densityOf(input.density, "volume") : made;
  if (measure === "volume" && exceeds(amount, liters)) {
    fail("infeasible", "strength", input.strength, "a spray no stronger than the concentrate");
  }
  const unit = measure === "volume" ? given.unit : unitSystem(given.unit) === "metric" ? "L" : "gal";
  return ofKind<"volume", "spray">(amountOf(liters, "volume", unit, "spray"));
};
