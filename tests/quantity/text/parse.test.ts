import { describe, expect, test } from "vitest";
import {
  type DecimalSign,
  type Dimension,
  type ErrorCode,
  parseQuantity,
  parseRange,
  type Quantity,
} from "../../../src/quantity/index.js";
import { errorOf } from "../../errors.js";

/** Options that come from a table: the compiler knows nothing of them. */
interface ParseOptions {
  readonly measures?: string;
  readonly dimension?: Dimension;
  readonly of?: string;
  readonly decimal?: DecimalSign;
}
const read = (text: string, options: ParseOptions): Quantity<string, string> =>
  parseQuantity(text, options as { decimal: DecimalSign });

/** One test per row, named by its text. */
const named = <R extends readonly [string, ...unknown[]]>(
  rows: readonly R[],
): readonly { readonly name: string; readonly row: R }[] => rows.map((row) => ({ name: row[0], row }));

type Row = readonly [text: string, value: number, unit: string, of?: string, options?: ParseOptions];

describe("numbers", () => {
  test.each(
    named<Row>([
      ["3 lb", 3, "lb"],
      ["3lb", 3, "lb"],
      ["+3 lb", 3, "lb"],
      ["-3 lb", -3, "lb"],
      ["−3 lb", -3, "lb"],
      [".5 lb", 0.5, "lb"],
      ["3. lb", 3, "lb"],
      ["0.9 lb", 0.9, "lb"],
      ["12,400 ft2", 12400, "ft2"],
      ["1,234,567.5 ft2", 1234567.5, "ft2"],
      ["12 400 ft2", 12400, "ft2"],
      ["12 400 ft2", 12400, "ft2"],
      ["1 000 000.5 m2", 1000000.5, "m2"],
      ["1 000 m2", 1000, "m2"],
      ["1e3 ft2", 1000, "ft2"],
      ["2.5E-3 lb", 0.0025, "lb"],
      ["1/2 lb", 0.5, "lb"],
      ["3/16 in", 0.1875, "in"],
      ["½ lb", 0.5, "lb"],
      ["⅜ in", 0.375, "in"],
      ["1½ pt", 1.5, "pt"],
      ["1 ½ pt", 1.5, "pt"],
      ["1 1/2 pt", 1.5, "pt"],
      ["1-1/2 pt", 1.5, "pt"],
      ["1–1/2 pt", 1.5, "pt"],
      ["-1 1/2 lb", -1.5, "lb"],
      ["3/2 lb", 1.5, "lb"],
      ["25/2 lb", 12.5, "lb"],
      ["15/16 in", 0.9375, "in"],
      ["1,5 lb", 1.5, "lb", "none", { decimal: "," }],
      ["12.400,5 m2", 12400.5, "m2", "none", { decimal: "," }],
      ["12 400,5 m2", 12400.5, "m2", "none", { decimal: "," }],
      ["0,400 kg", 0.4, "kg", "none", { decimal: "," }],
    ]),
  )("$name", ({ row: [text, value, unit, of = "none", options = {}] }) => {
    expect(read(text, options).toJSON()).toEqual({ value, unit, of });
  });

  test.each(
    named<readonly [string, readonly string[] | undefined, ParseOptions?]>([
      ["1,5 lb", ["1.5", "15"]],
      ["12,40 lb", ["12.40", "1240"]],
      ["0,400 lb", undefined],
      ["1.5 kg", ["1,5", "15"], { decimal: "," }],
      ["3 100 m2", ["3100 m2", "3 x 100 m2"]],
      ["12.400,5 lb", undefined],
      ["1,000,5 lb", undefined],
      ["1.2.3 lb", undefined],
      ["1 3/2 lb", undefined],
      ["1/0 lb", undefined],
      ["11/2 lb", ["1 1/2", "5.5"]],
      ["-113/16 in", ["1 13/16", "11 3/16", "7.0625"]],
      ["1\u00ad2 pt", undefined],
      ["3·500 lb", undefined],
      ["3·5 lb", undefined],
      ["3/1000 ft2", undefined],
      ["10² ft2", undefined],
      ["~3 lb", undefined],
      ["< 3 lb", undefined],
      ["lb 3", undefined],
      ["", undefined],
    ]),
  )("refuses $name", ({ row: [text, choices, options = {}] }) => {
    const error = errorOf(() => read(text, options));
    expect(error.code).toBe("text");
    expect(error.path).toBe("text");
    expect(error.problems[0]?.choices).toEqual(choices);
  });

  test("a number that no computer number holds", () => {
    expect(errorOf(() => parseQuantity("1e999 lb")).code).toBe("not-finite");
    expect(errorOf(() => parseQuantity("1e-400 lb")).code).toBe("not-finite");
    expect(parseQuantity("0.00 lb").value).toBe(0);
  });

  test("a thousand is written in full", () => {
    const error = errorOf(() => parseQuantity("43k ft2"));
    expect([error.code, error.suggestion]).toEqual(["text", "43000 ft2"]);
    expect(errorOf(() => parseQuantity("1.005k ft2")).suggestion).toBe("1005 ft2");
  });
});

