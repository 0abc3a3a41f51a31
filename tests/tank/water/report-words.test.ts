import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { ammoniumSulfateMinimum, type WaterReportInput, waterReport } from "../../../src/tank/index.js";

// What a person reads of the water that goes into the tank, word for word, and what is said to be left open.

const hard = (value: number) => quantity(value, "mg/L", "hardness as CaCO3");
const of = (input: WaterReportInput, code: string) =>
  waterReport(input).findings.filter((one) => one.code === code);
const only = (input: WaterReportInput, code: string) => {
  const [found, ...more] = of(input, code);
  expect(more).toEqual([]);
  expect(found).toBeDefined();
  return found as NonNullable<typeof found>;
};
const open = (input: WaterReportInput) => waterReport(input).notChecked;
const always =
  "what the labels say about water, temperature, alkalinity, and how the mix changes pH and hardness";

describe("hardness", () => {
  test("is told with every published threshold below it", () => {
    const found = only({ test: { hardness: hard(320) } }, "water/hardness");
    expect(found.severity).toBe("caution");
    // 320 / 17.118 grains in a gallon.
    expect(found.text).toBe(
      "Hardness is 320 mg/L as CaCO3 (18.7 grains per US gallon). Published thresholds below it: 200 mg/L, condition with ammonium sulfate (USGA Central Region); 300 mg/L, general threshold to act (Canola Council of Canada); 300 mg/L, considered hard (300 to 400) (WeedSmart, Australia). Salts of weak acids lose the most: see the label.",
    );
    expect(found.params).toEqual({
      hardness: 320,
      unit: "mg/L",
      passed: [
        "200 mg/L: condition with ammonium sulfate",
        "300 mg/L: general threshold to act",
        "300 mg/L: considered hard (300 to 400)",
      ],
    });
  });

  test("at a threshold passes none", () => {
    expect(of({ test: { hardness: hard(200) } }, "water/hardness")).toEqual([]);
    expect(only({ test: { hardness: hard(200.1) } }, "water/hardness").params.passed).toHaveLength(1);
    expect(only({ test: { hardness: hard(300) } }, "water/hardness").params.passed).toHaveLength(1);
    expect(waterReport({ test: { hardness: hard(100) } }).findings.map(({ code }) => code)).toEqual([
      "water/sulfate-range",
    ]);
  });

  test("that ruins an amine names the amine, and those of which nobody says what they hold", () => {
    // 35 grains per gallon are 599 mg/L.
    const products = [
      { id: "amine", name: "Amine A", contains: ["amine phenoxy"] as const },
      { id: "salt", contains: ["iron sulfate"] as const },
      { id: "silent", name: "Silent S" },
      { id: "mute" },
    ];
    const found = only({ test: { hardness: hard(600) }, products }, "water/hardness-amine");
    expect(found).toMatchObject({
      severity: "warning",
      params: { product: "amine", hardness: 600, unit: "mg/L" },
      text: "Amine A is an amine phenoxy: in water this hard 2,4-D amine can lose most of its activity.",
      source: { publisher: "Grainews" },
    });
    const silence = 'amine phenoxies in water this hard, for Silent S, mute: "contains" is not stated';
    expect(open({ test: { hardness: hard(600) }, products })).toContain(silence);
    expect(open({ test: { hardness: hard(590) }, products })).not.toContain(silence);
    expect(of({ test: { hardness: hard(590) }, products }, "water/hardness-amine")).toEqual([]);
    expect(open({ test: { hardness: hard(600) }, products: products.slice(0, 2) }).join("; ")).not.toContain(
      "amine phenoxies",
    );
  });

  test("that calcium and magnesium contradict is told", () => {
    // 80 mg/L of calcium are 199.8 mg/L as CaCO3, 20 of magnesium 82.4.
    const ions = { Ca: quantity(80, "mg/L", "Ca"), Mg: quantity(20, "mg/L", "Mg") };
    const found = only({ test: { hardness: hard(100), ...ions } }, "water/hardness-disagrees");
    expect(found).toMatchObject({
      severity: "warning",
      params: { hardness: 100, unit: "mg/L" },
      source: "derived from molar masses",
    });
    expect(found.params.fromIons).toBeCloseTo(282.1, 1);
    expect(found.text).toBe(
      "The test gives a hardness of 100 mg/L as CaCO3, and calcium and magnesium for 282: one of the figures was misread, or has the wrong unit.",
    );
    const half = only({ test: { hardness: hard(100), Ca: ions.Ca } }, "water/hardness-disagrees");
    expect(half.text).toContain("and calcium for at least 200: one of the figures");
    const grains = only({ test: { hardness: hard(16.48), ...ions } }, "water/hardness-disagrees");
    expect(grains.text).toMatch(/ They are about 17 times apart: is the hardness in grains per gallon\?$/);
    expect(only({ test: { hardness: hard(0), ...ions } }, "water/hardness-disagrees").text).not.toContain(
      "grains",
    );
  });

  test("that is a tenth off is not told, and one ion alone says only that there is as much", () => {
    const ions = { Ca: quantity(80, "mg/L", "Ca"), Mg: quantity(20, "mg/L", "Mg") };
    for (const value of [282, 260, 308])
      expect(of({ test: { hardness: hard(value), ...ions } }, "water/hardness-disagrees")).toEqual([]);
    expect(of({ test: { hardness: hard(312), ...ions } }, "water/hardness-disagrees")).toHaveLength(1);
    expect(of({ test: { hardness: hard(250), ...ions } }, "water/hardness-disagrees")).toHaveLength(1);
    expect(of({ test: { hardness: hard(900), Ca: ions.Ca } }, "water/hardness-disagrees")).toEqual([]);
    expect(of({ test: { hardness: hard(900) } }, "water/hardness-disagrees")).toEqual([]);
    expect(of({ test: ions }, "water/hardness-disagrees")).toEqual([]);
  });
});

