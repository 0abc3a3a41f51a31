// The package says ES2020. The compiler holds the functions to it (src/tsconfig.json); of the patterns it knows nothing.
import { describe, expect, it } from "vitest";
import { checkLimits, expectQuantity, ledger, ledgerTotals, quantity, sum } from "../../src/index.js";
import { Quantity } from "../../src/quantity/index.js";
import { read, sourceFiles } from "./sources.js";

/**
 * Classes of Unicode and named groups, which the engine of older React Native apps does not read, and what looks back: a
 * phone whose browser is from before 2023 does not load a file with one.
 */
const notRead = /\\p\{|\(\?<[A-Za-z=!]/;

describe("older engines", () => {
  it("can read every pattern of the library", () => {
    const lines = sourceFiles().flatMap((file) =>
      read(file)
        .split("\n")
        .filter((line) => notRead.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );
    expect(lines).toEqual([]);
    expect(notRead.test("const a = /[\\p{Cc}]/u;") && notRead.test("/(?<year>\\d{4})/")).toBe(true);
    expect(notRead.test("/(?<=[.:]) /") && notRead.test("/(?<![\\w-])a/")).toBe(true);
    expect(notRead.test("/(?=[.:]) /") || notRead.test("/(?![\\w-])a/") || notRead.test("/(?:a)/")).toBe(
      false,
    );
  });

  it("enumerate what a quantity does beside what it has, and get the same results", () => {
    const names = Object.getOwnPropertyNames(Quantity.prototype).filter((name) => name !== "constructor");
    const before = names.map(
      (name) => [name, Object.getOwnPropertyDescriptor(Quantity.prototype, name)] as const,
    );
    const year = { from: "2026-01-01", to: "2026-12-31", part: "meadow" } as const;
    const work = (): unknown => {
      const entries = [
        {
          id: "a",
          date: "2026-05-04",
          parts: ["meadow"],
          product: "feed-a",
          analysis: "24-0-11",
          amount: quantity(10, "lb"),
          area: quantity(5000, "ft2"),
        },
        {
          id: "b",
          date: "2026-06-08",
          parts: ["meadow"],
          supplies: [quantity(0.5, "lb/1000 ft2", "N")],
        },
      ] as const;
      const limits = [
        {
          amount: quantity(0.9, "lb/1000 ft2", "N"),
          per: "calendar year",
          source: "plan of the park (invented)",
        },
      ] as const;
      const proposal = {
        date: "2026-07-06",
        parts: ["meadow"],
        supplies: [quantity(0.3, "lb/1000 ft2", "N")],
      } as const;
      const stored = { type: "ledger", version: 1, entries } as const;
      return [
        sum([quantity(1, "lb"), quantity(8, "oz")]).in("lb"),
        expectQuantity({ value: 3, unit: "lb", of: "N" }, quantity(1, "kg", "N"), "rate").in("lb"),
        checkLimits({ ledger: ledger(entries), proposal, limits }),
        checkLimits({ ledger: stored, proposal, limits }),
        ledgerTotals({ ledger: stored, ...year }),
      ];
    };
    const usual = JSON.stringify(work());
    try {
      for (const [name, descriptor] of before)
        if (descriptor?.configurable === true)
          Object.defineProperty(Quantity.prototype, name, { ...descriptor, enumerable: true });
      const seen: string[] = [];
      for (const name in quantity(1, "lb")) seen.push(name);
      expect(seen).toContain("in");
      expect(JSON.stringify(work())).toBe(usual);
    } finally {
      for (const [name, descriptor] of before)
        if (descriptor !== undefined) Object.defineProperty(Quantity.prototype, name, descriptor);
    }
    expect(usual).toContain('"of":"N"');
  });
});
