import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  cutsToHeight,
  frequencyOfClip,
  growthBetweenMowings,
  leafRemoved,
  mowAtHeight,
  mowingInterval,
  mowingSpeedFor,
  reelSpeedFor,
  shootGrowth,
} from "../../../src/stand/index.js";

const inches = (value: number) => quantity(value, "in");
const mm = (value: number) => quantity(value, "mm");

// Worked by hand from the rule of one third and from reel geometry: clip = speed / (blades x turns).

describe("heights by the rule of one third", () => {
  test("come in the unit of the cut", () => {
    expect(mowAtHeight({ cut: inches(2) }).toString()).toBe("3 in");
    expect(mowAtHeight({ cut: mm(30), share: 0.25 }).toString()).toBe("40 mm");
    expect(growthBetweenMowings({ cut: inches(3) }).toString()).toBe("1.5 in");
    expect(growthBetweenMowings({ cut: mm(30), share: 0.4 }).in("mm")).toBeCloseTo(20, 12);
    expect(leafRemoved({ standing: inches(4), cut: quantity(7.62, "cm") }).in("%")).toBeCloseTo(25, 12);
  });

  test("bring grass down third by third, and the last cut ends at the height", () => {
    const from = (standing: number, cut: number, share?: number) =>
      cutsToHeight({ standing: inches(standing), cut: inches(cut), ...(share && { share }) }).map(
        ({ value }) => value,
      );
    expect(from(4.5, 2)).toEqual([3, 2]);
    expect(from(4.5, 1.5)).toEqual([3, 2, 1.5]);
    expect(from(8, 2, 0.5)).toEqual([4, 2]);
    expect(from(2, 2)).toEqual([]);
    // less than a thousand-millionth above the cut is the cut
    expect(from(2 * (1 + 5e-10), 2)).toEqual([]);
    expect(from(2 * (1 + 5e-9), 2)).toEqual([2]);
    expect(from(3 * (1 + 5e-10), 2)).toEqual([2]);
    expect(cutsToHeight({ standing: mm(90), cut: quantity(4, "cm") }).map(String)).toEqual([
      "60 mm",
      "40 mm",
    ]);
  });

  test("sixty cuts are the most", () => {
    const halved = (standing: number) =>
      cutsToHeight({ standing: inches(standing), cut: inches(1), share: 0.5 });
    expect(halved(2 ** 60)).toHaveLength(60);
    expect(() => halved(2 ** 61)).toThrow(/60 cuts/);
  });
});

describe("growth", () => {
  test.each([
    ["mm", mm(30), mm(45), "3 mm/d"],
    ["cm", quantity(3, "cm"), quantity(4, "cm"), "2 mm/d"],
    ["in", inches(2), inches(2.5), "0.1 in/d"],
    ["ft", quantity(0.5, "ft"), inches(7), "0.2 in/d"],
  ] as const)("from a cut in %s", (_, cut, standing, growth) => {
    expect(shootGrowth({ cut, standing, time: quantity(5, "d") }).toString()).toBe(growth);
  });

  test("of nothing is nothing", () => {
    expect(shootGrowth({ cut: mm(30), standing: mm(30), time: quantity(5, "d") }).value).toBe(0);
  });

  test("held back by a regulator, in cool weather", () => {
    // 15 mm to grow at 5 mm a day, at half of it by the weather and four fifths by the regulator
    const half = {
      cut: mm(30),
      growth: quantity(5, "mm/d"),
      potential: quantity(50, "%"),
      suppression: quantity(20, "%"),
    };
    expect(mowingInterval(half).toString()).toBe("7.5 d");
    expect(
      mowingInterval({ ...half, potential: quantity(100, "%"), suppression: quantity(0, "%") }).toString(),
    ).toBe("3 d");
    // 1 in to grow, which is 25.4 mm
    expect(mowingInterval({ cut: inches(2), growth: quantity(0.5, "in/d") }).in("d")).toBeCloseTo(2, 12);
  });
});

describe("reels", () => {
  const reelSpeed = quantity(2000, "1/min");
  test("clip, turns and speed in metric units", () => {
    // 84 m a minute by 14,000 cuts
    const speed = quantity(84, "m/min");
    expect(frequencyOfClip({ speed, blades: 7, reelSpeed }).toString()).toBe("6 mm");
    expect(reelSpeedFor({ speed, blades: 7, clip: mm(6) }).in("1/min")).toBeCloseTo(2000, 9);
    expect(mowingSpeedFor({ reelSpeed, blades: 7, clip: mm(6) }).toString()).toBe("5.04 km/h");
  });
  test("and in inches", () => {
    // 1056 in a minute is a mile an hour
    expect(
      frequencyOfClip({
        speed: quantity(1, "mi/h"),
        blades: 11,
        reelSpeed: quantity(96, "1/min"),
      }).toString(),
    ).toBe("1 in");
    expect(
      frequencyOfClip({
        speed: quantity(88, "ft/min"),
        blades: 11,
        reelSpeed: quantity(96, "1/min"),
      }).toString(),
    ).toBe("1 in");
    const back = mowingSpeedFor({ reelSpeed: quantity(96, "1/min"), blades: 11, clip: inches(1) });
    expect(back.unit).toBe("mi/h");
    expect(back.value).toBeCloseTo(1, 12);
  });
  test("sixty blades are the most", () => {
    const of = (blades: number) =>
      reelSpeedFor({ speed: quantity(60, "m/min"), blades, clip: mm(10) }).in("1/min");
    expect(of(60)).toBeCloseTo(100, 9);
    expect(of(1)).toBeCloseTo(6000, 8);
    expect(() => of(61)).toThrow(/60 blades/);
  });
});
