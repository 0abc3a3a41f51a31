import { areaCovered, packageCoverage, packagesFor } from "../../nutrient/index.js";
import { quantity, quantityOf } from "../../quantity/index.js";
import { amountFor, areaPerTank, tankLoads } from "../../tank/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  cornellAnotherSet,
  virginiaApplicationSection,
  virginiaTurfgrassMathematicsAtStandard,
} from "../works/nutrient-works.js";
import { albertaCropProtectionAtSprayer } from "../works/spray-works.js";
import {
  agrochemicalSafetyTank,
  oklahomaCalibratingApplication,
  pesticideCalculationsMixing,
  pesticideCalculationsMixingAtModule,
} from "../works/tank-works.js";

const perArea = ["gal/acre", "L/ha"] as const;
const volume = ["gal", "L"] as const;
const mass = ["lb", "kg"] as const;
const field = ["acre", "ha"] as const;
const lawn = ["ft2", "m2"] as const;
const blocks = ["1000 ft2", "ha"] as const;
const rate = ["lb/1000 ft2", "kg/ha"] as const;
const count = ["count", "count"] as const;
const acreTrap = "Taking a rate per 1,000 square feet for one per acre: 43.56 times off.";
const roundUp = "Rounding down: the last part of the site would get nothing.";

export const productForAreaFormula: FormulaSpec = formula({
  id: "product-for-area",
  name: "amountFor",
  title: "Dry product for the area of a lawn",
  inputs: [
    ["rate", "R", "product rate", "product", rate, [1, 10]],
    ["area", "A", "area", "none", lawn, [1000, 50000], blocks],
  ],
  output: ["m", "product", "product", mass],
  equation: "m = R * A",
  run: (given) => amountFor({ ...given, form: "dry" }),
  traps: [acreTrap, "Multiplying by the square feet without dividing by 1,000."],
  basis: "definition",
  sources: [oklahomaCalibratingApplication, virginiaTurfgrassMathematicsAtStandard],
});

export const liquidForLawnFormula: FormulaSpec = formula({
  id: "liquid-for-lawn",
  name: "amountFor",
  title: "Liquid product for the area of a lawn",
  inputs: [
    ["rate", "R", "product rate", "product", ["fl oz/1000 ft2", "mL/ha"], [0.1, 6]],
    ["area", "A", "area", "none", lawn, [1000, 50000], blocks],
  ],
  output: ["m", "product", "product", ["fl oz", "mL"]],
  equation: "m = R * A",
  run: (given) => amountFor({ ...given, form: "liquid" }),
  traps: [acreTrap, "Weighing fluid ounces: they are a volume."],
  basis: "definition",
  sources: [oklahomaCalibratingApplication],
});

export const lawnPerTankFormula: FormulaSpec = formula({
  id: "lawn-per-tank",
  name: "areaPerTank",
  title: "Lawn that one tank covers",
  inputs: [
    ["capacity", "C", "tank, as far as it is filled", "spray", volume, [25, 300]],
    ["applicationVolume", "V", "application volume", "spray", ["gal/1000 ft2", "L/ha"], [0.5, 4]],
  ],
  output: ["A", "area", "none", blocks],
  equation: "A = C / V",
  run: areaPerTank,
  traps: ["Dividing the other way around: that is tanks for each 1,000 square feet."],
  basis: "definition",
  sources: [oklahomaCalibratingApplication],
});

export const sprayForLawnFormula: FormulaSpec = formula({
  id: "spray-for-lawn",
  name: "tankLoads",
  title: "Spray that the area of a lawn takes",
  inputs: [
    ["area", "A", "area", "none", lawn, [1000, 50000], blocks],
    ["applicationVolume", "V", "application volume", "spray", ["gal/1000 ft2", "L/ha"], [0.5, 4]],
  ],
  output: ["S", "spray", "spray", volume],
  equation: "S = V * A",
  run: (given) => tankLoads({ ...given, capacity: quantity(200, "gal", "spray") }).volume,
  traps: ["Multiplying by the square feet without dividing by 1,000."],
  basis: "definition",
  sources: [oklahomaCalibratingApplication],
});

export const sprayForAreaFormula: FormulaSpec = formula({
  id: "spray-for-area",
  name: "tankLoads",
  title: "Spray that an area takes",
  inputs: [
    ["area", "A", "area", "none", field, [0.5, 20]],
    ["applicationVolume", "V", "application volume", "spray", perArea, [10, 90]],
  ],
  output: ["S", "finished spray", "spray", volume],
  equation: "S = V * A",
  run: (given) => tankLoads({ ...given, capacity: quantity(200, "gal", "spray") }).volume,
  traps: ["Leaving out what stays in the tank and the hoses."],
  basis: "definition",
  sources: [agrochemicalSafetyTank, albertaCropProtectionAtSprayer],
});

export const tankLoadCountFormula: FormulaSpec = formula({
  id: "tank-load-count",
  name: "tankLoads",
  title: "Loads that an area takes",
  inputs: [
    ["area", "A", "area", "none", field, [1, 20]],
    ["applicationVolume", "V", "application volume", "spray", perArea, [20, 90]],
    ["capacity", "C", "tank, as far as it is filled", "spray", volume, [25, 300]],
  ],
  output: ["n", "loads", "none", count],
  equation: "n = ceil(V * A / C)",
  run: (given) => quantity(tankLoads(given).count, "count"),
  traps: [roundUp],
  basis: "definition",
  sources: [albertaCropProtectionAtSprayer],
});

