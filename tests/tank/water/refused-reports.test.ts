import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { waterReport } from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

const hard = (value: number) => quantity(value, "mg/L", "hardness as CaCO3");

describe("a water report that cannot be made", () => {
  test("every problem at once, each with its path", () => {
    const error = errorOf(() =>
      waterReport({
        test: {
          pH: 15,
          hardness: hard(-1),
          Ca: quantity(1, "psi") as never,
          HCO3: quantity(1, "mg/L", "Ca") as never,
        },
        products: [{ id: "a", labelPH: { min: Number.NaN } }],
        timeToEmpty: quantity(-1, "h"),
        ammoniumSulfate: quantity(1, "psi") as never,
      }),
    );
    expect(error.problems.map(({ code, path }) => [code, path])).toEqual([
      ["range", "test.pH"],
      ["substance/mismatch", "test.Ca"],
      ["substance/mismatch", "test.HCO3"],
      ["range", "test.hardness"],
      ["range", "timeToEmpty"],
      ["not-finite", "products[0].labelPH.min"],
      ["unit/mismatch", "ammoniumSulfate"],
    ]);
  });

  test("every problem of every product, beside those of the test", () => {
    const products = [
      { id: "a", labelPH: { min: 7, max: 5 }, active: 7, contains: ["amine-phenoxy"] },
      { id: "a", labelPH: 6 },
      { id: "b", labelPH: { Min: 5 }, name: null },
    ] as never;
    const wrong = errorOf(() =>
      waterReport({
        test: { Ca: quantity(-1, "mg/L", "Ca"), Mg: quantity(1, "psi") as never },
        products,
        ammoniumSulfate: quantity(1, "% v/v", "product:a/spray"),
      }),
    );
    expect(wrong.problems.map(({ code, path }) => [code, path])).toEqual([
      ["range", "test.Ca"],
      ["substance/mismatch", "test.Mg"],
      ["type", "products[0].active"],
      ["type", "products[0].contains[0]"],
      ["conflict", "products[0].labelPH.max"],
      ["duplicate", "products[1].id"],
      ["type", "products[1].labelPH"],
      ["missing", "products[2].name"],
      ["type", "products[2].labelPH.Min"],
      ["unit/mismatch", "ammoniumSulfate"],
    ]);
  });

  test.each<readonly [path: string, input: object]>([
    ["products", { test: {}, products: null }],
    ["products", { test: {}, products: "x" }],
    ["products[0]", { test: {}, products: [null] }],
    ["test", { test: undefined }],
    ["test", { test: [] }],
    [
      "ammoniumSulfate",
      { test: { hardness: hard(1) }, ammoniumSulfate: quantity(1, "lb/acre", "product:a") },
    ],
  ])("refuses a wrong %s: %j", (path, input) => {
    expect(errorOf(() => waterReport(input as never)).path).toBe(path);
  });

  test("suggests the field that was meant", () => {
    expect(errorOf(() => waterReport({ test: { ph: 7 } as never })).problems[0]).toMatchObject({
      path: "test.ph",
      suggestion: "pH",
    });
  });

  test("is the same after JSON", () => {
    const input = {
      test: { pH: 8, Ca: quantity(10, "mg/L", "Ca") },
      timeToEmpty: quantity(1, "h"),
      products: [{ id: "a", active: "malathion" }],
    };
    expect(waterReport(JSON.parse(JSON.stringify(input)))).toEqual(waterReport(input));
  });
});

test("a product of a water report with an unknown field is refused", () => {
  const product = { id: "a", activ: "captan" } as never;
  expect(errorOf(() => waterReport({ test: { pH: 7 }, products: [product] })).path).toBe("products[0].activ");
});
