import { quantity } from "../../../src/quantity/index.js";
import {
  flowAtPressure,
  nozzleCheck,
  nozzleWear,
  outputAtPressure,
  pressureForFlow,
  pressureForOutput,
  pressureForSpeed,
  pulseTips,
  pulseWidth,
  ratedFlow,
  readTip,
  tipChoices,
} from "../../../src/spray/index.js";
import { type Refusal, refusalsOf } from "../../told.js";
import { gpa, gpm, inches, mph, percent, psi, seconds } from "../helpers.js";

const spray = (value: number) => quantity(value, "gal", "spray");
const tip = { flow: gpm(0.4), pressure: psi(40), lowest: psi(15), highest: psi(60) };
const boom = { catches: [spray(1), spray(1)], time: seconds(60), divisor: "n" };
const usual = { pressure: psi(40), from: mph(4), to: mph(5), lowest: psi(15), highest: psi(60) };
const speeds = { slowest: mph(4), usual: mph(5), fastest: mph(6) };
const pressures = { lowest: psi(15), highest: psi(60) };
const job = { applicationVolume: gpa(20), speeds, spacing: inches(20), pressures };
const one = { code: "04", ...pressures };
const pulse = { full: gpm(0.5), applicationVolume: gpa(15), speed: mph(4), width: inches(20) };
const sizes = {
  sizes: ["04"],
  pressure: psi(40),
  applicationVolume: gpa(15),
  speed: mph(4),
  width: inches(20),
};

