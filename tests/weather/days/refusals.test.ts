import { describe } from "vitest";
import {
  type CivilDate,
  dailySeries,
  dayRuns,
  frostChance,
  frostDates,
  joinedDays,
  runningMean,
} from "../../../src/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { tellsEach } from "../../tells.js";

const f = (value: number) => quantity(value, "°F");
const series = (values: readonly (number | null)[], start: CivilDate = "2026-04-01", unit = "°F") =>
  dailySeries({ start, unit, what: "air", source: "probe", values });
/** Calls as plain JavaScript makes them. */
const plain = (call: unknown) => call as (input: unknown) => unknown;
const [runs, chance, dates, joined, mean] = [dayRuns, frostChance, frostDates, joinedDays, runningMean].map(
  plain,
) as [
  (input: unknown) => unknown,
  (input: unknown) => unknown,
  (input: unknown) => unknown,
  (input: unknown) => unknown,
  (input: unknown) => unknown,
];
const minima = series([30, 40]);
const known = frostDates({ minima, missingDays: 100 });
const winter = { from: "2000-07-24", firstFrost: null, lastFrost: "2001-04-01", lastState: "frost" };

describe("series", () => {
  tellsEach([
    [() => mean({ days: 3 }), "missing series: expected a daily series, made by dailySeries, got undefined"],
    [
      () => mean({ series: { ...minima, type: "daily-temperatures" }, days: 3 }),
      "type series: expected a daily series, made by dailySeries; daily temperatures become one by dailyMeans, got a record",
    ],
    [() => mean({ series: minima }), "missing days: expected a whole number of days, got undefined"],
    [() => mean({ series: minima, days: 0 }), "range days: expected 1 or more, got 0"],
    [() => mean({ series: minima, days: 367 }), "range days: expected 366 or less, got 367"],
    [() => mean({ series: minima, days: 2.5 }), "range days: expected a whole number of days, got 2.5"],
    [() => mean({ series: minima, days: 3, missing: 366 }), "range missing: expected 365 or less, got 366"],
    [
      () => mean({ series: minima, days: 3, missing: 3 }),
      "conflict missing: expected fewer than days, which is 3, got 3",
    ],
  ]);
});

describe("joined days", () => {
  tellsEach([
    [
      () => joined({ what: "air" }),
      "missing observed: expected at least one of observed, forecast and normal, got undefined",
    ],
    [() => joined({ observed: minima }), "missing what: expected what the figures are, got undefined"],
    [
      () => joined({ observed: minima, normal: series([1], "2026-04-01", "mm"), what: "air" }),
      'unit/mismatch normal.unit: expected a unit for a temperature, as observed has, got "mm"',
    ],
    [
      // 18,301 days from 1 January 1950: one day too many.
      () => joined({ observed: series([1], "1950-01-01"), forecast: series([1], "2000-02-08"), what: "air" }),
      "range observed: expected 18300 days or fewer in all, got 18301 days",
    ],
    [
      () => joined({ observed: 3, forecast: minima, what: "air" }),
      "type observed: expected a record with start, unit, what, source, values, type, version, got 3",
    ],
  ]);
});

describe("runs of days", () => {
  const asked = { series: minima, threshold: f(32), days: 1 };
  const stored = { type: "joined-days", version: 1, series: minima, basis: ["observed", "guess"] };
  tellsEach([
    [
      () => runs({ series: minima, days: 1 }),
      "missing threshold: expected a temperature, such as 72 °F or 22 °C, got undefined",
    ],
    [
      () => runs({ ...asked, side: "below" }),
      'type side: expected one of "at or above", "at or below", got "below" (did you mean at or below?)',
    ],
    [() => runs({ ...asked, days: 400 }), "range days: expected 366 or less, got 400"],
    [
      () => runs({ ...asked, series: stored }),
      'type series.basis[1]: expected one of "observed", "forecast", "normal", got "guess"',
    ],
    [
      () => runs({ ...asked, series: { ...stored, basis: ["observed"] } }),
      "conflict series.basis: expected as many entries as the series has days, got a list of 1",
    ],
    [
      () => runs({ ...asked, series: { ...stored, note: "" } }),
      'type series.note: expected one of the fields type, version, series, basis, got a field "note"',
    ],
  ]);
});

describe("frost", () => {
  tellsEach([
    [
      () => dates({ minima: series([1], "2026-04-01", "mm") }),
      'unit/mismatch minima.unit: expected a unit for a temperature, such as °F or °C, got "mm"',
    ],
    [
      () => dates({ minima, percents: [] }),
      "type percents: expected a list of one to twenty percents, got a list of 0",
    ],
    [
      () => dates({ minima, percents: Array(21).fill(50) }),
      "type percents: expected a list of one to twenty percents, got a list of 21",
    ],
    [
      () => dates({ minima, percents: 50 }),
      "type percents: expected a list of one to twenty percents, got 50",
    ],
    [() => dates({ minima, percents: [50, 100] }), "range percents[1]: expected less than 100, got 100"],
    [
      () => dates({ minima, divide: "02-29" }),
      'date divide: expected a day that every year has, got "02-29"',
    ],
    [() => dates({ minima, missingDays: 101 }), "range missingDays: expected 100 or less, got 101"],
    [
      () => dates({ minima, threshold: quantity(3, "mm") }),
      "unit/mismatch threshold: expected a temperature, such as 72 °F or 22 °C, got 3 mm",
    ],
    [
      () => chance({ dates: known, date: "04-01" }),
      'missing side: expected one of "after", "before", got undefined',
    ],
    [
      () => chance({ dates: known, date: "04-01", side: "later" }),
      'type side: expected one of "after", "before", got "later"',
    ],
    [
      () => chance({ date: "04-01", side: "after" }),
      "missing dates: expected frost dates, made by frostDates, got undefined",
    ],
    [
      () => chance({ dates: { ...known, type: "dates" }, date: "04-01", side: "after" }),
      "type dates: expected frost dates, made by frostDates, got a record",
    ],
    [
      () => chance({ dates: { ...known, winters: null }, date: "04-01", side: "after" }),
      "type dates.winters: expected a list of winters, as frostDates makes it, got null",
    ],
    [
      () => chance({ dates: { ...known, winters: [{ from: "2000-07-24" }] }, date: "04-01", side: "after" }),
      "missing dates.winters: expected at least one, got no winter that is known",
    ],
    [
      () => chance({ dates: { ...known, winters: [] }, date: "04-01", side: "after" }),
      "missing dates.winters: expected at least one winter, got an empty list",
    ],
    [
      () =>
        chance({ dates: { ...known, winters: Array(10_001).fill(winter) }, date: "04-01", side: "after" }),
      "range dates.winters: expected at most 10000 items, got a list of 10001",
    ],
    [
      () =>
        chance({
          dates: { ...known, winters: [{ ...winter, firstState: "cold" }] },
          date: "04-01",
          side: "after",
        }),
      'type dates.winters[0].firstState: expected one of "frost", "no frost", "not known", got "cold"',
    ],
  ]);
});
