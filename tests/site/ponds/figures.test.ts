import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { contourVolume, copperSulfateConcentration, meanDepth, waterDose } from "../../../src/site/index.js";

// Whole records, as they go on paper: what is told, by whose word, and the figures by hand.

const ft = (value: number) => quantity(value, "ft");

describe("ponds", () => {
  test("soundings without a bank are told by their row", () => {
    const found = meanDepth({ rows: [[0, 3, 0].map(ft), [1, 3, 0].map(ft), [2, 3, 4].map(ft)] });
    expect([found.type, found.version, found.depth.in("ft"), found.soundings]).toEqual([
      "mean-depth",
      1,
      16 / 9,
      9,
    ]);
    expect(found.findings.map(({ path, params }) => [path, params])).toEqual([
      ["rows[1]", { row: 1, banks: 1 }],
      ["rows[2]", { row: 2, banks: 2 }],
    ]);
    expect(found.findings[0]).toMatchObject({
      code: "bank-zero-missing",
      severity: "caution",
      text: "Row 2 does not start and end with 0 at the bank. Without the zeros the mean depth, and every dose, is too high.",
      source: { title: "The Tale of the Tape", publisher: "Texas Cooperative Extension" },
    });
    // in the unit of the first sounding
    expect(meanDepth({ rows: [[ft(0), quantity(48, "in"), ft(0), ft(0)]] }).depth.toString()).toBe("1 ft");
  });
  test("a bottom that is a point", () => {
    const m2 = (value: number) => quantity(value, "m2");
    const of2 = (rule: "average end area" | "cone frustum") =>
      contourVolume({ areas: [m2(30), m2(0)], interval: quantity(3, "m"), rule }).in("m3");
    expect([of2("average end area"), of2("cone frustum")]).toEqual([45, 30]);
    const unequal = contourVolume({
      areas: [m2(30), m2(20), m2(10)],
      interval: [1, 2].map((value) => quantity(value, "m")),
      rule: "average end area",
    });
    expect(unequal.in("m3")).toBe(55);
    const us = contourVolume({
      areas: [4, 2].map((value) => quantity(value, "acre")),
      interval: ft(2),
      rule: "average end area",
    });
    expect(us.toString()).toBe("6 acre-ft");
  });
  test("a dose, with all that has to be said", () => {
    const found = waterDose({
      volume: quantity(1000, "m3"),
      concentration: quantity(2, "mg/L", "ai"),
      strength: quantity(500, "g/L", "ai/product"),
    });
    expect(found).toMatchObject({ type: "water-dose", version: 1, findings: [] });
    expect([found.volume, found.active, found.product].map(String)).toEqual([
      "1000 m3",
      "2 kg of ai",
      "4 L of product",
    ]);
    expect(
      found.cautions.map(({ code, source }) => [
        code,
        typeof source === "string" ? source : source?.publisher,
      ]),
    ).toEqual([
      ["label-first", "common practice, no source"],
      ["oxygen", "Virginia Cooperative Extension"],
      ["permit", "common practice, no source"],
    ]);
    for (const { text } of found.cautions) expect(text.length).toBeGreaterThan(40);
    const byWeight = waterDose({
      volume: quantity(1000, "m3"),
      concentration: quantity(2, "ppm w/w", "ai/water"),
      strength: quantity(50, "% w/w", "ai/product"),
    });
    expect([byWeight.active, byWeight.product].map(String)).toEqual(["2 kg of ai", "4 kg of product"]);
    expect(byWeight.findings).toEqual([
      {
        code: "water-density-taken",
        severity: "note",
        path: "concentration",
        params: { density: "1 kg/L" },
        text: "The concentration is by weight; the water is taken as 1 kg/L.",
        source: "common practice, no source",
      },
    ]);
    // an acre-foot of water at a part in a million by weight is 2.719 lb
    const us = waterDose({
      surface: quantity(1, "acre"),
      depth: ft(1),
      concentration: quantity(1, "mg/L", "Cu"),
      strength: quantity(1, "lb/gal", "Cu/product"),
    });
    expect([us.active.unit, us.product?.unit]).toEqual(["lb", "gal"]);
    expect(us.active.in("lb")).toBeCloseTo(2.7194, 3);
    expect(us.product?.value).toBeCloseTo(us.active.value, 12);
  });
  test("copper: from 50 to 250 a hundredth of the alkalinity, and no more above", () => {
    const at = (value: number) =>
      copperSulfateConcentration({ alkalinity: quantity(value, "mg/L", "CaCO3 equivalent") });
    expect(
      [50, 250, 251, 2000].map((value) => [at(value).concentration.in("mg/L"), at(value).atMost]),
    ).toEqual([
      [0.5, false],
      [2.5, false],
      [2.5, true],
      [2.5, true],
    ]);
    expect(at(100)).toMatchObject({
      type: "copper-sulfate-concentration",
      version: 1,
      concentration: { of: "product" },
    });
    expect(at(100).findings).toEqual([
      {
        code: "pond/copper-and-fish",
        severity: "warning",
        params: { lowest: 50, highest: 250 },
        text: "Copper kills fish and other water animals, the more easily the lower the alkalinity. Measure the total alkalinity of this pond, not its hardness or pH. The label's maximum concentration wins over this rule of thumb.",
        source: expect.objectContaining({ publisher: "University of Florida, IFAS Extension", year: 2014 }),
      },
    ]);
  });
});
