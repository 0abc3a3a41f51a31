// Classes and limits of the nutrient room, typed a second time from what their sources print.
import {
  activityIndex,
  burnSchemes,
  controlledReleaseTest,
  foliarBurnRisk,
  highPartialSaltIndex,
  intervalPractices,
  publishedDurations,
  releaseSchemes,
} from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";
import { type Cell, type ConstantCheck, cells, edge } from "./check.js";

const room = "nutrient";
const read = { room, reached: "read" } as const;
const remembered = { room, reached: "from memory" } as const;
const number = (value: unknown): number => (typeof value === "number" ? value : Number.NaN);

const from = (scheme: keyof typeof releaseSchemes, n: number, printed: number): Cell => [
  `${scheme}: class ${n + 1} from, %`,
  printed,
  () => number(releaseSchemes[scheme].classes[n]?.from),
];
const tested = (day: number, month: number, end: number) =>
  controlledReleaseTest({
    percentAt24Hours: day,
    percentAt28Days: month,
    percentAtStatedTime: end,
    statedDays: 90,
    temperatureC: 25,
  });
const lasts = (kind: string, what: RegExp, low: number, high: number): readonly Cell[] => {
  const of = () =>
    publishedDurations.find(
      (one) =>
        one.kind === kind &&
        what.test(typeof one.source === "string" ? one.source : (one.source.publisher ?? "")),
    );
  return [
    [`${kind} lasts from, weeks`, low, () => number(of()?.weeks.low)],
    [`${kind} lasts to, weeks`, high, () => number(of()?.weeks.high)],
  ];
};
const insoluble = (hot: number) =>
  activityIndex({
    coldInsoluble: quantity(20, "% w/w", "N/product"),
    hotInsoluble: quantity(hot, "% w/w", "N/product"),
  });
const classes: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source:
        "Cornell Suffolk County: above 0.29 slow, 0.29 to 0.15 moderate (fert-042); a maker's article: at least 30 % slow; 10 V.S.A. 1266b: less than 15 %",
    },
    [
      from("suffolk water-insoluble", 0, 29),
      from("suffolk water-insoluble", 1, 15),
      from("suffolk with coated", 0, 29),
      from("suffolk with coated", 1, 15),
      from("thirty percent", 0, 30),
      from("thirty percent", 1, 15),
      from("Vermont 1266b", 0, 15),
    ],
  ),
  ...cells(
    {
      ...read,
      within: 1e-8,
      source:
        "European definition (fert-082): at 25 °C at most 15 % in 24 h, 75 % in 28 d, at least 75 % at the stated time",
    },
    [
      ["most in 24 hours, %", 15, () => number(tested(10, 60, 80).limits[0]?.percent)],
      ["most in 28 days, %", 75, () => number(tested(10, 60, 80).limits[1]?.percent)],
      ["least at the stated time, %", 75, () => number(tested(10, 60, 80).limits[2]?.percent)],
      ["turns at the stated time, %", 75, () => edge((at) => tested(10, 60, at).qualifies, 80, 65)],
    ],
  ),
  ...cells(
    {
      ...read,
      within: 1e-8,
      source:
        "University of Arizona 1995 (fert-048): an activity index of 40 % at least; of 20 % in cold water, 12 % stay in hot",
    },
    [
      ["least activity index, %", 40, () => insoluble(10).minimum.in("%")],
      [
        "told below an index of 40: hot insoluble, %",
        12,
        () => edge((hot) => insoluble(hot).findings.length === 0, 1, 19),
      ],
      ["least, as it is told", 40, () => number(insoluble(15).findings[0]?.params.minimum)],
      ["index of 15 in 20, %", 25, () => insoluble(15).index.in("%")],
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Cornell, Nitrogen sources: soluble 2-6 weeks, slow or controlled 8-12, some as long as 20; SportsTurf February 2016: 8-12 weeks; Texas garden column 2003: ten weeks",
    },
    [
      ...lasts("water-soluble nitrogen", /Cornell/, 2, 6),
      ...lasts("slow or controlled release, usual", /Cornell/, 8, 12),
      ...lasts("slow or controlled release, longest", /Cornell/, 12, 20),
      ...lasts("ureaform or methylene urea", /SportsTurf/, 8, 12),
      ...lasts("sulfur-coated urea", /Texas/, 10, 10),
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Oregon State, table 26-2 (fert-060): low 0.2 to 0.7, moderate 1.7, high 3.2 to 5.3; turf list after McCarty (fert-061): high above 1.5",
    },
    [
      ["Oregon: low to", 0.7, () => number(burnSchemes["Oregon State University"].classes[0]?.to)],
      ["Oregon: moderate from", 1.7, () => number(burnSchemes["Oregon State University"].classes[1]?.from)],
      ["Oregon: moderate to", 1.7, () => number(burnSchemes["Oregon State University"].classes[1]?.to)],
      ["Oregon: high from", 3.2, () => number(burnSchemes["Oregon State University"].classes[2]?.from)],
      ["turf list: low to", 1.5, () => number(burnSchemes["turf list"].classes[0]?.to)],
      ["turf list: high from", 1.5, () => number(burnSchemes["turf list"].classes[1]?.from)],
      ["a high partial index", 1.5, () => highPartialSaltIndex],
    ],
  ),
  ...cells(
    {
      ...read,
      within: 1e-8,
      source:
        "Agnew and Moore 1989 (fert-084): urea burned in 1, 2 and 4 gal, a formaldehyde-urea solution in 1 gal",
    },
    [
      [
        "most water in which urea burned, gal/1000 ft2",
        4,
        () =>
          edge(
            (gallons) =>
              foliarBurnRisk({
                source: "urea",
                nitrogen: quantity(1, "lb/1000 ft2", "N"),
                volume: quantity(gallons, "gal/1000 ft2", "spray"),
              }).findings.some(({ code }) => code === "salt/foliar-burn"),
            2,
            6,
          ),
      ],
    ],
  ),
  ...cells(
    {
      ...remembered,
      source: "Nutrient Management Standards and Criteria, Virginia 2005, pages 92 and 94: within 30 days",
    },
    [["thirty days", 30, () => intervalPractices["thirty days"].days]],
  ),
];

/** Classes and limits of nutrients. */
export const nutrientClassConstants: readonly ConstantCheck[] = classes;
