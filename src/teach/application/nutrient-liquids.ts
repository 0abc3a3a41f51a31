import {
  acidityPerNitrogen,
  costPerArea,
  type Fertilizer,
  fertilizer,
  inventoryShrink,
  liquidProductRate,
  nutrientCost,
  nutrientPerVolume,
  volumeOfLiquid,
  weightOfLiquid,
} from "../../nutrient/index.js";
import { type Quantity, quantityOf } from "../../quantity/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  fertilizerEstimatedPhysical,
  healthNitrogenFertilizer,
  healthNitrogenFertilizerAtTable,
  lectureFertigationCalculations,
  nebraskaSettingSprayerAtExample,
  ohioCalculatingNutrient,
  stewardshipMuchOrganic,
  turfgrassCalculatingMuch,
  virginiaCommonFertilizers,
  wisconsinTimeSome,
} from "../works/nutrient-works.js";

const percent = ["% w/w", "% w/w"] as const;
const density = ["lb/gal", "kg/L"] as const;
const a = ["percent", "a", "nitrogen in the product, by weight", "N/product", percent, [5, 46]] as const;
const d = ["density", "d", "density", "none", density, [9, 12]] as const;
const volumeTrap = "Taking a gallon of liquid fertilizer for 8.34 lb: that is water, and it is heavier.";

/** A product that states nitrogen; a liquid where it has a density. */
const stated = (
  share: Quantity<"mass/mass", "N/product"> | undefined,
  heavy?: Quantity<"mass/volume", "none">,
): Fertilizer<"the-label"> => {
  const analysis = { basis: "oxide" as const, percent: { N: share?.in("% w/w") ?? 10 } };
  return heavy === undefined
    ? fertilizer({ id: "the-label", analysis })
    : fertilizer({ id: "the-label", analysis, form: "liquid", density: heavy });
};

export const liquidProductRateFormula: FormulaSpec = formula({
  id: "liquid-product-rate",
  name: "liquidProductRate",
  title: "Volume of a liquid fertilizer for a rate of nitrogen",
  inputs: [["target", "T", "nitrogen wanted", "N", ["lb/1000 ft2", "kg/ha"], [0.1, 2]], a, d],
  output: ["V", "product rate", "product", ["gal/1000 ft2", "L/ha"]],
  equation: "V = T * 100 / (a * d)",
  run: ({ target, percent: share, density: heavy }) => liquidProductRate(target, stated(share, heavy)),
  traps: ["Leaving out the density: the percentage is by weight.", volumeTrap],
  basis: "definition",
  sources: [healthNitrogenFertilizer, nebraskaSettingSprayerAtExample],
});

export const nutrientPerVolumeFormula: FormulaSpec = formula({
  id: "nutrient-per-volume",
  name: "nutrientPerVolume",
  title: "Nitrogen in a volume of liquid fertilizer",
  inputs: [a, d],
  output: ["c", "nitrogen", "N", density],
  equation: "c = d * a / 100",
  run: ({ percent: share, density: heavy }) => nutrientPerVolume(stated(share, heavy), "N"),
  traps: [volumeTrap],
  basis: "definition",
  sources: [virginiaCommonFertilizers, nebraskaSettingSprayerAtExample],
});

export const weightOfLiquidFormula: FormulaSpec = formula({
  id: "weight-of-liquid",
  name: "weightOfLiquid",
  title: "Weight of a volume of liquid product",
  inputs: [["amount", "V", "volume", "product", ["gal", "L"], [5, 300]], d],
  output: ["m", "weight", "product", ["lb", "kg"]],
  equation: "m = V * d",
  run: ({ amount, density: heavy }) =>
    weightOfLiquid(
      quantityOf<"volume", "product:the-label">(amount.value, amount.unit, "product:the-label", "amount"),
      stated(undefined, heavy),
    ),
  traps: [volumeTrap],
  basis: "definition",
  sources: [turfgrassCalculatingMuch],
});

