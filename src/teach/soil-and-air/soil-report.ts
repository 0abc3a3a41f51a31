import {
  acidityFromBuffer,
  amountInSoil,
  contentInSoil,
  contentOfCharge,
  exchangeableCharge,
  limeForDepth,
  limeForRating,
  limeProductRate,
  limeQuality,
  nutrientUse,
  soilMass,
  sulfurForCarbonate,
} from "../../soil/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { atomicWeights } from "../works/nutrient-works.js";
import {
  clemsonExchange,
  courseSoilUnits,
  davisLime,
  missouriLime,
  pennLime,
  texasSoilTests,
  triStateLime,
  turfNutritionSlides,
} from "../works/soil-and-air-works.js";

const depth = ["depth", "d", "depth of the layer", "none", ["in", "cm"], [2, 8], ["ft", "m"]] as const;
const density = [
  "bulkDensity",
  "rho",
  "dry bulk density of the soil",
  "soil",
  ["g/mL", "g/mL"],
  [0.9, 1.7],
  ["lb/ft3", "kg/m3"],
] as const;
const ground = ["lb/ft2", "kg/m2"] as const;
const usual = ["lb/acre", "kg/ha"] as const;
const content = ["ppm w/w", "mg/kg"] as const;
const charge = ["meq/100 g", "cmolc/kg"] as const;
const pure = ["% w/w", "% w/w"] as const;
const twoMillion =
  "Doubling parts per million for pounds an acre: that holds for 2,000,000 lb of soil only, not for any depth and density.";

export const soilMassFormula: FormulaSpec = formula({
  id: "soil-mass",
  name: "soilMass",
  title: "Dry weight of a layer of soil",
  inputs: [depth, density],
  output: ["m", "weight of the layer", "soil", usual, ground],
  equation: "m = d * rho",
  run: soilMass,
  traps: [
    "Taking 2,000,000 lb an acre for every layer: it is for 6 2/3 in of an average soil.",
    "Weighing the soil wet: the density is that of dry soil.",
  ],
  basis: "definition",
  sources: [davisLime],
});

export const amountInSoilFormula: FormulaSpec = formula({
  id: "amount-in-soil",
  name: "amountInSoil",
  title: "Potassium that a layer of soil holds, from a report in parts per million",
  inputs: [
    ["content", "c", "potassium in the soil", "K/soil", content, [20, 300], ["lb/lb", "kg/kg"]],
    depth,
    density,
  ],
  output: ["a", "potassium in the layer", "K", usual, ground],
  equation: "a = c * d * rho",
  run: ({ content: found, ...layer }) => amountInSoil(found, layer),
  traps: [twoMillion, "Reading K as potash: K2O is 1.2 times as heavy."],
  basis: "definition",
  sources: [texasSoilTests],
});

/** What a layer of soil weighs and holds. */
export const soilContents: readonly FormulaSpec[] = [
  soilMassFormula,
  amountInSoilFormula,
  formula({
    id: "content-in-soil",
    name: "contentInSoil",
    title: "Parts per million of potassium, from a report in pounds an acre",
    inputs: [["amount", "a", "potassium in the layer", "K", usual, [40, 500], ground], depth, density],
    output: ["c", "potassium in the soil", "K/soil", content, ["lb/lb", "kg/kg"]],
    equation: "c = a / (d * rho)",
    run: ({ amount, ...layer }) => contentInSoil(amount, layer),
    traps: [
      "Halving pounds an acre for parts per million whatever the depth: that holds for 2,000,000 lb of soil only.",
    ],
    basis: "definition",
    sources: [texasSoilTests],
  }),
  formula({
    id: "exchangeable-charge",
    name: "exchangeableCharge",
    title: "Charge of exchangeable calcium, from its content",
    inputs: [["content", "c", "calcium in the soil", "Ca/soil", content, [200, 3000]]],
    output: ["q", "charge of the calcium", "Ca/soil", charge],
    equation: "q = c / (10 * 40.078 / 2)",
    run: ({ content: found }) => exchangeableCharge(found),
    traps: ["Dividing by the whole atomic weight: calcium has two charges."],
    basis: "definition",
    sources: [atomicWeights, courseSoilUnits],
  }),
  formula({
    id: "content-of-charge",
    name: "contentOfCharge",
    title: "Content of exchangeable calcium, from its charge",
    inputs: [["charge", "q", "charge of the calcium", "Ca/soil", charge, [1, 15]]],
    output: ["c", "calcium in the soil", "Ca/soil", content],
    equation: "c = 10 * q * 40.078 / 2",
    run: ({ charge: found }) => contentOfCharge(found),
    traps: ["Multiplying by the whole atomic weight: calcium has two charges."],
    basis: "definition",
    sources: [atomicWeights, courseSoilUnits],
  }),
];

