import {
  gateSetting,
  rateAtSpeed,
  runLength,
  speedForRate,
  spreadRate,
  targetCatch,
  targetDischarge,
  testArea,
  timedRate,
} from "../../spread/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { virginiaApplicationSection } from "../works/nutrient-works.js";
import {
  equipmentSlurryTanker,
  extensionExampleCalibrating,
  floridaDryChemical,
  georgiaFertilizerApplicator,
  georgiaForestControl,
  missouriSprayerNozzle,
  ncCalibrationTurfgrass,
  pesticideBandApplicators,
} from "../works/spread-works.js";

const rate = ["lb/1000 ft2", "kg/ha"] as const;
const ground = ["lb/ft2", "kg/m2"] as const;
const mass = ["lb", "kg"] as const;
const length = ["ft", "m"] as const;
const area = ["ft2", "m2"] as const;
const speed = ["mi/h", "km/h"] as const;
const walking = ["ft/min", "m/min"] as const;
const minute = ["min", "min"] as const;
const count = ["count", "count"] as const;

const swathTrap =
  "Taking the thrown width for the swath: the swath is how far apart the passes are walked or driven.";
const powered = "It holds where the gate is fed at a constant flow, not by a wheel on the ground.";

export const spreadRateFormula: FormulaSpec = formula({
  id: "spread-rate",
  name: "spreadRate",
  title: "Rate of a spreader from what it put on an area",
  inputs: [
    ["amount", "W", "what was put down", "product", mass, [1, 50]],
    ["area", "A", "test area", "none", area, [500, 10000]],
    ["passes", "n", "passes over it", "none", count, [1, 3]],
  ],
  output: ["R", "rate of one pass", "product", rate, ground],
  equation: "R = W / (A * n)",
  run: ({ amount, area: test, passes }) =>
    spreadRate({ amount, area: test, passes: Math.round(passes.in("count")) }),
  traps: ["Forgetting that two passes were made over the test area."],
  basis: "definition",
  sources: [floridaDryChemical, virginiaApplicationSection],
});

export const targetCatchFormula: FormulaSpec = formula({
  id: "target-catch",
  name: "targetCatch",
  title: "What should be caught over a test area",
  inputs: [
    ["rate", "R", "rate wanted", "product", rate, [1, 10], ground],
    ["area", "A", "test area", "none", area, [50, 2000]],
    ["passes", "n", "passes over it", "none", count, [1, 3]],
  ],
  output: ["W", "catch", "product", mass],
  equation: "W = R * A * n",
  run: ({ rate: wanted, area: test, passes }) =>
    targetCatch({ rate: wanted, area: test, passes: Math.round(passes.in("count")) }),
  traps: ["Multiplying a rate per 1,000 square feet by the square feet: divide by 1,000 on the way."],
  basis: "definition",
  sources: [pesticideBandApplicators, virginiaApplicationSection],
});

export const testAreaFormula: FormulaSpec = formula({
  id: "test-area",
  name: "testArea",
  title: "Area of a calibration run",
  inputs: [
    ["distance", "L", "length of the run", "none", length, [50, 300]],
    ["swath", "w", "width of one pass", "none", length, [2, 20]],
  ],
  output: ["A", "test area", "none", area],
  equation: "A = L * w",
  run: testArea,
  traps: [swathTrap],
  basis: "definition",
  sources: [extensionExampleCalibrating],
});

