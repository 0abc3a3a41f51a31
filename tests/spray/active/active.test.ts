import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fertilizer, formulaWeight } from "../../../src/nutrient/index.js";
import { quantity, type RatewrightError } from "../../../src/quantity/index.js";
import {
  acidEquivalentOf,
  acidForms,
  acidShare,
  activeInProduct,
  activeOfAcid,
  asApplied,
  productForActive,
} from "../../../src/spray/index.js";
import { complaints } from "../../errors.js";
import { percent } from "../helpers.js";

const some = fc.double({ min: 0.01, max: 99, noNaN: true });
const liquid = quantity(4, "lb/gal", "ai/product:a");

describe("active ingredient", () => {
  test("turns into product and back, liquid and dry, amount and rate", () => {
    fc.assert(
      fc.property(some, some, (rate, strength) => {
        const active = quantity(rate, "lb/acre", "ai");
        const byVolume = quantity(strength, "g/L", "ai/product:a");
        const product = productForActive({ active, content: byVolume });
        expect(activeInProduct({ product, content: byVolume }).in("lb/acre") / rate).toBeCloseTo(1, 9);
        const byWeight = quantity(strength, "% w/w", "ai/product:a");
        const weight = productForActive({ active: quantity(rate, "kg", "ai"), content: byWeight });
        expect(activeInProduct({ product: weight, content: byWeight }).in("kg") / rate).toBeCloseTo(1, 9);
      }),
    );
  });

  test("keeps the printed percent exact, and tags the product", () => {
    const content = quantity(24, "% w/w", "ai/product:b");
    const product = productForActive({ active: quantity(0.9, "lb/1000 ft2", "ai"), content });
    expect(product.in("lb/1000 ft2")).toBe(3.75);
    expect(product.of).toBe("product:b");
  });

  test("never takes acid equivalent for active ingredient", () => {
    const ae = quantity(1, "lb/acre", "ae");
    expect(complaints(() => productForActive({ active: ae, content: liquid } as never))).toEqual([
      "substance/mismatch active",
    ]);
    expect(complaints(() => acidEquivalentOf(ae as never, acidShare("dicamba", "sodium")))).toEqual([
      "substance/mismatch active",
    ]);
  });

  test("refuses the wrong measure, another product and no content", () => {
    const active = quantity(1, "lb/acre", "ai");
    expect(
      complaints(() => productForActive({ active, content: quantity(0, "lb/gal", "ai/product:a") })),
    ).toEqual(["range content"]);
    expect(
      complaints(() => productForActive({ active, content: quantity(101, "% w/w", "ai/product:a") })),
    ).toEqual(["range content"]);
    expect(
      complaints(() => productForActive({ active, content: quantity(5, "% v/v", "ai/product:a") } as never)),
    ).toEqual(["unit/mismatch content"]);
    const other = { product: quantity(1, "pt/acre", "product:b"), content: liquid };
    expect(complaints(() => activeInProduct(other as never))).toEqual(["substance/mismatch product"]);
    const dry = { product: quantity(1, "lb/acre", "product:a"), content: liquid };
    expect(complaints(() => activeInProduct(dry as never))).toEqual(["unit/mismatch product"]);
    expect(complaints(() => productForActive({ content: liquid } as never))).toEqual(["missing active"]);
    expect(
      complaints(() => productForActive({ active: quantity(-1, "lb/acre", "ai"), content: liquid })),
    ).toEqual(["range active"]);
  });
});

