import { wholeUnitsFor } from "../../src/numeric/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  annulusArea,
  areaOfShape,
  averageRadiusArea,
  circleArea,
  coverVolume,
  netArea,
  polygonArea,
  rectangleArea,
  sectorArea,
  siteArea,
  surfaceArea,
  trapezoidArea,
  triangleArea,
  triangleAreaFromSides,
} from "../../src/site/index.js";
import type { Answer, PublishedCheck, Source } from "./check.js";

const ft = (value: number) => quantity(value, "ft");
const m = (value: number) => quantity(value, "m");
const deg = (value: number) => quantity(value, "deg");
const feet = (value: number) => ({ value, unit: "ft" });
const metres = (value: number) => ({ value, unit: "m" });

const shortPi = "the source takes pi as 3.14";
const sevenths = "the source takes pi as 22/7";

/** A figure that is a little off in its source. */
const off = (of: string, printed: number, to: number, right: number, why: string): Answer => ({
  of,
  printed,
  to,
  wrong: { right, why },
});

const ring = (outer: number, inner: number): number =>
  annulusArea({ outerRadius: m(outer), innerRadius: m(inner) }).in("m2");
const quarter = (radius: number): number => sectorArea({ radius: m(radius), angle: deg(90) }).in("m2");

const radii = [7.1, 8.9, 9.7, 10.9, 12.4, 11.7, 11.8, 9.9, 6.8, 8.2, 9.7, 10.4, 12, 11.4, 8.9, 8] as const;
const putting = () => averageRadiusArea({ radii: radii.map(ft) });

const textbook = (title: string, where: string, url?: string): Source => ({
  title,
  publisher: "National Council of Educational Research and Training (India)",
  where,
  ...(url === undefined ? {} : { url }),
});

/** Length of the slope for one of plan, from the area of a square of plan. */
const stretch = (degrees: number): number => surfaceArea(quantity(1, "m2", "plan"), deg(degrees)).in("m2");

/** The property of the turf tips: what is not turf, in ft2. */
const objects = () => [
  { name: "house", area: rectangleArea({ length: ft(50), width: ft(25) }) },
  { name: "driveway", area: rectangleArea({ length: ft(15), width: ft(40) }) },
  { name: "porch", area: rectangleArea({ length: ft(8), width: ft(12) }) },
  { name: "mulch 1", area: rectangleArea({ length: ft(10), width: ft(5) }) },
  { name: "mulch 2", area: rectangleArea({ length: ft(25), width: ft(5) }) },
  { name: "mulch 3", area: sectorArea({ radius: ft(8), angle: deg(90) }) },
  { name: "mulch 4", area: sectorArea({ radius: ft(8), angle: deg(90) }) },
];

