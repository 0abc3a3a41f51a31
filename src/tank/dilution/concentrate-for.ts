import { exceeds } from "../../numeric/index.js";
import { expectFields, fail, ofKind, type Quantity, quantityOf } from "../../quantity/index.js";
import type { ProductSubstance } from "../rate/rate.js";
import {
  amountOf,
  expectStrengths,
  expectWeaker,
  finishedFor,
  type MeasuredOut,
  type StrengthDimension,
} from "./dilution-strength.js";

/** What goes into a finished spray of a wanted strength. */
export interface Dilution<D extends "mass" | "volume", P extends string> {
  readonly type: "dilution";
  readonly version: 1;
  /** Of the concentrate; by weight where its strength is by weight alone, else by volume. */
  readonly product: Quantity<D, P>;
  /** What is filled up with, where product and spray are measured alike: the difference of the two. */
  readonly carrier?: Quantity<D, "water">;
}

/**
 * How much of a concentrate a spray of a wanted strength takes, `C1 V1 = C2 V2`, so `V1 = V2 C2 / C1`:
 *
 * - `C2` strength of the finished spray (`ai/spray`), `C1` of the concentrate (`ai/product`), each in
 *   % w/w, % v/v, ppm or a weight per volume; both by volume or both by weight
 * - `V2` finished spray, `V1` concentrate
 *
 * A strength by weight of a spray that is measured by volume needs the `density` of the spray: about
 * 8.34 lb/gal or 1 kg/L for one that is nearly water (some tables take a round 8 lb/gal and come out
 * 4 % lower). The carrier is the difference, for volumes that add; a mix of water and alcohol shrinks.
 *
 * @param input - `strength`, `concentration`, `finished` (volume or mass of spray), all more than zero;
 *   `density` of the finished spray where it is needed
 * @throws RatewrightError `infeasible` where the spray would be stronger than the concentrate; `missing`,
 *   `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: Pesticides in the Military, subcourse MD0173, US Army Medical Department Center and School,
 * p. 36-37 (Q = A x S x D / C).
 *
 * @example
 * ```ts
 * import { concentrateFor, quantity } from "ratewright";
 * const powder = concentrateFor({
 *   strength: quantity(2, "% w/w", "ai/spray"),
 *   concentration: quantity(80, "% w/w", "ai/product:carbaryl"),
 *   finished: quantity(5, "gal", "spray"),
 *   density: quantity(8.34, "lb/gal"),
 * });
 * Number(powder.product.in("lb").toFixed(4)); // => 1.0425
 * const bath = concentrateFor({
 *   strength: quantity(500, "ppm v/v", "ai/spray"),
 *   concentration: quantity(5, "% v/v", "ai/product"),
 *   finished: quantity(10, "L", "spray"),
 * });
 * Number(bath.product.in("mL").toFixed(6)); // => 100
 * bath.carrier?.in("L"); // => 9.9
 * ```
 */
export const concentrateFor = <
  const A extends string,
  const P extends ProductSubstance,
  C extends StrengthDimension,
>(input: {
  readonly strength:
    | Quantity<"mass/mass", `${A}/spray`>
    | Quantity<"mass/volume", `${A}/spray`>
    | Quantity<"volume/volume", `${A}/spray`>;
  readonly concentration: Quantity<C, `${NoInfer<A>}/${P}`>;
  readonly finished: Quantity<"volume", "spray"> | Quantity<"mass", "spray">;
  readonly density?: Quantity<"mass/volume", "none">;
}): Dilution<MeasuredOut<C>, P> => {
  expectFields(input, ["strength", "concentration", "finished", "density"]);
  const { inSpray, inProduct } = expectStrengths(input.strength, input.concentration);
  const finished = finishedFor(input.finished, inSpray, input.density);
  expectWeaker(inSpray, inProduct, input.strength);
  const needed = (finished.amount * inSpray.value) / inProduct.value;
  const measure = inProduct.dimension === "mass/mass" ? "mass" : "volume";
  const unit =
    measure === finished.measure
      ? finished.unit
      : { US: { mass: "lb", volume: "gal" }, metric: { mass: "kg", volume: "L" } }[finished.system][measure];
  const product = amountOf(needed, measure, unit, inProduct.bottom);
  const carrier = finished.value - product.value;
  if (measure === finished.measure && exceeds(product.value, finished.value)) {
    fail("infeasible", "strength", input.strength, "a spray no stronger than the concentrate");
  }
  return {
    type: "dilution",
    version: 1,
    product: ofKind<MeasuredOut<C>, P>(product),
    // Within the guard the concentrate is sprayed as it is, and there is no carrier to speak of.
    ...(measure === finished.measure && {
      carrier: quantityOf<MeasuredOut<C>, "water">(Math.max(0, carrier), unit, "water", "carrier"),
    }),
  };
};
