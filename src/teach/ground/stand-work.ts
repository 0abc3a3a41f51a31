import { quantity } from "../../quantity/index.js";
import {
  clippingMass,
  clippingVolumeFor,
  coringImpact,
  expectedSeedlings,
  growthRatio,
  pestDensity,
  pricePerPureLiveSeed,
  sandForOrganicMatter,
  spreadRateFromPatch,
  sprigsFor,
  verticuttingImpact,
} from "../../stand/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  bushelsOfSprigs,
  clippingUnits,
  grubCounts,
  iowaCoring,
  penPrice,
  sandByClippings,
  turfClippings,
} from "../works/stand-works.js";

const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const small = ["in", "mm"] as const;
const volume = ["qt/1000 ft2", "mL/m2"] as const;
const layer = ["ft3/ft2", "m3/m2"] as const;
const dry = [
  "dryMass",
  "rho",
  "dry mass in fresh clippings",
  "none",
  ["g/L", "g/L"],
  [40, 120],
  ["lb/ft3", "kg/m3"],
] as const;
const ofDry = ["share", "n", "nitrogen in the dry mass", "none", share, [2, 6], pure] as const;
const pressed = "Pressing the clippings down: the volume is that of fresh, loose clippings.";
const rate = ["lb/1000 ft2", "g/m2"] as const;
const ground = ["lb/ft2", "kg/m2"] as const;

export const clippingDryMassFormula: FormulaSpec = formula({
  id: "clipping-dry-mass",
  name: "clippingMass",
  title: "Dry mass of clippings",
  inputs: [["clippings", "V", "fresh volume of clippings", "none", volume, [2, 60], layer], dry],
  output: ["m", "dry mass", "none", rate, ground],
  equation: "m = V * rho",
  run: (given) => clippingMass({ ...given, nitrogen: quantity(4, "%") }).dryMass,
  traps: [pressed],
  basis: "definition",
  sources: [turfClippings],
});

export const clippingNitrogenFormula: FormulaSpec = formula({
  id: "clipping-nitrogen",
  name: "clippingMass",
  title: "Nitrogen in clippings",
  inputs: [["clippings", "V", "fresh volume of clippings", "none", volume, [2, 60], layer], dry, ofDry],
  output: ["N", "nitrogen", "N", rate, ground],
  equation: "N = V * rho * n",
  run: ({ share: nitrogen, ...given }) => clippingMass({ ...given, nitrogen }).nitrogen,
  traps: [pressed, "Taking the nitrogen of the fresh weight: the share is that of dry mass."],
  basis: "definition",
  sources: [turfClippings],
});

/** Clippings and what they say. */
export const clippings: readonly FormulaSpec[] = [
  clippingDryMassFormula,
  clippingNitrogenFormula,
  formula({
    id: "clipping-volume-for-nitrogen",
    name: "clippingVolumeFor",
    title: "Clippings that a rate of nitrogen makes",
    inputs: [["nitrogen", "N", "nitrogen", "N", rate, [0.1, 1], ground], dry, ofDry],
    output: ["V", "fresh volume of clippings", "none", volume, layer],
    equation: "V = N / (n * rho)",
    run: clippingVolumeFor,
    traps: ["Taking it for what will grow: some of the nitrogen stays in the roots and the soil."],
    basis: "definition",
    sources: [turfClippings],
  }),
  formula({
    id: "growth-ratio",
    name: "growthRatio",
    title: "Growth ratio: clippings mown over clippings wanted",
    inputs: [
      ["mown", "V_1", "clippings that were mown", "none", volume, [2, 60]],
      ["mownIn", "t_1", "over so much time", "none", ["d", "d"], [1, 10]],
      ["wanted", "V_2", "clippings that are wanted", "none", volume, [2, 60]],
      ["wantedIn", "t_2", "over so much time", "none", ["d", "d"], [1, 10]],
    ],
    output: ["G", "growth ratio", "none", pure],
    equation: "G = V_1 / t_1 / (V_2 / t_2)",
    run: ({ mown, mownIn, wanted, wantedIn }) =>
      growthRatio({ measured: { volume: mown, time: mownIn }, wanted: { volume: wanted, time: wantedIn } })
        .ratio,
    traps: ["Comparing a week of clippings with a day of them."],
    basis: "published",
    sources: [clippingUnits],
  }),
  formula({
    id: "sand-for-organic-matter",
    name: "sandForOrganicMatter",
    title: "Sand that keeps the organic matter where it is",
    inputs: [
      [
        "clippings",
        "V",
        "clippings over the same time",
        "none",
        ["gal/1000 ft2", "L/m2"],
        [10, 80],
        ["L/m2", "L/m2"],
      ],
      ["organicMatter", "M", "organic matter of the top layer", "none", share, [2, 10]],
    ],
    output: ["d", "depth of sand", "none", small, ["mm", "mm"]],
    equation: "d = 0.106 * V * (100 - M) / M",
    run: (given) => sandForOrganicMatter(given).depth,
    traps: [
      "Taking it for a recommendation: it is an estimate from some courses, to check by tests a year apart.",
    ],
    basis: "published",
    sources: [sandByClippings],
  }),
];

