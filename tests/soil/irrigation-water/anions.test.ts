import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";

const ion = (name: string) => quantity(1, "meq/L", name as "Na");

describe("the charge of a water", () => {
  it("counts each ion on its own side", () => {
    const names = ["Ca", "Mg", "Na", "K", "NH4-N", "HCO3", "CO3", "Cl", "SO4"];
    const of = (nitrate: string) =>
      soil.ionBalance(
        Object.fromEntries([...names, nitrate].map((name) => [name, ion(name)])) as soil.WaterAnalysis,
      );
    for (const nitrate of ["NO3", "NO3-N"]) {
      const { cations, anions, difference, findings } = of(nitrate);
      expect([cations.in("meq/L"), anions.in("meq/L")]).toEqual([expect.closeTo(5, 9), expect.closeTo(5, 9)]);
      expect(difference.in("%")).toBeCloseTo(0, 9);
      expect(findings).toEqual([]);
    }
  });

  it("a layer to half of its depth weighs half", () => {
    const mass = (inches?: number) =>
      soil
        .soilMass({
          assumed: "4,000,000 lb/acre-ft",
          ...(inches === undefined ? {} : { depth: quantity(inches, "in") }),
        })
        .in("lb/acre");
    expect([mass(), mass(12), mass(3)]).toEqual([4_000_000, 4_000_000, 1_000_000]);
  });
});
