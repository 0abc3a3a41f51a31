import { quantity } from "../../../src/quantity/index.js";
import {
  bulkDensity,
  gateSetting,
  hopperLoad,
  hopperVolume,
  loadCoverage,
  rateAtSpeed,
  runLength,
  speedForRate,
  spreadRate,
  spreadRateEstimate,
  targetCatch,
  targetDischarge,
  testArea,
  timedRate,
  timedRateEstimate,
} from "../../../src/spread/index.js";
import { type Refusal, refusalsOf } from "../../told.js";
import { ft, lb, percent, perThousand } from "../helpers.js";

const area = quantity(1000, "ft2");
const mph = (value: number) => quantity(value, "mi/h");
const minutes = (value: number) => quantity(value, "min");
const run = { amount: lb(3), area };
const trials = [
  { setting: 3, rate: perThousand(2) },
  { setting: 5, rate: perThousand(5) },
];
const target = perThousand(4);
const estimate = { type: "estimate", value: perThousand(2), standardError: perThousand(-1) };
const seed = quantity(3, "lb", "seed");

const rows: readonly Refusal[] = [
  [
    "nothing of a run",
    spreadRate,
    [{}],
    [
      "missing amount: a weight, such as 50 lb or 20 kg [undefined]",
      "missing area: a field of area; length and width; swath and distance; or swath, circumference and turns [undefined]",
    ],
  ],
  [
    "an amount and weights",
    spreadRate,
    [{ ...run, before: lb(9), after: lb(6) }],
    ["conflict amount: an amount, or the weights before and after, not both [3 lb of product]"],
  ],
  [
    "an amount and a weight before",
    spreadRate,
    [{ ...run, before: lb(9) }],
    ["conflict amount: an amount, or the weights before and after, not both [3 lb of product]"],
  ],
  [
    "an amount and a weight after",
    spreadRate,
    [{ ...run, after: lb(9) }],
    ["conflict amount: an amount, or the weights before and after, not both [3 lb of product]"],
  ],
  [
    "a weight before alone",
    spreadRate,
    [{ area, before: lb(9) }],
    ["missing after: a weight, such as 50 lb or 20 kg [undefined]"],
  ],
  [
    "a weight after alone",
    spreadRate,
    [{ area, after: lb(9) }],
    ["missing before: a weight, such as 50 lb or 20 kg [undefined]"],
  ],
  [
    "as much after as before",
    spreadRate,
    [{ area, before: lb(9), after: lb(9) }],
    ["conflict after: less than before, which is 9 lb of product [9 lb of product]"],
  ],
  [
    "seed before, product after",
    spreadRate,
    [{ area, before: seed, after: lb(1) }],
    ["substance/mismatch after: a mass of seed [1 lb of product]"],
  ],
  [
    "less than nothing after",
    spreadRate,
    [{ area, before: lb(9), after: lb(-1) }],
    ["range after: zero or more [-1 lb of product]"],
  ],
  [
    "no amount on no ground in part of a pass",
    spreadRate,
    [{ amount: lb(0), area: quantity(0, "ft2"), passes: 1.5 }],
    [
      "range amount: more than zero [0 lb of product]",
      "range area: more than zero [0 ft2]",
      "range passes: a whole number [1.5]",
    ],
  ],
  ["no pass", spreadRate, [{ ...run, passes: 0 }], ["range passes: 1 or more [0]"]],
  [
    "ground of seed",
    spreadRate,
    [{ ...run, area: quantity(1, "ft2", "seed") }],
    ["substance/mismatch area: an area of none, treated, gross or plan [1 ft2 of seed]"],
  ],
  [
    "a run past all numbers",
    spreadRate,
    [{ amount: lb(1e300), area: quantity(1e-200, "ft2") }],
    ["range amount: inputs whose result is a number, more than zero [infinity]"],
  ],
  [
    "nothing of a catch",
    targetCatch,
    [{}],
    [
      "missing rate: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [undefined]",
      "missing area: a field of area; length and width; swath and distance; or swath, circumference and turns [undefined]",
    ],
  ],
  [
    "a catch of no rate",
    targetCatch,
    [{ rate: perThousand(0), area, passes: 0 }],
    ["range rate: more than zero [0 lb/1000 ft2 of product]", "range passes: 1 or more [0]"],
  ],
  [
    "no ground",
    testArea,
    [{}],
    [
      "missing area: a field of area; length and width; swath and distance; or swath, circumference and turns [undefined]",
    ],
  ],
  [
    "a length alone",
    testArea,
    [{ length: ft(9) }],
    [
      "missing width: a field of area; length and width; swath and distance; or swath, circumference and turns [undefined]",
    ],
  ],
  [
    "a swath and turns",
    testArea,
    [{ swath: ft(9), turns: 3 }],
    [
      "missing circumference: a field of area; length and width; swath and distance; or swath, circumference and turns [undefined]",
    ],
  ],
  [
    "an area and a length",
    testArea,
    [{ area, length: ft(9) }],
    [
      "conflict length: one of: area; length and width; swath and distance; or swath, circumference and turns [9 ft]",
    ],
  ],
  [
    "a length and a width of none",
    testArea,
    [{ length: ft(0), width: ft(0) }],
    ["range length: more than zero [0 ft]", "range width: more than zero [0 ft]"],
  ],
  [
    "turns of a wheel that are none",
    testArea,
    [{ swath: ft(9), circumference: ft(0), turns: 0 }],
    ["range circumference: more than zero [0 ft]", "range turns: more than 0 [0]"],
  ],
  [
    "a distance of seed",
    testArea,
    [{ swath: quantity(9, "ft", "seed"), distance: ft(9) }],
    ["substance/mismatch swath: a length, which is of none [9 ft of seed]"],
  ],
  [
    "a field of ground that is not known",
    testArea,
    [{ area, turn: 3 }],
    [
      'type ground.turn: one of the fields length, width, swath, distance, circumference, turns, area [a field "turn"] turns?',
    ],
  ],
  [
    "nothing of a length of run",
    runLength,
    [{}],
    [
      "missing area: an area, such as 5000 ft2 or 500 m2 [undefined]",
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a run on nothing",
    runLength,
    [{ area: quantity(0, "ft2"), swath: ft(0) }],
    ["range area: more than zero [0 ft2]", "range swath: more than zero [0 ft]"],
  ],
  [
    "nothing of a time",
    timedRate,
    [{}],
    [
      "missing amount: a weight, such as 50 lb or 20 kg [undefined]",
      "missing time: a time, such as 20 min or 2 h [undefined]",
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
    ],
  ],
  [
    "a time of none",
    timedRate,
    [{ amount: lb(0), time: minutes(0), swath: ft(0), speed: mph(0) }],
    [
      "range amount: more than zero [0 lb of product]",
      "range time: more than zero [0 min]",
      "range swath: more than zero [0 ft]",
      "range speed: more than zero [0 mi/h]",
    ],
  ],
  [
    "nothing of a discharge",
    targetDischarge,
    [{}],
    [
      "missing rate: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [undefined]",
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
    ],
  ],
  [
    "a discharge of none",
    targetDischarge,
    [{ rate: perThousand(0), swath: ft(0), speed: mph(0) }],
    [
      "range rate: more than zero [0 lb/1000 ft2 of product]",
      "range swath: more than zero [0 ft]",
      "range speed: more than zero [0 mi/h]",
    ],
  ],
  [
    "nothing of a speed",
    rateAtSpeed,
    [{}],
    [
      "missing feed: power-driven, gravity gate or ground-driven [undefined]",
      "missing rate: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [undefined]",
      "missing from: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing to: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
    ],
  ],
  [
    "a feed that follows the wheel",
    rateAtSpeed,
    [{ rate: target, from: mph(3), to: mph(4), feed: "ground-driven" }],
    [
      'infeasible feed: a feed that does not follow the wheel: calibrate again at the new speed ["ground-driven"]',
    ],
  ],
  [
    "another feed",
    rateAtSpeed,
    [{ rate: target, from: mph(0), to: mph(0), feed: "belt" }],
    [
      'type feed: power-driven, gravity gate or ground-driven ["belt"]',
      "range from: more than zero [0 mi/h]",
      "range to: more than zero [0 mi/h]",
    ],
  ],
  [
    "a rate that is none",
    rateAtSpeed,
    [{ rate: lb(3), from: mph(3), to: mph(4), feed: "gravity gate" }],
    ["unit/mismatch rate: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [3 lb of product]"],
  ],
  [
    "nothing for a speed",
    speedForRate,
    [{}],
    [
      "missing feed: power-driven, gravity gate or ground-driven [undefined]",
      "missing rate: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [undefined]",
      "missing from: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing target: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [undefined]",
    ],
  ],
  [
    "a target of seed",
    speedForRate,
    [{ rate: target, from: mph(3), target: quantity(4, "lb/1000 ft2", "seed"), feed: "power-driven" }],
    ["substance/mismatch target: a rate of product, as measured [4 lb/1000 ft2 of seed]"],
  ],
  [
    "a target of spray for a rate of water",
    speedForRate,
    [
      {
        rate: quantity(4, "gal/acre", "water"),
        from: mph(3),
        target: quantity(4, "gal/acre", "spray"),
        feed: "power-driven",
      },
    ],
    [
      "substance/mismatch target: a rate of water, as measured; asFinishedSpray(rate).value is what was measured with water as spray [4 gal/acre of spray]",
    ],
  ],
  [
    "a target of water for a rate of spray",
    speedForRate,
    [
      {
        rate: quantity(4, "gal/acre", "spray"),
        from: mph(3),
        target: quantity(4, "gal/acre", "water"),
        feed: "power-driven",
      },
    ],
    ["substance/mismatch target: a rate of spray, as measured [4 gal/acre of water]"],
  ],
  [
    "a target by volume for a rate by weight",
    speedForRate,
    [{ rate: target, from: mph(3), target: quantity(4, "gal/acre", "product"), feed: "power-driven" }],
    [
      "unit/mismatch target: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [4 gal/acre of product]",
    ],
  ],
  [
    "nothing of catches",
    spreadRateEstimate,
    [{}],
    [
      "missing amounts: a list of catches [undefined]",
      "missing areaError: a relative standard error, 0 % where there is none [undefined]",
      "missing area: a field of area; length and width; swath and distance; or swath, circumference and turns [undefined]",
    ],
  ],
  [
    "catches that are no list",
    spreadRateEstimate,
    [{ amounts: lb(3), area, areaError: percent(1) }],
    ["type amounts: a list of catches [3 lb of product]"],
  ],
  [
    "one catch",
    spreadRateEstimate,
    [{ amounts: [lb(3)], area, areaError: percent(1) }],
    ["missing amounts: two catches or more: one has no spread [a list of 1]"],
  ],
  [
    "catches that are not there",
    spreadRateEstimate,
    [{ amounts: [lb(3), undefined, null, lb(-1), seed], area, areaError: null }],
    [
      "missing amounts[1]: a mass [undefined]",
      "missing amounts[2]: a mass [null]",
      "range amounts[3]: zero or more [-1 lb of product]",
      "substance/mismatch amounts[4]: a mass of product, as the first [3 lb of seed]",
      "missing areaError: a relative standard error, 0 % where there is none [null]",
    ],
  ],
  [
    "catches of nothing",
    spreadRateEstimate,
    [{ amounts: [lb(0), lb(0)], area, areaError: percent(1) }],
    ["range amounts: catches whose mean is more than zero [0 lb of product]"],
  ],
  [
    "less than no error",
    spreadRateEstimate,
    [{ amounts: [lb(3), lb(3)], area, areaError: percent(-1) }],
    ["range areaError: zero or more [-1 %]"],
  ],
  [
    "catches on no ground",
    spreadRateEstimate,
    [{ amounts: [lb(3)], area: quantity(0, "ft2"), passes: 0 }],
    [
      "missing amounts: two catches or more: one has no spread [a list of 1]",
      "missing areaError: a relative standard error, 0 % where there is none [undefined]",
      "range area: more than zero [0 ft2]",
      "range passes: 1 or more [0]",
    ],
  ],
  [
    "nothing of timed catches",
    timedRateEstimate,
    [{}],
    [
      "missing amounts: a list of catches [undefined]",
      "missing timeError: a relative standard error, 0 % where there is none [undefined]",
      "missing swathError: a relative standard error, 0 % where there is none [undefined]",
      "missing speedError: a relative standard error, 0 % where there is none [undefined]",
      "missing time: a time, such as 20 min or 2 h [undefined]",
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
    ],
  ],
  [
    "timed catches without their errors",
    timedRateEstimate,
    [{ amounts: [lb(3), lb(3)], time: minutes(0), swath: ft(0), speed: mph(0) }],
    [
      "missing timeError: a relative standard error, 0 % where there is none [undefined]",
      "missing swathError: a relative standard error, 0 % where there is none [undefined]",
      "missing speedError: a relative standard error, 0 % where there is none [undefined]",
      "range time: more than zero [0 min]",
      "range swath: more than zero [0 ft]",
      "range speed: more than zero [0 mi/h]",
    ],
  ],
  [
    "nothing of a gate",
    gateSetting,
    [{}],
    ["missing target: a rate [undefined]", "missing trials: two trials or more [undefined]"],
  ],
  [
    "trials that are no list",
    gateSetting,
    [{ target, trials: { setting: 3 } }],
    ["type trials: a list of trials [a record]"],
  ],
  [
    "one trial",
    gateSetting,
    [{ target, trials: [trials[0]] }],
    ["missing trials: two trials or more: one does not show the slope [a list of 1]"],
  ],
  [
    "trials of none",
    gateSetting,
    [{ target, trials: [{}, { setting: "3", rate: perThousand(0) }] }],
    [
      "missing trials[0].setting: a finite number [undefined]",
      "missing trials[0].rate: a rate [undefined]",
      'not-finite trials[1].setting: a finite number ["3"]',
      "range trials[1].rate: more than zero [0 lb/1000 ft2 of product]",
    ],
  ],
  [
    "trials that are not there",
    gateSetting,
    [{ target, trials: [undefined, 7] }],
    [
      "missing trials[0]: a record with setting, rate [undefined]",
      "type trials[1]: a record with setting, rate [7]",
    ],
  ],
  ["a target that is null", gateSetting, [{ target: null, trials }], ["missing target: a rate [null]"]],
  [
    "a target of none, other words",
    gateSetting,
    [{ target: perThousand(0), trials, step: 0, scale: "up", beyond: "go on" }],
    [
      "range target: more than zero [0 lb/1000 ft2 of product]",
      'type scale: one of "higher opens", "lower opens" ["up"]',
      'type beyond: one of "refuse", "extrapolate" ["go on"]',
      "range step: more than 0 [0]",
    ],
  ],
  [
    "trials of seed",
    gateSetting,
    [{ target, trials: [trials[0], { setting: 5, rate: quantity(5, "lb/1000 ft2", "seed") }] }],
    ["substance/mismatch trials[1].rate: a rate of product, as the target [5 lb/1000 ft2 of seed]"],
  ],
  [
    "a trial with less than no error",
    gateSetting,
    [{ target, trials: [trials[1], { setting: 3, rate: estimate }] }],
    ["range trials[1].rate.standardError: zero or more [-1 lb/1000 ft2 of product]"],
  ],
  [
    "an estimate of seed",
    gateSetting,
    [
      {
        target,
        trials: [
          trials[1],
          {
            setting: 3,
            rate: {
              type: "estimate",
              value: quantity(2, "lb/1000 ft2", "seed"),
              standardError: quantity(0, "lb/1000 ft2", "seed"),
            },
          },
        ],
      },
    ],
    ["substance/mismatch trials[1].rate.value: a rate of product, as the target [2 lb/1000 ft2 of seed]"],
  ],
  [
    "an estimate of nothing",
    gateSetting,
    [{ target, trials: [trials[1], { setting: 3, rate: { type: "estimate" } }] }],
    ["missing trials[1].rate.value: a rate [undefined]"],
  ],
  [
    "a setting twice",
    gateSetting,
    [{ target, trials: [...trials, { setting: 3, rate: perThousand(2.5) }] }],
    [
      "conflict trials[2].setting: another setting than trials[0]; give repeated runs of one setting as their mean [3]",
    ],
  ],
  [
    "a setting twice, in one order",
    gateSetting,
    [{ target, trials: [{ setting: 5, rate: perThousand(4) }, ...trials] }],
    [
      "conflict trials[2].setting: another setting than trials[0]; give repeated runs of one setting as their mean [5]",
    ],
  ],
  [
    "rates that fall where they have to rise",
    gateSetting,
    [
      {
        target,
        trials: [
          { setting: 3, rate: perThousand(5) },
          { setting: 5, rate: perThousand(2) },
        ],
      },
    ],
    [
      "conflict trials[1].rate: more than 5, the rate of trials[0] at setting 3, because its setting is 5; repeat both runs [2]",
    ],
  ],
  [
    "rates that rise where they have to fall",
    gateSetting,
    [{ target, trials, scale: "lower opens" }],
    [
      "conflict trials[1].rate: less than 2, the rate of trials[0] at setting 3, because its setting is 5; repeat both runs [5]",
    ],
  ],
  [
    "rates that are the same",
    gateSetting,
    [{ target, trials: [trials[0], { setting: 5, rate: perThousand(2) }] }],
    [
      "conflict trials[1].rate: more than 2, the rate of trials[0] at setting 3, because its setting is 5; repeat both runs [2]",
    ],
  ],
  [
    "a target above the trials",
    gateSetting,
    [{ target: perThousand(6), trials }],
    [
      "infeasible target: a rate between the trials, 2 to 5 lb/1000 ft2; make a trial at a higher setting [6 lb/1000 ft2 of product]",
    ],
  ],
  [
    "a target below the trials",
    gateSetting,
    [{ target: perThousand(1), trials }],
    [
      "infeasible target: a rate between the trials, 2 to 5 lb/1000 ft2; make a trial at a lower setting [1 lb/1000 ft2 of product]",
    ],
  ],
  [
    "a target above trials that fall",
    gateSetting,
    [
      {
        target: perThousand(6),
        scale: "lower opens",
        trials: [
          { setting: 3, rate: perThousand(5) },
          { setting: 5, rate: perThousand(2) },
        ],
      },
    ],
    [
      "infeasible target: a rate between the trials, 2 to 5 lb/1000 ft2; make a trial at a lower setting [6 lb/1000 ft2 of product]",
    ],
  ],
  [
    "a target below trials that fall",
    gateSetting,
    [
      {
        target: perThousand(1),
        scale: "lower opens",
        trials: [
          { setting: 3, rate: perThousand(5) },
          { setting: 5, rate: perThousand(2) },
        ],
      },
    ],
    [
      "infeasible target: a rate between the trials, 2 to 5 lb/1000 ft2; make a trial at a higher setting [1 lb/1000 ft2 of product]",
    ],
  ],
  [
    "nothing of a bucket",
    bulkDensity,
    [{}],
    [
      "missing amount: a weight, such as 50 lb or 20 kg [undefined]",
      "missing volume: a volume, such as 2 gal or 8 L [undefined]",
    ],
  ],
  [
    "an empty bucket",
    bulkDensity,
    [{ amount: lb(0), volume: quantity(0, "ft3") }],
    ["range amount: more than zero [0 lb of product]", "range volume: more than zero [0 ft3]"],
  ],
  [
    "nothing of a hopper",
    hopperLoad,
    [{}],
    [
      "missing volume: a volume, such as 2 gal or 8 L [undefined]",
      "missing bulkDensity: a weight per volume, such as 10 lb/gal or 1.2 kg/L [undefined]",
    ],
  ],
  [
    "an empty hopper",
    hopperLoad,
    [{ volume: quantity(0, "ft3", "product"), bulkDensity: quantity(0, "lb/ft3") }],
    ["range volume: more than zero [0 ft3 of product]", "range bulkDensity: more than zero [0 lb/ft3]"],
  ],
  [
    "a density of something",
    hopperLoad,
    [{ volume: quantity(1, "ft3", "product"), bulkDensity: quantity(50, "lb/ft3", "product") }],
    ["substance/mismatch bulkDensity: a mass/volume, which is of none [50 lb/ft3 of product]"],
  ],
  [
    "nothing for a hopper",
    hopperVolume,
    [{}],
    [
      "missing load: a weight, such as 50 lb or 20 kg [undefined]",
      "missing bulkDensity: a weight per volume, such as 10 lb/gal or 1.2 kg/L [undefined]",
    ],
  ],
  [
    "no load for a hopper",
    hopperVolume,
    [{ load: lb(0), bulkDensity: quantity(0, "lb/ft3") }],
    ["range load: more than zero [0 lb of product]", "range bulkDensity: more than zero [0 lb/ft3]"],
  ],
  [
    "nothing of a load",
    loadCoverage,
    [{}],
    [
      "missing load: a weight, such as 50 lb or 20 kg [undefined]",
      "missing rate: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [undefined]",
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a load of none",
    loadCoverage,
    [{ load: lb(0), rate: perThousand(0), swath: ft(0) }],
    [
      "range load: more than zero [0 lb of product]",
      "range rate: more than zero [0 lb/1000 ft2 of product]",
      "range swath: more than zero [0 ft]",
    ],
  ],
  [
    "a load of seed by a rate of product",
    loadCoverage,
    [{ load: seed, rate: perThousand(4), swath: ft(9) }],
    ["substance/mismatch rate: a rate of seed, as the load [4 lb/1000 ft2 of product]"],
  ],
  [
    "a target of spray for a rate of product",
    speedForRate,
    [
      {
        rate: quantity(4, "gal/acre", "product"),
        from: mph(3),
        target: quantity(4, "gal/acre", "spray"),
        feed: "power-driven",
      },
    ],
    ["substance/mismatch target: a rate of product, as measured [4 gal/acre of spray]"],
  ],
  [
    "a run below all numbers",
    spreadRate,
    [{ amount: lb(1e-300), area: quantity(1e100, "ft2") }],
    ["range amount: inputs whose result is a number, more than zero [0]"],
  ],
  [
    "a run length below all numbers",
    runLength,
    [{ area: quantity(1e-300, "ft2"), swath: ft(1e100) }],
    ["range area: inputs whose result is a number, more than zero [0]"],
  ],
  [
    "a bucket past all numbers",
    bulkDensity,
    [{ amount: lb(1e300), volume: quantity(1e-100, "ft3") }],
    ["range amount: inputs whose result is a number, more than zero [infinity]"],
  ],
];

refusalsOf("what is refused of calibration", rows);
