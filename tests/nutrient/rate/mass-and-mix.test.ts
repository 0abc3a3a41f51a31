import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  analysisOfMix,
  fertilizer,
  nutrientsSupplied,
  packageContents,
  packagesFor,
  percentOf,
  productMass,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const feed = fertilizer({ id: "a", analysis: "24-4-11", package: quantity(50, "lb") });

describe("the mass of product for a mass of nutrient", () => {
  test("is the inverse of what it supplies", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (pounds) => {
        const mass = productMass(quantity(pounds, "lb", "N"), feed);
        expect(nutrientsSupplied(mass, feed).N?.in("lb")).toBeCloseTo(pounds, 6);
      }),
    );
  });

  test("takes phosphorus as an element", () => {
    expect(productMass(quantity(1, "kg", "P"), feed).in("kg")).toBeCloseTo(100 / (4 * 0.43643), 2);
  });

  test("is refused for a nutrient that the product has not, and for what is none", () => {
    expect(complaints(() => productMass(quantity(1, "lb", "Fe"), feed))).toEqual([
      "infeasible product.analysis",
    ]);
    expect(complaints(() => productMass(quantity(1, "lb") as never, feed))).toEqual([
      "substance/mismatch nutrient",
    ]);
    expect(complaints(() => productMass(quantity(-1, "lb", "N"), feed))).toEqual(["range nutrient"]);
  });
});

describe("what one package holds", () => {
  test("is an amount of its product", () => {
    expect(packageContents(feed).toString()).toBe("50 lb of product:a");
    expect(complaints(() => packageContents({ id: "a" }))).toEqual(["missing product.package"]);
  });

  test("is counted only in its own kind, and the refusal names the way", () => {
    const jug = { id: "a", package: quantity(2.5, "gal") } as const;
    expect(() => packagesFor(quantity(10, "lb", "product:a") as never, jug)).toThrow(/a product density/);
  });
});

describe("the analysis of a mix", () => {
  const part = (id: string, grade: string, pounds: number) => ({
    product: fertilizer({ id, analysis: grade }),
    amount: quantity(pounds, "lb", `product:${id}` as const),
  });
  const figure = fc.integer({ min: 1, max: 500 });

  test("holds what its parts bring, filler or not", () => {
    fc.assert(
      fc.property(figure, figure, fc.integer({ min: 0, max: 500 }), (a, b, filler) => {
        const parts = [part("x", "20-5-10", a), part("y", "10-20-0-4Fe", b)];
        const mix = analysisOfMix({ parts, filler: quantity(filler, "lb") });
        const whole = a + b + filler;
        expect(percentOf(mix, "N")).toBeCloseTo((20 * a + 10 * b) / whole, 9);
        expect(percentOf(mix, "P2O5")).toBeCloseTo((5 * a + 20 * b) / whole, 9);
        expect(percentOf(mix, "Fe")).toBeCloseTo((4 * b) / whole, 9);
      }),
    );
  });

  test("is a label of a product of its own", () => {
    const mix = analysisOfMix({ parts: [part("x", "46-0-0", 50), part("y", "0-0-60", 50)] });
    expect(fertilizer({ id: "mix", analysis: mix }).analysis.percent).toEqual({ N: 23, P2O5: 0, K2O: 30 });
  });

  test("sums calcium of one label and lime of another once", () => {
    const mix = analysisOfMix({ parts: [part("x", "0-0-0-10Ca", 50), part("y", "0-0-0-14CaO", 50)] });
    expect(percentOf(mix, "Ca")).toBeCloseTo((10 + (14 * 40.078) / 56.077) / 2, 9);
  });

  test("refuses a mix of nothing and another product's amount", () => {
    expect(complaints(() => analysisOfMix({ parts: [part("x", "46-0-0", 0)] }))).toEqual(["range parts"]);
    expect(
      complaints(() =>
        analysisOfMix({
          parts: [{ ...part("x", "46-0-0", 1), amount: quantity(1, "lb", "product:z") as never }],
        }),
      ),
    ).toEqual(["substance/mismatch parts[0].amount"]);
  });
});
