import {
  analysis,
  areaCovered,
  elementOf,
  fertilizer,
  formFactor,
  inForm,
  nutrientsSupplied,
  packageContents,
  packageCoverage,
  packagesFor,
  percentOf,
  productMass,
  productRate,
  quantity,
} from "../../src/index.js";
import type { LeftOut, PublishedCheck, Source } from "./check.js";

const lecture: Source = {
  title: "Four steps in fertilizer calculations (turf management lecture)",
  publisher: "university lecture in a document archive",
};
const worksheet: Source = {
  title: "Turfgrass mathematics review: practice worksheet",
  publisher: "Virginia certified turfgrass professional programme",
};
const umass: Source = {
  title: "Rotary Spreader Calibration Procedures",
  publisher: "University of Massachusetts Extension",
  where: "introduction",
  url: "https://ag.umass.edu/turf/fact-sheets/rotary-spreader-calibration-procedures",
};
const suffolk: Source = {
  title: "Another set of calculations for fertilizer applications",
  publisher: "Cornell Cooperative Extension, Suffolk County",
};

const olderWeights = "older or rounded atomic weights; the right figure follows from the weights of 2021";

/** Short for the tables below: a dry product with a grade and a bag. */
const bagged = (grade: string, pounds: number) =>
  fertilizer({ id: "p", analysis: grade, package: quantity(pounds, "lb") });
const rateOf = (pounds: number, grade: string): number =>
  productRate(quantity(pounds, "lb/1000 ft2", "N"), fertilizer({ id: "p", analysis: grade })).in(
    "lb/1000 ft2",
  );
const inBag = (pounds: number, grade: string) =>
  nutrientsSupplied(quantity(pounds, "lb", "product:p"), bagged(grade, pounds));

