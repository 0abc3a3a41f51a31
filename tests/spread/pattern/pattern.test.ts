import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  effectiveSwath,
  patternBalance,
  spreadPattern,
  swathFromThrow,
  swathSearch,
  swathUniformity,
  thrownWidth,
  throwRules,
  uniformityLimit,
  uniformityLimits,
} from "../../../src/spread/index.js";
import { complaints } from "../../errors.js";
import { ft, m, percent, row } from "../helpers.js";

const pans = { spacing: m(1), left: 2 };

describe("spreadPattern", () => {
  test("takes the mean of the weighings and divides by the passes", () => {
    const pattern = spreadPattern({
      catches: [
        [0, 3, 9, 3, 0],
        [0, 6, 12, 0, 0],
      ],
      unit: "g",
      passes: 3,
      pans,
    });
    expect(pattern.catches).toEqual([0, 1.5, 3.5, 0.5, 0]);
    expect(pattern.runs[1]).toEqual([0, 2, 4, 0, 0]);
    expect(pattern.findings).toEqual([]);
    expect(pattern.of).toBe("product");
  });

  test("says that the row was too short, on which side", () => {
    const sides = row([1, 2, 3, 2, 0]).findings.map(({ code, params }) => [code, params.side]);
    expect(sides).toEqual([["pattern/row-too-short", "left"]]);
    expect(row([1, 2, 3, 2, 1]).findings).toHaveLength(2);
  });

  test("offsets at one distance are a spacing, with the line of travel where it is", () => {
    const pattern = spreadPattern({
      catches: [0, 1, 2, 0],
      unit: "g",
      pans: { offsets: [ft(-3), ft(-1), quantity(12, "in"), ft(3)] },
    });
    expect(pattern.spacing).toBe(2);
    expect(pattern.offsets).toEqual([-3, -1, 1, 3]);
    const same = spreadPattern({ catches: [0, 1, 2, 0], unit: "g", pans: { spacing: ft(2), left: 1.5 } });
    expect(same.offsets).toEqual([-3, -1, 1, 3]);
  });

  test("names what is missing and where", () => {
    const bad = (change: object): readonly string[] =>
      complaints(() => spreadPattern({ catches: [0, 1, 2, 1, 0], unit: "g", pans, ...change } as never));
    expect(bad({ catches: [0, 1, undefined, null, 0] })).toEqual([
      "missing catches[2]",
      "missing catches[3]",
    ]);
    const hole: number[] = [0, 1];
    hole[3] = 1;
    hole[4] = 0;
    expect(bad({ catches: hole })).toEqual(["missing catches[2]"]);
    expect(
      bad({
        catches: [
          [0, 1, 2, 1, 0],
          [0, 1, Number.NaN, -1, 0],
        ],
      }),
    ).toEqual(["not-finite catches[1][2]", "range catches[1][3]"]);
    expect(
      bad({
        catches: [
          [0, 1, 2, 1, 0],
          [0, 1, 2],
        ],
      }),
    ).toEqual(["conflict catches[1]"]);
    expect(bad({ catches: [[0, 1, 2, 1, 0], 3] })).toEqual(["type catches[1]"]);
    expect(bad({ catches: [5] })).toEqual(["missing catches"]);
    expect(bad({ catches: [] })).toEqual(["missing catches"]);
    expect(bad({ catches: [0, 0, 0, 0, 0] })).toEqual(["range catches"]);
    expect(bad({ catches: undefined, unit: undefined })).toEqual(["missing unit", "missing catches"]);
    expect(bad({ catches: ["0", 1, 2, 1, 0] })).toEqual(["not-finite catches[0]"]);
    expect(bad({ unit: "grams" })).toEqual(["unit/unknown unit"]);
    expect(bad({ unit: "ft2" })).toEqual(["unit/mismatch unit"]);
    expect(bad({ of: "fertiliser" })).toEqual(["substance/unknown of"]);
    expect(bad({ passes: 0 })).toEqual(["range passes"]);
    expect(bad({ panArea: quantity(0, "ft2") })).toEqual(["range panArea"]);
    expect(bad({ pans: { spacing: m(0), left: 2 } })).toEqual(["range pans.spacing"]);
    expect(bad({ pans: { spacing: m(1) } })).toEqual(["missing pans.left"]);
    expect(bad({ pans: { spacing: m(1), left: 5 } })).toEqual(["range pans.left"]);
    expect(bad({ pans: { offsets: [-1, 0, 1].map(m) } })).toEqual(["conflict pans.offsets"]);
    expect(bad({ pans: { offsets: [-2, -1, 0, 0, 1].map(m) } })).toEqual(["conflict pans.offsets[3]"]);
    expect(bad({ pans: { offsets: [1, 2, 3, 4, 5].map(m) } })).toEqual(["conflict pans.offsets"]);
    expect(bad({ pans: { offsets: [m(-2), m(-1), undefined, m(1), m(2)] } })).toEqual([
      "missing pans.offsets[2]",
    ]);
    expect(bad({ pans: undefined })).toEqual(["missing pans"]);
    expect(bad({ catches: [1e308, 1e308, 1e308, 0, 0] })).toEqual(["range catches"]);
    expect(bad({ catches: [0, 0, 1e-310, 0, 0] })).toEqual(["range catches"]);
  });

  test("comes back from JSON", () => {
    const pattern = spreadPattern({ catches: [0, 1, 3, 1, 0], unit: "g", pans, panArea: quantity(1, "ft2") });
    const back = JSON.parse(JSON.stringify(pattern)) as typeof pattern;
    const options = { swath: m(3), driving: "one direction", positions: "pans", divisor: "n" } as const;
    expect(swathUniformity(back, options)).toEqual(swathUniformity(pattern, options));
    const broken = (change: object): readonly string[] =>
      complaints(() => swathUniformity({ ...back, ...change } as never, options));
    expect(broken({ catches: [0, null, 1, 0, 0] })).toEqual(["not-finite pattern.catches[1]"]);
    expect(broken({ catches: [0, 1, 0] })).toEqual(["conflict pattern.offsets", "conflict pattern.runs[0]"]);
    expect(broken({ catches: [0, 0, 0, 0, 0] })).toEqual(["range pattern.catches"]);
    expect(broken({ offsets: [-2, -1, -1, 1, 2] })).toEqual(["range pattern.offsets[2]"]);
    expect(broken({ spacing: 2 })).toEqual(["conflict pattern.spacing"]);
    expect(broken({ runs: [[0, 1, -3, 1, 0]] })).toEqual(["range pattern.runs[0][2]"]);
    // biome-ignore lint/suspicious/noSparseArray: what a list with a hole is read as
    expect(broken({ runs: [[0, 1, , 1, 0]] })).toEqual(["missing pattern.runs[0][2]"]);
    expect(broken({ runs: undefined })).toEqual(["missing pattern.runs"]);
    expect(broken({ offsetUnit: "g", unit: "grams", of: 3 })).toEqual([
      "unit/mismatch pattern.offsetUnit",
      "unit/unknown pattern.unit",
      "substance/unknown pattern.of",
    ]);
  });
});

