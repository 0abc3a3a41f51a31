// The parts that a text is read with, each by itself.
import { describe, expect, test } from "vitest";
import { unitsIn } from "../../../src/quantity/text/aliases.js";
import { keptReadings } from "../../../src/quantity/text/kept-readings.js";
import { scanNumber } from "../../../src/quantity/text/number-text.js";
import { divided, keepPlain, plainEnd, readPlain } from "../../../src/quantity/text/plain-reading.js";
import { readRest } from "../../../src/quantity/text/unit-reading.js";
import { readSegment, segmentsOf, withoutPowers } from "../../../src/quantity/text/unit-segment.js";

describe("a number at the start of a text", () => {
  const read = (text: string, decimal: "." | "," = "."): readonly [number, number] | undefined => {
    const number = scanNumber(text, decimal);
    return number === undefined ? undefined : [number.value, number.end];
  };
  test("and where it ends", () => {
    for (const [text, value, end, decimal] of [
      ["3 lb", 3, 1],
      ["-3 lb", -3, 2],
      ["+.5lb", 0.5, 3],
      ["5.lb", 5, 2],
      ["0.5 lb", 0.5, 3],
      ["12,400.5 ft2", 12_400.5, 8],
      ["1e3 lb", 1000, 3],
      ["1.5E+2 lb", 150, 6],
      ["1,200e-2 lb", 12, 8],
      // seven places and more are as good as two
      ["0.0000001e3 lb", 0.0001, 11],
      ["1000000000000000000000e2 lb", 1e23, 24],
      // 1e12345 is no power, and neither is 1e3.5
      ["1e12345", 1, 1],
      ["1e3.5", 1, 1],
      ["3 lb of product:feed-e2", 3, 1],
      ["3 kg of product:mix 2·5", 3, 1],
      ["12 400.5 m2", 12_400.5, 8],
      ["12 400 m2", 12_400, 6],
      ["12 400,5 m2", 12_400.5, 8, ","],
      ["12.400,5 m2", 12_400.5, 8, ","],
      [",5 kg", 0.5, 2, ","],
      ["1 11/16 in", 1.6875, 7],
      ["12/2 lb", 6, 4],
      // 2 0/3 is nobody's number, so this is a fraction
      ["20/3 lb", 20 / 3, 4],
      ["01/2 lb", 0.5, 4],
      ["3 100 lb/m2", 3100, 5],
      ["3 100 400 m2", 3_100_400, 9],
      ["3 100 sq ft", 3100, 5],
      ["3 100 square miles", 3100, 5],
      ["3 100 mL", 3100, 5],
      ["3 100 m", 3100, 5],
      ["3 200 m2", 3200, 5],
    ] as readonly (readonly [string, number, number, ","?])[])
      expect([text, read(text, decimal)]).toEqual([text, [value, end]]);
    for (const text of ["lb", "", "-", "x3", "$3", " 3", "--3", "."])
      expect([text, read(text)]).toEqual([text, undefined]);
  });

  test("and what is wrong with it", () => {
    const groups = (own: string, other?: string): string =>
      `a number with "${own}" before its decimals and groups of three${other ? `; the option decimal: "${other}" takes the other sign` : ""}`;
    const one = 'a number with one "."';
    for (const [text, got, expected, next, decimal] of [
      [",5 lb", ",5", groups(".", ",")],
      ["3, lb", "3,", groups(".", ",")],
      ["1.234.567 m2", "1.234.567", one, "1234567"],
      ["12.345.678,5 m2", "12.345.678,5", groups(".", ","), "12345678.5"],
      // nobody groups behind a nought
      ["0,400 lb", "0,400", groups(".", ","), "0.400"],
      ["0,5 lb", "0,5", groups(".", ","), "0.5"],
      // what the other sign does not read either is not asked to be read with it
      ["1.234.56 m2", "1.234.56", one],
      ["1.23.456 m2", "1.23.456", one],
      ["0.123.456 m2", "0.123.456", one],
      ["1234.567.890 m2", "1234.567.890", one],
      ["12.40,5 m2", "12.40,5", groups(".")],
      ["1.234,5.6 m2", "1.234,5.6", groups(".")],
      ["1234.567,8 m2", "1234.567,8", groups(".")],
      ["1.5 kg", "1.5", groups(",", "."), "1,5 | 15", ","],
      ["1,234.5 kg", "1,234.5", groups(",", "."), "1234,5", ","],
      ["101/2 in", "101/2", "a space between a whole number and its fraction", "10 1/2 | 50.5"],
      ["011/2 in", "011/2", "a space between a whole number and its fraction", "01 1/2 | 5.5"],
      ["16/16 in", "16/16", "a space between a whole number and its fraction", "1 6/16 | 1"],
      ["10^12 ft2", "10^12", "a number without a power"],
      ["3 100 m2", "3 100", "one number and one unit", "3100 m2 | 3 x 100 m2"],
      ["3 100m²", "3 100", "one number and one unit", "3100 m2 | 3 x 100 m2"],
      ["3 100 m^2", "3 100", "one number and one unit", "3100 m2 | 3 x 100 m2"],
      ["3 100 sqm", "3 100", "one number and one unit", "3100 m2 | 3 x 100 m2"],
      ["3 100 sq. m", "3 100", "one number and one unit", "3100 m2 | 3 x 100 m2"],
      ["3 100 square meters", "3 100", "one number and one unit", "3100 m2 | 3 x 100 m2"],
      ["1e-400 lb", "1e-400", "a number that can be held"],
      ["1e400 lb", "1e400", "a number that can be held"],
    ] as readonly (readonly [string, string, string, string?, ","?])[]) {
      const { problem, value } = scanNumber(text.replace("²", "^2"), decimal ?? ".") ?? {};
      expect([text, value, problem?.got, problem?.expected]).toEqual([
        text,
        Number.NaN,
        JSON.stringify(got),
        expected,
      ]);
      expect([text, problem?.suggestion ?? problem?.choices?.join(" | ")]).toEqual([text, next]);
    }
  });
});

