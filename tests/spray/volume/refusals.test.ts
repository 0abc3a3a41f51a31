import { quantity } from "../../../src/quantity/index.js";
import {
  applicationVolume,
  asFinishedSpray,
  bandFieldRate,
  bandTreatedArea,
  bandTreatedRate,
  boomHeight,
  boomWidth,
  courseTime,
  densityConversionFactor,
  fanOverlap,
  fanWidth,
  groundSpeed,
  nozzleFlow,
  solutionEquivalent,
  sprayTime,
  sprayWidth,
  travelSpeed,
  waterEquivalent,
  widthPerNozzle,
} from "../../../src/spray/index.js";
import { type Refusal, refusalsOf } from "../../told.js";
import { gpa, gpm, inches, mph, percent, seconds } from "../helpers.js";

const water = quantity(0.4, "gal/min", "water");
const density = quantity(10.65, "lb/gal");
const band = { band: inches(12), row: inches(36) };
const estimate = { type: "estimate", version: 1, value: gpa(20), standardError: gpa(1) };
const deg = (value: number) => quantity(value, "deg");
const job = {
  area: quantity(10, "acre"),
  speed: mph(4),
  swath: quantity(20, "ft"),
  efficiency: percent(70),
  applicationVolume: gpa(20),
  capacity: quantity(100, "gal", "spray"),
  refill: quantity(15, "min"),
};

