// Areas, volumes and slopes from exact geometry.
import { quantity } from "../../src/quantity/index.js";
import {
  annulusArea,
  annulusWidth,
  areaEstimate,
  averageRadiusArea,
  circleDiameter,
  containment,
  contourVolume,
  copperSulfateConcentration,
  coverArea,
  coverDepth,
  coverVolume,
  ellipseArea,
  ellipseLength,
  groundLength,
  looseMaterials,
  mixWeights,
  offsetArea,
  paceCalibration,
  passesAround,
  perimeter,
  quadrilateralArea,
  radialArea,
  reducedBuffer,
  sectorArea,
  segmentArea,
  slopeOf,
  stadiumArea,
  surfaceArea,
  tankContents,
  tankDepth,
  triangleAreaFromSides,
  triangleHeight,
  waterDose,
} from "../../src/site/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "site";
const feet = (value: number) => quantity(value, "ft");
const meters = (value: number) => quantity(value, "m");
const ft2 = (value: number) => quantity(value, "ft2");
const m2 = (value: number) => quantity(value, "m2");
const percent = (value: number) => quantity(value, "%");
const degree = (value: number) => quantity(value, "deg");
const { PI } = Math;

/** A segment of a circle of radius 10 over an angle, and its chord and height. */
const segment = (angle: number): Cell => [
  `segment over ${angle} rad`,
  (100 * (angle - Math.sin(angle))) / 2,
  () =>
    segmentArea({
      chord: feet(20 * Math.sin(angle / 2)),
      height: feet(10 * (1 - Math.cos(angle / 2))),
    }).in("ft2"),
];

const shapes: readonly Cell[] = [
  [
    "a ring of 10 and 8",
    36 * PI,
    () => annulusArea({ outerRadius: feet(10), innerRadius: feet(8) }).in("ft2"),
  ],
  [
    "a ring of 20 across, 2 wide",
    36 * PI,
    () => annulusArea({ outerDiameter: feet(20), width: feet(2) }).in("ft2"),
  ],
  [
    "a ring about 16 across, 2 wide",
    36 * PI,
    () => annulusArea({ innerDiameter: feet(16), width: feet(2) }).in("ft2"),
  ],
  [
    "a quarter of a circle of 10",
    25 * PI,
    () => sectorArea({ radius: feet(10), angle: degree(90) }).in("ft2"),
  ],
  [
    "a full turn, deg",
    1,
    () =>
      goes(() => sectorArea({ radius: feet(10), angle: degree(360) })) &&
      !goes(() => sectorArea({ radius: feet(10), angle: degree(360.001) }))
        ? 1
        : 0,
  ],
  ["an ellipse of 6 by 4", 6 * PI, () => ellipseArea({ length: feet(6), width: feet(4) }).in("ft2")],
  ["the circle of 25 pi", 10, () => circleDiameter(ft2(25 * PI)).in("ft")],
  ["the triangle of 20 on a base of 10", 4, () => triangleHeight({ area: ft2(20), base: feet(10) }).in("ft")],
  ["the ellipse of 6 pi, 4 wide", 6, () => ellipseLength({ area: ft2(6 * PI), width: feet(4) }).in("ft")],
  [
    "the ring of 36 pi about 16 across",
    2,
    () => annulusWidth({ area: ft2(36 * PI), innerDiameter: feet(16) }).in("ft"),
  ],
  [
    "a diagonal of 10, heights of 3 and 5",
    40,
    () => quadrilateralArea({ diagonal: feet(10), height1: feet(3), height2: feet(5) }).in("ft2"),
  ],
  [
    "a track of 10 straight, 4 wide",
    40 + 4 * PI,
    () => stadiumArea({ straight: feet(10), width: feet(4) }).in("ft2"),
  ],
  ["sides of 3, 4 and 5", 6, () => triangleAreaFromSides({ a: feet(3), b: feet(4), c: feet(5) }).in("ft2")],
  segment(0.2),
  segment(0.29),
  segment(0.6),
  segment(2),
  segment(PI),
  ["a regular hexagon of rays of 1", (3 * Math.sqrt(3)) / 2, () => rays(60)],
  // eight radii of 3 and 5: mean 4, mean square 17
  ["mean radius 4", 16 * PI, () => averageRadiusArea({ radii: radii() }).in("ft2")],
  [
    "mean square of radii 17",
    17 * PI,
    () => averageRadiusArea({ radii: radii(), rule: "mean square" }).in("ft2"),
  ],
  [
    "three radii are enough, two are not",
    1,
    () =>
      goes(() => averageRadiusArea({ radii: radii().slice(0, 3) })) &&
      !goes(() => averageRadiusArea({ radii: radii().slice(0, 2) }))
        ? 1
        : 0,
  ],
  ["offsets of 0, 6, 0 by trapezoids", 12, () => offsets([0, 6, 0])],
  [
    "the same by Simpson: 2/3 (0 + 24 + 0) / 2",
    16,
    () => offsetArea({ spacing: feet(2), widths: [0, 6, 0].map(feet), rule: "simpson" }).in("ft2"),
  ],
  ["two offsets are enough", 1, () => (goes(() => offsets([1, 2])) && !goes(() => offsets([1])) ? 1 : 0)],
  [
    "offsets at places of their own",
    12,
    () => offsetArea({ spacing: [1, 3].map(feet), widths: [0, 6, 0].map(feet) }).in("ft2"),
  ],
];
function rays(step: number): number {
  return radialArea({
    rays: Array.from({ length: 360 / step }, (_, n) => ({ angle: degree(n * step), distance: feet(1) })),
  }).in("ft2");
}
function radii() {
  return [3, 5, 3, 5, 3, 5, 3, 5].map(feet);
}
function offsets(widths: readonly number[]): number {
  return offsetArea({ spacing: feet(2), widths: widths.map(feet) }).in("ft2");
}

