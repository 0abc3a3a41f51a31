import { type Citation, frozen } from "../../quantity/index.js";

// Where formulas of the soil report, salty water, the air, growth and readings are printed.

/** The paper on reference evapotranspiration, at a place in it. */
export const fao56 = (where: string): Citation => ({
  title: "Crop evapotranspiration (FAO Irrigation and Drainage Paper 56)",
  publisher: "FAO",
  year: 1998,
  where,
});
export const clemsonExchange: Citation = /* @__PURE__ */ frozen({
  title: "CEC calculations",
  publisher: "Clemson University Agricultural Service Laboratory",
  where: "example",
});
export const texasSoilTests: Citation = /* @__PURE__ */ frozen({
  title: "Turfgrass fertilization, soil tests",
  publisher: "Texas Agricultural Extension Service",
  url: "https://www.plantanswers.com/turf/publications/fertil.html",
});
export const waterManagementBlend: Citation = /* @__PURE__ */ frozen({
  title: "Practices of Irrigation and On-farm Water Management",
  publisher: "textbook",
  where: "example 8.3",
});
export const courseSoilUnits: Citation = /* @__PURE__ */ frozen({
  title: "Soil unit conversions",
  publisher: "university course notes",
  where: "worked examples",
});
export const dollarSpotEquation: Citation = /* @__PURE__ */ frozen({
  title: "Dollar spot by forecast weather",
  publisher: "public notebook that repeats the equation of PLOS ONE 13(3), e0194216",
  year: 2018,
  where: "equation of the logit; read as an excerpt, title paraphrased",
});
export const warmGrowthPotential: Citation = /* @__PURE__ */ frozen({
  title: "Modified warm season growth potential model",
  publisher: "turfgrass information center",
  where: "text",
});
export const growthPotentialCurve: Citation = /* @__PURE__ */ frozen({
  title: "On day length, growth potential, and fertilizer estimates",
  publisher: "turfgrass research centre blog (model of Gelernter and Stowell 2005)",
  year: 2014,
  where: "equation",
});
export const halfLivesByHeat: Citation = /* @__PURE__ */ frozen({
  title: "Improving PGRs by degrees",
  publisher: "turf trade magazine",
  year: 2014,
  where: "University of Illinois half-life figures",
});
export const bigleafLight: Citation = /* @__PURE__ */ frozen({
  title: "Rg.to.PPFD: conversions between global radiation and photosynthetic photon flux density",
  publisher: "R package bigleaf, manual",
  where: "examples",
  url: "https://search.r-project.org/CRAN/refmans/bigleaf/html/Rg.to.PPFD.html",
});
export const waterReuseSalinity: Citation = /* @__PURE__ */ frozen({
  title: "Salinity Management Guide: bicarbonate and carbonate",
  publisher: "a guide to water reuse",
  url: "http://www.salinitymanagement.org/Salinity%20Management%20Guide/ls/ls_3f3.html",
});
export const soilTestRatio: Citation = /* @__PURE__ */ frozen({
  title: "Soil test interpretation sheet, turf resource guide",
  publisher: "turf resource guide 2021-2022",
  year: 2021,
  where: "SAR example",
});
export const davisLime: Citation = /* @__PURE__ */ frozen({
  title: "Lime Requirement, SMP, 450",
  publisher: "University of California, Davis, Analytical Laboratory",
  url: "http://anlab.ucdavis.edu/using-the-lab/analysis/soils/450",
});
export const missouriLime: Citation = /* @__PURE__ */ frozen({
  title: "How much lime to apply?",
  publisher: "University of Missouri Extension, agronomy column",
});
export const oklahomaSalts: Citation = /* @__PURE__ */ frozen({
  title: "Turf irrigation water quality: a concise guide",
  publisher: "Oklahoma State University Extension",
  where: "table 1",
  url: "https://extension.okstate.edu/fact-sheets/turf-irrigation-water-quality-a-concise-guide.html",
});
export const pesticideScore: Citation = /* @__PURE__ */ frozen({
  title: "Groundwater ubiquity score (GUS)",
  publisher: "National Pesticide Information Center",
  where: "equation, and classes of the table",
  url: "http://npic.orst.edu/envir/gus.html",
});
export const milkeyFrequency: Citation = /* @__PURE__ */ frozen({
  title: "Treatment frequency index",
  publisher: "MilKey project",
  where: "description: 1 with the standard dose",
  url: "https://www.milkey-project.eu/?p=19259",
});
export const cornellQuotient: Citation = /* @__PURE__ */ frozen({
  title: "Environmental impact quotient (EIQ) explained",
  publisher: "Cornell University turfgrass program",
  where: "range of the values",
  url: "https://turf.cals.cornell.edu/pests-and-weeds/environmental-impact-quotient-eiq-explained/",
});
export const davisCores: Citation = /* @__PURE__ */ frozen({
  title: "Practice problems: porosity and bulk density",
  publisher: "University of California, Davis, Soil Science 100",
  where: "problems 1, 6 and 9",
  url: "https://lawr.ucdavis.edu/classes/ssc100/probsets/pset01.html",
});
export const courseWaterProblems: Citation = /* @__PURE__ */ frozen({
  title: "Water problems: problem set",
  publisher: "a university course in soils, PLSOIL 105 and 106",
  where: "worked example, question 1",
  url: "https://studylib.net/doc/18855260/water-problems--problem-set",
});
export const stewardshipMean: Citation = /* @__PURE__ */ frozen({
  title: "Spray gun calibration",
  publisher: "Pesticide Environmental Stewardship (university consortium)",
  where: "example",
});
export const dutchVariation: Citation = /* @__PURE__ */ frozen({
  title: "Section 4.4 Mean, variation, standard deviation and coefficient of variation",
  publisher: "Dutch agricultural knowledge wiki (teaching text)",
  where: "worked example",
});
export const handoutInterpolation: Citation = /* @__PURE__ */ frozen({
  title: "Linear interpolation from a table",
  publisher: "course handout on fluid mechanics",
  where: "specific weight of water at 62.5 °F",
  url: "https://studylib.net/doc/10476799/%CE%B3",
});
export const carolinaChristiansen: Citation = /* @__PURE__ */ frozen({
  title: "Reference pages on catch-can data of sprinkler systems",
  publisher: "North Carolina State University",
  where: "coefficient of uniformity",
});
export const carolinaUniformity: Citation = /* @__PURE__ */ frozen({
  title: "Reference pages on catch-can data of sprinkler systems",
  publisher: "North Carolina State University",
  where: "distribution uniformity of the lower half",
});
export const purdueDegreeDays: Citation = /* @__PURE__ */ frozen({
  title: "Use growing degree days to better time your applications",
  publisher: "Purdue University turfgrass science",
  where: "first worked day",
  url: "https://turf.purdue.edu/use-growing-degree-days-to-better-time-your-applications/",
});
export const windAtTwoMeters: Citation = /* @__PURE__ */ frozen({
  title: "u2_fao56: 2-meter wind speed as described in FAO 56",
  publisher: "NCAR Command Language, manual",
  where: "example 1, which is example 14 of chapter 3 of FAO Irrigation and Drainage Paper 56",
  url: "https://www.ncl.ucar.edu/Document/Functions/Crop/u2_fao56.shtml",
});
export const arizonaIron: Citation = /* @__PURE__ */ frozen({
  title: "Turf tips, March 1998: correcting iron chlorosis",
  publisher: "University of Arizona Cooperative Extension",
  year: 1998,
  url: "https://turf.arizona.edu/tips398.html",
});
export const californiaNitrogen: Citation = /* @__PURE__ */ frozen({
  title: "Nitrogen in irrigation water",
  publisher: "University of California Solution Center for Nutrient Management",
  where: "example",
});
export const virginiaDensities: Citation = /* @__PURE__ */ frozen({
  title: "Common fertilizers used in Virginia: nitrogen, phosphorus and potassium (SPES-199)",
  publisher: "Virginia Cooperative Extension",
  where: "table 1, density by temperature",
});
export const ishibashiRelease: Citation = /* @__PURE__ */ frozen({
  title: "Release of nitrogen from coated urea: first-order kinetics, abstract",
  publisher: "Ishibashi et al.",
  year: 1992,
});
export const oklahomaCode: Citation = /* @__PURE__ */ frozen({
  title: "Oklahoma Administrative Code 165:10",
  publisher: "State of Oklahoma",
  where: "exchangeable sodium percentage from the ratio, after US Salinity Laboratory 1954",
});
export const fao29: Citation = /* @__PURE__ */ frozen({
  title: "Water quality for agriculture (FAO Irrigation and Drainage Paper 29)",
  publisher: "FAO",
  year: 1985,
  where: "section 2.4.2, equation 9, as public programs that cite it have it",
});
export const triStateLime: Citation = /* @__PURE__ */ frozen({
  title: "Tri-State Fertilizer Recommendations (E-2567)",
  publisher: "Michigan State, Ohio State and Purdue University Extension",
  where: "half of the rates for a depth of 4 in",
});
export const gustafsonScore: Citation = /* @__PURE__ */ frozen({
  title: "Groundwater ubiquity score",
  publisher: "D. I. Gustafson, Environmental Toxicology and Chemistry 8, 339-357",
  year: 1989,
});
export const kovachQuotient: Citation = /* @__PURE__ */ frozen({
  title: "A method to measure the environmental impact of pesticides (Bulletin 139)",
  publisher: "J. Kovach et al., New York's Food and Life Sciences",
  year: 1992,
});
export const smithDollarSpot: Citation = /* @__PURE__ */ frozen({
  title:
    "Development and validation of a weather-based warning system to advise fungicide applications to control dollar spot on turfgrass",
  publisher: "D. L. Smith, J. P. Kerns et al., PLOS ONE 13(3), e0194216",
  year: 2018,
});
export const turfNutritionSlides: Citation = /* @__PURE__ */ frozen({
  title: "Slides on turfgrass nutrition and soil nutrient analyses",
  publisher: "turfgrass science presentation",
  year: 2015,
  where: "K example",
});
export const pennLime: Citation = /* @__PURE__ */ frozen({
  title: "Commercial Turf - Maintain, and Home Garden",
  publisher: "Pennsylvania State University Agricultural Analytical Services Laboratory",
  where: "75 lb at a CCE of 80 are 94 lb",
});
