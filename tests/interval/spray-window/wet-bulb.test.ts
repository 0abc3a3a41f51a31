import { describe, expect, it } from "vitest";
import { type AirState, deltaT, quantity, wetBulb } from "../../../src/index.js";

const air = (celsius: number, percent: number): AirState => ({
  temperature: quantity(celsius, "°C"),
  humidity: quantity(percent, "%"),
});
const everywhere: readonly (readonly [number, number])[] = Array.from(
  { length: 71 },
  (_, i) => i - 20,
).flatMap((t) => [5, 6, 8, 10, 15, 20, 30, 40, 50, 60, 70, 80, 90, 95, 99].map((rh) => [t, rh] as const));

/** Vapor pressure over water in hPa by a second formula, that of the World Meteorological Organization. */
const saturation = (t: number): number => 6.112 * Math.exp((17.62 * t) / (243.12 + t));
/** The same wet bulb found otherwise: by small steps, with the other formula and the coefficient of FAO-56. */
const bySteps = (t: number, rh: number): number => {
  let tw = t;
  while (saturation(tw) - 6.62e-4 * 1013 * (t - tw) > (saturation(t) * rh) / 100) tw -= 0.005;
  return tw;
};

describe("wet bulb and Delta T", () => {
  it("stand in cold dry air: at -20 °C and 5 % the wet bulb lies below the dry bulb, in its own band", () => {
    const cold = wetBulb(air(-20, 5));
    expect(cold.value.in("°C")).toBeCloseTo(-21.5, 0);
    expect(deltaT(air(-20, 5)).value.in("°C diff")).toBeCloseTo(1.5, 0);
    expect(cold.method).toBe("psychrometric equation");
  });
  it("lie in their own bands over the whole range, the wet bulb never above the dry", () => {
    const bad = everywhere.filter(([t, rh]) => {
      const tw = wetBulb(air(t, rh));
      const dt = deltaT(air(t, rh));
      return !(
        tw.value.value <= t &&
        tw.low.value <= tw.value.value &&
        tw.value.value <= tw.high.value &&
        dt.low.value >= 0 &&
        dt.low.value <= dt.value.value &&
        dt.value.value <= dt.high.value
      );
    });
    expect(bad).toEqual([]);
  });
  it("have bands that hold what other formulas and coefficients give over the whole range", () => {
    const bad = everywhere.filter(([t, rh]) => {
      const { low, high } = wetBulb(air(t, rh));
      const other = bySteps(t, rh);
      return low.value > other + 0.05 || high.value < other - 0.05;
    });
    expect(bad).toEqual([]);
  });
  it("follow the fit where it keeps its stated error", () => {
    expect(wetBulb(air(20, 50)).method).toBe("fit");
    expect(wetBulb(air(20, 50)).value.in("°C")).toBeCloseTo(13.699, 3);
  });
  it("refuse a field that is not known", () => {
    expect(() => deltaT({ ...air(20, 50), pressure: 900 } as never)).toThrow(/a field "pressure"/);
  });
  it("report temperature and humidity together", () => {
    expect(() => wetBulb(air(60, 2))).toThrow(/temperature.*\n.*humidity/);
  });
});
