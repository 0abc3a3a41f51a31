import { describe, expect, test } from "vitest";
import { isSubstance, isUnit, suggestSubstance, suggestUnit } from "../../../src/quantity/index.js";
import { baseUnitSample } from "../samples.js";

describe("suggestUnit", () => {
  test.each([
    ["lbs", "lb"],
    ["sqft", "ft2"],
    ["floz", "fl oz"],
    ["lb/M", "lb/1000 ft2"],
    ["gpa", "gal/acre"],
    ["lbs/sqft", "lb/ft2"],
    ["galon", "gal"],
    ["gallns", "gal"],
    ["pund", "lb"],
    ["acer", "acre"],
    ["hectre", "ha"],
    ["lbz/acer", "lb/acre"],
    ["poundz per acre", "lb/acre"],
    ["lb", "lb"],
    ["LB/ACRE", "lb/acre"],
  ])("%s is near %s", (text, unit) => {
    expect(suggestUnit(text)).toBe(unit);
  });

  test("only a unit of the dimension", () => {
    expect(suggestUnit("oz", "volume")).toBe("fl oz");
    expect(suggestUnit("oz", "mass")).toBe("oz");
    expect(suggestUnit("lbs", "volume")).toBeUndefined();
    expect(suggestUnit("yards", "volume")).toBe("yd3");
  });

  test.each(["", "stone", "T", "ton", "x", "2 lb", "toString", "constructor", "x".repeat(61)])(
    "nothing is near %s",
    (text) => {
      expect(suggestUnit(text)).toBeUndefined();
    },
  );

  // each had a suggestion that was another size or another thing: mg, gal, lb, psi, lb/ft2, kg/100 m2, m2, ...
  test.each([
    ["mcg", "mg"],
    ["kgal", "gal"],
    ["klb", "lb"],
    ["ksi", "psi"],
    ["dram", "g"],
    ["bbl", "tbsp"],
    ["bags", "bar"],
    ["lbf", "lb"],
    ["g/mol", "g/mL"],
    ["mmol/L", "mmolc/L"],
    ["mi2", "m2"],
    ["m-2", "m2"],
    ["US tonne", "US ton"],
    ["kg/1.000 m2", "kg/100 m2"],
    ["lb/10.000 ft2", "lb/1000 ft2"],
    ["lb/1000 ft", "lb/ft2"],
  ])("%s is not %s", (text) => {
    expect(suggestUnit(text)).toBeUndefined();
  });

  test("a thousand is kept", () => {
    expect(suggestUnit("lb/1000 ft", "mass/area")).toBe("lb/1000 ft2");
    expect(suggestUnit("lb/1.000 ft2", "mass/area")).toBe("lb/1000 ft2");
    expect(suggestUnit("lb/ksf", "mass/area")).toBe("lb/1000 ft2");
  });

  test("a unit is its own suggestion", () => {
    for (const unit of baseUnitSample) expect(suggestUnit(unit)).toBe(unit);
  });

  test("what is suggested is a unit", () => {
    for (const unit of baseUnitSample) {
      for (const text of [`${unit}s`, unit.slice(1), `${unit}/acres`, unit.toUpperCase()]) {
        const near = suggestUnit(text);
        if (near !== undefined) expect(isUnit(near)).toBe(true);
      }
    }
  });
});

describe("suggestSubstance", () => {
  test.each([
    ["nitrogen", "N"],
    ["Nitrogen", "N"],
    ["nitrogin", "N"],
    ["n", "N"],
    ["k", "K"],
    ["phosphate", "P2O5"],
    ["phosphorus", "P"],
    ["phosporus", "P"],
    ["potash", "K2O"],
    ["p2o5", "P2O5"],
    ["P205", "P2O5"],
    ["K20", "K2O"],
    ["a.i.", "ai"],
    ["AI", "ai"],
    ["iron", "Fe"],
    ["sulphur", "S"],
    ["nitrogen/product", "N/product"],
    ["product:feed-a", "product:feed-a"],
  ])("%s is near %s", (text, of) => {
    expect(suggestSubstance(text)).toBe(of);
    expect(isSubstance(of)).toBe(true);
  });

  test.each(["phosphite", "sulfite", "nitrite", "chlorate", "NO2", "NH3", "NH4", "K2O5", "P2O3"])(
    "%s is another substance, not a slip",
    (text) => {
      expect(suggestSubstance(text)).toBeUndefined();
    },
  );

  test.each(["", "gravel", "x", "N/N/N", "constructor", "x".repeat(61)])("nothing is near %s", (text) => {
    expect(suggestSubstance(text)).toBeUndefined();
  });
});

test("what is no text has no suggestion", () => {
  expect(suggestUnit(undefined as never)).toBeUndefined();
  expect(suggestSubstance({} as never)).toBeUndefined();
});
