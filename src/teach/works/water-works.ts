import { type Citation, frozen } from "../../quantity/index.js";

// Where formulas of watering and of the air are printed.

export const virginiaFormulasDetermining: Citation = /* @__PURE__ */ frozen({
  title: "Formulas for determining application rates",
  publisher: "Virginia Department of Wildlife Resources",
  where: "list",
  url: "https://dwr.virginia.gov/fishing/aquatic-plant-id-and-treatment/formulas-for-determining-application-rates/",
});
export const plantSupplementalWater: Citation = /* @__PURE__ */ frozen({
  title: "Supplemental water requirements",
  publisher: "plant introduction program",
  where: "conversions",
});
export const turfgrassCatchCan: Citation = /* @__PURE__ */ frozen({
  title: "Catch can, normal",
  publisher: "turfgrass information center, photo caption",
  where: "caption",
});
export const californiaIrrigationWater: Citation = /* @__PURE__ */ frozen({
  title: "Irrigation water management made simple (Drought Tip 92-29)",
  publisher: "University of California, Davis (LAWR)",
  year: 1992,
  where: "Example 1",
  url: "https://lawr.ucdavis.edu/cooperative-extension/irrigation/drought-tips/irrigation-water-management-made-simple",
});
export const californiaIrrigationWaterAtExample: Citation = /* @__PURE__ */ frozen({
  title: "Irrigation water management made simple (Drought Tip 92-29)",
  publisher: "University of California, Davis (LAWR)",
  year: 1992,
  where: "Example 2",
  url: "https://lawr.ucdavis.edu/cooperative-extension/irrigation/drought-tips/irrigation-water-management-made-simple",
});
export const utilityPrecipitationRate: Citation = /* @__PURE__ */ frozen({
  title: "Determine your sprinkler system's precipitation rate",
  publisher: "public utility district",
  where: "example",
});
export const sprinklerDesign: Citation = /* @__PURE__ */ frozen({
  title: "Design considerations: scheduling coefficient",
  publisher: "horticulture course page, publisher not shown",
  where: "item 4",
});
export const arizonaPhoenixArea: Citation = /* @__PURE__ */ frozen({
  title: "Phoenix area turf water use report",
  publisher: "University of Arizona, AZMET",
  year: 2024,
  where: "report of 18 March 2024",
  url: "http://www.ag.arizona.edu/azmet/data/00prptet.htm",
});
export const landscapeGuide: Citation = /* @__PURE__ */ frozen({
  title: "A guide to estimating irrigation water needs of landscape plantings in California",
  publisher: "University of California Cooperative Extension and California Department of Water Resources",
  where: "landscape coefficient",
});
export const californiaTeachingOrganic: Citation = /* @__PURE__ */ frozen({
  title: "Teaching organic farming and gardening, unit 2.1: soil physical properties",
  publisher: "University of California, Santa Cruz (attribution from memory)",
  where: "Example 1",
});
export const fao56Eq84: Citation = /* @__PURE__ */ frozen({
  title: "Crop evapotranspiration (FAO Irrigation and Drainage Paper 56)",
  publisher: "FAO",
  year: 1998,
  where: "equation 84, as a public program has it",
});
export const texasEffectiveRainfall: Citation = /* @__PURE__ */ frozen({
  title: "Effective rainfall",
  publisher: "Texas A&M AgriLife, evapotranspiration network",
  url: "https://texaset.tamu.edu/Content/effrain.html",
});
export const pipeFriction: Citation = /* @__PURE__ */ frozen({
  title:
    "Pipe friction loss by Hazen and Williams: p = 4.52 Q^1.85 / (C^1.85 d^4.87), velocity = 0.4085 Q / d²",
  publisher: "reference page on pipe friction",
  where: "formulas",
});
export const gravity: Citation = /* @__PURE__ */ frozen({
  title: "Declaration on the unit of mass and the conventional value of gravity",
  publisher: "General Conference on Weights and Measures, 3rd meeting",
  year: 1901,
});
export const collectionIrrigationFormulas: Citation = /* @__PURE__ */ frozen({
  title: "Irrigation formulas",
  publisher: "collection of farm references, stored copy",
  where: "pressure; water measurement",
});
export const hazenWilliams: Citation = /* @__PURE__ */ frozen({
  title: "Hydraulic tables",
  publisher: "A. Hazen and G. Williams",
  where: "the formula, in its SI form",
});
export const fao56Eq11: Citation = /* @__PURE__ */ frozen({
  title: "Crop evapotranspiration (FAO Irrigation and Drainage Paper 56)",
  publisher: "FAO",
  year: 1998,
  where: "equation 11",
});
export const fao56Eq12: Citation = /* @__PURE__ */ frozen({
  title: "Crop evapotranspiration (FAO Irrigation and Drainage Paper 56)",
  publisher: "FAO",
  year: 1998,
  where: "equation 12",
});
export const fao56Eq7: Citation = /* @__PURE__ */ frozen({
  title: "Crop evapotranspiration (FAO Irrigation and Drainage Paper 56)",
  publisher: "FAO",
  year: 1998,
  where: "equation 7",
});
export const fao56Eq37: Citation = /* @__PURE__ */ frozen({
  title: "Crop evapotranspiration (FAO Irrigation and Drainage Paper 56)",
  publisher: "FAO",
  year: 1998,
  where: "equation 37",
});
export const fao56Eq38: Citation = /* @__PURE__ */ frozen({
  title: "Crop evapotranspiration (FAO Irrigation and Drainage Paper 56)",
  publisher: "FAO",
  year: 1998,
  where: "equation 38",
});
