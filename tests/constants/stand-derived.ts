// Grow-in, plugs, rolls and counts by hand: discs at random places, growth by a bell curve, and the edges of dates.
import { dailyNormals, dailyTemperatures } from "../../src/calendar/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  cellsToCover,
  coverOverTime,
  greenSpeed,
  pestDensity,
  plantingDateForCover,
  plantsFor,
  sandForOrganicMatter,
  sodOrder,
  spacingForCover,
} from "../../src/stand/index.js";
import { type Cell, type ConstantCheck, cells, edge } from "./check.js";

const room = "stand";
const nan = Number.NaN;
const { PI } = Math;
const percent = (value: number) => quantity(value, "%");
const inches = (value: number) => quantity(value, "in");
const mm = (value: number) => quantity(value, "mm");
const feet = (value: number) => quantity(value, "ft");

type Start = Parameters<typeof coverOverTime>[0]["start"];
type Growth = Parameters<typeof coverOverTime>[0]["growth"];

/** Ten millimeters a day at full growth, all three rates alike. */
const rate = {
  low: quantity(10, "mm/d"),
  mid: quantity(10, "mm/d"),
  high: quantity(10, "mm/d"),
  source: "invented",
} as const;
const full = { potential: percent(100), source: "invented" } as const;
const half = { potential: percent(50), source: "invented" } as const;
/** A hundred plants on a square meter, each a disc of 50 mm radius. */
const scattered: Start = {
  plug: { diameter: mm(100) },
  pattern: "random",
  plantsPerArea: quantity(100, "count/m2"),
};
const halfCovered: Start = {
  cover: percent(50),
  pattern: "random",
  plantsPerArea: quantity(100, "count/m2"),
};

interface More {
  readonly start?: Start;
  readonly growth?: Growth;
  readonly targets?: readonly number[];
  readonly nitrogen?: number;
}
const growIn = ({ start = scattered, growth = half, targets = [50], nitrogen }: More = {}) =>
  coverOverTime({
    start,
    from: "2026-06-01",
    to: "2026-06-04",
    spread: rate,
    growth,
    targets: targets.map(percent),
    ...(nitrogen === undefined
      ? {}
      : { factors: { nitrogen: { share: percent(nitrogen), source: "invented" } } }),
  });
/** Percent that discs of a radius in m cover, a hundred of them at random on a square meter. */
const random = (radius: number): number => 100 * (1 - Math.exp(-100 * PI * radius * radius));
const firstDay = (more: More = {}): number => growIn(more).days[0]?.mid.in("%") ?? nan;

/** An afternoon of 76 °F after a night of 40: 58 in the mean, ten below the best for cool-season grass. */
const observed: Growth = {
  season: "cool-season",
  constants: "°F",
  observed: dailyTemperatures({
    unit: "°F",
    sensor: "air",
    source: "invented",
    start: "2026-06-01",
    min: [40, 40, 40, 40],
    max: [76, 76, 76, 76],
  }),
};
const normal: Growth = {
  season: "cool-season",
  constants: "°F",
  normals: dailyNormals({
    unit: "°F",
    sensor: "air",
    source: "invented",
    min: Array.from({ length: 366 }, () => 40),
    max: Array.from({ length: 366 }, () => 76),
  }),
};
const potential = (growth: Growth): number => growIn({ growth }).days[0]?.potential.in("%") ?? nan;

/** Radius in m that covers a half at random. */
const halfRadius = Math.sqrt(Math.LN2 / (100 * PI));

const growing: readonly Cell[] = [
  ["cover of 100 discs of 50 mm at random, %", random(0.05), () => growIn().start.in("%")],
  ["after a day at half of 10 mm, %", random(0.055), () => firstDay()],
  ["after a day in full, with half of the nitrogen, %", random(0.055), () => half50()],
  ["half covered at random, %", 50, () => growIn({ start: halfCovered }).start.in("%")],
  ["a day later, %", random(halfRadius + 0.005), () => firstDay({ start: halfCovered })],
  [
    "most cover to start from, %",
    100,
    () =>
      edge(
        (cover) => {
          try {
            growIn({ start: { ...halfCovered, cover: percent(cover) } as Start });
            return true;
          } catch {
            return false;
          }
        },
        50,
        200,
      ),
  ],
  [
    "the target that is reached on the first day, %",
    random(0.055),
    () => edge((target) => growIn({ targets: [target] }).reached[0]?.mid === "2026-06-02", 57, 90),
  ],
  [
    "the cover for which planting a day before is soon enough, %",
    random(0.06),
    () => edge((cover) => latest(cover) === "2026-06-09", 57, 90),
  ],
  [
    "a factor that is more than full, %",
    100,
    () =>
      edge(
        (factor) =>
          !growIn({ nitrogen: factor }).findings.some(({ code }) => code === "cover/factor-above-full"),
        50,
        200,
      ),
  ],
];
function half50(): number {
  return firstDay({ growth: full, nitrogen: 50 });
}
function latest(cover: number) {
  return plantingDateForCover({
    start: scattered,
    cover: percent(cover),
    earliest: "2026-06-01",
    by: "2026-06-10",
    spread: rate,
    growth: full,
  }).mid;
}

