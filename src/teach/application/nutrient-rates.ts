import {
  concentrationOf,
  type Fertilizer,
  fertilizer,
  injectionRate,
  injector,
  nutrientsSupplied,
  productForConcentration,
  productMass,
  productRate,
  slowShareNeeded,
  slowShareRates,
  stockFlow,
} from "../../nutrient/index.js";
import { type Quantity, quantityOf } from "../../quantity/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  cornellNutrientManagement,
  fertilizerOpenField,
  floridaFertilizingHome,
  lectureFourSteps,
  lectureFourStepsAtExample,
  marylandCaps,
  massachusettsFertilizerCalculations,
  minnesotaGettingYou,
  nebraskaDetermineChemigation,
  nebraskaLawnFertilizer,
  texasNutritionFertility,
  virginiaTurfgrassMathematics,
  washingtonCalculatingChemigation,
} from "../works/nutrient-works.js";

const rate = ["lb/1000 ft2", "kg/ha"] as const;
const mass = ["lb", "kg"] as const;
const percent = ["% w/w", "% w/w"] as const;
const thin = ["mg/L", "mg/L"] as const;

/** A fertilizer that states so much nitrogen. */
const ofNitrogen = (share: Quantity<"mass/mass", "N/product">): Fertilizer<"the-label"> =>
  fertilizer({ id: "the-label", analysis: { basis: "oxide", percent: { N: share.in("% w/w") } } });

/** A fertilizer of which a part of the nitrogen is coated. */
const coated = (id: string, slow: Quantity<"mass/mass", "N:slow/N">, share: number): Fertilizer =>
  fertilizer({
    id,
    analysis: { basis: "oxide", percent: { N: share } },
    nitrogen: {
      percent: { urea: share * (1 - slow.in("lb/lb")), coated: share * slow.in("lb/lb") },
    },
  });

const productForNutrient = [
  "Putting down the nitrogen figure as pounds of product: divide by the percentage on the bag.",
  "Multiplying by the percentage instead of dividing.",
  "Taking a rate per 1,000 square feet for one per acre: 43.56 times off.",
];

export const productRateFormula: FormulaSpec = formula({
  id: "product-rate",
  name: "productRate",
  title: "Product rate for a rate of nitrogen",
  inputs: [
    ["target", "T", "nitrogen wanted", "N", rate, [0.1, 2]],
    ["percent", "a", "nitrogen in the product", "N/product", percent, [5, 46]],
  ],
  output: ["R", "product rate", "product", rate],
  equation: "R = T * 100 / a",
  run: ({ target, percent: share }) => productRate(target, ofNitrogen(share)),
  traps: productForNutrient,
  basis: "definition",
  sources: [nebraskaLawnFertilizer, floridaFertilizingHome],
});

export const productRatePhosphateFormula: FormulaSpec = formula({
  id: "product-rate-phosphate",
  name: "productRate",
  title: "Product rate for a rate of phosphate",
  inputs: [
    ["target", "T", "phosphate wanted", "P2O5", rate, [0.2, 2]],
    ["percent", "a", "phosphate in the product", "P2O5/product", percent, [5, 52]],
  ],
  output: ["R", "product rate", "product", rate],
  equation: "R = T * 100 / a",
  run: ({ target, percent: share }) =>
    productRate(
      target,
      fertilizer({ id: "the-label", analysis: { basis: "oxide", percent: { P2O5: share.in("% w/w") } } }),
    ),
  traps: [
    "Taking phosphorus for phosphate: P2O5 is 2.29 times as heavy as the P in it.",
    ...productForNutrient.slice(1),
  ],
  basis: "definition",
  sources: [cornellNutrientManagement],
});

export const nutrientsSuppliedFormula: FormulaSpec = formula({
  id: "nutrients-supplied",
  name: "nutrientsSupplied",
  title: "Nitrogen in a rate of product",
  inputs: [
    ["rate", "R", "product rate", "product", rate, [1, 10]],
    ["percent", "a", "nitrogen in the product", "N/product", percent, [5, 46]],
  ],
  output: ["n", "nitrogen", "N", rate],
  equation: "n = R * a / 100",
  run: ({ rate: product, percent: share }) =>
    nutrientsSupplied(
      quantityOf<"mass/area", "product:the-label">(
        product.value,
        product.unit,
        "product:the-label",
        "product",
      ),
      ofNitrogen(share),
    ).N ?? 0,
  traps: ["Dividing by the percentage: that goes from nitrogen to product, this from product to nitrogen."],
  basis: "definition",
  sources: [virginiaTurfgrassMathematics, minnesotaGettingYou],
});

