import { type Citation, frozen } from "../../quantity/index.js";

// Where formulas of spreading are printed.

export const floridaDryChemical: Citation = /* @__PURE__ */ frozen({
  title: "Dry chemical applicator calibration: alternative procedure",
  publisher: "University of Florida (digital collections scan)",
  where: "table 2, example at the foot",
  url: "https://ufdcimages.uflib.ufl.edu/UF/00/06/75/04/00001/00003.txt",
});
export const pesticideBandApplicators: Citation = /* @__PURE__ */ frozen({
  title: "Band applicators",
  publisher: "Pesticide Environmental Stewardship (university consortium)",
});
export const extensionExampleCalibrating: Citation = /* @__PURE__ */ frozen({
  title: "Example: Calibrating a Fire Ant Bait Spreader",
  publisher: "eXtension / Cooperative Extension",
  year: 2007,
  url: "https://articles.extension.org/pages/12227/example:-calibrating-a-fire-ant-bait-spreader",
});
export const georgiaForestControl: Citation = /* @__PURE__ */ frozen({
  title: "Forest Pest Control, Special Bulletin 16",
  publisher: "University of Georgia Extension",
  year: 2002,
  where: "footnotes to tables A1 to A3",
});
export const georgiaFertilizerApplicator: Citation = /* @__PURE__ */ frozen({
  title: "Fertilizer applicator calibration (Sumner)",
  publisher: "University of Georgia Extension",
  where: "step 2, examples A and B",
  url: "https://studylib.net/doc/10904955/the-university-of-georgia-college-of-agricultural-andamp%3B-e...",
});
export const equipmentSlurryTanker: Citation = /* @__PURE__ */ frozen({
  title: "Slurry tanker, operator's manual, appendix: spreading rate calculation",
  publisher: "equipment manual",
  year: 2016,
  where: "metric and imperial formulas and examples",
});
export const ncCalibrationTurfgrass: Citation = /* @__PURE__ */ frozen({
  title: "The Calibration of Turfgrass Boom Sprayers and Spreaders",
  publisher: "NC State Extension",
  where: "sprayer speed",
  url: "https://content.ces.ncsu.edu/the-calibration-of-turfgrass-and-boom-sprayers-and-spreaders",
});
export const missouriSprayerNozzle: Citation = /* @__PURE__ */ frozen({
  title: "Sprayer nozzle flow rate worksheet (G1270A)",
  publisher: "University of Missouri Extension",
  where: "field speed",
});
export const utahCalibratingSolid: Citation = /* @__PURE__ */ frozen({
  title: "Calibrating solid and slurry spreaders, 7.1",
  publisher: "Utah State University Extension",
  where: "load weight",
  url: "https://extension.usu.edu/waterquality/htm/agriculturewq/cnmp/step7/step7-1/",
});
export const washingtonLoad: Citation = /* @__PURE__ */ frozen({
  title: "Washington Administrative Code 173-308-270",
  publisher: "State of Washington",
  where: "equation 4",
});
export const iowaEstimatingField: Citation = /* @__PURE__ */ frozen({
  title: "Estimating the Field Capacity of Farm Machines (A3-24, PM 696)",
  publisher: "Iowa State University Extension",
  where: "table 1, spreader rows",
});
export const kentuckyCalculatingMachinery: Citation = /* @__PURE__ */ frozen({
  title: "Calculating Farm Machinery Field Capacities, AEN-73",
  publisher: "University of Kentucky",
  year: 1991,
  where: "theoretical field capacity",
});
export const massachusettsRotarySpreader: Citation = /* @__PURE__ */ frozen({
  title: "Rotary Spreader Calibration Procedures",
  publisher: "University of Massachusetts Extension",
  where: "introduction",
  url: "https://ag.umass.edu/turf/fact-sheets/rotary-spreader-calibration-procedures",
});
export const floridaAquaticHerbicide: Citation = /* @__PURE__ */ frozen({
  title: "Aquatic herbicide calibration summary",
  publisher: "University of Florida, aquatic plants center",
  where: "hand gun, time",
  url: "http://plants.ifas.ufl.edu/guide/calibinf.html",
});
export const wyomingCalibrationKey: Citation = /* @__PURE__ */ frozen({
  title: "Calibration is key to accurate seeding rates",
  publisher: "Wyoming livestock paper, extension column",
  year: 2012,
  where: "worked example",
});
