import {
  accurateSum,
  coefficientOfVariation,
  confidenceInterval,
  coverageFactor,
  type Estimate,
  errorOfProduct,
  interpolate,
  mean,
  meanEstimate,
  quantity,
  standardDeviation,
} from "../../src/index.js";
import type { Answer, PublishedCheck, Source } from "./check.js";

const wiki: Source = {
  title: "Section 4.4 Mean, variation, standard deviation and coefficient of variation",
  publisher: "Dutch agricultural knowledge wiki (teaching text)",
  where: "worked example",
};
const values = [4, 36, 45, 50, 75];

/** Two-sided confidences, and the factors of a table for some degrees of freedom. */
const confidences = [80, 90, 95, 96, 98, 99, 99.5, 99.8, 99.9];
const tTable: readonly (readonly [degrees: number, ...factors: number[]])[] = [
  [1, 3.078, 6.314, 12.706, 15.895, 31.821, 63.657, 127.321, 318.309, 636.619],
  [2, 1.886, 2.92, 4.303, 4.849, 6.965, 9.925, 14.089, 22.327, 31.599],
  [3, 1.638, 2.353, 3.182, 3.482, 4.541, 5.841, 7.453, 10.215, 12.924],
  [4, 1.533, 2.132, 2.776, 2.999, 3.747, 4.604, 5.598, 7.173, 8.61],
  [5, 1.476, 2.015, 2.571, 2.757, 3.365, 4.032, 4.773, 5.893, 6.869],
  [8, 1.397, 1.86, 2.306, 2.449, 2.896, 3.355, 3.833, 4.501, 5.041],
  [13, 1.35, 1.771, 2.16, 2.282, 2.65, 3.012, 3.372, 3.852, 4.221],
  [19, 1.328, 1.729, 2.093, 2.205, 2.539, 2.861, 3.174, 3.579, 3.883],
  [28, 1.313, 1.701, 2.048, 2.154, 2.467, 2.763, 3.047, 3.408, 3.674],
];
const nist: readonly (readonly [degrees: number | undefined, ...factors: number[]])[] = [
  [10, 1.372, 1.812, 2.228, 2.764, 3.169],
  [30, 1.31, 1.697, 2.042, 2.457, 2.75],
  [60, 1.296, 1.671, 2.0, 2.39, 2.66],
  [100, 1.29, 1.66, 1.984, 2.364, 2.626],
  [undefined, 1.282, 1.645, 1.96, 2.326, 2.576],
];
const nistConfidences = [80, 90, 95, 98, 99];
const factor = (percent: number, degrees?: number): number => coverageFactor(quantity(percent, "%"), degrees);

/** An estimate whose spread is stated as the deviation of so many readings. */
const estimated = (of: {
  readonly mean: number;
  readonly deviation: number;
  readonly n: number;
}): Estimate<"mass", "water"> => ({
  type: "estimate",
  version: 1,
  value: quantity(of.mean, "g", "water"),
  standardError: quantity(of.deviation / Math.sqrt(of.n), "g", "water"),
  degreesOfFreedom: of.n - 1,
});
const ends = (estimate: Estimate<"mass", "water">): readonly number[] => {
  const { low, high } = confidenceInterval(estimate);
  return [low.in("g"), high.in("g")];
};
const sixReadings = [5, 8, 4, 6, 10, 3];
const six = (): Estimate<"mass", "water"> => meanEstimate(sixReadings.map((x) => quantity(x, "g", "water")));

/** 2500 readings of a population of 10 000 whose own variance, by the divisor N, is 100. */
const ofManyKnown = (): Estimate<"mass", "water"> => {
  const [all, read] = [10_000, 2500];
  const apart = Math.sqrt(((100 * all) / (all - 1)) * ((read - 1) / read));
  const readings = Array.from({ length: read }, (_, i) =>
    quantity(200 + (i % 2 === 0 ? apart : -apart), "g", "water"),
  );
  return meanEstimate(readings, { outOf: all });
};

