import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  brownPatchIndex,
  brownPatchSpells,
  dollarSpotProbability,
  hourlyWeather,
  pythiumCriteria,
  pythiumOutlook,
  quantity,
} from "../../../src/index.js";
import { runs } from "../../properties.js";

// Second readings of what the papers and the agricultural weather center state, on whole hours without gaps.
const hours = 72;
const hot = fc.array(fc.integer({ min: 17, max: 36 }), { minLength: hours, maxLength: hours });
const humid = fc.array(fc.constantFrom(70, 89, 91, 96, 98), { minLength: hours, maxLength: hours });
const blocks = fc.array(fc.tuple(fc.integer({ min: 1, max: 24 }), fc.constantFrom(80, 97)), {
  minLength: 12,
  maxLength: 12,
});

describe("second readings of the diseases", () => {
  it("Pythium: above 30 °C, then 14 hours above 90 %, a minimum above 20 °C, from noon to noon", () => {
    fc.assert(
      fc.property(hot, humid, fc.boolean(), (t, rh, night) => {
        // Half of the cases have no cool hour, or else none would be favorable.
        const temperature = night ? t.map((value) => Math.max(21, value)) : t;
        const weather = hourlyWeather({
          start: "2026-07-14T00:00-05:00",
          source: "invented",
          temperature: { unit: "°C", values: temperature },
          humidity: { unit: "%", values: rh },
        });
        const told = pythiumOutlook({ weather }).days.map(({ favorable }) => favorable);
        const wanted = [12, 36].map((noon) => {
          const day = temperature.slice(noon, noon + 24);
          const after = day.findIndex((value) => value > 30);
          const wet = rh.slice(noon, noon + 24).filter((value, i) => after >= 0 && i > after && value > 90);
          return after >= 0 && day.every((value) => value > 20) && wet.length >= 14;
        });
        expect(told).toEqual(wanted);
      }),
      runs(200),
    );
  });

  it("Kentucky prints the same criteria in °F: 86 °F, 68 °F, 14 h, 90 %", () => {
    const [first] = pythiumCriteria;
    expect(((first?.maximumAbove.value ?? 0) * 9) / 5 + 32).toBe(86);
    expect(((first?.minimumAbove.value ?? 0) * 9) / 5 + 32).toBe(68);
    expect(first?.hours).toBe(14);
    expect(first?.humidityAbove?.value).toBe(90);
  });

  it("brown patch: the tenth hour in a row above 95 %, with the day and a half before it", () => {
    const level = fc.tuple(
      fc.integer({ min: 18, max: 26 }),
      fc.integer({ min: 17, max: 26 }),
      fc.integer({ min: 0, max: 6 }),
    );
    fc.assert(
      fc.property(blocks, level, (parts, [air, soil, mm]) => {
        const rh = parts.flatMap(([length, value]) => Array<number>(length).fill(value)).slice(0, 96);
        fc.pre(rh.length >= 48);
        const column = (value: number) => rh.map(() => value);
        const rain = rh.map((_, i) => (i % 36 === 0 ? mm : 0));
        const weather = hourlyWeather({
          start: "2026-07-14T00:00-05:00",
          source: "invented",
          temperature: { unit: "°C", values: column(air) },
          soilTemperature: { unit: "°C", values: column(soil) },
          humidity: { unit: "%", values: rh },
          rain: { unit: "mm", values: rain },
        });
        const told = brownPatchSpells({ weather }).spells.map(({ favorable }) => favorable);
        const wanted: (boolean | null)[] = [];
        rh.forEach((_, i) => {
          const ten = rh.slice(Math.max(0, i - 9), i + 1);
          const tenth =
            ten.length === 10 && ten.every((value) => value > 95) && (i === 9 || (rh[i - 10] ?? 0) <= 95);
          if (!tenth) return;
          const known24 = i >= 23;
          const known36 = i >= 35;
          const bad = (known24 && (soil <= 21 || air <= 20)) || (known36 && mm < 3);
          wanted.push(bad ? false : known24 && known36 ? true : null);
        });
        expect(told).toEqual(wanted);
      }),
      runs(200),
    );
  });

  it("the two equations, from the printed coefficients", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 1.1, max: 100, noNaN: true }),
        (t, rh) => {
          const given = { meanHumidity: quantity(rh, "%") };
          expect(brownPatchIndex({ ...given, minimumTemperature: quantity(t * 1.8 + 32, "°F") })).toBeCloseTo(
            0.15 * rh + t * (1.4 - 0.033 * t) - 21.5,
            8,
          );
          const odds = Math.exp(-11.4041 + 0.0894 * rh + 0.1932 * t);
          expect(dollarSpotProbability({ ...given, meanTemperature: quantity(t, "°C") }).in("%")).toBeCloseTo(
            (100 * odds) / (1 + odds),
            8,
          );
        },
      ),
      runs(200),
    );
  });
});
