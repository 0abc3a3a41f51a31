import { describe, expect, test } from "vitest";
import { analysis, fertilizer, isNutrient, nutrients } from "../../../src/nutrient/index.js";
import { complaints } from "../../errors.js";

describe("a grade as the trade writes it", () => {
  test.each([
    ["21-0-0-24S", { N: 21, P2O5: 0, K2O: 0, S: 24 }],
    ["21-0-0 (24% S)", { N: 21, P2O5: 0, K2O: 0, S: 24 }],
    ["21-0-0 (S 24%)", { N: 21, P2O5: 0, K2O: 0, S: 24 }],
    ["12-0-0 + 6% Fe", { N: 12, P2O5: 0, K2O: 0, Fe: 6 }],
    ["12-0-0 with 6% Fe", { N: 12, P2O5: 0, K2O: 0, Fe: 6 }],
    ["24-0-11, 2% Fe, 1% Mn", { N: 24, P2O5: 0, K2O: 11, Fe: 2, Mn: 1 }],
    ["24-0-11 plus 2 Fe and 1 Mn", { N: 24, P2O5: 0, K2O: 11, Fe: 2, Mn: 1 }],
    ["16:4:8", { N: 16, P2O5: 4, K2O: 8 }],
    ["24% - 0% - 11%", { N: 24, P2O5: 0, K2O: 11 }],
    ["24.5-0-11", { N: 24.5, P2O5: 0, K2O: 11 }],
  ])("%s is read", (text, percent) => {
    expect(analysis(text)).toEqual({ basis: "oxide", percent });
  });

  test.each(["20-20-20+TE", "20-20-20 + ME", "20-20-20 (TE)", "20-20-20 with micronutrients"])(
    "%s says that trace elements are in it",
    (text) => {
      expect(analysis(text)).toEqual({
        basis: "oxide",
        percent: { N: 20, P2O5: 20, K2O: 20 },
        traceElements: true,
      });
    },
  );

  test("trace elements stand beside nutrients with amounts", () => {
    expect(analysis("20-5-10 + 2% MgO + TE")).toMatchObject({ percent: { MgO: 2 }, traceElements: true });
  });

  test("a decimal comma is read where it is asked for", () => {
    expect(analysis("24,5-0-11", { decimal: "," }).percent).toEqual({ N: 24.5, P2O5: 0, K2O: 11 });
    expect(analysis("8,5-3-7 + 1,2 MgO", { decimal: ",", basis: "element" }).percent).toEqual({
      N: 8.5,
      P: 3,
      K: 7,
      MgO: 1.2,
    });
    expect(fertilizer({ id: "a", analysis: "24,5-0-11", decimal: "," }).analysis.percent.N).toBe(24.5);
  });

  test("the other decimal sign is refused with the way to read it", () => {
    expect(() => analysis("24,5-0-11")).toThrow(/\{ decimal: "," \}/);
    expect(() => analysis("24.5-0-11", { decimal: "," })).toThrow(/decimal comma/);
  });

  test.each([
    ["24-0-11-5Qq", 10, "Qq"],
    ["24-0-11 + 6% irony", 14, "irony"],
    ["24-0-x", 6, "x"],
  ])("%s is refused with the place", (text, column, part) => {
    expect(() => analysis(text)).toThrow(`at character ${column}, "${part}"`);
  });

  // Label rules know sodium and cobalt as well: Washington Administrative Code 16-200-711
  test.each([
    "6Fe (EDTA)",
    "6Fe-EDTA",
    "6% Fe chelated",
    "6% chelated Fe",
    "6 Fe EDDHA",
    "6Fe 2Na",
    "6Fe + 0.001% Co",
  ])("0-0-0 %s is refused, for the word would be lost, with the way on", (further) => {
    expect(() => analysis(`0-0-0 ${further}`)).toThrow(
      "; leave out what has no symbol here, such as sodium or EDTA",
    );
  });

  test("unknown readings are refused by name", () => {
    expect(complaints(() => analysis("24-0-11", { decimal: ";" as never }))).toEqual(["type decimal"]);
    expect(complaints(() => analysis("24-0-11", { decimals: "," } as never))).toEqual([
      "type basis.decimals",
    ]);
    expect(complaints(() => fertilizer({ id: "a", analysis: "24-0-11", decimal: 1 as never }))).toEqual([
      "type fertilizer.decimal",
    ]);
  });

  test("a text of a megabyte is refused at once, with a short message", () => {
    const start = performance.now();
    expect(complaints(() => analysis("1".repeat(1_000_000)))).toEqual(["text analysis"]);
    expect(performance.now() - start).toBeLessThan(200);
  });
});

describe("a nutrient", () => {
  test("is one of the list, and nothing else is", () => {
    expect(nutrients.every(isNutrient)).toBe(true);
    expect(new Set(nutrients).size).toBe(nutrients.length);
    for (const other of ["n", "N:slow", "", "constructor", 7, null, undefined, {}, ["N"]]) {
      expect(isNutrient(other)).toBe(false);
    }
  });
});
