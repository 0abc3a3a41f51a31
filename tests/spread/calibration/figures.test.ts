import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  bulkDensity,
  hopperLoad,
  hopperVolume,
  loadCoverage,
  rateAtSpeed,
  runLength,
  speedForRate,
  spreadRate,
  spreadRateEstimate,
  targetCatch,
  targetDischarge,
  testArea,
  timedRate,
  timedRateEstimate,
} from "../../../src/spread/index.js";
import { ft, lb, m, percent, perThousand } from "../helpers.js";

// Worked by hand, in whole numbers.

const kg = (value: number) => quantity(value, "kg", "product");
const g = (value: number) => quantity(value, "g", "product");
const ft2 = (value: number) => quantity(value, "ft2");
const m2 = (value: number) => quantity(value, "m2");

describe("rates of a run", () => {
  test("in the units of the ground", () => {
    expect(spreadRate({ amount: lb(3), area: ft2(500) }).toString()).toBe("6 lb/1000 ft2 of product");
    expect(spreadRate({ amount: g(500), area: m2(50), passes: 2 }).toString()).toBe("50 kg/ha of product");
    expect(spreadRate({ before: lb(10), after: lb(0), length: ft(100), width: ft(10) }).toString()).toBe(
      "10 lb/1000 ft2 of product",
    );
    expect(targetCatch({ rate: perThousand(6), area: ft2(500), passes: 2 }).toString()).toBe(
      "6 lb of product",
    );
    expect(targetCatch({ rate: quantity(200, "kg/ha", "seed"), area: m2(50) }).toString()).toBe(
      "1 kg of seed",
    );
    expect(runLength({ area: ft2(1000), swath: ft(10) }).toString()).toBe("100 ft");
    expect(runLength({ area: m2(100), swath: m(4) }).toString()).toBe("25 m");
  });
  test("of a form whose empty fields are null", () => {
    const form = { amount: null, before: lb(10), after: lb(4), area: ft2(1000), passes: null };
    expect(spreadRate(form as never).toString()).toBe("6 lb/1000 ft2 of product");
  });
  test("of grounds", () => {
    expect(testArea({ area: ft2(9) }).toString()).toBe("9 ft2");
    expect(testArea({ length: ft(3), width: ft(4) }).toString()).toBe("12 ft2");
    expect(testArea({ swath: m(3), distance: m(4) }).toString()).toBe("12 m2");
    expect(testArea({ swath: m(3), circumference: m(2), turns: 0.5 }).toString()).toBe("3 m2");
  });
  test("by the clock", () => {
    // a mile an hour is 88 ft a minute; 6 km/h are 100 m a minute
    expect(
      timedRate({ amount: lb(88), time: quantity(2, "min"), swath: ft(10), speed: quantity(1, "mi/h") }).in(
        "lb/1000 ft2",
      ),
    ).toBeCloseTo(50, 9);
    expect(
      timedRate({ amount: kg(4), time: quantity(2, "min"), swath: m(10), speed: quantity(6, "km/h") }).in(
        "kg/ha",
      ),
    ).toBeCloseTo(20, 9);
    expect(
      targetDischarge({ rate: perThousand(50), swath: ft(10), speed: quantity(1, "mi/h") }).in("lb/min"),
    ).toBeCloseTo(44, 9);
    expect(
      targetDischarge({
        rate: quantity(20, "kg/ha", "product"),
        swath: m(10),
        speed: quantity(6, "km/h"),
      }).in("kg/min"),
    ).toBeCloseTo(2, 9);
    const [one, other] = [
      targetDischarge({ rate: perThousand(5), swath: ft(10), speed: quantity(1, "mi/h") }).unit,
      timedRate({ amount: kg(4), time: quantity(2, "min"), swath: m(10), speed: quantity(6, "km/h") }).unit,
    ];
    expect([one, other]).toEqual(["lb/min", "kg/ha"]);
  });
  test("by speed", () => {
    const from = quantity(3, "mi/h");
    expect(
      rateAtSpeed({ rate: perThousand(4), from, to: quantity(6, "mi/h"), feed: "power-driven" }).toString(),
    ).toBe("2 lb/1000 ft2 of product");
    expect(
      rateAtSpeed({
        rate: quantity(40, "gal/acre", "spray"),
        from,
        to: quantity(1.5, "mi/h"),
        feed: "gravity gate",
      }).toString(),
    ).toBe("80 gal/acre of spray");
    expect(
      speedForRate({ rate: perThousand(4), from, target: perThousand(8), feed: "power-driven" }).toString(),
    ).toBe("1.5 mi/h");
  });
  test("with the errors of the catches and of the ground", () => {
    // 2 and 4: mean 3, standard error 1, a third; beside it 20 % of the ground and 0 %
    const third = 1 / 3;
    const of = spreadRateEstimate({ amounts: [lb(2), lb(4)], area: ft2(1000), areaError: percent(20) });
    expect(of.value.in("lb/1000 ft2")).toBeCloseTo(3, 12);
    expect(of.standardError.in("lb/1000 ft2")).toBeCloseTo(3 * Math.hypot(third, 0.2), 9);
    const timed = timedRateEstimate({
      amounts: [lb(2), lb(4)],
      time: quantity(1, "min"),
      timeError: percent(10),
      swath: ft(10),
      swathError: percent(20),
      speed: quantity(1, "mi/h"),
      speedError: percent(30),
    });
    expect(timed.value.in("lb/1000 ft2")).toBeCloseTo(3000 / 880, 9);
    expect(timed.standardError.in("lb/1000 ft2") / timed.value.in("lb/1000 ft2")).toBeCloseTo(
      Math.hypot(third, 0.1, 0.2, 0.3),
      9,
    );
  });
});

describe("hoppers", () => {
  test("in both systems", () => {
    expect(bulkDensity({ amount: lb(50), volume: quantity(2, "ft3") }).toString()).toBe("25 lb/ft3");
    expect(bulkDensity({ amount: kg(9), volume: quantity(10, "L") }).toString()).toBe("900 kg/m3");
    expect(
      hopperLoad({ volume: quantity(2, "ft3", "product"), bulkDensity: quantity(25, "lb/ft3") }).toString(),
    ).toBe("50 lb of product");
    expect(
      hopperLoad({ volume: quantity(0.1, "m3", "seed"), bulkDensity: quantity(500, "kg/m3") }).toString(),
    ).toBe("50 kg of seed");
    expect(hopperVolume({ load: lb(50), bulkDensity: quantity(25, "lb/ft3") }).toString()).toBe(
      "2 ft3 of product",
    );
    for (const [unit, value] of [
      ["kg", 50],
      ["g", 50_000],
      ["t", 0.05],
    ] as const)
      expect(
        hopperVolume({
          load: quantity(value, unit, "product"),
          bulkDensity: quantity(500, "kg/m3"),
        }).toString(),
      ).toBe("0.1 m3 of product");
    const us = loadCoverage({ load: lb(50), rate: perThousand(5), swath: ft(10) });
    expect([us.type, us.version, us.area, us.distance].map(String)).toEqual([
      "load-coverage",
      "1",
      "10000 ft2",
      "1000 ft",
    ]);
    const metric = loadCoverage({ load: kg(50), rate: quantity(200, "kg/ha", "product"), swath: m(10) });
    expect([metric.type, metric.version, metric.area, metric.distance].map(String)).toEqual([
      "load-coverage",
      "1",
      "2500 m2",
      "250 m",
    ]);
  });
});
