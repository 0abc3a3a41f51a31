import { degreeDayModel, degreeDays } from "../../src/interval/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  annulusArea,
  circleArea,
  coverVolume,
  dryBulkDensity,
  moistBulkDensity,
  planLength,
  pondVolume,
  rectangleArea,
  triangleArea,
} from "../../src/site/index.js";
import {
  dissolvedSalts,
  equivalentWeight,
  exchangeCapacity,
  leachingRequirement,
  sodiumAdsorptionRatio,
} from "../../src/soil/index.js";
import { runLength } from "../../src/spread/index.js";
import { sodOrder } from "../../src/stand/index.js";
import { turfUse } from "../../src/water/index.js";
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
const layer = (area: number, inches: number) =>
  coverVolume({ area: quantity(area, "ft2"), depth: quantity(inches, "in") });
/** Grams of oven-dry soil in a sample of so many milliliters that weighs so much moist. */
const ovenDry = (grams: number, milliliters: number, moisture: number, basis: "dry weight" | "wet weight") =>
  dryBulkDensity({
    bulkDensity: quantity(grams / milliliters, "g/mL"),
    moisture: percent(moisture),
    basis,
  });
const inSample = (density: ReturnType<typeof ovenDry>, milliliters: number): number =>
  density.times(quantity(milliliters, "mL")).in("g");

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
    entry: "site-164",
    formulas: ["circleArea", "rectangleArea"],
    source: {
      title: "How do you calculate the area of a circular zone",
      publisher: "study site for applicators, North Carolina",
      where: "with the question on rectangular sections",
      url: "https://northcarolinapesticideapp.examzify.com/question/how-do-you-calculate-the-98e949b862aad4d4",
    },
    reached: read,
    given: "a circle 20 ft across; a bed of 10 by 5 ft",
    answers: [to("ft2, circle", 314, 1), to("ft2, bed", 50, 1)],
    compute: () => [circle(20), rectangle(10, 5)],
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
    entry: "site-167",
    formulas: ["annulusArea"],
    source: {
      title: "How many gallons are needed for a barrier (a ring between two perimeters)",
      publisher: "study site for a pest control examination",
      url: "https://acepestcontrol.passetra.com/question/how-many-gallons-of-diluted-85ce1672312781a4",
    },
    reached: read,
    given: "a ring between perimeters of 19 and 5 ft",
    answers: [to("ft, outer radius", 3.023, 0.001, { printing: "cut" }), to("ft2", 26.74, 0.01)],
    compute: () => {
      const [outer = 0, inner = 0] = [19, 5].map((around) => around / (2 * Math.PI));
      return [outer, annulusArea({ outerRadius: feet(outer), innerRadius: feet(inner) }).in("ft2")];
    },
  },
  {
    entry: "site-168",
    formulas: ["coverVolume"],
    source: {
      title: "Hardscaping and irrigation systems, questions with solutions",
      publisher: "study notes in a document archive",
      url: "https://www.stuvia.com/en-ca/doc/10812802/hardscaping-and-irrigation-systems-with-complete-solution-rated-a-2026-updated",
    },
    reached: read,
    given: "a pad of 16 by 22 ft, 4 in thick",
    answers: [to("ft3", 117.3333, 0.0001), to("yd3", 4.3, 0.1)],
    compute: () => {
      const pad = layer(16 * 22, 4);
      return [pad.in("ft3"), pad.in("yd3")];
    },
  },
  {
    entry: "site-169",
    formulas: ["coverVolume"],
    source: {
      title: "Mulch for a yard of 40 by 20 ft, 6 in deep",
      publisher: "question-and-answer page of tutors",
      where: "first answer",
      url: "https://www.wyzant.com/resources/answers/35137/what_is_the_area_for_a_yard_40ft_by_20ft_6inches_deep_trying_to_get_mulch_they_charge_by_the_cubic_yard_1_cubic_yard_covers_120_square_feet_how_many_yards",
    },
    reached: read,
    given: "40 by 20 ft, 6 in deep",
    answers: [to("ft3", 400, 1)],
    compute: () => [layer(800, 6).in("ft3")],
  },
  {
    entry: "site-170",
    formulas: ["coverVolume"],
    source: {
      title: "How much soil for top dressing a lawn",
      publisher: "question-and-answer page, after a lawn service",
      url: "https://askvity.info/lawn-care/how-much-soil-for-top-dressing-a-lawn",
    },
    reached: read,
    given: "1000 ft2 at 1/8, 1/4 and 3/8 in; 5000 ft2 at 1/4 in",
    answers: [
      to("yd3, 1/8 in", 0.4, 0.01, { wrong: { right: 0.39, why: "half of the 0.77 in the row below" } }),
      to("yd3, 1/4 in", 0.77, 0.01),
      to("yd3, 3/8 in", 1.14, 0.01, { wrong: { right: 1.16, why: "1000 x 0.375/12/27 is 1.157" } }),
      to("yd3, 5000 ft2", 3.85, 0.01, { wrong: { right: 3.86, why: "five times the rounded 0.77" } }),
    ],
    compute: () => [
      ...[0.125, 0.25, 0.375].map((inches) => layer(1000, inches).in("yd3")),
      layer(5000, 0.25).in("yd3"),
    ],
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
      const block = ovenDry(320, 288, 15, "dry weight");
      const moist = moistBulkDensity({
        bulkDensity: quantity(1.3, "g/mL"),
        moisture: percent(12),
        basis: "dry weight",
      });
      return [
        ovenDry(600, 400, 10, "dry weight").in("g/mL"),
        650 / moist.in("g/mL"),
        inSample(block, 288),
        block.in("g/mL"),
        quantity(1.42, "g/mL").times(quantity(350, "mL")).in("g"),
      ];
    },
  },
  {
    entry: "site-173",
    formulas: ["dryBulkDensity"],
    source: {
      title: "Bulk density and porosity",
      publisher: "solved problems in soil science",
      url: "https://mathix.co/problems/soil%20science/bulk-density-porosity-6a3e22",
    },
    reached: read,
    given: "1000 g with 200 g of water in 640 cm3",
    answers: [to("g dry", 800, 1), to("g/cm3", 1.25, 0.01)],
    compute: () => {
      const dry = ovenDry(1000, 640, 20, "wet weight");
      return [inSample(dry, 640), dry.in("g/mL")];
    },
  },
  {
    entry: "site-174",
    formulas: ["planLength"],
    source: {
      title: "Horizontal length after slope correction of the tape",
      publisher: "civil engineering notes",
      url: "https://civilnoteppt.com/calculate-the-horizontal-length-after-slope-correction-of-tape/",
    },
    reached: read,
    given: "a tape of 30 m, one end 70 cm lower",
    answers: [to("m of correction", 0.00817, 0.00001), to("m", 29.99183, 0.00001)],
    compute: () => {
      const slope = quantity((Math.asin(0.7 / 30) * 180) / Math.PI, "deg");
      const level = planLength(quantity(30, "m"), slope).in("m");
      return [30 - level, level];
    },
  },
];

