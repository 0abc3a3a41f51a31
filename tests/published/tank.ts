import { quantity } from "../../src/quantity/index.js";
import {
  amountFor,
  impliedAreaRate,
  loadAmounts,
  perVolume,
  strengthForAreaRate,
  tankLoads,
} from "../../src/tank/index.js";
import type { LeftOut, PublishedCheck, Source } from "./check.js";
import { tankFieldChecks } from "./tank-field.js";

const handbook: Source = {
  title: "Agrochemical and Pesticide Safety (handbook extract)",
  publisher: "handbook",
  where: "p. 128, example 4",
};
const missouri: Source = {
  title: "Get the recipe right (University of Missouri engineer's steps; method of MU G1272)",
  publisher: "Corn and Soybean Digest",
  where: "2,4-D example",
};
const module17: Source = {
  title: "Calculations for Mixing Pesticides",
  publisher: "Pesticide safety education module (PMEP)",
  where: "module 17, wettable powder and liquid mixing",
};
const kentucky: Source = {
  title: "Pesticide calculations for homeowners",
  publisher: "University of Kentucky",
  where: "slides 7-8",
};
const newEngland: Source = {
  title: "New England Vegetable Management Guide, dilution tables",
  publisher: "New England Extension",
};
const missouriDot: Source = {
  title: "Engineering Policy Guide 821.15, Forms and Conversions",
  publisher: "Missouri Department of Transportation",
  where: "Table 821.15.1",
};

const spray = (value: number) => quantity(value, "gal", "spray");
const liquid = (amount: Parameters<typeof perVolume<"product", "volume">>[0], gallons: number) =>
  amountFor({ rate: perVolume(amount, spray(100)), form: "liquid", sprayVolume: spray(gallons) });
const dry = (amount: Parameters<typeof perVolume<"product", "mass">>[0], gallons: number) =>
  amountFor({ rate: perVolume(amount, spray(100)), form: "dry", sprayVolume: spray(gallons) });

const partTank = (entry: string): PublishedCheck => ({
  entry,
  formulas: ["tankLoads", "loadAmounts"],
  source: handbook,
  reached: "read",
  given: "3.5 acres left, 15 gal/acre, 3 lb/acre",
  answers: [
    { of: "gal spray", printed: 52.5, to: 0.1 },
    { of: "lb product", printed: 10.5, to: 0.1 },
  ],
  compute: () => {
    const loads = tankLoads({
      area: quantity(3.5, "acre"),
      applicationVolume: quantity(15, "gal/acre", "spray"),
      capacity: spray(200),
    });
    const rate = quantity(3, "lb/acre", "product:a");
    const amounts = loadAmounts({ loads, products: [{ id: "a", rate, form: "dry" }] });
    const [share] = amounts.products[0]?.loads ?? [];
    return [loads.volume.in("gal"), share?.amount.value as number];
  },
});

const missouriTank = (entry: string): PublishedCheck => ({
  entry,
  formulas: ["tankLoads", "loadAmounts", "amountFor"],
  source: missouri,
  reached: "read",
  given: "500 gal tank, 20 gal/acre, 3 pt/acre",
  answers: [
    { of: "acres per tank", printed: 25, to: 1 },
    { of: "pt product per tank", printed: 75, to: 1 },
    { of: "gal product per tank", printed: 9.37, to: 0.01, printing: "cut" },
  ],
  compute: () => {
    const loads = tankLoads({
      area: quantity(100, "acre"),
      applicationVolume: quantity(20, "gal/acre", "spray"),
      capacity: spray(500),
    });
    const rate = quantity(3, "pt/acre", "product:a");
    const perTank = amountFor({ rate, form: "liquid", area: loads.areaPerTank });
    const amounts = loadAmounts({ loads, products: [{ id: "a", rate, form: "liquid" }] });
    const [share] = amounts.products[0]?.loads ?? [];
    return [loads.areaPerTank.in("acre"), share?.amount.value as number, perTank.in("gal")];
  },
});

