import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  checkAgainstTarget,
  confidenceInterval,
  coverageFactor,
  type Estimate,
  estimateOfProduct,
  meanEstimate,
  readingsFor,
  statedEstimate,
} from "../../../src/numeric/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const percent = (value: number) => quantity(value, "%");
const gpa = (value: number) => quantity(value, "gal/acre", "spray");

describe("coverageFactor", () => {
  // The two-sided table that every statistics text prints (from memory), to its three places.
  test.each([
    [1, 6.314, 12.706, 63.657],
    [2, 2.92, 4.303, 9.925],
    [3, 2.353, 3.182, 5.841],
    [4, 2.132, 2.776, 4.604],
    [5, 2.015, 2.571, 4.032],
    [9, 1.833, 2.262, 3.25],
    [10, 1.812, 2.228, 3.169],
    [20, 1.725, 2.086, 2.845],
    [30, 1.697, 2.042, 2.75],
    [60, 1.671, 2.0, 2.66],
    [120, 1.658, 1.98, 2.617],
    [undefined, 1.645, 1.96, 2.576],
  ] as const)("agrees with the printed t table at %s degrees of freedom", (nu, t90, t95, t99) => {
    const off = [t90, t95, t99].map((t, i) => coverageFactor(percent([90, 95, 99][i] as number), nu) - t);
    for (const difference of off) expect(Math.abs(difference)).toBeLessThan(0.00051);
  });

  // scipy.stats.t.ppf and norm.ppf, SciPy 1.17.1.
  test.each([
    [50, 1.5, 0.8725946625415716],
    [50, 3, 0.7648923284043444],
    [90, 5.7, 1.9616506932476796],
    [95, 1.5, 6.016663104427929],
    [95, 5.7, 2.4784713087006094],
    [95, 120, 1.9799304050824402],
    [95, 1e4, 1.960201239890626],
    [99, 1, 63.656741162871526],
    [99, 30, 2.7499956535672254],
    [99.99, 1.5, 384.5724025215815],
    [99.99, 10, 6.211050891290746],
    [99.99, undefined, 3.8905918864131204],
    [50, undefined, 0.6744897501960817],
  ] as const)("agrees with SciPy at %s %% and %s degrees of freedom", (confidence, nu, t) => {
    expect(Math.abs(coverageFactor(percent(confidence), nu) / t - 1)).toBeLessThan(1e-8);
  });

  test("agrees with the closed forms for one, two and four degrees of freedom", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.999, noNaN: true }), (share) => {
        const of = (nu: number): number => coverageFactor(quantity(share, "1"), nu);
        expect(Math.abs(of(1) / Math.tan((Math.PI / 2) * share) - 1)).toBeLessThan(1e-9);
        expect(Math.abs(of(2) / (share * Math.sqrt(2 / (1 - share ** 2))) - 1)).toBeLessThan(1e-9);
        const alpha = 1 - share ** 2;
        const q = Math.cos(Math.acos(Math.sqrt(alpha)) / 3) / Math.sqrt(alpha);
        expect(Math.abs(of(4) - 2 * Math.sqrt(q - 1))).toBeLessThan(1e-7 * of(4));
      }),
    );
  });

  test("falls with more degrees of freedom and rises with the confidence", () => {
    const nus = [1, 1.2, 2, 3, 7, 20, 100, 5000, 1e6, 9e6, 2e7];
    const row = nus.map((nu) => coverageFactor(percent(95), nu));
    for (let i = 1; i < row.length; i++) expect(row[i]).toBeLessThan(row[i - 1] as number);
    expect(coverageFactor(percent(99), 4)).toBeGreaterThan(coverageFactor(percent(98.9), 4));
  });

  test("refuses what has no factor", () => {
    expect(complaints(() => coverageFactor(percent(100), 4))).toEqual(["range confidence"]);
    expect(complaints(() => coverageFactor(percent(95), 0))).toEqual(["range degreesOfFreedom"]);
    expect(complaints(() => coverageFactor(percent(95), Number.NaN))).toEqual([
      "not-finite degreesOfFreedom",
    ]);
  });
});

