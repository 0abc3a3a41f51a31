import {
  applicationVolume,
  bandFieldRate,
  boomWidth,
  calibrationByCatch,
  calibrationByRefill,
  productForActive,
  quantity,
  testArea,
} from "../../src/index.js";
import { to } from "./answer.js";
import type { Answer, PublishedCheck, Source } from "./check.js";

const read = "read" as const;
const feet = (value: number) => quantity(value, "ft");
const caught = (ounces: number) => [quantity(ounces, "fl oz", "water")];

const handbook = (where: string): Source => ({
  title: "Weights and measures; amount of chemical needed for small areas",
  publisher: "Pacific Northwest Pest Management Handbooks",
  where,
  url: "https://www.pnwhandbooks.org/node/328/print",
});

/** Pounds of active ingredient in a gallon, and the printed milliliters on 1000 ft2 at 1 lb/acre. */
const liquids: readonly (readonly [number, number])[] = [
  [0.67, 130],
  [1, 87],
  [1.5, 58],
  [2, 43],
  [2.5, 35],
  [3, 29],
  [3.34, 26],
  [4, 22],
  [6, 14],
  [7, 12],
];
/** Percent of active ingredient, and the printed grams on a square rod and on 1000 ft2 at 1 lb/acre. */
const powders: readonly (readonly [number, number, number])[] = [
  [100, 2.8, 10],
  [90, 3.1, 12],
  [80, 3.5, 13],
  [75, 3.8, 14],
  [70, 4, 15],
  [65, 4.4, 16],
  [60, 4.7, 17],
  [50, 5.6, 21],
  [40, 7, 26],
  [30, 9.4, 35],
  [20, 14.1, 52],
];
const rounded = "2.8 g, itself rounded from 2.835, divided by the content";
const onRod: Readonly<Record<number, Answer["wrong"]>> = {
  50: { right: 5.7, why: rounded },
  40: { right: 7.1, why: rounded },
  20: { right: 14.2, why: "follows from the rounded figures above it" },
};
/** Printed pints per acre at 0.25, 0.5, 0.75, 1, 1.5 and 2 lb/acre of active ingredient, by pounds in a gallon. */
const pints: readonly (readonly [number, readonly string[]])[] = [
  [1, ["2", "4", "6", "8", "12", "16"]],
  [2, ["1", "2", "3", "4", "6", "8"]],
  [3, ["0.7", "1.33", "2", "2.7", "4", "5.33"]],
  [4, ["0.5", "1", "1.5", "2", "3", "4"]],
  [5, ["0.4", "0.8", "1.2", "1.6", "2.4", "3.2"]],
  [6, ["0.33", "0.7", "1", "1.33", "2", "2.7"]],
  [6.7, ["0.3", "0.6", "0.9", "1.2", "1.8", "2.4"]],
  [7, ["0.29", "0.57", "0.87", "1.14", "1.7", "2.3"]],
  [8, ["0.25", "0.5", "0.75", "1", "1.5", "2"]],
];
const pounds = [0.25, 0.5, 0.75, 1, 1.5, 2] as const;
const placeOf = (printed: string) => 10 ** -(printed.split(".")[1]?.length ?? 0);
const inGallon = (active: number, content: number) =>
  productForActive({
    active: quantity(active, "lb/acre", "ai"),
    content: quantity(content, "lb/gal", "ai/product"),
  });
const inPowder = (percent: number) =>
  productForActive({
    active: quantity(1, "lb/acre", "ai"),
    content: quantity(percent, "% w/w", "ai/product"),
  });