describe("units as people type them", () => {
  test.each([
    ["3 lbs/sqft", 3, "lb/ft2"],
    ["3 pounds per square foot", 3, "lb/ft2"],
    ["3 LB/1,000 SQ. FT.", 3, "lb/1000 ft2"],
    ["3 lb/1000ft²", 3, "lb/1000 ft2"],
    ["3 lb/M", 3, "lb/1000 ft2"],
    ["3 lb/m", 3, "lb/m"],
    ["3 gal/A", 3, "gal/acre"],
    ["40 GPA", 40, "gal/acre"],
    ["0.4 gpm", 0.4, "gal/min"],
    ["3 mph", 3, "mi/h"],
    ["8 knots", 8, "nmi/h"],
    ["8 kt", 8, "nmi/h"],
    ["2 nautical miles", 2, "nmi"],
    ["40 psi", 40, "psi"],
    ["72 °F", 72, "°F"],
    ["72ºF", 72, "°F"],
    ["72 deg F", 72, "°F"],
    ["72 degF", 72, "°F"],
    ["72F", 72, "°F"],
    ["22 C", 22, "°C"],
    ["22 ℃", 22, "°C"],
    ["300 K", 300, "K"],
    ["2 acres", 2, "acre"],
    ["2 ac", 2, "acre"],
    ["2 hectares", 2, "ha"],
    ["5 US gal", 5, "gal"],
    ["5 U.S. gallons", 5, "gal"],
    ["5 imp gal", 5, "imp gal"],
    ["5 imperial gallons", 5, "imp gal"],
    ["4 imp. fl. oz.", 4, "imp fl oz"],
    ["5 fl. oz.", 5, "fl oz"],
    ["5 floz", 5, "fl oz"],
    ["5 fluid ounces", 5, "fl oz"],
    ["2 Tbsp", 2, "tbsp"],
    ["2 tbs", 2, "tbsp"],
    ["2 tsp.", 2, "tsp"],
    ["2 quarts", 2, "qt"],
    ["5 oz av", 5, "oz"],
    ["5 ounces by weight", 5, "oz"],
    ["2 cubic yards", 2, "yd3"],
    ["2 cu ft", 2, "ft3"],
    ["5 acre-inches", 5, "acre-in"],
    ["50 µm", 50, "um"],
    ["50 μS/cm", 50, "uS/cm"],
    ["1.2 ds/m", 1.2, "dS/m"],
    ["15 meq/100g", 15, "meq/100 g"],
    ["6 MJ/m²/day", 6, "MJ/m2/d"],
    ["5 kg ha-1", 5, "kg/ha"],
    ["3 d⁻¹", 3, "1/d"],
    ["5 kg·ha⁻¹", 5, "kg/ha"],
    ["3 lb/MSF", 3, "lb/1000 ft2"],
    ["3 lb/kft2", 3, "lb/1000 ft2"],
    ["3 lb/M sq. ft.", 3, "lb/1000 ft2"],
    ["5 kg ha⁻¹ d⁻¹", 5, "kg/ha/d"],
    ["5 g m⁻²", 5, "g/m2"],
    ["3 t/ha", 3, "t/ha"],
    ["1 in/wk", 1, "in/week"],
    ["5 per day", 5, "1/d"],
    ['6"', 6, "in"],
    ["5 % w/w", 5, "% w/w"],
    ["5% (v/v)", 5, "% v/v"],
    ["5% by weight", 5, "% w/w"],
    ["45 %", 45, "%"],
    ["3 % slope", 3, "% grade"],
    ["3 1000 ft2", 3, "1000 ft2"],
    ["3 × 1,000 ft²", 3, "1000 ft2"],
    ["€12/kg", 12, "money:EUR/kg"],
    ["12 USD/lb", 12, "money:USD/lb"],
    ["USD 12.5", 12.5, "money:USD"],
  ] as const)("%s", (text, value, unit) => {
    expect(parseQuantity(text).toJSON()).toEqual({ value, unit, of: "none" });
  });

  test("a number below the slash divides", () => {
    expect(parseQuantity("2 pt per 100 gallons").toJSON()).toEqual({
      value: 0.02,
      unit: "pt/gal",
      of: "none",
    });
    expect(parseQuantity("5 lb/100 sq ft").in("lb/1000 ft2" as never)).toBeCloseTo(50, 12);
    expect(errorOf(() => parseQuantity("3 lb/1.000 ft2")).code).toBe("unit/unknown");
    expect(errorOf(() => parseQuantity("3 lb/0 ft2")).code).toBe("unit/unknown");
  });

  test.each<readonly [string, readonly string[]]>([
    ["3 oz", ["oz av", "fl oz"]],
    ["3 oz/1000 ft2", ["oz av/1000 ft2", "fl oz/1000 ft2"]],
    ["3 T", ["US ton", "tonne", "tbsp"]],
    ["3 t", ["tonne", "US ton", "tsp"]],
    ["3 tons/acre", ["US ton/acre", "tonne/acre"]],
    ["5 gr", ["grain", "g"]],
    ["450 ppm", ["ppm w/w", "ppm v/v", "mg/L"]],
    ["24 % N", ["% w/w", "% v/v", "% w/v"]],
    ["3 #/M", ["lb/1000 ft2", "count/1000 ft2"]],
    ["3 kg/M", ["kg/m", "kg/1000 ft2"]],
    ["3 M", ["m", "1000 ft2"]],
    ["20 c", ["°C", "cup"]],
    ["5 Mg", ["mg", "tonne"]],
    ["5 ML", ["mL", "m3"]],
    ["90 GDD", ["°F d", "°C d"]],
    ["90°", ["deg", "°F", "°C"]],
    ["90 degrees", ["deg", "°F", "°C"]],
    ["5 LT", ["L", "US ton", "tonne"]],
    ["5 MM", ["mm"]],
    ["$5/lb", ["USD", "CAD", "AUD", "NZD", "MXN", "SGD", "HKD"]],
  ])("refuses %s with the choices", (text, choices) => {
    const error = errorOf(() => parseQuantity(text));
    expect(error.code).toBe("unit/ambiguous");
    expect(error.problems[0]?.choices).toEqual(choices);
    for (const choice of choices) {
      if (!/^[A-Z]{3}$/.test(choice)) expect(parseQuantity(`3 ${choice}`).value).toBe(3);
    }
  });

  test.each<readonly [string, ErrorCode]>([
    ["3", "missing"],
    ["3 xyzzy", "unit/unknown"],
    ["3 months", "unit/unknown"],
    ["3 lb/1000", "unit/ambiguous"],
    ["3 seeds per thousand", "unit/ambiguous"],
    ["3 cwt", "unit/ambiguous"],
    ["3 dry quarts", "unit/unknown"],
    ["3 lb/lb/lb/lb/lb", "unit/unknown"],
    ["3 acre/psi", "unit/unknown"],
    ["300 m-2", "unit/unknown"],
    ["300 m⁻²", "unit/unknown"],
    ["5 kg/m-2", "unit/unknown"],
    ["LBS 5", "text"],
    ["GAL 5", "text"],
    ["KWD 1.234", "text"],
  ])("refuses %s", (text, code) => {
    expect(errorOf(() => parseQuantity(text)).code).toBe(code);
  });
});

