import { describe, expect, test } from "vitest";
import {
  isSubstance,
  parseQuantity,
  perSubstance,
  quantityFrom,
  suggestSubstance,
  timesSubstance,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const ofText = (written: string): string => parseQuantity(`3 lb of ${written}`).of;

describe("substances as people write them", () => {
  test.each([
    ["WATER", "water"],
    ["p2o5", "P2O5"],
    ["Soluble Potash", "K2O"],
    ["AI", "ai"],
    ["ae", "ae"],
    ["N / product", "N/product"],
    ["nitrogen/prod", "N/product"],
    ["product:Feed-A", "product:Feed-A"],
    ["N/product:Feed-A", "N/product:Feed-A"],
    ["AI/product", "ai/product"],
  ])("%s is %s", (written, of) => {
    expect([written, suggestSubstance(written)]).toEqual([written, of]);
    expect(ofText(written)).toBe(of);
  });

  // a symbol in small letters may be a word or another symbol: k is no potassium
  test.each(["n", "k", "ca", "fe", "FE", "MO", "N/none", "none of it", "N/", "/N", "N/product/spray", ""])(
    "%s is none",
    (written) => {
      const codes = problemsOf(() => ofText(written)).map(({ code }) => code);
      expect(codes.length).toBeGreaterThan(0);
      expect(codes.every((code) => code === "substance/unknown" || code === "unit/unknown")).toBe(true);
    },
  );

  test("the name of 0.1 for quick-release nitrogen, alone and in a price", () => {
    expect(quantityFrom({ value: 1, unit: "lb", of: "N:soluble" }).of).toBe("N:quick");
    expect(quantityFrom({ value: 1, unit: "% w/w", of: "N:soluble/product" }).of).toBe("N:quick/product");
    expect(quantityFrom({ value: 1, unit: "money:USD/lb", of: "none/N:soluble" }).of).toBe("none/N:quick");
    expect(isSubstance("N:soluble")).toBe(false);
  });
});

describe("the algebra of pairs", () => {
  test("a price of one thing has no product with another", () => {
    expect(timesSubstance("none/N", "P2O5")).toBeUndefined();
    expect(timesSubstance("P2O5", "none/N")).toBeUndefined();
    expect(timesSubstance("none/N", "N")).toBe("none");
    expect(timesSubstance("none/N", "N/product")).toBe("none/product");
    expect(perSubstance("none/N", "none/N")).toBe("none");
  });

  test("what is no text is told itself, whichever of the two it is", () => {
    const got = (call: () => unknown): readonly string[] =>
      problemsOf(call).map((problem) => `${problem.code} ${problem.path} ${problem.got}`);
    for (const times of [timesSubstance, perSubstance]) {
      expect(got(() => times("N", ["N"] as never))).toEqual(["type substance a list of 1"]);
      expect(got(() => times(7 as never, "N"))).toEqual(["type substance 7"]);
      expect(got(() => times(7 as never, "none"))).toEqual(["type substance 7"]);
    }
  });
});
