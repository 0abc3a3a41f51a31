// Lime by base saturation in a plan: what a report lacks for it, and a soil that has enough.
import { describe, expect, test } from "vitest";
import { type AmendmentConventions, amendmentPlan, type SoilReport } from "../../../src/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const report: SoilReport = {
  laboratory: "county laboratory",
  date: "2026-03-02",
  extractant: "Mehlich 3",
  pH: 5.9,
  layer: { depth: quantity(10, "cm"), bulkDensity: quantity(1.3, "g/mL", "soil") },
  // Of 10 meq/100 g, 7 are bases: Ca 801.56, Mg 243.05, K 390.983 mg/kg are 4, 2 and 1.
  acidity: quantity(3, "meq/100 g"),
  elements: {
    Ca: quantity(801.56, "mg/kg", "Ca/soil"),
    Mg: quantity(243.05, "mg/kg", "Mg/soil"),
    K: quantity(390.983, "mg/kg", "K/soil"),
    Na: quantity(0, "mg/kg", "Na/soil"),
  },
};
const plan = (target: number, more: Partial<SoilReport> = {}, most = quantity(5, "t/ha", "product")) => {
  const conventions: AmendmentConventions = {
    lime: {
      method: "base saturation",
      targetSaturation: quantity(target, "%"),
      material: { id: "lime-a", quality: { effective: 100 } },
      most: { amount: most, source: "x" },
      first: "2026-10-01",
      monthsApart: 6,
    },
  };
  const site = {
    name: "field",
    area: quantity(1, "ha"),
    standing: true,
    nitrogen: quantity(100, "kg/ha", "N"),
  } as const;
  return amendmentPlan({ ...report, ...more }, site, conventions);
};

describe("base saturation", () => {
  test("70 to 80 % of 10 meq/100 g is 1 meq, 500.435 mg of CaCO3 a kg, on 130 kg/m2", () => {
    const { lime } = plan(80);
    expect(lime?.requirement.rate.in("kg/ha")).toBeCloseTo(500.435e-6 * 1_300_000, -0.3);
  });

  test("a soil at or above its target gets none, and the plan says that it looked", () => {
    for (const target of [60, 65.5]) {
      const { lime, checked, notChecked } = plan(target);
      expect(lime).toBeNull();
      expect(checked).toContain(
        `base saturation of 70 % is at or above the target of ${target} %: no lime is needed`,
      );
      expect(notChecked.filter((text) => /lime/.test(text))).toEqual([]);
    }
  });

  test("a report that lacks acidity or a base is told what it takes, by a field that it has", () => {
    const { acidity: _, ...without } = report;
    const refused = (given: SoilReport) => complaints(() => plan(80, given));
    expect(refused({ ...without, acidity: undefined } as unknown as SoilReport)).toEqual([
      expect.stringMatching(/^missing report\.acidity\b/),
    ]);
    const { Mg: _mg, ...elements } = report.elements;
    expect(refused({ ...report, elements })).toEqual([
      expect.stringMatching(/^missing report\.elements\.Mg\b/),
    ]);
  });

  test("a maximum that makes too many applications is told at the maximum", () => {
    expect(complaints(() => plan(100, {}, quantity(1, "kg/ha", "product")))).toEqual([
      expect.stringMatching(/^infeasible conventions\.lime\.most\.amount\b/),
    ]);
  });
});
