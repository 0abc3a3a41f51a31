import { type Citation, frozen } from "../../quantity/index.js";

// Where formulas of fertilizing are printed.

export const nebraskaLawnFertilizer: Citation = /* @__PURE__ */ frozen({
  title: "Lawn fertilizer calculations",
  publisher: "University of Nebraska-Lincoln Extension",
});
export const floridaFertilizingHome: Citation = /* @__PURE__ */ frozen({
  title: "Fertilizing your home lawn",
  publisher: "University of Florida IFAS Extension (county blog)",
  url: "https://blogs.ifas.ufl.edu/okaloosaco/fertilizing-your-home-lawn/",
});
export const cornellNutrientManagement: Citation = /* @__PURE__ */ frozen({
  title: "Nutrient management course CSS 412, module 3, page 6: fertilizer P2O5",
  publisher: "Cornell University",
  where: "conversion and examples",
  url: "https://courses.cit.cornell.edu/css412/mod3/ext_m3_pg6.htm",
});
export const virginiaTurfgrassMathematics: Citation = /* @__PURE__ */ frozen({
  title: "Turfgrass mathematics review: practice worksheet",
  publisher: "Virginia certified turfgrass professional programme",
  where: "page 2",
});
export const lectureFourSteps: Citation = /* @__PURE__ */ frozen({
  title: "Four steps in fertilizer calculations (turf management lecture)",
  publisher: "university lecture in a document archive",
  where: "converting slides",
});
export const minnesotaGettingYou: Citation = /* @__PURE__ */ frozen({
  title: "Getting what you paid for (understanding and using lawn fertilizers)",
  publisher: "University of Minnesota Extension",
  where: "tables 7.3 and 7.4",
  url: "http://www.extension.umn.edu/garden/landscaping/maint/selectin_1.html",
});
export const marylandCaps: Citation = /* @__PURE__ */ frozen({
  title: "Annotated Code of Maryland, Agriculture, 6-224",
  publisher: "Maryland statutes",
  where: "caps on total and on soluble nitrogen",
});
export const lectureFourStepsAtExample: Citation = /* @__PURE__ */ frozen({
  title: "Four steps in fertilizer calculations (turf management lecture)",
  publisher: "university lecture in a document archive",
  where: "example 1, harder version",
});
export const atomicWeights: Citation = /* @__PURE__ */ frozen({
  title: "Standard atomic weights of the elements 2021, abridged",
  publisher: "IUPAC, Pure and Applied Chemistry 94, 573-600",
  year: 2022,
  where: "table 2",
});
export const massachusettsFertilizerCalculations: Citation = /* @__PURE__ */ frozen({
  title: "Fertilizer calculations for greenhouse crops",
  publisher: "University of Massachusetts Extension",
  where: "introduction",
});
export const texasNutritionFertility: Citation = /* @__PURE__ */ frozen({
  title: "Nutrition and fertility: ppm calculations",
  publisher: "Texas A&M horticulture guide",
  where: "formula I and II and practical examples",
});
export const washingtonCalculatingChemigation: Citation = /* @__PURE__ */ frozen({
  title: "Calculating chemigation injection rates, FS035E",
  publisher: "Washington State University Extension",
  where: "injection rates by fluid volume, equation 1",
  url: "https://pt.scribd.com/document/361125778/Calculating-Chemigation-Injection-Rates",
});
export const nebraskaDetermineChemigation: Citation = /* @__PURE__ */ frozen({
  title: "How to determine the chemigation injection pump setting for a center pivot",
  publisher: "University of Nebraska-Lincoln CropWatch",
  year: 2023,
  where: "example",
  url: "https://cropwatch.unl.edu/2023/how-determine-chemigation-injection-pump-setting-center-pivot-end-gun-and",
});
export const fertilizerOpenField: Citation = /* @__PURE__ */ frozen({
  title: "Open-field fertigation: calculations and results",
  publisher: "fertilizer company page",
  where: "injection rate",
});
export const healthNitrogenFertilizer: Citation = /* @__PURE__ */ frozen({
  title: "Nitrogen fertilizer characteristics",
  publisher: "county environmental health file (University of California table)",
  where: "table 1, gallons per lb of N",
});
export const nebraskaSettingSprayerAtExample: Citation = /* @__PURE__ */ frozen({
  title: "Setting the sprayer flow rate for non-water solutions",
  publisher: "University of Nebraska-Lincoln CropWatch",
  year: 2016,
  where: "example 2, first step",
  url: "https://cropwatch.unl.edu/2016/setting-sprayer-flow-rate-non-water-solutions",
});
export const virginiaCommonFertilizers: Citation = /* @__PURE__ */ frozen({
  title: "Common fertilizers used in Virginia: nitrogen, phosphorus and potassium (SPES-199)",
  publisher: "Virginia Cooperative Extension",
  where: "table 1",
  url: "https://ext.vt.edu/content/pubs_ext_vt_edu/en/SPES/SPES-199/SPES-199NP.html",
});
export const lectureFertigationCalculations: Citation = /* @__PURE__ */ frozen({
  title: "Fertigation calculations (Sne)",
  publisher: "lecture slides in a document archive",
  year: 2013,
  where: "slides 4 and 6, examples",
  url: "https://pdfcoffee.com/fertigation-calculations-2013-pdf-free.html",
});
export const turfgrassCalculatingMuch: Citation = /* @__PURE__ */ frozen({
  title: "Calculating how much of an element is applied in a liquid fertilizer",
  publisher: "turfgrass science blog",
  year: 2015,
  where: "reply",
  url: "https://www.blog.asianturfgrass.com/2015/03/calculating-how-much-of-an-element-is-applied-in-a-liquid-fertilizer.html",
});
export const fertilizerEstimatedPhysical: Citation = /* @__PURE__ */ frozen({
  title: "Estimated physical characteristics of fertilizer material",
  publisher: "fertilizer industry fact sheet in a document archive",
  where: "shrink example",
});
export const wisconsinTimeSome: Citation = /* @__PURE__ */ frozen({
  title: "Time for some fertilizer math",
  publisher: "University of Wisconsin Extension",
  where: "cost table",
  url: "http://www.uwex.edu/ces/crops/FertMath.htm",
});
export const ohioCalculatingNutrient: Citation = /* @__PURE__ */ frozen({
  title: "Calculating nutrient value in fertilizer (LaBarge)",
  publisher: "Ohio State University Extension, in a farm journal",
  year: 2024,
  where: "single and mixed nutrients, steps one and two",
  url: "https://ocj.com/2024/02/calculating-nutrient-value-in-fertilizer/",
});
export const stewardshipMuchOrganic: Citation = /* @__PURE__ */ frozen({
  title: "How much organic fertilizer do you need to supply the right nitrogen rate?",
  publisher: "farm stewardship association, Carolina",
  where: "example one",
  url: "https://www.carolinafarmstewards.org/how-much-organic-fertilizer-do-you-need-to-supply-the-right-nitrogen-rate/",
});
export const healthNitrogenFertilizerAtTable: Citation = /* @__PURE__ */ frozen({
  title: "Nitrogen fertilizer characteristics",
  publisher: "county environmental health file (University of California table)",
  where: "table 1",
});
export const virginiaTurfgrassMathematicsAtStandard: Citation = /* @__PURE__ */ frozen({
  title: "Turfgrass mathematics review: practice worksheet",
  publisher: "Virginia certified turfgrass professional programme",
  where: "standard fertilizer calculations",
});
export const virginiaApplicationSection: Citation = /* @__PURE__ */ frozen({
  title: "Application section: how much to use",
  publisher: "Virginia turfgrass training site",
  where: "dry material example",
});
export const cornellAnotherSet: Citation = /* @__PURE__ */ frozen({
  title: "Another set of calculations for fertilizer applications",
  publisher: "Cornell Cooperative Extension, Suffolk County",
});
export const dealerSaltIndex: Citation = /* @__PURE__ */ frozen({
  title: "Salt index of common starter fertilizers",
  publisher: "fluid fertilizer dealer article",
  year: 2012,
  where: "table 1",
});
export const oregonSaltIndex: Citation = /* @__PURE__ */ frozen({
  title: "Table 26-2 Common sources of N in turfgrass fertilizers",
  publisher: "Oregon State University forage and grass site",
  where: "table 26-2",
  url: "https://forages.prod.acquia.cws.oregonstate.edu/Tables/26-2",
});
export const newMexicoSaltIndex: Citation = /* @__PURE__ */ frozen({
  title: "Fertilizer part 2 (salt index)",
  publisher: "New Mexico State University, Eddy County Extension",
  year: 2017,
  where: "table",
});
export const ukLiquid: Citation = /* @__PURE__ */ frozen({
  title: "NPK input guidance",
  publisher: "UK turf fertilizer maker's technical page",
  where: "liquid example",
});
export const reorderTextbook: Citation = /* @__PURE__ */ frozen({
  title: 'Chapter 12, "Managing inventory"',
  publisher: "textbook of operations management, as a library of shared documents repeats it",
  where: "p. 543, solution by equation 12-16",
  url: "https://fdocuments.net/document/copia-56072dfca4b34.html",
});