/** Table 821.15.1 of the Missouri guide, in pints of concentrate: share, pints of solution, printed pints, place. */
const solutionRows: readonly (readonly [number, number, number, number])[] = [
  [10, 1, 1.6 / 16, 0.1 / 16],
  [10, 1.5, 2.4 / 16, 0.1 / 16],
  [10, 2, 3.2 / 16, 0.1 / 16],
  [10, 4, 6.4 / 16, 0.1 / 16],
  [10, 8, 12.8 / 16, 0.1 / 16],
  [10, 16, 1.6, 0.01],
  [25, 1, 4 / 16, 0.1 / 16],
  [25, 2, 8 / 16, 0.1 / 16],
  [25, 4, 1, 0.01],
  [25, 8, 2, 0.02],
  [25, 16, 4, 0.02],
  [50, 1, 8 / 16, 0.1 / 16],
  [50, 1.5, 12 / 16, 0.1 / 16],
  [50, 2, 1, 0.01],
  [50, 4, 2, 0.02],
  [50, 8, 4, 0.02],
  [50, 16, 8, 0.02],
  [80, 1, 12.8 / 16, 0.1 / 16],
  [80, 2, 1.6, 0.1],
  [80, 4, 3.2, 0.02],
  [80, 8, 6.4, 0.02],
  [80, 16, 12.8, 0.02],
];
/** Cells that are printed wrong: share, pints of solution, printed pints, right pints, place. */
const wrongSolutionRows: readonly (readonly [number, number, number, number, number])[] = [
  [25, 1.5, 6.1 / 16, 6 / 16, 0.1 / 16],
  [80, 1.5, 1.28, 1.2, 0.01],
  [8, 1.5, 1.6 / 16, 1.92 / 16, 0.01 / 16],
];
const ofSolution = (percent: number, pints: number): number =>
  amountFor({
    rate: quantity(percent, "% v/v", "product/spray"),
    form: "liquid",
    sprayVolume: quantity(pints, "pt", "spray"),
  }).in("pt");