describe("effectiveSwath", () => {
  const triangle = row([0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1, 0]);

  test("left and right are taken apart", () => {
    const skewed = row([0, 1, 2, 3, 4, 5, 6, 4, 2, 0], 6);
    const found = effectiveSwath(skewed, { rule: "half of peak" });
    // 3 at three pans on the left; between 4 and 2 on the right
    expect(found.left.in("m")).toBeCloseTo(3, 12);
    expect(found.right.in("m")).toBeCloseTo(1.5, 12);
    expect(found.swath.in("m")).toBeCloseTo(4.5, 12);
    expect(found.level).toBe(3);
  });

  test("the rules differ, as they do in print", () => {
    const swath = (
      rule: "half of peak" | "half of center mean" | "half of center pan",
      centerPans?: number,
    ) => effectiveSwath(triangle, centerPans === undefined ? { rule } : { rule, centerPans }).swath.in("m");
    expect(swath("half of peak")).toBe(6);
    expect(swath("half of center pan")).toBe(6);
    expect(swath("half of center mean")).toBeCloseTo(6.667, 3);
    // The mean of five is 4.8, its half lies 3.6 off the center.
    expect(swath("half of center mean", 5)).toBeCloseTo(7.2, 12);
    expect(swath("half of center mean", 1)).toBe(6);
    expect(complaints(() => swath("half of center mean", 4))).toEqual(["conflict centerPans"]);
    expect(complaints(() => swath("half of peak", 3))).toEqual(["conflict centerPans"]);
  });

  test("with the line between two pans four of them make the center", () => {
    const even = row([0, 2, 4, 6, 6, 4, 2, 0]);
    expect(effectiveSwath(even, { rule: "half of center mean" }).level).toBe(2.5);
    expect(complaints(() => effectiveSwath(even, { rule: "half of center pan" }))).toEqual([
      "infeasible rule",
    ]);
    expect(complaints(() => effectiveSwath(even, { rule: "half of center mean", centerPans: 3 }))).toEqual([
      "conflict centerPans",
    ]);
  });

  test("a pattern that comes down to the level just at the last pan ends there", () => {
    // Half of 6 is 3: on the left the pan at -2 m has it, on the right it lies a quarter of the way from 4 to 0.
    const left = effectiveSwath(row([3, 4, 6, 4, 0]), { rule: "half of peak" });
    expect([left.left.in("m"), left.right.in("m"), left.swath.in("m")]).toEqual([2, 1.25, 3.25]);
    expect(left.findings.map(({ code }) => code)).toEqual(["pattern/row-too-short"]);
    const right = effectiveSwath(row([0, 4, 6, 4, 3]), { rule: "half of peak" });
    expect([right.left.in("m"), right.right.in("m"), right.swath.in("m")]).toEqual([1.25, 2, 3.25]);
    const both = effectiveSwath(row([3, 4, 6, 4, 3]), { rule: "half of peak" });
    expect(both.swath.in("m")).toBe(4);
    // A dip that comes back to the level at the end: four crossings, the outermost of them the last pan.
    const dip = effectiveSwath(row([0, 6, 2, 1, 3]), { rule: "half of peak" });
    expect([dip.left.in("m"), dip.right.in("m")]).toEqual([1.5, 2]);
    expect(dip.findings.map(({ code }) => code)).toContain("pattern/several-crossings");
  });

  test("a pattern that does not come down inside the row has no swath by this rule", () => {
    expect(complaints(() => effectiveSwath(row([4, 5, 6, 5, 0]), { rule: "half of peak" }))).toEqual([
      "infeasible pattern.catches[0]",
    ]);
    expect(complaints(() => effectiveSwath(row([0, 5, 6, 5, 4]), { rule: "half of peak" }))).toEqual([
      "infeasible pattern.catches[4]",
    ]);
    expect(complaints(() => effectiveSwath(row([0, 5, 0, 5, 0]), { rule: "half of center pan" }))).toEqual([
      "infeasible pattern",
    ]);
    expect(complaints(() => effectiveSwath(triangle, {} as never))).toEqual(["missing rule"]);
    expect(complaints(() => effectiveSwath(triangle, { rule: "half" } as never))).toEqual(["type rule"]);
  });

  test("several crossings are said", () => {
    const two = effectiveSwath(row([0, 6, 1, 1, 1, 6, 0]), { rule: "half of peak" });
    expect(two.findings.map(({ code }) => code)).toEqual(["pattern/several-crossings"]);
    expect(two.swath.in("m")).toBeCloseTo(5, 12);
    expect(effectiveSwath(triangle, { rule: "half of peak" }).findings).toEqual([]);
  });

  test("does not depend on the unit", () => {
    const catches = [0, 1, 3, 6, 4, 1, 0];
    const meters = effectiveSwath(row(catches), { rule: "half of peak" }).swath;
    const feet = spreadPattern({ catches, unit: "oz", pans: { spacing: ft(m(1).in("ft")), left: 3 } });
    expect(effectiveSwath(feet, { rule: "half of peak" }).swath.in("m")).toBeCloseTo(meters.in("m"), 9);
  });
});

