// Depths, rates, pipes, uniformity and the water in the soil, from exact figures; coefficients of turf and rain as printed.
import type { CivilDate } from "../../src/calendar/index.js";
import { dailySeries, dailyTemperatures } from "../../src/calendar/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  areaForFlow,
  availableWater,
  catchCanTest,
  catchDepth,
  christiansenFromLowerQuarter,
  christiansenUniformity,
  cycleAndSoak,
  depletionFraction,
  depthFromFlow,
  distributionUniformity,
  effectiveRain,
  flowForDepth,
  frictionLoss,
  grossDepth,
  hargreavesSeries,
  matchedPrecipitation,
  measuredFlow,
  multipleOutletFactor,
  netDepth,
  pipeFlow,
  pipeSmoothness,
  pipeVelocity,
  precipitationRate,
  pressureHead,
  pressureOfHeight,
  pumpPower,
  readilyAvailableWater,
  runTime,
  runTimeMultiplier,
  soilWaterBalance,
  soilWaterDay,
  spacingPrecipitationRate,
  timeToRunoff,
  turfCoefficient,
  waterDepth,
  waterHolding,
  wateringWeek,
  waterStress,
  waterVolume,
} from "../../src/water/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "water";
const nan = Number.NaN;
const gpm = (value: number) => quantity(value, "gal/min", "water");
const lpm = (value: number) => quantity(value, "L/min", "water");
const ft2 = (value: number) => quantity(value, "ft2");
const inches = (value: number) => quantity(value, "in");
const mm = (value: number) => quantity(value, "mm");
const percent = (value: number) => quantity(value, "%");

/** A gallon is 231 in3, a square foot 144 in2: inches of a gallon on a square foot. */
const inchesOfGallon = 231 / 144;
const minutes = (value: number) => quantity(value, "min");

