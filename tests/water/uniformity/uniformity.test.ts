import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  catchCanTest,
  christiansenFromLowerQuarter,
  christiansenUniformity,
  distributionUniformity,
  schedulingCoefficient,
} from "../../../src/water/index.js";
import { complaints } from "../../errors.js";
import { close, inch, min, mm, mmPerHour, percent, untyped } from "../helpers.js";

const cans = fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 4, maxLength: 40 });

describe("uniformity", () => {
  test("the order, the unit and the size of the cans change nothing", () => {
    fc.assert(
      fc.property(cans, fc.double({ min: 0.1, max: 10, noNaN: true }), (list, times) => {
        const catches = list.map(mm);
        for (const of of [distributionUniformity, christiansenUniformity]) {
          const du = of({ catches }).in("%");
          close(of({ catches: [...catches].reverse() }).in("%"), du, 1e-9);
          close(of({ catches: list.map((x) => inch((x * times) / 25.4)) }).in("%"), du, 1e-9);
          close(of({ catches: list.map((x) => quantity(x * times, "mL", "water")) }).in("%"), du, 1e-9);
        }
      }),
    );
  });

  test("even cans are 100 %, and the lower quarter is never above the lower half, nor that above 100 %", () => {
    fc.assert(
      fc.property(
        cans,
        fc.constantFrom("nearest" as const, "up" as const, "down" as const),
        (list, remainder) => {
          const catches = list.map(mm);
          const quarter = distributionUniformity({ catches, remainder }).in("%");
          const half = distributionUniformity({ catches, part: "lower half", remainder }).in("%");
          expect(quarter).toBeLessThanOrEqual(half + 1e-9);
          expect(half).toBeLessThanOrEqual(100 + 1e-9);
          expect(quarter).toBeGreaterThan(0);
          const up = distributionUniformity({ catches, remainder: "up" }).in("%");
          const down = distributionUniformity({ catches, remainder: "down" }).in("%");
          expect(down).toBeLessThanOrEqual(up + 1e-9);
        },
      ),
    );
    const even = Array(8).fill(mm(12));
    close(distributionUniformity({ catches: even }).in("%"), 100);
    close(christiansenUniformity({ catches: even }).in("%"), 100);
  });

  test("by hand: quarters, halves, a remainder, an empty can", () => {
    const eight = [1, 2, 3, 4, 5, 6, 7, 8].map(mm);
    close(distributionUniformity({ catches: eight }).in("%"), 150 / 4.5);
    close(distributionUniformity({ catches: eight, part: "lower half" }).in("%"), 250 / 4.5);
    close(christiansenUniformity({ catches: eight }).in("%"), 100 * (1 - 2 / 4.5));
    const six = [1, 2, 3, 4, 5, 6].map(mm);
    close(distributionUniformity({ catches: six, remainder: "down" }).in("%"), 100 / 3.5);
    close(distributionUniformity({ catches: six }).in("%"), 150 / 3.5);
    expect(complaints(() => distributionUniformity({ catches: six, remainder: "refuse" }))).toEqual([
      "range catches",
    ]);
    // three empty cans and a full one are 1.5 of the mean away: below zero
    close(christiansenUniformity({ catches: [0, 0, 0, 4].map(mm) }).in("%"), -50);
    expect(distributionUniformity({ catches: [0, 0, 0, 4].map(mm) }).in("%")).toBe(0);
  });

  test("bad cans", () => {
    expect(complaints(untyped(distributionUniformity, { catches: [mm(1), mm(2), mm(3)] }))).toEqual([
      "missing catches",
    ]);
    expect(complaints(untyped(distributionUniformity, { catches: [mm(1), mm(-2), mm(3), mm(3)] }))).toEqual([
      "range catches[1]",
    ]);
    expect(complaints(untyped(distributionUniformity, { catches: Array(4).fill(mm(0)) }))).toEqual([
      "range catches",
    ]);
    expect(
      complaints(untyped(distributionUniformity, { catches: [mm(1), quantity(3, "mL"), mm(3), null] })),
    ).toEqual(["unit/mismatch catches[1]", "missing catches[3]"]);
    expect(
      complaints(untyped(distributionUniformity, { catches: Array(4).fill(quantity(3, "mL")) })),
    ).toEqual(["unit/mismatch catches[0]"]);
    expect(complaints(untyped(christiansenUniformity, {}))).toEqual(["missing catches"]);
    expect(complaints(untyped(christiansenUniformity, { catches: Array(100_001).fill(mm(1)) }))).toEqual([
      "range catches",
    ]);
  });

  test("the coefficient of the lower half is Christiansen's for a spread that is even on both sides", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 9, noNaN: true }), { minLength: 2, maxLength: 15 }),
        (away) => {
          const catches = away.flatMap((a) => [mm(10 - a), mm(10 + a)]);
          close(
            distributionUniformity({ catches, part: "lower half" }).in("%"),
            christiansenUniformity({ catches }).in("%"),
            1e-9,
          );
        },
      ),
    );
  });

  test("the rule of thumb, against 5000 cans of a normal spread", () => {
    // the quantiles of a normal spread with a standard deviation of 0.2 of the mean
    const n = 5000;
    const catches = Array.from({ length: n }, (_, i) => mm(10 + 2 * quantile((i + 0.5) / n)));
    const lowerQuarter = distributionUniformity({ catches });
    const rule = christiansenFromLowerQuarter({ lowerQuarter }).in("%");
    expect(Math.abs(rule - christiansenUniformity({ catches }).in("%"))).toBeLessThan(0.15);
    expect(complaints(() => christiansenFromLowerQuarter({ lowerQuarter: percent(0) }))).toEqual([
      "range lowerQuarter",
    ]);
  });
});

