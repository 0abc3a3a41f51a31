import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { clippingDensities, clippingMass, clippingVolumeFor, growthRatio } from "../../../src/stand/index.js";

// By hand: dry mass = volume x density, nitrogen = dry mass x share.

const nitrogen = quantity(4, "%");
const heavy = quantity(100, "g/L");

describe("the weight of clippings", () => {
  test.each([
    [quantity(2, "m3"), 200_000, "g"],
    [quantity(3, "L"), 300, "g"],
    [quantity(500, "mL"), 50, "g"],
    [quantity(1, "gal"), (3.785411784 * 100) / 453.59237, "lb"],
    [quantity(1, "bu"), (35.23907016688 * 100) / 453.59237, "lb"],
  ] as const)("of %s", (clippings, mass, unit) => {
    const found = clippingMass({ clippings, dryMass: heavy, nitrogen });
    expect([found.type, found.version, found.dryMass.unit, found.nitrogen.unit, found.nitrogen.of]).toEqual([
      "clipping-mass",
      1,
      unit,
      unit,
      "N",
    ]);
    expect(found.dryMass.value / mass).toBeCloseTo(1, 12);
    expect(found.nitrogen.value / (0.04 * mass)).toBeCloseTo(1, 12);
  });

  test.each([
    [quantity(30, "mL/m2"), 3, "g/m2"],
    [quantity(2, "L/m2"), 200, "g/m2"],
    [quantity(100, "L/ha"), 1, "g/m2"], // 10,000 g on 10,000 m2
    [quantity(10, "qt/1000 ft2"), (9.46352946 * 100) / 453.59237, "lb/1000 ft2"],
    [quantity(43.56, "gal/acre"), (3.785411784 * 100) / 453.59237, "lb/1000 ft2"],
  ] as const)("of %s", (clippings, mass, unit) => {
    const found = clippingMass({ clippings, dryMass: heavy, nitrogen });
    expect([found.type, found.version, found.dryMass.unit, found.nitrogen.unit]).toEqual([
      "clipping-mass",
      1,
      unit,
      unit,
    ]);
    expect(found.dryMass.value / mass).toBeCloseTo(1, 12);
    expect(found.nitrogen.value / found.dryMass.value).toBeCloseTo(0.04, 12);
  });

  test("each grass by its own figure", () => {
    const of = (dryMass: "bentgrass" | "bermudagrass" | "manilagrass") =>
      clippingMass({ clippings: quantity(1, "L"), dryMass, nitrogen }).dryMass.in("g");
    expect([of("bentgrass"), of("bermudagrass"), of("manilagrass")]).toEqual([60, 60, 110]);
    for (const { source } of clippingDensities) expect(source.publisher).toBe("Asian Turfgrass Center");
  });

  test("the share of nitrogen lies between nothing and a fifth", () => {
    const of = (percent: number) =>
      clippingMass({
        clippings: quantity(1, "L"),
        dryMass: heavy,
        nitrogen: quantity(percent, "%"),
      }).nitrogen.in("g");
    expect(of(19.99)).toBeCloseTo(19.99, 12);
    expect(of(0.3)).toBeCloseTo(0.3, 12);
  });
});

describe("the clippings that nitrogen makes", () => {
  test("in either system", () => {
    // 4 g of N are 100 g of clippings at 4 %, which is a liter
    const metric = clippingVolumeFor({ nitrogen: quantity(4, "g/m2", "N"), dryMass: heavy, share: nitrogen });
    expect([metric.unit, metric.value]).toEqual(["mL/m2", 1000]);
    expect(
      clippingVolumeFor({ nitrogen: quantity(40, "kg/ha", "N"), dryMass: heavy, share: nitrogen }).unit,
    ).toBe("mL/m2");
    const us = clippingVolumeFor({
      nitrogen: quantity(1, "lb/1000 ft2", "N"),
      dryMass: heavy,
      share: nitrogen,
    });
    expect(us.unit).toBe("qt/1000 ft2");
    expect(us.value).toBeCloseTo((25 * 453.59237) / 100 / 0.946352946, 9);
    expect(
      clippingVolumeFor({ nitrogen: quantity(0, "g/m2", "N"), dryMass: heavy, share: nitrogen }).value,
    ).toBe(0);
  });
});

describe("growth against what is wanted", () => {
  const over = (volume: number, days: number) => ({
    volume: quantity(volume, "mL/m2"),
    time: quantity(days, "d"),
  });
  test("as one record", () => {
    const found = growthRatio({
      measured: over(90, 3),
      wanted: over(40, 2),
      nitrogen: quantity(3, "g/m2", "N"),
    });
    expect(JSON.parse(JSON.stringify(found))).toEqual({
      type: "growth-ratio",
      version: 1,
      measured: { value: 30, unit: "mL/m2/d", of: "none" },
      wanted: { value: 20, unit: "mL/m2/d", of: "none" },
      ratio: 1.5,
      nitrogen: { value: 2, unit: "g/m2", of: "N" },
    });
    expect(growthRatio({ measured: over(90, 3), wanted: over(40, 2) }).nitrogen).toBe(null);
  });
  test("of other units", () => {
    const wanted = { volume: quantity(0.02, "L/m2"), time: quantity(24, "h") };
    expect(growthRatio({ measured: over(60, 2), wanted }).ratio).toBeCloseTo(1.5, 12);
    expect(
      growthRatio({ measured: over(60, 2), wanted, nitrogen: quantity(0, "g/m2", "N") }).nitrogen?.value,
    ).toBe(0);
  });
});
