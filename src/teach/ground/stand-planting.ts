import { quantity } from "../../quantity/index.js";
import {
  bulkSeed,
  nurseryArea,
  passesForShare,
  plantsFor,
  plantsPerArea,
  pureLiveSeed,
  pureLiveSeedIn,
  seedingRate,
  seedOrder,
  seedsPerArea,
  sodForPlugs,
  sodOrder,
  spacingFor,
  staggeredRowSpacing,
  topdressing,
} from "../../stand/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  adviceSeedCount,
  adviceSpacePlants,
  allamakeeCalculateSeeding,
  gardenersPlantingBuffalo,
  gardenMuchGround,
  internationalSandTopdressing,
  lsuPureLive,
  notesAerificationPercentages,
  pennCalculatingPrice,
  plantingGroundcoverSpacing,
  plantingInstructionsInstalling,
  texasPureLive,
} from "../works/stand-works.js";

const area = ["ft2", "m2"] as const;
const rate = ["lb/1000 ft2", "kg/ha"] as const;
const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const count = ["count", "count"] as const;
const mass = ["lb", "kg"] as const;
const P = ["purity", "p", "purity", "none", share, [80, 99]] as const;
const G = ["germination", "g", "germination", "none", share, [70, 95]] as const;
const bulkTrap = "Multiplying by the pure live share to go to bulk seed: it is divided by.";
const A = ["area", "A", "area", "none", area, [500, 40000]] as const;
const s = ["spacing", "s", "spacing", "none", ["in", "cm"], [4, 18], ["ft", "m"]] as const;
const perArea = ["count/ft2", "count/m2"] as const;

export const pureLiveSeedFormula: FormulaSpec = formula({
  id: "pure-live-seed",
  name: "pureLiveSeed",
  title: "Pure live seed of a lot",
  inputs: [P, G],
  output: ["L", "pure live seed", "pure live seed/seed", ["% w/w", "% w/w"]],
  equation: "L = p * g / 100",
  run: pureLiveSeed,
  traps: ["Adding purity and germination, or taking one of them alone."],
  basis: "published",
  sources: [lsuPureLive, pennCalculatingPrice],
});

export const bulkSeedFormula: FormulaSpec = formula({
  id: "bulk-seed",
  name: "bulkSeed",
  title: "Bulk seed for a rate of pure live seed",
  inputs: [["pureLiveSeed", "R", "rate of pure live seed", "pure live seed", rate, [0.5, 8]], P, G],
  output: ["B", "rate of bulk seed", "seed", rate],
  equation: "B = R * 100 / (p * g / 100)",
  run: ({ pureLiveSeed: live, ...lot }) => bulkSeed({ pureLiveSeed: live, lot }),
  traps: [bulkTrap],
  basis: "published",
  sources: [lsuPureLive, texasPureLive],
});

export const seedOrderFormula: FormulaSpec = formula({
  id: "seed-order",
  name: "seedOrder",
  title: "Seed for an area",
  inputs: [A, ["rate", "R", "seeding rate", "seed", rate, [1, 10], ["lb/ft2", "kg/m2"]]],
  output: ["B", "seed", "seed", mass],
  equation: "B = A * R",
  run: (given) => seedOrder(given).seed,
  traps: ["Taking a rate of pure live seed for one of seed out of the bag."],
  basis: "definition",
  sources: [lsuPureLive],
});

export const plantsForAreaFormula: FormulaSpec = formula({
  id: "plants-for-area",
  name: "plantsFor",
  title: "Plugs for an area in a square pattern",
  inputs: [A, s],
  output: ["N", "plugs", "none", count],
  equation: "N = ceil(A / s ^ 2)",
  run: (given) => quantity(plantsFor({ ...given, pattern: "square" }).plants, "count"),
  traps: ["Leaving the spacing in inches with an area in square feet."],
  basis: "geometry",
  sources: [plantingGroundcoverSpacing],
});

