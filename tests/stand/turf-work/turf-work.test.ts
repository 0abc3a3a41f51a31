import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  coringImpact,
  coringProgram,
  passesForShare,
  sandCoefficient,
  sandForOrganicMatter,
  topdressing,
  verticuttingImpact,
} from "../../../src/stand/index.js";
import { complaints } from "../../errors.js";

const inches = (value: number) => quantity(value, "in");
const tine = { diameter: inches(0.5), measured: "outside" } as const;

describe("coring", () => {
  const sizes = fc.record({
    d: fc.double({ min: 0.1, max: 1, noNaN: true }),
    a: fc.double({ min: 1, max: 6, noNaN: true }),
    b: fc.double({ min: 1, max: 6, noNaN: true }),
    depth: fc.double({ min: 0.5, max: 10, noNaN: true }),
  });
  test("the volume is that of its holes, and spacing and holes per area say the same", () => {
    fc.assert(
      fc.property(sizes, ({ d, a, b, depth }) => {
        const hole = { diameter: inches(d), measured: "inside", depth: inches(depth) } as const;
        const area = quantity(6000, "ft2");
        const impact = coringImpact({ ...hole, spacing: { along: inches(a), across: inches(b) }, area });
        const one = ((Math.PI / 4) * d * d * depth) / 1728;
        const exact = (6000 * 144) / (a * b);
        expect(Math.abs((impact.holes as number) - exact)).toBeLessThanOrEqual(0.5 + 1e-6);
        expect((impact.volume?.in("ft3") as number) / (exact * one)).toBeCloseTo(1, 9);
        expect((impact.volumePerArea?.in("ft3/1000 ft2") as number) * 6).toBeCloseTo(exact * one, 7);
        const same = coringImpact({ ...hole, holesPerArea: impact.holesPerArea });
        expect(same.share.in("%")).toBeCloseTo(impact.share.in("%"), 9);
        const metric = coringImpact({
          ...hole,
          spacing: { along: inches(a), across: inches(b) },
          area: quantity(area.in("m2"), "m2"),
        });
        expect(metric.volume?.unit).toBe("m3");
        expect((metric.volume?.in("ft3") as number) / (impact.volume?.in("ft3") as number)).toBeCloseTo(1, 9);
      }),
    );
  });
  test("a year adds up; the surface that is hit at least once is less, and never all", () => {
    fc.assert(
      fc.property(
        fc.array(sizes, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 9 }),
        (list, times) => {
          const passes = list.map(({ d, a, b }) => ({
            diameter: inches(d),
            measured: "outside" as const,
            spacing: { along: inches(a), across: inches(b) },
            times,
          }));
          const year = coringProgram({ passes, target: quantity(20, "%") });
          const each = passes.map((pass) =>
            coringImpact({ diameter: pass.diameter, measured: pass.measured, spacing: pass.spacing }),
          );
          const sum = each.reduce((all, { share }) => all + share.in("%") * times, 0);
          expect(year.sum.in("%")).toBeCloseTo(sum, 7);
          expect(year.distinct.in("%")).toBeLessThanOrEqual(year.sum.in("%") + 1e-9);
          expect(year.distinct.in("%")).toBeLessThan(100);
          expect(year.lacking.in("%")).toBeCloseTo(Math.max(0, 20 - sum), 7);
        },
      ),
    );
  });
  test("passes reach the target, and one less does not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 30, noNaN: true }),
        fc.double({ min: 1.1, max: 100, noNaN: true }),
        (share, target) => {
          const passes = passesForShare({ target: quantity(target, "%"), share: quantity(share, "%") });
          expect(passes * share).toBeGreaterThanOrEqual(target * (1 - 1e-11));
          expect((passes - 1) * share).toBeLessThan(target);
        },
      ),
    );
  });
  test("refuses what no machine does", () => {
    const at = { spacing: { along: inches(2), across: inches(2) } };
    expect(complaints(() => coringImpact({ ...tine, ...at, diameter: inches(2.3) }))).toEqual([
      "range diameter",
    ]);
    expect(complaints(() => coringImpact(tine as never))).toEqual(["missing spacing"]);
    expect(complaints(() => coringImpact({ ...at, diameter: inches(0), depth: inches(0) } as never))).toEqual(
      ["range diameter", "missing measured", "range depth"],
    );
    const both = { ...at, holesPerArea: quantity(36, "count/ft2") } as never;
    expect(complaints(() => coringImpact({ ...tine, ...(both as typeof at) }))).toEqual(["conflict spacing"]);
    const mixed = [
      { ...tine, ...at },
      { ...tine, ...at, measured: "inside" as const },
    ];
    expect(complaints(() => coringProgram({ passes: mixed, target: quantity(20, "%") }))).toEqual([
      "conflict passes[1].measured",
    ]);
    expect(complaints(() => coringProgram({ passes: [], target: quantity(0, "%") }))).toEqual([
      "missing passes",
      "range target",
    ]);
  });
});