const depths: readonly Cell[] = [
  // 100 mL on 50 cm2 is 2 cm
  [
    "can of 50 cm2",
    20,
    () => catchDepth({ volume: quantity(100, "mL", "water"), opening: quantity(50, "cm2") }).in("mm"),
  ],
  [
    "can of 10 cm across",
    1000 / (25 * Math.PI),
    () => catchDepth({ volume: quantity(100, "mL", "water"), diameter: quantity(10, "cm") }).in("mm"),
  ],
  [
    "144 gal on 231 ft2, in",
    1,
    () => waterDepth({ volume: quantity(144, "gal", "water"), area: ft2(231) }).in("in"),
  ],
  ["an inch on 231 ft2, gal", 144, () => waterVolume({ depth: inches(1), area: ft2(231) }).in("gal")],
  [
    "10 gal/min for an hour on 600 ft2, in",
    inchesOfGallon,
    () => depthFromFlow({ flow: gpm(10), time: quantity(1, "h"), area: ft2(600) }).in("in"),
  ],
  [
    "an inch on 231 ft2 in 12 min, gal/min",
    12,
    () => flowForDepth({ area: ft2(231), depth: inches(1), time: minutes(12) }).in("gal/min"),
  ],
  [
    "144 gal an inch deep, ft2",
    231,
    () => areaForFlow({ flow: gpm(12), time: minutes(12), depth: inches(1) }).in("ft2"),
  ],
  [
    "1 gal/min on 60 ft2, in/h",
    inchesOfGallon,
    () => precipitationRate({ flow: gpm(1), area: ft2(60) }).in("in/h"),
  ],
  ["heads 10 by 6 ft, in/h", inchesOfGallon, () => spaced({ rowSpacing: quantity(6, "ft") })],
  ["heads 10 by 10 ft in a square, in/h", 0.6 * inchesOfGallon, () => spaced({ pattern: "square" })],
  [
    "heads in triangles of 10 ft, in/h",
    (0.6 * inchesOfGallon) / (Math.sqrt(3) / 2),
    () => spaced({ pattern: "triangular" }),
  ],
  [
    "half circles, in/h",
    2 * inchesOfGallon,
    () => spaced({ rowSpacing: quantity(6, "ft"), arc: quantity(180, "deg") }),
  ],
  [
    "a full turn, deg",
    360,
    () => edge((arc) => goes(() => spaced({ pattern: "square", arc: quantity(arc, "deg") })), 300, 400),
  ],
  [
    "a half circle of 10 ft, ft2",
    50 * Math.PI,
    () =>
      matchedPrecipitation({
        heads: [{ flow: gpm(1), radius: quantity(10, "ft"), arc: quantity(180, "deg") }],
      }).heads[0]?.area.in("ft2") ?? nan,
  ],
  ["gross of 3 at 75 %", 4, () => grossDepth({ net: inches(3), efficiency: percent(75) }).in("in")],
  ["net of 4 at 75 %", 3, () => netDepth({ gross: inches(4), efficiency: percent(75) }).in("in")],
  [
    "minutes for 0.4 in at 0.8 in/h",
    30,
    () => runTime({ depth: inches(0.4), rate: quantity(0.8, "in/h") }).in("min"),
  ],
  [
    "longer by a uniformity of 80 %",
    1.25,
    () => runTimeMultiplier({ method: "distribution uniformity", uniformity: percent(80) }),
  ],
  // 30 in/h less 20 of intake fill a third of an inch in two minutes: five cycles of ten
  [
    "minutes of a cycle by what may stand",
    2,
    () =>
      cycleAndSoak({
        runTime: minutes(10),
        rate: quantity(300, "mm/h"),
        intake: quantity(60, "mm/h"),
        storage: mm(8),
      }).cycle.in("min"),
  ],
  // 60 min at 240 mm/h above the intake stand 8 mm after 2
  [
    "longest run of one cycle by what may stand, min",
    2,
    () =>
      edge(
        (run) =>
          cycleAndSoak({
            runTime: minutes(run),
            rate: quantity(300, "mm/h"),
            intake: quantity(60, "mm/h"),
            storage: mm(8),
          }).cycles === 1,
        1,
        3,
      ),
  ],
  // f0 3, fc 1, b 2, P 2: (3 - 2 + ln(2 / 1)) / (2 * 2) h
  [
    "minutes to runoff by Horton",
    15 * (1 + Math.LN2),
    () =>
      timeToRunoff({
        rate: quantity(2, "in/h"),
        initial: quantity(3, "in/h"),
        basic: quantity(1, "in/h"),
        decay: quantity(2, "1/h"),
      }).in("min"),
  ],
  ["Monday to Thursday of a week, shared by days", 3, () => week().days[0]?.net.in("mm") ?? nan],
  ["Thursday to Monday", 4, () => week().days[1]?.net.in("mm") ?? nan],
  ["gross of Thursday at 80 %", 5, () => week().days[1]?.gross.in("mm") ?? nan],
  ["gross where none is stated", 3.5, () => plainWeek().days[0]?.gross.in("mm") ?? nan],
  ...([1, 2, 3, 4, 5, 6, 7] as const).map(
    (day) =>
      [
        `day ${day} of the week is one`,
        1,
        () =>
          goes(() => wateringWeek({ need: mm(7), days: [day], rate: quantity(10, "mm/h") })) &&
          goes(() => balance({ plan: { at: percent(50), days: [day] } }))
            ? 1
            : 0,
      ] as const,
  ),
];

function spaced(change: object): number {
  return spacingPrecipitationRate({
    flow: gpm(1),
    spacing: quantity(10, "ft"),
    ...(change as { pattern: "square" }),
  }).in("in/h");
}
function week() {
  return wateringWeek({
    need: mm(9),
    rain: mm(2),
    days: [1, 4],
    rate: quantity(10, "mm/h"),
    split: "by days",
    efficiency: percent(80),
  });
}
function plainWeek() {
  return wateringWeek({ need: mm(7), days: [1, 4], rate: quantity(10, "mm/h") });
}

