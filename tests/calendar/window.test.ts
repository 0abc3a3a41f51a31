import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addDays,
  type CivilDate,
  dateRange,
  firstDateWithin,
  isLeapYear,
  isWithinWindow,
  type MonthDay,
  windowAround,
  yearOf,
} from "../../src/calendar/index.js";
import { RatewrightError } from "../../src/quantity/index.js";
import { runs } from "../properties.js";

const monthDays = fc.integer({ min: 0, max: 365 }).map((n) => addDays("2000-01-01", n).slice(5) as MonthDay);
const windows = fc.record({ from: monthDays, to: monthDays });
const dates = fc.integer({ min: 0, max: 9000 }).map((n) => addDays("1895-01-01", n));

/** By hand: walk from an opening to its closing, day by day. */
const walked = (date: CivilDate, { from, to }: { from: MonthDay; to: MonthDay }): boolean => {
  for (const year of [yearOf(date) - 1, yearOf(date)]) {
    const start = from === "02-29" && !isLeapYear(year) ? "03-01" : from;
    const endYear = from <= to ? year : year + 1;
    const end = to === "02-29" && !isLeapYear(endYear) ? "02-28" : to;
    const [a, b] = [`${year}-${start}`, `${endYear}-${end}`];
    if (a <= b && dateRange(a as CivilDate, b as CivilDate).includes(date)) return true;
  }
  return false;
};

describe("isWithinWindow", () => {
  test("has both ends in it", () => {
    const window = { from: "03-01", to: "11-15" } as const;
    const days: CivilDate[] = ["2026-02-28", "2026-03-01", "2026-11-15", "2026-11-16"];
    expect(days.map((date) => isWithinWindow(date, window))).toEqual([false, true, true, false]);
  });

  test("29 February", () => {
    expect(isWithinWindow("2024-02-29", { from: "01-01", to: "02-28" })).toBe(false);
    expect(isWithinWindow("2024-02-29", { from: "01-01", to: "02-29" })).toBe(true);
    expect(isWithinWindow("2026-02-28", { from: "02-29", to: "04-01" })).toBe(false);
    expect(isWithinWindow("2026-03-01", { from: "02-29", to: "04-01" })).toBe(true);
  });

  test("is what walking through the days finds", () => {
    fc.assert(
      fc.property(dates, windows, (date, window) => {
        expect(isWithinWindow(date, window)).toBe(walked(date, window));
      }),
      runs(300),
    );
  });

  test("reports both ends at once", () => {
    try {
      isWithinWindow("2026-01-01", { from: "3-1" as MonthDay, to: "02-30" });
      expect.unreachable();
    } catch (error) {
      expect((error as RatewrightError).problems.map(({ code, path }) => `${code} ${path}`)).toEqual([
        "date window.from",
        "date window.to",
      ]);
    }
    expect(() => isWithinWindow("2026-01-01", null as never)).toThrow(RatewrightError);
  });
});

describe("windowAround", () => {
  test("is the stretch of days around the date on which the window holds", () => {
    fc.assert(
      fc.property(dates, windows, (date, window) => {
        const span = windowAround(date, window);
        expect(span !== undefined).toBe(isWithinWindow(date, window));
        if (span === undefined) return;
        const days = dateRange(span.from, span.to);
        expect(days).toContain(date);
        expect(days.length).toBeLessThanOrEqual(366);
        expect(days.every((day) => isWithinWindow(day, window))).toBe(true);
      }),
      runs(200),
    );
  });

  test("a whole year begins where it says", () => {
    expect(windowAround("2026-06-30", { from: "07-01", to: "06-30" })).toEqual({
      from: "2025-07-01",
      to: "2026-06-30",
    });
    expect(windowAround("2026-07-01", { from: "07-01", to: "06-30" })).toEqual({
      from: "2026-07-01",
      to: "2027-06-30",
    });
  });
});

describe("firstDateWithin", () => {
  test("is the first day, looked for day by day", () => {
    fc.assert(
      fc.property(dates, windows, (date, window) => {
        const found = firstDateWithin(date, window);
        let day = date;
        while (!isWithinWindow(day, window)) day = addDays(day, 1);
        expect(found).toBe(day);
      }),
      runs(200),
    );
  });

  test("29 February alone can be eight years off", () => {
    expect(firstDateWithin("1896-03-01", { from: "02-29", to: "02-29" })).toBe("1904-02-29");
  });

  test("ends with the year 9999", () => {
    expect(() => firstDateWithin("9999-12-01", { from: "03-01", to: "04-01" })).toThrow(/9999/);
  });
});

test("29 February as an end is the last day of February in every year, as a beginning 1 March where it is not", () => {
  const winter = { from: "11-15", to: "02-29" } as const;
  expect(windowAround("2026-02-10", winter)).toEqual({ from: "2025-11-15", to: "2026-02-28" });
  expect(windowAround("2024-02-10", winter)).toEqual({ from: "2023-11-15", to: "2024-02-29" });
  // The last day of the window itself belongs to the winter that began the year before.
  expect(windowAround("2024-02-29", winter)).toEqual({ from: "2023-11-15", to: "2024-02-29" });
  const spring = { from: "02-29", to: "04-01" } as const;
  expect(windowAround("2026-03-05", spring)).toEqual({ from: "2026-03-01", to: "2026-04-01" });
  expect(windowAround("2024-03-05", spring)).toEqual({ from: "2024-02-29", to: "2024-04-01" });
});