/** Published examples that the tank formulas recompute. */
export const tankChecks: readonly PublishedCheck[] = [
  partTank("mix-070"),
  partTank("spray-045"),
  partTank("soil-090"),
  missouriTank("mix-069"),
  missouriTank("spray-048"),
  {
    entry: "mix-025",
    formulas: ["impliedAreaRate"],
    source: {
      title: "Spray application: water volumes (quoting the UK regulator CRD)",
      publisher: "manufacturer page",
      where: "example",
    },
    reached: "read",
    given: "0.5 % of product in 200 L/ha and in 100 L/ha of spray",
    answers: [
      { of: "L product/ha at 200 L/ha", printed: 1, to: 0.1 },
      { of: "L product/ha at 100 L/ha", printed: 0.5, to: 0.1 },
    ],
    compute: () =>
      [200, 100].map((volume) =>
        impliedAreaRate({
          rate: quantity(0.5, "% v/v", "product/spray"),
          applicationVolume: quantity(volume, "L/ha", "spray"),
        }).in("L/ha"),
      ),
  },
  {
    entry: "mix-044",
    formulas: ["perVolume"],
    source: {
      title: "Don't let hard water make weeds hard to control",
      publisher: "USGA Central Region",
      year: 2018,
    },
    reached: "read",
    given: "51 lb of ammonium sulfate in 300 gal",
    answers: [{ of: "lb/100 gal", printed: 17, to: 1 }],
    compute: () => [perVolume(quantity(51, "lb", "product"), spray(300)).in("lb/gal") * 100],
    note: "17 lb/100 gal is the upper label rate that other sources print (8.5 to 17).",
  },
  {
    entry: "mix-063",
    formulas: ["impliedAreaRate", "strengthForAreaRate"],
    source: {
      title: "Using Crop Oil Adjuvants (University of Florida and University of Georgia)",
      publisher: "The Peanut Grower",
    },
    reached: "read",
    given: "2.5 gal of oil per 100 gal of spray at 10 gal/acre",
    answers: [
      { of: "qt/acre", printed: 1, to: 1 },
      { of: "gal/100 gal for 1 qt/acre", printed: 2.5, to: 0.1 },
    ],
    compute: () => [
      impliedAreaRate({
        rate: perVolume(quantity(2.5, "gal", "product"), spray(100)),
        applicationVolume: quantity(10, "gal/acre", "spray"),
      }).in("qt/acre"),
      strengthForAreaRate({
        rate: quantity(1, "qt/acre", "product"),
        applicationVolume: quantity(10, "gal/acre", "spray"),
      }).in("% v/v"),
    ],
    note: "The source prints it the other way: 1 qt/acre in 10 gal/acre is 2.5 gal/100 gal.",
  },
  {
    entry: "mix-066",
    formulas: ["tankLoads", "amountFor"],
    source: {
      title: "Tank mix math for spring applications",
      publisher: "farm-input retailer article",
      year: 2018,
      where: "Example 1",
    },
    reached: "read",
    given: "625 acres, 10 gal/acre, 17 lb of ammonium sulfate per 100 gal",
    answers: [{ of: "lb", printed: 1062.5, to: 0.1 }],
    compute: () => {
      const { volume } = tankLoads({
        area: quantity(625, "acre"),
        applicationVolume: quantity(10, "gal/acre", "spray"),
        capacity: spray(1000),
      });
      return [dry(quantity(17, "lb", "product"), volume.in("gal")).in("lb")];
    },
  },
  {
    entry: "mix-072",
    formulas: ["perVolume", "amountFor"],
    source: module17,
    reached: "read",
    given: "2 lb per 100 gal, tanks of 300 and 20 gal",
    answers: [
      { of: "lb in 300 gal", printed: 6, to: 1 },
      { of: "oz in 20 gal", printed: 6.4, to: 0.1 },
    ],
    compute: () => [
      dry(quantity(2, "lb", "product"), 300).in("lb"),
      dry(quantity(2, "lb", "product"), 20).in("oz"),
    ],
  },
  {
    entry: "mix-073",
    formulas: ["perVolume", "amountFor"],
    source: module17,
    reached: "read",
    given: "2 pt per 100 gal, tanks of 300 and 20 gal",
    answers: [
      { of: "pt in 300 gal", printed: 6, to: 1 },
      { of: "fl oz in 20 gal", printed: 6.4, to: 0.1 },
    ],
    compute: () => [
      liquid(quantity(2, "pt", "product"), 300).in("pt"),
      liquid(quantity(2, "pt", "product"), 20).in("fl oz"),
    ],
  },
  {
    entry: "spray-051",
    formulas: ["amountFor"],
    source: {
      title: "Calculations for mixing pesticides",
      publisher: "Pesticide safety education module (PMEP)",
      where: "wettable powder and liquid examples",
    },
    reached: "read",
    given: "2 lb and 2 pt per 100 gal, as recipes; 20 gal and 300 gal",
    answers: [
      { of: "oz dry in 20 gal", printed: 6.4, to: 0.1 },
      { of: "fl oz liquid in 20 gal", printed: 6.4, to: 0.1 },
      { of: "lb dry in 300 gal", printed: 6, to: 1 },
    ],
    compute: () => {
      const per = { value: 100, unit: "gal" };
      const powder = { value: 2, unit: "lb", of: "product:a", per } as const;
      const fluid = { value: 2, unit: "pt", of: "product:b", per } as const;
      return [
        amountFor({ rate: powder, form: "dry", sprayVolume: spray(20) }).in("oz"),
        amountFor({ rate: fluid, form: "liquid", sprayVolume: spray(20) }).in("fl oz"),
        amountFor({ rate: powder, form: "dry", sprayVolume: spray(300) }).in("lb"),
      ];
    },
  },
  {
    entry: "mix-076",
    formulas: ["perVolume", "amountFor"],
    source: kentucky,
    reached: "read",
    given: "1 lb per 100 gal, scaled to 10 gal and 1 gal",
    answers: [
      { of: "oz in 10 gal", printed: 1.6, to: 0.1 },
      { of: "oz in 1 gal", printed: 0.16, to: 0.01 },
      { of: "g in 1 gal", printed: 4.5, to: 0.1 },
    ],
    compute: () => [
      dry(quantity(1, "lb", "product"), 10).in("oz"),
      dry(quantity(1, "lb", "product"), 1).in("oz"),
      dry(quantity(1, "lb", "product"), 1).in("g"),
    ],
  },
  {
    entry: "mix-077",
    formulas: ["perVolume", "amountFor"],
    source: kentucky,
    reached: "read",
    given: "1 pt of concentrate per 100 gal, scaled to 5, 3 and 1 gal",
    answers: [
      { of: "tsp in 5 gal", printed: 5, to: 1 },
      {
        of: "tsp in 3 gal",
        printed: 1,
        to: 1,
        wrong: {
          right: 3,
          why: "1 pt/100 gal x 3 gal is 2.88 tsp, about 1 tbsp; probably tbsp printed as tsp",
        },
      },
      { of: "tsp in 1 gal", printed: 1, to: 1 },
    ],
    compute: () => [5, 3, 1].map((gallons) => liquid(quantity(1, "pt", "product"), gallons).in("tsp")),
  },
  {
    entry: "mix-079",
    formulas: ["perVolume", "amountFor"],
    source: newEngland,
    reached: "read",
    given: "liquid per 100 gal, scaled to 25 gal and 1 gal; pints per 100 gal = fl oz per 6 1/4 gal",
    answers: [
      { of: "fl oz in 25 gal at 1/2 pt", printed: 2, to: 1 },
      { of: "fl oz in 25 gal at 1 pt", printed: 4, to: 1 },
      { of: "pt in 25 gal at 1 qt", printed: 0.5, to: 0.5 },
      { of: "qt in 25 gal at 1 gal", printed: 1, to: 1 },
      { of: "tsp in 1 gal at 1/2 pt", printed: 0.5, to: 0.5 },
      { of: "tsp in 1 gal at 1 pt", printed: 1, to: 1 },
      { of: "tsp in 1 gal at 1 qt", printed: 2, to: 1 },
      { of: "tbsp in 1 gal at 1 gal", printed: 2.5, to: 0.5 },
      { of: "fl oz in 6.25 gal at 1 pt", printed: 1, to: 1 },
    ],
    compute: () => [
      liquid(quantity(0.5, "pt", "product"), 25).in("fl oz"),
      liquid(quantity(1, "pt", "product"), 25).in("fl oz"),
      liquid(quantity(1, "qt", "product"), 25).in("pt"),
      liquid(quantity(1, "gal", "product"), 25).in("qt"),
      liquid(quantity(0.5, "pt", "product"), 1).in("tsp"),
      liquid(quantity(1, "pt", "product"), 1).in("tsp"),
      liquid(quantity(1, "qt", "product"), 1).in("tsp"),
      liquid(quantity(1, "gal", "product"), 1).in("tbsp"),
      liquid(quantity(1, "pt", "product"), 6.25).in("fl oz"),
    ],
  },
  {
    entry: "mix-079",
    formulas: ["perVolume", "amountFor"],
    source: newEngland,
    reached: "read",
    given: "2 lb and 4 lb of dry product per 100 gal, scaled to 1 gal",
    answers: [
      {
        of: "g in 1 gal at 2 lb",
        printed: 10,
        to: 1,
        wrong: { right: 9, why: "2 lb/100 gal is 9.1 g per gallon" },
      },
      {
        of: "g in 1 gal at 4 lb",
        printed: 20,
        to: 1,
        wrong: { right: 18, why: "4 lb/100 gal is 18.1 g per gallon" },
      },
    ],
    compute: () => [2, 4].map((pounds) => dry(quantity(pounds, "lb", "product"), 1).in("g")),
  },
  {
    entry: "mix-081",
    formulas: ["amountFor"],
    source: missouriDot,
    reached: "read",
    given: "concentrate in a percent solution by volume, rows 10, 25, 50 and 80 %",
    answers: solutionRows.map(([percent, pints, printed, to]) => ({
      of: `pt concentrate in ${pints} pt at ${percent} %`,
      printed,
      to,
    })),
    compute: () => solutionRows.map(([percent, pints]) => ofSolution(percent, pints)),
    note: "Printed in ounces, pints and quarts; here in pints, with the place of the printed unit.",
  },
  {
    entry: "mix-081",
    formulas: ["amountFor"],
    source: missouriDot,
    reached: "read",
    given: "concentrate in a percent solution by volume, cells that are printed wrong",
    answers: wrongSolutionRows.map(([percent, pints, printed, right, to]) => ({
      of: `pt concentrate in ${pints} pt at ${percent} %`,
      printed,
      to,
      wrong: { right, why: `${percent} % of ${pints} pt` },
    })),
    compute: () => wrongSolutionRows.map(([percent, pints]) => ofSolution(percent, pints)),
  },
  {
    entry: "mix-064",
    formulas: ["perVolume"],
    source: {
      title: "Mixing Instructions for Liquid Herbicides, L-1839",
      publisher: "Texas A&M AgriLife",
      where: "surfactant note; percentages by hand",
    },
    reached: "derived",
    given: "1 and 3 pt of surfactant per 100 gal",
    answers: [
      { of: "% v/v at 1 pt", printed: 0.125, to: 0.001 },
      { of: "% v/v at 3 pt", printed: 0.375, to: 0.001 },
    ],
    compute: () => [1, 3].map((pints) => perVolume(quantity(pints, "pt", "product"), spray(100)).in("% v/v")),
  },
  {
    entry: "mix-067",
    formulas: ["amountFor"],
    source: { title: "definition of percent by volume", publisher: "derived by hand" },
    reached: "derived",
    given: "0.25 % v/v of 300 gal",
    answers: [
      { of: "qt", printed: 3, to: 1 },
      { of: "fl oz", printed: 96, to: 1 },
    ],
    compute: () => {
      const rate = quantity(0.25, "% v/v", "product/spray");
      const amount = amountFor({ rate, form: "liquid", sprayVolume: spray(300) });
      return [amount.in("qt"), amount.in("fl oz")];
    },
  },
  {
    entry: "spray-042",
    formulas: ["amountFor"],
    source: {
      title: "Calibrating application equipment (turf course slides)",
      publisher: "Oklahoma State University - Oklahoma City",
      year: 2013,
      where: "slides 4-5",
    },
    reached: "read",
    given: "3.6 pt/acre on 1000 ft2 and on 25 acres",
    answers: [
      { of: "fl oz on 1000 ft2", printed: 1.3, to: 0.1 },
      { of: "gal on 25 acres", printed: 11.25, to: 0.01 },
    ],
    compute: () => {
      const rate = quantity(3.6, "pt/acre", "product");
      return [
        amountFor({ rate, form: "liquid", area: quantity(1000, "ft2") }).in("fl oz"),
        amountFor({ rate, form: "liquid", area: quantity(25, "acre") }).in("gal"),
      ];
    },
  },
  {
    entry: "spray-049",
    formulas: ["amountFor"],
    source: {
      title: "Pesticide Calibration Made Easy, P2939",
      publisher: "Mississippi State University Extension",
      where: "Example 1",
    },
    reached: "read",
    given: "one gallon of product to 32 acres",
    answers: [{ of: "fl oz on 1 acre", printed: 4, to: 1 }],
    compute: () => [
      amountFor({
        rate: quantity(1 / 32, "gal/acre", "product"),
        form: "liquid",
        area: quantity(1, "acre"),
      }).in("fl oz"),
    ],
  },
  ...tankFieldChecks,
];

const list = (entries: string, reason: string): readonly LeftOut[] =>
  entries.split(" ").map((entry) => ({ entry, reason }));

/** Published examples that these checks leave out, and why. */
export const tankLeftOut: readonly LeftOut[] = [
  {
    entry: "mix-064",
    reason: "pints are printed, the percentages were derived by hand: a check stands here, marked as derived",
  },
  ...list("soil-091 spray-046 spray-052", "product from active ingredient: with the dilutions"),
  ...list("spray-043", "a conversion of spray volumes: checked with the units"),
];
