import {
  applicationVolume,
  courseTime,
  groundSpeed,
  nozzleFlow,
  sprayWidth,
  travelSpeed,
} from "../../spray/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  albertaCropProtection,
  cornellSelectingNozzles,
  cornellSprayerCalibration,
  idahoCalibrationProcedure,
  mesaStationaryCalibration,
  montanaCalibrationSprayers,
} from "../works/spray-works.js";

const perArea = ["gal/acre", "L/ha"] as const;
const perGround = ["gal/ft2", "L/m2"] as const;
const flow = ["gal/min", "L/min"] as const;
const speed = ["mi/h", "km/h"] as const;
const walking = ["ft/min", "m/min"] as const;
const spacing = ["in", "cm"] as const;
const length = ["ft", "m"] as const;

const spacingForSwath =
  "Taking the whole boom for the width of one nozzle: the width is the one that the measured flow covers.";

export const applicationVolumeFormula: FormulaSpec = formula({
  id: "application-volume",
  name: "applicationVolume",
  title: "Application volume from nozzle flow, speed and width",
  inputs: [
    ["flow", "q", "flow", "spray", flow, [0.1, 1]],
    ["speed", "v", "ground speed", "none", speed, [2, 8], walking],
    ["width", "w", "width that this flow covers", "none", spacing, [10, 30], length],
  ],
  output: ["V", "application volume", "spray", perArea, perGround],
  equation: "V = q / (v * w)",
  run: applicationVolume,
  traps: [
    spacingForSwath,
    "Using 5940 with a width in feet: it is for inches; for feet it is 495.",
    "Measuring the speed on pavement instead of on the turf.",
  ],
  basis: "published",
  sources: [mesaStationaryCalibration, cornellSelectingNozzles],
});

export const nozzleFlowFormula: FormulaSpec = formula({
  id: "nozzle-flow",
  name: "nozzleFlow",
  title: "Flow that a nozzle needs for an application volume",
  inputs: [
    ["applicationVolume", "V", "application volume", "spray", perArea, [10, 100], perGround],
    ["speed", "v", "ground speed", "none", speed, [2, 8], walking],
    ["width", "w", "width that this flow covers", "none", spacing, [10, 30], length],
  ],
  output: ["q", "flow of one nozzle", "spray", flow],
  equation: "q = V * v * w",
  run: nozzleFlow,
  traps: [spacingForSwath],
  basis: "published",
  sources: [cornellSelectingNozzles, montanaCalibrationSprayers],
});

export const groundSpeedFormula: FormulaSpec = formula({
  id: "ground-speed",
  name: "groundSpeed",
  title: "Ground speed over a measured course",
  inputs: [
    ["course", "L", "measured course", "none", length, [100, 500]],
    ["time", "t", "time for the course", "none", ["s", "s"], [15, 120]],
  ],
  output: ["v", "ground speed", "none", speed, ["ft/s", "m/s"]],
  equation: "v = L / t",
  run: ({ course, time }) => groundSpeed({ course, times: [time] }),
  traps: ["Averaging the two speeds up and down a slope instead of the two times."],
  basis: "published",
  sources: [cornellSprayerCalibration, idahoCalibrationProcedure],
});

export const groundSpeedTwoRunsFormula: FormulaSpec = formula({
  id: "ground-speed-two-runs",
  name: "groundSpeed",
  title: "Ground speed from two runs, by their mean time",
  inputs: [
    ["course", "L", "measured course", "none", length, [100, 500]],
    ["there", "t_1", "time of the first run", "none", ["s", "s"], [15, 120]],
    ["back", "t_2", "time of the second run", "none", ["s", "s"], [15, 120]],
  ],
  output: ["v", "ground speed", "none", speed, ["ft/s", "m/s"]],
  equation: "v = L / ((t_1 + t_2) / 2)",
  run: ({ course, there, back }) => groundSpeed({ course, times: [there, back] }),
  traps: ["Averaging the two speeds: that comes out too fast, and the volume too small."],
  basis: "derived",
  sources: [idahoCalibrationProcedure],
});

export const courseTimeFormula: FormulaSpec = formula({
  id: "course-time",
  name: "courseTime",
  title: "Time for a course at a speed",
  inputs: [
    ["course", "L", "measured course", "none", length, [100, 500]],
    ["speed", "v", "ground speed", "none", speed, [2, 8], ["ft/s", "m/s"]],
  ],
  output: ["t", "time for the course", "none", ["s", "s"]],
  equation: "t = L / v",
  run: courseTime,
  traps: ["Leaving the speed in miles per hour with a course in feet: 1 mi/h is 88 ft/min."],
  basis: "published",
  sources: [albertaCropProtection],
});

export const travelSpeedFormula: FormulaSpec = formula({
  id: "travel-speed",
  name: "travelSpeed",
  title: "Ground speed for a flow and an application volume",
  inputs: [
    ["flow", "q", "flow", "spray", flow, [0.1, 1]],
    ["applicationVolume", "V", "application volume", "spray", perArea, [10, 100], perGround],
    ["width", "w", "width that this flow covers", "none", spacing, [10, 30], length],
  ],
  output: ["v", "ground speed", "none", speed, walking],
  equation: "v = q / (V * w)",
  run: travelSpeed,
  traps: [spacingForSwath, "Faster puts on less, not more: the volume goes as one over the speed."],
  basis: "derived",
  sources: [montanaCalibrationSprayers, cornellSelectingNozzles],
});

/** How much spray goes on an area: flow, speed and width. */
export const sprayVolume: readonly FormulaSpec[] = [
  applicationVolumeFormula,
  nozzleFlowFormula,
  formula({
    id: "spray-width",
    name: "sprayWidth",
    title: "Width that one flow has to cover",
    inputs: [
      ["flow", "q", "flow", "spray", flow, [0.1, 1]],
      ["applicationVolume", "V", "application volume", "spray", perArea, [10, 100], perGround],
      ["speed", "v", "ground speed", "none", speed, [2, 8], walking],
    ],
    output: ["w", "width", "none", spacing, length],
    equation: "w = q / (V * v)",
    run: sprayWidth,
    traps: [spacingForSwath],
    basis: "derived",
    sources: [cornellSelectingNozzles],
  }),
  travelSpeedFormula,
  groundSpeedFormula,
  groundSpeedTwoRunsFormula,
  courseTimeFormula,
];
