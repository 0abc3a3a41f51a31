import { type AreaRates, areaRatesOf, suppliedRates } from "../../ledger/house.js";
import type { NutrientsSupplied } from "../../nutrient/index.js";
import { type Quantity, quantityOf, timesOf } from "../../quantity/index.js";
import type { RateOf } from "../../tank/index.js";
import type { ReadSprayer } from "../job/read-machines.js";
import type { ReadProduct } from "../job/read-products.js";
import { anyQuantity, type Measure } from "./measure.js";
import type { WithFindings } from "./with-findings.js";

/** The rate as one quantity: 2 pt per 100 gal is 0.02 pt/gal. */
export const statedRate = (rate: RateOf, id: string, path: string): Quantity<string, string> => {
  const { value, unit, of, per } = rate as { value: number; unit: string; of: string; per?: unknown };
  if (typeof per !== "object" || per === null) return quantityOf(value, unit, of, path);
  const below = per as { value: number; unit: string };
  return quantityOf(value / below.value, `${unit}/${below.unit}`, `product:${id}/spray`, path);
};

/** Product per area of what is sprayed: a rate per volume of spray counts at the output of the sprayer. */
export const perAreaRates = (
  product: ReadProduct,
  rate: Measure,
  sprayer: ReadSprayer | undefined,
): AreaRates => {
  if (rate.dimension.endsWith("/area")) return areaRatesOf(anyQuantity(rate, "rate"), product.density);
  if (sprayer === undefined) return {};
  return areaRatesOf(timesOf(rate, sprayer.applicationVolume), product.density);
};

/** Nutrients per area of what is sprayed: a rate by volume is weighed through the density. */
export const suppliedBy = (
  product: ReadProduct,
  rate: Measure,
  sprayer: ReadSprayer | undefined,
): Omit<WithFindings<NutrientsSupplied<"mass/area"> | undefined>, "findings"> => {
  if (product.fertilizer === undefined) return { value: undefined, notChecked: [] };
  const rates = perAreaRates(product, rate, sprayer);
  if (rates.byMass === undefined) {
    // a 0-0-0 feeds nothing, whatever it weighs
    if (Object.values(product.fertilizer.analysis.percent).every((percent) => percent === 0))
      return { value: undefined, notChecked: [] };
    return {
      value: undefined,
      notChecked: [
        rates.byVolume === undefined
          ? `Nutrients of ${product.name}: its rate is per volume of spray, and no sprayer is stated.`
          : `Nutrients of ${product.name}: its rate is by volume, and no density is stated.`,
      ],
    };
  }
  const value = suppliedRates({ fertilizer: product.fertilizer }, rates);
  return { value: value as NutrientsSupplied<"mass/area">, notChecked: [] };
};
