import { quantity } from "../../../src/quantity/index.js";
import {
  cutsToHeight,
  frequencyOfClip,
  growthBetweenMowings,
  leafRemoved,
  mowAtHeight,
  mowingInterval,
  mowingSpeedFor,
  reelSpeedFor,
  shootGrowth,
} from "../../../src/stand/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const cut = quantity(2, "in");
const standing = quantity(4, "in");
const speed = quantity(5, "km/h");
const reelSpeed = quantity(2000, "1/min");
const clip = quantity(6, "mm");
const growth = quantity(5, "mm/d");

const rows: readonly Refusal[] = [
  [
    "no cut and no share",
    mowAtHeight,
    [{ share: 0 }],
    ["missing cut: a length, such as 10 ft or 3 m [undefined]", "range share: more than 0 [0]"],
  ],
  ["a share of one", growthBetweenMowings, [{ cut, share: 1 }], ["range share: less than 1 [1]"]],
  [
    "a share as a quantity",
    mowAtHeight,
    [{ cut, share: quantity(30, "%") }],
    [
      'not-finite share: a bare number here: amount.in("...") gives it in the unit that the field is in [30 %]',
    ],
  ],
  [
    "no heights",
    leafRemoved,
    [{}],
    [
      "missing standing: a length, such as 10 ft or 3 m [undefined]",
      "missing cut: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "heights of nothing",
    leafRemoved,
    [{ cut: quantity(0, "in"), standing: quantity(0, "in") }],
    ["range standing: more than zero [0 in]", "range cut: more than zero [0 in]"],
  ],
  [
    "grass below the cut",
    leafRemoved,
    [{ cut: quantity(3, "cm"), standing: quantity(1, "in") }],
    ["range standing: 3 cm or more, which is the cut [1 in]"],
  ],
  [
    "nothing to bring down",
    cutsToHeight,
    [{}],
    [
      "missing standing: a length, such as 10 ft or 3 m [undefined]",
      "missing cut: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  ["a share past all", cutsToHeight, [{ cut, standing, share: 1 }], ["range share: less than 1 [1]"]],
  [
    "more cuts than anybody makes",
    cutsToHeight,
    [{ cut, standing: quantity(300, "in"), share: 0.01 }],
    ["range share: a share that gets it down in 60 cuts [0.01]"],
  ],
  [
    "no growth",
    shootGrowth,
    [{}],
    [
      "missing cut: a length, such as 10 ft or 3 m [undefined]",
      "missing standing: a length, such as 10 ft or 3 m [undefined]",
      "missing time: a time, such as 20 min or 2 h [undefined]",
    ],
  ],
  [
    "growth in no time",
    shootGrowth,
    [{ cut, standing, time: quantity(0, "d") }],
    ["range time: more than zero [0 d]"],
  ],
  [
    "growth that went back",
    shootGrowth,
    [{ cut, standing: quantity(1, "in"), time: quantity(1, "d") }],
    ["conflict standing: no less than the cut [1 in]"],
  ],
  [
    "nothing of a reel",
    frequencyOfClip,
    [{}],
    [
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing blades: a whole number [undefined]",
      "missing reelSpeed: a number per time, such as 3 1/d [undefined]",
    ],
  ],
  [
    "no blades",
    frequencyOfClip,
    [{ speed, blades: 0, reelSpeed }],
    ["range blades: a whole number, 1 or more [0]"],
  ],
  [
    "part of a blade",
    frequencyOfClip,
    [{ speed, blades: 7.5, reelSpeed }],
    ["range blades: a whole number, 1 or more [7.5]"],
  ],
  [
    "blades as a text",
    frequencyOfClip,
    [{ speed, blades: "7", reelSpeed }],
    ['type blades: a whole number, 1 or more ["7"]'],
  ],
  [
    "more blades than fit",
    frequencyOfClip,
    [{ speed, blades: 61, reelSpeed }],
    ["range blades: 60 blades or fewer [61]"],
  ],
  [
    "a reel that stands",
    frequencyOfClip,
    [{ speed, blades: 7, reelSpeed: quantity(0, "1/min") }],
    ["range reelSpeed: more than zero [0 1/min]"],
  ],
  [
    "a speed that is a length",
    frequencyOfClip,
    [{ speed: quantity(5, "m"), blades: 7, reelSpeed }],
    ["unit/mismatch speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [5 m]"],
  ],
  [
    "nothing for the reel speed",
    reelSpeedFor,
    [{}],
    [
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing blades: a whole number [undefined]",
      "missing clip: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a clip of nothing",
    reelSpeedFor,
    [{ speed, blades: 7, clip: quantity(0, "mm") }],
    ["range clip: more than zero [0 mm]"],
  ],
  [
    "nothing for the mowing speed",
    mowingSpeedFor,
    [{}],
    [
      "missing reelSpeed: a number per time, such as 3 1/d [undefined]",
      "missing blades: a whole number [undefined]",
      "missing clip: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "no clip for the mowing speed",
    mowingSpeedFor,
    [{ reelSpeed, blades: 7, clip: quantity(0, "mm") }],
    ["range clip: more than zero [0 mm]"],
  ],
  [
    "a misspelt field of a reel",
    mowingSpeedFor,
    [{ reelSpeed, blades: 7, clip, blade: 7 }],
    ['type input.blade: one of the fields reelSpeed, blades, clip [a field "blade"] blades?'],
  ],
  [
    "nothing of an interval",
    mowingInterval,
    [{}],
    [
      "missing cut: a length, such as 10 ft or 3 m [undefined]",
      "missing growth: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
    ],
  ],
  [
    "no growth to mow",
    mowingInterval,
    [{ cut, growth: quantity(0, "mm/d") }],
    ["range growth: more than zero [0 mm/d]"],
  ],
  [
    "a potential of none",
    mowingInterval,
    [{ cut, growth, potential: quantity(0, "%") }],
    ["range potential: more than 0 % and at most 100 % [0 %]"],
  ],
  [
    "a potential past all",
    mowingInterval,
    [{ cut, growth, potential: quantity(101, "%") }],
    ["range potential: more than 0 % and at most 100 % [101 %]"],
  ],
  [
    "growth held back in full",
    mowingInterval,
    [{ cut, growth, suppression: quantity(100, "%") }],
    ["range suppression: 0 % or more and less than 100 % [100 %]"],
  ],
  [
    "growth held back by less than nothing",
    mowingInterval,
    [{ cut, growth, suppression: quantity(-1, "%") }],
    ["range suppression: 0 % or more and less than 100 % [-1 %]"],
  ],
];

refusalsOf("what is refused of mowing", rows);