describe("a basis that does not fit", () => {
  const suggested = (active: unknown, content: unknown): string | undefined => {
    try {
      productForActive({ active, content } as never);
    } catch (error) {
      return (error as RatewrightError).suggestion;
    }
    throw new Error("nothing was thrown");
  };

  test("names the conversion that leads to the content, in its direction", () => {
    const [ai, ae] = [quantity(1, "lb/acre", "ai"), quantity(1, "lb/acre", "ae")];
    const [ofAi, ofAe] = [quantity(4, "lb/gal", "ai/product"), quantity(4, "lb/gal", "ae/product")];
    expect(suggested(ai, ofAe)).toMatch(/^acidEquivalentOf/);
    expect(suggested(ae, ofAi)).toMatch(/^activeOfAcid/);
    expect(suggested(quantity(1, "lb/acre", "ai:a"), quantity(4, "lb/gal", "ai:b/product"))).toBeUndefined();
  });

  test("tells the problems of both arguments", () => {
    const bad = quantity(0, "lb/gal", "ai/product:a");
    expect(complaints(() => productForActive({ active: quantity(-1, "lb", "ai"), content: bad }))).toEqual([
      "range content",
      "range active",
    ]);
    expect(
      complaints(() => activeInProduct({ product: quantity(-1, "gal", "product:a"), content: bad })),
    ).toEqual(["range content", "range product"]);
    expect(complaints(() => acidEquivalentOf(quantity(-1, "lb", "ai"), undefined as never))).toEqual([
      "range active",
      "missing share",
    ]);
    expect(complaints(() => acidShare("lead" as never, "tin" as never))).toEqual([
      "type acid",
      "type partner",
    ]);
  });
});

