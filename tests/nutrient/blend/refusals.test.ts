import { describe, expect, test } from "vitest";
import { leastCostBlend } from "../../../src/nutrient/blend/index.js";
import { readProblem } from "../../../src/nutrient/blend/read-blend.js";
import { blendToGrade, fertilizer } from "../../../src/nutrient/index.js";
import { money, type Problem, quantity, RatewrightError } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of a blend, where the refusal points, and what it says would have been right.

const perTon = (amount: number) => money(amount, "USD").per(quantity(1, "US ton"));
const urea = { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(460) };
const potash = { product: fertilizer({ id: "potash", analysis: "0-0-60" }), price: perTon(480) };
const n = (percent: number) => quantity(percent, "% w/w", "N/product");
const acid = (percent: number) => quantity(percent, "% w/w", "CaCO3 equivalent/product");
const slow = (percent: number) => quantity(percent, "% w/w", "N:slow/N");
const input = {
  batch: quantity(100, "lb"),
  materials: [urea],
  filler: perTon(40),
  limits: { nutrients: [{ least: n(20) }] },
};
const cheapest = (change: object) => () => readProblem({ ...input, ...change } as never);
const offered = (change: object) => cheapest({ materials: [{ ...urea, ...change }] });
const limited = (change: object) => cheapest({ limits: change });
const salt = { scale: "by weight", value: 75.4 };