describe("verticutting", () => {
  test("grooves take the share of the blade", () => {
    const pass = verticuttingImpact({
      blade: inches(0.125),
      spacing: inches(1.25),
      depth: inches(0.6),
      area: quantity(1000, "ft2"),
    });
    expect(pass.share.in("%")).toBeCloseTo(10, 10);
    expect(pass.volume?.in("ft3")).toBeCloseTo(5, 9);
    expect(pass.volumePerArea?.in("ft3/1000 ft2")).toBeCloseTo(5, 9);
    expect(complaints(() => verticuttingImpact({ blade: inches(1), spacing: inches(1) }))).toEqual([
      "conflict blade",
    ]);
  });
});

describe("sand", () => {
  test("a depth and a volume per area say the same, in either system", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 50, noNaN: true }), (mm) => {
        const area = quantity(2500, "m2");
        const density = quantity(1.6, "kg/L");
        const byDepth = topdressing({ area, depth: quantity(mm, "mm"), density });
        const byVolume = topdressing({ area, perArea: byDepth.perArea, density });
        expect(byVolume.volume.in("m3")).toBeCloseTo(byDepth.volume.in("m3"), 9);
        const us = topdressing({ area: quantity(area.in("ft2"), "ft2"), depth: quantity(mm, "mm"), density });
        expect(us.volume.in("m3") / byDepth.volume.in("m3")).toBeCloseTo(1, 9);
        expect((us.weight?.in("kg") as number) / (byDepth.weight?.in("kg") as number)).toBeCloseTo(1, 9);
      }),
    );
    expect(complaints(() => topdressing({ area: quantity(1, "m2") } as never))).toEqual(["missing depth"]);
  });
  test("more clippings or less organic matter ask for more sand", () => {
    const of = (clippings: number, organicMatter: number) =>
      sandForOrganicMatter({
        clippings: quantity(clippings, "L/m2"),
        organicMatter: quantity(organicMatter, "%"),
      }).depth.in("mm");
    expect(of(2, 6)).toBeCloseTo(2 * of(1, 6), 12);
    expect(of(1, 4)).toBeGreaterThan(of(1, 6));
    expect(of(0, 6)).toBe(0);
    expect(of(1, 50)).toBeCloseTo(0.106, 12);
    const own = sandForOrganicMatter({
      clippings: quantity(1, "L/m2"),
      organicMatter: quantity(50, "%"),
      coefficient: { value: 0.2, source: "the park's own tests" },
    });
    expect([own.depth.in("mm"), own.source]).toEqual([0.2, "the park's own tests"]);
    expect(
      complaints(() =>
        sandForOrganicMatter({ clippings: quantity(1, "L/m2"), organicMatter: quantity(0, "%") }),
      ),
    ).toEqual(["range organicMatter"]);
    expect(Object.isFrozen(sandCoefficient.source)).toBe(true);
  });
});
