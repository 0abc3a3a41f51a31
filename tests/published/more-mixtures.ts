import { mean } from "../../src/numeric/index.js";
import {
  concentrationOf,
  fertilizer,
  injector,
  type Nutrient,
  nutrientsSupplied,
  productForConcentration,
  productRate,
  stockTank,
} from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  activeInProduct,
  applicationVolume,
  calibrationByRefill,
  productForActive,
} from "../../src/spray/index.js";
import { runLength } from "../../src/spread/index.js";
import {
  amountFor,
  areaPerTank,
  finishedFrom,
  mixToFinish,
  perVolume,
  tankLoads,
} from "../../src/tank/index.js";
import type { Answer, PublishedCheck } from "./check.js";

const read = "read" as const;
const to = (of: string, printed: number, place: number, more: Partial<Answer> = {}): Answer => ({
  of,
  printed,
  to: place,
  ...more,
});
const spray = (value: number, unit: "gal" | "L" = "gal") => quantity(value, unit, "spray");
const litersPerHectare = (value: number) => quantity(value, "L/ha", "spray");
const onePound = quantity(1, "lb/1000 ft2", "N");
const source = (analysis: string) => fertilizer({ id: "a", analysis });
const ouncesPer100 = (ppm: number, percent: number) =>
  productForConcentration(quantity(ppm, "mg/L", "N"), source(`${percent}-0-0`))
    .times(quantity(100, "gal"))
    .in("oz");
const ppmOfOunce = (percent: number) =>
  concentrationOf(quantity(0.01, "oz/gal", "product:a"), source(`${percent}-0-0`), "N").in("mg/L");
const suppliedPerM2 = (grams: number, analysis: string, nutrient: Nutrient) =>
  nutrientsSupplied(quantity(grams, "g/m2", "product:a"), source(analysis))[nutrient]?.in("g/m2") ??
  Number.NaN;

const slip = "takes 0.33 x 75 for 29.75; it is 24.75, and all that follows is a sixth too little";

/** Fertilizer from a bag and in a tank. */
export const moreNutrientChecks: readonly PublishedCheck[] = [
  {
    entry: "fert-150",
    formulas: ["productRate"],
    source: {
      title: "Lawn fertilizer calculations",
      publisher: "University of Nebraska-Lincoln Extension",
      url: "http://byf.unl.edu/LawnFertCalc",
    },
    reached: read,
    given: "1 lb N/1000 ft2 from 28-3-6, then 6,000 ft2 at the printed rate",
    answers: [to("lb/1000 ft2", 3.57, 0.01), to("lb", 21.42, 0.01)],
    compute: () => [
      productRate(onePound, source("28-3-6")).in("lb/1000 ft2"),
      quantity(3.57, "lb/1000 ft2", "product:a").times(quantity(6000, "ft2")).in("lb"),
    ],
  },
  {
    entry: "fert-151",
    formulas: ["productRate", "nutrientsSupplied"],
    source: {
      title: "Düngeempfehlungen (fertilizer recommendations for lawns)",
      publisher: "gardening society, Germany",
      url: "https://ogv-kirrlach.de/pages/vereinsanlage/lehrgarten-rasen/duengeempfehlungen.php",
    },
    reached: read,
    given: "7 g N/m2 from 20-5-8+2MgO; what 30 g of 16-7-15+2MgO and 20 g of 15-0-25+4MgO supply",
    answers: [to("g/m2", 35, 1), to("g N/m2 of 16-7-15", 5, 1), to("g N/m2 of 15-0-25", 3, 1)],
    compute: () => [
      productRate(quantity(7, "g/m2", "N"), source("20-5-8+2MgO")).in("g/m2"),
      suppliedPerM2(30, "16-7-15+2MgO", "N"),
      suppliedPerM2(20, "15-0-25+4MgO", "N"),
    ],
  },
  {
    entry: "fert-152",
    formulas: ["productRate"],
    source: {
      title: "Fertilizer calculations",
      publisher: "garden magazine, Canada",
      url: "https://countrygardener.ca/blogs/news/fertilizer-calculations",
    },
    reached: read,
    given: "1 lb N/1000 ft2 from a fertilizer of 20 % N, on 12,000 ft2",
    answers: [to("lb/1000 ft2", 5, 1), to("lb", 60, 1)],
    compute: () => {
      const rate = productRate(onePound, source("20-0-0"));
      return [rate.in("lb/1000 ft2"), rate.times(quantity(12_000, "ft2")).in("lb")];
    },
  },
  {
    entry: "fert-153",
    formulas: ["concentrationOf", "productForConcentration", "stockTank"],
    source: {
      title: "Nutrition and fertility: calculating ppm",
      publisher: "Texas A&M horticulture guide",
      url: "http://hortipm.tamu.edu/ipmguide/nutrient/calcs.html",
    },
    reached: read,
    given: "ounces in 100 gal by the factor 75, from calcium nitrate (15 % N) and ammonium nitrate (33 % N)",
    answers: [
      to("oz of 15 % for 250 ppm N", 22, 1),
      to("oz of 15 % for 150 ppm N", 13, 1),
      to("ppm N of 1 oz of 33 %", 29.75, 0.1, { wrong: { right: 24.7, why: slip } }),
      to("oz of 33 % for 150 ppm N", 5, 1, { wrong: { right: 6, why: slip } }),
      to("oz of 33 % for 200 ppm N", 7, 1, { wrong: { right: 8, why: slip } }),
      to("oz of 33 % in 100 gal of stock at 1:100", 700, 100, { wrong: { right: 800, why: slip } }),
    ],
    compute: () => {
      const stock = stockTank({
        targets: [quantity(200, "mg/L", "N")],
        salts: [{ product: source("33-0-0") }],
        injector: injector("1:100"),
        tank: quantity(100, "gal"),
      });
      return [
        ouncesPer100(250, 15),
        ouncesPer100(150, 15),
        ppmOfOunce(33),
        ouncesPer100(150, 33),
        ouncesPer100(200, 33),
        stock.salts[0]?.amount.in("oz") ?? Number.NaN,
      ];
    },
  },
  {
    entry: "fert-154",
    formulas: ["productForConcentration"],
    source: {
      title: "Fertilizer calculations for greenhouse crops",
      publisher: "University of Massachusetts Extension",
      url: "http://ag.umass.edu/greenhouse-floriculture/fact-sheets/fertilizer-calculations-for-greenhouse-crops",
    },
    reached: read,
    given: "100 gal of 200 ppm N from 20-20-20 and from 15-15-15",
    answers: [to("oz of 20-20-20", 13.5, 0.5), to("oz of 15-15-15", 18, 1)],
    compute: () => [ouncesPer100(200, 20), ouncesPer100(200, 15)],
  },
];

