import { describe, expect, test } from "vitest";
import { type LedgerEntry, ledger } from "../../../src/ledger/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const put = (change: object) => () =>
  ledger([{ id: "a", date: "2026-04-20" }, { id: "b", date: "2026-05-01", ...change } as LedgerEntry]);
const at = (place: string): string => `entries[1].${place}`;

describe("what an application supplies", () => {
  const supply = (value: number, of: unknown, unit: unknown = "lb/acre") => ({ value, unit, of });
  const supplies = (...list: readonly unknown[]) => put({ supplies: list });
  const wanted = /^a nutrient such as N or P2O5, or ai:, ae: or product: with a name/;

  test("names each substance once", () => {
    expectRefusals([
      [supplies(), "missing", at("supplies"), /nutrient or active ingredient/],
      [put({ supplies: "N" }), "type", at("supplies"), /nutrient or active ingredient/],
      [supplies(3), "type", at("supplies[0]"), /^an amount per area/],
      [supplies(supply(1, 3)), "type", at("supplies[0].of"), /^a substance, such as N/],
      [supplies(supply(1, undefined)), "missing", at("supplies[0].of"), wanted],
      [supplies(supply(1, "soil")), "substance/mismatch", at("supplies[0].of"), wanted],
      [supplies(supply(1, "water")), "substance/mismatch", at("supplies[0].of"), wanted],
      [supplies(supply(1, "ai")), "substance/mismatch", at("supplies[0].of"), wanted],
      [supplies(supply(1, "N/product")), "substance/mismatch", at("supplies[0].of"), wanted],
      [supplies(supply(-1, "N")), "range", at("supplies[0].value"), /0/],
      [supplies(supply(1, "N", 3)), "type", at("supplies[0].unit"), /^a unit/],
      [supplies({ value: 1, of: "N" }), "missing", at("supplies[0].unit"), /./],
      [
        supplies(supply(1, "N", "lb")),
        "unit/mismatch",
        at("supplies[0]"),
        /^a weight over an area, such as 1 lb\/1000 ft2 or 50 kg\/ha/,
      ],
      [
        supplies(supply(1, "ai:prodiamine", "lb")),
        "unit/mismatch",
        at("supplies[0]"),
        /^a weight over an area/,
      ],
      [supplies(supply(1, "product:a", "gal")), "unit/mismatch", at("supplies[0]"), /^a weight over an area/],
      [supplies(supply(1, "N", "gal/acre")), "unit/mismatch", at("supplies[0]"), /mass\/area/],
      [supplies(supply(1, "N"), supply(2, "N")), "duplicate", at("supplies[1].of"), /^each substance once/],
      [
        put({ supplies: [supply(1, "N")], analysis: "24-0-11" }),
        "conflict",
        at("supplies"),
        /^only one of them: both would count twice/,
      ],
      [
        put({ supplies: [supply(1, "N")], contents: [supply(4, "ai:prodiamine/product", "lb/gal")] }),
        "conflict",
        at("supplies"),
        /^only one of them: both would count twice/,
      ],
    ]);
    supplies(
      supply(1, "product:a", "gal/acre"),
      supply(1, "ai:prodiamine", "fl oz/acre"),
      supply(1, "N:slow"),
    )();
  });

  test.each([
    // Molar masses, IUPAC 2021: P 30.974, K 39.098, Ca 40.078, Mg 24.305, S 32.06, Si 28.085, N 14.007, O 15.999
    ["P", "P2O5", 2.291],
    ["K", "K2O", 1.205],
    ["Ca", "CaO", 1.399],
    ["Mg", "MgO", 1.658],
    ["S", "SO4", 2.996],
    ["S", "SO3", 2.497],
    ["SO3", "SO4", 1.2],
    ["Si", "SiO2", 2.139],
    ["NO3-N", "NO3", 4.427],
  ])("%s beside %s says the same, or is told by how much it should: %d times", (element, oxide, factor) => {
    supplies(supply(10, element), supply(10 * factor, oxide))();
    supplies(supply(10, element), supply(10 * factor * 1.025, oxide))();
    const twice = problemsOf(supplies(supply(10, element), supply(20 * factor, oxide)));
    expect(twice[0]).toMatchObject({
      code: "conflict",
      path: at("supplies"),
      expected: `one of them, or ${factor.toFixed(3)} times as much ${oxide} as ${element}`,
    });
    expect(twice[0]?.got).toMatch(/10 lb\/acre.* and /);
  });

  test("slow and quick are within the total: to 3 % where both are rounded, else to the last digit", () => {
    const n = (total: number, quick?: number, slow?: number) =>
      complaints(
        supplies(
          supply(total, "N"),
          ...(quick === undefined ? [] : [supply(quick, "N:quick")]),
          ...(slow === undefined ? [] : [supply(slow, "N:slow")]),
        ),
      );
    expect([n(10, 5, 5), n(10, 5.1, 5.1), n(10, 10), n(10, undefined, 10)]).toEqual([[], [], [], []]);
    for (const wrong of [n(10, 5.2, 5.2), n(10, 10.1), n(10, undefined, 10.1), n(10, 10.1, 0)])
      expect(wrong).toEqual([`conflict ${at("supplies")}`]);
    expect(problemsOf(supplies(supply(10, "N"), supply(11, "N:slow")))[0]).toMatchObject({
      expected: "quick- and slow-release nitrogen within the total",
      got: expect.stringMatching(/10 lb\/acre.* with more quick- and slow-release N/),
    });
    // Nitrate and ammonium are a part of the quick-release nitrogen
    expect(complaints(supplies(supply(10, "N"), supply(6, "NO3-N"), supply(5, "NH4-N")))).toHaveLength(1);
    expect(complaints(supplies(supply(10, "N"), supply(5, "NO3-N"), supply(5, "NH4-N")))).toEqual([]);
  });
});

