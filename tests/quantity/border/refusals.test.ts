import { describe, expect, test } from "vitest";
import {
  convertedNumbers,
  quantity,
  quantityFrom,
  quantityReviver,
  quantitySchema,
  readExact,
  readQuantity,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const mass = { dimension: "mass" } as const;
const rate = { dimension: "mass/area", of: "N" } as const;

const line = ({
  code,
  path,
  expected,
  got,
  suggestion,
  choices,
}: ReturnType<typeof problemsOf>[number]): string =>
  `${code} | ${path} | ${expected} | ${got}${suggestion === undefined ? "" : ` => ${suggestion}`}${choices === undefined ? "" : ` ? ${choices.join(", ")}`}`;
const read = (input: unknown, expected: object = mass): readonly string[] =>
  readQuantity(input, expected as typeof mass).problems.map(line);
const exact = (input: unknown, expected: object = mass): readonly string[] =>
  readExact(input, expected as typeof mass).problems.map(line);
const told = (call: () => unknown): readonly string[] => problemsOf(call).map(line);

describe("a whole that is no quantity", () => {
  test("in words", () => {
    const whole = "a quantity, { value, unit, of }, or a text";
    expect(read(3)).toEqual([`type | quantity | ${whole} | 3`]);
    expect(read(true)).toEqual([`type | quantity | ${whole} | true`]);
    expect(read([3, "lb"])).toEqual([`type | quantity | ${whole} | a list`]);
    expect(read(undefined)).toEqual(["missing | quantity | a quantity, such as 3 lb | undefined"]);
    expect(read(null, { ...mass, path: "bag" })).toEqual(["missing | bag | a quantity, such as 3 lb | null"]);
    expect(read(" ", { ...mass, path: "bag" })).toEqual(['missing | bag | a quantity, such as 3 lb | " "']);
    const thrower = Object.defineProperty({}, "value", {
      get: () => {
        throw new Error("not now");
      },
    });
    expect(read(thrower)).toEqual([`type | quantity | ${whole} | a record`]);
  });

  test("by exact names", () => {
    const whole = "a quantity, { value, unit, of }; readQuantity reads a text";
    expect(exact("3 lb")).toEqual([`type | quantity | ${whole} | "3 lb"`]);
    expect(exact(3, { ...mass, path: "bag" })).toEqual([`type | bag | ${whole} | 3`]);
    expect(exact({ value: 3, unit: "lbs" })).toEqual([
      'unit/unknown | quantity.unit | a unit for a weight, such as lb or kg, by its exact name; readQuantity reads words | "lbs"',
    ]);
    expect(exact({ value: 3, unit: "lb", of: "nitrogen" })).toEqual([
      'substance/unknown | quantity.of | a substance, such as N or product | "nitrogen"',
    ]);
  });

  test("from a store", () => {
    expect(told(() => quantityFrom("3 lb", "bag"))).toEqual(['type | bag | { value, unit, of } | "3 lb"']);
    expect(told(() => quantityFrom({ value: "", unit: "", of: "" }))).toEqual([
      'missing | quantity.value | a number | ""',
      'missing | quantity.unit | a unit, such as lb or kg/ha | ""',
    ]);
    expect(told(() => quantityFrom({ value: 3, unit: "xyz" }))).toEqual([
      'unit/unknown | quantity.unit | a unit, such as lb or kg/ha | "xyz"',
    ]);
    expect(told(() => quantityReviver("", Number.POSITIVE_INFINITY))).toEqual([
      "not-finite | value | a number that is not too large | infinity",
    ]);
    expect(told(() => quantityReviver("", { value: 1, unit: "lbs", of: "N" }))).toEqual([
      'unit/unknown | value.unit | a unit, such as lb or kg/ha, by its exact name; readQuantity reads words | "lbs"',
    ]);
    expect(quantityReviver("a", "lb")).toBe("lb");
  });
});

describe("the parts of a record", () => {
  test("a value", () => {
    const value = (input: unknown, more: object = {}): readonly string[] =>
      read({ value: input, unit: "lb" }, { ...mass, ...more });
    const alone = "a number alone, such as 12.5 or 1 1/2";
    expect(value(Number.NaN)).toEqual(["not-finite | quantity.value | a finite number | not a number"]);
    expect(value(true)).toEqual(["not-finite | quantity.value | a finite number | true"]);
    expect(value({})).toEqual(["not-finite | quantity.value | a finite number | a record"]);
    expect(value(() => 1)).toEqual(["not-finite | quantity.value | a finite number | a function"]);
    expect(value("1".repeat(201))).toEqual([
      `not-finite | quantity.value | a finite number | "${"1".repeat(60)}"`,
    ]);
    expect(value(undefined)).toEqual(["missing | quantity.value | a number | undefined"]);
    expect(value(null)).toEqual(["missing | quantity.value | a number | null"]);
    expect(value("x")).toEqual([`not-finite | quantity.value | ${alone} | "x"`]);
    expect(value("3 lb")).toEqual([`not-finite | quantity.value | ${alone} | "3 lb"`]);
    expect(value("1,5")).toEqual([
      'text | quantity.value | a number with "." before its decimals and groups of three; the option decimal: "," takes the other sign | "1,5" ? 1.5, 15',
    ]);
    expect(value(0, { bound: "positive" })).toEqual(["range | quantity.value | more than zero | 0"]);
    expect(value("-1", { bound: "non-negative" })).toEqual(["range | quantity.value | zero or more | -1"]);
  });

  test.each([
    ["12", 12],
    ["-12", -12],
    ["12.50", 12.5],
    [" 1 1/2 ", 1.5],
    ["1½", 1.5],
    ["1,250.5", 1250.5],
    ["12 400", 12400],
    ["1e3", 1000],
    ["123456789012345", 123456789012345],
    ["1234567890123456", 1234567890123456],
    ["0.123456789012345", 0.123456789012345],
  ] as const)("a value as text: %s", (value, number) => {
    expect(readQuantity({ value, unit: "lb" }, mass).value?.value).toBe(number);
    expect(readExact({ value, unit: "lb" }, mass).value?.value).toBe(number);
  });

  test("a decimal comma", () => {
    const wanted = { ...mass, decimal: "," } as const;
    expect(readQuantity({ value: "12,5", unit: "lb" }, wanted).value?.value).toBe(12.5);
    // the full stop groups thousands then
    expect(readQuantity({ value: "1.250", unit: "lb" }, wanted).value?.value).toBe(1250);
    expect(readQuantity({ value: "12.5", unit: "lb" }, wanted).problems[0]?.choices).toEqual(["12,5", "125"]);
  });

  test("a unit", () => {
    const unit = (input: unknown, expected: object = mass): readonly string[] =>
      read({ value: 3, unit: input }, expected);
    const pounds = "a unit for a weight, such as lb or kg";
    expect(unit(undefined)).toEqual([`missing | quantity.unit | ${pounds} | undefined`]);
    expect(unit(" ")).toEqual([`missing | quantity.unit | ${pounds} | " "`]);
    expect(unit(3)).toEqual([`type | quantity.unit | ${pounds} | 3`]);
    expect(unit("gal")).toEqual([`unit/mismatch | quantity.unit | ${pounds} | "gal"`]);
    expect(unit("oz", { dimension: "volume" })).toEqual([
      'unit/mismatch | quantity.unit | a unit for a volume, such as gal or L | "oz" => fl oz',
    ]);
    expect(unit("lbs")).toEqual([`unit/unknown | quantity.unit | ${pounds} | "lbs" => lb`]);
    expect(unit("lb of gravel")).toEqual([`unit/unknown | quantity.unit | ${pounds} | "lb of gravel"`]);
    const fourteen = "; multiply the value by 14 and give lb, or read the text as a whole with parseQuantity";
    expect(unit("stone".padEnd(200))[0]).toContain(`${pounds}${fourteen} | `);
    expect(unit("stone".padEnd(201))[0]).toContain(`${pounds} | `);
    expect(unit("xyz")).toEqual([`unit/unknown | quantity.unit | ${pounds} | "xyz"`]);
    expect(unit("x".repeat(300))).toEqual([`unit/unknown | quantity.unit | ${pounds} | "${"x".repeat(60)}"`]);
    expect(unit("ton")).toEqual([
      `unit/ambiguous | quantity.unit | ${pounds}; "ton" could be several | "ton" ? US ton, t`,
    ]);
    expect(unit("cwt")).toEqual([
      `unit/unknown | quantity.unit | ${pounds}; "cwt" could be several: short cwt or long cwt, which parseQuantity reads in a text | "cwt"`,
    ]);
    expect(unit("stone")).toEqual([
      `unit/unknown | quantity.unit | ${pounds}; multiply the value by 14 and give lb, or read the text as a whole with parseQuantity | "stone"`,
    ]);
    expect(unit("long tons")).toEqual([
      `unit/unknown | quantity.unit | ${pounds}; multiply the value by 2240 and give lb, or read the text as a whole with parseQuantity | "long tons"`,
    ]);
    expect(unit("lb/100 gal", { dimension: "mass/volume" })).toEqual([
      'unit/unknown | quantity.unit | a unit for a weight per volume, such as lb/gal or kg/L; divide the value by 100 and give lb/gal, or read the text as a whole with parseQuantity | "lb/100 gal"',
    ]);
    expect(unit("imp pt", { dimension: "volume" })).toEqual([
      'unit/unknown | quantity.unit | a unit for a volume, such as gal or L; divide the value by 8 and give imp gal, or read the text as a whole with parseQuantity | "imp pt"',
    ]);
    expect(unit("lb/acre/yr", { dimension: "mass/area" })).toEqual([
      'unit/unknown | quantity.unit | a unit for a weight over an area, such as lb/1000 ft2 or kg/ha; months and years have no fixed length: give the amount alone, and the time as the period of a limit, per: "calendar year" | "lb/acre/yr"',
    ]);
  });

  test("a unit that is often written for another, where the other is due", () => {
    for (const [written, dimension, near] of [
      ["in", "area", "in2"],
      ["in", "volume", "in3"],
      ["ft", "area", "ft2"],
      ["ft", "volume", "ft3"],
      ["yd", "volume", "yd3"],
      ["yd", "area", "yd2"],
      ["gal/m", "volume/area", "gal/1000 ft2"],
      ["L/m", "volume/area", "L/m2"],
      ["lb/ft", "mass/area", "lb/ft2"],
      ["oz/gal", "volume/volume", "fl oz/gal"],
      ["%", "length/length", "% grade"],
    ] as const)
      expect(readQuantity({ value: 3, unit: written }, { dimension }).problems[0]).toMatchObject({
        code: "unit/mismatch",
        suggestion: near,
      });
    expect(
      readQuantity({ value: 3, unit: "L/m" }, { dimension: "mass/area" }).problems[0],
    ).not.toHaveProperty("suggestion");
  });

  test("a substance", () => {
    const of = (input: unknown, wanted?: string): readonly string[] =>
      read(
        { value: 3, unit: "lb/acre", of: input },
        { dimension: "mass/area", ...(wanted && { of: wanted }) },
      );
    expect(of(undefined, "N")).toEqual(["missing | quantity.of | N | nothing"]);
    expect(of(null, "N")).toEqual(["missing | quantity.of | N | nothing"]);
    expect(of(" ", "N")).toEqual(["missing | quantity.of | N | nothing"]);
    expect(of(3, "N")).toEqual(["type | quantity.of | N | 3"]);
    expect(of(3)).toEqual(["type | quantity.of | a substance, such as N or product | 3"]);
    expect(of("nitrogen", "N")).toEqual(['substance/unknown | quantity.of | N | "nitrogen" => N']);
    expect(of("K", "N")).toEqual(['substance/mismatch | quantity.of | N | "K"']);
    expect(of("gravel")).toEqual([
      'substance/unknown | quantity.of | a substance, such as N or product | "gravel"',
    ]);
    expect(of(undefined, "none")).toEqual([]);
    expect(of("N:soluble", "N:quick")).toEqual([]);
    expect(readQuantity({ value: 3, unit: "lb", of: "N:soluble/product" }, mass).value?.of).toBe(
      "N:quick/product",
    );
    expect(readQuantity({ value: 3, unit: "lb" }, mass).value?.of).toBe("none");
  });

  test("fields that are not known, with the one that is meant", () => {
    const field = (name: string): string | undefined =>
      readQuantity({ value: 3, unit: "lb", of: "N", [name]: 1 }, mass).problems[0]?.suggestion;
    expect(field("fo")).toBe("of");
    expect(field("substance")).toBe("of");
    expect(field("number")).toBe("value");
    expect(field("amount")).toBe("value");
    expect(field("vlaue")).toBe("value");
    expect(field("unti")).toBe("unit");
    expect(field("note")).toBeUndefined();
    expect(field("dimesnion")).toBeUndefined();
    expect(read({ value: 3, unit: "lb", note: 1 })).toEqual([
      'type | quantity.note | value, unit and of alone | a field "note"',
    ]);
    const many = Object.fromEntries(Array.from({ length: 20 }, (_, n) => [`field${n}`, n]));
    expect(read({ value: 3, unit: "lb", ...many })).toHaveLength(8);
    const long = "n".repeat(100);
    expect(read({ value: 3, unit: "lb", [long]: 1 })).toEqual([
      `type | quantity.${"n".repeat(60)} | value, unit and of alone | a field "${"n".repeat(60)}"`,
    ]);
  });
});

describe("texts", () => {
  test("the problems of a text stand at the field, and a bound is held there", () => {
    expect(read("3 lbz", { ...mass, path: "bag" })).toEqual([
      'unit/unknown | bag | a unit for a weight, such as lb or kg | "lbz" => lb',
    ]);
    expect(read("0 lb", { ...mass, bound: "positive" })).toEqual(["range | quantity | more than zero | 0"]);
    expect(read("-1 lb", { ...mass, bound: "non-negative" })).toEqual([
      "range | quantity | zero or more | -1",
    ]);
    expect(read("0 lb", { ...mass, bound: "non-negative" })).toEqual([]);
    expect(read("-1 lb", { ...mass, bound: "any" })).toEqual([]);
    expect(read("3 lb K/acre", rate)).toEqual(['substance/mismatch | quantity | a quantity of N | "K"']);
    expect(readQuantity("3 lb/acre", rate).value?.of).toBe("N");
    expect(readQuantity("3 lb/acre", { dimension: "mass/area" }).value?.of).toBe("none");
  });
});

describe("what is wanted has to be something", () => {
  test.each([
    [{ dimension: "weight" }, 'type | expected.dimension | a dimension, such as mass/area | "weight"'],
    [{}, "missing | expected.dimension | a dimension, such as mass/area | undefined"],
    [
      { ...mass, of: "nitrogen" },
      'substance/unknown | expected.of | a substance, such as N or product | "nitrogen"',
    ],
    [{ ...mass, path: 3 }, "type | expected.path | the name of a field | 3"],
    [
      { ...mass, bound: "above" },
      'type | expected.bound | one of "positive", "non-negative", "any" | "above"',
    ],
    [{ ...mass, decimal: ";" }, 'type | expected.decimal | one of ".", "," | ";"'],
    [{ ...mass, measures: "UK" }, 'type | expected.measures | one of "US", "imperial" | "UK"'],
    [
      { ...mass, dicimal: "," },
      'type | expected.dicimal | one of the fields dimension, of, bound, path, decimal, measures | a field "dicimal" => decimal',
    ],
    [null, 'type | expected | a record, such as { dimension: "mass" } | null'],
    [undefined, 'missing | expected | a record, such as { dimension: "mass" } | undefined'],
  ])("%j", (expected, problem) => {
    for (const call of [
      () => readQuantity("3 lb", expected as typeof mass),
      () => readExact({}, expected as typeof mass),
      () => quantitySchema(expected as typeof mass),
    ])
      expect(told(call)).toEqual([problem]);
  });
});

describe("a schema", () => {
  const { validate } = quantitySchema({ ...rate, bound: "positive" })["~standard"];
  test("says where, and calls the whole a quantity", () => {
    expect(validate(undefined).issues).toEqual([
      { message: "quantity: expected a quantity, such as 3 lb/1000 ft2, got undefined", path: [] },
    ]);
    expect(validate({ value: 3, unit: "gal", of: "N" }).issues).toEqual([
      {
        message: 'unit: expected a unit for a weight over an area, such as lb/1000 ft2 or kg/ha, got "gal"',
        path: ["unit"],
      },
    ]);
    expect(validate("3 lb K/acre").issues?.[0]).toEqual({
      message: 'quantity: expected a quantity of N, got "K"',
      path: [],
    });
  });
});

describe("columns", () => {
  const from = { from: "ft", to: "in" } as const;
  test.each([
    [{ ...from }, "missing | numbers | a list or a typed array of numbers | undefined"],
    [{ ...from, numbers: "12" }, 'type | numbers | a list or a typed array of numbers | "12"'],
    [{ ...from, numbers: [1, "2"] }, 'not-finite | numbers[1] | a finite number | "2"'],
    [{ numbers: [1], from: 3, to: "in" }, "type | from | the name of a unit, such as lb/acre | 3"],
    [{ numbers: [1], from: "ft", to: 3 }, "type | to | the name of a unit, such as kg/ha | 3"],
    [{ numbers: [1], from: "ft", to: "lb" }, 'unit/mismatch | to | a unit for a length, as ft is | "lb"'],
  ])("%j", (input, problem) => {
    expect(told(() => convertedNumbers(input as never))).toEqual([problem]);
  });

  test("no zero below zero comes out", () => {
    expect(Object.is(convertedNumbers({ numbers: [-0], ...from })[0], 0)).toBe(true);
    expect([...convertedNumbers({ numbers: [32, 212], from: "°F", to: "°C" })]).toEqual([0, 100]);
    expect([...convertedNumbers({ numbers: [0, 100], from: "°C", to: "°F" })]).toEqual([32, 212]);
    expect(quantity(0, "°C").in("K")).toBe(273.15);
  });
});
