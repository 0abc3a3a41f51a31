import { describe } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import { tellsEach } from "../../tells.js";
import { celsius, percent } from "../helpers.js";

const deg = (value: number) => quantity(value, "deg");
const mj = (value: number) => quantity(value, "MJ/m2/d");
const m = (value: number) => quantity(value, "m");
const h = (value: number) => quantity(value, "h");
type Plain = (input: unknown) => unknown;
/** Each function as plain JavaScript calls it. */
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;
const day = {
  min: celsius(12),
  max: celsius(24),
  moisture: { rhMean: percent(60) },
  sunlight: { solar: mj(20) },
  wind: { speed: quantity(2, "m/s"), height: m(2) },
  latitude: deg(45),
  elevation: m(100),
  date: "2026-06-21",
};
const hour = {
  temperature: celsius(20),
  humidity: percent(60),
  solar: quantity(500, "W/m2"),
  wind: day.wind,
  latitude: deg(45),
  longitude: deg(0),
  elevation: m(100),
  start: "2026-06-21T12:00Z",
  length: h(1),
};
const radiation = 'a radiation, such as quantity(22.07, "MJ/m2/d") or quantity(255, "W/m2")';
const air = 'an air temperature, such as quantity(21.5, "°C")';
const moisture =
  "one of dewPoint; vaporPressure; wet, dry and psychrometer; rhMax and rhMin; rhMax; rhMean; saturatedAtMinimum";
const sunlight = "one of solar; sunshine; temperatures";

describe("what is no record is told with what it should be", () => {
  tellsEach(
    (
      [
        ["extraterrestrialRadiation", "latitude and dayOfYear"],
        ["sunsetHourAngle", "latitude and dayOfYear"],
        ["solarDeclination", "dayOfYear"],
        ["inverseSunDistance", "dayOfYear"],
        ["hourlyExtraterrestrialRadiation", "latitude, longitude, start and length"],
        ["hargreavesEvapotranspiration", "min, max, latitude and date"],
        ["hargreavesSeries", "temperatures and latitude"],
        ["dailyReferenceEvapotranspiration", "the weather of a day, latitude, elevation and date"],
        [
          "monthlyReferenceEvapotranspiration",
          "the mean weather of a month, latitude, elevation, month and before",
        ],
        ["monthlySoilHeatFlux", "before, and after or month"],
        ["hourlyReferenceEvapotranspiration", "the weather of an hour, its place and its start"],
        ["solarRadiationFromSunshine", "extraterrestrial, sunshine and daylight"],
        ["solarRadiationFromTemperatures", "extraterrestrial, min, max and location"],
        ["clearSkyRadiation", "extraterrestrial and elevation"],
        ["netShortwaveRadiation", "solar"],
        ["netLongwaveRadiation", "min, max, vaporPressure, solar and clearSky"],
        ["turfCoefficient", "season and list"],
        ["landscapeCoefficient", "species, density and microclimate"],
        ["turfUse", "reference and coefficient"],
        ["saturationVaporPressure", "temperature"],
        ["vaporPressureSlopeKPaPerC", "temperature"],
        ["meanSaturationVaporPressure", "min and max"],
        ["actualVaporPressure", "min, max and moisture"],
        ["atmosphericPressure", "elevation"],
        ["psychrometricConstantKPaPerC", "pressure"],
      ] as const
    ).map(([name, fields]) => [() => call[name](3), `type input: expected a record with ${fields}, got 3`]),
  );
});

