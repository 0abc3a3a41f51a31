import {
  coverArea,
  coverDepth,
  coverVolume,
  dryBulkDensity,
  layerMaterial,
  moistBulkDensity,
  reducedBuffer,
} from "../../site/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  pesticideDriftEsa,
  soilPracticeProblems,
  usgaGoldilocksPrinciple,
  usgaTooEasy,
} from "../works/site-works.js";

const length = ["ft", "m"] as const;
const area = ["ft2", "m2"] as const;
const volume = ["ft3", "m3"] as const;
const loose = ["yd3", "m3"] as const;
const depth = ["in", "mm"] as const;
const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const density = ["lb/ft3", "kg/m3"] as const;

export const coverVolumeFormula: FormulaSpec = formula({
  id: "cover-volume",
  name: "coverVolume",
  title: "Material for a layer",
  inputs: [
    ["area", "A", "area", "none", area, [500, 20000]],
    ["depth", "h", "depth", "none", depth, [0.1, 4], length],
  ],
  output: ["V", "material", "none", loose, volume],
  equation: "V = A * h",
  run: coverVolume,
  traps: ["Leaving the depth in inches with an area in square feet."],
  basis: "definition",
  sources: [usgaTooEasy],
});

/** Loose material, and what a buffer comes down to. */
export const siteMaterials: readonly FormulaSpec[] = [
  coverVolumeFormula,
  formula({
    id: "cover-depth",
    name: "coverDepth",
    title: "Depth of a layer",
    inputs: [
      ["volume", "V", "material", "none", loose, [1, 50], volume],
      ["area", "A", "area", "none", area, [500, 20000]],
    ],
    output: ["h", "depth", "none", depth, length],
    equation: "h = V / A",
    run: coverDepth,
    traps: ["Dividing cubic yards by square feet: there are 27 cubic feet in a cubic yard."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "cover-area",
    name: "coverArea",
    title: "Area that a load covers",
    inputs: [
      ["volume", "V", "material", "none", loose, [1, 50], volume],
      ["depth", "h", "depth", "none", depth, [0.1, 4], length],
    ],
    output: ["A", "area", "none", area],
    equation: "A = V / h",
    run: coverArea,
    traps: ["Leaving the depth in inches with a volume in cubic feet."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "layer-order",
    name: "layerMaterial",
    title: "Material to order for a layer, with an extra",
    inputs: [
      ["area", "A", "area", "none", area, [500, 20000]],
      ["depth", "h", "depth", "none", depth, [0.1, 4], length],
      ["extra", "x", "added for settling and loss", "none", share, [5, 25], pure],
    ],
    output: ["V", "material to order", "none", loose, volume],
    equation: "V = A * h * (1 + x)",
    run: (given) => layerMaterial(given).order,
    traps: ["Ordering the settled volume: it is less than what the truck delivers."],
    basis: "definition",
    sources: [usgaGoldilocksPrinciple],
  }),
  formula({
    id: "moist-bulk-density",
    name: "moistBulkDensity",
    title: "Bulk density of moist material",
    inputs: [
      ["density", "d", "dry bulk density", "none", density, [70, 110]],
      ["moisture", "w", "moisture by dry weight", "none", share, [2, 30], pure],
    ],
    output: ["m", "moist bulk density", "none", density],
    equation: "m = d * (1 + w)",
    run: ({ density: dry, moisture }) =>
      moistBulkDensity({ bulkDensity: dry, moisture, basis: "dry weight" }),
    traps: ["Taking a moisture by wet weight: that divides by one less the share."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "dry-bulk-density",
    name: "dryBulkDensity",
    title: "Bulk density of dry material",
    inputs: [
      ["density", "m", "moist bulk density", "none", density, [70, 130]],
      ["moisture", "w", "moisture by dry weight", "none", share, [2, 30], pure],
    ],
    output: ["d", "dry bulk density", "none", density],
    equation: "d = m / (1 + w)",
    run: ({ density: moist, moisture }) =>
      dryBulkDensity({ bulkDensity: moist, moisture, basis: "dry weight" }),
    traps: ["Taking the moisture off the moist weight: it is counted on the dry weight."],
    basis: "definition",
    sources: [soilPracticeProblems],
  }),
  formula({
    id: "reduced-buffer",
    name: "reducedBuffer",
    title: "Buffer after two reductions that add up",
    inputs: [
      ["distance", "d", "buffer on the label", "none", length, [25, 200]],
      ["first", "r_1", "first reduction", "none", share, [10, 40], pure],
      ["second", "r_2", "second reduction", "none", share, [10, 50], pure],
    ],
    output: ["b", "buffer", "none", length],
    equation: "b = d * (1 - (r_1 + r_2))",
    run: ({ distance, first, second }) =>
      reducedBuffer({ distance, reductions: [first, second], rule: "sum" }).distance,
    traps: ["Taking one reduction off after the other where the label adds them up."],
    basis: "published",
    sources: [pesticideDriftEsa],
  }),
];
