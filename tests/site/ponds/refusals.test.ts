import { quantity } from "../../../src/quantity/index.js";
import {
  contourVolume,
  copperSulfateConcentration,
  meanDepth,
  pondVolume,
  waterDose,
} from "../../../src/site/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const ft = (value: number) => quantity(value, "ft");
const acre = (value: number) => quantity(value, "acre");
const lime = (value: number) => quantity(value, "mg/L", "CaCO3 equivalent");
const pond = { areas: [acre(4), acre(2), acre(1)], interval: ft(2), rule: "prismoidal" };
const dose = { volume: quantity(1000, "m3"), concentration: quantity(1, "mg/L", "ai") };

const rows: readonly Refusal[] = [
  [
    "nothing of soundings",
    meanDepth,
    [{}],
    ["missing rows: a list with at least one row of soundings [undefined]"],
  ],
  ["no rows", meanDepth, [{ rows: [] }], ["missing rows: at least one row of soundings [an empty list]"]],
  [
    "rows that are none",
    meanDepth,
    [{ rows: [7, [ft(0)], [ft(0), ft(-1), 3]] }],
    [
      "type rows[0]: a list with at least one length [7]",
      "range rows[1]: a list of 2 to 10000 lengths [a list of 1]",
      "range rows[2][1]: zero or more [-1 ft]",
      'type rows[2][2]: a length, such as quantity(40, "ft"): a number has no unit [3]',
    ],
  ],
  [
    "soundings that are all zero",
    meanDepth,
    [{ rows: [[ft(0), ft(0)]] }],
    ["range rows: a depth of more than zero [soundings that are all zero]"],
  ],
  [
    "very many rows",
    meanDepth,
    [{ rows: Array.from({ length: 501 }, () => [ft(0), ft(3)]) }],
    ["range rows: 500 rows or fewer [a list of 501]"],
  ],
  [
    "nothing of a pond",
    pondVolume,
    [{}],
    [
      'missing area: an area, such as quantity(12400, "ft2") [undefined]',
      'missing meanDepth: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "a pond of none",
    pondVolume,
    [{ area: acre(0), meanDepth: ft(0) }],
    ["range area: more than zero [0 acre]", "range meanDepth: more than zero [0 ft]"],
  ],
  [
    "nothing of contours",
    contourVolume,
    [{}],
    [
      'missing rule: one of "average end area", "prismoidal", "cone frustum" [undefined]',
      "missing areas: a list of areas, the surface first [undefined]",
      'missing interval: a length, such as quantity(40, "ft") [undefined]',
    ],
  ],
  [
    "contours that are no list",
    contourVolume,
    [{ ...pond, areas: acre(1) }],
    ["type areas: a list of areas, the surface first [1 acre]"],
  ],
  [
    "one contour",
    contourVolume,
    [{ ...pond, areas: [acre(1)] }],
    ["range areas: 2 to 1000 areas: the surface and a contour below it [a list of 1]"],
  ],
  [
    "very many contours",
    contourVolume,
    [{ ...pond, areas: Array.from({ length: 1001 }, () => acre(1)) }],
    ["range areas: 2 to 1000 areas: the surface and a contour below it [a list of 1001]"],
  ],
  [
    "contours of none by another rule",
    contourVolume,
    [{ areas: [acre(0), 7, acre(1)], interval: ft(0), rule: "simpson" }],
    [
      'type rule: one of "average end area", "prismoidal", "cone frustum" ["simpson"]',
      "range areas[0]: more than zero [0 acre]",
      'type areas[1]: an area, such as quantity(12400, "ft2"): a number has no unit [7]',
      "range interval: more than zero [0 ft]",
    ],
  ],
  [
    "contours that widen",
    contourVolume,
    [{ ...pond, areas: [acre(1), acre(2), acre(1)] }],
    ["conflict areas[1]: no more than the contour above: the surface first [2 acre]"],
  ],
  [
    "an odd number of layers",
    contourVolume,
    [{ ...pond, areas: [acre(2), acre(1)] }],
    ["conflict areas: an even number of layers; or another rule: average end area, cone frustum [1 layer]"],
  ],
  [
    "unequal layers",
    contourVolume,
    [{ ...pond, interval: [ft(2), ft(3)] }],
    ["conflict interval: equal intervals for the prismoidal rule [unequal intervals]"],
  ],
  [
    "fewer intervals than layers",
    contourVolume,
    [{ ...pond, interval: [ft(2)] }],
    ["conflict interval: one for each layer [1 for 2 layers]"],
  ],
  [
    "no intervals in the list",
    contourVolume,
    [{ ...pond, interval: [] }],
    ["range interval: a list of 1 to 10000 lengths [a list of 0]"],
  ],
  [
    "nothing of a dose",
    waterDose,
    [{}],
    [
      "missing volume: a volume, as pondVolume gives, or surface and depth [undefined]",
      'missing concentration: a concentration, such as quantity(1, "mg/L", "ai") [undefined]',
    ],
  ],
  [
    "a volume and a surface",
    waterDose,
    [{ ...dose, surface: acre(1) }],
    ["conflict volume: a volume, or surface and depth, not both [1000 m3]"],
  ],
  [
    "a surface without a depth",
    waterDose,
    [{ ...dose, volume: undefined, surface: acre(1) }],
    ['missing depth: a length, such as quantity(40, "ft") [undefined]'],
  ],
  [
    "a depth without a surface",
    waterDose,
    [{ ...dose, volume: undefined, depth: ft(0) }],
    [
      'missing surface: an area, such as quantity(12400, "ft2") [undefined]',
      "range depth: more than zero [0 ft]",
    ],
  ],
  [
    "parts in a million of what",
    waterDose,
    [{ ...dose, concentration: { value: 1, unit: "ppm", of: "ai" } }],
    ['unit/ambiguous concentration: a concentration, such as quantity(1, "mg/L", "ai") [1 ppm of ai]'],
  ],
  [
    "a concentration of none",
    waterDose,
    [{ ...dose, concentration: quantity(0, "mg/L", "ai") }],
    ["range concentration: more than zero [0 mg/L of ai]"],
  ],
  [
    "a concentration of none by weight",
    waterDose,
    [{ ...dose, concentration: quantity(0, "ppm w/w", "ai/water") }],
    ["range concentration: more than zero [0 ppm w/w of ai/water]"],
  ],
  [
    "a concentration that is a number",
    waterDose,
    [{ ...dose, concentration: 1 }],
    ["type concentration: a weight per volume, such as 10 lb/gal or 1.2 kg/L, made by quantity(1, unit) [1]"],
  ],
  [
    "a strength of none",
    waterDose,
    [{ ...dose, strength: quantity(0, "lb/gal", "ai/product") }],
    ["range strength: more than zero [0 lb/gal of ai/product]"],
  ],
  [
    "a strength of none by weight",
    waterDose,
    [{ ...dose, strength: quantity(0, "% w/w", "ai/product") }],
    ["range strength: more than zero [0 % w/w of ai/product]"],
  ],
  [
    "a strength of another substance",
    waterDose,
    [{ ...dose, strength: quantity(1, "lb/gal", "Cu/product") }],
    [
      'substance/mismatch strength: a strength of ai, as the concentration is, such as quantity(25, "% w/w", "ai/product") [1 lb/gal of Cu/product]',
    ],
  ],
  [
    "a strength beside a concentration of the product",
    waterDose,
    [
      {
        ...dose,
        concentration: quantity(1, "mg/L", "product"),
        strength: quantity(25, "% w/w", "Cu/product"),
      },
    ],
    [
      "substance/mismatch strength: no strength: the concentration is of the product itself, and so is its weight in active [25 % w/w of Cu/product]",
    ],
  ],
  [
    "a volume of none",
    waterDose,
    [{ ...dose, volume: quantity(0, "m3") }],
    ["range volume: more than zero [0 m3]"],
  ],
  [
    "nothing of an alkalinity",
    copperSulfateConcentration,
    [{}],
    [
      'missing alkalinity: the total alkalinity, such as quantity(120, "mg/L", "CaCO3 equivalent") [undefined]',
    ],
  ],
  [
    "an alkalinity of nothing",
    copperSulfateConcentration,
    [{ alkalinity: quantity(100, "mg/L") }],
    [
      'substance/mismatch alkalinity: a quantity of CaCO3 equivalent, such as quantity(100, "mg/L", "CaCO3 equivalent") [100 mg/L]',
    ],
  ],
  [
    "soft water",
    copperSulfateConcentration,
    [{ alkalinity: lime(49) }],
    [
      "range alkalinity: 50 mg/L or more: the rule has no concentration for softer water, in which copper kills fish. Ask for another treatment [49 mg/L of CaCO3 equivalent]",
    ],
  ],
  [
    "an alkalinity of none",
    copperSulfateConcentration,
    [{ alkalinity: lime(0) }],
    ["range alkalinity: more than zero [0 mg/L of CaCO3 equivalent]"],
  ],
  [
    "an alkalinity of no pond",
    copperSulfateConcentration,
    [{ alkalinity: lime(2001) }],
    ["range alkalinity: 2000 mg/L or less [2001 mg/L of CaCO3 equivalent]"],
  ],
];

refusalsOf("what is refused of ponds", rows);
