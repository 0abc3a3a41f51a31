import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  addDays,
  addMonths,
  type CivilDate,
  compareDates,
  dateRange,
  dayOfMonth,
  dayOfYear,
  daysBetween,
  isLeapYear,
  monthOf,
  weekday,
  yearOf,
} from "../../src/calendar/index.js";
import { complaint } from "../errors.js";

const first: CivilDate = "0001-01-01";
/** 9999-12-31 is 3 652 058 days after 0001-01-01: 9999 * 365 + 2424 leap days - 1. */
const span = 9999 * 365 + 2424 - 1;
const dates = fc.integer({ min: 0, max: span }).map((n) => addDays(first, n));

/** The calendar of the platform, an independent implementation of the same rules. */
const oracle = (date: CivilDate): Date => new Date(`${date}T00:00:00Z`);
const oracleText = (day: Date): string => day.toISOString().slice(0, 10);

describe("days", () => {
  test("every day of all 9999 years follows the one before, as on the platform's calendar", () => {
    const start = oracle(first).getTime();
    let wrong = 0;
    // All days would take seconds: every 37th, which meets each month and day many times.
    for (let n = 0; n <= span; n += 37) {
      const date = addDays(first, n);
      if (date !== oracleText(new Date(start + n * 86_400_000)) || daysBetween(first, date) !== n) wrong++;
    }
    expect(wrong).toBe(0);
    expect(addDays(first, span)).toBe("9999-12-31");
  });

  test("every day of a 400-year cycle reads back", () => {
    const start = oracle("1800-01-01").getTime();
    let wrong = 0;
    for (let n = 0; n < 146_097; n++) {
      if (addDays("1800-01-01", n) !== oracleText(new Date(start + n * 86_400_000))) wrong++;
    }
    expect(wrong).toBe(0);
  });

  test("there and back again", () => {
    fc.assert(
      fc.property(dates, dates, (a, b) => {
        expect(addDays(a, daysBetween(a, b))).toBe(b);
        expect(daysBetween(b, a)).toBe(-daysBetween(a, b) + 0);
        expect(compareDates(a, b)).toBe(a < b ? -1 : a > b ? 1 : 0);
      }),
    );
  });

  test("stays within the years 0001 to 9999, whole days only", () => {
    expect(complaint(() => addDays("9999-12-31", 1))).toBe("range days");
    expect(complaint(() => addDays("0001-01-01", -1))).toBe("range days");
    // What was given, not a number of its own.
    expect(() => addDays("9999-12-31", 1)).toThrow(/got 1$/);
    expect(complaint(() => addDays("2026-01-01", 0.5))).toBe("range days");
    expect(complaint(() => addDays("2026-01-01", Number.NaN))).toBe("not-finite days");
    expect(complaint(() => daysBetween("2026-01-01", "x" as never))).toBe("date b");
  });

  test("no day difference is -0", () => {
    expect(Object.is(daysBetween("2026-01-01", "2026-01-01"), 0)).toBe(true);
  });
});

describe("parts of a date", () => {
  test("agree with the platform's calendar", () => {
    fc.assert(
      fc.property(dates, (date) => {
        const day = oracle(date);
        expect([yearOf(date), monthOf(date) - 1, dayOfMonth(date), weekday(date) % 7]).toEqual([
          day.getUTCFullYear(),
          day.getUTCMonth(),
          day.getUTCDate(),
          day.getUTCDay(),
        ]);
      }),
    );
  });

  // ISO 8601-1:2019 and the handbooks of evapotranspiration number the days of the year from 1.
  test.each([
    ["2026-01-01", 1],
    ["2026-03-01", 60],
    ["2024-03-01", 61],
    ["2026-12-31", 365],
    ["2000-12-31", 366],
    ["1900-12-31", 365],
  ] as const)("%s is day %i", (date, day) => {
    expect(dayOfYear(date)).toBe(day);
  });

  test("leap years", () => {
    expect([1600, 1700, 1900, 2000, 2023, 2024, 2100].filter(isLeapYear)).toEqual([1600, 2000, 2024]);
    expect(complaint(() => isLeapYear(0))).toBe("range year");
    expect(complaint(() => isLeapYear(2024.5))).toBe("range year");
  });
});

describe("addMonths", () => {
  test.each([
    ["2026-01-31", 1, "2026-02-28"],
    ["2024-01-31", 1, "2024-02-29"],
    ["2026-03-31", -1, "2026-02-28"],
    ["2026-08-31", 6, "2027-02-28"],
    ["2026-12-15", 1, "2027-01-15"],
    ["2026-01-15", -1, "2025-12-15"],
    ["2026-05-15", 0, "2026-05-15"],
  ] as const)("%s and %i months is %s", (date, months, sum) => {
    expect(addMonths(date, months)).toBe(sum);
  });

  test("lands in the month that is counted to, on the same day or its last one", () => {
    fc.assert(
      fc.property(dates, fc.integer({ min: -600, max: 600 }), (date, months) => {
        const count = yearOf(date) * 12 + monthOf(date) - 1 + months;
        fc.pre(count >= 12 && count < 120_000);
        const sum = addMonths(date, months);
        expect(yearOf(sum) * 12 + monthOf(sum) - 1).toBe(count);
        const isLast = sum === "9999-12-31" || dayOfMonth(addDays(sum, 1)) === 1;
        expect(dayOfMonth(sum) === dayOfMonth(date) || (dayOfMonth(sum) < dayOfMonth(date) && isLast)).toBe(
          true,
        );
      }),
    );
  });

  test("stays within the years 0001 to 9999", () => {
    expect(complaint(() => addMonths("9999-12-01", 1))).toBe("range months");
    expect(complaint(() => addMonths("0001-01-31", -1))).toBe("range months");
  });
});

describe("dateRange", () => {
  test("has both ends", () => {
    expect(dateRange("2026-05-01", "2026-05-01")).toEqual(["2026-05-01"]);
    expect(dateRange("2025-12-30", "2026-01-02")).toHaveLength(4);
  });
  test("refuses an end before its beginning", () => {
    expect(complaint(() => dateRange("2026-05-02", "2026-05-01"))).toBe("date to");
  });
});
