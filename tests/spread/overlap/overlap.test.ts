import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  type Driving,
  overlapDeposits,
  overlappedRate,
  overlappedRateEstimate,
  overlappedVolume,
  type Positions,
  type SpreadPattern,
  spreadPattern,
  swathCvPercent,
  swathUniformity,
} from "../../../src/spread/index.js";
import { complaints } from "../../errors.js";
import { runs } from "../../properties.js";
import { ft, m, percent, row } from "../helpers.js";

const drivings = ["one direction", "back and forth"] as const;
const catchLists = fc
  .array(fc.double({ min: 0, max: 50, noNaN: true }), { minLength: 3, maxLength: 25 })
  .filter((list) => list.some((one) => one > 1e-3));
const places = fc.constantFrom<Positions>("pans", 7, 40);
const close = (a: number, b: number, scale = Math.abs(b)): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.max(scale, 1e-12));

/** The catch at any place, by lines between the pans, down to nothing one meter past the ends of the row. */
const catchAt = (catches: readonly number[], left: number, x: number): number => {
  const at = x + left;
  const low = Math.floor(at);
  const share = at - low;
  return (catches[low] ?? 0) * (1 - share) + (catches[low + 1] ?? 0) * share;
};

/** The deposit at a place, pass by pass over a wide field: as slow and as plain as it gets. */
const depositAt = (
  catches: readonly number[],
  left: number,
  swath: number,
  driving: Driving,
  x: number,
): number => {
  let sum = 0;
  for (let pass = -30; pass <= 30; pass++) {
    const mirrored = driving === "back and forth" && Math.abs(pass) % 2 === 1;
    const from = x - pass * swath;
    sum += catchAt(catches, left, mirrored ? -from : from);
  }
  return sum;
};

const options = (swath: number, driving: Driving, positions: Positions) =>
  ({ swath: m(swath), driving, positions, divisor: "n" }) as const;

/** The same for the deposits, which know no divisor. */
const placed = (...args: Parameters<typeof options>) => {
  const { divisor, ...rest } = options(...args);
  return rest;
};

describe("the deposit after overlap", () => {
  test("is what a simulation of passes gives, at the pans", () => {
    fc.assert(
      fc.property(
        catchLists,
        fc.integer({ min: 2, max: 30 }),
        fc.constantFrom(...drivings),
        fc.integer({ min: 0, max: 48 }),
        (catches, k, driving, place) => {
          const left = (place % (2 * catches.length - 1)) / 2;
          const found = overlapDeposits(row(catches, left), placed(k, driving, "pans"));
          expect(found.deposits).toHaveLength(driving === "one direction" ? k : 2 * k);
          found.deposits.forEach((deposit, i) => {
            const x = found.offsets[i] as number;
            close(deposit, depositAt(catches, left, k, driving, x), 50);
          });
        },
      ),
      runs(60),
    );
  });

  test("in strips is the mean of a simulation over each strip", () => {
    const catches = [0, 2, 7, 3, 9, 4, 1];
    for (const driving of drivings) {
      for (const swath of [2.3, 5, 8.9]) {
        const found = overlapDeposits(row(catches, 2), placed(swath, driving, 6));
        found.deposits.forEach((deposit, i) => {
          const fine = 300;
          const width = swath / 6;
          const from = (found.offsets[i] as number) - width / 2;
          let sum = 0;
          for (let j = 0; j < fine; j++) {
            sum += depositAt(catches, 2, swath, driving, from + ((j + 0.5) / fine) * width);
          }
          expect(deposit).toBeCloseTo(sum / fine, 3);
        });
      }
    }
  });

  test("has the mean of the mass balance, in every mode", () => {
    fc.assert(
      fc.property(
        catchLists,
        fc.integer({ min: 2, max: 40 }),
        fc.constantFrom(...drivings),
        places,
        (catches, k, driving, positions) => {
          const { deposits, mean } = overlapDeposits(row(catches), placed(k, driving, positions));
          close(mean, catches.reduce((a, b) => a + b) / k);
          close(deposits.reduce((a, b) => a + b) / deposits.length, mean);
        },
      ),
    );
  });

  test("has it for any swath and for pans at several distances, too", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(fc.double({ min: 0.2, max: 3, noNaN: true }), fc.double({ min: 0, max: 9, noNaN: true })),
          {
            minLength: 3,
            maxLength: 15,
          },
        ),
        fc.double({ min: 0.5, max: 60, noNaN: true }),
        fc.constantFrom(...drivings),
        (steps, swath, driving) => {
          let x = -steps.reduce((sum, [gap]) => sum + gap, 0) / 2;
          const offsets = steps.map(([gap]) => {
            x += gap;
            return x;
          });
          const catches = steps.map(([, caught], i) =>
            i === 0 || i === steps.length - 1 ? 0 : caught + 0.1,
          );
          fc.pre((offsets[0] as number) <= 0 && (offsets[offsets.length - 1] as number) >= 0);
          const pattern = spreadPattern({ catches, unit: "g", pans: { offsets: offsets.map(m) } });
          // Trapezoids, by hand: the row begins and ends with an empty pan.
          let total = 0;
          for (let i = 1; i < offsets.length; i++) {
            const gap = (offsets[i] as number) - (offsets[i - 1] as number);
            total += (gap * ((catches[i] as number) + (catches[i - 1] as number))) / 2;
          }
          const { deposits, mean } = overlapDeposits(pattern, placed(swath, driving, 12));
          close(mean, total / swath);
          close(deposits.reduce((a, b) => a + b) / deposits.length, total / swath);
        },
      ),
    );
  });
});

