// Mowing, seed, plants, cores and cover from exact figures; counts and trials as printed.
import { quantity } from "../../src/quantity/index.js";
import {
  bulkSeed,
  cellsToCover,
  clippingDensities,
  coringImpact,
  coringProgram,
  coverOfPatches,
  cutsToHeight,
  diameterForCover,
  expectedSeedlings,
  greenSpeed,
  mowingInterval,
  mowingSpeedFor,
  observedSpread,
  pestDensity,
  plantsFor,
  plantsPerArea,
  pricePerPureLiveSeed,
  pureLiveSeed,
  sandCoefficient,
  sandForOrganicMatter,
  seedCountsOf,
  seedLabel,
  seedMixture,
  seedMixtureByCount,
  seedOrder,
  sodForPlugs,
  spacingFor,
  spreadRateFromCover,
  spreadRateFromPatch,
  sprigBushelsOf,
  staggeredRowSpacing,
  topdressing,
  verticuttingImpact,
} from "../../src/stand/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "stand";
const nan = Number.NaN;
const percent = (value: number) => quantity(value, "%");
const inches = (value: number) => quantity(value, "in");
const mm = (value: number) => quantity(value, "mm");
const feet = (value: number) => quantity(value, "ft");
const lot = { purity: percent(80), germination: percent(75) };

/** Plane geometry of circles of radius r on a square of side 1 that overlap their neighbors: what four segments hide. */
const squareCover = (r: number): number => {
  const segment = r * r * Math.acos(0.5 / r) - 0.5 * Math.sqrt(r * r - 0.25);
  return Math.PI * r * r - 4 * segment;
};
/** The same on triangles of side 1: a plant has sqrt(3)/2 of ground and six neighbors. */
const triangleCover = (r: number): number => {
  const segment = r * r * Math.acos(0.5 / r) - 0.5 * Math.sqrt(r * r - 0.25);
  return (Math.PI * r * r - 6 * segment) / (Math.sqrt(3) / 2);
};
const cover = (pattern: "square" | "triangular", diameter: number): number =>
  coverOfPatches({ pattern, spacing: mm(100), diameter: mm(diameter) }).in("%");
const wide = (pattern: "square" | "triangular", share: number, unit: "cm" | "in"): number =>
  diameterForCover({ pattern, spacing: quantity(10, unit), cover: percent(share) }).in(unit);

const ground: readonly Cell[] = [
  ["circles of 110 on squares of 100, %", 100 * squareCover(0.55), () => cover("square", 110)],
  ["circles of 110 on triangles of 100, %", 100 * triangleCover(0.55), () => cover("triangular", 110)],
  ["circles apart on squares, %", 25 * Math.PI * 0.64, () => cover("square", 80)],
  ["full cover on squares: the diagonal", 10 * Math.SQRT2, () => wide("square", 100, "cm")],
  ["full cover on triangles: 2 / sqrt(3)", 20 / Math.sqrt(3), () => wide("triangular", 100, "in")],
  ["pi/4 of squares: circles that touch", 10, () => wide("square", 25 * Math.PI, "cm")],
  ["the cover that 110 on 100 has, back", 11, () => wide("square", 100 * squareCover(0.55), "in")],
  ["triangles closer than that, back", 11, () => wide("triangular", 100 * triangleCover(0.55), "cm")],
  // nearest of three in a row and of a step aside: 1, 1, sqrt(2)
  ["a cell a step up and aside", Math.SQRT2, () => cellsToCover([1, 0, 0, 0], 2)[3] ?? nan],
  ["a cell two along", 2, () => cellsToCover([1, 0, 0], 3)[2] ?? nan],
  ["the middle of two", 2, () => cellsToCover([1, 0, 0, 0, 1], 5)[2] ?? nan],
  [
    "plants in squares of 6 in on a square foot",
    4,
    () => plantsPerArea({ pattern: "square", spacing: inches(6) }).in("count/ft2"),
  ],
  [
    "plants in squares of 20 cm on a square meter",
    25,
    () => plantsPerArea({ pattern: "square", spacing: quantity(20, "cm") }).in("count/m2"),
  ],
  [
    "spacing of 4 on a square foot",
    6,
    () => spacingFor({ pattern: "square", plantsPerArea: quantity(4, "count/ft2") }).in("in"),
  ],
  [
    "spacing of 25 on a square meter, cm",
    20,
    () => spacingFor({ pattern: "square", plantsPerArea: quantity(25, "count/m2") }).in("cm"),
  ],
  ["rows of triangles of 2", Math.sqrt(3), () => staggeredRowSpacing(inches(2)).in("in")],
  [
    "plants on 100 ft2 with a tenth more",
    440,
    () =>
      plantsFor({ area: quantity(100, "ft2"), pattern: "square", spacing: inches(6), extra: percent(10) })
        .plants,
  ],
  [
    "sod for 3600 plugs of 2 in",
    100,
    () => sodForPlugs({ plugs: 3600, plug: { side: inches(2) } }).in("ft2"),
  ],
  [
    "sod for 10,000 plugs of 1 cm, a tenth lost",
    1.1,
    () => sodForPlugs({ plugs: 10_000, plug: { side: quantity(1, "cm") }, waste: percent(10) }).in("m2"),
  ],
];

