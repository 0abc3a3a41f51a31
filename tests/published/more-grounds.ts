import { addDays, dailyTemperatures } from "../../src/calendar/index.js";
import { accumulatedDegreeDays, degreeDayModel, degreeDays } from "../../src/interval/index.js";
import { money, quantity, sum } from "../../src/quantity/index.js";
import { limeForRating } from "../../src/soil/index.js";
import { effectiveFieldCapacity } from "../../src/spread/index.js";
import { seedOrder } from "../../src/stand/index.js";
import {
  irrigationInterval,
  irrigationTime,
  readilyAvailableWater,
  runTime,
  turfUse,
  wateringWeek,
  waterVolume,
} from "../../src/water/index.js";
import { to } from "./answer.js";
import type { Answer, PublishedCheck } from "./check.js";

const read = "read" as const;

const above50 = degreeDayModel({
  method: "simple average",
  base: { value: 50, unit: "°F" },
  sensor: "air",
});
const above0 = degreeDayModel({ method: "simple average", base: { value: 0, unit: "°C" }, sensor: "air" });
const daysAt = (mean: number, days: number) => {
  const series = dailyTemperatures({
    start: "2026-05-01",
    unit: "°C",
    sensor: "air",
    source: "a mean of every day, as given",
    min: Array.from({ length: days }, () => mean - 5),
    max: Array.from({ length: days }, () => mean + 5),
  });
  const to = addDays("2026-05-01", days - 1);
  return accumulatedDegreeDays({ series, model: above0, from: "2026-05-01", to }).total.in("°C d");
};

/** Growing degree days. */
export const moreIntervalChecks: readonly PublishedCheck[] = [
  {
    entry: "interval-100",
    formulas: ["degreeDays"],
    source: {
      title: "Calculating growing degree days (three methods)",
      publisher: "Michigan State University Extension district horticulture handout",
      where: "1. Averaging method",
    },
    reached: read,
    given: "65 and 40 °F, base 50 °F",
    answers: [to("°F d", 2.5, 0.1)],
    compute: () => [
      degreeDays({ max: quantity(65, "°F"), min: quantity(40, "°F"), model: above50 }).in("°F d"),
    ],
  },
  {
    entry: "interval-101",
    formulas: ["accumulatedDegreeDays"],
    source: {
      title: "Degree days and growth regulators",
      publisher: "turf consultants' article, Spain",
      url: "https://www.tiloom.com/en/degrees-daily-growth-regulators/",
    },
    reached: read,
    given: "ten days of a mean of 15 °C, fifteen of 10 °C, base 0 °C",
    answers: [to("°C d in ten days", 150, 1), to("°C d in fifteen", 150, 1)],
    compute: () => [daysAt(15, 10), daysAt(10, 15)],
  },
];

/** Kilometers an hour, and the printed hectares a minute at swaths of 2 to 50 m. */
const coverage: readonly (readonly [number, readonly number[]])[] = [
  [2, [0.007, 0.017, 0.033, 0.05, 0.067, 0.083, 0.1, 0.167]],
  [3, [0.01, 0.025, 0.05, 0.075, 0.1, 0.125, 0.15, 0.25]],
  [4, [0.013, 0.033, 0.067, 0.1, 0.133, 0.167, 0.2, 0.333]],
  [5, [0.017, 0.047, 0.083, 0.125, 0.167, 0.208, 0.25, 0.416]],
];
const swaths = [2, 5, 10, 15, 20, 25, 30, 50];
const hectaresPerMinute = (speed: number, swath: number) =>
  effectiveFieldCapacity({
    swath: quantity(swath, "m"),
    speed: quantity(speed, "km/h"),
    efficiency: quantity(100, "%"),
  }).in("ha/min");
const misprints: Readonly<Record<string, Partial<Answer>>> = {
  "5 km/h, 5 m": { wrong: { right: 0.042, why: "misprint: 5 x 5/600 is 0.0417" } },
  "5 km/h, 50 m": { printing: "cut" },
};

