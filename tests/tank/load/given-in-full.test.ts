import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  amountFor,
  areaPerTank,
  impliedAreaRate,
  loadAmounts,
  mixToFinish,
  strengthForAreaRate,
  tankLoads,
} from "../../../src/tank/index.js";

// Every field that may be stated is read: a spray that is heavier than water, an error, one end of a range.

const gallons = (value: number) => quantity(value, "gal", "spray");
const job = {
  area: quantity(10, "acre"),
  applicationVolume: quantity(20, "gal/acre", "spray"),
  capacity: gallons(50),
};
const powder = { id: "a", form: "dry", rate: quantity(2, "lb/acre", "product:a") } as const;

describe("a calibration with water, and the density of the spray", () => {
  const water = quantity(20, "gal/acre", "water");
  // 2.25 times as heavy as water: nozzles give two thirds of it.
  const density = quantity(2.25 * 8.345404, "lb/gal");
  const near = (value: number, wanted: number): void => expect(value / wanted).toBeCloseTo(1, 3);

  test("of a heavy spray a tank covers more, and a job takes less", () => {
    near(areaPerTank({ capacity: gallons(50), applicationVolume: water, density }).in("acre"), 3.75);
    near(tankLoads({ ...job, applicationVolume: water, density }).volume.in("gal"), 400 / 3);
    near(mixToFinish({ area: job.area, applicationVolume: water, density }).needed.in("gal"), 400 / 3);
  });

  test("a rate in the spray comes to less per area, and one per area makes a stronger spray", () => {
    const inSpray = quantity(1, "lb/gal", "product:a/spray");
    near(impliedAreaRate({ rate: inSpray, applicationVolume: water, density }).in("lb/acre"), 40 / 3);
    near(strengthForAreaRate({ rate: powder.rate, applicationVolume: water, density }).in("lb/gal"), 0.15);
  });

  test("without a density the spray is taken to be as heavy as water, and that is said", () => {
    const { findings, volume } = tankLoads({ ...job, applicationVolume: water });
    expect(volume.in("gal")).toBe(200);
    expect(findings).toHaveLength(1);
    expect(tankLoads({ ...job, applicationVolume: water, density }).findings.length).toBeLessThanOrEqual(1);
    expect(tankLoads(job).findings).toEqual([]);
  });
});

describe("an error of the application volume", () => {
  const estimate = (more: object) =>
    ({
      type: "estimate",
      version: 1,
      value: job.applicationVolume,
      standardError: quantity(1, "gal/acre", "spray"),
      ...more,
    }) as never;

  test("is that of what a tank covers and of the mix, by the same share", () => {
    const { estimates } = tankLoads({ ...job, applicationVolume: estimate({ degreesOfFreedom: 4 }) });
    // 5 % of 2.5 acres and of 200 gal.
    expect(estimates?.areaPerTank.standardError.in("acre")).toBeCloseTo(0.125, 12);
    expect(estimates?.smallestMix.standardError.in("gal")).toBeCloseTo(10, 12);
    expect(estimates?.areaPerTank.degreesOfFreedom).toBe(4);
    expect(estimates?.smallestMix.degreesOfFreedom).toBe(4);
    expect(estimates?.smallestMix.value.in("gal")).toBe(200);
  });

  test("has degrees of freedom only where they are stated, and none is none", () => {
    const { estimates } = tankLoads({ ...job, applicationVolume: estimate({}) });
    expect(estimates?.areaPerTank).not.toHaveProperty("degreesOfFreedom");
    expect(tankLoads(job)).not.toHaveProperty("estimates");
  });
});

describe("one end of a range", () => {
  const limit = (pounds: number) => quantity(pounds, "lb/gal", "product:a/spray");
  const codes = (rule: object) =>
    loadAmounts({
      loads: tankLoads({ ...job, area: quantity(2.5, "acre") }),
      products: [{ ...powder, concentration: { source: "the label", ...rule } }],
    }).findings.map(({ code }) => code);

  // 2 lb/acre in 20 gal/acre are 0.1 lb/gal.
  test("alone is held against the spray", () => {
    expect(codes({ max: limit(0.1) })).toEqual([]);
    expect(codes({ max: limit(0.09) })).toEqual(["load/concentration-above-maximum"]);
    expect(codes({ min: limit(0.1) })).toEqual([]);
    expect(codes({ min: limit(0.11) })).toEqual(["load/concentration-below-minimum"]);
  });

  test("a range of one strength is a range", () => {
    expect(codes({ min: limit(0.1), max: limit(0.1) })).toEqual([]);
  });
});

describe("what a scale shows", () => {
  const told = (ounces: number) =>
    loadAmounts({
      loads: tankLoads({ ...job, area: quantity(1, "acre") }),
      products: [{ ...powder, rate: quantity(ounces, "oz/acre", "product:a") }],
      increments: { dry: { unit: "oz", step: 1 } },
    }).findings.map(({ text }) => text);

  test("more or less than was computed by a tenth is taken, beyond it is told which way", () => {
    expect(told(10.4)).toEqual([]);
    expect(told(1.4)).toEqual([
      "Load 1 gets 1 oz by weight of a where 1.4 oz by weight is computed, 29 % less: a measuring increment of 1 oz by weight is too coarse for what it needs.",
    ]);
    expect(told(1.6)[0]).toContain("gets 2 oz by weight of a where 1.6 oz by weight is computed, 25 % more:");
    expect(told(3)).toEqual([]);
    // 9.09 computed and 10 measured would be a tenth; nine of it are a hundredth less.
    expect(told(9.09)).toEqual([]);
  });

  test("the least of a product may be a quantity of it, with all its fields", () => {
    const least = quantity(0.5, "lb", "product:a").toJSON();
    const product = { ...powder, least: { ...least, dimension: "mass" } } as never;
    expect(loadAmounts({ loads: tankLoads(job), products: [product] }).findings).toEqual([]);
  });
});

test("a recipe without a substance is of none, and refused as such", () => {
  const rate = { value: 2, unit: "pt", per: { value: 100, unit: "gal" } };
  expect(() => amountFor({ rate, form: "liquid", sprayVolume: gallons(50) } as never)).toThrow(
    /an amount of product, such as product:feed-a/,
  );
});
