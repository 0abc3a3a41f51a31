import { describe } from "vitest";
import { dailyLightIntegral, dayLength, lightFromRadiation, sunTimes } from "../../../src/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { tellsEach } from "../../tells.js";

const deg = (value: number) => quantity(value, "deg");
type Plain = (input: unknown) => unknown;
const [sun, length, light, radiation] = [
  sunTimes,
  dayLength,
  dailyLightIntegral,
  lightFromRadiation,
] as unknown as [Plain, Plain, Plain, Plain];
const place = { latitude: deg(40), longitude: deg(-75), date: "2026-06-21", offset: "-04:00" };
const offset = "the offset of the clock from UTC, such as -05:00 or Z";

describe("the sun", () => {
  tellsEach([
    [
      () => sun({ date: "2026-06-21" }),
      "missing latitude: expected -90 to 90 deg, positive north of the equator, got undefined",
      "missing longitude: expected -180 to 180 deg, positive east of Greenwich: in America it is negative, got undefined",
      `missing offset: expected ${offset}, got undefined`,
    ],
    [
      () => sun({ ...place, latitude: deg(91) }),
      "range latitude: expected -90 to 90 deg, positive north of the equator, got 91 deg",
    ],
    [
      () => sun({ ...place, longitude: deg(-181) }),
      "range longitude: expected -180 to 180 deg, positive east of Greenwich: in America it is negative, got -181 deg",
    ],
    [
      () => sun({ ...place, longitude: deg(75) }),
      'conflict longitude: expected a longitude (positive east of Greenwich: in America it is negative) and an offset of the same part of the world, got "75 deg and an offset of -04:00"',
    ],
    [() => sun({ ...place, offset: "UTC-04:00" }), `type offset: expected ${offset}, got "UTC-04:00"`],
    [() => sun({ ...place, offset: "-04:00 EDT" }), `type offset: expected ${offset}, got "-04:00 EDT"`],
    [() => sun({ ...place, offset: -4 }), `type offset: expected ${offset}, got -4`],
    [
      () => length({ latitude: deg(95), date: "2026-06-21", method: "FAO" }),
      "range latitude: expected -90 to 90 deg, positive north of the equator, got 95 deg",
      'type method: expected one of "NOAA", "FAO-56", got "FAO" (did you mean FAO-56?)',
    ],
  ]);
});

describe("light", () => {
  tellsEach([
    [() => light({}), "missing ppfdMicromol: expected a list with at least one reading, got undefined"],
    [
      () => light({ ppfdMicromol: [100, 200], everyMinutes: 90 }),
      'range ppfdMicromol: expected one whole day: 16 readings, got "2 readings of 90 minutes"',
    ],
    [
      () => light({ ppfdMicromol: [1], everyMinutes: 121 }),
      "range everyMinutes: expected 120 or less, got 121",
    ],
    [
      () => light({ ppfdMicromol: Array(24).fill(4001) }),
      "range ppfdMicromol[0]: expected 4000 or less, got 4001",
    ],
    [
      () => light({ ppfdMicromol: Array(24).fill(null) }),
      "missing ppfdMicromol: expected at least one reading, got no reading",
    ],
    [() => radiation({}), "missing radiation: expected the radiation of the day, in MJ/m2, got undefined"],
    [
      () => radiation({ radiation: quantity(231, "W/m2") }),
      'unit/mismatch radiation: expected the sum of the day: mean.times(quantity(1, "d")) gives it, got 231 W/m2',
    ],
    [
      () => radiation({ radiation: quantity(51, "MJ/m2") }),
      "range radiation: expected 50 MJ/m2 or less in a day, got 51 MJ/m2",
    ],
    [
      () =>
        radiation({ radiation: quantity(20, "MJ/m2"), parShare: quantity(101, "%"), micromolPerJoule: 6.1 }),
      "range parShare: expected 100 % or less, got 101 %",
      "range micromolPerJoule: expected 6 or less, got 6.1",
    ],
  ]);
});
