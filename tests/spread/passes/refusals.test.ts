import { quantity } from "../../../src/quantity/index.js";
import {
  effectiveFieldCapacity,
  headerStrips,
  passesFor,
  passRates,
  spreadWidth,
} from "../../../src/spread/index.js";
import { type Refusal, refusalsOf } from "../../told.js";
import { ft, percent, perThousand } from "../helpers.js";

const field = { length: ft(300), width: ft(150), swath: ft(10), strips: 1, along: "perimeter" };
const mph = (value: number) => quantity(value, "mi/h");

const rows: readonly Refusal[] = [
  [
    "nothing of passes",
    passRates,
    [{}],
    ["missing rate: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [undefined]"],
  ],
  [
    "no rate, no passes, no ground, no limit",
    passRates,
    [{ rate: perThousand(0), passes: 0, area: quantity(0, "ft2"), limit: perThousand(0) }],
    [
      "range rate: more than zero [0 lb/1000 ft2 of product]",
      "range area: more than zero [0 ft2]",
      "range limit: more than zero [0 lb/1000 ft2 of product]",
      "range passes: 1 or more [0]",
    ],
  ],
  [
    "part of a pass",
    passRates,
    [{ rate: perThousand(4), passes: 1.5 }],
    ["range passes: a whole number [1.5]"],
  ],
  [
    "a limit on nitrogen",
    passRates,
    [{ rate: perThousand(4), limit: quantity(1, "lb/1000 ft2", "N") }],
    ["substance/mismatch limit: a limit on product, as the rate [1 lb/1000 ft2 of N]"],
  ],
  [
    "nothing of a side",
    passesFor,
    [{}],
    [
      "missing side: a length, such as 10 ft or 3 m [undefined]",
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a side of none",
    passesFor,
    [{ side: ft(0), swath: ft(0) }],
    ["range side: more than zero [0 ft]", "range swath: more than zero [0 ft]"],
  ],
  [
    "a swath like a hair",
    passesFor,
    [{ side: ft(1e6), swath: ft(0.5) }],
    ["range swath: 1 ft or more, a swath of which 1000000 passes cover the side [0.5 ft]"],
  ],
  ["nothing of a width", spreadWidth, [{}], ["missing kind: drop, rotary or outlets [undefined]"]],
  ["another kind", spreadWidth, [{ kind: "belt" }], ['type kind: drop, rotary or outlets ["belt"]']],
  [
    "a drop spreader without an opening",
    spreadWidth,
    [{ kind: "drop" }],
    ["missing opening: a length, such as 10 ft or 3 m [undefined]"],
  ],
  [
    "a drop spreader with outlets",
    spreadWidth,
    [{ kind: "drop", opening: ft(3), outlets: 5 }],
    ["conflict outlets: opening for the kind drop [5]"],
  ],
  [
    "a rotary spreader with an opening",
    spreadWidth,
    [{ kind: "rotary", opening: ft(3) }],
    ["conflict opening: effectiveSwath for the kind rotary [3 ft]"],
  ],
  [
    "a rotary spreader of no swath",
    spreadWidth,
    [{ kind: "rotary", effectiveSwath: ft(0) }],
    ["range effectiveSwath: more than zero [0 ft]"],
  ],
  [
    "outlets with a swath",
    spreadWidth,
    [{ kind: "outlets", outlets: 5, spacing: ft(1), effectiveSwath: ft(3) }],
    ["conflict effectiveSwath: outlets and spacing for the kind outlets [3 ft]"],
  ],
  [
    "outlets without their number",
    spreadWidth,
    [{ kind: "outlets" }],
    [
      "missing outlets: a whole number, 1 or more [undefined]",
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "outlets of null",
    spreadWidth,
    [{ kind: "outlets", outlets: null, spacing: ft(0) }],
    ["missing outlets: a whole number, 1 or more [null]", "range spacing: more than zero [0 ft]"],
  ],
  [
    "part of an outlet",
    spreadWidth,
    [{ kind: "outlets", outlets: 1.5, spacing: ft(1) }],
    ["range outlets: a whole number [1.5]"],
  ],
  [
    "no outlet",
    spreadWidth,
    [{ kind: "outlets", outlets: 0, spacing: ft(1) }],
    ["range outlets: 1 or more [0]"],
  ],
  [
    "nothing of strips",
    headerStrips,
    [{}],
    [
      "missing length: a length, such as 10 ft or 3 m [undefined]",
      "missing width: a length, such as 10 ft or 3 m [undefined]",
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
      "missing strips: a whole number, 0 or more [undefined]",
      "missing along: perimeter or ends [undefined]",
    ],
  ],
  [
    "a field of none",
    headerStrips,
    [{ ...field, length: ft(0), width: ft(0), swath: ft(0), strips: -1, along: "sides" }],
    [
      "range length: more than zero [0 ft]",
      "range width: more than zero [0 ft]",
      "range swath: more than zero [0 ft]",
      "range strips: 0 or more [-1]",
      'type along: perimeter or ends ["sides"]',
    ],
  ],
  ["part of a strip", headerStrips, [{ ...field, strips: 1.5 }], ["range strips: a whole number [1.5]"]],
  [
    "strips that are null",
    headerStrips,
    [{ ...field, strips: null }],
    ["missing strips: a whole number, 0 or more [null]"],
  ],
  [
    "strips wider than the length",
    headerStrips,
    [{ ...field, strips: 16, along: "ends" }],
    ["infeasible strips: fewer strips: they are wider than the length [16]"],
  ],
  [
    "strips wider than the width",
    headerStrips,
    [{ ...field, strips: 8 }],
    ["infeasible strips: fewer strips: they are wider than the width [8]"],
  ],
  [
    "nothing of a capacity",
    effectiveFieldCapacity,
    [{}],
    [
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing efficiency: a share, 100 % for the theory [undefined]",
    ],
  ],
  [
    "a capacity of none",
    effectiveFieldCapacity,
    [{ swath: ft(0), speed: mph(0), efficiency: percent(0) }],
    [
      "range swath: more than zero [0 ft]",
      "range speed: more than zero [0 mi/h]",
      "range efficiency: more than zero [0 %]",
    ],
  ],
  [
    "more than all of the time",
    effectiveFieldCapacity,
    [{ swath: ft(9), speed: mph(3), efficiency: percent(101) }],
    ["range efficiency: 100 % or less [101 %]"],
  ],
  [
    "an efficiency of null",
    effectiveFieldCapacity,
    [{ swath: ft(9), speed: mph(3), efficiency: null }],
    ["missing efficiency: a share, 100 % for the theory [null]"],
  ],
];

refusalsOf("what is refused of passes", rows);