/** The normal quantile, by bisection of the error function's integral. */
const quantile = (p: number): number => {
  let [low, high] = [-8, 8];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (below(middle) < p) low = middle;
    else high = middle;
  }
  return low;
};
const below = (x: number): number => {
  const steps = 200;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const t = ((i + 0.5) * x) / steps;
    sum += Math.exp((-t * t) / 2) * (x / steps);
  }
  return 0.5 + sum / Math.sqrt(2 * Math.PI);
};

describe("a test with catch cans", () => {
  test("volumes with their opening say what depths say", () => {
    const depths = [4, 5, 6, 3, 5, 4, 6, 5].map(mm);
    const volumes = depths.map((d) => quantity(d.in("cm") * 100, "mL", "water"));
    const time = min(20);
    const one = catchCanTest({ catches: depths, time });
    const other = catchCanTest({ catches: volumes, time, opening: quantity(100, "cm2") });
    for (const name of ["depth", "rate", "lowerQuarter", "lowerHalf", "christiansen"] as const) {
      close(other[name].value, one[name].value, 1e-12);
      expect(other[name].unit).toBe(one[name].unit);
    }
    expect(one.rate.in("mm/h")).toBeCloseTo(14.25, 12);
    close(
      one.schedulingCoefficient as number,
      schedulingCoefficient({ mean: mmPerHour(4.75), driest: mmPerHour(3) }),
    );
    const inches = catchCanTest({ catches: volumes, time, diameter: inch(4) });
    expect(inches.depth.unit).toBe("in");
    expect(inches.rate.unit).toBe("in/h");
  });
  test("the opening belongs to volumes, and to them only", () => {
    const catches = [1, 2, 3, 4].map(mm);
    expect(
      complaints(untyped(catchCanTest, { catches, time: min(15), opening: quantity(3, "in2") })),
    ).toEqual(["conflict opening"]);
    const volumes = [1, 2, 3, 4].map((v) => quantity(v, "mL", "water"));
    expect(complaints(untyped(catchCanTest, { catches: volumes, time: min(15) }))).toEqual([
      "missing opening",
    ]);
    expect(
      complaints(untyped(catchCanTest, { catches: Array(4).fill(mmPerHour(3)), time: min(15) })),
    ).toEqual(["unit/mismatch catches[0]"]);
  });
  test("findings", () => {
    const codes = (list: readonly number[]) =>
      catchCanTest({ catches: list.map(mm), time: min(15) }).findings.map(({ code }) => code);
    expect(codes(Array(24).fill(3))).toEqual([]);
    expect(codes(Array(21).fill(3))).toEqual(["water/cans-not-in-quarters"]);
    expect(codes([0, ...Array(19).fill(3)])).toEqual(["water/empty-can"]);
    expect(codes([0, 1, 1, 1, 2])).toEqual([
      "water/few-cans",
      "water/cans-not-in-quarters",
      "water/empty-can",
    ]);
    expect(catchCanTest({ catches: [0, 1, 1, 1].map(mm), time: min(15) }).schedulingCoefficient).toBeNull();
  });
  test("the driest place is not wetter than the mean", () => {
    expect(complaints(() => schedulingCoefficient({ mean: mmPerHour(3), driest: mmPerHour(4) }))).toEqual([
      "range driest",
    ]);
    expect(schedulingCoefficient({ mean: mmPerHour(3), driest: mmPerHour(3) })).toBe(1);
  });
});