const cv = (pattern: SpreadPattern, swath: number, driving: Driving, positions: Positions): number =>
  swathUniformity(pattern, options(swath, driving, positions)).cv.in("%");

describe("the CV", () => {
  test("is the same for a pattern and its mirror image", () => {
    fc.assert(
      fc.property(
        catchLists,
        fc.integer({ min: 2, max: 30 }),
        fc.constantFrom(...drivings),
        places,
        (catches, k, driving, positions) => {
          const turned = row([...catches].reverse());
          expect(cv(turned, k, driving, positions)).toBeCloseTo(cv(row(catches), k, driving, positions), 6);
        },
      ),
    );
  });

  test("of a symmetric pattern is the same in both ways of driving", () => {
    fc.assert(
      fc.property(catchLists, fc.integer({ min: 2, max: 30 }), places, (half, k, positions) => {
        const pattern = row([...half, ...[...half].reverse().slice(1)]);
        expect(cv(pattern, k, "back and forth", positions)).toBeCloseTo(
          cv(pattern, k, "one direction", positions),
          6,
        );
      }),
    );
  });

  test("depends neither on the unit nor on the size of the catches", () => {
    const catches = [0, 1, 4, 7, 6, 2, 0];
    const grams = row(catches);
    const asked = { driving: "back and forth", positions: "pans", divisor: "n-1" } as const;
    const wanted = swathUniformity(grams, { ...asked, swath: m(4) });
    const ounces = spreadPattern({
      catches: catches.map((one) => 17 * one),
      unit: "oz",
      pans: { spacing: quantity(100, "cm"), left: 3 },
    });
    expect(swathUniformity(ounces, { ...asked, swath: m(4) }).cv.in("%")).toBeCloseTo(wanted.cv.in("%"), 9);
    const feet = spreadPattern({ catches, unit: "mL", pans: { spacing: ft(2), left: 3 } });
    expect(swathUniformity(feet, { ...asked, swath: quantity(96, "in") }).cv.in("%")).toBeCloseTo(
      wanted.cv.in("%"),
      9,
    );
    expect(swathUniformity(grams, { ...asked, swath: quantity(400, "cm") }).positions).toBe(8);
  });

  test("by strips counts the same positions in both ways of driving", () => {
    const pattern = row([0, 1, 2, 3, 4, 5, 6, 4, 2, 0], 6);
    for (const driving of drivings) {
      const found = swathUniformity(pattern, { ...options(4, driving, 80), divisor: "n-1" });
      expect(found.positions).toBe(80);
    }
    // Many strips: the continuous value, here from a plain integral over the simulated deposit.
    const values = Array.from({ length: 4000 }, (_, i) =>
      depositAt([0, 1, 2, 3, 4, 5, 6, 4, 2, 0], 6, 4, "back and forth", (i + 0.5) / 500),
    );
    const mean = values.reduce((a, b) => a + b) / values.length;
    const s = Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / values.length);
    expect(cv(pattern, 4, "back and forth", 1000)).toBeCloseTo((100 * s) / mean, 2);
  });

  test("lowest and highest are shares of the mean", () => {
    const found = swathUniformity(
      row([0, 1, 2, 3, 4, 5, 6, 4, 2, 0], 6),
      options(4, "one direction", "pans"),
    );
    expect(found.lowest.in("%")).toBeCloseTo((100 * 6) / 6.75, 9);
    expect(found.highest.in("%")).toBeCloseTo((100 * 8) / 6.75, 9);
  });

  test("guesses no option", () => {
    const pattern = row([0, 1, 2, 1, 0]);
    const full = options(3, "one direction", "pans");
    const without = (key: string): readonly string[] =>
      complaints(() => swathUniformity(pattern, { ...full, [key]: undefined } as never));
    expect(without("driving")).toEqual(["missing driving"]);
    expect(without("positions")).toEqual(["missing positions"]);
    expect(without("divisor")).toEqual(["missing divisor"]);
    expect(without("swath")).toEqual(["missing swath"]);
    expect(complaints(() => swathUniformity(pattern, {} as never))).toEqual([
      "missing swath",
      "missing driving",
      "missing positions",
      "missing divisor",
    ]);
    expect(complaints(() => swathUniformity(pattern, { ...full, swath: m(2.5) }))).toEqual([
      "conflict swath",
    ]);
    expect(complaints(() => swathUniformity(pattern, { ...full, swath: m(0) }))).toEqual(["range swath"]);
    expect(complaints(() => swathUniformity(pattern, { ...full, swath: m(1), divisor: "n-1" }))).toEqual([
      "range swath",
    ]);
    expect(complaints(() => swathUniformity(pattern, { ...full, positions: 1 }))).toEqual([
      "range positions",
    ]);
    expect(complaints(() => swathUniformity({ catches: [1, 2] } as never, full))).toEqual(["type pattern"]);
    expect(complaints(() => swathUniformity(pattern, { ...full, positions: 20, swath: m(1e-6) }))).toEqual([
      "range swath",
    ]);
    expect(complaints(() => swathUniformity(pattern, { ...full, swath: m(2e6) }))).toEqual(["range swath"]);
    expect(
      swathUniformity(pattern, { ...full, positions: 20, swath: m(2e6) }).highest.in("%"),
    ).toBeGreaterThan(1);
  });

  test("at the pans needs pans on one grid with the line of travel", () => {
    const off = spreadPattern({
      catches: [0, 1, 2, 1, 0],
      unit: "g",
      pans: { offsets: [-1.8, -0.8, 0.2, 1.2, 2.2].map(m) },
    });
    expect(cv(off, 3, "one direction", "pans")).toBeCloseTo(
      cv(row([0, 1, 2, 1, 0]), 3, "one direction", "pans"),
      9,
    );
    expect(complaints(() => cv(off, 3, "back and forth", "pans"))).toEqual(["conflict positions"]);
    expect(cv(off, 3, "back and forth", 30)).toBeGreaterThan(0);
    const uneven = spreadPattern({
      catches: [0, 1, 2, 1, 0],
      unit: "g",
      pans: { offsets: [-3, -1, 0, 1, 3].map(m) },
    });
    expect(complaints(() => cv(uneven, 3, "one direction", "pans"))).toEqual(["conflict positions"]);
  });
});