const patches: readonly Cell[] = [
  // pi 100 and pi 400 cm2 are 100 and 200 mm: 100 mm in ten days, or five of half growth
  ["a patch that doubles its width in ten days, mm/d", 10, () => patch(100)],
  ["the same at half of its potential", 20, () => patch(50)],
  [
    "plants that touch after ten days, mm/week",
    7 * 4,
    () =>
      spreadRateFromCover({
        pattern: "square",
        spacing: mm(100),
        before: percent(25 * Math.PI * 0.04),
        after: percent(25 * Math.PI),
        time: quantity(10, "d"),
      }).in("mm/week"),
  ],
  [
    "the same in inches a week",
    28,
    () =>
      spreadRateFromCover({
        pattern: "square",
        spacing: inches(100),
        before: percent(25 * Math.PI * 0.04),
        after: percent(25 * Math.PI),
        time: quantity(10, "d"),
      }).in("in/week"),
  ],
];
function patch(potential: number): number {
  return spreadRateFromPatch({
    before: quantity(Math.PI * 100, "cm2"),
    after: quantity(Math.PI * 400, "cm2"),
    time: quantity(10, "d"),
    potential: percent(potential),
  }).in("mm/d");
}

const mowing: readonly Cell[] = [
  ["a third off 9 in", 6, () => cutsToHeight({ standing: inches(9), cut: inches(3) })[0]?.in("in") ?? nan],
  [
    "1.5 in at 0.5 in a day",
    3,
    () => mowingInterval({ cut: inches(3), growth: quantity(0.5, "in/d") }).in("d"),
  ],
  [
    "at half of its potential, a fifth suppressed",
    7.5,
    () =>
      mowingInterval({
        cut: inches(3),
        growth: quantity(0.5, "in/d"),
        potential: percent(50),
        suppression: percent(20),
      }).in("d"),
  ],
  [
    "2000 rounds of ten blades at 5 mm, km/h",
    6,
    () => mowingSpeedFor({ reelSpeed: quantity(2000, "1/min"), blades: 10, clip: mm(5) }).in("km/h"),
  ],
  // a mile is 63,360 in
  [
    "1056 rounds of ten blades at 0.1 in, mi/h",
    1,
    () => mowingSpeedFor({ reelSpeed: quantity(1056, "1/min"), blades: 10, clip: inches(0.1) }).in("mi/h"),
  ],
  ["8 ft up and 12 down: mean", 10, () => speed(8, 12).mean.in("ft")],
  // 2 u d / (u + d)
  ["8 ft up and 12 down: level", 9.6, () => speed(8, 12).level.in("ft")],
  [
    "blades of 3 mm each 25: ground cut, %",
    12,
    () => verticuttingImpact({ blade: mm(3), spacing: mm(25) }).share.in("%"),
  ],
  // half an inch on two by two: pi/16 of 4
  ["cores of 0.5 in at 2 by 2, %", (100 * Math.PI) / 64, () => core().share.in("%")],
  ["holes on a square foot", 36, () => core().holesPerArea.in("count/ft2")],
  [
    "holes on a square meter at 5 by 5 cm",
    400,
    () =>
      coringImpact({
        diameter: mm(10),
        measured: "outside",
        spacing: { along: quantity(5, "cm"), across: quantity(5, "cm") },
      }).holesPerArea.in("count/m2"),
  ],
  ["two passes together, %", (200 * Math.PI) / 64, () => passes().sum.in("%")],
  ["two passes that meet by chance, %", 100 * (1 - (1 - Math.PI / 64) ** 2), () => passes().distinct.in("%")],
  [
    "sand of 25.4 mm, in",
    1,
    () => topdressing({ area: quantity(1000, "ft2"), depth: mm(25.4) }).depth.in("in"),
  ],
  [
    "sand for 10 L/m2 at half organic matter, mm",
    1.06,
    () =>
      sandForOrganicMatter({ clippings: quantity(10, "L/m2"), organicMatter: percent(50) }).depth.in("mm"),
  ],
];
function speed(up: number, down: number) {
  return greenSpeed({ up: [feet(up), feet(up), feet(up)], down: [feet(down), feet(down), feet(down)] });
}
function core() {
  return coringImpact({
    diameter: inches(0.5),
    measured: "outside",
    spacing: { along: inches(2), across: inches(2) },
  });
}
function passes() {
  const hole = {
    diameter: inches(0.5),
    measured: "outside",
    spacing: { along: inches(2), across: inches(2) },
  } as const;
  return coringProgram({ passes: [hole, hole], target: percent(20) });
}