/** Calibration. */
export const moreSprayChecks: readonly PublishedCheck[] = [
  {
    entry: "spray-170",
    formulas: ["applicationVolume"],
    source: {
      title: "Calibration of boom spray equipment (chemical accreditation course)",
      publisher: "training company, Queensland",
      url: "https://www.countryco.com.au/chemical-accreditation-course/useful-tools",
    },
    reached: read,
    given: "a boom of 12 m puts out 24 L/min at 200 m/min",
    answers: [to("L/ha", 100, 1)],
    compute: () => [
      applicationVolume({
        flow: quantity(24, "L/min", "spray"),
        speed: quantity(200, "m/min"),
        width: quantity(12, "m"),
      }).in("L/ha"),
    ],
  },
  {
    entry: "spray-171",
    formulas: ["calibrationByRefill", "runLength", "mean"],
    source: {
      title: "Spray gun",
      publisher: "Pesticide Environmental Stewardship (university consortium)",
      url: "https://pesticidestewardship.org/calibration/spray-gun/",
    },
    reached: read,
    given: "a course of 1000 ft2 at a swath of 5 ft in 77, 79 and 78 s; 5.25 gal in that time",
    answers: [to("ft", 200, 1), to("s", 78, 1), to("gal/acre", 228.7, 0.1)],
    compute: () => {
      const area = quantity(1000, "ft2");
      return [
        runLength({ area, swath: quantity(5, "ft") }).in("ft"),
        mean([77, 79, 78]),
        calibrationByRefill({ refills: [spray(5.25)], area }).rate.in("gal/acre"),
      ];
    },
  },
  {
    entry: "spray-172",
    formulas: ["calibrationByRefill"],
    source: {
      title: "Calibrating your field sprayer (slides)",
      publisher: "Montana State University Extension",
      url: "http://www.slideserve.com/rose-stokes/calibrating-your-field-sprayer",
    },
    reached: read,
    given: "4 gal on 66 ft by 66 ft",
    answers: [to("gal/acre", 40, 1)],
    compute: () => [
      calibrationByRefill({
        refills: [spray(4)],
        course: quantity(66, "ft"),
        width: quantity(66, "ft"),
      }).rate.in("gal/acre"),
    ],
  },
  {
    entry: "spray-173",
    formulas: ["calibrationByRefill", "applicationVolume"],
    source: {
      title: "Agrochemicals: calibration",
      publisher: "International Rice Research Institute",
      url: "http://www.knowledgebank.irri.org/ipm/index.php/calibration",
    },
    reached: read,
    given: "2 L on 200 m2; 2 L/min on a width of 4 m, 100 m in 120 s",
    answers: [to("L/ha, by area", 100, 1), to("L/ha, by time", 100, 1)],
    compute: () => [
      calibrationByRefill({ refills: [spray(2, "L")], area: quantity(200, "m2") }).rate.in("L/ha"),
      applicationVolume({
        flow: quantity(2, "L/min", "spray"),
        speed: quantity(100, "m").per(quantity(120, "s")),
        width: quantity(4, "m"),
      }).in("L/ha"),
    ],
  },
  {
    entry: "spray-174",
    formulas: ["activeInProduct", "productForActive"],
    source: {
      title: "Principles of weed science, unit 6: herbicide calculation (slides)",
      publisher: "university course slides, Malaysia",
      where: "dry and liquid formulation",
      url: "https://www.scribd.com/presentation/368049556/AGR-3102-Unit-6-Herbicide-Calculation",
    },
    reached: read,
    given: "2.5 kg/ha of a product of 30 % w/w; 3 kg ai/ha from 35 % w/v",
    answers: [to("g ai/ha", 750, 1), to("L/ha", 8.57, 0.01)],
    compute: () => [
      activeInProduct({
        product: quantity(2.5, "kg/ha", "product"),
        content: quantity(30, "% w/w", "ai/product"),
      }).in("g/ha"),
      productForActive({
        active: quantity(3, "kg/ha", "ai"),
        content: quantity(35, "% w/v", "ai/product"),
      }).in("L/ha"),
    ],
  },
];

