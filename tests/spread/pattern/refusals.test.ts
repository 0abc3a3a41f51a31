import { quantity } from "../../../src/quantity/index.js";
import {
  effectiveSwath,
  panRow,
  patternBalance,
  spreadPattern,
  swathFromThrow,
  thrownWidth,
} from "../../../src/spread/index.js";
import { type Refusal, refusalsOf } from "../../told.js";
import { ft, row } from "../helpers.js";

const pans = { spacing: ft(1), left: 1 };
const input = { catches: [1, 2, 1], unit: "g", pans };
const at = (...places: readonly number[]) => ({ offsets: places.map(ft) });
const pattern = row([0, 2, 4, 2, 0]);
const off = row([0, 2, 4, 2, 0], 1.5);
const many = Array<number>(100_001).fill(1);

const rows: readonly Refusal[] = [
  [
    "nothing of pans",
    spreadPattern,
    [{}],
    [
      "missing unit: the unit of the catches [undefined]",
      "missing catches: a list of catches [undefined]",
      "missing pans: a record with spacing and left, or with offsets [undefined]",
    ],
  ],
  [
    "catches that are no list",
    spreadPattern,
    [{ ...input, catches: "1 2 1" }],
    ['type catches: a list of catches ["1 2 1"]'],
  ],
  [
    "two pans",
    spreadPattern,
    [{ ...input, catches: [1, 2] }],
    ["missing catches: 3 pans or more: fewer show no pattern [2 catches]"],
  ],
  [
    "catches that are not there",
    spreadPattern,
    [{ ...input, catches: [1, undefined, null, -1, "2"] }],
    [
      "missing catches[1]: a catch; 0 for a pan that stayed empty [undefined]",
      "missing catches[2]: a catch; 0 for a pan that stayed empty [null]",
      "range catches[3]: 0 or more [-1]",
      'not-finite catches[4]: a finite number ["2"]',
    ],
  ],
  [
    "catches of nothing",
    spreadPattern,
    [{ ...input, catches: [0, 0, 0] }],
    ["range catches: catches of 1e-200 to 1e+200 in all [0]"],
  ],
  [
    "catches past all numbers",
    spreadPattern,
    [{ ...input, catches: [1e200, 1, 1] }],
    ["range catches: catches of 1e-200 to 1e+200 in all [1e+200]"],
  ],
  [
    "weighings of other lengths",
    spreadPattern,
    [
      {
        ...input,
        catches: [
          [1, 2, 1],
          [1, 2, 1, 1],
        ],
      },
    ],
    ["conflict catches[1]: 3, as in catches[0] [4 catches]"],
  ],
  [
    "a weighing that is a number",
    spreadPattern,
    [{ ...input, catches: [[1, 2, 1], 7] }],
    ["type catches[1]: a list of catches [7]"],
  ],
  [
    "a weighing of two pans, and one of wrong figures",
    spreadPattern,
    [
      {
        ...input,
        catches: [
          [1, 2],
          [1, -2, 1],
        ],
      },
    ],
    [
      "missing catches[0]: 3 pans or more: fewer show no pattern [2 catches]",
      "range catches[1][1]: 0 or more [-2]",
    ],
  ],
  [
    "very many pans",
    spreadPattern,
    [{ ...input, catches: many }],
    ["range catches: 100000 items or fewer [a list of 100001]"],
  ],
  [
    "a unit that is none",
    spreadPattern,
    [{ ...input, unit: "stone" }],
    ['unit/unknown unit: a unit, such as g ["stone"]'],
  ],
  [
    "a unit for a time, such as min or h",
    spreadPattern,
    [{ ...input, unit: "s" }],
    ['unit/mismatch unit: a unit for a weight, a volume, a volume over an area, or a height in a tube ["s"]'],
  ],
  [
    "a unit that is a number",
    spreadPattern,
    [{ ...input, unit: 7 }],
    ["unit/unknown unit: a unit, such as g [7]"],
  ],
  [
    "what was caught is nothing",
    spreadPattern,
    [{ ...input, of: "x y" }],
    [
      'substance/unknown of: a substance, such as N or product, or other:sand for one of your own (suggestSubstance names the nearest) ["x y"]',
    ],
  ],
  [
    "no passes, no pan",
    spreadPattern,
    [{ ...input, passes: 0, panArea: quantity(0, "ft2") }],
    ["range passes: 1 or more [0]", "range panArea: more than zero [0 ft2]"],
  ],
  [
    "pans nowhere",
    spreadPattern,
    [{ ...input, pans: {} }],
    [
      "missing pans.spacing: a length, such as 10 ft or 3 m [undefined]",
      "missing pans.left: how many pans are left of the line [undefined]",
    ],
  ],
  [
    "pans of no distance",
    spreadPattern,
    [{ ...input, pans: { spacing: ft(0), left: -1 } }],
    ["range pans.spacing: more than zero [0 ft]", "range pans.left: 0 or more [-1]"],
  ],
  [
    "more pans on the left than there are",
    spreadPattern,
    [{ ...input, pans: { spacing: ft(1), left: 2.5 } }],
    ["range pans.left: less than 3, the number of pans [2.5]"],
  ],
  [
    "pans told twice",
    spreadPattern,
    [{ ...input, pans: { ...at(-1, 0, 1), spacing: ft(1) } }],
    ["conflict pans.spacing: offsets or spacing, not both [1 ft]"],
  ],
  [
    "places that are no list",
    spreadPattern,
    [{ ...input, pans: { offsets: ft(1) } }],
    ["type pans.offsets: a list of lengths [1 ft]"],
  ],
  [
    "fewer places than catches",
    spreadPattern,
    [{ ...input, pans: at(-1, 1) }],
    ["conflict pans.offsets: 3, one for each catch [2 offsets]"],
  ],
  [
    "places from right to left",
    spreadPattern,
    [{ ...input, pans: at(1, 0, -1) }],
    ["conflict pans.offsets[1]: more than 1: from left to right [0]"],
  ],
  [
    "places on one side",
    spreadPattern,
    [{ ...input, pans: at(1, 2, 3) }],
    ["conflict pans.offsets: pans on both sides of the line of travel, which is at 0 [a list of 3]"],
  ],
  [
    "places on the other side",
    spreadPattern,
    [{ ...input, pans: at(-3, -2, -1) }],
    ["conflict pans.offsets: pans on both sides of the line of travel, which is at 0 [a list of 3]"],
  ],
  [
    "places that are none",
    spreadPattern,
    [{ ...input, pans: { offsets: [undefined, null, quantity(1, "lb")] } }],
    [
      "missing pans.offsets[0]: a length [undefined]",
      "missing pans.offsets[1]: a length [null]",
      "unit/mismatch pans.offsets[2]: a length [1 lb]",
    ],
  ],
  [
    "places as numbers",
    spreadPattern,
    [{ ...input, pans: { offsets: [-1, 0, 1] } }],
    [
      "type pans.offsets[0]: a length [-1]",
      "type pans.offsets[1]: a length [0]",
      "type pans.offsets[2]: a length [1]",
    ],
  ],
  [
    "no pattern",
    patternBalance,
    [undefined],
    ["missing pattern: a pattern, as spreadPattern makes it [undefined]"],
  ],
  [
    "another record for a pattern",
    patternBalance,
    [{ type: "pan-row" }],
    ["type pattern: a pattern, as spreadPattern makes it [a record]"],
  ],
  [
    "a pattern of nothing",
    patternBalance,
    [{ type: "spread-pattern" }],
    [
      "missing pattern.offsets: a list [undefined]",
      "missing pattern.catches: a list [undefined]",
      "missing pattern.runs: a list [undefined]",
      "missing pattern.offsetUnit: a unit for a length [undefined]",
      "missing pattern.unit: a unit [undefined]",
      "missing pattern.of: a substance [undefined]",
    ],
  ],
  [
    "a pattern in units that are none",
    patternBalance,
    [{ ...pattern, offsetUnit: "lb", unit: "stone", of: "x y" }],
    [
      'unit/mismatch pattern.offsetUnit: a unit for a length ["lb"]',
      'unit/unknown pattern.unit: a unit ["stone"]',
      'substance/unknown pattern.of: a substance ["x y"]',
    ],
  ],
  [
    "a pattern in units that are no words",
    patternBalance,
    [{ ...pattern, offsetUnit: 1, unit: 2, of: 3 }],
    [
      "unit/mismatch pattern.offsetUnit: a unit for a length [1]",
      "unit/unknown pattern.unit: a unit [2]",
      "substance/unknown pattern.of: a substance [3]",
    ],
  ],
  [
    "a pattern with figures that are none",
    patternBalance,
    [
      {
        ...pattern,
        catches: [0, -2, "4", 2, 0],
        offsets: [-2, -3, 0, 1, 2],
        spacing: 0,
        panArea: quantity(0, "m2"),
      },
    ],
    [
      "range pattern.catches[1]: 0 or more [-2]",
      'not-finite pattern.catches[2]: a finite number ["4"]',
      "range pattern.offsets[1]: more than -2 [-3]",
      "range pattern.spacing: more than 0 [0]",
      "range pattern.panArea: more than zero [0 m2]",
    ],
  ],
  [
    "a pattern with other lengths",
    patternBalance,
    [{ ...pattern, catches: [1, 2, 3] }],
    [
      "conflict pattern.offsets: 3, one for each catch [a list of 5]",
      "conflict pattern.runs[0]: a list of 3 numbers of 0 or more, as the catches [a list of 5]",
    ],
  ],
  [
    "a pattern of one pan",
    patternBalance,
    [{ ...pattern, catches: [1], offsets: [0], runs: [] }],
    ["conflict pattern.offsets: 1, one for each catch [a list of 1]"],
  ],
  [
    "a pattern with another spacing",
    patternBalance,
    [{ ...pattern, spacing: 2 }],
    ["conflict pattern.spacing: the distance of the offsets [2]"],
  ],
  [
    "a pattern with runs of other lengths",
    patternBalance,
    [{ ...pattern, runs: [[1, 2], 7, [0, 2, -4, 2, 0]] }],
    [
      "conflict pattern.runs[0]: a list of 5 numbers of 0 or more, as the catches [a list of 2]",
      "conflict pattern.runs[1]: a list of 5 numbers of 0 or more, as the catches [7]",
      "range pattern.runs[2][2]: 0 or more [-4]",
    ],
  ],
  [
    "a pattern that is bare",
    patternBalance,
    [{ ...pattern, catches: [0, 0, 0, 0, 0] }],
    ["range pattern.catches: catches of 1e-200 to 1e+200 in all [0]"],
  ],
  [
    "a pattern with very many pans",
    patternBalance,
    [{ ...pattern, catches: many }],
    ["range pattern.catches: 100000 items or fewer [a list of 100001]"],
  ],
  [
    "nothing thrown wider than the row",
    thrownWidth,
    [row([1, 2, 4, 2, 0])],
    ["infeasible pattern.catches[0]: an empty pan at the end of the row [1]"],
  ],
  [
    "nothing thrown wider than the row on the right",
    thrownWidth,
    [row([0, 2, 4, 2, 1])],
    ["infeasible pattern.catches[4]: an empty pan at the end of the row [1]"],
  ],
  [
    "nothing of a throw",
    swathFromThrow,
    [{}],
    [
      "missing thrown: a length, such as 10 ft or 3 m [undefined]",
      "missing rule: one of half, shared strips, manure, slides [undefined]",
    ],
  ],
  [
    "a throw of none by another rule",
    swathFromThrow,
    [{ thrown: ft(0), rule: "third" }],
    [
      "range thrown: more than zero [0 ft]",
      'type rule: one of half, shared strips, manure, slides ["third"]',
    ],
  ],
  ["nothing of a row", panRow, [{}], ["missing swath: a length, such as 10 ft or 3 m [undefined]"]],
  [
    "a row of none",
    panRow,
    [{ swath: ft(0), spacing: ft(0) }],
    ["range swath: more than zero [0 ft]", "range spacing: more than zero [0 ft]"],
  ],
  [
    "no rule",
    effectiveSwath,
    [pattern, {}],
    ["missing rule: half of peak, half of center mean, half of center pan [undefined]"],
  ],
  [
    "another rule",
    effectiveSwath,
    [pattern, { rule: "third of peak" }],
    ['type rule: half of peak, half of center mean, half of center pan ["third of peak"]'],
  ],
  [
    "center pans of another rule",
    effectiveSwath,
    [pattern, { rule: "half of peak", centerPans: 3 }],
    ["conflict centerPans: the rule half of center mean [3]"],
  ],
  [
    "no center pans",
    effectiveSwath,
    [pattern, { rule: "half of center mean", centerPans: 0 }],
    ["range centerPans: 1 or more [0]"],
  ],
  [
    "part of a center pan",
    effectiveSwath,
    [pattern, { rule: "half of center mean", centerPans: 1.5 }],
    ["range centerPans: a whole number [1.5]"],
  ],
  [
    "more center pans than pans",
    effectiveSwath,
    [pattern, { rule: "half of center mean", centerPans: 6 }],
    ["range centerPans: 5 or less [6]"],
  ],
  [
    "one of two center pans that are equally near",
    effectiveSwath,
    [pattern, { rule: "half of center mean", centerPans: 2 }],
    ["conflict centerPans: a number that takes both of two pans that are equally near [2]"],
  ],
  [
    "no pan at the center",
    effectiveSwath,
    [off, { rule: "half of center pan" }],
    ['infeasible rule: a pan on the line of travel, or the rule half of center mean ["half of center pan"]'],
  ],
  [
    "an empty center",
    effectiveSwath,
    [row([0, 3, 0, 3, 0]), { rule: "half of center pan" }],
    ["infeasible pattern: a center that caught something [0]"],
  ],
  [
    "a row that ends too soon on the left",
    effectiveSwath,
    [row([4, 5, 5, 2, 0]), { rule: "half of peak" }],
    ["infeasible pattern.catches[0]: a row long enough for the pattern to come down to 2.5 on the left [4]"],
  ],
  [
    "a row that ends too soon on the right",
    effectiveSwath,
    [row([0, 2, 5, 5, 4]), { rule: "half of peak" }],
    ["infeasible pattern.catches[4]: a row long enough for the pattern to come down to 2.5 on the right [4]"],
  ],
];

refusalsOf("what is refused of patterns", rows);
