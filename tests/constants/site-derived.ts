// The site by hand: buffers around corners, outlines far from zero, cones, errors of tapes and paces.
import { quantity } from "../../src/quantity/index.js";
import { cleaned } from "../../src/site/geodesic/clean-positions.js";
import { polygonsOf } from "../../src/site/geodesic/geodesic-area.js";
import { placeOf } from "../../src/site/geodesic/positions.js";
import {
  annulusArea,
  areaEstimate,
  bufferArea,
  copperSulfateConcentration,
  mixWeights,
  paceCalibration,
  passesAround,
  polygonArea,
  segmentArea,
  siteAreaEstimate,
  tankContents,
} from "../../src/site/index.js";
import { problemsOf } from "../errors.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "site";
const nan = Number.NaN;
const { PI } = Math;
const feet = (value: number) => quantity(value, "ft");
const meters = (value: number) => quantity(value, "m");
const percent = (value: number) => quantity(value, "%");

type Point = readonly [x: number, y: number];
const buffered = (points: readonly Point[], distance: number, ...edges: readonly number[]): number =>
  bufferArea({
    points,
    unit: "ft",
    edges: edges.map((one) => ({ edge: one, distance: feet(distance) })),
  }).buffer.in("ft2");

/** A square of 10 on its corner: each side climbs by 3 in 4. */
const tilted: readonly Point[] = [
  [0, 0],
  [8, 6],
  [2, 14],
  [-6, 8],
];
/** An L: the corner at 10, 10 looks inward. */
const bend: readonly Point[] = [
  [0, 0],
  [30, 0],
  [30, 10],
  [10, 10],
  [10, 30],
  [0, 30],
];
/** A tooth of 6 and 2 cut out of the upper side of a wide field: the ends of its floor are 6 apart. */
const tooth: readonly Point[] = [
  [0, 0],
  [60, 0],
  [60, 40],
  [33, 40],
  [33, 20],
  [27, 20],
  [27, 40],
  [0, 40],
];

const buffers: readonly Cell[] = [
  ["2 along a side that climbs", 20, () => buffered(tilted, 2, 0)],
  ["2 along two sides that climb, the corner once", 36, () => buffered(tilted, 2, 0, 1)],
  // beside the edge 20 by 4, and half a disc in the leg of the L around the inward corner
  ["4 along an edge and around its inward corner", 80 + 8 * PI, () => buffered(bend, 4, 2)],
  // two walls of 20 by 5, two quarters of circles, and the floor of 6 by 5
  ["5 around a tooth, by its walls and its floor", 230 + 12.5 * PI, () => buffered(tooth, 5, 3, 4, 5)],
  // beside the wall 100 by 1, and within the field the ends of two discs of 1, half a unit from their middles on
  [
    "1 along the wall of a ledge half a unit wide, 20,000 from the first corner",
    100 + PI / 3 - Math.sqrt(3) / 4,
    () => buffered(ledge, 1, 3),
  ],
];
/** Two half discs of radius 5 with their middles 6 apart, as one: 25 pi less half of the lens that they share. */
function wallsBelow(): number {
  const lens = 2 * 25 * Math.acos(3 / 5) - 3 * Math.sqrt(100 - 36);
  return 25 * PI - lens / 2;
}
/** A field of 20,000 by 600 with a ledge half a unit wide at its far side. */
const ledge: readonly Point[] = [
  [0, 0],
  [20_000, 0],
  [20_000, 400],
  [20_000.5, 400],
  [20_000.5, 500],
  [20_000, 500],
  [20_000, 600],
  [0, 600],
];

/** Two tips at one height that a cut-out may rest upon, with the outline half a unit below, 10,000 away from zero. */
const tips: readonly Point[] = [
  [10_000, 9999.5],
  [10_009, 9999.5],
  [10_010, 10_000],
  [10_011, 9999.5],
  [10_019, 9999.5],
  [10_020, 10_000],
  [10_021, 9999.5],
  [10_030, 9999.5],
  [10_030, 10_010],
  [10_000, 10_010],
];
const resting: readonly Point[] = [
  [10_005, 10_000],
  [10_025, 10_000],
  [10_025, 10_005],
  [10_005, 10_005],
];
const turned = (points: readonly Point[]): readonly Point[] => points.map(([x, y]): Point => [y, x]);
const takes = (points: readonly Point[], ...holes: readonly (readonly Point[])[]): number =>
  goes(() => polygonArea(points, "ft", { holes })) ? 1 : 0;
