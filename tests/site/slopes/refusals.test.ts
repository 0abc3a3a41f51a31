import { quantity } from "../../../src/quantity/index.js";
import { groundLength, planArea, planLength, slopeOf, surfaceArea } from "../../../src/site/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const ft = (value: number) => quantity(value, "ft");

const rows: readonly Refusal[] = [
  [
    "no slope",
    slopeOf,
    [undefined],
    [
      'missing slope: an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg" [undefined]',
    ],
  ],
  [
    "a slope as a number",
    slopeOf,
    [12],
    [
      'type slope: an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg": a number has no unit [12]',
    ],
  ],
  [
    "a slope as a list",
    slopeOf,
    [[3, 1]],
    [
      'type slope: an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg" [a list of 2]',
    ],
  ],
  [
    "a share for a slope",
    slopeOf,
    [quantity(12, "%")],
    ['unit/mismatch slope: a grade: write "% grade" for rise over run, or the text "12 %" [12 %]'],
  ],
  [
    "a length for a slope",
    slopeOf,
    [ft(3)],
    ["unit/mismatch slope: a slope, such as 5 % grade or 1 in/ft [3 ft]"],
  ],
  ["a slope below level", slopeOf, [quantity(-1, "deg")], ["range slope: zero or more [-1 deg]"]],
  ["a grade below level", slopeOf, [quantity(-1, "% grade")], ["range slope: zero or more [-1 % grade]"]],
  ["a wall", slopeOf, [quantity(90, "deg")], ["range slope: less than 90 deg [90 deg]"]],
  ["a wall in words", slopeOf, ["90 deg"], ['range slope: less than 90 deg ["90 deg"]']],
  [
    "other words",
    slopeOf,
    ["steep"],
    [
      'text slope: an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg" ["steep"]',
    ],
  ],
  [
    "very many words",
    slopeOf,
    [`12 %${" ".repeat(37)}`],
    [
      'text slope: an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg" ["12 %                                     "]',
    ],
  ],
  [
    "a ratio that is written for both",
    slopeOf,
    ["1:3"],
    ['unit/ambiguous slope: a ratio that says which is the run (H) and which the rise (V) ["1:3"]'],
  ],
  ["a run of none", slopeOf, ["0:1 H:V"], ['range slope: a run of more than zero ["0:1 H:V"]']],
  [
    "a run of none, the rise first",
    slopeOf,
    ["1:0 V:H"],
    ['range slope: a run of more than zero ["1:0 V:H"]'],
  ],
  ["one in none", slopeOf, ["1 in 0"], ['range slope: a run of more than zero ["1 in 0"]']],
  [
    "no length on a slope",
    groundLength,
    [undefined, undefined],
    [
      'missing planLength: a length, such as quantity(40, "ft") [undefined]',
      'missing slope: an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg" [undefined]',
    ],
  ],
  [
    "a length of none on a slope",
    groundLength,
    [ft(0), "level"],
    ["range planLength: more than zero [0 ft]"],
  ],
  [
    "no length of a plan",
    planLength,
    [undefined, "3:1"],
    ['missing length: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "no area of a plan",
    surfaceArea,
    [undefined, undefined],
    [
      "missing planArea: a plan area [undefined]",
      'missing slope: an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg" [undefined]',
    ],
  ],
  [
    "a treated area of a plan",
    surfaceArea,
    [quantity(1, "acre", "treated"), "3:1"],
    ["substance/mismatch planArea: a plan area [1 acre of treated]"],
  ],
  [
    "an area of none of a plan",
    surfaceArea,
    [quantity(0, "acre", "plan"), "3:1"],
    ["range planArea: more than zero [0 acre of plan]"],
  ],
  [
    "no area of the ground",
    planArea,
    [undefined, undefined],
    [
      "missing area: an area along the ground [undefined]",
      'missing slope: an angle, a grade such as quantity(12, "% grade"), or a text such as "3:1", "12 %", "7 deg" [undefined]',
    ],
  ],
  [
    "a plan for the ground",
    planArea,
    [quantity(1, "acre", "plan"), "3:1"],
    ["substance/mismatch area: an area along the ground [1 acre of plan]"],
  ],
];

refusalsOf("what is refused of slopes", rows);
