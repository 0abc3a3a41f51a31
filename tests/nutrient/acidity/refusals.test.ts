import { describe, expect, test } from "vitest";
import {
  acidityPerNitrogen,
  limeForNitrogen,
  potentialAcidity,
  potentialAcidityOfSource,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of the acidity that a nitrogen source makes, and the acidities by hand.

const source = (change: object) => () =>
  potentialAcidityOfSource({ source: "urea", convention: "full nitrification", ...change } as never);
const composed =
  (percent: unknown, convention = "full nitrification") =>
  () =>
    potentialAcidity({ percent, convention } as never);
const perProduct = (value: number) => quantity(value, "% w/w", "CaCO3 equivalent/product");
const perN = (value: number) => quantity(value, "kg/kg", "CaCO3 equivalent/N");
const n = quantity(50, "kg/ha", "N");
const lime = (season: unknown) => () => limeForNitrogen(season as never);

const rows: readonly Refused[] = [
  [source({ source: "sulfur" }), "type", "source", '"urea"'],
  [source({ convention: "half" }), "type", "convention", '"half nitrogen credit"'],
  [source({ percent: 1 }), "type", "input.percent", "convention"],
  [composed(7), "type", "percent", "percentages, as elements"],
  [composed({}), "missing", "percent", "at least one element"],
  [composed({ P2O5: 1 }), "substance/unknown", "percent.P2O5", "N, P, S, Cl, K, Na, Ca or Mg, as elements"],
  [composed({ N: -1 }), "range", "percent.N", "0 or more"],
  [composed({ N: 101 }), "range", "percent.N", "100 or less"],
  [composed({ N: 60, K: 50 }), "range", "percent", "100 % or less in all"],
  [composed({ N: 1 }, "half"), "type", "convention", '"full nitrification"'],
  [
    () => acidityPerNitrogen(perN(1) as never, { nitrogenPercent: 46 }),
    "substance/mismatch",
    "acidity",
    "CaCO3 equivalent/product",
  ],
  [
    () => acidityPerNitrogen(perProduct(1), { nitrogenPercent: 0 }),
    "range",
    "nitrogenPercent",
    "more than 0",
  ],
  [
    () => acidityPerNitrogen(perProduct(1), { nitrogenPercent: 101 }),
    "range",
    "nitrogenPercent",
    "100 or less",
  ],
  [
    () => acidityPerNitrogen(perProduct(1), { nitrogenPercent: 46, of: 1 } as never),
    "type",
    "options.of",
    "nitrogenPercent",
  ],
  [lime([]), "missing", "season", "source"],
  [lime([7]), "type", "season[0]", "{ nitrogen, acidity }"],
  [
    lime([{ nitrogen: quantity(-1, "kg/ha", "N"), acidity: perN(1) }]),
    "range",
    "season[0].nitrogen",
    "zero or more",
  ],
  [
    lime([{ nitrogen: quantity(1, "kg/ha", "P2O5"), acidity: perN(1) }]),
    "substance/mismatch",
    "season[0].nitrogen",
    "N",
  ],
  [
    lime([{ nitrogen: n, acidity: perProduct(1) }]),
    "substance/mismatch",
    "season[0].acidity",
    "CaCO3 equivalent/N",
  ],
  [lime([{ nitrogen: n, acidity: perN(1), lime: 1 }]), "type", "season[0].lime", "acidity"],
];

describeRefused("what is refused of acidity", rows);

describe("acidities by hand", () => {
  // A mole of nitrogen, 14.007 g, makes one equivalent, which half a mole of CaCO3, 50.04 g, neutralizes: 3.57 for 1.
  const one = 100.086 / 2 / 14.007;

  test.each([
    ["urea", 1],
    ["ammonia", 1],
    ["ammonium nitrate", 1],
    ["urea ammonium nitrate", 1],
    ["ammonium sulfate", 2],
    ["monoammonium phosphate", 2],
    ["diammonium phosphate", 1.5],
    ["nitrate", 0],
  ] as const)("%s makes %s equivalents, or half a one less by the older convention", (name, equivalents) => {
    expect(source({ source: name })().in("kg/kg")).toBeCloseTo(equivalents * one, 3);
    expect(source({ source: name, convention: "half nitrogen credit" })().in("kg/kg")).toBeCloseTo(
      (equivalents - 0.5) * one,
      3,
    );
  });

  test("of a composition: each element by its charge and its weight", () => {
    const of = (percent: object, convention?: string) => composed(percent, convention)().in("% w/w");
    expect(of({ N: 46 })).toBeCloseTo(46 * one, 2);
    expect(of({ N: 46 }, "half nitrogen credit")).toBeCloseTo(23 * one, 2);
    for (const [element, charge, weight] of [
      ["P", 1, 30.974],
      ["S", 2, 32.06],
      ["Cl", 1, 35.45],
      ["K", -1, 39.098],
      ["Na", -1, 22.99],
      ["Ca", -2, 40.078],
      ["Mg", -2, 24.305],
    ] as const)
      expect(of({ [element]: 10 })).toBeCloseTo((10 * charge * 50.043) / weight, 2);
    // Ammonium sulfate, 21.2 % N and 24.3 % S: two equivalents of nitrogen and of sulfur, less none.
    expect(of({ N: 21.2, S: 24.26 })).toBeCloseTo((21.2 / 14.007 + (2 * 24.26) / 32.06) * 50.043, 1);
  });

  test("a season's lime is the sum over its sources, and a base takes off from it", () => {
    expect(
      lime([
        { nitrogen: n, acidity: perN(3.57) },
        { nitrogen: n, acidity: perN(-1) },
      ])().in("kg/ha"),
    ).toBeCloseTo(128.5, 9);
    expect(acidityPerNitrogen(perProduct(92), { nitrogenPercent: 46 }).in("kg/kg")).toBeCloseTo(2, 12);
    for (const call of [
      composed({ N: 100 }),
      composed({ N: 50, K: 50 }),
      lime([{ nitrogen: quantity(0, "kg/ha", "N"), acidity: perN(1) }]),
    ])
      expect(problemsOf(call)).toEqual([]);
  });
});
