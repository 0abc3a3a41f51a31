import { type Packaged, type Packages, packagesFor } from "../../nutrient/index.js";
import { perOf, type Quantity, timesOf } from "../../quantity/index.js";
import type { ReadProduct } from "../job/read-products.js";
import type { Measure } from "./measure.js";
import type { WithFindings } from "./with-findings.js";

type Counted = Packages<"mass", string> | Packages<"volume", string>;

/**
 * Packages for a need, where the product states what one holds: what is sold by weight and measured by volume, or
 * the other way round, is weighed through its density.
 */
export const packagesOf = (
  need: Measure,
  product: ReadProduct,
): Omit<WithFindings<Counted | undefined>, "findings"> => {
  const { density, name, id } = product;
  const sold = product.package;
  if (sold === undefined) return { value: undefined, notChecked: [] };
  // The id of the need is the id of the product: read-products tagged the rate with it.
  const counted = (amount: Measure): Counted =>
    packagesFor(amount as Quantity<"mass", `product:${string}`>, { id, package: sold } as Packaged<string>);
  if (sold.dimension === need.dimension) return { value: counted(need), notChecked: [] };
  if (density !== undefined)
    return {
      value: counted(sold.dimension === "mass" ? timesOf(need, density) : perOf(need, density)),
      notChecked: [],
    };
  const [by, measured] = sold.dimension === "mass" ? ["weight", "volume"] : ["volume", "weight"];
  return {
    value: undefined,
    notChecked: [
      `${name}: how many packages, because it is sold by ${by} and measured by ${measured}, and no density is stated.`,
    ],
  };
};
