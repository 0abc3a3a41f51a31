import { coefficientOfVariation } from "../../src/numeric/index.js";
import { quantity } from "../../src/quantity/index.js";
import { cuboidVolume, cylinderVolume } from "../../src/site/index.js";
import {
  bulkDensity,
  rateAtSpeed,
  runLength,
  speedForRate,
  spreadPattern,
  spreadRate,
  swathUniformity,
  targetCatch,
  targetDischarge,
  timedRate,
} from "../../src/spread/index.js";
import type { PublishedCheck } from "./check.js";

const ft = (value: number) => quantity(value, "ft");
const lb = (value: number) => quantity(value, "lb", "product");
const square = (value: number) => ({ area: quantity(value, "ft2") });

const turnsOf = (turns: number) =>
  spreadRate({ amount: lb(20), swath: ft(8), circumference: ft(9), turns }).in("lb/acre");
const plot = quantity(1, "acre").dividedBy(128);

/** The tanker of the manual; a litre of slurry is taken as a kilogram, an imperial gallon as a pound: the constants are the same. */
const tanker = {
  amount: quantity(4850, "kg", "product"),
  time: quantity(1, "min"),
  swath: quantity(11.5, "m"),
  speed: quantity(9.6, "km/h"),
};

/** Worked examples of spreaders from extension pages, a textbook and manuals. */
export const spreadWorkedChecks: readonly PublishedCheck[] = [
  {
    entry: "spread-101",
    formulas: ["timedRate", "targetDischarge", "rateAtSpeed", "speedForRate"],
    source: {
      title: "Slurry tanker, operator's manual, appendix: spreading rate calculation",
      publisher: "equipment manual",
      year: 2016,
      where: "metric and imperial formulas and examples",
    },
    reached: "read",
    given:
      "4850 L/min on 11.5 m at 9.6 km/h, the constant being 600; 1067 imp gal/min on 38 ft at 6 mph, the constant being 495; kg for L and lb for imp gal",
    answers: [
      { of: "kg/ha", printed: 26_359, to: 1 },
      { of: "lb/acre", printed: 2316, to: 1, printing: "cut" },
      { of: "kg/min for 26 359 kg/ha", printed: 4850, to: 1 },
      {
        of: "kg/ha at the 7.28 km/h advised for 20 000",
        printed: 20_000,
        to: 1,
        wrong: {
          right: 34_759,
          why: "its rule of three multiplies the speed by the wanted rate and divides by the present one; a constant feed puts down less the faster it is driven, so 20 000 needs 12.65 km/h",
        },
      },
      {
        of: "km/h for 20 000 kg/ha",
        printed: 7.28,
        to: 0.01,
        wrong: { right: 12.65, why: "the rule of three turned round: 9.6 times 26 359 by 20 000" },
      },
    ],
    compute: () => {
      const rate = timedRate(tanker);
      const acre = timedRate({ ...tanker, amount: lb(1067), swath: ft(38), speed: quantity(6, "mi/h") });
      const { swath, speed } = tanker;
      const back = targetDischarge({ rate: quantity(26_359, "kg/ha", "product"), swath, speed });
      const at = (kmh: number) =>
        rateAtSpeed({ rate, from: speed, to: quantity(kmh, "km/h"), feed: "power-driven" }).in("kg/ha");
      const target = quantity(20_000, "kg/ha", "product");
      const wanted = speedForRate({ rate, from: speed, target, feed: "power-driven" });
      return [rate.in("kg/ha"), acre.in("lb/acre"), back.in("kg/min"), at(7.28), wanted.in("km/h")];
    },
  },
  {
    entry: "spread-102",
    formulas: ["spreadRate"],
    source: {
      title: "Dry chemical applicator calibration: alternative procedure",
      publisher: "University of Florida (digital collections scan)",
      where: "table 2, example at the foot",
      url: "https://ufdcimages.uflib.ufl.edu/UF/00/06/75/04/00001/00003.txt",
    },
    reached: "read",
    given: "20 lb in 43 turns of a wheel of 9 ft circumference, 8 ft wide; 20 % active",
    answers: [
      {
        of: "lb/acre",
        printed: 277,
        to: 1,
        wrong: { right: 281, why: "a thousandth of the turns to the acre is 43.56 of them, and 43 are made" },
      },
      { of: "lb/acre for 43.56 turns", printed: 277, to: 1, printing: "cut" },
      {
        of: "lb ai/acre",
        printed: 55.4,
        to: 0.1,
        wrong: { right: 56.3, why: "from the 277 lb/acre that are 1.3 % low" },
      },
    ],
    compute: () => [turnsOf(43), turnsOf(43.56), 0.2 * turnsOf(43)],
    note: "The text of the example prints 29 lb, its sum 20.",
  },
  {
    entry: "spread-103",
    formulas: ["runLength"],
    source: {
      title: "Fertilizer applicator calibration (Sumner)",
      publisher: "University of Georgia Extension",
      where: "step 2, examples A and B",
      url: "https://studylib.net/doc/10904955/the-university-of-georgia-college-of-agricultural-andamp%3B-e...",
    },
    reached: "read",
    given: "1/128 acre at outlets 19 in apart, and in a band of 12 in",
    answers: [
      { of: "ft at 19 in", printed: 214.9, to: 0.1 },
      { of: "ft at 12 in", printed: 340.3, to: 0.1 },
    ],
    compute: () =>
      [19, 12].map((inches) => runLength({ area: plot, swath: quantity(inches, "in") }).in("ft")),
  },
  {
    entry: "spread-104",
    formulas: ["runLength"],
    source: {
      title: "Fundamentals of Tropical Turf Management (extract)",
      publisher: "book extract on a reference site",
      where: "appendix, rotary spreader, step 4",
      url: "http://what-when-how.com/Tutorial/topic-1086g6825f/Fundamentals-of-Tropical-Turf-Management-193.html",
    },
    reached: "read",
    given: "100 m2 at an effective width of 3 m",
    answers: [{ of: "m", printed: 33.3, to: 0.1 }],
    compute: () => [runLength({ area: quantity(100, "m2"), swath: quantity(3, "m") }).in("m")],
  },
  {
    entry: "spread-105",
    formulas: ["runLength"],
    source: {
      title: "Operator's manual of a turf spray vehicle, calibration course length",
      publisher: "equipment maker",
      where: "page 29, formula and example",
    },
    reached: "read",
    given: "1000 ft2 at 6 ft; 93 m2 at 1.8 m",
    answers: [
      { of: "ft", printed: 167, to: 1 },
      {
        of: "m",
        printed: 51,
        to: 1,
        wrong: { right: 52, why: "51 m is 167 ft converted; 93 m2 by 1.8 m is 51.7 m" },
      },
    ],
    compute: () => [
      runLength({ ...square(1000), swath: ft(6) }).in("ft"),
      runLength({ area: quantity(93, "m2"), swath: quantity(1.8, "m") }).in("m"),
    ],
  },
  {
    entry: "spread-106",
    formulas: ["spreadRate"],
    source: {
      title: "Lawn tractor spreader, owner's manual: rate worksheet",
      publisher: "equipment manual",
      year: 2014,
      where: "page 3, desired rate and rate of spread",
    },
    reached: "read",
    given: "a bag of 25 lb for 2000 ft2; 2 lb used on a test area of 500 ft2",
    answers: [
      { of: "lb/1000 ft2 of the bag", printed: 12.5, to: 0.1 },
      { of: "lb/ft2 of the bag", printed: 0.0125, to: 0.0001 },
      { of: "lb/1000 ft2 of the test", printed: 4, to: 1 },
      { of: "lb/ft2 of the test", printed: 0.004, to: 0.001 },
    ],
    compute: () => {
      const bag = spreadRate({ amount: lb(25), ...square(2000) });
      const test = spreadRate({ amount: lb(2), ...square(500) });
      return [bag, test].flatMap((rate) => [rate.in("lb/1000 ft2"), rate.in("lb/1000 ft2") / 1000]);
    },
  },
  {
    entry: "spread-108",
    formulas: ["targetCatch", "spreadRate"],
    source: {
      title: "Fertilizer spreader chart",
      publisher: "garden supplier's education page",
      where: "example",
      url: "https://allensterlinglothrop.com/education-center/tag/General+Info",
    },
    reached: "read",
    given: "a bag of 25 lb for 5000 ft2, over a test area of 10 by 10 ft",
    answers: [{ of: "lb", printed: 0.5, to: 0.1 }],
    compute: () => {
      const rate = spreadRate({ amount: lb(25), ...square(5000) });
      return [targetCatch({ rate, length: ft(10), width: ft(10) }).in("lb")];
    },
  },
  {
    entry: "spread-109",
    formulas: ["bulkDensity", "cuboidVolume", "cylinderVolume"],
    source: {
      title: "Calibrating solid and slurry spreaders, 7.1",
      publisher: "Utah State University Extension",
      where: "load weight",
      url: "https://extension.usu.edu/waterquality/htm/agriculturewq/cnmp/step7/step7-1/",
    },
    reached: "read",
    given: "factors: 1 lb in a bucket of 5 gal; a box of 1 ft3; a cylinder 1 ft across and 1 ft long",
    answers: [
      { of: "lb/ft3", printed: 1.5, to: 0.1 },
      { of: "gal, box", printed: 7.5, to: 0.1 },
      { of: "ft3, cylinder", printed: 0.8, to: 0.1 },
    ],
    compute: () => [
      bulkDensity({ amount: lb(1), volume: quantity(5, "gal") }).in("lb/ft3"),
      cuboidVolume({ length: ft(1), width: ft(1), depth: ft(1) }).in("gal"),
      cylinderVolume({ diameter: ft(1), depth: ft(1) }).in("ft3"),
    ],
  },
  {
    entry: "spread-110",
    formulas: ["swathUniformity", "coefficientOfVariation"],
    source: {
      title: "Tests of the coefficient of variation in a command-line statistics tool",
      publisher: "public source repository numcommand/num",
      where: "test/num-coefficient-of-variance-test.sh",
    },
    reached: "read",
    given: "1, 2, 4 and 5, 6, 9 as the deposits across one swath, by both divisors",
    answers: [
      { of: "CV of 1, 2, 4, n-1, as a fraction", printed: 0.654654, to: 0.000001 },
      { of: "CV of 5, 6, 9, n-1", printed: 0.31225, to: 0.00001 },
      { of: "CV of 1, 2, 4, n", printed: 0.534522, to: 0.000001 },
      { of: "CV of 5, 6, 9, n", printed: 0.254951, to: 0.000001 },
      { of: "CV of 1, 2, 4, n-1, of the bare numbers", printed: 0.654654, to: 0.000001 },
      { of: "CV of 5, 6, 9, n, of the bare numbers", printed: 0.254951, to: 0.000001 },
    ],
    compute: () => {
      const [one, two] = [
        [1, 2, 4],
        [5, 6, 9],
      ] as const;
      const across = (catches: readonly number[], divisor: "n" | "n-1") => {
        const pattern = spreadPattern({ catches, unit: "g", pans: { spacing: ft(1), left: 1 } });
        const options = { driving: "one direction", positions: "pans", divisor } as const;
        return swathUniformity(pattern, { swath: ft(3), ...options }).cv.in("1");
      };
      return [
        across(one, "n-1"),
        across(two, "n-1"),
        across(one, "n"),
        across(two, "n"),
        coefficientOfVariation(one, { divisor: "n-1" }).in("1"),
        coefficientOfVariation(two, { divisor: "n" }).in("1"),
      ];
    },
    note: "No spreading example: an independent program for the statistics, three pans in a swath of three.",
  },
];
