import { quantity } from "../../quantity/index.js";
import {
  calibrationByCatch,
  calibrationByRefill,
  catchCourse,
  flowAtPressure,
  nozzleWear,
  outputAtPressure,
  pressureForFlow,
  pressureForOutput,
  pressureForSpeed,
  pulseWidth,
  pumpCapacity,
  timeToFill,
  usedBySightGauge,
  weighedCatch,
} from "../../spray/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  albertaCropProtectionAtSprayer,
  georgiaNozzleSelection,
  iowaCropNews,
  lsuOuncesEqual,
  lsuOuncesEqualCourse,
  mesaRefillMethod,
  missouriPumps,
  ohioBoomSprayer,
} from "../works/spray-works.js";

const perArea = ["gal/acre", "L/ha"] as const;
const flow = ["gal/min", "L/min"] as const;
const pressure = ["psi", "bar"] as const;
const speed = ["mi/h", "km/h"] as const;
const spacing = ["in", "cm"] as const;
const length = ["ft", "m"] as const;
const lowest = quantity(1, "psi");
const highest = quantity(100000, "psi");
const rootTrap = "Doubling the pressure for twice the flow: it takes four times the pressure.";
const q1 = ["flow", "q_1", "rated flow", "spray", flow, [0.1, 1]] as const;
const P1 = ["rated", "P_1", "pressure of the rating", "none", pressure, [30, 60]] as const;
const P2 = ["pressure", "P_2", "other pressure", "none", pressure, [15, 90]] as const;

export const flowAtPressureFormula: FormulaSpec = formula({
  id: "flow-at-pressure",
  name: "flowAtPressure",
  title: "Flow of a nozzle at another pressure",
  inputs: [q1, P1, P2],
  output: ["q_2", "flow", "spray", flow],
  equation: "q_2 = q_1 * sqrt(P_2 / P_1)",
  run: ({ flow: rated, rated: at, pressure: wanted }) =>
    flowAtPressure({ flow: rated, pressure: at, lowest, highest }, wanted),
  traps: [rootTrap],
  basis: "published",
  sources: [iowaCropNews, albertaCropProtectionAtSprayer],
});

export const pressureForFlowFormula: FormulaSpec = formula({
  id: "pressure-for-flow",
  name: "pressureForFlow",
  title: "Pressure at which a nozzle gives a flow",
  inputs: [q1, P1, ["wanted", "q_2", "flow wanted", "spray", flow, [0.1, 1]]],
  output: ["P_2", "pressure", "none", pressure],
  equation: "P_2 = P_1 * (q_2 / q_1) ^ 2",
  run: ({ flow: rated, rated: at, wanted }) =>
    pressureForFlow({ flow: rated, pressure: at, lowest: quantity(0.001, "psi"), highest }, wanted),
  traps: [rootTrap],
  basis: "published",
  sources: [iowaCropNews],
});

