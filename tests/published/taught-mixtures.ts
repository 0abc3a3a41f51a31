import {
  fertilizer,
  nutrientsSupplied,
  packageContents,
  packageCoverage,
  productRate,
} from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  activeInProduct,
  calibrationByCatch,
  calibrationByRefill,
  catchCourse,
} from "../../src/spray/index.js";
import { effectiveFieldCapacity } from "../../src/spread/index.js";
import { amountFor, areaPerTank, strengthForAreaRate } from "../../src/tank/index.js";
import { to } from "./answer.js";
import type { PublishedCheck } from "./check.js";

const read = "read" as const;
const source = (analysis: string) => fertilizer({ id: "a", analysis });
/** Pounds of a fertilizer on 1000 ft2 for so many pounds of nitrogen. */
const forNitrogen = (pounds: number, analysis: string) =>
  productRate(quantity(pounds, "lb/1000 ft2", "N"), source(analysis));
const inThousand = (pounds: number, analysis: string): number =>
  forNitrogen(pounds, analysis).in("lb/1000 ft2");
const water = (value: number, unit: "gal" | "fl oz") => quantity(value, unit, "water");
const liquid = (rate: number, area: { readonly value: number; readonly unit: "ft2" | "acre" }) =>
  amountFor({
    rate: quantity(rate, "fl oz/1000 ft2", "product"),
    form: "liquid",
    area: quantity(area.value, area.unit),
  });
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

/** Fertilizer as it is taught and examined. */
export const taughtNutrientChecks: readonly PublishedCheck[] = [
  {
    entry: "fert-154",
    formulas: ["nutrientsSupplied", "packageContents"],
    source: {
      title: "A 50-pound bag of 5-10-15 fertilizer contains how many pounds of nitrogen?",
      publisher: "study site for a nursery and landscape contest, Texas",
      url: "https://texasffa-nurserylandscape.examzify.com/question/a-50-pound-bag-of-6f8cf2afd77ebc7f",
    },
    reached: read,
    given: "a bag of 50 lb of 5-10-15",
    answers: [to("lb N", 2.5, 0.1)],
    compute: () => {
      const bag = fertilizer({ id: "a", analysis: "5-10-15", package: quantity(50, "lb") });
      return [nutrientsSupplied(packageContents(bag), bag).N?.in("lb") ?? Number.NaN];
    },
  },
  {
    entry: "fert-155",
    formulas: ["productRate"],
    source: {
      title: "How much fertilizer?",
      publisher: "advice page on lawns",
      url: "http://lawn.lifetips.com/tip/2634/fertilizers/fertilizers-general/how-much-fertilizer.html",
    },
    reached: read,
    given: "1 lb N/1000 ft2 from 16-4-8",
    answers: [to("lb/1000 ft2", 6.25, 0.01)],
    compute: () => [inThousand(1, "16-4-8")],
  },
  {
    entry: "fert-156",
    formulas: ["productRate"],
    source: {
      title: "Fertilizers: calculations",
      publisher: "gardening reference page",
      url: "http://plantsgalore.com/care/nutrition/fertilizers-calculations.htm",
    },
    reached: read,
    given: "1 lb N/1000 ft2 from urea, whose grade the page has as 47-0-0",
    answers: [to("lb/1000 ft2", 2.1, 0.1)],
    compute: () => [inThousand(1, "47-0-0")],
    note: "Urea is sold as 46-0-0, of which it is 2.2 lb.",
  },
  {
    entry: "fert-157",
    formulas: ["productRate", "packageCoverage"],
    source: {
      title: "How much fertilizer does it take per acre",
      publisher: "question-and-answer page",
      url: "https://answersdrive.com/how-much-fertilizer-does-it-take-per-acre-25036",
    },
    reached: read,
    given: "1 lb N/1000 ft2 from a bag of 50 lb of 26-5-10, and what the bag covers",
    answers: [
      to("lb/1000 ft2", 3.8, 0.1),
      to("ft2 a bag", 13_200, 100, {
        wrong: { right: 13_000, why: "3.846 was rounded to 3.8 before dividing" },
      }),
    ],
    compute: () => {
      const rate = forNitrogen(1, "26-5-10");
      const bag = fertilizer({ id: "a", analysis: "26-5-10", package: quantity(50, "lb") });
      return [rate.in("lb/1000 ft2"), packageCoverage(bag, rate).in("ft2")];
    },
  },
  {
    entry: "fert-158",
    formulas: ["productRate"],
    source: {
      title: "Fertilizer needed for the area (assignment on sports fields)",
      publisher: "copy of a university assignment",
      url: "https://graduatenursingtutors.com/nursing-10-3663/",
    },
    reached: read,
    given: "1 lb N/1000 ft2 from 18-3-18 on 50 by 100 ft",
    answers: [
      to("lb/1000 ft2", 5.5, 0.1, { printing: "cut" }),
      to("lb", 27.5, 0.1, { wrong: { right: 27.8, why: "5.556 was cut to 5.5 before multiplying" } }),
    ],
    compute: () => {
      const rate = forNitrogen(1, "18-3-18");
      return [rate.in("lb/1000 ft2"), rate.times(quantity(5000, "ft2")).in("lb")];
    },
  },
  {
    entry: "fert-159",
    formulas: ["productRate"],
    source: {
      title: "Spreader calibration: calibrating a granular spreader",
      publisher: "fertilizer maker's help page",
      url: "https://www.springvalleyusa.com/help-center/spreader-calibration",
    },
    reached: read,
    given: "0.8 lb N/1000 ft2 from 25-0-4",
    answers: [to("lb/1000 ft2", 3.2, 0.1)],
    compute: () => [inThousand(0.8, "25-0-4")],
  },
];

