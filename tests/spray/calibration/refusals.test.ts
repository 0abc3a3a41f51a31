import { quantity } from "../../../src/quantity/index.js";
import {
  calibrationByCatch,
  calibrationByRefill,
  catchCourse,
  rateControllerCheck,
  timeToFill,
  usedBySightGauge,
  weighedCatch,
} from "../../../src/spray/index.js";
import { type Refusal, refusalsOf } from "../../told.js";
import { inches, ounces, percent, seconds } from "../helpers.js";

const water = (value: number) => quantity(value, "gal", "water");
const area = quantity(2000, "ft2");
const course = quantity(100, "ft");
const width = quantity(20, "in");

const rows: readonly Refusal[] = [
  ["nothing of a course", catchCourse, [{}], ["missing width: a length, such as 10 ft or 3 m [undefined]"]],
  [
    "a course of none, by other words",
    catchCourse,
    [{ width: inches(0), reading: "pints", tenfold: "yes" }],
    [
      'type reading: one of "fl oz as gal/acre", "mL as L/ha" ["pints"]',
      'type tenfold: true or false ["yes"]',
      "range width: more than zero [0 in]",
    ],
  ],
  [
    "nothing caught",
    calibrationByCatch,
    [{}],
    [
      "missing catches: a list with at least one reading [undefined]",
      "missing area: an area, or a course and a width [undefined]",
    ],
  ],
  [
    "no catches, no ground",
    calibrationByCatch,
    [{ catches: [], area: quantity(0, "ft2"), nozzles: 0, outOf: 0 }],
    [
      "missing catches: at least one reading [an empty list]",
      "range area: more than zero [0 ft2]",
      "range nozzles: a whole number, 1 or more [0]",
      "range outOf: a whole number, 1 or more [0]",
    ],
  ],
  [
    "catches of none, of oil, and not there",
    calibrationByCatch,
    [{ catches: [ounces(0), quantity(1, "fl oz", "N"), undefined], area }],
    [
      "range catches[0]: more than zero [0 fl oz of water]",
      "substance/mismatch catches[1]: a quantity of spray, of water, or of undiluted product [1 fl oz of N]",
      "missing catches[2]: a volume, such as 2 gal or 8 L [undefined]",
    ],
  ],
  [
    "catches of water and of spray",
    calibrationByCatch,
    [{ catches: [ounces(9), quantity(9, "fl oz", "spray")], area }],
    ["substance/mismatch catches[1]: a quantity of water [9 fl oz of spray]"],
  ],
  [
    "fewer nozzles than were caught",
    calibrationByCatch,
    [{ catches: [ounces(9), ounces(9)], area, outOf: 1 }],
    ["range outOf: 2 or more, which were caught [1]"],
  ],
  [
    "ground told twice",
    calibrationByCatch,
    [{ catches: [ounces(9)], area, course, width }],
    ["conflict area: an area, or a course and a width, but not both [2000 ft2]"],
  ],
  [
    "ground told twice, by a course",
    calibrationByCatch,
    [{ catches: [ounces(9)], area, course }],
    ["conflict area: an area, or a course and a width, but not both [2000 ft2]"],
  ],
  [
    "ground told twice, by a width",
    calibrationByCatch,
    [{ catches: [ounces(9)], area, width }],
    ["conflict area: an area, or a course and a width, but not both [2000 ft2]"],
  ],
  [
    "a width beside the course of an ounce",
    calibrationByCatch,
    [{ catches: [ounces(9)], course: catchCourse({ width: inches(20) }), width }],
    ["conflict width: no width, because the course of catchCourse has its area [20 in]"],
  ],
  [
    "a course of an ounce without ground",
    calibrationByCatch,
    [{ catches: [ounces(9)], course: { type: "catch-course", area: quantity(0, "ft2") } }],
    ["range course.area: more than zero [0 ft2]"],
  ],
  [
    "a course of none and a width of none",
    calibrationByCatch,
    [{ catches: [ounces(9)], course: quantity(0, "ft"), width: quantity(0, "in") }],
    ["range course: more than zero [0 ft]", "range width: more than zero [0 in]"],
  ],
  [
    "a time without runs",
    calibrationByCatch,
    [{ catches: [ounces(9)], area, catchTime: seconds(0) }],
    ["range catchTime: more than zero [0 s]", "missing times: the times of the runs [undefined]"],
  ],
  [
    "runs without a time",
    calibrationByCatch,
    [{ catches: [ounces(9)], area, times: [seconds(0)] }],
    ["missing catchTime: a time, such as 20 min or 2 h [undefined]", "range times[0]: more than zero [0 s]"],
  ],
  [
    "errors by wrong words",
    calibrationByCatch,
    [{ catches: [ounces(9)], area, errors: { volum: percent(1) } }],
    ['type errors.volum: one of the fields volume, area, time [a field "volum"] volume?'],
  ],
  [
    "errors below nothing",
    calibrationByCatch,
    [{ catches: [ounces(9)], area, errors: { volume: percent(-1), area: percent(-1), time: percent(-1) } }],
    [
      "range errors.volume: zero or more [-1 %]",
      "range errors.area: zero or more [-1 %]",
      "range errors.time: zero or more [-1 %]",
    ],
  ],
  [
    "very many catches",
    calibrationByCatch,
    [{ catches: Array.from({ length: 1001 }, () => ounces(9)), area }],
    ["range catches: 1000 or less [a list of 1001]"],
  ],
  [
    "nothing refilled",
    calibrationByRefill,
    [{}],
    [
      "missing refills: a list with at least one reading [undefined]",
      "missing area: an area, or a course and a width [undefined]",
    ],
  ],
  [
    "an error of the time of refills",
    calibrationByRefill,
    [{ refills: [water(2)], area, errors: { time: percent(1) } }],
    ['type errors.time: one of the fields volume, area [a field "time"]'],
  ],
  [
    "no refills",
    calibrationByRefill,
    [{ refills: [], area }],
    ["missing refills: at least one reading [an empty list]"],
  ],
  [
    "a refill of none",
    calibrationByRefill,
    [{ refills: [water(2), water(0)], area }],
    ["range refills[1]: more than zero [0 gal of water]"],
  ],
  [
    "nothing of a controller",
    rateControllerCheck,
    [{}],
    [
      "missing displayed: a volume, such as 2 gal or 8 L [undefined]",
      "missing measured: a measured volume [undefined]",
    ],
  ],
  [
    "what is null of a controller",
    rateControllerCheck,
    [{ displayed: null, measured: null }],
    [
      "missing displayed: a volume, such as 2 gal or 8 L [null]",
      "missing measured: a measured volume [null]",
    ],
  ],
  [
    "nothing displayed or measured",
    rateControllerCheck,
    [{ displayed: water(0), measured: water(0), tolerance: percent(0), meterNumber: 0 }],
    [
      "range displayed: more than zero [0 gal of water]",
      "range measured: more than zero [0 gal of water]",
      "range tolerance: more than zero [0 %]",
      "range meterNumber: more than 0 [0]",
    ],
  ],
  [
    "a tolerance past all",
    rateControllerCheck,
    [{ displayed: water(50), measured: water(50), tolerance: percent(101) }],
    ["range tolerance: 100 % or less [101 %]"],
  ],
  [
    "spray displayed and water measured",
    rateControllerCheck,
    [{ displayed: quantity(50, "gal", "spray"), measured: water(50) }],
    ["substance/mismatch measured: a volume of spray, as displayed [50 gal of water]"],
  ],
  [
    "nothing of a sight gauge",
    usedBySightGauge,
    [{}],
    [
      "missing before: a volume, such as 2 gal or 8 L [undefined]",
      "missing after: the reading after the run [undefined]",
    ],
  ],
  [
    "what is null of a sight gauge",
    usedBySightGauge,
    [{ before: null, after: null }],
    [
      "missing before: a volume, such as 2 gal or 8 L [null]",
      "missing after: the reading after the run [null]",
    ],
  ],
  [
    "a gauge below nothing",
    usedBySightGauge,
    [{ before: water(0), after: water(-1) }],
    ["range before: more than zero [0 gal of water]", "range after: zero or more [-1 gal of water]"],
  ],
  [
    "spray before and water after",
    usedBySightGauge,
    [{ before: quantity(50, "gal", "spray"), after: water(40) }],
    ["substance/mismatch after: a volume of spray [40 gal of water]"],
  ],
  [
    "a gauge that stands still",
    usedBySightGauge,
    [{ before: water(50), after: water(50) }],
    ["conflict after: less than before: nothing was used, or the readings are swapped [50 gal of water]"],
  ],
  [
    "nothing to fill",
    timeToFill,
    [{}],
    [
      "missing volume: a volume, such as 2 gal or 8 L [undefined]",
      "missing flow: a flow, such as 0.4 gal/min or 1.5 L/min [undefined]",
    ],
  ],
  [
    "no jug and no flow",
    timeToFill,
    [{ volume: water(0), flow: quantity(0, "gal/min", "water") }],
    ["range volume: more than zero [0 gal of water]", "range flow: more than zero [0 gal/min of water]"],
  ],
  [
    "a jug of water by a flow of spray",
    timeToFill,
    [{ volume: water(1), flow: quantity(1, "gal/min", "spray") }],
    ["substance/mismatch flow: a flow of water, as the jug holds [1 gal/min of spray]"],
  ],
  ["nothing weighed", weighedCatch, [{}], ["missing full: a weight, such as 50 lb or 20 kg [undefined]"]],
  [
    "a weight of none",
    weighedCatch,
    [{ full: quantity(0, "g", "water"), tare: quantity(-1, "g"), density: quantity(0, "kg/L") }],
    [
      "range full: more than zero [0 g of water]",
      "range tare: zero or more [-1 g]",
      "range density: more than zero [0 kg/L]",
    ],
  ],
  [
    "spray weighed without a density",
    weighedCatch,
    [{ full: quantity(900, "g", "spray") }],
    ["missing density: the density of the spray, because only water is known to weigh 1 kg/L [undefined]"],
  ],
  [
    "no more than the jug",
    weighedCatch,
    [{ full: quantity(100, "g", "water"), tare: quantity(0.1, "kg") }],
    ["range full: more than 100 g, which the empty jug weighs [100 g of water]"],
  ],
  [
    "catches past all numbers",
    calibrationByCatch,
    [{ catches: [quantity(1e300, "gal", "water")], area, nozzles: 1e10 }],
    ["not-finite catches: a finite number [infinity]"],
  ],
  [
    "a jug past all numbers",
    weighedCatch,
    [{ full: quantity(1.7e308, "g", "water"), density: quantity(0.5, "kg/L") }],
    ["not-finite full: a finite number [infinity]"],
  ],
];

refusalsOf("what is refused of calibration", rows);
