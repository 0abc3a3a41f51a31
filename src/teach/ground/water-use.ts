import {
  effectiveRain,
  frictionLoss,
  irrigationInterval,
  landscapeCoefficient,
  measuredFlow,
  multipleOutletFactor,
  pipeFlow,
  pipeVelocity,
  pressureHead,
  pressureOfHeight,
  readilyAvailableWater,
  turfUse,
  waterStress,
} from "../../water/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  arizonaPhoenixArea,
  californiaTeachingOrganic,
  collectionIrrigationFormulas,
  fao56Eq84,
  gravity,
  hazenWilliams,
  landscapeGuide,
  pipeFriction,
  texasEffectiveRainfall,
} from "../works/water-works.js";

const depth = ["in", "mm"] as const;
const flow = ["gal/min", "L/min"] as const;
const use = ["in/d", "mm/d"] as const;
const length = ["ft", "m"] as const;
const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const cubicFlow = ["ft3/h", "m3/h"] as const;

export const readilyAvailableWaterFormula: FormulaSpec = formula({
  id: "readily-available-water",
  name: "readilyAvailableWater",
  title: "Water that may be used up before the next watering",
  inputs: [
    ["available", "W", "water that the root zone holds", "none", depth, [0.4, 3]],
    ["depletion", "p", "depletion", "none", share, [30, 60]],
  ],
  output: ["R", "readily available water", "none", depth],
  equation: "R = W * p / 100",
  run: readilyAvailableWater,
  traps: ["Letting the turf use up all of it: it wilts before that."],
  basis: "definition",
  sources: [californiaTeachingOrganic],
});

export const irrigationIntervalFormula: FormulaSpec = formula({
  id: "irrigation-interval",
  name: "irrigationInterval",
  title: "Days between two waterings",
  inputs: [
    ["water", "w", "water that may be used up", "none", depth, [0.2, 1.5]],
    ["use", "U", "use of the turf", "none", use, [0.05, 0.35]],
  ],
  output: ["I", "interval", "none", ["d", "d"]],
  equation: "I = w / U",
  run: irrigationInterval,
  traps: ["Counting on rain that has not fallen."],
  basis: "common practice, no source",
  sources: [],
});

/** What turf uses, and what the soil holds. */
export const waterUse: readonly FormulaSpec[] = [
  formula({
    id: "turf-water-use",
    name: "turfUse",
    title: "Water that turf uses",
    inputs: [
      ["reference", "E", "reference evapotranspiration", "none", use, [0.05, 0.35]],
      ["coefficient", "k", "turf coefficient", "none", pure, [0.5, 1]],
      ["microclimate", "m", "microclimate factor", "none", pure, [0.5, 1.4]],
    ],
    output: ["U", "use", "none", use],
    equation: "U = k * m * E",
    run: ({ reference, coefficient, microclimate }) =>
      turfUse({ reference, coefficient: coefficient.in("1"), microclimate: microclimate.in("1") }),
    traps: ["Replacing the reference itself: turf uses less than it."],
    basis: "published",
    sources: [arizonaPhoenixArea],
  }),
  formula({
    id: "landscape-coefficient",
    name: "landscapeCoefficient",
    title: "Landscape coefficient",
    inputs: [
      ["species", "s", "species factor", "none", pure, [0.2, 0.9]],
      ["density", "d", "density factor", "none", pure, [0.5, 1.3]],
      ["microclimate", "m", "microclimate factor", "none", pure, [0.5, 1.4]],
    ],
    output: ["k", "landscape coefficient", "none", pure],
    equation: "k = s * d * m",
    run: ({ species, density, microclimate }) =>
      landscapeCoefficient({
        species: species.in("1"),
        density: density.in("1"),
        microclimate: microclimate.in("1"),
      }),
    traps: ["Adding the factors instead of multiplying them."],
    basis: "published",
    sources: [landscapeGuide],
  }),
  readilyAvailableWaterFormula,
  irrigationIntervalFormula,
  formula({
    id: "water-stress",
    name: "waterStress",
    title: "How much of its full use the turf still manages",
    inputs: [
      ["available", "W", "water that the root zone holds", "none", depth, [1, 3]],
      ["depleted", "D", "used up", "none", depth, [0.1, 0.9]],
      ["depletion", "p", "depletion at which stress begins", "none", share, [30, 60]],
    ],
    output: ["K", "stress coefficient", "none", share, pure],
    equation: "K = min(1, (W - D) / ((1 - p / 100) * W))",
    run: waterStress,
    traps: ["Counting stress before the depletion at which it begins."],
    basis: "published",
    sources: [fao56Eq84],
  }),
  formula({
    id: "effective-rain-share",
    name: "effectiveRain",
    title: "Effective rain as a fixed share",
    inputs: [
      ["rain", "P", "rain", "none", depth, [0.2, 2]],
      ["share", "s", "share that counts", "none", share, [50, 90]],
    ],
    output: ["R", "effective rain", "none", depth],
    equation: "R = P * s / 100",
    run: (given) => effectiveRain({ ...given, method: "fixed share" }),
    traps: ["Counting all of a downpour: much of it runs off."],
    basis: "published",
    sources: [texasEffectiveRainfall],
  }),
];