/** The mean of 0, 1, 2 and 1 is 1 and their variance 2/3: that of chance alone, the mean, is more and counts. Student's t of three degrees of freedom at 97.5 %, 3.18244630528371. */
const t3 = 3.18244630528371;
const counts: readonly Cell[] = [
  ["live seed of 80 by 75 %", 60, () => pureLiveSeed(lot).in("% w/w")],
  ["lot for 6 lb", 10, () => bulkSeed({ pureLiveSeed: quantity(6, "lb", "pure live seed"), lot }).in("lb")],
  [
    "price of the live pound",
    5,
    () => pricePerPureLiveSeed({ price: quantity(3, "money:USD/lb", "none/seed"), lot }).in("money:USD/lb"),
  ],
  [
    "hard seed counts beside what germinates",
    1,
    () => (goes(() => hard(25)) && !goes(() => hard(25.1)) ? 1 : 0),
  ],
  ["live seed of a label", 48, () => label(20).pureLiveSeed.in("% w/w")],
  [
    "lines of a label may miss 100 % by",
    0.5,
    () => edge((off) => label(20 - off).findings.length === 0, 0, 2),
  ],
  ["lines of a label beyond 100 %", 1, () => (goes(() => label(20)) ? 1 : 0)],
  [
    "share by count of 70:30 at 250,000 and 1,500,000",
    28,
    () =>
      seedMixture({
        components: [
          { name: "a", byWeight: percent(70), seedsPerMass: quantity(250_000, "count/lb") },
          { name: "b", byWeight: percent(30), seedsPerMass: quantity(1_500_000, "count/lb") },
        ],
      }).components[0]?.byCount.in("%") ?? nan,
  ],
  ["shares of a mixture may miss 100 % by", 0.5, () => edge((off) => goes(() => mixed(off)), 0, 2)],
  [
    "seed for 12,000 ft2",
    40,
    () =>
      seedOrder({
        area: quantity(12_000, "ft2"),
        rate: quantity(2, "lb/1000 ft2", "pure live seed"),
        lot,
      }).seed.in("lb"),
  ],
  [
    "seed for 600 m2, kg",
    10,
    () =>
      seedOrder({ area: quantity(600, "m2"), rate: quantity(10, "g/m2", "pure live seed"), lot }).seed.in(
        "kg",
      ),
  ],
  [
    "seedlings of 1200 live seeds, a quarter of them",
    300,
    () =>
      expectedSeedlings({
        rate: quantity(2, "lb/1000 ft2", "pure live seed"),
        seedsPerMass: quantity(600_000, "count/lb"),
        emergence: { share: percent(25), source: "counts" },
      }).seedlings.in("count/ft2"),
  ],
  [
    "pests of a core of 1 m on a square meter",
    1 / (Math.PI / 4),
    () => pestDensity({ counts: [0, 1, 2, 1], core: { diameter: quantity(1, "m") } }).density.in("count/m2"),
  ],
  ["pests of a core of 12 in on a square foot", 1 / (Math.PI / 4), () => pests().density.in("count/ft2")],
];
function hard(share: number) {
  return pureLiveSeed({ ...lot, hard: percent(share) });
}
function label(inert: number) {
  return seedLabel({
    components: [{ name: "a", purity: percent(80), germination: percent(60) }],
    otherCrop: percent(0),
    inert: percent(inert),
    weeds: percent(0),
  });
}
function mixed(off: number) {
  return seedMixtureByCount({
    components: [
      { name: "a", byCount: percent(50), seedsPerMass: quantity(1, "count/lb") },
      { name: "b", byCount: percent(50 - off), seedsPerMass: quantity(1, "count/lb") },
    ],
  });
}
function pests() {
  return pestDensity({ counts: [0, 1, 2, 1], core: { diameter: feet(1) } });
}