const field: readonly Point[] = [
  [0, 0],
  [30_000, 0],
  [30_000, 30_000],
  [0, 30_000],
];
const small: readonly Point[] = [
  [10_000, 10_000],
  [10_001, 10_000],
  [10_001, 10_001],
  [10_000, 10_001],
];
const holes: readonly Cell[] = [
  ["a cut-out on two tips lies inside", 1, () => takes(tips, resting)],
  ["the same the other way round", 1, () => takes(turned(tips), turned(resting))],
  ["the same cut-out twice is an overlap", 0, () => takes(field, small, small)],
];

/** `a - sin a` by its series, term by term. */
const excess = (a: number): number => {
  let [term, sum] = [(a * a * a) / 6, 0];
  for (let n = 4; Math.abs(term) > 1e-30; n += 2) {
    sum += term;
    term *= -(a * a) / (n * (n + 1));
  }
  return sum;
};
const wide = 0.3;
const shapes: readonly Cell[] = [
  [
    "a ring of 20 and 16 across",
    36 * PI,
    () => annulusArea({ outerDiameter: feet(20), innerDiameter: feet(16) }).in("ft2"),
  ],
  // 30, 40 and 50 have an inner circle of 10: a line 1 inside is a tenth shorter
  ["first pass in a triangle of 50, 30 and 40", 108, () => insideTriangle()],
  // pi h (d1^2 + d1 d2 + d2^2) / 12
  ["a cone from 1 to 2 across, 3 high", (7 * PI) / 4, () => cone(3)],
  ["with 2 of straight side above it", (15 * PI) / 4, () => cone(5)],
  // dry, a half of the one and three quarters of the other: 800 and 300
  ["dry share of a moist mix, %", (100 * 800) / 1100, () => dryMix()],
];
function insideTriangle(): number {
  return (
    passesAround({
      outline: { shape: "triangle from sides", a: feet(50), b: feet(30), c: feet(40) },
      swath: feet(2),
      passes: 1,
    }).passes[0]?.in("ft") ?? nan
  );
}
function cone(depth: number): number {
  return tankContents(
    {
      shape: "cone bottom",
      outlet: meters(1),
      diameter: meters(2),
      coneHeight: meters(3),
      height: meters(2),
    },
    meters(depth),
  ).in("m3");
}
function dryMix(): number {
  return (
    mixWeights({
      volume: quantity(10, "m3"),
      parts: [
        {
          name: "sand",
          share: percent(50),
          bulkDensity: quantity(1600, "kg/m3"),
          moisture: percent(50),
          basis: "wet weight",
        },
        {
          name: "peat",
          share: percent(50),
          bulkDensity: quantity(400, "kg/m3"),
          moisture: percent(25),
          basis: "wet weight",
        },
      ],
    }).parts[0]?.dryShare?.in("%") ?? nan
  );
}

const read = { reading: quantity(1, "cm"), meaning: "standard error" } as const;
const lawn = { shape: "rectangle", length: meters(60), width: meters(20) } as const;
const cornersOf60by20: readonly Point[] = [
  [0, 0],
  [60, 0],
  [60, 20],
  [0, 20],
];
const estimates: readonly Cell[] = [
  // each adds 0.2^2 + 0.6^2
  [
    "error of two lawns of 60 by 20 m read to 1 cm, m2",
    Math.sqrt(0.8),
    () => siteAreaEstimate({ parts: [lawn, lawn] }, read).standardError.in("m2"),
  ],
  // half the diagonal for each of four corners
  [
    "error of corners of 60 by 20 read to 1 cm, m2",
    0.01 * Math.sqrt(4000),
    () => areaEstimate({ shape: "polygon", points: cornersOf60by20, unit: "m" }, read).standardError.in("m2"),
  ],
  [
    "error of corners of 60 by 20 read to 1 ft, ft2",
    Math.sqrt(4000),
    () =>
      areaEstimate(
        { shape: "polygon", points: cornersOf60by20, unit: "ft" },
        { reading: feet(1), meaning: "standard error" },
      ).standardError.in("ft2"),
  ],
  // 1/sqrt(12) of a pace in ten, over three walks of a pace of 10 ft
  ["error of three counts of ten paces, ft", 1 / 6, () => paces().pace.standardError.in("ft")],
  ["error of one walk of them, %", 10 / Math.sqrt(12), () => paces().walkError.in("%")],
];
function paces() {
  return paceCalibration({ course: feet(100), counts: [10, 10, 10] });
}

