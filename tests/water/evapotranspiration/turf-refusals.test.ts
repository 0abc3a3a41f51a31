import { describe } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import { tellsEach } from "../../tells.js";
import { celsius } from "../helpers.js";

const deg = (value: number) => quantity(value, "deg");
type Plain = (input: unknown) => unknown;
/** Each function as plain JavaScript calls it. */
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;

describe("Hargreaves", () => {
  const cold = { min: celsius(-30), max: celsius(-20), latitude: deg(45), date: "2026-06-21" };
  const series = {
    type: "daily-temperatures",
    version: 1,
    start: "2026-06-21",
    unit: "°C",
    sensor: "air",
    source: "probe",
    min: [10, -30],
    max: [20, -20],
  };
  tellsEach([
    [
      () => call.hargreavesEvapotranspiration(cold),
      "range max: expected a mean temperature of -17.8 °C or more, got -20 °C",
    ],
    [
      () => call.hargreavesEvapotranspiration({ ...cold, date: undefined }),
      "missing date: expected the date of the day, got undefined",
    ],
    [
      () => call.hargreavesSeries({ temperatures: series, latitude: deg(45) }),
      "range temperatures.max[1]: expected a mean temperature of -17.8 °C or more, got -20",
    ],
    [
      () => call.hargreavesSeries({ latitude: deg(45) }),
      "missing temperatures: expected daily temperatures, as dailyTemperatures makes them, got undefined",
    ],
    [
      () => call.hargreavesSeries({ temperatures: { ...series, type: "daily-series" }, latitude: deg(45) }),
      "type temperatures: expected daily temperatures, as dailyTemperatures makes them, got a record",
    ],
    [
      () =>
        call.hargreavesSeries({
          temperatures: { ...series, sensor: "soil at 5 cm" },
          latitude: deg(45),
        }),
      'type temperatures.sensor: expected air: soil temperatures do not show it, got "soil at 5 cm"',
    ],
  ]);
});

describe("turf coefficients", () => {
  const turf = { season: "cool-season", list: "Arizona" };
  tellsEach([
    [() => call.turfCoefficient(turf), 'missing quality: expected "acceptable" or "high", got undefined'],
    [
      () => call.turfCoefficient({ ...turf, quality: "high", month: 3 }),
      "conflict month: expected nothing: this list has no months, got 3",
    ],
    [
      () => call.turfCoefficient({ ...turf, list: "California, by month" }),
      "missing month: expected the month, 1 to 12, got undefined",
    ],
    [
      () => call.turfCoefficient({ ...turf, list: "California, by month", month: 13 }),
      "range month: expected 12 or less, got 13",
    ],
    [
      () => call.turfCoefficient({ ...turf, list: "FAO-56", quality: "high" }),
      'conflict quality: expected nothing: this list has no quality, got "high"',
    ],
    [
      () => call.landscapeCoefficient({ species: 3.1, density: 0, microclimate: 3.1 }),
      "range species: expected 3 or less, got 3.1",
      "range density: expected more than 0, got 0",
      "range microclimate: expected 3 or less, got 3.1",
    ],
    [
      () => call.turfUse({ reference: quantity(-1, "mm/d"), coefficient: 0, microclimate: 4 }),
      "range reference: expected zero or more: below zero is dew, and such a day counts as 0, got -1 mm/d",
      "range coefficient: expected more than 0, got 0",
      "range microclimate: expected 3 or less, got 4",
    ],
  ]);
});
