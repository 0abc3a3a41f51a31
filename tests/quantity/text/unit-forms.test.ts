// What stands behind the number, read each time anew: the forms, one of each, by hand.
import { describe, expect, test } from "vitest";
import { readAnew } from "../../../src/quantity/text/unit-reading.js";

type Form = readonly [text: string, unit: string, of?: string | undefined, divisor?: number];
type Ask = readonly [dimension?: string | undefined, of?: string];
const read = (text: string, ...[dimension, of]: Ask) => readAnew(text, dimension, of);
const forms: readonly Form[] = [
  ["lb", "lb"],
  ["lbs/1,000 sq ft", "lb/1000 ft2"],
  ["lb/M", "lb/1000 ft2"],
  ["gal per acre", "gal/acre"],
  ["/d", "1/d"],
  ["lb N", "lb", "N"],
  ["lb of N", "lb", "N"],
  ["lb of N per 1,000 sq ft", "lb/1000 ft2", "N"],
  ["lb N/acre", "lb/acre", "N"],
  ["lb/acre of N", "lb/acre", "N"],
  ["lb/acre of product:feed-a", "lb/acre", "product:feed-a"],
  ["lb N/acre N", "lb/acre", "N"],
  ["lb/acre N", "lb/acre", "N"],
  ["lb N/acre treated", "lb/acre", "N"],
  ["lb N/acre gross", "lb/acre", "N"],
  ["lb N/acre plan", "lb/acre", "N"],
  ["lb/acre treated", "lb/acre", "treated"],
  ["fl oz product/gal spray", "fl oz/gal", "product/spray"],
  ["fl oz of product per gal of spray", "fl oz/gal", "product/spray"],
  ["pt product/100 gal spray", "pt/gal", "product/spray", 100],
  ["mg N/kg soil", "mg/kg", "N/soil"],
  ["mg/L of NO3-N", "mg/L", "NO3-N"],
  ["lb/gal of N", "lb/gal", "N"],
  ["lb/gal of N/product", "lb/gal", "N/product"],
  ["% w/w N/product", "% w/w", "N/product"],
  ["% w/w of N/product", "% w/w", "N/product"],
  ["% v/v", "% v/v"],
  ["meq/100 g", "meq/100 g"],
  ["pt/100 gal", "pt/gal", undefined, 100],
  ["kg ha-1", "kg/ha"],
  ["kg ha^-1 d^-1", "kg/ha/d"],
  ["lb N/1000 ft2/week", "lb/1000 ft2/week", "N"],
  ["money:USD/lb N", "money:USD/lb", "none/N"],
  ["money:USD/acre", "money:USD/acre"],
  ["stone", "lb", undefined, 1 / 14],
  ["mm/d", "mm/d"],
];

