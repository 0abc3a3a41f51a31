import { describe, expect, test } from "vitest";
import { parseQuantity } from "../../../src/quantity/index.js";

// A small grammar of what people write, put together here with the sizes reckoned beside it: a number in some spelling, a
// unit in some spelling, perhaps a substance, `per` in some spelling and what it is per. What was spelled must be read.

const nbsp = "\u00a0";
const thin = "\u2009";
const narrow = "\u202f";
type Spelled = readonly [text: string, size: number];

const numbers: readonly Spelled[] = [
  ...(["3", "+3", "03", "3.", "3.0"] as const).map((text) => [text, 3] as const),
  ...(["½", ".5", "0.5", "1/2", "1⁄2", "5e-1"] as const).map((text) => [text, 0.5] as const),
  ...["1½", "1 ½", "1-1/2", "1–1/2", "1 1/2", "1 1⁄2", `1${nbsp}1/2`, `1${thin}½`, "3/2"].map(
    (text) => [text, 1.5] as const,
  ),
  ...["12,400", "12 400", `12${nbsp}400`, `12${thin}400`, `12${narrow}400`, "12'400", "12’400", "1.24e4"].map(
    (text) => [text, 12_400] as const,
  ),
  ["1,234,567.5", 1_234_567.5],
  ["1 234 567.5", 1_234_567.5],
  ["2⅔", 8 / 3],
  ["5/8", 0.625],
  ["7/16", 0.4375],
  ["10 1/4", 10.25],
  ["-4", -4],
  ["−4", -4],
  ["0", 0],
];

const LB = 0.45359237;
const FT = 0.3048;
const GAL = 231 * 0.0254 ** 3;
const IMP = 0.00454609;
const each = (size: number, ...texts: readonly string[]): readonly Spelled[] =>
  texts.map((text) => [text, size]);

/** Kilograms. */
const weights: readonly Spelled[] = [
  ...each(LB, "lb", "lbs", "lb.", "Lbs.", "LB", "pounds"),
  ...each(LB / 16, "oz av", "oz. wt.", "dry oz", "ounces by weight"),
  ...each(2000 * LB, "US tons", "short ton"),
  ...each(1, "kg", "KG", "kilos", "kilograms"),
  ...each(0.001, "g", "gm", "grams"),
  ...each(1000, "tonnes", "metric tons"),
  ["stone", 14 * LB],
  ["long tons", 2240 * LB],
  ["short cwt", 100 * LB],
  ["long cwt", 112 * LB],
];
/** Cubic meters, US customary or metric. */
const volumes: readonly Spelled[] = [
  ...each(GAL, "gal", "gal.", "Gal", "gallons", "US gal", "U.S. gallons", "gal (US)"),
  ...each(GAL / 4, "qt", "qts.", "quarts"),
  ...each(GAL / 8, "pt", "pts", "pint"),
  ...each(GAL / 128, "fl oz", "fl. oz.", "fl.oz.", "Fl. Oz.", "floz", `fl${nbsp}oz`, "liquid oz", "oz fl"),
  ...each(GAL / 256, "tbsp", "Tbsp."),
  ...each(0.001, "L", "l", "liters", "litres"),
  ...each(1e-6, "mL", "ml", "cc"),
  ...each(IMP, "imp gal", "imp. gal.", "U.K. gallons"),
  ...each(IMP / 8, "imp. pints", "imperial pt"),
  ...each(1, "m³", "m3"),
  ...each(27 * FT ** 3, "cu yd", "cubic yards", "yd³"),
];
/** The same words where measures are imperial. */
const imperialVolumes: readonly Spelled[] = [
  ...each(IMP, "gal", "gal.", "gallons", "Gal", "gal imp", "imp gal"),
  ...each(IMP / 4, "qt", "quarts", "qts."),
  ...each(IMP / 8, "pt", "pints", "pts"),
  ...each(
    IMP / 160,
    ..."fl oz|fl. oz.|fl.oz.|floz|fl ounces|fluid oz|fluid ozs|fluid ounces|liquid oz|liquid ounces|oz fl|oz. fl.|ounces fluid".split(
      "|",
    ),
  ),
  ...each(GAL, "US gal", "U.S. gal", "gal US", "gal (US)", "gallons U.S."),
  ...each(GAL / 128, "US fl oz", "fl oz US"),
  ...each(0.001, "L", "litres"),
];
const M = 1000 * FT ** 2;
const ACRE = 43.56 * M;
/** Square meters. */
const areas: readonly Spelled[] = [
  ...each(M, "1000 ft2", "1,000 sq ft", "1,000 sq. ft.", "1000 sq.ft.", "1 000 ft²", `1,000${nbsp}ft²`),
  ...each(M, "1000ft2", "1000 square feet", "thousand sq ft", "M sq ft", "MSF", "ksf"),
  ...each(ACRE, "acre", "ac", "ac.", "Acre", "A", "A."),
  ...each(10_000, "ha", "HA", "hectare"),
  ...each(1, "m2", "m²", "sq m", "square metre"),
  ...each(100, "100 m2", "100m²", "100 sq m", "are"),
  ...each(FT ** 2, "ft2", "sq ft", "sqft", "sf", "square foot"),
  ...each(9 * FT ** 2, "yd²", "sq yd"),
  ["5,000 sq ft", 5 * M],
  ["500 ft2", M / 2],
  ["1,000 m²", 1000],
  ["10 sq ft", M / 100],
  ["2 acres", 2 * ACRE],
];
const slashes = ["/", " / ", " per ", "/ ", " Per "];
const stuffs: readonly (readonly [text: string, of: string])[] = [
  ["", "none"],
  [" N", "N"],
  [" of N", "N"],
  [" actual nitrogen", "N"],
  [" P₂O₅", "P2O5"],
  [" phosphate", "P2O5"],
  [" of potash", "K2O"],
  [" elemental phosphorus", "P"],
  [" a.i.", "ai"],
  [" a.e.", "ae"],
  [" slow-release N", "N:slow"],
  [" water-soluble nitrogen", "N:quick"],
  [" PLS", "pure live seed"],
  [" Fe", "Fe"],
];

