// Texts as people type them, and how each is to be read or refused.
import { describe, expect, test } from "vitest";
import { parseQuantity, parseRange } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { refused, told } from "./typed.js";

const unit = "a unit, such as lb/1000 ft2";
const read = (text: string, options: object = {}): readonly unknown[] => {
  const { value, unit: name, of } = parseQuantity(text, options as { decimal: "." });
  return [text, value, name, of];
};

describe("money", () => {
  test("a sign or a code before the amount, with a space or without", () => {
    for (const [text, value, name] of [
      ["USD5", 5, "money:USD"],
      ["EUR12.5/kg", 12.5, "money:EUR/kg"],
      ["-EUR 3", -3, "money:EUR"],
      ["€ 12 per kg", 12, "money:EUR/kg"],
      ["12 € per kg", 12, "money:EUR/kg"],
      ["12 €/ kg", 12, "money:EUR/kg"],
      ["12 € /kg", 12, "money:EUR/kg"],
      ["12€", 12, "money:EUR"],
      ["-€28/50 kg", -0.56, "money:EUR/kg"],
    ] as const)
      expect(read(text)).toEqual([text, value, name, "none"]);
    expect(read("-$28/50 lb", { dimension: "money:USD/mass" })).toEqual([
      "-$28/50 lb",
      -0.56,
      "money:USD/lb",
      "none",
    ]);
    expect(read("AED5", { dimension: "money:AED" })).toEqual(["AED5", 5, "money:AED", "none"]);
  });

  test("is refused as it was typed", () => {
    const amount = "a number and a unit, such as 3 lb/1000 ft2";
    refused([
      ["5 kg/€", "unit/unknown", "kg/€", unit],
      ["~3 €/kg", "text", "~3 €/kg", `${amount} => 3 €/kg`],
      ["USD lb", "text", "USD lb", amount],
      ["AED 5", "text", "AED 5", amount],
      ["€5", "unit/mismatch", "money:EUR", "a unit for a weight, such as lb or kg", { dimension: "mass" }],
      ["5 €", "unit/mismatch", "money:EUR", "a unit for a weight, such as lb or kg", { dimension: "mass" }],
      [
        "12 € /kg",
        "unit/mismatch",
        "money:EUR/kg",
        "a unit for a weight, such as lb or kg",
        { dimension: "mass" },
      ],
      [
        "€28 per 1/2 kg",
        "unit/unknown",
        "money:EUR per 1/2 kg",
        `${unit}; below the slash, a whole number or none: 3 lb per 1.5 acres is 2 lb/acre`,
      ],
    ]);
  });

  test("an amount behind its currency is not remembered as a unit", () => {
    expect(parseQuantity("USD 5").value).toBe(5);
    expect(problemsOf(() => parseQuantity("3 USD 5"))).not.toEqual([]);
  });

  test("both ends of a range may have the sign", () => {
    for (const text of [
      "€3-5/kg",
      "€3-€5/kg",
      "€3 - €5/kg",
      "€3/kg - €5/kg",
      "€3/kg to €5/kg",
      "EUR 3 - EUR 5 per kg",
    ]) {
      const { min, max } = parseRange(text);
      expect([text, `${min}`, `${max}`]).toEqual([text, "3 money:EUR/kg", "5 money:EUR/kg"]);
    }
    for (const text of ["$3-5/lb", "$3-$5/lb"])
      expect(parseRange(text, { dimension: "money:USD/mass" }).max.value).toBe(5);
    for (const text of ["€3-5/kg", "€3-€5/kg", "EUR3-5/kg", "US$3-US$5/lb", "US$3 to US$ 5"])
      refused([[text, "text", text, "one amount; parseRange reads a range"]]);
    expect(`${parseRange("5-6 lb of product:MIX 12").min}`).toBe("5 lb of product:MIX 12");
  });
});

