import {
  areaForFlow,
  catchDepth,
  christiansenFromLowerQuarter,
  depthFromFlow,
  flowForDepth,
  grossDepth,
  irrigationTime,
  netDepth,
  precipitationRate,
  runTime,
  schedulingCoefficient,
  spacingPrecipitationRate,
  waterDepth,
  waterVolume,
} from "../../water/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  californiaIrrigationWater,
  californiaIrrigationWaterAtExample,
  plantSupplementalWater,
  sprinklerDesign,
  turfgrassCatchCan,
  utilityPrecipitationRate,
  virginiaFormulasDetermining,
} from "../works/water-works.js";

const area = ["ft2", "m2"] as const;
const depth = ["in", "mm"] as const;
const flow = ["gal/min", "L/min"] as const;
const rate = ["in/h", "mm/h"] as const;
const length = ["ft", "m"] as const;
const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
// Units in which volume, area, length and time fit together without a factor.
const cubic = ["ft3", "m3"] as const;
const cubicFlow = ["ft3/h", "m3/h"] as const;
const hour = ["h", "h"] as const;
const gallons = "A gallon is 231 cubic inches: an inch of water on one square foot is 0.623 gallons.";
const inches = "Leaving the depth in inches with an area in square feet.";
const d = ["depth", "d", "depth of water", "none", depth, [0.1, 2], length] as const;
const A = ["area", "A", "area", "none", area, [500, 50000]] as const;
const Q = ["flow", "Q", "flow", "water", flow, [5, 200], cubicFlow] as const;
const T = ["time", "T", "time", "none", hour, [0.2, 8]] as const;
const E = ["efficiency", "E", "application efficiency", "none", share, [50, 95]] as const;

export const waterVolumeFormula: FormulaSpec = formula({
  id: "water-volume",
  name: "waterVolume",
  title: "Volume of a depth of water on an area",
  inputs: [d, A],
  output: ["V", "water", "water", ["gal", "L"], cubic],
  equation: "V = d * A",
  run: waterVolume,
  traps: [gallons],
  basis: "definition",
  sources: [virginiaFormulasDetermining, plantSupplementalWater],
});

export const grossDepthFormula: FormulaSpec = formula({
  id: "gross-depth",
  name: "grossDepth",
  title: "Depth to apply for a net depth",
  inputs: [["net", "d_n", "net depth", "none", depth, [0.2, 1.5]], E],
  output: ["d_g", "gross depth", "none", depth],
  equation: "d_g = d_n * 100 / E",
  run: grossDepth,
  traps: ["Multiplying by the efficiency: more has to go on than reaches the roots."],
  basis: "definition",
  sources: [],
});

export const precipitationRateFormula: FormulaSpec = formula({
  id: "precipitation-rate",
  name: "precipitationRate",
  title: "Precipitation rate of a zone",
  inputs: [Q, A],
  output: ["P", "precipitation rate", "none", rate, ["ft/h", "m/h"]],
  equation: "P = Q / A",
  run: precipitationRate,
  traps: ["Taking the flow of one head for that of the zone.", gallons],
  basis: "definition",
  sources: [utilityPrecipitationRate],
});

export const zoneRunTimeFormula: FormulaSpec = formula({
  id: "zone-run-time",
  name: "runTime",
  title: "Run time of a zone for a depth",
  inputs: [
    ["depth", "d", "depth to put down", "none", depth, [0.1, 1]],
    ["rate", "P", "precipitation rate", "none", rate, [0.3, 2]],
  ],
  output: ["t", "run time", "none", ["min", "min"], hour],
  equation: "t = d / P",
  run: runTime,
  traps: ["Taking the answer in hours for minutes."],
  basis: "definition",
  sources: [sprinklerDesign],
});

