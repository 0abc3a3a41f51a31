import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { loadAmounts, mixToFinish, tankLoads } from "../../../src/tank/index.js";

const gallons = (value: number) => quantity(value, "gal", "spray");
const job = {
  area: quantity(2.1, "acre"),
  applicationVolume: quantity(15, "gal/acre", "spray"),
  capacity: gallons(30),
};

describe("tankLoads", () => {
  test("a whole job of less than a tenth of the tank is told, as a small last load is", () => {
    const small = tankLoads({ ...job, area: quantity(5000, "ft2") });
    expect(small.findings.map(({ code }) => code)).toEqual(["load/small"]);
    expect(small.findings[0]?.text).toContain("1.722 gal");
    expect(tankLoads({ ...job, area: quantity(0.2, "acre") }).findings).toEqual([]);
    expect(tankLoads({ ...job, loadSplit: "even", area: quantity(5000, "ft2") }).findings).toHaveLength(1);
  });

  test("what loads of a fixed size mix beyond the job is told, without what tank and hoses keep", () => {
    const fixed = tankLoads({
      ...job,
      loadSplit: "fixed size",
      loadSize: gallons(20),
      residualVolume: gallons(1),
    });
    // 31.5 gal for the area and 1 gal that stays; two loads of 20 are 7.5 gal too much.
    expect(fixed.findings.map(({ code, params }) => [code, params.over])).toEqual([["load/mixed-over", 7.5]]);
    const fits = tankLoads({ ...job, loadSplit: "fixed size", loadSize: gallons(10.5) });
    expect(fits.findings).toEqual([]);
  });
});

describe("loadAmounts", () => {
  const amounts = (rate: number) =>
    loadAmounts({
      loads: tankLoads({ ...job, area: quantity(1, "acre") }),
      products: [{ id: "a", form: "dry", rate: quantity(rate, "oz/acre", "product:a") }],
      increments: { dry: { unit: "oz", step: 1 } },
    });

  test("an amount that rounding nearly doubles is a finding", () => {
    const found = amounts(0.55);
    expect(found.products[0]?.loads[0]?.amount.value).toBe(1);
    expect(found.findings.map(({ code }) => code)).toEqual(["load/step-too-coarse"]);
    expect(found.findings[0]?.text).toBe(
      "Load 1 gets 1 oz by weight of a where 0.55 oz by weight is computed, 82 % more: a measuring increment of 1 oz by weight is too coarse for what it needs.",
    );
  });

  test("a tenth either way is within what is told", () => {
    expect(amounts(10.4).findings).toEqual([]);
    expect(amounts(1.2).findings[0]?.params.percent).toBeCloseTo(-100 / 6, 9);
  });
});

test("mixToFinish answers in the unit of the area", () => {
  const found = mixToFinish({
    area: quantity(0.5, "ha"),
    applicationVolume: quantity(20, "gal/acre", "spray"),
    atHand: gallons(10),
  });
  // 0.5 ha are 1.2355 acre, which take 24.71 gal; 14.71 gal go on 0.7355 acre, 0.2977 ha.
  expect(found.mixedFor.unit).toBe("ha");
  expect(found.mixedFor.value).toBeCloseTo(0.29766, 5);
});
