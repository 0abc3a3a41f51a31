import { describe, expect, it } from "vitest";
import { type CivilDate, dailySeries } from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import { complaint } from "../../errors.js";
import { tellsEach } from "../../tells.js";
import { mm } from "../helpers.js";

type Plain = (input: unknown) => unknown;
/** Each function as plain JavaScript calls it. */
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;
const share = (value: number) => quantity(value, "%");
const series = (values: readonly (number | null)[], start: CivilDate = "2026-06-01", unit = "mm") =>
  dailySeries({ start, unit, what: "depth", source: "invented", values });
const season = {
  available: mm(30),
  depletion: share(50),
  before: mm(0),
  use: series([4, 4, 4]),
  rain: series([0, 2, 0]),
};

describe("a season", () => {
  const balance = (change: object) => () => call.soilWaterBalance({ ...season, ...change });
  tellsEach([
    [
      balance({ plan: { at: share(50) }, irrigation: series([0, 0, 0]) }),
      "conflict plan: expected either irrigation or plan, not both, got a record",
    ],
    [balance({ plan: { at: share(0) } }), "range plan.at: expected more than 0, got 0"],
    [
      balance({ plan: { at: share(50), days: [] } }),
      "type plan.days: expected a list of one to seven days, 1 for Monday to 7 for Sunday, got a list of 0",
    ],
    [
      balance({ plan: { at: share(50), days: [1, 2, 3, 4, 5, 6, 7, 1] } }),
      "type plan.days: expected a list of one to seven days, 1 for Monday to 7 for Sunday, got a list of 8",
    ],
    [
      balance({ plan: { at: share(50), days: [1, 8] } }),
      "range plan.days[1]: expected a whole number, 1 to 7: 1 for Monday, 7 for Sunday, got 8",
    ],
    [
      balance({ rain: series([0, 2], "2026-06-02") }),
      "missing rain: expected every day from 2026-06-01 to 2026-06-03, as use has them, got days from 2026-06-02",
    ],
    [
      balance({ irrigation: series([0, 2]) }),
      "missing irrigation: expected every day from 2026-06-01 to 2026-06-03, as use has them, got days from 2026-06-01",
    ],
    [
      balance({ use: series([4, null, 4]) }),
      "missing use.values[1]: expected a figure for every day of the season; gapsOf names the days without one, got null on day 2",
    ],
    [
      balance({ irrigation: series([null, 0, 0]) }),
      "missing irrigation.values[0]: expected a figure for every day of the season; gapsOf names the days without one, got null on day 1",
    ],
    [
      balance({ rain: series([0, 2, null]) }),
      'missing rain.values[2]: expected a figure for every day of the season, or missingRain: "dry", got null on day 3',
    ],
    [balance({ depletion: share(100) }), "range depletion: expected less than 100, got 100"],
    [balance({ before: mm(31) }), "range before: expected 30 or less, which the root zone holds, got 31"],
    [
      balance({ use: undefined }),
      "missing use: expected a daily series of depths, as dailySeries makes it, got undefined",
    ],
    [
      balance({ use: { ...season.use, type: "daily-temperatures" } }),
      "type use: expected a daily series of depths, as dailySeries makes it, got a record",
    ],
    [
      balance({ use: series([4, 4, 4], "2026-06-01", "°C") }),
      'unit/mismatch use.unit: expected a unit for a length, such as in or mm, got "°C"',
    ],
    [balance({ use: series([-1, 4, 4]) }), "range use.values[0]: expected zero or more, got -1"],
    [
      balance({ use: { ...season.use, unit: "furlongs" } }),
      expect.stringMatching(/^unit\/unknown use\.unit: /) as unknown as string,
    ],
    [
      balance({
        use: series(Array(36_526).fill(1), "1950-01-01"),
        rain: series(Array(36_526).fill(1), "1950-01-01"),
      }),
      "range use.values: expected 36525 days or fewer, got 36526",
    ],
  ]);

  it("counts a day as stressed only where some of its use is missing", () => {
    const found = water.soilWaterBalance({ ...season, use: series([15, 4, 4]), rain: series([0, 0, 0]) });
    // 15 of 30 mm are gone after the first day: the second still has its full use, the third has not.
    expect(found.stress.slice(0, 2)).toEqual([1, 1]);
    expect(found.stress[2]).toBeCloseTo((30 - 19) / 15, 12);
    expect(found.totals.stressedDays).toBe(1);
  });

  it("takes the irrigation and the effective rain that are given, and says which days were dry", () => {
    const found = water.soilWaterBalance({
      ...season,
      rain: series([25.4, null, 0]),
      missingRain: "dry",
      effective: "Texas, day",
      irrigation: series([0, 3, 0]),
    });
    expect(found.irrigation).toEqual([0, 3, 0]);
    expect(found.totals.effectiveRain.in("mm")).toBeCloseTo(0.9 * 25.4, 9);
    expect(found.totals.rain.in("mm")).toBeCloseTo(25.4, 9);
    expect(found.rainAssumedDry).toEqual(["2026-06-02"]);
    expect(found.findings[0]).toMatchObject({ path: "rain", params: { days: 1, first: "2026-06-02" } });
  });

  it("a century of days is taken, and a week of watering days", () => {
    const days = Array(36_525).fill(1);
    const start = "1950-01-01" as CivilDate;
    expect(complaint(balance({ use: series(days, start), rain: series(days, start) }))).toBe(
      "nothing thrown",
    );
    expect(complaint(balance({ plan: { at: share(50), days: [1, 2, 3, 4, 5, 6, 7] } }))).toBe(
      "nothing thrown",
    );
  });

  it("names the table of what soils hold", () => {
    expect(water.waterHolding({ texture: "sandy loam, fine sandy loam" }).source).toEqual({
      title: "Soil characteristics (managing drought)",
      publisher: "University of California, Davis",
      where: "table",
      url: "http://ucmanagedrought.ucdavis.edu/Agriculture/Irrigation_Scheduling/Evapotranspiration_Scheduling_ET/Frequency_of_Irrigation/Soil_Characteristics",
    });
  });
});
