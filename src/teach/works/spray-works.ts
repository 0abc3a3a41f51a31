import { type Citation, frozen } from "../../quantity/index.js";

// Where formulas of spraying are printed.

export const mesaStationaryCalibration: Citation = /* @__PURE__ */ frozen({
  title: "Stationary calibration method for boom sprayers",
  publisher: "Mesa County (Colorado) Weed and Pest",
  where: "step 5",
});
export const cornellSelectingNozzles: Citation = /* @__PURE__ */ frozen({
  title: "Selecting nozzles, boom sprayers (Grape guidelines 7.6)",
  publisher: "Cornell Cooperative Extension",
  year: 2024,
  where: "step 1 example",
  url: "https://cropandpestguides.cce.cornell.edu/Guidelines/2024/Grapes/index63.aspx",
});
export const montanaCalibrationSprayers: Citation = /* @__PURE__ */ frozen({
  title: "Calibration of sprayers (MT 2000-14)",
  publisher: "Montana State University Extension",
  year: 2000,
  where: "example 3b",
});
export const cornellSprayerCalibration: Citation = /* @__PURE__ */ frozen({
  title: "Sprayer calibration: travel speed",
  publisher: "Cornell University extension",
  where: "formula, printed twice",
});
export const idahoCalibrationProcedure: Citation = /* @__PURE__ */ frozen({
  title: "Calibration procedure for band application",
  publisher: "University of Idaho Extension (Minidoka)",
  where: "step 1",
});
export const albertaCropProtection: Citation = /* @__PURE__ */ frozen({
  title: "Crop protection (Agdex 606-1)",
  publisher: "Alberta Agriculture",
  where: "chart for 800 m",
});
export const hendersonCalibrationPractice: Citation = /* @__PURE__ */ frozen({
  title: "Calibration practice problems for the private applicator exam",
  publisher: "Henderson County, Texas (Texas A&M AgriLife)",
  where: "formulas; problems 1-1 and 1-2",
  url: "https://paperzz.com/doc/9001669/broadcast-spraying-gpa---henderson-county",
});
export const missouriNozzleWidth: Citation = /* @__PURE__ */ frozen({
  title: "Sprayer nozzle flow rate worksheet (G1270A)",
  publisher: "University of Missouri Extension",
  where: "definition of nozzle width",
});
export const sprayCoverageWidths: Citation = /* @__PURE__ */ frozen({
  title: "Technical and spray coverage information, catalog page 165",
  publisher: "agricultural equipment dealer",
  where: "theoretical coverage at various spray heights",
  url: "https://user-35215390377.cld.bz/Independent-Ag-Equipment/165/",
});
export const ontarioBroadcastBoom: Citation = /* @__PURE__ */ frozen({
  title: "Broadcast boom nozzle spacing",
  publisher: "Ontario and Saskatchewan spray specialists (sprayers101)",
  where: "Boom height math",
  url: "https://sprayers101.com/broadcast-boom-nozzle-spacing/",
});
export const sprayCoverageHeights: Citation = /* @__PURE__ */ frozen({
  title: "Technical and spray coverage information, catalog page 165",
  publisher: "agricultural equipment dealer",
  where: "theoretical coverage at various spray heights, read backward",
  url: "https://user-35215390377.cld.bz/Independent-Ag-Equipment/165/",
});
export const missouriBand: Citation = /* @__PURE__ */ frozen({
  title: "Sprayer nozzle flow rate worksheet (G1270A)",
  publisher: "University of Missouri Extension",
  where: "band application",
});
export const minnesotaCalculateHerbicide: Citation = /* @__PURE__ */ frozen({
  title: "How to calculate herbicide rates and calibrate herbicide applicators",
  publisher: "University of Minnesota Extension",
  where: "example of bands",
  url: "https://extension.umn.edu/herbicides/how-calculate-herbicide-rates-and-calibrate-herbicide-applicators",
});
export const georgiaSprayingSolutions: Citation = /* @__PURE__ */ frozen({
  title: "Spraying solutions other than water",
  publisher: "University of Georgia Extension",
  where: "table 1",
});
export const nebraskaSettingSprayer: Citation = /* @__PURE__ */ frozen({
  title: "Setting the sprayer flow rate for non-water solutions",
  publisher: "University of Nebraska-Lincoln CropWatch",
  year: 2016,
  where: "example 1",
});
export const iowaCropNews: Citation = /* @__PURE__ */ frozen({
  title: "Crop News 844: spray speed and nozzle size",
  publisher: "Iowa State University Extension",
  url: "https://lib.dr.iastate.edu/cropnews/844/",
});
export const albertaCropProtectionAtSprayer: Citation = /* @__PURE__ */ frozen({
  title: "Crop protection (Agdex 606-1)",
  publisher: "Alberta Agriculture",
  where: "sprayer calibration example, steps 1-6",
  url: "http://agriculture.alberta.ca/flippingbook/agdex/606-1/files/assets/basic-html/page17.html",
});
export const georgiaNozzleSelection: Citation = /* @__PURE__ */ frozen({
  title: "Nozzle selection for PWM sprayers, Circular 1305",
  publisher: "University of Georgia Extension",
  where: "Duty Cycle and Ground Speed",
});
export const ohioBoomSprayer: Citation = /* @__PURE__ */ frozen({
  title: "Boom Sprayer Calibration (FABE-520)",
  publisher: "Ohio State University Extension",
  year: 2016,
  where: "table 1",
  url: "https://ohioline.osu.edu/factsheet/fabe-520",
});
export const lsuOuncesEqual: Citation = /* @__PURE__ */ frozen({
  title: "Ounces equal gallons: sprayer calibration",
  publisher: "LSU AgCenter",
  where: "example 1",
});
export const mesaRefillMethod: Citation = /* @__PURE__ */ frozen({
  title: "Refill method for boom sprayer calibration",
  publisher: "Mesa County (Colorado) Weed and Pest",
  where: "example",
});
export const lsuOuncesEqualCourse: Citation = /* @__PURE__ */ frozen({
  title: "Ounces equal gallons: sprayer calibration",
  publisher: "LSU AgCenter",
});
export const minnesotaCalculateHerbicideAtPowder: Citation = /* @__PURE__ */ frozen({
  title: "How to calculate herbicide rates and calibrate herbicide applicators",
  publisher: "University of Minnesota Extension",
  where: "powder",
  url: "https://extension.umn.edu/herbicides/how-calculate-herbicide-rates-and-calibrate-herbicide-applicators",
});
export const agrochemicalSafety: Citation = /* @__PURE__ */ frozen({
  title: "Agrochemical and Pesticide Safety (handbook extract)",
  publisher: "handbook",
  where: "p. 128, example 5",
});
export const montanaCalibrationSprayersAtExamples: Citation = /* @__PURE__ */ frozen({
  title: "Calibration of sprayers (MT 2000-14)",
  publisher: "Montana State University Extension",
  year: 2000,
  where: "examples 7a and 7b",
});
export const pacificPnwManagement: Citation = /* @__PURE__ */ frozen({
  title: "PNW Weed Management Handbook, weights and measures",
  publisher: "Pacific Northwest Extension",
});
export const ingredientStatement: Citation = /* @__PURE__ */ frozen({
  title: "Ingredient statement of a glyphosate dimethylamine salt",
  publisher: "label document",
});
export const pesticideDicambaEntry: Citation = /* @__PURE__ */ frozen({
  title: "dicamba, entry of a pesticide handbook (copy)",
  publisher: "pesticide handbook",
  where: "molar masses of the acid and of its salts and esters",
  url: "http://9ele.com/pesticides_cn/Dicamba.html",
});
export const missouriPumps: Citation = /* @__PURE__ */ frozen({
  title: "Sprayer pumps",
  publisher: "University of Missouri, Integrated Pest & Crop Management 15(5)",
  year: 2005,
  where: "article 6, example of a medium sprayer",
  url: "http://ppp.missouri.edu/newsletters/ipcm/archives/v15n5/ipmltr6.htm",
});
