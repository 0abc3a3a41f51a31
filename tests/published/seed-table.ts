import { quantity } from "../../src/quantity/index.js";
import { bulkSeed } from "../../src/stand/index.js";
import { to } from "./answer.js";
import type { PublishedCheck } from "./check.js";

const percents = [100, 95, 90, 85, 80, 75, 70, 65, 60, 55, 50] as const;

/** Pounds of bulk seed for a pound of pure live seed: a row for each purity, a column for each germination. */
const printed: readonly (readonly number[])[] = [
  [1, 1.05, 1.1, 1.2, 1.25, 1.35, 1.4, 1.55, 1.65, 1.8, 2],
  [1.05, 1.1, 1.2, 1.25, 1.3, 1.4, 1.5, 1.65, 1.75, 1.9, 2.1],
  [1.1, 1.2, 1.25, 1.3, 1.4, 1.5, 1.6, 1.7, 1.85, 2, 2.2],
  [1.2, 1.25, 1.3, 1.4, 1.45, 1.55, 1.7, 1.8, 1.95, 2.15, 2.35],
  [1.25, 1.3, 1.4, 1.5, 1.55, 1.65, 1.8, 1.9, 2.1, 2.25, 2.5],
  [1.35, 1.4, 1.5, 1.55, 1.65, 1.8, 1.9, 2.05, 2.2, 2.45, 2.65],
  [1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2.05, 2.2, 2.4, 2.6, 2.85],
  [1.55, 1.65, 1.7, 1.8, 1.9, 2.05, 2.2, 2.4, 2.55, 2.8, 3.1],
  [1.65, 1.75, 1.85, 1.95, 2.1, 2.2, 2.4, 2.55, 2.8, 3.05, 3.35],
  [1.8, 1.9, 2, 2.15, 2.25, 2.45, 2.6, 2.8, 3.05, 3.35, 3.65],
  [2, 2.1, 2.2, 2.35, 2.5, 2.65, 2.85, 3.1, 3.35, 3.65, 4],
];

/** Cells that are not the nearest 0.05: 10,000 over purity and germination, and the nearest. */
const misrounded: Readonly<Record<string, readonly [quotient: string, right: number]>> = {
  "100 and 70": ["1.4286", 1.45],
  "70 and 100": ["1.4286", 1.45],
  "95 and 90": ["1.1696", 1.15],
  "90 and 95": ["1.1696", 1.15],
  "95 and 65": ["1.6194", 1.6],
  "65 and 95": ["1.6194", 1.6],
  "80 and 85": ["1.4706", 1.45],
  "75 and 55": ["2.4242", 2.4],
  "55 and 75": ["2.4242", 2.4],
  "65 and 65": ["2.3669", 2.35],
  "55 and 55": ["3.3058", 3.3],
};

/** A printed table of pure live seed. */
export const seedTableChecks: readonly PublishedCheck[] = [
  {
    entry: "stand-080",
    formulas: ["bulkSeed"],
    source: {
      title:
        "Establishment of seeded grasslands for wildlife habitat: pounds of bulk seed for 1 pound of pure live seed",
      publisher: "US Geological Survey, Northern Prairie Wildlife Research Center",
      year: 2006,
      where: "table 4, adapted from USDA-SCS Conservation Job Sheet ND-20, 1980",
      url: "http://www.npwrc.usgs.gov/resource/habitat/grasland/table4.htm",
    },
    reached: "read",
    given: "purity and germination of 50 to 100 %, to the nearest 0.05 lb",
    answers: printed.flatMap((row, p) =>
      row.map((cell, g) => {
        const of = `${percents[p]} and ${percents[g]}`;
        const off = misrounded[of];
        const wrong = off && { right: off[1], why: `not the nearest 0.05: the quotient is ${off[0]}` };
        return to(`lb at ${of} %`, cell, 0.05, wrong && { wrong });
      }),
    ),
    compute: () =>
      percents.flatMap((purity) =>
        percents.map((germination) =>
          bulkSeed({
            pureLiveSeed: quantity(1, "lb", "pure live seed"),
            lot: { purity: quantity(purity, "%"), germination: quantity(germination, "%") },
          }).in("lb"),
        ),
      ),
  },
];
