import {
  acidityPerNitrogen,
  blendSaltIndex,
  burnRisk,
  compareSaltIndexes,
  fertilizer,
  formFactor,
  gardenSaltIndexes,
  growerAcidity,
  limeForNitrogen,
  oregonAcidity,
  partialSaltIndex,
  potentialAcidity,
  potentialAcidityOfSource,
  productRate,
  quantity,
  rememberedSaltIndexes,
  scaledSaltIndex,
  tabulatedAcidity,
  tabulatedSaltIndex,
  turfListSaltIndexes,
  weightSaltIndexes,
} from "../../src/index.js";
import type { LeftOut, PublishedCheck } from "./check.js";

const remembered = (material: string) => tabulatedSaltIndex(rememberedSaltIndexes, material);

/** By weight, from the remembered index per unit and the percent of the grade. */
const byWeight = (material: string, units: number): number =>
  blendSaltIndex([{ units, partial: remembered(material) }]).value;

const ofGarden = (material: string, percent: number) =>
  partialSaltIndex(tabulatedSaltIndex(gardenSaltIndexes, material), { percent, basis: "N" });
const perUnitOfGarden = (material: string, percent: number): number => ofGarden(material, percent).value;

/** A fluid blend: phosphate from 10-34-0, the rest of the nitrogen from UAN 28, potash from potassium chloride. */
const fluid = (n: number, p: number, k: number): number => {
  const withPhosphate = (p * 10) / 34;
  return blendSaltIndex([
    { units: p + withPhosphate, partial: remembered("10-34-0") },
    { units: Math.max(0, n - withPhosphate), partial: remembered("UAN 28") },
    { units: k, partial: remembered("potassium chloride") },
  ]).value;
};

const productPerPound = (percent: number): number =>
  productRate(
    quantity(1, "lb/1000 ft2", "N"),
    fertilizer({ id: "p", analysis: { basis: "oxide", percent: { N: percent } } }),
  ).in("lb/1000 ft2");

const inTurfList = (material: string): number =>
  burnRisk(tabulatedSaltIndex(turfListSaltIndexes, material)).findings.length;

