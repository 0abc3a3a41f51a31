import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity, RatewrightError } from "../../src/quantity/index.js";
import { loadAmounts, tankLoads } from "../../src/tank/index.js";

const errorOf = (run: () => unknown): RatewrightError => {
  try {
    run();
  } catch (error) {
    if (error instanceof RatewrightError) return error;
    throw error;
  }
  throw new Error("nothing was thrown");
};

const add = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
const positive = (max: number): fc.Arbitrary<number> => fc.double({ min: 0.01, max, noNaN: true });

describe("tankLoads", () => {
  test("four tanks are four loads, in spite of rounding noise", () => {
    for (const [gpa, tank, acres] of [
      [15, 30, 8],
      [0.1, 0.3, 12],
      [1.1, 3.3, 12],
      [2.3, 25.3, 44],
    ] as const) {
      const plan = tankLoads({
        area: quantity(acres, "acre"),
        sprayRate: quantity(gpa, "gal/acre", "spray"),
        capacity: quantity(tank, "gal", "spray"),
      });
      expect(plan.count).toBe(4);
      expect(plan.loads.every((load) => load.full)).toBe(true);
      expect(plan.loads.map((load) => load.volume.in("gal"))).toEqual([tank, tank, tank, tank]);
    }
  });

  test("an even split has loads of one size, none of them full", () => {
    const plan = tankLoads({
      area: quantity(3.5, "acre"),
      sprayRate: quantity(15, "gal/acre", "spray"),
      capacity: quantity(30, "gal", "spray"),
      split: "even",
    });
    expect(plan.loads.map((load) => [load.volume.in("gal"), load.area.in("acre"), load.full])).toEqual([
      [26.25, 1.75, false],
      [26.25, 1.75, false],
    ]);
  });

  test("metric and customary inputs mix, and the area keeps its tag", () => {
    const plan = tankLoads({
      area: quantity(1, "ha", "treated"),
      sprayRate: quantity(400, "L/ha", "spray"),
      capacity: quantity(300, "L", "spray"),
    });
    expect(plan.loads.map((load) => load.area.toJSON())).toEqual([
      { value: 0.75, unit: "ha", of: "treated" },
      { value: 0.25, unit: "ha", of: "treated" },
    ]);
  });

  test("volumes and areas add up to the totals to the last digit", () => {
    fc.assert(
      fc.property(
        positive(500),
        positive(200),
        positive(300),
        fc.constantFrom("even", "full then partial"),
        (acres, gpa, tank, split) => {
          fc.pre((acres * gpa) / tank < 2000);
          const plan = tankLoads({
            area: quantity(acres, "acre"),
            sprayRate: quantity(gpa, "gal/acre", "spray"),
            capacity: quantity(tank, "gal", "spray"),
            split,
          });
          expect(plan.loads).toHaveLength(plan.count);
          expect(add(plan.loads.map((load) => load.area.value))).toBe(plan.area.value);
          expect(add(plan.loads.map((load) => load.volume.value))).toBe(plan.volume.value);
          for (const load of plan.loads) {
            expect(load.volume.value).toBeGreaterThan(0);
            expect(load.volume.value).toBeLessThanOrEqual(tank);
            expect(load.area.value).toBeGreaterThan(0);
            // Every load has the spray that its area wants.
            expect(load.area.value * gpa).toBeCloseTo(load.volume.value, 6);
          }
        },
      ),
    );
  });

  test("says what is wrong and where", () => {
    const good = {
      area: quantity(1, "acre"),
      sprayRate: quantity(20, "gal/acre", "spray"),
      capacity: quantity(30, "gal", "spray"),
    };
    const cases: readonly (readonly [object, string, string])[] = [
      [{ capacity: quantity(0, "gal", "spray") }, "range", "capacity"],
      [{ capacity: quantity(0.0001, "gal", "spray") }, "range", "capacity"],
      [{ capacity: quantity(30, "gal", "water") }, "substance/mismatch", "capacity"],
      [{ area: quantity(-1, "acre") }, "range", "area"],
      [{ area: quantity(1, "acre", "product") }, "substance/mismatch", "area"],
      [{ area: undefined }, "missing", "area"],
      [{ sprayRate: quantity(20, "lb/acre", "spray") }, "unit/mismatch", "sprayRate"],
      [{ split: "odd" }, "type", "split"],
    ];
    for (const [change, code, path] of cases) {
      const error = errorOf(() => tankLoads({ ...good, ...change } as never));
      expect([error.code, error.path]).toEqual([code, path]);
    }
  });
});

