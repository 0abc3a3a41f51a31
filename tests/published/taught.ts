import { quantity } from "../../src/quantity/index.js";
import {
  circleArea,
  dryBulkDensity,
  moistBulkDensity,
  pondVolume,
  rectangleArea,
  triangleArea,
} from "../../src/site/index.js";
import { dissolvedSalts, equivalentWeight } from "../../src/soil/index.js";
import { activeInProduct, calibrationByRefill } from "../../src/spray/index.js";
import { to } from "./answer.js";
import type { PublishedCheck } from "./check.js";

const read = "read" as const;
const feet = (value: number) => quantity(value, "ft");
const percent = (value: number) => quantity(value, "%");
const rectangle = (length: number, width: number): number =>
  rectangleArea({ length: feet(length), width: feet(width) }).in("ft2");
const triangle = (base: number, height: number): number =>
  triangleArea({ base: feet(base), height: feet(height) }).in("ft2");
const circle = (diameter: number): number => circleArea({ diameter: feet(diameter) }).in("ft2");
/** Grams of oven-dry soil in a sample of so many milliliters that weighs so much moist. */
const ovenDry = (grams: number, milliliters: number, moisture: number) =>
  dryBulkDensity({
    bulkDensity: quantity(grams / milliliters, "g/mL"),
    moisture: percent(moisture),
    basis: "dry weight",
  });
const inSample = (density: ReturnType<typeof ovenDry>, milliliters: number): number =>
  density.times(quantity(milliliters, "mL")).in("g");

const water = (value: number, unit: "fl oz") => quantity(value, unit, "water");
/** Pounds of active ingredient in so much of a product. */
const inPowder = (pounds: number, percent: number): number =>
  activeInProduct({
    product: quantity(pounds, "lb", "product"),
    content: quantity(percent, "% w/w", "ai/product"),
  }).in("lb");
const inLiquid = (gallons: number): number =>
  activeInProduct({
    product: quantity(gallons, "gal", "product"),
    content: quantity(4, "lb/gal", "ai/product"),
  }).in("lb");

const davis = {
  title: "Practice problems: porosity and bulk density",
  publisher: "University of California, Davis, Soil Science 100",
  url: "https://lawr.ucdavis.edu/classes/ssc100/probsets/pset01.html",
};

/** Areas, volumes and densities as they are taught and examined. */
export const taughtSiteChecks: readonly PublishedCheck[] = [
  {
    entry: "site-163",
    formulas: ["rectangleArea", "triangleArea", "circleArea"],
    source: {
      title: "Pesticide calculations: area",
      publisher: "copy of a page of the Wyoming Department of Agriculture",
      url: "http://www.alaskanha.org/pesticide/application/calculations/5.html",
    },
    reached: read,
    given: "80 by 60 ft; a triangle of 200 and 40 ft; a circle 40 ft across",
    answers: [
      to("ft2, rectangle", 4800, 1),
      to("ft2, triangle", 4000, 1),
      to("ft2, circle", 1256, 1, { wrong: { right: 1257, why: "pi was taken as 3.14" } }),
    ],
    compute: () => [rectangle(80, 60), triangle(200, 40), circle(40)],
  },
  {
    entry: "site-165",
    formulas: ["circleArea"],
    source: {
      title: "Common calculations",
      publisher: "University of Tennessee, Pesticide Safety Education Program",
      url: "https://psep.tennessee.edu/common-calculations/",
    },
    reached: read,
    given: "a circle 20 ft across",
    answers: [to("ft2", 314.159, 0.001)],
    compute: () => [circle(20)],
  },
  {
    entry: "site-166",
    formulas: ["rectangleArea", "triangleArea"],
    source: {
      title: "Size of treatment area",
      publisher: "turfgrass association, Virginia",
      url: "https://vaturf.org/topics/topic-size-of-treatment-area-2-2-2/",
    },
    reached: read,
    given: "50 by 30 ft; a triangle of 40 and 80 ft",
    answers: [to("ft2, rectangle", 1500, 1), to("ft2, triangle", 1600, 1)],
    compute: () => [rectangle(50, 30), triangle(40, 80)],
  },
  {
    entry: "site-171",
    formulas: ["rectangleArea", "pondVolume"],
    source: {
      title: "Time for math: pond loadings",
      publisher: "training site for wastewater operators",
      year: 2019,
      url: "https://wastewater101.net/2019/02/time-for-math-14",
    },
    reached: read,
    given: "600 by 400 ft, 4 ft deep on average",
    answers: [to("acres", 5.51, 0.01), to("acre-ft", 22, 0.1)],
    compute: () => {
      const area = rectangleArea({ length: feet(600), width: feet(400) });
      return [area.in("acre"), pondVolume({ area, meanDepth: feet(4) }).in("acre-ft")];
    },
  },
  {
    entry: "site-172",
    formulas: ["dryBulkDensity", "moistBulkDensity"],
    source: { ...davis, where: "problems 2 to 5" },
    reached: read,
    given: "moist samples of 400 and 288 cm3, and one of 650 g with a dry density of 1.3 g/cm3",
    answers: [
      to("g/cm3, 600 g at 10 % in 400 cm3", 1.36, 0.01),
      to("cm3 of 650 g at 12 %", 446.4, 0.1),
      to("g dry, 320 g at 15 % in 288 cm3", 272, 1, {
        wrong: { right: 278, why: "320/1.15 is 278.3: 272 is 320 less 15 %" },
      }),
      to("g/cm3 of it", 0.97, 0.01, { printing: "rounded" }),
      to("g dry, 350 cm3 at 1.42 g/cm3", 497, 1),
    ],
    compute: () => {
      const block = ovenDry(320, 288, 15);
      const moist = moistBulkDensity({
        bulkDensity: quantity(1.3, "g/mL"),
        moisture: percent(12),
        basis: "dry weight",
      });
      return [
        ovenDry(600, 400, 10).in("g/mL"),
        650 / moist.in("g/mL"),
        inSample(block, 288),
        block.in("g/mL"),
        quantity(1.42, "g/mL").times(quantity(350, "mL")).in("g"),
      ];
    },
  },
];

