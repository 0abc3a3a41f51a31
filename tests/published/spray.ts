import {
  amountFor,
  applicationVolume,
  areaPerTank,
  calibrationByCatch,
  calibrationByRefill,
  catchCourse,
  checkAgainstTarget,
  courseTime,
  densityConversionFactor,
  driftableFines,
  effectiveFieldCapacity,
  flowAtPressure,
  groundSpeed,
  mean,
  money,
  nozzleCheck,
  nozzleFlow,
  nozzleSizes,
  pressureForFlow,
  pressureForOutput,
  pressureForSpeed,
  quantity,
  rateAtSpeed,
  ratedFlow,
  runLength,
  testArea,
  waterEquivalent,
} from "../../src/index.js";
import { to } from "./answer.js";
import type { LeftOut, PublishedCheck, Source } from "./check.js";
import { sprayFieldChecks } from "./spray-field.js";
import { spraySaltChecks } from "./spray-salts.js";

const read = "read" as const;
const cornell: Source = {
  title: "Selecting nozzles, boom sprayers (Grape guidelines 7.6)",
  publisher: "Cornell Cooperative Extension",
  year: 2024,
  where: "step 1 example",
  url: "https://cropandpestguides.cce.cornell.edu/Guidelines/2024/Grapes/index63.aspx",
};
const mesa = (title: string, where: string): Source => ({
  title,
  publisher: "Mesa County (Colorado) Weed and Pest",
  where,
});
const alberta = (where: string): Source => ({
  title: "Crop protection (Agdex 606-1)",
  publisher: "Alberta Agriculture",
  where,
});
const stewardship = (title: string): Source => ({
  title,
  publisher: "Pesticide Environmental Stewardship (university consortium)",
  where: "example",
});
const lsu: Source = { title: "Ounces equal gallons: sprayer calibration", publisher: "LSU AgCenter" };
const inches = (value: number) => quantity(value, "in");
const feet = (value: number) => quantity(value, "ft");
const seconds = (value: number) => quantity(value, "s");
const mph = (value: number) => quantity(value, "mi/h");
const psi = (value: number) => quantity(value, "psi");
const tip = (flow: number, pressure: number) => ({
  flow: quantity(flow, "gal/min", "water"),
  pressure: psi(pressure),
  lowest: psi(10),
  highest: psi(120),
});

/** Spacing or row width in inches and printed course in ft; the marked ones are cut, the others rounded. */
const courses = (rows: readonly (readonly [number, number, "cut"?])[]) => ({
  answers: rows.map(([width, course, printing]) =>
    to(`ft at ${width} in`, course, 1, printing === undefined ? {} : { printing }),
  ),
  compute: () => rows.map(([width]) => catchCourse({ width: inches(width) }).course.in("ft")),
});

const wrongExam = (entry: string, source: Source): PublishedCheck => ({
  entry,
  formulas: ["applicationVolume"],
  source,
  reached: read,
  given: "20 fl oz/min, 48 in, 5 mph",
  answers: [
    to("gal/acre", 327, 1, {
      wrong: { right: 4, why: "5 mph was put in where the page asks for mph x 88: 88 times too much" },
    }),
  ],
  compute: () => [
    applicationVolume({ flow: quantity(20, "fl oz/min", "water"), speed: mph(5), width: inches(48) }).in(
      "gal/acre",
    ),
  ],
});

