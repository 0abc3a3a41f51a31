import {
  coverOfPatches,
  nurseryArea,
  plantsFor,
  plantsPerArea,
  quantity,
  sodOrder,
  spreadRateFromPatch,
  sprigBushelsOf,
  sprigsFor,
  staggeredRowSpacing,
} from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

const inches = (value: number) => quantity(value, "in");
const perFt2 = (spacing: number): number =>
  plantsPerArea({ pattern: "square", spacing: inches(spacing) }).in("count/ft2");
const plants = (area: number, spacing: number): number =>
  plantsFor({ area: quantity(area, "ft2"), pattern: "square", spacing: inches(spacing) }).plants;
const noWaste = quantity(0, "%");

const usga = {
  title: "Converting to bermudagrass fairways",
  publisher: "USGA Green Section Record 60(14)",
  where: "Recommended sprig rate",
  url: "https://usga.org/content/usga/home-page/course-care/green-section-record/60/14/converting-to-bermudagrass-fairways.html",
};

/** Published examples of planting: plants by spacing, sod, sprigs; and how much of the ground patches cover. */
export const plantingChecks: readonly PublishedCheck[] = [
  {
    entry: "site-050",
    formulas: ["sprigsFor", "sprigBushelsOf"],
    source: {
      title: "Bushel of sprigs: definitions",
      publisher: "a planting contractor and a state forest service, side by side",
    },
    reached: "read",
    kind: "transcription",
    given: "the size of a US bushel, a Georgia bushel, and 32 quarts by the forest service",
    answers: [
      { of: "ft3, US", printed: 1.244456, to: 1e-6 },
      { of: "ft3, Georgia", printed: 0.32, to: 0.01 },
      {
        of: "ft3, 32 quarts",
        printed: 1.25,
        to: 0.01,
        wrong: { right: 1.24, why: "32 dry quarts are the US bushel, 1.2445 ft3" },
      },
    ],
    compute: () => {
      const us = sprigsFor({
        area: quantity(1, "acre"),
        rate: quantity(1, "count/acre"),
        bushel: quantity(1, "bu"),
      }).volume.in("ft3");
      return [us, sprigBushelsOf("Georgia")[0]?.low.in("ft3") ?? 0, us];
    },
  },
  {
    entry: "site-051",
    formulas: ["plantsPerArea"],
    source: {
      title: "How many St. Augustine plugs do I need",
      publisher: "general information page",
      where: "formula and example",
      url: "https://biologyinsights.com/how-many-st-augustine-plugs-do-i-need",
    },
    reached: "read",
    given: "ft2 a plug at 1 ft and at 1.5 ft",
    answers: [
      { of: "ft2", printed: 1, to: 0.1 },
      { of: "ft2", printed: 2.25, to: 0.01 },
    ],
    compute: () => [1 / perFt2(12), 1 / perFt2(18)],
  },
  {
    entry: "site-054",
    formulas: ["sodOrder"],
    source: { title: "How much ground does a pallet of sod cover", publisher: "garden information page" },
    reached: "read",
    given: "50 pieces of 1.5 by 6 ft",
    answers: [
      { of: "ft2 a piece", printed: 9, to: 1 },
      { of: "ft2 a pallet", printed: 450, to: 1 },
    ],
    compute: () => {
      const { piece, pallet } = sodOrder({
        area: quantity(450, "ft2"),
        waste: noWaste,
        piece: { length: quantity(6, "ft"), width: quantity(1.5, "ft") },
        pallet: { pieces: 50 },
      });
      return [piece?.in("ft2") ?? 0, pallet?.in("ft2") ?? 0];
    },
  },
  {
    entry: "stand-012",
    formulas: ["plantsFor"],
    source: {
      title: "Groundcover spacing chart",
      publisher: "planting guide of a perennial grower",
      url: "https://gloverperennials.com/?p=2150",
    },
    reached: "read",
    given: "plants for an area in ft2 at a spacing in inches",
    answers: [
      { of: "100 ft2 at 6 in", printed: 400, to: 1 },
      { of: "50 ft2 at 8 in", printed: 113, to: 1 },
      { of: "100 ft2 at 10 in", printed: 144, to: 1 },
      { of: "300 ft2 at 15 in", printed: 192, to: 1 },
      { of: "50 ft2 at 24 in", printed: 13, to: 1 },
      { of: "1000 ft2 at 8 in", printed: 2250, to: 1 },
      {
        of: "1000 ft2 at 18 in",
        printed: 440,
        to: 1,
        wrong: { right: 445, why: "the chart takes 0.44 for 4/9: 444.4, which is 445 plants" },
      },
    ],
    compute: () => [
      plants(100, 6),
      plants(50, 8),
      plants(100, 10),
      plants(300, 15),
      plants(50, 24),
      plants(1000, 8),
      plants(1000, 18),
    ],
  },
  {
    entry: "stand-013",
    formulas: ["plantsPerArea", "plantsFor"],
    source: {
      title: "How to space plants",
      publisher: "advice page of a nursery",
      url: "https://weradtke.com/resources/gardening-information/how-to-space-plants/",
    },
    reached: "read",
    given:
      "15 by 24 ft at 10 in: per ft2, in all, in whole plants; and how many more where rows are staggered",
    answers: [
      { of: "per ft2", printed: 1.44, to: 0.01 },
      { of: "plants, exact", printed: 518.4, to: 0.1 },
      { of: "plants", printed: 519, to: 1 },
      { of: "% more, staggered", printed: 15, to: 1 },
    ],
    compute: () => {
      const staggered = plantsPerArea({ pattern: "triangular", spacing: inches(10) }).in("count/ft2");
      return [perFt2(10), 360 * perFt2(10), plants(360, 10), 100 * (staggered / perFt2(10) - 1)];
    },
  },
  {
    entry: "stand-014",
    formulas: ["plantsPerArea"],
    source: {
      title: "Instructions for installing buffalograss plugs",
      publisher: "planting guide of a turf grower",
      url: "http://lowwaterlawns.com/PlugInstallation.htm",
    },
    reached: "read",
    given: "plugs per ft2 at 18, 15, 12, 9 and 6 in",
    answers: [0.44, 0.64, 1, 1.78, 4].map((printed) => ({ of: "per ft2", printed, to: 0.01 })),
    compute: () => [18, 15, 12, 9, 6].map(perFt2),
  },
  {
    entry: "stand-015",
    formulas: ["plantsPerArea"],
    source: {
      title: "How many plants do I need?",
      publisher: "advice page of a garden center",
      url: "https://wenkegardencenter.com/groundcover-spacing",
    },
    reached: "read",
    given: "multipliers at 4, 8, 10, 15 and 24 in",
    answers: [
      { of: "per ft2", printed: 9, to: 1 },
      {
        of: "per ft2",
        printed: 2.28,
        to: 0.01,
        wrong: { right: 2.25, why: "a misprint: (12 / 8) squared is 2.25" },
      },
      { of: "per ft2", printed: 1.44, to: 0.01 },
      { of: "per ft2", printed: 0.64, to: 0.01 },
      {
        of: "per ft2",
        printed: 0.24,
        to: 0.01,
        wrong: { right: 0.25, why: "a misprint: (12 / 24) squared is 0.25" },
      },
    ],
    compute: () => [4, 8, 10, 15, 24].map(perFt2),
  },
  {
    entry: "stand-016",
    formulas: ["staggeredRowSpacing"],
    source: {
      title: "Planting the buffalo grass plugs",
      publisher: "a gardener's notes",
      year: 2009,
      url: "http://lazygardens.blogspot.com/2009/03/planting-buffalo-grass-plugs.html",
    },
    reached: "read",
    given: "plugs on 18 in centers, evenly spaced: from row to row",
    answers: [{ of: "in", printed: 15.5, to: 0.5 }],
    compute: () => [staggeredRowSpacing(inches(18)).in("in")],
  },
  {
    entry: "stand-017",
    formulas: ["sodOrder"],
    source: {
      title: "How many pallets of sod for half an acre",
      publisher: "general information page",
      url: "https://98905.com/garden-lawn/lawn-basics/4623.html",
    },
    reached: "read",
    given: "half an acre, pallets of 50 yd2",
    answers: [
      { of: "yd2", printed: 2420, to: 1 },
      { of: "pallets, not rounded", printed: 48.4, to: 0.1 },
    ],
    compute: () => {
      const { needed, pallet } = sodOrder({
        area: quantity(0.5, "acre"),
        waste: noWaste,
        pallet: { area: quantity(50, "yd2") },
      });
      return [needed.in("yd2"), needed.in("yd2") / (pallet?.in("yd2") ?? 0)];
    },
  },
  {
    entry: "stand-018",
    formulas: ["sodOrder"],
    source: {
      title: "How many pieces of sod are on a pallet",
      publisher: "general information page",
      url: "https://biologyinsights.com/how-many-pieces-of-sod-are-on-a-pallet",
    },
    reached: "read",
    given: "450 ft2 in slabs of 16 by 24 in, and in rolls of 2 by 5 ft",
    answers: [
      { of: "ft2 a slab", printed: 2.67, to: 0.01 },
      { of: "ft2 a roll", printed: 10, to: 1 },
      { of: "rolls", printed: 45, to: 1 },
    ],
    compute: () => {
      const order = (length: number, width: number) =>
        sodOrder({
          area: quantity(450, "ft2"),
          waste: noWaste,
          piece: { length: inches(length), width: inches(width) },
        });
      const [slab, roll] = [order(24, 16), order(60, 24)];
      return [slab.piece?.in("ft2") ?? 0, roll.piece?.in("ft2") ?? 0, roll.pieces ?? 0];
    },
  },
  {
    entry: "stand-019",
    formulas: ["sprigBushelsOf"],
    source: usga,
    reached: "read",
    kind: "transcription",
    given: "what is called a bushel of sprigs in Georgia, in Texas and by US standard",
    answers: [
      { of: "ft3, Georgia", printed: 0.4, to: 0.1 },
      { of: "ft3, Texas, low", printed: 0.4, to: 0.1 },
      { of: "ft3, Texas, high", printed: 1.23, to: 0.01 },
      {
        of: "ft3, US",
        printed: 1.25,
        to: 0.01,
        wrong: { right: 1.24, why: "2150.42 in3 are 1.2445 ft3" },
      },
    ],
    compute: () => [
      sprigBushelsOf("Georgia")[1]?.low.in("ft3") ?? 0,
      sprigBushelsOf("Texas")[0]?.low.in("ft3") ?? 0,
      sprigBushelsOf("Texas")[0]?.high.in("ft3") ?? 0,
      sprigBushelsOf("US")[0]?.low.in("ft3") ?? 0,
    ],
  },
  {
    entry: "stand-020",
    formulas: ["nurseryArea"],
    source: {
      title: "Sod production in Florida (copy of a bulletin of 1990)",
      publisher: "University of Florida",
      where: "planting stock",
    },
    reached: "read",
    kind: "round trip",
    given: "some 15 acres of bermudagrass or zoysiagrass, 10 of St. Augustinegrass from one acre of nursery",
    answers: [
      { of: "acre", printed: 1, to: 1 },
      { of: "acre", printed: 1, to: 1 },
    ],
    compute: () =>
      [15, 10].map((area) => nurseryArea({ area: quantity(area, "acre"), expansion: area }).in("acre")),
  },
  {
    entry: "stand-021",
    formulas: ["coverOfPatches"],
    source: {
      title: "Circle packing: square and hexagonal packings",
      publisher: "teaching page on circle packing",
    },
    reached: "read",
    given: "circles that just touch, four and six neighbors",
    answers: [
      { of: "%, square", printed: 78.54, to: 0.01 },
      { of: "%, hexagonal", printed: 90.69, to: 0.01 },
    ],
    compute: () =>
      (["square", "triangular"] as const).map((pattern) =>
        coverOfPatches({ pattern, spacing: inches(12), diameter: inches(12) }).in("%"),
      ),
  },
  {
    entry: "stand-037",
    formulas: ["spreadRateFromPatch"],
    source: {
      title: "Differences in establishment rate among zoysiagrass cultivars",
      publisher: "ASA-CSSA-SSSA International Annual Meetings, abstract",
      year: 2005,
      where: "cover after 91 days from plugs of 64 cm2; the rates are worked by hand",
      url: "https://crops.confex.com/crops/2005am/techprogram/P4371.HTM",
    },
    reached: "derived",
    given: "one plug of 64 cm2 covers 0.11, 0.25 and 0.49 m2 after 91 days",
    answers: [
      { of: "mm/d", printed: 1.56, to: 0.01 },
      { of: "mm/d", printed: 2.6, to: 0.01 },
      { of: "mm/d", printed: 3.84, to: 0.01 },
    ],
    compute: () =>
      [0.11, 0.25, 0.49].map((area) =>
        spreadRateFromPatch({
          before: quantity(64, "cm2"),
          after: quantity(area, "m2"),
          time: quantity(91, "d"),
        }).in("mm/d"),
      ),
    note: "No published example of cover by date from a rate of spread was found.",
  },
  {
    entry: "stand-038",
    formulas: ["plantsFor"],
    source: {
      title: "Lawns: planting, plugging",
      publisher: "University of Arizona Cooperative Extension, Master Gardener Manual",
      where: "chapter 12, pages 20 to 22",
      url: "http://cals.arizona.edu/pubs/garden/mg/lawns/plugging.html",
    },
    reached: "read",
    given: "plugs on centers of 6 and of 12 in for 1000 ft2",
    answers: [
      { of: "plugs", printed: 4000, to: 1 },
      { of: "plugs", printed: 1000, to: 1 },
    ],
    compute: () => [plants(1000, 6), plants(1000, 12)],
  },
];