describe("the weather of a day", () => {
  const reference = (change: object) => () => call.dailyReferenceEvapotranspiration({ ...day, ...change });
  tellsEach([
    [
      () => call.dailyReferenceEvapotranspiration({}),
      `missing min: expected ${air}, got undefined`,
      `missing max: expected ${air}, got undefined`,
      `missing moisture: expected ${moisture}, got undefined`,
      `missing sunlight: expected ${sunlight}, got undefined`,
      "missing wind: expected a record with speed and height, got undefined",
      'missing latitude: expected an angle, such as quantity(180, "deg"), got undefined',
      'missing elevation: expected a length, such as quantity(10, "ft"), got undefined',
      "missing date: expected the date of the day, got undefined",
    ],
    [reference({ min: null }), `missing min: expected ${air}, got null`],
    [reference({ min: celsius(-91) }), "range min: expected an air temperature of -90 to 60 °C, got -91 °C"],
    [reference({ max: celsius(61) }), "range max: expected an air temperature of -90 to 60 °C, got 61 °C"],
    [reference({ min: celsius(25) }), "conflict min: expected not more than max, 24 °C, got 25 °C"],
    [reference({ elevation: m(-501) }), "range elevation: expected -500 or more, got -501"],
    [reference({ elevation: m(9001) }), "range elevation: expected 9000 or less, got 9001"],
    [
      reference({ latitude: deg(-91) }),
      "range latitude: expected a latitude of -90 to 90 deg, negative in the south, got -91 deg",
    ],
    [
      reference({ latitude: deg(80), date: "2026-12-21" }),
      "infeasible latitude: expected a day on which the sun rises: without it the cloudiness is not known, got 80.0 deg",
    ],
    [
      reference({ wind: { height: m(2) } }),
      'missing wind.speed: expected a wind speed, such as quantity(2.8, "m/s"), got undefined',
    ],
    [
      reference({ wind: { speed: quantity(121, "m/s"), height: m(2) } }),
      "range wind.speed: expected a wind speed of 85 m/s or less, got 121 m/s",
    ],
    [
      reference({ wind: { speed: quantity(2, "m/s"), height: m(40) } }),
      "range wind.height: expected a height above the ground of 0.3 to 30 m: weather stations and forecasts state 10 m, got 40 m",
    ],
    [reference({ moisture: {} }), `missing moisture: expected ${moisture}, got nothing`],
    [
      reference({ moisture: { rhMax: percent(90), rhMean: percent(60) } }),
      `conflict moisture: expected ${moisture}, got rhMax, rhMean`,
    ],
    [reference({ moisture: { rhMin: percent(90) } }), `conflict moisture: expected ${moisture}, got rhMin`],
    [
      reference({ moisture: { wet: celsius(10), psychrometer: "indoor", rhMin: percent(5) } }),
      `conflict moisture: expected ${moisture}, got wet, psychrometer, rhMin`,
    ],
    [
      reference({ moisture: { rhMax: percent(50), rhMin: percent(60) } }),
      "conflict moisture.rhMin: expected not more than rhMax, 50 %, got 60",
    ],
    [
      reference({ moisture: { rhMax: percent(50), rhMin: percent(101) } }),
      "range moisture.rhMin: expected 100 or less, got 101",
    ],
    [
      reference({ moisture: { wet: celsius(20), dry: celsius(19), psychrometer: "ventilated" } }),
      "conflict moisture.wet: expected not more than the dry bulb, got 20 °C",
    ],
    [
      reference({ moisture: { wet: celsius(5), dry: celsius(40), psychrometer: "indoor" } }),
      "infeasible moisture.wet: expected a wet bulb at which air can be as dry as that, got 5 °C",
    ],
    [
      reference({ moisture: { vaporPressure: quantity(3, "kPa") } }),
      // 0.6108 exp(17.27 24 / 261.3) = 2.985
      "conflict moisture: expected not more vapor than saturates the air at max, 2.984 kPa, got 3.000 kPa",
    ],
    [
      reference({ moisture: { saturatedAtMinimum: false } }),
      "type moisture.saturatedAtMinimum: expected true, or left out, got false",
    ],
    [reference({ sunlight: {} }), `missing sunlight: expected ${sunlight}, got nothing`],
    [
      reference({ sunlight: { solar: mj(20), sunshine: h(9) } }),
      `conflict sunlight: expected ${sunlight}, got solar, sunshine`,
    ],
    [
      reference({ sunlight: { solar: mj(20), b: 0.5 } }),
      "conflict sunlight: expected Angstrom's coefficients with sunshine only, got a or b",
    ],
    [
      reference({ sunlight: { sunshine: h(9), a: 1, b: 0 } }),
      "range sunlight.a: expected less than 1, got 1",
      "range sunlight.b: expected more than 0, got 0",
    ],
    [
      // 41.85 MJ at 45° on 21 June: Ra of the paper's equation 21.
      reference({ sunlight: { solar: mj(50) } }),
      "range sunlight.solar: expected 41.91 MJ/m2/d or less, what there is at the top of the atmosphere, got 50 MJ/m2/d",
    ],
    [
      reference({ sunlight: { sunshine: h(17) } }),
      "range sunlight.sunshine: expected 15.4 h or less, the daylight, got 17 h",
    ],
  ]);
});