const chart: readonly (readonly [number, number, number?])[] = [
  [7, 408, 411],
  [8, 360],
  [9, 320],
  [10, 288],
  [11, 262],
  [12, 240],
];
const densities: readonly (readonly [number, number, number])[] = [
  [6.6, 0.79, 0.89],
  [7, 0.84, 0.92],
  [8, 0.96, 0.98],
  [8.34, 1, 1],
  [9, 1.08, 1.04],
  [10, 1.2, 1.1],
  [10.65, 1.28, 1.13],
  [11, 1.32, 1.15],
  [12, 1.44, 1.2],
  [14, 1.68, 1.3],
  [16, 1.92, 1.39],
];
const capacities: readonly (readonly [number, number, number, number])[] = [
  [40, 6, 70, 20.4],
  [60, 6, 68, 29.7],
  [60, 12, 68, 59.3],
  [80, 6, 68, 39.6],
  [80, 12, 68, 79.1],
  [15, 5, 63, 5.7],
  [20, 6, 63, 9.2],
  [30, 6, 60, 13.1],
  [36, 5, 60, 13.1],
  [45, 5, 60, 16.4],
];
/** Band in inches, then ounces caught over 300 ft and printed gal/acre; the last figure is the right one. */
const bands: readonly (readonly [number, readonly (readonly [number, number, number?])[]])[] = [
  [
    9,
    [
      [8, 12.1],
      [10, 15.1],
      [14, 21.2],
      [16, 24.2],
      [18, 27.2],
      [20, 30.2],
      [22, 33.3],
      [24, 36.3],
      [26, 39.3],
    ],
  ],
  [
    12,
    [
      [10, 11.3],
      [12, 13.6],
      [14, 15.9],
      [16, 18.2],
      [18, 20.5, 20.4],
      [20, 22.7],
      [22, 25],
      [24, 27.2],
      [26, 29.5],
      [28, 31.8],
      [30, 34],
      [32, 36.3],
    ],
  ],
  [
    15,
    [
      [12, 10.9],
      [14, 12.7],
      [16, 14.5],
      [18, 16.3],
      [20, 18.2],
      [24, 21.8],
      [26, 23.6],
      [28, 25.4],
      [30, 27.2],
      [32, 29],
    ],
  ],
  [
    18,
    [
      [14, 10.6],
      [16, 12.1],
      [18, 13.6],
      [20, 15.1],
      [22, 16.6],
      [24, 18.2],
      [26, 19.7],
      [28, 21.2],
      [30, 22.7],
      [32, 24.2],
    ],
  ],
];
const bandCells = bands.flatMap(([band, cells]) => cells.map((cell) => [band, ...cell] as const));
/** Size, printed L/min at 2 bar, printed L/ha at 6 km/h and 50 cm; the last figure is the right flow. */
const twoBar: readonly (readonly [string, number, number, number?])[] = [
  ["01", 0.33, 65],
  ["015", 0.49, 98],
  ["02", 0.65, 131],
  ["025", 0.98, 164, 0.82],
  ["03", 0.98, 196],
  ["04", 1.31, 261],
  ["05", 1.63, 327],
  ["06", 1.96, 392],
  ["08", 2.61, 523],
];
const atTwoBar = (code: string) => {
  const rating = { ...ratedFlow(code), lowest: quantity(1, "bar"), highest: quantity(6, "bar") };
  return flowAtPressure(rating, quantity(2, "bar"));
};

