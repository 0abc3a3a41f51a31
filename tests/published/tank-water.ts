import { quantity } from "../../src/quantity/index.js";
import {
  alkalineHydrolysis,
  ammoniumSulfateFromHardness,
  ammoniumSulfateMinimum,
  ammoniumSulfateRates,
  hardnessClass,
  hardnessFromIons,
  hydrolysisLoss,
  relativeAcidity,
  waterReport,
} from "../../src/tank/index.js";
import type { LeftOut, PublishedCheck } from "./check.js";

const hard = (value: number, unit: "mg/L" | "grain/gal" = "mg/L") =>
  quantity(value, unit, "hardness as CaCO3");
const usgs = ["soft", "moderately hard", "hard", "very hard"];

const left = (halfLives: readonly number[]): readonly number[] =>
  halfLives.map(
    (count) => 100 - hydrolysisLoss({ halfLife: quantity(1, "h"), time: quantity(count, "h") }).atEnd.in("%"),
  );

/** Share lost after the printed half-life by the row of that publisher, in percent: it is half. */
const lostAtHalfLife = (
  publisher: string,
  active: string,
  rows: readonly (readonly [number, number, "min" | "h" | "d", 0 | 1])[],
) =>
  rows.map(([pH, printed, unit, end]) => {
    const time = quantity(printed, unit);
    const row = alkalineHydrolysis({ active, pH, time })?.rows.find(
      (one) => one.pH === pH && one.source.publisher.startsWith(publisher),
    );
    if (row === undefined) return 0;
    const { value, unit: of } = end === 0 ? row.longest : row.shortest;
    return hydrolysisLoss({ halfLife: quantity(value, of), time }).atEnd.in("%");
  });

