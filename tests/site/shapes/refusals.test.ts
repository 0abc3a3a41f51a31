import { quantity } from "../../../src/quantity/index.js";
import {
  annulusArea,
  annulusWidth,
  circleArea,
  circleDiameter,
  ellipseArea,
  ellipseLength,
  parallelogramArea,
  quadrilateralArea,
  rectangleArea,
  rectangleLength,
  sectorArea,
  segmentArea,
  squareArea,
  squareSide,
  stadiumArea,
  trapezoidArea,
  triangleArea,
  triangleAreaFromSides,
  triangleHeight,
} from "../../../src/site/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const ft = (value: number) => quantity(value, "ft");
const deg = (value: number) => quantity(value, "deg");
const acre = (value: number) => quantity(value, "acre");
const tiny = ft(1e-200);

const rows: readonly Refusal[] = [
  ["no shape", rectangleArea, [undefined], ["missing shape: a record with length, width [undefined]"]],
  ["a shape as a list", rectangleArea, [[3, 4]], ["type shape: a record with length, width [a list of 2]"]],
  [
    "nothing of a rectangle",
    rectangleArea,
    [{}],
    [
      'missing length: a length, such as quantity(40, "ft") [undefined]',
      'missing width: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "numbers for a rectangle",
    rectangleArea,
    [{ length: 3, width: 4 }],
    [
      'type length: a length, such as quantity(40, "ft"): a number has no unit [3]',
      'type width: a length, such as quantity(40, "ft"): a number has no unit [4]',
    ],
  ],
  [
    "a rectangle of none",
    rectangleArea,
    [{ length: ft(0), width: quantity(1, "lb") }],
    ["range length: more than zero [0 ft]", "unit/mismatch width: a length, such as 10 ft or 3 m [1 lb]"],
  ],
  [
    "a rectangle too small for a number",
    rectangleArea,
    [{ length: tiny, width: tiny }],
    ["range shape: an area of more than zero [0]"],
  ],
  [
    "a field that is not known",
    rectangleArea,
    [{ length: ft(3), width: ft(4), depth: ft(1) }],
    ['type depth: one of the fields length, width [a field "depth"]'],
  ],
  [
    "nothing of a square",
    squareArea,
    [{}],
    ['missing side: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "nothing of a parallelogram",
    parallelogramArea,
    [{}],
    [
      'missing base: a length, such as quantity(40, "ft") [undefined]',
      'missing height: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "nothing of a triangle",
    triangleArea,
    [{}],
    [
      'missing base: a length, such as quantity(40, "ft") [undefined]',
      'missing height: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "nothing of a trapezoid",
    trapezoidArea,
    [{}],
    [
      'missing a: a length, such as quantity(40, "ft") [undefined]',
      'missing b: a length, such as quantity(40, "ft") [undefined]',
      'missing height: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "nothing of an ellipse",
    ellipseArea,
    [{}],
    [
      'missing length: a length, such as quantity(40, "ft") [undefined]',
      'missing width: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "nothing of three sides",
    triangleAreaFromSides,
    [{}],
    [
      'missing a: a length, such as quantity(40, "ft") [undefined]',
      'missing b: a length, such as quantity(40, "ft") [undefined]',
      'missing c: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "three sides that do not close",
    triangleAreaFromSides,
    [{ a: ft(3), b: ft(9), c: ft(4) }],
    ["infeasible b: less than the other two sides together, 7 ft: measure the three again [9 ft]"],
  ],
  [
    "three sides in one line",
    triangleAreaFromSides,
    [{ a: ft(0.1), b: ft(0.2), c: ft(0.3) }],
    ["infeasible c: less than the other two sides together, 0.3 ft: measure the three again [0.3 ft]"],
  ],
  [
    "nothing of a circle",
    circleArea,
    [{}],
    ["missing radius: a radius, a diameter or a circumference [undefined]"],
  ],
  [
    "a circle told twice",
    circleArea,
    [{ radius: ft(3), diameter: ft(6) }],
    ["conflict radius: one of radius, diameter and circumference [radius and diameter]"],
  ],
  [
    "a circle told by what is none",
    circleArea,
    [{ circumference: ft(0) }],
    ["range circumference: more than zero [0 ft]"],
  ],
  [
    "nothing of a sector",
    sectorArea,
    [{}],
    [
      'missing radius: a length, such as quantity(40, "ft") [undefined]',
      'missing angle: an angle, such as quantity(90, "deg") [undefined]',
    ],
  ],
  [
    "a sector by numbers",
    sectorArea,
    [{ radius: 3, angle: 90 }],
    [
      'type radius: a length, such as quantity(40, "ft"): a number has no unit [3]',
      'type angle: an angle, such as quantity(90, "deg"): a number has no unit [90]',
    ],
  ],
  [
    "a sector of none",
    sectorArea,
    [{ radius: ft(0), angle: deg(0) }],
    ["range radius: more than zero [0 ft]", "range angle: more than zero [0 deg]"],
  ],
  [
    "a sector of more than a turn",
    sectorArea,
    [{ radius: ft(3), angle: deg(361) }],
    ["range angle: 360 deg or less [361 deg]"],
  ],
  [
    "nothing of a segment",
    segmentArea,
    [{}],
    ["missing chord: chord and height, or radius and angle [undefined]"],
  ],
  [
    "a chord alone",
    segmentArea,
    [{ chord: ft(3) }],
    ['missing height: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "a height alone",
    segmentArea,
    [{ height: ft(3) }],
    ['missing chord: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "a radius alone",
    segmentArea,
    [{ radius: ft(3) }],
    ['missing angle: an angle, such as quantity(90, "deg") [undefined]'],
  ],
  [
    "an angle alone",
    segmentArea,
    [{ angle: deg(90) }],
    ['missing radius: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "a segment told twice",
    segmentArea,
    [{ chord: ft(3), height: ft(1), radius: ft(9), angle: deg(90) }],
    ["conflict chord: chord and height, or radius and angle [measures of both pairs]"],
  ],
  [
    "a chord and an angle",
    segmentArea,
    [{ chord: ft(3), angle: deg(90) }],
    [
      "conflict chord: chord and height, or radius and angle [measures of both pairs]",
      'missing height: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "a segment of a full turn",
    segmentArea,
    [{ radius: ft(3), angle: deg(360) }],
    ["range angle: less than 360 deg [360 deg]"],
  ],
  [
    "nothing of a ring",
    annulusArea,
    [{}],
    [
      "missing outerRadius: outerRadius and innerRadius, outerDiameter and innerDiameter, or one diameter and the width of the ring [undefined]",
    ],
  ],
  [
    "one radius of a ring",
    annulusArea,
    [{ innerRadius: ft(3) }],
    [
      "missing outerRadius: outerRadius and innerRadius, outerDiameter and innerDiameter, or one diameter and the width of the ring [undefined]",
    ],
  ],
  [
    "one diameter of a ring",
    annulusArea,
    [{ outerDiameter: ft(3) }],
    [
      "missing innerDiameter: outerRadius and innerRadius, outerDiameter and innerDiameter, or one diameter and the width of the ring [undefined]",
    ],
  ],
  [
    "the width of a ring",
    annulusArea,
    [{ width: ft(3) }],
    [
      "missing outerDiameter: outerRadius and innerRadius, outerDiameter and innerDiameter, or one diameter and the width of the ring [undefined]",
    ],
  ],
  [
    "a ring by a radius and a width",
    annulusArea,
    [{ outerRadius: ft(3), width: ft(1) }],
    [
      "conflict outerRadius: outerRadius and innerRadius, outerDiameter and innerDiameter, or one diameter and the width of the ring [outerRadius and width]",
    ],
  ],
  [
    "a ring by three measures",
    annulusArea,
    [{ outerDiameter: ft(9), innerDiameter: ft(5), width: ft(2) }],
    [
      "conflict outerDiameter: outerRadius and innerRadius, outerDiameter and innerDiameter, or one diameter and the width of the ring [outerDiameter and innerDiameter and width]",
    ],
  ],
  [
    "a ring inside out",
    annulusArea,
    [{ outerRadius: ft(3), innerRadius: ft(3) }],
    ["range innerRadius: less than 3 ft, which is the outer one [3 ft]"],
  ],
  [
    "a ring inside out by diameters",
    annulusArea,
    [{ outerDiameter: ft(3), innerDiameter: ft(4) }],
    ["range innerDiameter: less than 3 ft, which is the outer one [4 ft]"],
  ],
  [
    "a ring as wide as half its diameter",
    annulusArea,
    [{ outerDiameter: ft(4), width: ft(2) }],
    ["range width: less than 2 ft, which is half the diameter [2 ft]"],
  ],
  [
    "nothing of a track",
    stadiumArea,
    [{}],
    [
      'missing width: a length, such as quantity(40, "ft") [undefined]',
      "missing length: length, over all, or straight, which is all but the two ends [undefined]",
    ],
  ],
  [
    "a track told twice",
    stadiumArea,
    [{ width: ft(3), length: ft(9), straight: ft(6) }],
    ["conflict length: length, over all, or straight, not both [9 ft]"],
  ],
  [
    "a track that is round",
    stadiumArea,
    [{ width: ft(3), length: ft(3) }],
    ["range length: more than 3 ft, the width; a round shape goes to circleArea [3 ft]"],
  ],
  [
    "a straight of none",
    stadiumArea,
    [{ width: ft(3), straight: ft(0) }],
    ["range straight: more than zero [0 ft]"],
  ],
  [
    "nothing of four sides",
    quadrilateralArea,
    [{}],
    [
      "missing height1: height1 and height2, or the four sides a, b, c, d [undefined]",
      'missing diagonal: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "heights and sides",
    quadrilateralArea,
    [{ diagonal: ft(9), height1: ft(3), a: ft(5) }],
    [
      "conflict height1: height1 and height2, or the four sides a, b, c, d [heights and sides]",
      'missing height2: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "one height",
    quadrilateralArea,
    [{ diagonal: ft(9), height1: ft(3) }],
    ['missing height2: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "the other height",
    quadrilateralArea,
    [{ diagonal: ft(9), height2: ft(3) }],
    ['missing height1: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "three sides of four",
    quadrilateralArea,
    [{ diagonal: ft(9), a: ft(5), b: ft(5), c: ft(5) }],
    ['missing d: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "sides that do not close on either side",
    quadrilateralArea,
    [{ diagonal: ft(9), a: ft(4), b: ft(4), c: ft(3), d: ft(3) }],
    [
      "infeasible diagonal: less than the other two sides together, 8 ft: measure the three again [9 ft]",
      "infeasible diagonal: less than the other two sides together, 6 ft: measure the three again [9 ft]",
    ],
  ],
  [
    "no area of a square",
    squareSide,
    [undefined],
    ['missing area: an area, such as quantity(12400, "ft2") [undefined]'],
  ],
  [
    "a number for an area",
    squareSide,
    [9],
    ['type area: an area, such as quantity(12400, "ft2"): a number has no unit [9]'],
  ],
  ["an area of none", squareSide, [acre(0)], ["range area: more than zero [0 acre]"]],
  [
    "the whole of a site",
    squareSide,
    [quantity(1, "acre", "gross")],
    [
      "substance/mismatch area: the area that remains after what is cut out: netArea gives it as net [1 acre of gross]",
    ],
  ],
  [
    "an area of a plan",
    squareSide,
    [quantity(1, "acre", "plan")],
    [
      "substance/mismatch area: an area along the ground: surfaceArea(plan, slope) gives it, of 0 % grade where the ground is level [1 acre of plan]",
    ],
  ],
  [
    "an area of seed",
    squareSide,
    [quantity(1, "acre", "seed")],
    ["substance/mismatch area: an area, which is of nothing [1 acre of seed]"],
  ],
  [
    "a length for an area",
    circleDiameter,
    [ft(9)],
    ["unit/mismatch area: an area, such as 5000 ft2 or 500 m2 [9 ft]"],
  ],
  [
    "nothing for a length",
    rectangleLength,
    [{}],
    [
      'missing area: an area, such as quantity(12400, "ft2") [undefined]',
      'missing width: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "nothing for a height",
    triangleHeight,
    [{}],
    [
      'missing area: an area, such as quantity(12400, "ft2") [undefined]',
      'missing base: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "nothing for an axis",
    ellipseLength,
    [{}],
    [
      'missing area: an area, such as quantity(12400, "ft2") [undefined]',
      'missing width: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "nothing for a ring",
    annulusWidth,
    [{}],
    [
      'missing area: an area, such as quantity(12400, "ft2") [undefined]',
      'missing innerDiameter: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "no width and no area",
    rectangleLength,
    [{ area: acre(0), width: ft(0) }],
    ["range area: more than zero [0 acre]", "range width: more than zero [0 ft]"],
  ],
  [
    "an area too small for a length",
    rectangleLength,
    [{ area: quantity(1e-300, "ft2"), width: ft(1e300) }],
    ["range area: an area that makes a length of more than zero [0]"],
  ],
];

refusalsOf("what is refused of shapes", rows);
