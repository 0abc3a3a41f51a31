import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  acidityFromBuffer,
  amountInSoil,
  contentInSoil,
  contentOfCharge,
  equivalentWeight,
  exchangeableCharge,
  exchangeCapacity,
  quantity,
  type SoilLayer,
  soilMass,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const layer = fc
  .record({
    depth: fc.double({ min: 1, max: 60, noNaN: true }),
    density: fc.double({ min: 0.1, max: 2.5, noNaN: true }),
  })
  .map(
    ({ depth, density }): SoilLayer => ({
      depth: quantity(depth, "cm"),
      bulkDensity: quantity(density, "g/mL", "soil"),
    }),
  );
const ppm = fc.double({ min: 0, max: 5000, noNaN: true });
const meq = (value: number) => quantity(value, "meq/100 g");

describe("a content and an amount", () => {
  test("come back through any layer", () => {
    fc.assert(
      fc.property(ppm, layer, (value, of) => {
        const content = quantity(value, "mg/kg", "K/soil");
        expect(contentInSoil(amountInSoil(content, of), of).in("mg/kg")).toBeCloseTo(value, 6);
      }),
    );
  });
  test("do not ask in which unit depth and density are given", () => {
    fc.assert(
      fc.property(ppm, fc.double({ min: 1, max: 20, noNaN: true }), (value, inches) => {
        const content = quantity(value, "ppm w/w", "P/soil");
        const us = { depth: quantity(inches, "in"), bulkDensity: quantity(1.4, "g/mL", "soil") };
        const metric = { depth: quantity(inches * 25.4, "mm"), bulkDensity: quantity(1400, "kg/m3", "soil") };
        expect(amountInSoil(content, us).in("kg/ha")).toBeCloseTo(
          amountInSoil(content, metric).in("kg/ha"),
          6,
        );
      }),
    );
  });
  test("pounds an acre by the general rule: ppm, inches and g/cm3 times 0.22661", () => {
    const us = { depth: quantity(4, "in"), bulkDensity: quantity(1.3, "g/mL", "soil") };
    const pounds = amountInSoil(quantity(10, "ppm w/w", "K/soil"), us).in("lb/acre");
    expect(pounds).toBeCloseTo(10 * 4 * 1.3 * 0.22661, 3);
  });
  test("a shortcut is scaled to a depth", () => {
    const four = soilMass({ assumed: "2,000,000 lb/acre", depth: quantity(4, "in") });
    expect(four.in("lb/acre")).toBeCloseTo(1_200_000, 3);
    expect(soilMass({ assumed: "2,000,000 lb/acre", depth: quantity(8, "in") }).in("lb/acre")).toBeCloseTo(
      2_400_000,
      3,
    );
  });
});

describe("charge", () => {
  test("comes back, and needs the right ion", () => {
    fc.assert(
      fc.property(
        ppm,
        fc.constantFrom("atomic weights" as const, "whole numbers" as const),
        (value, weights) => {
          const content = quantity(value, "mg/kg", "Mg/soil");
          const charge = exchangeableCharge(content, weights);
          expect(contentOfCharge(charge, weights).in("mg/kg")).toBeCloseTo(value, 6);
        },
      ),
    );
    expect(complaints(() => exchangeableCharge(quantity(1, "mg/kg", "K2O/soil" as "K/soil")))).toEqual([
      "substance/mismatch content",
    ]);
    expect(complaints(() => equivalentWeight("Cl", "whole numbers"))).toEqual(["type ion"]);
  });
  test("a meq of calcium carbonate is half its formula", () => {
    expect(equivalentWeight("CaCO3 equivalent")).toBeCloseTo(50.043, 3);
    expect(equivalentWeight("Na") / equivalentWeight("Ca")).toBeCloseTo(22.99 / 20.039, 10);
  });
});