/** A plug and a day of growth: 40 and 10 mm of radius, or 1 and 1 in. */
const spacing = (pattern: "square" | "triangular", cover: number, unit: "mm" | "in") =>
  spacingForCover({
    plug: { diameter: unit === "mm" ? mm(80) : inches(2) },
    pattern,
    cover: percent(cover),
    from: "2026-06-01",
    by: "2026-06-02",
    spread:
      unit === "mm"
        ? rate
        : {
            low: quantity(1, "in/d"),
            mid: quantity(1, "in/d"),
            high: quantity(1, "in/d"),
            source: "invented",
          },
    growth: full,
  }).mid;
const spacings: readonly Cell[] = [
  // circles of 50 mm cover triangles of 50 sqrt(3), and each plant has sqrt(3)/2 of its square
  ["triangles that circles of 5 cm cover, cm", 5 * Math.sqrt(3), () => triangles().spacing.in("cm")],
  [
    "plants on a square meter of them",
    1 / (0.0075 * (Math.sqrt(3) / 2)),
    () => triangles().plantsPerArea.in("count/m2"),
  ],
  // circles of 2 in cover squares of 2 sqrt(2) in: 8 in2 a plant
  [
    "squares that circles of 2 in cover, in",
    2 * Math.SQRT2,
    () => spacing("square", 100, "in").spacing.in("in"),
  ],
  ["plants on a square foot of them", 18, () => spacing("square", 100, "in").plantsPerArea.in("count/ft2")],
  [
    "squares that circles of 2 in cover by half, in",
    2 * Math.sqrt(2 * PI),
    () => spacing("square", 50, "in").spacing.in("in"),
  ],
  ["10,000 ft2 of 4 plants, a tenth more", 44_000, () => manyPlants()],
  [
    "sod in pieces of 1 m by 50 cm, m2",
    0.5,
    () =>
      sodOrder({
        area: quantity(100, "m2"),
        waste: percent(0),
        piece: { length: quantity(1, "m"), width: quantity(50, "cm") },
      }).piece?.in("m2") ?? nan,
  ],
  // the border between two patches 40,001 cells apart lies between cells 20,000 and 20,001
  ["a cell just nearer to the first of two patches", 20_000, () => betweenPatches()],
];
function triangles() {
  return spacing("triangular", 100, "mm");
}
function manyPlants(): number {
  return plantsFor({
    area: quantity(10_000, "ft2"),
    pattern: "square",
    spacing: inches(6),
    extra: percent(10),
  }).plants;
}
function betweenPatches(): number {
  const row = new Uint8Array(40_002);
  row[0] = 1;
  row[40_001] = 1;
  return cellsToCover(row, row.length)[20_000] ?? nan;
}

const rolls = (down: number) =>
  greenSpeed({ up: [feet(5), feet(5), feet(5)], down: [feet(down), feet(down), feet(down)] }).findings;
const sloped = (down: number): unknown =>
  rolls(down).find(({ code }) => code === "green-speed/sloped")?.params.slope;

/** Student's t of three degrees of freedom at 97.5 %. */
const t3 = 3.18244630528371;

/** Grow-in and counts. */
export const standDerivedConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "derived",
      within: 1e-8,
      source: "plane geometry; discs at random leave exp(-n pi r^2) of the ground bare",
    },
    [...growing, ...spacings],
  ),
  ...cells(
    {
      room,
      reached: "derived",
      source: "exp(-((t - t0) / v)^2 / 2), ten degrees off the optimum of 68 °F with v = 10 °F: exp(-1/2)",
    },
    [
      ["growth potential by what was observed, %", 100 * Math.exp(-0.5), () => potential(observed)],
      ["growth potential by normals, %", 100 * Math.exp(-0.5), () => potential(normal)],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      within: 1e-8,
      source:
        "USGA, Course rating manual, green speed corrected for green slope: two to three times as far down is moderately sloped, more than three times steeply",
    },
    [
      [
        "down over up: moderately sloped from",
        2,
        () => edge((down) => sloped(down) === undefined, 6, 14) / 5,
      ],
      [
        "down over up: steeply sloped beyond",
        3,
        () => edge((down) => sloped(down) === "moderate", 12, 20) / 5,
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "derived",
      within: 1e-8,
      source: "areas of circles; 0, 0, 0 and 4 have a mean of 1 and a variance of 4; Student's t",
    },
    [
      [
        "pests of a core of 2 m on a square meter",
        1 / PI,
        () =>
          pestDensity({ counts: [0, 0, 0, 4], core: { diameter: quantity(2, "m") } }).density.in("count/m2"),
      ],
      [
        "pests of a core of 2 ft on a square foot",
        1 / PI,
        () => pestDensity({ counts: [0, 0, 0, 4], core: { diameter: feet(2) } }).density.in("count/ft2"),
      ],
      [
        "upper end of the density of 0, 0, 0 and 4 at 95 %",
        1 + t3,
        () => pestDensity({ counts: [0, 0, 0, 4], core: { area: quantity(1, "ft2") } }).high.in("count/ft2"),
      ],
      // 1 ft3 on 1000 ft2 is 0.012 in; as much organic matter as the rest
      [
        "sand for a cubic foot of clippings, in",
        0.106 * 0.012,
        () =>
          sandForOrganicMatter({
            clippings: quantity(1, "ft3/1000 ft2"),
            organicMatter: percent(50),
          }).depth.in("in"),
      ],
    ],
  ),
];