const rows: readonly Refusal[] = [
  [
    "a size that is none",
    ratedFlow,
    ["7", "3 bar"],
    ['type code: a size: 01, 015, 02, 025, 03, 04, 05, 06, 08, 10, 15, 20 ["7"]'],
  ],
  ["a rating that is none", ratedFlow, ["04", "5 bar"], ['type rating: "3 bar" or "40 psi" ["5 bar"]']],
  [
    "no stamp",
    readTip,
    [undefined],
    [
      'missing stamp: what is stamped on a tip: angle and size as in "11004", or the size as in "04", "035" or "0067", without the letters of the maker [undefined]',
    ],
  ],
  [
    "a stamp of letters",
    readTip,
    ["XR"],
    [
      'type stamp: what is stamped on a tip: angle and size as in "11004", or the size as in "04", "035" or "0067", without the letters of the maker ["XR"]',
    ],
  ],
  [
    "a stamp of very many digits",
    readTip,
    ["1".repeat(21)],
    [
      'type stamp: what is stamped on a tip: angle and size as in "11004", or the size as in "04", "035" or "0067", without the letters of the maker ["111111111111111111111"]',
    ],
  ],
  [
    "a size of nothing",
    readTip,
    ["000"],
    [
      'type stamp: what is stamped on a tip: angle and size as in "11004", or the size as in "04", "035" or "0067", without the letters of the maker ["000"]',
    ],
  ],
  [
    "no tip",
    flowAtPressure,
    [undefined, undefined],
    [
      "missing tip: a rated tip [undefined]",
      "missing pressure: a pressure, such as 40 psi or 3 bar [undefined]",
    ],
  ],
  ["a tip that is null", flowAtPressure, [null, psi(40)], ["type tip: a rated tip [null]"]],
  ["a tip as a text", flowAtPressure, ["11004", psi(40)], ['type tip: a rated tip ["11004"]']],
  [
    "a tip without its pressures",
    flowAtPressure,
    [{ flow: gpm(0.4), pressure: psi(40) }, psi(40)],
    [
      "missing tip.lowest: the pressures between which the tip is rated, as its chart prints them; outputAtPressure goes without them, and says so [undefined]",
    ],
  ],
  [
    "a tip without one of its pressures",
    flowAtPressure,
    [{ ...tip, lowest: undefined }, psi(40)],
    ["missing tip.lowest: a pressure, such as 40 psi or 3 bar [undefined]"],
  ],
  [
    "a tip of nothing",
    flowAtPressure,
    [{ flow: gpm(0), pressure: psi(0), lowest: psi(0), highest: psi(0) }, psi(0)],
    [
      "range tip.flow: more than zero [0 gal/min of spray]",
      "range tip.pressure: more than zero [0 psi]",
      "range tip.lowest: more than zero [0 psi]",
      "range tip.highest: more than zero [0 psi]",
      "range pressure: more than zero [0 psi]",
    ],
  ],
  [
    "a tip whose pressures are changed over",
    flowAtPressure,
    [{ ...tip, lowest: psi(70) }, psi(40)],
    ["conflict tip.highest: no less than the lowest pressure, 70 psi [60 psi]"],
  ],
  [
    "a tip with a field that is not known",
    flowAtPressure,
    [{ ...tip, angle: 110 }, psi(40)],
    [
      'type tip.angle: one of the fields flow, pressure, lowest, highest, code, color, nominal, reached [a field "angle"]',
    ],
  ],
  [
    "a pressure above the tip",
    flowAtPressure,
    [tip, quantity(5, "bar")],
    ["range pressure: 15 to 60 psi, the range the tip is rated for [5 bar]"],
  ],
  [
    "a pressure below the tip",
    flowAtPressure,
    [tip, psi(14)],
    ["range pressure: 15 to 60 psi, the range the tip is rated for [14 psi]"],
  ],
  [
    "no flow for a pressure",
    pressureForFlow,
    [tip, undefined],
    ["missing flow: a flow, such as 0.4 gal/min or 1.5 L/min [undefined]"],
  ],
  [
    "a flow of water of a tip of spray",
    pressureForFlow,
    [tip, quantity(0.4, "gal/min", "water")],
    ["substance/mismatch flow: a quantity of spray [0.4 gal/min of water]"],
  ],
  [
    "a flow that the tip does not give",
    pressureForFlow,
    [{ ...tip, lowest: psi(10), highest: psi(90) }, gpm(0.8)],
    ["range flow: 0.2 to 0.6 gal/min, at the pressures for which the tip is rated [0.8 gal/min of spray]"],
  ],
  [
    "nothing for a pressure by speed",
    pressureForSpeed,
    [{}],
    [
      "missing pressure: a pressure, such as 40 psi or 3 bar [undefined]",
      "missing from: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing to: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing lowest: a pressure, such as 40 psi or 3 bar [undefined]",
      "missing highest: a pressure, such as 40 psi or 3 bar [undefined]",
    ],
  ],
  [
    "pressures changed over",
    pressureForSpeed,
    [{ ...usual, lowest: psi(61) }],
    ["conflict highest: no less than the lowest pressure, 61 psi [60 psi]"],
  ],
  [
    "a pressure outside its own range",
    pressureForSpeed,
    [{ ...usual, pressure: psi(70) }],
    ["range pressure: 15 to 60 psi, the range the tip is rated for [70 psi]"],
  ],
  [
    "a speed that takes too much pressure",
    pressureForSpeed,
    [{ ...usual, lowest: psi(10), to: mph(8) }],
    [
      "range to: 2 to 4.898979 mi/h: the tip is rated from 10 psi to 60 psi; this speed takes 160 psi [8 mi/h]",
    ],
  ],
  [
    "nothing for an output",
    outputAtPressure,
    [{}],
    [
      "missing output: a flow or a volume per area [undefined]",
      "missing from: a pressure, such as 40 psi or 3 bar [undefined]",
      "missing to: a pressure, such as 40 psi or 3 bar [undefined]",
    ],
  ],
  [
    "an output of none",
    outputAtPressure,
    [{ output: gpm(0), from: psi(0), to: psi(0) }],
    [
      "range output: more than zero [0 gal/min of spray]",
      "range from: more than zero [0 psi]",
      "range to: more than zero [0 psi]",
    ],
  ],
  [
    "an output of fuel",
    outputAtPressure,
    [{ output: quantity(1, "gal/min", "N"), from: psi(40), to: psi(40) }],
    ["substance/mismatch output: a quantity of spray, of water, or of undiluted product [1 gal/min of N]"],
  ],
  [
    "nothing for an output turned round",
    pressureForOutput,
    [{}],
    [
      "missing output: a flow or a volume per area [undefined]",
      "missing from: a pressure, such as 40 psi or 3 bar [undefined]",
      "missing wanted: a flow or a volume per area [undefined]",
    ],
  ],
  [
    "an output of water for one of spray",
    pressureForOutput,
    [{ output: gpm(1), from: psi(40), wanted: quantity(1, "gal/min", "water") }],
    ["substance/mismatch wanted: an output of spray [1 gal/min of water]"],
  ],
  [
    "a volume per area for a flow",
    pressureForOutput,
    [{ output: gpm(1), from: psi(40), wanted: gpa(20) }],
    [
      "unit/mismatch wanted: a flow, such as 0.4 gal/min or 1.5 L/min, as the output is [20 gal/acre of spray]",
    ],
  ],
  [
    "nothing of one nozzle",
    nozzleWear,
    [{}],
    [
      "missing caught: a volume, such as 2 gal or 8 L [undefined]",
      "missing time: a time, such as 20 min or 2 h [undefined]",
      "missing rated: a flow, such as 0.4 gal/min or 1.5 L/min [undefined]",
    ],
  ],
  [
    "a nozzle that gave nothing",
    nozzleWear,
    [{ caught: spray(0), time: seconds(0), rated: gpm(0), aboveRated: percent(0), belowRated: percent(101) }],
    [
      "range caught: more than zero [0 gal of spray]",
      "range time: more than zero [0 s]",
      "range rated: more than zero [0 gal/min of spray]",
      "range aboveRated: more than zero [0 %]",
      "range belowRated: 100 % or less [101 %]",
    ],
  ],
  [
    "a catch of water by a flow of spray",
    nozzleWear,
    [{ caught: quantity(1, "gal", "water"), time: seconds(60), rated: gpm(1) }],
    ["substance/mismatch rated: a flow of water, as was caught [1 gal/min of spray]"],
  ],
  [
    "nothing of a boom",
    nozzleCheck,
    [{}],
    [
      "missing catches: a list with at least one reading [undefined]",
      "missing time: a time, such as 20 min or 2 h [undefined]",
      'missing divisor: one of "n", "n-1" [undefined]',
    ],
  ],
  [
    "one nozzle of a boom",
    nozzleCheck,
    [{ ...boom, catches: [spray(1)] }],
    ["missing catches: at least 2 catches; nozzleWear holds one nozzle against its rating [a list of 1]"],
  ],
  [
    "no nozzle of a boom",
    nozzleCheck,
    [{ ...boom, catches: [] }],
    ["missing catches: at least one reading [an empty list]"],
  ],
  [
    "a boom that gave nothing",
    nozzleCheck,
    [{ ...boom, catches: [spray(0), spray(0)] }],
    ["range catches: catches whose mean is more than zero: a boom that sprays [nothing caught]"],
  ],
  [
    "catches that are not there",
    nozzleCheck,
    [{ ...boom, catches: [spray(1), undefined, null, spray(-1)] }],
    [
      "missing catches[1]: a catch; 0 for a plugged nozzle [undefined]",
      "missing catches[2]: a catch; 0 for a plugged nozzle [null]",
      "range catches[3]: zero or more [-1 gal of spray]",
    ],
  ],
  [
    "catches of product",
    nozzleCheck,
    [{ ...boom, catches: [quantity(1, "gal", "product"), spray(1)] }],
    ["substance/mismatch catches[0]: a catch of spray or of water [1 gal of product]"],
  ],
  [
    "catches of water and of spray",
    nozzleCheck,
    [{ ...boom, catches: [spray(1), quantity(1, "gal", "water")] }],
    ["substance/mismatch catches[1]: a quantity of spray [1 gal of water]"],
  ],
  [
    "limits of none and past all",
    nozzleCheck,
    [
      {
        ...boom,
        aboveRated: percent(0),
        belowRated: percent(101),
        ofMean: percent(101),
        time: seconds(0),
        divisor: "N",
      },
    ],
    [
      "range time: more than zero [0 s]",
      "range aboveRated: more than zero [0 %]",
      "range belowRated: 100 % or less [101 %]",
      "range ofMean: 100 % or less [101 %]",
      'type divisor: one of "n", "n-1" ["N"] n?',
    ],
  ],
  [
    "a rated flow of none",
    nozzleCheck,
    [{ ...boom, rated: gpm(0) }],
    ["range rated: more than zero [0 gal/min of spray]"],
  ],
  [
    "a rated flow of water for catches of spray",
    nozzleCheck,
    [{ ...boom, rated: quantity(1, "gal/min", "water") }],
    ["substance/mismatch rated: a quantity of spray [1 gal/min of water]"],
  ],
  [
    "nothing of pulses",
    pulseWidth,
    [{}],
    [
      "missing full: a flow, such as 0.4 gal/min or 1.5 L/min [undefined]",
      "missing applicationVolume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing width: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a flow of none",
    pulseWidth,
    [{ ...pulse, full: gpm(0) }],
    ["range full: more than zero [0 gal/min of spray]"],
  ],
  [
    "a flow of water for a volume of spray",
    pulseWidth,
    [{ ...pulse, full: quantity(1, "gal/min", "water") }],
    ["substance/mismatch applicationVolume: a volume per area of water, as the flow [15 gal/acre of spray]"],
  ],
  [
    "a duty without its ends",
    pulseWidth,
    [{ ...pulse, duty: {} }],
    [
      "missing duty.least: a share, such as 60 % [undefined]",
      "missing duty.most: a share, such as 60 % [undefined]",
    ],
  ],
  [
    "a duty as a share",
    pulseWidth,
    [{ ...pulse, duty: percent(50) }],
    ["type duty: a record with least, most: write { least: ... } [50 %]"],
  ],
  [
    "a duty past all",
    pulseWidth,
    [{ ...pulse, duty: { least: percent(0), most: percent(101) } }],
    ["range duty.least: more than zero [0 %]", "range duty.most: 100 % or less [101 %]"],
  ],
  [
    "a duty whose ends are changed over",
    pulseWidth,
    [{ ...pulse, duty: { least: percent(60), most: percent(50) } }],
    ["conflict duty.most: 60 % or more [50 %]"],
  ],
  [
    "nothing of tips for pulses",
    pulseTips,
    [{}],
    [
      "missing sizes: a list with at least one size [undefined]",
      "missing pressure: a pressure, such as 40 psi or 3 bar [undefined]",
      "missing applicationVolume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing width: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "sizes that are none",
    pulseTips,
    [{ ...sizes, sizes: ["04", "x", 7] }],
    [
      'type sizes[1]: what is stamped on a tip: angle and size as in "11004", or the size as in "04", "035" or "0067", without the letters of the maker ["x"]',
      'type sizes[2]: what is stamped on a tip: angle and size as in "11004", or the size as in "04", "035" or "0067", without the letters of the maker [7]',
    ],
  ],
  [
    "no sizes and no pressure",
    pulseTips,
    [{ ...sizes, sizes: [], pressure: psi(0) }],
    ["missing sizes: at least one size [an empty list]", "range pressure: more than zero [0 psi]"],
  ],
  [
    "a duty of tips without its ends",
    pulseTips,
    [{ ...sizes, duty: { least: percent(101) } }],
    ["range duty.least: 100 % or less [101 %]", "missing duty.most: a share, such as 60 % [undefined]"],
  ],
  [
    "nothing of tips",
    tipChoices,
    [{}],
    [
      "missing applicationVolume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing speeds: slowest, usual and fastest speed [undefined]",
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
      "missing tips: tips, or the pressures of a series [undefined]",
    ],
  ],
  [
    "what is null of tips",
    tipChoices,
    [{ ...job, speeds: null }],
    ["missing speeds: slowest, usual and fastest speed [null]"],
  ],
  [
    "speeds of none",
    tipChoices,
    [{ ...job, speeds: {} }],
    [
      "missing speeds.slowest: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing speeds.usual: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing speeds.fastest: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
    ],
  ],
  [
    "speeds that are changed over",
    tipChoices,
    [{ ...job, speeds: { slowest: mph(6), usual: mph(5), fastest: mph(4) } }],
    [
      "conflict speeds.slowest: no more than the usual 5 mi/h [6 mi/h]",
      "conflict speeds.fastest: no less than the usual 5 mi/h [4 mi/h]",
    ],
  ],
  [
    "tips and pressures",
    tipChoices,
    [{ ...job, tips: [one] }],
    ["conflict tips: tips, or the pressures of a series, but not both [a list of 1]"],
  ],
  [
    "pressures that are changed over",
    tipChoices,
    [{ ...job, pressures: { lowest: psi(60), highest: psi(15) } }],
    ["conflict pressures.highest: no less than the lowest pressure, 60 psi [15 psi]"],
  ],
  [
    "pressures of none",
    tipChoices,
    [{ ...job, pressures: {} }],
    [
      "missing pressures.lowest: a pressure, such as 40 psi or 3 bar [undefined]",
      "missing pressures.highest: a pressure, such as 40 psi or 3 bar [undefined]",
    ],
  ],
  [
    "a tip twice",
    tipChoices,
    [{ ...job, pressures: undefined, tips: [one, one] }],
    ['duplicate tips: a different id for each tip ["04"]'],
  ],
  [
    "no tips",
    tipChoices,
    [{ ...job, pressures: undefined, tips: [] }],
    ["missing tips: at least one tip [an empty list]"],
  ],
  [
    "tips that are none",
    tipChoices,
    [{ ...job, pressures: undefined, tips: [7, {}, { ...one, id: " ", code: "7" }] }],
    [
      "type tips[0]: a tip [7]",
      "missing tips[1].code: a size of ISO 10625, such as 04 [undefined]",
      "missing tips[1].lowest: a pressure, such as 40 psi or 3 bar [undefined]",
      "missing tips[1].highest: a pressure, such as 40 psi or 3 bar [undefined]",
      'missing tips[2].id: a text that names the tip [" "]',
      'type tips[2].code: a size of ISO 10625, such as 04 ["7"]',
    ],
  ],
  [
    "a tip whose pressures are changed over among others",
    tipChoices,
    [{ ...job, pressures: undefined, tips: [{ ...one, lowest: psi(61) }] }],
    ["conflict tips[0].highest: no less than the lowest pressure, 61 psi [60 psi]"],
  ],
  [
    "a chart of nothing",
    tipChoices,
    [{ ...job, pressures: undefined, tips: [{ ...one, droplets: [] }] }],
    ["missing tips[0].droplets: at least one pressure with its class [an empty list]"],
  ],
  [
    "a chart by wrong words",
    tipChoices,
    [{ ...job, pressures: undefined, tips: [{ ...one, droplets: [{ from: psi(0), makes: "mist" }, 7] }] }],
    [
      "range tips[0].droplets[0].from: more than zero [0 psi]",
      'type tips[0].droplets[0].makes: a droplet class: XF, VF, F, M, C, VC, XC, UC ["mist"]',
      "type tips[0].droplets[1]: a pressure and a class [7]",
    ],
  ],
  [
    "a chart that falls",
    tipChoices,
    [
      {
        ...job,
        pressures: undefined,
        tips: [
          {
            ...one,
            droplets: [
              { from: psi(30), makes: "C" },
              { from: psi(30), makes: "M" },
            ],
          },
        ],
      },
    ],
    ["conflict tips[0].droplets[1].from: pressures in rising order [30 psi]"],
  ],
  [
    "classes by wrong words",
    tipChoices,
    [{ ...job, droplets: { finest: "mist", coarsest: undefined } }],
    [
      'type droplets.finest: a droplet class: XF, VF, F, M, C, VC, XC, UC ["mist"]',
      "missing droplets.coarsest: a droplet class: XF, VF, F, M, C, VC, XC, UC [undefined]",
    ],
  ],
  [
    "classes that are changed over",
    tipChoices,
    [{ ...job, droplets: { finest: "C", coarsest: "M" } }],
    ['conflict droplets.coarsest: no finer than C ["M"]'],
  ],
  [
    "another rating, no density",
    tipChoices,
    [{ ...job, rating: "5 bar", density: quantity(0, "lb/gal") }],
    ["range density: more than zero [0 lb/gal]", 'type rating: "3 bar" or "40 psi" ["5 bar"]'],
  ],
  [
    "no volume, no spacing",
    tipChoices,
    [{ ...job, applicationVolume: gpa(0), spacing: inches(0) }],
    ["range applicationVolume: more than zero [0 gal/acre of spray]", "range spacing: more than zero [0 in]"],
  ],
  [
    "a flow past all numbers",
    flowAtPressure,
    [{ ...tip, flow: gpm(1e307), lowest: psi(1), highest: psi(1e9) }, psi(1e9)],
    ["not-finite pressure: a finite number [infinity]"],
  ],
];

refusalsOf("what is refused of nozzles", rows);