/** Nozzles: pressure and flow. */
export const nozzles: readonly FormulaSpec[] = [
  flowAtPressureFormula,
  pressureForFlowFormula,
  formula({
    id: "pressure-for-speed",
    name: "pressureForSpeed",
    title: "Pressure that keeps the volume at another speed",
    inputs: [
      ["pressure", "P_1", "pressure", "none", pressure, [20, 60]],
      ["from", "v_1", "speed", "none", speed, [3, 8]],
      ["to", "v_2", "other speed", "none", speed, [3, 8]],
    ],
    output: ["P_2", "pressure", "none", pressure],
    equation: "P_2 = P_1 * (v_2 / v_1) ^ 2",
    run: (given) => pressureForSpeed({ ...given, lowest, highest }),
    traps: [rootTrap, "Trimming with pressure what a change of tips should do."],
    basis: "published",
    sources: [iowaCropNews],
  }),
  formula({
    id: "output-at-pressure",
    name: "outputAtPressure",
    title: "Application volume at another pressure and the same speed",
    inputs: [
      ["output", "V_1", "application volume", "spray", perArea, [10, 90]],
      ["from", "P_1", "its pressure", "none", pressure, [20, 60]],
      ["to", "P_2", "other pressure", "none", pressure, [15, 90]],
    ],
    output: ["V_2", "application volume", "spray", perArea],
    equation: "V_2 = V_1 * sqrt(P_2 / P_1)",
    run: (given) => outputAtPressure(given).value,
    traps: [rootTrap],
    basis: "published",
    sources: [iowaCropNews],
  }),
  formula({
    id: "pressure-for-output",
    name: "pressureForOutput",
    title: "Pressure for another application volume at the same speed",
    inputs: [
      ["output", "V_1", "application volume", "spray", perArea, [10, 90]],
      ["from", "P_1", "its pressure", "none", pressure, [20, 60]],
      ["wanted", "V_2", "volume wanted", "spray", perArea, [10, 90]],
    ],
    output: ["P_2", "pressure", "none", pressure],
    equation: "P_2 = P_1 * (V_2 / V_1) ^ 2",
    run: (given) => pressureForOutput(given).value,
    traps: [rootTrap],
    basis: "published",
    sources: [iowaCropNews],
  }),
  formula({
    id: "pulse-width-duty",
    name: "pulseWidth",
    title: "Duty cycle of a pulsed nozzle",
    inputs: [
      ["full", "q", "flow of the nozzle held open", "spray", flow, [0.6, 1.5]],
      ["applicationVolume", "V", "application volume", "spray", perArea, [10, 20], ["gal/ft2", "L/m2"]],
      ["speed", "v", "ground speed", "none", speed, [4, 8], ["ft/min", "m/min"]],
      ["width", "w", "nozzle spacing", "none", spacing, [15, 20], length],
    ],
    output: ["D", "duty", "none", ["%", "%"], ["1", "1"]],
    equation: "D = V * v * w / q",
    run: (given) => pulseWidth(given).duty,
    traps: ["Choosing a tip whose duty is near 100 %: nothing is left for a faster stretch."],
    basis: "published",
    sources: [georgiaNozzleSelection],
  }),
];

export const calibrationByCatchFormula: FormulaSpec = formula({
  id: "calibration-by-catch",
  name: "calibrationByCatch",
  title: "Application volume from a catch as long as the run",
  inputs: [
    ["caught", "c", "catch of one nozzle", "spray", ["fl oz", "mL"], [5, 60], ["gal", "L"]],
    ["course", "L", "course", "none", length, [100, 400]],
    ["width", "w", "nozzle spacing", "none", spacing, [10, 30], length],
  ],
  output: ["V", "application volume", "spray", perArea, ["gal/ft2", "L/m2"]],
  equation: "V = c / (L * w)",
  run: ({ caught, course, width }) => calibrationByCatch({ catches: [caught], course, width }).rate,
  traps: ["Catching one nozzle and taking the width of the boom."],
  basis: "published",
  sources: [ohioBoomSprayer, lsuOuncesEqual],
});

export const calibrationByRefillFormula: FormulaSpec = formula({
  id: "calibration-by-refill",
  name: "calibrationByRefill",
  title: "Application volume from a refill",
  inputs: [
    ["refill", "u", "volume to fill up again", "spray", ["gal", "L"], [1, 40]],
    ["area", "A", "area sprayed", "none", ["ft2", "m2"], [1000, 43560], ["acre", "ha"]],
  ],
  output: ["V", "application volume", "spray", perArea],
  equation: "V = u / A",
  run: ({ refill, area }) => calibrationByRefill({ refills: [refill], area }).rate,
  traps: ["Filling up on another slope: the gauge reads wrong."],
  basis: "published",
  sources: [mesaRefillMethod],
});

export const calibrationByRefillLawnFormula: FormulaSpec = formula({
  id: "calibration-by-refill-lawn",
  name: "calibrationByRefill",
  title: "Application volume on a lawn from a refill",
  inputs: [
    ["refill", "u", "volume put out", "spray", ["gal", "L"], [0.5, 40]],
    ["area", "A", "area sprayed", "none", ["ft2", "m2"], [500, 20000], ["1000 ft2", "100 m2"]],
  ],
  output: ["V", "application volume", "spray", ["gal/1000 ft2", "L/100 m2"]],
  equation: "V = u / A",
  run: ({ refill, area }) => calibrationByRefill({ refills: [refill], area }).rate,
  traps: ["Dividing by the square feet without dividing them by 1,000."],
  basis: "published",
  sources: [mesaRefillMethod],
});