/** Depths, times and flows of irrigation. */
export const waterDepths: readonly FormulaSpec[] = [
  waterVolumeFormula,
  formula({
    id: "water-depth",
    name: "waterDepth",
    title: "Depth of a volume of water on an area",
    inputs: [["volume", "V", "water", "water", ["gal", "L"], [100, 20000], cubic], A],
    output: ["d", "depth", "none", depth, length],
    equation: "d = V / A",
    run: waterDepth,
    traps: [gallons],
    basis: "definition",
    sources: [plantSupplementalWater],
  }),
  formula({
    id: "catch-depth",
    name: "catchDepth",
    title: "Depth that a catch can shows",
    inputs: [
      ["volume", "V", "water in the can", "water", ["mL", "mL"], [10, 200]],
      ["diameter", "D", "opening of the can", "none", ["in", "cm"], [2, 6], ["cm", "cm"]],
    ],
    output: ["d", "depth", "none", depth, ["cm", "cm"]],
    equation: "d = V / (pi / 4 * D ^ 2)",
    run: catchDepth,
    traps: ["Measuring the foot of the can: the rain falls through its opening."],
    basis: "definition",
    sources: [turfgrassCatchCan],
  }),
  grossDepthFormula,
  formula({
    id: "net-depth",
    name: "netDepth",
    title: "Net depth of an application",
    inputs: [["gross", "d_g", "gross depth", "none", depth, [0.2, 2]], E],
    output: ["d_n", "net depth", "none", depth],
    equation: "d_n = d_g * E / 100",
    run: netDepth,
    traps: ["Counting all that was applied as what the roots got."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "area-for-flow",
    name: "areaForFlow",
    title: "Area that a flow covers in a time",
    inputs: [Q, T, d],
    output: ["A", "area", "none", area],
    equation: "A = Q * T / d",
    run: areaForFlow,
    traps: [inches],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "depth-from-flow",
    name: "depthFromFlow",
    title: "Depth that a flow puts on an area in a time",
    inputs: [Q, T, A],
    output: ["d", "depth", "none", depth, length],
    equation: "d = Q * T / A",
    run: depthFromFlow,
    traps: [gallons],
    basis: "definition",
    sources: [californiaIrrigationWater],
  }),
  formula({
    id: "flow-for-depth",
    name: "flowForDepth",
    title: "Flow that puts a depth on an area in a time",
    inputs: [A, d, T],
    output: ["Q", "flow", "water", flow, cubicFlow],
    equation: "Q = A * d / T",
    run: flowForDepth,
    traps: [inches],
    basis: "definition",
    sources: [californiaIrrigationWaterAtExample],
  }),
  formula({
    id: "irrigation-time",
    name: "irrigationTime",
    title: "Time that a flow needs for a depth on an area",
    inputs: [Q, A, d],
    output: ["T", "time", "none", hour],
    equation: "T = A * d / Q",
    run: irrigationTime,
    traps: [inches],
    basis: "definition",
    sources: [californiaIrrigationWater],
  }),
  precipitationRateFormula,
  formula({
    id: "spacing-precipitation-rate",
    name: "spacingPrecipitationRate",
    title: "Precipitation rate from head spacing",
    inputs: [
      ["flow", "Q", "flow of one head", "water", flow, [1, 20], cubicFlow],
      ["spacing", "S", "spacing along the row", "none", length, [15, 60]],
      ["rowSpacing", "L", "distance of the rows", "none", length, [15, 60]],
      ["arc", "a", "arc of the head", "none", ["deg", "deg"], [90, 360]],
    ],
    output: ["P", "precipitation rate", "none", rate, ["ft/h", "m/h"]],
    equation: "P = Q / (S * L) * 360 / a",
    run: spacingPrecipitationRate,
    traps: ["A half circle with the nozzle of a full circle puts down twice the rate."],
    basis: "definition",
    sources: [],
  }),
  zoneRunTimeFormula,
  formula({
    id: "scheduling-coefficient",
    name: "schedulingCoefficient",
    title: "Scheduling coefficient",
    inputs: [
      ["mean", "m", "mean precipitation rate", "none", rate, [0.6, 2]],
      ["driest", "x", "rate of the driest place", "none", rate, [0.2, 0.6]],
    ],
    output: ["C", "scheduling coefficient", "none", pure],
    equation: "C = m / x",
    run: schedulingCoefficient,
    traps: ["Dividing the other way around: the coefficient is 1 or more."],
    basis: "definition",
    sources: [sprinklerDesign],
  }),
  formula({
    id: "christiansen-from-lower-quarter",
    name: "christiansenFromLowerQuarter",
    title: "Christiansen's coefficient from the lower quarter",
    inputs: [["lowerQuarter", "D", "distribution uniformity", "none", share, [30, 95]]],
    output: ["C", "coefficient of uniformity", "none", share],
    equation: "C = 100 - 0.63 * (100 - D)",
    run: christiansenFromLowerQuarter,
    traps: ["Taking one for the other: they are different figures of the same cans."],
    basis: "derived",
    sources: [],
  }),
];