describe("loadAmounts", () => {
  const loads = tankLoads({
    area: quantity(3.5, "acre"),
    sprayRate: quantity(15, "gal/acre", "spray"),
    capacity: quantity(20, "gal", "spray"),
  });

  test("a rate per area goes by the area, a rate per volume by the volume", () => {
    const plan = loadAmounts({
      loads,
      products: [
        { id: "a", rate: quantity(3, "lb/acre", "product:a"), form: "dry" },
        { id: "b", rate: quantity(0.5, "% v/v", "product:b/spray"), form: "liquid" },
      ],
    });
    const [a, b] = plan.products;
    expect(a?.total.toJSON()).toEqual({ value: 10.5, unit: "lb", of: "product:a" });
    expect(a?.loads.map((load) => load.amount.value)).toEqual([4, 4, 2.5]);
    expect(b?.loads.map((load) => load.amount.toJSON())).toEqual([
      { value: 0.1, unit: "gal", of: "product:b" },
      { value: 0.1, unit: "gal", of: "product:b" },
      { value: 0.0625, unit: "gal", of: "product:b" },
    ]);
    expect(plan.findings).toEqual([]);
  });

  test("readable amounts are whole steps that add up, and the exact ones add up to the total", () => {
    fc.assert(
      fc.property(
        positive(80),
        positive(60),
        positive(200),
        positive(20),
        fc.constantFrom(0.1, 0.25, 0.5, 1, 5),
        (acres, gpa, tank, rate, step) => {
          fc.pre((acres * gpa) / tank < 300);
          const some = tankLoads({
            area: quantity(acres, "acre"),
            sprayRate: quantity(gpa, "gal/acre", "spray"),
            capacity: quantity(tank, "gal", "spray"),
          });
          const plan = loadAmounts({
            loads: some,
            products: [{ id: "a", rate: quantity(rate, "fl oz/acre", "product:a"), form: "liquid" }],
            readable: { liquid: { unit: "fl oz", step } },
          });
          const product = plan.products[0];
          const shares = product?.loads ?? [];
          const total = product?.total.value as number;
          expect(add(shares.map((load) => load.steps as number))).toBe(product?.readable?.steps);
          expect(Math.abs((product?.readable?.steps as number) * step - total)).toBeLessThanOrEqual(
            step / 2 + 1e-6,
          );
          expect(add(shares.map((load) => load.exact.value))).toBeCloseTo(total, 8);
          for (const load of shares) {
            expect(Number.isInteger(load.steps)).toBe(true);
            expect(load.steps).toBeGreaterThanOrEqual(0);
            expect(Math.abs((load.steps as number) * step - load.exact.value)).toBeLessThan(step + 1e-6);
            expect(load.amount.value).toBeCloseTo((load.steps as number) * step, 9);
          }
        },
      ),
    );
  });

  test("the residue is shown, a step of the product wins, and one that shows nothing is a finding", () => {
    const plan = loadAmounts({
      loads,
      products: [
        { id: "a", rate: quantity(3.1, "lb/acre", "product:a"), form: "dry" },
        {
          id: "b",
          rate: quantity(0.1, "oz/acre", "product:b"),
          form: "dry",
          readable: { unit: "oz", step: 1 },
        },
      ],
      readable: { dry: { unit: "lb", step: 0.5 } },
    });
    const [a, b] = plan.products;
    // 3.1 x 3.5 = 10.85 lb; the nearest half pound is 11.
    expect(a?.readable?.total.value).toBe(11);
    expect(a?.readable?.residue.value).toBeCloseTo(0.15, 12);
    expect(a?.loads.map((load) => load.amount.value)).toEqual([4, 4.5, 2.5]);
    expect(b?.loads.map((load) => load.amount.value)).toEqual([0, 0, 0]);
    expect(plan.findings.map(({ code, path }) => [code, path])).toEqual([
      ["load/step-too-coarse", "products[1].readable"],
      ["load/step-too-coarse", "products[1].readable"],
      ["load/step-too-coarse", "products[1].readable"],
    ]);
  });

  test("takes loads that have been through JSON", () => {
    const products = [{ id: "a", rate: quantity(3, "lb/acre", "product:a"), form: "dry" }] as const;
    const stored = JSON.parse(JSON.stringify(loads));
    expect(loadAmounts({ loads: stored, products })).toEqual(loadAmounts({ loads, products }));
  });

  test("says what is wrong and where", () => {
    const a = { id: "a", rate: quantity(3, "lb/acre", "product:a"), form: "dry" } as const;
    const cases: readonly (readonly [object, string, string])[] = [
      [{ products: [a, a] }, "duplicate", "products[1].id"],
      [{ products: [a, { ...a, id: "" }] }, "missing", "products[1].id"],
      [{ products: [{ ...a, form: "liquid" }] }, "missing", "products[0].density"],
      [{ products: [{ ...a, rate: quantity(3, "lb/acre") }] }, "substance/mismatch", "products[0].rate"],
      [
        { products: [a], readable: { dry: { unit: "fl oz", step: 1 } } },
        "unit/mismatch",
        "readable.dry.unit",
      ],
      [{ products: [a], readable: { dry: { unit: "oz", step: 0 } } }, "range", "readable.dry.step"],
      [{ products: [a], loads: {} }, "type", "loads"],
    ];
    for (const [change, code, path] of cases) {
      const error = errorOf(() => loadAmounts({ loads, ...change } as never));
      expect([error.code, error.path]).toEqual([code, path]);
    }
  });
});