describe("what the trade writes", () => {
  test.each([
    "3.6 lb/1000",
    "3.6#/1000",
    "3.6 lb/K",
    "3.6 lb/k",
    "3.6 lb per thousand",
    "3.6 lb/1,000",
    "3.6 lb per 1000",
  ])("%s is per 1000 ft2 where a rate by weight is wanted, and else refused with that choice", (text) => {
    expect(parseQuantity(text, { dimension: "mass/area" }).toJSON()).toEqual({
      value: 3.6,
      unit: "lb/1000 ft2",
      of: "none",
    });
    const { code, problems } = errorOf(() => parseQuantity(text));
    expect(code).toBe("unit/ambiguous");
    expect(problems[0]?.choices).toContain("lb/1000 ft2");
    for (const choice of problems[0]?.choices ?? []) expect(parseQuantity(`3.6 ${choice}`).value).toBe(3.6);
  });

  test.each<readonly [string, Dimension, number, string, ParseOptions]>([
    ["3 lb N/1000", "mass/area", 3, "lb/1000 ft2", {}],
    ["2 gal/1000", "volume/area", 2, "gal/1000 ft2", {}],
    ["2 bu/1000", "volume/area", 2, "bu/1000 ft2", {}],
    ["3 oz/yd2", "mass/area", 3, "oz/yd2", {}],
    ["5 lb/100 ft2", "mass/area", 0.05, "lb/ft2", {}],
    ["2 lb/100 gal", "mass/volume", 0.02, "lb/gal", {}],
    ["3 imp pt", "volume", 0.375, "imp gal", {}],
    ["3 imperial pints", "volume", 0.375, "imp gal", {}],
    ["2 stone", "mass", 28, "lb", {}],
    ["3 long cwt/acre", "mass/area", 336, "lb/acre", {}],
    ["3 short cwt", "mass", 300, "lb", {}],
    ["3 long tons", "mass", 6720, "lb", {}],
    ["3 pt/acre", "volume/area", 0.375, "imp gal/acre", { measures: "imperial" }],
    ["40 gpa", "volume/area", 40, "imp gal/acre", { measures: "imperial" }],
    ["5 fl. oz. per gallon", "volume/volume", 5, "imp fl oz/imp gal", { measures: "imperial" }],
    ["5 US gal", "volume", 5, "gal", { measures: "imperial" }],
    ["5 U.S. gallons", "volume", 5, "gal", { measures: "imperial" }],
    ["5 imp gal", "volume", 5, "imp gal", { measures: "imperial" }],
    ["3 cwt", "mass", 336, "lb", { measures: "imperial" }],
    ["3 cwt", "mass", 300, "lb", { measures: "US" }],
    ["3 galvanized", "volume", Number.NaN, "", { measures: "imperial" }],
  ])("%s as %s", (text, dimension, value, unit, options) => {
    if (unit === "") {
      expect(
        errorOf(() => parseQuantity(text, { ...options, dimension } as { dimension: Dimension })).code,
      ).toBe("unit/unknown");
      return;
    }
    const read = parseQuantity(text, { ...options, dimension } as { dimension: Dimension });
    expect([read.value, read.unit]).toEqual([value, unit]);
  });

  test("an imperial reading is not remembered for a US one, and leaves an id alone", () => {
    expect(parseQuantity("3 gal", { measures: "imperial" } as never).unit).toBe("imp gal");
    expect(parseQuantity("3 gal").unit).toBe("gal");
    const of = "product:two gal mix";
    expect(
      parseQuantity(`3 gal of ${of}`, { dimension: "volume", of, measures: "imperial" }).toJSON(),
    ).toEqual({
      value: 3,
      unit: "imp gal",
      of,
    });
    expect(errorOf(() => parseQuantity("2 stone 3 lb")).suggestion).toBe("31 lb");
  });

  test("a month or a year below the slash names the period of a limit", () => {
    expect(errorOf(() => parseQuantity("3 lb/1000 ft2/month")).expected).toContain("per: { months: 1 }");
    expect(errorOf(() => parseQuantity("3 lb/acre/yr")).expected).toContain('per: "calendar year"');
  });
});