/** Water and soil as they are taught and examined. */
export const taughtSoilChecks: readonly PublishedCheck[] = [
  {
    entry: "soil-142",
    formulas: ["sodiumAdsorptionRatio"],
    source: {
      title: "SAR calculation in a spreadsheet: a guide",
      publisher: "question-and-answer page on data",
      url: "https://mentor.enterprisedna.co/queries/sar-calculation-in-excel-a-guide",
    },
    reached: read,
    given: "Na 5, Ca 10, Mg 5 meq/L",
    answers: [to("SAR", 1.83, 0.01)],
    compute: () => [
      sodiumAdsorptionRatio({
        Na: quantity(5, "meq/L", "Na"),
        Ca: quantity(10, "meq/L", "Ca"),
        Mg: quantity(5, "meq/L", "Mg"),
      }),
    ],
  },
  {
    entry: "soil-143",
    formulas: ["leachingRequirement"],
    source: {
      title: "Estimate the leaching requirement (irrigation engineering)",
      publisher: "question bank for engineers",
      url: "https://qna.carrieradda.com/31563/estimate-leaching-requirement-electrical-conductivity-saturated-reduction-irrigation",
    },
    reached: read,
    given: "water of 1.5 dS/m, drainage of 2 x 10 dS/m",
    answers: [to("percent", 7.5, 0.1)],
    compute: () => [
      leachingRequirement({
        method: "drainage water",
        water: quantity(1.5, "dS/m"),
        soil: quantity(20, "dS/m"),
      }).share.in("%"),
    ],
  },
  {
    entry: "soil-144",
    formulas: ["exchangeCapacity"],
    source: {
      title: "A soil with CEC 35 cmolc/kg",
      publisher: "homework answers",
      url: "https://justaaa.com/chemistry/445750-consider-a-soil-with-cec-35-cmolckg-holding-the",
    },
    reached: read,
    given: "Ca 13, Mg 6, K 4, Na 3, H 3, Al 6 cmolc/kg",
    answers: [
      to("cmolc/kg", 35, 1),
      to("percent of bases", 91.42, 0.01, {
        wrong: { right: 74.29, why: "aluminum was counted among the bases: 32 for 26" },
      }),
    ],
    compute: () => {
      const found = exchangeCapacity({
        cations: {
          Ca: quantity(13, "cmolc/kg", "Ca/soil"),
          Mg: quantity(6, "cmolc/kg", "Mg/soil"),
          K: quantity(4, "cmolc/kg", "K/soil"),
          Na: quantity(3, "cmolc/kg", "Na/soil"),
        },
        acidity: quantity(9, "cmolc/kg"),
      });
      return [found.capacity.in("cmolc/kg"), found.baseSaturation.in("%")];
    },
  },
  {
    entry: "soil-145",
    formulas: ["exchangeCapacity"],
    source: {
      title: "Base saturation of a soil with 13, 4, 3, 2 and 2 of Ca, Mg, Na, K and H",
      publisher: "question bank for agricultural examinations",
      url: "https://agritestbook.com/agri-question/if-the-contents-of-ca%C2%B2%E2%81%BA-mg%C2%B2%E2%81%BA-na%E2%81%BA-k%E2%81%BA-and-h%E2%81%BA-are-13-4-3-2-and-2-mol-p%E2%81%BA-kg%E2%81%BB%C2%B9-respectively-and-the-cec-of-soil-is-25-mol-p",
    },
    reached: read,
    given: "Ca 13, Mg 4, Na 3, K 2 cmolc/kg in a capacity of 25, the rest acid",
    answers: [to("percent of bases", 88, 1)],
    compute: () => [
      exchangeCapacity({
        cations: {
          Ca: quantity(13, "cmolc/kg", "Ca/soil"),
          Mg: quantity(4, "cmolc/kg", "Mg/soil"),
          Na: quantity(3, "cmolc/kg", "Na/soil"),
          K: quantity(2, "cmolc/kg", "K/soil"),
        },
        acidity: quantity(3, "cmolc/kg"),
      }).baseSaturation.in("%"),
    ],
  },
  {
    entry: "soil-146",
    formulas: ["exchangeCapacity"],
    source: {
      title: "CEC of two soils from extracted cations",
      publisher: "homework answers",
      where: "soil A",
      url: "https://assignmentexpert.com/homework-answers/chemistry/general-chemistry/question-209660",
    },
    reached: read,
    given: "K 157.72, Ca 756.56, Mg 198.78, Na 21.36 mg/kg, Al + H 0.06 cmolc/kg",
    answers: [
      to("meq/100 g", 8.6479, 0.0001, {
        wrong: { right: 5.9955, why: "the divisors of K, Ca and Mg were exchanged: K/200, Ca/120, Mg/390" },
      }),
      to("percent of bases", 99.31, 0.01, { wrong: { right: 99, why: "the same exchange" } }),
    ],
    compute: () => {
      const found = exchangeCapacity({
        cations: {
          K: quantity(157.72, "mg/kg", "K/soil"),
          Ca: quantity(756.56, "mg/kg", "Ca/soil"),
          Mg: quantity(198.78, "mg/kg", "Mg/soil"),
          Na: quantity(21.36, "mg/kg", "Na/soil"),
        },
        acidity: quantity(0.06, "cmolc/kg"),
        weights: "whole numbers",
      });
      return [found.capacity.in("meq/100 g"), found.baseSaturation.in("%")];
    },
  },
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

/** Spreading, sod, water and degree-days as they are taught and examined. */
export const taughtSpreadChecks: readonly PublishedCheck[] = [
  {
    entry: "spread-132",
    formulas: ["runLength"],
    source: {
      title: "Manual of a ride-on spreader and sprayer",
      publisher: "maker of turf machines",
      where: "course length formula, example",
      url: "https://www.easymanua.ls/toro/spray-master-series/manual?p=29",
    },
    reached: read,
    given: "1000 ft2 at a swath of 6 ft; 93 m2 at 1.8 m",
    answers: [to("ft", 167, 1), to("m", 51, 1, { printing: "cut" })],
    compute: () => [
      runLength({ area: quantity(1000, "ft2"), swath: feet(6) }).in("ft"),
      runLength({ area: quantity(93, "m2"), swath: quantity(1.8, "m") }).in("m"),
    ],
  },
];

export const taughtStandChecks: readonly PublishedCheck[] = [
  {
    entry: "stand-062",
    formulas: ["sodOrder"],
    source: {
      title: "How many pieces of sod are in a pallet",
      publisher: "garden information page",
      url: "https://biologyinsights.com/how-many-pieces-of-sod-are-in-a-pallet",
    },
    reached: read,
    given: "500 ft2 in rolls of 40 by 18 in; 450 ft2 in slabs of 16 by 24 in",
    answers: [
      to("rolls", 100, 1),
      to("ft2 a slab", 2.66, 0.01, { printing: "cut" }),
      to("slabs", 165, 1, { wrong: { right: 169, why: "450/2.667 is 168.75" } }),
    ],
    compute: () => {
      const pieces = (area: number, length: number, width: number) =>
        sodOrder({
          area: quantity(area, "ft2"),
          waste: percent(0),
          piece: { length: quantity(length, "in"), width: quantity(width, "in") },
        });
      const slabs = pieces(450, 24, 16);
      return [
        pieces(500, 40, 18).pieces ?? Number.NaN,
        slabs.piece?.in("ft2") ?? Number.NaN,
        slabs.pieces ?? Number.NaN,
      ];
    },
  },
  {
    entry: "stand-063",
    formulas: ["quantity"],
    source: {
      title: "How to compute grass seed per acre",
      publisher: "garden information page",
      url: "http://www.designed-visions.com/how-to-compute-grass-seed-per-acre",
    },
    reached: read,
    given: "6 lb/1000 ft2; an acre less 20,000 ft2",
    answers: [to("lb/acre", 261.36, 0.01), to("acre", 0.54, 0.01)],
    compute: () => [
      quantity(6, "lb/1000 ft2", "seed").in("lb/acre"),
      quantity(1, "acre").minus(quantity(20_000, "ft2")).in("acre"),
    ],
  },
  {
    entry: "stand-064",
    formulas: ["quantity"],
    source: {
      title: "How many square feet is my lawn",
      publisher: "garden information page",
      url: "https://www.lovemylawn.net/how-many-square-feet-is-my-lawn/",
    },
    reached: read,
    given: "0.23 acre at 6 lb of seed/1000 ft2; a bag of 50 lb for 12,500 ft2 on 3000 ft2",
    answers: [to("ft2", 10_018.8, 0.1), to("lb of seed", 60.11, 0.01), to("lb of fertilizer", 12, 1)],
    compute: () => {
      const lawn = quantity(0.23, "acre");
      const bag = quantity(50, "lb").per(quantity(12_500, "ft2"));
      return [
        lawn.in("ft2"),
        quantity(6, "lb/1000 ft2").times(lawn).in("lb"),
        bag.times(quantity(3000, "ft2")).in("lb"),
      ];
    },
  },
];

export const taughtWaterChecks: readonly PublishedCheck[] = [
  {
    entry: "site-175",
    formulas: ["turfUse"],
    source: {
      title: "Watering in March: replacing evapotranspiration",
      publisher: "irrigation contractor",
      url: "http://www.gallioninc.org/feed/",
    },
    reached: read,
    given: "4.32 in of reference use in a month of 4.5 weeks, coefficient 0.60",
    answers: [
      to("in a month", 2.6, 0.01, { wrong: { right: 2.59, why: "4.32 x 0.6 is 2.592" } }),
      to("in a week", 0.58, 0.01),
    ],
    compute: () => {
      const month = turfUse({ reference: quantity(4.32, "in").per(quantity(31.5, "d")), coefficient: 0.6 });
      return [month.times(quantity(31.5, "d")).in("in"), month.in("in/week")];
    },
  },
];

export const taughtIntervalChecks: readonly PublishedCheck[] = [
  {
    entry: "interval-111",
    formulas: ["degreeDays"],
    source: {
      title: "GDD calculations",
      publisher: "seed company",
      url: "http://www.asihiyield.com/gdd-calc",
    },
    reached: read,
    given: "72 and 48 °F between 50 and 86 °F",
    answers: [to("°F d", 11, 1)],
    compute: () => {
      const model = degreeDayModel({
        method: "clamped average",
        base: { value: 50, unit: "°F" },
        upper: { value: 86, unit: "°F" },
        sensor: "air",
      });
      return [degreeDays({ max: quantity(72, "°F"), min: quantity(48, "°F"), model }).in("°F d")];
    },
  },
];
