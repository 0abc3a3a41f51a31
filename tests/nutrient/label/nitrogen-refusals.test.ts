import { describe, expect, test } from "vitest";
import {
  analysis,
  elementOf,
  fertilizer,
  inForm,
  liquidFertilizer,
  nitrogenBreakdown,
  nitrogenOf,
  oxideOf,
  percentOf,
  productNitrogen,
  releaseClass,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of the nitrogen of a label and of forms of a nutrient, and what is read exactly at a limit.

const read = (text: unknown, basis?: unknown, path?: string) => () =>
  analysis(text as never, basis as never, path);
const label = (change: object) => () => fertilizer({ id: "a", analysis: "20-5-10", ...change } as never);
const liters = (change: object) => () =>
  liquidFertilizer({ id: "a", perVolume: { N: quantity(3, "lb/gal", "N") }, ...change } as never);
const lines =
  (guarantee: unknown, total: unknown = 20) =>
  () =>
    nitrogenBreakdown(guarantee as never, total as never);
const split = () => nitrogenBreakdown({ percent: { urea: 12, waterInsoluble: 8 } }, 20);
const slow = (percent: number) => quantity(percent, "% w/w", "N:slow/product");

const rows: readonly Refused[] = [
  // The lines of nitrogen
  [lines(undefined, 0), "range", "total", "more than zero: no nitrogen, no share"],
  [lines(undefined, 101), "range", "total", "0 to 100 %"],
  [lines(7), "type", "guarantee", "a breakdown { percent: { urea: 10, waterInsoluble: 8, ... } }"],
  [
    lines({ percent: 7 }),
    "type",
    "guarantee.percent",
    "a breakdown { percent: { urea: 10, waterInsoluble: 8, ... } }",
  ],
  [lines({ percent: { urea: 20, win: 1 } }), "type", "guarantee.percent.win", "waterInsoluble"],
  [lines({ percent: { urea: -1 } }), "range", "guarantee.percent.urea", "0 to 100 %"],
  [
    lines({ percent: { urea: 19 } }),
    "conflict",
    "guarantee.percent",
    "lines that add up to the 20 % nitrogen of the grade",
  ],
  [
    lines({ percent: { urea: 20 }, slowWithin: { urea: 21 } }),
    "conflict",
    "guarantee.slowWithin.urea",
    "at most the 20 % of its line",
  ],
  [
    lines({ percent: { urea: 20 }, slowWithin: { nitrate: 1 } }),
    "conflict",
    "guarantee.slowWithin.nitrate",
    "at most the 0 % of its line",
  ],
  [
    lines({ percent: { urea: 20 }, slowWithin: { coated: 1 } }),
    "type",
    "guarantee.slowWithin.coated",
    "urea",
  ],
  [lines({ percent: { urea: 20 }, slow: 1 }), "type", "guarantee.slow", "slowWithin"],
  [() => productNitrogen(7 as never), "type", "product", "record"],
  [
    () => productNitrogen(fertilizer({ id: "k", analysis: "0-0-50" })),
    "range",
    "product.analysis",
    "more than 0 % nitrogen",
  ],
  [
    () => productNitrogen({ analysis: analysis("20-0-0"), slowNitrogen: slow(21) }),
    "conflict",
    "product.slowNitrogen",
    "at most the 20 % N",
  ],
  // The class of its release
  [
    () => releaseClass(7 as never, "thirty percent"),
    "type",
    "breakdown",
    "a record made by nitrogenBreakdown",
  ],
  [
    () => releaseClass({ ...split(), findings: undefined } as never, "thirty percent"),
    "missing",
    "breakdown.findings",
    "a record made by nitrogenBreakdown",
  ],
  [() => releaseClass(split(), "halves" as never), "type", "scheme", '"thirty percent"'],
  [
    () =>
      releaseClass(
        productNitrogen({ analysis: analysis("20-0-0"), slowNitrogen: slow(4) }),
        "suffolk water-insoluble",
      ),
    "missing",
    "breakdown.waterInsolubleShare",
    "the label's breakdown of nitrogen",
  ],
  // Forms
  [
    () => inForm(quantity(1, "lb", "N") as never, "P" as never),
    "substance/mismatch",
    "form",
    "another form of N; nitrogenOf(amount) counts it as N",
  ],
  [
    () => inForm(quantity(1, "lb", "P2O5"), "K" as never),
    "substance/mismatch",
    "form",
    "another form of P2O5",
  ],
  [() => inForm(quantity(-1, "lb", "P2O5"), "P"), "range", "amount", "zero or more"],
  [() => inForm(quantity(1, "acre") as never, "P" as never), "unit/mismatch", "amount", "a weight"],
  [
    () => oxideOf(quantity(1, "lb", "P2O5") as never),
    "substance/mismatch",
    "amount",
    "an amount of P, K, Ca, Mg or Si",
  ],
  [
    () => elementOf(quantity(1, "lb", "P") as never),
    "substance/mismatch",
    "amount",
    "an amount of P2O5, K2O, CaO, MgO or SiO2",
  ],
  [() => elementOf(undefined as never), "missing", "amount", "an amount of P2O5, K2O, CaO, MgO or SiO2"],
  [
    () => nitrogenOf(quantity(1, "lb", "P") as never),
    "substance/mismatch",
    "amount",
    "an amount of NO3-N, NH4-N, NO3 or another form of nitrogen",
  ],
];

describeRefused("what is refused of nitrogen and of forms", rows);

describe("at the limits", () => {
  test("all of a product may be one nutrient, and all of its nitrogen slow", () => {
    expect(percentOf(analysis("100-0-0"), "N")).toBe(100);
    expect(
      fertilizer({ id: "a", analysis: "20-0-0", slowNitrogen: slow(20) }).slowNitrogen?.in("% w/w"),
    ).toBe(20);
    expect(nitrogenBreakdown({ percent: { urea: 20 }, slowWithin: { urea: 20 } }, 20).quick.value).toBe(0);
    expect(nitrogenBreakdown(undefined, 100).quick.in("% w/w")).toBe(100);
  });

  test("the longest ids, names and grades are read", () => {
    expect(problemsOf(label({ id: "x".repeat(200), name: "x".repeat(2000) }))).toEqual([]);
    expect(problemsOf(read(`24-0-11${" ".repeat(113)}`))).toEqual([]);
    expect(problemsOf(read(`24-0-11${" ".repeat(114)}`))[0]?.path).toBe("analysis");
  });

  test("lines that are shares of the nitrogen are told so, other sums are not", () => {
    expect(problemsOf(lines({ percent: { urea: 60, coated: 40 } }))[0]?.suggestion).toBe(
      "percent of product, where these are shares of the nitrogen",
    );
    expect(problemsOf(lines({ percent: { urea: 60, coated: 39 } }))[0]).not.toHaveProperty("suggestion");
  });

  test("a form that holds no nitrogen is not told how nitrogen is counted", () => {
    expect(problemsOf(() => inForm(quantity(1, "lb", "P2O5"), "K" as never))[0]?.expected).toBe(
      "another form of P2O5",
    );
  });

  test("by volume: solid urea's nitrogen, and what the heaviest liquid weighs, are read", () => {
    expect(problemsOf(liters({ perVolume: { N: quantity(622, "g/L", "N") } }))).toEqual([]);
    expect(problemsOf(liters({ perVolume: { K2O: quantity(2500, "g/L", "K2O") } }))).toEqual([]);
    // 32 % of 1.32 kg/L are 422.4 g/L.
    const findings = (grams: number) =>
      liquidFertilizer({ id: "a", perVolume: { N: quantity(grams, "g/L", "N") } }).findings;
    expect(findings(422.4)).toBeUndefined();
    expect(findings(430)?.[0]).toMatchObject({
      code: "liquid/unusually-strong",
      path: "liquidFertilizer.perVolume.N",
      params: { nitrogen: 430, usual: 422 },
      text: "430 g of N per liter is more than a 32 % solution of urea and ammonium nitrate holds (422 g/L, 3.5 lb/gal). Check the unit on the label.",
    });
  });
});