describe("what the expected dimension settles", () => {
  test.each<readonly [string, Dimension, string]>([
    ["3 oz", "mass", "oz"],
    ["3 oz/M", "mass/area", "oz/1000 ft2"],
    ["3 t", "mass", "t"],
    ["3 #/M", "mass/area", "lb/1000 ft2"],
    ["3 #/sq ft", "count/area", "count/ft2"],
    ["12 per ft2", "count/area", "count/ft2"],
    ["300 m-2", "count/area", "count/m2"],
    ["90 degrees", "angle", "deg"],
    ["5 MM", "length", "mm"],
    ["KWD 1.234", "money:KWD", "money:KWD"],
    ["12", "count", "count"],
    ["12", "1", "1"],
    ["10 °F", "temperature difference", "°F diff"],
    ["10 °F", "temperature", "°F"],
    ["$5/lb", "money:CAD/mass", "money:CAD/lb"],
    ["45 %", "1", "%"],
  ])("%s as %s", (text, dimension, unit) => {
    const q = parseQuantity(text, { dimension });
    expect([q.unit, q.dimension]).toEqual([unit, dimension]);
  });

  test.each<readonly [string, Dimension, string | undefined]>([
    ["3 oz", "volume", "fl oz"],
    ["3 oz/M", "volume/area", "fl oz/1000 ft2"],
    ["3 yards", "volume", "yd3"],
    ["500 ft", "area", "ft2"],
    ["3 lb/m", "mass/area", "lb/1000 ft2"],
    ["3 lb/1000 ft", "mass/area", "lb/1000 ft2"],
    ["3 lb/100 ft", "mass/area", undefined],
    ["3 L/100 m", "volume/area", "L/100 m2"],
    ["2 %", "length/length", "% grade"],
    ["3 fl oz/acre", "mass/area", undefined],
  ])("%s is no %s", (text, dimension, suggestion) => {
    const error = errorOf(() => parseQuantity(text, { dimension }));
    expect([error.code, error.suggestion]).toEqual(["unit/mismatch", suggestion]);
  });

  test.each<readonly [Dimension, string]>([
    ["mass/mass", "% w/w"],
    ["volume/volume", "% v/v"],
    ["mass/volume", "% w/v"],
  ])("2 %% as %s, with the one that can be typed there", (dimension, unit) => {
    const error = errorOf(() => parseQuantity("2 %", { dimension }));
    expect(error.code).toBe("unit/ambiguous");
    expect(error.problems[0]?.choices).toEqual([unit]);
  });
});

