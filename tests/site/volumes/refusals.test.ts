import { quantity } from "../../../src/quantity/index.js";
import {
  containment,
  cuboidVolume,
  cylinderVolume,
  dipTable,
  dipTableText,
  tankCapacity,
  tankContents,
  tankDepth,
} from "../../../src/site/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const m = (value: number) => quantity(value, "m");
const gal = (value: number) => quantity(value, "gal");
const box = { shape: "box", length: m(2), width: m(1), height: m(1) };
const cone = { shape: "cone bottom", diameter: m(1), coneHeight: m(1), height: m(2) };
const tank = { largest: gal(1000), rule: "open 125 %" };
const tiny = m(1e-150);

const rows: readonly Refusal[] = [
  [
    "nothing of a box",
    cuboidVolume,
    [{}],
    [
      'missing length: a length, such as quantity(40, "ft") [undefined]',
      'missing width: a length, such as quantity(40, "ft") [undefined]',
      'missing depth: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "a box too small for a number",
    cuboidVolume,
    [{ length: tiny, width: tiny, depth: tiny }],
    ["range shape: a volume of more than zero [0]"],
  ],
  [
    "nothing of a cylinder",
    cylinderVolume,
    [{}],
    [
      'missing diameter: a length, such as quantity(40, "ft") [undefined]',
      'missing depth: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "no tank",
    tankCapacity,
    [undefined],
    ["missing tank: a record that names the shape of the tank [undefined]"],
  ],
  [
    "nothing of a tank",
    tankCapacity,
    [{}],
    [
      "missing tank.shape: one of box, upright cylinder, lying cylinder, lying ellipse, cone bottom [undefined]",
    ],
  ],
  [
    "a tank by a near name",
    tankCapacity,
    [{ shape: "lying cylinders" }],
    [
      'type tank.shape: one of box, upright cylinder, lying cylinder, lying ellipse, cone bottom ["lying cylinders"] lying cylinder?',
    ],
  ],
  [
    "a tank by a number",
    tankCapacity,
    [{ shape: 7 }],
    ["type tank.shape: one of box, upright cylinder, lying cylinder, lying ellipse, cone bottom [7]"],
  ],
  [
    "a tank of nothing",
    tankCapacity,
    [{ shape: "lying ellipse" }],
    [
      'missing tank.width: a length, such as quantity(40, "ft") [undefined]',
      'missing tank.height: a length, such as quantity(40, "ft") [undefined]',
      'missing tank.length: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "a tank of none with a side that it does not have",
    tankCapacity,
    [{ ...box, length: m(0), width: 3, diameter: m(1) }],
    [
      'type tank.diameter: one of the fields shape, length, width, height [a field "diameter"]',
      "range tank.length: more than zero [0 m]",
      'type tank.width: a length, such as quantity(40, "ft"): a number has no unit [3]',
    ],
  ],
  [
    "a cone without its sides",
    tankCapacity,
    [{ shape: "cone bottom", outlet: m(-1) }],
    [
      'missing tank.diameter: a length, such as quantity(40, "ft") [undefined]',
      'missing tank.coneHeight: a length, such as quantity(40, "ft") [undefined]',
      'missing tank.height: a length, such as quantity(40, "ft") [undefined]',
      "range tank.outlet: zero or more [-1 m]",
    ],
  ],
  [
    "an outlet as wide as the tank",
    tankCapacity,
    [{ ...cone, outlet: m(1) }],
    ["range tank.outlet: less than 1 m, which is the diameter [1 m]"],
  ],
  [
    "an outlet of a box",
    tankCapacity,
    [{ ...box, outlet: m(0.1) }],
    ['type tank.outlet: one of the fields shape, length, width, height [a field "outlet"]'],
  ],
  [
    "no depth",
    tankContents,
    [box, undefined],
    ['missing depth: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "no tank and less than no depth",
    tankContents,
    [{}, m(-1)],
    [
      "missing tank.shape: one of box, upright cylinder, lying cylinder, lying ellipse, cone bottom [undefined]",
      "range depth: zero or more [-1 m]",
    ],
  ],
  [
    "a depth above the tank",
    tankContents,
    [box, m(1.1)],
    ["range depth: 1 m or less, the height inside [1.1 m]"],
  ],
  [
    "no volume",
    tankDepth,
    [box, undefined],
    ['missing volume: a volume, such as quantity(3, "yd3") [undefined]'],
  ],
  [
    "a volume as a number",
    tankDepth,
    [{}, 3],
    [
      "missing tank.shape: one of box, upright cylinder, lying cylinder, lying ellipse, cone bottom [undefined]",
      'type volume: a volume, such as quantity(3, "yd3"): a number has no unit [3]',
    ],
  ],
  ["less than no volume", tankDepth, [box, quantity(-1, "L")], ["range volume: zero or more [-1 L]"]],
  [
    "more than the tank holds",
    tankDepth,
    [box, quantity(3, "m3")],
    ["range volume: 2000 L or less, what the tank holds [3 m3]"],
  ],
  [
    "nothing of a table",
    dipTable,
    [{}],
    [
      "missing tank: a record that names the shape of the tank [undefined]",
      'missing step: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "a step of none, in a unit for a length, such as ft or m",
    dipTable,
    [{ tank: box, step: m(0), unit: "ft" }],
    ["range step: more than zero [0 m]", "unit/mismatch unit: a volume, such as 2 gal or 8 L [1 ft]"],
  ],
  [
    "a unit that is a number",
    dipTable,
    [{ tank: box, step: m(0.1), unit: 7 }],
    ['type unit: a unit for a volume, such as "gal" [7]'],
  ],
  [
    "a step above the tank",
    dipTable,
    [{ tank: box, step: m(1.1) }],
    ["range step: 0.0005 to 1 m, a step that goes 1 to 2000 times into the height [1.1 m]"],
  ],
  [
    "a step like a hair",
    dipTable,
    [{ tank: box, step: m(0.0004) }],
    ["range step: 0.0005 to 1 m, a step that goes 1 to 2000 times into the height [0.0004 m]"],
  ],
  [
    "no table",
    dipTableText,
    [undefined],
    ["missing table: a record with type, version, capacity, rows [undefined]"],
  ],
  [
    "a table of nothing",
    dipTableText,
    [{}],
    [
      'missing table.capacity: a volume, such as quantity(3, "yd3") [undefined]',
      "missing table.rows: a list with at least one row [undefined]",
    ],
  ],
  [
    "rows that are none",
    dipTableText,
    [
      {
        type: "dip-table",
        version: 1,
        capacity: gal(0),
        rows: [7, {}, { depth: m(-1), volume: gal(1) }, { depth: m(1), volume: gal(-1) }],
      },
    ],
    [
      "range table.capacity: more than zero [0 gal]",
      "type table.rows[0]: a record with depth, volume [7]",
      'missing table.rows[1].depth: a length, such as quantity(40, "ft") [undefined]',
      "range table.rows[2].depth: zero or more [-1 m]",
      "range table.rows[3].volume: zero or more [-1 gal]",
    ],
  ],
  [
    "very many rows",
    dipTableText,
    [
      {
        type: "dip-table",
        version: 1,
        capacity: gal(9),
        rows: Array.from({ length: 2003 }, () => ({ depth: m(0), volume: gal(0) })),
      },
    ],
    ["range table.rows: 2000 rows or fewer [a list of 2003]"],
  ],
  [
    "nothing of a containment",
    containment,
    [{}],
    [
      'missing largest: a volume, such as quantity(3, "yd3") [undefined]',
      "missing rule: one of rule (open 125 %, roofed 110 %), margin, and rain [undefined]",
    ],
  ],
  [
    "a tank of none, by another rule",
    containment,
    [{ largest: gal(0), rule: "closed" }],
    ["range largest: more than zero [0 gal]", 'type rule: one of "open 125 %", "roofed 110 %" ["closed"]'],
  ],
  [
    "two rules",
    containment,
    [{ ...tank, margin: quantity(110, "%") }],
    ["conflict rule: one of rule (open 125 %, roofed 110 %), margin, and rain [rule and margin]"],
  ],
  [
    "a margin of 10 %",
    containment,
    [{ largest: gal(1000), margin: quantity(10, "%") }],
    ["range margin: 100 to 1000 % of the largest tank: 110 %, not 10 % [10 %]"],
  ],
  [
    "a margin of ten times and more",
    containment,
    [{ largest: gal(1000), margin: quantity(1001, "%") }],
    ["range margin: 100 to 1000 % of the largest tank: 110 %, not 10 % [1001 %]"],
  ],
  [
    "rain on no floor",
    containment,
    [{ largest: gal(1000), rain: quantity(5, "in") }],
    ["missing floor: the floor area on which the rain falls [undefined]"],
  ],
  [
    "rain of none",
    containment,
    [{ largest: gal(1000), rain: quantity(0, "in"), floor: quantity(0, "ft2") }],
    ["range floor: more than zero [0 ft2]", "range rain: more than zero [0 in]"],
  ],
  [
    "footprints on no floor",
    containment,
    [{ ...tank, footprints: [quantity(9, "ft2")] }],
    ["missing floor: the floor area, of which footprints are a part [undefined]"],
  ],
  [
    "footprints as large as the floor",
    containment,
    [{ ...tank, floor: quantity(9, "ft2"), footprints: [quantity(9, "ft2")] }],
    ["infeasible footprints: footprints of other tanks on a part of the floor [as much as the floor]"],
  ],
  [
    "things that are none",
    containment,
    [{ ...tank, displaced: [gal(0), 7], footprints: 7 }],
    [
      "range displaced[0]: more than zero [0 gal]",
      'type displaced[1]: a volume, such as quantity(3, "yd3"): a number has no unit [7]',
      "type footprints: a list with at least one part [7]",
    ],
  ],
  [
    "very many things",
    containment,
    [{ ...tank, displaced: Array.from({ length: 1001 }, () => gal(1)) }],
    ["range displaced: 1000 parts or fewer [a list of 1001]"],
  ],
];

refusalsOf("what is refused of tanks", rows);
