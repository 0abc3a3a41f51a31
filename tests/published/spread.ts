import { fertilizer, productRate } from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";
import { coverVolume } from "../../src/site/index.js";
import {
  bulkDensity,
  effectiveFieldCapacity,
  effectiveSwath,
  hopperLoad,
  panRow,
  passesFor,
  passRates,
  rateAtSpeed,
  runLength,
  spreadPattern,
  spreadRate,
  spreadWidth,
  swathFromThrow,
  swathUniformity,
  targetCatch,
  targetDischarge,
  testArea,
  timedRate,
  uniformityLimit,
} from "../../src/spread/index.js";
import type { LeftOut, PublishedCheck, Source } from "./check.js";

const ft = (value: number) => quantity(value, "ft");
const inches = (value: number) => quantity(value, "in");
const lb = (value: number) => quantity(value, "lb", "product");
const perThousand = (value: number) => quantity(value, "lb/1000 ft2", "product");
const square = (side: ReturnType<typeof ft> | ReturnType<typeof inches>) => ({ length: side, width: side });

const umass: Source = {
  title: "Rotary Spreader Calibration Procedures",
  publisher: "University of Massachusetts Extension",
  where: "introduction",
  url: "https://ag.umass.edu/turf/fact-sheets/rotary-spreader-calibration-procedures",
};
const ohio = (where: string): Source => ({
  title: "Bulletin 817, granular distribution pattern",
  publisher: "Ohio State University Extension",
  where,
  url: "http://ohioline.osu.edu/b817/b817_13.html",
});
const seeder = (where: string): Source => ({
  title: "Seeder operator's manual, output calibration page",
  publisher: "equipment manual",
  where,
});

/** The conversion chart of the seeder manual: whole pounds across, from the given one; tenths down. */
const chart: readonly (readonly [number, readonly number[]])[] = [
  [1, [44, 87, 131, 174, 218, 261, 305, 348, 392, 436]],
  [0.1, [4, 48, 91, 135, 179, 222, 266, 309, 353, 396, 440]],
  [0.2, [9, 52, 96, 139, 183, 227, 270, 314, 357, 401, 444]],
  [0.3, [13, 57, 100, 144, 187, 231, 274, 318, 362, 405, 449]],
  [0.4, [17, 61, 105, 148, 192, 235, 279, 322, 366, 409, 453]],
  [0.5, [22, 65, 109, 152, 196, 240, 283, 327, 370, 414, 457]],
  [0.6, [26, 70, 113, 157, 200, 244, 287, 331, 375, 418, 462]],
  [0.7, [30, 74, 118, 161, 205, 248, 292, 335, 379, 423, 466]],
  [0.8, [35, 78, 122, 166, 209, 253, 296, 340, 383, 427, 470]],
  [0.9, [39, 83, 126, 170, 213, 257, 301, 344, 388, 431, 475]],
];
const cells = chart.flatMap(([from, row]) => row.map((printed, i) => ({ pounds: from + i, printed })));

/** Speed in mph and printed seconds over 200 ft. */
const courseTimes: readonly (readonly [number, number])[] = [
  [1, 136],
  [1.5, 91],
  [2, 68],
  [2.5, 55],
  [3, 45],
  [3.5, 39],
  [4, 34],
  [4.5, 30],
  [5, 27],
  [5.5, 25],
  [6, 23],
];

/** Width in ft, speed in mph, field efficiency in percent, printed acre/h. */
const capacities: readonly (readonly [number, number, number, number])[] = [
  [40, 6, 70, 20.4],
  [50, 6, 70, 25.5],
  [10, 5, 63, 3.8],
  [15, 5, 63, 5.7],
  [15, 6, 63, 6.9],
  [20, 6, 63, 9.2],
  [30, 6, 60, 13.1],
];

const limitOf = (id: string): number => uniformityLimit(id).limit.in("%");
const drill = {
  swath: spreadWidth({ kind: "outlets", outlets: 10, spacing: inches(7) }),
  circumference: ft(8.5),
  turns: 10,
};

