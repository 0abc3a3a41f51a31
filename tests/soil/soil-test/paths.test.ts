import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { said } from "../../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const layer = { assumed: "2,000,000 lb/acre" } as const;
const paths = (run: () => unknown) => said(run).map((one) => one.split(":")[0]);

describe("a soil test, told at its place", () => {
  it("each figure of a need", () => {
    expect(paths(() => call.nutrientNeed({}))).toEqual(["missing nutrient"]);
    expect(paths(() => call.nutrientNeed({ nutrient: "K", soil: "" }))).toEqual([
      "missing test",
      "missing extractant",
      expect.stringMatching(/ guideline$/),
      "missing use",
      "missing layer",
      "missing soil",
    ]);
    expect(said(() => call.nutrientNeed({ nutrient: "K", soil: "" })).at(-1)).toBe(
      'missing soil: expected the soil or turf, got ""',
    );
    expect(paths(() => call.nutrientUse({}))).toEqual([
      "missing nitrogen",
      "missing nutrient",
      "missing grass",
    ]);
    const reading = { nutrient: "K", content: quantity(60, "mg/kg", "P/soil"), soil: "" };
    expect(said(() => call.soilTestReading(reading))).toEqual([
      "substance/mismatch content: expected a quantity of K/soil, got 60 mg/kg of P/soil",
      expect.stringMatching(/^missing extractant: /),
      expect.stringMatching(/ guideline: /),
      'missing soil: expected the soil or turf, got ""',
    ]);
  });

  const own = {
    extractant: "Mehlich 3",
    meaning: "what the county states",
    rows: [{ nutrient: "K", soil: "any", from: 50, to: 90 }],
    source: { title: "Turf", publisher: "a county" },
  } as const;
  const level = (content: number, guideline: unknown = own) =>
    soil.soilTestReading({
      nutrient: "K",
      content: quantity(content, "mg/kg", "K/soil"),
      extractant: "Mehlich 3",
      guideline: guideline as soil.SoilGuideline,
    }).level;

  it("a guideline of the caller's own has an upper end, none, or one that is its lower", () => {
    expect([49, 50, 90, 91].map((content) => level(content))).toEqual(["below", "within", "within", "above"]);
    const rows = (to: number | null) => ({ ...own, rows: [{ ...own.rows[0], to }] });
    expect([level(1000, rows(null)), level(50, rows(50)), level(51, rows(50))]).toEqual([
      "within",
      "within",
      "above",
    ]);
    expect(paths(() => level(50, rows("90" as never)))).toEqual([
      expect.stringMatching(/ guideline\.rows\[0\]\.to$/),
    ]);
    expect(paths(() => level(50, { ...own, source: { ...own.source, page: 3 } }))).toEqual([
      "type guideline.source.page",
    ]);
    expect(said(() => level(50, 3))[0]).toMatch(
      /^type guideline: expected a guideline, or a name: minimum levels, Mehlich 3; minimum levels, ammonium acetate; /,
    );
  });

  it("a need is a target of what fertilizer states", () => {
    const target = (nutrient: "P" | "K" | "Ca" | "Mg" | "S") => {
      const need = soil.nutrientNeed({
        nutrient,
        test: quantity(0, "mg/kg", `${nutrient}/soil`) as never,
        extractant: "Mehlich 3",
        guideline: "minimum levels, Mehlich 3",
        use: quantity(0, "lb/acre", nutrient) as never,
        layer,
      });
      return [need.target.of, Number(need.target.value.toFixed(1))];
    };
    // Two pounds an acre for each part per million: 37 of K are 74, or 89.1 of K2O; 21 of P are 42, or 96.2 of P2O5.
    expect(["P", "K", "Ca", "Mg", "S"].map((one) => target(one as "P"))).toEqual([
      ["P2O5", 96.2],
      ["K2O", 89.1],
      ["Ca", 662],
      ["Mg", 94],
      ["S", 14],
    ]);
  });

  it("what adding up rounds off is no need", () => {
    // A tenth of a pound of use, and a test that is a twentieth of a part above its guideline.
    const need = (use: number, test: number) =>
      soil.nutrientNeed({
        nutrient: "S",
        test: quantity(test, "mg/kg", "S/soil"),
        extractant: "Mehlich 3",
        guideline: "minimum levels, Mehlich 3",
        use: quantity(use, "lb/acre", "S"),
        layer,
      }).need.value;
    expect(need(0.1, 7.05)).toBe(0);
    expect(need(0.3, 7.15)).toBe(0);
    expect(need(0.1, 7.04)).toBeCloseTo(0.02, 9);
    expect(need(1e-9, 7)).toBeCloseTo(1e-9, 15);
  });
});
