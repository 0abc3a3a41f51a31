import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { deicingRate } from "../../../src/spread/index.js";

// Worked by hand, in whole numbers.

describe("ice", () => {
  const at = (value: number, more: object = {}) => deicingRate({ pavement: quantity(value, "°F"), ...more });
  test("a bound that two steps share takes the warmer one", () => {
    const rates = [40, 30, 29.9, 25, 24, 20, 19, 15, 14, 5, 4, -60].map(
      (f) => at(f).rate?.in("lb/1000 ft2") ?? null,
    );
    expect(rates).toEqual([3, 3, 5, 5, 6, 6, 7, 7, 8, 8, null, null]);
    expect([at(20).type, at(20).version, at(20).table]).toEqual([
      "deicing-rate",
      1,
      "walks and lots, Illinois",
    ]);
  });
  test("a third less where it is wetted", () => {
    expect(at(20, { prewet: "a third less" }).rate?.in("lb/1000 ft2")).toBe(4);
    expect(at(20, { prewet: "none" }).rate?.in("lb/1000 ft2")).toBe(6);
  });
  test("findings carry their figures and their sources", () => {
    const of = (f: number, more: object = {}) =>
      at(f, more).findings.map(({ code, severity, params }) => [code, severity, params]);
    const chloride = ["deicing/chloride", "caution", {}];
    const differ = ["deicing/sources-differ", "note", { lbPer1000Ft2: 4 }];
    const cold = ["deicing/too-cold", "warning", { belowF: 15 }];
    expect(of(30)).toEqual([chloride]);
    // just 4 lb is not above 4
    expect(of(20, { prewet: "a third less" })).toEqual([chloride]);
    expect(of(15)).toEqual([chloride, differ]);
    expect(of(14)).toEqual([chloride, cold, differ]);
    expect(of(4)).toEqual([chloride, cold]);
    for (const { source } of at(14).findings)
      expect(source).toMatchObject({
        title: expect.any(String),
        publisher: expect.any(String),
        where: expect.any(String),
        url: expect.stringMatching(/^https:/),
      });
  });
  test("a table of one's own", () => {
    const table = {
      id: "ours",
      material: "sand",
      steps: [
        { fromF: 40, lbPer1000Ft2: 0 },
        { fromF: -60, lbPer1000Ft2: 100 },
      ],
      read: "2026-11",
      note: "",
      source: { title: "ours", publisher: "the park" },
    };
    expect([at(40, { table }).rate?.value, at(39, { table }).rate?.value, at(39, { table }).table]).toEqual([
      0,
      100,
      "ours",
    ]);
  });
});
