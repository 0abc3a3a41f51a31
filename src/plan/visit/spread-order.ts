import {
  type Fertilizer,
  type NutrientsSupplied,
  nutrientsSupplied,
  type Packages,
  packagesFor,
  productRate,
} from "../../nutrient/index.js";
import { type Finding, type Quantity, toldBy } from "../../quantity/index.js";
import { passRates } from "../../spread/index.js";
import type { ReadProduct } from "../job/read-products.js";
import type { ReadSpread } from "../job/read-treatments.js";
import { labelNotCompared, nitrogenFindings, rateFindings } from "./rate-findings.js";

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

type Amount = Quantity<"mass", `product:${string}`> | Quantity<"volume", `product:${string}`>;
type Counted = Packages<"mass", string> | Packages<"volume", string>;

/**
 * Packages for a need, where the product states what one holds: what is sold by weight and measured by volume, or
 * the other way round, is weighed through its density.
 */
export const packagesOf = (need: Amount, product: ReadProduct, notChecked: string[]): Counted | undefined => {
  const { density, name } = product;
  const by = product.package?.dimension;
  if (by === undefined) return undefined;
  if (by === need.dimension) return packagesFor(need as never, product as never) as Counted;
  if (density === undefined) {
    const [sold, measured] = by === "mass" ? ["weight", "volume"] : ["volume", "weight"];
    notChecked.push(
      `${name}: how many packages, for it is sold by ${sold} and measured by ${measured}, and no density is stated.`,
    );
    return undefined;
  }
  const any = need as Quantity<"mass", string>;
  const other = by === "mass" ? any.times(density as never) : any.per(density as never);
  return packagesFor(other as never, product as never) as Counted;
};

/** Computes a treatment that is spread; findings go to the list. */
export const spreadOrder = (
  treatment: ReadSpread,
  findings: Finding[],
  notChecked: string[],
): SpreadOrder => {
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
  const packages = packagesOf(amount, product, notChecked) as SpreadOrder["packages"];
  const supplies = product.fertilizer && nutrientsSupplied(rate, product.fertilizer);
  findings.push(...rateFindings({ product, rate: rate as never, path }));
  notChecked.push(...labelNotCompared(product, rate as never));
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
