import { describe, expect, test } from "vitest";
import { atomicWeights } from "../../../src/nutrient/index.js";
import { parseQuantity, readExact, readQuantity, suggestSubstance } from "../../../src/quantity/index.js";
import { formsOf, unclearForm } from "../../../src/quantity/text/two-forms.js";
import { problemsOf } from "../../errors.js";

// What a word of a laboratory means where two are printed: nitrate as NO3 and as N, sulfate as SO4 and as S.

const told = (text: string, options: object = {}) =>
  problemsOf(() => parseQuantity(text, options as never)).map(({ code, got, choices }) => [
    code,
    got,
    choices,
  ]);

describe("a word that is printed for an ion and for a part of it", () => {
  test("is refused with both, as they can be typed", () => {
    for (const [text, word, choices, read] of [
      ["10 mg/L nitrate", "nitrate", ["mg/L NO3-N", "mg/L NO3"], ["NO3-N", "NO3"]],
      ["10 mg/L of nitrate", "nitrate", ["mg/L of NO3-N", "mg/L of NO3"], ["NO3-N", "NO3"]],
      ["10 mg Nitrate/L", "Nitrate", ["mg NO3-N/L", "mg NO3/L"], ["NO3-N", "NO3"]],
      ["10 lb nitrates per acre", "nitrates", ["lb NO3-N per acre", "lb NO3 per acre"], ["NO3-N", "NO3"]],
      [
        "5 ppm w/w of nitrate/water",
        "nitrate",
        ["ppm w/w of NO3-N/water", "ppm w/w of NO3/water"],
        ["NO3-N/water", "NO3/water"],
      ],
      ["30 mg/L sulfate", "sulfate", ["mg/L S", "mg/L SO4"], ["S", "SO4"]],
      ["30 mg/L of sulphate", "sulphate", ["mg/L of S", "mg/L of SO4"], ["S", "SO4"]],
      ["30 kg sulphates/ha", "sulphates", ["kg S/ha", "kg SO4/ha"], ["S", "SO4"]],
      [
        "2 mg/L phosphate",
        "phosphate",
        ["mg/L P", "mg/L of other:PO4", "mg/L P2O5"],
        ["P", "other:PO4", "P2O5"],
      ],
      [
        "2 mg phosphates/kg soil",
        "phosphates",
        ["mg P/kg soil", "mg of other:PO4/kg soil", "mg P2O5/kg soil"],
        ["P/soil", "other:PO4/soil", "P2O5/soil"],
      ],
    ] as const) {
      expect([text, ...told(text)]).toEqual([text, ["substance/ambiguous", JSON.stringify(word), choices]]);
      expect([text, choices.map((choice) => parseQuantity(`3 ${choice}`).of)]).toEqual([text, read]);
    }
  });

  test("says how far apart they are, by the atomic weights", () => {
    const { N, O, S, P } = atomicWeights;
    const expected = (text: string): string => problemsOf(() => parseQuantity(text))[0]?.expected ?? "";
    expect(expected("1 mg/L nitrate")).toBe(
      `nitrate as nitrogen (NO3-N) or as the ion (NO3): 1 of NO3-N is ${((N + 3 * O) / N).toFixed(2)} of NO3`,
    );
    expect(expected("1 mg/L sulfate")).toBe(
      `sulfate as sulfur (S) or as the ion (SO4): 1 of S is ${((S + 4 * O) / S).toFixed(2)} of SO4`,
    );
    expect(expected("1 mg/L phosphate")).toBe(
      `phosphate as the element P, as the ion PO4 or as P2O5: 1 of P is ${((P + 4 * O) / P).toFixed(2)} of PO4 and ${((2 * P + 5 * O) / (2 * P)).toFixed(2)} of P2O5`,
    );
  });

  test("is read where the form is said", () => {
    for (const [text, of] of [
      ["10 mg/L nitrate-N", "NO3-N"],
      ["10 mg/L nitrate nitrogen", "NO3-N"],
      ["10 mg/L of nitrate as N", "NO3-N"],
      ["45 mg/L nitrate as NO3", "NO3"],
      ["45 mg/L NO3", "NO3"],
      ["45 mg/L nitrate ion", "NO3"],
      ["30 mg/L sulfate-S", "S"],
      ["90 mg/L sulfate as SO4", "SO4"],
      ["90 mg/L SO4", "SO4"],
      ["1 mg/L phosphate-P", "P"],
      ["1 mg/L of phosphate as P2O5", "P2O5"],
      ["20 mg/L available phosphate", "P2O5"],
      ["61 mg/L bicarbonate", "HCO3"],
      ["70 mg/L chloride", "Cl"],
      ["20 mg/L potash", "K2O"],
    ] as const)
      expect([text, parseQuantity(text).toJSON().of]).toEqual([text, of]);
  });

  test("is read where the caller wants just the ion, and a water report stays easy", () => {
    const mgPerL = { dimension: "mass/volume" } as const;
    expect(readQuantity("45 mg/L nitrate", { ...mgPerL, of: "NO3" }).value?.toJSON()).toEqual({
      value: 45,
      unit: "mg/L",
      of: "NO3",
    });
    expect(readQuantity("150 mg/L sulfate", { ...mgPerL, of: "SO4" }).value?.of).toBe("SO4");
    expect(readQuantity("150 mg/L", { ...mgPerL, of: "SO4" }).value?.of).toBe("SO4");
    expect(readQuantity("20 mg/L phosphate", { ...mgPerL, of: "P2O5" }).value?.of).toBe("P2O5");
    expect(parseQuantity("5 ppm w/w of nitrate/water", { of: "NO3/water" }).of).toBe("NO3/water");
    // a field for nitrogen: the word is the ion on many a sheet
    expect(told("45 mg/L nitrate", { of: "NO3-N" })).toEqual([
      ["substance/ambiguous", '"nitrate"', ["mg/L NO3-N", "mg/L NO3"]],
    ]);
    expect(told("45 mg/L sulfate", { of: "S" })).toEqual([
      ["substance/ambiguous", '"sulfate"', ["mg/L S", "mg/L SO4"]],
    ]);
  });

  test("is the ion where a charge is counted", () => {
    expect(parseQuantity("0.7 meq/L of nitrate").of).toBe("NO3");
    expect(parseQuantity("3 mmolc/L of sulfate").of).toBe("SO4");
    expect(told("1 meq/L of phosphate")[0]?.[0]).toBe("substance/ambiguous");
  });

  test("phosphate is P2O5 where fertilizer is weighed, and potash K2O everywhere", () => {
    for (const text of [
      "1 lb phosphate/1000 ft2",
      "40 kg phosphate/ha",
      "3 lb/gal phosphate",
      "18 % w/w phosphate",
      "50 g/L of phosphate",
    ])
      expect([text, parseQuantity(text).of]).toEqual([text, "P2O5"]);
    for (const text of ["1 lb potash/1000 ft2", "5 mg/L potash", "1 ppm w/w potash"])
      expect([text, parseQuantity(text).of]).toEqual([text, "K2O"]);
    expect(told("20 ppm w/w phosphate")[0]?.[0]).toBe("substance/ambiguous");
    expect(told("20 ppm phosphate").map(([code]) => code)).toEqual(["unit/ambiguous", "substance/ambiguous"]);
  });

  test("an id may have the word in it", () => {
    expect(parseQuantity("3 lb of product:potassium nitrate").of).toBe("product:potassium nitrate");
    expect(parseQuantity("3 lb/acre of other:ammonium sulfate").of).toBe("other:ammonium sulfate");
    expect(parseQuantity("3 lb N/lb product:calcium nitrate").of).toBe("N/product:calcium nitrate");
  });

  test("in a record it is told with the substances alone, and nothing is suggested", () => {
    for (const [of, choices] of [
      ["nitrate", ["NO3-N", "NO3"]],
      ["Sulphate", ["S", "SO4"]],
    ] as const) {
      expect(suggestSubstance(of)).toBeUndefined();
      const record = { value: 10, unit: "mg/L", of };
      expect(readQuantity(record, { dimension: "mass/volume" }).problems).toEqual([
        {
          code: "substance/ambiguous",
          path: "quantity.of",
          got: JSON.stringify(of),
          expected: "a substance, such as N or product",
          choices,
        },
      ]);
      expect(readExact(record, { dimension: "mass/volume" }).problems.map(({ code }) => code)).toEqual([
        "substance/unknown",
      ]);
    }
    expect(suggestSubstance("potassium nitrate")).toBeUndefined();
    expect(suggestSubstance("phosphate")).toBe("P2O5");
    expect(suggestSubstance("sulfate of")).toBeUndefined();
  });
});

