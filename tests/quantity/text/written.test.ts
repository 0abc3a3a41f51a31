import { describe, expect, test } from "vitest";
import { type FormatOptions, format, money, quantity, quantityOf } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

// What people read, written down by hand. 1 lb is 0.45359237 kg, 1 acre 43,560 ft².

type Row = readonly [
  text: string,
  value: number,
  unit: string,
  of?: string,
  options?: FormatOptions & { readonly unit?: string },
];
const written = ([, value, unit, of = "none", options = {}]: Row): string =>
  format(quantityOf(value, unit, of, "row"), options as never).replace(/[\u00a0\u202f]/g, " ");
const name = { unitDisplay: "name" } as const;
const plain = { unitDisplay: "unit" } as const;

const named = (rows: readonly Row[]): readonly { readonly text: string; readonly row: Row }[] =>
  rows.map((row) => ({ text: row[0], row }));

describe("a quantity as people read it", () => {
  test.each(
    named([
      ["3 lb", 3, "lb"],
      ["-3 lb", -3, "lb"],
      ["0 lb", 0, "lb"],
      ["1,234 lb", 1234, "lb"],
      ["12,345 lb", 12345, "lb"],
      ["123,456.789 lb", 123456.789, "lb"],
      ["1,234,567 lb", 1234567, "lb"],
      ["-1,234.5 lb", -1234.5, "lb"],
      ["0.1235 lb", 0.12345678, "lb"],
      ["0.01235 lb", 0.012345678, "lb"],
      ["0.001235 lb", 0.0012345678, "lb"],
      ["0.0001235 lb", 0.00012345678, "lb"],
      ["9.999 lb", 9.99949, "lb"],
      ["10 lb", 9.9996, "lb"],
      ["1 lb", 0.99999, "lb"],
      ["3 lb of product:feed-a", 3, "lb", "product:feed-a"],
      ["3 lb N", 3, "lb", "N"],
      ["3 lb of N/product", 3, "lb", "N/product"],
      ["3 lb N/acre", 3, "lb/acre", "N"],
      ["3 acre treated", 3, "acre", "treated"],
      ["3 % w/w of N/product", 3, "% w/w", "N/product"],
      ["3 lb N/gal spray", 3, "lb/gal", "N/spray"],
      ["3 lb N/acre", 3, "lb/acre", "N"],
      ["3 lb/acre of N/product", 3, "lb/acre", "N/product"],
      ["3 lb/gal of ai:a/product", 3, "lb/gal", "ai:a/product"],
      ["3 lb/gal of none/spray", 3, "lb/gal", "none/spray"],
      ["3 N", 3, "1", "N"],
      ["3", 3, "1"],
      ["3/d", 3, "1/d"],
      ["3 × 1,000 ft²", 3, "1000 ft2"],
      ["3 × 100 m²", 3, "100 m2"],
      ["3 pounds", 3, "lb", "none", name],
      ["1 pound", 1, "lb", "none", name],
      ["1 pound", 0.9999999, "lb", "none", name],
      ["1.5 pounds of N", 1.5, "lb", "N", name],
      ["1 pound of N per acre", 1, "lb/acre", "N", name],
      ["2 pounds of N per gallon of spray", 2, "lb/gal", "N/spray", name],
      ["2 pounds of product:a per acre", 2, "lb/acre", "product:a", name],
      ["2 pounds per acre of product:a per b", 2, "lb/acre", "product:a per b", name],
      ["2 pounds per acre", 2, "lb/acre", "none", name],
      ["3 per day", 3, "1/d", "none", name],
      ["3 × 1,000 square feet", 3, "1000 ft2", "none", name],
      ["3 lb/1000 ft2", 3, "lb/1000 ft2", "none", plain],
      ["3 × 1000 ft2", 3, "1000 ft2", "none", plain],
      ["3 1/d", 3, "1/d", "none", plain],
      ["3 1", 3, "1", "none", plain],
      ["3 lb N/1000 ft2", 3, "lb/1000 ft2", "N", plain],
      ["3 lb", 3, "lb", "N", { substance: false }],
      ["130.68 lb N/acre", 3, "lb/1000 ft2", "N", { unit: "lb/acre" }],
      ["1.361 kg", 3, "lb", "none", { unit: "kg" }],
      ["1.4 kg", 3, "lb", "none", { unit: "kg", significantDigits: 2 }],
      ["1.36 kg", 3, "lb", "none", { unit: "kg", maximumFractionDigits: 2 }],
      ["1.4 kg", 3, "lb", "none", { unit: "kg", maximumFractionDigits: 5, significantDigits: 2 }],
      ["1 kg", 3, "lb", "none", { unit: "kg", maximumFractionDigits: 0 }],
      ["1.234,5 lb", 1234.5, "lb", "none", { locale: "de" }],
      ["3 lb/1.000 ft²", 3, "lb/1000 ft2", "none", { locale: "de" }],
      ["0,1235 lb", 0.12345678, "lb", "none", { locale: "de" }],
      ["-0.0001 lb", -0.0001, "lb"],
      ["0 lb", -0.0001, "lb", "none", { maximumFractionDigits: 2 }],
    ]),
  )("$text", ({ row }) => {
    expect(written(row)).toBe(row[0]);
  });

  test.each(
    named([
      ["$3.00", 3, "money:USD"],
      ["-$3.50", -3.5, "money:USD"],
      ["$3.00/lb", 3, "money:USD/lb"],
      ["$3.00 per pound", 3, "money:USD/lb", "none", name],
      ["$3.00/lb N", 3, "money:USD/lb", "none/N"],
      ["$3.00 per pound of N", 3, "money:USD/lb", "none/N", name],
      ["$3.00/acre of none/N", 3, "money:USD/acre", "none/N"],
      ["$3.00/lb of none/product:a", 3, "money:USD/lb", "none/product:a"],
      ["$3.00/lb of N", 3, "money:USD/lb", "N"],
      ["$3.00/lb", 3, "money:USD/lb", "none/N", { substance: false }],
      ["$3.00/1,000 ft²", 3, "money:USD/1000 ft2"],
      ["$0.0123/lb", 0.01234, "money:USD/lb"],
      ["$0.123/lb", 0.1234, "money:USD/lb"],
      ["$12.34/lb", 12.34, "money:USD/lb"],
      ["$0.00", 0.001, "money:USD"],
      ["$3/lb", 3, "money:USD/lb", "none", { maximumFractionDigits: 0 }],
      ["$3.3", 3.26, "money:USD", "none", { significantDigits: 2 }],
      ["3,00 €/kg", 3, "money:EUR/kg", "none", { locale: "de" }],
      ["¥3/kg", 3, "money:JPY/kg"],
      ["$0.45/oz", 7.2, "money:USD/lb", "none", { unit: "money:USD/oz" }],
    ]),
  )("money: $text", ({ row }) => {
    expect(written(row)).toBe(row[0]);
  });

  test("an amount of next to nothing has twenty decimals at most", () => {
    expect(format(money(1e-30, "USD").per(quantity(1, "lb")))).toBe("$0.00/lb");
  });

  const told = (options: object): readonly string[] =>
    problemsOf(() => format(quantity(3, "lb"), options as never)).map(
      ({ code, path, expected }) => `${code} | ${path} | ${expected}`,
    );
  test("what it refuses", () => {
    const intl = "range | options | a language tag and a number of digits that Intl knows";
    expect(told({ locale: "no such tag" })).toEqual([intl]);
    expect(told({ significantDigits: 99 })).toEqual([intl]);
    expect(told({ maximumFractionDigits: -1 })).toEqual([intl]);
    expect(told({ maximumFractionDigits: "x" })).toEqual([intl]);
    expect(told({ unitDisplay: "short" })).toEqual([
      'type | options.unitDisplay | "symbol", "name" or "unit"',
    ]);
    expect(told({ locales: "de" })).toEqual([
      "type | options.locales | one of the fields unit, locale, maximumFractionDigits, significantDigits, unitDisplay, substance",
    ]);
    expect(told(3 as never)).toEqual(["type | options | a record of options"]);
    expect(told({ unit: "gal" })).toEqual(["unit/mismatch | unit | a unit for a weight, as lb is"]);
    expect(problemsOf(() => format(3 as never))[0]).toMatchObject({ code: "type", path: "quantity" });
  });
});
