import {
  blendShare,
  dissolvedSalts,
  foliarMicronutrient,
  irrigationLoad,
  leachingRequirement,
  residualSodiumCarbonate,
  sodiumAdsorptionRatio,
  sodiumPercentageFromRatio,
} from "../../soil/index.js";
import { ammoniumSulfateFromHardness } from "../../tank/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { atomicWeights } from "../works/nutrient-works.js";
import {
  arizonaIron,
  californiaNitrogen,
  fao29,
  oklahomaCode,
  oklahomaSalts,
  soilTestRatio,
  waterManagementBlend,
  waterReuseSalinity,
} from "../works/soil-and-air-works.js";
import { northDakotaSulfate } from "../works/tank-works.js";

const milliequivalents = ["meq/L", "meq/L"] as const;
const conductivity = ["dS/m", "dS/m"] as const;
const inWater = ["mg/L", "mg/L"] as const;
const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const calcium = ["Ca", "c", "calcium", "Ca", milliequivalents, [0.5, 8]] as const;
const magnesium = ["Mg", "m", "magnesium", "Mg", milliequivalents, [0.3, 6]] as const;
const milligrams = "Putting in milligrams: each ion is divided by its own equivalent weight first.";
const hardness = ["hardness", "H", "hardness of the water", "hardness as CaCO3", inWater, [50, 500]] as const;
const sulfateRate = ["lb/gal", "g/L"] as const;
const sulfateTraps = ["Reading the result for each gallon: the printed equation is for 100 gallons."];

export const sodiumAdsorptionRatioFormula: FormulaSpec = formula({
  id: "sodium-adsorption-ratio",
  name: "sodiumAdsorptionRatio",
  title: "Sodium adsorption ratio of a water",
  inputs: [["Na", "s", "sodium", "Na", milliequivalents, [0.5, 20]], calcium, magnesium],
  output: ["SAR", "sodium adsorption ratio", "none", pure],
  equation: "SAR = s / sqrt((c + m) / 2)",
  run: sodiumAdsorptionRatio,
  traps: [milligrams, "Judging by the ratio alone: the same ratio harms more in water with little salt."],
  basis: "published",
  sources: [soilTestRatio],
});

