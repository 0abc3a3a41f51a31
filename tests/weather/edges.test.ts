import { describe, expect, test } from "vitest";
import { type CivilDate, dailySeries, type MonthDay } from "../../src/calendar/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  dailyLightIntegral,
  frostChance,
  frostDates,
  lightFromRadiation,
  sunTimes,
  windAtHeight,
} from "../../src/weather/index.js";
import { complaint, problemsOf } from "../errors.js";

const days = Array.from({ length: 365 }, (_, n) =>
  new Date(Date.UTC(2025, 6, 24 + n)).toISOString().slice(0, 10),
);
/** One winter with frosts from 10 October to 20 April. */
const dates = frostDates({
  minima: dailySeries({
    start: "2025-07-24" as CivilDate,
    unit: "°C",
    what: "lowest air temperature",
    source: "invented",
    values: days.map((day) => (["2025-10-10", "2026-04-20"].includes(day) ? -1 : 20)),
  }),
});
const chance = (date: string, side: "before" | "after"): number =>
  frostChance({ dates, date: date as MonthDay, side }).in("%");

describe("on the very day", () => {
  test("a frost on the day is neither before nor after it", () => {
    expect([chance("10-10", "before"), chance("10-11", "before")]).toEqual([0, 100]);
    expect([chance("04-20", "after"), chance("04-19", "after")]).toEqual([0, 100]);
  });
});

describe("light", () => {
  test("the stated share and photons take the place of the usual", () => {
    const radiation = quantity(20, "MJ/m2");
    // 20 MJ x 45 % x 5 mol
    expect(
      lightFromRadiation({ radiation, parShare: quantity(45, "%"), micromolPerJoule: 5 }).molPerSquareMeter,
    ).toBeCloseTo(45, 12);
    expect(lightFromRadiation({ radiation }).molPerSquareMeter).toBeCloseTo(46, 12);
  });

  test("what is wrong is told by its name", () => {
    expect(complaint(() => dailyLightIntegral({ ppfdMicromol: [1], everyMinutes: 0 }))).toBe(
      "range everyMinutes",
    );
    expect(
      complaint(() => lightFromRadiation({ radiation: quantity(20, "MJ/m2"), parShare: quantity(120, "%") })),
    ).toBe("range parShare");
  });
});

test("a date that is none is told as the date", () => {
  const place = { latitude: quantity(40, "deg"), longitude: quantity(-105, "deg"), offset: "-07:00" };
  expect(complaint(() => sunTimes({ ...place, date: "2026-02-30" as CivilDate }))).toBe("date date");
});

test("a height beyond the profile carries the heights between which it holds", () => {
  const wind = quantity(3, "m/s");
  const [problem] = problemsOf(() => windAtHeight({ wind, from: quantity(40, "m"), to: quantity(2, "m") }));
  expect(problem?.path).toBe("from");
  expect(problem?.params).toMatchObject({ min: 0.3, max: 30, unit: "m" });
});
