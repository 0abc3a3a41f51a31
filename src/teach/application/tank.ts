import {
  amountFor,
  areaPerTank,
  concentrateFor,
  dilutionAmounts,
  finishedFrom,
  impliedAreaRate,
  mixToFinish,
  perVolume,
  rinseResidue,
  strengthForAreaRate,
  strengthOf,
  tankRinse,
} from "../../tank/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  albertaCropProtectionAtSprayerCalibration,
  armyPesticidesMilitaryAtPage,
  armyPesticidesMilitaryAtPageProblem,
  exponentialRinsing,
  mesaCalibrateHandgun,
  missouriPesticideDilution,
  montanaCalibrationSprayersAtExamplesB,
  newEnglandDilution,
  ohioPruningTools,
  oklahomaCalibratingApplication,
  peanutUsingCrop,
  pesticideCalculationsMixing,
  sprayWaterVolumes,
  texasNutritionFertilityAtPractical,
  usgaDontLet,
} from "../works/tank-works.js";

const perArea = ["gal/acre", "L/ha"] as const;
const volume = ["gal", "L"] as const;
const area = ["acre", "ha"] as const;
const small = ["fl oz", "mL"] as const;
const count = ["count", "count"] as const;

export const liquidForAreaFormula: FormulaSpec = formula({
  id: "liquid-for-area",
  name: "amountFor",
  title: "Liquid product for an area at a label rate",
  inputs: [
    ["rate", "R", "label rate", "product", ["fl oz/acre", "mL/ha"], [2, 128]],
    ["area", "A", "area", "none", area, [0.5, 20]],
  ],
  output: ["m", "product", "product", small],
  equation: "m = R * A",
  run: ({ rate, area: field }) => amountFor({ rate, area: field, form: "liquid" }),
  traps: ["Weighing fluid ounces: they are a volume."],
  basis: "definition",
  sources: [oklahomaCalibratingApplication],
});

export const areaPerTankFormula: FormulaSpec = formula({
  id: "area-per-tank",
  name: "areaPerTank",
  title: "Area that one tank covers",
  inputs: [
    ["capacity", "C", "tank, as far as it is filled", "spray", volume, [25, 300]],
    ["applicationVolume", "V", "application volume", "spray", perArea, [10, 90]],
  ],
  output: ["A", "area", "none", area],
  equation: "A = C / V",
  run: areaPerTank,
  traps: ["Dividing the other way around: that is tanks for each acre."],
  basis: "definition",
  sources: [mesaCalibrateHandgun, montanaCalibrationSprayersAtExamplesB],
});

export const dilutionOneInFormula: FormulaSpec = formula({
  id: "dilution-one-in",
  name: "dilutionAmounts",
  title: "Product of a dilution of one part in so many",
  inputs: [
    ["parts", "x", "parts in all", "none", ["1", "1"], [4, 200]],
    ["finished", "V", "finished spray", "spray", volume, [1, 100]],
  ],
  output: ["P", "product", "product", volume],
  equation: "P = V / x",
  run: ({ parts, finished }) =>
    dilutionAmounts({ parts: parts.in("1"), reading: "1 in x", finished }).product,
  traps: ["Reading 1:10 as one part and ten parts: it may mean one part in ten; ask which."],
  basis: "definition",
  sources: [ohioPruningTools],
});

export const dilutionOnePlusFormula: FormulaSpec = formula({
  id: "dilution-one-plus",
  name: "dilutionAmounts",
  title: "Product of a dilution of one part and so many parts of water",
  inputs: [
    ["parts", "x", "parts of water", "none", ["1", "1"], [4, 200]],
    ["finished", "V", "finished spray", "spray", volume, [1, 100]],
  ],
  output: ["P", "product", "product", volume],
  equation: "P = V / (x + 1)",
  run: ({ parts, finished }) =>
    dilutionAmounts({ parts: parts.in("1"), reading: "1 plus x", finished }).product,
  traps: ["Dividing by the parts of water alone: the product is a part too."],
  basis: "definition",
  sources: [ohioPruningTools],
});

