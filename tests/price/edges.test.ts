import { describe, expect, it } from "vitest";
import { overtimeShare, quantity } from "../../src/index.js";
import { complaints } from "../errors.js";

const h = (value: number) => quantity(value, "h");

describe("overtimeShare", () => {
  it("takes another factor and another week", () => {
    // Double time: 10 of 50 hours cost one wage more, 20 %. From 36 hours on, 14 of 50 cost half a wage more, 14 %.
    expect(overtimeShare({ hours: h(50), factor: 2 }).in("%")).toBeCloseTo(20, 12);
    expect(overtimeShare({ hours: h(50), regular: h(36) }).in("%")).toBeCloseTo(14, 12);
    expect(overtimeShare({ hours: h(50), factor: 1 }).in("%")).toBe(0);
    expect(complaints(() => overtimeShare({ hours: h(50), factor: 0.5 }))).toEqual(["range factor"]);
  });

  it("a week has 168 hours", () => {
    // 128 of 168 hours at half a wage more.
    expect(overtimeShare({ hours: h(168) }).in("%")).toBeCloseTo(6400 / 168, 12);
    expect(complaints(() => overtimeShare({ hours: h(168.1) }))).toEqual(["range hours"]);
  });
});