/** Pipes and pressure. */
export const waterSupply: readonly FormulaSpec[] = [
  formula({
    id: "measured-flow",
    name: "measuredFlow",
    title: "Flow by bucket and stopwatch",
    inputs: [
      ["volume", "V", "water that ran", "water", ["gal", "L"], [1, 10]],
      ["time", "t", "time", "none", ["s", "s"], [10, 120], ["min", "min"]],
    ],
    output: ["Q", "flow", "water", flow],
    equation: "Q = V / t",
    run: measuredFlow,
    traps: ["Dividing by the seconds and calling it gallons a minute."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "pipe-flow",
    name: "pipeFlow",
    title: "Flow that a pipe carries at a velocity",
    inputs: [
      ["velocity", "v", "velocity", "none", ["ft/s", "m/s"], [2, 5], ["ft/h", "m/h"]],
      ["diameter", "D", "inside diameter", "none", ["in", "mm"], [0.75, 4], length],
    ],
    output: ["Q", "flow", "water", flow, cubicFlow],
    equation: "Q = v * pi / 4 * D ^ 2",
    run: pipeFlow,
    traps: ["Taking the nominal size for the inside diameter."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "pipe-velocity",
    name: "pipeVelocity",
    title: "Velocity of water in a pipe",
    inputs: [
      ["flow", "Q", "flow", "water", flow, [2, 60], cubicFlow],
      ["diameter", "D", "inside diameter", "none", ["in", "mm"], [0.75, 4], length],
    ],
    output: ["v", "velocity", "none", ["ft/s", "m/s"], ["ft/h", "m/h"]],
    equation: "v = Q / (pi / 4 * D ^ 2)",
    run: (given) => pipeVelocity(given).value,
    traps: ["Taking the nominal size for the inside diameter."],
    basis: "definition",
    sources: [pipeFriction],
  }),
  formula({
    id: "pressure-of-height",
    name: "pressureOfHeight",
    title: "Pressure of a height of water",
    inputs: [["height", "h", "height", "none", length, [5, 100], ["m", "m"]]],
    output: ["p", "pressure", "none", ["psi", "kPa"], ["kPa", "kPa"]],
    equation: "p = 9.80665 * h",
    run: pressureOfHeight,
    traps: ["Adding it where the head is above the supply: there it is a loss."],
    basis: "derived",
    sources: [gravity, collectionIrrigationFormulas],
  }),
  formula({
    id: "pressure-head",
    name: "pressureHead",
    title: "Height of water that stands for a pressure",
    inputs: [["pressure", "p", "pressure", "none", ["psi", "kPa"], [5, 100], ["kPa", "kPa"]]],
    output: ["h", "head", "none", length, ["m", "m"]],
    equation: "h = p / 9.80665",
    run: pressureHead,
    traps: ["Leaving the pressure at the heads out of the head of a pump."],
    basis: "derived",
    sources: [gravity],
  }),
  formula({
    id: "friction-loss",
    name: "frictionLoss",
    title: "Friction loss in a pipe by Hazen and Williams",
    inputs: [
      ["flow", "Q", "flow", "water", flow, [5, 60], ["m3/s", "m3/s"]],
      ["diameter", "D", "inside diameter", "none", ["in", "mm"], [0.75, 4], ["m", "m"]],
      ["length", "L", "length of pipe", "none", length, [50, 500], ["m", "m"]],
      ["smoothness", "C", "smoothness", "none", pure, [100, 150]],
    ],
    output: ["p", "pressure lost", "none", ["psi", "kPa"], ["kPa", "kPa"]],
    equation: "p = 9.80665 * 10.67 * L * Q ^ 1.852 / (C ^ 1.852 * D ^ 4.8704)",
    run: ({ flow: q, diameter, length: l, smoothness }) =>
      frictionLoss({ flow: q, diameter, length: l, smoothness: smoothness.in("1") }),
    traps: ["Taking the nominal size: a tenth less diameter is two thirds more loss."],
    basis: "published",
    sources: [hazenWilliams, pipeFriction],
  }),
  formula({
    id: "multiple-outlet-factor",
    name: "multipleOutletFactor",
    title: "Share of friction loss on a lateral with equal outlets",
    inputs: [["outlets", "n", "outlets", "none", ["count", "count"], [1, 30]]],
    output: ["F", "factor", "none", pure],
    equation: "F = 1 / (1.852 + 1) + 1 / (2 * n) + sqrt(1.852 - 1) / (6 * n ^ 2)",
    run: ({ outlets }) => multipleOutletFactor({ outlets: Math.round(outlets.in("count")) }),
    traps: ["Taking the whole loss of the full flow: it leaves the pipe on the way."],
    basis: "derived",
    sources: [],
  }),
];
