import { quantity } from "../../src/quantity/index.js";
import {
  areaForFlow,
  catchCanTest,
  catchDepth,
  christiansenUniformity,
  depthFromFlow,
  distributionUniformity,
  flowForDepth,
  irrigationTime,
  matchedPrecipitation,
  precipitationRate,
  runTime,
  schedulingCoefficient,
  waterDepth,
  waterVolume,
  zonePrecipitation,
} from "../../src/water/index.js";
import type { PublishedCheck, Source } from "./check.js";

const gpm = (value: number) => quantity(value, "gal/min", "water");
const ft2 = (value: number) => quantity(value, "ft2");
const inches = (value: number) => quantity(value, "in");
const mmPerHour = (value: number) => quantity(value, "mm/h");

const davis = (where: string): Source => ({
  title: "Irrigation water management made simple (Drought Tip 92-29)",
  publisher: "University of California, Davis (LAWR)",
  year: 1992,
  where,
  url: "https://lawr.ucdavis.edu/cooperative-extension/irrigation/drought-tips/irrigation-water-management-made-simple",
});
const davisConstant =
  "the source takes 449 for the constant 452.57: it lets 1 ft3/s be 1 acre-in an hour, which is 0.992";

const heads = [360, 180, 90].map((arc) => ({
  flow: gpm(arc / 90),
  radius: quantity(30, "ft"),
  arc: quantity(arc, "deg"),
}));
const matched = () => matchedPrecipitation({ heads }).heads;

const fifteenCans = [47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12, 12].map((value) =>
  quantity(value, "mL", "water"),
);
const carolina = (where: string): Source => ({
  title: "Reference pages on catch-can data of sprinkler systems",
  publisher: "North Carolina State University",
  where,
});

const design: Source = {
  title: "Design considerations: scheduling coefficient",
  publisher: "horticulture course page, publisher not shown",
  where: "item 4",
};