export const dilutionByPercentFormula: FormulaSpec = formula({
  id: "dilution-by-percent",
  name: "dilutionAmounts",
  title: "Product of a dilution in percent by volume",
  inputs: [
    ["strength", "c", "product in the finished spray", "none", ["%", "%"], [0.25, 5]],
    ["finished", "V", "finished spray", "spray", volume, [1, 100]],
  ],
  output: ["P", "product", "product", volume],
  equation: "P = V * c / 100",
  run: ({ strength, finished }) =>
    dilutionAmounts({ parts: 100 / strength.in("%"), reading: "1 in x", finished }).product,
  traps: [
    "Taking 16 ounces for a gallon: it has 128 fluid ounces.",
    "Pouring the product on top of the full tank.",
  ],
  basis: "definition",
  sources: [pesticideCalculationsMixing],
});

export const rinseResidueFormula: FormulaSpec = formula({
  id: "rinse-residue",
  name: "rinseResidue",
  title: "What is left after rinsing",
  inputs: [
    ["heel", "r", "what stays after draining", "none", small, [1, 20]],
    ["rinse", "v", "water of one rinse", "none", small, [20, 100]],
    ["rinses", "n", "rinses", "none", count, [1, 4]],
  ],
  output: ["f", "share left", "none", ["%", "%"], ["1", "1"]],
  equation: "f = (r / (r + v)) ^ n",
  run: ({ heel, rinse, rinses }) => rinseResidue({ heel, rinse, rinses: Math.round(rinses.in("count")) }),
  traps: ["One big rinse instead of three small ones: it leaves more."],
  basis: "derived",
  sources: [exponentialRinsing],
});

export const concentrateForStrengthFormula: FormulaSpec = formula({
  id: "concentrate-for-strength",
  name: "concentrateFor",
  title: "Concentrate for a spray of a given strength",
  inputs: [
    ["strength", "C_2", "strength of the spray", "ai/spray", ["% v/v", "% v/v"], [0.5, 5]],
    ["concentration", "C_1", "strength of the concentrate", "ai/product", ["% v/v", "% v/v"], [20, 60]],
    ["finished", "V_2", "finished spray", "spray", volume, [1, 100]],
  ],
  output: ["V_1", "concentrate", "product", volume],
  equation: "V_1 = V_2 * C_2 / C_1",
  run: (given) => concentrateFor(given).product,
  traps: ["Taking the percentage of active ingredient for the percentage of product."],
  basis: "definition",
  sources: [missouriPesticideDilution, armyPesticidesMilitaryAtPage],
});