describe("one side of a slash", () => {
  const plain = { choices: [], divisor: 1, of: undefined, said: false, unknownOf: undefined };
  test("below it 1000, M and A are areas, asked for where the unit above does not go with them", () => {
    const lot = "1000 ft2";
    expect(readSegment("1000", "lb")).toEqual({
      ...plain,
      text: "1000",
      name: "1000",
      reads: [lot],
      choices: [lot],
    });
    expect(readSegment("thousand", "kg")).toEqual({
      ...plain,
      text: "thousand",
      name: "thousand",
      reads: [],
      choices: [lot],
    });
    expect(readSegment("M", "lb")).toEqual({ ...plain, text: "M", name: "M", reads: [lot], sure: lot });
    expect(readSegment("M", "kg")).toEqual({
      ...plain,
      text: "M",
      name: "M",
      reads: [lot],
      choices: ["m", lot],
    });
    expect(readSegment("A", "kg")).toEqual({ ...plain, text: "A", name: "A", reads: ["acre"], sure: "acre" });
    expect(readSegment("A.", "kg")).toMatchObject({ reads: ["acre"], sure: "acre" });
    // a name that begins so is another unit
    expect(readSegment("Acre-foot", "lb").sure).toBe("acre-ft");
    expect(readSegment("Ares", "lb").sure).toBe("100 m2");
  });

  test("above it they are not", () => {
    for (const text of ["1000", "k", "thousand"]) expect([text, readSegment(text).reads]).toEqual([text, []]);
    expect(readSegment("M")).toMatchObject({ reads: [], choices: ["m", "1000 ft2"] });
    expect(readSegment("A")).toMatchObject({ reads: [], choices: ["acre"] });
    expect(readSegment("12 acres").reads).toEqual([]);
  });

  test("a number below it, with the unit behind it, of one each", () => {
    expect(readSegment("100 gal water", "pt")).toMatchObject({ sure: "gal", of: "water", divisor: 100 });
    expect(readSegment("1000 Meters", "lb")).toMatchObject({ sure: "m", divisor: 1000 });
    expect(readSegment("12 100 sq ft", "lb")).toMatchObject({ sure: "ft2", divisor: 12_100 });
    expect(readSegment("12 100 mL", "g")).toMatchObject({ sure: "mL", divisor: 12_100 });
    expect(readSegment("2 stone", "lb").reads).toEqual([]);
    expect(readSegment("2 10 ft2", "lb").reads).toEqual([]);
    expect(readSegment("12 acer", "lb")).toMatchObject({ name: "12 acer", reads: [], divisor: 1 });
    expect(readSegment("acre product:12 100 m2 bag", "lb")).toMatchObject({
      sure: "acre",
      of: "product:12 100 m2 bag",
    });
    for (const text of [
      "12 100 m2",
      "12 100m2",
      "1 100 sq m",
      "1 100 sqm",
      "1 100 square meters",
      "1000 M",
      "1000M",
    ])
      expect([text, readSegment(text, "kg").reads]).toEqual([text, []]);
  });

  test("of something, said once or twice alike", () => {
    expect(readSegment("lb N of nitrogen")).toMatchObject({ of: "N", said: true, unknownOf: undefined });
    expect(readSegment("lb N of K")).toMatchObject({ unknownOf: "N of K" });
    expect(readSegment("of N").reads).toEqual([]);
  });

  test("the sides, with spaces or without, and per", () => {
    for (const text of ["lb/acre/d", "lb / acre / d", "lb per acre per d", "lb Per acre /d"])
      expect([text, segmentsOf(text)]).toEqual([text, ["lb", "acre", "d"]]);
    expect(segmentsOf("per d")).toEqual(["", "d"]);
  });

  test("negative powers, of the number before them too", () => {
    for (const [text, plainText] of [
      ["kg ha-1", "kg /ha"],
      ["kg ha^-1 d^-1", "kg /ha /d"],
      ["g m-2", "g /m2"],
      ["lb 1000 ft-2", "lb /1000 ft2"],
      ["lb 1,000 ft-2", "lb /1,000 ft2"],
      ["kg 10000 m-2", "kg /10000 m2"],
      ["d-1", "/d"],
      // a name that ends in a digit is no number
      ["kg P2O5 ha-1", "kg P2O5 /ha"],
      ["kg ha-12", "kg ha-12"],
      ["kg of product:mix-2", "kg of product:mix-2"],
      ["kg ha-4", "kg ha-4"],
    ] as const)
      expect([text, withoutPowers(text)]).toEqual([text, plainText]);
    // NIST SP 811, 6.1.6: a solidus is not followed by a product without parentheses
    for (const text of ["kg/ha d-1", "kg per ha d-1"]) expect(withoutPowers(text)).toBe(text);
  });
});

