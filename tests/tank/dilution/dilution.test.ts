import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { concentrateFor, dilutionAmounts, finishedFrom, strengthOf } from "../../../src/tank/index.js";
import { complaint, errorOf } from "../../errors.js";

const finished = quantity(100, "gal", "spray");
const positive = fc.double({ min: 0.01, max: 100, noNaN: true });

describe("concentrateFor", () => {
  test("needs the density of a volume of spray for a strength by weight in weight, and no other time", () => {
    const strength = quantity(1, "% w/w", "ai/spray");
    const concentration = quantity(4, "lb/gal", "ai/product");
    expect(complaint(() => concentrateFor({ strength, concentration, finished }))).toBe("missing density");
    const at = (density: number) =>
      concentrateFor({ strength, concentration, finished, density: quantity(density, "lb/gal") }).product;
    expect(at(8).in("pt")).toBeCloseTo(16, 10);
    expect(at(8.34).in("pt")).toBeCloseTo(16.68, 10);
    // The other way round: parts by volume of a spray that is weighed.
    const byVolume = {
      strength: quantity(1, "% v/v", "ai/spray"),
      concentration: quantity(50, "% v/v", "ai/product"),
      finished: quantity(834, "lb", "spray"),
    };
    expect(errorOf(() => concentrateFor(byVolume)).message).toContain("a strength by volume of a weight");
    expect(concentrateFor({ ...byVolume, density: quantity(8.34, "lb/gal") }).product.in("gal")).toBeCloseTo(
      2,
      10,
    );
    const weight = quantity(834, "lb", "spray");
    expect(concentrateFor({ strength, concentration, finished: weight }).product.in("pt")).toBeCloseTo(
      16.68,
      10,
    );
  });

  test("weighs a powder, measures a liquid and fills up with the rest", () => {
    const dust = concentrateFor({
      strength: quantity(5, "% w/w", "ai/spray"),
      concentration: quantity(80, "% w/w", "ai/product:carbaryl"),
      finished: quantity(10, "lb", "spray"),
    });
    expect(dust.product.in("lb")).toBeCloseTo(0.625, 12);
    expect(dust.product.of).toBe("product:carbaryl");
    expect(dust.carrier?.in("oz")).toBeCloseTo(150, 10);
    const powder = concentrateFor({
      strength: quantity(0.1, "% w/v", "ai/spray"),
      concentration: quantity(50, "% w/w", "ai/product"),
      finished: quantity(10, "L", "spray"),
    });
    expect(powder.product.in("g")).toBeCloseTo(20, 10);
    expect(powder).not.toHaveProperty("carrier");
  });

  test("refuses a spray stronger than the concentrate, mixed measures and other substances", () => {
    const base = {
      strength: quantity(10, "% v/v", "ai/spray"),
      concentration: quantity(5, "% v/v", "ai/product"),
      finished,
    };
    expect(complaint(() => concentrateFor(base))).toBe("infeasible strength");
    const same = { ...base, concentration: quantity(10, "% v/v", "ai/product") };
    expect(concentrateFor(same).carrier?.in("gal")).toBe(0);
    const other = (more: object): string => complaint(() => concentrateFor({ ...base, ...more } as never));
    expect(other({ concentration: quantity(50, "% w/v", "ai/product") })).toBe("unit/mismatch concentration");
    expect(other({ concentration: quantity(50, "% v/v", "ae/product") })).toBe(
      "substance/mismatch concentration",
    );
    expect(other({ concentration: quantity(0, "% v/v", "ai/product") })).toBe("range concentration");
    expect(other({ concentration: quantity(101, "% v/v", "ai/product") })).toBe("range concentration");
    expect(other({ concentration: quantity(50, "% v/v", "ai/spray") })).toBe(
      "substance/mismatch concentration",
    );
    expect(other({ strength: quantity(50, "% v/v", "ai/product") })).toBe("substance/mismatch strength");
    expect(other({ strength: undefined })).toBe("missing strength");
    expect(other({ strength: quantity(5, "%") })).toBe("unit/mismatch strength");
    expect(other({ finished: quantity(0, "gal", "spray") })).toBe("range finished");
    expect(other({ finished: quantity(1, "gal", "water") })).toBe("substance/mismatch finished");
    expect(other({ finished: { value: Number.NaN, unit: "gal", of: "spray" } })).toBe("not-finite finished");
  });

  test("refuses a powder that is weaker than the spray, also where the spray is measured by volume", () => {
    const strong = {
      strength: quantity(60, "% w/w", "ai/spray"),
      concentration: quantity(50, "% w/w", "ai/product"),
      finished,
      density: quantity(8.34, "lb/gal"),
    };
    expect(complaint(() => concentrateFor(strong))).toBe("infeasible strength");
    const { finished: _, ...rest } = strong;
    expect(complaint(() => finishedFrom({ ...rest, product: quantity(1, "lb", "product") }))).toBe(
      "infeasible strength",
    );
    expect(complaint(() => concentrateFor(null as never))).toBe("type input");
  });

  test("takes what JSON left of its input", () => {
    const input = {
      strength: quantity(2, "% v/v", "ai/spray"),
      concentration: quantity(50, "% v/v", "ai/product"),
      finished,
    };
    const back = JSON.parse(JSON.stringify(input)) as typeof input;
    expect(JSON.stringify(concentrateFor(back))).toBe(JSON.stringify(concentrateFor(input)));
  });

  test("is turned round by strengthOf and finishedFrom", () => {
    fc.assert(
      fc.property(positive, positive, positive, (weak, more, gallons) => {
        const strength = quantity(weak / 2, "g/L", "ai/spray");
        const concentration = quantity(weak / 2 + more, "g/L", "ai/product");
        const spray = quantity(gallons, "gal", "spray");
        const { product, carrier } = concentrateFor({ strength, concentration, finished: spray });
        expect(product.in("gal") + (carrier?.in("gal") ?? 0)).toBeCloseTo(gallons, 9);
        expect(strengthOf({ product, concentration, finished: spray }).in("g/L") / (weak / 2)).toBeCloseTo(
          1,
          9,
        );
        expect(finishedFrom({ product, concentration, strength }).in("gal") / gallons).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe("strengthOf and finishedFrom", () => {
  test("answer in the measures of who asks, and refuse a spray that its concentrate overfills", () => {
    const concentration = quantity(50, "% w/w", "ai/product");
    const strength = quantity(5, "g/L", "ai/spray");
    // 1 kg of 50 % has 500 g, for 100 L at 5 g/L.
    const metric = finishedFrom({ product: quantity(1, "kg", "product"), concentration, strength });
    expect([metric.unit, Number(metric.value.toFixed(9))]).toEqual(["L", 100]);
    const US = finishedFrom({ product: quantity(1, "lb", "product"), concentration, strength });
    expect([US.unit, Number(US.in("L").toFixed(6))]).toEqual(["gal", 45.359237]);
    const made = (unit: "gal" | "L") =>
      strengthOf({
        product: quantity(1, "kg", "product"),
        concentration,
        finished: quantity(100, unit, "spray"),
      }).unit;
    expect([made("L"), made("gal")]).toEqual(["kg/L", "lb/gal"]);
    // 1 kg makes 50 kg of spray of 1 % by weight: 40 L at 1.25 kg/L.
    const heavy = finishedFrom({
      product: quantity(1, "kg", "product"),
      concentration,
      strength: quantity(1, "% w/w", "ai/spray"),
      density: quantity(1.25, "kg/L"),
    });
    expect(heavy.in("L")).toBeCloseTo(40, 9);
    // 60 kg of active in 100 L of spray; at 0.5 kg/L that is 120 L of concentrate.
    expect(
      complaint(() =>
        concentrateFor({
          strength: quantity(60, "% w/w", "ai/spray"),
          concentration: quantity(500, "g/L", "ai/product"),
          finished: quantity(100, "L", "spray"),
          density: quantity(1, "kg/L"),
        }),
      ),
    ).toBe("infeasible strength");
  });

  test("refuse more product than spray", () => {
    const concentration = quantity(50, "% v/v", "ai/product");
    const product = quantity(2, "gal", "product");
    expect(
      complaint(() => strengthOf({ product, concentration, finished: quantity(1, "gal", "spray") })),
    ).toBe("infeasible product");
    expect(
      complaint(() => finishedFrom({ product, concentration, strength: quantity(60, "% v/v", "ai/spray") })),
    ).toBe("infeasible strength");
    expect(
      complaint(() =>
        strengthOf({ product: quantity(2, "lb", "product"), concentration, finished } as never),
      ),
    ).toBe("unit/mismatch product");
    expect(complaint(() => strengthOf({ concentration, finished } as never))).toBe("missing product");
    // strengthOf takes no density: a weight of spray is the wrong measure, not a missing density.
    expect(
      complaint(() =>
        strengthOf({ product, concentration, finished: quantity(100, "lb", "spray") } as never),
      ),
    ).toBe("unit/mismatch finished");
    expect(complaint(() => strengthOf({ product, concentration } as never))).toBe("missing finished");
  });
});

describe("dilutionAmounts", () => {
  test("tells 1 in x from 1 plus x", () => {
    fc.assert(
      fc.property(positive, (x) => {
        const plus = dilutionAmounts({ parts: x, reading: "1 plus x", finished });
        const inside = dilutionAmounts({ parts: x + 1, reading: "1 in x", finished });
        expect(plus.product.in("gal")).toBeCloseTo(inside.product.in("gal"), 9);
        expect(plus.carrier.in("gal") / plus.product.in("gal") / x).toBeCloseTo(1, 9);
      }),
    );
  });

  test("has no default reading and no impossible parts", () => {
    expect(complaint(() => dilutionAmounts({ parts: 10, finished } as never))).toBe("missing reading");
    expect(complaint(() => dilutionAmounts({ parts: 10, reading: "1:10", finished } as never))).toBe(
      "type reading",
    );
    expect(complaint(() => dilutionAmounts({ parts: 0.5, reading: "1 in x", finished }))).toBe("range parts");
    expect(complaint(() => dilutionAmounts({ parts: 0, reading: "1 plus x", finished }))).toBe("range parts");
    expect(complaint(() => dilutionAmounts({ parts: Number.NaN, reading: "1 plus x", finished }))).toBe(
      "not-finite parts",
    );
    const { message } = errorOf(() =>
      dilutionAmounts({ parts: 0, reading: "1:10", product: "wetter" } as never),
    );
    for (const path of ["parts", "reading", "finished", "product"]) expect(message).toContain(`${path}: `);
    const named = dilutionAmounts({ parts: 9, reading: "1 plus x", finished, product: "product:wetter" });
    expect(named.share.of).toBe("product:wetter/spray");
    expect(named.product.of).toBe("product:wetter");
  });
});
