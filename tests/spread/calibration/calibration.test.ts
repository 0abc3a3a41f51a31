import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkAgainstTarget } from "../../../src/numeric/index.js";
import { quantity, unitSystem, unitsOf } from "../../../src/quantity/index.js";
import {
  bulkDensity,
  effectiveFieldCapacity,
  hopperLoad,
  hopperVolume,
  loadCoverage,
  rateAtSpeed,
  runLength,
  speedForRate,
  spreadRate,
  spreadRateEstimate,
  spreadWidth,
  targetCatch,
  targetDischarge,
  testArea,
  timedRate,
  timedRateEstimate,
} from "../../../src/spread/index.js";
import { complaints } from "../../errors.js";
import { ft, lb, m, percent, perThousand } from "../helpers.js";

const positive = fc.double({ min: 1e-3, max: 1e5, noNaN: true });
const close = (a: number, b: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b));

describe("the constants of the trade follow from the units", () => {
  const acrePounds = (rate: { in(unit: "lb/acre"): number }): number => rate.in("lb/acre");

  test("43 560 / (w L), 96.03 g on 1 ft2, 21.78 ton/acre for a pound on 1 ft2, 8 lb/acre per ounce", () => {
    expect(acrePounds(spreadRate({ amount: lb(1), swath: ft(1), distance: ft(1) }))).toBe(43_560);
    const gram = { amount: quantity(1, "g", "product"), area: quantity(1, "ft2") };
    expect(acrePounds(spreadRate(gram)).toFixed(2)).toBe("96.03");
    expect(spreadRate({ amount: lb(1), area: quantity(1, "ft2") }).in("US ton/acre")).toBeCloseTo(21.78, 9);
    const plot = quantity(1, "acre").dividedBy(128);
    expect(acrePounds(spreadRate({ amount: quantity(1, "oz", "product"), area: plot }))).toBeCloseTo(8, 9);
    // A pound of nothing but mass on a square meter: 10 000 to the hectare.
    const kilo = { amount: quantity(1, "kg", "product"), area: quantity(1, "m2") };
    expect(spreadRate(kilo).in("kg/ha")).toBe(10_000);
  });

  test("495, 600, 8.25 and 66", () => {
    const us = { amount: lb(1), time: quantity(1, "min"), swath: ft(1), speed: quantity(1, "mi/h") };
    expect(acrePounds(timedRate(us))).toBeCloseTo(495, 9);
    const metric = {
      amount: quantity(1, "kg", "product"),
      time: quantity(1, "min"),
      swath: m(1),
      speed: quantity(1, "km/h"),
    };
    expect(timedRate(metric).in("kg/ha")).toBeCloseTo(600, 9);
    const run = { swath: ft(8.25), speed: quantity(1, "mi/h"), efficiency: percent(100) };
    expect(effectiveFieldCapacity(run).in("acre/h")).toBeCloseTo(1, 12);
    expect(acrePounds(spreadRate({ amount: lb(1), swath: ft(1), distance: ft(660) }))).toBeCloseTo(66, 9);
  });
});

