import { describe, expect, test } from "vitest";
import {
  analysis,
  analysisByWeight,
  concentrationOf,
  fertilizer,
  formFactor,
  formulaWeight,
  nutrientForms,
  percentOf,
  productNitrogen,
  productRate,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

describe("a grade", () => {
  test("reads hyphens, dashes, minus signs and further nutrients", () => {
    const wanted = { N: 24, P2O5: 0, K2O: 11 };
    for (const text of [
      "24-0-11",
      " 24 - 0 - 11 ",
      "24\u20130\u201311",
      "24\u22120\u221211",
      "24\u20100\u201011",
    ]) {
      expect(analysis(text).percent).toEqual(wanted);
    }
    expect(analysis("21-4-15-2Fe + 7.5 SO3").percent).toEqual({ N: 21, P2O5: 4, K2O: 15, Fe: 2, SO3: 7.5 });
  });

  test("refuses what is not one, with the place in the text", () => {
    for (const text of ["24-0", "24-0-11-2", "24-x-11", "1,5-0-11", "-24-0-11", "24--0-11"]) {
      expect(complaints(() => analysis(text))).toEqual(["text analysis"]);
    }
    expect(complaints(() => analysis("12-0-0-3N"))).toEqual(["conflict analysis"]);
    expect(complaints(() => analysis("60-50-0"))).toEqual(["range analysis"]);
    expect(complaints(() => analysis("101-0-0"))).toEqual(["range analysis.percent.N"]);
  });

  test("as a record keeps to its basis, and tells all that is wrong", () => {
    expect(complaints(() => analysis({ basis: "element", percent: { N: 18, P2O5: 4, K2O: 10 } }))).toEqual([
      "conflict analysis.percent.P2O5",
      "conflict analysis.percent.K2O",
    ]);
    expect(complaints(() => analysis({ basis: "oxide", percent: { P: -1, K: 4 } }))).toEqual([
      "range analysis.percent.P",
      "conflict analysis.percent.P",
      "conflict analysis.percent.K",
    ]);
    expect(complaints(() => analysis({ basis: "oxide", percent: { S: 4, SO3: 10 } }))).toEqual([
      "conflict analysis.percent.S",
    ]);
    // Nutrients that both bases share contradict neither.
    expect(analysis({ basis: "element", percent: { N: 5, CaO: 3, S: 2 } }).percent.CaO).toBe(3);
    expect(analysis({ basis: "oxide", percent: { Ca: 3 } }).percent.Ca).toBe(3);
    const perVolume = { P: quantity(9, "% w/v", "P"), K: quantity(6, "% w/v", "K") };
    expect(analysisByWeight({ perVolume, density: quantity(1.2, "kg/L") })).toEqual({
      basis: "element",
      percent: { P: 7.5, K: 5 },
    });
  });
});

describe("forms of one nutrient", () => {
  test("convert by atomic weights, worked by hand, each way", () => {
    // IUPAC/CIAAW 2021: P 30.974, O 15.999, K 39.098, S 32.06, Ca 40.078, Mg 24.305, Si 28.085, N 14.007.
    const O = 15.999;
    const rows: readonly (readonly [string, string, number])[] = [
      ["P2O5", "P", (2 * 30.974) / (2 * 30.974 + 5 * O)],
      ["K2O", "K", (2 * 39.098) / (2 * 39.098 + O)],
      ["SO4", "S", 32.06 / (32.06 + 4 * O)],
      ["SO3", "SO4", (32.06 + 4 * O) / (32.06 + 3 * O)],
      ["CaO", "Ca", 40.078 / (40.078 + O)],
      ["MgO", "Mg", 24.305 / (24.305 + O)],
      ["SiO2", "Si", 28.085 / (28.085 + 2 * O)],
      ["NO3", "NO3-N", 14.007 / (14.007 + 3 * O)],
    ];
    for (const [from, to, factor] of rows) {
      expect(formFactor(from, to)).toBeCloseTo(factor, 12);
      expect(formFactor(to, from)).toBeCloseTo(1 / factor, 12);
    }
  });

  test("are no number where the weight is not known, and nitrogen is not one thing", () => {
    for (const [from, to] of [
      ["Fe", "FeO"],
      ["Fe2O3", "Fe"],
      ["C", "CO2"],
      ["N", "NO3"],
      ["N", "NO3-N"],
      ["NH4-N", "NO3-N"],
      ["N2O", "NO3"],
      ["P2O5", "K2O"],
    ] as const) {
      expect(formFactor(from, to)).toBeUndefined();
    }
    for (const forms of Object.values(nutrientForms)) {
      for (const form of forms) expect(formFactor(form, form)).toBe(1);
    }
  });
});

describe("the weight of a formula", () => {
  test("is that of its atoms, and of no element that the table does not hold", () => {
    // Gypsum, CaSO4 2 H2O: 40.078 + 32.06 + 6 * 15.999 + 4 * 1.008.
    expect(formulaWeight({ Ca: 1, S: 1, O: 6, H: 4 })).toBeCloseTo(172.164, 9);
    expect(complaints(() => formulaWeight({ Zn: 1 } as never))).toEqual(["substance/unknown formula.Zn"]);
    expect(complaints(() => formulaWeight({ constructor: 1 } as never))).toEqual([
      "substance/unknown formula.constructor",
    ]);
    expect(complaints(() => formulaWeight({ Ca: Number.NaN }))).toEqual(["not-finite formula.Ca"]);
  });
});

describe("a fertilizer from a form or a file", () => {
  const make = (more: object) =>
    complaints(() => fertilizer({ id: "a", analysis: "24-0-11", ...more } as never));

  test("takes no empty field for a missing one", () => {
    for (const nothing of [null, 0, ""]) {
      expect(make({ slowNitrogen: nothing })).toEqual(["type fertilizer.slowNitrogen"]);
      expect(make({ package: nothing })).toEqual(["type fertilizer.package"]);
      expect(make({ form: "liquid", density: nothing })).toEqual(["type fertilizer.density"]);
    }
    expect(make({ slowNitrogen: null, package: 0, form: "liquid", density: "" })).toEqual([
      "type fertilizer.slowNitrogen",
      "type fertilizer.density",
      "type fertilizer.package",
    ]);
  });

  test("takes no other basis for one of the two", () => {
    expect(make({ basis: "Oxide" })).toEqual(["type fertilizer.basis"]);
    expect(make({ basis: null, analysis: "24-x" })).toEqual([
      "type fertilizer.basis",
      "text fertilizer.analysis",
    ]);
    expect(complaints(() => analysis("24-0-11", "oxides" as never))).toEqual(["type basis"]);
    expect(complaints(() => analysis({ basis: "oxides", percent: { N: 1 } } as never))).toEqual([
      "type analysis.basis",
    ]);
  });

  test("without nitrogen has no breakdown of it, and the fault lies there", () => {
    const none = { analysis: "0-0-50", nitrogen: { percent: { urea: 0 } } };
    expect(make(none)).toEqual(["conflict fertilizer.nitrogen"]);
    expect(complaints(() => productNitrogen(fertilizer({ id: "a", analysis: "0-0-50" })))).toEqual([
      "range product.analysis",
    ]);
  });
});

describe("a nutrient of one form", () => {
  test("is taken from the other: 10 kg P from 10-20-5 take 114.57 kg", () => {
    // 20 % P2O5 are 8.7286 % P: 10 * 100 / 8.7286 = 114.57.
    const feed = fertilizer({ id: "a", analysis: "10-20-5" });
    expect(productRate(quantity(10, "kg/ha", "P"), feed).in("kg/ha")).toBeCloseTo(114.57, 2);
    const element = fertilizer({ id: "b", analysis: "10-8.7286-4.1507", basis: "element" });
    expect(percentOf(element.analysis, "P2O5")).toBeCloseTo(20, 3);
    expect(productRate(quantity(10, "kg/ha", "K2O"), element).in("kg/ha")).toBeCloseTo(200, 2);
  });

  test("in a solution has to be a nutrient", () => {
    const salt = fertilizer({ id: "salt", analysis: "20-20-20" });
    const amount = quantity(1, "g/L", "product:salt");
    for (const name of ["N:slow", "nitrogen", "toString"]) {
      expect(complaints(() => concentrationOf(amount, salt, name as never))).toEqual(["type nutrient"]);
    }
    expect(concentrationOf(amount, salt, "P").in("mg/L")).toBeCloseTo(87.286, 3);
  });
});

describe("the likeliest slips of productRate", () => {
  const feed = fertilizer({ id: "feed-a", analysis: "24-0-11" });

  test("a target that does not say of what is told so", () => {
    const bare = quantity(0.9, "lb/1000 ft2");
    // @ts-expect-error the nutrient is left out
    expect(() => productRate(bare, feed)).toThrow(
      "target: expected a rate of a nutrient, such as N or P2O5, got 0.9 lb/1000 ft2",
    );
    // @ts-expect-error the nutrient is left out
    expect(complaints(() => productRate(bare, feed))).toEqual(["substance/mismatch target"]);
  });

  test("a product with an analysis as text is told what reads it", () => {
    const plain = { id: "feed-a", analysis: "24-0-11" };
    // @ts-expect-error the text of a label is no analysis yet
    expect(() => productRate(quantity(0.9, "lb/1000 ft2", "N"), plain)).toThrow(
      'analysis: expected fertilizer(...), got "24-0-11"',
    );
  });
});

describe("a misspelt field of a label", () => {
  const slow = quantity(12, "% w/w", "N:slow/product");

  test("is told, for it would count as not stated", () => {
    // @ts-expect-error the field is misspelt
    expect(() => fertilizer({ id: "a", analysis: "24-0-11", slowNitrgen: slow })).toThrow(
      /fertilizer\.slowNitrgen: .*did you mean slowNitrogen\?/,
    );
    const row = { id: "a", analysys: "24-0-11", Form: "liquid" };
    expect(complaints(() => fertilizer(row as never))).toEqual([
      "type fertilizer.analysys",
      "type fertilizer.Form",
    ]);
  });

  test("is told also where an app keeps it beside the label", () => {
    const label = { id: "a", analysis: "24-0-11", slowNitrogen: slow } as const;
    expect(complaints(() => fertilizer({ ...label, price: 31, supplier: "x" } as never))).toEqual([
      "type fertilizer.price",
      "type fertilizer.supplier",
    ]);
    expect(fertilizer({ ...fertilizer(label) })).toEqual(fertilizer(label));
  });
});