const cans = [10, 20, 30, 40, 20, 20, 30, 30].map((value) => quantity(value, "mL", "water"));
const test = (change: object = {}) =>
  catchCanTest({
    catches: cans,
    time: minutes(30),
    opening: quantity(50, "cm2"),
    ...change,
  });

const uniformity: readonly Cell[] = [
  // mean 25; the two lowest 10 and 20, the four lowest 10, 20, 20, 20; off by 15, 5, 5, 15, 5, 5, 5, 5
  ["lower quarter", 60, () => distributionUniformity({ catches: cans }).in("%")],
  ["lower half", 70, () => distributionUniformity({ catches: cans, part: "lower half" }).in("%")],
  ["Christiansen", 70, () => christiansenUniformity({ catches: cans }).in("%")],
  ["lower quarter of a test", 60, () => test().lowerQuarter.in("%")],
  ["lower half of a test", 70, () => test().lowerHalf.in("%")],
  ["depth of a test, mm", 5, () => test().depth.in("mm")],
  ["rate of a test, mm/h", 10, () => test().rate.in("mm/h")],
  // five cans: 1.25 lie nearest to one, 2.5 to three
  ["half of five cans, a half going up", 100 * (5 / 6), () => five("lower half")],
  ["a quarter of five cans", 50, () => five("lower quarter")],
  ["fewest cans", 1, () => (goes(() => distributionUniformity({ catches: cans.slice(0, 4) })) ? 1 : 0)],
  ["three are too few", 1, () => (goes(() => distributionUniformity({ catches: cans.slice(0, 3) })) ? 0 : 1)],
  [
    "and for Christiansen",
    1,
    () => (goes(() => christiansenUniformity({ catches: cans.slice(0, 4) })) ? 1 : 0),
  ],
  ["and for a test", 1, () => (goes(() => test({ catches: cans.slice(0, 4) })) ? 1 : 0)],
];

function five(part: "lower half" | "lower quarter"): number {
  return distributionUniformity({
    catches: [1, 2, 3, 2, 2].map((value) => quantity(value, "mL", "water")),
    part,
  }).in("%");
}

const days = (values: readonly number[]) => ({
  start: "2026-06-01" as CivilDate,
  unit: "mm" as const,
  what: "test",
  source: "invented",
  values: [...values],
});
function balance(change: object) {
  return soilWaterBalance({
    available: mm(40),
    depletion: percent(50),
    before: mm(10),
    use: dailySeries(days([5, 5, 5, 5, 5, 5, 5, 5])),
    rain: dailySeries(days([0, 0, 0, 0, 0, 0, 0, 0])),
    ...change,
  });
}
const soil: readonly Cell[] = [
  [
    "half of 5 in",
    2.5,
    () => readilyAvailableWater({ available: inches(5), depletion: percent(50) }).in("in"),
  ],
  // (60 - 45) / (60 - 30)
  [
    "stress at 45 of 60 mm, %",
    50,
    () => waterStress({ available: mm(60), depleted: mm(45), depletion: percent(50) }).in("%"),
  ],
  [
    "the same of a day",
    50,
    () => soilWaterDay({ available: mm(60), depletion: percent(50), before: mm(45) }).stress.in("%"),
  ],
  // 40 of 4 mm at 30 mm depleted of 40: half of its use, 2 mm
  [
    "use under stress, mm",
    2,
    () =>
      soilWaterDay({ available: mm(40), depletion: percent(50), before: mm(30), use: mm(4) }).used.in("mm"),
  ],
  ["first stress of a season", 0.75, () => balance({ before: mm(25) }).stress[0] ?? nan],
  ["watered at half of 40 mm", 20, () => balance({ plan: { at: percent(50) } }).irrigation[2] ?? nan],
  // 1 June 2026 is a Monday; watering waits for Sunday, the seventh day
  ["Sunday is the seventh", 1, () => (sundays().irrigation.findIndex((value) => value > 0) === 6 ? 1 : 0)],
  // on Mondays from the first day on: a week later again
  ["Monday comes again on the eighth day", 1, () => ((mondays()[7] as number) > 0 ? 1 : 0)],
  // 10 mm and two days of 5 are half of 40
  [
    "depletion at which it is watered, %",
    50,
    () => edge((at) => (balance({ plan: { at: percent(at) } }).irrigation[2] ?? 0) > 0, 45, 60),
  ],
  ["12 % by volume of 100 mm", 12, () => held()],
];

