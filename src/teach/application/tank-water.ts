import { acidEquivalentOf, activeInProduct, activeOfAcid, productForActive } from "../../spray/index.js";
import {
  ammoniumSulfateMinimum,
  hardnessFromIons,
  hydrolysisLoss,
  relativeAcidity,
} from "../../tank/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { atomicWeights } from "../works/nutrient-works.js";
import {
  agrochemicalSafety,
  ingredientStatement,
  minnesotaCalculateHerbicideAtPowder,
  montanaCalibrationSprayersAtExamples,
  pacificPnwManagement,
  pesticideDicambaEntry,
} from "../works/spray-works.js";
import {
  michiganEffectWater,
  nationalPesticideHalf,
  northDakotaSulfate,
  purdueMuchAms,
  standardsWaterHardness,
  ufWaterEffectiveness,
} from "../works/tank-works.js";

const inWater = ["mg/L", "mg/L"] as const;

/** What the water does, and what is in the product. */
export const tankWater: readonly FormulaSpec[] = [
  formula({
    id: "hardness-from-ions",
    name: "hardnessFromIons",
    title: "Hardness of water from calcium and magnesium",
    inputs: [
      ["Ca", "c", "calcium", "Ca", inWater, [20, 150]],
      ["Mg", "m", "magnesium", "Mg", inWater, [5, 50]],
    ],
    output: ["H", "hardness", "hardness as CaCO3", inWater],
    equation: "H = (40.078 + 12.011 + 3 * 15.999) * (c / 40.078 + m / 24.305)",
    run: hardnessFromIons,
    traps: ["Adding calcium and magnesium as they are: hardness counts both as calcium carbonate."],
    basis: "definition",
    sources: [atomicWeights, standardsWaterHardness],
  }),
  formula({
    id: "ammonium-sulfate-minimum",
    name: "ammoniumSulfateMinimum",
    title: "Least ammonium sulfate for hard water, by the cation equation",
    inputs: [
      ["K", "k", "potassium", "K", inWater, [1, 20]],
      ["Na", "s", "sodium", "Na", inWater, [5, 100]],
      ["Ca", "c", "calcium", "Ca", inWater, [20, 150]],
      ["Mg", "m", "magnesium", "Mg", inWater, [5, 50]],
      ["Fe", "f", "iron", "Fe", inWater, [0.1, 2]],
    ],
    output: ["A", "ammonium sulfate", "product", ["lb/gal", "g/L"], ["lb/gal", "lb/gal"]],
    equation: "A = (0.002 * k + 0.005 * s + 0.009 * c + 0.014 * m + 0.042 * f) / 100",
    run: (given) => ammoniumSulfateMinimum(given).minimum,
    traps: ["Reading the result for each gallon: the printed equation is for 100 gallons."],
    basis: "published",
    sources: [northDakotaSulfate, purdueMuchAms],
  }),
  formula({
    id: "hydrolysis-loss",
    name: "hydrolysisLoss",
    title: "Share that has broken down in the tank",
    inputs: [
      ["halfLife", "h", "half-life at the pH of the water", "none", ["h", "h"], [1, 100]],
      ["time", "t", "time since mixing", "none", ["h", "h"], [0.5, 24]],
    ],
    output: ["x", "share lost", "none", ["%", "%"], ["1", "1"]],
    equation: "x = 1 - 0.5 ^ (t / h)",
    run: (given) => hydrolysisLoss(given).atEnd,
    traps: ["Taking two half-lives for all of it: a quarter is left."],
    basis: "definition",
    sources: [michiganEffectWater, nationalPesticideHalf],
  }),
  formula({
    id: "relative-acidity",
    name: "relativeAcidity",
    title: "How many times as acidic one water is as another",
    inputs: [
      ["pH", "p", "pH", "none", ["1", "1"], [4, 9]],
      ["reference", "q", "pH of the other water", "none", ["1", "1"], [5, 9]],
    ],
    output: ["x", "times as acid", "none", ["1", "1"]],
    equation: "x = 10 ^ (q - p)",
    run: ({ pH, reference }) => relativeAcidity(pH.in("1"), reference.in("1")),
    traps: ["Taking pH 6 for a seventh more acid than 7: it is ten times as acid."],
    basis: "definition",
    sources: [ufWaterEffectiveness],
  }),
];

