import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  analysisByWeight,
  fertilizer,
  highestProductRate,
  inForm,
  liquidFertilizer,
  liquidProductRate,
  nitrogenOf,
  nutrientPerVolume,
  nutrientsSupplied,
  packageContents,
  packagesFor,
  productMass,
  productRate,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const perVolume = { N: quantity(3, "lb/gal", "N"), P2O5: quantity(1, "lb/gal", "P2O5") };
const jug = liquidFertilizer({ id: "jug", perVolume, package: quantity(2.5, "gal") });
const target = quantity(1, "lb/1000 ft2", "N");

describe("a liquid labeled by volume", () => {
  test("goes from target to jugs without a density", () => {
    const rate = liquidProductRate(target, jug);
    expect(rate.in("gal/1000 ft2")).toBeCloseTo(1 / 3, 12);
    // 43.56 / 3 = 14.52 gal, six jugs of 2.5.
    expect(packagesFor(rate.times(quantity(1, "acre")), jug).count).toBe(6);
    const jugBrings = nutrientsSupplied(packageContents(jug, "volume"), jug);
    expect(jugBrings.N.in("lb")).toBeCloseTo(7.5, 12);
    expect(jugBrings.P.in("lb")).toBeCloseTo(2.5 * 0.43643, 4);
    expect(nutrientPerVolume(jug, "K2O").value).toBe(0);
  });

  test("says the same as the record by weight of the same liquid, whatever its density", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.8, max: 1.6, noNaN: true }),
        fc.double({ min: 0.1, max: 40, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (kilograms, percent, litres) => {
          const label = { N: quantity(percent, "% w/v", "N"), P: quantity(3, "% w/v", "P") };
          const density = quantity(kilograms, "kg/L");
          const byWeight = fertilizer({
            id: "x",
            form: "liquid",
            density,
            analysis: analysisByWeight({ perVolume: label, density }),
          });
          const byVolume = liquidFertilizer({ id: "x", perVolume: label });
          const rate = quantity(litres, "L/ha", "product:x");
          const [a, b] = [nutrientsSupplied(rate, byWeight), nutrientsSupplied(rate, byVolume)];
          expect(Object.keys(a).sort()).toEqual(Object.keys(b).sort());
          for (const of of ["N", "P2O5", "N:slow"] as const) {
            expect(a[of]?.in("kg/ha")).toBeCloseTo(b[of]?.in("kg/ha") as number, 8);
          }
          const wanted = quantity(5, "kg/ha", "P2O5");
          expect(liquidProductRate(wanted, byVolume).in("L/ha")).toBeCloseTo(
            liquidProductRate(wanted, byWeight).in("L/ha"),
            6,
          );
        },
      ),
    );
  });

  test("splits its nitrogen as the label does", () => {
    const slow = liquidFertilizer({ id: "s", perVolume, slowNitrogen: quantity(1, "lb/gal", "N:slow") });
    const brought = nutrientsSupplied(quantity(2, "gal", "product:s"), slow);
    expect(brought["N:slow"]?.in("lb")).toBeCloseTo(2, 12);
    expect(brought["N:quick"]?.in("lb")).toBeCloseTo(4, 12);
    const more = quantity(4, "lb/gal", "N:slow");
    expect(complaints(() => liquidFertilizer({ id: "s", perVolume, slowNitrogen: more }))).toEqual([
      "conflict liquidFertilizer.slowNitrogen",
    ]);
  });

  test("comes back from JSON and is frozen", () => {
    const stored = JSON.parse(JSON.stringify(jug));
    expect(liquidProductRate(target, stored).in("gal/1000 ft2")).toBeCloseTo(1 / 3, 12);
    expect(Object.isFrozen(jug) && Object.isFrozen(jug.perVolume)).toBe(true);
    stored.perVolume.N.value = -3;
    expect(complaints(() => liquidProductRate(target, stored))).toEqual(["range product.perVolume.N"]);
  });

  test("is refused with the way on", () => {
    const twice = { P: quantity(1, "lb/gal", "P"), P2O5: quantity(1, "lb/gal", "P2O5") };
    expect(complaints(() => liquidFertilizer({ id: "x", perVolume: twice }))).toEqual([
      "conflict liquidFertilizer.perVolume.P",
    ]);
    expect(() => liquidFertilizer({ id: "x", perVolume, density: quantity(10, "lb/gal") } as never)).toThrow(
      /analysisByWeight/,
    );
    expect(() => productRate(target, jug as never)).toThrow(/liquidProductRate/);
    expect(() => highestProductRate({ product: jug as never, caps: [{ limit: target }] })).toThrow(
      /analysisByWeight/,
    );
    expect(complaints(() => nutrientsSupplied(quantity(1, "lb", "product:jug"), jug))).toEqual([
      "unit/mismatch amount",
    ]);
    expect(complaints(() => liquidProductRate(quantity(1, "lb/acre", "Fe"), jug))).toEqual([
      "infeasible product.perVolume",
    ]);
  });

  test("is named where a record by weight is made of it", () => {
    for (const wrong of [
      { perVolume },
      { analysis: { N: quantity(3, "lb/gal", "N") } },
      { analysis: "18-9-9 % w/v" },
      { analysis: "3 lb N per gal" },
      {},
    ]) {
      expect(() => fertilizer({ id: "x", form: "liquid", ...wrong } as never)).toThrow(/liquidFertilizer\(/);
    }
    expect(() => fertilizer({ id: "x", analysis: { N: 24 } } as never)).toThrow(/percent: { N: 24 }/);
  });
});

