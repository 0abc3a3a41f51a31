import { describe, expect, test } from "vitest";
import { correctedTexts, type Dimension, readQuantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const volumes = { dimension: "volume/area", of: "product" } as const;
const weights = { dimension: "mass/area", of: "N" } as const;
const area = { dimension: "area", of: "none" } as const;

describe("what a typed text stands for", () => {
  // by hand: 3 gal 2 qt are 3.5 gal, 5 ft 6 in are 5.5 ft, 50 ft times 100 ft are 5000 ft2
  test.each<readonly [string, { readonly dimension: Dimension; readonly decimal?: "," }, readonly string[]]>([
    ["6 oz/1000", volumes, ["6 fl oz/1000 ft2"]],
    ["11 oz/A", volumes, ["11 fl oz/acre"]],
    ["2 tablespoons per 1000", volumes, ["2 tbsp/1000 ft2"]],
    ["20 gal/a", { dimension: "volume/area" }, ["20 gal/acre", "20 gal/100 m2"]],
    ["0.5 A", area, ["0.5 acre"]],
    ["5 a", area, ["5 acre", "5 x 100 m2"]],
    ["12 M", area, ["12 x 1000 ft2"]],
    ["12k sqft", area, ["12000 sqft"]],
    ["3 100 m2", area, ["3100 m2", "3 x 100 m2"]],
    ["2,5 ha", area, ["2.5 ha", "25 ha"]],
    ["0,75 lb/M", weights, ["0.75 lb/M"]],
    ["0.75 lb/M", { ...weights, decimal: "," }, ["0,75 lb/M"]],
    ["1.234,5 kg/ha", weights, ["1234.5 kg/ha"]],
    ["20 gal/acre,", { dimension: "volume/area" }, ["20 gal/acre"]],
    ["2 cwt/acre", weights, ["2 short cwt/acre", "2 long cwt/acre"]],
    ["1 ton", { dimension: "mass" }, ["1 US ton", "1 tonne"]],
    ["1%", { dimension: "volume/volume" }, ["1% v/v"]],
    ["3 gal 2 qt", { dimension: "volume" }, ["3.5 gal"]],
    ["5' 6", { dimension: "length" }, ["5.5 ft"]],
    ["40 lbs", { dimension: "pressure" }, ["40 psi"]],
    ["50' x 100'", area, ["5000 ft2"]],
    ["50 x 30 m", area, ["1500 m2"]],
    ["1'30\"", { dimension: "time" }, []],
    // nothing that was typed is lost on the way
    ["50 ft x 30 m", area, []],
    ["6 oz/1000 (liquid)", volumes, []],
    ["50 x 100", area, []],
    // 500 m2 are 0.05 ha, 6 in half a foot: what is offered has the comma of the field
    ["2 ha 500 m2", { ...area, decimal: "," }, ["2,05 ha"]],
    ["3 ft 6 in", { dimension: "length", decimal: "," }, ["3,5 ft"]],
    ["1,5 x 3 m", { ...area, decimal: "," }, ["4,5 m2"]],
    ["1,2k m2", { ...area, decimal: "," }, ["1200 m2"]],
    // thousands of which is not said
    ["10k", area, ["10 x 1000 ft2", "10000 m2"]],
    ["10 thousand", { ...area, decimal: "," }, ["10 x 1000 ft2", "10000 m2"]],
    ["0 gal/acre", { dimension: "volume/area" }, []],
    ["plenty", weights, []],
    ["", weights, []],
    [" ", weights, []],
    ["6 fl oz/1000 ft2", volumes, []],
    ["6".repeat(300), weights, []],
  ])("%s", (text, wanted, texts) => {
    expect(correctedTexts(text, wanted)).toEqual(texts);
    for (const one of texts) expect([one, readQuantity(one, wanted).problems]).toEqual([one, []]);
  });
  test("keeps to the bound that is asked for", () => {
    expect(correctedTexts("-2 oz/A", volumes)).toEqual(["-2 fl oz/acre"]);
    expect(correctedTexts("-2 oz/A", { ...volumes, bound: "positive" })).toEqual([]);
  });
  test("takes a text alone, and an expectation that can be met", () => {
    expect(complaints(() => correctedTexts(3 as never, area))).toEqual(["type text"]);
    expect(complaints(() => correctedTexts(undefined as never, area))).toEqual(["missing text"]);
    expect(complaints(() => correctedTexts("3 ft", {} as never))).toEqual(["missing expected.dimension"]);
  });

  // the word that an offer leaves out is named: up to 3 lb is no 3 lb
  test.each([
    ["up to 3 lb/M", 'a number and a unit, such as 3 lb/1000 ft2, without "up to"'],
    ["max 3 lb/M", 'a number and a unit, such as 3 lb/1000 ft2, without "max"'],
    ["no more than 3 lb/M", 'a number and a unit, such as 3 lb/1000 ft2, without "no more than"'],
    ["<= 3 lb/M", 'a number and a unit, such as 3 lb/1000 ft2, without "<="'],
    ["about 3 lb/M", "a number and a unit, such as 3 lb/1000 ft2"],
  ])("%s offers 3 lb/M, and says what that leaves out", (text, expected) => {
    expect(correctedTexts(text, weights)).toEqual(["3 lb/M"]);
    expect(readQuantity(text, weights).problems[0]?.expected).toBe(expected);
  });
});