const least: readonly Refused[] = [
  [cheapest({ batch: quantity(0, "lb") }), "range", "batch", "more than zero"],
  [cheapest({ batch: 7 }), "type", "batch", "a weight"],
  [cheapest({ sand: 1 }), "type", "input.sand", "filler"],
  [cheapest({ materials: 7 }), "type", "materials", "{ product, price }"],
  [cheapest({ materials: [] }), "missing", "materials", "{ product, price }"],
  [cheapest({ materials: Array(201).fill(urea) }), "range", "materials", "200 entries or fewer"],
  [
    cheapest({ materials: [urea, urea] }),
    "duplicate",
    "materials[1].product.id",
    "another id than materials[0]",
  ],
  [offered({ price: 7 }), "unit/mismatch", "materials[0].price", "a price per weight"],
  [
    offered({ price: { value: 1, unit: "x money:USD/lb" } }),
    "unit/mismatch",
    "materials[0].price",
    "a price per weight",
  ],
  [offered({ price: perTon(-1) }), "range", "materials[0].price", "zero or more"],
  [offered({ weight: 1 }), "type", "materials[0].weight", "price"],
  [offered({ least: quantity(-1, "lb") }), "range", "materials[0].least", "zero or more"],
  [offered({ most: quantity(-1, "lb") }), "range", "materials[0].most", "zero or more"],
  [offered({ most: quantity(1, "gal") }), "unit/mismatch", "materials[0].most", "a weight"],
  [
    offered({ least: quantity(101, "lb") }),
    "conflict",
    "materials[0].least",
    "no more than the batch, and no more than the most of this material",
    "101 lb",
  ],
  [
    offered({ least: quantity(3, "lb"), most: quantity(2, "lb") }),
    "conflict",
    "materials[0].least",
    "no more than the batch",
  ],
  [offered({ saltIndex: 7 }), "type", "materials[0].saltIndex", 'a salt index on the scale "by weight"'],
  [
    offered({ saltIndex: { scale: "per unit", value: 1.6 } }),
    "conflict",
    "materials[0].saltIndex",
    'a salt index on the scale "by weight", which adds up by weight',
    '"per unit"',
  ],
  [offered({ saltIndex: { scale: 7, value: 1.6 } }), "type", "materials[0].saltIndex.scale", '"by weight"'],
  [offered({ saltIndex: { ...salt, value: -1 } }), "range", "materials[0].saltIndex", "0 or more"],
  [offered({ saltIndex: { ...salt, value: 1001 } }), "range", "materials[0].saltIndex", "1000 or less"],
  [offered({ saltIndex: { ...salt, unit: 1 } }), "type", "materials[0].saltIndex.unit", "value"],
  [offered({ acidity: n(3) }), "substance/mismatch", "materials[0].acidity", "CaCO3 equivalent"],
  [cheapest({ filler: 7 }), "unit/mismatch", "filler", "a price per weight"],
  [cheapest({ filler: money(1, "EUR").per(quantity(1, "lb")) }), "unit/mismatch", "filler", "2 USD/lb"],
  [
    cheapest({
      materials: [
        { ...urea, least: quantity(60, "lb") },
        { ...potash, least: quantity(50, "lb") },
      ],
    }),
    "infeasible",
    "materials",
    "least amounts that fit into 100 lb",
    "110 lb",
  ],
  [
    cheapest({ materials: [{ ...urea, most: quantity(50, "lb") }], filler: undefined }),
    "infeasible",
    "materials",
    "materials for 100 lb, or filler",
    "50 lb",
  ],
  // Limits
  [cheapest({ limits: undefined }), "missing", "limits", "a limit on at least one nutrient"],
  [limited({}), "missing", "limits", "a limit on at least one nutrient", "no limit"],
  [limited({ salt: 1 }), "type", "limits.salt", "mostSaltIndex"],
  [limited({ nutrients: 7 }), "type", "limits.nutrients", "a list of { least, most }"],
  [
    limited({ nutrients: Array(101).fill({ least: n(1) }) }),
    "range",
    "limits.nutrients",
    "100 limits or fewer",
  ],
  [
    limited({ nutrients: [{}] }),
    "missing",
    "limits.nutrients[0]",
    'least or most of a nutrient, such as quantity(20, "% w/w", "N/product")',
  ],
  [limited({ nutrients: [{ least: n(1), exactly: 2 }] }), "type", "limits.nutrients[0].exactly", "most"],
  [
    limited({ nutrients: [{ least: quantity(3, "% w/w", "N:slow/product") }] }),
    "substance/mismatch",
    "limits.nutrients[0].least",
    "least or most of a nutrient",
  ],
  [limited({ nutrients: [{ least: n(-1) }] }), "range", "limits.nutrients[0].least", "0 to 100 %"],
  [limited({ nutrients: [{ most: n(101) }] }), "range", "limits.nutrients[0].most", "0 to 100 %"],
  [
    limited({ nutrients: [{ least: n(30), most: n(20) }] }),
    "conflict",
    "limits.nutrients[0].least",
    "at most the 20 of most",
  ],
  [limited({ leastSlowShare: slow(101) }), "range", "limits.leastSlowShare", "0 to 100 %"],
  [limited({ mostSlowShare: slow(-1) }), "range", "limits.mostSlowShare", "0 to 100 %"],
  [limited({ mostSlowShare: n(3) }), "substance/mismatch", "limits.mostSlowShare", "N:slow/N"],
  [
    limited({ leastSlowShare: slow(30), mostSlowShare: slow(20) }),
    "conflict",
    "limits.leastSlowShare",
    "at most the 20 of limits.mostSlowShare",
  ],
  [limited({ mostSaltIndex: 7 }), "type", "limits.mostSaltIndex", 'a salt index on the scale "by weight"'],
  [
    limited({ mostSaltIndex: salt }),
    "missing",
    "materials[0].saltIndex",
    "the salt index by weight, since it is limited",
  ],
  [
    limited({ mostAcidity: acid(3) }),
    "missing",
    "materials[0].acidity",
    "the potential acidity, since it is limited",
  ],
  [limited({ leastAcidity: n(3) }), "substance/mismatch", "limits.leastAcidity", "CaCO3 equivalent"],
  [
    limited({ leastAcidity: acid(30), mostAcidity: acid(20) }),
    "conflict",
    "limits.leastAcidity",
    "at most the 20 of limits.mostAcidity",
  ],
];

describeRefused("what is refused of the cheapest blend", least);

const graded =
  (grade: unknown, ...labels: readonly string[]) =>
  () =>
    blendToGrade({
      batch: quantity(2000, "lb"),
      grade: grade as string,
      materials: labels.map((analysis, i) => fertilizer({ id: `m${i}`, analysis })),
    });

