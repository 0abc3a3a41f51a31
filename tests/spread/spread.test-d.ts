import { describe, expectTypeOf, test } from "vitest";
import type { Estimate } from "../../src/numeric/index.js";
import { type Quantity, quantity } from "../../src/quantity/index.js";
import {
  gateSetting,
  hopperLoad,
  loadCoverage,
  overlappedRate,
  passRates,
  rateAtSpeed,
  spreadPattern,
  spreadRate,
  spreadRateEstimate,
  swathUniformity,
  targetCatch,
  testArea,
} from "../../src/spread/index.js";

const ft = quantity(1, "ft");
const lb = quantity(1, "lb", "product:a");
const rate = quantity(1, "lb/1000 ft2", "product:a");

describe("types of the spread room", () => {
  test("the substance goes through", () => {
    const run = { swath: ft, distance: ft } as const;
    expectTypeOf(spreadRate({ amount: lb, ...run })).toEqualTypeOf<Quantity<"mass/area", "product:a">>();
    expectTypeOf(targetCatch({ rate, ...run })).toEqualTypeOf<Quantity<"mass", "product:a">>();
    expectTypeOf(passRates({ rate }).perPass).toEqualTypeOf<Quantity<"mass/area", "product:a">>();
    expectTypeOf(
      hopperLoad({ volume: quantity(1, "ft3", "seed"), bulkDensity: quantity(1, "lb/ft3") }),
    ).toEqualTypeOf<Quantity<"mass", "seed">>();
    const runs = { amounts: [lb], areaError: quantity(1, "%"), area: quantity(1, "ft2") } as const;
    expectTypeOf(spreadRateEstimate(runs)).toEqualTypeOf<Estimate<"mass/area", "product:a">>();
    const pattern = spreadPattern({
      catches: [0, 1, 0],
      unit: "g",
      of: "seed",
      pans: { spacing: ft, left: 1 },
    });
    expectTypeOf(overlappedRate(pattern, { swath: ft })).toEqualTypeOf<Quantity<"mass/area", "seed">>();
    const speed = quantity(1, "mi/h");
    const volume = quantity(20, "gal/acre", "spray");
    expectTypeOf(rateAtSpeed({ rate: volume, from: speed, to: speed, feed: "power-driven" })).toEqualTypeOf<
      Quantity<"volume/area", "spray">
    >();
  });

  test("forms of ground do not mix", () => {
    // @ts-expect-error a swath without a distance
    testArea({ swath: ft });
    // @ts-expect-error an area and a swath
    testArea({ area: quantity(1, "ft2"), swath: ft, distance: ft });
    // @ts-expect-error a mass is no length
    testArea({ swath: lb, distance: ft });
  });

  test("one stuff in one call", () => {
    const other = quantity(1, "lb/1000 ft2", "N");
    // @ts-expect-error a limit on nitrogen
    passRates({ rate, limit: other });
    // @ts-expect-error a rate of nitrogen
    loadCoverage({ load: lb, rate: other, swath: ft });
    // @ts-expect-error a trial of nitrogen
    gateSetting({ target: rate, trials: [{ setting: 1, rate: other }] });
    // @ts-expect-error before and after of two stuffs
    spreadRate({ before: lb, after: quantity(1, "lb", "seed"), swath: ft, distance: ft });
  });

  test("no option of a CV has a default", () => {
    const pattern = spreadPattern({ catches: [0, 1, 0], unit: "g", pans: { spacing: ft, left: 1 } });
    // @ts-expect-error no divisor
    swathUniformity(pattern, { swath: ft, driving: "one direction", positions: "pans" });
    // @ts-expect-error an unknown way of driving
    swathUniformity(pattern, { swath: ft, driving: "racetrack", positions: "pans", divisor: "n" });
  });
});