const edges: readonly Cell[] = [
  [
    "around an ellipse of two equal axes",
    10 * PI,
    () => perimeter({ shape: "ellipse", length: feet(10), width: feet(10) }).in("ft"),
  ],
  // complete elliptic integral by its series in the third flattening, h = 1/9 for 2 by 1
  [
    "around an ellipse of 4 by 2",
    aroundEllipse(2, 1),
    () => perimeter({ shape: "ellipse", length: feet(4), width: feet(2) }).in("ft"),
  ],
  [
    "around an ellipse of 20 by 2",
    aroundEllipse(10, 1),
    () => perimeter({ shape: "ellipse", length: feet(20), width: feet(2) }).in("ft"),
  ],
  // the middle of a pass of 10 lies 5 in
  ["first pass in a rectangle of 200 by 100", 560, () => around().passes[0]?.in("ft") ?? Number.NaN],
  ["second pass", 480, () => around().passes[1]?.in("ft") ?? Number.NaN],
  ["inside of both in a track of 100 straight, 60 wide", 2000 + 100 * PI, () => track().inside.in("ft2")],
  [
    "half off a buffer, %",
    50,
    () =>
      reducedBuffer({
        distance: feet(50),
        reductions: [percent(50)],
        rule: "sum",
        floor: feet(15),
      }).reduction.in("%"),
  ],
];
/** Perimeter by 20,000 chords corrected to the fourth power of their length. */
function aroundEllipse(a: number, b: number): number {
  const chords = (count: number): number => {
    let sum = 0;
    for (let n = 0; n < count; n += 1) {
      const [t, u] = [(2 * PI * n) / count, (2 * PI * (n + 1)) / count];
      sum += Math.hypot(a * (Math.cos(u) - Math.cos(t)), b * (Math.sin(u) - Math.sin(t)));
    }
    return sum;
  };
  return (4 * chords(20_000) - chords(10_000)) / 3;
}
function around() {
  return passesAround({
    outline: { shape: "rectangle", length: feet(200), width: feet(100) },
    swath: feet(10),
    passes: 2,
  });
}
function track() {
  return passesAround({
    outline: { shape: "stadium", straight: feet(100), width: feet(60) },
    swath: feet(10),
    passes: 2,
  });
}

