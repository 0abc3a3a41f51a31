import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { format, money, quantity, unitName, unitSymbol } from "../../../src/quantity/index.js";
import { errorOf } from "../../errors.js";
import { baseUnitSample, commonQuotientList } from "../samples.js";

describe("format", () => {
  test("symbols are ours, digits are English unless a language is named", () => {
    expect(format(quantity(3, "lb/1000 ft2", "N"))).toBe("3 lb N/1,000 ft²");
    expect(format(quantity(12400, "ft2"))).toBe("12,400 ft²");
    expect(format(quantity(12400.5, "m2"), { locale: "de" })).toBe("12.400,5 m²");
    expect(format(quantity(3, "1000 ft2"))).toBe("3 × 1,000 ft²");
    expect(format(quantity(3, "lb/1000 ft2"), { locale: "de" })).toBe("3 lb/1.000 ft²");
    expect(format(quantity(5, "1/d"))).toBe("5/d");
    expect(format(quantity(5, "1"))).toBe("5");
    expect(format(quantity(45, "%"))).toBe("45 %");
  });

  test("what was written before makes no difference, in however many languages and digits", () => {
    const tags = ["en-US", "de", "fr", "sv", "ja"];
    type Wish = { locale: string; significantDigits?: number; maximumFractionDigits?: number };
    const wishes = Array.from(
      { length: 300 },
      (_, i): Wish => ({
        locale: tags[i % tags.length] as string,
        ...(i % 2 === 0 ? { significantDigits: 1 + (i % 17) } : { maximumFractionDigits: i % 19 }),
      }),
    );
    const written = (wish: Wish): string => {
      const { locale, significantDigits, maximumFractionDigits } = wish;
      return new Intl.NumberFormat(
        locale,
        significantDigits === undefined
          ? { minimumFractionDigits: 0, maximumFractionDigits: maximumFractionDigits as number }
          : { maximumSignificantDigits: significantDigits },
      ).format(1234.56789);
    };
    for (const wish of [...wishes, ...wishes.reverse()])
      expect(format(quantity(1234.56789, "lb"), wish)).toBe(`${written(wish)} lb`);
  });

  test("digits are those of Intl, however they are made", () => {
    const byIntl = (value: number): string =>
      new Intl.NumberFormat(
        "en-US",
        Math.abs(value) < 1 ? { maximumSignificantDigits: 4 } : { maximumFractionDigits: 3 },
      ).format(value);
    const written = (value: number): void => {
      expect(format(quantity(value, "lb"))).toBe(`${byIntl(value)} lb`);
    };
    for (const value of [0, 1, 0.99995, 0.99994, 999.9995, 999_999.9995, 999_999.9994, 1e6, 1234567.8915]) {
      written(value);
      if (value > 0) written(-value);
    }
    // Halves of the last place, and their neighbors.
    for (let i = 0; i < 400; i++) {
      const half = (i * 37 + 0.5) / (i % 3 === 0 ? 1000 : i % 3 === 1 ? 10_000 : 1_000_000);
      for (const value of [half, half * (1 + Number.EPSILON), half * (1 - Number.EPSILON), half + 1])
        written(value);
    }
    fc.assert(
      fc.property(fc.double({ min: -3e6, max: 3e6, noNaN: true }), (value) =>
        written(value === 0 ? 0 : value),
      ),
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999_999 }), fc.integer({ min: 0, max: 9 }), (digits, places) =>
        written(digits / 10 ** places),
      ),
    );
  });

  test("names are plain English, in the singular for one", () => {
    expect(format(quantity(2.5, "gal/acre"), { unitDisplay: "name" })).toBe("2.5 gallons per acre");
    expect(format(quantity(1, "lb/1000 ft2", "N"), { unitDisplay: "name" })).toBe(
      "1 pound of N per 1,000 square feet",
    );
    expect(format(quantity(1, "ft"), { unitDisplay: "name" })).toBe("1 foot");
  });

  test("another unit, and the wire unit", () => {
    expect(format(quantity(1, "acre"), { unit: "ft2" })).toBe("43,560 ft²");
    expect(format(quantity(1, "acre"), { unit: "1000 ft2", unitDisplay: "unit" })).toBe("43.56 × 1000 ft2");
    expect(errorOf(() => format(quantity(1, "acre"), { unit: "lb" as "ft2" }))?.code).toBe("unit/mismatch");
    expect(errorOf(() => format(quantity(1, "acre"), { unit: "acres" as "ft2" }))?.code).toBe("unit/unknown");
  });

  test("rounding is for display only", () => {
    const q = quantity(1234.56789, "lb");
    expect(format(q)).toBe("1,234.568 lb");
    expect(format(q, { maximumFractionDigits: 0 })).toBe("1,235 lb");
    expect(format(q, { significantDigits: 2 })).toBe("1,200 lb");
    expect(q.value).toBe(1234.56789);
    expect(format(quantity(0.00012345, "lb"))).toBe("0.0001235 lb");
    expect(format(quantity(-0.0001, "lb"), { maximumFractionDigits: 2 })).toBe("0 lb");
  });

  test("money", () => {
    expect(format(money(1234.5, "USD"))).toBe("$1,234.50");
    expect(format(money(-3, "CAD"))).toBe("-CA$3.00");
    expect(format(money(28.5, "USD").per(quantity(50, "lb", "N")))).toBe("$0.57/lb N");
    expect(format(money(0.574, "USD").per(quantity(1, "lb")), { maximumFractionDigits: 3 })).toBe(
      "$0.574/lb",
    );
    expect(format(money(30, "EUR").per(quantity(1, "ha")), { unitDisplay: "name" })).toBe(
      "€30.00 per hectare",
    );
  });

  test("a small price per unit is not written as nothing", () => {
    expect(format(money(0.0034, "USD").per(quantity(1, "ft2")))).toBe("$0.0034/ft²");
    expect(format(money(1, "USD").per(quantity(3, "lb")))).toBe("$0.333/lb");
    expect(format(money(1.2345, "USD").per(quantity(1, "lb")))).toBe("$1.23/lb");
    expect(format(money(0, "USD").per(quantity(1, "lb")))).toBe("$0.00/lb");
    expect(format(money(12.34, "JPY").per(quantity(1, "m2")))).toBe("¥12.3/m²");
    expect(format(money(0.004, "USD"))).toBe("$0.00");
  });

  // ISO 4217: the yen has no minor unit, the dinar of Kuwait has three decimals
  test("the decimals of the currency", () => {
    expect(format(money(1234.5, "JPY"))).toBe("¥1,235");
    expect(format(money(1234.5678, "KWD")).replace(/\s/g, " ")).toBe("KWD 1,234.568");
    expect(format(money(-0.001, "USD"))).toBe("$0.00");
    expect(format(quantity(40, "money:USD/acre", "none/N"))).toBe("$40.00/acre of none/N");
  });

  test("substances", () => {
    expect(format(quantity(2, "fl oz/gal", "product/spray"))).toBe("2 fl oz product/gal spray");
    expect(format(quantity(24, "% w/w", "N/product"))).toBe("24 % w/w of N/product");
    expect(format(quantity(3, "lb/acre", "product:feed-a"))).toBe("3 lb/acre of product:feed-a");
    expect(format(quantity(3, "lb/acre", "N"), { substance: false })).toBe("3 lb/acre");
    // "pounds per gallon of X" could be said of the gallon
    expect(format(quantity(4, "lb/gal", "ai:2,4-D"), { unitDisplay: "name" })).toBe(
      "4 pounds of ai:2,4-D per gallon",
    );
  });

  test("what Intl refuses is our error", () => {
    expect(errorOf(() => format(quantity(1, "lb"), { locale: "no such tag" }))?.code).toBe("range");
    expect(errorOf(() => format(quantity(1, "lb"), { significantDigits: 99 }))?.code).toBe("range");
    expect(errorOf(() => format(undefined as never))?.code).toBe("missing");
    expect(errorOf(() => format(quantity(1, "lb"), null as never))?.code).toBe("type");
    expect(errorOf(() => format(quantity(1, "lb"), { unitDisplay: "short" as "name" }))?.code).toBe("type");
  });
});

describe("unit names", () => {
  test("every unit has a symbol and a name of its own", () => {
    const units = [...baseUnitSample, ...commonQuotientList].filter((unit) => unit !== "1");
    expect(new Set(units.map(unitSymbol)).size).toBe(new Set(units).size);
    expect(new Set(units.map((unit) => unitName(unit))).size).toBe(new Set(units).size);
    for (const unit of units) {
      expect(unitName(unit)).not.toBe("");
      expect(unitSymbol(unit)).not.toMatch(/undefined/);
    }
  });

  test("examples", () => {
    expect(unitName("lb/1000 ft2")).toBe("pounds per 1,000 square feet");
    expect(unitName("lb/1000 ft2/week")).toBe("pounds per 1,000 square feet per week");
    expect(unitName("1/d")).toBe("per day");
    expect(unitSymbol("lb/1000 ft2/week")).toBe("lb/1,000 ft²/week");
    expect(unitSymbol("meq/100 g")).toBe("meq/100 g");
    expect(unitSymbol("money:USD/lb")).toBe("USD/lb");
    expect(unitName("toString")).toBe("toString");
  });
});