describe("spreadRate", () => {
  test("one area in every form, one rate in every unit", () => {
    fc.assert(
      fc.property(positive, positive, positive, (amount, width, long) => {
        const rate = spreadRate({ amount: lb(amount), swath: ft(width), distance: ft(long) });
        const same = [
          spreadRate({ amount: lb(amount), length: ft(long), width: ft(width) }),
          spreadRate({ amount: lb(amount), area: quantity(width * long, "ft2") }),
          spreadRate({ amount: lb(amount), swath: ft(width), circumference: ft(long / 8), turns: 8 }),
          spreadRate({ amount: lb(2 * amount), swath: ft(width), distance: ft(long), passes: 2 }),
          spreadRate({
            amount: quantity(amount * 16, "oz", "product"),
            swath: ft(width),
            distance: ft(long),
          }),
          spreadRate({
            amount: quantity(lb(amount).in("kg"), "kg", "product"),
            swath: m(ft(width).in("m")),
            distance: m(ft(long).in("m")),
          }),
          spreadRate({
            amount: lb(amount),
            swath: quantity(width * 12, "in"),
            distance: m(ft(long).in("m")),
          }),
        ];
        for (const one of same) close(one.in("lb/acre"), rate.in("lb/acre"));
      }),
    );
  });

  test("targetCatch asks for what spreadRate came from", () => {
    fc.assert(
      fc.property(positive, positive, fc.integer({ min: 1, max: 9 }), (amount, side, passes) => {
        const run = { swath: ft(side), distance: m(20), passes };
        close(targetCatch({ rate: spreadRate({ amount: lb(amount), ...run }), ...run }).in("lb"), amount);
      }),
    );
  });

  test("targetCatch in metric units, by hand: 100 kg/ha is 10 g to the square meter", () => {
    const rate = quantity(100, "kg/ha", "product");
    expect(targetCatch({ rate, area: quantity(0.25, "m2") }).in("g")).toBeCloseTo(2.5, 12);
    expect(targetCatch({ rate, swath: m(3), distance: m(100), passes: 2 }).in("kg")).toBeCloseTo(6, 12);
  });

  test("keeps the substance, before and after must be of one", () => {
    const run = { swath: ft(10), distance: ft(100) };
    expect(spreadRate({ amount: quantity(1, "lb", "seed"), ...run }).of).toBe("seed");
    const mixed = { before: lb(5), after: quantity(1, "lb", "seed"), ...run };
    expect(complaints(() => spreadRate(mixed as never))).toEqual(["substance/mismatch after"]);
  });

  test("guesses nothing", () => {
    const run = { swath: ft(10), distance: ft(100) };
    expect(complaints(() => spreadRate({ ...run } as never))).toEqual(["missing amount"]);
    expect(complaints(() => spreadRate({ amount: lb(1) } as never))).toEqual(["missing area"]);
    expect(complaints(() => spreadRate({ amount: lb(1), swath: ft(10) } as never))).toEqual([
      "missing distance",
    ]);
    expect(complaints(() => spreadRate({ amount: lb(1), swath: ft(10), distance: ft(0) }))).toEqual([
      "range distance",
    ]);
    expect(complaints(() => spreadRate({ amount: lb(0), swath: ft(0), distance: ft(0) }))).toEqual([
      "range amount",
      "range swath",
      "range distance",
    ]);
    expect(complaints(() => spreadRate({ before: lb(5), after: lb(5), ...run }))).toEqual(["conflict after"]);
    expect(complaints(() => spreadRate({ before: lb(5), after: lb(6), ...run }))).toEqual(["conflict after"]);
    expect(complaints(() => spreadRate({ before: lb(5), ...run } as never))).toEqual(["missing after"]);
    expect(complaints(() => spreadRate({ amount: lb(1), before: lb(2), ...run } as never))).toEqual([
      "conflict amount",
    ]);
    const both = { amount: lb(1), area: quantity(1, "ft2"), ...run };
    expect(complaints(() => spreadRate(both as never))).toHaveLength(1);
    expect(complaints(() => spreadRate({ amount: lb(1), ...run, passes: 0 }))).toEqual(["range passes"]);
    expect(complaints(() => spreadRate({ amount: lb(1), ...run, passes: 1.5 }))).toEqual(["range passes"]);
    expect(
      complaints(() => spreadRate({ amount: lb(1), swath: ft(1), circumference: ft(8), turns: 0 })),
    ).toEqual(["range turns"]);
    const nan = { amount: { value: Number.NaN, unit: "lb", of: "product" }, ...run };
    expect(complaints(() => spreadRate(nan as never))).toEqual(["not-finite amount"]);
    expect(complaints(() => spreadRate(null as never))).toEqual(["type run"]);
    expect(complaints(() => spreadRate({ amount: quantity(1, "gal", "product"), ...run } as never))).toEqual([
      "unit/mismatch amount",
    ]);
    expect(
      complaints(() => spreadRate({ amount: lb(1e-300), swath: ft(1e200), distance: ft(1e200) })),
    ).toEqual(["range swath"]);
  });

  test("takes what JSON leaves of a run", () => {
    const run = { amount: lb(20), swath: ft(10), distance: ft(435) };
    const back = JSON.parse(JSON.stringify(run)) as typeof run;
    expect(spreadRate(back).in("lb/acre")).toBe(spreadRate(run).in("lb/acre"));
  });
});

