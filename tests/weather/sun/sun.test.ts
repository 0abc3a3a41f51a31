import { Body, Observer, SearchRiseSet } from "astronomy-engine";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  addDays,
  dailyLightIntegral,
  dayLength,
  dayOfYear,
  hoursBetween,
  lightFromRadiation,
  quantity,
  sprayWindow,
  sunsetHourAngle,
  sunTimes,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const deg = (value: number) => quantity(value, "deg");
const dates = fc.integer({ min: 0, max: 21_900 }).map((day) => addDays("1990-01-01", day));
const offsetOf = (longitude: number): string => {
  const hours = Math.round(longitude / 15);
  return `${hours < 0 ? "-" : "+"}${String(Math.abs(hours)).padStart(2, "0")}:00`;
};

describe("sunTimes", () => {
  it("agrees to the minute with an astronomy library, 1990 to 2049, between 60° south and north", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 60, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        dates,
        (latitude, longitude, date) => {
          const day = sunTimes({
            latitude: deg(latitude),
            longitude: deg(longitude),
            date,
            offset: offsetOf(longitude),
          });
          if (day.state !== "rises and sets")
            throw new Error("the sun rises and sets between the polar circles");
          const place = new Observer(latitude, longitude, 0);
          for (const [sign, found] of [
            [1, day.sunrise],
            [-1, day.sunset],
          ] as const) {
            // Half a day around the event holds one of its kind.
            const start = new Date(new Date(found).getTime() - 6 * 3_600_000);
            const right = SearchRiseSet(Body.Sun, place, sign, start, 1)?.date.getTime() ?? Number.NaN;
            // Half a minute of rounding and what the two positions of the sun differ by.
            expect(Math.abs(new Date(found).getTime() - right) / 60_000).toBeLessThan(0.5 + 0.15);
          }
        },
      ),
    );
  });

  it("stands up all summer and down all winter beyond the polar circle", () => {
    const north = { latitude: deg(78), longitude: deg(16), offset: "+01:00" };
    expect(sunTimes({ ...north, date: "2026-06-21" })).toMatchObject({ state: "up all day", sunrise: null });
    expect(sunTimes({ ...north, date: "2026-12-21" })).toMatchObject({ state: "down all day", sunset: null });
    expect(dayLength({ latitude: deg(90), date: "2026-06-21" }).in("h")).toBe(24);
    expect(dayLength({ latitude: deg(-90), date: "2026-06-21", method: "FAO-56" }).in("h")).toBe(0);
  });

  it("has noon on the date of its clock, also on the other side of the date line", () => {
    for (const [longitude, offset] of [
      [-150, "+14:00"],
      [179, "+12:00"],
      [-179, "-12:00"],
      [-179, "+12:00"],
      [75, "+08:00"],
    ] as const) {
      const { noon } = sunTimes({
        latitude: deg(-10),
        longitude: deg(longitude),
        date: "2026-03-01",
        offset,
      });
      expect(noon.slice(0, 10)).toBe("2026-03-01");
    }
  });

  it("moves with the clock and not with it alone", () => {
    const place = { latitude: deg(45), longitude: deg(-93), date: "2026-05-01" } as const;
    const [standard, summer] = ["-06:00", "-05:00"].map((offset) => sunTimes({ ...place, offset }));
    expect(hoursBetween(standard?.sunrise as never, summer?.sunrise as never)).toBe(0);
  });

  it("goes into the spray window as it is", () => {
    const day = sunTimes({ latitude: deg(45), longitude: deg(-93), date: "2026-05-01", offset: "-05:00" });
    if (day.state !== "rises and sets") throw new Error("it does");
    const found = sprayWindow({
      weather: {
        type: "hourly-weather",
        version: 1,
        start: "2026-05-01T05:00-05:00",
        source: "invented",
        wind: { unit: "mi/h", values: [5, 5, 5, 5, 5] },
      },
      rules: [{ inversion: { afterSunrise: 2 }, source: "invented" }],
      sun: [day],
    });
    expect(found.hours.filter(({ objections }) => objections.length === 0)).toHaveLength(1);
  });

  it("refuses a longitude with the wrong sign, and tells every problem", () => {
    const call = sunTimes as (input: unknown) => unknown;
    expect(
      complaints(() => call({ latitude: deg(45), longitude: deg(93), date: "2026-05-01", offset: "-05:00" })),
    ).toEqual(["conflict longitude"]);
    expect(
      complaints(() =>
        call({ latitude: deg(95), longitude: quantity(3, "m"), date: "2026-02-30", offset: "EST" }),
      ),
    ).toEqual(["range latitude", "unit/mismatch longitude", "date date", "type offset"]);
  });
});