describe("thrown width and balance", () => {
  test("the throw lies between the last caught and the first empty pan", () => {
    const found = thrownWidth(row([0, 0, 1, 2, 3, 2, 0, 0]));
    expect([found.least.in("m"), found.most.in("m")]).toEqual([3, 5]);
    expect(complaints(() => thrownWidth(row([0, 1, 2, 1, 1])))).toEqual(["infeasible pattern.catches[4]"]);
  });

  test("half of the throw of a triangle is the swath at which it is even", () => {
    const triangle = row([0, 1, 2, 3, 4, 5, 6, 5, 4, 3, 2, 1, 0]);
    const swath = swathFromThrow({ thrown: thrownWidth(triangle).most, rule: "half" }).most;
    const options = { driving: "back and forth", positions: 24, divisor: "n" } as const;
    expect(swathUniformity(triangle, { swath, ...options }).cv.in("%")).toBeCloseTo(0, 9);
    expect(throwRules.every(({ least, most }) => 0 < least && least <= most && most < 1)).toBe(true);
    expect(complaints(() => swathFromThrow({ thrown: m(10), rule: "50 %" } as never))).toEqual(["type rule"]);
    expect(complaints(() => swathFromThrow({ thrown: m(0) } as never))).toEqual([
      "range thrown",
      "missing rule",
    ]);
  });

  test("a pattern and its mirror image lie on opposite sides", () => {
    const catches = [0, 1, 2, 3, 4, 5, 6, 4, 2, 0];
    const balance = patternBalance(row(catches, 6));
    const turned = patternBalance(row([...catches].reverse(), 3));
    // sum of x p over sum of p, by hand: -27 / 27
    expect(balance.center.in("m")).toBeCloseTo(-1, 12);
    expect(turned.center.in("m")).toBeCloseTo(1, 12);
    expect(balance.left.in("%")).toBeCloseTo(turned.right.in("%"), 9);
    expect(balance.left.in("%") + balance.right.in("%")).toBeCloseTo(100, 9);
    // 1 + 2 + 3 + 4 + 5 and half of 6, of 27
    expect(balance.left.in("%")).toBeCloseTo((100 * 18) / 27, 9);
    const even = patternBalance(row([0, 2, 5, 2, 0]));
    expect(even.center.in("m")).toBeCloseTo(0, 12);
    expect(even.left.in("%")).toBeCloseTo(50, 12);
  });
});

