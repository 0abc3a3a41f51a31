import { quantity } from "../../src/quantity/index.js";
import {
  type Driving,
  effectiveSwath,
  overlapDeposits,
  patternBalance,
  spreadPattern,
  swathCvPercent,
  swathSearch,
  swathUniformity,
  thrownWidth,
} from "../../src/spread/index.js";
import type { PublishedCheck, Source } from "./check.js";

const byHand: Source = {
  title: "Analytic overlap cases: pans one unit apart, swaths of whole pans",
  publisher: "derived by hand",
};
const ft = (value: number) => quantity(value, "ft");
const row = (catches: readonly number[], left: number) =>
  spreadPattern({ catches, unit: "g", pans: { spacing: ft(1), left } });

const triangle = row([0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1, 0], 6);
const skewed = row([0, 1, 2, 3, 4, 5, 6, 4, 2, 0], 6);
const mShape = row([1, 3, 5, 4, 3, 2, 3, 4, 5, 3, 1], 5);

const both: readonly Driving[] = ["one direction", "back and forth"];
const depositsOf = (pattern: typeof triangle, swath: number, driving: Driving) =>
  overlapDeposits(pattern, { swath: ft(swath), driving, positions: "pans" });
const cvOf = (pattern: typeof triangle, swath: number, driving: Driving, divisor: "n" | "n-1"): number =>
  swathUniformity(pattern, { swath: ft(swath), driving, positions: "pans", divisor }).cv.in("%");

const mRanges = () =>
  swathSearch(mShape, {
    driving: "one direction",
    positions: "pans",
    divisor: "n",
    limit: quantity(25, "%"),
    from: ft(4),
    to: ft(10),
  });

const derived = (
  entry: string,
  given: string,
  rows: readonly (readonly [of: string, figure: number, to: number, compute: () => number])[],
): PublishedCheck => ({
  entry,
  formulas: ["overlapDeposits", "swathUniformity"],
  source: byHand,
  reached: "derived",
  given,
  answers: rows.map(([of, printed, to]) => ({ of, printed, to })),
  compute: () => rows.map(([, , , compute]) => compute()),
});

const each = (
  pattern: typeof triangle,
  swath: number,
  driving: Driving,
  figures: readonly number[],
): readonly (readonly [string, number, number, () => number])[] =>
  figures.map((figure, i) => [
    `deposit ${i}, ${driving}`,
    figure,
    1e-9,
    () => depositsOf(pattern, swath, driving).deposits[i] as number,
  ]);

