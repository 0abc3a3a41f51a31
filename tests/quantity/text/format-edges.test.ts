import { describe, expect, test } from "vitest";
import { format, quantityOf } from "../../../src/quantity/index.js";
import { everydayText } from "../../../src/quantity/text/format.js";

describe("written amounts", () => {
  test("one and several, and one language after another, for the same unit", () => {
    const name = { unitDisplay: "name" } as const;
    const texts = [1, 2, 2, 1].map((value) => format(quantityOf(value, "ft", "none", "q"), name));
    expect(texts).toEqual(["1 foot", "2 feet", "2 feet", "1 foot"]);
    const rate = quantityOf(3, "lb/1000 ft2", "N", "q");
    expect([{}, name, { unitDisplay: "unit" } as const, name, {}].map((wish) => format(rate, wish))).toEqual([
      "3 lb N/1,000 ft²",
      "3 pounds of N per 1,000 square feet",
      "3 lb N/1000 ft2",
      "3 pounds of N per 1,000 square feet",
      "3 lb N/1,000 ft²",
    ]);
    const lot = quantityOf(3, "lb/1000 ft2", "none", "q");
    // Intl writes 1,000 with a narrow space in French and with a full stop in German
    const plain = (locale: string): string => format(lot, { locale }).replace(/[\u00a0\u202f]/g, " ");
    expect(["en-US", "de", "fr", "en-US", "de"].map(plain)).toEqual([
      "3 lb/1,000 ft²",
      "3 lb/1.000 ft²",
      "3 lb/1 000 ft²",
      "3 lb/1,000 ft²",
      "3 lb/1.000 ft²",
    ]);
  });

  test("of a substance beside a time, of two, and of a price", () => {
    const name = { unitDisplay: "name" } as const;
    const written = (value: number, unit: string, of: string, options: object = {}): string =>
      format(quantityOf(value, unit, of, "q"), options);
    expect(written(3, "1/d", "product:x", name)).toBe("3 per day of product:x");
    expect(written(3, "1", "none")).toBe("3");
    expect(written(3, "lb", "product:a/spray")).toBe("3 lb of product:a/spray");
    expect(written(3, "lb/gal", "product:a/spray")).toBe("3 lb/gal of product:a/spray");
    expect(written(3, "lb/gal", "none/spray")).toBe("3 lb/gal of none/spray");
    expect(written(3, "money:USD/lb", "N/product")).toBe("$3.00/lb of N/product");
    expect(written(3, "money:USD/acre", "N/product")).toBe("$3.00/acre of N/product");
    expect(written(0, "money:USD/lb", "none")).toBe("$0.00/lb");
    // a unit that is its own is not reckoned
    expect(written(0.1, "°F", "none", { significantDigits: 17 })).toBe("0.1 °F");
    expect(written(999_999.9996, "lb", "none")).toBe("1,000,000 lb");
    expect(written(999_998.9996, "lb", "none")).toBe("999,999 lb");
  });

  test("an everyday number without Intl, and with it what takes more care", () => {
    for (const [value, text] of [
      [0.001, "0.001"],
      [0.012346, "0.01235"],
      [0.1, "0.1"],
      [1, "1"],
      [-1, "-1"],
      [999, "999"],
      [1000, "1,000"],
      [12_345.6789, "12,345.679"],
      [-999_998, "-999,998"],
      [100_000, "100,000"],
    ] as const)
      expect([value, everydayText(value)]).toEqual([value, text]);
    for (const value of [0, 0.00099, 999_999, 1e6, 1.0005, 0.12345, -2.0015])
      expect([value, everydayText(value)]).toEqual([value, undefined]);
  });

  test("a number format is made once for a language and digits, a hundred are kept, and everyday numbers want none", () => {
    const { NumberFormat } = Intl;
    let made = 0;
    Intl.NumberFormat = new Proxy(NumberFormat, {
      construct(target, args) {
        made += 1;
        return new target(...(args as [string]));
      },
    });
    try {
      const count = (call: () => unknown): number => {
        const before = made;
        call();
        return made - before;
      };
      const lb = quantityOf(2.5, "lb", "none", "q");
      const wishes = Array.from({ length: 105 }, (_, i) => ({
        significantDigits: 1 + (i % 21),
        locale: ["da", "nb", "fi", "it", "es"][i % 5] as string,
      }));
      const first = (): readonly string[] => wishes.slice(0, 40).map((wish) => format(lb, wish));
      expect(count(first)).toBeGreaterThan(0);
      expect(count(first)).toBe(0);
      for (const wish of wishes) format(lb, wish);
      // what was made before these hundred is forgotten
      expect(count(first)).toBeGreaterThan(0);
      expect(count(() => format(lb))).toBe(0);
    } finally {
      Intl.NumberFormat = NumberFormat;
    }
  });
});
