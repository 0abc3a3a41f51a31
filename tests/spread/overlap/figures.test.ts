import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  overlapDeposits,
  overlappedRate,
  overlappedRateEstimate,
  overlappedVolume,
  spreadPattern,
  swathCvPercent,
  swathSearch,
  swathUniformity,
} from "../../../src/spread/index.js";
import { ft, m, percent, row } from "../helpers.js";

// Worked by hand, in whole numbers.

const ft2 = (value: number) => quantity(value, "ft2");
const m2 = (value: number) => quantity(value, "m2");

const catches = [0, 2, 4, 2, 0];
const pattern = row(catches);
const once = { driving: "one direction", divisor: "n" } as const;
const weighed = spreadPattern({
  catches: [catches, catches],
  unit: "g",
  pans: { spacing: m(1), left: 2 },
  panArea: m2(0.1),
});

describe("overlap", () => {
  test("deposits by pans: at 3 m the shoulders meet, 4 and twice 2", () => {
    const found = overlapDeposits(pattern, { swath: m(3), driving: "one direction", positions: "pans" });
    expect(found).toMatchObject({
      type: "overlap-deposits",
      version: 1,
      driving: "one direction",
      offsetUnit: "m",
      unit: "g",
      deposits: [4, 2, 2],
      offsets: [0, 1, 2],
      findings: [],
    });
    expect(found.mean).toBeCloseTo(8 / 3, 12);
    expect(found.swath.toString()).toBe("3 m");
    // a line of travel half-way between two pans begins half a pan right of it
    const half = row([1, 3, 3, 1], 1.5);
    expect(
      overlapDeposits(half, { swath: m(4), driving: "one direction", positions: "pans" }).offsets,
    ).toEqual([0.5, 1.5, 2.5, 3.5]);
  });
  test("deposits by strips: a triangle of 4 on 4 m, passes 4 m apart, lies between 2 passes", () => {
    const found = overlapDeposits(pattern, { swath: m(4), driving: "one direction", positions: 2 });
    expect(found.offsets).toEqual([-1, 1]);
    expect(found.deposits.map((one) => Number(one.toFixed(9)))).toEqual([2, 2]);
  });
  test("evenness", () => {
    const found = swathUniformity(pattern, { ...once, positions: "pans", swath: m(3) });
    expect(found).toMatchObject({
      type: "swath-uniformity",
      version: 1,
      driving: "one direction",
      divisor: "n",
      positions: 3,
      findings: [],
    });
    // 4, 2, 2 about 8/3: squares 16/9, 4/9, 4/9 by 3
    expect(found.cv.in("%")).toBeCloseTo((100 * Math.sqrt(24 / 27)) / (8 / 3), 9);
    expect([found.lowest.in("%"), found.highest.in("%")]).toEqual([
      expect.closeTo(75, 9),
      expect.closeTo(150, 9),
    ]);
  });
});

