import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  nurseryArea,
  plantsFor,
  plantsPerArea,
  plugsFromSod,
  sodForPlugs,
  sodOrder,
  spacingFor,
  sprigBushels,
  sprigsFor,
  staggeredRowSpacing,
} from "../../../src/stand/index.js";
import { complaints } from "../../errors.js";

const inches = (value: number) => quantity(value, "in");

describe("plants in a pattern", () => {
  test("spacing and plants per area lead to one another", () => {
    fc.assert(
      fc.property(
        fc.constantFrom("square", "triangular"),
        fc.double({ min: 0.1, max: 200, noNaN: true }),
        (pattern, s) => {
          const perArea = plantsPerArea({ pattern, spacing: inches(s) });
          expect(spacingFor({ pattern, plantsPerArea: perArea }).in("in") / s).toBeCloseTo(1, 10);
          const metric = plantsPerArea({ pattern, spacing: quantity(inches(s).in("cm"), "cm") });
          expect(metric.unit).toBe("count/m2");
          expect(metric.in("count/ft2") / perArea.in("count/ft2")).toBeCloseTo(1, 10);
        },
      ),
    );
  });
  test("a triangular pattern is a rectangular one of its rows", () => {
    const spacing = inches(18);
    const rows = staggeredRowSpacing(spacing);
    const rectangular = plantsPerArea({ pattern: "rectangular", spacing, rowSpacing: rows });
    expect(rectangular.value).toBeCloseTo(plantsPerArea({ pattern: "triangular", spacing }).value, 12);
    expect(complaints(() => plantsPerArea({ pattern: "rectangular", spacing }))).toEqual([
      "missing rowSpacing",
    ]);
  });
  test("counts whole plants and trays, and never too few", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.double({ min: 2, max: 60, noNaN: true }),
        fc.integer({ min: 1, max: 200 }),
        (area, s, perTray) => {
          const order = plantsFor({
            area: quantity(area, "ft2"),
            pattern: "square",
            spacing: inches(s),
            perTray,
            extra: quantity(5, "%"),
          });
          const exact = (1.05 * area * 144) / (s * s);
          expect(order.plants).toBeGreaterThanOrEqual(exact * (1 - 1e-11));
          expect(order.plants).toBeLessThan(exact + 1);
          expect((order.trays as number) * perTray - order.plants).toBe(order.leftOver);
          expect(order.leftOver as number).toBeLessThan(perTray);
        },
      ),
    );
    const grid = { pattern: "square", spacing: inches(0) } as const;
    expect(complaints(() => plantsFor({ ...grid, area: quantity(0, "ft2"), perTray: 1.5 }))).toEqual([
      "range area",
      "range spacing",
      "range perTray",
    ]);
  });
});

describe("sod and plugs", () => {
  test("as many plugs as fit, and no more sod than they are cut from", () => {
    const foot = { length: inches(12), width: inches(12) };
    expect(plugsFromSod({ piece: foot, plug: { side: inches(2) } })).toBe(36);
    expect(plugsFromSod({ piece: foot, plug: { diameter: inches(4) } })).toBe(9);
    expect(plugsFromSod({ piece: foot, plug: { side: inches(5) } })).toBe(4);
    expect(plugsFromSod({ piece: foot, plug: { side: inches(13) } })).toBe(0);
    expect(sodForPlugs({ plugs: 36, plug: { side: inches(2) } }).in("ft2")).toBeCloseTo(1, 12);
    expect(sodForPlugs({ plugs: 400, plug: { diameter: quantity(5, "cm") } }).in("m2")).toBeCloseTo(1, 12);
    expect(complaints(() => sodForPlugs({ plugs: 0, plug: {} as never }))).toEqual([
      "range plugs",
      "missing plug",
    ]);
    expect(
      complaints(() =>
        plugsFromSod({ piece: foot, plug: { side: inches(1), diameter: inches(1) } as never }),
      ),
    ).toEqual(["conflict plug"]);
  });
  test("rolls and pallets are rounded up, and what comes beyond the ground is told", () => {
    const area = quantity(1000, "m2");
    const piece = { length: quantity(2.5, "m"), width: quantity(40, "cm") };
    const order = sodOrder({ area, waste: quantity(5, "%"), piece, pallet: { area: quantity(60, "m2") } });
    expect([order.needed.in("m2"), order.pieces, order.pallets]).toEqual([1050, 1050, 18]);
    expect(order.beyond?.in("m2")).toBe(80);
    // 4000 ft2 and 5 % are 4200 ft2; 467 pieces of 6 ft by 1.5 ft are 4203 ft2.
    const rolls = sodOrder({
      area: quantity(4000, "ft2"),
      waste: quantity(5, "%"),
      piece: { length: quantity(6, "ft"), width: quantity(1.5, "ft") },
    });
    expect([rolls.pieces, rolls.pallets]).toEqual([467, null]);
    expect(rolls.beyond?.in("ft2")).toBeCloseTo(203, 9);
    const bare = sodOrder({ area, waste: quantity(0, "%") });
    expect([bare.piece, bare.pieces, bare.pallets, bare.beyond]).toEqual([null, null, null, null]);
    expect(complaints(() => sodOrder({ area } as never))).toEqual(["missing waste"]);
    expect(complaints(() => sodOrder({ area, waste: quantity(0, "%"), pallet: { pieces: 50 } }))).toEqual([
      "missing piece",
    ]);
  });
});

