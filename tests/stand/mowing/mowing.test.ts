import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity, type RatewrightError } from "../../../src/quantity/index.js";
import { growthBetweenMowings, leafRemoved, mowAtHeight, mowingInterval } from "../../../src/stand/index.js";
import { complaint } from "../../errors.js";

const mm = (value: number) => quantity(value, "mm");

describe("the one-third rule", () => {
  test("mown at its height, the grass loses exactly the share", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 150, noNaN: true }),
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        (h, share) => {
          const cut = mm(h);
          expect(leafRemoved({ standing: mowAtHeight({ cut, share }), cut }).in("%")).toBeCloseTo(
            100 * share,
            8,
          );
          expect(leafRemoved({ standing: mowAtHeight({ cut }), cut }).in("%")).toBeCloseTo(100 / 3, 9);
          expect(growthBetweenMowings({ cut, share }).in("mm")).toBeCloseTo(
            mowAtHeight({ cut, share }).in("mm") - h,
            9,
          );
        },
      ),
    );
  });
  test("refuses what cannot be", () => {
    expect(complaint(() => mowAtHeight({ cut: mm(0) }))).toBe("range cut");
    expect(complaint(() => mowAtHeight({ cut: mm(9), share: 1 }))).toBe("range share");
    expect(complaint(() => leafRemoved({ standing: mm(9), cut: quantity(1, "in") }))).toBe("range standing");
    expect(leafRemoved({ standing: mm(9), cut: mm(9) }).in("%")).toBe(0);
    expect(complaint(() => leafRemoved({ standing: mm(9), cut: mm(0) }))).toBe("range cut");
    // 13/16 in is 2.06375 cm exactly
    const inches = { standing: quantity(0.8125, "in"), cut: quantity(2.06375, "cm") };
    expect(leafRemoved(inches).in("%")).toBe(0);
  });
});

describe("mowingInterval", () => {
  const growth = quantity(6, "mm/d");
  test("slower grass, later mowing", () => {
    const of = (more: object) => mowingInterval({ cut: mm(36), growth, ...more }).in("d");
    expect(of({})).toBe(3);
    expect(of({ potential: quantity(50, "%") })).toBe(6);
    expect(of({ suppression: quantity(50, "%"), potential: quantity(50, "%") })).toBe(12);
    expect(of({ cut: mm(72) })).toBe(6);
    expect(of({ potential: quantity(0.5, "%") })).toBeCloseTo(600, 9);
    expect(of({ suppression: quantity(1.5, "%") })).toBeCloseTo(3 / 0.985, 9);
  });
  test("no time where nothing grows", () => {
    const of = (more: object) => complaint(() => mowingInterval({ cut: mm(36), growth, ...more }));
    expect(of({ potential: quantity(0, "%") })).toBe("range potential");
    expect(of({ potential: quantity(101, "%") })).toBe("range potential");
    expect(of({ suppression: quantity(100, "%") })).toBe("range suppression");
    expect(of({ growth: quantity(0, "mm/d") })).toBe("range growth");
    expect(of({ suppression: quantity(-1, "%") })).toBe("range suppression");
    expect(mowingInterval({ cut: mm(36), growth, suppression: quantity(99.9995, "%") }).in("d")).toBeCloseTo(
      3 / 5e-6,
      1,
    );
  });
  test("tells all that is wrong", () => {
    const wrong = { cut: mm(0), share: 2, growth: quantity(0, "mm/d"), potential: quantity(200, "%") };
    try {
      mowingInterval(wrong);
      expect.fail("it did not throw");
    } catch (error) {
      const paths = (error as RatewrightError).problems.map(({ path }) => path);
      expect(paths).toEqual(["cut", "share", "growth", "potential"]);
    }
  });
});