export const liquidForSprayFormula: FormulaSpec = formula({
  id: "liquid-for-spray",
  name: "amountFor",
  title: "Liquid product for a volume of spray",
  inputs: [
    ["rate", "c", "rate in the spray", "product/spray", ["fl oz/gal", "mL/L"], [0.1, 4]],
    ["sprayVolume", "V", "finished spray", "spray", volume, [1, 300]],
  ],
  output: ["m", "product", "product", ["fl oz", "mL"]],
  equation: "m = c * V",
  run: (given) => amountFor({ ...given, form: "liquid" }),
  traps: ["Reading a recipe for each 100 gallons as one for each gallon."],
  basis: "definition",
  sources: [pesticideCalculationsMixing, pesticideCalculationsMixingAtModule],
});

export const dryProductForSprayFormula: FormulaSpec = formula({
  id: "dry-product-for-spray",
  name: "amountFor",
  title: "Dry product for a volume of spray",
  inputs: [
    ["rate", "c", "rate in the spray", "product/spray", ["lb/gal", "g/L"], [0.01, 0.5]],
    ["sprayVolume", "V", "finished spray", "spray", volume, [1, 300]],
  ],
  output: ["m", "product", "product", ["lb", "g"]],
  equation: "m = c * V",
  run: (given) => amountFor({ ...given, form: "dry" }),
  traps: ["Measuring a powder by the spoon: it is weighed."],
  basis: "definition",
  sources: [pesticideCalculationsMixing, pesticideCalculationsMixingAtModule],
});

/** How much product and spray an area takes, and how many loads. */
export const amountsForArea: readonly FormulaSpec[] = [
  productForAreaFormula,
  liquidForLawnFormula,
  lawnPerTankFormula,
  sprayForLawnFormula,
  liquidForSprayFormula,
  dryProductForSprayFormula,
  sprayForAreaFormula,
  tankLoadCountFormula,
];

export const packagesForNeedFormula: FormulaSpec = formula({
  id: "packages-for-need",
  name: "packagesFor",
  title: "Packages to open for a need",
  inputs: [
    ["need", "M", "product needed", "product", mass, [10, 2000]],
    ["contents", "B", "what one package holds", "none", mass, [20, 60]],
  ],
  output: ["n", "packages", "none", count],
  equation: "n = ceil(M / B)",
  run: ({ need, contents }) =>
    quantity(
      packagesFor(
        quantityOf<"mass", "product:the-label">(need.value, need.unit, "product:the-label", "need"),
        {
          id: "the-label",
          package: contents,
        },
      ).count,
      "count",
    ),
  traps: [roundUp, "Rounding the rate first, and then again the packages."],
  basis: "definition",
  sources: [virginiaTurfgrassMathematicsAtStandard],
});

export const packagesForVolumeFormula: FormulaSpec = formula({
  id: "packages-for-volume",
  name: "packagesFor",
  title: "Jugs to open for a need",
  inputs: [
    ["need", "M", "product needed", "product", ["fl oz", "mL"], [10, 2000]],
    ["contents", "B", "what one jug holds", "none", volume, [0.5, 5], ["fl oz", "mL"]],
  ],
  output: ["n", "jugs", "none", count],
  equation: "n = ceil(M / B)",
  run: ({ need, contents }) =>
    quantity(
      packagesFor(
        quantityOf<"volume", "product:the-label">(need.value, need.unit, "product:the-label", "need"),
        {
          id: "the-label",
          package: contents,
        },
      ).count,
      "count",
    ),
  traps: ["Taking a gallon for 64 fluid ounces: it is 128."],
  basis: "definition",
  sources: [virginiaTurfgrassMathematicsAtStandard],
});

/** Packages, and how far they go. */
export const packages: readonly FormulaSpec[] = [
  packagesForNeedFormula,
  packagesForVolumeFormula,
  formula({
    id: "area-covered",
    name: "areaCovered",
    title: "Area that an amount covers",
    inputs: [
      ["amount", "M", "product", "product", mass, [10, 500]],
      ["rate", "R", "product rate", "product", rate, [1, 10]],
    ],
    output: ["A", "area", "none", lawn, blocks],
    equation: "A = M / R",
    run: ({ amount, rate: each }) => areaCovered(amount, each),
    traps: ["Using a rate that was rounded for the spreader."],
    basis: "definition",
    sources: [virginiaApplicationSection],
  }),
  formula({
    id: "package-coverage",
    name: "packageCoverage",
    title: "Area that one package covers",
    inputs: [
      ["contents", "B", "what one package holds", "none", mass, [20, 60]],
      ["rate", "R", "product rate", "product", rate, [1, 10]],
    ],
    output: ["A", "area", "none", lawn, blocks],
    equation: "A = B / R",
    run: ({ contents, rate: each }) =>
      packageCoverage(
        { id: "the-label", package: contents },
        quantityOf<"mass/area", "product:the-label">(each.value, each.unit, "product:the-label", "rate"),
      ),
    traps: ["Reading the coverage on the bag: it holds for the rate on the bag alone."],
    basis: "definition",
    sources: [cornellAnotherSet],
  }),
];
