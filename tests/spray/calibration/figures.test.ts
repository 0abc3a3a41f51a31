import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  calibrationByCatch,
  calibrationByRefill,
  groundSpeed,
  pumpCapacity,
  rateControllerCheck,
  weighedCatch,
} from "../../../src/spray/index.js";
import { gpm, percent, seconds } from "../helpers.js";

// Worked by hand. What lies at a limit is within it; a thousand-millionth past it is, too, for floating point.

const water = (value: number) => quantity(value, "gal", "water");

describe("calibration", () => {
  test("what goes into it is told", () => {
    const area = quantity(1000, "ft2");
    const once = calibrationByRefill({ refills: [water(2)], area });
    expect(once).toMatchObject({
      type: "spray-calibration",
      version: 1,
      method: "refill",
      checked: [],
      notChecked: [
        "the spread of the refills: there is one",
        "the error of the volumes: not stated",
        "the error of the area: not stated",
      ],
    });
    const twice = calibrationByRefill({
      refills: [water(2), water(3)],
      area,
      errors: { volume: percent(1), area: percent(2) },
    });
    expect([twice.checked, twice.notChecked]).toEqual([
      ["the spread of 2 refills", "the stated error of the volumes", "the stated error of the area"],
      [],
    ]);
    const timed = calibrationByCatch({
      catches: [water(1), water(1)],
      area,
      catchTime: seconds(60),
      times: [seconds(30), seconds(30)],
    });
    // half of a gallon on 1000 ft2
    expect(timed.rate.in("gal/1000 ft2")).toBeCloseTo(0.5, 12);
    expect([timed.checked, timed.notChecked]).toEqual([
      ["the spread of 2 catches", "the spread of 2 runs"],
      [
        "the error of the volumes: not stated",
        "the error of the area: not stated",
        "the error of the times: not stated",
      ],
    ]);
    const plain = calibrationByCatch({ catches: [water(1), water(1)], area, outOf: 2 });
    expect(plain.notChecked).toEqual([
      "the error of the volumes: not stated",
      "the error of the area: not stated",
    ]);
    const clock = calibrationByCatch({ catches: [water(1)], area, errors: { time: percent(1) } });
    expect(clock.notChecked).toEqual([
      "the spread of the catches: there is one",
      "the error of the volumes: not stated",
      "the error of the area: not stated",
    ]);
  });
  test("a controller that is off", () => {
    const found = rateControllerCheck({ displayed: water(55), measured: water(50), meterNumber: 100 });
    expect([found.type, found.version, found.withinTolerance, found.meterNumber]).toEqual([
      "rate-controller-check",
      1,
      false,
      110,
    ]);
    expect(found.findings[0]).toMatchObject({
      params: { percent: 10, tolerance: 5 },
      source: "common practice, no source",
    });
    expect(rateControllerCheck({ displayed: water(52.5), measured: water(50) }).withinTolerance).toBe(true);
  });
  test("a full jug", () => {
    expect(weighedCatch({ full: quantity(1.1, "kg", "water"), tare: quantity(100, "g") }).toString()).toBe(
      "1000 mL of water",
    );
  });
  test("88 ft in a minute are a mile an hour, to the last digit", () => {
    expect(groundSpeed({ course: quantity(88, "ft"), times: [seconds(60)] }).toString()).toBe("1 mi/h");
    expect(groundSpeed({ course: quantity(100, "m"), times: [seconds(36)] }).in("km/h")).toBeCloseTo(10, 12);
  });
});

describe("pumps", () => {
  const of = (pump: number) =>
    pumpCapacity({
      boom: gpm(10),
      tank: quantity(100, "gal"),
      agitation: percent(5),
      reserve: percent(20),
      pump: gpm(pump),
    });
  test("ten for the boom, five for the tank, a fifth in reserve", () => {
    const found = of(18);
    expect([found.agitation, found.reserve, found.total, found.spare].map(String)).toEqual([
      "5 gal/min",
      "3 gal/min",
      "18 gal/min",
      "0 gal/min",
    ]);
    expect(found.findings).toEqual([]);
    const [short] = of(16).findings;
    expect(short?.params).toEqual({ short: 2, unit: "gal/min" });
    expect(short?.text).toContain("is 2 gal/min short");
    expect(
      pumpCapacity({
        boom: gpm(10),
        tank: quantity(100, "gal"),
        agitation: percent(100),
        reserve: percent(100),
      }).total.in("gal/min"),
    ).toBe(220);
  });
  test("in liters where the boom is", () => {
    const found = pumpCapacity({
      boom: quantity(40, "L/min", "spray"),
      tank: quantity(1000, "L"),
      agitation: percent(5),
      reserve: percent(10),
    });
    expect([found.agitation, found.total].map(String)).toEqual(["50 L/min", "99 L/min"]);
  });
});
