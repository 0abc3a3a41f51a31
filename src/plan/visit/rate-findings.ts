import { roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { formFactor, type NutrientsSupplied, percentOf } from "../../nutrient/index.js";
import { type Finding, frozen, numberIn, unitSystem } from "../../quantity/index.js";
import type { ReadProduct } from "../job/read-products.js";
import type { Measure } from "./measure.js";

const isMetric = (unit: string): boolean => unitSystem(unit) === "metric";

/** A slip that multiplies or divides a rate by a known factor, and how to say it. */
interface Slip {
  readonly code: string;
  readonly factor: number;
  readonly text: string;
}

/** Slips between units, for a rate that was typed in one of the United States. */
const customarySlips = (dimension: string): readonly Slip[] => [
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
];

/** The same for one that was typed in a metric unit. */
const metricSlips = (dimension: string): readonly Slip[] => [
  ...(dimension === "mass/area"
    ? [{ code: "g-per-m2-for-kg-per-ha", factor: 10, text: "g/m2 and kg/ha mixed up (10 times)" }]
    : []),
  ...(dimension.endsWith("/area")
    ? [
        {
          code: "hectare-for-100-m2",
          factor: numberIn({ value: 1, unit: "ha" }, "100 m2"),
          text: "per hectare and per 100 m2 mixed up (100 times)",
        },
      ]
    : []),
  dimension.startsWith("volume")
    ? { code: "milliliter-for-liter", factor: 1000, text: "mL and L mixed up (1,000 times)" }
    : { code: "gram-for-kilogram", factor: 1000, text: "g and kg mixed up (1,000 times)" },
];

/** The slips that a product and the measure of its rate leave open: no gallons of a weight, no phosphate without P. */
const slipsOf = (product: ReadProduct, dimension: string, metric: boolean): readonly Slip[] => {
  const nitrogen = product.fertilizer && percentOf(product.fertilizer.analysis, "N");
  const phosphate = product.fertilizer && percentOf(product.fertilizer.analysis, "P2O5");
  return [
    ...(metric ? metricSlips : customarySlips)(dimension),
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
  const slip = likelySlip(value, min, max, slipsOf(product, rate.dimension, isMetric(rate.unit)));
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

const advised = { value: 1, unit: "lb/1000 ft2" };

/** Findings on the nitrogen of one application: over common advice, and no breakdown on the label. */
export const nitrogenFindings = (
  supplies: NutrientsSupplied<"mass/area">,
  product: ReadProduct,
  path: string,
): Finding[] => {
  const total = supplies.N;
  if (total === undefined || total.value === 0) return [];
  const metric = isMetric(total.unit);
  const pounds = total.in("lb/1000 ft2");
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
  if (exceeds(pounds, 1)) {
    // That twice the advice is a warning and not a caution: common practice, no source.
    // From a tenth of a pound up: below that a rate is no turf rate at all, so a slip to it explains nothing.
    const slip = likelySlip(pounds, 0.1, 1, slipsOf(product, "mass/area", metric));
    // In the unit that the rate was typed in, where that is metric.
    const unit = metric ? total.unit : "lb/1000 ft2";
    const [nitrogen, advice] = [metric ? total.value : pounds, numberIn(advised, unit)];
    const told = roundedApart(nitrogen, advice);
    findings.push({
      code: "nitrogen/above-common-advice",
      severity: pounds > 2 ? "warning" : "caution",
      path,
      params: { product: product.id, nitrogen, unit, advice, ...(slip && { slip: slip.code }) },
      text: `${product.name}: ${
        metric
          ? `${told(nitrogen)} ${unit} of N in one application is above the common advice of ${told(advice)} ${unit}`
          : `${told(nitrogen)} lb of N per 1000 ft2 (${told(total.in("kg/ha"))} kg/ha) in one application is above the common advice of 1 lb`
      }.${pounds > 2 && slip !== undefined ? ` Check for ${slip.text}.` : ""}`,
      source: oneP,
    });
  }
  return findings;
};
