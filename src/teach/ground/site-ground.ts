import { quantity } from "../../quantity/index.js";
import {
  containment,
  contourVolume,
  cuboidVolume,
  cylinderVolume,
  groundLength,
  meanDepth,
  planArea,
  planLength,
  pondVolume,
  slopeOf,
  surfaceArea,
  tankCapacity,
  tankContents,
  waterDose,
} from "../../site/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  coloradoContainment,
  epaContainment,
  forestCalculatingArea,
  gaugeLyingTank,
  mathematicsForEnvironment,
  slopeTable,
  texasTaleTape,
  virginiaControlPonds,
} from "../works/site-works.js";
import { utahCalibratingSolid } from "../works/spread-works.js";

const length = ["ft", "m"] as const;
const area = ["ft2", "m2"] as const;
const volume = ["ft3", "m3"] as const;
const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const slope = ["slope", "alpha", "slope", "none", ["deg", "deg"], [2, 40], ["rad", "rad"]] as const;
const slopeTrap = "Taking the percent grade for degrees: a grade of 100 % is 45 degrees.";

export const pondVolumeFormula: FormulaSpec = formula({
  id: "pond-volume",
  name: "pondVolume",
  title: "Volume of a pond",
  inputs: [
    ["area", "A", "surface", "none", ["acre", "m2"], [0.2, 5]],
    ["meanDepth", "d", "mean depth", "none", length, [2, 10]],
  ],
  output: ["V", "volume", "none", ["acre-ft", "m3"]],
  equation: "V = A * d",
  run: pondVolume,
  traps: ["Taking the greatest depth for the mean depth."],
  basis: "definition",
  sources: [virginiaControlPonds],
});

export const waterDoseFormula: FormulaSpec = formula({
  id: "water-dose",
  name: "waterDose",
  title: "Amount for a concentration in a body of water",
  inputs: [
    ["volume", "V", "water treated", "none", ["acre-ft", "m3"], [1, 30]],
    ["concentration", "c", "concentration", "ai", ["mg/L", "mg/L"], [0.1, 2], ["lb/acre-ft", "kg/m3"]],
  ],
  output: ["m", "amount", "ai", ["lb", "kg"]],
  equation: "m = c * V",
  run: (given) => waterDose(given).active,
  traps: ["Taking the amount of active ingredient for that of product."],
  basis: "definition",
  sources: [mathematicsForEnvironment],
});