/** Calibration as it is taught and examined. */
export const taughtSprayChecks: readonly PublishedCheck[] = [
  {
    entry: "spray-182",
    formulas: ["effectiveFieldCapacity"],
    source: {
      title: "How much spray mixture is applied per acre (boom of 20 ft)",
      publisher: "study site for applicators, Michigan",
      url: "https://michigan-rightofwaypestmanagement.examzify.com/question/how-much-spray-mixture-is-a35b07acb9b1949a",
    },
    reached: read,
    given: "3 mph: feet a minute, and what 20 ft cover",
    answers: [to("ft/min", 264, 1), to("ft2/min", 5280, 1)],
    compute: () => {
      const speed = quantity(3, "mi/h");
      const swath = quantity(20, "ft");
      const covered = effectiveFieldCapacity({ swath, speed, efficiency: quantity(100, "%") });
      return [speed.in("ft/min"), covered.times(quantity(1, "min")).in("ft2")];
    },
  },
  {
    entry: "spray-183",
    formulas: ["calibrationByRefill"],
    source: {
      title: "What area is used to calibrate hand sprayers?",
      publisher: "study site for applicators, Maryland, category 3",
      url: "https://mdpesticidecategory3studyguide.examzify.com/question/what-area-is-used-to-3d639e2ffe401010",
    },
    reached: read,
    given: "a gallon on 10 by 10 ft",
    answers: [to("gal/acre", 435.6, 0.1)],
    compute: () => [
      calibrationByRefill({
        refills: [water(1, "gal")],
        course: quantity(10, "ft"),
        width: quantity(10, "ft"),
      }).rate.in("gal/acre"),
    ],
  },
  {
    entry: "spray-184",
    formulas: ["calibrationByRefill"],
    source: {
      title: "Determining your gallons per acre rate in 5 steps",
      publisher: "dealer in pest control supplies",
      url: "https://chemicalwarehouse.com/blogs/news/determining-your-gallons-per-acre-rate-in-5-steps",
    },
    reached: read,
    given: "a gallon on 1000 ft2",
    answers: [to("gal/acre", 43.56, 0.01)],
    compute: () => [
      calibrationByRefill({ refills: [water(1, "gal")], area: quantity(1000, "ft2") }).rate.in("gal/acre"),
    ],
  },
  {
    entry: "spray-185",
    formulas: ["catchCourse", "calibrationByCatch", "areaPerTank"],
    source: {
      title: "Boom sprayer calibration (turf)",
      publisher: "maker of turf herbicides",
      where: "steps 4 to 6",
      url: "http://www.dowagro.com/turf/resource/boom_sprayer.htm",
    },
    reached: read,
    given: "nozzles 20 in apart: the course; 20 fl oz from one nozzle on it; a tank of 200 gal",
    answers: [to("ft", 204, 1), to("gal/acre", 20, 1), to("acres a tank", 10, 1)],
    compute: () => {
      const width = quantity(20, "in");
      const course = catchCourse({ width });
      const { rate } = calibrationByCatch({ catches: [water(20, "fl oz")], course });
      return [
        course.course.in("ft"),
        rate.in("gal/acre"),
        areaPerTank({
          capacity: quantity(200, "gal", "spray"),
          applicationVolume: quantity(rate.in("gal/acre"), "gal/acre", "spray"),
        }).in("acre"),
      ];
    },
  },
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
  {
    entry: "spray-188",
    formulas: ["activeInProduct"],
    source: {
      title: "What is the active ingredient content in a 20-pound bag of 25W formulation?",
      publisher: "study site for applicators, California",
      url: "https://qal-lawandregulation.examzify.com/question/what-is-the-active-ingredient-dacbcae4a44c41e8",
    },
    reached: read,
    given: "20 lb of a 25W",
    answers: [to("lb ai", 5, 1)],
    compute: () => [inPowder(20, 25)],
  },
];

