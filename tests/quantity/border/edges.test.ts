import { describe, expect, test } from "vitest";
import {
  convertedNumbers,
  quantityFrom,
  quantityReviver,
  quantitySchema,
  readExact,
  readQuantity,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

const lb = { dimension: "mass", path: "bag" } as const;
type Read = {
  readonly value: { readonly value: number } | null;
  readonly problems: readonly {
    readonly code: string;
    readonly path: string;
    readonly expected: string;
    readonly got: string;
  }[];
};
const told = (read: Read): readonly string[] =>
  read.problems.map(({ code, path, expected, got }) => `${code} | ${path} | ${expected} | ${got}`);
const value = (text: string, decimal: "." | "," = "."): number | undefined =>
  readExact({ value: text, unit: "lb" }, { ...lb, decimal }).value?.value;

describe("the number of a record", () => {
  test.each([
    ["3", 3],
    ["-3", -3],
    ["12", 12],
    ["-12.25", -12.25],
    ["0.5", 0.5],
    ["123456789012345", 123456789012345],
    ["1 1/2", 1.5],
    ["12,400", 12400],
    ["12,400.5", 12400.5],
    ["", undefined],
    ["x", undefined],
    ["1.2.3", undefined],
    ["3 lb", undefined],
  ])('"%s" is %s', (text, number) => {
    expect(value(text)).toBe(number);
  });

  test("with a decimal comma the full stop groups thousands, and does not stand before decimals", () => {
    expect([value("12,5", ","), value("12.400", ","), value("12", ","), value("-3,25", ",")]).toEqual([
      12.5, 12400, 12, -3.25,
    ]);
    expect(value("12.5", ",")).toBeUndefined();
    // without it the same text is twelve point four
    expect(value("12.400")).toBe(12.4);
  });

  test("two hundred characters are read, one more is not", () => {
    const padded = (length: number): string => `3${" ".repeat(length - 1)}`;
    expect(value(padded(200))).toBe(3);
    expect(
      told(readExact({ value: padded(201), unit: "lb" }, lb)).map((text) => text.split(" | ")[0]),
    ).toEqual(["not-finite"]);
    const blank = (length: number): string => " ".repeat(length);
    expect(told(readExact({ value: blank(200), unit: "lb" }, lb))[0]).toMatch(
      /^missing \| bag.value \| a number/,
    );
    expect(told(readExact({ value: blank(201), unit: "lb" }, lb))[0]).toMatch(/^not-finite \| bag.value/);
  });
});

describe("the substance of a record", () => {
  const nitrogen = { dimension: "mass", of: "N", path: "bag" } as const;
  test("is what was wanted, or is told as it was written", () => {
    expect(readExact({ value: 1, unit: "lb", of: "N" }, nitrogen).value?.of).toBe("N");
    expect(readExact({ value: 1, unit: "lb", of: "none" }, { ...lb, of: "none" }).value?.of).toBe("none");
    expect(readExact({ value: 1, unit: "lb" }, { ...lb, of: "none" }).value?.of).toBe("none");
    expect(readExact({ value: 1, unit: "lb", of: "" }, lb).value?.of).toBe("none");
    expect(told(readExact({ value: 1, unit: "lb", of: "none" }, nitrogen))).toEqual([
      'substance/mismatch | bag.of | N | "none"',
    ]);
    expect(told(readExact({ value: 1, unit: "lb", of: 7 }, nitrogen))).toEqual(["type | bag.of | N | 7"]);
    expect(told(readExact({ value: 1, unit: "lb", of: ["N"] }, nitrogen))).toEqual([
      "type | bag.of | N | a list",
    ]);
    expect(told(readExact({ value: 1, unit: "lb", of: null }, nitrogen))).toEqual([
      "missing | bag.of | N | nothing",
    ]);
    expect(told(readExact({ value: 1, unit: "lb", of: "  " }, nitrogen))).toEqual([
      "missing | bag.of | N | nothing",
    ]);
    expect(told(readExact({ value: 1, unit: "lb" }, nitrogen))).toEqual(["missing | bag.of | N | nothing"]);
  });
});

describe("records", () => {
  test("of nothing, of a list, and of what throws when it is looked at", () => {
    expect(told(readExact(null, lb))).toEqual(["missing | bag | a quantity, such as 3 lb | null"]);
    const one = "a quantity, { value, unit, of }; readQuantity reads a text";
    expect(told(readExact([3, "lb"], lb))).toEqual([`type | bag | ${one} | a list`]);
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    expect(told(readExact(proxy, lb))).toEqual([`type | bag | ${one} | a record`]);
  });

  test("of a number out of bounds, with the bound as data, beside a strange field", () => {
    const outside = readExact({ value: 0, unit: "lb", off: 1 }, { ...lb, bound: "positive" });
    expect(told(outside)).toEqual([
      "range | bag.value | more than zero | 0",
      'type | bag.off | value, unit and of alone | a field "off"',
    ]);
    expect(outside.problems[0]).toMatchObject({ params: { above: 0 } });
    expect(outside.value).toBeNull();
    const below = readQuantity("-3 lb", { ...lb, bound: "non-negative" });
    expect(told(below)).toEqual(["range | bag | zero or more | -3"]);
    expect(below.problems[0]).toMatchObject({ params: { min: 0 } });
  });

  test("a schema takes the bound where it is given, and any number where it is not", () => {
    const validate = (bound?: "positive") =>
      quantitySchema({ dimension: "mass", ...(bound && { bound }) })["~standard"].validate({
        value: -3,
        unit: "lb",
      });
    expect(validate()).toMatchObject({ value: { value: -3 } });
    expect(validate("positive").issues?.map(({ path }) => path)).toEqual([["value"]]);
  });

  test("a unit in words whose number hides in it: multiply or divide, and by how much", () => {
    const unit = (text: string): string | undefined =>
      readQuantity({ value: 2, unit: text }, { dimension: "mass" }).problems[0]?.expected;
    expect(unit("stone")).toBe(
      "a unit for a weight, such as lb or kg; multiply the value by 14 and give lb, or read the text as a whole with parseQuantity",
    );
    const rate = readQuantity({ value: 2, unit: "pt/100 gal" }, { dimension: "volume/volume" });
    expect(rate.problems[0]?.expected).toBe(
      "a unit for a share by volume, such as % v/v or fl oz/gal; divide the value by 100 and give pt/gal, or read the text as a whole with parseQuantity",
    );
    expect(rate.problems[0]).toMatchObject({ params: { unit: "pt/gal", divisor: 100 } });
    for (const length of [200, 201])
      expect(unit("x".repeat(length))).toBe("a unit for a weight, such as lb or kg");
  });
});

describe("columns and stores", () => {
  test("numbers that are not there are missing, what is no list is another kind", () => {
    const codes = (numbers: unknown): readonly string[] =>
      problemsOf(() => convertedNumbers({ numbers: numbers as never, from: "lb", to: "kg" })).map(
        ({ code, path }) => `${code} ${path}`,
      );
    expect([codes(undefined), codes(null), codes("3"), codes({})]).toEqual([
      ["missing numbers"],
      ["type numbers"],
      ["type numbers"],
      ["type numbers"],
    ]);
  });

  test("-0 is 0 in a column", () => {
    const [zero] = convertedNumbers({ numbers: [-0], from: "lb", to: "kg" });
    expect(Object.is(zero, 0)).toBe(true);
  });

  test("a store is told at its field, and at value where the field has no name", () => {
    const at = (key: unknown): readonly string[] =>
      problemsOf(() => quantityReviver(key as string, { value: 3, unit: "lbs", of: "N" })).map(
        ({ path }) => path,
      );
    expect([at("need"), at(""), at(7), at(undefined)]).toEqual([
      ["need.unit"],
      ["value.unit"],
      ["value.unit"],
      ["value.unit"],
    ]);
    expect(quantityReviver("x", { value: 3, unit: "lb", of: "N", dimension: "mass" })).toMatchObject({
      unit: "lb",
    });
    expect(quantityReviver("x", { value: 3, unit: "lb", of: "N" })).toMatchObject({ dimension: "mass" });
    expect(quantityReviver("x", { value: 3, unit: "lb", of: "N", dimension: 7 })).toEqual({
      value: 3,
      unit: "lb",
      of: "N",
      dimension: 7,
    });
  });

  test("a text where a record was stored", () => {
    expect(problemsOf(() => quantityFrom("3 lb", "bag")).map(({ code, path }) => `${code} ${path}`)).toEqual([
      "type bag",
    ]);
  });
});