describe("ranges and what looks like one", () => {
  const range = "one amount; parseRange reads a range";
  const ends = "one amount, or a range with both of its ends";
  test("are refused, each with what to write", () => {
    for (const text of [
      "1/2 .. 3/4 lb",
      "1/2 ... 3/4 lb",
      "1/2 … 3/4 lb",
      "1 pt -2 pt",
      "1 pt to +2 pt",
      "1-2/2 lb",
      "3 - 5 lb",
      "3 -5 lb",
    ])
      refused([[text, "text", text, range]]);
    for (const text of [
      "3 - lb/1000 ft2",
      "3 - about 5 lb",
      "3- lb",
      "3 ±0.5 lb",
      "3+/-0.5 lb",
      "3 +/- 1 lb",
    ])
      refused([[text, "text", text, ends]]);
  });

  test("are read by parseRange", () => {
    for (const [text, min, max] of [
      ["1/2 .. 3/4 lb", 0.5, 0.75],
      ["1/2 ... 3/4 lb", 0.5, 0.75],
      ["1 pt -2 pt", 1, 2],
      ["1 pt to +2 pt", 1, 2],
      ["1-2/2 lb", 1, 1],
      ["5-6lb", 5, 6],
      ["5-6'", 5, 6],
    ] as const) {
      const found = parseRange(text);
      expect([text, found.min.value, found.max.value]).toEqual([text, min, max]);
    }
  });

  test("a text of 200 signs at most", () => {
    expect(parseRange(`1-2 lb${" ".repeat(194)}`).max.value).toBe(2);
    expect(problemsOf(() => parseRange(`1-2 lb${" ".repeat(195)}`)).map(told)).toEqual([
      ["text", "201 characters", "at most 200 characters"],
    ]);
  });

  test("of a number that has two readings this is said, and nothing of its unit", () => {
    const choices = (got: string, ...both: readonly string[]): readonly (readonly string[])[] => [
      [
        "text",
        JSON.stringify(got),
        `a number with "." before its decimals and groups of three; the option decimal: "," takes the other sign ? ${both.join(" | ")}`,
      ],
    ];
    for (const text of ["1,5-2,5 kg", "1,5 to 2 kg", "1,5 - kg", "1,5k kg", "1,5 kg"])
      expect([text, problemsOf(() => parseQuantity(text)).map(told)]).toEqual([
        text,
        choices("1,5", "1.5", "15"),
      ]);
    expect(problemsOf(() => parseRange("1,5-2,5 kg")).map(told)).toEqual(choices("1,5", "1.5", "15"));
  });
});