export const plantsForAreaWithExtraFormula: FormulaSpec = formula({
  id: "plants-for-area-with-extra",
  name: "plantsFor",
  title: "Plugs for an area in a square pattern, with some more for losses",
  inputs: [A, s, ["extra", "x", "more for losses", "none", share, [2, 20], pure]],
  output: ["N", "plugs", "none", count],
  equation: "N = ceil(A / s ^ 2 * (1 + x))",
  run: (given) => quantity(plantsFor({ ...given, pattern: "square" }).plants, "count"),
  traps: ["Leaving the spacing in inches with an area in square feet.", "Taking the percent off."],
  basis: "geometry",
  sources: [plantingGroundcoverSpacing],
});

export const sodOrderFormula: FormulaSpec = formula({
  id: "sod-order",
  name: "sodOrder",
  title: "Sod for an area, with waste",
  inputs: [A, ["waste", "w", "added for waste", "none", share, [3, 10], pure]],
  output: ["B", "sod", "none", area],
  equation: "B = A * (1 + w)",
  run: (given) => sodOrder(given).needed,
  traps: ["Ordering the bare area: edges and cuts waste some."],
  basis: "definition",
  sources: [gardenMuchGround],
});

/** Seed, sprigs, plugs and sod. */
export const planting: readonly FormulaSpec[] = [
  pureLiveSeedFormula,
  bulkSeedFormula,
  formula({
    id: "pure-live-seed-in",
    name: "pureLiveSeedIn",
    title: "Pure live seed in an amount of bulk seed",
    inputs: [["seed", "B", "bulk seed", "seed", mass, [5, 500]], P, G],
    output: ["L", "pure live seed", "pure live seed", mass],
    equation: "L = B * (p * g / 100) / 100",
    run: ({ seed, ...lot }) => pureLiveSeedIn({ seed, lot }),
    traps: ["Dividing by the share: that goes from pure live seed to bulk seed."],
    basis: "published",
    sources: [allamakeeCalculateSeeding],
  }),
  seedOrderFormula,
  formula({
    id: "seeds-per-area",
    name: "seedsPerArea",
    title: "Seeds per area at a rate",
    inputs: [
      ["rate", "R", "seeding rate", "seed", rate, [1, 10], ["lb/ft2", "kg/m2"]],
      ["seedsPerMass", "c", "seeds in each weight", "none", ["count/lb", "count/kg"], [200000, 2000000]],
    ],
    output: ["n", "seeds", "seed", perArea],
    equation: "n = R * c",
    run: seedsPerArea,
    traps: ["Using one seed count for two kinds of grass: they differ by ten times."],
    basis: "definition",
    sources: [adviceSeedCount],
  }),
  formula({
    id: "seeding-rate",
    name: "seedingRate",
    title: "Rate of pure live seed for a number of live seeds",
    inputs: [
      ["liveSeeds", "n", "live seeds", "pure live seed", perArea, [500, 2500]],
      ["seedsPerMass", "c", "seeds in each weight", "none", ["count/lb", "count/kg"], [200000, 2000000]],
    ],
    output: ["R", "rate", "pure live seed", rate, ["lb/ft2", "kg/m2"]],
    equation: "R = n / c",
    run: seedingRate,
    traps: ["Taking the result for bulk seed."],
    basis: "definition",
    sources: [adviceSeedCount],
  }),
  formula({
    id: "plants-per-area-square",
    name: "plantsPerArea",
    title: "Plugs per area in a square pattern",
    inputs: [s],
    output: ["n", "plugs", "none", perArea],
    equation: "n = 1 / s ^ 2",
    run: ({ spacing }) => plantsPerArea({ pattern: "square", spacing }),
    traps: ["Halving the spacing takes four times the plugs, not twice."],
    basis: "geometry",
    sources: [plantingInstructionsInstalling],
  }),
  formula({
    id: "plants-per-area-triangular",
    name: "plantsPerArea",
    title: "Plugs per area in a triangular pattern",
    inputs: [s],
    output: ["n", "plugs", "none", perArea],
    equation: "n = 2 / (sqrt(3) * s ^ 2)",
    run: ({ spacing }) => plantsPerArea({ pattern: "triangular", spacing }),
    traps: ["Counting as for a square pattern: 15.5 % too few."],
    basis: "geometry",
    sources: [adviceSpacePlants],
  }),
  formula({
    id: "plug-spacing",
    name: "spacingFor",
    title: "Spacing of plugs for a number per area",
    inputs: [["plantsPerArea", "n", "plugs", "none", perArea, [0.5, 9]]],
    output: ["s", "spacing", "none", ["in", "cm"], ["ft", "m"]],
    equation: "s = 1 / sqrt(n)",
    run: (given) => spacingFor({ ...given, pattern: "square" }),
    traps: ["Dividing one foot by the number: the root of it comes first."],
    basis: "geometry",
    sources: [],
  }),
  formula({
    id: "staggered-row-spacing",
    name: "staggeredRowSpacing",
    title: "Distance of the rows in a triangular pattern",
    inputs: [["spacing", "s", "spacing", "none", ["in", "cm"], [4, 18]]],
    output: ["r", "distance of the rows", "none", ["in", "cm"]],
    equation: "r = s * sqrt(3) / 2",
    run: ({ spacing }) => staggeredRowSpacing(spacing),
    traps: ["Setting the rows as far apart as the plants."],
    basis: "geometry",
    sources: [gardenersPlantingBuffalo],
  }),
  plantsForAreaFormula,
  plantsForAreaWithExtraFormula,
  formula({
    id: "sod-for-plugs",
    name: "sodForPlugs",
    title: "Sod to cut plugs from",
    inputs: [
      ["plugs", "N", "plugs", "none", count, [100, 5000]],
      ["side", "p", "side of a plug", "none", ["in", "cm"], [2, 4], ["ft", "m"]],
    ],
    output: ["A", "sod", "none", area],
    equation: "A = N * p ^ 2",
    run: ({ plugs, side }) => sodForPlugs({ plugs: Math.round(plugs.in("count")), plug: { side } }),
    traps: ["Dividing square inches by 12: a square foot has 144."],
    basis: "geometry",
    sources: [],
  }),
  sodOrderFormula,
  formula({
    id: "nursery-area",
    name: "nurseryArea",
    title: "Nursery turf for an area to sprig",
    inputs: [A, ["expansion", "e", "times its own area that it plants", "none", pure, [5, 20]]],
    output: ["B", "nursery turf", "none", area],
    equation: "B = A / e",
    run: ({ area: ground, expansion }) => nurseryArea({ area: ground, expansion: expansion.in("1") }),
    traps: ["Multiplying by the expansion."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "passes-for-share",
    name: "passesForShare",
    title: "Passes of coring for a share of the surface",
    inputs: [
      ["target", "S", "share wanted", "none", share, [10, 25]],
      ["share", "s", "share of one pass", "none", share, [2, 9]],
    ],
    output: ["n", "passes", "none", count],
    equation: "n = ceil(S / s)",
    run: (given) => quantity(passesForShare(given), "count"),
    traps: ["Rounding down: the share is not reached."],
    basis: "common practice, no source",
    sources: [notesAerificationPercentages],
  }),
  formula({
    id: "topdressing-volume",
    name: "topdressing",
    title: "Sand for a depth of topdressing",
    inputs: [A, ["depth", "d", "depth", "none", ["in", "mm"], [0.03, 0.4], ["ft", "m"]]],
    output: ["V", "sand", "none", ["ft3", "m3"]],
    equation: "V = A * d",
    run: (given) => topdressing(given).volume,
    traps: ["Leaving the depth in inches."],
    basis: "definition",
    sources: [internationalSandTopdressing],
  }),
];
