// Figures of nutrients that published examples do not hold sharply: bounds behind bounds, rows that two sources share, and
// the arithmetic of the cheapest blend, of which the answer of the solver is made by hand.

import { blendOf } from "../../src/nutrient/blend/blend-result.js";
import type { LeastCostBlendInput } from "../../src/nutrient/blend/index.js";
import { readProblem } from "../../src/nutrient/blend/read-blend.js";
import {
  analysis,
  analysisByWeight,
  blendSaltIndex,
  fertilizer,
  liquidMaterials,
  publishedDurations,
  saltIndex,
  scaledSaltIndex,
  sulfurCoatedOnSurface,
  sulfurCoatedUrea,
  ureaFormaldehyde,
} from "../../src/nutrient/index.js";
import { money, quantity } from "../../src/quantity/index.js";
import { problemsOf } from "../errors.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "nutrient";
const number = (value: unknown): number => (typeof value === "number" ? value : Number.NaN);

/** Where a refusal begins to point at a place, whatever is refused behind it. */
const pointsFrom = (what: string, path: string, call: (at: number) => unknown): Cell => [
  `most ${what}`,
  100,
  () => edge((at) => !problemsOf(() => call(at)).some((problem) => problem.path === path), 50, 200),
];

const whole: readonly ConstantCheck[] = cells(
  {
    room,
    reached: "derived",
    within: 1e-8,
    source: "no part is more than the whole, 100 %, and the refusal points at the part",
  },
  [
    pointsFrom("of one nutrient, at its place, %", "analysis.percent.N", (N) =>
      analysis({ basis: "oxide", percent: { N } }),
    ),
    pointsFrom("of a liquid by weight, at its place, %", "perVolume.N", (at) =>
      analysisByWeight({
        perVolume: { N: quantity(at / 10, "lb/gal", "N") },
        density: quantity(10, "lb/gal"),
      }),
    ),
    pointsFrom("that dissolves in seven days, at its place, %", "sevenDayDissolution", (at) =>
      sulfurCoatedUrea({ sevenDayDissolution: quantity(at, "%"), sealed: true, source: "the maker's sheet" }),
    ),
    [
      "most of units of two parts together",
      100,
      () =>
        edge(
          (at) =>
            goes(() =>
              blendSaltIndex(
                [1, 2].map(() => ({
                  units: at / 2,
                  partial: saltIndex({ value: 1, scale: "per unit", basis: "N", source: "by hand" }),
                })),
              ),
            ),
          50,
          180,
        ),
    ],
    [
      "sodium nitrate, 16.5 % N, whose index by weight is 100, on the scale on which it is 100 again",
      100,
      () =>
        scaledSaltIndex(saltIndex({ value: 100 / 16.5, scale: "per unit", basis: "N", source: "by hand" }))
          .value,
    ],
  ],
);

const durations = (kind: string, n: number, low: number, high: number): readonly Cell[] => {
  const of = () => publishedDurations.filter((one) => one.kind === kind)[n];
  return [
    [`${kind}, row ${n + 1}: from, weeks`, low, () => number(of()?.weeks.low)],
    [`${kind}, row ${n + 1}: to, weeks`, high, () => number(of()?.weeks.high)],
  ];
};
const surface = (name: "ratePerDay" | "lagDays" | "mostPercent", end: "low" | "high"): number => {
  const { curve } = sulfurCoatedOnSurface;
  return curve.kind === "first order" ? number(curve[name]?.[end]) : Number.NaN;
};

const tables: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "from memory",
      source:
        "trade figures: soluble nitrogen 4-6 weeks, polymer-coated urea 8-16 weeks; sulfur-coated granules with a seal of wax wait 25 days and then give 1 % a day",
    },
    [
      ...durations("water-soluble nitrogen", 1, 4, 6),
      ...durations("polymer-coated urea", 0, 8, 16),
      ["sealed granules wait, days", 25, () => surface("lagDays", "high")],
      [
        "share of all the nitrogen on the first day after, of the 63 % that come",
        0.01,
        () => (surface("ratePerDay", "low") * surface("mostPercent", "low")) / 100,
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "Mississippi State Publication P1466: 32 % solution salts out at 32 °F",
    },
    [
      [
        "UAN 32 salts out at, second row, °F",
        32,
        () => number(liquidMaterials["UAN 32"].saltOut[1]?.fahrenheit),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Koivunen and Horwath, Nutrient Cycling in Agroecosystems 68 (2004) 25-35, abstract: six months of incubation, taken as 26 weeks",
    },
    [["urea formaldehyde: days observed", 26 * 7, () => number(ureaFormaldehyde.observed?.days)]],
  ),
];

/** 92 of 200 lb coated 40-0-0 with 80 % of its nitrogen slow, 48 of urea, the rest filler: half of the nitrogen is slow. */
const shares = [0.46, 0.24, 0.3] as const;
const blend = (wanted: number) => {
  const perTon = (dollars: number) => money(dollars, "USD").per(quantity(1, "US ton"));
  const input: LeastCostBlendInput<"USD"> = {
    batch: quantity(200, "lb"),
    materials: [
      {
        product: fertilizer({
          id: "coated",
          analysis: "40-0-0",
          slowNitrogen: quantity(32, "% w/w", "N:slow/product"),
        }),
        price: perTon(900),
      },
      { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(500) },
    ],
    filler: perTon(40),
    limits: { leastSlowShare: quantity(wanted, "% w/w", "N:slow/N") },
  };
  const problem = readProblem(input as LeastCostBlendInput<string>);
  const answer = { cost: 0.3, x: shares, rowPrice: [0, 0.001], columnPrice: [0, 0, 0] };
  return { problem, found: blendOf(problem, answer, () => undefined).limits[0] };
};

const blends: readonly ConstantCheck[] = cells(
  {
    room,
    reached: "derived",
    within: 1e-12,
    source:
      "by hand: 32 less half of 40 is 12, none less half of 46 is -23, and 0.46 x 12 = 0.24 x 23; 0.46 x 14.72 lb slow of 29.44 lb nitrogen in 100 lb; a price of 0.001 a step, of 0.2944 a step, for 200 lb at the price by the scale of the program",
  },
  [
    [
      "slow nitrogen of coated urea above half of its nitrogen, % of product",
      12,
      () => number(blend(50).problem.rows[0]?.coefficients[0]),
    ],
    [
      "slow nitrogen of urea above half of its nitrogen, % of product",
      -23,
      () => number(blend(50).problem.rows[0]?.coefficients[1]),
    ],
    ["slow share of the blend, %", 50, () => number(blend(40).found?.at?.value)],
    [
      "price of one step of the slow share",
      0.001 * 200 * 0.2944,
      () => number(blend(50).found?.shadowPrice.value) / number(blend(50).problem.scale),
    ],
  ],
);

/** What is left of nutrients: bounds, rows from memory, and the cheapest blend by hand. */
export const nutrientLateConstants: readonly ConstantCheck[] = [...whole, ...tables, ...blends];
