import { type Citation, frozen } from "../../quantity/index.js";

// Where formulas of mixing are printed.

export const oklahomaCalibratingApplication: Citation = /* @__PURE__ */ frozen({
  title: "Calibrating application equipment (turf course slides)",
  publisher: "Oklahoma State University - Oklahoma City",
  year: 2013,
  where: "slides 4-5",
});
export const pesticideCalculationsMixing: Citation = /* @__PURE__ */ frozen({
  title: "Calculations for mixing pesticides",
  publisher: "Pesticide safety education module (PMEP)",
  where: "wettable powder and liquid examples",
});
export const pesticideCalculationsMixingAtModule: Citation = /* @__PURE__ */ frozen({
  title: "Calculations for Mixing Pesticides",
  publisher: "Pesticide safety education module (PMEP)",
  where: "module 17, wettable powder and liquid mixing",
});
export const agrochemicalSafetyTank: Citation = /* @__PURE__ */ frozen({
  title: "Agrochemical and Pesticide Safety (handbook extract)",
  publisher: "handbook",
  where: "p. 128, example 4",
});
export const mesaCalibrateHandgun: Citation = /* @__PURE__ */ frozen({
  title: "How to calibrate a handgun",
  publisher: "Mesa County (Colorado) Weed and Pest",
  where: "example",
});
export const montanaCalibrationSprayersAtExamplesB: Citation = /* @__PURE__ */ frozen({
  title: "Calibration of sprayers (MT 2000-14)",
  publisher: "Montana State University Extension",
  year: 2000,
  where: "examples 4 and 7b",
});
export const albertaCropProtectionAtSprayerCalibration: Citation = /* @__PURE__ */ frozen({
  title: "Crop protection (Agdex 606-1)",
  publisher: "Alberta Agriculture",
  where: "sprayer calibration example, step 6",
  url: "http://agriculture.alberta.ca/flippingbook/agdex/606-1/files/assets/basic-html/page17.html",
});
export const sprayWaterVolumes: Citation = /* @__PURE__ */ frozen({
  title: "Spray application: water volumes (quoting the UK regulator CRD)",
  publisher: "manufacturer page",
  where: "example",
});
export const peanutUsingCrop: Citation = /* @__PURE__ */ frozen({
  title: "Using Crop Oil Adjuvants (University of Florida and University of Georgia)",
  publisher: "The Peanut Grower",
});
export const usgaDontLet: Citation = /* @__PURE__ */ frozen({
  title: "Don't let hard water make weeds hard to control",
  publisher: "USGA Central Region",
  year: 2018,
});
export const newEnglandDilution: Citation = /* @__PURE__ */ frozen({
  title: "New England Vegetable Management Guide, dilution tables",
  publisher: "New England Extension",
  where: "gallons of finished spray",
});
export const missouriPesticideDilution: Citation = /* @__PURE__ */ frozen({
  title: "Pesticide dilution table (G7510)",
  publisher: "University of Missouri Extension",
  url: "https://extension.missouri.edu/publications/g7510",
});
export const armyPesticidesMilitaryAtPage: Citation = /* @__PURE__ */ frozen({
  title: "Pesticides in the Military, subcourse MD0173",
  publisher: "US Army Medical Department Center and School",
  where: "page 36",
});
export const armyPesticidesMilitaryAtPageProblem: Citation = /* @__PURE__ */ frozen({
  title: "Pesticides in the Military, subcourse MD0173",
  publisher: "US Army Medical Department Center and School",
  where: "page 35 and 36, problem 1",
  url: "http://armymedical.tpub.com/MD0173/Weight-Volume-Calculations-Pesticides-in-the-Military-36.htm",
});
export const texasNutritionFertilityAtPractical: Citation = /* @__PURE__ */ frozen({
  title: "Nutrition and fertility calculations",
  publisher: "Texas A&M AgriLife Extension",
  where: "practical examples I and II",
});
export const ohioPruningTools: Citation = /* @__PURE__ */ frozen({
  title: "Cleaning pruning tools: table of UF/IFAS (Disinfecting pruning tools)",
  publisher: "Cooperative Extension, question answered in Cuyahoga County, Ohio",
  year: 2012,
  url: "https://ask.extension.org/questions/111201",
});
export const exponentialRinsing: Citation = /* @__PURE__ */ frozen({
  title: "Exponential rinsing",
  publisher: "cleaning consultants, US",
  where: "scenarios 1 and 2",
  url: "http://bfksolutions.com/exponential-rinsing/",
});
export const standardsWaterHardness: Citation = /* @__PURE__ */ frozen({
  title: "Water hardness",
  publisher: "page of standards, US (Wiktel)",
  where: "formula and equivalents",
  url: "https://wiktel.com/standards/hardnes.htm",
});
export const northDakotaSulfate: Citation = /* @__PURE__ */ frozen({
  title: "Crop & Pest Report, after Nalewaja and Matysiak (1993)",
  publisher: "North Dakota State University Extension",
  year: 2015,
});
export const purdueMuchAms: Citation = /* @__PURE__ */ frozen({
  title: "How much AMS do I need to combat hard water antagonism",
  publisher: "Purdue University",
  where: "formula, first two terms",
});
export const michiganEffectWater: Citation = /* @__PURE__ */ frozen({
  title: "Effect of water pH on the stability of pesticides",
  publisher: "Michigan State University Extension",
  year: 2008,
});
export const nationalPesticideHalf: Citation = /* @__PURE__ */ frozen({
  title: "Pesticide Half-life fact sheet",
  publisher: "National Pesticide Information Center",
});
export const ufWaterEffectiveness: Citation = /* @__PURE__ */ frozen({
  title: "PI193, Water pH and the Effectiveness of Pesticides",
  publisher: "UF/IFAS",
  where: "What is pH?",
});