describe("numbers with their unit", () => {
  test("times, with a space or without", () => {
    for (const text of ["3 × 1,000 ft²", "3 x 1000 ft2", "3x1000 ft2", "3 x1,000 sq ft", "3 ×1000ft2"])
      expect(read(text)).toEqual([text, 3, "1000 ft2", "none"]);
  });

  test("a thousand is written in full, and K alone is kelvin", () => {
    for (const [text, full] of [
      ["43k", "43000"],
      ["43k ft2", "43000 ft2"],
      ["43 K ft2", "43000 ft2"],
      ["43 k", "43000"],
    ] as const)
      refused([[text, "text", text, `the number in full => ${full}`]]);
    expect(read("43 K")).toEqual(["43 K", 43, "K", "none"]);
    expect(read("5 acre - ft")).toEqual(["5 acre - ft", 5, "acre-ft", "none"]);
    expect(read("43 kg")).toEqual(["43 kg", 43, "kg", "none"]);
  });

  test("where the comma stands before the decimals, below the slash too", () => {
    const comma = { decimal: "," } as const;
    for (const [text, value, name] of [
      ["3 kg/1.000 m2", 0.003, "kg/m2"],
      ["3 kg/1.000m2", 0.003, "kg/m2"],
      ["3 kg/1.000.000 m2", 0.000003, "kg/m2"],
      ["3 kg per 10.000 m2", 0.0003, "kg/m2"],
      ["3 lb/1,000ft2", 3, "lb/1000 ft2"],
      ["3 lb per 1,000 sq ft", 3, "lb/1000 ft2"],
    ] as const)
      expect(read(text, comma)).toEqual([text, value, name, "none"]);
    for (const text of ["3 kg/2,500 m2", "3 kg/12,500 m2", "3 kg/125,000 m2", "3 kg per 1,000 m2"])
      refused([[text, "text", text, 'below the slash, groups of three with "." as above it', comma]]);
  });

  test("a part of one below the slash, in each spelling", () => {
    const whole = `${unit}; below the slash, a whole number or none: 3 lb per 1.5 acres is 2 lb/acre`;
    for (const text of [
      "3 lb per 12 1/2 acres",
      "3 lb per 11/16 acre",
      "3 lb/11/16 acre",
      "3 lb/12 3/4 acre",
    ])
      expect([text, problemsOf(() => parseQuantity(text))[0]?.expected]).toEqual([text, whole]);
    expect(problemsOf(() => parseQuantity("12 per 1.5 acres"))[0]?.expected).toBe(whole);
  });

  test("negative powers below nothing but their own unit", () => {
    expect(read("5 kg P2O5 ha-1")).toEqual(["5 kg P2O5 ha-1", 5, "kg/ha", "P2O5"]);
    expect(read("5 kg 10000 m-2")).toEqual(["5 kg 10000 m-2", 0.0005, "kg/m2", "none"]);
    for (const text of ["5 kg/ha d-1", "5 kg per ha d-1", "5 kg ha-12", "3 kg ha -1"])
      expect([text, problemsOf(() => parseQuantity(text)).length > 0]).toEqual([text, true]);
  });

  test("British spellings and a single measure of Great Britain", () => {
    expect(read("5 cubic centimetres")).toEqual(["5 cubic centimetres", 5, "mL", "none"]);
    expect(read("5 kilogrammes per square metre")).toEqual([
      "5 kilogrammes per square metre",
      5,
      "kg/m2",
      "none",
    ]);
    const imperial = { measures: "imperial" } as const;
    // UK Units of Measurement Regulations 1995: a gallon has 4 quarts, 8 pints and 160 fluid ounces
    for (const [text, value, name] of [
      ["1 quart", 0.25, "imp gal"],
      ["1 pint", 0.125, "imp gal"],
      ["1 fluid ounce", 1, "imp fl oz"],
      ["1 fl ounce", 1, "imp fl oz"],
      ["1 ounce fluid", 1, "imp fl oz"],
      ["1 ounce fl", 1, "imp fl oz"],
      ["1 UK gal", 1, "imp gal"],
      ["1 U.K. gal", 1, "imp gal"],
      ["1 U K gal", 1, "imp gal"],
      ["1 u.k gal", 1, "imp gal"],
      ["1 uk. gal", 1, "imp gal"],
      ["1 gal. (US)", 1, "gal"],
      ["1 gal imp", 1, "imp gal"],
      ["1 hundredweight", 112, "lb"],
    ] as const)
      expect(read(text, imperial)).toEqual([text, value, name, "none"]);
    for (const [text, choice] of [
      ["1 cup", "US cup"],
      ["1 tbsp", "US tbsp"],
      ["1 tablespoon", "US tbsp"],
      ["1 tsp", "US tsp"],
      ["1 teaspoon", "US tsp"],
      ["1 bushel", "US bu"],
    ] as const)
      expect([text, problemsOf(() => parseQuantity(text, imperial))[0]?.choices]).toEqual([text, [choice]]);
  });

  test("a number and a size of Great Britain below a slash are not lost", () => {
    expect(problemsOf(() => parseQuantity("3 lb/100 stone")).map(({ code }) => code)).toEqual([
      "unit/unknown",
    ]);
    for (const text of ["3 imp gal us", "3 long tonnes", "3 long tonss", "3 long x tons"])
      expect([text, problemsOf(() => parseQuantity(text)).length]).toEqual([text, 1]);
  });
});

describe("units of another dimension", () => {
  test("choices are those of the dimension that is asked for", () => {
    const weight = "a unit for a weight, such as lb or kg";
    refused([
      [
        "3 T",
        "unit/ambiguous",
        "T",
        `${weight}; "T" could be several ? US ton | tonne`,
        { dimension: "mass" },
      ],
      [
        "3 T",
        "unit/ambiguous",
        "T",
        'a unit for a volume, such as gal or L; "T" is not clear ? tbsp',
        { dimension: "volume" },
      ],
      ["3 oz", "unit/mismatch", "oz", "a unit for an area, such as ft2 or m2", { dimension: "area" }],
      ["3 tons", "unit/mismatch", "tons", "a unit for a length, such as ft or m", { dimension: "length" }],
      ["3 cwt", "unit/mismatch", "cwt", "a unit for a volume, such as gal or L", { dimension: "volume" }],
      [
        "3 cwt/acre",
        "unit/ambiguous",
        "cwt/acre",
        'a unit for a weight over an area, such as lb/1000 ft2 or kg/ha; "cwt/acre" could be several ? short cwt/acre | long cwt/acre',
        { dimension: "mass/area" },
      ],
      [
        "3 ppm",
        "unit/ambiguous",
        "ppm",
        'a unit for a weight per volume, such as lb/gal or kg/L; "ppm" is not clear ? mg/L',
        { dimension: "mass/volume" },
      ],
    ]);
  });
});
