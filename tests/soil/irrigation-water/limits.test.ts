import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { complaint } from "../../errors.js";

const percent = (value: number) => quantity(value, "%");
const dS = (value: number) => quantity(value, "dS/m");
const ion = <const E extends string>(value: number, name: E) => quantity(value, "meq/L", name as "Na");
const codes = (found: { readonly findings: readonly { readonly code: string }[] }) =>
  found.findings.map(({ code }) => code);

describe("water", () => {
  it("salt classes end with their figure", () => {
    const of = (value: number) => soil.waterSaltClass(quantity(value, "uS/cm"));
    expect([500, 1500, 3000, 5000, 6000].map(of)).toEqual(["excellent", "good", "fair", "poor", "very poor"]);
    expect([501, 1501, 3001, 5001, 6001].map(of)).toEqual([
      "good",
      "fair",
      "poor",
      "very poor",
      "unacceptable",
    ]);
    expect(soil.waterSaltClass(dS(0.5))).toBe("excellent");
  });

  it("a figure in uS/cm written as dS/m is refused wherever a conductivity goes in", () => {
    const way =
      /conductivity|soil|water: expected 300 dS\/m or less: a report in uS\/cm prints a thousand times/;
    expect(() => soil.waterSaltClass(dS(1200))).toThrow(way);
    expect(() => soil.dissolvedSalts({ conductivity: dS(1200) })).toThrow(way);
    const leaching = { method: "average root zone" } as const;
    // A soil of 3000 uS/cm is one of 3 dS/m and asks for 8.7 %; as 3000 dS/m it would ask for nothing.
    expect(() => soil.leachingRequirement({ ...leaching, water: dS(1.2), soil: dS(3000) })).toThrow(way);
    expect(() => soil.leachingRequirement({ ...leaching, water: dS(1200), soil: dS(3) })).toThrow(way);
    const report = { Na: ion(1, "Na"), conductivity: dS(1150) };
    expect(() => soil.blendWaters([{ share: percent(100), water: report }])).toThrow(way);
    expect(soil.waterSaltClass(dS(300))).toBe("unacceptable");
  });

  it("residual carbonate is marginal from 1.25 and high from 2.5 on", () => {
    const hazard = (HCO3: number) =>
      soil.residualSodiumCarbonate({
        HCO3: ion(HCO3, "HCO3") as never,
        Ca: ion(1, "Ca") as never,
        Mg: ion(1, "Mg") as never,
      }).hazard;
    expect([3.24, 3.25, 4.49, 4.5].map(hazard)).toEqual(["low", "marginal", "marginal", "high"]);
  });

  it("a tenth between cations and anions is borne", () => {
    const balance = (Na: number) =>
      soil.ionBalance({
        Na: ion(Na, "Na"),
        Ca: ion(0, "Ca") as never,
        Mg: ion(0, "Mg") as never,
        HCO3: ion(0, "HCO3") as never,
        Cl: ion(9, "Cl") as never,
        SO4: ion(0, "SO4") as never,
      });
    // (11 - 9) / 20
    expect(balance(11).difference.in("%")).toBeCloseTo(10, 9);
    expect(codes(balance(10.99))).toEqual([]);
    const off = balance(11.1).findings[0];
    expect(off).toMatchObject({ path: "water", params: { difference: 10.45, tolerance: 10 } });
    const empty = balance(0);
    expect(empty.difference.in("%")).toBe(-100);
  });

  it("a water of nothing has no difference", () => {
    const none = Object.fromEntries(
      ["Ca", "Mg", "Na", "HCO3", "Cl", "SO4"].map((name) => [name, ion(0, name)]),
    );
    expect(soil.ionBalance(none as never).difference.value).toBe(0);
  });

  it("half of a milliequivalent is still a buffer", () => {
    const dose = (target: number) =>
      soil.acidForAlkalinity({
        alkalinity: quantity(3, "meq/L", "CaCO3 equivalent"),
        target: quantity(target, "meq/L", "CaCO3 equivalent"),
        acid: "nitric acid",
        strength: quantity(100, "% w/w"),
        density: quantity(2, "g/mL", "product"),
      });
    expect(codes(dose(0.5))).toEqual(["water/acid-hazard"]);
    expect(dose(0.4).findings[1]).toMatchObject({
      path: "target",
      params: { target: expect.closeTo(0.4, 9) },
    });
    expect(dose(0.4).findings[0]).toMatchObject({ path: "acid", params: { acid: "nitric acid" } });
    expect(dose(3).dose.value).toBe(0);
  });

  it("half of the water is no large share to leach, and more is", () => {
    const share = (value: number) =>
      soil.leachingRequirement({ method: "drainage water", water: dS(value), drainage: dS(2) });
    expect(codes(share(1))).toEqual([]);
    expect(share(1.1).findings[0]).toMatchObject({ path: "water", params: { share: 55 } });
    expect(soil.irrigationWithLeaching({ use: quantity(1, "in"), share: percent(0) }).in("in")).toBe(1);
  });

  it("blends at their ends, and shares as a report rounds them", () => {
    const share = (target: number) =>
      soil.blendShare({ first: dS(1), second: dS(3), target: dS(target) }).in("%");
    expect([share(1), share(2), share(3)]).toEqual([100, 50, 0]);
    const water = { Na: quantity(10, "mg/L", "Na") };
    const parts = (a: number, b: number) => () =>
      soil.blendWaters([
        { share: percent(a), water },
        { share: percent(b), water: { ...water, Cl: quantity(8, "mg/L", "Cl"), conductivity: dS(1) } },
      ]);
    expect(complaint(parts(33.3, 66.5))).toBe("nothing thrown");
    expect(complaint(parts(33.3, 66.4))).toBe("conflict parts");
    expect(complaint(parts(33.6, 66.6))).toBe("nothing thrown");
    const blended = parts(50, 50)();
    expect(blended.findings[0]).toMatchObject({ path: "parts", params: { ions: ["Cl"] } });
    expect(Object.keys(blended.water)).toEqual(["type", "version", "Na"]);
  });

  it("the factor above 5 dS/m, and nitrate as either form", () => {
    const salts = (value: number, factor?: "800 mg/L per dS/m, above 5 dS/m") =>
      soil
        .dissolvedSalts({ conductivity: dS(value), ...(factor === undefined ? {} : { factor }) })
        .in("mg/L");
    expect([salts(5), salts(6, "800 mg/L per dS/m, above 5 dS/m")]).toEqual([3200, 4800]);
    const load = (water: object) => soil.irrigationLoad({ water, depth: quantity(100, "mm") });
    // 10 mg/L on 100 mm are 1 g/m2, which is 10 kg/ha.
    expect(load({ "NO3-N": quantity(10, "mg/L", "NO3-N") }).nitrogen?.in("kg/ha")).toBeCloseTo(10, 9);
    expect(
      load({ "NO3-N": quantity(10, "mg/L", "NO3-N"), "NH4-N": quantity(2, "mg/L", "NH4-N") }).nitrogen?.in(
        "kg/ha",
      ),
    ).toBeCloseTo(12, 9);
    expect(load({ Na: quantity(10, "mg/L", "Na") })).toMatchObject({ nitrogen: null, carbonate: null });
    const inches = soil.irrigationLoad({
      water: { Na: quantity(10, "mg/L", "Na") },
      depth: quantity(1, "ft"),
    });
    expect(inches.ions.Na?.unit).toBe("lb/1000 ft2");
  });
});
