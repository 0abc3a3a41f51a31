import { quantity } from "../../../src/quantity/index.js";
import {
  averageRadiusArea,
  offsetArea,
  paceCalibration,
  pacedDistance,
  polygonArea,
  radialArea,
} from "../../../src/site/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const ft = (value: number) => quantity(value, "ft");
const widths = [0, 6, 0].map(ft);
const course = ft(300);
const pace = paceCalibration({ course, counts: [118, 120, 122] });
const square = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];
const at = (x: number, y: number, size: number) => [
  [x, y],
  [x + size, y],
  [x + size, y + size],
];
const ray = (degrees: number, far: number) => ({ angle: quantity(degrees, "deg"), distance: ft(far) });
/** A zigzag whose edges meet many times over. */
const scrambled = [
  [0, 0],
  [10, 1],
  [0, 2],
  [10, 3],
  [0, 4],
  [5, -9],
  [6, 20],
];

const rows: readonly Refusal[] = [
  [
    "nothing of radii",
    averageRadiusArea,
    [{}],
    ["missing radii: a list with at least one length [undefined]"],
  ],
  [
    "two radii",
    averageRadiusArea,
    [{ radii: [ft(3), ft(4)] }],
    ["range radii: a list of 3 to 10000 lengths [a list of 2]"],
  ],
  [
    "radii of none, by another rule",
    averageRadiusArea,
    [{ radii: [ft(3), ft(0), 4], rule: "median" }],
    [
      'type rule: one of "mean radius", "mean square" ["median"]',
      "range radii[1]: more than zero [0 ft]",
      'type radii[2]: a length, such as quantity(40, "ft"): a number has no unit [4]',
    ],
  ],
  [
    "very many radii",
    averageRadiusArea,
    [{ radii: Array.from({ length: 10_001 }, () => ft(3)) }],
    ["range radii: a list of 3 to 10000 lengths [a list of 10001]"],
  ],
  [
    "nothing of offsets",
    offsetArea,
    [{}],
    [
      'missing spacing: a length, such as quantity(40, "ft") [undefined]',
      "missing widths: a list with at least one length [undefined]",
    ],
  ],
  [
    "one width",
    offsetArea,
    [{ spacing: ft(2), widths: [ft(1)] }],
    ["range widths: a list of 2 to 10000 lengths [a list of 1]"],
  ],
  [
    "two widths for three",
    offsetArea,
    [{ spacing: ft(2), widths: [ft(1), ft(2)], rule: "simpson" }],
    ["range widths: a list of 3 to 10000 lengths [a list of 2]"],
  ],
  [
    "no spacing, another rule",
    offsetArea,
    [{ spacing: ft(0), widths, rule: "midpoint" }],
    [
      'type rule: one of "trapezoidal", "simpson", "average ordinate" ["midpoint"]',
      "range spacing: more than zero [0 ft]",
    ],
  ],
  [
    "spacings of none",
    offsetArea,
    [{ spacing: [ft(1), ft(0)], widths }],
    ["range spacing[1]: more than zero [0 ft]"],
  ],
  [
    "no spacings in the list",
    offsetArea,
    [{ spacing: [], widths }],
    ["range spacing: a list of 1 to 10000 lengths [a list of 0]"],
  ],
  [
    "widths below nothing",
    offsetArea,
    [{ spacing: ft(2), widths: [ft(1), ft(-1)] }],
    ["range widths[1]: zero or more [-1 ft]"],
  ],
  [
    "widths that are all zero",
    offsetArea,
    [{ spacing: ft(2), widths: [ft(0), ft(0)] }],
    ["range widths: a width of more than zero [widths that are all zero]"],
  ],
  [
    "sides that are all zero",
    offsetArea,
    [{ spacing: ft(2), left: [ft(0), ft(0)], right: [ft(0), ft(0)] }],
    ["range left: a width of more than zero [widths that are all zero]"],
  ],
  [
    "a left side alone",
    offsetArea,
    [{ spacing: ft(2), left: widths }],
    ["missing right: a list with at least one length [undefined]"],
  ],
  [
    "a right side alone",
    offsetArea,
    [{ spacing: ft(2), right: widths }],
    ["missing left: a list with at least one length [undefined]"],
  ],
  [
    "widths and sides",
    offsetArea,
    [{ spacing: ft(2), widths, left: widths, right: widths }],
    ["conflict widths: widths, or left and right, not both [a list of 3]"],
  ],
  [
    "fewer on the right",
    offsetArea,
    [{ spacing: ft(2), left: widths, right: widths.slice(1) }],
    ["conflict right: a list of 3, as many as on the left [a list of 2]"],
  ],
  [
    "fewer spacings than strips",
    offsetArea,
    [{ spacing: [ft(2)], widths }],
    ["conflict spacing: 2, one for each strip [1 spacing for 3 widths]"],
  ],
  [
    "unequal spacings for Simpson",
    offsetArea,
    [{ spacing: [ft(2), ft(3)], widths, rule: "simpson" }],
    ["conflict spacing: equal spacing for the rule simpson; or the rule trapezoidal [unequal spacings]"],
  ],
  [
    "unequal spacings for an average",
    offsetArea,
    [{ spacing: [ft(2), ft(3)], widths, rule: "average ordinate" }],
    [
      "conflict spacing: equal spacing for the rule average ordinate; or the rule trapezoidal [unequal spacings]",
    ],
  ],
  [
    "nothing of paces",
    paceCalibration,
    [{}],
    [
      'missing course: a length, such as quantity(40, "ft") [undefined]',
      "missing counts: a list with at least one count [undefined]",
    ],
  ],
  [
    "one walk",
    paceCalibration,
    [{ course, counts: [118] }],
    ["range counts: 2 to 1000 counts: walk it again [a list of 1]"],
  ],
  [
    "four walks, two of them left out",
    paceCalibration,
    [{ course, counts: [118, 119, 120, 121], drop: "high and low" }],
    ["range counts: 5 to 1000 counts: walk it again [a list of 4]"],
  ],
  [
    "walks of none, other words",
    paceCalibration,
    [{ course: ft(0), counts: [118, 0, "x"], drop: "worst" }],
    [
      "range course: more than zero [0 ft]",
      'type drop: one of "high and low" ["worst"]',
      "range counts[1]: more than 0 [0]",
      'not-finite counts[2]: a finite number ["x"]',
    ],
  ],
  [
    "very many walks",
    paceCalibration,
    [{ course, counts: Array.from({ length: 1001 }, () => 9) }],
    ["range counts: 2 to 1000 counts: walk it again [a list of 1001]"],
  ],
  [
    "nothing of a distance",
    pacedDistance,
    [{}],
    [
      "missing pace: what paceCalibration gives; for a pace without its error, multiply: pace.times(375) [undefined]",
      "missing counts: a number of paces, or a list of them [undefined]",
    ],
  ],
  [
    "a pace without its error",
    pacedDistance,
    [{ pace: ft(2.5), counts: 375 }],
    [
      "type pace: what paceCalibration gives; for a pace without its error, multiply: pace.times(375) [2.5 ft]",
    ],
  ],
  ["no paces", pacedDistance, [{ pace, counts: 0 }], ["range counts: more than 0 [0]"]],
  ["no walks", pacedDistance, [{ pace, counts: [] }], ["missing counts: at least one count [an empty list]"]],
  [
    "a calibration of nothing",
    pacedDistance,
    [{ pace: { type: "pace-calibration" }, counts: 375 }],
    [
      "missing pace.pace: an estimate [undefined]",
      "missing pace.walkError: a share, such as 40 % or 0.4 [undefined]",
      "missing pace.walks: a finite number [undefined]",
    ],
  ],
  [
    "a calibration of none",
    pacedDistance,
    [{ pace: { ...pace, walks: 1, walkError: quantity(0, "%"), pace: { value: ft(0) } }, counts: 375 }],
    [
      "range pace.pace.value: more than zero [0 ft]",
      "range pace.walkError: more than zero [0 %]",
      "range pace.walks: 2 or more [1]",
    ],
  ],
  [
    "a calibration with a field that is not known",
    pacedDistance,
    [{ pace: { ...pace, walk: 1 }, counts: 375 }],
    [
      'type pace.walk: one of the fields type, version, pace, walkError, walks, dropped [a field "walk"] walks?',
    ],
  ],
  ["no corners", polygonArea, [undefined, "ft"], ["missing points: a list of points [undefined]"]],
  ["corners as a record", polygonArea, [{}, "ft"], ["type points: a list of points [a record]"]],
  [
    "two corners",
    polygonArea,
    [
      [
        [0, 0],
        [1, 1],
      ],
      "ft",
    ],
    ["range points: 3 to 20000 corners [2 corners]"],
  ],
  [
    "corners that are none",
    polygonArea,
    [[[0, 0], 7, [1], ["x", null], [1, 2, 3]], "ft"],
    [
      "type points[1]: a pair of numbers, [x, y] [7]",
      "type points[2]: a pair of numbers, [x, y] [a list of 1]",
      'not-finite points[3][0]: a finite number ["x"]',
      "not-finite points[3][1]: a finite number [null]",
      "type points[4]: a pair of numbers, [x, y] [a list of 3]",
    ],
  ],
  [
    "corners in a unit for an area, such as ft2 or m2",
    polygonArea,
    [square, "ft2"],
    ["unit/mismatch unit: a length, such as 10 ft or 3 m [1 ft2]"],
  ],
  [
    "corners without a unit",
    polygonArea,
    [square],
    [
      'type points[0]: a record with x, y; pairs of numbers need a unit: polygonArea(points, "ft") [a list of 2]',
      'type points[1]: a record with x, y; pairs of numbers need a unit: polygonArea(points, "ft") [a list of 2]',
      'type points[2]: a record with x, y; pairs of numbers need a unit: polygonArea(points, "ft") [a list of 2]',
      'type points[3]: a record with x, y; pairs of numbers need a unit: polygonArea(points, "ft") [a list of 2]',
    ],
  ],
  [
    "corners of nothing",
    polygonArea,
    [[{}, { x: ft(1), y: 2, z: 3 }]],
    [
      'missing points[0].x: a length, such as quantity(40, "ft") [undefined]',
      'missing points[0].y: a length, such as quantity(40, "ft") [undefined]',
      'type points[1].z: one of the fields x, y [a field "z"]',
      'type points[1].y: a length, such as quantity(40, "ft"): a number has no unit [2]',
    ],
  ],
  [
    "a corner twice",
    polygonArea,
    [
      [
        [0, 0],
        [10, 0],
        [0, 0],
        [0, 10],
      ],
      "ft",
    ],
    ["duplicate points[2]: another point [the point of points[0]]"],
  ],
  [
    "edges that cross",
    polygonArea,
    [
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
      "ft",
    ],
    [
      "conflict points: points in order around the edge, so that no two edges cross or touch [edge 0-1 meets edge 2-3]",
    ],
  ],
  [
    "edges that cross many times",
    polygonArea,
    [scrambled, "ft"],
    [
      "conflict points: points in order around the edge, so that no two edges cross or touch [edge 0-1 meets edge 4-5, edge 0-1 meets edge 5-6, edge 1-2 meets edge 4-5, edge 1-2 meets edge 5-6, edge 1-2 meets edge 6-0, and 6 more]",
    ],
  ],
  [
    "degrees for meters",
    polygonArea,
    [
      [
        [8.001, 50.001],
        [8.002, 50.001],
        [8.002, 50.002],
      ],
      "m",
    ],
    [
      "range points: distances of a plane: geodesicArea of ratewright/site/geodesic takes longitude and latitude [an outline 0.0010 m across]",
    ],
  ],
  [
    "very many corners",
    polygonArea,
    [Array.from({ length: 20_002 }, (_, i) => [i, i * i]), "ft"],
    ["range points: 3 to 20000 corners [20002 corners]"],
  ],
  [
    "holes that are no list",
    polygonArea,
    [square, "ft", { holes: 7 }],
    ["type holes: a list of outlines [7]"],
  ],
  [
    "very many holes",
    polygonArea,
    [square, "ft", { holes: Array.from({ length: 501 }, () => at(1, 1, 1)) }],
    ["range holes: 500 cut-outs or fewer [501 cut-outs]"],
  ],
  [
    "options that are not known",
    polygonArea,
    [square, "ft", { hole: [] }],
    ['type options.hole: one of the fields holes [a field "hole"] holes?'],
  ],
  [
    "a hole of two corners",
    polygonArea,
    [
      square,
      "ft",
      {
        holes: [
          [
            [1, 1],
            [2, 2],
          ],
        ],
      },
    ],
    ["range holes[0]: 3 to 20000 corners [2 corners]"],
  ],
  [
    "a hole outside",
    polygonArea,
    [square, "ft", { holes: [at(20, 20, 1)] }],
    ["conflict holes[0][0]: a cut-out inside of its outline [a corner outside of the outline]"],
  ],
  [
    "a hole across the edge",
    polygonArea,
    [
      [
        [0, 0],
        [10, 0],
        [5, 5],
        [10, 10],
        [0, 10],
      ],
      "ft",
      {
        holes: [
          [
            [9, 1],
            [9, 9],
            [1, 5],
          ],
        ],
      },
    ],
    ["conflict holes[0]: a cut-out inside of its outline [edge 0 outside of the outline]"],
  ],
  [
    "holes over one another",
    polygonArea,
    [square, "ft", { holes: [at(1, 1, 5), at(2, 2, 5)] }],
    ["conflict holes[1]: cut-outs apart [a cut-out over holes[0]]"],
  ],
  ["nothing of rays", radialArea, [{}], ["missing rays: a list with at least one ray [undefined]"]],
  [
    "two rays",
    radialArea,
    [{ rays: [ray(0, 9), ray(90, 9)] }],
    ["range rays: 3 to 20000 corners [2 corners]"],
  ],
  [
    "rays that are none",
    radialArea,
    [{ rays: [7, {}, { angle: ft(1), distance: ft(-1) }] }],
    [
      "type rays[0]: a record with angle, distance [7]",
      'missing rays[1].angle: an angle, such as quantity(90, "deg") [undefined]',
      'missing rays[1].distance: a length, such as quantity(40, "ft") [undefined]',
      "unit/mismatch rays[2].angle: an angle, such as 30 deg [1 ft]",
      "range rays[2].distance: zero or more [-1 ft]",
    ],
  ],
  ["no rays", radialArea, [{ rays: [] }], ["missing rays: at least one ray [an empty list]"]],
  [
    "a ray twice",
    radialArea,
    [{ rays: [ray(0, 9), ray(90, 9), ray(0, 9), ray(180, 9)] }],
    ["duplicate rays[2]: another point [the point of rays[0]]"],
  ],
  [
    "very many rays",
    radialArea,
    [{ rays: Array.from({ length: 20_001 }, () => ray(0, 9)) }],
    ["range rays: 20000 rays or fewer [a list of 20001]"],
  ],
];

refusalsOf("what is refused of surveys", rows);
