import { dailySeries } from "../../src/calendar/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  flowForDepth,
  grossDepth,
  soilWaterBalance,
  soilWaterDay,
  spacingPrecipitationRate,
  waterVolume,
} from "../../src/water/index.js";

import type { Answer, PublishedCheck, Source } from "./check.js";

const inches = (value: number) => quantity(value, "in");
const checkbook: Source = {
  title: "Irrigation scheduling by the checkbook method, AE792",
  publisher: "North Dakota State University Extension",
  year: 2019,
  where: "soil water balance sheet of a field of corn, read in a copy",
};

/** Use, rain or irrigation, and the printed deficit at the end of the day; all in inches. */
type Row = readonly [use: number, water: number, deficit: number];
const june: readonly Row[] = [
  [0.12, 0, 0.12],
  [0.12, 0, 0.24],
  [0.15, 0, 0.39],
  [0.15, 0, 0.54],
  [0.12, 0.19, 0.47],
  [0.14, 0, 0.61],
  [0.14, 0, 0.75],
  [0.14, 0, 0.89],
  [0.14, 0, 1.03],
  [0.19, 0, 1.22],
  [0.19, 0.2, 1.2],
  [0.14, 0, 1.35],
  [0.17, 0.35, 1.17],
  [0.17, 0, 1.34],
  [0.22, 0, 1.56],
  [0.22, 0, 1.78],
  [0.22, 0, 2],
];
const july: readonly Row[] = [
  [0.24, 0, 1.18],
  [0.24, 0, 1.42],
  [0.24, 0.52, 1.14],
  [0.19, 0, 1.33],
  [0.19, 0, 1.52],
  [0.23, 0, 1.75],
  [0.18, 0, 1.93],
  [0.23, 1, 1.16],
  [0.18, 0, 1.34],
  [0.18, 0, 1.52],
  [0.18, 0, 1.7],
  [0.18, 0, 1.88],
  [0.17, 1, 1.05],
  [0.22, 0, 1.27],
  [0.22, 0, 1.49],
  [0.13, 0, 1.62],
  [0.22, 0, 1.84],
];
const field = { available: inches(4.1), depletion: quantity(50, "%") };

const dayByDay = (rows: readonly Row[], start: number): readonly number[] => {
  let before = start;
  return rows.map(([use, water]) => {
    const day = soilWaterDay({ ...field, before: inches(before), rain: inches(water), use: inches(use) });
    before = day.depleted.in("in");
    return before;
  });
};

const deficits = (rows: readonly Row[]): readonly Answer[] =>
  rows.map(
    ([, , printed]): Answer => ({
      of: "in",
      printed,
      to: 0.01,
      ...(printed === 1.2
        ? { wrong: { right: 1.21, why: "1.22 and 0.19 less 0.20; the next day goes on from 1.21" } }
        : {}),
    }),
  );