export const catchCourseFormula: FormulaSpec = formula({
  id: "catch-course",
  name: "catchCourse",
  title: "Course of the 1/128-acre method",
  inputs: [["width", "w", "nozzle spacing", "none", spacing, [10, 40], ["ft", "ft"]]],
  output: ["L", "course", "none", length, ["ft", "ft"]],
  equation: "L = 43560 / 128 / w",
  constantUnits: { 43560: "ft²" },
  run: (given) => catchCourse(given).course,
  traps: ["Reading milliliters as gallons per acre: the rule is for fluid ounces."],
  basis: "published",
  sources: [lsuOuncesEqualCourse, ohioBoomSprayer],
});

/** Calibration of sprayers. */
export const sprayCalibrations: readonly FormulaSpec[] = [
  calibrationByCatchFormula,
  calibrationByRefillFormula,
  calibrationByRefillLawnFormula,
  catchCourseFormula,
  formula({
    id: "time-to-fill",
    name: "timeToFill",
    title: "Time to fill a jug at a flow",
    inputs: [
      ["volume", "V", "jug", "water", ["qt", "L"], [0.5, 4], ["gal", "L"]],
      ["flow", "q", "flow", "water", flow, [0.1, 2]],
    ],
    output: ["t", "time", "none", ["s", "s"], ["min", "min"]],
    equation: "t = V / q",
    run: timeToFill,
    traps: ["Leaving the jug in quarts with a flow in gallons."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "used-by-sight-gauge",
    name: "usedBySightGauge",
    title: "What was used between two readings of a gauge",
    inputs: [
      ["before", "a", "reading before", "spray", ["gal", "L"], [50, 100]],
      ["after", "b", "reading after", "spray", ["gal", "L"], [5, 48]],
    ],
    output: ["u", "used", "spray", ["gal", "L"]],
    equation: "u = a - b",
    run: usedBySightGauge,
    traps: ["Reading the second time on a slope."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "weighed-catch",
    name: "weighedCatch",
    title: "Volume of a weighed catch of water",
    inputs: [
      ["full", "F", "jug with its catch", "water", ["lb", "g"], [2, 6], ["lb", "kg"]],
      ["tare", "E", "empty jug", "none", ["lb", "g"], [0.1, 0.5], ["lb", "kg"]],
      ["density", "d", "density of the water", "none", ["lb/gal", "kg/L"], [8.29, 8.345]],
    ],
    output: ["V", "catch", "water", ["fl oz", "mL"], ["gal", "L"]],
    equation: "V = (F - E) / d",
    run: weighedCatch,
    traps: ["Forgetting the weight of the jug."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "nozzle-from-rated-flow",
    name: "nozzleWear",
    title: "How far a nozzle is from its rated flow",
    inputs: [
      ["caught", "c", "catch of the nozzle", "water", ["fl oz", "mL"], [30, 90], ["gal", "L"]],
      ["time", "t", "time of the catch", "none", ["s", "s"], [45, 90], ["min", "min"]],
      ["rated", "q", "rated flow at that pressure", "water", flow, [0.2, 0.6]],
    ],
    output: ["w", "above (or, with a minus, below) the rated flow", "none", ["%", "%"]],
    equation: "w = 100 * (c / t / q - 1)",
    run: (given) => nozzleWear(given).fromRated,
    traps: ["Comparing with the flow of the chart at another pressure than that of the catch."],
    basis: "definition",
    sources: [ohioBoomSprayer],
  }),
  formula({
    id: "pump-capacity",
    name: "pumpCapacity",
    title: "Pump capacity for boom, agitation and reserve",
    inputs: [
      ["boom", "q", "flow to the boom", "spray", flow, [2, 20]],
      ["tank", "V", "tank", "spray", ["gal", "L"], [50, 300]],
      [
        "agitation",
        "a",
        "share of the tank to turn over in a minute",
        "none",
        ["%", "%"],
        [2, 6],
        ["1", "1"],
        "min",
      ],
      ["reserve", "r", "reserve for wear", "none", ["%", "%"], [10, 30], ["1", "1"]],
    ],
    output: ["Q", "flow of the pump", "spray", flow],
    equation: "Q = (q + V * a) * (1 + r)",
    run: (given) => pumpCapacity(given).total,
    traps: ["Leaving out agitation: powders settle.", "Reading the flow of the pump at no pressure."],
    basis: "published",
    sources: [missouriPumps],
  }),
];