/** Loads: how much goes into the tank, and how far it goes. */
export const tankMixes: readonly FormulaSpec[] = [
  formula({
    id: "amount-for-area",
    name: "amountFor",
    title: "Dry product for an area at a label rate",
    inputs: [
      ["rate", "R", "label rate", "product", ["lb/acre", "kg/ha"], [0.5, 8]],
      ["area", "A", "area", "none", area, [0.5, 20]],
    ],
    output: ["m", "product", "product", ["lb", "kg"]],
    equation: "m = R * A",
    run: ({ rate, area: field }) => amountFor({ rate, area: field, form: "dry" }),
    traps: ["Taking a rate per 1,000 square feet for one per acre."],
    basis: "definition",
    sources: [oklahomaCalibratingApplication],
  }),
  liquidForAreaFormula,
  areaPerTankFormula,
  formula({
    id: "mix-to-finish",
    name: "mixToFinish",
    title: "Spray to mix for what is left of a job",
    inputs: [
      ["area", "A", "area still to do", "none", area, [0.5, 10]],
      ["applicationVolume", "V", "application volume", "spray", perArea, [20, 90]],
      ["atHand", "H", "spray in tank and hoses", "spray", volume, [1, 30]],
      ["residualVolume", "D", "volume that the pump does not draw", "spray", volume, [0.5, 4]],
    ],
    output: ["S", "spray to mix", "spray", volume],
    equation: "S = max(0, V * A + D - H)",
    run: (given) => mixToFinish(given).toMix,
    traps: ["Filling up: what is left over has to go somewhere."],
    basis: "definition",
    sources: [albertaCropProtectionAtSprayerCalibration],
  }),
  formula({
    id: "implied-area-rate",
    name: "impliedAreaRate",
    title: "Rate per area of a spot spray",
    inputs: [
      ["rate", "c", "rate for each volume of spray", "product/spray", ["fl oz/gal", "mL/L"], [0.5, 6]],
      ["applicationVolume", "V", "application volume on the spots", "spray", perArea, [20, 150]],
    ],
    output: ["R", "rate", "product", ["fl oz/acre", "mL/ha"]],
    equation: "R = c * V",
    run: impliedAreaRate,
    traps: [
      "Taking a rate for each gallon as one without a limit: spraying to wet can pass the limit per acre.",
    ],
    basis: "definition",
    sources: [sprayWaterVolumes],
  }),
  formula({
    id: "strength-for-area-rate",
    name: "strengthForAreaRate",
    title: "What to mix into each gallon for a rate per area",
    inputs: [
      ["rate", "R", "rate", "product", ["fl oz/acre", "mL/ha"], [8, 128]],
      ["applicationVolume", "V", "application volume", "spray", perArea, [20, 150]],
    ],
    output: ["c", "product for each volume of spray", "product/spray", ["fl oz/gal", "mL/L"]],
    equation: "c = R / V",
    run: strengthForAreaRate,
    traps: ["Guessing the application volume of a hand sprayer: calibrate it."],
    basis: "definition",
    sources: [peanutUsingCrop],
  }),
  formula({
    id: "rate-per-volume",
    name: "perVolume",
    title: "Rate per volume of spray from a recipe",
    inputs: [
      ["amount", "m", "product", "product", small, [8, 64]],
      ["volume", "V", "spray that it is printed for", "spray", volume, [25, 100]],
    ],
    output: ["c", "rate for each volume", "product/spray", ["fl oz/gal", "mL/L"]],
    equation: "c = m / V",
    run: ({ amount, volume: printed }) => perVolume(amount, printed),
    traps: ["Reading pints for each 100 gallons as pints for each gallon."],
    basis: "definition",
    sources: [usgaDontLet, newEnglandDilution],
  }),
  concentrateForStrengthFormula,
  formula({
    id: "finished-from-concentrate",
    name: "finishedFrom",
    title: "Spray that an amount of concentrate makes",
    inputs: [
      ["product", "V_1", "concentrate", "product", volume, [0.1, 5]],
      ["concentration", "C_1", "strength of the concentrate", "ai/product", ["% v/v", "% v/v"], [20, 60]],
      ["strength", "C_2", "strength of the spray", "ai/spray", ["% v/v", "% v/v"], [0.5, 5]],
    ],
    output: ["V_2", "finished spray", "spray", volume],
    equation: "V_2 = V_1 * C_1 / C_2",
    run: finishedFrom,
    traps: ["Adding that much water: the concentrate is a part of the finished spray."],
    basis: "definition",
    sources: [armyPesticidesMilitaryAtPageProblem],
  }),
  formula({
    id: "strength-of-spray",
    name: "strengthOf",
    title: "Strength of a finished spray",
    inputs: [
      ["product", "V_1", "concentrate", "product", volume, [0.1, 2]],
      ["concentration", "C_1", "strength of the concentrate", "ai/product", ["% v/v", "% v/v"], [20, 60]],
      ["finished", "V_2", "finished spray", "spray", volume, [10, 100]],
    ],
    output: ["C_2", "strength of the spray", "ai/spray", ["% v/v", "% v/v"]],
    equation: "C_2 = C_1 * V_1 / V_2",
    run: strengthOf,
    traps: ["Dividing by the water alone instead of the finished spray."],
    basis: "definition",
    sources: [texasNutritionFertilityAtPractical],
  }),
  dilutionOneInFormula,
  dilutionOnePlusFormula,
  dilutionByPercentFormula,
  rinseResidueFormula,
  formula({
    id: "tank-rinse-residue",
    name: "tankRinse",
    title: "What is left when the rinse water is divided",
    inputs: [
      ["heel", "r", "what tank and hoses keep", "none", volume, [1, 6]],
      ["water", "W", "rinse water in all", "none", volume, [10, 60]],
      ["rinses", "n", "rinses", "none", count, [1, 4]],
    ],
    output: ["f", "share left", "none", ["%", "%"], ["1", "1"]],
    equation: "f = (r / (r + W / n)) ^ n",
    run: ({ heel, water, rinses }) =>
      tankRinse({ heel, water, rinses: Math.round(rinses.in("count")) }).residue,
    traps: ["Using all the water at once: in three parts it leaves far less."],
    basis: "derived",
    sources: [exponentialRinsing],
  }),
];
