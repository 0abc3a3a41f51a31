import { frozen } from "../../quantity/index.js";
import type { SoilGuideline } from "./guideline-types.js";

/** The phosphorus below which Pennsylvania State University recommends some, Mehlich 3. */
export const pennsylvaniaPhosphorus: SoilGuideline = /* @__PURE__ */ frozen({
  extractant: "Mehlich 3",
  meaning: "the level below which the laboratory recommends phosphorus",
  rows: [
    { nutrient: "P", soil: "home lawns", from: 45, to: null },
    { nutrient: "P", soil: "putting greens", from: 90, to: null },
  ],
  source: {
    title: "Soil test phosphorus in turf soils: 2 datasets",
    publisher: "Asian Turfgrass Center (turfgrass research blog)",
    year: 2015,
    url: "http://www.blog.asianturfgrass.com/2015/04/soil-test-phosphorus-in-turf-soils-2-datasets.html",
  },
});
