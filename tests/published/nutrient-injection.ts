import {
  chartAmount,
  chartConductivity,
  concentrationOf,
  fertilizer,
  type InjectorChart,
  injector,
  labelChart20,
  productForConcentration,
  quantity,
  stockTank,
} from "../../src/index.js";
import type { LeftOut, PublishedCheck } from "./check.js";

/** Ounces in 100 gal of final solution. */
const ounces = (ppm: number, percent: number): number =>
  100 *
  productForConcentration(
    quantity(ppm, "mg/L", "N"),
    fertilizer({ id: "salt", analysis: { basis: "oxide", percent: { N: percent } } }),
  ).in("oz/gal");

/** Ounces in a gallon of stock. */
const stock = (ppm: number, percent: number, setting: `1:${number}` | `1+${number}`): number =>
  stockTank({
    targets: [quantity(ppm, "mg/L", "N")],
    salts: [{ product: fertilizer({ id: "salt", analysis: { basis: "oxide", percent: { N: percent } } }) }],
    injector: injector(setting),
    tank: quantity(1, "gal"),
  }).salts[0]?.amount.in("oz") ?? Number.NaN;

/** Parts per million of nitrogen from ounces in 100 gal. */
const ppmOf = (amount: number, percent: number): number =>
  concentrationOf(
    quantity(amount / 100, "oz/gal", "product:salt"),
    fertilizer({ id: "salt", analysis: { basis: "oxide", percent: { N: percent } } }),
    "N",
  ).in("mg/L");

const roundedUp = "a label chart is rounded up";
const texas = {
  title: "Nutrition and fertility: ppm calculations",
  publisher: "Texas A&M horticulture guide",
  where: "formula I and II and practical examples",
} as const;
const slip = "the source takes 0.33 times 75 for 29.75; it is 24.75";

const newsletterChart: InjectorChart = {
  product: "15-5-15",
  nutrient: "N",
  source: { title: "How to mix a concentrate for an injector", publisher: "greenhouse supply newsletter" },
  rows: [
    { ppm: 50, ouncesPerGallon: { "1:100": 4.5 } },
    { ppm: 200, ouncesPerGallon: { "1:100": 18 } },
  ],
};

