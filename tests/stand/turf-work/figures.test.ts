import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  coringImpact,
  coringProgram,
  sandForOrganicMatter,
  topdressing,
  verticuttingImpact,
} from "../../../src/stand/index.js";

// Worked by hand, in whole numbers; what lies just at a limit is within it.

const percent = (value: number) => quantity(value, "%");
const inches = (value: number) => quantity(value, "in");

describe("work on turf", () => {
  test("a pass that takes all of the ground is one", () => {
    // a hole of a square inch on each square inch
    const whole = coringImpact({
      diameter: inches(2 / Math.sqrt(Math.PI)),
      measured: "outside",
      holesPerArea: quantity(144, "count/ft2"),
    });
    expect(whole.share.in("%")).toBeCloseTo(100, 10);
  });
  test("holes 2 in apart, a quarter inch of radius, 3 in deep", () => {
    const found = coringImpact({
      spacing: { along: inches(2), across: inches(2) },
      diameter: inches(0.5),
      measured: "inside",
      depth: inches(3),
      area: quantity(1000, "ft2"),
    });
    const share = (100 * (Math.PI / 16)) / 4;
    expect([found.type, found.version, found.measured, found.holesPerArea.toString(), found.holes]).toEqual([
      "coring-impact",
      1,
      "inside",
      "36 count/ft2",
      36_000,
    ]);
    expect(found.share.in("%")).toBeCloseTo(share, 10);
    // a quarter of a foot deep
    expect(found.volume?.in("ft3")).toBeCloseTo(2.5 * share, 9);
    expect(found.volumePerArea?.unit).toBe("ft3/1000 ft2");
    const metric = coringImpact({
      spacing: { along: quantity(5, "cm"), across: quantity(5, "cm") },
      diameter: quantity(10, "mm"),
      measured: "inside",
      depth: quantity(10, "cm"),
      area: quantity(100, "m2"),
    });
    expect([
      metric.holesPerArea.toString(),
      metric.holes,
      metric.volumePerArea?.unit,
      metric.volume?.unit,
    ]).toEqual(["400 count/m2", 40_000, "L/m2", "m3"]);
    expect(metric.volume?.in("m3")).toBeCloseTo(Math.PI * 0.005 ** 2 * 0.1 * 40_000, 10);
    const bare = coringImpact({
      spacing: { along: inches(2), across: inches(2) },
      diameter: inches(0.5),
      measured: "inside",
    });
    expect([bare.holes, bare.volume, bare.volumePerArea]).toEqual([null, null, null]);
  });
  test("a year of two passes of 10 %, one of them twice", () => {
    const pass = {
      measured: "outside",
      diameter: inches(2 / Math.sqrt(Math.PI)),
      holesPerArea: quantity(14.4, "count/ft2"),
    } as const;
    const year = coringProgram({ passes: [pass, { ...pass, times: 2 }], target: percent(25) });
    const value = (share: { in: (unit: "%") => number }) => Number(share.in("%").toFixed(9));
    expect([
      year.type,
      year.version,
      ...year.shares.map(value),
      value(year.sum),
      value(year.distinct),
      value(year.target),
      value(year.lacking),
    ]).toEqual(["coring-program", 1, 10, 20, 30, 27.1, 25, 0]);
    expect(value(coringProgram({ passes: [pass], target: percent(25) }).lacking)).toBe(15);
  });
  test("sand", () => {
    const us = topdressing({
      area: quantity(6000, "ft2"),
      depth: inches(0.1),
      density: quantity(100, "lb/ft3"),
    });
    expect([us.type, us.version, us.depth.toString(), us.perArea.unit]).toEqual([
      "topdressing",
      1,
      "0.1 in",
      "ft3/1000 ft2",
    ]);
    expect([us.perArea.value, us.volume.in("ft3"), us.weight?.in("lb")]).toEqual([
      expect.closeTo(25 / 3, 9),
      expect.closeTo(50, 9),
      expect.closeTo(5000, 7),
    ]);
    const metric = topdressing({
      area: quantity(1000, "m2"),
      perArea: quantity(2, "L/m2"),
      density: quantity(1600, "kg/m3"),
    });
    expect([metric.depth, metric.perArea, metric.volume, metric.weight].map(String)).toEqual([
      "2 mm",
      "2 L/m2",
      "2 m3",
      "3200 kg",
    ]);
    expect(topdressing({ area: quantity(1000, "m2"), perArea: quantity(2, "L/m2") }).weight).toBe(null);
  });
  test("sand for organic matter, in inches too: 25.4 mm of clippings at a half are 0.106 in", () => {
    const of = (value: number, unit: "L/m2" | "ft3/1000 ft2") =>
      sandForOrganicMatter({ clippings: quantity(value, unit), organicMatter: percent(50) });
    const metric = of(10, "L/m2");
    expect([metric.type, metric.version, metric.depth.unit, metric.perArea.unit, metric.coefficient]).toEqual(
      ["sand-for-organic-matter", 1, "mm", "L/m2", 0.106],
    );
    expect([metric.depth.value, metric.perArea.value]).toEqual([
      expect.closeTo(1.06, 12),
      expect.closeTo(1.06, 12),
    ]);
    // an inch over 1000 ft2 is 83.333 ft3
    const us = of(1000 / 12, "ft3/1000 ft2");
    expect([us.depth.unit, us.perArea.unit]).toEqual(["in", "ft3/1000 ft2"]);
    expect([us.depth.value, us.perArea.value]).toEqual([
      expect.closeTo(0.106, 9),
      expect.closeTo((0.106 * 1000) / 12, 7),
    ]);
  });
  test("verticutting", () => {
    const metric = verticuttingImpact({
      blade: quantity(2, "mm"),
      spacing: quantity(25, "mm"),
      depth: quantity(20, "mm"),
      area: quantity(1000, "m2"),
    });
    expect(
      [metric.type, metric.version, metric.share, metric.volumePerArea, metric.volume].map(String),
    ).toEqual(["verticutting-impact", "1", "8 %", "1.6 L/m2", "1.6 m3"]);
    const bare = verticuttingImpact({ blade: quantity(2, "mm"), spacing: quantity(25, "mm") });
    expect([bare.volumePerArea, bare.volume]).toEqual([null, null]);
    // by the unit of the blades where there is no area
    expect(
      verticuttingImpact({ blade: inches(0.1), spacing: inches(1), depth: inches(1) }).volumePerArea?.unit,
    ).toBe("ft3/1000 ft2");
  });
});
