import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  acidForAlkalinity,
  adjustedSodiumRatio,
  blendShare,
  blendWaters,
  dissolvedSalts,
  equivalentWeight,
  ionBalance,
  irrigationLoad,
  leachingRequirement,
  quantity,
  residualSodiumCarbonate,
  sodiumAdsorptionRatio,
  type WaterAnalysis,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const amount = fc.double({ min: 0.1, max: 500, noNaN: true });
const well: WaterAnalysis = {
  Ca: quantity(60, "mg/L", "Ca"),
  Mg: quantity(20, "mg/L", "Mg"),
  Na: quantity(120, "mg/L", "Na"),
  HCO3: quantity(300, "mg/L", "HCO3"),
  Cl: quantity(90, "mg/L", "Cl"),
  SO4: quantity(120, "mg/L", "SO4"),
  NO3: quantity(44.3, "mg/L", "NO3"),
  conductivity: quantity(0.95, "dS/m"),
};

describe("charge", () => {
  test("milligrams, milliequivalents and ppm are the same water", () => {
    fc.assert(
      fc.property(amount, amount, amount, (Na, Ca, Mg) => {
        const milligrams = sodiumAdsorptionRatio({
          Na: quantity(Na, "mg/L", "Na"),
          Ca: quantity(Ca, "ppm w/w", "Ca/water"),
          Mg: quantity(Mg, "mg/L", "Mg"),
        });
        const charge = sodiumAdsorptionRatio({
          Na: quantity(Na / equivalentWeight("Na"), "meq/L", "Na"),
          Ca: quantity(Ca / equivalentWeight("Ca"), "mmolc/L", "Ca"),
          Mg: quantity(Mg / equivalentWeight("Mg"), "meq/L", "Mg"),
        });
        expect(milligrams / charge).toBeCloseTo(1, 10);
      }),
    );
  });
  test("twice the salt is 1.41 times the ratio", () => {
    fc.assert(
      fc.property(amount, amount, amount, (Na, Ca, Mg) => {
        const by = (times: number) =>
          sodiumAdsorptionRatio({
            Na: quantity(Na * times, "mg/L", "Na"),
            Ca: quantity(Ca * times, "mg/L", "Ca"),
            Mg: quantity(Mg * times, "mg/L", "Mg"),
          });
        expect(by(2) / by(1)).toBeCloseTo(Math.SQRT2, 10);
      }),
    );
  });
  test("a report that does not add up is told, and what is missing is not zero", () => {
    expect(ionBalance(well).findings).toEqual([]);
    const off = ionBalance({ ...well, SO4: quantity(600, "mg/L", "SO4") });
    expect(off.findings.map(({ code }) => code)).toEqual(["water/ions-off-balance"]);
    const { Cl, ...rest } = well;
    expect(Cl?.of).toBe("Cl");
    expect(complaints(() => ionBalance(rest))).toEqual(["missing water.Cl"]);
    expect(complaints(() => ionBalance({ ...well, "NO3-N": quantity(1, "mg/L", "NO3-N") }))).toEqual([
      "conflict water.NO3-N",
    ]);
    expect(complaints(() => ionBalance({ ...well, na: 3, pH: 15 } as never))).toEqual(["type water.na"]);
    expect(complaints(() => ionBalance({ ...well, pH: 15 }))).toEqual(["range water.pH"]);
  });
});