describe("meanEstimate", () => {
  test("takes readings in different units and reports in the first", () => {
    const e = meanEstimate([
      quantity(1, "qt", "water"),
      quantity(2, "pt", "water"),
      quantity(34, "fl oz", "water"),
    ]);
    expect(e.value.unit).toBe("qt");
    expect(e.value.in("fl oz")).toBeCloseTo(98 / 3, 10);
    // Half of the sum of squares 4/9 + 4/9 + 16/9 is 4/3, and s / sqrt(3) is 2/3 fl oz.
    expect(e.standardError.in("fl oz")).toBeCloseTo(2 / 3, 10);
  });

  test("has less error where more of what there is was read, and none where all was", () => {
    const some = [30, 32, 31, 35].map((v) => quantity(v, "fl oz", "water"));
    const error = (outOf?: number) =>
      meanEstimate(some, outOf === undefined ? {} : { outOf }).standardError.in("fl oz");
    expect(error(8) / error()).toBeCloseTo(Math.sqrt(0.5), 12);
    expect(error(4)).toBe(0);
    expect(complaints(() => meanEstimate(some, { outOf: 3 }))).toEqual(["range outOf"]);
    expect(complaints(() => meanEstimate(some, { outOf: 4.5 }))).toEqual(["range outOf"]);
  });

  test("names every missing or wrong reading, and skips none", () => {
    const holes = [
      quantity(1, "gal", "water"),
      undefined,
      quantity(1, "lb", "water"),
      null,
      { value: Number.NaN, unit: "gal", of: "water" },
    ];
    expect(complaints(() => meanEstimate(holes as never))).toEqual([
      "missing readings[1]",
      "unit/mismatch readings[2]",
      "missing readings[3]",
      "not-finite readings[4]",
    ]);
    const sparse: unknown[] = [quantity(1, "gal", "water")];
    sparse[2] = quantity(1, "gal", "water");
    expect(complaints(() => meanEstimate(sparse as never))).toEqual(["missing readings[1]"]);
    expect(complaints(() => meanEstimate([quantity(1, "gal")]))).toEqual(["missing readings"]);
    expect(
      complaints(() => meanEstimate([quantity(1, "gal", "water"), quantity(1, "gal", "spray")] as never)),
    ).toEqual(["substance/mismatch readings[1]"]);
    expect(complaints(() => meanEstimate([quantity(1, "°C"), quantity(2, "°C")]))).toHaveLength(2);
  });

  test("does not depend on the unit, and scales with it", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1, max: 100, noNaN: true }), { minLength: 2, maxLength: 9 }),
        (list) => {
          const us = meanEstimate(list.map((v) => quantity(v, "gal", "spray")));
          const metric = meanEstimate(list.map((v) => quantity(quantity(v, "gal").in("L"), "L", "spray")));
          expect(metric.value.in("gal")).toBeCloseTo(us.value.in("gal"), 9);
          expect(metric.standardError.in("gal")).toBeCloseTo(us.standardError.in("gal"), 9);
        },
      ),
    );
  });
});