/** Worked examples of calibration and of active ingredient from bulletins, handbooks and the trade press. */
export const sprayBulletinChecks: readonly PublishedCheck[] = [
  {
    entry: "spray-149",
    formulas: ["calibrationByCatch"],
    source: {
      title: "Backpack and hand-held sprayer calibration",
      publisher: "SportsTurf",
      year: 2014,
      where: "April, page 38",
      url: "https://read.dmtmag.com/i/282941/37",
    },
    reached: read,
    given: "a plot 18.5 ft square in 46 s; 44 fl oz in 46 s",
    answers: [to("gal/acre", 44, 1)],
    compute: () => [
      calibrationByCatch({
        catches: caught(44),
        catchTime: quantity(46, "s"),
        times: [quantity(46, "s")],
        course: feet(18.5),
        width: feet(18.5),
      }).rate.in("gal/acre"),
    ],
  },
  {
    entry: "spray-150",
    formulas: ["applicationVolume", "calibrationByRefill"],
    source: {
      title: "Florida pest control examinations, calculations page 213",
      publisher: "exam study book",
      where: "methods I and II",
      url: "https://online.flipbuilder.com/qawr/oiuo/files/basic-html/page213.html",
    },
    reached: read,
    given: "0.15 gal/min from a nozzle every 48 in at 5 mph; 12 gal on 660 ft by 10 ft",
    answers: [
      to("gal/min of 20 fl oz/min", 0.15, 0.01, { printing: "cut" }),
      to("gal/acre, method I", 327, 1, {
        wrong: {
          right: 4,
          why: "divides by 5, not by 5 x 88 ft/min, which the line below it asks for: 3.71",
        },
      }),
      to("gal/acre, method II", 79.2, 0.1),
    ],
    compute: () => [
      quantity(20, "fl oz/min", "spray").in("gal/min"),
      applicationVolume({
        flow: quantity(0.15, "gal/min", "spray"),
        speed: quantity(5, "mi/h"),
        width: quantity(48, "in"),
      }).in("gal/acre"),
      calibrationByRefill({
        refills: [quantity(12, "gal", "water")],
        course: feet(660),
        width: feet(10),
      }).rate.in("gal/acre"),
    ],
  },
  {
    entry: "spray-151",
    formulas: ["testArea", "calibrationByRefill"],
    source: {
      title: "Calibration with a knapsack sprayer",
      publisher: "horticulture course journal, Australia",
      year: 2009,
      url: "http://rayshorticulture.blogspot.com/2009/08/calibration-with-knapsack-sprayer.html",
    },
    reached: read,
    given: "1.01 L in a minute, in which 46 m are walked with a swath of 0.51 m",
    answers: [to("m2", 23.46, 0.01), to("L/ha", 430.52, 0.01)],
    compute: () => {
      const course = quantity(46, "m");
      const swath = quantity(0.51, "m");
      const refills = [quantity(1.01, "L", "water")];
      return [
        testArea({ swath, distance: course }).in("m2"),
        calibrationByRefill({ refills, course, width: swath }).rate.in("L/ha"),
      ];
    },
  },
  {
    entry: "spray-152",
    formulas: ["boomWidth", "bandFieldRate"],
    source: {
      title: "Product control manual, appendix 8: calculating the calibration values",
      publisher: "maker of rate controllers",
      where: "broadcast and banded examples",
    },
    reached: read,
    given: "20 tips every 40 in; 20 gal/acre in bands of 14 in on that spacing",
    answers: [to("in of boom", 800, 1), to("ft of boom", 67, 1), to("gal/acre of the whole", 7, 1)],
    compute: () => {
      const spacing = quantity(40, "in");
      const boom = boomWidth({ nozzles: 20, spacing });
      const rate = quantity(20, "gal/acre", "spray");
      return [
        boom.in("in"),
        boom.in("ft"),
        bandFieldRate({ rate, band: quantity(14, "in"), row: spacing }).in("gal/acre"),
      ];
    },
  },
  {
    entry: "spray-153",
    formulas: ["productForActive"],
    source: handbook("amount of chemical needed for 1 square rod and 1000 square feet"),
    reached: read,
    given: "1 lb ai/acre from liquids of 0.67 to 7 lb/gal and from dry products of 20 to 100 %",
    answers: [
      ...liquids.map(([content, printed]) => to(`mL/1000 ft2 of ${content} lb/gal`, printed, 1)),
      ...powders.flatMap(([percent, rod, thousand]) => [
        to(`g on a square rod of ${percent} %`, rod, 0.1, {
          ...(onRod[percent] && { wrong: onRod[percent] }),
        }),
        to(`g/1000 ft2 of ${percent} %`, thousand, 1),
      ]),
    ],
    compute: () => [
      ...liquids.map(([content]) => inGallon(1, content).in("mL/1000 ft2")),
      ...powders.flatMap(([percent]) => [
        inPowder(percent).times(quantity(272.25, "ft2")).in("g"),
        inPowder(percent).in("g/1000 ft2"),
      ]),
    ],
  },
  {
    entry: "spray-154",
    formulas: ["productForActive"],
    source: handbook("pints of commercial material needed per acre"),
    reached: read,
    given: "0.25 to 2 lb ai/acre from liquids of 1 to 8 lb/gal",
    answers: pints.flatMap(([content, row]) =>
      row.map((printed, i) =>
        to(`pt/acre of ${content} lb/gal for ${pounds[i]} lb`, Number(printed), placeOf(printed), {
          ...(printed === "0.87" && { wrong: { right: 0.86, why: "0.75 x 8 / 7 = 0.857" } }),
        }),
      ),
    ),
    compute: () =>
      pints.flatMap(([content]) => pounds.map((active) => inGallon(active, content).in("pt/acre"))),
    note: "The rows of 2.64 and 3.34 lb/gal are left out: they are printed as for 2.67 and 3.33.",
  },
];