/** Published figures of spray water that the tank formulas recompute. */
export const tankWaterChecks: readonly PublishedCheck[] = [
  {
    entry: "mix-042",
    kind: "transcription",
    formulas: ["ammoniumSulfateMinimum"],
    source: {
      title: "How much AMS do I need to combat hard water antagonism",
      publisher: "Purdue University",
      where: "formula, first two terms",
    },
    reached: "read",
    given: "1000 ppm of K, of Na",
    answers: [
      { of: "lb/100 gal for K", printed: 2, to: 1 },
      { of: "lb/100 gal for Na", printed: 5, to: 1 },
    ],
    compute: () =>
      [{ K: quantity(1000, "mg/L", "K") }, { Na: quantity(1000, "mg/L", "Na") }].map(
        (ions) => ammoniumSulfateMinimum(ions).minimum.in("lb/gal") * 100,
      ),
  },
  {
    entry: "mix-043",
    formulas: ["ammoniumSulfateMinimum"],
    source: { title: "the equation of North Dakota State University, worked", publisher: "derived by hand" },
    reached: "derived",
    given: "K 10, Na 50, Ca 100, Mg 40, Fe 0 ppm",
    answers: [{ of: "lb/100 gal", printed: 1.73, to: 0.01 }],
    compute: () => [
      ammoniumSulfateMinimum({
        K: quantity(10, "mg/L", "K"),
        Na: quantity(50, "mg/L", "Na"),
        Ca: quantity(100, "mg/L", "Ca"),
        Mg: quantity(40, "mg/L", "Mg"),
        Fe: quantity(0, "mg/L", "Fe"),
      }).minimum.in("lb/gal") * 100,
    ],
  },
  {
    entry: "mix-045",
    kind: "transcription",
    formulas: ["waterReport"],
    source: {
      title: "Ammonium sulfate as a water conditioner",
      publisher: "Washington State University small grains",
    },
    reached: "read",
    given: "general rate of ammonium sulfate with glyphosate",
    answers: [
      { of: "lb/100 gal, least", printed: 8.5, to: 0.1 },
      { of: "lb/100 gal, most", printed: 17, to: 1 },
      { of: "warnings at the least rate in water of 500 mg/L", printed: 0, to: 1 },
    ],
    compute: () => {
      const rate = ammoniumSulfateRates.find(({ about }) => about.startsWith("general"));
      const least = quantity((rate?.min ?? 0) / 100, "lb/gal", "product:sulfate/spray");
      const { findings } = waterReport({ test: { hardness: hard(500) }, ammoniumSulfate: least });
      return [
        rate?.min ?? 0,
        rate?.max ?? 0,
        findings.filter(({ code }) => code === "water/sulfate-below-minimum").length,
      ];
    },
  },
  {
    entry: "mix-046",
    kind: "transcription",
    formulas: ["waterReport"],
    source: { title: "action thresholds for hardness in eight sources", publisher: "USGA and others" },
    reached: "read",
    given: "water a little above 200, 300 and 350 mg/L, and 20, 35 and 40 grains per gallon",
    answers: [1, 3, 5, 4, 6, 7].map((printed, i) => ({
      of: `thresholds passed, water ${i + 1}`,
      printed,
      to: 1,
    })),
    compute: () =>
      [
        hard(201),
        hard(301),
        hard(351),
        hard(20.1, "grain/gal"),
        hard(35.1, "grain/gal"),
        hard(40.1, "grain/gal"),
      ].map((hardness) => {
        const passed = waterReport({ test: { hardness } }).findings[0]?.params.passed;
        return Array.isArray(passed) ? passed.length : 0;
      }),
    note: "20 grains per US gallon are 342 mg/L: water of 20.1 grains (344) passes 200, 300, 300 and 342, not 350.",
  },
  {
    entry: "mix-047",
    kind: "transcription",
    formulas: ["hardnessClass"],
    source: {
      title: "Do you have information about water hardness in the United States?",
      publisher: "US Geological Survey",
    },
    reached: "read",
    given: "the printed ends of the classes: 0, 60, 61, 120, 121, 180, 181 mg/L",
    answers: [1, 1, 2, 2, 3, 3, 4].map((printed, i) => ({
      of: `class of ${[0, 60, 61, 120, 121, 180, 181][i]} mg/L (1 soft to 4 very hard)`,
      printed,
      to: 1,
    })),
    compute: () =>
      [0, 60, 61, 120, 121, 180, 181].map((value) => usgs.indexOf(hardnessClass(hard(value), "USGS")) + 1),
  },
  {
    entry: "mix-048",
    formulas: ["waterReport"],
    source: { title: "What is the hardness of my water?", publisher: "Town of Orleans, Massachusetts" },
    reached: "read",
    given: "16 mg/L as CaCO3",
    answers: [{ of: "grain/gal", printed: 0.93, to: 0.01 }],
    compute: () => [waterReport({ test: { hardness: hard(16) } }).hardness?.in("grain/gal") ?? 0],
    note: "With a grain of 17.1 mg/L it would print 0.94.",
  },
  {
    entry: "mix-049",
    formulas: ["waterReport"],
    source: { title: "What is the hardness of my water?", publisher: "Chesterfield County, Virginia" },
    reached: "read",
    given: "40 and 70 ppm as CaCO3",
    answers: [
      {
        of: "grain/gal at 40 ppm",
        printed: 2,
        to: 0.1,
        wrong: { right: 2.3, why: "40 / 17.118; printed to one place, but rounded to whole grains" },
      },
      {
        of: "grain/gal at 70 ppm",
        printed: 4,
        to: 0.1,
        wrong: { right: 4.1, why: "70 / 17.118; printed to one place, but rounded to whole grains" },
      },
    ],
    compute: () =>
      [40, 70].map(
        (value) => waterReport({ test: { hardness: hard(value) } }).hardness?.in("grain/gal") ?? 0,
      ),
  },
  {
    entry: "mix-050",
    formulas: ["hardnessFromIons"],
    source: { title: "molar masses", publisher: "derived by hand from atomic weights of IUPAC" },
    reached: "derived",
    given: "1 mg/L of Ca, of Mg; a grain per US gallon and per imperial gallon",
    answers: [
      { of: "mg/L as CaCO3 for Ca", printed: 2.497, to: 0.001 },
      { of: "mg/L as CaCO3 for Mg", printed: 4.118, to: 0.001 },
      { of: "mg/L in a grain/gal", printed: 17.118, to: 0.001 },
      { of: "mg/L in a grain/imp gal", printed: 14.254, to: 0.001 },
    ],
    compute: () => {
      const of = (ca: number, mg: number): number =>
        hardnessFromIons({ Ca: quantity(ca, "mg/L", "Ca"), Mg: quantity(mg, "mg/L", "Mg") }).in("mg/L");
      return [of(1, 0), of(0, 1), hard(1, "grain/gal").in("mg/L"), quantity(1, "grain/imp gal").in("mg/L")];
    },
  },
  {
    entry: "mix-051",
    formulas: ["ammoniumSulfateFromHardness"],
    source: { title: "the equation of North Dakota State University", publisher: "derived by hand" },
    reached: "derived",
    given: "300 mg/L as CaCO3, all magnesium, all calcium",
    answers: [
      { of: "lb/100 gal, least", printed: 1.02, to: 0.01 },
      { of: "lb/100 gal, most", printed: 1.08, to: 0.01 },
    ],
    compute: () => {
      const { min, max } = ammoniumSulfateFromHardness(hard(300));
      return [min.in("lb/gal") * 100, max.in("lb/gal") * 100];
    },
  },
  {
    entry: "mix-054",
    formulas: ["hydrolysisLoss"],
    source: {
      title: "Effect of water pH on the stability of pesticides",
      publisher: "Michigan State University Extension",
      year: 2008,
    },
    reached: "read",
    given: "a half-life of 1 h; after 1, 2 and 3 h",
    answers: [
      { of: "% left after 1 h", printed: 50, to: 1 },
      { of: "% left after 2 h", printed: 25, to: 1 },
      { of: "% left after 3 h", printed: 12.5, to: 0.1 },
    ],
    compute: () => left([1, 2, 3]),
  },
  {
    entry: "mix-055",
    formulas: ["hydrolysisLoss"],
    source: { title: "Pesticide Half-life fact sheet", publisher: "National Pesticide Information Center" },
    reached: "read",
    given: "one, two and three half-lives",
    answers: [
      { of: "% left after one", printed: 50, to: 1 },
      { of: "% left after two", printed: 25, to: 1 },
      { of: "% left after three", printed: 12, to: 1, printing: "cut" },
    ],
    compute: () => left([1, 2, 3]),
  },
  {
    entry: "mix-056",
    formulas: ["hydrolysisLoss"],
    source: { title: "Effective spraying guide", publisher: "crop-protection manufacturer, India" },
    reached: "read",
    given: "a half-life of 30 min, after 60 min",
    answers: [
      {
        of: "% left",
        printed: 0,
        to: 1,
        wrong: { right: 25, why: "printed as essentially worthless; two half-lives leave a quarter" },
      },
    ],
    compute: () => [
      100 - hydrolysisLoss({ halfLife: quantity(30, "min"), time: quantity(60, "min") }).atEnd.in("%"),
    ],
  },
  {
    entry: "mix-057",
    kind: "transcription",
    formulas: ["alkalineHydrolysis"],
    source: {
      title: "Sprayer loading and the jar test",
      publisher: "Ontario Ministry of Agriculture (sprayers101)",
    },
    reached: "read",
    given: "captan: 32 h at pH 5, 10 min at pH 8",
    answers: [
      { of: "% lost after the half-life at pH 5", printed: 50, to: 1 },
      { of: "% lost after the half-life at pH 8", printed: 50, to: 1 },
    ],
    compute: () =>
      lostAtHalfLife("Ontario", "captan", [
        [5, 32, "h", 0],
        [8, 10, "min", 0],
      ]),
  },
  {
    entry: "mix-058",
    kind: "transcription",
    formulas: ["alkalineHydrolysis"],
    source: {
      title: "Pesticides leftover (garden column)",
      publisher: "Hawaii horticulture column",
      year: 2016,
    },
    reached: "read",
    given: "half-lives of carbaryl, malathion and captan by pH, both ends of a range",
    answers: Array.from({ length: 10 }, (_, i) => ({
      of: `% lost after half-life ${i + 1}`,
      printed: 50,
      to: 1,
    })),
    compute: () => [
      ...lostAtHalfLife("Hawaii", "carbaryl", [
        [6, 150, "d", 0],
        [6, 100, "d", 1],
        [7, 30, "d", 0],
        [7, 24, "d", 1],
        [9, 3, "d", 0],
        [9, 1, "d", 1],
      ]),
      ...lostAtHalfLife("Hawaii", "malathion", [
        [6, 8, "d", 0],
        [8, 19, "h", 0],
      ]),
      ...lostAtHalfLife("Hawaii", "captan", [
        [7, 8, "h", 0],
        [9, 2, "min", 0],
      ]),
    ],
  },
  {
    entry: "mix-061",
    formulas: ["relativeAcidity"],
    source: {
      title: "PI193, Water pH and the Effectiveness of Pesticides",
      publisher: "UF/IFAS",
      where: "What is pH?",
    },
    reached: "read",
    given: "pH 7, 6 and 5 against pH 7",
    answers: [1, 10, 100].map((printed, i) => ({ of: `times as acid at pH ${7 - i}`, printed, to: 1 })),
    compute: () => [7, 6, 5].map((pH) => relativeAcidity(pH)),
  },
];

/** Published figures of water that these checks leave out, and why. */
export const tankWaterLeftOut: readonly LeftOut[] = [
  { entry: "mix-052", reason: "ranges of pH that sources advise, held as data with their sources" },
  { entry: "mix-059", reason: "from memory: not used; only half-lives that were read are here" },
  { entry: "mix-060", reason: "a count of water samples in a survey: no formula" },
];
