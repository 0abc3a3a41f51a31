import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  overlapDeposits,
  overlappedRate,
  overlappedVolume,
  spreadPattern,
  swathCvPercent,
  swathSearch,
  swathUniformity,
} from "../../../src/spread/index.js";
import { problemsOf } from "../../errors.js";
import { ft, m, percent } from "../helpers.js";

// Overlap at its joints: patterns that reach farther on one side, pans that do not stand at one, and what is refused.

const pans = (catches: readonly number[], left: number, spacing = 1, unit = "g") =>
  spreadPattern({ catches, unit, pans: { spacing: m(spacing), left } });

describe("nothing is lost in strips", () => {
  test.each(["one direction", "back and forth"] as const)("of a pattern to one side, %s", (driving) => {
    // All of it falls 6 to 8 m to the left of the line of travel: 9 g over a meter, two of them on each side of the peak.
    for (const [catches, left] of [
      [[0, 3, 3, 3, 0, 0, 0, 0, 0, 0, 0], 9],
      [[0, 0, 0, 0, 0, 0, 0, 3, 3, 3, 0], 1],
    ] as const)
      for (const swath of [0.7, 1, 2, 3, 5]) {
        const { deposits, mean } = overlapDeposits(pans(catches, left), {
          swath: m(swath),
          driving,
          positions: 8,
        });
        const caught = deposits.reduce((sum, one) => sum + one, 0) / deposits.length;
        expect(mean).toBeCloseTo(9 / swath, 10);
        expect(caught).toBeCloseTo(9 / swath, 10);
      }
  });
});

describe("pans that stand two meters apart", () => {
  const two = pans([1, 2, 4, 2, 1], 2, 2);

  test("are told by their places, from the line of travel on", () => {
    // A swath of 4 m is two pans: 1 + 4 + 1 at the line, 2 + 2 beside it.
    const found = overlapDeposits(two, { swath: m(4), driving: "one direction", positions: "pans" });
    expect([found.offsets, found.deposits]).toEqual([
      [0, 2],
      [6, 4],
    ]);
    const half = overlapDeposits(pans([1, 2, 2, 1], 1.5, 2), {
      swath: m(4),
      driving: "one direction",
      positions: "pans",
    });
    expect(half.offsets).toEqual([1, 3]);
  });

  test("are searched from two of them on", () => {
    const { rows, step } = swathSearch(two, {
      driving: "one direction",
      positions: "pans",
      divisor: "n",
      limit: percent(15),
    });
    expect([rows[0]?.swath.in("m"), step.in("m")]).toEqual([4, 2]);
    // The search comes to what each swath comes to by itself.
    for (const { swath, cv } of rows)
      expect(cv.in("%")).toBeCloseTo(
        swathUniformity(two, { swath, driving: "one direction", positions: "pans", divisor: "n" }).cv.in("%"),
        10,
      );
    expect(rows.length).toBeGreaterThan(3);
  });
});

describe("the kernel", () => {
  const given = {
    depositsKgPerM2: Float64Array.of(1, 3, 1),
    spacingM: 2,
    swathsM: Float64Array.of(4),
    driving: "one direction",
    divisor: "n",
  } as const;
  const refused = (change: object) =>
    problemsOf(() => swathCvPercent({ ...given, ...change })).map(({ code, path, expected }) => [
      code,
      path,
      expected,
    ]);

  test("writes into neither of its inputs", () => {
    const own = "a separate list: no memory shared with inputs";
    const swathsM = Float64Array.of(4, 6, 8);
    for (const outPercent of [given.depositsKgPerM2, swathsM])
      expect(refused({ swathsM, outPercent })).toEqual([["conflict", "outPercent", own]]);
  });

  test("names the first catch that is no number, and the least of two positions in meters", () => {
    expect(refused({ depositsKgPerM2: Float64Array.of(Number.POSITIVE_INFINITY, 1, 1) })).toEqual([
      ["not-finite", "depositsKgPerM2[0]", "a finite number"],
    ]);
    expect(refused({ swathsM: Float64Array.of(2), divisor: "n-1" })).toEqual([
      ["range", "swathsM[0]", "4 m or more, two positions, for the divisor n-1"],
    ]);
    expect(refused({ swathsM: Float64Array.of(2.2e6) })[0]?.[2]).toContain("2000000 or less");
  });

  test("takes a swath that is a whole number of pans but for its last digits, however small", () => {
    const small = { spacingM: 0.001 };
    expect(refused({ ...small, swathsM: Float64Array.of(0.002 * (1 + 5e-10)) })).toEqual([]);
    expect(refused({ ...small, swathsM: Float64Array.of(0.002 * (1 + 5e-6)) })[0]?.slice(0, 2)).toEqual([
      "conflict",
      "swathsM[0]",
    ]);
  });
});

describe("a rate of catches", () => {
  const heights = spreadPattern({
    catches: [0, 2, 0],
    unit: "cm",
    of: "none",
    pans: { spacing: ft(1), left: 1 },
    panArea: quantity(1, "ft2"),
  });
  const expected = (call: () => unknown) =>
    problemsOf(call).map(({ code, path, expected: words }) => [code, path, words]);

  test("of heights in a tube is refused, and no other function is named that would refuse them, too", () => {
    expect(expected(() => overlappedRate(heights, { swath: ft(2) }))).toEqual([
      ["unit/mismatch", "pattern.unit", "catches by mass"],
    ]);
    expect(expected(() => overlappedVolume(heights, { swath: ft(2) }))).toEqual([
      ["unit/mismatch", "pattern.unit", "catches by volume, or by volume per area"],
    ]);
  });

  test("that no number holds is refused at the catches", () => {
    const of = (unit: "g" | "mL") =>
      spreadPattern({
        catches: [0, 1e150, 0],
        unit,
        pans: { spacing: ft(1), left: 1 },
        panArea: quantity(1e-200, "ft2"),
      });
    for (const call of [
      () => overlappedRate(of("g"), { swath: ft(1e-100) }),
      () => overlappedVolume(of("mL"), { swath: ft(1e-100) }),
    ])
      expect(expected(call).map(([, path]) => path)).toEqual(["pattern.catches"]);
  });
});