describe("a search for a swath", () => {
  test("a search names its steps, its ranges and the widest", () => {
    const found = swathSearch(pattern, { ...once, positions: "pans", limit: percent(40), to: m(5) });
    expect(found).toMatchObject({
      type: "swath-search",
      version: 1,
      driving: "one direction",
      positions: "pans",
      divisor: "n",
      findings: [],
    });
    expect([found.step, found.limit].map(String)).toEqual(["1 m", "40 %"]);
    // at 2 m 4 and 4; at 3 m 35.4 %; at 4 m 4, 2, 0, 2: 70.7 %
    expect(found.rows.map(({ swath, cv }) => `${swath} ${cv.in("%").toFixed(1)}`)).toEqual([
      "2 m 0.0",
      "3 m 35.4",
      "4 m 70.7",
      "5 m 93.5",
    ]);
    expect(found.ranges.map(({ from, to, lowest }) => [from, to, lowest.swath].map(String))).toEqual([
      ["2 m", "3 m", "2 m"],
    ]);
    expect(found.widest?.swath.toString()).toBe("3 m");
  });
  test("a search by strips, and one that finds nothing", () => {
    const none = swathSearch(pattern, {
      ...once,
      positions: "pans",
      limit: percent(1.5),
      from: m(3),
      to: m(3),
    });
    expect([none.rows.length, none.ranges, "widest" in none]).toEqual([1, [], false]);
    const strips = swathSearch(pattern, {
      ...once,
      positions: 4,
      limit: percent(40),
      from: m(2),
      to: m(3),
      step: m(0.5),
    });
    expect([strips.step.toString(), ...strips.rows.map(({ swath }) => swath.toString())]).toEqual([
      "0.5 m",
      "2 m",
      "2.5 m",
      "3 m",
    ]);
    // by strips it begins at one step, and ends where the throw does
    const wide = swathSearch(pattern, { ...once, positions: 4, limit: percent(40) });
    expect(wide.rows.map(({ swath }) => swath.in("m"))).toEqual([1, 2, 3, 4]);
    const tenths = swathSearch(row([0, 1, 2, 1, 0]), {
      ...once,
      positions: 2,
      limit: percent(90),
      from: m(0.1),
      to: m(0.3),
      step: m(0.1),
    });
    expect(tenths.rows.map(({ swath }) => swath.value)).toEqual([0.1, 0.2, 0.3]);
    expect(
      swathSearch(pattern, {
        ...once,
        positions: 2,
        limit: percent(90),
        from: m(1),
        to: m(100.99),
        step: m(0.01),
      }).rows,
    ).toHaveLength(10_000);
  });
});

describe("rates by overlap", () => {
  test("rates off the pans: 8 g on a tenth of a square meter over 4 m are 20 g/m2", () => {
    expect(overlappedRate(weighed, { swath: m(4) }).toString()).toBe("200 kg/ha of product");
    const us = spreadPattern({ catches, unit: "g", pans: { spacing: ft(1), left: 2 }, panArea: ft2(1) });
    expect(overlappedRate(us, { swath: ft(4) }).in("g/ft2")).toBeCloseTo(2, 12);
    expect(overlappedRate(us, { swath: ft(4) }).unit).toBe("lb/1000 ft2");
    const poured = spreadPattern({
      catches,
      unit: "mL",
      of: "spray",
      pans: { spacing: m(1), left: 2 },
      panArea: m2(0.1),
    });
    expect(overlappedVolume(poured, { swath: m(4) }).toString()).toBe("200 L/ha of spray");
    const cards = spreadPattern({
      catches,
      unit: "gal/acre",
      of: "spray",
      pans: { spacing: ft(1), left: 2 },
    });
    expect(overlappedVolume(cards, { swath: ft(4) }).toString()).toBe("2 gal/acre of spray");
    const estimate = overlappedRateEstimate(weighed, { swath: m(4), panAreaError: percent(10) });
    expect([estimate.value, estimate.standardError].map(String)).toEqual([
      "200 kg/ha of product",
      "20 kg/ha of product",
    ]);
  });
});

describe("many swaths at once", () => {
  const cv = (swaths: readonly number[], scale = 1) => [
    ...swathCvPercent({
      depositsKgPerM2: Float64Array.of(1, 3, 0),
      spacingM: scale,
      firstPanM: -scale,
      swathsM: Float64Array.from(swaths, (swath) => swath * scale),
      driving: "back and forth",
      divisor: "n",
    }),
  ];
  test("give what each gives alone, in any order and at any distance of the pans", () => {
    // 3, 0, 3 and 2 on four places about 2, as in the table of constants
    expect(cv([2])[0]).toBeCloseTo(100 * Math.sqrt(6 / 16), 10);
    for (const scale of [0.5, 2, 3]) expect(cv([2], scale)[0]).toBeCloseTo(100 * Math.sqrt(6 / 16), 10);
    const alone = [3, 2, 1].map((swath) => cv([swath])[0]);
    expect(cv([3, 2, 1])).toEqual(alone);
    expect(cv([1, 2, 3])).toEqual([...alone].reverse());
  });
});
