import {
  acidityFromBuffer,
  type BaseCation,
  carbonateEquivalent,
  contentInSoil,
  contentOfCharge,
  exchangeCapacity,
  type LimeRequirementInput,
  limeForRating,
  limeProductRate,
  limeQuality,
  limeRequirement,
  quantity,
  residualLimeCredit,
  soilMass,
  splitAmendment,
  surfaceMaxima,
} from "../../src/index.js";
import { iowaTable } from "../../src/soil/lime/iowa-table.js";
import { oregonSikoraTable } from "../../src/soil/lime/oregon-sikora-table.js";
import { pennStateTurfTable } from "../../src/soil/lime/penn-state-turf-table.js";
import type { Answer, PublishedCheck, Source } from "./check.js";

const meq = (value: number) => quantity(value, "meq/100 g");
const assumed = { assumed: "2,000,000 lb/acre" } as const;
const tons = (input: LimeRequirementInput): number => limeRequirement(input).rate.in("US ton/acre");
const carolina: Source = {
  title: "Lime requirement factors table",
  publisher: "North Carolina Department of Agriculture and Consumer Services, Agronomic Division",
  where: "footnote",
  url: "http://www.ncagr.gov/agronomi/bufftab1.htm",
};
const wisconsin: Source = {
  title: "Liming terminology and analysis (Iowa method)",
  publisher: "University of Wisconsin-Madison Soil Science",
};
const courseNotes: Source = {
  title: "Soil unit conversions",
  publisher: "university course notes",
  where: "worked examples",
};
const factsheet: Source = {
  title: "Evaluation of Agricultural Limestone, factsheet 637.200-2",
  publisher: "provincial agriculture ministry, apparently British Columbia",
  year: 2015,
  where: "degree of fineness example",
};
const turfLab: Source = {
  title: "Commercial Turf - Maintain",
  publisher: "Pennsylvania State University Agricultural Analytical Services Laboratory",
  url: "https://agsci.psu.edu/aasl/online-report/commercial-turf-maintain",
};

/** A second transcription of the columns, row by row: a slip in the first does not stand in this one. */
const pennState = {
  7: "50 70 70 90 110 110 140 160 160 180 180 210 230 230 250 280 280 300 320 320 340 370 370 390 390 410 440 440 460 480 480 510 530 530 550 570 570 600",
  6.5: "50 50 50 70 70 90 90 110 110 140 140 160 180 180 210 210 230 250 250 280 280 300 320 320 340 340 370 390 390 410 410 460 460 460 480 480 510 530",
  6: "50 50 50 50 50 50 50 70 90 90 110 110 140 140 160 160 180 180 210 210 230 230 250 250 280 280 300 300 320 320 340 340 370 370 390 390 410 410",
} as const;
const numbers = (text: string): readonly number[] => text.split(" ").map(Number);
const acidities = numbers(
  "2.0 2.6 3.3 3.9 4.6 5.2 5.8 6.5 7.1 7.8 8.4 9.0 9.7 10.3 11.0 11.6 12.3 12.9 13.5 14.2 14.8 15.5 16.1 16.8 17.4 18.0 18.7 19.3 20.0 20.6 21.2 21.9 22.5 23.2 23.8 24.5 25.1 25.7",
);
const turfColumn = (goal: 6 | 6.5 | 7): PublishedCheck => ({
  entry: "soil-001",
  formulas: ["limeRequirement"],
  source: pennStateTurfTable.source,
  reached: "read",
  kind: "transcription",
  given: `38 acidities from 2.0 to 25.7 meq/100 g, pH goal ${goal}`,
  answers: numbers(pennState[goal]).map((printed) => ({ of: "lb CCE/1000 ft2", printed, to: 1 })),
  compute: () =>
    acidities.map((acidity) =>
      limeRequirement({
        method: "Mehlich buffer, Pennsylvania turf",
        pH: 5,
        targetPH: goal,
        acidity: meq(acidity),
      }).rate.in("lb/1000 ft2"),
    ),
});

