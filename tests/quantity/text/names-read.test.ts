import { describe, expect, test } from "vitest";
import { parseQuantity, suggestSubstance, suggestUnit } from "../../../src/quantity/index.js";
import { readUnitName } from "../../../src/quantity/text/aliases.js";
import { readAnew } from "../../../src/quantity/text/unit-reading.js";
import { problemsOf } from "../../errors.js";

describe("what a name may mean", () => {
  test("one unit, several by what is wanted, or only by one more word", () => {
    expect(readUnitName("lb")).toEqual({ reads: ["lb"], sure: "lb", choices: [] });
    expect(readUnitName("stone")).toEqual({ reads: ["lb"], sure: "lb", choices: [], size: 14 });
    expect(readUnitName("A")).toEqual({ reads: [], choices: ["acre"] });
    expect(readUnitName("#")).toEqual({ reads: ["lb", "count"], choices: ["lb", "count"] });
    expect(readUnitName("t")).toEqual({ reads: ["t"], choices: ["tonne", "US ton", "tsp"] });
    expect(readUnitName("MM")).toEqual({ reads: ["mm"], choices: ["mm"] });
    expect(readUnitName("imp cup")).toEqual({ reads: [], choices: ["US cup"] });
    expect(readUnitName("F")).toEqual({ reads: ["°F", "°F diff"], sure: "°F", choices: [] });
    for (const name of ["K", "kelvin", "kelvins"])
      expect(readUnitName(name)).toEqual({ reads: ["K", "°C diff"], sure: "K", choices: [] });
  });

  test("of one and of several of it", () => {
    for (const [name, choices] of [
      ["oz", ["oz av", "fl oz"]],
      ["ounce", ["oz av", "fl oz"]],
      ["ton", ["US ton", "tonne"]],
      ["hundredweight", ["short cwt", "long cwt"]],
      ["grs", ["grain", "g"]],
      ["part per million", ["ppm w/w", "ppm v/v", "mg/L"]],
      ["parts per million", ["ppm w/w", "ppm v/v", "mg/L"]],
    ] as const)
      expect([name, readUnitName(name)?.sure, readUnitName(name)?.choices]).toEqual([
        name,
        undefined,
        choices,
      ]);
  });

  test.each([
    [" g ", "g"],
    ["g.", "g"],
    ["L.", "L"],
    ["-lb", "lb"],
    ["acre - ft", "acre-ft"],
    ["feet2", "ft2"],
    ["meters2", "m2"],
    ["feet3", "ft3"],
    ["cuft", "ft3"],
    ["cuyd", "yd3"],
    ["sqft", "ft2"],
    ["fl.ounces", "fl oz"],
    ["Msqft", "1000 ft2"],
    ["Mft2", "1000 ft2"],
    ["t", undefined],
    ["%", "%"],
    ["°C diff", "°C diff"],
    ["W/m2", "W/m2"],
    [`${"(".repeat(58)}lb`, "lb"],
  ] as const)("%s is %s", (name, unit) => {
    expect(readUnitName(name)?.sure).toBe(unit);
  });

  test("a doubtful name inside another word is none", () => {
    for (const name of ["subdegrees", "degreesx", "agrs", "grsx", "cwtsx", "metons", "onsx", "xppm", "agdd"])
      expect([name, readUnitName(name)]).toEqual([name, undefined]);
  });

  test("what stands before or behind a name is not passed over", () => {
    const none = [
      ...[
        "1000 sq ft\nzz",
        "square ft\nzz",
        "cubic yd\nzz",
        "us gal\nzz",
        "imp gal\nzz",
        "zz\nft sq",
        "zz\nft cu",
      ],
      ...["zz\ngal us", ".g", "x", "", " ", `${"(".repeat(59)}lb`, "us imp gal", "us gpa", "us acre ft"],
      ...[
        "imp short cwt",
        "imp us tons",
        "imp metric tons",
        "imp tonne",
        "imp us gal",
        "imp gal us",
        "long gal",
      ],
      ...["long tonne", "long us ton", "% by weightx", "100 m2x", "per", "/", "gal/", "/gal"],
    ];
    for (const name of none) expect([name, readUnitName(name)]).toEqual([name, undefined]);
  });
});

