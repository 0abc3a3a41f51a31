import { quantity } from "../../../src/quantity/index.js";
import { areaEstimate, areaOfShape, netArea, siteArea, siteAreaEstimate } from "../../../src/site/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const ft = (value: number) => quantity(value, "ft");
const lawn = { shape: "rectangle", length: ft(90), width: ft(50) };
const known = { shape: "measured", area: quantity(900, "ft2") };
const plan = { shape: "measured", area: quantity(900, "ft2", "plan") };
const tape = { reading: ft(0.1), meaning: "limits" };
const very = Array.from({ length: 10_001 }, () => known);

const rows: readonly Refusal[] = [
  ["no shape", areaOfShape, [undefined], ["missing shape: a record that names its shape [undefined]"]],
  [
    "nothing of a shape",
    areaOfShape,
    [{}],
    [
      "missing shape: one of measured, square, rectangle, parallelogram, triangle, triangle from sides, trapezoid, quadrilateral, circle, ellipse, stadium, sector, segment, annulus, polygon, offsets, average radius, radial [undefined]",
    ],
  ],
  [
    "a shape by a near name",
    areaOfShape,
    [{ shape: "rectangel" }],
    [
      'type shape: one of measured, square, rectangle, parallelogram, triangle, triangle from sides, trapezoid, quadrilateral, circle, ellipse, stadium, sector, segment, annulus, polygon, offsets, average radius, radial ["rectangel"] rectangle?',
    ],
  ],
  [
    "a shape that is a number",
    areaOfShape,
    [{ shape: 7 }],
    [
      "type shape: one of measured, square, rectangle, parallelogram, triangle, triangle from sides, trapezoid, quadrilateral, circle, ellipse, stadium, sector, segment, annulus, polygon, offsets, average radius, radial [7]",
    ],
  ],
  [
    "a polygon without a unit",
    areaOfShape,
    [{ shape: "polygon", points: [] }],
    ["missing unit: the unit of length of the points [undefined]"],
  ],
  [
    "a polygon by another unit",
    areaOfShape,
    [{ shape: "polygon", points: [], unit: 7 }],
    ['type unit: a unit for a length, such as "ft" [7]'],
  ],
  [
    "an area of seed",
    areaOfShape,
    [{ shape: "measured", area: quantity(9, "ft2", "seed") }],
    ["substance/mismatch area: an area, which is of nothing [9 ft2 of seed]"],
  ],
  [
    "a plan without a slope",
    areaOfShape,
    [plan],
    ['missing slope: the slope of the ground under a plan area, "level" where there is none [undefined]'],
  ],
  [
    "a plan on the ground",
    areaOfShape,
    [{ ...plan, slope: "3:1", measured: "ground" }],
    ['conflict measured: plan: the area is tagged as a plan area ["ground"]'],
  ],
  [
    "a plan with a field that is not known",
    areaOfShape,
    [{ ...plan, slope: "3:1", area: { value: 9, unit: "ft2", of: "plan", kind: "a" } }],
    ['type area.kind: one of the fields value, unit, of, dimension [a field "kind"]'],
  ],
  [
    "a slope without a word where it was measured",
    areaOfShape,
    [{ ...lawn, slope: "3:1" }],
    ['missing measured: one of "ground", "plan" [undefined]'],
  ],
  [
    "measured by another word",
    areaOfShape,
    [{ ...lawn, slope: "steep", measured: "map" }],
    [
      'text slope: an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg" ["steep"]',
      'type measured: one of "ground", "plan" ["map"]',
    ],
  ],
  [
    "measured on a plan without a slope",
    areaOfShape,
    [{ ...lawn, measured: "plan" }],
    ['missing slope: the slope of the ground under a plan area, "level" where there is none [undefined]'],
  ],
  [
    "a name that is a number",
    areaOfShape,
    [{ ...lawn, name: 7 }],
    ["type name: a text of at most 200 characters; leave the field out where it has no name [7]"],
  ],
  ["no site", netArea, [undefined], ["missing site: a record with parts [undefined]"]],
  ["a site as a list", netArea, [[known]], ["type site: a record with parts [a list of 1]"]],
  ["nothing of a site", netArea, [{}], ["missing parts: a list with at least one shape [undefined]"]],
  [
    "a field of a site that is not known",
    netArea,
    [{ parts: [{ area: quantity(9, "ft2") }], cutouts: [] }],
    ['type cutouts: one of the fields parts, cutOuts [a field "cutouts"] cutOuts?'],
  ],
  [
    "parts that are none",
    netArea,
    [
      {
        parts: [
          7,
          quantity(9, "ft2"),
          [],
          {},
          { area: quantity(9, "ft2", "plan"), plan: quantity(9, "ft2"), size: 1 },
        ],
        cutOuts: 7,
      },
    ],
    [
      "type parts[0]: a record with area, and a name where it has one [7]",
      "type parts[1]: a record with area, and a name where it has one [9 ft2]",
      "type parts[2]: a record with area, and a name where it has one [a list of 0]",
      'missing parts[3].area: an area, such as quantity(12400, "ft2") [undefined]',
      'type parts[4].size: one of the fields name, area, plan [a field "size"]',
      "substance/mismatch parts[4].area: an area along the ground: surfaceArea(plan, slope) gives it, of 0 % grade where the ground is level [9 ft2 of plan]",
      'substance/mismatch parts[4].plan: a quantity of plan, such as quantity(9, "ft2", "plan") [9 ft2]',
      "type cutOuts: a list with at least one shape [7]",
    ],
  ],
  ["very many parts", netArea, [{ parts: very }], ["range parts: 10000 shapes or fewer [10001 shapes]"]],
  [
    "more cut out than there is",
    netArea,
    [{ parts: [{ area: quantity(9, "ft2") }], cutOuts: [{ area: quantity(2, "yd2") }] }],
    ["range cutOuts: 9 ft2 or less, which is what the parts are [18 ft2]"],
  ],
  [
    "no parts of a description",
    siteArea,
    [{}],
    ["missing parts: a list with at least one shape [undefined]"],
  ],
  [
    "parts of a description that are none",
    siteArea,
    [{ parts: [7, {}, { ...lawn, length: ft(0) }], cutOuts: [{ shape: "circle" }] }],
    [
      "type parts[0]: a record that names its shape [7]",
      "missing parts[1].shape: one of measured, square, rectangle, parallelogram, triangle, triangle from sides, trapezoid, quadrilateral, circle, ellipse, stadium, sector, segment, annulus, polygon, offsets, average radius, radial [undefined]",
      "range parts[2].length: more than zero [0 ft]",
      "missing cutOuts[0].radius: a radius, a diameter or a circumference [undefined]",
    ],
  ],
  [
    "very many parts of a description",
    siteArea,
    [{ parts: [lawn], cutOuts: very }],
    ["range cutOuts: 10000 shapes or fewer [10001 shapes]"],
  ],
  [
    "no shape and no tape",
    areaEstimate,
    [undefined, undefined],
    [
      "missing tape: a record with reading, scale, meaning [undefined]",
      "missing shape: a record that names its shape [undefined]",
    ],
  ],
  [
    "a tape of nothing",
    areaEstimate,
    [lawn, {}],
    [
      'missing tape.meaning: one of "standard error", "limits" [undefined]',
      "missing tape.reading: a reading error, a scale error, or both [undefined]",
    ],
  ],
  [
    "a tape of none, by another word",
    areaEstimate,
    [lawn, { reading: ft(-1), scale: quantity(-1, "%"), meaning: "sigma" }],
    [
      'type tape.meaning: one of "standard error", "limits" ["sigma"]',
      "range tape.reading: zero or more [-1 ft]",
      "range tape.scale: zero or more [-1 %]",
    ],
  ],
  [
    "a tape that is far off",
    areaEstimate,
    [lawn, { ...tape, scale: quantity(21, "%") }],
    ["range tape.scale: 20 % or less: the errors have to be small [21 %]"],
  ],
  [
    "an area that is known already",
    areaEstimate,
    [known, tape],
    [
      "range shape: a shape with its measures: the error of a known area is stated, statedEstimate takes it [an area that is known already]",
    ],
  ],
  [
    "very many measures",
    areaEstimate,
    [{ shape: "offsets", spacing: ft(1), widths: Array.from({ length: 501 }, () => ft(3)) }, tape],
    ["range shape: 500 or less [502 measures]"],
  ],
  [
    "no site and no tape",
    siteAreaEstimate,
    [undefined, undefined],
    [
      "missing tape: a record with reading, scale, meaning [undefined]",
      "missing site: a record with parts [undefined]",
    ],
  ],
  [
    "a known part of a site",
    siteAreaEstimate,
    [{ parts: [lawn, known], cutOuts: [{ ...known, area: quantity(1, "ft2") }] }, tape],
    [
      "range parts[1]: a shape with its measures: the error of a known area is stated, statedEstimate takes it [an area that is known already]",
      "range cutOuts[0]: a shape with its measures: the error of a known area is stated, statedEstimate takes it [an area that is known already]",
    ],
  ],
];

refusalsOf("what is refused of sites", rows);
