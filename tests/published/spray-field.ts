import {
  applicationVolume,
  areaPerTank,
  asFinishedSpray,
  bandFieldRate,
  bandTreatedArea,
  bandTreatedRate,
  boomHeight,
  boomWidth,
  calibrationByCatch,
  calibrationByRefill,
  catchCourse,
  courseTime,
  effectiveFieldCapacity,
  fanOverlap,
  fanWidth,
  flowAtPressure,
  groundSpeed,
  nozzleFlow,
  nozzleLimits,
  outputAtPressure,
  quantity,
  ratedFlow,
  runLength,
  solutionEquivalent,
  sprayWidth,
  tankLoads,
  testArea,
  tipChoices,
  travelSpeed,
  waterEquivalent,
} from "../../src/index.js";
import { to } from "./answer.js";
import type { PublishedCheck, Source } from "./check.js";

const read = "read" as const;
const inches = (value: number) => quantity(value, "in");
const feet = (value: number) => quantity(value, "ft");
const meters = (value: number) => quantity(value, "m");
const mph = (value: number) => quantity(value, "mi/h");
const kmh = (value: number) => quantity(value, "km/h");
const lpm = (value: number) => quantity(value, "L/min", "spray");
const gpm = (value: number) => quantity(value, "gal/min", "spray");
const gpa = (value: number) => quantity(value, "gal/acre", "spray");
const lha = (value: number) => quantity(value, "L/ha", "spray");

const dealer = (where: string): Source => ({
  title: "Technical and spray coverage information, catalog page 165",
  publisher: "agricultural equipment dealer",
  where,
  url: "https://user-35215390377.cld.bz/Independent-Ag-Equipment/165/",
});
const montana = (where: string): Source => ({
  title: "Calibration of sprayers (MT 2000-14)",
  publisher: "Montana State University Extension",
  year: 2000,
  where,
});
const alberta = (where: string): Source => ({
  title: "Crop protection (Agdex 606-1)",
  publisher: "Alberta Agriculture",
  where,
  url: "http://agriculture.alberta.ca/flippingbook/agdex/606-1/files/assets/basic-html/page17.html",
});
const minnesota: Source = {
  title: "How to calculate herbicide rates and calibrate herbicide applicators",
  publisher: "University of Minnesota Extension",
  where: "example of bands",
  url: "https://extension.umn.edu/herbicides/how-calculate-herbicide-rates-and-calibrate-herbicide-applicators",
};

const heights = [8, 10, 12, 15, 18, 24, 30, 36] as const;
/** Angle in degrees and the printed widths at the heights; a pair is printed and right. */
const fans: readonly (readonly [number, readonly (number | readonly [number, number])[]])[] = [
  [15, [2.1, 2.6, 3.2, 3.9, 4.7, 6.3, 7.9, 9.5]],
  [20, [2.8, 3.5, 4.2, 5.3, [6.4, 6.3], 8.5, 10.6, 12.7]],
  [25, [3.5, 4.4, 5.3, [6.6, 6.7], 8, 10.6, 13.3, [15.9, 16]]],
  [30, [4.3, 5.4, 6.4, [8.1, 8], [9.7, 9.6], [12.8, 12.9], 16.1, 19.3]],
  [35, [5, 6.3, 7.6, 9.5, [11.3, 11.4], [15.5, 15.1], 18.9, 22.7]],
  [40, [5.8, 7.3, 8.7, 10.9, 13.1, 17.5, 21.8, 26.2]],
  [45, [6.6, 8.3, 9.9, 12.4, 14.9, 19.9, [24.8, 24.9], 29.8]],
  [50, [7.5, 9.3, 11.2, 14, 16.8, 22.4, 28, 33.6]],
  [55, [8.3, [10.3, 10.4], 12.5, 15.6, 18.7, 25, 31.2, 37.5]],
  [60, [9.2, 11.5, [13.8, 13.9], 17.3, [20.6, 20.8], 27.7, 34.6, 41.6]],
];
const fanCells = fans.flatMap(([angle, row]) =>
  row.map((cell, i) => ({ angle, height: heights[i] as number, cell })),
);

