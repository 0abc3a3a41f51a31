// Days, moments and times of day as people type them and as browsers send them: what they may mean is offered, nothing is read in
// silence, and what cannot be offered is told. 15 March 2026 is a Sunday (ISO 8601 day 7: 2024-01-01 was a Monday, 804 days on).
import { describe, expect, test } from "vitest";
import { civilDate, instant, monthDay } from "../../src/calendar/index.js";
import { ledger } from "../../src/ledger/index.js";
import { problemsOf } from "../errors.js";

const told = (call: () => unknown) => {
  const [problem, ...more] = problemsOf(call);
  expect(more).toEqual([]);
  return {
    code: problem?.code,
    expected: problem?.expected,
    offered: problem?.suggestion ?? problem?.choices,
  };
};

describe("a day", () => {
  test.each<readonly [string, string | readonly string[]]>([
    ["3/15/2026", "2026-03-15"],
    ["15.03.2026", "2026-03-15"],
    ["2026-3-15", "2026-03-15"],
    ["15th of March 2026", "2026-03-15"],
    ["15th of March, 2026", "2026-03-15"],
    ["March 15th, 2026", "2026-03-15"],
    ["Sunday, March 15, 2026", "2026-03-15"],
    ["3/15/2026 7:30 am", "2026-03-15"],
    ["3/15/2026 7:30 a.m.", "2026-03-15"],
    ["03/15/2026 7:30", "2026-03-15"],
    ["4/5/2026", ["2026-04-05", "2026-05-04"]],
    // of the two readings one is a Sunday
    ["Sun 4/5/2026", "2026-04-05"],
  ])("%s is offered as %j", (text, offered) => {
    expect(told(() => civilDate(text))).toMatchObject({ code: "date", offered });
  });

  test.each<readonly [string, string]>([
    ["Monday, March 15, 2026", "the day of the week that fits the date: 2026-03-15 is a Sunday"],
    ["Tue 3/15/2026", "the day of the week that fits the date: 2026-03-15 is a Sunday"],
    ["2/30/2026", "a day that exists, written YYYY-MM-DD"],
    ["31.4.2026", "a day that exists, written YYYY-MM-DD"],
    ["March 15", "a calendar date with the four digits of its year, written YYYY-MM-DD"],
    ["15 March", "a calendar date with the four digits of its year, written YYYY-MM-DD"],
    ["3/15", "a calendar date with the four digits of its year, written YYYY-MM-DD"],
    ["15.3.", "a calendar date with the four digits of its year, written YYYY-MM-DD"],
    ["3/15/26", "a calendar date with the four digits of its year, written YYYY-MM-DD"],
    ["15-Mar-26", "a calendar date with the four digits of its year, written YYYY-MM-DD"],
    ["3/15/'26", "a calendar date with the four digits of its year, written YYYY-MM-DD"],
    ["2026-03-15T00:00:00.000Z", "a calendar date: the day of a moment depends on the time zone"],
    ["2026-03-15T07:30-05:00", "a calendar date: the day of a moment depends on the time zone"],
    ["today", "a calendar date written YYYY-MM-DD, of the years 0001 to 9999"],
    ["May 2026", "a calendar date written YYYY-MM-DD, of the years 0001 to 9999"],
  ])("%s offers nothing, and is told: %s", (text, expected) => {
    expect(told(() => civilDate(text))).toEqual({ code: "date", expected, offered: undefined });
  });

  test.each(["", "   "])("an empty field, %j, is missing", (text) => {
    expect(told(() => civilDate(text)).code).toBe("missing");
    expect(told(() => instant(text)).code).toBe("missing");
    expect(told(() => monthDay(text)).code).toBe("missing");
    expect(told(() => ledger([{ id: "a", date: "2026-03-15", start: text }])).code).toBe("missing");
  });
});

describe("a day of any year", () => {
  test.each<readonly [string, string | readonly string[] | undefined]>([
    ["6/15", "06-15"],
    ["6-15", "06-15"],
    ["15.6.", "06-15"],
    ["June 15", "06-15"],
    ["15th of June", "06-15"],
    ["2026-06-15", "06-15"],
    ["6/15/2026", "06-15"],
    [" 06-15 ", "06-15"],
    ["2/29", "02-29"],
    ["4/5", ["04-05", "05-04"]],
    ["02-30", undefined],
    ["mid June", undefined],
  ])("%s is offered as %j", (text, offered) => {
    expect(told(() => monthDay(text)).offered).toEqual(offered);
  });
});

