import { describe, expect, test } from "vitest";
import { nearName } from "../../../src/quantity/index.js";

describe("names that are near", () => {
  const known = [
    "rate",
    "area",
    "width",
    "course",
    "applicationVolume",
    "amount",
    "max",
    "min",
    "package",
    "capacity",
    "Ca",
    "Mg",

    "product",
    "products",
    "formulation",
    "mean",
    "season",
    "multiplier",
    "rule",
    "widths",
    "analysis",
    "aim",
    "perVolume",
    "acidity",
  ];
  test.each([
    ["rtae", "rate"],
    ["Rate", "rate"],
    ["rat", "rate"],
    ["raate", "rate"],
    ["rates", "rate"],
    ["ratess", "rate"],
    ["rateeee", undefined],
    ["date", undefined],
    ["bag", "package"],
    ["Sack", "package"],
    ["jug", "package"],
    ["spacing", "width"],
    ["swath", "width"],
    ["distance", "course"],
    ["tank", "capacity"],
    ["volume", "applicationVolume"],
    ["carrierVolume", "applicationVolume"],
    ["fertilizer", "product"],
    ["kind", "formulation"],
    ["partners", "products"],
    ["least", "min"],
    ["most", "max"],
    ["temperature", "mean"],
    ["grass", "season"],
    ["efficiency", "multiplier"],
    ["method", "rule"],
    ["offsets", "widths"],
    ["calcium", "Ca"],
    ["magnesium", "Mg"],
    ["margin", "aim"],
    ["markup", "aim"],
    ["nutrients", "perVolume"],
    ["bufferPH", "acidity"],
    ["length", "course"],
    ["price", undefined],
    ["toString", undefined],
    ["x".repeat(65), undefined],
  ] as const)("%s", (name, near) => {
    expect(nearName(name, known)).toBe(near);
  });

  test("of two other names the one that is known", () => {
    expect(nearName("volume", ["amount"])).toBe("amount");
    expect(nearName("most", ["amount"])).toBe("amount");
    expect(nearName("length", ["distance"])).toBe("distance");
    expect(nearName("distance", ["length"])).toBe("length");
    expect(nearName("bag", ["rate"])).toBeUndefined();
  });
});