/** Published examples of concentrations, stock tanks and injectors. */
export const nutrientInjectionChecks: readonly PublishedCheck[] = [
  ...(["fert-072", "spray-063"] as const).map(
    (entry): PublishedCheck => ({
      entry,
      formulas: ["productForConcentration", "stockTank", "concentrationOf"],
      source: texas,
      reached: "read",
      given: "150 ppm N from each of 33 % and 15 % N; 200 ppm from 33 % N by a 1:100 injector",
      answers: [
        { of: "oz/100 gal of 33 % N", printed: 5, to: 1, wrong: { right: 6, why: slip } },
        { of: "oz/100 gal of 15 % N", printed: 13, to: 1 },
        { of: "oz in 100 gal of stock", printed: 700, to: 100, wrong: { right: 800, why: slip } },
        {
          of: "ppm N of 5 and 13 oz/100 gal together",
          printed: 300,
          to: 10,
          wrong: { right: 270, why: "the 5 oz are too few" },
        },
      ],
      compute: () => [
        ounces(150, 33),
        ounces(150, 15),
        100 * stock(200, 33, "1:100"),
        ppmOf(5, 33) + ppmOf(13, 15),
      ],
    }),
  ),
  {
    entry: "fert-073",
    formulas: ["productForConcentration"],
    source: {
      title: "Fertilizer calculations for greenhouse crops",
      publisher: "University of Massachusetts Extension",
      where: "introduction",
    },
    reached: "read",
    kind: "worked example",
    given: "200 ppm N from 20-20-20 and from 15-15-15",
    answers: [
      { of: "oz/100 gal of 20 % N", printed: 13.5, to: 0.1, wrong: { right: 13.4, why: roundedUp } },
      { of: "oz/100 gal of 15 % N", printed: 18, to: 1 },
    ],
    compute: () => [ounces(200, 20), ounces(200, 15)],
  },
  {
    entry: "fert-075",
    formulas: ["stockTank", "injector", "chartConductivity"],
    source: {
      title: "Ensuring proper fertilizer concentration in greenhouse growing",
      publisher: "Michigan State University Extension",
      where: "table 1 (a label chart)",
      url: "https://www.canr.msu.edu/news/ensuring-proper-fertilizer-concentration-in-greenhouse-growing",
    },
    reached: "read",
    kind: "fit",
    given:
      "20 % N (inferred), three concentrations and three injectors; conductivity by its own chart's middle",
    answers: [
      { of: "oz/gal, 50 ppm, 1:15", printed: 0.5, to: 0.1 },
      { of: "oz/gal, 50 ppm, 1:100", printed: 3.38, to: 0.01, wrong: { right: 3.34, why: roundedUp } },
      { of: "oz/gal, 50 ppm, 1:200", printed: 6.75, to: 0.01, wrong: { right: 6.68, why: roundedUp } },
      { of: "oz/gal, 100 ppm, 1:15", printed: 1, to: 0.1 },
      { of: "oz/gal, 100 ppm, 1:100", printed: 6.75, to: 0.01, wrong: { right: 6.68, why: roundedUp } },
      { of: "oz/gal, 100 ppm, 1:200", printed: 13.5, to: 0.1, wrong: { right: 13.4, why: roundedUp } },
      { of: "oz/gal, 200 ppm, 1:15", printed: 2, to: 0.1 },
      { of: "oz/gal, 200 ppm, 1:100", printed: 13.5, to: 0.1, wrong: { right: 13.4, why: roundedUp } },
      { of: "oz/gal, 200 ppm, 1:200", printed: 27, to: 0.1, wrong: { right: 26.7, why: roundedUp } },
      { of: "mS/cm at 100 ppm, half-way between the rows of 50 and 150", printed: 0.64, to: 0.01 },
    ],
    compute: () => [
      ...[50, 100, 200].flatMap((ppm) =>
        (["1:15", "1:100", "1:200"] as const).map((setting) => stock(ppm, 20, setting)),
      ),
      (chartConductivity(labelChart20, quantity(50, "mg/L", "N")).in("mS/cm") +
        chartConductivity(labelChart20, quantity(150, "mg/L", "N")).in("mS/cm")) /
        2,
    ],
  },
  {
    entry: "fert-076",
    formulas: ["chartAmount"],
    source: {
      title: "How to mix a concentrate for an injector",
      publisher: "greenhouse supply newsletter",
      where: "examples 1 and 2",
    },
    reached: "read",
    kind: "worked example",
    given:
      "15-5-15 by a 1:100 injector: chart rows of 200 ppm (18 oz/gal) and 50 ppm (4.5 oz/gal), 5 gal tank",
    answers: [
      { of: "oz for 5 gal at 200 ppm", printed: 90, to: 1 },
      { of: "oz/gal at 225 ppm", printed: 20.25, to: 0.01 },
    ],
    compute: () => {
      const at = (ppm: number) =>
        chartAmount({ chart: newsletterChart, setting: "1:100", concentration: quantity(ppm, "mg/L", "N") });
      return [at(200).times(quantity(5, "gal")).in("oz"), at(225).in("oz/gal")];
    },
  },
  {
    entry: "fert-033",
    formulas: ["stockTank"],
    source: {
      title: "Horticulture science homework 3",
      publisher: "North Dakota State University (PLSC 210)",
      year: 2010,
      where: "problem 2 (no printed key)",
    },
    reached: "derived",
    kind: "worked example",
    given: "200 ppm N, 100 ppm P2O5, 250 ppm K2O from 33.5-0-0, 0-53-34 and 0-0-62; 100 gal, 1:200; by hand",
    answers: [
      { of: "lb of 33.5-0-0", printed: 99.65, to: 0.01 },
      { of: "lb of 0-53-34", printed: 31.49, to: 0.01 },
      { of: "lb of 0-0-62", printed: 50.03, to: 0.01 },
    ],
    compute: () =>
      stockTank({
        targets: [quantity(200, "mg/L", "N"), quantity(100, "mg/L", "P2O5"), quantity(250, "mg/L", "K2O")],
        salts: ["33.5-0-0", "0-53-34", "0-0-62"].map((analysis, i) => ({
          product: fertilizer({ id: `salt-${i}`, analysis }),
        })),
        injector: injector("1:200"),
        tank: quantity(100, "gal"),
      }).salts.map(({ amount }) => amount.in("lb")),
  },
];

/** Published examples of injection that are not checked, and why. */
export const nutrientInjectionLeftOut: readonly LeftOut[] = [];