const lying = { shape: "lying cylinder", diameter: meters(2), length: meters(10) } as const;
const volumes: readonly Cell[] = [
  ["half of a lying cylinder", 5 * PI, () => contents(1)],
  // a quarter of the depth: the segment over 120 degrees
  ["a lying cylinder to a quarter", 10 * (PI / 3 - Math.sqrt(3) / 4), () => contents(0.5)],
  ["a lying cylinder to three quarters", 10 * (PI - PI / 3 + Math.sqrt(3) / 4), () => contents(1.5)],
  [
    "depth of a quarter's volume",
    0.5,
    () => tankDepth(lying, quantity(10 * (PI / 3 - Math.sqrt(3) / 4), "m3")).in("m"),
  ],
  [
    "an upright cylinder",
    PI,
    () =>
      tankContents({ shape: "upright cylinder", diameter: meters(2), height: meters(3) }, meters(1)).in("m3"),
  ],
  [
    "a cubic yard is 324 ft2 to an inch",
    1,
    () => coverVolume({ area: ft2(324), depth: quantity(1, "in") }).in("yd3"),
  ],
  ["3 yd3 on 972 ft2, in", 1, () => coverDepth({ volume: quantity(3, "yd3"), area: ft2(972) }).in("in")],
  [
    "3 yd3 an inch deep, ft2",
    972,
    () => coverArea({ volume: quantity(3, "yd3"), depth: quantity(1, "in") }).in("ft2"),
  ],
  ["1000 m2 to 1 mm, m3", 1, () => coverVolume({ area: m2(1000), depth: quantity(1, "mm") }).in("m3")],
  ["1 m3 on 1000 m2, mm", 1, () => coverDepth({ volume: quantity(1, "m3"), area: m2(1000) }).in("mm")],
  [
    "1 m3 to 1 mm, m2",
    1000,
    () => coverArea({ volume: quantity(1, "m3"), depth: quantity(1, "mm") }).in("m2"),
  ],
  ["layers of 4 and 1 by end areas", 5, () => contours([4, 1], "average end area")],
  ["layers of 4 and 1 as a cut cone: 2 (4 + 1 + 2) / 3", 14 / 3, () => contours([4, 1], "cone frustum")],
  ["layers of 4, 2 and 1: 2 (4 + 8 + 1) / 3", 26 / 3, () => contours([4, 2, 1], "prismoidal")],
  [
    "layers of 5, 4, 3, 2 and 1: 2 (5 + 16 + 6 + 8 + 1) / 3",
    24,
    () => contours([5, 4, 3, 2, 1], "prismoidal"),
  ],
  [
    "1 mg/L in 1000 m3, kg",
    1,
    () =>
      waterDose({ surface: m2(1000), depth: meters(1), concentration: quantity(1, "mg/L", "ai") }).active.in(
        "kg",
      ),
  ],
  [
    "copper sulfate at an alkalinity of 100: a hundredth of it",
    1,
    () =>
      copperSulfateConcentration({ alkalinity: quantity(100, "mg/L", "CaCO3 equivalent") }).concentration.in(
        "mg/L",
      ),
  ],
  [
    "dike for 1000 gal at 110 %",
    1100,
    () =>
      containment({ largest: quantity(1000, "gal"), margin: percent(110), floor: ft2(100) }).volume.in("gal"),
  ],
  ["dike in the open, 125 %", 1250, () => ruled("open 125 %")],
  ["dike under a roof, 110 %", 1100, () => ruled("roofed 110 %")],
  ["share of a mix by weight, %", 80, () => mix()[0]?.share.in("%") ?? Number.NaN],
  [
    "shares of a mix may miss the whole by a thousandth",
    0.1,
    () => Number(edge((off) => goes(() => mix(off)), 0, 1).toFixed(6)),
  ],
];
function contents(depth: number): number {
  return tankContents(lying, meters(depth)).in("m3");
}
function contours(
  areas: readonly number[],
  rule: "average end area" | "cone frustum" | "prismoidal",
): number {
  return contourVolume({ areas: areas.map(m2), interval: meters(2), rule }).in("m3");
}
function ruled(rule: "open 125 %" | "roofed 110 %"): number {
  return containment({ largest: quantity(1000, "gal"), rule, floor: ft2(100) }).volume.in("gal");
}
function mix(off = 0) {
  return mixWeights({
    volume: quantity(10, "m3"),
    parts: [
      { name: "sand", share: percent(50), bulkDensity: quantity(1600, "kg/m3") },
      { name: "peat", share: percent(50 - off), bulkDensity: quantity(400, "kg/m3") },
    ],
  }).parts;
}

