import { describe, expect, test } from "vitest";
import { parseQuantity, readQuantity } from "../../../src/quantity/index.js";

// As people say and jot it down: the word for the slash, the symbol at the weight, the sides of a lawn.

describe("read as written", () => {
  test.each([
    ["44 pounds to the acre", 44, "lb/acre", "none"],
    ["2 pints to an acre", 2, "pt/acre", "none"],
    ["3 lb an acre", 3, "lb/acre", "none"],
    ["2 fl oz for each gallon", 2, "fl oz/gal", "none"],
    ["2 oz wt to the gallon", 2, "oz/gal", "none"],
    ["1 lb of N to every 1,000 sq ft", 1, "lb/1000 ft2", "N"],
    ["50 kgN/ha", 50, "kg/ha", "N"],
    ["50 kg-N/ha", 50, "kg/ha", "N"],
    ["50 kg(N)/ha", 50, "kg/ha", "N"],
    ["1 lb-N/1000 ft2", 1, "lb/1000 ft2", "N"],
    ["1 lb.N/M", 1, "lb/1000 ft2", "N"],
    ["4.9 gN/m²", 4.9, "g/m2", "N"],
    ["20 kgP2O5/ha", 20, "kg/ha", "P2O5"],
    ["10 mgNO3/L", 10, "mg/L", "NO3"],
    ["10 mgNO3-N/L", 10, "mg/L", "NO3-N"],
    ["3 ℓ", 3, "L", "none"],
    // these were units before: kgs, lbs
    ["5 kgS/ha", 5, "kg/ha", "none"],
    ["5 lbS/M", 5, "lb/1000 ft2", "none"],
  ] as const)("%s", (text, value, unit, of) => {
    expect(parseQuantity(text).toJSON()).toEqual({ value, unit, of });
  });
  test("a number sign before the symbol is pounds", () => {
    const wanted = { dimension: "mass/area", of: "N" } as const;
    expect(parseQuantity("0.5 #N/M", wanted).toJSON()).toEqual({ value: 0.5, unit: "lb/1000 ft2", of: "N" });
  });
  test("but no letters that are no substance, and no other one than is wanted", () => {
    expect(readQuantity("5 lbX/M", { dimension: "mass/area" }).problems.map(({ code }) => code)).toEqual([
      "unit/unknown",
    ]);
    const wanted = { dimension: "mass/area", of: "N" } as const;
    expect(readQuantity("5 kgP/ha", wanted).problems.map(({ code }) => code)).toEqual(["substance/mismatch"]);
  });
});

describe("two sides in the field of an area", () => {
  const told = (text: string) =>
    readQuantity(text, { dimension: "area" }).problems.map(({ code, suggestion }) => [code, suggestion]);
  test.each([
    ["50 x 100 ft", "5000 ft2"],
    ["50 ft x 100 ft", "5000 ft2"],
    ["50' × 100'", "5000 ft2"],
    ["50 by 100 ft", "5000 ft2"],
    ["12.5 m * 30 m", "375 m2"],
    ["30 x 40 yds", "1200 yd2"],
  ])("%s are multiplied first", (text, area) => {
    expect(told(text)).toEqual([["text", area]]);
    expect(readQuantity(area, { dimension: "area" }).problems).toEqual([]);
  });
  test("in one unit alone, and an area is counted as before", () => {
    expect(told("50 ft x 30 m").every(([, suggestion]) => suggestion !== "1500 ft2")).toBe(true);
    expect(told("50 x 100")).toEqual([["unit/unknown", undefined]]);
    expect(parseQuantity("12 x 100 m2").in("m2")).toBe(1200);
    expect(readQuantity("50 x 100 ft", { dimension: "length" }).problems[0]?.suggestion).toBeUndefined();
  });
});

test("feet and minutes share their sign: what is suggested is of the field", () => {
  const of = (text: string, dimension: "time" | "length" | "area") =>
    readQuantity(text, { dimension }).problems.map(({ suggestion }) => suggestion);
  expect(of("1'30\"", "time")).toEqual([undefined]);
  expect(of("5' 6", "length")).toEqual(["5.5 ft"]);
  expect(of("3 ft 6", "length")).toEqual(["3.5 ft"]);
  expect(of("4 feet 3", "length")).toEqual(["4.25 ft"]);
  // in the field of an area it is one
  expect(of("3 ft 2", "area")).toEqual([]);
  expect(of("40 lbs", "length")).toEqual([undefined]);
  expect(readQuantity("40 lbs", { dimension: "pressure" }).problems[0]?.suggestion).toBe("psi");
});