describe("estimateOfProduct", () => {
  const catches = meanEstimate([10, 12].map((v) => quantity(v, "gal", "spray")));

  test("adds relative errors as squares, whatever the sign of the power", () => {
    const e = estimateOfProduct(gpa(50), [
      { relativeError: percent(3) },
      { relativeError: percent(4), power: -1 },
    ]);
    expect(e.standardError.in("gal/acre")).toBeCloseTo(2.5, 12);
    expect(e).not.toHaveProperty("degreesOfFreedom");
  });

  test("keeps the degrees of freedom of a single estimate and gains with stated errors", () => {
    expect(estimateOfProduct(gpa(50), [{ estimate: catches }]).degreesOfFreedom).toBeCloseTo(1, 12);
    // GUM H.1.6: u1 25 nm (18), 9.7 nm (25.6), 2.9 nm (50), 16.6 nm (2) give 31.7 nm and 16.7 degrees, cut (from memory).
    const part = (error: number, degreesOfFreedom: number) => ({
      estimate: {
        ...statedEstimate({
          value: quantity(1e3, "um"),
          error: quantity(error, "um"),
          meaning: "standard error",
        }),
        degreesOfFreedom,
      },
    });
    const gum = estimateOfProduct(quantity(1e3, "um"), [
      part(25, 18),
      part(9.7, 25.6),
      part(2.9, 50),
      part(16.6, 2),
    ]);
    expect(gum.standardError.in("um")).toBeCloseTo(31.7, 1);
    expect(Math.floor((gum.degreesOfFreedom as number) * 10)).toBe(167);
  });

  test("has never fewer degrees of freedom than its least part, so that an interval follows", () => {
    const two = fc.array(fc.double({ min: 1, max: 100, noNaN: true }), { minLength: 2, maxLength: 4 });
    fc.assert(
      fc.property(two, two, (a, b) => {
        const [one, other] = [a, b].map((list) => meanEstimate(list.map((v) => quantity(v, "gal", "spray"))));
        const single = estimateOfProduct(gpa(50), [{ estimate: one as never }]);
        expect(confidenceInterval(single).margin.value).toBeGreaterThanOrEqual(0);
        const both = estimateOfProduct(gpa(50), [
          { estimate: one as never },
          { estimate: other as never, power: -1 },
        ]);
        expect(both.degreesOfFreedom ?? 9).toBeGreaterThanOrEqual(Math.min(a.length, b.length) - 1);
        expect(confidenceInterval(both).margin.value).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("refuses a factor of nothing and reports all that is wrong", () => {
    const nothing = meanEstimate([quantity(-1, "gal"), quantity(1, "gal")]);
    expect(
      complaints(() =>
        estimateOfProduct(gpa(1), [{ estimate: nothing }, { relativeError: percent(-1) }, {} as never]),
      ),
    ).toEqual(["range factors[0].estimate.value", "range factors[1].relativeError", "missing factors[2]"]);
    expect(complaints(() => estimateOfProduct(gpa(1), []))).toEqual(["missing factors"]);
  });

  test("survives JSON", () => {
    const back = JSON.parse(JSON.stringify(catches)) as Estimate<"volume", "spray">;
    expect(confidenceInterval(back).margin.in("gal")).toBe(confidenceInterval(catches).margin.in("gal"));
  });
});

describe("checkAgainstTarget", () => {
  const check = (values: readonly number[], tolerance = 5) =>
    checkAgainstTarget({
      measured: meanEstimate(values.map(gpa)),
      target: gpa(20),
      tolerance: percent(tolerance),
    });

  test("answers in the three words of the trade", () => {
    expect(check([20.1, 20.0, 20.2, 19.9]).verdict).toBe("within tolerance");
    expect(check([25.1, 25.0, 25.2, 24.9]).verdict).toBe("adjust");
    expect(check([22, 18, 20, 21]).verdict).toBe("measure again");
    expect(check([22, 18, 20, 21]).text).toContain("too large to tell");
  });

  test("says by how much the output has to change, which is not minus the deviation", () => {
    const c = check([25, 25, 25]);
    expect(c.deviation.in("%")).toBe(25);
    expect(c.change.in("%")).toBe(-20);
    expect(c.measured.times(1 + c.change.in("1")).in("gal/acre")).toBeCloseTo(20, 12);
  });

  test("takes the edge of the band as within, and a bare value with a note", () => {
    const bare = checkAgainstTarget({ measured: gpa(21), target: gpa(20), tolerance: percent(5) });
    expect(bare.verdict).toBe("within tolerance");
    expect(bare.notChecked).toHaveLength(1);
    expect(bare).not.toHaveProperty("interval");
    const beyond = checkAgainstTarget({ measured: gpa(21.001), target: gpa(20), tolerance: percent(5) });
    expect(beyond.verdict).toBe("adjust");
  });

  test("does not depend on the units of measured and target", () => {
    const metric = checkAgainstTarget({
      measured: meanEstimate([25, 25.2, 24.9].map(gpa)),
      target: quantity(gpa(20).in("L/ha"), "L/ha", "spray"),
      tolerance: quantity(0.05, "1"),
    });
    expect(metric.deviation.in("%")).toBeCloseTo(check([25, 25.2, 24.9]).deviation.in("%"), 9);
    expect(metric.target.unit).toBe("L/ha");
  });

  test("takes records that come from JSON", () => {
    const input = {
      measured: meanEstimate([25.1, 25.0, 25.2, 24.9].map(gpa)),
      target: gpa(20),
      tolerance: percent(5),
      confidence: percent(90),
    };
    const made = checkAgainstTarget(input);
    const read = checkAgainstTarget(JSON.parse(JSON.stringify(input)));
    expect(JSON.stringify(read)).toBe(JSON.stringify(made));
    expect(made.interval?.confidence.in("%")).toBe(90);
    expect(checkAgainstTarget({ ...input, measured: gpa(20) }).text).toMatch(/is at the target/);
  });

  test("refuses what has no answer", () => {
    const good = { measured: gpa(20), target: gpa(20), tolerance: percent(5) };
    expect(complaints(() => checkAgainstTarget({ ...good, target: gpa(0) }))).toEqual(["range target"]);
    expect(complaints(() => checkAgainstTarget({ ...good, tolerance: percent(100) }))).toEqual([
      "range tolerance",
    ]);
    expect(complaints(() => checkAgainstTarget({ ...good, tolerance: percent(0) }))).toEqual([
      "range tolerance",
    ]);
    expect(complaints(() => checkAgainstTarget({ ...good, measured: gpa(0) }))).toEqual(["range measured"]);
    expect(complaints(() => checkAgainstTarget({ ...good, measured: undefined } as never))).toEqual([
      "missing measured",
    ]);
    expect(complaints(() => checkAgainstTarget({ ...good, tolerance: undefined } as never))).toEqual([
      "missing tolerance",
    ]);
    expect(
      complaints(() => checkAgainstTarget({ ...good, target: gpa(0), tolerance: percent(200) })),
    ).toEqual(["range target", "range tolerance"]);
    expect(complaints(() => checkAgainstTarget({ ...good, confidence: percent(100) }))).toEqual([
      "range confidence",
    ]);
    const water = quantity(20, "gal/acre", "water");
    expect(complaints(() => checkAgainstTarget({ ...good, target: water } as never))).toEqual([
      "substance/mismatch target",
    ]);
  });
});

describe("readingsFor", () => {
  test("is the smallest number that is enough", () => {
    for (const [cv, margin] of [
      [4, 5],
      [10, 5],
      [2, 5],
      [30, 3],
    ] as const) {
      const n = readingsFor({ coefficientOfVariation: percent(cv), margin: percent(margin) });
      const half = (k: number): number => (coverageFactor(percent(95), k - 1) * cv) / Math.sqrt(k);
      expect(half(n)).toBeLessThanOrEqual(margin);
      if (n > 2) expect(half(n - 1)).toBeGreaterThan(margin);
    }
    expect(readingsFor({ coefficientOfVariation: percent(0), margin: percent(1) })).toBe(2);
    const tooMany = { coefficientOfVariation: percent(100), margin: quantity(1e-6, "1") };
    expect(complaints(() => readingsFor(tooMany))).toEqual(["range margin"]);
    // z = 1.960: (1.96 * 51)^2 = 9992 readings for 1 %, (1.96 * 52)^2 = 10388
    expect(readingsFor({ coefficientOfVariation: percent(51), margin: percent(1) })).toBeLessThan(10_000);
    const many = { coefficientOfVariation: percent(52), margin: percent(1) };
    expect(complaints(() => readingsFor(many))).toEqual(["range margin"]);
    const wrong = { coefficientOfVariation: percent(-1), margin: percent(0), confidence: percent(0) };
    expect(complaints(() => readingsFor(wrong))).toEqual([
      "range coefficientOfVariation",
      "range margin",
      "range confidence",
    ]);
  });
});
