import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { greenSpeed, pestDensity } from "../../../src/stand/index.js";
import { complaints } from "../../errors.js";

const feet = (...values: number[]) => values.map((value) => quantity(value, "ft"));

describe("greenSpeed", () => {
  test("finds the level roll of a ball that loses speed evenly, whatever the slope", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 14, noNaN: true }),
        fc.double({ min: 0, max: 0.8, noNaN: true }),
        (level, k) => {
          // friction f and slope s: roll v^2 / 2 g (f + s) uphill, v^2 / 2 g (f - s) downhill; k = s / f
          const found = greenSpeed({ up: feet(level / (1 + k)), down: feet(level / (1 - k)) });
          expect(found.level.in("ft")).toBeCloseTo(level, 9);
          expect(found.mean.in("ft")).toBeGreaterThanOrEqual(found.level.in("ft") - 1e-9);
        },
      ),
    );
  });
  test("says when rolls lie apart, and how steep it is", () => {
    const codes = (up: number[], down: number[]) =>
      greenSpeed({ up: feet(...up), down: feet(...down) }).findings.map(({ code, params }) => [
        code,
        params.slope,
      ]);
    expect(codes([9, 9.5, 9.6], [10, 10, 10])).toEqual([]);
    expect(codes([9, 9.5, 9.7], [10, 10, 10])).toEqual([["green-speed/rolls-apart", undefined]]);
    expect(codes([5], [12])).toEqual([["green-speed/sloped", "moderate"]]);
    expect(codes([4], [12.5])).toEqual([["green-speed/sloped", "steep"]]);
    expect(codes([10], [9])).toEqual([["green-speed/uphill-longer", undefined]]);
    expect(complaints(() => greenSpeed({ up: [], down: feet(0) }))).toEqual(["missing up", "range down[0]"]);
    expect(greenSpeed({ up: [quantity(2, "m")], down: [quantity(3, "m")] }).level.toString()).toBe("2.4 m");
  });
});

describe("pestDensity", () => {
  const core = { diameter: quantity(4.25, "in") };
  const threshold = { low: quantity(10, "count/ft2"), high: quantity(20, "count/ft2"), source: "made up" };
  test("lies within its interval, which is never narrower than chance, and the units do not matter", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 40 }), (counts) => {
        const found = pestDensity({ counts, core });
        const [low, mid, high] = [found.low, found.density, found.high].map((d) => d.in("count/ft2")) as [
          number,
          number,
          number,
        ];
        expect(low).toBeGreaterThanOrEqual(0);
        expect(low).toBeLessThanOrEqual(mid);
        expect(high).toBeGreaterThan(mid);
        const area = found.coreArea.in("ft2");
        const mean = mid * area;
        if (mean > 0) {
          expect(high - mid).toBeGreaterThanOrEqual((1.959 * Math.sqrt(mean / counts.length)) / area);
        }
        const metric = pestDensity({ counts, core: { diameter: quantity(107.95, "mm") } });
        expect(metric.density.unit).toBe("count/m2");
        expect(metric.high.in("count/ft2") / high).toBeCloseTo(1, 9);
      }),
    );
  });
  test("where nothing was found the upper end is that of chance", () => {
    const none = pestDensity({ counts: Array<number>(10).fill(0), core: { area: quantity(0.1, "ft2") } });
    expect(none.high.in("count/ft2")).toBeCloseTo(Math.log(20), 9);
    // a density at which ten such cores come up empty once in twenty times
    expect(Math.exp(-none.high.in("count/ft2") * 10 * 0.1)).toBeCloseTo(0.05, 9);
  });
  test("is above or below where the whole interval is", () => {
    const read = (count: number, n: number) =>
      pestDensity({ counts: Array<number>(n).fill(count), core: { area: quantity(0.1, "ft2") }, threshold })
        .againstThreshold;
    expect(read(4, 40)).toBe("above");
    expect(read(0, 40)).toBe("below");
    expect(read(1, 40)).toBe("cannot be told");
    expect(read(2, 40)).toBe("cannot be told");
    expect(pestDensity({ counts: [1], core }).againstThreshold).toBe("not compared");
  });
  test("few cores are told, and no counts are refused", () => {
    expect(pestDensity({ counts: [1, 2], core }).findings.map(({ code }) => code)).toEqual([
      "pests/few-cores",
    ]);
    expect(pestDensity({ counts: Array<number>(10).fill(1), core }).findings).toEqual([]);
    expect(complaints(() => pestDensity({ counts: [1, 1.5], core: {} as never }))).toEqual([
      "range counts[1]",
      "missing core",
    ]);
    const upside = { low: quantity(20, "count/ft2"), high: quantity(10, "count/ft2"), source: "x" };
    expect(complaints(() => pestDensity({ counts: [], core, threshold: upside }))).toEqual([
      "missing counts",
      "conflict threshold.high",
    ]);
    expect(complaints(() => pestDensity({ counts: [1], core, confidence: quantity(100, "%") }))[0]).toMatch(
      /range confidence/,
    );
  });
});