describe("substances", () => {
  test.each(
    named<Row>([
      ["3 lb N/1000 ft2", 3, "lb/1000 ft2", "N"],
      ["3 lb of N per 1000 sq ft", 3, "lb/1000 ft2", "N"],
      ["3 lb/1000 ft2 of N", 3, "lb/1000 ft2", "N"],
      ["3 lb/1000 ft2 N", 3, "lb/1000 ft2", "N"],
      ["0.7 lb P2O5/1000 ft2", 0.7, "lb/1000 ft2", "P2O5"],
      ["0.7 lb P₂O₅/M", 0.7, "lb/1000 ft2", "P2O5"],
      ["0.7 lb phosphate/M", 0.7, "lb/1000 ft2", "P2O5"],
      ["0.7 lb phosphorus/M", 0.7, "lb/1000 ft2", "P"],
      ["2 lb pure live seed/M", 2, "lb/1000 ft2", "pure live seed"],
      ["2 lb PLS/M", 2, "lb/1000 ft2", "pure live seed"],
      ["0.5 lb a.i./acre", 0.5, "lb/acre", "ai"],
      ["5 kg N ha⁻¹", 5, "kg/ha", "N"],
      ["10 lb K", 10, "lb", "K"],
      ["10 K", 10, "K", "none"],
      ["24 % w/w N/product", 24, "% w/w", "N/product"],
      ["24 % w/w of N:slow/product", 24, "% w/w", "N:slow/product"],
      ["2 fl oz product/gal spray", 2, "fl oz/gal", "product/spray"],
      ["12 USD/lb N", 12, "money:USD/lb", "none/N"],
      ["3 lb/acre of product:feed-a", 3, "lb/acre", "product:feed-a"],
      ["3 lb of product:feed-a/1000 ft2", 3, "lb/1000 ft2", "product:feed-a"],
      ["5 g/L of N", 5, "g/L", "N"],
      ["3 acres treated", 3, "acre", "treated"],
      ["3 lb/acre", 3, "lb/acre", "N", { of: "N" }],
      ["3 lb N/acre", 3, "lb/acre", "N", { of: "N" }],
      ["3 lb product/acre", 3, "lb/acre", "product:feed-a", { of: "product:feed-a" }],
      ["5 g/L N", 5, "g/L", "N", { of: "N" }],
      ["2 fl oz/gal of spray", 2, "fl oz/gal", "none/spray", { of: "none/spray" }],
      ["4 qt of product:feed-a per acre", 4, "qt/acre", "product:feed-a"],
      ["4 qt product:feed-a per acre", 4, "qt/acre", "product:feed-a"],
      ["0.5 lb of ai:2,4-D per acre", 0.5, "lb/acre", "ai:2,4-D"],
      ["3 lb per acre of product:feed-a", 3, "lb/acre", "product:feed-a"],
      ["3 lb/acre of product:a per mix", 3, "lb/acre", "product:a per mix", { of: "product:a per mix" }],
      ["2 fl oz per 100 lb of seed", 0.02, "fl oz/lb", "none/seed", { of: "none/seed" }],
    ]),
  )("$name", ({ row: [text, value, unit, of = "none", options = {}] }) => {
    expect(read(text, options).toJSON()).toEqual({ value, unit, of });
  });

  test.each(
    named<readonly [string, ErrorCode, ParseOptions?]>([
      ["3 lb N/acre", "substance/mismatch", { of: "K2O" }],
      ["3 lb N/acre", "substance/mismatch", { of: "none" }],
      ["3 lb N/acre", "substance/mismatch", { of: "N:slow" }],
      ["3 lb product:a/acre", "substance/mismatch", { of: "product:b" }],
      ["3 lb product:a/acre", "substance/mismatch", { of: "product" }],
      ["3 lb N/1000 ft2 of K", "conflict"],
      ["3 lb N/1000 ft2 of product:feed-a", "conflict"],
      ["2 fl oz per 100 lb of seed", "conflict"],
      ["3 lb per lb of N", "conflict"],
      ["3 USD/lb of treated", "conflict"],
      ["2 qt per 100 gal of product:feed-a", "conflict"],
      ["3 lb N of K", "substance/unknown"],
      ["4 qt of product:feed-a per acer", "unit/unknown"],
      ["4 qt product:feed-a per month", "unit/unknown"],
      ["4 lb/acre of product:feed-a per year", "unit/unknown"],
      ["3 lb bags of N", "substance/unknown"],
      ["2 fl oz/gal of spray", "conflict"],
      ["5 g/L product", "conflict"],
      ["5 lb/lb N", "conflict"],
      ["5 fl oz/gal N", "conflict"],
      ["3 lb N/lb N", "conflict"],
      ["3 lb n/acre", "substance/unknown"],
      ["3 lb nitrogin/acre", "substance/unknown"],
    ]),
  )("refuses $name", ({ row: [text, code, options = {}] }) => {
    expect(errorOf(() => read(text, options)).code).toBe(code);
  });

  test("the choices of a conflict keep the number below the slash, and can be typed back", () => {
    for (const [text, wanted] of [
      ["2 qt/100 gal of water", ["water", "product/water"]],
      ["2 qt per 100 gal of product", ["product", "none/product"]],
    ] as const) {
      const choices = errorOf(() => parseQuantity(text)).problems[0]?.choices ?? [];
      const typed = choices.map((choice) => parseQuantity(`2 ${choice}`));
      expect(typed.map(({ of }) => of)).toEqual(wanted);
      for (const q of typed) expect([q.value, q.unit]).toEqual([0.02, "qt/gal"]);
    }
  });

  test("a price for a package, not a fraction of a dollar", () => {
    const price = parseQuantity("$28/50 lb", { dimension: "money:USD/mass" });
    expect([price.value, price.unit]).toEqual([0.56, "money:USD/lb"]);
    expect(parseQuantity("$28 per 32 oz", { dimension: "money:USD/mass" }).value).toBe(0.875);
    expect(errorOf(() => parseQuantity("$1/2", { dimension: "money:USD" })).code).toBe("unit/unknown");
  });

  test("all that is wrong is said at once", () => {
    const error = errorOf(() => parseQuantity("1,5 lbz of nitrogin"));
    expect(error.problems.map(({ code, suggestion }) => [code, suggestion])).toEqual([
      ["text", undefined],
      ["unit/unknown", "lb"],
      ["substance/unknown", "N"],
    ]);
  });
});

