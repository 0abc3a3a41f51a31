import { describe, expect, it } from "vitest";
import { seededDraw } from "../../../src/teach/problems/seeded-draw.js";

describe("the numbers of a seed", () => {
  it("are those of MT19937: ISO/IEC 14882 (C++), [rand.predef], states the 10,000th of the default seed 5489", () => {
    const { int } = seededDraw(5489);
    let last = 0;
    for (let i = 0; i < 10_000; i++) last = int(0, 2 ** 32 - 1);
    // the draw counts from the lowest signed number of 32 bits
    expect((last + 2 ** 31) % 2 ** 32).toBe(4123659995);
  });

  it("keep to their steps, without dust behind the decimals", () => {
    const { step } = seededDraw(1);
    const found = new Set(Array.from({ length: 400 }, () => step(0.5, 1, 0.1)));
    expect([...found].sort()).toEqual([0.5, 0.6, 0.7, 0.8, 0.9, 1]);
  });
});
