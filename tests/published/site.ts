import { quantity } from "../../src/quantity/index.js";
import {
  averageRadiusArea,
  circleArea,
  coverVolume,
  cuboidVolume,
  cylinderVolume,
  ellipseArea,
  offsetArea,
  polygonArea,
  rectangleArea,
  trapezoidArea,
  triangleArea,
} from "../../src/site/index.js";
import type { Answer, LeftOut, PublishedCheck, Source } from "./check.js";

const ft = (value: number) => quantity(value, "ft");
const m = (value: number) => quantity(value, "m");
const metres = (values: readonly number[]) => values.map(m);

const magazine = (where: string): Source => ({
  title: "Calculate areas",
  publisher: "Grounds Maintenance (trade magazine)",
  where,
});
const toolbox = (where: string): Source => ({
  title: "Calculating area (horticulture toolbox, fertilisers and nutrients)",
  publisher: "Western Australian Department of Education, WestOne",
  where,
  url: "http://www.westone.wa.gov.au/toolbox6/hort6/html/chemical_use/fertilisers_nutrients/fn27/fn27.htm",
});
const gardening = (where: string): Source => ({
  title: "Commercial Gardening, vol. 3: Water tanks",
  publisher: "trade handbook, reproduced",
  year: 1913,
  where,
});

const shortPi = "the source takes pi as 3.14";
const eightTenths = "the rule 0.8 stands for pi / 4 = 0.7854: 1.86 % too much for every size";
const weak =
  "A homework page, a weak source: the measurements are what it gives; the rule decides the answer.";

const eightIntervals = [3.15, 4.3, 8.2, 5.6, 6.85, 7.6, 4.2, 5.6, 4.3];
const sevenIntervals = [0, 2.65, 3.8, 3.75, 4.65, 3.6, 5.0, 5.8];
const tenIntervals = [2.5, 3.5, 5, 4.6, 3.2, 2.4, 5.6, 6.2, 3.8, 1.8, 0.9];
const offsetNotes: Source = {
  title: "Calculation of areas from offsets to a base line",
  publisher: "open surveying course notes",
  where: "Example 1",
};
const eightChainages: Source = {
  title: "Offsets from a chain line, 8 chainages (exam question and worked answer)",
  publisher: "public question-and-answer pages",
  where: "problem statement",
};

const tankFactor = "the source takes 6.232 imp gal to the ft3; it is 28.316847 / 4.54609 = 6.2288";

/** Length, width and depth in feet, and the imperial gallons printed for them. */
const tanks: readonly (readonly [number, number, number, Omit<Answer, "of">])[] = [
  [6, 3, 3, { printed: 336, to: 1 }],
  [6, 3, 5, { printed: 560, to: 1, printing: "cut" }],
  [7, 4, 5, { printed: 870, to: 1, wrong: { right: 872, why: "a misprint: the cells beside it fit 872" } }],
  [8, 8, 5, { printed: 1994, to: 1, wrong: { right: 1993, why: tankFactor } }],
  [12, 12, 5, { printed: 4487, to: 1, wrong: { right: 4485, why: tankFactor } }],
];

const greens = [44, 43, 39, 34] as const;
const greenArea = (radius: number) => circleArea({ radius: ft(radius) });

