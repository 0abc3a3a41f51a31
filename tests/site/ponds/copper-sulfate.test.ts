import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { copperSulfateConcentration, quantity } from "../../../src/index.js";
import { complaints } from "../../errors.js";
import { runs } from "../../properties.js";

const of = (value: number, unit: "mg/L" | "g/L" = "mg/L") => quantity(value, unit, "CaCO3 equivalent");

describe("copper sulfate by alkalinity", () => {
  test("by hand: 50, 100, 250 and 300 mg/L", () => {
    const of4 = [50, 100, 250, 300].map((a) => copperSulfateConcentration({ alkalinity: of(a) }));
    expect(of4.map(({ concentration }) => concentration.in("mg/L"))).toEqual([0.5, 1, 2.5, 2.5]);
    expect(of4.map(({ atMost }) => atMost)).toEqual([false, false, false, true]);
    expect(of4[0]?.findings[0]?.severity).toBe("warning");
  });

  test("law: never falls, never above 2.5, whatever the unit", () => {
    const alkalinity = fc.double({ min: 50, max: 2000, noNaN: true });
    fc.assert(
      fc.property(alkalinity, alkalinity, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((one) =>
          copperSulfateConcentration({ alkalinity: of(one / 1000, "g/L") }).concentration.in("mg/L"),
        ) as [number, number];
        expect(low).toBeLessThanOrEqual(high + 1e-12);
        expect(high).toBeLessThanOrEqual(2.5);
      }),
      runs(50),
    );
  });

  test("soft water has no concentration, and hardness is no alkalinity", () => {
    expect(complaints(() => copperSulfateConcentration({ alkalinity: of(49) }))).toEqual([
      "range alkalinity",
    ]);
    expect(
      complaints(() =>
        copperSulfateConcentration({ alkalinity: quantity(100, "mg/L", "hardness as CaCO3") as never }),
      ),
    ).toEqual(["substance/mismatch alkalinity"]);
    expect(complaints(() => copperSulfateConcentration({} as never))).toEqual(["missing alkalinity"]);
  });
});
