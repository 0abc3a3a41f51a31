import {
  cheapestSource,
  costPerArea,
  elementOf,
  fertilizer,
  formFactor,
  formulaWeight,
  highestProductRatesKgPerHa,
  injectionRate,
  injector,
  liquidProductRate,
  money,
  nutrientCost,
  nutrientPerVolume,
  nutrientsSupplied,
  nutrientsSuppliedKg,
  oxideOf,
  packageCoverage,
  potentialAcidity,
  potentialAcidityOfSource,
  productNitrogen,
  productRate,
  productRatesKgPerHa,
  type Quantity,
  quantity,
  releaseClass,
  slowShareRates,
  stockFlow,
  volumeOfLiquid,
  weightOfLiquid,
} from "../../src/index.js";
import type { Answer, PublishedCheck, Source } from "./check.js";

const missing = Number.NaN;
const perTon = (dollars: number) => money(dollars, "USD").per(quantity(1, "US ton"));
const dry = (grade: string) => fertilizer({ id: "p", analysis: grade });
const liquid = (grade: string, pounds: number) =>
  fertilizer({ id: "p", form: "liquid", analysis: grade, density: quantity(pounds, "lb/gal") });
const inLb = (q: unknown): number => (q as Quantity<"mass", string> | undefined)?.in("lb") ?? missing;

/** Pounds of product for pounds of nitrogen, both on 1000 ft2. */
const poundsFor = (nitrogen: number, grade: string): number =>
  productRate(quantity(nitrogen, "lb/1000 ft2", "N"), dry(grade)).in("lb/1000 ft2");

/** A figure that is a little off in its source. */
const off = (of: string, printed: number, to: number, right: number, why: string): Answer => ({
  of,
  printed,
  to,
  wrong: { right, why },
});

/** Percent by weight of an element in a salt, from the formula. */
const share = (formula: Parameters<typeof formulaWeight>[0], element: "N" | "Na" | "K" | "S" | "Ca" | "Mg") =>
  (100 * formulaWeight({ [element]: formula[element] ?? 0 })) / formulaWeight(formula);

const nmsu: Source = {
  title: "Calculating fertilizer costs, guide A-133",
  publisher: "New Mexico State University, in a copy",
  where: "examples A and B",
  url: "https://koloroskop.com.pl/07-07/39554.html",
};
const gardenGuide = (title: string, where: string, url: string): Source => ({
  title,
  publisher: "gardening web guide",
  where,
  url,
});