describe("ranges", () => {
  test.each<readonly [string, number, number, string]>([
    ["1.5-2 pt/acre", 1.5, 2, "pt/acre"],
    ["1.5 – 2 pt/acre", 1.5, 2, "pt/acre"],
    ["1.5 to 2 pt/acre", 1.5, 2, "pt/acre"],
    ["0-1/2 lb", 0, 0.5, "lb"],
    ["1/4-1/2 lb", 0.25, 0.5, "lb"],
    ["1-1/2 to 2 pt", 1.5, 2, "pt"],
    ["1-2 1/2 pt", 1, 2.5, "pt"],
    ["-2 to 3 °C", -2, 3, "°C"],
    ["1 pt to 2 pt", 1, 2, "pt"],
    ["1 pt - 2 pt", 1, 2, "pt"],
    ["2 pt", 2, 2, "pt"],
    ["1-1/2 pt", 1.5, 1.5, "pt"],
    ["1\u00ad2 pt", 1, 2, "pt"],
  ])("%s", (text, min, max, unit) => {
    const range = parseRange(text);
    expect([range.min.value, range.max.value, range.min.unit, range.max.unit]).toEqual([
      min,
      max,
      unit,
      unit,
    ]);
  });

  test("each end may have its own unit", () => {
    const { min, max } = parseRange("16 fl oz - 1 qt");
    expect([min.toString(), max.toString()]).toEqual(["16 fl oz", "1 qt"]);
  });

  test.each<readonly [string, ErrorCode]>([
    ["2-1.5 pt", "range"],
    ["1 lb - 2 pt", "unit/mismatch"],
    ["1 lb N - 2 lb K", "conflict"],
    ["1-2 oz", "unit/ambiguous"],
    ["1 pt - 2", "missing"],
    ["x-2 pt", "text"],
  ])("refuses %s", (text, code) => {
    expect(errorOf(() => parseRange(text)).code).toBe(code);
  });

  test.each(["1.5-2 pt", "1.5 to 2 pt", "1 pt - 2 pt", "0-1/2 lb", "1…2 lb"])(
    "parseQuantity points to parseRange for %s",
    (text) => {
      const error = errorOf(() => parseQuantity(text));
      expect([error.code, error.expected]).toEqual(["text", "one amount; parseRange reads a range"]);
    },
  );
});