describe("dayLength", () => {
  it("is the time between the two, to a minute or two", () => {
    fc.assert(
      fc.property(fc.double({ min: -55, max: 55, noNaN: true }), dates, (latitude, date) => {
        const day = sunTimes({ latitude: deg(latitude), longitude: deg(0), date, offset: "Z" });
        expect(
          Math.abs(day.dayLength.in("h") - dayLength({ latitude: deg(latitude), date }).in("h")),
        ).toBeLessThan(0.02);
      }),
    );
  });

  it("by the FAO is shorter by some minutes, and adds up to 24 h with the other side of the equator", () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), dates, (latitude, date) => {
        const [fao, noaa] = (["FAO-56", "NOAA"] as const).map((method) =>
          dayLength({ latitude: deg(latitude), date, method }).in("h"),
        );
        const other = dayLength({ latitude: deg(-latitude), date, method: "FAO-56" }).in("h");
        expect((fao as number) + other).toBeCloseTo(24, 9);
        // An astronomy library's declination in the one equation, and that of the FAO (off by up to 1.33° in October) in the
        // other, each day of seven years: at 55° from 0.07 h longer to 0.47 h shorter, at 60° from 0.09 h to 0.57 h.
        expect(Math.abs((noaa as number) - (fao as number) - 0.2)).toBeLessThan(
          Math.abs(latitude) <= 55 ? 0.3 : 0.38,
        );
      }),
    );
  });
});

describe("light", () => {
  it("does not depend on the step", () => {
    const hourly = Array.from({ length: 24 }, (_, i) => 50 * i);
    const halves = hourly.flatMap((reading) => [reading, reading]);
    const [one, two] = [
      dailyLightIntegral({ ppfdMicromol: hourly }),
      dailyLightIntegral({ ppfdMicromol: halves, everyMinutes: 30 }),
    ];
    expect(two.molPerSquareMeter).toBeCloseTo(one.molPerSquareMeter, 12);
  });

  it("counts a gap as dark and says so", () => {
    const found = dailyLightIntegral({ ppfdMicromol: [null, ...Array.from({ length: 23 }, () => 100)] });
    expect(found).toMatchObject({ missing: 1 });
    expect(found.molPerSquareMeter).toBeCloseTo(8.28, 9);
  });

  it("refuses part of a day, light brighter than the sun, and radiation of a week", () => {
    expect(complaints(() => dailyLightIntegral({ ppfdMicromol: [100, 200] }))).toEqual([
      "range ppfdMicromol",
    ]);
    const bright = Array.from({ length: 24 }, (_, i) => (i === 12 ? 20_000 : 0));
    expect(complaints(() => dailyLightIntegral({ ppfdMicromol: bright }))).toEqual([
      "range ppfdMicromol[12]",
    ]);
    expect(complaints(() => dailyLightIntegral({ ppfdMicromol: Array(24).fill(null) }))).toEqual([
      "missing ppfdMicromol",
    ]);
    expect(complaints(() => lightFromRadiation({ radiation: quantity(140, "MJ/m2") }))).toEqual([
      "range radiation",
    ]);
  });
});

describe("the two rooms that count by FAO-56", () => {
  it("have one day: its length is 24/pi times the hour angle of sunset", () => {
    fc.assert(
      fc.property(fc.double({ min: -90, max: 90, noNaN: true }), dates, (latitude, date) => {
        const hours = dayLength({ latitude: deg(latitude), date, method: "FAO-56" }).in("h");
        const angle = sunsetHourAngle({ latitude: deg(latitude), dayOfYear: dayOfYear(date) }).in("rad");
        expect(hours).toBeCloseTo((24 / Math.PI) * angle, 9);
      }),
    );
  });
});