/** Published checks of the spread room: rates, courses, passes, swaths and limits. */
export const spreadReadChecks: readonly PublishedCheck[] = [
  {
    entry: "spread-001",
    formulas: ["spreadRate"],
    source: {
      title: "Dry chemical applicator calibration: general procedure",
      publisher: "University of Florida",
      where: "table 1, example at the foot",
      url: "https://ufdcimages.uflib.ufl.edu/UF/00/06/75/04/00001/00002.txt",
    },
    reached: "read",
    given: "20 lb caught over 435 ft at a swath of 10 ft; 20 % active",
    answers: [
      { of: "lb product/acre", printed: 200, to: 1 },
      { of: "lb ai/acre", printed: 40, to: 1 },
    ],
    compute: () => {
      const rate = spreadRate({ amount: lb(20), swath: ft(10), distance: ft(435) });
      return [rate.in("lb/acre"), rate.times(quantity(20, "% w/w", "ai/product")).in("lb/acre")];
    },
  },
  {
    entry: "spread-003",
    formulas: ["testArea", "spreadRate"],
    source: {
      title: "Example: Calibrating a Fire Ant Bait Spreader",
      publisher: "eXtension / Cooperative Extension",
      year: 2007,
      url: "https://articles.extension.org/pages/12227/example:-calibrating-a-fire-ant-bait-spreader",
    },
    reached: "read",
    given: "32 oz before and 29 oz after 200 ft at a swath of 23 ft",
    answers: [
      { of: "ft2", printed: 4600, to: 1 },
      { of: "lb applied", printed: 0.1875, to: 0.0001 },
      { of: "lb/acre", printed: 1.77, to: 0.01, printing: "cut" },
    ],
    compute: () => {
      const run = { swath: ft(23), distance: ft(200) };
      const ounces = (value: number) => quantity(value, "oz", "product");
      const rate = spreadRate({ before: ounces(32), after: ounces(29), ...run });
      const area = testArea(run);
      return [area.in("ft2"), rate.times(area).in("lb"), rate.in("lb/acre")];
    },
  },
  {
    entry: "spread-004",
    formulas: ["spreadRate", "targetCatch"],
    source: { title: "How to calibrate a drop spreader", publisher: "consumer magazine (web)", year: 2006 },
    reached: "read",
    given: "half a pound on 50 ft2",
    answers: [
      { of: "lb/100 ft2", printed: 1, to: 1 },
      { of: "lb/1000 ft2", printed: 10, to: 1 },
    ],
    compute: () => {
      const rate = spreadRate({ amount: lb(0.5), area: quantity(50, "ft2") });
      return [targetCatch({ rate, area: quantity(100, "ft2") }).in("lb"), rate.in("lb/1000 ft2")];
    },
    note: "The text divides the area by the weight; its figures come from the weight divided by the area.",
  },
  {
    entry: "spread-006",
    formulas: ["spreadWidth", "runLength"],
    source: {
      title: "How to calibrate a drop spreader",
      publisher: "lawn-care handbook extract",
      where: "step 3",
    },
    reached: "read",
    given: "100 ft2 with drop spreaders of 1.5, 2 and 3 ft",
    answers: [
      { of: "ft at 1.5 ft", printed: 66.6, to: 0.1, printing: "cut" },
      { of: "ft at 2 ft", printed: 50, to: 1 },
      { of: "ft at 3 ft", printed: 33.3, to: 0.1 },
    ],
    compute: () =>
      [1.5, 2, 3].map((feet) => {
        const swath = spreadWidth({ kind: "drop", opening: ft(feet) });
        return runLength({ area: quantity(100, "ft2"), swath }).in("ft");
      }),
  },
  {
    entry: "spread-007",
    formulas: ["runLength", "swathFromThrow"],
    source: {
      title: "Broadcast spreader calibration (slides)",
      publisher: "turf fertilizer training",
      where: "area covered",
    },
    reached: "read",
    given: "1000 ft2 at an effective swath of 12 ft; a throw of 20 ft",
    answers: [
      { of: "in (83 ft 4 in)", printed: 1000, to: 1 },
      { of: "ft of effective swath", printed: 12, to: 1 },
    ],
    compute: () => [
      runLength({ area: quantity(1000, "ft2"), swath: ft(12) }).in("in"),
      swathFromThrow({ thrown: ft(20), rule: "slides" }).most.in("ft"),
    ],
  },
  {
    entry: "spread-009",
    formulas: ["productRate", "targetCatch"],
    source: {
      title: "How to calibrate a fertilizer spreader",
      publisher: "gardening web guide",
      where: "steps 1 and 4",
    },
    reached: "read",
    given: "1 lb N/1000 ft2 from 10 % N, over a test area of 200 ft2",
    answers: [{ of: "lb", printed: 2, to: 1 }],
    compute: () => {
      const rate = productRate(quantity(1, "lb/1000 ft2", "N"), fertilizer({ id: "p", analysis: "10-0-0" }));
      return [targetCatch({ rate, area: quantity(200, "ft2") }).in("lb")];
    },
  },
  {
    entry: "spread-012",
    formulas: ["passRates"],
    source: umass,
    reached: "read",
    given: "5 lb/1000 ft2 in two directions",
    answers: [{ of: "lb/1000 ft2 per direction", printed: 2.5, to: 0.1 }],
    compute: () => [passRates({ rate: perThousand(5), passes: 2 }).perPass.in("lb/1000 ft2")],
  },
  {
    entry: "spread-013",
    formulas: ["passRates"],
    source: {
      title: "Drop spreader calibration page",
      publisher: "Rutgers (Snyder research farm)",
      where: "calculation 2",
    },
    reached: "read",
    given: "a limit of 0.9 lb N/1000 ft2 in two passes",
    answers: [{ of: "lb N/1000 ft2 per pass", printed: 0.45, to: 0.01 }],
    compute: () => {
      const rate = quantity(0.9, "lb/1000 ft2", "N");
      return [passRates({ rate, passes: 2, limit: rate }).perPass.in("lb/1000 ft2")];
    },
  },
  {
    entry: "spread-015",
    formulas: ["spreadRate", "targetCatch"],
    source: {
      title: "Application section: how much to use",
      publisher: "Virginia turfgrass training site",
      where: "dry material example",
    },
    reached: "read",
    given: "50 lb cover 6000 ft2; how much covers 9000 ft2",
    answers: [{ of: "lb", printed: 75, to: 1 }],
    compute: () => {
      const rate = spreadRate({ amount: lb(50), area: quantity(6000, "ft2") });
      return [targetCatch({ rate, area: quantity(9000, "ft2") }).in("lb")];
    },
  },
  {
    entry: "spread-016",
    formulas: ["passRates"],
    source: {
      title: "Spreader calibration page",
      publisher: "seed supplier web page",
      where: "steps 2 to 4",
    },
    reached: "read",
    given: "8000 ft2 at 5 lb of fertilizer and 2 lb of seed per 1000 ft2, in two directions",
    answers: [
      { of: "lb fertilizer", printed: 40, to: 1 },
      { of: "lb seed", printed: 16, to: 1 },
    ],
    compute: () => {
      const area = quantity(8000, "ft2");
      const seed = passRates({ rate: quantity(2, "lb/1000 ft2", "seed"), area });
      const feed = passRates({ rate: perThousand(5), area });
      return [feed.load?.total.in("lb") ?? Number.NaN, seed.load?.total.in("lb") ?? Number.NaN];
    },
  },
  {
    entry: "spread-018",
    formulas: ["targetCatch"],
    source: {
      title: "Fundamentals of Tropical Turf Management (extract)",
      publisher: "book extract on a reference site",
      where: "appendix, calculating from a proportion",
    },
    reached: "read",
    given: "2 kg/100 m2 over 6 m2",
    answers: [{ of: "g", printed: 120, to: 1 }],
    compute: () => [
      targetCatch({ rate: quantity(2, "kg/100 m2", "product"), area: quantity(6, "m2") }).in("g"),
    ],
  },
  {
    entry: "spread-019",
    formulas: ["spreadWidth", "testArea", "runLength", "spreadRate"],
    source: {
      title: "Calibration is key to accurate seeding rates",
      publisher: "Wyoming livestock paper, extension column",
      year: 2012,
      where: "worked example",
    },
    reached: "read",
    given: "10 outlets 7 in apart, 10 turns of a wheel of 8.5 ft, 2 oz caught",
    answers: [
      { of: "ft run", printed: 85, to: 1 },
      { of: "ft wide", printed: 5.8, to: 0.1 },
      { of: "ft2", printed: 495, to: 1, printing: "cut" },
      { of: "acre", printed: 0.0114, to: 0.0001 },
      { of: "lb/acre", printed: 11, to: 1 },
    ],
    compute: () => {
      const area = testArea(drill);
      const rate = spreadRate({ amount: quantity(2, "oz", "seed"), ...drill });
      return [
        runLength({ area, swath: drill.swath }).in("ft"),
        drill.swath.in("ft"),
        area.in("ft2"),
        area.in("acre"),
        rate.in("lb/acre"),
      ];
    },
    note: "The area comes from the unrounded width: 5.8 ft by 85 ft would be 493 ft2.",
  },
  {
    entry: "spread-021",
    formulas: ["runLength"],
    source: {
      title: "Forest Pest Control, Special Bulletin 16",
      publisher: "University of Georgia Extension",
      year: 2002,
      where: "footnotes to tables A1 to A3",
    },
    reached: "read",
    given: "1/128 acre in a band of 13 in; ten times that in a swath of 13 ft",
    answers: [
      { of: "ft, band", printed: 314.1, to: 0.1 },
      { of: "ft, swath", printed: 261.8, to: 0.1 },
    ],
    compute: () => {
      const plot = quantity(1, "acre").dividedBy(128);
      return [
        runLength({ area: plot, swath: inches(13) }).in("ft"),
        runLength({ area: plot.times(10), swath: ft(13) }).in("ft"),
      ];
    },
    note: "The footnote prints 340 in the sum, but its answer needs 340.3; 340 gives 313.8.",
  },
  {
    entry: "spread-022",
    formulas: ["productRate", "targetCatch"],
    source: {
      title: "Rotary spreader calibration, catch pan page",
      publisher: "Texas A&M turfgrass",
      where: "example",
      url: "http://aggie-turf.tamu.edu/aggieturf2/calibration/rotaryspreader1.html",
    },
    reached: "read",
    given: "1 lb N/1000 ft2 from 21 % N, a pan of 12 by 12 in",
    answers: [
      { of: "lb product/1000 ft2", printed: 4.76, to: 0.01 },
      { of: "lb in a thousand pans", printed: 4.76, to: 0.01 },
    ],
    compute: () => {
      const feed = fertilizer({ id: "p", analysis: "21-0-0" });
      const rate = productRate(quantity(1, "lb/1000 ft2", "N"), feed);
      return [rate.in("lb/1000 ft2"), 1000 * targetCatch({ rate, ...square(inches(12)) }).in("lb")];
    },
    note: "The source stops at the cross multiplication, which says that a thousand pans hold 4.76 lb.",
  },
  {
    entry: "spread-024",
    formulas: ["testArea", "spreadRate"],
    source: {
      title: "Spreader calibration note",
      publisher: "Iowa State University Extension",
      year: 2001,
      where: "tarp method",
      url: "http://www.extension.iastate.edu/Pages/communications/EPC/Fall01/spreaders.html",
    },
    reached: "read",
    given: "a tarp of 56 by 56 in, and 1 lb on it",
    answers: [
      { of: "tarps to the acre", printed: 2000, to: 1 },
      { of: "US ton/acre", printed: 1, to: 0.001 },
    ],
    compute: () => {
      const tarp = square(inches(56));
      return [1 / testArea(tarp).in("acre"), spreadRate({ amount: lb(1), ...tarp }).in("US ton/acre")];
    },
  },
  {
    entry: "spread-025",
    formulas: ["testArea"],
    source: {
      title: "Guide to manure spreader calibration (solid)",
      publisher: "county soil conservation guide, reposted",
      where: "step 1",
    },
    reached: "read",
    given: "a tarp of 12 by 12 ft",
    answers: [
      { of: "ft2", printed: 144, to: 1 },
      { of: "acre", printed: 0.003306, to: 0.000001 },
    ],
    compute: () => {
      const tarp = testArea(square(ft(12)));
      return [tarp.in("ft2"), tarp.in("acre")];
    },
  },
  {
    entry: "spread-027",
    formulas: ["quantity"],
    source: seeder("speed and time chart"),
    reached: "read",
    given: "a course of 200 ft at eleven speeds",
    answers: courseTimes.map(([mph, printed]) => ({ of: `s at ${mph} mph`, printed, to: 1 })),
    compute: () => courseTimes.map(([mph]) => ft(200).per(quantity(mph, "mi/h")).in("s")),
  },
  {
    entry: "spread-028",
    formulas: ["spreadRate"],
    source: seeder("figure 2, conversion chart"),
    reached: "read",
    given: "pounds caught over 1000 ft2, 109 cells",
    answers: cells.map(({ pounds, printed }) => ({
      of: `lb/acre at ${Number(pounds.toFixed(1))} lb/1000 ft2`,
      printed,
      to: 1,
    })),
    compute: () =>
      cells.map(({ pounds }) =>
        spreadRate({ amount: lb(pounds), area: quantity(1000, "ft2") }).in("lb/acre"),
      ),
    note: "The text beside the chart divides by 43.6 on the way back, 0.09 % low.",
  },
  {
    entry: "spread-030",
    formulas: ["effectiveFieldCapacity"],
    source: {
      title: "Calculating Farm Machinery Field Capacities, AEN-73",
      publisher: "University of Kentucky",
      year: 1991,
      where: "theoretical field capacity",
    },
    reached: "read",
    given: "1 ft at 1 mph",
    answers: [{ of: "h to the acre", printed: 8.25, to: 0.01 }],
    compute: () => {
      const run = { swath: ft(1), speed: quantity(1, "mi/h"), efficiency: quantity(100, "%") };
      return [1 / effectiveFieldCapacity(run).in("acre/h")];
    },
  },
  {
    entry: "spread-031",
    formulas: ["effectiveFieldCapacity"],
    source: {
      title: "Estimating Field Capacity of Farm Machines, PM 696",
      publisher: "Iowa State University Extension",
      year: 2001,
      where: "table, spreader rows",
    },
    reached: "read",
    given: "seven spreaders",
    answers: capacities.map(([feet, mph, percent, printed]) => ({
      of: `acre/h at ${feet} ft, ${mph} mph, ${percent} %`,
      printed,
      to: 0.1,
    })),
    compute: () =>
      capacities.map(([feet, mph, percent]) =>
        effectiveFieldCapacity({
          swath: ft(feet),
          speed: quantity(mph, "mi/h"),
          efficiency: quantity(percent, "%"),
        }).in("acre/h"),
      ),
  },
  {
    entry: "spread-033",
    formulas: ["rateAtSpeed"],
    source: {
      title: "The Calibration of Turfgrass Boom Sprayers and Spreaders",
      publisher: "NC State Extension",
      where: "speed",
      url: "https://content.ces.ncsu.edu/the-calibration-of-turfgrass-and-boom-sprayers-and-spreaders",
    },
    reached: "read",
    given: "20 gal/acre at 3 mph, driven at 6 mph",
    answers: [{ of: "gal/acre", printed: 10, to: 1 }],
    compute: () => [
      rateAtSpeed({
        rate: quantity(20, "gal/acre", "spray"),
        from: quantity(3, "mi/h"),
        to: quantity(6, "mi/h"),
        feed: "power-driven",
      }).in("gal/acre"),
    ],
  },
  {
    entry: "spread-034",
    formulas: ["passesFor"],
    source: {
      title: "Aquatic herbicide calibration summary",
      publisher: "University of Florida, aquatic plants center",
      where: "hand gun, time",
      url: "http://plants.ifas.ufl.edu/guide/calibinf.html",
    },
    reached: "read",
    given: "a side of 209 ft in swaths of 35 ft",
    answers: [{ of: "passes", printed: 6, to: 1 }],
    compute: () => [passesFor({ side: ft(209), swath: ft(35) }).count],
  },
  {
    entry: "spread-036",
    formulas: ["effectiveSwath"],
    source: ohio("figure 20"),
    reached: "read",
    given: "4 in of material at the center, 2 in at 6 ft on either side",
    answers: [{ of: "ft", printed: 12, to: 1 }],
    compute: () => {
      const pattern = spreadPattern({
        catches: [0, 2, 4, 4, 4, 2, 0],
        unit: "in",
        pans: { offsets: [-8, -6, -1, 0, 1, 6, 8].map(ft) },
      });
      return [effectiveSwath(pattern, { rule: "half of center mean", centerPans: 3 }).swath.in("ft")];
    },
    note: "Only the depths at the center and at 6 ft are printed: the ends of the row are filled in.",
  },
  {
    entry: "spread-037",
    kind: "transcription",
    formulas: ["panRow"],
    source: ohio("method"),
    reached: "read",
    given: "a row of pans for a swath of 1",
    answers: [
      { of: "swaths, least", printed: 1.5, to: 0.1 },
      { of: "swaths, most", printed: 2, to: 1 },
    ],
    compute: () => {
      const { least, most } = panRow({ swath: ft(1) });
      return [least.in("ft"), most.in("ft")];
    },
  },
  {
    entry: "spread-038",
    kind: "transcription",
    formulas: ["swathFromThrow"],
    source: {
      title: "Spacing between passes with a rotary spreader",
      publisher: "Purdue University",
      where: "answer C",
      url: "https://turf.purdue.edu/spacing-between-passes-with-a-rotary-spreader/?cat=55",
    },
    reached: "read",
    given: "the edge of the throw on the wheel track of the pass before",
    answers: [{ of: "% of the throw overlapped", printed: 50, to: 1 }],
    compute: () => [100 - swathFromThrow({ thrown: ft(100), rule: "half" }).most.in("ft")],
  },
  {
    entry: "spread-039",
    kind: "transcription",
    formulas: ["swathFromThrow"],
    source: {
      title: "Using a Hand-Cranked, Hand-Held Spreader to Apply Herbicides in Container Nurseries, AG-826",
      publisher: "NC State Extension",
      where: "granular distribution patterns",
      url: "https://content.ces.ncsu.edu/using-a-hand-cranked-hand-held-spreader-to-apply-herbicides-in-container-nurseries",
    },
    reached: "read",
    given: "30 to 35 % of the throw shared on each side",
    answers: [
      { of: "% in total, least", printed: 60, to: 1 },
      { of: "% in total, most", printed: 70, to: 1 },
    ],
    compute: () => {
      const { least, most } = swathFromThrow({ thrown: ft(100), rule: "shared strips" });
      return [2 * (100 - most.in("ft")), 2 * (100 - least.in("ft"))];
    },
    note: "That the spacing is 65 to 70 % of the throw is our reading; the total counts each strip twice.",
  },
  {
    entry: "spread-040",
    kind: "transcription",
    formulas: ["swathFromThrow"],
    source: {
      title: "Picking the right swath width",
      publisher: "Iowa State University manure extension",
      year: 2025,
    },
    reached: "read",
    given: "a throw of 45 ft",
    answers: [
      { of: "ft, least", printed: 25, to: 1 },
      { of: "ft, most", printed: 30, to: 1 },
    ],
    compute: () => {
      const { least, most } = swathFromThrow({ thrown: ft(45), rule: "manure" });
      return [least.in("ft"), most.in("ft")];
    },
  },
  {
    entry: "spread-041",
    formulas: ["swathUniformity"],
    source: {
      title: "Section 4.4 Mean, variation, standard deviation and coefficient of variation",
      publisher: "Dutch agricultural knowledge wiki (teaching text)",
      where: "worked example",
    },
    reached: "read",
    given: "4, 36, 45, 50 and 75 as the deposits across one swath",
    answers: [
      {
        of: "CV, as a fraction",
        printed: 0.77,
        to: 0.01,
        wrong: { right: 0.61, why: "the printed standard deviation is no root of the printed variance" },
      },
    ],
    compute: () => {
      const pattern = spreadPattern({
        catches: [4, 36, 45, 50, 75],
        unit: "g",
        pans: { spacing: ft(1), left: 2 },
      });
      const options = { driving: "one direction", positions: "pans", divisor: "n-1" } as const;
      return [swathUniformity(pattern, { swath: ft(5), ...options }).cv.in("1")];
    },
    note: "No spreading example: five pans in a swath of five stand for its five values.",
  },
  {
    entry: "spread-042",
    kind: "transcription",
    formulas: ["uniformityLimit"],
    source: {
      title: "On-farm fertiliser spreading test project",
      publisher: "LandWISE (New Zealand), citing Lawrence 2007",
      year: 2015,
    },
    reached: "read",
    given: "the largest CV for nitrogenous and for low-analysis fertilizer",
    answers: [
      { of: "% CV, nitrogenous", printed: 15, to: 1 },
      { of: "% CV, low analysis", printed: 25, to: 1 },
    ],
    compute: () => [limitOf("nz-nitrogen"), limitOf("nz-low-analysis")],
    note: "Limits are data: the check holds them to the source.",
  },
  {
    entry: "spread-044",
    kind: "transcription",
    formulas: ["uniformityLimit"],
    source: { title: "Fertiliser spreader CV reports", publisher: "Irish and UK farm press" },
    reached: "read",
    given: "the levels of CV that are named",
    answers: [
      { of: "% CV, test hall only", printed: 5, to: 1 },
      { of: "% CV, acceptable up to", printed: 15, to: 1 },
      { of: "% CV, losses above", printed: 20, to: 1 },
    ],
    compute: () => ["ireland-test-hall", "ireland-field", "ireland-loss"].map(limitOf),
    note: "Limits are data: the check holds them to the source.",
  },
  {
    entry: "spread-045",
    kind: "transcription",
    formulas: ["uniformityLimit"],
    source: {
      title: "Static and kinematic tests for determining spreaders effective width (Maldaner et al.)",
      publisher: "International Society of Precision Agriculture",
      where: "abstract",
    },
    reached: "read",
    given: "the CV that decides the width, for lime",
    answers: [{ of: "% CV", printed: 20, to: 1 }],
    compute: () => [limitOf("brazil-lime")],
    note: "Limits are data. The width error of 21.6 % is a measurement and cannot be computed.",
  },
  {
    entry: "spread-048",
    formulas: ["bulkDensity"],
    source: {
      title: "Animal waste operator manual, slide 5b-35, formula 16",
      publisher: "NC State University soil science",
      url: "http://www.soil.ncsu.edu/certification/Manual/slides/chapter5b/text35.html",
    },
    reached: "read",
    given: "1 lb in a bucket of 5 gal",
    answers: [{ of: "lb/ft3", printed: 1.5, to: 0.1 }],
    compute: () => [bulkDensity({ amount: lb(1), volume: quantity(5, "gal") }).in("lb/ft3")],
    note: "The size of the bucket was not read: the factor fits 5 US gal, 1.496.",
  },
  {
    entry: "spread-049",
    formulas: ["coverVolume"],
    source: {
      title: "Topdressers are dressed up with accessories",
      publisher: "grounds maintenance trade magazine",
      where: "two worked examples",
    },
    reached: "read",
    given: "5000 ft2 to 1/8 in and 50 000 ft2 to 1/4 in",
    answers: [
      { of: "yd3 on 5000 ft2", printed: 2, to: 1 },
      { of: "yd3 on 50 000 ft2", printed: 39, to: 1 },
    ],
    compute: () => [
      coverVolume({ area: quantity(5000, "ft2"), depth: inches(0.125) }).in("yd3"),
      coverVolume({ area: quantity(50_000, "ft2"), depth: inches(0.25) }).in("yd3"),
    ],
    note: "The source multiplies by 0.0031, which is 1/324 taken up.",
  },
  {
    entry: "spread-051",
    formulas: ["coverVolume"],
    source: {
      title: "How much sand to topdress an acre lawn",
      publisher: "gardening blog",
      where: "first paragraph",
    },
    reached: "read",
    given: "an acre to 1/4 in",
    answers: [
      {
        of: "yd3",
        printed: 10.5,
        to: 0.1,
        wrong: { right: 33.6, why: "43 560 ft2 by 1/4 in is 33.6 yd3" },
      },
    ],
    compute: () => [coverVolume({ area: quantity(1, "acre"), depth: inches(0.25) }).in("yd3")],
  },
  {
    entry: "spread-052",
    formulas: ["coverVolume", "hopperLoad"],
    source: {
      title: "How many bags of sand do I need for turf",
      publisher: "general web page",
      where: "quick answer and rate section",
    },
    reached: "read",
    given: "1000 ft2 to 1/4 in, sand of 100 lb/ft3",
    answers: [
      { of: "yd3", printed: 1, to: 1 },
      { of: "US ton", printed: 1, to: 1 },
    ],
    compute: () => {
      const volume = coverVolume({ area: quantity(1000, "ft2"), depth: inches(0.25) });
      return [volume.in("yd3"), hopperLoad({ volume, bulkDensity: quantity(100, "lb/ft3") }).in("US ton")];
    },
    note: "Both hold as whole numbers, but do not belong together: 0.77 yd3 is 1.04 US ton, and 1 yd3 is 1.35.",
  },
  {
    entry: "spread-053",
    formulas: ["hopperLoad"],
    source: {
      title: "Fertilizer density answers page",
      publisher: "question-and-answer aggregator",
      where: "density lists",
    },
    reached: "read",
    given: "1 m3 of urea at 48 and at 52 lb/ft3, loose",
    answers: [
      {
        of: "kg at 48 lb/ft3",
        printed: 1220,
        to: 10,
        wrong: { right: 770, why: "the page lists the density of the granules as bulk density" },
      },
      {
        of: "kg at 52 lb/ft3",
        printed: 1320,
        to: 10,
        wrong: { right: 830, why: "the page lists the density of the granules as bulk density" },
      },
    ],
    compute: () =>
      [48, 52].map((density) =>
        hopperLoad({
          volume: quantity(1, "m3", "product"),
          bulkDensity: quantity(density, "lb/ft3"),
        }).in("kg"),
      ),
    note: "One page, two bulk densities of one material. No table of densities is shipped.",
  },
  {
    entry: "spread-055",
    formulas: ["targetCatch"],
    source: { title: "Application guide", publisher: "turf supply distributor guide", where: "example" },
    reached: "read",
    given: "232 lb/acre over 1000 ft2",
    answers: [{ of: "lb product", printed: 5.32, to: 0.01, printing: "cut" }],
    compute: () => [
      targetCatch({ rate: quantity(232, "lb/acre", "product"), area: quantity(1000, "ft2") }).in("lb"),
    ],
    note: "The text prints the divisor as 45.36 once: two digits of 43.56 changed places.",
  },
  {
    entry: "spread-057",
    kind: "transcription",
    formulas: ["uniformityLimit"],
    source: { title: "EN 13739", publisher: "CEN" },
    reached: "from memory",
    given: "the largest CV of the transverse distribution",
    answers: [{ of: "% CV", printed: 15, to: 1 }],
    compute: () => [limitOf("en-13739")],
  },
  {
    entry: "spread-058",
    formulas: ["targetDischarge", "timedRate"],
    source: { title: "calibration constant", publisher: "common practice" },
    reached: "from memory",
    given: "1 lb/acre over 1 ft at 1 mph; 1 lb/min over 1 ft at 1 mph",
    answers: [
      { of: "acre ft mph per lb/min", printed: 495, to: 1 },
      { of: "lb/acre", printed: 495, to: 1 },
    ],
    compute: () => {
      const rate = quantity(1, "lb/acre", "product");
      const run = { swath: ft(1), speed: quantity(1, "mi/h") };
      return [
        1 / targetDischarge({ rate, ...run }).in("lb/min"),
        timedRate({ amount: lb(1), time: quantity(1, "min"), ...run }).in("lb/acre"),
      ];
    },
  },
];

/** Published examples that these checks leave out, and why. */
export const spreadLeftOut: readonly LeftOut[] = [
  {
    entry: "spread-010",
    reason: "product from a nutrient target, without a spreader: a check of the nutrient room",
  },
  {
    entry: "spread-043",
    reason:
      "the ranges are read off a graph whose data are not printed; its limit of 15 % is in uniformityLimits, and tests/spread has a pattern with two ranges",
  },
  {
    entry: "spread-046",
    reason: "field measurements without their data: nothing to compute from",
  },
  {
    entry: "spread-054",
    reason: "a range that was measured at one setting: nothing to compute from",
  },
  { entry: "spread-056", reason: "from memory, and a definition without a figure" },
];