/** Published examples of salt index and potential acidity. */
export const nutrientSaltChecks: readonly PublishedCheck[] = [
  {
    entry: "fert-057",
    formulas: ["blendSaltIndex", "tabulatedSaltIndex"],
    source: {
      title: "Salinity index of common fertilizers (citing Mortvedt 2001)",
      publisher: "agronomy company article",
      where: "table",
    },
    reached: "read",
    kind: "worked example",
    given: "by weight, from the index per unit (from memory) and the units of the grade",
    answers: [
      { of: "urea", printed: 74.4, to: 0.1 },
      { of: "ammonium nitrate", printed: 104, to: 1 },
      {
        of: "ammonium sulfate",
        printed: 88.3,
        to: 0.1,
        wrong: { right: 68.3, why: "4.2 per unit, where every other table has 3.25; a copied misprint" },
      },
      { of: "diammonium phosphate", printed: 29.2, to: 0.1 },
      { of: "monoammonium phosphate", printed: 26.7, to: 0.1 },
      { of: "potassium nitrate", printed: 69.5, to: 0.1 },
      { of: "potassium chloride", printed: 116.2, to: 0.1 },
      { of: "potassium sulfate", printed: 42.6, to: 0.1 },
      { of: "single superphosphate", printed: 7.8, to: 0.1 },
    ],
    compute: () => [
      byWeight("urea", 46),
      byWeight("ammonium nitrate", 34),
      byWeight("ammonium sulfate", 21),
      byWeight("diammonium phosphate", 64),
      byWeight("monoammonium phosphate", 66),
      byWeight("potassium nitrate", 57),
      byWeight("potassium chloride", 60),
      byWeight("potassium sulfate", 50),
      byWeight("single superphosphate", 20),
    ],
  },
  {
    entry: "fert-058",
    formulas: ["blendSaltIndex"],
    source: {
      title: "Salt index of common starter fertilizers",
      publisher: "fluid fertilizer dealer article",
      year: 2012,
      where: "table 1",
    },
    reached: "read",
    kind: "worked example",
    given: "10-34-0, 7-21-7 and 4-10-10 from 10-34-0, UAN 28 and potassium chloride; factors from memory",
    answers: [
      { of: "10-34-0", printed: 20, to: 0.1 },
      { of: "7-21-7", printed: 27.8, to: 0.1 },
      {
        of: "4-10-10",
        printed: 27.5,
        to: 0.1,
        wrong: { right: 27.6, why: "the factors that give the other two exactly give 27.63" },
      },
    ],
    compute: () => [fluid(10, 34, 0), fluid(7, 21, 7), fluid(4, 10, 10)],
  },
  {
    entry: "fert-060",
    formulas: ["partialSaltIndex", "tabulatedSaltIndex", "compareSaltIndexes"],
    source: {
      title: "Table 26-2 Common sources of N in turfgrass fertilizers",
      publisher: "Oregon State University forage and grass site",
      where: "table 26-2",
      url: "https://forages.prod.acquia.cws.oregonstate.edu/Tables/26-2",
    },
    reached: "read",
    kind: "worked example",
    given: "per unit of N, from the by-weight figures and percentages of another table",
    answers: [
      { of: "ammonium nitrate", printed: 3.2, to: 0.1 },
      { of: "ammonium sulfate", printed: 3.3, to: 0.1 },
      { of: "isobutylidene diurea", printed: 0.2, to: 0.1 },
      { of: "urea", printed: 1.7, to: 0.1 },
      { of: "ureaform", printed: 0.3, to: 0.1 },
      { of: "potassium nitrate, N only", printed: 5.3, to: 0.1 },
      { of: "ammonium sulfate above (1) ammonium nitrate", printed: 1, to: 1 },
      { of: "urea below (-1) ammonium nitrate", printed: -1, to: 1 },
    ],
    compute: () => [
      perUnitOfGarden("ammonium nitrate", 33),
      perUnitOfGarden("ammonium sulfate", 21),
      perUnitOfGarden("isobutylidene diurea", 30),
      perUnitOfGarden("urea", 45),
      perUnitOfGarden("ureaform", 38),
      partialSaltIndex(tabulatedSaltIndex(weightSaltIndexes, "potassium nitrate"), {
        percent: 13,
        basis: "N",
      }).value,
      compareSaltIndexes(ofGarden("ammonium sulfate", 21), ofGarden("ammonium nitrate", 33)),
      compareSaltIndexes(ofGarden("urea", 45), ofGarden("ammonium nitrate", 33)),
    ],
  },
  {
    entry: "fert-061",
    formulas: ["burnRisk", "tabulatedSaltIndex"],
    source: {
      title: "Saline fertiliser index (after McCarty 2001, golf course management text)",
      publisher: "turf agronomy company article",
      where: "list",
    },
    reached: "read",
    kind: "transcription",
    given: "nine materials; above 1.5 per unit is high: 1 is a finding",
    answers: (
      [
        ["ammonium nitrate", 1],
        ["ammonium sulfate", 1],
        ["potassium nitrate", 1],
        ["calcium nitrate", 1],
        ["urea", 1],
        ["monoammonium phosphate", 0],
        ["diammonium phosphate", 0],
        ["potassium chloride", 1],
        ["potassium sulfate", 0],
      ] as const
    ).map(([of, printed]) => ({ of, printed, to: 1 })),
    compute: () => turfListSaltIndexes.rows.map(({ material }) => inTurfList(material)),
  },
  {
    entry: "fert-063",
    formulas: ["scaledSaltIndex"],
    source: {
      title: "Fertilizer part 2 (salt index)",
      publisher: "New Mexico State University, Eddy County Extension",
      year: 2017,
      where: "table",
    },
    reached: "read",
    kind: "worked example",
    given: "per unit, sodium nitrate = 100, from the index per unit (from memory)",
    answers: [
      { of: "ammonium sulfate", printed: 53.7, to: 0.1 },
      { of: "potassium sulfate", printed: 14.1, to: 0.1 },
      { of: "ammonia", printed: 9.4, to: 0.1 },
      { of: "diammonium phosphate", printed: 7.5, to: 0.1 },
      { of: "monoammonium phosphate", printed: 6.7, to: 0.1 },
      { of: "single superphosphate", printed: 6.4, to: 0.1 },
      {
        of: "potassium chloride",
        printed: 26.7,
        to: 0.1,
        wrong: { right: 31.9, why: "26.7 is the figure of urea on this scale; a line is likely lost" },
      },
    ],
    compute: () =>
      [
        "ammonium sulfate",
        "potassium sulfate",
        "ammonia",
        "diammonium phosphate",
        "monoammonium phosphate",
        "single superphosphate",
        "potassium chloride",
      ].map((material) => scaledSaltIndex(remembered(material)).value),
  },
  {
    entry: "fert-064",
    formulas: ["tabulatedSaltIndex", "blendSaltIndex"],
    source: {
      title: "Salt index values for some garden materials",
      publisher: "horticulture company article",
      where: "table",
    },
    reached: "read",
    kind: "transcription",
    given: "by weight, beside another table and the index per unit",
    answers: [
      { of: "gypsum", printed: 8, to: 1 },
      { of: "superphosphate, 20 % P2O5", printed: 8, to: 1 },
    ],
    compute: () => [
      tabulatedSaltIndex(weightSaltIndexes, "calcium sulfate").value,
      byWeight("single superphosphate", 20),
    ],
  },
  {
    entry: "fert-066",
    formulas: ["potentialAcidityOfSource", "limeForNitrogen"],
    source: {
      title: "Acidity generated from common fertilizers",
      publisher: "crop adviser study wiki",
      where: "table 2",
    },
    reached: "read",
    kind: "worked example",
    given: "half nitrogen credit, for 1 lb N per 1000 ft2; the source labels monoammonium phosphate 18-46-0",
    answers: [
      { of: "lb CaCO3/lb N, ammonia", printed: 1.8, to: 0.1 },
      { of: "lb CaCO3/lb N, urea", printed: 1.8, to: 0.1 },
      { of: "lb CaCO3/lb N, UAN", printed: 1.8, to: 0.1 },
      { of: "lb CaCO3/lb N, ammonium sulfate", printed: 5.4, to: 0.1 },
      { of: "lb CaCO3/lb N, monoammonium phosphate", printed: 5.4, to: 0.1 },
      { of: "lb CaCO3/lb N, diammonium phosphate", printed: 3.6, to: 0.1 },
    ],
    compute: () =>
      (
        [
          "ammonia",
          "urea",
          "urea ammonium nitrate",
          "ammonium sulfate",
          "monoammonium phosphate",
          "diammonium phosphate",
        ] as const
      ).map((source) =>
        limeForNitrogen([
          {
            nitrogen: quantity(1, "lb/1000 ft2", "N"),
            acidity: potentialAcidityOfSource({ source, convention: "half nitrogen credit" }),
          },
        ]).in("lb/1000 ft2"),
      ),
  },
  {
    entry: "fert-067",
    formulas: ["productRate", "acidityPerNitrogen"],
    source: {
      title: "Nitrogen fertilizer characteristics",
      publisher: "county environmental health file (University of California table)",
      where: "table 1",
    },
    reached: "read",
    kind: "worked example",
    given: "material for 1 lb N; acidity per lb N from the figures of two other tables",
    answers: [
      { of: "lb of 82 % N", printed: 1.22, to: 0.01 },
      { of: "lb of 21 % N", printed: 4.76, to: 0.01 },
      { of: "lb of 33.5 % N", printed: 2.98, to: 0.01, printing: "cut" },
      { of: "lb of 15.5 % N", printed: 6.45, to: 0.01 },
      { of: "lb of 46 % N", printed: 2.17, to: 0.01 },
      { of: "lb of 20 % N", printed: 5, to: 0.1 },
      { of: "lb of 17 % N", printed: 5.92, to: 0.01, wrong: { right: 5.88, why: "100 / 17 is 5.88" } },
      { of: "lb of 32 % N", printed: 3.12, to: 0.01, printing: "cut" },
      { of: "lb of 23 % N", printed: 4.37, to: 0.01, wrong: { right: 4.35, why: "100 / 23 is 4.35" } },
      { of: "lb of 20 % N in solution", printed: 4.98, to: 0.01, wrong: { right: 5, why: "100 / 20 is 5" } },
      { of: "lb CaCO3/lb N, ammonium sulfate", printed: 5.24, to: 0.01 },
      { of: "lb CaCO3/lb N, calcium nitrate", printed: -1.29, to: 0.01 },
    ],
    compute: () => [
      ...[82, 21, 33.5, 15.5, 46, 20, 17, 32, 23, 20].map(productPerPound),
      acidityPerNitrogen(tabulatedAcidity(oregonAcidity, "ammonium sulfate"), { nitrogenPercent: 21 }).in(
        "lb/lb",
      ),
      acidityPerNitrogen(tabulatedAcidity(growerAcidity, "calcium nitrate"), { nitrogenPercent: 15.5 }).in(
        "lb/lb",
      ),
    ],
  },
  {
    entry: "fert-069",
    formulas: ["tabulatedAcidity", "potentialAcidity"],
    source: {
      title: "N source potential acidity and basicity",
      publisher: "growers' questions page",
      where: "table",
    },
    reached: "read",
    kind: "worked example",
    given:
      "ammonium sulfate from another table's 110 lb per 100 lb; two more from a composition of ours (15.5 % N and 19 % Ca; 11-52-0)",
    answers: [
      { of: "lb CaCO3/ton, ammonium sulfate", printed: 2200, to: 1 },
      { of: "lb CaCO3/ton, calcium nitrate", printed: -400, to: 10 },
      { of: "lb CaCO3/100 lb, monoammonium phosphate (1120 a ton)", printed: 56, to: 1 },
    ],
    compute: () => {
      const convention = "half nitrogen credit";
      const phosphorus = 52 * (formFactor("P2O5", "P") ?? Number.NaN);
      return [
        tabulatedAcidity(oregonAcidity, "ammonium sulfate").in("lb/US ton"),
        potentialAcidity({ percent: { N: 15.5, Ca: 19 }, convention }).in("lb/US ton"),
        potentialAcidity({ percent: { N: 11, P: phosphorus }, convention }).in("% w/w"),
      ];
    },
  },
];

/** Published examples of salt and acidity that are not checked, and why. */
export const nutrientSaltLeftOut: readonly LeftOut[] = [];