/** From nutrient to product and back. */
export const nutrientRates: readonly FormulaSpec[] = [
  productRateFormula,
  productRatePhosphateFormula,
  formula({
    id: "product-rate-potash",
    name: "productRate",
    title: "Product rate for a rate of potash",
    inputs: [
      ["target", "T", "potash wanted", "K2O", rate, [0.2, 2]],
      ["percent", "a", "potash in the product", "K2O/product", percent, [5, 60]],
    ],
    output: ["R", "product rate", "product", rate],
    equation: "R = T * 100 / a",
    run: ({ target, percent: share }) =>
      productRate(
        target,
        fertilizer({ id: "the-label", analysis: { basis: "oxide", percent: { K2O: share.in("% w/w") } } }),
      ),
    traps: [
      "Taking potassium for potash: K2O is 1.2 times as heavy as the K in it.",
      ...productForNutrient.slice(1),
    ],
    basis: "definition",
    sources: [virginiaTurfgrassMathematics],
  }),
  formula({
    id: "product-mass",
    name: "productMass",
    title: "Product that holds an amount of nitrogen",
    inputs: [
      ["nutrient", "m", "nitrogen wanted", "N", mass, [1, 200]],
      ["percent", "a", "nitrogen in the product", "N/product", percent, [5, 46]],
    ],
    output: ["M", "product", "product", mass],
    equation: "M = m * 100 / a",
    run: ({ nutrient, percent: share }) => productMass(nutrient, ofNitrogen(share)),
    traps: productForNutrient.slice(0, 2),
    basis: "definition",
    sources: [lectureFourSteps],
  }),
  nutrientsSuppliedFormula,
  formula({
    id: "slow-share-needed",
    name: "slowShareNeeded",
    title: "Slow share of nitrogen that a cap on quick-release nitrogen asks for",
    inputs: [
      ["total", "T", "total nitrogen", "N", rate, [0.5, 2]],
      ["quickCap", "S", "cap on quick-release nitrogen", "N:quick", rate, [0.1, 1.5]],
    ],
    output: ["s", "slow share of the nitrogen", "N:slow/N", percent],
    equation: "s = max(0, 100 * (1 - S / T))",
    run: slowShareNeeded,
    traps: [
      "Labels print slow nitrogen as a percentage of the product: divide it by the total nitrogen first.",
    ],
    basis: "derived",
    sources: [marylandCaps],
  }),
  formula({
    id: "slow-share-first-rate",
    name: "slowShareRates",
    title: "Rate of the slower of two products that together bring a slow share",
    inputs: [
      ["target", "T", "nitrogen wanted", "N", rate, [0.5, 2]],
      ["wanted", "s", "slow share wanted", "N:slow/N", percent, [30, 60]],
      ["first", "s_1", "slow share of the slower product", "N:slow/N", percent, [70, 95]],
      ["second", "s_2", "slow share of the quicker product", "N:slow/N", percent, [1, 25]],
      ["percent", "a_1", "nitrogen in the slower product", "N/product", percent, [10, 40]],
    ],
    output: ["R_1", "rate of the slower product", "product", rate],
    equation: "R_1 = T * (s - s_2) / (s_1 - s_2) * 100 / a_1",
    run: ({ target, wanted, first, second, percent: share }) =>
      slowShareRates({
        target,
        slowShare: wanted,
        products: [coated("slower", first, share.in("% w/w")), coated("quicker", second, 40)],
      })[0].rate,
    traps: ["Mixing the slow percentages of the products instead of those of their nitrogen."],
    basis: "derived",
    sources: [lectureFourStepsAtExample],
  }),
  formula({
    id: "product-for-concentration",
    name: "productForConcentration",
    title: "Product for a concentration of nitrogen in irrigation water",
    inputs: [
      ["concentration", "c", "nitrogen wanted", "N", thin, [50, 400]],
      ["percent", "a", "nitrogen in the product", "N/product", percent, [5, 46]],
    ],
    output: ["P", "product in the water", "product", ["oz/gal", "g/L"], thin],
    equation: "P = c * 100 / a",
    run: ({ concentration, percent: share }) => productForConcentration(concentration, ofNitrogen(share)),
    traps: ["Taking parts per million of product for parts per million of nitrogen."],
    basis: "definition",
    sources: [massachusettsFertilizerCalculations],
  }),
  formula({
    id: "nutrient-concentration",
    name: "concentrationOf",
    title: "Nitrogen in a solution of product",
    inputs: [
      ["amount", "P", "product in the water", "product", ["oz/gal", "g/L"], [0.01, 0.3], ["mg/L", "mg/L"]],
      ["percent", "a", "nitrogen in the product", "N/product", percent, [5, 46]],
    ],
    output: ["c", "nitrogen in the water", "N", thin],
    equation: "c = P * a / 100",
    run: ({ amount, percent: share }) =>
      concentrationOf(
        quantityOf<"mass/volume", "product:the-label">(
          amount.value,
          amount.unit,
          "product:the-label",
          "amount",
        ),
        ofNitrogen(share),
        "N",
      ),
    traps: ["Using ounces by volume: a dry product is weighed."],
    basis: "definition",
    sources: [texasNutritionFertility],
  }),
  formula({
    id: "injection-rate",
    name: "injectionRate",
    title: "Injection rate for a volume per area",
    inputs: [
      ["application", "V", "liquid for each area", "product", ["gal/acre", "L/ha"], [2, 40]],
      ["covered", "B", "area irrigated in a time", "none", ["acre/h", "ha/h"], [0.2, 5]],
    ],
    output: ["q", "injection rate", "product", ["gal/h", "L/h"]],
    equation: "q = V * B",
    run: injectionRate,
    traps: ["Taking the area of the whole system where one set is running."],
    basis: "definition",
    sources: [washingtonCalculatingChemigation, nebraskaDetermineChemigation],
  }),
  formula({
    id: "stock-flow",
    name: "stockFlow",
    title: "Stock that an injector draws",
    inputs: [
      ["flow", "Q", "flow behind the injector", "none", ["gal/min", "L/min"], [5, 100]],
      ["parts", "D", "volumes of final solution for one of stock", "none", ["1", "1"], [50, 500]],
    ],
    output: ["q", "stock drawn", "none", ["gal/min", "L/min"]],
    equation: "q = Q / D",
    run: ({ flow, parts }) => stockFlow({ flow, injector: injector(`1:${parts.in("1")}`) }),
    traps: ["Reading 1:100 as one part and 100 parts of water: that is 1+100, or 101 volumes."],
    basis: "definition",
    sources: [fertilizerOpenField],
  }),
];
