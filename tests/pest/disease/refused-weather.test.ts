import { describe, expect, test } from "vitest";
import type { Instant } from "../../../src/calendar/index.js";
import {
  brownPatchIndex,
  brownPatchOutlook,
  brownPatchSpells,
  dollarSpotOutlook,
  dollarSpotProbability,
  pythiumOutlook,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";
import { celsius, daily, hourly, many, percent } from "./made-weather.js";

describe("a single day", () => {
  test("of brown patch", () => {
    const night = (change: object) => () =>
      brownPatchIndex({ meanHumidity: percent(90), minimumTemperature: celsius(20), ...change } as never);
    expectRefusals([
      [
        night({ meanHumidity: undefined }),
        "missing",
        "meanHumidity",
        /^the mean relative humidity of the day/,
      ],
      [night({ meanHumidity: percent(101) }), "range", "meanHumidity", /"min":0,"max":100,"unit":"%"/],
      [night({ meanHumidity: 90 }), "type", "meanHumidity", /./],
      [
        night({ minimumTemperature: undefined }),
        "missing",
        "minimumTemperature",
        /^the lowest air temperature of the day/,
      ],
      [
        night({ minimumTemperature: celsius(-60.1) }),
        "range",
        "minimumTemperature",
        /"min":-60,"max":60,"unit":"°C"/,
      ],
      [night({ minimumTemperature: celsius(60.1) }), "range", "minimumTemperature", /60/],
      [night({ minimumTemperature: percent(20) }), "unit/mismatch", "minimumTemperature", /./],
    ]);
    for (const end of [-60, 60]) expect(night({ minimumTemperature: celsius(end) })).not.toThrow();
    expect(night({ meanHumidity: percent(100) })()).toBeCloseTo(-21.5 + 15 + 28 - 13.2, 12);
  });

  test("of dollar spot", () => {
    const mean = (change: object) => () =>
      dollarSpotProbability({ meanHumidity: percent(90), meanTemperature: celsius(20), ...change } as never);
    expectRefusals([
      [
        mean({ meanTemperature: undefined }),
        "missing",
        "meanTemperature",
        /^the mean air temperature of five days/,
      ],
      [
        mean({ meanTemperature: celsius(60.1) }),
        "range",
        "meanTemperature",
        /"min":-60,"max":60,"unit":"°C"/,
      ],
      [mean({ meanTemperature: percent(20) }), "unit/mismatch", "meanTemperature", /./],
      [
        mean({ meanHumidity: undefined }),
        "missing",
        "meanHumidity",
        /^the mean relative humidity of five days/,
      ],
      [mean({ meanHumidity: percent(101) }), "range", "meanHumidity", /100/],
    ]);
    for (const end of [-60, 60]) expect(mean({ meanTemperature: celsius(end) })).not.toThrow();
  });
});

describe("a record of days", () => {
  const good = { humidity: daily([72, 85, null], "%"), minimum: daily([15, 21, 21], "°C") };
  const patch = (change: object) => () => brownPatchOutlook({ ...good, ...change } as never);
  const spot = (change: object) => () =>
    dollarSpotOutlook({
      humidity: daily(many(5, 80), "%"),
      temperature: daily(many(5, 20), "°C"),
      ...change,
    } as never);

  test("says what it should be, and which day cannot be", () => {
    expectRefusals([
      [patch({ humidity: undefined }), "missing", "humidity", /^a daily series, made by dailySeries/],
      [patch({ humidity: {} }), "type", "humidity", /^a daily series, made by dailySeries/],
      [patch({ humidity: hourly(24) }), "type", "humidity.temperature", /./],
      [
        patch({ humidity: { ...good.humidity, values: ["wet"] } }),
        "not-finite",
        "humidity.values[0]",
        /a finite number, or null for a day without one/,
      ],
      [
        patch({ humidity: daily([1], "°C") }),
        "unit/mismatch",
        "humidity.unit",
        /^a unit for a share, such as %/,
      ],
      [
        patch({ humidity: daily([50, 101], "%") }),
        "range",
        "humidity.values[1]",
        /"min":0,"max":100,"unit":"%"/,
      ],
      [patch({ minimum: undefined }), "missing", "minimum", /^a daily series/],
      [
        patch({ minimum: daily([15, 61], "°C") }),
        "range",
        "minimum.values[1]",
        /"min":-60,"max":60,"unit":"°C"/,
      ],
      [
        patch({ minimum: daily([1], "mm") }),
        "unit/mismatch",
        "minimum.unit",
        /^a unit for a temperature, such as °C/,
      ],
      [patch({ action: 9.1 }), "range", "action", /"min":0,"max":9/],
      [patch({ action: -1 }), "range", "action", /0/],
      [spot({ temperature: undefined }), "missing", "temperature", /^a daily series/],
      [spot({ temperature: daily([61, 20, 20, 20, 20], "°C") }), "range", "temperature.values[0]", /60/],
      [spot({ humidity: undefined }), "missing", "humidity", /^a daily series/],
      [spot({ action: percent(101) }), "range", "action", /100/],
      [spot({ action: 20 }), "type", "action", /./],
    ]);
    expect(complaints(patch({ minimum: daily([-61, 20, 61], "°C") }))).toEqual([
      "range minimum.values[0]",
      "range minimum.values[2]",
    ]);
    expect(patch({ minimum: daily([-60, 60], "°C"), humidity: daily([0, 100], "%") })).not.toThrow();
  });

  test("counts the days without a value, and says that weather is no diagnosis", () => {
    const outlook = patch({})();
    expect([outlook.unknownDays, outlook.days.length]).toEqual([1, 3]);
    expect(patch({ humidity: daily([72, 85, 80], "%") })().unknownDays).toBe(0);
    expect(outlook.findings).toEqual([
      {
        code: "disease/no-diagnosis",
        severity: "caution",
        params: { disease: "brown patch" },
        text: expect.stringMatching(
          /^Weather that favors brown patch is not a diagnosis\. .* Scout the turf before you treat, and follow the label\.$/,
        ),
      },
    ]);
    expect(spot({})().findings[0]?.text).toMatch(/^Weather that favors dollar spot is not a diagnosis/);
    expect(outlook.source).toEqual({
      title: expect.stringMatching(/brown patch warning model for perennial ryegrass/),
      publisher: expect.stringMatching(/^Phytopathology 86\(4\), 385-390/),
      year: 1996,
      where: "abstract, model E2",
    });
    expect(spot({})().source).toMatchObject({
      title: expect.stringMatching(/dollar spot/),
      publisher: expect.stringMatching(/PLOS ONE 13\(3\), e0194216/),
      where: expect.stringMatching(/five-day means, 20 %/),
      url: expect.stringMatching(/journal\.pone\.0194216/),
    });
  });

  test("is at its action level on the level itself", () => {
    // E = -21.5 + 0.15 RH + 1.4 T - 0.033 T2 is 6 at 20 °C where RH is (6 + 21.5 - 28 + 13.2) / 0.15
    const rh = (6 + 21.5 - 28 + 13.2) / 0.15;
    const at = (humidity: number) =>
      brownPatchOutlook({ humidity: daily([humidity], "%"), minimum: daily([20], "°C") }).days[0]
        ?.atOrAboveAction;
    expect([at(rh), at(rh - 1e-6)]).toEqual([true, false]);
    const { value } = spot({})().days[4] ?? {};
    const spotAt = (action: number) => spot({ action: percent(action) })().days[4]?.atOrAboveAction;
    expect([spotAt(value as number), spotAt((value as number) + 1e-6)]).toEqual([true, false]);
  });
});

describe("a record of hours", () => {
  test("says what it should be", () => {
    for (const of of [brownPatchSpells, pythiumOutlook]) {
      const put = (weather: unknown) => () => of({ weather } as never);
      expectRefusals([
        [put(undefined), "missing", "weather", /^an hourly record, made by hourlyWeather/],
        [put(3), "type", "weather", /./],
        [put({}), "type", "weather", /^an hourly record, made by hourlyWeather/],
        [put(daily([1], "°C")), "type", "weather", /^an hourly record, made by hourlyWeather/],
        [put({ ...hourly(24), start: "noon" }), "date", "weather.start", /./],
        [
          put({ ...hourly(24), humidity: undefined }),
          "missing",
          "weather.humidity",
          /^a column of the hourly record/,
        ],
        [
          put({ ...hourly(24), temperature: undefined }),
          "missing",
          "weather.temperature",
          /^a column of the hourly record/,
        ],
      ]);
    }
  });

  test("is long enough: ten hours of humidity, a day from noon to noon", () => {
    const start = (hour: string, hours: number) => () =>
      pythiumOutlook({ weather: { ...hourly(hours), start: `2026-07-14T${hour}-05:00` as Instant } });
    expectRefusals([
      [() => brownPatchSpells({ weather: hourly(9) }), "range", "weather", /"min":10,"count":"hours"/],
      [start("12:00", 23), "range", "weather", /one whole day from noon to noon.*"min":24,"count":"hours"/],
      [start("13:00", 46), "range", "weather", /one whole day from noon to noon.*"min":47,"count":"hours"/],
      [start("06:00", 29), "range", "weather", /"min":30,"count":"hours"/],
    ]);
    expect(brownPatchSpells({ weather: hourly(10) }).spells).toEqual([]);
    expect(start("12:00", 24)().days.map(({ from }) => from)).toEqual(["2026-07-14"]);
    expect(start("13:00", 47)().days.map(({ from }) => from)).toEqual(["2026-07-15"]);
    expect(start("06:00", 54)().days.map(({ from }) => from)).toEqual(["2026-07-14", "2026-07-15"]);
    // A record that begins at half past has its first noon half an hour later at the earliest
    expect(start("11:30", 25)().days.map(({ from }) => from)).toEqual(["2026-07-14"]);
  });

  test("says that weather is no diagnosis, and where the model stands", () => {
    const spells = brownPatchSpells({ weather: hourly(10) });
    expect(spells.findings[0]).toMatchObject({ params: { disease: "brown patch" } });
    expect(spells.source).toEqual({
      title: "Predictive models for turf grass diseases",
      publisher: "University of Kentucky, agricultural weather center",
      where: "brown patch model 2",
      url: "http://weather.uky.edu/turf_forecasting.htm",
    });
    expect(pythiumOutlook({ weather: hourly(24) }).findings[0]).toMatchObject({
      params: { disease: "Pythium blight" },
    });
  });

  test("at 95 % of humidity is not above it, and 3 mm of rain are enough", () => {
    const spell = (humidity: number, rain: number) =>
      brownPatchSpells({
        weather: hourly(36, {
          soilTemperature: { unit: "°C", values: many(36, 22) },
          humidity: { unit: "%", values: many(36, 70).map((low, n) => (n >= 26 ? humidity : low)) },
          rain: { unit: "mm", values: many(36, 0).map((none, n) => (n === 3 ? rain : none)) },
        }),
      }).spells.map(({ favorable }) => favorable);
    expect([spell(95, 3), spell(95.1, 3), spell(95.1, 2.9)]).toEqual([[], [true], [false]]);
  });
});
