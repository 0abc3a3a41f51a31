import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { contourVolume, meanDepth, pondVolume, waterDose } from "../../../src/site/index.js";
import { complaints } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const ft = (value: number) => quantity(value, "ft");
const m2 = (value: number) => quantity(value, "m2");
const size = fc.double({ min: 0.1, max: 50, noNaN: true });

describe("mean depth", () => {
  test("zeros count; without them a finding says so", () => {
    const whole = meanDepth({ rows: [[0, 2, 4, 2, 0].map(ft)] });
    close(whole.depth.in("ft"), 8 / 5);
    expect(whole.findings).toEqual([]);
    const cut = meanDepth({ rows: [[0, 2, 0].map(ft), [2, 4, 2].map(ft)] });
    expect(cut.findings.map(({ code, path, params }) => [code, path, params.banks])).toEqual([
      ["bank-zero-missing", "rows[1]", 2],
    ]);
  });

  test("units may differ", () => {
    close(meanDepth({ rows: [[ft(0), quantity(36, "in"), ft(0)]] }).depth.in("ft"), 1);
  });

  test("refusals", () => {
    expect(complaints(untyped(meanDepth, { rows: [] }))).toEqual(["missing rows"]);
    expect(complaints(untyped(meanDepth, { rows: [[ft(1)], [ft(0), ft(-1)]] }))).toEqual([
      "range rows[0]",
      "range rows[1][1]",
    ]);
    expect(complaints(() => meanDepth({ rows: [[ft(0), ft(0)]] }))).toEqual(["range rows"]);
  });
});

describe("contours", () => {
  test("a cone: a third of its cylinder, exact as a frustum in any number of layers", () => {
    fc.assert(
      fc.property(size, fc.integer({ min: 1, max: 12 }), (depth, layers) => {
        const areas = Array.from({ length: layers + 1 }, (_, i) => m2(100 * (1 - i / layers) ** 2));
        const interval = quantity(depth / layers, "m");
        close(contourVolume({ areas, interval, rule: "cone frustum" }).in("m3"), (100 * depth) / 3, 1e-12);
        // the area is a parabola of the depth, which the prismoidal rule takes exactly
        if (layers % 2 === 0) {
          close(contourVolume({ areas, interval, rule: "prismoidal" }).in("m3"), (100 * depth) / 3, 1e-12);
        }
        const ends = contourVolume({ areas, interval, rule: "average end area" }).in("m3");
        // sum of the trapezoids of a parabola: more by 1 / (2 n^2)
        close(ends, (100 * depth * (1 + 1 / (2 * layers * layers))) / 3, 1e-12);
      }),
    );
  });

  test("layers add up; a box is a box by every rule", () => {
    const box = [10, 10, 10].map(m2);
    for (const rule of ["average end area", "prismoidal", "cone frustum"] as const) {
      close(contourVolume({ areas: box, interval: quantity(2, "m"), rule }).in("m3"), 40);
    }
    const rule = "average end area";
    const areas = [50, 40, 12, 3].map(m2);
    const interval = [1, 2, 0.5].map((value) => quantity(value, "m"));
    const whole = contourVolume({ areas, interval, rule }).in("m3");
    const parts = [0, 1, 2].map((i) =>
      contourVolume({ areas: areas.slice(i, i + 2), interval: interval.slice(i, i + 1), rule }).in("m3"),
    );
    close(
      whole,
      parts.reduce((a, b) => a + b),
    );
  });

  test("acres and feet give acre-feet", () => {
    const areas = [2, 1].map((value) => quantity(value, "acre"));
    const volume = contourVolume({ areas, interval: ft(3), rule: "average end area" });
    expect([volume.value, volume.unit]).toEqual([4.5, "acre-ft"]);
  });

  test("refusals", () => {
    const interval = quantity(1, "m");
    expect(complaints(untyped(contourVolume, { areas: [m2(3), m2(2)], interval }))).toEqual(["missing rule"]);
    expect(complaints(() => contourVolume({ areas: [m2(3), m2(2)], interval, rule: "prismoidal" }))).toEqual([
      "conflict areas",
    ]);
    expect(
      complaints(() => contourVolume({ areas: [m2(1), m2(2), m2(0)], interval, rule: "cone frustum" })),
    ).toEqual(["conflict areas[1]"]);
    expect(
      complaints(() => contourVolume({ areas: [m2(3), m2(0), m2(0)], interval, rule: "cone frustum" })),
    ).toEqual(["range areas[1]"]);
    expect(
      complaints(() =>
        contourVolume({ areas: [m2(3), m2(2)], interval: [interval, interval], rule: "cone frustum" }),
      ),
    ).toEqual(["conflict interval"]);
  });
});

