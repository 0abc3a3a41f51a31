import {
  amountInSoil,
  availableNitrogen,
  contentInSoil,
  exchangeableCharge,
  foliarMicronutrient,
  irrigationLoad,
  nutrientNeed,
  nutrientUse,
  onWetBasis,
  quantity,
  soilGuidelines,
  soilTestReading,
  type TissueNutrient,
  tissueRanges,
  tissueReading,
} from "../../src/index.js";
import type { PublishedCheck, Source } from "./check.js";

/** 10 cm at 1.5 g/cm3: 150 kg/m2. */
const layer = { depth: quantity(10, "cm"), bulkDensity: quantity(1.5, "g/mL", "soil") };
const turfSheet: Source = {
  title: "Soil test interpretation sheet, turf resource guide, table 3",
  publisher: "turf resource guide 2021-2022",
  year: 2021,
  where: "table 3, citing Carrow et al. 2003 and Woods et al. 2016",
};
const slides: Source = {
  title: "Slides on turfgrass nutrition and soil nutrient analyses",
  publisher: "turfgrass science presentation",
  year: 2015,
  where: "K example",
};
const blog = "Asian Turfgrass Center (turfgrass research blog)";

const potassiumNeed = () =>
  nutrientNeed({
    nutrient: "K",
    test: quantity(50, "mg/kg", "K/soil"),
    extractant: "Mehlich 3",
    guideline: "minimum levels, Mehlich 3",
    use: nutrientUse({ nitrogen: quantity(16, "g/m2", "N"), nutrient: "K", grass: "cool-season grass" }),
    layer,
  });

/** The level of a content just below, at and just above both ends of a published range. */
const sides = (nutrient: TissueNutrient): readonly number[] => {
  const { from, to } = tissueRanges.ranges[nutrient];
  return [from, to];
};

