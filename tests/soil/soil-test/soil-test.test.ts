import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  contentInSoil,
  nutrientNeed,
  nutrientUse,
  quantity,
  type SoilLayer,
  soilTestReading,
  tissueReading,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const layer: SoilLayer = { depth: quantity(10, "cm"), bulkDensity: quantity(1.5, "g/mL", "soil") };
const ppm = fc.double({ min: 0, max: 400, noNaN: true });
const need = (test: number, use: number, at: SoilLayer = layer) =>
  nutrientNeed({
    nutrient: "K",
    test: quantity(test, "mg/kg", "K/soil"),
    extractant: "Mehlich 3",
    guideline: "minimum levels, Mehlich 3",
    use: quantity(use, "g/m2", "K"),
    layer: at,
  });

describe("a need", () => {
  test("and a surplus balance use, guideline and test, and one of them is zero", () => {
    fc.assert(
      fc.property(ppm, fc.double({ min: 0, max: 40, noNaN: true }), (test, use) => {
        const found = need(test, use);
        const [u, g, t, f, s] = [found.use, found.guideline, found.test, found.need, found.surplus].map((q) =>
          q.in("g/m2"),
        ) as [number, number, number, number, number];
        expect(u + g - t).toBeCloseTo(f - s, 8);
        expect(Math.min(f, s)).toBe(0);
        expect(found.target.in("g/m2")).toBeCloseTo(f * 1.2046, 3);
      }),
    );
  });
  test("falls with the test and rises with the use", () => {
    fc.assert(
      fc.property(ppm, ppm, fc.double({ min: 0, max: 40, noNaN: true }), (a, b, use) => {
        expect(need(Math.max(a, b), use).need.value).toBeLessThanOrEqual(
          need(Math.min(a, b), use).need.value,
        );
        expect(need(a, use + 1).need.value).toBeGreaterThanOrEqual(need(a, use).need.value);
      }),
    );
  });
  test("does not ask for the unit of the use or the layer", () => {
    const us: SoilLayer = {
      depth: quantity(10 / 2.54, "in"),
      bulkDensity: quantity(1500, "kg/m3", "soil"),
    };
    const pounds = nutrientNeed({
      nutrient: "K",
      test: quantity(20, "mg/kg", "K/soil"),
      extractant: "Mehlich 3",
      guideline: "minimum levels, Mehlich 3",
      use: quantity(quantity(8, "g/m2", "K").in("lb/1000 ft2"), "lb/1000 ft2", "K"),
      layer: us,
    });
    expect(pounds.need.in("g/m2")).toBeCloseTo(need(20, 8).need.in("g/m2"), 8);
  });
  test("of magnesium stays the element", () => {
    const found = nutrientNeed({
      nutrient: "Mg",
      test: quantity(20, "mg/kg", "Mg/soil"),
      extractant: "Mehlich 3",
      guideline: "sufficiency, Mehlich 3",
      soil: "sand",
      use: quantity(1, "g/m2", "Mg"),
      layer,
    });
    expect(found.target.of).toBe("Mg");
    expect(found.need.in("g/m2")).toBeCloseTo(1 + 40 * 0.15, 10);
  });
  test("is refused by another extractant, for another soil, and for a nutrient that the guideline has not", () => {
    const base = {
      test: quantity(20, "mg/kg", "K/soil"),
      use: quantity(1, "g/m2", "K"),
      layer,
      nutrient: "K",
      extractant: "Mehlich 3",
    } as const;
    expect(
      complaints(() => nutrientNeed({ ...base, guideline: "minimum levels, ammonium acetate" })),
    ).toEqual(["conflict extractant"]);
    expect(complaints(() => nutrientNeed({ ...base, guideline: "sufficiency, Mehlich 3" }))).toEqual([
      "missing soil",
    ]);
    expect(
      complaints(() => nutrientNeed({ ...base, guideline: "sufficiency, Mehlich 3", soil: "clay" })),
    ).toEqual(["type soil"]);
    expect(complaints(() => nutrientNeed({ ...base, guideline: "Pennsylvania, Mehlich 3" }))).toEqual([
      "missing nutrient",
    ]);
    expect(complaints(() => nutrientNeed({ ...base, guideline: "the usual" as never }))).toEqual([
      "type guideline",
    ]);
    const rows = [{ nutrient: "K", soil: "any", from: 50, to: 20 }] as const;
    const own = { extractant: "Mehlich 3", meaning: "ours", rows, source: { title: "a", publisher: "b" } };
    expect(complaints(() => nutrientNeed({ ...base, guideline: own as never }))).toEqual([
      "conflict guideline.rows[0].to",
    ]);
  });
});

test("use comes from the leaf, and only where a ratio was read", () => {
  const nitrogen = quantity(20, "g/m2", "N");
  expect(nutrientUse({ nitrogen, nutrient: "P", grass: "cool-season grass" }).value).toBe(2.5);
  expect(nutrientUse({ nitrogen, nutrient: "K", grass: "bermudagrass" }).value).toBeCloseTo(40 / 3, 10);
  expect(complaints(() => nutrientUse({ nitrogen, nutrient: "P", grass: "bermudagrass" }))).toEqual([
    "missing perNitrogen",
  ]);
  expect(nutrientUse({ nitrogen, nutrient: "Ca", perNitrogen: 0.1 }).value).toBe(2);
  expect(contentInSoil(nutrientUse({ nitrogen, nutrient: "Ca", perNitrogen: 0.1 }), layer).of).toBe(
    "Ca/soil",
  );
});

test("a reading is below, within or above, and ends belong to the range", () => {
  const by = (value: number) =>
    soilTestReading({
      nutrient: "P",
      content: quantity(value, "mg/kg", "P/soil"),
      extractant: "Olsen",
      guideline: "sufficiency, Olsen",
    }).level;
  expect([11.9, 12, 28, 28.1].map(by)).toEqual(["below", "within", "within", "above"]);
  const leaf = (percent: number) =>
    tissueReading({ nutrient: "K", content: quantity(percent, "% w/w") }).level;
  expect([0.5, 1.2, 2, 3.5].map(leaf)).toEqual(["deficient", "below", "within", "above"]);
  expect(complaints(() => leaf(30))).toEqual(["range content"]);
});