/** A walk along a straight line on a plane: 0, 100 m, and back to a place; whether that is taken for a step back. */
const stepsBack = (accuracy: number, to: number): boolean =>
  cleaned(
    {
      distance: ([x1], [x2]) => Math.abs(x2 - x1),
      ring: () => ({ area: nan, perimeter: nan }),
    },
    [
      [0, 0],
      [100, 0],
      [to, 0],
    ],
    accuracy,
  ).dropped.some(({ reason }) => reason === "back-step");
const told = (longitude: number): string =>
  problemsOf(() => placeOf([longitude, 95], "place"))[0]?.expected ?? "";
const spanning = (degrees: number) => ({
  type: "Polygon",
  coordinates: [
    [
      [-90, 0],
      [degrees - 90, 0],
      [0, 50],
      [-90, 0],
    ],
  ],
});
const geodesic: readonly Cell[] = [
  [
    "a latitude is at most 90 degrees",
    90,
    () => edge((lat) => goes(() => placeOf([0, lat], "place")), 80, 100),
  ],
  [
    "two numbers may be swapped where the first could be a latitude, up to 90 degrees",
    90,
    () => edge((longitude) => /swapped/.test(told(longitude)), 50, 120),
  ],
  [
    "an edge goes half around the world at most, degrees",
    180,
    () => edge((degrees) => goes(() => polygonsOf(spanning(degrees))), 100, 190),
  ],
  // 20 m back along a leg of 100
  ["accuracy of which a step back is twice as much", 10, () => edge((a) => stepsBack(a, 80), 15, 5)],
];

/** Geometry of the site, by hand. */
export const siteDerivedConstants: readonly ConstantCheck[] = [
  ...cells({ room, reached: "derived", source: "plane and solid geometry, on figures that divide evenly" }, [
    ...buffers,
    ...geodesic,
    ...holes,
    ...shapes,
  ]),
  ...cells({ room, reached: "derived", within: 3e-11, source: "plane geometry: two discs that meet" }, [
    // without the floor the two circles of 5 about its ends, 6 apart, meet: half discs below, less the lens of both
    ["5 along the walls of a tooth alone", 200 + wallsBelow(), () => buffered(tooth, 5, 3, 5)],
  ]),
  ...cells(
    {
      room,
      reached: "derived",
      within: 3e-13,
      source: "a - sin a by its series, for a circle of radius 1",
    },
    [
      [
        "segment over 0.3 rad to thirteen digits",
        excess(wide) / 2,
        () => segmentArea({ radius: feet(1), angle: quantity((wide * 180) / PI, "deg") }).in("ft2"),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "derived",
      within: 1e-6,
      source:
        "propagation of errors by derivatives: a corner moves the area by half the line between its neighbors",
    },
    estimates,
  ),
  ...cells(
    {
      room,
      reached: "read",
      within: 1e-8,
      source:
        "Use of copper in freshwater aquaculture and farm ponds (FA008), University of Florida: not recommended below an alkalinity of 50 ppm; no more than 2.5 ppm above 250",
    },
    [
      [
        "least alkalinity for copper sulfate, mg/L",
        50,
        () => edge((alkalinity) => goes(() => copper(alkalinity)), 100, 10),
      ],
      ["most copper sulfate, mg/L", 2.5, () => copper(1000).concentration.in("mg/L")],
      ["alkalinity from which it is the most", 250, () => edge((at) => !copper(at).atMost, 100, 500)],
    ],
  ),
];
function copper(alkalinity: number) {
  return copperSulfateConcentration({ alkalinity: quantity(alkalinity, "mg/L", "CaCO3 equivalent") });
}