/** Published figures of needs from a soil test, tissue and organic amendments. */
export const soilTestChecks: readonly PublishedCheck[] = [
  {
    entry: "soil-034",
    formulas: ["nutrientUse", "nutrientNeed"],
    source: slides,
    reached: "read",
    kind: "worked example",
    given: "K 50 ppm by Mehlich 3, guideline 37, 16 g N/m2 with half as much K, 10 cm at 1.5 g/cm3",
    answers: [
      { of: "g/m2 of use", printed: 8, to: 1 },
      { of: "g/m2 of guideline", printed: 5.5, to: 0.1, printing: "cut" },
      { of: "g/m2 of test", printed: 7.5, to: 0.1 },
      { of: "g/m2 of need", printed: 6.1, to: 0.1 },
    ],
    compute: () => {
      const { use, guideline, test, need } = potassiumNeed();
      return [use, guideline, test, need].map((q) => q.in("g/m2"));
    },
  },
  {
    entry: "soil-034",
    formulas: ["contentInSoil", "nutrientNeed"],
    source: slides,
    reached: "read",
    kind: "worked example",
    given: "the same, as ppm",
    answers: [
      {
        of: "ppm of use",
        printed: 54,
        to: 1,
        wrong: { right: 53, why: "8 g/m2 are 53.3 ppm; the source takes 6.7 ppm for a g/m2 and rounds up" },
      },
      {
        of: "ppm of need",
        printed: 41,
        to: 1,
        wrong: { right: 40, why: "53.3 + 37 - 50 is 40.3" },
      },
    ],
    compute: () => {
      const { use, need } = potassiumNeed();
      return [use, need].map((q) => contentInSoil(q, layer).in("mg/kg"));
    },
  },
  {
    entry: "soil-036",
    formulas: ["soilTestReading"],
    source: turfSheet,
    reached: "read",
    kind: "transcription",
    given:
      "sufficiency and minimum, ppm: P, K (sand, other), Ca, Mg (sand, other), S by Mehlich 3; P by Bray P1, Olsen",
    answers: [
      27, 54, 50, 116, 75, 176, 500, 750, 60, 120, 70, 140, 15, 40, 21, 37, 331, 47, 7, 15, 30, 12, 28,
    ].map((printed) => ({ of: "ppm", printed, to: 1 })),
    compute: () => {
      const ends = (name: keyof typeof soilGuidelines): readonly number[] =>
        soilGuidelines[name].rows.flatMap(({ from, to }) => (to === null ? [from] : [from, to]));
      const minimum = (["P", "K", "Ca", "Mg", "S"] as const).map((nutrient) =>
        soilTestReading({
          nutrient,
          content: quantity(1, "mg/kg", `${nutrient}/soil` as "P/soil"),
          extractant: "Mehlich 3",
          guideline: "minimum levels, Mehlich 3",
        } as Parameters<typeof soilTestReading<"P">>[0]).from.in("ppm w/w"),
      );
      return [
        ...ends("sufficiency, Mehlich 3"),
        ...minimum,
        ...ends("sufficiency, Bray P1"),
        ...ends("sufficiency, Olsen"),
      ];
    },
  },
  {
    entry: "soil-038",
    formulas: ["soilTestReading"],
    source: {
      title: "Soil test phosphorus in turf soils: 2 datasets",
      publisher: blog,
      year: 2015,
      url: "http://www.blog.asianturfgrass.com/2015/04/soil-test-phosphorus-in-turf-soils-2-datasets.html",
    },
    reached: "read",
    kind: "transcription",
    given: "phosphorus below which Pennsylvania recommends some: home lawns, putting greens",
    answers: [45, 90].map((printed) => ({ of: "ppm", printed, to: 1 })),
    compute: () =>
      ["home lawns", "putting greens"].map((soil) =>
        soilTestReading({
          nutrient: "P",
          content: quantity(10, "mg/kg", "P/soil"),
          extractant: "Mehlich 3",
          guideline: "Pennsylvania, Mehlich 3",
          soil,
        }).from.in("ppm w/w"),
      ),
  },
  {
    entry: "soil-039",
    formulas: ["tissueReading"],
    source: {
      title: "Plant analysis handbook - turfgrass",
      publisher: "University of Georgia Agricultural and Environmental Services Laboratories",
      where: "sufficiency ranges",
      url: "http://aesl.ces.uga.edu/publications/plant/Turfgrass.html",
    },
    reached: "read",
    kind: "transcription",
    given: "sufficiency ranges of N, P, K; symptoms of K below 1.00 %",
    answers: [
      ...[2.2, 4, 0.3, 0.7, 1.5, 3].map((printed) => ({ of: "percent", printed, to: 0.01 })),
      { of: "1 where K of 0.99 % is deficient and 1.00 % is not", printed: 1, to: 1 },
    ],
    compute: () => {
      const at = (percent: number) =>
        tissueReading({ nutrient: "K", content: quantity(percent, "% w/w") }).level === "deficient";
      return [...sides("N"), ...sides("P"), ...sides("K"), at(0.99) && !at(1) ? 1 : 0];
    },
  },
  {
    entry: "soil-040",
    formulas: ["foliarMicronutrient"],
    source: {
      title: "Turf tips, March 1998: correcting iron chlorosis",
      publisher: "University of Arizona Cooperative Extension",
      year: 1998,
      url: "https://turf.arizona.edu/tips398.html",
    },
    reached: "read",
    kind: "transcription",
    given: "ounces of iron product per 1000 ft2",
    answers: [2, 4].map((printed) => ({ of: "oz/1000 ft2", printed, to: 1 })),
    compute: () => {
      const product = quantity(5, "oz/1000 ft2", "product");
      const [finding] = foliarMicronutrient({ product, element: "Fe", percent: 20 }).findings;
      return [Number(finding?.params.from), Number(finding?.params.to)];
    },
  },
  {
    entry: "soil-042",
    formulas: ["availableNitrogen"],
    source: { title: "Compost calculations (handout)", publisher: "unattributed handout", where: "summary" },
    reached: "read",
    kind: "transcription",
    given: "10 and 15 % of total nitrogen in the first year, half of it in the second",
    answers: [10, 5, 15, 7.5].map((printed) => ({ of: "percent", printed, to: 0.1 })),
    compute: () =>
      [10, 15].flatMap((firstYear) =>
        availableNitrogen({
          organic: quantity(100, "kg/ha", "N"),
          firstYear,
          years: 2,
          later: "half of the year before",
        }).years.map((year) => year.in("kg/ha")),
      ),
  },
  {
    entry: "soil-043",
    formulas: ["onWetBasis"],
    source: {
      title: "Understand your compost report",
      publisher: "North Carolina Department of Agriculture & Consumer Services",
      where: "What is the fertilizer grade?",
    },
    reached: "read",
    kind: "worked example",
    given: "10,000 mg/kg: move the decimal point four places",
    answers: [{ of: "percent", printed: 1, to: 1 }],
    compute: () => [onWetBasis({ content: quantity(10_000, "mg/kg", "N/product"), moisture: 0 }).in("% w/w")],
  },
  {
    entry: "soil-117",
    formulas: ["nutrientUse", "nutrientNeed"],
    source: {
      title: "Working out the fertilizer recommendation from a soil test",
      publisher: blog,
      year: 2014,
      where: "question and answer",
      url: "https://www.blog.asianturfgrass.com/2014/09/working-out-the-fertilizer-recommendation-from-a-soil-test.html",
    },
    reached: "read",
    kind: "worked example",
    given: "25 g N/m2, half as much K, the printed guideline of 5.2 g/m2, a soil with 11 g/m2",
    answers: [
      { of: "g K/m2 of use", printed: 12.5, to: 0.1 },
      { of: "g K/m2 of need", printed: 6.7, to: 0.1 },
    ],
    compute: () => {
      const use = nutrientUse({
        nitrogen: quantity(25, "g/m2", "N"),
        nutrient: "K",
        grass: "cool-season grass",
      });
      const need = nutrientNeed({
        nutrient: "K",
        test: contentInSoil(quantity(11, "g/m2", "K"), layer),
        extractant: "Mehlich 3",
        guideline: {
          extractant: "Mehlich 3",
          meaning: "the guideline as printed",
          rows: [{ nutrient: "K", soil: "any", from: 5.2 / 0.15, to: null }],
          source: { title: "the same", publisher: blog },
        },
        use,
        layer,
      });
      return [use.in("g/m2"), need.need.in("g/m2")];
    },
  },
  {
    entry: "soil-118",
    formulas: ["nutrientUse", "contentInSoil"],
    source: {
      title: "Do you have enough?",
      publisher: "greenkeeper's blog",
      year: 2023,
      where: "cheat sheet and example",
    },
    reached: "read",
    kind: "worked example",
    given: "10 g N/m2 a year, half as much K",
    answers: [
      {
        of: "ppm K used",
        printed: 34,
        to: 1,
        wrong: { right: 33, why: "5 g/m2 are 33.3 ppm in 10 cm at 1.5 g/cm3; the sheet rounds up" },
      },
    ],
    compute: () => {
      const use = nutrientUse({
        nitrogen: quantity(10, "g/m2", "N"),
        nutrient: "K",
        grass: "cool-season grass",
      });
      return [contentInSoil(use, layer).in("mg/kg")];
    },
  },
  {
    entry: "soil-119",
    formulas: ["amountInSoil"],
    source: {
      title: "Turfgrass fertilization, soil tests",
      publisher: "Texas Agricultural Extension Service",
      url: "https://www.plantanswers.com/turf/publications/fertil.html",
    },
    reached: "read",
    kind: "worked example",
    given: "10 ppm of phosphorus, 120 ppm of potassium",
    answers: [
      { of: "lb P/1000 ft2", printed: 0.5, to: 0.1 },
      { of: "lb K/1000 ft2", printed: 5.5, to: 0.1 },
    ],
    compute: () => {
      const assumed = { assumed: "2,000,000 lb/acre" } as const;
      return [
        amountInSoil(quantity(10, "mg/kg", "P/soil"), assumed).in("lb/1000 ft2"),
        amountInSoil(quantity(120, "mg/kg", "K/soil"), assumed).in("lb/1000 ft2"),
      ];
    },
  },
  {
    entry: "soil-120",
    formulas: ["exchangeableCharge"],
    source: {
      title: "What is base saturation, Crop File 1.04.132",
      publisher: "Crop File, agronomy reference pages",
      where: "the two soils of the example; divisors 200, 120, 390, 230",
    },
    reached: "read",
    kind: "worked example",
    given: "1471 and 4639 ppm of calcium, in soils of 20.4 and 29.0 meq/100 g",
    answers: [
      { of: "meq/100 g", printed: 7.4, to: 0.1 },
      { of: "%", printed: 36, to: 1 },
      { of: "meq/100 g", printed: 23.2, to: 0.1 },
      { of: "%", printed: 80, to: 1 },
    ],
    compute: () =>
      (
        [
          [1471, 20.4],
          [4639, 29],
        ] as const
      ).flatMap(([ppm, capacity]) => {
        const charge = exchangeableCharge(quantity(ppm, "mg/kg", "Ca/soil"), "whole numbers").in("meq/100 g");
        return [charge, (100 * charge) / capacity];
      }),
  },
  {
    entry: "soil-121",
    formulas: ["irrigationLoad"],
    source: {
      title: "Accounting for nitrate in irrigation water",
      publisher: "University of California Agriculture and Natural Resources, Ventura County",
      where: "example",
      url: "https://ucanr.edu/sites/INM/NM/N_in_water",
    },
    reached: "read",
    kind: "worked example",
    given: "24 in of water with 20 ppm of NO3-N",
    answers: [{ of: "lb N/acre", printed: 109, to: 1 }],
    compute: () => [
      irrigationLoad({
        water: { "NO3-N": quantity(20, "mg/L", "NO3-N") },
        depth: quantity(24, "in"),
      }).nitrogen?.in("lb/acre") ?? Number.NaN,
    ],
  },
];