/** Water and soil as they are taught and examined. */
export const taughtSoilChecks: readonly PublishedCheck[] = [
  {
    entry: "soil-147",
    formulas: ["equivalentWeight"],
    source: {
      title: "Water and wastewater terms: SAR",
      publisher: "California State University, Sacramento, Office of Water Programs",
      url: "https://ab2370testsite.owp.csus.edu/glossary/sar.php",
    },
    reached: read,
    kind: "transcription",
    given: "milligrams of a milliequivalent",
    answers: [to("Na", 23, 0.1), to("Ca", 20, 0.1), to("Mg", 12.15, 0.01)],
    compute: () => (["Na", "Ca", "Mg"] as const).map((ion) => equivalentWeight(ion)),
  },
  {
    entry: "soil-148",
    formulas: ["dissolvedSalts"],
    source: {
      title: "Manual of a soil probe, version 1.2a",
      publisher: "maker of soil moisture sensors",
      where: "appendix 1, table 6",
    },
    reached: read,
    kind: "transcription",
    given: "mg/L for a dS/m up to 5 dS/m and beyond; 1 mg/L in an acre-foot",
    answers: [
      to("mg/L for 1 dS/m", 640, 1),
      to("mg/L for each of 10 dS/m", 800, 1),
      to("lb/acre-ft", 2.72, 0.01),
      to("tons/acre-ft", 0.00136, 0.00001),
    ],
    compute: () => {
      const load = quantity(1, "mg/L").times(quantity(1, "acre-ft"));
      return [
        dissolvedSalts({ conductivity: quantity(1, "dS/m") }).in("mg/L"),
        dissolvedSalts({
          conductivity: quantity(10, "dS/m"),
          factor: "800 mg/L per dS/m, above 5 dS/m",
        }).in("mg/L") / 10,
        load.in("lb"),
        load.in("US ton"),
      ];
    },
  },
  {
    entry: "soil-149",
    formulas: ["quantity"],
    source: {
      title: "Gypsum requirement",
      publisher: "North Dakota State University",
      where: "the units of its equation",
      url: "https://ndsu.edu/pubweb/soils/GypsumRequirementWebApp",
    },
    reached: read,
    kind: "transcription",
    given: "1 Mg/ha",
    answers: [to("tons/acre", 0.44609, 0.00001)],
    compute: () => [quantity(1, "t/ha").in("US ton/acre")],
  },
];

/** Calibration as it is taught and examined. */
export const taughtSprayChecks: readonly PublishedCheck[] = [
  {
    entry: "spray-186",
    formulas: ["calibrationByRefill"],
    source: {
      title: "Sprayer calibration",
      publisher: "Larimer County, Colorado, weed district",
      where: "steps 1 to 5",
      url: "http://www.larimer.org/weeds/calibration.htm",
    },
    reached: read,
    given: "fluid ounces on 18.5 by 18.5 ft are gallons an acre: 20 and 40",
    answers: [to("gal/acre of 20 fl oz", 20, 1), to("gal/acre of 40 fl oz", 40, 1)],
    compute: () =>
      [20, 40].map((ounces) =>
        calibrationByRefill({
          refills: [water(ounces, "fl oz")],
          course: quantity(18.5, "ft"),
          width: quantity(18.5, "ft"),
        }).rate.in("gal/acre"),
      ),
    note: "A square of 18.45 ft is 1/128 acre; 18.5 ft reads 0.6 % low.",
  },
  {
    entry: "spray-187",
    formulas: ["activeInProduct"],
    source: {
      title: "Formulation and sprayer calibration",
      publisher: "University of Arizona turf extension",
      year: 1994,
      url: "http://turf.arizona.edu/ccps0294.html",
    },
    reached: read,
    given: "1 and 5 lb of a 50W; half a gallon and a quart of a 4 EC",
    answers: [
      to("lb ai in 1 lb", 0.5, 0.1),
      to("lb ai in 5 lb", 2.5, 0.1),
      to("lb ai in 1/2 gal", 2, 1),
      to("lb ai in a quart", 1, 0.1),
    ],
    compute: () => [inPowder(1, 50), inPowder(5, 50), inLiquid(0.5), inLiquid(0.25)],
  },
];