test("the units that the choices of a refusal stand for", () => {
  expect(unitsIn(["tonne", "US ton"])).toEqual(["t", "US ton"]);
  expect(unitsIn(["oz av/1000 ft2", "fl oz/1000 ft2"])).toEqual(["oz/1000 ft2", "fl oz/1000 ft2"]);
  // 2 long cwt are not 2 lb, above or below a slash
  expect(unitsIn(["long cwt", "short cwt", "kg/long cwt", "long cwt/acre"])).toEqual([]);
  expect(unitsIn(["gravel", "lb/gravel", "USD", "kg"])).toEqual(["money:USD", "kg"]);
  expect(unitsIn(["1/week"])).toEqual(["1/week"]);
});

describe("what was read before", () => {
  test("is at hand for the same text and the same wish alone", () => {
    const kept = keptReadings<number>();
    expect(kept.get("lb", "mass", "N")).toBeUndefined();
    expect(kept.keep("lb", "mass", "N", 1)).toBe(1);
    expect(kept.keep("kg", "mass", "N", 2)).toBe(2);
    expect(kept.keep("lb", "mass", undefined, 3)).toBe(3);
    expect(kept.keep("lb", undefined, "N", 4)).toBe(4);
    const all = (): readonly unknown[] => [
      kept.get("lb", "mass", "N"),
      kept.get("kg", "mass", "N"),
      kept.get("lb", "mass", undefined),
      kept.get("lb", undefined, "N"),
      kept.get("kg", undefined, "N"),
      kept.get("kg", "mass", "K"),
      kept.get("lb", "volume", "N"),
    ];
    expect(all()).toEqual([1, 2, 3, 4, undefined, undefined, undefined]);
    expect(all()).toEqual([1, 2, 3, 4, undefined, undefined, undefined]);
  });

  test("a thousand of them, and then the memory is empty", () => {
    const kept = keptReadings<number>();
    for (let i = 0; i < 1000; i++) kept.keep(`lb ${i}`, "mass", undefined, i);
    expect([kept.get("lb 0", "mass", undefined), kept.get("lb 999", "mass", undefined)]).toEqual([0, 999]);
    kept.keep("lb 1000", "mass", undefined, 1000);
    expect([kept.get("lb 0", "mass", undefined), kept.get("lb 1000", "mass", undefined)]).toEqual([
      undefined,
      1000,
    ]);
  });

  test("a reading is kept and a refusal is not, so that nobody changes one for the next", () => {
    expect(readRest("fl oz/1000 ft2")).toBe(readRest("fl oz/1000 ft2"));
    const choices = readRest("ounces").problems[0]?.choices ?? [];
    (choices as string[]).push("mine");
    expect(readRest("ounces").problems[0]?.choices).toEqual(["oz av", "fl oz"]);
  });

  test("of a plain text the unit is kept, and each number is read by itself", () => {
    const wish = { dimension: "mass" } as const;
    const problem = { code: "text", path: "text", got: "x", expected: "y" } as const;
    keepPlain("of a test", wish, { unit: "lb", of: "N", problems: [problem] });
    keepPlain("of a test", wish, { of: "N", problems: [] });
    keepPlain("of a test", wish, { unit: "lb", problems: [] });
    expect(readPlain("3 of a test", 1, wish)).toBeUndefined();
    keepPlain("of a test", wish, { unit: "lb", of: "N", problems: [] });
    expect(readPlain("3 of a test", 1, wish)).toEqual({ value: 3, unit: "lb", of: "N", problems: [] });
    expect(readPlain("12,400of a test", 6, wish)).toEqual({
      value: 12_400,
      unit: "lb",
      of: "N",
      problems: [],
    });
    expect(readPlain("3 of a test", 1, {})).toBeUndefined();
    keepPlain("of tests", wish, { unit: "lb", of: "N", divisor: 8, problems: [] });
    expect(readPlain("3 of tests", 1, wish)?.value).toBe(0.375);
  });

  test("by a part of one a number is multiplied, to its last digit", () => {
    // 0.9 stone are 12.6 lb, 1.3 stone 18.2 lb, 0.9 long hundredweights 100.8 lb, 0.1 long tons 224 lb
    expect([
      divided(0.9, 1 / 14),
      divided(1.3, 1 / 14),
      divided(0.9, 1 / 112),
      divided(0.1, 1 / 2240),
    ]).toEqual([12.6, 18.2, 100.8, 224]);
    expect([divided(0.9, 1), divided(3, 3), divided(7, 2.5)]).toEqual([0.9, 1, 2.8]);
  });

  test("plain digits end where they end, also beside 0 and 9", () => {
    expect([plainEnd("0.5 lb"), plainEnd("9 lb"), plainEnd("90.09lb")]).toEqual([3, 1, 5]);
    expect([plainEnd("1,5 lb of 2,500"), plainEnd("1.5,000 lb"), plainEnd("5")]).toEqual([0, 0, 0]);
  });
});
