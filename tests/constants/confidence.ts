// The documented default of the estimates, 95 %: with two degrees of freedom Student's t has a closed form.
import {
  checkAgainstTarget,
  confidenceInterval,
  meanEstimate,
  readingsFor,
} from "../../src/numeric/index.js";
import { quantity } from "../../src/quantity/index.js";
import { type ConstantCheck, cells, edge } from "./check.js";

/** The quantile of Student's t with two degrees of freedom, `(2p - 1) / sqrt(2 p (1 - p))`; 4.303 in every table. */
const t2 = (p: number): number => (2 * p - 1) / Math.sqrt(2 * p * (1 - p));
/** Three readings around 12, of mean 12 and standard deviation `spread`. */
const three = (spread: number) =>
  meanEstimate([12 - spread, 12, 12 + spread].map((value) => quantity(value, "gal/acre", "spray")));

/** What is used where no confidence is stated. */
export const confidenceConstants: readonly ConstantCheck[] = cells(
  {
    room: "numeric",
    reached: "derived",
    within: 1e-7,
    source: "Student's t with two degrees of freedom in closed form, at the documented 95 %",
  },
  [
    [
      "half the width of an interval of three readings of spread 1",
      t2(0.975) / Math.sqrt(3),
      () => confidenceInterval(three(1)).high.in("gal/acre") - 12,
    ],
    [
      "the largest spread, %, for which three readings come within 5 %",
      (5 * Math.sqrt(3)) / t2(0.975),
      () =>
        edge(
          (percent) =>
            readingsFor({ coefficientOfVariation: quantity(percent, "%"), margin: quantity(5, "%") }) <= 3,
          1,
          4,
        ),
    ],
    [
      "the largest spread of three readings on target with which nothing is measured again",
      (0.05 * 12 * Math.sqrt(3)) / t2(0.975),
      () =>
        edge(
          (spread) =>
            checkAgainstTarget({
              measured: three(spread),
              target: quantity(12, "gal/acre", "spray"),
              tolerance: quantity(5, "%"),
            }).verdict !== "measure again",
          0.01,
          1,
        ),
    ],
  ],
);
