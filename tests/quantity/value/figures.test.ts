import { describe, expect, test } from "vitest";
import {
  depthOf,
  fractionByVolume,
  fractionByWeight,
  max,
  min,
  quantity,
  shareOf,
  sum,
  temperatureDifference,
  volumePerAreaOf,
  weightFractionOf,
  weightPerVolumeOf,
} from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

/** A plain-JavaScript caller has no compiler. */
// biome-ignore lint/suspicious/noExplicitAny: that is the point
const js = quantity as any;

describe("figures by hand", () => {
  test("a depth keeps the system of its unit, and its time", () => {
    // 7.48052 gal are a ft3: 144 in2 by 12 in by 231 in3
    expect(depthOf(quantity(1, "gal/ft2")).value).toBeCloseTo(231 / 144, 12);
    expect(depthOf(quantity(1, "gal/ft2")).unit).toBe("in");
    expect(depthOf(quantity(10, "m3/ha")).toJSON()).toEqual({ value: 1, unit: "mm", of: "none" });
    expect(depthOf(quantity(2, "L/m2/h")).toJSON()).toEqual({ value: 2, unit: "mm/h", of: "none" });
    expect(depthOf(quantity(2, "L/m2/h")).dimension).toBe("length/time");
    expect(depthOf(quantity(2, "L/m2")).dimension).toBe("length");
    // imperial gallons are neither: 4.54609 L on 1 m2
    expect(depthOf(quantity(1, "imp gal/m2")).toJSON()).toEqual({ value: 4.54609, unit: "mm", of: "none" });
    expect(volumePerAreaOf(quantity(3, "mm/h"), "water").toJSON()).toEqual({
      value: 3,
      unit: "L/m2/h",
      of: "water",
    });
    expect(volumePerAreaOf(quantity(3, "mm/h")).dimension).toBe("volume/area/time");
    expect(volumePerAreaOf(quantity(3, "cm")).toJSON()).toEqual({ value: 30, unit: "L/m2", of: "none" });
    expect(volumePerAreaOf(quantity(3, "cm")).dimension).toBe("volume/area");
    expect(volumePerAreaOf(quantity(1, "ft/d")).unit).toBe("gal/1000 ft2/d");
    // 1000 ft3 of 1728 in3, each gallon 231 in3
    expect(volumePerAreaOf(quantity(1, "ft/d")).value).toBeCloseTo((1000 * 1728) / 231, 8);
  });

  test("shares", () => {
    expect(shareOf(quantity(24, "% v/v")).toJSON()).toEqual({ value: 24, unit: "%", of: "none" });
    expect(shareOf(quantity(500, "ppm w/w")).toJSON()).toEqual({ value: 0.0005, unit: "1", of: "none" });
    expect(shareOf(quantity(5, "mL/L")).toJSON()).toEqual({ value: 0.005, unit: "1", of: "none" });
    expect(shareOf(quantity(1, "m/m")).dimension).toBe("1");
    expect(fractionByWeight(quantity(0.5, "1")).toJSON()).toEqual({ value: 50, unit: "% w/w", of: "none" });
    expect(fractionByWeight(quantity(0.5, "1")).dimension).toBe("mass/mass");
    expect(fractionByVolume(quantity(0.5, "1")).toJSON()).toEqual({ value: 50, unit: "% v/v", of: "none" });
    expect(fractionByVolume(quantity(0.5, "1")).dimension).toBe("volume/volume");
  });

  test("weight per volume and back", () => {
    const c = weightPerVolumeOf(quantity(250, "g/kg", "N/product"), quantity(1.2, "kg/L", "product"));
    expect([c.toString(), c.dimension]).toEqual(["0.3 kg/L of N", "mass/volume"]);
    const w = weightFractionOf(quantity(300, "g/L", "N"), quantity(1.2, "kg/L", "product"));
    expect([w.toString(), w.dimension]).toEqual(["25 % w/w of N/product", "mass/mass"]);
    expect(weightPerVolumeOf(quantity(0, "% w/w", "N/product"), quantity(1, "kg/L", "product")).value).toBe(
      0,
    );
    expect(weightFractionOf(quantity(0, "kg/L", "N"), quantity(1, "kg/L", "product")).value).toBe(0);
  });

  test("differences of temperature are in the degrees of the first", () => {
    expect(temperatureDifference(quantity(300, "K"), quantity(290, "K")).toJSON()).toEqual({
      value: 10,
      unit: "°C diff",
      of: "none",
    });
    expect(temperatureDifference(quantity(50, "°F", "soil"), quantity(5, "°C", "soil")).toJSON()).toEqual({
      value: 9,
      unit: "°F diff",
      of: "soil",
    });
    expect(temperatureDifference(quantity(50, "°F"), quantity(5, "°C")).dimension).toBe(
      "temperature difference",
    );
    // a kelvin and a degree Celsius are the same difference
    expect(quantity(290, "K").plus(quantity(10, "°C diff")).toString()).toBe("300 K");
    expect(quantity(290, "K").minus(quantity(18, "°F diff")).toString()).toBe("280 K");
  });

  test("the first of equals is the least and the largest", () => {
    const list = [quantity(1, "lb"), quantity(16, "oz"), quantity(2, "lb"), quantity(32, "oz")];
    expect(min(list).unit).toBe("lb");
    expect(max(list).unit).toBe("lb");
    expect(sum(list).toString()).toBe("6 lb");
    expect(sum([quantity(2, "lb", "N")]).toString()).toBe("2 lb of N");
  });

  test("the quotient of a result has the units of what went in", () => {
    expect(quantity(6, "lb").per(quantity(2, "acre")).toString()).toBe("3 lb/acre");
    expect(quantity(6, "lb/acre").times(quantity(2, "ha")).unit).toBe("lb");
    // 2 ha are 20 000 m2 of 0.3048^2 by 43 560 to the acre
    expect(quantity(6, "lb/acre").times(quantity(2, "ha")).value).toBeCloseTo(
      120_000 / (0.3048 ** 2 * 43_560),
      9,
    );
    expect(quantity(3, "ft").times(quantity(4, "ft")).toString()).toBe("12 ft2");
    expect(quantity(3, "ft2").times(quantity(4, "ft")).toString()).toBe("12 ft3");
    expect(quantity(12, "ft2").per(quantity(4, "ft")).toString()).toBe("3 ft");
    expect(quantity(3, "gal/min").times(quantity(20, "min")).toString()).toBe("60 gal");
    expect(quantity(60, "gal").per(quantity(20, "min")).toString()).toBe("3 gal/min");
    expect(
      quantity(3, "money:USD/lb", "none/N")
        .times(quantity(2, "lb", "N"))
        .toString(),
    ).toBe("6 money:USD");
    expect(quantity(6, "lb").per(quantity(3, "lb")).toString()).toBe("2 1");
    expect(quantity(6, "count").per(quantity(3, "count")).dimension).toBe("1");
    expect(js(6, "money:USD").per(js(3, "money:USD")).toString()).toBe("2 1");
    expect(problemsOf(() => js(6, "money:USD").per(js(3, "money:EUR")))).toHaveLength(1);
  });
});
