import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { dryBulkDensity } from "../../../src/site/index.js";
import * as soil from "../../../src/soil/index.js";
import {
  gravimetricWaterContent,
  soilBulkDensity,
  soilMass,
  totalPorosity,
  volumetricWaterContent,
} from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";

type Plain = (input: unknown) => unknown;
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const g = (value: number) => quantity(value, "g");
const mL = (value: number) => quantity(value, "mL");
const density = (value: number) => quantity(value, "g/mL", "soil");
const like = (start: string) => expect.stringMatching(start) as unknown as string;

const dryWeight = fc.double({ min: 50, max: 400, noNaN: true });
const share = fc.double({ min: 0, max: 0.3, noNaN: true });

describe("a core", () => {
  test("solids, water and air fill it", () => {
    fc.assert(
      fc.property(dryWeight, share, (dry, wetness) => {
        // 200 mL of grains of 2.65 g/mL and water of 1 g/mL
        const solids = dry / 2.65;
        const water = wetness * (200 - solids);
        const core = { wet: g(dry + water), dry: g(dry) };
        const bulkDensity = soilBulkDensity({ dry: core.dry, volume: mL(200) });
        const held = volumetricWaterContent({ gravimetric: gravimetricWaterContent(core), bulkDensity });
        expect(held.in("% v/v")).toBeCloseTo(water / 2, 9);
        const pores = totalPorosity({ bulkDensity, water: held });
        expect(pores.total.in("%")).toBeCloseTo((200 - solids) / 2, 9);
        expect(pores.airFilled?.in("%")).toBeCloseTo((200 - solids - water) / 2, 9);
        expect(pores.saturation?.in("%")).toBeCloseTo(100 * wetness, 8);
      }),
    );
  });
  test("a container, units and the shape of the ring change nothing", () => {
    fc.assert(
      fc.property(dryWeight, fc.double({ min: 1, max: 300, noNaN: true }), (dry, can) => {
        const plain = gravimetricWaterContent({ wet: g(1.2 * dry), dry: g(dry) }).in("%");
        expect(plain).toBeCloseTo(20, 9);
        const weighed = { wet: g(1.2 * dry + can), dry: g(dry + can), container: g(can) };
        expect(gravimetricWaterContent(weighed).in("%")).toBeCloseTo(20, 7);
        const kilograms = { wet: quantity(0.0012 * dry, "kg"), dry: quantity(dry / 1000, "kg", "soil") };
        expect(gravimetricWaterContent(kilograms).in("%")).toBeCloseTo(20, 9);
        const ring = { diameter: quantity(5, "cm"), length: quantity(12, "cm") };
        const volume = mL(Math.PI * 2.5 ** 2 * 12);
        expect(soilBulkDensity({ dry: g(dry + can), container: g(can), ...ring }).in("g/mL")).toBeCloseTo(
          soilBulkDensity({ dry: g(dry), volume }).in("g/mL"),
          9,
        );
      }),
    );
  });
  test("goes on as it is: into the weight of a layer, and as moisture of loose material", () => {
    const bulkDensity = soilBulkDensity({ dry: g(300), volume: mL(200) });
    expect(soilMass({ depth: quantity(10, "cm"), bulkDensity }).in("kg/m2")).toBeCloseTo(150, 9);
    const moisture = gravimetricWaterContent({ wet: g(324), dry: g(300) });
    const moist = quantity(1.62, "g/mL");
    expect(dryBulkDensity({ bulkDensity: moist, moisture, basis: "dry weight" }).in("g/mL")).toBeCloseTo(
      1.5,
      9,
    );
  });
  it("of dry soil holds no water", () => {
    const dry = gravimetricWaterContent({ wet: g(300), dry: g(300) });
    expect(dry.in("%")).toBe(0);
    const water = volumetricWaterContent({ gravimetric: dry, bulkDensity: density(1.5) });
    const pores = totalPorosity({ bulkDensity: density(1.5), water });
    expect(pores.airFilled?.in("%")).toBe(pores.total.in("%"));
    expect(pores.saturation?.in("%")).toBe(0);
  });
});

