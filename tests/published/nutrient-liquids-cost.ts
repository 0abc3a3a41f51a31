import {
  analysisByWeight,
  cheapestSource,
  densityAt,
  densitySlopeOfUan,
  fertilizer,
  inventoryShrink,
  type LiquidMaterialId,
  liquidDensity,
  liquidFertilizer,
  liquidMaterials,
  liquidProductRate,
  money,
  nutrientCost,
  nutrientPerVolume,
  nutrientsSupplied,
  quantity,
  saltOutFindings,
  weightOfLiquid,
} from "../../src/index.js";
import type { PublishedCheck, Source } from "./check.js";

const missing = Number.NaN;
const perTon = (dollars: number) => money(dollars, "USD").per(quantity(1, "US ton"));
const liquid = (grade: string, pounds: number) =>
  fertilizer({ id: "p", form: "liquid", analysis: grade, density: quantity(pounds, "lb/gal") });
const costOf = (percent: number, dollars: number): number =>
  nutrientCost({
    product: fertilizer({ id: "p", analysis: `${percent}-0-0` }),
    price: perTon(dollars),
    nutrient: "N",
  }).in("money:USD/lb");

const virginia: Source = {
  title: "Common fertilizers used in Virginia: nitrogen, phosphorus and potassium (SPES-199)",
  publisher: "Virginia Cooperative Extension",
  where: "table 1",
  url: "https://ext.vt.edu/content/pubs_ext_vt_edu/en/SPES/SPES-199/SPES-199NP.html",
};
const factSheet: Source = {
  title: "Estimated physical characteristics of fertilizer material",
  publisher: "fertilizer industry fact sheet in a document archive",
};

/** Temperature in °F, density and nitrogen in lb/gal, as printed for 28 and 30 % N. */
const uan: readonly (readonly [LiquidMaterialId, number, number, number])[] = [
  ["UAN 28", 30, 10.76, 3.01],
  ["UAN 28", 50, 10.7, 3],
  ["UAN 28", 60, 10.67, 2.99],
  ["UAN 28", 70, 10.64, 2.98],
  ["UAN 28", 80, 10.61, 2.97],
  ["UAN 28", 90, 10.58, 2.96],
  ["UAN 30", 30, 10.99, 3.3],
  ["UAN 30", 50, 10.93, 3.28],
  ["UAN 30", 60, 10.9, 3.27],
  ["UAN 30", 70, 10.87, 3.26],
  ["UAN 30", 80, 10.84, 3.25],
  ["UAN 30", 90, 10.81, 3.24],
];

/** Densities and salting-out temperatures of the industry fact sheet. */
const sheet: readonly (readonly [LiquidMaterialId, number, number | undefined])[] = [
  ["UAN 28", 10.67, -1],
  ["UAN 32", 11.06, 28],
  ["ammonium polyphosphate", 11.65, -10],
  ["ammonium thiosulfate", 11.04, undefined],
  ["zinc ammonia solution", 10.4, 32],
  ["7-21-7", 11.2, 20],
  ["4-10-10", 10.3, 18],
];

/** The warmest whole degree, °F, at which a source's own figure gives a finding. */
const crystalsFrom = (material: LiquidMaterialId, from: Source): number => {
  for (let t = 60; t > -40; t--) {
    const found = saltOutFindings(material, quantity(t, "°F"));
    if (found.some(({ source }) => (source as { title?: string }).title === from.title)) return t;
  }
  return missing;
};

