import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { calibrationByRefill } from "../../../src/spray/index.js";
import { loadAmounts, mixToFinish, tankLoads } from "../../../src/tank/index.js";
import { wholeShares } from "../../../src/tank/load/whole-shares.js";
import { errorOf } from "../../errors.js";

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
        applicationVolume: quantity(gpa, "gal/acre", "spray"),
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
      applicationVolume: quantity(15, "gal/acre", "spray"),
      capacity: quantity(30, "gal", "spray"),
      loadSplit: "even",
    });
    expect(plan.loads.map((load) => [load.volume.in("gal"), load.area.in("acre"), load.full])).toEqual([
      [26.25, 1.75, false],
      [26.25, 1.75, false],
    ]);
  });

  test("metric and customary inputs mix, and the area keeps its tag", () => {
    const plan = tankLoads({
      area: quantity(1, "ha", "treated"),
      applicationVolume: quantity(400, "L/ha", "spray"),
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
        (acres, gpa, tank, loadSplit) => {
          fc.pre((acres * gpa) / tank < 400);
          const plan = tankLoads({
            area: quantity(acres, "acre"),
            applicationVolume: quantity(gpa, "gal/acre", "spray"),
            capacity: quantity(tank, "gal", "spray"),
            loadSplit,
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
      applicationVolume: quantity(10, "gal/acre", "spray"),
      capacity: quantity(15, "gal", "spray"),
      residualVolume: quantity(1, "gal", "spray"),
      plumbingVolume: quantity(2, "gal", "spray"),
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
    expect(plan.leftOver.residual.in("gal")).toBe(3);
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
    const even = tankLoads({ ...job, loadSplit: "even" });
    expect(even.loads.map((load) => load.volume.in("gal"))).toEqual([11, 11, 11]);
    // One tank is enough where all of it fits, dead volume and hoses included.
    expect(tankLoads({ ...job, area: quantity(1.2, "acre") }).count).toBe(1);
    expect(tankLoads({ ...job, area: quantity(1.25, "acre") }).count).toBe(2);
  });

  test("loads of a fixed size: what is too much is left over", () => {
    const plan = tankLoads({
      area: quantity(1, "ha"),
      applicationVolume: quantity(410, "L/ha", "spray"),
      capacity: quantity(200, "L", "spray"),
      loadSplit: "fixed size",
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
        (acres, gpa, tank, dead, hose, loadSplit) => {
          fc.pre((acres * gpa) / tank < 500);
          const plan = tankLoads({
            area: quantity(acres, "acre"),
            applicationVolume: quantity(gpa, "gal/acre", "spray"),
            capacity: quantity(tank, "gal", "spray"),
            residualVolume: quantity(dead * tank, "gal", "spray"),
            plumbingVolume: quantity(hose * tank, "gal", "spray"),
            loadSplit,
            ...(loadSplit === "fixed size" && { loadSize: quantity(tank * 0.5, "gal", "spray") }),
          });
          const near = (a: number, b: number) =>
            expect(Math.abs(a - b)).toBeLessThan(1e-9 * (1 + Math.abs(b)));
          const mixed = add(plan.loads.map((load) => load.volume.value));
          expect(mixed).toBe(plan.volume.value);
          near(mixed, acres * gpa + plan.leftOver.volume.value);
          near(add(plan.loads.map((load) => load.area.value)), acres);
          near(plan.mixedFor.value * gpa, mixed);
          near(plan.smallestMix.value, acres * gpa + dead * tank + hose * tank);
          expect(plan.leftOver.volume.value).toBeGreaterThanOrEqual(
            plan.leftOver.residual.value - 1e-9 * tank,
          );
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
        applicationVolume: quantity(40, "gal/acre", "spray"),
        capacity: quantity(tank, "gal", "spray"),
        residualVolume: quantity(dead, "gal", "spray"),
        plumbingVolume: quantity(hose, "gal", "spray"),
      });
      expect(plan.count).toBe(later + 1);
      expect(plan.loads.map((load) => load.full)).toEqual(plan.loads.map(() => true));
    }
  });

  test("areas add up to the last digit with a dead volume too", () => {
    for (const [acres, gpa, tank, dead, hose, loadSplit] of [
      [7.7, 48, 260, 22, 34, "even"],
      [546.2, 22, 190, 1.4, 54, "full then partial"],
      [473.8334042905862, 20.251437034261457, 175.26019612809947, 0, 43.50343532491243, "even"],
    ] as const) {
      const plan = tankLoads({
        area: quantity(acres, "acre"),
        applicationVolume: quantity(gpa, "gal/acre", "spray"),
        capacity: quantity(tank, "gal", "spray"),
        residualVolume: quantity(dead, "gal", "spray"),
        plumbingVolume: quantity(hose, "gal", "spray"),
        loadSplit,
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
        (tenths, gpa, tank, share, loadSplit) => {
          const plan = tankLoads({
            area: quantity(tenths / 10, "acre"),
            applicationVolume: quantity(gpa, "gal/acre", "spray"),
            capacity: quantity(tank, "gal", "spray"),
            residualVolume: quantity((share * tank) / 100, "gal", "spray"),
            loadSplit,
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
        applicationVolume: quantity(15, "lb/acre", "spray") as never,
        capacity: quantity(20, "gal", "water") as never,
        loadSize: quantity(5, "gal", "spray"),
        plumbingVolume: quantity(-1, "gal", "spray"),
      }),
    );
    expect(error.problems.map(({ code, path }) => [code, path])).toEqual([
      ["range", "area"],
      ["unit/mismatch", "applicationVolume"],
      ["substance/mismatch", "capacity"],
      ["range", "plumbingVolume"],
      ["conflict", "loadSize"],
    ]);
  });

  test("says what is wrong and where", () => {
    const good = {
      area: quantity(1, "acre"),
      applicationVolume: quantity(20, "gal/acre", "spray"),
      capacity: quantity(30, "gal", "spray"),
    };
    const cases: readonly (readonly [object, string, string])[] = [
      [{ capacity: quantity(0, "gal", "spray") }, "range", "capacity"],
      [{ capacity: quantity(0.0001, "gal", "spray") }, "range", "capacity"],
      [{ capacity: quantity(30, "gal", "water") }, "substance/mismatch", "capacity"],
      [{ area: quantity(-1, "acre") }, "range", "area"],
      [{ area: quantity(1, "acre", "product") }, "substance/mismatch", "area"],
      [{ area: undefined }, "missing", "area"],
      [{ applicationVolume: quantity(20, "lb/acre", "spray") }, "unit/mismatch", "applicationVolume"],
      [{ loadSplit: "odd" }, "type", "loadSplit"],
      [{ loadSplit: "fixed size" }, "missing", "loadSize"],
      // A size that would go unread.
      [{ loadSize: quantity(10, "gal", "spray") }, "conflict", "loadSize"],
      [{ loadSplit: "even", loadSize: quantity(10, "gal", "spray") }, "conflict", "loadSize"],
      // The tank would do: what the pump leaves in it is too much.
      [{ residualVolume: quantity(29.999, "gal", "spray") }, "range", "residualVolume"],
      [{ loadSplit: "fixed size", loadSize: quantity(31, "gal", "spray") }, "range", "loadSize"],
      [{ loadSplit: "fixed size", loadSize: quantity(0.0001, "gal", "spray") }, "range", "loadSize"],
      [{ residualVolume: quantity(30, "gal", "spray") }, "range", "residualVolume"],
      [{ residualVolume: quantity(-1, "gal", "spray") }, "range", "residualVolume"],
      [
        { residualVolume: quantity(1, "gal", "spray"), plumbingVolume: quantity(29, "gal", "spray") },
        "range",
        "plumbingVolume",
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
    applicationVolume: quantity(15, "gal/acre", "spray"),
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

  test("measured amounts are whole steps that add up, and the exact ones add up to the total", () => {
    fc.assert(
      fc.property(
        positive(80),
        positive(60),
        positive(200),
        positive(20),
        fc.constantFrom(0.1, 0.25, 0.5, 1, 5),
        (acres, gpa, tank, rate, step) => {
          fc.pre((acres * gpa) / tank < 300);
          // No more product than spray.
          fc.pre(rate / 128 < gpa * 0.9 && step / 128 < 0.1 * Math.min(tank, acres * gpa));
          const some = tankLoads({
            area: quantity(acres, "acre"),
            applicationVolume: quantity(gpa, "gal/acre", "spray"),
            capacity: quantity(tank, "gal", "spray"),
          });
          // A last load of a few drops cannot hold a step; it is refused, see below.
          fc.pre(some.loads.every(({ volume }) => step < volume.in("fl oz")));
          const plan = loadAmounts({
            loads: some,
            products: [{ id: "a", rate: quantity(rate, "fl oz/acre", "product:a"), form: "liquid" }],
            increments: { liquid: { unit: "fl oz", step } },
          });
          const product = plan.products[0];
          const shares = product?.loads ?? [];
          const total = product?.total.value as number;
          expect(add(shares.map((load) => load.steps as number))).toBe(product?.measured?.steps);
          expect(Math.abs((product?.measured?.steps as number) * step - total)).toBeLessThanOrEqual(
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
          increment: { unit: "oz", step: 1 },
        },
      ],
      increments: { dry: { unit: "lb", step: 0.5 } },
    });
    const [a, b] = plan.products;
    // 3.1 x 3.5 = 10.85 lb; the nearest half pound is 11.
    expect(a?.measured?.total.value).toBe(11);
    expect(a?.measured?.residue.value).toBeCloseTo(0.15, 12);
    expect(a?.loads.map((load) => load.amount.value)).toEqual([4, 4.5, 2.5]);
    expect(b?.loads.map((load) => load.amount.value)).toEqual([0, 0, 0]);
    expect(plan.findings.map(({ code, path }) => [code, path])).toEqual([
      ["load/step-too-coarse", "products[1].increment"],
      ["load/step-too-coarse", "products[1].increment"],
      ["load/step-too-coarse", "products[1].increment"],
    ]);
  });

  test("the weakest and the strongest spray of a label, at a reduced volume", () => {
    const at = (litersPerHectare: number, dose: number) =>
      loadAmounts({
        loads: tankLoads({
          area: quantity(1, "ha"),
          applicationVolume: quantity(litersPerHectare, "L/ha", "spray"),
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
        applicationVolume: quantity(2, "gal/1000 ft2", "spray"),
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
          applicationVolume: quantity(20, "gal/acre", "spray"),
          capacity: quantity(gallons, "gal", "spray"),
        }),
        products: [
          {
            id: "a",
            rate: quantity(4, "oz/acre", "product:a"),
            form: "dry",
            least: { value: 8, unit: "oz" },
            increment: { unit: "oz", step: 8 },
          },
        ],
      });
    // 40 gal take one packet; 20 gal take half of one.
    expect(some(40).products[0]?.loads.map((load) => load.amount.value)).toEqual([8, 8, 8]);
    const error = errorOf(() => some(20));
    expect([error.code, error.path]).toEqual(["infeasible", "products[0].least"]);
    expect(error.expected).toContain("a full tank takes at this rate, 4 oz");
  });

  test("even loads are advised only where they would help", () => {
    const textOf = (
      acres: number,
      least: number,
      loadSplit: "even" | "full then partial" = "full then partial",
    ) =>
      loadAmounts({
        loads: tankLoads({
          area: quantity(acres, "acre"),
          applicationVolume: quantity(15, "gal/acre", "spray"),
          capacity: quantity(30, "gal", "spray"),
          loadSplit,
        }),
        products: [
          {
            id: "a",
            rate: quantity(3, "lb/acre", "product:a"),
            form: "dry",
            least: { value: least, unit: "lb" },
          },
        ],
      }).findings.map(({ text }) => text.includes("even loads"));
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
      expect(errorOf(() => loadAmounts({ loads: forged as never, products: [] })).path).toMatch(/^loads/);
  });

  test("takes loads that have been through JSON", () => {
    const products = [{ id: "a", rate: quantity(3, "lb/acre", "product:a"), form: "dry" }] as const;
    const stored = JSON.parse(JSON.stringify(loads));
    expect(loadAmounts({ loads: stored, products })).toEqual(loadAmounts({ loads, products }));
  });

  const a = { id: "a", rate: quantity(3, "lb/acre", "product:a"), form: "dry" } as const;
  test.each<readonly [change: object, code: string, path: string]>([
    [{ products: [a, a] }, "duplicate", "products[1].id"],
    [{ products: [a, { ...a, id: "" }] }, "missing", "products[1].id"],
    [{ products: [{ ...a, form: "liquid" }] }, "missing", "products[0].density"],
    [{ products: [{ ...a, rate: quantity(3, "lb/acre") }] }, "substance/mismatch", "products[0].rate"],
    [
      { products: [a], increments: { dry: { unit: "fl oz", step: 1 } } },
      "unit/mismatch",
      "increments.dry.unit",
    ],
    [{ products: [a], increments: { dry: { unit: "oz", step: 0 } } }, "range", "increments.dry.step"],
    [{ products: [a], loads: {} }, "missing", "loads"],
    [{ products: [a], increments: { dry: null } }, "type", "increments.dry"],
    [{ products: [{ ...a, increment: 1 }] }, "type", "products[0].increment"],
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
  ])("refuses %j: %s %s", (change, code, path) => {
    const error = errorOf(() => loadAmounts({ loads, ...change } as never));
    expect([error.code, error.path]).toEqual([code, path]);
  });
});

describe("whole shares", () => {
  test("noise at a half step takes nothing back from a later load", () => {
    // The running sum rounds up to 3 steps, the total down to 2.
    expect(wholeShares([2.5, 0], 2.4999999999999996)).toEqual([2, 0]);
    expect(wholeShares([2.5, 2.5], 5)).toEqual([3, 2]);
    expect(wholeShares([0.4, 0.4, 0.4, 0.4], 1.6)).toEqual([0, 1, 0, 1]);
  });
});

describe("mixToFinish", () => {
  const job = { area: quantity(1.5, "acre"), applicationVolume: quantity(15, "gal/acre", "spray") };
  const gal = (value: number) => quantity(value, "gal", "spray");

  test("what is at hand counts, what stays behind is mixed too", () => {
    expect(mixToFinish(job).toMix.in("gal")).toBe(22.5);
    const plan = mixToFinish({ ...job, atHand: gal(4), residualVolume: gal(0.5), plumbingVolume: gal(1) });
    expect(plan.toMix.in("gal")).toBe(20);
    expect(plan.leftOver.in("gal")).toBe(1.5);
    const enough = mixToFinish({ ...job, atHand: gal(30) });
    expect([enough.toMix.in("gal"), enough.leftOver.in("gal")]).toEqual([0, 7.5]);
    expect(enough.mixedFor.in("acre")).toBe(0);
  });

  test("says what is wrong and where", () => {
    expect(
      errorOf(() =>
        mixToFinish({ area: quantity(-1, "acre"), applicationVolume: gal(1) as never, atHand: gal(-1) }),
      ).problems.map(({ code, path }) => [code, path]),
    ).toEqual([
      ["range", "area"],
      ["unit/mismatch", "applicationVolume"],
      ["range", "atHand"],
    ]);
    expect(errorOf(() => mixToFinish({ ...job, atHand: gal(-1) })).path).toBe("atHand");
    expect(errorOf(() => mixToFinish({ ...job, area: quantity(-1, "acre") })).path).toBe("area");
    expect(errorOf(() => mixToFinish({ ...job, plumbingVolume: quantity(1, "gal") as never })).code).toBe(
      "substance/mismatch",
    );
  });
});

describe("a last load that is too small to agitate", () => {
  // 445.5 gal with what tank and hoses keep: 150 first, then 145 on top of the 5 gal that the pump leaves.
  const job = {
    area: quantity(10, "acre"),
    applicationVolume: quantity(43.65, "gal/acre", "spray"),
    capacity: quantity(150, "gal", "spray"),
    residualVolume: quantity(5, "gal", "spray"),
    plumbingVolume: quantity(4, "gal", "spray"),
  };

  test("is a finding with the size of even loads", () => {
    const plan = tankLoads(job);
    [150, 145, 145, 5.5].forEach((volume, i) => {
      expect(plan.loads[i]?.volume.in("gal")).toBeCloseTo(volume, 9);
    });
    expect(plan.findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["load/small-last", "caution"],
    ]);
    expect(plan.findings[0]?.params.even).toBeCloseTo(445.5 / 4, 9);
  });

  test("is no finding where the loads are even", () => {
    const plan = tankLoads({ ...job, loadSplit: "even" });
    expect(plan.findings).toEqual([]);
    for (const load of plan.loads) expect(load.volume.in("gal")).toBeCloseTo(445.5 / 4, 9);
  });

  test("takes from the load before it what the least load asks for", () => {
    const plan = tankLoads({ ...job, leastLoad: quantity(40, "gal", "spray") });
    [150, 145, 110.5, 40].forEach((volume, i) => {
      expect(plan.loads[i]?.volume.in("gal")).toBeCloseTo(volume, 9);
    });
    expect(add(plan.loads.map((load) => load.area.value))).toBeCloseTo(10, 12);
  });

  test("keeps the area of each load in step with its volume where nothing is held back", () => {
    const plan = tankLoads({
      area: quantity(2.1, "acre"),
      applicationVolume: quantity(15, "gal/acre", "spray"),
      capacity: quantity(30, "gal", "spray"),
      leastLoad: quantity(10, "gal", "spray"),
    });
    plan.loads.forEach((load) => {
      expect(load.area.in("acre") * 15).toBeCloseTo(load.volume.in("gal"), 9);
    });
  });

  test("is refused where the last two loads cannot both hold the least, and even loads are named", () => {
    const error = errorOf(() => tankLoads({ ...job, leastLoad: quantity(80, "gal", "spray") }));
    expect([error.code, error.path]).toEqual(["infeasible", "leastLoad"]);
    expect(error.expected).toContain('even loads (loadSplit "even") are 111.4 gal each');
  });

  test("is refused where the whole job is less, and the way on is named", () => {
    const error = errorOf(() =>
      tankLoads({ ...job, area: quantity(0.5, "acre"), leastLoad: quantity(40, "gal", "spray") }),
    );
    expect([error.code, error.path]).toEqual(["infeasible", "leastLoad"]);
    expect(error.expected).toContain('"fixed size"');
  });
});

describe("more product than a load can hold", () => {
  const loads = tankLoads({
    area: quantity(1, "acre"),
    applicationVolume: quantity(50, "gal/acre", "spray"),
    capacity: quantity(50, "gal", "spray"),
  });
  const amounts = (
    ...rates: readonly { readonly value: number; readonly unit: string; readonly of?: string }[]
  ) =>
    loadAmounts({
      loads,
      products: rates.map((rate, i) => ({
        id: `p${i}`,
        rate: { value: rate.value, unit: rate.unit, of: rate.of ?? `product:p${i}/spray` },
        form: rate.unit.startsWith("lb") ? "dry" : "liquid",
      })) as never,
    });

  test("120 % v/v is refused, and the recipe per 100 gal is named", () => {
    const error = errorOf(() => amounts({ value: 120, unit: "% v/v" }));
    expect([error.code, error.path]).toEqual(["range", "products[0].rate"]);
    expect(error.expected).toContain("perVolume");
  });

  test("100 % v/v is the undiluted product, and no error", () => {
    expect(amounts({ value: 100, unit: "% v/v" }).products[0]?.total.value).toBe(50);
  });

  test("17 lb/gal, meant per 100 gal, is refused", () => {
    const error = errorOf(() => amounts({ value: 17, unit: "lb/gal" }));
    expect([error.code, error.path]).toEqual(["range", "products[0].rate"]);
    expect(error.expected).toContain("100, ");
  });

  test("4 lb/gal is a finding that names the slip", () => {
    const { findings } = amounts({ value: 4, unit: "lb/gal" });
    expect(findings.map(({ code, severity }) => [code, severity])).toEqual([
      ["load/much-dry-product", "warning"],
    ]);
    expect(findings[0]?.text).toContain("Is its rate per 100 gal, and not per gal?");
  });

  test("17 lb per 100 gal is neither", () => {
    expect(amounts({ value: 0.17, unit: "lb/gal" }).findings).toEqual([]);
  });

  test("two liquids that together are more than the load are refused", () => {
    const error = errorOf(() => amounts({ value: 60, unit: "% v/v" }, { value: 55, unit: "% v/v" }));
    expect([error.code, error.path]).toEqual(["infeasible", "products[0].rate"]);
    expect(error.expected).toContain("115 %");
  });

  test("a rate per area that needs more than the load is refused too", () => {
    const error = errorOf(() => amounts({ value: 60, unit: "gal/acre", of: "product:p0" }));
    expect([error.code, error.path]).toEqual(["infeasible", "products[0].rate"]);
  });

  test("more product than water is a finding", () => {
    expect(amounts({ value: 60, unit: "% v/v" }).findings.map(({ code }) => code)).toEqual([
      "load/more-product-than-water",
    ]);
  });
});

describe("a calibration with water goes into loads", () => {
  const capacity = quantity(50, "gal", "spray");
  const area = quantity(2, "acre");
  const measured = calibrationByRefill({
    refills: [quantity(2.1, "gal", "water"), quantity(1.9, "gal", "water")],
    area: quantity(0.1, "acre"),
  });

  test("as the record, its rate or its estimate: as heavy as water, which the result says", () => {
    for (const applicationVolume of [
      measured,
      measured.rate,
      measured.estimate as NonNullable<typeof measured.estimate>,
    ]) {
      const plan = tankLoads({ area, capacity, applicationVolume });
      expect(plan.applicationVolume.of).toBe("spray");
      expect(plan.applicationVolume.in("gal/acre")).toBeCloseTo(20, 12);
      expect(plan.volume.in("gal")).toBeCloseTo(40, 12);
      expect(plan.findings.map(({ code }) => code)).toEqual(["spray/as-heavy-as-water"]);
    }
  });

  test("by the density of the spray where it is given", () => {
    // sqrt(8.34 / 10.65) of 20 gal/acre.
    const plan = tankLoads({
      area,
      capacity,
      applicationVolume: measured,
      density: quantity(10.65, "lb/gal"),
    });
    expect(plan.applicationVolume.in("gal/acre")).toBeCloseTo(20 * Math.sqrt(8.34 / 10.65), 9);
    expect(plan.findings).toEqual([]);
  });

  test("its standard error goes through to what a tank covers and what the job takes", () => {
    const plan = tankLoads({ area, capacity, applicationVolume: measured });
    const relative = (measured.estimate?.standardError.value as number) / measured.rate.value;
    expect(plan.estimates?.areaPerTank.standardError.in("acre")).toBeCloseTo(2.5 * relative, 12);
    expect(plan.estimates?.smallestMix.standardError.in("gal")).toBeCloseTo(40 * relative, 12);
  });

  test("a volume of spray needs nothing carried over", () => {
    const plan = tankLoads({ area, capacity, applicationVolume: quantity(20, "gal/acre", "spray") });
    expect([plan.findings, plan.estimates]).toEqual([[], undefined]);
  });

  test("another substance is refused", () => {
    const wrong = quantity(20, "gal/acre", "product") as never;
    expect(errorOf(() => tankLoads({ area, capacity, applicationVolume: wrong })).path).toBe(
      "applicationVolume",
    );
  });

  test("a flow is refused, and the function that makes it a volume per area is named", () => {
    const wrong = quantity(0.4, "gal/min", "spray") as never;
    expect(errorOf(() => tankLoads({ area, capacity, applicationVolume: wrong })).expected).toContain(
      "applicationVolume()",
    );
  });
});

test.each(["areaa", "deadVolume", "sprayRate"])("tankLoads refuses the unknown field %s", (name) => {
  const job = {
    area: quantity(1, "acre"),
    applicationVolume: quantity(20, "gal/acre", "spray"),
    capacity: quantity(50, "gal", "spray"),
    [name]: quantity(1, "gal", "spray"),
  };
  expect(errorOf(() => tankLoads(job)).path).toBe(`input.${name}`);
});
