import { type Citation, frozen } from "../../quantity/index.js";
import type { SoilGuideline } from "./guideline-types.js";

const source: Citation = /* @__PURE__ */ frozen({
  title: "Soil test interpretation sheet, turf resource guide, table 3, citing Carrow et al. 2003",
  publisher: "turf resource guide 2021-2022",
  year: 2021,
  where: "table 3",
});
const meaning = "the range that the source calls sufficient for turf";

/** Sufficiency for turf, Mehlich 3. */
export const sufficiencyMehlich3: SoilGuideline = /* @__PURE__ */ frozen({
  extractant: "Mehlich 3",
  meaning,
  rows: [
    { nutrient: "P", soil: "any", from: 27, to: 54 },
    { nutrient: "K", soil: "sand", from: 50, to: 116 },
    { nutrient: "K", soil: "other soils", from: 75, to: 176 },
    { nutrient: "Ca", soil: "any", from: 500, to: 750 },
    { nutrient: "Mg", soil: "sand", from: 60, to: 120 },
    { nutrient: "Mg", soil: "other soils", from: 70, to: 140 },
    { nutrient: "S", soil: "any", from: 15, to: 40 },
  ],
  source,
});

/** Sufficiency of phosphorus for turf, Bray P1. */
export const sufficiencyBray: SoilGuideline = /* @__PURE__ */ frozen({
  extractant: "Bray P1",
  meaning,
  rows: [{ nutrient: "P", soil: "any", from: 15, to: 30 }],
  source,
});

/** Sufficiency of phosphorus for turf, Olsen. */
export const sufficiencyOlsen: SoilGuideline = /* @__PURE__ */ frozen({
  extractant: "Olsen",
  meaning,
  rows: [{ nutrient: "P", soil: "any", from: 12, to: 28 }],
  source,
});