/** What leaves with the clippings. */
export const nutrientInLeaf: readonly FormulaSpec[] = [
  formula({
    id: "potassium-use",
    name: "nutrientUse",
    title: "Potassium that turf takes up with its nitrogen",
    inputs: [
      ["nitrogen", "N", "nitrogen that the turf gets", "N", ["lb/1000 ft2", "g/m2"], [1, 5]],
      [
        "perNitrogen",
        "r",
        "parts of potassium for a part of nitrogen in the leaf",
        "none",
        ["1", "1"],
        [0.3, 0.8],
      ],
    ],
    output: ["U", "potassium", "K", ["lb/1000 ft2", "g/m2"]],
    equation: "U = N * r",
    run: ({ nitrogen, perNitrogen }) =>
      nutrientUse({ nitrogen, nutrient: "K", perNitrogen: perNitrogen.in("1") }),
    traps: ["Taking it for a need: clippings that stay bring it back, and the soil holds some."],
    basis: "definition",
    sources: [turfNutritionSlides],
  }),
];

export const limeForEquivalentFormula: FormulaSpec = formula({
  id: "lime-for-equivalent",
  name: "limeProductRate",
  title: "Rate of a lime by its calcium carbonate equivalent",
  inputs: [
    [
      "rate",
      "L",
      "calcium carbonate equivalent that the report asks for",
      "CaCO3 equivalent",
      ["lb/1000 ft2", "kg/ha"],
      [20, 100],
    ],
    ["equivalent", "e", "calcium carbonate equivalent of the lime", "none", ["%", "%"], [60, 105]],
  ],
  output: ["P", "rate of this lime", "product", ["lb/1000 ft2", "kg/ha"]],
  equation: "P = L * 100 / e",
  run: ({ rate, equivalent }) =>
    limeProductRate({
      rate,
      measure: "CCE",
      quality: limeQuality({ CCE: equivalent.in("%") }),
      id: "lime",
    }).rate,
  traps: ["Multiplying by the equivalent: a weaker lime takes more of it."],
  basis: "published",
  sources: [pennLime],
});

/** Lime, sulfur and the acid of a soil. */
export const limeAndSulfur: readonly FormulaSpec[] = [
  formula({
    id: "acidity-from-buffer",
    name: "acidityFromBuffer",
    title: "Exchangeable acidity from the pH in the Adams-Evans buffer",
    inputs: [["bufferPH", "b", "pH of the soil in the buffer", "none", ["1", "1"], [7.2, 7.95]]],
    output: ["A", "acidity", "none", charge],
    equation: "A = 8 * (8 - b)",
    run: ({ bufferPH }) => acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: bufferPH.in("1") }),
    traps: [
      "Using the figures of one buffer with the reading of another: each starts at a different pH.",
      "Using the pH in water: the buffer pH is another line of the report.",
    ],
    basis: "published",
    sources: [clemsonExchange],
  }),
  formula({
    id: "lime-for-depth",
    name: "limeForDepth",
    title: "Lime rate for another depth of soil",
    inputs: [
      [
        "rate",
        "L_1",
        "lime rate of the recommendation",
        "CaCO3 equivalent",
        ["lb/1000 ft2", "kg/ha"],
        [20, 100],
      ],
      ["from", "d_1", "depth that it was made for", "none", ["in", "cm"], [6, 9]],
      ["to", "d_2", "depth that the lime reaches", "none", ["in", "cm"], [2, 6]],
    ],
    output: ["L_2", "lime rate for that depth", "CaCO3 equivalent", ["lb/1000 ft2", "kg/ha"]],
    equation: "L_2 = L_1 * d_2 / d_1",
    run: limeForDepth,
    traps: ["Putting the rate for 8 in on standing turf: it stays in the top few inches."],
    basis: "published",
    sources: [triStateLime],
  }),
  formula({
    id: "lime-for-rating",
    name: "limeForRating",
    title: "Rate of a lime whose label states a rating per ton",
    inputs: [
      [
        "recommended",
        "R",
        "rating that the report asks for",
        "other:ENM",
        usual,
        [400, 3000],
        ["lb/acre", "kg/ha"],
      ],
      [
        "rating",
        "r",
        "rating of the lime",
        "other:ENM/product",
        ["lb/US ton", "kg/t"],
        [300, 1600],
        ["lb/US ton", "kg/t"],
      ],
    ],
    output: ["P", "rate of this lime", "product", ["US ton/acre", "t/ha"]],
    equation: "P = R / r",
    run: limeForRating,
    traps: ["Taking the rating of the report for pounds of lime: it counts what works, not what is spread."],
    basis: "definition",
    sources: [missouriLime],
  }),
  limeForEquivalentFormula,
  formula({
    id: "sulfur-for-carbonate",
    name: "sulfurForCarbonate",
    title: "Sulfur that the free lime of a soil takes up first",
    inputs: [
      [
        "carbonate",
        "c",
        "free lime in the soil, as calcium carbonate",
        "CaCO3 equivalent/soil",
        pure,
        [0.2, 5],
        ["lb/lb", "kg/kg"],
      ],
      depth,
      density,
    ],
    output: ["S", "sulfur", "S", usual, ground],
    equation: "S = c * d * rho * 32.06 / (40.078 + 12.011 + 3 * 15.999)",
    run: ({ carbonate, ...layer }) => sulfurForCarbonate({ carbonate, layer }),
    traps: [
      "Treating a soil with free lime like an acid one: no program for established turf supplies that much sulfur.",
    ],
    basis: "derived",
    sources: [atomicWeights],
  }),
];
