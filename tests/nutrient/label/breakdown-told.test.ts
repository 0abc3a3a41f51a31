import { expect, test } from "vitest";
import { costPerArea, fertilizer, nitrogenBreakdown, potentialAcidity } from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints, problemsOf } from "../../errors.js";

test("a label without a breakdown is told with the nitrogen that counts as quick", () => {
  expect(nitrogenBreakdown(undefined, 24, "bag").findings[0]).toMatchObject({
    severity: "note",
    path: "bag",
    params: { total: 24 },
  });
});

test("lines add up to a grade but for the noise of its size, and to a trace of nitrogen but for that of one percent", () => {
  const sum = (total: number, off: number) =>
    complaints(() => nitrogenBreakdown({ percent: { urea: total - off } }, total));
  expect(sum(20, 1.5e-8)).toEqual([]);
  expect(sum(20, 2.5e-8)).toEqual(["conflict guarantee.percent"]);
  expect(sum(0.1, 0.5e-9)).toEqual([]);
  expect(sum(0.1, 1.5e-9)).toEqual(["conflict guarantee.percent"]);
});

test("lines told as shares of the nitrogen are told from lines that do not add up", () => {
  const told = (percent: object, total: number) =>
    problemsOf(() => nitrogenBreakdown({ percent } as never, total))[0];
  expect(told({ urea: 75, coated: 25 }, 20)).toMatchObject({
    got: "100 % in all",
    suggestion: "percent of product, where these are shares of the nitrogen",
  });
  expect(told({ urea: 74 }, 20)?.suggestion).toBeUndefined();
});

test("of a price that has no number, or no unit, the form of one is told", () => {
  const cost = (price: unknown) =>
    problemsOf(() =>
      costPerArea({
        product: fertilizer({ id: "a", analysis: "20-0-0" }),
        rate: quantity(5, "lb/1000 ft2", "product:a"),
        price,
      } as never),
    )[0];
  for (const price of [
    { value: 1 },
    { value: 1, unit: 7 },
    { value: "1", unit: "money:USD/lb" },
    { unit: "money:USD/lb" },
  ])
    expect([cost(price)?.code, cost(price)?.path, cost(price)?.expected]).toEqual([
      "type",
      "price",
      'a price per weight or volume: money(28.5, "USD").per(quantity(50, "lb"))',
    ]);
});

test("of an element that is none no more is told than anybody reads", () => {
  const percent = { ["x".repeat(60)]: 1 };
  const [problem] = problemsOf(() =>
    potentialAcidity({ percent, convention: "full nitrification" } as never),
  );
  expect([problem?.code, problem?.path, problem?.expected]).toEqual([
    "substance/unknown",
    `percent.${"x".repeat(40)}`,
    "N, P, S, Cl, K, Na, Ca or Mg, as elements",
  ]);
});

test("slow nitrogen that is stated beside a breakdown agrees with it but for noise, and a breakdown is kept as it stands", () => {
  const label = (slow: number) =>
    complaints(() =>
      fertilizer({
        id: "a",
        analysis: "20-0-0",
        nitrogen: { percent: { urea: 12, waterInsoluble: 8 } },
        slowNitrogen: quantity(slow, "% w/w", "N:slow/product"),
      }),
    );
  expect([8 + 5e-9, 8 - 5e-9].map(label)).toEqual([[], []]);
  expect([8 + 1e-8, 8 - 1e-8].map(label)).toEqual([
    ["conflict fertilizer.slowNitrogen"],
    ["conflict fertilizer.slowNitrogen"],
  ]);
  const { nitrogen } = fertilizer({ id: "a", analysis: "20-0-0", nitrogen: { percent: { urea: 20 } } });
  expect(nitrogen).toStrictEqual({ percent: { urea: 20 } });
});

test("a composition of nothing is missing", () => {
  const [problem] = problemsOf(() =>
    potentialAcidity({ percent: {}, convention: "full nitrification" } as never),
  );
  expect([problem?.code, problem?.path, problem?.got, problem?.expected]).toEqual([
    "missing",
    "percent",
    "nothing",
    "at least one element",
  ]);
});