/** Worked examples of rates and forms from extension pages, courses and the trade press. */
export const nutrientWorkedChecks: readonly PublishedCheck[] = [
  {
    entry: "fert-101",
    formulas: ["nutrientsSupplied", "productRate"],
    source: {
      title: "Applying fertilizers on your home gardens, bulletin 2287",
      publisher: "University of Maine Cooperative Extension",
      where: "changing fertilizer grades",
      url: "http://umaine.edu/publications/2287e/",
    },
    reached: "read",
    kind: "worked example",
    given: "an 80 lb bag of 5-10-15; 40 lb of 5-10-10 per 1000 ft2 advised, 8 % N at hand",
    answers: [
      { of: "lb N in the bag", printed: 4, to: 1 },
      { of: "lb P2O5 in the bag", printed: 8, to: 1 },
      { of: "lb K2O in the bag", printed: 12, to: 1 },
      { of: "lb/1000 ft2 of 8 % N", printed: 25, to: 1 },
    ],
    compute: () => {
      const bag = nutrientsSupplied(quantity(80, "lb", "product:p"), dry("5-10-15"));
      const advised = nutrientsSupplied(quantity(40, "lb/1000 ft2", "product:p"), dry("5-10-10")).N;
      return [
        ...[bag.N, bag.P2O5, bag.K2O].map(inLb),
        advised === undefined ? missing : productRate(advised, dry("8-0-0")).in("lb/1000 ft2"),
      ];
    },
  },
  {
    entry: "fert-102",
    formulas: ["weightOfLiquid", "nutrientsSupplied"],
    source: {
      title: "Calculating how much of an element is applied in a liquid fertilizer",
      publisher: "turfgrass science blog",
      year: 2015,
      where: "reply",
      url: "https://www.blog.asianturfgrass.com/2015/03/calculating-how-much-of-an-element-is-applied-in-a-liquid-fertilizer.html",
    },
    reached: "read",
    kind: "worked example",
    given: "6 fl oz/1000 ft2 of a liquid of 10.68 lb/gal with 4 % N and 0.4 % Mn",
    answers: [
      { of: "lb product in 1 fl oz", printed: 0.083, to: 0.001 },
      off("lb product/1000 ft2", 0.498, 0.001, 0.501, "six times the rounded 0.083"),
      { of: "lb product/1000 ft2, rounded up", printed: 0.5, to: 0.1 },
      { of: "lb Mn/1000 ft2", printed: 0.002, to: 0.001 },
      { of: "lb N/1000 ft2", printed: 0.02, to: 0.01 },
    ],
    compute: () => {
      const feed = fertilizer({
        id: "p",
        form: "liquid",
        analysis: { basis: "oxide", percent: { N: 4, Mn: 0.4 } },
        density: quantity(10.68, "lb/gal"),
      });
      const ounce = weightOfLiquid(quantity(1, "fl oz", "product:p"), feed).in("lb");
      const rate = weightOfLiquid(quantity(6, "fl oz/1000 ft2", "product:p"), feed);
      const supplied = nutrientsSupplied(rate, feed);
      const pounds = rate.in("lb/1000 ft2");
      return [
        ounce,
        pounds,
        pounds,
        supplied.Mn?.in("lb/1000 ft2") ?? missing,
        supplied.N?.in("lb/1000 ft2") ?? missing,
      ];
    },
  },
  {
    entry: "fert-103",
    formulas: ["nutrientPerVolume"],
    source: gardenGuide(
      "How to calculate liquid fertilizer",
      "step 4",
      "http://www.gardenguides.com/125745-calculate-liquid-fertilizer.html",
    ),
    reached: "read",
    kind: "worked example",
    given: "30 % N at 10.86 lb/gal",
    answers: [{ of: "lb N/gal", printed: 3.26, to: 0.01 }],
    compute: () => [nutrientPerVolume(liquid("30-0-0", 10.86), "N").in("lb/gal")],
    note: "The page also counts 4840 ft2 to the acre; that is its square yards.",
  },
  {
    entry: "fert-104",
    formulas: ["productRate"],
    source: gardenGuide(
      "How to calculate fertilizer application",
      "steps 4 and 5",
      "https://www.gardenguides.com/77841-calculate-fertilizer-application.html",
    ),
    reached: "read",
    kind: "worked example",
    given: "3 lb N/1000 ft2 from 21 % N, on 50 by 100 ft",
    answers: [
      { of: "lb/1000 ft2", printed: 14.28, to: 0.01, printing: "cut" },
      { of: "lb", printed: 71.42, to: 0.01, printing: "cut" },
    ],
    compute: () => [poundsFor(3, "21-0-0"), 5 * poundsFor(3, "21-0-0")],
  },
  {
    entry: "fert-106",
    formulas: ["productRate"],
    source: gardenGuide(
      "Estimating fertilizer amounts",
      "example",
      "http://www.aera2012.com/estimating-fertilizer-amounts/",
    ),
    reached: "read",
    kind: "worked example",
    given: "2 lb of phosphate from 20 % phosphate, per 1000 ft2 here",
    answers: [{ of: "lb", printed: 10, to: 1 }],
    compute: () => [productRate(quantity(2, "lb/1000 ft2", "P2O5"), dry("0-20-0")).in("lb/1000 ft2")],
  },
  {
    entry: "fert-109",
    formulas: ["productRate", "packageCoverage"],
    source: {
      title: "Be sure to put out the right amount of fertilizer to the lawn",
      publisher: "county extension column in a newspaper",
      year: 2017,
      where: "examples of 46-0-0 and 15-5-10",
      url: "https://www.news-journal.com/blogs/reader/entries/2017/apr/03/be-sure-to-put-out-the-right-amount-of-fertilizer-to-the-lawn/",
    },
    reached: "read",
    kind: "worked example",
    given:
      "1 lb N/1000 ft2 from 46-0-0 and from 15-5-10; a bag of 50 lb at the 2 lb/1000 ft2 that it rounds to",
    answers: [
      { of: "lb/1000 ft2 of 46-0-0", printed: 2.17, to: 0.01 },
      { of: "lb/1000 ft2 of 15-5-10", printed: 6.66, to: 0.01, printing: "cut" },
      { of: "ft2 of the bag at 2 lb", printed: 25_000, to: 1000 },
      off(
        "ft2 of the bag for 1 lb N",
        25_000,
        1000,
        23_000,
        "2.17 is rounded to 2 before the area is worked out",
      ),
    ],
    compute: () => {
      const bag = fertilizer({ id: "p", analysis: "46-0-0", package: quantity(50, "lb") });
      const one = productRate(quantity(1, "lb/1000 ft2", "N"), bag);
      return [
        one.in("lb/1000 ft2"),
        poundsFor(1, "15-5-10"),
        packageCoverage(bag, quantity(2, "lb/1000 ft2", "product:p")).in("ft2"),
        packageCoverage(bag, one).in("ft2"),
      ];
    },
  },
  {
    entry: "fert-110",
    formulas: ["nutrientCost", "nutrientsSupplied"],
    source: {
      title: "Science of agriculture: fertilizer comparison, ammonium nitrate cost",
      publisher: "open teaching module of a land-grant university",
      where: "steps 1 to 3",
      url: "https://scienceofagriculture.com/nitrogen/fertilizer/fertilizer-comparison-02.html",
    },
    reached: "read",
    kind: "worked example",
    given: "35 % N at 550 USD a ton",
    answers: [
      { of: "lb N in a ton", printed: 700, to: 1 },
      { of: "USD/lb N", printed: 0.79, to: 0.01 },
    ],
    compute: () => [
      inLb(nutrientsSupplied(quantity(1, "US ton", "product:p"), dry("35-0-0")).N),
      nutrientCost({ product: dry("35-0-0"), price: perTon(550), nutrient: "N" }).in("money:USD/lb"),
    ],
  },
  {
    entry: "fert-111",
    formulas: ["nutrientCost"],
    source: nmsu,
    reached: "read",
    kind: "worked example",
    given: "46-0-0 at 567 and 0-46-0 at 996 USD a ton",
    answers: [
      { of: "USD/lb N", printed: 0.62, to: 0.01 },
      { of: "USD/lb P2O5", printed: 1.08, to: 0.01 },
    ],
    compute: () => [
      nutrientCost({ product: dry("46-0-0"), price: perTon(567), nutrient: "N" }).in("money:USD/lb"),
      nutrientCost({ product: dry("0-46-0"), price: perTon(996), nutrient: "P2O5" }).in("money:USD/lb"),
    ],
  },
  {
    entry: "fert-112",
    formulas: ["nutrientCost", "nutrientsSupplied", "cheapestSource"],
    source: {
      title: "Calculating nutrient value in fertilizer (LaBarge)",
      publisher: "Ohio State University Extension, in a farm journal",
      year: 2024,
      where: "single and mixed nutrients, steps one and two",
      url: "https://ocj.com/2024/02/calculating-nutrient-value-in-fertilizer/",
    },
    reached: "read",
    kind: "worked example",
    given: "82-0-0 at 789 and 28-0-0 at 336 USD a ton; what a ton of 11-52-0 and of 18-46-0 holds",
    answers: [
      { of: "lb N in a ton of 82-0-0", printed: 1640, to: 1 },
      { of: "lb N in a ton of 28-0-0", printed: 560, to: 1 },
      { of: "USD/lb N of 82-0-0", printed: 0.48, to: 0.01 },
      { of: "USD/lb N of 28-0-0", printed: 0.6, to: 0.01 },
      { of: "USD/lb N dearer", printed: 0.12, to: 0.01 },
      { of: "place of 82-0-0", printed: 1, to: 1 },
      { of: "lb N in a ton of 11-52-0", printed: 220, to: 1 },
      { of: "lb P2O5 in a ton of 11-52-0", printed: 1040, to: 1 },
      { of: "lb N in a ton of 18-46-0", printed: 360, to: 1 },
      { of: "lb P2O5 in a ton of 18-46-0", printed: 920, to: 1 },
    ],
    compute: () => {
      const ton = (grade: string) => nutrientsSupplied(quantity(1, "US ton", "product:p"), dry(grade));
      const cost = (grade: string, dollars: number) =>
        nutrientCost({ product: dry(grade), price: perTon(dollars), nutrient: "N" }).in("money:USD/lb");
      const ranked = cheapestSource({
        target: quantity(1, "lb/1000 ft2", "N"),
        sources: [
          { product: fertilizer({ id: "solution", analysis: "28-0-0" }), price: perTon(336) },
          { product: fertilizer({ id: "ammonia", analysis: "82-0-0" }), price: perTon(789) },
        ],
      });
      return [
        inLb(ton("82-0-0").N),
        inLb(ton("28-0-0").N),
        cost("82-0-0", 789),
        cost("28-0-0", 336),
        cost("28-0-0", 336) - cost("82-0-0", 789),
        ranked.sources.findIndex(({ product }) => product === "ammonia") + 1,
        ...["11-52-0", "18-46-0"].flatMap((grade) => [inLb(ton(grade).N), inLb(ton(grade).P2O5)]),
      ];
    },
  },
  {
    entry: "fert-113",
    formulas: ["oxideOf", "elementOf", "nutrientsSupplied", "productRate"],
    source: {
      title: "Nutrient management course CSS 412, module 3, page 6: fertilizer P2O5",
      publisher: "Cornell University",
      where: "conversion and examples",
      url: "https://courses.cit.cornell.edu/css412/mod3/ext_m3_pg6.htm",
    },
    reached: "read",
    kind: "worked example",
    given: "1 lb of P and of P2O5; 100 lb/acre of 20-5-10; 15 lb P2O5/acre from 20-5-10",
    answers: [
      { of: "lb P2O5 for 1 lb P", printed: 2.3, to: 0.1 },
      { of: "lb P in 1 lb P2O5", printed: 0.44, to: 0.01 },
      { of: "lb N/acre", printed: 20, to: 1 },
      { of: "lb P2O5/acre", printed: 5, to: 1 },
      { of: "lb K2O/acre", printed: 10, to: 1 },
      { of: "lb product/acre", printed: 300, to: 1 },
    ],
    compute: () => {
      const supplied = nutrientsSupplied(quantity(100, "lb/acre", "product:p"), dry("20-5-10"));
      return [
        oxideOf(quantity(1, "lb", "P")).in("lb"),
        elementOf(quantity(1, "lb", "P2O5")).in("lb"),
        ...[supplied.N, supplied.P2O5, supplied.K2O].map((one) => one?.in("lb/acre") ?? missing),
        productRate(quantity(15, "lb/acre", "P2O5"), dry("20-5-10")).in("lb/acre"),
      ];
    },
  },
  {
    entry: "fert-114",
    formulas: ["oxideOf", "formFactor"],
    source: {
      title: "Recalculate the nutrient content from oxides to pure substance",
      publisher: "soil laboratory, Sweden",
      where: "factors",
      url: "https://www.lmiab.com/en/faq-items/rakna-om-naringsinnehallet-fran-oxider-till-rent-amne/",
    },
    reached: "read",
    kind: "worked example",
    given: "1 kg of P, K, Mg, Ca and S as oxides",
    answers: [
      { of: "kg P2O5", printed: 2.29, to: 0.01 },
      { of: "kg K2O", printed: 1.2, to: 0.1 },
      { of: "kg MgO", printed: 1.66, to: 0.01 },
      { of: "kg CaO", printed: 1.4, to: 0.1 },
      { of: "kg SO3", printed: 2.5, to: 0.1 },
    ],
    compute: () => [
      oxideOf(quantity(1, "kg", "P")).in("kg"),
      oxideOf(quantity(1, "kg", "K")).in("kg"),
      oxideOf(quantity(1, "kg", "Mg")).in("kg"),
      oxideOf(quantity(1, "kg", "Ca")).in("kg"),
      formFactor("S", "SO3") ?? missing,
    ],
  },
  {
    entry: "fert-115",
    formulas: ["volumeOfLiquid", "productRate"],
    source: {
      title: "Fertigation calculations (Sne)",
      publisher: "lecture slides in a document archive",
      year: 2013,
      where: "slides 4 and 6, examples",
      url: "https://pdfcoffee.com/fertigation-calculations-2013-pdf-free.html",
    },
    reached: "read",
    kind: "worked example",
    given:
      "50 kg of N, on a hectare here, from ammonium sulfate of 21 % N; 250 kg of a solution of 1.27 kg/L",
    answers: [
      { of: "kg", printed: 238.1, to: 0.1 },
      { of: "L", printed: 196.8, to: 0.1, printing: "cut" },
    ],
    compute: () => {
      const solution = fertilizer({
        id: "p",
        form: "liquid",
        analysis: "21-0-0",
        density: quantity(1.27, "kg/L"),
      });
      return [
        productRate(quantity(50, "kg/ha", "N"), dry("21-0-0")).in("kg/ha"),
        volumeOfLiquid(quantity(250, "kg", "product:p"), solution).in("L"),
      ];
    },
  },
  {
    entry: "fert-116",
    formulas: ["stockFlow", "injector"],
    source: {
      title: "Open-field fertigation: calculations and results",
      publisher: "fertilizer company page",
      where: "injection rate",
    },
    reached: "read",
    kind: "worked example",
    given: "1000 L of stock into 360 000 L of water in two hours, so 1:360 at 180 m3/h",
    answers: [
      { of: "parts of water for one of stock", printed: 360, to: 1 },
      { of: "L of stock for 1000 L of water", printed: 2.8, to: 0.1 },
      off(
        "L/h of stock",
        496,
        1,
        500,
        "1000 L in two hours are 500 L/h; 180 times the rounded 2.8, its own product, is 504",
      ),
    ],
    compute: () => {
      const setting = injector("1:360");
      const stock = (flow: number) => stockFlow({ flow: quantity(flow, "L/h"), injector: setting }).in("L/h");
      return [setting.dilution, stock(1000), stock(180_000)];
    },
  },
  {
    entry: "fert-117",
    formulas: ["injectionRate"],
    source: {
      title: "Calculating chemigation injection rates, FS035E",
      publisher: "Washington State University Extension",
      where: "injection rates by fluid volume, equation 1",
      url: "https://pt.scribd.com/document/361125778/Calculating-Chemigation-Injection-Rates",
    },
    reached: "read",
    kind: "worked example",
    given: "350 gal in 22 h, over 125 acres here: the area cancels",
    answers: [{ of: "gal/h", printed: 15.9, to: 0.1 }],
    compute: () => [
      injectionRate({
        application: quantity(350 / 125, "gal/acre", "product"),
        covered: quantity(125 / 22, "acre/h"),
      }).in("gal/h"),
    ],
  },
  {
    entry: "fert-118",
    formulas: ["injectionRate"],
    source: {
      title: "How to determine the chemigation injection pump setting for a center pivot",
      publisher: "University of Nebraska-Lincoln CropWatch",
      year: 2023,
      where: "example",
      url: "https://cropwatch.unl.edu/2023/how-determine-chemigation-injection-pump-setting-center-pivot-end-gun-and",
    },
    reached: "read",
    kind: "worked example",
    given: "10 gal/acre at 5 acres an hour",
    answers: [{ of: "gal/h", printed: 50, to: 1 }],
    compute: () => [
      injectionRate({
        application: quantity(10, "gal/acre", "product"),
        covered: quantity(5, "acre/h"),
      }).in("gal/h"),
    ],
  },
  {
    entry: "fert-119",
    formulas: ["costPerArea", "liquidProductRate", "nutrientPerVolume"],
    source: {
      title: "How much organic fertilizer do you need to supply the right nitrogen rate?",
      publisher: "farm stewardship association, Carolina",
      where: "example one",
      url: "https://www.carolinafarmstewards.org/how-much-organic-fertilizer-do-you-need-to-supply-the-right-nitrogen-rate/",
    },
    reached: "read",
    kind: "worked example",
    given: "20 lb N/acre from a 5-1-1 fish emulsion of 10 lb/gal at 20 USD/gal",
    answers: [
      { of: "lb N/gal", printed: 0.5, to: 0.1 },
      { of: "gal/acre", printed: 40, to: 1 },
      { of: "USD/acre", printed: 800, to: 1 },
    ],
    compute: () => {
      const fish = liquid("5-1-1", 10);
      const rate = liquidProductRate(quantity(20, "lb/acre", "N"), fish);
      const cost = costPerArea({ product: fish, rate, price: money(20, "USD").per(quantity(1, "gal")) });
      return [nutrientPerVolume(fish, "N").in("lb/gal"), rate.in("gal/acre"), cost.in("money:USD/acre")];
    },
  },
  {
    entry: "fert-120",
    formulas: ["productRatesKgPerHa", "nutrientsSuppliedKg"],
    source: {
      title: "Calculations for the use of fertilizer solutions",
      publisher: "fertilizer company page",
      where: "example for field crops",
    },
    reached: "read",
    kind: "worked example",
    given: "60 kg N/ha from 14-28-18 and 210 kg N/ha from 21-7-21, the second in ten weeks",
    answers: [
      { of: "kg/ha of 14-28-18", printed: 430, to: 10 },
      { of: "kg P2O5/ha with it", printed: 120, to: 1 },
      { of: "kg/ha of 21-7-21", printed: 1000, to: 1 },
      { of: "kg P2O5/ha with it", printed: 70, to: 1 },
      { of: "kg K2O/ha with it", printed: 210, to: 1 },
      { of: "kg/ha a week", printed: 100, to: 1 },
    ],
    compute: () => {
      const [base] = productRatesKgPerHa(Float64Array.of(60), 14);
      const [top] = productRatesKgPerHa(Float64Array.of(210), 21);
      const carried = (rate: number | undefined, percent: number) =>
        nutrientsSuppliedKg({
          rateKgPerHa: Float64Array.of(rate ?? missing),
          areaM2: Float64Array.of(10_000),
          percent,
        })[0] ?? missing;
      return [
        base ?? missing,
        carried(base, 28),
        top ?? missing,
        carried(top, 7),
        carried(top, 21),
        (top ?? missing) / 10,
      ];
    },
  },
  {
    entry: "fert-121",
    formulas: ["productRate"],
    source: {
      title: "Fertilizer math",
      publisher: "sports field magazine",
      where: "first answer",
      url: "https://www.socalsfma.com/articles/fertilizer-math",
    },
    reached: "read",
    kind: "worked example",
    given: "0.9 lb N/1000 ft2 from 20-5-10",
    answers: [{ of: "lb/1000 ft2", printed: 4.5, to: 0.1 }],
    compute: () => [poundsFor(0.9, "20-5-10")],
  },
  {
    entry: "fert-122",
    formulas: ["productRate"],
    source: {
      title: "A practical method of rotary spreader calibration (Schlossberg)",
      publisher: "Pennsylvania Turfgrass, reprinted in North Carolina Turfgrass",
      year: 2022,
      where: "first step, figure 1",
      url: "https://issuu.com/leadingedgepubs/docs/nc-turfgrass-2023-jan-feb/s/17903123",
    },
    reached: "read",
    kind: "worked example",
    given: "2 lb K2O/1000 ft2 from 0-0-22",
    answers: [{ of: "lb/1000 ft2", printed: 9.1, to: 0.1 }],
    compute: () => [productRate(quantity(2, "lb/1000 ft2", "K2O"), dry("0-0-22")).in("lb/1000 ft2")],
  },
  {
    entry: "fert-123",
    formulas: ["productNitrogen", "releaseClass"],
    source: {
      title: "Water insoluble nitrogen",
      publisher: "lawn care guide",
      where: "example of 25-3-7",
      url: "http://www.lawn-moweronline.com/water-insoluble-nitrogen/",
    },
    reached: "read",
    kind: "worked example",
    given:
      "25-3-7 with 7.6 % water-insoluble nitrogen; more than 30 % of the nitrogen is slow, 15 to 30 % medium",
    answers: [
      { of: "% of the nitrogen insoluble", printed: 30.4, to: 0.1 },
      off(
        "class: slow 3, medium 2, quick 1",
        2,
        1,
        3,
        "the text calls it medium, at the high end; 30.4 % is over its own bound of 30 %",
      ),
    ],
    compute: () => {
      const product = fertilizer({
        id: "p",
        analysis: "25-3-7",
        nitrogen: { percent: { urea: 17.4, waterInsoluble: 7.6 } },
      });
      const found = productNitrogen(product);
      const place = ["quick", "moderate", "slow"].indexOf(releaseClass(found, "thirty percent").class) + 1;
      return [found.waterInsolubleShare?.in("% w/w") ?? missing, place];
    },
  },
  {
    entry: "fert-006",
    formulas: ["slowShareRates"],
    source: {
      title: "Four steps in fertilizer calculations (turf management lecture)",
      publisher: "university lecture in a document archive",
      where: "example 1, harder version",
    },
    reached: "read",
    kind: "worked example",
    given: "15 000 ft2, 1 lb N/1000 ft2, 75 % of it slow, from 31-0-0, taken as wholly slow, and 46-0-0",
    answers: [
      { of: "lb N from the slow source", printed: 11.25, to: 0.01 },
      { of: "lb N from urea", printed: 3.75, to: 0.01 },
      { of: "lb of 31-0-0", printed: 36.3, to: 0.1 },
      { of: "lb of 46-0-0", printed: 8.2, to: 0.1 },
    ],
    compute: () => {
      const slow = fertilizer({ id: "slow", analysis: "31-0-0", nitrogen: { percent: { coated: 31 } } });
      const parts = slowShareRates({
        target: quantity(1, "lb/1000 ft2", "N"),
        slowShare: quantity(75, "% w/w", "N:slow/N"),
        products: [slow, fertilizer({ id: "urea", analysis: "46-0-0" })],
      });
      return [
        ...parts.map(({ part }) => 15 * part.in("lb/1000 ft2")),
        ...parts.map(({ rate }) => 15 * rate.in("lb/1000 ft2")),
      ];
    },
  },
  {
    entry: "fert-046",
    formulas: ["highestProductRatesKgPerHa"],
    source: {
      title: "Code of ordinances, 19-247",
      publisher: "Marion County, Florida",
      year: 2008,
      where: "section text",
      url: "http://marioncounty-fl.elaws.us/code/coor_ch19_artv_sec19-247",
    },
    reached: "read",
    kind: "round trip",
    given:
      "10-10-10, all quick, and 30-2-10 with 30 % slow, under 0.7 lb soluble N, 1.0 lb N and 0.25 lb P2O5/1000 ft2, as arrays in kg/ha",
    answers: [
      { of: "lb P2O5/1000 ft2 of 10-10-10", printed: 0.25, to: 0.01 },
      { of: "lb N/1000 ft2 of 30-2-10", printed: 1, to: 0.1 },
      { of: "lb soluble N/1000 ft2 of 30-2-10", printed: 0.7, to: 0.1 },
    ],
    compute: () => {
      const limit = (pounds: number) => Float64Array.of(quantity(pounds, "lb/1000 ft2", "N").in("kg/ha"));
      const under = (total: number, soluble: number, phosphate: number) => {
        const [rate] = highestProductRatesKgPerHa([
          { limitKgPerHa: limit(1), percent: total },
          { limitKgPerHa: limit(0.7), percent: soluble },
          { limitKgPerHa: limit(0.25), percent: phosphate },
        ]);
        return quantity(rate ?? missing, "kg/ha", "product").in("lb/1000 ft2");
      };
      const coated = under(30, 21, 2);
      return [0.1 * under(10, 10, 10), 0.3 * coated, 0.21 * coated];
    },
  },
  {
    entry: "fert-124",
    formulas: ["potentialAcidityOfSource", "formulaWeight"],
    source: {
      title:
        "Relative lime needs of sulfate of ammonia and nitrate of soda and of different crops (Hartwell and Damon)",
      publisher: "Agronomy Journal 19:843-849",
      year: 1927,
      where: "abstract",
      url: "https://pubag.nal.usda.gov/catalog/1382028",
    },
    reached: "read",
    kind: "worked example",
    given: "1 lb of nitrogen as ammonium sulfate, completely oxidized",
    answers: [{ of: "lb CaO", printed: 4, to: 1 }],
    compute: () => {
      const acidity = potentialAcidityOfSource({
        source: "ammonium sulfate",
        convention: "full nitrification",
      }).in("lb/lb");
      return [(acidity * formulaWeight({ Ca: 1, O: 1 })) / formulaWeight({ Ca: 1, C: 1, O: 3 })];
    },
  },
  {
    entry: "fert-125",
    formulas: ["potentialAcidity", "formulaWeight"],
    source: {
      title: "Acidity and alkalinity of fertilizer materials",
      publisher: "organic amendment supplier's page",
      where: "table, pounds of lime per 100 lb",
      url: "http://norganics.com/index-2/technical-articles/acidityalkalinity-of-fertilizer-materials",
    },
    reached: "read",
    kind: "worked example",
    given:
      "pure salts from their formulas, ammonium nitrate of 33.5 % N, half nitrogen credit; here as in the table a base counts above zero",
    answers: [
      { of: "ammonium nitrate", printed: -60, to: 1 },
      { of: "sodium nitrate", printed: 29, to: 1 },
      { of: "Epsom salt", printed: 0, to: 1 },
      { of: "gypsum", printed: 0, to: 1 },
      { of: "potassium sulfate", printed: 0, to: 1 },
      { of: "magnesium oxide", printed: 250, to: 10 },
      off(
        "sulfur",
        -218,
        1,
        -312,
        "32.06 g of sulfur make the acid that 100.09 g of calcium carbonate neutralize; 218 fits a material with 70 % sulfur",
      ),
    ],
    compute: () => {
      const epsom = { Mg: 1, S: 1, O: 11, H: 14 } as const;
      const gypsum = { Ca: 1, S: 1, O: 6, H: 4 } as const;
      const sulfate = { K: 2, S: 1, O: 4 } as const;
      const soda = { Na: 1, N: 1, O: 3 } as const;
      return [
        { N: 33.5 },
        { N: share(soda, "N"), Na: share(soda, "Na") },
        { Mg: share(epsom, "Mg"), S: share(epsom, "S") },
        { Ca: share(gypsum, "Ca"), S: share(gypsum, "S") },
        { K: share(sulfate, "K"), S: share(sulfate, "S") },
        { Mg: share({ Mg: 1, O: 1 }, "Mg") },
        { S: 100 },
      ].map((percent) => -potentialAcidity({ percent, convention: "half nitrogen credit" }).in("% w/w"));
    },
    note: "Materials whose composition the table leaves open (urea, calcium nitrate, phosphates, meals) are not checked.",
  },
  {
    entry: "fert-127",
    formulas: ["productRate"],
    source: {
      title: "Calculating fertilizer requirements",
      publisher: "sports field contractor's page, after Purdue University AY-22",
      where: "steps 1 and 2",
      url: "https://trumarkathletics.com/our-blog.aspx?post=4414&title=Calculating-Fertilizer-Requirements",
    },
    reached: "read",
    kind: "worked example",
    given: "0.75 lb N/1000 ft2 from 16-8-8, on 8000 ft2",
    answers: [
      { of: "lb/1000 ft2", printed: 4.69, to: 0.01 },
      { of: "lb", printed: 37, to: 1, printing: "cut" },
    ],
    compute: () => [poundsFor(0.75, "16-8-8"), 8 * poundsFor(0.75, "16-8-8")],
  },
  {
    entry: "fert-128",
    formulas: ["productRate"],
    source: {
      title: "Rotary spreader calibration: formulas",
      publisher: "spreader maker's page",
      where: "two examples",
      url: "https://jeinc.publishpath.com/Default.aspx?shortcut=rotaryformulas",
    },
    reached: "read",
    kind: "worked example",
    given: "1.5 lb N/1000 ft2 from 46-0-0; 1 lb from 28-3-4",
    answers: [
      { of: "lb/1000 ft2 of 46-0-0", printed: 3.26, to: 0.01 },
      { of: "lb/1000 ft2 of 28-3-4", printed: 3.57, to: 0.01 },
    ],
    compute: () => [poundsFor(1.5, "46-0-0"), poundsFor(1, "28-3-4")],
  },
  {
    entry: "fert-129",
    formulas: ["weightOfLiquid", "nutrientsSupplied", "elementOf"],
    source: {
      title: "How to calculate the amount of N-P-K-S applied from the amount of a specific fertilizer",
      publisher: "agronomist's blog",
      year: 2023,
      where: "liquid form, solid form",
      url: "https://larswrites.com/2023/09/01/how-to-calculate-the-amount-of-n-p-k-s-applied-from-the-amount-of-a-specific-fertilizer",
    },
    reached: "read",
    kind: "worked example",
    given: "10 gal/acre of 11-34-0 of 11.7 lb/gal; 100 lb of 14-14-14",
    answers: [
      { of: "lb product/acre", printed: 117, to: 1 },
      off("lb N/acre", 11.7, 0.1, 12.9, "117 lb with 11 % N hold 12.87 lb; 11.7 is a tenth of the product"),
      { of: "lb P2O5/acre", printed: 39.78, to: 0.01 },
      off("lb P/acre", 17.37, 0.01, 17.36, "the source takes 2.29 for 2.2913"),
      off("kg P/ha", 19.45, 0.01, 19.46, "the source takes 2.29 for 2.2913 and 1.12 for 1.12085"),
      { of: "lb N in 100 lb", printed: 14, to: 1 },
    ],
    compute: () => {
      const feed = liquid("11-34-0", 11.7);
      const rate = weightOfLiquid(quantity(10, "gal/acre", "product:p"), feed);
      const { N, P2O5 } = nutrientsSupplied(rate, feed);
      const phosphorus = P2O5 && elementOf(P2O5);
      return [
        rate.in("lb/acre"),
        N?.in("lb/acre") ?? missing,
        P2O5?.in("lb/acre") ?? missing,
        phosphorus?.in("lb/acre") ?? missing,
        phosphorus?.in("kg/ha") ?? missing,
        inLb(nutrientsSupplied(quantity(100, "lb", "product:p"), dry("14-14-14")).N),
      ];
    },
  },
  {
    entry: "fert-130",
    formulas: ["productRate", "nutrientsSupplied"],
    source: {
      title: "Farm measurement equivalents for the home gardener",
      publisher: "crop adviser's page",
      where: "fertilizer equivalents",
      url: "https://cropideas.net/gardenmeasure.html",
    },
    reached: "read",
    kind: "worked example",
    given: "1 lb of N, phosphate, potash or sulfur per 1000 ft2, in whole and half pounds",
    answers: [
      { of: "lb of 46-0-0", printed: 2, to: 1 },
      { of: "lb of 34-0-0", printed: 3, to: 1 },
      off("lb of 21-0-0", 4, 1, 5, "100 / 21 is 4.76: 4 lb are 0.84 lb N"),
      { of: "lb of 18-46-0", printed: 2, to: 1 },
      { of: "lb of 11-52-0", printed: 2, to: 1 },
      { of: "lb of 0-45-0", printed: 2, to: 1 },
      { of: "lb of 0-0-60", printed: 1.5, to: 0.5 },
      { of: "lb of sulfur of 90 %", printed: 1, to: 1 },
      { of: "lb of ammonium sulfate, 24 % S", printed: 4, to: 1 },
      { of: "lb S in 4 lb of it", printed: 1, to: 1 },
    ],
    compute: () => {
      const phosphate = quantity(1, "lb/1000 ft2", "P2O5");
      const sulfur = quantity(1, "lb/1000 ft2", "S");
      const material = (percent: Readonly<Record<string, number>>) =>
        fertilizer({ id: "p", analysis: { basis: "oxide", percent } });
      const sulfate = material({ N: 21, S: 24 });
      return [
        ...["46-0-0", "34-0-0", "21-0-0"].map((grade) => poundsFor(1, grade)),
        productRate(phosphate, dry("0-46-0")).in("lb/1000 ft2"),
        productRate(phosphate, dry("0-52-0")).in("lb/1000 ft2"),
        productRate(phosphate, dry("0-45-0")).in("lb/1000 ft2"),
        productRate(quantity(1, "lb/1000 ft2", "K2O"), dry("0-0-60")).in("lb/1000 ft2"),
        productRate(sulfur, material({ S: 90 })).in("lb/1000 ft2"),
        productRate(sulfur, sulfate).in("lb/1000 ft2"),
        inLb(nutrientsSupplied(quantity(4, "lb", "product:p"), sulfate).S),
      ];
    },
  },
];
