import { expectAmount, type Quantity, quantityOf } from "../../quantity/index.js";
import { type Nutrient, percentOf } from "../label/analysis.js";
import { expectFertilizer } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { productNitrogen } from "../label/nitrogen-breakdown.js";
import { elementShareForms } from "../label/supplied-forms.js";

/** What an amount of product brings, nutrient by nutrient, in oxides and elements, and quick and slow nitrogen. */
export type NutrientsSupplied<D extends string> = {
  readonly [S in Nutrient | "N:soluble" | "N:slow"]?: Quantity<D, S>;
};

/**
 * The nutrients in an amount of product, or in a rate of it per area: every nutrient that the label
 * states, phosphate and potash also as elements, and nitrogen also split into soluble and slow.
 *
 * Equation: `n = R * a / 100`; slow nitrogen `R * s / 100`; soluble nitrogen the rest of the total.
 *
 * - `R` product, mass or mass per area, zero or more
 * - `a` percent of the nutrient in the product, by weight
 * - `s` percent of slow-release nitrogen in the PRODUCT, as labels print it; where the label states
 *   none, all nitrogen is soluble
 *
 * @param amount - of this very product: its substance carries the product's id
 * @throws RatewrightError `substance/mismatch` where the amount is of another product;
 *   `unit/mismatch`, `range`
 *
 * Source: university worksheets print the same rule; 1250 lb of 5-10-20 hold 62.5 lb N, 125 lb P2O5 and
 * 250 lb K2O (Turfgrass mathematics review, Virginia certified turfgrass professional program).
 *
 * @example
 * ```ts
 * import { fertilizer, nutrientsSupplied, quantity } from "ratewright";
 * const feed = fertilizer({
 *   id: "feed-a",
 *   analysis: "24-0-11",
 *   slowNitrogen: quantity(12, "% w/w", "N:slow/product"),
 * });
 * const supplied = nutrientsSupplied(quantity(50, "lb", "product:feed-a"), feed);
 * supplied.N?.in("lb"); // => 12
 * supplied["N:slow"]?.in("lb"); // => 6
 * supplied["N:soluble"]?.in("lb"); // => 6
 * supplied.K2O?.in("lb"); // => 5.5
 * ```
 */
export const nutrientsSupplied = <D extends "mass" | "mass/area", Id extends string>(
  amount: Quantity<D, `product:${Id}`>,
  product: Fertilizer<Id>,
): NutrientsSupplied<D> => {
  const label = expectFertilizer(product, "product");
  const given = expectAmount(
    amount,
    { dimensions: ["mass", "mass/area"], of: `product:${label.id}`, bound: "non-negative" },
    "amount",
  );
  const supplied: Record<string, Quantity<string, string>> = {};
  const put = (of: string, percent: number): void => {
    supplied[of] = quantityOf((given.value * percent) / 100, given.unit, of, of);
  };
  for (const nutrient of elementShareForms(label.analysis))
    put(nutrient, percentOf(label.analysis, nutrient));
  if (percentOf(label.analysis, "N") > 0) {
    const { slow, soluble } = productNitrogen(label);
    put("N:slow", slow.in("% w/w"));
    put("N:soluble", soluble.in("% w/w"));
  }
  return supplied as NutrientsSupplied<D>;
};
