import { describe, expect, test } from "vitest";
import { sunsetAt } from "../../src/calendar/house.js";
import {
  addDays,
  addHours,
  addMonths,
  type CivilDate,
  civilDate,
  compareInstants,
  dateOfInstant,
  dateRange,
  dayOfMonth,
  dayOfYear,
  daysBetween,
  hoursBetween,
  type Instant,
  instant,
  isInstant,
  isLeapYear,
  monthOf,
  weekday,
  yearOf,
} from "../../src/calendar/index.js";
import { problemsOf } from "../errors.js";
import { expectRefusals, type Refusal } from "../refusals.js";

const only = (call: () => unknown) => {
  const [problem] = problemsOf(call);
  return [problem?.got, problem?.expected, problem?.suggestion ?? problem?.choices];
};

describe("a date", () => {
  const wanted = "a calendar date written YYYY-MM-DD, of the years 0001 to 9999";
  const of = (input: unknown) => only(() => civilDate(input as string));

  test("in another notation is refused with what it may mean", () => {
    expect(of("2026/5/6")).toEqual(['"2026/5/6"', wanted, "2026-05-06"]);
    expect(of("2026.05.06")).toEqual(['"2026.05.06"', wanted, "2026-05-06"]);
    expect(of("2026-5-6")).toEqual(['"2026-5-6"', wanted, "2026-05-06"]);
    expect(of("5/6/2026")).toEqual(['"5/6/2026"', wanted, ["2026-05-06", "2026-06-05"]]);
    expect(of("25.6.2026")).toEqual(['"25.6.2026"', wanted, "2026-06-25"]);
    expect(of("6/25/2026")).toEqual(['"6/25/2026"', wanted, "2026-06-25"]);
    expect(of("6/6/2026")).toEqual(['"6/6/2026"', wanted, "2026-06-06"]);
    for (const none of [
      "31/31/2026",
      "2026/13/32",
      "x2026/5/6",
      "2026/5/6x",
      "x5/6/2026",
      "5/6/2026x",
      "",
      "0000/1/1",
    ])
      expect(of(none)[2]).toBeUndefined();
  });

  test("that does not exist says how long the month is", () => {
    expect(of("2026-02-29")[1]).toBe("a day that exists: 2026-02 has 28 days");
    expect(of("2028-02-30")[1]).toBe("a day that exists: 2028-02 has 29 days");
    expect(of("1900-02-29")[1]).toBe("a day that exists: 1900-02 has 28 days");
    expect(of("2026-04-31")[1]).toBe("a day that exists: 2026-04 has 30 days");
    expect(of("2026-12-32")[1]).toBe("a day that exists: 2026-12 has 31 days");
    expect(of("2026-01-00")[1]).toBe("a day that exists: 2026-01 has 31 days");
    for (const none of ["2026-13-01", "2026-00-01", "0000-05-01", "x2026-05-01", "2026-05-01x"])
      expect(of(none)[1]).toBe(wanted);
    expect(of([2026, 5, 1])[1]).toBe(wanted);
    expect(of({ toString: () => 5 })[1]).toBe(wanted);
    expect(
      of({
        toString: () => {
          throw new Error("no");
        },
      })[1],
    ).toBe(wanted);
    expect(of(null)[1]).toBe(wanted);
  });

  test("that is an instant is refused with what to give", () => {
    expect(of(new Date(0))).toEqual([
      "a Date",
      "a calendar date: a Date is an instant, and its day depends on the time zone",
      "the day as text, YYYY-MM-DD",
    ]);
  });

  test("of the first and of the last day that there are", () => {
    expect([civilDate("0001-01-01"), civilDate("9999-12-31")]).toEqual(["0001-01-01", "9999-12-31"]);
    expect(daysBetween("0001-01-01", "9999-12-31")).toBe(3_652_058);
    expect(addDays("0001-01-01", 3_652_058)).toBe("9999-12-31");
    expect(addDays("9999-12-31", -3_652_058)).toBe("0001-01-01");
    expect([addMonths("9999-11-30", 1), addMonths("0001-02-28", -1)]).toEqual(["9999-12-30", "0001-01-28"]);
    expect(dateRange("9999-12-30", "9999-12-31")).toEqual(["9999-12-30", "9999-12-31"]);
  });

  test("names itself where it is refused", () => {
    const odd = "soon" as CivilDate;
    const rows: readonly Refusal[] = [
      [() => civilDate(odd, "job.date"), "date", "job.date", /./],
      [() => yearOf(odd), "date", "date", /./],
      [() => monthOf(odd), "date", "date", /./],
      [() => dayOfMonth(odd), "date", "date", /./],
      [() => dayOfYear(odd), "date", "date", /./],
      [() => weekday(odd), "date", "date", /./],
      [() => addDays(odd, 1), "date", "date", /./],
      [() => addMonths(odd, 1), "date", "date", /./],
      [() => daysBetween(odd, "2026-01-01"), "date", "a", /./],
      [() => daysBetween("2026-01-01", odd), "date", "b", /./],
      [() => dateRange(odd, "2026-01-01"), "date", "from", /./],
      [() => dateRange("2026-01-01", odd), "date", "to", /./],
      [() => dateRange("2026-01-02", "2026-01-01"), "date", "to", /^a date not earlier than 2026-01-02/],
      [() => addDays("2026-01-01", 1.5), "range", "days", /"step":1/],
      [() => addDays("2026-01-01", Number.NaN), "not-finite", "days", /^a whole number/],
      [() => addDays("2026-01-01", "3" as never), "not-finite", "days", /^a whole number/],
      [() => addMonths("2026-01-01", 1.5), "range", "months", /"step":1/],
      [() => addMonths("2026-01-01", Number.NaN), "not-finite", "months", /^a whole number/],
      [() => addMonths("9999-12-01", 1), "range", "months", /the years 0001 to 9999/],
      [() => addDays("9999-12-31", 1), "range", "days", /the years 0001 to 9999.*"unit":"d"/],
      [() => isLeapYear(0), "range", "year", /"min":1,"max":9999/],
      [() => isLeapYear(10_000), "range", "year", /9999/],
      [() => isLeapYear(2026.5), "range", "year", /"step":1/],
    ];
    expectRefusals(rows);
    expect([isLeapYear(1), isLeapYear(4), isLeapYear(1900), isLeapYear(2000), isLeapYear(9999)]).toEqual([
      false,
      true,
      false,
      true,
      false,
    ]);
  });
});