test("what a product holds", () => {
  const content = (value: unknown, of: unknown = "ai:prodiamine/product", unit: unknown = "lb/gal") => ({
    value,
    unit,
    of,
  });
  const contents = (...list: readonly unknown[]) => put({ contents: list });
  const held = /^what a product holds, such as ai:prodiamine\/product/;
  expectRefusals([
    [contents(), "missing", at("contents"), /content/],
    [contents(3), "type", at("contents[0]"), /^a content/],
    [contents(content(4, "N")), "substance/mismatch", at("contents[0].of"), held],
    [contents(content(4, 3)), "substance/mismatch", at("contents[0].of"), held],
    [contents(content(4, "ai:prodiamine")), "substance/mismatch", at("contents[0].of"), held],
    [contents(content(4, "x ai:prodiamine/product")), "substance/mismatch", at("contents[0].of"), held],
    [contents(content(4, "product:ai/product")), "substance/mismatch", at("contents[0].of"), held],
    [contents(content(-1)), "range", at("contents[0].value"), /0/],
    [contents(content(4, undefined, 3)), "type", at("contents[0].unit"), /^a unit/],
    [
      contents(content(4, undefined, "lb/acre")),
      "unit/mismatch",
      at("contents[0]"),
      /^a share by weight or a weight per volume, such as 24 % w\/w or 10 lb\/gal/,
    ],
    [
      contents(content(4), content(40, undefined, "% w/w")),
      "duplicate",
      at("contents[1].of"),
      /^each substance once, by weight or per volume/,
    ],
  ]);
  expect(problemsOf(contents(content(4, "ai:prodiamine")))[0]?.suggestion).toBe("ai:prodiamine/product");
  expect(problemsOf(contents(content(4, "N")))[0]).not.toHaveProperty("suggestion");
  contents(content(4), content(3, "ae:2,4-D/product"), content(1, "other:dye/product", "% w/w"))();
});
