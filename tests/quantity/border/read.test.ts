import { describe, expect, test } from "vitest";
import {
  problemText,
  quantity,
  quantityFrom,
  quantitySchema,
  RatewrightError,
  readQuantity,
} from "../../../src/quantity/index.js";

const rate = { dimension: "mass/area", of: "N" } as const;

describe("readQuantity", () => {
  test.each<readonly [unknown, number]>([
    [quantity(3, "lb/1000 ft2", "N"), 3],
    [{ value: 3, unit: "lb/1000 ft2", of: "N" }, 3],
    [{ value: "3", unit: "lb/1000 ft2", of: "N" }, 3],
    [{ value: "1 1/2", unit: "lb/1000 ft2", of: "N" }, 1.5],
    [{ value: " 1,250.5 ", unit: "lb/1000 ft2", of: "N" }, 1250.5],
    ["3 lb/M", 3],
    ["3 lb N per 1000 sq ft", 3],
  ])("%s", (input, value) => {
    expect(readQuantity(input, rate)).toEqual({ value: quantity(value, "lb/1000 ft2", "N"), problems: [] });
  });

  test("reports all that is wrong, each with its path and a suggestion", () => {
    const read = readQuantity(
      { value: "x", unit: "lbs/acre", of: "nitrogen" },
      { ...rate, path: "form.rate" },
    );
    expect(read).toMatchObject({
      value: null,
      problems: [
        { code: "not-finite", path: "form.rate.value", got: '"x"' },
        { code: "unit/unknown", path: "form.rate.unit", suggestion: "lb/acre" },
        { code: "substance/unknown", path: "form.rate.of", suggestion: "N" },
      ],
    });
  });

  const problems = (input: unknown, expected: object = rate): unknown => {
    const read = readQuantity(input, expected as typeof rate);
    return read.problems.map(({ code, path, suggestion }) => [code, path, suggestion]);
  };

  test("what is missing is never made up", () => {
    expect(problems({})).toEqual([
      ["missing", "quantity.value", undefined],
      ["missing", "quantity.unit", undefined],
      ["missing", "quantity.of", undefined],
    ]);
    expect(problems({ value: 3, unit: "lb/acre" })).toEqual([["missing", "quantity.of", undefined]]);
    expect(problems({ value: 3, unit: "lb/acre" }, { dimension: "mass/area" })).toEqual([]);
    expect(problems({ value: 3, unit: "acre" }, { dimension: "area", of: "none" })).toEqual([]);
    for (const nothing of [undefined, null, ""]) {
      expect(problems(nothing)).toEqual([["missing", "quantity", undefined]]);
    }
  });

  test("an empty field and a blank one are both missing", () => {
    for (const blank of ["", " ", " \t\n", "\u00a0"]) {
      expect(problems(blank)).toEqual([["missing", "quantity", undefined]]);
      expect(problems({ value: blank, unit: blank, of: blank })).toEqual([
        ["missing", "quantity.value", undefined],
        ["missing", "quantity.unit", undefined],
        ["missing", "quantity.of", undefined],
      ]);
    }
  });

  test("the unit of a record gets the choices of a typed text, as units", () => {
    const told = (unit: string, dimension: "mass" | "mass/area" | "mass/volume" | "volume" = "mass") => {
      const [one] = readQuantity({ value: 3, unit }, { dimension }).problems;
      return [one?.code, one?.choices ?? one?.suggestion, one?.params];
    };
    expect(told("ton")).toEqual(["unit/ambiguous", ["US ton", "t"], undefined]);
    expect(told("tonne")).toEqual(["unit/unknown", "t", undefined]);
    expect(told("lb/1000", "mass/area")).toEqual(["unit/unknown", "lb/1000 ft2", undefined]);
    expect(told("lb/100 gal", "mass/volume")).toEqual([
      "unit/unknown",
      undefined,
      { unit: "lb/gal", divisor: 100 },
    ]);
    expect(told("imp pt", "volume")).toEqual(["unit/unknown", undefined, { unit: "imp gal", divisor: 8 }]);
    expect(told("cwt")[0]).toBe("unit/unknown");
    const stone = readQuantity({ value: 3, unit: "stone" }, { dimension: "mass" }).problems[0];
    expect(stone?.expected).toContain("multiply the value by 14 and give lb");
  });

  test("an expectation has no unknown fields, and known choices", () => {
    const bad = (more: object) => () => readQuantity("3 lb", { dimension: "mass", ...more } as never);
    for (const more of [
      { boundary: "positive" },
      { bound: "negative" },
      { decimal: ";" },
      { measures: "UK" },
      { path: 3 },
    ])
      expect(bad(more)).toThrow(RatewrightError);
    expect(() => readQuantity("3 lb", null as never)).toThrow(RatewrightError);
    expect(readQuantity("3 pt", { dimension: "volume", measures: "imperial" }).value?.in("imp gal")).toBe(
      0.375,
    );
  });

  test("wrong kinds", () => {
    expect(problems(3)).toEqual([["type", "quantity", undefined]]);
    expect(problems([])).toEqual([["type", "quantity", undefined]]);
    expect(problems({ value: 3, unit: "fl oz/acre", of: "K2O" })).toEqual([
      ["unit/mismatch", "quantity.unit", undefined],
      ["substance/mismatch", "quantity.of", undefined],
    ]);
    expect(problems({ value: Number.NaN, unit: 3, of: 3 })).toEqual([
      ["not-finite", "quantity.value", undefined],
      ["type", "quantity.unit", undefined],
      ["type", "quantity.of", undefined],
    ]);
    expect(problems({ value: "1,5", unit: "lb/acre", of: "N" })).toEqual([
      ["text", "quantity.value", undefined],
    ]);
    expect(problems({ value: "3 lb", unit: "lb/acre", of: "N" })).toEqual([
      ["not-finite", "quantity.value", undefined],
    ]);
    expect(problems({ value: 3, unit: "oz" }, { dimension: "volume" })).toEqual([
      ["unit/mismatch", "quantity.unit", "fl oz"],
    ]);
  });

  test("bounds", () => {
    const mass = { dimension: "mass", bound: "positive" };
    expect(problems({ value: 0, unit: "lb" }, mass)).toEqual([["range", "quantity.value", undefined]]);
    expect(problems("0 lb", mass)).toEqual([["range", "quantity", undefined]]);
    expect(problems({ value: 0, unit: "lb" }, { ...mass, bound: "non-negative" })).toEqual([]);
    expect(problems({ value: -1, unit: "lb" }, { ...mass, bound: "non-negative" })).toEqual([
      ["range", "quantity.value", undefined],
    ]);
    expect(problems({ value: -1, unit: "lbz" }, mass)).toEqual([
      ["range", "quantity.value", undefined],
      ["unit/unknown", "quantity.unit", "lb"],
    ]);
  });

  test("decimal comma in texts", () => {
    const input = { value: "1,5", unit: "kg/ha", of: "N" };
    expect(readQuantity(input, { ...rate, decimal: "," })).toEqual({
      value: quantity(1.5, "kg/ha", "N"),
      problems: [],
    });
  });

  test("an expectation that nothing could meet is an error of the caller", () => {
    expect(() => readQuantity("3 lb", { dimension: "weight" as "mass" })).toThrow(RatewrightError);
    expect(() => readQuantity("3 lb", { dimension: "mass", of: "nitrogen" as "N" })).toThrow(/expected.of/);
  });
});

