import {
  annulusWidth,
  circleDiameter,
  ellipseLength,
  netArea,
  offsetArea,
  perimeter,
  rectangleLength,
  squareSide,
  triangleHeight,
} from "../../site/index.js";
import { type FormulaSpec, formula } from "../entry/formula.js";
import { acreSides, groundsCalculateAreasAtIrregular, trackLaps } from "../works/site-works.js";

const length = ["ft", "m"] as const;
const area = ["ft2", "m2"] as const;

/** A length of a shape. */
const side = <const N extends string>(
  name: N,
  symbol: string,
  label: string,
  range: readonly [number, number] = [20, 300],
): readonly [N, string, string, "none", typeof length, readonly [number, number]] => [
  name,
  symbol,
  label,
  "none",
  length,
  range,
];
const given = ["area", "A", "area", "none", area, [1000, 50000]] as const;

/** Ways around, and lengths for an area. */
export const siteLengths: readonly FormulaSpec[] = [
  formula({
    id: "rectangle-perimeter",
    name: "perimeter",
    title: "Perimeter of a rectangle",
    inputs: [side("length", "a", "length"), side("width", "b", "width")],
    output: ["U", "way around", "none", length],
    equation: "U = 2 * (a + b)",
    run: (sides) => perimeter({ shape: "rectangle", ...sides }),
    traps: ["Adding two sides only."],
    basis: "geometry",
    sources: [trackLaps],
  }),
  formula({
    id: "rectangle-length",
    name: "rectangleLength",
    title: "Length of a rectangle for an area",
    inputs: [given, side("width", "b", "width")],
    output: ["a", "length", "none", length],
    equation: "a = A / b",
    run: rectangleLength,
    traps: ["Mixing square yards and feet."],
    basis: "geometry",
    sources: [],
  }),
  formula({
    id: "square-side",
    name: "squareSide",
    title: "Side of a square for an area",
    inputs: [given],
    output: ["a", "side", "none", length],
    equation: "a = sqrt(A)",
    run: ({ area: wanted }) => squareSide(wanted),
    traps: ["Dividing the area by four."],
    basis: "geometry",
    sources: [acreSides],
  }),
  formula({
    id: "circle-diameter",
    name: "circleDiameter",
    title: "Diameter of a circle for an area",
    inputs: [given],
    output: ["d", "diameter", "none", length],
    equation: "d = 2 * sqrt(A / pi)",
    run: ({ area: wanted }) => circleDiameter(wanted),
    traps: ["Stopping at the radius."],
    basis: "geometry",
    sources: [acreSides],
  }),
  formula({
    id: "triangle-height",
    name: "triangleHeight",
    title: "Height of a triangle for an area",
    inputs: [given, side("base", "b", "base")],
    output: ["h", "height", "none", length],
    equation: "h = 2 * A / b",
    run: triangleHeight,
    traps: ["Forgetting to double."],
    basis: "geometry",
    sources: [],
  }),
  formula({
    id: "ellipse-length",
    name: "ellipseLength",
    title: "Length of an ellipse for an area",
    inputs: [given, side("width", "b", "width")],
    output: ["a", "length", "none", length],
    equation: "a = 4 * A / (pi * b)",
    run: ellipseLength,
    traps: ["Taking the length of a rectangle: an ellipse of the same area is longer."],
    basis: "geometry",
    sources: [],
  }),
  formula({
    id: "annulus-width",
    name: "annulusWidth",
    title: "Width of a ring for an area",
    inputs: [given, side("innerDiameter", "d", "inner diameter", [20, 200])],
    output: ["w", "width", "none", length],
    equation: "w = sqrt(d ^ 2 / 4 + A / pi) - d / 2",
    run: annulusWidth,
    traps: ["Dividing the area by the inner circumference: the ring is longer on its outside."],
    basis: "geometry",
    sources: [],
  }),
];

export const netAreaFormula: FormulaSpec = formula({
  id: "net-area",
  name: "netArea",
  title: "Area without the part that is not treated",
  inputs: [
    ["whole", "A", "whole area", "none", area, [6000, 40000]],
    ["cutOut", "a", "part that is left out", "none", area, [100, 5000]],
  ],
  output: ["N", "area that is left", "treated", area],
  equation: "N = A - a",
  run: ({ whole, cutOut }) =>
    netArea({ parts: [{ name: "whole", area: whole }], cutOuts: [{ name: "part", area: cutOut }] }).net,
  traps: ["Adding the part, or leaving it in."],
  basis: "definition",
  sources: [],
});

export const offsetAreaOfSixFormula: FormulaSpec = formula({
  id: "offset-area-of-six",
  name: "offsetArea",
  title: "Area from widths along a line, six of them",
  inputs: [
    side("spacing", "d", "distance between the widths", [5, 30]),
    side("first", "w_0", "first width"),
    side("second", "w_1", "second width"),
    side("third", "w_2", "third width"),
    side("fourth", "w_3", "fourth width"),
    side("fifth", "w_4", "fifth width"),
    side("last", "w_5", "last width"),
  ],
  output: ["A", "area", "none", area],
  equation: "A = d * ((w_0 + w_5) / 2 + w_1 + w_2 + w_3 + w_4)",
  run: ({ spacing, first, second, third, fourth, fifth, last }) =>
    offsetArea({ widths: [first, second, third, fourth, fifth, last], spacing }),
  traps: ["Counting the first and the last width in full: each counts half."],
  basis: "geometry",
  sources: [groundsCalculateAreasAtIrregular],
});

/** Areas of more than one figure. */
export const siteAreas: readonly FormulaSpec[] = [netAreaFormula, offsetAreaOfSixFormula];
