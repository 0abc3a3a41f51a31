import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  gypsumEquivalent,
  gypsumRequirement,
  quantity,
  sodiumPercentageFromRatio,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const base = {
  capacity: quantity(20, "meq/100 g"),
  sodiumPercent: quantity(25, "%"),
  targetPercent: quantity(10, "%"),
  purity: 80,
} as const;
const layer = { assumed: "4,000,000 lb/acre-ft" } as const;

describe("gypsum", () => {
  test("is linear in capacity and in the change, and purity divides", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 20, max: 100, noNaN: true }),
        (capacity, change, purity) => {
          const found = gypsumRequirement({
            ...base,
            capacity: quantity(capacity, "meq/100 g"),
            sodiumPercent: quantity(10 + change, "%"),
            purity,
            layer,
          });
          const unit = gypsumRequirement({
            ...base,
            capacity: quantity(1, "meq/100 g"),
            sodiumPercent: quantity(11, "%"),
            purity: 100,
            fieldFactor: 1,
            layer,
          }).rate.in("lb/acre");
          expect(found.pure.in("lb/acre") / unit).toBeCloseTo(capacity * change, 5);
          expect((found.rate.value * purity) / 100 / found.pure.value).toBeCloseTo(1.25, 10);
        },
      ),
    );
  });
  test("the conventions agree to what they print", () => {
    const exact = gypsumRequirement({ ...base, layer }).pure.in("US ton/acre");
    const acreFoot = gypsumRequirement({
      ...base,
      convention: "1.7 US tons for an acre-foot and a meq",
      depth: quantity(12, "in"),
    });
    expect(exact / acreFoot.pure.in("US ton/acre")).toBeCloseTo(1.7217 / 1.7, 3);
    const metric = gypsumRequirement({
      ...base,
      convention: "3.85 t/ha for 30 cm and a meq",
      depth: quantity(30.48, "cm"),
    });
    expect(metric.pure.in("US ton/acre") / exact).toBeCloseTo(1.013, 2);
  });
  test("is refused where it cannot be", () => {
    expect(complaints(() => gypsumRequirement({ ...base, targetPercent: quantity(40, "%"), layer }))).toEqual(
      ["conflict targetPercent"],
    );
    expect(
      complaints(() =>
        gypsumRequirement({ ...base, purity: 120, sodiumPercent: quantity(130, "%"), fieldFactor: 0.5 }),
      ),
    ).toEqual(["range sodiumPercent", "range purity", "range fieldFactor", "missing layer"]);
    expect(complaints(() => gypsumRequirement({ ...base, layer, depth: quantity(1, "ft") }))).toEqual([
      "conflict depth",
    ]);
  });
  test("its kin by weight", () => {
    expect(gypsumEquivalent("gypsum")).toBe(1);
    expect(gypsumEquivalent("anhydrite")).toBeCloseTo(136.14 / 172.17, 3);
    expect(gypsumEquivalent("ferrous sulfate heptahydrate")).toBeCloseTo(278.01 / 172.17, 3);
    expect(gypsumEquivalent("aluminum sulfate octadecahydrate")).toBeCloseTo(666.4 / 3 / 172.17, 3);
    expect(gypsumEquivalent("calcium chloride dihydrate")).toBeCloseTo(147.01 / 172.17, 3);
  });
});

test("the sodium percentage rises with the ratio, and has no value where the line is below zero", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.86, max: 100, noNaN: true }), (ratio) => {
      const now = sodiumPercentageFromRatio(ratio).percent?.in("%") as number;
      const more = sodiumPercentageFromRatio(ratio + 1).percent?.in("%") as number;
      expect(now).toBeGreaterThanOrEqual(0);
      expect(more).toBeGreaterThan(now);
      expect(more).toBeLessThan(100);
    }),
  );
  const below = sodiumPercentageFromRatio(0.8);
  expect([below.percent, below.findings[0]?.code]).toEqual([null, "sodium/below-fit"]);
  expect(complaints(() => sodiumPercentageFromRatio(-1))).toEqual(["range ratio"]);
});
