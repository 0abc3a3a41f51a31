import { productForActive, quantity, sum, weightPerVolumeOf } from "../../src/index.js";
import type { Answer, LeftOut, PublishedCheck } from "./check.js";

/** Quarts of an emulsifiable concentrate for so many pounds of active ingredient. */
const quarts = (pounds: number, strength: number): number =>
  productForActive({
    active: quantity(pounds, "lb", "ai"),
    content: quantity(strength, "lb/gal", "ai/product"),
  }).in("qt");

/** Pounds of a powder of so many percent. */
const powder = (pounds: number, percent: number): number =>
  productForActive({
    active: quantity(pounds, "lb", "ai"),
    content: quantity(percent, "% w/w", "ai/product"),
  }).in("lb");

/** Pints in 100 gal for a percentage of active ingredient in the spray, with water at 8 lb/gal as the table has it. */
const pints = (percent: number, strength: number): number => {
  const inSpray = weightPerVolumeOf(quantity(percent, "% w/w", "ai/spray"), quantity(8, "lb/gal", "spray"));
  const active = quantity(inSpray.in("lb/gal") * 100, "lb", "ai");
  return productForActive({ active, content: quantity(strength, "lb/gal", "ai/product") }).in("pt");
};

const wanted = [0.5, 1, 3, 5] as const;
/** Fractions are printed exactly; a thousandth is for thirds. */
const exactly = 0.001;
const strengths = {
  "1.5 EC, qt": [4 / 3, 8 / 3, 8, 40 / 3],
  "2 EC, qt": [1, 2, 6, 10],
  "4 EC, qt": [0.5, 1, 3, 5],
  "8 EC, qt": [0.25, 0.5, 1.5, 2.5],
} as const;
const powders = {
  "15 WP, lb": [10 / 3, 20 / 3, 20, 100 / 3],
  "25 WP, lb": [2, 4, 12, 20],
  "40 WP, lb": [1.25, 2.5, 7.5, 12.5],
  "5 % dust, lb": [10, 20, 60, 100],
} as const;
const rows = (table: Readonly<Record<string, readonly number[]>>): Answer[] =>
  Object.entries(table).flatMap(([of, printed]) =>
    printed.map((figure, i): Answer => ({ of: `${of}, for ${wanted[i]} lb`, printed: figure, to: exactly })),
  );
const sixEc: readonly Answer[] = [
  { of: "6 EC, qt, for 0.5 lb", printed: 1 / 3, to: exactly },
  { of: "6 EC, qt, for 1 lb", printed: 2 / 3, to: exactly },
  {
    of: "6 EC, qt, for 3 lb",
    printed: 1.5,
    to: exactly,
    wrong: { right: 2, why: "copied from the row of 8 EC" },
  },
  {
    of: "6 EC, qt, for 5 lb",
    printed: 2.5,
    to: exactly,
    wrong: { right: 10 / 3, why: "copied from the row of 8 EC" },
  },
];

const percents = [0.03125, 0.0625, 0.125, 0.25, 0.5, 1] as const;
const missouri: Readonly<Record<number, readonly number[]>> = {
  1: [2, 4, 8, 16, 32, 64],
  2: [1, 2, 4, 8, 16, 32],
  4: [0.5, 1, 2, 4, 8, 16],
};

const retained = {
  "159 gal": [0.5, 0.4, 0.02, 0.04, 1.16],
  "212 gal": [1.32, 0.85, 0.16, 0.16, 0.15, 1.69],
  "396 gal": [4.57, 2.22, 0.27, 0.27, 0.23],
} as const;

/** Published examples of active ingredient in the tank, and of what a sprayer holds back. */
export const tankActiveChecks: readonly PublishedCheck[] = [
  {
    entry: "mix-075",
    formulas: ["weightPerVolumeOf"],
    source: {
      title: "Pounds of toxicant per acre computation, subcourse MD0173",
      publisher: "US Army medical subcourse",
      where: "example (2)",
    },
    reached: "read",
    given: "0.3 lb/acre in spray of 6 % by weight, 8.34 lb/gal",
    answers: [{ of: "gal/acre", printed: 0.6, to: 0.1 }],
    compute: () => {
      const strength = weightPerVolumeOf(quantity(6, "% w/w", "ai/spray"), quantity(8.34, "lb/gal", "spray"));
      const inSpray = quantity(strength.in("lb/gal"), "lb/gal", "ai/spray");
      return [quantity(0.3, "lb/acre", "ai").per(inSpray).in("gal/acre")];
    },
  },
  {
    entry: "mix-078",
    formulas: ["productForActive"],
    source: {
      title: "New England Vegetable Management Guide, dilution tables",
      publisher: "New England Extension",
      where: "lb actual per 100 gal",
    },
    reached: "read",
    given: "0.5, 1, 3 and 5 lb of active ingredient in 100 gal, from emulsifiable concentrates and powders",
    answers: [...rows(strengths), ...sixEc, ...rows(powders)],
    compute: () => [
      ...[1.5, 2, 4, 8].flatMap((strength) => wanted.map((pounds) => quarts(pounds, strength))),
      ...wanted.map((pounds) => quarts(pounds, 6)),
      ...[15, 25, 40, 5].flatMap((percent) => wanted.map((pounds) => powder(pounds, percent))),
    ],
  },
  {
    entry: "mix-080",
    formulas: ["productForActive", "weightPerVolumeOf"],
    source: {
      title: "Pesticide dilution table (G7510)",
      publisher: "University of Missouri Extension",
      where: "table, rows of 1, 2 and 4 lb/gal",
      url: "https://extension.missouri.edu/publications/g7510",
    },
    reached: "read",
    given: "percent of active ingredient in 100 gal of spray, with water taken as 8.0 lb/gal",
    answers: Object.entries(missouri).flatMap(([strength, printed]) =>
      printed.map(
        (figure, i): Answer => ({
          of: `pt of ${strength} lb/gal for ${percents[i]} %`,
          printed: figure,
          to: exactly,
        }),
      ),
    ),
    compute: () =>
      Object.keys(missouri).flatMap((strength) =>
        percents.map((percent) => pints(percent, Number(strength))),
      ),
    note: "The rows of 1.5, 3 and 5 lb/gal are rounded up by 9 to 12.5 % in print; the source calls itself approximate.",
  },
  {
    entry: "spray-070",
    formulas: ["sum"],
    source: {
      title: "Cleaning sprayers after use",
      publisher: "extension document (Cornell content)",
      where: "table",
    },
    reached: "read",
    given: "what tank, pump, agitation, manifold, filter and bowl of three sprayers hold back",
    answers: [
      { of: "gal, 159 gal tank", printed: 2.12, to: 0.01 },
      { of: "gal, 212 gal tank", printed: 4.33, to: 0.01 },
      { of: "gal, 396 gal tank", printed: 7.56, to: 0.01 },
    ],
    compute: () =>
      Object.values(retained).map((parts) =>
        sum(parts.map((part) => quantity(part, "gal", "spray"))).in("gal"),
      ),
  },
];

/** Published examples that are left out here, and why. */
export const tankActiveLeftOut: readonly LeftOut[] = [
  { entry: "spray-069", reason: "one rinse leaves 5 %, but how much the sprayer held back is not printed" },
];