describe("months, hours and the sun", () => {
  const hourly = (change: object) => () => call.hourlyReferenceEvapotranspiration({ ...hour, ...change });
  const night = { start: "2026-06-21T23:00Z", solar: quantity(0, "W/m2"), clearnessBefore: percent(80) };
  tellsEach([
    [
      () => call.monthlySoilHeatFlux({ before: celsius(10) }),
      "missing after: expected the mean temperature of the month after, or month, got undefined",
    ],
    [
      () => call.monthlySoilHeatFlux({ before: celsius(10), after: celsius(12), month: celsius(11) }),
      "conflict month: expected either after or month, not both, got 11 °C",
    ],
    [hourly({ length: h(4) }), "range length: expected 3 h or less: for a day take the daily form, got 4 h"],
    [
      hourly({ longitude: deg(181) }),
      "range longitude: expected a longitude of -180 to 180 deg, negative in the west, got 181 deg",
    ],
    [hourly({ start: undefined }), "missing start: expected the moment with its offset, got undefined"],
    [hourly({ humidity: percent(101) }), "range humidity: expected 100 or less, got 101"],
    [hourly({ solar: undefined }), `missing solar: expected ${radiation}, got undefined`],
    [hourly({ solar: null }), `missing solar: expected ${radiation}, got null`],
    [
      hourly({ clearnessBefore: percent(80) }),
      "conflict clearnessBefore: expected nothing while the sun is higher than 17 degrees: the radiation shows the clouds, got 80",
    ],
    [hourly({ clearnessBefore: percent(101) }), "range clearnessBefore: expected 100 or less, got 101"],
    [
      hourly({ ...night, clearnessBefore: undefined }),
      "missing clearnessBefore: expected Rs / Rso of the hours before sunset: the sun is down, got undefined",
    ],
    [
      hourly({ ...night, solar: quantity(0.2, "MJ/m2") }),
      "range solar: expected 0 MJ/m2 or less, what there is at the top of the atmosphere in the period, got 0.200 MJ/m2",
    ],
    [
      () => call.inverseSunDistance({}),
      "missing dayOfYear: expected a day of the year; dayOfYear(date) gives it, got undefined",
    ],
    [
      () => call.inverseSunDistance({ dayOfYear: 1.5 }),
      "range dayOfYear: expected a day of the year: a whole number, 1 to 366, got 1.5",
    ],
    [() => call.inverseSunDistance({ dayOfYear: 367 }), "range dayOfYear: expected 366 or less, got 367"],
    [
      () => call.solarRadiationFromSunshine({ extraterrestrial: mj(30), sunshine: h(0), daylight: h(0) }),
      "range daylight: expected more than zero, got 0 h",
    ],
    [
      () =>
        call.netLongwaveRadiation({
          min: celsius(10),
          max: celsius(20),
          vaporPressure: quantity(1, "kPa"),
          solar: mj(10),
          clearSky: mj(0),
        }),
      "range clearSky: expected more than zero: a day on which the sun rises, got 0 MJ/m2/d",
    ],
    [
      () => call.netShortwaveRadiation({ solar: mj(10), albedo: 1.1 }),
      "range albedo: expected 1 or less, got 1.1",
    ],
    [
      () =>
        call.actualVaporPressure({
          min: celsius(10),
          max: celsius(20),
          moisture: { wet: celsius(10), dry: celsius(12), psychrometer: "natural" },
        }),
      "missing elevation: expected the elevation, for wet and dry bulb, got undefined",
    ],
  ]);
});