describe("acid equivalent", () => {
  // Molar masses as the entries of a pesticide handbook print them (copies at 9ele.com/pesticides_cn: 2,4-D,
  // dicamba, MCPA), to 0.1; the share and its tolerance follow from the print.
  test.each([
    ["dicamba", 221.0, "dimethylammonium", 266.1],
    ["dicamba", 221.0, "potassium", 259.1],
    ["dicamba", 221.0, "sodium", 243.0],
    ["MCPA", 200.6, "dimethylammonium", 245.7],
    ["MCPA", 200.6, "2-ethylhexyl", 312.8],
    ["MCPA", 200.6, "butotyl", 300.8],
    ["MCPA", 200.6, "potassium", 238.7],
    ["MCPA", 200.6, "sodium", 222.6],
  ] as const)("%s of %s as its %s of %s", (acid, mass, partner, whole) => {
    const share = acidShare(acid, partner).in("% w/w");
    expect(share).toBeGreaterThan((100 * (mass - 0.05)) / (whole + 0.05));
    expect(share).toBeLessThan((100 * (mass + 0.05)) / (whole - 0.05));
  });

  // Formulas of whole salts and esters as they are printed: dicamba and MCPA in the same entries; clopyralid olamine
  // 253.08 (PubChem, in a supplier's page); fluroxypyr meptyl C15H21Cl2FN2O3 (fluoridealert.org), acid 255.03
  // and dichlorprop 235.064 (encyclopedia entries); mecoprop 214.6 (the same). Weighed here by other means.
  const weigh = (text: string): number => {
    const weights: Record<string, number> = { H: 1.008, C: 12.011, N: 14.007, O: 15.999, F: 18.998 };
    Object.assign(weights, { Na: 22.99, P: 30.974, Cl: 35.45, K: 39.098 });
    return [...text.matchAll(/([A-Z][a-z]?)(\d*)/g)].reduce(
      (sum, [, element = "", count]) => sum + (weights[element] as number) * Number(count || 1),
      0,
    );
  };
  test.each([
    ["dicamba", "C8H6Cl2O3", "dimethylammonium", "C10H13Cl2NO3"],
    ["dicamba", "C8H6Cl2O3", "potassium", "C8H5Cl2KO3"],
    ["dicamba", "C8H6Cl2O3", "sodium", "C8H5Cl2NaO3"],
    ["MCPA", "C9H9ClO3", "butotyl", "C15H21ClO4"],
    ["MCPA", "C9H9ClO3", "2-ethylhexyl", "C17H25ClO3"],
    ["clopyralid", "C6H3Cl2NO2", "olamine", "C8H10Cl2N2O3"],
    ["fluroxypyr", "C7H5Cl2FN2O3", "meptyl", "C15H21Cl2FN2O3"],
    // Written down atom by atom from the structures: acid and base together, acid and alcohol less water.
    ["2,4-D", "C8H6Cl2O3", "choline", "C13H19Cl2NO4"],
    ["2,4-D", "C8H6Cl2O3", "isopropylammonium", "C11H15Cl2NO3"],
    ["dichlorprop-P", "C9H8Cl2O3", "dimethylammonium", "C11H15Cl2NO3"],
    ["mecoprop-P", "C10H11ClO3", "potassium", "C10H10ClKO3"],
    ["mecoprop-P", "C10H11ClO3", "dimethylammonium", "C12H18ClNO3"],
    ["triclopyr", "C7H4Cl3NO3", "triethylammonium", "C13H19Cl3N2O3"],
    ["triclopyr", "C7H4Cl3NO3", "butotyl", "C13H16Cl3NO4"],
    ["dicamba", "C8H6Cl2O3", "diglycolammonium", "C12H17Cl2NO5"],
    // Printed for dicamba-diolamine in the entry of dicamba: the isomer of the one before weighs the same.
    ["dicamba", "C8H6Cl2O3", "diolamine", "C12H17Cl2NO5"],
    ["quinclorac", "C10H5Cl2NO2", "dimethylammonium", "C12H12Cl2N2O2"],
    ["2,4-DB", "C10H10Cl2O3", "dimethylammonium", "C12H17Cl2NO3"],
    ["aminopyralid", "C6H4Cl2N2O2", "potassium", "C6H3Cl2KN2O2"],
    ["glyphosate", "C3H8NO5P", "ammonium", "C3H11N2O5P"],
    ["glyphosate", "C3H8NO5P", "diammonium", "C3H14N3O5P"],
    ["glyphosate", "C3H8NO5P", "isopropylammonium", "C6H17N2O5P"],
  ] as const)("%s %s as its %s, %s", (acid, formula, partner, whole) => {
    expect(acidShare(acid, partner).in("% w/w")).toBeCloseTo((100 * weigh(formula)) / weigh(whole), 10);
  });

  test("formulas weigh what the entries print", () => {
    const printed = [
      ["C8H6Cl2O3", 221.04, 2],
      ["C9H8Cl2O3", 235.064, 1],
      ["C10H11ClO3", 214.6, 1],
      ["C8H10Cl2N2O3", 253.08, 2],
      ["C7H5Cl2FN2O3", 255.03, 2],
      ["C3H8NO5P", 169.07, 2],
      ["C12H17Cl2NO5", 326.2, 1],
      // Quinclorac, 2,4-DB and aminopyralid in encyclopedia entries.
      ["C10H5Cl2NO2", 242.06, 2],
      ["C10H10Cl2O3", 249.091, 2],
      ["C6H4Cl2N2O2", 207.01416, 2],
      // Aminopyralid-potassium in a chemical supplier's page.
      ["C6H3Cl2KN2O2", 245.1, 1],
    ] as const;
    for (const [formula, mass, places] of printed) {
      // The prints weigh chlorine at 35.453, today's table at 35.45.
      const chlorine = 0.003 * Number(/Cl(\d*)/.exec(formula)?.[1] || 1);
      expect(Math.abs(weigh(formula) + chlorine - mass), formula).toBeLessThanOrEqual(
        0.5 * 10 ** -places + 0.001,
      );
    }
    expect(formulaWeight({ C: 7, H: 5, Cl: 2, F: 1, N: 2, O: 3 })).toBeCloseTo(255.03, 1);
    expect(complaints(() => formulaWeight({ Xx: 1, H: Number.NaN } as never))).toEqual([
      "substance/unknown formula.Xx",
      "not-finite formula.H",
    ]);
  });

  test.each([
    ["2,4-D", "diammonium"],
    ["glyphosate", "butotyl"],
    ["quinclorac", "butotyl"],
    ["aminopyralid", "meptyl"],
    ["fluroxypyr", "sodium"],
  ] as const)("is not made up for %s as its %s, which no product holds", (acid, partner) => {
    expect(complaints(() => acidShare(acid, partner))).toEqual(["conflict partner"]);
  });

  test("the refusal of a form names those that are known", () => {
    expect(() => acidShare("quinclorac", "butotyl")).toThrow("a known form of quinclorac: dimethylammonium");
  });

  test("every known form has a share, and each pair stands once", () => {
    const pairs = acidForms.map(({ acid, partner }) => `${acid} ${partner}`);
    expect(new Set(pairs).size).toBe(pairs.length);
    for (const { acid, partner } of acidForms) {
      expect(acidShare(acid as never, partner as never).in("% w/w")).toBeLessThan(100);
    }
  });

  test("an acid that is not in the table is refused", () => {
    expect(complaints(() => acidShare("2,4-DP-P" as never, "dimethylammonium"))).toEqual(["type acid"]);
  });

  test("keeps the id of the active ingredient, and turns a content by multiplication", () => {
    const share = acidShare("2,4-D", "dimethylammonium");
    expect(acidEquivalentOf(quantity(1, "lb/acre", "ai:2,4-d"), share).of).toBe("ae:2,4-d");
    expect(activeOfAcid(quantity(1, "lb/acre", "ae:2,4-d"), share).of).toBe("ai:2,4-d");
    // 46.8 % of the salt is 38.9 % of acid, as labels of 3.8 lb/gal print (from memory).
    const content = quantity(46.8, "% w/w", "ai/product:a").times(share);
    expect(content.of).toBe("ae/product:a");
    expect(content.in("% w/w")).toBeCloseTo(38.9, 1);
  });

  // Shares that labels and handbooks print (from memory).
  test.each([
    ["2,4-D", "dimethylammonium", 83.06, 0.01],
    ["2,4-D", "2-ethylhexyl", 66.3, 0.1],
    ["2,4-D", "choline", 68.2, 0.1],
    ["MCPA", "dimethylammonium", 81.7, 0.1],
    ["dicamba", "dimethylammonium", 83.1, 0.1],
    ["dicamba", "diglycolammonium", 67.8, 0.1],
    ["triclopyr", "triethylammonium", 71.7, 0.1],
    ["triclopyr", "butotyl", 71.9, 0.1],
    ["clopyralid", "olamine", 75.9, 0.1],
    ["glyphosate", "isopropylammonium", 74.1, 0.1],
    ["glyphosate", "potassium", 81.6, 0.1],
    ["glyphosate", "ammonium", 90.8, 0.1],
    ["glyphosate", "dimethylammonium", 78.9, 0.1],
  ] as const)("%s %s is %s %%", (acid, partner, share, place) => {
    expect(Math.abs(acidShare(acid, partner).in("% w/w") - share)).toBeLessThanOrEqual(place / 2 + 1e-6);
  });

  test("turns round, and refuses what it does not know", () => {
    const share = acidShare("glyphosate", "potassium");
    const there = acidEquivalentOf(quantity(5, "lb/gal", "ai"), share);
    expect(there.of).toBe("ae");
    expect(activeOfAcid(there, share).in("lb/gal")).toBeCloseTo(5, 12);
    expect(complaints(() => acidShare("toString" as never, "sodium"))).toEqual(["type acid"]);
    expect(complaints(() => acidShare("dicamba", "lithium" as never))).toEqual(["type partner"]);
    const tooMuch = quantity(101, "% w/w", "ae/ai");
    expect(complaints(() => activeOfAcid(quantity(1, "lb", "ae"), tooMuch))).toEqual(["range share"]);
    expect(complaints(() => activeOfAcid(quantity(1, "lb", "ae"), undefined as never))).toEqual([
      "missing share",
    ]);
  });
});