describe("a time of day", () => {
  test.each<readonly [string, string | undefined]>([
    ["7:30", "07:30"],
    ["07:30 ", "07:30"],
    ["7.30 am", "07:30"],
    ["7:05 p.m.", "19:05"],
    ["7 am", "07:00"],
    ["7pm", "19:00"],
    ["12 pm", "12:00"],
    ["12 am", "00:00"],
    ["12:30 a", "00:30"],
    ["0730", "07:30"],
    ["1930 hrs", "19:30"],
    ["19h05", "19:05"],
    ["7h", "07:00"],
    ["noon", "12:00"],
    ["Midnight", "00:00"],
    ["7:30-0500", "07:30-05:00"],
    ["07:30 -5", "07:30-05:00"],
    ["07:30–05:00", "07:30-05:00"],
    ["07:30 UTC+2", "07:30+02:00"],
    ["2026-03-15T07:30-05:00", "07:30-05:00"],
    // no one time, or none at all
    ["7", undefined],
    ["7:3", undefined],
    ["7:60", undefined],
    ["24:00", undefined],
    ["13 pm", undefined],
    ["0 am", undefined],
    ["07-30", undefined],
    ["07:30 CST", undefined],
    ["7:30 to 9:00", undefined],
    ["morning", undefined],
  ])("%s is offered as %s", (text, offered) => {
    const found = told(() => ledger([{ id: "a", date: "2026-03-15", start: text }]));
    expect(found).toMatchObject({ code: "date", offered });
  });
});

describe("a moment", () => {
  test.each<readonly [string, string]>([
    ["2026-05-04 09:30-05:00", "2026-05-04T09:30-05:00"],
    ["2026-05-04T9:30-05:00", "2026-05-04T09:30-05:00"],
    ["2026-05-04T09:30-0500", "2026-05-04T09:30-05:00"],
    ["2026-05-04T09:30 -05:00", "2026-05-04T09:30-05:00"],
    ["2026-05-04T09:30−05:00", "2026-05-04T09:30-05:00"],
    ["2026-05-04 09:30:15-05:00", "2026-05-04T09:30:15-05:00"],
    ["5/25/2026 9:30 PM -05:00", "2026-05-25T21:30-05:00"],
    ["20260504T0930Z", "2026-05-04T09:30Z"],
    // as a browser writes a date object; 4 May 2026 is a Monday
    ["Mon May 04 2026 09:30:00 GMT-0500 (Central Daylight Time)", "2026-05-04T09:30-05:00"],
  ])("%s is offered as %s", (text, offered) => {
    expect(told(() => instant(text))).toMatchObject({ code: "date", offered });
    expect(instant(offered)).toBe(offered);
  });

  test.each<readonly [string, string]>([
    ["2026-05-04T09:30", "2026-05-04T09:30"],
    ["2026-05-04 9:30 am", "2026-05-04T09:30"],
    ["May 4, 2026, 9:30 PM", "2026-05-04T21:30"],
    ["25.05.2026, 09:30 Uhr", "2026-05-25T09:30"],
    ["2026-05-04T09:30[America/Chicago]", "2026-05-04T09:30"],
  ])("%s lacks the offset alone", (text, moment) => {
    expect(told(() => instant(text))).toEqual({
      code: "date",
      expected: `an offset from UTC at the end, as in ${moment}-05:00: without it, it is another moment in every time zone`,
      offered: undefined,
    });
  });

  test.each([
    "9:30 am",
    "2026-05-04",
    "5/4/2026 9:30",
    "2026-05-04T09:30 CDT",
    "2026-05-04 09:30-15:00",
    "soon",
  ])("%s is no moment, and nothing is offered", (text) => {
    expect(told(() => instant(text))).toEqual({
      code: "date",
      expected: "a moment with its offset, such as 2026-05-01T14:30-05:00",
      offered: undefined,
    });
  });
});
