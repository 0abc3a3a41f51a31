import { quantity } from "../../src/quantity/index.js";
import { curveNumberRunoff } from "../../src/water/index.js";
import { to } from "./answer.js";
import type { PublishedCheck, Source } from "./check.js";

/** Rain, and the printed runoff of the curve numbers 55, 70, 80 and 90; in inches. */
const table: readonly (readonly [rain: number, ...runoff: number[]])[] = [
  [1, 0, 0, 0.08, 0.32],
  [1.2, 0, 0.03, 0.15, 0.46],
  [1.4, 0, 0.06, 0.24, 0.61],
  [1.6, 0, 0.11, 0.34, 0.76],
  [1.8, 0, 0.17, 0.44, 0.93],
  [2, 0.02, 0.24, 0.56, 1.09],
  [2.5, 0.08, 0.46, 0.89, 1.53],
  [3, 0.19, 0.71, 1.25, 1.98],
  [3.5, 0.35, 1.01, 1.64, 2.45],
  [4, 0.53, 1.33, 2.04, 2.92],
  [4.5, 0.74, 1.67, 2.46, 3.4],
  [5, 0.98, 2.04, 2.89, 3.88],
  [6, 1.52, 2.81, 3.78, 4.85],
  [7, 2.12, 3.62, 4.69, 5.82],
  [8, 2.78, 4.46, 5.63, 6.81],
  [9, 3.49, 5.33, 6.57, 7.79],
  [10, 4.23, 6.22, 7.52, 8.78],
  [11, 5, 7.13, 8.48, 9.77],
  [12, 5.79, 8.05, 9.45, 10.76],
  [13, 6.61, 8.98, 10.42, 11.76],
  [14, 7.44, 9.91, 11.39, 12.75],
  [15, 8.29, 10.85, 12.37, 13.74],
];
const columns = [55, 70, 80, 90];

const tr55 = (where: string, url?: string): Source => ({
  title: "Urban Hydrology for Small Watersheds (TR-55)",
  publisher: "US Soil Conservation Service",
  year: 1986,
  where,
  ...(url !== undefined && { url }),
});
const inches = (value: number) => quantity(value, "in");

/** Runoff by the curve number. */
export const waterRunoffChecks: readonly PublishedCheck[] = [
  {
    entry: "water-100",
    formulas: ["curveNumberRunoff"],
    source: tr55(
      "table 2-1, runoff depth for selected curve numbers and rainfall amounts: four of its columns, as the tests of a public program carry it",
    ),
    reached: "read",
    given: "rain of 1 to 15 in on curve numbers of 55, 70, 80 and 90",
    answers: table.flatMap(([rain, ...printed]) =>
      printed.map((runoff, i) => to(`in of ${rain} in at ${columns[i]}`, runoff, 0.01)),
    ),
    compute: () =>
      table.flatMap(([rain]) =>
        columns.map((cn) => curveNumberRunoff({ rain: inches(rain), curveNumber: cn }).runoff.in("in")),
      ),
  },
  {
    entry: "water-101",
    formulas: ["curveNumberRunoff"],
    source: tr55(
      "example 4-1, Dyer County, Tennessee, as the notes of a public program work it through",
      "https://www.nrcs.usda.gov/Internet/FSE_DOCUMENTS/stelprdb1044171.pdf",
    ),
    reached: "read",
    given: "6 in of rain, a curve number of 75",
    answers: [to("in, S", 3.333, 0.001), to("in, Ia", 0.667, 0.001), to("in, Q", 3.282, 0.001)],
    compute: () => {
      const storm = curveNumberRunoff({ rain: inches(6), curveNumber: 75 });
      return [storm.retention, storm.initialAbstraction, storm.runoff].map((depth) => depth.in("in"));
    },
  },
  {
    entry: "water-102",
    formulas: ["curveNumberRunoff"],
    source: {
      title: "National Engineering Handbook, part 630, chapter 10: direct runoff from storm rainfall",
      publisher: "USDA Natural Resources Conservation Service, as the tests of a public program quote it",
      where: "127 mm of rain",
    },
    reached: "read",
    given: "127 mm of rain, a curve number of 75",
    answers: [to("mm", 62.2, 0.1)],
    compute: () => [curveNumberRunoff({ rain: quantity(127, "mm"), curveNumber: 75 }).runoff.in("mm")],
  },
];