describe("runLength and spreadWidth", () => {
  test("a run of that length has that area", () => {
    fc.assert(
      fc.property(positive, positive, (area, width) => {
        const swath = ft(width);
        const distance = runLength({ area: quantity(area, "m2"), swath });
        close(testArea({ swath, distance }).in("m2"), area);
      }),
    );
  });

  test("100 m2 at 3 m, by hand, and the same in mixed units", () => {
    const area = quantity(100, "m2");
    expect(runLength({ area, swath: m(3) }).in("m")).toBeCloseTo(33.333, 3);
    expect(runLength({ area, swath: quantity(300, "cm") }).in("m")).toBeCloseTo(33.333, 3);
    expect(runLength({ area: quantity(1000, "ft2"), swath: m(ft(10).in("m")) }).in("ft")).toBeCloseTo(100, 9);
  });

  test("a drop spreader has an opening, a rotary one a swath", () => {
    expect(complaints(() => spreadWidth({ kind: "drop", effectiveSwath: ft(3) } as never))).toEqual([
      "conflict effectiveSwath",
    ]);
    expect(complaints(() => spreadWidth({ kind: "rotary", opening: ft(3) } as never))).toEqual([
      "conflict opening",
    ]);
    expect(complaints(() => spreadWidth({ kind: "drop" } as never))).toEqual(["missing opening"]);
    expect(complaints(() => spreadWidth({ kind: "spinner", opening: ft(3) } as never))).toEqual([
      "type kind",
    ]);
    expect(complaints(() => spreadWidth({ kind: "outlets", outlets: 2.5, spacing: ft(1) }))).toEqual([
      "range outlets",
    ]);
    expect(complaints(() => spreadWidth({ kind: "outlets", spacing: ft(0) } as never))).toEqual([
      "missing outlets",
      "range spacing",
    ]);
    expect(spreadWidth({ kind: "rotary", effectiveSwath: m(8) }).in("m")).toBe(8);
    expect(spreadWidth({ kind: "outlets", outlets: 1, spacing: ft(2) }).in("ft")).toBe(2);
    expect(spreadWidth({ kind: "outlets", outlets: 10, spacing: quantity(7, "in") }).in("in")).toBeCloseTo(
      70,
    );
  });
});

