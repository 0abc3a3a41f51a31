import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity, RatewrightError } from "../../../src/quantity/index.js";
import { loadAmounts, mixToFinish, tankLoads } from "../../../src/tank/index.js";
import { readableShares } from "../../../src/tank/load/readable-shares.js";

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
          fc.pre((acres * gpa) / tank < 400);
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

  test("dead and hose volume are mixed once and left over", () => {
    const job = {
      area: quantity(3, "acre"),
      sprayRate: quantity(10, "gal/acre", "spray"),
      capacity: quantity(15, "gal", "spray"),
      deadVolume: quantity(1, "gal", "spray"),
      hoseVolume: quantity(2, "gal", "spray"),
    };
    const plan = tankLoads(job);
    // 30 gal for the area and 3 that stay; 15 first, then at most 14 on top of the gallon in the tank.
    expect(plan.smallestMix.in("gal")).toBe(33);
    expect(plan.loads.map((load) => load.volume.in("gal"))).toEqual([15, 14, 4]);
    expect(plan.loads.map((load) => load.full)).toEqual([true, true, false]);
    const treated = plan.loads.map((load) => load.area.in("acre"));
    [1.2, 1.4, 0.4].forEach((acres, i) => {
      expect(treated[i]).toBeCloseTo(acres, 12);
    });
    expect(plan.leftOver.volume.in("gal")).toBeCloseTo(3, 12);
    expect(plan.leftOver.held.in("gal")).toBe(3);
    expect(plan.mixedFor.in("acre")).toBeCloseTo(3.3, 12);
    const amounts = loadAmounts({
      loads: plan,
      products: [{ id: "a", rate: quantity(2, "pt/acre", "product:a"), form: "liquid" }],
    });
    // Product for 3.3 acres: what stays behind is as strong as the rest.
    expect(amounts.products[0]?.total.value).toBeCloseTo(6.6, 12);
    [3, 2.8, 0.8].forEach((pints, i) => {
      expect(amounts.products[0]?.loads[i]?.amount.value).toBeCloseTo(pints, 12);
    });
    const even = tankLoads({ ...job, split: "even" });
    expect(even.loads.map((load) => load.volume.in("gal"))).toEqual([11, 11, 11]);
    // One tank is enough where all of it fits, dead volume and hoses included.
    expect(tankLoads({ ...job, area: quantity(1.2, "acre") }).count).toBe(1);
    expect(tankLoads({ ...job, area: quantity(1.25, "acre") }).count).toBe(2);
  });

  test("loads of a fixed size: what is too much is left over", () => {
    const plan = tankLoads({
      area: quantity(1, "ha"),
      sprayRate: quantity(410, "L/ha", "spray"),
      capacity: quantity(200, "L", "spray"),
      split: "fixed size",
      loadSize: quantity(100, "L", "spray"),
    });
    expect(plan.loads.map((load) => load.volume.in("L"))).toEqual([100, 100, 100, 100, 100]);
    expect(plan.leftOver.volume.in("L")).toBeCloseTo(90, 9);
    expect(plan.smallestMix.in("L")).toBe(410);
    expect(add(plan.loads.map((load) => load.area.value))).toBeCloseTo(1, 12);
    expect(plan.loads[4]?.area.in("m2")).toBeCloseTo(10000 * (10 / 410), 9);
    const amounts = loadAmounts({
      loads: plan,
      products: [{ id: "a", rate: quantity(4.1, "kg/ha", "product:a"), form: "dry" }],
    });
    for (const load of amounts.products[0]?.loads ?? []) expect(load.amount.value).toBeCloseTo(1, 12);
  });

  test("what is mixed is what is sprayed and what is left, in every split", () => {
    fc.assert(
      fc.property(
        positive(50),
        positive(60),
        fc.double({ min: 5, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.double({ min: 0, max: 0.4, noNaN: true }),
        fc.constantFrom("even", "full then partial", "fixed size"),
        (acres, gpa, tank, dead, hose, split) => {
          fc.pre((acres * gpa) / tank < 500);
          const plan = tankLoads({
            area: quantity(acres, "acre"),
            sprayRate: quantity(gpa, "gal/acre", "spray"),
            capacity: quantity(tank, "gal", "spray"),
            deadVolume: quantity(dead * tank, "gal", "spray"),
            hoseVolume: quantity(hose * tank, "gal", "spray"),
            split,
            ...(split === "fixed size" && { loadSize: quantity(tank * 0.5, "gal", "spray") }),
          });
          const near = (a: number, b: number) =>
            expect(Math.abs(a - b)).toBeLessThan(1e-9 * (1 + Math.abs(b)));
          const mixed = add(plan.loads.map((load) => load.volume.value));
          expect(mixed).toBe(plan.volume.value);
          near(mixed, acres * gpa + plan.leftOver.volume.value);
          near(add(plan.loads.map((load) => load.area.value)), acres);
          near(plan.mixedFor.value * gpa, mixed);
          near(plan.smallestMix.value, acres * gpa + dead * tank + hose * tank);
          expect(plan.leftOver.volume.value).toBeGreaterThanOrEqual(plan.leftOver.held.value - 1e-9 * tank);
          plan.loads.forEach((load, i) => {
            expect(load.area.value).toBeGreaterThanOrEqual(0);
            expect(load.volume.value).toBeLessThanOrEqual(
              (i === 0 ? tank : tank - dead * tank) * (1 + 1e-12),
            );
          });
        },
      ),
    );
  });

  test("a last load that fills the tank is full, dead volume or not", () => {
    // 150 gal first, 136 later fillings of 116 on top of 34: the last one is what is left, with its noise.
    for (const [tank, dead, hose, later] of [
      [150.9071666, 34.8329321, 6.3896316, 136],
      [129.1044555, 2.5754516, 0, 38],
      [30, 0.1, 0, 7],
      [30, 0, 0, 7],
    ] as const) {
      const acres = (tank + later * (tank - dead) - dead - hose) / 40;
      const plan = tankLoads({
        area: quantity(acres, "acre"),
        sprayRate: quantity(40, "gal/acre", "spray"),
        capacity: quantity(tank, "gal", "spray"),
        deadVolume: quantity(dead, "gal", "spray"),
        hoseVolume: quantity(hose, "gal", "spray"),
      });
      expect(plan.count).toBe(later + 1);
      expect(plan.loads.map((load) => load.full)).toEqual(plan.loads.map(() => true));
    }
  });

  test("areas add up to the last digit with a dead volume too", () => {
    for (const [acres, gpa, tank, dead, hose, split] of [
      [7.7, 48, 260, 22, 34, "even"],
      [546.2, 22, 190, 1.4, 54, "full then partial"],
      [473.8334042905862, 20.251437034261457, 175.26019612809947, 0, 43.50343532491243, "even"],
    ] as const) {
      const plan = tankLoads({
        area: quantity(acres, "acre"),
        sprayRate: quantity(gpa, "gal/acre", "spray"),
        capacity: quantity(tank, "gal", "spray"),
        deadVolume: quantity(dead, "gal", "spray"),
        hoseVolume: quantity(hose, "gal", "spray"),
        split,
      });
      expect(add(plan.loads.map((load) => load.area.value))).toBe(acres);
    }
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 2, max: 60 }),
        fc.integer({ min: 20, max: 300 }),
        fc.integer({ min: 0, max: 40 }),
        fc.constantFrom("even", "full then partial"),
        (tenths, gpa, tank, share, split) => {
          const plan = tankLoads({
            area: quantity(tenths / 10, "acre"),
            sprayRate: quantity(gpa, "gal/acre", "spray"),
            capacity: quantity(tank, "gal", "spray"),
            deadVolume: quantity((share * tank) / 100, "gal", "spray"),
            split,
          });
          expect(add(plan.loads.map((load) => load.area.value))).toBe(plan.area.value);
        },
      ),
    );
  });

  test("tells every problem of the input, not the first", () => {
    const error = errorOf(() =>
      tankLoads({
        area: quantity(-3.5, "acre"),
        sprayRate: quantity(15, "lb/acre", "spray") as never,
        capacity: quantity(20, "gal", "water") as never,
        loadSize: quantity(5, "gal", "spray"),
        hoseVolume: quantity(-1, "gal", "spray"),
      }),
    );
    expect(error.problems.map(({ code, path }) => [code, path])).toEqual([
      ["range", "area"],
      ["unit/mismatch", "sprayRate"],
      ["substance/mismatch", "capacity"],
      ["range", "hoseVolume"],
      ["conflict", "loadSize"],
    ]);
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
      [{ split: "fixed size" }, "missing", "loadSize"],
      // A size that would go unread.
      [{ loadSize: quantity(10, "gal", "spray") }, "conflict", "loadSize"],
      [{ split: "even", loadSize: quantity(10, "gal", "spray") }, "conflict", "loadSize"],
      // The tank would do: what the pump leaves in it is too much.
      [{ deadVolume: quantity(29.999, "gal", "spray") }, "range", "deadVolume"],
      [{ split: "fixed size", loadSize: quantity(31, "gal", "spray") }, "range", "loadSize"],
      [{ split: "fixed size", loadSize: quantity(0.0001, "gal", "spray") }, "range", "loadSize"],
      [{ deadVolume: quantity(30, "gal", "spray") }, "range", "deadVolume"],
      [{ deadVolume: quantity(-1, "gal", "spray") }, "range", "deadVolume"],
      [
        { deadVolume: quantity(1, "gal", "spray"), hoseVolume: quantity(29, "gal", "spray") },
        "range",
        "hoseVolume",
      ],
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

  test("the weakest and the strongest spray of a label, at a reduced volume", () => {
    const at = (litersPerHectare: number, dose: number) =>
      loadAmounts({
        loads: tankLoads({
          area: quantity(1, "ha"),
          sprayRate: quantity(litersPerHectare, "L/ha", "spray"),
          capacity: quantity(300, "L", "spray"),
        }),
        products: [
          {
            id: "a",
            rate: quantity(dose, "L/ha", "product:a"),
            form: "liquid",
            concentration: {
              min: quantity(0.2, "% v/v", "product:a/spray"),
              max: quantity(0.5, "% v/v", "product:a/spray"),
              source: "the label",
            },
          },
        ],
      }).findings.map(({ code }) => code);
    // 1 L/ha in 200 L/ha is 0.5 %: within. The same dose in 100 L/ha is 1 %.
    expect(at(200, 1)).toEqual([]);
    expect(at(100, 0.5)).toEqual([]);
    expect(at(100, 1)).toEqual(["load/concentration-above-maximum"]);
    expect(at(600, 1)).toEqual(["load/concentration-below-minimum", "load/concentration-below-minimum"]);
  });

  test("rates on every basis on one sheet", () => {
    const plan = loadAmounts({
      loads: tankLoads({
        area: quantity(20, "1000 ft2"),
        sprayRate: quantity(2, "gal/1000 ft2", "spray"),
        capacity: quantity(40, "gal", "spray"),
      }),
      products: [
        { id: "a", rate: quantity(4, "lb/acre", "product:a"), form: "dry" },
        { id: "b", rate: quantity(1.5, "fl oz/1000 ft2", "product:b"), form: "liquid" },
        { id: "c", rate: quantity(0.25, "% v/v", "product:c/spray"), form: "liquid" },
        { id: "d", rate: quantity(1, "% w/v", "product:d/spray"), form: "dry" },
        {
          id: "e",
          rate: { value: 17, unit: "lb", of: "product:e", per: { value: 100, unit: "gal" } },
          form: "dry",
        },
      ],
    });
    const inUnit = (i: number, unit: string): number => {
      const total: unknown = plan.products[i]?.total;
      return (total as { in(u: string): number }).in(unit);
    };
    expect(inUnit(0, "lb")).toBeCloseTo(4 * (20 / 43.56), 12);
    expect(inUnit(1, "fl oz")).toBe(30);
    expect(inUnit(2, "fl oz")).toBeCloseTo(12.8, 12);
    // 1 g in 100 mL of 40 gal.
    expect(inUnit(3, "g")).toBeCloseTo(40 * 37.85411784, 9);
    expect(inUnit(4, "lb")).toBeCloseTo(6.8, 12);
  });

  test("a product that goes in whole packets", () => {
    const some = (gallons: number) =>
      loadAmounts({
        loads: tankLoads({
          area: quantity(5, "acre"),
          sprayRate: quantity(20, "gal/acre", "spray"),
          capacity: quantity(gallons, "gal", "spray"),
        }),
        products: [
          {
            id: "a",
            rate: quantity(4, "oz/acre", "product:a"),
            form: "dry",
            least: { value: 8, unit: "oz" },
            readable: { unit: "oz", step: 8 },
          },
        ],
      });
    // 40 gal take one packet; 20 gal take half of one.
    expect(some(40).products[0]?.loads.map((load) => load.amount.value)).toEqual([8, 8, 8]);
    const error = errorOf(() => some(20));
    expect([error.code, error.path]).toEqual(["infeasible", "products[0].least"]);
    expect(error.expected).toContain("a full one takes 4 oz");
  });

  test("even loads are advised only where they would help", () => {
    const textOf = (
      acres: number,
      least: number,
      split: "even" | "full then partial" = "full then partial",
    ) =>
      loadAmounts({
        loads: tankLoads({
          area: quantity(acres, "acre"),
          sprayRate: quantity(15, "gal/acre", "spray"),
          capacity: quantity(30, "gal", "spray"),
          split,
        }),
        products: [
          {
            id: "a",
            rate: quantity(3, "lb/acre", "product:a"),
            form: "dry",
            least: { value: least, unit: "lb" },
          },
        ],
      }).findings.map(({ text }) => text.includes("Even loads"));
    // 6 lb and 1.5 lb; two even loads have 3.75 each.
    expect(textOf(2.5, 3)).toEqual([true]);
    expect(textOf(2.5, 3.75)).toEqual([true]);
    expect(textOf(2.5, 4)).toEqual([false]);
    // One load of 3 lb: nothing to share out.
    expect(textOf(1, 5)).toEqual([false]);
    expect(textOf(2.5, 4, "even")).toEqual([false, false]);
  });

  test("tells the problems of every product, and refuses the rate of another one", () => {
    const rate = quantity(3, "lb/acre", "product:a");
    const error = errorOf(() =>
      loadAmounts({
        loads,
        products: [
          { id: "a", rate: quantity(-3, "lb/acre", "product:a"), form: "dry" },
          { id: "b", rate, form: "dry" },
          null as never,
          { id: "c", rate: quantity(1, "% v/v", "product:b/spray"), form: "liquid" },
          { id: "", rate, form: "dry" },
          { id: "e", rate: quantity(1, "pt/acre", "product:e"), form: "dry" },
        ],
      }),
    );
    expect(error.problems.map(({ code, path }) => [code, path])).toEqual([
      ["range", "products[0].rate"],
      ["substance/mismatch", "products[1].rate"],
      ["type", "products[2]"],
      ["substance/mismatch", "products[3].rate"],
      ["missing", "products[4].id"],
      ["missing", "products[5].density"],
    ]);
    // A product without an id in its rate is the one whose rate it is.
    const plain = loadAmounts({
      loads,
      products: [{ id: "a", rate: quantity(3, "lb/acre", "product"), form: "dry" }],
    });
    expect(plain.products[0]?.total.value).toBe(10.5);
    // A hole in a list is a product that is not there.
    const hole = new Array<never>(1);
    expect(errorOf(() => loadAmounts({ loads, products: hole })).path).toBe("products[0]");
    for (const forged of [{ type: "tank-loads" }, { ...loads, loads: [] }, null])
      expect(errorOf(() => loadAmounts({ loads: forged as never, products: [] })).path).toBe("loads");
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
      [{ products: [a], readable: { dry: null } }, "type", "readable.dry"],
      [{ products: [{ ...a, readable: 1 }] }, "type", "products[0].readable"],
      [{ products: [{ ...a, least: null }] }, "type", "products[0].least"],
      [{ products: [{ ...a, concentration: null }] }, "type", "products[0].concentration"],
      [{ products: [{ ...a, least: { value: 0, unit: "lb" } }] }, "range", "products[0].least"],
      [{ products: [{ ...a, least: { value: 1, unit: "gal" } }] }, "unit/mismatch", "products[0].least"],
      [{ products: [{ ...a, concentration: { source: "s" } }] }, "missing", "products[0].concentration"],
      [
        { products: [{ ...a, concentration: { max: a.rate, source: "s" } }] },
        "unit/mismatch",
        "products[0].concentration.max",
      ],
      [
        {
          products: [{ ...a, concentration: { max: quantity(1, "g/L", "product:b/spray"), source: "s" } }],
        },
        "substance/mismatch",
        "products[0].concentration.max",
      ],
      [
        {
          products: [
            {
              ...a,
              concentration: {
                min: quantity(2, "g/L", "product:a/spray"),
                max: quantity(1, "g/L", "product:a/spray"),
                source: "s",
              },
            },
          ],
        },
        "conflict",
        "products[0].concentration.max",
      ],
      [
        { products: [{ ...a, concentration: { max: quantity(1, "g/L", "product:a/spray"), source: "" } }] },
        "missing",
        "products[0].concentration.source",
      ],
    ];
    for (const [change, code, path] of cases) {
      const error = errorOf(() => loadAmounts({ loads, ...change } as never));
      expect([error.code, error.path]).toEqual([code, path]);
    }
  });
});

