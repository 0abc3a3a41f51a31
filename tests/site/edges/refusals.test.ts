import { quantity } from "../../../src/quantity/index.js";
import { bufferArea, passesAround, perimeter, reducedBuffer } from "../../../src/site/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const ft = (value: number) => quantity(value, "ft");
const percent = (value: number) => quantity(value, "%");
const points = [
  [0, 0],
  [100, 0],
  [100, 60],
  [0, 60],
];
const hole = [
  [40, 20],
  [60, 20],
  [60, 40],
];
const field = { points, unit: "ft", edges: [{ edge: 0, distance: ft(10) }] };
const box = { shape: "rectangle", length: ft(100), width: ft(60) };
const rounds = { outline: box, swath: ft(10), passes: 2 };
const buffer = { distance: ft(50), reductions: [percent(50)], rule: "sum" };

const rows: readonly Refusal[] = [
  ["no shape", perimeter, [undefined], ["missing shape: a record that names its shape [undefined]"]],
  [
    "nothing of a shape",
    perimeter,
    [{}],
    [
      "missing shape.shape: a shape whose edge is known: square, rectangle, triangle from sides, circle, stadium, polygon, ellipse, annulus; corners of any other go into a polygon [undefined]",
    ],
  ],
  [
    "a shape that has no edge",
    perimeter,
    [{ shape: "offsets" }],
    [
      'type shape.shape: a shape whose edge is known: square, rectangle, triangle from sides, circle, stadium, polygon, ellipse, annulus; corners of any other go into a polygon ["offsets"]',
    ],
  ],
  [
    "a shape by a near name",
    perimeter,
    [{ shape: "elipse" }],
    [
      'type shape.shape: a shape whose edge is known: square, rectangle, triangle from sides, circle, stadium, polygon, ellipse, annulus; corners of any other go into a polygon ["elipse"] ellipse?',
    ],
  ],
  [
    "an edge of nothing",
    perimeter,
    [{ shape: "ellipse", length: ft(0) }],
    [
      "range shape.length: more than zero [0 ft]",
      'missing shape.width: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "a ring of nothing",
    perimeter,
    [{ shape: "annulus" }],
    [
      "missing shape.outerRadius: outerRadius and innerRadius, outerDiameter and innerDiameter, or one diameter and the width of the ring [undefined]",
    ],
  ],
  [
    "a polygon of nothing",
    perimeter,
    [{ shape: "polygon" }],
    ['missing shape.unit: a unit for a length, such as "ft" [undefined]'],
  ],
  [
    "a polygon by another unit",
    perimeter,
    [{ shape: "polygon", points, unit: 7 }],
    ['type shape.unit: a unit for a length, such as "ft" [7]'],
  ],
  [
    "a polygon with holes, of which only the edge counts",
    perimeter,
    [{ shape: "polygon", points, unit: "ft", holes: [] }],
    ['type shape.holes: one of the fields points, unit [a field "holes"]'],
  ],
  [
    "sides that do not close",
    perimeter,
    [{ shape: "triangle from sides", a: ft(1), b: ft(2), c: ft(9) }],
    ["infeasible shape.c: less than the other two sides together, 3 ft: measure the three again [9 ft]"],
  ],
  [
    "nothing of rounds",
    passesAround,
    [{}],
    [
      "missing outline: a record that names its shape [undefined]",
      'missing swath: a length, such as quantity(40, "ft") [undefined]',
      "missing passes: a whole number of rounds, 1 or more [undefined]",
    ],
  ],
  [
    "rounds of another shape",
    passesAround,
    [{ ...rounds, outline: { shape: "ellipse" } }],
    [
      'type outline.shape: a shape whose edge is known: square, rectangle, triangle from sides, circle, stadium, polygon; corners of any other go into a polygon ["ellipse"]',
    ],
  ],
  [
    "rounds of a shape by a near name",
    passesAround,
    [{ ...rounds, outline: { shape: "squares" } }],
    [
      'type outline.shape: a shape whose edge is known: square, rectangle, triangle from sides, circle, stadium, polygon; corners of any other go into a polygon ["squares"] square?',
    ],
  ],
  [
    "rounds of none",
    passesAround,
    [{ ...rounds, swath: ft(0), passes: 0 }],
    ["range swath: more than zero [0 ft]", "range passes: 1 or more [0]"],
  ],
  ["part of a round", passesAround, [{ ...rounds, passes: 1.5 }], ["range passes: a whole number [1.5]"]],
  ["very many rounds", passesAround, [{ ...rounds, passes: 1001 }], ["range passes: 1000 or less [1001]"]],
  [
    "more rounds than fit",
    passesAround,
    [{ ...rounds, passes: 4 }],
    ["infeasible passes: at most 3: the middle of the next one is past the middle of the site [4]"],
  ],
  [
    "an outline with a dent",
    passesAround,
    [
      {
        ...rounds,
        outline: {
          shape: "polygon",
          points: [
            [0, 0],
            [9, 0],
            [9, 9],
            [6, 3],
          ],
          unit: "ft",
        },
      },
    ],
    [
      "range outline.points: an outline that bends one way: take its parts one by one [an outline with a dent]",
    ],
  ],
  [
    "an outline of nothing",
    passesAround,
    [{ ...rounds, outline: { shape: "square" } }],
    ['missing outline.side: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "nothing of a buffer",
    bufferArea,
    [{}],
    [
      'missing unit: a unit for a length, such as "ft" [undefined]',
      "missing edges: a list with at least one edge [undefined]",
    ],
  ],
  [
    "a unit that is a number",
    bufferArea,
    [{ ...field, unit: 7 }],
    ['type unit: a unit for a length, such as "ft" [7]'],
  ],
  ["no edges", bufferArea, [{ ...field, edges: [] }], ["missing edges: at least one edge [an empty list]"]],
  [
    "edges that are none",
    bufferArea,
    [
      {
        ...field,
        edges: [
          7,
          {},
          { edge: 4, distance: ft(-1) },
          { edge: 0.5, distance: ft(1) },
          { edge: "0", distance: ft(1) },
        ],
      },
    ],
    [
      "type edges[0]: a record with edge, hole, distance [7]",
      'missing edges[1].distance: a length, such as quantity(40, "ft") [undefined]',
      "range edges[2].distance: zero or more [-1 ft]",
      "range edges[3].edge: a whole number, 0 to 3 [0.5]",
      'not-finite edges[4].edge: a finite number ["0"]',
    ],
  ],
  [
    "an edge twice",
    bufferArea,
    [{ ...field, edges: [...field.edges, { edge: 0, distance: ft(5) }] }],
    ["duplicate edges[1]: each edge once [edge 0]"],
  ],
  [
    "a hole where none is",
    bufferArea,
    [{ ...field, edges: [{ hole: 0, distance: ft(5) }] }],
    ["range edges[0].hole: no hole: none was given [0]"],
  ],
  [
    "a hole that is not there",
    bufferArea,
    [{ ...field, holes: [hole], edges: [{ hole: 1, distance: ft(5) }] }],
    ["range edges[0].hole: a whole number, zero [1]"],
  ],
  [
    "an edge of a hole that is not there",
    bufferArea,
    [{ ...field, holes: [hole], edges: [{ hole: 0, edge: 3, distance: ft(5) }] }],
    ["range edges[0].edge: a whole number, 0 to 2 [3]"],
  ],
  [
    "all of a hole and one edge of it",
    bufferArea,
    [
      {
        ...field,
        holes: [hole],
        edges: [
          { hole: 0, distance: ft(5) },
          { hole: 0, edge: 1, distance: ft(5) },
        ],
      },
    ],
    ["duplicate edges[1]: each edge once [edge 1]"],
  ],
  [
    "a field that is not known",
    bufferArea,
    [{ ...field, edge: 1 }],
    ['type edge: one of the fields points, unit, holes, edges [a field "edge"] edges?'],
  ],
  [
    "nothing of a label",
    reducedBuffer,
    [{}],
    [
      'missing distance: a length, such as quantity(40, "ft") [undefined]',
      "missing reductions: a list with at least one reduction [undefined]",
      'missing rule: one of "sum", "in turn" [undefined]',
    ],
  ],
  [
    "a distance of none, another rule, less than no floor",
    reducedBuffer,
    [{ distance: ft(0), reductions: [], rule: "most", floor: ft(-1) }],
    [
      "range distance: more than zero [0 ft]",
      'type rule: one of "sum", "in turn" ["most"]',
      "range floor: zero or more [-1 ft]",
    ],
  ],
  [
    "reductions that are none",
    reducedBuffer,
    [{ ...buffer, reductions: [50, percent(-1), percent(101), ft(3)] }],
    [
      'type reductions[0]: a share, such as quantity(50, "%") [50]',
      "range reductions[1]: zero or more [-1 %]",
      "range reductions[2]: 100 % or less [101 %]",
      "unit/mismatch reductions[3]: a share, such as 40 % or 0.4 [3 ft]",
    ],
  ],
  [
    "very many reductions",
    reducedBuffer,
    [{ ...buffer, reductions: Array.from({ length: 51 }, () => percent(1)) }],
    ["range reductions: at most 50 items [a list of 51]"],
  ],
  [
    "reductions that are no list",
    reducedBuffer,
    [{ ...buffer, reductions: percent(50) }],
    ["type reductions: a list with at least one reduction [50 %]"],
  ],
  [
    "a floor above the buffer",
    reducedBuffer,
    [{ ...buffer, floor: quantity(20, "yd") }],
    ["range floor: 50 ft or less, the buffer itself [20 yd]"],
  ],
];

refusalsOf("what is refused of edges", rows);