describe("timed discharge and speed", () => {
  test("targetDischarge is what timedRate came from", () => {
    fc.assert(
      fc.property(
        positive,
        positive,
        fc.double({ min: 1e-3, max: 400, noNaN: true }),
        (amount, width, kmh) => {
          const run = { swath: m(width), speed: quantity(kmh, "km/h") };
          const time = quantity(40, "s");
          const rate = timedRate({ amount: lb(amount), time, ...run });
          close(
            targetDischarge({ rate, ...run })
              .times(time)
              .in("lb"),
            amount,
          );
          // The same run in US customary units.
          const us = { swath: ft(run.swath.in("ft")), speed: quantity(run.speed.in("mi/h"), "mi/h") };
          close(timedRate({ amount: lb(amount), time, ...us }).in("kg/ha"), rate.in("kg/ha"));
        },
      ),
    );
  });

  test("refuses a stop-watch at zero and a machine that stands", () => {
    const run = { amount: lb(1), time: quantity(0, "s"), swath: ft(10), speed: quantity(0, "mi/h") };
    expect(complaints(() => timedRate(run))).toEqual(["range time", "range speed"]);
  });

  test("rateAtSpeed goes there and back, falls with the speed, and refuses a ground drive", () => {
    const rate = perThousand(3);
    const [from, to] = [quantity(3, "mi/h"), quantity(6, "km/h")];
    const there = rateAtSpeed({ rate, from, to, feed: "gravity gate" });
    const back = rateAtSpeed({ rate: there, from: to, to: from, feed: "gravity gate" });
    close(back.in("lb/1000 ft2"), 3);
    expect(there.in("lb/1000 ft2")).toBeLessThan(3);
    const volume = { value: 20, unit: "gal/acre", of: "spray" };
    const json = { rate: volume, from: { value: 3, unit: "mi/h" }, to: { value: 6, unit: "mi/h" } };
    expect(rateAtSpeed({ ...json, feed: "power-driven" } as never).value).toBe(10);
    expect(complaints(() => rateAtSpeed({ rate, from, to, feed: "ground-driven" }))).toEqual([
      "infeasible feed",
    ]);
    expect(complaints(() => rateAtSpeed({ rate, from, to } as never))).toEqual(["missing feed"]);
    expect(complaints(() => rateAtSpeed({ rate, from, to, feed: "belt" } as never))).toEqual(["type feed"]);
    const standing = quantity(0, "km/h");
    expect(complaints(() => rateAtSpeed({ rate, from, to: standing, feed: "power-driven" }))).toEqual([
      "range to",
    ]);
    expect(complaints(() => rateAtSpeed({ from, to, feed: "power-driven" } as never))).toEqual([
      "missing rate",
    ]);
  });

  test("speedForRate is the way back from rateAtSpeed, and faster for a lower rate", () => {
    // NC State Extension: 20 gal/acre at 3 mph is 10 gal/acre at 6 mph.
    const volume = { rate: quantity(20, "gal/acre", "spray"), from: quantity(3, "mi/h") };
    const ten = speedForRate({ ...volume, target: quantity(10, "gal/acre", "spray"), feed: "power-driven" });
    expect([ten.value, ten.unit]).toEqual([6, "mi/h"]);
    fc.assert(
      fc.property(
        positive,
        fc.oneof(
          fc.double({ min: 0.1, max: 0.95, noNaN: true }),
          fc.double({ min: 1.05, max: 10, noNaN: true }),
        ),
        fc.double({ min: 0.1, max: 30, noNaN: true }),
        (a, times, v) => {
          const [rate, from] = [quantity(a, "kg/ha", "product"), quantity(v, "km/h")];
          const b = rate.in("lb/1000 ft2") * times;
          const target = quantity(b, "lb/1000 ft2", "product");
          const to = speedForRate({ rate, from, target, feed: "gravity gate" });
          close(rateAtSpeed({ rate, from, to, feed: "gravity gate" }).in("lb/1000 ft2"), b);
          expect(to.value > v).toBe(times < 1);
        },
      ),
    );
  });

  test("speedForRate tells what is wrong with its arguments", () => {
    const [rate, from] = [perThousand(3), quantity(3, "mi/h")];
    const run = { rate, from, target: perThousand(2), feed: "gravity gate" } as const;
    const wrong = (change: object): readonly string[] =>
      complaints(() => speedForRate({ ...run, ...change } as never));
    expect(wrong({ feed: "ground-driven" })).toEqual(["infeasible feed"]);
    expect(wrong({ feed: undefined, target: undefined })).toEqual(["missing feed", "missing target"]);
    expect(wrong({ target: quantity(2, "lb/1000 ft2", "product:other") })).toEqual([
      "substance/mismatch target",
    ]);
    expect(wrong({ target: quantity(2, "gal/acre", rate.of) })).toEqual(["unit/mismatch target"]);
    expect(wrong({ target: perThousand(0) })).toEqual(["range target"]);
    expect(wrong({ from: quantity(0, "mi/h") })).toEqual(["range from"]);
  });
});