describe("exchange capacity", () => {
  const cations = {
    Ca: quantity(800, "mg/kg", "Ca/soil"),
    Mg: quantity(120, "mg/kg", "Mg/soil"),
    K: quantity(78, "mg/kg", "K/soil"),
    Na: quantity(23, "mg/kg", "Na/soil"),
  };
  test("its parts add up to it", () => {
    fc.assert(
      fc.property(ppm, ppm, fc.double({ min: 0, max: 20, noNaN: true }), (Ca, K, acidity) => {
        const found = exchangeCapacity({
          cations: { ...cations, Ca: quantity(Ca, "mg/kg", "Ca/soil"), K: quantity(K, "mg/kg", "K/soil") },
          acidity: meq(acidity),
        });
        const shares = Object.values(found.cations).map(({ saturation }) => saturation.in("%"));
        const base = shares.reduce((sum, share) => sum + share, 0);
        expect(base).toBeCloseTo(found.baseSaturation.in("%"), 8);
        const acid = (100 * acidity) / found.capacity.in("meq/100 g");
        expect(base + acid).toBeCloseTo(100, 8);
      }),
    );
  });
  test("pounds an acre, ppm and meq say the same", () => {
    const mass = { assumed: "2,000,000 lb/acre" } as const;
    const pounds = exchangeCapacity({
      cations: { ...cations, K: quantity(156, "lb/acre", "K"), Ca: quantity(1600, "lb/acre", "Ca") },
      layer: mass,
      acidity: meq(1),
    });
    const charge = exchangeCapacity({
      cations: { ...cations, K: exchangeableCharge(cations.K), Ca: exchangeableCharge(cations.Ca) },
      acidity: meq(1),
    });
    expect(pounds.capacity.in("cmolc/kg")).toBeCloseTo(charge.capacity.in("meq/100 g"), 9);
  });
  test("pounds an acre need a layer, a base that was not tested is no zero, sodium is told", () => {
    const { Ca, Mg } = cations;
    expect(
      complaints(() =>
        exchangeCapacity({ cations: { Ca, Mg, K: quantity(1, "lb/acre", "K") }, acidity: meq(0) }),
      ),
    ).toEqual(["missing layer"]);
    expect(complaints(() => exchangeCapacity({ cations: { Ca, Mg }, acidity: meq(0) }))).toEqual([
      "missing cations.K",
    ]);
    const { Na, ...tested } = cations;
    expect(exchangeCapacity({ cations: tested, acidity: meq(0) }).findings.map(({ code }) => code)).toEqual([
      "soil/sodium-not-tested",
    ]);
    expect(Na.of).toBe("Na/soil");
    expect(exchangeCapacity({ cations, acidity: meq(0), pH: 7.8 }).findings.map(({ code }) => code)).toEqual([
      "soil/capacity-by-sum-high",
    ]);
  });
});

describe("bad input", () => {
  test("is refused with its path", () => {
    expect(complaints(() => acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: 15 }))).toEqual([
      "range bufferPH",
    ]);
    expect(complaints(() => acidityFromBuffer({ buffer: "Mehlich, North Carolina", bufferPH: 6 }))).toEqual([
      "missing weightPerVolume",
    ]);
    expect(complaints(() => acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: 8.3 }))).toEqual([
      "range bufferPH",
    ]);
    expect(
      complaints(() => soilMass({ depth: quantity(0, "in"), bulkDensity: quantity(9, "g/mL", "soil") })),
    ).toEqual(["range layer.depth", "range layer.bulkDensity"]);
    expect(
      complaints(() => amountInSoil(quantity(5, "mg/kg", "K" as "K/soil"), { assumed: "2,000,000 lb/acre" })),
    ).toEqual(["substance/mismatch content"]);
    expect(complaints(() => soilMass({ assumed: "a lot" as "2,000,000 lb/acre" }))).toEqual([
      "type layer.assumed",
    ]);
  });
  test("a commercial laboratory counts any reading from 7.0 on as none", () => {
    const by = (bufferPH: number) =>
      acidityFromBuffer({ buffer: "pH 7.0 buffer of a commercial laboratory", bufferPH }).in("meq/100 g");
    expect(by(6.5)).toBeCloseTo(6, 10);
    expect([by(7), by(7.4)]).toEqual([0, 0]);
  });
  test("acidity by volume is acidity by weight over the weight of a volume", () => {
    const by = (weightPerVolume: number) =>
      acidityFromBuffer({ buffer: "Mehlich, North Carolina", bufferPH: 6.1, weightPerVolume }).in(
        "meq/100 g",
      );
    expect(by(1)).toBeCloseTo(2, 10);
    expect(by(1.25)).toBeCloseTo(1.6, 10);
  });
});