/** The stand. */
export const standConstants: readonly ConstantCheck[] = [
  ...cells(
    { room, reached: "derived", source: "plane geometry and definitions, on figures that divide evenly" },
    [...ground, ...patches, ...mowing, ...counts],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      within: 1e-8,
      source: "tables of Student's t: 3.182446 for three degrees of freedom at 95 %",
    },
    [
      [
        "upper end of the density of 0, 1, 2 and 1 at 95 %, n of them",
        (1 + t3 / 2) / (Math.PI / 4),
        () => pests().high.in("count/ft2"),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Seeding rates, Cornell University: approximately 1.5 million in a pound of Kentucky bluegrass, 250,000 of perennial ryegrass",
    },
    (
      [
        ["Kentucky bluegrass", 1_500_000],
        ["perennial ryegrass", 250_000],
      ] as const
    ).flatMap(([species, count]): Cell[] => [
      [`${species}: low`, count, () => cornell(species)?.low.in("count/lb") ?? nan],
      [`${species}: high`, count, () => cornell(species)?.high.in("count/lb") ?? nan],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Differences in establishment rate among zoysiagrass cultivars, abstract of 2005: 64 cm2 plugs after 91 days, 0.11 to 0.49 (mean 0.25) and 0.04 to 0.23 (mean 0.14) m2, stolons 15.5 to 1.7 mm a day",
    },
    [...trial("Zoysia japonica", 0.11, 0.25, 0.49), ...trial("Zoysia matrella", 0.04, 0.14, 0.23)],
  ),
  ...cells(
    { room, reached: "read", source: "planting contractors: a bushel of sprigs of 0.32 ft3 in Georgia" },
    [
      ["a bushel in Georgia", 0.32, () => sprigBushelsOf("Georgia")[0]?.low.in("ft3") ?? nan],
      ["and at most", 0.32, () => sprigBushelsOf("Georgia")[0]?.high.in("ft3") ?? nan],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Converting to bermudagrass fairways, USGA Green Section Record 60(14), recommended sprig rate: a Georgia bushel is supposed to be 0.4 ft3, a Texas bushel may range from 0.4 to 1.23 ft3",
    },
    [
      [
        "a bushel in Georgia by another source",
        0.4,
        () => sprigBushelsOf("Georgia")[1]?.low.in("ft3") ?? nan,
      ],
      ["and at most, by that source", 0.4, () => sprigBushelsOf("Georgia")[1]?.high.in("ft3") ?? nan],
      ["a bushel in Texas", 0.4, () => sprigBushelsOf("Texas")[0]?.low.in("ft3") ?? nan],
      ["a bushel in Texas at most", 1.23, () => sprigBushelsOf("Texas")[0]?.high.in("ft3") ?? nan],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "data table of a seed company, grass characteristics: approximate number of seeds in a pound",
    },
    seedTable().flatMap(([species, low, high]): Cell[] => [
      [`${species}: low of a seed company`, low, () => counted(species)?.low.in("count/lb") ?? nan],
      [`${species}: high of a seed company`, high, () => counted(species)?.high.in("count/lb") ?? nan],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Grass Seeds Per Pound, a page for homeowners: tall fescue 225,000, fine-leaf fescue 400,000 - 550,000 seeds in a pound",
    },
    (
      [
        ["tall fescue", 225_000, 225_000],
        ["fine fescue", 400_000, 550_000],
      ] as const
    ).flatMap(([species, low, high]): Cell[] => [
      [`${species}: low`, low, () => countedBy(species, /homeowners/)?.low.in("count/lb") ?? nan],
      [`${species}: high`, high, () => countedBy(species, /homeowners/)?.high.in("count/lb") ?? nan],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Forage identification, Purdue University Extension, the pages on tall fescue and on perennial ryegrass: seeds per pound 227,000",
    },
    ["tall fescue", "perennial ryegrass"].flatMap((species): Cell[] => [
      [`${species}: low of Purdue`, 227_000, () => countedBy(species, /Purdue/)?.low.in("count/lb") ?? nan],
      [`${species}: high of Purdue`, 227_000, () => countedBy(species, /Purdue/)?.high.in("count/lb") ?? nan],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Converting clipping volume to dry weight, Asian Turfgrass Center: a liter of bentgrass or bermudagrass clippings dries to about 60 g, one of manilagrass to about 110 g",
    },
    (
      [
        ["bentgrass", 60],
        ["bermudagrass", 60],
        ["manilagrass", 110],
      ] as const
    ).map(
      ([grass, grams]): Cell => [
        `dry mass of clippings of ${grass}, g/L`,
        grams,
        () => clippingDensities.find((row) => row.grass === grass)?.dryMass.in("g/L") ?? nan,
      ],
    ),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Sand topdressing to clipping volume ratios, 2026, in a copy: the best estimate of K at present is 0.106",
    },
    [["sand for clippings, K", 0.106, () => sandCoefficient.value]],
  ),
];

/** As printed, by their common and botanical names; shady bluegrass is *Poa trivialis*, here rough bluegrass. */
function seedTable(): readonly (readonly [species: string, low: number, high: number])[] {
  return [
    ["bahiagrass", 153_000, 166_000],
    ["colonial bentgrass", 8_000_000, 8_500_000],
    ["creeping bentgrass", 7_800_000, 8_000_000],
    ["bermudagrass", 1_785_000, 1_790_000],
    ["annual bluegrass", 1_100_000, 1_200_000],
    ["Kentucky bluegrass", 1_800_000, 2_200_000],
    ["rough bluegrass", 2_400_000, 2_500_000],
    ["buffalograss", 55_500, 56_000],
    ["reed canarygrass", 500_000, 540_000],
  ];
}

function counted(species: string) {
  return seedCountsOf(species).find(({ source }) => source.publisher === "data table of a seed company");
}

function countedBy(species: string, publisher: RegExp) {
  return seedCountsOf(species).find(({ source }) => publisher.test(source.publisher));
}

function trial(species: string, low: number, mean: number, high: number): readonly Cell[] {
  const of = () => observedSpread.find((one) => one.species === species);
  return [
    [`${species}: slowest, m2`, low, () => of()?.cover.low.in("m2") ?? nan],
    [`${species}: mean, m2`, mean, () => of()?.cover.mean.in("m2") ?? nan],
    [`${species}: fastest, m2`, high, () => of()?.cover.high.in("m2") ?? nan],
    [`${species}: plug, cm2`, 64, () => of()?.plug.in("cm2") ?? nan],
    [`${species}: days`, 91, () => of()?.time.in("d") ?? nan],
    [`${species}: slowest stolons, mm/d`, 1.7, () => of()?.stolons.low.in("mm/d") ?? nan],
    [`${species}: fastest stolons, mm/d`, 15.5, () => of()?.stolons.high.in("mm/d") ?? nan],
  ];
}

function cornell(species: string) {
  return seedCountsOf(species).find(({ source }) => /Cornell/.test(JSON.stringify(source)));
}