/** Worked sheets and examples of water, read in their sources. */
export const waterWorkedChecks: readonly PublishedCheck[] = [
  {
    entry: "water-010",
    formulas: ["soilWaterDay"],
    source: checkbook,
    reached: "read",
    given: "4.1 in of water, from field capacity on 12 June: use, with rain of 0.19, 0.20 and 0.35 in",
    answers: deficits(june),
    compute: () => dayByDay(june, 0),
  },
  {
    entry: "water-010",
    formulas: ["soilWaterBalance"],
    source: checkbook,
    reached: "read",
    given:
      "the same field from a deficit of 0.94 in on 16 July: use, rain of 0.52 in, 1 in of irrigation twice",
    answers: deficits(july),
    compute: () => {
      const series = (what: string, values: readonly number[]) =>
        dailySeries({ start: "2018-07-17", unit: "in", what, source: "the sheet", values });
      const found = soilWaterBalance({
        ...field,
        before: inches(0.94),
        use: series(
          "use",
          july.map(([use]) => use),
        ),
        rain: series(
          "rain and irrigation",
          july.map(([, water]) => water),
        ),
      });
      return found.depleted.map((mm) => quantity(mm, "mm").in("in"));
    },
    note: "The source gives days of the month without a year.",
  },
  {
    entry: "water-011",
    formulas: ["waterVolume", "flowForDepth"],
    source: {
      title: "Irrigation water management: application volume calculations",
      publisher: "USDA Natural Resources Conservation Service",
      where: "example of a set of 1360 by 80 ft",
      url: "https://studylib.net/doc/9727177/",
    },
    reached: "read",
    given: "6 in of water on 1360 by 80 ft, in 8 hours",
    answers: [
      { of: "ft3", printed: 54_400, to: 100 },
      { of: "ft3/s", printed: 1.88, to: 0.01, printing: "cut" },
    ],
    compute: () => {
      const set = { area: quantity(1360 * 80, "ft2"), depth: inches(6) };
      const flow = flowForDepth({ ...set, time: quantity(8, "h") });
      return [waterVolume(set).in("ft3"), (flow.in("gal/min") * 231) / 1728 / 60];
    },
  },
  {
    entry: "water-012",
    formulas: ["spacingPrecipitationRate"],
    source: {
      title: "Sprinkler precipitation rates",
      publisher: "irrigation course slides",
      where: "slide 7",
      url: "https://www.slideshare.net/sherylwil/sprinkler-precipitation-rates",
    },
    reached: "read",
    given: "heads of 6 gal/min, 30 ft apart in rows 25 ft apart, staggered",
    answers: [
      {
        of: "in/h",
        printed: 0.89,
        to: 0.01,
        wrong: {
          right: 0.77,
          why: "0.866 makes the row spacing of a triangle from the head spacing; here the row spacing is given",
        },
      },
    ],
    compute: () => [
      spacingPrecipitationRate({
        flow: quantity(6, "gal/min", "water"),
        spacing: quantity(30, "ft"),
        rowSpacing: quantity(25, "ft"),
      }).in("in/h"),
    ],
  },
  {
    entry: "water-035",
    formulas: ["waterVolume"],
    source: {
      title: "Rainfall by the numbers",
      publisher: "grounds department of a golf club in Ontario",
      year: 2012,
      where: "1 June 2012",
      url: "http://westmountgreens.blogspot.com/2012/06/rainfall-by-numbers.html",
    },
    reached: "read",
    given: "1.5 in of rain, and a deficit of 6 in, on 100 irrigated acres",
    answers: [
      { of: "gal of rain, slightly more", printed: 4_000_000, to: 1_000_000, printing: "cut" },
      { of: "gal of deficit, over", printed: 16_000_000, to: 1_000_000, printing: "cut" },
    ],
    compute: () =>
      [1.5, 6].map((depth) => waterVolume({ area: quantity(100, "acre"), depth: inches(depth) }).in("gal")),
  },
  {
    entry: "water-036",
    formulas: ["grossDepth", "waterVolume"],
    source: {
      title: "Irrigation: principles and practices",
      publisher: "course for growers, hands-on exercise 5",
      where: "unit 1.5, how much water do I need; read in a copy that ends before the flow",
      url: "https://issuhub.com/view/index?id=3560&pageIndex=239",
    },
    reached: "read",
    given: "0.30 in a day for a week at an efficiency of 75 %; 2.625 in on an acre, and on ten",
    answers: [
      {
        of: "in a week",
        printed: 2.625,
        to: 0.001,
        wrong: {
          right: 2.8,
          why: "it multiplies by 1.25 for an efficiency of 75 %; 2.1 / 0.75 is 2.8, and 2.625 is for 80 %",
        },
      },
      {
        of: "gal/acre for 2.625 in",
        printed: 71_290,
        to: 10,
        wrong: { right: 71_280, why: "it takes 27,158 gal for an acre-inch, which is 27,154" },
      },
      { of: "gal for 2.625 in on ten acres", printed: 712_900, to: 1000 },
    ],
    compute: () => {
      const on = (acres: number) =>
        waterVolume({ area: quantity(acres, "acre"), depth: inches(2.625) }).in("gal");
      return [grossDepth({ net: inches(0.3 * 7), efficiency: quantity(75, "%") }).in("in"), on(1), on(10)];
    },
  },
];
