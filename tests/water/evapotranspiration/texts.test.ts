import { describe, expect, test } from "vitest";
import type { CivilDate, Instant } from "../../../src/calendar/index.js";
import { type Finding, quantity } from "../../../src/quantity/index.js";
import {
  dailyReferenceEvapotranspiration,
  hourlyReferenceEvapotranspiration,
} from "../../../src/water/index.js";

const day = (change: object) =>
  dailyReferenceEvapotranspiration({
    min: quantity(10, "°C"),
    max: quantity(25, "°C"),
    moisture: { vaporPressure: quantity(1, "kPa") },
    sunlight: { solar: quantity(20, "MJ/m2/d") },
    wind: { speed: quantity(2, "m/s"), height: quantity(2, "m") },
    latitude: quantity(40, "deg"),
    elevation: quantity(0, "m"),
    date: "2026-06-21" as CivilDate,
    ...change,
  }).findings;
const hour = (solar: number) =>
  hourlyReferenceEvapotranspiration({
    temperature: quantity(30, "°C"),
    humidity: quantity(50, "%"),
    solar: quantity(solar, "MJ/m2"),
    wind: { speed: quantity(2, "m/s"), height: quantity(2, "m") },
    latitude: quantity(40, "deg"),
    longitude: quantity(0, "deg"),
    elevation: quantity(0, "m"),
    start: "2026-06-21T12:00Z" as Instant,
    length: quantity(1, "h"),
  }).findings;

/** What is told, with the figures that depend on the weather of the case left open as `#`. */
const told: readonly (readonly [
  name: string,
  found: () => readonly Finding[],
  told: readonly (readonly [string, Finding["severity"], string])[],
])[] = [
  ["an ordinary day", () => day({}), []],
  [
    "a dead sensor",
    () => day({ sunlight: { solar: quantity(4, "MJ/m2/d") } }),
    [
      [
        "water/darker-than-overcast",
        "caution",
        "The solar radiation is # times that of a clear sky, less than under the thickest cloud that the longwave radiation is made for: the net radiation comes out too high. Check the instrument.",
      ],
    ],
  ],
  [
    "more than a clear sky by more than a tenth",
    () => day({ sunlight: { solar: quantity(36, "MJ/m2/d") } }),
    [
      [
        "water/brighter-than-clear-sky",
        "caution",
        "The solar radiation is # times that of a clear sky: in the longwave radiation the ratio counts as 1. Check the instrument, or Angstrom's coefficients.",
      ],
    ],
  ],
  [
    "hardly more than a clear sky, in a calm",
    () =>
      day({
        sunlight: { solar: quantity(32, "MJ/m2/d") },
        wind: { speed: quantity(0.4, "m/s"), height: quantity(2, "m") },
      }),
    [
      [
        "water/brighter-than-clear-sky",
        "note",
        "The solar radiation is # times that of a clear sky: in the longwave radiation the ratio counts as 1. Check the instrument, or Angstrom's coefficients.",
      ],
      ["water/calm", "note", "Wind below # m/s at 2 m: the source takes #, this figure the wind as given."],
    ],
  ],
  [
    "moist air, and nothing measured",
    () => day({ moisture: { saturatedAtMinimum: true }, sunlight: { temperatures: "interior" } }),
    [
      [
        "water/moisture-assumed",
        "note",
        "Humidity was not measured: the dew point counts as the lowest temperature, too moist in dry places.",
      ],
      [
        "water/sunlight-assumed",
        "note",
        "Radiation was not measured: it follows from the temperature range, which scatters from day to day.",
      ],
    ],
  ],
  [
    "more vapor than the mean of saturation",
    () => day({ moisture: { vaporPressure: quantity(2.6, "kPa") } }),
    [
      [
        "water/moister-than-saturated",
        "caution",
        "The air holds more vapor than the mean of its saturation: the wind term is below zero. Check dew point and temperatures.",
      ],
    ],
  ],
  [
    "a dark hour",
    () => hour(0.5),
    [
      [
        "water/darker-than-overcast",
        "caution",
        "The solar radiation is # times that of a clear sky, less than the longwave radiation is made for: the net radiation comes out too high. Near sunrise and sunset give clearnessBefore, else check the instrument.",
      ],
    ],
  ],
  [
    "a bright hour",
    () => hour(4.2),
    [
      [
        "water/brighter-than-clear-sky",
        "caution",
        "The solar radiation is # times that of a clear sky: in the longwave radiation the ratio counts as 1.",
      ],
    ],
  ],
];

/** The figures of a text that follow from the case, left open where the wanted text leaves them open. */
const opened = (text: string, wanted: string | undefined): string =>
  wanted?.includes("#") ? text.replaceAll(/\d+\.\d+/g, "#") : text;

describe("what reference evapotranspiration says", () => {
  test.each(told.map(([name, found, list]) => [name, found, list] as const))("%s", (_name, found, list) => {
    expect(
      found().map(({ code, severity, text }, n) => [code, severity, opened(text, list[n]?.[2])]),
    ).toEqual(list);
  });
});
