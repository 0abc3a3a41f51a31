import { quantity } from "../../quantity/index.js";
import {
  bulkDensity,
  effectiveFieldCapacity,
  headerStrips,
  hopperLoad,
  hopperVolume,
  loadCoverage,
  passesFor,
  passRates,
  spreadWidth,
} from "../../spread/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  floridaAquaticHerbicide,
  iowaEstimatingField,
  kentuckyCalculatingMachinery,
  massachusettsRotarySpreader,
  utahCalibratingSolid,
  washingtonLoad,
  wyomingCalibrationKey,
} from "../works/spread-works.js";

const rate = ["lb/1000 ft2", "kg/ha"] as const;
const ground = ["lb/ft2", "kg/m2"] as const;
const mass = ["lb", "kg"] as const;
const length = ["ft", "m"] as const;
const area = ["ft2", "m2"] as const;
const speed = ["mi/h", "km/h"] as const;
const count = ["count", "count"] as const;

export const effectiveFieldCapacityFormula: FormulaSpec = formula({
  id: "effective-field-capacity",
  name: "effectiveFieldCapacity",
  title: "Effective field capacity of a machine",
  inputs: [
    ["swath", "w", "effective swath", "none", length, [5, 40]],
    ["speed", "v", "speed", "none", speed, [3, 8], ["ft/h", "m/h"]],
    ["efficiency", "e", "field efficiency", "none", ["%", "%"], [50, 90], ["1", "1"]],
  ],
  output: ["C", "field capacity", "none", ["acre/h", "ha/h"], ["ft2/h", "m2/h"]],
  equation: "C = w * v * e",
  run: effectiveFieldCapacity,
  traps: ["Leaving out the turns and the fills: no machine works all of its time."],
  basis: "published",
  sources: [iowaEstimatingField, kentuckyCalculatingMachinery],
});

export const passRateFormula: FormulaSpec = formula({
  id: "pass-rate",
  name: "passRates",
  title: "Rate of each pass where the ground is covered several times",
  inputs: [
    ["rate", "R", "rate that the ground is to get", "product", rate, [1, 10]],
    ["passes", "n", "passes", "none", count, [2, 4]],
  ],
  output: ["R_1", "rate of each pass", "product", rate],
  equation: "R_1 = R / n",
  run: ({ rate: whole, passes }) =>
    passRates({ rate: whole, passes: Math.round(passes.in("count")) }).perPass,
  traps: ["Calibrating for the whole rate and then going twice: that is double the rate."],
  basis: "definition",
  sources: [massachusettsRotarySpreader],
});

export const passesForSideFormula: FormulaSpec = formula({
  id: "passes-for-side",
  name: "passesFor",
  title: "Passes that a side takes",
  inputs: [
    ["side", "b", "side square to the passes", "none", length, [30, 300]],
    ["swath", "w", "swath", "none", length, [4, 40]],
  ],
  output: ["n", "passes", "none", count],
  equation: "n = ceil(b / w)",
  run: (given) => quantity(passesFor(given).count, "count"),
  traps: ["Rounding down: the last strip would get nothing."],
  basis: "definition",
  sources: [floridaAquaticHerbicide],
});

/** Hoppers, passes and the ground that a spreader covers in a time. */
export const spreadPasses: readonly FormulaSpec[] = [
  formula({
    id: "bulk-density",
    name: "bulkDensity",
    title: "Loose bulk density from a bucket",
    inputs: [
      ["amount", "W", "net weight", "product", mass, [20, 60]],
      ["volume", "V", "volume of the bucket", "none", ["ft3", "m3"], [0.4, 1]],
    ],
    output: ["d", "bulk density", "none", ["lb/ft3", "kg/m3"]],
    equation: "d = W / V",
    run: bulkDensity,
    traps: ["Weighing the bucket with its contents: subtract the empty weight."],
    basis: "definition",
    sources: [utahCalibratingSolid],
  }),
  formula({
    id: "hopper-load",
    name: "hopperLoad",
    title: "What a hopper holds",
    inputs: [
      ["volume", "V", "volume filled", "product", ["ft3", "m3"], [1, 40]],
      ["bulkDensity", "d", "bulk density", "none", ["lb/ft3", "kg/m3"], [40, 70]],
    ],
    output: ["W", "load", "product", mass],
    equation: "W = V * d",
    run: hopperLoad,
    traps: ["Taking the density of the granules: the heap is lighter, because there is air in it."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "hopper-volume",
    name: "hopperVolume",
    title: "Room that a weight of material takes",
    inputs: [
      ["load", "W", "load", "product", mass, [50, 2000]],
      ["bulkDensity", "d", "bulk density", "none", ["lb/ft3", "kg/m3"], [40, 70]],
    ],
    output: ["V", "volume", "product", ["ft3", "m3"]],
    equation: "V = W / d",
    run: hopperVolume,
    traps: ["Taking the density of the granules: the heap takes more room."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "load-coverage",
    name: "loadCoverage",
    title: "Area that a load covers",
    inputs: [
      ["load", "W", "load", "product", mass, [20, 500]],
      ["rate", "R", "rate", "product", rate, [1, 10], ground],
    ],
    output: ["A", "area", "none", area],
    equation: "A = W / R",
    run: (given) => loadCoverage({ ...given, swath: quantity(10, "ft") }).area,
    traps: ["Running the hopper empty: it feeds unevenly before that."],
    basis: "definition",
    sources: [washingtonLoad],
  }),
  effectiveFieldCapacityFormula,
  passRateFormula,
  passesForSideFormula,
  formula({
    id: "outlets-width",
    name: "spreadWidth",
    title: "Width of a row of outlets",
    inputs: [
      ["outlets", "n", "outlets", "none", count, [4, 20]],
      ["spacing", "s", "spacing", "none", ["in", "cm"], [4, 20], length],
    ],
    output: ["w", "width", "none", length],
    equation: "w = n * s",
    run: ({ outlets, spacing }) =>
      spreadWidth({ kind: "outlets", outlets: Math.round(outlets.in("count")), spacing }),
    traps: ["Counting the gaps between the outlets instead of the outlets."],
    basis: "definition",
    sources: [wyomingCalibrationKey],
  }),
  formula({
    id: "inner-area",
    name: "headerStrips",
    title: "Area left inside the rounds along the edge",
    inputs: [
      ["length", "a", "length", "none", length, [200, 600]],
      ["width", "b", "width", "none", length, [150, 300]],
      ["swath", "w", "swath", "none", length, [5, 20]],
      ["strips", "h", "rounds along the edge", "none", count, [1, 3]],
    ],
    output: ["A", "inner area", "none", area],
    equation: "A = (a - 2 * h * w) * (b - 2 * h * w)",
    run: ({ strips, ...given }) =>
      headerStrips({ ...given, strips: Math.round(strips.in("count")), along: "perimeter" }).inner.area,
    traps: ["Taking one swath off each side instead of one off each end of it."],
    basis: "geometry",
    sources: [],
  }),
];