describe("quantityFrom", () => {
  test("reads back what JSON wrote", () => {
    const q = quantity(3, "lb/1000 ft2", "N");
    const back = quantityFrom(JSON.parse(JSON.stringify(q)));
    expect(back).toEqual(q);
    expect(back).toBeInstanceOf(q.constructor);
    expect(quantityFrom(structuredClone({ ...q })).toJSON()).toEqual(q.toJSON());
  });

  test("throws every problem", () => {
    try {
      quantityFrom({ value: "x", unit: "lbs", of: "nitrogen" }, "bag");
      expect.unreachable();
    } catch (error) {
      expect((error as RatewrightError).problems.map(({ path }) => path)).toEqual([
        "bag.value",
        "bag.unit",
        "bag.of",
      ]);
    }
    expect(() => quantityFrom("3 lb")).toThrow(RatewrightError);
  });
});

describe("quantitySchema", () => {
  const { validate, vendor, version } = quantitySchema({ ...rate, bound: "positive" })["~standard"];

  test("is a Standard Schema v1", () => {
    expect([vendor, version]).toEqual(["ratewright", 1]);
    expect(validate("3 lb/M")).toEqual({ value: quantity(3, "lb/1000 ft2", "N") });
  });

  test("issues point at the part", () => {
    const result = validate({ value: 0, unit: "lbs/acre" });
    expect(result.issues).toEqual([
      { path: ["value"], message: "value: expected more than zero, got 0" },
      { path: ["unit"], message: expect.stringContaining("did you mean lb/acre?") },
      { path: ["of"], message: "of: expected N, got nothing" },
    ]);
    expect(validate(3).issues?.[0]?.path).toEqual([]);
  });

  test("a wrong expectation is told when the schema is made", () => {
    expect(() => quantitySchema({ dimension: "weight" as "mass" })).toThrow(RatewrightError);
  });

  test.each(["1.5x", "x", "3 lb", "12 400 ft2"])(
    "a number field with %j in it says what belongs there",
    (value) => {
      const { problems } = readQuantity({ value, unit: "lb" }, { dimension: "mass" });
      expect(problems.map(problemText)).toEqual([
        `quantity.value: expected a number alone, such as 12.5 or 1 1/2, got ${JSON.stringify(value)}`,
      ]);
    },
  );

  // what Intl.NumberFormat writes for these languages, with the decimal sign that it takes
  test.each([
    ["en-US", "."],
    ["de-CH", "."],
    ["it-CH", "."],
    ["de", ","],
    ["fr", ","],
    ["sv", ","],
    ["pt-BR", ","],
  ] as const)("a number written for %s is read back", (locale, decimal) => {
    for (const number of [0.5, 999, 12_400, 1_234_567.5]) {
      const value = new Intl.NumberFormat(locale).format(number);
      const read = readQuantity({ value, unit: "ft2" }, { dimension: "area", decimal });
      expect([value, read.value?.value]).toEqual([value, number]);
    }
  });

  test.each(["12'40", "1'234'56", "12' 400", "12'400'", "5'100\"", "1'234 567", "0'400", "1234'567"])(
    "%s is no number with groups of three",
    (value) => {
      expect(readQuantity({ value, unit: "ft2" }, { dimension: "area" }).value).toBeNull();
    },
  );

  test("a problem without choices names none", () => {
    expect(
      problemText({ code: "missing", path: "product", got: '"feed-b"', expected: "a product", choices: [] }),
    ).toBe('product: expected a product, got "feed-b"');
  });
});
