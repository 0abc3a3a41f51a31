import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays, civilDate, isCivilDate } from "../../src/calendar/index.js";
import { errorOf } from "../errors.js";

describe("civilDate", () => {
  test("takes ISO text and objects whose text is that", () => {
    expect(civilDate("2026-05-01")).toBe("2026-05-01");
    expect(civilDate("0001-01-01")).toBe("0001-01-01");
    const plain = { year: 2026, month: 5, day: 1, toString: () => "2026-05-01" };
    expect(civilDate(plain)).toBe("2026-05-01");
  });

  test("a list is no date, whatever its text", () => {
    expect(errorOf(() => civilDate(["2026-05-01"] as never))).toMatchObject({ code: "date", path: "date" });
  });

  test.each([
    "0000-12-31",
    "2026-00-01",
    "2026-13-01",
    "2026-04-31",
    "2026-02-29",
    "1900-02-29",
    "2026-05-00",
    "2026-05-01T00:00",
    "2026-05-01[u-ca=hebrew]",
    "+002026-05-01",
    "20260501",
    "2026-W18-5",
    " 2026-05-01",
  ])("refuses %j", (text) => {
    expect(errorOf(() => civilDate(text, "visit.date"))).toMatchObject({ code: "date", path: "visit.date" });
    expect(isCivilDate(text)).toBe(false);
  });

  test("says how many days the month has", () => {
    expect(errorOf(() => civilDate("2026-02-29")).expected).toBe("a day that exists: 2026-02 has 28 days");
  });

  test("refuses a Date and says what to pass, also one of another realm", () => {
    const found = errorOf(() => civilDate(new Date(0) as never));
    expect(found).toMatchObject({ code: "date", got: "a Date", suggestion: "the day as text, YYYY-MM-DD" });
  });

  test("offers the readings of other notations", () => {
    expect(errorOf(() => civilDate("5/1/2026")).problems[0]?.choices).toEqual(["2026-05-01", "2026-01-05"]);
    expect(errorOf(() => civilDate("5/25/2026")).suggestion).toBe("2026-05-25");
    expect(errorOf(() => civilDate("25.5.2026")).suggestion).toBe("2026-05-25");
    expect(errorOf(() => civilDate("2026-5-1")).suggestion).toBe("2026-05-01");
    expect(errorOf(() => civilDate("99/99/2026"))).not.toHaveProperty("suggestion");
    for (const text of [
      " 2026-05-25 ",
      "2026-05-25 00:00:00",
      "2026-05-25T14:30",
      "20260525",
      "2026\u201305\u201325",
      "May 25, 2026",
      "25 May 2026",
      "25-may-2026",
      "2026.05.25",
      // as a sheet and as people in Britain write it
      "Mon 25 May 2026",
      "Monday, May 25, 2026",
      "25th May 2026",
      "May 25th, 2026",
    ])
      expect([text, errorOf(() => civilDate(text)).suggestion]).toEqual([text, "2026-05-25"]);
    expect(errorOf(() => civilDate("Sept. 3 2026")).suggestion).toBe("2026-09-03");
    // The day of an instant depends on a time zone; a number of days, two digits of a year and no month say nothing
    for (const text of [
      "2026-05-25T00:00:00Z",
      "46146",
      "26-05-25",
      "Ma 25, 2026",
      "2026-05-25-",
      "May 32, 2026",
    ])
      expect([text, errorOf(() => civilDate(text)).suggestion]).toEqual([text, undefined]);
  });

  test.each([undefined, null, 20260501, {}, [], true])("refuses %j", (input) => {
    expect(errorOf(() => civilDate(input as never)).code).toBe(input === undefined ? "missing" : "date");
    expect(isCivilDate(input)).toBe(false);
  });

  test("every text of the pattern is a date exactly where the platform's calendar has it", () => {
    const part = fc.tuple(
      fc.integer({ min: 1, max: 9999 }),
      fc.integer({ min: 0, max: 13 }),
      fc.integer({ min: 0, max: 32 }),
    );
    fc.assert(
      fc.property(part, ([year, month, day]) => {
        const oracle = new Date(0);
        oracle.setUTCFullYear(year, month - 1, day);
        const there = oracle.getUTCMonth() === month - 1 && oracle.getUTCDate() === day;
        const text = `${String(year).padStart(4, "0")}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
        expect(isCivilDate(text)).toBe(there);
      }),
    );
  });

  test("errors name the argument of the function that was called", () => {
    expect(errorOf(() => addDays("2026-02-30", 1)).path).toBe("date");
  });
});