/** Slopes, volumes, ponds and loose material. */
export const siteGround: readonly FormulaSpec[] = [
  formula({
    id: "surface-area",
    name: "surfaceArea",
    title: "Area of sloping ground from a map",
    inputs: [["planArea", "P", "plan area", "none", area, [1000, 50000]], slope],
    output: ["A", "area along the ground", "none", area],
    equation: "A = P / cos(alpha)",
    run: ({ planArea: plan, slope: angle }) => surfaceArea(plan, angle),
    traps: [slopeTrap],
    basis: "geometry",
    sources: [forestCalculatingArea],
  }),
  formula({
    id: "plan-area",
    name: "planArea",
    title: "Plan area of sloping ground",
    inputs: [["area", "A", "area along the ground", "none", area, [1000, 50000]], slope],
    output: ["P", "plan area", "plan", area],
    equation: "P = A * cos(alpha)",
    run: ({ area: ground, slope: angle }) => planArea(ground, angle),
    traps: [slopeTrap],
    basis: "geometry",
    sources: [],
  }),
  formula({
    id: "ground-length",
    name: "groundLength",
    title: "Length along a slope from a map",
    inputs: [["planLength", "P", "length on the plan", "none", length, [20, 500]], slope],
    output: ["L", "length along the ground", "none", length],
    equation: "L = P / cos(alpha)",
    run: ({ planLength: plan, slope: angle }) => groundLength(plan, angle),
    traps: [slopeTrap],
    basis: "geometry",
    sources: [],
  }),
  formula({
    id: "plan-length",
    name: "planLength",
    title: "Length on a plan from one along a slope",
    inputs: [["length", "L", "length along the ground", "none", length, [20, 500]], slope],
    output: ["P", "length on the plan", "none", length],
    equation: "P = L * cos(alpha)",
    run: ({ length: taped, slope: angle }) => planLength(taped, angle),
    traps: [slopeTrap],
    basis: "geometry",
    sources: [],
  }),
  formula({
    id: "slope-grade",
    name: "slopeOf",
    title: "Grade of a slope from its angle",
    inputs: [slope],
    output: ["g", "grade, rise over run", "none", pure],
    equation: "g = tan(alpha)",
    run: ({ slope: angle }) => quantity(slopeOf(angle).grade.in("ft/ft"), "1"),
    traps: [slopeTrap],
    basis: "geometry",
    sources: [slopeTable],
  }),
  formula({
    id: "cuboid-volume",
    name: "cuboidVolume",
    title: "Volume of a box",
    inputs: [
      ["length", "a", "length", "none", length, [2, 30]],
      ["width", "b", "width", "none", length, [2, 10]],
      ["depth", "h", "depth", "none", length, [0.5, 5]],
    ],
    output: ["V", "volume", "none", volume],
    equation: "V = a * b * h",
    run: cuboidVolume,
    traps: ["Leaving one side in inches."],
    basis: "geometry",
    sources: [utahCalibratingSolid],
  }),
  formula({
    id: "cylinder-volume",
    name: "cylinderVolume",
    title: "Volume in an upright round tank",
    inputs: [
      ["diameter", "d", "diameter", "none", length, [2, 12]],
      ["depth", "h", "depth", "none", length, [1, 10]],
    ],
    output: ["V", "volume", "none", ["gal", "L"], volume],
    equation: "V = pi / 4 * d ^ 2 * h",
    run: cylinderVolume,
    traps: ["Taking the diameter for the radius: four times too much."],
    basis: "geometry",
    sources: [utahCalibratingSolid],
  }),
  formula({
    id: "lying-tank-capacity",
    name: "tankCapacity",
    title: "Capacity of a round tank on its side",
    inputs: [
      ["diameter", "d", "diameter", "none", length, [2, 8]],
      ["length", "a", "length", "none", length, [4, 20]],
    ],
    output: ["V", "capacity", "none", ["gal", "L"], volume],
    equation: "V = pi / 4 * d ^ 2 * a",
    run: (tank) => tankCapacity({ shape: "lying cylinder", ...tank }),
    traps: ["Taking the outside measures of a thick wall."],
    basis: "geometry",
    sources: [gaugeLyingTank],
  }),
  formula({
    id: "lying-tank-contents",
    name: "tankContents",
    title: "Contents of a lying round tank at a depth",
    inputs: [
      ["diameter", "d", "diameter", "none", length, [4, 8]],
      ["length", "a", "length", "none", length, [4, 20]],
      ["depth", "h", "depth on the stick", "none", length, [0.5, 3.9]],
    ],
    output: ["V", "contents", "none", ["gal", "L"], volume],
    equation: "V = a * (d ^ 2 / 4 * acos((d / 2 - h) / (d / 2)) - (d / 2 - h) * sqrt(d * h - h ^ 2))",
    run: ({ diameter, length: long, depth: dip }) =>
      tankContents({ shape: "lying cylinder", diameter, length: long }, dip),
    traps: ["Taking half of the depth for half of the contents: that holds at the middle only."],
    basis: "geometry",
    sources: [gaugeLyingTank],
  }),
  formula({
    id: "containment-volume",
    name: "containment",
    title: "Volume that a containment must hold",
    inputs: [
      ["largest", "T", "largest tank", "none", ["gal", "L"], [200, 5000]],
      ["margin", "m", "share of it that must be held", "none", share, [100, 150], pure],
    ],
    output: ["V", "volume", "none", ["gal", "L"]],
    equation: "V = m * T",
    run: (given) => containment(given).volume,
    traps: ["Counting the room that the tanks themselves take up."],
    basis: "published",
    sources: [coloradoContainment, epaContainment],
  }),
  pondVolumeFormula,
  formula({
    id: "mean-pond-depth",
    name: "meanDepth",
    title: "Mean depth of a pond from a row of soundings, with zero at each bank",
    inputs: [
      ["first", "d_1", "first sounding", "none", length, [1, 8]],
      ["second", "d_2", "second sounding", "none", length, [2, 12]],
      ["third", "d_3", "third sounding", "none", length, [1, 8]],
    ],
    output: ["d", "mean depth", "none", length],
    equation: "d = (0 + d_1 + d_2 + d_3 + 0) / 5",
    run: ({ first, second, third }) => {
      const bank = quantity(0, "ft");
      return meanDepth({ rows: [[bank, first, second, third, bank]] }).depth;
    },
    traps: ["Leaving out the zeros at the banks: the mean comes out too deep, and with it every dose."],
    basis: "published",
    sources: [texasTaleTape],
  }),
  formula({
    id: "contour-volume",
    name: "contourVolume",
    title: "Volume of a pond from three contours",
    inputs: [
      ["surface", "A_0", "area of the surface", "none", area, [20000, 50000]],
      ["middle", "A_1", "area of the middle contour", "none", area, [8000, 19000]],
      ["deepest", "A_2", "area of the deepest contour", "none", area, [500, 7000]],
      ["interval", "h", "depth between contours", "none", length, [1, 6]],
    ],
    output: ["V", "volume", "none", volume],
    equation: "V = h * ((A_0 + A_2) / 2 + A_1)",
    run: ({ surface, middle, deepest, interval }) =>
      contourVolume({ areas: [surface, middle, deepest], interval, rule: "average end area" }),
    traps: ["Counting the surface in full: it counts half."],
    basis: "geometry",
    sources: [],
  }),
  waterDoseFormula,
];