/** Published checks of the site room. */
export const siteChecks: readonly PublishedCheck[] = [
  {
    entry: "site-001",
    formulas: ["rectangleArea"],
    source: magazine("rectangle"),
    reached: "read",
    given: "a rectangle of 90 by 50 ft",
    answers: [{ of: "ft2", printed: 4500, to: 1 }],
    compute: () => [rectangleArea({ length: ft(90), width: ft(50) }).in("ft2")],
  },
  {
    entry: "site-003",
    formulas: ["trapezoidArea"],
    source: magazine("trapezoid"),
    reached: "read",
    given: "parallel sides of 50 and 70 ft, 30 ft apart",
    answers: [{ of: "ft2", printed: 1800, to: 1 }],
    compute: () => [trapezoidArea({ a: ft(50), b: ft(70), height: ft(30) }).in("ft2")],
  },
  {
    entry: "site-004",
    formulas: ["circleArea"],
    source: magazine("circle"),
    reached: "read",
    given: "a circle with a radius of 30 ft",
    answers: [{ of: "ft2", printed: 2826, to: 1, wrong: { right: 2827, why: shortPi } }],
    compute: () => [circleArea({ radius: ft(30) }).in("ft2")],
  },
  {
    entry: "site-005",
    formulas: ["circleArea"],
    source: magazine("circle, within 5 percent"),
    reached: "read",
    given: "a circle with a diameter of 50 ft",
    answers: [{ of: "ft2", printed: 2000, to: 1, wrong: { right: 1963, why: eightTenths } }],
    compute: () => [circleArea({ diameter: ft(50) }).in("ft2")],
    note: "The source calls its rule good to within 5 %.",
  },
  {
    entry: "site-006",
    formulas: ["ellipseArea"],
    source: magazine("ovals or egg shapes, within 5 percent"),
    reached: "read",
    given: "an oval 60 ft long and 40 ft wide",
    answers: [{ of: "ft2", printed: 1920, to: 1, wrong: { right: 1885, why: eightTenths } }],
    compute: () => [ellipseArea({ length: ft(60), width: ft(40) }).in("ft2")],
    note: "The source calls its rule good to within 5 %. An egg is no ellipse: the right figure holds for an ellipse.",
  },
  {
    entry: "site-007",
    formulas: ["offsetArea"],
    source: magazine("irregular shapes"),
    reached: "read",
    given: "widths of 32, 50, 45 and 17 ft every 10 ft, added and multiplied by the spacing",
    answers: [{ of: "ft2", printed: 1440, to: 1 }],
    compute: () => [
      offsetArea({ spacing: ft(10), widths: [0, 32, 50, 45, 17, 0].map(ft), rule: "trapezoidal" }).in("ft2"),
    ],
    note: "The shape runs to a point at both ends: the source lists no widths of 0, the formula takes them.",
  },
  {
    entry: "site-009",
    formulas: ["averageRadiusArea"],
    source: toolbox("irregular shapes, kidney-shaped green"),
    reached: "read",
    given: "36 radii, one every 10 degrees, with a mean of 15 m",
    answers: [{ of: "m2", printed: 706.5, to: 0.1, wrong: { right: 706.9, why: shortPi } }],
    compute: () => [averageRadiusArea({ radii: Array(36).fill(m(15)), rule: "mean radius" }).in("m2")],
    note: "Only the mean is printed, so 36 equal radii stand for it.",
  },
  {
    entry: "site-010",
    formulas: ["rectangleArea", "triangleArea"],
    source: toolbox("regular shapes"),
    reached: "read",
    given: "a rectangle of 30 by 20 m; a triangle with a base of 50 m and a height of 80 m",
    answers: [
      { of: "m2, rectangle", printed: 600, to: 1 },
      { of: "m2, triangle", printed: 2000, to: 1 },
    ],
    compute: () => [
      rectangleArea({ length: m(30), width: m(20) }).in("m2"),
      triangleArea({ base: m(50), height: m(80) }).in("m2"),
    ],
  },
  {
    entry: "site-012",
    formulas: ["offsetArea"],
    source: offsetNotes,
    reached: "read",
    given: `offsets of ${eightIntervals.join(", ")} m, 10 m apart, by three rules`,
    answers: [
      { of: "m2, average ordinate", printed: 442.66, to: 0.01, printing: "cut" },
      { of: "m2, trapezoidal", printed: 460.75, to: 0.01 },
      { of: "m2, Simpson", printed: 461.167, to: 0.001 },
    ],
    compute: () =>
      (["average ordinate", "trapezoidal", "simpson"] as const).map((rule) =>
        offsetArea({ spacing: m(10), widths: metres(eightIntervals), rule }).in("m2"),
      ),
  },
  {
    entry: "site-013",
    formulas: ["offsetArea"],
    source: eightChainages,
    reached: "read",
    given: `offsets of ${sevenIntervals.join(", ")} m, 30 m apart, by two rules`,
    answers: [
      { of: "m2, average ordinate", printed: 767.81, to: 0.01 },
      { of: "m2, trapezoidal", printed: 790.5, to: 0.01 },
    ],
    compute: () =>
      (["average ordinate", "trapezoidal"] as const).map((rule) =>
        offsetArea({ spacing: m(30), widths: metres(sevenIntervals), rule }).in("m2"),
      ),
    note: weak,
  },
  {
    entry: "site-013",
    formulas: ["offsetArea"],
    source: { ...eightChainages, where: "answer choices 681, 767.825, 781 and 790.5" },
    reached: "derived",
    given: `offsets of ${sevenIntervals.join(", ")} m, 30 m apart: Simpson with a trapezoid for the seventh strip`,
    answers: [{ of: "m2", printed: 781, to: 1 }],
    compute: () => [offsetArea({ spacing: m(30), widths: metres(sevenIntervals), rule: "simpson" }).in("m2")],
    note: `${weak} Which of the printed choices the page marks as right was not read.`,
  },
  {
    entry: "site-015",
    formulas: ["offsetArea"],
    source: {
      title: "Offsets from a chain line at 10 m (worked answer)",
      publisher: "public question-and-answer page",
      where: "Question Two, second set",
    },
    reached: "read",
    given: `offsets of ${tenIntervals.join(", ")} m, 10 m apart, by two rules`,
    answers: [
      { of: "m2, trapezoidal", printed: 378.0, to: 0.1 },
      { of: "m2, Simpson", printed: 375.33, to: 0.01 },
    ],
    compute: () =>
      (["trapezoidal", "simpson"] as const).map((rule) =>
        offsetArea({ spacing: m(10), widths: metres(tenIntervals), rule }).in("m2"),
      ),
    note: weak,
  },
  {
    entry: "site-016",
    formulas: ["offsetArea"],
    source: {
      title: "Field with offsets left and right of a chain line",
      publisher: "public question-and-answer page",
      where: "question 4a",
    },
    reached: "derived",
    given:
      "7 offsets on each side of a line, 25 m apart, by Simpson: 25/3 x [(65.5 + 59.7) + 4 x 208.2 + 2 x 147.1]",
    answers: [{ of: "m2", printed: 10_435, to: 1 }],
    compute: () => [
      offsetArea({
        spacing: m(25),
        left: metres([33.6, 29.8, 55.3, 47.2, 24.6, 21.7, 18.1]),
        right: metres([31.9, 27.5, 48.9, 56.6, 18.3, 25.4, 41.6]),
        rule: "simpson",
      }).in("m2"),
    ],
    note: `${weak} The printed expression was read; its value, 10 435, was worked out by hand.`,
  },
  {
    entry: "site-018",
    formulas: ["polygonArea"],
    source: {
      title: "Solution: traverse area, problem 2",
      publisher: "open-access surveying library",
      where: "problem 2",
    },
    reached: "read",
    given: "the four corners A, C, F, E of a parcel, by northing and easting in ft",
    answers: [{ of: "ft2", printed: 250_550, to: 10 }],
    compute: () => [
      polygonArea(
        [
          [600.0, 1000.0],
          [254.542, 1209.288],
          [97.543, 566.876],
          [470.303, 397.969],
        ],
        "ft",
      ).in("ft2"),
    ],
    note: "The measured loop has two more points, where only the instrument stood, and crosses itself; polygonArea refuses it.",
  },
  {
    entry: "site-019",
    formulas: ["circleArea"],
    source: {
      title: "Pond Measurements",
      publisher: "Ohio State University Extension, School of Natural Resources",
      where: "surface area, Figure B",
      url: "http://ohioline.osu.edu/a-fact/0002.html",
    },
    reached: "read",
    given: "a round pond with a shoreline of 520 ft",
    answers: [{ of: "acre", printed: 0.4939, to: 0.0001, printing: "cut" }],
    compute: () => [circleArea({ circumference: ft(520) }).in("acre")],
  },
  {
    entry: "site-021",
    formulas: ["circleArea"],
    source: {
      title: "Golf course maintenance math",
      publisher: "Golf Course Industry (trade magazine)",
      where: "article text",
    },
    reached: "read",
    given: "a green whose radius shrinks from 44 to 43, 39 and 34 ft",
    answers: [
      { of: "ft2 at 44 ft", printed: 6082, to: 1 },
      { of: "ft2 at 43 ft", printed: 5809, to: 1 },
      { of: "ft2 at 39 ft", printed: 4778, to: 1 },
      { of: "ft2 at 34 ft", printed: 3632, to: 1 },
      { of: "% smaller at 43 ft", printed: 4, to: 1 },
      { of: "% smaller at 39 ft", printed: 21, to: 1 },
      { of: "% smaller at 34 ft", printed: 40, to: 1 },
    ],
    compute: () => [
      ...greens.map((radius) => greenArea(radius).in("ft2")),
      ...greens.slice(1).map((radius) => 100 - greenArea(radius).per(greenArea(44)).in("%")),
    ],
  },
  {
    entry: "soil-088",
    formulas: ["rectangleArea"],
    source: {
      title: "Pesticides in the Military, subcourse MD0173",
      publisher: "US Army Medical Department Center and School",
      where: "page 39",
    },
    reached: "read",
    given: "300 by 150 ft, sprayed at 1 gal/1000 ft2",
    answers: [
      { of: "ft2", printed: 45_000, to: 1 },
      { of: "gal", printed: 45, to: 1 },
    ],
    compute: () => {
      const area = rectangleArea({ length: ft(300), width: ft(150) });
      return [area.in("ft2"), quantity(1, "gal/1000 ft2", "spray").times(area).in("gal")];
    },
  },
  {
    entry: "soil-093",
    formulas: ["triangleArea"],
    source: magazine("triangle"),
    reached: "read",
    given: "a triangle with a base of 125 ft and a height of 75 ft",
    answers: [{ of: "ft2", printed: 4687, to: 1, printing: "cut" }],
    compute: () => [triangleArea({ base: ft(125), height: ft(75) }).in("ft2")],
    note: "The other six shapes of the page are checked one by one: site-001 and site-003 to site-007.",
  },
  {
    entry: "soil-094",
    formulas: ["rectangleArea", "triangleArea", "circleArea"],
    source: {
      title: "Pesticide application calculations, part 5 (areas)",
      publisher: "text of the Wyoming Department of Agriculture, in a copy",
      where: "square, triangular, circular areas",
    },
    reached: "read",
    given: "80 by 60 ft; a base of 200 ft and a height of 40 ft; a diameter of 40 ft",
    answers: [
      { of: "ft2, rectangle", printed: 4800, to: 1 },
      { of: "ft2, triangle", printed: 4000, to: 1 },
      { of: "ft2, circle", printed: 1256, to: 1, wrong: { right: 1257, why: shortPi } },
    ],
    compute: () => [
      rectangleArea({ length: ft(80), width: ft(60) }).in("ft2"),
      triangleArea({ base: ft(200), height: ft(40) }).in("ft2"),
      circleArea({ diameter: ft(40) }).in("ft2"),
    ],
  },
  {
    entry: "spread-025",
    formulas: ["rectangleArea"],
    source: {
      title: "Guide to manure spreader calibration (solid)",
      publisher: "county soil conservation guide, reposted",
      where: "Step 1",
    },
    reached: "read",
    given: "a tarp of 12 by 12 ft",
    answers: [
      { of: "ft2", printed: 144, to: 1 },
      { of: "acre", printed: 0.003306, to: 0.000001 },
    ],
    compute: () => {
      const tarp = rectangleArea({ length: ft(12), width: ft(12) });
      return [tarp.in("ft2"), tarp.in("acre")];
    },
  },
  {
    entry: "site-027",
    formulas: ["cuboidVolume"],
    source: gardening("table 'Number of gallons in square-built tanks'"),
    reached: "read",
    given: "five of the 111 cells of a table of square-built tanks",
    answers: tanks.map(([length, width, depth, answer]) => ({
      of: `imp gal, ${length} by ${width} by ${depth} ft`,
      ...answer,
    })),
    compute: () =>
      tanks.map(([length, width, depth]) =>
        cuboidVolume({ length: ft(length), width: ft(width), depth: ft(depth) }).in("imp gal"),
      ),
    note: "The year of the handbook is from memory. Large tanks come out too large: the factor of the table is 0.05 % high.",
  },
  {
    entry: "site-028",
    formulas: ["cuboidVolume", "cylinderVolume"],
    source: gardening("text before and after the table"),
    reached: "read",
    given: "a tank of 6 by 3 by 4 ft; a round one 4 ft across and 3 ft deep",
    answers: [
      {
        of: "imp gal, square-built",
        printed: 450,
        to: 1,
        wrong: { right: 448, why: "a rule of 6.25 imp gal to the ft3, meant to be quick; it is 6.2288" },
      },
      {
        of: "imp gal, round",
        printed: 234.946,
        to: 0.001,
        wrong: { right: 234.822, why: "the factor 4.8947 is 0.7854 x 6.232; with 6.2288 it is 4.8921" },
      },
    ],
    compute: () => [
      cuboidVolume({ length: ft(6), width: ft(3), depth: ft(4) }).in("imp gal"),
      cylinderVolume({ diameter: ft(4), depth: ft(3) }).in("imp gal"),
    ],
    note: "The year of the handbook is from memory.",
  },
  {
    entry: "site-033",
    formulas: ["coverVolume"],
    source: {
      title: "Sand math: how much sand do I need",
      publisher: "sand supplier technical page",
      year: 2011,
      where: "topdressing",
    },
    reached: "read",
    given: "1 ft2 covered 1 in deep",
    answers: [{ of: "yd3", printed: 0.0031, to: 0.0001 }],
    compute: () => [coverVolume({ area: quantity(1, "ft2"), depth: quantity(1, "in") }).in("yd3")],
    note: "Taken as a factor, the rounded figure gives 0.44 % too much: 0.775 for 0.772 yd3 on 1000 ft2 at 1/4 in.",
  },
  {
    entry: "site-036",
    formulas: ["coverVolume"],
    source: {
      title: "Mulch and topsoil estimating",
      publisher: "landscape contractor information sheet",
      where: "coverage list",
    },
    reached: "read",
    given: "what 1 yd3 covers at 1, 2, 3 and 4 in",
    answers: [
      { of: "ft2 at 1 in", printed: 324, to: 1 },
      { of: "ft2 at 2 in", printed: 162, to: 1 },
      { of: "ft2 at 3 in", printed: 108, to: 1 },
      { of: "ft2 at 4 in", printed: 81, to: 1 },
    ],
    compute: () =>
      [1, 2, 3, 4].map(
        (depth) => 1 / coverVolume({ area: quantity(1, "ft2"), depth: quantity(depth, "in") }).in("yd3"),
      ),
  },
  {
    entry: "site-037",
    formulas: ["coverVolume"],
    source: {
      title: "Too Easy To Take For Granted",
      publisher: "USGA Green Section, regional update",
      year: 2014,
      where: "text",
    },
    reached: "read",
    given: "1000 ft2 topdressed 0.005 and 0.02 in deep",
    answers: [
      {
        of: "ft3 at 0.005 in",
        printed: 0.5,
        to: 0.1,
        wrong: { right: 0.4, why: "0.01 in on 1000 ft2 is 0.83 ft3, not 1" },
      },
      {
        of: "ft3 at 0.02 in",
        printed: 2.0,
        to: 0.1,
        wrong: { right: 1.7, why: "0.01 in on 1000 ft2 is 0.83 ft3, not 1" },
      },
    ],
    compute: () =>
      [0.005, 0.02].map((depth) =>
        coverVolume({ area: quantity(1000, "ft2"), depth: quantity(depth, "in") }).in("ft3"),
      ),
    note: "The source gives two ranges side by side, 0.005-0.020 in and 0.5-2.0 ft3, and may mean them loosely.",
  },
];

/** Published examples on areas and volumes that are not checked. */
export const siteLeftOut: readonly LeftOut[] = [
  { entry: "site-022", reason: "the same page as soil-094" },
  {
    entry: "site-030",
    reason: "partly filled horizontal tank: nothing published was read; site-131 is checked in its place",
  },
];
