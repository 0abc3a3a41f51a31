import {
  fertilizer,
  type Nutrient,
  nutrientsSupplied,
  packageContents,
  productRate,
} from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  activeInProduct,
  applicationVolume,
  calibrationByRefill,
  productForActive,
} from "../../src/spray/index.js";
import {
  amountFor,
  areaPerTank,
  finishedFrom,
  mixToFinish,
  perVolume,
  tankLoads,
} from "../../src/tank/index.js";
import { to } from "./answer.js";
import type { Answer, PublishedCheck } from "./check.js";

const read = "read" as const;
const spray = (value: number, unit: "gal" | "L" = "gal") => quantity(value, unit, "spray");
const litersPerHectare = (value: number) => quantity(value, "L/ha", "spray");
const onePound = quantity(1, "lb/1000 ft2", "N");
const source = (analysis: string) => fertilizer({ id: "a", analysis });
const suppliedPerM2 = (grams: number, analysis: string, nutrient: Nutrient) =>
  nutrientsSupplied(quantity(grams, "g/m2", "product:a"), source(analysis))[nutrient]?.in("g/m2") ??
  Number.NaN;

/** Fertilizer from a bag. */
export const moreNutrientChecks: readonly PublishedCheck[] = [
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
    formulas: ["packageContents", "nutrientsSupplied"],
    source: {
      title: "Soil nutrient programme",
      publisher: "Fertilizer Association of Ireland",
      url: "http://www.fertilizer-assoc.ie/code-of-good-practice/nutrient-programme/",
    },
    reached: read,
    given: "a bag of 50 kg of 27.5 % N, and one of 18-6-12, which is printed in elements there",
    answers: [
      to("kg N of 27.5", 13.7, 0.1, { printing: "cut" }),
      to("kg N", 9, 0.1),
      to("kg P", 3, 0.1),
      to("kg K", 6, 0.1),
    ],
    compute: () => {
      const bag = { id: "a", package: quantity(50, "kg") } as const;
      const single = fertilizer({ ...bag, analysis: "27.5-0-0" });
      const compound = fertilizer({ ...bag, analysis: "18-6-12", basis: "element" });
      const { N, P, K } = nutrientsSupplied(packageContents(compound), compound);
      return [nutrientsSupplied(packageContents(single), single).N, N, P, K].map(
        (mass) => mass?.in("kg") ?? Number.NaN,
      );
    },
  },
];

/** Meters to go, and the printed liters to mix at 100 L/ha for booms of 15, 16 and 18 m. */
const rests: readonly (readonly [number, readonly number[]])[] = [
  [10, [2, 2, 2]],
  [20, [3, 3, 4]],
  [30, [5, 5, 5]],
  [40, [6, 7, 7]],
  [50, [8, 8, 9]],
  [60, [9, 10, 11]],
  [70, [11, 11, 13]],
  [80, [12, 13, 14]],
  [90, [14, 15, 16]],
  [100, [15, 16, 18]],
  [200, [30, 32, 36]],
  [300, [45, 48, 54]],
  [400, [60, 64, 72]],
  [500, [75, 80, 90]],
];
const booms = [15, 16, 18];
const offByOne: Readonly<Record<string, Partial<Answer>>> = {
  "40 m by 16 m": {
    wrong: { right: 6, why: "40 x 16/100 is 6.4; the rows beside it are rounded to the nearest" },
  },
  "90 m by 16 m": {
    wrong: { right: 14, why: "90 x 16/100 is 14.4; the rows beside it are rounded to the nearest" },
  },
};

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
    entry: "mix-144",
    formulas: ["mixToFinish"],
    source: {
      title: "Manual of a self-propelled sprayer, in French, edition 02.14",
      publisher: "maker of field sprayers",
      where: "11.3.2, figure 111, booms of 15 to 18 m",
    },
    reached: read,
    given: "what is left to mix at 100 L/ha for so many meters of a boom",
    answers: rests.flatMap(([distance, row]) =>
      row.map((printed, i) => {
        const of = `${distance} m by ${booms[i]} m`;
        return to(`L, ${of}`, printed, 1, offByOne[of]);
      }),
    ),
    compute: () =>
      rests.flatMap(([distance]) =>
        booms.map((boom) =>
          mixToFinish({
            area: quantity(distance * boom, "m2"),
            applicationVolume: litersPerHectare(100),
          }).toMix.in("L"),
        ),
      ),
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