/** Spreaders: what goes down, and at which speed. */
export const spreading: readonly FormulaSpec[] = [
  spreadRateFormula,
  targetCatchFormula,
  testAreaFormula,
  formula({
    id: "run-length",
    name: "runLength",
    title: "Length of a run that covers an area",
    inputs: [
      ["area", "A", "area to cover", "none", area, [250, 2000]],
      ["swath", "w", "width of one pass", "none", length, [2, 20]],
    ],
    output: ["L", "length of the run", "none", length],
    equation: "L = A / w",
    run: runLength,
    traps: [swathTrap],
    basis: "definition",
    sources: [georgiaForestControl, georgiaFertilizerApplicator],
  }),
  formula({
    id: "timed-rate",
    name: "timedRate",
    title: "Rate of a spreader from a timed discharge",
    inputs: [
      ["amount", "W", "what came out", "product", mass, [5, 60]],
      ["time", "t", "time of the discharge", "none", ["s", "s"], [15, 120], minute],
      ["swath", "w", "width of one pass", "none", length, [10, 50]],
      ["speed", "v", "speed at work", "none", speed, [3, 8], walking],
    ],
    output: ["R", "rate", "product", rate, ground],
    equation: "R = W / (t * w * v)",
    run: timedRate,
    traps: [powered, swathTrap],
    basis: "definition",
    sources: [equipmentSlurryTanker],
  }),
  formula({
    id: "target-discharge",
    name: "targetDischarge",
    title: "Discharge that a rate asks for",
    inputs: [
      ["rate", "R", "rate wanted", "product", rate, [1, 10], ground],
      ["swath", "w", "width of one pass", "none", length, [10, 50]],
      ["speed", "v", "speed at work", "none", speed, [3, 8], walking],
    ],
    output: ["q", "discharge", "product", ["lb/min", "kg/min"]],
    equation: "q = R * w * v",
    run: targetDischarge,
    traps: [powered, swathTrap],
    basis: "definition",
    sources: [equipmentSlurryTanker],
  }),
  formula({
    id: "rate-at-speed",
    name: "rateAtSpeed",
    title: "Rate at another ground speed",
    inputs: [
      ["rate", "R_1", "rate measured", "product", rate, [1, 10]],
      ["from", "v_1", "speed of the measurement", "none", speed, [3, 8]],
      ["to", "v_2", "other speed", "none", speed, [3, 8]],
    ],
    output: ["R_2", "rate at the other speed", "product", rate],
    equation: "R_2 = R_1 * v_1 / v_2",
    run: (given) => rateAtSpeed({ ...given, feed: "power-driven" }),
    traps: ["Faster puts on less, not more.", powered],
    basis: "definition",
    sources: [ncCalibrationTurfgrass, missouriSprayerNozzle],
  }),
  formula({
    id: "speed-for-rate",
    name: "speedForRate",
    title: "Ground speed for another rate",
    inputs: [
      ["rate", "R_1", "rate measured", "product", rate, [1, 10]],
      ["from", "v_1", "speed of the measurement", "none", speed, [3, 8]],
      ["target", "R_2", "rate wanted", "product", rate, [1, 10]],
    ],
    output: ["v_2", "speed", "none", speed],
    equation: "v_2 = v_1 * R_1 / R_2",
    run: (given) => speedForRate({ ...given, feed: "power-driven" }),
    traps: ["A lower rate takes a higher speed.", powered],
    basis: "definition",
    sources: [equipmentSlurryTanker],
  }),
  formula({
    id: "gate-setting",
    name: "gateSetting",
    title: "Gate setting between two trials",
    inputs: [
      ["target", "R", "rate wanted", "product", rate, [3.1, 3.9]],
      ["lower", "s_0", "setting of the first trial", "none", ["1", "1"], [8, 10]],
      ["lowerRate", "R_0", "rate of the first trial", "product", rate, [2, 3]],
      ["upper", "s_1", "setting of the second trial", "none", ["1", "1"], [12, 15]],
      ["upperRate", "R_1", "rate of the second trial", "product", rate, [4, 5]],
    ],
    output: ["s", "next setting", "none", ["1", "1"]],
    equation: "s = s_0 + (s_1 - s_0) * (R - R_0) / (R_1 - R_0)",
    run: ({ target, lower, lowerRate, upper, upperRate }) =>
      gateSetting({
        target,
        trials: [
          { setting: lower.in("1"), rate: lowerRate },
          { setting: upper.in("1"), rate: upperRate },
        ],
      }).setting,
    traps: ["Going on along the line beyond the trials: catch again at the new setting."],
    basis: "derived",
    sources: [],
  }),
];