describe("arguments", () => {
  test.each([undefined, null, 3, Number.NaN, {}, [], () => 3, Symbol("x"), 3n])("no text: %s", (input) => {
    const code = input === undefined ? "missing" : "type";
    expect(errorOf(() => parseQuantity(input as string)).code).toBe(code);
    expect(errorOf(() => parseRange(input as string)).code).toBe(code);
  });

  test("options are checked", () => {
    const bad = (options: unknown): string => errorOf(() => read("3 lb", options as ParseOptions)).path;
    expect(bad(null)).toBe("options");
    expect(bad({ dimension: "foo" })).toBe("options.dimension");
    expect(bad({ of: "foo" })).toBe("options.of");
    expect(bad({ decimal: ";" })).toBe("options.decimal");
    expect(bad({ measures: "UK" })).toBe("options.measures");
    expect(bad({ dimesion: "mass" })).toBe("options.dimesion");
  });

  test("a long text is refused unread", () => {
    expect(parseQuantity(`3 ${" ".repeat(196)}lb`).value).toBe(3);
    const error = errorOf(() => parseQuantity(`3 ${" ".repeat(197)}lb`));
    expect([error.code, error.got]).toEqual(["text", "201 characters"]);
    expect(errorOf(() => parseRange("9".repeat(1_000_000))).code).toBe("text");
  });
});