/** Published examples of product rates, nutrients, packages and oxide factors. */
export const nutrientChecks: readonly PublishedCheck[] = [
  {
    entry: "fert-001",
    formulas: ["productRate"],
    source: { title: "Lawn fertilizer calculations", publisher: "University of Nebraska-Lincoln Extension" },
    reached: "read",
    kind: "worked example",
    given: "1 lb N/1000 ft2 from 28-3-6; 6000 ft2, from the printed rate",
    answers: [
      { of: "lb product/1000 ft2", printed: 3.57, to: 0.01 },
      { of: "lb product", printed: 21.42, to: 0.01 },
    ],
    compute: () => [
      rateOf(1, "28-3-6"),
      quantity(3.57, "lb/1000 ft2", "product:p").times(quantity(6000, "ft2")).in("lb"),
    ],
  },
  {
    entry: "fert-003",
    formulas: ["productRate"],
    source: {
      title: "Fertilizing your home lawn",
      publisher: "University of Florida IFAS Extension (county blog)",
      url: "https://blogs.ifas.ufl.edu/okaloosaco/fertilizing-your-home-lawn/",
    },
    reached: "read",
    kind: "worked example",
    given: "1 lb N/1000 ft2 from 16-4-8 and from 12-4-8, rounded down to whole pounds in print",
    answers: [
      { of: "lb/1000 ft2 of 16-4-8", printed: 6.25, to: 0.01 },
      { of: "lb/1000 ft2 of 12-4-8", printed: 8, to: 1, printing: "cut" },
    ],
    compute: () => [rateOf(1, "16-4-8"), rateOf(1, "12-4-8")],
  },
  {
    entry: "fert-004",
    formulas: ["nutrientsSupplied", "productRate", "productMass", "packageContents"],
    source: { ...lecture, where: "converting slides" },
    reached: "read",
    kind: "worked example",
    given: "50 lb bag of 35 % N; product for 5 lb of N",
    answers: [
      { of: "lb N in the bag", printed: 17.5, to: 0.1 },
      { of: "lb product for 5 lb N", printed: 14.3, to: 0.1 },
      { of: "lb N in the bag, from its package", printed: 17.5, to: 0.1 },
      { of: "lb product for 5 lb N, as an amount", printed: 14.3, to: 0.1 },
    ],
    compute: () => {
      const product = fertilizer({ id: "p", analysis: "35-0-0", package: quantity(50, "lb") });
      return [
        inBag(50, "35-0-0").N?.in("lb") ?? Number.NaN,
        rateOf(5, "35-0-0"),
        nutrientsSupplied(packageContents<"mass", "p">(product), product).N?.in("lb") ?? Number.NaN,
        productMass(quantity(5, "lb", "N"), product).in("lb"),
      ];
    },
  },
  {
    entry: "fert-006",
    formulas: ["productRate"],
    source: { ...lecture, where: "example 1, harder version" },
    reached: "read",
    kind: "worked example",
    given: "15 000 ft2, 1 lb N/1000 ft2, 75 % of it from 31-0-0 and 25 % from 46-0-0",
    answers: [
      { of: "lb N from the slow source", printed: 11.25, to: 0.01 },
      { of: "lb of 31-0-0", printed: 36.3, to: 0.1 },
      { of: "lb N from urea", printed: 3.75, to: 0.01 },
      { of: "lb of 46-0-0", printed: 8.2, to: 0.1 },
    ],
    compute: () => {
      const lawn = quantity(15_000, "ft2");
      const slow = quantity(1, "lb/1000 ft2", "N").times(0.75);
      const quick = quantity(1, "lb/1000 ft2", "N").times(0.25);
      return [
        slow.times(lawn).in("lb"),
        productRate(slow, fertilizer({ id: "ibdu", analysis: "31-0-0" }))
          .times(lawn)
          .in("lb"),
        quick.times(lawn).in("lb"),
        productRate(quick, fertilizer({ id: "urea", analysis: "46-0-0" }))
          .times(lawn)
          .in("lb"),
      ];
    },
  },
  {
    entry: "fert-007",
    formulas: ["quantity"],
    source: { ...lecture, where: "example 2, acres" },
    reached: "read",
    kind: "worked example",
    given: "4 lb N/1000 ft2 a year, with the rounded acre of 43 000 ft2",
    answers: [{ of: "lb N per 43 000 ft2", printed: 172, to: 1 }],
    compute: () => [quantity(4, "lb/1000 ft2", "N").times(quantity(43_000, "ft2")).in("lb")],
  },
  {
    entry: "fert-007",
    formulas: ["packagesFor"],
    source: { ...lecture, where: "example 2, acres" },
    reached: "derived",
    kind: "worked example",
    given: "75 acres of 43 560 ft2 at 4 lb N/1000 ft2 from 33-0-0 in 50 lb bags: exactly 792 bags",
    answers: [{ of: "bags", printed: 792, to: 1 }],
    compute: () => {
      const product = bagged("33-0-0", 50);
      const need = productRate(quantity(4, "lb/1000 ft2", "N"), product).times(quantity(75, "acre"));
      return [packagesFor(need, product).count];
    },
  },
  {
    entry: "fert-008",
    formulas: ["productRate", "packagesFor"],
    source: { ...worksheet, where: "standard fertilizer calculations, first problem" },
    reached: "read",
    kind: "worked example",
    given: "0.9 lb N/1000 ft2 from 25 % N over 45 acres, 50 lb bags",
    answers: [
      { of: "lb/1000 ft2", printed: 3.6, to: 0.1 },
      { of: "lb in all", printed: 7057, to: 1 },
      { of: "bags", printed: 142, to: 1 },
    ],
    compute: () => {
      const product = bagged("25-0-0", 50);
      const rate = productRate(quantity(0.9, "lb/1000 ft2", "N"), product);
      const need = rate.times(quantity(45, "acre"));
      return [rate.in("lb/1000 ft2"), need.in("lb"), packagesFor(need, product).count];
    },
  },
  {
    entry: "soil-078",
    formulas: ["packagesFor"],
    source: { ...worksheet, where: "standard fertilizer calculations" },
    reached: "read",
    kind: "worked example",
    given: "3.6 lb/1000 ft2 over 45 acres in 50 lb bags",
    answers: [{ of: "bags", printed: 142, to: 1 }],
    compute: () => {
      const product = bagged("25-0-0", 50);
      return [
        packagesFor(quantity(3.6, "lb/1000 ft2", "product:p").times(quantity(45, "acre")), product).count,
      ];
    },
  },
  ...(["fert-009", "soil-079"] as const).map(
    (entry): PublishedCheck => ({
      entry,
      formulas: ["nutrientsSupplied"],
      source: { ...worksheet, where: "page 2" },
      reached: "read",
      given: "1250 lb of 5-10-20; the source takes 0.44 for P and 0.83 for K",
      answers: [
        { of: "lb N", printed: 62.5, to: 0.1 },
        { of: "lb P2O5", printed: 125, to: 1 },
        { of: "lb K2O", printed: 250, to: 1 },
        { of: "lb P", printed: 55, to: 1 },
        ...(entry === "fert-009" ? [{ of: "lb K", printed: 207.5, to: 0.1 }] : []),
      ],
      compute: () => {
        const s = inBag(1250, "5-10-20");
        const all = [s.N, s.P2O5, s.K2O, s.P, ...(entry === "fert-009" ? [s.K] : [])];
        return all.map((q) => q?.in("lb") ?? Number.NaN);
      },
    }),
  ),
  {
    entry: "fert-010",
    formulas: ["nutrientsSupplied"],
    source: {
      title: "Getting what you paid for (understanding and using lawn fertilizers)",
      publisher: "University of Minnesota Extension",
      where: "tables 7.3 and 7.4",
      url: "http://www.extension.umn.edu/garden/landscaping/maint/selectin_1.html",
    },
    reached: "read",
    kind: "worked example",
    given: "60 lb bag of 30-4-4",
    answers: [
      { of: "lb N", printed: 18, to: 1 },
      { of: "lb P2O5", printed: 2.4, to: 0.1 },
      { of: "lb K2O", printed: 2.4, to: 0.1 },
      {
        of: "lb P",
        printed: 1.1,
        to: 0.1,
        wrong: { right: 1, why: "0.44 in place of 0.4364 tips 1.047 over to 1.1" },
      },
      { of: "lb K", printed: 2, to: 0.1 },
    ],
    compute: () => {
      const s = inBag(60, "30-4-4");
      return [s.N, s.P2O5, s.K2O, s.P, s.K].map((q) => q?.in("lb") ?? Number.NaN);
    },
  },
  {
    entry: "fert-011",
    formulas: ["nutrientsSupplied"],
    source: {
      title: "Making turfgrass fertilizers work - and pay - for you, part 2",
      publisher:
        "University of Tennessee and University of Nebraska, in a state turfgrass association magazine",
      year: 2007,
      where: "label section",
    },
    reached: "read",
    kind: "worked example",
    given: "50 lb bag of 20-5-15",
    answers: [
      { of: "lb N", printed: 10, to: 1 },
      { of: "lb P2O5", printed: 2.5, to: 0.1 },
      { of: "lb K2O", printed: 7.5, to: 0.1 },
      { of: "lb P", printed: 1.1, to: 0.1 },
      { of: "lb K", printed: 6.2, to: 0.1 },
    ],
    compute: () => {
      const s = inBag(50, "20-5-15");
      return [s.N, s.P2O5, s.K2O, s.P, s.K].map((q) => q?.in("lb") ?? Number.NaN);
    },
  },
  ...(["fert-012", "soil-081"] as const).map(
    (entry): PublishedCheck => ({
      entry,
      formulas: ["nutrientsSupplied", "packageCoverage"],
      source: suffolk,
      reached: "read",
      given: "30 lb bag of 24-2-8 at 1 lb N/1000 ft2; the area is printed as 'about' 7000 ft2",
      answers: [
        { of: "lb N", printed: 7.2, to: 0.1 },
        { of: "lb P2O5", printed: 0.6, to: 0.1 },
        { of: "lb K2O", printed: 2.4, to: 0.1 },
        { of: "ft2", printed: 7000, to: 1000 },
      ],
      compute: () => {
        const s = inBag(30, "24-2-8");
        const product = bagged("24-2-8", 30);
        const rate = productRate(quantity(1, "lb/1000 ft2", "N"), product);
        return [
          ...[s.N, s.P2O5, s.K2O].map((q) => q?.in("lb") ?? Number.NaN),
          packageCoverage(product, rate).in("ft2"),
        ];
      },
    }),
  ),
  {
    entry: "fert-013",
    formulas: ["packageCoverage", "areaCovered"],
    source: { title: "Question-and-answer page repeating an extension example", publisher: "web aggregator" },
    reached: "read",
    kind: "worked example",
    given: "50 lb bag of 26-5-10 at 1 lb N/1000 ft2",
    answers: [
      {
        of: "ft2",
        printed: 13_200,
        to: 100,
        wrong: { right: 13_000, why: "the source divides by the rate already rounded to 3.8 lb" },
      },
      { of: "ft2 from the rounded rate of 3.8 lb", printed: 13_200, to: 100 },
    ],
    compute: () => {
      const product = bagged("26-5-10", 50);
      const bag = quantity(50, "lb", "product:p");
      return [
        packageCoverage(product, productRate(quantity(1, "lb/1000 ft2", "N"), product)).in("ft2"),
        areaCovered(bag, quantity(3.8, "lb/1000 ft2", "product:p")).in("ft2"),
      ];
    },
  },
  {
    entry: "fert-015",
    formulas: ["productRate", "packagesFor"],
    source: {
      title: "Fertilizer application rates",
      publisher: "Florida county extension (Marion and Lee County)",
      year: 2013,
      where: "worked example",
    },
    reached: "read",
    kind: "worked example",
    given: "100 lb N per 1000 ft2 as printed (surely per acre) from 28-14-5 in 50 lb bags",
    answers: [
      { of: "lb", printed: 357, to: 1 },
      {
        of: "bags",
        printed: 7,
        to: 1,
        wrong: { right: 8, why: "7 bags hold 98 lb of N; a need is rounded up" },
      },
    ],
    compute: () => {
      const product = bagged("28-14-5", 50);
      const need = productRate(quantity(100, "lb/1000 ft2", "N"), product).times(quantity(1000, "ft2"));
      return [need.in("lb"), packagesFor(need, product).count];
    },
  },
  {
    entry: "fert-016",
    formulas: ["nutrientsSupplied"],
    source: {
      title: "Benefits of using lawn fertilizers containing slow release nitrogen",
      publisher: "Michigan State University Extension",
      where: "first paragraphs",
      url: "http://msue.anr.msu.edu/news/benefits_of_using_lawn_fertilizers_containing_slow_release_nitrogen",
    },
    reached: "read",
    kind: "worked example",
    given: "50 lb bag of 10-10-10; the source calls the oxides 'actual P' and 'actual K'",
    answers: [
      { of: "lb N", printed: 5, to: 1 },
      { of: "lb P2O5", printed: 5, to: 1 },
      { of: "lb K2O", printed: 5, to: 1 },
      { of: "lb carrier", printed: 35, to: 1 },
      {
        of: "lb P",
        printed: 5,
        to: 1,
        wrong: { right: 2, why: "5 lb is phosphate (P2O5); it holds 2.18 lb of P" },
      },
    ],
    compute: () => {
      const s = inBag(50, "10-10-10");
      const [n, p, k] = [s.N, s.P2O5, s.K2O].map((q) => q?.in("lb") ?? Number.NaN) as [
        number,
        number,
        number,
      ];
      return [n, p, k, 50 - n - p - k, s.P?.in("lb") ?? Number.NaN];
    },
  },
  {
    entry: "fert-018",
    formulas: ["quantity"],
    source: {
      title: "Understanding fertilizer",
      publisher: "Louisiana State University AgCenter",
      year: 2011,
      where: "last two paragraphs",
    },
    reached: "read",
    kind: "worked example",
    given: "264 lb/acre as a rate per 1000 ft2; the source divides by 44",
    answers: [{ of: "lb/1000 ft2", printed: 6, to: 1 }],
    compute: () => [quantity(264, "lb/acre").in("lb/1000 ft2")],
  },
  {
    entry: "fert-019",
    formulas: ["quantity"],
    source: {
      title: "Rates given in both unit systems: four turf papers",
      publisher:
        "HortTechnology 31(4):470; Horticulturae 8:207; Soil Science Society of America Journal 44:413; a trade magazine",
    },
    reached: "read",
    kind: "worked example",
    given: "2, 1, 2, 0.9 and 4 lb/1000 ft2 in kg/ha; the papers round to the digits shown",
    answers: [
      { of: "kg/ha for 2 lb", printed: 97.6, to: 0.1 },
      { of: "kg/ha for 1 lb", printed: 49, to: 1 },
      { of: "kg/ha for 2 lb", printed: 98, to: 1 },
      { of: "kg/ha for 0.9 lb", printed: 43.9, to: 0.1 },
      { of: "kg/ha for 4 lb", printed: 195, to: 1 },
    ],
    compute: () => [2, 1, 2, 0.9, 4].map((rate) => quantity(rate, "lb/1000 ft2").in("kg/ha")),
  },
  {
    entry: "fert-021",
    formulas: ["analysis", "nutrientsSupplied"],
    source: { title: "Understanding fertiliser", publisher: "Scotland farm advisory service", year: 2024 },
    reached: "read",
    kind: "worked example",
    given: "21-0-0 with 60 SO3: nitrogen in a tonne; product for 100 kg N/ha by the printed formula",
    answers: [{ of: "kg N/t", printed: 210, to: 1 }],
    compute: () => {
      const product = fertilizer({ id: "p", analysis: "21-0-0-60SO3" });
      return [nutrientsSupplied(quantity(1, "t", "product:p"), product).N?.in("kg") ?? Number.NaN];
    },
  },
  {
    entry: "fert-023",
    formulas: ["formFactor", "quantity"],
    source: {
      title: "Conversion tables (repeating an international fertilizer association table)",
      publisher: "inspection company page",
      where: "weight, area and oxide lines",
    },
    reached: "read",
    kind: "worked example",
    given: "oxide factors; 1 lb/acre in kg/ha and back; an acre in square yards",
    answers: [
      { of: "P in P2O5", printed: 0.4364, to: 0.0001 },
      { of: "P2O5 for P", printed: 2.2914, to: 0.0001, wrong: { right: 2.2913, why: olderWeights } },
      { of: "K in K2O", printed: 0.8302, to: 0.0001 },
      { of: "K2O for K", printed: 1.2046, to: 0.0001 },
      { of: "kg/ha in 1 lb/acre", printed: 1.1208, to: 0.0001, printing: "cut" },
      {
        of: "lb/acre in 1 kg/ha",
        printed: 0.9822,
        to: 0.0001,
        wrong: { right: 0.8922, why: "two digits are swapped in print" },
      },
      {
        of: "yd2 in an acre",
        printed: 4480,
        to: 1,
        wrong: { right: 4840, why: "two digits are swapped in print" },
      },
    ],
    compute: () => [
      formFactor("P2O5", "P") ?? Number.NaN,
      formFactor("P", "P2O5") ?? Number.NaN,
      formFactor("K2O", "K") ?? Number.NaN,
      formFactor("K", "K2O") ?? Number.NaN,
      quantity(1, "lb/acre").in("kg/ha"),
      quantity(1, "kg/ha").in("lb/acre"),
      quantity(1, "acre").in("yd2"),
    ],
  },
  {
    entry: "fert-024",
    formulas: ["formFactor", "quantity"],
    source: {
      title: "Soil organic matter, appendix A: conversion factors",
      publisher: "organic farming association handbook",
    },
    reached: "read",
    kind: "worked example",
    given: "oxide factors and percent as lb per ton",
    answers: [
      { of: "CaO for Ca", printed: 1.4, to: 0.01 },
      { of: "MgO for Mg", printed: 1.66, to: 0.01 },
      { of: "P2O5 for P", printed: 2.23, to: 0.01, wrong: { right: 2.29, why: "misprint" } },
      { of: "K2O for K", printed: 1.2, to: 0.01 },
      { of: "lb/ton in 1 %", printed: 20, to: 1 },
      { of: "lb/ton in 10 ppm", printed: 0.02, to: 0.01 },
    ],
    compute: () => [
      formFactor("Ca", "CaO") ?? Number.NaN,
      formFactor("Mg", "MgO") ?? Number.NaN,
      formFactor("P", "P2O5") ?? Number.NaN,
      formFactor("K", "K2O") ?? Number.NaN,
      quantity(1, "% w/w").in("lb/US ton"),
      quantity(10, "ppm w/w").in("lb/US ton"),
    ],
  },
  {
    entry: "fert-025",
    formulas: ["formFactor"],
    source: {
      title: "Conversion factors needed for common fertilizer calculations",
      publisher: "Virginia Cooperative Extension",
      where: "table 1a, the rows of one nutrient in two forms",
      url: "https://www.pubs.ext.vt.edu/content/pubs_ext_vt_edu/en/SPES/SPES-201/SPES-201.html",
    },
    reached: "read",
    kind: "worked example",
    given: "element and oxide both ways, sulfate and sulfur",
    answers: [
      { of: "P2O5 for P", printed: 2.291, to: 0.001 },
      { of: "P in P2O5", printed: 0.4365, to: 0.0001, wrong: { right: 0.4364, why: olderWeights } },
      {
        of: "K2O for K",
        printed: 1.2051,
        to: 0.0001,
        wrong: { right: 1.2046, why: "not the reciprocal of the 0.8301 beside it" },
      },
      { of: "K in K2O", printed: 0.8301, to: 0.0001, printing: "cut" },
      { of: "MgO for Mg", printed: 1.6578, to: 0.0001, wrong: { right: 1.6583, why: olderWeights } },
      { of: "Mg in MgO", printed: 0.6032, to: 0.0001, wrong: { right: 0.603, why: olderWeights } },
      { of: "Ca in CaO", printed: 0.7147, to: 0.0001 },
    ],
    compute: () =>
      (
        [
          ["P", "P2O5"],
          ["P2O5", "P"],
          ["K", "K2O"],
          ["K2O", "K"],
          ["Mg", "MgO"],
          ["MgO", "Mg"],
          ["CaO", "Ca"],
        ] as const
      ).map(([from, to]) => formFactor(from, to) ?? Number.NaN),
  },
  {
    entry: "fert-039",
    formulas: ["nutrientsSupplied"],
    source: {
      title: "NPK input guidance",
      publisher: "UK turf fertilizer maker's technical page",
      where: "three worked examples",
    },
    reached: "read",
    kind: "worked example",
    given: "5-5-15 at 25 g/m2; 32-5-10 at 10 kg/ha; 18-9-9 % w/v at 40 L/ha",
    answers: [
      { of: "kg N/ha, granular", printed: 12.5, to: 0.1 },
      { of: "kg P2O5/ha, granular", printed: 12.5, to: 0.1 },
      { of: "kg K2O/ha, granular", printed: 37.5, to: 0.1 },
      { of: "kg N/ha, soluble", printed: 3.2, to: 0.1 },
      { of: "kg P2O5/ha, soluble", printed: 0.5, to: 0.1 },
      { of: "kg K2O/ha, soluble", printed: 1, to: 0.1 },
      { of: "kg N/ha, liquid", printed: 7.2, to: 0.1 },
      { of: "kg P2O5/ha, liquid", printed: 3.6, to: 0.1 },
    ],
    compute: () => {
      const granular = nutrientsSupplied(
        quantity(25, "g/m2", "product:p"),
        fertilizer({ id: "p", analysis: "5-5-15" }),
      );
      const soluble = nutrientsSupplied(
        quantity(10, "kg/ha", "product:p"),
        fertilizer({ id: "p", analysis: "32-5-10" }),
      );
      // A label in percent weight per volume needs no density.
      const liquid = (percent: number) => quantity(40, "L/ha").times(quantity(percent, "% w/v")).in("kg/ha");
      return [
        ...[granular.N, granular.P2O5, granular.K2O, soluble.N, soluble.P2O5, soluble.K2O].map(
          (q) => q?.in("kg/ha") ?? Number.NaN,
        ),
        liquid(18),
        liquid(9),
      ];
    },
  },
  {
    entry: "spread-009",
    formulas: ["productRate"],
    source: {
      title: "How to calibrate a fertilizer spreader",
      publisher: "gardening web guide",
      where: "steps 1 and 4",
    },
    reached: "read",
    kind: "worked example",
    given: "1 lb N/1000 ft2 from 10 % N; load for 200 ft2",
    answers: [
      { of: "lb/1000 ft2", printed: 10, to: 1 },
      { of: "lb", printed: 2, to: 1 },
    ],
    compute: () => {
      const rate = productRate(quantity(1, "lb/1000 ft2", "N"), fertilizer({ id: "p", analysis: "10-0-0" }));
      return [rate.in("lb/1000 ft2"), rate.times(quantity(200, "ft2")).in("lb")];
    },
  },
  {
    entry: "spread-010",
    formulas: ["productRate"],
    source: umass,
    reached: "read",
    kind: "worked example",
    given: "1 lb N/1000 ft2 from 20 % N",
    answers: [{ of: "lb/1000 ft2", printed: 5, to: 0.01 }],
    compute: () => [rateOf(1, "20-5-10")],
  },
  {
    entry: "spread-015",
    formulas: ["areaCovered", "quantity"],
    source: {
      title: "Application section: how much to use",
      publisher: "Virginia turfgrass training site",
      where: "dry material example",
    },
    reached: "read",
    kind: "worked example",
    given: "50 lb cover 6000 ft2; how much covers 9000 ft2",
    answers: [{ of: "lb", printed: 75, to: 1 }],
    compute: () => [
      quantity(50, "lb", "product").per(quantity(6000, "ft2")).times(quantity(9000, "ft2")).in("lb"),
    ],
  },
  {
    entry: "spread-018",
    formulas: ["quantity"],
    source: {
      title: "Fundamentals of Tropical Turf Management (extract)",
      publisher: "book extract on a reference site",
      where: "appendix, calculating from a proportion",
    },
    reached: "read",
    kind: "worked example",
    given: "2 kg/100 m2 over 6 m2",
    answers: [{ of: "g", printed: 120, to: 1 }],
    compute: () => [quantity(2, "kg/100 m2", "product").times(quantity(6, "m2")).in("g")],
  },
  {
    entry: "spread-055",
    formulas: ["analysis", "percentOf", "quantity"],
    source: { title: "Application guide", publisher: "turf supply distributor guide", where: "example" },
    reached: "read",
    kind: "worked example",
    given: "232 lb/acre of 20 % N, per 1000 ft2; both figures are cut, not rounded",
    answers: [
      { of: "lb N/1000 ft2", printed: 1.06, to: 0.01, printing: "cut" },
      { of: "lb product/1000 ft2", printed: 5.32, to: 0.01, printing: "cut" },
    ],
    compute: () => {
      const product = quantity(232, "lb/acre", "product");
      return [
        (product.in("lb/1000 ft2") * percentOf(analysis("20-0-0"), "N")) / 100,
        product.in("lb/1000 ft2"),
      ];
    },
  },
  {
    entry: "soil-056",
    formulas: ["inForm"],
    source: {
      title: "Site-specific plans and PA Act 83 compliance (council article)",
      publisher: "Pennsylvania Turfgrass Council",
    },
    reached: "read",
    kind: "worked example",
    given: "0.25 and 0.5 lb P/1000 ft2 as P2O5",
    answers: [
      { of: "lb P2O5/1000 ft2", printed: 0.57, to: 0.01 },
      {
        of: "lb P2O5/1000 ft2",
        printed: 1.14,
        to: 0.01,
        wrong: { right: 1.15, why: "twice the rounded 0.57 instead of 1.1457" },
      },
    ],
    compute: () => [0.25, 0.5].map((p) => inForm(quantity(p, "lb/1000 ft2", "P"), "P2O5").in("lb/1000 ft2")),
  },
  {
    entry: "fert-009",
    formulas: ["elementOf"],
    source: { ...worksheet, where: "page 2" },
    reached: "read",
    kind: "worked example",
    given: "250 lb K2O as K, with 0.83 in print",
    answers: [{ of: "lb K", printed: 207.5, to: 0.1 }],
    compute: () => [elementOf(quantity(250, "lb", "K2O")).in("lb")],
  },
];

/** Published examples of this room that are not checked, and why. */
export const nutrientLeftOut: readonly LeftOut[] = [];