describe("pH against labels", () => {
  const told = (pH: number, labelPH: { readonly min?: number; readonly max?: number }) =>
    of({ test: { pH }, products: [{ id: "a", name: "Alpha", labelPH }] }, "water/pH-label")[0];

  test("names what the label asks for, by the ends that it states", () => {
    expect(told(8, { max: 7 })).toMatchObject({
      severity: "warning",
      params: { product: "a", pH: 8, max: 7 },
      text: "The water has pH 8; the label of Alpha asks for 7 or less.",
      source: "the label of Alpha",
    });
    expect(told(8, { max: 7 })?.params).not.toHaveProperty("min");
    expect(told(5, { min: 6 })?.text).toBe("The water has pH 5; the label of Alpha asks for 6 or more.");
    expect(told(5, { min: 6 })?.params).toEqual({ product: "a", pH: 5, min: 6 });
    expect(told(5, { min: 6, max: 7 })?.text).toBe("The water has pH 5; the label of Alpha asks for 6 to 7.");
    expect(told(8, { min: 6, max: 7 })?.params).toEqual({ product: "a", pH: 8, min: 6, max: 7 });
  });

  test("at either end of what the label asks for is within it", () => {
    for (const pH of [6, 6.5, 7]) expect(told(pH, { min: 6, max: 7 })).toBeUndefined();
    expect(told(8, {})).toBeUndefined();
    expect(told(7.1, { min: 6, max: 7 })).toBeDefined();
    expect(told(5.9, { min: 6, max: 7 })).toBeDefined();
  });
});

describe("pH against what is published", () => {
  const codes = (pH: number) => waterReport({ test: { pH } }).findings.map(({ code }) => code);
  const ranges = "below 6 (Grounds Maintenance), 5 to 6 (GrowerTalks), 4 to 6 (Cropworx, Colorado)";

  test("above 7 is alkaline, above 6 is sprayed soon, below 4 is below every range", () => {
    expect(codes(7.1)).toEqual(["water/pH-alkaline"]);
    expect(codes(7)).toEqual(["water/pH-spray-soon"]);
    expect(codes(6.1)).toEqual(["water/pH-spray-soon"]);
    for (const pH of [6, 5, 4]) expect(codes(pH)).toEqual([]);
    expect(codes(3.9)).toHaveLength(1);
  });

  test("in words, with the ranges and who prints them", () => {
    expect(only({ test: { pH: 8 } }, "water/pH-alkaline")).toMatchObject({
      severity: "caution",
      params: { pH: 8 },
      text: `The water has pH 8, on the alkaline side. Published ranges for spray water: ${ranges}. Organophosphates and carbamates are most at risk, sulfonylureas prefer a high pH: the label decides. How much acid it takes depends on the alkalinity, so measure after each addition.`,
      source: { publisher: "Grounds Maintenance" },
    });
    expect(only({ test: { pH: 6.5 } }, "water/pH-spray-soon")).toMatchObject({
      severity: "note",
      params: { pH: 6.5 },
      text: `pH 6.5: do not let the mix stand; spray it out promptly. Published ranges: ${ranges}.`,
      source: { publisher: "Grounds Maintenance" },
    });
    expect(waterReport({ test: { pH: 3 } }).findings[0]).toMatchObject({
      severity: "caution",
      params: { pH: 3 },
      text: `The water has pH 3, below every published range for spray water: ${ranges}.`,
    });
  });
});

