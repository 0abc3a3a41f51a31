import { quantity } from "../../src/quantity/index.js";
import {
  circleArea,
  circleDiameter,
  containment,
  copperSulfateConcentration,
  coverVolume,
  cylinderVolume,
  dryBulkDensity,
  layerMaterial,
  looseMaterials,
  meanDepth,
  offsetArea,
  paceCalibration,
  pacedDistance,
  perimeter,
  polygonArea,
  pondVolume,
  quadrilateralArea,
  rectangleArea,
  reducedBuffer,
  sectorArea,
  segmentArea,
  slopeOf,
  squareSide,
  tankCapacity,
  tankContents,
  trapezoidArea,
  triangleArea,
  waterDose,
} from "../../src/site/index.js";
import type { PublishedCheck } from "./check.js";

const ft = (value: number) => quantity(value, "ft");
const m = (value: number) => quantity(value, "m");
const cm = (value: number) => quantity(value, "cm");
/** A link of the surveyor's chain: 66 ft in 100 links. */
const links = (value: number) => ft(value * 0.66);
const percent = (value: number) => quantity(value, "%");

const soundings = [
  [0, 2, 3, 6, 6, 8, 7, 5, 3, 1, 0],
  [0, 1, 1, 1, 3, 4, 8, 6, 6, 4, 1, 0],
].map((row) => row.map(ft));

/** The lying tank whose contents are percents of its capacity. */
const lying = { shape: "lying cylinder", diameter: cm(100), length: cm(100) } as const;
const filled = (depth: number): number =>
  (100 * tankContents(lying, cm(depth)).in("L")) / tankCapacity(lying).in("L");

const dike = (margin: number) =>
  containment({ largest: quantity(20_000, "gal"), margin: percent(margin), floor: quantity(900, "ft2") });

/** The four corners that the sides 20, 30 and 40 and the angles 60 and 80 degrees make. */
const radians = Math.PI / 180;
const fourSides = [
  [0, 0],
  [30, 0],
  [30 - 40 * Math.cos(80 * radians), 40 * Math.sin(80 * radians)],
  [20 * Math.cos(60 * radians), 20 * Math.sin(60 * radians)],
] as const;
const between = (i: 0 | 1 | 2 | 3, j: 0 | 1 | 2 | 3) =>
  ft(Math.hypot(fourSides[i][0] - fourSides[j][0], fourSides[i][1] - fourSides[j][1]));

const lap = (straight: number, radius: number): number =>
  perimeter({ shape: "stadium", straight: m(straight), width: m(2 * radius) }).in("m");

/** Weight in lb of a cube of material. */
const weightOf = (poundsPerYard: number, side: ReturnType<typeof ft>): number =>
  layerMaterial({
    area: rectangleArea({ length: side, width: side }),
    depth: side,
    bulkDensity: quantity(poundsPerYard, "lb/yd3"),
  }).weight?.in("lb") ?? 0;