describe("asApplied", () => {
  const used = quantity(50, "lb", "product:feed-a");
  const area = quantity(12_000, "ft2");
  const feed = fertilizer({ id: "feed-a", analysis: "24-0-11" });
  const planned = quantity(3.75, "lb/1000 ft2", "product:feed-a");

  test("gives the plan back where the plan was kept", () => {
    const done = asApplied({ used: quantity(45, "lb", "product:feed-a"), area, planned });
    expect(done.deviation?.in("%")).toBeCloseTo(0, 10);
    expect(done.beyondPlan?.in("lb")).toBeCloseTo(0, 10);
    expect(done.rate.times(area).in("lb")).toBeCloseTo(45, 12);
  });

  test("says what of the plan was missed, and only where a tolerance was given that it matters", () => {
    const off = asApplied({ used, area, planned });
    expect(off.deviation?.in("%")).toBeCloseTo(100 / 9, 9);
    expect(off.beyondPlan?.in("lb")).toBeCloseTo(5, 10);
    expect(off.findings).toEqual([]);
    expect(off.notChecked).toContain("whether the deviation matters: no tolerance was given");
    const held = asApplied({ used, area, planned, tolerance: percent(5) });
    expect(held.findings.map(({ code }) => code)).toEqual(["as-applied/off-plan"]);
    expect(held.findings[0]?.text).toContain("11.1 % above the plan");
    const short = asApplied({ used: quantity(36, "lb", used.of), area, planned, tolerance: percent(20) });
    expect(short.findings).toEqual([]);
    expect(short.deviation?.in("%")).toBeCloseTo(-20, 9);
    const less = asApplied({ used: quantity(36, "lb", used.of), area, planned, tolerance: percent(19) });
    expect(less.findings[0]?.text).toContain("20 % below the plan");
    expect(asApplied({ used, area, planned, tolerance: percent(100) }).findings).toEqual([]);
    expect(() => asApplied({ used, area, planned, tolerance: percent(101) })).toThrow(/100 % or less/);
    expect(complaints(() => asApplied({ used, area, planned, tolerance: percent(101) }))).toEqual([
      "range tolerance",
    ]);
  });

  test("says what was checked and what was not", () => {
    const bare = asApplied({ used, area });
    expect(bare.checked).toEqual(["the real rate"]);
    expect(bare.notChecked).toEqual([
      "the plan: no planned rate was given",
      "nutrients: no fertilizer record was given",
      "limits that were not given here",
    ]);
    const full = asApplied({ used, area, planned, tolerance: percent(5), fertilizer: feed });
    expect(full.checked).toEqual(["the real rate", "the rate against the plan"]);
    expect(full.notChecked).toEqual(["limits that were not given here"]);
  });

  test("leaves nothing, and not less than nothing, under a limit that is just reached", () => {
    // 15 lb of 42 % on 7000 ft2 is 6.3 / 7 = 0.9 lb N/1000 ft2; with 2.7 before it that is the 3.6 of the limit.
    const pounds = (value: number) => quantity(value, "lb/1000 ft2", "N");
    const limit = { limit: pounds(3.6), before: pounds(2.7), period: "a year", source: "a label" };
    const done = asApplied({
      used: quantity(15, "lb", "product:feed-b"),
      area: quantity(7000, "ft2"),
      fertilizer: fertilizer({ id: "feed-b", analysis: "42-0-0" }),
      limits: [limit],
    });
    const [left] = done.remainingUnderStatedLimits;
    expect(left?.exceeded).toBe(false);
    expect(left?.remaining.value).toBe(0);
  });

  test("counts nutrients, and weighs a liquid by its density", () => {
    const dry = asApplied({ used, area, fertilizer: feed });
    expect(dry.nutrients?.N?.in("lb/1000 ft2")).toBeCloseTo(1, 10);
    const wet = fertilizer({
      id: "wet",
      analysis: "28-0-0",
      form: "liquid",
      density: quantity(10.65, "lb/gal"),
    });
    const liquidUse = { used: quantity(1, "gal", "product:wet"), area: quantity(1000, "ft2") };
    const done = asApplied({ ...liquidUse, fertilizer: wet });
    expect(done.nutrients?.N?.in("lb/1000 ft2")).toBeCloseTo(2.982, 10);
    const bare = fertilizer({ id: "wet", analysis: "28-0-0", form: "liquid" });
    expect(complaints(() => asApplied({ ...liquidUse, fertilizer: bare }))).toEqual([
      "missing fertilizer.density",
    ]);
    const other = fertilizer({ id: "feed-b", analysis: "24-0-11" });
    expect(complaints(() => asApplied({ used, area, fertilizer: other }))).toEqual([
      "substance/mismatch used",
    ]);
    const strange = { used, area, fertilizer: 3, active: quantity(50, "% w/w", "ai/product:feed-b") };
    expect(complaints(() => asApplied(strange as never))).toEqual([
      "type fertilizer",
      "substance/mismatch used",
    ]);
    expect(
      complaints(() => asApplied({ used, area, active: quantity(101, "% w/w", "ai/product:feed-a") })),
    ).toEqual(["range active"]);
  });

  test("says what remains under stated limits, and what cannot be held against them", () => {
    const limit = (most: number, before: number, of: "N" | "P2O5" = "N") => ({
      limit: quantity(most, "lb/acre", of),
      before: quantity(before, "lb/1000 ft2", of),
      period: "calendar year 2026",
      source: "county ordinance",
    });
    const done = asApplied({ used, area, fertilizer: feed, limits: [limit(130.68, 1), limit(87.12, 1.5)] });
    const [first, second] = done.remainingUnderStatedLimits;
    expect(first?.remaining.value).toBeCloseTo(43.56, 8);
    expect(first?.exceeded).toBe(false);
    expect(second?.remaining.value).toBeCloseTo(-21.78, 8);
    expect(second?.exceeded).toBe(true);
    expect(done.findings.map(({ code, severity }) => `${code} ${severity}`)).toEqual([
      "as-applied/limit-exceeded warning",
    ]);
    // Exactly used up is within.
    expect(asApplied({ used, area, fertilizer: feed, limits: [limit(87.12, 1)] }).findings).toEqual([]);
    const noRecord = asApplied({ used, area, limits: [limit(130.68, 1)] });
    expect(noRecord.remainingUnderStatedLimits).toEqual([]);
    expect(noRecord.notChecked.join(" ")).toContain("how much of it this application puts down is not known");
    expect(noRecord.notChecked).toContain("limits that were not given here");
  });

  test("holds an active ingredient against its limit", () => {
    const done = asApplied({
      used: quantity(3, "pt", "product:a"),
      area: quantity(1, "acre"),
      active: liquid,
      limits: [
        {
          limit: quantity(4, "lb/acre", "ai"),
          before: quantity(1.5, "lb/acre", "ai"),
          period: "season",
          source: "label",
        },
      ],
    });
    expect(done.active?.value).toBeCloseTo(1.5, 12);
    expect(done.remainingUnderStatedLimits[0]?.remaining.value).toBeCloseTo(1, 12);
  });

  test("refuses gaps", () => {
    expect(complaints(() => asApplied({ used, area: quantity(0, "acre") }))).toEqual(["range area"]);
    expect(complaints(() => asApplied({ area } as never))).toEqual(["missing used"]);
    expect(complaints(() => asApplied({ used: quantity(-1, "lb", "product:a"), area }))).toEqual([
      "range used",
    ]);
    expect(complaints(() => asApplied({ used: quantity(1, "lb", "N") as never, area }))).toEqual([
      "substance/mismatch used",
    ]);
    expect(
      complaints(() => asApplied({ used, area, planned: quantity(1, "lb/acre", "product:b") as never })),
    ).toEqual(["substance/mismatch planned"]);
    const open = { limit: quantity(3, "lb/acre", "product:feed-a"), period: "year", source: "label" };
    expect(complaints(() => asApplied({ used, area, limits: [open as never] }))).toEqual([
      "missing limits[0].before",
    ]);
    const bad = [{ ...open, period: "", source: 3 }, undefined, { ...open, limit: quantity(1, "lb", "N") }];
    expect(
      complaints(() =>
        asApplied({ used, area, planned: quantity(0, "lb/acre", used.of), limits: bad as never }),
      ),
    ).toEqual([
      "range planned",
      "missing limits[0].period",
      "type limits[0].source",
      "missing limits[0].before",
      "missing limits[1]",
      "unit/mismatch limits[2].limit",
      "missing limits[2].before",
    ]);
    // biome-ignore lint/suspicious/noSparseArray: a list with a hole
    expect(complaints(() => asApplied({ used, area, limits: [,] as never }))).toEqual(["missing limits[0]"]);
    const wet = {
      ...open,
      limit: quantity(3, "gal/acre", "product:feed-a"),
      before: quantity(0, "gal/acre", "product:feed-a"),
    };
    expect(complaints(() => asApplied({ used, area, limits: [wet] }))).toEqual([
      "unit/mismatch limits[0].limit",
    ]);
  });
});