describe("a liquid labeled by weight", () => {
  const uan = fertilizer({
    id: "uan",
    form: "liquid",
    analysis: "28-0-0",
    density: quantity(10.6, "lb/gal"),
    package: quantity(2.5, "gal"),
  });

  test("is counted in jugs by weight or by volume, the same", () => {
    const acre = quantity(1, "acre");
    const byWeight = packagesFor(productRate(target, uan).times(acre), uan);
    const byVolume = packagesFor(liquidProductRate(target, uan).times(acre), uan);
    expect([byWeight.count, byVolume.count]).toEqual([6, 6]);
    expect(byWeight.leftOver.in("lb")).toBeCloseTo(byVolume.leftOver.in("gal") * 10.6, 9);
    const dry = { id: "d", package: quantity(53, "lb"), density: quantity(10.6, "lb/gal") } as const;
    expect(packagesFor(quantity(5.01, "gal", "product:d"), dry).count).toBe(2);
  });

  test("has no rate by weight without a density, and the way is named", () => {
    const bare = fertilizer({ id: "uan", form: "liquid", analysis: "28-0-0" });
    expect(() => productRate(target, bare)).toThrow(/liquidProductRate/);
    expect(() => liquidProductRate(target, bare)).toThrow(/liquidFertilizer/);
    expect(() => nutrientsSupplied(quantity(1, "gal", "product:uan"), bare)).toThrow(/liquidFertilizer/);
  });

  test("brings the same by volume as weighed", () => {
    expect(nutrientsSupplied(quantity(20, "gal/acre", "product:uan"), uan).N.in("lb/acre")).toBeCloseTo(
      59.36,
      10,
    );
  });
});

describe("what is asked at the wrong door", () => {
  const bag = fertilizer({ id: "bag", analysis: "24-0-11", package: quantity(50, "lb") });

  test("is sent on", () => {
    expect(() => productMass(target as never, bag)).toThrow(/productRate/);
    expect(() => nutrientsSupplied(bag.package as never, bag)).toThrow(/packageContents/);
    expect(() => packageContents(jug)).toThrow(/packageContents\(product, "volume"\)/);
    expect(() => packagesFor(target as never, bag)).toThrow(/product:bag/);
    expect(() => packagesFor(productRate(target, bag) as never, bag)).toThrow(/times\(area\)/);
  });

  test("nitrate and ammonium are credited as nitrogen", () => {
    const wanted = quantity(100, "lb/acre", "N");
    const nitrate = quantity(27, "lb/acre", "NO3-N");
    expect(() => wanted.minus(nitrate as never)).toThrow(/nitrogenOf/);
    expect(() => productRate(nitrate as never, bag)).toThrow(/nitrogenOf/);
    expect(() => inForm(nitrate, "N" as never)).toThrow(/nitrogenOf/);
    expect(wanted.minus(nitrogenOf(nitrate)).in("lb/acre")).toBe(73);
    // 14.007 of 14.007 + 3 * 15.999 = 62.004.
    expect(nitrogenOf(quantity(62.004, "kg", "NO3")).in("kg")).toBeCloseTo(14.007, 9);
    expect(nitrogenOf(quantity(3, "kg/ha", "N:slow")).in("kg/ha")).toBe(3);
    expect(complaints(() => nitrogenOf(quantity(3, "kg/ha", "P") as never))).toEqual([
      "substance/mismatch amount",
    ]);
  });
});