describe("what stands behind a number", () => {
  test("reads as the unit, the substance, and what the number is divided by", () => {
    for (const [text, unit, of, divisor = 1] of forms) {
      const reading = read(text);
      expect([text, reading.problems.map(({ expected }) => expected)]).toEqual([text, []]);
      expect([text, reading.unit, reading.of]).toEqual([text, unit, of]);
      expect(reading.divisor).toBeCloseTo(divisor, 12);
    }
  });

  test("reads by what is wanted where the text alone could be several", () => {
    const wanted: readonly (readonly [text: string, dimension: string, unit: string])[] = [
      ["oz", "mass", "oz"],
      ["oz/M", "mass/area", "oz/1000 ft2"],
      ["lb/1000", "mass/area", "lb/1000 ft2"],
      ["lb/K", "mass/area", "lb/1000 ft2"],
      ["fl oz per thousand", "volume/area", "fl oz/1000 ft2"],
      ["°F", "temperature", "°F"],
      ["°F", "temperature difference", "°F diff"],
      ["K", "temperature difference", "°C diff"],
      ["t/ha", "mass/area", "t/ha"],
      ["/h", "1/time", "1/h"],
      ["/h", "count/time", "count/h"],
      ["%", "1", "%"],
    ];
    for (const [text, dimension, unit] of wanted)
      expect([text, dimension, read(text, dimension).unit, read(text, dimension).problems.length]).toEqual([
        text,
        dimension,
        unit,
        0,
      ]);
  });

  test("an id may hold the word per where the caller says so", () => {
    const id = "product:4 per bag";
    expect(read(`lb/acre of ${id}`, "mass/area", id)).toMatchObject({
      unit: "lb/acre",
      of: id,
      problems: [],
    });
    expect(read(`lb of ${id}`, "mass", id)).toMatchObject({ unit: "lb", of: id, problems: [] });
    expect(read("lb/acre of product:feed-a", "mass/area", id)).toMatchObject({ of: "product:feed-a" });
  });

  const unit = "a unit, such as lb/1000 ft2";
  const pairs = "what is above the slash and what is below it";
  const rows: readonly (readonly [
    text: string,
    ask: Ask,
    code: string,
    expected: string,
    choices?: readonly string[],
  ])[] = [
    ["lb/mow", [], "unit/unknown", unit],
    ["lb/demo", [], "unit/unknown", unit],
    ["lb/seasonal", [], "unit/unknown", unit],
    [
      "lb/month",
      [],
      "unit/unknown",
      `${unit}; months and years have no fixed length: give the amount alone, and the time as the period of a limit, per: { months: 1 }`,
    ],
    [
      "lb/yr",
      [],
      "unit/unknown",
      `${unit}; months and years have no fixed length: give the amount alone, and the time as the period of a limit, per: "calendar year"`,
    ],
    ["h/c", [], "unit/unknown", unit],
    ["ton", [], "unit/ambiguous", `${unit}; "ton" could be several`, ["US ton", "tonne"]],
    ["oz", [], "unit/ambiguous", `${unit}; "oz" could be several`, ["oz av", "fl oz"]],
    ["lb/1000", [], "unit/ambiguous", `${unit}; "lb/1000" is not clear`, ["lb/1000 ft2"]],
    ["ppm", [], "unit/ambiguous", `${unit}; "ppm" could be several`, ["ppm w/w", "ppm v/v", "mg/L"]],
    ["lb N/acre K", [], "conflict", "one substance"],
    ["lb N/acre other:treated", [], "conflict", "one substance"],
    ["lb N/lb N", [], "conflict", "two substances, such as N/product"],
    ["lb N/acre of P/product", [], "conflict", "one substance"],
    ["mg/kg soil", [], "conflict", pairs, ["mg soil/kg", "mg product/kg soil"]],
    ["fl oz/gal of water", [], "conflict", pairs, ["fl oz water/gal", "fl oz product/gal water"]],
    ["fl oz/100 gal of water", [], "conflict", pairs, ["fl oz water/100 gal", "fl oz product/100 gal water"]],
    ["pt/gal product", [], "conflict", pairs, ["pt product/gal", "pt/gal of none/product"]],
    ["lb of xyz", [], "substance/unknown", "a substance after lb, such as N, P2O5, product or water"],
    ["%", ["mass/mass"], "unit/ambiguous", "a percent of weight or of volume", ["% w/w"]],
    ["% N", [], "unit/ambiguous", "a percent of weight or of volume", ["% w/w", "% v/v", "% w/v"]],
    [
      "%",
      [undefined, "N"],
      "unit/ambiguous",
      "a percent of weight or of volume",
      ["% w/w", "% v/v", "% w/v"],
    ],
  ];
  test.each(rows.map((row) => ({ row })))(
    "$row.0 is refused",
    ({ row: [text, ask, code, expected, choices] }) => {
      const [first] = read(text, ...ask).problems;
      expect([first?.code, first?.expected, first?.choices]).toEqual([code, expected, choices]);
    },
  );
});