describe("swathSearch", () => {
  const mShape = row([1, 3, 5, 4, 3, 2, 3, 4, 5, 3, 1]);
  const options = { driving: "one direction", positions: "pans", divisor: "n" } as const;

  test("finds a range behind a gap, where a bisection finds none", () => {
    const found = swathSearch(mShape, { ...options, limit: percent(25) });
    expect(found.ranges.map(({ from, to }) => [from.in("m"), to.in("m")])).toEqual([
      [2, 4],
      [9, 9],
    ]);
    expect(found.widest?.swath.in("m")).toBe(9);
    // A row with a zero beyond on either side: twelve spacings from end to end.
    expect(found.rows.map(({ swath }) => swath.in("m"))).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(found.findings).toHaveLength(2);
  });

  test("has the CV of swathUniformity in every row, whatever the positions", () => {
    for (const positions of ["pans", 25] as const) {
      for (const driving of ["one direction", "back and forth"] as const) {
        const asked = { driving, positions, divisor: "n-1" } as const;
        for (const { swath, cv } of swathSearch(mShape, { ...asked, limit: percent(15) }).rows) {
          if (positions === 25 && swath.in("m") < 2) continue;
          expect(cv.in("%")).toBeCloseTo(swathUniformity(mShape, { ...asked, swath }).cv.in("%"), 9);
        }
      }
    }
  });

  test("meets the limit in every range and nowhere else", () => {
    const limit = percent(30);
    const { rows, ranges, widest } = swathSearch(mShape, { ...options, limit });
    const inside = (x: number): boolean =>
      ranges.some(({ from, to }) => x >= from.in("m") && x <= to.in("m"));
    for (const { swath, cv } of rows) expect(inside(swath.in("m"))).toBe(cv.in("%") <= 30 + 1e-7);
    expect(
      ranges.every(
        ({ lowest, from, to }) => lowest.swath.value >= from.value && lowest.swath.value <= to.value,
      ),
    ).toBe(true);
    expect(widest?.swath.value).toBe(Math.max(...ranges.map(({ to }) => to.value)));
    expect(swathSearch(mShape, { ...options, limit: percent(1.1) }).widest).toBeUndefined();
  });

  test("a CV equal to the limit is within", () => {
    const triangle = row([0, 1, 2, 3, 2, 1, 0]);
    const at = swathUniformity(triangle, { ...options, swath: m(4) }).cv;
    const found = swathSearch(triangle, { ...options, limit: at, from: m(4), to: m(4) });
    expect(found.ranges).toHaveLength(1);
  });

  test("steps, ends and their mistakes", () => {
    const limit = percent(20);
    const swaths = (more: object): readonly number[] =>
      swathSearch(mShape, { ...options, limit, ...more }).rows.map(({ swath }) => swath.in("m"));
    expect(swaths({ from: m(4), to: m(8), step: m(2) })).toEqual([4, 6, 8]);
    expect(swaths({ from: m(3), to: m(4), positions: 40, step: m(0.5) })).toEqual([3, 3.5, 4]);
    // From where it is said, whatever the step.
    expect(swaths({ from: m(5), to: m(9), step: m(2) })).toEqual([5, 7, 9]);
    expect(swaths({ from: m(5), to: m(9.9), step: m(2), positions: 40 })).toEqual([5, 7, 9]);
    expect(swaths({ from: m(2.2), to: m(2.5), step: m(0.1), positions: 40 })).toEqual([2.2, 2.3, 2.4, 2.5]);
    expect(swaths({ step: m(3) })).toEqual([2, 5, 8, 11]);
    const bad = (more: object): readonly string[] => complaints(() => swaths(more));
    expect(bad({ step: m(1.5) })).toEqual(["conflict step"]);
    expect(bad({ step: m(0.5) })).toEqual(["conflict step"]);
    expect(bad({ from: m(2.5), to: m(5) })).toEqual(["conflict from"]);
    expect(bad({ from: m(2.5), step: m(0.5) })).toEqual(["conflict step", "conflict from"]);
    expect(bad({ from: m(9), to: m(8) })).toEqual(["conflict to"]);
    expect(bad({ from: m(1e12), to: m(1e12 + 2) })).toEqual(["range from"]);
    expect(bad({ to: m(1e7), step: m(1e4) })).toEqual(["range to"]);
    expect(bad({ positions: 20, step: m(1e-7) })).toEqual(["range step"]);
    expect(bad({ limit: percent(0) })).toEqual(["range limit"]);
    expect(bad({ limit: undefined, driving: undefined })).toEqual(["missing driving", "missing limit"]);
    expect(bad({ from: m(1), divisor: "n-1" })).toEqual(["range from"]);
    const uneven = spreadPattern({
      catches: [0, 1, 2, 1, 0],
      unit: "g",
      pans: { offsets: [-3, -1, 0, 1, 3].map(m) },
    });
    expect(complaints(() => swathSearch(uneven, { ...options, limit }))).toEqual(["conflict positions"]);
    expect(complaints(() => swathSearch(uneven, { ...options, positions: 20, limit }))).toEqual([
      "missing step",
    ]);
  });
});

test("every limit has a source and says how it was reached", () => {
  expect(uniformityLimits.every(({ source, meaning }) => source.title !== "" && meaning !== "")).toBe(true);
  expect(uniformityLimits.filter(({ reached }) => reached === "from memory").map(({ id }) => id)).toEqual([
    "en-13739",
  ]);
  expect(new Set(uniformityLimits.map(({ id }) => id)).size).toBe(uniformityLimits.length);
  expect(complaints(() => uniformityLimit("australian"))).toEqual(["type id"]);
});