test("answers in the system of the ground or the bucket, for every unit there is", () => {
  const metric = (unit: string): boolean => unitSystem(unit) === "metric";
  for (const { unit } of unitsOf("area")) {
    const area = quantity(1, unit);
    expect([unit, spreadRate({ amount: lb(1), area }).unit]).toEqual([
      unit,
      metric(unit) ? "kg/ha" : "lb/1000 ft2",
    ]);
  }
  for (const { unit } of unitsOf("length")) {
    const run = { swath: quantity(1, unit), distance: ft(1) };
    expect([unit, testArea(run).unit]).toEqual([unit, metric(unit) ? "m2" : "ft2"]);
  }
  for (const { unit } of unitsOf("volume")) {
    const volume = quantity(1, unit);
    // As dense as water
    const density = bulkDensity({ amount: quantity(volume.in("L"), "kg", "product"), volume });
    expect([unit, density.unit]).toEqual([unit, metric(unit) ? "kg/m3" : "lb/ft3"]);
  }
});

describe("hopper and field capacity", () => {
  test("what the bucket weighed, the hopper holds", () => {
    fc.assert(
      fc.property(positive, fc.double({ min: 0.3, max: 20, noNaN: true }), (gallons, each) => {
        const pounds = gallons * each;
        const density = bulkDensity({ amount: lb(pounds), volume: quantity(gallons, "gal") });
        const volume = quantity(gallons, "gal", "product");
        close(hopperLoad({ volume, bulkDensity: density }).in("lb"), pounds);
        const metric = quantity(volume.in("L"), "L", "product");
        close(hopperLoad({ volume: metric, bulkDensity: density }).in("lb"), pounds);
      }),
    );
    expect(
      hopperLoad({ volume: quantity(1, "ft3", "product:a"), bulkDensity: quantity(50, "lb/ft3") }).of,
    ).toBe("product:a");
  });

  test("a load covers what its rate says, of the same stuff", () => {
    const { area, distance } = loadCoverage({ load: lb(50), rate: perThousand(4), swath: m(3) });
    close(perThousand(4).times(area).in("lb"), 50);
    close(distance.in("m") * 3, area.in("m2"));
    const us = loadCoverage({ load: lb(50), rate: perThousand(4), swath: ft(10) });
    expect([us.area.in("ft2"), us.distance.in("ft")]).toEqual([12_500, 1250]);
    const seed = { load: quantity(50, "lb", "seed"), rate: perThousand(4), swath: m(3) };
    expect(complaints(() => loadCoverage(seed as never))).toEqual(["substance/mismatch rate"]);
  });

  test("an efficiency is stated, and is at most the whole", () => {
    const run = { swath: m(10), speed: quantity(6, "km/h") };
    expect(effectiveFieldCapacity({ ...run, efficiency: percent(100) }).in("ha/h")).toBeCloseTo(6, 12);
    expect(effectiveFieldCapacity({ ...run, efficiency: quantity(0.7, "1") }).in("ha/h")).toBeCloseTo(
      4.2,
      12,
    );
    expect(complaints(() => effectiveFieldCapacity(run as never))).toEqual(["missing efficiency"]);
    expect(complaints(() => effectiveFieldCapacity({ swath: m(0) } as never))).toEqual([
      "range swath",
      "missing speed",
      "missing efficiency",
    ]);
    expect(complaints(() => effectiveFieldCapacity({ ...run, efficiency: percent(101) }))).toEqual([
      "range efficiency",
    ]);
    expect(complaints(() => effectiveFieldCapacity({ ...run, efficiency: percent(0) }))).toEqual([
      "range efficiency",
    ]);
  });
});

