import { type Citation, frozen } from "../../quantity/index.js";

// Where formulas of mowing, seeding and planting are printed.

export const cornellOneThird: Citation = /* @__PURE__ */ frozen({
  title: "The one-third rule (home gardening tips)",
  publisher: "Cornell University",
  where: "first tip",
  url: "http://www.gardening.cornell.edu/homegardening/tidbit_template1454.html",
});
export const iowaOftenShould: Citation = /* @__PURE__ */ frozen({
  title: "How often should I mow my lawn?",
  publisher: "Iowa State University Extension",
  where: "answer",
  url: "https://hortnews.extension.iastate.edu/faq/how-often-should-i-mow-my-lawn",
});
export const cornellOneThirdAtSecond: Citation = /* @__PURE__ */ frozen({
  title: "The one-third rule (home gardening tips)",
  publisher: "Cornell University",
  where: "second tip",
  url: "http://www.gardening.cornell.edu/homegardening/tidbit_templatef758.html",
});
export const canadianCloserLook: Citation = /* @__PURE__ */ frozen({
  title: "A closer look at frequency of clip: how is it calculated?",
  publisher: "Canadian groundskeeper's trade note",
  year: 2013,
  url: "http://www.canadiangroundskeeper.com/blog/2013/03/20/a-closer-look-at-frequency-of-clip-how-is-foc-calculated/",
});
export const lsuPureLive: Citation = /* @__PURE__ */ frozen({
  title: "Pure live seed calculation",
  publisher: "LSU AgCenter",
  where: "steps 1 to 4",
  url: "https://www.lsuagcenter.com/topics/lawn_garden/commercial_horticulture/turfgrass/management-practices/calculations/pure-live-seed-calculation",
});
export const pennCalculatingPrice: Citation = /* @__PURE__ */ frozen({
  title: "Calculating the price of pure live seed",
  publisher: "Penn State Extension",
  year: 2023,
  where: "second paragraph",
  url: "http://plantscience.psu.edu/research/centers/turf/extension/factsheets/calculating-seed-price",
});
export const texasPureLive: Citation = /* @__PURE__ */ frozen({
  title: "Pure live seed",
  publisher: "Texas Department of Transportation",
  where: "worked example",
  url: "https://www.txdot.gov/about/campaigns-outreach/bluebonnets-wildflowers/pure-live-seed.html",
});
export const allamakeeCalculateSeeding: Citation = /* @__PURE__ */ frozen({
  title: "Calculate seeding rates in pure live seed",
  publisher: "Allamakee Soil and Water Conservation District, Iowa",
  url: "http://allamakeeswcd.org/calculate-seeding-rates-in-pure-live-seed/",
});
export const adviceSeedCount: Citation = /* @__PURE__ */ frozen({
  title: "Seed count and seeds per square foot",
  publisher: "advice page of a native seed grower",
  url: "https://hamiltonnativeoutpost.com/seed-calculators-seed-count-and-seeds-per-square-foot-for-dummies/",
});
export const plantingInstructionsInstalling: Citation = /* @__PURE__ */ frozen({
  title: "Instructions for installing buffalograss plugs",
  publisher: "planting guide of a turf grower",
  url: "http://lowwaterlawns.com/PlugInstallation.htm",
});
export const adviceSpacePlants: Citation = /* @__PURE__ */ frozen({
  title: "How to space plants",
  publisher: "advice page of a nursery",
  url: "https://weradtke.com/resources/gardening-information/how-to-space-plants/",
});
export const gardenersPlantingBuffalo: Citation = /* @__PURE__ */ frozen({
  title: "Planting the buffalo grass plugs",
  publisher: "a gardener's notes",
  year: 2009,
  url: "http://lazygardens.blogspot.com/2009/03/planting-buffalo-grass-plugs.html",
});
export const plantingGroundcoverSpacing: Citation = /* @__PURE__ */ frozen({
  title: "Groundcover spacing chart",
  publisher: "planting guide of a perennial grower",
  url: "https://gloverperennials.com/?p=2150",
});
export const gardenMuchGround: Citation = /* @__PURE__ */ frozen({
  title: "How much ground does a pallet of sod cover",
  publisher: "garden information page",
});
export const notesAerificationPercentages: Citation = /* @__PURE__ */ frozen({
  title: "Aerification percentages",
  publisher: "notes of a golf course superintendent",
  year: 2016,
  url: "http://highlandsccgolfmaintenance.blogspot.com/2016/09/aerification-percentages.html",
});
export const internationalSandTopdressing: Citation = /* @__PURE__ */ frozen({
  title:
    "Sand topdressing of an annual bluegrass putting green, Table 1: sand topdressing rate unit conversions",
  publisher: "International Turfgrass Society Research Journal (figures and tables)",
  url: "https://maxapress.com/app/figure_table/6791b5eefa6c58500c8b732b",
});
export const penPrice: Citation = /* @__PURE__ */ frozen({
  title: "Calculating the price of pure live seed",
  publisher: "Penn State Extension",
  year: 2023,
  where: "seed lots A and B",
  url: "http://plantscience.psu.edu/research/centers/turf/extension/factsheets/calculating-seed-price",
});
export const turfClippings: Citation = /* @__PURE__ */ frozen({
  title: "Turfgrass growth ratio, nitrogen harvest, and fertilizer adjustment",
  publisher: "Asian Turfgrass Center",
  where: "Estimating nitrogen harvest in clippings",
  url: "https://www.asianturfgrass.com/post/growth-ratio-nitrogen-harvest-and-fertilizer-adjustment/",
});
export const iowaCoring: Citation = /* @__PURE__ */ frozen({
  title: "Cultivation goals",
  publisher: "Iowa State University, in a laboratory's newsletter",
  year: 2004,
  url: "http://turfdiag.com/core-aeration",
});
export const clippingUnits: Citation = /* @__PURE__ */ frozen({
  title: "Clipping volume, green speed, and units",
  publisher: "Asian Turfgrass Center",
  year: 2018,
  url: "https://asianturfgrass.com/2018-03-25-clipping-volume-green-speed-and-units",
});
export const bushelsOfSprigs: Citation = /* @__PURE__ */ frozen({
  title: "Bushel of sprigs: definitions",
  publisher: "a planting contractor and a state forest service, side by side",
});
export const grubCounts: Citation = /* @__PURE__ */ frozen({
  title: "White grubs: monitoring",
  publisher: "copy of an extension text",
  url: "https://userz.net/post/4a3cbe6d9f05f07105d63ec6344e0fff",
});
export const sandByClippings: Citation = /* @__PURE__ */ frozen({
  title: "Sand topdressing to clipping volume ratios",
  publisher: "Asian Turfgrass Center",
  year: 2026,
});