function mondays() {
  return balance({ plan: { at: percent(10), days: [1] } }).irrigation;
}
function sundays() {
  return balance({ plan: { at: percent(10), days: [7] } });
}
function held(): number {
  return availableWater({
    layers: [{ thickness: mm(100), capacity: quantity(12, "% v/v") }],
  }).total.in("mm");
}

/** Head of water by Hazen and Williams, and what a meter of water weighs: 9.80665 kPa. */
const hazen = (liters: number, c: number, meters: number, length: number): number =>
  (10.67 * length * (liters / 60_000) ** 1.852) / (c ** 1.852 * meters ** 4.8704);
const pump = (efficiency: number) =>
  pumpPower({
    flow: quantity(3.6, "m3/h", "water"),
    head: quantity(10, "m"),
    efficiency: percent(efficiency),
  });
const pipes: readonly Cell[] = [
  ["10 m of water, kPa", 98.0665, () => pressureOfHeight({ height: quantity(10, "m") }).in("kPa")],
  ["98.0665 kPa, m of water", 10, () => pressureHead({ pressure: quantity(98.0665, "kPa") }).in("m")],
  // 3.6 m3/h are a liter, so a kilogram, a second, and 0.745699872 kW are a horsepower
  ["3.6 m3/h against 10 m, kW", 0.0980665, () => pump(100).waterKilowatts],
  ["the same by a pump of 50 %, kW", 0.196133, () => pump(50).brakeKilowatts],
  ["the same, hp", 0.0980665 / 0.74569987158227, () => pump(100).waterHorsepower],
  ["the same by a pump of 50 %, hp", 0.196133 / 0.74569987158227, () => pump(50).brakeHorsepower],
  [
    "5 gal in 25 s, gal/min",
    12,
    () => measuredFlow({ volume: quantity(5, "gal", "water"), time: quantity(25, "s") }).in("gal/min"),
  ],
  [
    "5 L in 25 s, L/min",
    12,
    () => measuredFlow({ volume: quantity(5, "L", "water"), time: quantity(25, "s") }).in("L/min"),
  ],
  // 60 L/min is 0.001 m3/s
  [
    "speed in 40 mm, m/s",
    0.001 / (Math.PI * 0.02 ** 2),
    () => pipeVelocity({ flow: lpm(60), diameter: mm(40) }).value.in("m/s"),
  ],
  [
    "flow at 1 m/s in 40 mm, L/min",
    60_000 * Math.PI * 0.02 ** 2,
    () => pipeFlow({ velocity: quantity(1, "m/s"), diameter: mm(40) }).in("L/min"),
  ],
  [
    "flow at 1 ft/s in 12 in, gal/min",
    (60 * Math.PI * 0.25 * 1728) / 231,
    () => pipeFlow({ velocity: quantity(1, "ft/s"), diameter: inches(12) }).in("gal/min"),
  ],
];
const hazens: readonly Cell[] = [
  [
    "friction, kPa",
    9.80665 * hazen(60, 140, 0.04, 100),
    () =>
      frictionLoss({ flow: lpm(60), diameter: mm(40), length: quantity(100, "m"), smoothness: 140 }).in(
        "kPa",
      ),
  ],
  ["smoothness of PVC", 150, () => pipeSmoothness({ material: "PVC" })],
  ["smoothness of polyethylene", 140, () => pipeSmoothness({ material: "polyethylene" })],
  ["smoothness of copper, the upper end of 130 to 140", 140, () => pipeSmoothness({ material: "copper" })],
  [
    "smoothness of new steel, the lower end of 140 to 150",
    140,
    () => pipeSmoothness({ material: "new steel" }),
  ],
  ["smoothness of galvanized iron", 120, () => pipeSmoothness({ material: "galvanized steel" })],
  [
    "smoothness of cast iron of 20 years, the upper end of 89 to 100",
    100,
    () => pipeSmoothness({ material: "old cast iron" }),
  ],
  [
    "equal outlets, 10: 1/2.852 + 1/20 + sqrt(0.852)/600",
    1 / 2.852 + 1 / 20 + Math.sqrt(0.852) / 600,
    () => multipleOutletFactor({ outlets: 10 }),
  ],
];