describe("readable shares", () => {
  test("noise at a half step takes nothing back from a later load", () => {
    // The running sum rounds up to 3 steps, the total down to 2.
    expect(readableShares([2.5, 0], 2.4999999999999996)).toEqual([2, 0]);
    expect(readableShares([2.5, 2.5], 5)).toEqual([3, 2]);
    expect(readableShares([0.4, 0.4, 0.4, 0.4], 1.6)).toEqual([0, 1, 0, 1]);
  });
});

describe("mixToFinish", () => {
  const job = { area: quantity(1.5, "acre"), sprayRate: quantity(15, "gal/acre", "spray") };
  const gal = (value: number) => quantity(value, "gal", "spray");

  test("what is at hand counts, what stays behind is mixed too", () => {
    expect(mixToFinish(job).toMix.in("gal")).toBe(22.5);
    const plan = mixToFinish({ ...job, atHand: gal(4), deadVolume: gal(0.5), hoseVolume: gal(1) });
    expect(plan.toMix.in("gal")).toBe(20);
    expect(plan.leftOver.in("gal")).toBe(1.5);
    const enough = mixToFinish({ ...job, atHand: gal(30) });
    expect([enough.toMix.in("gal"), enough.leftOver.in("gal")]).toEqual([0, 7.5]);
    expect(enough.mixedFor.in("acre")).toBe(0);
  });

  test("says what is wrong and where", () => {
    expect(
      errorOf(() =>
        mixToFinish({ area: quantity(-1, "acre"), sprayRate: gal(1) as never, atHand: gal(-1) }),
      ).problems.map(({ code, path }) => [code, path]),
    ).toEqual([
      ["range", "area"],
      ["unit/mismatch", "sprayRate"],
      ["range", "atHand"],
    ]);
    expect(errorOf(() => mixToFinish({ ...job, atHand: gal(-1) })).path).toBe("atHand");
    expect(errorOf(() => mixToFinish({ ...job, area: quantity(-1, "acre") })).path).toBe("area");
    expect(errorOf(() => mixToFinish({ ...job, hoseVolume: quantity(1, "gal") as never })).code).toBe(
      "substance/mismatch",
    );
  });
});
