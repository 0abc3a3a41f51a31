import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity, RatewrightError } from "../../src/quantity/index.js";
import { containerRinse, rinseResidue, rinsesFor, tankRinse } from "../../src/tank/index.js";

const errorOf = (run: () => unknown): RatewrightError => {
  try {
    run();
  } catch (error) {
    if (error instanceof RatewrightError) return error;
    throw error;
  }
  throw new Error("nothing was thrown");
};

describe("rinsing a container", () => {
  test("a quarter below 5 gal, a fifth from 5 gal on", () => {
    for (const rule of ["Montana", "Illinois"] as const) {
      const first = (gallons: number) =>
        containerRinse({ container: quantity(gallons, "gal"), rule }).perRinse[0].in("gal");
      expect(first(4.99)).toBeCloseTo(4.99 / 4, 12);
      expect(first(5)).toBe(1);
      expect(first(30)).toBe(6);
    }
    // 20 L is 5.28 gal.
    expect(containerRinse({ container: quantity(20, "L") }).perRinse[0].in("L")).toBe(4);
  });

  test("the rules as printed", () => {
    const archive = containerRinse({ container: quantity(10, "L"), rule: "US EPA archive" });
    expect(archive.perRinse.map((water) => water.in("L"))).toEqual([2, 2.5]);
    expect(archive.water.map((water) => water.in("L"))).toEqual([6, 7.5]);
    expect([archive.drainSeconds, archive.shakeSeconds, archive.pressure?.seconds]).toEqual([30, 30, 30]);
    const montana = containerRinse({ container: quantity(2, "gal") });
    expect([montana.withinHours, montana.pressure?.water?.in("gal"), montana.shakeSeconds]).toEqual([
      48,
      1,
      undefined,
    ]);
    expect(montana.rinsate).toContain("spray tank");
    const old = containerRinse({
      container: quantity(2.5, "gal"),
      rule: "1974 definition",
      heel: quantity(4, "fl oz"),
    });
    // (4 / (4 + 32))^3
    expect(old.residue?.in("%")).toBeCloseTo(100 / 729, 9);
  });

  test("what is wrong is named", () => {
    const container = quantity(1, "gal");
    expect(errorOf(() => containerRinse({ container: quantity(0, "gal") })).path).toBe("container");
    expect(errorOf(() => containerRinse({ container, rule: "Ohio" as never })).path).toBe("rule");
    expect(errorOf(() => containerRinse({ container, heel: quantity(1, "gal") })).code).toBe("conflict");
    expect(errorOf(() => containerRinse({ container: quantity(1, "lb") as never })).code).toBe(
      "unit/mismatch",
    );
  });
});

describe("residue", () => {
  const volume = fc.double({ min: 0.01, max: 100, noNaN: true });

  test("equal rinses leave no more than any other split of the same water", () => {
    fc.assert(
      fc.property(
        volume,
        volume,
        fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 1, maxLength: 6 }),
        (heel, water, weights) => {
          const sum = weights.reduce((a, b) => a + b, 0);
          const uneven = weights.reduce((left, weight) => (left * heel) / (heel + (water * weight) / sum), 1);
          const rinse = tankRinse({
            heel: quantity(heel, "L"),
            water: quantity(water, "L"),
            rinses: weights.length,
          });
          expect(rinse.residue.in("1")).toBeLessThanOrEqual(uneven * (1 + 1e-9));
          expect(rinse.residue.in("1")).toBeGreaterThanOrEqual(rinse.limit.in("1") * (1 - 1e-9));
          expect(rinse.residue.in("1")).toBeLessThanOrEqual(rinse.inOneRinse.in("1") * (1 + 1e-9));
        },
      ),
    );
  });

  test("rinsesFor is the smallest number that reaches the target", () => {
    fc.assert(
      fc.property(
        volume,
        fc.double({ min: 1, max: 8, noNaN: true }),
        fc.double({ min: 0.001, max: 0.9, noNaN: true }),
        (heel, times, share) => {
          const job = { heel: quantity(heel, "L"), water: quantity(heel * times, "L") };
          fc.pre(share > Math.exp(-times) * 1.01);
          const n = rinsesFor({ ...job, target: quantity(share * 100, "%") });
          const left = (rinses: number) => tankRinse({ ...job, rinses }).residue.in("1");
          expect(left(n)).toBeLessThanOrEqual(share * (1 + 1e-9));
          if (n > 1) expect(left(n - 1)).toBeGreaterThan(share * (1 - 1e-9));
        },
      ),
    );
  });

  test("what is wrong is named", () => {
    const heel = quantity(1, "gal", "spray");
    const water = quantity(2, "gal", "water");
    expect(errorOf(() => rinsesFor({ heel, water, target: quantity(1, "%") })).code).toBe("infeasible");
    expect(errorOf(() => rinsesFor({ heel, water, target: quantity(0, "%") })).path).toBe("target");
    expect(errorOf(() => tankRinse({ heel, water, rinses: 1.5 })).path).toBe("rinses");
    expect(errorOf(() => tankRinse({ heel, water, rinses: 0 })).path).toBe("rinses");
    expect(errorOf(() => rinseResidue({ heel: quantity(0, "gal"), rinse: water })).path).toBe("heel");
    expect(errorOf(() => tankRinse({ heel, water, strength: quantity(1, "lb") })).path).toBe("strength");
    const strong = tankRinse({ heel, water, rinses: 2, strength: quantity(8, "g/L", "product/spray") });
    expect(strong.strengthLeft?.toString()).toBe("2 g/L of product/spray");
  });
});