/** Worked examples of areas from extension pages, textbooks, papers of examinations and open software. */
export const siteWorkedChecks: readonly PublishedCheck[] = [
  {
    entry: "site-101",
    formulas: ["netArea", "trapezoidArea", "rectangleArea", "sectorArea"],
    source: {
      title: "How big is your lawn?",
      publisher: "Purdue University turf tips",
      year: 2014,
      where: "area calculation example, figure 2",
      url: "http://purdueturftips.blogspot.com/2014/04/how-big-is-your-lawn.html",
    },
    reached: "read",
    given:
      "a lot with parallel sides of 90 and 60 ft, 80 ft apart; house, drive, porch and four beds cut out, two of them quarter circles of 8 ft",
    answers: [
      { of: "ft2, lot", printed: 6000, to: 1 },
      { of: "ft2, house", printed: 1250, to: 1 },
      { of: "ft2, driveway", printed: 600, to: 1 },
      { of: "ft2, porch", printed: 96, to: 1 },
      { of: "ft2, bed 1", printed: 50, to: 1 },
      { of: "ft2, bed 2", printed: 125, to: 1 },
      { of: "ft2, bed 3, a quarter circle", printed: 50, to: 1 },
      { of: "ft2, bed 4, a quarter circle", printed: 50, to: 1 },
      off("ft2, not turf", 2221, 1, 2222, shortPi),
      off("ft2, turf", 3779, 1, 3778, shortPi),
    ],
    compute: () => {
      const lot = trapezoidArea({ a: ft(90), b: ft(60), height: ft(80) });
      const site = netArea({ parts: [{ name: "lot", area: lot }], cutOuts: objects() });
      const list = [lot, ...objects().map(({ area }) => area), site.cutOut, site.net];
      return list.map((area) => area.in("ft2"));
    },
  },
  {
    entry: "site-102",
    formulas: ["siteArea", "areaOfShape"],
    source: {
      title: "Calculation example (Bay-Wise landscaping)",
      publisher: "University of Maryland Extension",
      where: "steps 1 to 3",
      url: "https://extension.umd.edu/bay-wise/calculation-example",
    },
    reached: "read",
    given: "67 by 130 ft, a right triangle with legs of 20 ft, 20 by 25 ft; 4857.5 ft2 of it no lawn",
    answers: [
      { of: "ft2, large rectangle", printed: 8710, to: 1 },
      { of: "ft2, triangle", printed: 200, to: 1 },
      { of: "ft2, small rectangle", printed: 500, to: 1 },
      { of: "ft2, property", printed: 9410, to: 1 },
      { of: "ft2, lawn", printed: 4552.5, to: 0.1 },
    ],
    compute: () => {
      const parts = [
        { shape: "rectangle", length: feet(130), width: feet(67) },
        { shape: "triangle", base: feet(20), height: feet(20) },
        { shape: "rectangle", length: feet(25), width: feet(20) },
      ] as const;
      const site = siteArea({
        parts,
        cutOuts: [{ shape: "measured", area: { value: 4857.5, unit: "ft2" } }],
      });
      return [...parts.map((part) => areaOfShape(part)), site.gross, site.net].map((area) => area.in("ft2"));
    },
  },
  {
    entry: "site-103",
    formulas: ["siteArea", "wholeUnitsFor"],
    source: {
      title: "How to measure",
      publisher: "sod supplier's page",
      where: "example",
      url: "http://www.arlgrass.com/how-to-measure.html",
    },
    reached: "read",
    given:
      "a lawn in six rectangles: 10 x 50, 70 x 40, 10 x 25, 10 x 30, 40 x 30, 30 x 10 ft; a pallet of sod is 450 ft2",
    answers: [
      { of: "ft2", printed: 5350, to: 1 },
      { of: "pallets, cut", printed: 11.8, to: 0.1, printing: "cut" },
      { of: "pallets", printed: 12, to: 1 },
    ],
    compute: () => {
      const sides = [
        [10, 50],
        [70, 40],
        [10, 25],
        [10, 30],
        [40, 30],
        [30, 10],
      ] as const;
      const lawn = siteArea({
        parts: sides.map(([length, width]) => ({
          shape: "rectangle",
          length: feet(length),
          width: feet(width),
        })),
      }).net.in("ft2");
      return [lawn, lawn / 450, wholeUnitsFor(lawn, 450)];
    },
  },
  {
    entry: "site-104",
    formulas: ["averageRadiusArea", "netArea", "rectangleArea"],
    source: {
      title: "How to measure a putting green",
      publisher: "putting green installer's guide in a document archive",
      where: "16 point formula, steps 3 to 6",
      url: "https://deploy.abcdocz.com/doc/187946/how-to-measure-a-putting-green-1.-shape",
    },
    reached: "read",
    given: "a green by 16 radii of 6.8 to 12.4 ft, in a yard of 30 by 20 ft; 247 ft2 of it putting surface",
    answers: [
      off(
        "ft2, green",
        305.27,
        0.01,
        305.58,
        "the source takes pi as 3.14 and the mean radius, 9.8625 ft, as 9.86",
      ),
      { of: "ft2, green, whole", printed: 306, to: 1 },
      { of: "ft2, the rest of the yard", printed: 294, to: 1 },
      { of: "ft2, fringe", printed: 59, to: 1 },
    ],
    compute: () => {
      const green = putting();
      const yard = rectangleArea({ length: ft(30), width: ft(20) });
      const rest = netArea({ parts: [{ area: yard }], cutOuts: [{ area: green }] });
      const fringe = netArea({ parts: [{ area: green }], cutOuts: [{ area: quantity(247, "ft2") }] });
      return [green, green, rest.net, fringe.net].map((area) => area.in("ft2"));
    },
  },
  {
    entry: "site-108",
    formulas: ["annulusArea", "circleArea"],
    source: {
      title: "Mathematics paper 2017, question 35, with solution",
      publisher: "West African Examinations Council, in an archive of past papers",
      year: 2017,
      where: "question 35",
      url: "https://www.africaexams.com/test/waec-mathematics-2017-paper/35",
    },
    reached: "read",
    given: "a path 2.5 m wide around a round pond with a radius of 4 m",
    answers: [
      off("m2, pond and path", 132.79, 0.01, 132.73, sevenths),
      off("m2, pond", 50.29, 0.01, 50.27, sevenths),
      off("m2, path", 82.5, 0.01, 82.47, sevenths),
    ],
    compute: () => [
      circleArea({ radius: m(6.5) }).in("m2"),
      circleArea({ radius: m(4) }).in("m2"),
      ring(6.5, 4),
    ],
  },
  {
    entry: "site-111",
    formulas: ["sectorArea"],
    source: textbook(
      "Mathematics, class 10, areas related to circles",
      "exercise 12.2, question 8, with the answers of a tutor",
      "https://www.lidolearning.com/questions/m_g10_ncert_ch12_ex12p2_8pii/a-horse-is-tied-to-a-peg-at-on/",
    ),
    reached: "read",
    given: "the grass that a rope of 5 or 10 m reaches from the corner of a square field of 15 m",
    answers: [
      off("m2 with 5 m", 19.625, 0.001, 19.635, shortPi),
      { of: "m2 with 10 m", printed: 78.5, to: 0.1 },
      off("m2 more", 58.875, 0.001, 58.905, shortPi),
    ],
    compute: () => [quarter(5), quarter(10), quarter(10) - quarter(5)],
    note: "The page says 22/7, but its figures come from 3.14.",
  },
  {
    entry: "site-112",
    formulas: ["netArea", "sectorArea", "rectangleArea"],
    source: {
      title: "Class 10 board examination, mathematics, paper 30/3/1",
      publisher: "Central Board of Secondary Education (India)",
      year: 2024,
      where: "question 36, with the answers of a tutor",
      url: "https://www.saplingacademy.in/a-stable-owner-has-four/",
    },
    reached: "read",
    given: "four quarter circles of 7 m in the corners of a square field of 20 m; one of 10 m",
    answers: [
      { of: "m2, field", printed: 400, to: 1 },
      { of: "m2, four quarter circles", printed: 154, to: 1 },
      off("m2, a quarter circle of 10 m", 78.57, 0.01, 78.54, sevenths),
      { of: "m2 left", printed: 246, to: 1 },
    ],
    compute: () => {
      const field = rectangleArea({ length: m(20), width: m(20) });
      const area = sectorArea({ radius: m(7), angle: deg(90) });
      const site = netArea({ parts: [{ area: field }], cutOuts: [{ area }, { area }, { area }, { area }] });
      return [site.gross.in("m2"), site.cutOut.in("m2"), quarter(10), site.net.in("m2")];
    },
  },
  {
    entry: "site-115",
    formulas: ["triangleAreaFromSides"],
    source: {
      title: "Area of a field by triangles (exercise 1a, 36)",
      publisher: "University of Genoa, mathematics teaching pages",
      where: "script next to the figure",
      url: "http://macosa.dima.unige.it/om/esr/ge2/1a_36s.htm",
    },
    reached: "read",
    given: "a triangle of a field with sides of 53.9, 64.4 and 40.1 m",
    answers: [{ of: "m2", printed: 1076.817, to: 0.001 }],
    compute: () => [triangleAreaFromSides({ a: m(53.9), b: m(64.4), c: m(40.1) }).in("m2")],
    note: "The three other triangles of the field are not printed beside it.",
  },
  {
    entry: "site-116",
    formulas: ["triangleAreaFromSides", "areaOfShape"],
    source: textbook(
      "Mathematics, class 9, chapter 12, Heron's formula",
      "examples 1 and 2, page 201",
      "https://fliphtml5.com/bzmwb/gnxm/CBSE-Class-9-NCERT-Book-Maths/201/",
    ),
    reached: "read",
    given:
      "triangles with sides of 8, 11 and 13 cm, and of 120, 80 and 50 m (a park to be planted with grass)",
    answers: [
      { of: "cm2 in multiples of the root of 30", printed: 8, to: 0.000001 },
      { of: "m2 in multiples of the root of 15", printed: 375, to: 0.000001 },
    ],
    compute: () => {
      const small = triangleAreaFromSides({
        a: quantity(8, "cm"),
        b: quantity(11, "cm"),
        c: quantity(13, "cm"),
      });
      const park = areaOfShape({
        shape: "triangle from sides",
        a: metres(120),
        b: metres(80),
        c: metres(50),
      });
      return [(small.in("m2") * 10_000) / Math.sqrt(30), park.in("m2") / Math.sqrt(15)];
    },
    note: "The roots are printed as such, so the figures before them are exact.",
  },
  {
    entry: "site-118",
    formulas: ["polygonArea"],
    source: {
      title: "Traverse computations, chapter G, area: example 1",
      publisher: "open-access surveying library",
      where: "figure G-7 and the table of step 4",
      url: "https://jerrymahun.com/index.php/home/open-access/17-trav-comps/46-travcomps-chap-g?start=2",
    },
    reached: "read",
    given:
      "four corners by northing and easting in ft: 500.000 2000.000, 323.614 1561.426, 526.996 1488.321, 719.336 1686.956",
    answers: [{ of: "ft2", printed: 102_930, to: 10, printing: "cut" }],
    compute: () => [
      polygonArea(
        [
          [500, 2000],
          [323.614, 1561.426],
          [526.996, 1488.321],
          [719.336, 1686.956],
        ],
        "ft",
      ).in("ft2"),
    ],
    note: "The last digit of the printed area was not in the copy that was read; half the difference of the printed sums of cross products, 3 590 045.6 and 3 384 174.1, is 102 935.75, and we compute 102 935.72.",
  },
  {
    entry: "site-121",
    formulas: ["surfaceArea"],
    source: {
      title: "Calculating area on a slope (forest example)",
      publisher: "forest measurement guide",
      where: "correcting the area",
    },
    reached: "read",
    given: "a hectare of plan area at 30 degrees",
    answers: [{ of: "m2 of ground", printed: 11_547, to: 1 }],
    compute: () => [surfaceArea(quantity(10_000, "m2", "plan"), deg(30)).in("m2")],
  },
  {
    entry: "site-026",
    formulas: ["surfaceArea"],
    source: {
      title: "Instructions of a height meter and clinometer",
      publisher: "instrument maker's manual",
      where: "page 14, correction for the slope of the ground",
    },
    reached: "read",
    given: "25 m (82 ft) along ground that slopes 9 degrees; the reduction at 9 and at 35 degrees",
    answers: [
      { of: "m of height, 13 m reduced", printed: 12.8, to: 0.1 },
      off(
        "m of plan",
        24.6,
        0.1,
        24.7,
        "the cosine of 9 degrees, 0.98769, is taken as 0.987 and the product cut",
      ),
      off("ft of plan", 80.9, 0.1, 81, "the cosine of 9 degrees, 0.98769, is taken as 0.987"),
      off(
        "% less at 9 degrees",
        2.3,
        0.1,
        1.2,
        "1 - 0.987 is 1.3 %, as its own example has it, and exactly 1.2 %",
      ),
      { of: "% less at 35 degrees", printed: 18, to: 1 },
    ],
    compute: () => [
      13 / stretch(9),
      25 / stretch(9),
      82 / stretch(9),
      100 - 100 / stretch(9),
      100 - 100 / stretch(35),
    ],
    note: "A strip of ground is longer than its plan as an area is larger, so a length holds the formula as well.",
  },
  {
    entry: "site-122",
    formulas: ["circleArea", "triangleArea", "rectangleArea"],
    source: {
      title: "How to measure",
      publisher: "turf growers' page, Australia",
      where: "square and rectangle, circle, triangle, irregular shaped lawn",
      url: "https://turfgrowersdirect.com.au/how-to-measure/",
    },
    reached: "read",
    given:
      "8 by 4 m, 10 by 5 m; radius of 7 m; base of 10 m and height of 5 m; radius of 3 m beside 4 by 7 m",
    answers: [
      { of: "m2, 8 by 4 m", printed: 32, to: 1 },
      { of: "m2, 10 by 5 m", printed: 50, to: 1 },
      off("m2, circle", 153.86, 0.01, 153.94, shortPi),
      { of: "m2, triangle", printed: 25, to: 1 },
      off("m2, circle of the irregular lawn", 28.26, 0.01, 28.27, shortPi),
    ],
    compute: () =>
      [
        rectangleArea({ length: m(8), width: m(4) }),
        rectangleArea({ length: m(10), width: m(5) }),
        circleArea({ radius: m(7) }),
        triangleArea({ base: m(10), height: m(5) }),
        circleArea({ radius: m(3) }),
      ].map((area) => area.in("m2")),
  },
  {
    entry: "site-123",
    formulas: ["circleArea"],
    source: {
      title: "Chemigation needs proper calibration",
      publisher: "farm magazine, after South Dakota State University Extension",
      year: 2023,
      where: "do the math, area covered",
      url: "https://www.farmprogress.com/farming-equipment/chemigation-needs-proper-calibration",
    },
    reached: "read",
    given: "a circle with a wetted radius of 1 ft, as the factor for the square of any radius",
    answers: [off("acre", 0.00007208, 0.00000001, 0.00007212, shortPi)],
    compute: () => [circleArea({ radius: ft(1) }).in("acre")],
  },
  {
    entry: "site-162",
    formulas: ["coverVolume"],
    source: {
      title: "Formula for the amount of compost",
      publisher: "Cornell University, Crop and Soil Sciences, compost marketing guidelines",
      where: "example",
      url: "http://compost.css.cornell.edu/market-label/guidelines/formula.htm",
    },
    reached: "read",
    given: "2 in of compost on 350 by 200 ft",
    answers: [off("yd3", 434, 1, 432, "the source multiplies by 0.0031, which is 1/324 taken up")],
    compute: () => [
      coverVolume({
        area: rectangleArea({ length: ft(350), width: ft(200) }),
        depth: quantity(2, "in"),
      }).in("yd3"),
    ],
  },
];