/** Published checks of depths, rates, run times and uniformity. */
export const waterChecks: readonly PublishedCheck[] = [
  {
    entry: "site-055",
    formulas: ["zonePrecipitation"],
    source: {
      title: "Sprinkler precipitation rates",
      publisher: "irrigation course slides",
      where: "slides 4-5",
    },
    reached: "read",
    given: "six heads of 1.0 and four of 0.5 gal/min on 60 by 15 ft",
    answers: [
      { of: "gal/min", printed: 8, to: 0.1 },
      { of: "in/h", printed: 0.86, to: 0.01 },
    ],
    compute: () => {
      const zone = zonePrecipitation({
        heads: [
          { count: 6, flow: gpm(1) },
          { count: 4, flow: gpm(0.5) },
        ],
        area: ft2(900),
      });
      return [zone.flow.in("gal/min"), zone.rate.in("in/h")];
    },
  },
  {
    entry: "site-057",
    formulas: ["precipitationRate"],
    source: {
      title: "Determine your sprinkler system's precipitation rate",
      publisher: "public utility district",
      where: "example",
    },
    reached: "read",
    given: "10 gal/min on 1000 ft2",
    answers: [{ of: "in/h", printed: 0.9625, to: 0.0001 }],
    compute: () => [precipitationRate({ flow: gpm(10), area: ft2(1000) }).in("in/h")],
  },
  {
    entry: "site-058",
    formulas: ["matchedPrecipitation"],
    source: {
      title: "The basics of matched precipitation (irrigation notes)",
      publisher: "trade article, stored copy",
      where: "worked figures",
    },
    reached: "read",
    given: "heads of 30 ft radius: a full circle of 4, a half of 2, a quarter of 1 gal/min",
    answers: [
      { of: "ft2, full circle", printed: 2827, to: 1 },
      { of: "ft2, half circle", printed: 1414, to: 1 },
      { of: "in/h, full circle", printed: 0.136, to: 0.001 },
      { of: "in/h, half circle", printed: 0.136, to: 0.001 },
      { of: "in/h, quarter circle", printed: 0.136, to: 0.001 },
    ],
    compute: () => [
      ...matched()
        .slice(0, 2)
        .map(({ area }) => area.in("ft2")),
      ...matched().map(({ rate }) => rate.in("in/h")),
    ],
    note: "The area of the quarter circle is not printed.",
  },
  {
    entry: "site-060",
    formulas: ["catchDepth"],
    source: {
      title: "Catch can, normal",
      publisher: "turfgrass information center, photo caption",
      where: "caption",
    },
    reached: "read",
    given: "52 mL in a can of 262 mL to the inch",
    answers: [{ of: "in", printed: 0.2, to: 0.1 }],
    compute: () => [
      catchDepth({
        volume: quantity(52, "mL", "water"),
        // 262 mL to the inch of depth: 262 cm3 by 2.54 cm
        opening: quantity(262 / 2.54, "cm2"),
      }).in("in"),
    ],
  },
  {
    entry: "site-061",
    formulas: ["distributionUniformity"],
    source: {
      title: "How is distribution uniformity calculated from a catch-can test",
      publisher: "technician exam study page",
      where: "explanation",
    },
    reached: "read",
    given: "the lowest quarter has a mean of 0.68 in, all cans 0.70 in",
    answers: [{ of: "%", printed: 97, to: 1 }],
    compute: () => {
      const rest = (4 * 0.7 - 0.68) / 3;
      return [distributionUniformity({ catches: [0.68, rest, rest, rest].map(inches) }).in("%")];
    },
    note: "Only the two means are printed, so four cans stand for them: one at 0.68 in, three that bring the mean to 0.70.",
  },
  {
    entry: "site-063",
    formulas: ["schedulingCoefficient", "runTime"],
    source: design,
    reached: "read",
    given: "a mean rate of 12 mm/h, 7 mm/h where it is driest, 9 mm a day",
    answers: [
      { of: "times", printed: 1.7, to: 0.1 },
      { of: "h, with the printed 1.7", printed: 1.3, to: 0.1 },
      { of: "h, end to end", printed: 1.3, to: 0.1 },
    ],
    compute: () => {
      const coefficient = schedulingCoefficient({ mean: mmPerHour(12), driest: mmPerHour(7) });
      const hours = (multiplier: number) =>
        runTime({ depth: quantity(9, "mm"), rate: mmPerHour(12), multiplier }).in("h");
      return [coefficient, hours(1.7), hours(coefficient)];
    },
  },
  {
    entry: "site-064",
    formulas: ["depthFromFlow", "irrigationTime"],
    source: davis("Example 1"),
    reached: "read",
    given: "300 gal/min for 220 h on 40 acres: depth",
    answers: [{ of: "in", printed: 3.7, to: 0.1, wrong: { right: 3.6, why: davisConstant } }],
    compute: () => [
      depthFromFlow({ flow: gpm(300), time: quantity(220, "h"), area: quantity(40, "acre") }).in("in"),
    ],
  },
  {
    entry: "site-064",
    formulas: ["flowForDepth"],
    source: davis("Example 2"),
    reached: "read",
    given: "3 in on 100 acres in 180 h: flow",
    answers: [{ of: "gal/min", printed: 748, to: 1, wrong: { right: 754, why: davisConstant } }],
    compute: () => [
      flowForDepth({ area: quantity(100, "acre"), depth: inches(3), time: quantity(180, "h") }).in("gal/min"),
    ],
  },
  {
    entry: "site-064",
    formulas: ["areaForFlow", "irrigationTime"],
    source: davis("Example 3, its result cut off in the copy that was read; derived with the exact constant"),
    reached: "derived",
    given: "200 gal/min for 120 h, 3 in deep: acres; and back to the hours",
    answers: [
      { of: "acres", printed: 17.68, to: 0.01 },
      { of: "h", printed: 120, to: 1 },
    ],
    compute: () => {
      const area = areaForFlow({ flow: gpm(200), time: quantity(120, "h"), depth: inches(3) });
      return [area.in("acre"), irrigationTime({ flow: gpm(200), area, depth: inches(3) }).in("h")];
    },
  },
  {
    entry: "site-066",
    formulas: ["waterVolume", "waterDepth"],
    source: {
      title: "Supplemental water requirements",
      publisher: "plant introduction program",
      where: "conversions",
    },
    reached: "read",
    given: "one inch on one square foot in gallons; one gallon on one square foot in inches",
    answers: [
      { of: "gal", printed: 0.623, to: 0.001 },
      {
        of: "in",
        printed: 1.61,
        to: 0.01,
        wrong: {
          right: 1.6,
          why: "231/144 is 1.604; 1.61 is 1/0.62, the factor rounded before it was turned",
        },
      },
    ],
    compute: () => [
      waterVolume({ depth: inches(1), area: ft2(1) }).in("gal"),
      waterDepth({ volume: quantity(1, "gal", "water"), area: ft2(1) }).in("in"),
    ],
  },
  {
    entry: "site-067",
    formulas: ["waterVolume", "waterDepth"],
    source: {
      title: "Establish and manage your home lawn (P1322)",
      publisher: "Mississippi State University Extension",
      where: "introduction",
      url: "http://extension.msstate.edu/publications/establish-and-manage-your-home-lawn?page=5",
    },
    reached: "read",
    given: "the most that a lawn of 5000 ft2 uses on a hot day, at 10.7 mm",
    answers: [
      {
        of: "gal",
        printed: 3000,
        to: 100,
        wrong: {
          right: 1300,
          why: "3000 gal on 5000 ft2 is 24 mm; the review of Romero and Dukes (2016) found 10.7 mm a day at most",
        },
      },
    ],
    compute: () => [waterVolume({ depth: quantity(10.7, "mm"), area: ft2(5000) }).in("gal")],
  },
  {
    entry: "water-001",
    formulas: ["distributionUniformity", "catchCanTest"],
    source: carolina("distribution uniformity of the low quarter"),
    reached: "read",
    given: "47, 42, 45, 24, 13, 26, 33, 34, 27, 30, 40, 44, 32, 12 and 12 mL in 15 cans",
    answers: [
      { of: "%, lower quarter", printed: 49.62039, to: 0.00001 },
      { of: "%, lower quarter, from the whole test", printed: 49.62, to: 0.01 },
    ],
    compute: () => [
      distributionUniformity({ catches: fifteenCans }).in("%"),
      catchCanTest({
        catches: fifteenCans,
        time: quantity(15, "min"),
        opening: quantity(16, "in2"),
      }).lowerQuarter.in("%"),
    ],
    note: "15 cans by 4 is 3.75: the nearest number, 4, is the lowest quarter.",
  },
  {
    entry: "water-002",
    formulas: ["distributionUniformity"],
    source: carolina("distribution uniformity of the lower half"),
    reached: "read",
    given: "the same 15 cans",
    answers: [{ of: "%, lower half", printed: 71.58351, to: 0.00001 }],
    compute: () => [distributionUniformity({ catches: fifteenCans, part: "lower half" }).in("%")],
    note: "15 cans by 2 is 7.5: 8 cans are taken.",
  },
  {
    entry: "water-003",
    formulas: ["christiansenUniformity"],
    source: carolina("coefficient of uniformity"),
    reached: "read",
    given: "the same 15 cans",
    answers: [{ of: "%", printed: 69.13955, to: 0.00001 }],
    compute: () => [christiansenUniformity({ catches: fifteenCans }).in("%")],
  },
];