/** Worked examples of pacing, ponds, tanks, slopes, buffers and the like. */
export const siteFieldChecks: readonly PublishedCheck[] = [
  {
    entry: "site-023",
    formulas: ["paceCalibration"],
    source: {
      title: "Pacing (agricultural engineering text, surveying chapter)",
      publisher: "textbook page, stored copy",
      where: "two problems",
      url: "https://www.progressivegardening.com/agricultural-engineering-2/pacing.html",
    },
    reached: "read",
    given: "200.0 ft walked three times with 62, 60 and 64 paces",
    answers: [
      { of: "paces on the mean", printed: 62, to: 1 },
      { of: "ft a pace", printed: 3.2, to: 0.1 },
    ],
    compute: () => {
      const pace = paceCalibration({ course: ft(200), counts: [62, 60, 64] }).pace.value.in("ft");
      return [200 / pace, pace];
    },
    note: "The length of the second problem, 375 paces, lies outside of the stored lines.",
  },
  {
    entry: "site-024",
    formulas: ["paceCalibration", "pacedDistance"],
    source: {
      title: "Measuring, Pacing",
      publisher: "agricultural education lesson",
      where: "data sheet example",
    },
    reached: "read",
    given: "100 ft walked with 20, 21, 20 and 20 double steps; then 34 of them",
    answers: [
      { of: "ft a pace", printed: 4.9, to: 0.1 },
      {
        of: "ft",
        printed: 167,
        to: 1,
        wrong: { right: 168, why: "the pace is rounded to 4.9 ft first; it is 4.938" },
      },
    ],
    compute: () => {
      const pace = paceCalibration({ course: ft(100), counts: [20, 21, 20, 20] });
      return [pace.pace.value.in("ft"), pacedDistance({ pace, counts: 34 }).value.in("ft")];
    },
  },
  {
    entry: "site-025",
    formulas: ["paceCalibration"],
    source: {
      title: "Field surveying, lesson on pacing",
      publisher: "college course slides",
      where: "slide 8",
    },
    reached: "read",
    given: "100 ft walked twelve times, the highest and the lowest count dropped",
    answers: [{ of: "paces in 100 ft", printed: 30.3, to: 0.1 }],
    compute: () => {
      const counts = [30.5, 30, 31, 30, 29, 30, 30, 30.5, 30, 31, 32, 30];
      const { pace } = paceCalibration({ course: ft(100), counts, drop: "high and low" });
      return [100 / pace.value.in("ft")];
    },
  },
  {
    entry: "site-031",
    formulas: ["meanDepth"],
    source: {
      title: "The Tale of the Tape: measuring pond surface area and volume",
      publisher: "Texas Cooperative Extension (slides)",
      where: "determining average depth",
    },
    reached: "read",
    given: "two rows of soundings with the zeros at the banks, 23 in all, 76 ft together",
    answers: [
      { of: "soundings", printed: 23, to: 1 },
      { of: "ft", printed: 3.3, to: 0.1 },
    ],
    compute: () => {
      const { soundings: count, depth } = meanDepth({ rows: soundings });
      return [count, depth.in("ft")];
    },
  },
  {
    entry: "site-034",
    formulas: ["layerMaterial"],
    source: {
      title: "Sand math: how much sand do I need",
      publisher: "sand supplier technical page",
      year: 2011,
      where: "weights per cubic yard, second column",
    },
    reached: "read",
    kind: "transcription",
    given: "weights per cubic yard, also printed in tons",
    answers: [
      { of: "US ton/yd3, sand", printed: 1.35, to: 0.01 },
      { of: "US ton/yd3, topsoil", printed: 1.1, to: 0.1 },
      { of: "US ton/yd3, clay", printed: 1.5, to: 0.1 },
      { of: "US ton/yd3, compost", printed: 0.6, to: 0.1 },
    ],
    compute: () => looseMaterials.map(({ bulkDensity }) => weightOf(bulkDensity.value, ft(3)) / 2000),
  },
  {
    entry: "site-124",
    formulas: ["layerMaterial"],
    source: {
      title: "The Goldilocks Principle For Sand Topdressing",
      publisher: "USGA Green Section, regional update",
      year: 2018,
      where: "assumption",
      url: "https://www.usga.org/content/usga/home-page/course-care/regional-updates/central-region/2018/the-goldilocks-principle-for-sand-topdressing.html",
    },
    reached: "read",
    kind: "transcription",
    given: "one cubic foot of dry sand weighs about 100 lb",
    answers: [{ of: "lb/ft3", printed: 100, to: 1 }],
    compute: () => {
      const sand = looseMaterials.find(({ material }) => material === "sand");
      return [weightOf(sand?.bulkDensity.value ?? 0, ft(1))];
    },
    note: "Another source than that of the table.",
  },
  {
    entry: "site-125",
    formulas: ["segmentArea", "sectorArea"],
    source: {
      title: "Circular sections",
      publisher: "help page of a mathematics program",
      where: "application: the size of a plate from a fragment; example",
      url: "http://help.matheass.eu/en/CircularSections.html",
    },
    reached: "read",
    given: "a chord of 21 and a height of 6; an angle of 45 degrees on a radius of 1.2732395",
    answers: [
      { of: "cm2, segment", printed: 89.254148, to: 0.000001 },
      { of: "cm2, sector", printed: 154.2229, to: 0.0001 },
      { of: "m2, segment of 45 degrees", printed: 0.063460604, to: 0.00000001 },
    ],
    compute: () => [
      segmentArea({ chord: cm(21), height: cm(6) }).in("cm2"),
      sectorArea({ radius: cm(12.1875), angle: quantity(118.97953, "deg") }).in("cm2"),
      segmentArea({ radius: m(1.2732395), angle: quantity(45, "deg") }).in("m2"),
    ],
  },
  {
    entry: "site-126",
    formulas: ["segmentArea"],
    source: {
      title: "Area of a circular segment from chord and height",
      publisher: "University of Regina, mathematics question service",
      where: "answer to Larry, L = 12, h = 4",
      url: "http://mathcentral.uregina.ca/QQ/database/QQ.02.06/larry4.html",
    },
    reached: "read",
    given: "a chord of 12 ft and a height of 4 ft",
    answers: [
      {
        of: "ft2",
        printed: 34.64,
        to: 0.01,
        wrong: { right: 34.69, why: "the angle, 2.352, is rounded to 2.35 first" },
      },
    ],
    compute: () => [segmentArea({ chord: ft(12), height: ft(4) }).in("ft2")],
  },
  {
    entry: "site-127",
    formulas: ["rectangleArea", "circleArea", "triangleArea", "waterDose"],
    source: {
      title: "Estimating the Size of Your Pond",
      publisher: "Texas Parks and Wildlife",
      where: "calculating surface acreage; conversion factors",
      url: "https://tpwd.texas.gov/landwater/water/environconcerns/nuisance_plants/manage/pondsize.phtml",
    },
    reached: "read",
    given: "260 by 408 ft; a shoreline of 800 ft; a triangle of 300 and 500 ft; 1 ppm in an acre-foot",
    answers: [
      { of: "ft2, rectangle", printed: 106_080, to: 1 },
      { of: "acre, rectangle", printed: 2.44, to: 0.01 },
      { of: "acre, circle", printed: 1.17, to: 0.01 },
      { of: "ft2, triangle", printed: 75_000, to: 1 },
      { of: "acre, triangle", printed: 1.72, to: 0.01 },
      { of: "lb for 1 ppm in an acre-foot", printed: 2.7, to: 0.1 },
    ],
    compute: () => {
      const rectangle = rectangleArea({ length: ft(260), width: ft(408) });
      const triangle = triangleArea({ base: ft(300), height: ft(500) });
      const dose = waterDose({
        surface: quantity(1, "acre"),
        depth: ft(1),
        concentration: quantity(1, "ppm w/w", "ai"),
      });
      return [
        rectangle.in("ft2"),
        rectangle.in("acre"),
        circleArea({ circumference: ft(800) }).in("acre"),
        triangle.in("ft2"),
        triangle.in("acre"),
        dose.active.in("lb"),
      ];
    },
  },
  {
    entry: "site-128",
    formulas: ["waterDose"],
    source: {
      title: "Mathematics and Statistics for the Environment",
      publisher: "book extract on a reference site",
      where: "example 23.19",
      url: "http://what-when-how.com/Tutorial/topic-topic-1524mbeo/Mathematics-and-Statistics-for-the-Environment-637.html",
    },
    reached: "read",
    given: "0.5 mg/L copper in 15 million gallons, from copper sulfate with 25 % available copper",
    answers: [{ of: "lb copper sulfate", printed: 250, to: 1 }],
    compute: () => {
      const dose = waterDose({
        volume: quantity(15e6, "gal"),
        concentration: quantity(0.5, "mg/L", "Cu"),
        strength: quantity(25, "% w/w", "Cu/product"),
      });
      return [dose.product?.value ?? 0];
    },
  },
  {
    entry: "site-129",
    formulas: ["pondVolume"],
    source: {
      title: "Weed control in ponds and lakes (aquatics)",
      publisher: "Virginia Cooperative Extension",
      year: 1981,
      where: "acre-feet of a pond",
      url: "http://hdl.handle.net/10919/87933",
    },
    reached: "read",
    given: "1 acre of surface, 10 ft at the deepest point, half of it as the mean",
    answers: [{ of: "acre-ft", printed: 5, to: 1 }],
    compute: () => [pondVolume({ area: quantity(1, "acre"), meanDepth: ft(5) }).in("acre-ft")],
  },
  {
    entry: "site-130",
    formulas: ["cylinderVolume"],
    source: {
      title: "Bath treatments: formalin",
      publisher: "aquaculture reference page",
      where: "example, 200 ppm",
      url: "http://aquatext.com/tables/bath.htm",
    },
    reached: "read",
    given: "a round tank 7.5 m across and 2 m deep",
    answers: [{ of: "m3", printed: 88.35, to: 0.01, printing: "cut" }],
    compute: () => [cylinderVolume({ diameter: m(7.5), depth: m(2) }).in("m3")],
  },
  {
    entry: "site-131",
    formulas: ["tankContents", "tankCapacity"],
    source: {
      title: "How to gauge a horizontal cylindrical tank",
      publisher: "civil engineering handbook, reposted",
      where: "rules 1 and 2, the correct answers",
      url: "https://www.civilengineeringhandbook.tk/centrifugal-pumps-2/how-to-gauge-a-horizontal-cylindrical-tank.html",
    },
    reached: "read",
    given: "a lying tank filled to 16 and to 44 % of its diameter",
    answers: [
      { of: "% of capacity at 16 %", printed: 10.3, to: 0.1 },
      { of: "% of capacity at 44 %", printed: 42.4, to: 0.1 },
    ],
    compute: () => [filled(16), filled(44)],
    note: "The page gives rules of thumb, 9.9 and 42.5 %, with the correct answers beside them.",
  },
  {
    entry: "site-161",
    formulas: ["copperSulfateConcentration"],
    source: {
      title: "Use of copper in freshwater aquaculture and farm ponds (FA008)",
      publisher: "University of Florida, IFAS Extension",
      year: 2014,
      where: "equation 1 and the sentences after it",
      url: "https://edis.ifas.ufl.edu/publication/fa008",
    },
    reached: "read",
    kind: "transcription",
    given: "a total alkalinity of 100, of 250 and of 400 ppm",
    answers: [
      { of: "ppm, a hundredth", printed: 1, to: 0.1 },
      { of: "ppm at 250", printed: 2.5, to: 0.1 },
      { of: "ppm over 250", printed: 2.5, to: 0.1 },
    ],
    compute: () =>
      [100, 250, 400].map((ppm) =>
        copperSulfateConcentration({
          alkalinity: quantity(ppm, "mg/L", "CaCO3 equivalent"),
        }).concentration.in("mg/L"),
      ),
  },
  {
    entry: "site-160",
    formulas: ["containment"],
    source: {
      title: "Dike design procedure",
      publisher: "design note in a library of shared documents",
      where: "horizontal tanks only; horizontal and vertical tanks",
      url: "https://ru.scribd.com/doc/36310991/dique",
    },
    reached: "read",
    given:
      "15,000 gal on 30 by 45 ft; 20,000 gal on 30 by 75 ft with a second upright tank of 10.5 ft beside it; 7.48 gal to the cubic foot, pi 3.14",
    answers: [
      {
        of: "ft3 of 15,000 gal",
        printed: 2006,
        to: 1,
        wrong: { right: 2005, why: "0.1337 ft3 to the gallon is a rounding: 231 in3 are 0.13368" },
      },
      {
        of: "ft of wall",
        printed: 1.486,
        to: 0.001,
        wrong: { right: 1.485, why: "0.1337 ft3 to the gallon is a rounding: 231 in3 are 0.13368" },
      },
      { of: "in of wall", printed: 17.8, to: 0.1 },
      { of: "ft3 of 20,000 gal", printed: 2674, to: 1 },
      {
        of: "ft2 of the second tank",
        printed: 86.5,
        to: 0.1,
        wrong: { right: 86.6, why: "with pi 3.14 it is 86.55, which the source cuts" },
      },
      { of: "ft of wall beside it", printed: 1.236, to: 0.001 },
      { of: "in of wall beside it", printed: 14.8, to: 0.1 },
    ],
    compute: () => {
      const all = percent(100);
      const lying = containment({
        largest: quantity(15_000, "gal"),
        margin: all,
        floor: quantity(1350, "ft2"),
      });
      const foot = circleArea({ diameter: quantity(10.5, "ft") });
      const upright = containment({
        largest: quantity(20_000, "gal"),
        margin: all,
        floor: quantity(2250, "ft2"),
        footprints: [foot],
      });
      const inches = (one: typeof lying) => one.wall?.in("in") ?? Number.NaN;
      return [
        lying.volume.in("ft3"),
        inches(lying) / 12,
        inches(lying),
        upright.volume.in("ft3"),
        foot.in("ft2"),
        inches(upright) / 12,
        inches(upright),
      ];
    },
    note: "The source writes 30 by 45 ft for the floor of 2,250 ft2; the drawing has 75 ft.",
  },
  {
    entry: "site-132",
    formulas: ["containment"],
    source: {
      title: "SPCC Guidance for Regional Inspectors",
      publisher: "US Environmental Protection Agency",
      where: "figure 4-5, criterion of 110 %",
      url: "https://scribd.com/document/614313170/Secondary-Containment-Guidance",
    },
    reached: "read",
    given: "a tank of 20,000 gal in a dike of 45 by 20 ft, at 100 and at 110 %",
    answers: [
      { of: "ft3 at 100 %", printed: 2674, to: 1 },
      { of: "ft of wall at 100 %", printed: 2.97, to: 0.01 },
      { of: "gal at 110 %", printed: 22_000, to: 1 },
      { of: "ft3 at 110 %", printed: 2941, to: 1 },
      { of: "ft of wall at 110 %", printed: 3.27, to: 0.01 },
      { of: "in of freeboard", printed: 3.6, to: 0.1 },
    ],
    compute: () => {
      const [bare, more] = [dike(100), dike(110)];
      const [low, high] = [bare.wall?.in("in") ?? 0, more.wall?.in("in") ?? 0];
      return [
        bare.volume.in("ft3"),
        low / 12,
        more.volume.in("gal"),
        more.volume.in("ft3"),
        high / 12,
        high - low,
      ];
    },
  },
  {
    entry: "site-133",
    formulas: ["reducedBuffer"],
    source: {
      title: "Drift and the ESA",
      publisher: "Pesticide Environmental Stewardship",
      where: "buffer zone, example",
      url: "https://pesticidestewardship.org/?p=7393",
    },
    reached: "read",
    given: "a buffer of 50 ft with reductions of 50 and 30 %",
    answers: [
      { of: "% reduction", printed: 80, to: 1 },
      { of: "ft", printed: 10, to: 1 },
    ],
    compute: () => {
      const left = reducedBuffer({ distance: ft(50), reductions: [50, 30].map(percent), rule: "sum" });
      return [left.reduction.in("%"), left.distance.in("ft")];
    },
  },
  {
    entry: "site-134",
    formulas: ["coverVolume"],
    source: {
      title: "Topdressers are dressed up with accessories",
      publisher: "Grounds Maintenance (trade magazine)",
      where: "determining material needs",
      url: "http://grounds-mag.com/mag/grounds_maintenance_topdressers_dressed_accessories/",
    },
    reached: "read",
    given: "5,000 ft2 at 1/8 in, 50,000 ft2 at 1/4 in",
    answers: [
      { of: "yd3 on 5,000 ft2", printed: 2, to: 1 },
      { of: "yd3 on 50,000 ft2", printed: 39, to: 1 },
    ],
    compute: () =>
      [
        [5000, 0.125],
        [50_000, 0.25],
      ].map(([area = 0, depth = 0]) =>
        coverVolume({ area: quantity(area, "ft2"), depth: quantity(depth, "in") }).in("yd3"),
      ),
  },
  {
    entry: "site-135",
    formulas: ["dryBulkDensity"],
    source: {
      title: "Practice problems: porosity and bulk density",
      publisher: "University of California, Davis, Soil Science 100",
      where: "problem 2",
      url: "https://lawr.ucdavis.edu/classes/ssc100/probsets/pset01.html",
    },
    reached: "read",
    given: "400 cm3 of soil that weigh 600 g at 10 % moisture",
    answers: [{ of: "g dry", printed: 545.5, to: 0.1 }],
    compute: () => {
      const density = dryBulkDensity({
        bulkDensity: quantity(600 / 400, "g/mL"),
        moisture: percent(10),
        basis: "dry weight",
      });
      return [density.times(quantity(400, "mL")).in("g")];
    },
  },
  {
    entry: "site-136",
    formulas: ["perimeter"],
    source: {
      title: "How many meters a lap of the playground",
      publisher: "maker of sports surfaces, technical page",
      where: "tracks with radii of 36 and 37.898 m",
      url: "http://en.jiehao1996.com/news/35.html",
    },
    reached: "read",
    given: "laps by straight and radius of the line that is measured, 1.22 m from lane to lane",
    answers: [
      { of: "m, lane 1, radius 36.30", printed: 400, to: 1 },
      { of: "m, lane 2", printed: 407.04, to: 0.01 },
      { of: "m, lane 3", printed: 414.7, to: 0.01 },
      { of: "m, lane 8", printed: 453.03, to: 0.01 },
      { of: "m, radius 38.198", printed: 400, to: 1 },
    ],
    compute: () => [
      lap(85.96, 36.3),
      lap(85.96, 36 + 1.22 + 0.2),
      lap(85.96, 36 + 2 * 1.22 + 0.2),
      lap(85.96, 36 + 7 * 1.22 + 0.2),
      lap(80, 38.198),
    ],
    note: "Lane 1 is measured 0.30 m from its curb, the others 0.20 m from their line: rules of track and field, from memory.",
  },
  {
    entry: "site-137",
    formulas: ["squareSide", "circleDiameter", "perimeter"],
    source: {
      title: "How many linear feet are around an acre?",
      publisher: "general reference site",
      where: "square and circular acre",
      url: "https://www.reference.com/science/many-linear-feet-around-acre-55a7bbef9f9e2920",
    },
    reached: "read",
    given: "an acre as a square and as a circle",
    answers: [
      { of: "ft, side of the square", printed: 208.7, to: 0.1 },
      {
        of: "ft around the square",
        printed: 836,
        to: 1,
        wrong: { right: 835, why: "four times the side rounded to 209 ft" },
      },
      { of: "ft around the circle", printed: 740, to: 1 },
    ],
    compute: () => {
      const side = squareSide(quantity(1, "acre"));
      const diameter = circleDiameter(quantity(1, "acre"));
      return [
        side.in("ft"),
        perimeter({ shape: "square", side }).in("ft"),
        perimeter({ shape: "circle", diameter }).in("ft"),
      ];
    },
  },
  {
    entry: "site-138",
    formulas: ["slopeOf"],
    source: {
      title: "What does a 4 to 1 slope mean: table of common slopes",
      publisher: "question-and-answer page",
      where: "table",
      url: "https://consumersolution.org/what-does-a-4-1-slope-mean/",
    },
    reached: "read",
    given: "slopes of 1 in 8 and 1 in 4, of 10 and 15 degrees",
    answers: [
      { of: "deg, 1 in 8", printed: 7.13, to: 0.01 },
      { of: "% grade, 1 in 8", printed: 12.5, to: 0.1 },
      { of: "deg, 1 in 4", printed: 14.04, to: 0.01 },
      { of: "% grade, 1 in 4", printed: 25, to: 1 },
      { of: "run, 10 degrees", printed: 5.67, to: 0.01 },
      { of: "% grade, 10 degrees", printed: 17.6, to: 0.1 },
      { of: "run, 15 degrees", printed: 3.73, to: 0.01 },
      { of: "% grade, 15 degrees", printed: 26.8, to: 0.1 },
    ],
    compute: () => {
      const [eighth, quarter, ten, fifteen] = [
        slopeOf("1 in 8"),
        slopeOf("4:1"),
        slopeOf("10 deg"),
        slopeOf("15 deg"),
      ];
      return [
        eighth.angle.in("deg"),
        eighth.grade.in("% grade"),
        quarter.angle.in("deg"),
        quarter.grade.in("% grade"),
        ten.run ?? 0,
        ten.grade.in("% grade"),
        fifteen.run ?? 0,
        fifteen.grade.in("% grade"),
      ];
    },
  },
  {
    entry: "site-139",
    formulas: ["trapezoidArea", "offsetArea"],
    source: {
      title: "A treatise on surveying and navigation",
      publisher: "19th century textbook, text of a scan",
      where: "mensuration, problem V, examples 1 and 3",
      url: "https://afripics.com/image/search/detail/0A2EF179-0F52-4A64-A50B-1238009EDB5F",
    },
    reached: "read",
    given:
      "parallel sides of 750 and 1225 links, 1540 apart; a field with perpendiculars of 352 and 595 links at 110 and 745 of 1110",
    answers: [
      { of: "acre, whole, of 15 acres 33 perches", printed: 15, to: 1, printing: "cut" },
      { of: "perches above", printed: 33, to: 1 },
      { of: "roods, of 4 acres 1 rood and some perches", printed: 17, to: 1, printing: "cut" },
    ],
    compute: () => {
      const acres = trapezoidArea({ a: links(750), b: links(1225), height: links(1540) }).in("acre");
      const field = offsetArea({
        spacing: [110, 635, 365].map(links),
        widths: [0, 352, 595, 0].map(links),
      });
      return [acres, (acres - 15) * 160, field.in("acre") * 4];
    },
    note: "The perches of the second answer are lost in the scan. An acre has 4 roods of 40 perches.",
  },
  {
    entry: "site-140",
    formulas: ["quadrilateralArea", "polygonArea"],
    source: {
      title: "Trigonometry, problems on areas of polygons",
      publisher: "19th century textbook, text of a scan",
      where: "article 163, exercise 9",
      url: "https://books.google.co.ve/books?id=6ysAAAAAYAAJ&pg=PA160",
    },
    reached: "read",
    given: "a quadrilateral with sides of 20, 30 and 40 rods, angles of 60 and 80 degrees between them",
    answers: [
      { of: "square rods, by a diagonal and four sides", printed: 593.58, to: 0.01 },
      { of: "square rods, by corners", printed: 593.58, to: 0.01 },
    ],
    compute: () => [
      quadrilateralArea({
        diagonal: between(1, 3),
        a: between(0, 1),
        b: between(3, 0),
        c: between(1, 2),
        d: between(2, 3),
      }).in("ft2"),
      polygonArea(fourSides, "ft").in("ft2"),
    ],
    note: "Feet stand for rods. The diagonal and the fourth side follow from the angles.",
  },
];