describe("what stands behind the number", () => {
  const problem = (text: string, dimension?: string) => readAnew(text, dimension).problems[0];
  test("numbers below the slash, with their groups", () => {
    for (const [text, divisor] of [
      ["lb/12,000 ft2", 12_000],
      ["lb/1,234,000 ft2", 1_234_000],
      ["kg/1 500 m2", 1500],
      ["kg/12 000 m2", 12_000],
      ["kg/120 000 m2", 120_000],
      ["kg/1 000 000 m2", 1_000_000],
      ["kg/250m2", 250],
    ] as const)
      expect([text, readAnew(text).divisor, readAnew(text).problems]).toEqual([text, divisor, []]);
    for (const text of ["lb/x12 ft2", "lb/12,00 ft2", "lb/12 00 ft2", "lb/1234567890 ft2"])
      expect([text, problem(text)?.code]).toEqual([text, "unit/unknown"]);
  });

  test("a lot that could be two is refused, however it is spaced", () => {
    for (const text of [
      "kg/12 100 m2",
      "kg/12 100m2",
      "kg/1 234 100 m2",
      "kg/12 100 sq m",
      "lb/1000M",
      "lb/1000 M",
    ])
      expect([text, problem(text)?.expected]).toEqual([
        text,
        "a unit, such as lb/1000 ft2; below the slash, an area as one number: /1200 m2, /1000 ft2",
      ]);
  });

  test("M is 1000 ft2 below what goes with it, money too, and is asked for below anything else", () => {
    for (const top of [
      "lb",
      "US ton",
      "gal",
      "qt",
      "pt",
      "fl oz",
      "cups",
      "cu yd",
      "cu ft",
      "bu",
      "money:USD",
    ])
      expect([top, readAnew(`${top}/M`).unit?.split("/")[1]]).toEqual([top, "1000 ft2"]);
    for (const top of ["imp gal", "kg", "mL", "L", "gpm", "ft3/s"])
      expect([top, readAnew(`${top}/M`).unit]).toEqual([top, undefined]);
    expect(problem("kg/1000", "mass/area")?.choices).toEqual(["kg/1000 ft2"]);
  });

  test("a slip between a length and an area keeps its number, or names nothing", () => {
    expect(problem("lb/1000 ft", "mass/area")?.suggestion).toBe("lb/1000 ft2");
    expect(problem("L/100 m", "volume/area")?.suggestion).toBe("L/100 m2");
    for (const text of ["lb/30 ft", "lb/100 ft", "lb/1000 gal"])
      expect([text, problem(text, "mass/area")?.code, problem(text, "mass/area")?.suggestion]).toEqual([
        text,
        "unit/mismatch",
        undefined,
      ]);
  });

  test("a percent that is no concentration is no doubt", () => {
    expect(problem("% N/acre")?.code).toBe("unit/unknown");
    for (const dimension of ["mass/volume/time", "mass/area", "volume/area"])
      expect([dimension, problem("%", dimension)?.code]).toEqual([dimension, "unit/mismatch"]);
    for (const dimension of ["mass/mass", "volume/volume", "mass/volume", "volume/mass"])
      expect([dimension, problem("%", dimension)?.code]).toEqual([dimension, "unit/ambiguous"]);
  });

  test("soil, water and spray below the slash are what it is in; of what is asked", () => {
    for (const medium of ["soil", "water", "spray"])
      expect([medium, problem(`mg/kg of ${medium}`)?.choices]).toEqual([
        medium,
        [`mg ${medium}/kg`, `mg product/kg ${medium}`],
      ]);
    expect(readAnew("g per L of N/product").of).toBe("N/product");
    expect(readAnew("lb per acre of N").of).toBe("N");
    expect(readAnew("/d")).toEqual({ unit: "1/d", divisor: 1, problems: [] });
  });

  test("a weight in a volume of a nutrient is one of the nutrient", () => {
    for (const [text, of] of [
      ["mg/L N", "N"],
      ["mg/L NO3-N", "NO3-N"],
      ["mg/L Ca", "Ca"],
      ["lb/gal K", "K"],
      ["g/L N:slow", "N:slow"],
      ["mg per L of Cl", "Cl"],
    ] as const)
      expect([text, readAnew(text).of, readAnew(text).problems]).toEqual([text, of, []]);
    for (const text of [
      "lb/gal ai",
      "lb/gal product",
      "g/L water",
      "g/L product:feed-a",
      "lb/lb N",
      "fl oz/gal N",
    ])
      expect([text, problem(text)?.code]).toEqual([text, "conflict"]);
  });
});

describe("what is near", () => {
  test("two letters that changed places are one step, two that did not are two", () => {
    for (const [text, unit] of [
      ["arce", undefined],
      ["glalon", "gal"],
      ["ponxd", undefined],
      ["poxud", undefined],
      // the first letter makes another word
      ["xacre", undefined],
      ["acrex", "acre"],
      ["ace", undefined],
      ["are", "100 m2"],
      ["ozs/acer", undefined],
    ] as const)
      expect([text, suggestUnit(text)]).toEqual([text, unit]);
  });

  test("other things and other sizes are no slips", () => {
    const units =
      "slug square squares mill rem gray mach daa barn tonnage cap caps point mil cord drum pail case hL dL";
    for (const word of units.split(" ")) expect([word, suggestUnit(word)]).toEqual([word, undefined]);
    const stuffs =
      "calcite copperas silicate alumina oil phosphoric nitrite sulfide urea lime gypsum sand manganate";
    for (const word of stuffs.split(" ")) expect([word, suggestSubstance(word)]).toEqual([word, undefined]);
  });

  test("but a slip of the pen is one", () => {
    for (const [word, of] of [
      ["phosphorous", "P"],
      ["potassiums", "K"],
      ["zink", "Zn"],
      ["coper", "Cu"],
      ["nickle", "Ni"],
    ] as const)
      expect([word, suggestSubstance(word)]).toEqual([word, of]);
  });

  test("in a text it is told beside what was typed", () => {
    expect(problemsOf(() => parseQuantity("3 lb zink/acre"))[0]?.suggestion).toBe("Zn");
    expect(problemsOf(() => parseQuantity("3 squares"))[0]?.suggestion).toBeUndefined();
  });
});
