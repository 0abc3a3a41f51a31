import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { slopeOf } from "../../../src/site/index.js";

// Whole records, as they go on paper: what is told, by whose word, and the figures by hand.

describe("slopes", () => {
  test.each([
    ["4:1", 25],
    ["4:1 H:V", 25],
    ["1:4 V:H", 25],
    ["4 : 1 run:rise", 25],
    ["1:4 rise:run", 25],
    ["1:4 h:v", 400],
    ["1 in 4", 25],
    ["25 %", 25],
    ["25%", 25],
    ["25 percent slope", 25],
    ["25 % grade", 25],
    [".5 %", 0.5],
    ["45 deg", 100],
    ["45°", 100],
    ["45 degrees", 100],
    ["level", 0],
    ["Flat", 0],
    [" 25 % ", 25],
  ])("%s", (text, grade) => {
    expect(slopeOf(text).grade.in("% grade")).toBeCloseTo(grade, 10);
  });
  test("as one record", () => {
    const found = slopeOf("1:1");
    expect([found.type, found.version, found.run]).toEqual(["slope", 1, 1]);
    expect(found.stretch).toBeCloseTo(Math.SQRT2, 12);
    expect("run" in slopeOf("level")).toBe(false);
    expect(slopeOf(quantity(0, "deg")).angle.value).toBe(0);
  });
});
