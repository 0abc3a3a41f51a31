import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  cutsToHeight,
  frequencyOfClip,
  leafRemoved,
  mowingSpeedFor,
  reelSpeedFor,
  shootGrowth,
} from "../../../src/stand/index.js";
import { complaints } from "../../errors.js";

describe("frequency of clip", () => {
  test("clip, reel speed and mowing speed lead to one another", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 12, noNaN: true }),
        fc.integer({ min: 3, max: 15 }),
        fc.double({ min: 200, max: 3000, noNaN: true }),
        fc.constantFrom("km/h", "mi/h"),
        (v, blades, rpm, unit) => {
          const speed = quantity(v, unit);
          const reelSpeed = quantity(rpm, "1/min");
          const clip = frequencyOfClip({ speed, blades, reelSpeed });
          expect(clip.unit).toBe(unit === "km/h" ? "mm" : "in");
          expect(reelSpeedFor({ speed, blades, clip }).in("1/min") / rpm).toBeCloseTo(1, 10);
          const back = mowingSpeedFor({ reelSpeed, blades, clip });
          expect(back.unit).toBe(unit);
          expect(back.in(unit) / v).toBeCloseTo(1, 10);
          const faster = frequencyOfClip({ speed: quantity(2 * v, unit), blades, reelSpeed });
          expect(faster.value / clip.value).toBeCloseTo(2, 10);
        },
      ),
    );
  });
  test("refuses what no reel has", () => {
    const speed = quantity(0, "km/h");
    const reelSpeed = quantity(2000, "1/min");
    expect(complaints(() => frequencyOfClip({ speed, blades: 2.5, reelSpeed }))).toEqual([
      "range speed",
      "range blades",
    ]);
    expect(complaints(() => frequencyOfClip({ blades: 100 } as never))).toEqual([
      "missing speed",
      "range blades",
      "missing reelSpeed",
    ]);
  });
});

describe("bringing grass down", () => {
  test("no cut takes more than the share, the last one ends at the height, and none is wasted", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 4, noNaN: true }),
        fc.double({ min: 0.1, max: 30, noNaN: true }),
        fc.double({ min: 0.15, max: 0.9, noNaN: true }),
        (h, more, share) => {
          const cut = quantity(h, "in");
          const standing = quantity(h + more, "in");
          const heights = cutsToHeight({ standing, cut, share });
          let above = standing;
          heights.forEach((height, i) => {
            const taken = leafRemoved({ standing: above, cut: height }).in("%");
            expect(taken).toBeLessThanOrEqual(100 * share + 1e-6);
            if (i < heights.length - 1) expect(taken).toBeCloseTo(100 * share, 6);
            above = height;
          });
          expect(above.in("in")).toBe(h);
        },
      ),
    );
  });
  test("grass that is low needs none; a share that never gets there is refused", () => {
    const cut = quantity(3, "in");
    expect(cutsToHeight({ standing: quantity(7.62, "cm"), cut })).toEqual([]);
    expect(complaints(() => cutsToHeight({ standing: quantity(300, "in"), cut, share: 0.01 }))).toEqual([
      "range share",
    ]);
  });
  test("growth is what came on top", () => {
    const cut = quantity(20, "mm");
    expect(shootGrowth({ cut, standing: quantity(3, "cm"), time: quantity(5, "d") }).in("mm/d")).toBe(2);
    expect(
      complaints(() => shootGrowth({ cut, standing: quantity(1, "cm"), time: quantity(5, "d") })),
    ).toEqual(["conflict standing"]);
  });
});