/** Machines. */
export const moreSpreadChecks: readonly PublishedCheck[] = [
  {
    entry: "spread-130",
    formulas: ["effectiveFieldCapacity"],
    source: {
      title: "Manual of an ultra-low-volume sprayer",
      publisher: "equipment maker, UK",
      where: "page 10, table 1",
      url: "https://manualsdump.com/amp/en/manuals/277096/12",
    },
    reached: read,
    given: "hectares a minute of a swath at a speed, and the flow for 2 L/ha at 4 km/h and 12 m",
    answers: [
      to("ha/min at 4 km/h, 12 m", 0.08, 0.01),
      to("L/min for 2 L/ha", 0.16, 0.01),
      ...coverage.flatMap(([speed, row]) =>
        row.map((printed, i) => {
          const of = `${speed} km/h, ${swaths[i]} m`;
          return to(`ha/min at ${of}`, printed, 0.001, misprints[of]);
        }),
      ),
    ],
    compute: () => [
      hectaresPerMinute(4, 12),
      quantity(0.08, "ha/min")
        .times(quantity(2, "L/ha", "spray"))
        .in("L/min"),
      ...coverage.flatMap(([speed]) => swaths.map((swath) => hectaresPerMinute(speed, swath))),
    ],
  },
  {
    entry: "spread-131",
    formulas: ["effectiveFieldCapacity"],
    source: {
      title: "How to calculate hourly mower productivity",
      publisher: "trade magazine for landscape contractors, US",
      url: "http://www.greenindustrypros.com/article/10259926/how-to-calculate-hourly-mower-productivity",
    },
    reached: read,
    given: "a deck of 60 in at 8.5 mph, and of that 80 %",
    answers: [to("ft2/h in full", 224_400, 1), to("ft2/h", 179_520, 1), to("acre/h", 4.12, 0.01)],
    compute: () => {
      const deck = { swath: quantity(60, "in"), speed: quantity(8.5, "mi/h") };
      const most = effectiveFieldCapacity({ ...deck, efficiency: quantity(80, "%") });
      return [
        effectiveFieldCapacity({ ...deck, efficiency: quantity(100, "%") }).in("ft2/h"),
        most.in("ft2/h"),
        most.in("acre/h"),
      ];
    },
  },
];

/** Irrigation. */
export const moreWaterChecks: readonly PublishedCheck[] = [
  {
    entry: "water-030",
    formulas: ["waterVolume", "irrigationTime"],
    source: {
      title: "Gross estimated runtimes for small to medium turf areas",
      publisher: "University of Nevada Cooperative Extension",
      where: "small lawn areas, from the printed depth of 0.034 ft",
      url: "https://wrcc.dri.edu/washoeEt/preciprates.html",
    },
    reached: read,
    given: "0.034 ft on 15 ft by 15 ft, from a head of 3.60 gal/min",
    answers: [to("ft3", 7.65, 0.01), to("gal", 57.2, 0.1), to("min", 15.9, 0.1)],
    compute: () => {
      const lawn = { depth: quantity(0.034, "ft"), area: quantity(225, "ft2") };
      const water = waterVolume(lawn);
      return [
        water.in("ft3"),
        water.in("gal"),
        irrigationTime({ ...lawn, flow: quantity(3.6, "gal/min", "water") }).in("min"),
      ];
    },
  },
  {
    entry: "water-031",
    formulas: ["runTime", "wateringWeek"],
    source: {
      title: "Irrigation run time chart instructions",
      publisher: "lawn water saving program, Texas",
      url: "https://lawnsensetexas.com/irrigation-run-time-chart-instructions/",
    },
    reached: read,
    given: "0.20 in a day at 0.50 in/h; of a week on three days",
    answers: [to("min a day", 24, 1), to("min on each of three days", 56, 1)],
    compute: () => {
      const rate = quantity(0.5, "in/h");
      const need = quantity(0.2, "in/d").times(quantity(1, "week"));
      const week = wateringWeek({ need, days: [1, 3, 5], rate, split: "equal" });
      return [
        runTime({ depth: quantity(0.2, "in"), rate }).in("min"),
        week.days[0]?.runTime.in("min") ?? Number.NaN,
      ];
    },
  },
  {
    entry: "water-033",
    formulas: ["irrigationInterval", "readilyAvailableWater", "turfUse"],
    source: {
      title: "Handbook of technical irrigation information (reposted)",
      publisher: "irrigation equipment maker",
      where: "page 37, San Marcos, California",
      url: "https://www.yumpu.com/en/document/view/47573002/lit194-handbook-of-tiipdf-diamond-head-sprinkler-supply/37",
    },
    reached: read,
    given:
      "1 in of water in a foot of soil, roots of 9 in, half of it used; 0.20 in a day at a coefficient of 0.70",
    answers: [to("d", 2.68, 0.01)],
    compute: () => [
      irrigationInterval({
        water: readilyAvailableWater({ available: quantity(0.75, "in"), depletion: quantity(50, "%") }),
        use: turfUse({ reference: quantity(0.2, "in/d"), coefficient: 0.7 }),
      }).in("d"),
    ],
  },
  {
    entry: "water-034",
    formulas: ["runTime"],
    source: {
      title: "Calculating sprinkler precipitation rates",
      publisher: "irrigation article, South Africa",
      url: "http://wetec.co.za/design-technical/31-calculating-sprinkler-precipitation-rates",
    },
    reached: read,
    given: "10 mm at 20 mm/h",
    answers: [to("min", 30, 1)],
    compute: () => [runTime({ depth: quantity(10, "mm"), rate: quantity(20, "mm/h") }).in("min")],
  },
];

