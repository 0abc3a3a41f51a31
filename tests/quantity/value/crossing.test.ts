import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  depthOf,
  fractionByVolume,
  fractionByWeight,
  money,
  quantity,
  RatewrightError,
  shareOf,
  temperatureDifference,
  volumePerAreaOf,
  weightFractionOf,
  weightPerVolumeOf,
} from "../../../src/quantity/index.js";

const amount = fc.double({ min: 1e-6, max: 1e6, noNaN: true });

describe("depth and volume per area", () => {
  test("one litre on one square meter is one millimeter", () => {
    expect(depthOf(quantity(1, "L/m2", "water")).toJSON()).toEqual({ value: 1, unit: "mm", of: "none" });
    expect(volumePerAreaOf(quantity(1, "mm"), "water").toJSON()).toEqual({
      value: 1,
      unit: "L/m2",
      of: "water",
    });
  });

  test("an acre-inch is an inch on an acre, by its name", () => {
    expect(depthOf(quantity(1, "acre-in").per(quantity(1, "acre"))).in("in")).toBe(1);
    // 27 154 gallons per acre-inch and 623.3 gallons per 1000 ft2 and inch, as handbooks round them:
    // 43 560 * 144 / 231 = 27 154.29, 1000 * 144 / 231 = 623.377
    expect(volumePerAreaOf(quantity(1, "in")).in("gal/acre")).toBeCloseTo((43560 * 144) / 231, 8);
    expect(volumePerAreaOf(quantity(1, "in")).in("gal/1000 ft2")).toBeCloseTo(144000 / 231, 10);
  });

  test("there and back again", () => {
    fc.assert(
      fc.property(
        amount,
        fc.constantFrom("in" as const, "mm" as const, "ft" as const, "m" as const),
        (d, unit) => {
          const back = depthOf(volumePerAreaOf(quantity(d, unit))).in(unit);
          expect(Math.abs(back - d)).toBeLessThanOrEqual(d * 1e-15 * 8);
        },
      ),
    );
  });

  test("refuses", () => {
    expect(() => depthOf(quantity(1, "lb/acre") as never)).toThrow(/volume over an area/);
    expect(() => volumePerAreaOf(quantity(1, "acre") as never)).toThrow(/length/);
    expect(() => volumePerAreaOf(quantity(1, "in"), "wet" as "water")).toThrow(/substance/);
  });
});

describe("fractions", () => {
  test("as a share and back", () => {
    expect(shareOf(quantity(24, "% w/w", "N/product")).toJSON()).toEqual({
      value: 24,
      unit: "%",
      of: "N/product",
    });
    expect(shareOf(quantity(1, "lb/lb")).in("1")).toBe(1);
    expect(shareOf(quantity(3, "% grade")).in("%")).toBe(3);
    expect(shareOf(quantity(128, "fl oz/gal")).in("1")).toBe(1);
    expect(fractionByWeight(quantity(0.24, "1")).in("% w/w")).toBe(24);
    expect(fractionByVolume(quantity(24, "%")).in("fl oz/gal")).toBeCloseTo(30.72, 12);
    expect(() => shareOf(quantity(1, "lb/acre") as never)).toThrow(RatewrightError);
    expect(() => shareOf(quantity(1, "% w/v") as never)).toThrow(RatewrightError);
    expect(() => fractionByWeight(quantity(24, "% w/w") as never)).toThrow(RatewrightError);
  });

  test("between weight and volume stands a density", () => {
    const nitrogen = quantity(28, "% w/w", "N/product");
    const density = quantity(10.65, "lb/gal", "product");
    const perVolume = weightPerVolumeOf(nitrogen, density);
    expect(perVolume.of).toBe("N");
    expect(perVolume.in("lb/gal")).toBeCloseTo(2.982, 12);
    expect(weightFractionOf(perVolume, density).in("% w/w")).toBeCloseTo(28, 12);
    expect(weightFractionOf(perVolume, density).of).toBe("N/product");
    expect(weightPerVolumeOf(nitrogen, density).in("g/L")).toBeCloseTo(
      quantity(10.65, "lb/gal").in("g/L") * 0.28,
      9,
    );
    expect(() => weightPerVolumeOf(nitrogen, quantity(1, "kg/L", "water") as never)).toThrow(/density/);
    // a share of nothing named, times the density of the product, is no weight of product
    expect(() => weightPerVolumeOf(quantity(28, "% w/w"), density as never)).toThrow(/density/);
    expect(weightPerVolumeOf(quantity(28, "% w/w"), quantity(10, "lb/gal")).toString()).toBe("2.8 lb/gal");
    expect(() => weightPerVolumeOf(nitrogen, quantity(0, "kg/L", "product"))).toThrow(/more than zero/);
    expect(() => weightPerVolumeOf(quantity(-1, "% w/w", "N/product"), density)).toThrow(/zero or more/);
    expect(() => weightFractionOf(perVolume, quantity(1, "kg/L"))).toThrow(RatewrightError);
    expect(() => weightFractionOf(quantity(1, "kg/L", "N"), quantity(1, "kg/L", "N"))).toThrow(
      RatewrightError,
    );
  });
});

describe("temperatureDifference", () => {
  test("18 Fahrenheit degrees are 10 Celsius degrees", () => {
    const difference = temperatureDifference(quantity(68, "°F"), quantity(50, "°F"));
    expect(difference.toJSON()).toEqual({ value: 18, unit: "°F diff", of: "none" });
    expect(difference.in("°C diff")).toBe(10);
    expect(temperatureDifference(quantity(10, "°C"), quantity(50, "°F")).value).toBe(0);
    expect(temperatureDifference(quantity(300, "K"), quantity(20, "°C")).value).toBeCloseTo(6.85, 10);
    expect(temperatureDifference(quantity(5, "°C"), quantity(10, "°C")).value).toBe(-5);
    expect(() => temperatureDifference(quantity(5, "°C"), quantity(5, "°C diff") as never)).toThrow(
      /temperature/,
    );
  });

  test("adding it back gives the first", () => {
    const degrees = fc.integer({ min: -100, max: 150 });
    fc.assert(
      fc.property(degrees, degrees, (a, b) => {
        const [warm, cool] = [quantity(a, "°F"), quantity(b, "°F")];
        expect(cool.plus(temperatureDifference(warm, cool)).value).toBe(a);
      }),
    );
  });
});

describe("money", () => {
  test("carries its currency in the dimension", () => {
    const price = money(28.5, "USD");
    expect(price.toJSON()).toEqual({ value: 28.5, unit: "money:USD", of: "none" });
    expect(price.dimension).toBe("money:USD");
    expect(price.per(quantity(50, "lb")).in("money:USD/lb")).toBe(0.57);
    expect(() => price.plus(money(1, "EUR") as never)).toThrow(RatewrightError);
  });

  test("refuses", () => {
    for (const code of ["usd", "US", "USDD", "", undefined, 3]) {
      expect(() => money(1, code as "USD")).toThrow(/three capitals/);
    }
    for (const wrong of [Number.NaN, Number.POSITIVE_INFINITY, "3", undefined]) {
      expect(() => money(wrong as number, "USD")).toThrow(/finite/);
    }
  });
});
