import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { clippingDensities, clippingMass, clippingVolumeFor, growthRatio } from "../../../src/stand/index.js";
import { complaints } from "../../errors.js";

const nitrogen = quantity(4, "%");

describe("clippings", () => {
  test("the volume that nitrogen makes holds that nitrogen", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 20, noNaN: true }),
        fc.double({ min: 1, max: 10, noNaN: true }),
        fc.constantFrom("bentgrass", "bermudagrass", "manilagrass"),
        fc.constantFrom("g/m2", "lb/1000 ft2"),
        (rate, percent, dryMass, unit) => {
          const share = quantity(percent, "%");
          const volume = clippingVolumeFor({ nitrogen: quantity(rate, unit, "N"), dryMass, share });
          const held = clippingMass({ clippings: volume, dryMass, nitrogen: share });
          expect(held.nitrogen.in(unit) / rate).toBeCloseTo(1, 10);
          expect(held.nitrogen.unit).toBe(unit);
        },
      ),
    );
  });
  test("a volume and a volume per area weigh alike", () => {
    const bucket = clippingMass({ clippings: quantity(50, "L"), dryMass: "bentgrass", nitrogen });
    const green = clippingMass({ clippings: quantity(0.1, "L/m2"), dryMass: "bentgrass", nitrogen });
    expect(green.dryMass.in("g/m2") * 500).toBeCloseTo(bucket.dryMass.in("g"), 9);
    const us = clippingMass({ clippings: quantity(1, "qt"), dryMass: quantity(60, "g/L"), nitrogen });
    expect(us.dryMass.unit).toBe("lb");
    expect(us.dryMass.in("g")).toBeCloseTo(0.946352946 * 60, 7);
    expect(us.nitrogen.of).toBe("N");
  });
  test("refuses what is no clipping", () => {
    const clippings = quantity(1, "L");
    expect(complaints(() => clippingMass({ clippings, dryMass: "hay", nitrogen } as never))).toEqual([
      "type dryMass",
    ]);
    expect(
      complaints(() => clippingMass({ clippings: quantity(1, "kg"), nitrogen: quantity(25, "%") } as never)),
    ).toEqual(["unit/mismatch clippings", "missing dryMass", "range nitrogen"]);
    expect(Object.isFrozen(clippingDensities[0])).toBe(true);
  });
});

describe("growthRatio", () => {
  const wanted = { volume: quantity(20, "mL/m2"), time: quantity(1, "d") };
  test("is measured by wanted, and turns the rate of nitrogen round", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 200, noNaN: true }),
        fc.integer({ min: 1, max: 30 }),
        (v, days) => {
          const measured = { volume: quantity(v, "mL/m2"), time: quantity(days, "d") };
          const found = growthRatio({ measured, wanted, nitrogen: quantity(0.4, "lb/1000 ft2", "N") });
          expect(found.ratio).toBeCloseTo(v / days / 20, 10);
          expect((found.nitrogen?.in("lb/1000 ft2") as number) * found.ratio).toBeCloseTo(0.4, 10);
        },
      ),
    );
  });
  test("where nothing grew no rate follows", () => {
    const still = { volume: quantity(0, "mL/m2"), time: quantity(3, "d") };
    const found = growthRatio({ measured: still, wanted, nitrogen: quantity(1, "g/m2", "N") });
    expect([found.ratio, found.nitrogen]).toEqual([0, null]);
    expect(complaints(() => growthRatio({ measured: wanted, wanted: still }))).toEqual([
      "range wanted.volume",
    ]);
  });
});