/** What goes into a tank, as it is taught and examined. */
export const taughtTankChecks: readonly PublishedCheck[] = [
  {
    entry: "mix-145",
    formulas: ["amountFor"],
    source: {
      title: "How many ounces of fungicide are required for a quarter acre",
      publisher: "study site for applicators, North Carolina",
      url: "https://northcarolinapesticideapp.examzify.com/question/how-many-ounces-of-fungicide-64509665636a5fd0",
    },
    reached: read,
    given: "2 fl oz/1000 ft2 on a quarter acre",
    answers: [to("ft2", 10_890, 1), to("fl oz", 21.78, 0.01)],
    compute: () => [quantity(0.25, "acre").in("ft2"), liquid(2, { value: 0.25, unit: "acre" }).in("fl oz")],
  },
  {
    entry: "mix-146",
    formulas: ["amountFor"],
    source: {
      title: "How much pesticide formulation is needed for a 10,500 square-foot lawn",
      publisher: "study site for applicators, New Jersey",
      url: "https://njpesticidecoreapplicator.examzify.com/question/how-much-pesticide-formulation-is-17e8dd09f5b8a8a4",
    },
    reached: read,
    given: "1.5 fl oz/1000 ft2 on 10,500 ft2",
    answers: [to("fl oz", 15.75, 0.01), to("pt", 0.984375, 0.000001)],
    compute: () => {
      const needed = liquid(1.5, { value: 10_500, unit: "ft2" });
      return [needed.in("fl oz"), needed.in("pt")];
    },
  },
  {
    entry: "mix-147",
    formulas: ["strengthForAreaRate"],
    source: {
      title: "Determining your gallons per acre rate in 5 steps",
      publisher: "dealer in pest control supplies",
      where: "second example",
      url: "https://chemicalwarehouse.com/blogs/news/determining-your-gallons-per-acre-rate-in-5-steps",
    },
    reached: read,
    given: "a quart an acre at 43.56 gal/acre",
    answers: [to("fl oz a gallon", 0.73, 0.01)],
    compute: () => [
      strengthForAreaRate({
        rate: quantity(1, "qt/acre", "product"),
        applicationVolume: quantity(43.56, "gal/acre", "spray"),
      }).in("fl oz/gal"),
    ],
  },
  {
    entry: "mix-148",
    formulas: ["areaPerTank", "amountFor"],
    source: {
      title: "Calibrating a sprayer on a unit-area basis",
      publisher: "question-and-answer page",
      url: "https://qammunity.org/20931393",
    },
    reached: read,
    given: "a gallon covers 200 ft2: what a tank of 10 gal covers, and what 2 oz/1000 ft2 come to",
    answers: [to("ft2", 2000, 1), to("fl oz", 4, 1)],
    compute: () => [
      areaPerTank({
        capacity: quantity(10, "gal", "spray"),
        applicationVolume: quantity(5, "gal/1000 ft2", "spray"),
      }).in("ft2"),
      liquid(2, { value: 2000, unit: "ft2" }).in("fl oz"),
    ],
  },
];
