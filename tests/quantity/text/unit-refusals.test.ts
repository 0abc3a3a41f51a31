import { describe, expect, test } from "vitest";
import { parseQuantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { type Row, refused } from "./typed.js";

const unit = "a unit, such as lb/1000 ft2";
const several = (text: string): string => `${unit}; "${text}" could be several`;

/** What is typed where a unit of another dimension is asked for. */
const otherDimensions: readonly (readonly [
  text: string,
  dimension: string,
  got: string,
  expected: string,
])[] = [
  ["3 lb/acre", "volume/area", "lb/acre", "a unit for a volume over an area, such as gal/1000 ft2 or L/ha"],
  ["3 oz", "volume", "oz", "a unit for a volume, such as gal or L => fl oz"],
  [
    "3 oz/M",
    "volume/area",
    "oz/M",
    "a unit for a volume over an area, such as gal/1000 ft2 or L/ha => fl oz/1000 ft2",
  ],
  ["3 ft", "area", "ft", "a unit for an area, such as ft2 or m2 => ft2"],
  ["3 in", "volume", "in", "a unit for a volume, such as gal or L => in3"],
  ["3 m", "volume", "m", "a unit for a volume, such as gal or L => m3"],
  ["3 cm", "area", "cm", "a unit for an area, such as ft2 or m2 => cm2"],
  ["3 yards", "area", "yards", "a unit for an area, such as ft2 or m2 => yd2"],
  ["40 lb/in2", "pressure", "lb/in2", "a unit for a pressure, such as psi or bar => psi"],
  ["2 %", "length/length", "%", "a unit for a slope, such as % grade or in/ft => % grade"],
  [
    "3 lb/m",
    "mass/area",
    "lb/m",
    "a unit for a weight over an area, such as lb/1000 ft2 or kg/ha => lb/1000 ft2",
  ],
  ["3 kg/m", "mass/area", "kg/m", "a unit for a weight over an area, such as lb/1000 ft2 or kg/ha => kg/m2"],
  [
    "3 gal",
    "money:USD/area",
    "gal",
    "a unit for a cost over an area, such as money:USD/acre or money:USD/ha",
  ],
  ["3 gal", "1/time", "gal", "a unit for a number per time, such as 1/d"],
  ["3 gal", "degree-days", "gal", "a unit for a sum of degree-days, such as °F d or °C d"],
  ["3 gal", "temperature", "gal", "a unit for a temperature, such as °F or °C"],
  [
    "3 gal",
    "temperature difference",
    "gal",
    "a unit for a temperature difference, such as °F diff or °C diff",
  ],
  ["3 gal", "length", "gal", "a unit for a length, such as ft or m"],
  ["3 gal", "time", "gal", "a unit for a time, such as min or h"],
  ["3 gal", "mass/mass", "gal", "a unit for a share by weight, such as % w/w or lb/US ton"],
  ["3 gal", "volume/volume", "gal", "a unit for a share by volume, such as % v/v or fl oz/gal"],
  ["3 gal", "mass/volume", "gal", "a unit for a weight per volume, such as lb/gal or kg/L"],
  ["3 gal", "length/time", "gal", "a unit for a speed or a depth per time, such as mi/h or mm/h"],
  ["3 gal", "count/area", "gal", "a unit for a count over an area, such as count/ft2 or count/m2"],
  ["3 gal", "angle", "gal", "a unit for an angle, such as deg"],
];

describe("units", () => {
  test("what is no unit, with the one that is near", () => {
    refused([
      ["3 xyz", "unit/unknown", "xyz", unit],
      ["3 xyz", "unit/unknown", "xyz", "a unit for a weight, such as lb or kg", { dimension: "mass" }],
      ["3 lbz", "unit/unknown", "lbz", `${unit} => lb`],
      ["3 lb/acer", "unit/unknown", "lb/acer", `${unit} => lb/acre`],
      ["3 lb/1.000 ft2", "unit/unknown", "lb/1.000 ft2", `${unit} => lb/1000 ft2`],
      ["3 lb/0 ft2", "unit/unknown", "lb/0 ft2", unit],
      ["3 long gal", "unit/unknown", "long gal", unit],
      ["3 dry quarts", "unit/unknown", "dry quarts", unit],
      ["3 N", "unit/unknown", "N", unit],
      ["3 h/c", "unit/unknown", "h/c", unit],
      ["3 lb/acre/acre/acre/acre", "unit/unknown", "lb/acre/acre/acre/acre", unit],
      ["3 lb N/acre/acre", "unit/unknown", "lb N/acre/acre", unit],
    ]);
  });

  test("what could be several, each of which can be typed back", () => {
    refused([
      ["3 oz", "unit/ambiguous", "oz", `${several("oz")} ? oz av | fl oz`],
      ["3 ounces/gal", "unit/ambiguous", "ounces/gal", `${several("ounces/gal")} ? oz av/gal | fl oz/gal`],
      ["3 tons", "unit/ambiguous", "tons", `${several("tons")} ? US ton | tonne`],
      [
        "3 ton",
        "unit/ambiguous",
        "ton",
        'a unit for a weight, such as lb or kg; "ton" could be several ? US ton | tonne',
        { dimension: "mass" },
      ],
      ["3 T/A", "unit/ambiguous", "T/A", `${several("T/A")} ? US ton/acre | tonne/acre | tbsp/acre`],
      ["3 lb/t", "unit/ambiguous", "lb/t", `${several("lb/t")} ? lb/tonne | lb/US ton | lb/tsp`],
      ["2 cwt", "unit/ambiguous", "cwt", `${several("cwt")} ? short cwt | long cwt`],
      [
        "2 hundredweights",
        "unit/ambiguous",
        "hundredweights",
        `${several("hundredweights")} ? short cwt | long cwt`,
      ],
      ["5 gr", "unit/ambiguous", "gr", `${several("gr")} ? grain | g`],
      ["5 grs", "unit/ambiguous", "grs", `${several("grs")} ? grain | g`],
      ["3 ppm", "unit/ambiguous", "ppm", `${several("ppm")} ? ppm w/w | ppm v/v | mg/L`],
      ["3 dd", "unit/ambiguous", "dd", `${several("dd")} ? °F d | °C d`],
      ["3 GDD", "unit/ambiguous", "GDD", `${several("GDD")} ? °F d | °C d`],
      ["3 degree day", "unit/ambiguous", "degree day", `${several("degree day")} ? °F d | °C d`],
      [
        "3 growing degree-days",
        "unit/ambiguous",
        "growing degree-days",
        `${several("growing degree-days")} ? °F d | °C d`,
      ],
      ["3 degree", "unit/ambiguous", "degree", `${several("degree")} ? deg | °F | °C`],
    ]);
  });

  test("letters that could be several, or that want one more word", () => {
    refused([
      ["3 M", "unit/ambiguous", "M", `${several("M")} ? m | 1000 ft2`],
      ["3 kg/M", "unit/ambiguous", "kg/M", `${several("kg/M")} ? kg/m | kg/1000 ft2`],
      ["3 #/M", "unit/ambiguous", "#/M", `${several("#/M")} ? lb/1000 ft2 | count/1000 ft2`],
      ["3 A", "unit/ambiguous", "A", `${unit}; "A" is not clear ? acre`],
      ["3 a", "unit/ambiguous", "a", `${several("a")} ? acre | 100 m2`],
      ["3 c", "unit/ambiguous", "c", `${several("c")} ? °C | cup`],
      ["5 gal/c", "unit/ambiguous", "gal/c", `${unit}; "gal/c" is not clear ? gal/cup`],
      ["5 ML", "unit/ambiguous", "ML", `${several("ML")} ? mL | m3`],
      ["5 Ml", "unit/ambiguous", "Ml", `${several("Ml")} ? mL | m3`],
      ["5 MG", "unit/ambiguous", "MG", `${several("MG")} ? mg | tonne`],
      ["5 LT", "unit/ambiguous", "LT", `${several("LT")} ? L | US ton | tonne`],
      ["3 lb/1000", "unit/ambiguous", "lb/1000", `${unit}; "lb/1000" is not clear ? lb/1000 ft2`],
      [
        "3 kg per thousand",
        "unit/ambiguous",
        "kg per thousand",
        `${unit}; "kg per thousand" is not clear ? kg/1000 ft2`,
      ],
      // the cups and spoons of Great Britain are of another size, and not known here
      ["3 imp cup", "unit/ambiguous", "imp cup", `${unit}; "imp cup" is not clear ? US cup`],
      ["3 UK teaspoons", "unit/ambiguous", "UK teaspoons", `${unit}; "UK teaspoons" is not clear ? US tsp`],
      [
        "3 imperial tablespoon",
        "unit/ambiguous",
        "imperial tablespoon",
        `${unit}; "imperial tablespoon" is not clear ? US tbsp`,
      ],
      ["3 imp bushels", "unit/ambiguous", "imp bushels", `${unit}; "imp bushels" is not clear ? US bu`],
    ]);
  });

  test("a month or a year is the period of a limit", () => {
    const period = (per: string): string =>
      `${unit}; months and years have no fixed length: give the amount alone, and the time as the period of a limit, per: ${per}`;
    for (const month of ["mo", "mos", "month", "months", "Month"])
      refused([[`3 lb/${month}`, "unit/unknown", `lb/${month}`, period("{ months: 1 }")]]);
    for (const year of ["yr", "yrs", "year", "years", "season", "seasons"])
      refused([[`3 lb/acre/${year}`, "unit/unknown", `lb/acre/${year}`, period('"calendar year"')]]);
  });

  test("a unit of another dimension, with the sister that is often meant", () => {
    refused(
      otherDimensions.map(
        ([text, dimension, got, expected]): Row => [text, "unit/mismatch", got, expected, { dimension }],
      ),
    );
  });

  test("a percent that says neither of weight nor of volume", () => {
    const which = "a percent of weight or of volume ?";
    const percent = `${which} % w/w | % v/v | % w/v`;
    refused([
      ["24 % N", "unit/ambiguous", "% N", percent],
      ["24 %", "unit/ambiguous", "%", percent, { of: "N" }],
      ["24 %", "unit/ambiguous", "%", `${which} % w/w`, { dimension: "mass/mass" }],
      ["24 % N", "unit/ambiguous", "% N", `${which} % v/v`, { dimension: "volume/volume", of: "N" }],
    ]);
    expect(parseQuantity("24 % N", { dimension: "1" }).toJSON()).toEqual({ value: 24, unit: "%", of: "N" });
    expect(parseQuantity("24 %").unit).toBe("%");
  });
});

describe("a number below the slash", () => {
  test("with a blank for the thousands, as above the slash", () => {
    expect(parseQuantity("3 kg/10 000 m2").in("kg/ha")).toBeCloseTo(3, 12);
    expect(parseQuantity("2 lb per 12 000 sq ft").in("lb/1000 ft2")).toBeCloseTo(2 / 12, 12);
    expect(parseQuantity("3 lb/1 000 ft2").in("lb/1000 ft2")).toBe(3);
    expect(parseQuantity("3 lb/12 1000 ft2").in("lb/1000 ft2")).toBe(0.25);
    expect(parseQuantity("3 lb/2M").in("lb/1000 ft2")).toBe(1.5);
  });

  test("that may be another is refused: 12100 m2 or 12 times 100 m2, a thousand M", () => {
    const unit = "a unit, such as lb/1000 ft2; below the slash, an area as one number: /1200 m2, /1000 ft2";
    refused([
      ["3 kg/12 100 m2", "unit/unknown", "kg/12 100 m2", unit],
      ["3 kg/1 100 sq m", "unit/unknown", "kg/1 100 sq m", unit],
      ["3 lb/1000 M", "unit/unknown", "lb/1000 M", unit],
    ]);
  });
});

describe("two amounts in one", () => {
  test("but two sides are no sum", () => {
    for (const text of ["40 ft x 60 ft", "40 ft by 60 ft", "40' x 60'"]) {
      const [problem] = problemsOf(() => parseQuantity(text));
      expect([text, problem?.suggestion]).toEqual([text, undefined]);
    }
    expect(problemsOf(() => parseQuantity("3 lb and 8 oz"))[0]?.suggestion).toBe("3.5 lb");
  });

  test("are refused with their sum", () => {
    const one = "one number and one unit";
    refused([
      ["5 ft 6 in", "text", "5 ft 6 in", `${one} => 5.5 ft`],
      ["3 lb 8 oz", "text", "3 lb 8 oz", `${one} => 3.5 lb`],
      ["1 gal 1 pt", "text", "1 gal 1 pt", `${one} => 1.125 gal`],
      ["2 stone 3 lb", "text", "2 stone 3 lb", `${one} => 31 lb`],
      ["0 ft 6 in", "text", "0 ft 6 in", `${one} => 0.5 ft`],
      ["1 lb 8 oz of N", "text", "1 lb 8 oz of N", `${one} => 1.5 lb of N`],
      ["1 lb of N 8 oz", "text", "1 lb of N 8 oz", `${one} => 1.5 lb of N`],
    ]);
  });
});