describe("carbonate", () => {
  test("a residue may be below zero", () => {
    const found = residualSodiumCarbonate(well);
    const charge = 300 / 61.016 - 60 / 20.039 - 20 / 12.1525;
    expect(found.value.in("meq/L")).toBeCloseTo(charge, 3);
    const soft = residualSodiumCarbonate({ ...well, HCO3: quantity(0, "mg/L", "HCO3") });
    expect([soft.value.value < 0, soft.hazard]).toEqual([true, "low"]);
  });
  test("more bicarbonate takes calcium away: the adjusted ratio rises", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 400, noNaN: true }),
        fc.double({ min: 1.01, max: 4, noNaN: true }),
        (HCO3, more) => {
          const by = (value: number) =>
            adjustedSodiumRatio({
              water: { ...well, HCO3: quantity(value, "mg/L", "HCO3") },
              method: "equilibrium calcium",
            }).ratio;
          expect(by(HCO3 * more)).toBeGreaterThan(by(HCO3));
        },
      ),
    );
    const pHc = (value: number) => adjustedSodiumRatio({ water: well, method: "pHc", pHc: value });
    expect(pHc(8.4).ratio).toBe(pHc(8.4).unadjusted);
    expect(pHc(7.4).ratio).toBeCloseTo(2 * pHc(7.4).unadjusted, 10);
    expect(complaints(() => adjustedSodiumRatio({ water: well, method: "pHc" }))).toEqual(["missing pHc"]);
    const { conductivity, ...dry } = well;
    expect(conductivity?.value).toBe(0.95);
    expect(complaints(() => adjustedSodiumRatio({ water: dry, method: "equilibrium calcium" }))).toEqual([
      "missing water.conductivity",
    ]);
  });
});

describe("acid", () => {
  const alkalinity = (value: number) => quantity(value, "mg/L", "CaCO3 equivalent");
  const acid = {
    acid: "sulfuric acid",
    strength: quantity(93, "% w/w"),
    density: quantity(1.835, "g/mL", "product"),
  } as const;
  test("is linear in what it takes away, by weight and by charge alike", () => {
    fc.assert(
      fc.property(amount, fc.double({ min: 0, max: 1, noNaN: true }), (now, share) => {
        const found = acidForAlkalinity({
          ...acid,
          alkalinity: alkalinity(now),
          target: alkalinity(now * share),
        });
        const one = acidForAlkalinity({ ...acid, alkalinity: alkalinity(1), target: alkalinity(0) });
        expect(found.dose.in("mL/L")).toBeCloseTo(one.dose.in("mL/L") * now * (1 - share), 8);
        const charge = acidForAlkalinity({
          ...acid,
          alkalinity: quantity(now / equivalentWeight("CaCO3 equivalent"), "meq/L", "CaCO3 equivalent"),
          target: alkalinity(now * share),
        });
        expect(charge.dose.in("mL/L")).toBeCloseTo(found.dose.in("mL/L"), 8);
      }),
    );
  });
  test("brings its element, half as much sulfur a meq as phosphorus would be", () => {
    const by = (name: "sulfuric acid" | "phosphoric acid" | "nitric acid") =>
      acidForAlkalinity({ ...acid, acid: name, alkalinity: alkalinity(50.043), target: alkalinity(0) });
    expect(by("sulfuric acid").brings.in("mg/L")).toBeCloseTo(16.03, 2);
    expect(by("nitric acid").brings.in("mg/L")).toBeCloseTo(14.007, 3);
    expect(by("phosphoric acid").brings.in("mg/L")).toBeCloseTo(30.974, 3);
    expect(by("nitric acid").findings.map(({ code }) => code)).toEqual([
      "water/acid-hazard",
      "water/no-buffer-left",
    ]);
  });
  test("does not raise alkalinity", () => {
    expect(
      complaints(() => acidForAlkalinity({ ...acid, alkalinity: alkalinity(50), target: alkalinity(80) })),
    ).toEqual(["conflict target"]);
  });
});

describe("leaching", () => {
  const share = (water: number, soil: number) =>
    leachingRequirement({
      method: "average root zone",
      water: quantity(water, "dS/m"),
      soil: quantity(soil, "dS/m"),
    }).share.in("%");
  test("rises with salt and stays below all of the water", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 12, noNaN: true }),
        fc.double({ min: 0.01, max: 2.45, noNaN: true }),
        (soil, times) => {
          const now = share(soil * times, soil);
          expect(now).toBeLessThan(100);
          expect(share(soil * times * 1.01, soil)).toBeGreaterThan(now);
        },
      ),
    );
  });
  test("is refused where the water is too salty, before the equation turns", () => {
    for (const water of [10, 12, 20, 25])
      expect(complaints(() => share(water, 4))).toEqual(["infeasible water"]);
    const near = leachingRequirement({
      method: "drainage water",
      water: quantity(3, "dS/m"),
      drainage: quantity(4, "dS/m"),
    });
    expect(near.findings.map(({ code }) => code)).toEqual(["water/leaching-large"]);
  });
});

