import { coefficientOfVariation, errorOfProduct, mean, standardDeviation } from "../../src/index.js";
import type { PublishedCheck, Source } from "./check.js";

const wiki: Source = {
  title: "Section 4.4 Mean, variation, standard deviation and coefficient of variation",
  publisher: "Dutch agricultural knowledge wiki (teaching text)",
  where: "worked example",
};
const values = [4, 36, 45, 50, 75];

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
];
