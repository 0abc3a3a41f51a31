import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { formFactor, type NutrientsSupplied, percentOf } from "../../nutrient/index.js";
import { type Finding, frozen, numberIn } from "../../quantity/index.js";
import type { ReadProduct } from "../job/read-products.js";
import type { Measure } from "./measure.js";

/** A slip that multiplies or divides a rate by a known factor, and how to say it. */
interface Slip {
  readonly code: string;
  readonly factor: number;
  readonly text: string;
}

/** The slips that a product and the measure of its rate leave open: no gallons of a weight, no phosphate without P. */
const slipsOf = (product: ReadProduct, dimension: string): readonly Slip[] => {
  const nitrogen = product.fertilizer && percentOf(product.fertilizer.analysis, "N");
  const phosphate = product.fertilizer && percentOf(product.fertilizer.analysis, "P2O5");
  return [
    ...(dimension.endsWith("/area")
      ? [
          {
            code: "acre-for-1000-ft2",
            factor: numberIn({ value: 1, unit: "acre" }, "1000 ft2"),
            text: "per acre and per 1000 ft2 mixed up (43.56 times)",
          },
        ]
      : []),
    ...(dimension.startsWith("volume")
      ? [
          {
            code: "fluid-ounce-for-gallon",
            factor: numberIn({ value: 1, unit: "gal" }, "fl oz"),
            text: "fluid ounces and gallons mixed up (128 times)",
          },
        ]
      : []),
    ...(phosphate
      ? [
          {
            code: "phosphorus-for-phosphate",
            factor: formFactor("P", "P2O5") as number,
            text: "phosphorus and phosphate (P2O5) mixed up (2.29 times)",
          },
        ]
      : []),
    ...(nitrogen ? [productForNitrogen(nitrogen)] : []),
  ];
};

const productForNitrogen = (percent: number): Slip => {
  const factor = 100 / percent;
  return {
    code: "product-for-nutrient",
    factor,
    text: `product and nitrogen mixed up (${Number(factor.toPrecision(3))} times at ${percent} % N)`,
  };
};

/** The slip that would bring a rate back into its range, but for 5 % at either end: a figure typed in is rounded. */
const likelySlip = (rate: number, min: number, max: number, slips: readonly Slip[]): Slip | undefined =>
  slips.find(({ factor }) => [rate / factor, rate * factor].some((r) => r >= min * 0.95 && r <= max * 1.05));

/**
 * Findings on a rate against the range on the label: outside it, with the slip of units that would
 * explain it. Without a stated range nothing is compared, and the order says so.
 */
export const rateFindings = (input: {
  readonly product: ReadProduct;
  readonly rate: Measure;
  readonly path: string;
}): Finding[] => {
  const { product, rate, path } = input;
  const label = product.labelRate;
  if (label === undefined || label.min.dimension !== rate.dimension) return [];
  const [value, min, max] = [rate.value, numberIn(label.min, rate.unit), numberIn(label.max, rate.unit)];
  const high = exceeds(value, max);
  if (!high && !exceeds(min, value)) return [];
  const slip = likelySlip(value, min, max, slipsOf(product, rate.dimension));
  const told = roundedApart(value, high ? max : min);
  const range = `${told(min)} to ${told(max)} ${rate.unit}`;
  return [
    {
      code: high ? "rate/above-label" : "rate/below-label",
      severity: high ? "warning" : "caution",
      path,
      params: {
        product: product.id,
        rate: value,
        unit: rate.unit,
        min,
        max,
        ...(slip && { slip: slip.code }),
      },
      text: `${product.name}: ${told(value)} ${rate.unit} is ${high ? "above" : "below"} the label rate of ${range}.${
        slip === undefined ? "" : ` Check for ${slip.text}.`
      }`,
      source: "the label rate that the job states",
    },
  ];
};

/** Whether a rate was held against the label: within it, outside it, or not compared. */
export type LabelRateCheck = "within" | "outside" | "not stated" | "other measure";

/** Whether a rate lies within the label, as far as the job states it. */
export const labelRateCheck = (product: ReadProduct, rate: Measure): LabelRateCheck =>
  product.labelRate === undefined
    ? "not stated"
    : product.labelRate.min.dimension !== rate.dimension
      ? "other measure"
      : rateFindings({ product, rate, path: product.path }).length > 0
        ? "outside"
        : "within";

/** Why a rate was not held against the label, where the label is told in another measure. */
export const labelNotCompared = (product: ReadProduct, rate: Measure): readonly string[] => {
  const dimension = product.labelRate?.min.dimension;
  if (dimension === undefined || dimension === rate.dimension) return [];
  const why =
    dimension.endsWith("/area") === rate.dimension.endsWith("/area")
      ? "one is by weight and the other by volume"
      : "one is per area and the other per volume of spray";
  return [`${product.name}: the rate against the label, because ${why}.`];
};

const oneP = /* @__PURE__ */ frozen({
  title: "Benefits of using lawn fertilizers containing slow release nitrogen",
  publisher: "Michigan State University Extension",
  url: "http://msue.anr.msu.edu/news/benefits_of_using_lawn_fertilizers_containing_slow_release_nitrogen",
} as const);

/** Findings on the nitrogen of one application: over common advice, and no breakdown on the label. */
export const nitrogenFindings = (
  supplies: NutrientsSupplied<"mass/area">,
  product: ReadProduct,
  path: string,
): Finding[] => {
  const nitrogen = supplies.N?.in("lb/1000 ft2") ?? 0;
  if (nitrogen === 0) return [];
  const findings: Finding[] = [];
  if (product.fertilizer?.slowNitrogen === undefined) {
    findings.push({
      code: "nitrogen/no-slow-stated",
      severity: "note",
      path,
      params: { product: product.id },
      text: `${product.name}: no slow-release nitrogen on the label, so all of its nitrogen is counted as quick-release.`,
      source: "common practice, no source",
    });
  }
  if (exceeds(nitrogen, 1)) {
    // That twice the advice is a warning and not a caution: common practice, no source.
    // From a tenth of a pound up: below that a rate is no turf rate at all, so a slip to it explains nothing.
    const told = roundedApart(nitrogen, 1);
    const slip = likelySlip(nitrogen, 0.1, 1, slipsOf(product, "mass/area"));
    findings.push({
      code: "nitrogen/above-common-advice",
      severity: nitrogen > 2 ? "warning" : "caution",
      path,
      params: {
        product: product.id,
        nitrogen,
        unit: "lb/1000 ft2",
        advice: 1,
        ...(slip && { slip: slip.code }),
      },
      text: `${product.name}: ${told(nitrogen)} lb of N per 1000 ft2 (${told(supplies.N?.in("kg/ha") ?? 0)} kg/ha) in one application is above the common advice of 1 lb.${
        nitrogen > 2 && slip !== undefined ? ` Check for ${slip.text}.` : ""
      }`,
      source: oneP,
    });
  }
  return findings;
};
