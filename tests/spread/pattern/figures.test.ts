import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  effectiveSwath,
  panRow,
  patternBalance,
  spreadPattern,
  swathFromThrow,
  thrownWidth,
  type throwRules,
} from "../../../src/spread/index.js";
import { ft, m, row } from "../helpers.js";

// Worked by hand, in whole numbers.

const m2 = (value: number) => quantity(value, "m2");

describe("patterns", () => {
  const pattern = row([0, 2, 4, 2, 0]);
  test("a row of pans", () => {
    const found = panRow({ swath: ft(20), spacing: ft(2) });
    // 15 ft to a side take 8 pans, 20 ft take 10, and one at the center
    expect(
      [found.type, found.version, found.least, found.most, found.pans?.least, found.pans?.most].map(String),
    ).toEqual(["pan-row", "1", "30 ft", "40 ft", "17", "21"]);
    expect(panRow({ swath: ft(20) }).pans).toBe(undefined);
    expect(panRow({ swath: ft(20), spacing: quantity(24, "in") }).pans).toEqual({ least: 17, most: 21 });
  });
  test("several weighings, several passes", () => {
    const found = spreadPattern({
      catches: [
        [0, 4, 8, 0],
        [0, 8, 4, 0],
      ],
      unit: "g",
      pans: { spacing: m(0.1), left: 1.5 },
      passes: 2,
      panArea: m2(0.1),
    });
    expect(found).toMatchObject({
      type: "spread-pattern",
      version: 1,
      of: "product",
      unit: "g",
      offsetUnit: "m",
      spacing: 0.1,
      catches: [0, 3, 3, 0],
      findings: [],
    });
    expect(found.runs).toEqual([
      [0, 2, 4, 0],
      [0, 4, 2, 0],
    ]);
    expect(found.offsets).toEqual([-0.15, -0.05, 0.05, 0.15]);
    const placed = spreadPattern({
      catches: [0, 1, 0],
      unit: "mL",
      of: "spray",
      pans: { offsets: [ft(-1), quantity(0, "in"), ft(1)] },
    });
    expect([placed.offsetUnit, placed.spacing, placed.offsets, placed.of]).toEqual([
      "ft",
      1,
      [-1, 0, 1],
      "spray",
    ]);
    const uneven = spreadPattern({
      catches: [0, 1, 0],
      unit: "g",
      pans: { offsets: [ft(-1), ft(0), ft(2)] },
    });
    expect(uneven.spacing).toBe(undefined);
    // pans may begin and end on the line of travel
    expect(
      spreadPattern({ catches: [1, 1, 0], unit: "g", pans: { offsets: [ft(0), ft(1), ft(2)] } }).offsets,
    ).toEqual([0, 1, 2]);
    expect(
      spreadPattern({ catches: [0, 1, 1], unit: "g", pans: { spacing: ft(1), left: 2 } }).offsets,
    ).toEqual([-2, -1, 0]);
  });
  test("a row that is too short says where", () => {
    expect(row([3, 4, 5, 4, 0]).findings[0]).toMatchObject({
      severity: "warning",
      path: "catches[0]",
      params: { side: "left", caught: 3 },
    });
    expect(row([0, 4, 5, 4, 3]).findings[0]).toMatchObject({
      path: "catches[4]",
      params: { side: "right", caught: 3 },
    });
  });
  test("its balance: a triangle from -2 to 2, and one that leans", () => {
    const even = patternBalance(pattern);
    expect([even.type, even.version, even.left, even.right, even.center].map(String)).toEqual([
      "pattern-balance",
      "1",
      "50 %",
      "50 %",
      "0 m",
    ]);
    // 0 to 6 to 0 over three pans, the line of travel at the first: all of it falls right, its middle at 1
    const right = patternBalance(row([0, 6, 0], 0));
    expect([right.left.in("%"), right.right.in("%"), right.center.in("m")]).toEqual([
      0,
      100,
      expect.closeTo(1, 12),
    ]);
    // triangles of 2 and 4 at -1 and 1: a third left, its middle at a third
    const two = patternBalance(row([0, 2, 0, 4, 0]));
    expect(two.left.in("%")).toBeCloseTo(100 / 3, 10);
    expect(two.center.in("m")).toBeCloseTo(1 / 3, 12);
  });
  test("how wide it throws", () => {
    const { least, most } = thrownWidth(row([0, 0, 1, 4, 1, 0, 0, 0]));
    expect([least, most].map(String)).toEqual(["2 m", "4 m"]);
  });
  test("the swath that a throw makes", () => {
    const of = (rule: (typeof throwRules)[number]["id"]) => {
      const { least, most } = swathFromThrow({ thrown: ft(180), rule });
      return [least.in("ft"), most.in("ft")].map((value) => Number(value.toFixed(9)));
    };
    expect([of("half"), of("shared strips"), of("manure"), of("slides")]).toEqual([
      [90, 90],
      [117, 126],
      [100, 120],
      [108, 108],
    ]);
  });
  test("the half rules: of a triangle of 4, down to 2 at one meter on each side", () => {
    const peak = effectiveSwath(pattern, { rule: "half of peak" });
    expect(
      [peak.type, peak.version, peak.rule, peak.swath, peak.left, peak.right, peak.level, peak.unit].map(
        String,
      ),
    ).toEqual(["effective-swath", "1", "half of peak", "2 m", "1 m", "1 m", "2", "g"]);
    expect(effectiveSwath(pattern, { rule: "half of center pan" }).level).toBe(2);
    // three pans about the line where one stands on it, four where it runs between two
    expect(effectiveSwath(pattern, { rule: "half of center mean" }).level).toBeCloseTo(4 / 3, 12);
    const between = row([0, 1, 3, 5, 5, 3, 1, 0], 3.5);
    expect(effectiveSwath(between, { rule: "half of center mean" }).level).toBe(2);
    expect(effectiveSwath(between, { rule: "half of center mean", centerPans: 2 }).level).toBe(2.5);
    expect(
      effectiveSwath(row([0, 3, 6, 3, 0]), { rule: "half of center mean", centerPans: 5 }).level,
    ).toBeCloseTo(1.2, 12);
    expect(effectiveSwath(row([0, 3, 6, 3, 0]), { rule: "half of center mean", centerPans: 1 }).level).toBe(
      3,
    );
    // a pan at the end that is just at the level is where the pattern comes down to it
    expect(effectiveSwath(row([2, 3, 4, 1, 0]), { rule: "half of peak" }).left.toString()).toBe("2 m");
    expect(effectiveSwath(row([0, 1, 4, 3, 2]), { rule: "half of peak" }).right.toString()).toBe("2 m");
  });
  test("several humps carry their number", () => {
    const [found] = effectiveSwath(row([0, 5, 1, 5, 0]), { rule: "half of peak" }).findings;
    expect(found).toMatchObject({
      code: "pattern/several-crossings",
      severity: "caution",
      params: { crossings: 4, unit: "m" },
      source: "common practice, no source",
    });
  });
});