const speeds = [4, 6, 8, 10, 15, 20, 25, 30] as const;
const swaths: readonly (readonly [number, readonly number[]])[] = [
  [4, [0.03, 0.04, 0.05, 0.07, 0.1, 0.13, 0.17, 0.2]],
  [6, [0.04, 0.06, 0.08, 0.1, 0.15, 0.2, 0.25, 0.3]],
  [8, [0.05, 0.08, 0.11, 0.13, 0.2, 0.27, 0.33, 0.4]],
  [10, [0.07, 0.1, 0.13, 0.17, 0.25, 0.33, 0.42, 0.5]],
  [12, [0.08, 0.12, 0.16, 0.2, 0.3, 0.4, 0.5, 0.6]],
  [14, [0.09, 0.14, 0.19, 0.23, 0.35, 0.47, 0.58, 0.7]],
];
const covered = (swath: number, speed: number) =>
  effectiveFieldCapacity({ swath: meters(swath), speed: kmh(speed), efficiency: quantity(100, "%") });

/** Miles per hour and the printed seconds for 200 ft. */
const runs: readonly (readonly [number, number])[] = [
  [3, 45],
  [3.5, 39],
  [4, 34],
  [4.5, 30],
  [5, 27],
  [6, 23],
  [7, 19],
  [7.5, 18],
  [8, 17],
  [9, 15],
  [10, 14],
];

/** Swath of a boomless sprayer in ft, and the printed course for 1/8 acre. */
const eighths: readonly (readonly [number, number])[] = [
  [30, 182],
  [32, 171],
  [34, 161],
  [36, 152],
  [38, 144],
  [40, 137],
  [42, 130],
  [44, 124],
];

type Flow = ReturnType<typeof lpm>;
type Volume = ReturnType<typeof lha>;
type Speed = ReturnType<typeof kmh>;
type Width = ReturnType<typeof meters>;

/** The four figures of one example, each from the other three. */
const four = (flow: Flow, volume: Volume, speed: Speed, width: Width) => ({
  volume: applicationVolume({ flow, speed, width }),
  flow: nozzleFlow({ applicationVolume: volume, speed, width }),
  speed: travelSpeed({ flow, applicationVolume: volume, width }),
  width: sprayWidth({ flow, applicationVolume: volume, speed }),
});

/** The limits against the mean, in percent, the stricter first. */
const meanLimits = (): readonly number[] =>
  nozzleLimits()
    .filter(({ against }) => against === "mean")
    .map(({ limit }) => limit.in("%"))
    .sort((a, b) => a - b);