describe("swathCvPercent", () => {
  test("is swathUniformity, swath by swath", () => {
    fc.assert(
      fc.property(
        catchLists,
        fc.constantFrom(...drivings),
        fc.constantFrom("n" as const, "n-1" as const),
        (catches, driving, divisor) => {
          const pattern = row(catches);
          const swathsM = Float64Array.from({ length: 30 }, (_, i) => i + 2);
          const cvs = swathCvPercent({
            depositsKgPerM2: Float64Array.from(catches),
            spacingM: 1,
            firstPanM: -(catches.length - 1) / 2,
            swathsM,
            driving,
            divisor,
          });
          swathsM.forEach((swath, i) => {
            const at = swathUniformity(pattern, { swath: m(swath), driving, positions: "pans", divisor });
            close(cvs[i] as number, at.cv.in("%"), 100);
          });
        },
      ),
      runs(40),
    );
  });

  test("names the pan or the swath that is wrong", () => {
    const good = {
      depositsKgPerM2: Float64Array.of(0, 1, 2, 1, 0),
      spacingM: 0.5,
      swathsM: Float64Array.of(1, 1.5),
      driving: "one direction",
      divisor: "n",
    } as const;
    const bad = (change: object): readonly string[] =>
      complaints(() => swathCvPercent({ ...good, ...change } as never));
    expect(bad({ depositsKgPerM2: Float64Array.of(0, 1, Number.NaN) })).toEqual([
      "not-finite depositsKgPerM2[2]",
    ]);
    expect(bad({ depositsKgPerM2: Float64Array.of(0, -1, 3) })).toEqual(["range depositsKgPerM2[1]"]);
    expect(bad({ depositsKgPerM2: Float64Array.of(0, Number.POSITIVE_INFINITY) })).toEqual([
      "not-finite depositsKgPerM2[1]",
    ]);
    expect(bad({ depositsKgPerM2: Float64Array.of(1e308, 1e308) })).toEqual(["range depositsKgPerM2"]);
    expect(bad({ depositsKgPerM2: new Float64Array(5) })).toEqual(["range depositsKgPerM2"]);
    expect(bad({ depositsKgPerM2: [0, 1] })).toEqual(["type depositsKgPerM2"]);
    expect(bad({ swathsM: Float64Array.of(1, 1.2) })).toEqual(["conflict swathsM[1]"]);
    expect(bad({ swathsM: Float64Array.of(1, 0) })).toEqual(["range swathsM[1]"]);
    expect(bad({ swathsM: Float64Array.of(Number.NaN) })).toEqual(["not-finite swathsM[0]"]);
    expect(bad({ swathsM: Float64Array.of(0.5), divisor: "n-1" })).toEqual(["range swathsM[0]"]);
    expect(bad({ spacingM: 0 })).toEqual(["range spacingM"]);
    expect(bad({ driving: "back and forth" })).toEqual(["missing firstPanM"]);
    expect(bad({ driving: "back and forth", firstPanM: -1.1 })).toEqual(["conflict firstPanM"]);
    expect(bad({ outPercent: new Float64Array(1) })).toEqual(["conflict outPercent"]);
    expect(bad({ swathsM: Float64Array.of(1e9) })).toEqual(["range swathsM[0]"]);
    expect(bad({ outPercent: good.swathsM })).toEqual(["conflict outPercent"]);
  });
});

