import { describe, expect, test } from "vitest";
import { liquidFertilizer, liquidProductRate, quantity, RatewrightError } from "../../../src/index.js";

const holding = (pounds: number) =>
  liquidFertilizer({ id: "l", perVolume: { N: quantity(pounds, "lb/gal", "N") } });

describe("how strong a liquid can be", () => {
  test("as strong as liquids are sold: no finding", () => {
    expect(holding(3).findings).toBeUndefined();
    expect(holding(3.5).findings).toBeUndefined();
  });

  test("stronger than any common solution: told, and computed", () => {
    const feed = holding(4.5);
    expect(feed.findings?.map(({ code, severity }) => [code, severity])).toEqual([
      ["liquid/unusually-strong", "caution"],
    ]);
    expect(liquidProductRate(quantity(4.5, "lb/acre", "N"), feed).in("gal/acre")).toBeCloseTo(1, 12);
    // what JSON left of it is read again
    const back = JSON.parse(JSON.stringify(feed)) as typeof feed;
    expect(liquidProductRate(quantity(9, "lb/acre", "N"), back).in("gal/acre")).toBeCloseTo(2, 12);
  });

  test.each([5.3, 30])("%d lb of N per gallon is more than solid urea holds", (pounds) => {
    expect(() => holding(pounds)).toThrow(RatewrightError);
    expect(() => holding(pounds)).toThrow(/solid urea|a liquid can hold/);
  });

  test("5.19 lb of N per gallon is what solid urea holds, by hand", () => {
    // 1.335 kg/L * 28.014 / 60.056 = 0.62273 kg/L, and 1 lb/gal is 119.826 g/L
    expect(holding(5.19).findings).toHaveLength(1);
  });

  test("more nutrients than any liquid weighs", () => {
    const heavy = { P2O5: quantity(1.4, "kg/L", "P2O5"), K2O: quantity(1.2, "kg/L", "K2O") };
    expect(() => liquidFertilizer({ id: "l", perVolume: heavy })).toThrow(/perVolume: .*2500 g\/L/);
  });
});