const oregonColumns = {
  5.6: "0 0 0.2 0.4 0.7 0.9 1.1 1.3 1.5 1.7 1.9 2.2 2.7 3.1 3.5 3.8 4.2 4.6 5.0 5.3 5.7 6.1",
  6.4: "0.5 0.8 1.1 1.5 1.8 2.1 2.5 2.8 3.1 3.5 3.8 4.1 5.5 6.2 7.0 7.7 8.5 9.2 10.0 10.7 11.5 12.2",
} as const;
const oregon = (bufferPH: number, targetPH: number) =>
  tons({ method: "Sikora buffer, Oregon", pH: 4.5, targetPH, bufferPH });

/** Published figures of lime and of the units of a report. */
export const soilLimeChecks: readonly PublishedCheck[] = [
  turfColumn(7),
  turfColumn(6.5),
  turfColumn(6),
  {
    entry: "soil-001",
    formulas: ["limeRequirement"],
    source: pennStateTurfTable.source,
    reached: "read",
    kind: "fit",
    given:
      "pH goal 7.0 against 1,000 lb of CaCO3 an acre for each whole meq of the row, by the guide for field crops",
    answers: numbers(pennState[7]).map((printed): Answer => ({ of: "lb CCE/1000 ft2", printed, to: 10 })),
    compute: () =>
      acidities.map((acidity) =>
        limeRequirement({
          method: "Mehlich buffer, Pennsylvania fields",
          pH: 5,
          targetPH: 7,
          acidity: meq(Math.round(acidity)),
        }).rate.in("lb/1000 ft2"),
      ),
    note: "The turf table follows the guide of the same university for field crops, rounded to 10 lb; that it rounds the acidity to whole meq is read off the table.",
  },
  {
    entry: "soil-003",
    formulas: ["splitAmendment"],
    source: { ...turfLab, where: "lime note" },
    reached: "read",
    kind: "transcription",
    given: "largest application on turf and on greens and tees; 180 lb on turf",
    answers: [
      { of: "lb/1000 ft2, turf", printed: 100, to: 1 },
      { of: "lb/1000 ft2, greens and tees", printed: 25, to: 1 },
      { of: "applications of 180 lb", printed: 2, to: 1 },
    ],
    compute: () => {
      const [turf, greens] = surfaceMaxima.filter(({ source }) => source.publisher === turfLab.publisher);
      const lime = (value: number) => quantity(value, "lb/1000 ft2", "product");
      const split = splitAmendment({
        total: lime(180),
        most: lime(turf?.amount ?? 0),
        source: "the laboratory",
        first: "2026-10-01",
        monthsApart: 6,
      });
      return [turf?.amount ?? 0, greens?.amount ?? 0, split.applications.length];
    },
  },
  {
    entry: "soil-004",
    formulas: ["limeRequirement"],
    source: carolina,
    reached: "read",
    kind: "worked example",
    given: "soil pH 5.0, target 6.0, acidity 1.2, no residual credit",
    answers: [
      {
        of: "ton/acre",
        printed: 0.76,
        to: 0.01,
        wrong: { right: 0.75, why: "1.2 x 0.625 is 0.75" },
      },
    ],
    compute: () => [
      tons({ method: "Mehlich buffer, North Carolina", pH: 5, targetPH: 6, acidityPerVolume: 1.2 }),
    ],
  },
  {
    entry: "soil-005",
    formulas: ["residualLimeCredit"],
    source: carolina,
    reached: "read",
    kind: "transcription",
    given: "8 % a month on mineral soil, 16 % on mineral-organic and organic: a ton, a month after",
    answers: [
      { of: "percent used up, mineral", printed: 8, to: 1 },
      { of: "percent used up, mineral-organic", printed: 16, to: 1 },
      { of: "percent used up, organic", printed: 16, to: 1 },
    ],
    compute: () => {
      const applied = quantity(1, "US ton/acre", "product:standard-lime");
      return (["mineral", "mineral-organic", "organic"] as const).map(
        (soil) => 100 - 100 * residualLimeCredit({ applied, months: 1, soil }).in("US ton/acre"),
      );
    },
  },
  {
    entry: "soil-006",
    formulas: ["limeRequirement"],
    source: { ...oregonSikoraTable.source, where: "table 1 and the example under it" },
    reached: "read",
    kind: "transcription",
    given: "Sikora buffer pH 6.0, target pH 5.6, score 100, 6 in",
    answers: [{ of: "ton/acre", printed: 1.7, to: 0.1 }],
    compute: () => [oregon(6, 5.6)],
  },
  ...([5.6, 6.4] as const).map(
    (target): PublishedCheck => ({
      entry: "soil-006",
      formulas: ["limeRequirement"],
      source: oregonSikoraTable.source,
      reached: "read",
      kind: "transcription",
      given: `Sikora buffer pH 6.9 down to 4.8, target pH ${target}`,
      answers: numbers(oregonColumns[target]).map((printed) => ({ of: "ton/acre", printed, to: 0.1 })),
      compute: () => Array.from({ length: 22 }, (_, i) => oregon((69 - i) / 10, target)),
    }),
  ),
  ...([6.5, 6.9] as const).map(
    (target): PublishedCheck => ({
      entry: "soil-007",
      formulas: ["limeRequirement"],
      source: iowaTable.source,
      reached: "read",
      kind: "transcription",
      given: `buffer pH 7.0 down to 5.8, target pH ${target}, 6 in`,
      answers: (target === 6.5
        ? [0, 600, 2100, 3500, 5000, 6400, 7900]
        : [1100, 2700, 4400, 6000, 7700, 9300, 10_600]
      ).map((printed) => ({ of: "lb CaCO3/acre", printed, to: 100 })),
      compute: () =>
        [7, 6.8, 6.6, 6.4, 6.2, 6, 5.8].map((bufferPH) =>
          limeRequirement({ method: "buffer pH, Iowa", pH: 5, targetPH: target, bufferPH }).rate.in(
            "lb/acre",
          ),
        ),
      note: "10,600 breaks the steps of its column and may be a misprint; the result says so.",
    }),
  ),
  {
    entry: "soil-009",
    formulas: ["limeRequirement"],
    source: {
      title: "Lime requirement, quoting Brady and Weil 2008: 50 mg of CaCO3 a meq, 2,240,000 kg/ha to 15 cm",
      publisher: "journal text, the chain worked by hand",
    },
    reached: "derived",
    kind: "worked example",
    given: "1 meq/100 g of acidity, 15 cm",
    answers: [
      { of: "kg/ha", printed: 1120, to: 10 },
      { of: "lb/acre", printed: 1000, to: 10 },
    ],
    compute: () => {
      const { rate } = limeRequirement({
        method: "exchangeable acidity",
        acidity: meq(1),
        layer: { assumed: "2,240,000 kg/ha to 15 cm" },
      });
      return [rate.in("kg/ha"), rate.in("lb/acre")];
    },
  },
  {
    entry: "soil-010",
    formulas: ["acidityFromBuffer", "exchangeCapacity"],
    source: {
      title: "CEC calculations",
      publisher: "Clemson University Agricultural Service Laboratory",
      where: "example",
    },
    reached: "read",
    kind: "worked example",
    given: "buffer pH 7.7; K 221, Mg 28, Ca 400, Na 12 lb/acre",
    answers: [
      { of: "meq/100 g of H", printed: 2.4, to: 0.1 },
      { of: "meq/100 g of K", printed: 0.28, to: 0.01 },
      { of: "meq/100 g of Mg", printed: 0.12, to: 0.01 },
      { of: "meq/100 g of Ca", printed: 1, to: 0.1 },
      { of: "meq/100 g of Na", printed: 0.03, to: 0.01 },
      { of: "meq/100 g in all", printed: 3.83, to: 0.01 },
    ],
    compute: () => {
      const acidity = acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: 7.7 });
      const found = exchangeCapacity({
        cations: {
          K: quantity(221, "lb/acre", "K"),
          Mg: quantity(28, "lb/acre", "Mg"),
          Ca: quantity(400, "lb/acre", "Ca"),
          Na: quantity(12, "lb/acre", "Na"),
        },
        acidity,
        layer: assumed,
        weights: "whole numbers",
      });
      const charge = (ion: BaseCation): number => found.cations[ion]?.charge.in("meq/100 g") ?? 0;
      const parts = (["K", "Mg", "Ca", "Na"] as const).map(charge);
      return [acidity.in("meq/100 g"), ...parts, found.capacity.in("meq/100 g")];
    },
  },
  {
    entry: "soil-012",
    formulas: ["contentOfCharge"],
    source: courseNotes,
    reached: "read",
    kind: "worked example",
    given: "4 meq of Ca/100 g, atomic weight 40",
    answers: [{ of: "ppm Ca", printed: 800, to: 1 }],
    compute: () => [contentOfCharge(quantity(4, "meq/100 g", "Ca/soil"), "whole numbers").in("mg/kg")],
  },
  {
    entry: "soil-013",
    formulas: ["contentOfCharge"],
    source: courseNotes,
    reached: "read",
    kind: "worked example",
    given: "2 cmolc of Al/kg",
    answers: [{ of: "ppm Al", printed: 180, to: 1 }],
    compute: () => [contentOfCharge(quantity(2, "cmolc/kg", "Al/soil")).in("mg/kg")],
  },
  {
    entry: "soil-015",
    formulas: ["limeQuality"],
    source: factsheet,
    reached: "read",
    kind: "worked example",
    given: "78.8 % through 60 mesh, 10.0 % from 20 to 60, 2.4 % from 8 to 20, 7.8 % over 8",
    answers: [{ of: "percent", printed: 85.28, to: 0.01 }],
    compute: () => {
      const sieves = { fractions: [7.8, 2.4, 10, 78.8] };
      return [limeQuality({ CCE: 100, scheme: "British Columbia", sieves }).fineness ?? 0];
    },
    note: "The four fractions add up to 99.0; the result says so.",
  },
  {
    entry: "soil-016",
    formulas: ["limeQuality"],
    source: factsheet,
    reached: "read",
    kind: "worked example",
    given: "90 % through 60 mesh, 6 % from 20 to 60, 4 % from 8 to 20",
    answers: [
      {
        of: "percent",
        printed: 94.46,
        to: 0.01,
        wrong: { right: 94.4, why: "90 + 3.6 + 0.8 is 94.40" },
      },
    ],
    compute: () => {
      const sieves = { fractions: [0, 4, 6, 90] };
      return [limeQuality({ CCE: 100, scheme: "British Columbia", sieves }).fineness ?? 0];
    },
  },
  {
    entry: "soil-017",
    formulas: ["limeQuality"],
    source: { ...wisconsin, where: "total fineness efficiency" },
    reached: "read",
    kind: "worked example",
    given: "100, 90 and 55 % passing 4, 8 and 60 mesh",
    answers: [{ of: "percent", printed: 70, to: 1 }],
    compute: () => [
      limeQuality({ CCE: 92, scheme: "Iowa ECCE", sieves: { passing: { 4: 100, 8: 90, 60: 55 } } })
        .fineness ?? 0,
    ],
  },
  {
    entry: "soil-018",
    formulas: ["limeQuality"],
    source: { ...wisconsin, where: "ECCE in Iowa" },
    reached: "read",
    kind: "worked example",
    given: "fineness 70 %, CCE 92 %, moisture 2 %",
    answers: [
      { of: "lb ECCE/ton", printed: 1260, to: 10 },
      { of: "percent", printed: 63, to: 1 },
    ],
    compute: () => {
      const sieves = { passing: { 4: 100, 8: 90, 60: 55 } };
      const lime = limeQuality({ CCE: 92, moisture: 2, scheme: "Iowa ECCE", sieves });
      return [lime.perTon?.in("lb/US ton") ?? 0, lime.effective ?? 0];
    },
  },
  {
    entry: "soil-019",
    formulas: ["carbonateEquivalent"],
    source: wisconsin,
    reached: "read",
    kind: "worked example",
    given: "Ca(OH)2, 74 g/mol against 100",
    answers: [{ of: "percent CCE", printed: 135, to: 1 }],
    compute: () => [carbonateEquivalent("Ca(OH)2")],
  },
  {
    entry: "soil-037",
    formulas: ["contentInSoil"],
    source: {
      title: "Have you seen turf that ran out of K?",
      publisher: "Asian Turfgrass Center (turfgrass research blog)",
      year: 2017,
      url: "https://micahwoods.github.io/2017-08-06-have-you-seen-turf-that-ran-out-of-k",
    },
    reached: "read",
    kind: "worked example",
    given: "pounds an acre are divided by 2: 175 lb K/acre",
    answers: [{ of: "ppm a pound an acre", printed: 0.5, to: 0.1 }],
    compute: () => [contentInSoil(quantity(175, "lb/acre", "K"), assumed).in("mg/kg") / 175],
  },
  {
    entry: "soil-104",
    formulas: ["limeProductRate", "limeQuality"],
    source: { ...turfLab, where: "note 1" },
    reached: "read",
    kind: "worked example",
    given: "75 lb of lime recommended, CCE 80",
    answers: [{ of: "lb/1000 ft2", printed: 94, to: 1 }],
    compute: () => [
      limeProductRate({
        rate: quantity(75, "lb/1000 ft2", "CaCO3 equivalent"),
        measure: "CCE",
        quality: limeQuality({ CCE: 80 }),
        id: "lime",
      }).rate.in("lb/1000 ft2"),
    ],
  },
  {
    entry: "soil-105",
    formulas: ["limeProductRate", "limeQuality"],
    source: {
      ...turfLab,
      title: "Home Garden",
      where: "note 1",
      url: "http://agsci.psu.edu/aasl/online-report/home-garden",
    },
    reached: "read",
    kind: "worked example",
    given: "5 lb of lime per 100 ft2 recommended, CCE 70",
    answers: [{ of: "lb/100 ft2", printed: 7, to: 1 }],
    compute: () => [
      limeProductRate({
        rate: quantity(50, "lb/1000 ft2", "CaCO3 equivalent"),
        measure: "CCE",
        quality: limeQuality({ CCE: 70 }),
        id: "lime",
      }).rate.in("lb/1000 ft2") / 10,
    ],
  },
  ...(
    [
      ["soil-106", 1200, 3, "How much lime to apply?", "University of Missouri Extension, agronomy column"],
      ["soil-107", 1600, 4, "Grassland evaluation contest study guide", "University of Missouri"],
    ] as const
  ).map(
    ([entry, recommended, printed, title, publisher]): PublishedCheck => ({
      entry,
      formulas: ["limeForRating"],
      source: { title, publisher },
      reached: "read",
      given: `${recommended} lb ENM/acre recommended, lime of 400 lb ENM/ton`,
      answers: [{ of: "ton/acre", printed, to: 1 }],
      compute: () => [
        limeForRating({
          recommended: quantity(recommended, "lb/acre", "other:ENM"),
          rating: quantity(400, "lb/US ton", "other:ENM/product"),
        }).in("US ton/acre"),
      ],
    }),
  ),
  {
    entry: "soil-108",
    formulas: ["soilMass"],
    source: {
      title: "Lime Requirement, SMP, 450",
      publisher: "University of California, Davis, Analytical Laboratory",
      url: "http://anlab.ucdavis.edu/using-the-lab/analysis/soils/450",
    },
    reached: "read",
    kind: "worked example",
    given: "an acre of soil to 8 in",
    answers: [{ of: "million lb", printed: 2.4, to: 0.1 }],
    compute: () => [soilMass({ ...assumed, depth: quantity(8, "in") }).in("lb/acre") / 1e6],
  },
  {
    entry: "soil-109",
    formulas: ["quantity"],
    source: {
      title: "Tall Fescue Monograph, turf: liming, citing Savoy and Samples 1999",
      publisher: "Oregon State University",
      url: "https://forages.oregonstate.edu/tallfescuemonograph/turf/cultural_practices/liming",
    },
    reached: "read",
    kind: "worked example",
    given: "50 lb of limestone per 1000 ft2",
    answers: [
      {
        of: "g/m2",
        printed: 2.44,
        to: 0.01,
        wrong: { right: 244.12, why: "the point slipped: 50 lb/1000 ft2 is 244 g/m2" },
      },
    ],
    compute: () => [quantity(50, "lb/1000 ft2", "product").in("g/m2")],
  },
];
