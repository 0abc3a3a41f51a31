import { describe, expect, test } from "vitest";
import { pythiumCriteria, pythiumOutlook } from "../../../src/index.js";
import { expectRefusals } from "../../refusals.js";
import { hourly, many, percent } from "./made-weather.js";

describe("criteria for Pythium blight", () => {
  const own = {
    id: "park",
    maximumAbove: { value: 30, unit: "°C", of: "none" },
    minimumAbove: { value: 20, unit: "°C", of: "none" },
    hours: 5,
    humidityAbove: { value: 90, unit: "%", of: "none" },
    source: "invented",
  };
  const put =
    (change: object, more: object = {}) =>
    () =>
      pythiumOutlook({ weather: hourly(24), criteria: { ...own, ...change }, ...more } as never);

  test("say what they should be", () => {
    expectRefusals([
      [() => pythiumOutlook({ weather: hourly(24), criteria: 3 as never }), "type", "criteria", /./],
      [put({ id: "" }), "missing", "criteria.id", /^a name for the criteria/],
      [put({ source: undefined }), "missing", "criteria.source", /^where the criteria are stated/],
      [put({ source: "" }), "missing", "criteria.source", /^where the criteria are stated/],
      [put({ maximumAbove: percent(3) }), "unit/mismatch", "criteria.maximumAbove", /./],
      [put({ minimumAbove: 3 }), "type", "criteria.minimumAbove", /./],
      [put({ hours: 0 }), "range", "criteria.hours", /"min":1,"max":24/],
      [put({ hours: 25 }), "range", "criteria.hours", /24/],
      [put({ humidityAbove: percent(101) }), "range", "criteria.humidityAbove", /100/],
      [
        put({ humidityAbove: null }),
        "missing",
        "humidityAbove",
        /^a bound of humidity: the criteria do not state one/,
      ],
      [put({}, { humidityAbove: percent(101) }), "range", "humidityAbove", /100/],
      [
        () => pythiumOutlook({ weather: hourly(24), criteria: pythiumCriteria[1] as never }),
        "missing",
        "humidityAbove",
        /./,
      ],
    ]);
    expect(put({ humidityAbove: null }, { humidityAbove: percent(85) })().humidityAbovePercent).toBe(85);
  });

  /** Noon to noon: temperatures and humidities hour by hour. */
  const day = (temperature: readonly (number | null)[], humidity: readonly (number | null)[]) =>
    pythiumOutlook({
      weather: hourly(24, {
        temperature: { unit: "°C", values: temperature },
        humidity: { unit: "%", values: humidity },
      }),
      criteria: own as never,
    }).days[0];
  const hot = (at: number, value: number | null = 31) =>
    many(24, 25).map((mild, n) => (n === at ? value : mild));
  const humidFrom = (first: number, hours: number, value = 95) =>
    many(24, 60).map((dry, n) => (n >= first && n < first + hours ? value : dry));

  test("count the humid hours behind the first hot one, above their bounds and not at them", () => {
    expect(day(hot(3), humidFrom(4, 5))).toMatchObject({
      maximumC: 31,
      minimumC: 25,
      humidHours: 5,
      hoursWithoutFigure: 0,
      favorable: true,
    });
    // The hot hour itself is not after itself; a first hour can be the hot one
    expect(day(hot(4), humidFrom(4, 5))).toMatchObject({ humidHours: 4, favorable: false });
    expect(day(hot(0), humidFrom(1, 5))).toMatchObject({ humidHours: 5, favorable: true });
    expect(day(hot(3, 30), humidFrom(4, 5))).toMatchObject({ humidHours: 0, favorable: false });
    expect(day(hot(3), humidFrom(4, 5, 90))).toMatchObject({ humidHours: 0, favorable: false });
    expect(
      day(
        hot(3).map((t, n) => (n === 20 ? 20 : t)),
        humidFrom(4, 5),
      ),
    ).toMatchObject({ minimumC: 20, favorable: false });
    expect(
      day(
        hot(3).map((t, n) => (n === 20 ? 20.1 : t)),
        humidFrom(4, 5),
      ),
    ).toMatchObject({ favorable: true });
  });

  test("leave open what a missing hour could turn, and only that", () => {
    const missing = (at: number) => (t: number | null, n: number) => (n === at ? null : t);
    // It may have been the first hot hour: the humid hours behind it could be enough
    expect(day(hot(9).map(missing(3)), humidFrom(5, 6))).toMatchObject({
      humidHours: 1,
      hoursWithoutFigure: 1,
      favorable: null,
    });
    // Behind the first hot hour it could only have been cold
    expect(day(hot(3).map(missing(9)), humidFrom(4, 5))).toMatchObject({ humidHours: 5, favorable: null });
    // A humidity that is missing may make up what is short, by one hour and no more
    expect(day(hot(3), humidFrom(4, 4).map(missing(20)))).toMatchObject({ humidHours: 4, favorable: null });
    expect(day(hot(3), humidFrom(4, 3).map(missing(20)))).toMatchObject({ humidHours: 3, favorable: false });
    // Without any temperature that is hot, the missing one decides
    expect(day(hot(3, null), humidFrom(4, 5))).toMatchObject({ humidHours: 5, favorable: null });
    expect(
      day(
        hot(3, null).map((t, n) => (n === 9 ? 19 : t)),
        humidFrom(4, 5),
      ),
    ).toMatchObject({ favorable: false });
    expect(day(hot(3), humidFrom(4, 5).map(missing(3)))).toMatchObject({
      hoursWithoutFigure: 1,
      favorable: true,
    });
  });
});