describe("rates with their errors", () => {
  const amounts = [2.9, 3.1, 3].map(lb);

  test("the spread of the catches alone, by hand", () => {
    const { value, standardError, degreesOfFreedom } = spreadRateEstimate({
      amounts,
      area: quantity(1000, "ft2"),
      areaError: percent(0),
    });
    expect(value.in("lb/1000 ft2")).toBeCloseTo(3, 12);
    // s = 0.1, divided by the root of 3
    expect(standardError.in("lb/1000 ft2")).toBeCloseTo(0.1 / Math.sqrt(3), 12);
    expect(degreesOfFreedom).toBeCloseTo(2, 12);
  });

  test("equal catches leave the stated errors, as a sum of squares", () => {
    const { value, standardError } = timedRateEstimate({
      amounts: [lb(2), lb(2)],
      time: quantity(30, "s"),
      timeError: percent(2),
      swath: ft(10),
      swathError: percent(3),
      speed: quantity(3, "mi/h"),
      speedError: percent(6),
    });
    expect((100 * standardError.value) / value.value).toBeCloseTo(7, 9);
  });

  test("few and noisy catches are measured again", () => {
    const run = { area: quantity(1000, "ft2"), areaError: percent(1) };
    const target = perThousand(3);
    const noisy = spreadRateEstimate({ amounts: [lb(2.5), lb(3.5)], ...run });
    expect(checkAgainstTarget({ measured: noisy, target, tolerance: percent(5) }).verdict).toBe(
      "measure again",
    );
    const steady = spreadRateEstimate({ amounts: [3, 3.01, 2.99, 3].map(lb), ...run, areaError: percent(0) });
    expect(checkAgainstTarget({ measured: steady, target, tolerance: percent(5) }).verdict).toBe(
      "within tolerance",
    );
  });

  test("says which catch and which error is not there", () => {
    const area = quantity(1000, "ft2");
    const errors = { areaError: percent(1) };
    expect(complaints(() => spreadRateEstimate({ amounts: [lb(1)], area, ...errors }))).toEqual([
      "missing amounts",
    ]);
    expect(complaints(() => spreadRateEstimate({ amounts, area } as never))).toEqual(["missing areaError"]);
    const holes = { amounts: [lb(1), undefined, lb(-1)], area, ...errors };
    expect(complaints(() => spreadRateEstimate(holes as never))).toEqual([
      "missing amounts[1]",
      "range amounts[2]",
    ]);
    const mixed = { amounts: [lb(1), quantity(1, "lb", "seed")], area, ...errors };
    expect(complaints(() => spreadRateEstimate(mixed as never))).toEqual(["substance/mismatch amounts[1]"]);
    expect(complaints(() => spreadRateEstimate({ amounts: [lb(0), lb(0)], area, ...errors }))).toEqual([
      "range amounts",
    ]);
    // biome-ignore lint/suspicious/noSparseArray: a list with a hole
    const hole = { amounts: [, lb(1)], area, ...errors };
    expect(complaints(() => spreadRateEstimate(hole as never))).toEqual(["missing amounts[0]"]);
    const all = { amounts: [lb(1)], areaError: percent(-1), swath: ft(0), distance: ft(3) };
    expect(complaints(() => spreadRateEstimate(all))).toEqual([
      "missing amounts",
      "range areaError",
      "range swath",
    ]);
    expect(complaints(() => timedRateEstimate({ amounts, swath: ft(10) } as never))).toEqual([
      "missing timeError",
      "missing swathError",
      "missing speedError",
      "missing time",
      "missing speed",
    ]);
  });
});

test("the room that a load takes in a hopper is the way back from what a hopper holds", () => {
  fc.assert(
    fc.property(positive, fc.double({ min: 5, max: 160, noNaN: true }), (pounds, density) => {
      const bulkDensityOf = quantity(density, "lb/ft3");
      const volume = hopperVolume({ load: quantity(pounds, "lb", "product"), bulkDensity: bulkDensityOf });
      close(hopperLoad({ volume, bulkDensity: bulkDensityOf }).in("lb"), pounds);
    }),
  );
});

test("a rate of water against a target of spray names the way from one to the other", () => {
  const run = {
    rate: quantity(20, "gal/acre", "water"),
    from: quantity(3, "mi/h"),
    target: quantity(10, "gal/acre", "spray") as never,
    feed: "power-driven",
  } as const;
  expect(() => speedForRate(run)).toThrow("asFinishedSpray(rate).value");
});

test("a target of spray for a measurement with water names the way from one to the other", () => {
  const measured = quantity(20, "gal/acre", "water");
  const target = quantity(10, "gal/acre", "spray") as never;
  expect(() => checkAgainstTarget({ measured, target, tolerance: percent(5) })).toThrow(
    "asFinishedSpray(measured)",
  );
});
