import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  effectiveFieldCapacity,
  headerStrips,
  passesFor,
  passRates,
  spreadWidth,
} from "../../../src/spread/index.js";
import { ft, m, percent, perThousand } from "../helpers.js";

// Worked by hand, in whole numbers.

describe("passes", () => {
  test("two where none are said", () => {
    const found = passRates({ rate: perThousand(4), area: quantity(2000, "ft2") });
    expect(
      [
        found.type,
        found.version,
        found.passes,
        found.perPass,
        found.total,
        found.load?.perPass,
        found.load?.total,
      ].map(String),
    ).toEqual([
      "pass-rates",
      "1",
      "2",
      "2 lb/1000 ft2 of product",
      "4 lb/1000 ft2 of product",
      "4 lb of product",
      "8 lb of product",
    ]);
    expect([found.checked, found.notChecked]).toEqual([
      [],
      ["the sum of the passes against a limit: none was stated"],
    ]);
    const limit = quantity(0.9, "lb/1000 ft2", "N");
    const over = passRates({ rate: quantity(1, "lb/1000 ft2", "N"), passes: 3, limit });
    expect([over.checked, over.notChecked]).toEqual([
      ["the sum of 3 passes against the stated limit of 0.9 lb/1000 ft2 of N"],
      [],
    ]);
    expect(over.findings[0]).toMatchObject({
      severity: "warning",
      path: "rate",
      params: { total: 1, unit: "lb/1000 ft2", of: "N", limit: 0.9 },
      source: "the limit that was stated",
    });
  });
  test("over a side", () => {
    const even = passesFor({ side: ft(100), swath: ft(10) });
    expect(
      [even.type, even.version, even.count, even.exact, even.lastWidth, even.evenSpacing].map(String),
    ).toEqual(["pass-count", "1", "10", "10", "10 ft", "10 ft"]);
    const odd = passesFor({ side: m(95), swath: m(10) });
    expect([odd.count, odd.exact, odd.lastWidth, odd.evenSpacing].map(String)).toEqual([
      "10",
      "9.5",
      "5 m",
      "9.5 m",
    ]);
    expect(passesFor({ side: ft(1e6), swath: ft(1) }).count).toBe(1e6);
  });
  test("of spreaders", () => {
    expect(spreadWidth({ kind: "drop", opening: ft(3) }).toString()).toBe("3 ft");
    expect(spreadWidth({ kind: "rotary", effectiveSwath: m(6) }).toString()).toBe("6 m");
    expect(spreadWidth({ kind: "outlets", outlets: 12, spacing: quantity(6, "in") }).toString()).toBe("6 ft");
    expect(spreadWidth({ kind: "outlets", outlets: 12, spacing: quantity(15, "cm") }).toString()).toBe(
      "1.8 m",
    );
  });
  test("around a field", () => {
    const field = { length: ft(300), width: ft(150), swath: ft(10) };
    const round = headerStrips({ ...field, strips: 2, along: "perimeter" });
    // 260 by 110 inside; rounds in the middle of each strip of 880 and 800 less corners: 2 x 2 x 450 - 4 x 4 x 10
    expect(
      [
        round.inner.length,
        round.inner.width,
        round.inner.area,
        round.headerArea,
        round.innerPasses,
        round.distance,
      ].map(String),
    ).toEqual(["260 ft", "110 ft", "28600 ft2", "16400 ft2", "11", "4500 ft"]);
    const ends = headerStrips({ ...field, strips: 1, along: "ends" });
    expect(
      [ends.inner.length, ends.inner.width, ends.headerArea, ends.innerPasses, ends.distance].map(String),
    ).toEqual(["280 ft", "150 ft", "3000 ft2", "15", "4500 ft"]);
    const all = headerStrips({ length: m(100), width: m(40), swath: m(10), strips: 2, along: "perimeter" });
    expect(
      [all.inner.width, all.inner.area, all.headerArea, all.innerPasses, all.distance].map(String),
    ).toEqual(["0 m", "0 m2", "4000 m2", "0", "400 m"]);
    expect(headerStrips({ ...field, strips: 0, along: "perimeter" }).headerArea.value).toBe(0);
  });
  test("in an hour", () => {
    // 43,560 ft2 an hour on 10 ft at 4356 ft an hour
    expect(
      effectiveFieldCapacity({ swath: ft(10), speed: quantity(72.6, "ft/min"), efficiency: percent(100) }).in(
        "acre/h",
      ),
    ).toBeCloseTo(1, 12);
    const metric = effectiveFieldCapacity({
      swath: m(10),
      speed: quantity(5, "km/h"),
      efficiency: percent(80),
    });
    expect([metric.unit, metric.value]).toEqual(["ha/h", 4]);
  });
});