export const dryProductForActiveFormula: FormulaSpec = formula({
  id: "dry-product-for-active",
  name: "productForActive",
  title: "Dry product for a rate of active ingredient",
  inputs: [
    ["active", "a", "active ingredient wanted", "ai", ["lb/acre", "kg/ha"], [0.1, 3]],
    ["content", "c", "active ingredient in the product", "ai/product", ["% w/w", "% w/w"], [0.5, 80]],
  ],
  output: ["R", "product rate", "product", ["lb/acre", "kg/ha"]],
  equation: "R = a * 100 / c",
  run: productForActive,
  traps: ["Putting down the pounds of active ingredient as pounds of product."],
  basis: "published",
  sources: [minnesotaCalculateHerbicideAtPowder, agrochemicalSafety],
});

export const liquidProductForActiveFormula: FormulaSpec = formula({
  id: "liquid-product-for-active",
  name: "productForActive",
  title: "Liquid product for a rate of active ingredient",
  inputs: [
    ["active", "a", "active ingredient wanted", "ai", ["lb/acre", "g/ha"], [0.1, 3]],
    ["content", "c", "active ingredient in the product", "ai/product", ["lb/gal", "g/L"], [1, 6]],
  ],
  output: ["R", "product rate", "product", ["fl oz/acre", "mL/ha"], ["gal/acre", "L/ha"]],
  equation: "R = a / c",
  run: productForActive,
  traps: ["Stopping at gallons for each acre where the jug is marked in fluid ounces: times 128."],
  basis: "published",
  sources: [montanaCalibrationSprayersAtExamples, pacificPnwManagement],
});

/** Active ingredient and acid equivalent. */
export const activeIngredient: readonly FormulaSpec[] = [
  dryProductForActiveFormula,
  liquidProductForActiveFormula,
  formula({
    id: "active-in-liquid",
    name: "activeInProduct",
    title: "Active ingredient in a rate of liquid product",
    inputs: [
      ["product", "R", "product rate", "product", ["fl oz/acre", "mL/ha"], [8, 128], ["gal/acre", "L/ha"]],
      ["content", "c", "active ingredient in the product", "ai/product", ["lb/gal", "g/L"], [1, 6]],
    ],
    output: ["a", "active ingredient", "ai", ["lb/acre", "g/ha"]],
    equation: "a = R * c",
    run: activeInProduct,
    traps: ["Leaving the rate in fluid ounces with a content for each gallon."],
    basis: "published",
    sources: [pacificPnwManagement],
  }),
  formula({
    id: "acid-equivalent",
    name: "acidEquivalentOf",
    title: "Acid equivalent of an active ingredient",
    inputs: [
      ["active", "i", "active ingredient", "ai", ["lb/acre", "kg/ha"], [0.2, 3]],
      ["share", "s", "acid in the active ingredient", "ae/ai", ["% w/w", "% w/w"], [50, 95]],
    ],
    output: ["e", "acid equivalent", "ae", ["lb/acre", "kg/ha"]],
    equation: "e = i * s / 100",
    run: ({ active, share }) => acidEquivalentOf(active, share),
    traps: ["Reading a label rate in acid equivalent as one in active ingredient."],
    basis: "definition",
    sources: [ingredientStatement],
  }),
  formula({
    id: "active-of-acid",
    name: "activeOfAcid",
    title: "Active ingredient of an acid equivalent",
    inputs: [
      ["acid", "e", "acid equivalent", "ae", ["lb/acre", "kg/ha"], [0.2, 3]],
      ["share", "s", "acid in the active ingredient", "ae/ai", ["% w/w", "% w/w"], [50, 95]],
    ],
    output: ["i", "active ingredient", "ai", ["lb/acre", "kg/ha"]],
    equation: "i = e * 100 / s",
    run: ({ acid, share }) => activeOfAcid(acid, share),
    traps: ["Multiplying by the share: the salt weighs more than the acid in it."],
    basis: "definition",
    sources: [pesticideDicambaEntry],
  }),
];
