import { describe, expect, test } from "vitest";
import { quantity } from "../../src/index.js";
import { blendWaters, exchangeCapacity } from "../../src/soil/index.js";
import { complaints } from "../errors.js";

describe("blendWaters", () => {
  const part = (share: number, conductivity?: number) => ({
    share: quantity(share, "%"),
    water: {
      Na: quantity(10, "mg/L", "Na"),
      ...(conductivity !== undefined && { conductivity: quantity(conductivity, "dS/m") }),
    },
  });

  test("mixes the conductivity by the shares, where all waters were tested for it", () => {
    // A quarter of 2 and three quarters of 0.4 is 0.5 + 0.3.
    expect(blendWaters([part(25, 2), part(75, 0.4)]).water.conductivity?.in("dS/m")).toBeCloseTo(0.8, 12);
    expect(blendWaters([part(25, 2), part(75)]).water.conductivity).toBeUndefined();
  });
});

describe("exchangeCapacity", () => {
  const of = (pH: number, grams = 1.4) =>
    exchangeCapacity({
      cations: {
        K: quantity(200, "lb/acre", "K"),
        Mg: quantity(100, "lb/acre", "Mg"),
        Ca: quantity(900, "lb/acre", "Ca"),
        Na: quantity(0, "lb/acre", "Na"),
      },
      layer: { depth: quantity(6, "in"), bulkDensity: quantity(grams, "g/mL", "soil") },
      acidity: quantity(1, "meq/100 g"),
      pH,
    });

  test("warns of free lime from pH 7.3 on, and not below", () => {
    expect([6, 7.2, 7.3, 8].map((pH) => of(pH).findings.map(({ code }) => code))).toEqual([
      [],
      [],
      ["soil/capacity-by-sum-high"],
      ["soil/capacity-by-sum-high"],
    ]);
  });

  test("a soil is no lighter than loose peat and no heavier than quartz", () => {
    expect([0.05, 2.65].map((grams) => complaints(() => of(6, grams)))).toEqual([[], []]);
    expect([0.04, 2.66].map((grams) => complaints(() => of(6, grams)))).toEqual(
      Array(2).fill(["range layer.bulkDensity"]),
    );
  });
});