/** What goes into a tank. */
export const moreTankChecks: readonly PublishedCheck[] = [
  {
    entry: "mix-140",
    formulas: ["tankLoads"],
    source: {
      title: "Calculating spray application information",
      publisher: "provincial fact sheet for applicators, Canada, in a document archive",
      url: "https://docslib.org/doc/1861139/calculating-spray-application-information",
    },
    reached: read,
    given: "20 ha at 200 L/ha from a tank of 1000 L",
    answers: [to("L in all", 4000, 1), to("loads", 4, 1)],
    compute: () => {
      const { loads } = tankLoads({
        area: quantity(20, "ha"),
        applicationVolume: litersPerHectare(200),
        capacity: spray(1000, "L"),
      });
      return [loads.reduce((liters, { volume }) => liters + volume.in("L"), 0), loads.length];
    },
  },
  {
    entry: "mix-141",
    formulas: ["areaPerTank", "mixToFinish"],
    source: {
      title: "Manual of a self-propelled sprayer, in French, edition 02.14",
      publisher: "maker of field sprayers",
      where: "11.3.2, what is left to mix",
    },
    reached: read,
    given:
      "1000 L less 20 L at 500 L/ha; 100 m of 21 m at 100 L/ha, and less the 5.2 L that stand in the boom",
    answers: [
      to("ha", 1.96, 0.01),
      to("L for the rest", 21, 1),
      to("L less the boom", 9.8, 0.1, { wrong: { right: 15.8, why: "misprint: 21 less 5.2 is 15.8" } }),
    ],
    compute: () => {
      const rest = { area: quantity(2100, "m2"), applicationVolume: litersPerHectare(100) };
      return [
        areaPerTank({ capacity: spray(1000 - 20, "L"), applicationVolume: litersPerHectare(500) }).in("ha"),
        mixToFinish(rest).toMix.in("L"),
        mixToFinish({ ...rest, atHand: spray(5.2, "L") }).toMix.in("L"),
      ];
    },
  },
  {
    entry: "mix-142",
    formulas: ["amountFor", "finishedFrom"],
    source: {
      title: "Manual of a backpack mist blower, in French",
      publisher: "maker of garden machines",
      where: "page 54, amount of mixture",
    },
    reached: read,
    given: "0.4 L/ha on 0.36 ha, in a mixture of 0.1 %",
    answers: [to("L of product", 0.144, 0.001), to("L of mixture", 144, 1)],
    compute: () => [
      amountFor({ rate: quantity(0.4, "L/ha", "product"), form: "liquid", area: quantity(0.36, "ha") }).in(
        "L",
      ),
      finishedFrom({
        product: quantity(0.144, "L", "product"),
        concentration: quantity(100, "% v/v", "product/product"),
        strength: quantity(0.1, "% v/v", "product/spray"),
      }).in("L"),
    ],
  },
  {
    entry: "mix-143",
    formulas: ["perVolume", "amountFor"],
    source: {
      title: "Adjusting the amount of product to volume of water/ha",
      publisher: "Ontario fruit specialists' blog",
      year: 2020,
      url: "https://onfruit.ca/2020/07/09/adjusting-the-amount-of-product-to-volume-of-water-ha/",
    },
    reached: read,
    given: "2.8 kg per 500 L in 750 L; 0.2 % v/v of a surfactant in 500 L",
    answers: [to("kg", 4.2, 0.1), to("L of surfactant", 1, 1)],
    compute: () => [
      amountFor({
        rate: perVolume(quantity(2.8, "kg", "product"), spray(500, "L")),
        form: "dry",
        sprayVolume: spray(750, "L"),
      }).in("kg"),
      amountFor({
        rate: quantity(0.2, "% v/v", "product/spray"),
        form: "liquid",
        sprayVolume: spray(500, "L"),
      }).in("L"),
    ],
  },
];
