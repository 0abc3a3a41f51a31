import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deicingRate, deicingTables, quantity } from "../../../src/index.js";
import { complaints } from "../../errors.js";

const f = (value: number) => quantity(value, "°F");
const codes = (value: number) => deicingRate({ pavement: f(value) }).findings.map(({ code }) => code);

describe("deicingRate", () => {
  it("rises as the pavement cools, until salt is of no use", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 40, noNaN: true }),
        fc.double({ min: 5, max: 40, noNaN: true }),
        (a, b) => {
          const [warm, cold] = [Math.max(a, b), Math.min(a, b)].map(
            (value) => deicingRate({ pavement: f(value) }).rate?.in("lb/1000 ft2") ?? Number.NaN,
          );
          expect(cold).toBeGreaterThanOrEqual(warm as number);
        },
      ),
    );
    expect(deicingRate({ pavement: f(4.9) }).rate).toBeNull();
  });

  it("warns of chloride always, of the cold below 15 °F, and where sources differ", () => {
    expect(codes(33)).toEqual(["deicing/chloride"]);
    expect(codes(22)).toEqual(["deicing/chloride", "deicing/sources-differ"]);
    expect(codes(14)).toEqual(["deicing/chloride", "deicing/too-cold", "deicing/sources-differ"]);
    expect(codes(-5)).toEqual(["deicing/chloride", "deicing/too-cold"]);
  });

  it("takes a third less when prewetted, and another table", () => {
    expect(deicingRate({ pavement: f(31), prewet: "a third less" }).rate?.in("lb/1000 ft2")).toBeCloseTo(
      2,
      12,
    );
    const own = {
      ...(deicingTables[0] as (typeof deicingTables)[number]),
      id: "ours",
      steps: [{ fromF: 20, lbPer1000Ft2: 2 }],
    };
    expect(deicingRate({ pavement: quantity(-5, "°C"), table: own })).toMatchObject({
      table: "ours",
      rate: { value: 2 },
    });
    expect(complaints(() => deicingRate({ pavement: f(10), table: own }))).toEqual(["range pavement"]);
  });

  it("refuses summer, steps out of order, and keeps its table", () => {
    expect(complaints(() => deicingRate({ pavement: f(75) }))).toEqual(["range pavement"]);
    const table = { ...(deicingTables[0] as (typeof deicingTables)[number]) };
    const steps = [
      { fromF: 20, lbPer1000Ft2: 2 },
      { fromF: 30, lbPer1000Ft2: 1 },
    ];
    expect(complaints(() => deicingRate({ pavement: f(25), table: { ...table, steps } }))).toEqual([
      "conflict table.steps[1].fromF",
    ]);
    expect(Object.isFrozen(deicingTables[0]?.steps[0])).toBe(true);
  });
});