describe("the particle density", () => {
  it("is assumed openly, or taken", () => {
    const assumed = totalPorosity({ bulkDensity: density(1.325) });
    expect(assumed.total.in("%")).toBeCloseTo(50, 9);
    expect(assumed.findings).toMatchObject([
      {
        code: "soil/particle-density-assumed",
        severity: "note",
        path: "particleDensity",
        params: { gramsPerMilliliter: 2.65 },
      },
    ]);
    const peat = totalPorosity({ bulkDensity: density(0.2), particleDensity: density(1.4) });
    expect(peat.total.in("%")).toBeCloseTo(600 / 7, 9);
    expect([peat.findings, peat.particleDensity.in("g/mL"), peat.airFilled]).toEqual([[], 1.4, undefined]);
  });
});

describe("what is refused", () => {
  const core = { wet: g(361.6), dry: g(298.8) };
  tellsEach([
    [
      () => call.gravimetricWaterContent({ wet: core.dry, dry: core.wet }),
      "range wet: expected 361.6 g or more, the dry weight: are the two exchanged?, got 298.8 g",
    ],
    [
      () => call.gravimetricWaterContent({ ...core, container: g(300) }),
      "range container: expected less than 298.8 g, the dry weight, got 300 g",
    ],
    [
      () => call.gravimetricWaterContent({}),
      'missing wet: expected the weight as it was taken, such as quantity(298.8, "g"), got undefined',
      'missing dry: expected the weight after the oven, such as quantity(298.8, "g"), got undefined',
    ],
    [
      () => call.gravimetricWaterContent({ ...core, wet: quantity(361.6, "g", "water") }),
      like("^substance/mismatch wet: expected the weight as it was taken: a weight of soil"),
    ],
    [
      () => call.volumetricWaterContent({ gravimetric: 0.2, bulkDensity: density(1.5) }),
      'type gravimetric: expected water in percent of the dry weight, such as quantity(21, "%"), got 0.2',
    ],
    [
      () => call.volumetricWaterContent({ gravimetric: quantity(80, "%"), bulkDensity: density(1.25) }),
      "range gravimetric: expected less than 80 %: more water would fill the whole soil at that bulk density, got 80 %",
    ],
    [
      () => call.soilBulkDensity({ dry: g(300) }),
      like("^missing diameter: expected diameter and length of the core"),
      like("^missing length"),
    ],
    [
      () => call.soilBulkDensity({ dry: g(300), volume: mL(200), length: quantity(5, "cm") }),
      "conflict length: expected nothing besides the volume, got 5 cm",
    ],
    [
      () => call.soilBulkDensity({ dry: g(600), volume: mL(200) }),
      "range dry: expected 10 to 530 g in that volume: a bulk density of 0.05 to 2.65 g/mL, got 600 g",
    ],
    [
      () => call.soilBulkDensity({ dry: g(9), volume: mL(200) }),
      "range dry: expected 10 to 530 g in that volume: a bulk density of 0.05 to 2.65 g/mL, got 9 g",
    ],
    [
      () => call.soilBulkDensity({ dry: g(300), volume: quantity(200, "mL", "water") }),
      like("^substance/mismatch volume: expected the volume of the core: of soil"),
    ],
    [
      () => call.totalPorosity({ bulkDensity: density(1.3), particleDensity: density(0.9) }),
      like("^range particleDensity: expected the density of the grains"),
    ],
    [
      () => call.totalPorosity({ bulkDensity: density(1.3), particleDensity: density(5.4) }),
      like("^range particleDensity: expected the density of the grains"),
    ],
    [
      () => call.totalPorosity({ bulkDensity: density(1.5), particleDensity: density(1.5) }),
      "range bulkDensity: expected less than 1.5 g/mL, the density of the grains, got 1.5 g/mL of soil",
    ],
    [
      () => call.totalPorosity({ bulkDensity: density(1.325), water: quantity(51, "% v/v") }),
      "range water: expected 50 % or less of the volume, which the pores hold, got 51 % v/v",
    ],
  ]);
});
