import {
  type NutrientsSupplied,
  nutrientsSupplied,
  type Packages,
  productRate,
} from "../../nutrient/index.js";
import { fail, type Quantity, toldBy } from "../../quantity/index.js";
import { passRates } from "../../spread/index.js";
import type { TreatmentUse } from "../grow-in/turf-types.js";
import type { ReadSpreader } from "../job/read-machines.js";
import type { ReadProduct } from "../job/read-products.js";
import type { TreatedPart } from "../job/read-site.js";
import type { ReadWater } from "../job/read-water.js";
import type { ReadSpread } from "../job/treatments.js";
import { type Watering, watering } from "../watering/watering.js";
import { packagesOf } from "./packages-of.js";
import {
  type LabelRateCheck,
  labelNotCompared,
  labelRateCheck,
  nitrogenFindings,
  rateFindings,
} from "./rate-findings.js";
import type { WithFindings } from "./with-findings.js";

/** What one part of the site takes. */
export interface SpreadPart extends TreatedPart {
  readonly amount: Quantity<"mass", `product:${string}`>;
  /** What one pass puts down on it. */
  readonly perPass: Quantity<"mass", `product:${string}`>;
}

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
  /** Part by part; empty where the job does not say what lies on which. */
  readonly byPart: readonly SpreadPart[];
  /** Whether the rate was held against the label. */
  readonly labelRate: LabelRateCheck;
  /** The spreader and its setting, as far as the job says. */
  readonly spreader: ReadSpreader & { readonly setting?: string };
  readonly use?: TreatmentUse;
  readonly registrationNumber?: string;
  readonly lot?: string;
  /** What one package holds. */
  readonly packageSize?: Quantity<"mass", "none"> | Quantity<"volume", "none">;
  readonly packages?: Packages<"mass", string>;
  /** Nutrients per area, where the product states an analysis. */
  readonly supplies?: NutrientsSupplied<"mass/area">;
  /** What to do with water afterward. */
  readonly watering: Watering;
}

/** Computes a treatment that is spread. */
export const spreadOrder = (
  treatment: ReadSpread,
  spreader: ReadSpreader,
  water?: ReadWater,
): WithFindings<SpreadOrder> => {
  const after = watering(treatment, water);
  const { product, wanted, area, passes, path, byPart, setting } = treatment;
  const rate = "rate" in wanted ? wanted.rate : rateFor(wanted.target, product, path);
  const cut = toldBy({ rate: `${path}.rate`, passes: `${path}.passes` }, () =>
    passRates({ rate, passes, area }),
  );
  const amount = rate.times(area);
  const packages = packagesOf(amount, product);
  const supplies = product.fertilizer && nutrientsSupplied(rate, product.fertilizer);
  const { registrationNumber, lot, use } = product;
  return {
    value: {
      treatment: treatment.id,
      method: "spread",
      product: product.id,
      productName: product.name,
      parts: treatment.parts ?? [],
      area,
      byPart: byPart.map(({ part, area: size }) => ({
        part,
        area: size,
        amount: rate.times(size),
        perPass: cut.perPass.times(size),
      })),
      ...("target" in wanted && { target: wanted.target }),
      rate,
      passes,
      ratePerPass: cut.perPass,
      amount,
      labelRate: labelRateCheck(product, rate),
      spreader: { ...spreader, ...(setting !== undefined && { setting }) },
      ...(product.package && { packageSize: product.package }),
      ...(packages.value && { packages: packages.value as Packages<"mass", string> }),
      ...(use && { use }),
      ...(registrationNumber && { registrationNumber }),
      ...(lot && { lot }),
      ...(supplies && { supplies }),
      watering: after.value,
    },
    findings: [
      ...rateFindings({ product, rate, path }),
      ...(supplies === undefined ? [] : nitrogenFindings(supplies, product, path)),
      ...after.findings,
    ],
    notChecked: [...packages.notChecked, ...labelNotCompared(product, rate), ...after.notChecked],
  };
};

const rateFor = (
  target: Quantity<"mass/area", string>,
  product: ReadProduct,
  path: string,
): Quantity<"mass/area", `product:${string}`> => {
  const { fertilizer } = product;
  if (fertilizer === undefined)
    return fail("missing", `${path}.target`, target, `a product with an analysis; ${product.id} states none`);
  // The reader took any nutrient; productRate refuses what the product lacks.
  return toldBy({ target: `${path}.target`, "product.analysis": `${product.path}.analysis` }, () =>
    productRate(target as Quantity<"mass/area", "N">, fertilizer),
  );
};