describe("bicarbonate", () => {
  const test0 = (value: number) => ({ test: { HCO3: quantity(value, "mg/L", "HCO3") } });
  test("from 500 on is told, below it is not", () => {
    expect(of(test0(499.9), "water/bicarbonate")).toEqual([]);
    expect(only(test0(500), "water/bicarbonate")).toMatchObject({
      severity: "caution",
      params: { bicarbonate: 500, limit: 500, unit: "mg/L" },
      text: "Bicarbonate is 500 mg/L: from 500 it can weaken group 1 (dim) herbicides and 2,4-D amine, by this source.",
      source: { title: "Spray water quality", publisher: "Saskatchewan Agriculture", year: 2021 },
    });
    expect(waterReport(test0(10)).checked).toContain("bicarbonate against 500 ppm");
  });
});

describe("ammonium sulfate", () => {
  const all = {
    K: quantity(10, "mg/L", "K"),
    Na: quantity(40, "mg/L", "Na"),
    Ca: quantity(50, "mg/L", "Ca"),
    Mg: quantity(20, "mg/L", "Mg"),
    Fe: quantity(1, "mg/L", "Fe"),
  };
  // 0.002 x 10 + 0.005 x 40 + 0.009 x 50 + 0.014 x 20 + 0.042 x 1 = 0.992 lb per 100 gal.
  const pounds = (value: number) => quantity(value / 100, "lb/gal", "product:ammonium-sulfate/spray");

  test("of all cations is each of them times its coefficient", () => {
    const found = ammoniumSulfateMinimum(all);
    expect(found.notCounted).toEqual([]);
    expect(found.poundsPer100Gallons.K).toBeCloseTo(0.02, 12);
    expect(found.poundsPer100Gallons.Na).toBeCloseTo(0.2, 12);
    expect(found.poundsPer100Gallons.Ca).toBeCloseTo(0.45, 12);
    expect(found.poundsPer100Gallons.Mg).toBeCloseTo(0.28, 12);
    expect(found.poundsPer100Gallons.Fe).toBeCloseTo(0.042, 12);
    // A pound per 100 gal is 119.8 g per 100 L.
    expect(found.text).toBe(
      "By the published equation at least 0.992 lb of ammonium sulfate per 100 gal (119 g per 100 L) for the cations tested. That is a minimum by the equation, not the need: its authors advise 4 to 6 lb, labels ask for more.",
    );
    expect(found.product).toMatchObject({ id: "ammonium-sulfate", form: "dry" });
  });

  test("of some names those that were not tested, and has no line for them", () => {
    const found = ammoniumSulfateMinimum({ Ca: all.Ca, Fe: all.Fe }, { product: "sulfate" });
    expect(found.notCounted).toEqual(["K", "Na", "Mg"]);
    expect(Object.keys(found.poundsPer100Gallons)).toEqual(["Ca", "Fe"]);
    expect(found.text).toContain("for the cations tested; K, Na, Mg not tested. That is a minimum");
    expect(found.minimum.of).toBe("product:sulfate/spray");
  });

  test("in a report is told by the cations, and against what the mix has", () => {
    const input = { test: all };
    expect(only(input, "water/sulfate-minimum")).toMatchObject({
      severity: "note",
      params: { notCounted: [] },
      source: { publisher: "North Dakota State University Extension" },
    });
    expect(of({ ...input, ammoniumSulfate: pounds(0.992) }, "water/sulfate-below-minimum")).toEqual([]);
    const below = only({ ...input, ammoniumSulfate: pounds(0.5) }, "water/sulfate-below-minimum");
    // 1 lb per 100 gal is 453.59237 g in 378.5411784 L, 119.826 g per 100 L
    expect(`${below.severity}: ${below.text}`).toBe(
      "warning: The mix has 0.5 lb of ammonium sulfate per 100 gal (59.9 g per 100 L), less than the 0.992 lb (119 g) that the published equation gives as the minimum for this water.",
    );
    // Who weighs in grams reads grams first: 0.5 g/L are 50 g in 100 L, 50 / 119.826 = 0.417 lb in 100 gal
    const inGrams = {
      ...input,
      ammoniumSulfate: { ...pounds(0.5).toJSON(), value: 0.5, unit: "g/L" } as never,
    };
    expect(only(inGrams, "water/sulfate-below-minimum").text).toBe(
      "The mix has 50 g of ammonium sulfate per 100 L (0.417 lb per 100 gal), less than the 119 g (0.992 lb) that the published equation gives as the minimum for this water.",
    );
    expect(below.params.poundsPer100Gallons).toBeCloseTo(0.5, 12);
    expect(below.params.minimum).toBeCloseTo(0.992, 12);
  });

  test("by the hardness alone lies between all magnesium and all calcium", () => {
    // 100 mg/L as CaCO3 are 24.28 mg/L of magnesium, 0.34 lb, or 40.04 of calcium, 0.36 lb.
    const found = only({ test: { hardness: hard(100) } }, "water/sulfate-range");
    expect(found.severity).toBe("note");
    expect(found.text).toBe(
      "By the published equation at least 0.34 to 0.36 lb of ammonium sulfate per 100 gal (40.7 to 43.2 g per 100 L), depending on how much of the hardness is magnesium; K, Na, Fe, not tested, would add to it. That is a minimum by the equation, not the need.",
    );
    // A pound in 100 US gallons is 453.59237 g in 378.5412 L, 119.826 g in 100 L.
    expect(found.params.notCounted).toEqual(["K", "Na", "Fe"]);
    expect(found.source).toBe("derived from the cation equation and molar masses");
    const more = waterReport({ test: { hardness: hard(100), Na: all.Na, K: all.K, Fe: all.Fe } });
    const told = more.findings.find(({ code }) => code === "water/sulfate-range");
    // 0.02 + 0.2 + 0.042 on top of both.
    expect(told?.text).toBe(
      "By the published equation at least 0.602 to 0.622 lb of ammonium sulfate per 100 gal (72.1 to 74.6 g per 100 L), depending on how much of the hardness is magnesium, with K, Na, Fe. That is a minimum by the equation, not the need.",
    );
    expect(told?.params.notCounted).toEqual([]);
    const sodium = waterReport({ test: { hardness: hard(100), Na: all.Na } }).findings;
    expect(sodium.find(({ code }) => code === "water/sulfate-range")?.text).toContain(
      "depending on how much of the hardness is magnesium, with Na; K, Fe, not tested, would add to it.",
    );
  });

  test("is by the cations where both calcium and magnesium are tested, by the hardness where one is", () => {
    const both = waterReport({ test: { hardness: hard(207), Ca: all.Ca, Mg: all.Mg } });
    expect(both.ammoniumSulfate).toBeDefined();
    expect(both.ammoniumSulfateFromHardness).toBeUndefined();
    const one = waterReport({ test: { hardness: hard(207), Ca: all.Ca } });
    expect(one.ammoniumSulfate).toBeUndefined();
    expect(one.ammoniumSulfateFromHardness?.max.in("lb/gal")).toBeGreaterThan(0);
  });
});

describe("what a report leaves open", () => {
  test("a test of nothing is told so, part by part", () => {
    const found = waterReport({ test: {} });
    expect(found.findings).toEqual([]);
    expect(found.checked).toEqual([]);
    expect(found.notChecked).toEqual([
      "hardness: not tested, nor both calcium and magnesium",
      "bicarbonate: not tested",
      "ammonium sulfate: neither cations nor hardness are tested",
      "pH: not tested",
      always,
    ]);
    expect(found).not.toHaveProperty("hardness");
    expect(found.hydrolysis).toEqual([]);
  });

  test("a full test leaves nothing of it open", () => {
    const found = waterReport({
      test: { pH: 5, hardness: hard(100), HCO3: quantity(10, "mg/L", "HCO3") },
    });
    expect(found.notChecked).toEqual([always]);
    expect(found.checked).toEqual([
      "hardness against published thresholds",
      "bicarbonate against 500 ppm",
      "ammonium sulfate against the minimum by the cation equation",
      "pH against the labels, as far as stated, and published ranges",
    ]);
    expect(found.classes).toEqual({ USGS: "moderately hard", Vermont: "moderately hard" });
  });
});