/** What a water does to soil and grass. */
export const saltyWater: readonly FormulaSpec[] = [
  sodiumAdsorptionRatioFormula,
  formula({
    id: "sodium-percentage-from-ratio",
    name: "sodiumPercentageFromRatio",
    title: "Exchangeable sodium percentage from the sodium adsorption ratio of the soil",
    inputs: [["ratio", "SAR", "sodium adsorption ratio of the saturation extract", "none", pure, [2, 30]]],
    output: ["E", "exchangeable sodium", "none", share],
    equation: "E = 100 * (0.01475 * SAR - 0.0126) / (1 + (0.01475 * SAR - 0.0126))",
    run: ({ ratio }) => sodiumPercentageFromRatio(ratio.in("1")).percent ?? Number.NaN,
    traps: ["Using the ratio of the irrigation water: the fit is for the extract of the soil."],
    basis: "published",
    sources: [oklahomaCode],
  }),
  formula({
    id: "residual-sodium-carbonate",
    name: "residualSodiumCarbonate",
    title: "Residual sodium carbonate of a water",
    inputs: [
      ["HCO3", "b", "bicarbonate", "HCO3", milliequivalents, [1, 8]],
      ["CO3", "k", "carbonate", "CO3", milliequivalents, [0.05, 1]],
      calcium,
      magnesium,
    ],
    output: ["RSC", "residual sodium carbonate", "none", milliequivalents],
    equation: "RSC = b + k - (c + m)",
    run: (water) => residualSodiumCarbonate(water).value,
    traps: [milligrams],
    basis: "published",
    sources: [waterReuseSalinity],
  }),
  formula({
    id: "blend-share",
    name: "blendShare",
    title: "Share of the first of two waters in a blend",
    inputs: [
      ["first", "c_1", "conductivity of the first water", "none", conductivity, [0.2, 1]],
      ["second", "c_2", "conductivity of the second water", "none", conductivity, [3, 8]],
      ["target", "c", "conductivity wanted", "none", conductivity, [1.2, 2.8]],
    ],
    output: ["s", "share of the first water", "none", share, pure],
    equation: "s = (c_2 - c) / (c_2 - c_1)",
    run: blendShare,
    traps: ["Putting the difference from the first water on top: that gives the share of the second."],
    basis: "derived",
    sources: [waterManagementBlend],
  }),
  formula({
    id: "dissolved-salts",
    name: "dissolvedSalts",
    title: "Dissolved salts from conductivity",
    inputs: [["conductivity", "C", "conductivity", "none", conductivity, [0.2, 5]]],
    output: ["T", "dissolved salts", "none", inWater],
    equation: "T = 640 * C",
    run: ({ conductivity: found }) => dissolvedSalts({ conductivity: found }),
    traps: ["Leaving the conductivity in microsiemens: 1,000 of them are one dS/m."],
    basis: "published",
    sources: [oklahomaSalts],
  }),
  formula({
    id: "leaching-requirement",
    name: "leachingRequirement",
    title: "Share of the water that has to leach, by the average root zone",
    inputs: [
      ["water", "w", "conductivity of the water", "none", conductivity, [0.5, 3]],
      [
        "soil",
        "e",
        "conductivity of the saturation extract that the grass tolerates",
        "none",
        conductivity,
        [2, 8],
      ],
    ],
    output: ["L", "leaching requirement", "none", share, pure],
    equation: "L = w / (5 * e - w)",
    run: (given) => leachingRequirement({ method: "average root zone", ...given }).share,
    traps: ["Dividing one conductivity by the other: that is the older form, with the drainage water below."],
    basis: "published",
    sources: [fao29],
  }),
  formula({
    id: "irrigation-load",
    name: "irrigationLoad",
    title: "Nitrogen in irrigation water",
    inputs: [
      ["nitrate", "c", "nitrate-nitrogen in the water", "NO3-N", inWater, [1, 40], ["lb/ft3", "kg/m3"]],
      ["depth", "d", "depth of water", "none", ["in", "mm"], [1, 24], ["ft", "m"]],
    ],
    output: ["n", "nitrogen", "N", ["lb/1000 ft2", "kg/ha"], ["lb/ft2", "kg/m2"]],
    equation: "n = c * d",
    run: ({ nitrate, depth }) =>
      irrigationLoad({ water: { "NO3-N": nitrate }, depth }).nitrogen ?? Number.NaN,
    traps: ["Reading nitrate (NO3) as nitrate-nitrogen: that credits 4.43 times too much."],
    basis: "definition",
    sources: [californiaNitrogen],
  }),
  formula({
    id: "foliar-micronutrient",
    name: "foliarMicronutrient",
    title: "Iron in a rate of a foliar product",
    inputs: [
      ["product", "P", "product rate", "product", ["oz/1000 ft2", "kg/ha"], [2, 4]],
      ["percent", "p", "percent of iron in the product", "none", pure, [5, 20]],
    ],
    output: ["E", "iron", "Fe", ["oz/1000 ft2", "kg/ha"]],
    equation: "E = P * p / 100",
    run: ({ product, percent }) =>
      foliarMicronutrient({ product, element: "Fe", percent: percent.in("1") }).element,
    traps: ["Reading a rate of product as a rate of iron: printed ounces are mostly of product."],
    basis: "definition",
    sources: [arizonaIron],
  }),
];

/** The least ammonium sulfate where only the hardness is known. */
export const sulfateForHardness: readonly FormulaSpec[] = [
  formula({
    id: "ammonium-sulfate-from-magnesium-hardness",
    name: "ammoniumSulfateFromHardness",
    title: "Ammonium sulfate for a hardness that is all magnesium",
    inputs: [hardness],
    output: ["A", "ammonium sulfate", "product", sulfateRate, ["lb/gal", "lb/gal"]],
    equation: "A = 0.014 * H * 24.305 / (40.078 + 12.011 + 3 * 15.999) / 100",
    run: ({ hardness: found }) => ammoniumSulfateFromHardness(found).min,
    traps: sulfateTraps,
    basis: "derived",
    sources: [northDakotaSulfate, atomicWeights],
  }),
  formula({
    id: "ammonium-sulfate-from-calcium-hardness",
    name: "ammoniumSulfateFromHardness",
    title: "Ammonium sulfate for a hardness that is all calcium",
    inputs: [hardness],
    output: ["A", "ammonium sulfate", "product", sulfateRate, ["lb/gal", "lb/gal"]],
    equation: "A = 0.009 * H * 40.078 / (40.078 + 12.011 + 3 * 15.999) / 100",
    run: ({ hardness: found }) => ammoniumSulfateFromHardness(found).max,
    traps: sulfateTraps,
    basis: "derived",
    sources: [northDakotaSulfate, atomicWeights],
  }),
];