/** Dry weight per frame of a hay meadow. */
const frames = [72.2, 80.0, 22.0, 96.5, 100.2, 25.0, 81.0, 96.0, 100.9, 51.0];
/** How many readings the rule of sample adequacy asks for, with the factor of those that were taken. */
const adequate = (average: number, variance: number, n: number): number =>
  (factor(80, n - 1) ** 2 * variance) / (0.1 * average) ** 2;

/** Published examples of means, spreads and errors. */
export const numericChecks: readonly PublishedCheck[] = [
  {
    entry: "spread-041",
    formulas: ["mean", "standardDeviation", "coefficientOfVariation"],
    source: wiki,
    reached: "read",
    given: "the values 4, 36, 45, 50 and 75 as a sample",
    answers: [
      { of: "mean", printed: 42, to: 1 },
      { of: "variance", printed: 660.5, to: 0.1 },
      {
        of: "standard deviation",
        printed: 32.5,
        to: 0.1,
        wrong: { right: 25.7, why: "the root of the printed variance is 25.7; with n it would be 23.0" },
      },
      {
        of: "coefficient of variation, as a fraction",
        printed: 0.77,
        to: 0.01,
        wrong: { right: 0.61, why: "follows from the printed standard deviation, which is wrong" },
      },
    ],
    compute: () => {
      const s = standardDeviation(values, { divisor: "n-1" });
      return [mean(values), s ** 2, s, coefficientOfVariation(values, { divisor: "n-1" }).in("1")];
    },
  },
  {
    entry: "numeric-001",
    formulas: ["errorOfProduct"],
    source: {
      title: "Physics 4AL: notebook on propagation of error",
      publisher: "University of California, Los Angeles",
      year: 2023,
      where: "error in momentum",
      url: "https://github.com/uclaphysics4labs/Physics4AL_Spring_2023",
    },
    reached: "read",
    given: "the product of 3.0 ± 0.5 kg and 30.0 ± 5.0 m/s",
    answers: [
      { of: "kg m/s", printed: 90, to: 1 },
      { of: "error, kg m/s", printed: 21.21, to: 0.01 },
    ],
    compute: () => {
      const product = errorOfProduct([
        { value: 3, error: 0.5 },
        { value: 30, error: 5 },
      ]);
      return [product.value, product.error];
    },
  },
  {
    entry: "numeric-002",
    formulas: ["mean", "standardDeviation"],
    source: {
      title: "Statistical Reference Datasets, univariate summary statistics: NumAcc1",
      publisher: "National Institute of Standards and Technology",
      url: "https://www.itl.nist.gov/div898/strd/univ/homepage.html",
    },
    reached: "from memory",
    given: "10000001, 10000003 and 10000002, divisor n-1",
    answers: [
      { of: "mean", printed: 10000002, to: 1 },
      { of: "standard deviation", printed: 1, to: 1e-9 },
    ],
    compute: () => {
      const data = [10000001, 10000003, 10000002];
      return [mean(data), standardDeviation(data, { divisor: "n-1" })];
    },
    note: "The data were seen in test files of other statistics libraries, not on the page of the institute.",
  },
  ...tTable.map(
    ([degrees, ...factors]): PublishedCheck => ({
      entry: "numeric-003",
      formulas: ["coverageFactor"],
      source: {
        title: "Linear models, appendix B: critical values for the t-distribution",
        publisher: "lecture notes on a book server",
        where: `table B.1, row ${degrees}`,
        url: "https://bookdown.org/pingapang9/linear_models_bookdown/appt.html",
      },
      reached: "read",
      given: `${degrees} degrees of freedom, 80 to 99.9 % two-sided`,
      answers: factors.map((printed, i): Answer => ({ of: `t at ${confidences[i]} %`, printed, to: 0.001 })),
      compute: () => confidences.map((percent) => factor(percent, degrees)),
    }),
  ),
  ...nist.map(
    ([degrees, ...factors]): PublishedCheck => ({
      entry: "numeric-004",
      formulas: ["coverageFactor"],
      source: {
        title: "Table 8: upper critical values of Student's t distribution",
        publisher: "copy of the table of the NIST/SEMATECH e-Handbook of Statistical Methods",
        where: `row ${degrees ?? "infinity"}`,
        url: "https://pdfcoffee.com/student-t-distribution-table-pdf-free.html",
      },
      reached: "read",
      given: `${degrees ?? "endlessly many"} degrees of freedom, 0.10 to 0.005 above`,
      answers: factors.map(
        (printed, i): Answer => ({ of: `t at ${nistConfidences[i]} %`, printed, to: 0.001 }),
      ),
      compute: () => nistConfidences.map((percent) => factor(percent, degrees)),
    }),
  ),
  {
    entry: "numeric-005",
    formulas: ["coverageFactor"],
    source: {
      title: "Student's t-distribution tables",
      publisher: "A-level mathematics notes",
      where: "two-tailed .20 at 3, .001 at 2, 3, 5, 7 and 19",
      url: "https://astarmathsandphysics.com/a-level-maths-notes/211-statistical-reference-tables/3842-student-s-t-distribution-tables.html",
    },
    reached: "read",
    given: "six cells in which this table differs from the two others",
    answers: [
      { of: "t, 3, 80 %", printed: 1.683, right: 1.638, why: "two digits changed places" },
      { of: "t, 2, 99.9 %", printed: 31.598, right: 31.599, why: "an old table's last digit" },
      { of: "t, 3, 99.9 %", printed: 12.941, right: 12.924, why: "an old table's error, often repeated" },
      { of: "t, 5, 99.9 %", printed: 6.859, right: 6.869, why: "an old table's error, often repeated" },
      { of: "t, 7, 99.9 %", printed: 5.405, right: 5.408, why: "an old table's error, often repeated" },
      { of: "t, 19, 99.9 %", printed: 4.883, right: 3.883, why: "a wrong first digit" },
    ].map(({ of, printed, right, why }): Answer => ({ of, printed, to: 0.001, wrong: { right, why } })),
    compute: () => [factor(80, 3), ...[2, 3, 5, 7, 19].map((degrees) => factor(99.9, degrees))],
  },
  {
    entry: "numeric-006",
    formulas: ["meanEstimate", "confidenceInterval", "standardDeviation", "mean"],
    source: {
      title: "Confidence interval of a mean from six readings",
      publisher: "collection of worked homework answers",
      where: "solution",
      url: "https://homeworksource.com/p/1070724/the-following-random-sample-was-selected-from-a-normal-distr",
    },
    reached: "read",
    given: "5, 8, 4, 6, 10 and 3, 95 %",
    answers: [
      { of: "mean", printed: 6, to: 1 },
      { of: "standard deviation", printed: 2.607680962, to: 1e-9 },
      { of: "t", printed: 2.570581836, to: 1e-9 },
      { of: "lower bound", printed: 3.263406661, to: 1e-9 },
      { of: "upper bound", printed: 8.736593339, to: 1e-9 },
    ],
    compute: () => [
      six().value.in("g"),
      standardDeviation(sixReadings, { divisor: "n-1" }),
      factor(95, 5),
      ...ends(six()),
    ],
  },
  {
    entry: "numeric-007",
    formulas: ["confidenceInterval"],
    source: {
      title: "Question 980616: confidence interval by t",
      publisher: "mathematics help site",
      url: "https://www.algebra.com/cgi-bin/show-question-source.mpl?solution=601746",
    },
    reached: "read",
    given: "mean 8.1, standard deviation 4.8, 10 readings, 95 %",
    answers: [
      { of: "lower limit", printed: 4.67, to: 0.01 },
      { of: "upper limit", printed: 11.53, to: 0.01 },
    ],
    compute: () => ends(estimated({ mean: 8.1, deviation: 4.8, n: 10 })),
  },
  {
    entry: "numeric-008",
    formulas: ["confidenceInterval", "coverageFactor"],
    source: {
      title: "Confidence interval of a mean, 34 readings",
      publisher: "collection of worked homework answers",
      url: "https://wizedu.com/questions/78496/a-simple-random-sample-of-size-n-is-drawn-the",
    },
    reached: "read",
    given: "mean 18.4, standard deviation 4.8, 34 readings, 95 %",
    answers: [
      { of: "t", printed: 2.035, to: 0.001 },
      {
        of: "lower end",
        printed: 16.72,
        to: 0.01,
        wrong: { right: 16.73, why: "worked with t cut to three places; with all of them 16.7252" },
      },
      {
        of: "upper end",
        printed: 20.08,
        to: 0.01,
        wrong: { right: 20.07, why: "worked with t cut to three places; with all of them 20.0748" },
      },
    ],
    compute: () => [factor(95, 33), ...ends(estimated({ mean: 18.4, deviation: 4.8, n: 34 }))],
  },
  {
    entry: "numeric-009",
    formulas: ["meanEstimate"],
    source: {
      title: "Finite population correction factor",
      publisher: "teaching text on statistics",
      where: "example 1",
      url: "https://allthingsstatistics.com/miscellaneous/finite-population-correction-factor/",
    },
    reached: "read",
    given: "2500 of 10 000, whose variance is 100: readings that have this spread",
    answers: [{ of: "standard error", printed: 0.17321, to: 0.00001 }],
    compute: () => [ofManyKnown().standardError.in("g")],
    note: "The source knows the deviation of the whole population and takes sqrt((N - n) / (N - 1)) of it; with the deviation of the readings that is sqrt(1 - n/N).",
  },
  {
    entry: "numeric-010",
    formulas: ["accurateSum", "mean", "coefficientOfVariation", "coverageFactor"],
    source: {
      title: "Addendum J: use of the sample adequacy formula for hay production measurements",
      publisher: "Mississippi Administrative Code, title 11, part 8, chapter 2",
    },
    reached: "read",
    given: "oven-dry weights of ten frames; a mean within 10 %, t of the ten frames",
    answers: [
      { of: "sum", printed: 724.8, to: 0.1 },
      { of: "sum of squares", printed: 60632.94, to: 0.01 },
      { of: "t", printed: 1.383, to: 0.001 },
      { of: "frames", printed: 33, to: 1 },
    ],
    compute: () => {
      const cv = coefficientOfVariation(frames, { divisor: "n-1" }).in("1");
      const t = factor(80, 9);
      return [
        accurateSum(frames),
        accurateSum(frames.map((x) => x * x)),
        t,
        Math.ceil(((t * cv) / 0.1) ** 2),
      ];
    },
    note: "One tail of 90 % is two of 80 %. The rule keeps the t of the frames that were taken; readingsFor takes that of the readings to take.",
  },
  {
    entry: "numeric-011",
    formulas: ["coverageFactor"],
    source: {
      title: "Sample adequacy determination, table SA",
      publisher: "mine reclamation report in the archive of the State of Colorado",
      where: "page 52",
      url: "https://dnrweblink.state.co.us/DRMSSearch/0/doc/1250747/Page52.aspx",
    },
    reached: "read",
    given: "means 48.83, 64.40 and 51.95, variances 188.06, 134.67 and 204.58 of 72, 20 and 20 samples",
    answers: [13.2, 5.72, 13.36].map((printed): Answer => ({ of: "samples", printed, to: 0.01 })),
    compute: () => [adequate(48.83, 188.06, 72), adequate(64.4, 134.67, 20), adequate(51.95, 204.58, 20)],
  },
  {
    entry: "numeric-012",
    formulas: ["interpolate"],
    source: {
      title: "Linear interpolation from a table",
      publisher: "course handout on fluid mechanics",
      where: "specific weight of water at 62.5 °F",
      url: "https://studylib.net/doc/10476799/%CE%B3",
    },
    reached: "read",
    given: "62.37 lb/ft3 at 60 °F and 62.30 lb/ft3 at 70 °F",
    answers: [{ of: "lb/ft3 at 62.5 °F", printed: 62.3525, to: 0.0001 }],
    compute: () => [interpolate({ xs: [60, 70], ys: [62.37, 62.3], x: 62.5 })],
  },
];