const kc = (
  season: "cool-season" | "warm-season",
  list: Parameters<typeof turfCoefficient>[0]["list"],
  more: object = {},
): number => turfCoefficient({ season, list, ...more }).value;
const months = (season: "cool-season" | "warm-season", printed: readonly number[]): readonly Cell[] =>
  printed.map((value, n) => [
    `California, ${season}, month ${n + 1}`,
    value,
    () => kc(season, "California, by month", { month: n + 1 }),
  ]);
const rain = (
  value: number,
  unit: "in" | "mm",
  method: "Texas, day" | "USDA-SCS, month" | "FAO, month",
): number => effectiveRain({ rain: quantity(value, unit), method }).in(unit);

const coefficients: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Turfgrass crop coefficients (Kc), table 1, University of California, Center for Landscape and Urban Horticulture",
    },
    [
      ...months("cool-season", [0.61, 0.64, 0.75, 1.04, 0.95, 0.88, 0.94, 0.86, 0.74, 0.75, 0.69, 0.6]),
      ...months("warm-season", [0.61, 0.54, 0.76, 0.72, 0.79, 0.68, 0.71, 0.71, 0.62, 0.54, 0.58, 0.55]),
      ["the year, cool-season", 0.8, () => kc("cool-season", "California, year")],
      ["the year, warm-season", 0.6, () => kc("warm-season", "California, year")],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "Phoenix Area Turf Water Use Report of March 2024: Bermuda .73 and .83, Rye .70 and .80",
    },
    [
      ["bermudagrass, acceptable", 0.73, () => kc("warm-season", "Arizona", { quality: "acceptable" })],
      ["bermudagrass, high", 0.83, () => kc("warm-season", "Arizona", { quality: "high" })],
      ["rye, acceptable", 0.7, () => kc("cool-season", "Arizona", { quality: "acceptable" })],
      ["rye, high", 0.8, () => kc("cool-season", "Arizona", { quality: "high" })],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "FAO Irrigation and Drainage Paper 56, table 12, as an open research program transcribes it: turf grass, cool season 0.90, 0.95, 0.95, warm season 0.80, 0.85, 0.85",
    },
    [
      ["cool-season turf", 0.95, () => kc("cool-season", "FAO-56")],
      ["warm-season turf", 0.85, () => kc("warm-season", "FAO-56")],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Plant-available water by texture, in/ft, as a page on soil water repeats the table: 0.75-1.25, 1.25-1.75, 1.50-2.30, 1.75-2.50",
    },
    (
      [
        ["coarse sand, fine sand, loamy sand", 0.75, 1.25],
        ["sandy loam, fine sandy loam", 1.25, 1.75],
        ["very fine sandy loam, loam, silt loam", 1.5, 2.3],
        ["clay loam, silty clay loam, sandy clay loam", 1.75, 2.5],
      ] as const
    ).flatMap(([texture, low, high]): Cell[] => [
      [`${texture}: low`, low, () => waterHolding({ texture }).low.in("in/ft")],
      [`${texture}: high`, high, () => waterHolding({ texture }).high.in("in/ft")],
    ]),
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "Effective rainfall, Texas A&M AgriLife: none below 0.1 in, all to 1 in, two thirds from 1 to 2 in, none beyond",
    },
    [
      ["Texas, 0.1 in", 0, () => rain(0.1, "in", "Texas, day")],
      ["Texas, 0.6 in", 0.5, () => rain(0.6, "in", "Texas, day")],
      ["Texas, 1 in", 0.9, () => rain(1, "in", "Texas, day")],
      ["Texas, 1.75 in", 1.4, () => rain(1.75, "in", "Texas, day")],
      ["Texas, 3 in", 0.9 + 2 / 3, () => rain(3, "in", "Texas, day")],
      // where the rule begins to count rain
      [
        "Texas, least rain that counts, in",
        0.1,
        () => edge((at) => rain(at, "in", "Texas, day") > 0, 0.5, 0.01),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "pyCropWat, methods.py, a public program for effective precipitation: P (125 - 0.2 P) / 125 to 250 mm, 125 + 0.1 P beyond; FAO: 0.6 P - 10, at least 0, and 0.8 P - 25, which meet at 75 mm",
    },
    [
      ["SCS, 100 mm", 84, () => rain(100, "mm", "USDA-SCS, month")],
      ["SCS, 250 mm", 150, () => rain(250, "mm", "USDA-SCS, month")],
      ["SCS, just beyond 250 mm", 150.001, () => rain(250.01, "mm", "USDA-SCS, month")],
      ["SCS, 300 mm", 155, () => rain(300, "mm", "USDA-SCS, month")],
      ["FAO, 50 mm", 20, () => rain(50, "mm", "FAO, month")],
      ["FAO, 75 mm", 35, () => rain(75, "mm", "FAO, month")],
      ["FAO, just beyond 75 mm", 0.8 * 75.005 - 25, () => rain(75.005, "mm", "FAO, month")],
      ["FAO, 100 mm", 55, () => rain(100, "mm", "FAO, month")],
    ],
  ),
  ...cells({ room, reached: "derived", source: "the definition of a share" }, [
    [
      "80 % of 10 mm",
      8,
      () => effectiveRain({ rain: mm(10), method: "fixed share", share: percent(80) }).in("mm"),
    ],
  ]),
  ...cells(
    {
      room,
      reached: "read",
      source: "an open research program of FAO-56: p + 0.04 (5 - ETc), FAO-56 p. 162 and table 22",
    },
    [
      [
        "depletion on a day of 7.5 mm",
        30,
        () => depletionFraction({ table: percent(40), use: quantity(7.5, "mm/d") }).in("%"),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source: "sprinkler handbooks: CU = 100 - 0.63 (100 - DU); 1 / (0.4 + 0.6 DU)",
    },
    [
      [
        "Christiansen from a lower quarter of 60 %",
        74.8,
        () => christiansenFromLowerQuarter({ lowerQuarter: percent(60) }).in("%"),
      ],
      [
        "longer by a lower quarter of 50 %",
        1 / 0.7,
        () => runTimeMultiplier({ method: "lower half from lower quarter", uniformity: percent(50) }),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "A. Hazen and G. Williams in SI units: h = 10.67 L Q^1.852 / (C^1.852 d^4.8704); Christiansen 1942",
    },
    hazens,
  ),
];

const temperatures = (unit: "°C" | "°F", low: number, high: number): number =>
  hargreavesSeries({
    temperatures: dailyTemperatures({
      start: "2026-04-10" as CivilDate,
      unit,
      sensor: "air",
      source: "invented",
      min: [low],
      max: [high],
    }),
    latitude: quantity(40, "deg"),
  }).values[0] ?? nan;

/** Depths, pipes, uniformity and soil water. */
export const waterConstants: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "derived",
      source:
        "231 in3 a gallon, 144 in2 a square foot, 60 minutes an hour; definitions on figures that divide evenly",
    },
    [
      ...depths,
      ...uniformity,
      ...soil,
      ...pipes,
      // 50 and 77 °F are 10 and 25 °C
      ["a series in °F is that in °C", temperatures("°C", 10, 25), () => temperatures("°F", 50, 77)],
      [
        "mean below which there is no figure, °C",
        -17.8,
        () => edge((t) => goes(() => temperatures("°C", t - 1, t + 1)), 0, -40),
      ],
    ],
  ),
  ...coefficients,
];