const grades: readonly Refused[] = [
  [
    graded("10-10-10", "46-0-0", "18-46-0"),
    "infeasible",
    "materials",
    "a material that states K2O, of which the grade has 10 %",
    "no K2O in any of them",
  ],
  // 20 % P2O5 from 18-46-0 is 43.48 % of the batch, which brings 7.83 % N.
  [
    graded("20-20-0", "18-46-0"),
    "infeasible",
    "grade",
    "20 % N: another material has to bring or leave out the difference",
    '"7.83 % N once P2O5 and K2O are met"',
  ],
  [
    graded({ basis: "oxide", percent: { N: 20, P2O5: 20 } }, "18-46-0"),
    "infeasible",
    "grade",
    "20 % N: another material",
    '"7.83 % N once P2O5 is met"',
  ],
  [
    graded("20-0-10", "46-0-0", "0-0-60", "21-0-0"),
    "conflict",
    "materials",
    "materials that leave one answer; without m2 there is one",
    "3 materials for 3 nutrients",
  ],
  // 13-0-44 for 22 % K2O is half of the batch and brings 6.5 % N: 2.5 % N too much is 54.35 kg of urea in 1000.
  [
    graded("4-0-22", "46-0-0", "13-0-44"),
    "infeasible",
    "materials[0]",
    "materials that do not overshoot the grade: 108.7 lb of m0 would have to be taken out",
    '"m0"',
  ],
  // 40 % N and 20 % K2O take 86.96 and 33.33 % of the batch, 120.29 % in all.
  [
    graded("40-0-20", "46-0-0", "0-0-60"),
    "infeasible",
    "grade",
    "a grade that fits into the batch: it takes 2406 lb of material, 405.8 lb too much; these reach at most 33.25-0-16.62",
    "40-0-20",
  ],
];

describeRefused("what is refused of a grade", grades);

describe("limits that no batch keeps", () => {
  const told = async (change: object): Promise<readonly Problem[]> => {
    const error: unknown = await leastCostBlend({
      ...input,
      filler: undefined,
      materials: [{ ...urea, saltIndex: salt, acidity: acid(71) }],
      limits: change,
    } as never).catch((reason: unknown) => reason);
    if (error instanceof RatewrightError) return error.problems;
    throw new Error("a blend was found", { cause: error });
  };

  // All of the batch is urea: 46 % N, none of it slow, a salt index of 75.4, an acidity of 71 %.
  test.each([
    [
      { nutrients: [{ least: n(50) }] },
      "limits.nutrients[0].least",
      "46 % w/w N/product in the batch that comes nearest, 4 too little",
      "at least 50 % w/w N/product",
    ],
    [
      { nutrients: [{ most: n(40) }] },
      "limits.nutrients[0].most",
      "46 % w/w N/product in the batch that comes nearest, 6 too much",
      "at most 40 % w/w N/product",
    ],
    [
      { leastSlowShare: slow(20) },
      "limits.leastSlowShare",
      "9.2 % of the batch too little in slow nitrogen",
      "at least 20 % w/w N:slow/N",
    ],
    [
      { mostSaltIndex: { scale: "by weight", value: 50 } },
      "limits.mostSaltIndex",
      "75.4 salt index by weight in the batch that comes nearest, 25.4 too much",
      "at most 50 salt index by weight",
    ],
    [
      { mostAcidity: acid(50) },
      "limits.mostAcidity",
      "71 % w/w CaCO3 equivalent/product in the batch that comes nearest, 21 too much",
      "at most 50 % w/w CaCO3 equivalent/product",
    ],
  ])("%j", async (limits, path, got, expected) => {
    expect(await told(limits)).toEqual([{ code: "infeasible", path, got, expected }]);
  });

  test("of a slow share that is too high: all of the batch is slow", async () => {
    const product = fertilizer({
      id: "slow",
      analysis: "40-0-0",
      slowNitrogen: quantity(40, "% w/w", "N:slow/product"),
    });
    const error: unknown = await leastCostBlend({
      ...input,
      filler: undefined,
      materials: [{ product, price: perTon(900) }],
      limits: { mostSlowShare: slow(75) },
    } as never).catch((reason: unknown) => reason);
    // 40 % slow less three quarters of 40 %.
    expect((error as RatewrightError).got).toBe("10 % of the batch too much in slow nitrogen");
  });
});

test("a limit on slow nitrogen names the field that takes one", () => {
  const [problem] = problemsOf(limited({ nutrients: [{ most: quantity(3, "% w/w", "N:slow/product") }] }));
  expect(problem?.path).toBe("limits.nutrients[0].most");
  expect(problem?.suggestion).toBe("leastSlowShare, a share of the nitrogen");
  const [other] = problemsOf(limited({ nutrients: [{ most: quantity(3, "% w/w", "ae/product") }] }));
  expect(other?.suggestion).toBeUndefined();
});