/** Examples of calibration, nozzles, bands and fans that were read after the first collection. */
export const sprayFieldChecks: readonly PublishedCheck[] = [
  {
    entry: "spray-101",
    formulas: ["fanWidth"],
    source: dealer("theoretical coverage at various spray heights"),
    reached: read,
    given: "fans of 15 to 60 degrees, 8 to 36 in above the target",
    answers: fanCells.map(({ angle, height, cell }) =>
      typeof cell === "number"
        ? to(`in, ${angle} degrees at ${height} in`, cell, 0.1)
        : to(`in, ${angle} degrees at ${height} in`, cell[0], 0.1, {
            wrong: { right: cell[1], why: "2 h tan(angle / 2); its neighbors in the row follow that" },
          }),
    ),
    compute: () =>
      fanCells.map(({ angle, height }) =>
        fanWidth({ angle: quantity(angle, "deg"), height: inches(height) }).in("in"),
      ),
  },
  {
    entry: "spray-102",
    formulas: ["boomHeight"],
    source: dealer("theoretical coverage at various spray heights, read backward"),
    reached: read,
    given: "fans that just meet: the printed width as the spacing",
    answers: [
      to("in, 30 degrees, 19.3 in apart", 36, 1),
      to("in, 40 degrees, 21.8 in apart", 30, 1),
      to("in, 45 degrees, 19.9 in apart", 24, 1),
      to("in, 50 degrees, 16.8 in apart", 18, 1),
      to("in, 60 degrees, 34.6 in apart", 30, 1),
    ],
    compute: () =>
      (
        [
          [30, 19.3],
          [40, 21.8],
          [45, 19.9],
          [50, 16.8],
          [60, 34.6],
        ] as const
      ).map(([angle, spacing]) =>
        boomHeight({
          angle: quantity(angle, "deg"),
          spacing: inches(spacing),
          overlap: quantity(0, "%"),
        }).in("in"),
      ),
  },
  {
    entry: "spray-103",
    formulas: ["fanOverlap"],
    source: {
      title: "Broadcast boom nozzle spacing",
      publisher: "Ontario and Saskatchewan spray specialists (sprayers101)",
      where: "Boom height math",
      url: "https://sprayers101.com/broadcast-boom-nozzle-spacing/",
    },
    reached: read,
    given: "a pattern of 40 in on a spacing of 20 in",
    answers: [to("% overlap", 100, 1)],
    compute: () => [fanOverlap({ fan: inches(40), spacing: inches(20) }).in("%")],
  },
  {
    entry: "spray-105",
    formulas: ["boomWidth", "groundSpeed", "applicationVolume"],
    source: {
      title: "Calibration practice problems for the private applicator exam",
      publisher: "Henderson County, Texas (Texas A&M AgriLife)",
      where: "formulas; problems 1-1 and 1-2",
      url: "https://paperzz.com/doc/9001669/broadcast-spraying-gpa---henderson-county",
    },
    reached: read,
    given: "13 nozzles, 20 in apart; 300 ft in 1 s; 1 fl oz/min on 1 in at 1 mph",
    answers: [
      to("ft of swath, as problem 1-2 takes it", 21.7, 0.1),
      to("mph for 300 ft in 1 s", 204, 1, { printing: "cut" }),
      to("gal/acre", 46.4, 0.1),
    ],
    compute: () => [
      boomWidth({ nozzles: 13, spacing: inches(20) }).in("ft"),
      groundSpeed({ course: feet(300), times: [quantity(1, "s")] }).in("mi/h"),
      applicationVolume({ flow: quantity(1, "fl oz/min", "spray"), speed: mph(1), width: inches(1) }).in(
        "gal/acre",
      ),
    ],
  },
  {
    entry: "spray-106",
    formulas: ["applicationVolume", "nozzleFlow", "travelSpeed", "sprayWidth"],
    source: {
      title: "Useful formulae for working out nozzle selection, forward speed, application rate",
      publisher: "Farm Ireland (Irish Independent)",
      where: "calibration example",
      url: "http://www.independent.ie/business/farming/useful-formulae-for-working-out-nozzle-selection-forward-speed-application-rate-26717877.html",
    },
    reached: read,
    given: "1.3 L/min, 7.8 km/h, 0.5 m, 200 L/ha: each from the other three by the printed formulas",
    answers: [
      to("L/ha", 200, 1),
      to("L/min", 1.3, 0.1),
      to("km/h", 7.8, 0.1),
      to("m", 0.5, 0.1),
      to("L/ha of 1 imperial gal/acre", 11.2, 0.1),
    ],
    compute: () => {
      const of = four(lpm(1.3), lha(200), kmh(7.8), meters(0.5));
      return [
        of.volume.in("L/ha"),
        of.flow.in("L/min"),
        of.speed.in("km/h"),
        of.width.in("m"),
        quantity(1, "imp gal/acre").in("L/ha"),
      ];
    },
    note: "The page says gallons per acre; 11.2 is the imperial gallon, the US gallon has 9.35.",
  },
  {
    entry: "spray-107",
    formulas: ["applicationVolume", "nozzleFlow", "travelSpeed", "sprayWidth"],
    source: {
      title: "Orchard sprayer manual, calibration",
      publisher: "equipment maker, Slovenia",
      where: "page 18, example",
    },
    reached: read,
    given: "12 nozzles of 1.02 L/min, 6 km/h, 3 m row: each figure from the other three",
    answers: [
      to("L/min of all nozzles", 12.24, 0.01),
      to("L/ha", 408, 1),
      to("L/min", 12.24, 0.01),
      to("km/h", 6, 1),
      to("m", 3, 0.1),
    ],
    compute: () => {
      const all = lpm(1.02).times(12);
      const of = four(all, lha(408), kmh(6), meters(3));
      return [
        all.in("L/min"),
        of.volume.in("L/ha"),
        of.flow.in("L/min"),
        of.speed.in("km/h"),
        of.width.in("m"),
      ];
    },
  },
  {
    entry: "spray-108",
    formulas: ["effectiveFieldCapacity", "nozzleFlow"],
    source: {
      title: "Vehicle sprayer manual, coverage of the sprayer",
      publisher: "equipment maker, UK",
      where: "table 2 and example, page 21",
    },
    reached: read,
    given: "swaths of 4 to 14 m at 4 to 30 km/h; then 100 L/ha on 12 m at 8 km/h",
    answers: [
      ...swaths.flatMap(([swath, row]) =>
        row.map((printed, i) => to(`ha/min, ${swath} m at ${speeds[i]} km/h`, printed, 0.01)),
      ),
      to("L/min", 16, 1),
    ],
    compute: () => [
      ...swaths.flatMap(([swath]) => speeds.map((speed) => covered(swath, speed).in("ha/min"))),
      nozzleFlow({ applicationVolume: lha(100), speed: kmh(8), width: meters(12) }).in("L/min"),
    ],
  },
  {
    entry: "spray-109",
    formulas: ["testArea", "groundSpeed", "travelSpeed"],
    source: {
      title: "Calibrating your knapsack sprayer for pesticide dose and spray volume, steps 5 and 6",
      publisher: "Pesticidewise (UK research body)",
      url: "https://www.pesticidewise.com/faq/step-5-6-calibrating-your-knapsack-sprayer-pesticide-dose-and-spray-mixwater-volume",
    },
    reached: read,
    given: "0.75 m by 33.3 m, to be walked in 50 s",
    answers: [to("m2", 25, 1), to("km/h", 2.4, 0.1), to("m/s", 0.67, 0.01)],
    compute: () => {
      const speed = groundSpeed({ course: meters(33.3), times: [quantity(50, "s")] });
      return [
        testArea({ swath: meters(0.75), distance: meters(33.3) }).in("m2"),
        speed.in("km/h"),
        speed.in("m/s"),
      ];
    },
  },
  {
    entry: "spray-111",
    formulas: ["calibrationByRefill"],
    source: {
      title: "Calibrating your spray to apply weed killers accurately",
      publisher: "weed killer seller, Australia",
      where: "steps 1-7",
    },
    reached: read,
    given: "2 L on 10 m by 10 m; 5 L/ha in a tank of 10 L",
    answers: [to("L/ha", 200, 1), to("mL in 10 L", 250, 1)],
    compute: () => {
      const { rate } = calibrationByRefill({
        refills: [quantity(2, "L", "spray")],
        course: meters(10),
        width: meters(10),
      });
      const inSpray = quantity(5, "L/ha", "product").per(rate);
      return [rate.in("L/ha"), inSpray.in("mL/L") * 10];
    },
  },
  {
    entry: "spray-113",
    formulas: ["calibrationByCatch", "catchCourse"],
    source: {
      title: "Calibrating a backpack sprayer; the 1/128th rule",
      publisher: "UF/IFAS Extension Alachua County",
      year: 2022,
      url: "https://blogs.ifas.ufl.edu/alachuaco/2022/02/04/calibrating-a-backpack-sprayer-the-1-128th-rule/",
    },
    reached: read,
    given: "a plot of 1/128 acre 18.5 ft wide; 25 fl oz in its time",
    answers: [
      to("gal/acre", 25, 1),
      to("ft of length", 8.5, 0.1, {
        wrong: { right: 18.4, why: "8.5 by 18.5 ft is 1/277 acre: a digit is missing" },
      }),
    ],
    compute: () => {
      const { course } = catchCourse({ width: feet(18.5) });
      const catches = [quantity(25, "fl oz", "water")];
      return [
        calibrationByCatch({ catches, course, width: feet(18.5) }).rate.in("gal/acre"),
        course.in("ft"),
      ];
    },
  },
  {
    entry: "spray-114",
    formulas: ["catchCourse", "runLength"],
    source: {
      title: "Sprayer calibration guide",
      publisher: "Clemson University weed science",
      where: "three tables of courses",
      url: "https://www.clemson.edu/cafls/research/weeds/spray-spread.html",
    },
    reached: read,
    given: "1/128-acre courses by spacing; 1/8-acre courses of boomless sprayers, rounded up",
    answers: [
      ...[
        [12, 340],
        [16, 255],
        [20, 204],
        [24, 170],
        [28, 146],
        [32, 128],
        [36, 113],
        [40, 102],
      ].map(([width, course]) => to(`ft at ${width} in`, course as number, 1)),
      ...eighths.map(([swath, course]) => to(`ft at ${swath} ft`, course, 2)),
    ],
    compute: () => [
      ...[12, 16, 20, 24, 28, 32, 36, 40].map((width) =>
        catchCourse({ width: inches(width) }).course.in("ft"),
      ),
      ...eighths.map(([swath]) => runLength({ area: quantity(0.125, "acre"), swath: feet(swath) }).in("ft")),
    ],
    note: "A second table of the page prints the spacing of the 204 ft course as 120 in, for 20 in.",
  },
  {
    entry: "spray-115",
    formulas: ["runLength", "calibrationByCatch"],
    source: {
      title: "Calibrating a boomless sprayer: pints to gallons method (ENTFACT-805)",
      publisher: "University of Kentucky",
      url: "https://entomology.mgcafe.uky.edu/ef805",
    },
    reached: read,
    given: "1/8 acre; pints caught are gallons per acre",
    answers: [to("ft2 in 1/8 acre", 5445, 1), to("gal/acre for 1 pt", 1, 1), to("gal/acre for 20 pt", 20, 1)],
    compute: () => {
      const width = feet(30);
      const course = runLength({ area: quantity(0.125, "acre"), swath: width });
      return [
        course.times(width).in("ft2"),
        ...[1, 20].map((pints) =>
          calibrationByCatch({ catches: [quantity(pints, "pt", "water")], course, width }).rate.in(
            "gal/acre",
          ),
        ),
      ];
    },
  },
  {
    entry: "spray-116",
    formulas: ["calibrationByCatch", "areaPerTank"],
    source: {
      title: "Calibrating a boom sprayer for turf",
      publisher: "herbicide maker, US",
      where: "steps 4-6",
    },
    reached: read,
    given: "20 fl oz over 204 ft at 20 in; 200 gal tank",
    answers: [to("gal/acre", 20, 1), to("acres per tank", 10, 1)],
    compute: () => [
      calibrationByCatch({
        catches: [quantity(20, "fl oz", "water")],
        course: feet(204),
        width: inches(20),
      }).rate.in("gal/acre"),
      areaPerTank({ capacity: quantity(200, "gal", "spray"), applicationVolume: gpa(20) }).in("acre"),
    ],
  },
  {
    entry: "spray-117",
    formulas: ["applicationVolume"],
    source: {
      title: "Spray application manual, 8.3 Section widths and nozzle spacing",
      publisher: "GRDC (Australia)",
      year: 2025,
      url: "https://grdc.com.au/resources-and-publications/grownotes/technical-manuals/spray-application-manual/preparing-for-spraying/module-8-calibration-of-the-spray-system/8.3-section-widths-and-nozzle-spacing",
    },
    reached: read,
    given: "a spacing of 20 in taken for 50 cm",
    answers: [to("m in 20 in", 0.508, 0.001), to("% error", 1.6, 0.1)],
    compute: () => {
      const at = (width: ReturnType<typeof meters>) =>
        applicationVolume({ flow: lpm(1), speed: kmh(10), width }).in("L/ha");
      return [inches(20).in("m"), (at(meters(0.5)) / at(meters(0.508)) - 1) * 100];
    },
  },
  {
    entry: "spray-118",
    formulas: ["tipChoices", "flowAtPressure", "ratedFlow", "applicationVolume", "tankLoads"],
    source: alberta("sprayer calibration example, steps 1-6"),
    reached: read,
    given: "a tip 02 at 275 kPa and 9 km/h; 40 L/acre on 30 acres, 2000 L tank",
    answers: [
      to("L/acre", 40, 1),
      to("size of the tip at 275 kPa, in tenths of a gal/min", 2, 1),
      to("kPa", 275, 5),
      to("L for 30 acres", 1200, 1),
    ],
    compute: () => {
      const rated = ratedFlow("02", "40 psi");
      const range = { lowest: quantity(100, "kPa"), highest: quantity(400, "kPa") };
      const flow = flowAtPressure({ ...rated, ...range }, quantity(275, "kPa"));
      const { choices } = tipChoices({
        applicationVolume: quantity(40, "L/acre", "spray"),
        speeds: { slowest: kmh(9), usual: kmh(9), fastest: kmh(9) },
        spacing: inches(20),
        pressures: range,
        rating: "40 psi",
      });
      const nearest = choices.find(({ pressure }) => Math.abs(pressure.in("kPa") - 275) < 10);
      const loads = tankLoads({
        area: quantity(30, "acre"),
        applicationVolume: quantity(40, "L/acre", "spray"),
        capacity: quantity(2000, "L", "spray"),
      });
      return [
        applicationVolume({ flow, speed: kmh(9), width: inches(20) }).in("L/acre"),
        Number(nearest?.code ?? Number.NaN),
        nearest?.pressure.in("kPa") ?? Number.NaN,
        loads.volume.in("L"),
      ];
    },
    note: "The spacing is not printed on the page: 20 in, the usual one, gives the printed volume, 50 cm gives 41.",
  },
  {
    entry: "spray-119",
    formulas: ["waterEquivalent", "solutionEquivalent", "asFinishedSpray"],
    source: dealer("spraying solutions other than water, example"),
    reached: read,
    given: "20 gal/acre of 28 % N (10.65 lb/gal), and the 22.6 of water back",
    answers: [
      to("gal/acre of water", 22.6, 0.1),
      to("gal/acre of solution", 20, 0.1),
      to("gal/acre of solution, of a calibration", 20, 0.1),
    ],
    compute: () => {
      const density = quantity(10.65, "lb/gal");
      return [
        waterEquivalent(gpa(20), density).in("gal/acre"),
        solutionEquivalent(quantity(22.6, "gal/acre", "water"), density).in("gal/acre"),
        asFinishedSpray({ rate: quantity(22.6, "gal/acre", "water") }, { density }).value.in("gal/acre"),
      ];
    },
  },
  {
    entry: "spray-120",
    formulas: ["bandFieldRate", "bandTreatedRate", "bandTreatedArea"],
    source: minnesota,
    reached: read,
    given: "3 lb/acre in 10 in bands on 30 in rows",
    answers: [
      to("lb per crop acre", 1, 0.1),
      to("lb/acre in the band, from that", 3, 0.1),
      to("thirds of the herbicide saved", 2, 1),
    ],
    compute: () => {
      const rows = { band: inches(10), row: inches(30) };
      const field = bandFieldRate({ rate: quantity(3, "lb/acre", "product"), ...rows });
      const treated = bandTreatedArea({ area: quantity(3, "acre"), ...rows });
      return [
        field.in("lb/acre"),
        bandTreatedRate({ rate: field, ...rows }).in("lb/acre"),
        3 - treated.in("acre"),
      ];
    },
  },
  {
    entry: "spray-121",
    formulas: ["nozzleFlow", "travelSpeed"],
    source: montana("example 3b"),
    reached: read,
    given: "30 gal/acre, 30 in, 7 mph; the nozzles put out 1.5 gal/min",
    answers: [to("gal/min wanted", 1, 1), to("mph", 9.9, 0.1)],
    compute: () => [
      nozzleFlow({ applicationVolume: gpa(30), speed: mph(7), width: inches(30) }).in("gal/min"),
      travelSpeed({ flow: gpm(1.5), applicationVolume: gpa(30), width: inches(30) }).in("mi/h"),
    ],
    note: "1.06 gal/min, which the example rounds to 1.",
  },
  {
    entry: "spray-122",
    formulas: ["areaPerTank"],
    source: montana("examples 4 and 7b"),
    reached: read,
    given: "500 and 250 gal at 30 gal/acre; 300 gal at 40 gal/acre",
    answers: [
      to("acres, 500 gal", 16.6, 0.1, { printing: "cut" }),
      to("acres, 250 gal", 8.3, 0.1),
      to("acres, 300 gal", 7.5, 0.1),
    ],
    compute: () =>
      (
        [
          [500, 30],
          [250, 30],
          [300, 40],
        ] as const
      ).map(([gallons, rate]) =>
        areaPerTank({ capacity: quantity(gallons, "gal", "spray"), applicationVolume: gpa(rate) }).in("acre"),
      ),
  },
  {
    entry: "spray-123",
    formulas: ["areaPerTank"],
    source: {
      title: "Applicator practice problems (forestry)",
      publisher: "unnamed extension slide set",
      where: "problem 2",
      url: "https://www.slideserve.com/libitha/forestry-problem-index-click-on-appropriate-number-below",
    },
    reached: read,
    given: "400 gal tank, 20 gal/acre, 3 lb ai/acre",
    answers: [to("acres per tank", 20, 1), to("lb ai per tank", 60, 1)],
    compute: () => {
      const area = areaPerTank({ capacity: quantity(400, "gal", "spray"), applicationVolume: gpa(20) });
      return [area.in("acre"), quantity(3, "lb/acre", "ai").times(area).in("lb")];
    },
  },
  {
    entry: "spray-124",
    formulas: ["runLength", "calibrationByRefill"],
    source: {
      title: "Calibration steps",
      publisher: "Good Fruit Grower",
      where: "boom example",
      url: "https://www.goodfruit.com/calibration-steps/",
    },
    reached: read,
    given: "a boom of 10 ft on 1/10 acre, 4 gal",
    answers: [to("ft", 436, 1), to("gal/acre", 40, 1)],
    compute: () => [
      runLength({ area: quantity(0.1, "acre"), swath: feet(10) }).in("ft"),
      calibrationByRefill({
        refills: [quantity(4, "gal", "water")],
        course: feet(436),
        width: feet(10),
      }).rate.in("gal/acre"),
    ],
  },
  {
    entry: "spray-125",
    formulas: ["flowAtPressure", "outputAtPressure"],
    source: {
      title: "Spray nozzle formulas: flow, pressure and velocity",
      publisher: "maker of industrial nozzles",
      where: "summary (1)",
    },
    reached: read,
    given: "twice the pressure",
    answers: [to("% more flow", 41, 1), to("% more, without a range", 41, 1)],
    compute: () => {
      const rated = {
        flow: quantity(1, "gal/min", "water"),
        pressure: quantity(20, "psi"),
        lowest: quantity(10, "psi"),
        highest: quantity(80, "psi"),
      };
      const from = quantity(20, "psi");
      const { value } = outputAtPressure({ output: gpa(1), from, to: quantity(40, "psi") });
      return [
        (flowAtPressure(rated, quantity(40, "psi")).in("gal/min") - 1) * 100,
        (value.in("gal/acre") - 1) * 100,
      ];
    },
  },
  {
    entry: "spray-126",
    kind: "transcription",
    formulas: ["nozzleLimits"],
    source: alberta("nozzle tip calibration"),
    reached: read,
    given: "how far a nozzle may lie off the average of the boom",
    answers: [to("% of the mean", 5, 1)],
    compute: () => [meanLimits()[0] as number],
  },
  {
    entry: "spray-127",
    kind: "transcription",
    formulas: ["nozzleLimits"],
    source: {
      title: "Florida pest control examinations, calculations page 213",
      publisher: "exam study book",
      where: "method I, last line",
      url: "https://online.flipbuilder.com/qawr/oiuo/files/basic-html/page213.html",
    },
    reached: read,
    given: "how far a nozzle may lie off the average of all",
    answers: [to("% of the mean", 10, 1)],
    compute: () => [meanLimits()[1] as number],
  },
  {
    entry: "spray-128",
    formulas: ["calibrationByCatch"],
    source: {
      title: "Calibrating hose-end sprayers, for spraying turf",
      publisher: "Pesticide Environmental Stewardship (university consortium)",
      where: "steps 2 and 3; the rate per 1000 ft2 by hand",
      url: "http://pesticidestewardship.org/homeowner/Pages/Hose-endSprayerCalibration.aspx",
    },
    reached: "derived",
    given: "20 s for 250 ft2, 1.25 gal caught in 20 s",
    answers: [to("gal/1000 ft2", 5, 0.01)],
    compute: () => [
      calibrationByCatch({
        catches: [quantity(1.25, "gal", "water")],
        catchTime: quantity(20, "s"),
        times: [quantity(20, "s")],
        course: feet(25),
        width: feet(10),
      }).rate.in("gal/1000 ft2"),
    ],
  },
  {
    entry: "spray-129",
    formulas: ["areaPerTank"],
    source: {
      title: "Sprayer calibration instructions: mixing herbicides using per-acre rates",
      publisher: "weed control office, US",
      where: "mixing example",
      url: "https://paperzz.com/doc/9164538/sprayer-calibration-instructions",
    },
    reached: read,
    given: "50 gal at 100 gal/acre, 7 oz/acre",
    answers: [to("oz per load", 3.5, 0.1)],
    compute: () => [
      quantity(7, "fl oz/acre", "product")
        .times(areaPerTank({ capacity: quantity(50, "gal", "spray"), applicationVolume: gpa(100) }))
        .in("fl oz"),
    ],
  },
  {
    entry: "spray-130",
    formulas: ["courseTime"],
    source: {
      title: "Sprayer calibration: nozzle tip selection and the 1/128th acre method",
      publisher: "university hand-out, US",
      where: "1 B, time to travel 200 ft",
      url: "https://www.coursehero.com/file/6196450/calb-list/",
    },
    reached: read,
    given: "200 ft at 3 to 10 mph",
    answers: runs.map(([speed, seconds]) => to(`s at ${speed} mph`, seconds, 1)),
    compute: () => runs.map(([speed]) => courseTime({ course: feet(200), speed: mph(speed) }).in("s")),
  },
];
