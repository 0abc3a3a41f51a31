import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { answerOf } from "../../errors.js";

/** A plain-JavaScript caller has no compiler. */
// biome-ignore lint/suspicious/noExplicitAny: that is the point
const js = quantity as any;
type Amount = readonly [value: number, unit: string, of?: string];
const times = (a: Amount, b: Amount): unknown => answerOf(() => js(...a).times(js(...b)));
const per = (a: Amount, b: Amount): unknown => answerOf(() => js(...a).per(js(...b)));
const refused = "unit/mismatch other";
const nitrogen: Amount = [24, "% w/w", "N/product"];

describe("a share by weight takes weights alone", () => {
  test("24 % of 50 lb are 12 lb, whichever stands first", () => {
    expect(String(times(nitrogen, [50, "lb", "product"]))).toBe("12 lb of N");
    expect(String(times([50, "lb", "product"], nitrogen))).toBe("12 lb of N");
    expect(String(times([50, "lb/acre", "product"], nitrogen))).toBe("12 lb/acre of N");
    expect(String(times(nitrogen, [50, "lb/acre", "product"]))).toBe("12 lb/acre of N");
    expect(String(per([12, "lb", "N"], nitrogen))).toBe("50 lb of product");
    expect(String(per([12, "lb/acre", "N"], nitrogen))).toBe("50 lb/acre of product");
  });

  test("no gallons, no acres and no days: a weight fraction of a volume needs its density", () => {
    for (const other of [
      [10, "gal", "product"],
      [10, "gal/acre", "product"],
      [10, "acre"],
      [10, "d"],
    ] as const) {
      expect([other[1], times(nitrogen, other), times(other, nitrogen)]).toEqual([
        other[1],
        refused,
        refused,
      ]);
      expect([other[1], per(other, nitrogen), per(nitrogen, other)]).toEqual([other[1], refused, refused]);
    }
    expect(times([0.25, "% v/v", "product/spray"], [100, "lb", "spray"])).toBe(refused);
    expect(String(times([0.25, "% v/v", "product/spray"], [100, "gal", "spray"]))).toBe(
      "0.25 gal of product",
    );
  });

  test("a fraction is not taken apart by a weight", () => {
    expect(per(nitrogen, [2, "lb", "N"])).toBe(refused);
    expect(per(nitrogen, [2, "lb/acre", "N"])).toBe(refused);
  });
});

describe("a bare number", () => {
  test("leaves the kind of the other as it is", () => {
    expect(String(times(nitrogen, [50, "%"]))).toBe("12 % w/w of N/product");
    expect(String(times([50, "%"], nitrogen))).toBe("12 % w/w of N/product");
    expect(String(per(nitrogen, [50, "%"]))).toBe("48 % w/w of N/product");
    expect(String(times([3, "psi"], [2, "1"]))).toBe("6 psi");
    expect(String(per([3, "psi"], [2, "1"]))).toBe("1.5 psi");
  });

  test("by a time is a frequency; by a weight it is nothing", () => {
    expect(per([1, "1"], [2, "d"])).toMatchObject({ value: 0.5, unit: "1/d", dimension: "1/time" });
    expect(per([1, "1"], [2, "lb"])).toBe(refused);
    expect(per([1, "1"], nitrogen)).toBe(refused);
    // 3 pieces a pound, a pound of 6 pieces
    expect(times([3, "count/lb"], [2, "lb/count"])).toMatchObject({ value: 6, unit: "1", dimension: "1" });
  });
});

describe("like by like", () => {
  const [a, b] = ["other:a", "other:b"];
  test.each<readonly [unit: string, dimension: string]>([
    ["lb", "mass/mass"],
    ["lb/acre", "mass/mass"],
    ["gal", "volume/volume"],
    ["gal/min", "volume/volume"],
    ["ft", "length/length"],
    ["acre", "1"],
    ["ft2/lb", "1"],
    ["count/gal", "1"],
    ["ft/s", "1"],
    ["% grade", "1"],
    ["psi", "1"],
  ])("2 %s of one thing per 8 of another are a quarter, a %s", (unit, dimension) => {
    const share = per([2, unit, a], [8, unit, b]) as ReturnType<typeof js>;
    expect([share.dimension, share.of]).toEqual([dimension, "other:a/other:b"]);
    expect(
      share.in({ "mass/mass": "kg/kg", "volume/volume": "L/L", "length/length": "m/m" }[dimension] ?? "1"),
    ).toBe(0.25);
    // of the same thing, a pure number
    expect(per([2, unit, a], [8, unit, a])).toMatchObject({ value: 0.25, dimension: "1", of: "none" });
  });
});

describe("a depth by time", () => {
  test("over an area is a flow: 3630 ft3 in an hour for each acre and inch", () => {
    const flow = times([2, "acre"], [1, "in/h"]) as ReturnType<typeof js>;
    expect(flow.dimension).toBe("volume/time");
    expect(flow.in("ft3/h")).toBeCloseTo(7260, 9);
  });

  test("does not come out of a quotient", () => {
    expect(per([1, "in"], [2, "h/acre"])).toBe(refused);
    expect(per([1, "in"], [2, "h"])).toMatchObject({ value: 0.5, unit: "in/h" });
  });
});