describe("sprigs", () => {
  test("volume and bushels agree, whichever is given", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2000, noNaN: true }),
        fc.double({ min: 0.2, max: 2, noNaN: true }),
        (rate, size) => {
          const area = quantity(3, "acre");
          const bushel = quantity(size, "ft3");
          const byCount = sprigsFor({ area, rate: quantity(rate, "count/acre"), bushel });
          const byVolume = sprigsFor({ area, rate: byCount.rate, bushel });
          expect(byCount.bushels).toBeCloseTo(3 * rate, 7);
          expect(byCount.volume.in("ft3") / (3 * rate * size)).toBeCloseTo(1, 10);
          expect(byVolume.bushels / byCount.bushels).toBeCloseTo(1, 10);
        },
      ),
    );
  });
  test("the unit bu keeps its size beside a bushel of that size alone", () => {
    // 40 x 10 bushels of 1.24 ft3 are 496 ft3; the unit makes it 40 x 10 x 2150.42 / 1728 = 497.78 ft3
    const rate = quantity(10, "bu/1000 ft2");
    const area = quantity(40_000, "ft2");
    const order = sprigsFor({ area, rate, bushel: quantity(1, "bu") });
    expect(order.bushels).toBeCloseTo(400, 9);
    expect(order.volume.in("ft3")).toBeCloseTo(497.78, 2);
    expect(sprigsFor({ area, rate, bushel: quantity(1.24, "ft3") }).bushels).toBeCloseTo(401.4, 1);
    for (const bushel of [quantity(0.4, "ft3"), quantity(0.32, "ft3")])
      expect(complaints(() => sprigsFor({ area, rate, bushel }))).toEqual(["conflict rate"]);
    const counted = sprigsFor({ area, rate: quantity(10, "count/1000 ft2"), bushel: quantity(0.4, "ft3") });
    expect(counted.bushels).toBeCloseTo(400, 9);
    expect(counted.volume.in("ft3")).toBeCloseTo(160, 9); // 400 x 0.4
  });
  test("the bushel is asked for and repeated", () => {
    const area = quantity(1, "acre");
    const rate = quantity(400, "count/acre");
    expect(complaints(() => sprigsFor({ area, rate } as never))).toEqual(["missing bushel"]);
    const { findings } = sprigsFor({ area, rate, bushel: quantity(1, "bu") });
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["sprigs/bushel-size", "caution"],
    ]);
    const sizes = sprigBushels.map(({ low }) => low.in("ft3"));
    expect(Math.max(...sizes) / Math.min(...sizes)).toBeCloseTo(3.889, 3);
    expect(nurseryArea({ area, expansion: 10 }).in("acre")).toBe(0.1);
    expect(complaints(() => nurseryArea({ area, expansion: 0 }))).toEqual(["range expansion"]);
  });
});