test("pond: area times depth", () => {
  expect(pondVolume({ area: quantity(2, "acre"), meanDepth: ft(4) }).toJSON()).toEqual({
    value: 8,
    unit: "acre-ft",
    of: "none",
  });
  close(pondVolume({ area: quantity(1, "ha"), meanDepth: quantity(2, "m") }).in("m3"), 20_000);
});

describe("dose of water", () => {
  const volume = quantity(1, "acre-ft");
  const concentration = quantity(1, "mg/L", "ai");

  test("1 mg/L in an acre-foot is 1233.48 g, from the exact foot", () => {
    const grams = 43_560 * 0.3048 ** 3;
    const dose = waterDose({ volume, concentration });
    close(dose.active.in("g"), grams);
    expect(dose.active.of).toBe("ai");
    close(waterDose({ surface: quantity(1, "acre"), depth: ft(1), concentration }).active.in("g"), grams);
    expect(dose.cautions.map(({ code }) => code)).toEqual(["label-first", "oxygen", "permit"]);
  });

  test("the product by weight and by volume brings the active back", () => {
    const dry = waterDose({ volume, concentration, strength: quantity(50, "% w/w", "ai/product") });
    expect([dry.product?.unit, dry.product?.of]).toEqual(["lb", "product"]);
    close(dry.product?.value ?? 0, dry.active.in("lb") * 2);
    const liquid = waterDose({ volume, concentration, strength: quantity(4, "lb/gal", "ai/product") });
    expect([liquid.product?.unit, liquid.product?.of]).toEqual(["gal", "product"]);
    close((liquid.product?.value ?? 0) * 4, liquid.active.in("lb"));
    // copper
    const copper = waterDose({
      volume: quantity(1000, "m3"),
      concentration: quantity(0.5, "mg/L", "Cu"),
      strength: quantity(25, "% w/w", "Cu/product"),
    });
    close(copper.active.in("kg"), 0.5);
    close(copper.product?.value ?? 0, 2);
    expect(copper.product?.unit).toBe("kg");
  });

  test("parts per million by weight take water as 1 kg/L, and say so", () => {
    const dose = waterDose({ volume, concentration: quantity(1, "ppm w/w", "ai/water") });
    close(dose.active.in("g"), 43_560 * 0.3048 ** 3);
    expect(dose.findings.map(({ code }) => code)).toEqual(["water-density-taken"]);
  });

  test("twice the water or the concentration is twice the dose", () => {
    fc.assert(
      fc.property(size, size, (v, c) => {
        const dose = (k: number, l: number) =>
          waterDose({
            volume: quantity(k * v, "m3"),
            concentration: quantity(l * c, "mg/L", "ai"),
          }).active.in("kg");
        close(dose(2, 1), 2 * dose(1, 1));
        close(dose(1, 2), 2 * dose(1, 1));
      }),
    );
  });

  test("refusals", () => {
    expect(complaints(untyped(waterDose, {}))).toEqual(["missing volume", "missing concentration"]);
    expect(complaints(untyped(waterDose, { volume, surface: m2(3), concentration }))).toEqual([
      "conflict volume",
    ]);
    expect(complaints(untyped(waterDose, { surface: m2(3), concentration }))).toEqual(["missing depth"]);
    expect(complaints(untyped(waterDose, { volume, concentration: { value: 1, unit: "ppm" } }))).toEqual([
      "unit/ambiguous concentration",
    ]);
    expect(
      complaints(
        untyped(waterDose, { volume, concentration, strength: quantity(25, "% w/w", "Cu/product") }),
      ),
    ).toHaveLength(1);
  });
});

test("as many contours as are taken: a thousand alike, 0.01 m apart, are a box of 9.99 m", () => {
  const areas = Array.from({ length: 1000 }, () => m2(10));
  const interval = quantity(0.01, "m");
  expect(contourVolume({ areas, interval, rule: "average end area" }).in("m3")).toBeCloseTo(99.9, 9);
});
