import { type Citation, frozen } from "../../quantity/index.js";

// Where formulas of prices, of the soil and of the season are printed.

export const lawnBottomLine: Citation = /* @__PURE__ */ frozen({
  title: "Bottom line",
  publisher: "Lawn & Landscape magazine",
  year: 2019,
  where: "27 February 2019, two-person crew",
  url: "https://www.lawnandlandscape.com/article/bottom-line/",
});
export const lawnPricingLawn: Citation = /* @__PURE__ */ frozen({
  title: "Pricing a lawn maintenance package",
  publisher: "Lawn & Landscape magazine",
  year: 2021,
  where: "January 2021, list of costs",
  url: "https://lawnandlandscape.com/article/pricing-a-lawn-maintenance-package",
});
export const lawnBepsBucket: Citation = /* @__PURE__ */ frozen({
  title: "BEPs and bucket trucks",
  publisher: "Lawn & Landscape magazine",
  year: 2019,
  where: "April 2019, crew of three and truck",
  url: "http://magazine.lawnandlandscape.com/article/april-2019/beps-and-bucket-trucks.aspx",
});
export const westernTimeMotion: Citation = /* @__PURE__ */ frozen({
  title: "Time and motion of a sprayer",
  publisher: "The Western Producer",
  year: 2015,
  where: "June 2015, read as an excerpt; title paraphrased; its 48 % of the time spent spraying should be 54",
});
export const iowaCapitalRecovery: Citation = /* @__PURE__ */ frozen({
  title: "Estimating farm machinery costs",
  publisher: "Iowa State University Extension, Ag Decision Maker A3-29",
  where: "capital recovery",
  url: "https://www.extension.iastate.edu/AGDM/crops/html/a3-29.html",
});
export const iowaEstimatingMachinery: Citation = /* @__PURE__ */ frozen({
  title: "Estimating farm machinery costs",
  publisher: "Iowa State University Extension, Ag Decision Maker A3-29",
  where: "example of a 180 hp diesel tractor",
  url: "https://www.extension.iastate.edu/AGDM/crops/html/a3-29.html",
});
export const asianIrrigationWater: Citation = /* @__PURE__ */ frozen({
  title: "Irrigation water quality (slides)",
  publisher: "Asian Turfgrass Center",
  year: 2017,
  where: "slides 17-19",
});
export const northUnderstandCompost: Citation = /* @__PURE__ */ frozen({
  title: "Understand your compost report",
  publisher: "North Carolina Department of Agriculture & Consumer Services",
  where: "What is the fertilizer grade?",
});
export const nationalPesticideHalfAtFigure: Citation = /* @__PURE__ */ frozen({
  title: "Pesticide half-life fact sheet",
  publisher: "National Pesticide Information Center",
  where: "figure 1 and classes",
  url: "https://npic.orst.edu/factsheets/half-life.html",
});
export const nationalPesticideHalfLeft: Citation = /* @__PURE__ */ frozen({
  title: "Pesticide half-life fact sheet",
  publisher: "National Pesticide Information Center",
  where: "figure 1",
  url: "https://npic.orst.edu/factsheets/half-life.html",
});
export const turfgrassNitrogenDemand: Citation = /* @__PURE__ */ frozen({
  title: "Turfgrass nitrogen demand",
  publisher: "turfgrass information center",
  where: "text",
});
export const arizonaDewPoint: Citation = /* @__PURE__ */ frozen({
  title: "Dewpoint formulas",
  publisher: "University of Arizona meteorological network",
});