const at = <T>(list: readonly T[], place: number): T => list[place % list.length] as T;
/** What a text is in one unit. */
const read = (text: string, unit: string, options: object = {}): readonly unknown[] => {
  const q = parseQuantity(text, options as { decimal: "." });
  return [text, q.in(unit as never), q.of];
};
const wanted = (text: string, value: number, of = "none"): readonly unknown[] => [
  text,
  // to 9 digits: the sizes are reckoned twice
  value === 0 ? 0 : expect.closeTo(value, 9 - Math.ceil(Math.log10(Math.abs(value)))),
  of,
];

describe("what was spelled is read", () => {
  test("numbers, before a weight and before a volume", () => {
    for (const [i, [number, value]] of numbers.entries()) {
      const [weight, kilograms] = at(weights, i * 5);
      expect(read(`${number} ${weight}`, "kg")).toEqual(wanted(`${number} ${weight}`, value * kilograms));
      const [volume, cubic] = at(volumes, i * 7);
      const text = `${number} ${volume}`;
      expect(read(text, "m3", { dimension: "volume" })).toEqual(wanted(text, value * cubic));
    }
  });

  test("a weight of something over an area", () => {
    for (const [i, [weight, kilograms]] of weights.entries())
      for (const [j, [area, square]] of areas.entries()) {
        if ((i + j) % 4 > 0) continue;
        const n = i * areas.length + j;
        const [[number, value], [stuff, of]] = [at(numbers, n * 7), at(stuffs, n * 5)];
        const text = `${number} ${weight}${stuff}${at(slashes, n)}${area}`;
        expect(read(text, "kg/m2")).toEqual(wanted(text, (value * kilograms) / square, of));
        expect(read(text, "kg/m2", { dimension: "mass/area", of })).toEqual(
          wanted(text, (value * kilograms) / square, of),
        );
      }
  });

  test("a volume over an area, in US and in imperial measures", () => {
    for (const [list, measures] of [
      [volumes, "US"],
      [imperialVolumes, "imperial"],
    ] as const)
      for (const [i, [volume, cubic]] of list.entries())
        for (const [j, [area, square]] of areas.entries()) {
          if ((i + j) % 5 > 0) continue;
          const n = i * areas.length + j;
          const [number, value] = at(numbers, n * 11);
          const [stuff, of] = n % 2 === 0 ? ["", "none"] : [" product", "product"];
          const text = `${number} ${volume}${stuff}${at(slashes, n)}${area}`;
          expect(read(text, "m3/m2", { measures })).toEqual(wanted(text, (value * cubic) / square, of));
        }
  });

  test("so much in so much water, and a price", () => {
    for (const [i, [weight, kilograms]] of weights.entries()) {
      const [lot, count] = at(
        [
          ["", 1],
          ["100 ", 100],
          ["1,000 ", 1000],
          ["50 ", 50],
        ] as const,
        i,
      );
      const [volume, cubic] = at(volumes, i % 20);
      const text = `2 ${weight} per ${lot}${volume}`;
      expect(read(text, "kg/m3")).toEqual(wanted(text, (2 * kilograms) / (count * cubic)));
      // 100 stone would be a number of a number of pounds
      if (/stone|long|short cwt/.test(weight)) continue;
      const price = `$${at(["28", "1,250.50", "0.75"], i)}/${lot}${weight}`;
      const dollars = at([28, 1250.5, 0.75], i);
      expect(read(price, "money:USD/kg", { dimension: "money:USD/mass" })).toEqual(
        wanted(price, dollars / count / kilograms),
      );
    }
  });

  test("where the comma stands before the decimals, the full stop groups, above and below the slash", () => {
    for (const [number, value] of [
      ["1,5", 1.5],
      ["0,25", 0.25],
      ["12.400", 12_400],
      ["12 400,5", 12_400.5],
      ["12.400,5", 12_400.5],
      [`1${narrow}234,5`, 1234.5],
      ["1.234.567,25", 1_234_567.25],
      ["1 1/2", 1.5],
      ["½", 0.5],
    ] as const)
      for (const [unit, size] of [
        ["kg/ha", 1e-4],
        ["kg/1.000 m2", 1e-3],
        ["kg per 1.000 m²", 1e-3],
        ["kg/10.000 m2", 1e-4],
        ["g/m²", 1e-3],
        ["lb/1,000 ft²", LB / M],
        ["lb/1.000 ft²", LB / M],
      ] as const) {
        const text = `${number} ${unit}`;
        expect(read(text, "kg/m2", { decimal: "," })).toEqual(wanted(text, value * size));
      }
  });

  test("a hundredweight that is 100 lb or 112 lb by what the caller says, on either side of the slash", () => {
    expect(read("3 cwt/acre", "lb/acre", { measures: "US" })).toEqual(wanted("3 cwt/acre", 300));
    expect(read("3 cwt/acre", "lb/acre", { measures: "imperial" })).toEqual(wanted("3 cwt/acre", 336));
    for (const text of ["4 lb/cwt", "4 lb per cwt", "4 lb / hundredweight"]) {
      expect(read(text, "lb/lb", { measures: "US" })).toEqual(wanted(text, 0.04));
      expect(read(text, "lb/lb", { measures: "imperial" })).toEqual(wanted(text, 4 / 112));
    }
    expect(read("3 short cwt", "lb", { measures: "imperial" })).toEqual(wanted("3 short cwt", 300));
    expect(read("3 long cwt", "lb", { measures: "US" })).toEqual(wanted("3 long cwt", 336));
  });

  test("flows and strengths that have a name of their own are imperial where measures are", () => {
    for (const [text, cubic] of [
      ["3 gpa", IMP / ACRE],
      ["3 GPM", IMP / 60],
      ["3 gph", IMP / 3600],
      ["3 gpd", IMP / 86_400],
    ] as const) {
      const unit = text === "3 gpa" ? "m3/m2" : "m3/s";
      expect(read(text, unit, { measures: "imperial" })).toEqual(wanted(text, 3 * cubic));
      expect(read(text, unit)).toEqual(wanted(text, ((3 * cubic) / IMP) * GAL));
    }
    expect(read("7 gpg", "kg/m3", { measures: "imperial" })).toEqual(wanted("7 gpg", LB / 1000 / IMP));
    expect(read("7 gpg", "kg/m3")).toEqual(wanted("7 gpg", LB / 1000 / GAL));
  });

  test("a length of row", () => {
    for (const feet of ["ft", "lin ft", "linear ft", "linear feet", "lineal feet"])
      expect(read(`3 lb/1000 ${feet}`, "kg/m")).toEqual(wanted(`3 lb/1000 ${feet}`, (3 * LB) / (1000 * FT)));
  });
});