describe("overlappedRate", () => {
  const pans = { spacing: m(1), left: 3 };
  const catches = [0, 2, 4, 6, 4, 2, 0];

  test("is the mass balance in both systems", () => {
    const metric = spreadPattern({ catches, unit: "g", pans, panArea: quantity(0.25, "m2") });
    const rate = overlappedRate(metric, { swath: m(6) });
    // 18 g over six pans of a quarter of a square meter
    expect(rate.in("kg/ha")).toBeCloseTo((18 / 6 / 0.25) * 10, 9);
    const us = spreadPattern({
      catches: catches.map((one) => quantity(one, "g").in("oz")),
      unit: "oz",
      pans: { spacing: ft(m(1).in("ft")), left: 3 },
      panArea: quantity(quantity(0.25, "m2").in("ft2"), "ft2"),
    });
    expect(overlappedRate(us, { swath: m(6) }).in("kg/ha")).toBeCloseTo(rate.in("kg/ha"), 9);
  });

  test("needs a mass and a pan area", () => {
    const swath = m(6);
    const bare = spreadPattern({ catches, unit: "g", pans });
    expect(complaints(() => overlappedRate(bare, { swath }))).toEqual(["missing pattern.panArea"]);
    const height = spreadPattern({ catches, unit: "in", pans, panArea: quantity(1, "ft2") });
    expect(complaints(() => overlappedRate(height, { swath }))).toEqual(["unit/mismatch pattern.unit"]);
    const once = spreadPattern({ catches, unit: "g", pans, panArea: quantity(1, "ft2") });
    expect(complaints(() => overlappedRateEstimate(once, { swath, panAreaError: percent(1) }))).toEqual([
      "missing pattern.runs",
    ]);
    expect(
      complaints(() => overlappedRateEstimate(bare, { swath: m(0), panAreaError: percent(-1) })),
    ).toEqual(["range swath", "range panAreaError", "missing pattern.panArea", "missing pattern.runs"]);
  });

  test("two weighings have a spread", () => {
    const twice = spreadPattern({
      catches: [catches, catches.map((one) => 1.1 * one)],
      unit: "g",
      pans,
      panArea: quantity(0.25, "m2"),
    });
    const { value, standardError } = overlappedRateEstimate(twice, { swath: m(6), panAreaError: percent(0) });
    expect(value.in("kg/ha")).toBeCloseTo(126, 9);
    // 120 and 132: their standard deviation over the root of two is half their difference
    expect(standardError.in("kg/ha")).toBeCloseTo(6, 9);
  });
});

describe("a spray pattern over its swath", () => {
  const pattern = (unit: string, more: object = {}) =>
    spreadPattern({
      catches: [0, 2, 4, 6, 4, 2, 0],
      unit,
      of: "spray",
      pans: { spacing: quantity(1, "m"), left: 3 },
      ...more,
    });

  test("by volume per area is the mean of what the cards read", () => {
    // 18 L/ha m over 4 m.
    expect(overlappedVolume(pattern("L/ha"), { swath: m(4) }).in("L/ha")).toBeCloseTo(4.5, 12);
  });

  test("by volume goes by the area of a cup", () => {
    // 18 mL m over 4 m is 4.5 mL on 0.01 m2: 450 mL/m2.
    const cups = pattern("mL", { panArea: quantity(0.01, "m2") });
    expect(overlappedVolume(cups, { swath: m(4) }).in("L/ha")).toBeCloseTo(4500, 9);
  });

  test("catches of another kind name the function that takes them", () => {
    expect(() => overlappedVolume(pattern("g"), { swath: m(4) })).toThrow(
      "overlappedRate takes catches by mass",
    );
    const cups = pattern("mL", { panArea: quantity(0.01, "m2") });
    expect(() => overlappedRate(cups, { swath: m(4) })).toThrow("overlappedVolume takes catches by volume");
  });
});
