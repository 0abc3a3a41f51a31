import { expectQuantity, fail, Quantity } from "../../quantity/index.js";
import { isNutrient, type Nutrient } from "../label/nutrient.js";

/** A target rate of one nutrient: `quantity(0.9, "lb/1000 ft2", "N")`. */
export type RateTarget = { readonly [S in Nutrient]: Quantity<"mass/area", S> }[Nutrient];

/** Takes a target rate of a nutrient, zero or more, or throws with its path. */
export const expectTarget = (input: unknown, path: string): Quantity<"mass/area", Nutrient> => {
  const target = expectQuantity(input, { dimension: "mass/area", bound: "non-negative" }, path);
  const { value, unit, of } = target;
  return isNutrient(of)
    ? new Quantity<"mass/area", Nutrient>(value, unit, of, "mass/area")
    : fail("substance/mismatch", path, target, "a rate of a nutrient, such as N or P2O5");
};