describe("blends", () => {
  const part = (share: number, water: WaterAnalysis) => ({ share: quantity(share, "%"), water });
  const canal: WaterAnalysis = {
    Na: quantity(10, "mg/L", "Na"),
    Ca: quantity(1, "meq/L", "Ca"),
    conductivity: quantity(0.2, "dS/m"),
  };
  test("hold what their waters bring, and hit a target", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (share) => {
        const { water } = blendWaters([part(share, well), part(100 - share, canal)]);
        const sodium = water.Na?.value as number;
        expect(sodium).toBeCloseTo((120 * share + 10 * (100 - share)) / 100, 8);
        const back = blendShare({
          first: quantity(120, "mg/L", "Na"),
          second: quantity(10, "mg/L", "Na"),
          target: quantity(sodium, "mg/L", "Na"),
        });
        expect(back.in("%")).toBeCloseTo(share, 6);
      }),
    );
  });
  test("leave out what was not tested in all, and go into the next function", () => {
    const blend = blendWaters([part(50, well), part(50, canal)]);
    expect(blend.findings[0]?.params.ions).toEqual(["Mg", "HCO3", "Cl", "SO4", "NO3"]);
    expect(blend.water.Mg).toBeUndefined();
    const twice = blendWaters([part(50, blend.water), part(50, blend.water)]);
    expect(twice.water.Na?.value).toBeCloseTo(65, 10);
    expect(complaints(() => blendWaters([part(50, well), part(60, well)]))).toEqual(["conflict parts"]);
    expect(
      complaints(() =>
        blendShare({
          first: quantity(2, "dS/m"),
          second: quantity(3, "dS/m"),
          target: quantity(8, "dS/m"),
        }),
      ),
    ).toEqual(["infeasible target"]);
  });
});

describe("a load", () => {
  test("is the same by the inch and by the millimeter, and nitrate is nitrogen only in part", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 40, noNaN: true }), (inches) => {
        const us = irrigationLoad({ water: well, depth: quantity(inches, "in") });
        const metric = irrigationLoad({ water: well, depth: quantity(inches * 25.4, "mm") });
        expect(us.nitrogen?.in("kg/ha")).toBeCloseTo(metric.nitrogen?.in("kg/ha") as number, 8);
        expect(us.carbonate?.in("kg/ha")).toBeCloseTo(metric.carbonate?.in("kg/ha") as number, 8);
        expect(us.nitrogen?.in("kg/ha")).toBeCloseTo(
          ((us.ions.NO3?.in("kg/ha") as number) * 14.007) / 62.004,
          8,
        );
      }),
    );
  });
  test("is unknown where nothing was tested", () => {
    const load = irrigationLoad({ water: { Na: quantity(1, "mg/L", "Na") }, depth: quantity(1, "in") });
    expect([load.nitrogen, load.carbonate]).toEqual([null, null]);
  });
});

test("salts by the other factor", () => {
  const conductivity = quantity(6, "mS/cm");
  expect(dissolvedSalts({ conductivity, factor: "800 mg/L per dS/m, above 5 dS/m" }).in("mg/L")).toBe(4800);
  expect(complaints(() => dissolvedSalts({ conductivity, factor: "500" as never }))).toEqual(["type factor"]);
  const fresh = quantity(1, "dS/m");
  expect(
    complaints(() => dissolvedSalts({ conductivity: fresh, factor: "800 mg/L per dS/m, above 5 dS/m" })),
  ).toEqual(["conflict factor"]);
});

describe("the sodium adsorption ratio", () => {
  test("of more sodium than a number holds is refused, not endless", () => {
    const brine = {
      Na: quantity(1e308, "meq/L", "Na"),
      Ca: quantity(1e-9, "meq/L", "Ca"),
      Mg: quantity(0, "meq/L", "Mg"),
    };
    expect(complaints(() => sodiumAdsorptionRatio(brine))).toEqual(["range water.Na"]);
  });
});