export const nutrientCostFormula: FormulaSpec = formula({
  id: "nutrient-cost",
  name: "nutrientCost",
  title: "What nitrogen costs in a product",
  inputs: [["price", "p", "price of the product", "none", ["money:USD/lb", "money:USD/kg"], [0.2, 2]], a],
  output: ["c", "price of nitrogen", "none/N", ["money:USD/lb", "money:USD/kg"]],
  equation: "c = p * 100 / a",
  run: ({ price, percent: share }) => nutrientCost({ product: stated(share), price, nutrient: "N" }),
  traps: ["Comparing the prices of bags instead of those of nitrogen."],
  basis: "definition",
  sources: [wisconsinTimeSome, ohioCalculatingNutrient],
});

export const costPerAreaFormula: FormulaSpec = formula({
  id: "cost-per-area",
  name: "costPerArea",
  title: "What a rate of product costs per area",
  inputs: [
    ["rate", "R", "product rate", "product", ["lb/1000 ft2", "kg/ha"], [1, 10]],
    ["price", "p", "price of the product", "none", ["money:USD/lb", "money:USD/kg"], [0.2, 2]],
  ],
  output: ["k", "cost", "none", ["money:USD/1000 ft2", "money:USD/ha"]],
  equation: "k = R * p",
  run: ({ rate, price }) =>
    costPerArea({
      product: stated(undefined),
      rate: quantityOf<"mass/area", "product:the-label">(rate.value, rate.unit, "product:the-label", "rate"),
      price,
    }),
  traps: ["Pricing by the bag: part of a bag is left over."],
  basis: "definition",
  sources: [stewardshipMuchOrganic],
});

/** Liquids by weight and by volume, and what nitrogen costs. */
export const nutrientLiquids: readonly FormulaSpec[] = [
  liquidProductRateFormula,
  nutrientPerVolumeFormula,
  formula({
    id: "volume-of-liquid",
    name: "volumeOfLiquid",
    title: "Volume of a weight of liquid product",
    inputs: [["amount", "m", "weight", "product", ["lb", "kg"], [10, 2000]], d],
    output: ["V", "volume", "product", ["gal", "L"]],
    equation: "V = m / d",
    run: ({ amount, density: heavy }) =>
      volumeOfLiquid(
        quantityOf<"mass", "product:the-label">(amount.value, amount.unit, "product:the-label", "amount"),
        stated(undefined, heavy),
      ),
    traps: [volumeTrap],
    basis: "definition",
    sources: [lectureFertigationCalculations],
  }),
  weightOfLiquidFormula,
  formula({
    id: "inventory-shrink",
    name: "inventoryShrink",
    title: "Volume that a tank seems to lose as it cools",
    inputs: [
      ["before", "d_1", "density before", "none", density, [10.5, 10.6]],
      ["after", "d_2", "density after", "none", density, [10.7, 10.9]],
    ],
    output: ["s", "share of the volume", "none", ["% v/v", "% v/v"]],
    equation: "s = 100 * (1 - d_1 / d_2)",
    run: ({ before, after }) => inventoryShrink(before, after),
    traps: ["Taking it for a leak: the weight is the same."],
    basis: "definition",
    sources: [fertilizerEstimatedPhysical],
  }),
  nutrientCostFormula,
  costPerAreaFormula,
  formula({
    id: "acidity-per-nitrogen",
    name: "acidityPerNitrogen",
    title: "Potential acidity per weight of nitrogen",
    inputs: [
      ["acidity", "A", "lime to offset the product", "CaCO3 equivalent/product", percent, [20, 150]],
      ["percent", "n", "nitrogen in the product", "N/product", percent, [5, 46]],
    ],
    output: ["c", "lime for each weight of nitrogen", "CaCO3 equivalent/N", ["lb/lb", "kg/kg"]],
    equation: "c = A / n",
    run: ({ acidity, percent: share }) => acidityPerNitrogen(acidity, { nitrogenPercent: share.in("% w/w") }),
    traps: ["Comparing the figures of products of different grade."],
    basis: "definition",
    sources: [healthNitrogenFertilizerAtTable],
  }),
];
