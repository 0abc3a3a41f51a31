import {
  type Fertilizer,
  type NutrientsSupplied,
  nutrientsSupplied,
  type Packages,
  packagesFor,
  productRate,
} from "../nutrient/index.js";
import type { Finding, Quantity } from "../quantity/index.js";
import { passRates } from "../spread/index.js";
import { toldBy } from "./fields.js";
import { nitrogenFindings, rateFindings } from "./rate-findings.js";
import type { ReadProduct } from "./read-products.js";
import type { ReadSpread } from "./read-treatments.js";

/** What to spread: rate, amount, passes and packages. */
export interface SpreadOrder {
  readonly treatment: string;
  readonly method: "spread";
  readonly product: string;
  readonly productName: string;
  readonly parts: readonly string[];
  readonly area: Quantity<"area", "none">;
  readonly target?: Quantity<"mass/area", string>;
  /** Product per area, over all passes. */
  readonly rate: Quantity<"mass/area", `product:${string}`>;
  readonly passes: number;
  /** Product per area that the spreader is set to: the rate shared out over the passes. */
  readonly ratePerPass: Quantity<"mass/area", `product:${string}`>;
  readonly amount: Quantity<"mass", `product:${string}`>;
  readonly packages?: Packages<"mass", string>;
  /** Nutrients per area, where the product states an analysis. */
  readonly supplies?: NutrientsSupplied<"mass/area">;
}

/** Packages for a need, where the product states what one holds. */
export const packagesOf = <D extends "mass" | "volume">(
  need: Quantity<D, `product:${string}`>,
  product: ReadProduct,
): Packages<D, string> | undefined =>
  product.package === undefined || product.package.dimension !== (need.dimension as string)
    ? undefined
    : packagesFor(need, product as never);

/** Computes a treatment that is spread; findings go to the list. */
export const spreadOrder = (treatment: ReadSpread, findings: Finding[]): SpreadOrder => {
  const { product, wanted, area, passes, path } = treatment;
  let rate: Quantity<"mass/area", `product:${string}`>;
  if ("rate" in wanted) rate = wanted.rate;
  else {
    const target = wanted.target as Quantity<"mass/area", "N">;
    rate = toldBy({ target: `${path}.target` }, () => productRate(target, product.fertilizer as Fertilizer));
  }
  const cut = toldBy({ rate: `${path}.rate`, passes: `${path}.passes` }, () =>
    passRates({ rate, passes, area }),
  );
  const amount = (cut.load as NonNullable<typeof cut.load>).total;
  const packages = packagesOf(amount, product);
  const supplies = product.fertilizer && nutrientsSupplied(rate, product.fertilizer);
  findings.push(...rateFindings({ product, rate: rate as never, path }));
  if (supplies !== undefined) findings.push(...nitrogenFindings(supplies, product, path));
  return {
    treatment: treatment.id,
    method: "spread",
    product: product.id,
    productName: product.name,
    parts: treatment.parts ?? [],
    area,
    ...("target" in wanted && { target: wanted.target }),
    rate,
    passes,
    ratePerPass: cut.perPass,
    amount,
    ...(packages && { packages }),
    ...(supplies && { supplies }),
  };
};