/** The analytic overlap cases. They are derived, not published, and do not count as independent. */
export const spreadDerivedChecks: readonly PublishedCheck[] = [
  derived("spread-d01", "a triangle of 6, swath 6: even in both ways of driving", [
    ...each(triangle, 6, "one direction", [6, 6, 6, 6, 6, 6]),
    ...each(triangle, 6, "back and forth", [6, 6, 6, 6, 6, 6, 6, 6, 6, 6, 6, 6]),
    ...both.map((driving) => [`CV %, ${driving}`, 0, 1e-9, () => cvOf(triangle, 6, driving, "n")] as const),
  ]),
  derived("spread-d02", "a triangle of 6, swath 8", [
    ...each(triangle, 8, "one direction", [6, 5, 4, 4, 4, 4, 4, 5]),
    ["mean", 4.5, 1e-9, () => depositsOf(triangle, 8, "one direction").mean],
    ["CV %, n", 15.713, 0.001, () => cvOf(triangle, 8, "one direction", "n")],
    ["CV %, n, back and forth", 15.713, 0.001, () => cvOf(triangle, 8, "back and forth", "n")],
    ["CV %, n-1, 8 positions", 16.798, 0.001, () => cvOf(triangle, 8, "one direction", "n-1")],
    ["CV %, n-1, 16 positions", 16.229, 0.001, () => cvOf(triangle, 8, "back and forth", "n-1")],
  ]),
  derived("spread-d03", "a triangle of 6, swath 9", [
    ["mean", 4, 1e-9, () => depositsOf(triangle, 9, "one direction").mean],
    ["CV %, n", 26.352, 0.001, () => cvOf(triangle, 9, "one direction", "n")],
    ["CV %, n-1", 27.951, 0.001, () => cvOf(triangle, 9, "one direction", "n-1")],
  ]),
  derived("spread-d04", "a triangle of 6, swath 12", [
    ["mean", 3, 1e-9, () => depositsOf(triangle, 12, "one direction").mean],
    ["CV %, n", 59.317, 0.001, () => cvOf(triangle, 12, "one direction", "n")],
    ["CV %, n-1", 61.955, 0.001, () => cvOf(triangle, 12, "one direction", "n-1")],
  ]),
  {
    ...derived("spread-d05", "a triangle of 6: two rules for the swath", [
      ["ft, half of peak", 6, 0.01, () => effectiveSwath(triangle, { rule: "half of peak" }).swath.in("ft")],
      [
        "ft, half of the mean of the center three",
        6.667,
        0.001,
        () => effectiveSwath(triangle, { rule: "half of center mean", centerPans: 3 }).swath.in("ft"),
      ],
    ]),
    formulas: ["effectiveSwath"],
  },
  derived("spread-d06", "a skewed pattern, swath 4", [
    ...each(skewed, 4, "one direction", [8, 7, 6, 6]),
    ["mean", 6.75, 1e-9, () => depositsOf(skewed, 4, "one direction").mean],
    ["CV %, n", 12.284, 0.001, () => cvOf(skewed, 4, "one direction", "n")],
    ["CV %, n-1", 14.184, 0.001, () => cvOf(skewed, 4, "one direction", "n-1")],
    ...each(skewed, 4, "back and forth", [8, 5, 4, 5, 8, 8, 8, 8]),
    ["CV %, n, back and forth", 24.287, 0.001, () => cvOf(skewed, 4, "back and forth", "n")],
    ["CV %, n-1, back and forth", 25.964, 0.001, () => cvOf(skewed, 4, "back and forth", "n-1")],
  ]),
  derived("spread-d07", "a skewed pattern, swath 6", [
    ...each(skewed, 6, "one direction", [6, 5, 4, 3, 4, 5]),
    ["mean", 4.5, 1e-9, () => depositsOf(skewed, 6, "one direction").mean],
    ["CV %, n", 21.276, 0.001, () => cvOf(skewed, 6, "one direction", "n")],
    ["CV %, n-1", 23.307, 0.001, () => cvOf(skewed, 6, "one direction", "n-1")],
    ...each(skewed, 6, "back and forth", [6, 4, 2, 0, 2, 4, 6, 6, 6, 6, 6, 6]),
    ["CV %, n, back and forth", 44.905, 0.001, () => cvOf(skewed, 6, "back and forth", "n")],
    ["CV %, n-1, back and forth", 46.902, 0.001, () => cvOf(skewed, 6, "back and forth", "n-1")],
  ]),
  derived(
    "spread-d08",
    "an M-shaped pattern: the CV falls again at a swath of 9",
    (
      [
        [4, 5.882],
        [5, 28.516],
        [6, 46.318],
        [7, 45.943],
        [8, 34.8],
        [9, 24.254],
        [10, 29.994],
      ] as const
    ).map(([swath, cv]) => [
      `CV %, swath ${swath}`,
      cv,
      0.001,
      () => cvOf(mShape, swath, "one direction", "n"),
    ]),
  ),
  {
    ...derived("spread-d09", "an M-shaped pattern: swaths of 4 to 10 that stay within 25 %", [
      ["ranges", 2, 1, () => mRanges().ranges.length],
      ["first range, to", 4, 1, () => mRanges().ranges[0]?.to.in("ft") ?? Number.NaN],
      ["second range, from", 9, 1, () => mRanges().ranges[1]?.from.in("ft") ?? Number.NaN],
      ["widest", 9, 1, () => mRanges().widest?.swath.in("ft") ?? Number.NaN],
    ]),
    formulas: ["swathSearch"],
  },
  {
    ...derived(
      "spread-d10",
      "a triangle of 6 at swaths of 8, 9 and 12, all at once",
      [15.713, 26.352, 59.317].map((cv, i) => [
        `CV %, swath ${[8, 9, 12][i]}`,
        cv,
        0.001,
        () =>
          swathCvPercent({
            depositsKgPerM2: Float64Array.from(triangle.catches),
            spacingM: 1,
            swathsM: Float64Array.of(8, 9, 12),
            driving: "one direction",
            divisor: "n",
          })[i] as number,
      ]),
    ),
    formulas: ["swathCvPercent"],
  },
  {
    ...derived("spread-d11", "the throw and the middle of a skewed pattern, positions -6 to 3, sum 27", [
      ["ft thrown, least", 7, 1, () => thrownWidth(skewed).least.in("ft")],
      ["ft thrown, most", 9, 1, () => thrownWidth(skewed).most.in("ft")],
      ["ft from the line of travel", -1, 0.1, () => patternBalance(skewed).center.in("ft")],
    ]),
    formulas: ["thrownWidth", "patternBalance"],
  },
];