/** Salt and lime. */
export const moreSoilChecks: readonly PublishedCheck[] = [
  {
    entry: "soil-141",
    formulas: ["limeForRating"],
    source: {
      title: "Lime quality",
      publisher: "Western Australian Department of Primary Industries and Regional Development",
      where: "figure 2",
      url: "https://www.agric.wa.gov.au/soil-acidity/lime-quality",
    },
    reached: read,
    given: "what 1.7 t/ha of lime with a neutralizing value of 60 % is of lime with 90 %",
    answers: [to("t/ha", 1.1, 0.1)],
    compute: () => {
      const value = (percent: number) => quantity(percent, "% w/w", "CaCO3 equivalent/product");
      const recommended = quantity(1.7, "t/ha", "product").times(value(60));
      return [limeForRating({ recommended, rating: value(90) }).in("t/ha")];
    },
  },
];

const pitch = quantity(6600, "m2");
const pounds = (value: number) => money(value, "GBP");

/** A season's materials of a pitch. */
export const moreStandChecks: readonly PublishedCheck[] = [
  {
    entry: "stand-060",
    formulas: ["seedOrder", "waterVolume", "money", "sum"],
    source: {
      title: "Rugby pitch maintenance: cost of materials",
      publisher: "grounds managers' association, UK",
      year: 2004,
      url: "https://thegma.org.uk/learning/resources/rugby-pitch-maintenance-cost-materials",
    },
    reached: read,
    given:
      "6,600 m2: seed at 17 g/m2 and fertilizer at 25 g/m2 in bags of 25 kg, 6 mm of water, and what it costs",
    answers: [
      to("bags of seed", 4.5, 0.1),
      to("bags of fertilizer", 6.5, 0.1, { wrong: { right: 6.6, why: "165 kg in bags of 25 kg are 6.6" } }),
      to("m3 of water a week", 40, 1),
      to("GBP of water, 640 m3", 544, 1),
      to("GBP in all", 2677, 1),
    ],
    compute: () => [
      seedOrder({ area: pitch, rate: quantity(17, "g/m2", "seed") }).seed.in("kg") / 25,
      quantity(25, "g/m2", "product").times(pitch).in("kg") / 25,
      waterVolume({ depth: quantity(6, "mm"), area: pitch }).in("m3"),
      quantity(640, "m3")
        .times(pounds(0.85).per(quantity(1, "m3")))
        .in("money:GBP"),
      sum([750, 405, 104, 250, 104, 109, 296, 115, 544].map(pounds)).in("money:GBP"),
    ],
  },
];
