import { describe, expect, test } from "vitest";
import { quantity } from "../../src/quantity/index.js";
import { polygonArea, segmentArea } from "../../src/site/index.js";
import { complaints } from "../errors.js";

describe("a flat arc", () => {
  test.each([2, 10, 17])("of %s degrees keeps all its digits", (degrees) => {
    // a - sin a = a^3/3! - a^5/5! + a^7/7! - ..., the sine by its own series, without a difference of near numbers.
    const a = (degrees * Math.PI) / 180;
    let [term, sum] = [(a * a * a) / 6, 0];
    for (let n = 4; n < 24; n += 2) {
      sum += term;
      term *= -(a * a) / (n * (n + 1));
    }
    const area = segmentArea({ radius: quantity(1, "m"), angle: quantity(degrees, "deg") }).in("m2");
    expect(area / (sum / 2)).toBeCloseTo(1, 12);
  });
});

describe("an outline that runs back over itself", () => {
  test("is refused whichever way it runs", () => {
    const got = (points: readonly (readonly [number, number])[]) =>
      complaints(() => polygonArea(points, "m")).length > 0;
    // A square of 10 with a spike on the right edge, straight up, and the same turned by a quarter.
    const spike = [
      [0, 0],
      [10, 0],
      [10, 30],
      [10, 10],
      [0, 10],
    ] as const;
    expect(got(spike)).toBe(true);
    expect(got(spike.map(([x, y]) => [y, x] as const))).toBe(true);
    // What is left without the tip is a square.
    expect(got(spike.filter(([, y]) => y !== 30))).toBe(false);
  });
});
