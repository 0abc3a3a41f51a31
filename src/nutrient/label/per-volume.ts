import { described } from "../../quantity/house.js";
import { expectFields, expectQuantity, fail, type Quantity } from "../../quantity/index.js";
import { type Nutrient, nutrients } from "./nutrient.js";
import { oxideFactor } from "./oxide-factor.js";
import { eachOf } from "./under-path.js";

/** Nutrients of a label by volume, in lb per gallon or percent weight by volume: mass of nutrient per volume of product. */
export type NutrientsPerVolume = { readonly [S in Nutrient]?: Quantity<"mass/volume", S> };

/** The nutrients of a label in percent weight by volume or in weight per volume, each in one form. */
export const readPerVolume = (
  input: unknown,
  path = "perVolume",
): readonly (readonly [Nutrient, Quantity<"mass/volume", Nutrient>])[] => {
  const given = expectFields(input, nutrients, path, "nutrients, each in mass per volume");
  const stated = nutrients.filter((nutrient) => given[nutrient] !== undefined);
  if (stated.length === 0) fail("missing", path, input, "at least one nutrient");
  return eachOf(
    stated,
    (of) => `${path}.${of}`,
    (of) => {
      const twin = stated.find(
        (other) => stated.indexOf(other) < stated.indexOf(of) && oxideFactor(of, other) !== undefined,
      );
      return twin === undefined
        ? ([
            of,
            expectQuantity(given[of], { dimension: "mass/volume", of, bound: "non-negative" }, ""),
          ] as const)
        : fail("conflict", "", described(`${twin} and ${of}`), "one form of each nutrient");
    },
  );
};
