import { describe, expect, test } from "vitest";
import { correctedTexts, readQuantity, suggestUnit } from "../../../src/index.js";

const read = (text: string, dimension: string, more: object = {}) => {
  const { value, problems } = readQuantity(text, { dimension, ...more } as never);
  return value === null ? problems.map(({ code }) => code).join() : value.toString();
};

describe("names that metric people type", () => {
  // by the prefixes of the SI: hecto 100, deci 1/10, centi 1/100, micro 1/1,000,000; a hectopascal is a millibar
  test.each([
    ["3 hl/ha", "volume/area", "300 L/ha"],
    ["3 hectolitres", "volume", "300 L"],
    ["2 dl", "volume", "0.2 L"],
    ["25 cl/ha", "volume/area", "250 mL/ha"],
    ["500 ccm", "volume", "500 mL"],
    ["1 dm³", "volume", "1 L"],
    ["1 cbm", "volume", "1 m3"],
    ["2 kL", "volume", "2 m3"],
    ["500 ml/hl", "volume/volume", "5 mL/L"],
    ["200 g/hl", "mass/volume", "2 g/L"],
    ["20 µl", "volume", "0.02 mL"],
    ["20 µg/g", "mass/mass", "0.02 mg/g"],
    ["2 dt/ha", "mass/area", "200 kg/ha"],
    ["35 gsm", "mass/area", "35 g/m2"],
    ["1 km²", "area", "100 ha"],
    ["0.3 MPa", "pressure", "300 kPa"],
    ["3000 hPa", "pressure", "300 kPa"],
    ["1013 mbar", "pressure", "101.3 kPa"],
    ["120 mS/m", "conductivity", "1.2 dS/m"],
    ["1.2 l/mn", "volume/time", "1.2 L/min"],
    ["5 KM/H", "length/time", "5 km/h"],
    ["2 mps", "length/time", "2 m/s"],
    ["200 GDD C", "degree-days", "200 °C d"],
    ["200 growing degree days C", "degree-days", "200 °C d"],
    ["200 °Cd", "degree-days", "200 °C d"],
    ["5 gal UK", "volume", "5 imp gal"],
    ["2 pints (imperial)", "volume", "0.25 imp gal"],
    ["２．５ Ｌ／ｈａ", "volume/area", "2.5 L/ha"],
    ["500㎡", "area", "500 m2"],
    ["500 ㎖", "volume", "500 mL"],
  ])("%s", (text, dimension, expected) => {
    expect(read(text, dimension)).toBe(expected);
  });

  test("a multiple is no suggestion for another size", () => {
    expect(["hl", "dt", "MPa", "kiloliter"].map((text) => suggestUnit(text))).toEqual([
      undefined,
      undefined,
      undefined,
      "m3",
    ]);
  });

  test("what could be several things is refused, with choices that read", () => {
    const choices = (text: string, dimension: string) => correctedTexts(text, { dimension } as never);
    // a quintal is 100 kg, and was 100 lb
    expect(choices("2 quintal", "mass")).toEqual(["2 dt", "2 short cwt"]);
    expect(choices("2 q/ha", "mass/area")).toEqual(["2 dt/ha", "2 short cwt/ha"]);
    expect(choices("2 q", "volume")).toEqual(["2 qt"]);
    // 1:100 is read as one part in 100, and as one part and 100
    expect(choices("1:100", "volume/volume")).toEqual(["1 L/100 L", "1 L/101 L"]);
    expect(choices("1 in 100", "volume/volume")).toEqual(["1 L/100 L"]);
    expect(choices("1+100", "volume/volume")).toEqual(["1 L/101 L"]);
    expect(choices("2 : 100", "mass/mass")).toEqual(["2 kg/100 kg", "2 kg/102 kg"]);
    expect(choices("1h30", "time")).toEqual(["90 min"]);
    expect(choices("1:30", "time")).toEqual(["90 min", "90 s"]);
    expect(choices("200 day degrees", "degree-days")).toEqual(["200 °F d", "200 °C d"]);
    expect(read("1:75", "time")).toBe("unit/unknown");
    expect(read("5 in 100", "length")).not.toMatch(/^\d/);
  });
});

test("of a British ton and cup the choices are there, and stand in the text", () => {
  const choices = (text: string, dimension: string) =>
    correctedTexts(text, { dimension, measures: "imperial" } as never);
  expect(choices("2 tons/acre", "mass/area")).toEqual(["2 long ton/acre", "2 tonne/acre"]);
  expect(choices("2 tons", "mass")).toEqual(["2 long ton", "2 tonne"]);
  expect(choices("2 cups", "volume")).toEqual(["2 US cup"]);
  expect(choices("1 tbsp/gal", "volume/volume")).toEqual(["1 US tbsp/imp gal"]);
  const imperial = { measures: "imperial" };
  // 2240 lb; the names that say which stay as they are
  expect(read("2 long tons", "mass", imperial)).toBe("4480 lb");
  expect(read("2 UK tons", "mass", imperial)).toBe("4480 lb");
  expect(read("2 US tons", "mass", imperial)).toBe("2 US ton");
  expect(read("2 metric tons", "mass", imperial)).toBe("2 t");
  expect(read("2 tonnes", "mass", imperial)).toBe("2 t");
});

test("a substance without what holds it is that of the field, where a label leaves it out; a share of the nitrogen is not", () => {
  expect(read("4 lb ai/gal", "mass/volume", { of: "ai/product" })).toBe("4 lb/gal of ai/product");
  expect(read("24 % w/w N", "mass/mass", { of: "N/product" })).toBe("24 % w/w of N/product");
  // a bag prints 12 % slow N of the product
  expect(read("12 % w/w N:slow", "mass/mass", { of: "N:slow/N" })).toBe("substance/mismatch");
});