describe("a moment", () => {
  const of = (input: unknown) => only(() => instant(input as string));
  const wanted = "a moment with its offset, such as 2026-05-01T14:30-05:00";

  test("that cannot be read says why", () => {
    expect(of("2026-05-01")[1]).toBe(wanted);
    expect(of(3)[1]).toBe(wanted);
    expect(of("x2026-05-01T14:30Z")[1]).toBe(wanted);
    expect(of("2026-05-01T14:30Zx")[1]).toBe(wanted);
    expect(of(["2026-05-01T14:30Z"])[1]).toBe(wanted);
    expect(of(new Date(0))).toEqual(["a Date", "a moment as text", "the text that its toISOString gives"]);
    expect(of("2026-05-01T14:30")[1]).toBe(
      "an offset from UTC at the end, as in 2026-05-01T14:30-05:00: without it, it is another moment in every time zone",
    );
    expect(of("2026-02-30T14:30Z")[1]).toBe("a day that exists: 2026-02 has 28 days");
    for (const late of ["24:00", "14:60", "14:30:60"])
      expect(of(`2026-05-01T${late}Z`)[1]).toBe("a time from 00:00 to 23:59:59");
    expect(of("2026-05-01T14:30:00.0001Z")[1]).toBe("a time to the millisecond");
    expect(of("2026-05-01T14:30-00:00")[1]).toBe("an offset that is known: -00:00 says that it is not");
    for (const far of ["+14:01", "-14:01", "+05:60", "+15:00"])
      expect(of(`2026-05-01T14:30${far}`)[1]).toBe("an offset from -14:00 to +14:00");
  });

  test("is written the short way, its clock and offset kept", () => {
    const same = (text: string, written = text) => expect(instant(text)).toBe(written);
    same("2026-05-01T00:00Z");
    same("2026-05-01T23:59:59.999+14:00");
    same("2026-05-01T23:59-14:00");
    same("2026-05-01T14:30:00.000Z", "2026-05-01T14:30Z");
    same("2026-05-01T14:30:05.5Z", "2026-05-01T14:30:05.500Z");
    same("2026-05-01T14:30:00.007000Z", "2026-05-01T14:30:00.007Z");
    same("2026-05-01T14:30:07Z");
    same("2026-05-01T14:30-05:00[America/Chicago]", "2026-05-01T14:30-05:00");
    expect(instant({ toString: () => "2026-05-01T14:30Z" })).toBe("2026-05-01T14:30Z");
    expect([
      isInstant("2026-05-01T14:30Z"),
      isInstant("2026-05-01"),
      isInstant({ toString: () => "2026-05-01T14:30Z" }),
    ]).toEqual([true, false, false]);
  });

  test("later and earlier, by hours and parts of them", () => {
    // Half past eleven at night and 45 min is a quarter past midnight
    expect(addHours("2026-05-01T23:30-05:00", 0.75)).toBe("2026-05-02T00:15-05:00");
    expect(addHours("2026-05-01T00:00Z", -1 / 3_600_000)).toBe("2026-04-30T23:59:59.999Z");
    expect(addHours("0001-01-01T00:00Z", 0)).toBe("0001-01-01T00:00Z");
    // 20:00 in Chicago is 01:00 of the next day in Greenwich
    expect(hoursBetween("2026-05-01T20:00-05:00", "2026-05-02T01:30Z")).toBe(0.5);
    expect(Object.is(hoursBetween("2026-05-01T20:00-05:00", "2026-05-02T01:00Z"), 0)).toBe(true);
    expect(hoursBetween("2026-05-01T12:00+05:45", "2026-05-01T06:15Z")).toBe(0);
    expect(dateOfInstant("2026-05-01T23:30-05:00")).toBe("2026-05-01");
    expect(dateOfInstant("2026-05-02T00:00+05:00")).toBe("2026-05-02");
    const [early, late] = ["2026-05-01T20:00-05:00", "2026-05-02T01:30Z"] as const;
    expect([
      compareInstants(early, late),
      compareInstants(late, early),
      compareInstants(early, early),
    ]).toEqual([-1, 1, 0]);
  });

  test("names itself where it is refused", () => {
    const odd = "soon" as Instant;
    expectRefusals([
      [() => instant("soon"), "date", "instant", /./],
      [() => instant("soon", "start"), "date", "start", /./],
      [() => addHours(odd, 1), "date", "from", /./],
      [() => addHours("2026-05-01T00:00Z", Number.NaN), "not-finite", "hours", /./],
      [
        () => addHours("9999-12-31T23:30Z", 1),
        "range",
        "hours",
        /a number of hours that ends at .*"min":"0001-01-01","max":"9999-12-31"/,
      ],
      [() => hoursBetween(odd, "2026-05-01T00:00Z"), "date", "a", /./],
      [() => hoursBetween("2026-05-01T00:00Z", odd), "date", "b", /./],
      [() => compareInstants(odd, "2026-05-01T00:00Z"), "date", "a", /./],
      [() => dateOfInstant(odd), "date", "moment", /./],
    ]);
    expect(addHours("9999-12-31T23:30Z", 0.25)).toBe("9999-12-31T23:45Z");
  });
});

test("the sun does not rise, or does not set, from the polar circles on", () => {
  // At midsummer, 23.44 degrees, beyond 66.56 degrees: day all round there, night all round at the other end
  const degrees = Math.PI / 180;
  const midsummer = 23.44 * degrees;
  expect(sunsetAt(70 * degrees, midsummer)).toBe(Math.PI);
  expect(sunsetAt(-70 * degrees, midsummer)).toBe(0);
  expect(sunsetAt(0, midsummer)).toBeCloseTo(Math.PI / 2, 12);
});