const slopes: readonly Cell[] = [
  ["30 degrees, % grade", 100 / Math.sqrt(3), () => slopeOf(degree(30)).grade.in("% grade")],
  ["a bank of 1:1 in degrees", 45, () => slopeOf("1:1").angle.in("deg")],
  ["a plan of 100 at 75 % grade", 125, () => groundLength(feet(100), quantity(75, "% grade")).in("ft")],
  [
    "at 60 degrees twice the plan",
    2000,
    () => surfaceArea(quantity(1000, "ft2", "plan"), degree(60)).in("ft2"),
  ],
  ["no bank of 90 degrees, deg", 90, () => edge((angle) => goes(() => slopeOf(degree(angle))), 80, 95)],
  ["a bank given as a text, % grade", 25, () => slopeOf("25%").grade.in("% grade")],
];
const estimates: readonly Cell[] = [
  // 60 by 20 read to 1 cm: sqrt(0.2^2 + 0.6^2)
  [
    "error of 60 by 20 m read to 1 cm",
    Math.sqrt(0.4),
    () => lawn({ reading: quantity(1, "cm"), meaning: "standard error" }),
  ],
  [
    "as limits, by the square root of three",
    Math.sqrt(0.4 / 3),
    () => lawn({ reading: quantity(1, "cm"), meaning: "limits" }),
  ],
  // a tape that is 1 % off makes the area 2 % off
  [
    "error of a tape 1 % off",
    24,
    () => lawn({ reading: quantity(0, "cm"), scale: percent(1), meaning: "standard error" }),
  ],
  [
    "farthest that a tape may be off, %",
    20,
    () =>
      edge(
        (scale) =>
          goes(() => lawn({ reading: quantity(0, "cm"), scale: percent(scale), meaning: "standard error" })),
        1,
        50,
      ),
  ],
  // 10, 10 and 10: nothing but the part of a pace, 1 / sqrt(12) of one, for the mean of three
  ["paces of 10 ft counted alike", 10, () => paces([10, 10, 10]).pace.value.in("ft")],
];
function lawn(error: object): number {
  return areaEstimate(
    { shape: "rectangle", length: meters(60), width: meters(20) },
    error as { readonly reading: ReturnType<typeof meters>; readonly meaning: "limits" },
  ).standardError.in("m2");
}
function paces(counts: readonly number[]) {
  return paceCalibration({ course: feet(100), counts });
}

/** Geometry of the site. */
export const siteConstants: readonly ConstantCheck[] = [
  ...cells({ room, reached: "derived", source: "plane and solid geometry, on figures that divide evenly" }, [
    ...shapes,
    ...edges,
    ...volumes,
    ...slopes,
  ]),
  ...cells(
    {
      room,
      reached: "derived",
      within: 1e-6,
      source: "propagation of errors, by the derivatives of length times width",
    },
    estimates,
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Sand math, page of a sand supplier, 2011: material weights per cubic yard, sand 2,700, topsoil 2,200, clay 3,000, compost 1,200 lb",
    },
    (
      [
        ["sand", 2700],
        ["topsoil", 2200],
        ["clay", 3000],
        ["compost", 1200],
      ] as const
    ).map(
      ([material, pounds]): Cell => [
        `a cubic yard of ${material}, lb`,
        pounds,
        () => looseMaterials.find((row) => row.material === material)?.bulkDensity.value ?? Number.NaN,
      ],
    ),
  ),
];