/** Published examples of calibration, nozzles and speed. */
export const sprayChecks: readonly PublishedCheck[] = [
  {
    entry: "spray-001",
    formulas: ["nozzleFlow"],
    source: cornell,
    reached: read,
    given: "20 gal/acre, 4 mph, 20 in",
    answers: [to("gal/min", 0.27, 0.01)],
    compute: () => [
      nozzleFlow({
        applicationVolume: quantity(20, "gal/acre", "spray"),
        speed: mph(4),
        width: inches(20),
      }).in("gal/min"),
    ],
  },
  {
    entry: "spray-003",
    formulas: ["applicationVolume"],
    source: mesa("Stationary calibration method for boom sprayers", "step 5"),
    reached: read,
    given: "1 gal/min at 1 mph on 1 in and on 1 ft",
    answers: [to("gal/acre on 1 in", 5940, 1), to("gal/acre on 1 ft", 495, 1)],
    compute: () =>
      [inches(1), feet(1)].map((width) =>
        applicationVolume({ flow: quantity(1, "gal/min", "spray"), speed: mph(1), width }).in("gal/acre"),
      ),
  },
  {
    entry: "spray-004",
    formulas: ["applicationVolume"],
    source: {
      title: "Sprayer calibration instructions",
      publisher: "Montrose County, Colorado",
      where: "boom sprayer example",
    },
    reached: read,
    given: "1.58 gal/min on a 12 ft swath at 88 ft/min",
    answers: [to("ft2/min", 1056, 1), to("gal/acre", 65.17, 0.01, { printing: "cut" })],
    compute: () => {
      const speed = quantity(88, "ft/min");
      const flow = quantity(1.58, "gal/min", "spray");
      return [
        speed.times(feet(12)).in("ft2/min"),
        applicationVolume({ flow, speed, width: feet(12) }).in("gal/acre"),
      ];
    },
  },
  {
    entry: "spray-006",
    formulas: ["rateAtSpeed"],
    source: {
      title: "The Calibration of Turfgrass Boom Sprayers and Spreaders",
      publisher: "NC State Extension",
      where: "sprayer speed",
      url: "https://content.ces.ncsu.edu/the-calibration-of-turfgrass-and-boom-sprayers-and-spreaders",
    },
    reached: read,
    given: "20 gal/acre at 3 mph, then 6 mph",
    answers: [to("gal/acre", 10, 1)],
    compute: () => [
      rateAtSpeed({
        rate: quantity(20, "gal/acre", "spray"),
        from: mph(3),
        to: mph(6),
        feed: "power-driven",
      }).in("gal/acre"),
    ],
  },
  {
    entry: "spray-007",
    formulas: ["rateAtSpeed"],
    source: {
      title: "Sprayer nozzle flow rate worksheet (G1270A)",
      publisher: "University of Missouri Extension",
      where: "field speed",
    },
    reached: read,
    given: "10 % less speed",
    answers: [to("% more, about", 10, 5)],
    compute: () => [
      rateAtSpeed({
        rate: quantity(100, "gal/acre", "spray"),
        from: mph(10),
        to: mph(9),
        feed: "power-driven",
      }).in("gal/acre") - 100,
    ],
    note: "The source says a similar over-application; it is 11.1 %.",
  },
  {
    entry: "spray-009",
    formulas: ["courseTime"],
    source: alberta("chart for 800 m"),
    reached: read,
    given: "800 m at 7 to 12 km/h",
    answers: chart.map(([speed, printed, right]) =>
      to(
        `s at ${speed} km/h`,
        printed,
        1,
        right === undefined ? {} : { wrong: { right, why: "6:51; 6:48 is 7.06 km/h" } },
      ),
    ),
    compute: () =>
      chart.map(([speed]) =>
        courseTime({ course: quantity(800, "m"), speed: quantity(speed, "km/h") }).in("s"),
      ),
  },
  {
    entry: "spray-010",
    formulas: ["nozzleCheck"],
    source: alberta("steps 4-5"),
    reached: read,
    given: "mean of 0.75 L/min, 5 % of it",
    answers: [to("L/min, low", 0.71, 0.01), to("L/min, high", 0.79, 0.01)],
    compute: () => {
      const catches = [0.74, 0.75, 0.76].map((value) => quantity(value, "L", "water"));
      const { band } = nozzleCheck({
        catches,
        time: quantity(1, "min"),
        ofMean: quantity(5, "%"),
        divisor: "n",
      });
      return [band.low.in("L/min"), band.high.in("L/min")];
    },
  },
  {
    entry: "spray-012",
    formulas: ["catchCourse"],
    source: lsu,
    reached: read,
    given: "1/128-acre course by nozzle spacing",
    ...courses([
      [30, 136],
      [28, 146],
      [26, 157],
      [24, 170],
      [22, 185, "cut"],
      [20, 204],
      [18, 227],
      [16, 255],
      [14, 291, "cut"],
      [12, 340],
      [10, 408],
    ]),
    note: "Printed from 340 ft2 in whole feet; the exact plot is 340.3125 ft2, so 22 and 14 in are one foot short.",
  },
  {
    entry: "spray-013",
    formulas: ["calibrationByCatch"],
    source: { ...lsu, where: "example 1" },
    reached: read,
    given: "14 fl oz from the two nozzles of a 40 in row, 102 ft",
    answers: [to("gal/acre", 14, 1)],
    compute: () => [
      calibrationByCatch({
        catches: [quantity(7, "fl oz", "water")],
        nozzles: 2,
        course: feet(102),
        width: inches(40),
      }).rate.in("gal/acre"),
    ],
  },
  {
    entry: "spray-015",
    formulas: ["areaPerTank"],
    source: mesa("How to calibrate a handgun", "example"),
    reached: read,
    given: "25 gal tank, 150 gal/acre",
    answers: [to("acre per tank", 1 / 6, 0.001)],
    compute: () => [
      areaPerTank({
        capacity: quantity(25, "gal", "spray"),
        applicationVolume: quantity(150, "gal/acre", "spray"),
      }).in("acre"),
    ],
    note: "The page words it as gal/acre over tank, which is 6 tanks per acre.",
  },
  {
    entry: "spray-016",
    formulas: ["runLength", "calibrationByRefill"],
    source: mesa("Refill method for boom sprayer calibration", "example"),
    reached: read,
    given: "20 ft swath; 4 gal on 1/10 acre",
    answers: [to("ft for 1 acre", 2178, 1), to("ft for 1/10 acre", 218, 1), to("gal/acre", 40, 1)],
    compute: () => [
      runLength({ area: quantity(1, "acre"), swath: feet(20) }).in("ft"),
      runLength({ area: quantity(0.1, "acre"), swath: feet(20) }).in("ft"),
      calibrationByRefill({
        refills: [quantity(4, "gal", "water")],
        course: feet(218),
        width: feet(20),
      }).rate.in("gal/acre"),
    ],
  },
  {
    entry: "spray-018",
    formulas: ["quantity", "testArea"],
    source: {
      title: "Math for pesticide applicators",
      publisher: "University of Nebraska-Lincoln",
      url: "https://pested.unl.edu/math",
    },
    reached: read,
    given: "1 mph; swaths and parts of a mile that make an acre",
    answers: [
      to("ft/min", 88, 1),
      to("ft/s", 1.46, 0.01, { printing: "cut" }),
      to("acre, 8.25 ft x 1 mile", 1, 0.01),
      to("acre, 16.5 ft x 1/2 mile", 1, 0.01),
      to("acre, 33 ft x 1/4 mile", 1, 0.01),
    ],
    compute: () => [
      mph(1).in("ft/min"),
      mph(1).in("ft/s"),
      ...(
        [
          [8.25, 1],
          [16.5, 0.5],
          [33, 0.25],
        ] as const
      ).map(([swath, miles]) => testArea({ swath: feet(swath), distance: quantity(miles, "mi") }).in("acre")),
    ],
  },
  {
    entry: "spray-019",
    formulas: ["groundSpeed"],
    source: {
      title: "Sprayer calibration: travel speed",
      publisher: "Cornell University extension",
      where: "formula, printed twice",
    },
    reached: read,
    given: "mph per ft/s, printed as 60/80",
    answers: [
      to("mph", 0.75, 0.0001, { wrong: { right: 0.6818, why: "60/88, not 60/80: speeds 10 % too high" } }),
    ],
    compute: () => [groundSpeed({ course: feet(1), times: [seconds(1)] }).in("mi/h")],
  },
  {
    entry: "spray-021",
    formulas: ["waterEquivalent"],
    source: {
      title: "Setting the sprayer flow rate for non-water solutions",
      publisher: "University of Nebraska-Lincoln CropWatch",
      year: 2016,
      where: "example 1",
    },
    reached: read,
    given: "20 gal/acre of 10.65 lb/gal",
    answers: [to("gal/acre of water", 22.6, 0.1)],
    compute: () => [
      waterEquivalent(quantity(20, "gal/acre", "spray"), quantity(10.65, "lb/gal")).in("gal/acre"),
    ],
  },
  {
    entry: "spray-023",
    formulas: ["densityConversionFactor"],
    source: {
      title: "Spraying solutions other than water",
      publisher: "University of Georgia Extension",
      where: "table 1",
    },
    reached: read,
    given: "solutions of 6.6 to 16 lb/gal, water 8.34",
    answers: densities.flatMap(([weight, gravity, factor]) => [
      to(`specific gravity at ${weight} lb/gal`, gravity, 0.01),
      to(`factor at ${weight} lb/gal`, factor, 0.01),
    ]),
    compute: () =>
      densities.flatMap(([weight]) => {
        const factor = densityConversionFactor(quantity(weight, "lb/gal"));
        return [factor ** 2, factor];
      }),
    note: "Another copy of the table prints 0.88 for the 0.98 at 8.0 lb/gal.",
  },
  {
    entry: "spray-024",
    formulas: ["catchCourse"],
    source: {
      title: "Boom Sprayer Calibration (FABE-520)",
      publisher: "Ohio State University Extension",
      year: 2016,
      where: "table 1",
      url: "https://ohioline.osu.edu/factsheet/fabe-520",
    },
    reached: read,
    given: "1/128-acre course by spacing",
    ...courses([
      [18, 227],
      [20, 204],
      [22, 185, "cut"],
      [24, 170],
      [26, 157],
      [28, 146],
      [30, 136],
      [32, 127, "cut"],
      [34, 120],
      [36, 113],
      [38, 107],
      [40, 102],
    ]),
  },
  {
    entry: "spray-025",
    formulas: ["catchCourse", "calibrationByCatch"],
    source: {
      title: "Calibrating Turfgrass Chemical Application Equipment (Bulletin 817)",
      publisher: "Ohio State University Extension",
      year: 2000,
      where: "boom sprayers, method I",
    },
    reached: read,
    given: "80 fl oz a nozzle on the 1/128-acre course",
    answers: [to("gal/acre", 80, 1)],
    compute: () => {
      const { course } = catchCourse({ width: inches(20) });
      return [
        calibrationByCatch({ catches: [quantity(80, "fl oz", "water")], course, width: inches(20) }).rate.in(
          "gal/acre",
        ),
      ];
    },
  },
  {
    entry: "spray-027",
    formulas: ["catchCourse", "calibrationByCatch", "amountFor"],
    source: {
      title: "Backpack sprayer calibration worksheet",
      publisher: "NC State Extension",
      where: "steps 1-7",
      url: "https://christmastrees.ces.ncsu.edu/backpack-sprayer-calibration-worksheet/",
    },
    reached: read,
    given: "6 ft, 16 and 18 s, 7.5 fl oz; 8 fl oz/acre; 3 gal load",
    answers: [
      to("course, ft", 57, 1),
      to("gal/acre", 7.5, 0.1),
      to("fl oz/gal", 1.06, 0.01, { printing: "cut" }),
      to("fl oz a load", 3.2, 0.1),
      to("mL a load", 96, 1, { wrong: { right: 95, why: "takes 30 mL for the fluid ounce of 29.57 mL" } }),
    ],
    compute: () => {
      const { course } = catchCourse({ width: feet(6) });
      const { rate } = calibrationByCatch({
        catches: [quantity(7.5, "fl oz", "water")],
        catchTime: seconds(17),
        times: [seconds(16), seconds(18)],
        course,
        width: feet(6),
      });
      const volume = quantity(7.5, "gal/acre", "spray");
      const inSpray = quantity(8, "fl oz/acre", "product").per(volume);
      const load = amountFor({ rate: inSpray, form: "liquid", sprayVolume: quantity(3, "gal", "spray") });
      return [course.in("ft"), rate.in("gal/acre"), inSpray.in("fl oz/gal"), load.in("fl oz"), load.in("mL")];
    },
  },
  {
    entry: "spray-028",
    formulas: ["testArea", "calibrationByRefill", "checkAgainstTarget"],
    source: {
      title: "Applicator practice problems (forestry)",
      publisher: "unnamed extension slide set",
      where: "problem 3",
    },
    reached: read,
    given: "7.5 gal on 30 by 690 ft; 16 gal/acre wanted, 5 %",
    answers: [to("acre", 0.475, 0.001), to("gal/acre", 15.78, 0.01), to("within tolerance: 1", 1, 1)],
    compute: () => {
      const { rate } = calibrationByRefill({
        refills: [quantity(7.5, "gal", "spray")],
        course: feet(690),
        width: feet(30),
      });
      const target = quantity(16, "gal/acre", "spray");
      const { verdict } = checkAgainstTarget({ measured: rate, target, tolerance: quantity(5, "%") });
      return [
        testArea({ swath: feet(30), distance: feet(690) }).in("acre"),
        rate.in("gal/acre"),
        verdict === "within tolerance" ? 1 : 0,
      ];
    },
  },
  wrongExam("spray-030", {
    title: "Calculations page of a state exam study manual",
    publisher: "private study manual",
    where: "method I",
  }),
  wrongExam("soil-096", {
    title: "Florida pest control examinations, calculations page 213",
    publisher: "exam study book",
    where: "methods I and II",
  }),
  {
    entry: "spray-031",
    formulas: ["groundSpeed"],
    source: {
      title: "Calibration procedure for band application",
      publisher: "University of Idaho Extension (Minidoka)",
      where: "step 1",
    },
    reached: read,
    given: "mph per ft/s",
    answers: [to("mph", 0.682, 0.001)],
    compute: () => [groundSpeed({ course: feet(1), times: [seconds(1)] }).in("mi/h")],
  },
  {
    entry: "spray-033",
    formulas: ["mean", "groundSpeed"],
    source: {
      title: "Operator manual of a turf spray vehicle, calibration",
      publisher: "equipment maker",
      where: "steps 7-8",
    },
    reached: read,
    given: "21.6, 19.1 and 18.4 s over 150 ft or 45.7 m",
    answers: [to("s", 19.7, 0.1), to("mph", 5.2, 0.1), to("km/h", 8.4, 0.1)],
    compute: () => {
      const times = [21.6, 19.1, 18.4];
      const runs = times.map(seconds);
      return [
        mean(times),
        groundSpeed({ course: feet(150), times: runs }).in("mi/h"),
        groundSpeed({ course: quantity(45.7, "m"), times: runs }).in("km/h"),
      ];
    },
  },
  {
    entry: "spray-034",
    formulas: ["pressureForSpeed"],
    source: {
      title: "Crop News 844: spray speed and nozzle size",
      publisher: "Iowa State University Extension",
      url: "https://lib.dr.iastate.edu/cropnews/844/",
    },
    reached: read,
    given: "40 psi at 12 mph, then 15 mph",
    answers: [to("% more speed", 25, 1), to("% more pressure", 56, 1), to("psi", 63, 1)],
    compute: () => {
      const changed = pressureForSpeed({
        pressure: psi(40),
        from: mph(12),
        to: mph(15),
        lowest: psi(15),
        highest: psi(90),
      });
      return [(15 / 12 - 1) * 100, (changed.in("psi") / 40 - 1) * 100, changed.in("psi")];
    },
  },
  {
    entry: "spray-035",
    formulas: ["flowAtPressure"],
    source: { title: "Turf spraying guide", publisher: "equipment maker", where: "volume" },
    reached: read,
    given: "0.52 gal/min at 30 psi, then 60 psi",
    answers: [
      to("gal/min", 0.73, 0.01, { printing: "cut" }),
      to("% more, about", 40, 5),
      to("L/min at 30 psi", 1.4, 0.1, { wrong: { right: 2, why: "0.52 gal/min is 1.97 L/min" } }),
      to("L/min at 60 psi", 2, 1, { wrong: { right: 3, why: "0.73 gal/min is 2.8 L/min" } }),
    ],
    compute: () => {
      const rated = tip(0.52, 30);
      const flow = flowAtPressure(rated, psi(60));
      return [
        flow.in("gal/min"),
        (flow.in("gal/min") / 0.52 - 1) * 100,
        rated.flow.in("L/min"),
        flow.in("L/min"),
      ];
    },
  },
  {
    entry: "spray-036",
    formulas: ["pressureForFlow", "pressureForOutput"],
    source: {
      title: "Nozzles and pumps (teaching slides)",
      publisher: "unnamed extension slide set",
      where: "slides 14-17",
    },
    reached: read,
    given: "twice the flow",
    answers: [to("times the pressure", 4, 1), to("times the pressure, without a range", 4, 1)],
    compute: () => [
      pressureForFlow(tip(0.2, 20), quantity(0.4, "gal/min", "water")).in("psi") / 20,
      pressureForOutput({
        output: quantity(10, "gal/acre", "spray"),
        from: quantity(20, "psi"),
        wanted: quantity(20, "gal/acre", "spray"),
      }).value.in("psi") / 20,
    ],
  },
  {
    entry: "spray-038",
    formulas: ["money"],
    source: {
      title: "60 Ways Farmers Can Protect Surface Water, way 55",
      publisher: "University of Illinois Extension",
    },
    reached: read,
    given: "25 $/acre, 10 % too much, 1000 acres",
    answers: [to("$/acre", 2.5, 0.01), to("$", 2500, 1)],
    compute: () => {
      const perAcre = money(25, "USD").per(quantity(1, "acre")).times(0.1);
      return [perAcre.times(quantity(1, "acre")).value, perAcre.times(quantity(1000, "acre")).value];
    },
  },
  {
    entry: "spray-039",
    formulas: ["runLength", "mean", "calibrationByCatch"],
    source: stewardship("Spray gun calibration"),
    reached: read,
    given: "5 ft swath, 77, 79 and 78 s, 5.25 gal caught",
    answers: [
      to("ft for 1000 ft2", 200, 1),
      to("s", 78, 1),
      to("gal/1000 ft2", 5.25, 0.01),
      to("gal/acre", 228.7, 0.1),
    ],
    compute: () => {
      const course = runLength({ area: quantity(1000, "ft2"), swath: feet(5) });
      const { rate } = calibrationByCatch({
        catches: [quantity(5.25, "gal", "water")],
        catchTime: seconds(78),
        times: [77, 79, 78].map(seconds),
        course,
        width: feet(5),
      });
      return [course.in("ft"), mean([77, 79, 78]), rate.in("gal/1000 ft2"), rate.in("gal/acre")];
    },
  },
  {
    entry: "spray-040",
    formulas: ["quantity"],
    source: stewardship("Hose-end sprayer calibration"),
    reached: read,
    given: "2 qt a tree, 6 trees",
    answers: [to("qt", 12, 1), to("gal", 3, 1)],
    compute: () => {
      const total = quantity(2, "qt/count", "water").times(quantity(6, "count"));
      return [total.in("qt"), total.in("gal")];
    },
  },
  {
    entry: "spray-043",
    formulas: ["quantity"],
    source: {
      title: "Revisiting advice on fungicide application (water-carrier volume)",
      publisher: "Pennsylvania Turfgrass Council",
    },
    reached: read,
    given: "common turf spray volumes",
    answers: [
      to("gal/acre of 1 gal/1000 ft2", 43.56, 0.01),
      to("gal/acre of 2 gal/1000 ft2", 87.12, 0.01),
      to("gal/1000 ft2 of 50 gal/acre", 1.15, 0.01),
      to("gal/1000 ft2 of 100 gal/acre", 2.3, 0.1),
    ],
    compute: () => [
      quantity(1, "gal/1000 ft2").in("gal/acre"),
      quantity(2, "gal/1000 ft2").in("gal/acre"),
      quantity(50, "gal/acre").in("gal/1000 ft2"),
      quantity(100, "gal/acre").in("gal/1000 ft2"),
    ],
  },
  {
    entry: "spray-057",
    formulas: ["calibrationByCatch"],
    source: {
      title: "Chemical weed control (band-spray table)",
      publisher: "University of Florida Agricultural Experiment/Extension",
      url: "https://ufdcimages.uflib.ufl.edu/UF/00/06/75/48/00001/00006.txt",
    },
    reached: read,
    given: "ounces from one tip over 300 ft, by band width",
    answers: bandCells.map(([band, caught, printed, right]) =>
      to(
        `gal/acre, ${caught} oz on ${band} in`,
        printed,
        0.1,
        right === undefined ? {} : { wrong: { right, why: "20.42: the cell does not follow its neighbors" } },
      ),
    ),
    compute: () =>
      bandCells.map(([band, caught]) =>
        calibrationByCatch({
          catches: [quantity(caught, "fl oz", "water")],
          course: feet(300),
          width: inches(band),
        }).rate.in("gal/acre"),
      ),
  },
  {
    entry: "spray-067",
    formulas: ["effectiveFieldCapacity"],
    source: {
      title: "Estimating the Field Capacity of Farm Machines (A3-24, PM 696)",
      publisher: "Iowa State University Extension",
      where: "table 1, spreader rows",
    },
    reached: read,
    given: "width, speed and efficiency of ten machines",
    answers: capacities.map(([width, speed, efficiency, printed]) =>
      to(`acre/h, ${width} ft, ${speed} mph, ${efficiency} %`, printed, 0.1),
    ),
    compute: () =>
      capacities.map(([width, speed, efficiency]) =>
        effectiveFieldCapacity({
          swath: feet(width),
          speed: mph(speed),
          efficiency: quantity(efficiency, "%"),
        }).in("acre/h"),
      ),
  },
  {
    entry: "spray-072",
    kind: "transcription",
    formulas: ["ratedFlow"],
    source: {
      title: "Nozzles and Droplets: What Do the Colors Mean?",
      publisher: "University of Arizona Cooperative Extension",
      year: 2012,
      where: "table 1",
    },
    reached: read,
    given: "colors of tips, gal/min at 40 psi",
    answers: (
      [
        ["orange", 0.1],
        ["green", 0.15],
        ["yellow", 0.2],
        ["purple", 0.25],
        ["blue", 0.3],
        ["red", 0.4],
        ["brown", 0.5],
        ["grey", 0.6],
        ["white", 0.8],
      ] as const
    ).map(([color, flow]) => to(color, flow, 0.01)),
    compute: () =>
      ["orange", "green", "yellow", "purple", "blue", "red", "brown", "grey", "white"].map((color) => {
        const size = nozzleSizes.find((one) => one.color === color);
        return ratedFlow(size?.code ?? "", "40 psi").flow.in("gal/min");
      }),
  },
  {
    entry: "spray-073",
    formulas: ["ratedFlow", "flowAtPressure", "applicationVolume"],
    source: { title: "Nozzle coding", publisher: "horticultural supplier" },
    reached: read,
    given: "flow of each size at 2 bar, and L/ha at 6 km/h and 50 cm",
    answers: [
      ...twoBar.map(([code, flow, , right]) =>
        to(
          `L/min, ${code}`,
          flow,
          0.01,
          right === undefined
            ? {}
            : { wrong: { right, why: "the flow of the next size; the L/ha beside it fits 0.82" } },
        ),
      ),
      ...twoBar.map(([code, , volume]) => to(`L/ha, ${code}`, volume, 1)),
    ],
    compute: () => [
      ...twoBar.map(([code]) => atTwoBar(code).in("L/min")),
      ...twoBar.map(([code, , , right]) =>
        applicationVolume({
          // The cell of 025 was made from its flow, rounded to two places.
          flow: right === undefined ? atTwoBar(code) : quantity(right, "L/min", "water"),
          speed: quantity(6, "km/h"),
          width: quantity(50, "cm"),
        }).in("L/ha"),
      ),
    ],
  },
  {
    entry: "spray-076",
    kind: "transcription",
    formulas: ["driftableFines"],
    source: {
      title: "Spray application manual, module 4.2",
      publisher: "GRDC (Australia)",
      year: 2025,
      where: "spray quality classifications",
    },
    reached: read,
    given: "share below 150 micrometers: medium, coarse, very coarse",
    answers: [to("%, medium", 20, 1), to("%, coarse", 10, 1), to("%, very coarse", 5, 1)],
    compute: () => (["M", "C", "VC"] as const).map((code) => driftableFines(code)?.in("%") ?? Number.NaN),
  },
  {
    entry: "spray-077",
    formulas: ["quantity"],
    source: {
      title: "Unit lists of four sources",
      publisher: "UNL; PNW Extension; UF/IFAS; Virginia DWR",
      url: "https://pested.unl.edu/math",
    },
    reached: read,
    given: "liquid units",
    answers: [
      to("fl oz/gal", 128, 1),
      to("tbsp/fl oz", 2, 1),
      to("tsp/fl oz", 6, 1),
      to("mL/fl oz", 29.57, 0.01),
      to("mL/gal (UNL, PNW)", 3785, 1),
      to("mL/gal (UF)", 3786, 1, { wrong: { right: 3785, why: "3785.41" } }),
      to("mL/gal (Virginia)", 3800, 100),
      to("mL/tbsp", 15, 1),
      to("mL/tsp", 5, 1),
      to("ft2/acre", 43560, 1),
      to("acre/ha", 2.471, 0.001),
      to("pt/gal", 8, 1),
    ],
    compute: () => {
      const gallon = quantity(1, "gal");
      const ounce = quantity(1, "fl oz");
      const mL = gallon.in("mL");
      return [
        gallon.in("fl oz"),
        ounce.in("tbsp"),
        ounce.in("tsp"),
        ounce.in("mL"),
        mL,
        mL,
        mL,
        quantity(1, "tbsp").in("mL"),
        quantity(1, "tsp").in("mL"),
        quantity(1, "acre").in("ft2"),
        quantity(1, "ha").in("acre"),
        gallon.in("pt"),
      ];
    },
  },
  {
    entry: "soil-097",
    formulas: ["calibrationByRefill"],
    source: {
      title: "Florida pest control examinations, calculations page 213",
      publisher: "exam study book",
      where: "method II",
    },
    reached: read,
    given: "12 gal on 660 ft by 10 ft",
    answers: [to("gal/acre", 79.2, 0.1)],
    compute: () => [
      calibrationByRefill({
        refills: [quantity(12, "gal", "spray")],
        course: feet(660),
        width: feet(10),
      }).rate.in("gal/acre"),
    ],
  },
  ...sprayFieldChecks,
  ...spraySaltChecks,
];

/** Published examples of spraying without a check, and why. */
export const sprayLeftOut: readonly LeftOut[] = [
  {
    entry: "spray-037",
    reason: "the rule (10 % above new) is a limit of nozzleCheck; its figure is not printed",
  },
  { entry: "spray-074", reason: "from memory: the nominal flows at 3 bar, which spray-073 supports" },
  { entry: "spray-075", reason: "from memory: the names of the droplet classes" },
  { entry: "spray-078", reason: "derived, no published example" },
  {
    entry: "soil-072",
    reason: "drift distances read off a figure at one wind: no formula follows from them",
  },
];
