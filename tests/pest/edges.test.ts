import { describe, expect, it } from "vitest";
import {
  brownPatchIndex,
  brownPatchSpells,
  dollarSpotProbability,
  hourlyWeather,
  pythiumOutlook,
  quantity,
} from "../../src/index.js";
import { complaints } from "../errors.js";

const hours = Array.from({ length: 24 }, (_, i) => i);
const weather = (columns: object, start = "2026-07-14T12:00-05:00") =>
  hourlyWeather({ start: start as never, source: "invented", ...columns });

describe("air that is none", () => {
  const percent = quantity(80, "%");
  it.each([-61, 61])("%s °C is refused by both models", (celsius) => {
    const t = quantity(celsius, "°C");
    expect(complaints(() => brownPatchIndex({ meanHumidity: percent, minimumTemperature: t }))).toEqual([
      "range minimumTemperature",
    ]);
    expect(complaints(() => dollarSpotProbability({ meanHumidity: percent, meanTemperature: t }))).toEqual([
      "range meanTemperature",
    ]);
  });
});

describe("hours without a figure", () => {
  it("are counted where humidity is missing, and only those", () => {
    const spells = (humidity: readonly (number | null)[]) =>
      brownPatchSpells({
        weather: weather({
          temperature: { unit: "°C", values: hours.map(() => 23) },
          soilTemperature: { unit: "°C", values: hours.map(() => 22) },
          rain: { unit: "mm", values: hours.map(() => 0) },
          humidity: { unit: "%", values: humidity },
        }),
      }).unknownHours;
    expect(spells(hours.map(() => 70))).toBe(0);
    expect(spells(hours.map((hour) => (hour % 8 === 0 ? null : 70)))).toBe(3);
  });

  it("a day without any temperature has no highest and no lowest", () => {
    const { days } = pythiumOutlook({
      weather: weather({
        temperature: { unit: "°C", values: hours.map(() => null) },
        humidity: { unit: "%", values: hours.map(() => 95) },
      }),
    });
    expect(days[0]).toMatchObject({
      maximumC: null,
      minimumC: null,
      hoursWithoutFigure: 24,
      favorable: null,
    });
  });
});
