import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { concentrateFor, dilutionAmounts, finishedFrom, strengthOf } from "../../../src/tank/index.js";
import { problemsOf } from "../../errors.js";

// What happens exactly at a limit of a dilution, and between strengths of two measures.

const finished = quantity(100, "gal", "spray");
const strength = quantity(1, "% v/v", "ai/spray");
const concentration = quantity(50, "% v/v", "ai/product");
const product = quantity(2, "gal", "product");
const take = (change: object) => () =>
  concentrateFor({ strength, concentration, finished, ...change } as never);
const make = (change: object) => () => finishedFrom({ strength, concentration, product, ...change } as never);

describe("at the limits", () => {
  test("a spray as strong as the concentrate is the concentrate", () => {
    const same = quantity(50, "% v/v", "ai/spray");
    const found = concentrateFor({ strength: same, concentration, finished });
    expect([found.product.in("gal"), found.carrier?.in("gal")]).toEqual([100, 0]);
    expect(finishedFrom({ strength: same, concentration, product }).in("gal")).toBe(2);
    expect(strengthOf({ concentration, product, finished: quantity(2, "gal", "spray") }).in("% v/v")).toBe(
      50,
    );
  });

  test("all of a spray may be the substance, by volume and by weight", () => {
    expect(
      concentrateFor({
        strength: quantity(100, "% v/v", "ai/spray"),
        concentration: quantity(100, "% v/v", "ai/product"),
        finished,
      }).product.in("gal"),
    ).toBe(100);
    // A weight per volume has no such end: 1.2 kg of it in a liter is a heavy liquid.
    expect(
      concentrateFor({
        strength: quantity(1.2, "kg/L", "ai/spray"),
        concentration: quantity(1.2, "kg/L", "ai/product"),
        finished: quantity(10, "L", "spray"),
      }).product.in("L"),
    ).toBe(10);
  });

  test("nothing of a product makes nothing, and no strength", () => {
    const none = quantity(0, "gal", "product");
    expect(finishedFrom({ strength, concentration, product: none }).value).toBe(0);
    expect(strengthOf({ concentration, product: none, finished }).value).toBe(0);
  });

  test("one in one is the product alone, and one plus a half is two thirds of it", () => {
    const alone = dilutionAmounts({ parts: 1, reading: "1 in x", finished });
    expect([alone.product.in("gal"), alone.carrier.in("gal"), alone.share.in("% v/v")]).toEqual([
      100, 0, 100,
    ]);
    const two = dilutionAmounts({ parts: 0.5, reading: "1 plus x", finished });
    expect(two.product.in("gal")).toBeCloseTo(200 / 3, 12);
    expect(dilutionAmounts({ parts: 10, reading: "1 in x", finished }).product.of).toBe("product");
    expect(dilutionAmounts({ parts: 10, reading: "1 in x", finished, product: "product:a" }).share.of).toBe(
      "product:a/spray",
    );
  });
});

describe("strengths of two measures", () => {
  const powder = quantity(40, "% w/w", "ai/product");

  test("are not held against one another: a spray may hold more in a liter than a powder in a kilogram", () => {
    const heavy = quantity(0.5, "kg/L", "ai/spray");
    const found = concentrateFor({
      strength: heavy,
      concentration: powder,
      finished: quantity(10, "L", "spray"),
    });
    expect(found.product.in("kg")).toBeCloseTo(12.5, 12);
    expect(
      finishedFrom({ strength: heavy, concentration: powder, product: quantity(12.5, "kg", "product") }).in(
        "L",
      ),
    ).toBeCloseTo(10, 12);
    // More kilograms than liters: 5 kg of it in 4 L.
    const made1 = strengthOf({
      concentration: powder,
      product: quantity(5, "kg", "product"),
      finished: quantity(4, "L", "spray"),
    });
    expect(made1.in("kg/L")).toBeCloseTo(0.5, 12);
  });

  test("by weight of a heavy spray a liquid makes no less than itself", () => {
    const liquid = quantity(0.5, "kg/L", "ai/product");
    const make1 = (percent: number) =>
      finishedFrom({
        strength: quantity(percent, "% w/w", "ai/spray"),
        concentration: liquid,
        product: quantity(2, "L", "product"),
        density: quantity(1, "kg/L"),
      });
    expect(make1(50).in("L")).toBeCloseTo(2, 12);
    expect(make1(25).in("L")).toBeCloseTo(4, 12);
    expect(problemsOf(() => make1(51))[0]).toMatchObject({
      code: "infeasible",
      path: "strength",
      expected: "a spray no stronger than the concentrate",
    });
  });

  test("a strength without a substance is of none, and refused as such", () => {
    for (const change of [{ strength: { value: 1, unit: "% v/v" } }, { finished: { value: 1, unit: "gal" } }])
      expect(problemsOf(take(change))[0]?.code).toBe("substance/mismatch");
    expect(problemsOf(make({ product: { value: 1, unit: "gal" } }))[0]?.code).toBe("substance/mismatch");
  });
});

describe("the unit that is answered in", () => {
  test("a powder for a spray in gallons is in pounds, for one in liters in kilograms", () => {
    const byWeight = {
      strength: quantity(0.1, "kg/L", "ai/spray"),
      concentration: quantity(50, "% w/w", "ai/product"),
    };
    expect(concentrateFor({ ...byWeight, finished }).product.unit).toBe("lb");
    const metric = concentrateFor({ ...byWeight, finished: quantity(10, "L", "spray") }).product;
    expect([metric.unit, metric.value]).toEqual(["kg", 2]);
  });

  test("a liquid for a spray in pounds is in gallons, for one in kilograms in liters", () => {
    const byVolume = { strength, concentration, density: quantity(1, "kg/L") };
    expect(concentrateFor({ ...byVolume, finished: quantity(10, "lb", "spray") }).product.unit).toBe("gal");
    const metric = concentrateFor({ ...byVolume, finished: quantity(10, "kg", "spray") }).product;
    expect([metric.unit, metric.value]).toEqual(["L", 0.2]);
  });

  test("the spray made of a powder is in gallons of pounds, and in liters of kilograms", () => {
    const made1 = {
      strength: quantity(0.1, "kg/L", "ai/spray"),
      concentration: quantity(50, "% w/w", "ai/product"),
    };
    expect(finishedFrom({ ...made1, product: quantity(1, "lb", "product") }).unit).toBe("gal");
    const metric = finishedFrom({ ...made1, product: quantity(2, "kg", "product") });
    expect([metric.unit, metric.value]).toEqual(["L", 10]);
  });
});