/** Published examples of liquids and of cost. */
export const nutrientLiquidCostChecks: readonly PublishedCheck[] = [
  {
    entry: "fert-034",
    formulas: ["liquidDensity"],
    source: virginia,
    reached: "read",
    kind: "fit",
    given:
      "urea ammonium nitrate of 28 and 30 % N at 30 to 90 °F; density and slope of the library are this table's",
    answers: uan.map(([material, temperature, density]) => ({
      of: `${material} at ${temperature} °F, lb/gal`,
      printed: density,
      to: 0.01,
    })),
    compute: () =>
      uan.map(([material, temperature]) => liquidDensity(material, quantity(temperature, "°F")).in("lb/gal")),
  },
  {
    entry: "fert-034",
    formulas: ["nutrientPerVolume"],
    source: virginia,
    reached: "read",
    kind: "worked example",
    given: "urea ammonium nitrate of 28 and 30 % N, from the printed density at 30 to 90 °F",
    answers: uan.map(([material, temperature, , nitrogen]) => ({
      of: `${material} at ${temperature} °F, lb N/gal`,
      printed: nitrogen,
      to: 0.01,
    })),
    compute: () =>
      uan.map(([material, , density]) =>
        nutrientPerVolume(liquid(liquidMaterials[material].analysis, density), "N").in("lb/gal"),
      ),
  },
  {
    entry: "fert-034",
    formulas: ["saltOutFindings"],
    source: virginia,
    reached: "read",
    kind: "transcription",
    given: "urea ammonium nitrate of 28 and 30 % N in a cold tank",
    answers: [
      { of: "UAN 28 salts out, °F", printed: 1, to: 1 },
      { of: "UAN 30 salts out, °F", printed: 14, to: 1 },
    ],
    compute: () => [crystalsFrom("UAN 28", virginia), crystalsFrom("UAN 30", virginia)],
  },
  {
    entry: "fert-034",
    formulas: ["densityAt"],
    source: { ...virginia, where: "table 1: the slope follows from the two ends of the table" },
    reached: "derived",
    kind: "fit",
    given: "from 10.67 lb/gal at 60 °F to 30 and 90 °F",
    answers: [
      { of: "lb/gal at 30 °F", printed: 10.76, to: 0.01 },
      { of: "lb/gal at 90 °F", printed: 10.58, to: 0.01 },
    ],
    compute: () =>
      [30, 90].map((temperature) =>
        densityAt({
          density: quantity(10.67, "lb/gal"),
          measuredAt: quantity(60, "°F"),
          slopePerFahrenheit: densitySlopeOfUan,
          temperature: quantity(temperature, "°F"),
        }).in("lb/gal"),
      ),
  },
  {
    entry: "fert-035",
    formulas: ["inventoryShrink"],
    source: { ...factSheet, where: "shrink example" },
    reached: "read",
    kind: "worked example",
    given: "28-0-0 stored at 10.6 lb/gal and cooled to 10.74 lb/gal",
    answers: [{ of: "% shrink", printed: 1.3, to: 0.1 }],
    compute: () => [inventoryShrink(quantity(10.6, "lb/gal"), quantity(10.74, "lb/gal")).in("% v/v")],
  },
  {
    entry: "fert-035",
    formulas: ["liquidDensity", "saltOutFindings"],
    source: { ...factSheet, where: "liquid table" },
    reached: "read",
    kind: "transcription",
    given: "seven liquids",
    answers: [
      ...sheet.map(([material, density]) => ({ of: `${material}, lb/gal`, printed: density, to: 0.01 })),
      ...sheet.flatMap(([material, , crystals]) =>
        crystals === undefined ? [] : [{ of: `${material} salts out, °F`, printed: crystals, to: 1 }],
      ),
    ],
    compute: () => [
      ...sheet.map(([material]) => liquidDensity(material, quantity(60, "°F")).in("lb/gal")),
      ...sheet
        .filter(([, , crystals]) => crystals !== undefined)
        .map(([material]) => crystalsFrom(material, factSheet)),
    ],
  },
  {
    entry: "fert-036",
    formulas: ["nutrientPerVolume", "weightOfLiquid", "nutrientsSupplied"],
    source: {
      title: "Basic calculations for nitrogen fertilizers",
      publisher: "Purdue Extension, in a farm magazine",
      year: 2023,
      where: "worked example",
    },
    reached: "read",
    kind: "worked example",
    given: "28 % N at 10.6 lb/gal, 20 and 30 gal/acre; the source rounds to 3 lb N/gal",
    answers: [
      { of: "lb N/gal", printed: 2.97, to: 0.01 },
      { of: "lb N/acre at 20 gal", printed: 59.4, to: 0.1 },
      {
        of: "lb N/acre at 30 gal",
        printed: 90,
        to: 1,
        wrong: { right: 89, why: "3 lb per gallon in place of 2.968" },
      },
    ],
    compute: () => {
      const product = liquid("28-0-0", 10.6);
      const at = (gallons: number): number =>
        nutrientsSupplied(weightOfLiquid(quantity(gallons, "gal/acre", "product:p"), product), product).N?.in(
          "lb/acre",
        ) ?? missing;
      return [nutrientPerVolume(product, "N").in("lb/gal"), at(20), at(30)];
    },
  },
  {
    entry: "fert-037",
    formulas: ["nutrientPerVolume", "liquidProductRate"],
    source: {
      title: "Liquid fertilizer calculations",
      publisher: "vineyard growers' association extension sheet",
      where: "worked example",
    },
    reached: "read",
    kind: "worked example",
    given: "15 lb N/acre from 10-10-10 at 10.69 lb/gal on 20 acres, from the printed rate",
    answers: [
      { of: "lb N/gal", printed: 1.069, to: 0.001 },
      { of: "gal/acre", printed: 14.03, to: 0.01 },
      { of: "gal", printed: 280.6, to: 0.1 },
    ],
    compute: () => {
      const product = liquid("10-10-10", 10.69);
      const rate = liquidProductRate(quantity(15, "lb/acre", "N"), product);
      return [
        nutrientPerVolume(product, "N").in("lb/gal"),
        rate.in("gal/acre"),
        quantity(14.03, "gal/acre", "product:p").times(quantity(20, "acre")).in("gal"),
      ];
    },
  },
  {
    entry: "fert-037",
    formulas: ["weightOfLiquid", "nutrientsSupplied"],
    source: {
      title: "Liquid fertilizer calculations",
      publisher: "vineyard growers' association extension sheet",
      where: "how much was applied: the answer was cut off in the copy",
    },
    reached: "derived",
    kind: "worked example",
    given: "300 gal on 20 acres",
    answers: [{ of: "lb N/acre", printed: 16.04, to: 0.01 }],
    compute: () => {
      const product = liquid("10-10-10", 10.69);
      const rate = quantity(300, "gal", "product:p").per(quantity(20, "acre"));
      return [nutrientsSupplied(weightOfLiquid(rate, product), product).N?.in("lb/acre") ?? missing];
    },
  },
  {
    entry: "fert-039",
    formulas: ["analysisByWeight", "weightOfLiquid", "nutrientsSupplied"],
    source: {
      title: "NPK input guidance",
      publisher: "UK turf fertilizer maker's technical page",
      where: "liquid example",
    },
    reached: "read",
    kind: "worked example",
    given: "18-9-9 % w/v at 40 L/ha, through any density: 1.25 kg/L here",
    answers: [
      { of: "kg N/ha", printed: 7.2, to: 0.1 },
      { of: "kg P2O5/ha", printed: 3.6, to: 0.1 },
      { of: "kg K2O/ha", printed: 3.6, to: 0.1 },
    ],
    compute: () => {
      const density = quantity(1.25, "kg/L");
      const product = fertilizer({
        id: "p",
        form: "liquid",
        density,
        analysis: analysisByWeight({
          perVolume: {
            N: quantity(18, "% w/v", "N"),
            P2O5: quantity(9, "% w/v", "P2O5"),
            K2O: quantity(9, "% w/v", "K2O"),
          },
          density,
        }),
      });
      const s = nutrientsSupplied(weightOfLiquid(quantity(40, "L/ha", "product:p"), product), product);
      return [s.N, s.P2O5, s.K2O].map((q) => q?.in("kg/ha") ?? missing);
    },
  },
  {
    entry: "fert-039",
    formulas: ["liquidFertilizer", "nutrientsSupplied", "liquidProductRate"],
    source: {
      title: "NPK input guidance",
      publisher: "UK turf fertilizer maker's technical page",
      where: "liquid example",
    },
    reached: "read",
    kind: "worked example",
    given: "18-9-9 % w/v at 40 L/ha, without a density; and the rate for the printed 7.2 kg N/ha",
    answers: [
      { of: "kg N/ha", printed: 7.2, to: 0.1 },
      { of: "kg P2O5/ha", printed: 3.6, to: 0.1 },
      { of: "kg K2O/ha", printed: 3.6, to: 0.1 },
      { of: "L/ha", printed: 40, to: 1 },
    ],
    compute: () => {
      const product = liquidFertilizer({
        id: "p",
        perVolume: {
          N: quantity(18, "% w/v", "N"),
          P2O5: quantity(9, "% w/v", "P2O5"),
          K2O: quantity(9, "% w/v", "K2O"),
        },
      });
      const s = nutrientsSupplied(quantity(40, "L/ha", "product:p"), product);
      const back = liquidProductRate(quantity(7.2, "kg/ha", "N"), product);
      return [...[s.N, s.P2O5, s.K2O].map((q) => q.in("kg/ha")), back.in("L/ha")];
    },
  },
  {
    entry: "fert-067",
    formulas: ["liquidProductRate", "liquidDensity"],
    source: {
      title: "Nitrogen fertilizer characteristics",
      publisher: "county environmental health file (University of California table)",
      where: "table 1, gallons per lb of N",
    },
    reached: "read",
    kind: "worked example",
    given: "UAN 32, with the density of another source",
    answers: [{ of: "gal per lb N", printed: 0.28, to: 0.01 }],
    compute: () => {
      const product = fertilizer({
        id: "p",
        form: "liquid",
        analysis: "32-0-0",
        density: liquidDensity("UAN 32", quantity(60, "°F")),
      });
      return [liquidProductRate(quantity(1, "lb/acre", "N"), product).in("gal/acre")];
    },
  },
  {
    entry: "spray-022",
    formulas: ["nutrientPerVolume", "liquidProductRate"],
    source: {
      title: "Setting the sprayer flow rate for non-water solutions",
      publisher: "University of Nebraska-Lincoln CropWatch",
      year: 2016,
      where: "example 2, first step",
      url: "https://cropwatch.unl.edu/2016/setting-sprayer-flow-rate-non-water-solutions",
    },
    reached: "read",
    kind: "worked example",
    given: "75 lb N/acre from 28 % N at 10.65 lb/gal",
    answers: [
      { of: "lb N/gal", printed: 2.982, to: 0.001 },
      { of: "gal/acre", printed: 25.151, to: 0.001 },
    ],
    compute: () => {
      const product = liquid("28-0-0", 10.65);
      return [
        nutrientPerVolume(product, "N").in("lb/gal"),
        liquidProductRate(quantity(75, "lb/acre", "N"), product).in("gal/acre"),
      ];
    },
  },
  {
    entry: "fert-027",
    formulas: ["nutrientCost", "formulaWeight"],
    source: {
      title: "Practice problems for fertilizer analysis",
      publisher: "Iowa State University (Agronomy 354)",
      where: "problems 7 and 8 (no key in print)",
      url: "http://www.public.iastate.edu/~teloynac/354ppfert.html",
    },
    reached: "derived",
    kind: "worked example",
    given: "50 lb of 45-0-0 at 8 USD; a ton of pure K2HPO4 at 484 USD, P2O5 worth 0.38 USD/lb",
    answers: [
      { of: "USD/lb N", printed: 0.356, to: 0.001 },
      { of: "USD/lb K2O", printed: 0.161, to: 0.001 },
    ],
    compute: () => {
      const salt = 2 * 39.098 + 1.008 + 30.974 + 4 * 15.999;
      const phosphate = (((2 * 30.974 + 5 * 15.999) / 2) * 100) / salt;
      const potash = ((2 * 39.098 + 15.999) * 100) / salt;
      return [
        nutrientCost({
          product: fertilizer({ id: "u", analysis: "45-0-0" }),
          price: money(8, "USD").per(quantity(50, "lb")),
          nutrient: "N",
        }).in("money:USD/lb"),
        nutrientCost({
          product: fertilizer({
            id: "k",
            // The two oxides of the pure salt, less its water, weigh less than the salt.
            analysis: { basis: "oxide", percent: { P2O5: phosphate, K2O: potash } },
          }),
          price: perTon(484),
          nutrient: "K2O",
          worth: { P2O5: money(0.38, "USD").per(quantity(1, "lb", "P2O5")) },
        }).in("money:USD/lb"),
      ];
    },
  },
  {
    entry: "fert-051",
    formulas: ["nutrientCost"],
    source: {
      title: "Time for some fertilizer math",
      publisher: "University of Wisconsin Extension",
      where: "cost table",
      url: "http://www.uwex.edu/ces/crops/FertMath.htm",
    },
    reached: "read",
    kind: "worked example",
    given: "46 % N at 700 USD a ton; 28 % N at 600 USD a ton",
    answers: [
      { of: "USD/lb N, urea", printed: 0.76, to: 0.01 },
      { of: "USD/lb N, UAN", printed: 1.07, to: 0.01 },
    ],
    compute: () => [costOf(46, 700), costOf(28, 600)],
  },
  {
    entry: "fert-052",
    formulas: ["nutrientCost", "cheapestSource"],
    source: {
      title: "Fertilizer - buy the numbers",
      publisher: "agricultural research foundation newsletter, Oklahoma",
      year: 2007,
      where: "worked prices",
    },
    reached: "read",
    kind: "worked example",
    given: "46-0-0 at 412, 34-0-0 at 370 and 27-0-0 at 330 USD a ton",
    answers: [
      { of: "USD/lb N of 46-0-0", printed: 0.45, to: 0.01 },
      { of: "USD/lb N of 34-0-0", printed: 0.54, to: 0.01 },
      { of: "lb N in a ton of 46-0-0", printed: 920, to: 1 },
      { of: "lb N in a ton of 34-0-0", printed: 680, to: 1 },
      { of: "lb N in a ton of 27-0-0", printed: 540, to: 1 },
      { of: "place of 46-0-0 among the three", printed: 1, to: 1 },
    ],
    compute: () => {
      const offers = ([46, 34, 27] as const).map((percent, i) => ({
        product: fertilizer({ id: `n${percent}`, analysis: `${percent}-0-0` }),
        price: perTon([412, 370, 330][i] as number),
      }));
      const ranked = cheapestSource({
        target: quantity(1, "lb/1000 ft2", "N"),
        sources: [...offers].reverse(),
      });
      const inTon = (id: string, percent: number): number =>
        nutrientsSupplied(
          quantity(1, "US ton", `product:${id}` as "product:x"),
          fertilizer({ id: id as "x", analysis: `${percent}-0-0` }),
        ).N?.in("lb") ?? missing;
      return [
        ...ranked.sources.slice(0, 2).map(({ perNutrient }) => perNutrient.in("money:USD/lb" as never)),
        inTon("n46", 46),
        inTon("n34", 34),
        inTon("n27", 27),
        ranked.sources.findIndex(({ product }) => product === "n46") + 1,
      ];
    },
  },
  {
    entry: "fert-053",
    formulas: ["nutrientCost"],
    source: {
      title: "Fertilizer reckoning for the mathematically challenged",
      publisher: "Purdue University Agronomy",
      year: 2002,
      where: "example 1: lb of N per ton are printed, the prices per lb were not seen",
      url: "https://www.agry.purdue.edu/ext/corn/news/articles.02/fert_math-0326.html",
    },
    reached: "derived",
    kind: "worked example",
    given: "82-0-0 at 285 and 28-0-0 at 225 USD a ton",
    answers: [
      { of: "USD/lb N, ammonia", printed: 0.174, to: 0.001 },
      { of: "USD/lb N, UAN", printed: 0.402, to: 0.001 },
    ],
    compute: () => [costOf(82, 285), costOf(28, 225)],
  },
];
