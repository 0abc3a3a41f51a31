import { describe, expect, test } from "vitest";
import { declinationOn, sunsetAt } from "../../src/calendar/house.js";
import {
  addDays,
  addHours,
  addMonths,
  civilDate,
  compareDates,
  dailyNormals,
  dailySeries,
  firstDateWithin,
  hoursBetween,
  isCivilDate,
  isWithinWindow,
  normalDay,
  windowAround,
} from "../../src/calendar/index.js";
import { problemsOf } from "../errors.js";

const winter = { from: "11-15", to: "03-01" } as const;
const flat = (value: number) => Array<number>(366).fill(value);
const normals = {
  unit: "°C",
  sensor: "air",
  source: "depot, 1991-2020",
  min: flat(10),
  max: flat(20),
} as const;

describe("the ends of the years are told in what was asked", () => {
  test.each([
    // The day before the last leaves one day; the second day leaves one back.
    ["days on", () => addDays("9999-12-30", 5), "max", 1],
    ["days back", () => addDays("0001-01-02", -5), "min", -1],
    ["months on", () => addMonths("9999-11-15", 5), "max", 1],
    ["months back", () => addMonths("0001-03-01", -5), "min", -2],
    ["hours", () => addHours("9999-12-31T23:00-05:00", 2), "max", "9999-12-31"],
    ["a window that begins the year before", () => windowAround("0001-01-10", winter), "max", "9999-12-31"],
  ] as const)("%s", (_, call, side, end) => {
    const [problem] = problemsOf(call);
    expect(problem?.code).toBe("range");
    expect(problem?.params?.[side]).toBe(end);
  });

  test("hours are counted where the clock stands, not in Greenwich", () => {
    expect(addHours("9999-12-31T23:00-05:00", 0.5)).toBe("9999-12-31T23:30-05:00");
    expect(addHours("0001-01-01T01:00+05:00", -0.5)).toBe("0001-01-01T00:30+05:00");
  });
});

describe("a refusal names what was wrong", () => {
  const gone = { ...dailyNormals(normals), max: [] };
  test.each([
    ["the second moment", () => hoursBetween("2026-05-01T00:00Z", "soon" as never), "b"],
    ["the date of a window", () => isWithinWindow("soon" as never, winter), "date"],
    ["the date before a window", () => firstDateWithin("soon" as never, winter), "date"],
    ["the window", () => windowAround("2026-05-01", { from: "x03-01", to: "11-15" } as never), "window.from"],
    ["a list of normals that is not there", () => normalDay(gone as never, "2026-01-01"), "normals.max[0]"],
    [
      "a figure that is none",
      () => dailyNormals({ ...normals, max: flat(20).fill(Number.NaN, 3, 4) }),
      "max[3]",
    ],
  ] as const)("%s", (_, call, path) => {
    expect(problemsOf(call).map((one) => one.path)).toEqual([path]);
  });

  test("a unit that is nearly one gets a suggestion, a date in another notation its readings", () => {
    const series = { start: "2026-05-01", what: "rain", source: "gauge", values: [1] } as const;
    const [unit] = problemsOf(() => dailySeries({ ...series, unit: "inch" as never }));
    expect([unit?.code, unit?.suggestion]).toEqual(["unit/unknown", "in"]);
    const read = (text: string) => JSON.stringify(problemsOf(() => civilDate(text))[0]);
    expect(read("5/6/2026")).toContain("2026-06-05");
    expect(read("week 5/6/2026")).not.toContain("2026-06-05");
  });
});

test("a day is neither before nor after itself", () => {
  expect(compareDates("2026-05-01", "2026-05-01")).toBe(0);
  expect([compareDates("2026-05-01", "2026-05-02"), compareDates("2026-05-02", "2026-05-01")]).toEqual([
    -1, 1,
  ]);
});

test("only a text is a date, whatever an object writes of itself", () => {
  expect(isCivilDate("2026-05-01")).toBe(true);
  expect(isCivilDate({ toString: () => "2026-05-01" })).toBe(false);
  expect(isCivilDate(Object("2026-05-01"))).toBe(false);
});

test("the sun of 3 September at 20 degrees south, FAO-56 example 8: 0.120 and 1.527 rad", () => {
  expect(declinationOn(246)).toBeCloseTo(0.12, 3);
  expect(sunsetAt((-20 * Math.PI) / 180, declinationOn(246))).toBeCloseTo(1.527, 3);
});
