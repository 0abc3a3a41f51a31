import { quantity } from "../../../src/quantity/index.js";
import {
  coverArea,
  coverDepth,
  coverVolume,
  dryBulkDensity,
  layerMaterial,
  mixWeights,
  moistBulkDensity,
} from "../../../src/site/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const percent = (value: number) => quantity(value, "%");
const bulkDensity = quantity(2700, "lb/yd3");
const area = quantity(1000, "ft2");
const depth = quantity(1, "in");
const volume = quantity(10, "yd3");
const part = (name: string, share: number) => ({ name, share: percent(share), bulkDensity });
const mix = { volume, parts: [part("sand", 80), part("peat", 20)] };

const rows: readonly Refusal[] = [
  [
    "nothing of a cover",
    coverVolume,
    [{}],
    [
      'missing area: an area, such as quantity(12400, "ft2") [undefined]',
      'missing depth: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "a cover of none",
    coverVolume,
    [{ area: quantity(0, "ft2"), depth: quantity(0, "in") }],
    ["range area: more than zero [0 ft2]", "range depth: more than zero [0 in]"],
  ],
  [
    "a cover of a plan",
    coverVolume,
    [{ area: quantity(9, "ft2", "plan"), depth }],
    [
      "substance/mismatch area: an area along the ground: surfaceArea(plan, slope) gives it, of 0 % grade where the ground is level [9 ft2 of plan]",
    ],
  ],
  [
    "nothing of a depth",
    coverDepth,
    [{}],
    [
      'missing volume: a volume, such as quantity(3, "yd3") [undefined]',
      'missing area: an area, such as quantity(12400, "ft2") [undefined]',
    ],
  ],
  [
    "no volume on no area",
    coverDepth,
    [{ volume: quantity(0, "yd3"), area: quantity(0, "ft2") }],
    ["range volume: more than zero [0 yd3]", "range area: more than zero [0 ft2]"],
  ],
  [
    "nothing of an area",
    coverArea,
    [{}],
    [
      'missing volume: a volume, such as quantity(3, "yd3") [undefined]',
      'missing depth: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "no volume of no depth",
    coverArea,
    [{ volume: quantity(0, "yd3"), depth: quantity(0, "in") }],
    ["range volume: more than zero [0 yd3]", "range depth: more than zero [0 in]"],
  ],
  [
    "nothing of a layer",
    layerMaterial,
    [{}],
    [
      'missing area: an area, such as quantity(12400, "ft2") [undefined]',
      'missing depth: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "a layer of none",
    layerMaterial,
    [
      {
        area: quantity(0, "ft2"),
        depth: quantity(0, "in"),
        bulkDensity: 7,
        extra: percent(101),
        bag: quantity(0, "ft3"),
      },
    ],
    [
      "range area: more than zero [0 ft2]",
      "range depth: more than zero [0 in]",
      'type bulkDensity: a weight per volume, such as quantity(2700, "lb/yd3"): a number has no unit [7]',
      "range extra: 100 % or less of the layer [101 %]",
      "range bag: more than zero [0 ft3]",
    ],
  ],
  [
    "less than no extra",
    layerMaterial,
    [{ area, depth, bulkDensity: quantity(0, "lb/yd3"), extra: percent(-1) }],
    ["range bulkDensity: more than zero [0 lb/yd3]", "range extra: zero or more [-1 %]"],
  ],
  [
    "nothing of moisture",
    moistBulkDensity,
    [{}],
    [
      'missing bulkDensity: a weight per volume, such as quantity(2700, "lb/yd3") [undefined]',
      'missing moisture: a share, such as quantity(8, "%") [undefined]',
    ],
  ],
  [
    "nothing of dry material",
    dryBulkDensity,
    [{}],
    [
      'missing bulkDensity: a weight per volume, such as quantity(2700, "lb/yd3") [undefined]',
      'missing moisture: a share, such as quantity(8, "%") [undefined]',
    ],
  ],
  [
    "moisture of another basis",
    moistBulkDensity,
    [{ bulkDensity, moisture: percent(-1), basis: "volume" }],
    ['type basis: one of "dry weight", "wet weight" ["volume"]', "range moisture: zero or more [-1 %]"],
  ],
  [
    "moisture without a basis",
    dryBulkDensity,
    [{ bulkDensity, moisture: percent(8) }],
    ['missing basis: one of "dry weight", "wet weight" [undefined]'],
  ],
  [
    "nothing but water",
    dryBulkDensity,
    [{ bulkDensity, moisture: percent(100), basis: "wet weight" }],
    ["range moisture: less than 100 % of the wet weight [100 %]"],
  ],
  [
    "more water than any peat holds",
    dryBulkDensity,
    [{ bulkDensity, moisture: percent(2001), basis: "dry weight" }],
    ["range moisture: 2000 % or less of the dry weight [2001 %]"],
  ],
  [
    "nothing of a mix",
    mixWeights,
    [{}],
    [
      'missing volume: a volume, such as quantity(3, "yd3") [undefined]',
      "missing parts: a list with at least one part [undefined]",
    ],
  ],
  [
    "a mix of none",
    mixWeights,
    [{ volume: quantity(0, "yd3"), parts: [], shrinkage: percent(91) }],
    [
      "range volume: more than zero [0 yd3]",
      "missing parts: at least one part [an empty list]",
      "range shrinkage: 0 to 90 % [91 %]",
    ],
  ],
  [
    "shrinkage below nothing",
    mixWeights,
    [{ ...mix, shrinkage: percent(-1) }],
    ["range shrinkage: 0 to 90 % [-1 %]"],
  ],
  [
    "shrinkage as a number",
    mixWeights,
    [{ ...mix, shrinkage: 0.1 }],
    ['type shrinkage: a share, such as quantity(80, "%") [0.1]'],
  ],
  [
    "parts that are none",
    mixWeights,
    [
      {
        ...mix,
        parts: [
          7,
          {},
          { ...part(" ", 0), bulkDensity: quantity(0, "lb/yd3") },
          { ...part("sand", 101), basis: "wet weight" },
        ],
      },
    ],
    [
      "type parts[0]: a record with name, share, bulkDensity, moisture, basis [7]",
      "missing parts[1].name: the name of the part [undefined]",
      'missing parts[1].share: a share by volume, such as quantity(80, "%") [undefined]',
      'missing parts[1].bulkDensity: a weight per volume, such as quantity(2700, "lb/yd3") [undefined]',
      'missing parts[2].name: the name of the part [" "]',
      "range parts[2].share: more than 0 % and at most 100 % [0 %]",
      "range parts[2].bulkDensity: more than zero [0 lb/yd3]",
      "range parts[3].share: more than 0 % and at most 100 % [101 %]",
      'missing parts[3].moisture: a share, such as quantity(8, "%") [undefined]',
    ],
  ],
  [
    "a part twice",
    mixWeights,
    [{ ...mix, parts: [part("sand", 50), part("sand", 50)] }],
    ['duplicate parts[1].name: a name that parts[0] does not have ["sand"]'],
  ],
  [
    "a part with moisture of no basis",
    mixWeights,
    [{ ...mix, parts: [{ ...part("sand", 100), moisture: percent(8) }] }],
    ['missing parts[0].basis: one of "dry weight", "wet weight" [undefined]'],
  ],
  [
    "shares that are no whole",
    mixWeights,
    [{ ...mix, parts: [part("sand", 80), part("peat", 19.8)] }],
    ["conflict parts: shares that make 100 % [shares of 99.8 % together]"],
  ],
  [
    "very many parts",
    mixWeights,
    [{ ...mix, parts: Array.from({ length: 51 }, (_, i) => part(`${i}`, 1)) }],
    ["range parts: 50 parts or fewer [a list of 51]"],
  ],
];

refusalsOf("what is refused of materials", rows);