describe("such a word by itself", () => {
  test("is known with spaces about it, and alone", () => {
    expect(formsOf(" nitrate ")).toEqual(["NO3-N", "NO3"]);
    expect(formsOf("nitrate of lime")).toBeUndefined();
  });

  test("is in no doubt beside a charge, or where the form is said in small letters", () => {
    expect(unclearForm("mg/L nitrate", "mg/L", "NO3", undefined)?.choices).toEqual([
      "mg/L NO3-N",
      "mg/L NO3",
    ]);
    expect(unclearForm("mg/L nitrate as no3", "mg/L", "NO3", undefined)).toBeUndefined();
    for (const unit of ["meq/L", "mmolc/L", "cmolc/kg", "meq/100 g"])
      expect([unit, unclearForm(`${unit} nitrate`, unit, "NO3", undefined)]).toEqual([unit, undefined]);
    expect(unclearForm("mg/L nitrate", "mg/L", "NO3", "NO3")).toBeUndefined();
    expect(unclearForm("mg/kg nitrate", "mg/kg", "NO3/soil", "NO3/soil")).toBeUndefined();
  });

  test("phosphate is, where milligrams, parts per million or charges are counted, read or not", () => {
    for (const text of ["mg phosphate/kg", "part per million phosphate", "ppm phosphate", "meq phosphate/L"])
      expect([text, unclearForm(text, undefined, "P2O5", undefined)?.got]).toEqual([text, '"phosphate"']);
    for (const text of ["lb phosphate/acre", "kg phosphate/ha", "tons phosphate"])
      expect([text, unclearForm(text, undefined, "P2O5", undefined)]).toEqual([text, undefined]);
  });
});
