import {
  frequencyOfClip,
  growthBetweenMowings,
  leafRemoved,
  mowAtHeight,
  mowingInterval,
  mowingSpeedFor,
  reelSpeedFor,
  shootGrowth,
} from "../../stand/index.js";

import { type FormulaSpec, formula } from "../entry/formula.js";
import {
  canadianCloserLook,
  cornellOneThird,
  cornellOneThirdAtSecond,
  iowaOftenShould,
} from "../works/stand-works.js";

const cut = ["in", "mm"] as const;
const share = ["%", "%"] as const;
const pure = ["1", "1"] as const;
const count = ["count", "count"] as const;
const daily = ["in/d", "mm/d"] as const;
const h = ["cut", "h", "height of cut", "none", cut, [0.5, 4]] as const;
const thirdTrap = "Letting the grass grow a third above the cut: that takes a quarter, not a third.";

export const leafRemovedFormula: FormulaSpec = formula({
  id: "leaf-removed",
  name: "leafRemoved",
  title: "Share of the leaf that a mowing takes",
  inputs: [
    ["standing", "H", "height of the grass", "none", cut, [2.2, 6]],
    ["cut", "h", "height of cut", "none", cut, [0.5, 2]],
  ],
  output: ["s", "share removed", "none", share, pure],
  equation: "s = (H - h) / H",
  run: leafRemoved,
  traps: ["Dividing by the height of cut: the share is of the standing leaf."],
  basis: "definition",
  sources: [cornellOneThird],
});

export const mowAtHeightFormula: FormulaSpec = formula({
  id: "mow-at-height",
  name: "mowAtHeight",
  title: "Height at which to mow by the one-third rule",
  inputs: [h],
  output: ["H", "height of the grass", "none", cut],
  equation: "H = h / (1 - 1 / 3)",
  run: mowAtHeight,
  traps: [thirdTrap],
  basis: "published",
  sources: [iowaOftenShould, cornellOneThird],
});

export const growthBetweenMowingsFormula: FormulaSpec = formula({
  id: "growth-between-mowings",
  name: "growthBetweenMowings",
  title: "Growth that the one-third rule leaves between two mowings",
  inputs: [h],
  output: ["G", "growth", "none", cut],
  equation: "G = h * (1 / 3) / (1 - 1 / 3)",
  run: growthBetweenMowings,
  traps: [thirdTrap],
  basis: "published",
  sources: [cornellOneThirdAtSecond],
});

/** Mowing and clippings. */
export const mowing: readonly FormulaSpec[] = [
  leafRemovedFormula,
  mowAtHeightFormula,
  growthBetweenMowingsFormula,
  formula({
    id: "shoot-growth",
    name: "shootGrowth",
    title: "Growth of the grass in a day",
    inputs: [
      ["cut", "h", "height after the mowing", "none", cut, [0.5, 2]],
      ["standing", "H", "height later", "none", cut, [2.2, 4]],
      ["time", "t", "time between", "none", ["d", "d"], [2, 10]],
    ],
    output: ["r", "growth", "none", daily],
    equation: "r = (H - h) / t",
    run: shootGrowth,
    traps: ["Dividing the whole height by the days."],
    basis: "definition",
    sources: [],
  }),
  formula({
    id: "mowing-interval",
    name: "mowingInterval",
    title: "Longest time between two mowings by the one-third rule",
    inputs: [
      h,
      ["growth", "r", "growth at its best", "none", daily, [0.05, 0.5]],
      ["potential", "g", "growth potential", "none", share, [20, 100], pure],
    ],
    output: ["d", "interval", "none", ["d", "d"]],
    equation: "d = h * (1 / 3) / (1 - 1 / 3) / (r * g)",
    run: mowingInterval,
    traps: ["Mowing by the calendar: in cool weather it grows less."],
    basis: "published",
    sources: [cornellOneThirdAtSecond],
  }),
  formula({
    id: "frequency-of-clip",
    name: "frequencyOfClip",
    title: "Frequency of clip of a reel",
    inputs: [
      ["speed", "v", "speed", "none", ["mi/h", "km/h"], [2, 5], ["in/min", "mm/min"]],
      ["blades", "b", "blades of the reel", "none", count, [5, 14]],
      ["reelSpeed", "n", "turns of the reel", "none", ["1/min", "1/min"], [800, 2500]],
    ],
    output: ["c", "clip", "none", cut],
    equation: "c = v / (b * n)",
    run: ({ blades, ...rest }) => frequencyOfClip({ ...rest, blades: Math.round(blades.in("count")) }),
    traps: ["Leaving out the blades: each blade cuts once in a turn."],
    basis: "definition",
    sources: [canadianCloserLook],
  }),
  formula({
    id: "mowing-speed",
    name: "mowingSpeedFor",
    title: "Mowing speed for a clip",
    inputs: [
      ["reelSpeed", "n", "turns of the reel", "none", ["1/min", "1/min"], [800, 2500]],
      ["blades", "b", "blades of the reel", "none", count, [5, 14]],
      ["clip", "c", "clip", "none", cut, [0.1, 0.6]],
    ],
    output: ["v", "speed", "none", ["mi/h", "km/h"], ["in/min", "mm/min"]],
    equation: "v = b * n * c",
    run: ({ blades, ...rest }) => mowingSpeedFor({ ...rest, blades: Math.round(blades.in("count")) }),
    traps: ["Driving faster to finish: the clip gets longer and the turf shows ribs."],
    basis: "definition",
    sources: [canadianCloserLook],
  }),
  formula({
    id: "reel-speed",
    name: "reelSpeedFor",
    title: "Turns of a reel for a clip",
    inputs: [
      ["speed", "v", "speed", "none", ["mi/h", "km/h"], [2, 5], ["in/min", "mm/min"]],
      ["blades", "b", "blades of the reel", "none", count, [5, 14]],
      ["clip", "c", "clip", "none", cut, [0.1, 0.6]],
    ],
    output: ["n", "turns of the reel", "none", ["1/min", "1/min"]],
    equation: "n = v / (b * c)",
    run: ({ blades, ...rest }) => reelSpeedFor({ ...rest, blades: Math.round(blades.in("count")) }),
    traps: ["Leaving the speed in miles per hour with a clip in inches."],
    basis: "definition",
    sources: [canadianCloserLook],
  }),
];
