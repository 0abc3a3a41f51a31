import { frozen } from "../../quantity/index.js";
import type { SoilGuideline } from "./guideline-types.js";

const meaning =
  "the level that a tenth of the soils growing good turf lies below, by a log-logistic fit to soils of low exchange capacity and a pH above 5.5; stay at or above it";

/** Minimum levels for turf, Mehlich 3. */
export const minimumLevelsMehlich3: SoilGuideline = /* @__PURE__ */ frozen({
  extractant: "Mehlich 3",
  meaning,
  rows: [
    { nutrient: "K", soil: "any", from: 37, to: null },
    { nutrient: "P", soil: "any", from: 21, to: null },
    { nutrient: "Ca", soil: "any", from: 331, to: null },
    { nutrient: "Mg", soil: "any", from: 47, to: null },
    { nutrient: "S", soil: "any", from: 7, to: null },
  ],
  source: {
    title: "Minimum Levels for Sustainable Nutrition Soil Guidelines, reference sheet",
    publisher: "PACE Turf and Asian Turfgrass Center",
    year: 2014,
  },
});

/** The same levels as ammonium acetate dissolves them. */
export const minimumLevelsAmmoniumAcetate: SoilGuideline = /* @__PURE__ */ frozen({
  extractant: "ammonium acetate",
  meaning,
  rows: [
    { nutrient: "K", soil: "any", from: 31, to: null },
    { nutrient: "Ca", soil: "any", from: 248, to: null },
    { nutrient: "Mg", soil: "any", from: 41, to: null },
  ],
  source: {
    title: "Minimum levels for turf, ammonium acetate equivalents",
    publisher: "Asian Turfgrass Center",
  },
});