export const pestDensityOfThreeFormula: FormulaSpec = formula({
  id: "pest-density-of-three",
  name: "pestDensity",
  title: "Density of a pest from counts in three cores",
  inputs: [
    ["first", "a", "count in the first core", "none", ["count", "count"], [0, 9]],
    ["second", "b", "count in the second core", "none", ["count", "count"], [1, 9]],
    ["third", "c", "count in the third core", "none", ["count", "count"], [0, 9]],
    ["diameter", "d", "diameter of a core", "none", ["in", "cm"], [2, 8], ["ft", "m"]],
  ],
  output: ["D", "density", "none", ["count/ft2", "count/m2"]],
  equation: "D = (a + b + c) / 3 / (pi * d ^ 2 / 4)",
  run: ({ first, second, third, diameter }) =>
    pestDensity({
      counts: [first.in("count"), second.in("count"), third.in("count")],
      core: { diameter },
    }).density,
  traps: ["Judging by three cores: counts scatter, and grubs occur in patches."],
  basis: "definition",
  sources: [grubCounts],
});

/** Holes, grooves, seedlings, sprigs and patches. */
export const turfWork: readonly FormulaSpec[] = [
  formula({
    id: "coring-share",
    name: "coringImpact",
    title: "Share of the surface that coring opens",
    inputs: [
      ["diameter", "d", "diameter of the tine, outside", "none", small, [0.25, 0.75]],
      ["along", "a", "spacing along the pass", "none", small, [1, 3]],
      ["across", "b", "spacing across the pass", "none", small, [1, 3]],
    ],
    output: ["s", "share of the surface", "none", share, pure],
    equation: "s = pi * d ^ 2 / 4 / (a * b)",
    run: ({ diameter, along, across }) =>
      coringImpact({ diameter, measured: "outside", spacing: { along, across } }).share,
    traps: ["Taking the inside diameter for the holes: it is that of the cores."],
    basis: "geometry",
    sources: [iowaCoring],
  }),
  formula({
    id: "verticutting-share",
    name: "verticuttingImpact",
    title: "Share of the surface that verticutting opens",
    inputs: [
      ["blade", "t", "thickness of a blade", "none", small, [0.04, 0.12]],
      ["spacing", "s", "spacing from blade to blade", "none", small, [0.5, 2]],
    ],
    output: ["f", "share of the surface", "none", share, pure],
    equation: "f = t / s",
    run: (given) => verticuttingImpact(given).share,
    traps: ["Measuring the blade without its tip: the tip may be thicker."],
    basis: "geometry",
    sources: [],
  }),
  formula({
    id: "expected-seedlings",
    name: "expectedSeedlings",
    title: "Seedlings to expect from a seeding",
    inputs: [
      [
        "rate",
        "R",
        "rate of pure live seed",
        "pure live seed",
        ["lb/1000 ft2", "kg/ha"],
        [1, 8],
        ["lb/ft2", "kg/m2"],
      ],
      [
        "seedsPerMass",
        "c",
        "seeds in a weight",
        "none",
        ["count/lb", "count/g"],
        [200_000, 900_000],
        ["count/lb", "count/kg"],
      ],
      ["emergence", "e", "share of live seeds that comes up", "none", share, [20, 80], pure],
    ],
    output: ["n", "seedlings", "none", ["count/ft2", "count/m2"]],
    equation: "n = R * c * e",
    run: ({ rate: seed, seedsPerMass, emergence }) =>
      expectedSeedlings({ rate: seed, seedsPerMass, emergence: { share: emergence, source: "stated" } })
        .seedlings,
    traps: ["Taking the germination of the tag for what comes up in the field: that is less."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "price-per-pure-live-seed",
    name: "pricePerPureLiveSeed",
    title: "Price of pure live seed",
    inputs: [
      ["price", "c", "price of the seed in the bag", "none/seed", ["money:USD/lb", "money:USD/kg"], [1, 8]],
      ["purity", "u", "purity", "none", share, [70, 99], pure],
      ["germination", "g", "germination", "none", share, [60, 95], pure],
    ],
    output: ["C", "price of pure live seed", "none/pure live seed", ["money:USD/lb", "money:USD/kg"]],
    equation: "C = c / (u * g)",
    run: ({ price, ...lot }) => pricePerPureLiveSeed({ price, lot }),
    traps: ["Comparing the prices of bags: the cheaper bag may hold less that grows."],
    basis: "published",
    sources: [penPrice],
  }),
  formula({
    id: "sprig-volume",
    name: "sprigsFor",
    title: "Volume of sprigs for an area",
    inputs: [
      ["area", "A", "area", "none", ["acre", "ha"], [0.2, 5]],
      ["rate", "R", "bushels on each area", "none", ["count/acre", "count/ha"], [100, 900]],
      ["bushel", "b", "volume of one bushel", "none", ["ft3", "L"], [0.33, 1.25], ["ft3", "m3"]],
    ],
    output: ["V", "volume of sprigs", "none", ["ft3", "m3"]],
    equation: "V = A * R * b",
    run: (given) => sprigsFor(given).volume,
    traps: ["Taking every bushel for the same: one of sprigs runs from 0.32 to 1.25 cubic feet."],
    basis: "definition",
    sources: [bushelsOfSprigs],
  }),
  formula({
    id: "spread-of-a-patch",
    name: "spreadRateFromPatch",
    title: "How fast the edge of a patch moves outward",
    inputs: [
      ["before", "A_1", "area of the patch at first", "none", ["ft2", "m2"], [0.1, 1]],
      ["after", "A_2", "its area later", "none", ["ft2", "m2"], [1.1, 6]],
      ["time", "t", "time between", "none", ["d", "d"], [14, 120], ["week", "week"]],
    ],
    output: ["U", "spread", "none", ["in/week", "mm/week"], ["ft/week", "m/week"]],
    equation: "U = (sqrt(A_2 / pi) - sqrt(A_1 / pi)) / t",
    run: spreadRateFromPatch,
    traps: ["Dividing the growth of the area by the time: a large patch gains more of it at the same edge."],
    basis: "geometry",
    sources: [],
  }),
  pestDensityOfThreeFormula,
];