const rows: readonly Refusal[] = [
  [
    "nothing for a volume",
    applicationVolume,
    [{}],
    [
      "missing flow: a flow, such as 0.4 gal/min or 1.5 L/min [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing width: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "no flow, no speed, no width",
    applicationVolume,
    [{ flow: gpm(0), speed: mph(0), width: inches(0) }],
    [
      "range flow: more than zero [0 gal/min of spray]",
      "range speed: more than zero [0 mi/h]",
      "range width: more than zero [0 in]",
    ],
  ],
  [
    "a flow of fuel",
    applicationVolume,
    [{ flow: quantity(1, "gal/min", "N"), speed: mph(4), width: inches(20) }],
    ["substance/mismatch flow: a quantity of spray, of water, or of undiluted product [1 gal/min of N]"],
  ],
  [
    "nothing that is null for a volume",
    applicationVolume,
    [{ flow: null, speed: null, width: null }],
    [
      "missing flow: a flow, such as 0.4 gal/min or 1.5 L/min [null]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [null]",
      "missing width: a length, such as 10 ft or 3 m [null]",
    ],
  ],
  [
    "nothing for a flow",
    nozzleFlow,
    [{}],
    [
      "missing applicationVolume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing width: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "no volume, no speed, no width",
    nozzleFlow,
    [{ applicationVolume: gpa(0), speed: mph(0), width: inches(0) }],
    [
      "range applicationVolume: more than zero [0 gal/acre of spray]",
      "range speed: more than zero [0 mi/h]",
      "range width: more than zero [0 in]",
    ],
  ],
  [
    "nothing for a speed",
    travelSpeed,
    [{}],
    [
      "missing flow: a flow, such as 0.4 gal/min or 1.5 L/min [undefined]",
      "missing applicationVolume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing width: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a volume of water beside a flow of spray",
    travelSpeed,
    [{ flow: gpm(1), applicationVolume: quantity(20, "gal/acre", "water"), width: inches(20) }],
    ["substance/mismatch applicationVolume: a quantity of spray [20 gal/acre of water]"],
  ],
  [
    "nothing for a width",
    sprayWidth,
    [{}],
    [
      "missing flow: a flow, such as 0.4 gal/min or 1.5 L/min [undefined]",
      "missing applicationVolume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
    ],
  ],
  [
    "a flow of water beside a volume of spray",
    sprayWidth,
    [{ flow: water, applicationVolume: gpa(20), speed: mph(4) }],
    ["substance/mismatch applicationVolume: a quantity of water [20 gal/acre of spray]"],
  ],
  [
    "nothing of a band",
    bandFieldRate,
    [{}],
    [
      "missing band: a length, such as 10 ft or 3 m [undefined]",
      "missing row: a length, such as 10 ft or 3 m [undefined]",
      "missing rate: a rate per area [undefined]",
    ],
  ],
  ["a rate that is null", bandFieldRate, [{ ...band, rate: null }], ["missing rate: a rate per area [null]"]],
  [
    "less than no rate in a band",
    bandFieldRate,
    [{ ...band, rate: gpa(-1) }],
    ["range rate: zero or more [-1 gal/acre of spray]"],
  ],
  [
    "a band wider than the row",
    bandTreatedRate,
    [{ rate: gpa(20), band: inches(40), row: quantity(3, "ft") }],
    ["range band: 3 ft or less, the row width [40 in]"],
  ],
  [
    "an amount in place of a rate",
    bandTreatedRate,
    [{ ...band, rate: quantity(1, "gal", "spray") }],
    [
      "unit/mismatch rate: a weight over an area or a volume over an area, such as 1 lb/1000 ft2 or 1 gal/1000 ft2 [1 gal of spray]",
    ],
  ],
  [
    "nothing of the ground of bands",
    bandTreatedArea,
    [{}],
    [
      "missing band: a length, such as 10 ft or 3 m [undefined]",
      "missing row: a length, such as 10 ft or 3 m [undefined]",
      "missing area: an area [undefined]",
    ],
  ],
  [
    "ground that is treated area already",
    bandTreatedArea,
    [{ ...band, area: quantity(1, "acre", "treated") }],
    ["conflict area: the area of the field: this one is treated area already [1 acre of treated]"],
  ],
  [
    "ground of seed",
    bandTreatedArea,
    [{ ...band, area: quantity(1, "acre", "seed") }],
    ["substance/mismatch area: an area of none, treated, gross or plan [1 acre of seed]"],
  ],
  [
    "no density",
    densityConversionFactor,
    [undefined],
    ["missing density: a weight per volume, such as 10 lb/gal or 1.2 kg/L [undefined]"],
  ],
  [
    "densities of none",
    densityConversionFactor,
    [quantity(0, "lb/gal"), quantity(0, "lb/gal")],
    ["range density: more than zero [0 lb/gal]", "range water: more than zero [0 lb/gal]"],
  ],
  [
    "nothing for water",
    waterEquivalent,
    [undefined, undefined],
    [
      "missing wanted: a flow or a volume per area [undefined]",
      "missing density: a weight per volume, such as 10 lb/gal or 1.2 kg/L [undefined]",
    ],
  ],
  [
    "water for water",
    waterEquivalent,
    [water, density],
    ["substance/mismatch wanted: a quantity of spray [0.4 gal/min of water]"],
  ],
  [
    "a volume for water",
    waterEquivalent,
    [quantity(1, "gal", "spray"), density],
    [
      "unit/mismatch wanted: a flow or a volume over an area, such as 0.4 gal/min or 1 gal/1000 ft2 [1 gal of spray]",
    ],
  ],
  [
    "nothing for a solution",
    solutionEquivalent,
    [null, density],
    ["missing caught: a flow or a volume per area [null]"],
  ],
  [
    "spray for a solution",
    solutionEquivalent,
    [gpm(0), quantity(0, "lb/gal")],
    [
      "substance/mismatch caught: a quantity of water [0 gal/min of spray]",
      "range density: more than zero [0 lb/gal]",
    ],
  ],
  [
    "nothing measured",
    asFinishedSpray,
    [undefined],
    [
      "missing measured: a volume per area or a flow, an estimate of one, or a calibration, with its rate [undefined]",
    ],
  ],
  [
    "a measure of product",
    asFinishedSpray,
    [quantity(20, "gal/acre", "product")],
    [
      "substance/mismatch measured: a volume per area or a flow of spray, or of the water of a calibration [20 gal/acre of product]",
    ],
  ],
  [
    "an amount of spray",
    asFinishedSpray,
    [quantity(20, "gal", "spray")],
    [
      "unit/mismatch measured: a volume over an area or a flow, such as 1 gal/1000 ft2 or 0.4 gal/min [20 gal of spray]",
    ],
  ],
  [
    "a density that is none",
    asFinishedSpray,
    [water, { density: quantity(0, "lb/gal") }],
    ["range density: more than zero [0 lb/gal]"],
  ],
  [
    "a density beside the spray itself",
    asFinishedSpray,
    [gpa(20), { density }],
    ["conflict density: no density, because the measurement was made with the spray itself [10.65 lb/gal]"],
  ],
  [
    "an option that is not known",
    asFinishedSpray,
    [water, { densities: density }],
    ['type options.densities: one of the fields density [a field "densities"]'],
  ],
  [
    "an estimate without its parts",
    asFinishedSpray,
    [{ type: "estimate" }],
    [
      "missing measured.value: a volume over an area or a flow, such as 1 gal/1000 ft2 or 0.4 gal/min [undefined]",
    ],
  ],
  [
    "an estimate with less than no error",
    asFinishedSpray,
    [{ ...estimate, standardError: gpa(-1), degreesOfFreedom: 0.5 }],
    [
      "range measured.standardError: zero or more [-1 gal/acre of spray]",
      "range measured.degreesOfFreedom: 1 or more [0.5]",
    ],
  ],
  [
    "an error of another kind",
    asFinishedSpray,
    [{ ...estimate, standardError: quantity(1, "gal/acre", "water") }],
    ["substance/mismatch measured.standardError: a quantity of spray [1 gal/acre of water]"],
  ],
  [
    "a calibration whose rate is none",
    asFinishedSpray,
    [{ rate: gpa(0) }],
    ["range measured.rate: more than zero [0 gal/acre of spray]"],
  ],
  [
    "a calibration whose estimate is none",
    asFinishedSpray,
    [{ rate: gpa(20), estimate: { ...estimate, value: gpa(0) } }],
    ["range measured.estimate.value: more than zero [0 gal/acre of spray]"],
  ],
  [
    "a record without a rate",
    asFinishedSpray,
    [{ method: "refill" }],
    [
      "type measured: a volume per area or a flow, an estimate of one, or a calibration, with its rate [a record]",
    ],
  ],
  [
    "nothing for a ground speed",
    groundSpeed,
    [{}],
    [
      "missing course: a length, such as 10 ft or 3 m [undefined]",
      "missing times: a list with at least one reading [undefined]",
    ],
  ],
  [
    "no times",
    groundSpeed,
    [{ course: quantity(100, "ft"), times: [] }],
    ["missing times: at least one reading [an empty list]"],
  ],
  [
    "times of none and another average",
    groundSpeed,
    [{ course: quantity(0, "ft"), times: [seconds(0), undefined], average: "median" }],
    [
      'type average: one of "times", "speeds" ["median"]',
      "range course: more than zero [0 ft]",
      "range times[0]: more than zero [0 s]",
      "missing times[1]: a time, such as 20 min or 2 h [undefined]",
    ],
  ],
  [
    "nothing for the time of a course",
    courseTime,
    [{}],
    [
      "missing course: a length, such as 10 ft or 3 m [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
    ],
  ],
  [
    "a course of none",
    courseTime,
    [{ course: quantity(0, "ft"), speed: mph(0) }],
    ["range course: more than zero [0 ft]", "range speed: more than zero [0 mi/h]"],
  ],
  [
    "nothing of a row",
    widthPerNozzle,
    [{}],
    [
      "missing row: a length, such as 10 ft or 3 m [undefined]",
      "missing nozzles: a whole number, 1 or more [undefined]",
    ],
  ],
  [
    "a row of none with part of a nozzle",
    widthPerNozzle,
    [{ row: inches(0), nozzles: 1.5 }],
    ["range row: more than zero [0 in]", "range nozzles: a whole number, 1 or more [1.5]"],
  ],
  [
    "nothing of a boom",
    boomWidth,
    [{}],
    [
      "missing nozzles: a whole number, 1 or more [undefined]",
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "no nozzle on a boom",
    boomWidth,
    [{ nozzles: 0, spacing: inches(0) }],
    ["range nozzles: a whole number, 1 or more [0]", "range spacing: more than zero [0 in]"],
  ],
  [
    "nozzles as a text",
    boomWidth,
    [{ nozzles: "12", spacing: inches(20) }],
    ['type nozzles: a whole number, 1 or more ["12"]'],
  ],
  [
    "nothing of a fan",
    fanWidth,
    [{}],
    [
      "missing angle: an angle, such as 30 deg [undefined]",
      "missing height: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "a fan of no angle",
    fanWidth,
    [{ angle: deg(0), height: inches(0) }],
    ["range angle: more than zero [0 deg]", "range height: more than zero [0 in]"],
  ],
  [
    "a fan that is flat",
    fanWidth,
    [{ angle: deg(180), height: inches(20) }],
    ["range angle: less than 180 deg [180 deg]"],
  ],
  [
    "nothing of an overlap",
    fanOverlap,
    [{}],
    [
      "missing fan: a length, such as 10 ft or 3 m [undefined]",
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
    ],
  ],
  [
    "fans of none",
    fanOverlap,
    [{ fan: inches(0), spacing: inches(0) }],
    ["range fan: more than zero [0 in]", "range spacing: more than zero [0 in]"],
  ],
  [
    "nothing of a height",
    boomHeight,
    [{}],
    [
      "missing angle: an angle, such as 30 deg [undefined]",
      "missing spacing: a length, such as 10 ft or 3 m [undefined]",
      "missing overlap: a share of the spacing, 0 % for fans that just meet [undefined]",
    ],
  ],
  [
    "an overlap that is null",
    boomHeight,
    [{ angle: deg(110), spacing: inches(20), overlap: null }],
    ["missing overlap: a share of the spacing, 0 % for fans that just meet [null]"],
  ],
  [
    "less than no overlap",
    boomHeight,
    [{ angle: deg(200), spacing: inches(0), overlap: percent(-1) }],
    [
      "range angle: less than 180 deg [200 deg]",
      "range spacing: more than zero [0 in]",
      "range overlap: zero or more [-1 %]",
    ],
  ],
  [
    "nothing of a job",
    sprayTime,
    [{}],
    [
      "missing area: an area [undefined]",
      "missing swath: a length, such as 10 ft or 3 m [undefined]",
      "missing speed: a speed or a depth per time, such as 3 mi/h or 5 mm/h [undefined]",
      "missing efficiency: a share, 100 % for the theory [undefined]",
      "missing applicationVolume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing capacity: a volume, such as 2 gal or 8 L [undefined]",
      "missing refill: how long a trip to the fill takes, 0 min where it takes none [undefined]",
    ],
  ],
  [
    "a job of nothing",
    sprayTime,
    [
      {
        ...job,
        area: quantity(0, "acre"),
        speed: mph(0),
        applicationVolume: gpa(0),
        capacity: quantity(0, "gal", "spray"),
        refill: quantity(-1, "min"),
      },
    ],
    [
      "range area: more than zero [0 acre]",
      "range speed: more than zero [0 mi/h]",
      "range applicationVolume: more than zero [0 gal/acre of spray]",
      "range capacity: more than zero [0 gal of spray]",
      "range refill: zero or more [-1 min]",
    ],
  ],
  [
    "a rate in a band past all numbers",
    bandTreatedRate,
    [{ rate: gpa(1e300), band: inches(1e-10), row: inches(1) }],
    ["not-finite rate: a finite number [infinity]"],
  ],
  [
    "water past all numbers",
    waterEquivalent,
    [gpm(1.7e308), quantity(20, "lb/gal")],
    ["not-finite wanted: a finite number [infinity]"],
  ],
  [
    "a solution past all numbers",
    solutionEquivalent,
    [quantity(1.7e308, "gal/min", "water"), quantity(5, "lb/gal")],
    ["not-finite caught: a finite number [infinity]"],
  ],
  [
    "spray past all numbers",
    asFinishedSpray,
    [quantity(1.7e308, "gal/min", "water"), { density: quantity(5, "lb/gal") }],
    ["not-finite measured: a finite number [infinity]"],
  ],
  [
    "a flow of what is in a product",
    applicationVolume,
    [{ flow: quantity(1, "gal/min", "N/product"), speed: mph(4), width: inches(20) }],
    [
      "substance/mismatch flow: a quantity of spray, of water, or of undiluted product [1 gal/min of N/product]",
    ],
  ],
  [
    "a flow of product to water",
    applicationVolume,
    [{ flow: quantity(1, "gal/min", "product/water"), speed: mph(4), width: inches(20) }],
    [
      "substance/mismatch flow: a quantity of spray, of water, or of undiluted product [1 gal/min of product/water]",
    ],
  ],
  [
    "a null in place of a measure",
    asFinishedSpray,
    [null],
    [
      "type measured: a volume per area or a flow, an estimate of one, or a calibration, with its rate [null]",
    ],
  ],
  [
    "a rate that is not there",
    bandFieldRate,
    [{ ...band, rate: undefined }],
    ["missing rate: a rate per area [undefined]"],
  ],
];

refusalsOf("what is refused of volumes", rows);
